"""How the program reads units, against scipy.constants: every unit it knows by name, every unit that stands in a table."""

import re

from scipy import constants

from faceload import Count, in_units, program, rows

# Size in SI units, and the dimension: metres, seconds, kelvins, kilograms, joules. Energy is kept apart from mass.
LENGTH, TIME, WARMTH, MASS, ENERGY = ((1, 0, 0, 0, 0), (0, 1, 0, 0, 0), (0, 0, 1, 0, 0), (0, 0, 0, 1, 0), (0, 0, 0, 0, 1))
POWER, VOLUME, NONE = (0, -1, 0, 0, 1), (3, 0, 0, 0, 0), (0, 0, 0, 0, 0)
ATOMS = {
    "m": (1, LENGTH), "km": (constants.kilo, LENGTH), "cm": (constants.centi, LENGTH), "mm": (constants.milli, LENGTH),
    "um": (constants.micron, LENGTH), "[in_i]": (constants.inch, LENGTH), "in": (constants.inch, LENGTH),
    "[ft_i]": (constants.foot, LENGTH), "ft": (constants.foot, LENGTH), "yd": (constants.yard, LENGTH),
    "[mi_i]": (constants.mile, LENGTH), "mi": (constants.mile, LENGTH),
    "h": (constants.hour, TIME), "min": (constants.minute, TIME), "s": (1, TIME), "d": (constants.day, TIME),
    "K": (1, WARMTH),
    "kg": (1, MASS), "g": (constants.gram, MASS), "mg": (constants.gram / 1000, MASS), "t": (constants.metric_ton, MASS),
    "[lb_av]": (constants.pound, MASS), "lb": (constants.pound, MASS), "[oz_av]": (constants.oz, MASS), "oz": (constants.oz, MASS),
    "[ston_av]": (constants.short_ton, MASS),
    "J": (1, ENERGY), "kJ": (constants.kilo, ENERGY), "MJ": (constants.mega, ENERGY), "GJ": (constants.giga, ENERGY),
    "kWh": (constants.kilo * constants.hour, ENERGY), "MWh": (constants.mega * constants.hour, ENERGY),
    "MMBTU": (constants.mega * constants.Btu_IT, ENERGY), "therm": (1e5 * constants.Btu_IT, ENERGY),
    "W": (1, POWER), "kW": (constants.kilo, POWER), "MW": (constants.mega, POWER),
    "L": (constants.liter, VOLUME), "mL": (constants.liter / 1000, VOLUME), "gal": (constants.gallon, VOLUME),
    "[gal_us]": (constants.gallon, VOLUME),
    "%": (0.01, NONE), "1": (1, NONE), "": (1, NONE), "a": (1, NONE), "year": (1, NONE), "years": (1, NONE),
}  # fmt: skip


def si(text):
    """The size of a unit in SI units and its dimension; what braces count has none."""
    size, dimension = 1.0, [0] * 5
    plain = re.sub(r"\{[^}]*\}", "", text).replace("kW.h", "kWh").replace("MW.h", "MWh")
    for sign, atom in re.findall(r"(^|[./])([^./]*)", plain):
        name, power = re.fullmatch(r"(.*?)([23]?)", atom).groups() if len(atom) > 1 else (atom, "")
        exponent = int(power or 1) * (-1 if sign == "/" else 1)
        one, of = ATOMS[name]
        size *= one**exponent
        dimension = [have + exponent * each for have, each in zip(dimension, of)]
    return size, dimension


def written(dimension):
    """SI units of a dimension, as the program reads them."""
    parts = []
    for unit, exponent in zip(("m", "s", "K", "kg", "J"), dimension):
        parts += [("." if exponent > 0 else "/") + unit] * abs(exponent)
    return "1" + "".join(parts)


count = Count("units", at_least=100)
table = {row["unit"] for name in ("practice.csv", "factors.csv", "published.csv") for row in rows(name)}
# In carriers `{gas}` stands for the gas of the column.
table |= {row[column].replace("{gas}", "{CO2}") for row in rows("carriers.csv") for column in ("unit", "trace_unit") if row[column]}
table = sorted(table)
units = list(ATOMS) + table
answers = in_units([(unit, written(si(unit)[1])) for unit in units])
for unit, ours in zip(units, answers):
    count.near(f"1 {unit} in {written(si(unit)[1])}", ours, si(unit)[0], 4e-15)

# A unit that measures something else is no answer.
for of, unit in (("kg", "m"), ("kW", "kWh"), ("L", "m2"), ("K", "kg")):
    count.holds(f"1 {of} in {unit} is not refused", in_units([(of, unit)]) == [None])

# Lengths of an order are whole nanometres.
lengths = {"30 in": 30 * constants.inch, "2.5 ft": 2.5 * constants.foot, "1 mi": constants.mile, "762mm": 0.762, "1 yd": constants.yard}
said = program("FACELOAD_UNITS", text="".join(f"length\t{text}\n" for text in lengths))
for text, ours, metres in zip(lengths, said, lengths.values(), strict=True):
    count.holds(f"{text}: {ours} nm", int(ours) == round(metres * 1e9))
count.end()
