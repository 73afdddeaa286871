package org.snugsheet.office.sharing;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.words.Language;

/**
 * Why a formula stays out.
 *
 * @param pattern the sentence
 * @param values the values for {@code {0}}, {@code {1}}, …
 */
record RefusalReason(Phrase pattern, List<String> values) {

    RefusalReason {
        values = List.copyOf(values);
    }

    RefusalReason(Phrase pattern, String... values) {
        this(pattern, List.of(values));
    }

    String in(Language language) {
        return language.say(pattern, values.toArray());
    }
}
