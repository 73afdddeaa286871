package org.snugsheet.office.sheets.designawrap;

import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.shared.BitterCold;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.ExampleThermometer;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.words.Language;

/** The boxes of {@link DesignAWrap} that say what the jar is and where it stands. */
final class JarBoxes {

    // The cup of the United States, in milliliters (NIST Handbook 44, appendix C).
    private static final String CUP = "236.588";

    private final Page page;
    private final Language language;
    private final ExampleThermometer thermometer;

    JarBoxes(Page page, Language language, ExampleThermometer thermometer) {
        this.page = page;
        this.language = language;
        this.thermometer = thermometer;
    }

    void write() throws com.sun.star.uno.Exception {
        page.look("A6:H6", CellStyleName.SECTION).text("A6", words(DesignWords.JAR));
        page.look("A7:A15", CellStyleName.LABEL)
                .look("B7:B15", CellStyleName.INPUT)
                .look("C7:H15", CellStyleName.HINT);
        page.text("A7", words(DesignWords.SCALE)).text("B7", thermometer.letter());
        page.text("C7", words(DesignWords.SCALE_BESIDE));
        page.text("A8", words(DesignWords.WATER)).number("B8", DesignAWrap.VOLUME);
        page.formula(
                "C8",
                "=IF(AND(" + Degrees.IS_FAHRENHEIT + ";ISNUMBER(volume));"
                        + FormulaText.sentence(
                                language,
                                DesignWords.CUPS,
                                Degrees.fluidOunces("volume"),
                                "FIXED(volume/" + CUP + ";1)")
                        + ";" + FormulaText.quoted(language, DesignWords.TEACUP) + ")");
        page.text("A9", words(DesignWords.RADIUS)).number("B9", DesignAWrap.RADIUS);
        page.text("C9", words(DesignWords.RADIUS_BESIDE));
        page.text("A10", words(DesignWords.GLASS)).number("B10", DesignAWrap.GLASS);
        page.text("C10", words(DesignWords.GLASS_BESIDE));
        start();
        place();
        page.formula("A15", Degrees.label(language, DesignWords.MARK)).number("B15", thermometer.mark());
        page.text("C15", words(DesignWords.MARK_BESIDE));
        rule();
    }

    private void start() throws com.sun.star.uno.Exception {
        page.formula("A11", Degrees.label(language, DesignWords.START));
        page.number("B11", thermometer.typed(DesignAWrap.START));
        page.formula(
                "C11",
                "=IF(too_hot;" + FormulaText.quoted(language, DesignWords.TOO_HOT) + ";"
                        + FormulaText.quoted(language, DesignWords.TAP_WATER) + ")");
        page.merge("C11:H11");
        Highlight.when(page, "C11:H11", "too_hot", CellStyleName.HOT);
    }

    private void place() throws com.sun.star.uno.Exception {
        page.formula("A12", Degrees.label(language, DesignWords.SURROUNDINGS));
        page.number("B12", thermometer.typed(DesignAWrap.COLD));
        BitterCold.hint(page, language, "C12", "cold", "scale", words(DesignWords.SURROUNDINGS_BESIDE));
        page.text("A13", words(DesignWords.PLACE)).text("B13", words(DesignBehindWords.STILL_AIR));
        page.text("C13", words(DesignWords.PLACE_BESIDE));
        page.text("A14", words(DesignWords.LESSON)).number("B14", DesignAWrap.LESSON);
        page.formula(
                "C14",
                "=IFERROR("
                        + FormulaText.sentence(language, DesignWords.HALFWAY, "FIXED(halfway;1)&" + Degrees.UNIT)
                        + ";" + FormulaText.quoted(language, DesignWords.SEE_MESSAGE) + ")");
    }

    private void rule() throws com.sun.star.uno.Exception {
        Phrase place = thermometer.scale() == Scale.FAHRENHEIT ? DesignWords.PLACE_HINT_MPH : DesignWords.PLACE_HINT;
        InputRules.on(page)
                .only("B7", "scales", words(SharedWords.SCALE), words(SharedWords.SCALE_HINT))
                .aboveZero("B8", words(DesignWords.WATER_TITLE), words(DesignWords.WATER_HINT))
                .aboveZero("B9", words(DesignWords.RADIUS_TITLE), words(DesignWords.RADIUS_HINT))
                .atLeast("B10", 0, words(DesignWords.GLASS_TITLE), words(DesignWords.GLASS_HINT))
                .hint("B11", words(DesignWords.START_TITLE), words(DesignWords.START_HINT))
                .hint("B12", words(DesignWords.SURROUNDINGS_TITLE), words(DesignWords.SURROUNDINGS_HINT))
                .choice("B13", "places", words(DesignWords.PLACE), words(place))
                .aboveZero("B14", words(DesignWords.LESSON_TITLE), words(DesignWords.LESSON_HINT))
                .aboveZero("B15", words(SharedWords.MARK), words(SharedWords.MARK_HINT));
    }

    private String words(Phrase phrase) {
        return language.words(phrase);
    }
}
