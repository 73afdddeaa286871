package org.snugsheet.office.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.office.drawing.DrawingWords;

/** No words are missing in any language, none are left over, and values go where they belong. */
class WordsTest {

    private static final Pattern PLACE = Pattern.compile("\\{[^}]*\\}");

    static List<Language> translated() {
        return Language.translated();
    }

    /** A language, a key, its English words and those in that language. */
    static Stream<Arguments> pairs() throws Exception {
        Map<String, String> english = new TreeMap<>(English.phrases());
        english.putAll(English.functions());
        Stream.Builder<Arguments> pairs = Stream.builder();
        for (Language language : Language.translated()) {
            Map<String, String> theirs = new TreeMap<>(file("phrases", language));
            theirs.putAll(file("functions", language));
            english.forEach((key, words) -> {
                if (theirs.containsKey(key)) {
                    pairs.add(Arguments.of(language, key, words, theirs.get(key)));
                }
            });
        }
        return pairs.build();
    }

    /** What a window offers for surroundings that nobody read is in two places: the engine must know the word. */
    @ParameterizedTest
    @MethodSource("translated")
    void the_word_for_fitted_surroundings_is_understood(Language language) {
        assertTrue(Surroundings.isToBeFitted(new Entry.Text(language.words(DrawingWords.FIT))));
    }

    @ParameterizedTest
    @MethodSource("translated")
    void every_phrase_has_its_words_and_no_words_are_left_over(Language language) throws Exception {
        assertSame(English.phrases().keySet(), file("phrases", language).keySet(), "phrases_" + language.code());
    }

    @ParameterizedTest
    @MethodSource("translated")
    void every_declared_text_has_its_words_and_no_words_are_left_over(Language language) throws Exception {
        Set<String> theirs = new TreeSet<>(file("functions", language).keySet());
        theirs.removeAll(English.answers().keySet());
        assertSame(English.functions().keySet(), theirs, "functions_" + language.code());
    }

    /** Says only what differs: there are hundreds of keys. */
    private static void assertSame(Set<String> needed, Set<String> there, String file) {
        Set<String> missing = new TreeSet<>(needed);
        missing.removeAll(there);
        Set<String> leftOver = new TreeSet<>(there);
        leftOver.removeAll(needed);
        assertEquals(
                "missing [], left over []", "missing " + missing + ", left over " + leftOver, file + ".properties");
    }

    @Test
    void the_same_values_go_into_every_sentence_in_the_same_way_of_writing() throws Exception {
        List<String> wrong = new ArrayList<>();
        pairs().forEach(pair -> {
            Object[] of = pair.get();
            if (!places((String) of[2]).equals(places((String) of[3]))) {
                wrong.add(of[0] + " " + of[1] + ": " + of[3]);
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void no_sentence_holds_what_a_pattern_would_swallow() throws Exception {
        List<String> wrong = new ArrayList<>();
        pairs().forEach(pair -> {
            Object[] of = pair.get();
            String words = (String) of[3];
            if (words.contains("'") || words.isBlank() || !words.equals(words.strip())) {
                wrong.add(of[0] + " " + of[1] + ": " + words);
            }
        });
        assertEquals(List.of(), wrong);
    }

    /** What to do is the last part of a sentence of the engine, after a full stop; tables show both parts. */
    @Test
    void a_trouble_has_advice_of_its_own_wherever_it_has_in_english() throws Exception {
        List<String> wrong = new ArrayList<>();
        pairs().forEach(pair -> {
            Object[] of = pair.get();
            boolean inEnglish = ((String) of[2]).contains(". ");
            boolean theirs = ((String) of[3]).contains(". ");
            if (((String) of[1]).startsWith("Problem.") && inEnglish != theirs) {
                wrong.add(of[0] + " " + of[1] + ": " + of[3]);
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void a_text_that_ends_with_a_full_stop_ends_so_everywhere() throws Exception {
        List<String> wrong = new ArrayList<>();
        pairs().forEach(pair -> {
            Object[] of = pair.get();
            if (((String) of[2]).endsWith(".") != ((String) of[3]).endsWith(".")) {
                wrong.add(of[0] + " " + of[1] + ": " + of[3]);
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void every_pattern_can_be_used() throws Exception {
        for (Language language : Language.translated()) {
            for (String words : file("phrases", language).values()) {
                assertFalse(new MessageFormat(words, language.locale())
                        .format(new Object[] {1, 2, 3, 4, 5})
                        .isEmpty());
            }
        }
    }

    @Test
    void a_language_that_is_none_of_ours_is_spoken_to_in_english() {
        assertEquals(Language.ENGLISH, Language.of("pt-BR"));
        assertEquals(Language.ENGLISH, Language.of(""));
        assertEquals(Language.GERMAN, Language.of("de-AT"));
        assertEquals(Language.FRENCH, Language.of("fr-CA"));
        assertEquals(Language.SPANISH, Language.of("es-419"));
    }

    @Test
    void keys_are_written_once_in_a_file() throws Exception {
        for (Language language : Language.translated()) {
            for (String name : List.of("phrases", "functions")) {
                Set<String> seen = new HashSet<>();
                for (String line : lines(name, language)) {
                    if (!line.startsWith("#") && line.contains("=")) {
                        String key = line.substring(0, line.indexOf('=')).strip();
                        assertTrue(seen.add(key), language + " " + key);
                    }
                }
            }
        }
    }

    private static List<String> places(String pattern) {
        List<String> places = new ArrayList<>();
        Matcher matcher = PLACE.matcher(pattern);
        while (matcher.find()) {
            places.add(matcher.group());
        }
        return places.stream().sorted().toList();
    }

    private static Map<String, String> file(String name, Language language) throws IOException {
        Properties file = new Properties();
        try (Reader reader = new InputStreamReader(open(name, language), StandardCharsets.UTF_8)) {
            file.load(reader);
        }
        Map<String, String> words = new TreeMap<>();
        file.stringPropertyNames().forEach(key -> words.put(key, file.getProperty(key)));
        return words;
    }

    private static List<String> lines(String name, Language language) throws IOException {
        try (InputStream in = open(name, language)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private static InputStream open(String name, Language language) throws IOException {
        String file = name + "_" + language.code() + ".properties";
        InputStream found = Language.class.getResourceAsStream(file);
        if (found == null) {
            throw new IOException("There is no " + file);
        }
        return found;
    }
}
