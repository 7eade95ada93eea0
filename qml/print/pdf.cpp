// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/print/pdf.h"

#include <fmt/format.h>

#include <QBuffer>
#include <QGuiApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

#include "core/base/atomic_file.h"
#include "qml/fonts/typeface.h"
#include "qml/print/blocks.h"
#include "qml/print/language.h"
#include "qml/print/styles.h"

namespace lapwing::print {
namespace {

constexpr double side_margin = mm(15);
constexpr double head_margin = mm(14);
constexpr double foot_margin = mm(13);

struct Furniture {
    QString left;   ///< engine and session
    QString right;  ///< job number
    QString made;
};

QString joined(const QStringList& parts) {
    QStringList present = parts;
    present.removeAll(QString());
    return present.join(QStringLiteral(" · "));
}

QString own(const std::string& words) {
    return QString::fromStdString(words).trimmed();
}

Furniture furniture_of(const report::Report& report, const Wording& wording) {
    const QString session = wording.formatter().shortDate(report.session_at);
    Furniture furniture;
    furniture.left = joined({own(report.engine), session, own(report.session)});
    if (!report.job_number.empty())
        furniture.right = text_of(report::Label::job_number) + u' ' + own(report.job_number);
    furniture.made = joined({QStringLiteral("Lapwing"), text_of(report::Label::made) + u' ' +
                                                            wording.formatter().shortDate(report.made_at)});
    return furniture;
}

void put_title(Flow& flow, const report::Report& report, const Wording& wording) {
    flow.put({{{0.0, typeset(own(report.engine), styles::title, flow.width())}}, 0.0, mm(0.5)});
    const QString below = joined({text_of(report::Label::sealing_test),
                                  wording.formatter().shortDate(report.session_at), own(report.session)});
    flow.put({{{0.0, typeset(below, styles::subtitle, flow.width())}}, 0.0, mm(2), true});
    flow.put({{{0.0, {gap(mm(1.6))}}}});
    put(flow, wording, report.head, {&report.head});
}

/// A text in one line, cut at its end where it would run into what stands beside it.
void line_at(QPainter& painter, const QString& text, Style style, double x, double y, double width) {
    QString shown = text;
    while (shown.size() > 1 && width_of(shown, style) > width) {
        shown.chop(shown.endsWith(u'…') ? 2 : 1);
        shown += u'…';
    }
    const Pieces pieces = typeset(shown, style, width);
    if (!pieces.empty()) pieces.front().draw(painter, {x, y});
}

void paint_furniture(QPainter& painter, const Furniture& furniture, const QSizeF& page, int number,
                     int count) {
    const double width = page.width() - 2 * side_margin;
    const double half = width / 2.0 - mm(3);
    if (number > 1) {
        line_at(painter, furniture.left, styles::running, side_margin, mm(8), width * 0.68);
        line_at(painter, furniture.right, styles::in(styles::running, Qt::AlignRight),
                side_margin + width * 0.7, mm(8), width * 0.3);
    }
    const double foot = page.height() - mm(11);
    line_at(painter, furniture.made, styles::running, side_margin, foot, half);
    const QString pages = text_of(report::Label::page_of).arg(number).arg(count);
    line_at(painter, pages, styles::in(styles::running, Qt::AlignRight), side_margin + width - half, foot,
            half);
}

/// "Lapwing 1.0, data 0a1b2c3d, working assumptions 12, seed 1": not for reading but for working it out
/// again, so in no language.
QString creator_of(const report::Basis& basis) {
    std::string out = "Lapwing " LAPWING_VERSION ", data " + basis.data;
    if (basis.odds)
        out += fmt::format(", working assumptions {}, seed {}", basis.odds->assumptions, basis.odds->seed);
    return QString::fromStdString(out);
}

void set_up(QPdfWriter& writer, const report::Report& report, const Wording& wording, PageSize size) {
    writer.setResolution(720);
    writer.setPageLayout(QPageLayout(QPageSize(size == PageSize::a4 ? QPageSize::A4 : QPageSize::Letter),
                                     QPageLayout::Portrait, QMarginsF()));
    writer.setTitle(
        joined({own(report.engine), wording.formatter().shortDate(report.session_at), own(report.session)}));
    writer.setCreator(creator_of(report.basis));
}

/// Everything in its place, on paper that is larger than the real one: set smaller, by as much.
Flow laid_out(const report::Report& report, const Wording& wording, const PhotoFile& photos,
              const QSizeF& page, double type) {
    Means means{wording, photos};
    Flow flow(QRectF(side_margin / type, head_margin / type, (page.width() - 2 * side_margin) / type,
                     (page.height() - head_margin - foot_margin) / type));
    put_title(flow, report, wording);
    put_sections(flow, means, report.sections);
    return flow;
}

/// Pages and the size that they are set at. A last page that would be hardly used is spared where setting all
/// of it a little smaller does that; where it doesn't, a little larger fills it better.
std::pair<Flow, double> fitted(const report::Report& report, const Wording& wording, const PhotoFile& photos,
                               const QSizeF& page) {
    constexpr double hardly_used = 0.5;
    constexpr double few_lines = 0.22;
    Flow flow = laid_out(report, wording, photos, page, 1.0);
    if (flow.page_count() == 1 || flow.last_page_share() > hardly_used) return {std::move(flow), 1.0};
    for (const double type : {0.975, 0.95})
        if (Flow smaller = laid_out(report, wording, photos, page, type);
            smaller.page_count() < flow.page_count())
            return {std::move(smaller), type};
    if (flow.last_page_share() > few_lines) return {std::move(flow), 1.0};
    for (const double type : {1.03, 1.06})
        if (Flow larger = laid_out(report, wording, photos, page, type);
            larger.page_count() == flow.page_count() && larger.last_page_share() > few_lines)
            return {std::move(larger), type};
    return {std::move(flow), 1.0};
}

Result<QByteArray> drawn(const report::Report& report, const format::Formatter& formatter, PageSize size,
                         const PhotoFile& photos) {
    if (!qGuiApp)
        return fail("print.no_window_system", "A report can be drawn only while Qt's graphics are running.");
    if (fonts::typeface().isEmpty())
        return fail("print.font",
                    "The report's typeface, B612, is missing from this program. Install it again.");

    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    const Wording wording(formatter);
    QPdfWriter writer(&buffer);
    set_up(writer, report, wording, size);
    const QSizeF page(writer.width(), writer.height());

    const auto [flow, type] = fitted(report, wording, photos, page);

    const Furniture furniture = furniture_of(report, wording);
    QPainter painter(&writer);
    for (int i = 0; i < flow.page_count(); ++i) {
        if (i > 0) writer.newPage();
        paint_furniture(painter, furniture, page, i + 1, flow.page_count());
        painter.save();
        painter.scale(type, type);
        flow.paint(painter, i);
        painter.restore();
    }
    painter.end();
    return in_language(buffer.data(), formatter.locale().bcp47Name().toLatin1());
}

}  // namespace

Status write_pdf(const report::Report& report, const format::Formatter& formatter, QIODevice& out,
                 PageSize size, const PhotoFile& photos) {
    const auto bytes = drawn(report, formatter, size, photos);
    if (!bytes) return tl::unexpected(bytes.error());
    if (out.write(*bytes) == bytes->size()) return {};
    return fail("print.write_device", "The report can't be written: {}. Choose another place or make room.",
                out.errorString().toStdString());
}

Status write_pdf(const report::Report& report, const format::Formatter& formatter,
                 const std::filesystem::path& file, PageSize size, const PhotoFile& photos) {
    const auto bytes = drawn(report, formatter, size, photos);
    if (!bytes) return tl::unexpected(bytes.error());
    return write_atomically(file, {bytes->constData(), static_cast<std::size_t>(bytes->size())});
}

}  // namespace lapwing::print
