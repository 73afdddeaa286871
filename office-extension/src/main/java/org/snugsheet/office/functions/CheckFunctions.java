package org.snugsheet.office.functions;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.fairness.FairTest;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.slips.Slip;
import org.snugsheet.engine.slips.SlipFinder;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

/** The CHECK functions. */
public final class CheckFunctions extends FamilyService implements Check {

    private static final String ALL_WELL = "OK";

    /** For the office, which makes one for a session. */
    public CheckFunctions() {
        super(Check.class);
    }

    @Override
    public String readings(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        return Answer.inWords(() -> {
            JarCells jar = JarCells.of(times, temps, surroundings, mark, scale);
            jar.fit().constant();
            return slips(times, temps, surroundings, mark, scale).stream()
                    .findFirst()
                    .map(slip -> slip.finding().sentence())
                    .orElse(ALL_WELL);
        });
    }

    @Override
    public String wrap(
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit) {
        return Answer.inWords(() -> {
            WrapFunctions.flatWrap(thicknesses, materials, inside, outside, unit)
                    .resistance()
                    .in(Options.resistanceUnit(unit));
            return ALL_WELL;
        });
    }

    @Override
    public Object[][] all(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        try {
            return TroubleTable.ofJar(slips(times, temps, surroundings, mark, scale));
        } catch (Refusal refusal) {
            return TroubleTable.ofJar(List.of(TroubleTable.refused(refusal)));
        }
    }

    @Override
    public Object[][] sheet(Object[][] block, String[][] surroundings, @Nullable Object mark, @Nullable Object scale) {
        TroubleTable table = TroubleTable.ofSheet();
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
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            Object[][] otherTimes,
            Object[][] otherTemps,
            String[][] otherSurroundings,
            @Nullable Object volume,
            @Nullable Object otherVolume,
            @Nullable Object mark,
            @Nullable Object scale) {
        try {
            return FairTable.of(FairTest.of(
                    JarCells.of(times, temps, surroundings, mark, scale).fit(),
                    JarCells.of(otherTimes, otherTemps, otherSurroundings, mark, scale)
                            .fit(),
                    Options.volumes(volume, otherVolume)));
        } catch (Refusal refusal) {
            return FairTable.refused(refusal);
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
