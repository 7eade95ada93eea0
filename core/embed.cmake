# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
# Writes text files into a C++ function that returns their contents in braces, so that the core finds them without a
# path:
# cmake -DFROM=folder -DNAMES=limits,wet -DTO=file.cpp -DHEADER=core/room/name.h -DNAMESPACE=lapwing::room
#       "-DFUNCTION=ReferenceTexts built_in_texts()" -P embed.cmake
# A raw string may only be so long (16 KiB is what every compiler takes), hence the pieces. They end with a line, so
# that no letter is cut in two.
set(out "// Written by core/embed.cmake.\n#include \"${HEADER}\"\n\nnamespace ${NAMESPACE} {\n\n${FUNCTION} {\n    return {\n")
string(REPLACE "," ";" names "${NAMES}")
foreach(name ${names})
  file(READ ${FROM}/${name}.json text)
  string(LENGTH "${text}" length)
  while(length GREATER 0)
    string(SUBSTRING "${text}" 0 12000 piece)
    string(FIND "${piece}" "\n" end REVERSE)
    math(EXPR end "${end} + 1")
    if(end EQUAL 0)
      message(FATAL_ERROR "${FROM}/${name}.json has a line that is too long or lacks its end")
    endif()
    string(SUBSTRING "${text}" 0 ${end} piece)
    string(SUBSTRING "${text}" ${end} -1 text)
    string(LENGTH "${text}" length)
    string(APPEND out "        R\"~json~(${piece})~json~\"\n")
  endwhile()
  string(APPEND out "        ,\n")
endforeach()
string(APPEND out "    };\n}\n\n}  // namespace ${NAMESPACE}\n")
file(WRITE ${TO} "${out}")
