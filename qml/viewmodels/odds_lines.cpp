// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/odds_lines.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/left_open.h"
#include "core/odds/derivations.h"
#include "core/odds/verdict.h"
#include "qml/format/odds_text.h"
#include "qml/viewmodels/step_place.h"

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(Odds)
};

/// A chance below this rounds to nothing, or to the 5 % that is never gone below.
constexpr double nothing = 0.025;
constexpr double least = 0.075;

QVariantMap share_map(const odds::PathOdds& path, const format::Formatter& format) {
    const QString name = format.headed(format.text(odds::name_of(path.path)));
    // A per cent sign must not stand alone on the next line.
    const QString figure =
        format::share_line(path.share, format).replace(QStringLiteral(" %"), QChar(QChar::Nbsp) + u'%');
    QStringList chances;
    if (path.main >= nothing)
        chances << Texts::tr("main leak: odds %1").arg(format::chance_text(path.main, format));
    if (path.fault >= least)
        chances << Texts::tr("at fault: odds %1").arg(format::chance_text(path.fault, format));
    const odds::Interval interval = odds::shown_interval(path.share);
    const auto word_of_path = word(path.path);
    return {{"path", QString::fromUtf8(word_of_path.data(), qsizetype(word_of_path.size()))},
            {"name", name},
            {"label", name + u' ' + format::share_text(path.share.mean, format)},
            {"share", path.share.mean},
            {"sure", odds::drawn_share(path.share)},
            {"mean", path.share.mean},
            {"low", interval.lo},
            {"high", interval.hi},
            {"figure", figure},
            {"detail", format.headed(chances.join(QStringLiteral(", ")))},
            {"text", name + u' ' + figure}};
}

QVariantMap repair_map(const odds::AfterRepair& after, const format::Formatter& format) {
    const QString part = format.text(findings::word_of(after.repair));
    return {
        {"figure", format::reading_text(after, format)},
        {"text", after.comparable_at_once
                     ? Texts::tr("dry test to expect after work on %1, in nine cases of ten").arg(part)
                     : Texts::tr("dry test to expect after work on %1, in nine cases of ten; not comparable "
                                 "before it has run in")
                           .arg(part)}};
}

}  // namespace

QVariantMap odds_map(const findings::CylinderFindings& rules, const odds::WhereItLeaks& leaks,
                     const odds::CylinderOdds& odds, const findings::Reference& reference,
                     const format::Formatter& format) {
    const findings::Message headline = odds::headline_of(odds, reference);
    QVariantList shares, repairs;
    QStringList reasons;
    QString others;
    if (odds::has_verdict(odds)) {
        std::vector<const odds::AfterRepair*> told;
        for (const auto* path : odds::by_share(odds)) {
            shares << share_map(*path, format);
            const auto* after = odds::expected_after(odds, *path, reference);
            if (!after || std::find(told.begin(), told.end(), after) != told.end()) continue;
            told.push_back(after);
            repairs << repair_map(*after, format);
        }
        if (odds.seals_well >= nothing)
            others = Texts::tr("Seals well: odds %1").arg(format::chance_text(odds.seals_well, format));
    }
    for (const findings::Message& message : odds::said_beside(odds, reference)) {
        // It stands with the reading to expect.
        if (message.code == "odds.fresh_hone" && !repairs.isEmpty()) continue;
        reasons << format.text(message);
    }
    const auto why = odds::beside_rules(rules, odds);
    return {{"headline", format.text(headline)},
            {"verdict", odds::has_verdict(odds)},
            {"shares", shares},
            {"others", others},
            {"means", others.isEmpty() || !leaks.seals_means ? QString() : format.text(*leaks.seals_means)},
            {"repairs", repairs},
            {"reasons", reasons},
            {"besideRules", why ? format.text(*why) : QString()}};
}

std::vector<findings::Derivation> odds_derivations(const findings::CylinderFindings& rules,
                                                   const odds::CylinderOdds& odds,
                                                   const findings::Reference& reference,
                                                   int assumptions_version) {
    std::vector<findings::Derivation> out{odds::shares_from(rules, assumptions_version)};
    if (!odds::has_verdict(odds)) return out;
    std::vector<const odds::AfterRepair*> told;
    for (const auto* path : odds::by_share(odds)) {
        const auto* after = odds::expected_after(odds, *path, reference);
        if (!after || std::find(told.begin(), told.end(), after) != told.end()) continue;
        told.push_back(after);
        out.push_back(odds::after_repair_from(odds.number, *after));
    }
    return out;
}

QVariantList tests_to_settle(const odds::WhereItLeaks& leaks, const std::vector<findings::NextStep>& steps,
                             const findings::Reference& reference, const format::Formatter& format,
                             const QString& session_id) {
    constexpr qsizetype most = 4;
    QVariantList list;
    for (const odds::NextTest& test : odds::settling_tests(leaks, reference)) {
        const auto worth = odds::worth_of(test, reference);
        const bool listed = std::any_of(steps.begin(), steps.end(), [&](const findings::NextStep& step) {
            return step.action == test.test && (!step.cylinder || step.cylinder == test.cylinder);
        });
        if (!worth || list.size() == most) break;
        if (listed) continue;
        const StepPlace place = place_of(test.test, test.cylinder, session_id);
        list << QVariantMap{{"title", step_title(test.test, test.cylinder, format)},
                            {"text", format.text(*worth)},
                            {"page", place.page},
                            {"args", place.args}};
    }
    return list;
}

findings::Message said_of(const findings::Findings& rules, const odds::CylinderOdds& odds,
                          const findings::Reference& reference) {
    findings::Message said = odds::headline_of(odds, reference);
    const auto open = findings::faults_left_open(rules);
    const bool stands = std::ranges::find(open, odds.number) != open.end();
    return said.code == "odds.seals" && stands ? findings::say("cylinder.earlier_fault", odds.number) : said;
}

}  // namespace lapwing
