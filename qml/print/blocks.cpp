// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/blocks.h"

#include <QPainter>
#include <algorithm>

#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr double gutter = mm(4);
constexpr double line_gap = mm(0.9);

void append(Pieces& to, Pieces more) {
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

QString cylinder_title(const Wording& wording, int number) {
    return text_of(report::Label::cylinder) + u' ' + wording.formatter().locale().toString(number);
}

}  // namespace

Pieces state_pieces(const Wording& wording, findings::State state, const Style& style, double width) {
    const double mark = style.size * 0.82;
    const double indent = style.size * 1.25;
    Pieces pieces = typeset(wording.formatter().name(state), style, width - indent);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        pieces[i].draw = [draw = pieces[i].draw, first = i == 0, height = pieces[i].height, mark, indent,
                          state](QPainter& painter, QPointF at) {
            if (first)
                charts::paint_state_mark(painter, QRectF(at.x(), at.y() + (height - mark) / 2.0, mark, mark),
                                         state, styles::bore);
            draw(painter, at + QPointF(indent, 0.0));
        };
    return pieces;
}

void put_heading(Flow& flow, const QString& text) {
    flow.put_with_next({{{0.0, typeset(text, styles::heading, flow.width())}}, mm(5.5), mm(1.2), true});
    flow.put_with_next({{{0.0, {gap(mm(1.2))}}}});
}

void put(Flow& flow, const Wording& wording, const report::Facts& facts) {
    const double half = (flow.width() - gutter) / 2.0;
    const double name_width = mm(33);
    Row pair;
    const auto flush = [&] {
        if (!pair.boxes.empty()) flow.put(std::move(pair));
        pair = Row{{}, 0.0, line_gap};
    };
    flush();
    for (const report::Fact& fact : facts.facts) {
        Pieces name = typeset(wording.text(fact.name), styles::label, name_width - mm(2));
        const QString value = wording.text(fact.value);
        Pieces beside = typeset(value, styles::body, half - name_width);
        const bool wide = beside.size() > 2;
        if (wide) {
            flush();
            beside = typeset(value, styles::body, flow.width() - name_width);
        }
        const double x = pair.boxes.empty() ? 0.0 : half + gutter;
        pair.boxes.push_back({x, std::move(name)});
        pair.boxes.push_back({x + name_width, std::move(beside)});
        if (wide || pair.boxes.size() == 4) flush();
    }
    flush();
}

void put(Flow& flow, const Wording& wording, const report::Sentences& sentences) {
    const bool numbered = std::ranges::any_of(
        sentences.sentences, [](const auto& sentence) { return sentence.cylinder.has_value(); });
    const double mark_width = mm(25);
    const double indent = numbered ? mm(24) : 0.0;
    std::optional<int> last;
    for (const report::Sentence& sentence : sentences.sentences) {
        Row row{{}, 0.0, mm(1.2)};
        double x = indent;
        if (sentence.cylinder && sentence.cylinder != last)
            row.boxes.push_back({0.0, typeset(cylinder_title(wording, *sentence.cylinder), styles::body_bold,
                                              indent - mm(1))});
        last = sentence.cylinder;
        if (sentence.state) {
            row.boxes.push_back(
                {x, state_pieces(wording, *sentence.state, styles::body_bold, mark_width - mm(2))});
            x += mark_width;
        }
        row.boxes.push_back({x, typeset(wording.text(sentence.text), styles::body, flow.width() - x)});
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
        Row row{{}, mm(0.6), mm(1.6), true};
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
}

namespace {

Pieces worked_pieces(const Wording& wording, const report::Worked& worked, double width) {
    const QStringList lines = wording.formatter().lines(worked.derivation);
    Pieces pieces;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        QString line = lines[i];
        if (i == 0 && worked.cylinder)
            line += QStringLiteral(" (%1)").arg(cylinder_title(wording, *worked.cylinder));
        append(pieces, typeset(line, i == 0 ? styles::body_bold : styles::small, width));
    }
    return pieces;
}

}  // namespace

void put(Flow& flow, const Wording& wording, const std::vector<const report::Worked*>& worked) {
    const double half = (flow.width() - gutter) / 2.0;
    for (std::size_t i = 0; i < worked.size(); i += 2) {
        Row row{{{0.0, worked_pieces(wording, *worked[i], half)}}, 0.0, mm(2.6)};
        if (i + 1 < worked.size())
            row.boxes.push_back({half + gutter, worked_pieces(wording, *worked[i + 1], half)});
        flow.put(std::move(row));
    }
}

namespace {

/// Blocks of one kind that follow each other, put together once another kind follows.
template <class Block>
class Run {
public:
    bool take(const report::Block& block) {
        const auto* one = std::get_if<Block>(&block);
        if (one) blocks_.push_back(one);
        return one != nullptr;
    }
    void end(Flow& flow, const Wording& wording) {
        if (!blocks_.empty()) put(flow, wording, std::exchange(blocks_, {}));
    }

private:
    std::vector<const Block*> blocks_;
};

}  // namespace

void put_blocks(Flow& flow, const Wording& wording, const std::vector<report::Block>& blocks) {
    Run<report::Bores> bores;
    Run<report::Worked> worked;
    Run<report::Chart> charts;
    for (const report::Block& block : blocks) {
        if (bores.take(block) || worked.take(block) || charts.take(block)) continue;
        bores.end(flow, wording);
        worked.end(flow, wording);
        charts.end(flow, wording);
        std::visit(
            [&]<class Block>(const Block& one) {
                if constexpr (!std::is_same_v<Block, report::Bores> &&
                              !std::is_same_v<Block, report::Worked> && !std::is_same_v<Block, report::Chart>)
                    put(flow, wording, one);
            },
            block);
    }
    bores.end(flow, wording);
    worked.end(flow, wording);
    charts.end(flow, wording);
}

}  // namespace lapwing::print
