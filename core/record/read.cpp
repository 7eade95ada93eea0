// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "core/record/fields.h"
#include "core/record/json_text.h"
#include "core/record/place.h"
#include "core/record/record.h"
#include "core/record/session_version.h"
#include "core/record/tree_builder.h"
#include "core/record/walk.h"

namespace lapwing::record {
namespace {

using Json = nlohmann::ordered_json;

/// A text from outside, looked through before it is built.
Result<Json> tree_of(std::string_view text) {
    std::vector<std::uint16_t> names;
    if (auto fine = check_json_text(text, most_json_values, &names); !fine)
        return tl::unexpected(fine.error());
    TreeBuilder<Json, nlohmann::json_sax<Json>> builder(names);
    Json::sax_parse(text, &builder);
    return std::move(builder.root);
}

/// Of fields that this version doesn't know, in one record: they are copied wherever it goes.
constexpr std::size_t most_unknown_bytes = 1u << 20;

/// About as many as its text has, but at least what a value takes.
std::size_t bytes_of(const Json& json) {
    std::size_t bytes = 16;
    if (json.is_string()) bytes += json.get_ref<const std::string&>().size();
    if (json.is_structured())
        for (const auto& [name, value] : json.items())
            bytes += name.size() + bytes_of(value);
    return bytes;
}

/// Fills values from a parsed text and stops at the first thing that is wrong.
class Reader {
public:
    Reader() = default;
    /// For a version that stands inside another record.
    struct Nested {};
    explicit Reader(Nested) : nested_(true) {}

    template <class T>
    void read(const Json& json, const Place& at, T& out) {
        if constexpr (CarriesExtra<T>)
            read_record(json, at, out);
        else if constexpr (requires { read_value(json, at, out); })
            read_value(json, at, out);
        else
            read_object(json, at, out);
    }

    std::optional<Error> take_error() { return std::move(error_); }

private:
    template <class... Args>
    void refuse(std::string_view code, fmt::format_string<const Args&...> english, const Args&... args) {
        if (!error_) error_ = std::move(fail(code, english, args...).value());
    }
    void wrong_type(const Place& at, std::string_view wanted) {
        refuse("record.wrong_type", "The file is not right at {}: {} must stand there.", at.text(), wanted);
    }

    /// Fills the fields of one object; afterwards `keep_unknown` collects what it doesn't know.
    class FieldReader {
    public:
        FieldReader(Reader& reader, const Json& object, const Place& at)
            : reader_(reader), object_(object), at_(at) {}

        template <class T>
        void operator()(const char* name, T& out) {
            known_.insert(name);
            if (reader_.error_) return;
            const auto found = object_.find(name);
            if (found != object_.end()) {
                const Place place{&at_, name, {}, false};
                reader_.read(*found, place, out);
            } else if (!may_be_missing<T>) {
                reader_.refuse("record.missing", "The file is not complete: {} has no \"{}\".", at_.text(),
                               name);
            }
        }

        void keep_unknown() {
            // Outside of a record nothing carries them: what stands there is made anew with each file.
            if (reader_.unknown_ == nullptr) return;
            for (const auto& [name, value] : object_.items())
                if (!known_.contains(name)) {
                    // They are looked up one by one wherever the record goes.
                    reader_.unknown_bytes_ += bytes_of(value);
                    if (reader_.unknown_->size() == most_json_names ||
                        reader_.unknown_bytes_ > most_unknown_bytes)
                        return reader_.refuse(
                            "record.too_much_unknown",
                            "The file is not right at {}: it holds more that this version doesn't know than "
                            "a record can have, and was not written by this app.",
                            at_.text());
                    const Place place{&at_, name, {}, false};
                    (*reader_.unknown_)[place.pointer()] = value;
                }
        }

    private:
        Reader& reader_;
        const Json& object_;
        const Place& at_;
        std::set<std::string_view> known_;
    };

