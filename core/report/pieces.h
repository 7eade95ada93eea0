// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/word_kinds.h"
#include "core/report/report.h"

/// Small builders that the sections share.
namespace lapwing::report {

/// A value as it was typed.
template <class Tag>
findings::Figure as_typed(findings::Dimension dimension, const Typed<Tag>& typed) {
    return {dimension, typed.si(), std::nullopt, typed.digits(), std::string(typed.unit().symbol())};
}

inline findings::Figure gauge_figure(double pa) {
    return {findings::Dimension::gauge_pressure, pa, {}, {}, {}};
}

inline void add(Facts& to, Label name, Line value) {
    if (!value.empty()) to.facts.push_back({name, std::move(value)});
}

inline void add_words(Facts& to, Label name, const std::string& words) {
    if (!words.empty()) to.facts.push_back({name, {OwnWords{words}}});
}

template <class Tag>
void add(Facts& to, Label name, findings::Dimension dimension, const std::optional<Typed<Tag>>& typed) {
    if (typed) to.facts.push_back({name, {as_typed(dimension, *typed)}});
}

/// Adds the word unless it is the enumeration's "unknown", which is always its first.
template <class Enum>
void add_known(Facts& to, Label name, Enum value) {
    if (value != Enum{}) to.facts.push_back({name, {findings::word_of(value)}});
}

/// "manual, page 7-12"
template <class T>
Line with_origin(Line value, const Sourced<T>& sourced) {
    if (sourced.origin != Origin::unknown) value.emplace_back(findings::word_of(sourced.origin));
    if (!sourced.note.empty()) value.emplace_back(OwnWords{sourced.note});
    return value;
}

inline Cell cell(Line line) {
    return {{std::move(line)}, std::nullopt};
}

/// A reading with nothing to judge it by has no state; it isn't "not measured".
inline std::optional<findings::State> judged(findings::State state) {
    return state == findings::State::none ? std::nullopt : std::optional(state);
}

/// The newest earlier visit with readings; null where there is none.
inline const Visit* visit_before(const Dossier& dossier, const Visit& visit) {
    const Visit* out = nullptr;
    for (const Visit& other : dossier.visits)
        if (other.session.opened_at < visit.session.opened_at && !other.readings.empty() &&
            (!out || other.session.opened_at > out->session.opened_at))
            out = &other;
    return out;
}

template <class Block>
void add_block(Section& to, Block block, bool worth_showing) {
    if (worth_showing) to.blocks.emplace_back(std::move(block));
}

}  // namespace lapwing::report
