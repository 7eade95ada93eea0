// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/cranking.h"

#include <array>

#include "platform/cli/shop.h"

namespace lapwing::cli {

std::vector<Option> cranking_options() {
    return joined(
        {{"--bore", "LENGTH", "bore", true},
         {"--stroke", "LENGTH", "stroke", true},
         {"--rod", "LENGTH", "connecting rod between the centres of its eyes", true},
         {"--cr", "RATIO", "geometric compression ratio, over the full stroke"},
         {"--cr-trapped", "RATIO",
          "instead of it: from the closing of the ports, as two-stroke makers give it"},
         {"--ivc", "ANGLE",
          "intake closing (two-stroke: exhaust port closing) after bottom dead centre, at the seat", true},
         {"--evo", "ANGLE", "exhaust opening before bottom dead centre; changes no reading; default 60deg"},
         {"--rpm", "SPEED", "cranking speed, like 300rpm; default 250rpm"},
         {"--leak", "AREA", "effective leak area; default none"},
         {"--hose", "VOLUME", "hose and gauge together; default 12cm3"},
         {"--fitting", "VOLUME", "added before the check valve; default none"},
         {"--check-valve", "PLACE", "plug (default) or gauge: where the check valve sits"},
         {"--gauge-volume", "VOLUME", "gauge alone, when the check valve sits there; default 2cm3"},
         {"--crack", "PRESSURE",
          "that opens the check valve; default 20kPa, a tyre-valve core 100 to 150kPa"},
         {"--check-area", "AREA", "effective area of the open check valve; default 4mm2"},
         {"--oil", "VOLUME", "oil that stays in the chamber; default none"},
         {"--heat", "NUMBER", "heat transfer to the walls, W/(m2 K); default 200"},
         {"--fill", "NUMBER",
          "pressure at intake closing over the air's; default 1, less with the throttle closed"},
         {"--air", "TEMPERATURE", "air drawn in; default 20degC"},
         {"--wall", "TEMPERATURE", "cylinder walls; default that of the air"},
         {"--strokes", "NUMBER", "how many; default 8"}},
        shop_options());
}

tl::expected<physics::CrankingCase, Failure> read_cranking(Arguments& arguments) {
    physics::CrankingCase out;
    out.crank.bore_m = arguments.si<LengthTag>("--bore");
    out.crank.stroke_m = arguments.si<LengthTag>("--stroke");
    out.crank.rod_m = arguments.si<LengthTag>("--rod");
    arguments.either("--cr", "--cr-trapped");
    const bool trapped = arguments.has("--cr-trapped");
    if (!trapped && !arguments.has("--cr")) arguments.complain("--cr", "give it, or --cr-trapped.");
    out.ratio_kind =
        trapped ? physics::CompressionRatioKind::trapped : physics::CompressionRatioKind::geometric;
    out.compression_ratio = arguments.number(trapped ? "--cr-trapped" : "--cr");
    out.closing_after_bdc_rad = arguments.si<AngleTag>("--ivc");
    out.opening_before_bdc_rad = arguments.si<AngleTag>("--evo", out.opening_before_bdc_rad);
    out.speed_rad_s = arguments.si<RotationTag>("--rpm", out.speed_rad_s);
    out.leak_m2 = arguments.si<AreaTag>("--leak");
    out.oil_m3 = arguments.si<VolumeTag>("--oil");
    out.heat_w_m2k = arguments.number("--heat", out.heat_w_m2k);
    out.fill = arguments.number("--fill", out.fill);
    out.air_k = arguments.si<TemperatureTag>("--air", out.air_k);
    out.wall_k = arguments.si<TemperatureTag>("--wall", out.air_k);
    out.strokes = arguments.count("--strokes", 1, 1000, out.strokes);

    physics::CompressionTester& tester = out.tester;
    constexpr std::array<std::string_view, 2> places{"plug", "gauge"};
    if (arguments.choice("--check-valve", places) == 1) tester.check_valve = physics::CheckValvePlace::gauge;
    tester.hose_m3 = arguments.si<VolumeTag>("--hose", tester.hose_m3);
    tester.fitting_m3 = arguments.si<VolumeTag>("--fitting", tester.fitting_m3);
    tester.gauge_alone_m3 = arguments.si<VolumeTag>("--gauge-volume", tester.gauge_alone_m3);
    tester.crack_pa = arguments.si<PressureTag>("--crack", tester.crack_pa);
    tester.check_area_m2 = arguments.si<AreaTag>("--check-area", tester.check_area_m2);

    const auto shop = read_shop_pa(arguments);
    if (!shop) return tl::unexpected(shop.error());
    out.ambient_pa = *shop;
    if (const auto fine = physics::check(out); !fine) return refused(fine.error());
    return out;
}

Unit<PressureTag> pressure_unit(Arguments& arguments, std::initializer_list<std::string_view> names) {
    for (const auto name : names)
        if (const auto read = arguments.quantity<PressureTag>(name)) return read->unit();
    return units::bar;
}

tl::expected<Unit<PressureTag>, Failure> read_unit(Arguments& arguments) {
    if (!arguments.has("--unit")) return units::bar;
    const std::string symbol = arguments.text("--unit");
    if (const auto unit = Unit<PressureTag>::find(symbol)) return *unit;
    return wrong_use(fmt::format("--unit: \"{}\" is no unit of pressure; known are {}.", symbol,
                                 lapwing::detail::known_units(Unit<PressureTag>::all())));
}

}  // namespace lapwing::cli
