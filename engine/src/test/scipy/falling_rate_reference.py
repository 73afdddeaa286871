"""Laws with a free exponent and free surroundings, for LawDoubtTest, by SciPy alone.

dT/dt = -k*(T - R)*((T - R)/(T0 - R))**m is solved by solve_ivp and fitted by least_squares; the limits of R are where the least
sum of squares with R fixed has grown by 0.5 K^2, by brentq. Run: /usr/bin/python3 engine/src/test/scipy/falling_rate_reference.py
"""

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, least_squares

MINUTES = np.arange(0, 100, 10.0)
SEEN = np.array([40, 27, 20, 15, 12, 11, 10, 9, 9, 8.0])
GROWN = 0.5


def curve(m, start, rate, room):
    def slope(_, t):
        share = (t - room) / (start - room)
        return -rate * (t - room) * np.abs(share) ** m

    return solve_ivp(slope, (0, MINUTES[-1]), [start], t_eval=MINUTES, rtol=1e-11, atol=1e-11).y[0]


def least(m, room=None):
    guess, sizes = ([40, 0.05, 7], [1, 0.01, 1]) if room is None else ([40, 0.05], [1, 0.01])
    rest = [] if room is None else [room]
    fit = least_squares(lambda b: curve(m, *b, *rest) - SEEN, guess, x_scale=sizes, xtol=1e-14, ftol=1e-14, gtol=1e-14)
    return 2 * fit.cost, fit.x


print("SciPy", scipy.__version__)
for m in (0.0, 0.125, 0.25, 0.4):
    ssr, best = least(m)
    limits = [
        brentq(lambda room: least(m, room)[0] - ssr - GROWN, best[2], best[2] + side, xtol=1e-6) for side in (-3, 0.99)
    ]
    print("%.3f, %.8f, %.4f, %.4f" % (m, ssr, *limits))
