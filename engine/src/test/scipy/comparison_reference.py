"""Student's t, Welch's test and Fieller's limits by SciPy: an independent reference for the engine's comparisons.

Writes two files into src/test/resources/org/snugsheet/engine/comparison/, or into the folder named behind it. Run it in
the folder of the engine:

    python3 src/test/scipy/comparison_reference.py

It needs Debian's python3-scipy. The tests check the stored files, and where SciPy is at hand that a new run says the same.
"""

import math
import sys

import numpy as np
import scipy
from scipy import stats
from scipy.optimize import brentq

FOLDER = sys.argv[1] + "/" if len(sys.argv) > 1 else "src/test/resources/org/snugsheet/engine/comparison/"
INFINITY = float("inf")
# value, standard error, degrees of freedom of the first and the second; then the confidence of the limits
CASES = [
    (0.0300, 0.0010, 10, 0.0150, 0.0008, 10, 0.95),  # twice as slow, well known
    (0.0300, 0.0010, 10, 0.0150, 0.0008, 10, 0.995),
    (0.0210, 0.0012, 3, 0.0180, 0.0015, 3, 0.95),  # five readings each, not told apart
    (0.0210, 0.0004, 3, 0.0180, 0.0004, 18, 0.95),  # five against twenty
    (0.0210, 0.0004, 18, 0.0180, 0.0004, 3, 0.95),
    (0.0210, 0.0004, 18, 0.0180, 0.0010, 3, 0.95),  # the one known worse counts more
    (0.0210, 0.0004, 6, 0.0180, 0.0009, 3, 0.995),
    (0.0120, 0.0001, 4, 0.0300, 0.0030, 9, 0.95),  # the second faster, and less well known
    (0.0300, 0.0020, 6, 0.0020, 0.0011, 6, 0.95),  # the second may not cool at all
    (0.0010, 0.0010, 6, 0.0300, 0.0020, 6, 0.95),  # the first may not
    (0.0010, 0.0010, 6, 0.0012, 0.0010, 6, 0.95),  # both may not
    (-0.0005, 0.0010, 6, 0.0300, 0.0020, 6, 0.95),  # the first a little below zero
    (0.0300, 0.0010, INFINITY, 0.0200, 0.0010, INFINITY, 0.95),
    (0.0300, 0.0010, INFINITY, 0.0200, 0.0010, 4, 0.95),
    (0.0300, 0.0000, INFINITY, 0.0200, 0.0010, 7, 0.95),  # the first known exactly
    (0.0300, 0.0003, 1, 0.0150, 0.0003, 1, 0.95),  # two jars each
    (0.0300, 0.0015, 1, 0.0150, 0.0015, 1, 0.95),  # two jars each, twice as slow and yet without upper limit
    (0.0300, 0.0005, 2, 0.0200, 0.0005, 2, 0.95),  # three jars each
    (0.0300, 0.0005, 2, 0.0200, 0.0005, 5, 0.95),  # three against six: the better-known counts as the other
    (0.0300, 0.0005, 12, 0.0200, 0.0002, 1, 0.95),
    (3.0e5, 1.2e4, 5.5, 1.1e-7, 0.5e-8, 7.3, 0.95),  # any unit, and degrees of freedom that are not whole
]
FEWEST = 3
UNEVEN = 6


def freedoms(nu1, nu2):
    """Below three degrees of freedom both count as having the fewer."""
    fewest = min(nu1, nu2)
    return (fewest, fewest) if fewest < FEWEST else (nu1, nu2)


def plain_welch(case):
    """SciPy's own Welch test where it can be asked, which is for samples: n = nu + 1 observations of spread s * sqrt(n)."""
    value1, error1, nu1, value2, error2, nu2, _ = case
    nu1, nu2 = freedoms(nu1, nu2)
    if math.isinf(nu1) or math.isinf(nu2) or error1 == 0:
        freedom = satterthwaite(error1, nu1, error2, nu2)
        return 2 * stats.t.sf(abs(value1 - value2) / math.hypot(error1, error2), freedom)
    n1, n2 = nu1 + 1, nu2 + 1
    return stats.ttest_ind_from_stats(
        value1, error1 * math.sqrt(n1), n1, value2, error2 * math.sqrt(n2), n2, equal_var=False
    ).pvalue


