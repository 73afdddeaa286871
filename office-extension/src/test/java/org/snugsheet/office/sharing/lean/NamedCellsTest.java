package org.snugsheet.office.sharing.lean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Formulas put together from parts of which it is known which are cells; and the same read with a pattern. */
class NamedCellsTest {

    private static final List<String> CELLS = List.of("A1", "$B$12", "C$3", "$AB7", "XFD1048576", "$ZZZ$9999999");
    private static final List<String> OTHERS = List.of(
            "&quot;A1 and B2&quot;",
            "&quot;say &quot;&quot;A1&quot;&quot;!&quot;",
            "&quot;it&apos;s A1&apos;!&quot;",
            "LOG10(",
            "ATAN2(",
            "IF(",
            "scale",
            "jar_A1",
            "A1.old",
            "A1b",
            "größeA1",
            "Ä1",
            "ABCD1",
            "A12345678",
            "\\A1",
            "a1",
            "$C:$D",
            "$3:$4",
            "2.5E-3",
            "12",
            "");
    private static final List<String> SIGNS = List.of("+", "*", "&amp;", "&lt;", "&gt;=", ",", ")", ":", " ", "^2-");

    /** What a cell is, as one pattern, which is slower. */
    private static final Pattern TOKEN = Pattern.compile(
            "&quot;.*?&quot;|(?<cell>\\$?[A-Z]{1,3}\\$?\\d{1,7}(?![\\p{L}\\p{N}_.(]))|[\\p{L}_\\\\][\\p{L}\\p{N}_.]*|&\\w+;");

    @Test
    void cellsAreFoundAmongWhatLooksLikeThem() {
        Random random = new Random(20261128);
        for (int i = 0; i < 2000; i++) {
            StringBuilder formula = new StringBuilder();
            List<String> cells = new ArrayList<>();
            for (int parts = 1 + random.nextInt(8); parts > 0; parts--) {
                boolean isCell = random.nextInt(3) == 0;
                String part = any(random, isCell ? CELLS : OTHERS);
                if (isCell) {
                    cells.add(part);
                }
                formula.append(part).append(any(random, SIGNS));
            }
            String whole = formula.toString();
            NamedCells named = new NamedCells(whole);
            assertEquals(cells, found(named, whole), whole);
            assertEquals(cells, byPattern(whole), whole);
            assertFalse(named.isFar(), whole);
        }
    }

    @Test
    void aNumberIsNoCell() {
        assertEquals(List.of("A2"), found(new NamedCells("1E5*A2+3.5E12"), "1E5*A2+3.5E12"));
    }

    @Test
    void lettersAndNumbersAreWithoutDollarSigns() {
        assertEquals(
                List.of(new NamedCells.Named(4, 9, "AB", 12), new NamedCells.Named(10, 12, "C", 3)),
                new NamedCells("MAX($AB12,C3)").all());
    }

    @Test
    void anotherSheetIsFar() {
        for (String far : List.of("Jars!A2", "1+&apos;The jar&apos;&apos;s&apos;!A2", "A1!B2", "größe_1.b!A2")) {
            assertTrue(new NamedCells(far).isFar(), far);
        }
    }

    private static String any(Random random, List<String> parts) {
        return parts.get(random.nextInt(parts.size()));
    }

    private static List<String> found(NamedCells named, String formula) {
        return named.all().stream()
                .map(cell -> formula.substring(cell.start(), cell.end()))
                .toList();
    }

    private static List<String> byPattern(String formula) {
        List<String> cells = new ArrayList<>();
        Matcher token = TOKEN.matcher(formula);
        while (token.find()) {
            if (token.group("cell") != null) {
                cells.add(token.group("cell"));
            }
        }
        return cells;
    }
}
