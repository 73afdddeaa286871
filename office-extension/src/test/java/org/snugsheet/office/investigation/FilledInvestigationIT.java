package org.snugsheet.office.investigation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.investigation.LaidOut.assertNoErrors;
import static org.snugsheet.office.investigation.LaidOut.layOut;
import static org.snugsheet.office.investigation.LaidOut.texts;

import com.sun.star.awt.Size;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.Uno;

/** A sheet laid out through the menu, with readings typed into it: what it works out, and what it finds. */
@ExtendWith(SharedOffice.class)
class FilledInvestigationIT {

    private final Office office;

    FilledInvestigationIT(Office office) {
        this.office = office;
    }

    /** Readings by Newton’s law, rounded to the mark: the rates come back, and the wraps in their order. */
    @Test
    void whatIsTypedIsWorkedOut() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(
                    office,
                    sheet,
                    Uno.named("Materials", "bare;sock;leaves"),
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"),
                    Uno.named("Minutes", 30));
            double[] rates = {0.045, 0.03, 0.018};
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int jar = 0; jar < rates.length; jar++) {
                double[] readings = new double[11];
                for (int i = 0; i < readings.length; i++) {
                    readings[i] = Math.rint(3 + 38 * Math.exp(-rates[jar] * 3 * i));
                }
                sheet.numbersDown("Investigation." + (char) ('B' + jar) + (head + 1), readings);
            }
            assertNoErrors(sheet, "Investigation");
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            for (int jar = 0; jar < rates.length; jar++) {
                double rate = sheet.at("Investigation.C" + (results + jar)).number();
                double error = sheet.at("Investigation.D" + (results + jar)).number();
                assertEquals(rates[jar], rate, 3 * error);
                assertEquals("OK", sheet.at("Investigation.I" + (results + jar)).text());
            }
            int best = sheet.rowOf(InvestigationWords.RANKING.english(), "Investigation.A1") + 3;
            assertEquals("leaves", sheet.at("Investigation.B" + best).text());
            assertEquals("bare", sheet.at("Investigation.B" + (best + 2)).text());
        }
    }

    /** A finding names its place as the person sees it, is above the readings, and marks the cell. */
    @Test
    void theChecksSpeakAtOnce() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Scale", "C"), Uno.named("Surroundings", "3"));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            int sock = sheet.rowOf("wool sock", "Investigation.A1");
            sheet.numbersDown("Investigation.C" + (head + 1), 42, 39, 37, 35, 33, 31, 29.5, 28, 26.5, 25, 24);
            assertEquals("OK", sheet.at("Investigation.C" + sock).text());
            assertEquals("", sheet.at("Investigation.C" + (sock + 1)).text());
            sheet.text("Investigation.C" + (head + 5), "wram");
            assertEquals(
                    "wool sock, minute 12: “wram” is not a temperature. Type a number, or leave the cell blank.",
                    sheet.at("Investigation.C" + sock).text());
            assertTrue(sock < head);
            assertMarkedBy(sheet, "C" + sock, "$C$" + sock);
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            assertMarkedBy(sheet, "I" + results, "$I$" + results);
            assertEquals(List.of(5), marked(sheet, "C", head));
            sheet.number("Investigation.C" + (head + 5), 330);
            assertEquals(List.of(5), marked(sheet, "C", head));
            assertEquals(List.of(), marked(sheet, "B", head));
            sheet.number("Investigation.B" + (head + 1), 60);
            assertTrue(texts(sheet, "Investigation").stream()
                    .anyMatch(text -> text.startsWith(Caution.SCALDS_IN_SECONDS.english())));
        }
    }

    /** With a finding open a jar keeps its points but has no curve, and the ranking gives its whole reason. */
    @Test
    void aJarHeldBackHasNoCurveAndSaysWhy() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(
                    office,
                    sheet,
                    Uno.named("Materials", "bare;sock;leaves"),
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            double[] rates = {0.045, 0.03, 0.018};
            for (int jar = 0; jar < rates.length; jar++) {
                double[] readings = new double[11];
                for (int i = 0; i < readings.length; i++) {
                    readings[i] = Math.rint(10 * (3 + 38 * Math.exp(-rates[jar] * 3 * i))) / 10;
                }
                sheet.numbersDown("Investigation." + (char) ('B' + jar) + (head + 1), readings);
            }
            assertEquals(List.of(true, true, true), curves(sheet, 3));
            double right = sheet.at("Investigation.C" + (head + 4)).number();
            sheet.number("Investigation.C" + (head + 4), right / 10);
            assertEquals(List.of(true, false, true), curves(sheet, 3));
            int ranking = sheet.rowOf(InvestigationWords.RANKING.english(), "Investigation.A1") + 2;
            assertEquals(
                    InvestigationWords.REMARK_HEAD.english(),
                    sheet.at("Investigation.H" + ranking).text());
            assertEquals("sock", sheet.at("Investigation.B" + (ranking + 3)).text());
            String reason = sheet.at("Investigation.H" + (ranking + 3)).text();
            assertTrue(reason.startsWith("minute 9: "), reason);
            assertFits(sheet, "H" + (ranking + 3), reason);
        }
    }

    /** That two readings are few is no news while they are being taken; a slip in one of them is. */
    @Test
    void theFirstReadingsAreTakenInPeace() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Scale", "C"), Uno.named("Surroundings", "3"));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            int jar = sheet.rowOf("no wrap", "Investigation.A1");
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            sheet.numbersDown("Investigation.B" + (head + 1), 41, 37);
            assertEquals("", sheet.at("Investigation.C" + jar).text());
            assertEquals("", sheet.at("Investigation.I" + results).text());
            sheet.text("Investigation.B" + (head + 2), "wram");
            assertTrue(
                    sheet.at("Investigation.C" + jar).text().startsWith("no wrap, minute 3: “wram”"),
                    sheet.at("Investigation.C" + jar).text());
            sheet.numbersDown("Investigation.B" + (head + 2), 37, 34);
            assertEquals("OK", sheet.at("Investigation.C" + jar).text());
        }
    }

    /** Nothing is found before anything is typed, and the surroundings are asked for once, not once a jar. */
    @Test
    void missingSurroundingsAreAskedForOnce() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(office, sheet, Uno.named("Scale", "C"));
            String asked = InvestigationWords.SURROUNDINGS_ASKED.english();
            assertFalse(texts(sheet, "Investigation").contains(asked));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (char column = 'B'; column <= 'F'; column++) {
                sheet.numbersDown("Investigation." + column + (head + 1), 42, 39, 37, 35);
            }
            int jars = sheet.rowOf("no wrap", "Investigation.A1");
            // Above the readings, where it is seen while they are typed.
            assertEquals(asked, sheet.at("Investigation.B" + (head - 3)).text());
            for (int jar = 0; jar < 5; jar++) {
                assertEquals("", sheet.at("Investigation.C" + (jars + jar)).text());
            }
        }
    }

    /** Times of the day mean the minutes since the first. */
    @Test
    void clockTimesAreMinutes() {
        try (CalcDocument sheet = office.newDocument()) {
            layOut(
                    office,
                    sheet,
                    Uno.named("Scale", "C"),
                    Uno.named("Surroundings", "3"),
                    Uno.named("Jars", 2),
                    Uno.named("Minutes", 12));
            int head = sheet.rowOf("minutes", "Investigation.A1");
            for (int i = 0; i <= 12; i++) {
                sheet.number("Investigation.A" + (head + 1 + i), (9 * 60 + 5 + i) / 1440.0);
                sheet.number("Investigation.B" + (head + 1 + i), Math.rint(10 * (3 + 38 * Math.exp(-0.045 * i))) / 10);
            }
            int results = sheet.rowOf(InvestigationWords.RESULTS.english(), "Investigation.A1") + 2;
            assertEquals(0.045, sheet.at("Investigation.C" + results).number(), 0.002);
            assertEquals(41, sheet.at("Investigation.F" + results).number(), 0.5);
        }
    }

    /** What looks different in trouble asks the cell that tells of it, and no cell further down. */
    private void assertMarkedBy(CalcDocument sheet, String cell, String teller) {
        String asked = office.call("asking what marks " + cell, () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
            Object marks = Uno.property(page.getCellRangeByName(cell), "ConditionalFormat");
            return Uno.as(
                            XSheetCondition.class,
                            Uno.as(XIndexAccess.class, marks).getByIndex(0))
                    .getFormula1();
        });
        assertEquals("AND(" + teller + "<>\"OK\";" + teller + "<>\"\")", asked);
    }

    /** Which readings of a column, counted from 1, are marked: as the condition of the marks says. */
    private List<Integer> marked(CalcDocument sheet, String column, int head) {
        String condition = office.call("asking what marks a reading", () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
            Object marks = Uno.property(page.getCellRangeByName(column + (head + 1)), "ConditionalFormat");
            return Uno.as(
                            XSheetCondition.class,
                            Uno.as(XIndexAccess.class, marks).getByIndex(0))
                    .getFormula1();
        });
        List<Integer> marked = new ArrayList<>();
        for (int i = 1; i <= 11; i++) {
            sheet.formula("Investigation.Z" + (head + i), condition);
            if (sheet.at("Investigation.Z" + (head + i)).number() == 1) {
                marked.add(i);
            }
        }
        return List.copyOf(marked);
    }

    /** Which jars have a curve: from top to bottom of the sheet the numbers of three lines each are side by side. */
    private List<Boolean> curves(CalcDocument sheet, int jars) {
        List<List<CellResult>> behind = sheet.all("Investigation.AA1:AZ120");
        int row = 0;
        while (behind.get(row).stream()
                        .filter(cell -> cell instanceof CellResult.OfText text
                                && text.text().equals("minutes"))
                        .count()
                < 2) {
            row++;
        }
        List<Boolean> drawn = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            drawn.add(behind.get(row + 1).get(2 + jars + 3 * jar) instanceof CellResult.OfNumber);
        }
        return List.copyOf(drawn);
    }

    /** Letters are half as wide as high at most, on average, and lines a fifth higher. */
    private void assertFits(CalcDocument sheet, String cell, String text) {
        office.call("measuring " + cell, () -> {
            XSpreadsheet page =
                    Uno.as(XSpreadsheet.class, sheet.uno().getSheets().getByName("Investigation"));
            Object range = page.getCellRangeByName(cell);
            double points = (Float) Uno.property(range, "CharHeight");
            double letter = points / 72 * 2540;
            com.sun.star.sheet.XSheetCellCursor whole =
                    page.createCursorByRange(Uno.as(com.sun.star.sheet.XSheetCellRange.class, range));
            whole.collapseToMergedArea();
            Size size = (Size) Uno.property(whole, "Size");
            double lines = Math.ceil(text.length() * letter / 2 / (size.Width - 200));
            assertTrue(lines * 1.2 * letter < size.Height, text + ": " + lines + " lines in " + size.Height);
            return true;
        });
    }
}
