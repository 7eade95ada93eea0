// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <array>

#include "platform/cli/demo_files.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    constexpr std::array<std::string_view, 2> engines{"v-twin", "six"};
    const bool six = arguments.choice("--engine", engines) == 1;
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    return write_output(arguments.text("-o"), six ? harbour_six_file() : orchard_v_twin_file());
}

}  // namespace

Verb demo_verb() {
    return {"demo",
            "writes the session file of an invented engine",
            {},
            {{"--engine", "NAME",
              "v-twin (default): burnt exhaust valve and worn rings, three visits; six: a leaking "
              "head gasket between two cylinders"},
             {"-o", "FILE", "where to", true}},
            {},
            run};
}

}  // namespace lapwing::cli
