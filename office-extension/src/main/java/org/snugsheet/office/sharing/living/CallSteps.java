package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/** The steps for calls of our functions; calls that work with the same cells share their steps. */
final class CallSteps {

    private static final Map<String, String> OF_ONE_JAR = Map.of(
            "COOL.RATE", "rate",
            "COOL.RATE.ERROR", "rateError",
            "COOL.HALFTIME", "half",
            "COOL.HALFTIME.ERROR", "halfError",
            "COOL.START", "start",
            "COOL.START.ERROR", "startError",
            "COOL.SURROUNDINGS", "surroundings",
            "COOL.SURROUNDINGS.ERROR", "surroundingsError",
            "COOL.MISFIT", "misfitShown");

    private static final Set<String> TABLES = Set.of(
            "TEMP.READ",
            "COOL.CURVE",
            "COOL.RANK",
            "COOL.VERDICT",
            "COOL.SLOWER",
            "WRAP.LAYER",
            "WRAP.FLAT",
            "PLAN.SAFE",
            "PLAN.MIX",
            "PLAN.MIX.HOT",
            "PLAN.MIX.COLD",
            "CHECK.READINGS",
            "CHECK.ALL");

    private static final Set<String> KEPT_ALONE = Set.of("COOL.MINUTES", "WRAP.USUAL");

    private final Desk desk;
    private final JarCalls jars;
    private final StepsPage page;
    private final Language language;
    private final Map<String, Table> tables = new HashMap<>();
    private final ReadSteps reads;

    CallSteps(StepsPage page, Seen seen, int reads, Language language) {
        this.page = page;
        this.language = language;
        this.desk = new Desk(page, seen, language);
        this.jars = new JarCalls(desk);
        this.reads = new ReadSteps(page, reads, language);
    }

    /** Whether something of a formula may follow that calls a function. */
    static boolean knows(String name) {
        return OF_ONE_JAR.containsKey(name)
                || TABLES.contains(name)
                || InlineSteps.NAMES.contains(name)
                || leavesTheRest(name);
    }

    /** Whether the rest of a formula follows though the call itself stays: a thickness, or what was understood of clock times. */
    static boolean leavesTheRest(String name) {
        return KEPT_ALONE.contains(name);
    }

    /** What stays as it was; if it is guarded, it is refused as soon as something has changed. */
    record Kept(Table table, boolean isGuarded) {}

    /**
     * A call: its arguments as the page of the steps calls them, and as they stood in the document.
     */
    record Given(String name, List<String> living, List<String> before) {

        Given {
            living = List.copyOf(living);
            before = List.copyOf(before);
        }

        String at(int i) {
            return i < living.size() ? living.get(i) : "";
        }

        String beforeAt(int i) {
            return i < before.size() ? before.get(i) : "";
        }
    }

    /** The table that stands in for a call; empty if there is no translation. */
    Optional<Table> of(Given call) {
        String key = call.name() + "(" + String.join(";", call.living()) + ")";
        if (tables.containsKey(key)) {
            return Optional.of(table(key));
        }
        Optional<Table> made = made(call);
        made.ifPresent(table -> tables.put(key, table));
        return made;
    }

    private Table table(String key) {
        return Optional.ofNullable(tables.get(key)).orElseThrow();
    }

    private Optional<Table> made(Given call) {
        if (OF_ONE_JAR.containsKey(call.name())) {
            return jars.jar(call, 0).map(jar -> jar.errors().table(OF_ONE_JAR.getOrDefault(call.name(), "")));
        }
        return switch (call.name()) {
            case "TEMP.READ" -> read(call);
            case "COOL.CURVE" -> curve(call);
            case "COOL.RANK" -> rank(call);
            case "COOL.VERDICT" -> verdict(call);
            case "COOL.SLOWER" -> slower(call);
            case "PLAN.SAFE" -> SafeSteps.of(desk, call);
            case "PLAN.MIX", "PLAN.MIX.HOT", "PLAN.MIX.COLD" -> MixSteps.of(desk, call);
            case "WRAP.LAYER" -> LayerSteps.of(desk, call, List.of(call.at(2)));
            case "WRAP.FLAT" -> LayerSteps.of(desk, call, List.of(call.at(4), call.at(2), call.at(3)));
            case "CHECK.READINGS" -> checked(call, false);
            case "CHECK.ALL" -> checked(call, true);
            default -> Optional.empty();
        };
    }

