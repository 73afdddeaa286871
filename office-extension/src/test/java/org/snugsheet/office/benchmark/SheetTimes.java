package org.snugsheet.office.benchmark;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.util.CellProtection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.uno.Uno;

/** How long a worked sheet takes: all of it anew, and after one number typed on each of its pages. */
final class SheetTimes {

    private final Office office;
    private final WorkedSheet sheet;
    private final int rounds;

    SheetTimes(Office office, WorkedSheet sheet, int rounds) {
        this.office = office;
        this.sheet = sheet;
        this.rounds = rounds;
    }

    void print() {
        try (CalcDocument document = office.newDocument()) {
            office.call("filling it", () -> Book.filled(office.uno(), document.uno(), sheet, Setting.USUAL));
            document.calculateAll();
            line(sheet.fileName() + ": all of it", document::calculateAll);
            office.call("typing on each page", () -> {
                for (XSpreadsheet page : Uno.sheets(document.uno())) {
                    Optional<XCell> cell = typable(page);
                    if (cell.isPresent()) {
                        line(
                                sheet.fileName() + ": a number typed on "
                                        + Uno.as(XNamed.class, page).getName(),
                                () -> typed(document, cell.get()));
                    }
                }
                return document;
            });
        }
    }

    private void line(String what, Runnable work) {
        double first = InOfficeBenchmark.seconds(work);
        double[] more = IntStream.range(0, rounds)
                .mapToDouble(i -> InOfficeBenchmark.seconds(work))
                .sorted()
                .toArray();
        System.out.printf(Locale.ROOT, "| %s | %.3f s | %.3f s |%n", what, first, more[rounds / 2]);
    }

    /** The first number on a page that a person may change. */
    private static Optional<XCell> typable(XSpreadsheet page) throws com.sun.star.uno.Exception {
        XCellRangesQuery query = Uno.as(XCellRangesQuery.class, page);
        for (CellRangeAddress area :
                query.queryContentCells((short) CellFlags.VALUE).getRangeAddresses()) {
            for (int row = area.StartRow; row <= area.EndRow; row++) {
                for (int column = area.StartColumn; column <= area.EndColumn; column++) {
                    XCell cell = page.getCellByPosition(column, row);
                    Object protection = Uno.as(XPropertySet.class, cell).getPropertyValue("CellProtection");
                    if (protection instanceof CellProtection one && !one.IsLocked) {
                        return Optional.of(cell);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Types another number by turns, so that something is to be worked out. */
    private static void typed(CalcDocument document, XCell cell) {
        double now = cell.getValue();
        double step = Math.abs(now) < 1 ? 0.01 : 1;
        cell.setValue(Math.rint(now / step) % 2 == 0 ? now + step : now - step);
        Uno.as(XCalculatable.class, document.uno()).calculate();
    }
}
