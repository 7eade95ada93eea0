# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Made-up dials such as compression and leak-down testers have, each family with a face of its own: print, sectors,
sweeps and needles common on them (common practice, no source). Colours are BGR. Angles: degrees clockwise from 12 o'clock."""

import numpy as np

INK, PAPER, IVORY, SILVER = (22, 22, 24), (238, 240, 240), (205, 228, 238), (196, 200, 202)
COAL, SLATE, CHALK, AMBER = (26, 25, 24), (74, 58, 44), (228, 230, 230), (30, 150, 245)
RED, ORANGE, GREEN, LIME, YELLOW, BLUE, SKY = (40, 36, 205), (20, 95, 240), (72, 140, 44), (80, 190, 120), (40, 205, 240), (165, 90, 30), (215, 160, 80)

PRINT = ["COMPRESSION", "CYLINDER LEAKAGE", "TEST PRESSURE", "ENGINE TESTER", "MADE FOR GARAGES", "kPa", "PSI", "BAR", "PETROL", "DIESEL",
         "SET", "DO NOT OIL", "CLASS 2.5", "M-114", "WORKSHOP", "CRANK 6 TURNS", "LOW", "GOOD"]

# Families whose photos are looked at while the reader is mended; of the others only the totals are.
OWN = ["coalface", "sectors", "psibar", "leakband", "vacuum", "fan", "psibar-inner"]


def scale(unit, low, high, divisions, major_every, middle_every=0, **more):
    out = dict(unit=unit, min=low, max=high, divisions=divisions, major_every=major_every, middle_every=middle_every, ring=0.86,
               outwards=False, colour=INK, arcs=[], minor=0.05, major=0.1, width=0.010, bold=1.6, wedge=1.0, dots=False, font=0,
               figure_every=1, figure_height=0.085, figures_at=-0.2)
    return out | more


def pointer(shape, colour, tip, width=0.08, tail="bar", back=0.25, **more):
    return dict(shape=shape, colour=colour, width=width, tip=tip, head=0.18, tail_shape=tail, tail=back, ridge=False,
                tip_colour=None, tail_colour=None) | more


def sector(start, end, colour, inner, outer):
    return {"from": start, "to": end, "colour": colour, "inner": inner, "outer": outer}


class Chance:
    def __init__(self, random):
        self.random = random
        self.between = random.uniform

    def of(self, choices):
        return choices[int(self.random.integers(0, len(choices)))]

    def is_so(self, share):
        return self.random.uniform() < share

    def words(self, count, colours, pivot=0.0):
        """Print in the middle of the face, where there is room for it."""
        places = [(0, 0.30), (0, 0.42), (0, -0.27), (0, 0.53), (-0.27, 0.2), (0.27, 0.2), (0, -0.40)]
        self.random.shuffle(places)
        return [dict(text=self.of(PRINT), at=(x, y + 0.5 * pivot), height=self.between(0.03, 0.07), colour=self.of(colours),
                     font=int(self.random.integers(0, 5))) for x, y in places[:count]]

    def curved(self, radius, where, colours):
        return dict(text=self.of(PRINT), radius=radius, angle=where, height=self.between(0.045, 0.07), colour=self.of(colours),
                    font=self.of([0, 1, 2]))


def base(c, face, start, sweep, scales, needle, **more):
    kind = c.of(["boot", "boot", "chrome", "plain"])
    out = dict(face=face, start=start, sweep=sweep, pivot=(0.0, 0.0), scales=scales, needle=needle, held_needle=None, tell_inner=False,
               unit=scales[0]["unit"], words=[], curved=[], panels=[], blobs=[], zones=[], figures_lean=False, outer_ring=None,
               outer_ring_depth=-0.02, screws=[], needle_height=c.between(0.02, 0.09), cap=c.between(0.06, 0.15),
               cap_colour=c.of([INK, (125, 128, 132), needle["colour"], (60, 130, 165)]),
               stop_pin=c.between(0.5, 0.8) if c.is_so(0.5) else None, bezel_kind="rubber" if kind == "boot" else kind,
               bezel={"boot": c.of([(28, 28, 30), (35, 30, 130), (20, 90, 200), (110, 60, 20)]), "chrome": (168, 170, 172),
                      "plain": c.of([(40, 40, 42), (120, 124, 128), (70, 130, 160)])}[kind],
               case_radius=c.between(1.2, 1.38) if kind == "boot" else c.between(1.06, 1.18), ribs=int(c.between(12, 50)),
               case_screws=[c.between(0, 120) + 120 * k for k in range(3)] if c.is_so(0.25) else [], rim_height=c.between(0.03, 0.2),
               rim_shade=c.between(0, 0.35), flange=c.is_so(0.15))
    return out | more


