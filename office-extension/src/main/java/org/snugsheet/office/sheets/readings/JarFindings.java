package org.snugsheet.office.sheets.readings;

import org.snugsheet.office.functions.check.ProblemWords;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.TablePart;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/**
 * What the checks find in the readings of one jar, on a page behind a sheet, and the names for it. A caution is found too, but
 * the jar is used all the same; what can hurt – water that is too hot for pupils, bitter cold – is a caution that every page shows first.
 *
 * <p>The names are {@code check}: OK, or what holds the jar back; {@code caution}: a remark that does not hold it back; {@code hot}:
 * what can hurt; {@code found_row}: the rows of all findings; each with a word behind it where a sheet has several jars.
 *
 * @param page the page
 * @param behind the word behind the names, such as {@code _bare}; empty for the only jar
 * @param readings the name of its readings; nothing is said before there is one
 */
public record JarFindings(Page page, String behind, String readings) {

    private static final int COLUMNS = 4;

    /**
     * Writes the findings and the names.
     *
     * @param book the document
     * @param check the cell for {@code check}; those below it take the other two
     * @param column the first column of the findings
     * @param row their first row
     * @param rows how many there are
     * @param arguments the arguments of the checks, in brackets
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void write(Book book, String check, char column, int row, int rows, String arguments)
            throws com.sun.star.uno.Exception {
        int last = row + rows - 1;
        String found = column + "" + row + ":" + (char) (column + COLUMNS - 1) + last;
        char jar = check.charAt(0);
        int first = Integer.parseInt(check.substring(1));
        book.names()
                .fixed("check" + behind, page, jar + "" + first)
                .fixed("caution" + behind, page, jar + "" + (first + 1))
                .fixed("hot" + behind, page, jar + "" + (first + 2))
                .fixed("found_row" + behind, page, ofColumn(column, 0, row, last))
                .fixed("found" + behind, page, ofColumn(column, 1, row, last))
                .fixed("what_to_do" + behind, page, ofColumn(column, 3, row, last))
                .fixed("kind" + behind, page, ofColumn(column, COLUMNS, row, last));
        Language language = book.language();
        page.look(found, CellStyleName.RESULT)
                .table(found, "=IFERROR(" + TablePart.of(page, found, "CHECK.ALL" + arguments, 2, 1) + "&\"\";\"\")");
        for (int line = row; line <= last; line++) {
            String sure = (char) (column + 2) + "" + line;
            page.formula(
                    (char) (column + COLUMNS) + "" + line,
                    "=IF(" + sure + "=\"\";\"\";IF(" + sure + "="
                            + FormulaText.quoted(language, ProblemWords.CAN_HURT) + ";\"hot\";IF(" + sure + "="
                            + FormulaText.quoted(language, ProblemWords.CAUTION) + ";\"caution\";\"slip\")))");
        }
        page.look(jar + "" + first + ":" + jar + (first + 2), CellStyleName.RESULT);
        // Without a slip CHECK.READINGS answers with a caution, if there is one.
        page.formula(
                jar + "" + first,
                "=IF(SUMPRODUCT(--(LEN(" + readings + ")>0))=0;\"\";IFERROR(" + first("slip") + ";IF(caution" + behind
                        + "&hot" + behind + "=\"\";CHECK.READINGS" + arguments + ";\"OK\")))");
        page.formula(jar + "" + (first + 1), "=IFERROR(" + first("caution") + ";\"\")");
        page.formula(jar + "" + (first + 2), "=IFERROR(" + first("hot") + ";\"\")");
    }

    private String first(String kind) {
        String place = "MATCH(\"" + kind + "\";kind" + behind + ";0)";
        return "TRIM(INDEX(found" + behind + ";" + place + ")&\" \"&INDEX(what_to_do" + behind + ";" + place + "))";
    }

    private static String ofColumn(char first, int more, int from, int to) {
        char column = (char) (first + more);
        return column + "" + from + ":" + column + to;
    }
}
