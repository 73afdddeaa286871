package org.snugsheet.engine.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** Whole lessons, drawn: a jar is read to its mark at the times of a plan, and the readings are fitted. */
final class Lessons {

    private Lessons() {}

    static CoolingFit fit(ReadingPlan plan, CoolingConstant truth, Random random) {
        return fit(plan, truth, 0, random);
    }

    /** In surroundings that are warmer by some kelvins than what was read once for all jars. */
    static CoolingFit fit(ReadingPlan plan, CoolingConstant truth, double warmer, Random random) {
        Temperature around = new Temperature(plan.jar().surroundingsAfter(0).celsius() + warmer);
        // Nobody meets the planned start to the tenth of a degree: else all jars would round alike.
        double start = plan.jar().start().celsius() - plan.mark().graduation().kelvins() * random.nextDouble();
        NewtonCooling jar = new NewtonCooling(new Temperature(start), around, truth);
        double mark = plan.mark().graduation().kelvins();
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (double time : plan.times()) {
            double seen = jar.after(time).celsius() + plan.scatter() * random.nextGaussian();
            minutes.add(Entry.of(time / 60));
            temperatures.add(Entry.of(mark * Math.rint(seen / mark)));
        }
        return CoolingFit.of(
                Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS),
                Surroundings.constant(plan.jar().surroundingsAfter(0)),
                plan.mark());
    }
}
