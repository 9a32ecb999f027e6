#!/usr/bin/python3
"""The yardstick of screening: the spreadsheet that a club would calculate its entries with.

Usage: spreadsheet.py write ENTRIES SHEET.fods     a folder of recipe files as one sheet, a row an entry
       spreadsheet.py check ENTRIES CSV            whether the calculated sheet has what it should have

A row holds what the recipe file says and five formulas: original gravity, final gravity, alcohol, bitterness and
color. Their results are not in the file, so that whoever opens it has to calculate them.
"""

import csv
import math
import pathlib
import re
import sys
from typing import NamedTuple

HERE = pathlib.Path(__file__).resolve().parents[2]

# Points of gravity that a kilogram of sugar gives in a liter of wort: 46.2 for a pound in a US gallon, common practice.
POINTS = 386
# Percent by volume for each unit of gravity that goes, common practice.
ALCOHOL = 131.25
# Tinseth, Hop utilization, 1997.
BIGNESS, GRAVITY, RATE, FULL = 1.65, 0.000125, 0.04, 4.15
# Morey, Hop and malt color in the beer, 1995: SRM of Lovibond times pounds in a US gallon.
MOREY, MOREY_POWER = 1.4922, 0.6859
POUNDS_IN_A_GALLON = 8.345

# What stands in for what a recipe leaves out: working values.
VOLUME, EFFICIENCY, ATTENUATION, YIELD, LOVIBOND, ALPHA, MINUTES = 20, 0.72, 0.76, 0.78, 3, 0.06, 60

UNITS = {"kg": 1, "g": 0.001, "lb": 0.45359, "oz": 0.02835, "L": 1, "gal": 3.7854}
QUANTITY = re.compile(r"([\d.]+) (kg|g|lb|oz|L|gal)\b")
FIELD = re.compile(r"\b(\w+): ([^,{}\n]+)")
PART = re.compile(r"^(\w+):((?: .*)?\n(?:  .*\n)*)", re.MULTILINE)
ITEM = re.compile(r"- \{(.*)\}")
KNOWN = re.compile(r"name: ([^,]+),.* extract: ([\d.]+).* moisture: ([\d.]+).* color: ([\d.]+)")


class Fermentable(NamedTuple):
    kilograms: float
    extract: float
    lovibond: float
    mashed: int


class Hop(NamedTuple):
    kilograms: float
    alpha: float
    minutes: float


class Entry(NamedTuple):
    volume: float
    efficiency: float
    attenuation: float
    grist: list
    hops: list


def quantity(text):
    return sum(float(number) * UNITS[unit] for number, unit in QUANTITY.findall(text))


def number(text, default, divisor=1):
    found = re.match(r"[\d.]+", text)
    return float(found.group()) / divisor if found else default


def known_fermentables():
    text = (HERE / "recipes" / "ingredients" / "fermentables.yaml").read_text(encoding="utf-8")
    # The table gives EBC = 2.65 Lovibond - 1.2, as it says itself.
    return {name: (float(extract) / 100 * (1 - float(moisture) / 100), (float(color) + 1.2) / 2.65)
            for name, extract, moisture, color in KNOWN.findall(text)}


def items(part):
    return [dict(FIELD.findall(item)) for item in ITEM.findall(part)]


def fermentable(item, known):
    extract, lovibond = known.get(next(iter(item.values())), (YIELD, LOVIBOND))
    return Fermentable(quantity(item.get("mass", "")), extract, number(item.get("color", ""), lovibond),
                       int("malt" in item))


def hop(item):
    return Hop(quantity(item.get("mass", "")), number(item.get("alpha", ""), ALPHA, 100),
               number(item.get("time", ""), MINUTES))


def entry_of(text, known):
    parts = dict(PART.findall(text))
    attenuation = dict(FIELD.findall(parts.get("yeast", ""))).get("attenuation", "")
    return Entry(quantity(parts.get("volume", "")) or VOLUME,
                 number(parts.get("efficiency", "").strip(), EFFICIENCY, 100), number(attenuation, ATTENUATION, 100),
                 [fermentable(item, known) for item in items(parts.get("grist", ""))],
                 [hop(item) for item in items(parts.get("hops", "")) if item.get("add", "boil") == "boil"])


def entries_in(folder):
    known = known_fermentables()
    return [entry_of(path.read_text(encoding="utf-8"), known) for path in sorted(pathlib.Path(folder).glob("*.yaml"))]


