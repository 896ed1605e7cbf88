"""Warming potentials over 100 years of factors.csv against the package globalwarmingpotentials (CC0)."""

import globalwarmingpotentials

from faceload import Count, rows

count = Count("warming potentials", at_least=9)
# Burnt, a kilogram of methane makes 44/16 kg of CO2; that, and the rounding of both figures, is all that the value of
# fossil methane may add to the other.
CARBON = 44.009 / 16.043 + 0.1

table = {row["id"]: float(row["value"]) for row in rows("factors.csv") if row["id"].startswith("gwp.")}
for row, value in table.items():
    _, report, gas = row.split(".")
    theirs = globalwarmingpotentials.data[f"{report.upper()}GWP100"]
    if gas == "common":
        # A part that all gases share, 1 by definition, so that the potentials stay the package's.
        count.holds(f"{row}: {value}, not 1", value == 1.0)
    elif gas == "n2o":
        count.near(row, value, theirs["N2O"], 1e-12)
    elif report == "ar6" and gas in ("ch4", "ch4-fugitive"):
        # The package has only the value before the split: it must lie between the two.
        low, high = table["gwp.ar6.ch4"], table["gwp.ar6.ch4-fugitive"]
        count.holds(f"{row}: {low} to {high} does not hold {theirs['CH4']}", (low, high) == (27.0, 29.8) and low < theirs["CH4"] < high)
    elif gas == "ch4":
        count.near(row, value, theirs["CH4"], 1e-12)
    elif gas == "ch4-fugitive":
        count.holds(f"{row}: {value} beside {theirs['CH4']}", theirs["CH4"] <= value <= theirs["CH4"] + CARBON)
    else:
        count.holds(f"{row}: no gas that this script knows", False)
count.end()
