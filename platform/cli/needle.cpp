// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/needle.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/base/atomic_file.h"
#include "core/vision/overlay.h"
#include "core/vision/photo_header.h"
#include "platform/cli/answer.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/verbs.h"
#include "qml/format/formatter.h"

namespace lapwing::cli {
namespace {

using Pressure = Typed<PressureTag>;

/// In the unit of the upper end: which steps of a scale are usual depends on its unit.
vision::DialRange range_of(const Pressure& min, const Pressure& max, Arguments& arguments) {
    const auto angle = [&](std::string_view name) -> std::optional<double> {
        const auto typed = arguments.quantity<AngleTag>(name);
        if (!typed) return std::nullopt;
        return units::deg.number(typed->value());
    };
    return {max.unit().number(min.value()), max.number(), angle("--sweep"), angle("--start")};
}

std::string in_words(vision::Refusal refusal) {
    return format::Formatter{}
        .text(findings::Word{fmt::format("read_refusal:{}", vision::code(refusal))})
        .toStdString();
}

std::string decimals(double value, double u) {
    const int places = std::clamp(static_cast<int>(std::ceil(-std::log10(std::max(u, 1e-6)))) + 1, 0, 6);
    return fmt::format("{:.{}f}", value, places);
}

void print_json(const vision::NeedleReading& reading, const vision::DialRange& range,
                Unit<PressureTag> unit) {
    const auto pascal = [&](double number) { return unit.quantity(number).si() - unit.quantity(0).si(); };
    const bool scale_seen = reading.divisions > 0;
    nlohmann::ordered_json out;
    const auto put = [&](const char* key, bool known, auto value) {
        if (known)
            out[key] = std::move(value);
        else
            out[key] = nullptr;
    };
    put("value", !reading.refused(), pascal(reading.value));
    put("u", !reading.refused(), pascal(reading.u));
    out["confidence"] = reading.confidence;
    put("centre_px", scale_seen, std::vector<double>{reading.centre_px.x, reading.centre_px.y});
    const double start_deg = range.start_deg.value_or(-reading.sweep_deg / 2);
    put("needle_angle_deg", !reading.refused(), start_deg + reading.needle_angle_deg);
    if (reading.refused()) {
        out["why"] = in_words(reading.refusal);
        out["refusal"] = vision::code(reading.refusal);
    }
    fmt::print("{}\n", out.dump());
}

Outcome run(Arguments& arguments) {
    const auto min = arguments.quantity<PressureTag>("--min");
    const auto max = arguments.quantity<PressureTag>("--max");
    if (!min || !max) return tl::unexpected(*arguments.wrong());
    const vision::DialRange range = range_of(*min, *max, arguments);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());

    const auto file = read_file(arguments.operand(0), vision::largest_photo_bytes);
    if (!file) return refused(file.error());
    const auto photo = std::as_bytes(std::span(*file));
    const auto reading = vision::read_needle(photo, range);
    if (!reading) return refused(reading.error());
    if (arguments.has("--overlay")) {
        const auto overlay = vision::draw_overlay(photo, *reading);
        if (!overlay) return refused(overlay.error());
        const std::string_view png(reinterpret_cast<const char*>(overlay->data()), overlay->size());
        if (auto written = write_output(arguments.text("--overlay"), png); !written) return written;
    }

    const Unit<PressureTag> unit = max->unit();
    if (arguments.json()) {
        print_json(*reading, range, unit);
    } else if (reading->refused()) {
        fmt::print("{}\n", in_words(reading->refusal));
    } else {
        const double expanded = 2 * reading->u;
        fmt::print("reads {} {} ± {} {}, confidence {:.0f} %\n", decimals(reading->value, expanded),
                   unit.display(), figure(expanded, 2), unit.display(), 100 * reading->confidence);
    }
    return reading->refused() ? Exit::no : Exit::done;
}

}  // namespace

Verb needle_verb() {
    return {
        "needle",
        "reads the needle of a gauge off a photo",
        {"PHOTO"},
        {{"--min", "PRESSURE", "the lower end of the dial's outer scale, for example 0bar", true},
         {"--max", "PRESSURE", "the upper end", true},
         {"--sweep", "ANGLE", "from the lower to the upper end, for example 270deg, when it is known"},
         {"--start", "ANGLE",
          "where the lower end stands, clockwise from the dial's 12 o'clock, for example -135deg; the photo "
          "is then "
          "taken to be roughly upright"},
         json_option,
         {"--overlay", "OUT.png", "the photo with dial, scale and needle drawn on it as they were found"}},
        "PHOTO is a JPEG or PNG of up to 60 megapixels. The scale is taken to be even and to rise clockwise. "
        "Ends with "
        "1 when the photo is too doubtful to read, and says why. The ± is two standard uncertainties of "
        "reading the "
        "photo; the gauge's own error comes on top. Keys: value and u (one standard uncertainty) in pascal, "
        "confidence "
        "(0 to 1), centre_px, needle_angle_deg (tilt and lean undone, clockwise from the dial's 12 o'clock, "
        "which is "
        "the middle of the scale unless --start says otherwise), and why and refusal when it is not read.",
        run};
}

}  // namespace lapwing::cli
