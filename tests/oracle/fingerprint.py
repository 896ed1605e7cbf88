"""The fingerprint of the tables, computed anew from the files by the rule that factors/README.md states."""

import hashlib

from faceload import Count, program, rows

count = Count("fingerprint of the tables", at_least=300)
lines = []
for table in ("practice.csv", "factors.csv", "carriers.csv", "sources.csv", "sign-codes.csv", "solvents.csv"):
    for row in rows(table):
        lines.append("\t".join([table, *row.values()]).encode())
        count.holds(f"{table}: a row of another length", None not in row and None not in row.values())
text = b"".join(line + b"\n" for line in sorted(lines))
[ours] = program("FACELOAD", "check", "--fingerprint")
count.holds(f"{ours} here, {hashlib.sha256(text).hexdigest()} there", ours == hashlib.sha256(text).hexdigest())
count.end()
