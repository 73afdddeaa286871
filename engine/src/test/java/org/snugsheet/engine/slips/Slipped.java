package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;

/** Puts a slip into the readings of an invented jar; empty if it would not be visible there. */
final class Slipped {

    private final InventedJar jar;
    private final SplittableRandom random;
    private final int n;
    private final double[] read;

    private Slipped(InventedJar jar, SplittableRandom random) {
        this.jar = jar;
        this.random = random;
        this.n = jar.size();
        this.read = jar.read(jar.truth(), random);
    }

    static Optional<SlipLab.Typed> of(SlipLab.Made made, InventedJar jar, SplittableRandom random) {
        Slipped slipped = new Slipped(jar, random);
        return switch (made) {
            case FAHRENHEIT_OR_CELSIUS_IN_ONE_ROW -> slipped.otherScale();
            case COLUMN_ON_OTHER_SCALE -> slipped.wholeColumn();
            case ALL_ON_OTHER_SCALE -> slipped.everything();
            case SURROUNDINGS_ON_OTHER_SCALE -> slipped.surroundings();
            case DIGITS_SWAPPED -> slipped.digits();
            case COMMA_LOST -> slipped.comma();
            case MINUTES_SKIPPED -> slipped.skipped();
            case MINUTES_REPEATED -> slipped.repeated();
            case CLOCK_TIMES -> slipped.clock();
            case WARMER_THAN_BEFORE -> slipped.warmer();
            case BELOW_SURROUNDINGS -> slipped.below();
            case CONSTANT -> slipped.constant();
            case NOT_SETTLED -> slipped.notSettled();
            case STIRRED_OR_MOVED -> slipped.stirred();
            case STUCK -> slipped.stuck();
        };
    }

    private Optional<SlipLab.Typed> typed(int index, double number) {
        double[] temps = read.clone();
        temps[index] = InventedJar.clean(number);
        double off = celsius(number, jar.scale()) - celsius(read[index], jar.scale());
        double[] without = jar.truth().clone();
        without[index] += off;
        if (jar.missed()[index] || !SlipLab.isVisible(jar, jar.minutes(), without, Math.abs(off))) {
            return Optional.empty();
        }
        return Optional.of(SlipLab.typed(jar, jar.minutes(), temps, jar.surroundings(), jar.scale(), index + 1));
    }

    private static double celsius(double number, Scale scale) {
        return scale == Scale.FAHRENHEIT ? (number - 32) / 1.8 : number;
    }

    private double toOther(double number) {
        double other = jar.scale() == Scale.FAHRENHEIT ? (number - 32) / 1.8 : number * 1.8 + 32;
        return InventedJar.clean(jar.mark() * Math.rint(other / jar.mark()));
    }

    private Scale other() {
        return jar.scale() == Scale.FAHRENHEIT ? Scale.CELSIUS : Scale.FAHRENHEIT;
    }

    private Optional<SlipLab.Typed> otherScale() {
        int i = random.nextInt(n);
        return typed(i, toOther(read[i]));
    }

    /** The readings of another thermometer, the surroundings typed on the scale of the sheet. Visible by how hot or icy that is. */
    private Optional<SlipLab.Typed> wholeColumn() {
        double[] temps = new double[n];
        for (int i = 0; i < n; i++) {
            temps[i] = toOther(read[i]);
        }
        return Optional.of(SlipLab.typed(jar, jar.minutes(), temps, jar.surroundings(), jar.scale(), 0));
    }

    /** Nobody named the scale. Visible where the jar began warm enough: as °C it is hotter than 95, as °F it ends in ice. */
    private Optional<SlipLab.Typed> everything() {
        return Optional.of(SlipLab.typed(jar, jar.minutes(), read, jar.surroundings(), other(), 0))
                .filter(typed -> jar.scale() == Scale.FAHRENHEIT ? read[0] > 95 : read[n - 1] < 28);
    }

