"""Newton's law fitted by SciPy's curve_fit: an independent reference for the engine's fits.

Writes scipy-fits.csv into src/test/resources/org/snugsheet/engine/cooling/, or into the folder named behind it. Run it in
the folder of the engine:

    python3 src/test/scipy/cooling_reference.py

It needs Debian's python3-scipy. The tests check the stored file, and where SciPy is at hand that a new run says the same.
"""

import csv
import sys

import numpy as np
import scipy
from scipy.optimize import curve_fit

FOLDER = "src/test/resources/org/snugsheet/engine/cooling/"
WRITTEN_TO = sys.argv[1] + "/" if len(sys.argv) > 1 else FOLDER
TIGHT = dict(xtol=1e-15, ftol=1e-15, gtol=1e-15, maxfev=10000)
# The room of the 2017 mugs is not stated: 25 degC here is an assumption of this test, the same on both sides.
ASSUMED_ROOM = 25.0
VESSELS = [("mugs2017", "1"), ("mugs2017", "3"), ("mugs2017", "4"), ("coffee-palm", "1")]


def celsius(row, value):
    return (value - 32) * 5 / 9 if row["unit"] == "degF" else value


def readings(name, vessel):
    with open(FOLDER + "newton-cooling.csv", encoding="utf-8") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    rows = [row for row in rows if (row["set"], row["vessel"]) == (name, vessel)]
    times = np.array([float(row["t_min"]) for row in rows])
    temperatures = np.array([celsius(row, float(row["temperature"])) for row in rows])
    stated = rows[0]["surroundings"]
    return times, temperatures, celsius(rows[0], float(stated)) if stated else ASSUMED_ROOM


def given(times, temperatures, room):
    """Surroundings given: start and rate free."""

    def law(t, start, rate):
        return room + (start - room) * np.exp(-rate * t)

    values, covariance = curve_fit(law, times, temperatures, p0=[temperatures[0], 0.02], **TIGHT)
    residuals = temperatures - law(times, *values)
    return list(values) + list(np.sqrt(np.diag(covariance))), np.sqrt(np.mean(residuals**2))


def fitted(times, temperatures):
    """Surroundings fitted as well."""

    def law(t, start, rate, room):
        return room + (start - room) * np.exp(-rate * t)

    values, covariance = curve_fit(law, times, temperatures, p0=[temperatures[0], 0.02, 25], **TIGHT)
    return list(values) + list(np.sqrt(np.diag(covariance)))


def main():
    with open(WRITTEN_TO + "scipy-fits.csv", "w", encoding="utf-8") as file:
        file.write("# Least-squares fits of newton-cooling.csv by scipy.optimize.curve_fit, ")
        file.write("SciPy %s, written by src/test/scipy/cooling_reference.py.\n" % scipy.__version__)
        file.write("# Celsius and minutes. room: the surroundings given. start, rate, misfit: with the room given; ")
        file.write("free_*: with the room fitted too.\n")
        names = ["set", "vessel", "room", "start", "rate", "start_error", "rate_error", "misfit"]
        free = ["free_start", "free_rate", "free_room", "free_start_error", "free_rate_error", "free_room_error"]
        file.write(",".join(names + free) + "\n")
        for name, vessel in VESSELS:
            times, temperatures, room = readings(name, vessel)
            values, misfit = given(times, temperatures, room)
            numbers = [room] + values + [misfit] + fitted(times, temperatures)
            file.write(",".join([name, vessel] + ["%.12g" % number for number in numbers]) + "\n")


if __name__ == "__main__":
    main()
