// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/second_opinion_model.h"

#include <algorithm>

#include "core/workflow/remarks.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/odds_lines.h"
#include "qml/viewmodels/opinion_words.h"

namespace lapwing {
namespace {

QString key_of(const Tie& tie) {
    QString key = QString::fromUtf8(word(tie.to).data());
    if (tie.cylinder) key += QStringLiteral("_%1").arg(*tie.cylinder);
    if (tie.record) key += QLatin1Char('_') + QString::fromStdString(tie.record->text());
    return key.replace(QLatin1Char(' '), QLatin1Char('_'));
}

Tie on_finding(int cylinder, std::string code) {
    Tie tie{.to = TiedTo::finding, .record = {}, .cylinder = {}, .finding = std::move(code)};
    if (cylinder > 0) tie.cylinder = cylinder;
    return tie;
}

// What a remark on the odds is tied to; files hold these words.
const std::string odds_headline = "where it leaks";

std::string share_code(const QVariantMap& share) {
    return "where it leaks: " + share["path"].toString().toStdString();
}

}  // namespace

SecondOpinionModel::SecondOpinionModel(QObject* parent)
    : EvidenceBacked(parent), odds_(std::make_unique<OddsBeside>()) {
    connect(this, &SecondOpinionModel::appChanged, this, [this] { odds_->setApp(app()); });
    connect(this, &SecondOpinionModel::sessionIdChanged, this, [this] { odds_->setSessionId(sessionId()); });
    connect(odds_.get(), &OddsBeside::refreshed, this, [this] {
        refresh();
        emit refreshed();
    });
}

void SecondOpinionModel::componentComplete() {
    EvidenceBacked::componentComplete();
    odds_->componentComplete();
}

/// A remark on a finding stays with the cylinder, whatever is found by now.
bool SecondOpinionModel::hangsOn(const Tie& tie, const Thing& thing) const {
    if (!thing.headline) return tie == thing.tie;
    return tie.to == TiedTo::finding && tie.cylinder == thing.tie.cylinder &&
           !found_.contains({tie.cylinder.value_or(0), tie.finding});
}

QVariantList SecondOpinionModel::causes() const {
    return cause_choices(engine(), format());
}

QVariantList SecondOpinionModel::tests() const {
    return test_choices(engine(), format());
}

void SecondOpinionModel::refresh() {
    if (!found()) return;
    listFirst();
    // All at once: nothing moves away under a finger when the findings are there.
    if (!findings()) return;
    listFound();
    sections_.clear();
    sections_ << sessionSection();
    for (const auto& cylinder : engine().cylinders)
        sections_ << cylinderSection(cylinder);
    std::vector<Thing> plan, testers;
    for (const auto& line : visit().plan)
        plan.push_back(thingOf(line, TiedTo::plan_line));
    if (!plan.empty()) sections_ << section(tr("Plan"), {}, plan);
    for (const auto* tester : testersUsed())
        testers.push_back(thingOf(*tester, TiedTo::tester));
    if (!testers.empty()) sections_ << section(tr("Testers"), {}, testers);
    // Last: they come later, and what stands above them stays in its place.
    if (odds_->leaks()) sections_ << oddsSection();
}

// ---- What to look at first

void SecondOpinionModel::say(const QString& mark, const QString& text) {
    first_ << QVariantMap{{"mark", mark}, {"text", text}};
}

void SecondOpinionModel::listFirst() {
    first_.clear();
    listTesters();
    listRepeats();
    listSteps();
}

std::vector<const Tester*> SecondOpinionModel::testersUsed() const {
    std::vector<const Tester*> used;
    for (const auto& tester : dossier().testers) {
        const auto& s = session();
        const bool named = tester.id == s.compression_gauge || tester.id == s.leak_down_tester ||
                           tester.id == s.crankcase_tester ||
                           std::ranges::any_of(visit().readings, [&](const Reading& reading) {
                               return reading.tester == tester.id;
                           });
        if (named) used.push_back(&tester);
    }
    return used;
}

void SecondOpinionModel::listTesters() {
    const auto used = testersUsed();
    if (used.empty())
        say(QStringLiteral("none"), tr("No tester is named: the readings' uncertainty is guessed."));
    for (const auto* tester : used) {
        const QString name = QString::fromStdString(tester->name);
        if (tester->checks.empty()) say(QStringLiteral("none"), tr("%1: no self-check noted").arg(name));
        for (std::size_t kind = 0; kind < Words<TesterCheckKind>::list.size(); ++kind) {
            const auto* check = last_check(*tester, static_cast<TesterCheckKind>(kind));
            if (!check) continue;
            say(check->result == CheckResult::failed ? QStringLiteral("fault") : QStringLiteral("good"),
                tr("%1: %2, %3, %4")
                    .arg(name, format().name(check->kind), format().name(check->result),
                         format().shortDate(check->at)));
        }
    }
}

void SecondOpinionModel::listRepeats() {
    bool any = false;
    for (std::size_t test = 0; test < Words<TestKind>::list.size(); ++test)
        for (const auto& cylinder : engine().cylinders) {
            const auto counting = standing(visit().readings, static_cast<TestKind>(test), cylinder.number);
            if (counting.size() < 2) continue;
            QStringList values;
            for (const auto* reading : counting) {
                Reading bare = *reading;
                bare.note.clear();
                values << format::gist_of(format(), bare);
            }
            say({},
                tr("Repeated: %1: %2")
                    .arg(format::title_of(format(), *counting.front()), values.join(QStringLiteral("; "))));
            any = true;
        }
    if (!any && !visit().readings.empty()) say(QStringLiteral("none"), tr("No reading was repeated"));
}

void SecondOpinionModel::listSteps() {
    QStringList open;
    for (const auto& reason : reference().prepare) {
        if ((engine().cycle == StrokeCycle::two && !reason.two_stroke) ||
            (engine().fuel == Fuel::diesel && !reason.diesel))
            continue;
        const auto state = step_state(session(), reason.step);
        if (state == StepState::open) open << format().name(reason.step);
        if (state != StepState::not_done) continue;
        const auto mark = std::ranges::find(session().prepare, reason.step, &PrepareMark::step);
        const QString note = QString::fromStdString(mark->note);
        say(QStringLiteral("borderline"),
            note.isEmpty() ? tr("Not done: %1").arg(format().name(reason.step))
                           : tr("Not done: %1 (%2)").arg(format().name(reason.step), note));
    }
    if (!open.isEmpty())
        say(QStringLiteral("none"), tr("Not marked: %1").arg(open.join(QStringLiteral(", "))));
}

// ---- Everything, place by place

template <class T>
SecondOpinionModel::Thing SecondOpinionModel::thingOf(const T& record, TiedTo to) const {
    Thing thing{format::title_of(format(), record), format::gist_of(format(), record), {}, {}};
    thing.tie.to = to;
    thing.tie.record = record.id.uuid;
    return thing;
}

QVariantMap SecondOpinionModel::item(const Thing& thing) const {
    QVariantList photos, voices, notes;
    const auto voices_of = [&](const Thing& of) {
        QVariantList list;
        for (const auto& one : visit().attachments)
            if (one.kind == AttachmentKind::voice && hangsOn(one.tie, of)) list << itemOf(one);
        return list;
    };
    for (const auto& one : visit().attachments)
        if (one.kind == AttachmentKind::photo && hangsOn(one.tie, thing)) photos << itemOf(one);
    for (const auto& note : visit().notes) {
        if (!hangsOn(note.tie, thing)) continue;
        auto item = note_item(note, app()->settings()->author(), format());
        Thing of_note;
        of_note.tie = {.to = TiedTo::note, .record = note.id.uuid, .cylinder = {}, .finding = {}};
        item["voices"] = voices_of(of_note);
        notes << item;
    }
    return {{"key",
             thing.headline || thing.tie.to != TiedTo::finding
                 ? key_of(thing.tie)
                 : key_of(thing.tie) + QLatin1Char('_') +
                       QString::fromStdString(thing.tie.finding).replace(QLatin1Char(' '), QLatin1Char('_'))},
            {"title", thing.title},
            {"text", thing.text},
            {"detail", thing.detail},
            {"replaced", thing.replaced},
            {"to", QString::fromUtf8(word(thing.tie.to).data())},
            {"record", thing.tie.record ? QString::fromStdString(thing.tie.record->text()) : QString()},
            {"cylinder", thing.tie.cylinder.value_or(0)},
            {"finding", QString::fromStdString(thing.tie.finding)},
            {"photos", photos},
            {"voices", voices_of(thing)},
            {"notes", notes}};
}

QVariantMap SecondOpinionModel::section(const QString& title, const QString& state,
                                        const std::vector<Thing>& things) const {
    QVariantList list;
    for (const auto& thing : things)
        list << item(thing);
    return {{"title", title}, {"state", state}, {"things", list}};
}

QVariantMap SecondOpinionModel::sessionSection() const {
    QStringList complaint;
    for (const auto symptom : session().complaint.symptoms)
        complaint << format().name(symptom);
    if (!session().complaint.text.empty()) complaint << QString::fromStdString(session().complaint.text);
    Thing whole{tr("Session"),
                format().headed(complaint.join(QStringLiteral(" · "))),
                QString::fromStdString(session().note),
                {}};
    std::vector<Thing> things{whole};
    if (findings()) {
        things.push_back({.title = tr("Findings"),
                          .text = format().text(findings()->headline),
                          .detail = {},
                          .tie = on_finding(0, findings()->headline.code),
                          .headline = true});
        addContradictions(things, 0, findings()->contradictions);
    }
    for (auto& reading : readingsOf(0))
        things.push_back(std::move(reading));
    return section(tr("Engine as a whole"), findings() ? state_key(findings()->state) : QString(), things);
}

std::vector<SecondOpinionModel::Thing> SecondOpinionModel::readingsOf(int cylinder) const {
    std::vector<Thing> things;
    for (const auto& reading : visit().readings) {
        if (reading.cylinder != cylinder) continue;
        Thing thing = thingOf(reading, TiedTo::reading);
        thing.title = format().heading(reading.test);
        thing.replaced = std::ranges::any_of(
            visit().readings, [&](const Reading& later) { return later.replaces == reading.id; });
        QStringList detail{format().shortDateTime(reading.taken_at), format().name(reading.tag)};
        if (reading.oiled == Oiled::before) detail << format().name(reading.oiled);
        if (reading.from == ReadingFrom::photo) detail << format().name(reading.from);
        if (const auto* tester = find_tester(dossier(), reading.tester))
            detail << QString::fromStdString(tester->name);
        if (thing.replaced) detail << tr("measured again later");
        thing.detail = detail.join(QStringLiteral(" · "));
        things.push_back(std::move(thing));
    }
    return things;
}

QVariantMap SecondOpinionModel::cylinderSection(const Cylinder& cylinder) const {
    const int number = cylinder.number;
    const findings::CylinderFindings* judged = nullptr;
    if (findings())
        for (const auto& one : findings()->cylinders)
            if (one.number == number) judged = &one;
    std::vector<Thing> things;
    if (judged) {
        things.push_back({.title = tr("Findings"),
                          .text = format().text(judged->headline),
                          .detail = {},
                          .tie = on_finding(number, judged->headline.code),
                          .headline = true});
        addContradictions(things, number, judged->contradictions);
    }
    Thing whole{tr("Cylinder %1").arg(number), {}, {}, {}};
    whole.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = number, .finding = {}};
    things.push_back(std::move(whole));
    for (auto& reading : readingsOf(number))
        things.push_back(std::move(reading));
    for (const auto* note : standing(visit().exits, number)) {
        Thing thing = thingOf(*note, TiedTo::exit_note);
        thing.title = tr("Leak hunt, %1").arg(format().name(note->exit));
        things.push_back(std::move(thing));
    }
    for (const auto* clearance : standing(visit().clearances, number)) {
        Thing thing = thingOf(*clearance, TiedTo::clearance);
        const auto& valves = engine().valves;
        const bool several =
            (clearance->side == ValveSide::intake ? valves.intake_valves : valves.exhaust_valves) > 1;
        const QString side = format().name(clearance->side);
        thing.title =
            several ? tr("Clearance, %1 %2").arg(side).arg(clearance->valve) : tr("Clearance, %1").arg(side);
        things.push_back(std::move(thing));
    }
    const QString name = QString::fromStdString(cylinder.name);
    const QString title = tr("Cylinder %1").arg(number);
    return section(name.isEmpty() ? title : title + QStringLiteral(", ") + name,
                   judged ? state_key(judged->state) : QString(), things);
}