    private Optional<SlipLab.Typed> surroundings() {
        if (jar.law() == InventedJar.Law.WARMING_BATH) {
            return Optional.empty();
        }
        double around = InventedJar.clean(new Temperature(jar.around()[0]).in(other()));
        List<Entry> cell = List.of(Entry.of(around));
        double[] mistaken = new double[n];
        java.util.Arrays.fill(mistaken, celsius(around, jar.scale()));
        InventedJar seen = new InventedJar(
                jar.law(), jar.minutes(), jar.truth(), mistaken, jar.noise(), jar.mark(), jar.scale(), jar.missed());
        return SlipLab.isOffItsSurroundings(seen, jar.minutes(), jar.truth())
                ? Optional.of(SlipLab.typed(jar, jar.minutes(), read, cell, jar.scale(), 0))
                : Optional.empty();
    }

    private Optional<SlipLab.Typed> digits() {
        int i = random.nextInt(n);
        List<Double> ways = new ArrayList<>(DigitSlips.swapped(read[i]));
        return ways.isEmpty() ? Optional.empty() : typed(i, ways.get(random.nextInt(ways.size())));
    }

    private Optional<SlipLab.Typed> comma() {
        int i = random.nextInt(n);
        return typed(i, Math.rint(read[i] * 10));
    }

    /** From one row on the times run one or two steps late: 0, 5, 10, 20, 25 for readings at 0, 5, 10, 15, 20. */
    private Optional<SlipLab.Typed> skipped() {
        int i = random.nextInt(2, n - 1);
        double step = (jar.minutes()[1] - jar.minutes()[0]) * (random.nextDouble() < 0.2 ? 2 : 1);
        double[] minutes = jar.minutes().clone();
        for (int j = i; j < n; j++) {
            minutes[j] += step;
        }
        return shifted(minutes, i, step);
    }

    private Optional<SlipLab.Typed> repeated() {
        int i = random.nextInt(1, n);
        double[] minutes = jar.minutes().clone();
        double back = minutes[i] - minutes[i - 1];
        if (jar.missed()[i] || jar.missed()[i - 1]) {
            return Optional.empty();
        }
        int last = random.nextBoolean() ? n : i + 1;
        for (int j = i; j < last; j++) {
            minutes[j] -= back;
        }
        return Optional.of(SlipLab.typed(jar, minutes, read, jar.surroundings(), jar.scale(), i + 1));
    }

    private Optional<SlipLab.Typed> shifted(double[] minutes, int i, double step) {
        double most = 0;
        for (int j = i; j < n; j++) {
            double slope = (jar.truth()[j - 1] - jar.truth()[j]) / (jar.minutes()[j] - jar.minutes()[j - 1]);
            most = Math.max(most, Math.abs(slope * step));
        }
        if (jar.missed()[i] || !hasThreeOnEitherSide(i) || !SlipLab.isVisible(jar, minutes, jar.truth(), most)) {
            return Optional.empty();
        }
        return Optional.of(SlipLab.typed(jar, minutes, read, jar.surroundings(), jar.scale(), i + 1));
    }

    private Optional<SlipLab.Typed> clock() {
        int way = random.nextInt(4);
        double begin = random.nextInt(8 * 60, 13 * 60);
        double[] minutes = new double[n];
        boolean crosses = false;
        double step = jar.minutes()[1] - jar.minutes()[0];
        for (int i = 0; i < n; i++) {
            double at = begin + jar.minutes()[i] - jar.minutes()[0];
            double clock = 100 * Math.floor(at / 60) + at % 60;
            crosses |= i > 0
                    && Math.floor(at / 60) > Math.floor((begin + jar.minutes()[i - 1] - jar.minutes()[0]) / 60)
                    && jar.minutes()[i] - jar.minutes()[i - 1] == step;
            minutes[i] = way == 0 ? clock : way == 1 ? InventedJar.clean(clock / 100) : at / 1440;
        }
        if (way == 0 && (!crosses || step > 20)) {
            return Optional.empty();
        }
        SlipLab.Typed typed = SlipLab.typed(jar, minutes, read, jar.surroundings(), jar.scale(), 0);
        if (way < 3) {
            return Optional.of(typed);
        }
        List<Entry> text = new ArrayList<>();
        for (double day : minutes) {
            long minute = Math.round(day * 1440);
            text.add(Entry.of(minute / 60 + ":" + (minute % 60 < 10 ? "0" : "") + minute % 60));
        }
        return Optional.of(new SlipLab.Typed(jar, text, typed.temps(), typed.around(), typed.scale(), typed.mark(), 0));
    }

