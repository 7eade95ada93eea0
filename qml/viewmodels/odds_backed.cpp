// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/odds_backed.h"

#include <algorithm>

#include "qml/viewmodels/odds_evidence.h"

namespace lapwing {
namespace {

bool has_readings(const Visit& visit) {
    return !visit.readings.empty() || !visit.exits.empty();
}

/// The whole history counts: what the engine read when it was sound says what to expect of it.
Result<odds::WhereItLeaks> worked_out(const workflow::Desk& desk, const Dossier& evidence,
                                      const findings::Reference& reference,
                                      const odds::OddsOptions& options) {
    auto history = desk.dossier(evidence.engine.id);
    if (!history) return tl::unexpected(history.error());
    const auto& id = evidence.visits.front().session.id;
    const auto now = std::find_if(history->visits.begin(), history->visits.end(),
                                  [&](const Visit& visit) { return visit.session.id == id; });
    if (now == history->visits.end())
        return fail("session.gone", "This session is no longer in the library. Go back and choose again.");
    return odds::where_it_leaks(*history, *now, reference, options);
}

}  // namespace

QString OddsBacked::oddsState() const {
    if (!found() || !has_readings(visit())) return QStringLiteral("none");
    if (!odds_) return QStringLiteral("working");
    return *odds_ ? QStringLiteral("ready") : QStringLiteral("failed");
}

QString OddsBacked::oddsTrouble() const {
    return odds_ && !*odds_ ? format().text(odds_->error()) : QString();
}

const odds::WhereItLeaks* OddsBacked::leaks() const {
    return odds_ && *odds_ ? (**odds_).get() : nullptr;
}

const odds::CylinderOdds* OddsBacked::leaks(int cylinder) const {
    const auto* all = leaks();
    const auto* one = all ? all->cylinder(cylinder) : nullptr;
    return one && one->measured ? one : nullptr;
}

void OddsBacked::sessionRead() {
    Dossier now = evidence_in(dossier());
    if (asked_ > 0 && now == evidence_) return;
    evidence_ = std::move(now);
    odds_.reset();
    ++asked_;
    if (auto known = app()->odds().find(evidence_))
        odds_ = std::move(known);
    else if (has_readings(visit()))
        workOut();
    if (odds_ || !has_readings(visit()))
        if (thinker_) thinker_->cancel();
}

void OddsBacked::workOut() {
    if (!thinker_) thinker_ = std::make_unique<workflow::Background>();
    // The thinker ends before the page does, and the page before the context: a posted event dies with it.
    thinker_->ask<Result<odds::WhereItLeaks>>(
        [evidence = evidence_, &desk = app()->desk(), &reference = reference(),
         &surfaces = app()->odds().surfaces()](const std::stop_token& stop) {
            odds::OddsOptions options;
            options.cancel = stop;
            options.surfaces = &surfaces;
            return worked_out(desk, evidence, reference, options);
        },
        [this, asked = asked_](Result<odds::WhereItLeaks> result) {
            QMetaObject::invokeMethod(
                this,
                [this, asked, result = std::move(result)]() mutable { deliver(asked, std::move(result)); },
                Qt::QueuedConnection);
        });
}

void OddsBacked::deliver(int asked, Result<odds::WhereItLeaks> result) {
    if (asked != asked_) return;
    if (result) {
        auto leaks = std::make_shared<const odds::WhereItLeaks>(std::move(*result));
        app()->odds().keep(evidence_, leaks);
        odds_ = std::move(leaks);
    } else {
        odds_ = tl::unexpected(result.error());
    }
    refresh();
    emit refreshed();
}

}  // namespace lapwing