# -- faces looked at --

def coalface(c):
    """Black face, white print, one scale to 300 psi, red or white lance."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 60, 10, 2), ("psi", 300, 60, 5, 0), ("psi", 250, 50, 10, 2), ("bar", 20, 100, 10, 5),
                                                ("kPa", 2000, 40, 4, 2), ("psi", 300, 150, 10, 5)])
    lean = c.is_so(0.3)
    s = scale(unit, 0, top, divisions, major, middle, colour=CHALK, ring=c.between(0.84, 0.93), minor=c.between(0.04, 0.06),
              major=c.between(0.09, 0.13), width=c.between(0.007, 0.011), bold=c.between(1.4, 2.6), figures_at=-c.between(0.2, 0.24),
              figure_height=c.between(0.07, 0.1), font=c.of([0, 1, 2]))
    n = pointer(c.of(["lance", "taper", "baton"]), c.of([RED, CHALK, ORANGE]), c.between(0.72, 0.9), c.between(0.05, 0.09),
                c.of(["bar", "arrow", "disc"]), c.between(0.18, 0.35))
    return base(c, c.of([COAL, SLATE, (40, 26, 22)]), -135, 270, [s], n, words=c.words(2, [CHALK, RED, SKY]), figures_lean=lean,
                curved=[c.curved(0.45, 0, [CHALK])] if c.is_so(0.5) else [])


def sectors(c):
    """White face with broad red, yellow and green sectors under the scale."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 60, 10, 5), ("bar", 20, 40, 4, 2), ("bar", 25, 50, 10, 5), ("psi", 200, 40, 4, 2)])
    ring = c.between(0.8, 0.9)
    s = scale(unit, 0, top, divisions, major, middle, ring=ring, minor=0.045, major=c.between(0.08, 0.11), width=c.between(0.008, 0.014),
              arcs=c.of([[], [0], [0, 1]]), figures_at=-c.between(0.2, 0.23), font=c.of([0, 2, 3]))
    a, b = c.between(0.25, 0.4), c.between(0.5, 0.7)
    inner, outer = c.of([(0.3, ring), (0.5, ring - 0.1), (ring, ring + 0.08), (ring - 0.14, ring + 0.02)])
    zones = [sector(0, a, c.of([RED, (90, 90, 225)]), inner, outer), sector(a, b, c.of([YELLOW, SILVER]), inner, outer),
             sector(b, 1, c.of([GREEN, LIME]), inner, outer)]
    n = pointer(c.of(["taper", "thin", "lance"]), c.of([INK, INK, RED]), c.between(0.66, 0.86), c.between(0.05, 0.09), c.of(["bar", "fan", "arrow", "none"]), 0.3)
    sweep = c.of([270, 240])
    return base(c, PAPER, -sweep / 2, sweep, [s], n, zones=zones, words=c.words(2, [INK, RED]))


