// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/report/report.h"
#include "qml/format/formatter.h"

namespace lapwing::print {

/// What a heading, column or line of a report is called.
QString text_of(report::Label label);

/// A report's pieces as text.
class Wording {
public:
    explicit Wording(const format::Formatter& formatter) : formatter_(formatter) {}

    [[nodiscard]] const format::Formatter& formatter() const { return formatter_; }
    [[nodiscard]] QString text(const report::Text& text) const;
    [[nodiscard]] QString text(const report::Line& line) const;
    [[nodiscard]] QString text(const report::Range& range) const;

private:
    const format::Formatter& formatter_;
};

}  // namespace lapwing::print
