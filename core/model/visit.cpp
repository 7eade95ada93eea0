// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/visit.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace lapwing {
namespace {

Timestamp recorded_at(const Reading& reading) {
    return reading.taken_at;
}
Timestamp recorded_at(const auto& one) {
    return one.at;
}

/// Of those that count. A file from outside may say that two records replace each other: only what is reached
/// from a record that stands is replaced; of a circle that nothing reaches the newest stands.
template <class T, class Counts>
std::vector<const T*> not_replaced(const std::vector<T>& all, Counts counts) {
    std::map<decltype(T::id), const T*> counting;
    std::set<decltype(T::id)> replaced;
    for (const auto& one : all)
        if (counts(one)) counting.emplace(one.id, &one);
    for (const auto& [id, one] : counting)
        if (one->replaces) replaced.insert(*one->replaces);

    std::set<decltype(T::id)> settled;
    const auto next = [&](const T* one) -> const T* {
        const auto found = one->replaces ? counting.find(*one->replaces) : counting.end();
        return found == counting.end() ? nullptr : found->second;
    };
    const auto settle_from = [&](const T* one) {
        while (one != nullptr && settled.insert(one->id).second)
            one = next(one);
    };
    for (const auto& [id, one] : counting)
        if (!replaced.contains(id)) settle_from(one);
    for (const auto& [id, one] : counting) {
        if (settled.contains(id)) continue;
        const T* newest = one;
        for (const T* other = next(one); other != one; other = next(other))
            if (std::tuple(recorded_at(*other).unix_ms, other->id) >
                std::tuple(recorded_at(*newest).unix_ms, newest->id))
                newest = other;
        replaced.erase(newest->id);
        settle_from(newest);
    }

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
