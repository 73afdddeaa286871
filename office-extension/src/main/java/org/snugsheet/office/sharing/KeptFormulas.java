package org.snugsheet.office.sharing;

import com.sun.star.beans.Property;
import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.sheet.XSpreadsheetDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.snugsheet.office.uno.Uno;

/**
 * Our formulas as the properties of a document keep them: one property for each, which .ods, .fods and .xlsx all hold and other
 * spreadsheet programs leave alone.
 */
final class KeptFormulas {

    private static final String PREFIX = "Snugsheet formula ";

    private KeptFormulas() {}

    static void write(XSpreadsheetDocument document, List<KeptFormula> formulas) throws com.sun.star.uno.Exception {
        XPropertyContainer properties = container(document);
        for (int i = 0; i < formulas.size(); i++) {
            String name = PREFIX + String.format(Locale.ROOT, "%05d", i + 1);
            properties.addProperty(
                    name, PropertyAttribute.REMOVABLE, formulas.get(i).written());
        }
    }

    static List<KeptFormula> read(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XPropertySet properties = Uno.as(XPropertySet.class, container(document));
        List<KeptFormula> formulas = new ArrayList<>();
        for (String name : names(document)) {
            KeptFormula.read(String.valueOf(properties.getPropertyValue(name))).ifPresent(formulas::add);
        }
        return formulas;
    }

    static void forget(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        for (String name : names(document)) {
            container(document).removeProperty(name);
        }
    }

    private static List<String> names(XSpreadsheetDocument document) {
        List<String> names = new ArrayList<>();
        for (Property property : Uno.as(XPropertySet.class, container(document))
                .getPropertySetInfo()
                .getProperties()) {
            if (property.Name.startsWith(PREFIX)) {
                names.add(property.Name);
            }
        }
        names.sort(null);
        return names;
    }

    private static XPropertyContainer container(XSpreadsheetDocument document) {
        return Uno.as(XDocumentPropertiesSupplier.class, document)
                .getDocumentProperties()
                .getUserDefinedProperties();
    }
}
