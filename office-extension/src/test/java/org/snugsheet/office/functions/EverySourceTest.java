package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import java.lang.reflect.Proxy;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.shared.FigureWords;

/**
 * Every figure that a user can see leads to a source: those of the tables to the column beside them, those of a function to its own
 * citation or, by “see”, to the function whose table carries it. That each table holds what its sources say is held by the engine’s
 * MaterialTableTest, GarmentsTest and ActivityTest.
 */
class EverySourceTest {

    /** A standard, a year, a table, or an address. */
    private static final Pattern CITED = Pattern.compile("[12][0-9]{3}|Table|ISO |https?://|Handbook|textbooks|Guide");

    private static final Set<String> SEEN = Set.of("retrieved", "from memory");

    @Test
    void everyRowOfATableNamesItsSource() throws Exception {
        Map<String, Object[][]> tables = Map.of(
                "WRAP.MATERIALS", new WrapFunctions().materials(english()),
                "COLD.COVERINGS", new ColdFunctions().coverings(english()),
                "COLD.GARMENTS", new ColdFunctions().garments(english()));
        for (Map.Entry<String, Object[][]> table : tables.entrySet()) {
            List<Object> head = Arrays.asList(table.getValue()[0]);
            int source = head.indexOf(FigureWords.SOURCE.english());
            int figures = head.indexOf(FigureWords.FIGURES.english());
            assertTrue(source > 0 && figures > 0, table.getKey());
            for (Object[] row : Arrays.asList(table.getValue()).subList(1, table.getValue().length)) {
                String cited = String.valueOf(row[source]);
                assertTrue(CITED.matcher(cited).find(), table.getKey() + " " + row[0] + ": " + cited);
                assertTrue(SEEN.contains(String.valueOf(row[figures])), table.getKey() + " " + row[0]);
            }
        }
    }

    @Test
    void whatIsSeenExistsAndCarriesASource() {
        for (FunctionDeclaration function : Families.functions()) {
            for (String part : function.function().source().split("; ", -1)) {
                if (part.startsWith("see ")) {
                    for (String name : part.substring("see ".length()).split(", ", -1)) {
                        FunctionDeclaration seen = Families.functions().stream()
                                .filter(one -> one.name().equals(name))
                                .findFirst()
                                .orElseThrow(() -> new AssertionError(function.name() + " sees " + name));
                        boolean carries = !seen.function().source().isEmpty() || (name.endsWith("S") && seen.isTable());
                        assertTrue(carries, name);
                    }
                }
            }
        }
    }

    /** What a function looks up in a table or a standard. */
    @Test
    void whatHasNoFormulaOfItsOwnHasASource() {
        for (FunctionDeclaration function : Families.functions()) {
            boolean told = !function.function().source().isEmpty()
                    || List.of("COLD.GARMENTS", "COLD.COVERINGS", "WRAP.MATERIALS", "CHECK.VERSION", "COOL.MINUTES")
                            .contains(function.name());
            assertTrue(told || !function.function().formula().isEmpty(), function.name());
        }
    }

    private static XPropertySet english() {
        Locale locale = new Locale("en", "", "");
        return (XPropertySet) Proxy.newProxyInstance(
                EverySourceTest.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, given) -> locale);
    }
}
