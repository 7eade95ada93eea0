// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/blocks.h"

#include <QPainter>
#include <algorithm>

#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr double gutter = mm(4);
constexpr double line_gap = mm(0.7);

Style sized(const Style& style, const Flow& flow) {
    return styles::scaled(style, flow.type());
}

/// Of the widest name.
double widest_name(const Wording& wording, const std::vector<const report::Facts*>& lists,
                   const Style& style) {
    double widest = 0.0;
    for (const report::Facts* facts : lists)
        for (const report::Fact& fact : facts->facts)
            widest = std::max(widest, width_of(wording.text(fact.name), style) + mm(2));
    return widest;
}

}  // namespace

QString cylinder_title(const Wording& wording, int number) {
    return text_of(report::Label::cylinder) + u' ' + wording.formatter().locale().toString(number);
}

Pieces state_pieces(const Wording& wording, findings::State state, const Style& style, double width) {
    const double mark = style.size * 0.82;
    const double indent = style.size * 1.25;
    Pieces pieces = typeset(wording.formatter().name(state), style, width - indent);
    for (Piece& piece : pieces)
        piece.draw = [draw = piece.draw, first = &piece == &pieces.front(), height = piece.height, mark,
                      indent, state](QPainter& painter, QPointF at) {
            if (first)
                charts::paint_state_mark(painter, QRectF(at.x(), at.y() + (height - mark) / 2.0, mark, mark),
                                         state, styles::bore);
            draw(painter, at + QPointF(indent, 0.0));
        };
    return pieces;
}

/// Two facts to a line; one that needs more room, or has nothing beside it, has a line of its own. All values
/// stand below each other.
void put(Flow& flow, const Wording& wording, const report::Facts& facts,
         const std::vector<const report::Facts*>& beside) {
    const Style label = sized(styles::label, flow);
    const Style body = sized(styles::body, flow);
    const double half = (flow.width() - gutter) / 2.0;
    const double widest = widest_name(wording, beside, label);
    constexpr std::size_t most_name_lines = 2;
    const std::size_t most_lines = flow.in_columns() ? 1 : 2;
    double value_x = std::clamp(widest, half * 0.3, half * 0.6);
    const auto lines = [&](const QString& text, const Style& style, double width) {
        return typeset(text, style, width).size();
    };
    const auto fits = [&](const report::Fact& fact) {
        return lines(wording.text(fact.name), label, value_x - mm(1.5)) <= most_name_lines &&
               lines(wording.text(fact.value), body, half - value_x) <= most_lines;
    };
    const auto paired = [&](const std::vector<report::Fact>& all, std::size_t at) {
        return at + 1 < all.size() && fits(all[at]) && fits(all[at + 1]);
    };
    bool any = false;
    bool cramped = false;
    for (const report::Facts* list : beside)
        for (std::size_t at = 0; at < list->facts.size(); ++at) {
            any = any || paired(list->facts, at);
            cramped = cramped ||
                      lines(wording.text(list->facts[at].name), label, value_x - mm(1.5)) > most_name_lines;
        }
    if (!any || cramped) value_x = std::min(widest, flow.width() * 0.42);
    const double below = line_gap * flow.type();
    for (std::size_t at = 0; at < facts.facts.size(); ++at) {
        const bool two = paired(facts.facts, at);
        Row row{{}, 0.0, below};
        for (std::size_t i = at; i <= at + (two ? 1 : 0); ++i) {
            const double x = i == at ? 0.0 : half + gutter;
            const report::Fact& fact = facts.facts[i];
            row.boxes.push_back({x, typeset(wording.text(fact.name), label, value_x - mm(1.5))});
            row.boxes.push_back({x + value_x, typeset(wording.text(fact.value), body,
                                                      (two ? half : flow.width()) - value_x)});
        }
        flow.put(std::move(row));
        if (two) ++at;
    }
    flow.put({{{0.0, {gap(mm(0.8))}}}});
}

