"""The mark to beat: the same tables through reportlab, a plain Python PDF library.

Reads a document's data as JSON (argument 1), draws its table COUNT times
(argument 2), one PDF each, and prints the milliseconds per document. It draws
the table alone: no plot, no drawing, no tags, no embedded font. Run by
tests/bench/speed.rs; the tests do not need it.
"""

import io
import json
import sys
import time

from reportlab.lib import colors
from reportlab.lib.pagesizes import A4, A5
from reportlab.platypus import SimpleDocTemplate, Table, TableStyle


def rows_of(data):
    if "strip" in data:
        head = [(column["head"] + " " + column["sub"]).strip() for column in data["strip"]["columns"]]
        return A5, [head] + data["strip"]["rows"]
    rows = [["no.", "measure", "where", "expect", "reading", "OK", "not OK", "?"]]
    for group in data["groups"]:
        rows.append([group["title"], "", "", group["state"], "", "", "", ""])
        for row in group["rows"]:
            measure = row["title"] + "\n" + row["note"]
            where = row["pins"] + "\n" + row["view"]
            expect = row["expect"] + " " + row["unit"] + "\n" + row["expect_sub"] + "\n" + row["expect_sub2"]
            rows.append([row["number"], measure, where, expect, "", "", "", ""])
    return A4, rows


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        size, rows = rows_of(json.load(file))
    count = int(sys.argv[2])
    style = TableStyle([
        ("FONTSIZE", (0, 0), (-1, -1), 8),
        ("TOPPADDING", (0, 0), (-1, -1), 1),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1),
        ("LINEABOVE", (0, 0), (-1, 0), 1, colors.black),
        ("LINEBELOW", (0, 0), (-1, -1), 0.35, colors.black),
        ("ALIGN", (0, 0), (-1, -1), "RIGHT" if size == A5 else "LEFT"),
    ])
    best = None
    for _ in range(3):
        started = time.perf_counter()
        for _ in range(count):
            table = Table(rows, repeatRows=1)
            table.setStyle(style)
            SimpleDocTemplate(io.BytesIO(), pagesize=size, margin=20).build([table])
        each = (time.perf_counter() - started) * 1000 / count
        best = each if best is None else min(best, each)
    print(f"{best:.2f}")


if __name__ == "__main__":
    main()
