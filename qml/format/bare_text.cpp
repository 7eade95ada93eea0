// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/bare_text.h"

namespace lapwing::format {

QString bare_text(const findings::Message& message, const Formatter& format) {
    findings::Message bare = message;
    for (findings::Arg& arg : bare.args)
        if (const auto* figure = std::get_if<findings::Figure>(&arg))
            arg = format.valueText(*figure).toStdString();
    return format.text(bare);
}

}  // namespace lapwing::format
