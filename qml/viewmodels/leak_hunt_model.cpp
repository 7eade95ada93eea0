// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/leak_hunt_model.h"

#include <algorithm>

#include "core/findings/cautions.h"
#include "core/findings/firing.h"
#include "core/findings/touched.h"
#include "core/workflow/exits.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/cylinder_order.h"
#include "qml/viewmodels/derivation_item.h"
#include "qml/viewmodels/next_tdc_model.h"
#include "qml/viewmodels/tag_of.h"

namespace lapwing {
namespace {

QString key_of(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// The cylinders on either side of this one, as findings and odds reckon with them.
std::vector<int> beside(const Engine& engine, int number) {
    std::vector<int> found;
    for (const auto& [one, other] : findings::neighbours(engine))
        if (one == number || other == number) found.push_back(one == number ? other : one);
    return found;
}

/// Whether air in a neighbour's plug hole says anything while the air is on the other cylinder.
QString neighbour_hint(const findings::Neighbour& stands) {
    using enum findings::NeighbourValves;
    if (stands.valves == not_known) return LeakHuntModel::tr("Only counts while its valves are shut");
    if (stands.valves == shut) return LeakHuntModel::tr("Counts: its valves are shut now");
    if (stands.proves_joint())
        return LeakHuntModel::tr("Counts: a valve of it may be open, but the manifolds are separate");
    if (stands.valves == open && stands.by_intake && !stands.by_exhaust)
        return LeakHuntModel::tr("Its intake valve is open now: counts only where the intake is quiet");
    if (stands.valves == open && stands.by_exhaust && !stands.by_intake)
        return LeakHuntModel::tr("Its exhaust valve is open now: counts only where the exhaust is quiet");
    if (stands.valves == overlap)
        return LeakHuntModel::tr(
            "It stands on overlap, both valves a little open: counts only where intake and exhaust are "
            "quiet");
    return LeakHuntModel::tr("A valve of it may be open: counts only where intake and exhaust are quiet");
}

}  // namespace

int LeakHuntModel::cylinder() const {
    if (find_cylinder(engine(), cylinder_)) return cylinder_;
    if (const auto* reading = [&]() -> const Reading* {
            const Reading* last = nullptr;
            for (const auto& r : visit().readings)
                if (r.test == TestKind::leak_down) last = &r;
            return last;
        }())
        return reading->cylinder;
    return engine().cylinders.empty() ? 0 : engine().cylinders.front().number;
}

void LeakHuntModel::setCylinder(int number) {
    cylinder_ = number;
    staked_ = false;
    emit refreshed();
}

QVariantList LeakHuntModel::cylinders() const {
    QVariantList list;
    for (const auto& item : engine().cylinders) {
        // What was heard before a part was touched is to be heard again.
        const auto* found = findings() ? findings()->cylinder(item.number) : nullptr;
        const bool listened = found ? !found->exits.empty() : !standing(visit().exits, item.number).empty();
        list << QVariantMap{{"number", item.number},
                            {"name", QString::fromStdString(item.name)},
                            {"chosen", item.number == cylinder()},
                            {"listened", listened}};
    }
    return list;
}

const Reading* LeakHuntModel::airOn() const {
    return latest(visit().readings, TestKind::leak_down, cylinder());
}

/// Notes belong to the state of the valve that the air was on for.
Tag LeakHuntModel::tag() const {
    if (staked_) return Tag::after_staking;
    const Tag air = airOn() ? airOn()->tag : Tag::as_found;
    return air == Tag::as_found ? findings::tag_now(visit(), cylinder()) : air;
}

QString LeakHuntModel::tagWord() const {
    return key_of(word(tag()));
}

QString LeakHuntModel::heldLine() const {
    const auto* reading = airOn();
    if (!reading || !reading->held || !reading->set) return tr("No leak-down reading of this cylinder yet");
    QString figure = format().typed(*reading->held);
    // The unit once is enough.
    if (reading->held->unit() == reading->set->unit()) figure = figure.section(QLatin1Char(' '), 0, 0);
    QString held = reading->dial_loss ? format::shown_of_set(format(), *reading)
                                      : tr("held %1 of %2").arg(figure, format().typed(*reading->set));
    const auto* found = findings() ? findings()->cylinder(cylinder()) : nullptr;
    if (!found || !found->leak_down) return held;
    const auto* counts = leakDown();
    if (!counts) return tr("%1, not counted").arg(held);
    const QString leakage = format().text(counts->leakage.figure);
    const auto readings = counts->readings.size();
    return readings > 1 ? tr("%1, leakage %2, mean of %3").arg(held, leakage).arg(readings)
                        : tr("%1, leakage %2").arg(held, leakage);
}

const findings::LeakDown* LeakHuntModel::leakDown() const {
    const auto* found = findings() ? findings()->cylinder(cylinder()) : nullptr;
    if (!found || !found->leak_down || !airOn()) return nullptr;
    const auto& counted = found->leak_down->readings;
    // What the findings show may rest on others: a mean, or none of this reading.
    return std::ranges::find(counted, airOn()->id) != counted.end() ? &*found->leak_down : nullptr;
}

QVariantList LeakHuntModel::derivation() const {
    return explained() ? derivation_items({leakDown()->leakage.from}, format()) : QVariantList();
}

const ExitNote* LeakHuntModel::standingNote(Exit exit, std::optional<int> neighbour) const {
    const ExitNote* newest = nullptr;
    for (const auto* note : standing(visit().exits, cylinder()))
        if (note->exit == exit && note->neighbour == neighbour && is_of(tag(), note->tag)) newest = note;
    return newest;
}

/// The note that stood first: what hangs on it stays when another loudness replaces it.
ExitNoteId LeakHuntModel::firstOf(const ExitNote& note) const {
    ExitNoteId first = note.id;
    for (auto at = visit().exits.rbegin(); at != visit().exits.rend(); ++at)
        if (at->id == first && at->replaces) first = *at->replaces;
    return first;
}

int LeakHuntModel::attached(AttachmentKind kind, ExitNoteId note) const {
    return int(std::ranges::count_if(visit().attachments, [&](const Attachment& attachment) {
        return attachment.kind == kind && attachment.tie.to == TiedTo::exit_note &&
               attachment.tie.record == note.uuid;
    }));
}

QVariantList LeakHuntModel::exits() const {
    QVariantList list;
    const auto add = [&](Exit exit, const QString& hint, std::optional<int> neighbour = {}) {
        const auto* note = standingNote(exit, neighbour);
        QString name = format().heading(exit);
        if (neighbour) name = tr("Plug hole of cylinder %1").arg(*neighbour);
        list << QVariantMap{{"key", key_of(word(exit))},
                            {"neighbour", neighbour.value_or(0)},
                            {"name", name},
                            {"hint", hint},
                            {"loudness", note ? key_of(word(note->loudness)) : QString()},
                            {"by", note ? format().name(note->by) : QString()},
                            // What photos and voice notes hang on: the cylinder before there is a note.
                            {"record", note ? QString::fromStdString(firstOf(*note).text()) : QString()},
                            {"photos", note ? attached(AttachmentKind::photo, firstOf(*note)) : 0},
                            {"voices", note ? attached(AttachmentKind::voice, firstOf(*note)) : 0}};
    };
    if (engine().cycle == StrokeCycle::four) {
        // Many a diesel has no throttle at all.
        add(Exit::intake, engine().fuel == Fuel::diesel
                              ? tr("Throttle or flap open if there is one, hose at the intake")
                              : tr("Throttle open, hose at the intake"));
        add(Exit::exhaust, tr("Hose at the tail pipe"));
        add(Exit::breather, tr("Oil filler open, thin glove over it: rings always leak a little"));
    } else {
        add(Exit::exhaust, tr("Piston over the port: air past the rings comes out here"));
        add(Exit::intake, tr("Carburettor: air past the rings into the crankcase"));
    }
    add(Exit::joint, tr("Soapy water round the joint"));
    if (engine().cooling != Cooling::air)
        add(Exit::coolant, tr("Bubbles in the filler; never open a hot cap"));
    for (const int neighbour : beside(engine(), cylinder()))
        add(Exit::next_plug_hole,
            neighbour_hint(findings::neighbour_while_tested(engine(), reference(), cylinder(), neighbour)),
            neighbour);
    if (engine().decompressor == Decompressor::manual || engine().decompressor == Decompressor::automatic)
        add(Exit::decompressor, tr("At its outlet"));
    if (engine().cycle == StrokeCycle::two) {
        add(Exit::crank_seals, tr("Crankcase test: soapy water"));
        add(Exit::base_gasket, tr("Crankcase test: soapy water"));
        add(Exit::reed, tr("Crankcase test: at the carburettor"));
    }
    add(Exit::other, tr("Anywhere else: plug thread, crack, adapter ring"));
    return list;
}

QVariantList LeakHuntModel::loudnesses() const {
    QVariantList list;
    for (const auto loudness : {Loudness::nothing, Loudness::faint, Loudness::clear, Loudness::strong})
        list << QVariantMap{{"value", key_of(word(loudness))}, {"text", format().name(loudness)}};
    return list;
}

QVariantList LeakHuntModel::methods() const {
    QVariantList list;
    for (const auto by :
         {ListenedBy::ear, ListenedBy::hose, ListenedBy::soapy_water, ListenedBy::bubbles, ListenedBy::hand})
        list << QVariantMap{{"value", key_of(word(by))}, {"text", format().name(by)}};
    return list;
}

QString LeakHuntModel::method() const {
    return key_of(word(by_));
}

void LeakHuntModel::setMethod(const QString& text) {
    by_ = from_word<ListenedBy>(text.toStdString()).value_or(ListenedBy::ear);
    emit refreshed();
}

void LeakHuntModel::setStaked(bool staked) {
    staked_ = staked;
    emit refreshed();
}

void LeakHuntModel::note(const QString& exit, int neighbour, const QString& loudness) {
    const auto which = from_word<Exit>(exit.toStdString());
    const auto how = from_word<Loudness>(loudness.toStdString());
    if (!which || !how) return;
    const auto beside = neighbour > 0 ? std::optional(neighbour) : std::nullopt;
    if (const auto* before = standingNote(*which, beside);
        before && before->loudness == *how && before->by == by_) {
        app()->run(workflow::remove_exit(before->id), this);
        return;
    }
    ExitNote note;
    note.id = app()->desk().make_id<ExitNoteId>();
    note.session = session().id;
    note.cylinder = cylinder();
    note.exit = *which;
    note.neighbour = beside;
    note.loudness = *how;
    note.by = by_;
    note.tag = tag();
    if (const auto* reading = airOn()) note.reading = reading->id;
    app()->run(workflow::keep_exit(note), this);
}

QVariantList LeakHuntModel::questions() const {
    QVariantList list;
    const auto* found = findings() ? findings()->cylinder(cylinder()) : nullptr;
    if (!found) return list;
    for (const auto& question : found->questions) {
        const auto& code = question.message.code;
        QVariantMap item{{"text", format().text(question.message)}, {"page", ""}, {"action", ""}};
        if (code == "question.tdc" || code == "question.tdc_held") {
            item["page"] = QStringLiteral("NextTdc");
            item["action"] = tr("Next TDC");
        } else if (code == "question.clearance") {
            item["page"] = QStringLiteral("Clearances");
            item["action"] = tr("Clearances");
        }
        list << item;
    }
    return list;
}

int LeakHuntModel::nextCylinder() const {
    return next_without_reading(engine(), visit(), TestKind::leak_down, cylinder());
}

QString LeakHuntModel::doneText() const {
    const int next = nextCylinder();
    if (next == 0) return tr("Done");
    const auto turn = turn_between(engine(), cylinder(), next);
    return turn ? tr("Done, next %1 (turn %2°)").arg(next).arg(format().locale().toString(*turn, 'f', 0))
                : tr("Done, next %1").arg(next);
}

QStringList LeakHuntModel::cautions() const {
    QStringList texts;
    for (const auto* caution : findings::cautions_for(reference(), "exits", engine()))
        texts << format().reference(caution->text);
    return texts;
}

QStringList LeakHuntModel::stakingCautions() const {
    QStringList texts;
    for (const auto* caution : findings::cautions_for(reference(), "staking", engine()))
        texts << format().reference(caution->text);
    return texts;
}

}  // namespace lapwing
