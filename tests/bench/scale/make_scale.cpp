// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Fills a library as a busy workshop does over the years: make_scale FOLDER ENGINES. Each engine has five
// visits, each visit twenty readings and two photos: 2,000 engines are 10,000 sessions, 200,000 readings,
// 20,000 photos. An engine that is there already stays, so that a bigger library grows out of a smaller one.
#include <cstdio>
#include <random>

#include "core/store/attachment_files.h"
#include "tests/app/harness/stock.h"

namespace {

using namespace lapwing;

constexpr int visits = 5, cylinders = 4, pulls_of_each_test = 2, photos = 2;
constexpr std::size_t photo_bytes = 6'000;
constexpr std::int64_t day_ms = 86'400'000;

/// Readings that get a little worse from visit to visit, and scatter.
class Workshop {
public:
    Workshop(workflow::Desk& desk, test::Stock& stock) : desk_(desk), stock_(stock) {
        gauge_ = stock.tester(TesterKind::compression_gauge, "Shop gauge", "16.0");
        leak_down_ = stock.tester(TesterKind::leak_down, "Shop leak-down tester", "7.0");
    }

    void engine(int number) {
        const auto id = stock_.engine("Harbour engine " + std::to_string(number), cylinders);
        workflow::Command command{"session.add", {}, {}};
        for (int visit = 0; visit < visits; ++visit) {
            Session session;
            session.id = desk_.make_id<SessionId>();
            session.engine = id;
            session.opened_at = desk_.clock().now();
            session.opened_at.unix_ms -= (visits - visit) * 200 * day_ms - number * 60'000;
            session.title = visit == 0 ? "As found" : "Yearly check";
            session.compression_gauge = gauge_;
            session.leak_down_tester = leak_down_;
            command.edits.push_back(Put{session});
            for (int cylinder = 1; cylinder <= cylinders; ++cylinder)
                readings(session, visit, cylinder, command);
            for (int i = 0; i < photos; ++i)
                photo(session, command);
        }
        stock_.run([&](const workflow::Now&) -> Result<workflow::Command> { return command; });
    }

private:
    void readings(const Session& session, int visit, int cylinder, workflow::Command& command) {
        const auto add = [&](TestKind test) {
            Reading reading;
            reading.id = desk_.make_id<ReadingId>();
            reading.session = session.id;
            reading.test = test;
            reading.cylinder = cylinder;
            reading.taken_at = session.opened_at;
            return reading;
        };
        const auto bar = [&](double about) {
            char digits[16];
            std::snprintf(digits, sizeof digits, "%.1f", about + scatter_(random_));
            return *TypedPressure::make(digits, units::bar);
        };
        for (int pull = 0; pull < pulls_of_each_test; ++pull) {
            auto dry = add(TestKind::dry);
            dry.final = bar(10.0 - 0.2 * visit - 0.1 * cylinder);
            dry.pulls = 6;
            command.edits.push_back(Put{dry});
            auto leak = add(TestKind::leak_down);
            leak.set = *TypedPressure::make("5.5", units::bar);
            leak.held = bar(4.9 - 0.1 * visit);
            command.edits.push_back(Put{leak});
        }
        auto wet = add(TestKind::wet);
        wet.final = bar(10.8 - 0.1 * visit);
        wet.oil_volume = *TypedVolume::make("10", *Unit<VolumeTag>::find("ml"));
        command.edits.push_back(Put{wet});
    }

    void photo(const Session& session, workflow::Command& command) {
        std::string bytes = "\xFF\xD8\xFF\xE0";
        while (bytes.size() < photo_bytes) {
            const auto word = random_();
            bytes.append(reinterpret_cast<const char*>(&word), sizeof word);
        }
        const auto kept =
            desk_.files().keep({reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()});
        if (!kept) throw std::runtime_error(kept.error().english);
        Attachment one;
        one.id = desk_.make_id<AttachmentId>();
        one.session = session.id;
        one.taken_at = session.opened_at;
        one.kind = AttachmentKind::photo;
        one.photo_of = PhotoOf::plug;
        one.media_type = "image/jpeg";
        one.sha256 = kept->sha256;
        one.bytes = kept->bytes;
        command.edits.push_back(Put{one});
    }

    workflow::Desk& desk_;
    test::Stock& stock_;
    TesterId gauge_, leak_down_;
    std::mt19937_64 random_{std::random_device{}()};  // photos must differ from those of an earlier run
    std::uniform_real_distribution<double> scatter_{-0.15, 0.15};
};

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::fprintf(stderr, "usage: make_scale FOLDER ENGINES\n");
        return 2;
    }
    const SystemClock clock;
    auto opened = workflow::Desk::open(argv[1], clock);
    if (!opened) {
        std::fprintf(stderr, "%s\n", opened.error().english.c_str());
        return 1;
    }
    auto& desk = *opened->desk;
    test::Stock stock(desk);
    const int there = static_cast<int>(desk.engines().size());
    Workshop workshop(desk, stock);
    for (int number = there + 1; number <= std::stoi(argv[2]); ++number)
        workshop.engine(number);
    return 0;
}
