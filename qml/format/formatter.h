// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/findings/derivation.h"
#include "core/findings/message.h"
#include "core/findings/word_kinds.h"
#include "core/units/typed.h"

/// Turns what the core says into text: the user's language, locale and units. Knows QtCore only, so that the
/// command-line tool can speak too.
namespace lapwing::format {

/// The units that a user has chosen to see.
struct Choice {
    Unit<PressureTag> pressure = units::bar;
    bool inches = false;  ///< lengths in inches and feet, clearances in thou
    bool fahrenheit = false;
};

class Formatter {
public:
    explicit Formatter(Choice choice = {}, const QLocale& locale = QLocale(QLocale::English));

    [[nodiscard]] const Choice& choice() const { return choice_; }
    [[nodiscard]] const QLocale& locale() const { return locale_; }

    /// A whole sentence.
    [[nodiscard]] QString text(const findings::Message& message) const;
    /// "36 % ± 3": digits as its uncertainty allows, or as typed.
    [[nodiscard]] QString text(const findings::Figure& figure) const;
    /// The same without the uncertainty: "36 %".
    [[nodiscard]] QString valueText(const findings::Figure& figure) const;
    /// Anything that a sentence or a derivation carries.
    [[nodiscard]] QString text(const findings::Arg& arg) const;
    /// Only the digits, for a large readout; its unit is unitOf(figure.dimension).
    [[nodiscard]] QString digits(const findings::Figure& figure) const;
    /// Only the uncertainty, "± 3"; empty when there is none.
    [[nodiscard]] QString uncertainty(const findings::Figure& figure) const;
    [[nodiscard]] QString unitOf(findings::Dimension dimension) const;

    /// "Where does this come from": name of the number, formula in words, in symbols, inputs, source, notes;
    /// one line each.
    [[nodiscard]] QStringList lines(const findings::Derivation& derivation) const;
    [[nodiscard]] QString text(const findings::Derivation& derivation) const;
    /// How the number is made, in words; empty where its name says it.
    [[nodiscard]] QString inWords(const findings::Derivation& derivation) const;
    /// "62 %", and with its name before it.
    [[nodiscard]] QString doubtShare(const findings::DoubtShare& of) const;
    [[nodiscard]] QString doubt(const findings::DoubtShare& of) const;
    /// "Its ± comes from", or of a range what opens it.
    [[nodiscard]] QString doubtsTitle(const findings::Derivation& derivation) const;
    /// That and what it is, in one line; shares under `least` left out. Empty where nothing is known.
    [[nodiscard]] QString doubts(const findings::Derivation& derivation, double least = 0.0) const;

    /// The error's sentence in the user's language, or in English where there is no translation of it.
    [[nodiscard]] QString text(const Error& error) const;

    /// The trade word for a word of the core: name(Exit::joint) is "head gasket".
    [[nodiscard]] QString text(const findings::Word& word) const;
    template <class Enum>
    [[nodiscard]] QString name(Enum value) const {
        return text(findings::word_of(value));
    }
    /// The same word at the head of a page or card: "Dry test".
    template <class Enum>
    [[nodiscard]] QString heading(Enum value) const {
        return headed(name(value));
    }
    /// With its first letter as a capital, as the language writes it.
    [[nodiscard]] QString headed(const QString& words) const;
    /// Whether a text for this code exists (for tests).
    [[nodiscard]] static bool knowsMessage(const std::string& code);
    [[nodiscard]] static bool knowsWord(const std::string& code);

    /// "2 and 3"; "1, 2 and 4".
    [[nodiscard]] QString list(const std::vector<int>& cylinders) const;

    /// A value as typed, digits with the locale's decimal mark: "6,4 bar". Never converted.
    template <class Tag>
    [[nodiscard]] QString typed(const Typed<Tag>& value) const {
        return typedText(value.digits(), value.unit().display());
    }

    [[nodiscard]] QString shortDate(
        Timestamp at) const;  ///< "14 Mar 2026" in the locale's order, where it was noted
    [[nodiscard]] QString shortDateTime(Timestamp at) const;

    /// Text of assets/reference (cautions, prepare reasons) in the user's language.
    [[nodiscard]] QString reference(const std::string& english) const;

private:
    [[nodiscard]] bool opensWithNoDifference(const findings::Message& message) const;
    /// Whether the sentence of that code ends with an error's, in English.
    [[nodiscard]] static bool tellsAnError(std::string_view code);
    [[nodiscard]] QString error(const std::string& english) const;
    [[nodiscard]] QString typedText(const std::string& digits, std::string_view unit) const;

    Choice choice_;
    QLocale locale_;
};

}  // namespace lapwing::format
