package org.snugsheet.office.sharing;

import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSpreadsheetDocument;
import java.util.LinkedHashMap;
import java.util.Map;
import org.snugsheet.office.uno.Uno;

/** The names that a document and its sheets give to cells and formulas. */
final class DefinedNames {

    private DefinedNames() {}

    /** Every one, by what it is called; one of a sheet with the sheet’s name before it. */
    static Map<String, XNamedRange> of(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Map<String, XNamedRange> all = new LinkedHashMap<>();
        add(document, "", all);
        for (Object sheet : Uno.sheets(document)) {
            add(sheet, Uno.as(com.sun.star.container.XNamed.class, sheet).getName() + ".", all);
        }
        return all;
    }

    private static void add(Object owner, String before, Map<String, XNamedRange> all)
            throws com.sun.star.uno.Exception {
        XNamedRanges names = Uno.as(XNamedRanges.class, Uno.property(owner, "NamedRanges"));
        for (String name : names.getElementNames()) {
            all.put(before + name, Uno.as(XNamedRange.class, names.getByName(name)));
        }
    }
}
