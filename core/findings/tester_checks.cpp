// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/tester_checks.h"

#include <cmath>
#include <cstdint>

namespace lapwing::findings {
namespace {

std::int64_t speaks_until_ms(Timestamp read_at, const Reference& reference) {
    constexpr double ms_of_a_day = 24.0 * 3600.0 * 1000.0;
    return read_at.unix_ms + std::llround(reference.assumed("check-speaks-days") * ms_of_a_day);
}

/// The tester as its checks up to the reading leave it, and as those soon after it do.
Tester known_before(Tester tester, Timestamp read_at) {
    std::erase_if(tester.checks,
                  [&](const TesterCheck& check) { return check.at.unix_ms > read_at.unix_ms; });
    return tester;
}
Tester known_soon_after(Tester tester, Timestamp read_at, const Reference& reference) {
    std::erase_if(tester.checks, [&](const TesterCheck& check) {
        return check.at.unix_ms <= read_at.unix_ms || check.at.unix_ms > speaks_until_ms(read_at, reference);
    });
    return tester;
}

bool fails(const Tester& tester, TesterCheckKind kind) {
    const TesterCheck* last = last_check(tester, kind);
    return last && last->result == CheckResult::failed;
}

}  // namespace

bool speaks_against(const Tester& tester, TesterCheckKind kind, Timestamp read_at,
                    const Reference& reference) {
    return fails(known_before(tester, read_at), kind) ||
           fails(known_soon_after(tester, read_at, reference), kind);
}

std::optional<TesterCheckKind> fails_at(const Tester& tester, Timestamp read_at, const Reference& reference) {
    const Tester before = known_before(tester, read_at);
    if (const TesterCheck* check = failed_check(before)) return check->kind;
    const Tester after = known_soon_after(tester, read_at, reference);
    if (const TesterCheck* check = failed_check(after)) return check->kind;
    return std::nullopt;
}

bool is_checked(const Tester& tester, TesterCheckKind kind, Timestamp read_at, const Reference& reference) {
    return last_check(known_before(tester, read_at), kind) ||
           last_check(known_soon_after(tester, read_at, reference), kind);
}

}  // namespace lapwing::findings