def psibar(c):
    """Psi on the outer ring, bar on the inner one, in another colour."""
    sweep = c.of([270, 270, 260, 240])
    psi, divisions, major, middle, bar, parts, bar_major = c.of([(300, 60, 10, 5, 20, 40, 4), (300, 60, 10, 2, 21, 42, 6), (250, 50, 10, 5, 17, 34, 4),
                                                                 (200, 40, 4, 2, 14, 28, 4), (300, 30, 5, 0, 20, 20, 5), (100, 50, 10, 5, 7, 35, 5)])
    outer = scale("psi", 0, psi, divisions, major, middle, ring=c.between(0.86, 0.93), minor=c.between(0.035, 0.05), major=c.between(0.07, 0.1),
                  figures_at=-c.between(0.15, 0.18), figure_height=c.between(0.06, 0.08), width=c.between(0.007, 0.011))
    inner = scale("bar", 0, bar, parts, bar_major, 0, ring=c.between(0.5, 0.58), minor=0.035, major=c.between(0.05, 0.07), colour=c.of([RED, BLUE, INK]),
                  figures_at=c.of([-0.11, 0.09]), figure_height=0.055, width=0.008, in_first=14.5038, arcs=c.of([[], [0], [1]]))
    inner["outwards"] = inner["figures_at"] < 0 and c.is_so(0.3)
    n = pointer(c.of(["taper", "thin", "lance", "baton"]), c.of([INK, RED, ORANGE]), c.between(0.7, 0.88), c.between(0.05, 0.08), c.of(["bar", "disc", "arrow"]), 0.28)
    return base(c, c.of([PAPER, IVORY]), -sweep / 2, sweep, [outer, inner], n, words=c.words(1, [INK]))


def leakband(c):
    """0 to 100 % leakage with a coloured band and words along it."""
    divisions, major, middle = c.of([(50, 5, 0), (20, 2, 0), (100, 10, 5), (20, 4, 2), (40, 4, 2)])
    ring = c.between(0.7, 0.78)
    s = scale("%", 0, 100, divisions, major, middle, ring=ring, minor=0.05, major=c.between(0.09, 0.12), width=0.011, figures_at=-c.between(0.2, 0.22),
              figure_height=c.between(0.065, 0.08), arcs=c.of([[], [0]]))
    a, b = c.between(0.15, 0.3), c.between(0.4, 0.6)
    zones = [sector(0, a, GREEN, ring + 0.03, ring + 0.15), sector(a, b, YELLOW, ring + 0.03, ring + 0.15), sector(b, 1, RED, ring + 0.03, ring + 0.15)]
    sweep = c.of([270, 250, 240])
    start = -sweep / 2
    curved = [dict(text=t, radius=ring + 0.09, angle=start + sweep * p, height=0.06, colour=k, font=0)
              for t, p, k in (("LOW", a / 2, PAPER), ("MODERATE", (a + b) / 2, INK), ("HIGH", (b + 1) / 2, PAPER))]
    n = pointer(c.of(["lance", "taper", "leaf"]), c.of([INK, RED]), c.between(0.62, 0.76), 0.07, c.of(["arrow", "bar", "moon"]), 0.3)
    return base(c, c.of([PAPER, SILVER]), start, sweep, [s], n, zones=zones, curved=curved, words=c.words(2, [INK]))


def vacuum(c):
    """A compound scale: vacuum in red before the zero, pressure after it."""
    unit, low, top, divisions, major, middle = c.of([("bar", -1, 3, 40, 5, 0), ("bar", -1, 5, 60, 10, 5), ("bar", -1, 2, 60, 10, 5), ("kPa", -100, 200, 30, 5, 0)])
    s = scale(unit, low, top, divisions, major, middle, ring=c.between(0.84, 0.9), minor=c.between(0.04, 0.06), major=c.between(0.09, 0.12),
              below=RED, figures_at=-c.between(0.19, 0.22), figure_height=c.between(0.07, 0.09), width=c.between(0.008, 0.013))
    zones = [sector(0, -low / (top - low), c.of([RED, (200, 200, 240)]), s["ring"] - s["minor"], s["ring"])] if c.is_so(0.4) else []
    sweep = c.of([270, 270, 300])
    n = pointer(c.of(["taper", "spade", "lance"]), c.of([INK, BLUE]), c.between(0.7, 0.86), 0.08, c.of(["disc", "bar", "moon"]), 0.3)
    return base(c, c.of([PAPER, IVORY]), -sweep / 2, sweep, [s], n, zones=zones, words=c.words(2, [INK, RED]))