def satterthwaite(error1, nu1, error2, nu2):
    with np.errstate(divide="ignore"):
        return np.divide((error1**2 + error2**2) ** 2, error1**4 / nu1 + error2**4 / nu2)


def second_order(level, error1, nu1, error2, nu2):
    """Welch's second order where it takes degrees of freedom away, with the normal quantile of the level.

    Beyond the 5 % level it counts more often where one error is known worse than the other.
    """
    xi2 = stats.norm.isf(level / 2) ** 2
    share1 = error1**2 / (error1**2 + error2**2)
    share2 = 1 - share1
    more = 2 * (3 + 7 * xi2 + 2 * xi2**2) / (3 * (1 + xi2)) * share1 * share2 * (share1 / nu1 - share2 / nu2) ** 2
    fewest, most = min(nu1, nu2), max(nu1, nu2)
    more = more * (1 + UNEVEN / fewest * (1 / fewest - 1 / most) * max(0, 0.05 / level - 1))
    with np.errstate(divide="ignore"):
        freedom = np.divide(1, share1**2 / nu1 + share2**2 / nu2 + more)
    return np.maximum(freedom, fewest)


def welch(case):
    """The level at which the test with the second order just passes."""
    value1, error1, nu1, value2, error2, nu2, _ = case
    nu1, nu2 = freedoms(nu1, nu2)
    t = abs(value1 - value2) / math.hypot(error1, error2)

    def excess(log_level):
        freedom = second_order(math.exp(log_level), error1, nu1, error2, nu2)
        return log_level - math.log(2 * stats.t.sf(t, freedom))

    return math.exp(brentq(excess, -60, 0, xtol=1e-14, rtol=1e-14))


def fieller(case):
    """Limits by a fine search in the ratio itself, refined by Brent's method."""
    value1, error1, nu1, value2, error2, nu2, confidence = case
    nu1, nu2 = freedoms(nu1, nu2)

    def excess(ratio):
        freedom = second_order(1 - confidence, error1, nu1, ratio * error2, nu2)
        quantile = stats.t.ppf(0.5 + confidence / 2, freedom)
        return np.abs(value1 - ratio * value2) - quantile * np.hypot(error1, ratio * error2)

    size = value1 / value2 if value1 > 0 else error1 / value2
    ratios = abs(size) * np.logspace(-7, 7, 280001)
    allowed = np.flatnonzero(excess(ratios) <= 0)
    first, last = allowed[0], allowed[-1]
    low = 0 if first == 0 else brentq(excess, ratios[first - 1], ratios[first], xtol=1e-300, rtol=1e-14)
    at_end = last == len(ratios) - 1
    high = INFINITY if at_end else brentq(excess, ratios[last], ratios[last + 1], xtol=1e-300, rtol=1e-14)
    return low, high


def write_comparisons():
    with open(FOLDER + "scipy-comparisons.csv", "w", encoding="utf-8") as file:
        file.write("# plain: Welch's p; p: the same with his second order where it takes degrees of freedom away (UNEVEN in the script).\n")
        file.write("# Welch's p and Fieller's limits by SciPy %s, written by " % scipy.__version__)
        file.write("src/test/scipy/comparison_reference.py.\n")
        file.write("value1,error1,freedom1,value2,error2,freedom2,confidence,plain,p,low,high\n")
        for case in CASES:
            file.write(",".join("%.15g" % x for x in list(case) + [plain_welch(case), welch(case)] + list(fieller(case))) + "\n")


def write_student():
    with open(FOLDER + "scipy-student.csv", "w", encoding="utf-8") as file:
        file.write("# Student's t by SciPy %s, written by src/test/scipy/comparison_reference.py.\n" % scipy.__version__)
        file.write("# quantile: of the two-sided confidence; p: two-sided, of the value t.\n")
        file.write("freedom,confidence,quantile,t,p\n")
        for freedom in [0.7, 1, 1.5, 2, 3, 7.3, 18, 250, 1e5, INFINITY]:
            distribution = stats.norm if math.isinf(freedom) else stats.t(freedom)
            for confidence, t in [(0.5, 0.01), (0.95, 1.5), (0.999, 6), (0.99995, 25)]:
                quantile = distribution.isf((1 - confidence) / 2)
                row = [freedom, confidence, quantile, t, 2 * distribution.sf(t)]
                file.write(",".join("%.15g" % x for x in row) + "\n")


if __name__ == "__main__":
    write_comparisons()
    write_student()
