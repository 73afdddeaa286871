"""Fits a jar with SciPy, for the scripts beside this one.

    T(t) = Ts + (T0 - Ts) exp(-k t)

is fitted by scipy.optimize.curve_fit with T0 and k free. Its covariance is not used: the variance of a reading is
max(SSR/(n - 2), mark^2/12), rounding to a mark being part of it (JCGM 100:2008, F.2.2.1), and the covariance of T0 and k is
this variance times the inverse of J'J. Ts was read once on the same thermometer: to the square of each error comes that of
mark/sqrt(12) times the slope of the parameter by Ts (JCGM 100:2008, 5.1.2), which is minus the least-squares answer of the
linearised fit to dT/dTs = 1 - exp(-k t). The half-time is ln 2 / k, its error to first order; the misfit is sqrt(SSR/n).
The conductivity of a wrap is the median of what the sources say, to three digits; R is thickness over conductivity.
"""

import csv
import re
import statistics

import numpy
from scipy.optimize import curve_fit


def rows(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


def celsius(cell):
    """A reading in °C, or None for a blank."""
    typed = re.fullmatch(r"([-+0-9.]+)( °F)?", cell)
    if not typed:
        assert cell == "", cell
        return None
    return (float(typed[1]) - 32) * 5 / 9 if typed[2] else float(typed[1])


def fit(minutes, temps, surroundings, mark):
    def curve(t, start, rate):
        return surroundings + (start - surroundings) * numpy.exp(-rate * t)

    def slopes(t, start, rate):
        left = numpy.exp(-rate * t)
        return numpy.column_stack([left, -(start - surroundings) * t * left])

    (start, rate), _ = curve_fit(
        curve, minutes, temps, p0=[temps[0], 0.01], jac=slopes, method="lm", ftol=1e-15, xtol=1e-15, gtol=1e-15
    )
    n = len(temps)
    ssr = float(numpy.sum((temps - curve(minutes, start, rate)) ** 2))
    jacobian = slopes(minutes, start, rate)
    covariance = max(ssr / (n - 2), mark**2 / 12) * numpy.linalg.inv(jacobian.T @ jacobian)
    by_surroundings = numpy.linalg.lstsq(jacobian, -(1 - numpy.exp(-rate * minutes)), rcond=None)[0]
    start_error, rate_error = numpy.sqrt(numpy.diag(covariance) + by_surroundings**2 * mark**2 / 12)
    return {
        "rate": rate,
        "rate_error": rate_error,
        "halftime": numpy.log(2) / rate,
        "halftime_error": numpy.log(2) / rate**2 * rate_error,
        "start": start,
        "start_error": start_error,
        "misfit": numpy.sqrt(ssr / n),
    }


def conductivity(sources):
    """The median of figures and of the middles of ranges, to three significant digits."""
    votes = [statistics.mean(float(end) for end in figure.split("..")) for figure in sources.split(" ")]
    return float(f"{statistics.median(votes):.3g}")
