package org.snugsheet.office.fuzz;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.Uno;

/** Some hundred random formulas in one document of a live office. */
final class LiveRound {

    /** So many rows of a range, unless it is a whole column, and so many columns. */
    private static final int MOST_ROWS = 3000;

    private static final int MOST_COLUMNS = 1000;

    /** So many cells hold a whole table. */
    private static final int MOST_IN_TABLE = 400;

    /** What is typed for an error, and its number. */
    private record TypedError(String formula, int number) {}

    private static final List<TypedError> ERRORS = List.of(
            new TypedError("NA()", ErrorCodes.NOT_AVAILABLE),
            new TypedError("1/0", ErrorCodes.DIVISION_BY_ZERO),
            new TypedError("\"wool\"+1", ErrorCodes.VALUE),
            new TypedError("SQRT(-1)", ErrorCodes.INVALID_ARGUMENT));

    private static final List<Locale> PLACES =
            List.of(Locale.US, Locale.GERMANY, Locale.FRANCE, Locale.forLanguageTag("es-ES"), Locale.JAPAN);

    private final Office office;
    private final SplittableRandom random;
    private final RandomCalls calls;

    LiveRound(Office office, long seed) {
        this.office = office;
        random = new SplittableRandom(seed);
        calls = new RandomCalls(seed);
    }

    /** Types so many formulas, lets the office calculate them twice, and says what no cell may show. */
    List<String> faults(int count) {
        try (CalcDocument document = office.newDocument()) {
            return office.call("a round of random formulas", () -> faults(document, count));
        }
    }

    private List<String> faults(CalcDocument document, int count) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument uno = document.calculatedOnlyWhenTold().uno();
        XSpreadsheets sheets = uno.getSheets();
        sheets.insertNewByName("Cells", (short) 1);
        sheets.insertNewByName("Large", (short) 2);
        sheets.insertNewByName("Columns", (short) 3);
        sheets.insertNewByName("Tables", (short) 4);
        List<XSpreadsheet> all = Uno.sheets(uno);
        LiveArguments arguments = new LiveArguments(all.get(1), all.get(2), all.get(3), random);

        Locale place = PLACES.get(random.nextInt(PLACES.size()));
        document.locale(place.toLanguageTag());
        List<LiveCell> cells = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            cells.add(cell(sent(calls.next(), place.getLanguage()), arguments));
        }
        arguments.fill();
        String[][] formulas = new String[count][];
        for (int i = 0; i < count; i++) {
            formulas[i] = new String[] {"=" + cells.get(i).formula(), "=IFERROR(ERRORTYPE(A" + (i + 1) + ");0)"};
        }
        Uno.as(XCellRangeFormula.class, all.get(0).getCellRangeByPosition(0, 0, 1, count - 1))
                .setFormulaArray(formulas);
        document.calculateAll();
        List<String> faults = new ArrayList<>();
        Object[][] shown = shown(all.get(0), count);
        for (int i = 0; i < count; i++) {
            cells.get(i).fault(shown[i][0], ((Double) shown[i][1]).intValue()).ifPresent(faults::add);
        }
        document.calculateAll();
        Object[][] again = shown(all.get(0), count);
        for (int i = 0; i < count; i++) {
            if (!Arrays.equals(shown[i], again[i])) {
                faults.add("shows " + Arrays.toString(shown[i]) + " and then " + Arrays.toString(again[i]) + ": "
                        + cells.get(i).formula());
            }
        }
        faults.addAll(wholeTables(cells, all.get(4)));
        return faults;
    }

    private static Object[][] shown(XSpreadsheet sheet, int count) throws com.sun.star.uno.Exception {
        return Uno.as(XCellRangeData.class, sheet.getCellRangeByPosition(0, 0, 1, count - 1))
                .getDataArray();
    }

    /** Some of the tables in full, each an array formula as large as itself. */
    private List<String> wholeTables(List<LiveCell> cells, XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        List<String> faults = new ArrayList<>();
        int row = 0;
        for (LiveCell cell : cells) {
            if (cell.errors().isEmpty()
                    && random.nextInt(8) == 0
                    && cell.call().made().answer() instanceof Object[][] table
                    && table.length * table[0].length <= MOST_IN_TABLE) {
                var range = sheet.getCellRangeByPosition(0, row, table[0].length - 1, row + table.length - 1);
                Uno.as(com.sun.star.sheet.XArrayFormulaRange.class, range).setArrayFormula("=" + cell.formula());
                Object[][] shown = Uno.as(XCellRangeData.class, range).getDataArray();
                row += table.length;
                for (int i = 0; i < table.length; i++) {
                    for (int j = 0; j < table[i].length; j++) {
                        if (!LiveCell.isAlike(table[i][j], shown[i][j])) {
                            faults.add("row " + i + ", column " + j + " of the table shows “" + shown[i][j]
                                    + "” instead of “" + table[i][j] + "”: " + cell.formula() + "\n   which is "
                                    + cell.call());
                        }
                    }
                }
            }
        }
        return faults;
    }

    private static Call sent(Call call, String language) {
        List<Object> arguments =
                call.formula().arguments().stream().map(LiveRound::sent).toList();
        return new Call(new FormulaText(call.formula().name(), arguments), language);
    }

    private static Object sent(Object value) {
        if (value instanceof Object[][] rows) {
            return rows.length < LiveArguments.SHEET_ROWS
                    ? LiveArguments.sent(Arrays.copyOf(rows, Math.min(rows.length, MOST_ROWS)), MOST_COLUMNS)
                    : LiveArguments.sent(Arrays.copyOf(rows, LiveArguments.SHEET_ROWS), MOST_ROWS);
        }
        return LiveArguments.sent(value, MOST_ROWS);
    }

    private LiveCell cell(Call call, LiveArguments arguments) throws com.sun.star.uno.Exception {
        List<Object> values = call.formula().arguments();
        List<String> written = new ArrayList<>();
        int odd = values.isEmpty() || random.nextInt(12) > 0 ? -1 : random.nextInt(values.size());
        Set<Integer> errors = Set.of();
        for (int i = 0; i < values.size(); i++) {
            Object value = values.get(i);
            if (i == odd && value != Call.LEFT_OUT) {
                TypedError error = ERRORS.get(random.nextInt(ERRORS.size()));
                written.add(arguments.withError(value, error.formula()));
                Object[][] block = LiveArguments.block(value);
                errors = Set.of(block.length * block[0].length > 1 ? ErrorCodes.PARAMETER_LIST : error.number());
            } else {
                written.add(arguments.written(value));
            }
        }
        if (errors.isEmpty() && random.nextInt(25) == 0) {
            errors = Set.of(ErrorCodes.PARAMETER_LIST);
            long needed = Call.function(call.formula().name()).arguments().stream()
                    .filter(argument -> !argument.optional())
                    .count();
            if (needed > 1 && random.nextBoolean()) {
                written = written.subList(0, random.nextInt((int) needed - 1) + 1);
            } else {
                while (written.size()
                        <= Call.function(call.formula().name()).arguments().size()) {
                    written.add("1");
                }
            }
        }
        return new LiveCell(call, call.formula().name() + "(" + String.join(";", written) + ")", errors);
    }
}
