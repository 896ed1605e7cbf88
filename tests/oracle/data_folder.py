"""A folder of data read by Python's own csv, json and hashlib: cells, lengths and hashes, and the hash of the orders."""

import csv
import hashlib
import json
import tempfile
from pathlib import Path

from faceload import Count, program

count = Count("folders of data", at_least=10_000)
for order in (["stop"], ["county", "--per", "m2-year"], ["custom", "blades", "--boundary", "face-with-blank"]):
    with tempfile.TemporaryDirectory() as folder:
        program("FACELOAD", "report", *order, "--draws", "100", "--data", folder)
        package = json.loads(Path(folder, "datapackage.json").read_text())
        record = json.loads(Path(folder, "data.json").read_text())
        for resource in package["resources"]:
            path = Path(folder, resource["path"])
            written = path.read_bytes()
            count.holds(f"{path.name}: length", resource["bytes"] == len(written))
            count.holds(f"{path.name}: hash", resource["hash"] == "sha256:" + hashlib.sha256(written).hexdigest())
            if resource.get("type") != "table":
                continue
            with path.open(newline="") as file:
                rows = list(csv.DictReader(file, strict=True))
            kept = record["rows"][resource["name"]]
            count.holds(f"{path.name}: rows", len(rows) == len(kept))
            for row, other in zip(rows, kept):
                for name, cell in row.items():
                    value = other[name]
                    same = (
                        cell == ""
                        if value is None
                        else cell == str(value).lower()
                        if isinstance(value, bool)
                        else float(cell) == value
                        if isinstance(value, (int, float))
                        else cell == (f"'{value}" if value[0] in "=+-@\t\r\n" else value)
                    )
                    count.holds(f"{path.name}, {name}: `{cell}` here, {value!r} there", same)
        # An order holds texts, flags and whole numbers: their canonical form is that of json with sorted keys.
        orders = [one["order"] for one in record["made_from"]["orders"]]
        canonical = json.dumps(orders, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        count.holds("the hash of the orders", record["sha_256"]["order"] == hashlib.sha256(canonical.encode()).hexdigest())
count.end()
