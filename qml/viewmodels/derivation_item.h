// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantMap>

#include "core/findings/derivation.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// One derivation as the "Where does this come from" sheet wants it: {title, words, formula, inputs, doubts,
/// doubtsTitle, source}; inputs and doubts are lists of {name, value}, of a range the doubts are its parts.
QVariantMap derivation_item(const findings::Derivation& derivation, const format::Formatter& format);

/// A list of them.
QVariantList derivation_items(const std::vector<findings::Derivation>& derivations,
                              const format::Formatter& format);

}  // namespace lapwing
