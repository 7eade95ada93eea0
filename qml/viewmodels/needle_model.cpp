// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/needle_model.h"

#include <QCoreApplication>
#include <QFile>
#include <QImageReader>
#include <QPointer>
#include <QThreadPool>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <numbers>

#include "core/findings/photo_reading.h"
#include "core/store/attachment_files.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"

namespace lapwing {
namespace {

using namespace std::chrono_literals;

constexpr double drawn_width = 1000;

/// As many decimals as an uncertainty of that size lets stand.
int decimals_for(double u) {
    return u > 0 ? std::clamp(int(std::ceil(-std::log10(2 * u))), 0, 4) : 2;
}

template <class T>
const T* with_id(const std::vector<T>& all, const std::optional<Uuid>& id) {
    const auto found = std::ranges::find_if(all, [&](const T& one) { return one.id.uuid == id; });
    return found == all.end() ? nullptr : &*found;
}

/// One step: done and undone together, under the name of the first.
workflow::Intent together(workflow::Intent first, workflow::Intent second) {
    return [first = std::move(first),
            second = std::move(second)](const workflow::Now& now) -> Result<workflow::Command> {
        auto command = first(now);
        if (!command) return command;
        auto more = second(now);
        if (!more) return more;
        command->edits.insert(command->edits.end(), more->edits.begin(), more->edits.end());
        return command;
    };
}

/// In the user's language. The library behind vision::sentence is not to be linked here: it is large.
QString why_refused(vision::Refusal refusal) {
    switch (refusal) {
        case vision::Refusal::no_dial:
            return NeedleModel::tr(
                "No round dial was found. Fill the ring with the gauge and take the photo again.");
        case vision::Refusal::no_scale:
            return NeedleModel::tr(
                "A dial was found, but not its scale. Take the photo closer, sharper and without "
                "glare.");
        case vision::Refusal::no_needle:
            return NeedleModel::tr(
                "The scale was found, but not the needle. Take the photo again without glare on it.");
        case vision::Refusal::two_needles:
            return NeedleModel::tr(
                "There is more than one needle on the dial, and the photo does not tell which of them to "
                "read. Type the value.");
        case vision::Refusal::unsure:
            return NeedleModel::tr(
                "The reading is too doubtful to give. Take the photo square on and without glare, or "
                "type the value.");
        case vision::Refusal::none:
            break;
    }
    return {};
}

QByteArray whole(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace

NeedleModel::NeedleModel(QObject* parent) : EvidenceBacked(parent) {
    rest_.setSingleShot(true);
    rest_.setInterval(400ms);
    connect(&rest_, &QTimer::timeout, this, [this] {
        if (seen_) store(seen_->value, std::max(seen_->u, 0.005 * full_scale_), {});
    });
    connect(this, &NeedleModel::photoChanged, this, &NeedleModel::look);
}

void NeedleModel::setPhotoId(const QString& id) {
    if (photo_id_ == id) return;
    photo_id_ = id;
    seen_.reset();
    why_.clear();
    looked_at_.clear();
    emit photoChanged();
    emit changed();
}

void NeedleModel::refresh() {
    look();
    emit changed();
}

const Reading* NeedleModel::reading() const {
    return photo() && photo()->tie.to == TiedTo::reading ? with_id(visit().readings, photo()->tie.record)
                                                         : nullptr;
}

const Tester* NeedleModel::tester() const {
    const auto* typed = reading();
    const auto kind = typed ? std::optional(typed->test) : from_word<TestKind>(test_.toStdString());
    auto id = typed ? typed->tester : std::nullopt;
    if (photo() && photo()->tie.to == TiedTo::tester && photo()->tie.record)
        id = TesterId{*photo()->tie.record};
    if (!id && kind == TestKind::leak_down) id = session().leak_down_tester;
    if (!id && kind == TestKind::crankcase) id = session().crankcase_tester;
    if (!id) id = session().compression_gauge ? session().compression_gauge : session().leak_down_tester;
    return id ? with_id(dossier().testers, id->uuid) : nullptr;
}

void NeedleModel::look() {
    if (!found() || !photo() || photo()->photo_of != PhotoOf::gauge) return;
    const auto* gauge = tester();
    if (!gauge) {
        why_ =
            tr("Say in Conditions which tester is used: the range of its gauge is needed to read the photo.");
        emit changed();
        return;
    }
    const auto& scale = gauge->gauge;
    const QString this_one = photo_id_ + QString::fromStdString(scale.full_scale.text());
    if (looked_at_ == this_one) return;
    looked_at_ = this_one;
    unit_ = scale.full_scale.unit();
    full_scale_ = scale.full_scale.number();
    const auto eye = app()->eye().eye();
    if (!eye) {
        why_ = format().text(eye.error());
        emit changed();
        return;
    }
    looking_ = true;
    why_.clear();
    emit changed();
    vision::DialRange range{.min = 0.0, .max = full_scale_};
    if (scale.sweep) range.sweep_deg = scale.sweep->number();
    const QString file = QString::fromStdString(app()->desk().files().path(photo()->sha256).string());
    QThreadPool::globalInstance()->start([guard = QPointer(this), eye = *eye, file, range, this_one] {
        auto seen = eye->needle(whole(file), range);
        const QSize size = QImageReader(file, "jpg").size();
        QMetaObject::invokeMethod(
            qApp,
            [=, seen = std::move(seen)] {
                if (!guard || guard->looked_at_ != this_one) return;
                guard->looking_ = false;
                guard->size_ = size;
                if (seen)
                    guard->take(*seen);
                else
                    guard->why_ = guard->format().text(seen.error());
                emit guard->changed();
            },
            Qt::QueuedConnection);
    });
}

void NeedleModel::take(const vision::NeedleReading& seen) {
    seen_ = seen;
    if (seen.refused()) {
        why_ = why_refused(seen.refusal);
        if (photo() && !photo()->read_value && photo()->read_refusal.empty()) {
            Attachment changed = *photo();
            changed.read_refusal = why_.toStdString();
            app()->run(workflow::save_attachment(changed), this);
        }
        return;
    }
    // What stands there already was read then, or set by a person.
    if (photo() && photo()->read_value) {
        const double angle = photo()->read_value->number() / full_scale_ * seen.sweep_deg;
        if (!photo()->read_confidence && photo()->read_value->unit() == unit_)
            seen_->needle_angle_deg = angle;
        return;
    }
    store(seen.value, seen.u, seen.confidence);
}

void NeedleModel::store(double value, double u, std::optional<double> confidence) {
    if (!photo()) return;
    const int decimals = decimals_for(u);
    Attachment changed = *photo();
    changed.read_value = TypedPressure::from(unit_.quantity(value), unit_, decimals);
    changed.read_uncertainty = TypedPressure::from(unit_.quantity(u), unit_, decimals + 1);
    changed.read_confidence.reset();
    if (confidence)
        changed.read_confidence = TypedRatio::from(units::one.quantity(*confidence), units::one, 2);
    changed.read_refusal.clear();
    changed.read_settled.reset();
    app()->run(workflow::save_attachment(changed), this);
}

QString NeedleModel::state() const {
    if (looking_) return QStringLiteral("reading");
    if (photo() && photo()->read_value) return QStringLiteral("read");
    return why_.isEmpty() ? QString() : QStringLiteral("refused");
}

QString NeedleModel::line() const {
    if (looking_) return tr("Reading the needle ...");
    const auto* one = photo();
    if (!one || !one->read_value) return {};
    QString text = tr("Reads %1").arg(format().typed(*one->read_value));
    if (one->read_uncertainty) {
        const double both = 2 * one->read_uncertainty->number();
        text += QStringLiteral(" ± ") +
                format().locale().toString(both, 'f', decimals_for(one->read_uncertainty->number()));
    }
    const auto typed = reading() ? findings::typed_off_gauge(*reading()) : std::nullopt;
    if (typed) text += tr(", you typed %1").arg(format().typed(*typed));
    if (!one->read_confidence) text += tr(" (needle set by hand)");
    return text;
}

bool NeedleModel::differs() const {
    const auto typed = reading() ? findings::typed_off_gauge(*reading()) : std::nullopt;
    return typed && photo() && findings::photo_differs(*typed, *photo());
}

QVariantList NeedleModel::choices() const {
    const auto typed = reading() ? findings::typed_off_gauge(*reading()) : std::nullopt;
    if (!typed || !photo() || !photo()->read_value) return {};
    const auto choice = [](ReadSettled value, const QString& text) {
        return QVariantMap{{"value", QString::fromUtf8(word(value).data())}, {"text", text}};
    };
    return {choice(ReadSettled::as_read, tr("%1 as read").arg(format().typed(*photo()->read_value))),
            choice(ReadSettled::as_typed, tr("%1 as typed").arg(format().typed(*typed))),
            choice(ReadSettled::left_open, tr("leave open")),
            choice(ReadSettled::photo_only, tr("photo only"))};
}

QString NeedleModel::settled() const {
    return photo() && photo()->read_settled ? QString::fromUtf8(word(*photo()->read_settled).data())
                                            : QString();
}

void NeedleModel::settle(const QString& text) {
    const auto way = from_word<ReadSettled>(text.toStdString());
    const auto* typed = reading();
    if (!way || !photo() || !typed || !photo()->read_value) return;
    Attachment changed = *photo();
    changed.read_settled = way;
    if (*way != ReadSettled::as_read) return app()->run(workflow::save_attachment(changed), this);
    // What was typed stays in the history; the reading of the photo stands in for it.
    Reading corrected = *typed;
    corrected.id = app()->desk().make_id<ReadingId>();
    corrected.taken_at = app()->desk().clock().now();
    corrected.from = ReadingFrom::photo;
    corrected.replaces = typed->id;
    (corrected.held ? corrected.held : corrected.final) = photo()->read_value;
    changed.tie.record = corrected.id.uuid;
    app()->run(together(workflow::redo_reading(typed->id, corrected), workflow::save_attachment(changed)),
               this);
}

QString NeedleModel::plane(double radius, double deg) const {
    const auto& h = seen_->plane_to_photo;
    const double angle = deg * std::numbers::pi / 180;
    const double x = radius * std::cos(angle), y = radius * std::sin(angle);
    const double w = h[6] * x + h[7] * y + h[8];
    const double scale = drawn_width / std::max(1.0, size_.width());
    return QStringLiteral("%1 %2")
        .arg((h[0] * x + h[1] * y + h[2]) / w * scale, 0, 'f', 1)
        .arg((h[3] * x + h[4] * y + h[5]) / w * scale, 0, 'f', 1);
}

QString NeedleModel::plane(double radius, double from_deg, double to_deg) const {
    QStringList words;
    constexpr int pieces = 48;
    for (int i = 0; i <= pieces; ++i)
        words << (i == 0 ? QStringLiteral("M ") : QStringLiteral("L ")) +
                     plane(radius, from_deg + (to_deg - from_deg) * i / pieces);
    return words.join(u' ');
}

QString NeedleModel::ring() const {
    if (!adjustable()) return {};
    const auto tick = [this](double deg) {
        return QStringLiteral(" M ") + plane(0.9, deg) + QStringLiteral(" L ") + plane(1.1, deg);
    };
    return plane(1, 0, seen_->sweep_deg) + tick(0) + tick(seen_->sweep_deg);
}

QString NeedleModel::needle() const {
    if (!adjustable()) return {};
    return QStringLiteral("M ") + plane(0, 0) + QStringLiteral(" L ") + plane(1.05, seen_->needle_angle_deg);
}

void NeedleModel::turn(double degrees) {
    if (!adjustable() || seen_->sweep_deg <= 0) return;
    seen_->needle_angle_deg = std::clamp(seen_->needle_angle_deg + degrees, -5.0, seen_->sweep_deg + 5.0);
    seen_->value = std::max(0.0, seen_->needle_angle_deg / seen_->sweep_deg * full_scale_);
    rest_.start();
    emit changed();
}

QString NeedleModel::offer() const {
    const auto kind = from_word<TestKind>(test_.toStdString());
    const bool here = photo() && photo()->tie.to == TiedTo::cylinder && photo()->read_value;
    if (!here || (kind != TestKind::dry && kind != TestKind::wet)) return {};
    return tr("Keep %1 as a reading: %2").arg(format().typed(*photo()->read_value), format().name(*kind));
}

void NeedleModel::keepAsReading() {
    if (offer().isEmpty()) return;
    Reading read;
    read.id = app()->desk().make_id<ReadingId>();
    read.session = session().id;
    read.test = *from_word<TestKind>(test_.toStdString());
    read.cylinder = photo()->tie.cylinder.value_or(1);
    read.from = ReadingFrom::photo;
    read.final = photo()->read_value;
    Attachment changed = *photo();
    changed.tie = {TiedTo::reading, read.id.uuid, {}, {}};
    app()->run(together(workflow::keep_reading(read), workflow::save_attachment(changed)), this);
}

}  // namespace lapwing
