// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "qml/print/blocks.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

using report::Label;

constexpr double between_columns = mm(6);

/// How a section stands on the page. Sections of one group that follow each other share their columns.
struct Manner {
    int group = 0;  ///< 0: across the page
    double type = 1.0;
    int columns = 2;
};

constexpr double next_type = 0.96;
constexpr double evidence_type = 0.89;
constexpr double small_print_type = 0.83;

std::size_t most_visits(const report::Section& section) {
    std::size_t most = 0;
    for (const report::Block& block : section.blocks)
        if (const auto* series = std::get_if<report::Series>(&block))
            most = std::max(most, series->visits.size());
    return most;
}

Manner manner_of(const report::Section& section) {
    switch (section.heading) {
        case Label::worth_doing_next:
        case Label::cautions:
        case Label::where_it_leaks:
        case Label::weakened:
        case Label::limits:
            return {1, next_type};
        case Label::earlier_visits:
            return {most_visits(section) > 4 ? 0 : 4, evidence_type};
        case Label::remarks:
        case Label::why:
        case Label::contradictions:
        case Label::clearances:
        case Label::crankcase:
        case Label::conditions:
            return {5, evidence_type};
        case Label::exits:
            return {7, evidence_type, 1};
        case Label::testers:
            return {8, evidence_type, 1};
        case Label::not_done:
        case Label::engine:
        case Label::uncertainty:
        case Label::worked:
        case Label::sources:
            return {6, small_print_type};
        default:
            return {};
    }
}

/// How much of a page a section may take and still be kept in one piece: halves of it under another section's
/// head are read as that one's. 0: what is long, and reads as well in pieces.
double whole_up_to(Label heading) {
    switch (heading) {
        case Label::why:
        case Label::worked:
        case Label::sources:
        case Label::photos:
        case Label::earlier_visits:  // its charts are kept with their tables
            return 0.0;
        case Label::readings:
            return 0.45;
        case Label::where_it_leaks:
            return 0.25;
        case Label::engine:
            return 0.5;
        default:
            return 0.33;
    }
}

void put_heading(Flow& flow, const QString& text) {
    const Style style = styles::scaled(styles::heading, flow.type());
    flow.put_with_next(
        {{{0.0, typeset(text, style, flow.width())}}, mm(3.8) * flow.type(), mm(0.8) * flow.type(), true});
    flow.put_with_next({{{0.0, {gap(mm(1.1) * flow.type())}}}});
}

/// Blocks of one kind that follow each other, put together once another kind follows.
template <class Block>
class Run {
public:
    bool take(const report::Block& block) {
        const auto* one = std::get_if<Block>(&block);
        if (one) blocks_.push_back(one);
        return one != nullptr;
    }
    std::vector<const Block*> end() { return std::exchange(blocks_, {}); }

private:
    std::vector<const Block*> blocks_;
};

void put_blocks(Flow& flow, Means& means, const std::vector<report::Block>& blocks) {
    Run<report::Bores> bores;
    Run<report::Worked> worked;
    const auto end_runs = [&] {
        if (const auto strips = bores.end(); !strips.empty()) put(flow, means, strips);
        if (const auto numbers = worked.end(); !numbers.empty()) put(flow, means.wording, numbers);
    };
    bool drawing = false;
    const auto next_is = [&]<class Next>(const report::Block& block, const Next*) {
        return &block != &blocks.back() && std::holds_alternative<Next>(*(&block + 1));
    };
    // What one section says in several lists stands below each other.
    std::vector<const report::Facts*> facts;
    for (const report::Block& block : blocks)
        if (const auto* one = std::get_if<report::Facts>(&block)) facts.push_back(one);
    for (const report::Block& block : blocks) {
        if (bores.take(block) || worked.take(block)) continue;
        end_runs();
        if (std::holds_alternative<report::Chart>(block)) {
            flow.begin_whole();
            drawing = true;
        }
        const bool before_shares =
            &block != &blocks.back() && std::holds_alternative<report::Shares>(*(&block + 1));
        std::visit(
            [&]<class Block>(const Block& one) {
                if constexpr (std::is_same_v<Block, report::Photos>)
                    put(flow, means, one);
                else if constexpr (std::is_same_v<Block, report::Sentences>)
                    put(flow, means.wording, one, before_shares);
                else if constexpr (std::is_same_v<Block, report::Facts>)
                    put(flow, means.wording, one, facts);
                else if constexpr (std::is_same_v<Block, report::Series>)
                    put(flow, means.wording, one, drawing);
                else if constexpr (!std::is_same_v<Block, report::Bores> &&
                                   !std::is_same_v<Block, report::Worked>)
                    put(flow, means.wording, one);
            },
            block);
        // A chart, the table of what it draws, and at the end what its signs mean are one.
        if (drawing && !next_is(block, static_cast<const report::Series*>(nullptr)) &&
            !next_is(block, static_cast<const report::Sentences*>(nullptr))) {
            flow.end_whole();
            drawing = false;
        }
    }
    end_runs();
}

}  // namespace

