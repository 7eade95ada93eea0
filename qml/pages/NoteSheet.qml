// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A remark on one thing: a note, another cause, or a test that is asked for. What is half written survives. `note` is
// the one that is changed, or empty.
Sheet {
    id: sheet

    required property AppContext app
    required property SecondOpinionModel model
    required property var thing
    property var note: ({})

    readonly property string draftKey: "note/" + model.sessionId + "/" + thing.key
    readonly property bool asksName: app.settings.author === ""
    property string kind: note.kind ?? "note"
    property string test: note.test ?? ""
    property string cause: note.cause ?? ""
    property string problem

    function missing(speak: bool): string {
        if (asksName && author.field.text.trim() === "")
            return qsTr("Write your name first: who gets the file back wants to know who says so.");
        if (kind === "other cause" && cause === "")
            return qsTr("Choose where it leaks in your view.");
        if (kind === "please test this" && test === "" && text.field.text.trim() === "")
            return qsTr("Choose a test, or write what should be tested.");
        if (kind === "note" && text.field.text.trim() === "" && !speak)
            return qsTr("Write a word, or speak it.");
        return "";
    }

    function keep(speak: bool) {
        problem = missing(speak);
        if (problem !== "")
            return;
        if (asksName)
            app.settings.author = author.field.text;
        model.keepNote(Object.assign({}, thing, {
            id: note.id ?? "",
            kind: kind,
            text: text.field.text,
            test: test,
            cause: cause
        }), speak);
        app.keepDraft(draftKey, "");
        close();
    }

    title: thing.title

    ChoiceRow {
        objectName: "kind"
        width: parent.width
        options: [
            {
                value: "note",
                text: qsTr("Note")
            },
            {
                value: "other cause",
                text: qsTr("Other cause")
            },
            {
                value: "please test this",
                text: qsTr("Please test this")
            }
        ]
        current: sheet.kind
        onChosen: value => sheet.kind = value
    }

    ChoiceRow {
        objectName: "cause"
        width: parent.width
        visible: sheet.kind === "other cause"
        label: qsTr("Where it leaks in your view")
        options: sheet.model.causes
        current: sheet.cause
        onChosen: value => sheet.cause = value
    }

    ChoiceRow {
        objectName: "test"
        width: parent.width
        visible: sheet.kind === "please test this"
        label: qsTr("Which test")
        options: sheet.model.tests
        current: sheet.test
        onChosen: value => sheet.test = value
    }

    NoteRow {
        id: text

        objectName: "text"
        width: parent.width
        label: qsTr("In words")
        text: sheet.note.text ?? sheet.app.draft(sheet.draftKey)
        onEdited: text => {
            if (sheet.note.id === undefined)
                sheet.app.keepDraft(sheet.draftKey, text);
        }
    }

    TextRow {
        id: author

        objectName: "author"
        width: parent.width
        visible: sheet.asksName
        label: qsTr("Your name, asked once")
        hint: qsTr("It stands beside what you write. Settings can change it.")
        maximumLength: 80
    }

    LText {
        objectName: "problem"
        width: parent.width
        visible: text !== ""
        role: "figure"
        text: sheet.problem
    }

    actions: [
        IconWord {
            objectName: "speak"
            visible: sheet.note.id === undefined
            symbol: "voice"
            text: qsTr("Speak it")
            onClicked: sheet.keep(true)
        },
        BigButton {
            objectName: "keep"
            text: qsTr("Keep")
            onClicked: sheet.keep(false)
        }
    ]
}
