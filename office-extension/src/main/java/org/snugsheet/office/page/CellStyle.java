package org.snugsheet.office.page;

import com.sun.star.awt.FontWeight;
import com.sun.star.container.XNameContainer;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.style.XStyle;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.BorderLine2;
import com.sun.star.table.BorderLineStyle;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.TableBorder2;
import com.sun.star.util.CellProtection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.snugsheet.office.uno.Uno;

/** One cell style: described, then put into a document. Line widths and indents in 1/100 mm, type sizes in points. */
final class CellStyle {
    static final String STANDARD = "Default";

    /** A line around cells together. */
    static final TableBorder2 FRAME = frame(line(Palette.TEXT, 26));

    private final String name;
    private final Map<String, Object> properties = new HashMap<>();

    private CellStyle(String name) {
        this.name = name;
    }

    /** The style on which all others rest. */
    static CellStyle standard() {
        return new CellStyle(STANDARD);
    }

    /** A style by this name. */
    static CellStyle named(String name) {
        return new CellStyle(name).set("VertJustify", CellVertJustify2.CENTER);
    }

    /** Changes the style that a document has already. */
    void change(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Uno.setAll(styles(document).getByName(name), properties);
    }

    /** Makes the style among those of a document, unless it is there already. */
    void put(XSpreadsheetDocument document, XNameContainer styles, Set<String> present, String parent)
            throws com.sun.star.uno.Exception {
        boolean isThere = present.contains(name);
        Object style = isThere ? styles.getByName(name) : Uno.make(document, "com.sun.star.style.CellStyle");
        if (!isThere) {
            styles.insertByName(name, style);
        }
        Uno.as(XStyle.class, style).setParentStyle(parent);
        Uno.setAll(style, properties);
    }

    static XNameContainer styles(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Object cells = Uno.as(XStyleFamiliesSupplier.class, document)
                .getStyleFamilies()
                .getByName("CellStyles");
        return Uno.as(XNameContainer.class, cells);
    }

    CellStyle font(String name, float points) {
        return set("CharFontName", name).size(points);
    }

    CellStyle size(float points) {
        return set("CharHeight", points);
    }

    CellStyle bold() {
        return set("CharWeight", FontWeight.BOLD);
    }

    CellStyle ink(int color) {
        return set("CharColor", color);
    }

    CellStyle paper(int color) {
        return set("CellBackColor", color);
    }

    CellStyle wrapped() {
        return set("IsTextWrapped", true);
    }

    CellStyle aligned(CellHoriJustify side) {
        return set("HoriJustify", side);
    }

    /** In one line, in smaller type if it must be. */
    CellStyle shrunk() {
        return set("ShrinkToFit", true);
    }

    CellStyle indented(int distance) {
        return aligned(CellHoriJustify.LEFT).set("ParaIndent", (short) distance);
    }

    /** At the top of its row. */
    CellStyle high() {
        return set("VertJustify", CellVertJustify2.TOP);
    }

    /** At the bottom of its row, on its rule. */
    CellStyle low() {
        return set("VertJustify", CellVertJustify2.BOTTOM);
    }

    CellStyle ruledBelow(int color, int width) {
        return set("BottomBorder2", line(color, width));
    }

    CellStyle boxed(int color, int width) {
        BorderLine2 line = line(color, width);
        return set("TopBorder2", line)
                .set("BottomBorder2", line)
                .set("LeftBorder2", line)
                .set("RightBorder2", line);
    }

    CellStyle numbers(int key) {
        return set("NumberFormat", key);
    }

    /** May be typed into although the page is protected. */
    CellStyle unlocked() {
        CellProtection open = new CellProtection();
        open.IsLocked = false;
        return set("CellProtection", open);
    }

    static BorderLine2 line(int color, int width) {
        BorderLine2 line = new BorderLine2();
        line.Color = color;
        line.LineStyle = BorderLineStyle.SOLID;
        line.LineWidth = width;
        line.OuterLineWidth = (short) width;
        return line;
    }

    private static TableBorder2 frame(BorderLine2 line) {
        TableBorder2 frame = new TableBorder2();
        frame.TopLine = line;
        frame.BottomLine = line;
        frame.LeftLine = line;
        frame.RightLine = line;
        frame.IsTopLineValid = true;
        frame.IsBottomLineValid = true;
        frame.IsLeftLineValid = true;
        frame.IsRightLineValid = true;
        return frame;
    }

    private CellStyle set(String property, Object value) {
        properties.put(property, value);
        return this;
    }
}
