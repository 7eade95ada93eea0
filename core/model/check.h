// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/base/apart.h"
#include "core/base/clock.h"
#include "core/base/uuid.h"
#include "core/model/engine.h"
#include "core/units/typed.h"

namespace lapwing::model {

/// Widest range of a gauge pressure that the model takes, Pa: from a full vacuum to 1000 bar.
inline constexpr double lowest_gauge_pa = -1.0e5;
inline constexpr double highest_gauge_pa = 1.0e8;

/// Collects the first thing that is wrong with a value. Ranges here are what can exist at all, from a model
/// engine to a ship's; what is merely unlikely is for the screen to ask about.
class Check {
public:
    /// `what` it is, for the sentences: "engine card", "reading".
    explicit Check(std::string_view what) : what_(what) {}

    /// Refuses with `model.no_id` a nil id.
    void id(const Uuid& uuid, std::string_view name);
    void time(Timestamp at, std::string_view name);
    /// Free text: UTF-8, at most `longest` bytes.
    void text(const std::string& text, std::string_view name, std::size_t longest = 20'000);
    /// Text that must not be blank.
    void needed(const std::string& text, std::string_view name);
    void within(int value, int low, int high, std::string_view name);

    /// SI bounds, both allowed; the sentence shows them in the unit that was typed.
    template <class T>
    void within(const Typed<T>& value, double low, double high, std::string_view name) {
        const double si = value.si();
        // Half a step of slack would let 1000.4 bar pass as 1000; a relative rounding guard does not.
        const double slack = 1e-9 * (high - low);
        if (error_ || (si >= low - slack && si <= high + slack)) return;
        out_of_range(name, value.text(), bound(value.unit(), low), bound(value.unit(), high));
    }
    template <class T>
    void within(const std::optional<Typed<T>>& value, double low, double high, std::string_view name) {
        if (value) within(*value, low, high, name);
    }
    template <class T>
    void within(const std::optional<Sourced<Typed<T>>>& value, double low, double high,
                std::string_view name) {
        if (!value) return;
        within(value->value, low, high, name);
        text(value->note, name);
    }
    /// More than zero and at most `high` (SI).
    template <class T>
    void positive(const std::optional<Typed<T>>& value, double high, std::string_view name) {
        if (!value) return;
        that(value->si() > 0.0, "model.not_positive",
             "{} in the {} is {}: it must be more than zero. Correct it or leave it empty.", name, what_,
             value->text());
        within(*value, 0.0, high, name);
    }
    template <class T>
    void positive(const std::optional<Sourced<Typed<T>>>& value, double high, std::string_view name) {
        if (!value) return;
        positive(std::optional(value->value), high, name);
        text(value->note, name);
    }
    template <class T>
    void gauge_pressure(const std::optional<T>& value, std::string_view name) {
        if (value) within(*value, lowest_gauge_pa, highest_gauge_pa, name);
    }
    /// `low` not above `high` where both are known.
    template <class T>
    void ordered(const std::optional<Typed<T>>& low, const std::optional<Typed<T>>& high,
                 std::string_view low_name, std::string_view high_name) {
        if (low && high)
            that(!is_above(low->si(), high->si()), "model.crossed",
                 "{} ({}) is above {} ({}) in the {}: correct one of the two.", low_name, low->text(),
                 high_name, high->text(), what_);
    }

    /// Any other condition.
    template <class... Args>
    void that(bool fine, std::string_view code, fmt::format_string<const Args&...> english,
              const Args&... args) {
        if (!error_ && !fine) error_ = std::move(fail(code, english, args...).value());
    }

    /// The value, or the first thing that was wrong.
    template <class T>
    Result<T> done(T value) {
        if (error_) return tl::unexpected(std::move(*error_));
        return value;
    }

private:
    template <class T>
    static std::string bound(Unit<T> unit, double si) {
        return fmt::format("{:.6g}", unit.number(Quantity<T>::from_si(si)));
    }
    void out_of_range(std::string_view name, const std::string& value, const std::string& low,
                      const std::string& high);

    std::string_view what_;
    std::optional<Error> error_;
};

bool is_utf8(std::string_view text);

}  // namespace lapwing::model
