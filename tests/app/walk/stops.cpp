// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/walk/stops.h"

#include <QBuffer>
#include <QElapsedTimer>
#include <QImage>
#include <utility>

#include "core/exchange/session_file.h"
#include "core/knowhow/knowhow.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/news.h"

namespace lapwing::test {
namespace {

QString id_text(const auto& id) {
    return QString::fromStdString(id.text());
}

QVariantMap with(QVariantMap map, std::initializer_list<std::pair<QString, QVariant>> more) {
    for (const auto& [key, value] : more)
        map[key] = value;
    return map;
}

/// "engine" only names the stop; the shell hands it on to nobody.
Stop named(Stop stop, int cylinders) {
    stop.args[QStringLiteral("engine")] = QStringLiteral("of %1").arg(cylinders);
    return stop;
}

std::string jpeg(Qt::GlobalColor color) {
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(color);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "jpg");
    return bytes.toStdString();
}

void commit_calls(Stock& stock, SessionId session) {
    std::vector<Note> calls(2);
    for (int number : {1, 2}) {
        auto& call = calls[std::size_t(number - 1)];
        call.session = session;
        call.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = number, .finding = {}};
        call.cause = number == 1 ? Cause::seals_well : Cause::next_cylinder;
    }
    stock.run(workflow::commit_calls(calls));
}

/// Changes with everything that is shown, and with its place.
std::size_t shape(const QQuickItem* item) {
    if (!item->isVisible() || item->opacity() <= 0.0) return 0;
    std::size_t seed = qHashMulti(0, item, item->x(), item->y(), item->width(), item->height());
    if (item->inherits("QQuickFlickable"))
        seed = qHashMulti(seed, item->property("contentHeight").toDouble());
    for (const auto* child : item->childItems())
        seed = qHashMulti(seed, shape(child));
    return seed;
}

}  // namespace

QString Stop::name() const {
    QStringList parts{page};
    for (const char* key : {"test", "engine", "card"})
        if (args.contains(QLatin1String(key))) parts << args[QLatin1String(key)].toString();
    parts << touches;
    return parts.join(QLatin1Char(' '));
}

Stops::Stops(Phone& phone) : phone_(phone) {
    phone_.settings().setCallFirst(true);
    Stock stock(phone_.desk());
    stock.tester(TesterKind::compression_gauge, "Red gauge", "16");
    const auto tester = stock.tester(TesterKind::leak_down, "Two-gauge tester", "10");
    for (const int cylinders : {1, 2, 6, 16})
        add_engine(stock, cylinders);
    add_other_pages(tester);
    phone_.desk().flush();
    settle(200);
}

void Stops::add_engine(Stock& stock, int cylinders) {
    const auto engine =
        stock.engine("Harbour engine with " + std::to_string(cylinders) + " cylinders", cylinders);
    const auto session = stock.session(engine, "As found");
    stock.readings(session, cylinders);
    stock.clearance(session, 1, "0.05");
    if (cylinders == 2)
        commit_calls(stock, session);
    else
        phone_.app().keepDraft(QStringLiteral("my call/") + id_text(session),
                               QStringLiteral("{\"skipped\":true}"));
    const QVariantMap here{{"sessionId", id_text(session)}};
    const auto add = [&](const QString& page, const QVariantMap& args, const QStringList& touches = {}) {
        stops_ << named({page, args, touches}, cylinders);
    };
    // The cautions of these places were read.
    for (const char* place : {"dry", "wet", "leak-down"})
        phone_.app().keepDraft(QStringLiteral("cautions/%1/%2").arg(id_text(session), QLatin1String(place)),
                               QStringLiteral("read"));
    add(QStringLiteral("Session"), here);
    add(QStringLiteral("Pad"), with(here, {{"test", "dry"}}));
    add(QStringLiteral("Pad"), with(here, {{"test", "dry"}}),
        {QStringLiteral("key_9"), QStringLiteral("key_2")});
    add(QStringLiteral("Pad"), with(here, {{"test", "leak-down"}, {"cylinder", 1}}),
        {QStringLiteral("key_3")});
    add(QStringLiteral("Findings"), here);
    add(QStringLiteral("Plan"), here);
    add(QStringLiteral("LeakHunt"), with(here, {{"cylinder", 1}}));
    // A year before, so that there is something to hold this visit against.
    const auto earlier = stock.session(engine, "Before the work");
    stock.readings(earlier, cylinders);
    add(QStringLiteral("EngineCard"), {{"engineId", id_text(engine)}});
    add(QStringLiteral("EngineCard"), {{"engineId", id_text(engine)}}, {QStringLiteral("historyList")});
    const QVariantMap both{
        {"engineId", id_text(engine)}, {"beforeId", id_text(earlier)}, {"afterId", id_text(session)}};
    add(QStringLiteral("Changes"), both);
    if (cylinders == 2) add(QStringLiteral("Changes"), both, {QStringLiteral("chooseBefore")});
    add(QStringLiteral("Clearances"), here);
    if (cylinders == 2 || cylinders == 6) add(QStringLiteral("Pad"), with(here, {{"test", "wet"}}));
    if (cylinders == 16)
        add(QStringLiteral("Pad"), with(here, {{"test", "dry"}}), {QStringLiteral("cylinder_0")});
    if (cylinders == 2) add_two_cylinders(stock, engine, session);
}