def figures(entry):
    """The five formulas, which the sheet has to agree with."""
    extract = sum(each.kilograms * each.extract * (entry.efficiency if each.mashed else 1) for each in entry.grist)
    original = 1 + POINTS / 1000 * extract / entry.volume
    final = 1 + (original - 1) * (1 - entry.attenuation)
    alpha = sum(each.kilograms * each.alpha * (1 - math.exp(-RATE * each.minutes)) / FULL for each in entry.hops)
    bitterness = BIGNESS * GRAVITY ** (original - 1) * alpha * 1e6 / entry.volume
    load = sum(each.kilograms * each.lovibond for each in entry.grist) / entry.volume
    color = MOREY * (POUNDS_IN_A_GALLON * load) ** MOREY_POWER
    return original, final, ALCOHOL * (original - final), bitterness, color


def column(index):
    return (column(index // 26 - 1) if index >= 26 else "") + chr(ord("A") + index % 26)


class Layout:
    """Volume, efficiency, attenuation; of all fermentables the masses, of all the extracts and so on; then hops."""

    def __init__(self, entries):
        self.fermentables = max(1, *(len(entry.grist) for entry in entries))
        self.hops = max(1, *(len(entry.hops) for entry in entries))

    def cells(self, entry):
        return [entry.volume, entry.efficiency, entry.attenuation,
                *self.side_by_side(entry.grist, self.fermentables, Fermentable._fields),
                *self.side_by_side(entry.hops, self.hops, Hop._fields)]

    @staticmethod
    def side_by_side(things, places, fields):
        for field in fields:
            yield from (getattr(each, field) for each in things)
            yield from [None] * (places - len(things))

    def formulas(self, row):
        at = 0

        def next_cells(count):
            nonlocal at
            first, at = at, at + count
            ends = [f".{column(first)}{row}", f".{column(at - 1)}{row}"]
            return f"[{':'.join(ends[:count])}]"

        volume, efficiency, attenuation = (next_cells(1) for _ in range(3))
        mass, extract, lovibond, mashed = (next_cells(self.fermentables) for _ in Fermentable._fields)
        hop_mass, alpha, minutes = (next_cells(self.hops) for _ in Hop._fields)
        original, final = (next_cells(1) for _ in range(2))
        return [
            f"1+{POINTS / 1000}*SUMPRODUCT({mass};{extract};1-{mashed}*(1-{efficiency}))/{volume}",
            f"1+({original}-1)*(1-{attenuation})",
            f"{ALCOHOL}*({original}-{final})",
            f"{BIGNESS}*{GRAVITY:f}^({original}-1)"
            f"*SUMPRODUCT({hop_mass};{alpha};1-EXP(-{RATE}*{minutes}))/{FULL}*1000000/{volume}",
            f"{MOREY}*({POUNDS_IN_A_GALLON}*SUMPRODUCT({mass};{lovibond})/{volume})^{MOREY_POWER}",
        ]


def write(entries, path):
    layout = Layout(entries)
    names = "urn:oasis:names:tc:opendocument:xmlns:"
    with open(path, "w", encoding="utf-8") as file:
        file.write('<?xml version="1.0" encoding="UTF-8"?>\n'
                   f'<office:document xmlns:office="{names}office:1.0" xmlns:table="{names}table:1.0" '
                   f'xmlns:of="{names}of:1.2" office:version="1.2" '
                   'office:mimetype="application/vnd.oasis.opendocument.spreadsheet">\n'
                   '<office:body><office:spreadsheet><table:table table:name="entries">\n')
        for row, entry in enumerate(entries, 1):
            values = ("<table:table-cell/>" if value is None else
                      f'<table:table-cell office:value-type="float" office:value="{value:.10g}"/>'
                      for value in layout.cells(entry))
            formulas = (f'<table:table-cell table:formula="of:={formula}"/>' for formula in layout.formulas(row))
            file.write(f"<table:table-row>{''.join(values)}{''.join(formulas)}</table:table-row>\n")
        file.write("</table:table></office:spreadsheet></office:body></office:document>\n")


def check(entries, path):
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.reader(file))
    if len(rows) != len(entries):
        sys.exit(f"{path}: {len(rows)} rows for {len(entries)} entries")
    for number_of_row, (row, entry) in enumerate(zip(rows, entries), 1):
        try:
            calculated = [float(cell) for cell in row[-5:]]
        except ValueError:
            calculated = []
        # The sheet shows rounded numbers.
        agrees = len(calculated) == 5 and all(
            math.isfinite(shown) and math.isclose(shown, expected, rel_tol=1e-7)
            for shown, expected in zip(calculated, figures(entry)))
        if not agrees:
            sys.exit(f"{path}:{number_of_row}: {row[-5:]} instead of {figures(entry)}")


def main():
    if len(sys.argv) != 4 or sys.argv[1] not in ("write", "check"):
        sys.exit(__doc__.split("\n\n")[1])
    entries = entries_in(sys.argv[2])
    (write if sys.argv[1] == "write" else check)(entries, sys.argv[3])


main()
