package org.snugsheet.office.dialog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.drawing.DrawingWords;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.menu.MenuWords;
import org.snugsheet.office.menu.SetUpWords;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.words.Language;

/** By the keyboard each line of the menu and each field of a window is reached by a letter of its own, in every language. */
class LettersTest {

    /** The letters of Calc’s own menus: LibreOffice 7.4.7, main.xcd and registry_xx.xcd of its language packages. */
    @ParameterizedTest
    @CsvSource({"ENGLISH, feviosydtwh", "SPANISH, aevifsodhnu", "FRENCH, fdaityusone", "GERMAN, dbaefvtnxsh"})
    void ofTheMenuBar(Language language, String taken) {
        for (char letter : lettersOf(language, List.of(MenuWords.TITLE))) {
            assertFalse(taken.indexOf(letter) >= 0, language + " has two menus at " + letter);
        }
    }

    @ParameterizedTest
    @EnumSource
    void ofTheMenu(Language language) {
        assertApart(
                language,
                Stream.concat(Arrays.stream(MenuItem.values()), Stream.of(MenuWords.SHEETS, SetUpWords.LINE))
                        .toList());
    }

    @ParameterizedTest
    @EnumSource
    void ofTheWindowThatLaysOut(Language language) {
        assertApart(
                language,
                List.of(BookWords.JARS, BookWords.MINUTES, BookWords.INTERVAL, DialogWords.ACCEPT, DialogWords.CANCEL));
    }

    @ParameterizedTest
    @EnumSource
    void ofTheWindowThatDraws(Language language) {
        assertApart(
                language,
                List.of(
                        DrawingWords.SURROUNDINGS,
                        DrawingWords.SCALE,
                        DrawingWords.MARK,
                        DialogWords.ACCEPT,
                        DialogWords.CANCEL));
    }

    private static void assertApart(Language language, List<? extends Phrase> labels) {
        assertEquals(labels.size(), lettersOf(language, labels).size(), labels + " share a letter");
    }

    /** Every keyboard of the four languages has a key for each of them. */
    private static Set<Character> lettersOf(Language language, List<? extends Phrase> labels) {
        Set<Character> letters = new TreeSet<>();
        for (Phrase label : labels) {
            String words = language.words(label);
            assertEquals(1, words.chars().filter(letter -> letter == '~').count(), words);
            char letter = Character.toLowerCase(words.charAt(words.indexOf('~') + 1));
            assertTrue(letter >= 'a' && letter <= 'z', words);
            letters.add(letter);
        }
        return letters;
    }
}
