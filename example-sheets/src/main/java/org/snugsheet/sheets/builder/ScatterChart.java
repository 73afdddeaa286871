package org.snugsheet.sheets.builder;

import com.sun.star.awt.FontWeight;
import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.X3DDisplay;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart.XDiagramPositioning;
import com.sun.star.container.XNamed;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShapes;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableChartsSupplier;
import java.util.List;

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

    private static final float TITLE_SIZE = 12;
    private static final float AXIS_TITLE_SIZE = 10;
    private static final float SMALL_SIZE = 9;
    // Room around the axes, in 1/100 mm.
    private static final int LEFT = 1500;
    private static final int RIGHT = 400;
    private static final int ABOVE = 1100;
    private static final int BELOW = 2400;

    /**
     * A chart.
     */
    public ScatterChart {
        plots = List.copyOf(plots);
    }

    /**
     * Draws it.
     *
     * @param book the document
     * @param page the page on which it stands
     * @param name its own name
     * @param cells the cells that it covers
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void draw(Book book, Page page, String name, String cells) throws com.sun.star.uno.Exception {
        var charts = Uno.as(XTableChartsSupplier.class, page.sheet()).getCharts();
        // Without any cells the office gives a chart no access to the sheet; the first plot is put in anew below.
        CellRangeAddress[] some = {
            plots.get(0).up().page().place(plots.get(0).up().address())
        };
        charts.addNewByName(name, page.rectangle(cells), some, false, false);
        Object document =
                Uno.as(XEmbeddedObjectSupplier.class, charts.getByName(name)).getEmbeddedObject();
        XChartDocument chart = Uno.as(XChartDocument.class, document);
        XDiagram diagram = Uno.as(XDiagram.class, Uno.make(chart, "com.sun.star.chart.XYDiagram"));
        chart.setDiagram(diagram);
        new ChartSeries(book.office(), document).put(plots);
        writeTitles(chart);
        writeLegend(chart);
        drawAxes(chart.getDiagram());
        placeDiagram(chart.getDiagram(), page.rectangle(cells));
        describe(page, name);
    }

    private void writeTitles(XChartDocument chart) throws com.sun.star.uno.Exception {
        Uno.set(chart, "HasMainTitle", true);
        title(chart.getTitle(), title, TITLE_SIZE);
        Uno.set(chart.getTitle(), "CharWeight", FontWeight.BOLD);
        Uno.set(chart.getTitle(), "CharColor", Palette.HEADING);
        XDiagram diagram = chart.getDiagram();
        Uno.set(diagram, "HasXAxisTitle", true);
        title(Uno.as(XAxisXSupplier.class, diagram).getXAxisTitle(), across, AXIS_TITLE_SIZE);
        Uno.set(diagram, "HasYAxisTitle", true);
        title(Uno.as(XAxisYSupplier.class, diagram).getYAxisTitle(), up, AXIS_TITLE_SIZE);
    }

    private static void title(Object shape, String text, float size) throws com.sun.star.uno.Exception {
        Uno.set(shape, "String", text);
        Uno.set(shape, "CharHeight", size);
    }

    private static void writeLegend(XChartDocument chart) throws com.sun.star.uno.Exception {
        Uno.set(chart, "HasLegend", true);
        Uno.set(chart.getLegend(), "Alignment", ChartLegendPosition.BOTTOM);
        Uno.set(chart.getLegend(), "CharHeight", SMALL_SIZE);
        Uno.set(chart.getLegend(), "FillStyle", FillStyle.NONE);
        Uno.set(chart.getLegend(), "LineStyle", LineStyle.NONE);
    }

    // Left alone, the office leaves much room around the axes, and a grey ground behind them.
    private static void placeDiagram(XDiagram diagram, Rectangle all) throws com.sun.star.uno.Exception {
        Uno.set(Uno.as(X3DDisplay.class, diagram).getWall(), "FillStyle", FillStyle.NONE);
        Uno.as(XDiagramPositioning.class, diagram)
                .setDiagramPositionExcludingAxes(
                        new Rectangle(LEFT, ABOVE, all.Width - LEFT - RIGHT, all.Height - ABOVE - BELOW));
    }

    private static void drawAxes(XDiagram diagram) throws com.sun.star.uno.Exception {
        XAxisXSupplier bottom = Uno.as(XAxisXSupplier.class, diagram);
        XAxisYSupplier side = Uno.as(XAxisYSupplier.class, diagram);
        for (XPropertySet axis : List.of(bottom.getXAxis(), side.getYAxis())) {
            axis.setPropertyValue("CharHeight", SMALL_SIZE);
            axis.setPropertyValue("LinkNumberFormatToSource", false);
            axis.setPropertyValue("NumberFormat", 0);
        }
        Uno.set(diagram, "HasXAxisGrid", true);
        Uno.set(diagram, "HasYAxisGrid", true);
        Uno.set(bottom.getXMainGrid(), "LineColor", Palette.GRID);
        Uno.set(side.getYMainGrid(), "LineColor", Palette.GRID);
    }

    private void describe(Page page, String name) throws com.sun.star.uno.Exception {
        XShapes shapes = Uno.as(
                XShapes.class, Uno.as(XDrawPageSupplier.class, page.sheet()).getDrawPage());
        for (int i = 0; i < shapes.getCount(); i++) {
            Object shape = shapes.getByIndex(i);
            if (name.equals(Uno.get(shape, "PersistName"))
                    || name.equals(Uno.as(XNamed.class, shape).getName())) {
                Uno.set(shape, "Title", title);
                Uno.set(shape, "Description", inWords);
                return;
            }
        }
        throw new IllegalStateException("The chart " + name + " is not on its page");
    }
}