def fan(c):
    """Half a circle in the upper part of the face, print below it."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 30, 5, 0), ("psi", 100, 50, 10, 5), ("%", 100, 20, 4, 2), ("bar", 16, 32, 4, 2)])
    s = scale(unit, 0, top, divisions, major, middle, ring=c.between(0.8, 0.95), minor=0.06, major=0.12, figures_at=c.of([-0.21, -0.22]),
              figure_height=c.between(0.08, 0.1), width=0.012, arcs=c.of([[], [0], [1]]))
    pivot = c.between(0.15, 0.35)
    sweep = c.of([180, 160, 180])
    n = pointer(c.of(["taper", "thin", "arrow"]), c.of([INK, RED, ORANGE]), c.between(0.68, 0.85), 0.07, c.of(["none", "bar", "disc"]), 0.2)
    panel = [dict(low=(-0.9, pivot + 0.16), high=(0.9, 1.0), colour=c.of([INK, BLUE, SILVER]))] if c.is_so(0.5) else []
    zones = [sector(c.between(0.5, 0.7), 1, GREEN, s["ring"] - 0.06, s["ring"])] if c.is_so(0.5) else []
    return base(c, PAPER, -sweep / 2, sweep, [s], n, pivot=(0.0, pivot), panels=panel, zones=zones, words=c.words(1, [INK, RED], pivot))


# -- faces held out --

def bottomzero(c):
    """Zero at or near 6 o'clock, nearly a whole turn."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 60, 10, 5), ("bar", 10, 100, 10, 5), ("psi", 200, 40, 4, 0), ("kPa", 1000, 50, 5, 0)])
    sweep = c.of([300, 310, 320, 330])
    s = scale(unit, 0, top, divisions, major, middle, ring=c.between(0.82, 0.92), minor=0.05, major=c.between(0.08, 0.12), figures_at=-c.between(0.19, 0.22),
              figure_height=0.08, width=c.between(0.008, 0.012), font=c.of([0, 3]), arcs=c.of([[], [0]]))
    n = pointer(c.of(["taper", "leaf", "lance"]), c.of([INK, RED]), c.between(0.68, 0.86), 0.08, c.of(["moon", "disc", "bar"]), 0.3)
    return base(c, c.of([PAPER, IVORY]), c.of([-180, -170, -sweep / 2]), sweep, [s], n, words=c.words(2, [INK, BLUE]))


def barpsi(c):
    """Bar outside with its lines outwards, psi inside back to back on one ring."""
    bar, divisions, major, middle, psi, parts, psi_major = c.of([(20, 40, 4, 2, 290, 29, 5), (10, 50, 5, 0, 140, 28, 4), (16, 32, 4, 2, 230, 46, 10), (25, 50, 10, 5, 360, 36, 6)])
    ring = c.between(0.68, 0.74)
    outer = scale("bar", 0, bar, divisions, major, middle, ring=ring, outwards=True, minor=0.04, major=c.between(0.07, 0.09), figures_at=0.15, figure_height=0.07, width=0.010, arcs=[0])
    inner = scale("psi", 0, psi, parts, psi_major, 0, ring=ring - 0.015, minor=0.035, major=0.06, figures_at=-0.13, figure_height=0.055, colour=c.of([RED, INK]), width=0.008,
                  arcs=[0], in_first=0.0689476)
    sweep = c.of([270, 250])
    n = pointer(c.of(["taper", "thin", "baton"]), c.of([INK, RED]), c.between(0.6, 0.78), 0.07, c.of(["bar", "fan"]), 0.3)
    return base(c, c.of([PAPER, YELLOW, IVORY]), -sweep / 2, sweep, [outer, inner], n, words=c.words(2, [INK]))


