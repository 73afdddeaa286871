package org.snugsheet.engine.slips;

import java.util.Arrays;

/** The numbers of a column in the form that the fit needs: times from the first reading, temperatures, surroundings, parts. */
final class Sample {

    /** The scatter of a hand-held thermometer in addition to its rounding, in kelvins (common practice, no source). */
    private static final double USUAL_SCATTER = 0.2;

    final double[] minutes;
    final double[] celsius;
    final double[] around;
    final int[] part;
    final boolean[] stuck;
    final int parts;
    final boolean known;
    final boolean steady;
    final double span;
    final double mark;

    private Sample(
            double[] minutes,
            double[] celsius,
            double[] around,
            int[] part,
            boolean[] stuck,
            boolean known,
            double mark) {
        this.minutes = minutes;
        this.celsius = celsius;
        this.around = around;
        this.part = part;
        this.stuck = stuck;
        this.known = known;
        this.mark = mark;
        this.parts = part[part.length - 1] + 1;
        this.span = minutes[minutes.length - 1];
        this.steady = Arrays.stream(around).allMatch(a -> a == around[0]);
    }

    /** The numbers of a column with rising times. */
    static Sample of(Column column) {
        int n = column.size();
        double[] minutes = new double[n];
        double[] celsius = new double[n];
        double[] around = new double[n];
        int[] part = new int[n];
        boolean[] stuck = new boolean[n];
        for (int i = 0; i < n; i++) {
            Line line = column.at(i);
            minutes[i] = line.minute() - column.at(0).minute();
            celsius[i] = line.celsius();
            around[i] = line.around();
            part[i] = line.part();
            stuck[i] = line.stuck();
        }
        boolean known = column.knowsSurroundings();
        return new Sample(
                minutes,
                celsius,
                known ? around : new double[n],
                part,
                stuck,
                known,
                column.mark().graduation().kelvins());
    }

    int size() {
        return minutes.length;
    }

    /** Whether every law has the same values at the readings of another sample, whatever temperatures were read. */
    boolean hasSameLaws(Sample other) {
        return Arrays.equals(minutes, other.minutes)
                && Arrays.equals(around, other.around)
                && Arrays.equals(stuck, other.stuck);
    }

    /** The variance that rounding to the mark leaves: a²/12 (JCGM 100:2008, GUM, 4.3.7). */
    double rounding() {
        return mark * mark / 12;
    }

    /** The variance expected of a reading before any reading is seen. */
    double expected() {
        return rounding() + USUAL_SCATTER * USUAL_SCATTER;
    }
}
