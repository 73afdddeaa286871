package org.snugsheet.office.sheets;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.words.English;
import org.snugsheet.office.words.Language;

/** Finds English words on pages of another language. */
final class ForeignWords {

    private ForeignWords() {}

    /**
     * Texts that are the English words of a phrase which has words of its own in the language.
     *
     * @param shown what a person sees
     * @param language what it should be written in
     * @param enums the enums whose phrases it is made of, by the beginning of their keys
     * @return those that are English; a sentence with values is known by what stands between them
     */
    static List<String> among(List<String> shown, Language language, Set<String> enums) throws Exception {
        if (language == Language.ENGLISH) {
            return List.of();
        }
        Set<String> english = new HashSet<>();
        Set<String> theirs = new HashSet<>();
        English.phrases().forEach((key, words) -> {
            if (enums.contains(key.substring(0, key.indexOf('.')))) {
                String translated = language.words(new Known(key, words));
                theirs.add(translated);
                if (!translated.equals(words)) {
                    english.add(words);
                }
            }
        });
        if (english.size() < enums.size()) {
            throw new IllegalStateException("There are no phrases of " + enums);
        }
        english.removeAll(theirs);
        List<Predicate<String>> patterns = patterns(english);
        List<Predicate<String>> theirPatterns = patterns(theirs);
        return shown.stream()
                .filter(text -> english.contains(text) || (isOneOf(text, patterns) && !isOneOf(text, theirPatterns)))
                .toList();
    }

    private static List<Predicate<String>> patterns(Set<String> phrases) {
        return phrases.stream()
                .filter(words ->
                        words.contains("{") && words.replaceAll("\\{[^}]*}", "").length() > 5)
                .map(words -> Pattern.compile("(?s)" + quoted(words)).asMatchPredicate())
                .toList();
    }

    private static boolean isOneOf(String text, List<Predicate<String>> patterns) {
        return patterns.stream().anyMatch(pattern -> pattern.test(text));
    }

    private static String quoted(String words) {
        return ("\\Q" + words + "\\E").replaceAll("\\{[^}]*}", "\\\\E.+\\\\Q");
    }

    /** A phrase whose enum is not seen from here. */
    private record Known(String key, String english) implements Phrase {

        @Override
        public String name() {
            return key;
        }

        @Override
        public Class<?> getDeclaringClass() {
            return Known.class;
        }
    }
}
