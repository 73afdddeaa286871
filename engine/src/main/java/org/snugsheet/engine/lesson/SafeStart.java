package org.snugsheet.engine.lesson;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.water.Water;

/**
 * How warm the water may be that children handle.
 *
 * <p>Sources, as far as they could be seen through secondary witnesses (see {@code safety.csv} beside the tests): UK
 * Department for Education, Building Bulletin 87, 2nd edition, 2003: no hotter than 43 °C wherever pupils can reach it; UK
 * Education (School Premises) Regulations 1999: baths and showers no hotter than 43.5 °C; US Consumer Product Safety
 * Commission, document 5098, and table of the Moritz and Henriques (1947) type: how long adult skin stands hot water. Children’s
 * skin is thinner and burns sooner, so these times are upper bounds. School policy and local rules come before all of this.
 */
public final class SafeStart {

    /** The most that schools are advised; Building Bulletin 87. */
    public static final Temperature SCHOOL_LIMIT = new Temperature(43);

    /** Adult skin burns within seconds: 3 s, table of the Moritz and Henriques type; 5 s, Children’s of Alabama. */
    public static final Temperature ADULTS_ONLY = new Temperature(60);

    /** Hot water is stored at 60 °C, and hardly a tap gives more; common practice, no source. */
    public static final Temperature HOTTEST_TAP = new Temperature(70);

    private static final double BOILING = 100;

    /** 109.4 °F are 43 °C, but for the last digit of the conversion. */
    private static final double ROUNDING = 1e-9;

    private SafeStart() {}

    /**
     * Whether liquid water is too hot for pupils.
     *
     * @param water how warm it is
     * @return true above {@link #SCHOOL_LIMIT}; not of what would be steam, which no thermometer in a jar reads
     */
    public static boolean isTooHot(Temperature water) {
        return water.celsius() > SCHOOL_LIMIT.celsius() + ROUNDING && water.celsius() <= BOILING;
    }

    /**
     * Lets a start temperature pass that is within the limit.
     *
     * @param start the temperature the water would begin at
     * @return the same
     * @throws InvalidInputException if it is above {@link #SCHOOL_LIMIT}
     */
    public static Temperature require(Temperature start) {
        if (start.compareTo(SCHOOL_LIMIT) > 0) {
            throw InvalidInputException.of(Problem.START_TOO_HOT, start.celsius(), start.in(Scale.FAHRENHEIT));
        }
        return start;
    }

    /**
     * Whether only an adult may handle water, away from pupils: from {@link #ADULTS_ONLY} on.
     *
     * @param water how warm it is
     * @return true if so
     */
    public static boolean isForAdultsOnly(Temperature water) {
        return water.compareTo(ADULTS_ONLY) >= 0;
    }

    /**
     * Lets the temperature of a tap pass.
     *
     * @param tap how warm its water is
     * @return the same
     * @throws InvalidInputException if no tap is so hot, so that it must be a kettle’s: above {@link #HOTTEST_TAP}
     */
    static Temperature requireTap(Temperature tap) {
        if (tap.compareTo(HOTTEST_TAP) > 0) {
            throw InvalidInputException.of(Problem.KETTLE_WATER, tap.celsius(), tap.in(Scale.FAHRENHEIT));
        }
        return tap;
    }

    /**
     * What to be told about water of a temperature.
     *
     * @param water how warm it is
     * @return the cautions, the most important first
     * @throws InvalidInputException if it would be ice or steam
     */
    public static List<Caution> cautions(Temperature water) {
        // Refuses what is no water.
        Water.density(water);
        List<Caution> cautions = new ArrayList<>();
        cautions.add(Caution.forWater(water));
        cautions.add(Caution.SCHOOL_RULES);
        return List.copyOf(cautions);
    }
}
