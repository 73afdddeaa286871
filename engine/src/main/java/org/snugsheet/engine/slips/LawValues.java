package org.snugsheet.engine.slips;

/**
 * The values of a {@link Law} at one rate, for every reading of a sample: {@code T = g + A·φ + B·ψ}.
 *
 * @param offset g
 * @param offsetSlope ∂g/∂k
 * @param first φ
 * @param second ψ; zeros if the law has only one shape
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package and is never compared
record LawValues(double[] offset, double[] offsetSlope, double[] first, double[] second) {

    static LawValues zeros(int size) {
        return new LawValues(new double[size], new double[size], new double[size], new double[size]);
    }
}
