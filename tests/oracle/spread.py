"""The spread of a pair of the demos: its loads as we export them, against NumPy, SciPy, SALib and uncertainties."""

import json

import numpy as np
from faceload import Count, program
from SALib.analyze import sobol as analyze
from SALib.sample import sobol as sample
from scipy import stats
from uncertainties import ufloat

DRAWS = 400_000
BASE = 1024
count = Count("spread of pairs", at_least=430)


def values(shape, u):
    """An input's values at numbers between 0 and 1, by SciPy's quantile functions."""
    kind, *ends = shape
    if kind == "lognormal":
        return stats.lognorm.ppf(u, ends[1], scale=ends[0])
    if kind == "uniform":
        return stats.uniform.ppf(u, ends[0], ends[1] - ends[0])
    low, median, high = ends
    # Half of the probability on either side: a rising triangle below the median, a falling one above.
    below = stats.triang.ppf(np.clip(2 * u, 0, 1), 1, low, max(median - low, 1e-300))
    above = stats.triang.ppf(np.clip(2 * u - 1, 0, 1), 0, median, max(high - median, 1e-300))
    return np.where(u < 0.5, below, above)


def load(terms, x):
    """A sum of products at the columns of x."""
    whole = 0.0
    for by, product in terms:
        term = by
        for column, way, number in product:
            term = term * (x[column] ** number if way == "power" else 1 / (1 + number * x[column]))
        whole = whole + term
    return whole


for demo, first, second, indicator in [("stop", "screen", "digital", "co2e"), ("guide", "film", "digital", "energy"), ("diamonds", "screen", "digital", "solvent")]:
    exported = json.loads("\n".join(program("FACELOAD_PAIR", demo, first, second, indicator)))
    columns, (one, other), ours = exported["columns"], exported["loads"], exported["ours"]
    what = f"{demo}, {second} less {first} in {indicator}"
    names = [column["name"] for column in columns]
    rows = {row["name"]: row for row in ours["rows"]}

    # Elasticities: derivatives by another library, every input at its median.
    x = [ufloat(values(column["shape"], np.array(0.5)).item(), 1.0) for column in columns]
    difference = load(other, x) - load(one, x)
    count.near(f"{what}: headline", ours["headline"], difference.nominal_value, 1e-9)
    slopes = difference.derivatives
    for name, at in zip(names, x):
        if name in rows:
            theirs = slopes.get(at, 0.0) * at.nominal_value / difference.nominal_value
            count.holds(f"{what}: elasticity of {name}: {rows[name]['elasticity']} here, {theirs} there", abs(rows[name]["elasticity"] - theirs) < 1e-9)

    # Intervals and moments: plain draws by another generator.
    random = np.random.default_rng(20261125)
    draws = [values(column["shape"], random.random(DRAWS)) for column in columns]
    firsts, seconds = load(one, draws), load(other, draws)
    differences = seconds - firsts
    for label, theirs in [("first", firsts), ("second", seconds), ("difference", differences)]:
        width = np.subtract(*np.quantile(theirs, [0.95, 0.05]))
        for own, at in zip(ours[label], np.quantile(theirs, [0.05, 0.25, 0.5, 0.75, 0.95])):
            count.holds(f"{what}: {label}: {own} here, {at} there", abs(own - at) < 0.015 * width)
    count.holds(f"{what}: share of draws", abs(ours["first_less"] - (np.mean(differences > 0) + 0.5 * np.mean(differences == 0))) < 0.004)
    error = differences.std() / DRAWS**0.5
    count.holds(f"{what}: mean {ours['mean']} here, {differences.mean()} there", abs(ours["mean"] - differences.mean()) < 5 * error)
    count.near(f"{what}: deviation", ours["deviation"], differences.std(), 0.05)

    # Variance shares: a sampled estimator, within its own error.
    problem = {"num_vars": len(columns), "names": names, "bounds": [[0, 1]] * len(columns)}
    points = sample.sample(problem, BASE, calc_second_order=False, scramble=True, seed=101)
    points = np.clip(points, 1e-12, 1 - 1e-12)
    x = [values(column["shape"], points[:, place]) for place, column in enumerate(columns)]
    found = analyze.analyze(problem, load(other, x) - load(one, x), calc_second_order=False, num_resamples=100, seed=101)
    far = []
    for name, total, error in zip(names, found["ST"], found["ST_conf"]):
        own = rows[name]["total"] if name in rows else 0.0
        count.compared += 1
        if abs(own - total) > 2.5 * error + 0.01:
            far.append(f"{name}: {own:.4f} here, {total:.4f} +- {error:.4f} there")
    # The estimator's own 95 % error is passed by one in some hundred by chance; heavy tails pass it more often.
    count.holds(f"{what}: total shares: {'; '.join(far)}", len(far) <= 2)
count.end()
