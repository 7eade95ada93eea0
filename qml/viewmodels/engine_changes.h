// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/engine.h"
#include "qml/format/formatter.h"
#include "qml/viewmodels/form_model.h"

/// Changes of an engine card in which one entry touches several parts, and the texts that people type for
/// lists. Numbers given to cylinders are never changed by themselves.
namespace lapwing {

/// A new engine with `count` cylinders numbered from 1, laid out. Without an id.
Result<Engine> new_engine(const QString& name, int count, Arrangement arrangement);

/// Adds cylinders with the lowest free numbers, or takes the last ones away. A firing order that no longer
/// names every cylinder is dropped with its intervals. Fails outside 1 to 16.
Status set_count(Engine& engine, int count);
/// Splits the cylinders into two banks for V and flat engines, or into one, and lays them out anew.
void set_arrangement(Engine& engine, Arrangement arrangement);
/// Two-stroke cylinders have no valves; intervals that belong to the other cycle are dropped.
void set_cycle(Engine& engine, StrokeCycle cycle);
/// Another order drops intervals that don't belong to it.
void set_order(Engine& engine, std::vector<int> order);
/// "even", "270-450", or empty.
Status set_intervals(Engine& engine, const QString& text);
/// Gives the cylinder at `index` another number, in the firing order and the joined groups too.
Status renumber(Engine& engine, std::size_t index, int number);
/// Moves a cylinder to the end of another bank's row.
void set_bank(Engine& engine, std::size_t index, int bank);
/// The two cylinders change places on the layout picture, and banks with them.
void swap_places(Engine& engine, std::size_t a, std::size_t b);

QString numbers_text(const std::vector<int>& numbers);  ///< "1-5-3-6-2-4"
QString intervals_text(const Engine& engine, const format::Formatter& format);
QString groups_text(const std::vector<std::vector<int>>& groups);  ///< "1-2, 3-4"
Result<std::vector<std::vector<int>>> groups_from(const QString& text);
QString tags_text(const std::vector<std::string>& tags);
std::vector<std::string> tags_from(const QString& text);
/// "0.15-0.20", or one figure for both ends; empty for none.
Result<std::optional<Sourced<ClearanceRange>>> clearance_from(const FormEntry& entry,
                                                              Unit<LengthTag> otherwise);

}  // namespace lapwing