namespace {

/// Of a page, about.
constexpr double chart_with_table = 0.36;
constexpr double said_above = 0.09;
constexpr double room_for_small_print = 0.2;

/// What is said of the history stands across the page, so that its charts can stand side by side below it.
std::size_t said_first(const report::Section& section) {
    if (section.heading != Label::earlier_visits) return 0;
    const auto drawn = std::ranges::find_if(section.blocks, [](const report::Block& block) {
        return !std::holds_alternative<report::Sentences>(block);
    });
    return static_cast<std::size_t>(drawn - section.blocks.begin());
}

/// So that charts don't begin a page of their own under nothing, and leave the one before half blank.
double room_for(const report::Section& section) {
    if (section.heading != Label::earlier_visits) return 0.0;
    return chart_with_table + (said_first(section) > 0 ? said_above : 0.0);
}

/// Puts sections one after the other; those of one group share their columns.
class Putting {
public:
    Putting(Flow& flow, Means& means) : flow_(flow), means_(means) {}

    void put(const report::Section& section) {
        const Manner manner = manner_of(section);
        end_group(manner.group);
        // Charts are kept whole: where they don't fit any more, what follows fills the page first.
        if (room() < room_for(section)) {
            waiting_ = &section;
            return;
        }
        if (waiting_ && group_ == 0 && room() >= room_for(*waiting_)) put_waiting();
        set(section, manner);
    }

    void end() {
        end_group(0);
        if (waiting_) put_waiting();
        end_group(0);
    }

private:
    [[nodiscard]] double room() const { return 1.0 - flow_.last_page_share(); }

    void end_group(int next) {
        if (group_ != 0 && group_ != next) {
            flow_.end_columns();
            group_ = 0;
        }
    }

    void put_waiting() {
        const report::Section& section = *std::exchange(waiting_, nullptr);
        set(section, manner_of(section));
        end_group(0);
    }

    void set(const report::Section& section, const Manner& manner) {
        const auto drawn = section.blocks.begin() + static_cast<std::ptrdiff_t>(said_first(section));
        const bool said = drawn != section.blocks.begin();
        // The heads of charts side by side stand on one line, so that the section's own one stands across.
        const bool across = said || (section.heading == Label::earlier_visits && manner.group != 0);
        if (across) {
            flow_.keep_room(room_for(section));
            put_heading(flow_, text_of(section.heading));
            put_blocks(flow_, means_, {section.blocks.begin(), drawn});
            if (!said) flow_.put({{{0.0, {gap(0.0)}}}});
        }
        // One line of it at a page's foot, and nothing beside it, looks left behind.
        if (manner.group != group_ && manner.type == small_print_type) flow_.keep_room(room_for_small_print);
        if (manner.group != group_ && manner.group != 0)
            flow_.begin_columns(manner.columns, between_columns, manner.type);
        group_ = manner.group;
        const double most = whole_up_to(section.heading);
        if (most > 0.0) flow_.begin_whole(most);
        if (!across) put_heading(flow_, text_of(section.heading));
        put_blocks(flow_, means_, {drawn, section.blocks.end()});
        flow_.end_whole();
    }

    Flow& flow_;
    Means& means_;
    int group_ = 0;
    const report::Section* waiting_ = nullptr;
};

}  // namespace

void put_sections(Flow& flow, Means& means, const std::vector<report::Section>& sections) {
    Putting putting(flow, means);
    for (const report::Section& section : sections)
        putting.put(section);
    putting.end();
}

}  // namespace lapwing::print