    template <class T>
    void read_object(const Json& json, const Place& at, T& out) {
        if (!json.is_object()) return wrong_type(at, "an object {...}");
        FieldReader reader(*this, json, at);
        fields(reader, out);
        if (!error_) reader.keep_unknown();
    }

    /// A record gathers the unknown fields below it and must be one that can exist.
    template <class T>
    void read_record(const Json& json, const Place& at, T& out) {
        const Place place{at.outer, at.name, at.index, true};
        Json unknown = Json::object();
        Json* const outer = std::exchange(unknown_, &unknown);
        const auto outer_bytes = std::exchange(unknown_bytes_, 0);
        read_object(json, place, out);
        unknown_ = outer;
        unknown_bytes_ = outer_bytes;
        if (error_) return;
        auto fine = checked(std::move(out));
        if (!fine)
            return refuse("record.impossible", "The file is not right at {}: {}", place.text(),
                          fine.error().english);
        out = std::move(*fine);
        if (!unknown.empty()) out.extra = unknown.dump();
        read_versions(place, out);
    }

    /// Other versions are texts within the text: each is held to the same rules before anything trusts it.
    template <class T>
    void read_versions(const Place& at, const T& out) {
        for (const auto& text : out.lineage.other_versions) {
            T other;
            const auto json = tree_of(text);
            Reader reader{Nested{}};
            if (json) reader.read(*json, Place{}, other);
            if (nested_ || !json || reader.error_ || other.id != out.id ||
                parent_of(Record(other)) != parent_of(Record(out)))
                return refuse(
                    "record.other_version",
                    "The file is not right at {}: one of its other versions is none of this record.",
                    at.text());
        }
    }

    bool read_string(const Json& json, const Place& at, std::string& out) {
        if (!json.is_string()) {
            wrong_type(at, "a text in quotes");
            return false;
        }
        out = json.get<std::string>();
        return true;
    }

    void read_value(const Json& json, const Place& at, std::string& out) { read_string(json, at, out); }

    void read_value(const Json& json, const Place& at, bool& out) {
        if (!json.is_boolean()) return wrong_type(at, "true or false");
        out = json.get<bool>();
    }

    /// 3 and 3.0 are the same integer in JSON.
    template <std::signed_integral Int>
    void read_value(const Json& json, const Place& at, Int& out) {
        const auto fits = [](auto number) { return std::in_range<Int>(number); };
        if (json.is_number_unsigned() && fits(json.get<std::uint64_t>())) {
            out = static_cast<Int>(json.get<std::uint64_t>());
        } else if (json.is_number_integer() && !json.is_number_unsigned() && fits(json.get<std::int64_t>())) {
            out = static_cast<Int>(json.get<std::int64_t>());
        } else if (json.is_number_float() && std::abs(json.get<double>()) < 9e15 &&
                   json.get<double>() == std::floor(json.get<double>()) &&
                   fits(static_cast<std::int64_t>(json.get<double>()))) {
            out = static_cast<Int>(json.get<double>());
        } else {
            wrong_type(at, "a whole number");
        }
    }

    template <class Enum>
    requires std::is_enum_v<Enum>
    void read_value(const Json& json, const Place& at, Enum& out) {
        std::string text;
        if (!read_string(json, at, text)) return;
        if (const auto value = from_word<Enum>(text)) {
            out = *value;
        } else {
            std::string known;
            for (const auto& one : Words<Enum>::list)
                known += (known.empty() ? "\"" : ", \"") + std::string(one) + '"';
            refuse("record.unknown_word", "The file says \"{}\" at {}: known here are {}.", text, at.text(),
                   known);
        }
    }

    void read_value(const Json& json, const Place& at, Uuid& out) {
        std::string text;
        if (!read_string(json, at, text)) return;
        if (const auto uuid = Uuid::parse(text))
            out = *uuid;
        else
            refuse("record.bad_id", "The file says \"{}\" at {}: that is no id (UUID).", text, at.text());
    }

