// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/changes_text.h"

#include "core/compare/words.h"

namespace lapwing::cli {
namespace {

std::string text_of(const std::optional<compare::Measure>& of, const format::Formatter& format) {
    if (!of) return "not measured";
    std::string out = format.valueText(of->compared).toStdString();
    if (of->converted) out += fmt::format(" (measured {})", format.valueText(of->as_measured).toStdString());
    return out;
}

}  // namespace

std::string text_of(const compare::Change& change, const format::Formatter& format) {
    std::string out = text_of(change.before, format) + " -> " + text_of(change.after, format);
    if (!change.difference) return out;
    const findings::Figure& difference = change.difference->figure;
    return fmt::format(
        "{}: {}{}, {}{}", out, difference.si > 0.0 ? "+" : "", format.text(difference).toStdString(),
        format.name(change.verdict).toStdString(),
        change.verdict == compare::Verdict::worse && change.beyond_doubt ? " beyond doubt" : "");
}

std::string text_of(const compare::Reason& reason, const Engine& engine, const format::Formatter& format) {
    std::string out = format.text(reason.message).toStdString();
    if (reason.cylinders.size() < engine.cylinders.size())
        out = format.text(findings::Arg(reason.cylinders)).toStdString() + ": " + out;
    return out;
}

}  // namespace lapwing::cli
