# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
# Writes the working assumptions into a C++ file, so that the core finds them without a path.
# cmake -DFROM=odds.json -DTO=file.cpp -P embed.cmake
# A raw string may only be so long (16 KiB is what every compiler takes), hence the pieces.
file(READ ${FROM} text)
set(out "// Written by core/odds/embed.cmake.\n#include \"core/odds/assumptions.h\"\n\nnamespace lapwing::odds {\n\nstd::string_view built_in_text() {\n    static constexpr char text[] =\n")
string(LENGTH "${text}" length)
set(at 0)
while(at LESS length)
  string(SUBSTRING "${text}" ${at} 8000 piece)
  string(APPEND out "        R\"~json~(${piece})~json~\"\n")
  math(EXPR at "${at} + 8000")
endwhile()
string(APPEND out "        ;\n    return {text, sizeof(text) - 1};\n}\n\n}  // namespace lapwing::odds\n")
file(WRITE ${TO} "${out}")
