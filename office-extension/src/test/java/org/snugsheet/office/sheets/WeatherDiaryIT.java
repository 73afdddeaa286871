package org.snugsheet.office.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.frame.XStorable;
import com.sun.star.util.XModifiable;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.sheets.builder.Setting;
import org.snugsheet.office.sheets.weatherdiary.WeatherDiary;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** The weather diary, opened through the menu and typed into. */
@ExtendWith(SharedOffice.class)
class WeatherDiaryIT {

    private static final Setting AMERICAN = new Setting(Language.ENGLISH, Scale.FAHRENHEIT, Paper.LETTER);
    private static final Setting GERMAN = new Setting(Language.GERMAN, Scale.CELSIUS, Paper.A4);

    private final Office office;

    WeatherDiaryIT(Office office) {
        this.office = office;
    }

    @Test
    void theMenuOpensItAsANewDocumentThatNobodyIsAskedToSave() {
        try (CalcDocument mine = office.newDocument()) {
            mine.text("A1", "mine");
            assertEquals(
                    "Weather diary – a month of school days",
                    Menu.call(office, mine, "org.snugsheet:sheet?name=weather-diary", Menu.QUIET));
            try (CalcDocument opened = office.opened("What we found")) {
                office.call("looking at it", () -> {
                    assertEquals(
                            List.of("Diary", "What we found", "To color", "Behind"),
                            Arrays.asList(opened.uno().getSheets().getElementNames()));
                    assertFalse(Uno.as(XModifiable.class, opened.uno()).isModified());
                    assertFalse(Uno.as(XStorable.class, opened.uno()).hasLocation());
                    return true;
                });
            }
            assertEquals("mine", mine.at("A1").text(), "the document that was open is left alone");
        }
    }

    @Test
    void aSheetThatIsNotThereIsSaidWithThoseThatAre() {
        try (CalcDocument mine = office.newDocument()) {
            assertEquals(
                    "There is no worked sheet “winter”. There are: lesson-book, example-class, first-five-minutes, one-jar-one-curve, design-a-wrap, winter-coats, weather-diary.",
                    Menu.call(office, mine, "org.snugsheet:sheet?name=winter", Menu.QUIET));
        }
    }

    /** The wind chill of 10 °F at 15 and of 20 °F at 30 mph by the chart of the US National Weather Service (2001): -7 and 1 °F. */
    @Test
    void whatIsTypedIsCountedAndPutIntoSentences() {
        try (CalcDocument sheet = opened(AMERICAN)) {
            type(sheet, 12, "sunny", 20, 30, 15);
            type(sheet, 13, "snowy", 5, 10, 15);
            // A day off, and one on which nobody read the morning.
            sheet.text("Diary.B15", "snowy").number("Diary.E15", 20).number("Diary.F15", 30);
            type(sheet, 16, "cloudy", 42, 41, 2);
            sheet.calculate();
            assertEquals(-7, sheet.at("Diary.G13").number());
            assertEquals(1, sheet.at("Diary.G15").number());
            assertEquals(41, sheet.at("Diary.G16").number(), "so little wind makes nothing colder");
            assertEquals("❄", sheet.at("Diary.C13").text());
            assertEquals("", sheet.at("Diary.C14").shown());
            List<String> said = texts(sheet, "What we found");
            assertTrue(said.contains("The kind of day that came most often: snowy, 2 of 4 days."), said::toString);
            assertTrue(said.contains("Noon was warmer than morning on 2 of 3 days."), said::toString);
            assertTrue(
                    said.contains("The coldest morning had 5 °F (Day 2), the warmest noon 41 °F (Day 5)."),
                    said::toString);
            assertTrue(
                    said.contains("Because of the wind, noon felt colder than it was on 3 of 4 days."), said::toString);
            assertEquals(
                    "On Day 2 it felt like -7 °F: bare skin can freeze. Stay in, or cover faces and hands and go in soon."
                            + " Your school’s rules for outdoor play come first.",
                    sheet.at("Diary.A9").text());
            assertEquals(List.of(), sheet.failing());
        }
    }

    @Test
    void slipsAreNamedByTheirDay() {
        try (CalcDocument sheet = opened(GERMAN)) {
            assertEquals(List.of(), sheet.failing());
            sheet.number("Tagebuch.A7", 46_328);
            type(sheet, 12, "sonnig", 3, 7, 10);
            sheet.text("Tagebuch.D13", "kalt").calculate();
            assertEquals(
                    "Seht euch 3. Nov an: „kalt“ ist keine Temperatur im Freien. Tippt eine Zahl wie 12 ein.",
                    sheet.at("Tagebuch.A9").text());
            sheet.number("Tagebuch.D13", 385).calculate();
            assertTrue(sheet.at("Tagebuch.A9").text().contains("„385“"));
            sheet.text("Tagebuch.D13", "41 °F")
                    .text("Tagebuch.F13", "ein wenig")
                    .calculate();
            assertEquals(
                    "Seht euch 3. Nov an: Wählt den Wind aus der Liste oder tippt seine Geschwindigkeit ein.",
                    sheet.at("Tagebuch.A9").text());
            sheet.text("Tagebuch.F13", "Blätter bewegen sich").calculate();
            assertEquals("Aufgeschriebene Tage: 2.", sheet.at("Tagebuch.A9").text());
            sheet.number("Tagebuch.E13", 9).calculate();
            assertTrue(texts(sheet, "Was wir sehen")
                    .contains("Der kälteste Morgen hatte 3 °C (2. Nov), der wärmste Mittag 9 °C (3. Nov)."));
        }
    }

    /** November 2026 has 21 days from Monday to Friday; what follows is December. */
    @Test
    void theDaysAreThoseOfOneMonth() {
        try (CalcDocument sheet = opened(AMERICAN)) {
            sheet.number("Diary.A7", 46_328).calculate();
            assertEquals(46_328, sheet.at("Diary.A12").number());
            assertEquals(46_328 + 28, sheet.at("Diary.A32").number());
            assertEquals("", sheet.at("Diary.A33").shown());
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"SPANISH", "FRENCH"})
    void anEmptyOneIsReadyInTheOtherLanguages(Language language) {
        Setting setting = new Setting(language, Scale.CELSIUS, Paper.A4);
        try (CalcDocument sheet = opened(setting)) {
            sheet.calculate();
            assertEquals(List.of(), sheet.failing());
            assertEquals("C", sheet.at(sheet.sheetNames().get(0) + ".A8").text());
        }
    }

    private CalcDocument opened(Setting setting) {
        return MenuSheets.opened(office, new WeatherDiary(), setting);
    }

    private static void type(CalcDocument sheet, int row, String sky, double morning, double noon, double wind) {
        String page = sheet.sheetNames().get(0);
        sheet.text(page + ".B" + row, sky)
                .number(page + ".D" + row, morning)
                .number(page + ".E" + row, noon)
                .number(page + ".F" + row, wind);
    }

    private static List<String> texts(CalcDocument sheet, String page) {
        return sheet.all(page + ".A1:C40").stream()
                .flatMap(List::stream)
                .map(CellResult::shown)
                .toList();
    }
}
