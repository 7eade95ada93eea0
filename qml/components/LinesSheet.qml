// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick

// All derived lines of a readout, when the page has no room for them.
Sheet {
    id: sheet

    property var lines: []

    signal lineTapped(int index)

    title: qsTr("From this reading")

    Repeater {
        model: sheet.lines

        InfoLine {
            required property var modelData
            required property int index

            objectName: "sheetLine_" + index
            width: parent.width
            mark: modelData.mark ?? ""
            symbol: modelData.symbol ?? ""
            figure: modelData.figure ?? ""
            text: modelData.text ?? ""
            explained: modelData.from !== -1
            onClicked: {
                // Where it leads to a page or a question, the sheet must not lie over that.
                if (modelData.way || modelData.asks)
                    sheet.close();
                sheet.lineTapped(index);
            }
        }
    }
}
