package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

class BlockTest {

    @ParameterizedTest
    @CsvSource({
        "wool °F, wool, FAHRENHEIT",
        "bare (C), bare, CELSIUS",
        "leaves [wet], leaves [wet],",
        "jar C, jar C,",
        "(°F), '', FAHRENHEIT"
    })
    void aHeaderMayNameItsScale(String header, String name, String scale) {
        Block.Jar jar = Block.of(rows(header)).jars().get(0);
        assertEquals(name, jar.heading().name());
        assertEquals(
                Optional.ofNullable(scale).map(Scale::valueOf), jar.heading().scale());
        assertEquals(1, jar.number());
    }

    /** Groups are often called 1 and 2, and a sheet hands over numbers. */
    @Test
    void aNumberIsANameAsItWasTyped() {
        assertEquals("1", Heading.of(Entry.of(1)).name());
        assertEquals("2.5", Heading.of(Entry.of(2.5)).name());
        assertEquals("1000000", Heading.of(Entry.of(1e6)).name());
    }

    @Test
    void eachColumnOfReadingsNeedsItsHeading() {
        assertEquals(
                Problem.DIFFERENT_NAMES,
                assertThrows(InvalidInputException.class, () -> Block.of(row("0"), row("a", "b"), List.of(row("40"))))
                        .problem());
    }

    @Test
    void unusedColumnsAreLeftOutAndBlankReadingsKept() {
        Block block =
                Block.of(List.of(row("min", "bare", "", "wool"), row("0", "40", "", "40"), row("5", "", "", "37")));
        assertEquals(
                List.of("bare", "wool"),
                block.jars().stream().map(jar -> jar.heading().name()).toList());
        assertEquals(new Entry.Missing(), block.jars().get(0).temperatures().get(1));
        assertEquals(2, block.times().size());
    }

    @Test
    void aBlockWithoutAJarIsRefused() {
        for (List<List<Entry>> rows : List.of(List.of(row("min", "bare")), List.of(row("min"), row("0")))) {
            assertEquals(
                    Problem.NO_BLOCK,
                    assertThrows(InvalidInputException.class, () -> Block.of(rows))
                            .problem());
        }
    }

    private static List<List<Entry>> rows(String header) {
        return List.of(row("min", header), row("0", "40"));
    }

    private static List<Entry> row(String... cells) {
        return Arrays.stream(cells).map(Entry::of).toList();
    }
}
