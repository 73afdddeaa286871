package org.snugsheet.office.sharing.lean;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;

/** A sheet, or a chart, of an .xlsx in fewer letters: what is so anyway is not said, and nothing that is seen changes. */
public final class LeanSheet {

    private static final Pattern ROW = Pattern.compile("<row [^>]*>");
    private static final Pattern CELL = Pattern.compile("<c [^>]*>");
    private static final Pattern USUAL_ROW = Pattern.compile(
            " (?:customFormat=\"false\"|hidden=\"false\"|customHeight=\"false\"|outlineLevel=\"0\"|collapsed=\"false\")");
    private static final Pattern USUAL_CELL = Pattern.compile(" (?:s=\"0\"|t=\"n\")");
    private static final Pattern VALUE = Pattern.compile(
            "(<c r=\"[^\"]*\"[^>]*?)( t=\"[a-z]+\")?(>)(<f[^>]*(?:/>|>[^<]*</f>))(?:<v>[^<]*</v>|<v/>)?");
    private static final Pattern MERGED = Pattern.compile("<mergeCell ref=\"([A-Z]+)(\\d+):([A-Z]+)(\\d+)\"/>");
    private static final Pattern EMPTY = Pattern.compile("<c r=\"([A-Z]+\\d+)\" s=\"(\\d+)\"/>");
    private static final Pattern BORDER = Pattern.compile("<border(?: [^>]*)?(?:/>|>.*?</border>)", Pattern.DOTALL);
    private static final Pattern FORMATS = Pattern.compile("<cellXfs .*?</cellXfs>", Pattern.DOTALL);
    private static final Pattern FORMAT =
            Pattern.compile("<xf [^>]*?borderId=\"(\\d+)\"[^>]*?(?:/>|>.*?</xf>)", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("(<c:v>-?\\d+\\.\\d{4})\\d+(</c:v>)");
    private static final String ARRAY = "t=\"array\"";
    private static final int MOST_MERGED = 100_000;

    private LeanSheet() {}

    /**
     * A sheet without what is so anyway.
     *
     * @param sheet its XML
     * @param plain the formats that draw no border and leave the cell locked, see {@link #plainFormats}
     * @return the other XML
     */
    public static String of(String sheet, Set<String> plain) {
        String rows = ROW.matcher(sheet)
                .replaceAll(row ->
                        Matcher.quoteReplacement(USUAL_ROW.matcher(row.group()).replaceAll("")));
        Set<String> covered = covered(rows);
        String visible = EMPTY.matcher(rows)
                .replaceAll(cell -> covered.contains(cell.group(1)) && plain.contains(cell.group(2))
                        ? ""
                        : Matcher.quoteReplacement(cell.group()));
        return CELL.matcher(visible)
                .replaceAll(cell -> Matcher.quoteReplacement(
                        USUAL_CELL.matcher(cell.group()).replaceAll("")))
                .replace("<f aca=\"false\"", "<f");
    }

    /**
     * A page of steps: formulas that are alike are written once, and what each has worked out is left out, for every program works it out when
     * it opens the file.
     *
     * @param sheet its XML
     * @return the other XML
     */
    public static String ofSteps(String sheet) {
        return VALUE.matcher(SharedFormulas.in(of(sheet, Set.of()))).replaceAll("$1$3$4");
    }

    /**
     * A sheet of which formulas that pick cells have no values in the file. LibreOffice 7.4 does not see, until all is worked out anew, that the
     * cells they pick are those of an array formula: the first reading that is typed would leave them as they were.
     *
     * @param sheet its XML
     * @return the other XML; the same if there is no array formula
     */
    public static String picksAnew(String sheet) {
        if (!sheet.contains(ARRAY)) {
            return sheet;
        }
        return VALUE.matcher(sheet).replaceAll(cell -> {
            String formula = cell.group(4);
            boolean picks = formula.contains("INDEX(") && !formula.contains(ARRAY);
            return Matcher.quoteReplacement(picks ? cell.group(1) + cell.group(3) + formula : cell.group());
        });
    }

    /**
     * A chart whose numbers, which are in the sheet as well, are written to a ten-thousandth: no line is that thin.
     *
     * @param chart its XML
     * @return the other XML
     */
    public static String ofChart(String chart) {
        return NUMBER.matcher(chart).replaceAll("$1$2");
    }

    /** A cell that another one covers shows its borders only; locked as all others are, it need not be there without. */
    private static Set<String> covered(String sheet) {
        Set<String> covered = new HashSet<>();
        Matcher merged = MERGED.matcher(sheet);
        while (merged.find() && covered.size() < MOST_MERGED) {
            int left = CellName.number(merged.group(1));
            int right = CellName.number(merged.group(3));
            int top = Integer.parseInt(merged.group(2));
            int bottom = Integer.parseInt(merged.group(4));
            for (int row = top; row <= bottom; row++) {
                for (int column = left; column <= right; column++) {
                    if (row > top || column > left) {
                        covered.add(CellName.column(column) + row);
                    }
                }
            }
        }
        return covered;
    }

    /**
     * The formats of cells that draw no border and leave them locked.
     *
     * @param styles the styles of the file
     * @return their numbers
     */
    public static Set<String> plainFormats(String styles) {
        List<Boolean> isDrawn = new ArrayList<>();
        Matcher border = BORDER.matcher(styles);
        while (border.find()) {
            isDrawn.add(border.group().contains("style=\""));
        }
        Set<String> plain = new HashSet<>();
        Matcher all = FORMATS.matcher(styles);
        if (!all.find()) {
            return plain;
        }
        Matcher format = FORMAT.matcher(all.group());
        for (int number = 0; format.find(); number++) {
            int drawn = Integer.parseInt(format.group(1));
            if (drawn < isDrawn.size() && !isDrawn.get(drawn) && !format.group().contains("locked=\"false\"")) {
                plain.add(String.valueOf(number));
            }
        }
        return plain;
    }
}
