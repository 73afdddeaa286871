package org.snugsheet.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.words.Language;

/** The key that the README names for the menu is the one that opens it, in every language. */
class ReadmeMenuTest {

    @Test
    void theReadmeNamesTheKeyOfTheMenu() throws IOException {
        String key = "Alt+" + letter(Language.ENGLISH).toUpperCase(Locale.ROOT);
        String readme = Files.readString(Path.of("..", "README.md"));
        assertTrue(readme.contains("reached by " + key + " and the underlined letter"), key);
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void theKeyIsTheSameInAllLanguages(Language language) {
        assertEquals(letter(Language.ENGLISH), letter(language));
    }

    private static String letter(Language language) {
        String title = language.words(MenuWords.TITLE);
        int at = title.indexOf('~') + 1;
        return title.substring(at, at + 1);
    }
}
