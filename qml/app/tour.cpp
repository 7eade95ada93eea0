// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/app/tour.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLocale>
#include <QMouseEvent>
#include <QQuickItem>
#include <QQuickWindow>
#include <cstdio>
#include <functional>

#include "core/exchange/session_file.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/sessions.h"
#include "qml/app/composition.h"
#include "qml/viewmodels/demo_texts.h"
#include "qml/viewmodels/hand_over_files.h"

namespace lapwing {
namespace {

/// Uses the app as a person would: looks for things by name, touches them, waits until they are there.
class Hand {
public:
    Hand(QQuickWindow& window, const QDir& folder) : window_(window), folder_(folder) {}

    bool wait(const std::function<bool()>& until, int ms = 5000) {
        QElapsedTimer timer;
        timer.start();
        while (!until() && timer.elapsed() < ms)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
        return until();
    }

    void settle(int ms = 350) {
        QElapsedTimer timer;
        timer.start();
        while (timer.elapsed() < ms)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
    }

    QQuickItem* find(const QString& name) const { return find(window_.contentItem(), name); }

    bool touch(const QString& name) {
        if (!wait([&] { return find(name) != nullptr; })) {
            std::fprintf(stderr, "lapwing: nothing named %s can be touched here\n", qPrintable(name));
            return false;
        }
        const auto* item = find(name);
        const QPointF at = item->mapToScene({item->width() / 2, item->height() / 2});
        for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
            const auto buttons = type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton;
            QMouseEvent event(type, at, window_.mapToGlobal(at), Qt::LeftButton, buttons, Qt::NoModifier);
            QCoreApplication::sendEvent(&window_, &event);
        }
        settle(30);
        return true;
    }

    bool type(const QString& digits) {
        for (const QChar digit : digits)
            if (!touch(QStringLiteral("key_") + digit)) return false;
        return true;
    }

    /// Reads on to the last of them.
    void read_cautions() {
        while (find(QStringLiteral("understood")) && touch(QStringLiteral("understood")))
            settle();
    }

    void go(const QString& page, const QVariantMap& args) {
        QMetaObject::invokeMethod(find(QStringLiteral("shell")), "go", Q_ARG(QString, page),
                                  Q_ARG(QVariant, QVariant(args)));
        settle();
    }

    bool shoot(const QString& name) {
        settle();
        const QString file = folder_.filePath(name + QStringLiteral(".png"));
        if (!window_.grabWindow().save(file)) {
            std::fprintf(stderr, "lapwing: the screenshot %s can't be written\n", qPrintable(file));
            return false;
        }
        std::printf("screenshot %s\n", qPrintable(file));
        return true;
    }

private:
    static QQuickItem* find(QQuickItem* item, const QString& name) {
        if (!item->isVisible()) return nullptr;
        if (item->objectName() == name) return item;
        const auto children = item->childItems();
        // The page on top comes last.
        for (qsizetype i = children.size() - 1; i >= 0; --i)
            if (auto* found = find(children[i], name)) return found;
        return nullptr;
    }

