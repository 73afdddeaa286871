package org.snugsheet.office.sharing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page at which a file opens. The office saves it only for a document that is in a window, which a copy being made is
 * not; so it is added to the finished file, in the words of the office’s own view settings (.ods, .fods) and of ECMA-376, part 1,
 * 18.2.30, workbookView (.xlsx).
 *
 * @param name its name
 * @param place its place among the pages, from 0
 */
record OpenPage(String name, int place) {

    private static final Pattern SHOWN =
            Pattern.compile("(config:name=\"ActiveTable\"[^>]*>)[^<]*(</config:config-item>)");

    private static final Pattern VIEWS = Pattern.compile(
            "(<config:config-item-set config:name=\"ooo:view-settings\">)(.*?)(</config:config-item-set>)",
            Pattern.DOTALL);

    private static final Pattern WORKBOOK_VIEW = Pattern.compile("<workbookView\\b([^>]*?)(/?)>");

    /** Adds it to a file. */
    void addTo(FileParts parts) {
        parts.text("settings.xml").ifPresent(xml -> parts.replace("settings.xml", inSettings(xml)));
        parts.text("xl/workbook.xml").ifPresent(xml -> parts.replace("xl/workbook.xml", inWorkbook(xml)));
    }

    private String inSettings(String xml) {
        String escaped = name.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        Matcher shown = SHOWN.matcher(xml);
        if (shown.find()) {
            return shown.replaceFirst("$1" + Matcher.quoteReplacement(escaped) + "$2");
        }
        String view = "<config:config-item-map-indexed config:name=\"Views\"><config:config-item-map-entry>"
                + "<config:config-item config:name=\"ViewId\" config:type=\"string\">view1</config:config-item>"
                + "<config:config-item config:name=\"ActiveTable\" config:type=\"string\">" + escaped
                + "</config:config-item></config:config-item-map-entry></config:config-item-map-indexed>";
        return VIEWS.matcher(xml).replaceFirst("$1$2" + Matcher.quoteReplacement(view) + "$3");
    }

    private String inWorkbook(String xml) {
        Matcher view = WORKBOOK_VIEW.matcher(xml);
        if (!view.find()) {
            return xml;
        }
        String others = view.group(1).replaceAll("\\s(activeTab|firstSheet)=\"[^\"]*\"", "");
        return view.replaceFirst(Matcher.quoteReplacement(
                "<workbookView" + others.stripTrailing() + " activeTab=\"" + place + "\"" + view.group(2) + ">"));
    }
}
