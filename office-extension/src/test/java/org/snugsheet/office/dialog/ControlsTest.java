package org.snugsheet.office.dialog;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.drawing.DrawingWords;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.words.Language;

/** Texts of windows are not cut off: a line of letters as wide as those of a real window holds 60 of them. */
class ControlsTest {

    private static final int LETTERS = 60;

    @Test
    void explanationsFitInEveryLanguage() {
        List<Language> languages = new ArrayList<>(Language.translated());
        languages.add(Language.ENGLISH);
        for (Language language : languages) {
            for (Phrase text : List.of(BookWords.HELP, DrawingWords.EXPLAIN_SURROUNDINGS)) {
                String words = language.words(text);
                assertTrue(Controls.lines(words) >= lines(words), language + ": " + words);
            }
        }
    }

    private static int lines(String text) {
        int lines = 1;
        int filled = 0;
        for (String word : text.split(" ")) {
            if (filled > 0 && filled + 1 + word.length() > LETTERS) {
                lines++;
                filled = 0;
            }
            filled += (filled > 0 ? 1 : 0) + word.length();
        }
        return lines;
    }
}
