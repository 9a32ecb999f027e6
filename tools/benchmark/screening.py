#!/usr/bin/python3
"""The yardstick of screening: the core of the same computation, as vectorized as NumPy lets it be.

Usage: screening.py ENTRIES [FIRST]     a folder of recipe files, of which only the first so many are taken

For each entry: the file is read with PyYAML's parser in C; 512 draws of what is uncertain give gravity,
attenuation, alcohol, bitterness (Tinseth) and color (Morey); forty levels come from these by straight lines (of
made-up slopes against made-up limits, as only their cost counts); all styles are held against all draws at once:
distance outside each range and level, chance of notice, points. It models less than the program does (one utilization
for all hops, no steps of mash, hop stand or dry hop, no yeast character, nothing customary), so it is a lower bound of
what the same work costs in NumPy.
"""

import pathlib
import re
import sys
import time

import numpy
import yaml

DRAWS = 512
LEVELS = 40
HERE = pathlib.Path(__file__).resolve().parents[2]


def amount(text, default=0.0):
    found = re.match(r"[-+]?[0-9.]+", str(text))
    return float(found.group()) if found else default


def mass_in_kilograms(text):
    value = amount(text)
    text = str(text)
    unit = next((unit for unit in ("kg", "lb", "oz") if unit in text), "g")
    return value * {"kg": 1, "lb": 0.4536, "oz": 0.02835, "g": 0.001}[unit]


def span(text, lowest, highest):
    if not str(text)[:1].isdigit():
        return lowest, highest
    ends = [amount(end, highest) for end in str(text).split("..")]
    return ends[0], ends[-1]


def read(path):
    with open(path, encoding="utf-8") as file:
        return yaml.load(file, Loader=yaml.CSafeLoader)


def styles_of_the_guide():
    ranges = []
    for path in sorted((HERE / "styles" / "bjcp-2021").glob("*.yaml")):
        given = read(path).get("ranges") or {}
        ranges.append([span(given.get(key, ""), low, high) for key, low, high in (
            ("original_gravity", 1.0, 1.2), ("final_gravity", 0.99, 1.1), ("alcohol", 0, 20),
            ("bitterness", 0, 200), ("color", 0, 60))])
    return numpy.array(ranges)


class Judge:
    def __init__(self, ranges, random):
        self.low = ranges[:, :, 0][:, :, None]
        self.high = ranges[:, :, 1][:, :, None]
        self.steps = numpy.array([0.008, 0.004, 1.0, 6.0, 2.0])[None, :, None]
        self.lines = random.normal(0, 0.5, (LEVELS, 5))
        middle = random.uniform(1, 5, (len(ranges), LEVELS, 1))
        self.level_low = middle - 1
        self.level_high = middle + 1
        self.deviates = random.standard_normal((12, DRAWS))

    def numbers(self, recipe):
        z = self.deviates / 1.28
        volume = amount(recipe.get("volume"), 20) * (1 + 0.02 * z[0])
        efficiency = amount(recipe.get("efficiency"), 72) / 100 * (1 + 0.05 * z[1])
        grist = recipe.get("grist", [])
        masses = numpy.array([mass_in_kilograms(each.get("mass", "0 kg")) for each in grist])
        colors = numpy.array([amount(each.get("color"), 4) for each in grist])
        extract = masses.sum() * 0.8 * efficiency
        plato = 100 * extract / (volume * 1.04 + extract * 0.4)
        original = 1 + plato / (258.6 - plato * 227.1 / 258.2)
        attenuation = numpy.clip(0.75 + 0.04 * z[2], 0.3, 1)
        final = 1 + (original - 1) * (1 - attenuation)
        alcohol = 131.25 * (original - final)
        bitterness = numpy.zeros(DRAWS)
        for index, hop in enumerate(recipe.get("hops", [])):
            grams = 1000 * mass_in_kilograms(hop.get("mass", "0 g"))
            alpha = amount(hop.get("alpha"), 6) / 100 * (1 + 0.1 * z[3 + index % 8])
            minutes = amount(hop.get("time"), 15) if hop.get("add") in ("boil", None) else 0
            utilization = 1.65 * 0.000125 ** (original - 1) * (1 - numpy.exp(-0.04 * minutes)) / 4.15
            bitterness += utilization * alpha * grams * 1000 / volume
        color_units = (masses * colors).sum() * 2.2046 / (volume / 3.785)
        color = 1.4922 * color_units ** 0.6859 * (1 + 0.1 * z[11])
        return numpy.stack([original, final, alcohol, bitterness, color])

    def best(self, recipe):
        numbers = self.numbers(recipe)
        outside = numpy.maximum(numbers - self.high, 0) + numpy.maximum(self.low - numbers, 0)
        scaled = (numbers - numbers.mean(axis=1, keepdims=True)) / self.steps[0] + 3
        levels = self.lines @ scaled + 3
        beyond = numpy.maximum(levels - self.level_high, 0) + numpy.maximum(self.level_low - levels, 0)
        steps = numpy.concatenate([outside / self.steps, beyond], axis=1)
        points = steps / (1 + numpy.exp(-3 * (steps - 1)))
        return points.sum(axis=1).mean(axis=1).argmin()


def main():
    folder = pathlib.Path(sys.argv[1])
    files = sorted(folder.glob("*.yaml"))[: int(sys.argv[2]) if len(sys.argv) > 2 else None]
    judge = Judge(styles_of_the_guide(), numpy.random.default_rng(1))
    start, processor_start = time.perf_counter(), time.process_time()
    for path in files:
        judge.best(read(path))
    seconds, processor_seconds = time.perf_counter() - start, time.process_time() - processor_start
    print(f"{len(files)} entries, {seconds:.2f} s, {len(files) / seconds:.1f} entries a second, "
          f"{len(files) / processor_seconds:.1f} a second of processor time")


main()
