package org.snugsheet.office.functions.check;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipKind;
import org.snugsheet.engine.summary.JarSummary;
import org.snugsheet.engine.summary.SheetSummary;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.words.Language;

/** The tables that CHECK.ALL and CHECK.SHEET answer with. */
final class ProblemTable {

    private static final double SURE = 0.999;
    private static final double VERY_LIKELY = 0.98;
    private static final double LIKELY = 0.9;

    private final List<Object[]> rows = new ArrayList<>();
    private final boolean namesJars;
    private final Language language;

    private ProblemTable(boolean namesJars, Language language) {
        this.namesJars = namesJars;
        this.language = language;
        row(
                language.words(ProblemWords.JAR),
                language.words(ProblemWords.ROW),
                language.words(ProblemWords.WHAT_IS_WRONG),
                language.words(ProblemWords.HOW_SURE),
                language.words(ProblemWords.WHAT_TO_DO));
    }

    static Object[][] ofJar(List<Slip> slips, Language language) {
        ProblemTable table = new ProblemTable(false, language);
        table.add("", slips);
        return table.cells();
    }

    /** What all jars share is listed once; a jar that waits for its first reading is not a problem. */
    static Object[][] ofSheet(List<JarSummary> jars, Language language) {
        ProblemTable table = new ProblemTable(true, language);
        SheetSummary sheet = SheetSummary.of(jars);
        if (!sheet.common().isEmpty()) {
            table.add(language.words(ProblemWords.ALL_JARS), sheet.common());
        }
        for (JarSummary jar : jars) {
            List<Slip> own = sheet.own(jar);
            if (jar.findings().isEmpty() || !own.isEmpty()) {
                table.add(jar.typed().name().orElse(""), own);
            }
        }
        return table.cells();
    }

    static Object[][] refusedSheet(InvalidInputException refusal, Language language) {
        ProblemTable table = new ProblemTable(true, language);
        table.add("", List.of(refused(refusal)));
        return table.cells();
    }

    static Object[][] refusedJar(InvalidInputException refusal, Language language) {
        return ofJar(List.of(refused(refusal)), language);
    }

    /** What cannot even be looked at, as a slip that is sure. */
    private static Slip refused(InvalidInputException refusal) {
        return new Slip(SlipKind.REFUSED, 1, refusal.finding());
    }

    private void add(String jar, List<Slip> slips) {
        if (slips.isEmpty()) {
            row(jar, "", Answer.OK, "", "");
        }
        for (Slip slip : slips) {
            Object row = slip.row().isPresent() ? (Object) (double) slip.row().getAsInt() : "";
            String sentence = language.say(slip.finding());
            row(jar, row, Finding.whatIsWrong(sentence), language.words(kind(slip)), Finding.whatToDo(sentence));
        }
    }

    private Object[][] cells() {
        return rows.toArray(Object[][]::new);
    }

    private void row(Object jar, Object row, Object wrong, Object sure, Object toDo) {
        rows.add(namesJars ? new Object[] {jar, row, wrong, sure, toDo} : new Object[] {row, wrong, sure, toDo});
    }

    /** A slip says how certain it is; code that looks for hazards finds them by this word. */
    private static ProblemWords kind(Slip slip) {
        if (slip.kind().holdsBack()) {
            return howSure(slip.certainty());
        }
        return slip.kind().canHurt() ? ProblemWords.CAN_HURT : ProblemWords.CAUTION;
    }

    private static ProblemWords howSure(double certainty) {
        if (certainty >= SURE) {
            return ProblemWords.SURE;
        }
        if (certainty >= VERY_LIKELY) {
            return ProblemWords.VERY_LIKELY;
        }
        return certainty >= LIKELY ? ProblemWords.LIKELY : ProblemWords.PERHAPS;
    }
}
