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
import com.sun.star.util.CellProtection;
import org.snugsheet.office.uno.Uno;

/** One cell style of a document, being described. Line widths and indents in 1/100 mm, type sizes in points. */
final class CellStyle {
    static final String STANDARD = "Default";

    private final XSpreadsheetDocument document;
    private final Object style;

    private CellStyle(XSpreadsheetDocument document, Object style) {
        this.document = document;
        this.style = style;
    }

    /** The style on which all others rest. */
    static CellStyle standard(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        return new CellStyle(document, styles(document).getByName(STANDARD));
    }

    /** A style by this name, made unless it is there already. */
    static CellStyle add(XSpreadsheetDocument document, String name, String parent) throws com.sun.star.uno.Exception {
        XNameContainer styles = styles(document);
        if (!styles.hasByName(name)) {
            styles.insertByName(name, Uno.make(document, "com.sun.star.style.CellStyle"));
        }
        Object style = styles.getByName(name);
        Uno.as(XStyle.class, style).setParentStyle(parent);
        CellStyle fresh = new CellStyle(document, style);
        return fresh.set("VertJustify", CellVertJustify2.CENTER);
    }

    static XNameContainer styles(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Object cells = Uno.as(XStyleFamiliesSupplier.class, document)
                .getStyleFamilies()
                .getByName("CellStyles");
        return Uno.as(XNameContainer.class, cells);
    }

    CellStyle font(String name, float points) throws com.sun.star.uno.Exception {
        return set("CharFontName", name).size(points);
    }

    CellStyle size(float points) throws com.sun.star.uno.Exception {
        return set("CharHeight", points);
    }

    CellStyle bold() throws com.sun.star.uno.Exception {
        return set("CharWeight", FontWeight.BOLD);
    }

    CellStyle ink(int color) throws com.sun.star.uno.Exception {
        return set("CharColor", color);
    }

    CellStyle paper(int color) throws com.sun.star.uno.Exception {
        return set("CellBackColor", color);
    }

    CellStyle wrapped() throws com.sun.star.uno.Exception {
        return set("IsTextWrapped", true);
    }

    CellStyle aligned(CellHoriJustify side) throws com.sun.star.uno.Exception {
        return set("HoriJustify", side);
    }

    /** In one line, in smaller type if it must be. */
    CellStyle shrunk() throws com.sun.star.uno.Exception {
        return set("ShrinkToFit", true);
    }

    CellStyle indented(int distance) throws com.sun.star.uno.Exception {
        return aligned(CellHoriJustify.LEFT).set("ParaIndent", (short) distance);
    }

    /** At the top of its row. */
    CellStyle high() throws com.sun.star.uno.Exception {
        return set("VertJustify", CellVertJustify2.TOP);
    }

    /** At the bottom of its row, on its rule. */
    CellStyle low() throws com.sun.star.uno.Exception {
        return set("VertJustify", CellVertJustify2.BOTTOM);
    }

    CellStyle ruledBelow(int color, int width) throws com.sun.star.uno.Exception {
        return set("BottomBorder2", line(color, width));
    }

    CellStyle boxed(int color, int width) throws com.sun.star.uno.Exception {
        BorderLine2 line = line(color, width);
        return set("TopBorder2", line)
                .set("BottomBorder2", line)
                .set("LeftBorder2", line)
                .set("RightBorder2", line);
    }

    CellStyle numbers(String code) throws com.sun.star.uno.Exception {
        return set("NumberFormat", NumberCode.key(document, code));
    }

    /** May be typed into although the page is protected. */
    CellStyle unlocked() throws com.sun.star.uno.Exception {
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

    private CellStyle set(String property, Object value) throws com.sun.star.uno.Exception {
        Uno.set(style, property, value);
        return this;
    }
}
