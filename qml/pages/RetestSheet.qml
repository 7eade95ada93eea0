// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// The day of the retest: one of a few, or one that is typed.
Sheet {
    id: sheet

    required property PlanModel plan

    property string typed
    property string problem

    function keep() {
        problem = plan.retestOn(typed);
        if (problem === "")
            close();
    }

    title: qsTr("Retest")

    LText {
        width: parent.width
        text: qsTr("Cold against cold, with the same gauge; after new rings not before they have run in.")
    }

    Repeater {
        model: [
            {
                months: 1,
                text: qsTr("In a month")
            },
            {
                months: 3,
                text: qsTr("In three months")
            },
            {
                months: 12,
                text: qsTr("In a year")
            },
            {
                months: 0,
                text: qsTr("No retest")
            }
        ]

        ListRow {
            required property var modelData

            objectName: "months_" + modelData.months
            width: parent.width
            text: modelData.text
            forward: false
            onClicked: {
                sheet.plan.retestInMonths(modelData.months);
                sheet.close();
            }
        }
    }

    TextRow {
        objectName: "day"
        width: parent.width
        label: qsTr("Or on this day")
        // A day that can be typed: one to come.
        placeholder: Qt.formatDate(new Date(Date.now() + 90 * 24 * 3600 * 1000), "yyyy-MM-dd")
        problem: sheet.problem
        onEdited: text => {
            sheet.typed = text;
            sheet.problem = "";
        }
    }

    actions: BigButton {
        objectName: "keep"
        enabled: sheet.typed !== ""
        text: qsTr("Keep")
        onClicked: sheet.keep()
    }
}
