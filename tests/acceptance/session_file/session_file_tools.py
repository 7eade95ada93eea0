# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Session files and tools that are not ours: unzip, sha256sum, zip, Python's zipfile and jsonschema.

session_file_tools.py TOOL SCHEMA
"""

import csv
import hashlib
import io
import json
import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest
import zipfile

import jsonschema

TOOL, SCHEMA_FILE = sys.argv[1:3]


def run(*command, cwd=None):
    done = subprocess.run([str(part) for part in command], cwd=cwd, capture_output=True, text=True)
    if done.returncode != 0:
        raise AssertionError(f"{command}: {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


class SessionFile(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.file = self.folder / "Orchard V-twin.lapwing"
        run(TOOL, "write", self.file, 7)
        self.bag = self.folder / "out" / "Orchard V-twin"

    def tearDown(self):
        shutil.rmtree(self.folder)

    def unzip(self):
        run("unzip", "-q", self.file, "-d", self.folder / "out")

    def pack(self):
        """The unpacked bag as a new file, packed by zip from beside its folder."""
        packed = self.folder / "by hand.zip"
        packed.unlink(missing_ok=True)
        run("zip", "-q", "-r", packed, self.bag.name, cwd=self.bag.parent)
        return packed

    def test_unzip_finds_it_whole(self):
        run("unzip", "-tq", self.file)

    def test_sha256sum_agrees_with_both_lists(self):
        self.unzip()
        run("sha256sum", "--check", "--strict", "--quiet", "manifest-sha256.txt", cwd=self.bag)
        run("sha256sum", "--check", "--strict", "--quiet", "tagmanifest-sha256.txt", cwd=self.bag)
        (self.bag / "data" / "readings.csv").write_text("changed")
        with self.assertRaises(AssertionError):
            run("sha256sum", "--check", "--strict", "--quiet", "manifest-sha256.txt", cwd=self.bag)

    def test_lists_name_every_payload_file_and_the_size(self):
        self.unzip()
        there = {p.relative_to(self.bag).as_posix(): p.stat().st_size
                 for p in (self.bag / "data").rglob("*") if p.is_file()}
        lines = (self.bag / "manifest-sha256.txt").read_text("utf-8").splitlines()
        listed = [line.split(maxsplit=1)[1] for line in lines]
        self.assertEqual(sorted(listed), sorted(there))
        info = dict(line.split(": ", 1) for line in (self.bag / "bag-info.txt").read_text("utf-8").splitlines())
        self.assertEqual(info["Payload-Oxum"], f"{sum(there.values())}.{len(there)}")
        self.assertTrue(any("photos" in name for name in there) and any("voice" in name for name in there))

    def test_zipfile_and_jsonschema_accept_it(self):
        with zipfile.ZipFile(self.file) as archive:
            self.assertIsNone(archive.testzip())
            document = json.loads(archive.read("Orchard V-twin/data/session.json"))
            table = archive.read("Orchard V-twin/data/readings.csv").decode("utf-8")
            for entry in archive.infolist():
                if entry.filename.endswith((".jpg", ".pdf")):
                    self.assertEqual(entry.compress_type, zipfile.ZIP_STORED, entry.filename)
        schema = json.loads(pathlib.Path(SCHEMA_FILE).read_text("utf-8"))
        jsonschema.Draft202012Validator(schema).validate(document)
        rows = list(csv.DictReader(io.StringIO(table, newline="")))
        readings = [reading for visit in document["visits"] for reading in visit.get("readings", [])]
        self.assertEqual([row["reading_id"] for row in rows], [reading["id"] for reading in readings])
        for row, reading in zip(rows, readings):
            for name in ("first", "final", "set", "held"):
                self.assertEqual(row[name + "_typed"], reading.get(name, {}).get("digits", ""))

    def test_a_bag_made_by_hand_is_read(self):
        self.unzip()
        for path in self.bag.iterdir():
            if path.name != "data":
                path.unlink()
        (self.bag / "bagit.txt").write_text("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n")
        files = sorted(p.relative_to(self.bag).as_posix() for p in (self.bag / "data").rglob("*") if p.is_file())
        (self.bag / "manifest-sha256.txt").write_text(run("sha256sum", *files, cwd=self.bag))
        packed = self.pack()
        self.assertEqual(run(TOOL, "check", packed), "")
        self.assertEqual(run(TOOL, "read", packed), run(TOOL, "read", self.file))

    def test_a_bag_made_by_hand_with_sha512sum_is_read(self):
        self.unzip()
        for path in self.bag.iterdir():
            if path.name not in ("data", "bagit.txt"):
                path.unlink()
        files = sorted(p.relative_to(self.bag).as_posix() for p in (self.bag / "data").rglob("*") if p.is_file())
        (self.bag / "manifest-sha512.txt").write_text(run("sha512sum", *files, cwd=self.bag))
        (self.bag / "tagmanifest-sha512.txt").write_text(run("sha512sum", "bagit.txt", cwd=self.bag))
        self.assertEqual(run(TOOL, "check", self.pack()), "")
        # Both lists are held: a right short one doesn't cover up a wrong long one.
        (self.bag / "manifest-sha256.txt").write_text(run("sha256sum", *files, cwd=self.bag))
        self.assertEqual(run(TOOL, "check", self.pack()), "")
        spoilt = (self.bag / "manifest-sha512.txt").read_text()
        (self.bag / "manifest-sha512.txt").write_text(("1" if spoilt[0] == "0" else "0") + spoilt[1:])
        self.assertEqual(run(TOOL, "check", self.pack()), "bag.checksum\n")

    def test_a_bag_packed_again_is_read_and_a_changed_one_is_not(self):
        self.unzip()
        self.assertEqual(run(TOOL, "check", self.pack()), "")
        photo = next((self.bag / "data" / "photos").iterdir())
        photo.write_bytes(photo.read_bytes() + b"!")
        self.assertIn("bag.checksum", run(TOOL, "check", self.pack()).split())
        photo.unlink()
        self.assertIn("bag.missing_file", run(TOOL, "check", self.pack()).split())

    def test_a_link_packed_by_zip_is_refused(self):
        self.unzip()
        (self.bag / "data" / "link").symlink_to("/etc/hostname")
        packed = self.folder / "link.zip"
        run("zip", "-q", "-r", "--symlinks", packed, self.bag.name, cwd=self.bag.parent)
        self.assertEqual(run(TOOL, "check", packed), "archive.link\n")

    def test_a_path_upwards_packed_by_zipfile_is_refused(self):
        packed = self.folder / "up.zip"
        shutil.copy(self.file, packed)
        with zipfile.ZipFile(packed, "a") as archive:
            archive.writestr("Orchard V-twin/../../up", "x")
        self.assertEqual(run(TOOL, "check", packed), "bag.path\n")

    def test_attachments_are_named_by_their_bytes(self):
        self.unzip()
        for path in [*(self.bag / "data/photos").iterdir(), *(self.bag / "data/voice").iterdir()]:
            self.assertEqual(path.stem, hashlib.sha256(path.read_bytes()).hexdigest())


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
