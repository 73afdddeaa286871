"""Limits of fitted surroundings where other laws compete, for LawDoubtTest, by SciPy alone.

The readings are invented: Newton's law from 40 to 6 degC, 0.05 per minute, noise of 0.15 K, a mark of 0.1 degC. The largest
exponent whose sum of squares is not ruled out at 99.73 % (profile, n - 4 degrees of freedom) is found by brentq, then the levels that
keep its sum of squares within the 95 % limit. Run: /usr/bin/python3 engine/src/test/scipy/law_doubt_reference.py
"""

import numpy as np
import scipy
from scipy.optimize import brentq, least_squares
from scipy.stats import t as student

MINUTES = np.arange(0, 100, 5.0)
SEEN = np.array(
    [39.9, 32.5, 26.9, 22.2, 18.3, 15.7, 13.5, 11.9, 10.4, 9.6, 8.8, 8.4, 7.7, 7.4, 6.8, 7.1, 6.3, 6.7, 6.3, 6.2]
)
STEEPEST = 0.42
N = len(SEEN)


def curve(m, fall, rate, room):
    left = np.exp(-rate * MINUTES) if m == 0 else (1 + m * rate * MINUTES) ** (-1 / m)
    return room + fall * left


def least(m, room=None):
    rest, guess = ([], [1, 1, 1]) if room is None else ([room / 6], [1, 1])
    fit = least_squares(
        lambda b: curve(m, *(np.append(b, rest) * [34, 0.05, 6])) - SEEN, guess, xtol=1e-15, ftol=1e-15, gtol=1e-15
    )
    return 2 * fit.cost, fit.x * [34, 0.05, 6][: len(guess)]


def levels(m, allowed):
    ssr, best = least(m)
    edges = [brentq(lambda room: least(m, room)[0] - ssr - allowed, best[2] + side, best[2]) for side in (-3, 3)]
    return best[2], *edges


def variance(m):
    return least(m)[0] / (N - 3)


plain = min(least(STEEPEST * i / 6)[0] for i in range(7))
limit = plain * (1 + student.ppf(1 - 0.0027 / 2, N - 4) ** 2 / (N - 4))
steepest = brentq(lambda m: least(m)[0] - limit, 0.01, STEEPEST)
t2 = student.ppf(0.975, N - 3) ** 2
print("SciPy", scipy.__version__)
print("Newton alone: %.4f, %.4f to %.4f" % levels(0, variance(0) * t2))
print("exponent %.4f: %.4f, %.4f to %.4f" % (steepest, *levels(steepest, max(variance(0), variance(steepest)) * t2)))
