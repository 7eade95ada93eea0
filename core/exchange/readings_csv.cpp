// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/readings_csv.h"

#include <set>

namespace lapwing::exchange {
namespace {

/// One line, or with `header` set the line of column names: both walk the same columns.
class Line {
public:
    explicit Line(bool header) : header_(header) {}

    void text(std::string_view column, std::string_view value) {
        std::string safe(value);
        if (!safe.empty() && std::string_view("=+-@\t\r").find(safe.front()) != std::string_view::npos)
            safe.insert(0, 1, '\'');
        cell(column, safe);
    }
    void plain(std::string_view column, const std::string& value) { cell(column, value); }

    template <class Tag>
    void quantity(const std::string& name, std::string_view si_unit, const std::optional<Typed<Tag>>& value) {
        plain(name + "_typed", value ? value->digits() : "");
        plain(name + "_unit", value ? std::string(value->unit().symbol()) : "");
        plain(fmt::format("{}_{}", name, si_unit), value ? fmt::format("{:.10g}", value->si()) : "");
    }

    [[nodiscard]] std::string done() const { return line_ + "\r\n"; }

private:
    void cell(std::string_view column, std::string_view value) {
        const std::string_view shown = header_ ? column : value;
        if (!first_) line_ += ',';
        first_ = false;
        if (shown.find_first_of(",\"\r\n") == std::string_view::npos) {
            line_ += shown;
            return;
        }
        line_ += '"';
        for (const char c : shown) {
            if (c == '"') line_ += '"';
            line_ += c;
        }
        line_ += '"';
    }

    bool header_;
    bool first_ = true;
    std::string line_;
};

struct Row {
    const Dossier& dossier;
    const Session& session;
    const Reading& reading;
    bool replaced = false;
};

std::string line(const Row& row, bool header) {
    const auto& reading = row.reading;
    const auto* cylinder = find_cylinder(row.dossier.engine, reading.cylinder);
    const auto* tester = find_tester(row.dossier, reading.tester);
    Line out(header);
    out.text("session", row.session.title);
    out.plain("session_id", row.session.id.text());
    out.plain("session_opened_at", to_rfc3339(row.session.opened_at));
    out.plain("reading_id", reading.id.text());
    out.plain("taken_at", to_rfc3339(reading.taken_at));
    out.plain("test", std::string(word(reading.test)));
    out.plain("cylinder", std::to_string(reading.cylinder));
    out.text("cylinder_name", cylinder ? cylinder->name : "");
    out.plain("tag", std::string(word(reading.tag)));
    out.plain("oil_on_rings", std::string(word(reading.oiled)));
    out.quantity("first", "pa", reading.first);
    out.quantity("final", "pa", reading.final);
    out.plain("pulls", reading.pulls ? std::to_string(*reading.pulls) : "");
    out.plain("cranked_by", std::string(word(reading.cranked_by)));
    out.quantity("set", "pa", reading.set);
    out.quantity("held", "pa", reading.held);
    out.quantity("dial_loss", "ratio", reading.dial_loss);
    out.quantity("hold", "s", reading.hold);
    out.quantity("oil_volume", "m3", reading.oil_volume);
    out.text("oil_name", reading.oil_name);
    out.text("tester", tester ? tester->name : "");
    out.text("adapter", reading.adapter);
    out.plain("read_from", std::string(word(reading.from)));
    out.plain("replaces", reading.replaces ? reading.replaces->text() : "");
    out.plain("replaced", row.replaced ? "yes" : "no");
    out.text("note", reading.note);
    return out.done();
}

}  // namespace

std::string readings_csv(const Dossier& dossier) {
    std::string out = line({dossier, Session{}, Reading{}}, true);
    for (const auto& visit : dossier.visits) {
        std::set<std::pair<TestKind, int>> places;
        for (const auto& reading : visit.readings)
            places.emplace(reading.test, reading.cylinder);
        std::set<ReadingId> counting;
        for (const auto& [test, cylinder] : places)
            for (const auto* reading : standing(visit.readings, test, cylinder))
                counting.insert(reading->id);
        for (const auto& reading : visit.readings)
            out += line({dossier, visit.session, reading, !counting.contains(reading.id)}, false);
    }
    return out;
}

}  // namespace lapwing::exchange
