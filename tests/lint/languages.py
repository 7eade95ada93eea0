# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The .ts files hold every text of the sources and no other, and every translation is whole: its places, its
forms for one and many, its blanks and its end.

languages.py
"""

import subprocess
import sys

import tree

I18N = tree.TOP / "assets" / "i18n"


def main():
    # Both are run even when the first complains.
    ends = [subprocess.run([sys.executable, "-B", I18N / tool, *arguments]).returncode
            for tool, *arguments in (["gather", "--check"], ["words", "check"])]
    return 1 if any(ends) else 0


if __name__ == "__main__":
    sys.exit(main())
