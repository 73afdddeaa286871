package org.snugsheet.office.sheets.teachersnotes;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.SafeWater;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;

/**
 * The teacher’s notes: what heat does, what children often think, what to ask, how to read the ±, safety, standards; with two
 * small helpers that work things out, one for the ± and one for the warm water.
 *
 * @see NotesToRead
 */
public final class TeachersNotes implements WorkedSheet {

    static final String PAGE = "Notes";

    private static final String TITLE = "Teacher’s notes";
    private static final String INVENTED = "invented numbers";

    @Override
    public String fileName() {
        return "teachers-notes";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.NOTES;
    }

    @Override
    public String results() {
        return PAGE + ".A7:B13";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        book.names()
                .fixed("first_value", page, "B8")
                .fixed("first_error", page, "B9")
                .fixed("second_value", page, "B10")
                .fixed("second_error", page, "B11")
                .fixed("warm", page, "E8")
                .fixed("scale", page, "E9");
        page.width("A1", 54).width("B1", 28).width("C1", 8).width("D1", 60).width("E1", 34);
        page.height("A6:A13", 6.2).height("A12:A13", 8).height("A14", 3);
        new Top(
                        TITLE,
                        "What heat does, what children often think it does, what to ask, how to read the ±, and how to"
                                + " keep hands safe.",
                        "no warmer than 43 °C (109 °F), and an adult pours. More about safety is at the end; your"
                                + " school’s policy and local rules come first.")
                .writeNarrow(page, "E");
        writeHelper(page);
        writeWater(page);
        rule(page);
        NotesToRead.onFirstPage(page, 15);
        Page more = NotesToRead.secondPage(book);
        more.text("T1", "Scales").text("T2", "C").text("T3", "F").look("T1:T3", CellStyleName.HINT);
        book.names().fixed("scales", more, "T2:T3");
        Invented.keep(book, more, "V1", page, "B8:B11");
        new PrintSetup(PrintSetup.Way.PORTRAIT, TITLE).apply(page, "A1:E" + NotesToRead.LAST_ROW);
        page.protect();
        more.protect();
        book.describe(
                TITLE,
                "Heat, misconceptions, questions, uncertainty, standards and safety for a lesson on cooling",
                "Notes of Snugsheet for a teacher, with " + INVENTED
                        + ": what heat does, common misconceptions, questions to ask, how to read the uncertainty.",
                "teacher’s notes",
                "misconceptions",
                "uncertainty",
                "safety",
                INVENTED);
        book.openAt(page, "B8");
    }

    private static void writeHelper(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:B6", CellStyleName.SECTION).formula("A6", Invented.heading("Do two results differ?"));
        page.text("A7", "two half-times, say, and their ±").look("A7:B7", CellStyleName.HINT);
        page.look("A8:A11", CellStyleName.LABEL).look("B8:B11", CellStyleName.INPUT);
        page.text("A8", "the first value").number("B8", 48);
        page.text("A9", "its ±, the standard error").number("B9", 2);
        page.text("A10", "the second value").number("B10", 53);
        page.text("A11", "its ±, the standard error").number("B11", 3);
        page.merge("A12:B13").look("A12:B13", CellStyleName.SENTENCE);
        // The difference of two independent values has the standard error of both in quadrature (JCGM 100:2008, 5.1.2);
        // twice that is about 95 % of a normal distribution.
        String ratio = "ABS(first_value-second_value)/SQRT(first_error^2+second_error^2)";
        page.formula(
                "A12",
                "=IFERROR(IF(" + ratio + ">2;\"They differ: \"&FIXED(" + ratio
                        + ";1)&\" times their joint ±.\";\"Cannot tell: only \"&FIXED(" + ratio
                        + ";1)&\" times their joint ±.\");\"Type two values, each with its ±.\")");
    }

    private static void writeWater(Page page) throws com.sun.star.uno.Exception {
        page.look("D6:E6", CellStyleName.SECTION).text("D6", "Is this water safe?");
        page.text("D7", "ask before pupils touch a jar").look("D7:E7", CellStyleName.HINT);
        page.look("D8:D9", CellStyleName.LABEL).look("E8:E9", CellStyleName.INPUT);
        page.formula("D8", Degrees.label("Warm water, ")).number("E8", 40);
        page.text("D9", "Scale, C or F").text("E9", "C");
        page.merge("D10:E13").look("D10:E13", CellStyleName.NOTE);
        page.formula("D10", "=IFERROR(PLAN.SAFE(warm;scale);\"Type the temperature of the water as a number.\")");
        Highlight.when(page, "D10:E13", SafeWater.TOO_HOT, CellStyleName.TROUBLE_MESSAGE);
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .hint("B8", "The first value", "A half-time, a cooling constant, an R-value: any result with a ±.")
                .aboveZero("B9", "Its ±", "The standard error, below or beside the value.")
                .hint("B10", "The second value", "The same of another jar, in the same unit.")
                .aboveZero("B11", "Its ±", "The standard error, below or beside the value.")
                .hint("E8", "Warm water", "How warm the water is, measured by an adult.")
                .only("E9", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.");
    }
}
