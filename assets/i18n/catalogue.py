# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Reads and writes the .ts files of Qt Linguist, and says what is wrong with a translation."""

import difflib
import hashlib
import re
import xml.etree.ElementTree as ET
from pathlib import Path
from xml.sax.saxutils import escape

HERE = Path(__file__).resolve().parent
# Forms that a count takes, as lrelease knows them. English is the source: only its counts are translated.
FORMS = {"en": 2, "de": 2, "es": 2}


def file_of(language):
    return HERE / f"lapwing_{language}.ts"


def identity(key):
    """A short name of a text, so that a translator's line needs no copy of it."""
    return hashlib.sha256("\0".join(key).encode()).hexdigest()[:10]


class Catalogue:
    """One language: {(context, source, comment): [form, ...]}, and old words for texts that have changed."""

    def __init__(self, language):
        self.language = language
        self.done = {}
        self.old = {}

    @classmethod
    def read(cls, language, path=None):
        out = cls(language)
        path = Path(path or file_of(language))
        if not path.exists():
            return out
        for context in ET.parse(path).getroot().findall("context"):
            for message in context.findall("message"):
                key = (context.findtext("name"), message.findtext("source"), message.findtext("comment") or "")
                translation = message.find("translation")
                forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
                if any(forms):
                    (out.old if translation.get("type") else out.done)[key] = forms
        return out

    def wanted(self, texts):
        return [text for text in texts if text.plural or self.language != "en"]

    def pending(self, texts):
        return [text for text in self.wanted(texts) if text.key not in self.done]

    def follow(self, texts):
        """Lets go of texts that are gone; their words are kept with the text that came in their place."""
        wanted = {text.key for text in self.wanted(texts)}
        gone = {**self.old, **self.done}
        gone = {key: forms for key, forms in gone.items() if key not in wanted}
        kept = {key: forms for key, forms in self.old.items() if key in wanted and key not in self.done}
        self.done = {key: forms for key, forms in self.done.items() if key in wanted}
        for text in self.pending(texts):
            like = [key for key in gone if key[0] == text.context]
            close = difflib.get_close_matches(text.source, [key[1] for key in like], 1, 0.75)
            if close and text.key not in kept:
                kept[text.key] = next(gone[key] for key in like if key[1] == close[0])
        self.old = kept
        return gone

    def write(self, texts, path=None):
        Path(path or file_of(self.language)).write_text(self.xml(texts), encoding="utf-8")

    def xml(self, texts):
        out = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
               f'<TS version="2.1" language="{self.language}" sourcelanguage="en">']
        context = None
        for text in self.wanted(texts):
            if text.context != context:
                out += ["</context>"] if context else []
                out += ["<context>", f"    <name>{escape(text.context)}</name>"]
                context = text.context
            forms = self.done.get(text.key) or self.old.get(text.key) or [""]
            kind = "" if text.key in self.done else ' type="unfinished"'
            out.append('    <message numerus="yes">' if text.plural else "    <message>")
            out.append(f"        <source>{said(text.source)}</source>")
            if text.comment:
                out.append(f"        <comment>{said(text.comment)}</comment>")
            if text.hint:
                out.append(f"        <extracomment>{said(text.hint)}</extracomment>")
            if text.plural:
                out.append(f"        <translation{kind}>")
                out += [f"            <numerusform>{said(form)}</numerusform>"
                        for form in (forms + [""] * FORMS[self.language])[:FORMS[self.language]]]
                out.append("        </translation>")
            else:
                out.append(f"        <translation{kind}>{said(forms[0])}</translation>")
            out.append("    </message>")
        return "\n".join(out + (["</context>"] if context else []) + ["</TS>", ""])


def said(text):
    """As Qt Linguist writes it."""
    return escape(text, {'"': "&quot;", "'": "&apos;"})


# Longer ones may be wider than a small screen's line in large text. The app looks breaks up from this length on too
# (qml/components/word_breaks.cpp).
LONG_WORD = re.compile(r"[^\W\d_]{13,}")


def word_breaks():
    """Long words in small letters, with a stroke wherever a hyphen may stand: {"abschnitt...": "ab|schnitt..."}."""
    lines = (HERE / "word_breaks.txt").read_text(encoding="utf-8").split()
    return {line.replace("|", ""): line for line in lines}


BREAKS = word_breaks()
PLACE = re.compile(r"%(?:L?\d+|n)")
TAG = re.compile(r"</?[a-z][^>]*>")


def faults(text, forms, language):
    """What is wrong with a translation, apart from its words; one sentence each."""
    wanted = FORMS[language] if text.plural else 1
    if len(forms) != wanted:
        yield f"{wanted} form(s) are needed, {len(forms)} given"
        return
    for form in forms:
        if not form.strip():
            yield "is empty"
            continue
        here, there = set(PLACE.findall(text.source)), set(PLACE.findall(form))
        # "One second": the form for one may say its number as a word.
        if here != there and not (text.plural and here - there <= {"%n"} and not there - here and form is forms[0]):
            yield f"places {' '.join(sorted(there)) or 'none'} for {' '.join(sorted(here)) or 'none'}"
        if TAG.findall(text.source) != TAG.findall(form):
            yield "other tags"
        if "  " in form and "  " not in text.source:
            yield "two spaces in a row"
        for word in sorted(set(LONG_WORD.findall(form.lower())) - set(LONG_WORD.findall(text.source.lower())) - set(BREAKS)):
            yield f"“{word}” is long: say in word_breaks.txt where it may be broken"
        for side, strip in (("begins", str.lstrip), ("ends", str.rstrip)):
            blank = [len(each) - len(strip(each)) for each in (text.source, form)]
            if blank[0] != blank[1]:
                yield f"{side} with other blanks"
        mark, theirs = text.source.rstrip()[-1:], form.rstrip()[-1:]
        if mark != theirs and (mark in ".:?!…" or theirs in ".:?!…"):
            yield f"ends in “{theirs}”, the source in “{mark}”"