    QQuickWindow& window_;
    QDir folder_;
};

Result<workflow::Step> run_and_wait(Hand& hand, workflow::Desk& desk, workflow::Intent intent) {
    // Shared: the desk may still call back when the wait was given up.
    auto result = std::make_shared<std::optional<Result<workflow::Step>>>();
    desk.run(std::move(intent), [result](Result<workflow::Step> done) {
        QMetaObject::invokeMethod(
            qApp, [result, done = std::move(done)] { *result = done; }, Qt::QueuedConnection);
    });
    if (!hand.wait([&] { return result->has_value(); }, 20'000))
        return fail("tour.slow", "The library did not answer within 20 seconds.");
    return **result;
}

Result<Dossier> bring_in_demo(Hand& hand, workflow::Desk& desk, const QDir& folder, const QString& name) {
    const QString file = folder.filePath(name);
    QFile::remove(file);
    if (!QFile::copy(QStringLiteral(":/demo/") + name, file))
        return fail("tour.demo", "The demo {} is not in this program or can't be written to {}.",
                    name.toStdString(), file.toStdString());
    auto incoming = exchange::read_session_file(file.toStdString(), folder.path().toStdString());
    QFile::remove(file);
    if (!incoming) return tl::unexpected(incoming.error());
    auto dossier = demo_told_in(QLocale().name().first(2), incoming->dossier);
    if (!dossier) return dossier;
    if (auto done = run_and_wait(hand, desk, workflow::bring_in(*dossier)); !done)
        return tl::unexpected(done.error());
    return dossier;
}

int complain(const Error& error) {
    std::fprintf(stderr, "lapwing: %s\n", error.english.c_str());
    return 4;
}

/// A short visit, entered by touch alone: dry test of both cylinders, then air and one exit.
bool enter_a_visit(Hand& hand, const QString& session) {
    hand.go(QStringLiteral("Pad"), {{"sessionId", session}, {"test", "dry"}});
    hand.read_cautions();
    if (!hand.type(QStringLiteral("61"))) return false;
    if (!hand.shoot(QStringLiteral("04-dry-test"))) return false;
    if (!hand.touch(QStringLiteral("keep")) || !hand.type(QStringLiteral("77")) ||
        !hand.touch(QStringLiteral("keep")))
        return false;
    hand.settle();
    hand.go(QStringLiteral("Pad"), {{"sessionId", session}, {"test", "leak-down"}});
    hand.read_cautions();
    if (!hand.type(QStringLiteral("350"))) return false;
    if (!hand.shoot(QStringLiteral("05-leak-down"))) return false;
    return hand.touch(QStringLiteral("keep")) &&
           hand.wait([&] { return hand.find(QStringLiteral("exit_exhaust")) != nullptr; });
}

}  // namespace

int run_tour(Composition& app, QQuickWindow& window, const QString& path) {
    QDir folder(path);
    if (!folder.mkpath(QStringLiteral("."))) {
        std::fprintf(stderr, "lapwing: the folder %s can't be made\n", qPrintable(path));
        return 4;
    }
    auto& desk = app.context().desk();
    Hand hand(window, folder);
    hand.settle();
    if (desk.engines().empty() && !hand.shoot(QStringLiteral("01-empty-list"))) return 4;

    const auto twin = bring_in_demo(hand, desk, folder, QStringLiteral("orchard-v-twin.lapwing"));
    if (!twin) return complain(twin.error());
    if (const auto six = bring_in_demo(hand, desk, folder, QStringLiteral("harbour-six.lapwing")); !six)
        return complain(six.error());
    const QString engine = QString::fromStdString(twin->engine.id.text());
    const auto first = twin->visits.front().session.id;
    const QString session = QString::fromStdString(first.text());
    const QVariantMap here{{"sessionId", session}};

    bool good = hand.shoot(QStringLiteral("02-engines"));
    hand.go(QStringLiteral("Session"), here);
    good = hand.shoot(QStringLiteral("03-session")) && good;

    const auto visit = desk.make_id<SessionId>();
    if (const auto opened = run_and_wait(hand, desk, workflow::open_session(visit, twin->engine.id, "Tour"));
        !opened)
        return complain(opened.error());
    good = enter_a_visit(hand, QString::fromStdString(visit.text())) && good;
    good = hand.shoot(QStringLiteral("06-leak-hunt")) && good;

    const std::vector<std::tuple<QString, QString, QVariantMap>> pages{
        {QStringLiteral("07-findings"), QStringLiteral("Findings"), here},
        {QStringLiteral("08-prepare"), QStringLiteral("Prepare"), here},
        {QStringLiteral("09-clearances"), QStringLiteral("Clearances"), here},
        {QStringLiteral("10-next-tdc"), QStringLiteral("NextTdc"), here},
        {QStringLiteral("11-engine-card"), QStringLiteral("EngineCard"), {{"engineId", engine}}},
        {QStringLiteral("12-testers"), QStringLiteral("Testers"), {}},
        {QStringLiteral("13-hand-over"),
         QStringLiteral("HandOver"),
         {{"engineId", engine}, {"sessionId", session}}},
        {QStringLiteral("14-settings"), QStringLiteral("Settings"), {}},
        {QStringLiteral("15-second-opinion"), QStringLiteral("SecondOpinion"), here},
        {QStringLiteral("16-backup"), QStringLiteral("Backup"), {}},
        {QStringLiteral("17-plan"), QStringLiteral("Plan"), here},
        {QStringLiteral("18-assumptions"), QStringLiteral("Assumptions"), {}},
        {QStringLiteral("19-before-and-after"),
         QStringLiteral("Changes"),
         {{"engineId", engine},
          {"beforeId", session},
          {"afterId", QString::fromStdString(twin->visits[1].session.id.text())}}},
        {QStringLiteral("20-how-to"), QStringLiteral("HowTo"), {}},
        {QStringLiteral("21-how-to-listen"), QStringLiteral("HowToCard"), {{"card", "listening"}}}};
    for (const auto& [name, page, args] : pages) {
        hand.go(page, args);
        // What is worked out off the screen comes a moment later.
        hand.wait([&] { return hand.find(QStringLiteral("working")) == nullptr; }, 30'000);
        good = hand.shoot(name) && good;
    }

    QString session_file;
    for (const auto kind : {HandOverKind::report, HandOverKind::session_file, HandOverKind::table}) {
        HandOverOrder order;
        order.kind = kind;
        order.chosen.engine = twin->engine.id;
        order.chosen.sessions.push_back(first);
        order.session = first;
        order.format = app.context().format();
        order.folder = path.toStdString();
        const auto written = write_hand_over(desk, app.context().reference(), order);
        if (!written) return complain(written.error());
        if (kind == HandOverKind::session_file) session_file = QString::fromStdString(written->file.string());
        std::printf("%s %s\n",
                    kind == HandOverKind::report  ? "report"
                    : kind == HandOverKind::table ? "table"
                                                  : "session file",
                    written->file.c_str());
    }
    // The file that was just written, as the one who gets it sees it first.
    if (!good) return 4;
    hand.go(QStringLiteral("BringIn"), {{"file", session_file}});
    hand.wait([&] { return hand.find(QStringLiteral("whatIsNew")) != nullptr; });
    return hand.shoot(QStringLiteral("17-before-it-is-brought-in")) ? 0 : 4;
}

}  // namespace lapwing
