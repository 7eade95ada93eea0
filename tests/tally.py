# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Counts the tests of several ctest runs and prints the closing lines of tests/run.

tally.py --broken N SENTENCE... -- PRESET=RESULTS.xml...

A test counts as skipped only if it said so itself (its SKIP_RETURN_CODE or skip expression); one that
ctest could not start or that is switched off counts as failed, and so does a run in which nothing passed.
"""

import sys
import xml.etree.ElementTree as xml


def verdict(case):
    status = case.get("status")
    if status == "run":
        return "passed"
    said = case.find("skipped")
    if status == "notrun" and said is not None and said.get("message", "").startswith("SKIP_"):
        return "skipped"
    return "failed"


def main(arguments):
    count = int(arguments[1])
    problems = list(arguments[2 : 2 + count])
    skipped = []
    tally = {"passed": 0, "failed": len(problems), "skipped": 0}
    slowest = []
    for result in arguments[3 + count :]:
        preset, _, path = result.partition("=")
        for case in xml.parse(path).getroot().iter("testcase"):
            name = f"{case.get('name')} ({preset})"
            outcome = verdict(case)
            tally[outcome] += 1
            slowest.append((float(case.get("time", 0)), name))
            if outcome == "failed":
                problems.append(f"{name} failed")
            elif outcome == "skipped":
                skipped.append(name)
    if tally["passed"] == 0 and tally["failed"] == 0:
        problems.append("no test ran")
        tally["failed"] = 1
    for seconds, name in sorted(slowest, reverse=True)[:5]:
        print(f"  {seconds:7.1f} s  {name}")
    for problem in problems:
        print("  ! " + problem)
    if skipped:
        print(f"  ? not shown on this machine: {', '.join(skipped)}")
    not_shown = f", {len(skipped)} skipped" if skipped else ""
    print(f"{tally['passed']} passed, {tally['failed']} failed{not_shown}")
    return 1 if tally["failed"] else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
