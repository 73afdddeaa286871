package org.snugsheet.office.fuzz;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.FunctionDeclaration.ArgumentDeclaration;
import org.snugsheet.office.functions.Families;

/**
 * Draws calls: one of the declared examples, of which some cells are changed into what a sheet may hold by accident, or what an option of
 * the same name was given elsewhere. The same seed draws the same calls.
 */
final class RandomCalls {

    private static final Object[] ODD = {
        0.0,
        -0.0,
        1.0,
        -1.0,
        0.5,
        2.0,
        1e-9,
        1e9,
        1e15,
        123_456_789_012_345.0,
        1e22,
        1e100,
        1e154,
        1e300,
        -1e300,
        Double.MAX_VALUE,
        -Double.MAX_VALUE,
        Double.MIN_VALUE,
        -Double.MIN_VALUE,
        Double.MIN_NORMAL,
        1e-300,
        1e-100,
        2_147_483_647.0,
        2_147_483_648.0,
        -2_147_483_649.0,
        9_007_199_254_740_992.0,
        -273.15,
        -459.67,
        273.15,
        43.0,
        109.4,
        100.0,
        1440.0,
        0.999_999_999_999,
        45_000.375,
        "",
        " ",
        "\u00a0",
        "\t\n",
        "0",
        "-0",
        "1,5",
        "1.5.5",
        "1e5",
        "1E400",
        "-1E-400",
        "NaN",
        "Infinity",
        "-Infinity",
        "0x1p3",
        "1d",
        "1f",
        "+3",
        "--3",
        "\u22125",
        "5 \u2103",
        "5\u00b0F",
        "40 F",
        "300 K",
        "9:05",
        "9:05:30",
        "25:61",
        "12/31/2026",
        "#DIV/0!",
        "#N/A",
        "Err:502",
        "TRUE",
        "=1+1",
        "null",
        "{0}",
        "''",
        "'5",
        "\u0663\u0664",
        "\u096a\u0966",
        "\uff14\uff10",
        "\u5341",
        "\u00bd",
        "Wolle",
        "\u0448\u0435\u0440\u0441\u0442\u044c",
        "\u7f8a\u6bdb",
        "\u05e6\u05de\u05e8",
        "la\u0304na",
        "\ud83e\udde6",
        "\ud83e",
        "\u202e04",
        "wool",
        "WOOL ",
        "fit",
        "Fit",
        "still air",
        "stirred water",
        "open",
        "C",
        "F",
        "K",
        "\u00b0c",
        "mm",
        "cm",
        "ml",
        "clo",
        "tog",
        "99999999999999999999999999999999999999999999",
        "0.0000000000000000000000000000000000001",
        "x".repeat(300)
    };

    private static final String[] LANGUAGES = {"en", "de", "fr", "es", "ja"};

    private static final int SHEET_ROWS = 1 << 20;

    private final SplittableRandom random;
    private final List<FormulaText> examples = new ArrayList<>();

    /** What arguments of a name are given anywhere. */
    private final Map<String, List<Object>> known = new HashMap<>();

    RandomCalls(long seed) {
        random = new SplittableRandom(seed);
        for (FunctionDeclaration function : Families.functions()) {
            for (String formula :
                    List.of(function.function().example(), function.function().refused())) {
                if (formula.isEmpty()) {
                    continue;
                }
                FormulaText example = FormulaText.parse(formula);
                examples.add(example);
                List<ArgumentDeclaration> arguments = function.arguments();
                for (int i = 0; i < example.arguments().size(); i++) {
                    known.computeIfAbsent(arguments.get(i).name(), name -> new ArrayList<>())
                            .add(example.arguments().get(i));
                }
            }
        }
        known.put("scale", List.of("C", "F", "\u00b0F", "K", "fahrenheit"));
        known.put("mark", List.of(1.0, 0.1, 0.5, 2.0, 5.0));
        known.put("spread", List.of(0.1, 0.2, "0", 0.01));
        known.put("which", List.of(1.0, 2.0, "newton", "two stages"));
    }

    /** The next call. */
    Call next() {
        FormulaText example = examples.get(random.nextInt(examples.size()));
        List<ArgumentDeclaration> declared = Call.function(example.name()).arguments();
        List<Object> arguments = new ArrayList<>(example.arguments());
        for (int i = arguments.size(); i < declared.size() && random.nextInt(3) > 0; i++) {
            List<Object> values = known.getOrDefault(declared.get(i).name(), List.of());
            arguments.add(
                    values.isEmpty() || random.nextInt(3) == 0
                            ? Call.LEFT_OUT
                            : values.get(random.nextInt(values.size())));
        }
        if (!arguments.isEmpty()) {
            for (int changes = random.nextInt(4); changes > 0; changes--) {
                int at = random.nextInt(arguments.size());
                arguments.set(at, changed(arguments.get(at), declared.get(at)));
            }
        }
        return new Call(new FormulaText(example.name(), arguments), LANGUAGES[random.nextInt(LANGUAGES.length)]);
    }

