package org.snugsheet.office.fuzz;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.snugsheet.office.functions.Families;

/**
 * What each function costs with the arguments of its example, which are those of a lesson: processor time in plain Java, after it was
 * called a while. Each call has a number that no call had before, where there is one that need not be whole, so that nothing is remembered. The
 * slowest ten are printed.
 *
 * <pre>mvn -q -Poffice-benchmark -DskipTests -pl office-extension -am verify</pre>
 */
public final class CallTimes {

    private static final int WARMING = 200;
    private static final int CALLS = 101;
    private static final int SHOWN = 10;
    private static final double LEAST_CHANGE = 1e-9;

    private record Cost(String formula, double first, double median) {

        static Cost of(String formula) {
            Call call = Call.of(formula);
            double first = call.made().seconds();
            for (int i = 0; i < WARMING; i++) {
                other(call, i + 1).made();
            }
            double[] seconds = IntStream.range(0, CALLS)
                    .mapToDouble(i -> other(call, WARMING + i + 1).made().seconds())
                    .sorted()
                    .toArray();
            return new Cost(formula, first, seconds[CALLS / 2]);
        }
    }

    private CallTimes() {}

    private static Call other(Call call, int turn) {
        List<Object> arguments = new ArrayList<>(call.formula().arguments());
        for (int i = 0; i < arguments.size(); i++) {
            Object changed = other(arguments.get(i), 1 + turn * LEAST_CHANGE);
            if (!changed.equals(arguments.get(i))) {
                arguments.set(i, changed);
                break;
            }
        }
        return new Call(new FormulaText(call.formula().name(), arguments), call.language());
    }

    private static Object other(Object value, double factor) {
        if (value instanceof Double number && number != Math.rint(number)) {
            return number * factor;
        }
        if (value instanceof Object[][] rows) {
            Object[][] changed = Arrays.stream(rows).map(Object[]::clone).toArray(Object[][]::new);
            for (Object[] row : changed) {
                for (int column = 0; column < row.length; column++) {
                    Object cell = other(row[column], factor);
                    if (!cell.equals(row[column])) {
                        row[column] = cell;
                        return changed;
                    }
                }
            }
        }
        return value;
    }

    /**
     * Measures and prints.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        List<Cost> costs = Families.functions().stream()
                .map(function -> Cost.of(function.function().example()))
                .sorted(Comparator.comparingDouble(Cost::median).reversed())
                .toList();
        double[] medians = costs.stream().mapToDouble(Cost::median).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%d functions: median %.3f ms, slowest %.3f ms%n%n| formula | first call | median |%n|---|---|---|%n",
                costs.size(),
                1e3 * medians[medians.length / 2],
                1e3 * Arrays.stream(medians).max().orElse(0));
        costs.stream()
                .limit(SHOWN)
                .forEach(cost -> System.out.printf(
                        Locale.ROOT,
                        "| `%s` | %.1f ms | %.3f ms |%n",
                        cost.formula(),
                        1e3 * cost.first(),
                        1e3 * cost.median()));
    }
}
