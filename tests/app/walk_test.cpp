// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Walks every page in four shapes, two looks and two text sizes and measures what stands there: touch
// targets, the gaps between them, what lies outside or over something else, text that is cut, and contrast.
#include <QBuffer>
#include <QTest>
#include <map>
#include <set>

#include "core/exchange/session_file.h"
#include "core/knowhow/knowhow.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/remarks.h"
#include "qml/viewmodels/news.h"
#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"
#include "tests/app/walk/measure.h"

namespace lapwing::test {
namespace {

struct Screen {
    QSize size;
    bool dark;
    double text;

    [[nodiscard]] QString name() const {
        return QStringLiteral("%1x%2 %3 %4 %")
            .arg(size.width())
            .arg(size.height())
            .arg(dark ? QStringLiteral("workshop") : QStringLiteral("daylight"))
            .arg(int(100 * text));
    }
};

struct Stop {
    QString page;
    QVariantMap args;
    /// Touched one after the other once the page is there, to open sheets.
    QStringList touches;

    [[nodiscard]] QString name() const {
        QStringList parts{page};
        for (const char* key : {"test", "engine", "card"})
            if (args.contains(QLatin1String(key))) parts << args[QLatin1String(key)].toString();
        parts << touches;
        return parts.join(QLatin1Char(' '));
    }
};

QString id_text(const auto& id) {
    return QString::fromStdString(id.text());
}

}  // namespace

class WalkTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void every_page_data();
    void every_page();
    void cleanupTestCase();

private:
    void add_engine(Stock& stock, int cylinders);
    static void commit_calls(Stock& stock, SessionId session);
    void add_opinion(Stock& stock, EngineId engine, SessionId session);
    void visit(const Stop& stop, const Screen& screen);
    void measure(const QString& where, const Screen& screen);
    void scroll_through(const QString& where, const Screen& screen, const QQuickItem* top);

    Phone phone_;
    QString file_;  ///< a session file that differs from the library
    QList<Stop> stops_;
    /// Offence -> screens it was seen on.
    std::map<std::pair<QString, Offence>, std::set<QString>> found_;
    int measured_targets_ = 0, measured_texts_ = 0, pictures_ = 0;
};

void WalkTest::add_engine(Stock& stock, int cylinders) {
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
    const QString of = QStringLiteral("of %1").arg(cylinders);
    const QVariantMap here{{"sessionId", id_text(session)}};
    const auto with = [](QVariantMap map, std::initializer_list<std::pair<QString, QVariant>> more) {
        for (const auto& [key, value] : more)
            map[key] = value;
        return map;
    };
    // "engine" only names the stop; the shell hands it on to nobody.
    const auto add = [&](const QString& page, QVariantMap args, const QStringList& touches = {}) {
        stops_ << Stop{page, std::move(args), touches};
        stops_.back().args[QStringLiteral("engine")] = of;
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
    if (cylinders != 2) return;
    const auto line = stock.plan_line(session, PlanOption::strip, "Head off, exhaust valves and seats");
    stock.plan_line(session, PlanOption::quick_fix, "Run it until it is warm, then test again");
    add(QStringLiteral("PlanLine"), {{"lineId", id_text(line)}});
    add(QStringLiteral("Plan"), here, {QStringLiteral("retest")});
    add(QStringLiteral("NextTdc"), with(here, {{"cylinder", 2}}));
    add(QStringLiteral("Visit"), here);
    add(QStringLiteral("Prepare"), here);
    add(QStringLiteral("Calculators"), here);
    for (const char* calculator : {"leakage", "oil", "healthy", "torque", "units"})
        add(QStringLiteral("Calculator"), with(here, {{"calculator", calculator}}));
    add(QStringLiteral("HandOver"), {{"engineId", id_text(engine)}, {"sessionId", id_text(session)}});
    add(QStringLiteral("Pad"), with(here, {{"test", "dry"}}), {QStringLiteral("more")});
    add(QStringLiteral("Visit"), here, {QStringLiteral("line_symptoms")});
    add(QStringLiteral("Visit"), here, {QStringLiteral("line_altitude")});
    const auto jpeg = [](Qt::GlobalColor color) {
        QImage image(640, 480, QImage::Format_RGB32);
        image.fill(color);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        image.save(&buffer, "jpg");
        return bytes.toStdString();
    };
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
    add(QStringLiteral("Evidence"), here);
    add(QStringLiteral("VoiceNote"), here);
    add(QStringLiteral("Photo"), with(here, {{"kind", "gauge"}}));
    add(QStringLiteral("Photo"), with(here, {{"photoId", id_text(photo)}}));
    const auto uncalled = stock.session(engine, "Before my call");
    stock.readings(uncalled, cylinders);
    add(QStringLiteral("Findings"), {{"sessionId", id_text(uncalled)}});
    // A session whose cautions were not read.
    const auto fresh = stock.session(engine, "Before the cautions");
    add(QStringLiteral("Pad"), {{"sessionId", id_text(fresh)}, {"test", "leak-down"}});
    add(QStringLiteral("Pad"), {{"sessionId", id_text(fresh)}, {"test", "wet"}});
}

void WalkTest::commit_calls(Stock& stock, SessionId session) {
    std::vector<Note> calls(2);
    for (int number : {1, 2}) {
        auto& call = calls[std::size_t(number - 1)];
        call.session = session;
        call.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = number, .finding = {}};
        call.cause = number == 1 ? Cause::seals_well : Cause::next_cylinder;
    }
    stock.run(workflow::commit_calls(calls));
}

