package org.snugsheet.office.sharing.living;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.table.Keywords;
import org.snugsheet.office.words.Language;

/** The words for water in which ice melts, in all languages, with and without their accents; a text in a formula may not be so long. */
final class IceWords {

    private IceWords() {}

    /** A list of them in capitals, so that formulas can look one up. */
    static Block write(StepsPage page, Language language) {
        Set<String> words = new TreeSet<>();
        for (String english : Surroundings.ICE) {
            add(words, english);
            Keywords.SURROUNDINGS.others(english).forEach(other -> add(words, other));
        }
        List<String> all = List.copyOf(words);
        Block block = new Block(page, language.words(LivingWords.ICE_TITLE), all.size());
        return block.column("word", language.words(LivingWords.EXACT), all::get);
    }

    private static void add(Set<String> words, String word) {
        String capitals = word.toUpperCase(Locale.ROOT).strip();
        words.add(capitals);
        words.add(Normalizer.normalize(capitals, Normalizer.Form.NFD).replaceAll("\\p{M}", ""));
    }
}
