package org.snugsheet.engine.table;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The fixed words that people type as arguments, such as {@code still air}, in all languages: read from {@code keywords.csv}
 * beside this class. English is understood everywhere, so that a sheet can be shared.
 */
public enum Keywords {
    /** Surroundings that are to be fitted. */
    SURROUNDINGS,
    /** Places for a jar; of a wind only its first word. */
    PLACE,
    /** What is on top of a jar. */
    LID,
    /** Which way a surface looks. */
    FACING,
    /** Which of several published figures. */
    FIGURE,
    /** What somebody does outdoors. */
    ACTIVITY;

    private static final String FILE = "keywords.csv";

    /** Read once, on first use; the class loader takes care of concurrent threads. */
    private static final class Loaded {
        static final Map<Keywords, Names<String>> NAMES = read();

        private static Map<Keywords, Names<String>> read() {
            List<DataFile.Row> rows = DataFile.rows(Keywords.class, FILE);
            Map<Keywords, Names<String>> names = new EnumMap<>(Keywords.class);
            for (Keywords group : values()) {
                String called = group.name().toLowerCase(Locale.ROOT);
                names.put(
                        group,
                        Names.of(OtherNames.of(rows.stream()
                                        .filter(row -> row.cell("group").equals(called))
                                        .toList())
                                .all()));
            }
            return Collections.unmodifiableMap(names);
        }
    }

    /**
     * The English word for one that was typed, to be compared with the words that are known.
     *
     * @param typed a word in any of the languages
     * @return as {@link #english}, in lower case and without blanks around it
     */
    public String plain(String typed) {
        return english(typed).strip().toLowerCase(Locale.ROOT);
    }

    /**
     * The English word for one that was typed.
     *
     * @param typed a word in any of the languages; case and accents do not matter
     * @return the English word; what was typed if it is not one of these words
     */
    public String english(String typed) {
        Names<String> names = Loaded.NAMES.get(this);
        return names == null ? typed : names.find(Names.words(typed)).orElse(typed);
    }

    /**
     * What may be typed for an English word in the other languages.
     *
     * @param english one of the words
     * @return the others, as the table spells them; none if it is not one of the words
     */
    public List<String> others(String english) {
        String called = name().toLowerCase(Locale.ROOT);
        List<DataFile.Row> rows = DataFile.rows(Keywords.class, FILE).stream()
                .filter(row -> row.cell("group").equals(called))
                .toList();
        return OtherNames.of(rows).all().getOrDefault(english, List.of());
    }
}
