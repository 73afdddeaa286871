package org.snugsheet.office.sheets.lessonbook.plan;

import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;

/** The second sheet of paper of the plan: whether the difference will show, the chart, and a timetable with each caution at its step. */
final class PlanTimes extends BookPage {

    // Minutes of a lesson beside the readings (common practice, no source).
    private static final int ASK = 4;
    private static final int WRAP = 4;
    private static final int POUR = 2;
    private static final int SHARE = 5;
    private static final int BESIDE = ASK + WRAP + POUR + SHARE;
    private static final int SHORT_LESSON = 30;
    private static final int LESSON = 45;
    // Colder than this, wind makes it dangerous for bare skin; see Caution.OUTDOORS.
    private static final int COLD_CELSIUS = -10;
    private static final int COLD_FAHRENHEIT = 14;

    private final PlanBehind worked;

    PlanTimes(Page page, PlanBehind worked, BookPlan plan, Book book) {
        super(page, plan, book, PlanPage.LAST);
        this.worked = worked;
    }

    /** Writes it from a row on; the last row that it fills. */
    int write(int first) throws com.sun.star.uno.Exception {
        page.newPaperAt("A" + first);
        difference(first);
        worked.chart(book).draw(book.office(), page, "expected", "C" + (first + 1) + ":" + PlanPage.LAST + (first + 3));
        return timetable(first + 4);
    }

    private void difference(int row) throws com.sun.star.uno.Exception {
        section(row, PlanPage.SECTION_HEIGHT, quoted(PlanWords.DIFFERENCE));
        String none = "IF(plan_ready=1;" + sentence(PlanWords.TOO_FEW_KNOWN, quoted(BookWords.START_PAGE)) + ";"
                + quoted(PlanWords.NO_PLAN) + ")";
        left(row + 1, 25, "IF(ISNUMBER(farthest_power);" + of(PlanBehind.FARTHEST) + ";" + none + ")");
        left(row + 2, 27, "IF(ISNUMBER(nearest_power);" + of(PlanBehind.NEAREST) + ";\"\")");
        left(row + 3, 38, quoted(PlanWords.WHAT_TO_DO));
        page.size("A" + (row + 3), 9);
    }

