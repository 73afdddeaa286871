package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.words.Language;

/** Formulas taken apart and put together again, in the notation of the office’s interfaces. */
class FormulasTest {

    @Test
    void findsCallsAndTheirArguments() {
        List<Formulas.Call> calls = Formulas.calls("IF(A1=\";)\";COOL.RATE(B1:B5;;{1;2});\"a\")&MAX(1;2)");
        assertEquals(2, calls.size());
        assertEquals(
                List.of("A1=\";)\"", "COOL.RATE(B1:B5;;{1;2})", "\"a\""),
                calls.get(0).arguments());
        assertEquals(
                List.of("B1:B5", "", "{1;2}"),
                Formulas.calls("COOL.RATE(B1:B5;;{1;2})").get(0).arguments());
        assertEquals(List.of(), Formulas.calls("PI()").get(0).arguments());
    }

    @Test
    void namesTheSheetOfReferences() {
        assertEquals(
                "$'Jar''s'.B2:$C$3+$'Other'.B2+around+\"B2\"+LOG10(2)+$Plain.B2",
                Formulas.fromElsewhere("B2:$C$3+$'Other'.B2+around+\"B2\"+LOG10(2)+$Plain.B2", "Jar's"));
        assertEquals(Optional.of(new Seen.Cells("Jar's", 1, 1, 2, 2)), Formulas.place("$'Jar''s'.B2:$C$3", ""));
        assertEquals(Optional.empty(), Formulas.place("B2+1", ""));
    }

    @Test
    void knowsWhatDependsOnItsCell() {
        assertTrue(Formulas.dependsOnPlace("INDEX(A1:A9;ROW())"));
        assertTrue(Formulas.dependsOnPlace("INDIRECT(\"A1\")"));
        assertFalse(Formulas.dependsOnPlace("ROW(A1:A9)&\"ROW()\""));
    }

    @Test
    void longTextsAreWrittenInPieces() {
        String longText = "x".repeat(450);
        assertEquals(3, Formulas.text(longText).split("&", -1).length);
        assertEquals("\"say \"\"no\"\"\"", Formulas.text("say \"no\""));
    }

    @Test
    void anAnswerWithoutTranslationStays() {
        Translator translator = translator();
        assertEquals(Optional.empty(), translator.translate("jar", "=COLD.NEEDED(-5;115;7)", false));
        Translator.Living mixed = translator
                .translate("jar", "=TEMP.CHANGE(A1;\"C\";\"F\")+COLD.NEEDED(-5;115;7)", false)
                .orElseThrow();
        assertTrue(mixed.keeps());
        assertTrue(mixed.formula().matches(".*\\)\\+\\$'steps'\\.\\$D\\$[0-9]+"), mixed.formula());
        Translator.Living whole = translator
                .translate("jar", "=TEMP.CHANGE(A1;\"C\";\"F\")", false)
                .orElseThrow();
        assertFalse(whole.keeps());
        assertFalse(whole.formula().contains("TEMP."), whole.formula());
    }

    @Test
    void aNameInATextIsNoCall() {
        assertEquals(Optional.empty(), translator().translate("jar", "=\"TEMP.CHANGE(1;2;3)\"&A1", false));
    }

    private static Translator translator() {
        Seen one = new Seen() {
            @Override
            public Optional<Cells> named(String name) {
                return Optional.empty();
            }

            @Override
            public Object[][] answer(String formula) {
                return new Object[][] {{0.5}};
            }
        };
        return new Translator(new StepsPage("steps", 0), one, 0, Language.ENGLISH);
    }
}
