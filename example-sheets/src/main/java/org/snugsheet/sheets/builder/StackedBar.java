package org.snugsheet.sheets.builder;

import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartDataRowSource;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart.XDiagramPositioning;
import com.sun.star.chart2.XChartTypeContainer;
import com.sun.star.chart2.XCoordinateSystemContainer;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.chart2.XDataSeriesContainer;
import com.sun.star.container.XNameContainer;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableChartsSupplier;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.Locale;

/**
 * A chart of lying bars, each put together from parts: how much each part adds to the whole.
 *
 * @param title what it shows
 * @param along the title of the axis of values, with its unit
 * @param inWords what it shows, for somebody who cannot see it
 * @param table its cells: the first row names the parts, the first column the bars, the topmost bar last
 */
public record StackedBar(String title, String along, String inWords, Plot.Cells table) {

    private static final int BORDER_WIDTH = 18;
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
     * @param page the page on which it stands
     * @param name its own name
     * @param cells the cells that it covers
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void draw(Page page, String name, String cells) throws com.sun.star.uno.Exception {
        var charts = Uno.as(XTableChartsSupplier.class, page.sheet()).getCharts();
        CellRangeAddress[] from = {table.page().place(table.address())};
        charts.addNewByName(name, page.rectangle(cells), from, true, true);
        Object document =
                Uno.as(XEmbeddedObjectSupplier.class, charts.getByName(name)).getEmbeddedObject();
        XChartDocument chart = Uno.as(XChartDocument.class, document);
        chart.setDiagram(Uno.as(XDiagram.class, Uno.make(chart, "com.sun.star.chart.BarDiagram")));
        XDiagram diagram = chart.getDiagram();
        Uno.set(diagram, "DataRowSource", ChartDataRowSource.COLUMNS);
        // The office calls lying bars vertical: their axis of categories is.
        Uno.set(diagram, "Vertical", true);
        Uno.set(diagram, "Stacked", true);
        fillParts(document);
        ChartFrame.title(chart, title);
        ChartFrame.titleY(diagram, along);
        ChartFrame.legend(chart, ChartLegendPosition.RIGHT);
        drawAxes(diagram);
        place(diagram, page.rectangle(cells));
        ChartFrame.describe(page, name, title, inWords);
    }

    private static void fillParts(Object document) throws com.sun.star.uno.Exception {
        var chart = Uno.as(com.sun.star.chart2.XChartDocument.class, document);
        var systems = Uno.as(XCoordinateSystemContainer.class, chart.getFirstDiagram());
        var types = Uno.as(XChartTypeContainer.class, systems.getCoordinateSystems()[0]);
        XDataSeries[] parts =
                Uno.as(XDataSeriesContainer.class, types.getChartTypes()[0]).getDataSeries();
        Iterator<Fill> fills = EnumSet.allOf(Fill.class).iterator();
        for (XDataSeries part : parts) {
            if (!fills.hasNext()) {
                throw new IllegalStateException("More parts than fills: " + parts.length);
            }
            fill(document, part, fills.next());
        }
    }

    private static void fill(Object chart, Object part, Fill fill) throws com.sun.star.uno.Exception {
        Uno.set(part, "Color", fill.colour());
        Uno.set(part, "BorderStyle", LineStyle.SOLID);
        Uno.set(part, "BorderColor", Palette.TEXT);
        Uno.set(part, "BorderWidth", BORDER_WIDTH);
        if (fill.isRuled()) {
            String name = "Snug " + fill.name().toLowerCase(Locale.ROOT);
            XNameContainer hatches = Uno.as(XNameContainer.class, Uno.make(chart, "com.sun.star.drawing.HatchTable"));
            if (!hatches.hasByName(name)) {
                hatches.insertByName(name, fill.lines());
            }
            Uno.set(part, "FillStyle", FillStyle.HATCH);
            Uno.set(part, "HatchName", name);
            Uno.set(part, "FillBackground", true);
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