void Stops::add_two_cylinders(Stock& stock, EngineId engine, SessionId session) {
    const QVariantMap here{{"sessionId", id_text(session)}};
    const auto add = [&](const QString& page, const QVariantMap& args, const QStringList& touches = {}) {
        stops_ << named({page, args, touches}, 2);
    };
    const auto line = stock.plan_line(session, PlanOption::strip, "Head off, exhaust valves and seats");
    stock.plan_line(session, PlanOption::quick_fix, "Run it until it is warm, then test again");
    add(QStringLiteral("PlanLine"), {{"lineId", id_text(line)}});
    add(QStringLiteral("Plan"), here, {QStringLiteral("retest")});
    add(QStringLiteral("NextTdc"), with(here, {{"cylinder", 2}}));
    add(QStringLiteral("Visit"), here);
    add(QStringLiteral("Prepare"), here);
    add(QStringLiteral("Again"), with(here, {{"test", "dry"}, {"other", true}}));
    add(QStringLiteral("Calculators"), here);
    for (const char* calculator : {"leakage", "oil", "law", "healthy", "turning", "torque", "units"})
        add(QStringLiteral("Calculator"), with(here, {{"calculator", calculator}}));
    add(QStringLiteral("HandOver"), {{"engineId", id_text(engine)}, {"sessionId", id_text(session)}});
    add(QStringLiteral("Pad"), with(here, {{"test", "dry"}}), {QStringLiteral("more")});
    add(QStringLiteral("Visit"), here, {QStringLiteral("line_symptoms")});
    add(QStringLiteral("Visit"), here, {QStringLiteral("line_altitude")});
    phone_.devices.media.eye.scene = QImage::fromData(QByteArray::fromStdString(jpeg(Qt::darkGray)));
    const auto photo = stock.attachment(session, AttachmentKind::photo, jpeg(Qt::darkGreen));
    stock.attachment(session, AttachmentKind::voice, "RIFF");
    add_opinion(stock, engine, session);
    add(QStringLiteral("SecondOpinion"), here);
    add(QStringLiteral("SecondOpinion"), here, {QStringLiteral("addNote")});
    add(QStringLiteral("SecondOpinion"), here,
        {QStringLiteral("addNote"), QStringLiteral("choice_please test this")});
    add(QStringLiteral("News"), {{"engineId", id_text(engine)}});
    add(QStringLiteral("Conflicts"), {{"engineId", id_text(engine)}});
    add(QStringLiteral("BringIn"), {{"file", file_}});
    add(QStringLiteral("Backup"), {});
    phone_.desk().name_key(std::string(64, 'a'), "Robin");
    add(QStringLiteral("KnownKeys"), {});
    add(QStringLiteral("Evidence"), here);
    add(QStringLiteral("VoiceNote"), here);
    add(QStringLiteral("Photo"), with(here, {{"kind", "gauge"}}));
    add(QStringLiteral("Photo"), with(here, {{"photoId", id_text(photo)}}));
    const auto uncalled = stock.session(engine, "Before my call");
    stock.readings(uncalled, 2);
    add(QStringLiteral("Findings"), {{"sessionId", id_text(uncalled)}});
    // A session whose cautions were not read.
    const auto fresh = stock.session(engine, "Before the cautions");
    add(QStringLiteral("Pad"), {{"sessionId", id_text(fresh)}, {"test", "leak-down"}});
    add(QStringLiteral("Pad"), {{"sessionId", id_text(fresh)}, {"test", "wet"}});
}

