// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.ViewModels

// What the pad asks before it keeps a reading, each a sheet with its answers. `standing` is the reading that stands
// there, fresh() the wish for a session of its own.
Item {
    id: questions

    required property PadModel model
    property string standing

    signal fresh

    function ask(what: string) {
        sheets.show({
            unit: whichUnit,
            photo: photoReads,
            oil: earlierOil,
            repeat: repeated
        }[what]);
    }

    Connections {
        target: questions.model

        function onUnitAsked() {
            questions.ask("unit");
        }

        function onPhotoAsked() {
            questions.ask("photo");
        }

        function onOilAsked() {
            questions.ask("oil");
        }

        function onRepeatAsked() {
            questions.ask("repeat");
        }
    }

    SheetLoader {
        id: sheets
    }

    Component {
        id: whichUnit

        UnitSheet {
            model: questions.model
        }
    }

    Component {
        id: photoReads

        PhotoReadsSheet {
            model: questions.model
        }
    }

    Component {
        id: earlierOil

        EarlierOilSheet {
            model: questions.model
        }
    }

    Component {
        id: repeated

        RepeatSheet {
            model: questions.model
            standing: questions.standing
            onRedo: {
                questions.model.startRedo(standing);
                questions.model.keep();
            }
            onFresh: questions.fresh()
        }
    }
}
