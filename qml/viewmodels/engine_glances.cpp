// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_glances.h"

#include <map>

#include "qml/viewmodels/bores.h"

namespace lapwing {
namespace {

using findings::State;

constexpr int most_bores = 6;  // more of them are no longer told apart on a card

// A glyph leaves out marks that it isn't given.
QVariantMap without_missing(QVariantMap bore) {
    for (const auto& mark : {QStringLiteral("limit"), QStringLiteral("low"), QStringLiteral("high")})
        if (bore.value(mark).toDouble() < 0.0) bore.remove(mark);
    return bore;
}

QString count_line(const findings::Findings& found, const std::vector<int>& numbers) {
    std::map<State, int> counts;
    int without_limit = 0;
    for (const int number : numbers) {
        const auto* cylinder = found.cylinder(number);
        const State state = state_of(cylinder, std::nullopt);
        const bool measured = cylinder && (cylinder->dry || cylinder->leak_down || cylinder->wet);
        if (state == State::none && measured)
            ++without_limit;
        else
            ++counts[state];
    }
    QStringList parts;
    const auto say = [&](State state, const QString& text) {
        if (counts[state] > 0) parts << text.arg(counts[state]);
    };
    say(State::good, EngineGlances::tr("%1 in range"));
    say(State::borderline, EngineGlances::tr("%1 borderline"));
    say(State::fault, EngineGlances::tr("%1 fault"));
    if (without_limit > 0) parts << EngineGlances::tr("%1 without a limit").arg(without_limit);
    say(State::none, EngineGlances::tr("%1 not measured"));
    return parts.join(QStringLiteral(", "));
}

/// The newest visits in which something was measured, newest first, two at most: an empty session doesn't
/// make an engine's fault forgotten.
std::vector<Visit> measured_visits(const workflow::Desk& desk, EngineId engine) {
    std::vector<Visit> visits;
    for (const auto& session : desk.sessions(engine)) {
        auto visit = desk.visit(session.id);
        if (visit && !visit->readings.empty()) visits.push_back(std::move(*visit));
        if (visits.size() == 2) break;
    }
    return visits;
}

EngineGlance look(const workflow::Desk& desk, const findings::Reference& reference,
                  const workflow::EngineSummary& summary) {
    const auto engine = desk.engine(summary.id);
    const auto visits = engine ? measured_visits(desk, summary.id) : std::vector<Visit>();
    if (visits.empty()) return EngineGlance::blank(summary.cylinders);
    EngineGlance glance;
    glance.session = visits.front().session.id;
    const Dossier dossier{*engine, desk.testers(), {}, {}};
    findings::FindingsOptions options;
    options.beside = false;
    const auto found = findings::find(dossier, visits.front(), reference, options);
    glance.state = found.state == State::none ? measured_only : state_key(found.state);
    if (visits.size() > 1)
        glance.before = state_key(findings::find(dossier, visits.back(), reference, options).state);
    const auto numbers = numbers_in_order(*engine);
    if (summary.cylinders > most_bores) {
        glance.line = count_line(found, numbers);
        return glance;
    }
    const auto test = telling_test(found);
    for (const int number : numbers) {
        QVariantMap one = without_missing(bore(found, test, number));
        if (const State state = state_of(found.cylinder(number), std::nullopt); state != State::none)
            one[QStringLiteral("state")] = state_key(state);
        glance.bores << one;
    }
    return glance;
}

}  // namespace

EngineGlance EngineGlance::blank(int cylinders) {
    EngineGlance glance;
    if (cylinders > most_bores) {
        glance.line = EngineGlances::tr("%n cylinders", nullptr, static_cast<int>(cylinders));
        return glance;
    }
    for (int i = 0; i < cylinders; ++i)
        glance.bores << QVariantMap{{QStringLiteral("measured"), false}};
    return glance;
}

EngineGlances::EngineGlances(const workflow::Desk& desk, const findings::Reference& reference,
                             QObject* parent)
    : QObject(parent), desk_(desk), reference_(reference) {
    pool_.setMaxThreadCount(1);
}

EngineGlances::~EngineGlances() {
    pool_.clear();
    pool_.waitForDone();
}

EngineGlance EngineGlances::of(const workflow::EngineSummary& summary) {
    const QString id = QString::fromStdString(summary.id.text());
    if (const auto known = known_.constFind(id); known != known_.constEnd()) return *known;
    if (summary.last_session && !asked_.contains(id)) ask(summary, id);
    return EngineGlance::blank(summary.cylinders);
}

void EngineGlances::ask(const workflow::EngineSummary& summary, const QString& id) {
    asked_.insert(id, changes_);
    // The pool is waited for before this object goes, so the worker may point at it.
    pool_.start([this, summary, id, asked_at = changes_] {
        EngineGlance found = look(desk_, reference_, summary);
        QMetaObject::invokeMethod(
            this,
            [this, id, asked_at, found = std::move(found)] {
                if (asked_.value(id, -1) != asked_at) return;  // asked for again since
                known_.insert(id, found);
                emit ready(id);
            },
            Qt::QueuedConnection);
    });
}

void EngineGlances::forget(const workflow::Change& change) {
    ++changes_;
    if (change.kinds.contains(RecordKind::tester)) {
        known_.clear();
        asked_.clear();
    }
    for (const auto& engine : change.engines) {
        known_.remove(QString::fromStdString(engine.text()));
        asked_.remove(QString::fromStdString(engine.text()));
    }
}

}  // namespace lapwing
