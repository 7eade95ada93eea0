// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/visit.h"

#include <algorithm>
#include <set>

namespace lapwing {
namespace {

template <class T, class Counts>
std::vector<const T*> not_replaced(const std::vector<T>& all, Counts counts) {
    std::set<decltype(T::id)> replaced;
    for (const auto& one : all)
        if (one.replaces) replaced.insert(*one.replaces);
    std::vector<const T*> out;
    for (const auto& one : all)
        if (counts(one) && !replaced.contains(one.id)) out.push_back(&one);
    return out;
}

}  // namespace

std::vector<const Reading*> standing(const std::vector<Reading>& readings, TestKind test, int cylinder) {
    return not_replaced(readings, [&](const Reading& reading) {
        return reading.test == test && reading.cylinder == cylinder;
    });
}

std::vector<const ExitNote*> standing(const std::vector<ExitNote>& exits, int cylinder) {
    return not_replaced(exits, [&](const ExitNote& note) { return note.cylinder == cylinder; });
}

std::vector<const Clearance*> standing(const std::vector<Clearance>& clearances, int cylinder) {
    return not_replaced(clearances, [&](const Clearance& one) { return one.cylinder == cylinder; });
}

const Reading* latest(const std::vector<Reading>& readings, TestKind test, int cylinder) {
    const Reading* newest = nullptr;
    for (const auto* reading : standing(readings, test, cylinder))
        if (newest == nullptr || reading->taken_at.unix_ms >= newest->taken_at.unix_ms) newest = reading;
    return newest;
}

const Tester* find_tester(const Dossier& dossier, std::optional<TesterId> id) {
    if (!id) return nullptr;
    const auto found = std::ranges::find(dossier.testers, *id, &Tester::id);
    return found == dossier.testers.end() ? nullptr : &*found;
}

}  // namespace lapwing