    private Object changed(Object argument, ArgumentDeclaration declared) {
        if (declared.optional() && random.nextInt(4) == 0) {
            return Call.LEFT_OUT;
        }
        int way = random.nextInt(20);
        if (way == 0) {
            return reshaped(asCells(argument));
        }
        List<Object> values = known.getOrDefault(declared.name(), List.of());
        if (way < 4 && !values.isEmpty()) {
            return values.get(random.nextInt(values.size()));
        }
        if (!(argument instanceof Object[][] cells)) {
            return oneChanged(argument);
        }
        Object[][] copy = Arrays.stream(cells).map(Object[]::clone).toArray(Object[][]::new);
        if (way < 8) {
            return reshaped(copy);
        }
        Object[] row = copy[random.nextInt(copy.length)];
        int at = random.nextInt(row.length);
        row[at] = oneChanged(row[at]);
        return copy;
    }

    private static Object[][] asCells(Object argument) {
        return argument instanceof Object[][] cells
                ? cells
                : new Object[][] {{argument == Call.LEFT_OUT ? "" : argument}};
    }

    private Object oneChanged(Object cell) {
        if (cell instanceof Double number && random.nextInt(2) == 0) {
            double other = switch (random.nextInt(6)) {
                case 0 -> number * Math.pow(10, random.nextInt(25) - 12);
                case 1 -> -number;
                case 2 -> number + random.nextInt(7) - 3;
                case 3 -> number * 2 * random.nextDouble();
                case 4 -> Math.scalb(number, random.nextInt(121) - 60);
                default -> number;
            };
            // A cell never holds more than a number can be.
            return !Double.isFinite(other) ? number : other == number ? String.valueOf(number) : (Object) other;
        }
        return ODD[random.nextInt(ODD.length)];
    }

    private Object reshaped(Object[][] cells) {
        int rows = cells.length;
        return switch (random.nextInt(8)) {
            case 0 -> rows > 1 ? Arrays.copyOf(cells, rows - 1) : cells;
            case 1 -> withOneAgain(cells);
            case 2 -> filledUp(cells, rows + 1 + random.nextInt(40));
            case 3 -> turned(cells);
            case 4 -> twiceAsWide(cells);
            case 5 -> shuffled(cells);
            case 6 -> longer(cells, 1 + random.nextInt(random.nextInt(10) == 0 ? 3000 : 200));
            default ->
                switch (random.nextInt(200)) {
                    case 0 -> filledUp(cells, SHEET_ROWS);
                    case 1 -> longer(cells, SHEET_ROWS);
                    case 2 -> longer(cells, 20_000);
                    default -> cells[random.nextInt(rows)][0];
                };
        };
    }

    private Object[][] withOneAgain(Object[][] cells) {
        Object[][] more = Arrays.copyOf(cells, cells.length + 1);
        more[cells.length] = cells[random.nextInt(cells.length)];
        return more;
    }

    private static Object[][] turned(Object[][] cells) {
        Object[][] turned = new Object[cells[0].length][cells.length];
        for (int row = 0; row < cells.length; row++) {
            for (int column = 0; column < cells[0].length; column++) {
                turned[column][row] = cells[row][column];
            }
        }
        return turned;
    }

    private static Object[][] twiceAsWide(Object[][] cells) {
        Object[][] wide = new Object[cells.length][];
        for (int row = 0; row < wide.length; row++) {
            wide[row] = Arrays.copyOf(cells[row], 2 * cells[row].length);
            System.arraycopy(cells[row], 0, wide[row], cells[row].length, cells[row].length);
        }
        return wide;
    }

    private Object[][] shuffled(Object[][] cells) {
        Object[][] mixed = cells.clone();
        for (int i = mixed.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            Object[] row = mixed[i];
            mixed[i] = mixed[j];
            mixed[j] = row;
        }
        return mixed;
    }

    private static Object[][] filledUp(Object[][] cells, int rows) {
        Object[] blank = new Object[cells[0].length];
        Arrays.fill(blank, "");
        Object[][] all = Arrays.copyOf(cells, rows);
        Arrays.fill(all, Math.min(cells.length, rows), rows, blank);
        return all;
    }

    /** Columns that go on: numbers by their last step, all else as in the last row. */
    private static Object[][] longer(Object[][] cells, int rows) {
        Object[][] all = Arrays.copyOf(cells, rows);
        for (int row = cells.length; row < rows; row++) {
            Object[] before = all[row - 1];
            Object[] beforeThat = row > 1 ? all[row - 2] : before;
            Object[] next = new Object[before.length];
            for (int column = 0; column < next.length; column++) {
                next[column] = before[column] instanceof Double last
                                && beforeThat[column] instanceof Double first
                                && Double.isFinite(last + (last - first))
                        ? (Object) (last + (last - first))
                        : before[column];
            }
            all[row] = next;
        }
        return all;
    }
}
