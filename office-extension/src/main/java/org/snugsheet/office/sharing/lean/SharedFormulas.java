package org.snugsheet.office.sharing.lean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes formulas of a column that are alike once, as shared formulas (ECMA-376, part 1, 18.3.1.40): the first cell holds the formula, the others
 * its number. Formulas are alike if each of their references names the same row in all of them, or a row equally far from its cell. Dollar
 * signs are set to what that needs; so this is for a page that nobody fills down.
 *
 * <p>A formula that names another sheet stays as it is: some programs share none of these.
 */
final class SharedFormulas {

    private static final int SAME = 1;
    private static final int AS_FAR = 2;

    private final Map<String, List<Shared>> byShape = new HashMap<>();
    private final Map<Integer, Shared> byPlace = new HashMap<>();
    private int numbers;

    private SharedFormulas() {}

    /** A formula of several cells. */
    private static final class Shared {

        private final int row;
        private final String formula;
        private final List<NamedCells.Named> named;
        private final int[] kinds;
        private int last;
        private int count = 1;
        private int number = -1;

        Shared(int row, String formula, List<NamedCells.Named> named) {
            this.row = row;
            this.formula = formula;
            this.named = named;
            this.kinds = new int[named.size()];
            java.util.Arrays.fill(kinds, SAME | AS_FAR);
            this.last = row;
        }

        /** Takes in a formula of the same shape if all of its references allow it. */
        boolean takes(int other, List<NamedCells.Named> others) {
            int[] narrower = new int[kinds.length];
            for (int i = 0; i < kinds.length; i++) {
                NamedCells.Named one = named.get(i);
                NamedCells.Named two = others.get(i);
                int kind = (one.row() == two.row() ? SAME : 0) | (one.row() - row == two.row() - other ? AS_FAR : 0);
                narrower[i] = kinds[i] & kind;
                if (narrower[i] == 0 || !one.column().equals(two.column())) {
                    return false;
                }
            }
            System.arraycopy(narrower, 0, kinds, 0, kinds.length);
            last = other;
            count++;
            return true;
        }

        String written() {
            StringBuilder written = new StringBuilder();
            int at = 0;
            for (int i = 0; i < kinds.length; i++) {
                NamedCells.Named cell = named.get(i);
                written.append(formula, at, cell.start())
                        .append('$')
                        .append(cell.column())
                        .append(kinds[i] >= AS_FAR ? "" : "$")
                        .append(cell.row());
                at = cell.end();
            }
            return written.append(formula, at, formula.length()).toString();
        }
    }

    /** The rows of a sheet with their formulas shared. */
    static String in(String sheet) {
        SharedFormulas formulas = new SharedFormulas();
        List<FormulaCell> cells = FormulaCell.of(sheet);
        cells.forEach(formulas::add);
        return FormulaCell.replaced(sheet, cells, formulas::written);
    }

    private void add(FormulaCell cell) {
        String formula = cell.plain();
        NamedCells cells = new NamedCells(formula);
        if (formula.isEmpty() || cells.isFar()) {
            return;
        }
        int row = cell.row();
        List<NamedCells.Named> named = cells.all();
        StringBuilder shape = new StringBuilder(cell.column()).append(' ');
        int at = 0;
        for (NamedCells.Named one : named) {
            shape.append(formula, at, one.start()).append('\n');
            at = one.end();
        }
        shape.append(formula, at, formula.length());
        List<Shared> alike = byShape.computeIfAbsent(shape.toString(), first -> new ArrayList<>());
        for (Shared one : alike) {
            if (one.takes(row, named)) {
                byPlace.put(cell.start(), one);
                return;
            }
        }
        Shared own = new Shared(row, formula, named);
        alike.add(own);
        byPlace.put(cell.start(), own);
    }

    private String written(FormulaCell cell) {
        String formula = cell.plain();
        if (formula.isEmpty()) {
            return cell.whole();
        }
        return cell.tag() + written(cell, formula) + cell.value();
    }

    private String written(FormulaCell cell, String formula) {
        Shared shared = byPlace.get(cell.start());
        if (shared == null || shared.count == 1) {
            return "<f>" + formula + "</f>";
        }
        if (shared.number >= 0) {
            return "<f t=\"shared\" si=\"" + shared.number + "\"/>";
        }
        shared.number = numbers++;
        String column = cell.column();
        String where = column + shared.row + ":" + column + shared.last;
        return "<f t=\"shared\" ref=\"" + where + "\" si=\"" + shared.number + "\">" + shared.written() + "</f>";
    }
}
