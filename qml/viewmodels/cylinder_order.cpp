// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/cylinder_order.h"

#include <algorithm>

namespace lapwing {

std::vector<int> order_of(const Engine& engine, TestKind test) {
    if (test == TestKind::crankcase) return crankcase_chambers(engine);
    if (test == TestKind::leak_down && engine.firing_order.size() == engine.cylinders.size())
        return engine.firing_order;
    return numbers_in_order(engine);
}

int index_of(const Engine& engine, int cylinder) {
    const auto at = std::ranges::find(engine.cylinders, cylinder, &Cylinder::number);
    return at == engine.cylinders.end() ? -1 : static_cast<int>(at - engine.cylinders.begin());
}

int next_without_reading(const Engine& engine, const Visit& visit, TestKind test, int here,
                         const std::function<bool(int)>& on_its_way) {
    auto order = order_of(engine, test);
    if (const auto at = std::ranges::find(order, here); at != order.end())
        std::rotate(order.begin(), at + 1, order.end());
    const auto next = std::ranges::find_if(order, [&](int number) {
        return number != here && !latest(visit.readings, test, number) && !(on_its_way && on_its_way(number));
    });
    return next == order.end() ? 0 : *next;
}

}  // namespace lapwing
