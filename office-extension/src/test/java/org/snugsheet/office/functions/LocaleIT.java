package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Location;
import org.snugsheet.engine.Problem;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.words.Language;

/**
 * An American and a German document, each in an American and in a German office: the same sheet gives the same numbers in
 * all four, takes what is typed with a point or with a comma, and speaks the language of the document.
 */
@ExtendWith(SharedOffice.class)
class LocaleIT {

    private static final Locale AMERICAN = new Locale("en", "US", "");
    private static final Locale GERMAN = new Locale("de", "DE", "");

    /** Texts as children type them, and the degrees Celsius they mean; 106.7 °F by °C = (°F − 32) / 1.8, NIST SP 811 B.9. */
    private static final List<String> TYPED =
            List.of("41,5", "41.5", "41,5 °C", "41.5C", "106,7 °F", "106.7 F", "+41,5", " 41,5\u00a0°C");

    /** Numbers that travel as text, written out by the office with its own decimal sign. */
    private static final List<Double> NUMBERS = List.of(0.5, 1234.5, -0.25, 1e-7, 123456789.25, 0.1 + 0.2);

    @Test
    void anAmericanOffice(Office office) {
        assertBothDocuments(office, "=COOL.TIME(20,40,10.5,0.05)");
    }

    @Test
    void aGermanOffice(Office office) {
        try (Office german = office.setup().inLocale(java.util.Locale.GERMANY).start()) {
            assertBothDocuments(german, "=COOL.TIME(20;40;10,5;0,05)");
        }
    }

    private static void assertBothDocuments(Office office, String asTypedThere) {
        List<CellResult> american;
        try (CalcDocument sheet = in(AMERICAN, office)) {
            assertReadsWhatIsTyped(sheet);
            assertSpeaks(Language.ENGLISH, sheet, "5.5");
            assertSeparators(office, sheet, asTypedThere);
            american = curve(sheet);
        }
        try (CalcDocument sheet = in(GERMAN, office)) {
            assertReadsWhatIsTyped(sheet);
            assertSpeaks(Language.GERMAN, sheet, "5,5");
            assertSeparators(office, sheet, asTypedThere);
            assertEquals(american, curve(sheet));
        }
    }

    private static CalcDocument in(Locale locale, Office office) {
        CalcDocument sheet = office.newDocument();
        office.call("setting the language of a document", () -> {
            UnoRuntime.queryInterface(XPropertySet.class, sheet.uno()).setPropertyValue("CharLocale", locale);
            return locale;
        });
        return sheet;
    }

    private static void assertReadsWhatIsTyped(CalcDocument sheet) {
        for (String typed : TYPED) {
            sheet.text("A1", typed);
            assertEquals(41.5, sheet.formula("B1", "TEMP.READ(A1)").at("B1").number(), 1e-12, typed);
        }
        for (double number : NUMBERS) {
            sheet.number("A1", number);
            CellResult kelvin =
                    sheet.formula("B1", "TEMP.CONVERT(A1;\"C\";\"K\")").at("B1");
            assertEquals(number + 273.15, kelvin.number(), 1e-14 * Math.abs(number), "" + number);
        }
        // A thousands mark would be a thousandth in the next country: refused, with a point or with a comma.
        for (String typed : List.of("1.234,5", "1,234.5", "1 234,5")) {
            CellResult refused =
                    sheet.text("A1", typed).formula("B1", "TEMP.READ(A1)").at("B1");
            assertEquals(ErrorCodes.INVALID_ARGUMENT, refused.error(), typed);
        }
    }

    private static void assertSpeaks(Language language, CalcDocument sheet, String number) {
        sheet.text("A1", "0").text("A2", "5,5").text("A3", "5").numbersDown("B1", 40, 34, 30);
        String said =
                sheet.formula("C1", "CHECK.READINGS(A1:A3;B1:B3;10)").at("C1").text();
        Location third = new Location(3, OptionalDouble.of(5), Optional.empty(), false);
        assertEquals(
                language.say(Finding.atRow(3, Problem.TIME_NOT_LATER, 5.0, 5.5).located(row -> third)), said);
        assertTrue(said.contains(number), said);
    }

    /** From Newton’s law: ln((40 − 10.5) / (20 − 10.5)) / 0.05. */
    private static void assertSeparators(Office office, CalcDocument sheet, String asTyped) {
        office.call("typing a formula", () -> {
            XSpreadsheet first = UnoRuntime.queryInterface(
                    XSpreadsheet.class,
                    sheet.uno().getSheets().getByName(sheet.sheetNames().get(0)));
            UnoRuntime.queryInterface(XPropertySet.class, first.getCellByPosition(3, 0))
                    .setPropertyValue("FormulaLocal", asTyped);
            return asTyped;
        });
        assertEquals(Math.log(29.5 / 9.5) / 0.05, sheet.at("D1").number(), 1e-12);
    }

    /** One reading as text with a comma, one with a point, one in °F, one blank; the surroundings with a comma. */
    private static List<CellResult> curve(CalcDocument sheet) {
        sheet.numbersDown("A1", 0, 5, 10, 15, 20, 25);
        sheet.text("B1", "40,5").text("B2", "34.5").text("B3", "86,9 °F").number("B4", 27.5);
        sheet.text("B5", "").text("B6", "22,5").text("C1", "9,5");
        sheet.formula("D1", "COOL.RATE(A1:A6;B1:B6;C1;0.5)").formula("D2", "COOL.START(A1:A6;B1:B6;C1)");
        sheet.formula("D3", "COOL.HALFTIME(A1:A6;B1:B6;C1;\"0,5\")");
        List<CellResult> numbers = List.of(sheet.at("D1"), sheet.at("D2"), sheet.at("D3"));
        assertTrue(numbers.stream().allMatch(one -> one.number() > 0), numbers.toString());
        return numbers;
    }
}
