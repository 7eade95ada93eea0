// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "qml/viewmodels/pad_model.h"
#include "tests/viewmodels/shop.h"

namespace lapwing {

/// An engine with an open session, and the pads of it.
struct PadBench {
    explicit PadBench(int cylinders = 4)
        : engine(shop.add_engine(QStringLiteral("Harbour four"), cylinders)),
          session(shop.open_session(engine, "As found")) {}

    template <class Model>
    std::unique_ptr<Model> open(const QString& test = {}) {
        auto model = std::make_unique<Model>();
        model->setSessionId(text_id(session));
        if constexpr (std::is_same_v<Model, PadModel>) model->setTest(test);
        complete(*model, shop);
        return model;
    }
    static void type(KeyedModel& pad, const QString& keys) {
        for (const QChar key : keys)
            pad.press(key);
    }
    /// What a leak-down tester was set to, and what of it the cylinder held.
    static void hold(KeyedModel& pad, const QString& set, const QString& held) {
        pad.focusField(QStringLiteral("set"));
        pad.clear();
        type(pad, set);
        pad.focusField(QStringLiteral("held"));
        type(pad, held);
    }
    Visit visit() const { return shop.desk->visit(session).value(); }

    Shop shop;
    Engine engine;
    SessionId session;
};

/// All lines of the pad, as a person reads them.
inline QString words(const KeyedModel& pad) {
    QStringList lines;
    for (const auto& line : pad.lines())
        lines << line.toMap()[QStringLiteral("figure")].toString() + QLatin1Char(' ') +
                     line.toMap()[QStringLiteral("text")].toString();
    return lines.join(QLatin1Char('\n'));
}

}  // namespace lapwing
