// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <filesystem>

#include "core/base/result.h"
#include "core/report/report.h"
#include "qml/format/formatter.h"
#include "qml/print/photo_file.h"

class QIODevice;

namespace lapwing::print {

enum class PageSize { a4, letter };

/// Draws the report as a PDF, in the formatter's language and units. Needs a QGuiApplication, which may be an
/// offscreen one. Fails with "print.no_window_system" without one, "print.font" when the typeface is missing,
/// "print.write_device", or as write_atomically does when it can't be written; a file that was there before
/// then stays. A photo that `photos` doesn't know or that can't be read is a frame that says so.
Status write_pdf(const report::Report& report, const format::Formatter& formatter, QIODevice& out,
                 PageSize size = PageSize::a4, const PhotoFile& photos = {});
Status write_pdf(const report::Report& report, const format::Formatter& formatter,
                 const std::filesystem::path& file, PageSize size = PageSize::a4,
                 const PhotoFile& photos = {});

}  // namespace lapwing::print