def pocket(c):
    """A small coarse dial: big figures outside few lines, a needle with an arrow for a counterweight."""
    unit, top, divisions, major = c.of([("psi", 300, 30, 5), ("bar", 20, 20, 5), ("psi", 200, 20, 5), ("psi", 150, 15, 5), ("bar", 16, 16, 4)])
    s = scale(unit, 0, top, divisions, major, 0, ring=c.between(0.6, 0.66), minor=0.06, major=c.between(0.1, 0.13), outwards=False, figures_at=c.between(0.13, 0.16),
              figure_height=c.between(0.1, 0.13), width=c.between(0.012, 0.02), font=c.of([0, 1, 2]))
    sweep = c.of([240, 270, 220])
    face, ink = c.of([(PAPER, INK), (COAL, CHALK), (COAL, AMBER)])
    s["colour"] = ink
    n = pointer(c.of(["lance", "arrow"]), c.of([RED, ORANGE]), c.between(0.5, 0.63), 0.08, "arrow", c.between(0.2, 0.3))
    return base(c, face, -sweep / 2, sweep, [s], n, words=c.words(1, [ink]))


def boot(c):
    """Dark blue or green face in a ribbed boot, figures on a light ring outside of the lines."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 60, 10, 5), ("bar", 20, 40, 4, 2), ("kPa", 2000, 40, 4, 2), ("psi", 160, 80, 10, 5)])
    ring = c.between(0.68, 0.74)
    s = scale(unit, 0, top, divisions, major, middle, ring=ring, minor=0.05, major=c.between(0.08, 0.1), figures_at=0.13, figure_height=0.085, colour=CHALK,
              figure_colour=INK, width=0.010)
    sweep = c.of([270, 300])
    n = pointer(c.of(["taper", "lance", "baton"]), c.of([ORANGE, YELLOW, CHALK]), c.between(0.55, 0.72), 0.07, c.of(["bar", "none", "arrow"]), 0.25)
    out = base(c, c.of([(92, 52, 24), (50, 72, 30), COAL]), -sweep / 2, sweep, [s], n, zones=[sector(-0.2, 1.2, c.of([PAPER, SILVER]), ring + 0.02, 0.99)],
               words=c.words(2, [CHALK]))
    return out | dict(bezel_kind="rubber", case_radius=c.between(1.25, 1.4), ribs=int(c.between(10, 30)))


def busy(c):
    """Much print: curved words, plates, a table of values, screws."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 60, 10, 5), ("bar", 20, 100, 10, 5), ("psi", 100, 50, 10, 5), ("kPa", 2000, 40, 4, 0)])
    s = scale(unit, 0, top, divisions, major, middle, ring=c.between(0.88, 0.94), minor=0.045, major=0.09, figures_at=-c.between(0.17, 0.2), figure_height=0.075,
              width=c.between(0.008, 0.012), arcs=c.of([[0], [0, 1], []]))
    n = pointer(c.of(["taper", "thin", "window"]), c.of([INK, RED, ORANGE]), c.between(0.75, 0.92), 0.07, c.of(["bar", "disc", "fan"]), 0.3)
    panels = [dict(low=(-0.3, -0.44), high=(0.3, -0.3), colour=c.of([RED, BLUE, INK])), dict(low=(-0.22, 0.48), high=(0.22, 0.62), colour=c.of([YELLOW, SILVER]))]
    blobs = [dict(at=(c.between(-0.3, 0.3), c.of([-0.2, 0.25])), size=0.08, corners=int(c.random.integers(3, 7)), turn=c.between(0, 90), colour=c.of([RED, BLUE, GREEN]), ring=c.is_so(0.5))]
    return base(c, c.of([PAPER, IVORY, SILVER]), -135, 270, [s], n, panels=panels, blobs=blobs, words=c.words(5, [INK, RED, BLUE]),
                curved=[c.curved(0.52, 0, [INK, RED]), c.curved(0.6, 180, [INK])], screws=[dict(at=(x, 0.0), size=0.03, turn=c.between(0, 180)) for x in (-0.35, 0.35)])


