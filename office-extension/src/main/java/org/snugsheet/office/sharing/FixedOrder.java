package org.snugsheet.office.sharing;

import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.util.XProtectable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.Uno;

/**
 * Sheets that cannot be added, moved or taken away: a protection that the office does not write into an .xlsx unless it has a
 * password (ECMA-376, part 1, 18.2.29, workbookProtection).
 */
final class FixedOrder {

    private static final String WORKBOOK = "xl/workbook.xml";
    private static final Pattern PROTECTION = Pattern.compile("<workbookProtection\\b([^>]*?)/>");
    private static final Pattern PROPERTIES = Pattern.compile("<workbookPr\\b[^>]*?/>");
    private static final String LOCKED = "<workbookProtection lockStructure=\"true\"";

    private FixedOrder() {}

    /** Adds it to the file of a document that has it. */
    static void addTo(FileParts parts, XSpreadsheetDocument document) {
        if (Uno.as(XProtectable.class, document).isProtected()) {
            parts.text(WORKBOOK).ifPresent(xml -> parts.replace(WORKBOOK, in(xml)));
        }
    }

    private static String in(String workbook) {
        Matcher protection = PROTECTION.matcher(workbook);
        if (protection.find()) {
            String others = protection.group(1).replaceAll("\\slockStructure=\"[^\"]*\"", "");
            return protection.replaceFirst(Matcher.quoteReplacement(LOCKED + others + "/>"));
        }
        return PROPERTIES.matcher(workbook).replaceFirst("$0" + Matcher.quoteReplacement(LOCKED + "/>"));
    }
}