    /** Misread upwards: warmer than the reading before by more than a mark. */
    private Optional<SlipLab.Typed> warmer() {
        int i = random.nextInt(1, n);
        double up = jar.mark() * random.nextInt(2, 9);
        return typed(i, read[i - 1] + up);
    }

    private Optional<SlipLab.Typed> below() {
        int i = random.nextInt(1, n);
        double around = new Temperature(jar.around()[i]).in(jar.scale());
        return typed(i, jar.mark() * Math.rint(around / jar.mark() - random.nextInt(2, 10)));
    }

    /** A thermometer that lies in the room. Visible where a jar of 120 minutes would have moved by four standard deviations. */
    private Optional<SlipLab.Typed> constant() {
        double level = random.nextDouble() < 0.5 ? random.nextDouble(15, 24) : jar.truth()[0];
        double[] celsius = new double[n];
        java.util.Arrays.fill(celsius, level);
        double span = jar.minutes()[n - 1] - jar.minutes()[0];
        double moved = Math.abs(level - jar.around()[0]) * (1 - Math.pow(2, -span / 120));
        if (moved < 4 * jar.deviation() + jar.grain().graduation().kelvins()) {
            return Optional.empty();
        }
        double[] temps = jar.read(celsius, random);
        return Optional.of(SlipLab.typed(jar, jar.minutes(), temps, jar.surroundings(), jar.scale(), 0));
    }

    private Optional<SlipLab.Typed> notSettled() {
        double left = random.nextDouble(0.03, 0.5);
        double cold = random.nextDouble() < 0.5 ? 20 : jar.around()[0];
        double seen = jar.truth()[0] + left * (cold - jar.truth()[0]);
        double number = new Temperature(seen).in(jar.scale());
        return typed(0, jar.mark() * Math.rint(number / jar.mark()));
    }

    /** At least three readings on either side: fewer cannot be told from as many misread ones. */
    private boolean hasThreeOnEitherSide(int i) {
        int before = 0;
        int after = 0;
        for (int j = 0; j < n; j++) {
            before += j < i && !jar.missed()[j] ? 1 : 0;
            after += j >= i && !jar.missed()[j] ? 1 : 0;
        }
        return before >= 3 && after >= 3;
    }

    /** From one row on the last number again and again, or a room of 15 °C to 24 °C with its noise. */
    private Optional<SlipLab.Typed> stuck() {
        int i = random.nextInt(3, n - 2);
        boolean outOfTheWater = random.nextBoolean();
        double level = outOfTheWater ? random.nextDouble(15, 24) : jar.truth()[i - 1];
        double[] celsius = jar.truth().clone();
        double most = 0;
        for (int j = i; j < n; j++) {
            most = Math.max(most, Math.abs(level - celsius[j]));
            celsius[j] = level;
        }
        if (jar.missed()[i]
                || jar.missed()[i - 1]
                || !hasThreeOnEitherSide(i)
                || !SlipLab.isVisible(jar, jar.minutes(), celsius, most)) {
            return Optional.empty();
        }
        double[] temps = jar.read(celsius, random);
        for (int j = i; j < n && !outOfTheWater; j++) {
            temps[j] = temps[i - 1];
        }
        return Optional.of(SlipLab.typed(jar, jar.minutes(), temps, jar.surroundings(), jar.scale(), i + 1));
    }

    /** From one row on all lie higher or lower by a share of the difference to the surroundings, and cool on from there. */
    private Optional<SlipLab.Typed> stirred() {
        int i = random.nextInt(2, n - 1);
        double share = random.nextDouble(0.04, 0.3) * (random.nextBoolean() ? 1 : -1);
        double[] celsius = jar.truth().clone();
        for (int j = i; j < n; j++) {
            celsius[j] += share * (celsius[j] - jar.around()[j]);
        }
        double most = Math.abs(celsius[i] - jar.truth()[i]);
        if (jar.missed()[i] || !hasThreeOnEitherSide(i) || !SlipLab.isVisible(jar, jar.minutes(), celsius, most)) {
            return Optional.empty();
        }
        double[] temps = jar.read(celsius, random);
        return Optional.of(SlipLab.typed(jar, jar.minutes(), temps, jar.surroundings(), jar.scale(), i + 1));
    }
}
