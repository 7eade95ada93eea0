# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The files of the tree, as paths relative to its top, that the lint checks look at."""

import os
import pathlib
import subprocess

TOP = pathlib.Path(__file__).resolve().parents[2]
NOT_OURS = {".git", ".build", ".qtcreator", "__pycache__"}


def files(top=TOP):
    """What git tracks or would add; without git, everything but build results."""
    git = ["git", "-C", str(top), "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    if (top / ".git").exists():
        listed = subprocess.run(git, capture_output=True, text=True)
        if listed.returncode == 0:
            return sorted(p for p in listed.stdout.split("\0") if p and (top / p).is_file())
    found = []
    for folder, folders, names in os.walk(top):
        folders[:] = [f for f in folders if f not in NOT_OURS]
        found += [str((pathlib.Path(folder) / n).relative_to(top)) for n in names]
    return sorted(found)


def cpp(top=TOP):
    return [p for p in files(top) if p.endswith((".cpp", ".h"))]