/// Those of one code are one thing: a remark is tied to the code.
void SecondOpinionModel::addContradictions(std::vector<Thing>& things, int cylinder,
                                           const std::vector<findings::Remark>& contradictions) const {
    for (const auto& one : contradictions) {
        const auto tie = on_finding(cylinder, one.message.code);
        const auto before = std::ranges::find(things, tie, &Thing::tie);
        const QString text = format().text(one.message);
        if (before == things.end())
            things.push_back({.title = tr("Contradiction"), .text = text, .detail = {}, .tie = tie});
        else
            before->text += QLatin1Char('\n') + text;
    }
}

std::vector<SecondOpinionModel::Thing> SecondOpinionModel::oddsOf(
    const findings::CylinderFindings& cylinder) const {
    const auto* odds = odds_->leaks(cylinder.number);
    if (!odds) return {};
    const auto map = odds_map(cylinder, *odds_->leaks(), *odds, reference(), format());
    const QString title = tr("Cylinder %1").arg(cylinder.number);
    QStringList detail = map["reasons"].toStringList();
    detail << map["others"].toString() << map["means"].toString() << map["besideRules"].toString();
    detail.removeAll(QString());
    std::vector<Thing> things{{.title = title,
                               .text = map["headline"].toString(),
                               .detail = detail.join(QLatin1Char('\n')),
                               .tie = on_finding(cylinder.number, odds_headline)}};
    for (const auto& share : map["shares"].toList()) {
        const auto line = share.toMap();
        things.push_back({.title = title + QStringLiteral(", ") + line["name"].toString(),
                          .text = line["figure"].toString(),
                          .detail = line["detail"].toString(),
                          .tie = on_finding(cylinder.number, share_code(line))});
    }
    return things;
}

