// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <QGuiApplication>

#include "core/report/make_report.h"
#include "platform/cli/dossier_file.h"
#include "platform/cli/file_units.h"
#include "platform/cli/verbs.h"
#include "qml/print/pdf.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const auto file = WithPhotos::read(arguments.operand(0));
    if (!file) return tl::unexpected(file.error());
    const Dossier* dossier = &file->dossier();
    const auto at = read_visit(arguments, *dossier);
    if (!at) return tl::unexpected(at.error());
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});

    const Visit& visit = dossier->visits[*at];
    report::Options options;
    options.owner_contact = arguments.has("--owner-contact");
    options.owner_name = options.owner_contact || arguments.has("--owner");
    options.made_at = SystemClock{}.now();
    options.appendix = arguments.has("--appendix");
    const auto leaks = odds::where_it_leaks(*dossier, visit, *reference);
    if (leaks) options.leaks = &*leaks;
    const auto report = report::make_report(*dossier, visit, findings::find(*dossier, visit, *reference),
                                            *reference, options);

    // The window system's remarks about a machine without a screen are no concern of whoever prints.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    qputenv("QT_QPA_PLATFORM", "offscreen");
    int count = 1;
    char name[] = "lapwing-cli";
    char* words[] = {name, nullptr};
    const QGuiApplication app(count, words);
    const auto written =
        print::write_pdf(report, format::Formatter(units_of(visit)), arguments.text("-o"),
                         arguments.has("--letter") ? print::PageSize::letter : print::PageSize::a4,
                         [&file](const std::string& sha256) { return file->photo(sha256); });
    if (!written && written.error().code.starts_with("file.")) return wrong_use(written.error().english);
    if (!written) return tl::unexpected(Failure{Exit::internal, written.error().english});
    return Exit::done;
}

}  // namespace

Verb report_verb() {
    return {
        "report",
        "the report of one visit as a PDF",
        {"FILE"},
        {{"-o", "OUT.pdf", "where to", true},
         visit_option,
         {"--owner", "", "put the owner's name in; without it the report names nobody"},
         {"--owner-contact", "", "the owner's name and contact, if the file has them"},
         {"--appendix", "", "with formulas, sources and other engines' rules, for a mentor"},
         {"--letter", "", "US letter paper instead of A4"}},
        "FILE is a session file or a session.json. Pressures are shown in the unit that they were typed in.",
        run};
}

}  // namespace lapwing::cli
