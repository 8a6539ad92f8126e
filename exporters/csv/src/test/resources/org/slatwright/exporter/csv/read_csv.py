"""Prints what Python's csv module reads from a file, cell by cell: ASCII 31 after each, 30 after a row."""

import csv
import sys

with open(sys.argv[1], encoding="utf-8-sig", newline="") as file:
    for row in csv.reader(file, strict=True):
        sys.stdout.write("".join(cell + "\x1f" for cell in row) + "\x1e")
