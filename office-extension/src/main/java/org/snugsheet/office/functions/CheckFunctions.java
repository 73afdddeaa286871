package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.fairness.FairTest;
import org.snugsheet.engine.fairness.UnseenError;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The CHECK functions. */
public final class CheckFunctions extends FamilyService implements Check {

    /** For the office, which makes one for a session. */
    public CheckFunctions() {
        super(Check.class);
    }

    @Override
    public String readings(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        Language language = DocumentLanguage.of(document);
        return Answer.inWords(
                language,
                () -> JarCells.of(times, temps, surroundings, mark, scale).summary().findings().stream()
                        .findFirst()
                        .map(slip -> language.say(slip.finding()))
                        .orElse(ProblemTable.ALL_WELL));
    }

    @Override
    public String wrap(
            XPropertySet document,
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit) {
        return Answer.inWords(DocumentLanguage.of(document), () -> {
            WrapFunctions.flatWrap(thicknesses, materials, inside, outside, unit)
                    .resistance()
                    .in(Options.resistanceUnit(unit));
            return ProblemTable.ALL_WELL;
        });
    }

    @Override
    public Object[][] all(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        Language language = DocumentLanguage.of(document);
        try {
            return ProblemTable.ofJar(
                    JarCells.of(times, temps, surroundings, mark, scale)
                            .summary()
                            .findings(),
                    language);
        } catch (InvalidInputException refusal) {
            return ProblemTable.refusedJar(refusal, language);
        }
    }

    @Override
    public Object[][] sheet(
            XPropertySet document,
            Object[][] block,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        Language language = DocumentLanguage.of(document);
        try {
            Block sheet = Block.of(Cells.rows(block));
            return ProblemTable.ofSheet(JarCells.summaries(sheet, surroundings, mark, scale, language), language);
        } catch (InvalidInputException refusal) {
            return ProblemTable.refusedSheet(refusal, language);
        }
    }

    @Override
    public Object[][] fair(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            Object[][] otherTimes,
            Object[][] otherTemps,
            String[][] otherSurroundings,
            @Nullable Object volume,
            @Nullable Object otherVolume,
            @Nullable Object lid,
            @Nullable Object otherLid,
            @Nullable Object mark,
            @Nullable Object scale) {
        try {
            JarCells firstJar = JarCells.of(times, temps, surroundings, mark, scale);
            CoolingFit first = firstJar.fit();
            CoolingFit second = JarCells.of(otherTimes, otherTemps, otherSurroundings, mark, scale)
                    .fit();
            List<Volume> volumes = Options.volumes(volume, otherVolume);
            List<Lid> lids = Options.lids(lid, otherLid);
            return FairTable.of(
                    FairTest.of(first, second, volumes, lids),
                    FairTest.percentIfOneStoodOpen(first, second, volumes),
                    lids,
                    UnseenError.of(
                            first, second, firstJar.mark(), first.readings().scale()),
                    first.readings().scale(),
                    DocumentLanguage.of(document));
        } catch (InvalidInputException refusal) {
            return FairTable.refused(refusal, DocumentLanguage.of(document));
        }
    }

    @Override
    public String version() {
        return Version.INSTALLED;
    }
}
