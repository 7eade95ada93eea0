# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""house.py complains about a bad tree and is content with a good one."""

import pathlib
import tempfile
import unittest

import house

LICENCE = "// SPDX-FileCopyrightText: 2026 The Lapwing authors\n// SPDX-License-" + "Identifier: Apache-2.0\n"


class HouseTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.top = pathlib.Path(folder.name)
        for name in house.TOP_LEVEL:
            if "." in name or name == "LICENSE":
                self.write(name, LICENCE)
            else:
                self.write(name + "/kept.txt", "")

    def write(self, path, text):
        (self.top / path).parent.mkdir(parents=True, exist_ok=True)
        (self.top / path).write_text(text, "utf-8")

    def complaint(self):
        return "\n".join(house.faults(self.top))

    def test_a_good_tree_is_left_alone(self):
        self.write("core/base/a.h", LICENCE + "int a();\n")
        self.write(".ci/run", "#!/bin/sh\n" + LICENCE)
        self.assertEqual(self.complaint(), "")

    def test_a_stranger_at_the_top_level(self):
        self.write("notes.txt", "")
        self.assertIn("notes.txt: does not belong", self.complaint())

    def test_something_missing_at_the_top_level(self):
        (self.top / "README.md").unlink()
        self.assertIn("README.md: missing", self.complaint())

    def test_source_without_licence(self):
        self.write("core/base/a.cpp", "int a() { return 1; }\n")
        self.assertIn("core/base/a.cpp: no SPDX-FileCopyrightText:", self.complaint())
        self.assertIn("core/base/a.cpp: no SPDX-License-" + "Identifier:", self.complaint())

    def test_script_without_ending_and_licence(self):
        self.write("tests/go", "#!/bin/sh\ntrue\n")
        self.assertIn("tests/go: no SPDX", self.complaint())

    def test_paths_and_hosts_of_one_machine(self):
        for line in ("/" + "home/ann/x", "see /" + "work/x", "https://deb" + ".debian.org/x", "https://pypi" + ".org/x"):
            self.write("core/base/a.cpp", LICENCE + "// " + line + "\n")
            self.assertIn("core/base/a.cpp:3: ", self.complaint(), line)

    def test_long_files_are_noted(self):
        self.assertTrue(list(house.long_files("core/base/a.cpp", "x\n" * 401)))
        self.assertTrue(list(house.long_files("qml/components/A.qml", "x\n" * 151)))
        self.assertFalse(list(house.long_files("qml/pages/A.qml", "x\n" * 151)))


if __name__ == "__main__":
    unittest.main()
