// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>
#include <vector>

#include "core/findings/findings.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// Lines of figures, each of which a touch asks where it comes from.
class ExplainedLines {
public:
    void clear() { from_.clear(); }
    /// {mark, symbol, figure, text, from}; `from` is an index for derivation(), -1 where there is none.
    QVariantMap line(const QString& mark, const QString& figure, const QString& text,
                     std::vector<findings::Derivation> from);
    QVariantMap remark(const findings::Remark& remark, const QString& symbol,
                       const format::Formatter& format);

    /// As the "Where does this come from" sheet wants it.
    [[nodiscard]] QVariantList derivation(int from, const format::Formatter& format) const;

private:
    std::vector<std::vector<findings::Derivation>> from_;
};

}  // namespace lapwing
