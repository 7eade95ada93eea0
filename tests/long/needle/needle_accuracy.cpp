// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <exception>
#include <map>

#include "core/vision/needle.h"
#include "tests/core/vision/gauge_photos.h"

using namespace lapwing;

namespace {

struct Group {
    std::vector<double> off;  // share of the span; a refusal is 1
    int refused = 0;
    int confidently_wrong = 0;

    [[nodiscard]] double median() const {
        auto sorted = off;
        std::sort(sorted.begin(), sorted.end());
        return sorted.at(sorted.size() / 2);
    }
    [[nodiscard]] double within(double limit) const {
        return double(std::count_if(off.begin(), off.end(), [&](double o) { return o <= limit; })) /
               double(off.size());
    }
};

int run(const std::string& folder) {
    std::map<std::string, Group> groups;
    Group fair;
    Group all;
    std::vector<double> times;
    for (const test::GaugePhoto& photo : test::gauge_photos(folder)) {
        const auto bytes = test::bytes_of(folder + "/" + photo.file);
        const auto start = std::clock();
        const auto reading = vision::read_needle(bytes, {photo.min, photo.max, {}, {}});
        const double seconds = double(std::clock() - start) / CLOCKS_PER_SEC;
        times.push_back(seconds);
        if (!reading) {
            fmt::print("{}: {}\n", photo.file, reading.error().english);
            return 1;
        }
        const double off = (reading->value - photo.value) / (photo.max - photo.min);
        fmt::print("{}  {}  {:6}  {}  u {:.2f} %  confidence {:.2f}  {:.0f} ms\n", photo.file, photo.style,
                   photo.difficulty,
                   reading->refused() ? fmt::format("refused: {}", vision::code(reading->refusal))
                                      : fmt::format("off by {:+6.2f} %", 100 * off),
                   100 * reading->u / (photo.max - photo.min), reading->confidence, 1000 * seconds);
        const auto add = [&](Group& group) {
            group.off.push_back(reading->refused() ? 1.0 : std::abs(off));
            group.refused += reading->refused();
            group.confidently_wrong +=
                !reading->refused() && reading->confidence >= 0.8 && std::abs(off) > 0.05;
        };
        add(groups[photo.style]);
        add(groups[photo.difficulty]);
        add(all);
        for (const std::string& condition : photo.conditions)
            add(groups["with " + condition]);
        if (photo.difficulty != "hard") add(fair);
    }
    fmt::print("\n{:16} photos  median off  within 0.5 %  within 2 %  refused  sure and over 5 % off\n", "");
    const auto row = [](const std::string& name, const Group& g) {
        fmt::print("{:16} {:6}  {:8.2f} %  {:10.0f} %  {:8.0f} %  {:7}  {:22}\n", name, g.off.size(),
                   100 * g.median(), 100 * g.within(0.005), 100 * g.within(0.02), g.refused,
                   g.confidently_wrong);
    };
    for (const auto& [name, group] : groups)
        row(name, group);
    row("easy and medium", fair);
    row("all", all);
    std::sort(times.begin(), times.end());
    fmt::print("time a photo: median {:.0f} ms, slowest {:.0f} ms\n", 1000 * times.at(times.size() / 2),
               1000 * times.back());
    const bool good = fair.median() <= 0.005 && fair.within(0.02) >= 0.95 &&
                      all.confidently_wrong <= 0.01 * double(all.off.size());
    fmt::print("{}\n", good ? "As good as wanted." : "Not as good as wanted.");
    return good ? 0 : 1;
}

}  // namespace

int main(int count, char** words) {
    if (count != 2) {
        fmt::print(stderr, "needle_accuracy FOLDER\n");
        return 2;
    }
    try {
        return run(words[1]);
    } catch (const std::exception& error) {
        fmt::print(stderr, "{}\n", error.what());
        return 2;
    }
}
