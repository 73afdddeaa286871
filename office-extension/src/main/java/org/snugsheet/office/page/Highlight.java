package org.snugsheet.office.page;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.XSheetConditionalEntries;
import org.snugsheet.office.uno.Uno;

/** Changes the style of cells by what they hold. */
public final class Highlight {
    private Highlight() {}

    /**
     * Gives cells another style when a formula is true.
     *
     * @param page the page
     * @param address the cells
     * @param formula the formula, without the equals sign; addresses without $ are meant as from cell A1, not from the cells
     * @param look the style
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void when(Page page, String address, String formula, CellStyleName look)
            throws com.sun.star.uno.Exception {
        Object format = Uno.property(page.range(address), "ConditionalFormat");
        Uno.as(XSheetConditionalEntries.class, format).addNew(new PropertyValue[] {
            Uno.named("Operator", ConditionOperator.FORMULA),
            Uno.named("Formula1", formula),
            Uno.named("StyleName", look.styleName())
        });
        Uno.set(page.range(address), "ConditionalFormat", format);
    }

    /**
     * Gives cells another style when a check says something other than OK; a check that says nothing finds nothing.
     *
     * @param page the page
     * @param address the cells
     * @param check the cell of the check, addressed as in {@link #when}
     * @param look the style
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void unlessOk(Page page, String address, String check, CellStyleName look)
            throws com.sun.star.uno.Exception {
        when(page, address, "AND(" + check + "<>\"OK\";" + check + "<>\"\")", look);
    }
}
