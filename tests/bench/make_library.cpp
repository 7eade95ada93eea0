// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Makes a library of twenty engines with two sessions each in FOLDER.
#include <cstdio>

#include "tests/app/harness/stock.h"

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
    for (int i = 1; i <= 20; ++i) {
        const int cylinders = i % 7 == 0 ? 12 : 1 + i % 6;
        const auto engine = stock.engine("Harbour engine " + std::to_string(i), cylinders);
        for (const char* title : {"As found", "After the repair"})
            stock.readings(stock.session(engine, title), cylinders);
    }
    return 0;
}