    /** An answer as it is now; functions of readings are refused when something has changed. */
    Kept keep(Given call, String text) {
        String key = "kept " + text;
        boolean isGuarded = call.name().startsWith("COOL.");
        if (!tables.containsKey(key)) {
            Object[][] answers = desk.answer(text);
            String title =
                    language.say(LivingWords.KEPT_TITLE, org.snugsheet.office.functions.FunctionIndex.asTyped(text));
            Block kept = KeptSteps.answers(page, title, answers, language);
            int columns = answers[0].length;
            Block shown = isGuarded
                    ? KeptSteps.unlessChanged(
                            page,
                            title,
                            kept,
                            desk.guards(call, 0, call.living().size()),
                            columns,
                            language)
                    : kept;
            tables.put(key, shown.table(isGuarded ? "a0" : "k0", columns));
        }
        return new Kept(table(key), isGuarded);
    }

    private Optional<Table> read(Given call) {
        Optional<List<String>> cells = desk.cells(call.at(0), 1);
        if (call.at(0).isEmpty()
                || cells.isEmpty()
                || !reads.hasRoom(cells.get().size())) {
            return Optional.empty();
        }
        String scale = call.at(1).isEmpty() ? "\"\"" : call.at(1);
        return Optional.of(reads.read(cells.get(), scale));
    }

    private Optional<Table> curve(Given call) {
        Optional<List<String>> wanted = desk.cells(call.at(0), 0);
        Optional<JarCalls.JarBlocks> jar = jars.jar(call, 1);
        if (wanted.isEmpty() || jar.isEmpty()) {
            return Optional.empty();
        }
        Object[][] now = desk.answer(call);
        List<String> heads = heads(now, 3).orElse(List.of("", "", ""));
        Block minutes = desk.block(
                "points " + desk.whole(call.at(0)),
                () -> CurveSteps.minutes(
                        page, desk.title(LivingWords.TIMES_TITLE, Desk.shown(call.at(0))), wanted.get(), language));
        Block points = CurveSteps.write(
                page,
                desk.title(LivingWords.CURVE_TITLE, Desk.shown(call.at(2))),
                minutes,
                jar.get().fit(),
                jar.get().errors(),
                jars.alike(jar.get(), call.at(2)),
                heads,
                language);
        return Optional.of(points.table("curve", 3));
    }

    private static Optional<List<String>> heads(Object[][] now, int columns) {
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            if (now[0].length <= i || !(now[0][i] instanceof String head)) {
                return Optional.empty();
            }
            heads.add(head);
        }
        return Optional.of(heads);
    }

    private Optional<Table> rank(Given call) {
        return new RankCall(desk, jars).of(call);
    }

    private Optional<Table> verdict(Given call) {
        Optional<RankCall.JarSteps> one =
                jars.compared(call.at(0), call.at(1), call.at(4), call.at(5), call.at(6), call.beforeAt(4));
        Optional<RankCall.JarSteps> other =
                jars.compared(call.at(2), call.at(3), call.at(4), call.at(5), call.at(6), call.beforeAt(4));
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        Block verdict = VerdictSteps.write(
                page,
                desk.title(LivingWords.VERDICT_TITLE, Desk.shown(call.at(1))),
                one.get(),
                other.get(),
                call.at(7),
                language);
        return Optional.of(verdict.table("sentence"));
    }

    private Optional<Table> slower(Given call) {
        Given second = new Given(
                call.name(),
                List.of(call.at(2), call.at(3), call.at(4), call.at(5), call.at(6)),
                List.of("", "", call.beforeAt(4)));
        Given first = new Given(
                call.name(),
                List.of(call.at(0), call.at(1), call.at(4), call.at(5), call.at(6)),
                List.of("", "", call.beforeAt(4)));
        Optional<JarCalls.JarBlocks> one = jars.jar(first, 0);
        Optional<JarCalls.JarBlocks> other = jars.jar(second, 0);
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(VerdictSteps.ratio(
                page,
                desk.title(LivingWords.RATIO_TITLE, Desk.shown(call.at(3))),
                one.get().errors(),
                other.get().errors(),
                language));
    }

    private Optional<Table> checked(Given call, boolean asTable) {
        Optional<JarCalls.JarBlocks> jar = jars.jar(call, 0);
        if (jar.isEmpty()) {
            return Optional.empty();
        }
        Object[][] now = desk.answer(call);
        String title = desk.title(LivingWords.CHECK_TITLE, Desk.shown(call.at(1)));
        Block kept = KeptSteps.answers(page, title, now, language);
        Object[][] found = desk.answer("CHECK.ALL(" + String.join(";", call.before()) + ")");
        return Optional.of(CheckSteps.write(
                page,
                title,
                kept,
                now,
                new CheckSteps.Jar(
                        jars.stays(call, found),
                        KeptSteps.changed(desk.guards(call, 0, 5)),
                        jar.get().fit(),
                        jar.get().errors(),
                        jars.far(jar.get(), call.at(1))),
                asTable,
                language));
    }
}
