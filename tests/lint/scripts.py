# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""shellcheck over every shell script, and every script with a first line that names its interpreter can be run."""

import os
import subprocess
import sys

import tree


def main():
    shell, faults = [], 0
    for path in tree.files():
        with open(tree.TOP / path, "rb") as file:
            first = file.readline(80)
        is_script = first.startswith(b"#!")
        if is_script and not os.access(tree.TOP / path, os.X_OK):
            print(f"{path}: starts with #! but is not executable (chmod +x)")
            faults += 1
        if path.endswith(".sh") or (is_script and first.rstrip().endswith((b"/bash", b"/sh"))):
            shell.append(path)
    if not shell:
        print("No shell script found.")
        return 1
    checked = subprocess.run(["shellcheck", "--external-sources", *shell], cwd=tree.TOP)
    return 1 if faults or checked.returncode else 0


if __name__ == "__main__":
    sys.exit(main())
