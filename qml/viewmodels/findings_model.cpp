// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/findings_model.h"

#include <algorithm>

#include "core/findings/case.h"
#include "core/odds/verdict.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/odds_lines.h"
#include "qml/viewmodels/on_tester_text.h"

namespace lapwing {
namespace {

using findings::State;

QString range(findings::Figure low, findings::Figure high, const format::Formatter& format) {
    if (low.si > high.si) std::swap(low, high);
    const QString from = format.valueText(low), to = format.valueText(high);
    return from == to ? from : QObject::tr("%1 to %2").arg(from, to);
}

/// Of what was measured: without a state there is nothing to hold it against.
QString measured_key(State state) {
    return state == State::none ? measured_only : state_key(state);
}

/// A reading that was put right before a limit judged it: said even where all is well.
bool is_put_right(const findings::Remark& why) {
    const auto& code = why.message.code;
    return code.starts_with("why.put_right") || code.starts_with("why.lowered_");
}

/// Where the visit's page names the tester of the test that the remark is about.
QString line_of_tester(const findings::Remark& weak) {
    const auto* test =
        weak.message.args.empty() ? nullptr : std::get_if<findings::Word>(&weak.message.args[0]);
    if (test && *test == findings::word_of(TestKind::leak_down)) return QStringLiteral("leak_down");
    if (test && *test == findings::word_of(TestKind::crankcase)) return QStringLiteral("crankcase");
    return QStringLiteral("gauge");
}

}  // namespace

QString FindingsModel::headline() const {
    return ready() ? format().text(findings()->headline) : QString();
}

QString FindingsModel::state() const {
    return state_key(ready() ? findings()->state : State::none);
}

QVariantMap FindingsModel::line(const QString& mark, const QString& figure, const QString& text,
                                std::vector<findings::Derivation> from) {
    return explained_.line(mark, figure, text, std::move(from));
}

QVariantMap FindingsModel::remark(const findings::Remark& remark, const QString& symbol) {
    return explained_.remark(remark, symbol, format());
}

QVariantList FindingsModel::remarks(const std::vector<findings::Remark>& list, const QString& symbol) {
    QVariantList lines;
    for (const auto& item : list)
        lines << remark(item, symbol);
    return lines;
}

QVariantList FindingsModel::figuresOf(const findings::CylinderFindings& cylinder) {
    QVariantList lines;
    if (const auto& dry = cylinder.dry) {
        lines << line(measured_key(dry->state), format().text(dry->final.figure),
                      dry->repeats > 1 ? tr("dry test, mean of %1").arg(dry->repeats) : tr("dry test"),
                      {dry->final.from});
        if (dry->first_share)
            lines << line({}, format().text(dry->first_share->figure), tr("of it on the first puff"),
                          {dry->first_share->from});
        if (dry->expected)
            lines << line({}, range(dry->expected->low, dry->expected->high, format()),
                          tr("expected by the model, no factory figure"), {dry->expected->from});
        if (dry->without_hose)
            lines << line({}, format().text(dry->without_hose->figure),
                          tr("had nothing lain before the check valve"), {dry->without_hose->from});
        for (const auto& why : dry->why)
            if (dry->state != State::good || why.message.code == "why.above_expected" || is_put_right(why))
                lines << remark(why, {});
    }
    if (const auto& air = cylinder.leak_down) {
        lines << line(measured_key(air->state), format().text(air->leakage.figure),
                      tr("leakage: held %1 of %2")
                          .arg(format().valueText(air->held.figure), format().valueText(air->set.figure)),
                      {air->leakage.from});
        for (const auto& on : air->on_testers)
            lines << line({}, share_on(on, format()), name_of(on, format()),
                          {on.orifice.from, on.laminar.from});
        if (air->leak_hole)
            lines << line({}, format().text(air->leak_hole->figure), tr("round hole that would leak as much"),
                          {air->leak_hole->from});
        if (air->flow)
            lines << line({}, format().text(air->flow->figure), tr("of free air leaks out"),
                          {air->flow->from});
        for (const auto& why : air->why)
            if (why.message.code == "why.leak_other_set") lines << remark(why, {});
        if (air->law) lines << remark(*air->law, {});
        if (air->bands_say) lines << remark(*air->bands_say, {});
    }
    if (const auto& wet = cylinder.wet) {
        lines << line(measured_only, format().text(wet->reading.final.figure), tr("wet test"),
                      {wet->reading.final.from});
        if (wet->rise)
            lines << line({}, format().text(wet->rise->figure), tr("over the dry reading"),
                          {wet->rise->from});
        if (wet->volume_rise)
            lines << line({}, range(wet->volume_rise->low, wet->volume_rise->high, format()),
                          tr("of rise is explained by the oil's volume alone"), {wet->volume_rise->from});
    }
    return lines;
}

void FindingsModel::refresh() {
    if (!found() || !ready()) return;
    explained_.clear();
    cylinders_.clear();
    engine_lines_.clear();
    const QString question = QStringLiteral("question");
    for (const auto& cylinder : findings()->cylinders) {
        const auto* card = find_cylinder(engine(), cylinder.number);
        QStringList exits;
        for (const auto& heard : cylinder.exits)
            exits << tr("%1 %2").arg(
                heard.neighbour ? tr("plug hole of %1").arg(*heard.neighbour) : format().name(heard.exit),
                format().name(heard.loudness));
        QVariantList clearances = remarks(cylinder.clearances.remarks, question);
        const auto* odds = leaks(cylinder.number);
        QVariantMap leaks_at;
        if (odds) {
            leaks_at = odds_map(cylinder, *leaks(), *odds, reference(), format());
            if (const auto said = said_of(*findings(), *odds, reference());
                said.code == "cylinder.earlier_fault") {
                leaks_at["headline"] = format().text(said);
                leaks_at["others"] = leaks_at["means"] = QString();
            }
            leaks_at["from"] =
                line({}, {}, {},
                     odds_derivations(cylinder, *odds, reference(), leaks()->assumptions_version))["from"];
        }
        cylinders_ << QVariantMap{{"number", cylinder.number},
                                  {"name", card ? QString::fromStdString(card->name) : QString()},
                                  {"state", state_key(cylinder.state)},
                                  {"headline", format().text(cylinder.headline)},
                                  {"sinceRepair", sinceRepairOf(cylinder.number)},
                                  {"figures", figuresOf(cylinder)},
                                  {"exits", exits.join(QStringLiteral(", "))},
                                  {"rules", remarks(cylinder.rules_of_thumb, {})},
                                  {"questions", remarks(cylinder.questions, question) + clearances},
                                  {"contradictions", remarks(cylinder.contradictions, question)},
                                  {"odds", leaks_at}};
    }
    const auto& limits = findings()->limits;
    const bool scaled = limits_scaled(*findings());
    for (const auto& [limit, text] :
         {std::pair{&limits.low, scaled ? tr("lower end of the factory range here")
                                        : tr("lower end of the factory range")},
          std::pair{&limits.high, scaled ? tr("upper end of the factory range here")
                                         : tr("upper end of the factory range")},
          std::pair{&limits.lowest, scaled ? tr("factory limit here") : tr("factory limit")},
          std::pair{&limits.difference, tr("most allowed between cylinders")}})
        if (*limit) engine_lines_ << line({}, format().text((*limit)->figure), text, {(*limit)->from});
    if (!limits.basis.message.code.empty()) engine_lines_ << remark(limits.basis, {});
    engine_lines_ << remarks(findings()->expectation, {});
    for (const auto* rules : {&findings()->spread, &findings()->leak_spread})
        for (const auto& rule : *rules) {
            const State shown = rule.holds ? State::good : rule.gives;
            engine_lines_ << line(shown == State::none ? QString() : state_key(shown), {},
                                  format().text(rule.remark.message), rule.remark.from);
        }
    for (const auto& held : findings()->crankcases)
        engine_lines_ << line(measured_key(held.state), {}, format().text(held.remark.message),
                              held.remark.from);
    engine_lines_ << remarks(findings()->questions, question)
                  << remarks(findings()->contradictions, question);
    weakened_by_.clear();
    testers_missing_.clear();
    for (const auto& weak : findings()->weakened_by)
        if (weak.message.code == "weak.tester_unknown")
            testers_missing_ << QVariantMap{{"text", format().text(weak.message)},
                                            {"line", line_of_tester(weak)}};
        else
            weakened_by_ << remark(weak, {});
}

QVariantList FindingsModel::sinceRepairOf(int cylinder) {
    QVariantList lines;
    const auto it = std::ranges::find(since_repair_, cylinder, &compare::CylinderSince::cylinder);
    if (it == since_repair_.end()) return lines;
    lines << line(state_key(State::borderline), {}, format().text(it->since.message), {});
    for (const auto& evidence : it->since.evidence)
        lines << line({}, {}, format().text(evidence), {});
    return lines;
}

void FindingsModel::sessionRead() {
    OddsBacked::sessionRead();
    lookBack();
}

void FindingsModel::lookBack() {
    using Since = std::vector<compare::CylinderSince>;
    if (!historian_) historian_ = std::make_unique<workflow::Background>();
    // The historian ends before the page does: a posted event dies with it.
    historian_->ask<Since>(
        [&desk = app()->desk(), &reference = reference(), engine = engine().id,
         id = session().id](const std::stop_token&) -> Since {
            const auto dossier = desk.dossier(engine);
            if (!dossier) return {};
            const auto& visits = dossier->visits;
            const auto now =
                std::ranges::find_if(visits, [&](const Visit& visit) { return visit.session.id == id; });
            return now == visits.end() ? Since{} : compare::since_repair_at(*dossier, *now, reference);
        },
        [this](Since since) {
            QMetaObject::invokeMethod(
                this,
                [this, since = std::move(since)]() mutable {
                    since_repair_ = std::move(since);
                    refresh();
                    emit refreshed();
                },
                Qt::QueuedConnection);
        });
}

std::vector<findings::NextStep> FindingsModel::steps() const {
    return leaks() ? odds::steps_by_worth(*findings(), *leaks(), reference()) : findings()->next;
}

QVariantList FindingsModel::nextSteps() const {
    QVariantList list;
    if (!ready()) return list;
    for (const auto& step : steps()) {
        const StepPlace place = place_of(step, sessionId(), app()->desk());
        list << QVariantMap{{"title", step_title(step, format())},
                            {"text", format().text(step.reason)},
                            {"page", place.page},
                            {"args", place.args}};
    }
    return list;
}

QVariantList FindingsModel::settling() const {
    if (!ready() || !leaks()) return {};
    return tests_to_settle(*leaks(), steps(), reference(), format(), sessionId());
}

QStringList FindingsModel::oddsRestOn() const {
    QStringList list;
    if (!leaks()) return list;
    for (const auto& reason : leaks()->reasons)
        list << format().text(reason);
    list << tr("Working assumptions version %1.").arg(leaks()->assumptions_version);
    return list;
}

QString FindingsModel::nextText() const {
    if (!ready()) return format().heading(findings::Action::plan);
    const auto step = steps().front();
    return step_title(step, format());
}

StepPlace FindingsModel::nextPlace() const {
    if (!ready()) return place_of(findings::Action::plan, {}, sessionId());
    const auto step = steps().front();
    return place_of(step, sessionId(), app()->desk());
}

QVariantList FindingsModel::derivation(int from) const {
    return explained_.derivation(from, format());
}

}  // namespace lapwing
