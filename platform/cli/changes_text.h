// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>

#include "core/compare/compare.h"
#include "qml/format/formatter.h"

namespace lapwing::cli {

/// "9.1 bar, 10.0 bar: +0.9 bar ± 0.7, better". A converted reading shows what it was.
std::string text_of(const compare::Change& change, const format::Formatter& format);

/// The reason's sentence, with cylinders where it doesn't speak of all.
std::string text_of(const compare::Reason& reason, const Engine& engine, const format::Formatter& format);

}  // namespace lapwing::cli
