"""Solvents of the tables against the property library chemicals: carbon by its molar masses, densities and heats.

The table of solvents is compared row by row, by registry number; rows that name a solvent, by its name."""

import math
import re

from chemicals import Hfl, search_chemical
from chemicals.combustion import combustion_data
from chemicals.elements import molecular_weight, simple_formula_parser
from chemicals.volume import rho_data_Perry_8E_105_l as liquids

from faceload import Count, rows

count = Count("solvents", at_least=140)
# The library's atomic weights differ from the abridged ones in the fifth digit; rows are printed with five.
CARBON = 1e-4
NAMES = {"methoxypropyl acetate": "1-methoxy-2-propyl acetate"}


def co2_of(formula):
    """Kilograms of CO2 from a kilogram fully oxidised."""
    atoms = simple_formula_parser(formula)
    return atoms["C"] * molecular_weight({"C": 1, "O": 2}) / molecular_weight(atoms)


def known(name):
    return search_chemical(NAMES.get(name, name))


def density(of):
    """kg/L at 20 degrees C, DIPPR equation 105 with the coefficients of Perry's handbook, 8th edition."""
    row = liquids.loc[of.CASs]
    mol_per_dm3 = row["C1"] / row["C2"] ** (1 + (1 - 293.15 / row["C3"]) ** row["C4"]) / 1000
    return mol_per_dm3 * of.MW / 1000


for row in rows("solvents.csv"):
    of = search_chemical(row["cas"])
    atoms = simple_formula_parser(row["formula"])
    count.holds(f"{row['id']}: {row['formula']} here, {of.formula} there", atoms == simple_formula_parser(of.formula))
    count.near(f"{row['id']}, g/mol", row["molar_mass"], of.MW, CARBON)
    count.near(f"{row['id']}, carbon", row["carbon_share"], atoms["C"] * molecular_weight({"C": 1}) / of.MW, CARBON)
    # Carbon of plants is not counted.
    count.near(f"{row['id']}, CO2", row["co2e"], 0.0 if "carbon of plants" in row["note"] else co2_of(row["formula"]), CARBON)
    if row["density"] and of.CASs in liquids.index:
        count.near(f"{row['id']}, kg/L", row["density"], density(of), 0.01 if row["density_source"] != "memory" else 0.03)

for row in rows("factors.csv"):
    if row["id"].startswith("oxidation.") and (formula := re.search(r"\bC\d+(?:H\d+)?(?:N\d*)?(?:O\d*)?$", row["place"])):
        # A row near a solvent says so, and is no nearer than its own digits.
        near = row["place"].startswith("near ")
        count.near(f"{row['id']}, {formula[0]}", row["value"], co2_of(formula[0]), 0.02 if near else CARBON)
        name = row["place"].removeprefix("near ")[: formula.start() - len("near ") * near].rstrip(", ") or row["item"].removeprefix("CO2e of oxidised ")
        count.holds(f"{row['id']}: {name} is {known(name).formula}", known(name).formula == formula[0])
        ends = re.search(r"ends: (.+?), ([^,;]+)(?:;|$)", row["note"])
        for end, name in zip(("low", "high"), ends.groups()) if ends else ():
            count.near(f"{row['id']}, {end}, {name}", row[end], co2_of(known(name).formula), CARBON)
    if row["id"] == "oxidation.uv-monomer.co2e":
        monomers = [co2_of(one["formula"]) for one in rows("solvents.csv") if one["note"] == "monomer of UV ink"]
        count.near(f"{row['id']}, mean", row["value"], math.prod(monomers) ** (1 / len(monomers)), 1e-3)
        count.near(f"{row['id']}, low", row["low"], min(monomers), CARBON)
        count.near(f"{row['id']}, high", row["high"], max(monomers), CARBON)
    if row["source"] == "solvent-properties" and (heat := re.search(r"^(.+), HHV ([\d.]+) MJ/kg$", row["place"])):
        liquid = known(heat[1])
        burnt = combustion_data(formula=liquid.formula, Hf=Hfl(liquid.CASs))
        count.near(f"{row['id']}, {heat[1]}", heat[2], -burnt.HHV / liquid.MW / 1000, 5e-4)

for row in rows("practice.csv"):
    if row["source"] == "solvent-properties" and row["unit"].startswith("kg/L"):
        name = row["place"].split(",")[0]
        count.near(f"{row['id']}, {name}", row["default"], density(known(name)), 0.01)
count.end()
