"""The mark to beat: the same tables through reportlab, a plain Python PDF library.

Reads documents' data as JSON (arguments 2 and on), draws their tables in turn
COUNT times (argument 1), one PDF each, and prints the milliseconds per document. It draws
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
            row = {key: value if value is not None else "" for key, value in row.items()}
            measure = row["title"] + "\n" + row["note"]
            where = row["pins"] + "\n" + row["view"]
            expect = row["expect"] + " " + row["unit"] + "\n" + row["expect_sub"] + "\n" + row["expect_sub2"]
            rows.append([row["number"], measure, where, expect, "", "", "", ""])
    return A4, rows


def main():
    count = int(sys.argv[1])
    documents = []
    for path in sys.argv[2:]:
        with open(path, encoding="utf-8") as file:
            documents.append(rows_of(json.load(file)))
    best = None
    for _ in range(3):
        started = time.perf_counter()
        for number in range(count):
            size, rows = documents[number % len(documents)]
            table = Table(rows, repeatRows=1)
            table.setStyle(style_of(size))
            SimpleDocTemplate(io.BytesIO(), pagesize=size, margin=20).build([table])
        each = (time.perf_counter() - started) * 1000 / count
        best = each if best is None else min(best, each)
    print(f"{best:.2f}")


def style_of(size):
    return TableStyle([
        ("FONTSIZE", (0, 0), (-1, -1), 8),
        ("TOPPADDING", (0, 0), (-1, -1), 1),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1),
        ("LINEABOVE", (0, 0), (-1, 0), 1, colors.black),
        ("LINEBELOW", (0, 0), (-1, -1), 0.35, colors.black),
        ("ALIGN", (0, 0), (-1, -1), "RIGHT" if size == A5 else "LEFT"),
    ])


if __name__ == "__main__":
    main()
