# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The closing line of tests/run tells the truth, with real ctest runs of made-up tests."""

import pathlib
import subprocess
import sys
import tempfile
import unittest

import tree


def tally(tests, broken=()):
    """Runs ctest on the lines of a CTestTestfile.cmake; returns (exit code, last line, everything)."""
    with tempfile.TemporaryDirectory() as folder:
        where = pathlib.Path(folder)
        (where / "CTestTestfile.cmake").write_text("\n".join(tests), "utf-8")
        result = where / "results.xml"
        subprocess.run(["ctest", "--test-dir", folder, "--output-junit", str(result)], capture_output=True)
        arguments = ["--broken", str(len(broken)), *broken, "--", f"dev={result}"]
        run = subprocess.run(
            [sys.executable, "-B", str(tree.TOP / "tests/tally.py"), *arguments], capture_output=True, text=True
        )
        return run.returncode, run.stdout.splitlines()[-1], run.stdout


class TallyTest(unittest.TestCase):
    PASSES = 'add_test(good "/bin/true")'

    def test_all_pass(self):
        self.assertEqual(tally([self.PASSES])[:2], (0, "1 passed, 0 failed"))

    def test_one_fails(self):
        code, last, everything = tally([self.PASSES, 'add_test(bad "/bin/false")'])
        self.assertEqual((code, last), (1, "1 passed, 1 failed"))
        self.assertIn("bad (dev) failed", everything)

    def test_a_skip_is_counted_as_one(self):
        skips = ['add_test(idle sh -c "exit 77")', "set_tests_properties(idle PROPERTIES SKIP_RETURN_CODE 77)"]
        code, last, everything = tally([self.PASSES, *skips])
        self.assertEqual((code, last), (0, "1 passed, 0 failed, 1 skipped"))
        self.assertIn("not shown on this machine: idle (dev)", everything)

    def test_a_program_that_is_missing_fails(self):
        self.assertEqual(tally([self.PASSES, 'add_test(gone "/no/such/program")'])[:2], (1, "1 passed, 1 failed"))

    def test_a_disabled_test_fails(self):
        off = ['add_test(off "/bin/true")', "set_tests_properties(off PROPERTIES DISABLED TRUE)"]
        self.assertEqual(tally([self.PASSES, *off])[:2], (1, "1 passed, 1 failed"))

    def test_a_broken_step_fails(self):
        code, last, everything = tally([self.PASSES], broken=["The build failed."])
        self.assertEqual((code, last), (1, "1 passed, 1 failed"))
        self.assertIn("The build failed.", everything)

    def test_no_test_at_all_fails(self):
        self.assertEqual(tally([])[:2], (1, "0 passed, 1 failed"))


if __name__ == "__main__":
    unittest.main()
