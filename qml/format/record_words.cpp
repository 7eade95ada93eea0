// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/format/record_words.h"

#include <algorithm>

#include "core/record/fields.h"
#include "qml/format/tables.h"

namespace lapwing::format {
namespace {

template <class T>
inline constexpr bool is_typed = false;
template <class Tag>
inline constexpr bool is_typed<Typed<Tag>> = true;
template <class T>
inline constexpr bool is_id = std::same_as<T, Uuid>;
template <class Tag>
inline constexpr bool is_id<Id<Tag>> = true;
template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;
template <class T>
inline constexpr bool is_list = false;
template <class T>
inline constexpr bool is_list<std::vector<T>> = true;

QString plain(const std::string& text) {
    return QString::fromStdString(text);
}

/// Values as texts. Values that belong together ("0.15 mm to 0.20 mm") make one text.
class Texts {
public:
    Texts(const Formatter& format, const NameOf& name_of) : format_(format), name_of_(name_of) {}

    [[nodiscard]] QString of(const std::string& text) const { return plain(text); }
    [[nodiscard]] QString of(bool value) const {
        return translated(value ? QT_TRANSLATE_NOOP("Findings", "yes") : QT_TRANSLATE_NOOP("Findings", "no"));
    }
    [[nodiscard]] QString of(Timestamp at) const { return format_.shortDateTime(at); }
    [[nodiscard]] QString of(const ClearanceRange& range) const {
        return translated(QT_TRANSLATE_NOOP("Findings", "%1 to %2")).arg(of(range.low), of(range.high));
    }
    [[nodiscard]] QString of(const Money& money) const {
        QString digits = plain(money.digits);
        digits.replace(u'.', format_.locale().decimalPoint());
        return digits + u' ' + plain(money.currency);
    }
    [[nodiscard]] QString of(const Tie& tie) const {
        const QString named = tie.record && name_of_ ? name_of_(*tie.record) : QString();
        return named.isEmpty() ? place_of(format_, tie) : named;
    }
    template <class T>
    [[nodiscard]] QString of(const Sourced<T>& sourced) const {
        QString text = of(sourced.value);
        if (sourced.origin != Origin::unknown) text += QStringLiteral(", ") + of(sourced.origin);
        if (!sourced.note.empty()) text += QStringLiteral(", ") + of(sourced.note);
        return text;
    }
    template <class T>
    [[nodiscard]] QString of(const T& value) const {
        if constexpr (is_typed<T>) {
            return format_.typed(value);
        } else if constexpr (is_id<T>) {
            Uuid id;
            if constexpr (std::same_as<T, Uuid>)
                id = value;
            else
                id = value.uuid;
            const QString named = name_of_ ? name_of_(id) : QString();
            return named.isEmpty() ? translated(QT_TRANSLATE_NOOP("Findings", "another record")) : named;
        } else if constexpr (is_optional<T>) {
            return value ? of(*value) : QString();
        } else if constexpr (is_list<T>) {
            return list(value);
        } else if constexpr (std::is_enum_v<T>) {
            return format_.name(value);
        } else if constexpr (std::is_arithmetic_v<T>) {
            return format_.locale().toString(value);
        } else {
            return together(value);
        }
    }

private:
    template <class T>
    [[nodiscard]] QString list(const std::vector<T>& values) const {
        QStringList texts;
        for (const auto& value : values)
            texts << of(value);
        const bool long_ones =
            std::ranges::any_of(texts, [](const QString& one) { return one.contains(u','); });
        return texts.join(long_ones ? QStringLiteral("; ") : QStringLiteral(", "));
    }
    /// All that a struct says, in one text.
    template <class T>
    [[nodiscard]] QString together(const T& value) const {
        QStringList texts;
        auto visit = [&](const char*, const auto& member) {
            if (const QString text = of(member); !text.isEmpty()) texts << text;
        };
        record::fields(visit, value);
        return texts.join(QStringLiteral(", "));
    }

