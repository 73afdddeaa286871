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

    private final Map<String, T> inOrder;
    private final Map<String, Set<T>> inAnyOrder;
    private final Map<String, T> asWritten;

    private Names(Map<String, T> inOrder, Map<String, Set<T>> inAnyOrder, Map<String, T> asWritten) {
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
        Map<String, T> asWritten = new LinkedHashMap<>();
        namesOf.forEach((thing, names) -> {
            for (String name : names) {
                asWritten.putIfAbsent(name, thing);
                T other = inOrder.putIfAbsent(inOrder(words(name)), thing);
                if (other != null && !other.equals(thing)) {
                    throw new IllegalArgumentException("“" + name + "” stands for two things");
                }
                inAnyOrder
                        .computeIfAbsent(sorted(words(name)), key -> new HashSet<>())
                        .add(thing);
            }
        });
        return new Names<>(inOrder, inAnyOrder, asWritten);
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
        for (String name : asWritten.keySet()) {
            String key = inOrder(words(name));
            // The difference in length is a lower bound, so names that differ more than the best so far are skipped.
            if (Math.abs(key.length() - typed.length()) < least) {
                int distance = EditDistance.between(typed, key);
                if (distance < least) {
                    least = distance;
                    best = Optional.of(name);
                }
            }
        }
        return best;
    }

    private Optional<String> sharingWord(List<String> words) {
        return asWritten.keySet().stream()
                .filter(name -> words(name).stream().anyMatch(words::contains))
                .min(Comparator.comparingInt(String::length));
    }

    /**
     * The words of a name without case, accents, punctuation and plural.
     *
     * @param text the name as typed
     * @return its words in order
     */
    public static List<String> words(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
        List<String> words = new ArrayList<>();
        for (String word : plain.split(" ", -1)) {
            words.add(singular(word));
        }
        return words;
    }

    private static String singular(String word) {
        if (word.matches(".+(ss|sh|ch|x)es")) {
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
