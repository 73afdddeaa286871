package org.snugsheet.office.sheets.lessonbook;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingsPage;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;
import org.snugsheet.office.sheets.shared.ExampleJar;
import org.snugsheet.office.sheets.shared.InventedReadings;
import org.snugsheet.office.words.Language;

/**
 * A class that never was: eight jars on a snowy windowsill, all wraps but the foil equally thick, so that it is the stuff that decides. The readings
 * are invented; one is typed with its digits swapped and one was missed, as in every class.
 */
final class ExampleClass {

    private static final double MILLIMETERS = 8;
    private static final String FOIL = "aluminum foil";
    private static final double FOIL_MILLIMETERS = 0.1;
    private static final List<String> MATERIALS =
            List.of("", FOIL, "wool", "newspaper", "fleece", "leaves", "corrugated cardboard", "small bubble wrap");
    private static final Temperature SURROUNDINGS = new Temperature(1);
    // Warm tap water: common practice, no source.
    private static final Temperature START = new Temperature(40);
    private static final long SEED = 20_261_127;
    private static final int SWAPPED_JAR = 4;
    private static final int FIRST_SWAPPED = 3;
    private static final double MUCH = 20;
    private static final int MISSED_JAR = 6;
    private static final int MISSED = 5;

    private final Scale scale;

    ExampleClass(Scale scale) {
        this.scale = scale;
    }

    /** What the jars are wrapped in, in the language of the book. */
    static List<String> wraps(Language language) {
        return MATERIALS.stream()
                .map(name -> name.isEmpty()
                        ? language.words(BookWords.BARE)
                        : Materials.nameIn(Materials.find(name), language.locale()))
                .toList();
    }

    /** Types what the class would have typed. */
    void type(Page start, Page readings, BookPlan plan) throws com.sun.star.uno.Exception {
        start.number(StartPage.SURROUNDINGS, Math.rint(SURROUNDINGS.in(scale)));
        double mark = scale == Scale.FAHRENHEIT ? 2 : 1;
        List<Integer> minutes = IntStream.range(0, plan.readings())
                .map(reading -> reading * plan.interval())
                .boxed()
                .toList();
        InventedReadings invented = new InventedReadings(SURROUNDINGS, START, 0.1, SEED);
        for (int jar = 0; jar < MATERIALS.size(); jar++) {
            String material = MATERIALS.get(jar);
            double millimeters = material.equals(FOIL) ? FOIL_MILLIMETERS : MILLIMETERS;
            if (!material.isEmpty()) {
                start.number(StartPage.thickness(jar), millimeters);
            }
            String name = material + jar;
            double[] celsius = invented.of(
                    material.isEmpty() ? ExampleJar.bare(name) : ExampleJar.wrapped(name, millimeters, material),
                    minutes);
            double[] read = DoubleStream.of(celsius)
                    .map(each -> mark * Math.rint(new Temperature(each).in(scale) / mark))
                    .toArray();
            if (jar == SWAPPED_JAR) {
                swap(read);
            }
            for (int reading = 0; reading < read.length; reading++) {
                if (jar != MISSED_JAR || reading != MISSED) {
                    readings.number(ReadingsPage.cell(jar, reading), read[reading]);
                }
            }
        }
    }

    /** Swaps the digits of the first reading that has two, looks quite another way round, and still could be one of warm water. */
    private void swap(double[] read) {
        for (int reading = FIRST_SWAPPED; reading < read.length; reading++) {
            double swapped = swapped(read[reading]);
            if (read[reading] < 100 && Math.abs(swapped - read[reading]) > MUCH && swapped > SURROUNDINGS.in(scale)) {
                read[reading] = swapped;
                return;
            }
        }
    }

    private static double swapped(double read) {
        return read % 10 * 10 + Math.floor(read / 10);
    }
}
