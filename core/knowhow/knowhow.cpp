// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/knowhow/knowhow.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <stdexcept>

namespace lapwing::knowhow {
namespace {

using nlohmann::json;

/// Thrown and caught in this file only: nlohmann throws as well.
struct Malformed : std::runtime_error {
    using std::runtime_error::runtime_error;
};

std::string text(const json& at, const char* key) {
    auto out = at.at(key).get<std::string>();
    if (out.empty()) throw Malformed(fmt::format("{} is empty", key));
    return out;
}

/// A list of at least so many entries, an error naming which one.
template <class Read>
auto list(const json& at, const char* key, std::size_t least, Read read) {
    std::vector<decltype(read(at))> out;
    for (const json& entry : at.at(key)) {
        try {
            out.push_back(read(entry));
        } catch (const std::exception& error) {
            throw Malformed(fmt::format("{}[{}]: {}", key, out.size(), error.what()));
        }
    }
    if (out.size() < least) throw Malformed(fmt::format("{} is empty", key));
    return out;
}

std::string words(const json& at) {
    auto out = at.get<std::string>();
    if (out.empty()) throw Malformed("is empty");
    return out;
}

Source source(const json& at) {
    const auto kind = from_word<findings::BasisKind>(at.at("kind").get<std::string>());
    if (!kind) throw Malformed("kind is not a word that is known here");
    Source out{text(at, "for"), *kind, at.at("source").get<std::string>()};
    if ((out.kind == findings::BasisKind::published) == out.name.empty())
        throw Malformed("a published claim names its source, any other has none");
    return out;
}

Card card(const json& at) {
    Card out;
    out.id = text(at, "id");
    try {
        out.title = text(at, "title");
        out.brief = text(at, "brief");
        out.why = list(at, "why", 1, words);
        out.how = list(at, "how", 1, words);
        out.signs = list(at, "signs", 0, [](const json& sign) {
            return Sign{text(sign, "sign"), text(sign, "means")};
        });
        out.slips = list(at, "slips", 1, [](const json& slip) {
            return Slip{text(slip, "slip"), text(slip, "then")};
        });
        out.pictures = list(at, "pictures", 0, words);
        out.cautions = list(at, "cautions", 0, words);
        out.sources = list(at, "sources", 1, source);
    } catch (const std::exception& error) {
        throw Malformed(fmt::format("card \"{}\": {}", out.id, error.what()));
    }
    return out;
}

Stroke stroke(const json& at) {
    Stroke out{text(at, "look"), text(at, "path")};
    if (std::ranges::find(stroke_looks(), out.look) == stroke_looks().end())
        throw Malformed(fmt::format("look \"{}\" is not known here", out.look));
    return out;
}

Picture picture(const json& at) {
    Picture out;
    out.id = text(at, "id");
    out.title = text(at, "title");
    out.description = text(at, "description");
    out.width = at.at("width").get<double>();
    out.height = at.at("height").get<double>();
    if (!(out.width > 0.0 && out.height > 0.0)) throw Malformed("width and height must be positive");
    out.strokes = list(at, "strokes", 1, stroke);
    out.marks = list(at, "marks", 0, [&](const json& mark) {
        Mark here{mark.at("x").get<double>(), mark.at("y").get<double>(), text(mark, "text")};
        if (!(here.x >= 0.0 && here.x <= out.width && here.y >= 0.0 && here.y <= out.height))
            throw Malformed("lies outside the picture");
        return here;
    });
    return out;
}

void whole(const Knowhow& knowhow, const findings::Reference& reference) {
    std::set<std::string_view> ids;
    for (const Picture& one : knowhow.pictures)
        if (!ids.insert(one.id).second) throw Malformed(fmt::format("picture \"{}\" is there twice", one.id));
    ids.clear();
    for (const Group& group : knowhow.groups)
        for (const Card& one : group.cards) {
            if (!ids.insert(one.id).second)
                throw Malformed(fmt::format("card \"{}\" is there twice", one.id));
            for (const auto& id : one.pictures)
                if (!knowhow.picture(id))
                    throw Malformed(fmt::format("card \"{}\": there is no picture \"{}\"", one.id, id));
            for (const auto& id : one.cautions)
                if (!caution_of(reference, id))
                    throw Malformed(fmt::format("card \"{}\": there is no caution \"{}\"", one.id, id));
        }
}

}  // namespace

const Card* Knowhow::card(std::string_view id) const {
    for (const Group& group : groups)
        if (const auto at = std::ranges::find(group.cards, id, &Card::id); at != group.cards.end())
            return &*at;
    return nullptr;
}

const Card* Knowhow::after(std::string_view id) const {
    bool found = false;
    for (const Group& group : groups)
        for (const Card& one : group.cards) {
            if (found) return &one;
            found = one.id == id;
        }
    return nullptr;
}

const Picture* Knowhow::picture(std::string_view id) const {
    const auto at = std::ranges::find(pictures, id, &Picture::id);
    return at == pictures.end() ? nullptr : &*at;
}

const findings::Caution* caution_of(const findings::Reference& reference, std::string_view id) {
    const auto at = std::ranges::find(reference.cautions, id, &findings::Caution::id);
    return at == reference.cautions.end() ? nullptr : &*at;
}

const std::vector<std::string_view>& stroke_looks() {
    static const std::vector<std::string_view> looks{"outline", "fine", "dashed", "body",   "metal",
                                                     "hollow",  "oil",  "rings",  "intake", "exhaust",
                                                     "gasket",  "air",  "motion"};
    return looks;
}

Result<Knowhow> read_knowhow(const KnowhowTexts& texts, const findings::Reference& reference) {
    Knowhow out;
    const char* file = "";
    const auto open = [&](const char* name, std::string_view document) {
        file = name;
        json parsed = json::parse(document);
        if (const int version = parsed.at("version").get<int>(); version != 1)
            throw Malformed(fmt::format("version {} is not known here", version));
        return parsed;
    };
    try {
        for (const auto& [name, document] : {std::pair("job.json", texts.job),
                                             {"special.json", texts.special},
                                             {"numbers.json", texts.numbers}}) {
            const json at = open(name, document);
            out.groups.push_back({text(at, "title"), list(at, "cards", 1, card)});
        }
        out.pictures = list(open("pictures.json", texts.pictures), "pictures", 1, picture);
        file = "assets/knowhow";
        whole(out, reference);
    } catch (const std::exception& error) {
        return fail("knowhow.malformed",
                    "The How to cards in {} can't be read: {}. Put the file back as it was shipped.", file,
                    std::string(error.what()));
    }
    return out;
}

Result<Knowhow> built_in_knowhow(const findings::Reference& reference) {
    return read_knowhow(built_in_texts(), reference);
}

}  // namespace lapwing::knowhow
