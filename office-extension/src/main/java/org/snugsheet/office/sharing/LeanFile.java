package org.snugsheet.office.sharing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.sharing.lean.CellFormats;
import org.snugsheet.office.sharing.lean.LeanSheet;

/** Makes a finished .xlsx smaller; other files are left as they are. */
final class LeanFile {

    private static final String WORKBOOK = "xl/workbook.xml";
    private static final Pattern SHEET = Pattern.compile("<sheet [^>]*r:id=\"([^\"]+)\"[^>]*/>");
    private static final Pattern RELATED = Pattern.compile("<Relationship [^>]*/>");
    private static final Pattern CALCULATION = Pattern.compile("<calcPr ");

    private LeanFile() {}

    /**
     * Says the same in fewer letters.
     *
     * @param parts the file
     * @param steps the place of the page of steps among the sheets, from 0; −1 if there is none
     */
    static void addTo(FileParts parts, int steps) {
        String relations = parts.text("xl/_rels/workbook.xml.rels").orElse("");
        CellFormats formats = parts.text("xl/styles.xml").map(CellFormats::of).orElse(CellFormats.NONE);
        List<String> sheets = new ArrayList<>();
        Matcher sheet = SHEET.matcher(parts.text(WORKBOOK).orElse(""));
        while (sheet.find()) {
            sheets.add(target(relations, sheet.group(1)));
        }
        boolean isLiving = steps >= 0 && steps < sheets.size();
        for (int i = 0; i < sheets.size(); i++) {
            boolean isSteps = i == steps;
            change(parts, "xl/" + sheets.get(i), xml -> {
                if (isSteps) {
                    return LeanSheet.ofSteps(xml, formats);
                }
                String lean = LeanSheet.of(xml, formats);
                return isLiving ? LeanSheet.workedOutAnew(lean) : lean;
            });
        }
        for (String name : parts.names()) {
            if (name.startsWith("xl/charts/chart")) {
                change(parts, name, LeanSheet::ofChart);
            }
        }
        if (isLiving) {
            // The steps have no values in the file.
            change(parts, WORKBOOK, xml -> CALCULATION.matcher(xml).replaceFirst("$0fullCalcOnLoad=\"true\" "));
        }
    }

    private static String target(String relations, String id) {
        Matcher related = RELATED.matcher(relations);
        while (related.find()) {
            if (related.group().contains("Id=\"" + id + "\"")) {
                return related.group().replaceAll("(?s).*Target=\"([^\"]*)\".*", "$1");
            }
        }
        return "";
    }

    private static void change(FileParts parts, String name, java.util.function.UnaryOperator<String> other) {
        parts.text(name).ifPresent(xml -> parts.replace(name, other.apply(xml)));
    }
}
