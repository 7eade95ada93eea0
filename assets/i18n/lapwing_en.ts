<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>DeleteEngineSheet</name>
    <message numerus="yes">
        <source>With it go %n session(s): readings, photos, voice notes, plans. Undo brings all of it back as long as it is offered; after that only a backup or a session file does.</source>
        <translation>
            <numerusform>With it goes %n session: readings, photos, voice notes, plans. Undo brings all of it back as long as it is offered; after that only a backup or a session file does.</numerusform>
            <numerusform>With it go %n sessions: readings, photos, voice notes, plans. Undo brings all of it back as long as it is offered; after that only a backup or a session file does.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WipeLock</name>
    <message numerus="yes">
        <source>Touches count again in %n second(s).</source>
        <translation>
            <numerusform>Touches count again in %n second.</numerusform>
            <numerusform>Touches count again in %n seconds.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::PlanModel</name>
    <message numerus="yes">
        <source>%n price(s) too long to add up</source>
        <translation>
            <numerusform>%n price too long to add up</numerusform>
            <numerusform>%n prices too long to add up</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::SessionModel</name>
    <message numerus="yes">
        <source>%n left out</source>
        <translation>
            <numerusform>%n left out</numerusform>
            <numerusform>%n left out</numerusform>
        </translation>
    </message>
</context>
</TS>
