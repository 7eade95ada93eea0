// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_glances.h"

#include <algorithm>
#include <map>
#include <set>

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

/// The cylinders by their state, by number; `earlier` of them as an earlier visit left them.
QString count_line(const std::map<int, State>& states, const std::set<int>& measured, int earlier) {
    std::map<State, int> counts;
    int without_limit = 0;
    for (const auto& [number, state] : states) {
        if (state == State::none && measured.contains(number))
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
    const QString line = parts.join(QStringLiteral(", "));
    return earlier > 0 ? EngineGlances::tr("%1; %2 of them from an earlier visit").arg(line).arg(earlier)
                       : line;
}

/// One visit in which something was measured, and what it says by itself.
struct Looked {
    Visit visit;
    findings::Findings found;
};

/// Newest first. Nobody looks further back than this for what was never measured again.
constexpr std::size_t most_visits = 8;

std::vector<Looked> looked_at(const workflow::Desk& desk, const findings::Reference& reference,
                              const Engine& engine) {
    std::vector<Looked> out;
    const Dossier dossier{engine, desk.testers(), {}, {}};
    findings::FindingsOptions options;
    options.beside = false;
    const auto whole = [](const findings::CylinderFindings& cylinder) { return !!cylinder.leak_down; };
    for (const auto& session : desk.sessions(engine.id)) {
        auto visit = desk.visit(session.id);
        if (!visit || visit->readings.empty()) continue;
        auto found = findings::find(dossier, *visit, reference, options);
        out.push_back({std::move(*visit), std::move(found)});
        // Air on every cylinder: nothing older says more.
        if (out.size() == most_visits || std::ranges::all_of(out.back().found.cylinders, whole)) break;
    }
    return out;
}

/// What stands of one cylinder. A later leak-down says more than an earlier dry test; a later dry test takes
/// no leak back that air found.
void add_words(const std::vector<Looked>& visits, int number, std::vector<EngineGlance::Word>& words) {
    bool dry = false, air = false;
    for (const Looked& one : visits) {
        const auto* cylinder = one.found.cylinder(number);
        if (!cylinder || air) continue;
        const bool newest = &one == &visits.front();
        const auto say = [&](State state) { words.push_back({one.visit.session.id, number, state}); };
        if (cylinder->leak_down)
            say(dry ? cylinder->leak_down->state : cylinder->state);
        else if ((cylinder->dry && !dry) || newest)
            say(cylinder->state);
        dry = dry || cylinder->dry;
        air = air || cylinder->leak_down;
    }
}

/// What a chamber of the crankcase holds says nothing of how its cylinder seals: these belong to no cylinder.
/// The engine held as one and its chambers stand in for each other, the newer for the older.
void add_crankcase_words(const std::vector<Looked>& visits, std::vector<EngineGlance::Word>& words) {
    std::set<int> said;
    for (const Looked& one : visits) {
        std::set<int> here;
        for (const auto& held : one.found.crankcases) {
            const bool again = held.cylinder == 0 ? !said.empty() : said.contains(held.cylinder);
            if (again || said.contains(0)) continue;
            words.push_back({one.visit.session.id, 0, held.state});
            here.insert(held.cylinder);
        }
        said.merge(here);
    }
}

bool measured_in(const Looked& one, int number) {
    const auto* cylinder = one.found.cylinder(number);
    return cylinder && (cylinder->dry || cylinder->leak_down || cylinder->wet);
}

/// Sets state and earlier from the words, all but those of `hidden`. Of two that are as bad the newest one's
/// is shown.
void sum_up(EngineGlance& glance, const std::vector<SessionId>& hidden, const QString& nothing) {
    std::vector<EngineGlance::Word> said;
    for (const auto& word : glance.words)
        if (std::ranges::find(hidden, word.session) == hidden.end()) said.push_back(word);
    const auto newest = [&](const EngineGlance::Word& word) { return word.session == glance.session; };
    State worst = State::none;
    glance.earlier = false;
    for (const auto& word : said) {
        if (word.state < worst) continue;
        if (word.state == worst && !newest(word)) continue;
        worst = word.state;
        glance.earlier = !newest(word);
    }
    // What was not measured can't be in range.
    std::map<int, State> each;
    for (const auto& word : glance.words)
        each[word.cylinder] = findings::worse(each[word.cylinder], word.state);
    const bool gaps =
        std::ranges::any_of(each, [](const auto& one) { return one.first > 0 && one.second == State::none; });
    if (worst == State::good && gaps) worst = State::none;
    glance.state = worst == State::none ? nothing : state_key(worst);
    if (worst == State::none) glance.earlier = false;
}

EngineGlance look(const workflow::Desk& desk, const findings::Reference& reference,
                  const workflow::EngineSummary& summary) {
    const auto engine = desk.engine(summary.id);
    const auto visits = engine ? looked_at(desk, reference, *engine) : std::vector<Looked>();
    if (visits.empty()) return EngineGlance::blank(summary.cylinders);
    EngineGlance glance;
    const Looked& newest = visits.front();
    glance.session = newest.visit.session.id;
    for (const Looked& one : visits)
        glance.sessions.push_back(one.visit.session.id);
    const auto numbers = numbers_in_order(*engine);
    std::map<int, State> states;
    std::set<int> measured;
    int earlier = 0;
    for (const int number : numbers) {
        add_words(visits, number, glance.words);
        auto& state = states[number];
        for (const auto& word : glance.words)
            if (word.cylinder == number) state = findings::worse(state, word.state);
        const auto last =
            std::ranges::find_if(visits, [&](const Looked& one) { return measured_in(one, number); });
        if (last == visits.end()) continue;
        measured.insert(number);
        if (last != visits.begin()) ++earlier;
    }
    add_crankcase_words(visits, glance.words);
    sum_up(glance, {}, measured_only);
    if (summary.cylinders > most_bores) {
        glance.line = count_line(states, measured, earlier);
        return glance;
    }
    for (const int number : numbers) {
        const auto last =
            std::ranges::find_if(visits, [&](const Looked& one) { return measured_in(one, number); });
        const Looked& from = last == visits.end() ? newest : *last;
        // The dashed outline would say that nothing was measured where only air was not put on.
        const auto* cylinder = from.found.cylinder(number);
        const bool no_air = cylinder && cylinder->dry && !cylinder->leak_down;
        QVariantMap one =
            without_missing(bore(from.found, no_air ? TestKind::dry : telling_test(from.found), number));
        if (const State state = state_of(from.found.cylinder(number), std::nullopt); state != State::none)
            one[QStringLiteral("state")] = state_key(state);
        one[QStringLiteral("earlier")] = &from != &newest;
        one[QStringLiteral("session")] = QString::fromStdString(from.visit.session.id.text());
        glance.bores << one;
    }
    return glance;
}

}  // namespace

EngineGlance EngineGlance::without(const std::vector<SessionId>& hidden, const QString& key,
                                   int cylinders) const {
    EngineGlance glance = *this;
    for (auto& one : glance.bores) {
        auto bore = one.toMap();
        const bool is_hidden = std::ranges::any_of(hidden, [&](const SessionId& id) {
            return bore[QStringLiteral("session")] == QString::fromStdString(id.text());
        });
        if (is_hidden && bore["measured"].toBool()) bore["state"] = key;
        one = bore;
    }
    if (!glance.line.isEmpty()) glance.line = blank(cylinders).line;
    sum_up(glance, hidden, key);
    // In range is no news, and beside what waits for a call it would look like the verdict.
    if (glance.state == state_key(State::good)) {
        glance.state = key;
        glance.earlier = false;
    }
    return glance;
}

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
