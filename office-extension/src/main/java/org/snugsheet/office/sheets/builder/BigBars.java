package org.snugsheet.office.sheets.builder;

import com.sun.star.awt.FontWeight;
import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartAxisPosition;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart.XDiagramPositioning;
import com.sun.star.chart2.DataPointLabel;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.drawing.LineStyle;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.ChartFrame;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.uno.Uno;

/**
 * A chart of horizontal bars, one below the other, each with its value written at its end. The topmost bar is the first of the
 * table.
 *
 * @param title what it shows
 * @param along the title of the axis of values, with its unit
 * @param inWords what it shows, for somebody who cannot see it
 * @param points the size of its type: 10 to be read on paper, 20 to be read from the last row of a classroom
 * @param table its cells: two columns, names and values, with a heading each
 */
public record BigBars(String title, String along, String inWords, float points, Plot.Cells table) {

    private static final int GAP = 35;
    private static final double TITLE = 1.3;
    // Room around the bars, in 1/100 mm for each point of type: the names, the last number, the title, the numbers
    // below.
    private static final int LEFT = 300;
    private static final int RIGHT = 110;
    private static final int ABOVE = 95;
    private static final int BELOW = 115;

    /**
     * Draws it.
     *
     * @param page the page it is on
     * @param name its own name
     * @param cells the cells that it covers
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void draw(Page page, String name, String cells) throws com.sun.star.uno.Exception {
        XChartDocument chart = HorizontalBars.draw(page, name, cells, table);
        XDiagram diagram = chart.getDiagram();
        Uno.set(chart, "HasLegend", false);
        for (XDataSeries bars : HorizontalBars.series(chart)) {
            HorizontalBars.fill(chart, bars, Fill.SKY_BLUE);
            // So that a bar of no length does not show.
            Uno.set(bars, "BorderStyle", LineStyle.NONE);
            writeValues(bars);
        }
        ChartFrame.title(chart, title);
        Uno.set(chart.getTitle(), "CharHeight", (float) (points * TITLE));
        ChartFrame.titleY(diagram, along);
        Uno.set(Uno.as(XAxisYSupplier.class, diagram).getYAxisTitle(), "CharHeight", points);
        drawAxes(diagram);
        ChartFrame.clearWall(diagram);
        Rectangle all = CellFrame.of(page, cells);
        Uno.as(XDiagramPositioning.class, diagram)
                .setDiagramPositionExcludingAxes(new Rectangle(
                        size(LEFT), size(ABOVE), all.Width - size(LEFT + RIGHT), all.Height - size(ABOVE + BELOW)));
        ChartFrame.describe(page, name, title, inWords);
    }

    private int size(int forEachPoint) {
        return Math.round(forEachPoint * points);
    }

    private void writeValues(Object bars) throws com.sun.star.uno.Exception {
        DataPointLabel label = new DataPointLabel();
        label.ShowNumber = true;
        Uno.set(bars, "Label", label);
        Uno.set(bars, "CharHeight", points);
        Uno.set(bars, "CharWeight", FontWeight.BOLD);
        Uno.set(bars, "CharColor", Palette.TEXT);
    }

    private void drawAxes(XDiagram diagram) throws com.sun.star.uno.Exception {
        XAxisYSupplier values = Uno.as(XAxisYSupplier.class, diagram);
        XPropertySet names = Uno.as(XAxisXSupplier.class, diagram).getXAxis();
        ChartFrame.numbers(values.getYAxis());
        values.getYAxis().setPropertyValue("CharHeight", points);
        values.getYAxis().setPropertyValue("GapWidth", GAP);
        values.getYAxis().setPropertyValue("Min", 0.0);
        names.setPropertyValue("CharHeight", points);
        // A long name goes on in a second line instead of ending in dots.
        names.setPropertyValue("TextBreak", true);
        // The first name at the top; the numbers stay below.
        names.setPropertyValue("ReverseDirection", true);
        values.getYAxis().setPropertyValue("CrossoverPosition", ChartAxisPosition.END);
        Uno.set(diagram, "HasYAxisGrid", true);
        Uno.set(values.getYMainGrid(), "LineColor", Palette.GRID);
    }
}
