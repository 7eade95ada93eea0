// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QVariantList>
#include <vector>

#include "core/findings/pad.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// What an entry means, line by line as the page shows it, most telling first.
class PadLines {
    Q_DECLARE_TR_FUNCTIONS(lapwing::PadLines)

public:
    PadLines() = default;
    /// Without `verdicts` nothing is said of whether it is good: figures, limits and questions only.
    PadLines(const findings::PadJudgement& judged, const format::Formatter& format, bool verdicts = true);

    /// Before all that is there. `asks` names what a touch on it asks: "unit", "photo", "oil", "repeat".
    void ask(const QString& question, const QString& asks = {});
    void tell(const QString& figure, const QString& text);  ///< before all that is there, too

    /// {mark, symbol, figure, text, asks}
    [[nodiscard]] const QVariantList& shown() const { return shown_; }
    /// How the figure of that line was made; empty for a line that has none.
    [[nodiscard]] QVariantList derivation(int line, const format::Formatter& format) const;

private:
    void add(const QString& mark, const QString& symbol, const QString& figure, const QString& text,
             std::vector<findings::Derivation> from);
    void prepend(const QString& symbol, const QString& figure, const QString& text, const QString& asks = {});
    void add_converted(const findings::OnTester& other, const format::Formatter& format);

    QVariantList shown_;
    std::vector<std::vector<findings::Derivation>> from_;
};

}  // namespace lapwing
