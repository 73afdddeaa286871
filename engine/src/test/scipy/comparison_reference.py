"""Student's t and Welch's test by SciPy: an independent reference for the engine's comparisons.

Nothing of the engine's own variant is written down here: p is what scipy.stats.ttest_ind_from_stats(equal_var=False) answers, and the
limits of a ratio are where that answer crosses 1 - confidence. The engine may be more careful, never bolder, and must be equal where
there is nothing to be careful about.

Writes two files into src/test/resources/org/snugsheet/engine/comparison/, or into the folder named behind it. Run it in
the folder of the engine:

    python3 src/test/scipy/comparison_reference.py

It needs Debian's python3-scipy. The tests check the stored files, and where SciPy is at hand that a new run says the same.
"""

import math
import sys

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
    (0.0300, 0.0000, INFINITY, 0.0250, 0.0020, 4.5, 0.995),
    (0.0300, 0.0000, INFINITY, 0.0310, 0.0015, 3, 0.8),
    (0.0300, 0.0020, INFINITY, 0.0250, 0.0005, INFINITY, 0.995),
    (0.0300, 0.0003, 1, 0.0150, 0.0003, 1, 0.95),  # two jars each
    (0.0300, 0.0015, 1, 0.0150, 0.0015, 1, 0.95),  # two jars each, twice as slow and yet without upper limit
    (0.0300, 0.0005, 2, 0.0200, 0.0005, 2, 0.95),  # three jars each
    (0.0300, 0.0005, 2, 0.0200, 0.0005, 5, 0.95),  # three against six: the better-known counts as the other
    (0.0300, 0.0005, 12, 0.0200, 0.0002, 1, 0.95),
    (3.0e5, 1.2e4, 5.5, 1.1e-7, 0.5e-8, 7.3, 0.95),  # any unit, and degrees of freedom that are not whole
]


def welch(case, ratio=1.0):
    """SciPy's Welch test of value1 = ratio * value2, which is for samples: n = nu + 1 observations of spread s * sqrt(n)."""
    value1, error1, nu1, value2, error2, nu2, _ = case
    value2, error2 = ratio * value2, ratio * error2
    if error1 == 0 or math.isinf(nu1) or math.isinf(nu2):
        # No sample is exact or endless; then SciPy's t is asked itself, with the degrees of freedom of Satterthwaite's formula.
        shares = error1**4 / nu1 + error2**4 / nu2
        freedom = (error1**2 + error2**2) ** 2 / shares if shares > 0 else INFINITY
        distribution = stats.norm if math.isinf(freedom) else stats.t(freedom)
        return 2 * distribution.sf(abs(value1 - value2) / math.hypot(error1, error2))
    n1, n2 = nu1 + 1, nu2 + 1
    return stats.ttest_ind_from_stats(
        value1, error1 * math.sqrt(n1), n1, value2, error2 * math.sqrt(n2), n2, equal_var=False
    ).pvalue


def limits(case):
    """The ratios that Welch's test allows, from a search in powers of ten refined by Brent's method."""
    value1, error1, _, value2, _, _, confidence = case

    def excess(ratio):
        return welch(case, ratio) - (1 - confidence)

    size = value1 / value2 if value1 > 0 else error1 / value2
    ratios = [abs(size) * 10 ** (k / 400) for k in range(-2800, 2801)]
    allowed = [i for i, ratio in enumerate(ratios) if excess(ratio) >= 0]
    first, last = allowed[0], allowed[-1]
    low = 0 if first == 0 else brentq(excess, ratios[first - 1], ratios[first], xtol=1e-300, rtol=1e-14)
    at_end = last == len(ratios) - 1
    high = INFINITY if at_end else brentq(excess, ratios[last], ratios[last + 1], xtol=1e-300, rtol=1e-14)
    return low, high


def write_comparisons():
    with open(FOLDER + "scipy-comparisons.csv", "w", encoding="utf-8") as file:
        file.write("# p: scipy.stats.ttest_ind_from_stats(v1, e1*sqrt(n1), n1, v2, e2*sqrt(n2), n2, equal_var=False).pvalue, n = freedom + 1\n")
        file.write("# low, high: the ratios between which that p, of v1 against ratio*v2, is 1 - confidence or more.\n")
        file.write("# By SciPy %s, written by " % scipy.__version__)
        file.write("src/test/scipy/comparison_reference.py.\n")
        file.write("value1,error1,freedom1,value2,error2,freedom2,confidence,p,low,high\n")
        for case in CASES:
            file.write(",".join("%.15g" % x for x in list(case) + [welch(case)] + list(limits(case))) + "\n")


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
