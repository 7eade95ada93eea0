// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QtGlobal>
#include <unordered_map>

#include "qml/format/tables.h"

/// What derived numbers are called, and their formulas in words.
namespace lapwing::format {
namespace {

struct Title {
    const char* name;
    const char* in_words;
};
#define TITLE(code, name, in_words)                                                      \
    {                                                                                    \
        code, {                                                                          \
            QT_TRANSLATE_NOOP("Findings", name), QT_TRANSLATE_NOOP("Findings", in_words) \
        }                                                                                \
    }

const std::unordered_map<std::string_view, Title> titles = {
    TITLE("from:limit", "Factory limit here",
          "The limit on the engine card, scaled by the air pressure at the shop against sea level."),
    TITLE("from:mean", "Reading",
          "The mean of the readings that count, with the gauge's error and their scatter."),
    TITLE("from:first_share", "First puff", "First puff divided by the final reading."),
    TITLE("from:typical", "What makers ask",
          "Makers' usual range for such an engine, scaled by the air pressure at the shop."),
    TITLE("from:lowest_of_highest", "Lowest against highest", "The lowest cylinder divided by the highest."),
    TITLE("from:average", "Average", "The average of all cylinders, and how far below it each one lies."),
    TITLE("from:difference", "Difference", "The highest cylinder less the lowest."),
    TITLE("from:leakage", "Leakage", "What was lost of the set pressure: set less held, divided by set."),
    TITLE("from:converted", "The same leak on another tester",
          "The leak is taken as a hole: what passes the restrictor passes the hole. Its size is found from "
          "your tester, then the other tester is put before the same hole."),
    TITLE("from:converted_laminar", "The same leak on another tester, as a narrow gap",
          "The leak is taken as a long narrow gap instead of a hole, its size found from your tester."),
    TITLE("from:leak_area", "Leak area", "The hole that passes as much air as the restrictor does."),
    TITLE("from:leak_hole", "Equivalent hole", "The round hole of the leak's area."),
    TITLE("from:flow", "Leak flow",
          "Air through the leak at the held pressure, as litres of air at 20 °C and 1 bar."),
    TITLE("from:rise", "Wet rise", "The wet reading against the dry one."),
    TITLE("from:hold", "Hold time", "How long the pressure was held."),
    TITLE("from:first_puff", "First puff rule",
          "First and last of several strokes against what the cylinder should reach."),
    TITLE("from:loudest_exit", "Loudest exit", "Where the air comes out names the part that leaks."),
    TITLE("from:healthy", "What the model expects",
          "Strokes of a cylinder that seals well, worked out from the engine card for this gauge at sea "
          "level and "
          "scaled by the air pressure at the shop. The range is the doubt of what went in."),
    TITLE("from:healthy_first_share", "First puff that the model expects",
          "First stroke against the last, of a cylinder that seals well, on this gauge."),
    TITLE("from:oil_rise", "What oil's volume explains",
          "Oil that stays makes the chamber smaller, and the reading higher, with no ring sealed by it."),
    TITLE("from:bands", "What makers say of such a leak",
          "The leak is converted to the tester that each band was written for, and judged there."),
    TITLE("from:leak_spread", "Difference between cylinders",
          "Every cylinder's leakage on the tester that the rule was written for."),
    TITLE("from:put_right", "Put right for the limit",
          "Limits are meant for a warm engine, cranked well, with the throttle open and the check valve at "
          "the plug "
          "hole. The model works out what each difference took off, and that is put back."),
    TITLE("from:oil_fill", "How full the chamber is",
          "The oil put in against the chamber at top dead centre."),
    TITLE("from:hose_loss", "What the hose takes off",
          "Air before the check valve is compressed along with the chamber on every stroke and never reaches "
          "the "
          "gauge."),
    TITLE("from:without_hose", "Without the hose",
          "The reading, put up by what the model says the volume before the check valve takes off."),
    TITLE("from:leak_law", "Law of the leak",
          "How the leak's area, taken as a hole, changes with the pressure held: not at all for a hole, "
          "growing for "
          "a narrow gap."),
    TITLE("from:restrictor", "Restrictor by a drilled hole",
          "What passes the restrictor passes the hole, whose size is known."),
    TITLE("from:standard_atmosphere", "Standard atmosphere",
          "The air pressure that goes with an altitude on an average day."),
    TITLE("from:torque", "Torque on the crank",
          "The pressure in the cylinder times what its volume grows by as the crank turns."),
    TITLE("from:throttle_loss", "Throttle closed",
          "The model's reading with less air in the cylinder, against that with the throttle open."),
    TITLE("from:slow_loss", "Slow cranking",
          "The model's reading at the slow speed against that at the usual one."),
    TITLE("from:speed_loss", "What the other cranking speed takes off",
          "The model's reading at the other cranking speed against that at this one."),
    TITLE("from:slow_reading", "Reading at the other cranking speed",
          "What a cylinder that seals well reads, less what the other speed takes off."),
    TITLE("from:throttle_reading", "Reading with that throttle",
          "What a cylinder that seals well reads, less what the throttle takes off."),
    TITLE("from:cold_loss", "Cold engine",
          "The model's reading with cold cylinder walls against that with warm ones."),
    TITLE("from:core_loss", "Tyre-valve core",
          "The model's reading with a core that is hard to open against that with one made for gauges."),
    TITLE("from:change", "Difference between the visits",
          "The later reading less the earlier one in the later visit's terms; what both are out by together "
          "cancels."),
    TITLE("from:released", "With the decompressor at work",
          "The model's reading with the cylinder closing as late as a decompressor leaves it."),
    TITLE("from:reached", "After so many pulls",
          "The model's reading after so many strokes against that of endlessly many, on this gauge."),
    TITLE("from:pulls", "How many pulls", "Gauges fill stroke by stroke: makers name how many it takes."),
    TITLE("from:force", "Force at the end of the bar", "The torque divided by the length of the bar."),
    TITLE("from:correction", "Correction",
          "The reading with nothing before the check valve against that with this tester, by the model."),
    TITLE("from:wet_reading", "Wet reading by volume alone",
          "The dry reading, put up by what the oil's volume explains."),
    TITLE("from:restrictor_area", "Restrictor's effective area",
          "What passes the restrictor passes the hole, whose size is known."),
    TITLE(
        "from:odds", "Where it leaks",
        "Cylinders are drawn at random, leaking here and there as the working assumptions say they do, and "
        "each counts as much as readings like these would be likely of it. The shares and odds are those of "
        "all that were drawn."),
    TITLE("from:after_repair", "Dry test to expect after a repair",
          "The same cylinders once more, the leak of the repaired part put back to that of a sound one; nine "
          "of "
          "ten read within the range."),
    TITLE("from:joint", "Neighbours", "Two neighbours that are low together, with the others in order."),
};

#undef TITLE

const Title* find_title(std::string_view code) {
    const auto at = titles.find(code);
    return at == titles.end() ? nullptr : &at->second;
}

}  // namespace

const char* titleOf(std::string_view code) {
    const Title* title = find_title(code);
    return title ? title->name : nullptr;
}

const char* inWordsOf(std::string_view code) {
    const Title* title = find_title(code);
    return title ? title->in_words : nullptr;
}

}  // namespace lapwing::format