/// A mentor's remarks of every kind, and a file in which a note and the engine card differ from those here.
void WalkTest::add_opinion(Stock& stock, EngineId engine, SessionId session) {
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

void WalkTest::initTestCase() {
    QVERIFY2(phone_.on(), qPrintable(phone_.why()));
    phone_.settings().setCallFirst(true);
    Stock stock(phone_.desk());
    stock.tester(TesterKind::compression_gauge, "Red gauge", "16");
    const auto tester = stock.tester(TesterKind::leak_down, "Two-gauge tester", "10");
    for (const int cylinders : {1, 2, 6, 16})
        add_engine(stock, cylinders);
    stops_ << Stop{QStringLiteral("HowTo"), {}, {}};
    const auto knowhow = knowhow::built_in_knowhow(phone_.app().reference());
    QVERIFY(knowhow.has_value());
    for (const auto& group : knowhow->groups)
        for (const auto& card : group.cards)
            stops_ << Stop{QStringLiteral("HowToCard"), {{"card", QString::fromStdString(card.id)}}, {}};
    stops_ << Stop{QStringLiteral("Engines"), {}, {}}
           << Stop{QStringLiteral("Engines"), {}, {QStringLiteral("more")}}
           << Stop{QStringLiteral("Engines"), {}, {QStringLiteral("more"), QStringLiteral("addEngine")}}
           << Stop{QStringLiteral("Engines"), {}, {QStringLiteral("newSession")}}
           << Stop{QStringLiteral("Testers"), {}, {}}
           << Stop{QStringLiteral("Testers"), {}, {QStringLiteral("addTester")}}
           << Stop{QStringLiteral("TesterCard"), {{"testerId", id_text(tester)}}, {}}
           << Stop{QStringLiteral("TesterCard"),
                   {{"testerId", id_text(tester)}},
                   {QStringLiteral("checkNext")}}
           << Stop{QStringLiteral("Settings"), {}, {}} << Stop{QStringLiteral("Assumptions"), {}, {}}
           << Stop{QStringLiteral("Assumptions"), {}, {QStringLiteral("open")}};
    phone_.desk().flush();
    settle(200);
}

void WalkTest::every_page_data() {
    QTest::addColumn<QSize>("size");
    QTest::addColumn<bool>("dark");
    QTest::addColumn<double>("text");
    // One shape of the four when LAPWING_WALK names it, so that they can be walked side by side.
    const QString only = qEnvironmentVariable("LAPWING_WALK");
    for (const QSize size : {QSize(412, 915), QSize(320, 568), QSize(915, 412), QSize(1280, 800)}) {
        if (!only.isEmpty() && only != QStringLiteral("%1x%2").arg(size.width()).arg(size.height())) continue;
        for (const bool dark : {true, false})
            for (const double text : {1.0, 2.0}) {
                const Screen screen{size, dark, text};
                QTest::newRow(qPrintable(screen.name())) << size << dark << text;
            }
    }
}

void WalkTest::every_page() {
    QFETCH(QSize, size);
    QFETCH(bool, dark);
    QFETCH(double, text);
    const Screen screen{size, dark, text};
    phone_.home();
    phone_.devices.appearance.choose({dark, text, true});
    phone_.resize(size);
    const auto before = found_;
    int visits = 0;
    for (const auto& stop : stops_) {
        visit(stop, screen);
        ++visits;
    }
    QCOMPARE(visits, int(stops_.size()));
    int seen_here = 0;
    for (const auto& [what, screens] : found_)
        seen_here += int(screens.contains(screen.name()));
    QVERIFY2(seen_here == 0,
             qPrintable(QStringLiteral("%1 offences; the table stands at the end").arg(seen_here)));
}

void WalkTest::visit(const Stop& stop, const Screen& screen) {
    auto& thumb = phone_.thumb();
    phone_.home();
    auto args = stop.args;
    args.remove(QStringLiteral("engine"));
    if (stop.page != QLatin1String("Engines")) phone_.go(stop.page, args);
    settle(40);
    for (const auto& touch : stop.touches) {
        if (!thumb.touch(touch)) {
            found_[{stop.name(), Offence{QStringLiteral("touch"), touch, thumb.why()}}].insert(screen.name());
            return;
        }
        settle(20);
    }
    wait_until(
        [&] {
            const QString words = thumb.words().join(QString());
            return !words.contains(QStringLiteral("Working it out")) &&
                   !words.contains(QStringLiteral("Reading and checking"));
        },
        20'000);
    const auto* top = thumb.overlay() ? thumb.overlay() : phone_.window().contentItem();
    scroll_through(stop.name(), screen, top);
    // Half-typed digits would stay for the next visit.
    if (stop.touches.contains(QStringLiteral("key_9")) || stop.touches.contains(QStringLiteral("key_3")))
        for (int i = 0; i < 3 && thumb.sees(QStringLiteral("key_backspace")); ++i)
            thumb.touch(QStringLiteral("key_backspace"));
    for (int i = 0; i < 3 && thumb.overlay(); ++i)
        thumb.key(Qt::Key_Escape);
}

void WalkTest::measure(const QString& where, const Screen& screen) {
    settle(5);
    const auto* top = phone_.thumb().overlay() ? phone_.thumb().overlay() : phone_.window().contentItem();
    Measure first(phone_.window(), *top, phone_.window().grabWindow());
    measured_targets_ += first.targets();
    measured_texts_ += first.texts();
    ++pictures_;
    if (first.offences().empty()) return;
    // On a busy machine the picture may have been taken between two steps of the layout. What is really wrong
    // is still wrong a moment later.
    settle(250);
    Measure second(phone_.window(), *top, phone_.window().grabWindow());
    for (const auto& offence : second.offences())
        found_[{where, offence}].insert(screen.name());
}

/// The tallest list of the page, moved on by most of its height until its end.
void WalkTest::scroll_through(const QString& where, const Screen& screen, const QQuickItem* top) {
    QQuickItem* longest = nullptr;
    const std::function<void(QQuickItem*)> look = [&](QQuickItem* item) {
        if (!item->isVisible()) return;
        if (item->inherits("QQuickFlickable") && item->height() > 0 &&
            item->property("contentHeight").toDouble() > item->height() + 1 &&
            (!longest ||
             item->property("contentHeight").toDouble() > longest->property("contentHeight").toDouble()))
            longest = item;
        for (auto* child : item->childItems())
            look(child);
    };
    look(const_cast<QQuickItem*>(top));
    measure(where, screen);
    if (!longest) return;
    for (int screens = 0; screens < 40; ++screens) {
        const double first = longest->property("originY").toDouble();
        const double last = first + longest->property("contentHeight").toDouble() - longest->height();
        const double now = longest->property("contentY").toDouble();
        if (now >= last - 1) return;
        longest->setProperty("contentY", std::min(last, now + 0.8 * longest->height()));
        measure(where, screen);
    }
}

void WalkTest::cleanupTestCase() {
    std::printf("walk: %lld stops, %d pictures, %d targets and %d texts measured\n",
                static_cast<long long>(stops_.size()), pictures_, measured_targets_, measured_texts_);
    // One line for an item and a rule, however many screens and sizes it was seen on.
    std::map<std::tuple<QString, QString, QString>, std::pair<QString, std::set<QString>>> table;
    for (const auto& [key, screens] : found_) {
        auto& line = table[{key.second.rule, key.first, key.second.item}];
        line.first = key.second.detail;
        line.second.insert(screens.begin(), screens.end());
    }
    for (const auto& [key, line] : table) {
        const auto& [rule, page, item] = key;
        std::printf("%-14s | %-34s | %s | %s | on %zu, %s\n", qPrintable(rule), qPrintable(page),
                    qPrintable(item), qPrintable(line.first), line.second.size(),
                    qPrintable(*line.second.begin()));
    }
    std::printf("walk: %zu offenders\n", table.size());
    phone_.off();
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::WalkTest)
#include "walk_test.moc"
