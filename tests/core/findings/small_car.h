// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/core/findings/bench.h"

namespace lapwing::findings {

inline constexpr double psi_pa = 6894.757;  // NIST SP 811

inline TypedAngle degrees(const std::string& digits) {
    return *TypedAngle::make(digits, units::deg);
}
inline TypedVolume cm3(const std::string& digits) {
    return *TypedVolume::make(digits, units::cm3);
}

/// 70 x 65 mm, rod 125 mm, compression ratio 9, intake closing 65 degrees after BDC at the seat.
struct SmallCar : Bench {
    explicit SmallCar(int cylinders = 1) : Bench(cylinders) {
        engine().bore = Sourced<TypedLength>{mm("70"), {}, {}};
        engine().stroke = Sourced<TypedLength>{mm("65"), {}, {}};
        engine().rod = Sourced<TypedLength>{mm("125"), {}, {}};
        ratio("9");
        engine().valves.intake_closing = Sourced<TypedAngle>{degrees("65"), {}, {}};
        engine().valves.intake_closing_at = TimingAt::seat;
    }
    void ratio(const std::string& digits) {
        engine().compression_ratio =
            Sourced<TypedRatio>{*TypedRatio::make(digits, units::one), Origin::manual, {}};
    }
    [[nodiscard]] ModelInputs inputs(const Tester* with = nullptr, const std::string& adapter = {},
                                     const std::optional<TypedVolume>& oil = {}) {
        return model_inputs(engine(), session(), reference(), with, adapter, oil);
    }
    [[nodiscard]] ModelFacts facts(const Tester* with = nullptr, const std::string& adapter = {},
                                   const std::optional<TypedVolume>& oil = {}) {
        return model_facts(inputs(with, adapter, oil));
    }
};

}  // namespace lapwing::findings
