// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/calculator_lines.h"

#include <QCoreApplication>
#include <algorithm>

namespace lapwing {
namespace {

using calculators::Calculator;
using calculators::Worksheet;

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(Calculators)
};

using Lines = FormLines<Worksheet>;

template <class Tag>
UnitList<Tag> every_unit() {
    UnitList<Tag> list;
    for (const UnitEntry& entry : Unit<Tag>::all())
        list.push_back(*Unit<Tag>::find(entry.symbol));
    return list;
}

/// With this unit offered first.
template <class Tag>
UnitList<Tag> led_by(Unit<Tag> first, UnitList<Tag> units) {
    std::stable_partition(units.begin(), units.end(), [&](const Unit<Tag>& unit) { return unit == first; });
    return units;
}

UnitList<VolumeTag> volumes() {
    return {units::cm3, units::ml, *Unit<VolumeTag>::find("in3")};
}

/// The lines of one calculator, group by group. On the sheet a figure of the engine card needs no origin: it
/// is only tried out.
class Ask {
public:
    Ask(const Worksheet& sheet, const format::Formatter& format)
        : sheet_(sheet), format_(format), lines_(sheet, format) {}

    Lines run(Calculator calculator) {
        switch (calculator) {
            case Calculator::leakage:
                reading();
                tester();
                shop();
                break;
            case Calculator::other_tester:
                reading();
                tester();
                other();
                shop();
                break;
            case Calculator::law:
                reading();
                second_reading();
                tester();
                supply_gauge();
                shop();
                break;
            case Calculator::restrictor:
                drilled_hole();
                tester_gauge();
                shop();
                break;
            case Calculator::hose:
                dry_reading();
                gauge();
                engine();
                break;
            case Calculator::oil:
                oil();
                engine();
                break;
            case Calculator::altitude:
                shop();
                limit();
                break;
            case Calculator::healthy:
                engine();
                cranking();
                gauge();
                shop();
                break;
            case Calculator::turning:
                turning();
                engine();
                cranking();
                gauge();
                shop();
                break;
            case Calculator::torque:
                torque();
                break;
            case Calculator::units:
                conversions();
                break;
        }
        return std::move(lines_);
    }

private:
    template <class Tag, class Member>
    void on_card(const char* key, const QString& label, UnitList<Tag> units, Member member) {
        FormField field = lines_.quantity_line(QString::fromLatin1(key), label, units);
        if (const auto& known = member(sheet_)) lines_.show(field, known->value);
        lines_.special(std::move(field),
                       [member, unit = units.front()](Worksheet& sheet, const FormEntry& entry) -> Status {
                           if (entry.text.isEmpty()) {
                               member(sheet).reset();
                               return {};
                           }
                           return forms::typed<Tag>(entry.text, entry.unit, unit).map([&](Typed<Tag> value) {
                               member(sheet) = Sourced<Typed<Tag>>{std::move(value), Origin::measured, {}};
                           });
                       });
    }

    void reading() {
        lines_.section(Texts::tr("Reading"));
        set_and_held(Texts::tr("Held pressure"));
    }

    void set_and_held(const QString& held) {
        lines_.quantity(
            "set", Texts::tr("Set pressure"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.set; });
        // Read on the same tester: its unit, not the one chosen in Settings.
        const auto units = forms::pressures(format_);
        lines_.quantity(
            "held", held, sheet_.set ? led_by(sheet_.set->unit(), units) : units,
            [](auto& s) -> auto& { return s.held; });
    }

    void second_reading() {
        lines_.section(Texts::tr("At another set pressure"));
        lines_.quantity(
            "second_set", Texts::tr("Set pressure"),
            sheet_.set ? led_by(sheet_.set->unit(), forms::pressures(format_)) : forms::pressures(format_),
            [](auto& s) -> auto& { return s.second_set; });
        lines_.quantity(
            "second_held", Texts::tr("Held pressure"),
            sheet_.second_set ? led_by(sheet_.second_set->unit(), forms::pressures(format_))
                              : forms::pressures(format_),
            [](auto& s) -> auto& { return s.second_held; });
        lines_.hint(
            Texts::tr("The same leak, cylinder and tester. The further apart the two set pressures, the more "
                      "they tell."));
    }

    /// Whether the tester shows the set pressure on a gauge of its own: then nothing sags unseen.
    void supply_gauge() {
        lines_.toggle_with("two_gauges", Texts::tr("A gauge of its own for the set pressure"),
                           sheet_.tester.supply_gauge.has_value(), [](Worksheet& sheet, bool on) {
                               sheet.tester.supply_gauge.reset();
                               if (on) sheet.tester.supply_gauge.emplace();  // like the other one
                           });
    }

