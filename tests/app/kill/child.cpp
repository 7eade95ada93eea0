// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The app under a thumb that types reading after reading until the process is killed. FOLDER FIRST SEED.
#include <unistd.h>

#include <QGuiApplication>
#include <condition_variable>
#include <cstdio>
#include <deque>
#include <mutex>
#include <random>
#include <thread>

#include "qml/viewmodels/pad_model.h"
#include "tests/app/harness/phone.h"
#include "tests/app/kill/protocol.h"

namespace lapwing::test {
namespace {

void say(const char* what, int cylinder, const QString& digits) {
    char line[64];
    const int length = std::snprintf(line, sizeof line, "%s %d %s\n", what, cylinder,
                                     digits.isEmpty() ? "-" : qPrintable(digits));
    // Short writes to a pipe arrive whole.
    if (write(kill::pipe_end, line, static_cast<std::size_t>(length)) != length) _exit(3);
}

/// Waits for the writer thread and says what it has stored, while the thumb types on.
class Witness {
public:
    explicit Witness(workflow::Desk& desk) : thread_([this, &desk] { watch(desk); }) { thread_.detach(); }

    void typed(int cylinder, const QString& digits) {
        const std::lock_guard lock(mutex_);
        waiting_ = {cylinder, digits};
        fresh_ = true;
        wake_.notify_one();
    }

private:
    void watch(workflow::Desk& desk) {
        for (;;) {
            std::pair<int, QString> now;
            {
                std::unique_lock lock(mutex_);
                wake_.wait(lock, [&] { return fresh_; });
                fresh_ = false;
                now = waiting_;
            }
            desk.flush();
            say("stored", now.first, now.second);
        }
    }

    std::mutex mutex_;
    std::condition_variable wake_;
    std::pair<int, QString> waiting_;
    bool fresh_ = false;
    std::thread thread_;
};

int work(const std::filesystem::path& folder, int first, unsigned seed) {
    Phone phone(folder, {412, 915});
    if (!phone.on()) {
        std::fprintf(stderr, "child: %s\n", qPrintable(phone.why()));
        return 4;
    }
    if (!phone.arrives(QStringLiteral("Pad"))) {
        std::fprintf(stderr, "child: %s\n", qPrintable(phone.why()));
        return 5;
    }
    auto& thumb = phone.thumb();
    auto* model = phone.page_item()->findChild<PadModel*>();
    if (!model) return 6;
    const auto digits = [&] { return model->typed(); };
    say("reopened", model->cylinder(), digits());
    while (!model->empty()) {
        say("typed", model->cylinder(), digits().chopped(1));
        if (!thumb.touch(QStringLiteral("key_backspace"))) return 7;
    }

    Witness witness(phone.desk());
    std::mt19937 random(seed);
    // Ticks come in the order of the keeps.
    std::deque<QString> waiting;
    QObject::connect(model, &PadModel::kept, model, [&](int cylinder) {
        say("tick", cylinder, waiting.front());
        waiting.pop_front();
    });
    // Every reading of a session is another number, so that it can be told from all others.
    for (int number = first;; ++number) {
        char text[16];
        std::snprintf(text, sizeof text, "%d.%03d", 1 + number / 1000 % 9, number % 1000);
        const int cylinder = model->cylinder();
        for (const char* key = text; *key; ++key) {
            // Said first: the end may come between the key and the word about it.
            say("typed", cylinder, digits() + QLatin1Char(*key));
            if (!thumb.type(QString(QLatin1Char(*key)))) {
                std::fprintf(stderr, "child: %s\n", qPrintable(thumb.why()));
                return 8;
            }
            witness.typed(cylinder, digits());
            if (random() % 4 == 0) settle(int(random() % 60));
        }
        waiting.push_back(digits());
        say("keep", cylinder, waiting.back());
        const auto before = model->lastKept();
        if (!thumb.touch(QStringLiteral("keep"))) {
            std::fprintf(stderr, "child: %s\n", qPrintable(thumb.why()));
            return 9;
        }
        // Numbers that go up by themselves come to lie far from the first: then it is asked what was changed.
        if (thumb.sees(QStringLiteral("keepRepeat")) && !thumb.touch(QStringLiteral("keepRepeat"))) {
            std::fprintf(stderr, "child: %s\n", qPrintable(thumb.why()));
            return 9;
        }
        // As quick a thumb as there is; half of the time it types on before the tick comes.
        if (random() % 2) wait_until([&] { return model->lastKept() != before; });
    }
}

}  // namespace
}  // namespace lapwing::test

int main(int argc, char** argv) {
    if (argc < 4) return 2;
    lapwing::test::prepare_process();
    QGuiApplication gui(argc, argv);
    return lapwing::test::work(argv[1], std::atoi(argv[2]), static_cast<unsigned>(std::atoi(argv[3])));
}
