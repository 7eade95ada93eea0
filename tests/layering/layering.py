# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Who may know whom (DEVELOPERS.md), checked over the #include lines of the tree.

layering.py [TOP]
"""

import pathlib
import re
import sys

CORE = {
    "base": [],
    "units": ["base"],
    "model": ["base", "units"],
    "record": ["base", "units", "model"],
    "physics": ["base"],
    "uncertainty": ["base", "physics"],
    "findings": ["base", "units", "model", "record", "physics", "uncertainty"],
    "calculators": ["base", "units", "model", "record", "physics", "uncertainty", "findings"],
    "knowhow": ["base", "units", "model", "record", "physics", "uncertainty", "findings"],
    "odds": ["base", "units", "model", "record", "physics", "uncertainty", "findings"],
    "compare": ["base", "units", "model", "record", "physics", "uncertainty", "findings"],
    "report": ["base", "units", "model", "record", "physics", "uncertainty", "findings", "odds", "compare"],
    "vision": ["base", "units"],
    "store": ["base", "units", "model", "record"],
    "exchange": ["base", "units", "model", "record"],
}
CORE["workflow"] = list(CORE)
PLATFORM_IMPLEMENTATIONS = ["linux", "android", "ios", "fake", "media"]

QT_HEADER = re.compile(r"^(?:Q[A-Z]\w*|Qt\w*)(?:/|$)|^q[a-z_]+\.h$")
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]', re.MULTILINE)
COMMENT = re.compile(r"//[^\n]*|/\*.*?\*/", re.DOTALL)
ROOTS = ("core", "qml", "platform", "tests")


def may_include(room):
    """The rooms that a file of this room may include, its own among them; a whole root ends with '/'."""
    root, _, name = room.partition("/")
    if root == "core":
        return {room} | {"core/" + other for other in CORE.get(name, [])}
    if room == "qml/app":
        return {"core/", "qml/", "platform/"}
    if root == "qml":
        return {"core/", "qml/", "platform/api"}
    if room == "platform/api":
        return {room, "core/base"}
    if room == "platform/cli":
        return {room, "core/", "qml/print", "qml/format"}
    if root == "platform":
        shared = {"platform/media"} if room not in ("platform/fake", "platform/media") else set()
        return {room, "platform/api", "core/base"} | shared
    if room == "tests/core":
        return {room, "core/"}
    return {"core/", "qml/", "platform/", "tests/"}


def room_of(path):
    """The first two folders; None for a file that stands in no room."""
    parts = path.split("/")
    return "/".join(parts[:2]) if len(parts) > 2 else None


def allows(allowed, room):
    return room in allowed or room.split("/")[0] + "/" in allowed


def includes_of(text):
    """(line number, angled or quoted, path) of each include, comments left out."""
    bare = COMMENT.sub(lambda m: re.sub(r"[^\n]", " ", m.group()), text)
    for found in INCLUDE.finditer(bare):
        yield bare.count("\n", 0, found.start(2)) + 1, found.group(1), found.group(2)


def file_faults(path, text):
    room = room_of(path)
    root = path.split("/")[0]
    if room is None:
        yield f"{path}: stands in no room (a folder of {root})"
        return
    if root == "core" and room.split("/")[1] not in CORE:
        yield f"{path}: {room} is not in the table of rooms"
        return
    if root == "platform" and room.split("/")[1] not in ["api", "cli", *PLATFORM_IMPLEMENTATIONS]:
        yield f"{path}: {room} is not in the table of rooms"
        return
    allowed = may_include(room)
    for line, bracket, target in includes_of(text):
        where = f"{path}:{line}"
        if (root == "core" or room == "tests/core") and QT_HEADER.search(target):
            yield f"{where}: {target}: the core knows no Qt"
        if target.startswith("nlohmann/") and not path.endswith(".cpp"):
            yield f"{where}: {target}: nlohmann-json belongs in .cpp files only"
        if target.split("/")[0] in ROOTS:
            other = room_of(target)
            if other is None or not allows(allowed, other):
                yield f"{where}: {room} may not include {target}"
        elif bracket == '"' and not target.endswith(".moc"):
            yield f'{where}: "{target}" is not rooted at the top of the tree'


def cycle(graph):
    """One cycle as a list of names whose last repeats the first, or None."""
    state = {}

    def visit(name, trail):
        state[name] = "open"
        for other in sorted(graph.get(name, ())):
            if state.get(other) == "open":
                return trail[trail.index(other) :] + [other] if other in trail else [name, other]
            if other not in state:
                found = visit(other, trail + [other])
                if found:
                    return found
        state[name] = "done"
        return None

    for name in sorted(graph):
        if name not in state:
            found = visit(name, [name])
            if found:
                return found
    return None


def faults(top):
    files, rooms, count = {}, {}, 0
    for path in sorted(p for root in ROOTS for p in (top / root).rglob("*") if p.suffix in (".h", ".cpp")):
        name = path.relative_to(top).as_posix()
        text = path.read_text("utf-8")
        count += 1
        if not (name.startswith("tests/") and room_of(name) is None):
            yield from file_faults(name, text)
        for _, _, target in includes_of(text):
            if target.split("/")[0] not in ROOTS:
                continue
            files.setdefault(name, set()).add(target)
            here, there = room_of(name), room_of(target)
            if here and there and here != there:
                rooms.setdefault(here, set()).add(there)
    for what, graph in (("files", files), ("rooms", rooms)):
        found = cycle(graph)
        if found:
            yield f"a cycle of {what}: " + " -> ".join(found)
    for cmake in sorted((top / "core").rglob("CMakeLists.txt")):
        if re.search(r"\bQt\d*(?:::|\s+(?:REQUIRED|COMPONENTS))", cmake.read_text("utf-8")):
            yield f"{cmake.relative_to(top)}: the core knows no Qt"
    if count == 0:
        yield f"no C++ file found under {top}"


def main(top):
    found = list(faults(top))
    for fault in found:
        print(fault)
    return 1 if found else 0


if __name__ == "__main__":
    here = pathlib.Path(__file__).resolve().parents[2]
    sys.exit(main(pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else here))
