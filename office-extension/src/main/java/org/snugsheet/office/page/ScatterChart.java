package org.snugsheet.office.page;

import com.sun.star.awt.Rectangle;
import com.sun.star.chart.ChartAxisLabelPosition;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart.XDiagramPositioning;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.XComponentContext;
import java.util.List;
import org.snugsheet.office.uno.Uno;

/**
 * A chart of values against values, with titles that name their units.
 *
 * @param title what it shows
 * @param across the title of the axis along the bottom, with its unit
 * @param up the title of the axis at the side, with its unit
 * @param inWords what it shows, for somebody who cannot see it
 * @param plots what is drawn, the last on top
 */
public record ScatterChart(String title, String across, String up, String inWords, List<Plot> plots) {

    // Room around the axes, in 1/100 mm.
    private static final int LEFT = 1500;
    private static final int RIGHT = 400;
    private static final int ABOVE = 1100;
    private static final int BELOW = 2400;
    private static final int BELOW_ALONE = 1400;

    /**
     * A chart.
     */
    public ScatterChart {
        plots = List.copyOf(plots);
    }

    /**
     * Draws it.
     *
     * @param office the office’s context
     * @param page the page it is on
     * @param name its name, which the document does not have yet; if empty, the office gives one
     * @param cells the cells that it covers
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void draw(XComponentContext office, Page page, String name, String cells) throws com.sun.star.uno.Exception {
        draw(office, page, name, cells, true);
    }

    /**
     * Draws it without a legend, where cells beside it say what each row of points is: unlike an entry of a legend, a cell can be empty.
     *
     * @param office the office’s context
     * @param page the page it is on
     * @param name its name, which the document does not have yet
     * @param cells the cells that it covers
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void drawWithoutLegend(XComponentContext office, Page page, String name, String cells)
            throws com.sun.star.uno.Exception {
        draw(office, page, name, cells, false);
    }

    private void draw(XComponentContext office, Page page, String name, String cells, boolean hasLegend)
            throws com.sun.star.uno.Exception {
        var charts = Uno.as(XTableChartsSupplier.class, page.sheet()).getCharts();
        // Without any cells the office gives a chart no access to the sheet; the first plot is added again below.
        CellRangeAddress[] some = {
            plots.get(0).up().page().place(plots.get(0).up().address())
        };
        // A sheet that is brought back by Redo comes with its chart, whose cells the office has lost.
        boolean isNew = charts.getElementNames().length == 0 || !name.isEmpty();
        if (isNew) {
            charts.addNewByName(name, CellFrame.of(page, cells), some, false, false);
        }
        String own = name.isEmpty() ? charts.getElementNames()[0] : name;
        Object document =
                Uno.as(XEmbeddedObjectSupplier.class, charts.getByName(own)).getEmbeddedObject();
        XChartDocument chart = Uno.as(XChartDocument.class, document);
        XDiagram diagram = Uno.as(XDiagram.class, Uno.make(chart, "com.sun.star.chart.XYDiagram"));
        chart.setDiagram(diagram);
        new ChartSeries(office, document).put(plots);
        ChartFrame.title(chart, title);
        ChartFrame.titleX(chart.getDiagram(), across);
        ChartFrame.titleY(chart.getDiagram(), up);
        if (hasLegend) {
            ChartFrame.legend(chart, ChartLegendPosition.BOTTOM);
        } else {
            Uno.set(chart, "HasLegend", false);
        }
        drawAxes(chart.getDiagram());
        placeDiagram(chart.getDiagram(), CellFrame.of(page, cells), hasLegend ? BELOW : BELOW_ALONE);
        if (isNew) {
            ChartFrame.describe(page, own, title, inWords);
            UndoPause.again(page.document());
        }
    }

    // Left alone, the office leaves much room around the axes.
    private static void placeDiagram(XDiagram diagram, Rectangle all, int below) throws com.sun.star.uno.Exception {
        ChartFrame.clearWall(diagram);
        Uno.as(XDiagramPositioning.class, diagram)
                .setDiagramPositionExcludingAxes(
                        new Rectangle(LEFT, ABOVE, all.Width - LEFT - RIGHT, all.Height - ABOVE - below));
    }

    private static void drawAxes(XDiagram diagram) throws com.sun.star.uno.Exception {
        XAxisXSupplier bottom = Uno.as(XAxisXSupplier.class, diagram);
        XAxisYSupplier side = Uno.as(XAxisYSupplier.class, diagram);
        ChartFrame.numbers(bottom.getXAxis());
        ChartFrame.numbers(side.getYAxis());
        // Below the lowest value, and not across the curves where it is colder than zero.
        bottom.getXAxis().setPropertyValue("LabelPosition", ChartAxisLabelPosition.OUTSIDE_START);
        Uno.set(diagram, "HasXAxisGrid", true);
        Uno.set(diagram, "HasYAxisGrid", true);
        Uno.set(bottom.getXMainGrid(), "LineColor", Palette.GRID);
        Uno.set(side.getYMainGrid(), "LineColor", Palette.GRID);
    }
}
