// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <nlohmann/json.hpp>

#include "core/record/fields.h"
#include "core/record/record.h"

namespace lapwing::record {
namespace {

using Json = nlohmann::ordered_json;

/// Puts the fields of a newer version back where they were read. A place that is gone (a cylinder taken off
/// the engine) takes its unknown fields with it.
void put_back(Json& object, const std::string& extra) {
    if (extra.empty()) return;
    const auto kept = Json::parse(extra, nullptr, false);
    if (!kept.is_object()) return;
    for (const auto& [pointer, value] : kept.items()) {
        try {
            const Json::json_pointer place(pointer);
            if (place.empty()) continue;
            const auto parent = place.parent_pointer();
            if (object.contains(parent) && object[parent].is_object() && !object.contains(place))
                object[place] = value;
        } catch (const Json::exception&) {
            continue;  // not a pointer: nothing that reading ever made
        }
    }
}

/// The JSON of one value; for a struct, field by field.
class Writer {
public:
    static Json of(const Uuid& uuid) { return uuid.text(); }
    template <class Tag>
    static Json of(const Id<Tag>& id) {
        return id.text();
    }
    static Json of(Timestamp at) { return to_rfc3339(at); }
    template <class Tag>
    static Json of(const Typed<Tag>& typed) {
        return of(DigitsAndUnit{typed.digits(), std::string(typed.unit().symbol())});
    }
    template <class T>
    static Json of(const std::optional<T>& value) {
        return of(*value);
    }
    template <class T>
    static Json of(const std::vector<T>& values) {
        Json out = Json::array();
        for (const auto& value : values)
            out.push_back(of(value));
        return out;
    }
    template <class T>
    static Json of(const T& value) {
        if constexpr (std::is_arithmetic_v<T> || std::same_as<T, std::string>) {
            return value;
        } else if constexpr (std::is_enum_v<T>) {
            return std::string(word(value));
        } else {
            Writer writer;
            fields(writer, value);
            if constexpr (CarriesExtra<T>) put_back(writer.object_, value.extra);
            return std::move(writer.object_);
        }
    }

    template <class T>
    void operator()(const char* name, const T& value) {
        if constexpr (may_be_missing<T>) {
            if (is_missing(value)) return;
        }
        object_[name] = of(value);
    }

private:
    template <class T>
    static bool is_missing(const std::optional<T>& value) {
        return !value.has_value();
    }
    static bool is_missing(const auto& values) { return values.empty(); }

    Json object_ = Json::object();
};

/// Bytes that are not UTF-8 can't pass the model's checks; should they come here all the same, a replacement
/// mark is written rather than nothing at all.
std::string text_of(const Json& json, int indent) {
    return json.dump(indent, ' ', false, Json::error_handler_t::replace);
}

/// Unknown fields beside a record, which travel in the record as its field "..": up to where they were read.
void lift(Json& outer, const char* record) {
    const auto found = outer[record].find("..");
    if (found == outer[record].end()) return;
    const Json beside = std::move(*found);
    outer[record].erase("..");
    if (!beside.is_object()) return;
    for (const auto& [name, value] : beside.items())
        if (!outer.contains(name)) outer[name] = value;
}

}  // namespace
}  // namespace lapwing::record

namespace lapwing {

std::string to_json(const Record& record) {
    return std::visit([](const auto& value) { return record::text_of(record::Writer::of(value), -1); },
                      record);
}

std::string to_json(const Dossier& dossier) {
    auto root = record::Json::object();
    root["format"] = std::string(session_format);
    root["version"] = fmt::format("{}.{}", session_major, session_minor);
    const auto body = record::Writer::of(dossier);
    for (const auto& [name, value] : body.items())
        root[name] = value;
    record::lift(root, "engine");
    if (root.contains("visits"))
        for (auto& visit : root["visits"])
            record::lift(visit, "session");
    return record::text_of(root, 2);
}

Engine without_owner(Engine engine) {
    engine.owner = {};
    for (auto& text : engine.lineage.other_versions)
        if (auto version = record_from_json(RecordKind::engine, text))
            text = to_json(Record(without_owner(std::get<Engine>(std::move(*version)))));
    const auto kept = record::Json::parse(engine.extra, nullptr, false);
    if (!kept.is_object()) return engine;
    auto rest = record::Json::object();
    for (const auto& [pointer, value] : kept.items())
        if (!pointer.starts_with("/owner/")) rest[pointer] = value;
    engine.extra = rest.empty() ? std::string{} : rest.dump();
    return engine;
}

}  // namespace lapwing
