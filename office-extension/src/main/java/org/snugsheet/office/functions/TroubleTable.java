package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipKind;

/** The tables that CHECK.ALL and CHECK.SHEET answer with. */
final class TroubleTable {

    private static final double SURE = 0.999;
    private static final double VERY_LIKELY = 0.98;
    private static final double LIKELY = 0.9;

    private final List<Object[]> rows = new ArrayList<>();
    private final boolean namesJars;

    private TroubleTable(boolean namesJars) {
        this.namesJars = namesJars;
        row("Jar", "Row", "What is wrong", "How sure", "What to do");
    }

    static Object[][] ofJar(List<Slip> slips) {
        TroubleTable table = new TroubleTable(false);
        table.add("", slips);
        return table.cells();
    }

    static TroubleTable ofSheet() {
        return new TroubleTable(true);
    }

    /** What cannot even be looked at, as a slip that is sure. */
    static Slip refused(Refusal refusal) {
        return new Slip(SlipKind.REFUSED, 1, refusal.finding());
    }

    void add(String jar, List<Slip> slips) {
        if (slips.isEmpty()) {
            row(jar, "", "OK", "", "");
        }
        for (Slip slip : slips) {
            Object row = slip.row().isPresent() ? (Object) (double) slip.row().getAsInt() : "";
            row(
                    jar,
                    row,
                    slip.finding().whatIsWrong(),
                    howSure(slip.certainty()),
                    slip.finding().whatToDo());
        }
    }

    Object[][] cells() {
        return rows.toArray(Object[][]::new);
    }

    private void row(Object jar, Object row, Object wrong, Object sure, Object toDo) {
        rows.add(namesJars ? new Object[] {jar, row, wrong, sure, toDo} : new Object[] {row, wrong, sure, toDo});
    }

    private static String howSure(double certainty) {
        return certainty >= SURE
                ? "sure"
                : certainty >= VERY_LIKELY ? "very likely" : certainty >= LIKELY ? "likely" : "perhaps";
    }
}
