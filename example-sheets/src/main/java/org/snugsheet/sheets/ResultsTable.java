package org.snugsheet.sheets;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.harness.CellResult;

/** Writes cells as lines of text, in columns. */
final class ResultsTable {

    private ResultsTable() {}

    /**
     * The cells as they are shown, the first column to the left, the others to the right.
     *
     * @param rows the cells, row by row
     * @return a line for each row that is not blank
     */
    static List<String> lines(List<List<CellResult>> rows) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<CellResult> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).shown().length());
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<CellResult> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                String shown = row.get(i).shown();
                String room = " ".repeat(widths[i] - shown.length());
                line.append(i == 0 ? shown + room : "  " + room + shown);
            }
            if (!line.toString().isBlank()) {
                lines.add(line.toString().stripTrailing());
            }
        }
        return lines;
    }
}
