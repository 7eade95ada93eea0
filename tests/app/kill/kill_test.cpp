// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Kills the app at random moments while it is typed into and looks at what is left:
//   test_app_kill CHILD [KILLS [SEED]]
// After each kill every reading whose tick was shown is there, nothing is there twice, SQLite's own check
// passes, and the pad reopens with the digits that had been stored when the end came.
#include <SQLiteCpp/Database.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <random>
#include <set>
#include <sstream>
#include <thread>
#include <vector>

#include "core/store/folder.h"
#include "tests/app/harness/stock.h"
#include "tests/app/kill/protocol.h"

namespace lapwing::test {
namespace {

using Clock = std::chrono::steady_clock;

struct Line {
    std::string what;
    int cylinder = 0;
    std::string digits;
};

/// What stood on the pad: cylinder and digits.
using Pad = std::pair<int, std::string>;

struct Life {
    std::vector<Line> lines;
    int ended_by_itself = 0;  ///< exit code when it was not killed
};

std::vector<Line> lines_of(const std::string& text) {
    std::vector<Line> lines;
    std::istringstream in(text);
    for (std::string whole; std::getline(in, whole);) {
        std::istringstream parts(whole);
        Line line;
        parts >> line.what >> line.cylinder >> line.digits;
        if (line.digits == "-") line.digits.clear();
        lines.push_back(line);
    }
    return lines;
}

/// Lets a child live until `after` (counted from its start, or from the moment its pad was back) and kills
/// it.
Life live_and_die(const char* child, const std::string& folder, int first, unsigned seed, int after_ms,
                  bool from_pad) {
    int ends[2];
    if (pipe(ends) != 0) std::abort();
    const pid_t pid = fork();
    if (pid == 0) {
        if (ends[1] != kill::pipe_end) dup2(ends[1], kill::pipe_end);
        const auto number = std::to_string(first), start = std::to_string(seed);
        execl(child, child, folder.c_str(), number.c_str(), start.c_str(), nullptr);
        _exit(127);
    }
    close(ends[1]);
    std::string text;
    const auto read_on = [&] {
        char buffer[4096];
        const auto got = read(ends[0], buffer, sizeof buffer);
        if (got > 0) text.append(buffer, static_cast<std::size_t>(got));
        return got > 0;
    };
    if (from_pad)
        while (text.find('\n') == std::string::npos && read_on()) {
        }
    std::this_thread::sleep_for(std::chrono::milliseconds(after_ms));
    ::kill(pid, SIGKILL);
    int status = 0;
    waitpid(pid, &status, 0);
    while (read_on()) {
    }
    close(ends[0]);
    Life life{lines_of(text), 0};
    if (!WIFSIGNALED(status)) life.ended_by_itself = 1000 + WEXITSTATUS(status);
    return life;
}

class Watch {
public:
    Watch(const char* child, std::filesystem::path folder, unsigned seed)
        : child_(child), folder_(std::move(folder)), random_(seed) {
        with_desk(
            [&](workflow::Desk& desk) { engine_ = Stock(desk).engine("Killed four", kill::cylinders); });
    }

    bool round(int number) {
        if (number % 20 == 0) fresh_session(number);
        const bool at_start = random_() % 6 == 0;
        const int after = int(random_() % 400);
        const auto life =
            live_and_die(child_, folder_.string(), 1 + number % 20 * 100, random_(), after, !at_start);
        if (life.ended_by_itself)
            return wrong(number,
                         "the app ended by itself, code " + std::to_string(life.ended_by_itself - 1000));
        if (!check_reopened(number, life)) return false;
        take(life);
        return check_library(number);
    }

    void report(int kills, double seconds) const {
        std::printf(
            "kill: %d kills in %.0f s, %zu ticks and none lost, %d pads reopened with digits "
            "(%d of them with the very last key), %d keeps under way when the end came\n",
            kills, seconds, ticks_, with_digits_, with_last_key_, keeps_under_way_);
    }
    [[nodiscard]] bool worth_something(int kills) const {
        return ticks_ > static_cast<std::size_t>(kills) / 2 && with_digits_ > kills / 8;
    }

private:
    static bool wrong(int number, const std::string& what) {
        std::printf("kill %d: %s\n", number, what.c_str());
        return false;
    }

    /// Where the scripted devices of the child keep it.
    [[nodiscard]] std::filesystem::path library() const { return folder_ / "data"; }

    template <class Use>
    void with_desk(Use use) {
        auto opened = workflow::Desk::open(library(), clock_);
        if (!opened) throw std::runtime_error(opened.error().english);
        for (const auto& told : opened->told)
            if (told.code != "store.was_checked") throw std::runtime_error(told.english);
        use(*opened->desk);
    }

