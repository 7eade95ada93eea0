// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Makes a library of twenty engines with two sessions each in FOLDER; the app opens it on PAGE of one of them
// (Pad, Findings, LeakHunt, EngineCard) where that is named, as if it had been left there.
#include <cstdio>
#include <string>

#include "tests/app/harness/stock.h"

namespace {

/// As the shell keeps the page that it shows.
std::string place_of(const std::string& page, lapwing::EngineId engine, lapwing::SessionId session) {
    std::string args = page == "EngineCard" ? R"("engineId":")" + engine.text() + '"'
                                            : R"("sessionId":")" + session.text() + '"';
    if (page == "Pad") args += R"(,"test":"dry")";
    if (page == "Pad" || page == "LeakHunt") args += R"(,"cylinder":1)";
    return R"([{"name":")" + page + R"(","args":{)" + args + "}}]";
}

}  // namespace

int main(int argc, char** argv) {
    using namespace lapwing;
    if (argc < 2) return 2;
    const SystemClock clock;
    auto opened = workflow::Desk::open(argv[1], clock);
    if (!opened) {
        std::fprintf(stderr, "%s\n", opened.error().english.c_str());
        return 1;
    }
    test::Stock stock(*opened->desk);
    std::string place;
    for (int i = 1; i <= 20; ++i) {
        const int cylinders = i % 7 == 0 ? 12 : 1 + i % 6;
        const auto engine = stock.engine("Harbour engine " + std::to_string(i), cylinders);
        for (const char* title : {"As found", "After the repair"}) {
            const auto session = stock.session(engine, title);
            stock.readings(session, cylinders);
            if (argc > 2) place = place_of(argv[2], engine, session);
        }
    }
    if (!place.empty()) opened->desk->keep_draft("place", place);
    opened->desk->flush();
    return 0;
}