    template <class Tag>
    void read_value(const Json& json, const Place& at, Id<Tag>& out) {
        read_value(json, at, out.uuid);
    }

    void read_value(const Json& json, const Place& at, Timestamp& out) {
        std::string text;
        if (!read_string(json, at, text)) return;
        if (const auto time = parse_rfc3339(text))
            out = *time;
        else
            refuse("record.bad_time", "The file says \"{}\" at {}: that is no time with offset (RFC 3339).",
                   text, at.text());
    }

    template <class Tag>
    void read_value(const Json& json, const Place& at, Typed<Tag>& out) {
        DigitsAndUnit pair;
        if (!json.is_object()) return wrong_type(at, "a quantity {\"digits\": ..., \"unit\": ...}");
        FieldReader reader(*this, json, at);
        fields(reader, pair);
        if (error_) return;
        const Place digits_at{&at, "digits", {}, false};
        const Place unit_at{&at, "unit", {}, false};
        const auto unit = Unit<Tag>::find(pair.unit);
        if (!unit)
            return refuse("record.unknown_unit", "The file says \"{}\" at {}: units of {} are {}.", pair.unit,
                          unit_at.text(), Tag::name, detail::known_units(Unit<Tag>::all()));
        const auto typed = Typed<Tag>::make(pair.digits, *unit);
        // Another spelling of the number would come back changed: it is refused rather than rewritten.
        if (!typed || typed->digits() != pair.digits)
            return refuse("record.bad_digits",
                          "The file says \"{}\" at {}: a plain number such as -12 or 6.40 must stand there.",
                          pair.digits, digits_at.text());
        out = *typed;
        reader.keep_unknown();
    }

    template <class T>
    void read_value(const Json& json, const Place& at, std::optional<T>& out) {
        read(json, at, out.emplace());
    }

    template <class T>
    void read_value(const Json& json, const Place& at, std::vector<T>& out) {
        if (!json.is_array()) return wrong_type(at, "a list [...]");
        out.reserve(json.size());
        for (std::size_t i = 0; i < json.size() && !error_; ++i) {
            const Place place{&at, {}, i, false};
            read(json[i], place, out.emplace_back());
        }
    }

    bool nested_ = false;
    std::optional<Error> error_;
    Json* unknown_ = nullptr;  ///< fields not known in the record being read, by their pointers
    std::size_t unknown_bytes_ = 0;
};

struct Names {
    std::set<std::string_view> list;
    void operator()(const char* name, const auto&) { list.insert(name); }
};

/// Fields beside a record that this version doesn't know travel in the record as its field "..".
template <class T>
void tuck_unknown(Json& outer, const char* record) {
    if (!outer.is_object() || !outer.contains(record) || !outer[record].is_object()) return;
    Names known;
    const T blank;
    fields(known, blank);
    std::vector<std::string> moved;
    for (const auto& [name, value] : outer.items())
        if (!known.list.contains(name)) moved.push_back(name);
    if (moved.empty()) return;
    if (Json& beside = outer[record][".."]; !beside.is_object()) beside = Json::object();
    for (const auto& name : moved) {
        Json value = std::move(outer[name]);
        outer.erase(name);
        outer[record][".."][name] = std::move(value);
    }
}

/// Counted before any of them is built.
Status check_count(const Json& root) {
    std::size_t records = 0;
    const auto add = [&](const Json& in, std::string_view name) -> const Json* {
        if (!in.is_object()) return nullptr;
        const auto list = in.find(std::string(name));
        if (list == in.end() || !list->is_array()) return nullptr;
        records += list->size();
        return &*list;
    };
    add(root, "testers");
    if (const auto* visits = add(root, "visits"))
        for (const auto& visit : *visits)
            for (const auto* name : {"readings", "exits", "clearances", "attachments", "notes", "plan"})
                add(visit, name);
    if (records <= most_records) return {};
    return fail(
        "record.too_many_records",
        "The file holds {} records: at most {} are read at once. Ask the sender for some of the visits "
        "at a time.",
        records, most_records);
}

Status check_version(const Json& root) {
    const auto format = root.find("format");
    const auto version = root.find("version");
    if (!root.is_object() || format == root.end() || *format != std::string(session_format) ||
        version == root.end() || !version->is_string())
        return fail("record.not_a_session", "This is not a session file: its session.json does not say so.");
    return check_session_version(version->get<std::string>());
}

/// What is said to be missing is an attachment of this file, and said once.
Status check_missing(const Dossier& dossier) {
    std::set<AttachmentId> there;
    for (const auto& visit : dossier.visits)
        for (const auto& attachment : visit.attachments)
            there.insert(attachment.id);
    for (const auto& one : dossier.missing)
        if (there.erase(one.attachment) == 0)
            return fail("record.missing_of_nothing",
                        "The file says that the photo or voice note {} is missing, and it has none of that "
                        "id, or says so twice: it was not written by this app.",
                        one.attachment.text());
    return {};
}

template <class T>
Result<T> read_all(const Json& json) {
    record::Reader reader;
    T out;
    reader.read(json, Place{}, out);
    if (auto error = reader.take_error()) return tl::unexpected(std::move(*error));
    return out;
}

}  // namespace
}  // namespace lapwing::record

