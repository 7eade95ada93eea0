# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""qmllint over every QML module, through the build target all_qmllint. A warning fails.

qml.py BUILD_FOLDER
"""

import re
import subprocess
import sys

import tree


def main(build):
    if not any(p.startswith("qml/") and p.endswith(".qml") for p in tree.files()):
        print("Skipped: the tree has no QML file.")
        return 77
    run = subprocess.run(
        ["cmake", "--build", build, "--target", "all_qmllint"],
        stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
    )
    findings = re.findall(r"^(?:Warning|Error): .*$", run.stdout, re.MULTILINE)
    if run.returncode or findings:
        print(run.stdout)
        print(f"{len(findings)} warnings of qmllint; the build target ended with {run.returncode}.")
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
