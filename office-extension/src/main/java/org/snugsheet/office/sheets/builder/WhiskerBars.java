package org.snugsheet.office.sheets.builder;

import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartAxisPosition;
import com.sun.star.chart.ErrorBarStyle;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart.XDiagramPositioning;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.chart2.data.XDataSequence;
import com.sun.star.chart2.data.XDataSink;
import com.sun.star.chart2.data.XLabeledDataSequence;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.uno.XComponentContext;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.ChartFrame;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.uno.Uno;

/**
 * Lying bars with a thin line at the end of each that shows how much shorter or longer it may be. Each bar lies in its row of cells; its
 * name and value stand in the cells beside it, so that the chart has neither axes nor words, and is nothing at all as long as its
 * cells are empty.
 *
 * @param title what it shows, for somebody who cannot see it
 * @param inWords the same at length
 * @param bars the cells with the length of each bar
 * @param room the cells with how far the chart must go to show its line whole
 * @param shorter the cells with what each bar may be shorter
 * @param longer the cells with what each bar may be longer
 */
public record WhiskerBars(
        String title, String inWords, Plot.Cells bars, Plot.Cells room, Plot.Cells shorter, Plot.Cells longer) {

    private static final int GAP = 30;
    // In 1/100 mm.
    private static final int WHISKER = 90;
    private static final int ABOVE = 1;

    /**
     * Draws it.
     *
     * @param office the office’s context
     * @param page the page it is on
     * @param name its own name
     * @param cells the cells that it covers, a row for each bar
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void draw(XComponentContext office, Page page, String name, String cells) throws com.sun.star.uno.Exception {
        XChartDocument chart = HorizontalBars.draw(page, name, cells, bars);
        XDiagram diagram = chart.getDiagram();
        Uno.set(chart, "HasLegend", false);
        Uno.set(chart, "HasMainTitle", false);
        Uno.set(chart.getArea(), "FillStyle", FillStyle.NONE);
        Uno.set(chart.getArea(), "LineStyle", LineStyle.NONE);
        // Cells that are still empty make no series by themselves.
        XDataSeries[] series = {series(office, chart, bars), series(office, chart, room)};
        HorizontalBars.put(chart, series);
        HorizontalBars.fill(chart, series[0], Fill.BLUE);
        // So that a bar of no length does not show.
        Uno.set(series[0], "BorderStyle", LineStyle.NONE);
        Uno.set(series[0], "ErrorBarY", whiskers(office, chart));
        // The office chooses its axis by the bars and not by their lines.
        Uno.set(series[1], "FillStyle", FillStyle.NONE);
        Uno.set(series[1], "BorderStyle", LineStyle.NONE);
        hideAxes(diagram);
        ChartFrame.clearWall(diagram);
        Rectangle all = CellFrame.of(page, cells);
        Uno.as(XDiagramPositioning.class, diagram)
                .setDiagramPositionExcludingAxes(new Rectangle(ABOVE, ABOVE, all.Width - ABOVE, all.Height - ABOVE));
        ChartFrame.describe(page, name, title, inWords);
    }

    private static XDataSeries series(XComponentContext office, Object chart, Plot.Cells cells)
            throws com.sun.star.uno.Exception {
        Object series = make(office, "com.sun.star.chart2.DataSeries");
        Uno.as(XDataSink.class, series).setData(new XLabeledDataSequence[] {values(office, chart, cells, "values-y")});
        return Uno.as(XDataSeries.class, series);
    }

    private Object whiskers(XComponentContext office, Object chart) throws com.sun.star.uno.Exception {
        Object whiskers = make(office, "com.sun.star.chart2.ErrorBar");
        Uno.set(whiskers, "ErrorBarStyle", ErrorBarStyle.FROM_DATA);
        Uno.set(whiskers, "ShowPositiveError", true);
        Uno.set(whiskers, "ShowNegativeError", true);
        Uno.set(whiskers, "LineStyle", LineStyle.SOLID);
        Uno.set(whiskers, "LineColor", Palette.TEXT);
        Uno.set(whiskers, "LineWidth", WHISKER);
        Uno.as(XDataSink.class, whiskers).setData(new XLabeledDataSequence[] {
            values(office, chart, longer, "error-bars-y-positive"),
            values(office, chart, shorter, "error-bars-y-negative")
        });
        return whiskers;
    }

    private static XLabeledDataSequence values(XComponentContext office, Object chart, Plot.Cells cells, String role)
            throws com.sun.star.uno.Exception {
        XDataSequence sequence = Uno.as(com.sun.star.chart2.XChartDocument.class, chart)
                .getDataProvider()
                .createDataSequenceByRangeRepresentation(cells.written());
        Uno.set(sequence, "Role", role);
        XLabeledDataSequence labelled =
                Uno.as(XLabeledDataSequence.class, make(office, "com.sun.star.chart2.data.LabeledDataSequence"));
        labelled.setValues(sequence);
        return labelled;
    }

    private static Object make(XComponentContext office, String service) throws com.sun.star.uno.Exception {
        return office.getServiceManager().createInstanceWithContext(service, office);
    }

    private static void hideAxes(XDiagram diagram) throws com.sun.star.uno.Exception {
        XAxisYSupplier values = Uno.as(XAxisYSupplier.class, diagram);
        XPropertySet names = Uno.as(XAxisXSupplier.class, diagram).getXAxis();
        values.getYAxis().setPropertyValue("GapWidth", GAP);
        values.getYAxis().setPropertyValue("Overlap", 100);
        values.getYAxis().setPropertyValue("Min", 0.0);
        // The first bar at the top.
        names.setPropertyValue("ReverseDirection", true);
        values.getYAxis().setPropertyValue("CrossoverPosition", ChartAxisPosition.END);
        Uno.set(diagram, "HasYAxisGrid", false);
        Uno.set(diagram, "HasXAxis", false);
        Uno.set(diagram, "HasYAxis", false);
    }
}