/// A mentor's remarks of every kind, and a file in which a note and the engine card differ from those here.
void Stops::add_opinion(Stock& stock, EngineId engine, SessionId session) {
    auto& desk = phone_.desk();
    const auto note = [&](NoteKind kind, const char* text) {
        Note note;
        note.id = desk.make_id<NoteId>();
        note.session = session;
        note.kind = kind;
        note.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = 2, .finding = {}};
        note.author = "Robin at the other shop";
        note.text = text;
        if (kind == NoteKind::test_request) note.test = TestKind::leak_down;
        if (kind == NoteKind::other_cause) note.cause = Cause::intake;
        stock.run(workflow::save_note(note));
        return note;
    };
    note(NoteKind::test_request, "Turn the crank one full turn first, and let it settle");
    note(NoteKind::other_cause, "The valve may only need its clearance");
    Note remark = note(NoteKind::note, "as first written");
    stock.attachment(session, AttachmentKind::voice, "RIFF spoken");

    // The same note changed in another library: two versions here, and one more in a file that waits.
    auto dossier = *workflow::hand_over(desk, {engine, {}, false});
    auto elsewhere = [&](std::int64_t later, const char* text) {
        for (auto& one : dossier.visits.front().notes)
            if (one.id == remark.id) {
                one.text = text;
                one.lineage.revisions = {{Uuid::make(desk.clock()), desk.clock().now()}};
                one.lineage.revisions[0].at.unix_ms += later;
            }
        dossier.engine.description = text;
        dossier.engine.lineage.revisions = {{Uuid::make(desk.clock()), desk.clock().now()}};
    };
    remark.text = "changed here";
    stock.run(workflow::save_note(remark));
    elsewhere(1000, "changed by someone else");
    stock.run(workflow::bring_in(dossier));
    workflow::Preview brought;
    brought.new_records = workflow::conflicts(*desk.dossier(engine));
    add_news(desk, engine, brought, QStringLiteral("Robin at the other shop"));
    elsewhere(2000, "changed a second time by someone else, in many more words than a line can hold");
    exchange::Outgoing outgoing;
    dossier.visits.front().attachments.clear();
    outgoing.dossier = dossier;
    outgoing.at = desk.clock().now();
    const auto key = workflow::signing_key(desk);
    outgoing.key = &*key;
    file_ = QString::fromStdString((phone_.folder().parent_path() / "walk.lapwing").string());
    const auto written = exchange::write_session_file(file_.toStdString(), outgoing);
    if (!written) throw std::runtime_error(written.error().english);
}

void Stops::add_other_pages(TesterId tester) {
    stops_ << Stop{QStringLiteral("HowTo"), {}, {}};
    const auto knowhow = knowhow::built_in_knowhow(phone_.app().reference());
    if (!knowhow) throw std::runtime_error(knowhow.error().english);
    for (const auto& group : knowhow->groups)
        for (const auto& card : group.cards)
            stops_ << Stop{QStringLiteral("HowToCard"), {{"card", QString::fromStdString(card.id)}}, {}};
    stops_ << Stop{QStringLiteral("Engines"), {}, {}}
           << Stop{QStringLiteral("Engines"), {}, {QStringLiteral("more")}}
           << Stop{QStringLiteral("Engines"), {}, {QStringLiteral("more"), QStringLiteral("addEngine")}}
           << Stop{QStringLiteral("Engines"), {}, {QStringLiteral("more"), QStringLiteral("newSession")}}
           << Stop{QStringLiteral("Testers"), {}, {}}
           << Stop{QStringLiteral("Testers"), {}, {QStringLiteral("addTester")}}
           << Stop{QStringLiteral("TesterCard"), {{"testerId", id_text(tester)}}, {}}
           << Stop{QStringLiteral("TesterCard"),
                   {{"testerId", id_text(tester)}},
                   {QStringLiteral("checkNext")}}
           << Stop{QStringLiteral("Settings"), {}, {}} << Stop{QStringLiteral("Licences"), {}, {}}
           << Stop{QStringLiteral("Licence"), {{"licence", "libsodium"}}, {}}
           << Stop{QStringLiteral("Assumptions"), {}, {}}
           << Stop{QStringLiteral("Assumptions"), {}, {QStringLiteral("open")}};
}

