<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AgainPage</name>
    <message>
        <source>Before you test</source>
        <translation>Vor der Prüfung</translation>
    </message>
    <message>
        <source>How is the engine now?</source>
        <translation>Wie ist der Motor jetzt?</translation>
    </message>
    <message>
        <source>Throttle held wide open</source>
        <translation>Drosselklappe ganz offen gehalten</translation>
    </message>
    <message>
        <source>Engine warm</source>
        <translation>Motor warm</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
</context>
<context>
    <name>AppPage</name>
    <message>
        <source>Where does this come from?</source>
        <translation>Woher kommt das?</translation>
    </message>
</context>
<context>
    <name>AssumptionsPage</name>
    <message>
        <source>Working assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>The odds of where it leaks rest on these numbers. They were not yet counted on real engines. Every report names their version, so that it can be worked out again.</source>
        <translation>Die Wahrscheinlichkeiten, wo es undicht ist, beruhen auf diesen Zahlen. Sie wurden noch nicht an wirklichen Motoren ausgezählt. Jeder Bericht nennt ihre Version, damit er nachgerechnet werden kann.</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>BackupKeys</name>
    <message>
        <source>Names of signatures in it</source>
        <translation>Namen von Signaturen darin</translation>
    </message>
    <message>
        <source>Anyone who had this file could have put a name in. Tick those whose fingerprint you know; the others stay unknown keys.</source>
        <translation>Jeder, der diese Datei hatte, könnte einen Namen hineingesetzt haben. Anzukreuzen sind die, deren Fingerabdruck bekannt ist; die anderen bleiben unbekannte Schlüssel.</translation>
    </message>
    <message>
        <source>%1 (%2) is called %3 here, and stays so.</source>
        <translation>%1 (%2) heißt hier %3, und dabei bleibt es.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>One file with all engines, sessions, photos, voice notes and testers, owners&apos; names and contacts too. Keep it somewhere else than on this device.</source>
        <translation>Eine Datei mit allen Motoren, Sitzungen, Fotos, Sprachnotizen und Prüfgeräten, auch mit Namen und Kontaktdaten der Besitzer. Nicht nur auf diesem Gerät aufbewahren.</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation>%1: %2 %</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>To the engines</source>
        <translation>Zu den Motoren</translation>
    </message>
    <message>
        <source>The backup is made, but lies nowhere yet</source>
        <translation>Die Sicherung ist fertig, liegt aber noch nirgends</translation>
    </message>
    <message>
        <source>Choose where it goes</source>
        <translation>Ablageort wählen</translation>
    </message>
    <message>
        <source>Restore from a backup</source>
        <translation>Aus einer Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>Checked first, then shown, then merged with what is here</source>
        <translation>Erst geprüft, dann gezeigt, dann mit dem zusammengeführt, was hier ist</translation>
    </message>
    <message>
        <source>Nothing is recorded here yet, so there is nothing to back up. A backup is checked first, then shown, then brought in.</source>
        <translation>Hier ist noch nichts aufgezeichnet, also gibt es nichts zu sichern. Eine Sicherung wird erst geprüft, dann gezeigt, dann eingespielt.</translation>
    </message>
    <message>
        <source>Restoring takes nothing away. What you deleted here and the backup still has comes back; what was changed on both sides is kept in both versions.</source>
        <translation>Wiederherstellen nimmt nichts weg. Was hier gelöscht wurde und in der Sicherung noch da ist, kommt zurück; was auf beiden Seiten geändert wurde, bleibt in beiden Fassungen erhalten.</translation>
    </message>
    <message>
        <source>Don&apos;t</source>
        <translation>Lieber nicht</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Choose a backup</source>
        <translation>Sicherung wählen</translation>
    </message>
    <message>
        <source>Back up everything</source>
        <translation>Alles sichern</translation>
    </message>
</context>
<context>
    <name>BringIn</name>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n Sitzung</numerusform>
            <numerusform>%n Sitzungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n Messwert</numerusform>
            <numerusform>%n Messwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exits</source>
        <translation>
            <numerusform>%n Austritt</numerusform>
            <numerusform>%n Austritte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clearances</source>
        <translation>
            <numerusform>%n Ventilspiel</numerusform>
            <numerusform>%n Ventilspiele</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos and voice notes</source>
        <translation>
            <numerusform>%n Foto oder Sprachnotiz</numerusform>
            <numerusform>%n Fotos und Sprachnotizen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n Notiz</numerusform>
            <numerusform>%n Notizen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the plan</source>
        <translation>
            <numerusform>%n Posten im Plan</numerusform>
            <numerusform>%n Posten im Plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n testers</source>
        <translation>
            <numerusform>%n Prüfgerät</numerusform>
            <numerusform>%n Prüfgeräte</numerusform>
        </translation>
    </message>
    <message>
        <source>A new engine.</source>
        <translation>Ein neuer Motor.</translation>
    </message>
    <message>
        <source>A new engine with %1.</source>
        <translation>Ein neuer Motor; dabei: %1.</translation>
    </message>
    <message>
        <source>This engine is here already. New are %1.</source>
        <translation>Dieser Motor ist schon hier. Neu: %1.</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Nicht signiert</translation>
    </message>
    <message>
        <source>Its checksums show no damage, but nobody stands for it: anyone may have changed it on the way.</source>
        <translation>Die Prüfsummen zeigen keinen Schaden, aber niemand steht dafür ein: Unterwegs kann sie jeder geändert haben.</translation>
    </message>
    <message>
        <source>Unaltered since you handed it over</source>
        <translation>Unverändert seit der eigenen Übergabe</translation>
    </message>
    <message>
        <source>It carries the key of this library.</source>
        <translation>Sie trägt den Schlüssel dieses Bestands.</translation>
    </message>
    <message>
        <source>Unaltered since it was handed over by %1</source>
        <translation>Unverändert seit der Übergabe durch %1</translation>
    </message>
    <message>
        <source>You gave this key its name.</source>
        <translation>Der Name zu diesem Schlüssel wurde hier vergeben.</translation>
    </message>
    <message>
        <source>Unaltered since it was handed over; unknown key</source>
        <translation>Unverändert seit der Übergabe; Schlüssel unbekannt</translation>
    </message>
    <message>
        <source>Compare the fingerprint with the sender once, by eye or by telephone. Then give the key a name, and it is known from now on.</source>
        <translation>Den Fingerabdruck einmal mit dem Absender vergleichen, mit eigenen Augen oder am Telefon. Dann dem Schlüssel einen Namen geben, und er ist von da an bekannt.</translation>
    </message>
    <message>
        <source>Altered since it was handed over</source>
        <translation>Nach der Übergabe verändert</translation>
    </message>
    <message>
        <source>Something was changed, added or taken out after it was signed. Ask the sender for the file again.</source>
        <translation>Nach dem Signieren wurde etwas geändert, hinzugefügt oder herausgenommen. Den Absender noch einmal um die Datei bitten.</translation>
    </message>
    <message>
        <source>Its signature can&apos;t be read</source>
        <translation>Die Signatur ist nicht lesbar</translation>
    </message>
    <message>
        <source>It is damaged or from a newer version. Treat the file as not signed.</source>
        <translation>Sie ist beschädigt oder stammt aus einer neueren Version. Die Datei wie eine nicht signierte behandeln.</translation>
    </message>
    <message numerus="yes">
        <source>%n records were changed and take the place of those here.</source>
        <translation>
            <numerusform>%n Eintrag wurde geändert und ersetzt den hiesigen.</numerusform>
            <numerusform>%n Einträge wurden geändert und ersetzen die hiesigen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records were changed here as well: both versions of each are kept.</source>
        <translation>
            <numerusform>%n Eintrag wurde auch hier geändert: Beide Fassungen bleiben erhalten.</numerusform>
            <numerusform>%n Einträge wurden auch hier geändert: Von jedem bleiben beide Fassungen erhalten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records that you took out stay out.</source>
        <translation>
            <numerusform>%n hier herausgenommener Eintrag bleibt draußen.</numerusform>
            <numerusform>%n hier herausgenommene Einträge bleiben draußen.</numerusform>
        </translation>
    </message>
    <message>
        <source>All of it is here already.</source>
        <translation>Alles davon ist schon hier.</translation>
    </message>
    <message>
        <source>Photo of %1: %2. %3</source>
        <translation>Foto vom %1: %2. %3</translation>
    </message>
    <message>
        <source>Voice note of %1: %2. %3</source>
        <translation>Sprachnotiz vom %1: %2. %3</translation>
    </message>
    <message>
        <source>Its file is lost.</source>
        <translation>Die Datei dazu ist verloren.</translation>
    </message>
    <message>
        <source>Its file is damaged.</source>
        <translation>Die Datei dazu ist beschädigt.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>Photo of %1: %2</source>
        <translation>Foto vom %1: %2</translation>
    </message>
</context>
<context>
    <name>BringInFile</name>
    <message>
        <source>The sender no longer had everything. Not in this file:</source>
        <translation>Der Absender hatte nicht mehr alles. In dieser Datei fehlt:</translation>
    </message>
    <message>
        <source>These photos tell where they were taken. They are kept as the sender made them:</source>
        <translation>Diese Fotos verraten, wo sie aufgenommen wurden. Sie bleiben so, wie der Absender sie gemacht hat:</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
</context>
<context>
    <name>BringInPage</name>
    <message>
        <source>Before it is brought in</source>
        <translation>Vor dem Einlesen</translation>
    </message>
    <message>
        <source>Reading and checking it …</source>
        <translation>Wird gelesen und geprüft …</translation>
    </message>
    <message>
        <source>This file can&apos;t be brought in</source>
        <translation>Diese Datei lässt sich nicht einlesen</translation>
    </message>
    <message>
        <source>Bring back what was taken out here</source>
        <translation>Hier Herausgenommenes zurückholen</translation>
    </message>
    <message>
        <source>Records that you deleted and the file still has</source>
        <translation>Einträge, die hier gelöscht wurden und in der Datei noch da sind</translation>
    </message>
    <message>
        <source>Bringing it in takes nothing away. Undo takes it back as one step.</source>
        <translation>Das Einlesen nimmt nichts weg. „Rückgängig“ nimmt es in einem Schritt zurück.</translation>
    </message>
    <message>
        <source>Don&apos;t</source>
        <translation>Lieber nicht</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Bring it in all the same</source>
        <translation>Trotzdem einlesen</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Einlesen</translation>
    </message>
</context>
<context>
    <name>CalculatorPage</name>
    <message>
        <source>This engine is gone: it was deleted. Undo brings it back.</source>
        <translation>Diesen Motor gibt es nicht mehr: Er wurde gelöscht. „Rückgängig“ holt ihn zurück.</translation>
    </message>
    <message>
        <source>This session is gone: it was deleted. Undo brings it back.</source>
        <translation>Diese Sitzung ist weg: Sie wurde gelöscht. „Rückgängig“ holt sie zurück.</translation>
    </message>
    <message>
        <source>Forget what was typed</source>
        <translation>Eingaben verwerfen</translation>
    </message>
    <message>
        <source>Attach to session</source>
        <translation>An Sitzung anhängen</translation>
    </message>
</context>
<context>
    <name>CalculatorResult</name>
    <message>
        <source>Where does this come from?</source>
        <translation>Woher kommt das?</translation>
    </message>
</context>
<context>
    <name>Calculators</name>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Held pressure</source>
        <translation>Haltedruck</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>At another set pressure</source>
        <translation>Bei einem anderen eingestellten Druck</translation>
    </message>
    <message>
        <source>The same leak, cylinder and tester. The further apart the two set pressures, the more they tell.</source>
        <translation>Dasselbe Leck, derselbe Zylinder, dasselbe Gerät. Je weiter die beiden eingestellten Drücke auseinanderliegen, desto mehr sagen sie.</translation>
    </message>
    <message>
        <source>A gauge of its own for the set pressure</source>
        <translation>Ein eigenes Manometer für den eingestellten Druck</translation>
    </message>
    <message>
        <source>Turned otherwise</source>
        <translation>Anders durchgedreht</translation>
    </message>
    <message>
        <source>Other cranking speed</source>
        <translation>Andere Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>Leave it empty for that of a flat battery.</source>
        <translation>Leer lassen für die einer leeren Batterie.</translation>
    </message>
    <message>
        <source>Pressure at intake closing, of the air&apos;s</source>
        <translation>Druck bei Einlassschluss, Anteil des Luftdrucks</translation>
    </message>
    <message>
        <source>How far the throttle is shut: 100 % is wide open. Leave it empty for shut, with how far that goes as the range.</source>
        <translation>Wie weit die Drosselklappe zu ist: 100 % heißt ganz offen. Leer lassen für geschlossen; der Bereich zeigt dann, wie weit das gehen kann.</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Full scale of its gauge</source>
        <translation>Skalenendwert des Manometers</translation>
    </message>
    <message>
        <source>With scale and class the uncertainty is this gauge&apos;s own; 0 is not known.</source>
        <translation>Mit Skala und Klasse ist die Unsicherheit die dieses Manometers; 0 heißt unbekannt.</translation>
    </message>
    <message>
        <source>Class by</source>
        <translation>Klasse nach</translation>
    </message>
    <message>
        <source>Accuracy class</source>
        <translation>Genauigkeitsklasse</translation>
    </message>
    <message>
        <source>EN 837-1: 1.6 or 2.5. ASME B40.100: a grade from A to D.</source>
        <translation>EN 837-1: 1,6 oder 2,5. ASME B40.100: eine Stufe von A bis D.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <translation>Durchmesser der Drosselbohrung</translation>
    </message>
    <message>
        <source>Leave it empty if you don&apos;t know: the app assumes the usual one, and the ± is wider for it.</source>
        <translation>Leer lassen, wenn nicht bekannt: Die App nimmt die übliche an, und das ± ist dafür weiter.</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <translation>Durchflussbeiwert</translation>
    </message>
    <message>
        <source>Leave it empty if you don&apos;t know: the app assumes one.</source>
        <translation>Leer lassen, wenn unbekannt: Die App nimmt einen an.</translation>
    </message>
    <message>
        <source>Other tester</source>
        <translation>Anderes Prüfgerät</translation>
    </message>
    <message>
        <source>Its set pressure</source>
        <translation>Dessen eingestellter Druck</translation>
    </message>
    <message>
        <source>Its restrictor diameter</source>
        <translation>Dessen Drosselbohrung, Durchmesser</translation>
    </message>
    <message>
        <source>Drilled hole</source>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>Diameter of the hole</source>
        <translation>Durchmesser des Lochs</translation>
    </message>
    <message>
        <source>Drilled through a cap that stands in the cylinder&apos;s place, as long as the restrictor is.</source>
        <translation>Durch eine Kappe gebohrt, die den Zylinder ersetzt, so lang wie die Drosselbohrung.</translation>
    </message>
    <message>
        <source>Held pressure on the hole</source>
        <translation>Haltedruck am Loch</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>What a barometer in the shop shows. It wins over the altitude; a weather report&apos;s figure is for sea level and does not do.</source>
        <translation>Was ein Barometer in der Werkstatt zeigt. Es geht vor die Höhe; der Wert aus dem Wetterbericht gilt für Meereshöhe und taugt hier nicht.</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Factory limit, for sea level</source>
        <translation>Werksgrenzwert, auf Meereshöhe</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Hub</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Between the centres of its eyes. Leave it empty and the app assumes one.</source>
        <translation>Von Augenmitte zu Augenmitte. Leer lassen, und die App nimmt eine Länge an.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Arbeitsverfahren</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Exhaust port closes after bottom dead centre</source>
        <translation>Auslassschlitz schließt nach dem unteren Totpunkt</translation>
    </message>
    <message>
        <source>Intake closes after bottom dead centre</source>
        <translation>Einlass schließt nach dem unteren Totpunkt</translation>
    </message>
    <message>
        <source>Leave it empty and the app assumes one, with its doubt.</source>
        <translation>Leer lassen, und die App nimmt einen Wert an, mit seiner Unsicherheit.</translation>
    </message>
    <message>
        <source>Intake closing is quoted at</source>
        <translation>Einlassschluss angegeben bei</translation>
    </message>
    <message>
        <source>Cranking</source>
        <translation>Durchdrehen</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>Warm or cold</source>
        <translation>Warm oder kalt</translation>
    </message>
    <message>
        <source>Compression gauge</source>
        <translation>Kompressionsprüfer</translation>
    </message>
    <message>
        <source>Hose and gauge hold</source>
        <translation>Schlauch und Manometer fassen</translation>
    </message>
    <message>
        <source>Check valve sits at the</source>
        <translation>Sitz des Rückschlagventils</translation>
    </message>
    <message>
        <source>Valve core</source>
        <translation>Ventileinsatz</translation>
    </message>
    <message>
        <source>Adapter adds</source>
        <translation>Adapter zusätzlich</translation>
    </message>
    <message>
        <source>Reading to correct</source>
        <translation>Zu korrigierender Messwert</translation>
    </message>
    <message>
        <source>Wet test</source>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>Oil put in</source>
        <translation>Eingefülltes Öl</translation>
    </message>
    <message>
        <source>Dry reading</source>
        <translation>Trockener Messwert</translation>
    </message>
    <message>
        <source>Air in the cylinder</source>
        <translation>Luft im Zylinder</translation>
    </message>
    <message>
        <source>Pressure in the cylinder</source>
        <translation>Druck im Zylinder</translation>
    </message>
    <message>
        <source>At most the set pressure.</source>
        <translation>Höchstens der eingestellte Druck.</translation>
    </message>
    <message>
        <source>Angle from top dead centre</source>
        <translation>Winkel vom oberen Totpunkt</translation>
    </message>
    <message>
        <source>Length of the bar</source>
        <translation>Länge des Hebels</translation>
    </message>
    <message>
        <source>Type one or several</source>
        <translation>Einen oder mehrere eingeben</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>Leakage</source>
        <translation>Druckverlust</translation>
    </message>
    <message>
        <source>Another tester</source>
        <translation>Anderes Prüfgerät</translation>
    </message>
    <message>
        <source>Two set pressures</source>
        <translation>Zwei eingestellte Drücke</translation>
    </message>
    <message>
        <source>Restrictor check</source>
        <translation>Drosselbohrung prüfen</translation>
    </message>
    <message>
        <source>Hose and adapter</source>
        <translation>Schlauch und Adapter</translation>
    </message>
    <message>
        <source>Oil in a wet test</source>
        <translation>Öl bei der Nassprüfung</translation>
    </message>
    <message>
        <source>Healthy reading</source>
        <translation>Guter Messwert</translation>
    </message>
    <message>
        <source>Speed and throttle</source>
        <translation>Drehzahl und Drosselklappe</translation>
    </message>
    <message>
        <source>Holding torque</source>
        <translation>Haltemoment</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>What was lost of the set pressure, and how large the leak is</source>
        <translation>Was vom eingestellten Druck verloren ging und wie groß das Leck ist</translation>
    </message>
    <message>
        <source>The same leak behind another restrictor, at another set pressure</source>
        <translation>Dasselbe Leck hinter einer anderen Drosselbohrung, bei anderem eingestelltem Druck</translation>
    </message>
    <message>
        <source>Whether a leak is like a hole or a narrow gap, is seated or opened by pressure</source>
        <translation>Ob ein Leck wie ein Loch oder ein enger Spalt ist, vom Druck angelegt oder geöffnet wird</translation>
    </message>
    <message>
        <source>A home-made tester&apos;s restrictor, by a drilled hole of known size</source>
        <translation>Die Drosselbohrung eines selbst gebauten Prüfgeräts, über ein Prüfloch bekannter Größe</translation>
    </message>
    <message>
        <source>What the volume before the check valve takes off a reading</source>
        <translation>Was das Volumen vor dem Rückschlagventil von einem Messwert abzieht</translation>
    </message>
    <message>
        <source>What the oil&apos;s mere volume adds to a wet reading</source>
        <translation>Was das bloße Ölvolumen zu einem nassen Messwert beiträgt</translation>
    </message>
    <message>
        <source>A factory limit at the shop&apos;s altitude or air pressure</source>
        <translation>Ein Werksgrenzwert bei Höhe oder Luftdruck der Werkstatt</translation>
    </message>
    <message>
        <source>What a cylinder that seals well should read</source>
        <translation>Was ein gut dichtender Zylinder anzeigen sollte</translation>
    </message>
    <message>
        <source>What slow cranking and a shut throttle take off a healthy reading</source>
        <translation>Was langsames Durchdrehen und eine geschlossene Drosselklappe einem gesunden Messwert nehmen</translation>
    </message>
    <message>
        <source>What the crank must be held against with the air on</source>
        <translation>Wogegen die Kurbelwelle bei angelegter Luft gehalten werden muss</translation>
    </message>
    <message>
        <source>Pressure, length, volume, temperature, torque, flow</source>
        <translation>Druck, Länge, Volumen, Temperatur, Drehmoment, Durchfluss</translation>
    </message>
</context>
<context>
    <name>CalculatorsPage</name>
    <message>
        <source>Calculators</source>
        <translation>Rechner</translation>
    </message>
    <message>
        <source>filled from the session</source>
        <translation>aus der Sitzung gefüllt</translation>
    </message>
    <message>
        <source>Filled from which engine&apos;s card?</source>
        <translation>Aus welcher Motorkarte ausfüllen?</translation>
    </message>
    <message>
        <source>None: I type it all</source>
        <translation>Keine: Ich gebe alles selbst ein</translation>
    </message>
    <message>
        <source>Bore, stroke and the rest from</source>
        <translation>Bohrung, Hub und übrige Daten von</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keinem</translation>
    </message>
</context>
<context>
    <name>CaptureTrouble</name>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>System settings</source>
        <translation>Systemeinstellungen</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Touch to read it all</source>
        <translation>Antippen, um alles zu lesen</translation>
    </message>
    <message>
        <source>Touch to fold</source>
        <translation>Antippen zum Einklappen</translation>
    </message>
</context>
<context>
    <name>CautionFold</name>
    <message>
        <source>Cautions before the work: %1</source>
        <translation>Warnhinweise vor der Arbeit: %1</translation>
    </message>
    <message>
        <source>Touch to fold</source>
        <translation>Antippen zum Einklappen</translation>
    </message>
    <message>
        <source>Touch to read it all</source>
        <translation>Antippen, um alles zu lesen</translation>
    </message>
</context>
<context>
    <name>CautionGate</name>
    <message>
        <source>Before you start</source>
        <translation>Bevor es losgeht</translation>
    </message>
    <message>
        <source>The engine&apos;s manual, local rules and licensed practice come before this app.</source>
        <translation>Das Handbuch des Motors, örtliche Vorschriften und die Fachregeln zugelassener Betriebe gehen dieser App vor.</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Read on</source>
        <translation>Weiterlesen</translation>
    </message>
</context>
<context>
    <name>ChangeRow</name>
    <message>
        <source>before %1</source>
        <translation>vorher %1</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nachher %1</translation>
    </message>
    <message>
        <source>Where does this come from?</source>
        <translation>Woher kommt das?</translation>
    </message>
</context>
<context>
    <name>ChangesPage</name>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>To be compared with care</source>
        <translation>Nur mit Vorsicht vergleichbar</translation>
    </message>
    <message>
        <source>Not everything can be compared</source>
        <translation>Nicht alles ist vergleichbar</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Cylinder %1, %2</source>
        <translation>Zylinder %1, %2</translation>
    </message>
    <message>
        <source>Not measured at either visit.</source>
        <translation>An keinem der beiden Termine gemessen.</translation>
    </message>
    <message>
        <source>± is about 95 %. What one gauge is out by at both visits cancels in the difference; what two gauges are out by does not. Touch a difference to see where it comes from.</source>
        <translation>± steht für etwa 95 %. Worum ein Manometer an beiden Terminen falsch geht, hebt sich in der Differenz auf; worum zwei Manometer falsch gehen, nicht. Eine Differenz antippen, um zu sehen, woher sie kommt.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
</context>
<context>
    <name>ChooseFile</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
</context>
<context>
    <name>ClearancesPage</name>
    <message>
        <source>Clearances</source>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>thou</source>
        <translation>1/1000″</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Keep, next valve</source>
        <translation>Behalten, nächstes Ventil</translation>
    </message>
    <message>
        <source>Keep all the same</source>
        <translation>Trotzdem behalten</translation>
    </message>
</context>
<context>
    <name>CommitCall</name>
    <message>
        <source>Commit my call</source>
        <translation>Einschätzung abgeben</translation>
    </message>
    <message>
        <source>Choose where it leaks</source>
        <translation>Wählen, wo es undicht ist</translation>
    </message>
    <message>
        <source>Call every cylinder first</source>
        <translation>Erst jeden Zylinder einschätzen</translation>
    </message>
</context>
<context>
    <name>ConfirmSheet</name>
    <message>
        <source>Leave it</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>ConflictsPage</name>
    <message>
        <source>Two versions</source>
        <translation>Zwei Fassungen</translation>
    </message>
    <message>
        <source>Each of these was changed on two sides. Nothing is lost until you choose, and Undo brings the other version back.</source>
        <translation>Jedes davon wurde auf zwei Seiten geändert. Nichts geht verloren, bis gewählt wird, und „Rückgängig“ bringt die andere Fassung zurück.</translation>
    </message>
    <message>
        <source>Every record has one version. There is nothing to choose.</source>
        <translation>Jeder Eintrag hat eine Fassung. Es gibt nichts zu wählen.</translation>
    </message>
    <message>
        <source>Shows now, %1</source>
        <translation>Jetzt gezeigt, %1</translation>
    </message>
    <message>
        <source>The other one, %1</source>
        <translation>Die andere, %1</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nichts notiert</translation>
    </message>
    <message>
        <source>This one stands</source>
        <translation>Diese gilt</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>CylinderFindingsPanel</name>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Heard: %1</source>
        <translation>Gehört: %1</translation>
    </message>
    <message>
        <source>Rules of thumb say</source>
        <translation>Faustregeln sagen</translation>
    </message>
</context>
<context>
    <name>CylinderGridSheet</name>
    <message>
        <source>Cylinders</source>
        <translation>Zylinder</translation>
    </message>
</context>
<context>
    <name>CylinderSheet</name>
    <message>
        <source>Cylinder</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>As the engine&apos;s maker counts it, 1 to 99.</source>
        <translation>Wie der Hersteller des Motors zählt, 1 bis 99.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>front, rear, left ...</source>
        <translation>vorn, hinten, links ...</translation>
    </message>
    <message>
        <source>Bank</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erste</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweite</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>CylinderStrip</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>CylinderTile</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
</context>
<context>
    <name>DeleteEngineSheet</name>
    <message>
        <source>Delete %1?</source>
        <translation>%1 löschen?</translation>
    </message>
    <message>
        <source>Its card goes with all that is typed there. Undo brings it back, also later from More, until something else is done.</source>
        <translation>Ihre Karte geht mit allem, was dort eingetragen ist. Rückgängig holt sie zurück, auch später unter Mehr, bis etwas anderes getan wird.</translation>
    </message>
    <message numerus="yes">
        <source>With it go %n session(s): readings, photos, voice notes, plans. Undo brings all of it back, also later from More, until something else is done; after that only a backup or a session file does.</source>
        <translation>
            <numerusform>Damit geht %n Sitzung verloren: Messwerte, Fotos, Sprachnotizen, Pläne. „Rückgängig“ holt alles zurück, auch später unter „Mehr“, bis etwas anderes getan wird; danach nur noch eine Sicherung oder eine Sitzungsdatei.</numerusform>
            <numerusform>Damit gehen %n Sitzungen verloren: Messwerte, Fotos, Sprachnotizen, Pläne. „Rückgängig“ holt alles zurück, auch später unter „Mehr“, bis etwas anderes getan wird; danach nur noch eine Sicherung oder eine Sitzungsdatei.</numerusform>
        </translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Delete all of it</source>
        <translation>Alles löschen</translation>
    </message>
    <message>
        <source>Keep the engine</source>
        <translation>Den Motor behalten</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>Liquid-cooled 90 degree V-twin, 498 cm3, invented for trying the app out</source>
        <translation>Flüssigkeitsgekühlter 90-Grad-V2, 498 cm³, zum Ausprobieren der App erfunden</translation>
    </message>
    <message>
        <source>In-line six car engine, 2993 cm3, invented for trying the app out</source>
        <translation>Reihensechszylinder eines Autos, 2993 cm³, zum Ausprobieren der App erfunden</translation>
    </message>
    <message>
        <source>One owner since new. Oil changed every year; valves last looked at when it was run in.</source>
        <translation>Seit neu in einer Hand. Öl jedes Jahr gewechselt; nach den Ventilen zuletzt nach dem Einfahren gesehen.</translation>
    </message>
    <message>
        <source>Ran hot once last summer when the fan belt went.</source>
        <translation>Im letzten Sommer einmal heiß geworden, als der Keilriemen riss.</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>Demo</translation>
    </message>
    <message>
        <source>motorcycle</source>
        <translation>Motorrad</translation>
    </message>
    <message>
        <source>car</source>
        <translation>Auto</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>by the notice board in the club house</source>
        <translation>beim Schwarzen Brett im Vereinsheim</translation>
    </message>
    <message>
        <source>at the harbour office, ask for the key</source>
        <translation>im Hafenbüro nach dem Schlüssel fragen</translation>
    </message>
    <message>
        <source>invented handbook, data sheet</source>
        <translation>erfundenes Handbuch, Datenblatt</translation>
    </message>
    <message>
        <source>invented handbook, engine data</source>
        <translation>erfundenes Handbuch, Motordaten</translation>
    </message>
    <message>
        <source>invented handbook, for sea level</source>
        <translation>erfundenes Handbuch, für Meereshöhe</translation>
    </message>
    <message>
        <source>Gauge 0-16 bar</source>
        <translation>Manometer 0-16 bar</translation>
    </message>
    <message>
        <source>M12 long reach</source>
        <translation>M12 lang</translation>
    </message>
    <message>
        <source>M14 long reach</source>
        <translation>M14 lang</translation>
    </message>
    <message>
        <source>Leak-down tester, club</source>
        <translation>Druckverlustprüfer, Verein</translation>
    </message>
    <message>
        <source>Leak-down tester, harbour</source>
        <translation>Druckverlustprüfer, Hafen</translation>
    </message>
    <message>
        <source>Needle stood still for a minute.</source>
        <translation>Zeiger stand eine Minute lang still.</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>After the repair</source>
        <translation>Nach der Reparatur</translation>
    </message>
    <message>
        <source>A year later</source>
        <translation>Ein Jahr später</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Lost power over one season and starts badly when warm.</source>
        <translation>Hat in einer Saison an Leistung verloren und springt warm schlecht an.</translation>
    </message>
    <message>
        <source>Test after the repair, run in for 350 km.</source>
        <translation>Prüfung nach der Reparatur, 350 km eingefahren.</translation>
    </message>
    <message>
        <source>Yearly look. Uses a little more oil than last summer.</source>
        <translation>Jährliche Durchsicht. Braucht etwas mehr Öl als im letzten Sommer.</translation>
    </message>
    <message>
        <source>Shakes at idle since it ran hot.</source>
        <translation>Schüttelt sich im Leerlauf, seit er heiß geworden ist.</translation>
    </message>
    <message>
        <source>It runs.</source>
        <translation>Er läuft.</translation>
    </message>
    <message>
        <source>The charger is lent out.</source>
        <translation>Das Ladegerät ist verliehen.</translation>
    </message>
    <message>
        <source>None at hand.</source>
        <translation>Keines zur Hand.</translation>
    </message>
    <message>
        <source>engine oil 10W-40</source>
        <translation>Motoröl 10W-40</translation>
    </message>
    <message>
        <source>Again at the end, against a tiring battery.</source>
        <translation>Zum Schluss noch einmal, mit müder werdender Batterie.</translation>
    </message>
    <message>
        <source>Front exhaust hisses with the hose at the silencer; rear blows at the oil filler.</source>
        <translation>Vorn zischt der Auslass, mit dem Schlauch am Schalldämpfer gehört; hinten bläst es an der Öleinfüllöffnung.</translation>
    </message>
    <message>
        <source>With the air on 2 it whistles out of plug hole 3, and the other way round.</source>
        <translation>Mit der Luft auf 2 pfeift es aus Kerzenloch 3, und umgekehrt.</translation>
    </message>
    <message>
        <source>Pulls well again. No smoke.</source>
        <translation>Zieht wieder gut. Kein Rauch.</translation>
    </message>
    <message>
        <source>Head off, exhaust valves new, seats cut and lapped</source>
        <translation>Kopf ab, Auslassventile neu, Sitze gefräst und eingeschliffen</translation>
    </message>
    <message>
        <source>2 exhaust valves, stem seals, head gasket set</source>
        <translation>2 Auslassventile, Ventilschaftdichtungen, Kopfdichtungssatz</translation>
    </message>
    <message>
        <source>Air at the exhaust with the clearance in range.</source>
        <translation>Luft am Auslass bei richtigem Ventilspiel.</translation>
    </message>
    <message>
        <source>The burnt edge grows, the seat goes next and the head has to be built up.</source>
        <translation>Die verbrannte Kante wird größer, danach geht der Sitz, und der Kopf muss aufgeschweißt werden.</translation>
    </message>
    <message>
        <source>Cylinder off, bore measured and honed, piston rings new</source>
        <translation>Zylinder ab, Bohrung gemessen und gehont, Kolbenringe neu</translation>
    </message>
    <message>
        <source>ring set, base and head gasket</source>
        <translation>Ringsatz, Fuß- und Kopfdichtung</translation>
    </message>
    <message>
        <source>Air at the breather, and oil lifted the reading.</source>
        <translation>Luft an der Entlüftung, und Öl hob den Messwert.</translation>
    </message>
    <message>
        <source>Oil use rises; the plug will foul.</source>
        <translation>Der Ölverbrauch steigt; die Kerze verölt.</translation>
    </message>
    <message>
        <source>Watch the oil, test again next spring</source>
        <translation>Öl beobachten, nächstes Frühjahr wieder prüfen</translation>
    </message>
    <message>
        <source>More air at the breather than a year ago, still wear.</source>
        <translation>Mehr Luft an der Entlüftung als vor einem Jahr, noch Verschleiß.</translation>
    </message>
    <message>
        <source>Nothing this season.</source>
        <translation>In dieser Saison nichts.</translation>
    </message>
    <message>
        <source>Head off, head and block checked for flatness, new gasket</source>
        <translation>Kopf ab, Kopf und Block auf Planheit geprüft, neue Dichtung</translation>
    </message>
    <message>
        <source>head gasket set, head bolts</source>
        <translation>Kopfdichtungssatz, Kopfschrauben</translation>
    </message>
    <message>
        <source>Cylinders 2 and 3 blow into each other.</source>
        <translation>Zylinder 2 und 3 blasen ineinander.</translation>
    </message>
    <message>
        <source>The gap burns into the head and the block.</source>
        <translation>Der Spalt brennt sich in Kopf und Block.</translation>
    </message>
</context>
<context>
    <name>DerivationSheet</name>
    <message>
        <source>Where does this come from</source>
        <translation>Woher kommt das</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
<context>
    <name>DifferenceText</name>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
</context>
<context>
    <name>EarlierOilSheet</name>
    <message>
        <source>Is the oil gone?</source>
        <translation>Ist das Öl weg?</translation>
    </message>
    <message>
        <source>This bore was wiped</source>
        <translation>Diese Bohrung wurde ausgewischt</translation>
    </message>
    <message>
        <source>Neither: read over oil</source>
        <translation>Nichts davon: über Öl messen</translation>
    </message>
    <message>
        <source>Oil helps the rings to seal until the engine has run for some minutes, or the bore was wiped. A reading over oil can&apos;t be compared with one before it.</source>
        <translation>Öl hilft den Ringen abzudichten, bis der Motor einige Minuten gelaufen ist oder die Bohrung ausgewischt wurde. Ein Messwert über Öl lässt sich nicht mit einem davor vergleichen.</translation>
    </message>
    <message>
        <source>The engine ran since</source>
        <translation>Der Motor lief seitdem</translation>
    </message>
</context>
<context>
    <name>EmptyPane</name>
    <message>
        <source>Choose an engine</source>
        <translation>Motor wählen</translation>
    </message>
    <message>
        <source>Its sessions open here.</source>
        <translation>Seine Sitzungen öffnen sich hier.</translation>
    </message>
</context>
<context>
    <name>EngineCard</name>
    <message>
        <source>Name and owner</source>
        <translation>Name und Besitzer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Maker, type, year, number</source>
        <translation>Hersteller, Typ, Baujahr, Nummer</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>Words to find it by, with commas between them.</source>
        <translation>Wörter zum Wiederfinden, durch Kommas getrennt.</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Besitzer</translation>
    </message>
    <message>
        <source>Owner&apos;s contact</source>
        <translation>Kontakt des Besitzers</translation>
    </message>
    <message>
        <source>Stays out of files that you hand over unless you tick it there.</source>
        <translation>Bleibt aus übergebenen Dateien heraus, solange es dort nicht angekreuzt ist.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Vorgeschichte</translation>
    </message>
    <message>
        <source>What is known of its past: overhauls, overheating, how long it stood.</source>
        <translation>Was von früher bekannt ist: Überholungen, Überhitzung, wie lange er stand.</translation>
    </message>
    <message>
        <source>Make-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Arbeitsverfahren</translation>
    </message>
    <message>
        <source>A rotary engine is not supported: its chambers seal in another way.</source>
        <translation>Kreiskolbenmotoren werden nicht unterstützt: Ihre Kammern dichten auf andere Weise.</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Kühlung</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Bauform</translation>
    </message>
    <message>
        <source>Angle between the banks</source>
        <translation>Winkel zwischen den Bänken</translation>
    </message>
    <message>
        <source>Number of cylinders</source>
        <translation>Anzahl der Zylinder</translation>
    </message>
    <message>
        <source>1 to 16. Cylinders that stay keep their numbers.</source>
        <translation>1 bis 16. Zylinder, die bleiben, behalten ihre Nummer.</translation>
    </message>
    <message>
        <source>Firing and manifolds</source>
        <translation>Zündung und Sammelrohre</translation>
    </message>
    <message>
        <source>Firing order</source>
        <translation>Zündfolge</translation>
    </message>
    <message>
        <source>As in 1-3-4-2. It tells which cylinder&apos;s TDC comes next.</source>
        <translation>Etwa 1-3-4-2. Sie sagt, welcher Zylinder als nächster in den OT kommt.</translation>
    </message>
    <message>
        <source>Firing intervals</source>
        <translation>Zündabstände</translation>
    </message>
    <message>
        <source>Crank degrees from each cylinder to the next one, as in 270-450, or &quot;even&quot;.</source>
        <translation>Grad Kurbelwelle von jedem Zylinder zum nächsten, etwa 270-450 oder „gleichmäßig“.</translation>
    </message>
    <message>
        <source>Cylinders on one manifold, as in 1-2, 3-4. Sound carries between them.</source>
        <translation>Zylinder an einem gemeinsamen Sammelrohr, etwa 1-2, 3-4. Geräusche wandern zwischen ihnen.</translation>
    </message>
    <message>
        <source>Joined intakes</source>
        <translation>Verbundene Einlässe</translation>
    </message>
    <message>
        <source>Joined exhausts</source>
        <translation>Verbundene Auslässe</translation>
    </message>
    <message>
        <source>Dimensions</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Hub</translation>
    </message>
    <message>
        <source>Rod length</source>
        <translation>Pleuellänge</translation>
    </message>
    <message>
        <source>From centre to centre.</source>
        <translation>Von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>Trapped: from the closing of the exhaust port. For 7.2:1 type 7.2.</source>
        <translation>Effektiv: ab dem Schließen des Auslassschlitzes. Für 7,2:1 die Zahl 7,2 eingeben.</translation>
    </message>
    <message>
        <source>For 9.2:1 type 9.2.</source>
        <translation>Für 9,2:1 die Zahl 9,2 eingeben.</translation>
    </message>
    <message>
        <source>Exhaust port closes, after BDC</source>
        <translation>Auslassschlitz schließt, nach UT</translation>
    </message>
    <message>
        <source>Wanted when cold, as in 0.15-0.20.</source>
        <translation>Sollwert kalt, etwa 0,15-0,20.</translation>
    </message>
    <message>
        <source>Valves</source>
        <translation>Ventile</translation>
    </message>
    <message>
        <source>Intake valves per cylinder</source>
        <translation>Einlassventile je Zylinder</translation>
    </message>
    <message>
        <source>Exhaust valves per cylinder</source>
        <translation>Auslassventile je Zylinder</translation>
    </message>
    <message>
        <source>Adjuster</source>
        <translation>Ventileinstellung</translation>
    </message>
    <message>
        <source>Intake clearance</source>
        <translation>Spiel Einlass</translation>
    </message>
    <message>
        <source>Exhaust clearance</source>
        <translation>Spiel Auslass</translation>
    </message>
    <message>
        <source>Valve timing</source>
        <translation>Steuerzeiten</translation>
    </message>
    <message>
        <source>Intake closes, after BDC</source>
        <translation>Einlass schließt, nach UT</translation>
    </message>
    <message>
        <source>A cranking reading hangs on it. Leave it empty if you don&apos;t know.</source>
        <translation>Davon hängt der Kompressionswert ab. Leer lassen, wenn unbekannt.</translation>
    </message>
    <message>
        <source>Intake closing is quoted at</source>
        <translation>Einlassschluss angegeben bei</translation>
    </message>
    <message>
        <source>Quoted at a lift, the valve closes on its seat 15 to 25 degrees later.</source>
        <translation>Bei einem Hub angegeben, schließt das Ventil im Sitz 15 bis 25 Grad später.</translation>
    </message>
    <message>
        <source>Exhaust opens, before BDC</source>
        <translation>Auslass öffnet, vor UT</translation>
    </message>
    <message>
        <source>Exhaust opening is quoted at</source>
        <translation>Auslassöffnen angegeben bei</translation>
    </message>
    <message>
        <source>Injector, glow plug, decompressor</source>
        <translation>Einspritzdüse, Glühkerze, Dekompressor</translation>
    </message>
    <message>
        <source>Plug and decompressor</source>
        <translation>Kerze und Dekompressor</translation>
    </message>
    <message>
        <source>Thread of injector or glow plug</source>
        <translation>Gewinde der Einspritzdüse oder Glühkerze</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <translation>Kerzengewinde</translation>
    </message>
    <message>
        <source>As in M14x1.25.</source>
        <translation>Etwa M14x1,25.</translation>
    </message>
    <message>
        <source>Reach of injector or glow plug</source>
        <translation>Gewindelänge der Einspritzdüse oder Glühkerze</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <translation>Gewindelänge der Kerze</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>With one, a low cranking reading is no proof of a leak.</source>
        <translation>Ist einer da, beweist ein niedriger Kompressionswert kein Leck.</translation>
    </message>
    <message>
        <source>Factory limits</source>
        <translation>Werksgrenzwerte</translation>
    </message>
    <message>
        <source>Normal range from</source>
        <translation>Normalbereich von</translation>
    </message>
    <message>
        <source>Normal range to</source>
        <translation>Normalbereich bis</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <translation>Unterer Grenzwert</translation>
    </message>
    <message>
        <source>Most difference between cylinders</source>
        <translation>Größter Unterschied zwischen Zylindern</translation>
    </message>
    <message>
        <source>Lowest against highest cylinder, at least</source>
        <translation>Niedrigster zum höchsten Zylinder, mindestens</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <translation>Größter Druckverlust</translation>
    </message>
    <message>
        <source>On the maker&apos;s own leak-down tester.</source>
        <translation>Auf dem Druckverlustprüfer des Herstellers.</translation>
    </message>
    <message>
        <source>Set pressure of that tester</source>
        <translation>Eingestellter Druck dieses Prüfgeräts</translation>
    </message>
    <message>
        <source>Restrictor of that tester</source>
        <translation>Drosselbohrung dieses Prüfgeräts</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>Herkunft der Grenzwerte</translation>
    </message>
    <message>
        <source>Page or source</source>
        <translation>Seite oder Quelle</translation>
    </message>
    <message>
        <source>Crankcase test</source>
        <translation>Kurbelgehäuseprüfung</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>To be held for</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>End pressure, at least</source>
        <translation>Enddruck, mindestens</translation>
    </message>
    <message>
        <source>Where these limits come from</source>
        <translation>Herkunft dieser Grenzwerte</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Above sea level. Factory limits are scaled to it.</source>
        <translation>Über dem Meeresspiegel. Werksgrenzwerte werden darauf umgerechnet.</translation>
    </message>
    <message>
        <source>even</source>
        <translation>gleichmäßig</translation>
    </message>
</context>
<context>
    <name>EngineCardPage</name>
    <message>
        <source>Engine card</source>
        <translation>Motorkarte</translation>
    </message>
    <message>
        <source>This engine is gone</source>
        <translation>Dieser Motor ist weg</translation>
    </message>
    <message>
        <source>It was deleted. Undo brings it back; otherwise go back to the list.</source>
        <translation>Er wurde gelöscht. „Rückgängig“ holt ihn zurück; sonst zurück zur Liste.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sitzungen</translation>
    </message>
    <message numerus="yes">
        <source>All %n sessions</source>
        <translation>
            <numerusform>Die eine Sitzung</numerusform>
            <numerusform>Alle %n Sitzungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Report, session file, table</source>
        <translation>Bericht, Sitzungsdatei, Tabelle</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Two visits, cylinder by cylinder</source>
        <translation>Zwei Termine, Zylinder für Zylinder</translation>
    </message>
    <message>
        <source>Delete this engine and its sessions</source>
        <translation>Diesen Motor und seine Sitzungen löschen</translation>
    </message>
    <message>
        <source>Delete this engine</source>
        <translation>Diesen Motor löschen</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Neue Sitzung</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <translation>Weiter: %1</translation>
    </message>
</context>
<context>
    <name>EngineTile</name>
    <message>
        <source>%1, from an earlier visit</source>
        <translation>%1, von einem früheren Termin</translation>
    </message>
    <message>
        <source>some cylinders as an earlier visit left them</source>
        <translation>einige Zylinder, wie ein früherer Termin sie hinterließ</translation>
    </message>
</context>
<context>
    <name>EngineTilePictures</name>
    <message>
        <source>earlier</source>
        <translation>früher</translation>
    </message>
    <message>
        <source>pale: earlier</source>
        <translation>blass: früher</translation>
    </message>
</context>
<context>
    <name>EnginesEmpty</name>
    <message>
        <source>No engine yet</source>
        <translation>Noch kein Motor</translation>
    </message>
    <message>
        <source>Add the engine in front of you, open a session file that someone sent, or look at two invented engines first.</source>
        <translation>Den Motor anlegen, der da steht, eine zugesandte Sitzungsdatei öffnen oder erst zwei erfundene Motoren ansehen.</translation>
    </message>
    <message>
        <source>Open a session file</source>
        <translation>Sitzungsdatei öffnen</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Beispiel ansehen</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung wiederherstellen</translation>
    </message>
</context>
<context>
    <name>EnginesMoreSheet</name>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Undo the last step</source>
        <translation>Letzten Schritt rückgängig machen</translation>
    </message>
    <message>
        <source>Nothing to take back</source>
        <translation>Nichts zurückzunehmen</translation>
    </message>
    <message>
        <source>Redo what was undone</source>
        <translation>Rückgängig Gemachtes wiederherstellen</translation>
    </message>
    <message>
        <source>Nothing to do again</source>
        <translation>Nichts wiederherzustellen</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Neue Sitzung</translation>
    </message>
    <message>
        <source>Add an engine</source>
        <translation>Motor anlegen</translation>
    </message>
    <message>
        <source>Open a session file</source>
        <translation>Sitzungsdatei öffnen</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Beispiel ansehen</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Calculators</source>
        <translation>Rechner</translation>
    </message>
    <message>
        <source>Wipe the glass</source>
        <translation>Glas abwischen</translation>
    </message>
    <message>
        <source>For 10 seconds no touch counts.</source>
        <translation>10 Sekunden lang zählt keine Berührung.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
</context>
<context>
    <name>EnginesPage</name>
    <message>
        <source>Engines</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>No engine fits this search. Fewer letters find more.</source>
        <translation>Kein Motor passt zu dieser Suche. Weniger Buchstaben finden mehr.</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Add an engine</source>
        <translation>Motor anlegen</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <translation>Weiter: %1</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Neue Sitzung</translation>
    </message>
</context>
<context>
    <name>EnginesSearch</name>
    <message>
        <source>Search name, tags, description</source>
        <translation>Name, Schlagwort, Beschreibung suchen</translation>
    </message>
    <message>
        <source>Clear the search</source>
        <translation>Suche leeren</translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>There is no room left to write %1. Free some space and try again.</source>
        <extracomment>file.no_space</extracomment>
        <translation>Es ist kein Platz mehr, um %1 zu schreiben. Etwas Platz freimachen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Working with %1 is not allowed here. Choose another folder or change who may use it.</source>
        <extracomment>file.not_allowed</extracomment>
        <translation>Der Zugriff auf %1 ist hier nicht erlaubt. Einen anderen Ordner wählen oder die Rechte ändern.</translation>
    </message>
    <message>
        <source>%1 or its folder does not exist. Choose another place.</source>
        <extracomment>file.not_found</extracomment>
        <translation>%1 oder der Ordner dazu ist nicht vorhanden. Einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>%1 could not be read or written: %2. Try again or choose another place.</source>
        <extracomment>file.failed</extracomment>
        <translation>%1 ließ sich nicht lesen oder schreiben: %2. Noch einmal versuchen oder einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>%1 is a folder, a pipe or a device. Choose a file.</source>
        <extracomment>file.no_file</extracomment>
        <translation>%1 ist ein Ordner, eine Pipe oder ein Gerät. Eine Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes: it can&apos;t be what is wanted here.</source>
        <extracomment>file.too_large</extracomment>
        <translation>%1 ist größer als %2 Bytes: Das kann nicht das Gesuchte sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time with offset, such as 2026-03-14T09:30:00+01:00.</source>
        <extracomment>time.malformed</extracomment>
        <translation>„%1“ ist keine Zeit mit Zeitzonenabstand wie 2026-03-14T09:30:00+01:00.</translation>
    </message>
    <message>
        <source>which sum</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>welche Rechnung</translation>
    </message>
    <message>
        <source>bore</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>stroke</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hub</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>No reading is worked out at a compression ratio above 14: there the model reads far over what makers print. Use the maker&apos;s figure.</source>
        <extracomment>calculator.above_ratio</extracomment>
        <translation>Über einer Verdichtung von 14 wird kein Messwert berechnet: Dort liegt das Modell weit über dem, was Hersteller angeben. Den Wert des Herstellers nehmen.</translation>
    </message>
    <message>
        <source>The model gives no reading for that speed or throttle.</source>
        <extracomment>calculator.turning</extracomment>
        <translation>Das Modell gibt für diese Drehzahl oder Drosselklappe keinen Messwert.</translation>
    </message>
    <message>
        <source>With the check valve at the plug hole and no adapter the hose takes nothing off. Choose where the check valve sits, or type an adapter&apos;s volume.</source>
        <extracomment>calculator.no_hose</extracomment>
        <translation>Mit dem Rückschlagventil am Kerzenloch und ohne Adapter nimmt der Schlauch nichts weg. Den Sitz des Rückschlagventils wählen oder das Volumen eines Adapters eingeben.</translation>
    </message>
    <message>
        <source>Never put oil into a diesel: its chamber is so small that oil can lock the engine.</source>
        <extracomment>calculator.oil_diesel</extracomment>
        <translation>Niemals Öl in einen Diesel geben: Sein Brennraum ist so klein, dass Öl den Motor blockieren kann.</translation>
    </message>
    <message>
        <source>oil put in</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>eingefülltes Öl</translation>
    </message>
    <message>
        <source>That much oil fills the chamber: cranking would lock the engine and can bend a rod. Use less oil.</source>
        <extracomment>calculator.oil_locks</extracomment>
        <translation>So viel Öl füllt den Brennraum: Beim Durchdrehen würde der Motor blockieren, und ein Pleuel kann sich verbiegen. Weniger Öl nehmen.</translation>
    </message>
    <message>
        <source>These two pressures can&apos;t be worked with: type what was set and what was held.</source>
        <extracomment>calculator.leakage</extracomment>
        <translation>Mit diesen beiden Drücken lässt sich nicht rechnen: eingeben, was eingestellt war und was gehalten wurde.</translation>
    </message>
    <message>
        <source>set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>eingestellter Druck</translation>
    </message>
    <message>
        <source>held pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Haltedruck</translation>
    </message>
    <message>
        <source>the other tester&apos;s set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>eingestellter Druck des anderen Prüfgeräts</translation>
    </message>
    <message>
        <source>This leak can&apos;t be put on the other tester: look at the set pressures and restrictors.</source>
        <extracomment>calculator.other_tester</extracomment>
        <translation>Dieses Leck lässt sich nicht auf das andere Prüfgerät umrechnen: eingestellte Drücke und Drosselbohrungen ansehen.</translation>
    </message>
    <message>
        <source>the second set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>der zweite eingestellte Druck</translation>
    </message>
    <message>
        <source>what was held at it</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>was dabei gehalten wurde</translation>
    </message>
    <message>
        <source>These two readings don&apos;t show how the leak behaves: set pressures must lie well apart, and something must be lost and something held at both.</source>
        <extracomment>calculator.law</extracomment>
        <translation>Diese beiden Messungen zeigen nicht, wie sich das Leck verhält: Die eingestellten Drücke müssen weit auseinanderliegen, und bei beiden muss etwas verloren gehen und etwas gehalten werden.</translation>
    </message>
    <message>
        <source>diameter of the drilled hole</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Durchmesser des Prüflochs</translation>
    </message>
    <message>
        <source>Still to be typed: %1.</source>
        <extracomment>calculator.needs</extracomment>
        <translation>Noch einzugeben: %1.</translation>
    </message>
    <message>
        <source>altitude, or the air pressure in the shop</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Höhe oder Luftdruck in der Werkstatt</translation>
    </message>
    <message>
        <source>rod</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>pressure in the cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Druck im Zylinder</translation>
    </message>
    <message>
        <source>angle from top dead centre</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Winkel vom oberen Totpunkt</translation>
    </message>
    <message>
        <source>a value to convert</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ein umzurechnender Wert</translation>
    </message>
    <message>
        <source>The file holds two entries of the same name: &quot;%1&quot;. It was not made by this app: do not trust it.</source>
        <extracomment>archive.name_twice</extracomment>
        <translation>Die Datei enthält zwei Einträge mit demselben Namen: „%1“. Sie stammt nicht von dieser App: ihr nicht trauen.</translation>
    </message>
    <message>
        <source>The file holds a link or a device instead of a file: &quot;%1&quot;. It was not made by this app: do not trust it.</source>
        <extracomment>archive.link</extracomment>
        <translation>Die Datei enthält einen Verweis oder ein Gerät statt einer Datei: „%1“. Sie stammt nicht von dieser App: ihr nicht trauen.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is damaged. Ask the sender to send it again.</source>
        <extracomment>archive.damaged</extracomment>
        <translation>Der Eintrag „%1“ der Datei ist beschädigt. Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is locked with a password. Ask the sender for the file as the app made it.</source>
        <extracomment>archive.encrypted</extracomment>
        <translation>Der Eintrag „%1“ der Datei ist mit einem Passwort gesperrt. Den Absender um die Datei bitten, wie die App sie angelegt hat.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is packed in a way that is not supported. Ask the sender for the file as the app made it.</source>
        <extracomment>archive.method</extracomment>
        <translation>Der Eintrag „%1“ der Datei ist auf eine nicht unterstützte Weise gepackt. Den Absender um die Datei bitten, wie die App sie angelegt hat.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; would unpack to %2 bytes from %3: that is no real one. Do not trust this file.</source>
        <extracomment>archive.ratio</extracomment>
        <translation>Der Eintrag „%1“ würde beim Entpacken aus %3 zu %2 Bytes: Das ist kein echter. Dieser Datei nicht trauen.</translation>
    </message>
    <message>
        <source>%1 is not a session file but a folder or a device.</source>
        <extracomment>archive.not_a_zip</extracomment>
        <translation>%1 ist keine Sitzungsdatei, sondern ein Ordner oder ein Gerät.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes: no session file is that large.</source>
        <extracomment>archive.too_large</extracomment>
        <translation>%1 ist größer als %2 Bytes: So groß ist keine Sitzungsdatei.</translation>
    </message>
    <message>
        <source>%1 is not a session file, or was cut short or changed on its way. Ask the sender to send it again.</source>
        <extracomment>archive.not_a_zip</extracomment>
        <translation>%1 ist keine Sitzungsdatei oder wurde unterwegs abgeschnitten oder verändert. Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>%1 holds %2 entries: at most %3 are read. Do not trust this file.</source>
        <extracomment>archive.too_many</extracomment>
        <translation>%1 enthält %2 Einträge: Höchstens %3 werden gelesen. Dieser Datei nicht trauen.</translation>
    </message>
    <message>
        <source>%1 is damaged. Ask the sender to send it again.</source>
        <extracomment>archive.damaged</extracomment>
        <translation>%1 ist beschädigt. Den Absender bitten, die Datei noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>%1 would unpack to more than %2 bytes: no session file is that large. Do not trust it.</source>
        <extracomment>archive.unpacks_too_large</extracomment>
        <translation>%1 wäre entpackt mehr als %2 Bytes groß: So groß ist keine Sitzungsdatei. Ihr nicht trauen.</translation>
    </message>
    <message>
        <source>Entries of %1 overlap. It was not made by this app: do not trust it.</source>
        <extracomment>archive.overlap</extracomment>
        <translation>Einträge von %1 überlappen sich. Die Datei stammt nicht von dieser App: ihr nicht trauen.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is %2 bytes long: at most %3 are read.</source>
        <extracomment>archive.text_too_large</extracomment>
        <translation>Der Eintrag „%1“ der Datei ist %2 Bytes lang: Höchstens %3 werden gelesen.</translation>
    </message>
    <message>
        <source>The file is no backup that Lapwing made (%1). Choose another file.</source>
        <extracomment>backup.none</extracomment>
        <translation>Die Datei ist keine Sicherung von Lapwing (%1). Eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>Stopped while the backup was being checked. Nothing was changed.</source>
        <extracomment>backup.stopped</extracomment>
        <translation>Abgebrochen, während die Sicherung geprüft wurde. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>This backup was made by a newer Lapwing (its version is %1; this one reads 1.x). Update Lapwing to restore it.</source>
        <extracomment>backup.version</extracomment>
        <translation>Diese Sicherung stammt von einem neueren Lapwing (ihre Version ist %1; dieses hier liest 1.x). Lapwing aktualisieren, um sie wiederherzustellen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing from the backup.</source>
        <extracomment>bag.missing_file</extracomment>
        <translation>„%1“ fehlt in der Sicherung.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; stands in the file and not in %2: someone added it.</source>
        <extracomment>bag.unlisted_file</extracomment>
        <translation>„%1“ steht in der Datei, aber nicht in %2: Jemand hat es hinzugefügt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; in the file is not as it was packed: it was damaged or changed on its way. Use another copy of the backup.</source>
        <extracomment>bag.checksum</extracomment>
        <translation>„%1“ ist in der Datei nicht mehr so, wie es gepackt wurde: Es wurde beschädigt oder unterwegs verändert. Eine andere Kopie der Sicherung nehmen.</translation>
    </message>
    <message>
        <source>The backup was stopped. Nothing was written.</source>
        <extracomment>backup.stopped</extracomment>
        <translation>Die Sicherung wurde abgebrochen. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 was changed while it was being backed up. Nothing was written: start it again.</source>
        <extracomment>backup.changed</extracomment>
        <translation>%1 wurde während der Sicherung geändert. Nichts wurde geschrieben: noch einmal beginnen.</translation>
    </message>
    <message>
        <source>All engines together are %1 GB, more than a backup may be (%2 GB): it could not be read again. Hand over the engines one by one as session files instead. Nothing was written.</source>
        <extracomment>backup.too_large</extracomment>
        <translation>Alle Motoren zusammen haben %1 GB, mehr als eine Sicherung haben darf (%2 GB): Sie ließe sich nicht wieder lesen. Die Motoren stattdessen einzeln als Sitzungsdateien übergeben. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The file&apos;s bagit.txt is not the two lines that BagIt asks for: ask the sender to send the original file again.</source>
        <extracomment>bag.declaration</extracomment>
        <translation>bagit.txt in der Datei besteht nicht aus den zwei Zeilen, die BagIt verlangt: Den Absender bitten, die Originaldatei noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The file is packed by version %1 of BagIt; 1.0 can be read. Update Lapwing, or ask for an older form.</source>
        <extracomment>bag.version</extracomment>
        <translation>Die Datei ist nach Version %1 von BagIt gepackt; lesbar ist 1.0. Lapwing aktualisieren oder um eine ältere Form bitten.</translation>
    </message>
    <message>
        <source>The file&apos;s lists are written in %1; only UTF-8 can be read.</source>
        <extracomment>bag.encoding</extracomment>
        <translation>Die Listen der Datei sind in %1 geschrieben; lesbar ist nur UTF-8.</translation>
    </message>
    <message>
        <source>Line %1 of %2 is not a checksum and a path: the file was changed on its way. Ask the sender to send it again.</source>
        <extracomment>bag.manifest_line</extracomment>
        <translation>Zeile %1 von %2 ist nicht Prüfsumme und Pfad: Die Datei wurde unterwegs verändert. Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>bag-info.txt begins with the rest of a line.</source>
        <extracomment>bag.info</extracomment>
        <translation>bag-info.txt beginnt mit dem Rest einer Zeile.</translation>
    </message>
    <message>
        <source>bag-info.txt has a line without a label: &quot;%1&quot;.</source>
        <extracomment>bag.info</extracomment>
        <translation>bag-info.txt hat eine Zeile ohne Bezeichnung: „%1“.</translation>
    </message>
    <message>
        <source>bag-info.txt does not say its size (Payload-Oxum) once and as two numbers.</source>
        <extracomment>bag.oxum</extracomment>
        <translation>bag-info.txt nennt seine Größe (Payload-Oxum) nicht genau einmal und als zwei Zahlen.</translation>
    </message>
    <message>
        <source>The file holds an entry that must not be unpacked (%1): &quot;%2&quot;. It was not made by this app: do not trust it.</source>
        <extracomment>bag.path</extracomment>
        <translation>Die Datei enthält einen Eintrag, der nicht entpackt werden darf (%1): „%2“. Sie stammt nicht von dieser App: ihr nicht trauen.</translation>
    </message>
    <message>
        <source>This photo is no whole JPEG: no copy without its place can be made of it. Delete it, or leave it out.</source>
        <extracomment>photo.no_bare_copy</extracomment>
        <translation>Dieses Foto ist kein vollständiges JPEG: Eine Kopie ohne seinen Ort lässt sich davon nicht machen. Löschen oder weglassen.</translation>
    </message>
    <message>
        <source>%1 in the file is not a photo (JPEG). Ask the sender to send it again.</source>
        <extracomment>media.not_a_photo</extracomment>
        <translation>%1 in der Datei ist kein Foto (JPEG). Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The photo %1 in the file has %2 pixels: at most %3 are opened. Do not trust this file.</source>
        <extracomment>media.photo_too_large</extracomment>
        <translation>Das Foto %1 in der Datei hat %2 Bildpunkte: Höchstens %3 werden geöffnet. Dieser Datei nicht trauen.</translation>
    </message>
    <message>
        <source>%1 in the file is not a voice note (%2). Ask the sender to send it again.</source>
        <extracomment>media.not_a_voice_note</extracomment>
        <translation>%1 in der Datei ist keine Sprachnotiz (%2). Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The file is no session file: it holds no bagit.txt. Choose a file that Lapwing made.</source>
        <extracomment>bag.none</extracomment>
        <translation>Die Datei ist keine Sitzungsdatei: Sie enthält keine bagit.txt. Eine von Lapwing angelegte Datei wählen.</translation>
    </message>
    <message>
        <source>The file holds something beside the session: &quot;%1&quot;. Ask the sender for the original file.</source>
        <extracomment>bag.beside</extracomment>
        <translation>Die Datei enthält etwas außer der Sitzung: „%1“. Den Absender um die Originaldatei bitten.</translation>
    </message>
    <message>
        <source>The file names parts to fetch from elsewhere (fetch.txt): Lapwing fetches nothing. Ask the sender for the whole file.</source>
        <extracomment>bag.fetch</extracomment>
        <translation>Die Datei nennt Teile, die anderswo zu holen wären (fetch.txt): Lapwing holt nichts. Den Absender um die ganze Datei bitten.</translation>
    </message>
    <message>
        <source>The file has no list of checksums (manifest-sha256.txt or manifest-sha512.txt): it can&apos;t be checked. Ask the sender for the original file.</source>
        <extracomment>bag.no_manifest</extracomment>
        <translation>Die Datei hat keine Liste der Prüfsummen (manifest-sha256.txt oder manifest-sha512.txt): Sie lässt sich nicht prüfen. Den Absender um die Originaldatei bitten.</translation>
    </message>
    <message>
        <source>The file should hold %1 bytes in %2 files and holds %3 in %4. Ask the sender to send it again.</source>
        <extracomment>bag.oxum_differs</extracomment>
        <translation>Die Datei sollte %1 Bytes in %2 Dateien enthalten und enthält %3 in %4. Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>%1 names &quot;%2&quot;, which is no file of the session.</source>
        <extracomment>bag.manifest_path</extracomment>
        <translation>%1 nennt „%2“; das ist keine Datei der Sitzung.</translation>
    </message>
    <message>
        <source>%1 names &quot;%2&quot; twice.</source>
        <extracomment>bag.listed_twice</extracomment>
        <translation>%1 nennt „%2“ zweimal.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing from the file. Ask the sender to send it again.</source>
        <extracomment>bag.missing_file</extracomment>
        <translation>„%1“ fehlt in der Datei. Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>%1 names &quot;%2&quot;, which does not belong there.</source>
        <extracomment>bag.tag_manifest_path</extracomment>
        <translation>%1 nennt „%2“; das gehört nicht dorthin.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; in the file is not as it was packed: it was damaged or changed on its way. Ask the sender to send it again.</source>
        <extracomment>bag.checksum</extracomment>
        <translation>„%1“ ist in der Datei nicht mehr so, wie es gepackt wurde: Es wurde beschädigt oder unterwegs verändert. Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The file holds no data/session.json: it is no session file.</source>
        <extracomment>session_file.no_session</extracomment>
        <translation>Die Datei enthält keine data/session.json: Sie ist keine Sitzungsdatei.</translation>
    </message>
    <message>
        <source>A %1 taken at %2 is missing from the file (%3). Ask the sender to send it again.</source>
        <extracomment>session_file.attachment_missing</extracomment>
        <translation>In der Datei fehlt ein Anhang: %1, aufgenommen am %2 (%3). Den Absender bitten, sie noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The %1 %2 is not the one that the session speaks of. Ask the sender to send it again.</source>
        <extracomment>session_file.attachment_differs</extracomment>
        <translation>Anhang „%1“ (%2) ist nicht der, von dem die Sitzung spricht. Den Absender bitten, die Datei noch einmal zu schicken.</translation>
    </message>
    <message>
        <source>The chosen sessions of this engine hold %1 records, more than the %2 that one file may. Choose fewer sessions for each file. Nothing was written.</source>
        <extracomment>session_file.too_many_records</extracomment>
        <translation>Die gewählten Sitzungen dieses Motors enthalten %1 Einträge, mehr als die %2, die eine Datei fassen darf. Weniger Sitzungen je Datei wählen. Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>The chosen sessions of this engine hold more than one file may: %1 MB in %2 files with %3 MB of records, where %4 MB in %5 files with %6 MB can be read again. Choose fewer sessions for each file. Nothing was written.</source>
        <extracomment>session_file.too_large</extracomment>
        <translation>Die gewählten Sitzungen dieses Motors sind mehr, als eine Datei fassen darf: %1 MB in %2 Dateien mit %3 MB Aufzeichnungen; wieder lesen lassen sich %4 MB in %5 Dateien mit %6 MB. Für jede Datei weniger Sitzungen wählen. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The file was made and could not be read again, so it was thrown away: %1</source>
        <extracomment>session_file.not_readable</extracomment>
        <translation>Die Datei wurde geschrieben und ließ sich nicht wieder lesen, deshalb wurde sie verworfen: %1</translation>
    </message>
    <message>
        <source>Nothing can be signed: the library for it did not start.</source>
        <extracomment>signature.no_library</extracomment>
        <translation>Es kann nichts signiert werden: Die Programmbibliothek dafür ist nicht angelaufen.</translation>
    </message>
    <message>
        <source>The key that files are signed with (%1) is damaged. Move that file away to get a new key; others will then see a new fingerprint.</source>
        <extracomment>signature.key_damaged</extracomment>
        <translation>Der Schlüssel zum Signieren von Dateien (%1) ist beschädigt. Diese Datei beiseiteschieben, um einen neuen Schlüssel zu bekommen; andere sehen dann einen neuen Fingerabdruck.</translation>
    </message>
    <message>
        <source>The reference data in %1 can&apos;t be read: %2. Put the file back as it was shipped.</source>
        <extracomment>reference.malformed</extracomment>
        <translation>Die Referenzdaten in %1 sind nicht lesbar: %2. Die mitgelieferte Datei wieder einsetzen.</translation>
    </message>
    <message>
        <source>The How to cards in %1 can&apos;t be read: %2. Put the file back as it was shipped.</source>
        <extracomment>knowhow.malformed</extracomment>
        <translation>Die Anleitungskarten in %1 sind nicht lesbar: %2. Die mitgelieferte Datei wieder einsetzen.</translation>
    </message>
    <message>
        <source>The %1 has no %2: make it again from its own screen.</source>
        <extracomment>model.no_id</extracomment>
        <translation>%1: „%2“ fehlt. Von der eigenen Seite aus neu anlegen.</translation>
    </message>
    <message>
        <source>%1 of the %2 is no date of this calendar: set the phone&apos;s clock and try again.</source>
        <extracomment>model.bad_time</extracomment>
        <translation>„%1“ (%2) ist kein Datum dieses Kalenders: die Uhr des Telefons stellen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 in the %2 is %3 characters long: at most %4 are kept. Shorten it.</source>
        <extracomment>model.text_too_long</extracomment>
        <translation>„%1“ (%2) ist %3 Zeichen lang: Höchstens %4 werden behalten. Kürzen.</translation>
    </message>
    <message>
        <source>%1 in the %2 holds characters that are not text (not UTF-8): type it again.</source>
        <extracomment>model.text_broken</extracomment>
        <translation>„%1“ (%2) enthält Zeichen, die kein Text sind (nicht UTF-8): neu eingeben.</translation>
    </message>
    <message>
        <source>The %1 has no %2: give it one.</source>
        <extracomment>model.missing</extracomment>
        <translation>%1: „%2“ fehlt. Bitte angeben.</translation>
    </message>
    <message>
        <source>%1 in the %2 is %3: possible is %4 to %5. Check the digits and the unit.</source>
        <extracomment>model.out_of_range</extracomment>
        <translation>„%1“ (%2) ist %3: möglich ist %4 bis %5. Ziffern und Einheit prüfen.</translation>
    </message>
    <message>
        <source>%1 in the %2 is %3: it must be more than zero. Correct it or leave it empty.</source>
        <extracomment>model.not_positive</extracomment>
        <translation>„%1“ (%2) ist %3: Es muss mehr als null sein. Berichtigen oder leer lassen.</translation>
    </message>
    <message>
        <source>%1 (%2) is above %3 (%4) in the %5: correct one of the two.</source>
        <extracomment>model.crossed</extracomment>
        <translation>„%1“ (%2) liegt über „%3“ (%4), Ort: %5. Eines von beiden berichtigen.</translation>
    </message>
    <message>
        <source>The engine has no cylinder: add at least one.</source>
        <extracomment>engine.no_cylinders</extracomment>
        <translation>Der Motor hat keinen Zylinder: mindestens einen anlegen.</translation>
    </message>
    <message>
        <source>The engine has %1 cylinders: at most %2 are supported.</source>
        <extracomment>engine.too_many_cylinders</extracomment>
        <translation>Der Motor hat %1 Zylinder: Höchstens %2 werden unterstützt.</translation>
    </message>
    <message>
        <source>Cylinder number</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zylindernummer</translation>
    </message>
    <message>
        <source>Two cylinders have the number %1: give one of them another.</source>
        <extracomment>engine.number_twice</extracomment>
        <translation>Zwei Zylinder haben die Nummer %1: einem davon eine andere geben.</translation>
    </message>
    <message>
        <source>Cylinder name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zylindername</translation>
    </message>
    <message>
        <source>Bank</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Bank</translation>
    </message>
    <message>
        <source>Row on the layout picture</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeile im Anordnungsbild</translation>
    </message>
    <message>
        <source>Column on the layout picture</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Spalte im Anordnungsbild</translation>
    </message>
    <message>
        <source>The firing order names cylinder %1, which the engine does not have: correct the order.</source>
        <extracomment>engine.order_unknown_cylinder</extracomment>
        <translation>Die Zündfolge nennt Zylinder %1, den der Motor nicht hat: die Zündfolge berichtigen.</translation>
    </message>
    <message>
        <source>The firing order names cylinder %1 twice: name each cylinder once.</source>
        <extracomment>engine.order_twice</extracomment>
        <translation>Die Zündfolge nennt Zylinder %1 zweimal: jeden Zylinder einmal nennen.</translation>
    </message>
    <message>
        <source>The firing order names %1 of %2 cylinders: name each once, or leave the order empty.</source>
        <extracomment>engine.order_incomplete</extracomment>
        <translation>Die Zündfolge nennt %1 von %2 Zylindern: jeden einmal nennen oder die Zündfolge leer lassen.</translation>
    </message>
    <message>
        <source>There are %1 firing intervals for %2 cylinders in the firing order: give one for each.</source>
        <extracomment>engine.interval_count</extracomment>
        <translation>%1 Zündabstände für %2 Zylinder in der Zündfolge: für jeden einen angeben.</translation>
    </message>
    <message>
        <source>Firing interval</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zündabstand</translation>
    </message>
    <message>
        <source>The firing intervals add up to %1 degrees: %2 are needed.</source>
        <extracomment>engine.interval_sum</extracomment>
        <translation>Die Zündabstände ergeben zusammen %1 Grad: Nötig sind %2.</translation>
    </message>
    <message>
        <source>A joined %1 needs at least two cylinders: add another or remove the group.</source>
        <extracomment>engine.joined_alone</extracomment>
        <translation>Verbunden (%1): Es braucht mindestens zwei Zylinder. Einen weiteren hinzufügen oder die Gruppe entfernen.</translation>
    </message>
    <message>
        <source>A joined %1 names cylinder %2, which the engine does not have: correct it.</source>
        <extracomment>engine.joined_unknown_cylinder</extracomment>
        <translation>Verbunden (%1): Zylinder %2 ist genannt, den der Motor nicht hat. Berichtigen.</translation>
    </message>
    <message>
        <source>Cylinder %1 is in joined %2s twice: name it once.</source>
        <extracomment>engine.joined_twice</extracomment>
        <translation>Zylinder %1 ist bei „Verbunden“ (%2) zweimal genannt: nur einmal nennen.</translation>
    </message>
    <message>
        <source>Intake valves per cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Einlassventile je Zylinder</translation>
    </message>
    <message>
        <source>Exhaust valves per cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Auslassventile je Zylinder</translation>
    </message>
    <message>
        <source>Intake closing</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Einlassschluss</translation>
    </message>
    <message>
        <source>Exhaust opening</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Auslassöffnen</translation>
    </message>
    <message>
        <source>Bore</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Stroke</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hub</translation>
    </message>
    <message>
        <source>Rod length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Pleuellänge</translation>
    </message>
    <message>
        <source>The rod (%1) is not longer than half the stroke (%2): the crank could not turn. Check both, from centre to centre.</source>
        <extracomment>engine.rod_too_short</extracomment>
        <translation>Das Pleuel (%1) ist nicht länger als der halbe Hub (%2): Die Kurbelwelle könnte sich nicht drehen. Beides prüfen, von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>The compression ratio is %1: it must be over 1.</source>
        <extracomment>engine.ratio_too_low</extracomment>
        <translation>Die Verdichtung ist %1: Sie muss über 1 liegen.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>Exhaust port closing</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Auslassschlitzschluss</translation>
    </message>
    <message>
        <source>Angle between the banks</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Winkel zwischen den Bänken</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Gewindelänge der Kerze</translation>
    </message>
    <message>
        <source>Shop altitude</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Höhe der Werkstatt</translation>
    </message>
    <message>
        <source>Lower end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Unteres Ende des Normalbereichs</translation>
    </message>
    <message>
        <source>Upper end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Oberes Ende des Normalbereichs</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Unterer Grenzwert</translation>
    </message>
    <message>
        <source>Difference allowed between cylinders</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zulässiger Unterschied zwischen Zylindern</translation>
    </message>
    <message>
        <source>Lowest against highest cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Niedrigster zum höchsten Zylinder</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Größter Druckverlust</translation>
    </message>
    <message>
        <source>Set pressure of the maker&apos;s leak-down test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eingestellter Druck der Druckverlustprüfung des Herstellers</translation>
    </message>
    <message>
        <source>Restrictor of the maker&apos;s leak-down test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Drosselbohrung der Druckverlustprüfung des Herstellers</translation>
    </message>
    <message>
        <source>the upper end</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>oberes Ende</translation>
    </message>
    <message>
        <source>the lower end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>unteres Ende des Normalbereichs</translation>
    </message>
    <message>
        <source>the upper end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>oberes Ende des Normalbereichs</translation>
    </message>
    <message>
        <source>Source of the limits</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Quelle der Grenzwerte</translation>
    </message>
    <message>
        <source>Set pressure of the crankcase test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eingestellter Druck der Kurbelgehäuseprüfung</translation>
    </message>
    <message>
        <source>Minutes of the crankcase test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Minuten der Kurbelgehäuseprüfung</translation>
    </message>
    <message>
        <source>End pressure of the crankcase test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Enddruck der Kurbelgehäuseprüfung</translation>
    </message>
    <message>
        <source>Source of the crankcase limits</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Quelle der Grenzwerte des Kurbelgehäuses</translation>
    </message>
    <message>
        <source>engine card</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Motorkarte</translation>
    </message>
    <message>
        <source>id</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Description</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>The engine card has %1 tags: at most 100 are kept. Remove some.</source>
        <extracomment>engine.too_many_tags</extracomment>
        <translation>Die Motorkarte hat %1 Schlagwörter: Höchstens 100 werden behalten. Einige entfernen.</translation>
    </message>
    <message>
        <source>Tag</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Schlagwort</translation>
    </message>
    <message>
        <source>History</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Vorgeschichte</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Name des Besitzers</translation>
    </message>
    <message>
        <source>Owner&apos;s contact</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Kontakt des Besitzers</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Kerzengewinde</translation>
    </message>
    <message>
        <source>intake</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>exhaust</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>A tie to &quot;%1&quot; must %2 a record: attach it again.</source>
        <extracomment>tie.record</extracomment>
        <translation>Bei der Verknüpfung mit „%1“ stimmt die Angabe des Eintrags nicht (%2): noch einmal anhängen.</translation>
    </message>
    <message>
        <source>not name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>nicht nennen</translation>
    </message>
    <message>
        <source>record to hang on</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>verknüpfter Eintrag</translation>
    </message>
    <message>
        <source>A tie to &quot;%1&quot; must not name a cylinder: attach it again.</source>
        <extracomment>tie.cylinder_out_of_place</extracomment>
        <translation>Eine Verknüpfung mit „%1“ darf keinen Zylinder nennen: noch einmal anhängen.</translation>
    </message>
    <message>
        <source>A tie to a cylinder must name it: attach it again.</source>
        <extracomment>tie.cylinder_missing</extracomment>
        <translation>Eine Verknüpfung mit einem Zylinder muss ihn nennen: noch einmal anhängen.</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>A finding must be named in a tie to a finding, and only there: attach it again.</source>
        <extracomment>tie.finding</extracomment>
        <translation>Ein Befund muss in einer Verknüpfung mit einem Befund genannt sein, und nur dort: noch einmal anhängen.</translation>
    </message>
    <message>
        <source>Finding</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Befund</translation>
    </message>
    <message>
        <source>session</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not the SHA-256 of a file (64 digits 0-9 and a-f): attach the file again.</source>
        <extracomment>attachment.bad_hash</extracomment>
        <translation>„%1“ ist nicht der SHA-256 einer Datei (64 Stellen 0-9 und a-f): die Datei noch einmal anhängen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a kind of file that a %2 can be: photos are image/jpeg, voice notes audio/ogg, audio/wav or audio/webm.</source>
        <extracomment>attachment.media_type</extracomment>
        <translation>„%1“ ist als Dateiart hier nicht möglich (%2): Fotos sind image/jpeg, Sprachnotizen audio/ogg, audio/wav oder audio/webm.</translation>
    </message>
    <message>
        <source>The %1 is %2 bytes long: possible is 1 to %3. Attach the file again.</source>
        <extracomment>attachment.size</extracomment>
        <translation>Anhang „%1“ ist %2 Bytes lang: möglich ist 1 bis %3. Die Datei noch einmal anhängen.</translation>
    </message>
    <message>
        <source>Caption</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>Length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>A voice note shows nothing: leave out what the photo shows.</source>
        <extracomment>attachment.photo_of</extracomment>
        <translation>Eine Sprachnotiz zeigt nichts: weglassen, was das Foto zeigt.</translation>
    </message>
    <message>
        <source>A photo has no length in time: leave it out.</source>
        <extracomment>attachment.length</extracomment>
        <translation>Ein Foto hat keine Dauer: weglassen.</translation>
    </message>
    <message>
        <source>A voice note has no needle to read: leave it out.</source>
        <extracomment>attachment.read</extracomment>
        <translation>Eine Sprachnotiz hat keinen Zeiger zum Ablesen: weglassen.</translation>
    </message>
    <message>
        <source>Pressure read from the photo</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Vom Foto abgelesener Druck</translation>
    </message>
    <message>
        <source>Uncertainty of the reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Unsicherheit der Ablesung</translation>
    </message>
    <message>
        <source>Confidence of the reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Sicherheit der Ablesung</translation>
    </message>
    <message>
        <source>Why the photo was not read</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Warum das Foto nicht abgelesen wurde</translation>
    </message>
    <message>
        <source>note</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Author</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Verfasser</translation>
    </message>
    <message>
        <source>Text</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Text</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; can be carried out: leave the tick off this note.</source>
        <extracomment>note.done</extracomment>
        <translation>Nur „%1“ kann ausgeführt werden: den Haken bei dieser Notiz weglassen.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; names a test: leave it out of this note.</source>
        <extracomment>note.test</extracomment>
        <translation>Nur „%1“ nennt eine Prüfung: bei dieser Notiz weglassen.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; names a check: leave it out of this note.</source>
        <extracomment>note.check</extracomment>
        <translation>Nur „%1“ nennt eine Kontrolle: bei dieser Notiz weglassen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; asks for a test or for a check: leave one of them out of this note.</source>
        <extracomment>note.check_or_test</extracomment>
        <translation>„%1“ bittet um eine Prüfung oder um eine Kontrolle: eine davon bei dieser Notiz weglassen.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; and &quot;%2&quot; name where it leaks: leave it out of this note.</source>
        <extracomment>note.cause</extracomment>
        <translation>Nur „%1“ und „%2“ nennen, wo es undicht ist: bei dieser Notiz weglassen.</translation>
    </message>
    <message>
        <source>plan line</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Posten im Plan</translation>
    </message>
    <message>
        <source>Work</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Parts</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Labour</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Arbeitszeit</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a price: type digits with at most one decimal mark.</source>
        <extracomment>plan.price</extracomment>
        <translation>„%1“ ist kein Preis: Ziffern mit höchstens einem Dezimalzeichen eingeben.</translation>
    </message>
    <message>
        <source>Currency</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Reason</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>What happens if left</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Was geschieht, wenn es so bleibt</translation>
    </message>
    <message>
        <source>Place in the plan</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Platz im Plan</translation>
    </message>
    <message>
        <source>Time done</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeitpunkt der Erledigung</translation>
    </message>
    <message>
        <source>Lowest predicted reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Niedrigster vorhergesagter Messwert</translation>
    </message>
    <message>
        <source>Highest predicted reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Höchster vorhergesagter Messwert</translation>
    </message>
    <message>
        <source>the highest</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>der höchste</translation>
    </message>
    <message>
        <source>%1 libraries changed this record: at most %2 can be told apart.</source>
        <extracomment>lineage.too_many</extracomment>
        <translation>%1 Bestände haben diesen Eintrag geändert: Höchstens %2 lassen sich unterscheiden.</translation>
    </message>
    <message>
        <source>library that changed it</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Bestand, der ihn geändert hat</translation>
    </message>
    <message>
        <source>Time of a change</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeitpunkt einer Änderung</translation>
    </message>
    <message>
        <source>Its changes are not listed once for each library and in their order.</source>
        <extracomment>lineage.order</extracomment>
        <translation>Seine Änderungen sind nicht je Bestand einmal und in ihrer Reihenfolge aufgeführt.</translation>
    </message>
    <message>
        <source>It has %1 other versions: at most %2 are kept. Choose between them first.</source>
        <extracomment>lineage.too_many_versions</extracomment>
        <translation>Er hat %1 weitere Fassungen: Höchstens %2 werden behalten. Zuerst zwischen ihnen wählen.</translation>
    </message>
    <message>
        <source>This %1 reading has no %2: type it in.</source>
        <extracomment>reading.field_missing</extracomment>
        <translation>Diesem Messwert (%1) fehlt „%2“: eingeben.</translation>
    </message>
    <message>
        <source>A %1 reading has no %2: leave it out or choose the right test.</source>
        <extracomment>reading.field_out_of_place</extracomment>
        <translation>Ein Messwert dieser Art (%1) hat kein „%2“: weglassen oder die richtige Prüfung wählen.</translation>
    </message>
    <message>
        <source>Leakage on the dial</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Der Verlust auf der Skala</translation>
    </message>
    <message>
        <source>%1 on the dial is not %2 of %3: leave out one of the two.</source>
        <extracomment>reading.dial_disagrees</extracomment>
        <translation>%1 auf der Skala sind nicht %2 von %3: Lassen Sie eins von beiden weg.</translation>
    </message>
    <message>
        <source>reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>First puff</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Erster Hub</translation>
    </message>
    <message>
        <source>Final reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Endwert</translation>
    </message>
    <message>
        <source>Pulls</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hübe</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>Held pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Haltedruck</translation>
    </message>
    <message>
        <source>Time held</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Gehaltene Zeit</translation>
    </message>
    <message>
        <source>Oil volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ölmenge</translation>
    </message>
    <message>
        <source>Oil</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Öl</translation>
    </message>
    <message>
        <source>Adapter</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>The reading stands in for itself: record it again.</source>
        <extracomment>reading.replaces_itself</extracomment>
        <translation>Der Messwert ersetzt sich selbst: neu aufnehmen.</translation>
    </message>
    <message>
        <source>exit</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Austritt</translation>
    </message>
    <message>
        <source>The exit &quot;%1&quot; names a neighbour (cylinder %2): only next cylinder&apos;s plug hole has one.</source>
        <extracomment>exit.neighbour_out_of_place</extracomment>
        <translation>Der Austritt „%1“ nennt einen Nachbarn (Zylinder %2): Nur das Kerzenloch des Nachbarzylinders hat einen.</translation>
    </message>
    <message>
        <source>Neighbour</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nachbar</translation>
    </message>
    <message>
        <source>Cylinder %1 is named as its own neighbour: name the other one.</source>
        <extracomment>exit.own_neighbour</extracomment>
        <translation>Zylinder %1 ist als sein eigener Nachbar genannt: den anderen nennen.</translation>
    </message>
    <message>
        <source>The exit stands in for itself: record it again.</source>
        <extracomment>exit.replaces_itself</extracomment>
        <translation>Der Austritt ersetzt sich selbst: neu aufnehmen.</translation>
    </message>
    <message>
        <source>clearance</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>Valve</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>The clearance of the %1 valve of cylinder %2 has no figure: type it as found or as left.</source>
        <extracomment>clearance.empty</extracomment>
        <translation>Das Ventilspiel (%1, Zylinder %2) hat keinen Wert: vorgefundenen oder eingestellten Wert eingeben.</translation>
    </message>
    <message>
        <source>Clearance found</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Vorgefundenes Ventilspiel</translation>
    </message>
    <message>
        <source>Clearance left</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eingestelltes Ventilspiel</translation>
    </message>
    <message>
        <source>The clearance stands in for itself: record it again.</source>
        <extracomment>clearance.replaces_itself</extracomment>
        <translation>Das Ventilspiel ersetzt sich selbst: neu aufnehmen.</translation>
    </message>
    <message>
        <source>Altitude of the shop</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Höhe der Werkstatt</translation>
    </message>
    <message>
        <source>Air pressure at the shop</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Luftdruck in der Werkstatt</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Coolant temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Kühlmitteltemperatur</translation>
    </message>
    <message>
        <source>Battery voltage</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Batteriespannung</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>engine</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Title</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Titel</translation>
    </message>
    <message>
        <source>%1 run by the engine is impossible: type the distance or hours since new, or leave it empty.</source>
        <extracomment>session.usage</extracomment>
        <translation>Eine Laufleistung des Motors von %1 ist unmöglich: Strecke oder Stunden seit neu eingeben oder leer lassen.</translation>
    </message>
    <message>
        <source>Job number</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>The complaint names &quot;%1&quot; twice: once is enough.</source>
        <extracomment>session.symptom_twice</extracomment>
        <translation>Die Beanstandung nennt „%1“ zweimal: Einmal genügt.</translation>
    </message>
    <message>
        <source>The step &quot;%1&quot; of Prepare is marked twice: keep one mark.</source>
        <extracomment>session.step_twice</extracomment>
        <translation>Der Schritt „%1“ der Vorbereitung ist zweimal gekennzeichnet: eine Kennzeichnung behalten.</translation>
    </message>
    <message>
        <source>Note of a step of Prepare</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Notiz zu einem Schritt der Vorbereitung</translation>
    </message>
    <message>
        <source>Date of the owner&apos;s answer</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Datum der Antwort des Besitzers</translation>
    </message>
    <message>
        <source>Date of the planned retest</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Datum der geplanten Nachprüfung</translation>
    </message>
    <message>
        <source>Full scale of the gauge</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Skalenendwert des Manometers</translation>
    </message>
    <message>
        <source>Division of the scale</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Skalenteilung</translation>
    </message>
    <message>
        <source>Needle at rest</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeiger in Ruhe</translation>
    </message>
    <message>
        <source>Sweep of the scale</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Winkelbereich der Skala</translation>
    </message>
    <message>
        <source>Accuracy class</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Genauigkeitsklasse</translation>
    </message>
    <message>
        <source>The accuracy class &quot;%1&quot; stands without its standard: choose EN 837-1 or ASME B40.100, or leave it empty.</source>
        <extracomment>tester.class_without_scheme</extracomment>
        <translation>Die Genauigkeitsklasse „%1“ steht ohne ihre Norm da: EN 837-1 oder ASME B40.100 wählen oder leer lassen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a class of %2: it is a percentage of the span such as 1.6 or 2.5.</source>
        <extracomment>tester.unknown_class</extracomment>
        <translation>„%1“ ist keine Klasse nach %2: Sie ist ein Prozentwert der Messspanne wie 1,6 oder 2,5.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a grade of %2: it is one of 4A, 3A, 2A, 1A, A, B, C, D.</source>
        <extracomment>tester.unknown_grade</extracomment>
        <translation>„%1“ ist keine Stufe nach %2: Möglich sind 4A, 3A, 2A, 1A, A, B, C, D.</translation>
    </message>
    <message>
        <source>name for an adapter</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Name für einen Adapter</translation>
    </message>
    <message>
        <source>Adapter name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Adaptername</translation>
    </message>
    <message>
        <source>Adapter thread</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Adaptergewinde</translation>
    </message>
    <message>
        <source>Adapter reach</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Gewindelänge des Adapters</translation>
    </message>
    <message>
        <source>Adapter volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Adaptervolumen</translation>
    </message>
    <message>
        <source>Time of a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeitpunkt einer Selbstprüfung</translation>
    </message>
    <message>
        <source>Set pressure of a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eingestellter Druck einer Selbstprüfung</translation>
    </message>
    <message>
        <source>Pressure shown in a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Angezeigter Druck bei einer Selbstprüfung</translation>
    </message>
    <message>
        <source>Drilled hole</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>Note of a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Notiz zu einer Selbstprüfung</translation>
    </message>
    <message>
        <source>tester</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Volume of hose and gauge</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Volumen von Schlauch und Manometer</translation>
    </message>
    <message>
        <source>The set pressure (%1) is beyond the gauge&apos;s full scale (%2): correct one of them.</source>
        <extracomment>tester.set_over_scale</extracomment>
        <translation>Der eingestellte Druck (%1) liegt über dem Skalenendwert des Manometers (%2): eines davon berichtigen.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Durchmesser der Drosselbohrung</translation>
    </message>
    <message>
        <source>Restrictor length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Länge der Drosselbohrung</translation>
    </message>
    <message>
        <source>Restrictor&apos;s discharge coefficient</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Durchflussbeiwert der Drosselbohrung</translation>
    </message>
    <message>
        <source>The working assumptions in odds.json can&apos;t be read: %1. Put the file back as it was shipped.</source>
        <extracomment>odds.malformed</extracomment>
        <translation>Die Annahmen in odds.json sind nicht lesbar: %1. Die mitgelieferte Datei wieder einsetzen.</translation>
    </message>
    <message>
        <source>The odds were not worked out: something else was asked in the meantime.</source>
        <extracomment>odds.cancelled</extracomment>
        <translation>Die Wahrscheinlichkeiten wurden nicht ausgerechnet: Inzwischen wurde etwas anderes gefragt.</translation>
    </message>
    <message>
        <source>An altitude of %1 m is outside the standard atmosphere&apos;s lowest layer. Give -2000 to 11000 m, or the pressure a barometer shows in the shop.</source>
        <extracomment>atmosphere.altitude</extracomment>
        <translation>Eine Höhe von %1 m liegt außerhalb der untersten Schicht der Normatmosphäre. -2000 bis 11000 m angeben oder den Druck, den ein Barometer in der Werkstatt zeigt.</translation>
    </message>
    <message>
        <source>An air pressure of %1 hPa has no altitude between -2000 and 11000 m. Give 227 to 1277 hPa.</source>
        <extracomment>atmosphere.pressure</extracomment>
        <translation>Zu einem Luftdruck von %1 hPa gibt es keine Höhe zwischen -2000 und 11000 m. 227 bis 1277 hPa angeben.</translation>
    </message>
    <message>
        <source>An air pressure of %1 hPa is not one a shop can have. Give what the barometer in the shop shows, 200 to 1200 hPa.</source>
        <extracomment>atmosphere.site_pressure; hold.ambient; leakdown.ambient</extracomment>
        <translation>Ein Luftdruck von %1 hPa kommt in keiner Werkstatt vor. Angeben, was das Barometer in der Werkstatt zeigt, 200 bis 1200 hPa.</translation>
    </message>
    <message>
        <source>A limit of %1 kPa is not a gauge pressure. Give zero or more.</source>
        <extracomment>atmosphere.limit</extracomment>
        <translation>Ein Grenzwert von %1 kPa ist kein Überdruck. Null oder mehr angeben.</translation>
    </message>
    <message>
        <source>%1 of %2%3 is outside what this sum can take. Give %4 to %5%6.</source>
        <extracomment>of several codes</extracomment>
        <translation>%1 von %2%3 liegt außerhalb dessen, was diese Rechnung verträgt. %4 bis %5%6 angeben.</translation>
    </message>
    <message>
        <source>%1 cm3 of oil do not fit a chamber of %2 cm3: the engine would lock on the liquid and bend a rod. Do not crank it; use less oil, or let it drain.</source>
        <extracomment>cranking.oil</extracomment>
        <translation>%1 cm3 Öl passen nicht in einen Brennraum von %2 cm3: Der Motor würde auf der Flüssigkeit blockieren und ein Pleuel verbiegen. Nicht durchdrehen; weniger Öl nehmen oder es ablaufen lassen.</translation>
    </message>
    <message>
        <source>Steps %1 times as long as usual do not do. Give 0.01 to 2.</source>
        <extracomment>cranking.accuracy</extracomment>
        <translation>Schritte von %1-mal der üblichen Länge taugen nicht. 0,01 bis 2 angeben.</translation>
    </message>
    <message>
        <source>The leak is so large that this cylinder builds no pressure to speak of. Give a smaller leak area or a higher cranking speed.</source>
        <extracomment>cranking.no_compression</extracomment>
        <translation>Das Leck ist so groß, dass dieser Zylinder keinen nennenswerten Druck aufbaut. Eine kleinere Leckfläche oder eine höhere Anlasserdrehzahl angeben.</translation>
    </message>
    <message>
        <source>A speed that dips to %1 +- %2 of its mean cannot be right. Give a share up to 1 and a smaller doubt.</source>
        <extracomment>cranking.dip</extracomment>
        <translation>Eine Drehzahl, die auf %1 ± %2 ihres Mittels absinkt, kann nicht stimmen. Einen Anteil bis 1 und eine kleinere Unsicherheit angeben.</translation>
    </message>
    <message>
        <source>Fillings from %1 to %2 are not a range. Give the smaller one first.</source>
        <extracomment>cranking.fill_range</extracomment>
        <translation>Füllungen von %1 bis %2 sind kein Bereich. Die kleinere zuerst angeben.</translation>
    </message>
    <message>
        <source>A decompressor lets the cylinder close later than its intake does: %1 to %2 degrees after bottom dead centre do not follow %3.</source>
        <extracomment>cranking.closing_range</extracomment>
        <translation>Ein Dekompressor lässt den Zylinder später schließen als sein Einlass: %1 bis %2 Grad nach dem unteren Totpunkt liegen nicht nach %3.</translation>
    </message>
    <message>
        <source>No healthy reading is estimated above a compression ratio of %1: at %2 the sum reads far over what makers print for such engines. Use the maker&apos;s figure.</source>
        <extracomment>healthy.compression_ratio</extracomment>
        <translation>Über einer Verdichtung von %1 wird kein guter Messwert geschätzt: Bei %2 liegt die Rechnung weit über dem, was Hersteller für solche Motoren angeben. Den Wert des Herstellers nehmen.</translation>
    </message>
    <message>
        <source>Kept shares of oil from %1 to %2 are not a range. Give two figures from 0 to 1, the smaller first.</source>
        <extracomment>oil.share</extracomment>
        <translation>Zurückgehaltene Ölanteile von %1 bis %2 sind kein Bereich. Zwei Zahlen von 0 bis 1 angeben, die kleinere zuerst.</translation>
    </message>
    <message>
        <source>With this hose the gauge would show nothing, so there is nothing to correct. Move the check valve to the plug end or use a shorter hose.</source>
        <extracomment>hose.no_reading</extracomment>
        <translation>Mit diesem Schlauch würde das Manometer nichts zeigen, also gibt es nichts zu korrigieren. Das Rückschlagventil ans Kerzenende setzen oder einen kürzeren Schlauch nehmen.</translation>
    </message>
    <message>
        <source>This processor cannot run four cases side by side. Ask for the widest.</source>
        <extracomment>cranking.lanes</extracomment>
        <translation>Dieser Prozessor kann keine vier Fälle nebeneinander rechnen. Den breitesten verlangen.</translation>
    </message>
    <message>
        <source>Case %1 has %2 strokes and the first has %3. Give all cases the same number.</source>
        <extracomment>cranking.many</extracomment>
        <translation>Fall %1 hat %2 Hübe und der erste hat %3. Allen Fällen dieselbe Anzahl geben.</translation>
    </message>
    <message>
        <source>%1 readings do not fit %2 cases of %3 strokes. Give room for %4.</source>
        <extracomment>cranking.many</extracomment>
        <translation>%1 Messwerte passen nicht zu %2 Fällen mit %3 Hüben. Platz für %4 geben.</translation>
    </message>
    <message>
        <source>A hold test from %1 kPa can&apos;t be worked with. Give the pressure that the chamber was pumped up to, 0.5 to 1000 kPa; 50 kPa is usual for a crankcase.</source>
        <extracomment>hold.set</extracomment>
        <translation>Mit einer Halteprüfung ab %1 kPa lässt sich nicht rechnen. Den Druck angeben, bis zu dem die Kammer aufgepumpt wurde, 0,5 bis 1000 kPa; bei einem Kurbelgehäuse sind 50 kPa üblich.</translation>
    </message>
    <message>
        <source>A hold of %1 s can&apos;t be worked with. Give the time from shutting off to reading, 1 second to 24 hours.</source>
        <extracomment>hold.seconds</extracomment>
        <translation>Mit einer Haltezeit von %1 s lässt sich nicht rechnen. Die Zeit vom Absperren bis zum Ablesen angeben, 1 Sekunde bis 24 Stunden.</translation>
    </message>
    <message>
        <source>%1 kPa at the end of a hold that began at %2 kPa can&apos;t be: it must lie between 0 and that. Were the two exchanged?</source>
        <extracomment>hold.end</extracomment>
        <translation>%1 kPa am Ende einer Halteprüfung, die bei %2 kPa begann, kann nicht sein: Der Wert muss zwischen 0 und diesem liegen. Wurden die beiden vertauscht?</translation>
    </message>
    <message>
        <source>Nothing was left at the end of the hold, so how fast it leaked isn&apos;t known. Read again after a shorter time.</source>
        <extracomment>hold.emptied</extracomment>
        <translation>Am Ende der Haltezeit war nichts mehr übrig; wie schnell es entwich, ist daher nicht bekannt. Nach kürzerer Zeit noch einmal ablesen.</translation>
    </message>
    <message>
        <source>A pressure of %1 kPa is not one a tester puts into a cylinder. Give the gauge pressure, 0 to 7000 kPa.</source>
        <extracomment>torque.pressure</extracomment>
        <translation>Einen Druck von %1 kPa gibt kein Prüfgerät in einen Zylinder. Den Überdruck angeben, 0 bis 7000 kPa.</translation>
    </message>
    <message>
        <source>%1 degrees is not an angle from top dead centre. Give -180 to 180, 0 at the centre.</source>
        <extracomment>torque.angle</extracomment>
        <translation>%1 Grad ist kein Winkel vom oberen Totpunkt. -180 bis 180 angeben, 0 im Totpunkt.</translation>
    </message>
    <message>
        <source>A bar of %1 m cannot be right. Give its length from the crank&apos;s axis, 0.01 to 5 m.</source>
        <extracomment>torque.bar</extracomment>
        <translation>Ein Hebel von %1 m kann nicht stimmen. Seine Länge ab Kurbelwellenachse angeben, 0,01 bis 5 m.</translation>
    </message>
    <message>
        <source>Cylinder %1 stands twice in the firing order. Give every cylinder once.</source>
        <extracomment>firing.order</extracomment>
        <translation>Zylinder %1 steht zweimal in der Zündfolge. Jeden Zylinder einmal angeben.</translation>
    </message>
    <message>
        <source>%1 firing intervals do not fit %2 cylinders. Give one interval after each cylinder of the order.</source>
        <extracomment>firing.intervals</extracomment>
        <translation>%1 Zündabstände passen nicht zu %2 Zylindern. Nach jedem Zylinder der Zündfolge einen Abstand angeben.</translation>
    </message>
    <message>
        <source>The firing intervals add up to %1 degrees. They must make 720 (four-stroke) or 360 (two-stroke), none below 0.</source>
        <extracomment>firing.intervals</extracomment>
        <translation>Die Zündabstände ergeben zusammen %1 Grad. Sie müssen 720 (Viertakter) oder 360 (Zweitakter) ergeben, keiner unter 0.</translation>
    </message>
    <message>
        <source>Cylinder %1 is not in the firing order. Give one that is.</source>
        <extracomment>firing.cylinder</extracomment>
        <translation>Zylinder %1 ist nicht in der Zündfolge. Einen angeben, der darin ist.</translation>
    </message>
    <message>
        <source>A restrictor of %1 mm cannot be right. Give 0.01 to 50 mm; most are 1 mm.</source>
        <extracomment>leakdown.restrictor</extracomment>
        <translation>Eine Drosselbohrung von %1 mm kann nicht stimmen. 0,01 bis 50 mm angeben; die meisten haben 1 mm.</translation>
    </message>
    <message>
        <source>A restrictor&apos;s discharge coefficient of %1 cannot be right. Give above 0 up to 1; 0.85 is usual.</source>
        <extracomment>leakdown.restrictor</extracomment>
        <translation>Ein Durchflussbeiwert der Drosselbohrung von %1 kann nicht stimmen. Über 0 bis 1 angeben; 0,85 ist üblich.</translation>
    </message>
    <message>
        <source>A set pressure of %1 kPa cannot be tested with. Give the gauge pressure with the outlet blocked, above 0; 550 kPa (80 psi) is usual.</source>
        <extracomment>leakdown.set</extracomment>
        <translation>Mit einem eingestellten Druck von %1 kPa lässt sich nicht prüfen. Den Überdruck bei verschlossenem Ausgang angeben, über 0; 550 kPa (80 psi) ist üblich.</translation>
    </message>
    <message>
        <source>A held pressure of %1 kPa is not a gauge reading. Give 0 or more; check that the needle rests at zero.</source>
        <extracomment>leakdown.held_negative</extracomment>
        <translation>Ein Haltedruck von %1 kPa ist keine Manometeranzeige. 0 oder mehr angeben; prüfen, ob der Zeiger in Ruhe auf null steht.</translation>
    </message>
    <message>
        <source>The held pressure (%1 kPa) is above the set pressure (%2 kPa). Were the two exchanged? If not, block the outlet and compare the gauges.</source>
        <extracomment>leakdown.held_above_set</extracomment>
        <translation>Der Haltedruck (%1 kPa) liegt über dem eingestellten Druck (%2 kPa). Wurden die beiden vertauscht? Wenn nicht, den Ausgang verschließen und die Manometer vergleichen.</translation>
    </message>
    <message>
        <source>A check hole of %1 mm with discharge coefficient %2 cannot be right. Give the drill&apos;s diameter, 0.01 to 50 mm, and a coefficient above 0 up to 1.</source>
        <extracomment>leakdown.check_hole</extracomment>
        <translation>Ein Prüfloch von %1 mm mit Durchflussbeiwert %2 kann nicht stimmen. Den Durchmesser des Bohrers angeben, 0,01 bis 50 mm, und einen Beiwert über 0 bis 1.</translation>
    </message>
    <message>
        <source>Holding %1 kPa of %2 kPa says nothing about the restrictor: the check hole is %3. Use a hole of about the restrictor&apos;s size.</source>
        <extracomment>leakdown.check_hole</extracomment>
        <translation>%1 kPa von %2 kPa gehalten sagt nichts über die Drosselbohrung: Das Prüfloch ist %3. Ein Loch von etwa der Größe der Drosselbohrung nehmen.</translation>
    </message>
    <message>
        <source>blocked or too small</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>verstopft oder zu klein</translation>
    </message>
    <message>
        <source>too large</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>A reading that loses nothing or holds nothing says nothing about the leak&apos;s law. Take two readings that hold something between zero and the set pressure.</source>
        <extracomment>leakdown.law</extracomment>
        <translation>Ein Messwert, der nichts verliert oder nichts hält, sagt nichts über das Gesetz des Lecks. Zwei Messwerte nehmen, deren Haltedruck zwischen null und dem eingestellten Druck liegt.</translation>
    </message>
    <message>
        <source>Held pressures of %1 and %2 kPa are too close together to tell the leak&apos;s law. Set the regulator to about half and read again.</source>
        <extracomment>leakdown.law</extracomment>
        <translation>Haltedrücke von %1 und %2 kPa liegen zu nah beieinander, um das Gesetz des Lecks zu erkennen. Den Druckregler etwa auf die Hälfte stellen und neu ablesen.</translation>
    </message>
    <message>
        <source>A bore of %1 mm is not an engine&apos;s. Give 5 to 1500 mm.</source>
        <extracomment>engine.bore</extracomment>
        <translation>Eine Bohrung von %1 mm hat kein Motor. 5 bis 1500 mm angeben.</translation>
    </message>
    <message>
        <source>A stroke of %1 mm is not an engine&apos;s. Give 5 to 1500 mm.</source>
        <extracomment>engine.stroke</extracomment>
        <translation>Einen Hub von %1 mm hat kein Motor. 5 bis 1500 mm angeben.</translation>
    </message>
    <message>
        <source>A connecting rod of %1 mm does not fit a stroke of %2 mm. Give the length between the centres of its eyes; it is usually 1.5 to 2 times the stroke.</source>
        <extracomment>engine.rod</extracomment>
        <translation>Ein Pleuel von %1 mm passt nicht zu einem Hub von %2 mm. Die Länge von Augenmitte zu Augenmitte angeben; üblich ist das 1,5- bis 2-Fache des Hubs.</translation>
    </message>
    <message>
        <source>The file names &quot;%1&quot; twice in one place: it was not written by this app.</source>
        <extracomment>record.twice</extracomment>
        <translation>Die Datei nennt „%1“ an einer Stelle zweimal: Sie stammt nicht von dieser App.</translation>
    </message>
    <message>
        <source>The file holds a number that is too large to be one.</source>
        <extracomment>record.number</extracomment>
        <translation>Die Datei enthält eine Zahl, die zu groß ist, um eine zu sein.</translation>
    </message>
    <message>
        <source>The file is damaged or was not written by this app: it stops being JSON at byte %1.</source>
        <extracomment>record.not_json</extracomment>
        <translation>Die Datei ist beschädigt oder stammt nicht von dieser App: Ab Byte %1 ist sie kein JSON mehr.</translation>
    </message>
    <message>
        <source>The file nests more than %1 levels deep: it was not written by this app.</source>
        <extracomment>record.too_deep</extracomment>
        <translation>Die Datei ist mehr als %1 Ebenen tief verschachtelt: Sie stammt nicht von dieser App.</translation>
    </message>
    <message>
        <source>The file holds more than %1 values, or more than %2 names in one place: no session has so many, and it was not written by this app.</source>
        <extracomment>record.too_many</extracomment>
        <translation>Die Datei enthält mehr als %1 Werte oder mehr als %2 Namen an einer Stelle: So viele hat keine Sitzung, und diese App hat sie nicht geschrieben.</translation>
    </message>
    <message>
        <source>The text is %1 bytes long: at most %2 are read.</source>
        <extracomment>record.too_large</extracomment>
        <translation>Der Text ist %1 Bytes lang: Höchstens %2 werden gelesen.</translation>
    </message>
    <message>
        <source>Two different records have the id %1: one of the files was not written by this app.</source>
        <extracomment>merge.other_record</extracomment>
        <translation>Zwei verschiedene Einträge haben die Kennung %1: Eine der Dateien stammt nicht von dieser App.</translation>
    </message>
    <message>
        <source>The %1 %2 belongs to another %3 in the file than here. Nothing was changed: do not trust the file.</source>
        <extracomment>merge.moved</extracomment>
        <translation>Eintrag „%1“ (%2) gehört in der Datei zu einem anderen Eintrag („%3“) als hier. Nichts wurde geändert: der Datei nicht trauen.</translation>
    </message>
    <message>
        <source>The %1 %2 would have %3 versions: at most %4 are kept. Choose between those that are here, then bring the file in again.</source>
        <extracomment>merge.too_many_versions</extracomment>
        <translation>Eintrag „%1“ (%2) hätte %3 Fassungen: Höchstens %4 werden behalten. Zwischen den hiesigen wählen, dann die Datei noch einmal einlesen.</translation>
    </message>
    <message>
        <source>The files are of two engines, %1 and %2: only files of the same engine can be merged.</source>
        <extracomment>merge.other_engine</extracomment>
        <translation>Die Dateien betreffen zwei Motoren, %1 und %2: Nur Dateien desselben Motors lassen sich zusammenführen.</translation>
    </message>
    <message>
        <source>The file is not right at %1: %2 must stand there.</source>
        <extracomment>record.wrong_type</extracomment>
        <translation>Die Datei stimmt bei %1 nicht: Dort muss %2 stehen.</translation>
    </message>
    <message>
        <source>The file is not complete: %1 has no &quot;%2&quot;.</source>
        <extracomment>record.missing</extracomment>
        <translation>Die Datei ist nicht vollständig: %1 hat kein „%2“.</translation>
    </message>
    <message>
        <source>The file is not right at %1: it holds more that this version doesn&apos;t know than a record can have, and was not written by this app.</source>
        <extracomment>record.too_much_unknown</extracomment>
        <translation>Die Datei stimmt bei %1 nicht: Sie enthält mehr, was diese Version nicht kennt, als ein Eintrag haben kann, und diese App hat sie nicht geschrieben.</translation>
    </message>
    <message>
        <source>an object {...}</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ein Objekt {...}</translation>
    </message>
    <message>
        <source>The file is not right at %1: %2</source>
        <extracomment>record.impossible</extracomment>
        <translation>Die Datei stimmt bei %1 nicht: %2</translation>
    </message>
    <message>
        <source>The file is not right at %1: one of its other versions is none of this record.</source>
        <extracomment>record.other_version</extracomment>
        <translation>Die Datei stimmt bei %1 nicht: Eine ihrer anderen Fassungen gehört nicht zu diesem Eintrag.</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ein Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>true or false</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>a whole number</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: known here are %3.</source>
        <extracomment>record.unknown_word</extracomment>
        <translation>In der Datei steht „%1“ bei %2: Bekannt sind hier %3.</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: that is no id (UUID).</source>
        <extracomment>record.bad_id</extracomment>
        <translation>In der Datei steht „%1“ bei %2: Das ist keine Kennung (UUID).</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: that is no time with offset (RFC 3339).</source>
        <extracomment>record.bad_time</extracomment>
        <translation>In der Datei steht „%1“ bei %2: Das ist keine Zeit mit Zeitzonenabstand (RFC 3339).</translation>
    </message>
    <message>
        <source>a quantity {&quot;digits&quot;: ..., &quot;unit&quot;: ...}</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>eine Größe {&quot;digits&quot;: ..., &quot;unit&quot;: ...}</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: units of %3 are %4.</source>
        <extracomment>record.unknown_unit</extracomment>
        <translation>In der Datei steht „%1“ bei %2: Einheiten für %3 sind %4.</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: a plain number such as -12 or 6.40 must stand there.</source>
        <extracomment>record.bad_digits</extracomment>
        <translation>In der Datei steht „%1“ bei %2: Dort muss eine einfache Zahl wie -12 oder 6.40 stehen.</translation>
    </message>
    <message>
        <source>a list [...]</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>eine Liste [...]</translation>
    </message>
    <message>
        <source>The file holds %1 records: at most %2 are read at once. Ask the sender for some of the visits at a time.</source>
        <extracomment>record.too_many_records</extracomment>
        <translation>Die Datei enthält %1 Einträge: Auf einmal werden höchstens %2 gelesen. Den Absender bitten, nur einige Termine auf einmal zu schicken.</translation>
    </message>
    <message>
        <source>This is not a session file: its session.json does not say so.</source>
        <extracomment>record.not_a_session</extracomment>
        <translation>Das ist keine Sitzungsdatei: Ihre session.json weist sie nicht als solche aus.</translation>
    </message>
    <message>
        <source>The file says that the photo or voice note %1 is missing, and it has none of that id, or says so twice: it was not written by this app.</source>
        <extracomment>record.missing_of_nothing</extracomment>
        <translation>Die Datei sagt, dass das Foto oder die Sprachnotiz %1 fehlt, hat aber keines mit dieser Kennung oder sagt es zweimal: Sie wurde nicht von dieser App geschrieben.</translation>
    </message>
    <message>
        <source>Record kind %1 is unknown.</source>
        <extracomment>record.unknown_kind</extracomment>
        <translation>Die Eintragsart %1 ist unbekannt.</translation>
    </message>
    <message>
        <source>Two records have the id %1: the file was not written by this app.</source>
        <extracomment>record.id_twice</extracomment>
        <translation>Zwei Einträge haben die Kennung %1: Die Datei stammt nicht von dieser App.</translation>
    </message>
    <message>
        <source>There is no engine among the records.</source>
        <extracomment>record.no_engine</extracomment>
        <translation>Unter den Einträgen ist kein Motor.</translation>
    </message>
    <message>
        <source>Session %1 belongs to another engine.</source>
        <extracomment>record.other_engine</extracomment>
        <translation>Sitzung %1 gehört zu einem anderen Motor.</translation>
    </message>
    <message>
        <source>The records belong to more than one engine: %1 and %2.</source>
        <extracomment>record.two_engines</extracomment>
        <translation>Die Einträge gehören zu mehr als einem Motor: %1 und %2.</translation>
    </message>
    <message>
        <source>Records belong to session %1, which is not among them.</source>
        <extracomment>record.orphan</extracomment>
        <translation>Einträge gehören zu Sitzung %1, die nicht dabei ist.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a version of session files, such as 1.0.</source>
        <extracomment>record.bad_version</extracomment>
        <translation>„%1“ ist keine Version von Sitzungsdateien wie etwa 1.0.</translation>
    </message>
    <message>
        <source>This file was written by a newer Lapwing (format %1; this one reads up to %2.x). Update Lapwing, or ask the sender for the report as PDF.</source>
        <extracomment>record.newer_major</extracomment>
        <translation>Diese Datei stammt von einem neueren Lapwing (Format %1; dieses hier liest bis %2.x). Lapwing aktualisieren oder den Absender um den Bericht als PDF bitten.</translation>
    </message>
    <message>
        <source>This file was written by a newer Lapwing (format %1; this one knows %2) and says something that this one has no word for. Update Lapwing to read it; nothing was changed. (%3)</source>
        <extracomment>record.newer_minor</extracomment>
        <translation>Diese Datei wurde von einem neueren Lapwing geschrieben (Format %1; dieses kennt %2) und sagt etwas, wofür dieses kein Wort hat. Lapwing aktualisieren, um sie zu lesen; nichts wurde geändert. (%3)</translation>
    </message>
    <message>
        <source>%1 could not be read. Check that it is still there and try again.</source>
        <extracomment>store.unreadable_file</extracomment>
        <translation>%1 ließ sich nicht lesen. Prüfen, ob es noch da ist, und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 changed while it was taken in. Try again.</source>
        <extracomment>store.unreadable_file</extracomment>
        <translation>%1 änderte sich während der Übernahme. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 could not be renamed to %2 (%3). Check that its folder is not write-protected.</source>
        <extracomment>store.read_only</extracomment>
        <translation>%1 ließ sich nicht in %2 umbenennen (%3). Prüfen, ob der Ordner schreibgeschützt ist.</translation>
    </message>
    <message>
        <source>The library %1 is damaged (%2).</source>
        <extracomment>store.damaged</extracomment>
        <translation>Der Bestand %1 ist beschädigt (%2).</translation>
    </message>
    <message>
        <source>There is no room left to store this: %1 could not grow. Nothing stored before is lost. Free some space on this device and do it again.</source>
        <extracomment>store.full</extracomment>
        <translation>Es ist kein Platz mehr, um das zu speichern: %1 konnte nicht wachsen. Nichts vorher Gespeichertes ist verloren. Auf diesem Gerät etwas Platz freimachen und es noch einmal tun.</translation>
    </message>
    <message>
        <source>The library %1 is damaged (%2). Close Lapwing and open it again: it sets the damaged file aside and goes back to the last good backup.</source>
        <extracomment>store.damaged</extracomment>
        <translation>Der Bestand %1 ist beschädigt (%2). Lapwing schließen und wieder öffnen: Es legt die beschädigte Datei beiseite und geht auf die letzte gute Sicherung zurück.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written. Check that its folder exists, belongs to you and is not write-protected.</source>
        <extracomment>store.read_only</extracomment>
        <translation>%1 ist nicht beschreibbar. Prüfen, ob der Ordner vorhanden ist, die Rechte stimmen und er nicht schreibgeschützt ist.</translation>
    </message>
    <message>
        <source>Another program is holding %1, so this was not stored. Close that program and do it again.</source>
        <extracomment>store.busy</extracomment>
        <translation>Ein anderes Programm hält %1 fest, deshalb wurde das nicht gespeichert. Jenes Programm schließen und es noch einmal tun.</translation>
    </message>
    <message>
        <source>The storage that holds %1 reports an error (%2), so this was not stored. Do it again; if it keeps failing, copy the folder to another place.</source>
        <extracomment>store.io</extracomment>
        <translation>Der Speicher mit %1 meldet einen Fehler (%2), deshalb wurde das nicht gespeichert. Es noch einmal tun; schlägt es weiter fehl, den Ordner an einen anderen Ort kopieren.</translation>
    </message>
    <message>
        <source>%1 could not be used: %2. Nothing was stored.</source>
        <extracomment>store.unexpected</extracomment>
        <translation>%1 war nicht benutzbar: %2. Nichts wurde gespeichert.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while Lapwing had it open, so this was not stored. Put its folder back and do it again; or close Lapwing and open it again.</source>
        <extracomment>store.gone</extracomment>
        <translation>%1 wurde verschoben oder entfernt, während Lapwing damit arbeitete; darum wurde dies nicht gespeichert. Den Ordner zurücklegen und es noch einmal tun; oder Lapwing schließen und wieder öffnen.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written (%2). Check that the folder exists, belongs to you and is not write-protected.</source>
        <extracomment>store.read_only</extracomment>
        <translation>%1 ist nicht beschreibbar (%2). Prüfen, ob der Ordner vorhanden ist, die Rechte stimmen und er nicht schreibgeschützt ist.</translation>
    </message>
    <message>
        <source>Lapwing already has %1 open. Go on in the window that is open, or close it first.</source>
        <extracomment>store.in_use</extracomment>
        <translation>Lapwing hat %1 schon geöffnet. Im offenen Fenster weitermachen oder es erst schließen.</translation>
    </message>
    <message>
        <source>The %1 can&apos;t be taken out: something recorded for it is still there. Take that out first.</source>
        <extracomment>store.hangs</extracomment>
        <translation>Der Eintrag „%1“ lässt sich nicht herausnehmen: Etwas dafür Aufgenommenes ist noch da. Erst das herausnehmen.</translation>
    </message>
    <message>
        <source>The %1 can&apos;t be stored: the %2 it belongs to is no longer in the library.</source>
        <extracomment>store.no_parent</extracomment>
        <translation>Der Eintrag „%1“ lässt sich nicht speichern: Das, wozu er gehört („%2“), ist nicht mehr im Bestand.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone any more: the %1 was changed again since. Undo the later change first, or change it by hand.</source>
        <extracomment>undo.changed_since</extracomment>
        <translation>Das lässt sich nicht mehr rückgängig machen: Der Eintrag „%1“ wurde seither noch einmal geändert. Erst die spätere Änderung rückgängig machen oder von Hand ändern.</translation>
    </message>
    <message>
        <source>This can&apos;t be done again any more: the %1 was changed since. Do it by hand.</source>
        <extracomment>redo.changed_since</extracomment>
        <translation>Das lässt sich nicht mehr wiederherstellen: %1 wurde seither geändert. Von Hand nachholen.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: something recorded since belongs to the %1. Undo or take that out first.</source>
        <extracomment>undo.hangs</extracomment>
        <translation>Das lässt sich nicht rückgängig machen: Etwas seither Aufgenommenes gehört zum Eintrag „%1“. Erst das rückgängig machen oder herausnehmen.</translation>
    </message>
    <message>
        <source>This can&apos;t be done again: what the %1 belongs to is no longer there.</source>
        <extracomment>redo.hangs</extracomment>
        <translation>Das lässt sich nicht wiederherstellen: Wozu %1 gehört, gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>There is nothing to undo: this step was undone already or is too old.</source>
        <extracomment>undo.gone</extracomment>
        <translation>Es gibt nichts rückgängig zu machen: Dieser Schritt wurde schon zurückgenommen oder ist zu alt.</translation>
    </message>
    <message>
        <source>There is nothing to do again: this step stands already or is too old.</source>
        <extracomment>redo.gone</extracomment>
        <translation>Es gibt nichts zu wiederholen: Dieser Schritt gilt schon oder ist zu alt.</translation>
    </message>
    <message>
        <source>The library %1 is %2, though there was one before.</source>
        <extracomment>store.damaged</extracomment>
        <translation>Der Bestand %1 ist %2, obwohl es vorher einen gab.</translation>
    </message>
    <message>
        <source>empty</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>leer</translation>
    </message>
    <message>
        <source>missing</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>The file of the library was gone. The backup of %1 stands in for it; what was recorded after that is not in it.</source>
        <extracomment>store.restored_lost</extracomment>
        <translation>Die Datei des Bestands war weg. An ihre Stelle tritt die Sicherung vom %1; was danach aufgenommen wurde, ist nicht darin.</translation>
    </message>
    <message>
        <source>The library was damaged. It was set aside as %1, and the backup of %2 stands in for it. What was recorded after that is only in the file set aside: keep it.</source>
        <extracomment>store.restored</extracomment>
        <translation>Der Bestand war beschädigt. Er wurde als %1 beiseitegelegt, und die Sicherung vom %2 tritt an seine Stelle. Was danach aufgenommen wurde, ist nur in der beiseitegelegten Datei: sie aufbewahren.</translation>
    </message>
    <message>
        <source>The file of the library was gone and no backup of it can be used. An empty library was started. Session files handed over before can be opened again.</source>
        <extracomment>store.started_anew_lost</extracomment>
        <translation>Die Datei des Bestands war weg, und keine Sicherung davon ist brauchbar. Ein leerer Bestand wurde begonnen. Früher übergebene Sitzungsdateien lassen sich wieder öffnen.</translation>
    </message>
    <message>
        <source>The library was damaged and there is no backup of it. It was set aside as %1, and an empty library was started. Keep that file; session files handed over before can be opened again.</source>
        <extracomment>store.started_anew</extracomment>
        <translation>Der Bestand war beschädigt, und es gibt keine Sicherung davon. Er wurde als %1 beiseitegelegt, und ein leerer Bestand wurde begonnen. Jene Datei aufbewahren; früher übergebene Sitzungsdateien lassen sich wieder öffnen.</translation>
    </message>
    <message>
        <source>Lapwing was not closed properly last time. The library was checked and is sound: everything that was confirmed is there.</source>
        <extracomment>store.was_checked</extracomment>
        <translation>Lapwing wurde beim letzten Mal nicht richtig geschlossen. Der Bestand wurde geprüft und ist heil: Alles Bestätigte ist da.</translation>
    </message>
    <message>
        <source>The %1 %2 in the library can&apos;t be read: %3 It was left as it is; a newer Lapwing may read it.</source>
        <extracomment>store.unreadable</extracomment>
        <translation>Eintrag „%1“ (%2) im Bestand ist nicht lesbar: %3 Er blieb, wie er ist; ein neueres Lapwing kann ihn vielleicht lesen.</translation>
    </message>
    <message>
        <source>The library %1 has lost its own name.</source>
        <extracomment>store.damaged</extracomment>
        <translation>Der Bestand %1 hat seinen eigenen Namen verloren.</translation>
    </message>
    <message>
        <source>%1 belongs to another program. Move it away, or choose another folder for Lapwing.</source>
        <extracomment>store.not_ours</extracomment>
        <translation>%1 gehört einem anderen Programm. Es wegräumen oder einen anderen Ordner für Lapwing wählen.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Lapwing (its version is %2, this one knows up to %3). It was left as it is. Update Lapwing to open it.</source>
        <extracomment>store.newer_version</extracomment>
        <translation>%1 stammt von einem neueren Lapwing (Version %2, dieses hier kennt bis %3). Es blieb, wie es ist. Lapwing aktualisieren, um es zu öffnen.</translation>
    </message>
    <message>
        <source>%1 is not a voice note that Lapwing recorded, so it was left as it is.</source>
        <extracomment>tape.not_a_tape</extracomment>
        <translation>%1 ist keine von Lapwing aufgenommene Sprachnotiz und blieb deshalb, wie es ist.</translation>
    </message>
    <message>
        <source>Class %1 is not a pressure gauge&apos;s. Give the number printed on the dial, 0.05 to 10; 1.6 and 2.5 are usual.</source>
        <extracomment>gauge.class</extracomment>
        <translation>Klasse %1 gibt es bei Manometern nicht. Die aufs Zifferblatt gedruckte Zahl angeben, 0,05 bis 10; üblich sind 1,6 und 2,5.</translation>
    </message>
    <message>
        <source>A gauge that reads from 0 to %1 kPa cannot be right. Give its full scale.</source>
        <extracomment>gauge.span</extracomment>
        <translation>Ein Manometer von 0 bis %1 kPa kann nicht stimmen. Seinen Skalenendwert angeben.</translation>
    </message>
    <message>
        <source>An error limit of %1 % of span is not a gauge&apos;s. Give above 0 up to 20 %.</source>
        <extracomment>gauge.class</extracomment>
        <translation>Eine Fehlergrenze von %1 % der Messspanne hat kein Manometer. Über 0 bis 20 % angeben.</translation>
    </message>
    <message>
        <source>A readable step of %1 kPa does not fit a gauge of %2 kPa. Give half a graduation.</source>
        <extracomment>gauge.step</extracomment>
        <translation>Ein ablesbarer Schritt von %1 kPa passt nicht zu einem Manometer mit %2 kPa. Einen halben Teilstrich angeben.</translation>
    </message>
    <message>
        <source>A zero error of %1 kPa does not fit a gauge of %2 kPa. Give how far the needle rests from zero.</source>
        <extracomment>gauge.zero</extracomment>
        <translation>Ein Nullpunktfehler von %1 kPa passt nicht zu einem Manometer mit %2 kPa. Angeben, wie weit der Zeiger in Ruhe von null entfernt steht.</translation>
    </message>
    <message>
        <source>Error shares of %1 (offset) and %2 (gain) must not be negative and make at most 1.</source>
        <extracomment>gauge.shares</extracomment>
        <translation>Fehleranteile von %1 (Versatz) und %2 (Steigung) dürfen nicht negativ sein und zusammen höchstens 1 ergeben.</translation>
    </message>
    <message>
        <source>There is no mean of %1 readings with one missing. Give at least one number.</source>
        <extracomment>gauge.repeats</extracomment>
        <translation>Von %1 Messwerten, von denen einer fehlt, gibt es kein Mittel. Mindestens eine Zahl angeben.</translation>
    </message>
    <message>
        <source>A set pressure of %1 kPa cannot be tested with. Give a gauge pressure above 0.</source>
        <extracomment>leakage.set</extracomment>
        <translation>Mit einem eingestellten Druck von %1 kPa lässt sich nicht prüfen. Einen Überdruck über 0 angeben.</translation>
    </message>
    <message>
        <source>A held pressure of %1 kPa does not fit a set pressure of %2 kPa. Give 0 up to the set pressure.</source>
        <extracomment>leakage.held</extracomment>
        <translation>Ein Haltedruck von %1 kPa passt nicht zu einem eingestellten Druck von %2 kPa. 0 bis zum eingestellten Druck angeben.</translation>
    </message>
    <message>
        <source>A regulator that sinks by %1 kPa cannot be right. Give 0 or more.</source>
        <extracomment>leakage.droop</extracomment>
        <translation>Ein Druckregler, der um %1 kPa absinkt, kann nicht stimmen. 0 oder mehr angeben.</translation>
    </message>
    <message>
        <source>%1 trials are too few for a 95 % interval. Run at least %2.</source>
        <extracomment>uncertainty.trials</extracomment>
        <translation>%1 Durchläufe sind zu wenig für ein 95-%-Intervall. Mindestens %2 rechnen.</translation>
    </message>
    <message>
        <source>Some of the %1 trials gave no number: the doubt of an input reaches values the sum cannot take. Narrow the inputs.</source>
        <extracomment>uncertainty.trials</extracomment>
        <translation>Einige der %1 Durchläufe ergaben keine Zahl: Die Unsicherheit einer Eingabe reicht bis zu Werten, die die Rechnung nicht verträgt. Die Eingaben enger fassen.</translation>
    </message>
    <message>
        <source>The correlations given contradict each other at input %1. Correct them.</source>
        <extracomment>uncertainty.covariance</extracomment>
        <translation>Die angegebenen Korrelationen widersprechen sich bei Eingabe %1. Sie berichtigen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number. Type digits with at most one decimal mark.</source>
        <extracomment>units.not_a_number</extracomment>
        <translation>„%1“ ist keine Zahl. Ziffern mit höchstens einem Dezimalzeichen eingeben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a unit of %2: %3.</source>
        <extracomment>units.unknown</extracomment>
        <translation>„%1“ braucht eine Einheit (%2): %3.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is damaged and can&apos;t be read. Take the photo again.</source>
        <extracomment>vision.photo_broken</extracomment>
        <translation>Die Datei des Fotos ist beschädigt und nicht lesbar. Das Foto noch einmal aufnehmen.</translation>
    </message>
    <message>
        <source>The scale must end above where it begins; %1 to %2 does not.</source>
        <extracomment>vision.range</extracomment>
        <translation>Die Skala muss über ihrem Anfang enden; %1 bis %2 tut das nicht.</translation>
    </message>
    <message>
        <source>A scale sweeps 90 to 350 degrees from end to end; %1 is not possible.</source>
        <extracomment>vision.sweep</extracomment>
        <translation>Eine Skala reicht von Ende zu Ende über 90 bis 350 Grad; %1 ist nicht möglich.</translation>
    </message>
    <message>
        <source>The scale&apos;s start is an angle from 12 o&apos;clock, -360 to 360 degrees; %1 is not.</source>
        <extracomment>vision.start</extracomment>
        <translation>Der Skalenanfang ist ein Winkel ab 12 Uhr, -360 bis 360 Grad; %1 ist keiner.</translation>
    </message>
    <message>
        <source>The photo could not be looked at (%1). Type the value.</source>
        <extracomment>vision.internal</extracomment>
        <translation>Das Foto ließ sich nicht auswerten (%1). Den Wert eintippen.</translation>
    </message>
    <message>
        <source>The picture with the needle marked could not be drawn.</source>
        <extracomment>vision.internal</extracomment>
        <translation>Das Bild mit dem markierten Zeiger ließ sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>The photo could not be written as a JPEG, so it was not kept. Close other apps, then try again.</source>
        <extracomment>vision.internal</extracomment>
        <translation>Das Foto ließ sich nicht als JPEG schreiben und wurde deshalb nicht behalten. Andere Apps schließen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is cut short. Take the photo again, or copy the file anew.</source>
        <extracomment>vision.photo_cut_short</extracomment>
        <translation>Die Datei des Fotos ist abgeschnitten. Das Foto noch einmal aufnehmen oder die Datei neu kopieren.</translation>
    </message>
    <message>
        <source>The photo has %1 by %2 pixels; a gauge can&apos;t be read below %3 on either side. Use a larger one.</source>
        <extracomment>vision.photo_too_small</extracomment>
        <translation>Das Foto hat %1 mal %2 Bildpunkte; unter %3 auf einer Seite lässt sich kein Manometer ablesen. Ein größeres nehmen.</translation>
    </message>
    <message>
        <source>The photo has %1 megapixels; files of its kind are read up to %2. Save it smaller, as an ordinary JPEG.</source>
        <extracomment>vision.photo_too_large</extracomment>
        <translation>Das Foto hat %1 Megapixel; Dateien dieser Art werden bis %2 gelesen. Kleiner speichern, als gewöhnliches JPEG.</translation>
    </message>
    <message>
        <source>The photo is a rare kind of JPEG that can&apos;t be read here. Save it as an ordinary JPEG.</source>
        <extracomment>vision.photo_unusual_jpeg</extracomment>
        <translation>Das Foto ist eine seltene JPEG-Art, die hier nicht lesbar ist. Als gewöhnliches JPEG speichern.</translation>
    </message>
    <message>
        <source>The photo is stored in the four colours of print (CMYK). Save it as an ordinary JPEG.</source>
        <extracomment>vision.photo_four_colours</extracomment>
        <translation>Das Foto ist in den vier Druckfarben (CMYK) gespeichert. Als gewöhnliches JPEG speichern.</translation>
    </message>
    <message>
        <source>The file is a moving picture. Use a single photo, JPEG or PNG.</source>
        <extracomment>vision.photo_moves</extracomment>
        <translation>Die Datei ist ein bewegtes Bild. Ein einzelnes Foto nehmen, JPEG oder PNG.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is empty. Take the photo again.</source>
        <extracomment>vision.photo_empty</extracomment>
        <translation>Die Datei des Fotos ist leer. Das Foto noch einmal aufnehmen.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is larger than %1 MB. Save it as an ordinary JPEG.</source>
        <extracomment>vision.photo_file_too_large</extracomment>
        <translation>Die Datei des Fotos ist größer als %1 MB. Als gewöhnliches JPEG speichern.</translation>
    </message>
    <message>
        <source>The file is a GIF. Use a single photo, JPEG or PNG.</source>
        <extracomment>vision.photo_moves</extracomment>
        <translation>Die Datei ist ein GIF. Ein einzelnes Foto nehmen, JPEG oder PNG.</translation>
    </message>
    <message>
        <source>The file is no JPEG and no PNG. Use one of those; a phone&apos;s camera can be set to JPEG (&quot;most compatible&quot;).</source>
        <extracomment>vision.photo_kind</extracomment>
        <translation>Die Datei ist weder JPEG noch PNG. Eines davon nehmen; die Kamera eines Telefons lässt sich auf JPEG stellen („maximale Kompatibilität“).</translation>
    </message>
    <message>
        <source>There is no choice to make for this %1 any more. Go back and look again.</source>
        <extracomment>record.no_choice</extracomment>
        <translation>Für diesen Eintrag („%1“) gibt es nichts mehr zu wählen. Zurückgehen und noch einmal nachsehen.</translation>
    </message>
    <message>
        <source>This valve was measured again later. Take the later entry out first.</source>
        <extracomment>clearance.kept_again</extracomment>
        <translation>Dieses Ventil wurde später noch einmal gemessen. Erst den späteren Eintrag herausnehmen.</translation>
    </message>
    <message>
        <source>This engine is no longer in the library. Go back to Engines.</source>
        <extracomment>engine.gone</extracomment>
        <translation>Dieser Motor ist nicht mehr im Bestand. Zurück zu „Motoren“ gehen.</translation>
    </message>
    <message>
        <source>Cylinder %1 has entries in a session of %2, so it can&apos;t go from the engine card. Leave it, or take those entries out first.</source>
        <extracomment>engine.cylinder_in_use</extracomment>
        <translation>Zylinder %1 hat Einträge in einer Sitzung vom %2 und kann deshalb nicht von der Motorkarte. Ihn lassen oder jene Einträge erst herausnehmen.</translation>
    </message>
    <message>
        <source>This exit was listened at again later. Take the later entry out first.</source>
        <extracomment>exit.kept_again</extracomment>
        <translation>An diesem Austritt wurde später noch einmal gehorcht. Erst den späteren Eintrag herausnehmen.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <extracomment>backup.stopped</extracomment>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <source>One of the chosen sessions is no longer in the library. Choose again.</source>
        <extracomment>session.gone</extracomment>
        <translation>Eine der gewählten Sitzungen ist nicht mehr im Bestand. Noch einmal wählen.</translation>
    </message>
    <message>
        <source>This %1 is no longer in the library. Go back and look again.</source>
        <extracomment>of several codes; record.gone</extracomment>
        <translation>Dieser Eintrag („%1“) ist nicht mehr im Bestand. Zurückgehen und noch einmal nachsehen.</translation>
    </message>
    <message>
        <source>%1 has no cylinder %2. Look at the cylinders on its engine card.</source>
        <extracomment>cylinder.unknown</extracomment>
        <translation>%1 hat keinen Zylinder %2. Die Zylinder auf der Motorkarte ansehen.</translation>
    </message>
    <message>
        <source>This line stands at the end of the plan already: nothing was moved.</source>
        <extracomment>plan.at_end</extracomment>
        <translation>Dieser Posten steht schon am Ende des Plans: Nichts wurde verschoben.</translation>
    </message>
    <message>
        <source>This reading was redone already. Redo the one that stands in its place.</source>
        <extracomment>reading.redone_already</extracomment>
        <translation>Dieser Messwert wurde schon neu gemessen. Den neu messen, der an seiner Stelle steht.</translation>
    </message>
    <message>
        <source>A later reading stands in for this one. Take that one out first.</source>
        <extracomment>reading.redone_already</extracomment>
        <translation>Ein späterer Messwert ersetzt diesen. Erst jenen herausnehmen.</translation>
    </message>
    <message>
        <source>&quot;My call&quot; stands as it was committed. Write a note or another cause beside it.</source>
        <extracomment>note.call_stands</extracomment>
        <translation>„Meine Einschätzung“ gilt, wie sie abgegeben wurde. Eine Notiz oder eine andere Ursache daneben schreiben.</translation>
    </message>
    <message>
        <source>The file of this %1 is missing, so it was not added. Take it again.</source>
        <extracomment>attachment.no_file</extracomment>
        <translation>Die Datei dazu fehlt („%1“), deshalb wurde nichts angefügt. Noch einmal aufnehmen.</translation>
    </message>
    <message>
        <source>%1 stays: sessions or readings were taken with it (%2 of them), and their figures need it.</source>
        <extracomment>tester.in_use</extracomment>
        <translation>%1 bleibt: Damit wurden Sitzungen oder Messwerte aufgenommen (%2), und deren Zahlen brauchen es.</translation>
    </message>
    <message>
        <source>The library did not answer within 20 seconds.</source>
        <extracomment>tour.slow</extracomment>
        <translation>Der Bestand antwortete nicht innerhalb von 20 Sekunden.</translation>
    </message>
    <message>
        <source>The demo %1 is not in this program or can&apos;t be written to %2.</source>
        <extracomment>tour.demo</extracomment>
        <translation>Das Beispiel %1 ist nicht in diesem Programm oder lässt sich nicht nach %2 schreiben.</translation>
    </message>
    <message>
        <source>A report can be drawn only while Qt&apos;s graphics are running.</source>
        <extracomment>print.no_window_system</extracomment>
        <translation>Ein Bericht lässt sich nur zeichnen, solange die Grafik von Qt läuft.</translation>
    </message>
    <message>
        <source>The report&apos;s typeface, B612, is missing from this program. Install it again.</source>
        <extracomment>print.font</extracomment>
        <translation>Die Schrift des Berichts, B612, fehlt in diesem Programm. Neu installieren.</translation>
    </message>
    <message>
        <source>The report can&apos;t be written: %1. Choose another place or make room.</source>
        <extracomment>print.write_device</extracomment>
        <translation>Der Bericht lässt sich nicht schreiben: %1. Einen anderen Ort wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>The demo can&apos;t be written to %1: free some space and try again.</source>
        <extracomment>demo.no_room</extracomment>
        <translation>Das Beispiel lässt sich nicht nach %1 schreiben: etwas Platz freimachen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Lapwing may not use the camera. Allow it in the system&apos;s settings; photos can be chosen from files all the same.</source>
        <extracomment>camera.denied</extracomment>
        <translation>Lapwing darf die Kamera nicht benutzen. In den Systemeinstellungen erlauben; Fotos lassen sich trotzdem aus Dateien wählen.</translation>
    </message>
    <message>
        <source>Lapwing may not use the microphone. Allow it in the system&apos;s settings; everything else works without.</source>
        <extracomment>microphone.denied</extracomment>
        <translation>Lapwing darf das Mikrofon nicht benutzen. In den Systemeinstellungen erlauben; alles andere geht auch ohne.</translation>
    </message>
    <message>
        <source>%1 %2 is a very wide clearance: is the point right? Keep it once more if it is.</source>
        <extracomment>form.clearance_wide</extracomment>
        <translation>%1 %2 ist ein sehr großes Spiel: stimmt das Komma? Noch einmal behalten, wenn ja.</translation>
    </message>
    <message>
        <source>%1 cylinders are not possible here: type a number from 1 to 16.</source>
        <extracomment>form.cylinder_count</extracomment>
        <translation>%1 Zylinder sind hier nicht möglich: eine Zahl von 1 bis 16 eingeben.</translation>
    </message>
    <message>
        <source>The intervals belong to the firing order: type the order first.</source>
        <extracomment>form.order_first</extracomment>
        <translation>Die Abstände gehören zur Zündfolge: erst die Zündfolge eingeben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number of degrees: type &quot;even&quot;, or degrees with a dash between them, such as 270-450.</source>
        <extracomment>form.intervals</extracomment>
        <translation>„%1“ ist keine Gradangabe: „gleichmäßig“ eingeben oder Grad mit Strich dazwischen, etwa 270-450.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; begins with a minus: a clearance is 0 or more. Type it without.</source>
        <extracomment>form.clearance_negative</extracomment>
        <translation>„%1“ beginnt mit einem Minus: ein Spiel ist 0 oder mehr. Ohne Minus eingeben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no range: type two figures with a dash between them, such as 0.15-0.20, or one.</source>
        <extracomment>form.clearance_range</extracomment>
        <translation>„%1“ ist kein Bereich: zwei Zahlen mit Strich dazwischen eingeben, etwa 0,15-0,20, oder eine.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is still empty: type a number there.</source>
        <extracomment>form.empty</extracomment>
        <translation>„%1“ ist noch leer: eine Zahl eintippen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole number: type digits only for &quot;%2&quot;.</source>
        <extracomment>form.not_whole</extracomment>
        <translation>„%1“ ist keine ganze Zahl: für „%2“ nur Ziffern eingeben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number: type numbers with a dash between them, such as 1-3-4-2.</source>
        <extracomment>form.not_numbers</extracomment>
        <translation>„%1“ ist keine Zahl: Zahlen mit Strich dazwischen eingeben, etwa 1-3-4-2.</translation>
    </message>
    <message>
        <source>Nothing is chosen for &quot;%1&quot;: choose one.</source>
        <extracomment>form.choose_one</extracomment>
        <translation>Für „%1“ ist nichts gewählt: eines wählen.</translation>
    </message>
    <message>
        <source>Nothing is typed there yet: type a number.</source>
        <extracomment>form.nothing</extracomment>
        <translation>Dort steht noch nichts: eine Zahl eintippen.</translation>
    </message>
    <message>
        <source>This line is not there any more: go back and open the card again.</source>
        <extracomment>form.gone</extracomment>
        <translation>Diese Zeile ist nicht mehr da: zurückgehen und die Karte noch einmal öffnen.</translation>
    </message>
    <message>
        <source>No visit is chosen. Choose at least one.</source>
        <extracomment>hand_over.nothing</extracomment>
        <translation>Kein Termin ist gewählt. Mindestens einen wählen.</translation>
    </message>
    <message>
        <source>The folder %1 can&apos;t be made: %2. Save a copy somewhere else.</source>
        <extracomment>hand_over.folder</extracomment>
        <translation>Der Ordner %1 lässt sich nicht anlegen: %2. Eine Kopie anderswo ablegen.</translation>
    </message>
    <message>
        <source>That was too short. Hold the button while you speak.</source>
        <extracomment>voice.too_short</extracomment>
        <translation>Das war zu kurz. Die Taste beim Sprechen gedrückt halten.</translation>
    </message>
    <message>
        <source>The camera&apos;s picture could not be kept. Take it again.</source>
        <extracomment>photo.not_written</extracomment>
        <translation>Das Bild der Kamera ließ sich nicht behalten. Noch einmal aufnehmen.</translation>
    </message>
    <message>
        <source>%1 is a folder, a pipe or a device. Choose a photo.</source>
        <extracomment>photo.no_file</extracomment>
        <translation>%1 ist ein Ordner, eine Pipe oder ein Gerät. Ein Foto wählen.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2. Choose another photo.</source>
        <extracomment>photo.unreadable</extracomment>
        <translation>%1 ist nicht lesbar: %2. Ein anderes Foto wählen.</translation>
    </message>
    <message>
        <source>%1 is larger than a photo can be here (%2 MB). Make it smaller first.</source>
        <extracomment>photo.too_large</extracomment>
        <translation>%1 ist größer, als ein Foto hier sein kann (%2 MB). Erst verkleinern.</translation>
    </message>
    <message>
        <source>The firing order is not on the engine card. Type it there, and the angles appear here.</source>
        <extracomment>firing.order</extracomment>
        <translation>Die Zündfolge steht nicht auf der Motorkarte. Dort eingeben, dann erscheinen die Winkel hier.</translation>
    </message>
    <message>
        <source>The firing intervals are not on the engine card. Type them there, and the angles appear here.</source>
        <extracomment>firing.intervals</extracomment>
        <translation>Die Zündabstände stehen nicht auf der Motorkarte. Dort eingeben, dann erscheinen die Winkel hier.</translation>
    </message>
    <message>
        <source>This session is no longer in the library. Go back and choose again.</source>
        <extracomment>session.gone</extracomment>
        <translation>Diese Sitzung ist nicht mehr im Bestand. Zurückgehen und noch einmal wählen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a price: type digits with at most one decimal mark and the currency, such as 420 EUR.</source>
        <extracomment>plan.price</extracomment>
        <translation>„%1“ ist kein Preis: Ziffern mit höchstens einem Dezimalzeichen und die Währung eingeben, etwa 420 EUR.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no currency: type it too, such as 420 EUR.</source>
        <extracomment>plan.currency</extracomment>
        <translation>„%1“ nennt keine Währung: auch sie eingeben, etwa 420 EUR.</translation>
    </message>
    <message>
        <source>The sound of this voice note is missing from the library. Settings, Storage says what can be done.</source>
        <extracomment>attachment.file_gone</extracomment>
        <translation>Der Ton dieser Sprachnotiz fehlt im Bestand. Unter „Einstellungen“, „Speicher“ steht, was sich tun lässt.</translation>
    </message>
    <message>
        <source>A restrictor of %1 is no tester&apos;s: they have about 0.5 to 3 mm (0.040 in are 1.02 mm). Look at the unit.</source>
        <extracomment>tester.restrictor_unlikely</extracomment>
        <translation>Eine Drosselbohrung von %1 hat kein Prüfgerät: üblich sind etwa 0,5 bis 3 mm (0,040 in sind 1,02 mm). Auf die Einheit sehen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no self-check: choose one of the list.</source>
        <extracomment>form.unknown_check</extracomment>
        <translation>„%1“ ist keine Selbstprüfung: eine aus der Liste wählen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; reads as %2, with a decimal mark: for thousands type the figures without one. Keep it once more if it is meant.</source>
        <extracomment>form.thousands</extracomment>
        <translation>„%1“ liest sich als %2, mit Komma: Tausender ohne Punkt oder Komma eingeben. Noch einmal behalten, wenn es so gemeint ist.</translation>
    </message>
    <message>
        <source>This installation lacks a part of Lapwing: %1. Install Lapwing anew; everything else works.</source>
        <extracomment>part.missing</extracomment>
        <translation>Dieser Installation fehlt ein Teil von Lapwing: %1. Lapwing neu installieren; alles andere geht.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2</source>
        <extracomment>picker.copy_read</extracomment>
        <translation>%1 ist nicht lesbar: %2</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: %2. Choose another folder or make room.</source>
        <extracomment>picker.copy_write</extracomment>
        <translation>%1 ist nicht beschreibbar: %2. Einen anderen Ordner wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>No file manager could be opened here. The file lies at %1.</source>
        <extracomment>share.no_file_manager</extracomment>
        <translation>Hier ließ sich keine Dateiverwaltung öffnen. Die Datei liegt unter %1.</translation>
    </message>
    <message>
        <source>There is no file at %1. Make it again.</source>
        <extracomment>share.no_file</extracomment>
        <translation>Unter %1 liegt keine Datei. Noch einmal anlegen.</translation>
    </message>
    <message>
        <source>The desktop&apos;s file dialog did not open: %1</source>
        <extracomment>picker.portal</extracomment>
        <translation>Der Dateidialog des Desktops öffnete sich nicht: %1</translation>
    </message>
    <message>
        <source>The desktop&apos;s file dialog closed without naming a file on this computer. Choose one from a folder of this computer.</source>
        <extracomment>picker.no_file</extracomment>
        <translation>Der Dateidialog des Desktops schloss sich, ohne eine Datei auf diesem Rechner zu nennen. Eine aus einem Ordner dieses Rechners wählen.</translation>
    </message>
    <message>
        <source>%1 is not on this computer. Copy it here first.</source>
        <extracomment>picker.not_local</extracomment>
        <translation>%1 ist nicht auf diesem Rechner. Erst hierher kopieren.</translation>
    </message>
    <message>
        <source>No file dialog could be opened: %1</source>
        <extracomment>picker.no_dialog</extracomment>
        <translation>Es ließ sich kein Dateidialog öffnen: %1</translation>
    </message>
    <message>
        <source>No file dialog could be opened. Is Qt&apos;s folder list module (Qt.labs.folderlistmodel) installed?</source>
        <extracomment>picker.no_dialog</extracomment>
        <translation>Es ließ sich kein Dateidialog öffnen. Ist das Ordnerlisten-Modul von Qt (Qt.labs.folderlistmodel) installiert?</translation>
    </message>
    <message>
        <source>%1 could not be made smaller: %2. It stays as it is.</source>
        <extracomment>speech.not_packed</extracomment>
        <translation>%1 ließ sich nicht verkleinern: %2. Es bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>The camera does not answer. Close other programs that use it, or choose a photo from a file.</source>
        <extracomment>camera.silent</extracomment>
        <translation>Die Kamera antwortet nicht. Andere Programme schließen, die sie benutzen, oder ein Foto aus einer Datei wählen.</translation>
    </message>
    <message>
        <source>No camera was found. Connect one, or allow Lapwing to use it in the system&apos;s settings; photos can be chosen from files all the same.</source>
        <extracomment>camera.none</extracomment>
        <translation>Keine Kamera gefunden. Eine anschließen oder sie Lapwing in den Systemeinstellungen erlauben; Fotos lassen sich trotzdem aus Dateien wählen.</translation>
    </message>
    <message>
        <source>The camera took no picture (%1). Try again.</source>
        <extracomment>camera.failed</extracomment>
        <translation>Die Kamera nahm kein Bild auf (%1). Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The camera stopped (%1). Go back and open it again.</source>
        <extracomment>camera.lost</extracomment>
        <translation>Die Kamera brach ab (%1). Zurückgehen und sie neu öffnen.</translation>
    </message>
    <message>
        <source>No microphone was found. Connect one, or allow Lapwing to use it in the system&apos;s settings.</source>
        <extracomment>microphone.none</extracomment>
        <translation>Kein Mikrofon gefunden. Eines anschließen oder es Lapwing in den Systemeinstellungen erlauben.</translation>
    </message>
    <message>
        <source>The microphone %1 can&apos;t be opened. Close other programs that record, then try again.</source>
        <extracomment>microphone.busy</extracomment>
        <translation>Das Mikrofon %1 lässt sich nicht öffnen. Andere Programme schließen, die aufnehmen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The microphone stopped. What was recorded until then is kept.</source>
        <extracomment>microphone.lost</extracomment>
        <translation>Das Mikrofon brach ab. Was bis dahin aufgenommen wurde, ist behalten.</translation>
    </message>
    <message>
        <source>No speaker or headphones were found. Connect some, then play it again.</source>
        <extracomment>player.no_speaker</extracomment>
        <translation>Kein Lautsprecher oder Kopfhörer gefunden. Einen anschließen, dann noch einmal abspielen.</translation>
    </message>
    <message>
        <source>This voice note can&apos;t be played here (%1). It is kept; hand the session over and play it elsewhere.</source>
        <extracomment>player.failed</extracomment>
        <translation>Diese Sprachnotiz lässt sich hier nicht abspielen (%1). Sie bleibt erhalten; die Sitzung übergeben und anderswo abspielen.</translation>
    </message>
    <message>
        <source>A compression ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Verdichtung</translation>
    </message>
    <message>
        <source>Intake (or port) closing after bottom dead centre</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Einlassschluss (oder Schlitzschluss) nach dem unteren Totpunkt</translation>
    </message>
    <message>
        <source>Exhaust opening before bottom dead centre</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Auslassöffnen vor dem unteren Totpunkt</translation>
    </message>
    <message>
        <source>A cranking speed</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>An air pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Luftdruck</translation>
    </message>
    <message>
        <source>An air temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Lufttemperatur</translation>
    </message>
    <message>
        <source>A wall temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Wandtemperatur</translation>
    </message>
    <message>
        <source>A filling</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Füllung</translation>
    </message>
    <message>
        <source>A heat transfer coefficient</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Wärmeübergangskoeffizient</translation>
    </message>
    <message>
        <source>A leak area</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Leckfläche</translation>
    </message>
    <message>
        <source>A fitting volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Anschlussvolumen</translation>
    </message>
    <message>
        <source>A hose volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Schlauchvolumen</translation>
    </message>
    <message>
        <source>A volume of the gauge alone</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Volumen des Manometers allein</translation>
    </message>
    <message>
        <source>A check valve area</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Fläche des Rückschlagventils</translation>
    </message>
    <message>
        <source>A cracking pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Öffnungsdruck</translation>
    </message>
    <message>
        <source>An oil volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ein Ölvolumen</translation>
    </message>
    <message>
        <source>A number of strokes</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Eine Anzahl von Hüben</translation>
    </message>
    <message>
        <source>pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Druck</translation>
    </message>
    <message>
        <source>length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>area</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>angle</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>rotational speed</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>time</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>voltage</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>torque</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>flow</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>distance or hours run</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Laufstrecke oder Betriebsstunden</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>A voice note was cut off when Lapwing ended. What was said until then is kept: %1 s.</source>
        <translation>Eine Sprachnotiz brach ab, als Lapwing endete. Was bis dahin gesprochen wurde, ist behalten: %1 s.</translation>
    </message>
    <message>
        <source>Some photos or voice notes have lost their files. Settings, Storage lists them and says what can be done.</source>
        <translation>Einige Fotos oder Sprachnotizen haben ihre Dateien verloren. „Einstellungen“, „Speicher“ führt sie auf und sagt, was sich tun lässt.</translation>
    </message>
    <message>
        <source>Some photos or voice notes belong to no entry any more, perhaps of ones deleted long ago. Settings, Storage lists them: keep a copy or let them go.</source>
        <translation>Einige Fotos oder Sprachnotizen gehören zu keinem Eintrag mehr, vielleicht zu längst gelöschten. „Einstellungen“, „Speicher“ führt sie auf: eine Kopie behalten oder löschen.</translation>
    </message>
</context>
<context>
    <name>EvidenceButtons</name>
    <message>
        <source>Photo (%1)</source>
        <translation>Foto (%1)</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Voice note (%1)</source>
        <translation>Sprachnotiz (%1)</translation>
    </message>
    <message>
        <source>Voice note</source>
        <translation>Sprachnotiz</translation>
    </message>
</context>
<context>
    <name>EvidencePage</name>
    <message>
        <source>Photos and voice notes</source>
        <translation>Fotos und Sprachnotizen</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <source>A photo of the gauge, a plug or a valve, or a few words while it is fresh. What is taken at a cylinder&apos;s exit or reading stands here too.</source>
        <translation>Ein Foto von Manometer, Kerze oder Ventil oder ein paar Worte, solange es frisch ist. Was bei Austritt oder Messwert eines Zylinders aufgenommen wird, steht auch hier.</translation>
    </message>
    <message>
        <source>Photo of the dial: %1</source>
        <translation>Foto des Zifferblatts: %1</translation>
    </message>
    <message>
        <source>Voice note</source>
        <translation>Sprachnotiz</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
</context>
<context>
    <name>ExitPanel</name>
    <message>
        <source>by %1</source>
        <translation>mit %1</translation>
    </message>
</context>
<context>
    <name>FieldTabs</name>
    <message>
        <source>%1: one less</source>
        <translation>%1: eins weniger</translation>
    </message>
    <message>
        <source>%1: one more</source>
        <translation>%1: eins mehr</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>cylinders %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>owner_answer:yes</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>owner_answer:no</extracomment>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>another record</source>
        <translation>ein anderer Eintrag</translation>
    </message>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, Zylinder %2</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Clearance, %1</source>
        <translation>Ventilspiel, %1</translation>
    </message>
    <message>
        <source>%1 lost of %2</source>
        <translation>%1 Verlust von %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>held %1 of %2</source>
        <translation>%1 von %2 gehalten</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation>vorgefunden %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>eingestellt %1</translation>
    </message>
    <message>
        <source>Air pressure %1 before, %2 after: the earlier readings are converted to the later air.</source>
        <extracomment>compare.air_pressure</extracomment>
        <translation>Luftdruck vorher %1, nachher %2: Die früheren Messwerte sind auf die spätere Luft umgerechnet.</translation>
    </message>
    <message>
        <source>Gauge &quot;%1&quot; before, &quot;%2&quot; after: the earlier readings are converted by %3 for hose and check valve. The errors of two gauges don&apos;t cancel.</source>
        <extracomment>compare.gauge</extracomment>
        <translation>Kompressionsprüfer vorher „%1“, nachher „%2“: Die früheren Messwerte sind für Schlauch und Rückschlagventil um %3 umgerechnet. Die Fehler zweier Manometer heben sich nicht auf.</translation>
    </message>
    <message>
        <source>Another adapter: the earlier readings are converted by %1 for its volume.</source>
        <extracomment>compare.adapter</extracomment>
        <translation>Ein anderer Adapter: Die früheren Messwerte sind für sein Volumen um %1 umgerechnet.</translation>
    </message>
    <message>
        <source>Engine %1 before, %2 after: the earlier readings are converted by %3, as the model expects.</source>
        <extracomment>compare.heat</extracomment>
        <translation>Motor vorher %1, nachher %2: Die früheren Messwerte sind um %3 umgerechnet, wie das Modell es erwartet.</translation>
    </message>
    <message>
        <source>Cranked at %1 rpm before, %2 rpm after: the earlier readings are converted by %3, as the model expects.</source>
        <extracomment>compare.speed</extracomment>
        <translation>Vorher mit %1 U/min durchgedreht, nachher mit %2 U/min: Die früheren Messwerte sind um %3 umgerechnet, wie das Modell es erwartet.</translation>
    </message>
    <message>
        <source>%1 pulls before, %2 after: the earlier readings are converted by %3, as the model expects.</source>
        <extracomment>compare.pulls</extracomment>
        <translation>Vorher %1 Hübe, nachher %2: Die früheren Messwerte sind um %3 umgerechnet, wie das Modell es erwartet.</translation>
    </message>
    <message>
        <source>Leak-down tester &quot;%1&quot; before, &quot;%2&quot; after: the earlier leak is shown as the later tester would show it. The errors of two testers don&apos;t cancel.</source>
        <extracomment>compare.tester</extracomment>
        <translation>Druckverlustprüfer vorher „%1“, nachher „%2“: Das frühere Leck ist so gezeigt, wie es das spätere Prüfgerät zeigen würde. Die Fehler zweier Prüfgeräte heben sich nicht auf.</translation>
    </message>
    <message>
        <source>Set to %1 before, %2 after: the earlier leak is shown as it would be at the later set pressure.</source>
        <extracomment>compare.set_pressure</extracomment>
        <translation>Vorher auf %1 eingestellt, nachher auf %2: Das frühere Leck ist so gezeigt, wie es beim späteren eingestellten Druck wäre.</translation>
    </message>
    <message>
        <source>Held for %1 before, for %2 after: the earlier crankcase reading is shown as it would be after the later time.</source>
        <extracomment>compare.hold</extracomment>
        <translation>Haltezeit vorher %1, nachher %2: Der frühere Messwert des Kurbelgehäuses ist so gezeigt, wie er nach der späteren Zeit wäre.</translation>
    </message>
    <message>
        <source>Crankcase tester &quot;%1&quot; before, &quot;%2&quot; after: the errors of two gauges don&apos;t cancel.</source>
        <extracomment>compare.crankcase_tester</extracomment>
        <translation>Kurbelgehäuseprüfer vorher „%1“, nachher „%2“: Die Fehler zweier Manometer heben sich nicht auf.</translation>
    </message>
    <message>
        <source>How long the crankcase was held isn&apos;t noted for both tests: taken as the same.</source>
        <extracomment>compare.hold_unknown</extracomment>
        <translation>Wie lange das Kurbelgehäuse gehalten wurde, ist nicht für beide Prüfungen notiert: gilt als gleich.</translation>
    </message>
    <message>
        <source>A crankcase was empty before the end of the hold, so how fast it leaked isn&apos;t known: not comparable. Read again after a shorter time.</source>
        <extracomment>compare.emptied</extracomment>
        <translation>Ein Kurbelgehäuse war vor dem Ende der Haltezeit leer; wie schnell es verlor, ist daher nicht bekannt: nicht vergleichbar. Nach kürzerer Zeit noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Gauge &quot;%1&quot; before, &quot;%2&quot; after: what their hoses do to a reading isn&apos;t known. Not converted; %3 more doubt is allowed for it.</source>
        <extracomment>compare.gauge_as_it_is</extracomment>
        <translation>Kompressionsprüfer vorher „%1“, nachher „%2“: Was deren Schläuche an einem Messwert ausmachen, ist nicht bekannt. Nicht umgerechnet; dafür sind %3 mehr Unsicherheit angesetzt.</translation>
    </message>
    <message>
        <source>The induction was taken off at one of the two visits. Not converted; %1 more doubt is allowed for it.</source>
        <extracomment>compare.induction</extracomment>
        <translation>Die Ansaugung war an einem der beiden Termine abgebaut. Nicht umgerechnet; dafür ist %1 mehr Unsicherheit angesetzt.</translation>
    </message>
    <message>
        <source>The battery was flat at one of the two visits and the cranking speed isn&apos;t noted. Not converted; %1 more doubt is allowed for it.</source>
        <extracomment>compare.battery</extracomment>
        <translation>Die Batterie war an einem der beiden Termine leer, und die Anlasserdrehzahl ist nicht notiert. Nicht umgerechnet; dafür ist %1 mehr Unsicherheit angesetzt.</translation>
    </message>
    <message>
        <source>Engine warm at one visit, cold at the other: gaps and oil change with it. Not converted; %1 of the leakage is allowed as doubt.</source>
        <extracomment>compare.heat_leak</extracomment>
        <translation>Motor an einem Termin warm, am anderen kalt: Spalte und Öl ändern sich damit. Nicht umgerechnet; %1 vom Druckverlust ist als Unsicherheit angesetzt.</translation>
    </message>
    <message>
        <source>The restrictor of &quot;%1&quot; isn&apos;t on its card: the conversion is doubtful by it.</source>
        <extracomment>compare.restrictor_unknown</extracomment>
        <translation>Die Drosselbohrung von „%1“ steht nicht auf der Karte: Die Umrechnung ist dadurch unsicher.</translation>
    </message>
    <message>
        <source>The shop&apos;s altitude isn&apos;t noted for both visits: the air pressure is taken as the same.</source>
        <extracomment>compare.altitude_unknown</extracomment>
        <translation>Die Höhe der Werkstatt ist nicht für beide Termine notiert: Der Luftdruck gilt als gleich.</translation>
    </message>
    <message>
        <source>Warm or cold isn&apos;t noted for both visits: taken as alike.</source>
        <extracomment>compare.heat_unknown</extracomment>
        <translation>Warm oder kalt ist nicht für beide Termine notiert: gilt als gleich.</translation>
    </message>
    <message>
        <source>Whether the throttle was held open isn&apos;t noted for both visits: taken as alike.</source>
        <extracomment>compare.throttle_unknown</extracomment>
        <translation>Ob die Drosselklappe offen gehalten wurde, ist nicht für beide Termine notiert: gilt als gleich.</translation>
    </message>
    <message>
        <source>The cranking speed isn&apos;t noted for both visits: taken as alike.</source>
        <extracomment>compare.speed_unknown</extracomment>
        <translation>Die Anlasserdrehzahl ist nicht für beide Termine notiert: gilt als gleich.</translation>
    </message>
    <message>
        <source>Which tester was used for the %1 isn&apos;t noted for both visits: an error of the gauge does not cancel out.</source>
        <extracomment>compare.tester_unknown</extracomment>
        <translation>Welches Prüfgerät benutzt wurde (%1), ist nicht für beide Termine notiert: Ein Fehler des Messgeräts hebt sich nicht auf.</translation>
    </message>
    <message>
        <source>Whether oil from the assembly was still on the rings isn&apos;t noted: if it was, the reading after the repair flatters. Test again after running in.</source>
        <extracomment>compare.oil_unknown</extracomment>
        <translation>Ob noch Öl vom Zusammenbau an den Kolbenringen war, ist nicht notiert: Wenn ja, schmeichelt der Messwert nach der Reparatur. Nach dem Einfahren erneut prüfen.</translation>
    </message>
    <message>
        <source>How much oil went in isn&apos;t noted for both wet tests: taken as the same.</source>
        <extracomment>compare.oil_amount_unknown</extracomment>
        <translation>Wie viel Öl eingefüllt wurde, ist nicht für beide Nassprüfungen notiert: gilt als gleich.</translation>
    </message>
    <message>
        <source>Oil was on the rings at the earlier of the two visits, and none is noted at the later one: not comparable.</source>
        <extracomment>compare.oil_earlier</extracomment>
        <translation>Beim früheren der beiden Termine war Öl an den Ringen, beim späteren ist keins notiert: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Oil was on the rings at the later of the two visits, and none is noted at the earlier one: not comparable. Oil of a wet test or of the assembly lifts a reading; let the engine run, then test again.</source>
        <extracomment>compare.oil_later</extracomment>
        <translation>Beim späteren der beiden Termine war Öl an den Ringen, beim früheren ist keins notiert: nicht vergleichbar. Öl einer Nassprüfung oder vom Zusammenbau hebt den Messwert; Motor laufen lassen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Wet tests with %1 and with %2 of oil: not comparable.</source>
        <extracomment>compare.oil_amount</extracomment>
        <translation>Nassprüfungen mit %1 und mit %2 Öl: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Engine %1 before, %2 after, and the engine card lacks what a conversion needs: not comparable. Test again cold against cold or warm against warm.</source>
        <extracomment>compare.heat_no_model</extracomment>
        <translation>Motor vorher %1, nachher %2, und der Motorkarte fehlt, was eine Umrechnung braucht: nicht vergleichbar. Kalt gegen kalt oder warm gegen warm erneut prüfen.</translation>
    </message>
    <message>
        <source>The throttle was closed at one of the two visits: not comparable.</source>
        <extracomment>compare.throttle</extracomment>
        <translation>Die Drosselklappe war an einem der beiden Termine geschlossen: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Cranked by %1 before, by %2 after, and the cranking speed isn&apos;t noted for both: not comparable.</source>
        <extracomment>compare.cranked_by</extracomment>
        <translation>Durchgedreht vorher mit „%1“, nachher mit „%2“, und die Anlasserdrehzahl ist nicht für beides notiert: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>The decompressor was at work at one of the two visits: not comparable.</source>
        <extracomment>compare.decompressor</extracomment>
        <translation>Der Dekompressor war an einem der beiden Termine wirksam: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Perhaps the wrong TDC at one of the two visits: not comparable. Turn the crank one full turn and test again.</source>
        <extracomment>compare.tdc</extracomment>
        <translation>Vielleicht der falsche OT an einem der beiden Termine: nicht vergleichbar. Die Kurbelwelle eine volle Umdrehung weiterdrehen und erneut prüfen.</translation>
    </message>
    <message>
        <source>Nothing stands in the way: testers, shop and circumstances were alike.</source>
        <extracomment>compare.alike</extracomment>
        <translation>Nichts steht im Weg: Prüfgeräte, Werkstatt und Umstände waren gleich.</translation>
    </message>
    <message>
        <source>One and the same gauge: its zero error cancels in the difference, its gain nearly.</source>
        <extracomment>compare.note_cancels</extracomment>
        <translation>Ein und dasselbe Manometer: Sein Nullpunktfehler hebt sich in der Differenz auf, sein Steigungsfehler nahezu.</translation>
    </message>
    <message>
        <source>Two gauges: an error of one does not cancel out against the other&apos;s.</source>
        <extracomment>compare.note_nothing_cancels</extracomment>
        <translation>Zwei Manometer: Der Fehler des einen hebt sich nicht gegen den des anderen auf.</translation>
    </message>
    <message>
        <source>From one day to the next readings scatter by %1 beside the gauge.</source>
        <extracomment>compare.note_day</extracomment>
        <translation>Von einem Tag zum anderen streuen Messwerte um %1, zusätzlich zum Manometer.</translation>
    </message>
    <message>
        <source>Cylinder %1: the leak at %2 is coming back.</source>
        <extracomment>history.coming_back</extracomment>
        <translation>Zylinder %1: Das Leck kommt wieder (%2).</translation>
    </message>
    <message>
        <source>Cylinder %1: a leak at %2 has come up since the repair.</source>
        <extracomment>history.new_leak</extracomment>
        <translation>Zylinder %1: Seit der Reparatur ist ein Leck dazugekommen (%2).</translation>
    </message>
    <message>
        <source>Cylinder %1 has lost beyond doubt since the repair, and nothing says yet where. Listen at its exits.</source>
        <extracomment>history.worse_since_repair</extracomment>
        <translation>Zylinder %1 hat seit der Reparatur zweifelsfrei verloren, und noch sagt nichts, wo. An seinen Austritten horchen.</translation>
    </message>
    <message>
        <source>Leakage %1 after the repair, %2 now: worse beyond doubt.</source>
        <extracomment>history.leakage_worse</extracomment>
        <translation>Druckverlust nach der Reparatur %1, jetzt %2: zweifelsfrei schlechter.</translation>
    </message>
    <message>
        <source>Dry reading %1 after the repair, %2 now: worse beyond doubt.</source>
        <extracomment>history.reading_worse</extracomment>
        <translation>Trockener Messwert nach der Reparatur %1, jetzt %2: zweifelsfrei schlechter.</translation>
    </message>
    <message>
        <source>Leakage %1 after the repair, %2 now: more.</source>
        <extracomment>history.leakage_fits</extracomment>
        <translation>Druckverlust nach der Reparatur %1, jetzt %2: mehr.</translation>
    </message>
    <message>
        <source>Dry reading %1 after the repair, %2 now: lower.</source>
        <extracomment>history.reading_fits</extracomment>
        <translation>Trockener Messwert nach der Reparatur %1, jetzt %2: niedriger.</translation>
    </message>
    <message>
        <source>Dry test and leak-down together: worse beyond doubt.</source>
        <extracomment>history.together</extracomment>
        <translation>Trockenprüfung und Druckverlustprüfung zusammen: zweifelsfrei schlechter.</translation>
    </message>
    <message>
        <source>Air at %1: %2 after the repair, %3 now.</source>
        <extracomment>history.louder</extracomment>
        <translation>Luft (%1): nach der Reparatur %2, jetzt %3.</translation>
    </message>
    <message>
        <source>Air at %1: %2 now.</source>
        <extracomment>history.heard_now</extracomment>
        <translation>Luft (%1): jetzt %2.</translation>
    </message>
    <message>
        <source>Oil lifts the reading by %1, more than its volume explains.</source>
        <extracomment>history.oil_lifts</extracomment>
        <translation>Öl hebt den Messwert um %1, mehr als sein Volumen erklärt.</translation>
    </message>
    <message>
        <source>Before the repair the signs pointed at %1 too.</source>
        <extracomment>history.same_as_before</extracomment>
        <translation>Vor der Reparatur wiesen die Zeichen ebenfalls darauf: %1.</translation>
    </message>
    <message>
        <source>%1 readings since the repair go down beyond doubt.</source>
        <extracomment>history.trend_agrees</extracomment>
        <translation>%1 Messwerte seit der Reparatur fallen zweifelsfrei ab.</translation>
    </message>
    <message>
        <source>%1 readings: too few to tell a trend.</source>
        <extracomment>history.trend_undecided</extracomment>
        <translation>%1 Messwerte: zu wenige für einen Trend.</translation>
    </message>
    <message>
        <source>%1 readings, no trend beyond their doubt.</source>
        <extracomment>history.trend_steady</extracomment>
        <translation>%1 Messwerte, kein Trend über ihre Unsicherheit hinaus.</translation>
    </message>
    <message>
        <source>Rising by %1 a year over %2 readings.</source>
        <extracomment>history.trend_better_pressure</extracomment>
        <translation>Steigt um %1 im Jahr über %2 Messwerte.</translation>
    </message>
    <message>
        <source>Falling by %1 a year over %2 readings.</source>
        <extracomment>history.trend_worse_pressure</extracomment>
        <translation>Fällt um %1 im Jahr über %2 Messwerte.</translation>
    </message>
    <message>
        <source>Leakage changes by %1 a year over %2 readings: better.</source>
        <extracomment>history.trend_better_leakage</extracomment>
        <translation>Druckverlust ändert sich um %1 im Jahr über %2 Messwerte: besser.</translation>
    </message>
    <message>
        <source>Leakage changes by %1 a year over %2 readings: worse.</source>
        <extracomment>history.trend_worse_leakage</extracomment>
        <translation>Druckverlust ändert sich um %1 im Jahr über %2 Messwerte: schlechter.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work; %3 to %4 was predicted: it held.</source>
        <extracomment>proof.held</extracomment>
        <translation>Zylinder %1 zeigt nach der Arbeit %2; vorhergesagt war %3 bis %4: Das traf zu.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work, less than the %3 to %4 predicted.</source>
        <extracomment>proof.below</extracomment>
        <translation>Zylinder %1 zeigt nach der Arbeit %2, weniger als die vorhergesagten %3 bis %4.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work, more than the %3 to %4 predicted.</source>
        <extracomment>proof.above</extracomment>
        <translation>Zylinder %1 zeigt nach der Arbeit %2, mehr als die vorhergesagten %3 bis %4.</translation>
    </message>
    <message>
        <source>Cylinder %1: %2 to %3 was predicted. Test it again to see whether it holds.</source>
        <extracomment>proof.not_measured</extracomment>
        <translation>Zylinder %1: Vorhergesagt war %2 bis %3. Erneut prüfen, um zu sehen, ob es zutrifft.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work, but not under circumstances that %3 to %4 was predicted for.</source>
        <extracomment>proof.not_comparable</extracomment>
        <translation>Zylinder %1 zeigt nach der Arbeit %2, aber nicht unter den Umständen, für die %3 bis %4 vorhergesagt war.</translation>
    </message>
    <message>
        <source>Cylinder %1: %2 to %3 was predicted for this work alone, but more was done before the next test.</source>
        <extracomment>proof.several</extracomment>
        <translation>Zylinder %1: %2 bis %3 war für diese Arbeit allein vorhergesagt, aber vor der nächsten Prüfung wurde mehr getan.</translation>
    </message>
    <message>
        <source>%1 was read; here it is converted to the tester and the conditions of the visit that predicted it.</source>
        <extracomment>proof.converted</extracomment>
        <translation>Abgelesen wurden %1; hier umgerechnet auf Prüfgerät und Bedingungen des Termins, der es vorhergesagt hat.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 before the work, which lies in the predicted range too: without any repair it would have held. So it says nothing of how good predictions are and is not counted among them.</source>
        <extracomment>proof.held_anyway</extracomment>
        <translation>Zylinder %1 zeigte vor der Arbeit %2, und auch das liegt im vorhergesagten Bereich: Die Vorhersage hätte ohne jede Reparatur gestimmt. Sie sagt daher nichts darüber, wie gut Vorhersagen sind, und wird nicht mitgezählt.</translation>
    </message>
    <message>
        <source>Left out of this count because they would have held without any repair, which says nothing about the assumptions: %1.</source>
        <extracomment>proof.apart</extracomment>
        <translation>Nicht mitgezählt, weil sie ohne jede Reparatur gestimmt hätten und so nichts über die Annahmen sagen: %1.</translation>
    </message>
    <message>
        <source>Repairs with a prediction so far: %1. How many held is said once there are %2.</source>
        <extracomment>proof.too_few</extracomment>
        <translation>Reparaturen mit Vorhersage bisher: %1. Wie viele zutrafen, wird ab %2 gesagt.</translation>
    </message>
    <message>
        <source>%1 of %2 predictions held; 9 of 10 are meant to. By chance alone the true share lies between %3 and %4.</source>
        <extracomment>proof.hit_rate</extracomment>
        <translation>%1 von %2 Vorhersagen trafen zu; 9 von 10 sollen es. Allein durch Zufall liegt der wahre Anteil zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>not measured twice</source>
        <extracomment>change:not measured</extracomment>
        <translation>nicht zweimal gemessen</translation>
    </message>
    <message>
        <source>better beyond doubt</source>
        <extracomment>change:better beyond doubt</extracomment>
        <translation>zweifelsfrei besser</translation>
    </message>
    <message>
        <source>better</source>
        <comment>change:better</comment>
        <translation>besser</translation>
    </message>
    <message>
        <source>no real change</source>
        <extracomment>change:no real change</extracomment>
        <translation>keine echte Änderung</translation>
    </message>
    <message>
        <source>worse</source>
        <comment>change:worse</comment>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>not comparable</source>
        <comment>change:not comparable</comment>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>converted</source>
        <extracomment>treatment:corrected</extracomment>
        <translation>umgerechnet</translation>
    </message>
    <message>
        <source>doubt allowed for it</source>
        <extracomment>treatment:allowed for</extracomment>
        <translation>als Unsicherheit angesetzt</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>treatment:not noted</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>not comparable</source>
        <comment>treatment:not comparable</comment>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>undecided</source>
        <extracomment>direction:undecided</extracomment>
        <translation>unentschieden</translation>
    </message>
    <message>
        <source>no trend</source>
        <extracomment>direction:steady</extracomment>
        <translation>kein Trend</translation>
    </message>
    <message>
        <source>better</source>
        <comment>direction:better</comment>
        <translation>besser</translation>
    </message>
    <message>
        <source>worse</source>
        <comment>direction:worse</comment>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>held</source>
        <extracomment>foretold:held</extracomment>
        <translation>traf zu</translation>
    </message>
    <message>
        <source>reads less</source>
        <extracomment>foretold:below</extracomment>
        <translation>zeigt weniger</translation>
    </message>
    <message>
        <source>reads more</source>
        <extracomment>foretold:above</extracomment>
        <translation>zeigt mehr</translation>
    </message>
    <message>
        <source>not tested yet</source>
        <extracomment>foretold:not measured</extracomment>
        <translation>noch nicht geprüft</translation>
    </message>
    <message>
        <source>not comparable</source>
        <comment>foretold:not comparable</comment>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>several repairs at once</source>
        <extracomment>foretold:several repairs</extracomment>
        <translation>mehrere Reparaturen auf einmal</translation>
    </message>
    <message>
        <source>before</source>
        <extracomment>input:before</extracomment>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <extracomment>input:after</extracomment>
        <translation>nachher</translation>
    </message>
    <message>
        <source>before, as measured</source>
        <extracomment>input:before_as_measured</extracomment>
        <translation>vorher, wie gemessen</translation>
    </message>
    <message>
        <source>Added</source>
        <extracomment>made_at</extracomment>
        <translation>Angelegt</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>name</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Description</source>
        <extracomment>description</extracomment>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>Tags</source>
        <extracomment>tags</extracomment>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>History</source>
        <extracomment>history</extracomment>
        <translation>Vorgeschichte</translation>
    </message>
    <message>
        <source>Owner</source>
        <extracomment>owner.name</extracomment>
        <translation>Besitzer</translation>
    </message>
    <message>
        <source>Owner&apos;s contact</source>
        <extracomment>contact</extracomment>
        <translation>Kontakt des Besitzers</translation>
    </message>
    <message>
        <source>Strokes</source>
        <extracomment>cycle</extracomment>
        <translation>Takte</translation>
    </message>
    <message>
        <source>Fuel</source>
        <extracomment>fuel</extracomment>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <extracomment>arrangement</extracomment>
        <translation>Bauform</translation>
    </message>
    <message>
        <source>Angle between the banks</source>
        <extracomment>bank_angle</extracomment>
        <translation>Winkel zwischen den Bänken</translation>
    </message>
    <message>
        <source>Cooling</source>
        <extracomment>cooling</extracomment>
        <translation>Kühlung</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <extracomment>cylinders</extracomment>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Firing order</source>
        <extracomment>firing_order</extracomment>
        <translation>Zündfolge</translation>
    </message>
    <message>
        <source>Firing intervals</source>
        <extracomment>firing_intervals</extracomment>
        <translation>Zündabstände</translation>
    </message>
    <message>
        <source>Joined intakes</source>
        <extracomment>joined_intakes</extracomment>
        <translation>Verbundene Einlässe</translation>
    </message>
    <message>
        <source>Joined exhausts</source>
        <extracomment>joined_exhausts</extracomment>
        <translation>Verbundene Auslässe</translation>
    </message>
    <message>
        <source>Bore</source>
        <extracomment>bore</extracomment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Stroke</source>
        <extracomment>stroke</extracomment>
        <translation>Hub</translation>
    </message>
    <message>
        <source>Rod</source>
        <extracomment>rod</extracomment>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <extracomment>compression_ratio</extracomment>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>Exhaust port closing</source>
        <extracomment>exhaust_port_closing</extracomment>
        <translation>Auslassschlitzschluss</translation>
    </message>
    <message>
        <source>Intake valves per cylinder</source>
        <extracomment>intake_valves</extracomment>
        <translation>Einlassventile je Zylinder</translation>
    </message>
    <message>
        <source>Exhaust valves per cylinder</source>
        <extracomment>exhaust_valves</extracomment>
        <translation>Auslassventile je Zylinder</translation>
    </message>
    <message>
        <source>Adjusters</source>
        <extracomment>adjuster</extracomment>
        <translation>Ventileinstellung</translation>
    </message>
    <message>
        <source>Intake clearance</source>
        <extracomment>intake_clearance</extracomment>
        <translation>Spiel Einlass</translation>
    </message>
    <message>
        <source>Exhaust clearance</source>
        <extracomment>exhaust_clearance</extracomment>
        <translation>Spiel Auslass</translation>
    </message>
    <message>
        <source>Valve timing</source>
        <extracomment>timing</extracomment>
        <translation>Steuerzeiten</translation>
    </message>
    <message>
        <source>Intake closing</source>
        <extracomment>intake_closing</extracomment>
        <translation>Einlassschluss</translation>
    </message>
    <message>
        <source>Intake closing counted</source>
        <extracomment>intake_closing_at</extracomment>
        <translation>Einlassschluss gezählt</translation>
    </message>
    <message>
        <source>Exhaust opening</source>
        <extracomment>exhaust_opening</extracomment>
        <translation>Auslassöffnen</translation>
    </message>
    <message>
        <source>Exhaust opening counted</source>
        <extracomment>exhaust_opening_at</extracomment>
        <translation>Auslassöffnen gezählt</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <extracomment>decompressor</extracomment>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <extracomment>plug_thread</extracomment>
        <translation>Kerzengewinde</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <extracomment>plug_reach</extracomment>
        <translation>Gewindelänge der Kerze</translation>
    </message>
    <message>
        <source>Factory range from</source>
        <extracomment>limits.low</extracomment>
        <translation>Werksbereich von</translation>
    </message>
    <message>
        <source>Factory range to</source>
        <extracomment>limits.high</extracomment>
        <translation>Werksbereich bis</translation>
    </message>
    <message>
        <source>Factory limit</source>
        <extracomment>limits.lowest</extracomment>
        <translation>Werksgrenzwert</translation>
    </message>
    <message>
        <source>Most between cylinders</source>
        <extracomment>limits.difference</extracomment>
        <translation>Größter Zylinderunterschied</translation>
    </message>
    <message>
        <source>Lowest of highest, at least</source>
        <extracomment>limits.least_ratio</extracomment>
        <translation>Niedrigster zum höchsten, mindestens</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <extracomment>limits.most_leakage</extracomment>
        <translation>Größter Druckverlust</translation>
    </message>
    <message>
        <source>Set pressure of the maker&apos;s tester</source>
        <extracomment>limits.leakage_set</extracomment>
        <translation>Eingestellter Druck am Prüfgerät des Herstellers</translation>
    </message>
    <message>
        <source>Restrictor of the maker&apos;s tester</source>
        <extracomment>limits.leakage_restrictor</extracomment>
        <translation>Drosselbohrung am Prüfgerät des Herstellers</translation>
    </message>
    <message>
        <source>Source of the limits</source>
        <extracomment>limits.origin</extracomment>
        <translation>Quelle der Grenzwerte</translation>
    </message>
    <message>
        <source>Note on the limits</source>
        <extracomment>limits.note</extracomment>
        <translation>Notiz zu den Grenzwerten</translation>
    </message>
    <message>
        <source>Crankcase set pressure</source>
        <extracomment>crankcase.set</extracomment>
        <translation>Kurbelgehäuse, eingestellter Druck</translation>
    </message>
    <message>
        <source>Crankcase hold time</source>
        <extracomment>crankcase.hold</extracomment>
        <translation>Kurbelgehäuse, Haltezeit</translation>
    </message>
    <message>
        <source>Crankcase end pressure, at least</source>
        <extracomment>crankcase.end_at_least</extracomment>
        <translation>Kurbelgehäuse, Enddruck mindestens</translation>
    </message>
    <message>
        <source>Source of the crankcase figures</source>
        <extracomment>crankcase.origin</extracomment>
        <translation>Quelle der Kurbelgehäusewerte</translation>
    </message>
    <message>
        <source>Note on the crankcase figures</source>
        <extracomment>crankcase.note</extracomment>
        <translation>Notiz zu den Kurbelgehäusewerten</translation>
    </message>
    <message>
        <source>Shop altitude</source>
        <extracomment>shop_altitude</extracomment>
        <translation>Höhe der Werkstatt</translation>
    </message>
    <message>
        <source>Kind</source>
        <extracomment>kind</extracomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>Home-made</source>
        <extracomment>home_made</extracomment>
        <translation>Selbst gebaut</translation>
    </message>
    <message>
        <source>Full scale</source>
        <extracomment>full_scale</extracomment>
        <translation>Skalenendwert</translation>
    </message>
    <message>
        <source>Class by</source>
        <extracomment>scheme</extracomment>
        <translation>Klasse nach</translation>
    </message>
    <message>
        <source>Class</source>
        <extracomment>accuracy</extracomment>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Smallest division</source>
        <extracomment>division</extracomment>
        <translation>Kleinster Teilstrich</translation>
    </message>
    <message>
        <source>Needle at rest</source>
        <extracomment>zero_at_rest</extracomment>
        <translation>Zeiger in Ruhe</translation>
    </message>
    <message>
        <source>Sweep of the scale</source>
        <extracomment>sweep</extracomment>
        <translation>Winkelbereich der Skala</translation>
    </message>
    <message>
        <source>Gauge before the restrictor</source>
        <extracomment>supply_gauge</extracomment>
        <translation>Manometer vor der Drosselbohrung</translation>
    </message>
    <message>
        <source>Volume of hose and gauge</source>
        <extracomment>hose_volume</extracomment>
        <translation>Volumen von Schlauch und Manometer</translation>
    </message>
    <message>
        <source>Check valve at</source>
        <extracomment>check_valve_at</extracomment>
        <translation>Rückschlagventil sitzt</translation>
    </message>
    <message>
        <source>Check valve core</source>
        <extracomment>check_valve_core</extracomment>
        <translation>Ventileinsatz des Rückschlagventils</translation>
    </message>
    <message>
        <source>Adapters</source>
        <extracomment>adapters</extracomment>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <extracomment>set_pressure</extracomment>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>Restrictor</source>
        <extracomment>restrictor</extracomment>
        <translation>Drosselbohrung</translation>
    </message>
    <message>
        <source>Length of the restrictor</source>
        <extracomment>restrictor_length</extracomment>
        <translation>Länge der Drosselbohrung</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <extracomment>restrictor_cd</extracomment>
        <translation>Durchflussbeiwert</translation>
    </message>
    <message>
        <source>Checks</source>
        <extracomment>checks</extracomment>
        <translation>Selbstprüfungen</translation>
    </message>
    <message>
        <source>Opened</source>
        <extracomment>opened_at</extracomment>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>Title</source>
        <extracomment>title</extracomment>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Mileage or hours</source>
        <extracomment>usage</extracomment>
        <translation>Laufleistung oder Stunden</translation>
    </message>
    <message>
        <source>Job number</source>
        <extracomment>job_number</extracomment>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Symptoms</source>
        <extracomment>symptoms</extracomment>
        <translation>Symptome</translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>complaint.text</extracomment>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Altitude</source>
        <extracomment>altitude</extracomment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Air pressure at the shop</source>
        <extracomment>station_pressure</extracomment>
        <translation>Luftdruck in der Werkstatt</translation>
    </message>
    <message>
        <source>Air</source>
        <extracomment>air</extracomment>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Engine</source>
        <extracomment>heat</extracomment>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Coolant</source>
        <extracomment>coolant</extracomment>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>Throttle</source>
        <extracomment>throttle</extracomment>
        <translation>Drosselklappe</translation>
    </message>
    <message>
        <source>Induction</source>
        <extracomment>induction</extracomment>
        <translation>Ansaugung</translation>
    </message>
    <message>
        <source>Battery</source>
        <extracomment>battery</extracomment>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>Cranked by</source>
        <extracomment>cranked_by</extracomment>
        <translation>Durchgedreht mit</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <extracomment>cranking_speed</extracomment>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>Crank held by</source>
        <extracomment>crank_held_by</extracomment>
        <translation>Kurbelwelle gehalten durch</translation>
    </message>
    <message>
        <source>Prepare</source>
        <extracomment>prepare</extracomment>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>Compression gauge</source>
        <extracomment>compression_gauge</extracomment>
        <translation>Kompressionsprüfer</translation>
    </message>
    <message>
        <source>Leak-down tester</source>
        <extracomment>leak_down_tester</extracomment>
        <translation>Druckverlustprüfer</translation>
    </message>
    <message>
        <source>Crankcase tester</source>
        <extracomment>crankcase_tester</extracomment>
        <translation>Kurbelgehäuseprüfer</translation>
    </message>
    <message>
        <source>Owner&apos;s answer</source>
        <extracomment>owner_answer</extracomment>
        <translation>Antwort des Besitzers</translation>
    </message>
    <message>
        <source>Owner answered</source>
        <extracomment>owner_answered_at</extracomment>
        <translation>Besitzer antwortete</translation>
    </message>
    <message>
        <source>Retest planned for</source>
        <extracomment>retest_planned_for</extracomment>
        <translation>Nachprüfung geplant am</translation>
    </message>
    <message>
        <source>Test</source>
        <extracomment>test</extracomment>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Check</source>
        <extracomment>check</extracomment>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <extracomment>cylinder</extracomment>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Taken</source>
        <extracomment>taken_at</extracomment>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>What came just before</source>
        <extracomment>tag</extracomment>
        <translation>Was unmittelbar vorausging</translation>
    </message>
    <message>
        <source>Oil on the rings</source>
        <extracomment>oiled</extracomment>
        <translation>Öl an den Kolbenringen</translation>
    </message>
    <message>
        <source>Where it is from</source>
        <extracomment>from</extracomment>
        <translation>Woher</translation>
    </message>
    <message>
        <source>Tester</source>
        <extracomment>tester</extracomment>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Adapter</source>
        <extracomment>adapter</extracomment>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>First puff</source>
        <comment>first</comment>
        <translation>Erster Hub</translation>
    </message>
    <message>
        <source>Final reading</source>
        <extracomment>final</extracomment>
        <translation>Endwert</translation>
    </message>
    <message>
        <source>Pulls</source>
        <extracomment>pulls</extracomment>
        <translation>Hübe</translation>
    </message>
    <message>
        <source>Set</source>
        <extracomment>set</extracomment>
        <translation>Eingestellt</translation>
    </message>
    <message>
        <source>Held</source>
        <extracomment>held</extracomment>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>Leakage on the dial</source>
        <extracomment>dial_loss</extracomment>
        <translation>Verlust auf der Skala</translation>
    </message>
    <message>
        <source>Hold time</source>
        <comment>hold</comment>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>Oil put in</source>
        <extracomment>oil_volume</extracomment>
        <translation>Eingefülltes Öl</translation>
    </message>
    <message>
        <source>Oil</source>
        <extracomment>oil_name</extracomment>
        <translation>Öl</translation>
    </message>
    <message>
        <source>Stands in place of</source>
        <extracomment>replaces</extracomment>
        <translation>Ersetzt</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>note</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Exit</source>
        <extracomment>exit</extracomment>
        <translation>Austritt</translation>
    </message>
    <message>
        <source>Neighbour</source>
        <extracomment>neighbour</extracomment>
        <translation>Nachbar</translation>
    </message>
    <message>
        <source>How loud</source>
        <extracomment>loudness</extracomment>
        <translation>Wie laut</translation>
    </message>
    <message>
        <source>Listened by</source>
        <extracomment>by</extracomment>
        <translation>Gehorcht mit</translation>
    </message>
    <message>
        <source>Reading</source>
        <comment>reading</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>at</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Valve</source>
        <extracomment>side</extracomment>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Valve number</source>
        <extracomment>valve</extracomment>
        <translation>Ventilnummer</translation>
    </message>
    <message>
        <source>Found</source>
        <extracomment>found</extracomment>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>Left</source>
        <extracomment>left</extracomment>
        <translation>Eingestellt</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <extracomment>tie</extracomment>
        <translation>Gehört zu</translation>
    </message>
    <message>
        <source>Shows</source>
        <extracomment>photo_of</extracomment>
        <translation>Zeigt</translation>
    </message>
    <message>
        <source>File</source>
        <extracomment>sha256</extracomment>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Kind of file</source>
        <extracomment>media_type</extracomment>
        <translation>Dateiart</translation>
    </message>
    <message>
        <source>Bytes</source>
        <extracomment>bytes</extracomment>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>Length</source>
        <extracomment>length</extracomment>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Caption</source>
        <extracomment>caption</extracomment>
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>Read from the photo</source>
        <extracomment>read_value</extracomment>
        <translation>Vom Foto abgelesen</translation>
    </message>
    <message>
        <source>Uncertainty of that</source>
        <extracomment>read_uncertainty</extracomment>
        <translation>Unsicherheit davon</translation>
    </message>
    <message>
        <source>Confidence of that</source>
        <extracomment>read_confidence</extracomment>
        <translation>Sicherheit davon</translation>
    </message>
    <message>
        <source>Why it was not read</source>
        <extracomment>read_refusal</extracomment>
        <translation>Warum nicht abgelesen</translation>
    </message>
    <message>
        <source>What holds</source>
        <extracomment>read_settled</extracomment>
        <translation>Was gilt</translation>
    </message>
    <message>
        <source>Written by</source>
        <extracomment>author</extracomment>
        <translation>Geschrieben von</translation>
    </message>
    <message>
        <source>Text</source>
        <extracomment>text</extracomment>
        <translation>Text</translation>
    </message>
    <message>
        <source>Done</source>
        <extracomment>done</extracomment>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <comment>cause</comment>
        <translation>Wo es undicht ist</translation>
    </message>
    <message>
        <source>Choice</source>
        <extracomment>option</extracomment>
        <translation>Wahl</translation>
    </message>
    <message>
        <source>Work</source>
        <extracomment>work</extracomment>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Parts</source>
        <extracomment>parts</extracomment>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Hours</source>
        <extracomment>labour</extracomment>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Price</source>
        <extracomment>price</extracomment>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Reason</source>
        <extracomment>reason</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>If left</source>
        <extracomment>if_left</extracomment>
        <translation>Wenn es so bleibt</translation>
    </message>
    <message>
        <source>Place in the plan</source>
        <extracomment>order</extracomment>
        <translation>Platz im Plan</translation>
    </message>
    <message>
        <source>Done on</source>
        <extracomment>done_at</extracomment>
        <translation>Erledigt am</translation>
    </message>
    <message>
        <source>Reading to expect from</source>
        <extracomment>predicted_low</extracomment>
        <translation>Zu erwartender Messwert von</translation>
    </message>
    <message>
        <source>Reading to expect to</source>
        <extracomment>predicted_high</extracomment>
        <translation>Zu erwartender Messwert bis</translation>
    </message>
    <message>
        <source>The engine card has no factory limits.</source>
        <extracomment>limits.none</extracomment>
        <translation>Die Motorkarte hat keine Werksgrenzwerte.</translation>
    </message>
    <message>
        <source>Factory limits are scaled to the shop&apos;s air pressure, %1.</source>
        <extracomment>limits.scaled_pressure</extracomment>
        <translation>Werksgrenzwerte sind auf den Luftdruck der Werkstatt umgerechnet, %1.</translation>
    </message>
    <message>
        <source>Factory limits are scaled to the shop&apos;s altitude, %1 (air pressure %2).</source>
        <extracomment>limits.scaled_altitude</extracomment>
        <translation>Werksgrenzwerte sind auf die Höhe der Werkstatt umgerechnet, %1 (Luftdruck %2).</translation>
    </message>
    <message>
        <source>The shop&apos;s altitude is not known: factory limits are taken as they stand, for sea level.</source>
        <extracomment>limits.altitude_unknown</extracomment>
        <translation>Die Höhe der Werkstatt ist nicht bekannt: Werksgrenzwerte gelten, wie sie dastehen, für Meereshöhe.</translation>
    </message>
    <message>
        <source>The altitude or air pressure noted can&apos;t be right: factory limits are taken as they stand, for sea level.</source>
        <extracomment>limits.site_refused</extracomment>
        <translation>Die notierte Höhe oder der notierte Luftdruck kann nicht stimmen: Werksgrenzwerte gelten, wie sie dastehen, für Meereshöhe.</translation>
    </message>
    <message>
        <source>%1: in range, by every figure that a reading is judged by here.</source>
        <extracomment>why.all_in_range</extracomment>
        <translation>%1: im Bereich, nach allem, woran eine Messung hier gemessen wird.</translation>
    </message>
    <message>
        <source>%1 is within the normal range, which begins at %2.</source>
        <extracomment>why.in_range</extracomment>
        <translation>%1 liegt im Normalbereich, der bei %2 beginnt.</translation>
    </message>
    <message>
        <source>%1 is above the lowest limit of %2.</source>
        <extracomment>why.above_lowest</extracomment>
        <translation>%1 liegt über dem unteren Grenzwert von %2.</translation>
    </message>
    <message>
        <source>%1 is below the normal range, which begins at %2.</source>
        <extracomment>why.below_low</extracomment>
        <translation>%1 liegt unter dem Normalbereich, der bei %2 beginnt.</translation>
    </message>
    <message>
        <source>%1 is below the lowest limit of %2.</source>
        <extracomment>why.below_lowest</extracomment>
        <translation>%1 liegt unter dem unteren Grenzwert von %2.</translation>
    </message>
    <message>
        <source>%1 is so close to the lowest limit of %2 that gauge and repeats can&apos;t tell them apart.</source>
        <extracomment>why.close_to_lowest</extracomment>
        <translation>%1 liegt so nah am unteren Grenzwert von %2, dass Manometer und Wiederholungen sie nicht unterscheiden können.</translation>
    </message>
    <message>
        <source>%1 may lie on either side of the lowest limit of %2: the doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>why.unsure_of_lowest</extracomment>
        <translation>%1 kann auf beiden Seiten des unteren Grenzwerts von %2 liegen: Die Unsicherheit von ±%3 reicht über ihn hinweg. Damit sie kleiner wird: %4.</translation>
    </message>
    <message>
        <source>%1 is above the normal range, which ends at %2.</source>
        <extracomment>why.above_high</extracomment>
        <translation>%1 liegt über dem Normalbereich, der bei %2 endet.</translation>
    </message>
    <message>
        <source>No factory range on the card. Makers ask for about %2 to %3 of such an engine; this is %1.</source>
        <extracomment>why.below_typical</extracomment>
        <translation>Kein Werksbereich auf der Karte. Hersteller verlangen von so einem Motor etwa %2 bis %3; hier sind es %1.</translation>
    </message>
    <message>
        <source>No factory range on the card. Makers ask for about %2 to %3 of such an engine; this is %1, far below that.</source>
        <extracomment>why.far_below_typical</extracomment>
        <translation>Kein Werksbereich auf der Karte. Hersteller verlangen von so einem Motor etwa %2 bis %3; hier sind es %1, weit darunter.</translation>
    </message>
    <message>
        <source>No factory range on the card. Makers ask for about %2 to %3 of such an engine; %1 reaches that.</source>
        <extracomment>why.within_typical</extracomment>
        <translation>Kein Werksbereich auf der Karte. Hersteller verlangen von so einem Motor etwa %2 bis %3; %1 erreicht das.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %2 to %3, and %1 is within that.</source>
        <extracomment>why.within_expected</extracomment>
        <translation>Kein Werkswert; das Modell erwartet %2 bis %3, und %1 liegt darin.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %2 to %3, and %1 is below that. With the model&apos;s doubt that is no proof of a fault.</source>
        <extracomment>why.below_expected</extracomment>
        <translation>Kein Werkswert; das Modell erwartet %2 bis %3, und %1 liegt darunter. Bei der Unsicherheit des Modells ist das kein Beweis für einen Fehler.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %2 to %3, and %1 is above that: oil or carbon in the chamber, or a figure on the card that is not right?</source>
        <extracomment>why.above_expected</extracomment>
        <translation>Kein Werkswert; das Modell erwartet %2 bis %3, und %1 liegt darüber: Öl oder Ölkohle im Brennraum, oder eine falsche Zahl auf der Karte?</translation>
    </message>
    <message>
        <source>%1 as read. At full throttle, warm and well cranked, with no hose before the check valve, it would be about %2: this is held against the limit.</source>
        <extracomment>why.put_right</extracomment>
        <translation>%1 abgelesen. Mit offener Drosselklappe, warm, gut durchgedreht und ohne Schlauch vor dem Rückschlagventil wären es etwa %2: Dies wird am Grenzwert gemessen.</translation>
    </message>
    <message>
        <source>%1 as read, about %2 without what the hose takes off: this is held against the limit.</source>
        <extracomment>why.put_right_hose</extracomment>
        <translation>%1 abgelesen, etwa %2 ohne das, was der Schlauch wegnimmt: Dies wird am Grenzwert gemessen.</translation>
    </message>
    <message>
        <source>%1 is so close to the lowest limit of %2 that it can&apos;t be told apart: put right what stood in the way, then test again.</source>
        <extracomment>why.put_right_close</extracomment>
        <translation>%1 liegt so nah am unteren Grenzwert von %2, dass es sich nicht unterscheiden lässt: erst beheben, was im Weg stand, dann noch einmal prüfen.</translation>
    </message>
    <message>
        <source>The throttle was closed, and how much that took off can&apos;t be worked out: hold it open, then test again.</source>
        <extracomment>why.lowered_throttle</extracomment>
        <translation>Die Drosselklappe war geschlossen, und wie viel das gekostet hat, lässt sich nicht berechnen: offen halten und noch einmal prüfen.</translation>
    </message>
    <message>
        <source>The gauge&apos;s check valve sits behind the hose, and how much that took off can&apos;t be worked out: use a gauge whose check valve sits at the plug hole.</source>
        <extracomment>why.lowered_hose</extracomment>
        <translation>Das Rückschlagventil des Manometers sitzt hinter dem Schlauch, und wie viel das gekostet hat, lässt sich nicht berechnen: ein Manometer nehmen, dessen Rückschlagventil am Kerzenloch sitzt.</translation>
    </message>
    <message>
        <source>The throttle was closed: the reading is not held against what is expected of an open one.</source>
        <extracomment>why.throttle_closed</extracomment>
        <translation>Die Drosselklappe war geschlossen: Der Messwert wird nicht an dem gemessen, was bei offener zu erwarten ist.</translation>
    </message>
    <message>
        <source>The decompressor was at work: the reading is not held against any limit.</source>
        <extracomment>why.decompressor</extracomment>
        <translation>Der Dekompressor war wirksam: Der Messwert wird an keinem Grenzwert gemessen.</translation>
    </message>
    <message>
        <source>On a tester set to %4 it would show %1. Up to %2 seals well, up to %3 is wear, more is work.</source>
        <extracomment>why.leak_band</extracomment>
        <translation>Auf einem Prüfgerät, das auf %4 eingestellt ist, würde es %1 zeigen. Bis %2 dichtet gut, bis %3 ist Verschleiß, darüber ist etwas zu tun.</translation>
    </message>
    <message>
        <source>Set to %1 it held %2: leakage %3. Another set pressure is no repeat and is not counted into the figure above.</source>
        <extracomment>why.leak_other_set</extracomment>
        <translation>Auf %1 eingestellt hielt er %2: Druckverlust %3. Ein anderer Einstelldruck ist keine Wiederholung und zählt in der Zahl oben nicht mit.</translation>
    </message>
    <message>
        <source>Leakage %1 on the maker&apos;s tester; the maker allows %2.</source>
        <extracomment>why.leak_maker</extracomment>
        <translation>Druckverlust %1 auf dem Prüfgerät des Herstellers; der Hersteller lässt %2 zu.</translation>
    </message>
    <message>
        <source>Published bands, each on its own tester: %1. In range by %2, borderline by %3, fault by %4.</source>
        <extracomment>leak.bands</extracomment>
        <translation>Veröffentlichte Bereiche, jeder auf seinem eigenen Prüfgerät: %1. Im Bereich nach %2, grenzwertig nach %3, Fehler nach %4.</translation>
    </message>
    <message>
        <source>On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart; %7 is allowed (%8).</source>
        <extracomment>leak.spread_holds</extracomment>
        <translation>Auf einem Prüfgerät mit %5 würde Zylinder %1 %2 zeigen, am meisten, und Zylinder %3 %4, am wenigsten: %6 Abstand; %7 sind erlaubt (%8).</translation>
    </message>
    <message>
        <source>On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart; above %7 look again, above %8 it is a fault (%9).</source>
        <extracomment>leak.spread_borderline</extracomment>
        <translation>Auf einem Prüfgerät mit %5 würde Zylinder %1 %2 zeigen, am meisten, und Zylinder %3 %4, am wenigsten: %6 Abstand; über %7 noch einmal nachsehen, über %8 ist es ein Fehler (%9).</translation>
    </message>
    <message>
        <source>On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart, more than the %7 allowed (%8).</source>
        <extracomment>leak.spread_fails</extracomment>
        <translation>Auf einem Prüfgerät mit %5 würde Zylinder %1 %2 zeigen, am meisten, und Zylinder %3 %4, am wenigsten: %6 Abstand, mehr als die erlaubten %7 (%8).</translation>
    </message>
    <message>
        <source>%1 is so close to the maker&apos;s %2 that the gauges can&apos;t tell them apart.</source>
        <extracomment>why.leak_close</extracomment>
        <translation>%1 liegt so nah an den %2 des Herstellers, dass die Manometer sie nicht unterscheiden können.</translation>
    </message>
    <message>
        <source>%1 is so close to the band&apos;s edge of %2 that the gauges can&apos;t tell them apart.</source>
        <extracomment>why.leak_close_to_band</extracomment>
        <translation>%1 liegt so nah an der Grenze des Bereichs von %2, dass die Manometer sie nicht unterscheiden können.</translation>
    </message>
    <message>
        <source>%1 may lie on either side of the maker&apos;s %2: the gauges&apos; doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>why.leak_unsure</extracomment>
        <translation>%1 kann auf beiden Seiten der %2 des Herstellers liegen: Die Unsicherheit der Manometer von ±%3 reicht darüber hinweg. Damit sie kleiner wird: %4.</translation>
    </message>
    <message>
        <source>%1 may lie on either side of the band&apos;s edge of %2: the gauges&apos; doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>why.leak_unsure_of_band</extracomment>
        <translation>%1 kann auf beiden Seiten der Bandgrenze von %2 liegen: Die Manometer lassen ±%3 offen. Genauer: %4.</translation>
    </message>
    <message>
        <source>With the tester&apos;s restrictor unknown it may as well be under %1: no fault before the tester is known.</source>
        <extracomment>why.leak_tester_unknown</extracomment>
        <translation>Bei unbekannter Drosselbohrung des Prüfgeräts kann es ebenso gut unter %1 sein: kein Fehler, bevor das Prüfgerät bekannt ist.</translation>
    </message>
    <message>
        <source>The lowest cylinder has %1 of the highest; at least %2 is asked (%3).</source>
        <extracomment>spread.ratio_holds</extracomment>
        <translation>Der niedrigste Zylinder hat %1 des höchsten; verlangt sind mindestens %2 (%3).</translation>
    </message>
    <message>
        <source>Too far below the highest: %1. The lowest has %2; at least %3 is asked (%4).</source>
        <extracomment>spread.ratio_fails</extracomment>
        <translation>Zu weit unter dem höchsten: %1. Der niedrigste hat %2; verlangt sind mindestens %3 (%4).</translation>
    </message>
    <message>
        <source>Look again at %1: the lowest has %2 of the highest. A stricter rule asks for at least %3; by itself it calls for another look, never a fault (%4).</source>
        <extracomment>spread.ratio_look_again</extracomment>
        <translation>Noch einmal nachsehen bei %1: Der niedrigste hat %2 des höchsten. Eine strengere Regel verlangt mindestens %3; für sich allein verlangt sie nur, noch einmal nachzusehen, und meldet nie einen Fehler (%4).</translation>
    </message>
    <message>
        <source>Below %2: %1 (%3).</source>
        <extracomment>spread.ratio_under</extracomment>
        <translation>Unter %2: %1 (%3).</translation>
    </message>
    <message>
        <source>No cylinder lies %1 below the average of %2 (%3).</source>
        <extracomment>spread.average_holds</extracomment>
        <translation>Kein Zylinder liegt %1 unter dem Mittel von %2 (%3).</translation>
    </message>
    <message>
        <source>%2 or more below the average of %3: %1 (%4).</source>
        <extracomment>spread.average_fails</extracomment>
        <translation>%2 oder mehr unter dem Mittel von %3: %1 (%4).</translation>
    </message>
    <message>
        <source>The cylinders differ by %1; the engine&apos;s own limit is %2.</source>
        <extracomment>spread.difference_holds</extracomment>
        <translation>Die Zylinder unterscheiden sich um %1; der eigene Grenzwert des Motors ist %2.</translation>
    </message>
    <message>
        <source>The cylinders read the same; the engine&apos;s own limit for the difference is %2.</source>
        <extracomment>spread.difference_holds/alike</extracomment>
        <translation>Die Zylinder zeigen dasselbe; der eigene Grenzwert des Motors für den Unterschied ist %2.</translation>
    </message>
    <message>
        <source>Too far below the highest: %1. The difference is %2; the engine&apos;s own limit is %3.</source>
        <extracomment>spread.difference_fails</extracomment>
        <translation>Zu weit unter dem höchsten: %1. Der Unterschied ist %2; der eigene Grenzwert des Motors ist %3.</translation>
    </message>
    <message>
        <source>Too far below the highest as read: %1. The difference is %2, so close to the limit of %3 that gauge and repeats can&apos;t tell them apart.</source>
        <extracomment>spread.difference_close</extracomment>
        <translation>Dem Messwert nach zu weit unter dem höchsten: %1. Der Unterschied ist %2, so nah am Grenzwert von %3, dass Manometer und Wiederholungen sie nicht unterscheiden können.</translation>
    </message>
    <message>
        <source>Too far below the highest as read: %1. The difference is %2, but it may lie on either side of the limit of %3: the doubt of ±%4 reaches across it. To make it smaller: %5.</source>
        <extracomment>spread.difference_unsure</extracomment>
        <translation>Wie abgelesen zu weit unter dem höchsten: %1. Der Unterschied ist %2, kann aber auf beiden Seiten des Grenzwerts von %3 liegen: Die Unsicherheit von ±%4 reicht über ihn hinweg. Damit sie kleiner wird: %5.</translation>
    </message>
    <message>
        <source>The cylinders differ by %1 as read; the engine&apos;s own limit is %2. What stood in the way of the readings made the difference smaller too: put it right, then test again.</source>
        <extracomment>spread.difference_lowered</extracomment>
        <translation>Die Zylinder unterscheiden sich dem Messwert nach um %1; der eigene Grenzwert des Motors ist %2. Was den Messwerten im Weg stand, hat auch den Unterschied verkleinert: beheben, dann noch einmal messen.</translation>
    </message>
    <message>
        <source>The lowest cylinder has %1 of the highest; the maker asks at least %2.</source>
        <extracomment>spread.own_ratio_holds</extracomment>
        <translation>Der niedrigste Zylinder hat %1 des höchsten; der Hersteller verlangt mindestens %2.</translation>
    </message>
    <message>
        <source>Too far below the highest: %1. The lowest has %2; the maker asks at least %3.</source>
        <extracomment>spread.own_ratio_fails</extracomment>
        <translation>Zu weit unter dem höchsten: %1. Der niedrigste hat %2; der Hersteller verlangt mindestens %3.</translation>
    </message>
    <message>
        <source>The cylinders differ by %1: less than the uncertainty of %2 that gauge and repeats bring. As far as these readings can tell they are alike.</source>
        <extracomment>spread.within_gauge</extracomment>
        <translation>Die Zylinder unterscheiden sich um %1: weniger als die Unsicherheit von %2, die Manometer und Wiederholungen mitbringen. Soweit diese Messwerte es sagen können, sind sie gleich.</translation>
    </message>
    <message>
        <source>The cylinders read the same.</source>
        <extracomment>spread.within_gauge/alike</extracomment>
        <translation>Die Zylinder zeigen dasselbe.</translation>
    </message>
    <message>
        <source>Start with the dry test: it is quick and shows where to look further.</source>
        <extracomment>next.dry_all</extracomment>
        <translation>Mit der Trockenprüfung beginnen: Sie geht schnell und zeigt, wo es weiter nachzusehen gilt.</translation>
    </message>
    <message>
        <source>Start with the dry test: it is quick and shows whether to look further.</source>
        <extracomment>next.dry_one</extracomment>
        <translation>Mit der Trockenprüfung anfangen: Sie geht schnell und zeigt, ob weiterzusuchen ist.</translation>
    </message>
    <message>
        <source>Cylinder %1 has no dry reading yet: the others can&apos;t be compared with it.</source>
        <extracomment>next.dry</extracomment>
        <translation>Zylinder %1 hat noch keinen trockenen Messwert: Die anderen lassen sich nicht mit ihm vergleichen.</translation>
    </message>
    <message>
        <source>Cylinder %1 is not in range: a leak-down test shows how much it leaks and where.</source>
        <extracomment>next.leak_down_low</extracomment>
        <translation>Zylinder %1 ist nicht im Bereich: Eine Druckverlustprüfung zeigt, wie viel er verliert und wo.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1: it does not mind the decompressor.</source>
        <extracomment>next.leak_down_decompressor</extracomment>
        <translation>Druckverlustprüfung an Zylinder %1: Der Dekompressor stört sie nicht.</translation>
    </message>
    <message>
        <source>Leak-down test of every cylinder: if they seal well, the cause lies elsewhere.</source>
        <extracomment>next.leak_down_all</extracomment>
        <translation>Druckverlustprüfung an jedem Zylinder: Dichten sie gut, liegt die Ursache anderswo.</translation>
    </message>
    <message>
        <source>Nothing on the engine card judges the dry readings: a leak-down test tells how well each cylinder seals, or put the factory limits on the card.</source>
        <extracomment>next.leak_down_unjudged</extracomment>
        <translation>Nichts auf der Motorkarte beurteilt die Trockenmessungen: eine Druckverlustprüfung sagt, wie gut jeder Zylinder dichtet, oder die Werksgrenzwerte auf die Karte schreiben.</translation>
    </message>
    <message>
        <source>Listen at cylinder %1&apos;s exits with the air on: where it comes out names the leak.</source>
        <extracomment>next.listen</extracomment>
        <translation>Bei anliegender Luft an den Austritten von Zylinder %1 horchen: Wo sie herauskommt, zeigt das Leck.</translation>
    </message>
    <message>
        <source>Listen at cylinder %1&apos;s exits again: what was heard in the state &quot;%2&quot; does not count for a part that was touched since.</source>
        <extracomment>next.listen_again</extracomment>
        <translation>An den Austritten von Zylinder %1 neu horchen: Was im Zustand „%2“ zu hören war, zählt nicht für ein Teil, an dem seither gearbeitet wurde.</translation>
    </message>
    <message>
        <source>Listen at intake and exhaust of cylinder %1: the air in the plug hole of %2 may have leaked past a valve.</source>
        <extracomment>next.listen_valves</extracomment>
        <translation>An Einlass und Auslass von Zylinder %1 horchen: die Luft im Kerzenloch von %2 kann an einem Ventil vorbeigekommen sein.</translation>
    </message>
    <message>
        <source>Wet test of cylinder %1, last of all: it tells rings from the rest.</source>
        <extracomment>next.wet</extracomment>
        <translation>Nassprüfung an Zylinder %1, ganz zuletzt: Sie unterscheidet Kolbenringe vom Rest.</translation>
    </message>
    <message>
        <source>Check the valve clearances of cylinder %1, first of %2: a valve without clearance looks burnt.</source>
        <extracomment>next.clearances</extracomment>
        <translation>Das Ventilspiel von Zylinder %1 prüfen, zuerst dieses: %2. Ein Ventil ohne Spiel sieht aus wie ein verbranntes.</translation>
    </message>
    <message>
        <source>Look up in the engine&apos;s manual the clearance wanted for %2, and put it on the engine card: what was found at cylinder %1 can&apos;t be judged without it.</source>
        <extracomment>next.clearance_wanted</extracomment>
        <translation>Das Sollspiel im Handbuch des Motors nachsehen (%2) und auf die Motorkarte schreiben: Ohne es ist das an Zylinder %1 gefundene nicht zu beurteilen.</translation>
    </message>
    <message>
        <source>Check the valve clearance of cylinder %1, far less than at the others, adjust it by the engine&apos;s manual and test again.</source>
        <extracomment>next.clearance_siblings</extracomment>
        <translation>Das Ventilspiel von Zylinder %1, weit kleiner als bei den übrigen, nachmessen, nach dem Handbuch des Motors einstellen und erneut prüfen.</translation>
    </message>
    <message>
        <source>Adjust the valve clearance of cylinder %1, then test it again.</source>
        <extracomment>next.adjust</extracomment>
        <translation>Das Ventilspiel von Zylinder %1 einstellen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1 again: a hydraulic lifter that is pumped up or stuck holds its valve open. Take the air off, let it bleed down for some minutes, turn the engine twice by hand, then test again before the head comes off.</source>
        <extracomment>next.lifter</extracomment>
        <translation>Druckverlustprüfung von Zylinder %1 wiederholen: Ein Hydrostößel, der aufgepumpt ist oder klemmt, hält sein Ventil offen. Luft wegnehmen, den Stößel einige Minuten absinken lassen, den Motor zweimal von Hand durchdrehen, dann erneut prüfen, bevor der Kopf herunterkommt.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1 again after the engine has run: oil on its rings lifted this one.</source>
        <extracomment>next.after_oil</extracomment>
        <translation>Druckverlustprüfung von Zylinder %1 wiederholen, nachdem der Motor gelaufen ist: Öl an seinen Ringen hat diese geschönt.</translation>
    </message>
    <message>
        <source>The clearance of cylinder %1 was changed: test it again.</source>
        <extracomment>next.retest_adjusted</extracomment>
        <translation>Das Ventilspiel von Zylinder %1 wurde verstellt: erneut prüfen.</translation>
    </message>
    <message>
        <source>Dry test of cylinder %1 again: its reading is from the state &quot;%2&quot;, and something was done since.</source>
        <extracomment>next.dry_before</extracomment>
        <translation>Trockenprüfung von Zylinder %1 noch einmal: Der Messwert stammt aus dem Zustand „%2“, und seither wurde daran gearbeitet.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1 again: its reading is from the state &quot;%2&quot;, and something was done since.</source>
        <extracomment>next.leak_down_before</extracomment>
        <translation>Druckverlustprüfung von Zylinder %1 noch einmal: Der Messwert stammt aus dem Zustand „%2“, und seither wurde daran gearbeitet.</translation>
    </message>
    <message>
        <source>Turn the crank one full turn and test cylinder %1 again: it may stand at the wrong TDC.</source>
        <extracomment>next.turn_once</extracomment>
        <translation>Die Kurbelwelle eine volle Umdrehung weiterdrehen und Zylinder %1 erneut prüfen: Er steht vielleicht im falschen OT.</translation>
    </message>
    <message>
        <source>Do the %2 of cylinder %1 again: its readings don&apos;t fit together.</source>
        <extracomment>next.again</extracomment>
        <translation>%2 von Zylinder %1 wiederholen: Die Messwerte passen nicht zusammen.</translation>
    </message>
    <message>
        <source>Crankcase hold test: seals, base gasket and reed show in no other test.</source>
        <extracomment>next.crankcase</extracomment>
        <translation>Druckhalteprüfung des Kurbelgehäuses: Wellendichtringe, Fußdichtung und Membran zeigen sich in keiner anderen Prüfung.</translation>
    </message>
    <message>
        <source>Crankcase hold test of cylinder %1: its chamber is held by itself.</source>
        <extracomment>next.crankcase_of</extracomment>
        <translation>Druckhalteprüfung des Kurbelgehäuses von Zylinder %1: seine Kammer wird für sich gehalten.</translation>
    </message>
    <message>
        <source>Repeat the dry test with the throttle held wide open, as a session of its own: it was shut, which lowers every reading.</source>
        <extracomment>next.repeat_open</extracomment>
        <translation>Die Trockenprüfung mit ganz offen gehaltener Drosselklappe wiederholen, als eigene Sitzung: Sie war geschlossen, das senkt jeden Messwert.</translation>
    </message>
    <message>
        <source>The throttle was shut here. The dry test was done again with the throttle held open, in a later session: hold the two side by side.</source>
        <extracomment>next.repeated_open</extracomment>
        <translation>Die Drosselklappe war hier geschlossen. Die Trockenprüfung wurde in einer späteren Sitzung mit offen gehaltener Drosselklappe wiederholt: beide nebeneinanderhalten.</translation>
    </message>
    <message>
        <source>Repeat the dry test warm and with the throttle held wide open, as a session of its own: cold and shut lower every reading.</source>
        <extracomment>next.repeat_open_warm</extracomment>
        <translation>Die Trockenprüfung warm und mit ganz offen gehaltener Drosselklappe wiederholen, als eigene Sitzung: Kalt und geschlossen senken jeden Messwert.</translation>
    </message>
    <message>
        <source>If the engine runs, repeat the dry test warm, as a session of its own: cold lowers every reading.</source>
        <extracomment>next.repeat_warm</extracomment>
        <translation>Wenn der Motor läuft, die Trockenprüfung warm wiederholen, als eigene Sitzung: Kälte senkt jeden Messwert.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaked %2 at an earlier visit, and no air was put on it since: do its leak-down test.</source>
        <extracomment>next.earlier_leak</extracomment>
        <translation>Zylinder %1 verlor bei einem früheren Termin %2, und seither lag keine Luft mehr an: seine Druckverlustprüfung machen.</translation>
    </message>
    <message>
        <source>An earlier visit asked for a leak-down test of cylinder %1; it was not done since.</source>
        <extracomment>next.earlier_leak_down</extracomment>
        <translation>Ein früherer Termin verlangte eine Druckverlustprüfung an Zylinder %1; sie wurde seither nicht gemacht.</translation>
    </message>
    <message>
        <source>An earlier visit found cylinder %1 leaking and nobody listened where: do it with the air on.</source>
        <extracomment>next.earlier_listen</extracomment>
        <translation>Bei einem früheren Termin war Zylinder %1 undicht, und niemand hat gehorcht, wo: bei anliegender Luft nachholen.</translation>
    </message>
    <message>
        <source>An earlier visit left open whether cylinder %1 stood at the right TDC: test it again.</source>
        <extracomment>next.earlier_turn_once</extracomment>
        <translation>Ein früherer Termin ließ offen, ob Zylinder %1 im richtigen OT stand: erneut prüfen.</translation>
    </message>
    <message>
        <source>An earlier visit asked for the valve clearances of cylinder %1; they are not recorded since.</source>
        <extracomment>next.earlier_clearances</extracomment>
        <translation>Ein früherer Termin verlangte das Ventilspiel von Zylinder %1; es ist seither nicht erfasst.</translation>
    </message>
    <message>
        <source>An earlier visit found too little valve clearance at cylinder %1; nothing is recorded since.</source>
        <extracomment>next.earlier_adjust</extracomment>
        <translation>Ein früherer Termin fand zu wenig Ventilspiel an Zylinder %1; seither ist nichts erfasst.</translation>
    </message>
    <message>
        <source>Somebody asked for this, and it is still to do: %1.</source>
        <extracomment>next.request</extracomment>
        <translation>Jemand hat darum gebeten, und es steht noch aus: %1.</translation>
    </message>
    <message>
        <source>Somebody asked for this at cylinder %1, and it is still to do: %2.</source>
        <extracomment>next.request_of</extracomment>
        <translation>Jemand hat bei Zylinder %1 darum gebeten, und es steht noch aus: %2.</translation>
    </message>
    <message>
        <source>Somebody asked for this at an earlier visit, and it is still to do: %1.</source>
        <extracomment>next.earlier_request</extracomment>
        <translation>Jemand hat bei einem früheren Termin darum gebeten, und es steht noch aus: %1.</translation>
    </message>
    <message>
        <source>Somebody asked for this at cylinder %1 at an earlier visit, and it is still to do: %2.</source>
        <extracomment>next.earlier_request_of</extracomment>
        <translation>Jemand hat bei einem früheren Termin an Zylinder %1 darum gebeten, und es steht noch aus: %2.</translation>
    </message>
    <message>
        <source>Name the leak-down tester and its restrictor: without them nobody can tell a fault from a cylinder that seals well.</source>
        <extracomment>next.name_tester</extracomment>
        <translation>Den Druckverlustprüfer und seine Drosselbohrung angeben: Ohne sie kann niemand einen Fehler von einem gut dichtenden Zylinder unterscheiden.</translation>
    </message>
    <message>
        <source>Look up in the engine&apos;s manual what the crankcase must hold and for how long, and put it on the engine card.</source>
        <extracomment>next.crankcase_limit</extracomment>
        <translation>Im Handbuch des Motors nachsehen, was das Kurbelgehäuse wie lange halten muss, und es auf die Motorkarte setzen.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; first: %2.</source>
        <extracomment>next.tester_check</extracomment>
        <translation>Erst „%1“ prüfen: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; failed its check (%2): put it right or take another one, then read again what was read on it.</source>
        <extracomment>next.tester_failed</extracomment>
        <translation>„%1“ hat die Prüfung nicht bestanden (%2): in Ordnung bringen oder ein anderes nehmen, dann erneut ablesen, was damit abgelesen wurde.</translation>
    </message>
    <message>
        <source>No test is outstanding: read the findings and decide.</source>
        <extracomment>next.plan</extracomment>
        <translation>Keine Prüfung steht aus: den Befund lesen und entscheiden.</translation>
    </message>
    <message>
        <source>No test is outstanding. What to do about it stands in the plan.</source>
        <extracomment>next.planned</extracomment>
        <translation>Keine Prüfung steht aus. Was zu tun ist, steht im Plan.</translation>
    </message>
    <message>
        <source>No test is outstanding and nothing is a fault yet. Measure again later: what counts is whether it grows.</source>
        <extracomment>next.watch</extracomment>
        <translation>Keine Prüfung steht aus, und nichts ist bisher ein Fehler. Später erneut messen: Was zählt, ist, ob es mehr wird.</translation>
    </message>
    <message>
        <source>Nothing outstanding.</source>
        <extracomment>next.nothing</extracomment>
        <translation>Nichts steht aus.</translation>
    </message>
    <message>
        <source>Not done: %1. %2</source>
        <extracomment>weak.step</extracomment>
        <translation>Nicht getan: %1. %2</translation>
    </message>
    <message>
        <source>Steps of Prepare that readings hang on and that were not marked either way: %1.</source>
        <extracomment>weak.steps_open</extracomment>
        <translation>Schritte der Vorbereitung, von denen Messwerte abhängen und die weder so noch so gekennzeichnet sind: %1.</translation>
    </message>
    <message>
        <source>The throttle was closed: every cylinder reads low.</source>
        <extracomment>weak.throttle_closed</extracomment>
        <translation>Die Drosselklappe war geschlossen: Jeder Zylinder zeigt zu wenig.</translation>
    </message>
    <message>
        <source>The throttle was closed: every cylinder reads low, by %1 to %2 as the model has it.</source>
        <extracomment>weak.throttle_closed_by</extracomment>
        <translation>Die Drosselklappe war geschlossen: Jeder Zylinder zeigt zu wenig, nach dem Modell um %1 bis %2.</translation>
    </message>
    <message>
        <source>The battery showed %1: a slow starter makes every cylinder read low, by about %2 as the model has it.</source>
        <extracomment>weak.battery_by</extracomment>
        <translation>Die Batterie zeigte %1: Ein langsamer Anlasser lässt jeden Zylinder zu wenig zeigen, nach dem Modell um etwa %2.</translation>
    </message>
    <message>
        <source>The engine was cold: it reads about %1 lower than warm, as the model has it.</source>
        <extracomment>weak.cold_by</extracomment>
        <translation>Der Motor war kalt: Er zeigt nach dem Modell etwa %1 weniger als warm.</translation>
    </message>
    <message>
        <source>The volume before the check valve takes about %1 off every reading. It is put back before a factory limit judges them; its doubt stays.</source>
        <extracomment>weak.hose</extracomment>
        <translation>Das Volumen vor dem Rückschlagventil nimmt von jedem Messwert etwa %1 weg. Bevor ein Werksgrenzwert darüber urteilt, wird es wieder dazugerechnet; die Unsicherheit daraus bleibt.</translation>
    </message>
    <message>
        <source>A tyre-valve core opens late and takes about %1 off every reading, as the model has it.</source>
        <extracomment>weak.tyre_core</extracomment>
        <translation>Ein Reifenventileinsatz öffnet spät und nimmt nach dem Modell von jedem Messwert etwa %1 weg.</translation>
    </message>
    <message>
        <source>The battery showed %1: a slow starter makes every cylinder read low.</source>
        <extracomment>weak.battery</extracomment>
        <translation>Die Batterie zeigte %1: Ein langsamer Anlasser lässt jeden Zylinder zu wenig zeigen.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 lower when it was measured again at the end: the battery may have been tiring, and cylinders measured late may read too low.</source>
        <extracomment>weak.drift_lower</extracomment>
        <translation>Zylinder %1 zeigte %2 weniger, als er am Ende noch einmal gemessen wurde: Die Batterie kann nachgelassen haben, und spät gemessene Zylinder zeigen vielleicht zu wenig.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 higher when it was measured again at the end: the engine may have warmed up, and cylinders measured late may read too high.</source>
        <extracomment>weak.drift_higher</extracomment>
        <translation>Zylinder %1 zeigte %2 mehr, als er am Ende noch einmal gemessen wurde: Der Motor kann warm geworden sein, und spät gemessene Zylinder zeigen vielleicht zu viel.</translation>
    </message>
    <message>
        <source>Cold or warm is not noted: a cold engine reads about 10 % lower.</source>
        <extracomment>weak.heat_unknown</extracomment>
        <translation>Kalt oder warm ist nicht notiert: Ein kalter Motor zeigt etwa 10 % weniger.</translation>
    </message>
    <message>
        <source>Which gauge was used for the %1 is not noted: its uncertainty is assumed.</source>
        <extracomment>weak.tester_unknown</extracomment>
        <translation>Welches Manometer benutzt wurde, ist nicht notiert (%1): Seine Unsicherheit ist angenommen.</translation>
    </message>
    <message>
        <source>%1: the self-check &quot;%2&quot; was never done.</source>
        <extracomment>weak.self_check_missing</extracomment>
        <translation>%1: Die Selbstprüfung „%2“ wurde nie gemacht.</translation>
    </message>
    <message>
        <source>%1: the self-check &quot;%2&quot; failed. Put the tester right before blaming the engine.</source>
        <extracomment>weak.self_check_failed</extracomment>
        <translation>%1: Die Selbstprüfung „%2“ ist nicht bestanden. Das Prüfgerät in Ordnung bringen, bevor der Motor beschuldigt wird.</translation>
    </message>
    <message>
        <source>The cylinders were read on different gauges: what lies between them may be the gauges&apos; own errors. Read all of them on one.</source>
        <extracomment>weak.gauges_differ</extracomment>
        <translation>Die Zylinder wurden an verschiedenen Manometern abgelesen: Was zwischen ihnen liegt, kann von den Manometern selbst kommen. Alle an einem ablesen.</translation>
    </message>
    <message>
        <source>%1: the gauge&apos;s class is not known; %2 of its full scale is assumed.</source>
        <extracomment>weak.class_unknown</extracomment>
        <translation>%1: Die Klasse des Manometers ist nicht bekannt; angenommen sind %2 seines Skalenendwerts.</translation>
    </message>
    <message>
        <source>%1 has one gauge: the regulator may sag under flow without being seen.</source>
        <extracomment>weak.one_gauge</extracomment>
        <translation>%1 hat nur ein Manometer: Der Druckregler kann bei Durchfluss unbemerkt nachgeben.</translation>
    </message>
    <message>
        <source>%1: the restrictor is not known; %2 is assumed.</source>
        <extracomment>weak.restrictor_unknown</extracomment>
        <translation>%1: Die Drosselbohrung ist nicht bekannt; angenommen ist %2.</translation>
    </message>
    <message>
        <source>Cylinder %1 was read after %2 pulls, when a gauge like this shows about %3 of what it comes to.</source>
        <extracomment>weak.still_rising</extracomment>
        <translation>Zylinder %1 wurde nach %2 Hüben abgelesen; da zeigt ein solches Manometer etwa %3 dessen, worauf es am Ende kommt.</translation>
    </message>
    <message>
        <source>Cylinder %1 was read after %2 pulls; makers read after %3 or more.</source>
        <extracomment>weak.few_pulls</extracomment>
        <translation>Zylinder %1 wurde nach %2 Hüben abgelesen; Hersteller lesen nach %3 oder mehr ab.</translation>
    </message>
    <message>
        <source>At two set pressures it leaks like a hole (exponent %1).</source>
        <extracomment>law.hole</extracomment>
        <translation>Bei zwei eingestellten Drücken verhält sich das Leck wie ein Loch (Exponent %1).</translation>
    </message>
    <message>
        <source>At two set pressures it leaks like a narrow gap (exponent %1).</source>
        <extracomment>law.gap</extracomment>
        <translation>Bei zwei eingestellten Drücken verhält sich das Leck wie ein enger Spalt (Exponent %1).</translation>
    </message>
    <message>
        <source>The higher set pressure seats the leak: its area gets smaller (exponent %1).</source>
        <extracomment>law.seats</extracomment>
        <translation>Der höhere eingestellte Druck drückt das Leck zu: Seine Fläche wird kleiner (Exponent %1).</translation>
    </message>
    <message>
        <source>The higher set pressure opens the leak further: its area grows (exponent %1).</source>
        <extracomment>law.opens</extracomment>
        <translation>Der höhere eingestellte Druck öffnet das Leck weiter: Seine Fläche wächst (Exponent %1).</translation>
    </message>
    <message>
        <source>At two set pressures it leaks neither like a hole nor like a narrow gap (exponent %1).</source>
        <extracomment>law.between</extracomment>
        <translation>Bei zwei eingestellten Drücken verhält sich das Leck weder wie ein Loch noch wie ein enger Spalt (Exponent %1).</translation>
    </message>
    <message>
        <source>Two set pressures, but the gauges can&apos;t tell a hole from a narrow gap (exponent %1).</source>
        <extracomment>law.undecided</extracomment>
        <translation>Zwei eingestellte Drücke, aber die Manometer können ein Loch nicht von einem engen Spalt unterscheiden (Exponent %1).</translation>
    </message>
    <message>
        <source>Below zero? Look at the needle at rest.</source>
        <extracomment>pad.negative</extracomment>
        <translation>Unter null? Den Zeiger in Ruhe ansehen.</translation>
    </message>
    <message>
        <source>Nothing at all? Is the gauge screwed in and its check valve fitted, and was the engine cranked?</source>
        <extracomment>pad.zero</extracomment>
        <translation>Gar nichts? Ist das Manometer eingeschraubt, sein Rückschlagventil drin, und wurde der Motor durchgedreht?</translation>
    </message>
    <message>
        <source>Wet %1, but dry %2: oil can&apos;t lower a reading. Test again, or look for a slip of the finger.</source>
        <extracomment>pad.wet_below_dry</extracomment>
        <translation>Nass %1, aber trocken %2: Öl kann einen Messwert nicht senken. Erneut prüfen, oder nach einem Tippfehler sehen.</translation>
    </message>
    <message>
        <source>%1 is over the gauge&apos;s scale of %2. Is the decimal point right?</source>
        <extracomment>pad.over_scale</extracomment>
        <translation>%1 liegt über der Skala des Manometers von %2. Stimmt das Komma?</translation>
    </message>
    <message>
        <source>Held %1 is over the set %2. Were the two swapped?</source>
        <extracomment>pad.held_over_set</extracomment>
        <translation>Gehalten (%1) liegt über eingestellt (%2). Wurden die beiden vertauscht?</translation>
    </message>
    <message>
        <source>Type the set pressure too: leakage needs both.</source>
        <extracomment>pad.no_set</extracomment>
        <translation>Auch den eingestellten Druck eingeben: Der Druckverlust braucht beides.</translation>
    </message>
    <message>
        <source>Set %1; this tester is usually set to %2. Is that meant?</source>
        <extracomment>pad.set_differs</extracomment>
        <translation>%1 eingestellt; dieses Prüfgerät steht sonst auf %2. Ist das so gemeint?</translation>
    </message>
    <message>
        <source>First puff %1 is over the final reading %2. Were the two swapped?</source>
        <extracomment>pad.first_over_final</extracomment>
        <translation>Erster Hub %1 liegt über dem Endwert %2. Wurden die beiden vertauscht?</translation>
    </message>
    <message>
        <source>%1 is far above what to expect here (about %2). Is the decimal point right?</source>
        <extracomment>pad.slip_high</extracomment>
        <translation>%1 liegt weit über dem hier zu Erwartenden (etwa %2). Stimmt das Komma?</translation>
    </message>
    <message>
        <source>%1 is far below what to expect here (about %2). Is the decimal point right?</source>
        <extracomment>pad.slip_low</extracomment>
        <translation>%1 liegt weit unter dem hier zu Erwartenden (etwa %2). Stimmt das Komma?</translation>
    </message>
    <message>
        <source>Very little held. Is it the right TDC? If air comes at intake and exhaust, turn the crank one full turn.</source>
        <extracomment>pad.very_low_held</extracomment>
        <translation>Sehr wenig gehalten. Ist es der richtige OT? Kommt Luft an Einlass und Auslass, die Kurbelwelle eine volle Umdrehung weiterdrehen.</translation>
    </message>
    <message>
        <source>A fall of %1 is within the gauge&apos;s own error.</source>
        <extracomment>pad.within_gauge</extracomment>
        <translation>Ein Abfall um %1 liegt im Fehler des Manometers selbst.</translation>
    </message>
    <message>
        <source>The needle stands at zero.</source>
        <extracomment>check.zero</extracomment>
        <translation>Der Zeiger steht auf null.</translation>
    </message>
    <message>
        <source>The needle stands %1 off zero. Kept with this check, it counts in the doubt of every reading.</source>
        <extracomment>check.zero_off</extracomment>
        <translation>Der Zeiger steht %1 neben null. Mit dieser Prüfung behalten, zählt das zur Unsicherheit jedes Messwerts.</translation>
    </message>
    <message>
        <source>%1 apart; this gauge&apos;s class allows %2.</source>
        <extracomment>check.reference_within</extracomment>
        <translation>%1 auseinander; die Klasse dieses Manometers lässt %2 zu.</translation>
    </message>
    <message>
        <source>%1 apart, more than the %2 that this gauge&apos;s class allows: trust its readings less, or replace it.</source>
        <extracomment>check.reference_off</extracomment>
        <translation>%1 auseinander, mehr als die %2, die die Klasse dieses Manometers zulässt: seinen Messwerten weniger trauen oder es ersetzen.</translation>
    </message>
    <message>
        <source>It holds: %1 lost.</source>
        <extracomment>check.outlet_holds</extracomment>
        <translation>Es hält: %1 verloren.</translation>
    </message>
    <message>
        <source>%1 lost with the outlet closed: the tester itself would show %2 leakage on a cylinder that seals well.</source>
        <extracomment>check.outlet_leaks</extracomment>
        <translation>%1 verloren bei geschlossenem Ausgang: Das Prüfgerät selbst würde an einem Zylinder, der gut dichtet, %2 Druckverlust zeigen.</translation>
    </message>
    <message>
        <source>By this hole the restrictor is one of %1. Type it on the card: readings are converted with it.</source>
        <extracomment>check.restrictor</extracomment>
        <translation>Nach diesem Prüfloch misst die Drosselbohrung %1. Auf der Karte eintragen: Damit werden Messwerte umgerechnet.</translation>
    </message>
    <message>
        <source>By this hole the restrictor is one of %1; the card says %2: they fit.</source>
        <extracomment>check.restrictor_as_card</extracomment>
        <translation>Nach diesem Prüfloch misst die Drosselbohrung %1; auf der Karte steht %2: Das passt zusammen.</translation>
    </message>
    <message>
        <source>By this hole the restrictor is one of %1; the card says %2. Readings are converted with the card&apos;s: put it right there.</source>
        <extracomment>check.restrictor_off</extracomment>
        <translation>Nach diesem Prüfloch misst die Drosselbohrung %1; auf der Karte steht %2. Umgerechnet wird mit der auf der Karte: dort berichtigen.</translation>
    </message>
    <message>
        <source>%1 of oil fills %2 of this chamber: that can lock the engine and bend a rod. Put in less, and turn the engine by hand before it is cranked.</source>
        <extracomment>pad.oil_locks</extracomment>
        <translation>%1 Öl füllen %2 dieses Brennraums: Das kann den Motor blockieren und ein Pleuel verbiegen. Weniger einfüllen und den Motor von Hand drehen, bevor der Anlasser ihn durchdreht.</translation>
    </message>
    <message>
        <source>%1 is a lot of oil: more than %2 in a cylinder can lock the engine and bend a rod. Is it meant?</source>
        <extracomment>pad.much_oil</extracomment>
        <translation>%1 ist viel Öl: mehr als %2 in einem Zylinder kann den Motor blockieren und ein Pleuel verbiegen. Ist das gemeint?</translation>
    </message>
    <message>
        <source>Set %1 is too much for most crankcases: above %2 seals are pushed out of their seats. Only the few psi that the engine&apos;s manual names.</source>
        <extracomment>pad.crankcase_high</extracomment>
        <translation>%1 eingestellt ist für die meisten Kurbelgehäuse zu viel: Über %2 werden Dichtringe aus ihrem Sitz gedrückt. Nur die wenigen Zehntel bar, die das Handbuch des Motors nennt.</translation>
    </message>
    <message>
        <source>No oil into a diesel: it can lock the engine and bend a rod.</source>
        <extracomment>pad.diesel_wet</extracomment>
        <translation>Kein Öl in einen Diesel: Es kann den Motor blockieren und ein Pleuel verbiegen.</translation>
    </message>
    <message>
        <source>Factory range here: %1 to %2.</source>
        <extracomment>fact.limit_range</extracomment>
        <translation>Werksbereich hier: %1 bis %2.</translation>
    </message>
    <message>
        <source>Factory limit here: %1.</source>
        <extracomment>fact.limit_lowest</extracomment>
        <translation>Werksgrenzwert hier: %1.</translation>
    </message>
    <message>
        <source>First puff %1 of the final reading: as in a cylinder that seals well.</source>
        <extracomment>fact.first_usual</extracomment>
        <translation>Erster Hub %1 des Endwerts: wie bei einem gut dichtenden Zylinder.</translation>
    </message>
    <message>
        <source>First puff only %1 of the final reading: it builds up slowly, as leaking rings do.</source>
        <extracomment>fact.first_slow</extracomment>
        <translation>Erster Hub nur %1 des Endwerts: Es baut sich langsam auf, wie bei undichten Kolbenringen.</translation>
    </message>
    <message>
        <source>First puff %1 of the final reading already: it hardly builds up.</source>
        <extracomment>fact.first_stays</extracomment>
        <translation>Erster Hub schon %1 des Endwerts: Es baut sich kaum auf.</translation>
    </message>
    <message>
        <source>The volume of %1 of oil alone explains a rise of %2 to %3.</source>
        <extracomment>fact.oil_volume</extracomment>
        <translation>Das Volumen von %1 Öl allein erklärt einen Anstieg von %2 bis %3.</translation>
    </message>
    <message>
        <source>After %1 pulls a cylinder that seals well shows about %2 of what this gauge comes to: crank on until the needle stands.</source>
        <extracomment>fact.still_rising</extracomment>
        <translation>Nach %1 Hüben zeigt ein dichter Zylinder etwa %2 dessen, worauf dieses Manometer am Ende kommt: weiter durchdrehen, bis der Zeiger steht.</translation>
    </message>
    <message>
        <source>Only %1 pulls: makers read after %2 or more. Crank on until the needle stands.</source>
        <extracomment>fact.few_pulls</extracomment>
        <translation>Nur %1 Hübe: Hersteller lesen nach %2 oder mehr ab. Weiter durchdrehen, bis der Zeiger steht.</translation>
    </message>
    <message>
        <source>The volume before the check valve takes off about %1: without it this would be about %2.</source>
        <extracomment>fact.without_hose</extracomment>
        <translation>Das Volumen vor dem Rückschlagventil nimmt etwa %1 weg: Ohne es wären es etwa %2.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %1 to %2 of a cylinder that seals well.</source>
        <extracomment>model.healthy</extracomment>
        <translation>Kein Werkswert; das Modell erwartet %1 bis %2 von einem gut dichtenden Zylinder.</translation>
    </message>
    <message>
        <source>No expectation: at a compression ratio of %1, above 14, the model reads far over what makers print. Use the maker&apos;s figure.</source>
        <extracomment>model.above_ratio</extracomment>
        <translation>Keine Erwartung: Bei einer Verdichtung von %1, über 14, liegt das Modell weit über dem, was Hersteller angeben. Den Wert des Herstellers nehmen.</translation>
    </message>
    <message>
        <source>The model gives no expectation. %1</source>
        <extracomment>model.refused</extracomment>
        <translation>Das Modell gibt keine Erwartung. %1</translation>
    </message>
    <message>
        <source>The decompressor is at work: nothing is expected of the readings.</source>
        <extracomment>model.decompressor</extracomment>
        <translation>Der Dekompressor ist wirksam: Von den Messwerten wird nichts erwartet.</translation>
    </message>
    <message>
        <source>With a working decompressor such an engine reads about %1 to %2 when nothing leaks. This is no limit.</source>
        <extracomment>model.released</extracomment>
        <translation>Mit arbeitendem Dekompressor zeigt ein solcher Motor etwa %1 bis %2, wenn nichts undicht ist. Das ist kein Grenzwert.</translation>
    </message>
    <message>
        <source>The induction was taken off: nothing throttles the air, and the reading stands as with the throttle held open.</source>
        <extracomment>model.induction_off</extracomment>
        <translation>Die Ansaugung war abgebaut: Nichts drosselt die Luft, und der Messwert gilt wie bei offen gehaltener Drosselklappe.</translation>
    </message>
    <message>
        <source>No factory figure. To work one out, the model needs from the engine card: %1.</source>
        <extracomment>model.missing_one</extracomment>
        <translation>Kein Werkswert. Um einen zu errechnen, braucht das Modell von der Motorkarte: %1.</translation>
    </message>
    <message>
        <source>No factory figure. To work one out, the model needs from the engine card: %1 and %2.</source>
        <extracomment>model.missing_two</extracomment>
        <translation>Kein Werkswert. Um einen zu errechnen, braucht das Modell von der Motorkarte: %1 und %2.</translation>
    </message>
    <message>
        <source>No factory figure. To work one out, the model needs from the engine card: %1, %2 and %3.</source>
        <extracomment>model.missing_three</extracomment>
        <translation>Kein Werkswert. Um einen zu errechnen, braucht das Modell von der Motorkarte: %1, %2 und %3.</translation>
    </message>
    <message>
        <source>From the readings.</source>
        <extracomment>source.typed</extracomment>
        <translation>Aus den Messwerten.</translation>
    </message>
    <message>
        <source>Published: %1.</source>
        <extracomment>source.published</extracomment>
        <translation>Veröffentlicht: %1.</translation>
    </message>
    <message>
        <source>Common practice of the trade, no published source.</source>
        <extracomment>source.common_practice</extracomment>
        <translation>Übliche Praxis der Branche, keine veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>A working assumption of this app. %1</source>
        <extracomment>source.assumption</extracomment>
        <translation>Eine Annahme dieser App. %1</translation>
    </message>
    <message>
        <source>Physics: %1.</source>
        <extracomment>source.physics</extracomment>
        <translation>Physik: %1.</translation>
    </message>
    <message>
        <source>Engine card (%1) %2</source>
        <extracomment>source.card</extracomment>
        <translation>Motorkarte (%1) %2</translation>
    </message>
    <message>
        <source>Mean of %1 readings; all of them count.</source>
        <extracomment>note.mean</extracomment>
        <translation>Mittel aus %1 Messwerten; alle zählen.</translation>
    </message>
    <message>
        <source>Few repeats know their scatter badly: a usual one of %1 counts with it, as %2 further repeats.</source>
        <extracomment>note.repeat_scatter</extracomment>
        <translation>Wenige Wiederholungen kennen ihre Streuung schlecht: Eine übliche von %1 zählt mit, wie %2 weitere Wiederholungen.</translation>
    </message>
    <message>
        <source>One reading: a scatter of %1 is assumed.</source>
        <extracomment>note.one_reading</extracomment>
        <translation>Ein einziger Messwert: Eine Streuung von %1 ist angenommen.</translation>
    </message>
    <message>
        <source>One reading: the leak&apos;s area is assumed to vary by %1.</source>
        <extracomment>note.leak_repeat</extracomment>
        <translation>Ein einziger Messwert: Angenommen ist, dass die Leckfläche um %1 schwankt.</translation>
    </message>
    <message>
        <source>The leak itself is never quite the same twice, and the needle moves with it: by about %1 here, most where about half is lost. That part of the ± is not the gauge&apos;s.</source>
        <extracomment>note.leak_moves</extracomment>
        <translation>Das Leck selbst ist nie zweimal ganz gleich, und der Zeiger geht mit: hier um etwa %1, am meisten dort, wo etwa die Hälfte verloren geht. Dieser Teil des ± kommt nicht vom Manometer.</translation>
    </message>
    <message>
        <source>Readings put right first for what stood in their way, as limits mean them.</source>
        <extracomment>note.put_right</extracomment>
        <translation>Messwerte zuerst um das berichtigt, was ihnen im Weg stand, so wie Grenzwerte sie meinen.</translation>
    </message>
    <message>
        <source>Sizes and angles are taken as exact to half the last digit typed.</source>
        <extracomment>note.digits</extracomment>
        <translation>Maße und Winkel gelten als genau bis auf eine halbe Einheit der letzten eingetippten Stelle.</translation>
    </message>
    <message>
        <source>The gauge&apos;s class is not known: %1 of its full scale is assumed.</source>
        <extracomment>note.class_unknown</extracomment>
        <translation>Die Klasse des Manometers ist nicht bekannt: Angenommen sind %1 seines Skalenendwerts.</translation>
    </message>
    <message>
        <source>Which gauge it was is not noted: its error is assumed.</source>
        <extracomment>note.tester_unknown</extracomment>
        <translation>Welches Manometer es war, ist nicht notiert: Sein Fehler ist angenommen.</translation>
    </message>
    <message>
        <source>The tester&apos;s restrictor is not known: %1 is assumed.</source>
        <extracomment>note.restrictor_unknown</extracomment>
        <translation>Die Drosselbohrung des Prüfgeräts ist nicht bekannt: Angenommen ist %1.</translation>
    </message>
    <message>
        <source>The restrictor&apos;s discharge coefficient is taken from the working assumptions unless the tester has its own.</source>
        <extracomment>note.cd_assumed</extracomment>
        <translation>Der Durchflussbeiwert der Drosselbohrung kommt aus den Annahmen, sofern das Prüfgerät keinen eigenen hat.</translation>
    </message>
    <message>
        <source>One gauge: the regulator may sag by up to %1 of the set pressure under flow.</source>
        <extracomment>note.droop</extracomment>
        <translation>Ein Manometer: Der Druckregler kann bei Durchfluss um bis zu %1 des eingestellten Drucks nachgeben.</translation>
    </message>
    <message>
        <source>On a hot engine the leak comes out about 11 % too small.</source>
        <extracomment>note.hot</extracomment>
        <translation>An einem heißen Motor ergibt sich das Leck etwa 11 % zu klein.</translation>
    </message>
    <message>
        <source>Hole and narrow gap are two example laws, not bounds: pressure can also seat a ring or open a gasket.</source>
        <extracomment>note.law_range</extracomment>
        <translation>Loch und enger Spalt sind zwei Beispielgesetze, keine Grenzen: Druck kann auch einen Kolbenring anlegen oder eine Dichtung öffnen.</translation>
    </message>
    <message>
        <source>The shop&apos;s altitude is not known: not scaled.</source>
        <extracomment>note.altitude_unknown</extracomment>
        <translation>Die Höhe der Werkstatt ist nicht bekannt: nicht umgerechnet.</translation>
    </message>
    <message>
        <source>Nothing was held: the leak is larger than this tester can tell.</source>
        <extracomment>note.wide_open</extracomment>
        <translation>Nichts wurde gehalten: Das Leck ist größer, als dieses Prüfgerät erkennen kann.</translation>
    </message>
    <message>
        <source>Nothing was lost that this gauge could show.</source>
        <extracomment>note.none_lost</extracomment>
        <translation>Es ging nichts verloren, was dieses Manometer zeigen könnte.</translation>
    </message>
    <message>
        <source>The rod&apos;s length is not on the card: %1 strokes are assumed.</source>
        <extracomment>note.rod_guessed</extracomment>
        <translation>Die Pleuellänge steht nicht auf der Karte: Angenommen ist das %1-Fache des Hubs.</translation>
    </message>
    <message>
        <source>The compression ratio is guessed: it may be out by %1.</source>
        <extracomment>note.ratio_guessed</extracomment>
        <translation>Die Verdichtung ist geschätzt: Sie kann um %1 falsch sein.</translation>
    </message>
    <message>
        <source>The intake closing is not on the card: %1 after bottom dead centre is assumed, %2 to either side.</source>
        <extracomment>note.closing_assumed</extracomment>
        <translation>Der Einlassschluss steht nicht auf der Karte: Angenommen ist %1 nach dem unteren Totpunkt, %2 nach jeder Seite.</translation>
    </message>
    <message>
        <source>The exhaust port&apos;s closing is not on the card: %1 after bottom dead centre is assumed, %2 to either side.</source>
        <extracomment>note.port_closing_assumed</extracomment>
        <translation>Der Auslassschlitzschluss steht nicht auf der Karte: Angenommen ist %1 nach dem unteren Totpunkt, %2 nach jeder Seite.</translation>
    </message>
    <message>
        <source>The closing is given at a lift: on its seat the valve closes %1 to %2 later.</source>
        <extracomment>note.closing_at_lift</extracomment>
        <translation>Der Schluss ist bei einem Hub angegeben: Im Sitz schließt das Ventil %1 bis %2 später.</translation>
    </message>
    <message>
        <source>Whether the closing is meant at the seat or at a lift is not on the card: from a lift it would be %1 to %2 later.</source>
        <extracomment>note.closing_lift_unknown</extracomment>
        <translation>Ob der Schluss im Sitz oder bei einem Hub gemeint ist, steht nicht auf der Karte: Ab einem Hub wäre er %1 bis %2 später.</translation>
    </message>
    <message>
        <source>Variable valve timing: the closing may lie %1 to either side.</source>
        <extracomment>note.timing_variable</extracomment>
        <translation>Variable Steuerzeiten: Der Schluss kann %1 nach jeder Seite liegen.</translation>
    </message>
    <message>
        <source>The cranking speed is not noted: it is assumed, and may be out by %1.</source>
        <extracomment>note.speed_assumed</extracomment>
        <translation>Die Anlasserdrehzahl ist nicht notiert: Sie ist angenommen und kann um %1 falsch sein.</translation>
    </message>
    <message>
        <source>Cold or warm is not noted: taken as cold.</source>
        <extracomment>note.heat_unknown</extracomment>
        <translation>Kalt oder warm ist nicht notiert: gilt als kalt.</translation>
    </message>
    <message>
        <source>Which gauge it was is not noted: hose and gauge of %1 behind a check valve at the plug hole are assumed.</source>
        <extracomment>note.gauge_assumed</extracomment>
        <translation>Welches Manometer es war, ist nicht notiert: Angenommen sind Schlauch und Manometer mit %1 hinter einem Rückschlagventil am Kerzenloch.</translation>
    </message>
    <message>
        <source>The volume of hose and gauge is not on the tester&apos;s card: %1 is assumed.</source>
        <extracomment>note.hose_assumed</extracomment>
        <translation>Das Volumen von Schlauch und Manometer steht nicht auf der Karte des Prüfgeräts: Angenommen ist %1.</translation>
    </message>
    <message>
        <source>Where the check valve sits is not on the tester&apos;s card: the plug hole is assumed.</source>
        <extracomment>note.valve_place_assumed</extracomment>
        <translation>Der Sitz des Rückschlagventils steht nicht auf der Karte des Prüfgeräts: Angenommen ist das Kerzenloch.</translation>
    </message>
    <message>
        <source>How much oil went in is not noted: %1 is assumed.</source>
        <extracomment>note.oil_assumed</extracomment>
        <translation>Wie viel Öl eingefüllt wurde, ist nicht notiert: Angenommen ist %1.</translation>
    </message>
    <message>
        <source>Friction holds the crank in part; it is left out.</source>
        <extracomment>note.friction</extracomment>
        <translation>Reibung hält die Kurbelwelle zum Teil; sie bleibt unberücksichtigt.</translation>
    </message>
    <message>
        <source>The model itself may be out by %1: not yet counted on real engines.</source>
        <extracomment>note.model_doubt</extracomment>
        <translation>Das Modell selbst kann um %1 falsch sein: noch nicht an wirklichen Motoren ausgezählt.</translation>
    </message>
    <message>
        <source>The effective area of the tester&apos;s restrictor may be out by %1.</source>
        <extracomment>note.restrictor_doubt</extracomment>
        <translation>Die wirksame Fläche der Drosselbohrung des Prüfgeräts kann um %1 falsch sein.</translation>
    </message>
    <message>
        <source>%1: %5 at %2. In range up to %3, a fault above %4.</source>
        <extracomment>note.band</extracomment>
        <translation>%1: %5 bei %2. Im Bereich bis %3, ein Fehler über %4.</translation>
    </message>
    <message>
        <source>The starter slows down where the gas pushes back: %1 of the mean speed is reckoned with.</source>
        <extracomment>note.speed_dip</extracomment>
        <translation>Der Anlasser wird langsamer, wo das Gas zurückdrückt: Gerechnet wird mit %1 der mittleren Drehzahl.</translation>
    </message>
    <message>
        <source>Left out: waves in the ports, oil mist, crevices.</source>
        <extracomment>note.model_leaves_out</extracomment>
        <translation>Nicht berücksichtigt: Schwingungen in den Kanälen, Ölnebel, Spalte.</translation>
    </message>
    <message>
        <source>leakage</source>
        <extracomment>calc:leakage</extracomment>
        <translation>Druckverlust</translation>
    </message>
    <message>
        <source>round hole that would leak as much</source>
        <extracomment>calc:leak_hole</extracomment>
        <translation>rundes Loch mit gleichem Verlust</translation>
    </message>
    <message>
        <source>leak area</source>
        <extracomment>calc:leak_area</extracomment>
        <translation>Leckfläche</translation>
    </message>
    <message>
        <source>free air leaking out</source>
        <extracomment>calc:flow</extracomment>
        <translation>austretende Luft (Umgebungsdruck)</translation>
    </message>
    <message>
        <source>on the other tester, if it leaks like a hole</source>
        <extracomment>calc:on_other_hole</extracomment>
        <translation>auf dem anderen Prüfgerät, wenn es wie ein Loch leckt</translation>
    </message>
    <message>
        <source>on the other tester, if it leaks like a narrow gap</source>
        <extracomment>calc:on_other_gap</extracomment>
        <translation>auf dem anderen Prüfgerät, wenn es wie ein enger Spalt leckt</translation>
    </message>
    <message>
        <source>exponent of the leak&apos;s law</source>
        <extracomment>calc:law_exponent</extracomment>
        <translation>Exponent des Leckgesetzes</translation>
    </message>
    <message>
        <source>leakage at the second set pressure</source>
        <extracomment>calc:second_leakage</extracomment>
        <translation>Druckverlust beim zweiten eingestellten Druck</translation>
    </message>
    <message>
        <source>leak area at the second set pressure</source>
        <extracomment>calc:second_leak_area</extracomment>
        <translation>Leckfläche beim zweiten eingestellten Druck</translation>
    </message>
    <message>
        <source>restrictor diameter</source>
        <extracomment>calc:restrictor</extracomment>
        <translation>Durchmesser der Drosselbohrung</translation>
    </message>
    <message>
        <source>restrictor&apos;s effective area</source>
        <extracomment>calc:restrictor_area</extracomment>
        <translation>wirksame Fläche der Drosselbohrung</translation>
    </message>
    <message>
        <source>had nothing lain before the check valve</source>
        <extracomment>calc:without_hose</extracomment>
        <translation>ohne Volumen vor dem Rückschlagventil</translation>
    </message>
    <message>
        <source>taken off by the volume before the check valve</source>
        <comment>calc:hose_loss</comment>
        <translation>vom Volumen vor dem Rückschlagventil weggenommen</translation>
    </message>
    <message>
        <source>multiply a reading by</source>
        <extracomment>calc:correction</extracomment>
        <translation>Messwert malnehmen mit</translation>
    </message>
    <message>
        <source>rise that the oil&apos;s volume alone explains</source>
        <extracomment>calc:oil_rise</extracomment>
        <translation>Anstieg, den das Ölvolumen allein erklärt</translation>
    </message>
    <message>
        <source>wet reading by volume alone</source>
        <extracomment>calc:wet_reading</extracomment>
        <translation>nasser Messwert allein durch das Volumen</translation>
    </message>
    <message>
        <source>limit here</source>
        <extracomment>calc:limit_here</extracomment>
        <translation>Grenzwert hier</translation>
    </message>
    <message>
        <source>altitude</source>
        <comment>calc:altitude</comment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>air pressure in the shop</source>
        <extracomment>calc:station_pressure</extracomment>
        <translation>Luftdruck in der Werkstatt</translation>
    </message>
    <message>
        <source>reading of a cylinder that seals well</source>
        <extracomment>calc:healthy</extracomment>
        <translation>Messwert eines gut dichtenden Zylinders</translation>
    </message>
    <message>
        <source>of it on the first puff</source>
        <extracomment>calc:first_share</extracomment>
        <translation>davon beim ersten Hub</translation>
    </message>
    <message>
        <source>the same at the other cranking speed</source>
        <extracomment>calc:slow_reading</extracomment>
        <translation>derselbe bei der anderen Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>taken off by the other cranking speed</source>
        <extracomment>calc:speed_loss</extracomment>
        <translation>nimmt die andere Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>the same with the throttle like that</source>
        <extracomment>calc:throttle_reading</extracomment>
        <translation>derselbe mit der Drosselklappe so</translation>
    </message>
    <message>
        <source>taken off by the throttle</source>
        <extracomment>calc:throttle_loss</extracomment>
        <translation>nimmt die Drosselklappe</translation>
    </message>
    <message>
        <source>torque on the crank</source>
        <comment>calc:torque</comment>
        <translation>Drehmoment an der Kurbelwelle</translation>
    </message>
    <message>
        <source>force at the end of the bar</source>
        <extracomment>calc:force</extracomment>
        <translation>Kraft am Ende des Hebels</translation>
    </message>
    <message>
        <source>pressure</source>
        <extracomment>calc:pressure</extracomment>
        <translation>Druck</translation>
    </message>
    <message>
        <source>length</source>
        <extracomment>calc:length</extracomment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>volume</source>
        <extracomment>calc:volume</extracomment>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>temperature</source>
        <extracomment>calc:temperature</extracomment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>factory limit</source>
        <extracomment>input:limit</extracomment>
        <translation>Werksgrenzwert</translation>
    </message>
    <message>
        <source>air pressure at the shop</source>
        <comment>input:station_pressure</comment>
        <translation>Luftdruck in der Werkstatt</translation>
    </message>
    <message>
        <source>altitude</source>
        <comment>input:altitude</comment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>air pressure at sea level</source>
        <extracomment>input:sea_level</extracomment>
        <translation>Luftdruck auf Meereshöhe</translation>
    </message>
    <message>
        <source>gauge&apos;s full scale</source>
        <extracomment>input:full_scale</extracomment>
        <translation>Skalenendwert des Manometers</translation>
    </message>
    <message>
        <source>gauge&apos;s class</source>
        <extracomment>input:gauge_class</extracomment>
        <translation>Klasse des Manometers</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>input:reading</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <comment>input:compression_ratio</comment>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>first puff</source>
        <extracomment>input:first</extracomment>
        <translation>erster Hub</translation>
    </message>
    <message>
        <source>final reading</source>
        <extracomment>input:final</extracomment>
        <translation>Endwert</translation>
    </message>
    <message>
        <source>lowest cylinder</source>
        <extracomment>input:lowest</extracomment>
        <translation>niedrigster Zylinder</translation>
    </message>
    <message>
        <source>highest cylinder</source>
        <extracomment>input:highest</extracomment>
        <translation>höchster Zylinder</translation>
    </message>
    <message>
        <source>set pressure</source>
        <extracomment>input:set</extracomment>
        <translation>eingestellter Druck</translation>
    </message>
    <message>
        <source>held pressure</source>
        <extracomment>input:held</extracomment>
        <translation>Haltedruck</translation>
    </message>
    <message>
        <source>correction for what stood in the way</source>
        <extracomment>input:put_right</extracomment>
        <translation>Korrektur für das, was im Weg stand</translation>
    </message>
    <message>
        <source>leakage of cylinder</source>
        <extracomment>input:leakage</extracomment>
        <translation>Druckverlust von Zylinder</translation>
    </message>
    <message>
        <source>restrictor</source>
        <extracomment>input:restrictor</extracomment>
        <translation>Drosselbohrung</translation>
    </message>
    <message>
        <source>air pressure</source>
        <extracomment>input:ambient</extracomment>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>other tester&apos;s set pressure</source>
        <extracomment>input:other_set</extracomment>
        <translation>eingestellter Druck des anderen Prüfgeräts</translation>
    </message>
    <message>
        <source>other tester&apos;s restrictor</source>
        <extracomment>input:other_restrictor</extracomment>
        <translation>Drosselbohrung des anderen Prüfgeräts</translation>
    </message>
    <message>
        <source>discharge coefficient</source>
        <extracomment>input:cd</extracomment>
        <translation>Durchflussbeiwert</translation>
    </message>
    <message>
        <source>wet reading</source>
        <extracomment>input:wet</extracomment>
        <translation>nasser Messwert</translation>
    </message>
    <message>
        <source>dry reading</source>
        <extracomment>input:dry</extracomment>
        <translation>trockener Messwert</translation>
    </message>
    <message>
        <source>what it should reach</source>
        <extracomment>input:should_reach</extracomment>
        <translation>was er erreichen sollte</translation>
    </message>
    <message>
        <source>bore</source>
        <extracomment>input:bore</extracomment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>stroke</source>
        <extracomment>input:stroke</extracomment>
        <translation>Hub</translation>
    </message>
    <message>
        <source>rod</source>
        <extracomment>input:rod</extracomment>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>intake closing after bottom dead centre</source>
        <extracomment>input:intake_closing</extracomment>
        <translation>Einlassschluss nach dem unteren Totpunkt</translation>
    </message>
    <message>
        <source>exhaust port closing after bottom dead centre</source>
        <extracomment>input:port_closing</extracomment>
        <translation>Auslassschlitzschluss nach dem unteren Totpunkt</translation>
    </message>
    <message>
        <source>cranking speed</source>
        <comment>input:speed</comment>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>cranking speed with a flat battery</source>
        <extracomment>input:slow_speed</extracomment>
        <translation>Anlasserdrehzahl mit leerer Batterie</translation>
    </message>
    <message>
        <source>the other cranking speed</source>
        <extracomment>input:other_speed</extracomment>
        <translation>die andere Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>pressure at intake closing, of the air&apos;s</source>
        <extracomment>input:fill</extracomment>
        <translation>Druck bei Einlassschluss, Anteil des Luftdrucks</translation>
    </message>
    <message>
        <source>reads as it should, at least</source>
        <extracomment>input:healthy_least</extracomment>
        <translation>zeigt wie es soll, mindestens</translation>
    </message>
    <message>
        <source>reads as it should, at most</source>
        <extracomment>input:healthy_most</extracomment>
        <translation>zeigt wie es soll, höchstens</translation>
    </message>
    <message>
        <source>taken off, at least</source>
        <extracomment>input:loss_least</extracomment>
        <translation>genommen, mindestens</translation>
    </message>
    <message>
        <source>taken off, at most</source>
        <extracomment>input:loss_most</extracomment>
        <translation>genommen, höchstens</translation>
    </message>
    <message>
        <source>version of the working assumptions</source>
        <extracomment>input:assumptions_version</extracomment>
        <translation>Version der Arbeitsannahmen</translation>
    </message>
    <message>
        <source>cylinder walls</source>
        <extracomment>input:walls</extracomment>
        <translation>Zylinderwände</translation>
    </message>
    <message>
        <source>walls of a warm engine</source>
        <extracomment>input:warm_walls</extracomment>
        <translation>Wände eines warmen Motors</translation>
    </message>
    <message>
        <source>hose and gauge</source>
        <extracomment>input:hose</extracomment>
        <translation>Schlauch und Manometer</translation>
    </message>
    <message>
        <source>hose before the check valve</source>
        <extracomment>input:hose_before_valve</extracomment>
        <translation>Schlauch vor dem Rückschlagventil</translation>
    </message>
    <message>
        <source>adapter</source>
        <extracomment>input:adapter</extracomment>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>check valve opens at</source>
        <extracomment>input:valve_opens_at</extracomment>
        <translation>Rückschlagventil öffnet bei</translation>
    </message>
    <message>
        <source>a low-pressure core opens at</source>
        <extracomment>input:easy_valve</extracomment>
        <translation>ein Niederdruckeinsatz öffnet bei</translation>
    </message>
    <message>
        <source>oil put in</source>
        <extracomment>input:oil</extracomment>
        <translation>eingefülltes Öl</translation>
    </message>
    <message>
        <source>least share of it that stays</source>
        <extracomment>input:oil_kept_least</extracomment>
        <translation>kleinster Anteil davon, der bleibt</translation>
    </message>
    <message>
        <source>largest share of it that stays</source>
        <extracomment>input:oil_kept_most</extracomment>
        <translation>größter Anteil davon, der bleibt</translation>
    </message>
    <message>
        <source>other set pressure</source>
        <extracomment>input:other_set_pressure</extracomment>
        <translation>anderer eingestellter Druck</translation>
    </message>
    <message>
        <source>exponent of a narrow gap here</source>
        <extracomment>input:gap_exponent</extracomment>
        <translation>Exponent eines engen Spalts hier</translation>
    </message>
    <message>
        <source>held at it</source>
        <extracomment>input:other_held</extracomment>
        <translation>dabei gehalten</translation>
    </message>
    <message>
        <source>drilled hole</source>
        <comment>input:hole</comment>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>pressure in the cylinder</source>
        <extracomment>input:in_cylinder</extracomment>
        <translation>Druck im Zylinder</translation>
    </message>
    <message>
        <source>angle from top dead centre</source>
        <extracomment>input:off_tdc</extracomment>
        <translation>Winkel vom oberen Totpunkt</translation>
    </message>
    <message>
        <source>least filling with the throttle closed</source>
        <extracomment>input:fill_least</extracomment>
        <translation>kleinste Füllung bei geschlossener Drosselklappe</translation>
    </message>
    <message>
        <source>largest filling with the throttle closed</source>
        <extracomment>input:fill_most</extracomment>
        <translation>größte Füllung bei geschlossener Drosselklappe</translation>
    </message>
    <message>
        <source>earliest closing with the decompressor at work</source>
        <extracomment>input:released_least</extracomment>
        <translation>frühestes Schließen bei arbeitendem Dekompressor</translation>
    </message>
    <message>
        <source>latest closing with the decompressor at work</source>
        <extracomment>input:released_most</extracomment>
        <translation>spätestes Schließen bei arbeitendem Dekompressor</translation>
    </message>
    <message>
        <source>taken off by the volume before the check valve</source>
        <comment>input:hose_loss</comment>
        <translation>vom Volumen vor dem Rückschlagventil weggenommen</translation>
    </message>
    <message>
        <source>torque on the crank</source>
        <comment>input:torque</comment>
        <translation>Drehmoment an der Kurbelwelle</translation>
    </message>
    <message>
        <source>length of the bar</source>
        <comment>input:bar</comment>
        <translation>Länge des Hebels</translation>
    </message>
    <message>
        <source>repaired</source>
        <extracomment>input:part</extracomment>
        <translation>repariert</translation>
    </message>
    <message>
        <source>reads as it is</source>
        <extracomment>input:reads_now</extracomment>
        <translation>zeigt, wie er ist</translation>
    </message>
    <message>
        <source>leaks as it is</source>
        <extracomment>input:leak_now</extracomment>
        <translation>undicht, wie er ist</translation>
    </message>
    <message>
        <source>of that the part, at least</source>
        <extracomment>input:part_least</extracomment>
        <translation>davon das Teil, mindestens</translation>
    </message>
    <message>
        <source>of that the part, at most</source>
        <extracomment>input:part_most</extracomment>
        <translation>davon das Teil, höchstens</translation>
    </message>
    <message>
        <source>a sound part leaks at least</source>
        <extracomment>input:sound_least</extracomment>
        <translation>ein heiles Teil lässt durch, mindestens</translation>
    </message>
    <message>
        <source>a sound part leaks at most</source>
        <extracomment>input:sound_most</extracomment>
        <translation>ein heiles Teil lässt durch, höchstens</translation>
    </message>
    <message>
        <source>to expect, at least</source>
        <extracomment>input:expected_least</extracomment>
        <translation>zu erwarten, mindestens</translation>
    </message>
    <message>
        <source>to expect, in the middle</source>
        <extracomment>input:expected_middle</extracomment>
        <translation>zu erwarten, in der Mitte</translation>
    </message>
    <message>
        <source>to expect, at most</source>
        <extracomment>input:expected_most</extracomment>
        <translation>zu erwarten, höchstens</translation>
    </message>
    <message>
        <source>Its ± comes from</source>
        <extracomment>doubts</extracomment>
        <translation>Das ± kommt von</translation>
    </message>
    <message>
        <source>What makes it so wide, each by itself</source>
        <extracomment>parts</extracomment>
        <translation>Was ihn so weit macht, jedes für sich</translation>
    </message>
    <message>
        <source>share of the oil that stays</source>
        <extracomment>doubt:oil_kept</extracomment>
        <translation>Anteil des Öls, der bleibt</translation>
    </message>
    <message>
        <source>how much a closed throttle takes</source>
        <extracomment>doubt:throttle</extracomment>
        <translation>wie viel eine geschlossene Drosselklappe wegnimmt</translation>
    </message>
    <message>
        <source>closing with the decompressor at work</source>
        <extracomment>doubt:released</extracomment>
        <translation>Schließen mit arbeitendem Dekompressor</translation>
    </message>
    <message>
        <source>how much is taken off</source>
        <extracomment>doubt:loss</extracomment>
        <translation>wie viel abgezogen wird</translation>
    </message>
    <message>
        <source>what else leaks, and the engine itself</source>
        <extracomment>doubt:rest_of_engine</extracomment>
        <translation>was sonst noch undicht ist, und der Motor selbst</translation>
    </message>
    <message>
        <source>how tight the repaired part becomes</source>
        <extracomment>doubt:sound_part</extracomment>
        <translation>wie dicht das reparierte Teil wird</translation>
    </message>
    <message>
        <source>one day to the next</source>
        <extracomment>doubt:day</extracomment>
        <translation>von einem Tag zum anderen</translation>
    </message>
    <message>
        <source>gauge, and one test to the next</source>
        <extracomment>doubt:gauge_and_test</extracomment>
        <translation>Manometer, und von einer Prüfung zur anderen</translation>
    </message>
    <message>
        <source>gauge, its class and zero</source>
        <extracomment>doubt:gauge</extracomment>
        <translation>Manometer, Klasse und Nullpunkt</translation>
    </message>
    <message>
        <source>what can be read off the gauge</source>
        <extracomment>doubt:resolution</extracomment>
        <translation>Ablesbarkeit des Manometers</translation>
    </message>
    <message>
        <source>scatter from one test to the next</source>
        <extracomment>doubt:scatter</extracomment>
        <translation>Streuung von Messung zu Messung</translation>
    </message>
    <message>
        <source>the leak, from one reading to the next</source>
        <extracomment>doubt:leak_repeat</extracomment>
        <translation>das Leck, von Messung zu Messung</translation>
    </message>
    <message>
        <source>regulator sagging unseen</source>
        <extracomment>doubt:droop</extracomment>
        <translation>unbemerktes Nachgeben des Reglers</translation>
    </message>
    <message>
        <source>restrictor&apos;s area</source>
        <extracomment>doubt:restrictor</extracomment>
        <translation>Fläche der Drosselbohrung</translation>
    </message>
    <message>
        <source>air pressure at the shop</source>
        <comment>doubt:air_pressure</comment>
        <translation>Luftdruck in der Werkstatt</translation>
    </message>
    <message>
        <source>weather</source>
        <extracomment>doubt:weather</extracomment>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>closing of intake or port</source>
        <extracomment>doubt:closing</extracomment>
        <translation>Schließen von Einlass oder Schlitz</translation>
    </message>
    <message>
        <source>the model itself</source>
        <extracomment>doubt:model</extracomment>
        <translation>das Modell selbst</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <comment>doubt:ratio</comment>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>cranking speed</source>
        <comment>doubt:speed</comment>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>warm or cold</source>
        <extracomment>doubt:warmth</extracomment>
        <translation>warm oder kalt</translation>
    </message>
    <message>
        <source>amount of oil</source>
        <extracomment>doubt:oil</extracomment>
        <translation>Ölmenge</translation>
    </message>
    <message>
        <source>the reading</source>
        <extracomment>doubt:reading</extracomment>
        <translation>der Messwert</translation>
    </message>
    <message>
        <source>angle</source>
        <extracomment>doubt:angle</extracomment>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>bore, stroke and rod</source>
        <extracomment>doubt:engine</extracomment>
        <translation>Bohrung, Hub und Pleuel</translation>
    </message>
    <message>
        <source>torque</source>
        <extracomment>doubt:torque</extracomment>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>length of the bar</source>
        <comment>doubt:bar</comment>
        <translation>Länge des Hebels</translation>
    </message>
    <message>
        <source>drilled hole</source>
        <comment>doubt:hole</comment>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>Cylinder %1 read less with oil in it (%3) than dry (%2): the wet reading is left out of the odds.</source>
        <extracomment>odds.wet_below_dry</extracomment>
        <translation>Zylinder %1 zeigte mit Öl weniger (%3) als trocken (%2): Der nasse Messwert bleibt bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %3 with oil in it and %2 dry: the wet reading is left out of the odds.</source>
        <extracomment>odds.wet_far_above</extracomment>
        <translation>Zylinder %1 zeigte mit Öl %3 und trocken %2: Der nasse Messwert bleibt bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1 held nothing of %2: the leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.held_nothing</extracomment>
        <translation>Zylinder %1 hielt nichts von %2: Druckverlustprüfung und Gehörtes bleiben bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1 built up nothing and yet held air: its dry and wet readings are left out of the odds.</source>
        <extracomment>odds.built_nothing</extracomment>
        <translation>Zylinder %1 baute nichts auf und hielt doch Luft: Trockener und nasser Messwert bleiben bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses only %2, yet air was heard strongly at several exits: the leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.loud_but_tight</extracomment>
        <translation>Zylinder %1 verliert nur %2, und doch wurde Luft an mehreren Austritten stark gehört: Druckverlustprüfung und Gehörtes bleiben bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses %2, yet nothing was heard at any exit: the leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.silent_but_leaks</extracomment>
        <translation>Zylinder %1 verliert %2, und doch wurde an keinem Austritt etwas gehört: Druckverlustprüfung und Gehörtes bleiben bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>The %2 of cylinder %1 lies far off everything that its other readings allow. Do that test again.</source>
        <extracomment>odds.does_not_fit</extracomment>
        <translation>Der Wert „%2“ von Zylinder %1 liegt weit ab von allem, was seine anderen Messwerte zulassen. Diese Prüfung noch einmal machen.</translation>
    </message>
    <message>
        <source>Nothing was measured on cylinder %1: nothing but the assumptions would speak.</source>
        <extracomment>odds.nothing_measured</extracomment>
        <translation>An Zylinder %1 wurde nichts gemessen: Es würden nur die Annahmen sprechen.</translation>
    </message>
    <message>
        <source>All that was read of cylinder %1 is from testers that failed their checks: nothing but the assumptions would speak.</source>
        <extracomment>odds.nothing_left</extracomment>
        <translation>Alles, was an Zylinder %1 abgelesen wurde, stammt von Prüfgeräten, die ihre Prüfung nicht bestanden haben: Nur die Annahmen würden sprechen.</translation>
    </message>
    <message>
        <source>Cylinder %1: first settle whether it stood at the right TDC. Until then its leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.tdc_first</extracomment>
        <translation>Zylinder %1: Erst klären, ob er im richtigen OT stand. Bis dahin bleiben Druckverlustprüfung und Gehörtes bei den Wahrscheinlichkeiten außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: clearance %3, its siblings about %4. Check and adjust it first: no verdict before that.</source>
        <extracomment>odds.clearance_siblings</extracomment>
        <translation>Zylinder %1, %2: Ventilspiel %3, die übrigen etwa %4. Erst nachmessen und einstellen: vorher kein Urteil.</translation>
    </message>
    <message>
        <source>Cylinder %1: the clearance of %2 is not known to be right. No strip-down for it before that: a valve without clearance looks burnt.</source>
        <extracomment>odds.clearance_first</extracomment>
        <translation>Zylinder %1: Ob das Ventilspiel stimmt, ist nicht bekannt (%2). Vorher deswegen nicht zerlegen: Ein Ventil ohne Spiel sieht aus wie ein verbranntes.</translation>
    </message>
    <message>
        <source>Cylinder %1: all that was read and heard is from before %2 was put right. No odds of what leaks now before it is tested and listened to again.</source>
        <extracomment>odds.retest_adjusted</extracomment>
        <translation>Zylinder %1: Alles, was gemessen und gehört wurde, stammt aus der Zeit, bevor %2 in Ordnung gebracht wurde. Was jetzt leckt, lässt sich nicht schätzen, bevor er neu geprüft und abgehört ist.</translation>
    </message>
    <message>
        <source>Nobody has listened at cylinder %1 since a part was touched that air was heard from: what was heard before says nothing of it as it is.</source>
        <extracomment>odds.not_listened_since</extracomment>
        <translation>An Zylinder %1 hat niemand gehorcht, seit an einem Teil gearbeitet wurde, aus dem Luft zu hören war: Was vorher zu hören war, sagt nichts darüber, wie es jetzt ist.</translation>
    </message>
    <message>
        <source>Nobody listened at cylinder %1 while the air was on: without that, numbers alone say little about where it leaks.</source>
        <extracomment>odds.not_listened</extracomment>
        <translation>Niemand hat an Zylinder %1 gehorcht, während die Luft anlag: Ohne das sagen Zahlen allein wenig darüber, wo es undicht ist.</translation>
    </message>
    <message>
        <source>No air was put on cylinder %1: cranking readings alone say little about where it leaks. Do a leak-down and listen at every exit.</source>
        <extracomment>odds.no_air</extracomment>
        <translation>An Zylinder %1 wurde keine Luft angelegt: Kompressionswerte allein sagen wenig darüber, wo er undicht ist. Eine Druckverlustprüfung machen und an jedem Austritt horchen.</translation>
    </message>
    <message>
        <source>Cylinder %1: unsure. The working out did not settle well enough to show odds.</source>
        <extracomment>odds.unsure_numbers</extracomment>
        <translation>Zylinder %1: unsicher. Die Rechnung hat sich nicht gut genug eingependelt, um Wahrscheinlichkeiten zu zeigen.</translation>
    </message>
    <message>
        <source>What was read on &quot;%1&quot; is left out of the odds, since it failed its check (%2). Put it right or take another, and read again.</source>
        <extracomment>odds.tester_failed</extracomment>
        <translation>Was an „%1“ abgelesen wurde, bleibt bei den Wahrscheinlichkeiten außen vor, weil es seine Prüfung nicht bestanden hat (%2). In Ordnung bringen oder ein anderes nehmen und erneut ablesen.</translation>
    </message>
    <message>
        <source>Here the odds can only compare cylinders, and there is no other to hold cylinder %1 against: its reading tells them nothing of a leak. A leak-down test tells.</source>
        <extracomment>odds.level_unknown</extracomment>
        <translation>Hier lassen sich nur Zylinder miteinander vergleichen, und es gibt keinen anderen neben Zylinder %1: Sein Wert sagt nichts über ein Leck. Eine Druckverlustprüfung sagt es.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads like the others, and here the odds can only compare cylinders: that tells them nothing of a leak. A leak-down test tells.</source>
        <extracomment>odds.alike_only</extracomment>
        <translation>Zylinder %1 zeigt dasselbe wie die anderen, und hier lassen sich nur Zylinder miteinander vergleichen: Das sagt nichts über ein Leck. Eine Druckverlustprüfung sagt es.</translation>
    </message>
    <message>
        <source>%1 read alike, and here the odds can only compare cylinders: that tells them nothing of a leak. A leak-down test tells.</source>
        <extracomment>odds.alike_only_several</extracomment>
        <translation>%1 zeigen dasselbe, und hier lassen sich nur Zylinder miteinander vergleichen: Das sagt nichts über ein Leck. Eine Druckverlustprüfung sagt es.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads low like all the others: something that all of them share is likelier than a leak in each. No odds before a leak-down test.</source>
        <extracomment>odds.low_everywhere</extracomment>
        <translation>Zylinder %1 zeigt wenig wie alle anderen: Etwas, das allen gemeinsam ist, ist wahrscheinlicher als ein Leck in jedem. Keine Wahrscheinlichkeiten vor einer Druckverlustprüfung.</translation>
    </message>
    <message>
        <source>%1 all read low: something that they share is likelier than a leak in each. No odds before a leak-down test.</source>
        <extracomment>odds.low_everywhere_several</extracomment>
        <translation>%1 zeigen alle wenig: Etwas, das ihnen gemeinsam ist, ist wahrscheinlicher als ein Leck in jedem. Keine Wahrscheinlichkeiten vor einer Druckverlustprüfung.</translation>
    </message>
    <message>
        <source>What was heard at cylinder %1 points at %2. How loud it sounds does not tell how much leaks, nor whether that is too much: put the air on again and note what the gauge holds.</source>
        <extracomment>odds.heard_points</extracomment>
        <translation>Was an Zylinder %1 zu hören war, deutet hierauf: %2. Wie laut es klingt, sagt nicht, wie viel verloren geht, und nicht, ob das zu viel ist: noch einmal Luft anlegen und notieren, was das Manometer hält.</translation>
    </message>
    <message>
        <source>What was heard at cylinder %1 points at %2, where no air may come out. How much leaks there was not read: put the air on again and note what the gauge holds.</source>
        <extracomment>odds.heard_fault</extracomment>
        <translation>Was an Zylinder %1 zu hören war, deutet hierauf: %2. Dort darf keine Luft austreten. Wie viel es ist, wurde nicht abgelesen: noch einmal Luft anlegen und notieren, was das Manometer hält.</translation>
    </message>
    <message>
        <source>Cylinder %1 was listened to, but nothing was read there. What is heard does not tell how much leaks: put the air on again and note what the gauge holds.</source>
        <extracomment>odds.heard_only</extracomment>
        <translation>An Zylinder %1 wurde gehorcht, aber nichts abgelesen. Was zu hören ist, sagt nicht, wie viel verloren geht: noch einmal Luft anlegen und notieren, was das Manometer hält.</translation>
    </message>
    <message>
        <source>Cylinder %1: earlier readings that tell nothing of its state &quot;%2&quot; are kept apart.</source>
        <extracomment>odds.earlier_state_apart</extracomment>
        <translation>Zylinder %1: Frühere Messwerte, die über seinen Zustand „%2“ nichts sagen, bleiben außen vor.</translation>
    </message>
    <message>
        <source>Cylinder %1: of the parts that were not touched before &quot;%2&quot;, earlier readings tell as well. Touched parts count as new ones: what they were tells nothing of what they are.</source>
        <extracomment>odds.earlier_state_shared</extracomment>
        <translation>Zylinder %1: Über die Teile, die vor dem Zustand „%2“ nicht angefasst wurden, sagen auch frühere Messwerte etwas. Angefasste Teile zählen als neue: Was sie waren, sagt nichts darüber, was sie sind.</translation>
    </message>
    <message>
        <source>Cylinder %1: cranking readings from before it ran are left out; it was colder then.</source>
        <extracomment>odds.earlier_state_ran</extracomment>
        <translation>Zylinder %1: Kompressionswerte von vor dem Laufen zählen nicht; da war er noch kälter.</translation>
    </message>
    <message>
        <source>Cylinder %1: under the app&apos;s assumptions the likeliest answer is: %2. That depends on them; with others it would be: %3.</source>
        <extracomment>odds.depends_on_assumptions</extracomment>
        <translation>Zylinder %1: unter den Annahmen der App ist die wahrscheinlichste Antwort: %2. Das hängt von ihnen ab; mit anderen wäre es: %3.</translation>
    </message>
    <message>
        <source>If cylinder %1 gets new rings: in a fresh hone they read low until they have run in. Don&apos;t compare before that.</source>
        <extracomment>odds.fresh_hone</extracomment>
        <translation>Wenn Zylinder %1 neue Kolbenringe bekommt: In frischer Honung zeigen sie zu wenig, bis sie eingefahren sind. Vorher nicht vergleichen.</translation>
    </message>
    <message>
        <source>Air from cylinder %1 came out at the plug hole of %2, which stands on overlap at the same time. A leaking valve does that through a joined manifold as well as the joint between the two.</source>
        <extracomment>odds.companion</extracomment>
        <translation>Luft aus Zylinder %1 kam am Kerzenloch von %2 heraus, der zur selben Zeit in der Ventilüberschneidung steht. Das kann ein undichtes Ventil über ein gemeinsames Sammelrohr ebenso bewirken wie der Dichtungssteg zwischen beiden.</translation>
    </message>
    <message>
        <source>Air from cylinder %1 came out at the plug hole of %2, whose valves may be open then. A leaking valve does that through a joined manifold as well; the odds take it for the joint between the two.</source>
        <extracomment>odds.neighbour_open</extracomment>
        <translation>Luft aus Zylinder %1 kam am Kerzenloch von %2 heraus, dessen Ventile dann offen sein können. Das tut über einen gemeinsamen Krümmer auch ein undichtes Ventil; die Wahrscheinlichkeiten nehmen es als die Dichtung zwischen den beiden.</translation>
    </message>
    <message>
        <source>A decompressor was at work: cranking readings are not used for the odds, only air and what was heard.</source>
        <extracomment>odds.decompressor</extracomment>
        <translation>Ein Dekompressor war wirksam: Kompressionswerte zählen nicht für die Wahrscheinlichkeiten, nur Luft und Gehörtes.</translation>
    </message>
    <message>
        <source>Above a compression ratio of %1 cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_ratio</extracomment>
        <translation>Über einer Verdichtung von %1 werden Messwerte beim Durchdrehen nicht daran gemessen, was ein heiler Zylinder zeigt.</translation>
    </message>
    <message>
        <source>The engine card lacks: %1. Cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_data</extracomment>
        <translation>Auf der Motorkarte fehlt: %1. Kompressionswerte werden nicht daran gemessen, was ein heiler Zylinder zeigt.</translation>
    </message>
    <message>
        <source>The engine card lacks: %1, %2. Cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_data_two</extracomment>
        <translation>Auf der Motorkarte fehlen: %1, %2. Kompressionswerte werden nicht daran gemessen, was ein heiler Zylinder zeigt.</translation>
    </message>
    <message>
        <source>The engine card lacks: %1, %2, %3. Cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_data_three</extracomment>
        <translation>Auf der Motorkarte fehlen: %1, %2, %3. Kompressionswerte werden nicht daran gemessen, was ein heiler Zylinder zeigt.</translation>
    </message>
    <message>
        <source>The throttle was closed: cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_throttle</extracomment>
        <translation>Die Drosselklappe war geschlossen: Kompressionswerte werden nicht daran gemessen, was ein heiler Zylinder zeigt.</translation>
    </message>
    <message>
        <source>No reading to expect after a repair of cylinder %1: what is known allows one as low as today&apos;s. The engine card&apos;s compression ratio and factory limits, and a dry test with the throttle open, would narrow it.</source>
        <extracomment>odds.no_expectation</extracomment>
        <translation>Kein zu erwartender Messwert nach einer Reparatur von Zylinder %1: Was bekannt ist, lässt einen so niedrigen wie heute zu. Verdichtung und Werksgrenzwerte auf der Motorkarte und eine Trockenprüfung mit offener Drosselklappe würden ihn eingrenzen.</translation>
    </message>
    <message>
        <source>Cranking readings are not used for the odds. %1</source>
        <extracomment>odds.no_cranking_model</extracomment>
        <translation>Kompressionswerte zählen nicht für die Wahrscheinlichkeiten. %1</translation>
    </message>
    <message>
        <source>Odds under the app&apos;s working assumptions; not yet counted on real engines.</source>
        <extracomment>odds.working_assumptions</extracomment>
        <translation>Wahrscheinlichkeiten unter den Annahmen der App; noch nicht an wirklichen Motoren ausgezählt.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: odds %3.</source>
        <extracomment>odds.main</extracomment>
        <translation>Zylinder %1 ist hauptsächlich hier undicht: %2. Wahrscheinlichkeit %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: odds %3. Check its clearance before any verdict on it.</source>
        <extracomment>odds.main_clearance</extracomment>
        <translation>Zylinder %1 ist hauptsächlich hier undicht: %2. Wahrscheinlichkeit %3. Vor jedem Urteil darüber das Ventilspiel prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1: the likeliest so far is %2, odds %3. That rests on pressures and on how often each part is at fault: listening at every exit can turn it round.</source>
        <extracomment>odds.main_unheard</extracomment>
        <translation>Zylinder %1: Am wahrscheinlichsten bisher: %2, Wahrscheinlichkeit %3. Das beruht auf Drücken und darauf, wie oft jedes Teil schadhaft ist: An jedem Austritt zu horchen kann es umkehren.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well: odds %2.</source>
        <extracomment>odds.seals</extracomment>
        <translation>Zylinder %1 dichtet gut: Wahrscheinlichkeit %2.</translation>
    </message>
    <message>
        <source>Cylinder %1: no clear answer yet. The likeliest are %2 (%3) and %4 (%5).</source>
        <extracomment>odds.open</extracomment>
        <translation>Zylinder %1: noch keine klare Antwort. Am wahrscheinlichsten: %2 (%3) und %4 (%5).</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: %3.</source>
        <extracomment>odds.likely_main</extracomment>
        <translation>Zylinder %1 ist hauptsächlich hier undicht: %2 (%3).</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: %3. Check its clearance before any verdict on it.</source>
        <extracomment>odds.likely_main_clearance</extracomment>
        <translation>Zylinder %1 ist hauptsächlich hier undicht: %2 (%3). Vor jedem Urteil darüber das Ventilspiel prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well: %2.</source>
        <extracomment>odds.likely_seals</extracomment>
        <translation>Zylinder %1 dichtet gut: %2.</translation>
    </message>
    <message>
        <source>%1 seal well: %2.</source>
        <extracomment>odds.likely_sound</extracomment>
        <translation>%1 dichten gut: %2.</translation>
    </message>
    <message>
        <source>%1 leak mostly at %2: %3.</source>
        <extracomment>odds.likely_main_several</extracomment>
        <translation>%1 sind hauptsächlich hier undicht: %2 (%3).</translation>
    </message>
    <message>
        <source>%1 may leak at %2, or they may still be sound: the readings do not settle it.</source>
        <extracomment>odds.leak_or_sound_several</extracomment>
        <translation>%1 können hier undicht sein: %2. Oder sie sind noch in Ordnung: Die Messwerte entscheiden das nicht.</translation>
    </message>
    <message>
        <source>Nobody listened there: that can turn it round.</source>
        <extracomment>odds.turned_by_listening</extracomment>
        <translation>Dort hat niemand gehorcht: Das kann die Antwort noch ändern.</translation>
    </message>
    <message>
        <source>Nobody listened there, and another answer is possible: %1.</source>
        <extracomment>odds.turned_by_listening_or</extracomment>
        <translation>Dort hat niemand gehorcht, und eine andere Antwort ist möglich: %1.</translation>
    </message>
    <message>
        <source>Nobody has listened there since a part was touched: that can turn it round.</source>
        <extracomment>odds.turned_by_listening_again</extracomment>
        <translation>Dort hat niemand gehorcht, seit an einem Teil gearbeitet wurde: Das kann die Antwort noch ändern.</translation>
    </message>
    <message>
        <source>No leak-down was done there: one can turn this round.</source>
        <extracomment>odds.turned_by_air</extracomment>
        <translation>Dort fehlt die Druckverlustprüfung: Das kann die Antwort noch ändern.</translation>
    </message>
    <message>
        <source>No leak-down was done there, and another answer is possible: %1.</source>
        <extracomment>odds.turned_by_air_or</extracomment>
        <translation>Dort fehlt die Druckverlustprüfung, und eine andere Antwort ist möglich: %1.</translation>
    </message>
    <message>
        <source>A rule of thumb names another answer: %1.</source>
        <extracomment>odds.turned_by_rule</extracomment>
        <translation>Eine Faustregel nennt eine andere Antwort: %1.</translation>
    </message>
    <message>
        <source>With other assumptions the answer would be: %1.</source>
        <extracomment>odds.turned_by_assumptions</extracomment>
        <translation>Mit anderen Annahmen wäre die Antwort: %1.</translation>
    </message>
    <message>
        <source>cylinder %1, %2</source>
        <extracomment>odds.repair_of</extracomment>
        <translation>Zylinder %1, %2</translation>
    </message>
    <message>
        <source>Cylinder %1 may leak at %2, or it may still be sound: the readings do not settle it.</source>
        <extracomment>odds.leaks_or_sound</extracomment>
        <translation>Zylinder %1 kann hier undicht sein: %2. Oder er ist noch in Ordnung: Die Messwerte entscheiden das nicht.</translation>
    </message>
    <message>
        <source>Cylinder %1: no clear answer yet. The likeliest are %2 and %3.</source>
        <extracomment>odds.likely_open</extracomment>
        <translation>Zylinder %1: noch keine klare Antwort. Am wahrscheinlichsten: %2 und %3.</translation>
    </message>
    <message>
        <source>Cylinder %1: what was measured does not fit together. No odds before that is settled.</source>
        <extracomment>odds.no_verdict</extracomment>
        <translation>Zylinder %1: Das Gemessene passt nicht zusammen. Keine Wahrscheinlichkeiten, bevor das geklärt ist.</translation>
    </message>
    <message>
        <source>Sealing well means here: it would lose less than %1 on a tester set to %2 behind a restrictor of %3. A leak-down that comes out near that edge can lower these odds, good as it is.</source>
        <extracomment>odds.seals_means</extracomment>
        <translation>Gut dichten heißt hier: Auf einem Prüfer, eingestellt auf %2 hinter einer Drosselbohrung von %3, gingen weniger als %1 verloren. Eine Druckverlustprüfung, die nahe an dieser Grenze ausfällt, kann diese Wahrscheinlichkeit senken, so gut sie ist.</translation>
    </message>
    <message>
        <source>Cylinder %1: the rules of thumb name %2, the odds %3. A rule looks at one sign alone; the odds weigh every reading with its doubt, how loud each exit was, and how often each part is at fault.</source>
        <extracomment>odds.thumb_differs</extracomment>
        <translation>Zylinder %1: Die Faustregeln nennen „%2“, die Wahrscheinlichkeiten „%3“. Eine Regel sieht nur ein Zeichen; die Wahrscheinlichkeiten wägen jeden Messwert mit seiner Unsicherheit, wie laut jeder Austritt war und wie oft jedes Teil schadhaft ist.</translation>
    </message>
    <message>
        <source>Cylinder %1: the rules of thumb disagree with each other. All evidence together makes this the likeliest answer: %2.</source>
        <extracomment>odds.thumbs_disagree</extracomment>
        <translation>Zylinder %1: Die Faustregeln widersprechen einander. Alle Belege zusammen machen dies zur wahrscheinlichsten Antwort: %2.</translation>
    </message>
    <message>
        <source>It would tell much about where the leak is.</source>
        <extracomment>odds.tells_much</extracomment>
        <translation>Es würde viel darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>It would tell something about where the leak is.</source>
        <extracomment>odds.tells_some</extracomment>
        <translation>Es würde etwas darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>It would tell a little about where the leak is.</source>
        <extracomment>odds.tells_little</extracomment>
        <translation>Es würde ein wenig darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>A leak-down test of cylinder %1, listening at every exit, would tell %2 about where the leak is.</source>
        <extracomment>odds.leak_down_tells</extracomment>
        <translation>Eine Druckverlustprüfung von Zylinder %1 mit Horchen an jedem Austritt würde %2 darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>Listening at every exit of cylinder %1 would tell %2 about where the leak is.</source>
        <extracomment>odds.listening_tells</extracomment>
        <translation>An jedem Austritt von Zylinder %1 zu horchen würde %2 darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>A dry test of cylinder %1 would tell %2 about where the leak is.</source>
        <extracomment>odds.dry_tells</extracomment>
        <translation>Eine Trockenprüfung von Zylinder %1 würde %2 darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>Put the air on cylinder %1 once more and note what the gauge holds: it was listened to, and nothing was read.</source>
        <extracomment>odds.read_as_well</extracomment>
        <translation>An Zylinder %1 noch einmal Luft anlegen und notieren, was das Manometer hält: Es wurde gehorcht und nichts abgelesen.</translation>
    </message>
    <message>
        <source>A wet test of cylinder %1 would tell %2 about where the leak is.</source>
        <extracomment>odds.wet_tells</extracomment>
        <translation>Eine Nassprüfung von Zylinder %1 würde %2 darüber sagen, wo das Leck ist.</translation>
    </message>
    <message>
        <source>Check the clearance of %1, then test again.</source>
        <extracomment>propose.check_clearance</extracomment>
        <translation>Ventilspiel kontrollieren (%1), dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Adjust the clearance of %1, then test again.</source>
        <extracomment>propose.adjust_clearance</extracomment>
        <translation>Ventilspiel einstellen (%1), dann erneut prüfen.</translation>
    </message>
    <message>
        <source>The clearance of %1 was changed: test again.</source>
        <extracomment>propose.test_adjusted</extracomment>
        <translation>Das Ventilspiel wurde verstellt (%1): erneut prüfen.</translation>
    </message>
    <message>
        <source>Put the air on again and listen at every exit: where it comes out names the leak.</source>
        <extracomment>propose.listen</extracomment>
        <translation>Noch einmal Luft anlegen und an jedem Austritt horchen: Wo sie herauskommt, zeigt das Leck.</translation>
    </message>
    <message>
        <source>Run it until it is warm, then test again.</source>
        <extracomment>propose.run_it</extracomment>
        <translation>Laufen lassen, bis er warm ist, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Repeat the dry test warm, with the throttle held wide open.</source>
        <extracomment>propose.repeat_open</extracomment>
        <translation>Die Trockenprüfung warm wiederholen, mit ganz offen gehaltener Drosselklappe.</translation>
    </message>
    <message>
        <source>Leave penetrating oil in the bore overnight, run it, then test again.</source>
        <extracomment>propose.soak</extracomment>
        <translation>Rostlöser über Nacht in der Bohrung lassen, den Motor laufen lassen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Stake %1 lightly on its seat, then test again.</source>
        <extracomment>propose.stake</extracomment>
        <translation>%1 leicht auf den Sitz klopfen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Check the head bolts by the engine&apos;s manual, then test again.</source>
        <extracomment>propose.head_bolts</extracomment>
        <translation>Die Zylinderkopfschrauben nach dem Handbuch des Motors kontrollieren, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Adjust the decompressor so that it closes, then test again.</source>
        <extracomment>propose.decompressor</extracomment>
        <translation>Den Dekompressor so einstellen, dass er schließt, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Check valve timing, throttle, starter speed and hose, then test again.</source>
        <extracomment>propose.low_but_seals</extracomment>
        <translation>Steuerzeiten, Drosselklappe, Anlasserdrehzahl und Schlauch kontrollieren, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Check valve timing, air filter, starter speed and hose, then test again.</source>
        <extracomment>propose.low_but_seals_diesel</extracomment>
        <translation>Steuerzeiten, Luftfilter, Anlasserdrehzahl und Schlauch kontrollieren, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Head off: grind or renew %1, cut and lap its seat.</source>
        <extracomment>propose.valve</extracomment>
        <translation>Kopf ab: %1 schleifen oder erneuern, den Sitz fräsen und das Ventil einschleifen.</translation>
    </message>
    <message>
        <source>Cylinder off or piston out: measure the bore, new rings. Hone an iron bore; a plated bore must not be honed: as its manual says.</source>
        <extracomment>propose.rings</extracomment>
        <translation>Zylinder ab oder Kolben heraus: Bohrung vermessen, neue Kolbenringe. Eine Graugussbohrung honen; eine beschichtete Bohrung darf nicht gehont werden: wie in ihrem Handbuch.</translation>
    </message>
    <message>
        <source>Cylinder off: measure bore and piston, new rings. Hone an iron bore; a plated bore must not be honed: as its manual says.</source>
        <extracomment>propose.rings_two_stroke</extracomment>
        <translation>Zylinder ab: Bohrung und Kolben vermessen, neue Kolbenringe. Eine Graugussbohrung honen; eine beschichtete Bohrung darf nicht gehont werden: wie in ihrem Handbuch.</translation>
    </message>
    <message>
        <source>Head off: look for cracks, measure head and block for flatness, new head gasket.</source>
        <extracomment>propose.gasket</extracomment>
        <translation>Kopf ab: nach Rissen suchen, Kopf und Block auf Planheit messen, neue Zylinderkopfdichtung.</translation>
    </message>
    <message>
        <source>Renew what lets the crankcase leak: crank seals, base gasket, reed.</source>
        <extracomment>propose.crankcase</extracomment>
        <translation>Erneuern, was das Kurbelgehäuse undicht macht: Wellendichtringe, Fußdichtung, Membran.</translation>
    </message>
    <message>
        <source>Crankcase under its test pressure again: soapy water on crank seals, base gasket and intake. Bubbles show where it leaks.</source>
        <extracomment>propose.crankcase_soap</extracomment>
        <translation>Kurbelgehäuse wieder unter Prüfdruck: Seifenwasser an Wellendichtringe, Fußdichtung und Einlass. Blasen zeigen, wo es undicht ist.</translation>
    </message>
    <message>
        <source>Name the leak-down tester and its restrictor, then look at the findings again.</source>
        <extracomment>propose.name_tester</extracomment>
        <translation>Den Druckverlustprüfer und seine Drosselbohrung angeben, dann den Befund erneut ansehen.</translation>
    </message>
    <message>
        <source>Leave it and measure again later.</source>
        <extracomment>propose.watch</extracomment>
        <translation>So lassen und später erneut messen.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: %3 at fault, under the app&apos;s working assumptions.</source>
        <extracomment>because.odds</extracomment>
        <translation>Zylinder %1, %2 als Ursache: %3, unter den Annahmen der App.</translation>
    </message>
    <message>
        <source>The joint of %1: %2 at fault, under the app&apos;s working assumptions.</source>
        <extracomment>because.joint</extracomment>
        <translation>Dichtungssteg (%1) als Ursache: %2, unter den Annahmen der App.</translation>
    </message>
    <message>
        <source>The rules of thumb point at %2 of cylinder %1.</source>
        <extracomment>because.rules</extracomment>
        <translation>Die Faustregeln weisen darauf: %2, Zylinder %1.</translation>
    </message>
    <message>
        <source>The seat burns further and the leak grows.</source>
        <extracomment>left.valve</extracomment>
        <translation>Der Sitz verbrennt weiter, und das Leck wächst.</translation>
    </message>
    <message>
        <source>Hot gas cuts the leak larger: the seat goes next, and a piece of the valve can break off.</source>
        <extracomment>left.exhaust_valve</extracomment>
        <translation>Heißes Gas frisst das Leck größer: Als Nächstes geht der Sitz, und vom Ventil kann ein Stück abbrechen.</translation>
    </message>
    <message>
        <source>Power and oil go on getting worse, slowly, and it starts ever harder in the cold.</source>
        <extracomment>left.rings_diesel</extracomment>
        <translation>Leistung und Ölverbrauch werden langsam schlechter, und er springt bei Kälte immer schwerer an.</translation>
    </message>
    <message>
        <source>Power and oil go on getting worse, slowly; oil fouls the plug.</source>
        <extracomment>left.rings</extracomment>
        <translation>Leistung und Ölverbrauch werden weiter schlechter, langsam; Öl verschmutzt die Zündkerze.</translation>
    </message>
    <message>
        <source>Hot gas cuts into head and block; what is a gasket now becomes a head to be machined.</source>
        <extracomment>left.gasket</extracomment>
        <translation>Heißes Gas frisst sich in Kopf und Block; was jetzt eine Dichtung ist, wird ein Kopf, der geplant werden muss.</translation>
    </message>
    <message>
        <source>Gas drives out the coolant and the engine overheats; coolant in a cylinder can bend its rod.</source>
        <extracomment>left.coolant</extracomment>
        <translation>Gas drückt das Kühlmittel heraus, und der Motor überhitzt; Kühlmittel in einem Zylinder kann dessen Pleuel verbiegen.</translation>
    </message>
    <message>
        <source>It starts badly and its readings tell nothing.</source>
        <extracomment>left.decompressor</extracomment>
        <translation>Er springt schlecht an, und seine Messwerte sagen nichts.</translation>
    </message>
    <message>
        <source>False air makes it run lean: it can seize.</source>
        <extracomment>left.crankcase</extracomment>
        <translation>Falschluft lässt ihn mager laufen: Er kann festgehen.</translation>
    </message>
    <message>
        <source>Normal wear goes on; nothing is lost by waiting as long as it does not grow.</source>
        <extracomment>left.wear</extracomment>
        <translation>Normaler Verschleiß geht weiter; Abwarten schadet nicht, solange es nicht mehr wird.</translation>
    </message>
    <message>
        <source>Cylinder %1: not measured.</source>
        <extracomment>cylinder.not_measured</extracomment>
        <translation>Zylinder %1: nicht gemessen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads well now, but leaked when air was last on it. Put air on it again before it is called sound.</source>
        <extracomment>cylinder.earlier_fault</extracomment>
        <translation>Zylinder %1 liest sich jetzt gut, war aber undicht, als zuletzt Luft anlag. Erneut Luft anlegen, bevor er dicht genannt wird.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well.</source>
        <extracomment>cylinder.seals_well</extracomment>
        <translation>Zylinder %1 dichtet gut.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: in range.</source>
        <extracomment>cylinder.reads_in_range</extracomment>
        <translation>Zylinder %1 zeigt %2: im Bereich.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, like the others. There is no limit to hold it against.</source>
        <extracomment>cylinder.reads_alike</extracomment>
        <translation>Zylinder %1 zeigt %2, wie die anderen. Es gibt keinen Grenzwert, an dem sich das messen ließe.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, like the others, but less than makers ask at least: borderline. There is no limit of this engine to hold it against.</source>
        <extracomment>cylinder.alike_but_low</extracomment>
        <translation>Zylinder %1 zeigt %2, wie die anderen, aber weniger, als Hersteller mindestens verlangen: grenzwertig. Für diesen Motor gibt es keinen Grenzwert, an dem sich das messen ließe.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2. There is no factory limit to hold it against.</source>
        <extracomment>cylinder.reads_no_limit</extracomment>
        <translation>Zylinder %1 zeigt %2. Es gibt keinen Werksgrenzwert zum Vergleichen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, as expected of one that seals well. There is no factory figure.</source>
        <extracomment>cylinder.reads_as_expected</extracomment>
        <translation>Zylinder %1 zeigt %2, wie von einem gut dichtenden zu erwarten. Es gibt keinen Werkswert.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, less than expected: borderline. There is no factory figure.</source>
        <extracomment>cylinder.reads_below_expected</extracomment>
        <translation>Zylinder %1 zeigt %2, weniger als erwartet: grenzwertig. Es gibt keinen Werkswert.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the decompressor at work: no limit holds for that.</source>
        <extracomment>cylinder.reads_decompressor</extracomment>
        <translation>Zylinder %1 zeigt %2 bei wirksamem Dekompressor: Dafür gilt kein Grenzwert.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: borderline.</source>
        <extracomment>cylinder.reads_borderline</extracomment>
        <translation>Zylinder %1 zeigt %2: grenzwertig.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low. A leak-down test shows where it leaks.</source>
        <extracomment>cylinder.reads_low</extracomment>
        <translation>Zylinder %1 zeigt %2: zu niedrig. Eine Druckverlustprüfung zeigt, wo es undicht ist.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: below the factory limit of %3. A leak-down test shows where it leaks.</source>
        <extracomment>cylinder.below_limit</extracomment>
        <translation>Zylinder %1 zeigt %2: unter dem Werksgrenzwert von %3. Eine Druckverlustprüfung zeigt, wo er undicht ist.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: below the factory limit of %3, and the signs point at %4.</source>
        <extracomment>cylinder.below_limit_points_at</extracomment>
        <translation>Zylinder %1 zeigt %2: unter dem Werksgrenzwert von %3, und die Zeichen weisen darauf: %4.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: far below what makers ask of such an engine. A leak-down test shows where it leaks.</source>
        <extracomment>cylinder.far_below_usual</extracomment>
        <translation>Zylinder %1 zeigt %2: weit unter dem, was Hersteller von so einem Motor verlangen. Eine Druckverlustprüfung zeigt, wo er undicht ist.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the throttle shut: in range all the same.</source>
        <extracomment>cylinder.shut_in_range</extracomment>
        <translation>Zylinder %1 zeigt %2 bei geschlossener Drosselklappe: trotzdem im Bereich.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the throttle shut: too low even so. Repeat with the throttle wide open to be sure.</source>
        <extracomment>cylinder.shut_low</extracomment>
        <translation>Zylinder %1 zeigt %2 bei geschlossener Drosselklappe: auch dafür zu niedrig. Sicherheitshalber mit ganz offener Drosselklappe wiederholen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the throttle shut, which lowers it: no verdict before it is repeated with the throttle wide open.</source>
        <extracomment>cylinder.shut_no_verdict</extracomment>
        <translation>Zylinder %1 zeigt %2 bei geschlossener Drosselklappe, und das senkt den Wert: kein Urteil, bevor mit ganz offener Drosselklappe wiederholt wurde.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low, and the signs point at %3.</source>
        <extracomment>cylinder.low_points_at</extracomment>
        <translation>Zylinder %1 zeigt %2: zu niedrig, und die Zeichen weisen darauf: %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low, but %3 had too little clearance. Adjust first, then test again.</source>
        <extracomment>cylinder.low_adjust_first</extracomment>
        <translation>Zylinder %1 zeigt %2: zu niedrig, aber mit zu wenig Ventilspiel (%3). Erst einstellen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low, but %3 has far less clearance than its siblings. Check and adjust first, then test again.</source>
        <extracomment>cylinder.low_clearance_first</extracomment>
        <translation>Zylinder %1 zeigt %2: zu niedrig, aber mit weit weniger Ventilspiel als bei den übrigen (%3). Erst nachmessen und einstellen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses %2: wear, not yet a fault.</source>
        <extracomment>cylinder.wear</extracomment>
        <translation>Zylinder %1 verliert %2: Verschleiß, noch kein Fehler.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2. Listen where the air comes out.</source>
        <extracomment>cylinder.leaks_unheard</extracomment>
        <translation>Zylinder %1 verliert %2. Horchen, wo die Luft herauskommt.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2: a fault if the tester is as assumed, perhaps none. Name the tester and its restrictor first.</source>
        <extracomment>cylinder.leaks_tester_first</extracomment>
        <translation>Zylinder %1 verliert %2: ein Fehler, wenn das Prüfgerät wie angenommen ist, vielleicht keiner. Zuerst das Prüfgerät und seine Drosselbohrung angeben.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2, most of it at %3 as far as the ear can tell.</source>
        <extracomment>cylinder.leaks_at</extracomment>
        <translation>Zylinder %1 verliert %2, nach dem Gehör das meiste hier: %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2, most of it at the joint to cylinder %3 as far as the ear can tell.</source>
        <extracomment>cylinder.leaks_at_joint</extracomment>
        <translation>Zylinder %1 verliert %2, nach dem Gehör das meiste am Dichtungssteg zu Zylinder %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2, and air comes out of the plug hole of cylinder %3: through the joint, or past a valve. Listen at intake and exhaust too.</source>
        <extracomment>cylinder.leaks_joint_or_valve</extracomment>
        <translation>Zylinder %1 verliert %2, und Luft kommt aus dem Kerzenloch von Zylinder %3: durch den Dichtungssteg dazwischen oder an einem Ventil vorbei. Auch an Einlass und Auslass horchen.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2 and the air points at %3. Check its clearance before any verdict: a valve without clearance looks burnt.</source>
        <extracomment>cylinder.leaks_clearance_first</extracomment>
        <translation>Zylinder %1 verliert %2, und die Luft weist darauf: %3. Vor jedem Urteil das Ventilspiel prüfen: Ein Ventil ohne Spiel sieht aus wie ein verbranntes.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2 at %3, which had too little clearance. Adjust first, then test again.</source>
        <extracomment>cylinder.leaks_adjust_first</extracomment>
        <translation>Zylinder %1 verliert %2 (%3), mit zu wenig Ventilspiel dort. Erst einstellen, dann erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaked %2 before %3 was put right: without clearance a valve stands open. Test it again and listen again before any verdict.</source>
        <extracomment>cylinder.retest_leak</extracomment>
        <translation>Zylinder %1 verlor %2, bevor %3 in Ordnung gebracht wurde: Ohne Spiel steht ein Ventil offen. Vor jedem Urteil neu prüfen und neu horchen.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 before %3 was put right: without clearance a valve stands open. Test it again before any verdict.</source>
        <extracomment>cylinder.retest_dry</extracomment>
        <translation>Zylinder %1 zeigte %2, bevor %3 in Ordnung gebracht wurde: Ohne Spiel steht ein Ventil offen. Vor jedem Urteil neu prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1: perhaps the wrong TDC. Turn the crank one full turn and test again before any verdict.</source>
        <extracomment>cylinder.ask_tdc</extracomment>
        <translation>Zylinder %1: vielleicht der falsche OT. Vor jedem Urteil die Kurbelwelle eine volle Umdrehung weiterdrehen und erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1: its readings don&apos;t fit together. Do the %2 again before any verdict.</source>
        <extracomment>cylinder.does_not_fit</extracomment>
        <translation>Zylinder %1: Die Messwerte passen nicht zusammen. %2 vor jedem Urteil wiederholen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: decompressor, not proof of a leak. Do a leak-down test.</source>
        <extracomment>cylinder.ask_decompressor</extracomment>
        <translation>Zylinder %1 zeigt %2: Dekompressor, kein Beweis für ein Leck. Eine Druckverlustprüfung machen.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well (leakage %3) yet reads only %2. Look at valve timing, throttle, starter speed and hose.</source>
        <extracomment>cylinder.seals_but_reads_low</extracomment>
        <translation>Zylinder %1 dichtet gut (Druckverlust %3) und zeigt doch nur %2. Steuerzeiten, Drosselklappe, Anlasserdrehzahl und Schlauch ansehen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, in range, yet leaks %3. Test again and listen where the air comes out.</source>
        <extracomment>cylinder.leaks_but_reads_well</extracomment>
        <translation>Zylinder %1 zeigt %2, im Bereich, und verliert doch %3. Erneut prüfen und horchen, wo die Luft herauskommt.</translation>
    </message>
    <message>
        <source>Cylinder %1 and its neighbour %2 are both low: look at the joint between them.</source>
        <extracomment>cylinder.joint_with</extracomment>
        <translation>Zylinder %1 und sein Nachbar %2 zeigen beide zu wenig: den Dichtungssteg zwischen ihnen ansehen.</translation>
    </message>
    <message>
        <source>Cylinder %1 has a wet test only: nothing to compare it with.</source>
        <extracomment>cylinder.wet_only</extracomment>
        <translation>Zylinder %1 hat nur eine Nassprüfung: nichts zum Vergleichen.</translation>
    </message>
    <message>
        <source>Nothing measured yet.</source>
        <extracomment>engine.not_measured</extracomment>
        <translation>Noch nichts gemessen.</translation>
    </message>
    <message>
        <source>Every cylinder seals well.</source>
        <extracomment>engine.seals_well</extracomment>
        <translation>Jeder Zylinder dichtet gut.</translation>
    </message>
    <message>
        <source>Every cylinder is in range.</source>
        <extracomment>engine.in_range</extracomment>
        <translation>Jeder Zylinder ist im Bereich.</translation>
    </message>
    <message>
        <source>The cylinders read alike. What this engine should read is not on its card.</source>
        <extracomment>engine.alike</extracomment>
        <translation>Die Zylinder zeigen gleich viel. Was dieser Motor zeigen sollte, steht nicht auf seiner Karte.</translation>
    </message>
    <message>
        <source>The cylinders read alike, but less than makers ask at least. Worn alike, or something lowers them all: speed, throttle, gauge, valve timing. A leak-down tells.</source>
        <extracomment>engine.alike_but_low</extracomment>
        <translation>Die Zylinder zeigen gleich viel, aber weniger, als Hersteller mindestens verlangen. Gleichmäßig verschlissen, oder etwas senkt alle: Drehzahl, Drosselklappe, Manometer, Steuerzeiten. Eine Druckverlustprüfung klärt es.</translation>
    </message>
    <message>
        <source>Measured, but there is nothing to judge the readings by. Put the factory limits on the engine card.</source>
        <extracomment>engine.no_limit</extracomment>
        <translation>Gemessen, aber es gibt nichts, woran die Messwerte zu beurteilen wären. Die Werksgrenzwerte auf die Motorkarte schreiben.</translation>
    </message>
    <message>
        <source>With the decompressor at work the readings say little by themselves. A leak-down test tells how each one seals.</source>
        <extracomment>engine.decompressor</extracomment>
        <translation>Bei wirksamem Dekompressor sagen die Messwerte für sich allein wenig. Eine Druckverlustprüfung sagt, wie jeder Zylinder dichtet.</translation>
    </message>
    <message>
        <source>The throttle was shut, which lowers every reading. Repeat the dry test with the throttle wide open, warm, before any verdict.</source>
        <extracomment>engine.throttle_shut</extracomment>
        <translation>Die Drosselklappe war geschlossen, das senkt jeden Messwert. Vor jedem Urteil die Trockenprüfung warm und mit ganz offener Drosselklappe wiederholen.</translation>
    </message>
    <message>
        <source>Fault at %1.</source>
        <extracomment>engine.fault</extracomment>
        <translation>Fehler: %1.</translation>
    </message>
    <message>
        <source>Borderline: %1. No fault.</source>
        <extracomment>engine.borderline</extracomment>
        <translation>Grenzwertig: %1. Kein Fehler.</translation>
    </message>
    <message>
        <source>Borderline: %1. Which tester it was decides whether that is a fault: name it.</source>
        <extracomment>engine.borderline_tester_first</extracomment>
        <translation>Grenzwertig: %1. Ob das ein Fehler ist, hängt davon ab, welches Prüfgerät es war: bitte angeben.</translation>
    </message>
    <message>
        <source>%1 of %2 cylinders measured, no fault so far.</source>
        <extracomment>engine.not_all_measured</extracomment>
        <translation>%1 von %2 Zylindern gemessen, bisher kein Fehler.</translation>
    </message>
    <message>
        <source>A question about %1 comes before any verdict.</source>
        <extracomment>engine.questions_first</extracomment>
        <translation>Vor jedem Urteil steht eine Frage zu %1.</translation>
    </message>
    <message>
        <source>Every cylinder seals well yet reads low: look at valve timing, throttle, starter speed and hose.</source>
        <extracomment>engine.low_but_seals</extracomment>
        <translation>Jeder Zylinder dichtet gut und zeigt doch wenig: Steuerzeiten, Drosselklappe, Anlasserdrehzahl und Schlauch ansehen.</translation>
    </message>
    <message>
        <source>Cylinders %1 and %2 are both low: look at the joint between them.</source>
        <extracomment>engine.joint</extracomment>
        <translation>Zylinder %1 und %2 zeigen beide zu wenig: den Dichtungssteg zwischen ihnen ansehen.</translation>
    </message>
    <message>
        <source>Every cylinder reads low. Before blaming them all: throttle held open, starter speed, gauge and hose, valve timing.</source>
        <extracomment>engine.low_everywhere</extracomment>
        <translation>Jeder Zylinder zeigt wenig. Bevor alle beschuldigt werden: Drosselklappe offen gehalten, Anlasserdrehzahl, Manometer und Schlauch, Steuerzeiten.</translation>
    </message>
    <message>
        <source>Every cylinder reads low. Before blaming them all: air filter, starter speed, gauge and hose, valve timing.</source>
        <extracomment>engine.low_everywhere_diesel</extracomment>
        <translation>Jeder Zylinder zeigt wenig. Bevor alle beschuldigt werden: Luftfilter, Anlasserdrehzahl, Manometer und Schlauch, Steuerzeiten.</translation>
    </message>
    <message>
        <source>Every cylinder seals well yet reads low: look at valve timing, air filter, starter speed and hose.</source>
        <extracomment>engine.low_but_seals_diesel</extracomment>
        <translation>Jeder Zylinder dichtet gut und zeigt doch wenig: Steuerzeiten, Luftfilter, Anlasserdrehzahl und Schlauch ansehen.</translation>
    </message>
    <message>
        <source>The crankcase does not hold its pressure.</source>
        <extracomment>engine.crankcase</extracomment>
        <translation>Das Kurbelgehäuse hält seinen Druck nicht.</translation>
    </message>
    <message>
        <source>The crankcase of %1 does not hold its pressure.</source>
        <extracomment>engine.crankcase_of</extracomment>
        <translation>Das Kurbelgehäuse von %1 hält seinen Druck nicht.</translation>
    </message>
    <message>
        <source>Oil raised the reading by %1, %2 or more: rings.</source>
        <extracomment>thumb.wet_rings</extracomment>
        <translation>Öl hob den Messwert um %1, also %2 oder mehr: Kolbenringe.</translation>
    </message>
    <message>
        <source>Oil raised the reading by %1, less than %2: valves, a broken ring or the head gasket.</source>
        <extracomment>thumb.wet_no_rise</extracomment>
        <translation>Öl hob den Messwert um %1, weniger als %2: Ventile, ein gebrochener Kolbenring oder die Zylinderkopfdichtung.</translation>
    </message>
    <message>
        <source>Oil raised the reading by %1, less than %2: a broken ring or the head gasket.</source>
        <extracomment>thumb.wet_no_rise_two_stroke</extracomment>
        <translation>Öl hob den Messwert um %1, weniger als %2: ein gebrochener Kolbenring oder die Zylinderkopfdichtung.</translation>
    </message>
    <message>
        <source>Gauge and repeats can&apos;t tell this rise from %1 with certainty.</source>
        <extracomment>thumb.wet_within_gauge</extracomment>
        <translation>Manometer und Wiederholungen können diesen Anstieg nicht sicher von %1 unterscheiden.</translation>
    </message>
    <message>
        <source>The rise says little: the volume of the oil alone explains up to %1.</source>
        <extracomment>thumb.wet_volume_explains</extracomment>
        <translation>Der Anstieg sagt wenig: Das Ölvolumen allein erklärt bis zu %1.</translation>
    </message>
    <message>
        <source>Loudest exit: %1 (%2). That means %3.</source>
        <extracomment>thumb.loudest_exit</extracomment>
        <translation>Lautester Austritt: %1 (%2). Das heißt: %3.</translation>
    </message>
    <message>
        <source>Loudest exit: plug hole of cylinder %1 (%2). That means the joint to cylinder %1.</source>
        <extracomment>thumb.loudest_exit_joint</extracomment>
        <translation>Lautester Austritt: Kerzenloch von Zylinder %1 (%2). Das heißt: der Dichtungssteg zu Zylinder %1.</translation>
    </message>
    <message>
        <source>Loudest exit: %1 (%2). Some air past the rings is normal; this cylinder seals well.</source>
        <extracomment>thumb.ring_air_normal</extracomment>
        <translation>Lautester Austritt: %1 (%2). Etwas Luft an den Kolbenringen vorbei ist normal; dieser Zylinder dichtet gut.</translation>
    </message>
    <message>
        <source>Loudest exit: %1 (%2). In this engine it names no single path.</source>
        <extracomment>thumb.loudest_exit_no_path</extracomment>
        <translation>Lautester Austritt: %1 (%2). Bei diesem Motor nennt er keinen einzelnen Weg.</translation>
    </message>
    <message>
        <source>%1 and %2 are equally loud: no single path stands out.</source>
        <extracomment>thumb.exits_tie</extracomment>
        <translation>%1 und %2 sind gleich laut: Kein einzelner Weg hebt sich ab.</translation>
    </message>
    <message>
        <source>Air is lost, yet nothing was heard at any exit. Try hose, hand and soapy water.</source>
        <extracomment>thumb.nothing_heard</extracomment>
        <translation>Luft geht verloren, und doch wurde an keinem Austritt etwas gehört. Es mit Schlauch, Hand und Seifenwasser versuchen.</translation>
    </message>
    <message>
        <source>A gasket sign may also be a crack in head or block.</source>
        <extracomment>thumb.gasket_or_crack</extracomment>
        <translation>Ein Zeichen für die Dichtung kann auch ein Riss in Kopf oder Block sein.</translation>
    </message>
    <message>
        <source>First puff low (%1 of what it should reach), then it builds up: rings.</source>
        <extracomment>thumb.first_puff_rings</extracomment>
        <translation>Erster Hub niedrig (%1 von dem, was er erreichen sollte), dann baut es sich auf: Kolbenringe.</translation>
    </message>
    <message>
        <source>First puff low (%1 of what it should reach) and it does not build up: valves.</source>
        <extracomment>thumb.first_puff_valves</extracomment>
        <translation>Erster Hub niedrig (%1 von dem, was er erreichen sollte), und es baut sich nicht auf: Ventile.</translation>
    </message>
    <message>
        <source>First puff low (%1 of what it should reach): rings or head gasket.</source>
        <extracomment>thumb.first_puff_low_two_stroke</extracomment>
        <translation>Erster Hub niedrig (%1 von dem, was er erreichen sollte): Kolbenringe oder Zylinderkopfdichtung.</translation>
    </message>
    <message>
        <source>Cylinders %1 and %2 are neighbours and both low: the joint between them.</source>
        <extracomment>thumb.joint</extracomment>
        <translation>Zylinder %1 und %2 sind Nachbarn und zeigen beide zu wenig: der Dichtungssteg zwischen ihnen.</translation>
    </message>
    <message>
        <source>Two rules of thumb disagree: one says %1, the other %2.</source>
        <extracomment>contra.rules_disagree</extracomment>
        <translation>Zwei Faustregeln widersprechen sich: Die eine sagt „%1“, die andere „%2“.</translation>
    </message>
    <message>
        <source>It reads low (%1) yet seals well (leakage %2): look at valve timing, throttle, starter speed and hose.</source>
        <extracomment>contra.low_but_seals</extracomment>
        <translation>Er zeigt wenig (%1) und dichtet doch gut (Druckverlust %2): Steuerzeiten, Drosselklappe, Anlasserdrehzahl und Schlauch ansehen.</translation>
    </message>
    <message>
        <source>It reads %1, in range, yet leaks %2: a leak that only shows at rest, a wrong TDC, or a leaking adapter.</source>
        <extracomment>contra.leaks_but_reads_well</extracomment>
        <translation>Er zeigt %1, im Bereich, und verliert doch %2: ein Leck, das sich nur im Stillstand zeigt, ein falscher OT oder ein undichter Adapter.</translation>
    </message>
    <message>
        <source>Cylinder %1 held nothing of %2. A hole that large is rarely a leak: is the adapter tight, the hose on, the right TDC found?</source>
        <extracomment>misfit.held_nothing</extracomment>
        <translation>Zylinder %1 hielt nichts von %2. Ein so großes Loch ist selten ein Leck: Ist der Adapter dicht, der Schlauch angeschlossen, der richtige OT gefunden?</translation>
    </message>
    <message>
        <source>Cylinder %1 built up nothing while cranking (%2), yet it holds air (leakage %3). Look at adapter, hose and valve core, and whether its valves move.</source>
        <extracomment>misfit.built_nothing</extracomment>
        <translation>Zylinder %1 baute beim Durchdrehen nichts auf (%2), hält aber Luft (Druckverlust %3). Adapter, Schlauch und Ventileinsatz ansehen, und ob sich die Ventile bewegen.</translation>
    </message>
    <message>
        <source>Cylinder %1 read less with oil in it (%3) than dry (%2). Oil can&apos;t do that: one of the two readings is not right.</source>
        <extracomment>misfit.wet_below_dry</extracomment>
        <translation>Zylinder %1 zeigte mit Öl weniger (%3) als trocken (%2). Das kann Öl nicht bewirken: Einer der beiden Messwerte stimmt nicht.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 dry and %3 with oil in it. Oil alone can&apos;t do that much: one of the two readings is not right.</source>
        <extracomment>misfit.wet_far_above</extracomment>
        <translation>Zylinder %1 zeigte trocken %2 und mit Öl %3. So viel kann Öl allein nicht bewirken: Einer der beiden Messwerte stimmt nicht.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses only %2, yet air was heard strongly at several exits. Both can&apos;t be right.</source>
        <extracomment>misfit.loud_but_tight</extracomment>
        <translation>Zylinder %1 verliert nur %2, und doch wurde Luft an mehreren Austritten stark gehört. Beides kann nicht stimmen.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses %2, yet nothing was heard at any exit. So much air must come out somewhere: look at adapter and hose.</source>
        <extracomment>misfit.silent_but_leaks</extracomment>
        <translation>Zylinder %1 verliert %2, und doch wurde an keinem Austritt etwas gehört. So viel Luft muss irgendwo herauskommen: Adapter und Schlauch ansehen.</translation>
    </message>
    <message>
        <source>The photo of the %1 reads %3, and %2 was typed: look at the photo and settle it.</source>
        <extracomment>contra.photo_differs</extracomment>
        <translation>Das Foto zu „%1“ zeigt %3, eingetippt wurde %2: das Foto ansehen und es klären.</translation>
    </message>
    <message>
        <source>Air at intake and exhaust with very little held: is cylinder %1 at the TDC between exhaust and intake, both valves open? Turn the crank one full turn and test again.</source>
        <extracomment>question.tdc</extracomment>
        <translation>Luft an Einlass und Auslass bei sehr wenig Haltedruck: Steht Zylinder %1 im OT zwischen Auslass und Einlass, beide Ventile offen? Die Kurbelwelle eine volle Umdrehung weiterdrehen und erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 held only %2 of %3: did it stand at its TDC on compression, and did the crank stay there? Turn the crank one full turn and test again.</source>
        <extracomment>question.tdc_held</extracomment>
        <translation>Zylinder %1 hielt nur %2 von %3: Stand er im OT der Verdichtung, und blieb die Kurbelwelle dort stehen? Die Kurbelwelle eine volle Umdrehung weiterdrehen und erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 held %2 of %3, more than was set: that can&apos;t be, and it is not counted. Test again, and delete the wrong one.</source>
        <extracomment>question.over_set</extracomment>
        <translation>Zylinder %1 hielt %2 von %3, mehr als eingestellt war: Das kann nicht sein und zählt nicht. Noch einmal prüfen und den falschen Wert löschen.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: %3 was read after oil had gone in. It is kept, and not counted with what was read before the oil.</source>
        <extracomment>question.after_oil</extracomment>
        <translation>Zylinder %1, %2: %3 wurde abgelesen, nachdem Öl hineinkam. Der Wert bleibt erhalten und zählt nicht mit dem, was vor dem Öl abgelesen wurde.</translation>
    </message>
    <message>
        <source>Cylinder %1 held %2, and %3 when it was tested again. Both can&apos;t be right: %2 looks like the wrong TDC and is not counted. If %3 was the wrong one, delete it or test again.</source>
        <extracomment>question.very_low_first</extracomment>
        <translation>Zylinder %1 hielt %2, und bei erneuter Prüfung %3. Beides kann nicht stimmen: %2 sieht nach dem falschen OT aus und zählt nicht. War %3 der falsche Wert, diesen löschen oder erneut prüfen.</translation>
    </message>
    <message>
        <source>Cylinder %1 held %3, and then only %2. Both can&apos;t be right: %2 looks like the wrong TDC and is not counted until it is settled. Turn the crank one full turn and test again; delete the wrong one.</source>
        <extracomment>question.very_low_last</extracomment>
        <translation>Zylinder %1 hielt %3 und danach nur %2. Beides kann nicht stimmen: %2 sieht nach dem falschen OT aus und zählt nicht, bis es geklärt ist. Die Kurbelwelle eine volle Umdrehung weiterdrehen und erneut prüfen; den falschen Wert löschen.</translation>
    </message>
    <message>
        <source>Is %3 enough for %2 of cylinder %1? The engine&apos;s manual says. Put the wanted range on the engine card, under the valves: no verdict on a valve before it is known.</source>
        <extracomment>question.clearance_wanted</extracomment>
        <translation>Reichen %3 Ventilspiel in Zylinder %1 (%2)? Das sagt das Handbuch des Motors. Den Sollbereich auf die Motorkarte schreiben, bei den Ventilen: Vorher kein Urteil über ein Ventil.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, its siblings about %5. Check and adjust it first, the engine&apos;s manual says how much: no verdict on the valve before that.</source>
        <extracomment>question.clearance_siblings</extracomment>
        <translation>Zylinder %1, %2 %3: %4, die übrigen etwa %5. Erst nachmessen und einstellen, wie viel, sagt das Handbuch des Motors: vorher kein Urteil über das Ventil.</translation>
    </message>
    <message>
        <source>At an earlier visit a leak-down test found a fault at %1, and none was done there since: what this visit reads does not take that back.</source>
        <extracomment>question.earlier_fault</extracomment>
        <translation>Bei einem früheren Termin fand eine Druckverlustprüfung einen Fehler an %1, und seither gab es dort keine: Was dieser Termin zeigt, nimmt das nicht zurück.</translation>
    </message>
    <message>
        <source>The clearance of %2 in cylinder %1 is not recorded. No verdict on a valve before it is.</source>
        <extracomment>question.clearance</extracomment>
        <translation>Das Ventilspiel in Zylinder %1 ist nicht erfasst (%2). Vorher kein Urteil über ein Ventil.</translation>
    </message>
    <message>
        <source>The decompressor of cylinder %1 was at work: a low reading is no proof of a leak. Do a leak-down test.</source>
        <extracomment>question.decompressor</extracomment>
        <translation>Der Dekompressor von Zylinder %1 war wirksam: Ein niedriger Messwert ist kein Beweis für ein Leck. Eine Druckverlustprüfung machen.</translation>
    </message>
    <message>
        <source>Has this engine a decompressor? With one at work, cylinders read %2 to %3, as cylinder %1 does. A leak-down test settles it.</source>
        <extracomment>question.decompressor_unknown</extracomment>
        <translation>Hat dieser Motor einen Dekompressor? Ist einer wirksam, zeigen die Zylinder %2 bis %3 an, so wie Zylinder %1. Eine Druckverlustprüfung klärt es.</translation>
    </message>
    <message>
        <source>Oil went into cylinder %1 before its leak-down test: oiled rings leak less than they will.</source>
        <extracomment>question.oil_before_leak_down</extracomment>
        <translation>In Zylinder %1 kam vor der Druckverlustprüfung Öl: Geölte Kolbenringe verlieren weniger Luft als später ohne das Öl.</translation>
    </message>
    <message>
        <source>Oil was put into a diesel: the reading is not judged. The chamber is small and oil can lock it.</source>
        <extracomment>question.wet_on_diesel</extracomment>
        <translation>In einen Diesel wurde Öl gegeben: Der Messwert wird nicht beurteilt. Der Brennraum ist klein, und Öl kann den Motor blockieren.</translation>
    </message>
    <message>
        <source>Cylinder %1 has a wet test but no dry one: the rise is not known.</source>
        <extracomment>question.wet_without_dry</extracomment>
        <translation>Zylinder %1 hat eine Nassprüfung, aber keine Trockenprüfung: Der Anstieg ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Cylinder %1: the dry test was done in the state &quot;%2&quot;, the wet test in &quot;%3&quot;. More than the oil has changed in between: the rise says nothing of the rings.</source>
        <extracomment>question.wet_other_state</extracomment>
        <translation>Zylinder %1: Die Trockenprüfung war im Zustand „%2“, die Nassprüfung im Zustand „%3“. Dazwischen hat sich mehr geändert als das Öl: Der Anstieg sagt nichts über die Ringe.</translation>
    </message>
    <message>
        <source>Cylinder %1 was listened to in the state &quot;%2&quot;. A part that the air may have come from was touched since: what was heard does not count for what leaks now. Listen again.</source>
        <extracomment>question.heard_earlier</extracomment>
        <translation>Zylinder %1 wurde im Zustand „%2“ abgehört. Seither wurde an einem Teil gearbeitet, aus dem die Luft gekommen sein kann: Was zu hören war, zählt nicht für das, was jetzt leckt. Neu horchen.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, above the normal range: oil or carbon in the chamber, or the wrong gauge or limits?</source>
        <extracomment>question.above_high</extracomment>
        <translation>Zylinder %1 zeigt %2, über dem Normalbereich: Öl oder Ölkohle im Brennraum, oder falsches Manometer oder falsche Grenzwerte?</translation>
    </message>
    <message>
        <source>Cylinders %1 and %2 stand at top dead centre together. Air in the plug hole of %2 means the joint only if its valves are shut: turn %2 away from overlap or look at its rockers.</source>
        <extracomment>question.companion</extracomment>
        <translation>Zylinder %1 und %2 stehen gemeinsam im oberen Totpunkt. Luft im Kerzenloch von %2 bedeutet den Dichtungssteg nur, wenn dessen Ventile geschlossen sind: %2 aus der Ventilüberschneidung drehen oder seine Kipphebel ansehen.</translation>
    </message>
    <message>
        <source>While cylinder %1 stands at its TDC, cylinder %2 has its valves open on one side. What leaks past %3 of cylinder %1 can come out of the plug hole of %2 through the manifold: listen at that valve&apos;s exit before calling it the joint.</source>
        <extracomment>question.neighbour_open</extracomment>
        <translation>Steht Zylinder %1 auf seinem OT, hat Zylinder %2 auf einer Seite die Ventile offen. Was bei Zylinder %1 hier entweicht: %3, kann durch ein gemeinsames Sammelrohr aus dem Kerzenloch von %2 kommen: am Ausgang dieses Ventils horchen, bevor es der Dichtungssteg sein soll.</translation>
    </message>
    <message>
        <source>While cylinder %1 stands at its TDC, the valves of cylinder %2 may not be shut: look at its rockers. What leaks past %3 of cylinder %1 can then come out of the plug hole of %2 through the manifold: listen at that valve&apos;s exit before calling it the joint.</source>
        <extracomment>question.neighbour_may_be_open</extracomment>
        <translation>Steht Zylinder %1 auf seinem OT, sind die Ventile von Zylinder %2 vielleicht nicht zu: seine Kipphebel ansehen. Was bei Zylinder %1 hier entweicht: %3, kann dann durch ein gemeinsames Sammelrohr aus dem Kerzenloch von %2 kommen: am Ausgang dieses Ventils horchen, bevor es der Dichtungssteg sein soll.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: no clearance. The valve is held open: adjust first.</source>
        <extracomment>clearance.none</extracomment>
        <translation>Zylinder %1, %2 %3: kein Spiel. Das Ventil wird offen gehalten: erst einstellen.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, less than the least of %5. Adjust first.</source>
        <extracomment>clearance.too_small</extracomment>
        <translation>Zylinder %1, %2 %3: %4, weniger als das Mindestmaß von %5. Erst einstellen.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4 found, and nothing to hold it against. Put the wanted clearance from the engine&apos;s manual on the engine card, under the valves.</source>
        <extracomment>clearance.no_range</extracomment>
        <translation>Zylinder %1, %2 %3: %4 gefunden, aber nichts, woran es zu messen wäre. Das Sollspiel aus dem Handbuch des Motors auf die Motorkarte schreiben, bei den Ventilen.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, far less than the %5 of its siblings. Check and adjust it first; the engine&apos;s manual says how much.</source>
        <extracomment>clearance.siblings</extracomment>
        <translation>Zylinder %1, %2 %3: %4, weit weniger als die %5 der übrigen. Erst nachmessen und einstellen; wie viel, sagt das Handbuch des Motors.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, more than the most of %5: noise, but the valve seats.</source>
        <extracomment>clearance.too_large</extracomment>
        <translation>Zylinder %1, %2 %3: %4, mehr als das Höchstmaß von %5: Geräusch, aber das Ventil sitzt auf.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: was too small and is put right. Readings from before don&apos;t count for this valve.</source>
        <extracomment>clearance.adjusted</extracomment>
        <translation>Zylinder %1, %2 %3: war zu klein und ist berichtigt. Frühere Messwerte zählen für dieses Ventil nicht.</translation>
    </message>
    <message>
        <source>The crankcase holds: %1 after %3, at least %2 is asked.</source>
        <extracomment>crankcase.holds</extracomment>
        <translation>Das Kurbelgehäuse hält den Druck: %1 nach %3, verlangt sind mindestens %2.</translation>
    </message>
    <message>
        <source>The crankcase ended at %1, at least %2 is asked; how long it was held is not noted.</source>
        <extracomment>crankcase.holds_no_time</extracomment>
        <translation>Der Druck im Kurbelgehäuse endete bei %1, verlangt sind mindestens %2; wie lange gehalten wurde, ist nicht notiert.</translation>
    </message>
    <message>
        <source>The crankcase fell to %1; at least %2 is asked. Crank seals, base gasket, reed or rotary valve.</source>
        <extracomment>crankcase.loses</extracomment>
        <translation>Der Druck im Kurbelgehäuse fiel auf %1; verlangt sind mindestens %2. Wellendichtringe, Fußdichtung, Membran oder Drehschieber.</translation>
    </message>
    <message>
        <source>The crankcase ended at %1, so close to %2 that the gauge can&apos;t tell them apart.</source>
        <extracomment>crankcase.close</extracomment>
        <translation>Der Druck im Kurbelgehäuse endete bei %1, so nah an %2, dass das Manometer sie nicht unterscheiden kann.</translation>
    </message>
    <message>
        <source>The crankcase ended at %1, which may lie on either side of the %2 asked: the gauge&apos;s doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>crankcase.unsure</extracomment>
        <translation>Das Kurbelgehäuse endete bei %1, was auf beiden Seiten der verlangten %2 liegen kann: Die Unsicherheit des Manometers von ±%3 reicht darüber hinweg. Damit sie kleiner wird: %4.</translation>
    </message>
    <message>
        <source>The crankcase was held for %1 only; the maker asks for %2.</source>
        <extracomment>crankcase.too_short</extracomment>
        <translation>Der Druck im Kurbelgehäuse wurde nur %1 lang gehalten; der Hersteller verlangt %2.</translation>
    </message>
    <message>
        <source>The crankcase went from %1 to %2, nobody noted in how long; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>crankcase.no_limit</extracomment>
        <translation>Der Druck im Kurbelgehäuse ging von %1 auf %2, in welcher Zeit, ist nicht notiert; die Karte hat dafür keinen Grenzwert. Das Handbuch des Motors hat einen.</translation>
    </message>
    <message>
        <source>The crankcase went from %1 to %2 in %3; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>crankcase.no_limit_timed</extracomment>
        <translation>Der Druck im Kurbelgehäuse ging von %1 auf %2 in %3; die Karte hat dafür keinen Grenzwert. Das Handbuch des Motors hat einen.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 holds: %2 after %4, at least %3 is asked.</source>
        <extracomment>chamber.holds</extracomment>
        <translation>Das Kurbelgehäuse von Zylinder %1 hält den Druck: %2 nach %4, verlangt sind mindestens %3.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 ended at %2, at least %3 is asked; how long it was held is not noted.</source>
        <extracomment>chamber.holds_no_time</extracomment>
        <translation>Der Druck im Kurbelgehäuse von Zylinder %1 endete bei %2, verlangt sind mindestens %3; wie lange gehalten wurde, ist nicht notiert.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 fell to %2; at least %3 is asked. Its crank seals, also those towards its neighbours, base gasket, reed or rotary valve.</source>
        <extracomment>chamber.loses</extracomment>
        <translation>Der Druck im Kurbelgehäuse von Zylinder %1 fiel auf %2; verlangt sind mindestens %3. Seine Wellendichtringe, auch die zu den Nachbarn hin, Fußdichtung, Membran oder Drehschieber.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 ended at %2, so close to %3 that the gauge can&apos;t tell them apart.</source>
        <extracomment>chamber.close</extracomment>
        <translation>Der Druck im Kurbelgehäuse von Zylinder %1 endete bei %2, so nah an %3, dass das Manometer sie nicht unterscheiden kann.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 ended at %2, which may lie on either side of the %3 asked: the gauge&apos;s doubt of ±%4 reaches across it. To make it smaller: %5.</source>
        <extracomment>chamber.unsure</extracomment>
        <translation>Das Kurbelgehäuse von Zylinder %1 endete bei %2, was auf beiden Seiten der verlangten %3 liegen kann: Die Unsicherheit des Manometers von ±%4 reicht darüber hinweg. Damit sie kleiner wird: %5.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 was held for %2 only; the maker asks for %3.</source>
        <extracomment>chamber.too_short</extracomment>
        <translation>Der Druck im Kurbelgehäuse von Zylinder %1 wurde nur %2 lang gehalten; der Hersteller verlangt %3.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 went from %2 to %3, nobody noted in how long; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>chamber.no_limit</extracomment>
        <translation>Der Druck im Kurbelgehäuse von Zylinder %1 ging von %2 auf %3, in welcher Zeit, ist nicht notiert; die Karte hat dafür keinen Grenzwert. Das Handbuch des Motors hat einen.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 went from %2 to %3 in %4; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>chamber.no_limit_timed</extracomment>
        <translation>Der Druck im Kurbelgehäuse von Zylinder %1 ging von %2 auf %3 in %4; die Karte hat dafür keinen Grenzwert. Das Handbuch des Motors hat einen.</translation>
    </message>
    <message>
        <source>Factory limit here</source>
        <extracomment>from:limit</extracomment>
        <translation>Werksgrenzwert hier</translation>
    </message>
    <message>
        <source>The limit on the engine card, scaled by the air pressure at the shop against sea level.</source>
        <extracomment>from:limit</extracomment>
        <translation>Der Grenzwert der Motorkarte, umgerechnet mit dem Luftdruck der Werkstatt gegenüber Meereshöhe.</translation>
    </message>
    <message>
        <source>Reading</source>
        <comment>from:mean</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>The mean of the readings that count, with the gauge&apos;s error and their scatter.</source>
        <extracomment>from:mean</extracomment>
        <translation>Das Mittel der zählenden Messwerte, mit dem Fehler des Manometers und ihrer Streuung.</translation>
    </message>
    <message>
        <source>First puff</source>
        <comment>from:first_share</comment>
        <translation>Erster Hub</translation>
    </message>
    <message>
        <source>First puff divided by the final reading.</source>
        <extracomment>from:first_share</extracomment>
        <translation>Erster Hub geteilt durch den Endwert.</translation>
    </message>
    <message>
        <source>What makers ask</source>
        <extracomment>from:typical</extracomment>
        <translation>Was Hersteller verlangen</translation>
    </message>
    <message>
        <source>Makers&apos; usual range for such an engine, scaled by the air pressure at the shop.</source>
        <extracomment>from:typical</extracomment>
        <translation>Der übliche Bereich der Hersteller für so einen Motor, umgerechnet mit dem Luftdruck der Werkstatt.</translation>
    </message>
    <message>
        <source>Lowest against highest</source>
        <extracomment>from:lowest_of_highest</extracomment>
        <translation>Niedrigster zum höchsten</translation>
    </message>
    <message>
        <source>The lowest cylinder divided by the highest.</source>
        <extracomment>from:lowest_of_highest</extracomment>
        <translation>Der niedrigste Zylinder geteilt durch den höchsten.</translation>
    </message>
    <message>
        <source>Average</source>
        <extracomment>from:average</extracomment>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>The average of all cylinders, and how far below it each one lies.</source>
        <extracomment>from:average</extracomment>
        <translation>Das Mittel aller Zylinder und wie weit jeder darunter liegt.</translation>
    </message>
    <message>
        <source>Difference</source>
        <extracomment>from:difference</extracomment>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>The highest cylinder less the lowest.</source>
        <extracomment>from:difference</extracomment>
        <translation>Der höchste Zylinder minus der niedrigste.</translation>
    </message>
    <message>
        <source>Leakage</source>
        <extracomment>from:leakage</extracomment>
        <translation>Druckverlust</translation>
    </message>
    <message>
        <source>What was lost of the set pressure: set less held, divided by set.</source>
        <extracomment>from:leakage</extracomment>
        <translation>Was vom eingestellten Druck verloren ging: eingestellt minus gehalten, geteilt durch eingestellt.</translation>
    </message>
    <message>
        <source>The same leak on another tester</source>
        <extracomment>from:converted</extracomment>
        <translation>Dasselbe Leck auf einem anderen Prüfgerät</translation>
    </message>
    <message>
        <source>The leak is taken as a hole: what passes the restrictor passes the hole. Its size is found from your tester, then the other tester is put before the same hole.</source>
        <extracomment>from:converted</extracomment>
        <translation>Das Leck gilt als Loch: Was durch die Drosselbohrung geht, geht durch das Loch. Seine Größe ergibt sich aus dem eigenen Prüfgerät, dann wird das andere Prüfgerät vor dasselbe Loch gesetzt.</translation>
    </message>
    <message>
        <source>The same leak on another tester, as a narrow gap</source>
        <extracomment>from:converted_laminar</extracomment>
        <translation>Dasselbe Leck auf einem anderen Prüfgerät, als enger Spalt</translation>
    </message>
    <message>
        <source>The leak is taken as a long narrow gap instead of a hole, its size found from your tester.</source>
        <extracomment>from:converted_laminar</extracomment>
        <translation>Das Leck gilt als langer enger Spalt statt als Loch; seine Größe ergibt sich aus dem eigenen Prüfgerät.</translation>
    </message>
    <message>
        <source>Leak area</source>
        <extracomment>from:leak_area</extracomment>
        <translation>Leckfläche</translation>
    </message>
    <message>
        <source>The hole that passes as much air as the restrictor does.</source>
        <extracomment>from:leak_area</extracomment>
        <translation>Das Loch, das so viel Luft durchlässt wie die Drosselbohrung.</translation>
    </message>
    <message>
        <source>Equivalent hole</source>
        <extracomment>from:leak_hole</extracomment>
        <translation>Gleichwertiges Loch</translation>
    </message>
    <message>
        <source>The round hole of the leak&apos;s area.</source>
        <extracomment>from:leak_hole</extracomment>
        <translation>Das runde Loch mit der Fläche des Lecks.</translation>
    </message>
    <message>
        <source>Leak flow</source>
        <extracomment>from:flow</extracomment>
        <translation>Leckstrom</translation>
    </message>
    <message>
        <source>Air through the leak at the held pressure, as litres of air at 20 °C and 1 bar.</source>
        <extracomment>from:flow</extracomment>
        <translation>Luft durch das Leck beim Haltedruck, in Litern Luft bei 20 °C und 1 bar.</translation>
    </message>
    <message>
        <source>Wet rise</source>
        <extracomment>from:rise</extracomment>
        <translation>Anstieg mit Öl</translation>
    </message>
    <message>
        <source>The wet reading against the dry one.</source>
        <extracomment>from:rise</extracomment>
        <translation>Der nasse Messwert gegenüber dem trockenen.</translation>
    </message>
    <message>
        <source>Hold time</source>
        <comment>from:hold</comment>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>How long the pressure was held.</source>
        <extracomment>from:hold</extracomment>
        <translation>Wie lange der Druck gehalten wurde.</translation>
    </message>
    <message>
        <source>First puff rule</source>
        <extracomment>from:first_puff</extracomment>
        <translation>Regel vom ersten Hub</translation>
    </message>
    <message>
        <source>First and last of several strokes against what the cylinder should reach.</source>
        <extracomment>from:first_puff</extracomment>
        <translation>Erster und letzter von mehreren Hüben gegenüber dem, was der Zylinder erreichen sollte.</translation>
    </message>
    <message>
        <source>Loudest exit</source>
        <extracomment>from:loudest_exit</extracomment>
        <translation>Lautester Austritt</translation>
    </message>
    <message>
        <source>Where the air comes out names the part that leaks.</source>
        <extracomment>from:loudest_exit</extracomment>
        <translation>Wo die Luft herauskommt, zeigt das undichte Teil.</translation>
    </message>
    <message>
        <source>What the model expects</source>
        <extracomment>from:healthy</extracomment>
        <translation>Was das Modell erwartet</translation>
    </message>
    <message>
        <source>Strokes of a cylinder that seals well, worked out from the engine card for this gauge at sea level and scaled by the air pressure at the shop. The range is the doubt of what went in.</source>
        <extracomment>from:healthy</extracomment>
        <translation>Hübe eines gut dichtenden Zylinders, aus der Motorkarte für dieses Manometer auf Meereshöhe ausgerechnet und mit dem Luftdruck der Werkstatt umgerechnet. Der Bereich ist die Unsicherheit der Eingaben.</translation>
    </message>
    <message>
        <source>First puff that the model expects</source>
        <extracomment>from:healthy_first_share</extracomment>
        <translation>Erster Hub, den das Modell erwartet</translation>
    </message>
    <message>
        <source>First stroke against the last, of a cylinder that seals well, on this gauge.</source>
        <extracomment>from:healthy_first_share</extracomment>
        <translation>Erster Hub gegenüber dem letzten, bei einem gut dichtenden Zylinder, auf diesem Manometer.</translation>
    </message>
    <message>
        <source>What oil&apos;s volume explains</source>
        <extracomment>from:oil_rise</extracomment>
        <translation>Was das Ölvolumen erklärt</translation>
    </message>
    <message>
        <source>Oil that stays makes the chamber smaller, and the reading higher, with no ring sealed by it.</source>
        <extracomment>from:oil_rise</extracomment>
        <translation>Öl, das bleibt, macht den Brennraum kleiner und den Messwert höher, ohne dass es einen Kolbenring abdichtet.</translation>
    </message>
    <message>
        <source>What makers say of such a leak</source>
        <extracomment>from:bands</extracomment>
        <translation>Was Hersteller zu so einem Leck sagen</translation>
    </message>
    <message>
        <source>The leak is converted to the tester that each band was written for, and judged there.</source>
        <extracomment>from:bands</extracomment>
        <translation>Das Leck wird auf das Prüfgerät umgerechnet, für das der jeweilige Bereich geschrieben wurde, und dort beurteilt.</translation>
    </message>
    <message>
        <source>Difference between cylinders</source>
        <extracomment>from:leak_spread</extracomment>
        <translation>Unterschied zwischen den Zylindern</translation>
    </message>
    <message>
        <source>Every cylinder&apos;s leakage on the tester that the rule was written for.</source>
        <extracomment>from:leak_spread</extracomment>
        <translation>Der Druckverlust jedes Zylinders auf dem Prüfgerät, für das die Regel geschrieben wurde.</translation>
    </message>
    <message>
        <source>Put right for the limit</source>
        <extracomment>from:put_right</extracomment>
        <translation>Für den Grenzwert richtiggestellt</translation>
    </message>
    <message>
        <source>Limits are meant for a warm engine, cranked well, with the throttle open and the check valve at the plug hole. The model works out what each difference took off, and that is put back.</source>
        <extracomment>from:put_right</extracomment>
        <translation>Grenzwerte gelten für einen warmen, kräftig durchgedrehten Motor mit offener Drosselklappe und dem Rückschlagventil am Kerzenloch. Das Modell berechnet, wie viel jede Abweichung gekostet hat, und das kommt wieder hinzu.</translation>
    </message>
    <message>
        <source>How full the chamber is</source>
        <extracomment>from:oil_fill</extracomment>
        <translation>Wie voll der Brennraum ist</translation>
    </message>
    <message>
        <source>The oil put in against the chamber at top dead centre.</source>
        <extracomment>from:oil_fill</extracomment>
        <translation>Das eingefüllte Öl gegen den Brennraum im oberen Totpunkt.</translation>
    </message>
    <message>
        <source>What the hose takes off</source>
        <extracomment>from:hose_loss</extracomment>
        <translation>Was der Schlauch wegnimmt</translation>
    </message>
    <message>
        <source>Air before the check valve is compressed along with the chamber on every stroke and never reaches the gauge.</source>
        <extracomment>from:hose_loss</extracomment>
        <translation>Luft vor dem Rückschlagventil wird bei jedem Hub mit dem Brennraum verdichtet und kommt nie am Manometer an.</translation>
    </message>
    <message>
        <source>Without the hose</source>
        <extracomment>from:without_hose</extracomment>
        <translation>Ohne den Schlauch</translation>
    </message>
    <message>
        <source>The reading, put up by what the model says the volume before the check valve takes off.</source>
        <extracomment>from:without_hose</extracomment>
        <translation>Der Messwert, erhöht um das, was das Volumen vor dem Rückschlagventil nach dem Modell wegnimmt.</translation>
    </message>
    <message>
        <source>Law of the leak</source>
        <extracomment>from:leak_law</extracomment>
        <translation>Gesetz des Lecks</translation>
    </message>
    <message>
        <source>How the leak&apos;s area, taken as a hole, changes with the pressure held: not at all for a hole, growing for a narrow gap.</source>
        <extracomment>from:leak_law</extracomment>
        <translation>Wie sich die Fläche des Lecks, als Loch betrachtet, mit dem Haltedruck ändert: bei einem Loch gar nicht, bei einem engen Spalt zunehmend.</translation>
    </message>
    <message>
        <source>Restrictor by a drilled hole</source>
        <extracomment>from:restrictor</extracomment>
        <translation>Drosselbohrung über ein Prüfloch</translation>
    </message>
    <message>
        <source>What passes the restrictor passes the hole, whose size is known.</source>
        <comment>from:restrictor</comment>
        <translation>Was durch die Drosselbohrung geht, geht durch das Loch, dessen Größe bekannt ist.</translation>
    </message>
    <message>
        <source>Standard atmosphere</source>
        <extracomment>from:standard_atmosphere</extracomment>
        <translation>Normatmosphäre</translation>
    </message>
    <message>
        <source>The air pressure that goes with an altitude on an average day.</source>
        <extracomment>from:standard_atmosphere</extracomment>
        <translation>Der Luftdruck, der an einem durchschnittlichen Tag zu einer Höhe gehört.</translation>
    </message>
    <message>
        <source>Torque on the crank</source>
        <extracomment>from:torque</extracomment>
        <translation>Drehmoment an der Kurbelwelle</translation>
    </message>
    <message>
        <source>The pressure in the cylinder times what its volume grows by as the crank turns.</source>
        <extracomment>from:torque</extracomment>
        <translation>Der Druck im Zylinder mal dem, um was sein Volumen wächst, wenn sich die Kurbelwelle dreht.</translation>
    </message>
    <message>
        <source>Throttle closed</source>
        <extracomment>from:throttle_loss</extracomment>
        <translation>Drosselklappe geschlossen</translation>
    </message>
    <message>
        <source>The model&apos;s reading with less air in the cylinder, against that with the throttle open.</source>
        <extracomment>from:throttle_loss</extracomment>
        <translation>Der Messwert des Modells mit weniger Luft im Zylinder gegenüber dem mit offener Drosselklappe.</translation>
    </message>
    <message>
        <source>Slow cranking</source>
        <extracomment>from:slow_loss</extracomment>
        <translation>Langsames Durchdrehen</translation>
    </message>
    <message>
        <source>The model&apos;s reading at the slow speed against that at the usual one.</source>
        <extracomment>from:slow_loss</extracomment>
        <translation>Der Messwert des Modells bei der langsamen Drehzahl gegenüber dem bei der üblichen.</translation>
    </message>
    <message>
        <source>What the other cranking speed takes off</source>
        <extracomment>from:speed_loss</extracomment>
        <translation>Was die andere Anlasserdrehzahl nimmt</translation>
    </message>
    <message>
        <source>The model&apos;s reading at the other cranking speed against that at this one.</source>
        <extracomment>from:speed_loss</extracomment>
        <translation>Der Messwert des Modells bei der anderen Anlasserdrehzahl gegen den bei dieser.</translation>
    </message>
    <message>
        <source>Reading at the other cranking speed</source>
        <extracomment>from:slow_reading</extracomment>
        <translation>Messwert bei der anderen Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>What a cylinder that seals well reads, less what the other speed takes off.</source>
        <extracomment>from:slow_reading</extracomment>
        <translation>Was ein gut dichtender Zylinder zeigt, weniger das, was die andere Drehzahl nimmt.</translation>
    </message>
    <message>
        <source>Reading with that throttle</source>
        <extracomment>from:throttle_reading</extracomment>
        <translation>Messwert mit dieser Drosselklappe</translation>
    </message>
    <message>
        <source>What a cylinder that seals well reads, less what the throttle takes off.</source>
        <extracomment>from:throttle_reading</extracomment>
        <translation>Was ein gut dichtender Zylinder zeigt, weniger das, was die Drosselklappe nimmt.</translation>
    </message>
    <message>
        <source>Cold engine</source>
        <extracomment>from:cold_loss</extracomment>
        <translation>Kalter Motor</translation>
    </message>
    <message>
        <source>The model&apos;s reading with cold cylinder walls against that with warm ones.</source>
        <extracomment>from:cold_loss</extracomment>
        <translation>Der Messwert des Modells mit kalten Zylinderwänden gegenüber dem mit warmen.</translation>
    </message>
    <message>
        <source>Tyre-valve core</source>
        <extracomment>from:core_loss</extracomment>
        <translation>Reifenventileinsatz</translation>
    </message>
    <message>
        <source>The model&apos;s reading with a core that is hard to open against that with one made for gauges.</source>
        <extracomment>from:core_loss</extracomment>
        <translation>Der Messwert des Modells mit einem schwer öffnenden Einsatz gegenüber dem mit einem für Manometer gemachten.</translation>
    </message>
    <message>
        <source>Difference between the visits</source>
        <extracomment>from:change</extracomment>
        <translation>Differenz zwischen den Terminen</translation>
    </message>
    <message>
        <source>The later reading less the earlier one in the later visit&apos;s terms; what both are out by together cancels.</source>
        <extracomment>from:change</extracomment>
        <translation>Der spätere Messwert minus der frühere, nach den Maßstäben des späteren Termins; was an beiden gemeinsam falsch ist, hebt sich auf.</translation>
    </message>
    <message>
        <source>With the decompressor at work</source>
        <extracomment>from:released</extracomment>
        <translation>Mit arbeitendem Dekompressor</translation>
    </message>
    <message>
        <source>The model&apos;s reading with the cylinder closing as late as a decompressor leaves it.</source>
        <extracomment>from:released</extracomment>
        <translation>Der Messwert des Modells, wenn der Zylinder so spät schließt, wie ein Dekompressor ihn lässt.</translation>
    </message>
    <message>
        <source>After so many pulls</source>
        <extracomment>from:reached</extracomment>
        <translation>Nach so vielen Hüben</translation>
    </message>
    <message>
        <source>The model&apos;s reading after so many strokes against that of endlessly many, on this gauge.</source>
        <extracomment>from:reached</extracomment>
        <translation>Der Messwert des Modells nach so vielen Hüben gegen den nach endlos vielen, auf diesem Manometer.</translation>
    </message>
    <message>
        <source>How many pulls</source>
        <extracomment>from:pulls</extracomment>
        <translation>Wie viele Hübe</translation>
    </message>
    <message>
        <source>Gauges fill stroke by stroke: makers name how many it takes.</source>
        <extracomment>from:pulls</extracomment>
        <translation>Manometer füllen sich Hub für Hub: Hersteller nennen, wie viele es braucht.</translation>
    </message>
    <message>
        <source>Force at the end of the bar</source>
        <extracomment>from:force</extracomment>
        <translation>Kraft am Ende des Hebels</translation>
    </message>
    <message>
        <source>The torque divided by the length of the bar.</source>
        <extracomment>from:force</extracomment>
        <translation>Das Drehmoment geteilt durch die Länge des Hebels.</translation>
    </message>
    <message>
        <source>Correction</source>
        <extracomment>from:correction</extracomment>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>The reading with nothing before the check valve against that with this tester, by the model.</source>
        <extracomment>from:correction</extracomment>
        <translation>Der Messwert ohne etwas vor dem Rückschlagventil gegen den mit diesem Prüfgerät, nach dem Modell.</translation>
    </message>
    <message>
        <source>Wet reading by volume alone</source>
        <extracomment>from:wet_reading</extracomment>
        <translation>Nasser Messwert allein durch das Volumen</translation>
    </message>
    <message>
        <source>The dry reading, put up by what the oil&apos;s volume explains.</source>
        <extracomment>from:wet_reading</extracomment>
        <translation>Der trockene Messwert, erhöht um das, was das Ölvolumen erklärt.</translation>
    </message>
    <message>
        <source>Restrictor&apos;s effective area</source>
        <extracomment>from:restrictor_area</extracomment>
        <translation>Wirksame Fläche der Drosselbohrung</translation>
    </message>
    <message>
        <source>What passes the restrictor passes the hole, whose size is known.</source>
        <comment>from:restrictor_area</comment>
        <translation>Was durch die Drosselbohrung geht, geht durch das Loch, dessen Größe bekannt ist.</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <comment>from:odds</comment>
        <translation>Wo es undicht ist</translation>
    </message>
    <message>
        <source>Cylinders are drawn at random, leaking here and there as the working assumptions say they do, and each counts as much as readings like these would be likely of it. The shares and odds are those of all that were drawn.</source>
        <extracomment>from:odds</extracomment>
        <translation>Zylinder werden zufällig gezogen, hier und da so undicht, wie die Annahmen es sagen, und jeder zählt so viel, wie solche Messwerte von ihm zu erwarten wären. Anteile und Wahrscheinlichkeiten sind die aller gezogenen.</translation>
    </message>
    <message>
        <source>Dry test to expect after a repair</source>
        <extracomment>from:after_repair</extracomment>
        <translation>Nach einer Reparatur zu erwartende Trockenprüfung</translation>
    </message>
    <message>
        <source>The same cylinders once more, the leak of the repaired part put back to that of a sound one; nine of ten read within the range.</source>
        <extracomment>from:after_repair</extracomment>
        <translation>Dieselben Zylinder noch einmal, das reparierte Teil so dicht wie ein heiles; neun von zehn zeigen einen Wert im Bereich.</translation>
    </message>
    <message>
        <source>Neighbours</source>
        <extracomment>from:joint</extracomment>
        <translation>Nachbarn</translation>
    </message>
    <message>
        <source>Two neighbours that are low together, with the others in order.</source>
        <extracomment>from:joint</extracomment>
        <translation>Zwei Nachbarn, die gemeinsam niedrig sind, während die anderen in Ordnung sind.</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <extracomment>cycle:four-stroke</extracomment>
        <translation>Viertakt</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <extracomment>cycle:two-stroke</extracomment>
        <translation>Zweitakt</translation>
    </message>
    <message>
        <source>petrol</source>
        <extracomment>fuel:petrol</extracomment>
        <translation>Benzin</translation>
    </message>
    <message>
        <source>diesel</source>
        <extracomment>fuel:diesel</extracomment>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>single</source>
        <extracomment>arrangement:single</extracomment>
        <translation>Einzylinder</translation>
    </message>
    <message>
        <source>in-line</source>
        <extracomment>arrangement:in-line</extracomment>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>V</source>
        <extracomment>arrangement:v</extracomment>
        <translation>V</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>arrangement:flat</extracomment>
        <translation>Boxer</translation>
    </message>
    <message>
        <source>other</source>
        <comment>arrangement:other</comment>
        <translation>andere</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>cooling:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>air</source>
        <extracomment>cooling:air</extracomment>
        <translation>Luft</translation>
    </message>
    <message>
        <source>liquid</source>
        <extracomment>cooling:liquid</extracomment>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>adjuster:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>screw</source>
        <extracomment>adjuster:screw</extracomment>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>shim</source>
        <extracomment>adjuster:shim</extracomment>
        <translation>Plättchen</translation>
    </message>
    <message>
        <source>hydraulic</source>
        <extracomment>adjuster:hydraulic</extracomment>
        <translation>hydraulisch</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>decompressor:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>decompressor:none</extracomment>
        <translation>keiner</translation>
    </message>
    <message>
        <source>manual</source>
        <comment>decompressor:manual</comment>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>automatic</source>
        <extracomment>decompressor:automatic</extracomment>
        <translation>automatisch</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>timing:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>fixed</source>
        <extracomment>timing:fixed</extracomment>
        <translation>fest</translation>
    </message>
    <message>
        <source>variable</source>
        <extracomment>timing:variable</extracomment>
        <translation>variabel</translation>
    </message>
    <message>
        <source>source not noted</source>
        <extracomment>origin:unknown</extracomment>
        <translation>Quelle nicht notiert</translation>
    </message>
    <message>
        <source>manual</source>
        <comment>origin:manual</comment>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>measured</source>
        <extracomment>origin:measured</extracomment>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>guessed</source>
        <extracomment>origin:guessed</extracomment>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>timing_at:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>on the seat</source>
        <extracomment>timing_at:seat</extracomment>
        <translation>im Sitz</translation>
    </message>
    <message>
        <source>at 1 mm lift</source>
        <extracomment>timing_at:1 mm lift</extracomment>
        <translation>bei 1 mm Hub</translation>
    </message>
    <message>
        <source>at 0.050 in lift</source>
        <extracomment>timing_at:0.050 in lift</extracomment>
        <translation>bei 0,050 in Hub</translation>
    </message>
    <message>
        <source>session</source>
        <extracomment>tied_to:session</extracomment>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>cylinder</source>
        <extracomment>tied_to:cylinder</extracomment>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>tied_to:reading</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>exit</source>
        <comment>tied_to:exit</comment>
        <translation>Austritt</translation>
    </message>
    <message>
        <source>clearance</source>
        <extracomment>tied_to:clearance</extracomment>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>plan</source>
        <extracomment>tied_to:plan line</extracomment>
        <translation>Plan</translation>
    </message>
    <message>
        <source>finding</source>
        <extracomment>tied_to:finding</extracomment>
        <translation>Befund</translation>
    </message>
    <message>
        <source>note</source>
        <comment>tied_to:note</comment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>tester</source>
        <extracomment>tied_to:tester</extracomment>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>photo</source>
        <extracomment>attachment:photo</extracomment>
        <translation>Foto</translation>
    </message>
    <message>
        <source>voice note</source>
        <extracomment>attachment:voice note</extracomment>
        <translation>Sprachnotiz</translation>
    </message>
    <message>
        <source>gauge</source>
        <extracomment>photo_of:gauge</extracomment>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>plug</source>
        <extracomment>photo_of:plug</extracomment>
        <translation>Kerze</translation>
    </message>
    <message>
        <source>borescope</source>
        <comment>photo_of:borescope</comment>
        <translation>Endoskop</translation>
    </message>
    <message>
        <source>valve</source>
        <extracomment>photo_of:valve</extracomment>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>piston crown</source>
        <extracomment>photo_of:piston crown</extracomment>
        <translation>Kolbenboden</translation>
    </message>
    <message>
        <source>exit</source>
        <comment>photo_of:exit</comment>
        <translation>Austritt</translation>
    </message>
    <message>
        <source>other</source>
        <comment>photo_of:other</comment>
        <translation>anderes</translation>
    </message>
    <message>
        <source>note</source>
        <comment>note:note</comment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>other cause</source>
        <extracomment>note:other cause</extracomment>
        <translation>andere Ursache</translation>
    </message>
    <message>
        <source>please test this</source>
        <extracomment>note:please test this</extracomment>
        <translation>bitte das prüfen</translation>
    </message>
    <message>
        <source>my call</source>
        <extracomment>note:my call</extracomment>
        <translation>meine Einschätzung</translation>
    </message>
    <message>
        <source>leak hunt</source>
        <extracomment>asked_check:leak hunt</extracomment>
        <translation>Lecksuche</translation>
    </message>
    <message>
        <source>valve clearances</source>
        <extracomment>asked_check:clearances</extracomment>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>staking a valve</source>
        <extracomment>asked_check:staking</extracomment>
        <translation>ein Ventil freiklopfen</translation>
    </message>
    <message>
        <source>tester check</source>
        <extracomment>asked_check:tester check</extracomment>
        <translation>Kontrolle des Prüfgeräts</translation>
    </message>
    <message>
        <source>rings</source>
        <comment>cause:rings</comment>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>intake valve</source>
        <comment>cause:intake</comment>
        <translation>Einlassventil</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <comment>cause:exhaust</comment>
        <translation>Auslassventil</translation>
    </message>
    <message>
        <source>head gasket</source>
        <comment>cause:head gasket</comment>
        <translation>Zylinderkopfdichtung</translation>
    </message>
    <message>
        <source>joint to the next cylinder</source>
        <comment>cause:next cylinder</comment>
        <translation>Dichtungssteg zum Nachbarzylinder</translation>
    </message>
    <message>
        <source>into the coolant</source>
        <extracomment>cause:coolant</extracomment>
        <translation>ins Kühlmittel</translation>
    </message>
    <message>
        <source>decompressor</source>
        <comment>cause:decompressor</comment>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>crankcase</source>
        <extracomment>cause:crankcase</extracomment>
        <translation>Kurbelgehäuse</translation>
    </message>
    <message>
        <source>seals well</source>
        <comment>cause:seals well</comment>
        <translation>dichtet gut</translation>
    </message>
    <message>
        <source>tester or method</source>
        <extracomment>cause:tester or method</extracomment>
        <translation>Prüfgerät oder Vorgehen</translation>
    </message>
    <message>
        <source>as read</source>
        <extracomment>read_settled:as read</extracomment>
        <translation>wie abgelesen</translation>
    </message>
    <message>
        <source>as typed</source>
        <extracomment>read_settled:as typed</extracomment>
        <translation>wie eingetippt</translation>
    </message>
    <message>
        <source>left open</source>
        <extracomment>read_settled:left open</extracomment>
        <translation>offen gelassen</translation>
    </message>
    <message>
        <source>photo only</source>
        <extracomment>read_settled:photo only</extracomment>
        <translation>nur Foto</translation>
    </message>
    <message>
        <source>No round dial was found. Fill the ring with the gauge and take the photo again.</source>
        <extracomment>read_refusal:no_dial</extracomment>
        <translation>Kein rundes Zifferblatt gefunden. Den Ring mit dem Manometer ausfüllen und noch einmal fotografieren.</translation>
    </message>
    <message>
        <source>A dial was found, but not its scale. Take the photo closer, sharper and without glare.</source>
        <extracomment>read_refusal:no_scale</extracomment>
        <translation>Ein Zifferblatt wurde gefunden, aber seine Skala nicht. Das Foto näher, schärfer und ohne Spiegelung aufnehmen.</translation>
    </message>
    <message>
        <source>The scale was found, but not the needle. Take the photo again without glare on it.</source>
        <extracomment>read_refusal:no_needle</extracomment>
        <translation>Die Skala wurde gefunden, aber der Zeiger nicht. Noch einmal ohne Spiegelung darauf fotografieren.</translation>
    </message>
    <message>
        <source>There is more than one needle on the dial, and the photo does not tell which of them to read. Type the value.</source>
        <extracomment>read_refusal:two_needles</extracomment>
        <translation>Auf dem Zifferblatt ist mehr als ein Zeiger, und das Foto verrät nicht, welcher abzulesen ist. Den Wert eintippen.</translation>
    </message>
    <message>
        <source>The reading is too doubtful to give. Take the photo square on and without glare, or type the value.</source>
        <extracomment>read_refusal:unsure</extracomment>
        <translation>Die Ablesung ist zu zweifelhaft. Das Foto gerade von vorn und ohne Spiegelung aufnehmen oder den Wert eintippen.</translation>
    </message>
    <message>
        <source>leave it</source>
        <extracomment>plan:leave it</extracomment>
        <translation>so lassen</translation>
    </message>
    <message>
        <source>quick fix</source>
        <extracomment>plan:quick fix</extracomment>
        <translation>schnelle Abhilfe</translation>
    </message>
    <message>
        <source>strip</source>
        <extracomment>plan:strip</extracomment>
        <translation>zerlegen</translation>
    </message>
    <message>
        <source>dry test</source>
        <extracomment>test:dry</extracomment>
        <translation>Trockenprüfung</translation>
    </message>
    <message>
        <source>leak-down</source>
        <extracomment>test:leak-down</extracomment>
        <translation>Druckverlustprüfung</translation>
    </message>
    <message>
        <source>wet test</source>
        <extracomment>test:wet</extracomment>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>crankcase hold test</source>
        <extracomment>test:crankcase</extracomment>
        <translation>Kurbelgehäuse-Druckhalteprüfung</translation>
    </message>
    <message>
        <source>as found</source>
        <extracomment>tag:as found</extracomment>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>after clearance adjustment</source>
        <extracomment>tag:after clearance adjustment</extracomment>
        <translation>nach Einstellen des Ventilspiels</translation>
    </message>
    <message>
        <source>after staking</source>
        <extracomment>tag:after staking</extracomment>
        <translation>nach dem Freiklopfen</translation>
    </message>
    <message>
        <source>after oil soak</source>
        <extracomment>tag:after oil soak</extracomment>
        <translation>nach Einwirken von Öl</translation>
    </message>
    <message>
        <source>after running three minutes</source>
        <extracomment>tag:after running three minutes</extracomment>
        <translation>nach drei Minuten Lauf</translation>
    </message>
    <message>
        <source>after repair</source>
        <extracomment>tag:after repair</extracomment>
        <translation>nach der Reparatur</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>oiled:unknown</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>no oil</source>
        <extracomment>oiled:no</extracomment>
        <translation>kein Öl</translation>
    </message>
    <message>
        <source>oiled before</source>
        <extracomment>oiled:before</extracomment>
        <translation>vorher geölt</translation>
    </message>
    <message>
        <source>freshly oiled</source>
        <extracomment>oiled:fresh</extracomment>
        <translation>frisch geölt</translation>
    </message>
    <message>
        <source>typed</source>
        <extracomment>reading_from:typed</extracomment>
        <translation>eingetippt</translation>
    </message>
    <message>
        <source>read from the photo</source>
        <extracomment>reading_from:photo</extracomment>
        <translation>vom Foto abgelesen</translation>
    </message>
    <message>
        <source>intake</source>
        <extracomment>exit:intake</extracomment>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>exhaust</source>
        <extracomment>exit:exhaust</extracomment>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>breather</source>
        <extracomment>exit:breather</extracomment>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>head gasket</source>
        <comment>exit:head gasket</comment>
        <translation>Kopfdichtung</translation>
    </message>
    <message>
        <source>coolant</source>
        <extracomment>exit:coolant</extracomment>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>next cylinder&apos;s plug hole</source>
        <extracomment>exit:next cylinder&apos;s plug hole</extracomment>
        <translation>Kerzenloch des Nachbarzylinders</translation>
    </message>
    <message>
        <source>crank seals</source>
        <extracomment>exit:crank seals</extracomment>
        <translation>Wellendichtringe</translation>
    </message>
    <message>
        <source>base gasket</source>
        <extracomment>exit:base gasket</extracomment>
        <translation>Fußdichtung</translation>
    </message>
    <message>
        <source>reed</source>
        <extracomment>exit:reed</extracomment>
        <translation>Membran</translation>
    </message>
    <message>
        <source>decompressor</source>
        <comment>exit:decompressor</comment>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>other</source>
        <comment>exit:other</comment>
        <translation>anderer</translation>
    </message>
    <message>
        <source>nothing</source>
        <extracomment>loudness:nothing</extracomment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>faint</source>
        <extracomment>loudness:faint</extracomment>
        <translation>schwach</translation>
    </message>
    <message>
        <source>clear</source>
        <extracomment>loudness:clear</extracomment>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>strong</source>
        <extracomment>loudness:strong</extracomment>
        <translation>stark</translation>
    </message>
    <message>
        <source>ear</source>
        <extracomment>listened_by:ear</extracomment>
        <translation>Ohr</translation>
    </message>
    <message>
        <source>hose</source>
        <extracomment>listened_by:hose</extracomment>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>soapy water</source>
        <extracomment>listened_by:soapy water</extracomment>
        <translation>Seifenwasser</translation>
    </message>
    <message>
        <source>bubbles</source>
        <extracomment>listened_by:bubbles</extracomment>
        <translation>Blasen</translation>
    </message>
    <message>
        <source>hand</source>
        <extracomment>listened_by:hand</extracomment>
        <translation>Hand</translation>
    </message>
    <message>
        <source>intake valve</source>
        <comment>valve:intake</comment>
        <translation>Einlassventil</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <comment>valve:exhaust</comment>
        <translation>Auslassventil</translation>
    </message>
    <message>
        <source>power loss</source>
        <extracomment>symptom:power loss</extracomment>
        <translation>Leistungsverlust</translation>
    </message>
    <message>
        <source>oil use</source>
        <extracomment>symptom:oil use</extracomment>
        <translation>Ölverbrauch</translation>
    </message>
    <message>
        <source>blue smoke</source>
        <extracomment>symptom:blue smoke</extracomment>
        <translation>blauer Rauch</translation>
    </message>
    <message>
        <source>white smoke</source>
        <extracomment>symptom:white smoke</extracomment>
        <translation>weißer Rauch</translation>
    </message>
    <message>
        <source>black smoke</source>
        <extracomment>symptom:black smoke</extracomment>
        <translation>schwarzer Rauch</translation>
    </message>
    <message>
        <source>coolant loss</source>
        <extracomment>symptom:coolant loss</extracomment>
        <translation>Kühlmittelverlust</translation>
    </message>
    <message>
        <source>hard starting</source>
        <extracomment>symptom:hard starting</extracomment>
        <translation>schlechtes Anspringen</translation>
    </message>
    <message>
        <source>noise</source>
        <extracomment>symptom:noise</extracomment>
        <translation>Geräusch</translation>
    </message>
    <message>
        <source>misfire</source>
        <extracomment>symptom:misfire</extracomment>
        <translation>Aussetzer</translation>
    </message>
    <message>
        <source>stood for long</source>
        <extracomment>symptom:stood for long</extracomment>
        <translation>stand lange</translation>
    </message>
    <message>
        <source>plug wells blown out</source>
        <extracomment>prepare:plug wells blown out</extracomment>
        <translation>Kerzenschächte ausgeblasen</translation>
    </message>
    <message>
        <source>wells of injectors or glow plugs blown out</source>
        <extracomment>prepare:plug wells blown out, diesel</extracomment>
        <translation>Schächte der Einspritzdüsen oder Glühkerzen ausgeblasen</translation>
    </message>
    <message>
        <source>turned by hand</source>
        <extracomment>prepare:turned by hand</extracomment>
        <translation>von Hand gedreht</translation>
    </message>
    <message>
        <source>bores oiled and left</source>
        <extracomment>prepare:bores oiled</extracomment>
        <translation>Bohrungen geölt und stehen gelassen</translation>
    </message>
    <message>
        <source>oil level looked at</source>
        <extracomment>prepare:oil level</extracomment>
        <translation>Ölstand angesehen</translation>
    </message>
    <message>
        <source>stuck valves looked for</source>
        <extracomment>prepare:stuck valves</extracomment>
        <translation>nach hängenden Ventilen gesehen</translation>
    </message>
    <message>
        <source>borescope</source>
        <comment>prepare:borescope</comment>
        <translation>Endoskop</translation>
    </message>
    <message>
        <source>clearances first</source>
        <extracomment>prepare:clearances first</extracomment>
        <translation>Ventilspiel zuerst</translation>
    </message>
    <message>
        <source>warm or cold noted</source>
        <extracomment>prepare:temperature noted</extracomment>
        <translation>warm oder kalt notiert</translation>
    </message>
    <message>
        <source>throttle held open</source>
        <extracomment>prepare:throttle open</extracomment>
        <translation>Drosselklappe offen gehalten</translation>
    </message>
    <message>
        <source>all plugs out</source>
        <extracomment>prepare:all plugs out</extracomment>
        <translation>alle Kerzen heraus</translation>
    </message>
    <message>
        <source>all injectors or glow plugs out</source>
        <extracomment>prepare:all plugs out, diesel</extracomment>
        <translation>alle Einspritzdüsen oder Glühkerzen heraus</translation>
    </message>
    <message>
        <source>ignition leads grounded</source>
        <extracomment>prepare:ignition grounded</extracomment>
        <translation>Zündleitungen an Masse</translation>
    </message>
    <message>
        <source>fuel or injectors off</source>
        <extracomment>prepare:fuel off</extracomment>
        <translation>Kraftstoff oder Einspritzung aus</translation>
    </message>
    <message>
        <source>battery on charge</source>
        <extracomment>prepare:battery</extracomment>
        <translation>Batterie am Ladegerät</translation>
    </message>
    <message>
        <source>decompressor off</source>
        <extracomment>prepare:decompressor off</extracomment>
        <translation>Dekompressor aus</translation>
    </message>
    <message>
        <source>oil filler or breather open</source>
        <extracomment>prepare:breather open</extracomment>
        <translation>Öleinfüllöffnung oder Entlüftung offen</translation>
    </message>
    <message>
        <source>compressor off while listening</source>
        <extracomment>prepare:compressor off</extracomment>
        <translation>Kompressor beim Horchen aus</translation>
    </message>
    <message>
        <source>not marked</source>
        <extracomment>step_state:open</extracomment>
        <translation>nicht gekennzeichnet</translation>
    </message>
    <message>
        <source>done</source>
        <extracomment>step_state:done</extracomment>
        <translation>getan</translation>
    </message>
    <message>
        <source>not done</source>
        <extracomment>step_state:not done</extracomment>
        <translation>nicht getan</translation>
    </message>
    <message>
        <source>not needed</source>
        <extracomment>step_state:not needed</extracomment>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>heat:unknown</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>cold</source>
        <extracomment>heat:cold</extracomment>
        <translation>kalt</translation>
    </message>
    <message>
        <source>warm</source>
        <extracomment>heat:warm</extracomment>
        <translation>warm</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>throttle:unknown</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>held open</source>
        <extracomment>throttle:held open</extracomment>
        <translation>offen gehalten</translation>
    </message>
    <message>
        <source>closed</source>
        <extracomment>throttle:closed</extracomment>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>induction:unknown</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>fitted</source>
        <extracomment>induction:fitted</extracomment>
        <translation>angebaut</translation>
    </message>
    <message>
        <source>taken off</source>
        <extracomment>induction:taken off</extracomment>
        <translation>abgebaut</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>cranked_by:unknown</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>starter</source>
        <extracomment>cranked_by:starter</extracomment>
        <translation>Anlasser</translation>
    </message>
    <message>
        <source>remote switch</source>
        <extracomment>cranked_by:remote switch</extracomment>
        <translation>Fernschalter</translation>
    </message>
    <message>
        <source>kick</source>
        <extracomment>cranked_by:kick</extracomment>
        <translation>Kickstarter</translation>
    </message>
    <message>
        <source>rope</source>
        <extracomment>cranked_by:rope</extracomment>
        <translation>Seilzug</translation>
    </message>
    <message>
        <source>drill</source>
        <extracomment>cranked_by:drill</extracomment>
        <translation>Bohrmaschine</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>crank_held_by:unknown</comment>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>gear and brake</source>
        <extracomment>crank_held_by:gear and brake</extracomment>
        <translation>Gang und Bremse</translation>
    </message>
    <message>
        <source>second person</source>
        <extracomment>crank_held_by:second person</extracomment>
        <translation>zweite Person</translation>
    </message>
    <message>
        <source>bar</source>
        <extracomment>crank_held_by:bar</extracomment>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>lower set pressure</source>
        <extracomment>crank_held_by:lower set pressure</extracomment>
        <translation>niedrigerer eingestellter Druck</translation>
    </message>
    <message>
        <source>not asked</source>
        <extracomment>owner_answer:none</extracomment>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>later</source>
        <extracomment>owner_answer:later</extracomment>
        <translation>später</translation>
    </message>
    <message>
        <source>compression gauge</source>
        <extracomment>tester:compression gauge</extracomment>
        <translation>Kompressionsprüfer</translation>
    </message>
    <message>
        <source>leak-down tester</source>
        <extracomment>tester:leak-down tester</extracomment>
        <translation>Druckverlustprüfer</translation>
    </message>
    <message>
        <source>crankcase tester</source>
        <extracomment>tester:crankcase tester</extracomment>
        <translation>Kurbelgehäuseprüfer</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>check_valve_at:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>chamber end</source>
        <extracomment>check_valve_at:chamber end</extracomment>
        <translation>brennraumseitig</translation>
    </message>
    <message>
        <source>gauge end</source>
        <extracomment>check_valve_at:gauge end</extracomment>
        <translation>manometerseitig</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>check_valve_core:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>low-pressure core</source>
        <extracomment>check_valve_core:low-pressure</extracomment>
        <translation>Niederdruckeinsatz</translation>
    </message>
    <message>
        <source>tyre-valve core</source>
        <extracomment>check_valve_core:tyre</extracomment>
        <translation>Reifenventileinsatz</translation>
    </message>
    <message>
        <source>screwed</source>
        <extracomment>adapter_seal:screwed</extracomment>
        <translation>geschraubt</translation>
    </message>
    <message>
        <source>rubber cone</source>
        <extracomment>adapter_seal:rubber cone</extracomment>
        <translation>Gummikonus</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>accuracy:unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>EN 837-1</source>
        <extracomment>accuracy:EN 837-1</extracomment>
        <translation>EN 837-1</translation>
    </message>
    <message>
        <source>ASME B40.100</source>
        <extracomment>accuracy:ASME B40.100</extracomment>
        <translation>ASME B40.100</translation>
    </message>
    <message>
        <source>outlet blocked reads 0 %</source>
        <extracomment>tester_check:outlet blocked</extracomment>
        <translation>bei verschlossenem Ausgang 0 %</translation>
    </message>
    <message>
        <source>gauge does not sink after cranking</source>
        <extracomment>tester_check:holds after cranking</extracomment>
        <translation>Manometer sinkt nach dem Durchdrehen nicht</translation>
    </message>
    <message>
        <source>needle at zero at rest</source>
        <extracomment>tester_check:zero at rest</extracomment>
        <translation>Zeiger in Ruhe auf null</translation>
    </message>
    <message>
        <source>drilled hole</source>
        <comment>tester_check:drilled hole</comment>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>compared with a reference</source>
        <extracomment>tester_check:against a reference</extracomment>
        <translation>mit einer Referenz verglichen</translation>
    </message>
    <message>
        <source>passed</source>
        <extracomment>check_result:passed</extracomment>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>failed</source>
        <extracomment>check_result:failed</extracomment>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>the rings</source>
        <extracomment>path:rings</extracomment>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>the intake valve</source>
        <extracomment>path:intake</extracomment>
        <translation>Einlassventil</translation>
    </message>
    <message>
        <source>the exhaust valve</source>
        <extracomment>path:exhaust</extracomment>
        <translation>Auslassventil</translation>
    </message>
    <message>
        <source>the head gasket</source>
        <extracomment>path:gasket</extracomment>
        <translation>Zylinderkopfdichtung</translation>
    </message>
    <message>
        <source>the joint to the next cylinder</source>
        <extracomment>path:next_cylinder</extracomment>
        <translation>Dichtungssteg zum Nachbarzylinder</translation>
    </message>
    <message>
        <source>the head gasket, into the coolant</source>
        <extracomment>path:coolant</extracomment>
        <translation>Zylinderkopfdichtung, ins Kühlmittel</translation>
    </message>
    <message>
        <source>the decompressor</source>
        <extracomment>path:decompressor</extracomment>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>the crank seals</source>
        <extracomment>path:crank_seals</extracomment>
        <translation>Wellendichtringe</translation>
    </message>
    <message>
        <source>the base gasket</source>
        <extracomment>path:base_gasket</extracomment>
        <translation>Fußdichtung</translation>
    </message>
    <message>
        <source>the reed</source>
        <extracomment>path:reed</extracomment>
        <translation>Membran</translation>
    </message>
    <message>
        <source>rings</source>
        <comment>leak:rings</comment>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>intake valve</source>
        <comment>leak:intake</comment>
        <translation>Einlassventil</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <comment>leak:exhaust</comment>
        <translation>Auslassventil</translation>
    </message>
    <message>
        <source>head gasket</source>
        <comment>leak:gasket</comment>
        <translation>Zylinderkopfdichtung</translation>
    </message>
    <message>
        <source>joint to the next cylinder</source>
        <comment>leak:next_cylinder</comment>
        <translation>Dichtungssteg zum Nachbarzylinder</translation>
    </message>
    <message>
        <source>head gasket, into the coolant</source>
        <extracomment>leak:coolant</extracomment>
        <translation>Zylinderkopfdichtung, ins Kühlmittel</translation>
    </message>
    <message>
        <source>decompressor</source>
        <comment>leak:decompressor</comment>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>seals well</source>
        <comment>outcome:seals_well</comment>
        <translation>dichtet gut</translation>
    </message>
    <message>
        <source>test again, several times</source>
        <extracomment>narrow:repeat</extracomment>
        <translation>noch einmal prüfen, mehrmals</translation>
    </message>
    <message>
        <source>note this gauge&apos;s range and class on its card, or use a finer one</source>
        <extracomment>narrow:gauge</extracomment>
        <translation>Skala und Klasse dieses Manometers auf seiner Karte notieren oder ein feineres nehmen</translation>
    </message>
    <message>
        <source>read the dial more finely, or use one with a smaller range</source>
        <extracomment>narrow:resolution</extracomment>
        <translation>die Skala feiner ablesen oder eine mit kleinerem Bereich nehmen</translation>
    </message>
    <message>
        <source>note the tester&apos;s restrictor on its card, or check it with a drilled hole</source>
        <extracomment>narrow:restrictor</extracomment>
        <translation>die Drosselbohrung des Prüfers auf seiner Karte notieren oder mit einem Prüfloch prüfen</translation>
    </message>
    <message>
        <source>watch the set pressure while the air is on</source>
        <extracomment>narrow:droop</extracomment>
        <translation>den eingestellten Druck im Auge behalten, während die Luft an ist</translation>
    </message>
    <message>
        <source>note the shop&apos;s altitude or air pressure</source>
        <extracomment>narrow:air_pressure</extracomment>
        <translation>Höhe oder Luftdruck der Werkstatt notieren</translation>
    </message>
    <message>
        <source>test the warm engine, throttle open, battery charged</source>
        <extracomment>narrow:conditions</extracomment>
        <translation>den warmen Motor mit offener Drosselklappe und geladener Batterie prüfen</translation>
    </message>
    <message>
        <source>much</source>
        <extracomment>tells:much</extracomment>
        <translation>viel</translation>
    </message>
    <message>
        <source>something</source>
        <extracomment>tells:some</extracomment>
        <translation>einiges</translation>
    </message>
    <message>
        <source>a little</source>
        <extracomment>tells:little</extracomment>
        <translation>ein wenig</translation>
    </message>
    <message>
        <source>very likely</source>
        <extracomment>likely:very</extracomment>
        <translation>sehr wahrscheinlich</translation>
    </message>
    <message>
        <source>likely</source>
        <extracomment>likely:likely</extracomment>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>more likely than not</source>
        <extracomment>likely:more</extracomment>
        <translation>eher wahrscheinlich als nicht</translation>
    </message>
    <message>
        <source>about as likely as not</source>
        <extracomment>likely:even</extracomment>
        <translation>etwa so wahrscheinlich wie nicht</translation>
    </message>
    <message>
        <source>rings</source>
        <comment>verdict:rings</comment>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>valves, a broken ring or gasket</source>
        <extracomment>verdict:not_rings</extracomment>
        <translation>Ventile, ein gebrochener Kolbenring oder die Dichtung</translation>
    </message>
    <message>
        <source>published</source>
        <extracomment>basis:published</extracomment>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>common practice</source>
        <extracomment>basis:common practice</extracomment>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>working assumption</source>
        <extracomment>basis:assumption</extracomment>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>not measured</source>
        <extracomment>state:not measured</extracomment>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>in range</source>
        <extracomment>state:in range</extracomment>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>borderline</source>
        <extracomment>state:borderline</extracomment>
        <translation>grenzwertig</translation>
    </message>
    <message>
        <source>fault</source>
        <extracomment>state:fault</extracomment>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Dry test</source>
        <extracomment>action:dry</extracomment>
        <translation>Trockenprüfung</translation>
    </message>
    <message>
        <source>Leak-down</source>
        <extracomment>action:leak-down</extracomment>
        <translation>Druckverlust</translation>
    </message>
    <message>
        <source>Leak hunt</source>
        <extracomment>action:listen</extracomment>
        <translation>Lecksuche</translation>
    </message>
    <message>
        <source>Wet test</source>
        <extracomment>action:wet</extracomment>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>Clearances</source>
        <comment>action:clearances</comment>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>Clearances</source>
        <comment>action:adjust</comment>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>Next TDC</source>
        <extracomment>action:turn once</extracomment>
        <translation>Nächster OT</translation>
    </message>
    <message>
        <source>Crankcase hold test</source>
        <extracomment>action:crankcase</extracomment>
        <translation>Kurbelgehäuse-Druckhalteprüfung</translation>
    </message>
    <message>
        <source>Testers</source>
        <extracomment>action:tester check</extracomment>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>Plan</source>
        <extracomment>action:plan</extracomment>
        <translation>Plan</translation>
    </message>
</context>
<context>
    <name>FindingsPage</name>
    <message>
        <source>Findings</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>Engine as a whole</source>
        <translation>Motor als Ganzes</translation>
    </message>
    <message>
        <source>What makes these readings worth less</source>
        <translation>Was diese Messwerte weniger wert macht</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>Angeben</translation>
    </message>
    <message>
        <source>Where it leaks could not be worked out</source>
        <translation>Wo es undicht ist, ließ sich nicht ausrechnen</translation>
    </message>
    <message>
        <source>Worth doing next</source>
        <translation>Was sich als Nächstes lohnt</translation>
    </message>
    <message>
        <source>What would settle it</source>
        <translation>Was es klären würde</translation>
    </message>
    <message>
        <source>What the odds rest on</source>
        <translation>Worauf die Wahrscheinlichkeiten beruhen</translation>
    </message>
    <message>
        <source>Odds, rules of thumb and arithmetic, not a strip-down. Touch a figure to see where it comes from.</source>
        <translation>Wahrscheinlichkeiten, Faustregeln und Rechnung, kein zerlegter Motor. Eine Zahl antippen, um zu sehen, woher sie kommt.</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
</context>
<context>
    <name>FormLine</name>
    <message>
        <source>manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>guessed</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>written, not kept yet</source>
        <translation>geschrieben, noch nicht behalten</translation>
    </message>
</context>
<context>
    <name>FormRow</name>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
</context>
<context>
    <name>FormSection</name>
    <message>
        <source>Touch to fold</source>
        <translation>Antippen zum Einklappen</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
</context>
<context>
    <name>FormSheet</name>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>guessed</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>Page, or how it was measured</source>
        <translation>Seite, oder wie gemessen wurde</translation>
    </message>
    <message>
        <source>Keep, then %1</source>
        <translation>Behalten, dann %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Everything is in it but what is no longer on this device:</source>
        <translation>Alles ist darin, außer dem, was nicht mehr auf diesem Gerät ist:</translation>
    </message>
    <message>
        <source>These photos came with another file and tell where they were taken. Whoever gets this one can read it:</source>
        <translation>Diese Fotos kamen mit einer anderen Datei und verraten, wo sie aufgenommen wurden. Wer diese Datei bekommt, kann es lesen:</translation>
    </message>
    <message>
        <source>Write it anew without the places</source>
        <translation>Ohne die Orte neu schreiben</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie ablegen</translation>
    </message>
    <message>
        <source>Your own call is not made yet. The report holds the findings, in the session file too: once one is written, your call will say that it came after. The table of readings gives nothing away.</source>
        <translation>Die eigene Einschätzung fehlt noch. Der Bericht enthält den Befund, auch der in der Sitzungsdatei: Ist einer geschrieben, steht bei der Einschätzung, dass sie danach kam. Die Tabelle der Messwerte verrät nichts.</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Was hineinkommt</translation>
    </message>
    <message>
        <source>With the owner&apos;s name and contact</source>
        <translation>Mit Name und Kontakt des Besitzers</translation>
    </message>
    <message>
        <source>Left out of the session file unless you switch it on</source>
        <translation>Bleibt aus der Sitzungsdatei heraus, solange es nicht eingeschaltet ist</translation>
    </message>
    <message>
        <source>Report with formulas and sources</source>
        <translation>Bericht mit Formeln und Quellen</translation>
    </message>
    <message>
        <source>For a mentor; the one in the session file has them always</source>
        <translation>Für einen Mentor; der in der Sitzungsdatei hat sie immer</translation>
    </message>
    <message>
        <source>Report for the owner (PDF)</source>
        <translation>Bericht für den Besitzer (PDF)</translation>
    </message>
    <message>
        <source>Session file</source>
        <translation>Sitzungsdatei</translation>
    </message>
    <message>
        <source>For a mentor: everything in one file that any unzip opens, with checksums against damage</source>
        <translation>Für einen Mentor: alles in einer Datei, die jedes Entpackprogramm öffnet, mit Prüfsummen gegen Schäden</translation>
    </message>
    <message>
        <source>Table of readings (CSV)</source>
        <translation>Tabelle der Messwerte (CSV)</translation>
    </message>
    <message>
        <source>For a spreadsheet: every reading as typed, and in SI units</source>
        <translation>Für die Tabellenkalkulation: jeder Messwert wie eingetippt und in SI-Einheiten</translation>
    </message>
    <message>
        <source>Backup of everything</source>
        <translation>Sicherung von allem</translation>
    </message>
    <message>
        <source>All engines into one file, or back from one</source>
        <translation>Alle Motoren in eine Datei oder zurück aus einer</translation>
    </message>
    <message>
        <source>Your session files are signed. Who gets one compares this fingerprint with you once: %1</source>
        <translation>Die eigenen Sitzungsdateien sind signiert. Wer eine bekommt, vergleicht einmal persönlich diesen Fingerabdruck: %1</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Wird geschrieben …</translation>
    </message>
</context>
<context>
    <name>HistoryLines</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Cylinder %1, %2</source>
        <translation>Zylinder %1, %2</translation>
    </message>
</context>
<context>
    <name>HistoryPanel</name>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>The number at a line&apos;s end is its cylinder; a whisker is the doubt, scatter from one day to the next included. A line breaks where a repair lies between. All readings as the newest visit&apos;s tester would show them.</source>
        <translation>Die Zahl am Ende einer Linie ist ihr Zylinder; ein Strich ist die Unsicherheit, samt Streuung von einem Tag zum anderen. Wo eine Reparatur dazwischenliegt, ist die Linie unterbrochen. Alle Messwerte so, wie das Prüfgerät des neuesten Termins sie zeigen würde.</translation>
    </message>
    <message>
        <source>Hide the figures</source>
        <translation>Zahlen ausblenden</translation>
    </message>
    <message>
        <source>Show the figures</source>
        <translation>Zahlen zeigen</translation>
    </message>
</context>
<context>
    <name>HowToCardPage</name>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>This card is not there</source>
        <translation>Diese Karte gibt es nicht</translation>
    </message>
    <message>
        <source>The list of all cards has what there is.</source>
        <translation>Die Liste aller Karten zeigt, was es gibt.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>What it tells</source>
        <translation>Was es sagt</translation>
    </message>
    <message>
        <source>What goes wrong</source>
        <translation>Was schiefgeht</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
    <message>
        <source>All cards</source>
        <translation>Alle Karten</translation>
    </message>
    <message>
        <source>Next card</source>
        <translation>Nächste Karte</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Weiter: %1</translation>
    </message>
</context>
<context>
    <name>HowToPage</name>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>The cards can&apos;t be shown</source>
        <translation>Die Karten lassen sich nicht zeigen</translation>
    </message>
</context>
<context>
    <name>InfoLine</name>
    <message>
        <source>Where does this come from?</source>
        <translation>Woher kommt das?</translation>
    </message>
</context>
<context>
    <name>KeyedFold</name>
    <message>
        <source>All fields and what else there is</source>
        <translation>Alle Felder und was es sonst gibt</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
</context>
<context>
    <name>KeyedReadout</name>
    <message>
        <source>Is this right?</source>
        <translation>Stimmt das?</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Was zu erwarten ist</translation>
    </message>
</context>
<context>
    <name>KnownKey</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Known since %1</source>
        <translation>Bekannt seit %1</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Vergessen</translation>
    </message>
</context>
<context>
    <name>KnownKeysPage</name>
    <message>
        <source>Known keys</source>
        <translation>Bekannte Schlüssel</translation>
    </message>
    <message>
        <source>Your own fingerprint</source>
        <translation>Der eigene Fingerabdruck</translation>
    </message>
    <message>
        <source>There is none yet: your key is made with the first session file that you hand over.</source>
        <translation>Es gibt noch keinen: Der Schlüssel entsteht mit der ersten Sitzungsdatei, die übergeben wird.</translation>
    </message>
    <message>
        <source>Read it out to who gets your session files, or send it another way than the file: only then does it tell them that a file is yours.</source>
        <translation>Wer die Sitzungsdateien bekommt, sollte ihn vorgelesen bekommen oder auf einem anderen Weg als die Datei: Nur dann sagt er, von wem eine Datei ist.</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>%1 is forgotten: what this key signs is from an unknown key again.</source>
        <translation>%1 ist vergessen: Was dieser Schlüssel signiert, kommt wieder von einem unbekannten Schlüssel.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Nobody is named yet. When a signed session file comes in you can say whose key it is.</source>
        <translation>Noch ist niemand benannt. Kommt eine signierte Sitzungsdatei herein, lässt sich sagen, wessen Schlüssel es ist.</translation>
    </message>
    <message>
        <source>A name is what you call the holder of a key. Give one only after you have compared the fingerprint with them.</source>
        <translation>Ein Name sagt, wie der Inhaber eines Schlüssels hier heißt. Erst vergeben, wenn der Fingerabdruck mit ihm verglichen ist.</translation>
    </message>
</context>
<context>
    <name>LayoutCell</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Cylinder %1, %2</source>
        <translation>Zylinder %1, %2</translation>
    </message>
</context>
<context>
    <name>LayoutPicture</name>
    <message>
        <source>Layout</source>
        <translation>Anordnung</translation>
    </message>
    <message>
        <source>Touch one to change it, or drag it onto another one to swap their places.</source>
        <translation>Einen antippen, um ihn zu ändern, oder ihn auf einen anderen ziehen, um die Plätze zu tauschen.</translation>
    </message>
    <message>
        <source>Now touch the one to swap it with.</source>
        <translation>Jetzt den antippen, mit dem getauscht wird.</translation>
    </message>
    <message>
        <source>All stand in one row; it goes on in the next line.</source>
        <translation>Alle stehen in einer Reihe; sie geht in der nächsten Zeile weiter.</translation>
    </message>
    <message>
        <source>Each row takes %1 lines here.</source>
        <translation>Jede Reihe nimmt hier %1 Zeilen ein.</translation>
    </message>
    <message>
        <source>Number and name</source>
        <translation>Nummer und Name</translation>
    </message>
</context>
<context>
    <name>LeakHuntPage</name>
    <message>
        <source>Cylinder %1, leak hunt</source>
        <translation>Zylinder %1, Lecksuche</translation>
    </message>
    <message>
        <source>Cylinder %1, listened</source>
        <translation>Zylinder %1, gehorcht</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Listening by</source>
        <translation>Gehorcht mit</translation>
    </message>
    <message>
        <source>Listened: nothing anywhere else</source>
        <translation>Gehorcht: sonst nirgends etwas</translation>
    </message>
    <message>
        <source>A question first</source>
        <translation>Erst eine Frage</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Wipe the glass</source>
        <translation>Glas abwischen</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Ventilspiel</translation>
    </message>
</context>
<context>
    <name>LevelMeter</name>
    <message>
        <source>Loudness %1 %</source>
        <translation>Lautstärke %1 %</translation>
    </message>
</context>
<context>
    <name>LicencesPage</name>
    <message>
        <source>Licences</source>
        <translation>Lizenzen</translation>
    </message>
</context>
<context>
    <name>LinesSheet</name>
    <message>
        <source>From this reading</source>
        <translation>Aus diesem Messwert</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Lapwing</source>
        <translation>Lapwing</translation>
    </message>
</context>
<context>
    <name>MyCallGate</name>
    <message>
        <source>My call</source>
        <translation>Meine Einschätzung</translation>
    </message>
    <message>
        <source>Where does it leak, in your own view? More than one can be chosen. Once committed it stands, and the findings are shown beside it.</source>
        <translation>Wo ist es nach eigener Ansicht undicht? Mehreres ist möglich. Einmal abgegeben, gilt die Einschätzung, und der Befund erscheint daneben.</translation>
    </message>
    <message>
        <source>A report with the findings was written already. Your call will say that it came after.</source>
        <translation>Ein Bericht mit dem Befund ist schon geschrieben. Bei der Einschätzung wird stehen, dass sie danach kam.</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Show the findings without my call</source>
        <translation>Befund ohne meine Einschätzung zeigen</translation>
    </message>
</context>
<context>
    <name>MyCalls</name>
    <message>
        <source>Calls and findings</source>
        <translation>Eigene Urteile und Befund</translation>
    </message>
    <message>
        <source>Cylinder %1: same</source>
        <translation>Zylinder %1: gleich</translation>
    </message>
    <message>
        <source>Cylinder %1: different</source>
        <translation>Zylinder %1: verschieden</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Called</source>
        <translation>Geurteilt</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befund</translation>
    </message>
</context>
<context>
    <name>NeedlePanel</name>
    <message>
        <source>The pad shows %1, not kept yet. Where the two differ, Keep asks which one holds.</source>
        <translation>Eingegeben ist %1, noch nicht behalten. Weichen die beiden voneinander ab, fragt „Behalten“, was gilt.</translation>
    </message>
    <message>
        <source>They differ. What holds?</source>
        <translation>Sie weichen ab. Was gilt?</translation>
    </message>
    <message>
        <source>Needle not quite right? Drag the bar: the finger stays off the needle.</source>
        <translation>Zeiger nicht ganz richtig? Den Balken ziehen: Der Finger bleibt vom Zeiger weg.</translation>
    </message>
    <message>
        <source>Needle back half a degree</source>
        <translation>Zeiger ein halbes Grad zurück</translation>
    </message>
    <message>
        <source>Needle on half a degree</source>
        <translation>Zeiger ein halbes Grad vor</translation>
    </message>
</context>
<context>
    <name>NewEngineSheet</name>
    <message>
        <source>Add an engine</source>
        <translation>Motor anlegen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>As you call it in the shop</source>
        <translation>Wie er in der Werkstatt heißt</translation>
    </message>
    <message>
        <source>Number of cylinders</source>
        <translation>Anzahl der Zylinder</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Arbeitsverfahren</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Bauform</translation>
    </message>
    <message>
        <source>Everything else on the card can wait. A rotary engine is not supported.</source>
        <translation>Alles andere auf der Karte kann warten. Kreiskolbenmotoren gehen nicht.</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Anlegen</translation>
    </message>
</context>
<context>
    <name>NewTesterSheet</name>
    <message>
        <source>Give it a name: readings say by it which tester they were taken with.</source>
        <translation>Einen Namen geben: Messwerte sagen damit, mit welchem Prüfer sie genommen wurden.</translation>
    </message>
    <message>
        <source>Type the last figure on the dial: how fine the gauge reads hangs on it.</source>
        <translation>Die letzte Zahl auf der Skala eingeben: davon hängt ab, wie fein die Uhr anzeigt.</translation>
    </message>
    <message>
        <source>Add a tester</source>
        <translation>Prüfgerät anlegen</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>As you call it in the shop</source>
        <translation>Wie es in der Werkstatt heißt</translation>
    </message>
    <message>
        <source>Last figure on the dial</source>
        <translation>Letzte Zahl auf dem Zifferblatt</translation>
    </message>
    <message>
        <source>Unit on the dial</source>
        <translation>Einheit auf dem Zifferblatt</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>What it is usually set to with the outlet blocked.</source>
        <translation>Worauf es bei verschlossenem Ausgang üblicherweise eingestellt wird.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <translation>Durchmesser der Drosselbohrung</translation>
    </message>
    <message>
        <source>Often 1 mm. Leave it blank if you don&apos;t know it; readings are converted by it.</source>
        <translation>Oft 1 mm. Leer lassen, wenn er nicht bekannt ist; mit ihm werden Messwerte umgerechnet.</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Anlegen</translation>
    </message>
</context>
<context>
    <name>NewsPage</name>
    <message>
        <source>What is new</source>
        <translation>Was neu ist</translation>
    </message>
    <message>
        <source>Nothing that you have not seen.</source>
        <translation>Nichts, was nicht schon gesehen wurde.</translation>
    </message>
    <message>
        <source>Two versions: choose</source>
        <translation>Zwei Fassungen: wählen</translation>
    </message>
    <message>
        <source>Changed on both sides; until you choose, both are kept</source>
        <translation>Auf beiden Seiten geändert; bis gewählt ist, bleiben beide</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>NewsRow</name>
    <message>
        <source>What is new</source>
        <translation>Was neu ist</translation>
    </message>
    <message>
        <source>Two versions wait for a choice</source>
        <translation>Zwei Fassungen warten auf eine Wahl</translation>
    </message>
</context>
<context>
    <name>NextTdcPage</name>
    <message>
        <source>Next TDC</source>
        <translation>Nächster OT</translation>
    </message>
    <message>
        <source>From cylinder %1 to cylinder %2, in the running direction</source>
        <translation>Von Zylinder %1 zu Zylinder %2, in Laufrichtung</translation>
    </message>
    <message>
        <source>Open the engine card</source>
        <translation>Motorkarte öffnen</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Touch to go there next</source>
        <translation>Antippen, um als Nächstes dorthin zu gehen</translation>
    </message>
    <message>
        <source>Come up to TDC from before it. If you passed it, turn on until it comes round again. Back half a turn and up again only where the engine&apos;s manual allows turning back.</source>
        <translation>Den OT in Laufrichtung anfahren, nicht darüber hinaus. Ist er überfahren, weiterdrehen, bis er wiederkommt. Eine halbe Umdrehung zurückdrehen und noch einmal anfahren darf man nur, wo das Handbuch des Motors das Zurückdrehen erlaubt.</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>How hard the air turns the crank</source>
        <translation>Wie stark die Luft die Kurbelwelle dreht</translation>
    </message>
    <message>
        <source>Turned: leak-down, cylinder %1</source>
        <translation>Gedreht: Druckverlust, Zylinder %1</translation>
    </message>
</context>
<context>
    <name>NoteSheet</name>
    <message>
        <source>Write your name first: who gets the file back wants to know who says so.</source>
        <translation>Erst den eigenen Namen schreiben: Wer die Datei zurückbekommt, will wissen, wer das sagt.</translation>
    </message>
    <message>
        <source>Choose where it leaks in your view.</source>
        <translation>Wählen, wo es nach eigener Ansicht undicht ist.</translation>
    </message>
    <message>
        <source>Choose a test, or write what should be tested.</source>
        <translation>Eine Prüfung wählen oder schreiben, was geprüft werden sollte.</translation>
    </message>
    <message>
        <source>Write a word, or speak it.</source>
        <translation>Ein Wort schreiben oder sprechen.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Other cause</source>
        <translation>Andere Ursache</translation>
    </message>
    <message>
        <source>Please test this</source>
        <translation>Bitte das prüfen</translation>
    </message>
    <message>
        <source>Where it leaks in your view</source>
        <translation>Wo es nach eigener Ansicht undicht ist</translation>
    </message>
    <message>
        <source>Which test</source>
        <translation>Welche Prüfung</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>Your name, asked once</source>
        <translation>Eigener Name, einmal gefragt</translation>
    </message>
    <message>
        <source>It stands beside what you write. Settings can change it.</source>
        <translation>Er steht neben dem Geschriebenen. In den Einstellungen lässt er sich ändern.</translation>
    </message>
    <message>
        <source>Speak it</source>
        <translation>Sprechen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>decimal point</source>
        <translation>Dezimalkomma</translation>
    </message>
    <message>
        <source>delete digit</source>
        <translation>Ziffer löschen</translation>
    </message>
</context>
<context>
    <name>NumberRow</name>
    <message>
        <source>Unit: %1</source>
        <translation>Einheit: %1</translation>
    </message>
</context>
<context>
    <name>Odds</name>
    <message>
        <source>main leak: odds %1</source>
        <translation>Hauptleck: Wahrscheinlichkeit %1</translation>
    </message>
    <message>
        <source>at fault: odds %1</source>
        <translation>Ursache: Wahrscheinlichkeit %1</translation>
    </message>
    <message>
        <source>dry test to expect after work on %1, in nine cases of ten</source>
        <translation>Nach der Arbeit in neun von zehn Fällen zu erwartende Trockenprüfung (%1)</translation>
    </message>
    <message>
        <source>dry test to expect after work on %1, in nine cases of ten; not comparable before it has run in</source>
        <translation>Nach der Arbeit in neun von zehn Fällen zu erwartende Trockenprüfung (%1); vor dem Einfahren nicht vergleichbar</translation>
    </message>
    <message>
        <source>Seals well: odds %1</source>
        <translation>Dichtet gut: Wahrscheinlichkeit %1</translation>
    </message>
</context>
<context>
    <name>OddsText</name>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>under 5 %</source>
        <translation>unter 5 %</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
</context>
<context>
    <name>OnTester</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>on a tester of %1 behind %2</source>
        <translation>auf einem Prüfgerät mit %1 hinter %2</translation>
    </message>
</context>
<context>
    <name>OpinionNote</name>
    <message>
        <source>%1 (done)</source>
        <translation>%1 (erledigt)</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>OpinionThing</name>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
</context>
<context>
    <name>OwnerAnswer</name>
    <message>
        <source>What the owner says</source>
        <translation>Was der Besitzer sagt</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
</context>
<context>
    <name>PadMoreSheet</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Take the decimal point away again</source>
        <translation>Das Komma wieder wegnehmen</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Bisherige Messwerte</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Neu messen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>A second reading is kept beside the first: both count. Redo puts a new reading in place of this one; the old one stays here.</source>
        <translation>Eine zweite Messung bleibt neben der ersten: Beide zählen. „Neu messen“ setzt einen neuen Messwert an die Stelle dieses; der alte bleibt hier stehen.</translation>
    </message>
    <message>
        <source>Not redo after all</source>
        <translation>Doch nicht neu messen</translation>
    </message>
    <message>
        <source>What came just before</source>
        <translation>Was unmittelbar vorausging</translation>
    </message>
    <message>
        <source>What the dial is marked in</source>
        <translation>Was auf der Skala steht</translation>
    </message>
    <message>
        <source>% leakage</source>
        <translation>% Verlust</translation>
    </message>
    <message>
        <source>Wipe the glass</source>
        <translation>Glas abwischen</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
</context>
<context>
    <name>PadPage</name>
    <message>
        <source>Stop %1</source>
        <translation>Stopp %1</translation>
    </message>
    <message>
        <source>Clock %1</source>
        <translation>Uhr %1</translation>
    </message>
    <message>
        <source>Start clock</source>
        <translation>Uhr starten</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Next TDC</source>
        <translation>Nächster OT</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Neu messen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>No wet test on a diesel</source>
        <translation>Keine Nassprüfung am Diesel</translation>
    </message>
    <message>
        <source>Oil does not compress. In a diesel&apos;s small chamber it can lock the engine and bend a rod. Use leak-down instead.</source>
        <translation>Öl lässt sich nicht verdichten. Im kleinen Brennraum eines Diesels kann es den Motor blockieren und ein Pleuel verbiegen. Stattdessen die Druckverlustprüfung nehmen.</translation>
    </message>
    <message>
        <source>Back to the session</source>
        <translation>Zurück zur Sitzung</translation>
    </message>
</context>
<context>
    <name>PhotoFinder</name>
    <message>
        <source>What the camera sees</source>
        <translation>Was die Kamera sieht</translation>
    </message>
    <message>
        <source>Waiting for the camera ...</source>
        <translation>Warten auf die Kamera ...</translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <source>It shows</source>
        <translation>Es zeigt</translation>
    </message>
    <message>
        <source>Torch</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>Aus Datei</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Retake</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Keeping it ...</source>
        <translation>Wird behalten ...</translation>
    </message>
    <message>
        <source>Take photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>PhotoPicture</name>
    <message>
        <source>The file of this photo is missing from the library. Settings, Storage says what can be done.</source>
        <translation>Die Datei dieses Fotos fehlt im Bestand. Unter „Einstellungen“, „Speicher“ steht, was sich tun lässt.</translation>
    </message>
</context>
<context>
    <name>PhotoReadsSheet</name>
    <message>
        <source>Which one holds?</source>
        <translation>Was gilt?</translation>
    </message>
</context>
<context>
    <name>PhotoRow</name>
    <message>
        <source>%1 · its file is missing</source>
        <translation>%1 · Datei fehlt</translation>
    </message>
</context>
<context>
    <name>PictureSheet</name>
    <message>
        <source>The file of this photo is missing here. Ask for the session file again.</source>
        <translation>Die Datei dieses Fotos fehlt hier. Noch einmal um die Sitzungsdatei bitten.</translation>
    </message>
    <message>
        <source>Read from the photo: %1</source>
        <translation>Vom Foto abgelesen: %1</translation>
    </message>
</context>
<context>
    <name>PlanCard</name>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
</context>
<context>
    <name>PlanLine</name>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>der Motor</translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>With its currency, such as 420 EUR.</source>
        <translation>Mit Währung, etwa 420 EUR.</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Quick fixes and &quot;run it, then test again&quot; come before taking things apart.</source>
        <translation>Schnelle Abhilfe und „laufen lassen, dann erneut prüfen“ kommen vor dem Zerlegen.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>If it is left</source>
        <translation>Wenn es so bleibt</translation>
    </message>
    <message>
        <source>Dry test to expect after it</source>
        <translation>Danach zu erwartende Trockenprüfung</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
</context>
<context>
    <name>PlanLinePage</name>
    <message>
        <source>Line of the plan</source>
        <translation>Posten im Plan</translation>
    </message>
    <message>
        <source>This line is gone</source>
        <translation>Dieser Posten ist weg</translation>
    </message>
    <message>
        <source>It was deleted. Undo brings it back; otherwise go back to the plan.</source>
        <translation>Er wurde gelöscht. „Rückgängig“ holt ihn zurück; sonst zurück zum Plan.</translation>
    </message>
    <message>
        <source>Delete this line</source>
        <translation>Diesen Posten löschen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Nothing is planned yet. Take over what is proposed, or write a line of your own.</source>
        <translation>Noch ist nichts geplant. Vorgeschlagenes übernehmen oder einen eigenen Posten schreiben.</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>What the work changed, cylinder by cylinder</source>
        <translation>Was die Arbeit verändert hat, Zylinder für Zylinder</translation>
    </message>
    <message>
        <source>Comes to</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Retest</source>
        <translation>Nachprüfung</translation>
    </message>
    <message>
        <source>No day is planned</source>
        <translation>Kein Tag geplant</translation>
    </message>
    <message>
        <source>Planned for %1</source>
        <translation>Geplant am %1</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation>Posten hinzufügen</translation>
    </message>
    <message>
        <source>Test again</source>
        <translation>Erneut prüfen</translation>
    </message>
</context>
<context>
    <name>PreparePage</name>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Nicht getan</translation>
    </message>
    <message>
        <source>No need</source>
        <translation>Nicht nötig</translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Rest is done</source>
        <translation>Rest erledigt</translation>
    </message>
    <message>
        <source>Back to the session</source>
        <translation>Zurück zur Sitzung</translation>
    </message>
</context>
<context>
    <name>ProgressWord</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>ProposalList</name>
    <message>
        <source>Proposed</source>
        <translation>Vorgeschlagen</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>From the findings; quick fixes and &quot;run it, then test again&quot; come before taking things apart.</source>
        <translation>Aus dem Befund; schnelle Abhilfe und „laufen lassen, dann erneut prüfen“ kommen vor dem Zerlegen.</translation>
    </message>
    <message>
        <source>Take into the plan</source>
        <translation>In den Plan übernehmen</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>%1 (measured %2)</source>
        <translation>%1 (gemessen %2)</translation>
    </message>
    <message>
        <source>worse beyond doubt</source>
        <translation>zweifelsfrei schlechter</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>ReadoutField</name>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
</context>
<context>
    <name>RecordButton</name>
    <message>
        <source>Stop and keep</source>
        <translation>Anhalten und behalten</translation>
    </message>
    <message>
        <source>Record: hold or tap</source>
        <translation>Aufnehmen: halten oder tippen</translation>
    </message>
</context>
<context>
    <name>Reference</name>
    <message>
        <source>Discharge coefficient of a leak-down tester&apos;s restrictor that was not checked with a drilled hole.</source>
        <extracomment>restrictor-cd, text</extracomment>
        <translation>Durchflussbeiwert der Drosselbohrung eines Druckverlustprüfers, der nicht mit einem Prüfloch geprüft wurde.</translation>
    </message>
    <message>
        <source>Scales leak area and flow; cancels when two testers with the same coefficient are compared.</source>
        <extracomment>restrictor-cd, comment</extracomment>
        <translation>Wirkt auf Leckfläche und Durchfluss; hebt sich auf, wenn zwei Prüfgeräte mit gleichem Beiwert verglichen werden.</translation>
    </message>
    <message>
        <source>From this bore on a cylinder is tested behind the larger restrictor.</source>
        <extracomment>large-bore, text</extracomment>
        <translation>Ab dieser Bohrung wird ein Zylinder hinter der größeren Drosselbohrung geprüft.</translation>
    </message>
    <message>
        <source>Bores of 5.00 in and over.</source>
        <extracomment>large-bore, comment</extracomment>
        <translation>Bohrungen von 5,00 in und mehr.</translation>
    </message>
    <message>
        <source>Restrictor of a tester whose own is not known, for such a bore.</source>
        <extracomment>restrictor-diameter-large, text</extracomment>
        <translation>Drosselbohrung eines Prüfgeräts, dessen eigene nicht bekannt ist, bei einer solchen Bohrung.</translation>
    </message>
    <message>
        <source>0.060 in for bores of 5.00 in and over, 0.040 in under it.</source>
        <extracomment>restrictor-diameter-large, comment</extracomment>
        <translation>0,060 in bei Bohrungen von 5,00 in und mehr, darunter 0,040 in.</translation>
    </message>
    <message>
        <source>Restrictor of a tester whose own is not known.</source>
        <extracomment>restrictor-diameter, text</extracomment>
        <translation>Drosselbohrung eines Prüfgeräts, dessen eigene nicht bekannt ist.</translation>
    </message>
    <message>
        <source>0.040 in, for bores under 5 in.</source>
        <extracomment>restrictor-diameter, comment</extracomment>
        <translation>0,040 in, für Bohrungen unter 5 in.</translation>
    </message>
    <message>
        <source>Error of a gauge whose class is not known, as a share of its full scale.</source>
        <extracomment>gauge-class, text</extracomment>
        <translation>Fehler eines Manometers, dessen Klasse nicht bekannt ist, als Anteil des Skalenendwerts.</translation>
    </message>
    <message>
        <source>Workshop gauges without a class on the dial are seldom better than EN 837-1 class 2.5.</source>
        <extracomment>gauge-class, comment</extracomment>
        <translation>Werkstattmanometer ohne Klasse auf dem Zifferblatt sind selten besser als EN 837-1 Klasse 2,5.</translation>
    </message>
    <message>
        <source>Share of a gauge&apos;s class error, as variance, that is the same in all its readings: an offset.</source>
        <extracomment>gauge-offset, text</extracomment>
        <translation>Anteil am Klassenfehler eines Manometers, als Varianz, der in allen seinen Messwerten gleich ist: ein Versatz.</translation>
    </message>
    <message>
        <source>A class only limits the whole error. Most of what a dial gauge is out by is a pointer that sits a little off; it cancels in differences.</source>
        <extracomment>gauge-offset, comment</extracomment>
        <translation>Eine Klasse begrenzt nur den ganzen Fehler. Das meiste, worum ein Zeigermanometer falsch geht, ist ein etwas daneben sitzender Zeiger; das hebt sich in Differenzen auf.</translation>
    </message>
    <message>
        <source>Share of a gauge&apos;s class error, as variance, that grows with the reading; what is left beside it and gauge-offset is local to the spot on the scale.</source>
        <extracomment>gauge-gain, text</extracomment>
        <translation>Anteil am Klassenfehler eines Manometers, als Varianz, der mit dem Messwert wächst; was neben ihm und gauge-offset bleibt, gehört zur Stelle auf der Skala.</translation>
    </message>
    <message>
        <source>A spring that is a little too soft or stiff; it cancels in ratios. The local rest cancels in nothing.</source>
        <extracomment>gauge-gain, comment</extracomment>
        <translation>Eine etwas zu weiche oder zu steife Feder; das hebt sich in Verhältnissen auf. Der örtliche Rest hebt sich nirgends auf.</translation>
    </message>
    <message>
        <source>What a gauge is out by in proportion is told as a share of its reading, but of no less than this share of its span.</source>
        <extracomment>gain-lowest, text</extracomment>
        <translation>Was ein Manometer verhältnisgleich danebenliegt, wird als Anteil seiner Ablesung angegeben, aber von nicht weniger als diesem Anteil seines Messbereichs.</translation>
    </message>
    <message>
        <source>Further down the scale it would be a share of nothing.</source>
        <extracomment>gain-lowest, comment</extracomment>
        <translation>Weiter unten auf der Skala wäre es ein Anteil von nichts.</translation>
    </message>
    <message>
        <source>Full scale of a gauge that is not known, as a multiple of its reading.</source>
        <extracomment>unknown-scale, text</extracomment>
        <translation>Skalenendwert eines unbekannten Manometers, als Vielfaches seines Messwerts.</translation>
    </message>
    <message>
        <source>Gauges are chosen so that the needle stands near the middle.</source>
        <extracomment>unknown-scale, comment</extracomment>
        <translation>Manometer werden so gewählt, dass der Zeiger nahe der Mitte steht.</translation>
    </message>
    <message>
        <source>Held pressure under this share of the set pressure is very low: ask for the right TDC first.</source>
        <extracomment>very-low-held, text</extracomment>
        <translation>Haltedruck unter diesem Anteil des eingestellten Drucks ist sehr niedrig: zuerst nach dem richtigen OT fragen.</translation>
    </message>
    <message>
        <source>An open valve passes far more than any restrictor delivers; held falls to nearly nothing.</source>
        <extracomment>very-low-held, comment</extracomment>
        <translation>Ein offenes Ventil lässt weit mehr durch, als irgendeine Drosselbohrung liefert; der Haltedruck fällt auf fast nichts.</translation>
    </message>
    <message>
        <source>A wet reading contradicts the dry one when it lies this many standard deviations outside of what oil can do.</source>
        <extracomment>beyond-chance, text</extracomment>
        <translation>Ein nasser Messwert widerspricht dem trockenen, wenn er so viele Standardabweichungen außerhalb dessen liegt, was Öl vermag.</translation>
    </message>
    <message>
        <source>Fewer than one pair in 700 does so by chance alone.</source>
        <extracomment>beyond-chance, comment</extracomment>
        <translation>Weniger als ein Paar von 700 tut das durch bloßen Zufall.</translation>
    </message>
    <message>
        <source>Most that oil alone can make of a reading, as a multiple of the dry one.</source>
        <extracomment>wet-far-above, text</extracomment>
        <translation>Was Öl allein höchstens aus einem Messwert machen kann, als Vielfaches des trockenen.</translation>
    </message>
    <message>
        <source>It can fill up and seal, but not double a reading unless hardly anything was there.</source>
        <extracomment>wet-far-above, comment</extracomment>
        <translation>Es kann auffüllen und abdichten, aber einen Messwert nicht verdoppeln, außer wenn kaum etwas da war.</translation>
    </message>
    <message>
        <source>Under this leakage several exits cannot all have been heard strongly.</source>
        <extracomment>loud-but-tight, text</extracomment>
        <translation>Unter diesem Druckverlust kann nicht an mehreren Austritten stark Luft gehört worden sein.</translation>
    </message>
    <message>
        <source>10 % of 80 psi lost is some 30 L/min behind 0.040 in: shared among several exits it is strong at none of them.</source>
        <extracomment>loud-but-tight, comment</extracomment>
        <translation>10 % Verlust von 80 psi sind hinter 0,040 in etwa 30 L/min: Auf mehrere Austritte verteilt ist das an keinem stark.</translation>
    </message>
    <message>
        <source>So many exits heard strongly are several.</source>
        <extracomment>loud-exits, text</extracomment>
        <translation>So viele Austritte mit stark gehörter Luft sind mehrere.</translation>
    </message>
    <message>
        <source>One may be a slip of the listener&apos;s; the odds allow for that.</source>
        <extracomment>loud-exits, comment</extracomment>
        <translation>Einer kann ein Versehen des Horchenden sein; damit rechnen die Wahrscheinlichkeiten.</translation>
    </message>
    <message>
        <source>Over this leakage the air cannot have left without being heard, where every large exit was listened at.</source>
        <extracomment>silent-but-leaks, text</extracomment>
        <translation>Über diesem Druckverlust kann die Luft nicht ungehört entwichen sein, wo an jedem großen Austritt gehorcht wurde.</translation>
    </message>
    <message>
        <source>Half of 80 psi lost is some 50 L/min behind 0.040 in: anyone hears that.</source>
        <extracomment>silent-but-leaks, comment</extracomment>
        <translation>Die Hälfte von 80 psi verloren sind hinter 0,040 in etwa 50 L/min: Das hört jeder.</translation>
    </message>
    <message>
        <source>Under this share of a sound reading a cylinder that holds air while it stands still has built up nothing.</source>
        <extracomment>builds-nothing, text</extracomment>
        <translation>Unter diesem Anteil eines gesunden Messwerts hat ein Zylinder, der im Stillstand Luft hält, nichts aufgebaut.</translation>
    </message>
    <message>
        <source>A leak that large would hold next to nothing: adapter, hose or valve core are likelier.</source>
        <extracomment>builds-nothing, comment</extracomment>
        <translation>Ein so großes Leck würde fast nichts halten: Adapter, Schlauch oder Ventileinsatz sind wahrscheinlicher.</translation>
    </message>
    <message>
        <source>A dry reading of this share of a sound one and more does not go with a leak-down that held very little.</source>
        <extracomment>leaks-yet-reads, text</extracomment>
        <translation>Ein trockener Messwert ab diesem Anteil eines gesunden passt nicht zu einer Druckverlustprüfung, die sehr wenig hielt.</translation>
    </message>
    <message>
        <source>By the cranking model a leak that leaves a quarter of 80 psi behind 0.040 in takes a quarter off the reading of half a litre at 250 rpm, and more off less.</source>
        <extracomment>leaks-yet-reads, comment</extracomment>
        <translation>Nach dem Modell nimmt ein Leck, das hinter 0,040 in ein Viertel von 80 psi übrig lässt, dem Messwert eines halben Liters bei 250 U/min ein Viertel, und bei weniger Hubraum mehr.</translation>
    </message>
    <message>
        <source>Very low leak-down readings of a cylinder are left out beside one that held at least this share of the set pressure.</source>
        <extracomment>not-low-held, text</extracomment>
        <translation>Sehr niedrige Druckverlustwerte eines Zylinders bleiben weg neben einem, der mindestens diesen Anteil des eingestellten Drucks hielt.</translation>
    </message>
    <message>
        <source>Twice what counts as very low: no leak changes that much from one reading to the next, the place of the piston does.</source>
        <extracomment>not-low-held, comment</extracomment>
        <translation>Das Doppelte dessen, was als sehr niedrig gilt: Kein Leck ändert sich von einer Messung zur nächsten so sehr, wohl aber die Stellung des Kolbens.</translation>
    </message>
    <message>
        <source>A first puff under this share of what the cylinder should reach (the highest cylinder, or the low end of the factory range) counts as low first.</source>
        <extracomment>first-puff-low, text</extracomment>
        <translation>Ein erster Hub unter diesem Anteil von dem, was der Zylinder erreichen sollte (der höchste Zylinder oder das untere Ende des Werksbereichs), gilt als niedriger erster Hub.</translation>
    </message>
    <message>
        <source>The makers&apos; rule (GM 2006, Harley-Davidson 2012) gives no figure. The first puff of a cylinder that seals well is 50 to 70 % of the final reading on a common gauge.</source>
        <extracomment>first-puff-low, comment</extracomment>
        <translation>Die Regel der Hersteller (GM 2006, Harley-Davidson 2012) nennt keine Zahl. Der erste Hub eines gut dichtenden Zylinders liegt auf einem gewöhnlichen Manometer bei 50 bis 70 % des Endwerts.</translation>
    </message>
    <message>
        <source>A low first puff builds up when the final reading is at least this many times as high.</source>
        <extracomment>first-puff-builds, text</extracomment>
        <translation>Ein niedriger erster Hub baut sich auf, wenn der Endwert mindestens so viele Male so hoch ist.</translation>
    </message>
    <message>
        <source>The makers&apos; rule gives no figure. Every gauge builds up: a cylinder that seals well ends at 1.4 to 2 times its first puff (50 to 70 %, as above). Only more than that is the slow climb of leaking rings; in between the first puff tells nothing.</source>
        <extracomment>first-puff-builds, comment</extracomment>
        <translation>Die Regel der Hersteller nennt keine Zahl. Jedes Manometer baut auf: Ein gut dichtender Zylinder endet beim 1,4- bis 2-Fachen seines ersten Hubs (50 bis 70 %, wie oben). Erst mehr als das ist das langsame Steigen undichter Kolbenringe; dazwischen sagt der erste Hub nichts.</translation>
    </message>
    <message>
        <source>A low first puff does not build up when the final reading is at most this many times as high.</source>
        <extracomment>first-puff-stays, text</extracomment>
        <translation>Ein niedriger erster Hub baut sich nicht auf, wenn der Endwert höchstens so viele Male so hoch ist.</translation>
    </message>
    <message>
        <source>Less than a cylinder that seals well builds up on a common gauge, whose final reading is 1.4 to 2 times its first puff.</source>
        <extracomment>first-puff-stays, comment</extracomment>
        <translation>Weniger, als ein gut dichtender Zylinder auf einem gewöhnlichen Manometer aufbaut, dessen Endwert das 1,4- bis 2-Fache seines ersten Hubs ist.</translation>
    </message>
    <message>
        <source>Two cylinders of a four-stroke are companions, one on overlap while the other is tested, when they fire one turn apart within this.</source>
        <extracomment>companions-apart, text</extracomment>
        <translation>Zwei Zylinder eines Viertakters sind Partner, einer in der Ventilüberschneidung, während der andere geprüft wird, wenn sie eine Umdrehung auseinander zünden, auf so viel genau.</translation>
    </message>
    <message>
        <source>About as long as both sets of valves may be off their seats.</source>
        <extracomment>companions-apart, comment</extracomment>
        <translation>Etwa so lange, wie beide Ventilsätze von ihren Sitzen sein können.</translation>
    </message>
    <message>
        <source>Before this after bottom dead centre no intake valve is taken as shut, where the card does not give its closing.</source>
        <extracomment>intake-closes-earliest, text</extracomment>
        <translation>Vor diesem Winkel nach dem unteren Totpunkt gilt kein Einlassventil als geschlossen, wenn die Karte sein Schließen nicht nennt.</translation>
    </message>
    <message>
        <source>Valve timings of road engines close it 40 to 75 degrees after, at the seat; ten degrees to either side are left for those that are not usual. Racing cams reach further: put the closing on the card.</source>
        <extracomment>intake-closes-earliest, comment</extracomment>
        <translation>Steuerzeiten von Straßenmotoren schließen es 40 bis 75 Grad danach, am Sitz; zehn Grad nach beiden Seiten bleiben für die, die nicht üblich sind. Rennnockenwellen gehen weiter: das Schließen auf die Karte schreiben.</translation>
    </message>
    <message>
        <source>And after this it is taken as shut for sure.</source>
        <extracomment>intake-closes-latest, text</extracomment>
        <translation>Und danach gilt es sicher als geschlossen.</translation>
    </message>
    <message>
        <source>As above.</source>
        <extracomment>intake-closes-latest, comment; exhaust-opens-latest, comment; decompressor-closing-most, comment; closed-throttle-fill-most, comment; masking-from, comment; held-usual, comment</extracomment>
        <translation>Wie oben.</translation>
    </message>
    <message>
        <source>Up to this before bottom dead centre an exhaust valve is taken as shut for sure.</source>
        <extracomment>exhaust-opens-earliest, text</extracomment>
        <translation>Bis zu diesem Winkel vor dem unteren Totpunkt gilt ein Auslassventil sicher als geschlossen.</translation>
    </message>
    <message>
        <source>Valve timings of road engines open it 40 to 75 degrees before, at the seat; ten degrees to either side are left for those that are not usual.</source>
        <extracomment>exhaust-opens-earliest, comment</extracomment>
        <translation>Steuerzeiten von Straßenmotoren öffnen es 40 bis 75 Grad davor, am Sitz; zehn Grad nach beiden Seiten bleiben für die, die nicht üblich sind.</translation>
    </message>
    <message>
        <source>And from this on as open for sure.</source>
        <extracomment>exhaust-opens-latest, text</extracomment>
        <translation>Und ab diesem sicher als offen.</translation>
    </message>
    <message>
        <source>Two low neighbours count as alike when they read within this share of each other.</source>
        <extracomment>neighbours-close, text</extracomment>
        <translation>Zwei niedrige Nachbarn gelten als gleich, wenn ihre Messwerte innerhalb dieses Anteils voneinander liegen.</translation>
    </message>
    <message>
        <source>One hole lowers both sides about equally. The rule itself: Dodge Durango manual, both low with 50 to 70 % loss.</source>
        <extracomment>neighbours-close, comment</extracomment>
        <translation>Ein Loch senkt beide Seiten etwa gleich. Die Regel selbst: Handbuch Dodge Durango, beide niedrig bei 50 bis 70 % Verlust.</translation>
    </message>
    <message>
        <source>Usual scatter of repeats on one cylinder beside the gauge&apos;s own errors, as a share of the reading.</source>
        <extracomment>repeat-scatter, text</extracomment>
        <translation>Übliche Streuung von Wiederholungen an einem Zylinder neben den Fehlern des Manometers selbst, als Anteil des Messwerts.</translation>
    </message>
    <message>
        <source>The same scatter that the odds take for a final reading. One reading alone is taken to scatter so; what repeats of the visit&apos;s cylinders show is pooled with it.</source>
        <extracomment>repeat-scatter, comment</extracomment>
        <translation>Dieselbe Streuung, die die Wahrscheinlichkeiten für einen Endwert annehmen. Ein Messwert allein streut angenommen so; was die Wiederholungen der Zylinder des Termins zeigen, wird damit zusammengenommen.</translation>
    </message>
    <message>
        <source>Usual scatter of first puffs on one cylinder beside the gauge&apos;s own errors, as a share of the reading.</source>
        <extracomment>first-scatter, text</extracomment>
        <translation>Übliche Streuung der ersten Hübe an einem Zylinder neben den eigenen Fehlern des Manometers, als Anteil des Messwerts.</translation>
    </message>
    <message>
        <source>As in odds.json: the first pull seldom starts at the same place of the stroke twice.</source>
        <extracomment>first-scatter, comment</extracomment>
        <translation>Wie in odds.json: Der erste Hub beginnt selten zweimal an derselben Stelle.</translation>
    </message>
    <message>
        <source>How many repeats the usual scatter counts for beside the scatter of the repeats themselves.</source>
        <extracomment>repeat-scatter-weight, text</extracomment>
        <translation>Wie viele Wiederholungen die übliche Streuung neben der Streuung der Wiederholungen selbst zählt.</translation>
    </message>
    <message>
        <source>Pooling as JCGM 100, H.3.6: without it two repeats a little apart would seem to know less than one.</source>
        <extracomment>repeat-scatter-weight, comment</extracomment>
        <translation>Zusammengefasst nach JCGM 100, H.3.6: Sonst schienen zwei etwas auseinanderliegende Wiederholungen weniger zu wissen als eine.</translation>
    </message>
    <message>
        <source>A reading may still have been rising when a cylinder that seals well would have stood this far below what its gauge comes to after as many pulls.</source>
        <extracomment>still-rising, text</extracomment>
        <translation>Ein Messwert kann noch gestiegen sein, wenn ein dichter Zylinder nach ebenso vielen Hüben so weit unter dem stünde, worauf sein Manometer am Ende kommt.</translation>
    </message>
    <message>
        <source>Less than repeats scatter anyway can&apos;t be told from it.</source>
        <extracomment>still-rising, comment</extracomment>
        <translation>Weniger, als Wiederholungen ohnehin streuen, lässt sich davon nicht unterscheiden.</translation>
    </message>
    <message>
        <source>Pulls that a final reading is taken after at the least, where the cranking model can&apos;t say how fast the gauge fills.</source>
        <extracomment>least-pulls, text</extracomment>
        <translation>Hübe, nach denen ein Endwert mindestens abgelesen wird, wo das Modell nicht sagen kann, wie schnell sich das Manometer füllt.</translation>
    </message>
    <message>
        <source>First and last of 5 to 7 strokes are read.</source>
        <extracomment>least-pulls, comment</extracomment>
        <translation>Erster und letzter von 5 bis 7 Hüben werden abgelesen.</translation>
    </message>
    <message>
        <source>A working decompressor acts as if the intake closed no earlier than this after bottom dead centre.</source>
        <extracomment>decompressor-closing-least, text</extracomment>
        <translation>Ein arbeitender Dekompressor wirkt, als schlösse der Einlass frühestens so lange nach dem unteren Totpunkt.</translation>
    </message>
    <message>
        <source>Chosen so that small engines come to the 57 to 85 psi that a small-engine maker&apos;s manual prints.</source>
        <extracomment>decompressor-closing-least, comment</extracomment>
        <translation>So gewählt, dass kleine Motoren auf die 57 bis 85 psi kommen, die das Handbuch eines Kleinmotorenherstellers nennt.</translation>
    </message>
    <message>
        <source>And no later than this.</source>
        <extracomment>decompressor-closing-most, text</extracomment>
        <translation>Und spätestens so lange danach.</translation>
    </message>
    <message>
        <source>How far the weather moves the air pressure from the standard atmosphere&apos;s at an altitude.</source>
        <extracomment>weather-doubt, text</extracomment>
        <translation>Wie weit das Wetter den Luftdruck von dem der Normatmosphäre in einer Höhe wegbewegt.</translation>
    </message>
    <message>
        <source>About 20 hPa to either side on 19 days of 20 in temperate country. A barometer in the shop does better.</source>
        <extracomment>weather-doubt, comment</extracomment>
        <translation>Etwa 20 hPa nach jeder Seite an 19 von 20 Tagen in gemäßigtem Klima. Ein Barometer in der Werkstatt weiß es besser.</translation>
    </message>
    <message>
        <source>How far a barometer in the shop may be out.</source>
        <extracomment>barometer-doubt, text</extracomment>
        <translation>Wie weit ein Barometer in der Werkstatt danebenliegen kann.</translation>
    </message>
    <message>
        <source>5 hPa: nobody compares it with another.</source>
        <extracomment>barometer-doubt, comment</extracomment>
        <translation>5 hPa: Niemand vergleicht es mit einem anderen.</translation>
    </message>
    <message>
        <source>A barometer in the shop cannot show less than this.</source>
        <extracomment>barometer-least, text</extracomment>
        <translation>Weniger kann ein Barometer in der Werkstatt nicht zeigen.</translation>
    </message>
    <message>
        <source>Higher than any road goes. What lies outside was typed in another unit.</source>
        <extracomment>barometer-least, comment</extracomment>
        <translation>Höher, als irgendeine Straße führt. Was darüber hinausgeht, wurde in einer anderen Einheit eingegeben.</translation>
    </message>
    <message>
        <source>Nor more than this.</source>
        <extracomment>barometer-most, text</extracomment>
        <translation>Und nicht mehr.</translation>
    </message>
    <message>
        <source>Deeper than any mine that engines are tested in.</source>
        <extracomment>barometer-most, comment</extracomment>
        <translation>Tiefer als jedes Bergwerk, in dem Motoren geprüft werden.</translation>
    </message>
    <message>
        <source>A 12 V battery under this at rest is called flat.</source>
        <extracomment>battery-low, text</extracomment>
        <translation>Eine 12-V-Batterie unter diesem Wert in Ruhe heißt leer.</translation>
    </message>
    <message>
        <source>Only said of 12 V systems; readings over 15 V are taken as 24 V.</source>
        <extracomment>battery-low, comment</extracomment>
        <translation>Gilt nur für 12-V-Anlagen; Werte über 15 V gelten als 24 V.</translation>
    </message>
    <message>
        <source>A battery under this at rest is not called flat: it is none of 12 V.</source>
        <extracomment>battery-least, text</extracomment>
        <translation>Eine Batterie, die in Ruhe darunter liegt, wird nicht leer genannt: Sie ist keine mit 12 V.</translation>
    </message>
    <message>
        <source>A 6 V battery, or a slip.</source>
        <extracomment>battery-least, comment</extracomment>
        <translation>Eine 6-V-Batterie, oder ein Versehen.</translation>
    </message>
    <message>
        <source>A battery over this at rest is taken as one of 24 V.</source>
        <extracomment>battery-double, text</extracomment>
        <translation>Eine Batterie, die in Ruhe darüber liegt, gilt als eine mit 24 V.</translation>
    </message>
    <message>
        <source>A 12 V battery at rest never shows so much.</source>
        <extracomment>battery-double, comment</extracomment>
        <translation>Eine 12-V-Batterie zeigt in Ruhe nie so viel.</translation>
    </message>
    <message>
        <source>A set pressure this far from the tester&apos;s own is asked about.</source>
        <extracomment>set-differs, text</extracomment>
        <translation>Bei einem eingestellten Druck, der so weit von dem des Prüfgeräts abweicht, wird nachgefragt.</translation>
    </message>
    <message>
        <source>Regulators drift by less between two tests; more is another setting, or a slip.</source>
        <extracomment>set-differs, comment</extracomment>
        <translation>Druckregler driften zwischen zwei Prüfungen um weniger; mehr ist eine andere Einstellung oder ein Versehen.</translation>
    </message>
    <message>
        <source>Leak-down readings count as repeats when their set pressures differ by no more than this.</source>
        <extracomment>set-alike, text</extracomment>
        <translation>Druckverlustwerte gelten als Wiederholungen, wenn ihre eingestellten Drücke um nicht mehr als dies auseinanderliegen.</translation>
    </message>
    <message>
        <source>A regulator is never set twice to the same needle&apos;s width. The odds take it from here too.</source>
        <extracomment>set-alike, comment</extracomment>
        <translation>Ein Regler wird nie zweimal auf Zeigerbreite gleich eingestellt. Die Wahrscheinlichkeiten nehmen es auch von hier.</translation>
    </message>
    <message>
        <source>Two restrictors count as alike when their diameters differ by no more than this.</source>
        <extracomment>restrictor-alike, text</extracomment>
        <translation>Zwei Drosselbohrungen gelten als gleich, wenn ihre Durchmesser um nicht mehr als dies auseinanderliegen.</translation>
    </message>
    <message>
        <source>Less than a drill&apos;s own tolerance: 0.040 in and 1 mm are two.</source>
        <extracomment>restrictor-alike, comment</extracomment>
        <translation>Weniger als die Toleranz eines Bohrers: 0,040 in und 1 mm sind zweierlei.</translation>
    </message>
    <message>
        <source>A valve clearance over this is asked about: perhaps the unit is wrong.</source>
        <extracomment>clearance-very-wide, text</extracomment>
        <translation>Bei einem größeren Ventilspiel wird nachgefragt: Vielleicht stimmt die Einheit nicht.</translation>
    </message>
    <message>
        <source>Far beyond any rocker&apos;s clearance.</source>
        <extracomment>clearance-very-wide, comment</extracomment>
        <translation>Weit mehr als das Spiel irgendeines Kipphebels.</translation>
    </message>
    <message>
        <source>Without a wanted range, a valve clearance under this share of the median of the engine&apos;s other valves of its side is asked about first.</source>
        <extracomment>clearance-beside-share, text</extracomment>
        <translation>Ohne Sollbereich wird nach einem Ventilspiel zuerst gefragt, wenn es unter diesem Anteil des Medians der übrigen Ventile seiner Seite im Motor liegt.</translation>
    </message>
    <message>
        <source>Valves of one side are set alike: wear or the feeler gauge alone puts none of them out by half. It is only asked about, since the manual alone says what is right.</source>
        <extracomment>clearance-beside-share, comment</extracomment>
        <translation>Ventile einer Seite werden gleich eingestellt: Verschleiß oder die Fühlerlehre allein bringen keines um die Hälfte davon ab. Es wird nur gefragt, denn was richtig ist, sagt allein das Handbuch.</translation>
    </message>
    <message>
        <source>Such a clearance is only asked about where it is less than that median by at least this.</source>
        <extracomment>clearance-beside-less, text</extracomment>
        <translation>Nach einem solchen Ventilspiel wird nur gefragt, wenn es um mindestens so viel unter diesem Median liegt.</translation>
    </message>
    <message>
        <source>Two steps of a common feeler gauge: between small clearances half of the other is soon reached.</source>
        <extracomment>clearance-beside-less, comment</extracomment>
        <translation>Zwei Stufen einer üblichen Fühlerlehre: Bei kleinem Spiel ist die Hälfte des anderen bald erreicht.</translation>
    </message>
    <message>
        <source>And where at least so many other valves of its side were measured.</source>
        <extracomment>clearance-beside-least, text</extracomment>
        <translation>Und wenn mindestens so viele andere Ventile seiner Seite gemessen wurden.</translation>
    </message>
    <message>
        <source>Of two valves nobody can say which is the odd one.</source>
        <extracomment>clearance-beside-least, comment</extracomment>
        <translation>Bei zwei Ventilen kann niemand sagen, welches aus der Reihe fällt.</translation>
    </message>
    <message>
        <source>An entry this many times above or below the other cylinders or the limits is asked about: perhaps the decimal point slipped.</source>
        <extracomment>slip-factor, text</extracomment>
        <translation>Bei einer Eingabe, die so viele Male über oder unter den anderen Zylindern oder den Grenzwerten liegt, wird nachgefragt: Vielleicht ist das Komma verrutscht.</translation>
    </message>
    <message>
        <source>A decimal slip is a factor of 10; a dead cylinder reads low for a reason, so the question is only asked.</source>
        <extracomment>slip-factor, comment</extracomment>
        <translation>Ein verrutschtes Komma ist ein Faktor 10; ein toter Zylinder zeigt aus gutem Grund wenig, deshalb wird nur gefragt.</translation>
    </message>
    <message>
        <source>A low entry looks like a slipped decimal point where ten times as much would lie within this factor of what is usual.</source>
        <extracomment>slip-fits, text</extracomment>
        <translation>Eine niedrige Eingabe sieht nach verrutschtem Komma aus, wo das Zehnfache innerhalb dieses Faktors um das Übliche läge.</translation>
    </message>
    <message>
        <source>A low reading may be a dead cylinder just as well.</source>
        <extracomment>slip-fits, comment</extracomment>
        <translation>Ein niedriger Wert kann ebenso gut ein toter Zylinder sein.</translation>
    </message>
    <message>
        <source>A reading that can&apos;t be told from a limit is called close to it where they lie no further apart than this share of the pressure, in leak-down of the set pressure; else its doubt is called wide.</source>
        <extracomment>near-limit, text</extracomment>
        <translation>Ein Messwert, der von einem Grenzwert nicht zu unterscheiden ist, heißt nahe an ihm, wo beide nicht weiter auseinander liegen als dieser Anteil des Drucks, beim Druckverlust des eingestellten Drucks; sonst heißt seine Unsicherheit groß.</translation>
    </message>
    <message>
        <source>About what a fine gauge and a steady hand tell apart at best.</source>
        <extracomment>near-limit, comment</extracomment>
        <translation>Etwa so viel, wie ein feines Manometer und eine ruhige Hand bestenfalls unterscheiden.</translation>
    </message>
    <message>
        <source>An entry at least this many times above or below what can be expected is asked about where its digits in another unit would lie within that factor of it: perhaps the dial was read in that unit.</source>
        <extracomment>other-unit-apart, text</extracomment>
        <translation>Nach einer Eingabe, die mindestens so viele Male über oder unter dem Erwartbaren liegt, wird gefragt, wo ihre Ziffern in einer anderen Einheit innerhalb dieses Faktors lägen: Vielleicht wurde die Skala in jener Einheit abgelesen.</translation>
    </message>
    <message>
        <source>Many dials have a scale in bar and one in psi, and who is used to the one types it. Sound cylinders of one engine differ by less.</source>
        <extracomment>other-unit-apart, comment</extracomment>
        <translation>Viele Manometer haben eine Skala in bar und eine in psi, und wer die eine gewohnt ist, tippt sie ein. Gesunde Zylinder eines Motors unterscheiden sich um weniger.</translation>
    </message>
    <message>
        <source>What a petrol engine&apos;s cranking reading is held against for that, where neither other readings nor limits are known.</source>
        <extracomment>usual-cranking, text</extracomment>
        <translation>Woran der Kompressionswert eines Benzinmotors dafür gehalten wird, wo weder andere Messwerte noch Grenzwerte bekannt sind.</translation>
    </message>
    <message>
        <source>Most read between 7 and 14 bar; only a slip of the unit is told by it.</source>
        <extracomment>usual-cranking, comment</extracomment>
        <translation>Die meisten zeigen 7 bis 14 bar; nur eine verwechselte Einheit wird daran erkannt.</translation>
    </message>
    <message>
        <source>What a diesel&apos;s cranking reading is held against for that.</source>
        <extracomment>usual-cranking-diesel, text</extracomment>
        <translation>Woran der Kompressionswert eines Dieselmotors dafür gehalten wird.</translation>
    </message>
    <message>
        <source>Most read between 20 and 40 bar.</source>
        <extracomment>usual-cranking-diesel, comment</extracomment>
        <translation>Die meisten zeigen 20 bis 40 bar.</translation>
    </message>
    <message>
        <source>What a leak-down tester&apos;s set pressure is held against for that, where its card names none.</source>
        <extracomment>usual-set, text</extracomment>
        <translation>Woran der eingestellte Druck eines Druckverlustprüfers dafür gehalten wird, wo seine Karte keinen nennt.</translation>
    </message>
    <message>
        <source>80 to 100 psi are common.</source>
        <extracomment>usual-set, comment</extracomment>
        <translation>80 bis 100 psi sind üblich.</translation>
    </message>
    <message>
        <source>Lower end of the readings with a working decompressor.</source>
        <extracomment>decompressor-low, text</extracomment>
        <translation>Unteres Ende der Messwerte bei arbeitendem Dekompressor.</translation>
    </message>
    <message>
        <source>57 to 85 psi with the decompressor working.</source>
        <extracomment>decompressor-low, comment; decompressor-high, comment</extracomment>
        <translation>57 bis 85 psi bei arbeitendem Dekompressor.</translation>
    </message>
    <message>
        <source>Upper end of the readings with a working decompressor.</source>
        <extracomment>decompressor-high, text</extracomment>
        <translation>Oberes Ende der Messwerte bei arbeitendem Dekompressor.</translation>
    </message>
    <message>
        <source>Change of the first cylinder between start and end of a test that is put down to the battery.</source>
        <extracomment>drift, text</extracomment>
        <translation>Änderung des ersten Zylinders zwischen Anfang und Ende einer Prüfung, die der Batterie zugeschrieben wird.</translation>
    </message>
    <message>
        <source>Under it, repeats of one cylinder scatter anyway.</source>
        <extracomment>drift, comment</extracomment>
        <translation>Darunter streuen Wiederholungen eines Zylinders ohnehin.</translation>
    </message>
    <message>
        <source>How far a regulator may sag under flow without being seen, with one gauge only, as a share of the set pressure.</source>
        <extracomment>droop, text</extracomment>
        <translation>Wie weit ein Druckregler bei nur einem Manometer unter Durchfluss unbemerkt nachgeben kann, als Anteil des eingestellten Drucks.</translation>
    </message>
    <message>
        <source>Two-gauge testers show it; one-gauge testers don&apos;t.</source>
        <extracomment>droop, comment</extracomment>
        <translation>Prüfgeräte mit zwei Manometern zeigen es; solche mit einem nicht.</translation>
    </message>
    <message>
        <source>Length of a connecting rod that is not on the engine card, in strokes.</source>
        <extracomment>rod-over-stroke, text</extracomment>
        <translation>Länge eines Pleuels, die nicht auf der Motorkarte steht, als Vielfaches des Hubs.</translation>
    </message>
    <message>
        <source>Most engines lie between 1.5 and 2; it changes a reading by well under 1 %.</source>
        <extracomment>rod-over-stroke, comment</extracomment>
        <translation>Die meisten Motoren liegen zwischen 1,5 und 2; es ändert einen Messwert um deutlich weniger als 1 %.</translation>
    </message>
    <message>
        <source>Without a factory figure, a reading under this share of the least that makers in general ask for is a fault.</source>
        <extracomment>far-below-usual, text</extracomment>
        <translation>Ohne Werksangabe ist ein Messwert unter diesem Anteil des Mindesten, das Hersteller im Allgemeinen verlangen, ein Fehler.</translation>
    </message>
    <message>
        <source>Makers&apos; figures differ by a fifth or so, not by half. Not said where something lowered the reading by who knows how much.</source>
        <extracomment>far-below-usual, comment</extracomment>
        <translation>Die Angaben der Hersteller weichen um ein Fünftel oder so voneinander ab, nicht um die Hälfte. Nicht gesagt, wo etwas den Messwert um wer weiß wie viel gesenkt hat.</translation>
    </message>
    <message>
        <source>The same for a diesel.</source>
        <extracomment>far-below-usual-diesel, text</extracomment>
        <translation>Dasselbe für einen Diesel.</translation>
    </message>
    <message>
        <source>A diesel fires by the heat of its compression alone: it hardly starts with less.</source>
        <extracomment>far-below-usual-diesel, comment</extracomment>
        <translation>Ein Diesel zündet allein durch die Wärme seiner Verdichtung: mit weniger springt er kaum an.</translation>
    </message>
    <message>
        <source>Doubt of a compression ratio that is marked as guessed.</source>
        <extracomment>guessed-ratio-doubt, text</extracomment>
        <translation>Unsicherheit einer als geschätzt gekennzeichneten Verdichtung.</translation>
    </message>
    <message>
        <source>Half the way to the next figure that a maker would print.</source>
        <extracomment>guessed-ratio-doubt, comment</extracomment>
        <translation>Der halbe Weg zur nächsten Zahl, die ein Hersteller drucken würde.</translation>
    </message>
    <message>
        <source>Intake closing after bottom dead centre, at the seat, where the card does not give it.</source>
        <extracomment>intake-closing, text</extracomment>
        <translation>Einlassschluss nach dem unteren Totpunkt, im Sitz, wo die Karte ihn nicht angibt.</translation>
    </message>
    <message>
        <source>Road engines lie between about 50 and 80 degrees.</source>
        <extracomment>intake-closing, comment</extracomment>
        <translation>Straßenmotoren liegen etwa zwischen 50 und 80 Grad.</translation>
    </message>
    <message>
        <source>Exhaust port closing of a two-stroke after bottom dead centre, where the card does not give it.</source>
        <extracomment>port-closing, text</extracomment>
        <translation>Auslassschlitzschluss eines Zweitakters nach dem unteren Totpunkt, wo die Karte ihn nicht angibt.</translation>
    </message>
    <message>
        <source>Small two-strokes open their exhaust port 85 to 105 degrees before bottom dead centre and close it as long after.</source>
        <extracomment>port-closing, comment</extracomment>
        <translation>Kleine Zweitakter öffnen ihren Auslassschlitz 85 bis 105 Grad vor dem unteren Totpunkt und schließen ihn ebenso lange danach.</translation>
    </message>
    <message>
        <source>Doubt of an assumed closing, to either side.</source>
        <extracomment>closing-doubt, text</extracomment>
        <translation>Unsicherheit eines angenommenen Schlusses, nach jeder Seite.</translation>
    </message>
    <message>
        <source>Two standard deviations of what road engines have, as every +- on these pages.</source>
        <extracomment>closing-doubt, comment</extracomment>
        <translation>Zwei Standardabweichungen dessen, was Straßenmotoren haben, wie jedes ± auf diesen Seiten.</translation>
    </message>
    <message>
        <source>Doubt of a closing that is on the card, to either side.</source>
        <extracomment>closing-known-doubt, text</extracomment>
        <translation>Unsicherheit eines Schlusses, der auf der Karte steht, nach jeder Seite.</translation>
    </message>
    <message>
        <source>Wear of the drive and clearance; two standard deviations.</source>
        <extracomment>closing-known-doubt, comment</extracomment>
        <translation>Verschleiß des Antriebs und Ventilspiel; zwei Standardabweichungen.</translation>
    </message>
    <message>
        <source>Doubt of the closing with variable valve timing, to either side.</source>
        <extracomment>variable-timing-doubt, text</extracomment>
        <translation>Unsicherheit des Schlusses bei variablen Steuerzeiten, nach jeder Seite.</translation>
    </message>
    <message>
        <source>At cranking speed most stand at a stop, but which one is seldom known.</source>
        <extracomment>variable-timing-doubt, comment</extracomment>
        <translation>Bei Anlasserdrehzahl stehen die meisten an einem Anschlag, aber an welchem, ist selten bekannt.</translation>
    </message>
    <message>
        <source>A valve closes on its seat at least this much later than at the lift that its timing is quoted for.</source>
        <extracomment>lift-to-seat-least, text</extracomment>
        <translation>Ein Ventil schließt im Sitz mindestens so viel später als bei dem Hub, für den seine Steuerzeit angegeben ist.</translation>
    </message>
    <message>
        <source>1 mm or 0.050 in of lift.</source>
        <extracomment>lift-to-seat-least, comment; lift-to-seat-most, comment</extracomment>
        <translation>1 mm oder 0,050 in Hub.</translation>
    </message>
    <message>
        <source>And at most this much.</source>
        <extracomment>lift-to-seat-most, text</extracomment>
        <translation>Und höchstens so viel.</translation>
    </message>
    <message>
        <source>Cranking speed where none is noted.</source>
        <extracomment>cranking-speed, text</extracomment>
        <translation>Anlasserdrehzahl, wo keine notiert ist.</translation>
    </message>
    <message>
        <source>Starters turn an engine without plugs at 200 to 350 rpm.</source>
        <extracomment>cranking-speed, comment; speed-unknown-doubt, comment</extracomment>
        <translation>Anlasser drehen einen Motor ohne Kerzen mit 200 bis 350 U/min.</translation>
    </message>
    <message>
        <source>Speed near top dead centre over the mean cranking speed, which is what a counter shows.</source>
        <extracomment>speed-dip, text</extracomment>
        <translation>Drehzahl nahe dem oberen Totpunkt im Verhältnis zur mittleren Anlasserdrehzahl, die ein Drehzahlmesser zeigt.</translation>
    </message>
    <message>
        <source>As in odds.json: the starter slows down where the gas pushes back.</source>
        <extracomment>speed-dip, comment</extracomment>
        <translation>Wie in odds.json: Der Anlasser wird langsamer, wo das Gas zurückdrückt.</translation>
    </message>
    <message>
        <source>Doubt of that factor, one standard uncertainty as a share of the speed.</source>
        <extracomment>speed-dip-doubt, text</extracomment>
        <translation>Unsicherheit dieses Faktors, eine Standardunsicherheit als Anteil der Drehzahl.</translation>
    </message>
    <message>
        <source>As in odds.json.</source>
        <extracomment>speed-dip-doubt, comment; speed-unknown-doubt, comment; speed-known-doubt, comment; day-scatter, comment</extracomment>
        <translation>Wie in odds.json.</translation>
    </message>
    <message>
        <source>Doubt of a cranking speed that was not noted, one standard uncertainty.</source>
        <extracomment>speed-unknown-doubt, text</extracomment>
        <translation>Unsicherheit einer nicht notierten Anlasserdrehzahl, eine Standardunsicherheit.</translation>
    </message>
    <message>
        <source>The same of one that was noted.</source>
        <extracomment>speed-known-doubt, text</extracomment>
        <translation>Dasselbe für eine notierte.</translation>
    </message>
    <message>
        <source>Cylinder walls of a warm engine whose coolant temperature is not noted.</source>
        <extracomment>warm-wall, text</extracomment>
        <translation>Zylinderwände eines warmen Motors, dessen Kühlmitteltemperatur nicht notiert ist.</translation>
    </message>
    <message>
        <source>A cold engine then reads about 10 % lower, as the Thermo King manual says.</source>
        <extracomment>warm-wall, comment</extracomment>
        <translation>Ein kalter Motor zeigt dann etwa 10 % weniger, wie das Handbuch von Thermo King sagt.</translation>
    </message>
    <message>
        <source>Least share of the open air&apos;s pressure that a cylinder is filled to with the throttle closed.</source>
        <extracomment>closed-throttle-fill-least, text</extracomment>
        <translation>Kleinster Anteil des Umgebungsdrucks, bis zu dem sich ein Zylinder bei geschlossener Drosselklappe füllt.</translation>
    </message>
    <message>
        <source>At cranking speed much air passes a closed throttle; how much depends on its stop and on the idle passage.</source>
        <extracomment>closed-throttle-fill-least, comment</extracomment>
        <translation>Bei Anlasserdrehzahl geht viel Luft an einer geschlossenen Drosselklappe vorbei; wie viel, hängt von ihrem Anschlag und vom Leerlaufkanal ab.</translation>
    </message>
    <message>
        <source>And the largest share.</source>
        <extracomment>closed-throttle-fill-most, text</extracomment>
        <translation>Und der größte Anteil.</translation>
    </message>
    <message>
        <source>Cranking speed that a flat battery is taken to give.</source>
        <extracomment>weak-battery-speed, text</extracomment>
        <translation>Anlasserdrehzahl, die einer leeren Batterie zugeschrieben wird.</translation>
    </message>
    <message>
        <source>About half of a good one.</source>
        <extracomment>weak-battery-speed, comment</extracomment>
        <translation>Etwa die Hälfte einer guten.</translation>
    </message>
    <message>
        <source>Hose and gauge of a compression gauge whose volume is not on its card.</source>
        <extracomment>hose-volume, text</extracomment>
        <translation>Schlauch und Manometer eines Kompressionsprüfers, dessen Volumen nicht auf seiner Karte steht.</translation>
    </message>
    <message>
        <source>A hose of 4 mm bore and half a metre holds 6 cm3, gauge and fittings about as much.</source>
        <extracomment>hose-volume, comment</extracomment>
        <translation>Ein Schlauch mit 4 mm Innendurchmesser und einem halben Meter Länge fasst 6 cm3, Manometer und Anschlüsse etwa ebenso viel.</translation>
    </message>
    <message>
        <source>Pressure that opens the check valve of a compression gauge.</source>
        <extracomment>valve-core-low-pressure, text</extracomment>
        <translation>Druck, der das Rückschlagventil eines Kompressionsprüfers öffnet.</translation>
    </message>
    <message>
        <source>Cores made for gauges.</source>
        <extracomment>valve-core-low-pressure, comment</extracomment>
        <translation>Für Manometer gemachte Einsätze.</translation>
    </message>
    <message>
        <source>Pressure that opens a tyre-valve core.</source>
        <extracomment>valve-core-tyre, text</extracomment>
        <translation>Druck, der einen Reifenventileinsatz öffnet.</translation>
    </message>
    <message>
        <source>They open at 100 to 150 kPa and read 11 to 19 psi low.</source>
        <extracomment>valve-core-tyre, comment</extracomment>
        <translation>Sie öffnen bei 100 bis 150 kPa und zeigen 11 bis 19 psi zu wenig.</translation>
    </message>
    <message>
        <source>Least share of the oil of a wet test that stays in the chamber.</source>
        <extracomment>oil-kept-least, text</extracomment>
        <translation>Kleinster Anteil des Öls einer Nassprüfung, der im Brennraum bleibt.</translation>
    </message>
    <message>
        <source>Most oil runs past the rings or is blown out.</source>
        <extracomment>oil-kept-least, comment</extracomment>
        <translation>Das meiste Öl läuft an den Kolbenringen vorbei oder wird hinausgeblasen.</translation>
    </message>
    <message>
        <source>Largest share of it.</source>
        <extracomment>oil-kept-most, text</extracomment>
        <translation>Größter Anteil davon.</translation>
    </message>
    <message>
        <source>As above; a flat engine keeps more than an upright one.</source>
        <extracomment>oil-kept-most, comment</extracomment>
        <translation>Wie oben; ein Boxermotor behält mehr als ein stehender.</translation>
    </message>
    <message>
        <source>Cylinders with less swept volume than this count as small: a wet test puts less oil in.</source>
        <extracomment>small-cylinder, text</extracomment>
        <translation>Zylinder mit weniger Hubraum als diesem gelten als klein: Bei einer Nassprüfung kommt weniger Öl hinein.</translation>
    </message>
    <message>
        <source>Between a motorcycle&apos;s and a car&apos;s.</source>
        <extracomment>small-cylinder, comment</extracomment>
        <translation>Zwischen dem eines Motorrads und dem eines Autos.</translation>
    </message>
    <message>
        <source>Oil of a wet test where the amount is not noted.</source>
        <extracomment>oil-put-in, text</extracomment>
        <translation>Öl einer Nassprüfung, wo die Menge nicht notiert ist.</translation>
    </message>
    <message>
        <source>15 ml, one tablespoon, for a car cylinder.</source>
        <extracomment>oil-put-in, comment</extracomment>
        <translation>15 ml, ein Esslöffel, für einen Autozylinder.</translation>
    </message>
    <message>
        <source>The same for a small cylinder.</source>
        <extracomment>oil-put-in-small, text</extracomment>
        <translation>Dasselbe für einen kleinen Zylinder.</translation>
    </message>
    <message>
        <source>About 5 ml, one teaspoon: that manual&apos;s figure for a car cylinder, taken here for small ones.</source>
        <extracomment>oil-put-in-small, comment</extracomment>
        <translation>Etwa 5 ml, ein Teelöffel: die Zahl jenes Handbuchs für einen Autozylinder, hier für kleine genommen.</translation>
    </message>
    <message>
        <source>More oil than this in one cylinder is asked about before a wet reading is kept.</source>
        <extracomment>oil-much, text</extracomment>
        <translation>Bei mehr Öl als diesem in einem Zylinder wird nachgefragt, bevor ein Nasswert behalten wird.</translation>
    </message>
    <message>
        <source>Above what is usually put in; how much locks an engine depends on its chamber.</source>
        <extracomment>oil-much, comment</extracomment>
        <translation>Mehr, als üblicherweise eingefüllt wird; wie viel einen Motor blockiert, hängt von seinem Brennraum ab.</translation>
    </message>
    <message>
        <source>Set pressure of a crankcase test above which the pad asks.</source>
        <extracomment>crankcase-set-most, text</extracomment>
        <translation>Eingestellter Druck einer Kurbelgehäuseprüfung, über dem nachgefragt wird.</translation>
    </message>
    <message>
        <source>Manuals ask for a few psi, mostly under 10; leak-down pressure pushes seals out of their seats.</source>
        <extracomment>crankcase-set-most, comment</extracomment>
        <translation>Handbücher verlangen wenige psi, meist unter 10; der Druck einer Druckverlustprüfung drückt Dichtringe aus ihrem Sitz.</translation>
    </message>
    <message>
        <source>Oil that fills this share of the chamber or more is warned of: it can lock the engine.</source>
        <extracomment>oil-most-of-chamber, text</extracomment>
        <translation>Vor Öl, das diesen Anteil des Brennraums oder mehr füllt, wird gewarnt: Es kann den Motor blockieren.</translation>
    </message>
    <message>
        <source>The oil does not lie flat, and the figures on the card are not exact. Above 90 % no sum is done.</source>
        <extracomment>oil-most-of-chamber, comment</extracomment>
        <translation>Das Öl liegt nicht eben, und die Zahlen auf der Karte sind nicht genau. Über 90 % wird nicht gerechnet.</translation>
    </message>
    <message>
        <source>Where the amount of oil is not noted, no more than this share of the chamber is taken.</source>
        <extracomment>oil-assumed-of-chamber, text</extracomment>
        <translation>Wo die Ölmenge nicht notiert ist, wird höchstens dieser Anteil des Brennraums angenommen.</translation>
    </message>
    <message>
        <source>A teaspoon fills most of the chamber of a very small engine.</source>
        <extracomment>oil-assumed-of-chamber, comment</extracomment>
        <translation>Ein Teelöffel füllt den größten Teil des Brennraums eines sehr kleinen Motors.</translation>
    </message>
    <message>
        <source>What the cranking model may be out by for a whole engine, one standard uncertainty as a share of the reading.</source>
        <extracomment>model-doubt, text</extracomment>
        <translation>Worum das Durchdrehmodell bei einem ganzen Motor falsch sein kann, eine Standardunsicherheit als Anteil des Messwerts.</translation>
    </message>
    <message>
        <source>Not yet counted on real engines.</source>
        <extracomment>model-doubt, comment; level-doubt, comment</extracomment>
        <translation>Noch nicht an wirklichen Motoren ausgezählt.</translation>
    </message>
    <message>
        <source>How far the first puff&apos;s share of the final reading may lie from what the model expects and still count as usual, as a share of it.</source>
        <extracomment>first-share-doubt, text</extracomment>
        <translation>Wie weit der Anteil des ersten Hubs am Endwert von der Erwartung des Modells abliegen darf und noch als üblich gilt, als Anteil davon.</translation>
    </message>
    <message>
        <source>The first pull seldom starts at the same place of the stroke twice.</source>
        <extracomment>first-share-doubt, comment</extracomment>
        <translation>Der erste Hub beginnt selten zweimal an derselben Stelle.</translation>
    </message>
    <message>
        <source>A test that is expected to tell at least so many bits about where most of the leak is would tell much.</source>
        <extracomment>tells-much, text</extracomment>
        <translation>Eine Prüfung, von der mindestens so viele Bit darüber zu erwarten sind, wo das Leck hauptsächlich ist, würde viel sagen.</translation>
    </message>
    <message>
        <source>One bit settles an even question between two paths; half of one turns an even question into about nine to one.</source>
        <extracomment>tells-much, comment</extracomment>
        <translation>Ein Bit entscheidet eine ausgeglichene Frage zwischen zwei Wegen; ein halbes macht aus einer ausgeglichenen Frage etwa neun zu eins.</translation>
    </message>
    <message>
        <source>The same for a test that would tell something.</source>
        <extracomment>tells-some, text</extracomment>
        <translation>Dasselbe für eine Prüfung, die etwas sagen würde.</translation>
    </message>
    <message>
        <source>Turns an even question into about three to one.</source>
        <extracomment>tells-some, comment</extracomment>
        <translation>Macht aus einer ausgeglichenen Frage etwa drei zu eins.</translation>
    </message>
    <message>
        <source>The same for a test that would tell little; one below this is not proposed.</source>
        <extracomment>tells-little, text</extracomment>
        <translation>Dasselbe für eine Prüfung, die wenig sagen würde; eine darunter wird nicht vorgeschlagen.</translation>
    </message>
    <message>
        <source>Turns an even question into about five to three.</source>
        <extracomment>tells-little, comment</extracomment>
        <translation>Macht aus einer ausgeglichenen Frage etwa fünf zu drei.</translation>
    </message>
    <message>
        <source>What a repair should bring is said, and work on it proposed, where the chance that the part is at fault is at least this.</source>
        <extracomment>repair-from, text</extracomment>
        <translation>Was eine Reparatur bringen sollte, wird gesagt, und Arbeit daran vorgeschlagen, wenn das Teil mindestens mit dieser Wahrscheinlichkeit die Ursache ist.</translation>
    </message>
    <message>
        <source>Below this a repair is more likely to be for nothing than not, even before its price is looked at.</source>
        <extracomment>repair-from, comment</extracomment>
        <translation>Darunter ist eine Reparatur eher vergeblich als nicht, noch bevor ihr Preis angesehen wird.</translation>
    </message>
    <message>
        <source>One outcome is named as the likeliest from this chance on; where none reaches it the two likeliest are named.</source>
        <extracomment>named-from, text</extracomment>
        <translation>Von dieser Wahrscheinlichkeit an wird ein Ergebnis als das wahrscheinlichste genannt; wo keines sie erreicht, die zwei wahrscheinlichsten.</translation>
    </message>
    <message>
        <source>Below one half the others together are likelier.</source>
        <extracomment>named-from, comment</extracomment>
        <translation>Unter der Hälfte sind die anderen zusammen wahrscheinlicher.</translation>
    </message>
    <message>
        <source>That nobody listened, or that a valve&apos;s clearance is not known, is said where the chance that it matters is at least this.</source>
        <extracomment>asked-from, text</extracomment>
        <translation>Dass niemand gehorcht hat oder dass ein Ventilspiel nicht bekannt ist, wird gesagt, wo es mindestens mit dieser Wahrscheinlichkeit darauf ankommt.</translation>
    </message>
    <message>
        <source>Below this it would be asked of cylinders that seal well.</source>
        <extracomment>asked-from, comment</extracomment>
        <translation>Darunter würde nach Zylindern gefragt, die gut dichten.</translation>
    </message>
    <message>
        <source>From this chance on an owner reads that something is very likely.</source>
        <extracomment>likely-very, text</extracomment>
        <translation>Von dieser Wahrscheinlichkeit an liest ein Besitzer, etwas sei sehr wahrscheinlich.</translation>
    </message>
    <message>
        <source>Nine cases of ten.</source>
        <extracomment>likely-very, comment</extracomment>
        <translation>Neun von zehn Fällen.</translation>
    </message>
    <message>
        <source>And from this one on that it is likely; under it, that a cylinder leaks there or seals well after all.</source>
        <extracomment>likely, text</extracomment>
        <translation>Und von dieser an, es sei wahrscheinlich; darunter, dass ein Zylinder dort verliert oder doch gut dichtet.</translation>
    </message>
    <message>
        <source>Three cases of four.</source>
        <extracomment>likely, comment</extracomment>
        <translation>Drei von vier Fällen.</translation>
    </message>
    <message>
        <source>From this one on that it is more likely than not.</source>
        <extracomment>likely-more, text</extracomment>
        <translation>Von dieser an, es sei wahrscheinlicher als nicht.</translation>
    </message>
    <message>
        <source>Nearer to one half nothing is likelier than its contrary.</source>
        <extracomment>likely-more, comment</extracomment>
        <translation>Näher an der Hälfte ist nichts wahrscheinlicher als sein Gegenteil.</translation>
    </message>
    <message>
        <source>A difference between two visits counts as a change when it is more than this many of its own standard uncertainties.</source>
        <extracomment>change-real, text</extracomment>
        <translation>Ein Unterschied zwischen zwei Terminen gilt als Änderung, wenn er mehr als so viele seiner eigenen Standardunsicherheiten beträgt.</translation>
    </message>
    <message>
        <source>2 is what every +- on these pages stands for: about 95 %.</source>
        <extracomment>change-real, comment</extracomment>
        <translation>2 ist, wofür jedes ± auf diesen Seiten steht: etwa 95 %.</translation>
    </message>
    <message>
        <source>And as one beyond doubt from this many.</source>
        <extracomment>change-beyond-doubt, text</extracomment>
        <translation>Und als zweifelsfrei ab so vielen.</translation>
    </message>
    <message>
        <source>One chance in some 370 that readings of an unchanged cylinder lie so far apart.</source>
        <extracomment>change-beyond-doubt, comment</extracomment>
        <translation>Etwa eine von 370 Möglichkeiten, dass Messwerte eines unveränderten Zylinders so weit auseinanderliegen.</translation>
    </message>
    <message>
        <source>Scatter of all final readings of one engine from one day to the next where the cranking speed is not noted: speed, battery, weather.</source>
        <extracomment>day-scatter, text</extracomment>
        <translation>Streuung aller Endwerte eines Motors von einem Tag zum anderen, wo die Anlasserdrehzahl nicht notiert ist: Drehzahl, Batterie, Wetter.</translation>
    </message>
    <message>
        <source>The same where the cranking speed is noted.</source>
        <extracomment>day-scatter-timed, text</extracomment>
        <translation>Dasselbe, wo die Anlasserdrehzahl notiert ist.</translation>
    </message>
    <message>
        <source>What is left: the speed&apos;s own error, weather, temperature of the air.</source>
        <extracomment>day-scatter-timed, comment</extracomment>
        <translation>Was bleibt: der Fehler der Drehzahl selbst, Wetter, Lufttemperatur.</translation>
    </message>
    <message>
        <source>Scatter of a leak&apos;s area from one leak-down reading to the next, where it was not repeated.</source>
        <extracomment>leak-repeat, text</extracomment>
        <translation>Streuung der Leckfläche von einem Messwert der Druckverlustprüfung zum nächsten, wo nicht wiederholt wurde.</translation>
    </message>
    <message>
        <source>As in odds.json: rings find another place, a valve another seat.</source>
        <extracomment>leak-repeat, comment</extracomment>
        <translation>Wie in odds.json: Kolbenringe finden eine andere Lage, ein Ventil einen anderen Sitz.</translation>
    </message>
    <message>
        <source>Doubt of a restrictor&apos;s effective area, as a share of it.</source>
        <extracomment>restrictor-doubt, text</extracomment>
        <translation>Unsicherheit der wirksamen Fläche einer Drosselbohrung, als Anteil davon.</translation>
    </message>
    <message>
        <source>Discharge coefficient assumed, edges burred, warm air. Cancels where both readings come from one tester. The odds take it from here too.</source>
        <extracomment>restrictor-doubt, comment</extracomment>
        <translation>Durchflussbeiwert angenommen, Grat an den Kanten, warme Luft. Fällt heraus, wo beide Messungen von einem Prüfgerät stammen. Auch die Wahrscheinlichkeiten nehmen ihn von hier.</translation>
    </message>
    <message>
        <source>The same of a restrictor that is not on the tester&apos;s card.</source>
        <extracomment>restrictor-unknown-doubt, text</extracomment>
        <translation>Dasselbe für eine Drosselbohrung, die nicht auf der Karte des Prüfgeräts steht.</translation>
    </message>
    <message>
        <source>Between 0.9 and 1.15 mm where 1.016 mm is assumed.</source>
        <extracomment>restrictor-unknown-doubt, comment</extracomment>
        <translation>Zwischen 0,9 und 1,15 mm, wo 1,016 mm angenommen ist.</translation>
    </message>
    <message>
        <source>The same where the bore is large enough for the larger restrictor: the tester may have either.</source>
        <extracomment>restrictor-unknown-doubt-large, text</extracomment>
        <translation>Dasselbe, wo die Bohrung für die größere Drosselbohrung groß genug ist: Das Prüfgerät kann beide haben.</translation>
    </message>
    <message>
        <source>AC 43.13-1B names 0.040 and 0.060 in: (60/40)² = 2.25 in area, which two of these standard uncertainties just reach.</source>
        <extracomment>restrictor-unknown-doubt-large, comment</extracomment>
        <translation>AC 43.13-1B nennt 0,040 und 0,060 in: (60/40)² = 2,25 in der Fläche, was zwei dieser Standardunsicherheiten gerade erreichen.</translation>
    </message>
    <message>
        <source>Doubt of a leakage that was converted to another tester: this share of the way from a hole&apos;s to a narrow gap&apos;s.</source>
        <extracomment>leak-law-doubt, text</extracomment>
        <translation>Unsicherheit eines auf ein anderes Prüfgerät umgerechneten Druckverlusts: dieser Anteil des Wegs von einem Loch zu einem engen Spalt.</translation>
    </message>
    <message>
        <source>Hole and gap are two examples; most leaks lie between them or near the hole.</source>
        <extracomment>leak-law-doubt, comment</extracomment>
        <translation>Loch und Spalt sind zwei Beispiele; die meisten Lecks liegen dazwischen oder nahe beim Loch.</translation>
    </message>
    <message>
        <source>Doubt of a reading that the cranking model converted: this share of the correction.</source>
        <extracomment>correction-doubt, text</extracomment>
        <translation>Unsicherheit eines vom Durchdrehmodell umgerechneten Messwerts: dieser Anteil der Korrektur.</translation>
    </message>
    <message>
        <source>The model is asked for ratios only. Not yet counted on real engines.</source>
        <extracomment>correction-doubt, comment</extracomment>
        <translation>Das Modell wird nur nach Verhältnissen gefragt. Noch nicht an wirklichen Motoren ausgezählt.</translation>
    </message>
    <message>
        <source>How far two gauges read apart on one cylinder because of hose and check valve, where the model can&apos;t tell.</source>
        <extracomment>other-gauge-doubt, text</extracomment>
        <translation>Wie weit zwei Manometer an einem Zylinder wegen Schlauch und Rückschlagventil auseinander anzeigen, wo das Modell es nicht sagen kann.</translation>
    </message>
    <message>
        <source>A short hose more or less at the chamber end.</source>
        <extracomment>other-gauge-doubt, comment</extracomment>
        <translation>Ein kurzer Schlauch mehr oder weniger auf der Brennraumseite.</translation>
    </message>
    <message>
        <source>How far a reading with the induction taken off may lie from one with it fitted and the throttle held open.</source>
        <extracomment>induction-off-doubt, text</extracomment>
        <translation>Wie weit ein Messwert mit abgebauter Ansaugung von einem mit angebauter und offen gehaltener Drosselklappe abliegen kann.</translation>
    </message>
    <message>
        <source>Ports breathe more freely without pipes; waves are small at cranking speed.</source>
        <extracomment>induction-off-doubt, comment</extracomment>
        <translation>Kanäle atmen ohne Rohre freier; Wellen sind bei Anlasserdrehzahl klein.</translation>
    </message>
    <message>
        <source>How far a flat battery may pull a reading down where the cranking speed is not noted.</source>
        <extracomment>weak-battery-doubt, text</extracomment>
        <translation>Wie weit eine leere Batterie einen Messwert herunterziehen kann, wo die Anlasserdrehzahl nicht notiert ist.</translation>
    </message>
    <message>
        <source>At half the speed the model reads about 10 % lower.</source>
        <extracomment>weak-battery-doubt, comment</extracomment>
        <translation>Bei halber Drehzahl zeigt das Modell etwa 10 % weniger.</translation>
    </message>
    <message>
        <source>Wet tests are compared when the oil put in differs by less than this share.</source>
        <extracomment>oil-alike, text</extracomment>
        <translation>Nassprüfungen werden verglichen, wenn sich das eingefüllte Öl um weniger als diesen Anteil unterscheidet.</translation>
    </message>
    <message>
        <source>A squirt from a can is not measured better.</source>
        <extracomment>oil-alike, comment</extracomment>
        <translation>Ein Spritzer aus der Kanne ist nicht genauer gemessen.</translation>
    </message>
    <message>
        <source>How far warm and cold may move a leakage, as a share of it.</source>
        <extracomment>leak-heat-doubt, text</extracomment>
        <translation>Wie weit warm und kalt einen Druckverlust verschieben können, als Anteil davon.</translation>
    </message>
    <message>
        <source>Gaps close and oil thins as an engine warms; which one wins is not known beforehand.</source>
        <extracomment>leak-heat-doubt, comment</extracomment>
        <translation>Spalte schließen sich, und Öl wird dünner, wenn ein Motor warm wird; was überwiegt, ist vorher nicht bekannt.</translation>
    </message>
    <message>
        <source>How far two crankcase tests of one chamber lie apart, as a share of the pressure that is lost.</source>
        <extracomment>hold-repeat, text</extracomment>
        <translation>Wie weit zwei Kurbelgehäuseprüfungen derselben Kammer auseinanderliegen, als Anteil des verlorenen Drucks.</translation>
    </message>
    <message>
        <source>Plugs over the ports and hoses never seal twice alike; no count of it is known.</source>
        <extracomment>hold-repeat, comment</extracomment>
        <translation>Stopfen auf den Kanälen und Schläuche dichten nie zweimal gleich; eine Zählung davon ist nicht bekannt.</translation>
    </message>
    <message>
        <source>From this many repairs with a prediction on, it is said how many predictions held.</source>
        <extracomment>repairs-to-count, text</extracomment>
        <translation>Ab so vielen Reparaturen mit Vorhersage wird gesagt, wie viele Vorhersagen zutrafen.</translation>
    </message>
    <message>
        <source>Fewer say nothing: of five that hold, one more or less moves the share by a fifth.</source>
        <extracomment>repairs-to-count, comment</extracomment>
        <translation>Weniger sagen nichts: Bei fünf, die zutreffen, verschiebt eine mehr oder weniger den Anteil um ein Fünftel.</translation>
    </message>
    <message>
        <source>Readings of fewer days than this make no trend.</source>
        <extracomment>trend-least-days, text</extracomment>
        <translation>Messwerte aus weniger Tagen als diesen ergeben keinen Trend.</translation>
    </message>
    <message>
        <source>A change by the year can&apos;t be told from a few days.</source>
        <extracomment>trend-least-days, comment</extracomment>
        <translation>Eine Änderung pro Jahr lässt sich nicht aus wenigen Tagen ablesen.</translation>
    </message>
    <message>
        <source>Before cranking: fuel mist leaves the plug holes and sparks light it. Ground the ignition leads (coils on the plugs: pull their connectors, or as the manual says), shut off fuel or injectors, no flame, plug holes pointed away from face and phone. Keep clear of moving parts. In gear the vehicle jumps: neutral.</source>
        <extracomment>cranking, text</extracomment>
        <translation>Vor dem Durchdrehen: Kraftstoffnebel tritt aus den Kerzenlöchern, und Funken entzünden ihn. Zündleitungen an Masse legen (Spulen auf den Kerzen: ihre Stecker abziehen oder wie im Handbuch), Kraftstoff oder Einspritzung abstellen, keine Flamme, Gesicht und Telefon aus der Richtung der Kerzenlöcher halten. Abstand zu bewegten Teilen halten. Mit eingelegtem Gang springt das Fahrzeug los: Leerlauf einlegen.</translation>
    </message>
    <message>
        <source>Diesel: never open an injection line, a rail or an injector under pressure: the jet goes through skin. The engine&apos;s manual says how the pressure is let off. Glow plugs: supply off, its ends insulated. Use the adapter made for this injector&apos;s or glow plug&apos;s hole.</source>
        <extracomment>diesel-lines, text</extracomment>
        <translation>Diesel: niemals eine Einspritzleitung, ein Rail oder eine Einspritzdüse unter Druck öffnen: Der Strahl geht durch die Haut. Wie der Druck abgebaut wird, sagt das Handbuch des Motors. Glühkerzen: Stromzuleitung abnehmen und ihre Enden isolieren. Den Adapter verwenden, der für das Loch dieser Einspritzdüse oder Glühkerze gemacht ist.</translation>
    </message>
    <message>
        <source>Before cranking a diesel: cut the fuel off as its manual says, so that nothing is injected or fires, and prove it by cranking before anything is opened. Gauge and hose for 40 bar or more. Face and hands away from open holes. Keep clear of moving parts. In gear the vehicle jumps: neutral.</source>
        <extracomment>diesel-cranking, text</extracomment>
        <translation>Vor dem Durchdrehen eines Diesels: den Kraftstoff abstellen, wie es sein Handbuch sagt, sodass nichts eingespritzt wird und nichts zündet, und das durch Durchdrehen nachweisen, bevor etwas geöffnet wird. Manometer und Schlauch für 40 bar oder mehr. Gesicht und Hände von offenen Löchern fernhalten. Abstand zu bewegten Teilen halten. Mit eingelegtem Gang springt das Fahrzeug los: Leerlauf einlegen.</translation>
    </message>
    <message>
        <source>The adapter&apos;s reach must not touch piston or valve. With it screwed in, turn the engine two turns by hand before using the starter.</source>
        <extracomment>adapter, text</extracomment>
        <translation>Der Adapter darf mit seiner Gewindelänge weder Kolben noch Ventil berühren. Den Motor mit eingeschraubtem Adapter zwei Umdrehungen von Hand durchdrehen, bevor der Anlasser benutzt wird.</translation>
    </message>
    <message>
        <source>Only a little oil. Too much can&apos;t be compressed: it locks the engine and can bend a rod. Turn it over by hand, two turns, before the starter. Eyes away from the plug holes when you crank: it sprays. Never on a diesel.</source>
        <extracomment>oil, text</extracomment>
        <translation>Nur wenig Öl. Zu viel lässt sich nicht verdichten: Es blockiert den Motor und kann ein Pleuel verbiegen. Den Motor zwei Umdrehungen von Hand durchdrehen, bevor der Anlasser benutzt wird. Beim Durchdrehen die Augen von den Kerzenlöchern fernhalten: Es spritzt. Niemals bei einem Diesel.</translation>
    </message>
    <message>
        <source>With air in, the engine can turn without warning. Nobody near crank, fan, wheel or propeller, no tool left on the crank. Hold it with gear and brake or a second person, raise the pressure slowly, turn only in running direction. Wear eye protection.</source>
        <extracomment>air, text</extracomment>
        <translation>Mit anliegender Luft kann sich der Motor ohne Vorwarnung drehen. Niemand darf nahe an Kurbelwelle, Lüfter, Rad oder Propeller sein; kein Werkzeug an der Kurbelwelle stecken lassen. Mit Gang und Bremse oder durch eine zweite Person halten, den Druck langsam erhöhen, nur in Laufrichtung drehen. Augenschutz tragen.</translation>
    </message>
    <message>
        <source>Crankcase: only the few psi that the engine&apos;s manual gives. Leak-down pressure pushes the shaft seals out of their seats. Raise it slowly, and let it off before anything that closes the case is loosened. Wear eye protection.</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Kurbelgehäuse: nur die wenigen Zehntel bar, die das Handbuch des Motors nennt. Der Druck der Druckverlustprüfung drückt die Wellendichtringe aus ihrem Sitz. Den Druck im Kurbelgehäuse langsam aufbauen und ihn ablassen, bevor etwas gelöst wird, das es verschließt. Augenschutz tragen.</translation>
    </message>
    <message>
        <source>Staking a valve: make sure that the piston is clear. Light, square taps on the stem only. Springs and collets can jump: protect your eyes.</source>
        <extracomment>staking, text</extracomment>
        <translation>Ein Ventil freiklopfen: sicherstellen, dass der Kolben weit genug vom Ventil entfernt steht. Leichte, gerade Schläge, und nur auf den Schaft. Federn und Ventilkeile können herausspringen: die Augen schützen.</translation>
    </message>
    <message>
        <source>Leave the coolant cap of a hot engine closed: it scalds. Let it cool first.</source>
        <extracomment>coolant-cap, text</extracomment>
        <translation>Den Deckel des Kühlsystems bei heißem Motor geschlossen lassen: Verbrühungsgefahr. Erst abkühlen lassen.</translation>
    </message>
    <message>
        <source>Running an engine indoors: exhaust is poison. Doors open, exhaust led outside.</source>
        <extracomment>indoors, text</extracomment>
        <translation>Einen Motor in geschlossenen Räumen laufen lassen: Abgas ist Gift. Türen auf, Abgas nach draußen leiten.</translation>
    </message>
    <message>
        <source>Brake cleaner and solvent mist do not belong near heat, flame or sparks.</source>
        <extracomment>solvents, text</extracomment>
        <translation>Bremsenreiniger und Lösemittelnebel gehören nicht in die Nähe von Hitze, Flammen oder Funken.</translation>
    </message>
    <message>
        <source>Aircraft: this app decides nothing about airworthiness. The maker&apos;s instructions and a licensed engineer do.</source>
        <extracomment>aircraft, text</extracomment>
        <translation>Luftfahrzeuge: Diese App entscheidet nichts über die Lufttüchtigkeit. Das tun die Anweisungen des Herstellers und freigabeberechtigtes, lizenziertes Personal.</translation>
    </message>
    <message>
        <source>The tests named here mean cranking, fuel mist, oil or compressed air: whoever does them reads the app&apos;s cautions and the engine&apos;s manual first.</source>
        <extracomment>report-test, text</extracomment>
        <translation>Die hier genannten Prüfungen bedeuten Durchdrehen, Kraftstoffnebel, Öl oder Druckluft: Wer sie macht, liest vorher die Warnhinweise der App und das Handbuch des Motors.</translation>
    </message>
    <message>
        <source>Ask the workshop before you start or run an engine that is at fault: running on can make a small repair a large one.</source>
        <extracomment>report-fault, text</extracomment>
        <translation>Bevor ein Motor mit einem Fehler gestartet oder weiter betrieben wird, die Werkstatt fragen: Weiterlaufen kann aus einer kleinen Reparatur eine große machen.</translation>
    </message>
    <message>
        <source>The engine&apos;s own manual, local rules and licensed practice come before anything said here.</source>
        <extracomment>defers, text</extracomment>
        <translation>Das eigene Handbuch des Motors, örtliche Vorschriften und die Fachregeln zugelassener Betriebe gehen allem vor, was hier gesagt ist.</translation>
    </message>
    <message>
        <source>Chance that the rings of a tested cylinder are at fault, before any evidence.</source>
        <extracomment>rings-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass die Kolbenringe eines geprüften Zylinders schadhaft sind, vor allen Belegen.</translation>
    </message>
    <message>
        <source>Worn or stuck rings: mostly 15 to 65 %.</source>
        <extracomment>rings-fault, comment; rings-leaking, comment</extracomment>
        <translation>Verschlissene oder festsitzende Kolbenringe: meist 15 bis 65 %.</translation>
    </message>
    <message>
        <source>Effective leak area past the rings when sound (median), for a bore of 75 mm.</source>
        <extracomment>rings-sound, text</extracomment>
        <translation>Wirksame Leckfläche an den Kolbenringen, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Rings always pass some air: 1 to 5 % leakage at 80 psi on a sound cylinder.</source>
        <extracomment>rings-sound, comment</extracomment>
        <translation>Kolbenringe lassen immer etwas Luft durch: 1 bis 5 % Druckverlust bei 80 psi an einem heilen Zylinder.</translation>
    </message>
    <message>
        <source>Its spread: standard deviation of the logarithm.</source>
        <extracomment>rings-sound-spread, text; rings-leaking-spread, text; intake-sound-spread, text; intake-leaking-spread, text; exhaust-sound-spread, text; exhaust-leaking-spread, text; gasket-sound-spread, text; gasket-leaking-spread, text; next_cylinder-sound-spread, text; next_cylinder-leaking-spread, text; coolant-sound-spread, text; coolant-leaking-spread, text; decompressor-sound-spread, text; decompressor-leaking-spread, text</extracomment>
        <translation>Die Streuung dazu: Standardabweichung des Logarithmus.</translation>
    </message>
    <message>
        <source>About a factor of 1.6 either way.</source>
        <extracomment>rings-sound-spread, comment</extracomment>
        <translation>Etwa ein Faktor 1,6 nach jeder Seite.</translation>
    </message>
    <message>
        <source>Effective leak area past the rings when at fault (median), for a bore of 75 mm.</source>
        <extracomment>rings-leaking, text</extracomment>
        <translation>Wirksame Leckfläche an den Kolbenringen, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Faults come in every size.</source>
        <extracomment>rings-leaking-spread, comment; intake-leaking-spread, comment; exhaust-leaking-spread, comment; gasket-leaking-spread, comment; next_cylinder-leaking-spread, comment; coolant-leaking-spread, comment; decompressor-leaking-spread, comment</extracomment>
        <translation>Fehler gibt es in jeder Größe.</translation>
    </message>
    <message>
        <source>Chance that the intake valves of a tested cylinder are at fault, before any evidence.</source>
        <extracomment>intake-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass die Einlassventile eines geprüften Zylinders schadhaft sind, vor allen Belegen.</translation>
    </message>
    <message>
        <source>A burnt, bent or dirty seat: anything from a hiss to an open hole.</source>
        <extracomment>intake-fault, comment; intake-leaking, comment</extracomment>
        <translation>Ein verbrannter, verbogener oder schmutziger Sitz: alles von einem Zischen bis zum offenen Loch.</translation>
    </message>
    <message>
        <source>Effective leak area past the intake valves when sound (median), for a bore of 75 mm.</source>
        <extracomment>intake-sound, text</extracomment>
        <translation>Wirksame Leckfläche an den Einlassventilen, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>A valve must not leak at all (Continental M84-15); what is left is under what a gauge shows.</source>
        <extracomment>intake-sound, comment</extracomment>
        <translation>Ein Ventil darf überhaupt nicht lecken (Continental M84-15); was bleibt, liegt unter dem, was ein Manometer zeigt.</translation>
    </message>
    <message>
        <source>About a factor of two and a half either way.</source>
        <extracomment>intake-sound-spread, comment; exhaust-sound-spread, comment; coolant-sound-spread, comment; decompressor-sound-spread, comment</extracomment>
        <translation>Etwa ein Faktor zweieinhalb nach jeder Seite.</translation>
    </message>
    <message>
        <source>Effective leak area past the intake valves when at fault (median), for a bore of 75 mm.</source>
        <extracomment>intake-leaking, text</extracomment>
        <translation>Wirksame Leckfläche an den Einlassventilen, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the exhaust valves of a tested cylinder are at fault, before any evidence.</source>
        <extracomment>exhaust-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass die Auslassventile eines geprüften Zylinders schadhaft sind, vor allen Belegen.</translation>
    </message>
    <message>
        <source>Runs hotter than the intake valve and burns more often.</source>
        <extracomment>exhaust-fault, comment; exhaust-leaking, comment</extracomment>
        <translation>Läuft heißer als das Einlassventil und verbrennt öfter.</translation>
    </message>
    <message>
        <source>Effective leak area past the exhaust valves when sound (median), for a bore of 75 mm.</source>
        <extracomment>exhaust-sound, text</extracomment>
        <translation>Wirksame Leckfläche an den Auslassventilen, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>As the intake valve.</source>
        <extracomment>exhaust-sound, comment</extracomment>
        <translation>Wie das Einlassventil.</translation>
    </message>
    <message>
        <source>Effective leak area past the exhaust valves when at fault (median), for a bore of 75 mm.</source>
        <extracomment>exhaust-leaking, text</extracomment>
        <translation>Wirksame Leckfläche an den Auslassventilen, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the head gasket to the outside of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>gasket-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass die Zylinderkopfdichtung nach außen an einem geprüften Zylinder schadhaft ist, vor allen Belegen.</translation>
    </message>
    <message>
        <source>A track burnt through the joint to the outside.</source>
        <extracomment>gasket-fault, comment; gasket-leaking, comment</extracomment>
        <translation>Eine nach außen durch die Dichtung gebrannte Spur.</translation>
    </message>
    <message>
        <source>Effective leak area past the head gasket to the outside when sound (median), for a bore of 75 mm.</source>
        <extracomment>gasket-sound, text</extracomment>
        <translation>Wirksame Leckfläche an der Zylinderkopfdichtung nach außen, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>A sound joint shows nothing under soapy water, which shows 0.01 L/min.</source>
        <extracomment>gasket-sound, comment</extracomment>
        <translation>Eine heile Dichtung zeigt nichts unter Seifenwasser, das 0,01 L/min zeigt.</translation>
    </message>
    <message>
        <source>A factor of three either way: what a sound joint passes is seldom measured.</source>
        <extracomment>gasket-sound-spread, comment</extracomment>
        <translation>Ein Faktor drei nach jeder Seite: Was eine heile Dichtung durchlässt, wird selten gemessen.</translation>
    </message>
    <message>
        <source>Effective leak area past the head gasket to the outside when at fault (median), for a bore of 75 mm.</source>
        <extracomment>gasket-leaking, text</extracomment>
        <translation>Wirksame Leckfläche an der Zylinderkopfdichtung nach außen, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the joint to a neighbouring cylinder of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>next_cylinder-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass der Dichtungssteg zu einem Nachbarzylinder eines geprüften Zylinders schadhaft ist, vor allen Belegen.</translation>
    </message>
    <message>
        <source>Between two bores the joint is narrowest; one hole serves both cylinders. The chance is for each pair of neighbours.</source>
        <extracomment>next_cylinder-fault, comment; next_cylinder-leaking, comment</extracomment>
        <translation>Zwischen zwei Bohrungen ist die Dichtung am schmalsten; ein Loch betrifft beide Zylinder. Die Wahrscheinlichkeit gilt je Paar von Nachbarn.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to a neighbouring cylinder when sound (median), for a bore of 75 mm.</source>
        <extracomment>next_cylinder-sound, text</extracomment>
        <translation>Wirksame Leckfläche am Dichtungssteg zu einem Nachbarzylinder, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>As the joint to the outside.</source>
        <extracomment>next_cylinder-sound, comment</extracomment>
        <translation>Wie die Dichtung nach außen.</translation>
    </message>
    <message>
        <source>A factor of four either way: no test shows so little, so that hardly anything is known of it.</source>
        <extracomment>next_cylinder-sound-spread, comment</extracomment>
        <translation>Ein Faktor vier nach jeder Seite: Keine Prüfung zeigt so wenig, sodass darüber kaum etwas bekannt ist.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to a neighbouring cylinder when at fault (median), for a bore of 75 mm.</source>
        <extracomment>next_cylinder-leaking, text</extracomment>
        <translation>Wirksame Leckfläche am Dichtungssteg zu einem Nachbarzylinder, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the joint to the coolant of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>coolant-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass die Dichtung zum Kühlmittel an einem geprüften Zylinder schadhaft ist, vor allen Belegen.</translation>
    </message>
    <message>
        <source>Bubbles show leaks far smaller than any gauge does.</source>
        <extracomment>coolant-fault, comment; coolant-leaking, comment</extracomment>
        <translation>Blasen zeigen weit kleinere Lecks als jedes Manometer.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to the coolant when sound (median), for a bore of 75 mm.</source>
        <extracomment>coolant-sound, text</extracomment>
        <translation>Wirksame Leckfläche an der Dichtung zum Kühlmittel, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>No bubbles at all in the coolant.</source>
        <extracomment>coolant-sound, comment</extracomment>
        <translation>Überhaupt keine Blasen im Kühlmittel.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to the coolant when at fault (median), for a bore of 75 mm.</source>
        <extracomment>coolant-leaking, text</extracomment>
        <translation>Wirksame Leckfläche an der Dichtung zum Kühlmittel, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the decompressor of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>decompressor-fault, text</extracomment>
        <translation>Wahrscheinlichkeit, dass der Dekompressor eines geprüften Zylinders schadhaft ist, vor allen Belegen.</translation>
    </message>
    <message>
        <source>A decompressor that does not close.</source>
        <extracomment>decompressor-fault, comment; decompressor-leaking, comment</extracomment>
        <translation>Ein Dekompressor, der nicht schließt.</translation>
    </message>
    <message>
        <source>Effective leak area past the decompressor when sound (median), for a bore of 75 mm.</source>
        <extracomment>decompressor-sound, text</extracomment>
        <translation>Wirksame Leckfläche am Dekompressor, wenn heil (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>A valve like any other.</source>
        <extracomment>decompressor-sound, comment</extracomment>
        <translation>Ein Ventil wie jedes andere.</translation>
    </message>
    <message>
        <source>Effective leak area past the decompressor when at fault (median), for a bore of 75 mm.</source>
        <extracomment>decompressor-leaking, text</extracomment>
        <translation>Wirksame Leckfläche am Dekompressor, wenn schadhaft (Median), für eine Bohrung von 75 mm.</translation>
    </message>
    <message>
        <source>Bore that the areas above are for; they grow in proportion to the bore.</source>
        <extracomment>area-bore, text</extracomment>
        <translation>Bohrung, für die die Flächen oben gelten; sie wachsen im Verhältnis zur Bohrung.</translation>
    </message>
    <message>
        <source>Gaps run along circumferences.</source>
        <extracomment>area-bore, comment</extracomment>
        <translation>Spalte laufen entlang von Umfängen.</translation>
    </message>
    <message>
        <source>A valve with no or too little clearance, not put right, is this much more likely to leak (odds).</source>
        <extracomment>clearance-none-odds, text</extracomment>
        <translation>Ein Ventil ohne oder mit zu wenig Spiel, nicht berichtigt, ist um so viel wahrscheinlicher undicht (Chancenverhältnis).</translation>
    </message>
    <message>
        <source>A valve without clearance is held open (Army TM 1-1500-204-23-1); how often is not published.</source>
        <extracomment>clearance-none-odds, comment</extracomment>
        <translation>Ein Ventil ohne Spiel wird offen gehalten (Army TM 1-1500-204-23-1); wie oft, ist nicht veröffentlicht.</translation>
    </message>
    <message>
        <source>A valve whose clearance is within its range is this much as likely to leak (odds).</source>
        <extracomment>clearance-good-odds, text</extracomment>
        <translation>Ein Ventil, dessen Spiel im Bereich liegt, ist nur so viel mal so wahrscheinlich undicht (Chancenverhältnis).</translation>
    </message>
    <message>
        <source>Rules out one cause of several.</source>
        <extracomment>clearance-good-odds, comment</extracomment>
        <translation>Schließt eine von mehreren Ursachen aus.</translation>
    </message>
    <message>
        <source>Under this leakage at 80 psi behind 0.040 in a cylinder seals well, whatever its largest path.</source>
        <extracomment>seals-well, text</extracomment>
        <translation>Unter diesem Druckverlust bei 80 psi hinter 0,040 in dichtet ein Zylinder gut, was auch immer sein größter Weg ist.</translation>
    </message>
    <message>
        <source>The lower end of makers&apos; bands (Saturn 2001: 10 % normal).</source>
        <extracomment>seals-well, comment</extracomment>
        <translation>Das untere Ende der Richtbereiche der Hersteller (Saturn 2001: 10 % normal).</translation>
    </message>
    <message>
        <source>Doubt of a compression ratio on the card, as a share of it (standard deviation).</source>
        <extracomment>ratio-known-doubt, text</extracomment>
        <translation>Unsicherheit einer Verdichtung auf der Karte, als Anteil davon (Standardabweichung).</translation>
    </message>
    <message>
        <source>Carbon, a skimmed head, a thicker gasket.</source>
        <extracomment>ratio-known-doubt, comment</extracomment>
        <translation>Ölkohle, ein geplanter Kopf, eine dickere Dichtung.</translation>
    </message>
    <message>
        <source>The same where it is marked as guessed.</source>
        <extracomment>ratio-guessed-doubt, text</extracomment>
        <translation>Dasselbe, wo sie als geschätzt gekennzeichnet ist.</translation>
    </message>
    <message>
        <source>Half a ratio in eight or nine.</source>
        <extracomment>ratio-guessed-doubt, comment</extracomment>
        <translation>Eine halbe Einheit bei acht oder neun.</translation>
    </message>
    <message>
        <source>Compression ratio of a petrol engine whose card has none.</source>
        <extracomment>ratio-unknown, text</extracomment>
        <translation>Verdichtung eines Benzinmotors, dessen Karte keine hat.</translation>
    </message>
    <message>
        <source>Readings then compare cylinders only.</source>
        <extracomment>ratio-unknown, comment; bore-unknown, comment; stroke-unknown, comment</extracomment>
        <translation>Messwerte vergleichen dann nur Zylinder.</translation>
    </message>
    <message>
        <source>Above this ratio the cranking model gives no level: readings compare cylinders only.</source>
        <extracomment>ratio-highest, text</extracomment>
        <translation>Über dieser Verdichtung liefert das Durchdrehmodell kein Niveau: Messwerte vergleichen nur Zylinder.</translation>
    </message>
    <message>
        <source>The model reads far over makers&apos; diesel figures (350 to 430 psi).</source>
        <extracomment>ratio-highest, comment</extracomment>
        <translation>Das Modell liegt weit über den Dieselwerten der Hersteller (350 bis 430 psi).</translation>
    </message>
    <message>
        <source>Bore of an engine whose card has none.</source>
        <extracomment>bore-unknown, text</extracomment>
        <translation>Bohrung eines Motors, dessen Karte keine hat.</translation>
    </message>
    <message>
        <source>Stroke of an engine whose card has none.</source>
        <extracomment>stroke-unknown, text</extracomment>
        <translation>Hub eines Motors, dessen Karte keinen hat.</translation>
    </message>
    <message>
        <source>Heat transfer to the walls.</source>
        <extracomment>heat, text</extracomment>
        <translation>Wärmeübergang an die Wände.</translation>
    </message>
    <message>
        <source>Chosen so that a tight stroke has an exponent of 1.25 to 1.35.</source>
        <extracomment>heat, comment</extracomment>
        <translation>So gewählt, dass ein Hub ohne Leck einen Exponenten von 1,25 bis 1,35 hat.</translation>
    </message>
    <message>
        <source>Its doubt, as a share (standard deviation of the logarithm).</source>
        <extracomment>heat-doubt, text</extracomment>
        <translation>Seine Unsicherheit, als Anteil (Standardabweichung des Logarithmus).</translation>
    </message>
    <message>
        <source>One number stands for a whole stroke.</source>
        <extracomment>heat-doubt, comment</extracomment>
        <translation>Eine Zahl steht für einen ganzen Hub.</translation>
    </message>
    <message>
        <source>Speed near top dead centre over the mean cranking speed.</source>
        <extracomment>speed-dip, text</extracomment>
        <translation>Drehzahl nahe dem oberen Totpunkt gegenüber der mittleren Anlasserdrehzahl.</translation>
    </message>
    <message>
        <source>The piston slows as pressure rises.</source>
        <extracomment>speed-dip, comment</extracomment>
        <translation>Der Kolben wird langsamer, wenn der Druck steigt.</translation>
    </message>
    <message>
        <source>Doubt of that factor, as a share of the speed.</source>
        <extracomment>speed-dip-doubt, text</extracomment>
        <translation>Unsicherheit dieses Faktors, als Anteil der Drehzahl.</translation>
    </message>
    <message>
        <source>Starters differ.</source>
        <extracomment>speed-dip-doubt, comment</extracomment>
        <translation>Anlasser sind verschieden.</translation>
    </message>
    <message>
        <source>Doubt of a cranking speed that was noted.</source>
        <extracomment>speed-known-doubt, text</extracomment>
        <translation>Unsicherheit einer notierten Anlasserdrehzahl.</translation>
    </message>
    <message>
        <source>Read off a phone or a timing light.</source>
        <extracomment>speed-known-doubt, comment</extracomment>
        <translation>Von einem Telefon oder einer Stroboskoplampe abgelesen.</translation>
    </message>
    <message>
        <source>Doubt of a cranking speed that was not noted.</source>
        <extracomment>speed-unknown-doubt, text</extracomment>
        <translation>Unsicherheit einer nicht notierten Anlasserdrehzahl.</translation>
    </message>
    <message>
        <source>What the cranking model is out by for a whole engine, as a share of the reading (standard deviation).</source>
        <extracomment>level-doubt, text</extracomment>
        <translation>Worum das Durchdrehmodell bei einem ganzen Motor falsch ist, als Anteil des Messwerts (Standardabweichung).</translation>
    </message>
    <message>
        <source>And for one cylinder beside the others.</source>
        <extracomment>cylinder-doubt, text</extracomment>
        <translation>Und für einen Zylinder gegenüber den anderen.</translation>
    </message>
    <message>
        <source>Carbon, uneven chambers, cranking that is not quite steady.</source>
        <extracomment>cylinder-doubt, comment</extracomment>
        <translation>Ölkohle, ungleiche Brennräume, nicht ganz gleichmäßiges Durchdrehen.</translation>
    </message>
    <message>
        <source>The same for an engine where readings compare cylinders only.</source>
        <extracomment>compare-only-doubt, text</extracomment>
        <translation>Dasselbe für einen Motor, bei dem Messwerte nur Zylinder vergleichen.</translation>
    </message>
    <message>
        <source>Wide enough that the level says nothing.</source>
        <extracomment>compare-only-doubt, comment</extracomment>
        <translation>Weit genug, dass das Niveau nichts sagt.</translation>
    </message>
    <message>
        <source>Scatter of one final reading beside the gauge&apos;s own errors, as a share of it.</source>
        <extracomment>reading-scatter, text</extracomment>
        <translation>Streuung eines Endwerts neben den Fehlern des Manometers selbst, als Anteil davon.</translation>
    </message>
    <message>
        <source>How long it was cranked, battery.</source>
        <extracomment>reading-scatter, comment</extracomment>
        <translation>Wie lange durchgedreht wurde, Batterie.</translation>
    </message>
    <message>
        <source>Scatter of one first puff.</source>
        <extracomment>first-scatter, text</extracomment>
        <translation>Streuung eines ersten Hubs.</translation>
    </message>
    <message>
        <source>The needle moves; the first stroke does not begin at the same place twice.</source>
        <extracomment>first-scatter, comment</extracomment>
        <translation>Der Zeiger bewegt sich; der erste Hub beginnt nicht zweimal an derselben Stelle.</translation>
    </message>
    <message>
        <source>What the polynomial that stands in for the cranking model is out by, as a share of the reading (standard deviation).</source>
        <extracomment>surface-error, text</extracomment>
        <translation>Worum das Polynom, das für das Durchdrehmodell einsteht, falsch ist, als Anteil des Messwerts (Standardabweichung).</translation>
    </message>
    <message>
        <source>Held against the model itself in tests: at most 0.3 % at 1,000 points, and this on average.</source>
        <extracomment>surface-error, comment</extracomment>
        <translation>In Prüfungen gegen das Modell selbst gehalten: höchstens 0,3 % an 1.000 Punkten und dies im Mittel.</translation>
    </message>
    <message>
        <source>Scatter of a final reading from one day to the next: speed, battery, temperature of the air.</source>
        <extracomment>day-scatter, text</extracomment>
        <translation>Streuung eines Endwerts von einem Tag zum anderen: Drehzahl, Batterie, Lufttemperatur.</translation>
    </message>
    <message>
        <source>Same engine, same gauge, same warmth.</source>
        <extracomment>day-scatter, comment</extracomment>
        <translation>Derselbe Motor, dasselbe Manometer, gleich warm.</translation>
    </message>
    <message>
        <source>How far a sound engine&apos;s readings may lie from the middle of the maker&apos;s range, beside half that range&apos;s width.</source>
        <extracomment>card-range-doubt, text</extracomment>
        <translation>Wie weit die Messwerte eines heilen Motors von der Mitte des Herstellerbereichs abliegen können, neben der halben Breite dieses Bereichs.</translation>
    </message>
    <message>
        <source>Another gauge, another starter.</source>
        <extracomment>card-range-doubt, comment</extracomment>
        <translation>Ein anderes Manometer, ein anderer Anlasser.</translation>
    </message>
    <message>
        <source>How far a sound cylinder&apos;s reading of an earlier visit stands from today&apos;s, sound.</source>
        <extracomment>earlier-visit-doubt, text</extracomment>
        <translation>Wie weit der Messwert eines heilen Zylinders von einem früheren Termin vom heutigen, heil, abliegt.</translation>
    </message>
    <message>
        <source>Day-to-day scatter and wear.</source>
        <extracomment>earlier-visit-doubt, comment</extracomment>
        <translation>Streuung von Tag zu Tag und Verschleiß.</translation>
    </message>
    <message>
        <source>Spread of a path&apos;s leak while cranking over its leak standing still: standard deviation of the logarithm.</source>
        <extracomment>static-to-cranking, text</extracomment>
        <translation>Streuung des Lecks eines Wegs beim Durchdrehen gegenüber dem Leck im Stillstand: Standardabweichung des Logarithmus.</translation>
    </message>
    <message>
        <source>Pressure seats rings and valves; a hot stream opens a gasket.</source>
        <extracomment>static-to-cranking, comment</extracomment>
        <translation>Druck legt Kolbenringe und Ventile an; ein heißer Strom öffnet eine Dichtung.</translation>
    </message>
    <message>
        <source>Scatter of the leak area from one leak-down reading to the next.</source>
        <extracomment>leak-repeat, text</extracomment>
        <translation>Streuung der Leckfläche von einem Messwert der Druckverlustprüfung zum nächsten.</translation>
    </message>
    <message>
        <source>Rings settle elsewhere each time: let the air off, turn the engine over, test again, and keep the best.</source>
        <extracomment>leak-repeat, comment</extracomment>
        <translation>Ringe setzen sich jedes Mal anders: Luft ablassen, den Motor durchdrehen, noch einmal prüfen und den besten Wert behalten.</translation>
    </message>
    <message>
        <source>Share of the oil of a wet test that stays in the chamber: median.</source>
        <extracomment>oil-kept, text</extracomment>
        <translation>Anteil des Öls einer Nassprüfung, der im Brennraum bleibt: Median.</translation>
    </message>
    <message>
        <source>Most oil runs past the rings or is blown out. 90 % lie between 5 and 70 %.</source>
        <extracomment>oil-kept, comment</extracomment>
        <translation>Das meiste Öl läuft an den Kolbenringen vorbei oder wird hinausgeblasen. 90 % liegen zwischen 5 und 70 %.</translation>
    </message>
    <message>
        <source>Its spread: standard deviation of the log odds.</source>
        <extracomment>oil-kept-spread, text; oil-seals-spread, text</extracomment>
        <translation>Die Streuung dazu: Standardabweichung der logarithmierten Chance.</translation>
    </message>
    <message>
        <source>5 to 70 % as a 90 % interval.</source>
        <extracomment>oil-kept-spread, comment</extracomment>
        <translation>5 bis 70 % als 90-%-Intervall.</translation>
    </message>
    <message>
        <source>Share of the rings&apos; leak that is left with fresh oil on them: median.</source>
        <extracomment>oil-seals, text</extracomment>
        <translation>Anteil am Leck der Kolbenringe, der mit frischem Öl darauf bleibt: Median.</translation>
    </message>
    <message>
        <source>A rise of 10 % is the published sign; a third to a half of the leak going away gives it.</source>
        <extracomment>oil-seals, comment</extracomment>
        <translation>Ein Anstieg von 10 % ist das veröffentlichte Zeichen; verschwindet ein Drittel bis die Hälfte des Lecks, ergibt er sich.</translation>
    </message>
    <message>
        <source>Broken or stuck rings seal little.</source>
        <extracomment>oil-seals-spread, comment</extracomment>
        <translation>Gebrochene oder festsitzende Kolbenringe dichten wenig ab.</translation>
    </message>
    <message>
        <source>Oil from an earlier test seals this much of what fresh oil does (exponent on the share left).</source>
        <extracomment>oil-before, text</extracomment>
        <translation>Öl von einer früheren Prüfung dichtet so viel ab von dem, was frisches Öl abdichtet (Exponent am verbleibenden Anteil).</translation>
    </message>
    <message>
        <source>It drains and is cranked away.</source>
        <extracomment>oil-before, comment</extracomment>
        <translation>Es läuft ab und wird beim Durchdrehen ausgetragen.</translation>
    </message>
    <message>
        <source>No more oil than this share of the smallest chamber that the doubts allow is reckoned with.</source>
        <extracomment>oil-of-chamber, text</extracomment>
        <translation>Mit mehr Öl als diesem Anteil des kleinsten Brennraums, den die Unsicherheiten zulassen, wird nicht gerechnet.</translation>
    </message>
    <message>
        <source>More would lock the engine, so less was put in or most of it ran out.</source>
        <extracomment>oil-of-chamber, comment</extracomment>
        <translation>Mehr würde den Motor blockieren; also wurde weniger eingefüllt, oder das meiste lief ab.</translation>
    </message>
    <message>
        <source>How much better or worse one person hears than another: standard deviation of the logarithm of the flow.</source>
        <extracomment>listener, text</extracomment>
        <translation>Wie viel besser oder schlechter der eine hört als der andere: Standardabweichung des Logarithmus des Durchflusses.</translation>
    </message>
    <message>
        <source>Shop noise and ears.</source>
        <extracomment>listener, comment</extracomment>
        <translation>Werkstattlärm und Ohren.</translation>
    </message>
    <message>
        <source>Scatter of one note: scale of a logistic distribution of the logarithm of the flow.</source>
        <extracomment>hearing, text</extracomment>
        <translation>Streuung einer einzelnen Notiz: Skala einer logistischen Verteilung des Logarithmus des Durchflusses.</translation>
    </message>
    <message>
        <source>Where the ear was held.</source>
        <extracomment>hearing, comment</extracomment>
        <translation>Wo das Ohr gehalten wurde.</translation>
    </message>
    <message>
        <source>Chance that a note of what was heard or felt has nothing to do with the flow.</source>
        <extracomment>slip, text</extracomment>
        <translation>Wahrscheinlichkeit, dass eine Notiz zum Gehörten oder Gefühlten nichts mit dem Durchfluss zu tun hat.</translation>
    </message>
    <message>
        <source>Wrong cylinder, wrong key.</source>
        <extracomment>slip, comment</extracomment>
        <translation>Falscher Zylinder, falsche Taste.</translation>
    </message>
    <message>
        <source>The same for what is seen, soap or bubbles.</source>
        <extracomment>slip-seen, text</extracomment>
        <translation>Dasselbe für Gesehenes, Seife oder Blasen.</translation>
    </message>
    <message>
        <source>Bubbles are bubbles; what is left is the wrong cylinder.</source>
        <extracomment>slip-seen, comment</extracomment>
        <translation>Blasen sind Blasen; was bleibt, ist der falsche Zylinder.</translation>
    </message>
    <message>
        <source>Share of all the air that is heard at every exit.</source>
        <extracomment>cross-talk, text</extracomment>
        <translation>Anteil der gesamten Luft, der an jedem Austritt zu hören ist.</translation>
    </message>
    <message>
        <source>Sound goes through metal.</source>
        <extracomment>cross-talk, comment</extracomment>
        <translation>Schall geht durch Metall.</translation>
    </message>
    <message>
        <source>Share of a valve&apos;s leak that comes out of a companion cylinder&apos;s plug hole through a joined manifold.</source>
        <extracomment>companion-talk, text</extracomment>
        <translation>Anteil am Leck eines Ventils, der über ein gemeinsames Sammelrohr aus dem Kerzenloch eines Partnerzylinders kommt.</translation>
    </message>
    <message>
        <source>The companion stands on overlap.</source>
        <extracomment>companion-talk, comment</extracomment>
        <translation>Der Partnerzylinder steht in der Ventilüberschneidung.</translation>
    </message>
    <message>
        <source>Share of a two-stroke&apos;s ring leak that leaves by the exhaust port, the rest by the carburettor.</source>
        <extracomment>two-stroke-exhaust, text</extracomment>
        <translation>Anteil am Kolbenringleck eines Zweitakters, der durch den Auslassschlitz geht, der Rest durch den Vergaser.</translation>
    </message>
    <message>
        <source>Which port stands open depends on the piston.</source>
        <extracomment>two-stroke-exhaust, comment</extracomment>
        <translation>Welcher Schlitz offen steht, hängt vom Kolben ab.</translation>
    </message>
    <message>
        <source>How much of a louder exit&apos;s lead is lost in a softer one&apos;s loudness (exponent), past the first factor named below.</source>
        <extracomment>masking, text</extracomment>
        <translation>Wie viel vom Vorsprung eines lauteren Austritts in der Lautstärke eines leiseren verloren geht (Exponent), über den unten genannten ersten Faktor hinaus.</translation>
    </message>
    <message>
        <source>The loudest drowns the others.</source>
        <extracomment>masking, comment</extracomment>
        <translation>Der lauteste übertönt die anderen.</translation>
    </message>
    <message>
        <source>Exits within this factor of the loudest are heard as they are.</source>
        <extracomment>masking-from, text</extracomment>
        <translation>Austritte innerhalb dieses Faktors vom lautesten werden gehört, wie sie sind.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: ear.</source>
        <extracomment>ear-faint, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als schwach notiert wird: Ohr.</translation>
    </message>
    <message>
        <source>Bare ear or a hand-held tube at the opening.</source>
        <extracomment>ear-faint, comment; ear-clear, comment; ear-strong, comment</extracomment>
        <translation>Bloßes Ohr oder ein von Hand gehaltenes Rohr an der Öffnung.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: ear.</source>
        <extracomment>ear-clear, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als deutlich notiert wird: Ohr.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: ear.</source>
        <extracomment>ear-strong, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als stark notiert wird: Ohr.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: hose.</source>
        <extracomment>hose-faint, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als schwach notiert wird: Schlauch.</translation>
    </message>
    <message>
        <source>A hose to the ear brings it closer.</source>
        <extracomment>hose-faint, comment; hose-clear, comment; hose-strong, comment</extracomment>
        <translation>Ein Schlauch zum Ohr bringt es näher.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: hose.</source>
        <extracomment>hose-clear, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als deutlich notiert wird: Schlauch.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: hose.</source>
        <extracomment>hose-strong, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als stark notiert wird: Schlauch.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: hand.</source>
        <extracomment>hand-faint, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als schwach notiert wird: Hand.</translation>
    </message>
    <message>
        <source>A thin glove or a hand over the opening.</source>
        <extracomment>hand-faint, comment; hand-clear, comment; hand-strong, comment</extracomment>
        <translation>Ein dünner Handschuh oder eine Hand über der Öffnung.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: hand.</source>
        <extracomment>hand-clear, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als deutlich notiert wird: Hand.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: hand.</source>
        <extracomment>hand-strong, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als stark notiert wird: Hand.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: soapy water.</source>
        <extracomment>soapy-water-faint, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als schwach notiert wird: Seifenwasser.</translation>
    </message>
    <message>
        <source>Soap shows about 0.01 L/min.</source>
        <extracomment>soapy-water-faint, comment; soapy-water-clear, comment; soapy-water-strong, comment</extracomment>
        <translation>Seife zeigt etwa 0,01 L/min.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: soapy water.</source>
        <extracomment>soapy-water-clear, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als deutlich notiert wird: Seifenwasser.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: soapy water.</source>
        <extracomment>soapy-water-strong, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als stark notiert wird: Seifenwasser.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: bubbles.</source>
        <extracomment>bubbles-faint, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als schwach notiert wird: Blasen.</translation>
    </message>
    <message>
        <source>Bubbles in the coolant.</source>
        <extracomment>bubbles-faint, comment; bubbles-clear, comment; bubbles-strong, comment</extracomment>
        <translation>Blasen im Kühlmittel.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: bubbles.</source>
        <extracomment>bubbles-clear, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als deutlich notiert wird: Blasen.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: bubbles.</source>
        <extracomment>bubbles-strong, text</extracomment>
        <translation>Durchfluss, der in der Hälfte der Fälle als stark notiert wird: Blasen.</translation>
    </message>
    <message>
        <source>Set pressure of the air that was listened to where no leak-down reading goes with it.</source>
        <extracomment>listen-set, text</extracomment>
        <translation>Eingestellter Druck der Luft, bei der gehorcht wurde, wo kein Messwert der Druckverlustprüfung dazugehört.</translation>
    </message>
    <message>
        <source>The usual one.</source>
        <extracomment>listen-set, comment</extracomment>
        <translation>Der übliche.</translation>
    </message>
    <message>
        <source>Dry reading that one not yet taken is expected to be like, where no cylinder has one.</source>
        <extracomment>reading-usual, text</extracomment>
        <translation>Trockener Messwert, wie er von einem noch nicht gemessenen erwartet wird, wo kein Zylinder einen hat.</translation>
    </message>
    <message>
        <source>Only how exact the gauge is there hangs on it: what another test would tell.</source>
        <extracomment>reading-usual, comment</extracomment>
        <translation>Daran hängt nur, wie genau das Manometer dort ist: was eine weitere Prüfung verraten würde.</translation>
    </message>
    <message>
        <source>Share of the set pressure that a leak-down not yet made is expected to hold.</source>
        <extracomment>held-usual, text</extracomment>
        <translation>Anteil des eingestellten Drucks, den eine noch nicht gemachte Druckverlustprüfung voraussichtlich hält.</translation>
    </message>
    <message>
        <source>Step to which a reading not yet taken will be written down.</source>
        <extracomment>step-usual, text</extracomment>
        <translation>Schritt, auf den ein noch nicht gemessener Wert aufgeschrieben werden wird.</translation>
    </message>
    <message>
        <source>Most people read a dial to about a tenth of a bar.</source>
        <extracomment>step-usual, comment</extracomment>
        <translation>Die meisten lesen eine Skala auf etwa ein Zehntel Bar ab.</translation>
    </message>
    <message>
        <source>A test is called far off everything that a cylinder&apos;s other readings allow when it lies this many of its own standard deviations away, on average over what they allow.</source>
        <extracomment>does-not-fit, text</extracomment>
        <translation>Von einer Prüfung heißt es, sie liege weit ab von allem, was die anderen Werte des Zylinders zulassen, wenn sie so viele ihrer eigenen Standardabweichungen entfernt liegt, im Mittel über das, was sie zulassen.</translation>
    </message>
    <message>
        <source>Fewer than one test in eighty does so by chance alone; it is to be done again, and no verdict given before.</source>
        <extracomment>does-not-fit, comment</extracomment>
        <translation>Weniger als eine Prüfung von achtzig tut das durch bloßen Zufall; sie ist zu wiederholen, und vorher gibt es kein Urteil.</translation>
    </message>
    <message>
        <source>Rings at fault in 60 % of cylinders, valves half as often as assumed.</source>
        <extracomment>rings-first, text</extracomment>
        <translation>Kolbenringe in 60 % der Zylinder schadhaft, Ventile halb so oft wie angenommen.</translation>
    </message>
    <message>
        <source>Valves at fault twice as often as assumed, rings in 10 % of cylinders.</source>
        <extracomment>valves-first, text</extracomment>
        <translation>Ventile doppelt so oft schadhaft wie angenommen, Kolbenringe in 10 % der Zylinder.</translation>
    </message>
    <message>
        <source>Grit in the well of a plug (on a diesel: of an injector or glow plug) falls into the cylinder when that comes out, and scores the bore or holds a valve open.</source>
        <extracomment>reason</extracomment>
        <translation>Schmutz im Schacht einer Kerze (beim Diesel: einer Einspritzdüse oder Glühkerze) fällt beim Herausnehmen in den Zylinder und verkratzt die Bohrung oder hält ein Ventil offen.</translation>
    </message>
    <message>
        <source>Grit may hold a valve off its seat and look like a leak.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Schmutz kann ein Ventil vom Sitz abhalten und wie ein Leck aussehen.</translation>
    </message>
    <message>
        <source>An engine that stood may have a stuck ring, a stuck valve or liquid in a cylinder: two turns by hand show it before the starter breaks something.</source>
        <extracomment>reason</extracomment>
        <translation>Nach langer Standzeit kann ein Motor einen festsitzenden Kolbenring, ein hängendes Ventil oder Flüssigkeit in einem Zylinder haben: Zwei Umdrehungen von Hand zeigen es, bevor der Anlasser etwas zerbricht.</translation>
    </message>
    <message>
        <source>Only for an engine that stood: dry bores scuff and dry rings leak. A little oil, left overnight, then turned out with the plugs out. The rings are oiled then: the reading is no longer a dry one. Never on a diesel: oil can lock it or fire.</source>
        <extracomment>reason</extracomment>
        <translation>Nur nach langer Standzeit: Trockene Bohrungen fressen, und trockene Kolbenringe lecken. Ein wenig Öl, über Nacht einwirken lassen, dann bei herausgedrehten Kerzen durch Drehen des Motors austreiben. Die Kolbenringe sind dann geölt: Der Messwert ist kein trockener mehr. Niemals bei einem Diesel: Öl kann ihn blockieren oder zünden.</translation>
    </message>
    <message>
        <source>Dry rings leak more than they will after running.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Trockene Kolbenringe lecken mehr als nach dem Laufen.</translation>
    </message>
    <message>
        <source>Oil mixed with fuel or coolant, or a sump too full, says something before any gauge does.</source>
        <extracomment>reason</extracomment>
        <translation>Mit Kraftstoff oder Kühlmittel vermischtes Öl oder eine zu volle Ölwanne sagt etwas, bevor es ein Manometer tut.</translation>
    </message>
    <message>
        <source>After standing, a valve can hang in its guide. Watch that each one follows its rocker or cam.</source>
        <extracomment>reason</extracomment>
        <translation>Nach dem Stehen kann ein Ventil in seiner Führung hängen. Darauf achten, dass jedes seinem Kipphebel oder Nocken folgt.</translation>
    </message>
    <message>
        <source>A hanging valve reads as a burnt one.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Ein hängendes Ventil zeigt sich wie ein verbranntes.</translation>
    </message>
    <message>
        <source>A look at crown, bore and valves costs two minutes and settles many guesses.</source>
        <extracomment>reason</extracomment>
        <translation>Ein Blick auf Kolbenboden, Bohrung und Ventile kostet zwei Minuten und erledigt viele Vermutungen.</translation>
    </message>
    <message>
        <source>A valve without clearance is held open and looks burnt. Check and write down before testing.</source>
        <extracomment>reason</extracomment>
        <translation>Ein Ventil ohne Spiel wird offen gehalten und sieht aus wie ein verbranntes. Vor dem Prüfen messen und aufschreiben.</translation>
    </message>
    <message>
        <source>A leaking valve may only lack clearance.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Einem undichten Ventil fehlt vielleicht nur das Spiel.</translation>
    </message>
    <message>
        <source>A cold engine reads about 10 % lower than a warm one. Compare cold with cold, warm with warm.</source>
        <extracomment>reason</extracomment>
        <translation>Ein kalter Motor zeigt etwa 10 % weniger als ein warmer. Kalt mit kalt vergleichen, warm mit warm.</translation>
    </message>
    <message>
        <source>It is not known whether the engine was cold or warm: up to about 10 % between the two.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Ob der Motor kalt oder warm war, ist nicht bekannt: zwischen beiden bis zu etwa 10 %.</translation>
    </message>
    <message>
        <source>The cylinder must fill. Hold the throttle wide open; slides of constant-velocity carburettors are lifted by hand, or the induction comes off.</source>
        <extracomment>reason</extracomment>
        <translation>Der Zylinder muss sich füllen. Die Drosselklappe ganz offen halten; Schieber von Gleichdruckvergasern werden von Hand angehoben, oder die Ansaugung wird abgebaut.</translation>
    </message>
    <message>
        <source>A throttle that was not held open makes every cylinder read low.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Eine nicht offen gehaltene Drosselklappe lässt jeden Zylinder zu wenig zeigen.</translation>
    </message>
    <message>
        <source>The starter turns faster and evenly with all plugs (on a diesel: injectors or glow plugs) out.</source>
        <extracomment>reason</extracomment>
        <translation>Der Anlasser dreht schneller und gleichmäßig, wenn alle Kerzen (beim Diesel: Einspritzdüsen oder Glühkerzen) heraus sind.</translation>
    </message>
    <message>
        <source>With plugs (on a diesel: injectors or glow plugs) left in, the starter turns slower and unevenly: readings come out lower and scatter.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Sind Kerzen (beim Diesel: Einspritzdüsen oder Glühkerzen) noch eingebaut, dreht der Anlasser langsamer und ungleichmäßig: Messwerte werden niedriger und streuen.</translation>
    </message>
    <message>
        <source>Fuel mist leaves the plug holes and an open lead sparks. Ground the leads or take the supply off. Coils on the plugs: pull their connectors, or as the manual says.</source>
        <extracomment>reason</extracomment>
        <translation>Kraftstoffnebel tritt aus den Kerzenlöchern, und an einer offenen Zündleitung springen Funken über. Die Zündleitungen an Masse legen oder ihre Versorgung abklemmen. Spulen auf den Kerzen: ihre Stecker abziehen oder wie im Handbuch.</translation>
    </message>
    <message>
        <source>No fuel mist near sparks, no oil washed off the bores; on a diesel no firing into the gauge.</source>
        <extracomment>reason</extracomment>
        <translation>Kein Kraftstoffnebel in der Nähe von Funken, kein Öl, das von den Bohrungen gewaschen wird; beim Diesel keine Zündung ins Manometer.</translation>
    </message>
    <message>
        <source>Fuel may have washed the oil off the bores: rings then read worse than they are.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Kraftstoff kann das Öl von den Bohrungen gewaschen haben: Kolbenringe zeigen sich dann schlechter, als sie sind.</translation>
    </message>
    <message>
        <source>Cranking speed decides the reading. Charger on, volts noted, the first cylinder measured again at the end.</source>
        <extracomment>reason</extracomment>
        <translation>Die Anlasserdrehzahl entscheidet über den Messwert. Ladegerät anschließen, Spannung notieren, den ersten Zylinder am Ende noch einmal messen.</translation>
    </message>
    <message>
        <source>A tiring battery makes later cylinders read lower.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Eine nachlassende Batterie lässt spätere Zylinder weniger zeigen.</translation>
    </message>
    <message>
        <source>A decompressor that works lets out most of the pressure on purpose.</source>
        <extracomment>reason</extracomment>
        <translation>Ein arbeitender Dekompressor lässt den größten Teil des Drucks absichtlich ab.</translation>
    </message>
    <message>
        <source>A working decompressor reads far too low: the reading is no proof of a leak.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Ein arbeitender Dekompressor zeigt viel zu wenig: Der Messwert ist kein Beweis für ein Leck.</translation>
    </message>
    <message>
        <source>With oil filler or breather open, air past the rings is heard there and not at a seal. Pinch the blow-by hose to the intake.</source>
        <extracomment>reason</extracomment>
        <translation>Bei offener Öleinfüllöffnung oder Entlüftung ist Luft an den Kolbenringen dort zu hören und nicht an einer Dichtung. Den Entlüftungsschlauch zur Ansaugung abklemmen.</translation>
    </message>
    <message>
        <source>Air past the rings may have come out at the intake through the blow-by hose.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Luft an den Kolbenringen kann durch den Entlüftungsschlauch am Einlass herausgekommen sein.</translation>
    </message>
    <message>
        <source>A faint hiss is not heard beside a running compressor. Fill it up, switch it off, then listen.</source>
        <extracomment>reason</extracomment>
        <translation>Ein schwaches Zischen ist neben einem laufenden Kompressor nicht zu hören. Auffüllen, abschalten, dann horchen.</translation>
    </message>
    <message>
        <source>Faint exits may have been missed beside a running compressor.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Schwache Austritte können neben einem laufenden Kompressor überhört worden sein.</translation>
    </message>
    <message>
        <source>The job, in its order</source>
        <extracomment>title</extracomment>
        <translation>Die Arbeit in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>Complaint and engine</source>
        <extracomment>complaint, title</extracomment>
        <translation>Beanstandung und Motor</translation>
    </message>
    <message>
        <source>What the owner says, and what the app must know of the engine</source>
        <extracomment>complaint, brief</extracomment>
        <translation>Was der Besitzer sagt und was die App vom Motor wissen muss</translation>
    </message>
    <message>
        <source>The symptoms say where to look, and afterwards whether the repair met them. The engine card decides which tests belong, what a healthy reading would be and how far to turn to the next TDC.</source>
        <extracomment>complaint, why</extracomment>
        <translation>Die Symptome sagen, wo man suchen muss, und hinterher, ob die Reparatur sie behoben hat. Die Motorkarte entscheidet, welche Prüfungen dazugehören, was ein gesunder Messwert wäre und wie weit bis zum nächsten OT gedreht wird.</translation>
    </message>
    <message>
        <source>Write the complaint in the owner&apos;s words: oil use, smoke and its colour, coolant loss, hard starting, noise.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Die Beanstandung in den Worten des Besitzers notieren: Ölverbrauch, Rauch und seine Farbe, Kühlmittelverlust, schlechtes Anspringen, Geräusche.</translation>
    </message>
    <message>
        <source>Note mileage or hours at this visit, and the job number.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Kilometerstand oder Betriebsstunden bei diesem Termin und die Auftragsnummer notieren.</translation>
    </message>
    <message>
        <source>Fill in the engine card: cylinders and how they are numbered, two- or four-stroke, petrol or diesel, bore, stroke, compression ratio.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Die Motorkarte ausfüllen: Zylinder und ihre Zählweise, Zwei- oder Viertakter, Benzin oder Diesel, Bohrung, Hub, Verdichtungsverhältnis.</translation>
    </message>
    <message>
        <source>Firing order and intervals, adjusters, decompressor, joined manifolds: look them up in the engine&apos;s manual. What is not known stays &quot;unknown&quot;.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Zündfolge und Zündabstände, Ventileinstellung, Dekompressor, verbundene Krümmer: im Handbuch des Motors nachsehen. Was nicht bekannt ist, bleibt „unbekannt“.</translation>
    </message>
    <message>
        <source>Type the factory range and lowest limit, and where they come from.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Werksbereich und unterste Grenze eintippen und woher sie stammen.</translation>
    </message>
    <message>
        <source>Blue smoke, oil use</source>
        <extracomment>complaint, sign</extracomment>
        <translation>Blauer Rauch, Ölverbrauch</translation>
    </message>
    <message>
        <source>rings, bore, valve guides or their seals</source>
        <extracomment>complaint, means</extracomment>
        <translation>Ringe, Zylinderbohrung, Ventilführungen oder ihre Schaftdichtungen</translation>
    </message>
    <message>
        <source>White smoke that stays when warm, coolant loss</source>
        <extracomment>complaint, sign</extracomment>
        <translation>Weißer Rauch, der auch warm bleibt, Kühlmittelverlust</translation>
    </message>
    <message>
        <source>head gasket, or a crack</source>
        <extracomment>complaint, means</extracomment>
        <translation>Zylinderkopfdichtung oder ein Riss</translation>
    </message>
    <message>
        <source>Cylinders numbered otherwise than in the manual</source>
        <extracomment>complaint, slip</extracomment>
        <translation>Zylinder anders gezählt als im Handbuch</translation>
    </message>
    <message>
        <source>The right reading stands at the wrong cylinder.</source>
        <extracomment>complaint, then</extracomment>
        <translation>Der richtige Messwert steht beim falschen Zylinder.</translation>
    </message>
    <message>
        <source>A limit of another engine or year</source>
        <extracomment>complaint, slip</extracomment>
        <translation>Grenzwert eines anderen Motors oder Baujahrs</translation>
    </message>
    <message>
        <source>A sound cylinder is called low, or a low one sound.</source>
        <extracomment>complaint, then</extracomment>
        <translation>Ein gesunder Zylinder gilt als niedrig oder ein niedriger als gesund.</translation>
    </message>
    <message>
        <source>What to ask, and what the symptoms point to</source>
        <extracomment>complaint, for</extracomment>
        <translation>Was zu fragen ist und worauf die Symptome deuten</translation>
    </message>
    <message>
        <source>Prepare</source>
        <extracomment>prepare, title</extracomment>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>What to see to before any gauge goes in</source>
        <extracomment>prepare, brief</extracomment>
        <translation>Wonach zu sehen ist, bevor ein Manometer hineinkommt</translation>
    </message>
    <message>
        <source>A reading can be held against a limit, the next cylinder or last year only when it was taken under the same conditions. Nothing here is a gate: what is left out is recorded, and it decides what the numbers can be compared with.</source>
        <extracomment>prepare, why</extracomment>
        <translation>Ein Messwert lässt sich nur dann an einem Grenzwert, am nächsten Zylinder oder am letzten Jahr messen, wenn er unter denselben Bedingungen entstand. Nichts hier ist eine Sperre: Was ausgelassen wird, wird festgehalten, und es entscheidet, womit die Zahlen vergleichbar sind.</translation>
    </message>
    <message>
        <source>Blow out the wells before a plug (on a diesel: an injector or glow plug) comes out: grit falls into the cylinder.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Die Schächte ausblasen, bevor eine Kerze (beim Diesel: eine Einspritzdüse oder Glühkerze) herauskommt: Schmutz fällt in den Zylinder.</translation>
    </message>
    <message>
        <source>An engine that stood is turned by hand first, two turns with the plugs out. Look at the oil level, at valves that hang in their guides, and into the bores.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Nach langer Standzeit den Motor zuerst von Hand drehen, zwei Umdrehungen mit herausgedrehten Kerzen. Den Ölstand prüfen, nach Ventilen sehen, die in ihren Führungen hängen, und in die Bohrungen sehen.</translation>
    </message>
    <message>
        <source>A petrol engine that stood: oil the bores a little, leave them overnight, turn the oil out with the plugs out. The rings are oiled then, and the reading is no longer a dry one: tag it &quot;after oil soak&quot;. Never on a diesel: oil can lock it or fire.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Ein Benzinmotor nach langer Standzeit: Die Bohrungen ein wenig ölen, über Nacht einwirken lassen, das Öl bei herausgedrehten Kerzen durch Drehen des Motors austreiben. Die Kolbenringe sind dann geölt, und der Messwert ist kein trockener mehr: ihn als „nach Einwirken von Öl“ kennzeichnen. Niemals bei einem Diesel: Öl kann ihn blockieren oder zünden.</translation>
    </message>
    <message>
        <source>Measure the valve clearances and write them down.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Das Ventilspiel messen und aufschreiben.</translation>
    </message>
    <message>
        <source>Note whether the engine is cold or warm. Compare cold with cold, warm with warm.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Notieren, ob der Motor kalt oder warm ist. Kalt mit kalt vergleichen, warm mit warm.</translation>
    </message>
    <message>
        <source>Hold the throttle wide open. Lift the slides of constant-velocity carburettors by hand, or take the induction off.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Die Drosselklappe ganz offen halten. Schieber von Gleichdruckvergasern von Hand anheben oder die Ansaugung abbauen.</translation>
    </message>
    <message>
        <source>Take all plugs out; on a diesel all injectors or glow plugs, as its manual says. Ground the ignition leads; with coils on the plugs pull their connectors, or do as the manual says. Shut off fuel or injectors.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Alle Kerzen herausdrehen; beim Diesel alle Einspritzdüsen oder Glühkerzen, wie sein Handbuch sagt. Zündleitungen an Masse legen; bei Spulen auf den Kerzen ihre Stecker abziehen oder tun, was das Handbuch sagt. Kraftstoff oder Einspritzung abstellen.</translation>
    </message>
    <message>
        <source>Put the battery on charge and note its volts. Put the decompressor off.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Die Batterie ans Ladegerät hängen und ihre Spannung notieren. Den Dekompressor ausschalten.</translation>
    </message>
    <message>
        <source>Before leak-down: open the oil filler or breather, pinch the blow-by hose. Fill the compressor and switch it off before you listen.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Vor der Druckverlustprüfung: Öleinfüllöffnung oder Entlüftung öffnen, Entlüftungsschlauch abklemmen. Den Kompressor füllen und vor dem Horchen abschalten.</translation>
    </message>
    <message>
        <source>Mark each line on the Prepare page: done, not done, or no need.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Jede Zeile auf der Seite „Vorbereitung“ kennzeichnen: getan, nicht getan oder nicht nötig.</translation>
    </message>
    <message>
        <source>Throttle not really open</source>
        <extracomment>prepare, slip; dry, slip</extracomment>
        <translation>Drosselklappe nicht wirklich offen</translation>
    </message>
    <message>
        <source>The cylinders can&apos;t fill: all of them read low, and it looks like a worn engine.</source>
        <extracomment>prepare, then</extracomment>
        <translation>Die Zylinder können sich nicht füllen: Alle zeigen zu wenig, und es sieht nach einem verschlissenen Motor aus.</translation>
    </message>
    <message>
        <source>Flat battery</source>
        <extracomment>prepare, slip; dry, slip; diesel, slip</extracomment>
        <translation>Leere Batterie</translation>
    </message>
    <message>
        <source>Cranking speed decides the reading. A tiring battery makes later cylinders read lower: measure the first one again at the end.</source>
        <extracomment>prepare, then</extracomment>
        <translation>Die Anlasserdrehzahl entscheidet über den Messwert. Eine nachlassende Batterie lässt spätere Zylinder weniger zeigen: den ersten am Ende noch einmal messen.</translation>
    </message>
    <message>
        <source>Gauge not zeroed</source>
        <extracomment>prepare, slip; dry, slip; testers, slip</extracomment>
        <translation>Manometer nicht auf null</translation>
    </message>
    <message>
        <source>A needle that rests beside zero is out by as much in every reading. Look at it before it is screwed in.</source>
        <extracomment>prepare, then</extracomment>
        <translation>Ein Zeiger, der neben null ruht, geht bei jedem Messwert um ebenso viel falsch. Vor dem Einschrauben ansehen.</translation>
    </message>
    <message>
        <source>Blow-by hose not pinched</source>
        <extracomment>prepare, slip; listening, slip</extracomment>
        <translation>Entlüftungsschlauch nicht abgeklemmt</translation>
    </message>
    <message>
        <source>Air past the rings comes out at the intake and looks like an intake valve.</source>
        <extracomment>prepare, then</extracomment>
        <translation>Luft an den Kolbenringen kommt am Einlass heraus und sieht nach einem Einlassventil aus.</translation>
    </message>
    <message>
        <source>A cold engine reads about 10 % lower</source>
        <extracomment>prepare, for</extracomment>
        <translation>Ein kalter Motor zeigt etwa 10 % weniger</translation>
    </message>
    <message>
        <source>The list and its reasons</source>
        <extracomment>prepare, for</extracomment>
        <translation>Die Liste und ihre Gründe</translation>
    </message>
    <message>
        <source>Clearances</source>
        <extracomment>clearances, title</extracomment>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>First of all: a valve without clearance looks burnt</source>
        <extracomment>clearances, brief</extracomment>
        <translation>Als Allererstes: Ein Ventil ohne Spiel sieht aus wie ein verbranntes</translation>
    </message>
    <message>
        <source>A valve without clearance is held off its seat. It leaks like a burnt one, and adjusting it is a quick fix. So the app gives no verdict that strips an engine for a valve before that valve&apos;s clearance is recorded.</source>
        <extracomment>clearances, why</extracomment>
        <translation>Ein Ventil ohne Spiel wird vom Sitz abgehalten. Es leckt wie ein verbranntes, und Einstellen ist eine schnelle Abhilfe. Deshalb fällt die App kein Urteil, das einen Motor wegen eines Ventils zerlegt, bevor das Spiel dieses Ventils erfasst ist.</translation>
    </message>
    <message>
        <source>Have the engine as cold or warm as its manual asks for.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Den Motor so kalt oder warm haben, wie es sein Handbuch verlangt.</translation>
    </message>
    <message>
        <source>Turn to TDC on compression of the cylinder: both of its valves are shut and their rockers or followers are free.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Auf den Zünd-OT des Zylinders drehen: Beide Ventile sind geschlossen, und ihre Kipphebel oder Stößel sind frei.</translation>
    </message>
    <message>
        <source>Find the feeler blade that slides between stem and rocker (or cam and follower) with a light drag. Its thickness is the clearance.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Das Blatt der Fühlerlehre suchen, das mit leichtem Widerstand zwischen Schaft und Kipphebel (oder Nocken und Stößel) gleitet. Seine Dicke ist das Ventilspiel.</translation>
    </message>
    <message>
        <source>Type it on the Clearances page, valve by valve. It is held against the limits on the engine card.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Auf der Seite „Ventilspiel“ Ventil für Ventil eingeben. Es wird mit den Grenzwerten der Motorkarte verglichen.</translation>
    </message>
    <message>
        <source>Out of limits: adjust by screw or shim, as the manual says. Then test again and mark the reading &quot;after clearance adjustment&quot;: that is a new state of the valve.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Außerhalb der Grenzwerte: mit Schraube oder Plättchen einstellen, wie das Handbuch sagt. Dann erneut prüfen und den Messwert als „nach Einstellen des Ventilspiels“ kennzeichnen: Das ist ein neuer Zustand des Ventils.</translation>
    </message>
    <message>
        <source>Hydraulic adjusters have nothing to measure. Say so on the engine card.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Bei hydraulischem Ausgleich gibt es nichts zu messen. Das auf der Motorkarte vermerken.</translation>
    </message>
    <message>
        <source>No clearance</source>
        <extracomment>clearances, slip</extracomment>
        <translation>Kein Ventilspiel</translation>
    </message>
    <message>
        <source>Low reading, air at intake or exhaust, and nothing is burnt. Adjust and test again before anything is taken apart.</source>
        <extracomment>clearances, then</extracomment>
        <translation>Niedriger Messwert, Luft an Einlass oder Auslass, und nichts ist verbrannt. Einstellen und erneut prüfen, bevor etwas zerlegt wird.</translation>
    </message>
    <message>
        <source>Measured at the wrong TDC</source>
        <extracomment>clearances, slip</extracomment>
        <translation>Im falschen OT gemessen</translation>
    </message>
    <message>
        <source>At overlap the cam holds both valves open: no clearance is felt, though there is some. Turn once round and measure again.</source>
        <extracomment>clearances, then</extracomment>
        <translation>In der Ventilüberschneidung hält die Nockenwelle beide Ventile offen: Es ist kein Spiel zu spüren, obwohl welches da ist. Einmal herumdrehen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Measured warm, limits for cold</source>
        <extracomment>clearances, slip</extracomment>
        <translation>Warm gemessen, Grenzwerte für kalt</translation>
    </message>
    <message>
        <source>Clearance changes with heat. Write down which it was.</source>
        <extracomment>clearances, then</extracomment>
        <translation>Das Ventilspiel ändert sich mit der Wärme. Aufschreiben, was es war.</translation>
    </message>
    <message>
        <source>Rocker clearance first: a valve without clearance is held open</source>
        <extracomment>clearances, for</extracomment>
        <translation>Zuerst das Spiel der Kipphebel: Ein Ventil ohne Spiel wird offen gehalten</translation>
    </message>
    <message>
        <source>A light drag on the feeler blade</source>
        <extracomment>clearances, for</extracomment>
        <translation>Ein leichter Widerstand am Blatt der Fühlerlehre</translation>
    </message>
    <message>
        <source>Before cranking</source>
        <extracomment>cranking, title</extracomment>
        <translation>Vor dem Durchdrehen</translation>
    </message>
    <message>
        <source>Fuel, sparks, moving parts, the adapter&apos;s reach</source>
        <extracomment>cranking, brief</extracomment>
        <translation>Kraftstoff, Funken, bewegte Teile, die Gewindelänge des Adapters</translation>
    </message>
    <message>
        <source>With the plugs out, cranking blows fuel mist from the plug holes and everything that is coupled to the engine moves. Sparks make fire of the mist. An adapter that reaches too far meets the piston or a valve.</source>
        <extracomment>cranking, why</extracomment>
        <translation>Mit herausgedrehten Kerzen bläst das Durchdrehen Kraftstoffnebel aus den Kerzenlöchern, und alles, was mit dem Motor gekuppelt ist, bewegt sich. Funken machen aus dem Nebel Feuer. Ein zu langer Adapter stößt an den Kolben oder ein Ventil.</translation>
    </message>
    <message>
        <source>Put the gearbox in neutral.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Das Getriebe in den Leerlauf schalten.</translation>
    </message>
    <message>
        <source>Ground the ignition leads or take the supply off; with coils on the plugs pull their connectors, or do as the manual says. Shut off fuel or injectors.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Die Zündleitungen an Masse legen oder ihre Versorgung abklemmen; bei Spulen auf den Kerzen ihre Stecker abziehen oder tun, was das Handbuch sagt. Kraftstoff oder Einspritzung abstellen.</translation>
    </message>
    <message>
        <source>A diesel has no sparks but dangers of its own: read the card Diesel first.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Ein Diesel hat keine Funken, aber eigene Gefahren: zuerst die Karte „Diesel“ lesen.</translation>
    </message>
    <message>
        <source>Choose the adapter by the plug&apos;s thread and reach. See that its sealing ring is whole and clean.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Den Adapter nach Gewinde und Gewindelänge der Kerze wählen. Darauf achten, dass sein Dichtring heil und sauber ist.</translation>
    </message>
    <message>
        <source>Screw it in by hand, then turn the engine two turns by hand: nothing may touch.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Von Hand einschrauben, dann den Motor zwei Umdrehungen von Hand durchdrehen: Nichts darf anstoßen.</translation>
    </message>
    <message>
        <source>Look at the gauge: needle at zero at rest.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Das Manometer ansehen: Zeiger in Ruhe auf null.</translation>
    </message>
    <message>
        <source>Point the plug holes away from face and phone. Hands, sleeves and leads out of belts and fan.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Gesicht und Telefon aus der Richtung der Kerzenlöcher halten. Hände, Ärmel und Leitungen aus Riemen und Lüfter heraushalten.</translation>
    </message>
    <message>
        <source>Have the throttle held open, and the starter&apos;s switch where you can see the gauge.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Die Drosselklappe offen halten lassen und den Schalter des Anlassers dort haben, wo das Manometer zu sehen ist.</translation>
    </message>
    <message>
        <source>Leaking adapter ring</source>
        <extracomment>cranking, slip; dry, slip; leak-down, slip; listening, slip; diesel, slip</extracomment>
        <translation>Undichter Adapterring</translation>
    </message>
    <message>
        <source>The cylinder reads low and seems to leak. Listen and put soapy water at the adapter; after cranking the gauge must not sink.</source>
        <extracomment>cranking, then</extracomment>
        <translation>Der Zylinder zeigt zu wenig und scheint undicht. Am Adapter horchen und Seifenwasser auftragen; nach dem Durchdrehen darf das Manometer nicht sinken.</translation>
    </message>
    <message>
        <source>Left in gear</source>
        <extracomment>cranking, slip</extracomment>
        <translation>Gang eingelegt gelassen</translation>
    </message>
    <message>
        <source>The vehicle jumps with the first turn of the starter.</source>
        <extracomment>cranking, then</extracomment>
        <translation>Das Fahrzeug springt bei der ersten Umdrehung des Anlassers los.</translation>
    </message>
    <message>
        <source>Adapter too long</source>
        <extracomment>cranking, slip</extracomment>
        <translation>Adapter zu lang</translation>
    </message>
    <message>
        <source>It strikes piston or valve. That is what the turn by hand is for.</source>
        <extracomment>cranking, then</extracomment>
        <translation>Er stößt an Kolben oder Ventil. Dafür ist das Drehen von Hand da.</translation>
    </message>
    <message>
        <source>Order and reasons</source>
        <extracomment>cranking, for</extracomment>
        <translation>Reihenfolge und Gründe</translation>
    </message>
    <message>
        <source>Dry test</source>
        <extracomment>dry, title</extracomment>
        <translation>Trockenprüfung</translation>
    </message>
    <message>
        <source>Cranking pressure, cylinder by cylinder, no oil in</source>
        <extracomment>dry, brief</extracomment>
        <translation>Kompressionsdruck, Zylinder für Zylinder, ohne Öl</translation>
    </message>
    <message>
        <source>It says in a minute which cylinder differs from the others. It says little about where the air goes: that is for leak-down and the Leak hunt.</source>
        <extracomment>dry, why</extracomment>
        <translation>Sie sagt in einer Minute, welcher Zylinder sich von den anderen unterscheidet. Sie sagt wenig darüber, wohin die Luft geht: Dafür gibt es Druckverlustprüfung und Lecksuche.</translation>
    </message>
    <message>
        <source>Readings are held against the factory limit at your altitude, and against each other. Between cylinders the difference counts more than the height.</source>
        <extracomment>dry, why</extracomment>
        <translation>Messwerte werden mit dem Werksgrenzwert für die eigene Höhe und miteinander verglichen. Zwischen den Zylindern zählt der Unterschied mehr als der Wert selbst.</translation>
    </message>
    <message>
        <source>See to Prepare and read the card Before cranking, for a diesel the card Diesel too.</source>
        <extracomment>dry, how</extracomment>
        <translation>Die „Vorbereitung“ erledigen und die Karte „Vor dem Durchdrehen“ lesen, bei einem Diesel auch die Karte „Diesel“.</translation>
    </message>
    <message>
        <source>Screw the gauge into the first cylinder and let its needle rest at zero.</source>
        <extracomment>dry, how</extracomment>
        <translation>Das Manometer in den ersten Zylinder schrauben und seinen Zeiger auf null ruhen lassen.</translation>
    </message>
    <message>
        <source>Throttle open, crank until the needle stops rising: 5 to 7 strokes. Remember the first puff and the final reading.</source>
        <extracomment>dry, how</extracomment>
        <translation>Drosselklappe offen, durchdrehen, bis der Zeiger nicht mehr steigt: 5 bis 7 Hübe. Den ersten Hub und den Endwert merken.</translation>
    </message>
    <message>
        <source>Wait a moment: the needle must not sink. If it does, check valve or O-ring leaks, not the engine.</source>
        <extracomment>dry, how</extracomment>
        <translation>Einen Augenblick warten: Der Zeiger darf nicht sinken. Tut er es doch, leckt das Rückschlagventil oder der O-Ring, nicht der Motor.</translation>
    </message>
    <message>
        <source>Type the final reading; first puff and pulls if you have them. Keep takes you to the next cylinder.</source>
        <extracomment>dry, how</extracomment>
        <translation>Den Endwert eingeben; ersten Hub und Hübe, falls vorhanden. „Behalten“ führt zum nächsten Zylinder.</translation>
    </message>
    <message>
        <source>Give every cylinder the same number of pulls.</source>
        <extracomment>dry, how</extracomment>
        <translation>Jedem Zylinder dieselbe Anzahl von Hüben geben.</translation>
    </message>
    <message>
        <source>Pull again where you doubt it: a second pull counts as a repeat, both stand.</source>
        <extracomment>dry, how</extracomment>
        <translation>Im Zweifel noch einmal messen: Eine zweite Messung zählt als Wiederholung, beide bleiben stehen.</translation>
    </message>
    <message>
        <source>Measure the first cylinder once more at the end: the difference is the battery&apos;s.</source>
        <extracomment>dry, how</extracomment>
        <translation>Den ersten Zylinder am Ende noch einmal messen: Der Unterschied kommt von der Batterie.</translation>
    </message>
    <message>
        <source>A photo of the gauge lets the app read the needle and catch a slip of the finger.</source>
        <extracomment>dry, how</extracomment>
        <translation>Mit einem Foto des Manometers kann die App den Zeiger ablesen und einen Tippfehler bemerken.</translation>
    </message>
    <message>
        <source>First puff low, then it builds up</source>
        <extracomment>dry, sign</extracomment>
        <translation>Erster Hub niedrig, dann baut es sich auf</translation>
    </message>
    <message>
        <source>rings</source>
        <extracomment>dry, means; wet, means</extracomment>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>First puff low, and it stays low</source>
        <extracomment>dry, sign</extracomment>
        <translation>Erster Hub niedrig, und es bleibt niedrig</translation>
    </message>
    <message>
        <source>valves</source>
        <extracomment>dry, means</extracomment>
        <translation>Ventile</translation>
    </message>
    <message>
        <source>Two neighbours low alike</source>
        <extracomment>dry, sign</extracomment>
        <translation>Zwei Nachbarn gleich niedrig</translation>
    </message>
    <message>
        <source>the joint between them</source>
        <extracomment>dry, means</extracomment>
        <translation>der Dichtungssteg zwischen ihnen</translation>
    </message>
    <message>
        <source>All low, little leakage</source>
        <extracomment>dry, sign</extracomment>
        <translation>Alle niedrig, wenig Druckverlust</translation>
    </message>
    <message>
        <source>valve timing, throttle or cranking speed</source>
        <extracomment>dry, means</extracomment>
        <translation>Steuerzeiten, Drosselklappe oder Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>Lowest under 75 % of the highest</source>
        <extracomment>dry, sign</extracomment>
        <translation>Niedrigster unter 75 % des höchsten</translation>
    </message>
    <message>
        <source>a fault, unless the engine&apos;s manual says otherwise</source>
        <extracomment>dry, means</extracomment>
        <translation>ein Fehler, wenn das Handbuch des Motors nichts anderes sagt</translation>
    </message>
    <message>
        <source>Every cylinder reads low.</source>
        <extracomment>dry, then</extracomment>
        <translation>Jeder Zylinder zeigt zu wenig.</translation>
    </message>
    <message>
        <source>Each cylinder reads lower than the one before. The first one, measured again, shows it.</source>
        <extracomment>dry, then</extracomment>
        <translation>Jeder Zylinder zeigt weniger als der vorige. Der erste, noch einmal gemessen, zeigt es.</translation>
    </message>
    <message>
        <source>Decompressor working</source>
        <extracomment>dry, slip</extracomment>
        <translation>Dekompressor arbeitet</translation>
    </message>
    <message>
        <source>57 to 85 psi (3.9 to 5.9 bar) whatever the engine&apos;s state. No proof of a leak: use leak-down.</source>
        <extracomment>dry, then</extracomment>
        <translation>57 bis 85 psi (3,9 bis 5,9 bar), gleich in welchem Zustand der Motor ist. Kein Beweis für ein Leck: die Druckverlustprüfung nehmen.</translation>
    </message>
    <message>
        <source>One cylinder low, or all that this adapter was used on.</source>
        <extracomment>dry, then</extracomment>
        <translation>Ein Zylinder niedrig, oder alle, an denen dieser Adapter benutzt wurde.</translation>
    </message>
    <message>
        <source>All readings are out by the same amount; differences between cylinders stay true.</source>
        <extracomment>dry, then</extracomment>
        <translation>Alle Messwerte gehen um gleich viel falsch; Unterschiede zwischen Zylindern bleiben richtig.</translation>
    </message>
    <message>
        <source>Long hose before the check valve</source>
        <extracomment>dry, slip</extracomment>
        <translation>Langer Schlauch vor dem Rückschlagventil</translation>
    </message>
    <message>
        <source>The hose adds to the chamber: 8 cm³ of it turn 172 psi into 130 in a 250 cm³ cylinder (this app&apos;s cranking model).</source>
        <extracomment>dry, then</extracomment>
        <translation>Der Schlauch vergrößert den Brennraum: 8 cm³ davon machen in einem 250-cm³-Zylinder aus 172 psi 130 (Durchdrehmodell dieser App).</translation>
    </message>
    <message>
        <source>First puff and build-up, 5 to 7 strokes</source>
        <extracomment>dry, for</extracomment>
        <translation>Erster Hub und Aufbau, 5 bis 7 Hübe</translation>
    </message>
    <message>
        <source>Lowest at least 75 % of the highest</source>
        <extracomment>dry, for</extracomment>
        <translation>Niedrigster mindestens 75 % des höchsten</translation>
    </message>
    <message>
        <source>Two low neighbours</source>
        <extracomment>dry, for</extracomment>
        <translation>Zwei niedrige Nachbarn</translation>
    </message>
    <message>
        <source>Readings with a decompressor working</source>
        <extracomment>dry, for</extracomment>
        <translation>Messwerte bei arbeitendem Dekompressor</translation>
    </message>
    <message>
        <source>Small volume and check valve at the chamber end, or the gauge reads low</source>
        <extracomment>dry, for</extracomment>
        <translation>Kleines Volumen und Rückschlagventil auf der Brennraumseite, sonst zeigt das Manometer zu wenig</translation>
    </message>
    <message>
        <source>All low with small leakage: valve timing</source>
        <extracomment>dry, for</extracomment>
        <translation>Alle niedrig bei kleinem Druckverlust: Steuerzeiten</translation>
    </message>
    <message>
        <source>172 psi into 130</source>
        <extracomment>dry, for</extracomment>
        <translation>Aus 172 psi werden 130</translation>
    </message>
    <message>
        <source>Finding TDC</source>
        <extracomment>tdc, title</extracomment>
        <translation>OT finden</translation>
    </message>
    <message>
        <source>Compression, not overlap; and what to do when you passed it</source>
        <extracomment>tdc, brief</extracomment>
        <translation>Verdichtung, nicht Ventilüberschneidung; und was zu tun ist, wenn er überfahren wurde</translation>
    </message>
    <message>
        <source>Leak-down wants the piston at the top with both valves shut: TDC on compression. A four-stroke comes to the top twice; the other time its valves overlap, air rushes out at intake and exhaust, and a sound cylinder looks wrecked.</source>
        <extracomment>tdc, why</extracomment>
        <translation>Die Druckverlustprüfung will den Kolben oben und beide Ventile geschlossen: Zünd-OT. Ein Viertakter kommt zweimal nach oben; beim anderen Mal überschneiden sich die Ventile, Luft strömt an Einlass und Auslass heraus, und ein heiler Zylinder sieht ruiniert aus.</translation>
    </message>
    <message>
        <source>Close to TDC the air has next to no lever on the crank. A few degrees away it turns the engine.</source>
        <extracomment>tdc, why</extracomment>
        <translation>Nahe am OT hat die Luft fast keinen Hebel an der Kurbelwelle. Ein paar Grad daneben dreht sie den Motor.</translation>
    </message>
    <message>
        <source>All plugs out. Turn by hand, in running direction only.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Alle Kerzen heraus. Von Hand drehen, nur in Laufrichtung.</translation>
    </message>
    <message>
        <source>Hold a thumb or a whistle at the plug hole. Air that pushes out on the way up means compression. If nothing pushes, the valves overlap: turn once more, all the way round.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Einen Daumen oder eine Pfeife ans Kerzenloch halten. Luft, die beim Aufwärtsgang herausdrückt, bedeutet Verdichtung. Drückt nichts, überschneiden sich die Ventile: noch einmal drehen, ganz herum.</translation>
    </message>
    <message>
        <source>Come up to TDC slowly, from before it. With a little air on (20 psi, 1.4 bar) the flat spot shows the top: there the air turns the crank neither way.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Den OT langsam in Laufrichtung anfahren, nicht darüber hinaus. Mit wenig anliegender Luft (20 psi, 1,4 bar) zeigt die tote Stelle den Scheitel: Dort dreht die Luft die Kurbelwelle nach keiner Seite.</translation>
    </message>
    <message>
        <source>Passed it? Air off, then turn on in running direction until it comes round again: two turns of a four-stroke, one of a two-stroke. Go back, at least half a turn, and come up again only where the engine&apos;s manual allows turning back: tensioners of cam chain or belt, reeds or a rubber impeller may suffer.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Überfahren? Luft ab, dann in Laufrichtung weiterdrehen, bis er wiederkommt: zwei Umdrehungen beim Viertakter, eine beim Zweitakter. Zurückdrehen, um mindestens eine halbe Umdrehung, und noch einmal anfahren darf man nur, wo das Handbuch des Motors das Zurückdrehen erlaubt: Spanner von Steuerkette oder Riemen, Membranen oder ein Gummi-Impeller können Schaden nehmen.</translation>
    </message>
    <message>
        <source>With the cover off: at compression both rockers are free. At overlap a small turn moves both valves.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Bei abgenommenem Deckel: Im Zünd-OT sind beide Kipphebel frei. In der Ventilüberschneidung bewegt eine kleine Drehung beide Ventile.</translation>
    </message>
    <message>
        <source>For the next cylinder take the degrees from Next TDC. They come from the firing intervals: in V engines and uneven twins the firing order alone does not tell them.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Für den nächsten Zylinder die Grad von „Nächster OT“ nehmen. Sie kommen aus den Zündabständen: Bei V-Motoren und ungleichmäßigen Zweizylindern sagt sie die Zündfolge allein nicht.</translation>
    </message>
    <message>
        <source>Air at intake and exhaust, almost nothing held</source>
        <extracomment>tdc, sign</extracomment>
        <translation>Luft an Einlass und Auslass, fast nichts gehalten</translation>
    </message>
    <message>
        <source>most likely the wrong TDC: one full turn, test again</source>
        <extracomment>tdc, means</extracomment>
        <translation>höchstwahrscheinlich der falsche OT: eine volle Umdrehung, erneut prüfen</translation>
    </message>
    <message>
        <source>Wrong TDC</source>
        <extracomment>tdc, slip; leak-down, slip; listening, slip</extracomment>
        <translation>Falscher OT</translation>
    </message>
    <message>
        <source>Air at intake and exhaust together and a very low reading. Before anything is blamed: one full turn, test again.</source>
        <extracomment>tdc, then</extracomment>
        <translation>Luft an Einlass und Auslass zugleich und ein sehr niedriger Messwert. Bevor etwas beschuldigt wird: eine volle Umdrehung, erneut prüfen.</translation>
    </message>
    <message>
        <source>A few degrees off</source>
        <extracomment>tdc, slip</extracomment>
        <translation>Ein paar Grad daneben</translation>
    </message>
    <message>
        <source>The air pushes the crank round, and with it whatever is coupled to it.</source>
        <extracomment>tdc, then</extracomment>
        <translation>Die Luft drückt die Kurbelwelle herum und mit ihr, was daran gekuppelt ist.</translation>
    </message>
    <message>
        <source>Flat spot; if passed, go back at least half a turn (aircraft engines)</source>
        <extracomment>tdc, for</extracomment>
        <translation>Tote Stelle; wenn überfahren, mindestens eine halbe Umdrehung zurück (Flugmotoren)</translation>
    </message>
    <message>
        <source>Thumb, whistle, rockers; turning on instead of back, and what turning back may harm</source>
        <extracomment>tdc, for</extracomment>
        <translation>Daumen, Pfeife, Kipphebel; weiterdrehen statt zurück, und was beim Zurückdrehen Schaden nehmen kann</translation>
    </message>
    <message>
        <source>Leak-down</source>
        <extracomment>leak-down, title</extracomment>
        <translation>Druckverlustprüfung</translation>
    </message>
    <message>
        <source>How much air a cylinder loses at its own TDC</source>
        <extracomment>leak-down, brief</extracomment>
        <translation>Wie viel Luft ein Zylinder in seinem eigenen OT verliert</translation>
    </message>
    <message>
        <source>Air goes into one cylinder through a small restrictor. What the cylinder can&apos;t hold, it leaks: leakage = (set - held) / set. 80 psi set and 60 held is 25 %.</source>
        <extracomment>leak-down, why</extracomment>
        <translation>Luft geht durch eine kleine Drosselbohrung in einen Zylinder. Was der Zylinder nicht halten kann, verliert er: Druckverlust = (eingestellt - gehalten) / eingestellt. 80 psi eingestellt und 60 gehalten sind 25 %.</translation>
    </message>
    <message>
        <source>It needs neither starter nor battery, and while the air is on, you can hear where it goes. It comes before any oil goes in: oil stays on the rings for every later reading.</source>
        <extracomment>leak-down, why</extracomment>
        <translation>Sie braucht weder Anlasser noch Batterie, und solange die Luft anliegt, ist zu hören, wohin sie geht. Sie kommt, bevor Öl hineinkommt: Öl bleibt für jeden späteren Messwert an den Kolbenringen.</translation>
    </message>
    <message>
        <source>Check the tester: outlet blocked, it reads 0 % leakage. Needles at zero at rest.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Das Prüfgerät prüfen: Bei verschlossenem Ausgang zeigt es 0 % Druckverlust. Zeiger in Ruhe auf null.</translation>
    </message>
    <message>
        <source>Oil filler or breather open, blow-by hose pinched, throttle open (a diesel may have none).</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Öleinfüllöffnung oder Entlüftung offen, Entlüftungsschlauch abgeklemmt, Drosselklappe offen (ein Diesel hat vielleicht keine).</translation>
    </message>
    <message>
        <source>Bring the cylinder to its TDC on compression (card Finding TDC).</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Den Zylinder in seinen Zünd-OT bringen (Karte „OT finden“).</translation>
    </message>
    <message>
        <source>Connect with the pressure low, about 20 psi (1.4 bar), and find the flat spot at that pressure. Whoever turns holds on all the time and stands out of the way of what they hold.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Mit niedrigem Druck anschließen, etwa 20 psi (1,4 bar), und bei diesem Druck die tote Stelle suchen. Wer dreht, hält die ganze Zeit fest und steht nicht dort, wohin das Gehaltene schlagen kann.</translation>
    </message>
    <message>
        <source>Take every tool off the crank. Hold it: gear and brake, or a second person. Or use a lower set pressure: the app converts it before it judges.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Jedes Werkzeug von der Kurbelwelle nehmen. Sie halten: Gang und Bremse oder eine zweite Person. Oder einen niedrigeren eingestellten Druck nehmen: Die App rechnet ihn um, bevor sie urteilt.</translation>
    </message>
    <message>
        <source>Raise the pressure slowly to the set pressure. Let it settle; one maker waits 60 seconds.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Den Druck langsam auf den eingestellten Druck erhöhen. Beruhigen lassen; ein Hersteller wartet 60 Sekunden.</translation>
    </message>
    <message>
        <source>Never move the crank under the set pressure. To try a little before or after the top, go back to the low pressure first, turn, take the tool off, hold and raise again. Keep the best held value.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Die Kurbelwelle niemals unter dem eingestellten Druck bewegen. Um es ein wenig vor oder nach dem OT zu versuchen, zuerst auf den niedrigen Druck zurückgehen, drehen, das Werkzeug abnehmen, halten und wieder erhöhen. Den besten Haltedruck behalten.</translation>
    </message>
    <message>
        <source>Look at the set pressure again for each cylinder, then type what is held. Dial marked in % of leakage: say so once under More, then type its figure.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Bei jedem Zylinder noch einmal auf den eingestellten Druck schauen, dann eintippen, was gehalten wird. Steht auf der Skala der Verlust in %: einmal unter Mehr angeben, dann die Zahl eintippen.</translation>
    </message>
    <message>
        <source>Leave the air on and listen: &quot;Keep, listen&quot; opens the exits of this cylinder.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Die Luft anliegen lassen und horchen: „Behalten, horchen“ öffnet die Austritte dieses Zylinders.</translation>
    </message>
    <message>
        <source>Up to about 10 %</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Bis etwa 10 %</translation>
    </message>
    <message>
        <source>seals well</source>
        <extracomment>leak-down, means</extracomment>
        <translation>dichtet gut</translation>
    </message>
    <message>
        <source>Up to about 20 %</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Bis etwa 20 %</translation>
    </message>
    <message>
        <source>wear</source>
        <extracomment>leak-down, means</extracomment>
        <translation>Verschleiß</translation>
    </message>
    <message>
        <source>More than that</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Mehr als das</translation>
    </message>
    <message>
        <source>work; where, the Leak hunt says</source>
        <extracomment>leak-down, means</extracomment>
        <translation>Reparaturbedarf; wo, sagt die Lecksuche</translation>
    </message>
    <message>
        <source>One cylinder far from the others</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Ein Zylinder weit von den anderen weg</translation>
    </message>
    <message>
        <source>in a used engine that counts more than the figure</source>
        <extracomment>leak-down, means</extracomment>
        <translation>zählt bei einem gebrauchten Motor mehr als die Zahl</translation>
    </message>
    <message>
        <source>Almost nothing held, air at intake and exhaust. One full turn, test again.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Fast nichts gehalten, Luft an Einlass und Auslass. Eine volle Umdrehung, erneut prüfen.</translation>
    </message>
    <message>
        <source>Hiss at the plug hole itself. Soapy water shows it.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Zischen am Kerzenloch selbst. Seifenwasser zeigt es.</translation>
    </message>
    <message>
        <source>Gauge not zeroed, or outlet never blocked</source>
        <extracomment>leak-down, slip</extracomment>
        <translation>Manometer nicht auf null oder Ausgang nie verschlossen</translation>
    </message>
    <message>
        <source>The tester&apos;s own leak is counted as the engine&apos;s.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Das eigene Leck des Prüfgeräts wird dem Motor angerechnet.</translation>
    </message>
    <message>
        <source>Set pressure not looked at again</source>
        <extracomment>leak-down, slip</extracomment>
        <translation>Eingestellten Druck nicht noch einmal angesehen</translation>
    </message>
    <message>
        <source>A regulator sags under flow. With one gauge that is not seen, and is carried as doubt.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Ein Druckregler gibt bei Durchfluss nach. Mit nur einem Manometer ist das nicht zu sehen und wird als Unsicherheit mitgeführt.</translation>
    </message>
    <message>
        <source>Percent of two testers compared</source>
        <extracomment>leak-down, slip; testers, slip</extracomment>
        <translation>Prozente zweier Prüfgeräte verglichen</translation>
    </message>
    <message>
        <source>The same leak shows about 40 % at 35 psi and about 33 % at 80 psi behind the same restrictor. Bands belong to testers fed with 70 to 100 psi.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Dasselbe Leck zeigt hinter derselben Drosselbohrung etwa 40 % bei 35 psi und etwa 33 % bei 80 psi. Richtbereiche gelten für Prüfgeräte, die mit 70 bis 100 psi gespeist werden.</translation>
    </message>
    <message>
        <source>Tool left on the crank</source>
        <extracomment>leak-down, slip</extracomment>
        <translation>Werkzeug an der Kurbelwelle gelassen</translation>
    </message>
    <message>
        <source>When the engine turns, it strikes.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Wenn der Motor sich dreht, schlägt es zu.</translation>
    </message>
    <message>
        <source>80 to 60 psi is 25 %</source>
        <extracomment>leak-down, for</extracomment>
        <translation>80 auf 60 psi sind 25 %</translation>
    </message>
    <message>
        <source>20 psi first, flat spot, rise slowly</source>
        <extracomment>leak-down, for</extracomment>
        <translation>Erst 20 psi, tote Stelle, langsam erhöhen</translation>
    </message>
    <message>
        <source>Wait 60 s</source>
        <extracomment>leak-down, for</extracomment>
        <translation>60 s warten</translation>
    </message>
    <message>
        <source>The difference between cylinders counts more in a used engine</source>
        <extracomment>leak-down, for</extracomment>
        <translation>Der Unterschied zwischen Zylindern zählt bei einem gebrauchten Motor mehr</translation>
    </message>
    <message>
        <source>10 and 20 %</source>
        <extracomment>leak-down, for</extracomment>
        <translation>10 und 20 %</translation>
    </message>
    <message>
        <source>Pressure down before the crank is moved</source>
        <extracomment>leak-down, for</extracomment>
        <translation>Druck herunter, bevor die Kurbelwelle bewegt wird</translation>
    </message>
    <message>
        <source>40 % at 35 psi, 33 % at 80 psi: one leak by the flow law of a nozzle</source>
        <extracomment>leak-down, for</extracomment>
        <translation>40 % bei 35 psi, 33 % bei 80 psi: ein Leck nach dem Durchflussgesetz einer Düse</translation>
    </message>
    <message>
        <source>Leak hunt: listening</source>
        <extracomment>listening, title</extracomment>
        <translation>Lecksuche: Horchen</translation>
    </message>
    <message>
        <source>Where the air comes out: the strongest evidence there is</source>
        <extracomment>listening, brief</extracomment>
        <translation>Wo die Luft herauskommt: der stärkste Beleg, den es gibt</translation>
    </message>
    <message>
        <source>A percentage says how much is lost; the exit says through what. Of all evidence it is the strongest, and it is there for the listening while the air is on.</source>
        <extracomment>listening, why</extracomment>
        <translation>Ein Prozentwert sagt, wie viel verloren geht; der Austritt sagt, wodurch. Von allen Belegen ist er der stärkste, und solange die Luft anliegt, ist er allein durch Horchen zu haben.</translation>
    </message>
    <message>
        <source>&quot;Nothing&quot; is evidence too. &quot;Not listened&quot; is not &quot;nothing&quot;.</source>
        <extracomment>listening, why</extracomment>
        <translation>„Nichts“ ist auch ein Beleg. „Nicht gehorcht“ ist nicht „nichts“.</translation>
    </message>
    <message>
        <source>Compressor full and switched off. Quiet in the shop.</source>
        <extracomment>listening, how</extracomment>
        <translation>Kompressor voll und abgeschaltet. Ruhe in der Werkstatt.</translation>
    </message>
    <message>
        <source>Air on, crank held, throttle open (a diesel may have none). Nobody near what can turn.</source>
        <extracomment>listening, how</extracomment>
        <translation>Luft an, Kurbelwelle gehalten, Drosselklappe offen (ein Diesel hat vielleicht keine). Niemand in der Nähe von dem, was sich drehen kann.</translation>
    </message>
    <message>
        <source>Go round the exits in the same order every time: intake, exhaust, oil filler or breather, coolant filler of a cold engine, the neighbours&apos; plug holes, the joint of the head.</source>
        <extracomment>listening, how</extracomment>
        <translation>Die Austritte jedes Mal in derselben Reihenfolge durchgehen: Einlass, Auslass, Öleinfüllöffnung oder Entlüftung, Kühlmitteleinfüllöffnung eines kalten Motors, die Kerzenlöcher der Nachbarn, die Fuge des Zylinderkopfs.</translation>
    </message>
    <message>
        <source>Hold a hose to your ear and its other end to each exit: it shuts out the rest of the shop.</source>
        <extracomment>listening, how</extracomment>
        <translation>Einen Schlauch ans Ohr halten und sein anderes Ende an jeden Austritt: Das hält den Rest der Werkstatt draußen.</translation>
    </message>
    <message>
        <source>Lay a thin glove over the oil filler: it swells or it does not. Put soapy water along the joint and round the adapter.</source>
        <extracomment>listening, how</extracomment>
        <translation>Einen dünnen Handschuh über die Öleinfüllöffnung legen: Er bläht sich, oder er tut es nicht. Seifenwasser entlang der Fuge und rund um den Adapter auftragen.</translation>
    </message>
    <message>
        <source>Note each exit as nothing, faint, clear or strong, and how you listened.</source>
        <extracomment>listening, how</extracomment>
        <translation>Jeden Austritt als nichts, schwach, deutlich oder stark notieren, und wie gehorcht wurde.</translation>
    </message>
    <message>
        <source>Neighbour&apos;s plug hole: it means the joint only if that cylinder&apos;s own valves are shut. Look which way its rockers stand.</source>
        <extracomment>listening, how</extracomment>
        <translation>Kerzenloch des Nachbarn: Es bedeutet den Dichtungssteg nur, wenn die eigenen Ventile jenes Zylinders geschlossen sind. Ansehen, wie seine Kipphebel stehen.</translation>
    </message>
    <message>
        <source>Shared manifolds carry sound: compare port with port, close to the valve.</source>
        <extracomment>listening, how</extracomment>
        <translation>Gemeinsame Sammelrohre leiten Schall: Kanal mit Kanal vergleichen, nahe am Ventil.</translation>
    </message>
    <message>
        <source>Put a voice note or a photo to what you will want to hear again.</source>
        <extracomment>listening, how</extracomment>
        <translation>Eine Sprachnotiz oder ein Foto zu dem legen, was noch einmal gehört werden soll.</translation>
    </message>
    <message>
        <source>Intake</source>
        <extracomment>listening, sign</extracomment>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>intake valve</source>
        <extracomment>listening, means</extracomment>
        <translation>Einlassventil</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <extracomment>listening, sign</extracomment>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <extracomment>listening, means</extracomment>
        <translation>Auslassventil</translation>
    </message>
    <message>
        <source>Oil filler, dipstick, breather</source>
        <extracomment>listening, sign</extracomment>
        <translation>Öleinfüllöffnung, Peilstab, Entlüftung</translation>
    </message>
    <message>
        <source>rings, piston, bore; a little is normal there</source>
        <extracomment>listening, means</extracomment>
        <translation>Kolbenringe, Kolben, Bohrung; ein wenig ist dort normal</translation>
    </message>
    <message>
        <source>Bubbles in the coolant</source>
        <extracomment>listening, sign</extracomment>
        <translation>Blasen im Kühlmittel</translation>
    </message>
    <message>
        <source>head gasket, or a cracked head or block</source>
        <extracomment>listening, means</extracomment>
        <translation>Zylinderkopfdichtung oder ein Riss in Kopf oder Block</translation>
    </message>
    <message>
        <source>Neighbour&apos;s plug hole</source>
        <extracomment>listening, sign</extracomment>
        <translation>Kerzenloch des Nachbarn</translation>
    </message>
    <message>
        <source>the head gasket between the two</source>
        <extracomment>listening, means</extracomment>
        <translation>die Zylinderkopfdichtung zwischen beiden</translation>
    </message>
    <message>
        <source>Soapy water at the joint</source>
        <extracomment>listening, sign</extracomment>
        <translation>Seifenwasser an der Fuge</translation>
    </message>
    <message>
        <source>head gasket to the outside</source>
        <extracomment>listening, means</extracomment>
        <translation>Zylinderkopfdichtung nach außen</translation>
    </message>
    <message>
        <source>Intake and exhaust, almost nothing held</source>
        <extracomment>listening, sign</extracomment>
        <translation>Einlass und Auslass, fast nichts gehalten</translation>
    </message>
    <message>
        <source>first of all: wrong TDC?</source>
        <extracomment>listening, means</extracomment>
        <translation>als Allererstes: falscher OT?</translation>
    </message>
    <message>
        <source>Both valves stand open at overlap. One full turn, test again.</source>
        <extracomment>listening, then</extracomment>
        <translation>In der Ventilüberschneidung stehen beide Ventile offen. Eine volle Umdrehung, erneut prüfen.</translation>
    </message>
    <message>
        <source>Ring air arrives at the intake.</source>
        <extracomment>listening, then</extracomment>
        <translation>Luft von den Kolbenringen kommt am Einlass an.</translation>
    </message>
    <message>
        <source>Companion cylinder on overlap</source>
        <extracomment>listening, slip</extracomment>
        <translation>Partnerzylinder in der Ventilüberschneidung</translation>
    </message>
    <message>
        <source>A valve leak comes out of its plug hole through the shared manifold and is taken for the joint. Companions stand at TDC together: 1-4 and 2-3 of an in-line four, 1-6, 2-5 and 3-4 of an in-line six, 1-2 of a 360 degree twin.</source>
        <extracomment>listening, then</extracomment>
        <translation>Ein Ventilleck kommt über das gemeinsame Sammelrohr aus dessen Kerzenloch und wird für den Dichtungssteg gehalten. Partner stehen gemeinsam im OT: 1-4 und 2-3 beim Reihenvierzylinder, 1-6, 2-5 und 3-4 beim Reihensechszylinder, 1-2 beim 360-Grad-Zweizylinder.</translation>
    </message>
    <message>
        <source>Compressor running</source>
        <extracomment>listening, slip</extracomment>
        <translation>Kompressor läuft</translation>
    </message>
    <message>
        <source>Faint exits are missed.</source>
        <extracomment>listening, then</extracomment>
        <translation>Schwache Austritte werden überhört.</translation>
    </message>
    <message>
        <source>A hiss that seems to come from everywhere near the plug.</source>
        <extracomment>listening, then</extracomment>
        <translation>Ein Zischen, das nahe der Zündkerze von überall zu kommen scheint.</translation>
    </message>
    <message>
        <source>What each exit means</source>
        <extracomment>listening, for</extracomment>
        <translation>Was jeder Austritt bedeutet</translation>
    </message>
    <message>
        <source>A gasket sign may be a crack</source>
        <extracomment>listening, for</extracomment>
        <translation>Ein Zeichen für die Dichtung kann ein Riss sein</translation>
    </message>
    <message>
        <source>Valves, plug and joint may not leak at all, rings may</source>
        <extracomment>listening, for</extracomment>
        <translation>Ventile, Zündkerze und Fuge dürfen gar nicht lecken, Kolbenringe dürfen es</translation>
    </message>
    <message>
        <source>Hose, glove, companions</source>
        <extracomment>listening, for</extracomment>
        <translation>Schlauch, Handschuh, Partnerzylinder</translation>
    </message>
    <message>
        <source>Staking a valve</source>
        <extracomment>staking, title</extracomment>
        <translation>Ein Ventil freiklopfen</translation>
    </message>
    <message>
        <source>Carbon on the seat can leak like a burnt valve</source>
        <extracomment>staking, brief</extracomment>
        <translation>Ölkohle auf dem Sitz kann lecken wie ein verbranntes Ventil</translation>
    </message>
    <message>
        <source>A crumb of carbon under a valve leaks like a burnt one. A light tap on the stem can seat it again. It is a procedure of aircraft manuals, with their cautions, and it comes before any strip-down.</source>
        <extracomment>staking, why</extracomment>
        <translation>Ein Krümel Ölkohle unter einem Ventil leckt wie ein verbranntes. Ein leichter Schlag auf den Schaft kann es wieder auf den Sitz bringen. Das ist ein Verfahren aus Flugzeughandbüchern, mit deren Warnungen, und es kommt vor jedem Zerlegen.</translation>
    </message>
    <message>
        <source>A two-stroke without poppet valves has nothing to stake.</source>
        <extracomment>staking, why</extracomment>
        <translation>Ein Zweitakter ohne Tellerventile hat nichts anzuklopfen.</translation>
    </message>
    <message>
        <source>Only for a valve whose clearance is recorded and that leaked in leak-down.</source>
        <extracomment>staking, how</extracomment>
        <translation>Nur bei einem Ventil, dessen Spiel erfasst ist und das bei der Druckverlustprüfung undicht war.</translation>
    </message>
    <message>
        <source>Air off and pressure gone. Valve cover off, eyes protected.</source>
        <extracomment>staking, how</extracomment>
        <translation>Luft aus und Druck weg. Ventildeckel ab, Augen geschützt.</translation>
    </message>
    <message>
        <source>Turn until the piston is clear of the valves: a tap must not drive a valve onto it.</source>
        <extracomment>staking, how</extracomment>
        <translation>Drehen, bis der Kolben von den Ventilen frei ist: Ein Schlag darf kein Ventil auf ihn treiben.</translation>
    </message>
    <message>
        <source>Tap the stem lightly and squarely: the stem only, never the rocker, never from the side.</source>
        <extracomment>staking, how</extracomment>
        <translation>Leicht und gerade auf den Schaft klopfen: nur auf den Schaft, nie auf den Kipphebel, nie von der Seite.</translation>
    </message>
    <message>
        <source>Bring the cylinder back to its TDC on compression and run leak-down again.</source>
        <extracomment>staking, how</extracomment>
        <translation>Den Zylinder wieder in seinen Zünd-OT bringen und die Druckverlustprüfung noch einmal machen.</translation>
    </message>
    <message>
        <source>Note it in the Leak hunt under &quot;After staking&quot;: the valve is in a new state, and the old reading stays beside it.</source>
        <extracomment>staking, how</extracomment>
        <translation>In der Lecksuche unter „Nach dem Freiklopfen“ notieren: Das Ventil ist in einem neuen Zustand, und der alte Messwert bleibt daneben stehen.</translation>
    </message>
    <message>
        <source>Holds better afterwards</source>
        <extracomment>staking, sign</extracomment>
        <translation>Hält danach besser</translation>
    </message>
    <message>
        <source>carbon; run the engine, then test again</source>
        <extracomment>staking, means</extracomment>
        <translation>Ölkohle; den Motor laufen lassen, dann erneut prüfen</translation>
    </message>
    <message>
        <source>No change</source>
        <extracomment>staking, sign</extracomment>
        <translation>Keine Änderung</translation>
    </message>
    <message>
        <source>it was not carbon that a tap clears</source>
        <extracomment>staking, means</extracomment>
        <translation>es war keine Ölkohle, die ein Schlag beseitigt</translation>
    </message>
    <message>
        <source>Piston at the top</source>
        <extracomment>staking, slip</extracomment>
        <translation>Kolben oben</translation>
    </message>
    <message>
        <source>The valve meets the piston.</source>
        <extracomment>staking, then</extracomment>
        <translation>Das Ventil trifft den Kolben.</translation>
    </message>
    <message>
        <source>Struck askew</source>
        <extracomment>staking, slip</extracomment>
        <translation>Schief geschlagen</translation>
    </message>
    <message>
        <source>The stem bends, or spring and collets jump.</source>
        <extracomment>staking, then</extracomment>
        <translation>Der Schaft verbiegt sich, oder Feder und Ventilkeile springen heraus.</translation>
    </message>
    <message>
        <source>Tag forgotten</source>
        <extracomment>staking, slip</extracomment>
        <translation>Kennzeichnung vergessen</translation>
    </message>
    <message>
        <source>Before and after look like two readings of one state.</source>
        <extracomment>staking, then</extracomment>
        <translation>Vorher und nachher sehen aus wie zwei Messwerte eines Zustands.</translation>
    </message>
    <message>
        <source>Staking, and what follows from the result</source>
        <extracomment>staking, for</extracomment>
        <translation>Freiklopfen und was aus dem Ergebnis folgt</translation>
    </message>
    <message>
        <source>Wet test</source>
        <extracomment>wet, title</extracomment>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>Last of all: what a little oil changes, and what it only seems to</source>
        <extracomment>wet, brief</extracomment>
        <translation>Ganz zuletzt: was ein wenig Öl ändert und was es nur zu ändern scheint</translation>
    </message>
    <message>
        <source>Oil seals worn rings for a few strokes and does nothing for a valve. So the rise from dry to wet speaks for rings.</source>
        <extracomment>wet, why</extracomment>
        <translation>Öl dichtet verschlissene Kolbenringe für ein paar Hübe ab und bewirkt bei einem Ventil nichts. Deshalb spricht der Anstieg von trocken zu nass für Kolbenringe.</translation>
    </message>
    <message>
        <source>But oil takes room as well. A smaller chamber reads higher with no ring leak at all. The app shows what volume alone explains as a range, and only what lies above it speaks for rings.</source>
        <extracomment>wet, why</extracomment>
        <translation>Aber Öl braucht auch Platz. Ein kleinerer Brennraum zeigt mehr, ganz ohne undichten Kolbenring. Die App zeigt als Bereich, was das Volumen allein erklärt, und nur was darüber liegt, spricht für Kolbenringe.</translation>
    </message>
    <message>
        <source>Do it last: oil stays on the rings for every later reading. Leak-down comes first.</source>
        <extracomment>wet, how</extracomment>
        <translation>Zuletzt machen: Öl bleibt für jeden späteren Messwert an den Kolbenringen. Die Druckverlustprüfung kommt zuerst.</translation>
    </message>
    <message>
        <source>Have a dry reading of the same cylinder under the same conditions.</source>
        <extracomment>wet, how</extracomment>
        <translation>Einen trockenen Messwert desselben Zylinders unter denselben Bedingungen haben.</translation>
    </message>
    <message>
        <source>Measure the oil: 15 ml (one tablespoon) for a car cylinder, about 5 ml for a small one. Never more, and never on a diesel.</source>
        <extracomment>wet, how</extracomment>
        <translation>Das Öl abmessen: 15 ml (ein Esslöffel) für einen Autozylinder, etwa 5 ml für einen kleinen. Nie mehr, und niemals bei einem Diesel.</translation>
    </message>
    <message>
        <source>Let it in through the plug hole so that it runs round the bore.</source>
        <extracomment>wet, how</extracomment>
        <translation>Durch das Kerzenloch so einlaufen lassen, dass es rund um die Bohrung läuft.</translation>
    </message>
    <message>
        <source>With the gauge in, turn the engine over by hand, two turns, before the starter: it must not lock. If it does, take the gauge out again and let the oil out.</source>
        <extracomment>wet, how</extracomment>
        <translation>Mit eingeschraubtem Manometer den Motor zwei Umdrehungen von Hand durchdrehen, bevor der Anlasser benutzt wird: Er darf nicht blockieren. Tut er es, das Manometer wieder herausnehmen und das Öl herauslassen.</translation>
    </message>
    <message>
        <source>Eyes away from the plug holes. Crank as often as in the dry test.</source>
        <extracomment>wet, how</extracomment>
        <translation>Augen weg von den Kerzenlöchern. So oft durchdrehen wie bei der Trockenprüfung.</translation>
    </message>
    <message>
        <source>Type the final reading, how much oil and which.</source>
        <extracomment>wet, how</extracomment>
        <translation>Den Endwert eingeben, wie viel Öl und welches.</translation>
    </message>
    <message>
        <source>Rises by 10 % or more, beyond what volume explains</source>
        <extracomment>wet, sign</extracomment>
        <translation>Steigt um 10 % oder mehr, über das hinaus, was das Volumen erklärt</translation>
    </message>
    <message>
        <source>Does not rise</source>
        <extracomment>wet, sign</extracomment>
        <translation>Steigt nicht</translation>
    </message>
    <message>
        <source>valves, a broken ring or the gasket</source>
        <extracomment>wet, means</extracomment>
        <translation>Ventile, ein gebrochener Kolbenring oder die Dichtung</translation>
    </message>
    <message>
        <source>Rises within what volume explains</source>
        <extracomment>wet, sign</extracomment>
        <translation>Steigt innerhalb dessen, was das Volumen erklärt</translation>
    </message>
    <message>
        <source>says nothing either way</source>
        <extracomment>wet, means</extracomment>
        <translation>sagt weder das eine noch das andere</translation>
    </message>
    <message>
        <source>Oil pooled in a flat engine</source>
        <extracomment>wet, slip</extracomment>
        <translation>Öl sammelt sich im Boxermotor</translation>
    </message>
    <message>
        <source>In flat or steep cylinders oil lies on one side: it seals half a ring and fills the chamber. The doubt is wider there.</source>
        <extracomment>wet, then</extracomment>
        <translation>In liegenden oder stark geneigten Zylindern liegt das Öl auf einer Seite: Es dichtet einen halben Ring ab und füllt den Brennraum. Dort ist die Unsicherheit größer.</translation>
    </message>
    <message>
        <source>Too much oil</source>
        <extracomment>wet, slip</extracomment>
        <translation>Zu viel Öl</translation>
    </message>
    <message>
        <source>Volume alone lifts the reading: 5 cm³ that stay turn 172 psi into 214 in a 250 cm³ cylinder without any ring leak (this app&apos;s cranking model). Far too much locks the engine.</source>
        <extracomment>wet, then</extracomment>
        <translation>Schon das Volumen hebt den Messwert: 5 cm³, die bleiben, machen in einem 250-cm³-Zylinder aus 172 psi 214, ganz ohne undichte Kolbenringe (Durchdrehmodell dieser App). Viel zu viel blockiert den Motor.</translation>
    </message>
    <message>
        <source>Leak-down afterwards</source>
        <extracomment>wet, slip</extracomment>
        <translation>Druckverlustprüfung danach</translation>
    </message>
    <message>
        <source>Oiled rings leak less than they will. Such readings are marked as oiled.</source>
        <extracomment>wet, then</extracomment>
        <translation>Geölte Kolbenringe verlieren weniger Luft als später ohne das Öl. Solche Messwerte werden als geölt gekennzeichnet.</translation>
    </message>
    <message>
        <source>Other number of pulls than dry</source>
        <extracomment>wet, slip</extracomment>
        <translation>Andere Anzahl von Hüben als trocken</translation>
    </message>
    <message>
        <source>The two readings can&apos;t be compared.</source>
        <extracomment>wet, then</extracomment>
        <translation>Die beiden Messwerte sind nicht vergleichbar.</translation>
    </message>
    <message>
        <source>10 % or more: rings; none: valves, broken ring, gasket; 15 ml</source>
        <extracomment>wet, for</extracomment>
        <translation>10 % oder mehr: Kolbenringe; keiner: Ventile, gebrochener Kolbenring, Dichtung; 15 ml</translation>
    </message>
    <message>
        <source>5 ml: that manual&apos;s older figure for a car cylinder, taken here for small ones</source>
        <extracomment>wet, for</extracomment>
        <translation>5 ml: die ältere Zahl jenes Handbuchs für einen Autozylinder, hier für kleine genommen</translation>
    </message>
    <message>
        <source>Turning by hand after the oil; no oil into a diesel</source>
        <extracomment>wet, for</extracomment>
        <translation>Von Hand durchdrehen nach dem Öl; kein Öl in einen Diesel</translation>
    </message>
    <message>
        <source>172 psi into 214, and the range that volume explains</source>
        <extracomment>wet, for</extracomment>
        <translation>Aus 172 psi werden 214, und der Bereich, den das Volumen erklärt</translation>
    </message>
    <message>
        <source>Reading the findings</source>
        <extracomment>findings, title</extracomment>
        <translation>Den Befund lesen</translation>
    </message>
    <message>
        <source>One sentence first, then how sure, then the next test</source>
        <extracomment>findings, brief</extracomment>
        <translation>Erst ein Satz, dann wie sicher, dann die nächste Prüfung</translation>
    </message>
    <message>
        <source>One number is not a verdict. The Findings put all the evidence of a session together, say how sure each thing is, name what contradicts what, and which one test would settle it.</source>
        <extracomment>findings, why</extracomment>
        <translation>Eine Zahl ist kein Urteil. Der Befund fasst alle Belege einer Sitzung zusammen, sagt, wie sicher jedes ist, nennt, was wem widerspricht, und welche Prüfung es klären würde.</translation>
    </message>
    <message>
        <source>Read the one sentence of each cylinder first.</source>
        <extracomment>findings, how</extracomment>
        <translation>Zuerst den einen Satz zu jedem Zylinder lesen.</translation>
    </message>
    <message>
        <source>Then the question, if there is one: wrong TDC, a clearance not recorded, a decompressor. It comes before any verdict.</source>
        <extracomment>findings, how</extracomment>
        <translation>Dann die Frage, falls es eine gibt: falscher OT, ein nicht erfasstes Ventilspiel, ein Dekompressor. Sie kommt vor jedem Urteil.</translation>
    </message>
    <message>
        <source>Look at the shares of &quot;Where it leaks&quot; with their intervals. They are odds under the app&apos;s working assumptions and not yet counted on real engines. They never go above 95 %.</source>
        <extracomment>findings, how</extracomment>
        <translation>Die Anteile bei „Wo es undicht ist“ mit ihren Intervallen ansehen. Es sind Wahrscheinlichkeiten unter den Annahmen der App und noch nicht an wirklichen Motoren ausgezählt. Sie gehen nie über 95 %.</translation>
    </message>
    <message>
        <source>Read the rules of thumb beside them, in their own words. Where they disagree with the odds, it says why.</source>
        <extracomment>findings, how</extracomment>
        <translation>Die Faustregeln daneben in ihren eigenen Worten lesen. Wo sie den Wahrscheinlichkeiten widersprechen, steht dabei, warum.</translation>
    </message>
    <message>
        <source>Do the next test it names before you plan anything.</source>
        <extracomment>findings, how</extracomment>
        <translation>Die nächste genannte Prüfung machen, bevor etwas geplant wird.</translation>
    </message>
    <message>
        <source>Plan quick fixes, and &quot;run it, then test again&quot;, before a strip-down.</source>
        <extracomment>findings, how</extracomment>
        <translation>Schnelle Abhilfe und „laufen lassen, dann erneut prüfen“ vor dem Zerlegen planen.</translation>
    </message>
    <message>
        <source>Filled disc: in range</source>
        <extracomment>findings, sign</extracomment>
        <translation>Volle Scheibe: im Bereich</translation>
    </message>
    <message>
        <source>leave it</source>
        <extracomment>findings, means</extracomment>
        <translation>so lassen</translation>
    </message>
    <message>
        <source>Half disc: borderline</source>
        <extracomment>findings, sign</extracomment>
        <translation>Halbe Scheibe: grenzwertig</translation>
    </message>
    <message>
        <source>watch it, test again</source>
        <extracomment>findings, means</extracomment>
        <translation>beobachten, erneut prüfen</translation>
    </message>
    <message>
        <source>Open triangle: fault</source>
        <extracomment>findings, sign</extracomment>
        <translation>Offenes Dreieck: Fehler</translation>
    </message>
    <message>
        <source>something to find</source>
        <extracomment>findings, means</extracomment>
        <translation>hier ist etwas zu finden</translation>
    </message>
    <message>
        <source>Dashed ring: not measured</source>
        <extracomment>findings, sign</extracomment>
        <translation>Gestrichelter Ring: nicht gemessen</translation>
    </message>
    <message>
        <source>no verdict, also not a good one</source>
        <extracomment>findings, means</extracomment>
        <translation>kein Urteil, auch kein gutes</translation>
    </message>
    <message>
        <source>A small difference taken for a change</source>
        <extracomment>findings, slip</extracomment>
        <translation>Einen kleinen Unterschied für eine Änderung halten</translation>
    </message>
    <message>
        <source>0.1 bar on a gauge of 0 to 6 bar, class 1.6, is the gauge&apos;s own error.</source>
        <extracomment>findings, then</extracomment>
        <translation>0,1 bar sind auf einem Manometer von 0 bis 6 bar, Klasse 1,6, der eigene Fehler des Manometers.</translation>
    </message>
    <message>
        <source>No clearance recorded</source>
        <extracomment>findings, slip</extracomment>
        <translation>Kein Ventilspiel erfasst</translation>
    </message>
    <message>
        <source>A valve is called burnt that only lacks clearance.</source>
        <extracomment>findings, then</extracomment>
        <translation>Ein Ventil heißt verbrannt, dem nur das Spiel fehlt.</translation>
    </message>
    <message>
        <source>Cold held against warm</source>
        <extracomment>findings, slip</extracomment>
        <translation>Kalt mit warm verglichen</translation>
    </message>
    <message>
        <source>A cold engine reads about 10 % lower.</source>
        <extracomment>findings, then</extracomment>
        <translation>Ein kalter Motor zeigt etwa 10 % weniger.</translation>
    </message>
    <message>
        <source>Air at the breather called a fault</source>
        <extracomment>findings, slip</extracomment>
        <translation>Luft an der Entlüftung als Fehler bezeichnet</translation>
    </message>
    <message>
        <source>Rings may pass a little. Valves and joints may not.</source>
        <extracomment>findings, then</extracomment>
        <translation>Kolbenringe dürfen etwas durchlassen. Ventile und Dichtungen dürfen es nicht.</translation>
    </message>
    <message>
        <source>Class 1.6 is an error of 1.6 % of the span</source>
        <extracomment>findings, for</extracomment>
        <translation>Klasse 1,6 ist ein Fehler von 1,6 % der Messspanne</translation>
    </message>
    <message>
        <source>Cold about 10 % lower</source>
        <extracomment>findings, for; after-repair, for</extracomment>
        <translation>Kalt etwa 10 % weniger</translation>
    </message>
    <message>
        <source>Rings may leak, static seals may not</source>
        <extracomment>findings, for</extracomment>
        <translation>Kolbenringe dürfen lecken, ruhende Dichtungen nicht</translation>
    </message>
    <message>
        <source>The odds</source>
        <extracomment>findings, for</extracomment>
        <translation>Die Wahrscheinlichkeiten</translation>
    </message>
    <message>
        <source>Deciding</source>
        <extracomment>decide, title</extracomment>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>Leave it, quick fix or strip: the owner decides on figures</source>
        <extracomment>decide, brief</extracomment>
        <translation>So lassen, schnelle Abhilfe oder zerlegen: der Besitzer entscheidet nach Zahlen</translation>
    </message>
    <message>
        <source>Three ways lead on from a finding. Each has its price, and leaving it has one too. The findings say what leaks; what is done about it is the owner&apos;s to decide.</source>
        <extracomment>decide, why</extracomment>
        <translation>Drei Wege führen vom Befund weiter. Jeder hat seinen Preis, auch das Solassen. Der Befund sagt, was undicht ist; was geschieht, entscheidet der Besitzer.</translation>
    </message>
    <message>
        <source>Do the next test that the Findings name: a decision without it is a guess.</source>
        <extracomment>decide, how</extracomment>
        <translation>Zuerst die Prüfung machen, die der Befund als nächste nennt: ohne sie ist die Entscheidung geraten.</translation>
    </message>
    <message>
        <source>Begin with what is quick: clearance, staking, &quot;run it, then test again&quot;.</source>
        <extracomment>decide, how</extracomment>
        <translation>Mit dem anfangen, was schnell geht: Ventilspiel, Ventil anklopfen, „laufen lassen, dann neu prüfen“.</translation>
    </message>
    <message>
        <source>Give each way its parts, hours and prices on the Plan page, and what happens if it is left.</source>
        <extracomment>decide, how</extracomment>
        <translation>Auf der Seite „Plan“ jedem Weg Teile, Stunden und Preise geben, und was geschieht, wenn man es so lässt.</translation>
    </message>
    <message>
        <source>Look at the reading that is predicted after each: a repair that changes little is not worth it.</source>
        <extracomment>decide, how</extracomment>
        <translation>Den Messwert ansehen, der nach jedem Weg zu erwarten ist: eine Reparatur, die wenig ändert, lohnt nicht.</translation>
    </message>
    <message>
        <source>Note the owner&apos;s yes or no with its date, before anything is taken apart.</source>
        <extracomment>decide, how</extracomment>
        <translation>Ja oder Nein des Besitzers mit Datum notieren, bevor etwas zerlegt wird.</translation>
    </message>
    <message>
        <source>In range, like the others</source>
        <extracomment>decide, sign</extracomment>
        <translation>Im Bereich, wie die anderen</translation>
    </message>
    <message>
        <source>leave it, test again next year</source>
        <extracomment>decide, means</extracomment>
        <translation>so lassen, nächstes Jahr neu prüfen</translation>
    </message>
    <message>
        <source>A valve without clearance</source>
        <extracomment>decide, sign</extracomment>
        <translation>Ein Ventil ohne Spiel</translation>
    </message>
    <message>
        <source>quick fix, then test again</source>
        <extracomment>decide, means</extracomment>
        <translation>schnelle Abhilfe, dann neu prüfen</translation>
    </message>
    <message>
        <source>The same exit, clear in two tests</source>
        <extracomment>decide, sign</extracomment>
        <translation>Derselbe Austritt, in zwei Prüfungen deutlich</translation>
    </message>
    <message>
        <source>strip, if the owner wants it</source>
        <extracomment>decide, means</extracomment>
        <translation>zerlegen, wenn der Besitzer es will</translation>
    </message>
    <message>
        <source>Stripped on one reading</source>
        <extracomment>decide, slip</extracomment>
        <translation>Nach einem einzigen Messwert zerlegt</translation>
    </message>
    <message>
        <source>The fault was a clearance, the wrong TDC or the gauge.</source>
        <extracomment>decide, then</extracomment>
        <translation>Der Fehler war das Ventilspiel, der falsche OT oder das Manometer.</translation>
    </message>
    <message>
        <source>No answer written down</source>
        <extracomment>decide, slip</extracomment>
        <translation>Keine Antwort notiert</translation>
    </message>
    <message>
        <source>Later nobody knows who agreed to what.</source>
        <extracomment>decide, then</extracomment>
        <translation>Später weiß niemand, wer wozu Ja gesagt hat.</translation>
    </message>
    <message>
        <source>Quick fixes before a strip-down</source>
        <extracomment>decide, for</extracomment>
        <translation>Schnelle Abhilfe vor dem Zerlegen</translation>
    </message>
    <message>
        <source>After the repair</source>
        <extracomment>after-repair, title</extracomment>
        <translation>Nach der Reparatur</translation>
    </message>
    <message>
        <source>Prove that it worked, or say that it can&apos;t be compared</source>
        <extracomment>after-repair, brief</extracomment>
        <translation>Beweisen, dass sie geholfen hat, oder sagen, dass es nicht vergleichbar ist</translation>
    </message>
    <message>
        <source>A repair is proved by a second reading that can be held against the first. The difference has a doubt of its own: with the same gauge what it is always out by cancels, with another gauge it does not.</source>
        <extracomment>after-repair, why</extracomment>
        <translation>Eine Reparatur wird durch einen zweiten Messwert bewiesen, der sich mit dem ersten vergleichen lässt. Die Differenz hat eine eigene Unsicherheit: Mit demselben Manometer hebt sich auf, worum es immer falsch geht, mit einem anderen nicht.</translation>
    </message>
    <message>
        <source>Open a new session and tag the readings &quot;after repair&quot;.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Eine neue Sitzung beginnen und die Messwerte als „nach der Reparatur“ kennzeichnen.</translation>
    </message>
    <message>
        <source>Repeat the conditions of the first visit: same gauge, same heat, throttle, plugs out, battery on charge. Cold against cold.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Die Bedingungen des ersten Termins wiederholen: dasselbe Manometer, gleich warm, Drosselklappe, Kerzen heraus, Batterie am Ladegerät. Kalt gegen kalt.</translation>
    </message>
    <message>
        <source>Run the same tests in the same order.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Dieselben Prüfungen in derselben Reihenfolge machen.</translation>
    </message>
    <message>
        <source>Note oil used at assembly: it makes the test wet.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Beim Zusammenbau benutztes Öl notieren: Es macht die Prüfung nass.</translation>
    </message>
    <message>
        <source>After a hone or new rings, plan a retest after running in. Engines shows it when it is due.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Nach dem Honen oder neuen Kolbenringen eine Nachprüfung nach dem Einfahren planen. „Motoren“ zeigt sie, wenn sie fällig ist.</translation>
    </message>
    <message>
        <source>Hold the two visits against each other, and hand the owner the report.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Die beiden Termine gegeneinanderhalten und dem Besitzer den Bericht übergeben.</translation>
    </message>
    <message>
        <source>Better beyond doubt</source>
        <extracomment>after-repair, sign</extracomment>
        <translation>Zweifelsfrei besser</translation>
    </message>
    <message>
        <source>more than the gauges could be out by</source>
        <extracomment>after-repair, means</extracomment>
        <translation>mehr, als die Manometer falsch gehen könnten</translation>
    </message>
    <message>
        <source>No real change</source>
        <extracomment>after-repair, sign</extracomment>
        <translation>Keine echte Änderung</translation>
    </message>
    <message>
        <source>the difference lies inside the doubt</source>
        <extracomment>after-repair, means</extracomment>
        <translation>die Differenz liegt innerhalb der Unsicherheit</translation>
    </message>
    <message>
        <source>Assembly oil</source>
        <extracomment>after-repair, slip</extracomment>
        <translation>Öl vom Zusammenbau</translation>
    </message>
    <message>
        <source>It makes the test wet and flatters the rings.</source>
        <extracomment>after-repair, then</extracomment>
        <translation>Es macht die Prüfung nass und schmeichelt den Kolbenringen.</translation>
    </message>
    <message>
        <source>Other tester or set pressure</source>
        <extracomment>after-repair, slip</extracomment>
        <translation>Anderes Prüfgerät oder anderer eingestellter Druck</translation>
    </message>
    <message>
        <source>Percentages can&apos;t be compared as they stand. The app converts, and says so.</source>
        <extracomment>after-repair, then</extracomment>
        <translation>Prozentwerte sind so, wie sie dastehen, nicht vergleichbar. Die App rechnet um und sagt es.</translation>
    </message>
    <message>
        <source>Warm against cold</source>
        <extracomment>after-repair, slip</extracomment>
        <translation>Warm gegen kalt</translation>
    </message>
    <message>
        <source>About 10 % between the two, repair or not.</source>
        <extracomment>after-repair, then</extracomment>
        <translation>Etwa 10 % zwischen beiden, Reparatur hin oder her.</translation>
    </message>
    <message>
        <source>A shared offset cancels in a difference</source>
        <extracomment>after-repair, for</extracomment>
        <translation>Ein gemeinsamer Versatz hebt sich in der Differenz auf</translation>
    </message>
    <message>
        <source>Assembly oil, running in</source>
        <extracomment>after-repair, for</extracomment>
        <translation>Öl vom Zusammenbau, Einfahren</translation>
    </message>
    <message>
        <source>Handing over</source>
        <extracomment>hand-over, title</extracomment>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>One report for the owner, one file for the mentor</source>
        <extracomment>hand-over, brief</extracomment>
        <translation>Ein Bericht für den Besitzer, eine Datei für den Mentor</translation>
    </message>
    <message>
        <source>The owner wants to see before and after and what it means. The mentor wants everything: readings, conditions, photos of the gauge, voice notes. And next year&apos;s visit begins with this one.</source>
        <extracomment>hand-over, why</extracomment>
        <translation>Der Besitzer will Vorher und Nachher sehen und was es bedeutet. Der Mentor will alles: Messwerte, Bedingungen, Fotos vom Manometer, Sprachnotizen. Und der Termin im nächsten Jahr beginnt mit diesem.</translation>
    </message>
    <message>
        <source>Look through the preview of the report on Hand over: would you understand it as the owner?</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Auf „Übergeben“ die Vorschau des Berichts durchsehen: Würde man ihn als Besitzer verstehen?</translation>
    </message>
    <message>
        <source>Share the session file with the mentor: one visit, or several of the same engine.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Die Sitzungsdatei mit dem Mentor teilen: ein Termin oder mehrere desselben Motors.</translation>
    </message>
    <message>
        <source>The owner&apos;s contact stays out of the mentor&apos;s file unless you ask for it.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Die Kontaktdaten des Besitzers bleiben aus der Datei für den Mentor heraus, außer man verlangt sie.</translation>
    </message>
    <message>
        <source>When the file comes back, open it: what is new is shown before it is merged, and a test asked for stands among what is to do.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Kommt die Datei zurück, öffnen: Neues wird vor dem Zusammenführen gezeigt, und eine erbetene Prüfung steht unter dem, was zu tun ist.</translation>
    </message>
    <message>
        <source>Plan the retest and make a backup.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Die Nachprüfung planen und eine Sicherung anlegen.</translation>
    </message>
    <message>
        <source>Report without conditions</source>
        <extracomment>hand-over, slip</extracomment>
        <translation>Bericht ohne Bedingungen</translation>
    </message>
    <message>
        <source>Next year&apos;s readings have nothing to be held against.</source>
        <extracomment>hand-over, then</extracomment>
        <translation>Die Messwerte vom nächsten Jahr lassen sich mit nichts vergleichen.</translation>
    </message>
    <message>
        <source>No photo of the gauge</source>
        <extracomment>hand-over, slip</extracomment>
        <translation>Kein Foto vom Manometer</translation>
    </message>
    <message>
        <source>The mentor has to take every number on trust.</source>
        <extracomment>hand-over, then</extracomment>
        <translation>Der Mentor muss jede Zahl einfach glauben.</translation>
    </message>
    <message>
        <source>Backup only on the phone</source>
        <extracomment>hand-over, slip</extracomment>
        <translation>Sicherung nur auf dem Telefon</translation>
    </message>
    <message>
        <source>It is lost together with the phone.</source>
        <extracomment>hand-over, then</extracomment>
        <translation>Sie geht mit dem Telefon verloren.</translation>
    </message>
    <message>
        <source>What owner and mentor need</source>
        <extracomment>hand-over, for</extracomment>
        <translation>Was Besitzer und Mentor brauchen</translation>
    </message>
    <message>
        <source>Numbers and files</source>
        <extracomment>title</extracomment>
        <translation>Zahlen und Dateien</translation>
    </message>
    <message>
        <source>Altitude and testers</source>
        <extracomment>testers, title</extracomment>
        <translation>Höhe und Prüfgeräte</translation>
    </message>
    <message>
        <source>The same engine reads otherwise high up and on another tester</source>
        <extracomment>testers, brief</extracomment>
        <translation>Derselbe Motor zeigt in der Höhe und auf einem anderen Prüfgerät anderes an</translation>
    </message>
    <message>
        <source>A cylinder begins with the air around it. 120 psi at sea level is about 100 psi at 5 000 feet (1 500 m), with nothing wrong. And a percentage belongs to the tester that showed it: another set pressure or restrictor shows another one for the same leak.</source>
        <extracomment>testers, why</extracomment>
        <translation>Ein Zylinder beginnt mit der Luft um ihn herum. 120 psi auf Meereshöhe sind auf 5 000 Fuß (1 500 m) etwa 100 psi, ohne dass etwas fehlt. Und ein Prozentwert gehört zu dem Prüfgerät, das ihn gezeigt hat: Ein anderer eingestellter Druck oder eine andere Drosselbohrung zeigt für dasselbe Leck einen anderen.</translation>
    </message>
    <message>
        <source>The app converts both before it judges, and says that it did.</source>
        <extracomment>testers, why</extracomment>
        <translation>Die App rechnet beides um, bevor sie urteilt, und sagt, dass sie es getan hat.</translation>
    </message>
    <message>
        <source>Enter each tester once: range, class, hose, where the check valve sits; for leak-down the set pressure and the restrictor. Home-made testers are normal.</source>
        <extracomment>testers, how</extracomment>
        <translation>Jedes Prüfgerät einmal eingeben: Bereich, Klasse, Schlauch, Sitz des Rückschlagventils; für die Druckverlustprüfung den eingestellten Druck und die Drosselbohrung. Selbst gebaute Prüfgeräte sind normal.</translation>
    </message>
    <message>
        <source>Check before you blame the engine: outlet blocked reads 0 % leakage; needle at zero at rest; after cranking the gauge does not sink.</source>
        <extracomment>testers, how</extracomment>
        <translation>Prüfen, bevor der Motor beschuldigt wird: Bei verschlossenem Ausgang 0 % Druckverlust; Zeiger in Ruhe auf null; nach dem Durchdrehen sinkt das Manometer nicht.</translation>
    </message>
    <message>
        <source>Check a home-made restrictor with a drilled hole of known size in place of the cylinder.</source>
        <extracomment>testers, how</extracomment>
        <translation>Eine selbst gemachte Drosselbohrung mit einem Prüfloch bekannter Größe anstelle des Zylinders prüfen.</translation>
    </message>
    <message>
        <source>Enter the shop&apos;s altitude, or what a barometer in the shop shows.</source>
        <extracomment>testers, how</extracomment>
        <translation>Die Höhe der Werkstatt eingeben oder was ein Barometer in der Werkstatt zeigt.</translation>
    </message>
    <message>
        <source>A table for altitude in the engine&apos;s manual comes before any sum.</source>
        <extracomment>testers, how</extracomment>
        <translation>Eine Höhentabelle im Handbuch des Motors geht jeder Rechnung vor.</translation>
    </message>
    <message>
        <source>Compare one tester with a reference now and then, and note the date.</source>
        <extracomment>testers, how</extracomment>
        <translation>Hin und wieder ein Prüfgerät mit einer Referenz vergleichen und das Datum notieren.</translation>
    </message>
    <message>
        <source>Restrictor 0.040 in (1.02 mm), 0.250 in long</source>
        <extracomment>testers, sign</extracomment>
        <translation>Drosselbohrung 0,040 in (1,02 mm), 0,250 in lang</translation>
    </message>
    <message>
        <source>bores under 5 in</source>
        <extracomment>testers, means</extracomment>
        <translation>Bohrungen unter 5 in</translation>
    </message>
    <message>
        <source>Restrictor 0.060 in (1.52 mm), 0.250 in long</source>
        <extracomment>testers, sign</extracomment>
        <translation>Drosselbohrung 0,060 in (1,52 mm), 0,250 in lang</translation>
    </message>
    <message>
        <source>bores of 5 in and more</source>
        <extracomment>testers, means</extracomment>
        <translation>Bohrungen ab 5 in</translation>
    </message>
    <message>
        <source>The weather report&apos;s pressure</source>
        <extracomment>testers, slip</extracomment>
        <translation>Luftdruck aus dem Wetterbericht</translation>
    </message>
    <message>
        <source>It is reduced to sea level. Use the altitude or a barometer in the shop.</source>
        <extracomment>testers, then</extracomment>
        <translation>Er ist auf Meereshöhe umgerechnet. Die Höhe oder ein Barometer in der Werkstatt nehmen.</translation>
    </message>
    <message>
        <source>40 % at 35 psi and 33 % at 80 psi can be the same leak.</source>
        <extracomment>testers, then</extracomment>
        <translation>40 % bei 35 psi und 33 % bei 80 psi können dasselbe Leck sein.</translation>
    </message>
    <message>
        <source>Tyre-valve core in the gauge</source>
        <extracomment>testers, slip</extracomment>
        <translation>Reifenventileinsatz im Manometer</translation>
    </message>
    <message>
        <source>It opens late and reads 11 to 19 psi low. Say on the tester&apos;s card which core it has.</source>
        <extracomment>testers, then</extracomment>
        <translation>Er öffnet spät und zeigt 11 bis 19 psi zu wenig. Auf der Karte des Prüfgeräts angeben, welchen Einsatz es hat.</translation>
    </message>
    <message>
        <source>It is out by as much everywhere.</source>
        <extracomment>testers, then</extracomment>
        <translation>Es geht überall um ebenso viel falsch.</translation>
    </message>
    <message>
        <source>120 psi at sea level, 100 at 5 000 feet</source>
        <extracomment>testers, for</extracomment>
        <translation>120 psi auf Meereshöhe, 100 auf 5 000 Fuß</translation>
    </message>
    <message>
        <source>Restrictors</source>
        <extracomment>testers, for</extracomment>
        <translation>Drosselbohrungen</translation>
    </message>
    <message>
        <source>Tyre-valve core; one leak on two testers</source>
        <extracomment>testers, for</extracomment>
        <translation>Reifenventileinsatz; ein Leck auf zwei Prüfgeräten</translation>
    </message>
    <message>
        <source>What ± means</source>
        <extracomment>uncertainty, title</extracomment>
        <translation>Was ± bedeutet</translation>
    </message>
    <message>
        <source>How sure a number is, and when two numbers differ</source>
        <extracomment>uncertainty, brief</extracomment>
        <translation>Wie sicher eine Zahl ist und wann zwei Zahlen verschieden sind</translation>
    </message>
    <message>
        <source>No gauge shows the true value. &quot;7.5 bar ± 0.2&quot; says: as far as is known of the gauge and the reading, the true value lies between 7.3 and 7.7 about 19 times out of 20.</source>
        <extracomment>uncertainty, why</extracomment>
        <translation>Kein Manometer zeigt den wahren Wert. „7,5 bar ± 0,2“ heißt: Soweit Manometer und Messwert bekannt sind, liegt der wahre Wert in etwa 19 von 20 Fällen zwischen 7,3 und 7,7.</translation>
    </message>
    <message>
        <source>Enter the gauge&apos;s class and range. The class is its error in percent of the whole span: class 1.6 on 0 to 10 bar may be out by 0.16 bar anywhere.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Klasse und Bereich des Manometers eingeben. Die Klasse ist sein Fehler in Prozent der ganzen Messspanne: Klasse 1,6 auf 0 bis 10 bar kann überall um 0,16 bar falsch gehen.</translation>
    </message>
    <message>
        <source>Ask of a difference whether it is larger than its own ±. If not, it may be the gauge.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Bei einem Unterschied fragen, ob er größer ist als sein eigenes ±. Wenn nicht, kann es das Manometer sein.</translation>
    </message>
    <message>
        <source>Use the same gauge for everything that is to be compared: what it is always out by cancels in a difference.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Für alles, was verglichen werden soll, dasselbe Manometer nehmen: Worum es immer falsch geht, hebt sich in der Differenz auf.</translation>
    </message>
    <message>
        <source>Repeat a reading that matters. Repeats show the scatter of the pulls, not the gauge&apos;s own error.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Einen wichtigen Messwert wiederholen. Wiederholungen zeigen die Streuung der Messungen, nicht den eigenen Fehler des Manometers.</translation>
    </message>
    <message>
        <source>Touch a number to see where it comes from, what went in, what it rests on and what its ± is made of.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Eine Zahl antippen, um zu sehen, woher sie kommt, was eingegangen ist, worauf sie beruht und woraus ihr ± besteht.</translation>
    </message>
    <message>
        <source>Two values whose ± overlap widely</source>
        <extracomment>uncertainty, sign</extracomment>
        <translation>Zwei Werte, deren ± sich weit überlappen</translation>
    </message>
    <message>
        <source>no real change</source>
        <extracomment>uncertainty, means</extracomment>
        <translation>keine echte Änderung</translation>
    </message>
    <message>
        <source>An interval from 10 to 80 %</source>
        <extracomment>uncertainty, sign</extracomment>
        <translation>Ein Intervall von 10 bis 80 %</translation>
    </message>
    <message>
        <source>not yet known; the next test says which</source>
        <extracomment>uncertainty, means</extracomment>
        <translation>noch nicht bekannt; die nächste Prüfung sagt es</translation>
    </message>
    <message>
        <source>&quot;depends on assumptions&quot;</source>
        <extracomment>uncertainty, sign</extracomment>
        <translation>„hängt von Annahmen ab“</translation>
    </message>
    <message>
        <source>other assumptions would give another main path</source>
        <extracomment>uncertainty, means</extracomment>
        <translation>andere Annahmen ergäben einen anderen Hauptweg</translation>
    </message>
    <message>
        <source>More digits than the gauge has</source>
        <extracomment>uncertainty, slip</extracomment>
        <translation>Mehr Stellen, als das Manometer hat</translation>
    </message>
    <message>
        <source>They are guessed. Type what the scale lets you read.</source>
        <extracomment>uncertainty, then</extracomment>
        <translation>Sie sind geraten. Eingeben, was die Skala ablesen lässt.</translation>
    </message>
    <message>
        <source>A fall of 0.1 bar taken for wear</source>
        <extracomment>uncertainty, slip</extracomment>
        <translation>Einen Abfall um 0,1 bar für Verschleiß halten</translation>
    </message>
    <message>
        <source>A gauge of 0 to 6 bar, class 1.6, may be out by 0.096 bar alone.</source>
        <extracomment>uncertainty, then</extracomment>
        <translation>Ein Manometer von 0 bis 6 bar, Klasse 1,6, kann allein um 0,096 bar falsch gehen.</translation>
    </message>
    <message>
        <source>± taken for a promise</source>
        <extracomment>uncertainty, slip</extracomment>
        <translation>± für ein Versprechen halten</translation>
    </message>
    <message>
        <source>It covers what is known. A leaking adapter or a closed throttle is not in it.</source>
        <extracomment>uncertainty, then</extracomment>
        <translation>Es deckt ab, was bekannt ist. Ein undichter Adapter oder eine geschlossene Drosselklappe ist nicht darin.</translation>
    </message>
    <message>
        <source>Coverage factor 2, about 95 %</source>
        <extracomment>uncertainty, for</extracomment>
        <translation>Erweiterungsfaktor 2, etwa 95 %</translation>
    </message>
    <message>
        <source>Class 1.6 on 0 to 10 bar: 0.16 bar</source>
        <extracomment>uncertainty, for</extracomment>
        <translation>Klasse 1,6 auf 0 bis 10 bar: 0,16 bar</translation>
    </message>
    <message>
        <source>What a signature proves</source>
        <extracomment>signature, title</extracomment>
        <translation>Was eine Signatur beweist</translation>
    </message>
    <message>
        <source>Session files: unaltered, yes; true, no</source>
        <extracomment>signature, brief</extracomment>
        <translation>Sitzungsdateien: unverändert, ja; wahr, nein</translation>
    </message>
    <message>
        <source>A session file carries checksums against damage, and what the app hands over is signed. &quot;Unaltered&quot; means: since the holder of that key handed it over, no byte was changed, added or taken out.</source>
        <extracomment>signature, why</extracomment>
        <translation>Eine Sitzungsdatei trägt Prüfsummen gegen Schäden, und was die App übergibt, ist signiert. „Unverändert“ heißt: Seit der Inhaber dieses Schlüssels sie übergeben hat, wurde kein Byte geändert, hinzugefügt oder herausgenommen.</translation>
    </message>
    <message>
        <source>Open the file. The app checks every byte before it shows anything.</source>
        <extracomment>signature, how</extracomment>
        <translation>Die Datei öffnen. Die App prüft jedes Byte, bevor sie etwas zeigt.</translation>
    </message>
    <message>
        <source>Unknown key? Compare its fingerprint with the sender once, by eye or by telephone, then give the key a name.</source>
        <extracomment>signature, how</extracomment>
        <translation>Schlüssel unbekannt? Seinen Fingerabdruck einmal mit dem Absender vergleichen, mit eigenen Augen oder am Telefon, dann dem Schlüssel einen Namen geben.</translation>
    </message>
    <message>
        <source>From then on files of that key show the name.</source>
        <extracomment>signature, how</extracomment>
        <translation>Von da an zeigen Dateien dieses Schlüssels den Namen.</translation>
    </message>
    <message>
        <source>A damaged file is not brought in, and your library stays as it was: ask for the file again.</source>
        <extracomment>signature, how</extracomment>
        <translation>Eine beschädigte Datei wird nicht eingelesen, und der eigene Bestand bleibt, wie er war: noch einmal um die Datei bitten.</translation>
    </message>
    <message>
        <source>Unaltered, named key</source>
        <extracomment>signature, sign</extracomment>
        <translation>Unverändert, Schlüssel mit Namen</translation>
    </message>
    <message>
        <source>handed over like this by the holder of that key</source>
        <extracomment>signature, means</extracomment>
        <translation>vom Inhaber dieses Schlüssels so übergeben</translation>
    </message>
    <message>
        <source>Unaltered, unknown key</source>
        <extracomment>signature, sign</extracomment>
        <translation>Unverändert, Schlüssel unbekannt</translation>
    </message>
    <message>
        <source>not changed since; by whom is not known</source>
        <extracomment>signature, means</extracomment>
        <translation>seither nicht geändert; von wem, ist nicht bekannt</translation>
    </message>
    <message>
        <source>Altered</source>
        <extracomment>signature, sign</extracomment>
        <translation>Verändert</translation>
    </message>
    <message>
        <source>changed after it was signed</source>
        <extracomment>signature, means</extracomment>
        <translation>nach dem Signieren geändert</translation>
    </message>
    <message>
        <source>Not signed</source>
        <extracomment>signature, sign</extracomment>
        <translation>Nicht signiert</translation>
    </message>
    <message>
        <source>nothing is proved, and nothing is wrong either</source>
        <extracomment>signature, means</extracomment>
        <translation>nichts ist bewiesen, und falsch ist auch nichts</translation>
    </message>
    <message>
        <source>Unaltered taken for true</source>
        <extracomment>signature, slip</extracomment>
        <translation>Unverändert für wahr halten</translation>
    </message>
    <message>
        <source>It does not say that a reading is true or when it was really taken.</source>
        <extracomment>signature, then</extracomment>
        <translation>Sie sagt nicht, dass ein Messwert wahr ist oder wann er wirklich aufgenommen wurde.</translation>
    </message>
    <message>
        <source>No signature taken for a forgery</source>
        <extracomment>signature, slip</extracomment>
        <translation>Fehlende Signatur für eine Fälschung halten</translation>
    </message>
    <message>
        <source>Anyone can take a signature off, or sign with a key of their own; that shows as an unknown key.</source>
        <extracomment>signature, then</extracomment>
        <translation>Jeder kann eine Signatur abnehmen oder mit einem eigenen Schlüssel signieren; das zeigt sich als unbekannter Schlüssel.</translation>
    </message>
    <message>
        <source>Key taken for a person</source>
        <extracomment>signature, slip</extracomment>
        <translation>Schlüssel für eine Person halten</translation>
    </message>
    <message>
        <source>Whoever has the unlocked phone can sign.</source>
        <extracomment>signature, then</extracomment>
        <translation>Wer das entsperrte Telefon hat, kann signieren.</translation>
    </message>
    <message>
        <source>Checksums of every file</source>
        <extracomment>signature, for</extracomment>
        <translation>Prüfsummen jeder Datei</translation>
    </message>
    <message>
        <source>Signature: Ed25519 over the list of checksums</source>
        <extracomment>signature, for</extracomment>
        <translation>Signatur: Ed25519 über die Liste der Prüfsummen</translation>
    </message>
    <message>
        <source>Ways out of a cylinder</source>
        <extracomment>section, title</extracomment>
        <translation>Wege aus einem Zylinder</translation>
    </message>
    <message>
        <source>A cylinder cut open with the piston near the top and air coming in at the plug hole. Dashed arrows show five ways out: past the intake valve to the intake, past the exhaust valve to the exhaust, down past the piston rings to the crankcase and its breather, through the head gasket to the outside or to the neighbour, and through the head gasket into the coolant.</source>
        <extracomment>section, description</extracomment>
        <translation>Ein aufgeschnittener Zylinder mit dem Kolben nahe dem Scheitel und Luft, die am Kerzenloch hineinkommt. Gestrichelte Pfeile zeigen fünf Wege hinaus: am Einlassventil vorbei zum Einlass, am Auslassventil vorbei zum Auslass, an den Kolbenringen vorbei hinunter ins Kurbelgehäuse und zu seiner Entlüftung, durch die Zylinderkopfdichtung nach außen oder zum Nachbarn und durch die Zylinderkopfdichtung ins Kühlmittel.</translation>
    </message>
    <message>
        <source>Intake: intake valve</source>
        <extracomment>section, text</extracomment>
        <translation>Einlass: Einlassventil</translation>
    </message>
    <message>
        <source>Exhaust: exhaust valve</source>
        <extracomment>section, text</extracomment>
        <translation>Auslass: Auslassventil</translation>
    </message>
    <message>
        <source>Breather, oil filler: rings, piston, bore</source>
        <extracomment>section, text</extracomment>
        <translation>Entlüftung, Öleinfüllöffnung: Kolbenringe, Kolben, Bohrung</translation>
    </message>
    <message>
        <source>Joint of the head, neighbour&apos;s plug hole: head gasket</source>
        <extracomment>section, text</extracomment>
        <translation>Fuge des Zylinderkopfs, Kerzenloch des Nachbarn: Zylinderkopfdichtung</translation>
    </message>
    <message>
        <source>Bubbles in the coolant: head gasket, or a crack</source>
        <extracomment>section, text</extracomment>
        <translation>Blasen im Kühlmittel: Zylinderkopfdichtung oder ein Riss</translation>
    </message>
    <message>
        <source>Where to listen</source>
        <extracomment>listening, title</extracomment>
        <translation>Wo zu horchen ist</translation>
    </message>
    <message>
        <source>An engine from the side with air on one cylinder. Listening points: the mouth of the intake on the left, the end of the exhaust on the right, the oil filler with a thin glove stood over it, the coolant filler of the cold radiator, the neighbour&apos;s plug hole with a hose that leads to an ear, and the joint of the head with bubbles of soapy water.</source>
        <extracomment>listening, description</extracomment>
        <translation>Ein Motor von der Seite mit Luft auf einem Zylinder. Stellen zum Horchen: die Mündung des Einlasses links, das Ende des Auspuffs rechts, die Öleinfüllöffnung mit einem dünnen Handschuh darüber, die Kühlmitteleinfüllöffnung des kalten Kühlers, das Kerzenloch des Nachbarn mit einem Schlauch zum Ohr und die Fuge des Zylinderkopfs mit Blasen von Seifenwasser.</translation>
    </message>
    <message>
        <source>Intake, throttle open</source>
        <extracomment>listening, text</extracomment>
        <translation>Einlass, Drosselklappe offen</translation>
    </message>
    <message>
        <source>End of the exhaust</source>
        <extracomment>listening, text</extracomment>
        <translation>Ende des Auspuffs</translation>
    </message>
    <message>
        <source>Oil filler or breather, a thin glove over it</source>
        <extracomment>listening, text</extracomment>
        <translation>Öleinfüllöffnung oder Entlüftung, ein dünner Handschuh darüber</translation>
    </message>
    <message>
        <source>Coolant filler, engine cold</source>
        <extracomment>listening, text</extracomment>
        <translation>Kühlmitteleinfüllöffnung, Motor kalt</translation>
    </message>
    <message>
        <source>Neighbour&apos;s plug hole, a hose to the ear</source>
        <extracomment>listening, text</extracomment>
        <translation>Kerzenloch des Nachbarn, ein Schlauch zum Ohr</translation>
    </message>
    <message>
        <source>Joint of the head, soapy water</source>
        <extracomment>listening, text</extracomment>
        <translation>Fuge des Zylinderkopfs, Seifenwasser</translation>
    </message>
    <message>
        <source>Compression and overlap</source>
        <extracomment>tdc, title</extracomment>
        <translation>Verdichtung und Ventilüberschneidung</translation>
    </message>
    <message>
        <source>Two cylinders, both with the piston at the top. On the left, compression: both cams point away, the valves are shut and their tops have clearance. On the right, overlap: both cams press, both valves stand a little open and air gets out at intake and exhaust.</source>
        <extracomment>tdc, description</extracomment>
        <translation>Zwei Zylinder, beide mit dem Kolben oben. Links Verdichtung: Beide Nocken zeigen weg, die Ventile sind geschlossen, und an ihren Enden ist Spiel. Rechts Ventilüberschneidung: Beide Nocken drücken, beide Ventile stehen ein wenig offen, und Luft entweicht an Einlass und Auslass.</translation>
    </message>
    <message>
        <source>Compression: both valves shut. This is the TDC for leak-down</source>
        <extracomment>tdc, text</extracomment>
        <translation>Verdichtung: beide Ventile geschlossen. Das ist der OT für die Druckverlustprüfung</translation>
    </message>
    <message>
        <source>Overlap: both valves a little open, air at intake and exhaust. Turn once, all the way round</source>
        <extracomment>tdc, text</extracomment>
        <translation>Ventilüberschneidung: beide Ventile ein wenig offen, Luft an Einlass und Auslass. Einmal drehen, ganz herum</translation>
    </message>
    <message>
        <source>Clearance between cam and valve: what holds the valve shut is its spring alone</source>
        <extracomment>tdc, text</extracomment>
        <translation>Spiel zwischen Nocken und Ventil: Geschlossen gehalten wird das Ventil allein von seiner Feder</translation>
    </message>
    <message>
        <source>Thumb or whistle</source>
        <extracomment>thumb, title</extracomment>
        <translation>Daumen oder Pfeife</translation>
    </message>
    <message>
        <source>Two cylinders whose piston comes up with both valves shut. On the left a thumb on the plug hole feels the air push past it. On the right a whistle in the plug hole sounds. If nothing pushes, the valves overlap.</source>
        <extracomment>thumb, description</extracomment>
        <translation>Zwei Zylinder, deren Kolben bei geschlossenen Ventilen nach oben kommt. Links spürt ein Daumen auf dem Kerzenloch, wie sich die Luft vorbeidrückt. Rechts tönt eine Pfeife im Kerzenloch. Drückt nichts, überschneiden sich die Ventile.</translation>
    </message>
    <message>
        <source>Thumb on the plug hole: air pushes out on the way up</source>
        <extracomment>thumb, text</extracomment>
        <translation>Daumen auf dem Kerzenloch: Beim Aufwärtsgang drückt Luft heraus</translation>
    </message>
    <message>
        <source>A whistle in the plug hole sounds until the piston is at the top</source>
        <extracomment>thumb, text</extracomment>
        <translation>Eine Pfeife im Kerzenloch tönt, bis der Kolben oben ist</translation>
    </message>
    <message>
        <source>Leak-down tester</source>
        <extracomment>rig, title</extracomment>
        <translation>Druckverlustprüfer</translation>
    </message>
    <message>
        <source>From left to right: air from the compressor, a regulator with its handle, the gauge that shows the set pressure, a restrictor that leaves only a small hole, the gauge that shows the held pressure, and a hose into the plug hole of a cylinder with its piston at the top.</source>
        <extracomment>rig, description</extracomment>
        <translation>Von links nach rechts: Luft vom Kompressor, ein Druckregler mit seinem Griff, das Manometer für den eingestellten Druck, eine Drosselbohrung, die nur ein kleines Loch lässt, das Manometer für den Haltedruck und ein Schlauch ins Kerzenloch eines Zylinders, dessen Kolben oben steht.</translation>
    </message>
    <message>
        <source>Regulator: up slowly</source>
        <extracomment>rig, text</extracomment>
        <translation>Druckregler: langsam hoch</translation>
    </message>
    <message>
        <source>Set pressure, before the restrictor</source>
        <extracomment>rig, text</extracomment>
        <translation>Eingestellter Druck, vor der Drosselbohrung</translation>
    </message>
    <message>
        <source>Restrictor: a small hole of known size</source>
        <extracomment>rig, text</extracomment>
        <translation>Drosselbohrung: ein kleines Loch bekannter Größe</translation>
    </message>
    <message>
        <source>Held pressure, after the restrictor</source>
        <extracomment>rig, text</extracomment>
        <translation>Haltedruck, nach der Drosselbohrung</translation>
    </message>
    <message>
        <source>Cylinder at its TDC on compression</source>
        <extracomment>rig, text</extracomment>
        <translation>Zylinder in seinem Zünd-OT</translation>
    </message>
    <message>
        <source>Holding the crank</source>
        <extracomment>holding, title</extracomment>
        <translation>Die Kurbelwelle halten</translation>
    </message>
    <message>
        <source>Two cranks under air pressure. On the left the crank stands at TDC: the push goes straight through its centre and turns nothing. On the right it stands some degrees after TDC: the push goes past the centre and turns the crank.</source>
        <extracomment>holding, description</extracomment>
        <translation>Zwei Kurbelwellen unter Luftdruck. Links steht die Kurbelwelle im OT: Der Druck geht gerade durch ihre Mitte und dreht nichts. Rechts steht sie einige Grad nach OT: Der Druck geht an der Mitte vorbei und dreht die Kurbelwelle.</translation>
    </message>
    <message>
        <source>At TDC the air has no lever</source>
        <extracomment>holding, text</extracomment>
        <translation>Im OT hat die Luft keinen Hebel</translation>
    </message>
    <message>
        <source>A few degrees on it turns the crank: it must be held</source>
        <extracomment>holding, text</extracomment>
        <translation>Ein paar Grad weiter dreht sie die Kurbelwelle: Sie muss gehalten werden</translation>
    </message>
    <message>
        <source>Gear and brake or a second person; no tool left on the crank</source>
        <extracomment>holding, text</extracomment>
        <translation>Gang und Bremse oder eine zweite Person; kein Werkzeug an der Kurbelwelle stecken lassen</translation>
    </message>
    <message>
        <source>Measuring a clearance</source>
        <extracomment>clearance, title</extracomment>
        <translation>Ein Ventilspiel messen</translation>
    </message>
    <message>
        <source>A rocker lies over a valve. The cam under its other end points away, so the valve is shut. A feeler blade lies in the gap between the rocker&apos;s adjusting screw and the top of the valve stem.</source>
        <extracomment>clearance, description</extracomment>
        <translation>Ein Kipphebel liegt über einem Ventil. Der Nocken unter seinem anderen Ende zeigt weg, das Ventil ist also geschlossen. Ein Blatt der Fühlerlehre liegt im Spalt zwischen der Einstellschraube des Kipphebels und dem Ende des Ventilschafts.</translation>
    </message>
    <message>
        <source>Feeler blade in the gap: a light drag</source>
        <extracomment>clearance, text</extracomment>
        <translation>Blatt der Fühlerlehre im Spalt: leichter Widerstand</translation>
    </message>
    <message>
        <source>Adjusting screw of the rocker</source>
        <extracomment>clearance, text</extracomment>
        <translation>Einstellschraube des Kipphebels</translation>
    </message>
    <message>
        <source>Valve stem and spring, valve shut</source>
        <extracomment>clearance, text</extracomment>
        <translation>Ventilschaft und Feder, Ventil geschlossen</translation>
    </message>
    <message>
        <source>Cam points away: TDC on compression</source>
        <extracomment>clearance, text</extracomment>
        <translation>Nocken zeigt weg: Zünd-OT</translation>
    </message>
    <message>
        <source>A valve in its head with a crumb of carbon on the seat, so that it does not close. A light tap goes square onto the end of the stem. The piston stands well below the valve.</source>
        <extracomment>staking, description</extracomment>
        <translation>Ein Ventil in seinem Kopf mit einem Krümel Ölkohle auf dem Sitz, sodass es nicht schließt. Ein leichter Schlag trifft gerade auf das Ende des Schafts. Der Kolben steht weit unter dem Ventil.</translation>
    </message>
    <message>
        <source>Carbon on the seat</source>
        <extracomment>staking, text</extracomment>
        <translation>Ölkohle auf dem Sitz</translation>
    </message>
    <message>
        <source>Light taps, square, on the stem only</source>
        <extracomment>staking, text</extracomment>
        <translation>Leichte Schläge, gerade, nur auf den Schaft</translation>
    </message>
    <message>
        <source>Piston clear of the valve</source>
        <extracomment>staking, text</extracomment>
        <translation>Kolben frei vom Ventil</translation>
    </message>
    <message>
        <source>Oil on the piston</source>
        <extracomment>oil, title</extracomment>
        <translation>Öl auf dem Kolben</translation>
    </message>
    <message>
        <source>On the left an upright cylinder: oil lies on the piston all round, reaches the rings and takes room from the chamber. On the right a flat cylinder: the oil has pooled on the lower side, seals only a part of the rings and fills the chamber from below.</source>
        <extracomment>oil, description</extracomment>
        <translation>Links ein stehender Zylinder: Öl liegt ringsum auf dem Kolben, erreicht die Kolbenringe und nimmt dem Brennraum Platz. Rechts ein liegender Zylinder: Das Öl hat sich auf der unteren Seite gesammelt, dichtet nur einen Teil der Kolbenringe ab und füllt den Brennraum von unten.</translation>
    </message>
    <message>
        <source>Oil at the rings: seals them for a few strokes</source>
        <extracomment>oil, text</extracomment>
        <translation>Öl an den Kolbenringen: dichtet sie für ein paar Hübe ab</translation>
    </message>
    <message>
        <source>Room that the oil takes: reads higher with no ring leak at all</source>
        <extracomment>oil, text</extracomment>
        <translation>Platz, den das Öl braucht: zeigt mehr, ganz ohne undichten Kolbenring</translation>
    </message>
    <message>
        <source>Flat cylinder: oil pools below, seals a part only, wider doubt</source>
        <extracomment>oil, text</extracomment>
        <translation>Liegender Zylinder: Öl sammelt sich unten, dichtet nur einen Teil ab, größere Unsicherheit</translation>
    </message>
    <message>
        <source>Reach of the adapter</source>
        <extracomment>adapter, title</extracomment>
        <translation>Gewindelänge des Adapters</translation>
    </message>
    <message>
        <source>Two adapters screwed into plug holes over a piston at the top. The left one ends level with the chamber&apos;s roof and seals on its ring. The right one is too long: it reaches down to the piston.</source>
        <extracomment>adapter, description</extracomment>
        <translation>Zwei in Kerzenlöcher geschraubte Adapter über einem Kolben oben. Der linke endet bündig mit dem Dach des Brennraums und dichtet auf seinem Ring. Der rechte ist zu lang: Er reicht bis zum Kolben hinunter.</translation>
    </message>
    <message>
        <source>Sealing ring, whole and clean</source>
        <extracomment>adapter, text</extracomment>
        <translation>Dichtring, heil und sauber</translation>
    </message>
    <message>
        <source>Same thread and reach as the plug</source>
        <extracomment>adapter, text</extracomment>
        <translation>Gewinde und Gewindelänge wie die Kerze</translation>
    </message>
    <message>
        <source>Too long: it strikes the piston. Try two turns by hand</source>
        <extracomment>adapter, text</extracomment>
        <translation>Zu lang: Er schlägt an den Kolben. Zwei Umdrehungen von Hand</translation>
    </message>
    <message>
        <source>Crankcase hold test</source>
        <extracomment>crankcase, title</extracomment>
        <translation>Kurbelgehäuse-Druckhalteprüfung</translation>
    </message>
    <message>
        <source>A two-stroke cut open. Plates close the exhaust port and the intake; a small pump with a gauge puts a low pressure into the crankcase. Places that may leak: the seals on both ends of the crankshaft, the base gasket under the cylinder, and the reed at the intake.</source>
        <extracomment>crankcase, description</extracomment>
        <translation>Ein aufgeschnittener Zweitakter. Platten verschließen Auslassschlitz und Einlass; eine kleine Pumpe mit Manometer gibt einen niedrigen Druck ins Kurbelgehäuse. Stellen, die lecken können: die Wellendichtringe an beiden Enden der Kurbelwelle, die Fußdichtung unter dem Zylinder und die Membran am Einlass.</translation>
    </message>
    <message>
        <source>Blanking plates: soapy water here first</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Verschlussplatten: erst hier Seifenwasser</translation>
    </message>
    <message>
        <source>Crank seals, both ends</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Wellendichtringe, beide Enden</translation>
    </message>
    <message>
        <source>Base gasket</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Fußdichtung</translation>
    </message>
    <message>
        <source>Intake with its reed or rotary valve, blanked off</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Einlass mit Membran oder Drehschieber, verschlossen</translation>
    </message>
    <message>
        <source>Pump and gauge: a low set pressure</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Pumpe und Manometer: ein niedriger eingestellter Druck</translation>
    </message>
    <message>
        <source>Two readings and their doubt</source>
        <extracomment>doubt, title</extracomment>
        <translation>Zwei Messwerte und ihre Unsicherheit</translation>
    </message>
    <message>
        <source>Two pairs of readings over a scale, each with a whisker for its doubt. The upper pair lies close together and the whiskers overlap: no real change. The lower pair lies far apart and the whiskers do not meet: a real difference.</source>
        <extracomment>doubt, description</extracomment>
        <translation>Zwei Paare von Messwerten über einer Skala, jeder mit einem Strich für seine Unsicherheit. Das obere Paar liegt nah beieinander, und die Striche überlappen sich: keine echte Änderung. Das untere Paar liegt weit auseinander, und die Striche treffen sich nicht: ein echter Unterschied.</translation>
    </message>
    <message>
        <source>Whiskers overlap widely: it may be the gauge</source>
        <extracomment>doubt, text</extracomment>
        <translation>Striche überlappen sich weit: Es kann das Manometer sein</translation>
    </message>
    <message>
        <source>Whiskers apart: a real difference</source>
        <extracomment>doubt, text</extracomment>
        <translation>Striche getrennt: ein echter Unterschied</translation>
    </message>
    <message>
        <source>Bore, stroke and chamber</source>
        <extracomment>bore-stroke, title</extracomment>
        <translation>Bohrung, Hub und Brennraum</translation>
    </message>
    <message>
        <source>A cylinder cut open. The piston stands at the bottom, a dashed line shows where its top comes to at TDC. An arrow across is the bore, an arrow from bottom to top is the stroke. What is left above the dashed line is the chamber.</source>
        <extracomment>bore-stroke, description</extracomment>
        <translation>Ein aufgeschnittener Zylinder. Der Kolben steht unten, eine gestrichelte Linie zeigt, wie weit sein Boden im OT kommt. Ein Pfeil quer ist die Bohrung, ein Pfeil von unten nach oben der Hub. Was über der gestrichelten Linie bleibt, ist der Brennraum.</translation>
    </message>
    <message>
        <source>Bore</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Stroke: from the lowest to the highest place of the piston</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Hub: von der tiefsten zur höchsten Stellung des Kolbens</translation>
    </message>
    <message>
        <source>Chamber at TDC: with bore and stroke it gives the compression ratio</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Brennraum im OT: mit Bohrung und Hub ergibt er das Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Plug hole: its thread and reach choose the adapter</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Kerzenloch: Gewinde und Gewindelänge bestimmen den Adapter</translation>
    </message>
    <message>
        <source>Ready to be cranked</source>
        <extracomment>prepare, title</extracomment>
        <translation>Bereit zum Durchdrehen</translation>
    </message>
    <message>
        <source>An engine made ready. The throttle plate lies level in the intake, held open by a wire, and air gets in. The handle of the fuel tap stands across the pipe: fuel is off. The plug is out and its lead is grounded on the head. The battery is on a charger.</source>
        <extracomment>prepare, description</extracomment>
        <translation>Ein vorbereiteter Motor. Die Drosselklappe liegt längs im Ansaugrohr, ein Draht hält sie offen, Luft kommt herein. Der Griff des Kraftstoffhahns steht quer zum Rohr: Kraftstoff ist zu. Die Kerze ist heraus, ihr Kabel liegt am Kopf auf Masse. Die Batterie hängt am Ladegerät.</translation>
    </message>
    <message>
        <source>Throttle held wide open</source>
        <extracomment>prepare, text</extracomment>
        <translation>Drosselklappe ganz offen gehalten</translation>
    </message>
    <message>
        <source>Fuel off</source>
        <extracomment>prepare, text</extracomment>
        <translation>Kraftstoff zu</translation>
    </message>
    <message>
        <source>All plugs out</source>
        <extracomment>prepare, text</extracomment>
        <translation>Alle Kerzen heraus</translation>
    </message>
    <message>
        <source>Ignition grounded</source>
        <extracomment>prepare, text</extracomment>
        <translation>Zündung auf Masse</translation>
    </message>
    <message>
        <source>Battery on charge</source>
        <extracomment>prepare, text</extracomment>
        <translation>Batterie am Ladegerät</translation>
    </message>
    <message>
        <source>Three alike and one low</source>
        <extracomment>four-bars, title</extracomment>
        <translation>Drei gleich und einer niedrig</translation>
    </message>
    <message>
        <source>The readings of four cylinders as bars, each with a whisker for its doubt. Two dashed lines mark the band in which readings of sound cylinders scatter. The first three end inside the band. The fourth ends far below it, and its whisker does not reach the band.</source>
        <extracomment>four-bars, description</extracomment>
        <translation>Die Messwerte von vier Zylindern als Balken, jeder mit einem Strich für seine Unsicherheit. Zwei gestrichelte Linien zeigen das Band, in dem Messwerte gesunder Zylinder streuen. Die ersten drei enden im Band. Der vierte endet weit darunter, und sein Strich erreicht das Band nicht.</translation>
    </message>
    <message>
        <source>Three alike: all within the scatter</source>
        <extracomment>four-bars, text</extracomment>
        <translation>Drei gleich: alle innerhalb der Streuung</translation>
    </message>
    <message>
        <source>The band of scatter: differences inside it mean nothing</source>
        <extracomment>four-bars, text</extracomment>
        <translation>Das Streuband: Unterschiede darin bedeuten nichts</translation>
    </message>
    <message>
        <source>One low, clear of the band: something to find</source>
        <extracomment>four-bars, text</extracomment>
        <translation>Einer niedrig, klar unter dem Band: hier ist etwas zu finden</translation>
    </message>
    <message>
        <source>Three ways on</source>
        <extracomment>three-ways, title</extracomment>
        <translation>Drei Wege</translation>
    </message>
    <message>
        <source>Three arrows lead from the finding at the bottom to three boxes. In the left one a clock: leave it and test again later. In the middle a screwdriver on an adjuster: a quick fix. On the right a head lifted off its cylinder: strip.</source>
        <extracomment>three-ways, description</extracomment>
        <translation>Drei Pfeile führen vom Befund unten zu drei Kästen. Links eine Uhr: so lassen und später neu prüfen. In der Mitte ein Schraubendreher an einer Einstellschraube: schnelle Abhilfe. Rechts ein vom Zylinder abgehobener Kopf: zerlegen.</translation>
    </message>
    <message>
        <source>Leave it, and test again at a date</source>
        <extracomment>three-ways, text</extracomment>
        <translation>So lassen und zu einem festen Termin neu prüfen</translation>
    </message>
    <message>
        <source>Quick fix, then test again</source>
        <extracomment>three-ways, text</extracomment>
        <translation>Schnelle Abhilfe, dann neu prüfen</translation>
    </message>
    <message>
        <source>Strip: parts, hours, prices, the owner&apos;s yes</source>
        <extracomment>three-ways, text</extracomment>
        <translation>Zerlegen: Teile, Stunden, Preise, das Ja des Besitzers</translation>
    </message>
    <message>
        <source>The finding, with its next test done</source>
        <extracomment>three-ways, text</extracomment>
        <translation>Der Befund, die nächste Prüfung ist gemacht</translation>
    </message>
    <message>
        <source>Before and after</source>
        <extracomment>before-after, title</extracomment>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Two bars of the same cylinder side by side, each with a whisker for its doubt. The left one, before the repair, ends below the dashed line of the lowest limit. The right one, after the repair, ends above it, and the whiskers do not meet.</source>
        <extracomment>before-after, description</extracomment>
        <translation>Zwei Balken desselben Zylinders nebeneinander, jeder mit einem Strich für seine Unsicherheit. Der linke, vor der Reparatur, endet unter der gestrichelten Linie der untersten Grenze. Der rechte, nach der Reparatur, endet darüber, und die Striche berühren sich nicht.</translation>
    </message>
    <message>
        <source>Before: as found</source>
        <extracomment>before-after, text</extracomment>
        <translation>Vorher: wie vorgefunden</translation>
    </message>
    <message>
        <source>After: the same gauge, heat and throttle</source>
        <extracomment>before-after, text</extracomment>
        <translation>Nachher: gleiches Manometer, gleiche Wärme, gleiche Drosselklappe</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <extracomment>before-after, text</extracomment>
        <translation>Unterste Grenze</translation>
    </message>
    <message>
        <source>Whiskers apart: better beyond doubt</source>
        <extracomment>before-after, text</extracomment>
        <translation>Striche getrennt: zweifellos besser</translation>
    </message>
    <message>
        <source>Report and session file</source>
        <extracomment>hand-over, title</extracomment>
        <translation>Bericht und Sitzungsdatei</translation>
    </message>
    <message>
        <source>A phone in the middle. To the left goes a file with a gauge photo and a voice note to the mentor, and it comes back with an opinion. To the right goes a sheet with two bars, before and after, to the owner.</source>
        <extracomment>hand-over, description</extracomment>
        <translation>In der Mitte ein Telefon. Nach links geht eine Datei mit Manometerfoto und Sprachnotiz an den Mentor und kommt mit einer Meinung zurück. Nach rechts geht ein Blatt mit zwei Balken, vorher und nachher, an den Besitzer.</translation>
    </message>
    <message>
        <source>Session file: readings, photos, voice notes</source>
        <extracomment>hand-over, text</extracomment>
        <translation>Sitzungsdatei: Messwerte, Fotos, Sprachnotizen</translation>
    </message>
    <message>
        <source>The mentor sends it back with an opinion</source>
        <extracomment>hand-over, text</extracomment>
        <translation>Der Mentor schickt sie mit seiner Meinung zurück</translation>
    </message>
    <message>
        <source>Report: before and after</source>
        <extracomment>hand-over, text</extracomment>
        <translation>Bericht: vorher und nachher</translation>
    </message>
    <message>
        <source>The owner</source>
        <extracomment>hand-over, text</extracomment>
        <translation>Der Besitzer</translation>
    </message>
    <message>
        <source>A decompressor at work</source>
        <extracomment>decompressor, title</extracomment>
        <translation>Ein Dekompressor bei der Arbeit</translation>
    </message>
    <message>
        <source>A cylinder cut open, the piston coming up. The nose of the exhaust cam points away, but a pin stands out of the cam&apos;s round side and holds the exhaust valve open a little. Air gets out past it to the exhaust.</source>
        <extracomment>decompressor, description</extracomment>
        <translation>Ein aufgeschnittener Zylinder, der Kolben kommt hoch. Die Nockenspitze des Auslasses zeigt weg, doch ein Stift steht aus dem Grundkreis und hält das Auslassventil ein wenig offen. Luft entweicht daran vorbei in den Auslass.</translation>
    </message>
    <message>
        <source>At cranking speed the pin stands out and holds the exhaust valve open a little</source>
        <extracomment>decompressor, text</extracomment>
        <translation>Bei Anlasserdrehzahl steht der Stift vor und hält das Auslassventil ein wenig offen</translation>
    </message>
    <message>
        <source>Air gets out: the gauge reads low, and nothing is broken</source>
        <extracomment>decompressor, text</extracomment>
        <translation>Luft entweicht: das Manometer zeigt wenig, und nichts ist defekt</translation>
    </message>
    <message>
        <source>When the engine runs, the pin goes in and the valve shuts</source>
        <extracomment>decompressor, text</extracomment>
        <translation>Läuft der Motor, geht der Stift hinein und das Ventil schließt</translation>
    </message>
    <message>
        <source>A diesel ready for the gauge</source>
        <extracomment>diesel, title</extracomment>
        <translation>Ein Diesel, bereit für das Manometer</translation>
    </message>
    <message>
        <source>A diesel cylinder cut open with its piston at the top and a bowl in it. The injector stays in, its plug is pulled off. An adapter is screwed into the hole of the glow plug and leads to a gauge with a high range. Between piston and head there is hardly any room.</source>
        <extracomment>diesel, description</extracomment>
        <translation>Ein aufgeschnittener Dieselzylinder, der Kolben mit seiner Mulde steht oben. Die Einspritzdüse bleibt drin, ihr Stecker ist abgezogen. Ein Adapter ist in das Loch der Glühkerze geschraubt und führt zu einem Manometer mit hohem Bereich. Zwischen Kolben und Kopf ist kaum Platz.</translation>
    </message>
    <message>
        <source>Adapter made for the hole of the glow plug, or of the injector</source>
        <extracomment>diesel, text</extracomment>
        <translation>Adapter für das Loch der Glühkerze oder der Einspritzdüse</translation>
    </message>
    <message>
        <source>Injection off: connector pulled, or as the manual says</source>
        <extracomment>diesel, text</extracomment>
        <translation>Einspritzung aus: Stecker abgezogen oder wie im Handbuch</translation>
    </message>
    <message>
        <source>Gauge for 40 bar or more</source>
        <extracomment>diesel, text</extracomment>
        <translation>Manometer für 40 bar oder mehr</translation>
    </message>
    <message>
        <source>Hardly any room: no oil in here</source>
        <extracomment>diesel, text</extracomment>
        <translation>Kaum Platz: hier kein Öl hinein</translation>
    </message>
    <message>
        <source>Unaltered and altered</source>
        <extracomment>signature, title</extracomment>
        <translation>Unverändert und verändert</translation>
    </message>
    <message>
        <source>Two session files, each with a seal made by a key. On the left the file is as it was handed over: the seal is whole. On the right one line was written anew after signing: the seal is broken. The seal says nothing about whether a reading is true.</source>
        <extracomment>signature, description</extracomment>
        <translation>Zwei Sitzungsdateien, jede mit einem Siegel, das ein Schlüssel gemacht hat. Links ist die Datei so, wie sie übergeben wurde: das Siegel ist ganz. Rechts wurde nach dem Signieren eine Zeile neu geschrieben: das Siegel ist zerbrochen. Ob ein Messwert wahr ist, sagt das Siegel nicht.</translation>
    </message>
    <message>
        <source>Signed with a key when it was handed over</source>
        <extracomment>signature, text</extracomment>
        <translation>Bei der Übergabe mit einem Schlüssel signiert</translation>
    </message>
    <message>
        <source>Unaltered: the seal is whole</source>
        <extracomment>signature, text</extracomment>
        <translation>Unverändert: das Siegel ist ganz</translation>
    </message>
    <message>
        <source>A line changed after signing</source>
        <extracomment>signature, text</extracomment>
        <translation>Nach dem Signieren geänderte Zeile</translation>
    </message>
    <message>
        <source>Altered: the seal is broken</source>
        <extracomment>signature, text</extracomment>
        <translation>Verändert: das Siegel ist zerbrochen</translation>
    </message>
    <message>
        <source>Special engines</source>
        <extracomment>title</extracomment>
        <translation>Besondere Motoren</translation>
    </message>
    <message>
        <source>Two-stroke: the crankcase</source>
        <extracomment>crankcase, title</extracomment>
        <translation>Zweitakter: das Kurbelgehäuse</translation>
    </message>
    <message>
        <source>Does it hold pressure? Seals, base gasket, reed or rotary valve</source>
        <extracomment>crankcase, brief</extracomment>
        <translation>Hält es Druck? Wellendichtringe, Fußdichtung, Membran oder Drehschieber</translation>
    </message>
    <message>
        <source>A two-stroke&apos;s crankcase pumps the charge. Where it leaks, the engine draws air that no carburettor has measured. Its hold test is one of its own: set pressure, minutes, end pressure.</source>
        <extracomment>crankcase, why</extracomment>
        <translation>Das Kurbelgehäuse eines Zweitakters pumpt die Füllung. Wo es undicht ist, saugt der Motor Luft an, die kein Vergaser zugemessen hat. Seine Druckhalteprüfung ist eine eigene: eingestellter Druck, Minuten, Enddruck.</translation>
    </message>
    <message>
        <source>With several cylinders each has a crankcase chamber of its own, sealed from the next one inside the crankcase. Each chamber is held by itself.</source>
        <extracomment>crankcase, why</extracomment>
        <translation>Bei mehreren Zylindern hat jeder eine eigene Kurbelkammer, innen im Gehäuse gegen die nächste abgedichtet. Jede Kammer wird für sich gehalten.</translation>
    </message>
    <message>
        <source>Above the piston there are rings, head gasket and decompressor only. Ring air leaves by the exhaust port and the carburettor. There are no poppet valves, and nothing is staked.</source>
        <extracomment>crankcase, why</extracomment>
        <translation>Über dem Kolben gibt es nur Kolbenringe, Zylinderkopfdichtung und Dekompressor. Luft von den Kolbenringen geht durch Auslassschlitz und Vergaser hinaus. Es gibt keine Tellerventile, und nichts wird freigeklopft.</translation>
    </message>
    <message>
        <source>Close intake and exhaust with blanking plates or plugs, and the plug hole.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Einlass und Auslass mit Verschlussplatten oder Stopfen schließen, und das Kerzenloch.</translation>
    </message>
    <message>
        <source>With several cylinders: one chamber at a time, chosen on the pad by its cylinder. The others stay open: air that gets past the seal between two chambers is heard there.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Bei mehreren Zylindern: eine Kammer nach der anderen, auf dem Tastenfeld über ihren Zylinder gewählt. Die anderen bleiben offen: Luft, die an der Dichtung zwischen zwei Kammern vorbeikommt, hört man dort.</translation>
    </message>
    <message>
        <source>Take set pressure and minutes from the engine&apos;s manual. It is far less than in leak-down.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Eingestellten Druck und Minuten aus dem Handbuch des Motors nehmen. Er ist weit niedriger als bei der Druckverlustprüfung.</translation>
    </message>
    <message>
        <source>Bring the pressure up slowly, close the tap, note the time.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Den Druck langsam aufbauen, den Hahn schließen, die Zeit notieren.</translation>
    </message>
    <message>
        <source>First soapy water on your own blanking plates, hose and gauge.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Erst Seifenwasser auf die eigenen Verschlussplatten, Schlauch und Manometer.</translation>
    </message>
    <message>
        <source>After the minutes read the end pressure. Type set, minutes and end on the pad of the crankcase test.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Nach den Minuten den Enddruck ablesen. Eingestellten Druck, Minuten und Enddruck auf dem Eingabefeld der Kurbelgehäuseprüfung eingeben.</translation>
    </message>
    <message>
        <source>If it sank: soapy water on crank seals, base gasket, and reed or rotary valve. Note each exit in the Leak hunt.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Wenn der Druck gesunken ist: Seifenwasser auf Wellendichtringe, Fußdichtung und Membran oder Drehschieber. Jeden Austritt in der Lecksuche notieren.</translation>
    </message>
    <message>
        <source>Bubbles at a crank seal</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Blasen an einem Wellendichtring</translation>
    </message>
    <message>
        <source>crank seal</source>
        <extracomment>crankcase, means</extracomment>
        <translation>Wellendichtring</translation>
    </message>
    <message>
        <source>Air at the next cylinder&apos;s ports</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Luft an den Kanälen des Nachbarzylinders</translation>
    </message>
    <message>
        <source>the seal between the chambers</source>
        <extracomment>crankcase, means</extracomment>
        <translation>die Dichtung zwischen den Kammern</translation>
    </message>
    <message>
        <source>Bubbles along the cylinder&apos;s foot</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Blasen entlang des Zylinderfußes</translation>
    </message>
    <message>
        <source>base gasket</source>
        <extracomment>crankcase, means</extracomment>
        <translation>Fußdichtung</translation>
    </message>
    <message>
        <source>Air at the reed or rotary valve</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Luft an Membran oder Drehschieber</translation>
    </message>
    <message>
        <source>the valve</source>
        <extracomment>crankcase, means</extracomment>
        <translation>das Ventil</translation>
    </message>
    <message>
        <source>A blanking plate leaks</source>
        <extracomment>crankcase, slip</extracomment>
        <translation>Eine Verschlussplatte leckt</translation>
    </message>
    <message>
        <source>It looks like a crank seal. Soapy water there first.</source>
        <extracomment>crankcase, then</extracomment>
        <translation>Es sieht nach einem Wellendichtring aus. Dort zuerst Seifenwasser.</translation>
    </message>
    <message>
        <source>Leak-down pressure in the crankcase</source>
        <extracomment>crankcase, slip</extracomment>
        <translation>Druck der Druckverlustprüfung im Kurbelgehäuse</translation>
    </message>
    <message>
        <source>It pushes seals out of their seats. Use what the engine&apos;s manual gives.</source>
        <extracomment>crankcase, then</extracomment>
        <translation>Er drückt Dichtringe aus ihren Sitzen. Nehmen, was das Handbuch des Motors angibt.</translation>
    </message>
    <message>
        <source>The test and its exits</source>
        <extracomment>crankcase, for</extracomment>
        <translation>Die Prüfung und ihre Austritte</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <extracomment>decompressor, title</extracomment>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>A low cranking reading is no proof of a leak</source>
        <extracomment>decompressor, brief</extracomment>
        <translation>Ein niedriger Kompressionswert ist kein Beweis für ein Leck</translation>
    </message>
    <message>
        <source>A decompressor lets pressure out on purpose so that the engine turns easily. With one working, cranking readings of 57 to 85 psi (3.9 to 5.9 bar) are published for sound engines.</source>
        <extracomment>decompressor, why</extracomment>
        <translation>Ein Dekompressor lässt absichtlich Druck ab, damit sich der Motor leicht dreht. Arbeitet einer, sind für heile Motoren Kompressionswerte von 57 bis 85 psi (3,9 bis 5,9 bar) veröffentlicht.</translation>
    </message>
    <message>
        <source>Say on the engine card whether there is none, a manual or an automatic one.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Auf der Motorkarte angeben, ob es keinen, einen von Hand betätigten oder einen automatischen gibt.</translation>
    </message>
    <message>
        <source>Manual: put it off for the whole test, and see that it stays off.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Von Hand: für die ganze Prüfung ausschalten und darauf achten, dass er aus bleibt.</translation>
    </message>
    <message>
        <source>Automatic: it works at cranking speed and can&apos;t be put off. Compare its cylinders with each other only, never with a limit.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Automatisch: Er arbeitet bei Anlasserdrehzahl und lässt sich nicht ausschalten. Seine Zylinder nur miteinander vergleichen, nie mit einem Grenzwert.</translation>
    </message>
    <message>
        <source>Use leak-down to find out whether the cylinder seals. Note air at the decompressor as an exit of its own.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Mit der Druckverlustprüfung herausfinden, ob der Zylinder dichtet. Luft am Dekompressor als eigenen Austritt notieren.</translation>
    </message>
    <message>
        <source>Low by cranking, little leakage</source>
        <extracomment>decompressor, sign</extracomment>
        <translation>Niedrig beim Durchdrehen, wenig Druckverlust</translation>
    </message>
    <message>
        <source>the decompressor did its work</source>
        <extracomment>decompressor, means</extracomment>
        <translation>der Dekompressor hat seine Arbeit getan</translation>
    </message>
    <message>
        <source>Air at the decompressor in leak-down</source>
        <extracomment>decompressor, sign</extracomment>
        <translation>Luft am Dekompressor bei der Druckverlustprüfung</translation>
    </message>
    <message>
        <source>it does not shut</source>
        <extracomment>decompressor, means</extracomment>
        <translation>er schließt nicht</translation>
    </message>
    <message>
        <source>Decompressor forgotten</source>
        <extracomment>decompressor, slip</extracomment>
        <translation>Dekompressor vergessen</translation>
    </message>
    <message>
        <source>Every cylinder reads far too low, and nothing leaks.</source>
        <extracomment>decompressor, then</extracomment>
        <translation>Jeder Zylinder zeigt viel zu wenig, und nichts ist undicht.</translation>
    </message>
    <message>
        <source>Held against the factory limit</source>
        <extracomment>decompressor, slip</extracomment>
        <translation>Am Werksgrenzwert gemessen</translation>
    </message>
    <message>
        <source>The limit was written for an engine without one working, unless the engine&apos;s manual says so.</source>
        <extracomment>decompressor, then</extracomment>
        <translation>Der Grenzwert gilt für einen Motor, an dem keiner arbeitet, wenn das Handbuch des Motors nichts anderes sagt.</translation>
    </message>
    <message>
        <source>57 to 85 psi</source>
        <extracomment>decompressor, for</extracomment>
        <translation>57 bis 85 psi</translation>
    </message>
    <message>
        <source>The rest</source>
        <extracomment>decompressor, for</extracomment>
        <translation>Der Rest</translation>
    </message>
    <message>
        <source>Diesel</source>
        <extracomment>diesel, title</extracomment>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>Higher gauge, other adapters, fuel cut off, no wet test</source>
        <extracomment>diesel, brief</extracomment>
        <translation>Manometer mit größerem Bereich, andere Adapter, Kraftstoff abgestellt, keine Nassprüfung</translation>
    </message>
    <message>
        <source>A diesel reads far higher than a petrol engine. It needs a gauge for 40 bar or more and an adapter in place of the injector or the glow plug, and it must not fire into the gauge.</source>
        <extracomment>diesel, why</extracomment>
        <translation>Ein Diesel zeigt weit mehr als ein Benzinmotor. Er braucht ein Manometer für 40 bar oder mehr und einen Adapter anstelle der Einspritzdüse oder der Glühkerze, und er darf nicht ins Manometer zünden.</translation>
    </message>
    <message>
        <source>Its chamber is so small that oil locks it, and oil can fire: no wet test on a diesel, and no oil into its bores beforehand.</source>
        <extracomment>diesel, why</extracomment>
        <translation>Sein Brennraum ist so klein, dass Öl den Motor blockiert, und Öl kann zünden: keine Nassprüfung am Diesel, und auch vorher kein Öl in seine Bohrungen.</translation>
    </message>
    <message>
        <source>Say &quot;diesel&quot; on the engine card: the app then leaves out what does not belong.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Auf der Motorkarte „Diesel“ angeben: Die App lässt dann weg, was nicht dazugehört.</translation>
    </message>
    <message>
        <source>Cut the fuel off as the engine&apos;s manual says. Prove it with everything still closed: crank, and it must not fire.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Den Kraftstoff abstellen, wie es das Handbuch des Motors sagt. Das nachweisen, solange alles noch geschlossen ist: durchdrehen, und er darf nicht zünden.</translation>
    </message>
    <message>
        <source>Cranking builds up pressure in lines and rail. Let it off as the manual says, and wait as long as it says, before anything is opened.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Durchdrehen baut Druck in Leitungen und Rail auf. Ihn abbauen, wie es das Handbuch sagt, und so lange warten, wie es sagt, bevor etwas geöffnet wird.</translation>
    </message>
    <message>
        <source>Take the supply off the glow plugs and insulate its ends.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Die Stromzuleitung der Glühkerzen abnehmen und ihre Enden isolieren.</translation>
    </message>
    <message>
        <source>Take out all injectors or all glow plugs, as the manual says.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Alle Einspritzdüsen oder alle Glühkerzen herausnehmen, wie es das Handbuch sagt.</translation>
    </message>
    <message>
        <source>Screw in the adapter made for that hole, turn the engine two turns by hand: nothing may touch.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Den Adapter einschrauben, der für dieses Loch gemacht ist, den Motor zwei Umdrehungen von Hand durchdrehen: Nichts darf anstoßen.</translation>
    </message>
    <message>
        <source>Crank at full battery and note the speed if you can. 350 to 430 psi (24 to 30 bar) at 250 to 290 rpm is published; the engine&apos;s own manual comes first.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Mit voller Batterie durchdrehen und die Drehzahl notieren, wenn möglich. Veröffentlicht sind 350 bis 430 psi (24 bis 30 bar) bei 250 bis 290 U/min; das eigene Handbuch des Motors geht vor.</translation>
    </message>
    <message>
        <source>For rings or valves use leak-down and the Leak hunt.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Für Kolbenringe oder Ventile Druckverlustprüfung und Lecksuche nehmen.</translation>
    </message>
    <message>
        <source>Petrol gauge on a diesel</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Manometer für Benziner am Diesel</translation>
    </message>
    <message>
        <source>The needle goes past its end and the gauge is spoilt.</source>
        <extracomment>diesel, then</extracomment>
        <translation>Der Zeiger geht über sein Ende hinaus, und das Manometer ist beschädigt.</translation>
    </message>
    <message>
        <source>Line opened under pressure</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Leitung unter Druck geöffnet</translation>
    </message>
    <message>
        <source>The jet goes through skin. However small the wound looks: to a hospital at once.</source>
        <extracomment>diesel, then</extracomment>
        <translation>Der Strahl geht durch die Haut. So klein die Wunde auch aussieht: sofort ins Krankenhaus.</translation>
    </message>
    <message>
        <source>Fuel not cut off</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Kraftstoff nicht abgestellt</translation>
    </message>
    <message>
        <source>The cylinder fires into the gauge, or hot gas and fuel leave the open holes.</source>
        <extracomment>diesel, then</extracomment>
        <translation>Der Zylinder zündet ins Manometer, oder heißes Gas und Kraftstoff kommen aus den offenen Löchern.</translation>
    </message>
    <message>
        <source>Oil put in</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Öl eingefüllt</translation>
    </message>
    <message>
        <source>It can&apos;t be compressed, locks the engine and bends a rod; or it fires.</source>
        <extracomment>diesel, then</extracomment>
        <translation>Es lässt sich nicht verdichten, blockiert den Motor und verbiegt ein Pleuel; oder es zündet.</translation>
    </message>
    <message>
        <source>The cylinder reads low. Soapy water shows it.</source>
        <extracomment>diesel, then</extracomment>
        <translation>Der Zylinder zeigt zu wenig. Seifenwasser zeigt es.</translation>
    </message>
    <message>
        <source>Cranking speed decides the reading. Battery first.</source>
        <extracomment>diesel, then</extracomment>
        <translation>Die Anlasserdrehzahl entscheidet über den Messwert. Erst die Batterie.</translation>
    </message>
    <message>
        <source>350 to 430 psi at 250 to 290 rpm</source>
        <extracomment>diesel, for</extracomment>
        <translation>350 bis 430 psi bei 250 bis 290 U/min</translation>
    </message>
    <message>
        <source>Gauge, adapters, fuel, lines under pressure, glow plugs, no oil</source>
        <extracomment>diesel, for</extracomment>
        <translation>Manometer, Adapter, Kraftstoff, Leitungen unter Druck, Glühkerzen, kein Öl</translation>
    </message>
</context>
<context>
    <name>RepeatSheet</name>
    <message>
        <source>Oil went in since</source>
        <translation>Inzwischen kam Öl hinein</translation>
    </message>
    <message>
        <source>What is different?</source>
        <translation>Was ist anders?</translation>
    </message>
    <message>
        <source>Oil stays on the rings and helps them to seal. What is read now can&apos;t be averaged with what was read before it: it is kept beside it, and not counted.</source>
        <translation>Öl bleibt an den Ringen und hilft ihnen abzudichten. Was jetzt abgelesen wird, lässt sich nicht mit dem von vorher mitteln: Es bleibt daneben erhalten und zählt nicht.</translation>
    </message>
    <message>
        <source>With another throttle, a warmer engine or another gauge the two can&apos;t be averaged: they belong in two sessions.</source>
        <translation>Mit anderer Drosselklappenstellung, wärmerem Motor oder anderem Manometer lassen sich die beiden nicht mitteln: Sie gehören in zwei Sitzungen.</translation>
    </message>
    <message>
        <source>Oil was used since: keep apart</source>
        <translation>Inzwischen Öl benutzt: getrennt halten</translation>
    </message>
    <message>
        <source>Something else changed: new session</source>
        <translation>Etwas anderes geändert: neue Sitzung</translation>
    </message>
    <message>
        <source>Nothing changed: keep both</source>
        <translation>Nichts geändert: beide behalten</translation>
    </message>
    <message>
        <source>The first was wrong: replace it</source>
        <translation>Die erste war falsch: ersetzen</translation>
    </message>
    <message>
        <source>Keep as read after oil</source>
        <translation>Als nach Öl abgelesen behalten</translation>
    </message>
    <message>
        <source>Something changed: new session</source>
        <translation>Etwas geändert: neue Sitzung</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>In short</source>
        <translation>In Kürze</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <translation>Wo es undicht ist</translation>
    </message>
    <message>
        <source>Worth doing next</source>
        <translation>Was sich als Nächstes lohnt</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was gemacht wurde</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Factory limits at this shop</source>
        <translation>Werksgrenzwerte in dieser Werkstatt</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Notes and second opinions</source>
        <translation>Notizen und zweite Meinungen</translation>
    </message>
    <message>
        <source>Typed</source>
        <translation>Eingetippt</translation>
    </message>
    <message>
        <source>needle set by hand</source>
        <translation>Zeiger von Hand gesetzt</translation>
    </message>
    <message>
        <source>The needle reads</source>
        <translation>Der Zeiger zeigt</translation>
    </message>
    <message>
        <source>Needle not read</source>
        <translation>Zeiger nicht abgelesen</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Zu</translation>
    </message>
    <message>
        <source>Opinion</source>
        <translation>Meinung</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>This photo is not stored here.</source>
        <translation>Dieses Foto ist hier nicht gespeichert.</translation>
    </message>
    <message>
        <source>Where air was heard or felt</source>
        <translation>Wo Luft gehört oder gefühlt wurde</translation>
    </message>
    <message>
        <source>Crankcase hold test</source>
        <translation>Kurbelgehäuse-Druckhalteprüfung</translation>
    </message>
    <message>
        <source>What the readings say</source>
        <translation>Was die Messwerte sagen</translation>
    </message>
    <message>
        <source>To be answered before any verdict</source>
        <translation>Vor jedem Urteil zu klären</translation>
    </message>
    <message>
        <source>Contradictions</source>
        <translation>Widersprüche</translation>
    </message>
    <message>
        <source>What makes these readings worth less</source>
        <translation>Was diese Messwerte weniger wert macht</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historie</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Not done in Prepare</source>
        <translation>In der Vorbereitung nicht getan</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>How sure the numbers are</source>
        <translation>Wie sicher die Zahlen sind</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Rules published in</source>
        <translation>Regeln veröffentlicht in</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Besitzer</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Run so far</source>
        <translation>Bisherige Laufleistung</translation>
    </message>
    <message>
        <source>Report made</source>
        <translation>Bericht erstellt</translation>
    </message>
    <message>
        <source>Symptoms</source>
        <translation>Symptome</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>In den Worten des Besitzers</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Retest planned</source>
        <translation>Nachprüfung geplant</translation>
    </message>
    <message>
        <source>Owner&apos;s answer</source>
        <translation>Antwort des Besitzers</translation>
    </message>
    <message>
        <source>Dry test</source>
        <translation>Trockenprüfung</translation>
    </message>
    <message>
        <source>Leak-down</source>
        <translation>Druckverlustprüfung</translation>
    </message>
    <message>
        <source>Wet test</source>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>First puff</source>
        <translation>Erster Hub</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Too far below the highest</source>
        <translation>Zu weit unter dem höchsten</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>set</source>
        <translation>eingestellt</translation>
    </message>
    <message>
        <source>Same leak at</source>
        <translation>Gleiches Leck bei</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>Without the hose</source>
        <translation>Ohne den Schlauch</translation>
    </message>
    <message>
        <source>Oil&apos;s volume alone</source>
        <translation>Ölvolumen allein</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Left at</source>
        <translation>Eingestellt auf</translation>
    </message>
    <message>
        <source>Wanted, cold</source>
        <translation>Sollwert, kalt</translation>
    </message>
    <message>
        <source>Normal range</source>
        <translation>Normalbereich</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <translation>Unterer Grenzwert</translation>
    </message>
    <message>
        <source>Most difference</source>
        <translation>Größter Unterschied</translation>
    </message>
    <message>
        <source>Lowest of highest, at least</source>
        <translation>Niedrigster zum höchsten, mindestens</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <translation>Größter Druckverlust</translation>
    </message>
    <message>
        <source>How they were set</source>
        <translation>Wie sie festgelegt wurden</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Entnommen aus</translation>
    </message>
    <message>
        <source>Points at</source>
        <translation>Weist auf</translation>
    </message>
    <message>
        <source>Held for</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>End pressure</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Drosselklappe</translation>
    </message>
    <message>
        <source>Induction</source>
        <translation>Ansaugung</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>Cranked by</source>
        <translation>Durchgedreht mit</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>Crank held by</source>
        <translation>Kurbelwelle gehalten durch</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>What it does to the readings</source>
        <translation>Was es mit den Messwerten macht</translation>
    </message>
    <message>
        <source>Neither done nor crossed out</source>
        <translation>Weder getan noch ausgeschlossen</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Last checks</source>
        <translation>Letzte Selbstprüfungen</translation>
    </message>
    <message>
        <source>Division</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>Hose and gauge</source>
        <translation>Schlauch und Manometer</translation>
    </message>
    <message>
        <source>Check valve at</source>
        <translation>Rückschlagventil sitzt</translation>
    </message>
    <message>
        <source>Valve core</source>
        <translation>Ventileinsatz</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>Restrictor</source>
        <translation>Drosselbohrung</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Wahl</translation>
    </message>
    <message>
        <source>Work and parts</source>
        <translation>Arbeit und Teile</translation>
    </message>
    <message>
        <source>Price and hours</source>
        <translation>Preis und Stunden</translation>
    </message>
    <message>
        <source>If left</source>
        <translation>Wenn es so bleibt</translation>
    </message>
    <message>
        <source>Comes to</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Quick fixes</source>
        <translation>Schnelle Abhilfe</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Zerlegen</translation>
    </message>
    <message>
        <source>Expected after repair</source>
        <translation>Nach der Reparatur erwartet</translation>
    </message>
    <message>
        <source>once run in</source>
        <translation>nach dem Einfahren</translation>
    </message>
    <message>
        <source>Under 1 % each</source>
        <translation>Je unter 1 %</translation>
    </message>
    <message>
        <source>Assumptions, version · sum of all data</source>
        <translation>Annahmen, Version · Summe aller Daten</translation>
    </message>
    <message>
        <source>Odds, seed</source>
        <translation>Wahrscheinlichkeiten, Startwert</translation>
    </message>
    <message>
        <source>Reading to expect</source>
        <translation>Zu erwartender Messwert</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>Its past</source>
        <translation>Vorgeschichte</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Arbeitsverfahren</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Bank angle</source>
        <translation>Bankwinkel</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Kühlung</translation>
    </message>
    <message>
        <source>Firing order</source>
        <translation>Zündfolge</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Hub</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>Exhaust port closes</source>
        <translation>Auslassschlitz schließt</translation>
    </message>
    <message>
        <source>Valves per cylinder</source>
        <translation>Ventile je Zylinder</translation>
    </message>
    <message>
        <source>Intake clearance</source>
        <translation>Spiel Einlass</translation>
    </message>
    <message>
        <source>Exhaust clearance</source>
        <translation>Spiel Auslass</translation>
    </message>
    <message>
        <source>Adjusters</source>
        <translation>Ventileinstellung</translation>
    </message>
    <message>
        <source>Valve timing</source>
        <translation>Steuerzeiten</translation>
    </message>
    <message>
        <source>Intake closes after BDC</source>
        <translation>Einlass schließt nach UT</translation>
    </message>
    <message>
        <source>Exhaust opens before BDC</source>
        <translation>Auslass öffnet vor UT</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <translation>Dekompressor</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <translation>Kerzengewinde</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <translation>Gewindelänge der Kerze</translation>
    </message>
    <message>
        <source>Home-made</source>
        <translation>Selbst gebaut</translation>
    </message>
    <message>
        <source>Never checked</source>
        <translation>Nie geprüft</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Every step of Prepare was done or not needed.</source>
        <translation>Jeder Schritt der Vorbereitung wurde getan oder war nicht nötig.</translation>
    </message>
    <message>
        <source>Nothing was measured in this session.</source>
        <translation>In dieser Sitzung wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>Sealing test</source>
        <translation>Dichtheitsprüfung</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Dry and wet test: the piston line stands at the final reading, all in one scale. Leak-down: it stands at the part of the set pressure that the cylinder held; the figure is what it lost.</source>
        <translation>Trocken- und Nassprüfung: Die Kolbenlinie steht beim Endwert, alle auf einer Skala. Druckverlustprüfung: Sie steht bei dem Teil des eingestellten Drucks, den der Zylinder hielt; die Zahl ist, was er verlor.</translation>
    </message>
    <message>
        <source>The figure behind ± is half of the 95 % interval: of twenty such readings nineteen lie within it. It counts the gauge&apos;s class and scale, how finely it was read and how repeats scatter.</source>
        <translation>Die Zahl hinter ± ist die Hälfte des 95-%-Intervalls: Von zwanzig solchen Messwerten liegen neunzehn darin. Sie berücksichtigt Klasse und Skala des Manometers, wie fein abgelesen wurde und wie Wiederholungen streuen.</translation>
    </message>
    <message>
        <source>All readings of one gauge share most of its error, so cylinders can be compared more closely than either can be held against a limit.</source>
        <translation>Alle Messwerte eines Manometers teilen den größten Teil seines Fehlers; deshalb lassen sich Zylinder genauer miteinander vergleichen als jeder mit einem Grenzwert.</translation>
    </message>
    <message>
        <source>A verdict follows the figure as read; one that passes the maker&apos;s limit by less than its own uncertainty is called borderline. A reading that a hose, a closed throttle, a cold engine or a weak battery lowered is put right first.</source>
        <translation>Ein Urteil folgt der abgelesenen Zahl; eine, die den Grenzwert des Herstellers um weniger als ihre eigene Unsicherheit einhält, heißt grenzwertig. Ein Messwert, den ein Schlauch, eine geschlossene Drosselklappe, ein kalter Motor oder eine schwache Batterie gesenkt hat, wird vorher berichtigt.</translation>
    </message>
    <message>
        <source>Percentages of testers with different set pressures can&apos;t be compared as they stand. &quot;Same leak at&quot; is what another tester would show on the same leak, from an orifice-like leak to a long narrow gap.</source>
        <translation>Prozentwerte von Prüfgeräten mit verschiedenen eingestellten Drücken sind so, wie sie dastehen, nicht vergleichbar. „Gleiches Leck bei“ ist, was ein anderes Prüfgerät am selben Leck zeigen würde, von einem blendenartigen Leck bis zu einem langen engen Spalt.</translation>
    </message>
    <message>
        <source>&quot;Oil&apos;s volume alone&quot; is a range because nobody knows how much of the oil stayed in the chamber. What gauge, scatter and engine add to the doubt is not in it.</source>
        <translation>„Ölvolumen allein“ ist ein Bereich, weil niemand weiß, wie viel Öl in der Kammer blieb. Was Manometer, Streuung und Motor an Unsicherheit beitragen, ist darin nicht enthalten.</translation>
    </message>
    <message>
        <source>Odds say how likely it is that a cylinder leaks more than a sound one, and mostly there. A bar shows how what it leaks, much or little, is shared, as far as that is sure; its empty part is open. Beside each share stands the range that holds it in nine cases of ten. A range expected after a repair holds the reading as often. Odds are rounded to 5 % and never shown above 95 %.</source>
        <translation>Wahrscheinlichkeiten sagen, wie wahrscheinlich ein Zylinder mehr verliert als ein heiler, und das vor allem dort. Ein Balken zeigt, wie sich das aufteilt, was er verliert, ob viel oder wenig, soweit das sicher ist; sein leerer Teil ist offen. Neben jedem Anteil steht der Bereich, der ihn in neun von zehn Fällen enthält. Ein nach der Reparatur erwarteter Bereich enthält den Messwert ebenso oft. Wahrscheinlichkeiten sind auf 5 % gerundet und nie über 95 % gezeigt.</translation>
    </message>
    <message>
        <source>How likely each is rests on the app&apos;s working assumptions; it was not yet counted on real engines.</source>
        <translation>Wie wahrscheinlich etwas ist, beruht auf den Annahmen der App; an wirklichen Motoren wurde es noch nicht ausgezählt.</translation>
    </message>
    <message>
        <source>For the mechanic:</source>
        <translation>Für die Werkstatt:</translation>
    </message>
    <message>
        <source>After a repair the reading is expected within its range in nine cases of ten.</source>
        <translation>Nach einer Reparatur liegt der Messwert in neun von zehn Fällen in seinem erwarteten Bereich.</translation>
    </message>
    <message>
        <source>Rules of thumb stand here in their own words, each with its own verdict. They can disagree.</source>
        <translation>Faustregeln stehen hier in ihren eigenen Worten, jede mit ihrem eigenen Urteil. Sie können sich widersprechen.</translation>
    </message>
    <message>
        <source>Where limits and engine data come from stands beside them. The report with its appendix for a mentor names the source of every rule and formula and shows how each number was made.</source>
        <translation>Woher Grenzwerte und Motordaten stammen, steht bei ihnen. Der Bericht mit Anhang für einen Mentor nennt die Quelle jeder Regel und Formel und zeigt, wie jede Zahl entstand.</translation>
    </message>
    <message>
        <source>A number at a line&apos;s end is its cylinder; a whisker is the 95 % doubt. A dry test&apos;s whisker also holds what readings scatter by from one day to the next, which the ± in the tables leaves out, so it is longer. A line breaks where a repair lies between. Open marks can&apos;t be compared with the rest. All in the newest visit&apos;s terms.</source>
        <translation>Eine Zahl am Ende einer Linie ist ihr Zylinder; ein Strich ist die Unsicherheit von 95 %. Bei der Trockenprüfung enthält er auch, wie weit Messwerte von einem Tag zum anderen streuen, was das ± in den Tabellen weglässt; darum ist er länger. Wo eine Reparatur dazwischenliegt, ist die Linie unterbrochen. Offene Zeichen sind mit dem Rest nicht vergleichbar. Alles nach den Maßstäben des neuesten Termins.</translation>
    </message>
</context>
<context>
    <name>RetestSheet</name>
    <message>
        <source>Retest</source>
        <translation>Nachprüfung</translation>
    </message>
    <message>
        <source>Cold against cold, with the same gauge; after new rings not before they have run in.</source>
        <translation>Kalt gegen kalt, mit demselben Manometer; nach neuen Kolbenringen nicht, bevor sie eingefahren sind.</translation>
    </message>
    <message>
        <source>In a month</source>
        <translation>In einem Monat</translation>
    </message>
    <message>
        <source>In three months</source>
        <translation>In drei Monaten</translation>
    </message>
    <message>
        <source>In a year</source>
        <translation>In einem Jahr</translation>
    </message>
    <message>
        <source>No retest</source>
        <translation>Keine Nachprüfung</translation>
    </message>
    <message>
        <source>Or on this day</source>
        <translation>Oder an diesem Tag</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>ScrubBar</name>
    <message>
        <source>Place in the voice note, %1 %</source>
        <translation>Stelle in der Sprachnotiz, %1 %</translation>
    </message>
</context>
<context>
    <name>SecondOpinionPage</name>
    <message>
        <source>Second opinion</source>
        <translation>Zweite Meinung</translation>
    </message>
    <message>
        <source>Look at these first</source>
        <translation>Das zuerst ansehen</translation>
    </message>
    <message>
        <source>The session itself</source>
        <translation>Die Sitzung selbst</translation>
    </message>
    <message>
        <source>To test and record here</source>
        <translation>Hier zu prüfen und zu erfassen</translation>
    </message>
    <message>
        <source>What was measured can&apos;t be changed on this page. Your remarks go back with the session file.</source>
        <translation>Was gemessen wurde, lässt sich auf dieser Seite nicht ändern. Die Bemerkungen gehen mit der Sitzungsdatei zurück.</translation>
    </message>
    <message>
        <source>Send back</source>
        <translation>Zurückschicken</translation>
    </message>
</context>
<context>
    <name>SessionAdvice</name>
    <message>
        <source>Worth doing next</source>
        <translation>Was sich als Nächstes lohnt</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Keep in mind</source>
        <translation>Zu bedenken</translation>
    </message>
</context>
<context>
    <name>SessionGone</name>
    <message>
        <source>This session is gone</source>
        <translation>Diese Sitzung ist weg</translation>
    </message>
    <message>
        <source>It was deleted, or Undo took it back. Go back to the list.</source>
        <translation>Sie wurde gelöscht oder rückgängig gemacht. Zurück zur Liste gehen.</translation>
    </message>
</context>
<context>
    <name>SessionName</name>
    <message>
        <source>Session, nothing measured</source>
        <translation>Sitzung, nichts gemessen</translation>
    </message>
</context>
<context>
    <name>SessionOpinions</name>
    <message>
        <source>Please test this</source>
        <translation>Bitte das prüfen</translation>
    </message>
    <message>
        <source>Asked for, and done</source>
        <translation>Erbeten und erledigt</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Test it now</source>
        <translation>Jetzt prüfen</translation>
    </message>
</context>
<context>
    <name>SessionPage</name>
    <message>
        <source>Photos and voice notes</source>
        <translation>Fotos und Sprachnotizen</translation>
    </message>
    <message>
        <source>Second opinion</source>
        <translation>Zweite Meinung</translation>
    </message>
    <message>
        <source>All of it with its photos, to remark on</source>
        <translation>Alles davon mit Fotos, um etwas anzumerken</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>How to, all cards</source>
        <translation>Anleitung, alle Karten</translation>
    </message>
    <message>
        <source>Calculators</source>
        <translation>Rechner</translation>
    </message>
    <message>
        <source>Delete this session</source>
        <translation>Diese Sitzung löschen</translation>
    </message>
    <message>
        <source>Delete this session?</source>
        <translation>Diese Sitzung löschen?</translation>
    </message>
    <message>
        <source>Its readings, photos and notes go with it. Undo brings them back, also later from More in the list of engines, until something else is done.</source>
        <translation>Ihre Messwerte, Fotos und Notizen gehen mit ihr. „Rückgängig“ holt sie zurück, auch später unter „Mehr“ in der Liste der Motoren, bis etwas anderes getan wird.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
</context>
<context>
    <name>SettingsHands</name>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>The amber button comes under the left thumb.</source>
        <translation>Die gelbe Taste kommt unter den linken Daumen.</translation>
    </message>
    <message>
        <source>Big keys</source>
        <translation>Große Tasten</translation>
    </message>
    <message>
        <source>The pad&apos;s keys grow for thick gloves.</source>
        <translation>Die Tasten des Eingabefelds wachsen für dicke Handschuhe.</translation>
    </message>
    <message>
        <source>The pad&apos;s keys grow for thick gloves. This screen has no room for more.</source>
        <translation>Die Tasten des Eingabefelds wachsen für dicke Handschuhe. Auf diesem Bildschirm ist kein Platz für mehr.</translation>
    </message>
    <message>
        <source>Tick on a key</source>
        <translation>Tastenvibration</translation>
    </message>
    <message>
        <source>Volume key keeps</source>
        <translation>Lautstärketaste behält</translation>
    </message>
    <message>
        <source>Keeps a reading without a look at the screen.</source>
        <translation>Behält einen Messwert ohne Blick auf den Bildschirm.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Lengths and clearances</source>
        <translation>Längen und Ventilspiel</translation>
    </message>
    <message>
        <source>inch and thou</source>
        <translation>Zoll und 1/1000″</translation>
    </message>
    <message>
        <source>What was typed stays in the unit that it was typed in.</source>
        <translation>Was eingetippt wurde, bleibt in der Einheit, in der es eingetippt wurde.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>workshop, dark</source>
        <translation>Werkstatt, dunkel</translation>
    </message>
    <message>
        <source>daylight, light</source>
        <translation>Tageslicht, hell</translation>
    </message>
    <message>
        <source>Text size, on top of the system&apos;s</source>
        <translation>Textgröße, zusätzlich zu der des Systems</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Notes and findings</source>
        <translation>Notizen und Befund</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Everything into one file, or back from one</source>
        <translation>Alles in eine Datei oder zurück aus einer</translation>
    </message>
    <message>
        <source>Known keys</source>
        <translation>Bekannte Schlüssel</translation>
    </message>
    <message>
        <source>Whose session files you know by name, and your own fingerprint</source>
        <translation>Wessen Sitzungsdateien mit Namen bekannt sind, und der eigene Fingerabdruck</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>Held against readings when the engine card has no factory limit.</source>
        <translation>Mit Messwerten verglichen, wenn die Motorkarte keinen Werksgrenzwert hat.</translation>
    </message>
    <message>
        <source>Working assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>Numbers of the app&apos;s own or of common practice.</source>
        <translation>Zahlen der App selbst oder aus üblicher Praxis.</translation>
    </message>
    <message>
        <source>Licences</source>
        <translation>Lizenzen</translation>
    </message>
    <message>
        <source>What the app is made of.</source>
        <translation>Woraus die App besteht.</translation>
    </message>
    <message>
        <source>Lapwing %1. Works without a network; nothing leaves this device by itself. The library lies in %2.</source>
        <translation>Lapwing %1. Arbeitet ohne Netz; nichts verlässt dieses Gerät von selbst. Der Bestand liegt in %2.</translation>
    </message>
</context>
<context>
    <name>SettingsPerson</name>
    <message>
        <source>Your name</source>
        <translation>Eigener Name</translation>
    </message>
    <message>
        <source>It stands beside the notes that you write, in session files too.</source>
        <translation>Er steht neben den eigenen Notizen, auch in Sitzungsdateien.</translation>
    </message>
    <message>
        <source>My call before the findings</source>
        <translation>Meine Einschätzung vor dem Befund</translation>
    </message>
    <message>
        <source>To learn: say where each cylinder leaks before the app does. What was committed stands.</source>
        <translation>Zum Lernen: sagen, wo jeder Zylinder undicht ist, bevor es die App tut. Was abgegeben wurde, gilt.</translation>
    </message>
</context>
<context>
    <name>ShareLegend</name>
    <message>
        <source>Share of the leak, with the range that holds it in nine cases of ten. The empty part of the bar is open:</source>
        <translation>Anteil am Leck, mit dem Bereich, der ihn in neun von zehn Fällen enthält. Der leere Teil des Balkens ist offen:</translation>
    </message>
</context>
<context>
    <name>Shell</name>
    <message>
        <source>This page can&apos;t be opened. Close Lapwing and start it again; if that doesn&apos;t help, install it anew. Nothing that was kept is lost.</source>
        <translation>Diese Seite lässt sich nicht öffnen. Lapwing schließen und neu starten; hilft das nicht, neu installieren. Was behalten wurde, ist nicht verloren.</translation>
    </message>
</context>
<context>
    <name>SignaturePanel</name>
    <message>
        <source>Fingerprint of the key</source>
        <translation>Fingerabdruck des Schlüssels</translation>
    </message>
    <message>
        <source>Whose key is it?</source>
        <translation>Wessen Schlüssel ist das?</translation>
    </message>
    <message>
        <source>Forget the name</source>
        <translation>Namen vergessen</translation>
    </message>
    <message>
        <source>Name this key</source>
        <translation>Schlüssel benennen</translation>
    </message>
    <message>
        <source>Unaltered means: since the holder of this key handed it over, no byte was changed. It does not say who that is, that a reading is true, or when it was taken.</source>
        <translation>„Unverändert“ heißt: Seit der Inhaber dieses Schlüssels sie übergeben hat, wurde kein Byte geändert. Es sagt nicht, wer das ist, dass ein Messwert wahr ist oder wann er aufgenommen wurde.</translation>
    </message>
</context>
<context>
    <name>Snack</name>
    <message>
        <source>Redo</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>SourceList</name>
    <message>
        <source>Touch to fold</source>
        <translation>Antippen zum Einklappen</translation>
    </message>
    <message>
        <source>Touch to read it all</source>
        <translation>Antippen, um alles zu lesen</translation>
    </message>
</context>
<context>
    <name>StakedPanel</name>
    <message>
        <source>Staked a valve?</source>
        <translation>Ventil freigeklopft?</translation>
    </message>
    <message>
        <source>Carbon under a valve can leak like a burnt one. A light tap on its stem can seat it again; then test once more. What you note now counts as a new state of the valve.</source>
        <translation>Ölkohle unter einem Ventil kann lecken wie ein verbranntes. Ein leichter Schlag auf den Schaft kann es wieder auf den Sitz bringen; dann noch einmal prüfen. Was jetzt notiert wird, zählt als neuer Zustand des Ventils.</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>After staking</source>
        <translation>Nach dem Freiklopfen</translation>
    </message>
</context>
<context>
    <name>States</name>
    <message>
        <source>in range</source>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>borderline</source>
        <translation>grenzwertig</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>measured, not judged</source>
        <translation>gemessen, nicht beurteilt</translation>
    </message>
    <message>
        <source>measured, your own call first</source>
        <translation>gemessen, erst die eigene Einschätzung</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, Zylinder %2</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Name the tester</source>
        <translation>Prüfgerät angeben</translation>
    </message>
    <message>
        <source>%1, new session</source>
        <translation>%1, neue Sitzung</translation>
    </message>
    <message>
        <source>%1, cylinder %2: kept</source>
        <translation>%1, Zylinder %2: behalten</translation>
    </message>
    <message>
        <source>%1, cylinder %2: measured again</source>
        <translation>%1, Zylinder %2: noch einmal gemessen</translation>
    </message>
    <message>
        <source>%1, cylinder %2: the photo&apos;s figure stands</source>
        <translation>%1, Zylinder %2: Es gilt der Wert vom Foto</translation>
    </message>
    <message>
        <source>%1, cylinder %2: the typed figure stands</source>
        <translation>%1, Zylinder %2: Es gilt der eingegebene Wert</translation>
    </message>
    <message>
        <source>%1, cylinder %2: added to</source>
        <translation>%1, Zylinder %2: ergänzt</translation>
    </message>
    <message>
        <source>%1, cylinder %2: reading deleted</source>
        <translation>%1, Zylinder %2: Messwert gelöscht</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: noted</source>
        <translation>Zylinder %1, %2: notiert</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: back to not listened</source>
        <translation>Zylinder %1, %2: wieder nicht gehorcht</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 clearance: kept</source>
        <translation>Zylinder %1, Ventilspiel %2: behalten</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 clearance: deleted</source>
        <translation>Zylinder %1, Ventilspiel %2: gelöscht</translation>
    </message>
    <message>
        <source>New session for %1</source>
        <translation>Neue Sitzung für %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Prepare: the rest is done</source>
        <translation>Vorbereitung: Der Rest ist erledigt</translation>
    </message>
    <message>
        <source>Session deleted</source>
        <translation>Sitzung gelöscht</translation>
    </message>
    <message>
        <source>Owner&apos;s answer noted</source>
        <translation>Antwort des Besitzers notiert</translation>
    </message>
    <message>
        <source>Retest noted</source>
        <translation>Nachprüfung notiert</translation>
    </message>
    <message>
        <source>Session changed</source>
        <translation>Sitzung geändert</translation>
    </message>
    <message>
        <source>%1 added</source>
        <translation>%1 angelegt</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 geändert</translation>
    </message>
    <message>
        <source>%1 deleted, with its sessions</source>
        <translation>%1 gelöscht, mit allen Sitzungen</translation>
    </message>
    <message>
        <source>%1: check noted</source>
        <translation>%1: Selbstprüfung notiert</translation>
    </message>
    <message>
        <source>%1 deleted</source>
        <translation>%1 gelöscht</translation>
    </message>
    <message>
        <source>%1 brought in</source>
        <translation>%1 eingelesen</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 behalten</translation>
    </message>
    <message numerus="yes">
        <source>%n photos without their place</source>
        <translation>
            <numerusform>%n Foto ohne seinen Ort</numerusform>
            <numerusform>%n Fotos ohne ihren Ort</numerusform>
        </translation>
    </message>
    <message>
        <source>One version stands</source>
        <translation>Eine Fassung gilt</translation>
    </message>
    <message>
        <source>Your call is committed</source>
        <translation>Die Einschätzung ist abgegeben</translation>
    </message>
    <message>
        <source>Taken into the plan: %1</source>
        <translation>In den Plan übernommen: %1</translation>
    </message>
    <message>
        <source>Line of the plan changed</source>
        <translation>Posten im Plan geändert</translation>
    </message>
    <message>
        <source>Tick changed</source>
        <translation>Haken geändert</translation>
    </message>
    <message>
        <source>Order of work changed</source>
        <translation>Reihenfolge der Arbeit geändert</translation>
    </message>
    <message>
        <source>Deleted</source>
        <translation>Gelöscht</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>StorageList</name>
    <message>
        <source>The files of these entries are missing. A backup or a session file that was handed over may still have them: restore it or bring it in.</source>
        <translation>Die Dateien dieser Einträge fehlen. Eine Sicherung oder eine übergebene Sitzungsdatei hat sie vielleicht noch: wiederherstellen oder einlesen.</translation>
    </message>
    <message>
        <source>Delete the entry</source>
        <translation>Eintrag löschen</translation>
    </message>
    <message>
        <source>No entry names these files. They stay until you decide.</source>
        <translation>Kein Eintrag nennt diese Dateien. Sie bleiben, bis darüber entschieden ist.</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie ablegen</translation>
    </message>
    <message>
        <source>Delete the file for good</source>
        <translation>Datei endgültig löschen</translation>
    </message>
    <message>
        <source>These voice notes were cut off, and their session was deleted meanwhile. Undo of that deletion and a new start of Lapwing keep them.</source>
        <translation>Diese Sprachnotizen brachen ab, und ihre Sitzung wurde inzwischen gelöscht. Das Löschen rückgängig machen und Lapwing neu starten behält sie.</translation>
    </message>
    <message>
        <source>Delete it for good</source>
        <translation>Endgültig löschen</translation>
    </message>
</context>
<context>
    <name>SwitchRow</name>
    <message>
        <source>on</source>
        <translation>an</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
</context>
<context>
    <name>TagChips</name>
    <message>
        <source>Shows the engines with this tag</source>
        <translation>Zeigt die Motoren mit diesem Schlagwort</translation>
    </message>
</context>
<context>
    <name>TesterAsk</name>
    <message>
        <source>Which gauge?</source>
        <translation>Welches Manometer?</translation>
    </message>
    <message>
        <source>Which tester?</source>
        <translation>Welches Prüfgerät?</translation>
    </message>
    <message>
        <source>How far a reading can be trusted hangs on it. Without one the app has to assume a usual one.</source>
        <translation>Daran hängt, wie weit einer Messung zu trauen ist. Ohne Angabe muss die App ein übliches annehmen.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Add one</source>
        <translation>Eines hinzufügen</translation>
    </message>
</context>
<context>
    <name>TesterCard</name>
    <message>
        <source>Full scale</source>
        <translation>Skalenendwert</translation>
    </message>
    <message>
        <source>The last figure on the dial. The scale starts at zero. Of a dial in % of leakage: the set pressure at which it shows 0 %.</source>
        <translation>Die letzte Zahl auf der Skala. Die Skala beginnt bei null. Bei einer Skala in % Verlust: der eingestellte Druck, bei dem sie 0 % zeigt.</translation>
    </message>
    <message>
        <source>Class by</source>
        <translation>Klasse nach</translation>
    </message>
    <message>
        <source>As printed on the dial. Without one the app assumes a plain workshop gauge.</source>
        <translation>Wie aufs Zifferblatt gedruckt. Ohne nimmt die App ein einfaches Werkstattmanometer an.</translation>
    </message>
    <message>
        <source>Accuracy class</source>
        <translation>Genauigkeitsklasse</translation>
    </message>
    <message>
        <source>EN 837-1: 1.6 or 2.5, a percentage of the span. ASME B40.100: a grade from A to D.</source>
        <translation>EN 837-1: 1,6 oder 2,5, ein Prozentwert der Messspanne. ASME B40.100: eine Stufe von A bis D.</translation>
    </message>
    <message>
        <source>Smallest division</source>
        <translation>Kleinster Teilstrich</translation>
    </message>
    <message>
        <source>Needle at rest shows</source>
        <translation>Zeiger in Ruhe zeigt</translation>
    </message>
    <message>
        <source>Sweep of the scale</source>
        <translation>Winkelbereich der Skala</translation>
    </message>
    <message>
        <source>From zero to full scale, often 270 degrees. Helps to read photos.</source>
        <translation>Von null bis zum Skalenendwert, oft 270 Grad. Hilft beim Ablesen von Fotos.</translation>
    </message>
    <message>
        <source>Hose and check valve</source>
        <translation>Schlauch und Rückschlagventil</translation>
    </message>
    <message>
        <source>Hose and gauge hold</source>
        <translation>Schlauch und Manometer fassen</translation>
    </message>
    <message>
        <source>Fill them with water and measure it. A large volume after the check valve costs pulls.</source>
        <translation>Mit Wasser füllen und dieses messen. Ein großes Volumen hinter dem Rückschlagventil kostet Hübe.</translation>
    </message>
    <message>
        <source>Check valve sits at the</source>
        <translation>Sitz des Rückschlagventils</translation>
    </message>
    <message>
        <source>At the gauge end the hose adds to the chamber and the reading comes out low.</source>
        <translation>Manometerseitig vergrößert der Schlauch den Brennraum, und der Messwert wird zu niedrig.</translation>
    </message>
    <message>
        <source>Valve core</source>
        <translation>Ventileinsatz</translation>
    </message>
    <message>
        <source>A tyre valve core needs pressure to open and takes it off the reading.</source>
        <translation>Ein Reifenventileinsatz braucht Druck zum Öffnen und nimmt ihn vom Messwert weg.</translation>
    </message>
    <message>
        <source>Adapter %1: %2</source>
        <translation>Adapter %1: %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Gewindelänge</translation>
    </message>
    <message>
        <source>It must not touch piston or valve: turn the engine two turns by hand.</source>
        <translation>Er darf Kolben oder Ventil nicht berühren: den Motor zwei Umdrehungen von Hand durchdrehen.</translation>
    </message>
    <message>
        <source>Adds a volume of</source>
        <translation>Zusätzliches Volumen</translation>
    </message>
    <message>
        <source>Seals by</source>
        <translation>Dichtet mit</translation>
    </message>
    <message>
        <source>Take this adapter out</source>
        <translation>Diesen Adapter herausnehmen</translation>
    </message>
    <message>
        <source>More adapters</source>
        <translation>Weitere Adapter</translation>
    </message>
    <message>
        <source>Add an adapter</source>
        <translation>Adapter hinzufügen</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>A second gauge before the restrictor</source>
        <translation>Zweites Manometer vor der Drosselbohrung</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>What it is usually set to with the outlet blocked.</source>
        <translation>Worauf es bei verschlossenem Ausgang üblicherweise eingestellt wird.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <translation>Durchmesser der Drosselbohrung</translation>
    </message>
    <message>
        <source>Often 1 mm. Readings are converted by it; the drilled hole checks it.</source>
        <translation>Oft 1 mm. Damit werden Messwerte umgerechnet; das Prüfloch prüft sie.</translation>
    </message>
    <message>
        <source>Restrictor length</source>
        <translation>Länge der Drosselbohrung</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <translation>Durchflussbeiwert</translation>
    </message>
    <message>
        <source>Leave it empty if you don&apos;t know: the app assumes one.</source>
        <translation>Leer lassen, wenn unbekannt: Die App nimmt einen an.</translation>
    </message>
    <message>
        <source>Gauge before the restrictor</source>
        <translation>Manometer vor der Drosselbohrung</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Prüfgerät</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Home-made</source>
        <translation>Selbst gebaut</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Gauge after the restrictor</source>
        <translation>Manometer nach der Drosselbohrung</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>Air and restrictor</source>
        <translation>Luft und Drosselbohrung</translation>
    </message>
</context>
<context>
    <name>TesterCardPage</name>
    <message>
        <source>Testers</source>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>This tester is gone</source>
        <translation>Dieses Prüfgerät ist weg</translation>
    </message>
    <message>
        <source>It was deleted. Undo brings it back; otherwise go back to the list.</source>
        <translation>Es wurde gelöscht. „Rückgängig“ holt es zurück; sonst zurück zur Liste.</translation>
    </message>
    <message>
        <source>Self-checks</source>
        <translation>Selbstprüfungen</translation>
    </message>
    <message>
        <source>Before you blame the engine.</source>
        <translation>Bevor der Motor beschuldigt wird.</translation>
    </message>
    <message numerus="yes">
        <source>It can&apos;t be deleted: %n sessions and readings were taken with it, and their figures need it. If it is no longer used, say so in its name, so that nobody takes it by mistake.</source>
        <translation>
            <numerusform>Er kann nicht gelöscht werden: Eine Sitzung oder ein Messwert wurde mit ihm genommen und braucht ihn für die Zahlen. Wird er nicht mehr benutzt, das im Namen sagen, damit ihn niemand aus Versehen nimmt.</numerusform>
            <numerusform>Er kann nicht gelöscht werden: %n Sitzungen und Messwerte wurden mit ihm genommen, und ihre Zahlen brauchen ihn. Wird er nicht mehr benutzt, das im Namen sagen, damit ihn niemand aus Versehen nimmt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Change its name</source>
        <translation>Namen ändern</translation>
    </message>
    <message>
        <source>Delete this tester</source>
        <translation>Dieses Prüfgerät löschen</translation>
    </message>
    <message>
        <source>Delete %1?</source>
        <translation>%1 löschen?</translation>
    </message>
    <message>
        <source>Its dial and its checks go with it. No session and no reading was taken with it. Undo brings it back, also later from More, until something else is done.</source>
        <translation>Seine Skala und seine Prüfungen gehen mit ihm. Keine Sitzung und kein Messwert wurde mit ihm genommen. „Rückgängig“ holt ihn zurück, auch später unter „Mehr“, bis etwas anderes getan wird.</translation>
    </message>
    <message>
        <source>Check: %1</source>
        <translation>Prüfen: %1</translation>
    </message>
</context>
<context>
    <name>TesterCheckSheet</name>
    <message>
        <source>Drilled hole</source>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>The reference shows</source>
        <translation>Die Referenz zeigt</translation>
    </message>
    <message>
        <source>This gauge shows</source>
        <translation>Dieses Manometer zeigt</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>The gauge shows</source>
        <translation>Das Manometer zeigt</translation>
    </message>
    <message>
        <source>Last time: %1</source>
        <translation>Letztes Mal: %1</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Failed</source>
        <translation>Nicht bestanden</translation>
    </message>
    <message>
        <source>Passed</source>
        <translation>Bestanden</translation>
    </message>
</context>
<context>
    <name>TesterChecks</name>
    <message>
        <source>Outlet blocked</source>
        <translation>Ausgang verschlossen</translation>
    </message>
    <message>
        <source>Holds after cranking</source>
        <translation>Hält nach dem Durchdrehen</translation>
    </message>
    <message>
        <source>Needle at rest</source>
        <translation>Zeiger in Ruhe</translation>
    </message>
    <message>
        <source>Drilled hole</source>
        <translation>Prüfloch</translation>
    </message>
    <message>
        <source>Against a reference</source>
        <translation>Gegen eine Referenz</translation>
    </message>
    <message>
        <source>Close the outlet and pump to the set pressure: the needle must not sink.</source>
        <translation>Den Ausgang verschließen und auf den eingestellten Druck pumpen: Der Zeiger darf nicht sinken.</translation>
    </message>
    <message>
        <source>Close the outlet: it must read 0 % leakage.</source>
        <translation>Den Ausgang verschließen: Es muss 0 % Druckverlust zeigen.</translation>
    </message>
    <message>
        <source>After cranking the gauge must not sink. If it does, the check valve or an O-ring leaks and every reading is low.</source>
        <translation>Nach dem Durchdrehen darf das Manometer nicht sinken. Tut es das doch, leckt das Rückschlagventil oder ein O-Ring, und jeder Messwert ist zu niedrig.</translation>
    </message>
    <message>
        <source>With no pressure the needle must stand at zero. Type what it shows.</source>
        <translation>Ohne Druck muss der Zeiger auf null stehen. Eingeben, was er zeigt.</translation>
    </message>
    <message>
        <source>Put a plate with a drilled hole of known diameter at the outlet, set the usual pressure and type what is held. It shows how much air the restrictor passes.</source>
        <translation>Eine Platte mit einem Prüfloch bekannten Durchmessers an den Ausgang setzen, den üblichen Druck einstellen und eingeben, was gehalten wird. Es zeigt, wie viel Luft die Drosselbohrung durchlässt.</translation>
    </message>
    <message>
        <source>Put a gauge that you trust on the same line and type what both show.</source>
        <translation>Ein vertrauenswürdiges Manometer an dieselbe Leitung setzen und eingeben, was beide zeigen.</translation>
    </message>
    <message>
        <source>Never checked</source>
        <translation>Nie geprüft</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>eingestellt %1</translation>
    </message>
    <message>
        <source>showed %1</source>
        <translation>zeigte %1</translation>
    </message>
</context>
<context>
    <name>TestersPage</name>
    <message>
        <source>Testers</source>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>No tester yet</source>
        <translation>Noch kein Prüfgerät</translation>
    </message>
    <message>
        <source>A reading is only as good as its gauge. Type the gauge in once: range, class, hose. Home-made ones are normal.</source>
        <translation>Ein Messwert ist nur so gut wie sein Manometer. Das Prüfgerät einmal eingeben: Bereich, Klasse, Schlauch. Selbst gebaute sind normal.</translation>
    </message>
    <message>
        <source>Add a tester</source>
        <translation>Prüfgerät anlegen</translation>
    </message>
</context>
<context>
    <name>Trouble</name>
    <message>
        <source>Lapwing</source>
        <translation>Lapwing</translation>
    </message>
    <message>
        <source>The library can&apos;t be opened</source>
        <translation>Der Bestand lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Close Lapwing</source>
        <translation>Lapwing schließen</translation>
    </message>
</context>
<context>
    <name>UndoCorner</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>UnitSheet</name>
    <message>
        <source>Which unit?</source>
        <translation>Welche Einheit?</translation>
    </message>
</context>
<context>
    <name>VersionFields</name>
    <message>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>In der Datei</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nichts notiert</translation>
    </message>
</context>
<context>
    <name>Visit</name>
    <message>
        <source>Symptoms</source>
        <translation>Symptome</translation>
    </message>
    <message>
        <source>Distance or hours run</source>
        <translation>Laufstrecke oder Betriebsstunden</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>As found, after the repair, a year later.</source>
        <translation>Wie vorgefunden, nach der Reparatur, ein Jahr später.</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>In den Worten des Besitzers</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Warm or cold</source>
        <translation>Warm oder kalt</translation>
    </message>
    <message>
        <source>Cold against cold, warm against warm: only then two visits can be compared.</source>
        <translation>Kalt gegen kalt, warm gegen warm: Nur dann sind zwei Termine vergleichbar.</translation>
    </message>
    <message>
        <source>Coolant temperature</source>
        <translation>Kühlmitteltemperatur</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Altitude of the shop</source>
        <translation>Höhe der Werkstatt</translation>
    </message>
    <message>
        <source>Barometer at the shop</source>
        <translation>Barometer in der Werkstatt</translation>
    </message>
    <message>
        <source>As it reads here, not brought down to sea level. It wins over the altitude.</source>
        <translation>Wie es hier anzeigt, nicht auf Meereshöhe umgerechnet. Es geht vor die Höhe.</translation>
    </message>
    <message>
        <source>Cranking and holding</source>
        <translation>Durchdrehen und Halten</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Drosselklappe</translation>
    </message>
    <message>
        <source>Induction</source>
        <translation>Ansaugung</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batterie</translation>
    </message>
    <message>
        <source>Cranked by</source>
        <translation>Durchgedreht mit</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <translation>Anlasserdrehzahl</translation>
    </message>
    <message>
        <source>Crank held by</source>
        <translation>Kurbelwelle gehalten durch</translation>
    </message>
    <message>
        <source>In the leak-down test the air can turn the engine.</source>
        <translation>Bei der Druckverlustprüfung kann die Luft den Motor drehen.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>No such tester yet. Add it here, and it is used in this session.</source>
        <translation>Noch kein solches Prüfgerät. Hier angelegt, wird es in dieser Sitzung benutzt.</translation>
    </message>
    <message>
        <source>Testers used</source>
        <translation>Benutzte Prüfgeräte</translation>
    </message>
    <message>
        <source>Compression gauge</source>
        <translation>Kompressionsprüfer</translation>
    </message>
    <message>
        <source>Leak-down tester</source>
        <translation>Druckverlustprüfer</translation>
    </message>
    <message>
        <source>Crankcase tester</source>
        <translation>Kurbelgehäuseprüfer</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>VisitPage</name>
    <message>
        <source>Complaint and conditions</source>
        <translation>Beanstandung und Bedingungen</translation>
    </message>
    <message>
        <source>Add a tester</source>
        <translation>Prüfgerät anlegen</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>VoiceNotePage</name>
    <message>
        <source>Voice note</source>
        <translation>Sprachnotiz</translation>
    </message>
    <message>
        <source>Nothing is recorded</source>
        <translation>Nichts ist aufgenommen</translation>
    </message>
    <message>
        <source>Recording. Leaving this page keeps what was said.</source>
        <translation>Aufnahme läuft. Beim Verlassen dieser Seite bleibt das Gesprochene erhalten.</translation>
    </message>
    <message>
        <source>Keeping it ...</source>
        <translation>Wird behalten ...</translation>
    </message>
    <message>
        <source>✓ Kept</source>
        <translation>✓ Behalten</translation>
    </message>
    <message>
        <source>Say what you hear, see and smell.</source>
        <translation>Sagen, was zu hören, zu sehen und zu riechen ist.</translation>
    </message>
</context>
<context>
    <name>VoiceRow</name>
    <message>
        <source>%1, %2 of %3</source>
        <translation>%1, %2 von %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 · its file is missing</source>
        <translation>%1 · Datei fehlt</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>WhereItLeaks</name>
    <message>
        <source>Where it leaks</source>
        <translation>Wo es undicht ist</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>Odds under the app&apos;s working assumptions; not yet counted on real engines.</source>
        <translation>Wahrscheinlichkeiten unter den Annahmen der App; noch nicht an wirklichen Motoren ausgezählt.</translation>
    </message>
    <message>
        <source>Show the shares</source>
        <translation>Anteile zeigen</translation>
    </message>
</context>
<context>
    <name>WhichEngineSheet</name>
    <message>
        <source>New session on which engine?</source>
        <translation>Neue Sitzung an welchem Motor?</translation>
    </message>
    <message>
        <source>Search name, tags, description</source>
        <translation>Name, Schlagwort, Beschreibung suchen</translation>
    </message>
    <message>
        <source>Add an engine</source>
        <translation>Motor anlegen</translation>
    </message>
</context>
<context>
    <name>WipeLock</name>
    <message>
        <source>Wipe the glass</source>
        <translation>Glas abwischen</translation>
    </message>
    <message numerus="yes">
        <source>Touches count again in %n second(s).</source>
        <translation>
            <numerusform>Berührungen zählen in %n Sekunde wieder.</numerusform>
            <numerusform>Berührungen zählen in %n Sekunden wieder.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::AgainModel</name>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, Zylinder %2</translation>
    </message>
    <message>
        <source>It goes into the session of %1, which is open for it.</source>
        <translation>Sie kommt in die Sitzung vom %1, die dafür offen ist.</translation>
    </message>
    <message>
        <source>Readings under other conditions can&apos;t be averaged with those that you have. They get a session of their own, and Before and after holds the two side by side.</source>
        <translation>Messungen unter anderen Bedingungen lassen sich mit den vorhandenen nicht mitteln. Sie bekommen eine eigene Sitzung, und „Vorher und nachher“ stellt beide nebeneinander.</translation>
    </message>
    <message>
        <source>In the session before: %1</source>
        <translation>In der Sitzung davor: %1</translation>
    </message>
    <message>
        <source>Go on there</source>
        <translation>Dort weiter</translation>
    </message>
    <message>
        <source>Start a new session</source>
        <translation>Neue Sitzung beginnen</translation>
    </message>
    <message>
        <source>Throttle open, warm</source>
        <translation>Drosselklappe offen, warm</translation>
    </message>
    <message>
        <source>Throttle open</source>
        <translation>Drosselklappe offen</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>Warm</translation>
    </message>
    <message>
        <source>Tested again</source>
        <translation>Nochmals geprüft</translation>
    </message>
</context>
<context>
    <name>lapwing::AppContext</name>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederhergestellt: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::AssumptionsModel</name>
    <message>
        <source>What counts as sealing well, and clearances</source>
        <translation>Was als gut dichtend zählt, und Ventilspiel</translation>
    </message>
    <message>
        <source>Leak hunt</source>
        <translation>Lecksuche</translation>
    </message>
    <message>
        <source>Wet test</source>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>Engine data and cranking</source>
        <translation>Motordaten und Durchdrehen</translation>
    </message>
    <message>
        <source>How readings scatter</source>
        <translation>Wie Messwerte streuen</translation>
    </message>
    <message>
        <source>Readings not yet taken</source>
        <translation>Noch nicht aufgenommene Werte</translation>
    </message>
    <message>
        <source>What does not fit together</source>
        <translation>Was nicht zusammenpasst</translation>
    </message>
    <message>
        <source>Behind the odds</source>
        <translation>Hinter den Wahrscheinlichkeiten</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Andere</translation>
    </message>
    <message>
        <source>Other sets</source>
        <translation>Andere Annahmensätze</translation>
    </message>
    <message>
        <source>The odds are worked out under these as well: where they name another main leak, it is said that they depend on assumptions</source>
        <translation>Die Wahrscheinlichkeiten werden auch unter diesen ausgerechnet: Wo sie ein anderes Hauptleck nennen, steht dabei, dass sie von Annahmen abhängen</translation>
    </message>
    <message>
        <source>Findings and calculators</source>
        <translation>Befund und Rechner</translation>
    </message>
    <message>
        <source>Rules, gauges and the cranking model</source>
        <translation>Regeln, Manometer und das Durchdrehmodell</translation>
    </message>
</context>
<context>
    <name>lapwing::BackupModel</name>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Testers and names of signatures</source>
        <translation>Prüfgeräte und Namen von Signaturen</translation>
    </message>
    <message>
        <source>Writing the backup</source>
        <translation>Sicherung wird geschrieben</translation>
    </message>
    <message>
        <source>Where the backup goes</source>
        <translation>Wohin die Sicherung geht</translation>
    </message>
    <message>
        <source>Everything is backed up, %1: %2</source>
        <translation>Alles ist gesichert, %1: %2</translation>
    </message>
    <message>
        <source>Backed up, %1: %2. Everything is in it but what is no longer on this device:</source>
        <translation>Gesichert, %1: %2. Alles ist darin, außer dem, was nicht mehr auf diesem Gerät ist:</translation>
    </message>
    <message>
        <source>Open a backup</source>
        <translation>Sicherung öffnen</translation>
    </message>
    <message>
        <source>Checking the backup</source>
        <translation>Sicherung wird geprüft</translation>
    </message>
    <message>
        <source>Damaged in part: the rest of it can be restored. %1</source>
        <translation>Zum Teil beschädigt: Der Rest davon lässt sich wiederherstellen. %1</translation>
    </message>
    <message>
        <source>Damaged in this backup: not restored. %1</source>
        <translation>In dieser Sicherung beschädigt: wird nicht wiederhergestellt. %1</translation>
    </message>
    <message numerus="yes">
        <source>The backup holds %n engines.</source>
        <translation>
            <numerusform>Die Sicherung enthält %n Motor.</numerusform>
            <numerusform>Die Sicherung enthält %n Motoren.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not here yet: %1. Here already and unchanged: %2.</source>
        <translation>Noch nicht hier: %1. Schon hier und unverändert: %2.</translation>
    </message>
    <message>
        <source>This backup is damaged: %1 of %2 engines in it are whole. Look for another copy of it; what is whole can be restored now.</source>
        <translation>Diese Sicherung ist beschädigt: %1 von %2 Motoren darin sind heil. Nach einer anderen Kopie davon suchen; was heil ist, lässt sich jetzt wiederherstellen.</translation>
    </message>
    <message>
        <source>What was lost already when it was made:</source>
        <translation>Was schon verloren war, als sie gemacht wurde:</translation>
    </message>
    <message>
        <source>These photos tell where they were taken. They are kept as they are:</source>
        <translation>Diese Fotos verraten, wo sie aufgenommen wurden. Sie bleiben, wie sie sind:</translation>
    </message>
    <message>
        <source>Testers of its own: %1.</source>
        <translation>Eigene Prüfgeräte darin: %1.</translation>
    </message>
    <message>
        <source>Bringing it in</source>
        <translation>Wird eingelesen</translation>
    </message>
    <message>
        <source>Stopped after %1 of %2 engines. Those are here whole; restore again to bring in the rest.</source>
        <translation>Abgebrochen nach %1 von %2 Motoren. Diese sind vollständig hier; noch einmal wiederherstellen, um den Rest zu holen.</translation>
    </message>
    <message>
        <source>Here now with all that was in it: %1 of %2 engines in the backup. Nothing that was here was taken away.</source>
        <translation>Hier und vollständig: %1 von %2 Motoren der Sicherung. Nichts, was hier war, wurde entfernt.</translation>
    </message>
    <message>
        <source>Not restored, because damaged in the backup: %1.</source>
        <translation>Nicht wiederhergestellt, weil in der Sicherung beschädigt: %1.</translation>
    </message>
    <message>
        <source>Records with two versions: %1. The engine cards say where to choose.</source>
        <translation>Einträge mit zwei Fassungen: %1. Die Motorkarten sagen, wo zu wählen ist.</translation>
    </message>
</context>
<context>
    <name>lapwing::BringInModel</name>
    <message>
        <source>Session files</source>
        <translation>Sitzungsdateien</translation>
    </message>
    <message>
        <source>Open a session file</source>
        <translation>Sitzungsdatei öffnen</translation>
    </message>
    <message>
        <source>Demo: two invented engines</source>
        <translation>Beispiel: zwei erfundene Motoren</translation>
    </message>
    <message>
        <source>Changed on both sides: both versions are kept, and you choose.</source>
        <translation>Auf beiden Seiten geändert: Beide Fassungen bleiben, und es ist zu wählen.</translation>
    </message>
    <message>
        <source>Changed by the sender after it was here: takes its place.</source>
        <translation>Vom Absender geändert, nachdem es hier war: tritt an seine Stelle.</translation>
    </message>
</context>
<context>
    <name>lapwing::CalculatorModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1. %2. From: %3.</source>
        <translation>%1. %2. Aus: %3.</translation>
    </message>
</context>
<context>
    <name>lapwing::ChangesModel</name>
    <message>
        <source>Readings of two visits are needed to compare. Test again after the work.</source>
        <translation>Zum Vergleichen sind Messwerte von zwei Terminen nötig. Nach der Arbeit erneut prüfen.</translation>
    </message>
    <message>
        <source>after your own call</source>
        <translation>nach der eigenen Einschätzung</translation>
    </message>
</context>
<context>
    <name>lapwing::ClearancesModel</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Eingestellt</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>wie eingestellt</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3, %4</source>
        <translation>Zylinder %1, %2 %3, %4</translation>
    </message>
    <message>
        <source>%1 (point placed; “%2” for %3)</source>
        <translation>%1 (Komma gesetzt; „%2“ für %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>wanted, cold</source>
        <translation>Sollwert, kalt</translation>
    </message>
    <message>
        <source>Wanted?</source>
        <translation>Soll?</translation>
    </message>
    <message>
        <source>It is not on the engine card. Touch here to type it there.</source>
        <translation>Es steht nicht auf der Motorkarte. Hier tippen, um es dort einzutragen.</translation>
    </message>
    <message>
        <source>adjust it, then test again, before any verdict on the valve</source>
        <translation>einstellen, dann erneut prüfen, vor jedem Urteil über das Ventil</translation>
    </message>
    <message>
        <source>it opens late and is noisy, but it seats: adjust it</source>
        <translation>öffnet spät und ist laut, sitzt aber auf: einstellen</translation>
    </message>
    <message>
        <source>That is a very wide clearance. Is the unit right?</source>
        <translation>Das ist ein sehr großes Ventilspiel. Stimmt die Einheit?</translation>
    </message>
    <message>
        <source>%1, where %2 to %3 is wanted: is the point right?</source>
        <translation>%1, wo %2 bis %3 gewünscht ist: stimmt das Komma?</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Next valve</source>
        <translation>Nächstes Ventil</translation>
    </message>
    <message>
        <source>Keep all the same</source>
        <translation>Trotzdem behalten</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep, next valve</source>
        <translation>Behalten, nächstes Ventil</translation>
    </message>
    <message>
        <source>%1 kept: cylinder %2, %3 %4</source>
        <translation>%1 behalten: Zylinder %2, %3 %4</translation>
    </message>
</context>
<context>
    <name>lapwing::ConflictsModel</name>
    <message>
        <source>changed %1</source>
        <translation>geändert am %1</translation>
    </message>
    <message>
        <source>as first written</source>
        <translation>wie zuerst geschrieben</translation>
    </message>
</context>
<context>
    <name>lapwing::EngineCardForm</name>
    <message numerus="yes">
        <source>%n cylinders</source>
        <translation>
            <numerusform>%n Zylinder</numerusform>
            <numerusform>%n Zylinder</numerusform>
        </translation>
    </message>
    <message>
        <source>retest planned for %1</source>
        <translation>Nachprüfung geplant am %1</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
</context>
<context>
    <name>lapwing::EngineGlances</name>
    <message>
        <source>%1 in range</source>
        <translation>%1 im Bereich</translation>
    </message>
    <message>
        <source>%1 borderline</source>
        <translation>%1 grenzwertig</translation>
    </message>
    <message>
        <source>%1 fault</source>
        <translation>%1 Fehler</translation>
    </message>
    <message>
        <source>%1 without a limit</source>
        <translation>%1 ohne Grenzwert</translation>
    </message>
    <message>
        <source>%1 not measured</source>
        <translation>%1 nicht gemessen</translation>
    </message>
    <message>
        <source>%1; %2 of them from an earlier visit</source>
        <translation>%1; %2 davon von einem früheren Termin</translation>
    </message>
    <message numerus="yes">
        <source>%n cylinders</source>
        <translation>
            <numerusform>%n Zylinder</numerusform>
            <numerusform>%n Zylinder</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::EngineListModel</name>
    <message>
        <source>New session of %1: no reading yet</source>
        <translation>Neue Sitzung vom %1: noch kein Messwert</translation>
    </message>
    <message>
        <source>No session yet</source>
        <translation>Noch keine Sitzung</translation>
    </message>
    <message>
        <source>Retest planned for %1</source>
        <translation>Nachprüfung geplant am %1</translation>
    </message>
    <message>
        <source>Retest due, planned for %1</source>
        <translation>Nachprüfung fällig, geplant am %1</translation>
    </message>
</context>
<context>
    <name>lapwing::EngineStarter</name>
    <message>
        <source>Number of cylinders</source>
        <translation>Anzahl der Zylinder</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>After repair</source>
        <translation>Nach der Reparatur</translation>
    </message>
</context>
<context>
    <name>lapwing::EvidenceBacked</name>
    <message>
        <source>%1, differs from what was typed</source>
        <translation>%1, weicht vom Eingetippten ab</translation>
    </message>
</context>
<context>
    <name>lapwing::FindingsModel</name>
    <message>
        <source>Cylinder %1: %2</source>
        <translation>Zylinder %1: %2</translation>
    </message>
    <message>
        <source>Another cause: %1</source>
        <translation>Andere Ursache: %1</translation>
    </message>
    <message>
        <source>dry test, mean of %1</source>
        <translation>Trockenprüfung, Mittel aus %1</translation>
    </message>
    <message>
        <source>dry test</source>
        <translation>Trockenprüfung</translation>
    </message>
    <message>
        <source>of it on the first puff</source>
        <translation>davon beim ersten Hub</translation>
    </message>
    <message>
        <source>expected by the model, no factory figure</source>
        <translation>vom Modell erwartet, kein Werkswert</translation>
    </message>
    <message>
        <source>had nothing lain before the check valve</source>
        <translation>ohne Volumen vor dem Rückschlagventil</translation>
    </message>
    <message>
        <source>leakage: held %1 of %2</source>
        <translation>Druckverlust: %1 von %2 gehalten</translation>
    </message>
    <message>
        <source>round hole that would leak as much</source>
        <translation>rundes Loch mit gleichem Verlust</translation>
    </message>
    <message>
        <source>of free air leaks out</source>
        <translation>Luft (Umgebungsdruck) treten aus</translation>
    </message>
    <message>
        <source>wet test</source>
        <translation>Nassprüfung</translation>
    </message>
    <message>
        <source>over the dry reading</source>
        <translation>über dem trockenen Messwert</translation>
    </message>
    <message>
        <source>of rise is explained by the oil&apos;s volume alone</source>
        <translation>Anstieg erklärt das Ölvolumen allein</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>plug hole of %1</source>
        <translation>Kerzenloch von %1</translation>
    </message>
    <message>
        <source>lower end of the factory range here</source>
        <translation>unteres Ende des Werksbereichs hier</translation>
    </message>
    <message>
        <source>lower end of the factory range</source>
        <translation>unteres Ende des Werksbereichs</translation>
    </message>
    <message>
        <source>upper end of the factory range here</source>
        <translation>oberes Ende des Werksbereichs hier</translation>
    </message>
    <message>
        <source>upper end of the factory range</source>
        <translation>oberes Ende des Werksbereichs</translation>
    </message>
    <message>
        <source>factory limit here</source>
        <translation>Werksgrenzwert hier</translation>
    </message>
    <message>
        <source>factory limit</source>
        <translation>Werksgrenzwert</translation>
    </message>
    <message>
        <source>most allowed between cylinders</source>
        <translation>höchstens zwischen Zylindern zulässig</translation>
    </message>
    <message>
        <source>Working assumptions version %1.</source>
        <translation>Annahmen, Version %1.</translation>
    </message>
</context>
<context>
    <name>lapwing::HandOverModel</name>
    <message>
        <source>Show in folder</source>
        <translation>Im Ordner zeigen</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Choose at least one visit.</source>
        <translation>Mindestens einen Termin wählen.</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie ablegen</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Abgelegt: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::HistoryModel</name>
    <message>
        <source>Nothing to draw yet: from the second session with the same test on, every cylinder&apos;s readings stand here, all as one tester would show them.</source>
        <translation>Noch nichts zu zeichnen: Ab der zweiten Sitzung mit derselben Prüfung stehen hier die Messwerte jedes Zylinders, alle so, wie ein einziges Prüfgerät sie zeigen würde.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>after a repair</source>
        <translation>nach einer Reparatur</translation>
    </message>
    <message>
        <source>not comparable with the newest</source>
        <translation>nicht vergleichbar mit dem neuesten</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>gemessen %1</translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation>Über die Jahre</translation>
    </message>
    <message>
        <source>By the meter</source>
        <translation>Nach Zählerstand</translation>
    </message>
    <message>
        <source>Note the hours or the mileage at every visit, and the readings can be drawn by them too.</source>
        <translation>Betriebsstunden oder Kilometerstand bei jedem Termin notieren: Dann lassen sich die Messwerte auch danach zeichnen.</translation>
    </message>
    <message numerus="yes">
        <source>%n visits where the meter was not read are not drawn.</source>
        <translation>
            <numerusform>%n Termin ohne abgelesenen Zähler ist nicht gezeichnet.</numerusform>
            <numerusform>%n Termine ohne abgelesenen Zähler sind nicht gezeichnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>The meter read less than at a visit before: it was changed, or misread.</source>
        <translation>Der Zähler zeigte weniger als bei einem früheren Termin: Er wurde getauscht oder falsch abgelesen.</translation>
    </message>
    <message>
        <source>Each ± here also holds what readings scatter by from one day to the next. Findings and the results in the report leave that out, so the same reading has a smaller ± there.</source>
        <translation>Jedes ± enthält hier auch, wie die Werte von einem Tag zum nächsten streuen. Der Befund und die Ergebnisse im Bericht lassen das weg: Derselbe Messwert hat dort ein kleineres ±.</translation>
    </message>
    <message numerus="yes">
        <source>%1 over %n visits; the list below says the same.</source>
        <translation>
            <numerusform>%1 über %n Termin; die Liste darunter sagt dasselbe.</numerusform>
            <numerusform>%1 über %n Termine; die Liste darunter sagt dasselbe.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::KeyedModel</name>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::LeakHuntModel</name>
    <message>
        <source>Only counts while its valves are shut</source>
        <translation>Zählt nur, solange dessen Ventile geschlossen sind</translation>
    </message>
    <message>
        <source>Counts: its valves are shut now</source>
        <translation>Zählt: Seine Ventile sind jetzt geschlossen</translation>
    </message>
    <message>
        <source>Counts: a valve of it may be open, but the manifolds are separate</source>
        <translation>Zählt: Ein Ventil kann offen sein, aber die Krümmer sind getrennt</translation>
    </message>
    <message>
        <source>Its intake valve is open now: counts only where the intake is quiet</source>
        <translation>Sein Einlassventil ist jetzt offen: zählt nur, wenn am Einlass nichts zu hören ist</translation>
    </message>
    <message>
        <source>Its exhaust valve is open now: counts only where the exhaust is quiet</source>
        <translation>Sein Auslassventil ist jetzt offen: zählt nur, wenn am Auslass nichts zu hören ist</translation>
    </message>
    <message>
        <source>It stands on overlap, both valves a little open: counts only where intake and exhaust are quiet</source>
        <translation>Er steht in der Ventilüberschneidung, beide Ventile etwas offen: zählt nur, wenn an Einlass und Auslass nichts zu hören ist</translation>
    </message>
    <message>
        <source>A valve of it may be open: counts only where intake and exhaust are quiet</source>
        <translation>Ein Ventil kann offen sein: zählt nur, wenn an Einlass und Auslass nichts zu hören ist</translation>
    </message>
    <message>
        <source>No leak-down reading of this cylinder yet</source>
        <translation>Noch kein Messwert der Druckverlustprüfung für diesen Zylinder</translation>
    </message>
    <message>
        <source>held %1 of %2</source>
        <translation>%1 von %2 gehalten</translation>
    </message>
    <message>
        <source>%1, not counted</source>
        <translation>%1, zählt nicht</translation>
    </message>
    <message>
        <source>%1, leakage %2, mean of %3</source>
        <translation>%1, Leckage %2, Mittel aus %3</translation>
    </message>
    <message>
        <source>%1, leakage %2</source>
        <translation>%1, Druckverlust %2</translation>
    </message>
    <message>
        <source>Plug hole of cylinder %1</source>
        <translation>Kerzenloch von Zylinder %1</translation>
    </message>
    <message>
        <source>Throttle or flap open if there is one, hose at the intake</source>
        <translation>Drosselklappe oder Klappe offen, wenn es eine gibt, Schlauch am Einlass</translation>
    </message>
    <message>
        <source>Throttle open, hose at the intake</source>
        <translation>Drosselklappe offen, Schlauch am Einlass</translation>
    </message>
    <message>
        <source>Hose at the tail pipe</source>
        <translation>Schlauch am Auspuffende</translation>
    </message>
    <message>
        <source>Oil filler open, thin glove over it: rings always leak a little</source>
        <translation>Öleinfüllöffnung offen, dünner Handschuh darüber: Kolbenringe lecken immer ein wenig</translation>
    </message>
    <message>
        <source>Piston over the port: air past the rings comes out here</source>
        <translation>Kolben über dem Schlitz: Luft an den Kolbenringen vorbei kommt hier heraus</translation>
    </message>
    <message>
        <source>Carburettor: air past the rings into the crankcase</source>
        <translation>Vergaser: Luft an den Kolbenringen vorbei ins Kurbelgehäuse</translation>
    </message>
    <message>
        <source>Soapy water round the joint</source>
        <translation>Seifenwasser rund um die Fuge</translation>
    </message>
    <message>
        <source>Bubbles in the filler; never open a hot cap</source>
        <translation>Blasen in der Einfüllöffnung; nie einen heißen Deckel öffnen</translation>
    </message>
    <message>
        <source>At its outlet</source>
        <translation>An seinem Ausgang</translation>
    </message>
    <message>
        <source>Crankcase test: soapy water</source>
        <translation>Kurbelgehäuseprüfung: Seifenwasser</translation>
    </message>
    <message>
        <source>Crankcase test: at the carburettor</source>
        <translation>Kurbelgehäuseprüfung: am Vergaser</translation>
    </message>
    <message>
        <source>Anywhere else: plug thread, crack, adapter ring</source>
        <translation>Sonst irgendwo: Kerzengewinde, Riss, Adapterring</translation>
    </message>
    <message>
        <source>Next TDC</source>
        <translation>Nächster OT</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Done, next %1 (turn %2°)</source>
        <translation>Fertig, weiter %1 (%2° drehen)</translation>
    </message>
    <message>
        <source>Done, next %1</source>
        <translation>Fertig, weiter %1</translation>
    </message>
</context>
<context>
    <name>lapwing::MyCallModel</name>
    <message>
        <source>(Called after a report with the findings was written.)</source>
        <translation>(Eingeschätzt, nachdem ein Bericht mit dem Befund geschrieben war.)</translation>
    </message>
</context>
<context>
    <name>lapwing::NeedleModel</name>
    <message>
        <source>Say in Conditions which tester is used: the range of its gauge is needed to read the photo.</source>
        <translation>Unter „Bedingungen“ angeben, welches Prüfgerät benutzt wird: Der Bereich seines Manometers ist nötig, um das Foto abzulesen.</translation>
    </message>
    <message>
        <source>This scale sweeps about %1 degrees, the tester&apos;s card says %2: correct it there, or see whether it is that tester&apos;s gauge.</source>
        <translation>Diese Skala reicht über etwa %1 Grad, auf der Karte des Prüfgeräts stehen %2: dort berichtigen oder nachsehen, ob es das Manometer dieses Prüfgeräts ist.</translation>
    </message>
    <message>
        <source>Reading the needle ...</source>
        <translation>Zeiger wird abgelesen ...</translation>
    </message>
    <message>
        <source>Reads %1</source>
        <translation>Zeigt %1</translation>
    </message>
    <message>
        <source>, you typed %1</source>
        <translation>, eingetippt %1</translation>
    </message>
    <message>
        <source> (needle set by hand)</source>
        <translation> (Zeiger von Hand gesetzt)</translation>
    </message>
    <message>
        <source>%1 as read</source>
        <translation>%1 wie abgelesen</translation>
    </message>
    <message>
        <source>%1 as typed</source>
        <translation>%1 wie eingetippt</translation>
    </message>
    <message>
        <source>leave open</source>
        <translation>offen lassen</translation>
    </message>
    <message>
        <source>photo only</source>
        <translation>nur Foto</translation>
    </message>
    <message>
        <source>Keep %1 as a reading: %2</source>
        <translation>%1 als Messwert behalten: %2</translation>
    </message>
    <message>
        <source>Read again with the gauge&apos;s range as it is now: %1</source>
        <translation>Mit dem jetzigen Messbereich des Manometers neu ablesen: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::NewsModel</name>
    <message>
        <source>Handed over by %1</source>
        <translation>Übergeben von %1</translation>
    </message>
    <message>
        <source>brought in %1</source>
        <translation>eingelesen am %1</translation>
    </message>
    <message>
        <source>two versions</source>
        <translation>zwei Fassungen</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
</context>
<context>
    <name>lapwing::NextTdcModel</name>
    <message>
        <source>stands at TDC now</source>
        <translation>steht jetzt im OT</translation>
    </message>
    <message>
        <source>turn about %1°</source>
        <translation>etwa %1° drehen</translation>
    </message>
    <message>
        <source>turn %1°</source>
        <translation>%1° drehen</translation>
    </message>
    <message>
        <source>about %1°</source>
        <translation>etwa %1°</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>The firing intervals are not on the engine card: taken as even. Make sure of the TDC at the plug hole.</source>
        <translation>Die Zündabstände stehen nicht auf der Motorkarte: als gleichmäßig angenommen. Den OT am Kerzenloch sicherstellen.</translation>
    </message>
    <message>
        <source>With bore, stroke and rod on the engine card the app can say how hard %1 pushes on the crank.</source>
        <translation>Mit Bohrung, Hub und Pleuel auf der Motorkarte kann die App sagen, wie stark %1 auf die Kurbelwelle drückt.</translation>
    </message>
    <message>
        <source>at %1° from TDC: %2 at the end of a 30 cm bar</source>
        <translation>bei %1° vom OT: %2 am Ende eines 30-cm-Hebels</translation>
    </message>
    <message>
        <source>Where is TDC?</source>
        <translation>Wo ist OT?</translation>
    </message>
    <message>
        <source>Turn by hand with a thumb or a whistle at the plug hole: in a two-stroke every way up compresses. Stop at the top, where both ports are shut.</source>
        <translation>Von Hand drehen, mit dem Daumen oder einer Pfeife am Kerzenloch: beim Zweitakter verdichtet jeder Aufwärtsgang. Ganz oben anhalten, wo beide Kanäle geschlossen sind.</translation>
    </message>
    <message>
        <source>Compression or overlap?</source>
        <translation>Verdichtung oder Ventilüberschneidung?</translation>
    </message>
    <message>
        <source>Turn by hand with a thumb or a whistle at the plug hole: air that pushes out on the way up means compression. If nothing pushes, the valves overlap: turn once more, all the way round.</source>
        <translation>Von Hand drehen, mit dem Daumen oder einer Pfeife am Kerzenloch: Luft, die beim Aufwärtsgang herausdrückt, bedeutet Verdichtung. Drückt nichts, überschneiden sich die Ventile: noch einmal drehen, ganz herum.</translation>
    </message>
</context>
<context>
    <name>lapwing::PadLines</name>
    <message>
        <source>Factory limit: %1.</source>
        <translation>Werksgrenzwert: %1.</translation>
    </message>
    <message>
        <source>Factory range: %1 to %2.</source>
        <translation>Werksbereich: %1 bis %2.</translation>
    </message>
    <message>
        <source>leakage on this tester</source>
        <translation>Druckverlust auf diesem Prüfgerät</translation>
    </message>
    <message>
        <source>hole would leak as much</source>
        <translation>Loch mit gleichem Verlust</translation>
    </message>
    <message>
        <source>give or take the gauge</source>
        <translation>bis auf den Fehler des Manometers</translation>
    </message>
    <message>
        <source>over the dry reading</source>
        <translation>über dem trockenen Messwert</translation>
    </message>
</context>
<context>
    <name>lapwing::PadModel</name>
    <message>
        <source>Keep oil</source>
        <translation>Öl behalten</translation>
    </message>
    <message>
        <source>Keep first puff</source>
        <translation>Ersten Hub behalten</translation>
    </message>
    <message>
        <source>Keep what is new</source>
        <translation>Neues behalten</translation>
    </message>
    <message>
        <source>End pressure first</source>
        <translation>Erst Enddruck</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Next %1</source>
        <translation>Weiter %1</translation>
    </message>
    <message>
        <source>Keep, oil not noted</source>
        <translation>Behalten, Öl nicht notiert</translation>
    </message>
    <message>
        <source>Set first</source>
        <translation>Erst Einstelldruck</translation>
    </message>
    <message>
        <source>Keep …</source>
        <translation>Behalten …</translation>
    </message>
    <message>
        <source>Keep all the same</source>
        <translation>Trotzdem behalten</translation>
    </message>
    <message>
        <source>Keep instead</source>
        <translation>Als Ersatz behalten</translation>
    </message>
    <message>
        <source>Keep, listen</source>
        <translation>Behalten, horchen</translation>
    </message>
    <message>
        <source>Keep as well</source>
        <translation>Auch behalten</translation>
    </message>
    <message>
        <source>Keep as well, next %1</source>
        <translation>Auch behalten, weiter %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep, next %1</source>
        <translation>Behalten, weiter %1</translation>
    </message>
    <message>
        <source>Set pressure?</source>
        <translation>Solldruck?</translation>
    </message>
    <message>
        <source>leakage is counted from it: type it first</source>
        <translation>von ihm aus zählt die Leckage: zuerst eintippen</translation>
    </message>
    <message>
        <source>Minutes?</source>
        <translation>Minuten?</translation>
    </message>
    <message>
        <source>without them the end pressure says little: type how long it stood</source>
        <translation>ohne sie sagt der Enddruck wenig: eintippen, wie lange er stand</translation>
    </message>
    <message>
        <source>End pressure?</source>
        <translation>Enddruck?</translation>
    </message>
    <message>
        <source>type what the gauge shows after the minutes</source>
        <translation>eingeben, was das Manometer nach den Minuten zeigt</translation>
    </message>
    <message>
        <source>How much oil?</source>
        <translation>Wie viel Öl?</translation>
    </message>
    <message>
        <source>what the rise means hangs on it: type it, or keep without</source>
        <translation>davon hängt ab, was der Anstieg bedeutet: eintippen, oder ohne behalten</translation>
    </message>
    <message>
        <source>oil %1</source>
        <translation>Öl %1</translation>
    </message>
    <message>
        <source>first puff %1</source>
        <translation>erster Hub %1</translation>
    </message>
    <message numerus="yes">
        <source>%n pulls</source>
        <translation>
            <numerusform>%n Hub</numerusform>
            <numerusform>%n Hübe</numerusform>
        </translation>
    </message>
    <message>
        <source>Cylinder %1: %2 kept</source>
        <translation>Zylinder %1: %2 behalten</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>Wet test of cylinder %1, %2</source>
        <translation>Nassprüfung von Zylinder %1, %2</translation>
    </message>
    <message>
        <source>After oil</source>
        <translation>Nach Öl</translation>
    </message>
    <message>
        <source>kept, and not counted with what was read before the oil</source>
        <translation>bleibt erhalten und zählt nicht mit dem, was vor dem Öl abgelesen wurde</translation>
    </message>
    <message>
        <source>%1: is its oil still on the rings?</source>
        <translation>%1: Ist ihr Öl noch an den Ringen?</translation>
    </message>
    <message>
        <source>read over the oil of another session&apos;s wet test</source>
        <translation>gemessen über dem Öl der Nassprüfung einer anderen Sitzung</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Behalten: %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>%1 after %2: further apart than gauge and scatter explain.</source>
        <translation>%1 nach %2: weiter auseinander, als Manometer und Streuung erklären.</translation>
    </message>
    <message>
        <source>You typed %1, the photo reads %2.</source>
        <translation>Eingegeben: %1, das Foto zeigt %2.</translation>
    </message>
    <message>
        <source>Keep %1 as the photo reads</source>
        <translation>%1 behalten, wie das Foto zeigt</translation>
    </message>
    <message>
        <source>Keep %1 as typed</source>
        <translation>%1 behalten, wie eingegeben</translation>
    </message>
    <message>
        <source>Keep as typed, leave open which holds</source>
        <translation>Wie eingegeben behalten, offen lassen, was gilt</translation>
    </message>
    <message>
        <source>%1, or %2?</source>
        <translation>%1 oder %2?</translation>
    </message>
    <message>
        <source>You typed %1. %2 would be unusual here, %3 not.</source>
        <translation>Eingegeben: %1. %2 wären hier ungewöhnlich, %3 nicht.</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Es sind %1</translation>
    </message>
    <message>
        <source>First</source>
        <translation>1. Hub</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Pulls</source>
        <translation>Hübe</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Prüfdruck</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>%1 (point placed; “%2” for %3)</source>
        <translation>%1 (Komma gesetzt; „%2“ für %3)</translation>
    </message>
    <message>
        <source>Crankcase</source>
        <translation>Kurbelgehäuse</translation>
    </message>
    <message>
        <source>Crankcase of cylinder %1</source>
        <translation>Kurbelgehäuse von Zylinder %1</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>%1, first puff</source>
        <translation>%1, erster Hub</translation>
    </message>
    <message>
        <source>%1, final reading, again</source>
        <translation>%1, Endwert, noch einmal</translation>
    </message>
    <message>
        <source>%1, final reading</source>
        <translation>%1, Endwert</translation>
    </message>
    <message>
        <source>%1, pulls</source>
        <translation>%1, Hübe</translation>
    </message>
    <message>
        <source>%1, oil put in</source>
        <translation>%1, eingefülltes Öl</translation>
    </message>
    <message>
        <source>%1, set pressure</source>
        <translation>%1, eingestellter Druck</translation>
    </message>
    <message>
        <source>%1, how long</source>
        <translation>%1, wie lange</translation>
    </message>
    <message>
        <source>%1, leakage on the dial, %2 set</source>
        <translation>%1, Verlust auf der Skala, %2 eingestellt</translation>
    </message>
    <message>
        <source>%1, leakage on the dial</source>
        <translation>%1, Verlust auf der Skala</translation>
    </message>
    <message>
        <source>%1, end pressure</source>
        <translation>%1, Enddruck</translation>
    </message>
    <message>
        <source>%1 held</source>
        <translation>%1 gehalten</translation>
    </message>
    <message>
        <source>%1, end pressure, of %2 set</source>
        <translation>%1, Enddruck, von %2 eingestellt</translation>
    </message>
    <message>
        <source>%1 held, of %2 set</source>
        <translation>%1 gehalten, von %2 eingestellt</translation>
    </message>
    <message>
        <source>%1, first puff %2</source>
        <translation>%1, erster Hub %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n pulls</source>
        <translation>
            <numerusform>%1, %n Hub</numerusform>
            <numerusform>%1, %n Hübe</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, oil %2</source>
        <translation>%1, Öl %2</translation>
    </message>
    <message>
        <source>rings oiled before</source>
        <translation>Kolbenringe vorher geölt</translation>
    </message>
    <message>
        <source>the engine held as one</source>
        <translation>der Motor als Ganzes gehalten</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>noch einmal gemessen</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>zählt nicht</translation>
    </message>
    <message>
        <source>its photo reads %1: not settled</source>
        <translation>das Foto zeigt %1: nicht entschieden</translation>
    </message>
    <message>
        <source>Oil: %1 to %2 ml</source>
        <translation>Öl: %1 bis %2 ml</translation>
    </message>
    <message>
        <source>up to a teaspoon in a small cylinder; never more than %1 ml</source>
        <translation>höchstens ein Teelöffel bei kleinem Zylinder; nie mehr als %1 ml</translation>
    </message>
    <message>
        <source>up to a teaspoon in a cylinder of this size</source>
        <translation>höchstens ein Teelöffel bei einem Zylinder dieser Größe</translation>
    </message>
    <message>
        <source>one to three teaspoons in a cylinder of this size</source>
        <translation>ein bis drei Teelöffel bei einem Zylinder dieser Größe</translation>
    </message>
</context>
<context>
    <name>lapwing::PhotoModel</name>
    <message>
        <source>Choose a photo</source>
        <translation>Foto wählen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
</context>
<context>
    <name>lapwing::PlanModel</name>
    <message>
        <source>Parts: %1</source>
        <translation>Teile: %1</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Warum: %1</translation>
    </message>
    <message>
        <source>If it is left: %1</source>
        <translation>Wenn es so bleibt: %1</translation>
    </message>
    <message>
        <source>Dry test to expect after it: %1 to %2</source>
        <translation>Danach zu erwartende Trockenprüfung: %1 bis %2</translation>
    </message>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, Zylinder %2</translation>
    </message>
    <message>
        <source>Nothing is written here yet</source>
        <translation>Hier ist noch nichts geschrieben</translation>
    </message>
    <message>
        <source>Done %1</source>
        <translation>Erledigt am %1</translation>
    </message>
    <message numerus="yes">
        <source>%n price(s) too long to add up</source>
        <translation>
            <numerusform>%n Preis zu lang zum Zusammenzählen</numerusform>
            <numerusform>%n Preise zu lang zum Zusammenzählen</numerusform>
        </translation>
    </message>
    <message>
        <source>Quick fixes</source>
        <translation>Schnelle Abhilfe</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Zerlegen</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Dry test to expect after it, in nine cases of ten: %1 to %2</source>
        <translation>Danach in neun von zehn Fällen zu erwartende Trockenprüfung: %1 bis %2</translation>
    </message>
    <message>
        <source>Noted %1</source>
        <translation>Notiert am %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day: type year, month and day, such as %2.</source>
        <translation>„%1“ ist kein Tag: Jahr, Monat und Tag eingeben, etwa %2.</translation>
    </message>
    <message>
        <source>%1 is over: type a day that is still to come.</source>
        <translation>%1 ist vorbei: einen Tag eingeben, der noch kommt.</translation>
    </message>
</context>
<context>
    <name>lapwing::PrepareModel</name>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 von %2 getan</translation>
    </message>
</context>
<context>
    <name>lapwing::SecondOpinionModel</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Prüfgeräte</translation>
    </message>
    <message>
        <source>No tester is named: the readings&apos; uncertainty is guessed.</source>
        <translation>Kein Prüfgerät ist genannt: Die Unsicherheit der Messwerte ist geschätzt.</translation>
    </message>
    <message>
        <source>%1: no self-check noted</source>
        <translation>%1: keine Selbstprüfung notiert</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>Repeated: %1: %2</source>
        <translation>Wiederholt: %1: %2</translation>
    </message>
    <message>
        <source>No reading was repeated</source>
        <translation>Kein Messwert wurde wiederholt</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Nicht getan: %1</translation>
    </message>
    <message>
        <source>Not done: %1 (%2)</source>
        <translation>Nicht getan: %1 (%2)</translation>
    </message>
    <message>
        <source>Not marked: %1</source>
        <translation>Nicht gekennzeichnet: %1</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Engine as a whole</source>
        <translation>Motor als Ganzes</translation>
    </message>
    <message>
        <source>measured again later</source>
        <translation>später noch einmal gemessen</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>Leak hunt, %1</source>
        <translation>Lecksuche, %1</translation>
    </message>
    <message>
        <source>Clearance, %1</source>
        <translation>Ventilspiel, %1</translation>
    </message>
    <message>
        <source>Contradiction</source>
        <translation>Widerspruch</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <translation>Wo es undicht ist</translation>
    </message>
</context>
<context>
    <name>lapwing::SessionModel</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, Zylinder %2</translation>
    </message>
    <message>
        <source>end pressure</source>
        <translation>Enddruck</translation>
    </message>
    <message>
        <source>set pressure</source>
        <translation>eingestellter Druck</translation>
    </message>
    <message>
        <source>Does the crankcase hold pressure?</source>
        <translation>Hält das Kurbelgehäuse Druck?</translation>
    </message>
    <message>
        <source>%1 of %2 measured</source>
        <translation>%1 von %2 gemessen</translation>
    </message>
    <message>
        <source>digits typed and not kept</source>
        <translation>getippt, nicht behalten</translation>
    </message>
    <message>
        <source>leakage of cylinder %1</source>
        <translation>Druckverlust von Zylinder %1</translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>factory limit here</source>
        <translation>Werksgrenzwert hier</translation>
    </message>
    <message>
        <source>factory limit</source>
        <translation>Werksgrenzwert</translation>
    </message>
    <message>
        <source>most allowed between cylinders</source>
        <translation>höchstens zwischen Zylindern zulässig</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>throttle closed</source>
        <translation>Drosselklappe geschlossen</translation>
    </message>
    <message>
        <source>throttle held open</source>
        <translation>Drosselklappe offen gehalten</translation>
    </message>
    <message>
        <source>What the owner says, conditions, testers used</source>
        <translation>Was der Besitzer sagt, Bedingungen, benutzte Prüfgeräte</translation>
    </message>
    <message>
        <source>Complaint and conditions</source>
        <translation>Beanstandung und Bedingungen</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 von %2 getan</translation>
    </message>
    <message numerus="yes">
        <source>%n left out</source>
        <translation>
            <numerusform>%n ausgelassen</numerusform>
            <numerusform>%n ausgelassen</numerusform>
        </translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>A valve without clearance looks burnt</source>
        <translation>Ein Ventil ohne Spiel sieht aus wie ein verbranntes</translation>
    </message>
    <message>
        <source>Hydraulic adjusters: there is none to measure</source>
        <translation>Hydrostößel: da ist keines zu messen</translation>
    </message>
    <message>
        <source>%1 of %2 valves</source>
        <translation>%1 von %2 Ventilen</translation>
    </message>
    <message>
        <source>%1 in range</source>
        <translation>%1 im Bereich</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Ventilspiel</translation>
    </message>
    <message>
        <source>Never on a diesel: oil can lock it</source>
        <translation>Niemals bei einem Diesel: Öl kann ihn blockieren</translation>
    </message>
    <message>
        <source>Last: oil stays on the rings</source>
        <translation>Zuletzt: Öl bleibt an den Kolbenringen</translation>
    </message>
    <message>
        <source>Before any oil goes in</source>
        <translation>Bevor Öl hineinkommt</translation>
    </message>
    <message>
        <source>Not measured</source>
        <translation>Nicht gemessen</translation>
    </message>
    <message>
        <source>factory limit %1 here</source>
        <translation>Werksgrenzwert %1 hier</translation>
    </message>
    <message>
        <source>factory limit %1</source>
        <translation>Werksgrenzwert %1</translation>
    </message>
    <message>
        <source>the model expects %1 to %2</source>
        <translation>das Modell erwartet %1 bis %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Listen where the air comes out, while it is on</source>
        <translation>Horchen, wo die Luft herauskommt, solange sie anliegt</translation>
    </message>
    <message>
        <source>Listened, nothing heard</source>
        <translation>Gehorcht, nichts gehört</translation>
    </message>
    <message>
        <source>Leak hunt</source>
        <translation>Lecksuche</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Your own call first</source>
        <translation>Erst die eigene Einschätzung</translation>
    </message>
    <message>
        <source>Leave it, quick fix or strip, and what it costs</source>
        <translation>So lassen, schnelle Abhilfe oder zerlegen, und was es kostet</translation>
    </message>
    <message>
        <source>the owner says %1</source>
        <translation>der Besitzer sagt: %1</translation>
    </message>
    <message>
        <source>Measure what you want to know, then make your own call.</source>
        <translation>Messen, was noch fehlt, dann die eigene Einschätzung abgeben.</translation>
    </message>
</context>
<context>
    <name>lapwing::SettingsModel</name>
    <message>
        <source>Lowest cylinder of the highest, at least</source>
        <translation>Niedrigster zum höchsten Zylinder, mindestens</translation>
    </message>
    <message>
        <source>Below the average of all cylinders, at most</source>
        <translation>Unter dem Mittel aller Zylinder, höchstens</translation>
    </message>
    <message>
        <source>none under %1</source>
        <translation>keiner unter %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Usual cranking pressure (%1), for each unit of compression ratio</source>
        <translation>Üblicher Kompressionsdruck (%1), je Einheit der Verdichtung</translation>
    </message>
    <message>
        <source>Usual cranking pressure (%1)</source>
        <translation>Üblicher Kompressionsdruck (%1)</translation>
    </message>
    <message>
        <source>%1 (%2 for bores of %3 and over)</source>
        <translation>%1 (%2 für Bohrungen ab %3)</translation>
    </message>
    <message>
        <source>Leakage on a tester of %1 and %2: in range up to, borderline up to</source>
        <translation>Druckverlust auf einem Prüfgerät mit %1 und %2: im Bereich bis, grenzwertig bis</translation>
    </message>
    <message>
        <source>As a tester&apos;s maker says. %1</source>
        <translation>Nach Angabe des Herstellers eines Prüfgeräts. %1</translation>
    </message>
    <message>
        <source>Aircraft. %1</source>
        <translation>Luftfahrzeuge. %1</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Rings are suspected when oil raises the reading by at least</source>
        <translation>Kolbenringe sind verdächtig, wenn Öl den Messwert hebt um mindestens</translation>
    </message>
</context>
<context>
    <name>lapwing::StorageModel</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Voice note</source>
        <translation>Sprachnotiz</translation>
    </message>
    <message>
        <source>Unknown file</source>
        <translation>Unbekannte Datei</translation>
    </message>
    <message>
        <source>Photos and voice notes</source>
        <translation>Fotos und Sprachnotizen</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Of these, deleted and kept for Undo</source>
        <translation>Davon gelöscht und für „Rückgängig“ behalten</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie ablegen</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
</context>
<context>
    <name>lapwing::TesterCardForm</name>
    <message>
        <source>%1, home-made</source>
        <translation>%1, selbst gebaut</translation>
    </message>
</context>
<context>
    <name>lapwing::TesterListModel</name>
    <message>
        <source>0 to %1</source>
        <translation>0 bis %1</translation>
    </message>
    <message>
        <source>home-made</source>
        <translation>selbst gebaut</translation>
    </message>
    <message>
        <source>checked %1</source>
        <translation>geprüft am %1</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>nie geprüft</translation>
    </message>
</context>
<context>
    <name>lapwing::TodoModel</name>
    <message>
        <source>cylinder %1</source>
        <translation>Zylinder %1</translation>
    </message>
    <message>
        <source>all cylinders</source>
        <translation>alle Zylinder</translation>
    </message>
    <message>
        <source>asked by %1</source>
        <translation>erbeten von %1</translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n Notiz</numerusform>
            <numerusform>%n Notizen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other causes</source>
        <translation>
            <numerusform>%n andere Ursache</numerusform>
            <numerusform>%n andere Ursachen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tests asked for</source>
        <translation>
            <numerusform>%n erbetene Prüfung</numerusform>
            <numerusform>%n erbetene Prüfungen</numerusform>
        </translation>
    </message>
</context>
</TS>
