package org.snugsheet.office.sharing;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCellRange;
import java.util.List;
import org.snugsheet.office.functions.OurFunctions;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;

/** Brings the formulas back into a copy that {@link ShareCopy} made. */
public final class BringBack {

    private BringBack() {}

    /**
     * Puts each formula back where it stood, with the note its cell had, and takes away what the copy had added.
     *
     * @param copy the document
     * @return how many formulas came back
     * @throws Declined if it is no such copy, or a sheet is gone or has a password
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int into(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        List<KeptFormula> formulas = KeptFormulas.read(copy);
        if (formulas.isEmpty()) {
            throw new Declined(SharingWords.IS_NO_COPY);
        }
        // Nothing is changed before all sheets are known to be there.
        for (KeptFormula formula : formulas) {
            ShareCopy.sheet(copy, formula.sheet());
        }
        for (KeptFormula formula : formulas) {
            XSpreadsheet sheet = ShareCopy.sheet(copy, formula.sheet());
            Locked.change(sheet, formula.sheet(), () -> {
                XCellRange range = sheet.getCellRangeByName(formula.cells());
                if (formula.array()) {
                    // An array formula is not understood with the names that files hold, only with those that are
                    // typed.
                    Uno.as(XArrayFormulaRange.class, range).setArrayFormula(OurFunctions.asTyped(formula.formula()));
                } else {
                    range.getCellByPosition(0, 0).setFormula(formula.formula());
                }
                ShareCopy.note(sheet, range, formula.noteBefore().orElse(""));
            });
        }
        KeptFormulas.forget(copy);
        WorkedOutPage.remove(copy);
        return formulas.size();
    }
}
