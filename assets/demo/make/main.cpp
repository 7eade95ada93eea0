// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <fmt/format.h>

#include <cstdlib>
#include <ctime>
#include <filesystem>

#include "assets/demo/make/story.h"
#include "core/exchange/session_file.h"
#include "core/record/record.h"

namespace {

lapwing::Status write(const lapwing::Dossier& made, const std::filesystem::path& target) {
    using namespace lapwing;
    // Read back as any file from outside is: a demo with an impossible record is none.
    auto dossier = dossier_from_json(to_json(made));
    if (!dossier) return tl::unexpected(dossier.error());
    exchange::Outgoing outgoing;
    outgoing.dossier = std::move(*dossier);
    outgoing.with_owner = true;  // invented too
    outgoing.at = outgoing.dossier.visits.back().session.opened_at;
    return exchange::write_session_file(target, outgoing).map([](const auto&) {});
}

}  // namespace

int main(int count, char** words) {
    if (count != 2) {
        fmt::print(stderr, "usage: lapwing-make-demo FOLDER\n");
        return 2;
    }
    // ZIP archives hold local times.
    setenv("TZ", "UTC0", 1);
    tzset();
    const std::filesystem::path folder = words[1];
    std::filesystem::create_directories(folder);
    for (const auto& [dossier, name] : {std::pair{lapwing::demo::orchard_v_twin(), "orchard-v-twin.lapwing"},
                                        std::pair{lapwing::demo::harbour_six(), "harbour-six.lapwing"}}) {
        if (const auto written = write(dossier, folder / name); !written) {
            fmt::print(stderr, "{}: {}\n", name, written.error().english);
            return 1;
        }
    }
    return 0;
}
