// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A person's own calls beside what the findings say of the same cylinder.
#include <algorithm>
#include <map>

#include "qml/viewmodels/findings_model.h"
#include "qml/viewmodels/odds_lines.h"

namespace lapwing {
namespace {

using findings::Path;

/// Whether a call names that outcome (a path, or none of them); absent where the two don't compare.
std::optional<bool> names(Cause cause, std::optional<Path> outcome) {
    switch (cause) {
        case Cause::rings:
            return outcome == Path::rings;
        case Cause::intake:
            return outcome == Path::intake;
        case Cause::exhaust:
            return outcome == Path::exhaust;
        case Cause::head_gasket:
            return outcome == Path::gasket;
        case Cause::next_cylinder:
            return outcome == Path::next_cylinder;
        case Cause::coolant:
            return outcome == Path::coolant;
        case Cause::decompressor:
            return outcome == Path::decompressor;
        case Cause::seals_well:
            return !outcome;
        case Cause::crankcase:
        case Cause::tester_or_method:
            break;
    }
    return std::nullopt;
}

QVariantMap call_item(const Note& note, const QString& text, const format::Formatter& format) {
    QStringList detail;
    if (!note.text.empty()) detail << QString::fromStdString(note.text);
    if (!note.author.empty()) detail << QString::fromStdString(note.author);
    detail << format.shortDateTime(note.at);
    return {{"text", text}, {"detail", detail.join(QStringLiteral(" · "))}};
}

}  // namespace

QVariantList FindingsModel::calls() const {
    struct Called {
        QVariantList items;
        std::vector<Cause> causes;
    };
    std::map<int, Called> by_cylinder;
    QVariantList others;
    if (!found()) return {};
    for (const Note& note : visit().notes) {
        if (!note.cause || (note.kind != NoteKind::my_call && note.kind != NoteKind::other_cause)) continue;
        const QString what = format().name(*note.cause);
        if (note.kind == NoteKind::my_call && note.tie.cylinder) {
            auto& called = by_cylinder[*note.tie.cylinder];
            called.items << call_item(note, format().headed(what), format());
            called.causes.push_back(*note.cause);
        } else {
            QString text = note.tie.cylinder ? tr("Cylinder %1: %2").arg(*note.tie.cylinder).arg(what) : what;
            if (note.kind == NoteKind::other_cause) text = tr("Another cause: %1").arg(text);
            others << call_item(note, text, format());
        }
    }
    if (by_cylinder.empty()) return {};
    QVariantList list;
    for (const auto& [number, called] : by_cylinder) {
        QVariantMap item{{"number", number}, {"calls", called.items}};
        const auto* cylinder = ready() ? findings()->cylinder(number) : nullptr;
        const auto* odds = leaks(number);
        // A question that comes first, or ears that are still wanted, name no outcome.
        const auto said = odds && ready() ? said_of(*findings(), *odds, reference()) : findings::Message();
        const bool verdict =
            said.code == "odds.main" || said.code == "odds.main_clearance" || said.code == "odds.seals";
        if (cylinder) item["finding"] = format().text(odds ? said : cylinder->headline);
        // Only where the findings come down on one outcome.
        const bool named = odds && verdict && odds->main_chance >= reference().assumed("named-from");
        const auto outcome = named ? odds->main : std::nullopt;
        std::optional<bool> same;
        for (const Cause cause : called.causes)
            if (const auto one = named ? names(cause, outcome) : std::nullopt)
                same = same.value_or(false) || *one;
        if (same) item["same"] = *same;
        list << item;
    }
    if (!others.isEmpty()) list << QVariantMap{{"number", 0}, {"calls", others}};
    return list;
}

}  // namespace lapwing