    const Formatter& format_;
    const NameOf& name_of_;
};

/// Structs whose fields have names and texts of their own; all other structs are one value.
template <class T>
inline constexpr bool opens =
    std::same_as<T, ValveGear> || std::same_as<T, FactoryLimits> || std::same_as<T, CrankcaseLimits> ||
    std::same_as<T, Owner> || std::same_as<T, Gauge> || std::same_as<T, Complaint> ||
    std::same_as<T, Conditions>;

/// Calls `told(path, value)` for each field with a text: "limits.lowest".
template <class Told, class T>
void walk(const Told& told, const T& value, const std::string& before = {}) {
    auto visit = [&](const char* name, const auto& member) {
        using Member = std::remove_cvref_t<decltype(member)>;
        const std::string path = before + name;
        if constexpr (std::same_as<Member, std::vector<Revision>>) {
            return;
        } else if constexpr (opens<Member>) {
            walk(told, member, path + '.');
        } else {
            if (path != "id" && path != "session" && path != "engine" && path != "other_versions")
                told(path, member);
        }
    };
    record::fields(visit, value);
}

struct Line {
    std::string path;
    QString text;
};

QList<Line> lines_of(const Formatter& format, const Record& record, const NameOf& name_of) {
    QList<Line> lines;
    const Texts texts(format, name_of);
    std::visit(
        [&](const auto& one) {
            walk(
                [&](const std::string& path, const auto& value) {
                    lines.append({path, texts.of(value)});
                },
                one);
        },
        record);
    return lines;
}

QString field_name(const std::string& path) {
    std::string_view known = path;
    if (!fieldOf(known)) known.remove_prefix(path.rfind('.') + 1);
    const char* english = fieldOf(known);
    return english ? translated(english, known) : plain(path);
}

QString of_cylinder(const QString& what, int cylinder) {
    if (cylinder == 0) return what;
    return translated(QT_TRANSLATE_NOOP("Findings", "%1, cylinder %2")).arg(what).arg(cylinder);
}

QString by(const QString& what, const std::string& author) {
    if (author.empty()) return what;
    return translated(QT_TRANSLATE_NOOP("Findings", "%1, by %2")).arg(what, plain(author));
}

QString joined(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

}  // namespace

QString place_of(const Formatter& format, const Tie& tie) {
    if (tie.to == TiedTo::finding && tie.cylinder) return of_cylinder(format.heading(tie.to), *tie.cylinder);
    if (tie.cylinder) return translated(QT_TRANSLATE_NOOP("Findings", "Cylinder %1")).arg(*tie.cylinder);
    return format.heading(tie.to);
}

QString title_of(const Formatter& format, const Record& record) {
    struct Title {
        const Formatter& f;
        QString operator()(const Engine& engine) const { return plain(engine.name); }
        QString operator()(const Tester& tester) const { return plain(tester.name); }
        QString operator()(const Session& session) const {
            const QString name = session.title.empty() ? f.heading(TiedTo::session) : plain(session.title);
            return name + QStringLiteral(", ") + f.shortDate(session.opened_at);
        }
        QString operator()(const Reading& reading) const {
            return of_cylinder(f.heading(reading.test), reading.cylinder);
        }
        QString operator()(const ExitNote& note) const {
            return of_cylinder(f.heading(note.exit), note.cylinder);
        }
        QString operator()(const Clearance& clearance) const {
            const QString what = translated(QT_TRANSLATE_NOOP("Findings", "Clearance, %1"));
            return of_cylinder(what.arg(f.name(clearance.side)), clearance.cylinder);
        }
        QString operator()(const Attachment& attachment) const {
            return attachment.photo_of ? joined({f.heading(attachment.kind), f.name(*attachment.photo_of)})
                                       : f.heading(attachment.kind);
        }
        QString operator()(const Note& note) const { return by(f.heading(note.kind), note.author); }
        QString operator()(const PlanLine& line) const {
            const QString what = f.heading(line.option);
            return line.cylinder ? of_cylinder(what, *line.cylinder) : what;
        }
    };
    return std::visit(Title{format}, record);
}

QString shown_of_set(const Formatter& format, const Reading& reading) {
    if (!reading.set) return {};
    const QString set = format.typed(*reading.set);
    if (reading.dial_loss)
        return translated(QT_TRANSLATE_NOOP("Findings", "%1 lost of %2"))
            .arg(format.typed(*reading.dial_loss), set);
    return reading.held
               ? translated(QT_TRANSLATE_NOOP("Findings", "%1 of %2")).arg(format.typed(*reading.held), set)
               : QString();
}

QString typed_off_gauge(const Formatter& format, const Reading& reading) {
    if (reading.dial_loss) return format.typed(*reading.dial_loss);
    const auto& pressure = reading.held ? reading.held : reading.final;
    return pressure ? format.typed(*pressure) : QString();
}

QString gist_of(const Formatter& format, const Record& record) {
    struct Gist {
        const Formatter& f;
        QString operator()(const Engine& engine) const { return plain(engine.description); }
        QString operator()(const Tester& tester) const { return f.heading(tester.kind); }
        QString operator()(const Session& session) const { return plain(session.complaint.text); }
        QString operator()(const Reading& reading) const {
            const auto held_of_set = translated(QT_TRANSLATE_NOOP("Findings", "held %1 of %2"));
            if (reading.dial_loss) return shown_of_set(f, reading);
            if (reading.held && reading.set)
                return held_of_set.arg(f.typed(*reading.held), f.typed(*reading.set));
            return joined({reading.final ? f.typed(*reading.final) : QString(), plain(reading.note)});
        }
        QString operator()(const ExitNote& note) const {
            return joined({f.name(note.loudness), plain(note.note)});
        }
        QString operator()(const Clearance& clearance) const {
            const auto found = translated(QT_TRANSLATE_NOOP("Findings", "found %1"));
            const auto left = translated(QT_TRANSLATE_NOOP("Findings", "left %1"));
            return joined({clearance.found ? found.arg(f.typed(*clearance.found)) : QString(),
                           clearance.left ? left.arg(f.typed(*clearance.left)) : QString()});
        }
        QString operator()(const Attachment& attachment) const {
            return joined({place_of(f, attachment.tie), plain(attachment.caption)});
        }
        QString operator()(const Note& note) const {
            return joined({note.tie.cylinder ? place_of(f, note.tie) : QString(),
                           note.test ? f.name(*note.test) : QString(),
                           note.check ? f.name(*note.check) : QString(),
                           note.cause ? f.name(*note.cause) : QString(), plain(note.text)});
        }
        QString operator()(const PlanLine& line) const {
            return joined({plain(line.work), plain(line.parts)});
        }
    };
    return std::visit(Gist{format}, record);
}

QList<FieldTexts> differences(const Formatter& format, const Record& one, const Record& other,
                              const NameOf& name_of) {
    QList<FieldTexts> out;
    if (one.index() != other.index()) return out;
    const auto mine = lines_of(format, one, name_of), theirs = lines_of(format, other, name_of);
    for (qsizetype at = 0; at < mine.size(); ++at)
        if (mine[at].text != theirs[at].text)
            out.append({field_name(mine[at].path), mine[at].text, theirs[at].text});
    return out;
}

QStringList fields_without_words() {
    QStringList missing;
    const auto look = [&](const std::string& path, const auto&) {
        if (!fieldOf(path) && !fieldOf(std::string_view(path).substr(path.rfind('.') + 1)))
            missing << plain(path);
    };
    walk(look, Engine{});
    walk(look, Tester{});
    walk(look, Session{});
    walk(look, Reading{});
    walk(look, ExitNote{});
    walk(look, Clearance{});
    walk(look, Attachment{});
    walk(look, Note{});
    walk(look, PlanLine{});
    return missing;
}

}  // namespace lapwing::format
