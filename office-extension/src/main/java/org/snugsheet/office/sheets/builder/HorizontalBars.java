package org.snugsheet.office.sheets.builder;

import com.sun.star.chart.ChartDataRowSource;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart2.XChartTypeContainer;
import com.sun.star.chart2.XCoordinateSystemContainer;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.chart2.XDataSeriesContainer;
import com.sun.star.container.XNameContainer;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableChartsSupplier;
import java.util.Locale;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.uno.Uno;

/** What charts of horizontal bars share: where their values come from, and how a bar is filled. */
final class HorizontalBars {
    private static final int BORDER_WIDTH = 18;

    private HorizontalBars() {}

    /** An empty chart over some cells of a page, with one row of bars for each column of a table but the first. */
    static XChartDocument draw(Page page, String name, String cells, Plot.Cells table)
            throws com.sun.star.uno.Exception {
        // The office takes a row that is not worked out yet for a heading.
        page.writeFormulas();
        Uno.as(XCalculatable.class, page.document()).calculate();
        var charts = Uno.as(XTableChartsSupplier.class, page.sheet()).getCharts();
        CellRangeAddress[] from = {table.page().place(table.address())};
        charts.addNewByName(name, CellFrame.of(page, cells), from, true, true);
        Object document =
                Uno.as(XEmbeddedObjectSupplier.class, charts.getByName(name)).getEmbeddedObject();
        XChartDocument chart = Uno.as(XChartDocument.class, document);
        chart.setDiagram(Uno.as(XDiagram.class, Uno.make(chart, "com.sun.star.chart.BarDiagram")));
        Uno.set(chart.getDiagram(), "DataRowSource", ChartDataRowSource.COLUMNS);
        // The office calls lying bars vertical: their axis of categories is.
        Uno.set(chart.getDiagram(), "Vertical", true);
        return chart;
    }

    static XDataSeries[] series(Object document) throws com.sun.star.uno.Exception {
        return container(document).getDataSeries();
    }

    static void put(Object document, XDataSeries... series) throws com.sun.star.uno.Exception {
        container(document).setDataSeries(series);
    }

    private static XDataSeriesContainer container(Object document) throws com.sun.star.uno.Exception {
        var chart = Uno.as(com.sun.star.chart2.XChartDocument.class, document);
        var systems = Uno.as(XCoordinateSystemContainer.class, chart.getFirstDiagram());
        var types = Uno.as(XChartTypeContainer.class, systems.getCoordinateSystems()[0]);
        return Uno.as(XDataSeriesContainer.class, types.getChartTypes()[0]);
    }

    static void fill(Object chart, Object part, Fill fill) throws com.sun.star.uno.Exception {
        Uno.set(part, "Color", fill.color());
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
}
