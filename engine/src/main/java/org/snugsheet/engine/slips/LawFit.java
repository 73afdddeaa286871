package org.snugsheet.engine.slips;

/**
 * A law fitted by least squares to the trusted readings of a sample: the rate by a search in one dimension, all else exactly,
 * as {@code SeparableFit} does, but with rates kept above zero and with an amplitude for each part of the column.
 */
final class LawFit {

    private static final double SLOWEST = 0.004;
    private static final double FASTEST = 40;
    private static final int TRIALS = 22;
    private static final int SECTIONS = 16;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** How far the surroundings may be off, in kelvins: two thermometers and a draught (common practice, no source). */
    private static final double SURROUNDINGS_OFF = 1.5;

    /** A first stage that is over before the second reading would explain any first reading. */
    private static final double TOO_FAST = 2.5;

    /** A wrap takes up a part of the heat at first, not most of it: this much beside the rest (common practice, no source). */
    private static final double MOST_IN_FIRST_STAGE = 0.5;

    private final Sample sample;
    private final Law law;
    private final boolean[] trusted;
    private final double[] offset;
    private final double[] first;
    private final double[] second;
    private final int unknowns;

    private double rate;
    private double[] solution = {};
    private double sumOfSquares = Double.POSITIVE_INFINITY;

    private LawFit(Sample sample, Law law, boolean[] trusted) {
        this.sample = sample;
        this.law = law;
        this.trusted = trusted;
        int n = sample.size();
        offset = new double[n];
        first = new double[n];
        second = new double[n];
        unknowns = sample.parts + law.shapes() - 1;
    }

