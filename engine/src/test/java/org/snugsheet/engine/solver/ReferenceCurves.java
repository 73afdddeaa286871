package org.snugsheet.engine.solver;

import static java.lang.Math.PI;
import static java.lang.Math.atan;
import static java.lang.Math.cos;
import static java.lang.Math.exp;
import static java.lang.Math.expm1;
import static java.lang.Math.log;
import static java.lang.Math.log1p;
import static java.lang.Math.pow;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;

/** The models of the NIST reference sets with their slopes, worked out by hand from the formula in each file. */
final class ReferenceCurves {

    private ReferenceCurves() {}

    static NonlinearFit.Formula of(ReferenceSet set) {
        double[][] x = set.predictors();
        if (set.name().equals("Nelson")) {
            return (i, b, d) -> nelson(x[0][i], x[1][i], b, d);
        }
        AtPlace formula = formula(set.name());
        return (i, b, d) -> formula.at(x[0][i], b, d);
    }

    /** A model at one predictor. */
    private interface AtPlace {
        double at(double x, double[] b, double[] d);
    }

    private static AtPlace formula(String name) {
        return switch (name) {
            case "Misra1a", "BoxBOD" -> ReferenceCurves::saturation;
            case "Misra1b" -> ReferenceCurves::misra1b;
            case "Misra1c" -> ReferenceCurves::misra1c;
            case "Misra1d" -> ReferenceCurves::misra1d;
            case "Chwirut1", "Chwirut2" -> ReferenceCurves::chwirut;
            case "DanWood" -> ReferenceCurves::power;
            case "Rat42" -> ReferenceCurves::logistic;
            case "Rat43" -> ReferenceCurves::richards;
            case "Eckerle4" -> ReferenceCurves::peak;
            case "Bennett5" -> ReferenceCurves::bennett;
            case "MGH09" -> ReferenceCurves::mgh09;
            case "MGH10" -> ReferenceCurves::mgh10;
            case "MGH17" -> ReferenceCurves::mgh17;
            case "Roszman1" -> ReferenceCurves::roszman;
            case "Kirby2" -> (x, b, d) -> rational(x, b, d, 2);
            case "Hahn1", "Thurber" -> (x, b, d) -> rational(x, b, d, 3);
            case "Lanczos1", "Lanczos2", "Lanczos3" -> ReferenceCurves::lanczos;
            case "Gauss1", "Gauss2", "Gauss3" -> ReferenceCurves::twoPeaks;
            case "ENSO" -> ReferenceCurves::enso;
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static double saturation(double x, double[] b, double[] d) {
        double rise = -expm1(-b[1] * x);
        d[0] = rise;
        d[1] = b[0] * x * exp(-b[1] * x);
        return b[0] * rise;
    }

    private static double misra1b(double x, double[] b, double[] d) {
        double base = 1 + b[1] * x / 2;
        d[0] = 1 - pow(base, -2);
        d[1] = b[0] * x * pow(base, -3);
        return b[0] * d[0];
    }

    private static double misra1c(double x, double[] b, double[] d) {
        double base = 1 + 2 * b[1] * x;
        d[0] = 1 - 1 / sqrt(base);
        d[1] = b[0] * x * pow(base, -1.5);
        return b[0] * d[0];
    }

    private static double misra1d(double x, double[] b, double[] d) {
        double base = 1 + b[1] * x;
        d[0] = b[1] * x / base;
        d[1] = b[0] * x / (base * base);
        return b[0] * d[0];
    }

    private static double chwirut(double x, double[] b, double[] d) {
        double base = b[1] + b[2] * x;
        double value = exp(-b[0] * x) / base;
        d[0] = -x * value;
        d[1] = -value / base;
        d[2] = -x * value / base;
        return value;
    }

    private static double power(double x, double[] b, double[] d) {
        d[0] = pow(x, b[1]);
        double value = b[0] * d[0];
        d[1] = value * log(x);
        return value;
    }

    private static double logistic(double x, double[] b, double[] d) {
        double e = exp(b[1] - b[2] * x);
        d[0] = 1 / (1 + e);
        double slope = b[0] * e / ((1 + e) * (1 + e));
        d[1] = -slope;
        d[2] = slope * x;
        return b[0] * d[0];
    }

    private static double richards(double x, double[] b, double[] d) {
        double e = exp(b[1] - b[2] * x);
        double share = pow(1 + e, -1 / b[3]);
        double value = b[0] * share;
        d[0] = share;
        d[1] = -value / b[3] * e / (1 + e);
        d[2] = -d[1] * x;
        d[3] = value * log1p(e) / (b[3] * b[3]);
        return value;
    }

    private static double peak(double x, double[] b, double[] d) {
        double z = (x - b[2]) / b[1];
        double bell = exp(-z * z / 2);
        double value = b[0] / b[1] * bell;
        d[0] = bell / b[1];
        d[1] = value / b[1] * (z * z - 1);
        d[2] = value * z / b[1];
        return value;
    }

    private static double bennett(double x, double[] b, double[] d) {
        double base = b[1] + x;
        d[0] = pow(base, -1 / b[2]);
        double value = b[0] * d[0];
        d[1] = -value / (b[2] * base);
        d[2] = value * log(base) / (b[2] * b[2]);
        return value;
    }

    private static double mgh09(double x, double[] b, double[] d) {
        double top = x * x + x * b[1];
        double bottom = x * x + x * b[2] + b[3];
        d[0] = top / bottom;
        double value = b[0] * d[0];
        d[1] = b[0] * x / bottom;
        d[2] = -value * x / bottom;
        d[3] = -value / bottom;
        return value;
    }

    private static double mgh10(double x, double[] b, double[] d) {
        double base = x + b[2];
        d[0] = exp(b[1] / base);
        double value = b[0] * d[0];
        d[1] = value / base;
        d[2] = -value * b[1] / (base * base);
        return value;
    }

    private static double mgh17(double x, double[] b, double[] d) {
        d[0] = 1;
        d[1] = exp(-x * b[3]);
        d[2] = exp(-x * b[4]);
        d[3] = -x * b[1] * d[1];
        d[4] = -x * b[2] * d[2];
        return b[0] + b[1] * d[1] + b[2] * d[2];
    }

    private static double roszman(double x, double[] b, double[] d) {
        double base = x - b[3];
        double bottom = PI * (base * base + b[2] * b[2]);
        d[0] = 1;
        d[1] = -x;
        d[2] = -base / bottom;
        d[3] = -b[2] / bottom;
        return b[0] - b[1] * x - atan(b[2] / base) / PI;
    }

    /** A quotient of two polynomials of one degree; that below begins with 1. */
    private static double rational(double x, double[] b, double[] d, int degree) {
        double top = b[0];
        double bottom = 1;
        double xk = 1;
        for (int k = 1; k <= degree; k++) {
            xk *= x;
            top += b[k] * xk;
            bottom += b[degree + k] * xk;
        }
        double value = top / bottom;
        xk = 1;
        d[0] = 1 / bottom;
        for (int k = 1; k <= degree; k++) {
            xk *= x;
            d[k] = xk / bottom;
            d[degree + k] = -value * xk / bottom;
        }
        return value;
    }

    private static double lanczos(double x, double[] b, double[] d) {
        double value = 0;
        for (int k = 0; k < 6; k += 2) {
            d[k] = exp(-b[k + 1] * x);
            d[k + 1] = -x * b[k] * d[k];
            value += b[k] * d[k];
        }
        return value;
    }

    private static double twoPeaks(double x, double[] b, double[] d) {
        d[0] = exp(-b[1] * x);
        d[1] = -x * b[0] * d[0];
        double value = b[0] * d[0];
        for (int k = 2; k < 8; k += 3) {
            double z = (x - b[k + 1]) / b[k + 2];
            d[k] = exp(-z * z);
            d[k + 1] = 2 * b[k] * d[k] * z / b[k + 2];
            d[k + 2] = d[k + 1] * z;
            value += b[k] * d[k];
        }
        return value;
    }

    private static double enso(double x, double[] b, double[] d) {
        double year = 2 * PI * x / 12;
        d[0] = 1;
        d[1] = cos(year);
        d[2] = sin(year);
        double value = b[0] + b[1] * d[1] + b[2] * d[2];
        for (int k = 3; k < 9; k += 3) {
            double angle = 2 * PI * x / b[k];
            d[k + 1] = cos(angle);
            d[k + 2] = sin(angle);
            d[k] = angle / b[k] * (b[k + 1] * d[k + 2] - b[k + 2] * d[k + 1]);
            value += b[k + 1] * d[k + 1] + b[k + 2] * d[k + 2];
        }
        return value;
    }

    /** The one set with two predictors: the logarithm of y is fitted. */
    private static double nelson(double time, double temperature, double[] b, double[] d) {
        double e = exp(-b[2] * temperature);
        d[0] = 1;
        d[1] = -time * e;
        d[2] = b[1] * time * e * temperature;
        return b[0] - b[1] * time * e;
    }
}
