// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/tester_card_lines.h"

#include <QCoreApplication>

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(TesterCard)
};

using Lines = FormLines<Tester>;
using Kind = FormField::Kind;

UnitList<VolumeTag> volumes() {
    return {units::cm3, units::ml, *Unit<VolumeTag>::find("in3")};
}

// `gauge` hands out the dial; `room` keeps the keys of two dials apart.
template <class GaugeOf>
void add_gauge(Lines& lines, const QString& section, const char* room, const format::Formatter& format,
               GaugeOf gauge) {
    lines.section(section);
    const auto key = [room](const char* name) { return std::string(room) + "/" + name; };
    const auto bars = forms::pressures(format);
    lines.needed(
        key("scale").c_str(), Texts::tr("Full scale"),
        bars, [gauge](auto& t) -> auto& { return gauge(t).full_scale; });
    lines.hint(
        Texts::tr("The last figure on the dial. The scale starts at zero. Of a dial in % of leakage: the "
                  "set pressure at which it shows 0 %."));
    lines.choice<AccuracyScheme>(
        key("scheme").c_str(), Texts::tr("Class by"), [gauge](auto& t) -> auto& { return gauge(t).scheme; });
    lines.hint(Texts::tr("As printed on the dial. Without one the app assumes a plain workshop gauge."));
    lines.text(
        key("accuracy").c_str(),
        Texts::tr("Accuracy class"), [gauge](auto& t) -> auto& { return gauge(t).accuracy; });
    lines.hint(
        Texts::tr("EN 837-1: 1.6 or 2.5, a percentage of the span. ASME B40.100: a grade from A to D."));
    lines.quantity(
        key("division").c_str(), Texts::tr("Smallest division"),
        bars, [gauge](auto& t) -> auto& { return gauge(t).division; });
    lines.quantity(
        key("rest").c_str(), Texts::tr("Needle at rest shows"),
        bars, [gauge](auto& t) -> auto& { return gauge(t).zero_at_rest; });
    lines.quantity(
        key("sweep").c_str(), Texts::tr("Sweep of the scale"),
        UnitList<AngleTag>{units::deg}, [gauge](auto& t) -> auto& { return gauge(t).sweep; });
    lines.hint(Texts::tr("From zero to full scale, often 270 degrees. Helps to read photos."));
}

void add_compression(Lines& lines) {
    lines.section(Texts::tr("Hose and check valve"));
    lines.quantity(
        "hose_volume", Texts::tr("Hose and gauge hold"), volumes(),
        [](auto& t) -> auto& { return t.hose_volume; });
    lines.hint(
        Texts::tr("Fill them with water and measure it. A large volume after the check valve costs pulls."));
    lines.choice<CheckValveAt>(
        "valve_at", Texts::tr("Check valve sits at the"), [](auto& t) -> auto& { return t.check_valve_at; });
    lines.hint(Texts::tr("At the gauge end the hose adds to the chamber and the reading comes out low."));
    lines.choice<CheckValveCore>(
        "valve_core", Texts::tr("Valve core"), [](auto& t) -> auto& { return t.check_valve_core; });
    lines.hint(Texts::tr("A tyre valve core needs pressure to open and takes it off the reading."));
}

