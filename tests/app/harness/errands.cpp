// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/harness/errands.h"

#include <QProcess>

#include "tests/app/harness/stock.h"

namespace lapwing::test {

bool Errands::failed(const QString& where) {
    why_ = where + QStringLiteral(": ") + phone_.thumb().why() + QStringLiteral(" ") + phone_.why();
    return false;
}

bool Errands::add_engine(const QString& name, int cylinders) {
    auto& thumb = phone_.thumb();
    if (!thumb.sees(QStringLiteral("addEngine")) && !thumb.touch(QStringLiteral("more")))
        return failed(QStringLiteral("More on Engines"));
    if (!thumb.touch(QStringLiteral("addEngine")) || !thumb.write(QStringLiteral("name"), name) ||
        !thumb.write(QStringLiteral("cylinders"), QString::number(cylinders)) ||
        !thumb.touch(QStringLiteral("keep")) || !phone_.arrives(QStringLiteral("EngineCard")))
        return failed(QStringLiteral("adding an engine"));
    return true;
}

bool Errands::add_tester(const QString& kind, const QString& name, const QString& scale,
                         const QString& unit) {
    auto& thumb = phone_.thumb();
    if (!thumb.touch(QStringLiteral("testers")) || !phone_.arrives(QStringLiteral("Testers")) ||
        !thumb.touch(QStringLiteral("addTester")) ||
        !thumb.touch_in(QStringLiteral("kind"), QStringLiteral("choice_") + kind) ||
        !thumb.write(QStringLiteral("name"), name) || !thumb.write(QStringLiteral("scale"), scale) ||
        !thumb.touch_in(QStringLiteral("unit"), QStringLiteral("choice_") + unit) ||
        !thumb.touch(QStringLiteral("keep")) || !phone_.arrives(QStringLiteral("TesterCard")))
        return failed(QStringLiteral("adding a tester"));
    return back() && back() ? true : failed(QStringLiteral("back from the tester"));
}

bool Errands::new_session() {
    auto& thumb = phone_.thumb();
    // The list's button goes on with a session of today, if there is one.
    if (!thumb.sees(QStringLiteral("newSession")) && thumb.sees(QStringLiteral("goOn")) &&
        phone_.page() == QLatin1String("Engines") && !thumb.touch(QStringLiteral("more")))
        return failed(QStringLiteral("More on Engines"));
    if (!thumb.touch(QStringLiteral("newSession")) || !phone_.arrives(QStringLiteral("Session")))
        return failed(QStringLiteral("a new session"));
    return true;
}

bool Errands::use_tester(const QString& key, const QString& name) {
    auto& thumb = phone_.thumb();
    if (!thumb.touch(QStringLiteral("tile_visit")) || !phone_.arrives(QStringLiteral("Visit")) ||
        !thumb.touch(QStringLiteral("line_") + key))
        return failed(QStringLiteral("the testers of the visit"));
    const auto testers = phone_.desk().testers();
    for (const auto& tester : testers)
        if (QString::fromStdString(tester.name) == name) {
            if (!thumb.touch(QStringLiteral("option_") + QString::fromStdString(tester.id.text())))
                return failed(QStringLiteral("choosing the tester"));
            wait_until([&] { return thumb.overlay() == nullptr; });
            return back() || failed(QStringLiteral("back from the visit"));
        }
    why_ = QStringLiteral("no tester is called ") + name;
    return false;
}

bool Errands::card_line(const QString& section, const QString& key, const QString& text,
                        const QString& unit) {
    auto& thumb = phone_.thumb();
    const QString line = QStringLiteral("line_") + key;
    if (!thumb.sees(line) && !thumb.touch(QStringLiteral("section_") + section))
        return failed(QStringLiteral("the section ") + section);
    if (!thumb.touch(line)) return failed(QStringLiteral("the line ") + key);
    // The line's own field takes the focus by itself, so that the keyboard is up at once.
    if (!wait_until([&] {
            const auto* focused = phone_.window().activeFocusItem();
            return focused && focused->objectName() == QLatin1String("field");
        }))
        return failed(QStringLiteral("the focus of ") + key);
    thumb.keys(text);
    if (!unit.isEmpty() && !thumb.touch_in(QStringLiteral("units"), QStringLiteral("choice_") + unit))
        return failed(QStringLiteral("the unit of ") + key);
    if (!thumb.touch(QStringLiteral("keep")) || !wait_until([&] { return thumb.overlay() == nullptr; }))
        return failed(QStringLiteral("keeping ") + key);
    settle(50);
    return true;
}

bool Errands::free_pad() {
    auto& thumb = phone_.thumb();
    // As often as it takes to see the last of the cautions.
    for (int touches = 0; thumb.sees(QStringLiteral("understood")); ++touches) {
        if (touches > 12 || !thumb.touch(QStringLiteral("understood")))
            return failed(QStringLiteral("the cautions"));
        settle(50);
    }
    // Which tester it is, is asked once of an engine.
    settle(50);
    if (thumb.sees(QStringLiteral("notNow")) && !thumb.touch(QStringLiteral("notNow")))
        return failed(QStringLiteral("which tester"));
    wait_until([&] { return thumb.overlay() == nullptr; });
    settle(30);
    return true;
}

bool Errands::open_pad(const QString& test) {
    auto& thumb = phone_.thumb();
    if (!thumb.touch(QStringLiteral("tile_") + test) || !phone_.arrives(QStringLiteral("Pad")))
        return failed(QStringLiteral("the pad of ") + test);
    return free_pad();
}

bool Errands::keep(const QString& digits) {
    auto& thumb = phone_.thumb();
    const auto kept = [&] {
        const auto now = visit();
        return now ? now->readings.size() : 0;
    };
    const auto before = kept();
    if (!thumb.type(digits) || !thumb.touch(QStringLiteral("keep")))
        return failed(QStringLiteral("keeping ") + digits);
    // How much oil went in is asked once.
    if (kept() == before && thumb.words().contains(QStringLiteral("Keep, oil not noted")) &&
        !thumb.touch(QStringLiteral("keep")))
        return failed(QStringLiteral("keeping without oil ") + digits);
    if (!wait_until([&] { return kept() > before; })) {
        why_ = QStringLiteral("%1 was not kept; the screen reads: %2")
                   .arg(digits, thumb.words().join(QStringLiteral(" | ")));
        return false;
    }
    settle(20);
    return true;
}

bool Errands::field(const QString& key, const QString& digits) {
    auto& thumb = phone_.thumb();
    if (!thumb.touch(QStringLiteral("tab_") + key) || !thumb.type(digits))
        return failed(QStringLiteral("field ") + key);
    return true;
}

bool Errands::back() {
    const auto* before = phone_.page_item();
    if (!phone_.thumb().touch(QStringLiteral("back"))) return failed(QStringLiteral("back"));
    if (!wait_until([&] { return phone_.page_item() != before; }))
        return failed(QStringLiteral("going back"));
    settle(20);
    return true;
}

bool Errands::back_to(const QString& page) {
    for (int steps = 0; steps < 12 && phone_.page() != page; ++steps)
        if (!back()) return false;
    return phone_.page() == page;
}

bool Errands::show_pressures_in(const QString& unit) {
    auto& thumb = phone_.thumb();
    if (!thumb.touch(QStringLiteral("more")) || !thumb.touch(QStringLiteral("settings")) ||
        !phone_.arrives(QStringLiteral("Settings")) ||
        !thumb.touch_in(QStringLiteral("pressure"), QStringLiteral("choice_") + unit))
        return failed(QStringLiteral("the unit in Settings"));
    return back();
}

QString Errands::make_report() {
    auto& thumb = phone_.thumb();
    if (!thumb.touch(QStringLiteral("handOver")) || !phone_.arrives(QStringLiteral("HandOver")) ||
        !thumb.touch(QStringLiteral("makeReport")) || !thumb.appears(QStringLiteral("made_0"), 15000)) {
        failed(QStringLiteral("the report"));
        return {};
    }
    for (const auto& file : std::filesystem::directory_iterator(phone_.devices.paths.documents()))
        if (file.path().extension() == ".pdf") return QString::fromStdString(file.path().string());
    why_ = QStringLiteral("no PDF lies in the documents");
    return {};
}

std::optional<Engine> Errands::engine() {
    const auto all = phone_.desk().engines();
    return all.empty() ? std::nullopt : phone_.desk().engine(all.front().id);
}

std::optional<Visit> Errands::visit() {
    const auto all = phone_.desk().engines();
    if (all.empty()) return std::nullopt;
    const auto sessions = phone_.desk().sessions(all.front().id);
    return sessions.empty() ? std::nullopt : phone_.desk().visit(sessions.front().id);
}

void nothing_over_pads(Phone& phone, SessionId session) {
    const QString id = QString::fromStdString(session.text());
    for (const char* place : {"dry", "leak-down", "wet"})
        phone.app().keepDraft(QStringLiteral("cautions/%1/%2").arg(id, QLatin1String(place)),
                              QStringLiteral("read"));
    const auto engine = phone.desk().engine_of(session);
    for (const auto kind : {TesterKind::compression_gauge, TesterKind::leak_down})
        if (engine)
            phone.app().keepDraft(
                QStringLiteral("which tester/%1/%2")
                    .arg(QString::fromStdString(engine->text()), QString::fromUtf8(word(kind).data())),
                QStringLiteral("asked"));
}

QString twin_ready_to_test(Phone& phone) {
    Stock stock(phone.desk());
    const auto session = stock.session(stock.engine("Harbour twin", 2), "As found");
    phone.desk().flush();
    settle(50);
    const QString id = QString::fromStdString(session.text());
    nothing_over_pads(phone, session);
    return id;
}

QString text_of_pdf(const QString& file) {
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {file, QStringLiteral("-")});
    if (!reader.waitForFinished(20000) || reader.exitCode() != 0) return {};
    return QString::fromUtf8(reader.readAllStandardOutput()).simplified();
}

}  // namespace lapwing::test
