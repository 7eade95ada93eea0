// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What a person waits for in the app on a library of any size: scale_app FOLDER. Prints a line "name median
// p95 most", in milliseconds, for each thing measured. Frames are drawn by software, without a display.
#include <QElapsedTimer>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <string>
#include <string_view>
#include <vector>

#include "core/compare/history.h"
#include "core/exchange/session_file.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/hand_over.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {
namespace {

class Figures {
public:
    explicit Figures(const char* name) : name_(name) {}
    Figures(const char* kind, const char* name) : name_(std::string(kind) + '_' + name) {}
    void add(double ms) { all_.push_back(ms); }
    void print() {
        if (all_.empty()) return;
        std::sort(all_.begin(), all_.end());
        const auto at = [&](double share) {
            return all_[std::min(all_.size() - 1, std::size_t(share * double(all_.size())))];
        };
        std::printf("%s %.3f %.3f %.3f\n", name_.c_str(), at(0.5), at(0.95), all_.back());
    }

private:
    std::string name_;
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

/// A page as it is pushed, and the name its figures bear: "page_..." when it comes again, of those that are
/// opened all day, and "first_..." the first time after the start.
struct Push {
    const char* name;
    const char* page;
    QVariantMap args;
    bool all_day = false;
};

/// A session file as a mentor hands it over, written beside the library.
QString file_of(Phone& phone, EngineId engine) {
    auto& desk = phone.desk();
    const auto dossier = workflow::hand_over(desk, {engine, {}, false});
    const auto key = workflow::signing_key(desk);
    if (!dossier || !key) give_up(QStringLiteral("An engine can't be handed over."));
    exchange::Outgoing outgoing;
    outgoing.dossier = *dossier;
    for (auto& visit : outgoing.dossier.visits)
        visit.attachments.clear();
    outgoing.at = desk.clock().now();
    outgoing.key = &*key;
    const auto file = phone.folder().parent_path() / "bench.lapwing";
    if (const auto written = exchange::write_session_file(file, outgoing); !written)
        give_up(QString::fromStdString(written.error().english));
    return QString::fromStdString(file.string());
}

/// Every page there is, in about the order a day has. What is new and what differs is shown of an engine that
/// nothing came in for.
std::vector<Push> every_page(Phone& phone, EngineId engine, SessionId session) {
    Stock stock(phone.desk());
    const auto line = stock.plan_line(session, PlanOption::strip, "Head off, exhaust valves and seats");
    const auto text = [](const auto& id) { return QString::fromStdString(id.text()); };
    const QVariantMap of_engine{{"engineId", text(engine)}}, here{{"sessionId", text(session)}};
    const auto with = [](QVariantMap args, const char* key, const QVariant& value) {
        args[QLatin1String(key)] = value;
        return args;
    };
    const auto tester = phone.desk().testers().front().id;
    return {
        {"engine_card", "EngineCard", of_engine, true},
        {"session", "Session", here, true},
        {"visit", "Visit", here},
        {"prepare", "Prepare", here},
        {"clearances", "Clearances", here},
        {"pad", "Pad", with(with(here, "test", "dry"), "cylinder", 1), true},
        {"next_tdc", "NextTdc", with(here, "cylinder", 2)},
        {"leak_hunt", "LeakHunt", with(here, "cylinder", 1)},
        {"again", "Again", with(with(here, "test", "dry"), "other", true)},
        {"photo", "Photo", with(here, "kind", "gauge")},
        {"voice_note", "VoiceNote", here},
        {"findings", "Findings", here, true},
        {"evidence", "Evidence", here},
        {"plan", "Plan", here},
        {"plan_line", "PlanLine", {{"lineId", text(line)}}},
        {"before_and_after", "Changes", of_engine, true},
        {"hand_over", "HandOver", with(of_engine, "sessionId", text(session)), true},
        {"second_opinion", "SecondOpinion", here},
        {"news", "News", of_engine},
        {"conflicts", "Conflicts", of_engine},
        {"bring_in", "BringIn", {{"file", file_of(phone, engine)}}},
        {"backup", "Backup", {}},
        {"known_keys", "KnownKeys", {}},
        {"testers", "Testers", {}},
        {"tester_card", "TesterCard", {{"testerId", text(tester)}}},
        {"calculators", "Calculators", here},
        {"calculator", "Calculator", with(here, "calculator", "leakage")},
        {"how_to", "HowTo", {}},
        {"how_to_card", "HowToCard", {{"card", "tdc"}}},
        {"settings", "Settings", {}},
        {"assumptions", "Assumptions", {}},
        {"licences", "Licences", {}},
        {"licence", "Licence", {{"licence", "libsodium"}}},
    };
}

void pages(Phone& phone, EngineId engine, SessionId session) {
    auto* shell = phone.window().findChild<QQuickItem*>(QStringLiteral("shell"));
    for (const auto& push : every_page(phone, engine, session)) {
        Figures first("first", push.name), again("page", push.name);
        for (int round = 0; round < (push.all_day ? 9 : 1); ++round) {
            const double ms = ms_to_frame(phone.window(), [&] {
                QMetaObject::invokeMethod(shell, "go", Q_ARG(QString, QString::fromLatin1(push.page)),
                                          Q_ARG(QVariant, QVariant(push.args)));
            });
            if (!phone.arrives(QString::fromLatin1(push.page))) give_up(phone.why());
            // The first one reads the page's files.
            (round > 0 ? again : first).add(ms);
            settle(150);
            phone.home();
            settle(150);
        }
        first.print();
        again.print();
    }
}

/// From the finger leaving a digit's key to the next whole frame, on every pad of digits this engine has.
void digits(Phone& phone, SessionId session) {
    auto* glass = QTest::createTouchDevice();
    const QString id = QString::fromStdString(session.text());
    for (const char* pad : {"dry", "wet", "leak-down", "clearances"}) {
        if (pad == std::string_view("clearances"))
            phone.go(QStringLiteral("Clearances"), {{"sessionId", id}});
        else
            phone.go(QStringLiteral("Pad"), {{"sessionId", id}, {"test", pad}, {"cylinder", 1}});
        if (!phone.thumb().appears(QStringLiteral("key_1"))) give_up(phone.thumb().why());
        settle(300);
        Figures keys("digit", pad == std::string_view("leak-down") ? "leak_down" : pad);
        for (int round = 0; round < 20; ++round) {
            for (const char* digit : {"key_1", "key_0"}) {
                const auto* key = phone.thumb().find(QLatin1String(digit));
                if (!key) give_up(QStringLiteral("A pad has no key %1.").arg(QLatin1String(digit)));
                const QPoint at = key->mapToScene({key->width() / 2, key->height() / 2}).toPoint();
                QTest::touchEvent(&phone.window(), glass).press(1, at);
                settle(20);
                keys.add(ms_to_frame(phone.window(), [&] {
                    QTest::touchEvent(&phone.window(), glass, false).release(1, at).commit(false);
                }));
            }
            for (int i = 0; i < 2; ++i)
                if (!phone.thumb().touch(QStringLiteral("key_backspace"))) give_up(phone.thumb().why());
            settle(30);
        }
        keys.print();
        phone.home();
        settle(150);
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
    const auto engine = phone.desk().engines().front().id;
    const auto session = phone.desk().sessions(engine).front().id;
    nothing_over_pads(phone, session);
    pages(phone, engine, session);
    digits(phone, session);
    return 0;
}

}  // namespace
}  // namespace lapwing::test

int main(int argc, char** argv) {
    lapwing::test::prepare_process();
    const QGuiApplication gui(argc, argv);
    return argc == 2 ? lapwing::test::run(argv[1]) : 2;
}