QVariantMap SecondOpinionModel::oddsSection() const {
    std::vector<Thing> things;
    for (const auto& cylinder : findings()->cylinders)
        for (auto& thing : oddsOf(cylinder))
            things.push_back(std::move(thing));
    return section(tr("Where it leaks"), {}, things);
}

void SecondOpinionModel::listFound() {
    found_.clear();
    for (const auto& one : findings()->contradictions)
        found_.emplace(0, one.message.code);
    for (const auto& cylinder : findings()->cylinders) {
        for (const auto& one : cylinder.contradictions)
            found_.emplace(cylinder.number, one.message.code);
        for (const auto& thing : oddsOf(cylinder))
            found_.emplace(cylinder.number, thing.tie.finding);
    }
}

// ---- What the mentor adds

void SecondOpinionModel::keepNote(const QVariantMap& from, bool speak) {
    Note note;
    const auto id = NoteId::parse(from["id"].toString().toStdString());
    if (id)
        if (const auto old = app()->desk().record(RecordKind::note, id->uuid)) note = std::get<Note>(*old);
    if (note.id.is_nil()) {
        note.id = app()->desk().make_id<NoteId>();
        note.session = session().id;
        note.author = app()->settings()->author().toStdString();
        note.tie.to = from_word<TiedTo>(from["to"].toString().toStdString()).value_or(TiedTo::session);
        note.tie.record = Uuid::parse(from["record"].toString().toStdString());
        if (const int cylinder = from["cylinder"].toInt(); cylinder > 0) note.tie.cylinder = cylinder;
        note.tie.finding = from["finding"].toString().toStdString();
    }
    note.kind = from_word<NoteKind>(from["kind"].toString().toStdString()).value_or(NoteKind::note);
    note.text = from["text"].toString().trimmed().toStdString();
    ask_for(note, from["test"].toString());
    note.cause = note.kind == NoteKind::other_cause ? from_word<Cause>(from["cause"].toString().toStdString())
                                                    : std::nullopt;
    if (note.kind != NoteKind::test_request) note.done = false;
    app()->run(workflow::save_note(note), this,
               [this, id = note.id, speak](const Result<workflow::Step>& done) {
                   if (done) emit noteKept(QString::fromStdString(id.text()), speak);
               });
}

void SecondOpinionModel::removeNote(const QString& text) {
    if (const auto id = NoteId::parse(text.toStdString())) app()->run(workflow::remove_note(*id), this);
}

}  // namespace lapwing
