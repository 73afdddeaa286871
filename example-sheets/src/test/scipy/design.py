"""Works out the worked sheet “design a wrap” from the published formulas, from nothing but what is typed into the sheet.

    python3 design.py FOLDER > FOLDER/design-reference.csv

FOLDER holds design-given.csv, design-layers.csv and design-readings.csv. Nothing of the engine is used. Where two
publications tell the same thing, the other one is taken than the engine takes:

density of water     Kell, J. Chem. Eng. Data 20 (1975), 97, Eq. 16
viscosity of water   Kestin, Sokolov and Wakeham, J. Phys. Chem. Ref. Data 7 (1978), 941 (from memory)
heat, conductivity   cubic spline through values of IAPWS R6-95 and R15-11 (see water.csv of the engine's tests)
air                  Sutherland's law for viscosity, U.S. Standard Atmosphere 1976 for conductivity (from memory), ideal gas
free convection      side: Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975), 1323, on a cylinder after Popiel,
                     Wojtkowiak and Bober, Exp. Thermal Fluid Sci. 32 (2007), 607; lid and base: McAdams, Heat
                     Transmission, 1954
radiation            between a surface of emissivity 0.9 and a room, Stefan and Boltzmann
layers               round: r ln(r2/r1)/k; flat: thickness over k
the whole jar        side, lid and base side by side: P = sum of A dT/R; cooling constant P/(C dT)

Each way out is solved for the temperatures of its two faces by scipy.optimize.fsolve. The readings are fitted as in
fitted.py; R from a cooling constant k is A/(k C), its error to first order, that of a difference by adding squares.
"""

import math
import sys

import numpy
from scipy.interpolate import CubicSpline
from scipy.optimize import fsolve

from fitted import conductivity, fit, rows

GRAVITY = 9.80665
ZERO = 273.15

# °C, J/(kg K), W/(m K)
TABLE = numpy.array([
    [0, 4219.4, 0.5556], [5, 4205.0, 0.5678], [10, 4195.2, 0.5788], [15, 4188.5, 0.5888], [20, 4184.1, 0.5980],
    [25, 4181.3, 0.6065], [30, 4179.8, 0.6144], [35, 4179.3, 0.6217], [40, 4179.4, 0.6285], [45, 4180.1, 0.6348],
    [50, 4181.3, 0.6406],
])
heat_of_water = CubicSpline(TABLE[:, 0], TABLE[:, 1])
conductivity_of_water = CubicSpline(TABLE[:, 0], TABLE[:, 2])


def density_of_water(t):
    above = 999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))
    return above / (1 + 16.879850e-3 * t)


def viscosity_of_water(t):
    away = 20 - t
    return 1.002e-3 * 10 ** (away / (t + 96) * (1.2364 - 1.37e-3 * away + 5.7e-6 * away**2))


def density_of_air(t):
    return 101325 / (287.053 * (t + ZERO))


def air(t):
    """Conductivity, kinematic viscosity, Prandtl number."""
    kelvins = t + ZERO
    viscosity = 1.716e-5 * (kelvins / 273.15) ** 1.5 * (273.15 + 110.4) / (kelvins + 110.4)
    k = 2.64638e-3 * kelvins**1.5 / (kelvins + 245.4 * 10 ** (-12 / kelvins))
    return k, viscosity / density_of_air(t), viscosity * 1007 / k


def water(t):
    k = float(conductivity_of_water(t))
    viscosity = viscosity_of_water(t)
    return k, viscosity / density_of_water(t), viscosity * float(heat_of_water(t)) / k


