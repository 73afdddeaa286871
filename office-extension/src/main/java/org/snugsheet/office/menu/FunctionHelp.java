package org.snugsheet.office.menu;

import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.view.XSelectionSupplier;
import java.util.Optional;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.FunctionIndex;

/**
 * What F1 does on a cell with a Snugsheet function: the reference opens at that function. On any other cell there is no answer here,
 * and F1 is the office’s own, as it is without Java.
 */
public final class FunctionHelp {

    /** What the key calls. */
    public static final String ADDRESS = MenuItem.PROTOCOL + "function-help";

    private FunctionHelp() {}

    /** The function that the selected cell calls; of several, the one that comes first in the reference. */
    static Optional<FunctionDeclaration> asked(MenuInvocation choice) {
        XSelectionSupplier view = UnoRuntime.queryInterface(
                XSelectionSupplier.class, choice.window().getController());
        XCellRange chosen = view == null ? null : UnoRuntime.queryInterface(XCellRange.class, view.getSelection());
        if (chosen == null) {
            // A chart, say, or a window without a sheet.
            return Optional.empty();
        }
        try {
            XCell cell = chosen.getCellByPosition(0, 0);
            return cell.getType() == CellContentType.FORMULA
                    ? FunctionIndex.calledBy(cell.getFormula()).stream().findFirst()
                    : Optional.empty();
        } catch (com.sun.star.lang.IndexOutOfBoundsException noCell) {
            return Optional.empty();
        }
    }
}
