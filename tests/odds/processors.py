# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The same session gives the same odds on every machine, within one point of what is shown.

processors.py ODDS_FIGURES

The C library picks its exp, log, pow and cos by what the processor can do, and other libraries have others: the
last digits of everything differ. Run here are the library's plain variants (glibc's tunables), and assumptions
that are moved by a few units of their last digit.
"""

import os
import subprocess
import sys

# A hundredth is one point of a share or chance; a tenth of that leaves room for what was not drawn.
ALLOWED = {"chance": 0.001, "bar": 0.01, "bits": 0.002}


def figures(program, nudge="0", tunables=None):
    environment = dict(os.environ)
    environment.pop("GLIBC_TUNABLES", None)
    if tunables:
        environment["GLIBC_TUNABLES"] = tunables
    ran = subprocess.run([program, nudge], env=environment, capture_output=True, text=True, check=True)
    lines = [line.split() for line in ran.stdout.splitlines()]
    return lines[0][1], [(kind, float(value)) for kind, value in lines[1:]]


def main():
    program = sys.argv[1]
    library, usual = figures(program)
    assert len(usual) > 300, len(usual)
    failed = False
    for name, nudge, tunables in (
        ("plain variants of the C library", "0", "glibc.cpu.hwcaps=-AVX2,-FMA,-FMA4"),
        ("moved by 1e-15", "1e-15", None),
        ("moved by 1e-13", "1e-13", None),
    ):
        other_library, other = figures(program, nudge, tunables)
        assert [kind for kind, _ in usual] == [kind for kind, _ in other], name
        if tunables:
            print("the C library", "has no other variant here" if other_library == library else "differs in last digits")
        for kind, allowed in ALLOWED.items():
            worst = max(abs(a - b) for (k, a), (_, b) in zip(usual, other) if k == kind)
            print(f"{name}: {kind} differs by {worst:.2g} at most, allowed {allowed}")
            failed = failed or worst > allowed
    # That a difference would be seen.
    _, moved = figures(program, "0.01")
    assert max(abs(a - b) for (kind, a), (_, b) in zip(usual, moved) if kind == "chance") > ALLOWED["chance"]
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
