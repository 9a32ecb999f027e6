#!/usr/bin/python3
"""What tools/bench-screening measured, as a table and as a plot.

Usage: scaling.py FIGURES.tsv PLOT.svg THREADS

A line of the figures: entries, contender, seconds, entries a second, the same of processor time, peak memory in MB;
- for what is not known.
"""

import math
import sys
import textwrap
from typing import NamedTuple

NAMES = {"one": "screening, one thread", "all": "screening, all threads", "parse": "parsing alone",
         "numpy": "NumPy, one thread", "spreadsheet": "spreadsheet, five formulas"}
THIN_SPACE = "\u202f"


class Figures(NamedTuple):
    seconds: float
    rate: float
    processor_rate: float
    megabytes: float


def read(path):
    found = {}
    with open(path, encoding="utf-8") as file:
        for line in file:
            entries, contender, *figures = line.split("\t")
            found[contender, int(entries)] = Figures(*(math.nan if each.strip() == "-" else float(each)
                                                       for each in figures))
    return found


def shown(value):
    """Three digits that count but no more than three decimals, thousands apart."""
    if math.isnan(value):
        return "-"
    decimals = min(3, max(0, 2 - math.floor(math.log10(value)))) if value > 0 else 0
    return f"{value:,.{decimals}f}".replace(",", " ")


NOTE = (
    "All threads: {threads}. Seconds are those of whole processes, run in turn: the median of five up to 100 entries, "
    "of three up to 1 000, else of one. Parsing alone reads the same files with yaml-cpp. NumPy does the core of the "
    "same work, on the first 20 entries, its start left out. The spreadsheet calculates five formulas an entry once, "
    "where screening draws what is uncertain 512 times and looks for the best style; it is written beforehand."
)
BUSY = (
    "The machine was busy with something else: screening on one thread had a core for {share:.0%} of its seconds. "
    "Trust what is said of processor time alone."
)


def print_table(found, threads):
    counts = sorted({entries for _, entries in found})
    nothing = Figures(*[math.nan] * len(Figures._fields))

    def of(contender, entries):
        return found.get((contender, entries), nothing)

    def row(name, values):
        print(f"{name:<33}" + "".join(f"{each:>11}" for each in values))

    def block(title, field, contenders):
        print(f"\n{title}")
        for contender in contenders:
            row(f"  {NAMES[contender]}", (shown(getattr(of(contender, entries), field)) for entries in counts))

    def ratios(title, field, contender, yardsticks):
        print(f"\n{title}")
        for yardstick in yardsticks:
            row(f"  {NAMES[yardstick]}",
                (shown(getattr(of(contender, entries), field) / getattr(of(yardstick, entries), field))
                 for entries in counts))

    row("Entries", (f"{entries:,}".replace(",", " ") for entries in counts))
    block("Seconds", "seconds", ("one", "all", "parse", "spreadsheet"))
    block("Entries a second", "rate", ("one", "all", "parse", "numpy", "spreadsheet"))
    block("Entries a second of processor time", "processor_rate", ("one", "all", "parse", "numpy", "spreadsheet"))
    block("Peak memory in MB", "megabytes", ("one", "all", "parse", "spreadsheet"))
    ratios("Screening on all threads: times as many entries a second as", "rate", "all", ("one",))
    ratios("Screening on one thread: times as many entries a second of processor time as", "processor_rate", "one",
           ("parse", "numpy", "spreadsheet"))
    print()
    print(textwrap.fill(NOTE.format(threads=threads), 90))
    # One thread that has the machine to itself is at work all the time, but for its start.
    shares = [figures.rate / figures.processor_rate for (contender, _), figures in found.items()
              if contender == "one" and figures.seconds > 1]
    if shares and min(shares) < 0.9:
        print(textwrap.fill(BUSY.format(share=min(shares)), 90))


# The plot. Its look is that of the pages that the program writes.
STYLE = """
svg { --paper: #f8f5ee; --ink: #1d2a31; --quiet: #54616a; --hair: #e2dccd; --edge: #7b868b;
      --screening: #a93a17; --parse: #2f6b62; --numpy: #3a5488; --spreadsheet: #7a5b00; }
@media (prefers-color-scheme: dark) {
  svg { --paper: #11191d; --ink: #e9e4d6; --quiet: #a7b2b5; --hair: #26333a; --edge: #75848b;
        --screening: #ff9d78; --parse: #7fc1b4; --numpy: #9db8f0; --spreadsheet: #dfc066; }
}
text { font: 14px system-ui, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", sans-serif; fill: var(--ink); }
.title { font-size: 19px; font-family: "Iowan Old Style", Palatino, "URW Palladio L", P052, Georgia, serif; }
.quiet { fill: var(--quiet); font-size: 13px; }
.end { text-anchor: end; } .middle { text-anchor: middle; }
.paper { fill: var(--paper); }
.hair { stroke: var(--hair); } .edge { stroke: var(--edge); }
.line { fill: none; stroke-width: 2.25; stroke-linejoin: round; stroke-linecap: round; }
.leader { fill: none; stroke-width: 1; opacity: .6; }
.one, .all { stroke: var(--screening); } .one.line { stroke-dasharray: 6 5; }
.parse { stroke: var(--parse); } .numpy { stroke: var(--numpy); } .spreadsheet { stroke: var(--spreadsheet); }
.mark { stroke-width: 2.25; fill: var(--paper); } .all.mark { fill: var(--screening); }
"""
WIDTH, HEIGHT = 840, 500
LEFT, RIGHT, TOP, BOTTOM = 78, 550, 88, 430
LABEL_HEIGHT = 20