QString Stops::open(const Stop& stop) {
    auto& thumb = phone_.thumb();
    phone_.home(1);
    auto args = stop.args;
    args.remove(QStringLiteral("engine"));
    if (stop.page != QLatin1String("Engines")) phone_.go(stop.page, args, 1);
    rest();
    for (const auto& touch : stop.touches) {
        // Large text on a small screen folds a pad's cylinders and fields into a line.
        for (const auto& [folded, fold] : {std::pair("more", "fieldsFold"), {"cylinder_0", "cylinderFold"}})
            if (touch == QLatin1String(folded) && !thumb.sees(touch) && thumb.sees(QLatin1String(fold)))
                thumb.touch(QLatin1String(fold));
        if (thumb.overlay() && touch == QLatin1String("cylinder_0")) continue;
        if (!thumb.touch(touch)) return touch + QStringLiteral(": ") + thumb.why();
        settle(20);
    }
    if (!stop.touches.isEmpty()) rest();
    return {};
}

void Stops::rest() {
    const auto& thumb = phone_.thumb();
    std::size_t before = 0;
    int alike = 0;
    QElapsedTimer since;
    wait_until(
        [&] {
            const std::size_t now = shape(phone_.window().contentItem());
            if (now != std::exchange(before, now) || thumb.sees(QStringLiteral("working"))) {
                alike = 0;
                since.start();
            }
            return ++alike > 3 && since.elapsed() >= 30;
        },
        20'000);
}

void Stops::leave(const Stop& stop) {
    auto& thumb = phone_.thumb();
    // Half-typed digits would stay for the next visit.
    if (stop.touches.contains(QStringLiteral("key_9")) || stop.touches.contains(QStringLiteral("key_3")))
        for (int i = 0; i < 3 && thumb.sees(QStringLiteral("key_backspace")); ++i)
            thumb.touch(QStringLiteral("key_backspace"));
    for (int i = 0; i < 3 && thumb.overlay(); ++i)
        thumb.key(Qt::Key_Escape);
}

const QQuickItem* Stops::top() const {
    const auto* sheet = phone_.thumb().overlay();
    return sheet ? sheet : phone_.window().contentItem();
}

void Stops::scroll_through(const std::function<void()>& look) {
    QQuickItem* longest = nullptr;
    const std::function<void(QQuickItem*)> search = [&](QQuickItem* item) {
        if (!item->isVisible()) return;
        if (item->inherits("QQuickFlickable") && item->height() > 0 &&
            item->property("contentHeight").toDouble() > item->height() + 1 &&
            (!longest ||
             item->property("contentHeight").toDouble() > longest->property("contentHeight").toDouble()))
            longest = item;
        for (auto* child : item->childItems())
            search(child);
    };
    // The list of engines beside a page may be taller than the page.
    if (!phone_.thumb().overlay()) search(phone_.page_item());
    if (!longest) search(const_cast<QQuickItem*>(top()));
    look();
    if (!longest) return;
    for (int screens = 0; screens < 40; ++screens) {
        const double first = longest->property("originY").toDouble();
        const double last = first + longest->property("contentHeight").toDouble() - longest->height();
        const double now = longest->property("contentY").toDouble();
        if (now >= last - 1) return;
        longest->setProperty("contentY", std::min(last, now + 0.8 * longest->height()));
        look();
    }
}

}  // namespace lapwing::test