    private void left(int row, double height, String formula) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":B" + row;
        page.merge(cells).look(cells, CellStyleName.NOTE).height("A" + row, height);
        page.formula("A" + row, "=" + formula);
    }

    /** How often the two of a pair are told apart, with how many jars they would be often enough, and from when on it is seen. */
    private String of(String pair) {
        String first = pair + PlanBehind.FIRST;
        String second = pair + PlanBehind.SECOND;
        String each = pair + PlanBehind.EACH;
        String power = pair + PlanBehind.POWER;
        String repeats = pair + PlanBehind.REPEATS;
        String minutes = pair + PlanBehind.MINUTES;
        String tenths = "ROUND(10*" + power + ";0)";
        String hardly = power + "<0.1";
        return "IF(" + each + "=1;" + quoted(PlanWords.WITH_ONE) + ";" + sentence(PlanWords.WITH_MORE, each)
                + ")&\" \"&IF(" + hardly + ";" + sentence(PlanWords.HARDLY_ANY, first, second) + ";IF(" + tenths
                + "=1;" + sentence(PlanWords.ONE_IN_TEN, first, second) + ";IF(" + tenths + ">9;"
                + sentence(PlanWords.NEARLY_ALL, first, second) + ";"
                + sentence(PlanWords.SO_MANY_IN_TEN, first, second, tenths) + ")))&IF(" + power
                + "<0.8;\" \"&IF(ISNUMBER(" + repeats + ");IF(" + repeats + "<=" + BookPlan.MOST_JARS + ";"
                + sentence(PlanWords.TAKE, repeats) + ";" + notEvenSo() + ");" + notEvenSo()
                + ");\"\")&\" \"&IF(ISNUMBER("
                + minutes + ");IF(" + minutes + "<=lesson;" + sentence(PlanWords.SHOWS_AFTER, minutes(minutes)) + ";"
                + sentence(PlanWords.SHOWS_TOO_LATE, minutes(minutes)) + ");" + quoted(PlanWords.NEVER_SHOWS) + ")";
    }

    private String notEvenSo() {
        return sentence(PlanWords.NOT_EVEN, String.valueOf(BookPlan.MOST_JARS));
    }

    private static String minutes(String name) {
        return "ROUNDUP(" + name + ";0)";
    }

    private int timetable(int row) throws com.sun.star.uno.Exception {
        String all = "(lesson+" + BESIDE + ")";
        String lasts = "MAX(IF(" + all + "<=" + SHORT_LESSON + ";" + SHORT_LESSON + ";" + LESSON + ");" + all + ")";
        section(row, PlanPage.SECTION_HEIGHT, FormulaText.sentence(language, PlanWords.TIMETABLE, lasts));
        int head = row + 1;
        page.merge("B" + head + ":C" + head).look("A" + head + ":" + PlanPage.LAST + head, CellStyleName.HEAD);
        page.text("A" + head, words(PlanWords.MINUTES_HEAD))
                .text("B" + head, words(PlanWords.STEP_HEAD))
                .text("D" + head, words(PlanWords.CARE_HEAD))
                .height("A" + head, 7);
        int next = head + 1;
        step(next++, 20, quoted(PlanWords.BEFORE), PlanWords.BEFORE_DO, care(Caution.SCHOOL_RULES, Caution.GLASS));
        step(next++, 13, from("0", ASK), PlanWords.ASK_DO, quoted(PlanWords.ASK_CARE));
        step(next++, 13, from(String.valueOf(ASK), WRAP), PlanWords.WRAP_DO, quoted(PlanWords.WRAP_CARE));
        step(next++, 23, from(String.valueOf(ASK + WRAP), POUR), PlanWords.POUR_DO, quoted(PlanWords.POUR_CARE));
        String cold = "AND(place>2;cold<=IF(scale=\"F\";" + COLD_FAHRENHEIT + ";" + COLD_CELSIUS + "))";
        String begins = String.valueOf(ASK + WRAP + POUR);
        step(
                next,
                30,
                "\"" + begins + "–\"&(" + begins + "+lesson)",
                PlanWords.READ_DO,
                quoted(PlanWords.READ_CARE) + "&IF(" + cold + ";\" \"&" + quoted(Caution.OUTDOORS) + ";\"\")");
        next++;
        step(next++, 13, "(" + begins + "+lesson)&\"–\"&" + lasts, PlanWords.SHARE_DO, quoted(PlanWords.SHARE_CARE));
        step(next++, 10, quoted(PlanWords.AFTER), PlanWords.AFTER_DO, care(Caution.SCALD));
        String last = "A" + next + ":" + PlanPage.LAST + next;
        page.merge(last).look(last, CellStyleName.MESSAGE).height("A" + next, 9);
        page.formula(
                "A" + next,
                "=IF(" + all + ">" + LESSON + ";"
                        + sentence(PlanWords.LONGER, all, String.valueOf(LESSON), String.valueOf(LESSON - BESIDE)) + ";"
                        + sentence(PlanWords.IN_TIME, all) + ")");
        return next;
    }

    private static String from(String minute, int minutes) {
        return "\"" + minute + "–" + (Integer.parseInt(minute) + minutes) + "\"";
    }

    private String care(Caution... cautions) {
        StringBuilder words = new StringBuilder();
        for (Caution each : cautions) {
            words.append(words.isEmpty() ? "" : " ").append(words(each));
        }
        return FormulaText.quoted(words.toString());
    }

    private void step(int row, double height, String when, PlanWords what, String care)
            throws com.sun.star.uno.Exception {
        page.merge("B" + row + ":C" + row).height("A" + row, height);
        page.look("A" + row, CellStyleName.LARGE).size("A" + row, 10);
        page.look("B" + row + ":C" + row, CellStyleName.SMALL_MESSAGE).look("D" + row, CellStyleName.SMALL_MESSAGE);
        page.formula("A" + row, "=" + unlessTooHot(when))
                .formula(
                        "B" + row,
                        "="
                                + unlessTooHot(FormulaText.sentence(
                                        language,
                                        what,
                                        quoted(BookWords.READINGS_PAGE),
                                        quoted(BookWords.ANSWERS_PAGE))))
                .formula("D" + row, "=" + care);
        page.look("D" + row, CellStyleName.CAUTION_LINE).size("D" + row, 9);
    }

    private static String unlessTooHot(String formula) {
        return "IF(too_hot=1;\"\";" + formula + ")";
    }
}
