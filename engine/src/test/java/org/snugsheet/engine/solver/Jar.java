package org.snugsheet.engine.solver;

/** A jar of warm water on a windowsill at 5 °C, and a straight line. The readings are invented. */
final class Jar {

    static final double[] MINUTES = {0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55};
    static final double[] DEGREES = {60, 55.5, 51, 47.5, 44, 41, 38, 35.5, 33.5, 31, 29, 27.5};
    static final double[] GUESS = {50, 0.01};
    static final Curve CURVE = Curve.at(MINUTES, Jar::cooling);

    private Jar() {}

    static double cooling(double t, double[] b, double[] d) {
        d[0] = Math.exp(-b[1] * t);
        d[1] = -b[0] * t * d[0];
        return 5 + b[0] * d[0];
    }

    static double line(double x, double[] b, double[] d) {
        d[0] = 1;
        d[1] = x;
        return b[0] + b[1] * x;
    }
}
