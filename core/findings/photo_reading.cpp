// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/photo_reading.h"

#include <cmath>

#include "core/findings/case.h"

namespace lapwing::findings {

namespace {
std::optional<TypedPressure> Reading::*gauge_field(const Reading& reading) {
    return reading.held ? &Reading::held : &Reading::final;
}
}  // namespace

std::optional<TypedPressure> typed_off_gauge(const Reading& reading) {
    return reading.*gauge_field(reading);
}

bool photo_differs(const Reading& typed, const Attachment& photo) {
    const auto value = typed_off_gauge(typed);
    if (!value || !photo.read_value) return false;
    // A difference of pressures: gauge zero falls out of it.
    const double u = photo.read_uncertainty ? photo.read_uncertainty->si() : 0.0;
    return std::abs(photo.read_value->si() - value->si()) > 2 * u + step_pa(typed, gauge_field(typed)) / 2;
}

void take_off_photo(Reading& reading, const TypedPressure& read) {
    reading.*gauge_field(reading) = read;
    reading.dial_loss.reset();
    reading.from = ReadingFrom::photo;
}

bool photo_unsettled(const Reading& reading, const Attachment& photo) {
    // What turned out to be another picture says nothing of a gauge.
    if (photo.photo_of && *photo.photo_of != PhotoOf::gauge) return false;
    const bool open = !photo.read_settled || photo.read_settled == ReadSettled::left_open;
    return open && photo_differs(reading, photo);
}

void add_photo_contradictions(const Case& at, CylinderFindings& cylinder) {
    for (const auto& photo : at.visit.attachments) {
        if (photo.tie.to != TiedTo::reading) continue;
        for (const auto& reading : at.visit.readings) {
            if (reading.id.uuid != photo.tie.record || reading.cylinder != cylinder.number) continue;
            bool counts = false;
            for (const auto* one : counted(at, reading.test, reading.cylinder))
                counts = counts || one->id == reading.id;
            if (counts && photo_unsettled(reading, photo))
                cylinder.contradictions.push_back(
                    remark("contra.photo_differs", word_of(reading.test),
                           figure(Dimension::gauge_pressure, typed_off_gauge(reading)->si()),
                           figure(Dimension::gauge_pressure, photo.read_value->si())));
        }
    }
}

}  // namespace lapwing::findings
