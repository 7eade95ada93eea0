// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Keep on the pad: what it says, what it asks for first, what it stores, and what is added to a reading
// later.
#include <algorithm>

#include "core/base/apart.h"
#include "core/findings/photo_reading.h"
#include "core/workflow/readings.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/cylinder_order.h"
#include "qml/viewmodels/pad_model.h"

namespace lapwing {

QString PadModel::keepText() const {
    const int next = nextOf(cylinder_);
    if (adds()) {
        const auto more = addition();
        if (more.oil_volume && !more.first && !more.pulls) return tr("Keep oil");
        return more.first && !more.oil_volume && !more.pulls ? tr("Keep first puff") : tr("Keep what is new");
    }
    if (endLacks()) return tr("End pressure first");
    if (empty()) return next == 0 ? tr("Done") : tr("Next %1").arg(next);
    if (oil_asked_ == cylinder_ && oilLacks()) return tr("Keep, oil not noted");
    if (setLacks()) return tr("Set first");
    if (other_unit_ || !earlierOil().isEmpty() || !odd_repeat_.isEmpty() ||
        (otherwise() && photo_asked_ != asTyped()))
        return tr("Keep …");
    if (questioned_) return tr("Keep all the same");
    if (redoing()) return tr("Keep instead");
    if (test_ == TestKind::leak_down) return tr("Keep, listen");
    // Both will count: who mistyped the first wants Redo.
    if (stands()) return next == 0 ? tr("Keep as well") : tr("Keep as well, next %1").arg(next);
    return next == 0 ? tr("Keep") : tr("Keep, next %1").arg(next);
}

bool PadModel::stands() const {
    return std::ranges::any_of(history(), [](const QVariant& earlier) {
        const auto one = earlier.toMap();
        return !one[QStringLiteral("replaced")].toBool() && !one[QStringLiteral("asOne")].toBool();
    });
}

bool PadModel::setLacks() const {
    return !is_cranking(test_) && !typedFields().pressure(pad_field::set);
}

bool PadModel::lacking() {
    lacking_ = setLacks()                              ? pad_field::set
               : holdLacks()                           ? pad_field::hold
               : oilLacks() && oil_asked_ != cylinder_ ? pad_field::oil
                                                       : QString();
    if (lacking_.isEmpty()) return false;
    if (lacking_ == pad_field::oil) oil_asked_ = cylinder_;
    focusField(lacking_);
    return true;
}

/// In a line under the figure: a message would lie over the field that it names.
void PadModel::tellLacking() {
    if (lacking_ == pad_field::set && setLacks())
        lines_.tell(tr("Set pressure?"), tr("leakage is counted from it: type it first"));
    else if (lacking_ == pad_field::hold && holdLacks())
        lines_.tell(tr("Minutes?"), tr("without them the end pressure says little: type how long it stood"));
    else if (lacking_ == mainField() && endLacks())
        lines_.tell(tr("End pressure?"), tr("type what the gauge shows after the minutes"));
    else if (lacking_ == pad_field::oil && oilLacks() && oil_asked_ == cylinder_)
        lines_.tell(tr("How much oil?"), tr("what the rise means hangs on it: type it, or keep without"));
    else
        lacking_.clear();
}

bool PadModel::holdLacks() const {
    return test_ == TestKind::crankcase && typedFields().digits(pad_field::hold).isEmpty();
}

bool PadModel::endLacks() const {
    return test_ == TestKind::crankcase && empty() &&
           (!entry().typed(pad_field::set).isEmpty() || !entry().typed(pad_field::hold).isEmpty());
}

bool PadModel::oilLacks() const {
    return test_ == TestKind::wet && typedFields().digits(pad_field::oil).isEmpty();
}

workflow::Addition PadModel::addition() const {
    workflow::Addition more;
    if (!is_cranking(test_)) return more;
    const auto typed = typedFields().pad_entry(cylinder_, tag_);
    more.first = typed.first;
    if (!entry().typed(pad_field::pulls).isEmpty()) more.pulls = typed.pulls;
    if (!entry().typed(pad_field::oil).isEmpty()) more.oil_volume = typed.oil_volume;
    return more;
}

bool PadModel::adds() const {
    if (!empty() || redoing() || !latest(visit().readings, test_, cylinder_)) return false;
    const auto more = addition();
    return more.first || more.pulls || more.oil_volume;
}

void PadModel::keepAddition() {
    const int here = cylinder_;
    const ReadingId id = latest(visit().readings, test_, here)->id;
    const auto more = addition();
    QStringList what;
    if (more.oil_volume) what << tr("oil %1").arg(format().typed(*more.oil_volume));
    if (more.first) what << tr("first puff %1").arg(format().typed(*more.first));
    if (more.pulls) what << tr("%n pulls", nullptr, *more.pulls);
    store(workflow::add_to_reading(id, more),
          tr("Cylinder %1: %2 kept").arg(here).arg(what.join(QStringLiteral(", "))), {}, [this, id, more] {
              return std::ranges::any_of(visit().readings, [&](const Reading& kept) {
                  return kept.id == id && (!more.oil_volume || kept.oil_volume == more.oil_volume) &&
                         (!more.first || kept.first == more.first) &&
                         (!more.pulls || kept.pulls == more.pulls);
              });
          });
    const int next = nextOf(here);
    moveTo(next == 0 ? here : next);
}

void PadModel::keep() {
    const int here = cylinder_;
    if (adds()) return keepAddition();
    if (endLacks()) {
        lacking_ = mainField();
        focusField(lacking_);
        return;
    }
    if (empty()) {
        const int next = nextOf(here);
        if (next == 0)
            emit finished();
        else
            moveTo(next);
        return;
    }
    if (lacking()) return;
    if (other_unit_) {
        emit unitAsked();
        return;
    }
    if (!earlierOil().isEmpty()) {
        emit oilAsked();
        return;
    }
    if (otherwise() && photo_asked_ != asTyped()) {
        photo_asked_ = asTyped();
        photo_settled_.reset();
        edited();
        emit photoAsked();
        return;
    }
    if (!odd_repeat_.isEmpty()) {
        emit repeatAsked();
        return;
    }
    keepAll();
}

void PadModel::keepRepeat() {
    // Unit and photo are asked about first, whichever way one comes.
    if (other_unit_ || !earlierOil().isEmpty() || (otherwise() && photo_asked_ != asTyped())) return keep();
    if (!empty() && !lacking()) keepAll();
}

void PadModel::keepOiled() {
    if (other_unit_ || (otherwise() && photo_asked_ != asTyped())) return keep();
    if (!empty() && !lacking()) keepAll(Oiled::before);
}

void PadModel::keepAll(Oiled oiled) {
    const int here = cylinder_;
    Reading made = typedFields().reading(here, tag_);
    made.session = session().id;
    made.oiled = oiled;
    if (oiled == Oiled::unknown && oilOfOtherSession())
        if (const auto gone = oilGone()) made.oiled = *gone ? Oiled::no : Oiled::before;
    oil_said_.reset();
    oil_asked_.reset();
    if (const auto read = takenOff()) findings::take_off_photo(made, *read);
    const auto settled = photo_asked_ == asTyped() ? photo_settled_ : std::nullopt;
    photo_settled_.reset();
    photo_asked_.clear();
    photo_taken_.clear();
    if (is_cranking(test_)) made.cranked_by = session().conditions.cranked_by;
    const auto redo = entry().redo;
    // The pressures, whichever field was typed in last.
    const QString shown = made.held && made.set ? format::shown_of_set(format(), made)
                          : made.final          ? format().typed(*made.final)
                                                : QString();
    // Held above set is no leakage: there is nothing to listen for.
    const bool above = made.held && made.set && is_above(made.held->si(), made.set->si());
    const bool listens = test_ == TestKind::leak_down && !redo && !above;
    store(redo ? workflow::redo_reading(ReadingId{*redo}, made, settled)
               : workflow::keep_reading(made, settled),
          here == 0 ? tr("%1 kept").arg(shown) : tr("Cylinder %1: %2 kept").arg(here).arg(shown),
          [this, here, listens] {
              if (listens) emit listenTo(here);
          });
    const int next = nextOf(here);
    moveTo(redo || test_ == TestKind::leak_down || next == 0 ? here : next);
}

// ---- Oil that another session left

const Reading* PadModel::oilOfOtherSession() const {
    if (!found() || (test_ != TestKind::dry && test_ != TestKind::leak_down)) return nullptr;
    return workflow::oil_of_other_session(others_, visit(), cylinder_, app()->desk().clock().now());
}

/// A kept reading of the cylinder says it of its own rings, for as long as no oil went in since.
std::optional<bool> PadModel::oilGone() const {
    if (oil_said_ && oil_said_->first == cylinder_) return oil_said_->second;
    if (engine_ran_) return true;
    const auto* wet = oilOfOtherSession();
    if (!wet) return std::nullopt;
    for (const auto& reading : visit().readings)
        if (reading.cylinder == cylinder_ && wet->taken_at < reading.taken_at &&
            (reading.test == TestKind::dry || reading.test == TestKind::leak_down))
            return reading.oiled == Oiled::no;
    return std::nullopt;
}

QString PadModel::earlierOil() const {
    const auto* wet = empty() || redoing() ? nullptr : oilOfOtherSession();
    if (!wet || oilGone()) return {};
    return tr("Wet test of cylinder %1, %2").arg(wet->cylinder).arg(format().shortDateTime(wet->taken_at));
}

void PadModel::settleOil(const QString& way) {
    // It ran with all its cylinders; what was wiped, or left, is this bore.
    if (way == QLatin1String("ran"))
        engine_ran_ = true;
    else
        oil_said_ = {cylinder_, way == QLatin1String("wiped")};
    changed();
    keep();
}

void PadModel::startRedo(const QString& readingId) {
    const auto id = ReadingId::parse(readingId.toStdString());
    if (!id) return;
    // Digits that are typed already are the new reading, unless others are typed now.
    const auto text = std::as_const(*this).entry().text;
    entries_.drop(place());
    entry().text = text;
    entry().next_replaces = !text.isEmpty();
    entry().redo = id->uuid;
    field_ = mainField();
    changed();
}

void PadModel::cancelRedo() {
    entries_.drop(place());
    changed();
}

void PadModel::remove(const QString& readingId) {
    const auto id = ReadingId::parse(readingId.toStdString());
    if (!id) return;
    if (id->uuid == lastKeptId()) forgetKept();
    app()->run(workflow::remove_reading(*id), this);
}

}  // namespace lapwing
