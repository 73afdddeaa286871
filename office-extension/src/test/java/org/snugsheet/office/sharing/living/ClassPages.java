package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.snugsheet.office.words.Language;

/**
 * What a living copy has of an invented class: the page with its readings and the page of steps, and where on that page the answers are.
 *
 * @param name which class it is, for whoever reads of a difference
 * @param invented the class
 * @param spread what jars of one wrap differ by, given to the ranking and the verdict
 * @param typed the page with the readings
 * @param steps the page of steps
 * @param jars for each jar the cells with its answers, by the function; the first one of the table of COOL.CURVE
 * @param ranked the first cell of the table of COOL.RANK
 * @param verdict the cell with the verdict on the first two jars
 */
record ClassPages(
        String name,
        InventedClass invented,
        double spread,
        StepsPage typed,
        StepsPage steps,
        List<Map<String, String>> jars,
        String ranked,
        String verdict) {

    static final String CURVE = "COOL.CURVE";

    private static final List<String> OF_A_JAR = List.of(
            "COOL.RATE", "COOL.RATE.ERROR", "COOL.HALFTIME", "COOL.HALFTIME.ERROR", "COOL.START", "COOL.MISFIT");

    /** Classes as they are drawn one after the other; before the first one, which nobody draws, that in which a jar stands still. */
    static List<ClassPages> of(Random random, long seed, int from, int to) {
        List<ClassPages> classes = new ArrayList<>();
        if (from == 0) {
            classes.add(of(InventedClass.withJarThatStandsStill(), 0, "Still", "a jar stands still"));
        }
        for (int i = from; i < to; i++) {
            InventedClass invented = InventedClass.of(random);
            classes.add(
                    of(invented, random.nextBoolean() ? 0 : 0.1, String.valueOf(i), "class " + i + " of seed " + seed));
        }
        return classes;
    }

    private static ClassPages of(InventedClass invented, double spread, String which, String name) {
        int n = invented.minutes().size();
        StepsPage typed = typed(invented, spread, which);
        String around = "$'" + typed.name() + "'.A" + (n + 2);
        StepsPage steps = new StepsPage("steps" + which, 2);
        // As in a real copy a title comes first; Gnumeric’s text begins with the first row that has anything.
        steps.set(0, 0, name);
        Translator translator =
                new Translator(steps, new KnownCells(Map.of(around, invented.around())), 0, Language.ENGLISH);
        Translated translated = new Translated(translator, typed.name(), steps.name());
        String minutes = "A2:A" + (n + 1);
        String rest = ";A" + (n + 2) + ";B" + (n + 2) + ";C" + (n + 2);
        String withSpread = rest + ";D" + (n + 2) + ")";
        List<Map<String, String>> jars = new ArrayList<>();
        for (int jar = 0; jar < invented.jars().size(); jar++) {
            String readings = minutes + ";" + readings(jar, n) + rest + ")";
            Map<String, String> own = new LinkedHashMap<>();
            OF_A_JAR.forEach(function -> own.put(function, translated.cell(function + "(" + readings)));
            own.put(
                    CURVE,
                    translated.cell(
                            "INDEX(COOL.CURVE(K2:K" + (n + 1) + ";" + readings + ";ROW($A$1:$A$9);COLUMN($A$1:$C$1))"));
            jars.add(own);
        }
        String last = column(invented.jars().size() - 1);
        String ranked = translated.cell("INDEX(COOL.RANK(" + minutes + ";B2:" + last + (n + 1) + ";B1:" + last + "1"
                + withSpread + ";ROW($A$1:$A$9);COLUMN($A$1:$H$1))");
        String verdict = translated.cell(
                "COOL.VERDICT(" + minutes + ";" + readings(0, n) + ";" + minutes + ";" + readings(1, n) + withSpread);
        return new ClassPages(name, invented, spread, typed, steps, jars, ranked, verdict);
    }

    /** Names in the first row, then the readings beside their minutes and the minutes that curves are for; below them what else is given. */
    private static StepsPage typed(InventedClass invented, double spread, String which) {
        StepsPage typed = new StepsPage("class" + which, 0);
        int n = invented.minutes().size();
        for (int jar = 0; jar < invented.jars().size(); jar++) {
            typed.set(1 + jar, 0, invented.names().get(jar));
            for (int i = 0; i < n; i++) {
                Object reading = invented.jars().get(jar).get(i);
                if (!reading.equals("")) {
                    typed.set(1 + jar, i + 1, reading);
                }
            }
        }
        for (int i = 0; i < n; i++) {
            typed.set(0, i + 1, invented.minutes().get(i));
            typed.set(10, i + 1, invented.minutes().get(i) + 1);
        }
        Object[] given = {invented.around(), invented.mark(), invented.scale(), spread};
        for (int i = 0; i < given.length; i++) {
            typed.set(i, n + 1, given[i]);
        }
        return typed;
    }

    private static String column(int jar) {
        return String.valueOf((char) ('B' + jar));
    }

    private static String readings(int jar, int n) {
        return column(jar) + "2:" + column(jar) + (n + 1);
    }

    /** A cell of a table, by its first cell. */
    String cell(String table, int column, int row) {
        Seen.Cells cells = Formulas.place(table, steps.name()).orElseThrow();
        return StepsPage.address(cells.left() + column, cells.top() + row);
    }

    /** Formulas as a living copy has them: each is nothing but the name of a cell of the steps. */
    private record Translated(Translator translator, String typed, String steps) {

        String cell(String formula) {
            return translator
                    .translate(typed, "=" + formula, true)
                    .orElseThrow(() -> new AssertionError(formula))
                    .formula()
                    .replaceAll("^=\\$'" + steps + "'\\.", "");
        }
    }

    /** A document of which only some cells are known; its tables have heads and nothing else. */
    private record KnownCells(Map<String, Object> cells) implements Seen {

        @Override
        public Optional<Cells> named(String name) {
            return Optional.empty();
        }

        @Override
        public Object[][] answer(String formula) {
            Object known = cells.get(formula);
            return known != null ? new Object[][] {{known}} : new Object[][] {{"a", "b", "c", "d", "e", "f", "g", "h"}};
        }
    }
}
