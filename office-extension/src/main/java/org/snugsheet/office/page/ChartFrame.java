package org.snugsheet.office.page;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.X3DDisplay;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.container.XNamed;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShapes;
import org.snugsheet.office.uno.Uno;

/** What is around a chart: titles, legend, axes, and its text for somebody who cannot see it. All charts share it. */
public final class ChartFrame {
    private static final float TITLE_SIZE = 12;
    private static final float AXIS_TITLE_SIZE = 10;
    /** The type of numbers and legends, in points. */
    public static final float SMALL_SIZE = 9;

    private ChartFrame() {}

    /**
     * Writes the title.
     *
     * @param chart the chart
     * @param title the words
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void title(XChartDocument chart, String title) throws com.sun.star.uno.Exception {
        Uno.set(chart, "HasMainTitle", true);
        write(chart.getTitle(), title, TITLE_SIZE);
        Uno.set(chart.getTitle(), "CharWeight", FontWeight.BOLD);
        Uno.set(chart.getTitle(), "CharColor", Palette.HEADING);
    }

    /**
     * Writes the title of the axis along the bottom.
     *
     * @param diagram the diagram of a chart
     * @param title the words
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void titleX(XDiagram diagram, String title) throws com.sun.star.uno.Exception {
        Uno.set(diagram, "HasXAxisTitle", true);
        write(Uno.as(XAxisXSupplier.class, diagram).getXAxisTitle(), title, AXIS_TITLE_SIZE);
    }

    /**
     * Writes the title of the axis of values.
     *
     * @param diagram the diagram of a chart
     * @param title the words
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void titleY(XDiagram diagram, String title) throws com.sun.star.uno.Exception {
        Uno.set(diagram, "HasYAxisTitle", true);
        write(Uno.as(XAxisYSupplier.class, diagram).getYAxisTitle(), title, AXIS_TITLE_SIZE);
    }

    private static void write(Object shape, String text, float size) throws com.sun.star.uno.Exception {
        Uno.set(shape, "String", text);
        Uno.set(shape, "CharHeight", size);
    }

    /**
     * Shows the legend.
     *
     * @param chart the chart
     * @param where on which side of the diagram
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void legend(XChartDocument chart, ChartLegendPosition where) throws com.sun.star.uno.Exception {
        Uno.set(chart, "HasLegend", true);
        Uno.set(chart.getLegend(), "Alignment", where);
        Uno.set(chart.getLegend(), "CharHeight", SMALL_SIZE);
        Uno.set(chart.getLegend(), "FillStyle", FillStyle.NONE);
        Uno.set(chart.getLegend(), "LineStyle", LineStyle.NONE);
    }

    /**
     * Clears the ground behind the axes, which the office makes gray when left alone.
     *
     * @param diagram the diagram of a chart
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void clearWall(XDiagram diagram) throws com.sun.star.uno.Exception {
        Uno.set(Uno.as(X3DDisplay.class, diagram).getWall(), "FillStyle", FillStyle.NONE);
    }

    /**
     * Writes the numbers of an axis in small type, as short as they can be.
     *
     * @param axis the axis
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void numbers(XPropertySet axis) throws com.sun.star.uno.Exception {
        axis.setPropertyValue("CharHeight", SMALL_SIZE);
        axis.setPropertyValue("LinkNumberFormatToSource", false);
        axis.setPropertyValue("NumberFormat", 0);
    }

    /**
     * Says what a chart shows, for somebody who cannot see it.
     *
     * @param page the page it is on
     * @param name its own name
     * @param title its title
     * @param inWords what it shows
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void describe(Page page, String name, String title, String inWords)
            throws com.sun.star.uno.Exception {
        XShapes shapes = Uno.as(
                XShapes.class, Uno.as(XDrawPageSupplier.class, page.sheet()).getDrawPage());
        for (int i = 0; i < shapes.getCount(); i++) {
            Object shape = shapes.getByIndex(i);
            if (name.equals(Uno.property(shape, "PersistName"))
                    || name.equals(Uno.as(XNamed.class, shape).getName())) {
                Uno.set(shape, "Title", title);
                Uno.set(shape, "Description", inWords);
                return;
            }
        }
        throw new IllegalStateException("The chart " + name + " is not on its page");
    }
}