void add_adapters(Lines& lines, const Tester& tester, const format::Formatter& format) {
    for (std::size_t i = 0; i < tester.adapters.size(); ++i) {
        const QString name = QString::fromStdString(tester.adapters[i].name);
        // The number keeps two adapters of one name apart.
        lines.section(Texts::tr("Adapter %1: %2").arg(i + 1).arg(name));
        const auto at = [i](auto& t) -> auto& {
            return t.adapters[i];
        };
        const auto key = [i](const char* part) { return "adapter/" + std::to_string(i) + "/" + part; };
        lines.text(
            key("name").c_str(), Texts::tr("Name"), [at](auto& t) -> auto& { return at(t).name; });
        lines.text(
            key("thread").c_str(), Texts::tr("Thread"), [at](auto& t) -> auto& { return at(t).thread; });
        lines.quantity(
            key("reach").c_str(), Texts::tr("Reach"),
            forms::millimetres(format), [at](auto& t) -> auto& { return at(t).reach; });
        lines.hint(Texts::tr("It must not touch piston or valve: turn the engine two turns by hand."));
        lines.quantity(
            key("volume").c_str(), Texts::tr("Adds a volume of"),
            volumes(), [at](auto& t) -> auto& { return at(t).volume; });
        lines.choice<AdapterSeal>(
            key("seal").c_str(), Texts::tr("Seals by"), [at](auto& t) -> auto& { return at(t).seal; });
        lines.special(lines.line(QString::fromStdString(key("remove")), Texts::tr("Take this adapter out"),
                                 Kind::action),
                      [i](Tester& t, const FormEntry&) -> Status {
                          if (i < t.adapters.size())
                              t.adapters.erase(t.adapters.begin() + static_cast<std::ptrdiff_t>(i));
                          return {};
                      });
    }
    lines.section(Texts::tr("More adapters"));
    lines.special(lines.line("adapter_add", Texts::tr("Add an adapter"), Kind::action),
                  [](Tester& t, const FormEntry&) -> Status {
                      Adapter added;
                      added.name = Texts::tr("Adapter").toStdString();
                      t.adapters.push_back(std::move(added));
                      return {};
                  });
}

void add_supply(Lines& lines, const Tester& tester, const format::Formatter& format) {
    const bool two = tester.supply_gauge.has_value();
    lines.toggle_with("two_gauges", Texts::tr("A second gauge before the restrictor"), two,
                      [](Tester& t, bool on) {
                          if (on && !t.supply_gauge) t.supply_gauge = t.gauge;
                          if (!on) t.supply_gauge.reset();
                      });
    lines.quantity(
        "set", Texts::tr("Set pressure"), forms::pressures(format),
        [](auto& t) -> auto& { return t.set_pressure; });
    lines.hint(Texts::tr("What it is usually set to with the outlet blocked."));
    lines.quantity(
        "restrictor", Texts::tr("Restrictor diameter"), forms::millimetres(format),
        [](auto& t) -> auto& { return t.restrictor; });
    lines.hint(Texts::tr("Often 1 mm. Readings are converted by it; the drilled hole checks it."));
    lines.quantity(
        "restrictor_length", Texts::tr("Restrictor length"), forms::millimetres(format),
        [](auto& t) -> auto& { return t.restrictor_length; });
    lines.quantity(
        "restrictor_cd", Texts::tr("Discharge coefficient"), UnitList<RatioTag>{units::one},
        [](auto& t) -> auto& { return t.restrictor_cd; });
    lines.hint(Texts::tr("Leave it empty if you don't know: the app assumes one."));
    if (two)
        add_gauge(
            lines, Texts::tr("Gauge before the restrictor"), "supply", format,
            [](auto& t) -> auto& { return *t.supply_gauge; });
}

}  // namespace

FormLines<Tester> tester_card_lines(const Tester& tester, const format::Formatter& format) {
    Lines lines(tester, format);
    lines.section(Texts::tr("Tester"));
    lines.text(
        "name", Texts::tr("Name"), [](auto& t) -> auto& { return t.name; });
    lines.choice<TesterKind>(
        "kind", Texts::tr("Kind"), [](auto& t) -> auto& { return t.kind; });
    lines.toggle(
        "home_made", Texts::tr("Home-made"), [](auto& t) -> auto& { return t.home_made; });
    lines.text(
        "note", Texts::tr("Note"), [](auto& t) -> auto& { return t.note; }, Kind::long_text);
    const bool compression = tester.kind == TesterKind::compression_gauge;
    add_gauge(
        lines, tester.supply_gauge ? Texts::tr("Gauge after the restrictor") : Texts::tr("Gauge"), "gauge",
        format, [](auto& t) -> auto& { return t.gauge; });
    if (compression) add_compression(lines);
    if (!compression) {
        lines.section(Texts::tr("Air and restrictor"));
        add_supply(lines, tester, format);
    }
    add_adapters(lines, tester, format);
    return lines;
}

}  // namespace lapwing