    /** The best fit whatever the rate. */
    static LawFit of(Sample sample, Law law, boolean[] trusted) {
        LawFit fit = new LawFit(sample, law, trusted);
        double ratio = Math.pow(FASTEST / SLOWEST, 1.0 / (TRIALS - 1));
        double best = SLOWEST;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TRIALS; i++) {
            double trial = SLOWEST * Math.pow(ratio, i);
            double squares = fit.squaresAt(trial / sample.span);
            if (squares < least) {
                least = squares;
                best = trial;
            }
        }
        return fit.closedIn(best / sample.span, ratio);
    }

    /** The best fit near a rate. */
    static LawFit near(Sample sample, Law law, boolean[] trusted, double rate) {
        return new LawFit(sample, law, trusted).closedIn(rate, 1.8);
    }

    private LawFit closedIn(double around, double factor) {
        double low = Math.log(Math.max(around / factor, SLOWEST / 2 / sample.span));
        double high = Math.log(Math.min(around * factor, FASTEST * 2 / sample.span));
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = squaresAt(Math.exp(left));
        double atRight = squaresAt(Math.exp(right));
        for (int i = 0; i < SECTIONS; i++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = squaresAt(Math.exp(left));
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = squaresAt(Math.exp(right));
            }
        }
        squaresAt(Math.exp(atLeft <= atRight ? left : right));
        return this;
    }

    /** The sum of squares at a rate; the fit then stands there. */
    private double squaresAt(double at) {
        rate = at;
        sumOfSquares = Double.POSITIVE_INFINITY;
        if (law.hasTwoStages() && law.faster() * at * sample.minutes[1] > TOO_FAST) {
            return sumOfSquares;
        }
        law.evaluate(sample, at, offset, first, second);
        double[][] normal = new double[unknowns][unknowns];
        double[] right = new double[unknowns];
        for (int i = 0; i < sample.size(); i++) {
            if (trusted[i]) {
                add(normal, right, i);
            }
        }
        double ridge = ridge();
        if (law == Law.LEVEL) {
            normal[unknowns - 1][unknowns - 1] += ridge;
        }
        double[][] inverse = Linear.inverse(normal);
        if (inverse.length == 0) {
            return sumOfSquares;
        }
        solution = Linear.times(inverse, right);
        if (law.hasTwoStages() && !isShareOfFirstStage(solution[unknowns - 1] / solution[0])) {
            return sumOfSquares;
        }
        double squares = law == Law.LEVEL ? ridge * solution[unknowns - 1] * solution[unknowns - 1] : 0;
        for (int i = 0; i < sample.size(); i++) {
            if (trusted[i]) {
                double residual = residual(i);
                squares += residual * residual;
            }
        }
        sumOfSquares = squares;
        return squares;
    }

    private static boolean isShareOfFirstStage(double toSecond) {
        return toSecond >= 0 && toSecond <= MOST_IN_FIRST_STAGE;
    }

    private void add(double[][] normal, double[] right, int i) {
        int part = sample.part[i];
        double y = sample.celsius[i] - offset[i];
        normal[part][part] += first[i] * first[i];
        right[part] += first[i] * y;
        if (law.shapes() > 1) {
            int last = unknowns - 1;
            normal[part][last] += first[i] * second[i];
            normal[last][part] += first[i] * second[i];
            normal[last][last] += second[i] * second[i];
            right[last] += second[i] * y;
        }
    }

    /** A level is pulled towards nothing as if it had been measured as nothing, give or take what it may be off. */
    private double ridge() {
        return sample.known ? sample.expected() / (SURROUNDINGS_OFF * SURROUNDINGS_OFF) : 0;
    }

    Law law() {
        return law;
    }

    double rate() {
        return rate;
    }

    double sumOfSquares() {
        return sumOfSquares;
    }

    /** The free numbers: an amplitude for each part, the law’s second shape, the rate. */
    int parameters() {
        return unknowns + 1;
    }

    /** The fitted temperature at a reading in °C. */
    double fitted(int i) {
        double fitted = offset[i] + solution[sample.part[i]] * first[i];
        return law.shapes() > 1 ? fitted + solution[unknowns - 1] * second[i] : fitted;
    }

    double residual(int i) {
        return sample.celsius[i] - fitted(i);
    }

    /** How far the jar was from its surroundings at the first reading, with its sign. */
    double difference() {
        return fitted(0) - offset[0];
    }

    /** How much of each reading’s variance the curve itself has: {@code xᵢᵀ(XᵀX)⁻¹xᵢ}, also for readings not trusted. */
    double[] leverages() {
        int n = sample.size();
        int p = unknowns + 1;
        double h = 1e-4;
        double[] base = new double[n];
        double[][] x = new double[n][p];
        for (int i = 0; i < n; i++) {
            base[i] = fitted(i);
            x[i][sample.part[i]] = first[i];
            if (law.shapes() > 1) {
                x[i][unknowns - 1] = second[i];
            }
        }
        law.evaluate(sample, rate * (1 + h), offset, first, second);
        double[][] normal = new double[p][p];
        for (int i = 0; i < n; i++) {
            x[i][p - 1] = (fitted(i) - base[i]) / h;
            if (trusted[i]) {
                for (int j = 0; j < p; j++) {
                    for (int k = 0; k < p; k++) {
                        normal[j][k] += x[i][j] * x[i][k];
                    }
                }
            }
        }
        law.evaluate(sample, rate, offset, first, second);
        if (law == Law.LEVEL) {
            normal[unknowns - 1][unknowns - 1] += ridge();
        }
        double[][] inverse = Linear.inverse(normal);
        double[] leverages = new double[n];
        for (int i = 0; i < n; i++) {
            // Where nothing can be told of the rate the curve is as free as its unknowns on average.
            leverages[i] = inverse.length == 0 ? p / (double) n : quadratic(inverse, x[i]);
        }
        return leverages;
    }

    private static double quadratic(double[][] matrix, double[] vector) {
        double[] product = Linear.times(matrix, vector);
        double sum = 0;
        for (int i = 0; i < vector.length; i++) {
            sum += vector[i] * product[i];
        }
        return sum;
    }
}
