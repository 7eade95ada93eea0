# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
# Writes the demo's session files into a C++ file.
# cmake -DFROM=assets/demo -DTO=file.cpp -P embed.cmake
set(out "// Written by platform/cli/embed.cmake.\n#include \"platform/cli/demo_files.h\"\n\nnamespace lapwing::cli {\n")
foreach(name orchard-v-twin harbour-six)
  file(READ ${FROM}/${name}.lapwing bytes HEX)
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${bytes}")
  string(REPLACE "-" "_" function ${name})
  string(APPEND out "\nstd::string_view ${function}_file() {\n    static constexpr unsigned char bytes[] = {${bytes}};\n"
    "    return {reinterpret_cast<const char*>(bytes), sizeof bytes};\n}\n")
endforeach()
string(APPEND out "\n}  // namespace lapwing::cli\n")
file(WRITE ${TO} "${out}")
