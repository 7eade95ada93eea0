# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The iOS tree's Objective-C++ under clang, against Qt's real headers. Apple's own are stood in for by ios_api.txt.
Nothing of it is linked or run: that takes Xcode and a phone."""

import pathlib
import subprocess
import tempfile
import unittest

TOP = pathlib.Path(__file__).resolve().parents[3]
QT = "/usr/include/x86_64-linux-gnu/qt6"


class ObjectiveCpp(unittest.TestCase):
    def test_compiles_without_a_warning(self):
        with tempfile.TemporaryDirectory() as folder:
            for part in pathlib.Path(__file__).with_name("ios_api.txt").read_text("utf-8").split("\n== ")[1:]:
                name, body = part.split("\n", 1)
                file = pathlib.Path(folder) / name
                file.parent.mkdir(exist_ok=True)
                file.write_text(body, "utf-8")
            said = subprocess.run(
                ["clang++", "-x", "objective-c++", "-std=c++20", "-fPIC", "-fsyntax-only", "-fobjc-arc", "-fblocks",
                 "-fobjc-runtime=ios-16", "-D__APPLE__", "-Wall", "-Wextra", "-Wno-unused-parameter", "-Werror",
                 f"-I{folder}", f"-I{TOP}", f"-I{QT}", *(f"-I{QT}/{m}" for m in ("QtCore", "QtGui", "QtQml", "QtNetwork")),
                 str(TOP / "platform/ios/ios_devices.mm")],
                stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
            self.assertEqual((said.returncode, said.stdout), (0, ""))


if __name__ == "__main__":
    unittest.main()