    void turning() {
        lines_.section(Texts::tr("Turned otherwise"));
        lines_.quantity(
            "slow", Texts::tr("Other cranking speed"), UnitList<RotationTag>{units::rpm},
            [](auto& s) -> auto& { return s.slow; });
        lines_.hint(Texts::tr("Leave it empty for that of a flat battery."));
        lines_.quantity(
            "fill", Texts::tr("Pressure at intake closing, of the air's"),
            UnitList<RatioTag>{*Unit<RatioTag>::find("%")}, [](auto& s) -> auto& { return s.fill; });
        lines_.hint(
            Texts::tr("How far the throttle is shut: 100 % is wide open. Leave it empty for shut, with how "
                      "far that goes as the range."));
    }

    void tester_gauge() {
        lines_.section(Texts::tr("Tester"));
        lines_.needed(
            "scale", Texts::tr("Full scale of its gauge"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.tester.gauge.full_scale; });
        lines_.hint(Texts::tr("With scale and class the uncertainty is this gauge's own; 0 is not known."));
        lines_.choice<AccuracyScheme>(
            "scheme", Texts::tr("Class by"), [](auto& s) -> auto& { return s.tester.gauge.scheme; });
        lines_.text(
            "accuracy", Texts::tr("Accuracy class"),
            [](auto& s) -> auto& { return s.tester.gauge.accuracy; });
        lines_.hint(Texts::tr("EN 837-1: 1.6 or 2.5. ASME B40.100: a grade from A to D."));
    }

    void tester() {
        tester_gauge();
        lines_.quantity(
            "restrictor", Texts::tr("Restrictor diameter"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.tester.restrictor; });
        lines_.hint(
            Texts::tr("Leave it empty if you don't know: the app assumes the usual one, and the ± is wider "
                      "for it."));
        lines_.quantity(
            "cd", Texts::tr("Discharge coefficient"), UnitList<RatioTag>{units::one},
            [](auto& s) -> auto& { return s.tester.restrictor_cd; });
        lines_.hint(Texts::tr("Leave it empty if you don't know: the app assumes one."));
    }

    void other() {
        lines_.section(Texts::tr("Other tester"));
        lines_.quantity(
            "other_set", Texts::tr("Its set pressure"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.other_set; });
        lines_.quantity(
            "other_restrictor", Texts::tr("Its restrictor diameter"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.other_restrictor; });
    }

    void drilled_hole() {
        lines_.section(Texts::tr("Drilled hole"));
        lines_.quantity(
            "hole", Texts::tr("Diameter of the hole"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.hole; });
        lines_.hint(
            Texts::tr("Drilled through a cap that stands in the cylinder's place, as long as the "
                      "restrictor is."));
        set_and_held(Texts::tr("Held pressure on the hole"));
    }

    void shop() {
        lines_.section(Texts::tr("Shop"));
        lines_.quantity(
            "altitude", Texts::tr("Altitude"), forms::altitudes(format_),
            [](auto& s) -> auto& { return s.session.conditions.altitude; });
        lines_.quantity(
            "air_pressure", Texts::tr("Air pressure"),
            UnitList<PressureTag>{units::hpa, units::in_hg, units::kpa, units::bar},
            [](auto& s) -> auto& { return s.session.conditions.station_pressure; });
        lines_.hint(
            Texts::tr("What a barometer in the shop shows. It wins over the altitude; a weather report's "
                      "figure is for sea level and does not do."));
    }

    void limit() {
        lines_.section(Texts::tr("Limit"));
        lines_.quantity(
            "limit", Texts::tr("Factory limit, for sea level"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.limit; });
    }

    void cylinder() {
        lines_.section(Texts::tr("Engine"));
        on_card(
            "bore", Texts::tr("Bore"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.engine.bore; });
        on_card(
            "stroke", Texts::tr("Stroke"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.engine.stroke; });
        on_card(
            "rod", Texts::tr("Rod"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.engine.rod; });
        lines_.hint(Texts::tr("Between the centres of its eyes. Leave it empty and the app assumes one."));
    }

    void engine() {
        cylinder();
        on_card(
            "ratio", Texts::tr("Compression ratio"), UnitList<RatioTag>{units::one},
            [](auto& s) -> auto& { return s.engine.compression_ratio; });
        lines_.choice<StrokeCycle>(
            "cycle", Texts::tr("Cycle"), [](auto& s) -> auto& { return s.engine.cycle; });
        lines_.choice<Fuel>(
            "fuel", Texts::tr("Fuel"), [](auto& s) -> auto& { return s.engine.fuel; });
        if (sheet_.engine.cycle == StrokeCycle::two) {
            on_card(
                "port_closing", Texts::tr("Exhaust port closes after bottom dead centre"),
                UnitList<AngleTag>{units::deg},
                [](auto& s) -> auto& { return s.engine.exhaust_port_closing; });
            return;
        }
        on_card(
            "closing", Texts::tr("Intake closes after bottom dead centre"), UnitList<AngleTag>{units::deg},
            [](auto& s) -> auto& { return s.engine.valves.intake_closing; });
        lines_.hint(Texts::tr("Leave it empty and the app assumes one, with its doubt."));
        lines_.choice<TimingAt>(
            "closing_at", Texts::tr("Intake closing is quoted at"),
            [](auto& s) -> auto& { return s.engine.valves.intake_closing_at; });
    }

