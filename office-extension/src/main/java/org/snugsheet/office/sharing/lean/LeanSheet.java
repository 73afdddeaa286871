package org.snugsheet.office.sharing.lean;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;

/** A sheet, or a chart, of an .xlsx in fewer letters: what is so anyway is not said, and nothing that is seen changes. */
public final class LeanSheet {

    private static final List<String> USUAL_OF_ROWS = List.of(
            " customFormat=\"false\"",
            " hidden=\"false\"",
            " customHeight=\"false\"",
            " outlineLevel=\"0\"",
            " collapsed=\"false\"");
    private static final List<String> USUAL_OF_CELLS = List.of(" s=\"0\"", " t=\"n\"");
    private static final Pattern MERGED = Pattern.compile("<mergeCell ref=\"([A-Z]+)(\\d+):([A-Z]+)(\\d+)\"/>");
    private static final Pattern EMPTY = Pattern.compile("<c r=\"([A-Z]+\\d+)\" s=\"(\\d+)\"/>");
    private static final Pattern NUMBER = Pattern.compile("(<c:v>-?\\d+\\.\\d{4})\\d+(</c:v>)");
    private static final Pattern ARRAY = Pattern.compile("<f t=\"array\" ref=\"([A-Z]+)(\\d+):([A-Z]+)(\\d+)\"");
    private static final Pattern TYPED =
            Pattern.compile("(<c r=\"([A-Z]+\\d+)\"(?: s=\"\\d+\")?)(?: t=\"[a-z]+\")?>(?:<v>[^<]*</v>|<v/>)</c>");
    private static final int MOST_CELLS = 100_000;

    /** More than the points of a few curves that somebody looks at in a table. */
    private static final int MANY_CELLS = 500;

    private LeanSheet() {}

    /**
     * A sheet without what is so anyway.
     *
     * @param sheet its XML
     * @param formats the formats of its cells
     * @return the other XML
     */
    public static String of(String sheet, CellFormats formats) {
        String rows = without(sheet, "<row ", USUAL_OF_ROWS);
        Set<String> merged = new HashSet<>();
        Set<String> covered = covered(rows, merged);
        String visible = EMPTY.matcher(rows)
                .replaceAll(cell -> covered.contains(cell.group(1)) && formats.hasNoLines(cell.group(2))
                        ? ""
                        : Matcher.quoteReplacement(cell.group()));
        String shared = merged.size() < MOST_CELLS ? SharedLines.in(visible, formats, merged) : visible;
        return without(shared, "<c ", USUAL_OF_CELLS).replace("<f aca=\"false\"", "<f");
    }

    /** Start tags without some of their attributes. They are many; so nothing is written anew that stays. */
    private static String without(String sheet, String tag, List<String> attributes) {
        StringBuilder other = new StringBuilder(sheet.length());
        int at = 0;
        for (int from = sheet.indexOf(tag); from >= 0; from = sheet.indexOf(tag, at)) {
            int end = sheet.indexOf('>', from);
            if (end < 0) {
                break;
            }
            String lean = sheet.substring(from, end);
            for (String attribute : attributes) {
                lean = lean.replace(attribute, "");
            }
            other.append(sheet, at, from).append(lean);
            at = end;
        }
        return other.append(sheet, at, sheet.length()).toString();
    }

    /**
     * A page of steps: formulas that are alike are written once, and what each has worked out is left out, for every program works it out when
     * it opens the file. Cells that hold nothing and in which nothing is seen are not there.
     *
     * @param sheet its XML
     * @param formats the formats of its cells
     * @return the other XML
     */
    public static String ofSteps(String sheet, CellFormats formats) {
        String seen = EMPTY.matcher(sheet)
                .replaceAll(cell -> formats.isUnseen(cell.group(2)) ? "" : Matcher.quoteReplacement(cell.group()));
        String shared = SharedFormulas.in(of(seen, formats));
        return FormulaCell.replaced(shared, FormulaCell.of(shared), FormulaCell::withoutValue);
    }

    /**
     * A sheet with array formulas, of which formulas that pick cells have no values in the file. LibreOffice 7.4 does not see, until all is worked
     * out anew, that the cells they pick are those of an array formula: the first reading that is typed would leave them as they were. Where so
     * many cells are those of array formulas that nobody reads the page, nothing that is worked out has a value.
     *
     * @param sheet its XML
     * @return the other XML; the same if there is no array formula
     */
    public static String workedOutAnew(String sheet) {
        Set<String> cells = new HashSet<>();
        Matcher array = ARRAY.matcher(sheet);
        while (array.find() && cells.size() < MOST_CELLS) {
            addAll(cells, array.toMatchResult());
        }
        if (cells.isEmpty()) {
            return sheet;
        }
        boolean isRead = cells.size() < MANY_CELLS;
        String formulas = FormulaCell.replaced(sheet, FormulaCell.of(sheet), cell -> {
            boolean isPicking = cell.formula().contains("INDEX(")
                    && !ARRAY.matcher(cell.formula()).find();
            return isRead && !isPicking ? cell.whole() : cell.withoutValue();
        });
        return isRead
                ? formulas
                : TYPED.matcher(formulas)
                        .replaceAll(cell -> Matcher.quoteReplacement(
                                cells.contains(cell.group(2)) ? cell.group(1) + "/>" : cell.group()));
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
    private static Set<String> covered(String sheet, Set<String> all) {
        Set<String> first = new HashSet<>();
        Matcher merged = MERGED.matcher(sheet);
        while (merged.find() && all.size() < MOST_CELLS) {
            addAll(all, merged.toMatchResult());
            first.add(merged.group(1) + merged.group(2));
        }
        Set<String> covered = new HashSet<>(all);
        covered.removeAll(first);
        return covered;
    }

    /** Adds the names of all cells of a range. */
    private static void addAll(Set<String> cells, MatchResult range) {
        int right = CellName.number(range.group(3));
        int bottom = Integer.parseInt(range.group(4));
        for (int row = Integer.parseInt(range.group(2)); row <= bottom; row++) {
            for (int column = CellName.number(range.group(1)); column <= right; column++) {
                cells.add(CellName.column(column) + row);
            }
        }
    }
}