def leakdark(c):
    """Leakage in percent on a black face, ring sections in colour where the lines are."""
    divisions, major, middle = c.of([(50, 5, 0), (20, 2, 0), (100, 10, 5), (40, 4, 0)])
    ring = c.between(0.82, 0.9)
    s = scale("%", 0, 100, divisions, major, middle, ring=ring, colour=CHALK, minor=0.055, major=c.between(0.09, 0.12), figures_at=-c.between(0.2, 0.23), figure_height=0.075,
              width=0.010)
    a, b = c.between(0.1, 0.25), c.between(0.35, 0.6)
    low, high = c.of([(ring - 0.3, ring - 0.26), (ring - 0.05, ring), (ring + 0.01, ring + 0.06)])
    sweep = c.of([270, 240, 180])
    n = pointer(c.of(["lance", "thin", "taper"]), c.of([ORANGE, CHALK, RED]), c.between(0.7, 0.86), 0.07, c.of(["none", "bar", "arrow"]), 0.25)
    return base(c, COAL, -sweep / 2, sweep, [s], n, zones=[sector(0, a, GREEN, low, high), sector(a, b, YELLOW, low, high), sector(b, 1, RED, low, high)],
                words=c.words(2, [CHALK, RED]), curved=[c.curved(0.4, 0, [CHALK])])


def resting(c):
    """A stop block in place of the first lines, and a thick zero; figures lean with the scale; a multiplier on them."""
    unit, top, divisions, major, middle, factor = c.of([("kPa", 2000, 40, 4, 2, 0.01), ("psi", 300, 60, 10, 5, 0.1), ("bar", 20, 40, 4, 2, 1), ("kPa", 1000, 50, 5, 0, 0.01)])
    s = scale(unit, 0, top, divisions, major, middle, ring=c.between(0.84, 0.92), minor=0.05, major=c.between(0.09, 0.11), figures_at=-0.2, figure_height=0.09, figure_factor=factor,
              skip_first=int(c.random.integers(0, 3)), width=0.011)
    block = sector(-c.between(0.02, 0.04), 0.0, c.of([INK, RED]), s["ring"] - 0.08, s["ring"])
    sweep = c.of([270, 240, 255])
    n = pointer(c.of(["taper", "baton", "arrow"]), c.of([INK, RED]), c.between(0.7, 0.88), 0.075, c.of(["bar", "moon", "arrow"]), 0.3)
    return base(c, c.of([PAPER, IVORY]), -sweep / 2, sweep, [s], n, zones=[block] if c.is_so(0.7) else [], words=c.words(2, [INK]), figures_lean=True)


def halfdark(c):
    """Half a circle on a dark face, pivot in the middle."""
    unit, top, divisions, major, middle = c.of([("psi", 300, 30, 5, 0), ("%", 100, 50, 5, 0), ("bar", 20, 40, 4, 2), ("psi", 100, 20, 4, 2)])
    s = scale(unit, 0, top, divisions, major, middle, ring=c.between(0.8, 0.9), colour=c.of([CHALK, AMBER, LIME]), minor=0.06, major=0.12, figures_at=-0.22, figure_height=0.085,
              width=0.012)
    sweep = c.of([180, 200, 210])
    n = pointer(c.of(["taper", "lance", "thin"]), c.of([RED, ORANGE, CHALK]), c.between(0.68, 0.85), 0.07, c.of(["bar", "none", "disc"]), 0.25)
    return base(c, c.of([COAL, SLATE]), -sweep / 2, sweep, [s], n, words=c.words(3, [CHALK, AMBER]))


def innermost(make):
    """The same face with the range of its inner scale told."""
    return lambda c: make(c) | dict(tell_inner=True)


FAMILIES = {f.__name__: f for f in (coalface, sectors, psibar, leakband, vacuum, fan, bottomzero, barpsi, pocket, boot, busy, leakdark, resting, halfdark)}
FAMILIES |= {"psibar-inner": innermost(psibar), "barpsi-inner": innermost(barpsi)}


def style(family, random):
    return FAMILIES[family](Chance(random)) | dict(family=family)
