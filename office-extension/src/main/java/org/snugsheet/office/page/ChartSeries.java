package org.snugsheet.office.page;

import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.DataLabelPlacement;
import com.sun.star.chart2.DataPointLabel;
import com.sun.star.chart2.Symbol;
import com.sun.star.chart2.SymbolStyle;
import com.sun.star.chart2.XChartDocument;
import com.sun.star.chart2.XChartTypeContainer;
import com.sun.star.chart2.XCoordinateSystemContainer;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.chart2.XDataSeriesContainer;
import com.sun.star.chart2.data.XDataProvider;
import com.sun.star.chart2.data.XDataSequence;
import com.sun.star.chart2.data.XDataSink;
import com.sun.star.chart2.data.XLabeledDataSequence;
import com.sun.star.container.XNameContainer;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.uno.XComponentContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.uno.Uno;

/** Puts the rows of points and the lines into a chart. Sizes in 1/100 mm. */
final class ChartSeries {
    private static final int LINE_WIDTH = 55;
    private static final int GUIDE_WIDTH = 30;
    private static final int EDGE_WIDTH = 8;
    private static final float LABEL_SIZE = 9;
    private static final int SYMBOL_SIZE = 210;

    private final XComponentContext office;
    private final XMultiComponentFactory services;
    private final XChartDocument chart;
    private final XDataProvider cells;

    ChartSeries(XComponentContext office, Object chart) {
        this.office = office;
        this.services = office.getServiceManager();
        this.chart = Uno.as(XChartDocument.class, chart);
        this.cells = this.chart.getDataProvider();
    }

    void put(List<Plot> plots) throws com.sun.star.uno.Exception {
        XDataSeries[] series = new XDataSeries[plots.size()];
        for (int i = 0; i < series.length; i++) {
            series[i] = series(plots.get(i));
        }
        var systems = Uno.as(XCoordinateSystemContainer.class, chart.getFirstDiagram());
        var types = Uno.as(XChartTypeContainer.class, systems.getCoordinateSystems()[0]);
        Uno.as(XDataSeriesContainer.class, types.getChartTypes()[0]).setDataSeries(series);
    }

    private XDataSeries series(Plot plot) throws com.sun.star.uno.Exception {
        Object series = make("com.sun.star.chart2.DataSeries");
        XLabeledDataSequence across = values(plot.across(), "values-x");
        XLabeledDataSequence up = values(plot.up(), "values-y");
        up.setLabel(sequence(plot.name(), "label"));
        Uno.as(XDataSink.class, series).setData(new XLabeledDataSequence[] {across, up});
        switch (plot.form()) {
            case POINTS -> drawPoints(series, plot.ink());
            case LINE -> drawLine(series, plot.ink(), LINE_WIDTH);
            case EDGE -> drawLine(series, plot.ink(), EDGE_WIDTH);
            case LIMIT -> {
                drawLine(series, plot.ink(), GUIDE_WIDTH);
                Uno.set(series, "ShowLegendEntry", true);
            }
            case GUIDE -> {
                drawLine(series, plot.ink(), GUIDE_WIDTH);
                label(Uno.as(XDataSeries.class, series).getDataPointByIndex(1), plot.ink());
            }
        }
        return Uno.as(XDataSeries.class, series);
    }

    private void drawLine(Object series, SeriesColor ink, int width) throws com.sun.star.uno.Exception {
        Map<String, Object> look = new HashMap<>(Map.of(
                "Color",
                ink.color(),
                "Symbol",
                symbol(ink, SymbolStyle.NONE),
                "LineWidth",
                width,
                "ShowLegendEntry",
                false,
                "LineStyle",
                ink.isFullLine() ? LineStyle.SOLID : LineStyle.DASH));
        if (!ink.isFullLine()) {
            String name = ink.patternName();
            XNameContainer dashes = Uno.as(XNameContainer.class, Uno.make(chart, "com.sun.star.drawing.DashTable"));
            if (!dashes.hasByName(name)) {
                dashes.insertByName(name, ink.pattern());
            }
            look.put("LineDashName", name);
        }
        Uno.setAll(series, look);
    }

    private static void drawPoints(Object series, SeriesColor ink) throws com.sun.star.uno.Exception {
        Uno.setAll(
                series,
                Map.of("Color", ink.color(), "LineStyle", LineStyle.NONE, "Symbol", symbol(ink, SymbolStyle.STANDARD)));
    }

    private static void label(XPropertySet point, SeriesColor ink) throws com.sun.star.uno.Exception {
        DataPointLabel label = new DataPointLabel();
        label.ShowSeriesName = true;
        point.setPropertyValue("Label", label);
        point.setPropertyValue("LabelPlacement", DataLabelPlacement.TOP);
        point.setPropertyValue("CharHeight", LABEL_SIZE);
        point.setPropertyValue("CharColor", ink.color());
        // On paper of its own, so that no line of the grid runs through it.
        point.setPropertyValue("LabelFillStyle", FillStyle.SOLID);
        point.setPropertyValue("LabelFillColor", Palette.PAPER);
    }

    private static Symbol symbol(SeriesColor ink, SymbolStyle style) {
        Symbol symbol = new Symbol();
        symbol.Style = style;
        symbol.StandardSymbol = ink.symbol();
        symbol.Size = new com.sun.star.awt.Size(SYMBOL_SIZE, SYMBOL_SIZE);
        symbol.FillColor = ink.color();
        symbol.BorderColor = ink.color();
        return symbol;
    }

    private XLabeledDataSequence values(Plot.Cells plotted, String role) throws com.sun.star.uno.Exception {
        XLabeledDataSequence labelled =
                Uno.as(XLabeledDataSequence.class, make("com.sun.star.chart2.data.LabeledDataSequence"));
        labelled.setValues(sequence(plotted, role));
        return labelled;
    }

    private XDataSequence sequence(Plot.Cells plotted, String role) throws com.sun.star.uno.Exception {
        XDataSequence sequence = cells.createDataSequenceByRangeRepresentation(plotted.written());
        Uno.set(sequence, "Role", role);
        return sequence;
    }

    private Object make(String service) throws com.sun.star.uno.Exception {
        return services.createInstanceWithContext(service, office);
    }
}
