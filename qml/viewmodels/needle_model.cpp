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
#include "core/model/by_id.h"
#include "core/store/attachment_files.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "core/workflow/together.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/read_off.h"

namespace lapwing {
namespace {

using namespace std::chrono_literals;

constexpr double drawn_width = 1000;
/// From which confidence on a reading counts that the tester's card contradicts.
constexpr double sure = 0.8;

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
    looking_ = false;
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

const Reading* NeedleModel::typedReading() const {
    const auto* one = reading();
    if (!one || one->from == ReadingFrom::typed) return one;
    const auto* before =
        one->replaces ? with_id(visit().readings, std::optional(one->replaces->uuid)) : nullptr;
    return before && before->from == ReadingFrom::typed ? before : nullptr;
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
    const QString this_one = photo_id_ + QString::fromStdString(scale.full_scale.text()) +
                             (scale.sweep ? QString::fromStdString(scale.sweep->text()) : QString());
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
    app()->background().start([guard = QPointer(this), eye = *eye, file, range, this_one] {
        const QByteArray photo = whole(file);
        auto seen = eye->needle(photo, range);
        // A sweep that is wrong on the tester's card must not make every photo unreadable.
        bool other_sweep = false;
        if (seen && seen->refused() && range.sweep_deg) {
            auto open_range = range;
            open_range.sweep_deg.reset();
            auto without = eye->needle(photo, open_range);
            other_sweep = without && !without->refused() && without->confidence >= sure;
            if (other_sweep) seen = std::move(without);
        }
        const QSize size = QImageReader(file, "jpg").size();
        QMetaObject::invokeMethod(
            qApp,
            [=, seen = std::move(seen)] {
                if (!guard || guard->looked_at_ != this_one) return;
                guard->looking_ = false;
                guard->size_ = size;
                if (seen) guard->take(*seen);
                if (seen && other_sweep)
                    guard->why_ =
                        tr("This scale sweeps about %1 degrees, the tester's card says %2: correct it "
                           "there, or see whether it is that tester's gauge.")
                            .arg(std::lround(seen->sweep_deg))
                            .arg(std::lround(*range.sweep_deg));
                if (!seen) guard->why_ = guard->format().text(seen.error());
                emit guard->changed();
            },
            Qt::QueuedConnection);
    });
}

void NeedleModel::take(const vision::NeedleReading& seen) {
    seen_ = seen;
    if (seen.refused()) {
        const std::string code(vision::code(seen.refusal));
        why_ = format().text(findings::Word{"read_refusal:" + code});
        if (photo() && !photo()->read_value && photo()->read_refusal.empty()) {
            Attachment changed = *photo();
            changed.read_refusal = code;
            app()->run(workflow::note_needle(changed), this);
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
    app()->run(confidence ? workflow::note_needle(changed) : workflow::save_attachment(changed), this);
}

QString NeedleModel::state() const {
    if (photo() && photo()->photo_of != PhotoOf::gauge) return {};
    if (looking_) return QStringLiteral("reading");
    if (photo() && photo()->read_value) return QStringLiteral("read");
    return why_.isEmpty() ? QString() : QStringLiteral("refused");
}

QString NeedleModel::line() const {
    if (looking_) return tr("Reading the needle ...");
    const auto* one = photo();
    if (!one || !one->read_value) return {};
    QString text = tr("Reads %1").arg(read_off(*one, format()));
    if (const auto* typed = typedReading())
        text += tr(", you typed %1").arg(format::typed_off_gauge(format(), *typed));
    if (!one->read_confidence) text += tr(" (needle set by hand)");
    return text;
}

bool NeedleModel::differs() const {
    const auto* typed = typedReading();
    return typed && photo() && findings::photo_differs(*typed, *photo());
}

QVariantList NeedleModel::choices() const {
    const auto* typed = typedReading();
    if (!typed || !photo() || !photo()->read_value) return {};
    const auto choice = [](ReadSettled value, const QString& text) {
        return QVariantMap{{"value", QString::fromUtf8(word(value).data())}, {"text", text}};
    };
    return {choice(ReadSettled::as_read, tr("%1 as read").arg(format().typed(*photo()->read_value))),
            choice(ReadSettled::as_typed, tr("%1 as typed").arg(format::typed_off_gauge(format(), *typed))),
            choice(ReadSettled::left_open, tr("leave open")),
            choice(ReadSettled::photo_only, tr("photo only"))};
}

QString NeedleModel::settled() const {
    return photo() && photo()->read_settled ? QString::fromUtf8(word(*photo()->read_settled).data())
                                            : QString();
}

void NeedleModel::settle(const QString& text) {
    const auto way = from_word<ReadSettled>(text.toStdString());
    const auto* standing = reading();
    const auto* typed = typedReading();
    if (!way || !photo() || !typed || !photo()->read_value || photo()->read_settled == way) return;
    Attachment changed = *photo();
    changed.read_settled = way;
    const bool by_photo = *way == ReadSettled::as_read;
    if (by_photo == (standing != typed)) return app()->run(workflow::save_attachment(changed), this);
    // Which number stands for the reading changes: the other stays in the history. It was taken when it was
    // taken, whenever somebody decides.
    Reading instead = *typed;
    instead.id = app()->desk().make_id<ReadingId>();
    instead.lineage = {};
    if (by_photo) findings::take_off_photo(instead, *photo()->read_value);
    std::vector<workflow::Intent> all{workflow::redo_reading(standing->id, instead)};
    // It is the same measurement: whatever else hung on it goes along.
    for (Attachment other : visit().attachments) {
        if (other.tie.record != standing->id.uuid) continue;
        if (other.id == changed.id) other = changed;
        other.tie.record = instead.id.uuid;
        all.push_back(workflow::save_attachment(other));
    }
    app()->run(workflow::together(
                   "photo.settle",
                   {std::string(word(typed->test)), std::to_string(typed->cylinder), std::string(word(*way))},
                   std::move(all)),
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

std::optional<TypedPressure> NeedleModel::setPressure() const {
    const Reading* newest = nullptr;
    for (const auto& one : visit().readings)
        if (one.test == TestKind::leak_down && one.set) newest = &one;
    return newest ? newest->set : std::nullopt;
}

QVariantList NeedleModel::offers() const {
    QVariantList list;
    if (!photo() || photo()->tie.to != TiedTo::cylinder || !photo()->read_value) return list;
    const auto pad = from_word<TestKind>(test_.toStdString());
    for (const TestKind kind : {TestKind::dry, TestKind::wet, TestKind::leak_down}) {
        if (pad && *pad != kind) continue;
        if (kind == TestKind::wet && engine().fuel == Fuel::diesel) continue;
        if (kind == TestKind::leak_down && !setPressure()) continue;
        list << QVariantMap{
            {"value", QString::fromUtf8(word(kind).data())},
            {"text",
             tr("Keep %1 as a reading: %2").arg(format().typed(*photo()->read_value), format().name(kind))}};
    }
    return list;
}

void NeedleModel::keepAsReading(const QString& test) {
    const auto kind = from_word<TestKind>(test.toStdString());
    if (!kind || offers().isEmpty()) return;
    Reading read;
    read.id = app()->desk().make_id<ReadingId>();
    read.session = session().id;
    read.test = *kind;
    read.cylinder = photo()->tie.cylinder.value_or(1);
    read.from = ReadingFrom::photo;
    if (*kind == TestKind::leak_down) read.set = setPressure();
    (*kind == TestKind::leak_down ? read.held : read.final) = photo()->read_value;
    Attachment changed = *photo();
    changed.tie = {TiedTo::reading, read.id.uuid, {}, {}};
    app()->run(
        workflow::together("reading.keep", {std::string(word(read.test)), std::to_string(read.cylinder)},
                           {workflow::keep_reading(read), workflow::save_attachment(changed)}),
        this);
}

QString NeedleModel::again() const {
    const auto* one = photo();
    if (!adjustable() || !one || !one->read_value || !one->read_confidence) return {};
    const double stored = unit_.number(one->read_value->value());
    const double u = std::max(seen_->u, 0.001 * full_scale_);
    if (std::abs(seen_->value - stored) <= u) return {};
    return tr("Read again with the gauge's range as it is now: %1")
        .arg(
            format().typed(TypedPressure::from(unit_.quantity(seen_->value), unit_, decimals_for(seen_->u))));
}

void NeedleModel::readAgain() {
    if (!again().isEmpty()) store(seen_->value, seen_->u, seen_->confidence);
}

}  // namespace lapwing
