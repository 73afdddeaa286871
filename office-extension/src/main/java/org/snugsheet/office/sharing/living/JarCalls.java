package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;

/** The steps of the jars that calls work with; calls of the same cells share them. */
final class JarCalls {

    private final Desk desk;

    JarCalls(Desk desk) {
        this.desk = desk;
    }

    /** The steps of one jar. */
    record JarBlocks(Block fit, Block wander, Block errors, String key) {}

    Optional<JarBlocks> jar(CallSteps.Given call, int first) {
        return jar(
                call.at(first),
                call.at(first + 1),
                call.at(first + 2),
                call.at(first + 3),
                call.at(first + 4),
                call.beforeAt(first + 2));
    }

    private Optional<JarBlocks> jar(
            String times, String readings, String around, String mark, String scale, String aroundBefore) {
        if (times.isEmpty() || readings.isEmpty() || around.isEmpty() || !desk.isOneTemperature(aroundBefore)) {
            return Optional.empty();
        }
        return jarOf(desk.whole(times), desk.whole(readings), desk.whole(around), desk.whole(mark), desk.whole(scale));
    }

    private Optional<JarBlocks> jarOf(String times, String readings, String around, String mark, String scale) {
        Optional<List<String>> clock = desk.cells(times, 0);
        if (clock.isEmpty() || clock.get().size() < 3) {
            return Optional.empty();
        }
        int lines = clock.get().size();
        Optional<List<String>> read = desk.cells(readings, lines);
        if (read.isEmpty() || read.get().size() != lines) {
            return Optional.empty();
        }
        String shown = Desk.shown(readings);
        Block ice = desk.block("ice", () -> IceWords.write(desk.page(), desk.language()));
        Block minutes = desk.block(
                "times " + times,
                () -> TimeSteps.write(
                        desk.page(),
                        desk.title(LivingWords.TIMES_TITLE, Desk.shown(times)),
                        clock.get(),
                        desk.language()));
        String fitKey = times + "|" + readings + "|" + around + "|" + scale;
        Block fit = desk.block(
                "fit " + fitKey,
                () -> FitSteps.write(
                        desk.page(),
                        desk.title(LivingWords.FIT_TITLE, shown),
                        ice,
                        minutes,
                        new FitSteps.Jar(lines, read.get(), desk.single(around), scale.isEmpty() ? "\"\"" : scale),
                        desk.language()));
        Block powers = desk.block("powers " + lines, () -> WanderSteps.powers(desk.page(), lines, desk.language()));
        Block wander = desk.block(
                "wander " + fitKey,
                () -> WanderSteps.write(
                        desk.page(), desk.title(LivingWords.WANDER_TITLE, shown), fit, powers, desk.language()));
        String key = fitKey + "|" + mark;
        Block errors = desk.block(
                "errors " + key,
                () -> ErrorSteps.write(
                        desk.page(), desk.title(LivingWords.ERRORS_TITLE, shown), fit, wander, mark, desk.language()));
        return Optional.of(new JarBlocks(fit, wander, errors, key));
    }

    Block alike(JarBlocks jar, String readings) {
        return desk.block(
                "alike " + jar.key(),
                () -> RoundingSteps.alike(
                        desk.page(),
                        desk.title(LivingWords.ALIKE_TITLE, Desk.shown(readings)),
                        jar.fit(),
                        jar.errors(),
                        desk.language()));
    }

    Block far(JarBlocks jar, String readings) {
        return desk.block(
                "far " + jar.key(),
                () -> FarSteps.write(
                        desk.page(),
                        desk.title(LivingWords.FAR_TITLE, Desk.shown(readings)),
                        jar.fit(),
                        jar.errors(),
                        desk.language()));
    }

    /** 1 as long as what was found on the day of the copy holds: nothing has changed, or not the reading that was blamed. */
    String stays(CallSteps.Given call, Object[][] found) {
        List<Block> guards = desk.guards(call, 0, 5);
        List<Block> readings = desk.guards(call, 1, 2);
        StringBuilder blamed = new StringBuilder();
        for (int row = 1; row < found.length; row++) {
            int line = Findings.row(found[row]);
            if (Findings.isSlip(found[row], desk.language())
                    && !readings.isEmpty()
                    && line >= 1
                    && line <= readings.get(0).lines()) {
                blamed.append(';').append(readings.get(0).at("same", line - 1)).append("=1");
            }
        }
        return "IF(OR(" + KeptSteps.changed(guards) + "=0" + blamed + ");1;0)";
    }

    Optional<RankCall.JarSteps> compared(
            String times, String readings, String around, String mark, String scale, String aroundBefore) {
        return jar(times, readings, around, mark, scale, aroundBefore).map(jar -> {
            Block alike = alike(jar, readings);
            Block compared = desk.block(
                    "compared " + jar.key(),
                    () -> RoundingSteps.conservative(
                            desk.page(),
                            desk.title(LivingWords.COMPARED_TITLE, Desk.shown(readings)),
                            jar.fit(),
                            jar.errors(),
                            alike,
                            desk.language()));
            return new RankCall.JarSteps(jar.fit(), jar.errors(), compared, far(jar, readings));
        });
    }
}
