package org.snugsheet.office.page;

import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.TableValidationVisibility;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XSheetCondition;
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
     * A choice from a list; something else may be typed after a question.
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
        return list(address, listName, ValidationAlertStyle.WARNING, title, hint);
    }

    /**
     * A choice from a list, and nothing else.
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
        return list(address, listName, ValidationAlertStyle.STOP, title, hint);
    }

    private InputRules list(String address, String listName, ValidationAlertStyle otherwise, String title, String hint)
            throws com.sun.star.uno.Exception {
        Object rule = rule(address, title, hint);
        Uno.set(rule, "Type", ValidationType.LIST);
        Uno.set(rule, "ShowList", TableValidationVisibility.UNSORTED);
        Uno.as(XSheetCondition.class, rule).setFormula1(listName);
        alert(rule, otherwise, title, hint);
        return put(address, rule);
    }

    private InputRules number(String address, ConditionOperator operator, double limit, String title, String hint)
            throws com.sun.star.uno.Exception {
        Object rule = rule(address, title, hint);
        Uno.set(rule, "Type", ValidationType.DECIMAL);
        XSheetCondition condition = Uno.as(XSheetCondition.class, rule);
        condition.setOperator(operator);
        condition.setFormula1(String.valueOf(limit));
        alert(rule, ValidationAlertStyle.STOP, title, hint);
        return put(address, rule);
    }

    private Object rule(String address, String title, String hint) throws com.sun.star.uno.Exception {
        Object rule = Uno.property(page.range(address), "Validation");
        Uno.set(rule, "ShowInputMessage", true);
        Uno.set(rule, "InputTitle", title);
        Uno.set(rule, "InputMessage", hint);
        Uno.set(rule, "IgnoreBlankCells", true);
        return rule;
    }

    private static void alert(Object rule, ValidationAlertStyle style, String title, String hint)
            throws com.sun.star.uno.Exception {
        Uno.set(rule, "ErrorAlertStyle", style);
        Uno.set(rule, "ShowErrorMessage", true);
        Uno.set(rule, "ErrorTitle", title);
        Uno.set(rule, "ErrorMessage", hint);
    }

    private InputRules put(String address, Object rule) throws com.sun.star.uno.Exception {
        Uno.set(page.range(address), "Validation", rule);
        return this;
    }
}
