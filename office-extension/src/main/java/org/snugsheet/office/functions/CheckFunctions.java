package org.snugsheet.office.functions;

import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.cooling.Slips;
import org.snugsheet.office.cells.Answer;
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
            return Slips.in(jar.readings(), jar.mark()).stream()
                    .findFirst()
                    .map(Finding::sentence)
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
    public String version() {
        return Version.INSTALLED;
    }
}
