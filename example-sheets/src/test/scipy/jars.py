"""Fits the jars of the worked sheets about one jar and of the invented class with SciPy, from nothing but what is typed there.

    python3 jars.py FOLDER > FOLDER/jars-reference.csv

FOLDER holds jars-readings.csv. How a jar is fitted is told in fitted.py. "lost" is what the curve loses in the minutes
of the column "within" from the temperature in the column "from", or from its own start: (from - Ts) (1 - exp(-within k)).
"""

import sys

import numpy

from fitted import fit, rows

COLUMNS = ["rate", "rate_error", "halftime", "halftime_error", "start", "start_error", "misfit", "lost"]


def main(folder):
    print("# Written by src/test/scipy/jars.py; not to be changed by hand.")
    print(",".join(["sheet", "jar", *COLUMNS]))
    for row in rows(f"{folder}/jars-readings.csv"):
        minutes, temps = (numpy.array([float(cell) for cell in row[name].split()]) for name in ("minutes", "temps"))
        surroundings = float(row["surroundings"])
        answer = fit(minutes, temps, surroundings, float(row["mark"]))
        begin = float(row["from"] or answer["start"])
        answer["lost"] = (begin - surroundings) * (1 - numpy.exp(-float(row["within"]) * answer["rate"]))
        print(",".join([row["sheet"], row["jar"], *(f"{answer[name]:.10g}" for name in COLUMNS)]))


if __name__ == "__main__":
    main(sys.argv[1])
