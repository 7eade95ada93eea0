// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/assumptions_model.h"

#include <algorithm>
#include <array>

#include "core/odds/verdict.h"

namespace lapwing {
namespace {

using findings::Path;

/// What a number's id begins with, by group; the first group that fits takes it.
struct Group {
    const char* heading;
    std::vector<std::string_view> beginnings;
};

const std::array groups_of_odds{
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "What counts as sealing well, and clearances"),
          {"seals-well", "clearance-", "area-bore"}},
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "Leak hunt"),
          {"listen", "hearing", "slip", "cross-talk", "companion-talk", "two-stroke-exhaust", "masking",
           "ear-", "hose-", "hand-", "soapy-water-", "bubbles-"}},
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "Wet test"), {"oil-"}},
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "Engine data and cranking"),
          {"ratio-", "bore-unknown", "stroke-unknown", "heat", "speed-", "level-doubt", "cylinder-doubt",
           "compare-only-doubt", "surface-error"}},
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "How readings scatter"),
          {"reading-scatter", "first-scatter", "day-scatter", "card-range-doubt", "earlier-visit-doubt",
           "static-to-cranking", "leak-repeat", "restrictor-doubt"}},
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "Readings not yet taken"),
          {"reading-usual", "held-usual", "step-usual"}},
    Group{QT_TRANSLATE_NOOP("lapwing::AssumptionsModel", "What does not fit together"), {"does-not-fit"}}};

constexpr std::array paths{Path::rings,         Path::intake,  Path::exhaust,     Path::gasket,
                           Path::next_cylinder, Path::coolant, Path::decompressor};

bool begins(const std::string& id, const std::vector<std::string_view>& beginnings) {
    return std::any_of(beginnings.begin(), beginnings.end(),
                       [&](std::string_view beginning) { return id.starts_with(beginning); });
}

/// The file's spelling of a unit as people write it; empty for a bare number.
QString shown_unit(const std::string& unit) {
    if (unit == "1") return {};
    static constexpr std::array spellings{std::pair{"degC", u"°C"}, std::pair{"deg", u"°"},
                                          std::pair{"cm3", u"cm³"}, std::pair{"m2", u"m²"},
                                          std::pair{"in2", u"in²"}};
    QString out = QString::fromStdString(unit);
    for (const auto& [file, people] : spellings)
        out.replace(QLatin1String(file), QString::fromUtf16(people));
    return out;
}

QVariantMap item(const findings::Assumption& number, const format::Formatter& format) {
    const QString unit = shown_unit(number.unit);
    QString figure = format.locale().toString(number.value, 'g', 6);
    if (!unit.isEmpty()) figure += unit.startsWith(u'°') && unit != QStringLiteral("°C") ? unit : u' ' + unit;
    QStringList source{format.headed(format.name(number.basis.kind))};
    if (!number.basis.source.empty())
        source.back() += QStringLiteral(": ") + QString::fromStdString(number.basis.source);
    if (!number.basis.comment.empty()) source << format.reference(number.basis.comment);
    return {{"text", format.reference(number.text)},
            {"figure", figure},
            {"source", source.join(QStringLiteral(". "))}};
}

QVariantMap group(const QString& heading, const QString& text, const QVariantList& items) {
    return {{"heading", heading}, {"text", text}, {"items", items}};
}

}  // namespace

void AssumptionsModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    connect(app_, &AppContext::formatChanged, this, &AssumptionsModel::refresh);
    emit appChanged();
    refresh();
}

void AssumptionsModel::refresh() {
    groups_.clear();
    const auto& format = app_->format();
    if (const auto odds = odds::built_in_assumptions()) {
        version_ = odds->version;
        std::vector<const findings::Assumption*> left;
        for (const auto& number : odds->numbers)
            left.push_back(&number);
        const auto take = [&](const QString& heading, const std::vector<std::string_view>& beginnings) {
            QVariantList items;
            std::erase_if(left, [&](const findings::Assumption* number) {
                if (!begins(number->id, beginnings)) return false;
                items << item(*number, format);
                return true;
            });
            if (!items.isEmpty()) groups_ << group(heading, tr("What the odds rest on"), items);
        };
        for (const Path path : paths) {
            const std::string beginning = std::string(word(path)) + '-';
            take(format.headed(format.text(odds::name_of(path))), {beginning});
        }
        for (const Group& of_odds : groups_of_odds)
            take(tr(of_odds.heading), of_odds.beginnings);
        take(tr("Others"), {""});
        QVariantList others;
        for (const auto& other : odds->others)
            others << QVariantMap{{"text", format.reference(other.text)},
                                  {"figure", format.locale().toString(others.size() + 1)},
                                  {"source", QString()}};
        groups_ << group(
            tr("Other sets"),
            tr("The odds are worked out under these as well: where they name another main leak, it "
               "is said that they depend on assumptions"),
            others);
    }
    QVariantList rest;
    for (const auto& number : app_->reference().assumptions)
        rest << item(number, format);
    groups_ << group(tr("Findings and calculators"), tr("Rules, gauges and the cranking model"), rest);
    emit refreshed();
}

}  // namespace lapwing
