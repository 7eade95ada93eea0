// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

#include "core/findings/findings.h"
#include "core/model/visit.h"

/// What each enumeration is called in a Word's code: Exit::intake is "exit:intake".
namespace lapwing::findings {

template <class Enum>
struct KindName;

#define LAPWING_KIND(Enum, text)                         \
    template <>                                          \
    struct KindName<Enum> {                              \
        static constexpr std::string_view value = #text; \
    }

LAPWING_KIND(StrokeCycle, cycle);
LAPWING_KIND(Fuel, fuel);
LAPWING_KIND(Arrangement, arrangement);
LAPWING_KIND(Cooling, cooling);
LAPWING_KIND(Adjuster, adjuster);
LAPWING_KIND(Decompressor, decompressor);
LAPWING_KIND(ValveTiming, timing);
LAPWING_KIND(Origin, origin);
LAPWING_KIND(TimingAt, timing_at);
LAPWING_KIND(TiedTo, tied_to);
LAPWING_KIND(AttachmentKind, attachment);
LAPWING_KIND(PhotoOf, photo_of);
LAPWING_KIND(NoteKind, note);
LAPWING_KIND(Cause, cause);
LAPWING_KIND(AskedCheck, asked_check);
LAPWING_KIND(ReadSettled, read_settled);
LAPWING_KIND(PlanOption, plan);
LAPWING_KIND(TestKind, test);
LAPWING_KIND(Tag, tag);
LAPWING_KIND(Oiled, oiled);
LAPWING_KIND(ReadingFrom, reading_from);
LAPWING_KIND(Exit, exit);
LAPWING_KIND(Loudness, loudness);
LAPWING_KIND(ListenedBy, listened_by);
LAPWING_KIND(ValveSide, valve);
LAPWING_KIND(Symptom, symptom);
LAPWING_KIND(PrepareStep, prepare);
LAPWING_KIND(StepState, step_state);
LAPWING_KIND(EngineHeat, heat);
LAPWING_KIND(Throttle, throttle);
LAPWING_KIND(Induction, induction);
LAPWING_KIND(CrankedBy, cranked_by);
LAPWING_KIND(CrankHeldBy, crank_held_by);
LAPWING_KIND(OwnerAnswer, owner_answer);
LAPWING_KIND(TesterKind, tester);
LAPWING_KIND(CheckValveAt, check_valve_at);
LAPWING_KIND(CheckValveCore, check_valve_core);
LAPWING_KIND(AdapterSeal, adapter_seal);
LAPWING_KIND(AccuracyScheme, accuracy);
LAPWING_KIND(TesterCheckKind, tester_check);
LAPWING_KIND(CheckResult, check_result);
LAPWING_KIND(Path, path);
LAPWING_KIND(BasisKind, basis);
LAPWING_KIND(State, state);
LAPWING_KIND(Action, action);

#undef LAPWING_KIND

template <class Enum>
Word word_of(Enum value) {
    std::string code(KindName<Enum>::value);
    code += ':';
    code += word(value);
    return Word{std::move(code)};
}

}  // namespace lapwing::findings
