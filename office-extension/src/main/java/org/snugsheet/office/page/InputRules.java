package org.snugsheet.office.page;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.TableValidationVisibility;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** What may be typed into input cells, and the hint that shows beside the cursor. */
public final class InputRules {
    private final Page page;

    private InputRules(Page page) {
        this.page = page;
    }

    /**
     * The rules of a page.
     *
     * @param page the page
     * @return its rules
     */
    public static InputRules on(Page page) {
        return new InputRules(page);
    }

    /**
     * Anything goes, but there is a hint.
     *
     * @param address the cells
     * @param title the heading of the hint
     * @param hint what to type
     * @return these rules
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public InputRules hint(String address, String title, String hint) throws com.sun.star.uno.Exception {
        return put(address, rule(address, title, hint));
    }

    /**
     * A number, not below a limit.
     *
     * @param address the cells
     * @param least the limit
     * @param title the heading of the hint
     * @param hint what to type
     * @return these rules
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public InputRules atLeast(String address, double least, String title, String hint)
            throws com.sun.star.uno.Exception {
        return number(address, ConditionOperator.GREATER_EQUAL, least, title, hint);
    }

    /**
     * A number above zero.
     *
     * @param address the cells
     * @param title the heading of the hint
     * @param hint what to type
     * @return these rules
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public InputRules aboveZero(String address, String title, String hint) throws com.sun.star.uno.Exception {
        return number(address, ConditionOperator.GREATER, 0, title, hint);
    }

    /**
     * A choice from a list. Other things may be typed, such as a name that the functions know and the list does not; what cannot
     * be used is said by the checks of the page.
     *
     * @param address the cells
     * @param listName the named range with the list
     * @param title the heading of the hint
     * @param hint what to choose
     * @return these rules
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public InputRules choice(String address, String listName, String title, String hint)
            throws com.sun.star.uno.Exception {
        return put(address, list(address, listName, title, hint));
    }

    /**
     * A choice from a list, which takes no other value.
     *
     * @param address the cells
     * @param listName the named range with the list
     * @param title the heading of the hint
     * @param hint what to choose
     * @return these rules
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public InputRules only(String address, String listName, String title, String hint)
            throws com.sun.star.uno.Exception {
        XPropertySet rule = list(address, listName, title, hint);
        alert(rule, ValidationAlertStyle.STOP, title, hint);
        return put(address, rule);
    }

    /**
     * A name. A number is asked about first: after the last reading of a grid the cursor may go on to a list of names, and what is
     * typed there in good faith would replace one.
     *
     * @param address the cells
     * @param title the heading of the hint
     * @param hint what to type
     * @return these rules
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public InputRules name(String address, String title, String hint) throws com.sun.star.uno.Exception {
        return put(address, name(rule(address, title, hint), address, title, hint));
    }

    private XPropertySet name(XPropertySet rule, String address, String title, String question)
            throws com.sun.star.uno.Exception {
        CellRangeAddress first = page.place(address);
        rule.setPropertyValue("Type", ValidationType.CUSTOM);
        XSheetCondition condition = Uno.as(XSheetCondition.class, rule);
        condition.setSourcePosition(new CellAddress(first.Sheet, first.StartColumn, first.StartRow));
        condition.setFormula1("ISTEXT(" + CellName.of(first.StartColumn, first.StartRow) + ")");
        alert(rule, ValidationAlertStyle.WARNING, title, question);
        return rule;
    }

    private XPropertySet list(String address, String listName, String title, String hint)
            throws com.sun.star.uno.Exception {
        XPropertySet rule = rule(address, title, hint);
        rule.setPropertyValue("Type", ValidationType.LIST);
        rule.setPropertyValue("ShowList", TableValidationVisibility.UNSORTED);
        Uno.as(XSheetCondition.class, rule).setFormula1(listName);
        rule.setPropertyValue("ShowErrorMessage", false);
        return rule;
    }

    private InputRules number(String address, ConditionOperator operator, double limit, String title, String hint)
            throws com.sun.star.uno.Exception {
        XPropertySet rule = rule(address, title, hint);
        rule.setPropertyValue("Type", ValidationType.DECIMAL);
        XSheetCondition condition = Uno.as(XSheetCondition.class, rule);
        condition.setOperator(operator);
        condition.setFormula1(String.valueOf(limit));
        alert(rule, ValidationAlertStyle.STOP, title, hint);
        return put(address, rule);
    }

    private XPropertySet rule(String address, String title, String hint) throws com.sun.star.uno.Exception {
        XPropertySet rule = Uno.as(XPropertySet.class, Uno.property(page.range(address), "Validation"));
        rule.setPropertyValue("ShowInputMessage", true);
        rule.setPropertyValue("InputTitle", title);
        rule.setPropertyValue("InputMessage", hint);
        rule.setPropertyValue("IgnoreBlankCells", true);
        return rule;
    }

    private static void alert(XPropertySet rule, ValidationAlertStyle style, String title, String hint)
            throws com.sun.star.uno.Exception {
        rule.setPropertyValue("ErrorAlertStyle", style);
        rule.setPropertyValue("ShowErrorMessage", true);
        rule.setPropertyValue("ErrorTitle", title);
        rule.setPropertyValue("ErrorMessage", hint);
    }

    private InputRules put(String address, XPropertySet rule) throws com.sun.star.uno.Exception {
        Uno.set(page.range(address), "Validation", rule);
        return this;
    }
}
