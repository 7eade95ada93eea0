# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
# Writes the reference data into a C++ file, so that the core finds it without a path.
# cmake -DFROM=assets/reference -DTO=file.cpp -P embed.cmake
set(out "// Written by core/findings/embed.cmake.\n#include \"core/findings/reference.h\"\n\nnamespace lapwing::findings {\n\nReferenceTexts built_in_texts() {\n    return {\n")
foreach(name limits wet exits prepare cautions assumptions)
  file(READ ${FROM}/${name}.json text)
  string(APPEND out "        R\"~json~(${text})~json~\",\n")
endforeach()
string(APPEND out "    };\n}\n\n}  // namespace lapwing::findings\n")
file(WRITE ${TO} "${out}")