namespace {

/// What is said of one cylinder one after the other, or one sentence of none.
struct Paragraph {
    std::optional<int> cylinder;
    std::optional<findings::State> state;
    QString lead;
    QString text;
};

std::vector<Paragraph> paragraphs_of(const Wording& wording, const report::Sentences& sentences) {
    std::vector<Paragraph> out;
    for (const report::Sentence& sentence : sentences.sentences) {
        const QString text = wording.text(sentence.text);
        const bool same = !out.empty() && sentence.cylinder && out.back().cylinder == sentence.cylinder;
        const bool on = sentences.run_on && !out.empty() && !sentence.cylinder;
        if ((same || on) && !sentence.part && !sentence.state && !out.back().state) {
            out.back().text += u' ' + text;
            continue;
        }
        QString lead;
        // A sentence that names its cylinder at its beginning, perhaps behind an article, needs no name
        // before it.
        constexpr qsizetype article = 4;
        if (sentence.cylinder && !same)
            if (const QString title = cylinder_title(wording, *sentence.cylinder);
                !text.left(title.size() + article).contains(title, Qt::CaseInsensitive))
                lead = title;
        if (sentence.part)
            lead += (lead.isEmpty() ? QString() : QStringLiteral(" · ")) + text_of(*sentence.part);
        out.push_back({sentence.cylinder, sentence.state, std::move(lead), text});
    }
    return out;
}

/// A long paragraph, to be parted where a column ends, but never to a single line.
void put_parted(Flow& flow, Pieces lines, double below) {
    const auto end = lines.end() - 2;
    auto from = lines.begin();
    for (auto to = from + 2; to != end; from = to++)
        flow.put({{{0.0, Pieces(from, to)}}});
    flow.put({{{0.0, Pieces(from, end)}}});
    flow.put({{{0.0, Pieces(end, lines.end())}}, 0.0, below});
}

}  // namespace

void put(Flow& flow, const Wording& wording, const report::Sentences& sentences, bool leading) {
    // Across the page, what explains a table is no reading of its own.
    const bool explains = !flow.in_columns() && std::ranges::all_of(sentences.sentences, [](const auto& one) {
        return std::holds_alternative<report::Label>(one.text) && !one.state;
    });
    const Style body = sized(explains ? styles::small : styles::body, flow);
    const double mark_width = mm(25) * flow.type();
    const auto paragraphs = paragraphs_of(wording, sentences);
    for (const Paragraph& one : paragraphs) {
        Row row{{}, 0.0, mm(1.1) * flow.type()};
        double x = 0.0;
        if (one.state) {
            row.boxes.push_back(
                {x, state_pieces(wording, *one.state, sized(styles::body_bold, flow), mark_width - mm(2))});
            x += mark_width;
        }
        constexpr std::size_t long_lines = 5;
        Pieces lines = typeset(one.lead, one.text, body, flow.width() - x);
        const bool last_two = paragraphs.size() > 1 && &one == &paragraphs[paragraphs.size() - 2];
        if (flow.in_columns() && !one.state && lines.size() > long_lines) {
            put_parted(flow, std::move(lines), row.below);
            continue;
        }
        row.boxes.push_back({x, std::move(lines)});
        if ((last_two && flow.in_columns()) || (leading && &one == &paragraphs.back()))
            flow.put_with_next(std::move(row));
        else
            flow.put(std::move(row));
    }
}

void put(Flow& flow, const Wording& wording, const report::Verdicts& verdicts) {
    const bool named =
        std::ranges::any_of(verdicts.verdicts, [](const auto& verdict) { return !verdict.name.empty(); });
    const double state_x = named ? mm(31) : mm(12);
    const double text_x = state_x + mm(28);
    // Sets the small type on the numeral's line.
    const double drop = (styles::numeral.size - styles::body.size) * 0.95;
    const auto dropped = [&](Pieces pieces) {
        pieces.insert(pieces.begin(), gap(drop));
        return pieces;
    };
    for (const report::Verdict& verdict : verdicts.verdicts) {
        Row row{{}, mm(0.3), mm(0.8), true};
        row.boxes.push_back(
            {0.0, typeset(wording.formatter().locale().toString(verdict.number), styles::numeral, mm(9))});
        row.boxes.push_back(
            {mm(10), dropped(typeset(QString::fromStdString(verdict.name), styles::body, mm(20)))});
        if (verdict.state)
            row.boxes.push_back(
                {state_x, dropped(state_pieces(wording, *verdict.state, styles::body_bold, mm(26)))});
        row.boxes.push_back(
            {text_x, dropped(typeset(wording.text(verdict.headline), styles::body, flow.width() - text_x))});
        flow.put(std::move(row));
    }
    flow.put({{{0.0, {gap(mm(1))}}}});
}

}  // namespace lapwing::print
