# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Files that mean harm, or were hurt on their way: each gets a sentence, leaves the library byte for byte as it was,
and asks for at most 200 MB of memory and 10 s. Backup and restore stay within a bounded memory too.

hostile.py SESSION_FILE_TOOL LIBRARY_TOOL
"""

import hashlib
import itertools
import json
import os
import pathlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile
import time
import unicodedata
import unittest
import zipfile

TOOL, LIBRARY = sys.argv[1:3]
# Sanitizers take memory and time of their own: there only the sentence and the library are looked at.
SANITIZED = b"__asan_init" in pathlib.Path(LIBRARY).read_bytes()
MOST_MB, MOST_SECONDS = 200, 10


def run(*command):
    """Exit code, standard output, standard error, seconds and peak memory in MB."""
    start = time.monotonic()
    ran = subprocess.run([str(c) for c in command], capture_output=True, text=True)
    peak = re.search(r"VmHWM:\s*(\d+) kB", ran.stderr)
    return ran.returncode, ran.stdout, ran.stderr, time.monotonic() - start, int(peak[1]) / 1024 if peak else 0


def contents(folder):
    """Every file of a library with its SHA-256; the daily backup, which any opening makes when due, left out."""
    return {p.relative_to(folder).as_posix(): hashlib.sha256(p.read_bytes()).hexdigest()
            for p in folder.rglob("*") if p.is_file() and p.parent.name != "backups"}


class Case(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.shared = pathlib.Path(tempfile.mkdtemp())
        code, out, errors, *_ = run(LIBRARY, "make", cls.shared / "library", 2, 2, 5000)
        assert code == 0, out + errors
        good = cls.shared / "good.lapwing"
        subprocess.run([TOOL, "write", good, "11"], check=True)
        with zipfile.ZipFile(good) as packed:
            cls.good = {name.split("/", 1)[1]: packed.read(name) for name in packed.namelist()}

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.shared)

    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.library = self.folder / "library"
        shutil.copytree(self.shared / "library", self.library)
        self.file = self.folder / "in.lapwing"
        self.bag = dict(self.good)

    def tearDown(self):
        shutil.rmtree(self.folder)

    def lists(self, bag):
        """The bag with its lists made to fit: hostile, not damaged."""
        bag = {k: v for k, v in bag.items() if not k.startswith(("tagmanifest", "bag-info", "signature"))}
        bag["manifest-sha256.txt"] = "".join(f"{hashlib.sha256(v).hexdigest()}  {k}\n" for k, v in bag.items()
                                             if k.startswith("data/")).encode()
        return bag

    def pack(self, bag, method=zipfile.ZIP_DEFLATED):
        with zipfile.ZipFile(self.file, "w", method) as packed:
            for name, data in bag.items():
                packed.writestr("bag/" + name, data)

    def session(self, change):
        document = json.loads(self.bag["data/session.json"])
        change(document)
        self.bag["data/session.json"] = json.dumps(document).encode()
        self.pack(self.lists(self.bag))

    def refused(self, code):
        before = contents(self.library)
        exit_code, out, errors, seconds, memory = run(LIBRARY, "bring", self.library, self.file)
        self.assertEqual(exit_code, 3, f"{out}{errors}")
        said, sentence = out.split("\n", 1)
        self.assertRegex(said, code)
        self.assertGreater(len(sentence), 30)
        after = contents(self.library)
        self.assertEqual(after, before)
        self.assertFalse([p for p in (self.library / "staging").rglob("*")])
        if not SANITIZED:
            self.assertGreater(memory, 0)
            self.assertLess(memory, MOST_MB)
            self.assertLess(seconds, MOST_SECONDS)


    def notes(self, count, text):
        """So many notes more in the first visit."""
        document = json.loads(self.bag["data/session.json"])
        visit = document["visits"][0]
        note = {"session": visit["session"]["id"], "kind": "note", "tie": {"to": "session"}, "author": "", "text": text,
                "at": "2026-03-14T09:30:00.000+01:00", "done": False}
        visit["notes"] = visit.get("notes", []) + [
            {"id": f"01890000-0000-7000-8000-{number:012x}", **note} for number in range(count)]
        self.bag["data/session.json"] = json.dumps(document).encode()
        self.assertLess(len(self.bag["data/session.json"]), 32 << 20)
        self.pack(self.lists(self.bag), zipfile.ZIP_STORED)


class Hostile(Case):
    def test_the_good_one_is_taken(self):
        self.pack(self.lists(self.bag))
        code, out, errors, *_ = run(LIBRARY, "bring", self.library, self.file)
        self.assertEqual(code, 0, out + errors)

    def test_zip_bomb(self):
        self.bag["data/report.pdf"] = b"\0" * (300 << 20)
        self.pack(self.lists(self.bag))
        self.refused("archive.ratio")

    def test_zip_bomb_of_text(self):
        self.bag["data/readings.csv"] = b"0" * (100 << 20)
        self.pack(self.lists(self.bag))
        self.refused("archive.ratio")

    def test_zip_bomb_within_the_ratio(self):
        self.bag["data/session.json"] = b"[" + b"1," * 20_000_000 + b"1]"
        self.pack(self.lists(self.bag), zipfile.ZIP_STORED)
        self.refused("archive.text_too_large")

    def test_length_of_4_gb(self):
        self.pack(self.lists(self.bag))
        data = bytearray(self.file.read_bytes())
        central = data.rfind(b"bag/data/readings.csv") - 46
        struct.pack_into("<I", data, central + 24, 0xFFFFFFFE)
        self.file.write_bytes(data)
        self.refused("archive")

    def test_a_hundred_thousand_entries(self):
        with zipfile.ZipFile(self.file, "w") as packed:
            for name, data in self.lists(self.bag).items():
                packed.writestr("bag/" + name, data)
            for number in range(100_000):
                packed.writestr(f"bag/data/photos/{number}", b"")
        self.refused("archive.too_many")

    def test_a_manifest_that_names_a_million_files(self):
        self.bag = self.lists(self.bag)
        self.bag["manifest-sha256.txt"] += b"".join(b"%064x  data/%d\n" % (n, n) for n in range(300_000))
        self.pack(self.bag)
        self.refused("bag.missing_file|archive.ratio")

    def path(self, name):
        self.bag = self.lists(self.bag)
        with zipfile.ZipFile(self.file, "w") as packed:
            for path, data in self.bag.items():
                packed.writestr("bag/" + path, data)
            info = zipfile.ZipInfo("x")
            info.filename = name
            packed.writestr(info, b"x")

    def test_path_upwards(self):
        self.path("bag/../../up")
        self.refused("bag.path")

    def test_path_absolute(self):
        self.path("/etc/lapwing")
        self.refused("bag.path")

    def test_path_with_backslash(self):
        self.path("bag\\data\\x")
        self.refused("bag.path")

    def test_path_with_drive(self):
        self.path("C:/x")
        self.refused("bag.path")

    def test_name_twice(self):
        with self.assertWarns(UserWarning):
            self.path("bag/data/session.json")
        self.refused("archive")

    def test_name_twin_in_other_letters(self):
        self.path("bag/data/SESSION.json")
        self.refused("archive.name_twice")

    def test_name_twin_beyond_ascii(self):
        # The same name in other letters, or with its accents written apart, as one file system or another has it.
        for one, other in (("Ä", "ä"), ("ä", "a\u0308"), ("Ä", "a\u0308"), ("ﬁ", "fi"), ("ß", "SS"), ("Σ", "ς"),
                           ("Ж", "ж"), ("й", "и\u0306"), ("한", "\u1112\u1161\u11ab"), ("Å", "\u212b")):
            with self.subTest(one=one, other=other):
                bag = self.lists(self.bag)
                with zipfile.ZipFile(self.file, "w") as packed:
                    for path, data in bag.items():
                        packed.writestr("bag/" + path, data)
                    for name in (one, other):
                        packed.writestr(f"bag/data/photos/{name}.jpg", b"x")
                self.refused("archive.name_twice")

    def test_names_that_only_look_alike_are_two(self):
        self.bag["data/photos/Müller.txt"] = b"one"
        self.bag["data/photos/Möller.txt"] = b"another"
        self.pack(self.lists(self.bag))
        code, out, errors, *_ = run(LIBRARY, "bring", self.library, self.file)
        self.assertEqual(code, 0, out + errors)

    def test_name_of_broken_utf8(self):
        self.path("bag/data/QQQQ")
        self.file.write_bytes(self.file.read_bytes().replace(b"QQQQ", b"\xc0\xaf\xff\xfe"))
        self.refused("bag.path")

    def test_link(self):
        self.pack(self.lists(self.bag))
        with zipfile.ZipFile(self.file, "a") as packed:
            info = zipfile.ZipInfo("bag/data/photos/link.jpg")
            info.external_attr = 0o120777 << 16
            info.create_system = 3
            packed.writestr(info, "/etc/passwd")
        self.refused("archive.link")

    def test_text_of_broken_utf8(self):
        self.bag["data/session.json"] = self.bag["data/session.json"].replace(b'"format"', b'"form\xff\xfet"', 1)
        self.pack(self.lists(self.bag))
        self.refused("record.not_json")

    def test_number_that_is_none(self):
        for number in ("NaN", "Infinity", "-Infinity"):
            text = self.good["data/session.json"]
            self.bag["data/session.json"] = text.replace(b'"number": 1', b'"number": ' + number.encode(), 1) \
                if b'"number": 1' in text else text.replace(b'{', b'{"x": ' + number.encode() + b',', 1)
            self.pack(self.lists(self.bag))
            self.refused("record")

    def test_number_of_1e400(self):
        self.bag["data/session.json"] = self.bag["data/session.json"].replace(b"{", b'{"later": 1e400,', 1)
        self.pack(self.lists(self.bag))
        self.refused("record")

    def test_digits_of_1e400(self):
        def change(document):
            document["engine"]["bore"] = {"value": {"digits": "1e400", "unit": "mm"}, "origin": "guessed"}
        self.session(change)
        self.refused("record.bad_digits")

    def test_digits_beyond_belief(self):
        def change(document):
            document["engine"]["bore"] = {"value": {"digits": "9" * 25, "unit": "mm"}, "origin": "guessed"}
        self.session(change)
        self.refused("record")

    def test_session_of_another_engine(self):
        def change(document):
            document["visits"][0]["session"]["engine"] = "01890000-0000-7000-8000-0000000000ff"
        self.session(change)
        self.refused("record.other_engine")

    def test_the_same_id_twice(self):
        def change(document):
            document["visits"].append(document["visits"][0])
        self.session(change)
        self.refused("record.id_twice")

    def test_deep_json(self):
        self.bag["data/session.json"] = b'{"a":' + b"[" * 1_000_000 + b"]" * 1_000_000 + b"}"
        self.pack(self.lists(self.bag), zipfile.ZIP_STORED)
        self.refused("record.too_deep")

    def many(self, text):
        """31 MiB of it in a field that a newer version might have, within all limits to the file's size."""
        filled = b'"later": ' + text
        self.assertGreater(len(filled), 30 << 20)
        self.assertLess(len(filled), 32 << 20)
        self.bag["data/session.json"] = self.bag["data/session.json"].replace(b"{", b"{" + filled + b",", 1)
        self.pack(self.lists(self.bag), zipfile.ZIP_STORED)

    def test_millions_of_small_values(self):
        self.many(b"[" + b"1," * 15_900_000 + b"1]")
        self.refused("record.too_many")

    def test_millions_of_empty_objects(self):
        self.many(b"[" + b"{}," * 10_600_000 + b"{}]")
        self.refused("record.too_many")

    def test_millions_of_lists_in_lists(self):
        self.many(b"[" + b"[[[]]]," * 4_500_000 + b"[]]")
        self.refused("record.too_many")

    def test_tens_of_thousands_of_records(self):
        self.notes(40_000, "x")
        self.refused("record.too_many_records")

    def test_large_values_within_the_number_of_values(self):
        self.many(b"[" + b'"%s",' % (b"x" * 62) * 490_000 + b"1]")
        self.refused("record.too_much_unknown")

    def test_as_many_values_as_are_counted(self):
        self.many(b"[" + (b"1" * 64 + b",") * 490_000 + b"1]")
        self.refused("record.too_much_unknown")

    def test_large_values_in_objects_of_their_own(self):
        self.many(b"[" + b'{"a":"%s"},' % (b"x" * 120) * 245_000 + b"1]")
        self.refused("record.too_much_unknown")

    def test_unknown_fields_all_over_a_record(self):
        document = json.loads(self.bag["data/session.json"])
        cylinders = document["engine"]["cylinders"]
        cylinders += [{**cylinders[0], "number": 3 + n, **{f"later{i}": 1 for i in range(400)}} for n in range(1000)]
        self.bag["data/session.json"] = json.dumps(document, separators=(",", ":")).encode()
        self.pack(self.lists(self.bag), zipfile.ZIP_STORED)
        self.refused("record.too_much_unknown")

    def test_an_object_of_millions_of_names(self):
        self.many(b"{" + b",".join(b'"%07d":1' % n for n in range(2_700_000)) + b"}")
        self.refused("record.too_many")

    def test_many_objects_of_many_names(self):
        one = b"{" + b",".join(b'"%03d":1' % n for n in range(499)) + b"},"
        self.many(b"[" + one * ((31 << 20) // len(one)) + b"{}]")
        self.refused("record.too_many")

    def test_versions_within_versions(self):
        def change(document):
            inner = json.dumps(document["engine"])
            for _ in range(3):
                document["engine"]["other_versions"] = [inner]
                inner = json.dumps(document["engine"])
        self.session(change)
        self.refused("record.other_version")

    def test_wrong_checksum(self):
        bag = self.lists(self.bag)
        bag["data/readings.csv"] += b"x"
        self.pack(bag)
        self.refused("bag.checksum")

    def test_cut_short_anywhere(self):
        self.pack(self.lists(self.bag))
        whole = self.file.read_bytes()
        for part in range(0, 20):
            self.file.write_bytes(whole[:len(whole) * part // 20])
            self.refused("archive.not_a_zip|file")

    def photos(self):
        return [name for name in self.bag if name.startswith("data/photos/")]

    def test_swapped_photos(self):
        names = self.photos()
        self.assertGreaterEqual(len(names), 2)
        self.bag[names[0]], self.bag[names[1]] = self.bag[names[1]], self.bag[names[0]]
        self.pack(self.lists(self.bag))
        self.refused("session_file.attachment_differs")

    def photo(self, data):
        """One photo replaced by other bytes, its record and its name made to fit."""
        name = self.photos()[0]
        old = pathlib.PurePosixPath(name).stem
        new = hashlib.sha256(data).hexdigest()
        del self.bag[name]
        self.bag[f"data/photos/{new}.jpg"] = data

        def change(document):
            for visit in document["visits"]:
                for one in visit.get("attachments", []):
                    if one["sha256"] == old:
                        one["sha256"], one["bytes"] = new, len(data)
        self.session(change)

    def test_a_jpeg_that_is_a_script(self):
        self.photo(b"#!/bin/sh\nrm -rf /\n")
        self.refused("media.not_a_photo")

    def test_a_photo_of_too_many_pixels(self):
        self.photo(b"\xff\xd8\xff\xc0\x00\x0b\x08\xff\xff\xff\xff\x01\x01\x11\x00\xff\xd9")
        self.refused("media.photo_too_large")

    def test_a_newer_version(self):
        self.session(lambda document: document.update(version="2.0"))
        self.refused("record.newer_major")

    def test_something_else_altogether(self):
        for data in (b"", b"PK", os.urandom(100_000), b"<html></html>"):
            self.file.write_bytes(data)
            self.refused("archive.not_a_zip")


class Harmless(Case):
    def taken(self):
        code, out, errors, seconds, memory = run(LIBRARY, "bring", self.library, self.file)
        self.assertEqual(code, 0, out + errors)
        print(f"{self.id().rsplit('.', 1)[1]}: {seconds:.1f} s, {memory:.0f} MB", file=sys.stderr)
        if not SANITIZED:
            self.assertLess(memory, MOST_MB)
            self.assertLess(seconds, MOST_SECONDS)

    def test_as_many_records_and_as_much_text_as_are_read(self):
        self.notes(9_900, "x" * 2_990)
        self.assertGreater(len(self.bag["data/session.json"]), 30 << 20)
        self.taken()

    def test_as_many_unknown_values_as_are_read(self):
        filled = b'"later": [' + b"1," * 40_000 + b"1],"
        self.bag["data/session.json"] = self.bag["data/session.json"].replace(b"{", b"{" + filled, 1)
        self.pack(self.lists(self.bag), zipfile.ZIP_STORED)
        self.taken()

    def test_cycles_of_references_are_taken_as_they_are(self):
        def change(document):
            for visit in document["visits"]:
                readings = visit.get("readings", [])
                if len(readings) > 1:
                    readings[0]["replaces"], readings[1]["replaces"] = readings[1]["id"], readings[0]["id"]
                for one in visit.get("notes", []):
                    one["tie"] = {"to": "note", "record": one["id"]}
        self.session(change)
        code, out, errors, seconds, memory = run(LIBRARY, "bring", self.library, self.file)
        self.assertEqual(code, 0, out + errors)
        self.assertLess(seconds, 60 if SANITIZED else MOST_SECONDS)
        code, out, errors, *_ = run(LIBRARY, "show", self.library)
        self.assertEqual(code, 0, errors)


class Backup(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())

    def tearDown(self):
        shutil.rmtree(self.folder)

    def done(self, *command):
        code, out, errors, _, memory = run(LIBRARY, *command)
        self.assertEqual(code, 0, out + errors)
        return out, memory

    def test_memory_does_not_grow_with_the_library(self):
        peak = {}
        for engines in (3, 30):
            library, file = self.folder / f"library{engines}", self.folder / f"all{engines}.lapwing-backup"
            self.done("make", library, engines, 4, 1_500_000)
            _, backing_up = self.done("back-up", library, file)
            self.assertGreater(file.stat().st_size, engines * 4 * 1_500_000)
            fresh = self.folder / f"fresh{engines}"
            _, restoring = self.done("restore", fresh, file)
            self.assertEqual(self.done("show", fresh)[0], self.done("show", library)[0])
            peak[engines] = (backing_up, restoring)
            shutil.rmtree(library)
            shutil.rmtree(fresh)
        print(f"peak memory in MB, back up and restore: {peak}", file=sys.stderr)
        if not SANITIZED:
            for few, many in zip(peak[3], peak[30]):
                self.assertLess(many - few, 12)  # 27 more engines are 162 MB of photos

    def test_other_tools_can_verify_it(self):
        library, file = self.folder / "library", self.folder / "all.lapwing-backup"
        self.done("make", library, 2, 2, 5000)
        self.done("back-up", library, file)
        subprocess.run(["unzip", "-q", file, "-d", self.folder / "out"], check=True)
        bag = next((self.folder / "out").iterdir())
        subprocess.run(["sha256sum", "--check", "--strict", "--quiet", "manifest-sha256.txt"], cwd=bag, check=True)
        engines = list((bag / "data" / "engines").iterdir())
        self.assertEqual(len(engines), 2)
        for engine in engines:
            self.assertEqual(subprocess.run([TOOL, "check", engine], capture_output=True, check=True).stdout, b"")

    def test_restoring_where_there_is_data_merges(self):
        here, there, file = self.folder / "here", self.folder / "there", self.folder / "all.lapwing-backup"
        self.done("make", here, 1, 1, 5000)
        self.done("make", there, 2, 1, 6000)
        self.done("back-up", there, file)
        self.done("restore", here, file)
        lines = set(self.done("show", here)[0].split("\n"))
        self.assertTrue(set(self.done("show", there)[0].split("\n")) <= lines)
        before = contents(here / "attachments")
        self.done("restore", here, file)  # twice changes nothing
        self.assertEqual(set(self.done("show", here)[0].split("\n")), lines)
        self.assertEqual(contents(here / "attachments"), before)

    def test_one_of_which_nothing_can_be_used_changes_nothing(self):
        library, file, fresh = self.folder / "library", self.folder / "all.lapwing-backup", self.folder / "fresh"
        self.done("make", library, 2, 1, 5000)
        self.done("back-up", library, file)
        self.done("show", fresh)
        whole = file.read_bytes()
        for spoil in (lambda data: data[:len(data) // 2],
                      lambda data: data.replace(b"\xff\xd8\xff", b"\xff\xd8\xfe"),  # a byte of every photo
                      lambda data: b"PK"):
            file.write_bytes(spoil(whole))
            before = contents(fresh)
            code, out, _, _, _ = run(LIBRARY, "restore", fresh, file)
            self.assertEqual(code, 3, out)
            self.assertGreater(len(out.split("\n", 1)[1]), 30)
            self.assertEqual(contents(fresh), before)


class Letters(unittest.TestCase):
    def test_spellings_are_those_of_unicode(self):
        # Held against Python's unicodedata: default case folding and canonical decomposition. Newer versions of it
        # know more letters; those of these blocks are old and never change.
        blocks = [(0x20, 0x250), (0x370, 0x530), (0x1e00, 0x2000), (0xac00, 0xd7a4), (0xff21, 0xff5b),
                  (0x10400, 0x10450)]
        letters = [chr(c) for first, end in blocks for c in range(first, end)]

        def spelt(text):
            plain = unicodedata.normalize("NFD", unicodedata.normalize("NFD", text).casefold())
            runs = itertools.groupby(plain, lambda letter: unicodedata.combining(letter) != 0)
            return "".join("".join(sorted(run) if marks else run) for marks, run in runs)
        ran = subprocess.run([TOOL, "spell"], input="\n".join(letters), capture_output=True, text=True, check=True,
                             encoding="utf-8")
        self.assertEqual(ran.stdout.split("\n")[:-1], [spelt(x) for x in letters])

    def test_marks_in_any_order_and_bytes_that_are_no_letters(self):
        lines = [b"a\xcc\xa3\xcc\x88", b"a\xcc\x88\xcc\xa3", b"\xff\xc3", b"\xe2\x82"]
        ran = subprocess.run([TOOL, "spell"], input=b"\n".join(lines), capture_output=True, check=True)
        one, other, *raw = ran.stdout.split(b"\n")[:-1]
        self.assertEqual(one, other)
        self.assertEqual(raw, lines[2:])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
