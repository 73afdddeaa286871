package org.snugsheet.office.sheets.lessonbook.answers;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.Names;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;

/** Parts of the answers: each jar with what is wrong with it, how sure all of it is, and two jars to compare. */
final class AnswerDetails extends BookPage {

    AnswerDetails(Page page, BookPlan plan, Book book) {
        super(page, plan, book, AnswersPage.LAST);
    }

    /** Writes a line for each jar from a row on, and says which is the next row. */
    int jars(int first) throws com.sun.star.uno.Exception {
        section(first, AnswersPage.SECTION_HEIGHT, AnswerWords.ONE_BY_ONE);
        int head = first + 1;
        page.height("A" + head, 15.5).look(row(head), CellStyleName.NARROW_HEAD);
        page.size(row(head), 9).merge("A" + head + ":B" + head).merge("F" + head + ":G" + head);
        page.text("A" + head, words(AnswerWords.JAR));
        page.formula("C" + head, "=" + sentence(AnswerWords.SUBTRACTED, Names.SHOWN));
        page.text("D" + head, words(AnswerWords.HALF_OF_JAR));
        page.formula("E" + head, "=" + sentence(AnswerWords.BAR, Names.SHOWN));
        page.text("F" + head, words(AnswerWords.FOUND));
        for (int jar = 1; jar <= plan.jars(); jar++) {
            jar(head + jar, jar);
        }
        int end = head + plan.jars() + 1;
        line(end, sentence(AnswerWords.SURE_OWN, StartPage.degrees("start"), Names.LESSON));
        return end + 1;
    }

    private void jar(int row, int jar) throws com.sun.star.uno.Exception {
        page.height("A" + row, 11.5).merge("F" + row + ":" + AnswersPage.LAST + row);
        page.look("A" + row + ":E" + row, CellStyleName.RESULT).look("B" + row, CellStyleName.LABEL);
        page.wrapped("B" + row);
        String wrap = "INDEX(wraps;" + jar + ")";
        String state = "INDEX(states;" + jar + ")";
        String isThere = "=IF(" + state + "=0;\"\";";
        page.formula("A" + row, isThere + jar + ")").formula("B" + row, "=" + wrap);
        page.formula("C" + row, isThere + "IF(" + state + "=2;ROUND(INDEX(subtracted;" + jar + ");1)&\"\";\"–\"))");
        String half = "INDEX(half_times;" + jar + ")";
        page.formula(
                "D" + row,
                isThere + "IF(ISNUMBER(" + half + ");" + sentence(AnswerWords.MINUTES, "FIXED(" + half + ";0;TRUE())")
                        + ";\"–\"))");
        page.formula(
                "E" + row,
                isThere + "IF(" + state + "=2;IFERROR(" + number("INDEX(lost;MATCH(" + wrap + ";ranked;0))", 1)
                        + ";\"–\");\"–\"))");
        String cells = "F" + row + ":" + AnswersPage.LAST + row;
        page.look(cells, CellStyleName.LABEL).size(cells, 9).wrapped(cells);
        String finding = "INDEX(findings;" + jar + ")";
        page.formula(
                "F" + row,
                isThere + "IF(OR(" + state + "=1;" + state + "=2;" + state + "=4;" + finding + "=\"\");INDEX(words;"
                        + jar + ");" + finding + "))");
        Highlight.when(page, cells, state + "=3", CellStyleName.SMALL_TROUBLE);
    }

    /** Writes how sure the answers are from a row on, and says which is the next row. */
    int sure(int first) throws com.sun.star.uno.Exception {
        section(first, AnswersPage.SECTION_HEIGHT, AnswerWords.HOW_SURE);
        int row = first + 1;
        line(row++, quoted(AnswerWords.SURE_RANGE));
        line(row++, sentence(AnswerWords.SURE_SPREAD, "ROUND(100*spread;0)"));
        line(row++, quoted(AnswerWords.SURE_NOT));
        line(row++, quoted(AnswerWords.SURE_CLOSE));
        return row;
    }

    private void line(int row, String formula) throws com.sun.star.uno.Exception {
        across(row, CellStyleName.MESSAGE);
        page.height("A" + row, 10).formula("A" + row, "=" + formula);
    }

    /** Writes the boxes to choose two jars from a row on, and says which is the next row. */
    int compare(int first) throws com.sun.star.uno.Exception {
        page.height("A" + first, 2);
        int row = first + 1;
        section(row, AnswersPage.SECTION_HEIGHT, AnswerWords.COMPARE);
        String one = "B" + (row + 1);
        String other = "B" + (row + 2);
        for (String cell : new String[] {one, other}) {
            page.height(cell, 7).look(cell, CellStyleName.INPUT);
            InputRules.on(page)
                    .choice(cell, Names.JAR_LABELS, words(AnswerWords.COMPARE), words(AnswerWords.COMPARE_HINT));
        }
        page.text("C" + (row + 1), words(AnswerWords.FIRST_JAR)).look("C" + (row + 1), CellStyleName.HINT);
        page.text("C" + (row + 2), words(AnswerWords.SECOND_JAR)).look("C" + (row + 2), CellStyleName.HINT);
        book.names().fixed("compared_first", page, one).fixed("compared_second", page, other);
        String said = "A" + (row + 3);
        across(row + 3, CellStyleName.MESSAGE);
        page.height(said, 10).formula(said, "=" + verdict());
        return row + 4;
    }

    private String verdict() {
        String first = "MATCH(compared_first;jar_labels;0)";
        String second = "MATCH(compared_second;jar_labels;0)";
        return "IF(OR(LEN(compared_first)=0;LEN(compared_second)=0;ISERROR(" + first + ");ISERROR(" + second + "));"
                + quoted(AnswerWords.CHOOSE) + ";IF(compared_first=compared_second;" + quoted(AnswerWords.SAME)
                + ";IF(OR(INDEX(states;" + first + ")<>2;INDEX(states;" + second + ")<>2);"
                + quoted(AnswerWords.CANNOT) + ";IFERROR(COOL.VERDICT(times;INDEX(trusted;0;" + first
                + ");times;INDEX(trusted;0;" + second + ");around;mark;scale;spread);" + quoted(AnswerWords.CANNOT)
                + "))))";
    }

    private static String number(String value, int decimals) {
        return "FIXED(" + value + ";" + decimals + ";TRUE())";
    }
}