    void cranking() {
        lines_.section(Texts::tr("Cranking"));
        lines_.quantity(
            "speed", Texts::tr("Cranking speed"), UnitList<RotationTag>{units::rpm},
            [](auto& s) -> auto& { return s.session.conditions.cranking_speed; });
        lines_.choice<EngineHeat>(
            "heat", Texts::tr("Warm or cold"), [](auto& s) -> auto& { return s.session.conditions.heat; });
    }

    void gauge() {
        lines_.section(Texts::tr("Compression gauge"));
        lines_.quantity(
            "hose", Texts::tr("Hose and gauge hold"), volumes(),
            [](auto& s) -> auto& { return s.gauge.hose_volume; });
        lines_.choice<CheckValveAt>(
            "valve_at", Texts::tr("Check valve sits at the"),
            [](auto& s) -> auto& { return s.gauge.check_valve_at; });
        lines_.choice<CheckValveCore>(
            "core", Texts::tr("Valve core"), [](auto& s) -> auto& { return s.gauge.check_valve_core; });
        adapter();
    }

    /// The volume of the adapter in use; typing one where there is none makes one.
    void adapter() {
        FormField field =
            lines_.quantity_line(QStringLiteral("adapter"), Texts::tr("Adapter adds"), volumes());
        for (const Adapter& used : sheet_.gauge.adapters)
            if (used.name == sheet_.adapter && !sheet_.adapter.empty() && used.volume)
                lines_.show(field, *used.volume);
        lines_.special(std::move(field), [](Worksheet& sheet, const FormEntry& entry) -> Status {
            std::optional<TypedVolume> volume;
            if (!entry.text.isEmpty()) {
                auto typed = forms::typed<VolumeTag>(entry.text, entry.unit, units::cm3);
                if (!typed) return tl::unexpected(typed.error());
                volume = std::move(*typed);
            }
            Adapter tried;
            tried.name = sheet.adapter = "tried";
            tried.volume = volume;
            sheet.gauge.adapters = {tried};
            return {};
        });
    }

    void dry_reading() {
        lines_.section(Texts::tr("Reading"));
        lines_.quantity(
            "reading", Texts::tr("Reading to correct"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.reading; });
    }

    void oil() {
        lines_.section(Texts::tr("Wet test"));
        lines_.quantity(
            "oil", Texts::tr("Oil put in"), UnitList<VolumeTag>{units::ml, units::cm3},
            [](auto& s) -> auto& { return s.oil; });
        lines_.quantity(
            "reading", Texts::tr("Dry reading"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.reading; });
    }

    void torque() {
        lines_.section(Texts::tr("Air in the cylinder"));
        lines_.quantity(
            "held", Texts::tr("Pressure in the cylinder"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.held; });
        lines_.hint(Texts::tr("At most the set pressure."));
        lines_.quantity(
            "off_tdc", Texts::tr("Angle from top dead centre"), UnitList<AngleTag>{units::deg},
            [](auto& s) -> auto& { return s.off_tdc; });
        lines_.quantity(
            "bar", Texts::tr("Length of the bar"), forms::millimetres(format_),
            [](auto& s) -> auto& { return s.bar; });
        cylinder();
    }

    void conversions() {
        lines_.section(Texts::tr("Type one or several"));
        lines_.quantity(
            "pressure", Texts::tr("Pressure"), forms::pressures(format_),
            [](auto& s) -> auto& { return s.pressure; });
        lines_.quantity(
            "length", Texts::tr("Length"), every_unit<LengthTag>(),
            [](auto& s) -> auto& { return s.length; });
        lines_.quantity(
            "volume", Texts::tr("Volume"), led_by(units::cm3, every_unit<VolumeTag>()),
            [](auto& s) -> auto& { return s.volume; });
        lines_.quantity(
            "temperature", Texts::tr("Temperature"), forms::temperatures(format_),
            [](auto& s) -> auto& { return s.temperature; });
        lines_.quantity(
            "torque", Texts::tr("Torque"), every_unit<TorqueTag>(),
            [](auto& s) -> auto& { return s.torque; });
        lines_.quantity(
            "flow", Texts::tr("Flow"), every_unit<FlowTag>(), [](auto& s) -> auto& { return s.flow; });
    }

    const Worksheet& sheet_;
    const format::Formatter& format_;
    Lines lines_;
};

}  // namespace

Lines calculator_lines(Calculator calculator, const Worksheet& sheet, const format::Formatter& format) {
    return Ask(sheet, format).run(calculator);
}

}  // namespace lapwing
