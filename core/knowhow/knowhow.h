// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/findings/reference.h"

/// The cards that say how a step of the job is done, with their pictures. All texts are English, as in
/// assets/knowhow; the language of the person is qml/format's business.
namespace lapwing::knowhow {

/// A line or surface of a picture.
struct Stroke {
    std::string look;  ///< how it is drawn: "outline", "metal", "air" ... (see stroke_looks)
    std::string path;  ///< in the words of qml/components/line_drawing.h, units of the picture
};

/// A numbered place in a picture; its number is its rank from 1.
struct Mark {
    double x = 0.0, y = 0.0;  ///< units of the picture
    std::string text;         ///< what is there
};

struct Picture {
    std::string id;
    std::string title;
    std::string description;           ///< the picture in words, for who can't see it
    double width = 0.0, height = 0.0;  ///< its size in units of its own, positive
    std::vector<Stroke> strokes;       ///< painted in this order; at least one
    std::vector<Mark> marks;
};

/// What is seen, heard or read, and what it means.
struct Sign {
    std::string sign;
    std::string means;
};

/// What goes wrong, and what it does to the reading or to the person.
struct Slip {
    std::string slip;
    std::string then;
};

/// Where a claim of a card comes from.
struct Source {
    std::string what;  ///< the claim, in a few words
    findings::BasisKind kind = findings::BasisKind::common_practice;
    std::string name;  ///< of the publication; empty unless it is published
};

/// How one step of the job is done.
struct Card {
    std::string id;
    std::string title;
    std::string brief;                  ///< one line for a list
    std::vector<std::string> why;       ///< paragraphs, at least one
    std::vector<std::string> how;       ///< steps in their order, at least one
    std::vector<Sign> signs;            ///< may be empty
    std::vector<Slip> slips;            ///< at least one
    std::vector<std::string> pictures;  ///< ids of pictures
    std::vector<std::string> cautions;  ///< ids of findings::Caution
    std::vector<Source> sources;        ///< at least one
};

struct Group {
    std::string title;
    std::vector<Card> cards;  ///< in the order they are read
};

struct Knowhow {
    std::vector<Group> groups;
    std::vector<Picture> pictures;

    [[nodiscard]] const Card* card(std::string_view id) const;
    /// The card after this one, over the ends of groups; null after the last and for an id that is not there.
    [[nodiscard]] const Card* after(std::string_view id) const;
    [[nodiscard]] const Picture* picture(std::string_view id) const;
};

/// The files' texts, one JSON document each.
struct KnowhowTexts {
    std::string_view job, special, numbers, pictures;
};

/// As built into this program from assets/knowhow.
KnowhowTexts built_in_texts();

/// The caution of that id; null where there is none.
const findings::Caution* caution_of(const findings::Reference& reference, std::string_view id);

/// The looks that a stroke may have.
const std::vector<std::string_view>& stroke_looks();

/// Reads and checks the cards: every picture and caution that one names exists (`reference` has the
/// cautions), ids are there once, and no card lacks its why, how, slips or sources. Fails with
/// "knowhow.malformed", naming file and place.
Result<Knowhow> read_knowhow(const KnowhowTexts& texts, const findings::Reference& reference);

/// Takes about a millisecond: for the page that shows cards, not for the start of the program.
Result<Knowhow> built_in_knowhow(const findings::Reference& reference);

}  // namespace lapwing::knowhow
