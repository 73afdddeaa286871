package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/** A call of COOL.RANK. */
final class RankCall {

    private static final int COLUMNS = 8;
    private static final int JARS = 16;

    private final Desk desk;
    private final JarCalls calls;
    private final StepsPage page;
    private final Language language;

    RankCall(Desk desk, JarCalls calls) {
        this.desk = desk;
        this.calls = calls;
        this.page = desk.page();
        this.language = desk.language();
    }

    /** The steps of one jar. */
    record JarSteps(Block fit, Block errors, Block compared, Block far) {}

    Optional<Table> of(CallSteps.Given call) {
        Optional<Seen.Cells> block = desk.place(call.at(1));
        Optional<List<String>> names = desk.cells(call.at(2), 0);
        if (block.isEmpty()
                || names.isEmpty()
                || block.get().columns() != names.get().size()
                || block.get().columns() < 2
                || block.get().columns() > JARS) {
            return Optional.empty();
        }
        Object[][] now = desk.answer(call);
        List<GroupSteps.Jar> jars = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        for (int i = 0; i < names.get().size(); i++) {
            Seen.Cells shown = block.get().column(i);
            Optional<Masked> mask = desk.masked(shown);
            String readings = mask.map(Masked::source).orElse(shown).whole();
            Optional<JarSteps> steps =
                    calls.compared(call.at(0), readings, call.at(3), call.at(4), call.at(5), call.beforeAt(3));
            if (steps.isEmpty()) {
                return Optional.empty();
            }
            String tooFew = Formulas.text(language.words(LivingWords.TOO_FEW));
            String error = Formulas.text(language.words(LivingWords.ERROR_CELL));
            String own = steps.get().errors().at("trouble");
            String trouble = mask.map(one -> one.where(own, tooFew, error)).orElse(own);
            String all = steps.get().fit().at("typed");
            String typed = mask.map(one -> one.where(all, "0", "1")).orElse(all);
            String heldBack = heldBack(call, readings, steps.get().far().at("far"));
            jars.add(new GroupSteps.Jar(
                    names.get().get(i),
                    typed,
                    trouble,
                    steps.get().fit(),
                    steps.get().errors(),
                    steps.get().compared(),
                    heldBack));
            reasons.add("IF(" + typed + "=0;"
                    + Formulas.text(language.words(LivingWords.WAITING)) + ";IF(" + trouble + "=\"\";"
                    + Formulas.text(language.words(LivingWords.HELD_BACK)) + ";" + trouble + "))");
        }
        String title = desk.title(LivingWords.RANK_TITLE, Desk.shown(call.at(1)));
        Block groups = GroupSteps.write(page, title, jars, call.at(6), language);
        Block order = RankSteps.write(page, title, groups, language);
        Block table = RankSteps.table(
                page, title, order, groups, heads(now), reasons, language.words(LivingWords.HARDLY_COOLS), language);
        return Optional.of(table.table("outtop", COLUMNS));
    }

    /** What was found in a jar on the day of the copy holds as long as its readings are the same. */
    private String heldBack(CallSteps.Given call, String readings, String far) {
        List<String> before = List.of(call.beforeAt(0), readings, call.beforeAt(3), call.beforeAt(4), call.beforeAt(5));
        Object[][] found = desk.answer("CHECK.ALL(" + String.join(";", before) + ")");
        List<String> living = List.of(call.at(0), readings, call.at(3), call.at(4), call.at(5));
        boolean isHeld = false;
        for (int row = 1; row < found.length; row++) {
            isHeld |= Findings.isSlip(found[row], language);
        }
        // What was checked then and is the same needs no other check.
        return "IF(" + calls.stays(new CallSteps.Given("CHECK.ALL", living, before), found) + "=1;"
                + (isHeld ? "1" : "0") + ";" + far + ")";
    }

    private List<String> heads(Object[][] now) {
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < COLUMNS; i++) {
            heads.add(now[0].length > i && now[0][i] instanceof String head ? head : "");
        }
        return heads;
    }
}
