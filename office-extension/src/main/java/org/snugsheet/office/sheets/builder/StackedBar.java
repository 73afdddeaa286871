package org.snugsheet.office.sheets.builder;

import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart.XDiagramPositioning;
import com.sun.star.chart2.XDataSeries;
import java.util.EnumSet;
import java.util.Iterator;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.ChartFrame;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.uno.Uno;

/**
 * A chart of horizontal bars, each made of parts: how much each part adds to the whole.
 *
 * @param title what it shows
 * @param along the title of the axis of values, with its unit
 * @param inWords what it shows, for somebody who cannot see it
 * @param table its cells: the first row names the parts, the first column the bars, the topmost bar last
 */
public record StackedBar(String title, String along, String inWords, Plot.Cells table) {

    // How much of its own breadth a bar keeps from the next, in percent.
    private static final int GAP = 45;
    // Room around the bars, in 1/100 mm.
    private static final int LEFT = 2300;
    private static final int RIGHT = 4200;
    private static final int ABOVE = 1100;
    private static final int BELOW = 1500;

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
        Uno.set(diagram, "Stacked", true);
        fillParts(chart);
        ChartFrame.title(chart, title);
        ChartFrame.titleY(diagram, along);
        ChartFrame.legend(chart, ChartLegendPosition.RIGHT);
        drawAxes(diagram);
        place(diagram, CellFrame.of(page, cells));
        ChartFrame.describe(page, name, title, inWords);
    }

    private static void fillParts(Object document) throws com.sun.star.uno.Exception {
        XDataSeries[] parts = HorizontalBars.series(document);
        Iterator<Fill> fills = EnumSet.allOf(Fill.class).iterator();
        for (XDataSeries part : parts) {
            if (!fills.hasNext()) {
                throw new IllegalStateException("More parts than fills: " + parts.length);
            }
            HorizontalBars.fill(document, part, fills.next());
        }
    }

    private static void drawAxes(XDiagram diagram) throws com.sun.star.uno.Exception {
        XAxisYSupplier values = Uno.as(XAxisYSupplier.class, diagram);
        XPropertySet bars = Uno.as(XAxisXSupplier.class, diagram).getXAxis();
        ChartFrame.numbers(values.getYAxis());
        values.getYAxis().setPropertyValue("GapWidth", GAP);
        bars.setPropertyValue("CharHeight", ChartFrame.SMALL_SIZE);
        Uno.set(diagram, "HasYAxisGrid", true);
        Uno.set(values.getYMainGrid(), "LineColor", Palette.GRID);
    }

    private static void place(XDiagram diagram, Rectangle all) throws com.sun.star.uno.Exception {
        ChartFrame.clearWall(diagram);
        Uno.as(XDiagramPositioning.class, diagram)
                .setDiagramPositionExcludingAxes(
                        new Rectangle(LEFT, ABOVE, all.Width - LEFT - RIGHT, all.Height - ABOVE - BELOW));
    }
}
