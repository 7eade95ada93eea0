<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