    void fresh_session(int number) {
        with_desk([&](workflow::Desk& desk) {
            session_ = Stock(desk).session(engine_, "Round " + std::to_string(number));
            const std::string id = session_.text();
            desk.keep_draft("cautions/" + id + "/dry", "read");
            desk.keep_draft("which tester/" + engine_.text() + "/compression gauge", "asked");
            desk.keep_draft("place", R"([{"name":"Session","args":{"sessionId":")" + id +
                                         R"("}},{"name":"Pad","args":{"sessionId":")" + id +
                                         R"(","test":"dry"}}])");
            desk.flush();
        });
        ticked_.clear();
        allowed_.clear();
        keeping_.clear();
    }

    /// What the pad showed on reopening has to be something that was typed no earlier than what is known to
    /// be stored; a reading that was kept must not stand on the pad as well.
    bool check_reopened(int number, const Life& life) {
        if (life.lines.empty() || life.lines.front().what != "reopened") return true;  // killed before that
        const Pad now{life.lines.front().cylinder, life.lines.front().digits};
        if (!now.second.empty() && in_library_.contains(now.second))
            return wrong(number, now.second + " stands on the pad and in the library");
        if (!allowed_.empty()) {
            bool known = false;
            for (const auto& pad : allowed_)
                known = known || pad == now || (pad.second.empty() && now.second.empty());
            if (!known) {
                std::string list;
                for (const auto& [cylinder, digits] : allowed_)
                    list += " " + std::to_string(cylinder) + ":" + digits;
                return wrong(number, "the pad reopened with " + std::to_string(now.first) + ":" + now.second +
                                         ", but stored or typed later were" + list);
            }
            if (!now.second.empty()) {
                ++with_digits_;
                with_last_key_ += now == allowed_.back();
            }
        }
        return true;
    }

    void take(const Life& life) {
        if (life.lines.empty()) return;
        allowed_.clear();
        keeping_.clear();
        for (const auto& line : life.lines) {
            const Pad pad{line.cylinder, line.digits};
            if (line.what == "reopened" || line.what == "typed") {
                allowed_.push_back(pad);
            } else if (line.what == "stored") {
                // Everything typed before this is overtaken.
                for (std::size_t i = allowed_.size(); i-- > 0;)
                    if (allowed_[i] == pad) {
                        allowed_.erase(allowed_.begin(), allowed_.begin() + static_cast<std::ptrdiff_t>(i));
                        break;
                    }
            } else if (line.what == "keep") {
                keeping_.insert(line.digits);
                allowed_.push_back({line.cylinder, ""});  // from now on the pad stands empty somewhere
            } else if (line.what == "tick") {
                ++ticks_;
                ticked_.insert(line.digits);
                keeping_.erase(line.digits);
            }
        }
    }

    bool check_library(int number) {
        bool sound = true;
        with_desk([&](workflow::Desk& desk) {
            const auto visit = desk.visit(session_);
            in_library_.clear();
            if (!visit) {
                sound = wrong(number, "the session is gone");
                return;
            }
            for (const auto& reading : visit->readings)
                if (reading.final && !in_library_.insert(reading.final->digits()).second)
                    sound = wrong(number, reading.final->digits() + " is there twice");
            for (const auto& digits : ticked_)
                if (!in_library_.contains(digits))
                    sound = wrong(number, digits + " had its tick and is gone");
        });
        // A Keep that got no tick may have been committed or not: then the digits are still on the pad, or
        // the pad has moved on and is empty.
        for (const auto& digits : keeping_) {
            ++keeps_under_way_;
            const bool on_pad =
                std::ranges::any_of(allowed_, [&](const Pad& pad) { return pad.second == digits; });
            if (!in_library_.contains(digits) && !on_pad)
                sound = wrong(number, digits + " was kept, and is neither in the library nor on the pad");
        }
        if (!allowed_.empty() && in_library_.contains(allowed_.back().second)) allowed_.back().second.clear();
        std::erase_if(allowed_, [&](const Pad& pad) { return in_library_.contains(pad.second); });
        SQLite::Database file(store::Places{library()}.library().string(), SQLite::OPEN_READONLY);
        const std::string verdict = file.execAndGet("PRAGMA quick_check").getString();
        return verdict == "ok" ? sound : wrong(number, "SQLite finds: " + verdict);
    }

    const char* child_;
    std::filesystem::path folder_;
    SystemClock clock_;
    std::mt19937 random_;
    EngineId engine_;
    SessionId session_;
    std::set<std::string> ticked_;      ///< of this session
    std::set<std::string> in_library_;  ///< of this session
    std::vector<Pad> allowed_;          ///< what the pad may show next time, oldest first; empty: anything
    std::set<std::string> keeping_;     ///< touched Keep and got no tick
    std::size_t ticks_ = 0;
    int with_digits_ = 0, with_last_key_ = 0, keeps_under_way_ = 0;
};

int run(const char* child, int kills, unsigned seed) {
    char name[] = "/tmp/lapwing-kill-XXXXXX";
    if (!mkdtemp(name)) return 2;
    const std::filesystem::path folder(name);
    std::printf("kill: seed %u, %d kills\n", seed, kills);
    const auto start = Clock::now();
    int good = 0;
    try {
        Watch watch(child, folder, seed);
        while (good < kills && watch.round(good))
            ++good;
        watch.report(good, std::chrono::duration<double>(Clock::now() - start).count());
        if (good == kills && !watch.worth_something(kills)) {
            std::printf("kill: too little was under way to be worth anything\n");
            good = 0;
        }
    } catch (const std::exception& error) {
        std::printf("kill %d: %s\n", good, error.what());
        good = 0;
    }
    if (good == kills) std::filesystem::remove_all(folder);
    return good == kills ? 0 : 1;
}

}  // namespace
}  // namespace lapwing::test

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "usage: test_app_kill CHILD [KILLS [SEED]]\n");
        return 2;
    }
    const int kills = argc > 2 ? std::atoi(argv[2]) : 100;
    const unsigned seed = argc > 3 ? static_cast<unsigned>(std::atoi(argv[3])) : std::random_device{}();
    return lapwing::test::run(argv[1], kills, seed);
}
