package org.snugsheet.office.sharing;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.sharing.living.Seen;
import org.snugsheet.office.sharing.living.Translator;
import org.snugsheet.office.uno.ArrayFormula;
import org.snugsheet.office.uno.Uno;

/** A document whose formulas still stand in it, for the translator. What it is asked is worked out on a sheet that goes again. */
final class SeenDocument implements Seen, AutoCloseable {

    private static final String SCRATCH = "_";
    private static final int FIRST = 2;

    /** No table of ours is larger, and no column of readings. */
    private static final int MOST = 5000;

    private final XSpreadsheets sheets;
    private final String scratch;
    private final XSpreadsheet sheet;
    private final Map<String, Cells> names = new HashMap<>();
    private final Map<String, Object[][]> answers = new HashMap<>();

    SeenDocument(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        sheets = document.getSheets();
        String[] all = sheets.getElementNames();
        for (Map.Entry<String, XNamedRange> named : DefinedNames.of(document).entrySet()) {
            XCellRangeReferrer referrer = UnoRuntime.queryInterface(XCellRangeReferrer.class, named.getValue());
            XCellRange cells = referrer == null ? null : referrer.getReferredCells();
            if (cells != null) {
                CellRangeAddress at = Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
                names.put(
                        named.getKey().toLowerCase(Locale.ROOT),
                        new Cells(
                                all[at.Sheet],
                                at.StartColumn,
                                at.StartRow,
                                at.EndColumn - at.StartColumn + 1,
                                at.EndRow - at.StartRow + 1));
            }
        }
        String name = SCRATCH;
        while (sheets.hasByName(name)) {
            name += SCRATCH;
        }
        scratch = name;
        sheets.insertNewByName(scratch, (short) all.length);
        sheet = Uno.as(XSpreadsheet.class, sheets.getByName(scratch));
    }

    @Override
    public Optional<Cells> named(String name) {
        return Optional.ofNullable(names.get(name.toLowerCase(Locale.ROOT)));
    }

    @Override
    public List<String> formulas(Cells cells) {
        try {
            XSpreadsheet on = Uno.as(XSpreadsheet.class, sheets.getByName(cells.sheet()));
            String[][] formulas = Uno.as(
                            XCellRangeFormula.class,
                            on.getCellRangeByPosition(
                                    cells.left(),
                                    cells.top(),
                                    cells.left() + cells.columns() - 1,
                                    cells.top() + cells.rows() - 1))
                    .getFormulaArray();
            return Arrays.stream(formulas).flatMap(Arrays::stream).toList();
        } catch (com.sun.star.uno.Exception failed) {
            throw new IllegalStateException(failed);
        }
    }

    @Override
    public Object[][] answer(String formula) {
        Object[][] known = answers.get(formula);
        if (known == null) {
            try {
                known = workedOut(formula);
            } catch (com.sun.star.uno.Exception failed) {
                throw new IllegalStateException(failed);
            }
            answers.put(formula, known);
        }
        return known.clone();
    }

    private Object[][] workedOut(String formula) throws com.sun.star.uno.Exception {
        Optional<Cells> place = Translator.place(formula).or(() -> named(formula));
        if (place.isPresent() && sheets.hasByName(place.get().sheet())) {
            Cells at = place.get();
            XSpreadsheet on = Uno.as(XSpreadsheet.class, sheets.getByName(at.sheet()));
            return values(on.getCellRangeByPosition(
                    at.left(), at.top(), at.left() + at.columns() - 1, at.top() + at.rows() - 1));
        }
        int rows = size("ROWS", formula);
        int columns = size("COLUMNS", formula);
        if (rows * (long) columns > MOST) {
            return new Object[][] {{ERROR}};
        }
        XCellRange cells = sheet.getCellRangeByPosition(0, FIRST, columns - 1, FIRST + rows - 1);
        Uno.as(XArrayFormulaRange.class, cells).setArrayFormula("=" + formula);
        Object[][] values = values(cells);
        ArrayFormula.takeAway(cells);
        return values;
    }

    private static Object[][] values(XCellRange cells) {
        Object[][] values = Uno.as(XCellRangeData.class, cells).getDataArray();
        for (Object[] row : values) {
            for (int i = 0; i < row.length; i++) {
                row[i] = row[i] instanceof Double || row[i] instanceof String ? row[i] : ERROR;
            }
        }
        return values;
    }

    /** What is one value and no range has no rows in the eyes of the office. */
    private int size(String function, String formula) throws com.sun.star.uno.Exception {
        XCell cell = sheet.getCellByPosition(0, 0);
        cell.setFormula("=" + function + "(" + formula + ")");
        return cell.getError() == 0 ? (int) cell.getValue() : 1;
    }

    @Override
    public void close() throws com.sun.star.uno.Exception {
        sheets.removeByName(scratch);
    }
}
