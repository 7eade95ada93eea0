// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <vector>

#include "core/model/visit.h"

namespace lapwing {

/// Cylinders in the order that a test takes them: leak-down follows the crank from one compression TDC to the
/// next, cranking tests go by number, the crankcase is one place with the number 0 where it is not one a
/// cylinder.
std::vector<int> order_of(const Engine& engine, TestKind test);

/// Position of a cylinder on the engine card, -1 when it is not there.
int index_of(const Engine& engine, int cylinder);

/// The next cylinder after `here`, going round in the test's order, that has no reading of this test; 0 when
/// all have one. `on_its_way` tells of readings that are not committed yet.
int next_without_reading(const Engine& engine, const Visit& visit, TestKind test, int here,
                         const std::function<bool(int)>& on_its_way = {});

}  // namespace lapwing
