// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/app/harness/phone.h"

namespace lapwing::test {

/// What a person does again and again, by touch. Each is false with a reason in why() when something was not
/// there.
class Errands {
public:
    explicit Errands(Phone& phone) : phone_(phone) {}

    /// From the list of engines to the new engine's card.
    bool add_engine(const QString& name, int cylinders);
    /// From the list of engines to the list of engines. `kind` is the model's word, `unit` the file symbol.
    bool add_tester(const QString& kind, const QString& name, const QString& scale, const QString& unit);
    /// From an engine's card to its new session.
    bool new_session();
    /// In a session: which tester is used for "gauge" or "leak_down" (keys of the visit's form).
    bool use_tester(const QString& key, const QString& name);
    /// On an engine's card: one line of a section that is folded or not.
    bool card_line(const QString& section, const QString& key, const QString& text, const QString& unit = {});
    /// From a session to the pad of a test; reads the cautions.
    /// Puts away what lies over a pad that was opened: reads on to the last caution, and names no tester.
    bool free_pad();
    bool open_pad(const QString& test);
    /// Types the digits, touches Keep, and waits for the tick.
    bool keep(const QString& digits);
    /// A field of the pad: touches it and types.
    bool field(const QString& key, const QString& digits);
    bool back();
    bool back_to(const QString& page);
    /// Goes to Settings and chooses the unit that readings and findings are shown in.
    bool show_pressures_in(const QString& unit);
    /// From Findings or a session to Hand over, and the report made there. Empty when there is none.
    QString make_report();

    [[nodiscard]] QString why() const { return why_; }

    /// The one engine and its newest session.
    [[nodiscard]] std::optional<Engine> engine();
    [[nodiscard]] std::optional<Visit> visit();

private:
    bool failed(const QString& where);

    Phone& phone_;
    QString why_;
};

/// As if cautions were read and the question for a tester was answered in this session.
void nothing_over_pads(Phone& phone, SessionId session);
/// A session of a twin whose cautions were read, put there without the interface. Its id.
QString twin_ready_to_test(Phone& phone);

/// The text of a PDF, column by column as a person reads the page. Empty when pdftotext is not there.
QString text_of_pdf(const QString& file);

}  // namespace lapwing::test
