// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What the Python tests beside this file need of the core:
//   fields              the fields of session.json as the code knows them, as JSON
//   json SEED           a drawn session.json, its attachments listed as missing
//   write FILE SEED     a session file with drawn content, photos, voice notes and a report
//   check FILE          the codes of what is wrong with a session file, one a line
//   read FILE           its session.json as read and written again
//   spell               each line of standard input in one_spelling

#include <cstdio>
#include <iostream>
#include <nlohmann/json.hpp>

#include "core/base/letters.h"
#include "tests/core/exchange/packed.h"

namespace {

using namespace lapwing;
using Json = nlohmann::ordered_json;

/// Walks the field descriptions and says of each field what may stand there.
class Shape {
public:
    template <class T>
    void operator()(const char* name, const T& value) {
        fields_[name] = of(value);
        fields_[name]["required"] = !record::may_be_missing<T>;
    }

    template <class T>
    static Json of(const T& value) {
        if constexpr (std::same_as<T, std::string>)
            return {{"kind", "text"}};
        else if constexpr (std::same_as<T, bool>)
            return {{"kind", "boolean"}};
        else if constexpr (std::is_integral_v<T>)
            return {{"kind", "integer"}};
        else if constexpr (std::is_enum_v<T>)
            return {{"kind", "word"}, {"words", Words<T>::list}};
        else
            return of_struct(value);
    }

private:
    static Json of_struct(const Uuid&) { return {{"kind", "id"}}; }
    template <class Tag>
    static Json of_struct(const Id<Tag>&) {
        return {{"kind", "id"}};
    }
    static Json of_struct(const Timestamp&) { return {{"kind", "time"}}; }
    template <class Tag>
    static Json of_struct(const Typed<Tag>&) {
        Json symbols = Json::array();
        for (const auto& unit : Unit<Tag>::all())
            symbols.push_back(unit.symbol);
        return {{"kind", "quantity"}, {"units", symbols}};
    }
    template <class T>
    static Json of_struct(const std::optional<T>&) {
        return of(T{});
    }
    template <class T>
    static Json of_struct(const std::vector<T>&) {
        return {{"kind", "list"}, {"of", of(T{})}};
    }
    template <class T>
    static Json of_struct(const T& value) {
        Shape shape;
        record::fields(shape, value);
        return {{"kind", "object"}, {"fields", shape.fields_}};
    }

    Json fields_ = Json::object();
};

int fail_with(const Error& error) {
    std::cerr << error.english << '\n';
    return 1;
}

int run(const std::vector<std::string>& args) {
    const auto verb = args.empty() ? std::string{} : args[0];
    if (verb == "fields" && args.size() == 1) {
        std::cout << Shape::of(Dossier{}).dump(1) << '\n';
    } else if (verb == "json" && args.size() == 2) {
        auto dossier = test::Sample(std::stoull(args[1])).dossier;
        for (const auto& visit : dossier.visits)
            for (const auto& attachment : visit.attachments)
                dossier.missing.push_back(
                    {attachment.id, dossier.missing.empty() ? Loss::lost : Loss::damaged});
        std::cout << to_json(dossier) << '\n';
    } else if (verb == "write" && args.size() == 3) {
        const auto written =
            exchange::write_session_file(args[1], test::Sample(std::stoull(args[2])).outgoing());
        if (!written) return fail_with(written.error());
    } else if (verb == "check" && args.size() == 2) {
        for (const auto& problem : exchange::check_file(args[1], test::Folder().path()))
            std::cout << problem.code << '\n';
    } else if (verb == "read" && args.size() == 2) {
        const test::Folder folder;
        const auto incoming = exchange::read_session_file(args[1], folder.path());
        if (!incoming) return fail_with(incoming.error());
        std::cout << to_json(incoming->dossier) << '\n';
    } else if (verb == "spell" && args.size() == 1) {
        for (std::string line; std::getline(std::cin, line);)
            std::cout << one_spelling(line) << '\n';
    } else {
        std::cerr
            << "session_file_tool fields | json SEED | write FILE SEED | check FILE | read FILE | spell\n";
        return 2;
    }
    return 0;
}

}  // namespace

int main(int count, char** args) {
    return run({args + 1, args + count});
}
