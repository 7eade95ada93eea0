// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>

#include "core/model/visit.h"

namespace lapwing::exchange {

/// All readings of a dossier as a table: RFC 4180, UTF-8, CRLF, one header line. Every quantity has three
/// columns: the digits as typed, the unit as typed, and the value in SI with the SI unit in the column's name
/// (final_typed, final_unit, final_pa). Readings that were redone stay in, marked in `replaced`.
///
/// A text that a spreadsheet would take for a formula (it begins with = + - @, tab or carriage return) gets
/// an apostrophe in front; session.json keeps it as it is.
std::string readings_csv(const Dossier& dossier);

}  // namespace lapwing::exchange
