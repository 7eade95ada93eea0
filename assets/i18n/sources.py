# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The texts of the app that can be translated, gathered from the tree: what lupdate sees and what it can't."""

import json
import os
import re
import shutil
import subprocess
import tempfile
import typing
import xml.etree.ElementTree as ET
from dataclasses import dataclass
from pathlib import Path

TOP = Path(__file__).resolve().parents[2]

# What speaks to people; platform/cli stays English.
SPEAKING = ["qml", "platform/api", "platform/linux", "platform/media"]


@dataclass
class Text:
    """One text of the app. `comment` tells two equal sources apart; `hint` and `place` are for translators only."""

    context: str
    source: str
    comment: str = ""
    plural: bool = False
    hint: str = ""
    place: str = ""

    @property
    def key(self):
        return (self.context, self.source, self.comment)


def gather():
    """Every text, each once, contexts by name and texts in the order of the sources."""
    found = {}
    for text in [*of_lupdate(), *of_tables(), *of_errors(), *of_assets()]:
        known = found.setdefault(text.key, text)
        if known is not text and text.hint and text.hint not in known.hint:
            known.hint = f"{known.hint}; {text.hint}" if known.hint else text.hint
    return sorted(found.values(), key=lambda text: text.context)


# -- lupdate: tr, qsTr, QT_TRANSLATE_NOOP ------------------------------------------------------------------

def tool(name):
    """A tool of Qt Linguist: Debian keeps it where the shell does not look."""
    for place in ("/usr/lib/qt6/bin", "/usr/lib/qt6/libexec"):
        if os.access(f"{place}/{name}", os.X_OK):
            return f"{place}/{name}"
    found = shutil.which(name)
    if not found:
        raise SystemExit(f"{name} was not found: install qt6-l10n-tools (platform/linux/packages lists it).")
    return found


def of_lupdate():
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "found.ts"
        # The include path lets it see that a class lives in a namespace, which is part of its context.
        run = subprocess.run([tool("lupdate"), "-silent", "-I", str(TOP), "-locations", "absolute",
                              "-source-language", "en", "-target-language", "en", "-recursive",
                              *(str(TOP / room) for room in SPEAKING), "-ts", str(out)],
                             capture_output=True, text=True, check=True)
        # A text whose class it can't tell lands in a context that nobody looks it up in.
        complaints = [line for line in run.stderr.splitlines()
                      if re.search(r"lacks Q_OBJECT|unknown namespace|without context|Discarding", line)]
        if complaints:
            raise SystemExit("lupdate can't tell the context of a text:\n" + "\n".join(complaints))
        for context in ET.parse(out).getroot().findall("context"):
            for message in context.findall("message"):
                location = message.find("location")
                where = Path(location.get("filename")) if location is not None else None
                if where is not None and not where.is_absolute():
                    where = (out.parent / where).resolve()
                yield Text(context.findtext("name"), message.findtext("source"), message.findtext("comment") or "",
                           message.get("numerus") == "yes", message.findtext("extracomment") or "",
                           where.relative_to(TOP).as_posix() if where else "")


# -- C++ that lupdate can't see through --------------------------------------------------------------------

TOKEN = re.compile(r"""
    (?P<skip>//[^\n]*|/\*.*?\*/|\s+|\#[^\n]*(?:\\\n[^\n]*)*)
  | (?P<raw>R"\((?P<rawtext>.*?)\)")
  | (?P<string>"(?:\\.|[^"\\])*")
  | (?P<char>'(?:\\.|[^'\\])')
  | (?P<name>[A-Za-z_]\w*)
  | (?P<other>.)""", re.X | re.S)

ESCAPES = {b"n": b"\n", b"t": b"\t", b"r": b"\r", b"0": b"\0"}


def unescaped(literal):
    """What a C++ string literal says, without its quotes."""
    return re.sub(rb"\\(x[0-9a-fA-F]{2}|.)",
                  lambda escape: bytes([int(escape[1][1:], 16)]) if len(escape[1]) == 3 else
                  ESCAPES.get(escape[1], escape[1]), literal.encode(), flags=re.S).decode(errors="replace")


def tokens(path):
    """Names, signs, and strings with their pieces put together."""
    out = []
    for match in TOKEN.finditer(path.read_text(encoding="utf-8")):
        kind = match.lastgroup if match.lastgroup != "rawtext" else "raw"
        if kind == "skip":
            continue
        if kind in ("string", "raw"):
            text = match["rawtext"] if kind == "raw" else unescaped(match["string"][1:-1])
            if out and out[-1][0] == "string":
                out[-1] = ("string", out[-1][1] + text)
            else:
                out.append(("string", text))
        else:
            out.append((kind, match[0]))
    return out


class Call(typing.NamedTuple):
    name: str
    arguments: list  # a string for each that is nothing but one, None for any other
    within: list     # the strings inside the others


def calls(path):
    """Everything that is written name(...)."""
    found = tokens(path)
    for at in range(len(found) - 1):
        if found[at][0] != "name" or found[at + 1] != ("other", "("):
            continue
        arguments, argument, depth = [], [], 0
        for token in found[at + 1:]:
            if token[0] == "other" and token[1] in "([{":
                depth += 1
                if depth == 1:
                    continue
            elif token[0] == "other" and token[1] in ")]}":
                depth -= 1
                if depth == 0:
                    break
            if depth == 1 and token == ("other", ","):
                arguments.append(argument)
                argument = []
            else:
                argument.append(token)
        arguments.append(argument)
        yield Call(found[at][1], [each[0][1] if len(each) == 1 and each[0][0] == "string" else None
                                  for each in arguments],
                   [token[1] for each in arguments if len(each) > 1 for token in each if token[0] == "string"])


