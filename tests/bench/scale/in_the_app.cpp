// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What a person waits for in the app on a library of any size: scale_app FOLDER. Prints a line "name median
// p95 most", in milliseconds, for each thing measured. Frames are drawn by software, without a display.
#include <QElapsedTimer>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <vector>

#include "core/compare/history.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/phone.h"

namespace lapwing::test {
namespace {

class Figures {
public:
    explicit Figures(const char* name) : name_(name) {}
    void add(double ms) { all_.push_back(ms); }
    void print() {
        std::sort(all_.begin(), all_.end());
        const auto at = [&](double share) {
            return all_[std::min(all_.size() - 1, std::size_t(share * double(all_.size())))];
        };
        std::printf("%s %.3f %.3f %.3f\n", name_, at(0.5), at(0.95), all_.back());
    }

private:
    const char* name_;
    std::vector<double> all_;
};

template <class Work>
double ms_of(Work work) {
    QElapsedTimer timer;
    timer.start();
    work();
    return double(timer.nsecsElapsed()) / 1e6;
}

[[noreturn]] void give_up(const QString& why) {
    std::fprintf(stderr, "%s\n", qPrintable(why));
    std::exit(1);
}

/// Does something and waits for the next whole frame after it.
template <class Work>
double ms_to_frame(QQuickWindow& window, Work work) {
    bool swapped = false;
    const auto connection =
        QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [&] { swapped = true; });
    const double ms = ms_of([&] {
        work();
        window.update();
        if (!wait_until([&] { return swapped; })) give_up(QStringLiteral("No frame came within 5 s."));
    });
    QObject::disconnect(connection);
    return ms;
}

void scroll(Phone& phone) {
    auto* list = phone.window().findChild<QQuickItem*>(QStringLiteral("engines"));
    Figures frames("scroll_frame");
    // Up and down within what the smallest library has, then on through what there is.
    double y = 0, step = 130;
    for (int i = 0; i < 300; ++i) {
        const double end = list->property("contentHeight").toDouble() - list->height();
        if (y + step > end || y + step < 0) step = -step;
        y += step;
        frames.add(ms_to_frame(phone.window(), [&] { list->setProperty("contentY", y); }));
    }
    frames.print();
    list->setProperty("contentY", 0.0);
    settle();
}

void search(Phone& phone) {
    Figures keys("search_key");
    auto* box = phone.thumb().find(QStringLiteral("search"));
    if (!box) give_up(QStringLiteral("The list has no search."));
    for (int round = 0; round < 5; ++round) {
        if (!phone.thumb().touch(box)) give_up(phone.thumb().why());
        for (const QChar letter : QStringLiteral("engine 1"))
            keys.add(ms_to_frame(phone.window(), [&] { phone.thumb().keys(letter); }));
        for (int i = 0; i < 8; ++i)
            phone.thumb().key(Qt::Key_Backspace);
        settle();
    }
    keys.print();
}

void pages(Phone& phone) {
    const auto engine = phone.desk().engines().front().id;
    const auto sessions = phone.desk().sessions(engine);
    const QString engine_id = QString::fromStdString(engine.text());
    const QString id = QString::fromStdString(sessions.front().id.text());
    nothing_over_pads(phone, sessions.front().id);
    struct Push {
        const char* name;
        const char* page;
        QVariantMap args;
    };
    const Push all[] = {
        {"page_engine_card", "EngineCard", {{"engineId", engine_id}}},
        {"page_session", "Session", {{"sessionId", id}}},
        {"page_pad", "Pad", {{"sessionId", id}, {"test", "dry"}, {"cylinder", 1}}},
        {"page_findings", "Findings", {{"sessionId", id}}},
        {"page_before_and_after", "Changes", {{"engineId", engine_id}}},
        {"page_hand_over", "HandOver", {{"engineId", engine_id}, {"sessionId", id}}},
    };
    auto* shell = phone.window().findChild<QQuickItem*>(QStringLiteral("shell"));
    for (const auto& push : all) {
        Figures figures(push.name);
        for (int round = 0; round < 9; ++round) {
            const double ms = ms_to_frame(phone.window(), [&] {
                QMetaObject::invokeMethod(shell, "go", Q_ARG(QString, QString::fromLatin1(push.page)),
                                          Q_ARG(QVariant, QVariant(push.args)));
            });
            if (!phone.arrives(QString::fromLatin1(push.page))) give_up(phone.why());
            if (round > 0) figures.add(ms);  // the first one reads the page's files
            phone.home();
            settle(150);
        }
        figures.print();
    }
}

void sums(Phone& phone) {
    Figures history("history"), comparison("compare");
    const auto engines = phone.desk().engines();
    for (std::size_t i = 0; i < 20; ++i) {
        const auto id = engines[i * engines.size() / 20].id;
        history.add(ms_of([&] {
            const auto dossier = phone.desk().dossier(id);
            if (!dossier || compare::history_of(*dossier, phone.app().reference()).cylinders.empty())
                give_up(QStringLiteral("An engine has no history."));
        }));
        comparison.add(ms_of([&] {
            const auto dossier = phone.desk().dossier(id);
            const auto& visits = dossier->visits;
            compare::compare(*dossier, {&visits.front(), {}}, {&visits.back(), {}}, phone.app().reference());
        }));
    }
    history.print();
    comparison.print();
}

int run(const char* folder) {
    Phone phone(std::filesystem::path(folder), {412, 915});
    Figures on("app_on");
    on.add(ms_of([&] {
        if (!phone.on()) give_up(phone.why());
    }));
    on.print();
    if (!phone.thumb().appears(QStringLiteral("search")))
        give_up(QStringLiteral("The list did not come, but: %1")
                    .arg(phone.thumb().words().join(QStringLiteral(" | "))));
    settle(300);
    scroll(phone);
    search(phone);
    sums(phone);
    pages(phone);
    return 0;
}

}  // namespace
}  // namespace lapwing::test

int main(int argc, char** argv) {
    lapwing::test::prepare_process();
    const QGuiApplication gui(argc, argv);
    return argc == 2 ? lapwing::test::run(argv[1]) : 2;
}