def upright(prandtl, grashof, slender):
    plate = (0.825 + 0.387 * (prandtl * grashof) ** (1 / 6) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
    b = 0.0571322 + 0.20305 * prandtl**-0.43
    c = 0.9165 - 0.0043 * prandtl**0.5 + 0.01333 * math.log(prandtl) + 0.0004809 / prandtl
    return plate * (1 + b * (32**0.5 * grashof**-0.25 * slender) ** c)


def lying(prandtl, grashof, leaves):
    rayleigh = prandtl * grashof
    free = max(0.54 * rayleigh**0.25, 0.15 * rayleigh ** (1 / 3))
    return max(1, free if leaves else 0.27 * rayleigh**0.25)


def film(fluid, density, facing, height, diameter, surface, far):
    """W/(m² K) by free convection."""
    length = height if facing == "side" else diameter / 4
    k, viscosity, prandtl = fluid((surface + far) / 2)
    lighter = (density(far) - density(surface)) / ((density(far) + density(surface)) / 2)
    grashof = GRAVITY * abs(lighter) * length**3 / viscosity**2
    if facing == "side":
        nusselt = upright(prandtl, grashof, height / diameter)
    else:
        nusselt = lying(prandtl, grashof, (facing == "up") == (lighter >= 0))
    return nusselt * k / length


def room(facing, height, diameter, surface, far):
    a, b = surface + ZERO, far + ZERO
    radiation = 0.9 * 5.670374419e-8 * (a**2 + b**2) * (a + b)
    return radiation + film(air, density_of_air, facing, height, diameter, surface, far)


def way_out(facing, height, inner, outer, layers, warm, cold):
    """The resistances of film, layers and film, m² K/W of the inner surface."""
    widening = outer / inner if facing == "side" else 1
    total = sum(layers)

    def films(faces):
        within = film(water, density_of_water, "side", height, 2 * inner, faces[0], warm)
        without = room(facing, height, 2 * outer, faces[1], cold) * widening
        return within, without

    def balance(faces):
        within, without = films(faces)
        flux = without * (faces[1] - cold)
        across = (faces[0] - faces[1]) - flux * total if total else faces[0] - faces[1]
        return [within * (warm - faces[0]) - flux, across]

    guess = [warm - 0.02 * (warm - cold), cold + 0.3 * (warm - cold)]
    within, without = films(fsolve(balance, guess, xtol=1e-13))
    return [1 / within, *layers, 1 / without]


class Jar:
    def __init__(self, given, side, lid, base):
        self.given = given
        self.side, self.lid, self.base = side, lid, base
        self.radius = given["radius"] / 1000
        self.litres = given["volume"] / 1000
        self.height = self.litres / 1000 / (math.pi * self.radius**2)
        self.ends = math.pi * self.radius**2
        self.round = 2 * math.pi * self.radius * self.height
        self.area = self.round + 2 * self.ends

    def ways(self, warm):
        cold, radius, resistances = self.given["cold"], self.radius, []
        for metres, k in self.side:
            resistances.append(self.radius * math.log((radius + metres) / radius) / k)
            radius += metres
        side = way_out("side", self.height, self.radius, radius, resistances, warm, cold)
        lid = way_out("up", self.height, self.radius, radius, self.lid, warm, cold)
        base = way_out("down", self.height, self.radius, radius, self.base, warm, cold)
        return side, lid, base

    def capacity(self, t):
        return self.litres / 1000 * density_of_water(t) * float(heat_of_water(t)) + 0.84 * self.given["glass"]

    def resistance(self, warm):
        side, lid, base = (sum(way) for way in self.ways(warm))
        return self.area / (self.round / side + self.ends / lid + self.ends / base)

    def watts(self, warm):
        return self.area * (warm - self.given["cold"]) / self.resistance(warm)

    def rate(self, warm):
        """per minute"""
        return 60 * self.watts(warm) / (self.capacity(warm) * (warm - self.given["cold"]))

    def halfway(self):
        cold, start = self.given["cold"], self.given["start"]
        return cold + (start - cold) * math.exp(-self.rate(start) * self.given["lesson"] / 2)


def measured(jar, name, readings, given):
    minutes = numpy.array([float(row["minutes"]) for row in readings])
    temps = numpy.array([float(row[name]) for row in readings])
    return fit(minutes, temps, given["cold"], given["mark"])


def main(folder):
    given = {row["name"]: float(row["value"]) for row in rows(f"{folder}/design-given.csv")}
    parts = {"side": [], "lid": [], "base": []}
    for row in rows(f"{folder}/design-layers.csv"):
        parts[row["part"]].append((float(row["thickness_mm"]) / 1000, conductivity(row["conductivities"])))
    readings = rows(f"{folder}/design-readings.csv")
    lid, base = ([metres / k for metres, k in parts[part]] for part in ("lid", "base"))
    jars = {"bare": Jar(given, parts["side"][:1], lid, base), "wrapped": Jar(given, parts["side"], lid, base)}

    answers, resistances, errors = [], {}, {}
    for name, jar in jars.items():
        warm = jar.halfway()
        answers += [
            (f"{name} halfway", warm),
            (f"{name} expected rate", jar.rate(warm)),
            (f"{name} expected R", jar.resistance(warm)),
            (f"{name} watts", jar.watts(warm)),
        ]
        read = measured(jar, name, readings, given)
        resistances[name] = jar.area * 60 / (read["rate"] * jar.capacity(warm))
        errors[name] = resistances[name] * read["rate_error"] / read["rate"]
        answers += [
            (f"{name} rate", read["rate"]),
            (f"{name} rate error", read["rate_error"]),
            (f"{name} halftime", read["halftime"]),
            (f"{name} halftime error", read["halftime_error"]),
            (f"{name} R", resistances[name]),
            (f"{name} R error", errors[name]),
        ]
    # What the wrap adds is asked for at one temperature, that of the wrapped jar.
    same = jars["bare"].capacity(jars["bare"].halfway()) / jars["wrapped"].capacity(jars["wrapped"].halfway())
    answers += [
        ("wrap R", resistances["wrapped"] - resistances["bare"] * same),
        ("wrap R error", math.hypot(errors["wrapped"], errors["bare"] * same)),
    ]
    jar = jars["wrapped"]
    warm, side = jar.halfway(), jar.ways(jar.halfway())[0]
    temperature = warm
    for number, each in enumerate(side):
        answers.append((f"way {number} R", each))
        temperature -= (warm - given["cold"]) * each / sum(side)
        answers.append((f"way {number} outside", temperature))
    answers += [("lid R", sum(lid)), ("base R", sum(base))]
    end = given["cold"] + (given["start"] - given["cold"]) * math.exp(-jar.rate(warm) * given["lesson"])
    answers.append(("wrapped expected at the end", end))

    print("# Written by src/test/scipy/design.py; not to be changed by hand.")
    print("name,value")
    for name, value in answers:
        print(f"{name},{value:.10g}")


main(sys.argv[1])
