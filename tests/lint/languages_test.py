# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The tools for translations find what lupdate can't see, and complain about what is wrong."""

import pathlib
import sys
import tempfile
import unittest

import tree

sys.path.insert(0, str(tree.TOP / "assets" / "i18n"))

import catalogue  # noqa: E402
import sources  # noqa: E402
from sources import Text  # noqa: E402


class Scanner(unittest.TestCase):
    def calls(self, code):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "one.cpp"
            path.write_text(code, encoding="utf-8")
            return list(sources.calls(path))

    def test_strings_in_pieces_are_one(self):
        self.assertIn(("SAY", ["a.b", "One two: “three”"], []), self.calls('SAY("a.b",\n  "One " // why\n "two: “three”"),'))

    def test_what_is_no_string_is_none(self):
        self.assertEqual(self.calls('fail(code, "{} is \\"so\\"", f(x, "y"))')[0], ("fail", [None, '{} is "so"', None], ["y"]))

    def test_comments_are_no_code(self):
        self.assertEqual(self.calls('// SAY("a.b", "no")\n/* fail("a.b", "no") */'), [])

    def test_fields_get_numbers(self):
        self.assertEqual(sources.numbered("{} of {:.6g} in {{braces}}"), "%1 of %2 in {braces}")

    def test_every_kind_of_text_is_found(self):
        found = {text.key for text in sources.gather()}
        for context in ("Findings", "Errors", "Reference", "Report", "SettingsPage", "lapwing::PadModel"):
            self.assertTrue(any(key[0] == context for key in found), context)
        self.assertIn(("Errors", "Still to be typed: %1.", ""), found)
        self.assertIn(("Findings", "Every cylinder seals well.", ""), found)


class Faults(unittest.TestCase):
    def faults(self, source, *forms, plural=False):
        return list(catalogue.faults(Text("X", source, plural=plural), list(forms), "de"))

    def test_a_good_one(self):
        self.assertEqual(self.faults("%1 of %2.", "%2 von %1."), [])
        self.assertEqual(self.faults("%n second(s)", "eine Sekunde", "%n Sekunden", plural=True), [])

    def test_a_long_word_needs_its_breaks(self):
        self.assertEqual(self.faults("Head gasket.", "Zylinderkopfdichtung."), [])
        self.assertTrue(self.faults("Head gasket.", "Zylinderkopfdichtungsmaterial."))
        # A name that the source has too.
        self.assertEqual(self.faults("It is folderlistmodel.", "Es ist folderlistmodel."), [])

    def test_breaks_leave_no_letter_alone_and_no_part_too_long(self):
        for line in catalogue.BREAKS.values():
            parts = line.split("|")
            self.assertGreater(len(parts), 1, line)
            self.assertTrue(all(2 <= len(part) <= 12 for part in parts), line)

    def test_bad_ones(self):
        for source, *forms in (("%1 of %2", "%1 von %1"), ("One", ""), ("One.", "Eins"), ("One ", "Eins"),
                               ("One two", "Eins  zwei"), ("<b>One</b>", "Eins"), ("One", "Eins", "Zwei")):
            self.assertTrue(self.faults(source, *forms), source)
        self.assertTrue(self.faults("%n second(s)", "%n Sekunden", plural=True))
        self.assertTrue(self.faults("%n second(s)", "eine Sekunde", "Sekunden", plural=True))


class Files(unittest.TestCase):
    def test_written_and_read_again(self):
        texts = [Text("A", "One & \"two\" <b>", hint="h"), Text("A", "%n thing(s)", plural=True), Text("B", "none", "c:1")]
        one = catalogue.Catalogue("de")
        one.done = {texts[0].key: ["Eins & \"zwei\" <b>"], texts[1].key: ["ein Ding", "%n Dinge"]}
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "x.ts"
            one.write(texts, path)
            again = catalogue.Catalogue.read("de", path)
        self.assertEqual(again.done, one.done)
        self.assertEqual([text.key for text in again.pending(texts)], [texts[2].key])

    def test_what_is_gone_is_let_go_and_its_words_are_offered(self):
        one = catalogue.Catalogue("de")
        one.done = {("A", "The valve is shut", ""): ["Das Ventil ist zu"], ("A", "Gone", ""): ["Weg"]}
        texts = [Text("A", "The valve is shut.")]
        gone = one.follow(texts)
        self.assertEqual(len(gone), 2)
        self.assertEqual(one.done, {})
        self.assertEqual(one.old, {texts[0].key: ["Das Ventil ist zu"]})


if __name__ == "__main__":
    unittest.main()
