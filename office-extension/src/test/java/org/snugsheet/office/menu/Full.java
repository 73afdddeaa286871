package org.snugsheet.office.menu;

import com.sun.star.beans.XPropertyAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationShapeSupplier;
import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XSimpleText;
import com.sun.star.util.XProtectable;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.Uno;

/**
 * All of a document that a choice from the menu may change: names of the sheets, what is written and shown in their first cells,
 * notes, protection, and the names and values of the document’s own properties.
 *
 * @param sheets sheet by sheet
 * @param properties those that users can add
 */
public record Full(List<String> sheets, TreeSet<String> properties) {

    private static final String CELLS = "A1:L40";

    /** Reads it. */
    public static Full of(Office office, CalcDocument document) {
        return office.call(
                "reading all",
                () -> new Full(
                        Uno.sheets(document.uno()).stream().map(Full::told).toList(),
                        Arrays.stream(Uno.as(
                                                XPropertyAccess.class,
                                                Uno.as(XDocumentPropertiesSupplier.class, document.uno())
                                                        .getDocumentProperties()
                                                        .getUserDefinedProperties())
                                        .getPropertyValues())
                                .map(property -> property.Name + "=" + property.Value)
                                .collect(Collectors.toCollection(TreeSet::new))));
    }

    private static String told(XSpreadsheet sheet) {
        try {
            XCellRange cells = sheet.getCellRangeByName(CELLS);
            TreeSet<String> notes = new TreeSet<>();
            XSheetAnnotations all =
                    Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
            for (int i = 0; i < all.getCount(); i++) {
                XSheetAnnotation note = Uno.as(XSheetAnnotation.class, all.getByIndex(i));
                CellAddress at = note.getPosition();
                // Of a note read from an .xlsx, newer offices know the text only once its shape was asked for.
                Uno.as(XSheetAnnotationShapeSupplier.class, note).getAnnotationShape();
                notes.add(at.Column + "," + at.Row + "="
                        + Uno.as(XSimpleText.class, note).getString());
            }
            return String.join(
                    "\n",
                    Uno.as(XNamed.class, sheet).getName(),
                    Arrays.deepToString(Uno.as(XCellRangeFormula.class, cells).getFormulaArray()),
                    Arrays.deepToString(Uno.as(XCellRangeData.class, cells).getDataArray()),
                    "notes " + notes,
                    "protected " + Uno.as(XProtectable.class, sheet).isProtected());
        } catch (com.sun.star.uno.Exception failed) {
            throw new IllegalStateException(failed);
        }
    }
}
