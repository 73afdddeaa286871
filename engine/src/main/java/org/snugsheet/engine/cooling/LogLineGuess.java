package org.snugsheet.engine.cooling;

/**
 * Where the search for a cooling curve begins: the straight line through the logarithms of the differences to the
 * surroundings, {@code ln θ = ln A − k·t}.
 *
 * <p>Each point has the weight θ², because an error of a degree moves the logarithm of a small difference more than that of
 * a large one: {@code d(ln θ) = dθ/θ}. So the line is near the least-squares curve from the start, and exact readings give
 * exact parameters.
 *
 * @param amplitude A, the difference at time zero in kelvins, with the sign of the differences
 * @param rate k, in the inverse of the unit of the times
 */
record LogLineGuess(double amplitude, double rate) {

    /**
     * The guess for readings.
     *
     * @param times the times, not all the same
     * @param differences the temperatures above the surroundings, or below; those on the other side than the largest are
     *     left out, since they have no logarithm
     * @return the guess; with a rate of zero if fewer than two readings are left
     */
    static LogLineGuess of(double[] times, double[] differences) {
        double side = Math.signum(largest(differences));
        double[] logs = new double[times.length];
        double sumW = 0;
        double sumT = 0;
        double sumY = 0;
        for (int i = 0; i < times.length; i++) {
            double weight = weight(differences[i], side);
            if (weight > 0) {
                logs[i] = Math.log(Math.abs(differences[i]));
                sumW += weight;
                sumT += weight * times[i];
                sumY += weight * logs[i];
            }
        }
        double meanT = sumT / sumW;
        double meanY = sumY / sumW;
        double spread = 0;
        double together = 0;
        for (int i = 0; i < times.length; i++) {
            double weight = weight(differences[i], side);
            if (weight > 0) {
                double fromMean = times[i] - meanT;
                spread += weight * fromMean * fromMean;
                together += weight * fromMean * (logs[i] - meanY);
            }
        }
        double rate = spread > 0 ? -together / spread : 0;
        return new LogLineGuess(side * Math.exp(meanY + rate * meanT), rate);
    }

    private static double weight(double difference, double side) {
        return difference * side > 0 ? difference * difference : 0;
    }

    private static double largest(double[] differences) {
        double largest = differences[0];
        for (double difference : differences) {
            if (Math.abs(difference) > Math.abs(largest)) {
                largest = difference;
            }
        }
        return largest;
    }
}
