# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Every MUST of RFC 8493 that a writer has to keep, on files that we wrote, with Python's own zipfile and hashlib.
The section of the RFC stands at each test. What a reader has to keep is in tests/core/exchange/bag_test.cpp.

bagit.py SESSION_FILE_TOOL LIBRARY_TOOL
"""

import hashlib
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
import zipfile

TOOL, LIBRARY = sys.argv[1:3]


class Written:
    """One archive as it lies there, by paths below its top folder."""

    def __init__(self, file):
        self.archive = zipfile.ZipFile(file)
        self.names = self.archive.namelist()
        self.tops = {name.split("/", 1)[0] for name in self.names}
        self.files = {name.split("/", 1)[1]: self.archive.read(name) for name in self.names}
        self.payload = {k: v for k, v in self.files.items() if k.startswith("data/")}

    def lines(self, name):
        return [line.split("  ", 1) for line in self.files[name].decode("utf-8").splitlines()]


class Musts:
    """The same tests for each kind of file that we write."""

    def test_2_1_base_directory_has_declaration_payload_and_manifest(self):
        self.assertIn("bagit.txt", self.bag.files)
        self.assertTrue(self.bag.payload)
        self.assertIn("manifest-sha256.txt", self.bag.files)

    def test_2_1_1_declaration_has_exactly_two_lines(self):
        lines = self.bag.files["bagit.txt"].decode("utf-8").splitlines()
        self.assertEqual(len(lines), 2)
        self.assertRegex(lines[0], r"^BagIt-Version: \d+\.\d+$")
        self.assertRegex(lines[1], r"^Tag-File-Character-Encoding: \S+$")

    def test_2_1_1_version_is_1_0(self):
        self.assertTrue(self.bag.files["bagit.txt"].startswith(b"BagIt-Version: 1.0\n"))

    def test_2_1_1_declaration_is_utf_8_without_a_byte_order_mark(self):
        self.assertFalse(self.bag.files["bagit.txt"].startswith(b"\xef\xbb\xbf"))
        self.bag.files["bagit.txt"].decode("utf-8")

    def test_2_1_2_payload_stands_below_data(self):
        for name in self.bag.files:
            self.assertTrue(name.startswith("data/") or "/" not in name, name)

    def test_2_1_3_manifest_name_is_its_algorithm_in_lower_case(self):
        for name in self.bag.files:
            if "manifest-" in name:
                self.assertRegex(name, r"^(tag)?manifest-[a-z0-9]+\.txt$")
                # An algorithm by its name, as long as its checksums are.
                length = hashlib.new(name.rsplit("-", 1)[1].removesuffix(".txt")).digest_size * 2
                for checksum, _ in self.bag.lines(name):
                    self.assertEqual(len(checksum), length)

    def test_2_1_3_manifest_lines_are_checksum_whitespace_path(self):
        for line in self.bag.files["manifest-sha256.txt"].decode("utf-8").splitlines():
            self.assertRegex(line, r"^[0-9a-f]{64}[ \t]+data/\S.*$")

    def test_2_1_3_paths_use_slashes_and_stay_inside(self):
        for _, path in self.bag.lines("manifest-sha256.txt"):
            self.assertNotIn("\\", path)
            self.assertFalse(path.startswith(("/", "~")))
            self.assertNotIn("..", path.split("/"))
            self.assertNotIn(".", path.split("/"))

    def test_2_1_3_line_ends_and_percent_in_paths_are_encoded(self):
        for _, path in self.bag.lines("manifest-sha256.txt"):
            self.assertNotRegex(re.sub(r"%(0A|0D|25)", "", path), "[\r\n%]")

    def test_2_1_3_no_payload_file_is_listed_twice(self):
        paths = [path for _, path in self.bag.lines("manifest-sha256.txt")]
        self.assertEqual(len(paths), len(set(paths)))

    def test_2_1_3_every_payload_file_is_listed(self):
        self.assertEqual({path for _, path in self.bag.lines("manifest-sha256.txt")}, set(self.bag.payload))

    def test_2_1_3_checksums_are_right(self):
        for checksum, path in self.bag.lines("manifest-sha256.txt"):
            self.assertEqual(hashlib.sha256(self.bag.files[path]).hexdigest(), checksum, path)

    def test_2_2_2_bag_info_lines_are_label_colon_value(self):
        for line in self.bag.files["bag-info.txt"].decode("utf-8").splitlines():
            self.assertRegex(line, r"^[^\s:][^:]*: \S.*$|^[ \t]+\S.*$")

    def test_2_2_2_bagging_date_is_a_date(self):
        self.assertRegex(self.bag.files["bag-info.txt"].decode(), r"(?m)^Bagging-Date: \d{4}-\d{2}-\d{2}$")

    def test_2_2_2_payload_oxum_stands_at_most_once_and_fits(self):
        found = re.findall(r"(?m)^Payload-Oxum: (\d+)\.(\d+)$", self.bag.files["bag-info.txt"].decode())
        self.assertLessEqual(len(found), 1)
        for octets, count in found:
            self.assertEqual(int(octets), sum(len(v) for v in self.bag.payload.values()))
            self.assertEqual(int(count), len(self.bag.payload))

    def test_2_2_3_nothing_is_left_to_fetch(self):
        self.assertNotIn("fetch.txt", self.bag.files)

    def test_2_2_4_tag_files_are_utf_8_text(self):
        for name, data in self.bag.files.items():
            if not name.startswith("data/"):
                self.assertNotIn("\0", data.decode("utf-8"))

    def test_4_1_archive_holds_one_folder_only(self):
        self.assertEqual(len(self.bag.tops), 1)

    def test_5_1_names_mean_the_same_on_every_file_system(self):
        folded = [name.lower() for name in self.bag.names]
        self.assertEqual(len(folded), len(set(folded)))
        for name in self.bag.names:
            self.assertNotRegex(name, r'[<>:"|?*\\\x00-\x1f]')


class SessionFile(Musts, unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = pathlib.Path(tempfile.mkdtemp())
        file = cls.folder / "Mill Lane 7.lapwing"
        subprocess.run([LIBRARY, "make", cls.folder / "library", "1", "3", "9000"], check=True, capture_output=True)
        subprocess.run([LIBRARY, "hand-over", cls.folder / "library", file], check=True, capture_output=True)
        cls.bag = Written(file)

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.folder)

    def test_2_2_1_tag_manifest_lists_every_other_tag_file(self):
        listed = {path for _, path in self.bag.lines("tagmanifest-sha256.txt")}
        tags = {name for name in self.bag.files if not name.startswith(("data/", "tagmanifest-"))}
        # The signature is over the tag manifest, so it can't stand in it.
        self.assertEqual(listed, tags - {"signature.json"})
        self.assertIn("signature.json", tags)

    def test_2_2_1_tag_manifest_does_not_list_itself_or_payload(self):
        for _, path in self.bag.lines("tagmanifest-sha256.txt"):
            self.assertFalse(path.startswith(("tagmanifest-", "data/")))

    def test_2_2_1_tag_checksums_are_right(self):
        for checksum, path in self.bag.lines("tagmanifest-sha256.txt"):
            self.assertEqual(hashlib.sha256(self.bag.files[path]).hexdigest(), checksum, path)

    def test_2_2_1_tag_manifest_uses_an_algorithm_of_the_payload_manifest(self):
        algorithms = {name.split("-")[1] for name in self.bag.files if name.startswith("manifest-")}
        tags = {name.split("-")[1] for name in self.bag.files if name.startswith("tagmanifest-")}
        self.assertTrue(tags <= algorithms)


class BackupFile(Musts, unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = pathlib.Path(tempfile.mkdtemp())
        file = cls.folder / "all.lapwing-backup"
        subprocess.run([LIBRARY, "make", cls.folder / "library", "2", "1", "9000"], check=True, capture_output=True)
        subprocess.run([LIBRARY, "back-up", cls.folder / "library", file], check=True, capture_output=True)
        cls.bag = Written(file)

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.folder)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
