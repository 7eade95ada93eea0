// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/changes_model.h"

#include <algorithm>
#include <utility>

#include "core/compare/words.h"
#include "core/report/changes.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/change_lines.h"
#include "qml/viewmodels/derivation_item.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/session_name.h"

namespace lapwing {
namespace {

QString id_text(const SessionId& id) {
    return QString::fromStdString(id.text());
}

/// A test of one cylinder was done in two states: before and after the clearance was adjusted. After work on
/// one cylinder its readings are tagged so and the others' are not, and all are one state of the engine.
bool done_in_two_states(const Visit& visit) {
    return std::ranges::any_of(visit.readings, [&](const Reading& one) {
        return std::ranges::any_of(visit.readings, [&](const Reading& other) {
            return other.test == one.test && other.cylinder == one.cylinder && other.tag != one.tag;
        });
    });
}

/// The states that a visit's readings speak of, in the order in which they came.
std::vector<Tag> tags_of(const Visit& visit) {
    std::vector<Tag> out;
    for (const Reading& reading : visit.readings)
        if (std::ranges::find(out, reading.tag) == out.end()) out.push_back(reading.tag);
    return out;
}

}  // namespace

void ChangesModel::setBeforeId(const QString& id) {
    if (before_ == id) return;
    before_ = id;
    if (begun()) think();
}

void ChangesModel::setAfterId(const QString& id) {
    if (after_ == id) return;
    after_ = id;
    if (begun()) think();
}

std::vector<ChangesModel::Choice> ChangesModel::choices_of(const Dossier& dossier) {
    std::vector<Choice> out;
    for (const Visit& visit : dossier.visits) {
        if (visit.readings.empty()) continue;
        const QString id = id_text(visit.session.id);
        if (!done_in_two_states(visit)) {
            out.push_back({id, visit.session, {}, visit.readings});
            continue;
        }
        for (const Tag tag : tags_of(visit))
            out.push_back(
                {id + u'/' + QString::fromUtf8(word(tag).data()), visit.session, tag, visit.readings});
    }
    return out;
}

ChangesModel::Found ChangesModel::look(const Result<Dossier>& dossier, const QString& before,
                                       const QString& after, const findings::Reference& reference) {
    Found out;
    if (!dossier) return out;
    out.engine = dossier->engine;
    out.choices = choices_of(*dossier);
    if (out.choices.size() < 2) return out;
    // A bare session's id means the state in which it was left.
    const auto place = [&](const QString& wanted) {
        std::optional<std::size_t> found;
        for (std::size_t i = 0; i < out.choices.size(); ++i)
            if (out.choices[i].value == wanted || id_text(out.choices[i].session.id) == wanted) found = i;
        for (std::size_t i = 0; i < out.choices.size(); ++i)
            if (out.choices[i].value == wanted) found = i;
        return found;
    };
    std::size_t later = place(after).value_or(out.choices.size() - 1);
    // What stands just before the later one, not before the newest.
    std::size_t earlier = place(before).value_or(later > 0 ? later - 1 : out.choices.size() - 1);
    // In the order of time, whichever was chosen first; nothing is held against itself.
    if (earlier > later) std::swap(earlier, later);
    if (earlier == later) (earlier > 0 ? earlier : later) = earlier > 0 ? earlier - 1 : 1;
    out.before = out.choices[earlier].value;
    out.after = out.choices[later].value;
    const auto side = [&](const Choice& choice) {
        return compare::Side{
            &*std::ranges::find_if(dossier->visits,
                                   [&](const Visit& visit) { return visit.session.id == choice.session.id; }),
            choice.tag};
    };
    const compare::Side then = side(out.choices[earlier]);
    const compare::Side now = side(out.choices[later]);
    out.changes = compare::compare(*dossier, then, now, reference);
    out.proofs = compare::proofs_between(compare::proofs_of(*dossier, reference), *then.visit, *now.visit);
    out.then = findings::find(*dossier, *then.visit, reference, {then.tag, nullptr, false});
    out.now = findings::find(*dossier, *now.visit, reference, {now.tag, nullptr, false});
    return out;
}

void ChangesModel::think() {
    ask<Found>([before = before_, after = after_, &reference = app()->reference()](
                   const Result<Dossier>& dossier) { return look(dossier, before, after, reference); },
               [this](Found found) {
                   found_ = std::move(found);
                   before_ = found_.before;
                   after_ = found_.after;
               });
}

QString ChangesModel::nothing() const {
    if (!ready() || found_.choices.size() > 1) return {};
    return tr("Readings of two visits are needed to compare. Test again after the work.");
}

QVariantList ChangesModel::choices() const {
    QVariantList out;
    for (auto choice = found_.choices.rbegin(); choice != found_.choices.rend(); ++choice)
        out << QVariantMap{
            {"value", choice->value},
            {"text", text_of(choice->value)},
            {"detail", choice->session.usage ? format().typed(*choice->session.usage) : QString()}};
    return out;
}

/// One name a session, however many states of it can be chosen.
void ChangesModel::name_choices() {
    std::vector<Session> all;
    for (const Choice& choice : found_.choices)
        all.push_back(choice.session);
    QHash<QString, QString> sessions;
    names_.clear();
    for (const Choice& choice : found_.choices) {
        QString& visit = sessions[id_text(choice.session.id)];
        if (visit.isEmpty())
            visit = session_name(Visit{choice.session, choice.readings, {}, {}, {}, {}, {}}, all, format())
                        .line();
        names_[choice.value] =
            choice.tag ? visit + QStringLiteral(" · ") + format().name(*choice.tag) : visit;
    }
}

QVariantMap ChangesModel::test_item(const compare::Change& change, TestKind test, std::size_t row) {
    const auto bores = report::bores_of(found_.engine, found_.changes, test, found_.then, found_.now);
    const auto side = [&](const report::Bore& bore, bool waits) {
        auto map = bore_map(bore);
        if (waits && map["measured"].toBool()) map["state"] = not_judged_yet;
        return map;
    };
    const bool waits = before_waits_ || after_waits_;
    QVariantMap out{{"test", QString::fromUtf8(word(test).data())},
                    {"title", format().heading(test)},
                    {"before", side(bores.before.bores[row], before_waits_)},
                    {"after", side(bores.after.bores[row], after_waits_)},
                    {"beforeText", measure_text(change.before, format())},
                    {"afterText", measure_text(change.after, format())},
                    {"verdict", waits ? QStringLiteral("none") : verdict_key(change)},
                    {"word", waits ? tr("after your own call") : verdict_text(change, format())},
                    {"difference", QString()},
                    {"from", -1}};
    if (change.difference) {
        out["difference"] = signed_text(change.difference->figure, format());
        out["from"] = static_cast<int>(derivations_.size());
        derivations_.push_back(change.difference->from);
    }
    return out;
}

/// None before the person's own call: what came of a prediction is a verdict too.
QVariantList ChangesModel::proofs_for(int cylinder) const {
    QVariantList out;
    if (before_waits_ || after_waits_) return out;
    for (const compare::Proof& proof : found_.proofs)
        if (proof.cylinder == cylinder) out << proof_line(proof, format());
    return out;
}

/// No verdict on a visit before the person's own call on it.
bool ChangesModel::waits(const QString& side) const {
    const auto id = SessionId::parse(session_of(side).toStdString());
    const auto visit = id && app()->settings()->callFirst() ? app()->desk().visit(*id) : std::nullopt;
    return visit && call_wanted(*app(), *visit);
}

void ChangesModel::show() {
    before_waits_ = waits(before_);
    after_waits_ = waits(after_);
    derivations_.clear();
    name_choices();
    reasons_ = reason_lines(found_.changes.reasons, found_.engine, format());
    cylinders_.clear();
    for (std::size_t i = 0; i < found_.changes.cylinders.size(); ++i) {
        const auto& cylinder = found_.changes.cylinders[i];
        QVariantList tests;
        for (const TestKind test : compare::compared_tests)
            if (const auto* change = cylinder.of(test)) tests << test_item(*change, test, i);
        const Cylinder* card = find_cylinder(found_.engine, cylinder.number);
        cylinders_ << QVariantMap{{"number", cylinder.number},
                                  {"name", card ? QString::fromStdString(card->name) : QString()},
                                  {"tests", tests},
                                  {"proofs", proofs_for(cylinder.number)}};
    }
}

QVariantList ChangesModel::derivation(int from) const {
    if (from < 0 || from >= static_cast<int>(derivations_.size())) return {};
    return derivation_items({derivations_[static_cast<std::size_t>(from)]}, format());
}

}  // namespace lapwing