def sources_in(*rooms):
    for room in rooms:
        for path in sorted((TOP / room).rglob("*")):
            if path.suffix in (".cpp", ".h"):
                yield path, path.relative_to(TOP).as_posix()


def of_tables():
    """The tables of qml/format: SAY(code, english), TITLE(code, name, formula in words)."""
    found = [Text("Findings", text, hint=arguments[0], place=place)
             for path, place in sources_in("qml/format") for name, arguments, _ in calls(path)
             if name in ("SAY", "TITLE") and None not in arguments for text in arguments[1:] if text]
    # The same English under two codes may be two words elsewhere ("none"): there the code tells them apart.
    codes = {}
    for text in found:
        codes.setdefault(text.source, set()).add(text.hint)
    for text in found:
        if len(codes[text.source]) > 1:
            text.comment, text.hint = text.hint, ""
    return found


# -- errors of the core: their English pattern, with {} as %1, %2 ... ----------------------------------------

# Functions that make an error, and which of their arguments is the code; the English pattern follows it.
FAILING = {"fail": 0, "refuse": 0, "problem": 0, "that": 1}
# Functions whose strings go into an error's sentence, by room: what is wrong, or what should be there.
NAMING = {
    "core/model": {"id", "time", "text", "needed", "within", "positive", "gauge_pressure", "ordered", "check_joined",
                   "check"},
    "core/record": {"wrong_type"},
    "core/workflow": {"there"},
    "core/calculators": {"needs"},
}
SEVERAL = "of several codes"
PART = "goes into the sentence of an error"
CODE = re.compile(r"[a-z_0-9]+(\.[a-z_0-9]+)+")


def numbered(pattern):
    """The pattern with a number for each field, as Qt's translations want it."""
    count = 0

    def number(match):
        nonlocal count
        if match[0] in ("{{", "}}"):
            return match[0][0]
        count += 1
        return f"%{count}"

    return re.sub(r"\{\{|\}\}|\{[^{}]*\}", number, pattern)


def of_errors():
    for path, place in sources_in("core", *SPEAKING):
        naming = NAMING.get(place.rpartition("/")[0], ())
        for name, arguments, within in calls(path):
            if name in FAILING and len(arguments) > FAILING[name] + 1:
                code, pattern = arguments[FAILING[name]:FAILING[name] + 2]
                if pattern and (code is None or CODE.fullmatch(code)):
                    yield Text("Errors", numbered(pattern), hint=code or SEVERAL, place=place)
                    # is_there ? "empty" : "missing"
                    yield from (Text("Errors", word, hint=PART, place=place) for word in within
                                if re.fullmatch(r"[A-Za-z][a-z]+( [a-z]+)*", word))
            elif name in naming:
                for text in arguments:
                    if text and not CODE.fullmatch(text):
                        yield Text("Errors", text, hint=PART, place=place)
    # A table of ranges, {code, what, ...}, and the names of the quantities.
    ranges = tokens(TOP / "core/physics/cranking.cpp")
    for code, comma, what in zip(ranges, ranges[1:], ranges[2:]):
        if code[0] == what[0] == "string" and comma[1] == "," and CODE.fullmatch(code[1]):
            if "{}" not in what[1] and "{:" not in what[1] and not what[1].endswith("."):
                yield Text("Errors", what[1], hint=PART, place="core/physics/cranking.cpp")
    for name in re.findall(r'string_view name = "(.*?)"', (TOP / "core/units/quantity.h").read_text()):
        yield Text("Errors", name, hint=PART, place="core/units/quantity.h")


# -- assets ------------------------------------------------------------------------------------------------

# Which fields people read. Names of publications ("source") stay as they are.
READ = {"text", "reason", "if_not_done", "title", "brief", "description", "why", "how", "sign", "means", "slip",
        "then", "for", "name"}


def of_assets():
    for folder in ("reference", "knowhow"):
        for path in sorted((TOP / "assets" / folder).glob("*.json")):
            data = json.loads(path.read_text(encoding="utf-8"))
            yield from texts_of(data, path.relative_to(TOP).as_posix(), "")


def texts_of(value, place, hint):
    if isinstance(value, list):
        for item in value:
            yield from texts_of(item, place, hint)
        return
    if not isinstance(value, dict):
        return
    hint = value.get("id", hint)
    for field, inner in value.items():
        # A comment is shown with a working assumption; beside a published number it is for developers.
        shown = field in READ or (field == "comment" and
                                  ("odds" in place or "assumptions" in place or value.get("kind") == "assumption"))
        for text in inner if isinstance(inner, list) else [inner]:
            if shown and isinstance(text, str) and text:
                yield Text("Reference", text, hint=f"{hint}, {field}" if hint else field, place=place)
        yield from texts_of(inner, place, hint)


def error_patterns(texts):
    """The patterns of errors by code, for the app: it tells by them what an English sentence was made from."""
    found = {}
    for text in texts:
        if text.context == "Errors":
            for code in text.hint.split("; "):
                if CODE.fullmatch(code) or code == SEVERAL:
                    found.setdefault("" if code == SEVERAL else code, []).append(text.source)
    return json.dumps(found, indent=1, ensure_ascii=False, sort_keys=True) + "\n"
