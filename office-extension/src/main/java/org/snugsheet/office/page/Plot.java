package org.snugsheet.office.page;

/**
 * One row of points, or one line, of a {@link ScatterChart}.
 *
 * @param form points or a line
 * @param across the cells with the values along the bottom
 * @param up the cells with the values at the side
 * @param name the cell with its name
 * @param ink how it is drawn
 */
public record Plot(Form form, Cells across, Cells up, Cells name, SeriesColor ink) {

    /** How the values are shown. */
    public enum Form {
        /** A symbol at each value. */
        POINTS,
        /** A line through the values. It has no entry of its own in the legend, but shares that of its points. */
        LINE,
        /** A thin line that carries its name at its second value. It is not in the legend. */
        GUIDE,
        /** A thin line with an entry of its own in the legend: a limit. */
        LIMIT,
        /** A hairline without an entry in the legend: the edge of a band round a line. */
        EDGE
    }

    /**
     * Cells of a page.
     *
     * @param page the page
     * @param address the cells
     */
    public record Cells(Page page, String address) {
        /**
         * The cells as a chart names them.
         *
         * @return such as {@code $'Jars'.$A$1:$A$9}
         */
        public String written() {
            // In quotes, because the name of a page may have blanks in it.
            return "$'" + page.name() + "'." + address.replaceAll("([A-Z]+)([0-9]+)", "\\$$1\\$$2");
        }
    }
}
