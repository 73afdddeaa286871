package org.snugsheet.engine.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds what a loosely typed name means.
 *
 * <p>Case, accents, blanks, hyphens, the order of words and the English plural do not matter. Names in any language can share
 * one index: another language means more names, not other code.
 *
 * @param <T> what the names mean
 */
public final class Names<T> {

    /** The share of letters that may be wrong for a name to be suggested (found by trial, no source). */
    private static final double SLIPS_PER_LETTER = 1.0 / 3;

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern LONGER_BY_A_SYLLABLE = Pattern.compile(".+(ss|sh|ch|x)es");

    private final Map<String, T> inOrder;
    private final Map<String, Set<T>> inAnyOrder;
    private final List<Written> asWritten;

    /** A known name, and the words by which it is found; they are asked for again with each name that nobody knows. */
    private record Written(String name, List<String> words, String inOrder) {

        static Written of(String name) {
            List<String> words = Names.words(name);
            return new Written(name, words, Names.inOrder(words));
        }
    }

    private Names(Map<String, T> inOrder, Map<String, Set<T>> inAnyOrder, List<Written> asWritten) {
        this.inOrder = inOrder;
        this.inAnyOrder = inAnyOrder;
        this.asWritten = asWritten;
    }

    /**
     * An index over names.
     *
     * @param <T> what the names mean
     * @param namesOf the names of each thing, in the order in which they are to be suggested
     * @return the index
     * @throws IllegalArgumentException if one name has two meanings
     */
    public static <T> Names<T> of(Map<T, List<String>> namesOf) {
        Map<String, T> inOrder = new HashMap<>();
        Map<String, Set<T>> inAnyOrder = new HashMap<>();
        Map<String, Written> asWritten = new LinkedHashMap<>();
        namesOf.forEach((thing, names) -> {
            for (String name : names) {
                Written written = asWritten.computeIfAbsent(name, Written::of);
                T other = inOrder.putIfAbsent(written.inOrder(), thing);
                if (other != null && !other.equals(thing)) {
                    throw new IllegalArgumentException("“" + name + "” stands for two things");
                }
                inAnyOrder
                        .computeIfAbsent(sorted(written.words()), key -> new HashSet<>())
                        .add(thing);
            }
        });
        return new Names<>(inOrder, inAnyOrder, List.copyOf(asWritten.values()));
    }

    /**
     * The meaning of a name.
     *
     * @param words the name as {@link #words(String)} gives it
     * @return its meaning; empty if there is no such name
     */
    public Optional<T> find(List<String> words) {
        T found = inOrder.get(inOrder(words));
        if (found != null) {
            return Optional.of(found);
        }
        // A shirt dress is not a dress shirt: where the order of words makes the difference, it must be typed in order.
        Set<T> shuffled = inAnyOrder.getOrDefault(sorted(words), Set.of());
        return shuffled.size() == 1 ? shuffled.stream().findFirst() : Optional.empty();
    }

    /**
     * The name that was most likely meant. One word that is part of a name leads there, so that “sock” is not taken for a
     * slip of “rock”; otherwise the nearest by letters; otherwise a name with a word in common.
     *
     * @param words what was typed, as {@link #words(String)} gives it
     * @return a known name; empty if none is near
     */
    public Optional<String> suggest(List<String> words) {
        Optional<String> sharing = sharingWord(words);
        Optional<String> nearest = nearest(inOrder(words));
        return words.size() == 1 ? sharing.or(() -> nearest) : nearest.or(() -> sharing);
    }

    private Optional<String> nearest(String typed) {
        Optional<String> best = Optional.empty();
        int least = (int) (typed.length() * SLIPS_PER_LETTER) + 1;
        for (Written written : asWritten) {
            String key = written.inOrder();
            // The difference in length is a lower bound, so names that differ more than the best so far are skipped.
            if (Math.abs(key.length() - typed.length()) < least) {
                int distance = EditDistance.between(typed, key);
                if (distance < least) {
                    least = distance;
                    best = Optional.of(written.name());
                }
            }
        }
        return best;
    }

    private Optional<String> sharingWord(List<String> words) {
        return asWritten.stream()
                .filter(written -> written.words().stream().anyMatch(words::contains))
                .map(Written::name)
                .min(Comparator.comparingInt(String::length));
    }

    /**
     * The words of a name without case, accents, punctuation and plural.
     *
     * @param text the name as typed
     * @return its words in order
     */
    public static List<String> words(String text) {
        String letters = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        String plain = BETWEEN_WORDS.matcher(letters).replaceAll(" ").strip();
        List<String> words = new ArrayList<>();
        for (String word : plain.split(" ", -1)) {
            words.add(singular(word));
        }
        return words;
    }

    private static String singular(String word) {
        if (LONGER_BY_A_SYLLABLE.matcher(word).matches()) {
            return word.substring(0, word.length() - 2);
        }
        if (word.length() > 3 && word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1)
                : word;
    }

    private static String inOrder(List<String> words) {
        return String.join("", words);
    }

    private static String sorted(List<String> words) {
        return String.join("", words.stream().sorted().toList());
    }
}
