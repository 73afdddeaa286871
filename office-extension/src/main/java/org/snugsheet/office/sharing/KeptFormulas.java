package org.snugsheet.office.sharing;

import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertyAccess;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.sheet.XSpreadsheetDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.snugsheet.office.uno.Uno;

/**
 * What a copy keeps in the properties of the document, which .ods, .fods and .xlsx all hold and other spreadsheet programs leave
 * alone: one line of text for each formula, for each line that warns, and for the page. A strict reader of .xlsx takes no text
 * longer than 255 characters: what is longer goes on in further properties, which the order of the names puts behind it.
 */
final class KeptFormulas {

    /** The first word of all their names. */
    private static final String OURS = "Snugsheet ";

    private static final String FORMULA = OURS + "formula ";
    private static final String LINE = OURS + "line ";
    private static final String PAGE = OURS + "page";
    private static final String STEPS = OURS + "steps";
    private static final String MORE = " more ";
    private static final int LONGEST = 255;

    private KeptFormulas() {}

    static void write(
            XSpreadsheetDocument document,
            List<KeptFormula> formulas,
            List<WarningLine> lines,
            String page,
            String steps)
            throws com.sun.star.uno.Exception {
        XPropertyContainer container = container(document);
        for (int i = 0; i < formulas.size(); i++) {
            add(container, FORMULA + number(i), formulas.get(i).written());
        }
        for (int i = 0; i < lines.size(); i++) {
            add(container, LINE + number(i), lines.get(i).written());
        }
        add(container, PAGE, page);
        if (!steps.isEmpty()) {
            add(container, STEPS, steps);
        }
    }

    static List<KeptFormula> read(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        List<KeptFormula> formulas = new ArrayList<>();
        lines(document, FORMULA).forEach(line -> KeptFormula.read(line).ifPresent(formulas::add));
        return formulas;
    }

    static List<WarningLine> warningLines(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        List<WarningLine> lines = new ArrayList<>();
        lines(document, LINE).forEach(line -> WarningLine.read(line).ifPresent(lines::add));
        return lines;
    }

    /** What is kept of the page; empty in copies of early versions. */
    static String page(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        return String.join("", lines(document, PAGE));
    }

    /** The name of the page with the steps of a copy that goes on working; empty in others. */
    static String steps(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        return String.join("", lines(document, STEPS));
    }

    /** Takes all of them away. */
    static Map<String, String> forget(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        SortedMap<String, String> all = all(document);
        XPropertyContainer container = container(document);
        for (String name : all.keySet()) {
            container.removeProperty(name);
        }
        return all;
    }

    /** Puts back what was taken away. */
    static void remember(XSpreadsheetDocument document, Map<String, String> all) throws com.sun.star.uno.Exception {
        XPropertyContainer container = container(document);
        for (Map.Entry<String, String> one : all.entrySet()) {
            container.addProperty(one.getKey(), PropertyAttribute.REMOVABLE, one.getValue());
        }
    }

    private static void add(XPropertyContainer container, String name, String text) throws com.sun.star.uno.Exception {
        for (int from = 0, part = 0; from == 0 || from < text.length(); from += LONGEST, part++) {
            container.addProperty(
                    part == 0 ? name : name + MORE + number(part),
                    PropertyAttribute.REMOVABLE,
                    text.substring(from, Math.min(text.length(), from + LONGEST)));
        }
    }

    /** The whole texts whose names begin so. */
    private static List<String> lines(XSpreadsheetDocument document, String prefix) throws com.sun.star.uno.Exception {
        SortedMap<String, StringBuilder> whole = new TreeMap<>();
        all(document).forEach((name, text) -> {
            if (name.startsWith(prefix)) {
                whole.computeIfAbsent(name.split(MORE, -1)[0], first -> new StringBuilder())
                        .append(text);
            }
        });
        return whole.values().stream().map(StringBuilder::toString).toList();
    }

    private static SortedMap<String, String> all(XSpreadsheetDocument document) {
        SortedMap<String, String> all = new TreeMap<>();
        for (PropertyValue property :
                Uno.as(XPropertyAccess.class, container(document)).getPropertyValues()) {
            if (property.Name.startsWith(OURS)) {
                all.put(property.Name, String.valueOf(property.Value));
            }
        }
        return all;
    }

    private static String number(int i) {
        return String.format(Locale.ROOT, "%05d", i + 1);
    }

    private static XPropertyContainer container(XSpreadsheetDocument document) {
        return Uno.as(XDocumentPropertiesSupplier.class, document)
                .getDocumentProperties()
                .getUserDefinedProperties();
    }
}
