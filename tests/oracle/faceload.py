"""What faceload says: its tables, its answers about units, and a count of what was compared with others."""

import csv
import math
import os
import pathlib
import subprocess
import sys

TOP = pathlib.Path(__file__).resolve().parents[2]


def rows(table):
    """The rows of a table of factors/, each a dictionary by column."""
    folder = pathlib.Path(os.environ.get("FACELOAD_TABLES", TOP / "factors"))
    with open(folder / table, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def program(variable, *words, text=""):
    """The lines that a program of faceload writes; the variable says where it was built."""
    ran = subprocess.run([os.environ[variable], *words], input=text, capture_output=True, text=True, encoding="utf-8")
    if ran.returncode != 0:
        sys.exit(f"{variable}: exit {ran.returncode}: {ran.stderr.strip()}")
    return ran.stdout.splitlines()


def in_units(pairs):
    """How many of the second unit one of the first is, for each pair, through the code that reads the tables."""
    lines = program("FACELOAD_UNITS", text="".join(f"{of}\t{unit}\n" for of, unit in pairs))
    if len(lines) != len(pairs):
        sys.exit(f"{len(lines)} answers to {len(pairs)} questions about units")
    return [None if line == "none" else float(line) for line in lines]


class Count:
    """Compares, remembers what differs, and at the end fails on it, or on having compared too little."""

    def __init__(self, subject, at_least):
        self.subject, self.at_least, self.compared, self.differs = subject, at_least, 0, []

    def near(self, what, ours, theirs, within):
        """Both the same, within a relative distance."""
        self.compared += 1
        if ours is None or not math.isclose(float(ours), float(theirs), rel_tol=within, abs_tol=0.0):
            self.differs.append(f"{what}: {ours} here, {theirs} there")

    def holds(self, what, said):
        """Something that must be so."""
        self.compared += 1
        if not said:
            self.differs.append(what)

    def end(self):
        """Says what was compared, or stops with what differs."""
        if self.compared < self.at_least:
            self.differs.append(f"only {self.compared} compared where at least {self.at_least} were wanted")
        if self.differs:
            sys.exit(f"{self.subject}:\n" + "\n".join(f"  {line}" for line in self.differs))
        print(f"{self.subject}: {self.compared} compared")
