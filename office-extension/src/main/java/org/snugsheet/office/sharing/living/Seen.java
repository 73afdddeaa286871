package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;

/** What is seen of the document that is copied, while its own formulas still stand in it. */
public interface Seen {

    /** What an error is as an answer. */
    Object ERROR = new Object();

    /**
     * Cells of one sheet.
     *
     * @param sheet its name
     * @param left the first column, from 0
     * @param top the first row, from 0
     * @param columns how many columns
     * @param rows how many rows
     */
    record Cells(String sheet, int left, int top, int columns, int rows) {

        int count() {
            return columns * rows;
        }

        boolean isLine() {
            return columns == 1 || rows == 1;
        }

        /** Each of a line, as formulas call it. */
        List<String> line() {
            return java.util.stream.IntStream.range(0, count())
                    .mapToObj(i -> rows == 1 ? at(i, 0) : at(0, i))
                    .toList();
        }

        /** A column of a block. */
        Cells column(int column) {
            return new Cells(sheet, left + column, top, 1, rows);
        }

        /** All of them, as formulas call them. */
        String whole() {
            String first = at(0, 0);
            return count() == 1 ? first : first + ":" + StepsPage.address(left + columns - 1, top + rows - 1);
        }

        private String at(int column, int row) {
            return "$'" + sheet.replace("'", "''") + "'." + StepsPage.address(left + column, top + row);
        }
    }

    /**
     * The cells that a name stands for.
     *
     * @param name the name
     * @return its cells; empty if there is no such name or it stands for something else
     */
    Optional<Cells> named(String name);

    /**
     * The formulas of cells, row by row.
     *
     * @param cells the cells
     * @return what somebody would type into each; none if that is not known
     */
    default List<String> formulas(Cells cells) {
        return List.of();
    }

    /**
     * What a formula answers now.
     *
     * @param formula without its equals sign; its references name their sheets
     * @return rows of numbers, texts and {@link #ERROR}
     */
    Object[][] answer(String formula);
}
