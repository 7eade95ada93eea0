<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>BringIn</name>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n session</numerusform>
            <numerusform>%n sessions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n reading</numerusform>
            <numerusform>%n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exits</source>
        <translation>
            <numerusform>%n exit</numerusform>
            <numerusform>%n exits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clearances</source>
        <translation>
            <numerusform>%n clearance</numerusform>
            <numerusform>%n clearances</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos and voice notes</source>
        <translation>
            <numerusform>%n photo or voice note</numerusform>
            <numerusform>%n photos and voice notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n note</numerusform>
            <numerusform>%n notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the plan</source>
        <translation>
            <numerusform>%n line of the plan</numerusform>
            <numerusform>%n lines of the plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n testers</source>
        <translation>
            <numerusform>%n tester</numerusform>
            <numerusform>%n testers</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records were changed and take the place of those here.</source>
        <translation>
            <numerusform>%n record was changed and takes the place of the one here.</numerusform>
            <numerusform>%n records were changed and take the place of those here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records were changed here as well: both versions of each are kept.</source>
        <translation>
            <numerusform>%n record was changed here as well: both versions are kept.</numerusform>
            <numerusform>%n records were changed here as well: both versions of each are kept.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records that you took out stay out.</source>
        <translation>
            <numerusform>%n record that you took out stays out.</numerusform>
            <numerusform>%n records that you took out stay out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DeleteEngineSheet</name>
    <message numerus="yes">
        <source>With it go %n session(s): readings, photos, voice notes, plans. Undo brings all of it back, also later from More, until something else is done; after that only a backup or a session file does.</source>
        <translation>
            <numerusform>With it goes %n session: readings, photos, voice notes, plans. Undo brings all of it back, also later from More, until something else is done; after that only a backup or a session file does.</numerusform>
            <numerusform>With it go %n sessions: readings, photos, voice notes, plans. Undo brings all of it back, also later from More, until something else is done; after that only a backup or a session file does.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EngineCardPage</name>
    <message numerus="yes">
        <source>All %n sessions</source>
        <translation>
            <numerusform>The %n session</numerusform>
            <numerusform>All %n sessions</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message numerus="yes">
        <source>%n photos without their place</source>
        <translation>
            <numerusform>%n photo without its place</numerusform>
            <numerusform>%n photos without their place</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TesterCardPage</name>
    <message numerus="yes">
        <source>It can&apos;t be deleted: %n sessions and readings were taken with it, and their figures need it. If it is no longer used, say so in its name, so that nobody takes it by mistake.</source>
        <translation>
            <numerusform>It can&apos;t be deleted: one session or reading was taken with it, and its figures need it. If it is no longer used, say so in its name, so that nobody takes it by mistake.</numerusform>
            <numerusform>It can&apos;t be deleted: %n sessions and readings were taken with it, and their figures need it. If it is no longer used, say so in its name, so that nobody takes it by mistake.</numerusform>
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
    <name>lapwing::BackupModel</name>
    <message numerus="yes">
        <source>The backup holds %n engines.</source>
        <translation>
            <numerusform>The backup holds %n engine.</numerusform>
            <numerusform>The backup holds %n engines.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::EngineCardForm</name>
    <message numerus="yes">
        <source>%n cylinders</source>
        <translation>
            <numerusform>%n cylinder</numerusform>
            <numerusform>%n cylinders</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::EngineGlances</name>
    <message numerus="yes">
        <source>%n cylinders</source>
        <translation>
            <numerusform>%n cylinder</numerusform>
            <numerusform>%n cylinders</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::HistoryModel</name>
    <message numerus="yes">
        <source>%n visits where the meter was not read are not drawn.</source>
        <translation>
            <numerusform>%n visit where the meter was not read is not drawn.</numerusform>
            <numerusform>%n visits where the meter was not read are not drawn.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 over %n visits; the list below says the same.</source>
        <translation>
            <numerusform>%1 over %n visit; the list below says the same.</numerusform>
            <numerusform>%1 over %n visits; the list below says the same.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::PadModel</name>
    <message numerus="yes">
        <source>%n pulls</source>
        <translation>
            <numerusform>%n pull</numerusform>
            <numerusform>%n pulls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n pulls</source>
        <translation>
            <numerusform>%1, %n pull</numerusform>
            <numerusform>%1, %n pulls</numerusform>
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
<context>
    <name>lapwing::TodoModel</name>
    <message numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n note</numerusform>
            <numerusform>%n notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other causes</source>
        <translation>
            <numerusform>%n other cause</numerusform>
            <numerusform>%n other causes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tests asked for</source>
        <translation>
            <numerusform>%n test asked for</numerusform>
            <numerusform>%n tests asked for</numerusform>
        </translation>
    </message>
</context>
</TS>
