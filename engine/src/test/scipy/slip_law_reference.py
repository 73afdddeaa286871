"""The laws of the slip finder, fitted by SciPy: an independent reference for the engine's LawFit.

The curves are integrated step by step (solve_ivp) from their differential equations, not taken from closed forms, and fitted
by curve_fit in all parameters together. Writes scipy-laws.csv into src/test/resources/org/snugsheet/engine/slips/, or into
the folder named behind it. Run it in the folder of the engine:

    python3 src/test/scipy/slip_law_reference.py

It needs Debian's python3-scipy. The readings are invented: a thermometer with a mark of 1 degC.
"""

import csv
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import curve_fit

FOLDER = "src/test/resources/org/snugsheet/engine/slips/"
WRITTEN_TO = sys.argv[1] + "/" if len(sys.argv) > 1 else FOLDER
TIGHT = dict(xtol=1e-15, ftol=1e-15, gtol=1e-15, maxfev=20000)

TIMES = np.array([0.0, 5, 10, 15, 20, 25, 30, 35, 40])
STILL = np.full(9, 6.0)
DRIFTING = np.array([4.0, 4.2, 4.5, 5, 5.4, 5.5, 6.1, 6.6, 7])
PLAIN = np.array([41.0, 35, 31, 27, 23, 21, 18, 17, 15])
AIRY = np.array([41.0, 34, 30, 26, 23, 21, 19, 18, 17])
TWO = np.array([45.0, 36, 32, 28, 26, 23, 21, 20, 18])
STIRRED = np.array([41.0, 35, 31, 27, 28, 25, 22, 20, 18])
STUCK = np.array([41.0, 35, 31, 27, 23, 23, 23, 23, 23])
WILD = np.array([41.0, 35, 31, 72, 23, 21, 18, 17, 15])
EVERY = np.ones(9, bool)
BUT_ONE = np.arange(9) != 3

# What rounding to a mark of 1 degC and the usual scatter of 0.2 K leave; surroundings off by 1.5 K.
EXPECTED = 1 / 12 + 0.2**2
PRIOR = np.sqrt(EXPECTED) / 1.5


def newton(rate, start, around):
    """dT/dt = -k (T - Ts(t)), Ts straight between readings."""
    room = lambda t: np.interp(t, TIMES, around)
    return integrated(lambda t, y: -rate * (y - room(t)), start)


def still_air(rate, start, around):
    """dT/dt = -k |d/d0|^(1/4) d with the difference d and the first one d0."""
    first = start - around[0]
    return integrated(lambda t, y: -rate * (y - around[0]) * np.abs((y - around[0]) / first) ** 0.25, start)


def integrated(slope, start):
    # From reading to reading, so that no step crosses a bend of the surroundings.
    values = [start]
    for t0, t1 in zip(TIMES, TIMES[1:]):
        values.append(solve_ivp(slope, (t0, t1), [values[-1]], rtol=1e-12, atol=1e-12).y[0, -1])
    return np.array(values)


def two_stages(faster):
    return lambda p, around: around[0] + p[1] * np.exp(-p[0] * TIMES) + p[2] * np.exp(-faster * p[0] * TIMES)


def stirred(p, around):
    part = np.arange(9) >= 4
    return around[0] + np.where(part, p[2], p[1]) * np.exp(-p[0] * TIMES)


def stuck(p, around):
    return np.where(np.arange(9) >= 4, p[2], around[0] + p[1] * np.exp(-p[0] * TIMES))


def by_newton(p, around):
    return newton(p[0], p[1], around)


def by_still_air(p, around):
    return still_air(p[0], p[1], around)


def with_level(p, around):
    return newton(p[0], p[1], around) + p[2] * (1 - np.exp(-p[0] * TIMES))


CASES = [
    ("NEWTON", "plain", PLAIN, STILL, EVERY, by_newton, [0.03, 40], 0),
    ("NEWTON", "drifting", PLAIN, DRIFTING, EVERY, by_newton, [0.03, 40], 0),
    ("NEWTON", "wild", WILD, STILL, BUT_ONE, by_newton, [0.03, 40], 0),
    ("NEWTON", "stirred", STIRRED, STILL, EVERY, stirred, [0.03, 35, 40], 0),
    ("NEWTON", "stuck", STUCK, STILL, EVERY, stuck, [0.03, 35, 23], 0),
    ("LEVEL", "plain", PLAIN, STILL, EVERY, with_level, [0.03, 40, 0], PRIOR),
    ("LEVEL", "drifting", PLAIN, DRIFTING, EVERY, with_level, [0.03, 40, 0], PRIOR),
    ("LEVEL", "unread", PLAIN, np.zeros(9), EVERY, with_level, [0.03, 40, 0], 0),
    ("STILL_AIR", "airy", AIRY, STILL, EVERY, by_still_air, [0.04, 40], 0),
    ("STILL_AIR", "wild", WILD, STILL, BUT_ONE, by_still_air, [0.04, 40], 0),
    ("TWO_STAGES", "two", TWO, STILL, EVERY, two_stages(6), [0.03, 30, 5], 0),
    ("TWO_STAGES_FAR", "two", TWO, STILL, EVERY, two_stages(12), [0.03, 30, 5], 0),
]


def fitted(readings, around, trusted, model, guess, prior):
    def observed(_, *p):
        values = model(p, around)[trusted]
        return np.append(values, prior * p[2]) if prior else values

    target = np.append(readings[trusted], 0) if prior else readings[trusted]
    p, _ = curve_fit(observed, np.arange(len(target)), target, p0=guess, **TIGHT)
    squares = np.sum((target - observed(None, *p)) ** 2)
    jacobian = slopes(lambda q: observed(None, *q), p)
    row = slopes(lambda q: model(q, around), p)
    inverse = np.linalg.inv(jacobian.T @ jacobian)
    leverages = np.einsum("ij,jk,ik->i", row, inverse, row)
    return squares, model(p, around), leverages


def slopes(function, p):
    columns = []
    for j in range(len(p)):
        step = np.zeros(len(p))
        step[j] = 1e-5 * max(abs(p[j]), 1e-2)
        columns.append((function(p + step) - function(p - step)) / (2 * step[j]))
    return np.array(columns).T


with open(WRITTEN_TO + "scipy-laws.csv", "w", encoding="utf-8", newline="") as file:
    file.write(f"# Written by src/test/scipy/slip_law_reference.py with SciPy {scipy.__version__}; invented readings.\n")
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(["law", "set", "row", "reading", "around", "trusted", "squares", "fitted", "leverage"])
    for law, name, readings, around, trusted, model, guess, prior in CASES:
        squares, curve, leverages = fitted(readings, around, trusted, model, guess, prior)
        for i in range(9):
            writer.writerow(
                [law, name, i + 1, readings[i], around[i], int(trusted[i])]
                + [f"{x:.9g}" for x in (squares, curve[i], leverages[i])]
            )
