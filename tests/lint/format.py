# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Every C++ file looks as .clang-format says. Versions of clang-format disagree, so one version decides: 14."""

import re
import shutil
import subprocess
import sys

import tree

VERSION = "14"


def main():
    tool = shutil.which("clang-format-" + VERSION) or shutil.which("clang-format")
    if not tool:
        print("clang-format is not installed.")
        return 1
    said = subprocess.run([tool, "--version"], capture_output=True, text=True, check=True).stdout
    if not re.search(rf"version {VERSION}\.", said):
        print(f"Skipped: the layout is judged by clang-format {VERSION} (Debian 12), and here is: {said.strip()}")
        return 77
    sources = tree.cpp()
    if not sources:
        print("No C++ file found.")
        return 1
    checked = subprocess.run([tool, "--dry-run", "-Werror", *sources], cwd=tree.TOP, capture_output=True, text=True)
    if checked.returncode:
        off = dict.fromkeys(re.findall(r"^(\S+?):\d+:\d+: error:", checked.stderr, re.MULTILINE))
        print("\n".join(off) or checked.stderr)
        print(f"{len(off)} files are not laid out as .clang-format says. Run {tool} -i on them.")
    return checked.returncode


if __name__ == "__main__":
    sys.exit(main())
