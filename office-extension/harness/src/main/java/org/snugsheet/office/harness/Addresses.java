package org.snugsheet.office.harness;

import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the cells of a document by their addresses, as {@link CalcDocument} takes them. */
final class Addresses {
    private static final Pattern PLAIN =
            Pattern.compile("(?:(?<sheet>.+)\\.)?(?<column>[A-Z]{1,3})(?<row>[1-9][0-9]{0,6})");

    private final XSpreadsheets sheets;
    private final XIndexAccess inOrder;

    Addresses(XSpreadsheetDocument document) {
        this.sheets = document.getSheets();
        this.inOrder = UnoObjects.as(XIndexAccess.class, sheets);
    }

    /** Each call into the office costs more than what it does there, so that the place of a plain address is worked out here. */
    XCell cell(String address) throws com.sun.star.uno.Exception {
        Matcher plain = PLAIN.matcher(address);
        if (!plain.matches()) {
            return range(address).getCellByPosition(0, 0);
        }
        int column = 0;
        for (char letter : plain.group("column").toCharArray()) {
            column = 26 * column + letter - 'A' + 1;
        }
        return sheet(Objects.requireNonNullElse(plain.group("sheet"), ""))
                .getCellByPosition(column - 1, Integer.parseInt(plain.group("row")) - 1);
    }

    XCellRange range(String address) throws com.sun.star.uno.Exception {
        int dot = address.lastIndexOf('.');
        return sheet(address.substring(0, Math.max(0, dot))).getCellRangeByName(address.substring(dot + 1));
    }

    XCellRange downFrom(String top, int rows) throws com.sun.star.uno.Exception {
        XCellRange first = range(top);
        CellRangeAddress place =
                UnoObjects.as(XCellRangeAddressable.class, first).getRangeAddress();
        int dot = top.lastIndexOf('.');
        return sheet(top.substring(0, Math.max(0, dot)))
                .getCellRangeByPosition(
                        place.StartColumn, place.StartRow, place.StartColumn, place.StartRow + rows - 1);
    }

    private XSpreadsheet sheet(String name) throws com.sun.star.uno.Exception {
        return UnoObjects.as(XSpreadsheet.class, name.isEmpty() ? inOrder.getByIndex(0) : sheets.getByName(name));
    }
}
