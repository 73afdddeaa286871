package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.fairness.FairTest;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipFinder;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** The CHECK functions. */
public final class CheckFunctions extends FamilyService implements Check {

    private static final String ALL_WELL = "OK";

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
        return Answer.inWords(language, () -> {
            JarCells jar = JarCells.of(times, temps, surroundings, mark, scale);
            jar.fit().constant();
            return slips(times, temps, surroundings, mark, scale).stream()
                    .findFirst()
                    .map(slip -> language.say(slip.finding()))
                    .orElse(ALL_WELL);
        });
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
            return ALL_WELL;
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
        try {
            return TroubleTable.ofJar(slips(times, temps, surroundings, mark, scale), DocumentLanguage.of(document));
        } catch (Refusal refusal) {
            return TroubleTable.ofJar(List.of(TroubleTable.refused(refusal)), DocumentLanguage.of(document));
        }
    }

    @Override
    public Object[][] sheet(
            XPropertySet document,
            Object[][] block,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        TroubleTable table = TroubleTable.ofSheet(DocumentLanguage.of(document));
        try {
            Scale common = Options.scale(scale);
            List<Entry> around = Cells.line(surroundings).stream()
                    .map(e -> e.onScale(common))
                    .toList();
            Block sheet = Block.of(Cells.rows(block));
            for (Block.Jar jar : sheet.jars()) {
                Scale own = jar.scale().orElse(common);
                table.add(
                        jar.name(),
                        SlipFinder.find(sheet.times(), jar.temperatures(), around, Options.mark(mark, own), own));
            }
        } catch (Refusal refusal) {
            table.add("", List.of(TroubleTable.refused(refusal)));
        }
        return table.cells();
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
            CoolingFit first =
                    JarCells.of(times, temps, surroundings, mark, scale).fit();
            CoolingFit second = JarCells.of(otherTimes, otherTemps, otherSurroundings, mark, scale)
                    .fit();
            List<Volume> volumes = Options.volumes(volume, otherVolume);
            List<Lid> lids = Options.lids(lid, otherLid);
            return FairTable.of(
                    FairTest.of(first, second, volumes, lids),
                    FairTest.percentIfOneStoodOpen(first, second, volumes),
                    lids,
                    DocumentLanguage.of(document));
        } catch (Refusal refusal) {
            return FairTable.refused(refusal, DocumentLanguage.of(document));
        }
    }

    private static List<Slip> slips(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        Scale s = Options.scale(scale);
        return SlipFinder.find(
                Cells.line(times), Cells.line(temps), Cells.line(surroundings), Options.mark(mark, s), s);
    }

    @Override
    public String version() {
        return Version.INSTALLED;
    }
}
