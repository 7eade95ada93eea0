// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/explained_lines.h"

#include "qml/viewmodels/derivation_item.h"

namespace lapwing {

QVariantMap ExplainedLines::line(const QString& mark, const QString& figure, const QString& text,
                                 std::vector<findings::Derivation> from) {
    const int index = from.empty() ? -1 : static_cast<int>(from_.size());
    if (!from.empty()) from_.push_back(std::move(from));
    return {{"mark", mark}, {"symbol", QString()}, {"figure", figure}, {"text", text}, {"from", index}};
}

QVariantMap ExplainedLines::remark(const findings::Remark& remark, const QString& symbol,
                                   const format::Formatter& format) {
    auto map = line({}, {}, format.text(remark.message), remark.from);
    map["symbol"] = symbol;
    return map;
}

QVariantList ExplainedLines::derivation(int from, const format::Formatter& format) const {
    if (from < 0 || from >= static_cast<int>(from_.size())) return {};
    return derivation_items(from_[static_cast<std::size_t>(from)], format);
}

}  // namespace lapwing