namespace lapwing {

Result<Record> record_from_json(RecordKind kind, std::string_view json) {
    const auto parsed = record::tree_of(json);
    if (!parsed) return tl::unexpected(parsed.error());
    const auto read = [&]<class T>(std::type_identity<T>) -> Result<Record> {
        return record::read_all<T>(*parsed).map([](T value) { return Record(std::move(value)); });
    };
    switch (kind) {
        case RecordKind::engine:
            return read(std::type_identity<Engine>{});
        case RecordKind::tester:
            return read(std::type_identity<Tester>{});
        case RecordKind::session:
            return read(std::type_identity<Session>{});
        case RecordKind::reading:
            return read(std::type_identity<Reading>{});
        case RecordKind::exit_note:
            return read(std::type_identity<ExitNote>{});
        case RecordKind::clearance:
            return read(std::type_identity<Clearance>{});
        case RecordKind::attachment:
            return read(std::type_identity<Attachment>{});
        case RecordKind::note:
            return read(std::type_identity<Note>{});
        case RecordKind::plan_line:
            return read(std::type_identity<PlanLine>{});
    }
    return fail("record.unknown_kind", "Record kind {} is unknown.", static_cast<int>(kind));
}

Result<Dossier> dossier_from_json(std::string_view json) {
    auto root = record::tree_of(json);
    if (!root) return tl::unexpected(root.error());
    if (auto fine = record::check_version(*root); !fine) return tl::unexpected(fine.error());
    const auto version = (*root)["version"].get<std::string>();
    if (auto fine = record::check_count(*root); !fine) return tl::unexpected(fine.error());
    root->erase("format");
    root->erase("version");
    record::tuck_unknown<Dossier>(*root, "engine");
    if (const auto visits = root->find("visits"); visits != root->end() && visits->is_array())
        for (auto& visit : *visits)
            record::tuck_unknown<Visit>(visit, "session");
    auto dossier = record::read_all<Dossier>(*root);
    *root = {};  // as large as the dossier: not both any longer than needed
    if (!dossier) return tl::unexpected(record::of_a_newer_one(std::move(dossier.error()), version));
    if (auto fine = record::check_missing(*dossier); !fine) return tl::unexpected(fine.error());
    auto missing = std::move(dossier->missing);
    return dossier_of(take_records(std::move(*dossier))).map([&](Dossier sorted) {
        sorted.missing = std::move(missing);
        return sorted;
    });
}

}  // namespace lapwing
