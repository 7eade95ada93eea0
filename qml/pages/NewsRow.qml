// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// The way to what session files brought for an engine, while some of it was not seen or waits for a choice.
ListRow {
    id: row

    required property AppContext app
    required property string engineId

    signal go(name: string, args: var)

    objectName: "news"
    visible: news.unseen > 0 || news.twoVersions > 0
    symbol: "open"
    text: qsTr("What is new")
    detail: news.twoVersions > 0 ? qsTr("Two versions wait for a choice") : news.from
    figure: news.unseen > 0 ? String(news.unseen) : ""
    // Back from the list, where some of it was seen.
    onVisibleChanged: if (visible)
        soon.start()
    onClicked: go("News", {
        engineId: engineId
    })

    Timer {
        id: soon

        interval: 0
        onTriggered: news.lookAgain()
    }

    NewsModel {
        id: news

        app: row.app
        engineId: row.engineId
    }
}