class Scale:
    """A logarithmic axis, with its decades."""

    def __init__(self, low, high, start, end):
        self.low, self.high = math.log10(low), math.log10(high)
        self.start, self.end = start, end

    def at(self, value):
        return self.start + (math.log10(value) - self.low) / (self.high - self.low) * (self.end - self.start)

    def decades(self):
        return [10.0 ** power for power in range(math.ceil(self.low), math.floor(self.high) + 1)]


def decade_below(value):
    return 10.0 ** math.floor(math.log10(value))


def decade_above(value):
    return 10.0 ** math.ceil(math.log10(value))


def apart(heights):
    """The same heights in the same order, moved as little as keeps labels from lying on one another."""
    groups = []  # each a middle and how many labels
    for height in heights:
        groups.append((height, 1))
        while len(groups) > 1:
            (above, count_above), (below, count_below) = groups[-2:]
            if below - above >= LABEL_HEIGHT * (count_above + count_below) / 2:
                break
            count = count_above + count_below
            groups[-2:] = [((above * count_above + below * count_below) / count, count)]
    return [middle + (index - (count - 1) / 2) * LABEL_HEIGHT for middle, count in groups for index in range(count)]


def mark(contender, x, y):
    if contender in ("one", "all"):
        return f'<circle class="mark {contender}" cx="{x:.1f}" cy="{y:.1f}" r="4.5"/>'
    corners = {"parse": [(-4, -4), (4, -4), (4, 4), (-4, 4)], "numpy": [(0, -5.5), (5, 4), (-5, 4)],
               "spreadsheet": [(0, -5.5), (5.5, 0), (0, 5.5), (-5.5, 0)]}[contender]
    points = " ".join(f"{x + right:.1f},{y + down:.1f}" for right, down in corners)
    return f'<polygon class="mark {contender}" points="{points}"/>'


def plot(found):
    lines = {}
    for (contender, entries), figures in sorted(found.items(), key=lambda each: each[0][1]):
        lines.setdefault(contender, []).append((entries, figures.rate))
    counts = [entries for line in lines.values() for entries, _ in line]
    rates = [rate for line in lines.values() for _, rate in line]
    fewest = decade_below(min(counts))
    across = Scale(fewest, max(decade_above(max(counts)), 10 * fewest), LEFT, RIGHT)
    up = Scale(decade_below(min(rates)), 1.5 * max(rates), BOTTOM, TOP)

    def number(value):
        return f"{value:,.0f}".replace(",", THIN_SPACE) if value >= 10 else f"{value:.2g}"

    def in_words(line):
        return ", ".join(f"{number(rate)} at {number(entries)}" for entries, rate in line)

    words = "; ".join(f"{NAMES[contender]}: {in_words(line)}" for contender, line in lines.items())
    parts = [f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" width="{WIDTH}" '
             f'height="{HEIGHT}" role="img" aria-labelledby="title words">',
             '<title id="title">Entries a second by the number of entries</title>',
             f'<desc id="words">{words}.</desc>', f"<style>{STYLE}</style>",
             f'<rect class="paper" width="{WIDTH}" height="{HEIGHT}"/>',
             '<text class="title" x="24" y="38">How screening grows with the number of entries</text>',
             '<text class="quiet" x="24" y="66">Entries a second</text>']
    for rate in up.decades():
        y = up.at(rate)
        parts.append(f'<path class="hair" d="M{LEFT} {y:.1f}H{RIGHT}"/>')
        parts.append(f'<text class="quiet end" x="{LEFT - 10}" y="{y + 4.5:.1f}">{number(rate)}</text>')
    for entries in across.decades():
        x = across.at(entries)
        parts.append(f'<path class="edge" d="M{x:.1f} {BOTTOM}v6"/>')
        parts.append(f'<text class="quiet middle" x="{x:.1f}" y="{BOTTOM + 24}">{number(entries)}</text>')
    parts.append(f'<path class="edge" d="M{LEFT} {BOTTOM}H{RIGHT}"/>')
    middle = (LEFT + RIGHT) / 2
    parts.append(f'<text class="quiet middle" x="{middle}" y="{BOTTOM + 50}">Entries screened at once</text>')

    ends = sorted((up.at(line[-1][1]), contender) for contender, line in lines.items())
    for (height, contender), label in zip(ends, apart([height for height, _ in ends])):
        points = [(across.at(entries), up.at(rate)) for entries, rate in lines[contender]]
        last = points[-1][0]
        parts.append(f'<path class="leader {contender}" d="M{last + 8:.1f} {height:.1f}L{RIGHT + 14} {label:.1f}h6"/>')
        parts.append(f'<path class="line {contender}" d="M{"L".join(f"{x:.1f} {y:.1f}" for x, y in points)}"/>')
        parts.extend(mark(contender, x, y) for x, y in points)
        parts.append(f'<text x="{RIGHT + 26}" y="{label + 5:.1f}">{NAMES[contender]}'
                     f'<tspan class="quiet" dx="8">{number(lines[contender][-1][1])}</tspan></text>')
    return "\n".join(parts) + "\n</svg>\n"


def main():
    if len(sys.argv) != 4:
        sys.exit(__doc__.split("\n\n")[1])
    figures, picture, threads = sys.argv[1:]
    found = read(figures)
    print_table(found, threads)
    with open(picture, "w", encoding="utf-8") as file:
        file.write(plot(found))


main()
