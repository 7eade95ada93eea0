# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""layering.py complains about each kind of fault, and about nothing in a good tree."""

import pathlib
import tempfile
import unittest

import layering


class LayeringTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.top = pathlib.Path(folder.name)
        self.write("core/base/result.h", "<string>")

    def write(self, path, *includes):
        text = "".join(f"#include {i}\n" if i[0] in '<"' else i + "\n" for i in includes)
        (self.top / path).parent.mkdir(parents=True, exist_ok=True)
        (self.top / path).write_text(text, "utf-8")

    def complaint(self):
        return "\n".join(layering.faults(self.top))

    def assert_allowed(self, path, *includes):
        self.write(path, *includes)
        self.assertEqual(self.complaint(), "")
        (self.top / path).unlink()

    def assert_refused(self, path, include, words="may not include"):
        self.write(path, include)
        self.assertIn(f"{path}:1: ", self.complaint())
        self.assertIn(words, self.complaint())
        (self.top / path).unlink()

    def test_what_is_allowed(self):
        self.assert_allowed("core/units/a.h", '"core/base/result.h"', '"core/units/b.h"', "<vector>")
        self.assert_allowed("core/uncertainty/a.h", '"core/physics/gas.h"')
        self.assert_allowed("core/workflow/a.h", '"core/store/a.h"', '"core/exchange/a.h"', '"core/report/a.h"')
        self.assert_allowed("core/record/a.cpp", "<nlohmann/json.hpp>")
        self.assert_allowed("qml/pages/a.h", '"core/workflow/a.h"', '"platform/api/share.h"', "<QObject>")
        self.assert_allowed("qml/app/a.cpp", '"platform/linux/share.h"', '"a.moc"')
        self.assert_allowed("platform/linux/a.cpp", '"platform/api/share.h"', '"core/base/result.h"')
        self.assert_allowed("platform/cli/a.cpp", '"core/report/a.h"', '"qml/print/a.h"', '"qml/format/a.h"')
        self.assert_allowed("core/base/a.h", '// #include "core/store/a.h"', '/* #include "qml/app/a.h" */')

    def test_upwards_and_sideways_in_the_core(self):
        self.assert_refused("core/base/a.h", '"core/units/a.h"')
        self.assert_refused("core/units/a.h", '"core/model/a.h"')
        self.assert_refused("core/physics/a.h", '"core/units/a.h"')
        self.assert_refused("core/physics/a.h", '"core/uncertainty/a.h"')
        self.assert_refused("core/store/a.h", '"core/exchange/a.h"')
        self.assert_refused("core/exchange/a.h", '"core/store/a.h"')
        self.assert_refused("core/vision/a.h", '"core/model/a.h"')
        self.assert_refused("core/findings/a.h", "<core/report/a.h>")

    def test_out_of_the_core(self):
        self.assert_refused("core/workflow/a.cpp", '"qml/format/a.h"')
        self.assert_refused("core/workflow/a.cpp", '"platform/api/share.h"')
        self.assert_refused("core/base/a.h", '"tests/core/a/b.h"')

    def test_qt_in_the_core(self):
        for header in ("<QString>", "<QtCore/QString>", "<QtCore>", "<qstring.h>", '"QObject"'):
            self.assert_refused("core/base/a.cpp", header, "knows no Qt")
        self.assert_refused("tests/core/base/a.cpp", "<QTest>", "knows no Qt")
        self.write("core/CMakeLists.txt", "target_link_libraries(lapwing_base PUBLIC Qt6::Core)")
        self.assertIn("core/CMakeLists.txt: the core knows no Qt", self.complaint())

    def test_json_in_a_header(self):
        self.assert_refused("core/record/a.h", "<nlohmann/json.hpp>", ".cpp files only")

    def test_platform_implementations(self):
        self.assert_refused("qml/pages/a.cpp", '"platform/linux/share.h"')
        self.assert_refused("qml/viewmodels/a.cpp", '"platform/fake/share.h"')
        self.assert_refused("platform/linux/a.cpp", '"platform/fake/share.h"')
        self.assert_refused("platform/linux/a.cpp", '"core/model/a.h"')
        self.assert_refused("platform/api/a.h", '"core/store/a.h"')
        self.assert_refused("platform/cli/a.cpp", '"qml/pages/a.h"')

    def test_includes_that_are_not_rooted(self):
        self.assert_refused("core/base/a.cpp", '"result.h"', "not rooted")
        self.assert_refused("core/units/a.cpp", '"../base/result.h"', "not rooted")

    def test_rooms_that_nobody_named(self):
        self.write("core/misc/a.h", "<string>")
        self.write("platform/other/a.h", "<string>")
        self.write("core/a.h", "<string>")
        complaint = self.complaint()
        self.assertIn("core/misc is not in the table", complaint)
        self.assertIn("platform/other is not in the table", complaint)
        self.assertIn("core/a.h: stands in no room", complaint)

    def test_cycles(self):
        self.write("core/base/a.h", '"core/base/b.h"')
        self.write("core/base/b.h", '"core/base/c.h"')
        self.write("core/base/c.h", '"core/base/a.h"')
        self.assertIn("a cycle of files: core/base/a.h -> core/base/b.h -> core/base/c.h -> core/base/a.h",
                      self.complaint())
        self.write("qml/print/a.h", '"qml/charts/a.h"')
        self.write("qml/charts/b.h", '"qml/print/b.h"')
        self.assertIn("a cycle of rooms: qml/charts -> qml/print -> qml/charts", self.complaint())

    def test_an_empty_tree(self):
        (self.top / "core/base/result.h").unlink()
        self.assertIn("no C++ file found", self.complaint())

    def test_the_table_itself_goes_one_way(self):
        self.assertIsNone(layering.cycle(layering.CORE))


if __name__ == "__main__":
    unittest.main()
