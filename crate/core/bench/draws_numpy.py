"""The same draws in NumPy, one thread, in turn with ours in one run: `python draws_numpy.py PATH_OF_THE_BENCH`.

NumPy at its best: its own normal generator, exponentials and products in blocks that stay in the cache, the same
program of shared steps as ours, quantiles by partition. Prints milliseconds and the ratio.
"""

import os
import statistics
import subprocess
import sys
import time

os.environ["OMP_NUM_THREADS"] = "1"
import numpy as np  # noqa: E402

BENCH, DRAWS, BLOCK, ROUNDS = sys.argv[1], 10_000, 2_000, 15
lines = subprocess.run([BENCH, "--listing"], capture_output=True, text=True, check=True).stdout.splitlines()
columns = [line.split() for line in lines if line.startswith("column")]
steps = [line.split() for line in lines if not line.startswith(("column", "load"))]
loads = [line.split()[1:] for line in lines if line.startswith("load")]


def multiples(pairs):
    """A sum of multiples of steps, the first of which is 1."""
    parts = [by if step == "0" else f"s{step}" if by == "1" else f"{by} * s{step}" for step, by in pairs]
    return " + ".join(parts) if parts else "0.0"


def product(amount, factor, by):
    """An amount times its factor, so many times."""
    return " * ".join(part for part in (by, f"s{amount}", f"s{factor}") if part not in ("1", "s0")) or "1.0"


code = ["def run(x, out, at):"]
for place, (kind, *words) in enumerate(steps):
    if kind == "one":
        continue
    if kind == "power":
        whole = " * ".join([f"x[{words[0]}]"] * abs(int(words[1])))
        made = whole if int(words[1]) > 0 else f"1.0 / ({whole})"
    elif kind == "per-one-plus":
        made = f"1.0 / (1.0 + x[{words[0]}])"
    elif kind == "per-one-minus":
        made = f"1.0 / (1.0 - x[{words[0]}])"
    elif kind == "times":
        made = f"s{words[0]} * s{words[1]}"
    else:
        made = multiples(zip(words[::2], words[1::2]))
    code.append(f"    s{place} = {made}")
for place, load in enumerate(loads):
    made = " + ".join(product(*three) for three in zip(load[::3], load[1::3], load[2::3])) or "0.0"
    code.append(f"    out[{place}, at:at + len(x[0])] = {made}")
scope = {"np": np}
exec(compile("\n".join(code), "program", "exec"), scope)
run = scope["run"]
medians, sigmas = (np.array([[float(column[at])] for column in columns if column[1] == "lognormal"]) for at in (2, 3))
normal = [n for n, column in enumerate(columns) if column[1] == "lognormal"]
others = [(n, [float(word) for word in column[2:-1]]) for n, column in enumerate(columns) if column[1] == "triangular"]


def drawn(random):
    out = np.empty((len(loads), DRAWS))
    x = np.empty((len(columns), BLOCK))
    for at in range(0, DRAWS, BLOCK):
        z = random.standard_normal((len(normal), BLOCK))
        z *= sigmas
        np.exp(z, out=z)
        z *= medians
        x[normal] = z
        for n, (low, median, high) in others:
            u = random.random(BLOCK)
            below = u < 0.5
            x[n] = median + np.where(below, low - median, high - median) * (1.0 - np.sqrt(2.0 * np.where(below, u, 1.0 - u)))
        run(x, out, at)
    ranks = [int(share * (DRAWS - 1)) for share in (0.05, 0.25, 0.5, 0.75, 0.95)]
    return np.partition(out, ranks, axis=1)[:, ranks]


random = np.random.Generator(np.random.SFC64(1))
ours = subprocess.Popen([BENCH, "--in-turn"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
theirs, nothing, edit = [], [], []
for turn in range(-1, ROUNDS):
    start = time.perf_counter()
    drawn(random)
    taken = (time.perf_counter() - start) * 1e3
    print("", file=ours.stdin, flush=True)
    first, second = map(float, ours.stdout.readline().split())
    if turn >= 0:  # The first turn warms both up.
        theirs.append(taken)
        nothing.append(first)
        edit.append(second)
middle = statistics.median
print(f"NumPy {np.__version__}: {middle(theirs):.1f} ms ({min(theirs):.1f} to {max(theirs):.1f})")
print(f"ours, from nothing: {middle(nothing):.1f} ms ({min(nothing):.1f} to {max(nothing):.1f}), {middle(theirs) / middle(nothing):.2f} times as fast")
print(f"ours, after an edit: {middle(edit):.1f} ms, {middle(theirs) / middle(edit):.1f} times as fast")
