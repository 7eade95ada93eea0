# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The rules of the house that no other tool knows: what stands at the top level, a licence in every source
file, nothing that is true on one machine only. Long files are reported and do not fail.

house.py [TOP]
"""

import pathlib
import re
import sys

import tree

TOP_LEVEL = {
    "CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "LICENSES",
    "assets", "core", "platform", "qml", "tests",
}
SOURCE = (".cpp", ".h", ".qml", ".py", ".sh", ".cmake", "CMakeLists.txt", ".java", ".js", ".mm")
TEXT = SOURCE + (".md", ".json", ".txt", ".xml", ".csv", ".svg", ".ts", "run", "start", "packages", "dep5")
# Written so that this file does not find itself.
ONE_MACHINE_ONLY = [
    (re.compile(r"(?<![\w.])/(?:work|root|home/[a-z]\w*)/"), "a path of one machine"),
    (re.compile(r"\b(?:deb|snapshot|security|ftp)\.debian\b|\bregistry\.npm|\bpypi\.|\bpkg\.dev\b|\bppa\.launchpad"),
     "the host of a package registry"),
]
GUIDELINE = {".cpp": 400, ".h": 400, ".py": 400, ".qml": 250}
COMPONENT_LINES = 150


def top_level_faults(paths):
    present = {p.split("/")[0] for p in paths}
    visible = {p for p in present if not p.startswith(".")}
    for name in sorted(visible - TOP_LEVEL):
        yield f"{name}: does not belong at the top level (DEVELOPERS.md names what does)"
    for name in sorted(TOP_LEVEL - visible):
        yield f"{name}: missing at the top level"


def text_faults(path, text):
    head = text.splitlines()[:5]
    if path.endswith(SOURCE) or text.startswith("#!"):
        for tag in ("SPDX-FileCopyrightText:", "SPDX-License-" + "Identifier:"):
            if not any(tag in line for line in head):
                yield f"{path}: no {tag} in its first five lines"
    for number, line in enumerate(text.splitlines(), 1):
        for pattern, what in ONE_MACHINE_ONLY:
            if pattern.search(line):
                yield f"{path}:{number}: {what}: {line.strip()[:80]}"


def long_files(path, text):
    limit = GUIDELINE.get(pathlib.PurePath(path).suffix)
    if path.startswith("qml/components/") and path.endswith(".qml"):
        limit = COMPONENT_LINES
    lines = text.count("\n")
    if limit and lines > limit:
        yield f"{path}: {lines} lines, the guideline is {limit}"


def faults(top):
    paths = tree.files(top)
    yield from top_level_faults(paths)
    for path in paths:
        raw = (top / path).read_bytes()
        if path.endswith(TEXT) or raw.startswith(b"#!"):
            yield from text_faults(path, raw.decode("utf-8", "replace"))


def main(top):
    for path in tree.files(top):
        if path.endswith(tuple(GUIDELINE)):
            for note in long_files(path, (top / path).read_text("utf-8")):
                print("note: " + note)
    found = list(faults(top))
    for fault in found:
        print(fault)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else tree.TOP))
