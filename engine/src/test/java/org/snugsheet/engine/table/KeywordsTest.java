package org.snugsheet.engine.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeywordsTest {

    @ParameterizedTest
    @CsvSource({
        "PLACE, ruhende Luft, still air",
        "PLACE, AIRE QUIETO, still air",
        "PLACE, eau agitee, stirred water",
        "PLACE, viento, wind",
        "FACING, oben, up",
        "LID, sans couvercle, open",
        "LID, DÜNN, bare",
        "FIGURE, típico, typical",
        "FIGURE, typique, typical",
        "SURROUNDINGS, anpassen, fit",
        "ACTIVITY, im Schnee spielen, playing in the snow"
    })
    void aWordOfAnotherLanguageIsUnderstoodWhateverItsCaseAndAccents(Keywords group, String typed, String english) {
        assertEquals(english, group.english(typed));
    }

    @Test
    void whatIsNoSuchWordStaysAsItWasTyped() {
        assertEquals("still air", Keywords.PLACE.english("still air"));
        assertEquals(" Somewhere ", Keywords.PLACE.english(" Somewhere "));
        assertEquals("oben", Keywords.PLACE.english("oben"));
    }

    @Test
    void everyWordHasANameToShowInEveryLanguage() {
        for (DataFile.Row row : DataFile.rows(Keywords.class, "keywords.csv")) {
            for (String language : List.of("es", "fr", "de")) {
                assertFalse(row.list(language).isEmpty(), row.cell("name") + " " + language);
            }
        }
        OtherNames names = OtherNames.read(Keywords.class, "keywords.csv");
        assertEquals("ruhende Luft", names.shown("still air", Locale.GERMANY).orElseThrow());
        assertEquals(Optional.empty(), names.shown("still air", Locale.US));
    }
}
