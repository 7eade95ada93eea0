// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "platform/cli/answer.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

/// "kgf/cm2" as a part of a key: kgf_cm2.
std::string key_of(std::string_view symbol) {
    std::string out;
    for (const char c : symbol)
        out += c == '/' || c == ' ' ? '_'
               : c == '%'           ? 'p'
                                    : static_cast<char>(c >= 'A' && c <= 'Z' ? c + 32 : c);
    return out;
}

/// The dimensions that have more than one unit.
template <class Use>
void each_dimension(const Use& use) {
    use(PressureTag{});
    use(LengthTag{});
    use(VolumeTag{});
    use(AreaTag{});
    use(TemperatureTag{});
    use(AngleTag{});
    use(RotationTag{});
    use(TimeTag{});
    use(TorqueTag{});
    use(FlowTag{});
}

std::string known() {
    std::string out;
    each_dimension([&]<class Tag>(Tag) {
        out +=
            (out.empty() ? "" : "; ") + std::string(Tag::name) + ": " + detail::known_units(Unit<Tag>::all());
    });
    return out;
}

template <class Tag>
Outcome convert(const Typed<Tag>& from, Arguments& arguments) {
    if constexpr (std::is_same_v<Tag, TemperatureTag>)
        if (const auto possible = above_absolute_zero(from); !possible) return refused(possible.error());
    std::vector<Unit<Tag>> targets;
    if (const std::string wanted = arguments.text("--to"); !wanted.empty()) {
        const auto to = Unit<Tag>::find(wanted);
        if (!to)
            return wrong_use(fmt::format("--to: \"{}\" is no unit of {}; known are {}.", wanted, Tag::name,
                                         detail::known_units(Unit<Tag>::all())));
        targets.push_back(*to);
    } else {
        for (const UnitEntry& entry : Unit<Tag>::all())
            if (const auto to = *Unit<Tag>::find(entry.symbol); to != from.unit()) targets.push_back(to);
    }
    constexpr int digits = 7;
    Answer answer;
    const std::string si_key = key_of(Unit<Tag>{}.symbol());
    answer.add("value_" + si_key, from.si());
    answer.add("u_" + si_key, 0.0);
    for (const auto& to : targets)
        answer.add("value_" + key_of(to.symbol()), to.number(from.value()), from.text(),
                   shown(from.si(), to, digits));
    return answer.print(arguments.json());
}

Outcome run(Arguments& arguments) {
    const std::string& text = arguments.operand(0);
    const auto split = detail::split_quantity(text);
    if (!split) return wrong_use(split.error().english);
    std::optional<Outcome> out;
    each_dimension([&]<class Tag>(Tag) {
        if (out || !Unit<Tag>::find(split->symbol)) return;
        const auto from = parse_quantity<Tag>(text);
        out = from ? convert(*from, arguments) : wrong_use(from.error().english);
    });
    if (out) return *out;
    return wrong_use(fmt::format("\"{}\" needs a unit: {}.", text, known()));
}

}  // namespace

Verb sums_unit() {
    return {"sums unit",
            "converts units",
            {"QUANTITY"},
            {{"--to", "UNIT", "only into this one"}, json_option},
            "A pressure stays what it was, gauge or absolute. Keys: value_ and the unit in small letters "
            "(value_pa, "
            "value_kgf_cm2), the SI unit first; u_ and the SI unit: what the conversion adds, 0.",
            run};
}

}  // namespace lapwing::cli
