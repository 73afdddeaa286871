package org.snugsheet.engine.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NamesTest {

    private static final Names<Integer> NAMES = Names.of(Map.of(
            1, List.of("dress shirt", "blouse"),
            2, List.of("shirt dress"),
            3, List.of("wool sock")));

    @Test
    void theOrderOfWordsDoesNotMatterUnlessItMakesTheDifference() {
        assertEquals(Optional.of(1), NAMES.find(Names.words("Dress-Shirts")));
        assertEquals(Optional.of(2), NAMES.find(Names.words("shirt dress")));
        assertEquals(Optional.of(3), NAMES.find(Names.words("socks, wool")));
        Names<Integer> three = Names.of(Map.of(1, List.of("red dress shirt"), 2, List.of("red shirt dress")));
        assertEquals(Optional.empty(), three.find(Names.words("shirt dress red")));
    }

    @Test
    void aNameForTwoThingsIsAFaultOfTheTable() {
        Map<Integer, List<String>> twice = Map.of(1, List.of("sock"), 2, List.of("Socks"));
        assertThrows(IllegalArgumentException.class, () -> Names.of(twice));
    }
}
