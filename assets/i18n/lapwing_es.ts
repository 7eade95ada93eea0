<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AgainPage</name>
    <message>
        <source>Before you test</source>
        <translation>Antes de la prueba</translation>
    </message>
    <message>
        <source>How is the engine now?</source>
        <translation>¿Cómo está el motor ahora?</translation>
    </message>
    <message>
        <source>Throttle held wide open</source>
        <translation>Mariposa sujeta del todo abierta</translation>
    </message>
    <message>
        <source>Engine warm</source>
        <translation>Motor caliente</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
</context>
<context>
    <name>AppPage</name>
    <message>
        <source>Where does this come from?</source>
        <translation>¿De dónde sale esto?</translation>
    </message>
</context>
<context>
    <name>AssumptionsPage</name>
    <message>
        <source>Working assumptions</source>
        <translation>Supuestos de trabajo</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>The odds of where it leaks rest on these numbers. They were not yet counted on real engines. Every report names their version, so that it can be worked out again.</source>
        <translation>Las probabilidades de por dónde pierde descansan en estos números. Todavía no se han contado en motores reales. Cada informe nombra su versión, para poder calcularlo de nuevo.</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>BackupKeys</name>
    <message>
        <source>Names of signatures in it</source>
        <translation>Nombres de firmas que contiene</translation>
    </message>
    <message>
        <source>Anyone who had this file could have put a name in. Tick those whose fingerprint you know; the others stay unknown keys.</source>
        <translation>Cualquiera que haya tenido este archivo puede haber metido un nombre. Marcar aquellos cuya huella se conozca; los demás siguen siendo claves desconocidas.</translation>
    </message>
    <message>
        <source>%1 (%2) is called %3 here, and stays so.</source>
        <translation>%1 (%2) se llama aquí %3, y así se queda.</translation>
    </message>
</context>
<context>
    <name>BackupPage</name>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>One file with all engines, sessions, photos, voice notes and testers, owners&apos; names and contacts too. Keep it somewhere else than on this device.</source>
        <translation>Un solo archivo con todos los motores, sesiones, fotos, notas de voz y comprobadores, y también los nombres y contactos de los propietarios. Guardarlo en otro sitio que no sea este dispositivo.</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation>%1: %2 %</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>To the engines</source>
        <translation>A los motores</translation>
    </message>
    <message>
        <source>The backup is made, but lies nowhere yet</source>
        <translation>La copia está hecha, pero aún no está en ningún sitio</translation>
    </message>
    <message>
        <source>Choose where it goes</source>
        <translation>Elegir adónde va</translation>
    </message>
    <message>
        <source>Restore from a backup</source>
        <translation>Restaurar desde una copia</translation>
    </message>
    <message>
        <source>Checked first, then shown, then merged with what is here</source>
        <translation>Primero se comprueba, luego se muestra y después se une con lo que hay aquí</translation>
    </message>
    <message>
        <source>Nothing is recorded here yet, so there is nothing to back up. A backup is checked first, then shown, then brought in.</source>
        <translation>Aquí todavía no hay nada registrado, así que no hay nada que guardar. Una copia de seguridad primero se comprueba, luego se muestra y después se incorpora.</translation>
    </message>
    <message>
        <source>Restoring takes nothing away. What you deleted here and the backup still has comes back; what was changed on both sides is kept in both versions.</source>
        <translation>Restaurar no quita nada. Lo que se borró aquí y la copia aún tiene vuelve; lo que se cambió en ambos lados se conserva en las dos versiones.</translation>
    </message>
    <message>
        <source>Don&apos;t</source>
        <translation>No hacerlo</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Choose a backup</source>
        <translation>Elegir una copia</translation>
    </message>
    <message>
        <source>Back up everything</source>
        <translation>Copiar todo</translation>
    </message>
</context>
<context>
    <name>BringIn</name>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n sesión</numerusform>
            <numerusform>%n sesiones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n lectura</numerusform>
            <numerusform>%n lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exits</source>
        <translation>
            <numerusform>%n salida</numerusform>
            <numerusform>%n salidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n clearances</source>
        <translation>
            <numerusform>%n juego</numerusform>
            <numerusform>%n juegos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos and voice notes</source>
        <translation>
            <numerusform>%n foto o nota de voz</numerusform>
            <numerusform>%n fotos y notas de voz</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n nota</numerusform>
            <numerusform>%n notas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the plan</source>
        <translation>
            <numerusform>%n línea del plan</numerusform>
            <numerusform>%n líneas del plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n testers</source>
        <translation>
            <numerusform>%n comprobador</numerusform>
            <numerusform>%n comprobadores</numerusform>
        </translation>
    </message>
    <message>
        <source>A new engine.</source>
        <translation>Un motor nuevo.</translation>
    </message>
    <message>
        <source>A new engine with %1.</source>
        <translation>Un motor nuevo con %1.</translation>
    </message>
    <message>
        <source>This engine is here already. New are %1.</source>
        <translation>Este motor ya está aquí. Son nuevos: %1.</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Sin firma</translation>
    </message>
    <message>
        <source>Its checksums show no damage, but nobody stands for it: anyone may have changed it on the way.</source>
        <translation>Sus sumas de comprobación no muestran daños, pero nadie responde de él: cualquiera puede haberlo cambiado por el camino.</translation>
    </message>
    <message>
        <source>Unaltered since you handed it over</source>
        <translation>Sin cambios desde que se entregó desde aquí</translation>
    </message>
    <message>
        <source>It carries the key of this library.</source>
        <translation>Lleva la clave de esta biblioteca.</translation>
    </message>
    <message>
        <source>Unaltered since it was handed over by %1</source>
        <translation>Sin cambios desde que lo entregó %1</translation>
    </message>
    <message>
        <source>You gave this key its name.</source>
        <translation>El nombre de esta clave se puso aquí.</translation>
    </message>
    <message>
        <source>Unaltered since it was handed over; unknown key</source>
        <translation>Sin cambios desde que se entregó; clave desconocida</translation>
    </message>
    <message>
        <source>Compare the fingerprint with the sender once, by eye or by telephone. Then give the key a name, and it is known from now on.</source>
        <translation>Comparar una vez la huella con quien lo envía, a la vista o por teléfono. Después dar un nombre a la clave, y desde entonces queda conocida.</translation>
    </message>
    <message>
        <source>Altered since it was handed over</source>
        <translation>Alterado desde que se entregó</translation>
    </message>
    <message>
        <source>Something was changed, added or taken out after it was signed. Ask the sender for the file again.</source>
        <translation>Se cambió, añadió o quitó algo después de firmarlo. Pedir de nuevo el archivo a quien lo envió.</translation>
    </message>
    <message>
        <source>Its signature can&apos;t be read</source>
        <translation>Su firma no se puede leer</translation>
    </message>
    <message>
        <source>It is damaged or from a newer version. Treat the file as not signed.</source>
        <translation>Está dañada o es de una versión más nueva. Tratar el archivo como no firmado.</translation>
    </message>
    <message numerus="yes">
        <source>%n records were changed and take the place of those here.</source>
        <translation>
            <numerusform>%n registro cambió y sustituye al de aquí.</numerusform>
            <numerusform>%n registros cambiaron y sustituyen a los de aquí.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records were changed here as well: both versions of each are kept.</source>
        <translation>
            <numerusform>%n registro se cambió también aquí: se conservan las dos versiones.</numerusform>
            <numerusform>%n registros se cambiaron también aquí: se conservan las dos versiones de cada uno.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records that you took out stay out.</source>
        <translation>
            <numerusform>%n registro que se quitó aquí queda fuera.</numerusform>
            <numerusform>%n registros que se quitaron aquí quedan fuera.</numerusform>
        </translation>
    </message>
    <message>
        <source>All of it is here already.</source>
        <translation>Ya está todo aquí.</translation>
    </message>
    <message>
        <source>Photo of %1: %2. %3</source>
        <translation>Foto del %1: %2. %3</translation>
    </message>
    <message>
        <source>Voice note of %1: %2. %3</source>
        <translation>Nota de voz del %1: %2. %3</translation>
    </message>
    <message>
        <source>Its file is lost.</source>
        <translation>Su archivo se ha perdido.</translation>
    </message>
    <message>
        <source>Its file is damaged.</source>
        <translation>Su archivo está dañado.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>Photo of %1: %2</source>
        <translation>Foto del %1: %2</translation>
    </message>
</context>
<context>
    <name>BringInFile</name>
    <message>
        <source>The sender no longer had everything. Not in this file:</source>
        <translation>El remitente ya no lo tenía todo. No está en este archivo:</translation>
    </message>
    <message>
        <source>These photos tell where they were taken. They are kept as the sender made them:</source>
        <translation>Estas fotos revelan dónde se tomaron. Se conservan tal como las hizo quien las envió:</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
</context>
<context>
    <name>BringInPage</name>
    <message>
        <source>Before it is brought in</source>
        <translation>Antes de incorporarlo</translation>
    </message>
    <message>
        <source>Reading and checking it …</source>
        <translation>Leyendo y comprobando …</translation>
    </message>
    <message>
        <source>This file can&apos;t be brought in</source>
        <translation>Este archivo no se puede incorporar</translation>
    </message>
    <message>
        <source>Bring back what was taken out here</source>
        <translation>Recuperar lo que se quitó aquí</translation>
    </message>
    <message>
        <source>Records that you deleted and the file still has</source>
        <translation>Registros que se borraron aquí y el archivo aún tiene</translation>
    </message>
    <message>
        <source>Bringing it in takes nothing away. Undo takes it back as one step.</source>
        <translation>Incorporarlo no quita nada. Deshacer lo retira en un solo paso.</translation>
    </message>
    <message>
        <source>Don&apos;t</source>
        <translation>No hacerlo</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Bring it in all the same</source>
        <translation>Incorporarlo de todos modos</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Incorporarlo</translation>
    </message>
</context>
<context>
    <name>CalculatorPage</name>
    <message>
        <source>This engine is gone: it was deleted. Undo brings it back.</source>
        <translation>Este motor ya no está: se eliminó. «Deshacer» lo recupera.</translation>
    </message>
    <message>
        <source>This session is gone: it was deleted. Undo brings it back.</source>
        <translation>Esta sesión ya no está: se borró. Deshacer la recupera.</translation>
    </message>
    <message>
        <source>Forget what was typed</source>
        <translation>Olvidar lo escrito</translation>
    </message>
    <message>
        <source>Attach to session</source>
        <translation>Adjuntar a la sesión</translation>
    </message>
</context>
<context>
    <name>CalculatorResult</name>
    <message>
        <source>Where does this come from?</source>
        <translation>¿De dónde sale esto?</translation>
    </message>
</context>
<context>
    <name>Calculators</name>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Held pressure</source>
        <translation>Presión retenida</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>At another set pressure</source>
        <translation>A otra presión ajustada</translation>
    </message>
    <message>
        <source>The same leak, cylinder and tester. The further apart the two set pressures, the more they tell.</source>
        <translation>La misma fuga, el mismo cilindro y el mismo comprobador. Cuanto más separadas las dos presiones ajustadas, más dicen.</translation>
    </message>
    <message>
        <source>A gauge of its own for the set pressure</source>
        <translation>Un manómetro propio para la presión ajustada</translation>
    </message>
    <message>
        <source>Turned otherwise</source>
        <translation>Girado de otro modo</translation>
    </message>
    <message>
        <source>Other cranking speed</source>
        <translation>Otra velocidad de arranque</translation>
    </message>
    <message>
        <source>Leave it empty for that of a flat battery.</source>
        <translation>Dejarlo vacío para la de una batería descargada.</translation>
    </message>
    <message>
        <source>Pressure at intake closing, of the air&apos;s</source>
        <translation>Presión al cerrar la admisión, respecto a la del aire</translation>
    </message>
    <message>
        <source>How far the throttle is shut: 100 % is wide open. Leave it empty for shut, with how far that goes as the range.</source>
        <translation>Cuánto está cerrada la mariposa: 100 % es abierta del todo. Dejarlo vacío para cerrada; el intervalo muestra hasta dónde llega eso.</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Comprobador</translation>
    </message>
    <message>
        <source>Full scale of its gauge</source>
        <translation>Fondo de escala de su manómetro</translation>
    </message>
    <message>
        <source>With scale and class the uncertainty is this gauge&apos;s own; 0 is not known.</source>
        <translation>Con la escala y la clase, la incertidumbre es la de este manómetro; 0 es «no se sabe».</translation>
    </message>
    <message>
        <source>Class by</source>
        <translation>Clase según</translation>
    </message>
    <message>
        <source>Accuracy class</source>
        <translation>Clase de exactitud</translation>
    </message>
    <message>
        <source>EN 837-1: 1.6 or 2.5. ASME B40.100: a grade from A to D.</source>
        <translation>EN 837-1: 1,6 o 2,5. ASME B40.100: un grado de la A a la D.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <translation>Diámetro del restrictor</translation>
    </message>
    <message>
        <source>Leave it empty if you don&apos;t know: the app assumes the usual one, and the ± is wider for it.</source>
        <translation>Dejarlo vacío si no se sabe: la app supone el usual, y el ± es por eso más ancho.</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <translation>Coeficiente de descarga</translation>
    </message>
    <message>
        <source>Leave it empty if you don&apos;t know: the app assumes one.</source>
        <translation>Dejarlo vacío si no se sabe: la app supone uno.</translation>
    </message>
    <message>
        <source>Other tester</source>
        <translation>Otro comprobador</translation>
    </message>
    <message>
        <source>Its set pressure</source>
        <translation>Su presión ajustada</translation>
    </message>
    <message>
        <source>Its restrictor diameter</source>
        <translation>Diámetro de su restrictor</translation>
    </message>
    <message>
        <source>Drilled hole</source>
        <translation>Agujero taladrado</translation>
    </message>
    <message>
        <source>Diameter of the hole</source>
        <translation>Diámetro del agujero</translation>
    </message>
    <message>
        <source>Drilled through a cap that stands in the cylinder&apos;s place, as long as the restrictor is.</source>
        <translation>Taladrado en una tapa que ocupa el lugar del cilindro, tan largo como el restrictor.</translation>
    </message>
    <message>
        <source>Held pressure on the hole</source>
        <translation>Presión retenida en el agujero</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Presión del aire</translation>
    </message>
    <message>
        <source>What a barometer in the shop shows. It wins over the altitude; a weather report&apos;s figure is for sea level and does not do.</source>
        <translation>Lo que marca un barómetro en el taller. Vale más que la altitud; la cifra de un parte meteorológico es para el nivel del mar y no sirve.</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Factory limit, for sea level</source>
        <translation>Límite de fábrica, al nivel del mar</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Carrera</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Biela</translation>
    </message>
    <message>
        <source>Between the centres of its eyes. Leave it empty and the app assumes one.</source>
        <translation>Entre los centros de sus ojos. Si se deja vacío, la app supone una.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Relación de compresión</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>Exhaust port closes after bottom dead centre</source>
        <translation>La lumbrera de escape cierra después del punto muerto inferior</translation>
    </message>
    <message>
        <source>Intake closes after bottom dead centre</source>
        <translation>La admisión cierra después del punto muerto inferior</translation>
    </message>
    <message>
        <source>Leave it empty and the app assumes one, with its doubt.</source>
        <translation>Si se deja vacío, la app supone uno, con su incertidumbre.</translation>
    </message>
    <message>
        <source>Intake closing is quoted at</source>
        <translation>Cierre de admisión indicado a</translation>
    </message>
    <message>
        <source>Cranking</source>
        <translation>Arranque</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <translation>Velocidad de arranque</translation>
    </message>
    <message>
        <source>Warm or cold</source>
        <translation>Caliente o frío</translation>
    </message>
    <message>
        <source>Compression gauge</source>
        <translation>Manómetro de compresión</translation>
    </message>
    <message>
        <source>Hose and gauge hold</source>
        <translation>Volumen de manguera y manómetro</translation>
    </message>
    <message>
        <source>Check valve sits at the</source>
        <translation>Válvula antirretorno en</translation>
    </message>
    <message>
        <source>Valve core</source>
        <translation>Núcleo de válvula</translation>
    </message>
    <message>
        <source>Adapter adds</source>
        <translation>El adaptador añade</translation>
    </message>
    <message>
        <source>Reading to correct</source>
        <translation>Lectura por corregir</translation>
    </message>
    <message>
        <source>Wet test</source>
        <translation>Prueba húmeda</translation>
    </message>
    <message>
        <source>Oil put in</source>
        <translation>Aceite echado</translation>
    </message>
    <message>
        <source>Dry reading</source>
        <translation>Lectura en seco</translation>
    </message>
    <message>
        <source>Air in the cylinder</source>
        <translation>Aire en el cilindro</translation>
    </message>
    <message>
        <source>Pressure in the cylinder</source>
        <translation>Presión en el cilindro</translation>
    </message>
    <message>
        <source>At most the set pressure.</source>
        <translation>Como máximo la presión ajustada.</translation>
    </message>
    <message>
        <source>Angle from top dead centre</source>
        <translation>Ángulo desde el punto muerto superior</translation>
    </message>
    <message>
        <source>Length of the bar</source>
        <translation>Longitud de la barra</translation>
    </message>
    <message>
        <source>Type one or several</source>
        <translation>Escribir uno o varios</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Leakage</source>
        <translation>Pérdida</translation>
    </message>
    <message>
        <source>Another tester</source>
        <translation>Otro comprobador</translation>
    </message>
    <message>
        <source>Two set pressures</source>
        <translation>Dos presiones ajustadas</translation>
    </message>
    <message>
        <source>Restrictor check</source>
        <translation>Verificar el restrictor</translation>
    </message>
    <message>
        <source>Hose and adapter</source>
        <translation>Manguera y adaptador</translation>
    </message>
    <message>
        <source>Oil in a wet test</source>
        <translation>Aceite en la prueba húmeda</translation>
    </message>
    <message>
        <source>Healthy reading</source>
        <translation>Lectura de motor sano</translation>
    </message>
    <message>
        <source>Speed and throttle</source>
        <translation>Velocidad y mariposa</translation>
    </message>
    <message>
        <source>Holding torque</source>
        <translation>Par de retención</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>What was lost of the set pressure, and how large the leak is</source>
        <translation>Qué se perdió de la presión ajustada, y qué tamaño tiene la fuga</translation>
    </message>
    <message>
        <source>The same leak behind another restrictor, at another set pressure</source>
        <translation>La misma fuga detrás de otro restrictor, con otra presión ajustada</translation>
    </message>
    <message>
        <source>Whether a leak is like a hole or a narrow gap, is seated or opened by pressure</source>
        <translation>Si una fuga es como un agujero o una rendija, o si la presión la asienta o la abre</translation>
    </message>
    <message>
        <source>A home-made tester&apos;s restrictor, by a drilled hole of known size</source>
        <translation>El restrictor de un comprobador casero, con un agujero taladrado de medida conocida</translation>
    </message>
    <message>
        <source>What the volume before the check valve takes off a reading</source>
        <translation>Lo que el volumen antes de la válvula antirretorno quita a una lectura</translation>
    </message>
    <message>
        <source>What the oil&apos;s mere volume adds to a wet reading</source>
        <translation>Lo que el mero volumen del aceite suma a una lectura húmeda</translation>
    </message>
    <message>
        <source>A factory limit at the shop&apos;s altitude or air pressure</source>
        <translation>Un límite de fábrica a la altitud o la presión del aire del taller</translation>
    </message>
    <message>
        <source>What a cylinder that seals well should read</source>
        <translation>Lo que debería marcar un cilindro que sella bien</translation>
    </message>
    <message>
        <source>What slow cranking and a shut throttle take off a healthy reading</source>
        <translation>Lo que un giro lento y una mariposa cerrada quitan a una lectura sana</translation>
    </message>
    <message>
        <source>What the crank must be held against with the air on</source>
        <translation>Contra qué hay que sujetar el cigüeñal con el aire puesto</translation>
    </message>
    <message>
        <source>Pressure, length, volume, temperature, torque, flow</source>
        <translation>Presión, longitud, volumen, temperatura, par, caudal</translation>
    </message>
</context>
<context>
    <name>CalculatorsPage</name>
    <message>
        <source>Calculators</source>
        <translation>Calculadoras</translation>
    </message>
    <message>
        <source>filled from the session</source>
        <translation>tomado de la sesión</translation>
    </message>
    <message>
        <source>Filled from which engine&apos;s card?</source>
        <translation>¿Con la ficha de qué motor se rellena?</translation>
    </message>
    <message>
        <source>None: I type it all</source>
        <translation>Ninguna: lo escribo todo yo</translation>
    </message>
    <message>
        <source>Bore, stroke and the rest from</source>
        <translation>Diámetro, carrera y demás datos de</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
</context>
<context>
    <name>CaptureTrouble</name>
    <message>
        <source>Try again</source>
        <translation>Intentar de nuevo</translation>
    </message>
    <message>
        <source>System settings</source>
        <translation>Ajustes del sistema</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Touch to read it all</source>
        <translation>Tocar para leerlo todo</translation>
    </message>
    <message>
        <source>Touch to fold</source>
        <translation>Tocar para plegar</translation>
    </message>
</context>
<context>
    <name>CautionFold</name>
    <message>
        <source>Cautions before the work: %1</source>
        <translation>Advertencias antes del trabajo: %1</translation>
    </message>
    <message>
        <source>Touch to fold</source>
        <translation>Tocar para plegar</translation>
    </message>
    <message>
        <source>Touch to read it all</source>
        <translation>Tocar para leerlo todo</translation>
    </message>
</context>
<context>
    <name>CautionGate</name>
    <message>
        <source>Before you start</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>The engine&apos;s manual, local rules and licensed practice come before this app.</source>
        <translation>El manual del motor, las normas locales y la práctica autorizada van por delante de esta app.</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Read on</source>
        <translation>Seguir leyendo</translation>
    </message>
</context>
<context>
    <name>ChangeRow</name>
    <message>
        <source>before %1</source>
        <translation>antes %1</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>después %1</translation>
    </message>
    <message>
        <source>Where does this come from?</source>
        <translation>¿De dónde sale esto?</translation>
    </message>
</context>
<context>
    <name>ChangesPage</name>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>To be compared with care</source>
        <translation>Comparar con cuidado</translation>
    </message>
    <message>
        <source>Not everything can be compared</source>
        <translation>No todo se puede comparar</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Cylinder %1, %2</source>
        <translation>Cilindro %1, %2</translation>
    </message>
    <message>
        <source>Not measured at either visit.</source>
        <translation>No medido en ninguna de las dos visitas.</translation>
    </message>
    <message>
        <source>± is about 95 %. What one gauge is out by at both visits cancels in the difference; what two gauges are out by does not. Touch a difference to see where it comes from.</source>
        <translation>± es alrededor del 95 %. Lo que un mismo manómetro se desvía en ambas visitas se anula en la diferencia; lo que se desvían dos manómetros, no. Tocar una diferencia para ver de dónde sale.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
</context>
<context>
    <name>ChooseFile</name>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
</context>
<context>
    <name>ClearancesPage</name>
    <message>
        <source>Clearances</source>
        <translation>Juego de válvulas</translation>
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
        <translation>Borrar</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Keep, next valve</source>
        <translation>Guardar, siguiente</translation>
    </message>
    <message>
        <source>Keep all the same</source>
        <translation>Guardar igual</translation>
    </message>
</context>
<context>
    <name>CommitCall</name>
    <message>
        <source>Commit my call</source>
        <translation>Confirmar mi dictamen</translation>
    </message>
    <message>
        <source>Choose where it leaks</source>
        <translation>Elegir por dónde pierde</translation>
    </message>
    <message>
        <source>Call every cylinder first</source>
        <translation>Dar antes el dictamen de cada cilindro</translation>
    </message>
</context>
<context>
    <name>ConfirmSheet</name>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
</context>
<context>
    <name>ConflictsPage</name>
    <message>
        <source>Two versions</source>
        <translation>Dos versiones</translation>
    </message>
    <message>
        <source>Each of these was changed on two sides. Nothing is lost until you choose, and Undo brings the other version back.</source>
        <translation>Cada uno de estos se cambió en dos lados. Nada se pierde hasta elegir, y Deshacer recupera la otra versión.</translation>
    </message>
    <message>
        <source>Every record has one version. There is nothing to choose.</source>
        <translation>Cada registro tiene una sola versión. No hay nada que elegir.</translation>
    </message>
    <message>
        <source>Shows now, %1</source>
        <translation>Se muestra ahora, %1</translation>
    </message>
    <message>
        <source>The other one, %1</source>
        <translation>La otra, %1</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nada anotado</translation>
    </message>
    <message>
        <source>This one stands</source>
        <translation>Vale esta</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>CylinderFindingsPanel</name>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Heard: %1</source>
        <translation>Oído: %1</translation>
    </message>
    <message>
        <source>Rules of thumb say</source>
        <translation>Las reglas prácticas dicen</translation>
    </message>
</context>
<context>
    <name>CylinderGridSheet</name>
    <message>
        <source>Cylinders</source>
        <translation>Cilindros</translation>
    </message>
</context>
<context>
    <name>CylinderSheet</name>
    <message>
        <source>Cylinder</source>
        <translation>Cilindro</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>As the engine&apos;s maker counts it, 1 to 99.</source>
        <translation>Como los cuenta el fabricante del motor, de 1 a 99.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>front, rear, left ...</source>
        <translation>delantero, trasero, izquierdo ...</translation>
    </message>
    <message>
        <source>Bank</source>
        <translation>Bancada</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primera</translation>
    </message>
    <message>
        <source>second</source>
        <translation>segunda</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>CylinderStrip</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>CylinderTile</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
</context>
<context>
    <name>DeleteEngineSheet</name>
    <message>
        <source>Delete %1?</source>
        <translation>¿Borrar %1?</translation>
    </message>
    <message>
        <source>Its card goes with all that is typed there. Undo brings it back, also later from More, until something else is done.</source>
        <translation>Su ficha se borra con todo lo que está escrito en ella. Deshacer la recupera, también más tarde en Más, hasta que se haga otra cosa.</translation>
    </message>
    <message numerus="yes">
        <source>With it go %n session(s): readings, photos, voice notes, plans. Undo brings all of it back, also later from More, until something else is done; after that only a backup or a session file does.</source>
        <translation>
            <numerusform>Con él se va %n sesión: lecturas, fotos, notas de voz, planes. «Deshacer» lo recupera todo, también más tarde desde «Más», hasta que se haga otra cosa; después solo una copia de seguridad o un archivo de sesión.</numerusform>
            <numerusform>Con él se van %n sesiones: lecturas, fotos, notas de voz, planes. «Deshacer» lo recupera todo, también más tarde desde «Más», hasta que se haga otra cosa; después solo una copia de seguridad o un archivo de sesión.</numerusform>
        </translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation>Borrarlo</translation>
    </message>
    <message>
        <source>Delete all of it</source>
        <translation>Borrarlo todo</translation>
    </message>
    <message>
        <source>Keep the engine</source>
        <translation>Conservar el motor</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>Liquid-cooled 90 degree V-twin, 498 cm3, invented for trying the app out</source>
        <translation>V2 a 90 grados refrigerado por líquido, 498 cm³, inventado para probar la app</translation>
    </message>
    <message>
        <source>In-line six car engine, 2993 cm3, invented for trying the app out</source>
        <translation>Seis cilindros en línea de un coche, 2993 cm³, inventado para probar la app</translation>
    </message>
    <message>
        <source>One owner since new. Oil changed every year; valves last looked at when it was run in.</source>
        <translation>Un solo dueño desde nueva. Aceite cambiado cada año; las válvulas se miraron por última vez tras el rodaje.</translation>
    </message>
    <message>
        <source>Ran hot once last summer when the fan belt went.</source>
        <translation>Se calentó una vez el verano pasado, al romperse la correa del ventilador.</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>demo</translation>
    </message>
    <message>
        <source>motorcycle</source>
        <translation>moto</translation>
    </message>
    <message>
        <source>car</source>
        <translation>coche</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delantero</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>trasero</translation>
    </message>
    <message>
        <source>by the notice board in the club house</source>
        <translation>junto al tablón de anuncios del local del club</translation>
    </message>
    <message>
        <source>at the harbour office, ask for the key</source>
        <translation>en la oficina del puerto, pedir la llave</translation>
    </message>
    <message>
        <source>invented handbook, data sheet</source>
        <translation>manual inventado, hoja de datos</translation>
    </message>
    <message>
        <source>invented handbook, engine data</source>
        <translation>manual inventado, datos del motor</translation>
    </message>
    <message>
        <source>invented handbook, for sea level</source>
        <translation>manual inventado, para el nivel del mar</translation>
    </message>
    <message>
        <source>Gauge 0-16 bar</source>
        <translation>Manómetro 0-16 bar</translation>
    </message>
    <message>
        <source>M12 long reach</source>
        <translation>M12 largo</translation>
    </message>
    <message>
        <source>M14 long reach</source>
        <translation>M14 largo</translation>
    </message>
    <message>
        <source>Leak-down tester, club</source>
        <translation>Comprobador de estanqueidad, club</translation>
    </message>
    <message>
        <source>Leak-down tester, harbour</source>
        <translation>Comprobador de estanqueidad, puerto</translation>
    </message>
    <message>
        <source>Needle stood still for a minute.</source>
        <translation>La aguja se mantuvo quieta un minuto.</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como se encontró</translation>
    </message>
    <message>
        <source>After the repair</source>
        <translation>Tras la reparación</translation>
    </message>
    <message>
        <source>A year later</source>
        <translation>Un año después</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Lost power over one season and starts badly when warm.</source>
        <translation>Perdió potencia en una temporada y arranca mal en caliente.</translation>
    </message>
    <message>
        <source>Test after the repair, run in for 350 km.</source>
        <translation>Prueba tras la reparación, con 350 km de rodaje.</translation>
    </message>
    <message>
        <source>Yearly look. Uses a little more oil than last summer.</source>
        <translation>Revisión anual. Gasta algo más de aceite que el verano pasado.</translation>
    </message>
    <message>
        <source>Shakes at idle since it ran hot.</source>
        <translation>Vibra al ralentí desde que se calentó.</translation>
    </message>
    <message>
        <source>It runs.</source>
        <translation>El motor funciona.</translation>
    </message>
    <message>
        <source>The charger is lent out.</source>
        <translation>El cargador está prestado.</translation>
    </message>
    <message>
        <source>None at hand.</source>
        <translation>No hay ninguno a mano.</translation>
    </message>
    <message>
        <source>engine oil 10W-40</source>
        <translation>aceite de motor 10W-40</translation>
    </message>
    <message>
        <source>Again at the end, against a tiring battery.</source>
        <translation>Otra vez al final, con la batería cansándose.</translation>
    </message>
    <message>
        <source>Front exhaust hisses with the hose at the silencer; rear blows at the oil filler.</source>
        <translation>Delante silba el escape con la manguera en el silenciador; detrás sopla por el tapón de llenado de aceite.</translation>
    </message>
    <message>
        <source>With the air on 2 it whistles out of plug hole 3, and the other way round.</source>
        <translation>Con el aire en el 2 silba por el agujero de bujía 3, y al revés.</translation>
    </message>
    <message>
        <source>Pulls well again. No smoke.</source>
        <translation>Vuelve a tirar bien. Sin humo.</translation>
    </message>
    <message>
        <source>Head off, exhaust valves new, seats cut and lapped</source>
        <translation>Desmontar la culata, válvulas de escape nuevas, asientos fresados y esmerilados</translation>
    </message>
    <message>
        <source>2 exhaust valves, stem seals, head gasket set</source>
        <translation>2 válvulas de escape, retenes de vástago, juego de juntas de culata</translation>
    </message>
    <message>
        <source>Air at the exhaust with the clearance in range.</source>
        <translation>Aire por el escape con el juego de válvulas correcto.</translation>
    </message>
    <message>
        <source>The burnt edge grows, the seat goes next and the head has to be built up.</source>
        <translation>El borde quemado crece, después se daña el asiento y habrá que recargar la culata.</translation>
    </message>
    <message>
        <source>Cylinder off, bore measured and honed, piston rings new</source>
        <translation>Desmontar el cilindro, medir y bruñir, segmentos nuevos</translation>
    </message>
    <message>
        <source>ring set, base and head gasket</source>
        <translation>juego de segmentos, junta de base y de culata</translation>
    </message>
    <message>
        <source>Air at the breather, and oil lifted the reading.</source>
        <translation>Aire por el respiradero, y el aceite subió la lectura.</translation>
    </message>
    <message>
        <source>Oil use rises; the plug will foul.</source>
        <translation>Sube el consumo de aceite; la bujía se engrasará.</translation>
    </message>
    <message>
        <source>Watch the oil, test again next spring</source>
        <translation>Vigilar el aceite, volver a probar la próxima primavera</translation>
    </message>
    <message>
        <source>More air at the breather than a year ago, still wear.</source>
        <translation>Más aire por el respiradero que hace un año, todavía desgaste.</translation>
    </message>
    <message>
        <source>Nothing this season.</source>
        <translation>Nada en esta temporada.</translation>
    </message>
    <message>
        <source>Head off, head and block checked for flatness, new gasket</source>
        <translation>Desmontar la culata, comprobar la planitud de culata y bloque, junta nueva</translation>
    </message>
    <message>
        <source>head gasket set, head bolts</source>
        <translation>juego de juntas de culata, tornillos de culata</translation>
    </message>
    <message>
        <source>Cylinders 2 and 3 blow into each other.</source>
        <translation>Los cilindros 2 y 3 soplan uno en el otro.</translation>
    </message>
    <message>
        <source>The gap burns into the head and the block.</source>
        <translation>La fuga quema la culata y el bloque.</translation>
    </message>
</context>
<context>
    <name>DerivationSheet</name>
    <message>
        <source>Where does this come from</source>
        <translation>De dónde sale esto</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
</context>
<context>
    <name>DifferenceText</name>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
</context>
<context>
    <name>EarlierOilSheet</name>
    <message>
        <source>Is the oil gone?</source>
        <translation>¿Ya no queda aceite?</translation>
    </message>
    <message>
        <source>This bore was wiped</source>
        <translation>Este cilindro se limpió</translation>
    </message>
    <message>
        <source>Neither: read over oil</source>
        <translation>Ninguna de las dos: medir con aceite</translation>
    </message>
    <message>
        <source>Oil helps the rings to seal until the engine has run for some minutes, or the bore was wiped. A reading over oil can&apos;t be compared with one before it.</source>
        <translation>El aceite ayuda a los segmentos a sellar hasta que el motor ha funcionado unos minutos o se ha limpiado el cilindro. Una lectura con aceite no se puede comparar con una anterior a él.</translation>
    </message>
    <message>
        <source>The engine ran since</source>
        <translation>El motor funcionó desde entonces</translation>
    </message>
</context>
<context>
    <name>EmptyPane</name>
    <message>
        <source>Choose an engine</source>
        <translation>Elegir un motor</translation>
    </message>
    <message>
        <source>Its sessions open here.</source>
        <translation>Sus sesiones se abren aquí.</translation>
    </message>
</context>
<context>
    <name>EngineCard</name>
    <message>
        <source>Name and owner</source>
        <translation>Nombre y propietario</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Maker, type, year, number</source>
        <translation>Fabricante, tipo, año, número</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>Words to find it by, with commas between them.</source>
        <translation>Palabras para encontrarlo, separadas por comas.</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propietario</translation>
    </message>
    <message>
        <source>Owner&apos;s contact</source>
        <translation>Contacto del propietario</translation>
    </message>
    <message>
        <source>Stays out of files that you hand over unless you tick it there.</source>
        <translation>Queda fuera de los archivos que se entregan, salvo que se marque allí.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>What is known of its past: overhauls, overheating, how long it stood.</source>
        <translation>Lo que se sabe de su pasado: revisiones, sobrecalentamiento, cuánto tiempo estuvo parado.</translation>
    </message>
    <message>
        <source>Make-up</source>
        <translation>Construcción</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>A rotary engine is not supported: its chambers seal in another way.</source>
        <translation>Un motor rotativo no se admite: sus cámaras sellan de otra manera.</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Refrigeración</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>Angle between the banks</source>
        <translation>Ángulo entre bancadas</translation>
    </message>
    <message>
        <source>Number of cylinders</source>
        <translation>Número de cilindros</translation>
    </message>
    <message>
        <source>1 to 16. Cylinders that stay keep their numbers.</source>
        <translation>De 1 a 16. Los cilindros que quedan conservan su número.</translation>
    </message>
    <message>
        <source>Firing and manifolds</source>
        <translation>Encendido y colectores</translation>
    </message>
    <message>
        <source>Firing order</source>
        <translation>Orden de encendido</translation>
    </message>
    <message>
        <source>As in 1-3-4-2. It tells which cylinder&apos;s TDC comes next.</source>
        <translation>Como 1-3-4-2. Dice de qué cilindro es el próximo PMS.</translation>
    </message>
    <message>
        <source>Firing intervals</source>
        <translation>Intervalos de encendido</translation>
    </message>
    <message>
        <source>Crank degrees from each cylinder to the next one, as in 270-450, or &quot;even&quot;.</source>
        <translation>Grados de cigüeñal de cada cilindro al siguiente, como 270-450, o «regular».</translation>
    </message>
    <message>
        <source>Cylinders on one manifold, as in 1-2, 3-4. Sound carries between them.</source>
        <translation>Cilindros en un mismo colector, como 1-2, 3-4. El sonido pasa de uno a otro.</translation>
    </message>
    <message>
        <source>Joined intakes</source>
        <translation>Admisiones unidas</translation>
    </message>
    <message>
        <source>Joined exhausts</source>
        <translation>Escapes unidos</translation>
    </message>
    <message>
        <source>Dimensions</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Carrera</translation>
    </message>
    <message>
        <source>Rod length</source>
        <translation>Longitud de biela</translation>
    </message>
    <message>
        <source>From centre to centre.</source>
        <translation>De centro a centro.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Relación de compresión</translation>
    </message>
    <message>
        <source>Trapped: from the closing of the exhaust port. For 7.2:1 type 7.2.</source>
        <translation>Efectiva: desde el cierre de la lumbrera de escape. Para 7,2:1 escribir 7,2.</translation>
    </message>
    <message>
        <source>For 9.2:1 type 9.2.</source>
        <translation>Para 9,2:1 escribir 9,2.</translation>
    </message>
    <message>
        <source>Exhaust port closes, after BDC</source>
        <translation>La lumbrera de escape cierra, después del PMI</translation>
    </message>
    <message>
        <source>Wanted when cold, as in 0.15-0.20.</source>
        <translation>El nominal en frío, como 0,15-0,20.</translation>
    </message>
    <message>
        <source>Valves</source>
        <translation>Válvulas</translation>
    </message>
    <message>
        <source>Intake valves per cylinder</source>
        <translation>Válvulas de admisión por cilindro</translation>
    </message>
    <message>
        <source>Exhaust valves per cylinder</source>
        <translation>Válvulas de escape por cilindro</translation>
    </message>
    <message>
        <source>Adjuster</source>
        <translation>Reglaje de válvulas</translation>
    </message>
    <message>
        <source>Intake clearance</source>
        <translation>Juego de admisión</translation>
    </message>
    <message>
        <source>Exhaust clearance</source>
        <translation>Juego de escape</translation>
    </message>
    <message>
        <source>Valve timing</source>
        <translation>Distribución</translation>
    </message>
    <message>
        <source>Intake closes, after BDC</source>
        <translation>La admisión cierra, después del PMI</translation>
    </message>
    <message>
        <source>A cranking reading hangs on it. Leave it empty if you don&apos;t know.</source>
        <translation>La lectura de compresión depende de ello. Dejarlo vacío si no se sabe.</translation>
    </message>
    <message>
        <source>Intake closing is quoted at</source>
        <translation>Cierre de admisión indicado a</translation>
    </message>
    <message>
        <source>Quoted at a lift, the valve closes on its seat 15 to 25 degrees later.</source>
        <translation>Si se indica a una alzada, la válvula cierra en su asiento de 15 a 25 grados más tarde.</translation>
    </message>
    <message>
        <source>Exhaust opens, before BDC</source>
        <translation>El escape abre, antes del PMI</translation>
    </message>
    <message>
        <source>Exhaust opening is quoted at</source>
        <translation>Apertura de escape indicada a</translation>
    </message>
    <message>
        <source>Injector, glow plug, decompressor</source>
        <translation>Inyector, bujía de precalentamiento, descompresor</translation>
    </message>
    <message>
        <source>Plug and decompressor</source>
        <translation>Bujía y descompresor</translation>
    </message>
    <message>
        <source>Thread of injector or glow plug</source>
        <translation>Rosca del inyector o de la bujía de precalentamiento</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <translation>Rosca de bujía</translation>
    </message>
    <message>
        <source>As in M14x1.25.</source>
        <translation>Como M14x1.25.</translation>
    </message>
    <message>
        <source>Reach of injector or glow plug</source>
        <translation>Alcance del inyector o de la bujía de precalentamiento</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <translation>Largo de rosca de bujía</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <translation>Descompresor</translation>
    </message>
    <message>
        <source>With one, a low cranking reading is no proof of a leak.</source>
        <translation>Si lo hay, una lectura de compresión baja no es prueba de una fuga.</translation>
    </message>
    <message>
        <source>Factory limits</source>
        <translation>Límites de fábrica</translation>
    </message>
    <message>
        <source>Normal range from</source>
        <translation>Rango normal desde</translation>
    </message>
    <message>
        <source>Normal range to</source>
        <translation>Rango normal hasta</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Most difference between cylinders</source>
        <translation>Diferencia máxima entre cilindros</translation>
    </message>
    <message>
        <source>Lowest against highest cylinder, at least</source>
        <translation>El más bajo frente al más alto, al menos</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <translation>Pérdida máxima</translation>
    </message>
    <message>
        <source>On the maker&apos;s own leak-down tester.</source>
        <translation>Con el comprobador de estanqueidad del propio fabricante.</translation>
    </message>
    <message>
        <source>Set pressure of that tester</source>
        <translation>Presión ajustada de ese comprobador</translation>
    </message>
    <message>
        <source>Restrictor of that tester</source>
        <translation>Restrictor de ese comprobador</translation>
    </message>
    <message>
        <source>Where the limits come from</source>
        <translation>De dónde vienen los límites</translation>
    </message>
    <message>
        <source>Page or source</source>
        <translation>Página o fuente</translation>
    </message>
    <message>
        <source>Crankcase test</source>
        <translation>Prueba del cárter</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>To be held for</source>
        <translation>A mantener durante</translation>
    </message>
    <message>
        <source>End pressure, at least</source>
        <translation>Presión final, al menos</translation>
    </message>
    <message>
        <source>Where these limits come from</source>
        <translation>De dónde vienen estos límites</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Above sea level. Factory limits are scaled to it.</source>
        <translation>Sobre el nivel del mar. Los límites de fábrica se convierten a ella.</translation>
    </message>
    <message>
        <source>even</source>
        <translation>regular</translation>
    </message>
</context>
<context>
    <name>EngineCardPage</name>
    <message>
        <source>Engine card</source>
        <translation>Ficha del motor</translation>
    </message>
    <message>
        <source>This engine is gone</source>
        <translation>Este motor ya no está</translation>
    </message>
    <message>
        <source>It was deleted. Undo brings it back; otherwise go back to the list.</source>
        <translation>Se borró. Con Deshacer vuelve; si no, volver a la lista.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message numerus="yes">
        <source>All %n sessions</source>
        <translation>
            <numerusform>La única sesión</numerusform>
            <numerusform>Las %n sesiones</numerusform>
        </translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Report, session file, table</source>
        <translation>Informe, archivo de sesión, tabla</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Two visits, cylinder by cylinder</source>
        <translation>Dos visitas, cilindro a cilindro</translation>
    </message>
    <message>
        <source>Delete this engine and its sessions</source>
        <translation>Borrar este motor y sus sesiones</translation>
    </message>
    <message>
        <source>Delete this engine</source>
        <translation>Borrar este motor</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Nueva sesión</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <translation>Seguir: %1</translation>
    </message>
</context>
<context>
    <name>EngineTile</name>
    <message>
        <source>%1, from an earlier visit</source>
        <translation>%1, de una visita anterior</translation>
    </message>
    <message>
        <source>some cylinders as an earlier visit left them</source>
        <translation>algunos cilindros, como los dejó una visita anterior</translation>
    </message>
</context>
<context>
    <name>EngineTilePictures</name>
    <message>
        <source>earlier</source>
        <translation>anterior</translation>
    </message>
    <message>
        <source>pale: earlier</source>
        <translation>pálido: anterior</translation>
    </message>
</context>
<context>
    <name>EnginesEmpty</name>
    <message>
        <source>No engine yet</source>
        <translation>Aún no hay motores</translation>
    </message>
    <message>
        <source>Add the engine in front of you, open a session file that someone sent, or look at two invented engines first.</source>
        <translation>Añadir el motor que se tiene delante, abrir un archivo de sesión que alguien envió, o mirar primero dos motores inventados.</translation>
    </message>
    <message>
        <source>Open a session file</source>
        <translation>Abrir un archivo de sesión</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Ver la demostración</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia</translation>
    </message>
</context>
<context>
    <name>EnginesMoreSheet</name>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Undo the last step</source>
        <translation>Deshacer el último paso</translation>
    </message>
    <message>
        <source>Nothing to take back</source>
        <translation>Nada que deshacer</translation>
    </message>
    <message>
        <source>Redo what was undone</source>
        <translation>Rehacer lo deshecho</translation>
    </message>
    <message>
        <source>Nothing to do again</source>
        <translation>Nada que rehacer</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Nueva sesión</translation>
    </message>
    <message>
        <source>Add an engine</source>
        <translation>Añadir un motor</translation>
    </message>
    <message>
        <source>Open a session file</source>
        <translation>Abrir un archivo de sesión</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Ver la demostración</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Calculators</source>
        <translation>Calculadoras</translation>
    </message>
    <message>
        <source>Wipe the glass</source>
        <translation>Limpiar el cristal</translation>
    </message>
    <message>
        <source>For 10 seconds no touch counts.</source>
        <translation>Durante 10 segundos ningún toque cuenta.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
</context>
<context>
    <name>EnginesPage</name>
    <message>
        <source>Engines</source>
        <translation>Motores</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>No engine fits this search. Fewer letters find more.</source>
        <translation>Ningún motor encaja en esta búsqueda. Con menos letras se encuentra más.</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Comprobadores</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Add an engine</source>
        <translation>Añadir un motor</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <translation>Seguir: %1</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Nueva sesión</translation>
    </message>
</context>
<context>
    <name>EnginesSearch</name>
    <message>
        <source>Search name, tags, description</source>
        <translation>Buscar nombre, etiquetas, descripción</translation>
    </message>
    <message>
        <source>Clear the search</source>
        <translation>Borrar la búsqueda</translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>There is no room left to write %1. Free some space and try again.</source>
        <extracomment>file.no_space</extracomment>
        <translation>No queda espacio para escribir %1. Liberar espacio e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>Working with %1 is not allowed here. Choose another folder or change who may use it.</source>
        <extracomment>file.not_allowed</extracomment>
        <translation>No está permitido trabajar con %1. Elegir otra carpeta o cambiar quién puede usarla.</translation>
    </message>
    <message>
        <source>%1 or its folder does not exist. Choose another place.</source>
        <extracomment>file.not_found</extracomment>
        <translation>%1 o su carpeta no existe. Elegir otro lugar.</translation>
    </message>
    <message>
        <source>%1 could not be read or written: %2. Try again or choose another place.</source>
        <extracomment>file.failed</extracomment>
        <translation>%1 no se pudo leer o escribir: %2. Intentarlo de nuevo o elegir otro lugar.</translation>
    </message>
    <message>
        <source>%1 is a folder, a pipe or a device. Choose a file.</source>
        <extracomment>file.no_file</extracomment>
        <translation>%1 es una carpeta, una tubería o un dispositivo. Elegir un archivo.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes: it can&apos;t be what is wanted here.</source>
        <extracomment>file.too_large</extracomment>
        <translation>%1 pasa de %2 bytes: no puede ser lo que se pide aquí.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time with offset, such as 2026-03-14T09:30:00+01:00.</source>
        <extracomment>time.malformed</extracomment>
        <translation>«%1» no es una hora con desfase, como 2026-03-14T09:30:00+01:00.</translation>
    </message>
    <message>
        <source>which sum</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>qué cálculo</translation>
    </message>
    <message>
        <source>bore</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>diámetro del cilindro</translation>
    </message>
    <message>
        <source>stroke</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>carrera</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>relación de compresión</translation>
    </message>
    <message>
        <source>No reading is worked out at a compression ratio above 14: there the model reads far over what makers print. Use the maker&apos;s figure.</source>
        <extracomment>calculator.above_ratio</extracomment>
        <translation>No se calcula ninguna lectura con una relación de compresión superior a 14: ahí el modelo da mucho más de lo que publican los fabricantes. Usar la cifra del fabricante.</translation>
    </message>
    <message>
        <source>The model gives no reading for that speed or throttle.</source>
        <extracomment>calculator.turning</extracomment>
        <translation>El modelo no da lectura para esa velocidad o mariposa.</translation>
    </message>
    <message>
        <source>With the check valve at the plug hole and no adapter the hose takes nothing off. Choose where the check valve sits, or type an adapter&apos;s volume.</source>
        <extracomment>calculator.no_hose</extracomment>
        <translation>Con la válvula antirretorno en el agujero de bujía y sin adaptador, la manguera no quita nada. Elegir dónde está la válvula antirretorno o escribir el volumen de un adaptador.</translation>
    </message>
    <message>
        <source>Never put oil into a diesel: its chamber is so small that oil can lock the engine.</source>
        <extracomment>calculator.oil_diesel</extracomment>
        <translation>Nunca echar aceite en un diésel: su cámara es tan pequeña que el aceite puede bloquear el motor.</translation>
    </message>
    <message>
        <source>oil put in</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>aceite echado</translation>
    </message>
    <message>
        <source>That much oil fills the chamber: cranking would lock the engine and can bend a rod. Use less oil.</source>
        <extracomment>calculator.oil_locks</extracomment>
        <translation>Tanto aceite llena la cámara: dar arranque bloquearía el motor y puede doblar una biela. Usar menos aceite.</translation>
    </message>
    <message>
        <source>These two pressures can&apos;t be worked with: type what was set and what was held.</source>
        <extracomment>calculator.leakage</extracomment>
        <translation>Con estas dos presiones no se puede calcular: escribir la que se ajustó y la que se mantuvo.</translation>
    </message>
    <message>
        <source>set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>presión ajustada</translation>
    </message>
    <message>
        <source>held pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>presión retenida</translation>
    </message>
    <message>
        <source>the other tester&apos;s set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>presión ajustada del otro comprobador</translation>
    </message>
    <message>
        <source>This leak can&apos;t be put on the other tester: look at the set pressures and restrictors.</source>
        <extracomment>calculator.other_tester</extracomment>
        <translation>Esta fuga no se puede pasar al otro comprobador: revisar las presiones ajustadas y los restrictores.</translation>
    </message>
    <message>
        <source>the second set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>la segunda presión ajustada</translation>
    </message>
    <message>
        <source>what was held at it</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>lo que se mantuvo con ella</translation>
    </message>
    <message>
        <source>These two readings don&apos;t show how the leak behaves: set pressures must lie well apart, and something must be lost and something held at both.</source>
        <extracomment>calculator.law</extracomment>
        <translation>Estas dos lecturas no muestran cómo se comporta la fuga: las presiones ajustadas deben estar bien separadas, y con ambas debe perderse algo y mantenerse algo.</translation>
    </message>
    <message>
        <source>diameter of the drilled hole</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>diámetro del agujero taladrado</translation>
    </message>
    <message>
        <source>Still to be typed: %1.</source>
        <extracomment>calculator.needs</extracomment>
        <translation>Falta por escribir: %1.</translation>
    </message>
    <message>
        <source>altitude, or the air pressure in the shop</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>altitud, o presión del aire en el taller</translation>
    </message>
    <message>
        <source>rod</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>biela</translation>
    </message>
    <message>
        <source>pressure in the cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>presión en el cilindro</translation>
    </message>
    <message>
        <source>angle from top dead centre</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ángulo desde el punto muerto superior</translation>
    </message>
    <message>
        <source>a value to convert</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>un valor para convertir</translation>
    </message>
    <message>
        <source>The file holds two entries of the same name: &quot;%1&quot;. It was not made by this app: do not trust it.</source>
        <extracomment>archive.name_twice</extracomment>
        <translation>El archivo contiene dos entradas con el mismo nombre: «%1». No lo hizo esta app: no fiarse de él.</translation>
    </message>
    <message>
        <source>The file holds a link or a device instead of a file: &quot;%1&quot;. It was not made by this app: do not trust it.</source>
        <extracomment>archive.link</extracomment>
        <translation>El archivo contiene un enlace o un dispositivo en lugar de un archivo: «%1». No lo hizo esta app: no fiarse de él.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is damaged. Ask the sender to send it again.</source>
        <extracomment>archive.damaged</extracomment>
        <translation>La entrada «%1» del archivo está dañada. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is locked with a password. Ask the sender for the file as the app made it.</source>
        <extracomment>archive.encrypted</extracomment>
        <translation>La entrada «%1» del archivo está cerrada con una contraseña. Pedir a quien lo envió el archivo tal como lo hizo la app.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is packed in a way that is not supported. Ask the sender for the file as the app made it.</source>
        <extracomment>archive.method</extracomment>
        <translation>La entrada «%1» del archivo está comprimida de un modo que no se admite. Pedir a quien lo envió el archivo tal como lo hizo la app.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; would unpack to %2 bytes from %3: that is no real one. Do not trust this file.</source>
        <extracomment>archive.ratio</extracomment>
        <translation>La entrada «%1» pasaría a ocupar %2 bytes desde %3: eso no es una entrada real. No fiarse de este archivo.</translation>
    </message>
    <message>
        <source>%1 is not a session file but a folder or a device.</source>
        <extracomment>archive.not_a_zip</extracomment>
        <translation>%1 no es un archivo de sesión, sino una carpeta o un dispositivo.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes: no session file is that large.</source>
        <extracomment>archive.too_large</extracomment>
        <translation>%1 pasa de %2 bytes: ningún archivo de sesión es tan grande.</translation>
    </message>
    <message>
        <source>%1 is not a session file, or was cut short or changed on its way. Ask the sender to send it again.</source>
        <extracomment>archive.not_a_zip</extracomment>
        <translation>%1 no es un archivo de sesión, o se cortó o se cambió por el camino. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>%1 holds %2 entries: at most %3 are read. Do not trust this file.</source>
        <extracomment>archive.too_many</extracomment>
        <translation>%1 contiene %2 entradas: se leen como máximo %3. No fiarse de este archivo.</translation>
    </message>
    <message>
        <source>%1 is damaged. Ask the sender to send it again.</source>
        <extracomment>archive.damaged</extracomment>
        <translation>%1 está dañado. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>%1 would unpack to more than %2 bytes: no session file is that large. Do not trust it.</source>
        <extracomment>archive.unpacks_too_large</extracomment>
        <translation>%1 pasaría a ocupar más de %2 bytes: ningún archivo de sesión es tan grande. No fiarse de él.</translation>
    </message>
    <message>
        <source>Entries of %1 overlap. It was not made by this app: do not trust it.</source>
        <extracomment>archive.overlap</extracomment>
        <translation>Hay entradas de %1 que se solapan. No lo hizo esta app: no fiarse de él.</translation>
    </message>
    <message>
        <source>The entry &quot;%1&quot; of the file is %2 bytes long: at most %3 are read.</source>
        <extracomment>archive.text_too_large</extracomment>
        <translation>La entrada «%1» del archivo ocupa %2 bytes: se leen como máximo %3.</translation>
    </message>
    <message>
        <source>The file is no backup that Lapwing made (%1). Choose another file.</source>
        <extracomment>backup.none</extracomment>
        <translation>El archivo no es una copia de seguridad hecha por Lapwing (%1). Elegir otro archivo.</translation>
    </message>
    <message>
        <source>Stopped while the backup was being checked. Nothing was changed.</source>
        <extracomment>backup.stopped</extracomment>
        <translation>Parado mientras se comprobaba la copia de seguridad. No se cambió nada.</translation>
    </message>
    <message>
        <source>This backup was made by a newer Lapwing (its version is %1; this one reads 1.x). Update Lapwing to restore it.</source>
        <extracomment>backup.version</extracomment>
        <translation>Esta copia de seguridad la hizo un Lapwing más nuevo (su versión es %1; este lee 1.x). Actualizar Lapwing para restaurarla.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing from the backup.</source>
        <extracomment>bag.missing_file</extracomment>
        <translation>Falta «%1» en la copia de seguridad.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; stands in the file and not in %2: someone added it.</source>
        <extracomment>bag.unlisted_file</extracomment>
        <translation>«%1» está en el archivo y no en %2: alguien lo añadió.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; in the file is not as it was packed: it was damaged or changed on its way. Use another copy of the backup.</source>
        <extracomment>bag.checksum</extracomment>
        <translation>«%1» no está en el archivo tal como se empaquetó: se dañó o se cambió por el camino. Usar otro ejemplar de la copia de seguridad.</translation>
    </message>
    <message>
        <source>The backup was stopped. Nothing was written.</source>
        <extracomment>backup.stopped</extracomment>
        <translation>La copia de seguridad se paró. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 was changed while it was being backed up. Nothing was written: start it again.</source>
        <extracomment>backup.changed</extracomment>
        <translation>%1 cambió mientras se copiaba. No se escribió nada: empezar de nuevo.</translation>
    </message>
    <message>
        <source>All engines together are %1 GB, more than a backup may be (%2 GB): it could not be read again. Hand over the engines one by one as session files instead. Nothing was written.</source>
        <extracomment>backup.too_large</extracomment>
        <translation>Todos los motores juntos son %1 GB, más de lo que puede tener una copia de seguridad (%2 GB): no se podría volver a leer. Entregar los motores uno a uno como archivos de sesión. No se escribió nada.</translation>
    </message>
    <message>
        <source>The file&apos;s bagit.txt is not the two lines that BagIt asks for: ask the sender to send the original file again.</source>
        <extracomment>bag.declaration</extracomment>
        <translation>El bagit.txt del archivo no son las dos líneas que pide BagIt: pedir a quien lo envió que envíe de nuevo el archivo original.</translation>
    </message>
    <message>
        <source>The file is packed by version %1 of BagIt; 1.0 can be read. Update Lapwing, or ask for an older form.</source>
        <extracomment>bag.version</extracomment>
        <translation>El archivo está empaquetado con la versión %1 de BagIt; se puede leer la 1.0. Actualizar Lapwing o pedir una forma más antigua.</translation>
    </message>
    <message>
        <source>The file&apos;s lists are written in %1; only UTF-8 can be read.</source>
        <extracomment>bag.encoding</extracomment>
        <translation>Las listas del archivo están escritas en %1; solo se puede leer UTF-8.</translation>
    </message>
    <message>
        <source>Line %1 of %2 is not a checksum and a path: the file was changed on its way. Ask the sender to send it again.</source>
        <extracomment>bag.manifest_line</extracomment>
        <translation>La línea %1 de %2 no es una suma de comprobación y una ruta: el archivo se cambió por el camino. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>bag-info.txt begins with the rest of a line.</source>
        <extracomment>bag.info</extracomment>
        <translation>bag-info.txt empieza con el resto de una línea.</translation>
    </message>
    <message>
        <source>bag-info.txt has a line without a label: &quot;%1&quot;.</source>
        <extracomment>bag.info</extracomment>
        <translation>bag-info.txt tiene una línea sin rótulo: «%1».</translation>
    </message>
    <message>
        <source>bag-info.txt does not say its size (Payload-Oxum) once and as two numbers.</source>
        <extracomment>bag.oxum</extracomment>
        <translation>bag-info.txt no dice su tamaño (Payload-Oxum) una sola vez y como dos números.</translation>
    </message>
    <message>
        <source>The file holds an entry that must not be unpacked (%1): &quot;%2&quot;. It was not made by this app: do not trust it.</source>
        <extracomment>bag.path</extracomment>
        <translation>El archivo contiene una entrada que no se debe desempaquetar (%1): «%2». No lo hizo esta app: no fiarse de él.</translation>
    </message>
    <message>
        <source>This photo is no whole JPEG: no copy without its place can be made of it. Delete it, or leave it out.</source>
        <extracomment>photo.no_bare_copy</extracomment>
        <translation>Esta foto no es un JPEG completo: no se puede hacer una copia sin su lugar. Eliminarla o dejarla fuera.</translation>
    </message>
    <message>
        <source>%1 in the file is not a photo (JPEG). Ask the sender to send it again.</source>
        <extracomment>media.not_a_photo</extracomment>
        <translation>%1 en el archivo no es una foto (JPEG). Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>The photo %1 in the file has %2 pixels: at most %3 are opened. Do not trust this file.</source>
        <extracomment>media.photo_too_large</extracomment>
        <translation>La foto %1 del archivo tiene %2 píxeles: se abren como máximo %3. No fiarse de este archivo.</translation>
    </message>
    <message>
        <source>%1 in the file is not a voice note (%2). Ask the sender to send it again.</source>
        <extracomment>media.not_a_voice_note</extracomment>
        <translation>%1 en el archivo no es una nota de voz (%2). Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>The file is no session file: it holds no bagit.txt. Choose a file that Lapwing made.</source>
        <extracomment>bag.none</extracomment>
        <translation>El archivo no es un archivo de sesión: no contiene bagit.txt. Elegir un archivo hecho por Lapwing.</translation>
    </message>
    <message>
        <source>The file holds something beside the session: &quot;%1&quot;. Ask the sender for the original file.</source>
        <extracomment>bag.beside</extracomment>
        <translation>El archivo contiene algo aparte de la sesión: «%1». Pedir a quien lo envió el archivo original.</translation>
    </message>
    <message>
        <source>The file names parts to fetch from elsewhere (fetch.txt): Lapwing fetches nothing. Ask the sender for the whole file.</source>
        <extracomment>bag.fetch</extracomment>
        <translation>El archivo nombra partes que se traen de otro lugar (fetch.txt): Lapwing no trae nada. Pedir a quien lo envió el archivo entero.</translation>
    </message>
    <message>
        <source>The file has no list of checksums (manifest-sha256.txt or manifest-sha512.txt): it can&apos;t be checked. Ask the sender for the original file.</source>
        <extracomment>bag.no_manifest</extracomment>
        <translation>El archivo no tiene lista de sumas de comprobación (manifest-sha256.txt o manifest-sha512.txt): no se puede comprobar. Pedir al remitente el archivo original.</translation>
    </message>
    <message>
        <source>The file should hold %1 bytes in %2 files and holds %3 in %4. Ask the sender to send it again.</source>
        <extracomment>bag.oxum_differs</extracomment>
        <translation>El archivo debería contener %1 bytes en %2 archivos y contiene %3 en %4. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>%1 names &quot;%2&quot;, which is no file of the session.</source>
        <extracomment>bag.manifest_path</extracomment>
        <translation>%1 nombra «%2», que no es un archivo de la sesión.</translation>
    </message>
    <message>
        <source>%1 names &quot;%2&quot; twice.</source>
        <extracomment>bag.listed_twice</extracomment>
        <translation>%1 nombra «%2» dos veces.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing from the file. Ask the sender to send it again.</source>
        <extracomment>bag.missing_file</extracomment>
        <translation>«%1» falta en el archivo. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>%1 names &quot;%2&quot;, which does not belong there.</source>
        <extracomment>bag.tag_manifest_path</extracomment>
        <translation>%1 nombra «%2», que no debe estar ahí.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; in the file is not as it was packed: it was damaged or changed on its way. Ask the sender to send it again.</source>
        <extracomment>bag.checksum</extracomment>
        <translation>«%1» no está en el archivo tal como se empaquetó: se dañó o se cambió por el camino. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>The file holds no data/session.json: it is no session file.</source>
        <extracomment>session_file.no_session</extracomment>
        <translation>El archivo no contiene data/session.json: no es un archivo de sesión.</translation>
    </message>
    <message>
        <source>A %1 taken at %2 is missing from the file (%3). Ask the sender to send it again.</source>
        <extracomment>session_file.attachment_missing</extracomment>
        <translation>Falta en el archivo (%3) algo de este tipo: %1, tomado el %2. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>The %1 %2 is not the one that the session speaks of. Ask the sender to send it again.</source>
        <extracomment>session_file.attachment_differs</extracomment>
        <translation>No coincide con lo que nombra la sesión: %1 %2. Pedir a quien lo envió que lo envíe de nuevo.</translation>
    </message>
    <message>
        <source>The chosen sessions of this engine hold %1 records, more than the %2 that one file may. Choose fewer sessions for each file. Nothing was written.</source>
        <extracomment>session_file.too_many_records</extracomment>
        <translation>Las sesiones elegidas de este motor contienen %1 registros, más de los %2 que admite un archivo. Elegir menos sesiones para cada archivo. No se escribió nada.</translation>
    </message>
    <message>
        <source>The chosen sessions of this engine hold more than one file may: %1 MB in %2 files with %3 MB of records, where %4 MB in %5 files with %6 MB can be read again. Choose fewer sessions for each file. Nothing was written.</source>
        <extracomment>session_file.too_large</extracomment>
        <translation>Las sesiones elegidas de este motor son más de lo que cabe en un archivo: %1 MB en %2 archivos con %3 MB de registros; se pueden volver a leer %4 MB en %5 archivos con %6 MB. Elegir menos sesiones para cada archivo. No se escribió nada.</translation>
    </message>
    <message>
        <source>The file was made and could not be read again, so it was thrown away: %1</source>
        <extracomment>session_file.not_readable</extracomment>
        <translation>El archivo se hizo y no se pudo volver a leer, así que se descartó: %1</translation>
    </message>
    <message>
        <source>Nothing can be signed: the library for it did not start.</source>
        <extracomment>signature.no_library</extracomment>
        <translation>No se puede firmar nada: la biblioteca para ello no arrancó.</translation>
    </message>
    <message>
        <source>The key that files are signed with (%1) is damaged. Move that file away to get a new key; others will then see a new fingerprint.</source>
        <extracomment>signature.key_damaged</extracomment>
        <translation>La clave con la que se firman los archivos (%1) está dañada. Apartar ese archivo para obtener una clave nueva; los demás verán entonces una huella nueva.</translation>
    </message>
    <message>
        <source>The reference data in %1 can&apos;t be read: %2. Put the file back as it was shipped.</source>
        <extracomment>reference.malformed</extracomment>
        <translation>Los datos de referencia en %1 no se pueden leer: %2. Volver a poner el archivo tal como se entregó con la app.</translation>
    </message>
    <message>
        <source>The How to cards in %1 can&apos;t be read: %2. Put the file back as it was shipped.</source>
        <extracomment>knowhow.malformed</extracomment>
        <translation>Las fichas de Cómo se hace en %1 no se pueden leer: %2. Volver a poner el archivo tal como se entregó con la app.</translation>
    </message>
    <message>
        <source>The %1 has no %2: make it again from its own screen.</source>
        <extracomment>model.no_id</extracomment>
        <translation>Falta un dato (%2) en: %1. Hacerlo de nuevo desde su propia pantalla.</translation>
    </message>
    <message>
        <source>%1 of the %2 is no date of this calendar: set the phone&apos;s clock and try again.</source>
        <extracomment>model.bad_time</extracomment>
        <translation>%1 no es una fecha de este calendario (en: %2): poner en hora el teléfono e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 in the %2 is %3 characters long: at most %4 are kept. Shorten it.</source>
        <extracomment>model.text_too_long</extracomment>
        <translation>%1 (en: %2) tiene %3 caracteres: se guardan como máximo %4. Acortarlo.</translation>
    </message>
    <message>
        <source>%1 in the %2 holds characters that are not text (not UTF-8): type it again.</source>
        <extracomment>model.text_broken</extracomment>
        <translation>%1 (en: %2) contiene caracteres que no son texto (no UTF-8): escribirlo de nuevo.</translation>
    </message>
    <message>
        <source>The %1 has no %2: give it one.</source>
        <extracomment>model.missing</extracomment>
        <translation>Falta un dato (%2) en: %1. Añadirlo.</translation>
    </message>
    <message>
        <source>%1 in the %2 is %3: possible is %4 to %5. Check the digits and the unit.</source>
        <extracomment>model.out_of_range</extracomment>
        <translation>%1 (en: %2) es %3: es posible de %4 a %5. Revisar las cifras y la unidad.</translation>
    </message>
    <message>
        <source>%1 in the %2 is %3: it must be more than zero. Correct it or leave it empty.</source>
        <extracomment>model.not_positive</extracomment>
        <translation>%1 (en: %2) es %3: debe ser mayor que cero. Corregirlo o dejarlo vacío.</translation>
    </message>
    <message>
        <source>%1 (%2) is above %3 (%4) in the %5: correct one of the two.</source>
        <extracomment>model.crossed</extracomment>
        <translation>%1 (%2) está por encima de %3 (%4) en: %5. Corregir uno de los dos.</translation>
    </message>
    <message>
        <source>The engine has no cylinder: add at least one.</source>
        <extracomment>engine.no_cylinders</extracomment>
        <translation>El motor no tiene cilindros: añadir al menos uno.</translation>
    </message>
    <message>
        <source>The engine has %1 cylinders: at most %2 are supported.</source>
        <extracomment>engine.too_many_cylinders</extracomment>
        <translation>El motor tiene %1 cilindros: se admiten como máximo %2.</translation>
    </message>
    <message>
        <source>Cylinder number</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Número de cilindro</translation>
    </message>
    <message>
        <source>Two cylinders have the number %1: give one of them another.</source>
        <extracomment>engine.number_twice</extracomment>
        <translation>Dos cilindros tienen el número %1: dar otro a uno de ellos.</translation>
    </message>
    <message>
        <source>Cylinder name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nombre de cilindro</translation>
    </message>
    <message>
        <source>Bank</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Bancada</translation>
    </message>
    <message>
        <source>Row on the layout picture</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fila en el dibujo de disposición</translation>
    </message>
    <message>
        <source>Column on the layout picture</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Columna en el dibujo de disposición</translation>
    </message>
    <message>
        <source>The firing order names cylinder %1, which the engine does not have: correct the order.</source>
        <extracomment>engine.order_unknown_cylinder</extracomment>
        <translation>El orden de encendido nombra el cilindro %1, que el motor no tiene: corregir el orden.</translation>
    </message>
    <message>
        <source>The firing order names cylinder %1 twice: name each cylinder once.</source>
        <extracomment>engine.order_twice</extracomment>
        <translation>El orden de encendido nombra dos veces el cilindro %1: nombrar cada cilindro una vez.</translation>
    </message>
    <message>
        <source>The firing order names %1 of %2 cylinders: name each once, or leave the order empty.</source>
        <extracomment>engine.order_incomplete</extracomment>
        <translation>El orden de encendido nombra %1 de %2 cilindros: nombrar cada uno una vez, o dejar el orden vacío.</translation>
    </message>
    <message>
        <source>There are %1 firing intervals for %2 cylinders in the firing order: give one for each.</source>
        <extracomment>engine.interval_count</extracomment>
        <translation>Hay %1 intervalos de encendido para %2 cilindros en el orden de encendido: dar uno para cada uno.</translation>
    </message>
    <message>
        <source>Firing interval</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Intervalo de encendido</translation>
    </message>
    <message>
        <source>The firing intervals add up to %1 degrees: %2 are needed.</source>
        <extracomment>engine.interval_sum</extracomment>
        <translation>Los intervalos de encendido suman %1 grados: hacen falta %2.</translation>
    </message>
    <message>
        <source>A joined %1 needs at least two cylinders: add another or remove the group.</source>
        <extracomment>engine.joined_alone</extracomment>
        <translation>Un grupo unido (%1) necesita al menos dos cilindros: añadir otro o quitar el grupo.</translation>
    </message>
    <message>
        <source>A joined %1 names cylinder %2, which the engine does not have: correct it.</source>
        <extracomment>engine.joined_unknown_cylinder</extracomment>
        <translation>Un grupo unido (%1) nombra el cilindro %2, que el motor no tiene: corregirlo.</translation>
    </message>
    <message>
        <source>Cylinder %1 is in joined %2s twice: name it once.</source>
        <extracomment>engine.joined_twice</extracomment>
        <translation>El cilindro %1 está dos veces en grupos unidos (%2): nombrarlo una vez.</translation>
    </message>
    <message>
        <source>Intake valves per cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Válvulas de admisión por cilindro</translation>
    </message>
    <message>
        <source>Exhaust valves per cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Válvulas de escape por cilindro</translation>
    </message>
    <message>
        <source>Intake closing</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Cierre de admisión</translation>
    </message>
    <message>
        <source>Exhaust opening</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Apertura de escape</translation>
    </message>
    <message>
        <source>Bore</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Diámetro del cilindro</translation>
    </message>
    <message>
        <source>Stroke</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Carrera</translation>
    </message>
    <message>
        <source>Rod length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Longitud de biela</translation>
    </message>
    <message>
        <source>The rod (%1) is not longer than half the stroke (%2): the crank could not turn. Check both, from centre to centre.</source>
        <extracomment>engine.rod_too_short</extracomment>
        <translation>La biela (%1) no es más larga que media carrera (%2): el cigüeñal no podría girar. Revisar ambas, de centro a centro.</translation>
    </message>
    <message>
        <source>The compression ratio is %1: it must be over 1.</source>
        <extracomment>engine.ratio_too_low</extracomment>
        <translation>La relación de compresión es %1: debe ser mayor que 1.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Relación de compresión</translation>
    </message>
    <message>
        <source>Exhaust port closing</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Cierre de la lumbrera de escape</translation>
    </message>
    <message>
        <source>Angle between the banks</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Ángulo entre bancadas</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Largo de rosca de bujía</translation>
    </message>
    <message>
        <source>Shop altitude</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Altitud del taller</translation>
    </message>
    <message>
        <source>Lower end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Extremo inferior del rango normal</translation>
    </message>
    <message>
        <source>Upper end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Extremo superior del rango normal</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Difference allowed between cylinders</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Diferencia permitida entre cilindros</translation>
    </message>
    <message>
        <source>Lowest against highest cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Cilindro más bajo frente al más alto</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Pérdida máxima</translation>
    </message>
    <message>
        <source>Set pressure of the maker&apos;s leak-down test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión ajustada de la prueba de estanqueidad del fabricante</translation>
    </message>
    <message>
        <source>Restrictor of the maker&apos;s leak-down test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Restrictor de la prueba de estanqueidad del fabricante</translation>
    </message>
    <message>
        <source>the upper end</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>el extremo superior</translation>
    </message>
    <message>
        <source>the lower end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>el extremo inferior del rango normal</translation>
    </message>
    <message>
        <source>the upper end of the normal range</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>el extremo superior del rango normal</translation>
    </message>
    <message>
        <source>Source of the limits</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fuente de los límites</translation>
    </message>
    <message>
        <source>Set pressure of the crankcase test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión ajustada de la prueba del cárter</translation>
    </message>
    <message>
        <source>Minutes of the crankcase test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Minutos de la prueba del cárter</translation>
    </message>
    <message>
        <source>End pressure of the crankcase test</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión final de la prueba del cárter</translation>
    </message>
    <message>
        <source>Source of the crankcase limits</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fuente de los límites del cárter</translation>
    </message>
    <message>
        <source>engine card</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ficha del motor</translation>
    </message>
    <message>
        <source>id</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>identificador</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hora</translation>
    </message>
    <message>
        <source>name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>nombre</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Description</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Descripción</translation>
    </message>
    <message>
        <source>The engine card has %1 tags: at most 100 are kept. Remove some.</source>
        <extracomment>engine.too_many_tags</extracomment>
        <translation>La ficha del motor tiene %1 etiquetas: se guardan como máximo 100. Quitar algunas.</translation>
    </message>
    <message>
        <source>Tag</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>History</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Owner&apos;s name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nombre del propietario</translation>
    </message>
    <message>
        <source>Owner&apos;s contact</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Contacto del propietario</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Rosca de bujía</translation>
    </message>
    <message>
        <source>intake</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>admisión</translation>
    </message>
    <message>
        <source>exhaust</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>escape</translation>
    </message>
    <message>
        <source>A tie to &quot;%1&quot; must %2 a record: attach it again.</source>
        <extracomment>tie.record</extracomment>
        <translation>Un vínculo a «%1» no encaja con su registro (%2): adjuntarlo de nuevo.</translation>
    </message>
    <message>
        <source>not name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>no nombrar</translation>
    </message>
    <message>
        <source>record to hang on</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>registro del que depende</translation>
    </message>
    <message>
        <source>A tie to &quot;%1&quot; must not name a cylinder: attach it again.</source>
        <extracomment>tie.cylinder_out_of_place</extracomment>
        <translation>Un vínculo a «%1» no debe nombrar un cilindro: adjuntarlo de nuevo.</translation>
    </message>
    <message>
        <source>A tie to a cylinder must name it: attach it again.</source>
        <extracomment>tie.cylinder_missing</extracomment>
        <translation>Un vínculo a un cilindro debe nombrarlo: adjuntarlo de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Cilindro</translation>
    </message>
    <message>
        <source>A finding must be named in a tie to a finding, and only there: attach it again.</source>
        <extracomment>tie.finding</extracomment>
        <translation>Un diagnóstico se debe nombrar en un vínculo a un diagnóstico, y solo ahí: adjuntarlo de nuevo.</translation>
    </message>
    <message>
        <source>Finding</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Diagnóstico</translation>
    </message>
    <message>
        <source>session</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>sesión</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not the SHA-256 of a file (64 digits 0-9 and a-f): attach the file again.</source>
        <extracomment>attachment.bad_hash</extracomment>
        <translation>«%1» no es el SHA-256 de un archivo (64 cifras 0-9 y a-f): adjuntar el archivo de nuevo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a kind of file that a %2 can be: photos are image/jpeg, voice notes audio/ogg, audio/wav or audio/webm.</source>
        <extracomment>attachment.media_type</extracomment>
        <translation>«%1» no es un tipo de archivo válido para: %2. Las fotos son image/jpeg; las notas de voz, audio/ogg, audio/wav o audio/webm.</translation>
    </message>
    <message>
        <source>The %1 is %2 bytes long: possible is 1 to %3. Attach the file again.</source>
        <extracomment>attachment.size</extracomment>
        <translation>Tamaño imposible (%1): %2 bytes; es posible de 1 a %3. Adjuntar el archivo de nuevo.</translation>
    </message>
    <message>
        <source>Caption</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Pie de foto</translation>
    </message>
    <message>
        <source>Length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Duración</translation>
    </message>
    <message>
        <source>A voice note shows nothing: leave out what the photo shows.</source>
        <extracomment>attachment.photo_of</extracomment>
        <translation>Una nota de voz no muestra nada: omitir lo que muestra la foto.</translation>
    </message>
    <message>
        <source>A photo has no length in time: leave it out.</source>
        <extracomment>attachment.length</extracomment>
        <translation>Una foto no tiene duración: omitirla.</translation>
    </message>
    <message>
        <source>A voice note has no needle to read: leave it out.</source>
        <extracomment>attachment.read</extracomment>
        <translation>Una nota de voz no tiene aguja que leer: omitirla.</translation>
    </message>
    <message>
        <source>Pressure read from the photo</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión leída en la foto</translation>
    </message>
    <message>
        <source>Uncertainty of the reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Incertidumbre de la lectura</translation>
    </message>
    <message>
        <source>Confidence of the reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Confianza de la lectura</translation>
    </message>
    <message>
        <source>Why the photo was not read</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Por qué no se leyó la foto</translation>
    </message>
    <message>
        <source>note</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>nota</translation>
    </message>
    <message>
        <source>Author</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Autor</translation>
    </message>
    <message>
        <source>Text</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Texto</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; can be carried out: leave the tick off this note.</source>
        <extracomment>note.done</extracomment>
        <translation>Solo «%1» se puede llevar a cabo: quitar la marca de esta nota.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; names a test: leave it out of this note.</source>
        <extracomment>note.test</extracomment>
        <translation>Solo «%1» nombra una prueba: quitarla de esta nota.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; names a check: leave it out of this note.</source>
        <extracomment>note.check</extracomment>
        <translation>Solo «%1» nombra una verificación: quitarla de esta nota.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; asks for a test or for a check: leave one of them out of this note.</source>
        <extracomment>note.check_or_test</extracomment>
        <translation>«%1» pide una prueba o una verificación: quitar una de las dos de esta nota.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; and &quot;%2&quot; name where it leaks: leave it out of this note.</source>
        <extracomment>note.cause</extracomment>
        <translation>Solo «%1» y «%2» nombran por dónde pierde: quitarlo de esta nota.</translation>
    </message>
    <message>
        <source>plan line</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>línea del plan</translation>
    </message>
    <message>
        <source>Work</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Parts</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Labour</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a price: type digits with at most one decimal mark.</source>
        <extracomment>plan.price</extracomment>
        <translation>«%1» no es un precio: escribir cifras con un signo decimal como máximo.</translation>
    </message>
    <message>
        <source>Currency</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Reason</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>What happens if left</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Qué pasa si se deja</translation>
    </message>
    <message>
        <source>Place in the plan</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Lugar en el plan</translation>
    </message>
    <message>
        <source>Time done</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hora en que se hizo</translation>
    </message>
    <message>
        <source>Lowest predicted reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Lectura prevista más baja</translation>
    </message>
    <message>
        <source>Highest predicted reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Lectura prevista más alta</translation>
    </message>
    <message>
        <source>the highest</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>la más alta</translation>
    </message>
    <message>
        <source>%1 libraries changed this record: at most %2 can be told apart.</source>
        <extracomment>lineage.too_many</extracomment>
        <translation>%1 bibliotecas cambiaron este registro: se pueden distinguir como máximo %2.</translation>
    </message>
    <message>
        <source>library that changed it</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>biblioteca que lo cambió</translation>
    </message>
    <message>
        <source>Time of a change</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hora de un cambio</translation>
    </message>
    <message>
        <source>Its changes are not listed once for each library and in their order.</source>
        <extracomment>lineage.order</extracomment>
        <translation>Sus cambios no figuran una vez por cada biblioteca y en su orden.</translation>
    </message>
    <message>
        <source>It has %1 other versions: at most %2 are kept. Choose between them first.</source>
        <extracomment>lineage.too_many_versions</extracomment>
        <translation>Tiene otras %1 versiones: se conservan como máximo %2. Elegir primero entre ellas.</translation>
    </message>
    <message>
        <source>This %1 reading has no %2: type it in.</source>
        <extracomment>reading.field_missing</extracomment>
        <translation>En esta lectura (%1) falta un dato: %2. Escribirlo.</translation>
    </message>
    <message>
        <source>A %1 reading has no %2: leave it out or choose the right test.</source>
        <extracomment>reading.field_out_of_place</extracomment>
        <translation>En una lectura (%1) no va este dato: %2. Omitirlo o elegir la prueba correcta.</translation>
    </message>
    <message>
        <source>Leakage on the dial</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>La fuga de la esfera</translation>
    </message>
    <message>
        <source>%1 on the dial is not %2 of %3: leave out one of the two.</source>
        <extracomment>reading.dial_disagrees</extracomment>
        <translation>%1 en la esfera no son %2 de %3: omitir uno de los dos.</translation>
    </message>
    <message>
        <source>reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>First puff</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Primera embolada</translation>
    </message>
    <message>
        <source>Final reading</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Lectura final</translation>
    </message>
    <message>
        <source>Pulls</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Emboladas</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>Held pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión retenida</translation>
    </message>
    <message>
        <source>Time held</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Tiempo de retención</translation>
    </message>
    <message>
        <source>Oil volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Volumen de aceite</translation>
    </message>
    <message>
        <source>Oil</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Aceite</translation>
    </message>
    <message>
        <source>Adapter</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Adaptador</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nota</translation>
    </message>
    <message>
        <source>The reading stands in for itself: record it again.</source>
        <extracomment>reading.replaces_itself</extracomment>
        <translation>La lectura se sustituye a sí misma: registrarla de nuevo.</translation>
    </message>
    <message>
        <source>exit</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>salida</translation>
    </message>
    <message>
        <source>The exit &quot;%1&quot; names a neighbour (cylinder %2): only next cylinder&apos;s plug hole has one.</source>
        <extracomment>exit.neighbour_out_of_place</extracomment>
        <translation>La salida «%1» nombra un vecino (cilindro %2): solo el agujero de bujía del cilindro vecino lo tiene.</translation>
    </message>
    <message>
        <source>Neighbour</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Vecino</translation>
    </message>
    <message>
        <source>Cylinder %1 is named as its own neighbour: name the other one.</source>
        <extracomment>exit.own_neighbour</extracomment>
        <translation>El cilindro %1 figura como su propio vecino: nombrar el otro.</translation>
    </message>
    <message>
        <source>The exit stands in for itself: record it again.</source>
        <extracomment>exit.replaces_itself</extracomment>
        <translation>La salida se sustituye a sí misma: registrarla de nuevo.</translation>
    </message>
    <message>
        <source>clearance</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>juego de válvulas</translation>
    </message>
    <message>
        <source>Valve</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>The clearance of the %1 valve of cylinder %2 has no figure: type it as found or as left.</source>
        <extracomment>clearance.empty</extracomment>
        <translation>El juego de la válvula (%1) del cilindro %2 no tiene cifra: escribirlo como se encontró o como se dejó.</translation>
    </message>
    <message>
        <source>Clearance found</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Juego encontrado</translation>
    </message>
    <message>
        <source>Clearance left</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Juego dejado</translation>
    </message>
    <message>
        <source>The clearance stands in for itself: record it again.</source>
        <extracomment>clearance.replaces_itself</extracomment>
        <translation>El juego se sustituye a sí mismo: registrarlo de nuevo.</translation>
    </message>
    <message>
        <source>Altitude of the shop</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Altitud del taller</translation>
    </message>
    <message>
        <source>Air pressure at the shop</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión del aire en el taller</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Coolant temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Temperatura del refrigerante</translation>
    </message>
    <message>
        <source>Battery voltage</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Tensión de la batería</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Velocidad de arranque</translation>
    </message>
    <message>
        <source>engine</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>motor</translation>
    </message>
    <message>
        <source>Title</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Título</translation>
    </message>
    <message>
        <source>%1 run by the engine is impossible: type the distance or hours since new, or leave it empty.</source>
        <extracomment>session.usage</extracomment>
        <translation>El recorrido %1 del motor es imposible: escribir la distancia o las horas desde nuevo, o dejarlo vacío.</translation>
    </message>
    <message>
        <source>Job number</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Número de orden de trabajo</translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Queja</translation>
    </message>
    <message>
        <source>The complaint names &quot;%1&quot; twice: once is enough.</source>
        <extracomment>session.symptom_twice</extracomment>
        <translation>La queja nombra «%1» dos veces: basta con una.</translation>
    </message>
    <message>
        <source>The step &quot;%1&quot; of Prepare is marked twice: keep one mark.</source>
        <extracomment>session.step_twice</extracomment>
        <translation>El paso «%1» de Preparar está marcado dos veces: conservar una marca.</translation>
    </message>
    <message>
        <source>Note of a step of Prepare</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nota de un paso de Preparar</translation>
    </message>
    <message>
        <source>Date of the owner&apos;s answer</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fecha de la respuesta del propietario</translation>
    </message>
    <message>
        <source>Date of the planned retest</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fecha de la nueva prueba prevista</translation>
    </message>
    <message>
        <source>Full scale of the gauge</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Fondo de escala del manómetro</translation>
    </message>
    <message>
        <source>Division of the scale</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>División de la escala</translation>
    </message>
    <message>
        <source>Needle at rest</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Aguja en reposo</translation>
    </message>
    <message>
        <source>Sweep of the scale</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Recorrido de la escala</translation>
    </message>
    <message>
        <source>Accuracy class</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Clase de exactitud</translation>
    </message>
    <message>
        <source>The accuracy class &quot;%1&quot; stands without its standard: choose EN 837-1 or ASME B40.100, or leave it empty.</source>
        <extracomment>tester.class_without_scheme</extracomment>
        <translation>La clase de exactitud «%1» está sin su norma: elegir EN 837-1 o ASME B40.100, o dejarla vacía.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a class of %2: it is a percentage of the span such as 1.6 or 2.5.</source>
        <extracomment>tester.unknown_class</extracomment>
        <translation>«%1» no es una clase de %2: es un porcentaje del alcance, como 1,6 o 2,5.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a grade of %2: it is one of 4A, 3A, 2A, 1A, A, B, C, D.</source>
        <extracomment>tester.unknown_grade</extracomment>
        <translation>«%1» no es un grado de %2: es uno de 4A, 3A, 2A, 1A, A, B, C, D.</translation>
    </message>
    <message>
        <source>name for an adapter</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>nombre de un adaptador</translation>
    </message>
    <message>
        <source>Adapter name</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nombre del adaptador</translation>
    </message>
    <message>
        <source>Adapter thread</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Rosca del adaptador</translation>
    </message>
    <message>
        <source>Adapter reach</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Largo de rosca del adaptador</translation>
    </message>
    <message>
        <source>Adapter volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Volumen del adaptador</translation>
    </message>
    <message>
        <source>Time of a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Hora de una verificación</translation>
    </message>
    <message>
        <source>Set pressure of a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión ajustada de una verificación</translation>
    </message>
    <message>
        <source>Pressure shown in a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Presión mostrada en una verificación</translation>
    </message>
    <message>
        <source>Drilled hole</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Agujero taladrado</translation>
    </message>
    <message>
        <source>Note of a self-check</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Nota de una verificación</translation>
    </message>
    <message>
        <source>tester</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>comprobador</translation>
    </message>
    <message>
        <source>Volume of hose and gauge</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Volumen de manguera y manómetro</translation>
    </message>
    <message>
        <source>The set pressure (%1) is beyond the gauge&apos;s full scale (%2): correct one of them.</source>
        <extracomment>tester.set_over_scale</extracomment>
        <translation>La presión ajustada (%1) pasa del fondo de escala del manómetro (%2): corregir uno de los dos.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Diámetro del restrictor</translation>
    </message>
    <message>
        <source>Restrictor length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Longitud del restrictor</translation>
    </message>
    <message>
        <source>Restrictor&apos;s discharge coefficient</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Coeficiente de descarga del restrictor</translation>
    </message>
    <message>
        <source>The working assumptions in odds.json can&apos;t be read: %1. Put the file back as it was shipped.</source>
        <extracomment>odds.malformed</extracomment>
        <translation>Los supuestos de trabajo en odds.json no se pueden leer: %1. Volver a poner el archivo tal como se entregó con la app.</translation>
    </message>
    <message>
        <source>The odds were not worked out: something else was asked in the meantime.</source>
        <extracomment>odds.cancelled</extracomment>
        <translation>Las probabilidades no se calcularon: mientras tanto se pidió otra cosa.</translation>
    </message>
    <message>
        <source>An altitude of %1 m is outside the standard atmosphere&apos;s lowest layer. Give -2000 to 11000 m, or the pressure a barometer shows in the shop.</source>
        <extracomment>atmosphere.altitude</extracomment>
        <translation>Una altitud de %1 m está fuera de la capa más baja de la atmósfera estándar. Dar de -2000 a 11000 m, o la presión que marca un barómetro en el taller.</translation>
    </message>
    <message>
        <source>An air pressure of %1 hPa has no altitude between -2000 and 11000 m. Give 227 to 1277 hPa.</source>
        <extracomment>atmosphere.pressure</extracomment>
        <translation>Una presión del aire de %1 hPa no tiene altitud entre -2000 y 11000 m. Dar de 227 a 1277 hPa.</translation>
    </message>
    <message>
        <source>An air pressure of %1 hPa is not one a shop can have. Give what the barometer in the shop shows, 200 to 1200 hPa.</source>
        <extracomment>atmosphere.site_pressure; hold.ambient; leakdown.ambient</extracomment>
        <translation>Una presión del aire de %1 hPa no es posible en un taller. Dar lo que marca el barómetro en el taller, de 200 a 1200 hPa.</translation>
    </message>
    <message>
        <source>A limit of %1 kPa is not a gauge pressure. Give zero or more.</source>
        <extracomment>atmosphere.limit</extracomment>
        <translation>Un límite de %1 kPa no es una presión manométrica. Dar cero o más.</translation>
    </message>
    <message>
        <source>%1 of %2%3 is outside what this sum can take. Give %4 to %5%6.</source>
        <extracomment>of several codes</extracomment>
        <translation>%1 de %2%3 está fuera de lo que este cálculo admite. Dar de %4 a %5%6.</translation>
    </message>
    <message>
        <source>%1 cm3 of oil do not fit a chamber of %2 cm3: the engine would lock on the liquid and bend a rod. Do not crank it; use less oil, or let it drain.</source>
        <extracomment>cranking.oil</extracomment>
        <translation>%1 cm3 de aceite no caben en una cámara de %2 cm3: el motor se bloquearía con el líquido y doblaría una biela. No darle arranque; usar menos aceite, o dejar que escurra.</translation>
    </message>
    <message>
        <source>Steps %1 times as long as usual do not do. Give 0.01 to 2.</source>
        <extracomment>cranking.accuracy</extracomment>
        <translation>Pasos %1 veces más largos de lo usual no sirven. Dar de 0,01 a 2.</translation>
    </message>
    <message>
        <source>The leak is so large that this cylinder builds no pressure to speak of. Give a smaller leak area or a higher cranking speed.</source>
        <extracomment>cranking.no_compression</extracomment>
        <translation>La fuga es tan grande que este cilindro no hace presión digna de mención. Dar un área de fuga menor o una velocidad de arranque mayor.</translation>
    </message>
    <message>
        <source>A speed that dips to %1 +- %2 of its mean cannot be right. Give a share up to 1 and a smaller doubt.</source>
        <extracomment>cranking.dip</extracomment>
        <translation>Una velocidad que cae a %1 ± %2 de su media no puede ser. Dar una fracción de hasta 1 y una incertidumbre menor.</translation>
    </message>
    <message>
        <source>Fillings from %1 to %2 are not a range. Give the smaller one first.</source>
        <extracomment>cranking.fill_range</extracomment>
        <translation>Llenados de %1 a %2 no son un rango. Dar primero el menor.</translation>
    </message>
    <message>
        <source>A decompressor lets the cylinder close later than its intake does: %1 to %2 degrees after bottom dead centre do not follow %3.</source>
        <extracomment>cranking.closing_range</extracomment>
        <translation>Un descompresor hace que el cilindro cierre más tarde que su admisión: de %1 a %2 grados después del punto muerto inferior no van después de %3.</translation>
    </message>
    <message>
        <source>No healthy reading is estimated above a compression ratio of %1: at %2 the sum reads far over what makers print for such engines. Use the maker&apos;s figure.</source>
        <extracomment>healthy.compression_ratio</extracomment>
        <translation>No se estima ninguna lectura de motor sano con una relación de compresión superior a %1: con %2 el cálculo da mucho más de lo que publican los fabricantes de esos motores. Usar la cifra del fabricante.</translation>
    </message>
    <message>
        <source>Kept shares of oil from %1 to %2 are not a range. Give two figures from 0 to 1, the smaller first.</source>
        <extracomment>oil.share</extracomment>
        <translation>Partes de aceite retenidas de %1 a %2 no son un rango. Dar dos cifras de 0 a 1, primero la menor.</translation>
    </message>
    <message>
        <source>With this hose the gauge would show nothing, so there is nothing to correct. Move the check valve to the plug end or use a shorter hose.</source>
        <extracomment>hose.no_reading</extracomment>
        <translation>Con esta manguera el manómetro no marcaría nada, así que no hay nada que corregir. Pasar la válvula antirretorno al lado de la bujía o usar una manguera más corta.</translation>
    </message>
    <message>
        <source>This processor cannot run four cases side by side. Ask for the widest.</source>
        <extracomment>cranking.lanes</extracomment>
        <translation>Este procesador no puede calcular cuatro casos a la vez. Pedir el más ancho.</translation>
    </message>
    <message>
        <source>Case %1 has %2 strokes and the first has %3. Give all cases the same number.</source>
        <extracomment>cranking.many</extracomment>
        <translation>El caso %1 tiene %2 carreras y el primero tiene %3. Dar a todos los casos el mismo número.</translation>
    </message>
    <message>
        <source>%1 readings do not fit %2 cases of %3 strokes. Give room for %4.</source>
        <extracomment>cranking.many</extracomment>
        <translation>%1 lecturas no encajan en %2 casos de %3 carreras. Dar sitio para %4.</translation>
    </message>
    <message>
        <source>A hold test from %1 kPa can&apos;t be worked with. Give the pressure that the chamber was pumped up to, 0.5 to 1000 kPa; 50 kPa is usual for a crankcase.</source>
        <extracomment>hold.set</extracomment>
        <translation>No se puede calcular con una prueba de retención desde %1 kPa. Indicar la presión hasta la que se infló la cámara, de 0,5 a 1000 kPa; en un cárter lo habitual son 50 kPa.</translation>
    </message>
    <message>
        <source>A hold of %1 s can&apos;t be worked with. Give the time from shutting off to reading, 1 second to 24 hours.</source>
        <extracomment>hold.seconds</extracomment>
        <translation>No se puede calcular con una retención de %1 s. Indicar el tiempo desde que se cerró hasta que se leyó, de 1 segundo a 24 horas.</translation>
    </message>
    <message>
        <source>%1 kPa at the end of a hold that began at %2 kPa can&apos;t be: it must lie between 0 and that. Were the two exchanged?</source>
        <extracomment>hold.end</extracomment>
        <translation>%1 kPa al final de una prueba de retención que empezó con %2 kPa no puede ser: tiene que estar entre 0 y ese valor. ¿Se intercambiaron los dos?</translation>
    </message>
    <message>
        <source>Nothing was left at the end of the hold, so how fast it leaked isn&apos;t known. Read again after a shorter time.</source>
        <extracomment>hold.emptied</extracomment>
        <translation>Al final de la retención no quedaba nada, así que no se sabe con qué rapidez se perdió. Leer de nuevo tras menos tiempo.</translation>
    </message>
    <message>
        <source>A pressure of %1 kPa is not one a tester puts into a cylinder. Give the gauge pressure, 0 to 7000 kPa.</source>
        <extracomment>torque.pressure</extracomment>
        <translation>Una presión de %1 kPa no es la que un comprobador mete en un cilindro. Dar la presión manométrica, de 0 a 7000 kPa.</translation>
    </message>
    <message>
        <source>%1 degrees is not an angle from top dead centre. Give -180 to 180, 0 at the centre.</source>
        <extracomment>torque.angle</extracomment>
        <translation>%1 grados no es un ángulo desde el punto muerto superior. Dar de -180 a 180, con 0 en el punto muerto.</translation>
    </message>
    <message>
        <source>A bar of %1 m cannot be right. Give its length from the crank&apos;s axis, 0.01 to 5 m.</source>
        <extracomment>torque.bar</extracomment>
        <translation>Una barra de %1 m no puede ser. Dar su longitud desde el eje del cigüeñal, de 0,01 a 5 m.</translation>
    </message>
    <message>
        <source>Cylinder %1 stands twice in the firing order. Give every cylinder once.</source>
        <extracomment>firing.order</extracomment>
        <translation>El cilindro %1 está dos veces en el orden de encendido. Dar cada cilindro una vez.</translation>
    </message>
    <message>
        <source>%1 firing intervals do not fit %2 cylinders. Give one interval after each cylinder of the order.</source>
        <extracomment>firing.intervals</extracomment>
        <translation>%1 intervalos de encendido no encajan con %2 cilindros. Dar un intervalo después de cada cilindro del orden.</translation>
    </message>
    <message>
        <source>The firing intervals add up to %1 degrees. They must make 720 (four-stroke) or 360 (two-stroke), none below 0.</source>
        <extracomment>firing.intervals</extracomment>
        <translation>Los intervalos de encendido suman %1 grados. Deben sumar 720 (cuatro tiempos) o 360 (dos tiempos), ninguno menor que 0.</translation>
    </message>
    <message>
        <source>Cylinder %1 is not in the firing order. Give one that is.</source>
        <extracomment>firing.cylinder</extracomment>
        <translation>El cilindro %1 no está en el orden de encendido. Dar uno que esté.</translation>
    </message>
    <message>
        <source>A restrictor of %1 mm cannot be right. Give 0.01 to 50 mm; most are 1 mm.</source>
        <extracomment>leakdown.restrictor</extracomment>
        <translation>Un restrictor de %1 mm no puede ser. Dar de 0,01 a 50 mm; la mayoría son de 1 mm.</translation>
    </message>
    <message>
        <source>A restrictor&apos;s discharge coefficient of %1 cannot be right. Give above 0 up to 1; 0.85 is usual.</source>
        <extracomment>leakdown.restrictor</extracomment>
        <translation>Un coeficiente de descarga del restrictor de %1 no puede ser. Dar más de 0 y hasta 1; 0,85 es lo usual.</translation>
    </message>
    <message>
        <source>A set pressure of %1 kPa cannot be tested with. Give the gauge pressure with the outlet blocked, above 0; 550 kPa (80 psi) is usual.</source>
        <extracomment>leakdown.set</extracomment>
        <translation>Con una presión ajustada de %1 kPa no se puede probar. Dar la presión manométrica con la salida tapada, mayor que 0; 550 kPa (80 psi) es lo usual.</translation>
    </message>
    <message>
        <source>A held pressure of %1 kPa is not a gauge reading. Give 0 or more; check that the needle rests at zero.</source>
        <extracomment>leakdown.held_negative</extracomment>
        <translation>Una presión retenida de %1 kPa no es una lectura de manómetro. Dar 0 o más; comprobar que la aguja descansa en cero.</translation>
    </message>
    <message>
        <source>The held pressure (%1 kPa) is above the set pressure (%2 kPa). Were the two exchanged? If not, block the outlet and compare the gauges.</source>
        <extracomment>leakdown.held_above_set</extracomment>
        <translation>La presión retenida (%1 kPa) está por encima de la presión ajustada (%2 kPa). ¿Se intercambiaron las dos? Si no, tapar la salida y comparar los manómetros.</translation>
    </message>
    <message>
        <source>A check hole of %1 mm with discharge coefficient %2 cannot be right. Give the drill&apos;s diameter, 0.01 to 50 mm, and a coefficient above 0 up to 1.</source>
        <extracomment>leakdown.check_hole</extracomment>
        <translation>Un agujero taladrado de %1 mm con coeficiente de descarga %2 no puede ser. Dar el diámetro de la broca, de 0,01 a 50 mm, y un coeficiente mayor que 0 y hasta 1.</translation>
    </message>
    <message>
        <source>Holding %1 kPa of %2 kPa says nothing about the restrictor: the check hole is %3. Use a hole of about the restrictor&apos;s size.</source>
        <extracomment>leakdown.check_hole</extracomment>
        <translation>Mantener %1 kPa de %2 kPa no dice nada del restrictor: el agujero taladrado es %3. Usar un agujero de la medida del restrictor más o menos.</translation>
    </message>
    <message>
        <source>blocked or too small</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>tapado o demasiado pequeño</translation>
    </message>
    <message>
        <source>too large</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>demasiado grande</translation>
    </message>
    <message>
        <source>A reading that loses nothing or holds nothing says nothing about the leak&apos;s law. Take two readings that hold something between zero and the set pressure.</source>
        <extracomment>leakdown.law</extracomment>
        <translation>Una lectura que no pierde nada o no mantiene nada no dice nada de la ley de la fuga. Tomar dos lecturas que mantengan algo entre cero y la presión ajustada.</translation>
    </message>
    <message>
        <source>Held pressures of %1 and %2 kPa are too close together to tell the leak&apos;s law. Set the regulator to about half and read again.</source>
        <extracomment>leakdown.law</extracomment>
        <translation>Presiones retenidas de %1 y %2 kPa están demasiado juntas para conocer la ley de la fuga. Poner el regulador a la mitad más o menos y leer de nuevo.</translation>
    </message>
    <message>
        <source>A bore of %1 mm is not an engine&apos;s. Give 5 to 1500 mm.</source>
        <extracomment>engine.bore</extracomment>
        <translation>Un diámetro de cilindro de %1 mm no es de un motor. Dar de 5 a 1500 mm.</translation>
    </message>
    <message>
        <source>A stroke of %1 mm is not an engine&apos;s. Give 5 to 1500 mm.</source>
        <extracomment>engine.stroke</extracomment>
        <translation>Una carrera de %1 mm no es de un motor. Dar de 5 a 1500 mm.</translation>
    </message>
    <message>
        <source>A connecting rod of %1 mm does not fit a stroke of %2 mm. Give the length between the centres of its eyes; it is usually 1.5 to 2 times the stroke.</source>
        <extracomment>engine.rod</extracomment>
        <translation>Una biela de %1 mm no encaja con una carrera de %2 mm. Dar la longitud entre los centros de sus ojos; suele ser de 1,5 a 2 veces la carrera.</translation>
    </message>
    <message>
        <source>The file names &quot;%1&quot; twice in one place: it was not written by this app.</source>
        <extracomment>record.twice</extracomment>
        <translation>El archivo nombra «%1» dos veces en un mismo lugar: no lo escribió esta app.</translation>
    </message>
    <message>
        <source>The file holds a number that is too large to be one.</source>
        <extracomment>record.number</extracomment>
        <translation>El archivo contiene un número demasiado grande para serlo.</translation>
    </message>
    <message>
        <source>The file is damaged or was not written by this app: it stops being JSON at byte %1.</source>
        <extracomment>record.not_json</extracomment>
        <translation>El archivo está dañado o no lo escribió esta app: deja de ser JSON en el byte %1.</translation>
    </message>
    <message>
        <source>The file nests more than %1 levels deep: it was not written by this app.</source>
        <extracomment>record.too_deep</extracomment>
        <translation>El archivo anida más de %1 niveles: no lo escribió esta app.</translation>
    </message>
    <message>
        <source>The file holds more than %1 values, or more than %2 names in one place: no session has so many, and it was not written by this app.</source>
        <extracomment>record.too_many</extracomment>
        <translation>El archivo contiene más de %1 valores, o más de %2 nombres en un mismo lugar: ninguna sesión tiene tantos, y no lo escribió esta app.</translation>
    </message>
    <message>
        <source>The text is %1 bytes long: at most %2 are read.</source>
        <extracomment>record.too_large</extracomment>
        <translation>El texto ocupa %1 bytes: se leen como máximo %2.</translation>
    </message>
    <message>
        <source>Two different records have the id %1: one of the files was not written by this app.</source>
        <extracomment>merge.other_record</extracomment>
        <translation>Dos registros distintos tienen el identificador %1: uno de los archivos no lo escribió esta app.</translation>
    </message>
    <message>
        <source>The %1 %2 belongs to another %3 in the file than here. Nothing was changed: do not trust the file.</source>
        <extracomment>merge.moved</extracomment>
        <translation>En el archivo, este registro (%1 %2) pertenece a otro registro superior (%3) que aquí. No se cambió nada: no fiarse del archivo.</translation>
    </message>
    <message>
        <source>The %1 %2 would have %3 versions: at most %4 are kept. Choose between those that are here, then bring the file in again.</source>
        <extracomment>merge.too_many_versions</extracomment>
        <translation>Este registro (%1 %2) tendría %3 versiones: se conservan como máximo %4. Elegir entre las que hay aquí y después incorporar el archivo de nuevo.</translation>
    </message>
    <message>
        <source>The files are of two engines, %1 and %2: only files of the same engine can be merged.</source>
        <extracomment>merge.other_engine</extracomment>
        <translation>Los archivos son de dos motores, %1 y %2: solo se pueden unir archivos del mismo motor.</translation>
    </message>
    <message>
        <source>The file is not right at %1: %2 must stand there.</source>
        <extracomment>record.wrong_type</extracomment>
        <translation>El archivo no está bien en %1: ahí debe estar %2.</translation>
    </message>
    <message>
        <source>The file is not complete: %1 has no &quot;%2&quot;.</source>
        <extracomment>record.missing</extracomment>
        <translation>El archivo no está completo: a %1 le falta «%2».</translation>
    </message>
    <message>
        <source>The file is not right at %1: it holds more that this version doesn&apos;t know than a record can have, and was not written by this app.</source>
        <extracomment>record.too_much_unknown</extracomment>
        <translation>El archivo no está bien en %1: contiene más cosas que esta versión no conoce de las que puede tener un registro, y no lo escribió esta app.</translation>
    </message>
    <message>
        <source>an object {...}</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>un objeto {...}</translation>
    </message>
    <message>
        <source>The file is not right at %1: %2</source>
        <extracomment>record.impossible</extracomment>
        <translation>El archivo no está bien en %1: %2</translation>
    </message>
    <message>
        <source>The file is not right at %1: one of its other versions is none of this record.</source>
        <extracomment>record.other_version</extracomment>
        <translation>El archivo no está bien en %1: una de sus otras versiones no es de este registro.</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>un texto entre comillas</translation>
    </message>
    <message>
        <source>true or false</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>true o false</translation>
    </message>
    <message>
        <source>a whole number</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: known here are %3.</source>
        <extracomment>record.unknown_word</extracomment>
        <translation>El archivo dice «%1» en %2: aquí se conocen %3.</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: that is no id (UUID).</source>
        <extracomment>record.bad_id</extracomment>
        <translation>El archivo dice «%1» en %2: eso no es un identificador (UUID).</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: that is no time with offset (RFC 3339).</source>
        <extracomment>record.bad_time</extracomment>
        <translation>El archivo dice «%1» en %2: eso no es una hora con desfase (RFC 3339).</translation>
    </message>
    <message>
        <source>a quantity {&quot;digits&quot;: ..., &quot;unit&quot;: ...}</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>una cantidad {&quot;digits&quot;: ..., &quot;unit&quot;: ...}</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: units of %3 are %4.</source>
        <extracomment>record.unknown_unit</extracomment>
        <translation>El archivo dice «%1» en %2: las unidades de %3 son %4.</translation>
    </message>
    <message>
        <source>The file says &quot;%1&quot; at %2: a plain number such as -12 or 6.40 must stand there.</source>
        <extracomment>record.bad_digits</extracomment>
        <translation>El archivo dice «%1» en %2: ahí debe estar un número simple, como -12 o 6.40.</translation>
    </message>
    <message>
        <source>a list [...]</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>una lista [...]</translation>
    </message>
    <message>
        <source>The file holds %1 records: at most %2 are read at once. Ask the sender for some of the visits at a time.</source>
        <extracomment>record.too_many_records</extracomment>
        <translation>El archivo contiene %1 registros: como máximo se leen %2 de una vez. Pedir al remitente solo algunas visitas cada vez.</translation>
    </message>
    <message>
        <source>This is not a session file: its session.json does not say so.</source>
        <extracomment>record.not_a_session</extracomment>
        <translation>Esto no es un archivo de sesión: su session.json no lo dice.</translation>
    </message>
    <message>
        <source>The file says that the photo or voice note %1 is missing, and it has none of that id, or says so twice: it was not written by this app.</source>
        <extracomment>record.missing_of_nothing</extracomment>
        <translation>El archivo dice que falta la foto o nota de voz %1 y no tiene ninguna con ese identificador, o lo dice dos veces: no lo escribió esta app.</translation>
    </message>
    <message>
        <source>Record kind %1 is unknown.</source>
        <extracomment>record.unknown_kind</extracomment>
        <translation>El tipo de registro %1 es desconocido.</translation>
    </message>
    <message>
        <source>Two records have the id %1: the file was not written by this app.</source>
        <extracomment>record.id_twice</extracomment>
        <translation>Dos registros tienen el identificador %1: el archivo no lo escribió esta app.</translation>
    </message>
    <message>
        <source>There is no engine among the records.</source>
        <extracomment>record.no_engine</extracomment>
        <translation>No hay ningún motor entre los registros.</translation>
    </message>
    <message>
        <source>Session %1 belongs to another engine.</source>
        <extracomment>record.other_engine</extracomment>
        <translation>La sesión %1 pertenece a otro motor.</translation>
    </message>
    <message>
        <source>The records belong to more than one engine: %1 and %2.</source>
        <extracomment>record.two_engines</extracomment>
        <translation>Los registros pertenecen a más de un motor: %1 y %2.</translation>
    </message>
    <message>
        <source>Records belong to session %1, which is not among them.</source>
        <extracomment>record.orphan</extracomment>
        <translation>Hay registros que pertenecen a la sesión %1, que no está entre ellos.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a version of session files, such as 1.0.</source>
        <extracomment>record.bad_version</extracomment>
        <translation>«%1» no es una versión de archivos de sesión, como 1.0.</translation>
    </message>
    <message>
        <source>This file was written by a newer Lapwing (format %1; this one reads up to %2.x). Update Lapwing, or ask the sender for the report as PDF.</source>
        <extracomment>record.newer_major</extracomment>
        <translation>Este archivo lo escribió un Lapwing más nuevo (formato %1; este lee hasta %2.x). Actualizar Lapwing, o pedir a quien lo envió el informe en PDF.</translation>
    </message>
    <message>
        <source>This file was written by a newer Lapwing (format %1; this one knows %2) and says something that this one has no word for. Update Lapwing to read it; nothing was changed. (%3)</source>
        <extracomment>record.newer_minor</extracomment>
        <translation>Este archivo lo escribió un Lapwing más nuevo (formato %1; este conoce %2) y dice algo para lo que este no tiene palabra. Actualizar Lapwing para leerlo; no se cambió nada. (%3)</translation>
    </message>
    <message>
        <source>%1 could not be read. Check that it is still there and try again.</source>
        <extracomment>store.unreadable_file</extracomment>
        <translation>%1 no se pudo leer. Comprobar que sigue ahí e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 changed while it was taken in. Try again.</source>
        <extracomment>store.unreadable_file</extracomment>
        <translation>%1 cambió mientras se incorporaba. Intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 could not be renamed to %2 (%3). Check that its folder is not write-protected.</source>
        <extracomment>store.read_only</extracomment>
        <translation>%1 no se pudo renombrar como %2 (%3). Comprobar que su carpeta no está protegida contra escritura.</translation>
    </message>
    <message>
        <source>The library %1 is damaged (%2).</source>
        <extracomment>store.damaged</extracomment>
        <translation>La biblioteca %1 está dañada (%2).</translation>
    </message>
    <message>
        <source>There is no room left to store this: %1 could not grow. Nothing stored before is lost. Free some space on this device and do it again.</source>
        <extracomment>store.full</extracomment>
        <translation>No queda espacio para guardar esto: %1 no pudo crecer. Nada de lo guardado antes se pierde. Liberar espacio en este dispositivo y hacerlo de nuevo.</translation>
    </message>
    <message>
        <source>The library %1 is damaged (%2). Close Lapwing and open it again: it sets the damaged file aside and goes back to the last good backup.</source>
        <extracomment>store.damaged</extracomment>
        <translation>La biblioteca %1 está dañada (%2). Cerrar Lapwing y abrirlo de nuevo: aparta el archivo dañado y vuelve a la última copia de seguridad buena.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written. Check that its folder exists, belongs to you and is not write-protected.</source>
        <extracomment>store.read_only</extracomment>
        <translation>No se puede escribir %1. Comprobar que su carpeta existe, es del propio usuario y no está protegida contra escritura.</translation>
    </message>
    <message>
        <source>Another program is holding %1, so this was not stored. Close that program and do it again.</source>
        <extracomment>store.busy</extracomment>
        <translation>Otro programa retiene %1, así que esto no se guardó. Cerrar ese programa y hacerlo de nuevo.</translation>
    </message>
    <message>
        <source>The storage that holds %1 reports an error (%2), so this was not stored. Do it again; if it keeps failing, copy the folder to another place.</source>
        <extracomment>store.io</extracomment>
        <translation>El almacenamiento que contiene %1 da un error (%2), así que esto no se guardó. Hacerlo de nuevo; si sigue fallando, copiar la carpeta a otro lugar.</translation>
    </message>
    <message>
        <source>%1 could not be used: %2. Nothing was stored.</source>
        <extracomment>store.unexpected</extracomment>
        <translation>%1 no se pudo usar: %2. No se guardó nada.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while Lapwing had it open, so this was not stored. Put its folder back and do it again; or close Lapwing and open it again.</source>
        <extracomment>store.gone</extracomment>
        <translation>%1 se movió o se quitó mientras Lapwing lo tenía abierto, así que esto no se guardó. Devolver la carpeta a su sitio y hacerlo otra vez; o cerrar Lapwing y volver a abrirlo.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written (%2). Check that the folder exists, belongs to you and is not write-protected.</source>
        <extracomment>store.read_only</extracomment>
        <translation>No se puede escribir %1 (%2). Comprobar que la carpeta existe, es del propio usuario y no está protegida contra escritura.</translation>
    </message>
    <message>
        <source>Lapwing already has %1 open. Go on in the window that is open, or close it first.</source>
        <extracomment>store.in_use</extracomment>
        <translation>Lapwing ya tiene abierto %1. Seguir en la ventana que está abierta, o cerrarla primero.</translation>
    </message>
    <message>
        <source>The %1 can&apos;t be taken out: something recorded for it is still there. Take that out first.</source>
        <extracomment>store.hangs</extracomment>
        <translation>No se puede quitar (%1): aún hay algo registrado para ello. Quitar eso primero.</translation>
    </message>
    <message>
        <source>The %1 can&apos;t be stored: the %2 it belongs to is no longer in the library.</source>
        <extracomment>store.no_parent</extracomment>
        <translation>No se puede guardar (%1): aquello a lo que pertenece (%2) ya no está en la biblioteca.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone any more: the %1 was changed again since. Undo the later change first, or change it by hand.</source>
        <extracomment>undo.changed_since</extracomment>
        <translation>Esto ya no se puede deshacer: desde entonces se volvió a cambiar (%1). Deshacer primero el cambio posterior, o cambiarlo a mano.</translation>
    </message>
    <message>
        <source>This can&apos;t be done again any more: the %1 was changed since. Do it by hand.</source>
        <extracomment>redo.changed_since</extracomment>
        <translation>Esto ya no se puede rehacer: se cambió %1 desde entonces. Hacerlo a mano.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: something recorded since belongs to the %1. Undo or take that out first.</source>
        <extracomment>undo.hangs</extracomment>
        <translation>Esto no se puede deshacer: algo registrado después depende de ello (%1). Deshacer o quitar eso primero.</translation>
    </message>
    <message>
        <source>This can&apos;t be done again: what the %1 belongs to is no longer there.</source>
        <extracomment>redo.hangs</extracomment>
        <translation>Esto no se puede rehacer: aquello a lo que pertenece %1 ya no existe.</translation>
    </message>
    <message>
        <source>There is nothing to undo: this step was undone already or is too old.</source>
        <extracomment>undo.gone</extracomment>
        <translation>No hay nada que deshacer: este paso ya se deshizo o es demasiado antiguo.</translation>
    </message>
    <message>
        <source>There is nothing to do again: this step stands already or is too old.</source>
        <extracomment>redo.gone</extracomment>
        <translation>No hay nada que rehacer: este paso ya está hecho o es demasiado antiguo.</translation>
    </message>
    <message>
        <source>The library %1 is %2, though there was one before.</source>
        <extracomment>store.damaged</extracomment>
        <translation>La biblioteca %1 está %2, aunque antes había una.</translation>
    </message>
    <message>
        <source>empty</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>vacía</translation>
    </message>
    <message>
        <source>missing</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ausente</translation>
    </message>
    <message>
        <source>The file of the library was gone. The backup of %1 stands in for it; what was recorded after that is not in it.</source>
        <extracomment>store.restored_lost</extracomment>
        <translation>El archivo de la biblioteca había desaparecido. En su lugar está la copia de seguridad del %1; lo registrado después no está en ella.</translation>
    </message>
    <message>
        <source>The library was damaged. It was set aside as %1, and the backup of %2 stands in for it. What was recorded after that is only in the file set aside: keep it.</source>
        <extracomment>store.restored</extracomment>
        <translation>La biblioteca estaba dañada. Se apartó como %1, y la copia de seguridad del %2 ocupa su lugar. Lo que se registró después está solo en el archivo apartado: conservarlo.</translation>
    </message>
    <message>
        <source>The file of the library was gone and no backup of it can be used. An empty library was started. Session files handed over before can be opened again.</source>
        <extracomment>store.started_anew_lost</extracomment>
        <translation>El archivo de la biblioteca había desaparecido y ninguna copia de seguridad se puede usar. Se empezó una biblioteca vacía. Los archivos de sesión entregados antes se pueden volver a abrir.</translation>
    </message>
    <message>
        <source>The library was damaged and there is no backup of it. It was set aside as %1, and an empty library was started. Keep that file; session files handed over before can be opened again.</source>
        <extracomment>store.started_anew</extracomment>
        <translation>La biblioteca estaba dañada y no hay copia de seguridad de ella. Se apartó como %1, y se empezó una biblioteca vacía. Conservar ese archivo; los archivos de sesión entregados antes se pueden abrir de nuevo.</translation>
    </message>
    <message>
        <source>Lapwing was not closed properly last time. The library was checked and is sound: everything that was confirmed is there.</source>
        <extracomment>store.was_checked</extracomment>
        <translation>La última vez Lapwing no se cerró bien. La biblioteca se comprobó y está sana: todo lo confirmado está ahí.</translation>
    </message>
    <message>
        <source>The %1 %2 in the library can&apos;t be read: %3 It was left as it is; a newer Lapwing may read it.</source>
        <extracomment>store.unreadable</extracomment>
        <translation>Un registro de la biblioteca (%1 %2) no se puede leer: %3 Se dejó como estaba; un Lapwing más nuevo quizá lo lea.</translation>
    </message>
    <message>
        <source>The library %1 has lost its own name.</source>
        <extracomment>store.damaged</extracomment>
        <translation>La biblioteca %1 ha perdido su propio nombre.</translation>
    </message>
    <message>
        <source>%1 belongs to another program. Move it away, or choose another folder for Lapwing.</source>
        <extracomment>store.not_ours</extracomment>
        <translation>%1 pertenece a otro programa. Llevarlo a otro sitio, o elegir otra carpeta para Lapwing.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Lapwing (its version is %2, this one knows up to %3). It was left as it is. Update Lapwing to open it.</source>
        <extracomment>store.newer_version</extracomment>
        <translation>%1 lo escribió un Lapwing más nuevo (su versión es %2, este conoce hasta %3). Se dejó como estaba. Actualizar Lapwing para abrirlo.</translation>
    </message>
    <message>
        <source>%1 is not a voice note that Lapwing recorded, so it was left as it is.</source>
        <extracomment>tape.not_a_tape</extracomment>
        <translation>%1 no es una nota de voz grabada por Lapwing, así que se dejó como estaba.</translation>
    </message>
    <message>
        <source>Class %1 is not a pressure gauge&apos;s. Give the number printed on the dial, 0.05 to 10; 1.6 and 2.5 are usual.</source>
        <extracomment>gauge.class</extracomment>
        <translation>La clase %1 no es de un manómetro. Dar el número impreso en la esfera, de 0,05 a 10; 1,6 y 2,5 son lo usual.</translation>
    </message>
    <message>
        <source>A gauge that reads from 0 to %1 kPa cannot be right. Give its full scale.</source>
        <extracomment>gauge.span</extracomment>
        <translation>Un manómetro que lee de 0 a %1 kPa no puede ser. Dar su fondo de escala.</translation>
    </message>
    <message>
        <source>An error limit of %1 % of span is not a gauge&apos;s. Give above 0 up to 20 %.</source>
        <extracomment>gauge.class</extracomment>
        <translation>Un límite de error del %1 % del alcance no es de un manómetro. Dar más de 0 y hasta el 20 %.</translation>
    </message>
    <message>
        <source>A readable step of %1 kPa does not fit a gauge of %2 kPa. Give half a graduation.</source>
        <extracomment>gauge.step</extracomment>
        <translation>Un paso legible de %1 kPa no encaja con un manómetro de %2 kPa. Dar media división.</translation>
    </message>
    <message>
        <source>A zero error of %1 kPa does not fit a gauge of %2 kPa. Give how far the needle rests from zero.</source>
        <extracomment>gauge.zero</extracomment>
        <translation>Un error de cero de %1 kPa no encaja con un manómetro de %2 kPa. Dar a cuánto del cero descansa la aguja.</translation>
    </message>
    <message>
        <source>Error shares of %1 (offset) and %2 (gain) must not be negative and make at most 1.</source>
        <extracomment>gauge.shares</extracomment>
        <translation>Las partes de error de %1 (cero) y %2 (ganancia) no deben ser negativas y suman como máximo 1.</translation>
    </message>
    <message>
        <source>There is no mean of %1 readings with one missing. Give at least one number.</source>
        <extracomment>gauge.repeats</extracomment>
        <translation>No hay media de %1 lecturas si falta una. Dar al menos un número.</translation>
    </message>
    <message>
        <source>A set pressure of %1 kPa cannot be tested with. Give a gauge pressure above 0.</source>
        <extracomment>leakage.set</extracomment>
        <translation>Con una presión ajustada de %1 kPa no se puede probar. Dar una presión manométrica mayor que 0.</translation>
    </message>
    <message>
        <source>A held pressure of %1 kPa does not fit a set pressure of %2 kPa. Give 0 up to the set pressure.</source>
        <extracomment>leakage.held</extracomment>
        <translation>Una presión retenida de %1 kPa no encaja con una presión ajustada de %2 kPa. Dar de 0 hasta la presión ajustada.</translation>
    </message>
    <message>
        <source>A regulator that sinks by %1 kPa cannot be right. Give 0 or more.</source>
        <extracomment>leakage.droop</extracomment>
        <translation>Un regulador que baja %1 kPa no puede ser. Dar 0 o más.</translation>
    </message>
    <message>
        <source>%1 trials are too few for a 95 % interval. Run at least %2.</source>
        <extracomment>uncertainty.trials</extracomment>
        <translation>%1 ensayos son pocos para un intervalo del 95 %. Hacer al menos %2.</translation>
    </message>
    <message>
        <source>Some of the %1 trials gave no number: the doubt of an input reaches values the sum cannot take. Narrow the inputs.</source>
        <extracomment>uncertainty.trials</extracomment>
        <translation>Algunos de los %1 ensayos no dieron número: la incertidumbre de un dato llega a valores que el cálculo no admite. Estrechar los datos.</translation>
    </message>
    <message>
        <source>The correlations given contradict each other at input %1. Correct them.</source>
        <extracomment>uncertainty.covariance</extracomment>
        <translation>Las correlaciones dadas se contradicen en el dato %1. Corregirlas.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number. Type digits with at most one decimal mark.</source>
        <extracomment>units.not_a_number</extracomment>
        <translation>«%1» no es un número. Escribir cifras con un signo decimal como máximo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a unit of %2: %3.</source>
        <extracomment>units.unknown</extracomment>
        <translation>«%1» necesita una unidad de %2: %3.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is damaged and can&apos;t be read. Take the photo again.</source>
        <extracomment>vision.photo_broken</extracomment>
        <translation>El archivo de la foto está dañado y no se puede leer. Hacer la foto de nuevo.</translation>
    </message>
    <message>
        <source>The scale must end above where it begins; %1 to %2 does not.</source>
        <extracomment>vision.range</extracomment>
        <translation>La escala debe acabar por encima de donde empieza; de %1 a %2 no lo hace.</translation>
    </message>
    <message>
        <source>A scale sweeps 90 to 350 degrees from end to end; %1 is not possible.</source>
        <extracomment>vision.sweep</extracomment>
        <translation>Una escala recorre de 90 a 350 grados de extremo a extremo; %1 no es posible.</translation>
    </message>
    <message>
        <source>The scale&apos;s start is an angle from 12 o&apos;clock, -360 to 360 degrees; %1 is not.</source>
        <extracomment>vision.start</extracomment>
        <translation>El inicio de la escala es un ángulo desde las 12 en punto, de -360 a 360 grados; %1 no lo es.</translation>
    </message>
    <message>
        <source>The photo could not be looked at (%1). Type the value.</source>
        <extracomment>vision.internal</extracomment>
        <translation>La foto no se pudo examinar (%1). Escribir el valor.</translation>
    </message>
    <message>
        <source>The picture with the needle marked could not be drawn.</source>
        <extracomment>vision.internal</extracomment>
        <translation>No se pudo dibujar la imagen con la aguja marcada.</translation>
    </message>
    <message>
        <source>The photo could not be written as a JPEG, so it was not kept. Close other apps, then try again.</source>
        <extracomment>vision.internal</extracomment>
        <translation>La foto no se pudo escribir como JPEG, así que no se guardó. Cerrar otras apps e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is cut short. Take the photo again, or copy the file anew.</source>
        <extracomment>vision.photo_cut_short</extracomment>
        <translation>El archivo de la foto está cortado. Hacer la foto de nuevo, o copiar otra vez el archivo.</translation>
    </message>
    <message>
        <source>The photo has %1 by %2 pixels; a gauge can&apos;t be read below %3 on either side. Use a larger one.</source>
        <extracomment>vision.photo_too_small</extracomment>
        <translation>La foto tiene %1 por %2 píxeles; un manómetro no se puede leer por debajo de %3 en cada lado. Usar una mayor.</translation>
    </message>
    <message>
        <source>The photo has %1 megapixels; files of its kind are read up to %2. Save it smaller, as an ordinary JPEG.</source>
        <extracomment>vision.photo_too_large</extracomment>
        <translation>La foto tiene %1 megapíxeles; los archivos de su tipo se leen hasta %2. Guardarla más pequeña, como JPEG corriente.</translation>
    </message>
    <message>
        <source>The photo is a rare kind of JPEG that can&apos;t be read here. Save it as an ordinary JPEG.</source>
        <extracomment>vision.photo_unusual_jpeg</extracomment>
        <translation>La foto es un tipo raro de JPEG que no se puede leer aquí. Guardarla como JPEG corriente.</translation>
    </message>
    <message>
        <source>The photo is stored in the four colours of print (CMYK). Save it as an ordinary JPEG.</source>
        <extracomment>vision.photo_four_colours</extracomment>
        <translation>La foto está guardada en los cuatro colores de imprenta (CMYK). Guardarla como JPEG corriente.</translation>
    </message>
    <message>
        <source>The file is a moving picture. Use a single photo, JPEG or PNG.</source>
        <extracomment>vision.photo_moves</extracomment>
        <translation>El archivo es una imagen animada. Usar una sola foto, JPEG o PNG.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is empty. Take the photo again.</source>
        <extracomment>vision.photo_empty</extracomment>
        <translation>El archivo de la foto está vacío. Hacer la foto de nuevo.</translation>
    </message>
    <message>
        <source>The photo&apos;s file is larger than %1 MB. Save it as an ordinary JPEG.</source>
        <extracomment>vision.photo_file_too_large</extracomment>
        <translation>El archivo de la foto pasa de %1 MB. Guardarla como JPEG corriente.</translation>
    </message>
    <message>
        <source>The file is a GIF. Use a single photo, JPEG or PNG.</source>
        <extracomment>vision.photo_moves</extracomment>
        <translation>El archivo es un GIF. Usar una sola foto, JPEG o PNG.</translation>
    </message>
    <message>
        <source>The file is no JPEG and no PNG. Use one of those; a phone&apos;s camera can be set to JPEG (&quot;most compatible&quot;).</source>
        <extracomment>vision.photo_kind</extracomment>
        <translation>El archivo no es JPEG ni PNG. Usar uno de ellos; la cámara de un teléfono se puede poner en JPEG («más compatible»).</translation>
    </message>
    <message>
        <source>There is no choice to make for this %1 any more. Go back and look again.</source>
        <extracomment>record.no_choice</extracomment>
        <translation>Aquí ya no hay nada que elegir (%1). Volver y mirar de nuevo.</translation>
    </message>
    <message>
        <source>This valve was measured again later. Take the later entry out first.</source>
        <extracomment>clearance.kept_again</extracomment>
        <translation>Esta válvula se volvió a medir más tarde. Quitar primero la entrada posterior.</translation>
    </message>
    <message>
        <source>This engine is no longer in the library. Go back to Engines.</source>
        <extracomment>engine.gone</extracomment>
        <translation>Este motor ya no está en la biblioteca. Volver a Motores.</translation>
    </message>
    <message>
        <source>Cylinder %1 has entries in a session of %2, so it can&apos;t go from the engine card. Leave it, or take those entries out first.</source>
        <extracomment>engine.cylinder_in_use</extracomment>
        <translation>El cilindro %1 tiene entradas en una sesión del %2, así que no se puede quitar de la ficha del motor. Dejarlo, o quitar primero esas entradas.</translation>
    </message>
    <message>
        <source>This exit was listened at again later. Take the later entry out first.</source>
        <extracomment>exit.kept_again</extracomment>
        <translation>Esta salida se volvió a escuchar más tarde. Quitar primero la entrada posterior.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <extracomment>backup.stopped</extracomment>
        <translation>Parado.</translation>
    </message>
    <message>
        <source>One of the chosen sessions is no longer in the library. Choose again.</source>
        <extracomment>session.gone</extracomment>
        <translation>Una de las sesiones elegidas ya no está en la biblioteca. Elegir de nuevo.</translation>
    </message>
    <message>
        <source>This %1 is no longer in the library. Go back and look again.</source>
        <extracomment>of several codes; record.gone</extracomment>
        <translation>Esto ya no está en la biblioteca (%1). Volver y mirar de nuevo.</translation>
    </message>
    <message>
        <source>%1 has no cylinder %2. Look at the cylinders on its engine card.</source>
        <extracomment>cylinder.unknown</extracomment>
        <translation>%1 no tiene cilindro %2. Mirar los cilindros en su ficha del motor.</translation>
    </message>
    <message>
        <source>This line stands at the end of the plan already: nothing was moved.</source>
        <extracomment>plan.at_end</extracomment>
        <translation>Esta línea ya está al final del plan: no se movió nada.</translation>
    </message>
    <message>
        <source>This reading was redone already. Redo the one that stands in its place.</source>
        <extracomment>reading.redone_already</extracomment>
        <translation>Esta lectura ya se rehízo. Rehacer la que está en su lugar.</translation>
    </message>
    <message>
        <source>A later reading stands in for this one. Take that one out first.</source>
        <extracomment>reading.redone_already</extracomment>
        <translation>Una lectura posterior ocupa el lugar de esta. Quitar primero aquella.</translation>
    </message>
    <message>
        <source>&quot;My call&quot; stands as it was committed. Write a note or another cause beside it.</source>
        <extracomment>note.call_stands</extracomment>
        <translation>«Mi dictamen» queda como se confirmó. Escribir una nota u otra causa al lado.</translation>
    </message>
    <message>
        <source>The file of this %1 is missing, so it was not added. Take it again.</source>
        <extracomment>attachment.no_file</extracomment>
        <translation>Falta el archivo de esto (%1), así que no se añadió. Tomarlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 stays: sessions or readings were taken with it (%2 of them), and their figures need it.</source>
        <extracomment>tester.in_use</extracomment>
        <translation>%1 se queda: con él se tomaron sesiones o lecturas (%2 en total), y sus cifras lo necesitan.</translation>
    </message>
    <message>
        <source>The library did not answer within 20 seconds.</source>
        <extracomment>tour.slow</extracomment>
        <translation>La biblioteca no respondió en 20 segundos.</translation>
    </message>
    <message>
        <source>The demo %1 is not in this program or can&apos;t be written to %2.</source>
        <extracomment>tour.demo</extracomment>
        <translation>La demostración %1 no está en este programa o no se puede escribir en %2.</translation>
    </message>
    <message>
        <source>A report can be drawn only while Qt&apos;s graphics are running.</source>
        <extracomment>print.no_window_system</extracomment>
        <translation>Un informe solo se puede dibujar mientras los gráficos de Qt están en marcha.</translation>
    </message>
    <message>
        <source>The report&apos;s typeface, B612, is missing from this program. Install it again.</source>
        <extracomment>print.font</extracomment>
        <translation>La letra del informe, B612, falta en este programa. Instalarlo de nuevo.</translation>
    </message>
    <message>
        <source>The report can&apos;t be written: %1. Choose another place or make room.</source>
        <extracomment>print.write_device</extracomment>
        <translation>El informe no se puede escribir: %1. Elegir otro lugar o hacer sitio.</translation>
    </message>
    <message>
        <source>The demo can&apos;t be written to %1: free some space and try again.</source>
        <extracomment>demo.no_room</extracomment>
        <translation>La demostración no se puede escribir en %1: liberar espacio e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>Lapwing may not use the camera. Allow it in the system&apos;s settings; photos can be chosen from files all the same.</source>
        <extracomment>camera.denied</extracomment>
        <translation>Lapwing no tiene permiso para usar la cámara. Darlo en los ajustes del sistema; de todos modos se pueden elegir fotos de archivos.</translation>
    </message>
    <message>
        <source>Lapwing may not use the microphone. Allow it in the system&apos;s settings; everything else works without.</source>
        <extracomment>microphone.denied</extracomment>
        <translation>Lapwing no tiene permiso para usar el micrófono. Darlo en los ajustes del sistema; todo lo demás funciona sin él.</translation>
    </message>
    <message>
        <source>%1 %2 is a very wide clearance: is the point right? Keep it once more if it is.</source>
        <extracomment>form.clearance_wide</extracomment>
        <translation>%1 %2 es un juego muy grande: ¿está bien la coma? Guardarlo otra vez si lo está.</translation>
    </message>
    <message>
        <source>%1 cylinders are not possible here: type a number from 1 to 16.</source>
        <extracomment>form.cylinder_count</extracomment>
        <translation>%1 cilindros no son posibles aquí: escribir un número de 1 a 16.</translation>
    </message>
    <message>
        <source>The intervals belong to the firing order: type the order first.</source>
        <extracomment>form.order_first</extracomment>
        <translation>Los intervalos son del orden de encendido: escribir primero el orden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number of degrees: type &quot;even&quot;, or degrees with a dash between them, such as 270-450.</source>
        <extracomment>form.intervals</extracomment>
        <translation>«%1» no es un número de grados: escribir «regular», o grados con un guion entre ellos, como 270-450.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; begins with a minus: a clearance is 0 or more. Type it without.</source>
        <extracomment>form.clearance_negative</extracomment>
        <translation>«%1» empieza con un signo menos: un juego es 0 o más. Escribirlo sin él.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no range: type two figures with a dash between them, such as 0.15-0.20, or one.</source>
        <extracomment>form.clearance_range</extracomment>
        <translation>«%1» no es un rango: escribir dos cifras con un guion entre ellas, como 0,15-0,20, o una.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is still empty: type a number there.</source>
        <extracomment>form.empty</extracomment>
        <translation>«%1» sigue vacío: escribir ahí un número.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no whole number: type digits only for &quot;%2&quot;.</source>
        <extracomment>form.not_whole</extracomment>
        <translation>«%1» no es un número entero: escribir solo cifras en «%2».</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number: type numbers with a dash between them, such as 1-3-4-2.</source>
        <extracomment>form.not_numbers</extracomment>
        <translation>«%1» no es un número: escribir números con un guion entre ellos, como 1-3-4-2.</translation>
    </message>
    <message>
        <source>Nothing is chosen for &quot;%1&quot;: choose one.</source>
        <extracomment>form.choose_one</extracomment>
        <translation>No se ha elegido nada en «%1»: elegir uno.</translation>
    </message>
    <message>
        <source>Nothing is typed there yet: type a number.</source>
        <extracomment>form.nothing</extracomment>
        <translation>Ahí todavía no hay nada escrito: escribir un número.</translation>
    </message>
    <message>
        <source>This line is not there any more: go back and open the card again.</source>
        <extracomment>form.gone</extracomment>
        <translation>Esta línea ya no está: volver y abrir la ficha de nuevo.</translation>
    </message>
    <message>
        <source>No visit is chosen. Choose at least one.</source>
        <extracomment>hand_over.nothing</extracomment>
        <translation>No se ha elegido ninguna visita. Elegir al menos una.</translation>
    </message>
    <message>
        <source>The folder %1 can&apos;t be made: %2. Save a copy somewhere else.</source>
        <extracomment>hand_over.folder</extracomment>
        <translation>No se puede crear la carpeta %1: %2. Guardar una copia en otro sitio.</translation>
    </message>
    <message>
        <source>That was too short. Hold the button while you speak.</source>
        <extracomment>voice.too_short</extracomment>
        <translation>Fue demasiado corto. Mantener pulsado el botón mientras se habla.</translation>
    </message>
    <message>
        <source>The camera&apos;s picture could not be kept. Take it again.</source>
        <extracomment>photo.not_written</extracomment>
        <translation>La imagen de la cámara no se pudo guardar. Tomarla de nuevo.</translation>
    </message>
    <message>
        <source>%1 is a folder, a pipe or a device. Choose a photo.</source>
        <extracomment>photo.no_file</extracomment>
        <translation>%1 es una carpeta, una tubería o un dispositivo. Elegir una foto.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2. Choose another photo.</source>
        <extracomment>photo.unreadable</extracomment>
        <translation>%1 no se puede leer: %2. Elegir otra foto.</translation>
    </message>
    <message>
        <source>%1 is larger than a photo can be here (%2 MB). Make it smaller first.</source>
        <extracomment>photo.too_large</extracomment>
        <translation>%1 es mayor de lo que puede ser una foto aquí (%2 MB). Hacerla antes más pequeña.</translation>
    </message>
    <message>
        <source>The firing order is not on the engine card. Type it there, and the angles appear here.</source>
        <extracomment>firing.order</extracomment>
        <translation>El orden de encendido no está en la ficha del motor. Escribirlo allí, y los ángulos aparecen aquí.</translation>
    </message>
    <message>
        <source>The firing intervals are not on the engine card. Type them there, and the angles appear here.</source>
        <extracomment>firing.intervals</extracomment>
        <translation>Los intervalos de encendido no están en la ficha del motor. Escribirlos allí, y los ángulos aparecen aquí.</translation>
    </message>
    <message>
        <source>This session is no longer in the library. Go back and choose again.</source>
        <extracomment>session.gone</extracomment>
        <translation>Esta sesión ya no está en la biblioteca. Volver y elegir de nuevo.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a price: type digits with at most one decimal mark and the currency, such as 420 EUR.</source>
        <extracomment>plan.price</extracomment>
        <translation>«%1» no es un precio: escribir cifras con un signo decimal como máximo y la moneda, como 420 EUR.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no currency: type it too, such as 420 EUR.</source>
        <extracomment>plan.currency</extracomment>
        <translation>«%1» no nombra moneda: escribirla también, como 420 EUR.</translation>
    </message>
    <message>
        <source>The sound of this voice note is missing from the library. Settings, Storage says what can be done.</source>
        <extracomment>attachment.file_gone</extracomment>
        <translation>El sonido de esta nota de voz falta en la biblioteca. En Ajustes, Almacenamiento se dice qué se puede hacer.</translation>
    </message>
    <message>
        <source>A restrictor of %1 is no tester&apos;s: they have about 0.5 to 3 mm (0.040 in are 1.02 mm). Look at the unit.</source>
        <extracomment>tester.restrictor_unlikely</extracomment>
        <translation>Un restrictor de %1 no es de ningún comprobador: tienen de 0,5 a 3 mm más o menos (0,040 in son 1,02 mm). Revisar la unidad.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no self-check: choose one of the list.</source>
        <extracomment>form.unknown_check</extracomment>
        <translation>«%1» no es una verificación: elegir una de la lista.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; reads as %2, with a decimal mark: for thousands type the figures without one. Keep it once more if it is meant.</source>
        <extracomment>form.thousands</extracomment>
        <translation>«%1» se lee como %2, con coma decimal: para millares escribir las cifras sin separador. Guardarlo otra vez si es así.</translation>
    </message>
    <message>
        <source>This installation lacks a part of Lapwing: %1. Install Lapwing anew; everything else works.</source>
        <extracomment>part.missing</extracomment>
        <translation>A esta instalación le falta una parte de Lapwing: %1. Instalar Lapwing de nuevo; todo lo demás funciona.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2</source>
        <extracomment>picker.copy_read</extracomment>
        <translation>%1 no se puede leer: %2</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: %2. Choose another folder or make room.</source>
        <extracomment>picker.copy_write</extracomment>
        <translation>%1 no se puede escribir: %2. Elegir otra carpeta o hacer sitio.</translation>
    </message>
    <message>
        <source>No file manager could be opened here. The file lies at %1.</source>
        <extracomment>share.no_file_manager</extracomment>
        <translation>Aquí no se pudo abrir ningún gestor de archivos. El archivo está en %1.</translation>
    </message>
    <message>
        <source>There is no file at %1. Make it again.</source>
        <extracomment>share.no_file</extracomment>
        <translation>No hay ningún archivo en %1. Hacerlo de nuevo.</translation>
    </message>
    <message>
        <source>The desktop&apos;s file dialog did not open: %1</source>
        <extracomment>picker.portal</extracomment>
        <translation>El diálogo de archivos del escritorio no se abrió: %1</translation>
    </message>
    <message>
        <source>The desktop&apos;s file dialog closed without naming a file on this computer. Choose one from a folder of this computer.</source>
        <extracomment>picker.no_file</extracomment>
        <translation>El diálogo de archivos del escritorio se cerró sin nombrar un archivo de este equipo. Elegir uno de una carpeta de este equipo.</translation>
    </message>
    <message>
        <source>%1 is not on this computer. Copy it here first.</source>
        <extracomment>picker.not_local</extracomment>
        <translation>%1 no está en este equipo. Copiarlo aquí primero.</translation>
    </message>
    <message>
        <source>No file dialog could be opened: %1</source>
        <extracomment>picker.no_dialog</extracomment>
        <translation>No se pudo abrir ningún diálogo de archivos: %1</translation>
    </message>
    <message>
        <source>No file dialog could be opened. Is Qt&apos;s folder list module (Qt.labs.folderlistmodel) installed?</source>
        <extracomment>picker.no_dialog</extracomment>
        <translation>No se pudo abrir ningún diálogo de archivos. ¿Está instalado el módulo de listas de carpetas de Qt (Qt.labs.folderlistmodel)?</translation>
    </message>
    <message>
        <source>%1 could not be made smaller: %2. It stays as it is.</source>
        <extracomment>speech.not_packed</extracomment>
        <translation>%1 no se pudo hacer más pequeño: %2. Se queda como está.</translation>
    </message>
    <message>
        <source>The camera does not answer. Close other programs that use it, or choose a photo from a file.</source>
        <extracomment>camera.silent</extracomment>
        <translation>La cámara no responde. Cerrar otros programas que la usen, o elegir una foto de un archivo.</translation>
    </message>
    <message>
        <source>No camera was found. Connect one, or allow Lapwing to use it in the system&apos;s settings; photos can be chosen from files all the same.</source>
        <extracomment>camera.none</extracomment>
        <translation>No se encontró ninguna cámara. Conectar una, o permitir a Lapwing usarla en los ajustes del sistema; de todos modos se pueden elegir fotos de archivos.</translation>
    </message>
    <message>
        <source>The camera took no picture (%1). Try again.</source>
        <extracomment>camera.failed</extracomment>
        <translation>La cámara no tomó ninguna imagen (%1). Intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>The camera stopped (%1). Go back and open it again.</source>
        <extracomment>camera.lost</extracomment>
        <translation>La cámara se paró (%1). Volver y abrirla de nuevo.</translation>
    </message>
    <message>
        <source>No microphone was found. Connect one, or allow Lapwing to use it in the system&apos;s settings.</source>
        <extracomment>microphone.none</extracomment>
        <translation>No se encontró ningún micrófono. Conectar uno, o permitir a Lapwing usarlo en los ajustes del sistema.</translation>
    </message>
    <message>
        <source>The microphone %1 can&apos;t be opened. Close other programs that record, then try again.</source>
        <extracomment>microphone.busy</extracomment>
        <translation>El micrófono %1 no se puede abrir. Cerrar otros programas que graben e intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>The microphone stopped. What was recorded until then is kept.</source>
        <extracomment>microphone.lost</extracomment>
        <translation>El micrófono se paró. Lo grabado hasta entonces se conserva.</translation>
    </message>
    <message>
        <source>No speaker or headphones were found. Connect some, then play it again.</source>
        <extracomment>player.no_speaker</extracomment>
        <translation>No se encontró altavoz ni auriculares. Conectar unos y reproducirlo de nuevo.</translation>
    </message>
    <message>
        <source>This voice note can&apos;t be played here (%1). It is kept; hand the session over and play it elsewhere.</source>
        <extracomment>player.failed</extracomment>
        <translation>Esta nota de voz no se puede reproducir aquí (%1). Se conserva; entregar la sesión y reproducirla en otro sitio.</translation>
    </message>
    <message>
        <source>A compression ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Una relación de compresión</translation>
    </message>
    <message>
        <source>Intake (or port) closing after bottom dead centre</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>El cierre de admisión (o de la lumbrera) después del punto muerto inferior</translation>
    </message>
    <message>
        <source>Exhaust opening before bottom dead centre</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>La apertura de escape antes del punto muerto inferior</translation>
    </message>
    <message>
        <source>A cranking speed</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Una velocidad de arranque</translation>
    </message>
    <message>
        <source>An air pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Una presión del aire</translation>
    </message>
    <message>
        <source>An air temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Una temperatura del aire</translation>
    </message>
    <message>
        <source>A wall temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Una temperatura de pared</translation>
    </message>
    <message>
        <source>A filling</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un llenado</translation>
    </message>
    <message>
        <source>A heat transfer coefficient</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un coeficiente de transmisión de calor</translation>
    </message>
    <message>
        <source>A leak area</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un área de fuga</translation>
    </message>
    <message>
        <source>A fitting volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un volumen de racor</translation>
    </message>
    <message>
        <source>A hose volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un volumen de manguera</translation>
    </message>
    <message>
        <source>A volume of the gauge alone</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un volumen del manómetro solo</translation>
    </message>
    <message>
        <source>A check valve area</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un área de la válvula antirretorno</translation>
    </message>
    <message>
        <source>A cracking pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Una presión de apertura</translation>
    </message>
    <message>
        <source>An oil volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un volumen de aceite</translation>
    </message>
    <message>
        <source>A number of strokes</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>Un número de carreras</translation>
    </message>
    <message>
        <source>pressure</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>presión</translation>
    </message>
    <message>
        <source>length</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>longitud</translation>
    </message>
    <message>
        <source>volume</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>volumen</translation>
    </message>
    <message>
        <source>area</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>área</translation>
    </message>
    <message>
        <source>temperature</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>angle</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>rotational speed</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>velocidad de giro</translation>
    </message>
    <message>
        <source>time</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>voltage</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>torque</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>par</translation>
    </message>
    <message>
        <source>flow</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>caudal</translation>
    </message>
    <message>
        <source>ratio</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>relación</translation>
    </message>
    <message>
        <source>distance or hours run</source>
        <extracomment>goes into the sentence of an error</extracomment>
        <translation>distancia u horas de marcha</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>A voice note was cut off when Lapwing ended. What was said until then is kept: %1 s.</source>
        <translation>Una nota de voz se cortó cuando Lapwing terminó. Lo dicho hasta entonces se conserva: %1 s.</translation>
    </message>
    <message>
        <source>Some photos or voice notes have lost their files. Settings, Storage lists them and says what can be done.</source>
        <translation>Algunas fotos o notas de voz han perdido sus archivos. Ajustes, Almacenamiento las enumera y dice qué se puede hacer.</translation>
    </message>
    <message>
        <source>Some photos or voice notes belong to no entry any more, perhaps of ones deleted long ago. Settings, Storage lists them: keep a copy or let them go.</source>
        <translation>Algunas fotos o notas de voz ya no pertenecen a ninguna entrada, quizá a entradas borradas hace tiempo. Ajustes, Almacenamiento las enumera: guardar una copia o borrarlas.</translation>
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
        <translation>Nota de voz (%1)</translation>
    </message>
    <message>
        <source>Voice note</source>
        <translation>Nota de voz</translation>
    </message>
</context>
<context>
    <name>EvidencePage</name>
    <message>
        <source>Photos and voice notes</source>
        <translation>Fotos y notas de voz</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Aún no hay nada</translation>
    </message>
    <message>
        <source>A photo of the gauge, a plug or a valve, or a few words while it is fresh. What is taken at a cylinder&apos;s exit or reading stands here too.</source>
        <translation>Una foto del manómetro, de una bujía o de una válvula, o unas palabras mientras está reciente. Lo que se toma en una salida o una lectura de un cilindro también está aquí.</translation>
    </message>
    <message>
        <source>Photo of the dial: %1</source>
        <translation>Foto de la esfera: %1</translation>
    </message>
    <message>
        <source>Voice note</source>
        <translation>Nota de voz</translation>
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
        <translation>con %1</translation>
    </message>
</context>
<context>
    <name>FieldTabs</name>
    <message>
        <source>%1: one less</source>
        <translation>%1: uno menos</translation>
    </message>
    <message>
        <source>%1: one more</source>
        <translation>%1: uno más</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>cilindro %1</translation>
    </message>
    <message>
        <source>cylinders %1</source>
        <translation>cilindros %1</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>owner_answer:yes</extracomment>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>owner_answer:no</extracomment>
        <translation>no</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>another record</source>
        <translation>otro registro</translation>
    </message>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, cilindro %2</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, por %2</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Clearance, %1</source>
        <translation>Juego, %1</translation>
    </message>
    <message>
        <source>%1 lost of %2</source>
        <translation>%1 de fuga con %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>held %1 of %2</source>
        <translation>mantuvo %1 de %2</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation>encontrado %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>dejado %1</translation>
    </message>
    <message>
        <source>Air pressure %1 before, %2 after: the earlier readings are converted to the later air.</source>
        <extracomment>compare.air_pressure</extracomment>
        <translation>Presión del aire %1 antes, %2 después: las lecturas anteriores se convierten al aire posterior.</translation>
    </message>
    <message>
        <source>Gauge &quot;%1&quot; before, &quot;%2&quot; after: the earlier readings are converted by %3 for hose and check valve. The errors of two gauges don&apos;t cancel.</source>
        <extracomment>compare.gauge</extracomment>
        <translation>Manómetro «%1» antes, «%2» después: las lecturas anteriores se convierten en %3 por la manguera y la válvula antirretorno. Los errores de dos manómetros no se anulan.</translation>
    </message>
    <message>
        <source>Another adapter: the earlier readings are converted by %1 for its volume.</source>
        <extracomment>compare.adapter</extracomment>
        <translation>Otro adaptador: las lecturas anteriores se convierten en %1 por su volumen.</translation>
    </message>
    <message>
        <source>Engine %1 before, %2 after: the earlier readings are converted by %3, as the model expects.</source>
        <extracomment>compare.heat</extracomment>
        <translation>Motor %1 antes, %2 después: las lecturas anteriores se convierten en %3, según espera el modelo.</translation>
    </message>
    <message>
        <source>Cranked at %1 rpm before, %2 rpm after: the earlier readings are converted by %3, as the model expects.</source>
        <extracomment>compare.speed</extracomment>
        <translation>Velocidad de arranque %1 rpm antes, %2 rpm después: las lecturas anteriores se convierten en %3, según espera el modelo.</translation>
    </message>
    <message>
        <source>%1 pulls before, %2 after: the earlier readings are converted by %3, as the model expects.</source>
        <extracomment>compare.pulls</extracomment>
        <translation>%1 emboladas antes, %2 después: las lecturas anteriores se convierten en %3, según espera el modelo.</translation>
    </message>
    <message>
        <source>Leak-down tester &quot;%1&quot; before, &quot;%2&quot; after: the earlier leak is shown as the later tester would show it. The errors of two testers don&apos;t cancel.</source>
        <extracomment>compare.tester</extracomment>
        <translation>Comprobador de estanqueidad «%1» antes, «%2» después: la fuga anterior se muestra como la mostraría el comprobador posterior. Los errores de dos comprobadores no se anulan.</translation>
    </message>
    <message>
        <source>Set to %1 before, %2 after: the earlier leak is shown as it would be at the later set pressure.</source>
        <extracomment>compare.set_pressure</extracomment>
        <translation>Presión ajustada %1 antes, %2 después: la fuga anterior se muestra como sería con la presión ajustada posterior.</translation>
    </message>
    <message>
        <source>Held for %1 before, for %2 after: the earlier crankcase reading is shown as it would be after the later time.</source>
        <extracomment>compare.hold</extracomment>
        <translation>Retención de %1 antes, de %2 después: la lectura anterior del cárter se muestra como sería tras el tiempo posterior.</translation>
    </message>
    <message>
        <source>Crankcase tester &quot;%1&quot; before, &quot;%2&quot; after: the errors of two gauges don&apos;t cancel.</source>
        <extracomment>compare.crankcase_tester</extracomment>
        <translation>Comprobador del cárter «%1» antes, «%2» después: los errores de dos manómetros no se anulan.</translation>
    </message>
    <message>
        <source>How long the crankcase was held isn&apos;t noted for both tests: taken as the same.</source>
        <extracomment>compare.hold_unknown</extracomment>
        <translation>Cuánto tiempo se mantuvo el cárter no está anotado en ambas pruebas: se toma como igual.</translation>
    </message>
    <message>
        <source>A crankcase was empty before the end of the hold, so how fast it leaked isn&apos;t known: not comparable. Read again after a shorter time.</source>
        <extracomment>compare.emptied</extracomment>
        <translation>Un cárter estaba vacío antes de terminar la retención, así que no se sabe con qué rapidez perdía: no comparable. Leer de nuevo tras menos tiempo.</translation>
    </message>
    <message>
        <source>Gauge &quot;%1&quot; before, &quot;%2&quot; after: what their hoses do to a reading isn&apos;t known. Not converted; %3 more doubt is allowed for it.</source>
        <extracomment>compare.gauge_as_it_is</extracomment>
        <translation>Manómetro «%1» antes, «%2» después: no se sabe qué hacen sus mangueras a una lectura. Sin convertir; se añade por ello %3 de incertidumbre.</translation>
    </message>
    <message>
        <source>The induction was taken off at one of the two visits. Not converted; %1 more doubt is allowed for it.</source>
        <extracomment>compare.induction</extracomment>
        <translation>En una de las dos visitas la admisión estaba desmontada. Sin convertir; se añade por ello %1 de incertidumbre.</translation>
    </message>
    <message>
        <source>The battery was flat at one of the two visits and the cranking speed isn&apos;t noted. Not converted; %1 more doubt is allowed for it.</source>
        <extracomment>compare.battery</extracomment>
        <translation>En una de las dos visitas la batería estaba descargada y la velocidad de arranque no está anotada. Sin convertir; se añade por ello %1 de incertidumbre.</translation>
    </message>
    <message>
        <source>Engine warm at one visit, cold at the other: gaps and oil change with it. Not converted; %1 of the leakage is allowed as doubt.</source>
        <extracomment>compare.heat_leak</extracomment>
        <translation>Motor caliente en una visita, frío en la otra: las holguras y el aceite cambian con ello. Sin convertir; se añade como incertidumbre %1 de la pérdida.</translation>
    </message>
    <message>
        <source>The restrictor of &quot;%1&quot; isn&apos;t on its card: the conversion is doubtful by it.</source>
        <extracomment>compare.restrictor_unknown</extracomment>
        <translation>El restrictor de «%1» no está en su ficha: la conversión es dudosa por ello.</translation>
    </message>
    <message>
        <source>The shop&apos;s altitude isn&apos;t noted for both visits: the air pressure is taken as the same.</source>
        <extracomment>compare.altitude_unknown</extracomment>
        <translation>La altitud del taller no está anotada en ambas visitas: la presión del aire se toma como igual.</translation>
    </message>
    <message>
        <source>Warm or cold isn&apos;t noted for both visits: taken as alike.</source>
        <extracomment>compare.heat_unknown</extracomment>
        <translation>Si el motor estaba caliente o frío no está anotado en ambas visitas: se toma como igual.</translation>
    </message>
    <message>
        <source>Whether the throttle was held open isn&apos;t noted for both visits: taken as alike.</source>
        <extracomment>compare.throttle_unknown</extracomment>
        <translation>Si la mariposa se mantuvo abierta no está anotado en ambas visitas: se toma como igual.</translation>
    </message>
    <message>
        <source>The cranking speed isn&apos;t noted for both visits: taken as alike.</source>
        <extracomment>compare.speed_unknown</extracomment>
        <translation>La velocidad de arranque no está anotada en ambas visitas: se toma como igual.</translation>
    </message>
    <message>
        <source>Which tester was used for the %1 isn&apos;t noted for both visits: an error of the gauge does not cancel out.</source>
        <extracomment>compare.tester_unknown</extracomment>
        <translation>El comprobador usado (%1) no está anotado en ambas visitas: un error del manómetro no se anula.</translation>
    </message>
    <message>
        <source>Whether oil from the assembly was still on the rings isn&apos;t noted: if it was, the reading after the repair flatters. Test again after running in.</source>
        <extracomment>compare.oil_unknown</extracomment>
        <translation>No está anotado si aún había aceite del montaje en los segmentos: si lo había, la lectura después de la reparación sale mejor de lo que es. Probar de nuevo después del rodaje.</translation>
    </message>
    <message>
        <source>How much oil went in isn&apos;t noted for both wet tests: taken as the same.</source>
        <extracomment>compare.oil_amount_unknown</extracomment>
        <translation>La cantidad de aceite echado no está anotada en ambas pruebas húmedas: se toma como igual.</translation>
    </message>
    <message>
        <source>Oil was on the rings at the earlier of the two visits, and none is noted at the later one: not comparable.</source>
        <extracomment>compare.oil_earlier</extracomment>
        <translation>En la primera de las dos visitas había aceite en los segmentos y en la segunda no consta: no comparable.</translation>
    </message>
    <message>
        <source>Oil was on the rings at the later of the two visits, and none is noted at the earlier one: not comparable. Oil of a wet test or of the assembly lifts a reading; let the engine run, then test again.</source>
        <extracomment>compare.oil_later</extracomment>
        <translation>En la segunda de las dos visitas había aceite en los segmentos y en la primera no consta: no comparable. El aceite de una prueba húmeda o del montaje sube la lectura; dejar funcionar el motor y medir otra vez.</translation>
    </message>
    <message>
        <source>Wet tests with %1 and with %2 of oil: not comparable.</source>
        <extracomment>compare.oil_amount</extracomment>
        <translation>Pruebas húmedas con %1 y con %2 de aceite: no comparable.</translation>
    </message>
    <message>
        <source>Engine %1 before, %2 after, and the engine card lacks what a conversion needs: not comparable. Test again cold against cold or warm against warm.</source>
        <extracomment>compare.heat_no_model</extracomment>
        <translation>Motor %1 antes, %2 después, y en la ficha del motor falta lo que necesita una conversión: no comparable. Probar de nuevo en frío contra frío o en caliente contra caliente.</translation>
    </message>
    <message>
        <source>The throttle was closed at one of the two visits: not comparable.</source>
        <extracomment>compare.throttle</extracomment>
        <translation>En una de las dos visitas la mariposa estaba cerrada: no comparable.</translation>
    </message>
    <message>
        <source>Cranked by %1 before, by %2 after, and the cranking speed isn&apos;t noted for both: not comparable.</source>
        <extracomment>compare.cranked_by</extracomment>
        <translation>Girado con: %1 antes, %2 después, y la velocidad de arranque no está anotada en ambas: no comparable.</translation>
    </message>
    <message>
        <source>The decompressor was at work at one of the two visits: not comparable.</source>
        <extracomment>compare.decompressor</extracomment>
        <translation>En una de las dos visitas actuaba el descompresor: no comparable.</translation>
    </message>
    <message>
        <source>Perhaps the wrong TDC at one of the two visits: not comparable. Turn the crank one full turn and test again.</source>
        <extracomment>compare.tdc</extracomment>
        <translation>Quizá el PMS equivocado en una de las dos visitas: no comparable. Dar una vuelta completa al cigüeñal y probar de nuevo.</translation>
    </message>
    <message>
        <source>Nothing stands in the way: testers, shop and circumstances were alike.</source>
        <extracomment>compare.alike</extracomment>
        <translation>Nada se interpone: comprobadores, taller y circunstancias eran iguales.</translation>
    </message>
    <message>
        <source>One and the same gauge: its zero error cancels in the difference, its gain nearly.</source>
        <extracomment>compare.note_cancels</extracomment>
        <translation>El mismo manómetro: su error de cero se anula en la diferencia, su error de ganancia casi.</translation>
    </message>
    <message>
        <source>Two gauges: an error of one does not cancel out against the other&apos;s.</source>
        <extracomment>compare.note_nothing_cancels</extracomment>
        <translation>Dos manómetros: el error de uno no se anula con el del otro.</translation>
    </message>
    <message>
        <source>From one day to the next readings scatter by %1 beside the gauge.</source>
        <extracomment>compare.note_day</extracomment>
        <translation>De un día a otro las lecturas se dispersan %1, aparte del manómetro.</translation>
    </message>
    <message>
        <source>Cylinder %1: the leak at %2 is coming back.</source>
        <extracomment>history.coming_back</extracomment>
        <translation>Cilindro %1: vuelve la fuga por %2.</translation>
    </message>
    <message>
        <source>Cylinder %1: a leak at %2 has come up since the repair.</source>
        <extracomment>history.new_leak</extracomment>
        <translation>Cilindro %1: ha aparecido una fuga por %2 desde la reparación.</translation>
    </message>
    <message>
        <source>Cylinder %1 has lost beyond doubt since the repair, and nothing says yet where. Listen at its exits.</source>
        <extracomment>history.worse_since_repair</extracomment>
        <translation>El cilindro %1 ha perdido sin lugar a dudas desde la reparación, y nada dice aún por dónde. Escuchar en sus salidas.</translation>
    </message>
    <message>
        <source>Leakage %1 after the repair, %2 now: worse beyond doubt.</source>
        <extracomment>history.leakage_worse</extracomment>
        <translation>Pérdida %1 después de la reparación, %2 ahora: peor sin lugar a dudas.</translation>
    </message>
    <message>
        <source>Dry reading %1 after the repair, %2 now: worse beyond doubt.</source>
        <extracomment>history.reading_worse</extracomment>
        <translation>Lectura en seco %1 después de la reparación, %2 ahora: peor sin lugar a dudas.</translation>
    </message>
    <message>
        <source>Leakage %1 after the repair, %2 now: more.</source>
        <extracomment>history.leakage_fits</extracomment>
        <translation>Pérdida %1 después de la reparación, %2 ahora: más.</translation>
    </message>
    <message>
        <source>Dry reading %1 after the repair, %2 now: lower.</source>
        <extracomment>history.reading_fits</extracomment>
        <translation>Lectura en seco %1 después de la reparación, %2 ahora: más baja.</translation>
    </message>
    <message>
        <source>Dry test and leak-down together: worse beyond doubt.</source>
        <extracomment>history.together</extracomment>
        <translation>Prueba en seco y estanqueidad juntas: peor sin lugar a dudas.</translation>
    </message>
    <message>
        <source>Air at %1: %2 after the repair, %3 now.</source>
        <extracomment>history.louder</extracomment>
        <translation>Aire (%1): %2 después de la reparación, %3 ahora.</translation>
    </message>
    <message>
        <source>Air at %1: %2 now.</source>
        <extracomment>history.heard_now</extracomment>
        <translation>Aire (%1): %2 ahora.</translation>
    </message>
    <message>
        <source>Oil lifts the reading by %1, more than its volume explains.</source>
        <extracomment>history.oil_lifts</extracomment>
        <translation>El aceite sube la lectura %1, más de lo que explica su volumen.</translation>
    </message>
    <message>
        <source>Before the repair the signs pointed at %1 too.</source>
        <extracomment>history.same_as_before</extracomment>
        <translation>Antes de la reparación los indicios también señalaban %1.</translation>
    </message>
    <message>
        <source>%1 readings since the repair go down beyond doubt.</source>
        <extracomment>history.trend_agrees</extracomment>
        <translation>%1 lecturas desde la reparación bajan sin lugar a dudas.</translation>
    </message>
    <message>
        <source>%1 readings: too few to tell a trend.</source>
        <extracomment>history.trend_undecided</extracomment>
        <translation>%1 lecturas: pocas para hablar de tendencia.</translation>
    </message>
    <message>
        <source>%1 readings, no trend beyond their doubt.</source>
        <extracomment>history.trend_steady</extracomment>
        <translation>%1 lecturas, sin tendencia más allá de su incertidumbre.</translation>
    </message>
    <message>
        <source>Rising by %1 a year over %2 readings.</source>
        <extracomment>history.trend_better_pressure</extracomment>
        <translation>Sube %1 al año en %2 lecturas.</translation>
    </message>
    <message>
        <source>Falling by %1 a year over %2 readings.</source>
        <extracomment>history.trend_worse_pressure</extracomment>
        <translation>Baja %1 al año en %2 lecturas.</translation>
    </message>
    <message>
        <source>Leakage changes by %1 a year over %2 readings: better.</source>
        <extracomment>history.trend_better_leakage</extracomment>
        <translation>La pérdida cambia %1 al año en %2 lecturas: mejor.</translation>
    </message>
    <message>
        <source>Leakage changes by %1 a year over %2 readings: worse.</source>
        <extracomment>history.trend_worse_leakage</extracomment>
        <translation>La pérdida cambia %1 al año en %2 lecturas: peor.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work; %3 to %4 was predicted: it held.</source>
        <extracomment>proof.held</extracomment>
        <translation>El cilindro %1 da %2 después del trabajo; se había previsto de %3 a %4: se cumplió.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work, less than the %3 to %4 predicted.</source>
        <extracomment>proof.below</extracomment>
        <translation>El cilindro %1 da %2 después del trabajo, menos de lo previsto, de %3 a %4.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work, more than the %3 to %4 predicted.</source>
        <extracomment>proof.above</extracomment>
        <translation>El cilindro %1 da %2 después del trabajo, más de lo previsto, de %3 a %4.</translation>
    </message>
    <message>
        <source>Cylinder %1: %2 to %3 was predicted. Test it again to see whether it holds.</source>
        <extracomment>proof.not_measured</extracomment>
        <translation>Cilindro %1: se había previsto de %2 a %3. Probarlo de nuevo para ver si se cumple.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 after the work, but not under circumstances that %3 to %4 was predicted for.</source>
        <extracomment>proof.not_comparable</extracomment>
        <translation>El cilindro %1 da %2 después del trabajo, pero no en las circunstancias para las que se había previsto de %3 a %4.</translation>
    </message>
    <message>
        <source>Cylinder %1: %2 to %3 was predicted for this work alone, but more was done before the next test.</source>
        <extracomment>proof.several</extracomment>
        <translation>Cilindro %1: se había previsto de %2 a %3 solo para este trabajo, pero se hizo más antes de la prueba siguiente.</translation>
    </message>
    <message>
        <source>%1 was read; here it is converted to the tester and the conditions of the visit that predicted it.</source>
        <extracomment>proof.converted</extracomment>
        <translation>Se leyó %1; aquí está convertido al comprobador y a las condiciones de la visita que lo predijo.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 before the work, which lies in the predicted range too: without any repair it would have held. So it says nothing of how good predictions are and is not counted among them.</source>
        <extracomment>proof.held_anyway</extracomment>
        <translation>El cilindro %1 marcaba %2 antes del trabajo, y eso también está en el rango previsto: se habría cumplido sin reparación alguna. Por eso no dice nada de lo buenas que son las previsiones y no se cuenta.</translation>
    </message>
    <message>
        <source>Left out of this count because they would have held without any repair, which says nothing about the assumptions: %1.</source>
        <extracomment>proof.apart</extracomment>
        <translation>Sin contar, porque se habrían cumplido sin reparación alguna y así no dicen nada de los supuestos: %1.</translation>
    </message>
    <message>
        <source>Repairs with a prediction so far: %1. How many held is said once there are %2.</source>
        <extracomment>proof.too_few</extracomment>
        <translation>Reparaciones con previsión hasta ahora: %1. Cuántas se cumplieron se dice cuando haya %2.</translation>
    </message>
    <message>
        <source>%1 of %2 predictions held; 9 of 10 are meant to. By chance alone the true share lies between %3 and %4.</source>
        <extracomment>proof.hit_rate</extracomment>
        <translation>%1 de %2 previsiones se cumplieron; deberían cumplirse 9 de 10. Solo por azar la parte real está entre %3 y %4.</translation>
    </message>
    <message>
        <source>not measured twice</source>
        <extracomment>change:not measured</extracomment>
        <translation>no medido dos veces</translation>
    </message>
    <message>
        <source>better beyond doubt</source>
        <extracomment>change:better beyond doubt</extracomment>
        <translation>mejor sin lugar a dudas</translation>
    </message>
    <message>
        <source>better</source>
        <comment>change:better</comment>
        <translation>mejor</translation>
    </message>
    <message>
        <source>no real change</source>
        <extracomment>change:no real change</extracomment>
        <translation>sin cambio real</translation>
    </message>
    <message>
        <source>worse</source>
        <comment>change:worse</comment>
        <translation>peor</translation>
    </message>
    <message>
        <source>not comparable</source>
        <comment>change:not comparable</comment>
        <translation>no comparable</translation>
    </message>
    <message>
        <source>converted</source>
        <extracomment>treatment:corrected</extracomment>
        <translation>convertido</translation>
    </message>
    <message>
        <source>doubt allowed for it</source>
        <extracomment>treatment:allowed for</extracomment>
        <translation>se añade incertidumbre por ello</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>treatment:not noted</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>not comparable</source>
        <comment>treatment:not comparable</comment>
        <translation>no comparable</translation>
    </message>
    <message>
        <source>undecided</source>
        <extracomment>direction:undecided</extracomment>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>no trend</source>
        <extracomment>direction:steady</extracomment>
        <translation>sin tendencia</translation>
    </message>
    <message>
        <source>better</source>
        <comment>direction:better</comment>
        <translation>mejor</translation>
    </message>
    <message>
        <source>worse</source>
        <comment>direction:worse</comment>
        <translation>peor</translation>
    </message>
    <message>
        <source>held</source>
        <extracomment>foretold:held</extracomment>
        <translation>se cumplió</translation>
    </message>
    <message>
        <source>reads less</source>
        <extracomment>foretold:below</extracomment>
        <translation>da menos</translation>
    </message>
    <message>
        <source>reads more</source>
        <extracomment>foretold:above</extracomment>
        <translation>da más</translation>
    </message>
    <message>
        <source>not tested yet</source>
        <extracomment>foretold:not measured</extracomment>
        <translation>aún no probado</translation>
    </message>
    <message>
        <source>not comparable</source>
        <comment>foretold:not comparable</comment>
        <translation>no comparable</translation>
    </message>
    <message>
        <source>several repairs at once</source>
        <extracomment>foretold:several repairs</extracomment>
        <translation>varias reparaciones a la vez</translation>
    </message>
    <message>
        <source>before</source>
        <extracomment>input:before</extracomment>
        <translation>antes</translation>
    </message>
    <message>
        <source>after</source>
        <extracomment>input:after</extracomment>
        <translation>después</translation>
    </message>
    <message>
        <source>before, as measured</source>
        <extracomment>input:before_as_measured</extracomment>
        <translation>antes, tal como se midió</translation>
    </message>
    <message>
        <source>Added</source>
        <extracomment>made_at</extracomment>
        <translation>Añadido</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>name</extracomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Description</source>
        <extracomment>description</extracomment>
        <translation>Descripción</translation>
    </message>
    <message>
        <source>Tags</source>
        <extracomment>tags</extracomment>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>History</source>
        <extracomment>history</extracomment>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Owner</source>
        <extracomment>owner.name</extracomment>
        <translation>Propietario</translation>
    </message>
    <message>
        <source>Owner&apos;s contact</source>
        <extracomment>contact</extracomment>
        <translation>Contacto del propietario</translation>
    </message>
    <message>
        <source>Strokes</source>
        <extracomment>cycle</extracomment>
        <translation>Tiempos</translation>
    </message>
    <message>
        <source>Fuel</source>
        <extracomment>fuel</extracomment>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <extracomment>arrangement</extracomment>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>Angle between the banks</source>
        <extracomment>bank_angle</extracomment>
        <translation>Ángulo entre bancadas</translation>
    </message>
    <message>
        <source>Cooling</source>
        <extracomment>cooling</extracomment>
        <translation>Refrigeración</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <extracomment>cylinders</extracomment>
        <translation>Cilindros</translation>
    </message>
    <message>
        <source>Firing order</source>
        <extracomment>firing_order</extracomment>
        <translation>Orden de encendido</translation>
    </message>
    <message>
        <source>Firing intervals</source>
        <extracomment>firing_intervals</extracomment>
        <translation>Intervalos de encendido</translation>
    </message>
    <message>
        <source>Joined intakes</source>
        <extracomment>joined_intakes</extracomment>
        <translation>Admisiones unidas</translation>
    </message>
    <message>
        <source>Joined exhausts</source>
        <extracomment>joined_exhausts</extracomment>
        <translation>Escapes unidos</translation>
    </message>
    <message>
        <source>Bore</source>
        <extracomment>bore</extracomment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Stroke</source>
        <extracomment>stroke</extracomment>
        <translation>Carrera</translation>
    </message>
    <message>
        <source>Rod</source>
        <extracomment>rod</extracomment>
        <translation>Biela</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <extracomment>compression_ratio</extracomment>
        <translation>Relación de compresión</translation>
    </message>
    <message>
        <source>Exhaust port closing</source>
        <extracomment>exhaust_port_closing</extracomment>
        <translation>Cierre de la lumbrera de escape</translation>
    </message>
    <message>
        <source>Intake valves per cylinder</source>
        <extracomment>intake_valves</extracomment>
        <translation>Válvulas de admisión por cilindro</translation>
    </message>
    <message>
        <source>Exhaust valves per cylinder</source>
        <extracomment>exhaust_valves</extracomment>
        <translation>Válvulas de escape por cilindro</translation>
    </message>
    <message>
        <source>Adjusters</source>
        <extracomment>adjuster</extracomment>
        <translation>Reglaje</translation>
    </message>
    <message>
        <source>Intake clearance</source>
        <extracomment>intake_clearance</extracomment>
        <translation>Juego de admisión</translation>
    </message>
    <message>
        <source>Exhaust clearance</source>
        <extracomment>exhaust_clearance</extracomment>
        <translation>Juego de escape</translation>
    </message>
    <message>
        <source>Valve timing</source>
        <extracomment>timing</extracomment>
        <translation>Distribución</translation>
    </message>
    <message>
        <source>Intake closing</source>
        <extracomment>intake_closing</extracomment>
        <translation>Cierre de admisión</translation>
    </message>
    <message>
        <source>Intake closing counted</source>
        <extracomment>intake_closing_at</extracomment>
        <translation>Cierre de admisión contado</translation>
    </message>
    <message>
        <source>Exhaust opening</source>
        <extracomment>exhaust_opening</extracomment>
        <translation>Apertura de escape</translation>
    </message>
    <message>
        <source>Exhaust opening counted</source>
        <extracomment>exhaust_opening_at</extracomment>
        <translation>Apertura de escape contada</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <extracomment>decompressor</extracomment>
        <translation>Descompresor</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <extracomment>plug_thread</extracomment>
        <translation>Rosca de bujía</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <extracomment>plug_reach</extracomment>
        <translation>Largo de rosca de bujía</translation>
    </message>
    <message>
        <source>Factory range from</source>
        <extracomment>limits.low</extracomment>
        <translation>Rango de fábrica desde</translation>
    </message>
    <message>
        <source>Factory range to</source>
        <extracomment>limits.high</extracomment>
        <translation>Rango de fábrica hasta</translation>
    </message>
    <message>
        <source>Factory limit</source>
        <extracomment>limits.lowest</extracomment>
        <translation>Límite de fábrica</translation>
    </message>
    <message>
        <source>Most between cylinders</source>
        <extracomment>limits.difference</extracomment>
        <translation>Máximo entre cilindros</translation>
    </message>
    <message>
        <source>Lowest of highest, at least</source>
        <extracomment>limits.least_ratio</extracomment>
        <translation>Más bajo frente al más alto, al menos</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <extracomment>limits.most_leakage</extracomment>
        <translation>Pérdida máxima</translation>
    </message>
    <message>
        <source>Set pressure of the maker&apos;s tester</source>
        <extracomment>limits.leakage_set</extracomment>
        <translation>Presión ajustada del comprobador del fabricante</translation>
    </message>
    <message>
        <source>Restrictor of the maker&apos;s tester</source>
        <extracomment>limits.leakage_restrictor</extracomment>
        <translation>Restrictor del comprobador del fabricante</translation>
    </message>
    <message>
        <source>Source of the limits</source>
        <extracomment>limits.origin</extracomment>
        <translation>Fuente de los límites</translation>
    </message>
    <message>
        <source>Note on the limits</source>
        <extracomment>limits.note</extracomment>
        <translation>Nota sobre los límites</translation>
    </message>
    <message>
        <source>Crankcase set pressure</source>
        <extracomment>crankcase.set</extracomment>
        <translation>Presión ajustada del cárter</translation>
    </message>
    <message>
        <source>Crankcase hold time</source>
        <extracomment>crankcase.hold</extracomment>
        <translation>Tiempo de retención del cárter</translation>
    </message>
    <message>
        <source>Crankcase end pressure, at least</source>
        <extracomment>crankcase.end_at_least</extracomment>
        <translation>Presión final del cárter, al menos</translation>
    </message>
    <message>
        <source>Source of the crankcase figures</source>
        <extracomment>crankcase.origin</extracomment>
        <translation>Fuente de las cifras del cárter</translation>
    </message>
    <message>
        <source>Note on the crankcase figures</source>
        <extracomment>crankcase.note</extracomment>
        <translation>Nota sobre las cifras del cárter</translation>
    </message>
    <message>
        <source>Shop altitude</source>
        <extracomment>shop_altitude</extracomment>
        <translation>Altitud del taller</translation>
    </message>
    <message>
        <source>Kind</source>
        <extracomment>kind</extracomment>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Home-made</source>
        <extracomment>home_made</extracomment>
        <translation>Casero</translation>
    </message>
    <message>
        <source>Full scale</source>
        <extracomment>full_scale</extracomment>
        <translation>Fondo de escala</translation>
    </message>
    <message>
        <source>Class by</source>
        <extracomment>scheme</extracomment>
        <translation>Clase según</translation>
    </message>
    <message>
        <source>Class</source>
        <extracomment>accuracy</extracomment>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Smallest division</source>
        <extracomment>division</extracomment>
        <translation>División más pequeña</translation>
    </message>
    <message>
        <source>Needle at rest</source>
        <extracomment>zero_at_rest</extracomment>
        <translation>Aguja en reposo</translation>
    </message>
    <message>
        <source>Sweep of the scale</source>
        <extracomment>sweep</extracomment>
        <translation>Recorrido de la escala</translation>
    </message>
    <message>
        <source>Gauge before the restrictor</source>
        <extracomment>supply_gauge</extracomment>
        <translation>Manómetro antes del restrictor</translation>
    </message>
    <message>
        <source>Volume of hose and gauge</source>
        <extracomment>hose_volume</extracomment>
        <translation>Volumen de manguera y manómetro</translation>
    </message>
    <message>
        <source>Check valve at</source>
        <extracomment>check_valve_at</extracomment>
        <translation>Válvula antirretorno en</translation>
    </message>
    <message>
        <source>Check valve core</source>
        <extracomment>check_valve_core</extracomment>
        <translation>Núcleo de la antirretorno</translation>
    </message>
    <message>
        <source>Adapters</source>
        <extracomment>adapters</extracomment>
        <translation>Adaptadores</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <extracomment>set_pressure</extracomment>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>Restrictor</source>
        <extracomment>restrictor</extracomment>
        <translation>Restrictor</translation>
    </message>
    <message>
        <source>Length of the restrictor</source>
        <extracomment>restrictor_length</extracomment>
        <translation>Longitud del restrictor</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <extracomment>restrictor_cd</extracomment>
        <translation>Coeficiente de descarga</translation>
    </message>
    <message>
        <source>Checks</source>
        <extracomment>checks</extracomment>
        <translation>Verificaciones</translation>
    </message>
    <message>
        <source>Opened</source>
        <extracomment>opened_at</extracomment>
        <translation>Abierta</translation>
    </message>
    <message>
        <source>Title</source>
        <extracomment>title</extracomment>
        <translation>Título</translation>
    </message>
    <message>
        <source>Mileage or hours</source>
        <extracomment>usage</extracomment>
        <translation>Kilómetros u horas</translation>
    </message>
    <message>
        <source>Job number</source>
        <extracomment>job_number</extracomment>
        <translation>Número de orden de trabajo</translation>
    </message>
    <message>
        <source>Symptoms</source>
        <extracomment>symptoms</extracomment>
        <translation>Síntomas</translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>complaint.text</extracomment>
        <translation>Queja</translation>
    </message>
    <message>
        <source>Altitude</source>
        <extracomment>altitude</extracomment>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Air pressure at the shop</source>
        <extracomment>station_pressure</extracomment>
        <translation>Presión del aire en el taller</translation>
    </message>
    <message>
        <source>Air</source>
        <extracomment>air</extracomment>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Engine</source>
        <extracomment>heat</extracomment>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Coolant</source>
        <extracomment>coolant</extracomment>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Throttle</source>
        <extracomment>throttle</extracomment>
        <translation>Mariposa</translation>
    </message>
    <message>
        <source>Induction</source>
        <extracomment>induction</extracomment>
        <translation>Admisión</translation>
    </message>
    <message>
        <source>Battery</source>
        <extracomment>battery</extracomment>
        <translation>Batería</translation>
    </message>
    <message>
        <source>Cranked by</source>
        <extracomment>cranked_by</extracomment>
        <translation>Girado con</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <extracomment>cranking_speed</extracomment>
        <translation>Velocidad de arranque</translation>
    </message>
    <message>
        <source>Crank held by</source>
        <extracomment>crank_held_by</extracomment>
        <translation>Cigüeñal sujeto con</translation>
    </message>
    <message>
        <source>Prepare</source>
        <extracomment>prepare</extracomment>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>Compression gauge</source>
        <extracomment>compression_gauge</extracomment>
        <translation>Manómetro de compresión</translation>
    </message>
    <message>
        <source>Leak-down tester</source>
        <extracomment>leak_down_tester</extracomment>
        <translation>Comprobador de estanqueidad</translation>
    </message>
    <message>
        <source>Crankcase tester</source>
        <extracomment>crankcase_tester</extracomment>
        <translation>Comprobador del cárter</translation>
    </message>
    <message>
        <source>Owner&apos;s answer</source>
        <extracomment>owner_answer</extracomment>
        <translation>Respuesta del propietario</translation>
    </message>
    <message>
        <source>Owner answered</source>
        <extracomment>owner_answered_at</extracomment>
        <translation>El propietario respondió</translation>
    </message>
    <message>
        <source>Retest planned for</source>
        <extracomment>retest_planned_for</extracomment>
        <translation>Nueva prueba prevista para</translation>
    </message>
    <message>
        <source>Test</source>
        <extracomment>test</extracomment>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Check</source>
        <extracomment>check</extracomment>
        <translation>Verificación</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <extracomment>cylinder</extracomment>
        <translation>Cilindro</translation>
    </message>
    <message>
        <source>Taken</source>
        <extracomment>taken_at</extracomment>
        <translation>Tomada</translation>
    </message>
    <message>
        <source>What came just before</source>
        <extracomment>tag</extracomment>
        <translation>Lo que hubo justo antes</translation>
    </message>
    <message>
        <source>Oil on the rings</source>
        <extracomment>oiled</extracomment>
        <translation>Aceite en los segmentos</translation>
    </message>
    <message>
        <source>Where it is from</source>
        <extracomment>from</extracomment>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>Tester</source>
        <extracomment>tester</extracomment>
        <translation>Comprobador</translation>
    </message>
    <message>
        <source>Adapter</source>
        <extracomment>adapter</extracomment>
        <translation>Adaptador</translation>
    </message>
    <message>
        <source>First puff</source>
        <comment>first</comment>
        <translation>Primera embolada</translation>
    </message>
    <message>
        <source>Final reading</source>
        <extracomment>final</extracomment>
        <translation>Lectura final</translation>
    </message>
    <message>
        <source>Pulls</source>
        <extracomment>pulls</extracomment>
        <translation>Emboladas</translation>
    </message>
    <message>
        <source>Set</source>
        <extracomment>set</extracomment>
        <translation>Ajustada</translation>
    </message>
    <message>
        <source>Held</source>
        <extracomment>held</extracomment>
        <translation>Retenida</translation>
    </message>
    <message>
        <source>Leakage on the dial</source>
        <extracomment>dial_loss</extracomment>
        <translation>Fuga en la esfera</translation>
    </message>
    <message>
        <source>Hold time</source>
        <comment>hold</comment>
        <translation>Tiempo de retención</translation>
    </message>
    <message>
        <source>Oil put in</source>
        <extracomment>oil_volume</extracomment>
        <translation>Aceite echado</translation>
    </message>
    <message>
        <source>Oil</source>
        <extracomment>oil_name</extracomment>
        <translation>Aceite</translation>
    </message>
    <message>
        <source>Stands in place of</source>
        <extracomment>replaces</extracomment>
        <translation>En lugar de</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>note</extracomment>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Exit</source>
        <extracomment>exit</extracomment>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Neighbour</source>
        <extracomment>neighbour</extracomment>
        <translation>Vecino</translation>
    </message>
    <message>
        <source>How loud</source>
        <extracomment>loudness</extracomment>
        <translation>Intensidad</translation>
    </message>
    <message>
        <source>Listened by</source>
        <extracomment>by</extracomment>
        <translation>Escuchado con</translation>
    </message>
    <message>
        <source>Reading</source>
        <comment>reading</comment>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>at</extracomment>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Valve</source>
        <extracomment>side</extracomment>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>Valve number</source>
        <extracomment>valve</extracomment>
        <translation>Número de válvula</translation>
    </message>
    <message>
        <source>Found</source>
        <extracomment>found</extracomment>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Left</source>
        <extracomment>left</extracomment>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <extracomment>tie</extracomment>
        <translation>Pertenece a</translation>
    </message>
    <message>
        <source>Shows</source>
        <extracomment>photo_of</extracomment>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>File</source>
        <extracomment>sha256</extracomment>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Kind of file</source>
        <extracomment>media_type</extracomment>
        <translation>Tipo de archivo</translation>
    </message>
    <message>
        <source>Bytes</source>
        <extracomment>bytes</extracomment>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>Length</source>
        <extracomment>length</extracomment>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Caption</source>
        <extracomment>caption</extracomment>
        <translation>Pie de foto</translation>
    </message>
    <message>
        <source>Read from the photo</source>
        <extracomment>read_value</extracomment>
        <translation>Leído en la foto</translation>
    </message>
    <message>
        <source>Uncertainty of that</source>
        <extracomment>read_uncertainty</extracomment>
        <translation>Incertidumbre de ello</translation>
    </message>
    <message>
        <source>Confidence of that</source>
        <extracomment>read_confidence</extracomment>
        <translation>Confianza de ello</translation>
    </message>
    <message>
        <source>Why it was not read</source>
        <extracomment>read_refusal</extracomment>
        <translation>Por qué no se leyó</translation>
    </message>
    <message>
        <source>What holds</source>
        <extracomment>read_settled</extracomment>
        <translation>Qué vale</translation>
    </message>
    <message>
        <source>Written by</source>
        <extracomment>author</extracomment>
        <translation>Escrito por</translation>
    </message>
    <message>
        <source>Text</source>
        <extracomment>text</extracomment>
        <translation>Texto</translation>
    </message>
    <message>
        <source>Done</source>
        <extracomment>done</extracomment>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <comment>cause</comment>
        <translation>Por dónde pierde</translation>
    </message>
    <message>
        <source>Choice</source>
        <extracomment>option</extracomment>
        <translation>Elección</translation>
    </message>
    <message>
        <source>Work</source>
        <extracomment>work</extracomment>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Parts</source>
        <extracomment>parts</extracomment>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Hours</source>
        <extracomment>labour</extracomment>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Price</source>
        <extracomment>price</extracomment>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Reason</source>
        <extracomment>reason</extracomment>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>If left</source>
        <extracomment>if_left</extracomment>
        <translation>Si se deja</translation>
    </message>
    <message>
        <source>Place in the plan</source>
        <extracomment>order</extracomment>
        <translation>Lugar en el plan</translation>
    </message>
    <message>
        <source>Done on</source>
        <extracomment>done_at</extracomment>
        <translation>Hecho el</translation>
    </message>
    <message>
        <source>Reading to expect from</source>
        <extracomment>predicted_low</extracomment>
        <translation>Lectura esperada desde</translation>
    </message>
    <message>
        <source>Reading to expect to</source>
        <extracomment>predicted_high</extracomment>
        <translation>Lectura esperada hasta</translation>
    </message>
    <message>
        <source>The engine card has no factory limits.</source>
        <extracomment>limits.none</extracomment>
        <translation>La ficha del motor no tiene límites de fábrica.</translation>
    </message>
    <message>
        <source>Factory limits are scaled to the shop&apos;s air pressure, %1.</source>
        <extracomment>limits.scaled_pressure</extracomment>
        <translation>Los límites de fábrica se convierten a la presión del aire del taller, %1.</translation>
    </message>
    <message>
        <source>Factory limits are scaled to the shop&apos;s altitude, %1 (air pressure %2).</source>
        <extracomment>limits.scaled_altitude</extracomment>
        <translation>Los límites de fábrica se convierten a la altitud del taller, %1 (presión del aire %2).</translation>
    </message>
    <message>
        <source>The shop&apos;s altitude is not known: factory limits are taken as they stand, for sea level.</source>
        <extracomment>limits.altitude_unknown</extracomment>
        <translation>No se sabe la altitud del taller: los límites de fábrica se toman como están, para el nivel del mar.</translation>
    </message>
    <message>
        <source>The altitude or air pressure noted can&apos;t be right: factory limits are taken as they stand, for sea level.</source>
        <extracomment>limits.site_refused</extracomment>
        <translation>La altitud o la presión del aire anotada no puede ser: los límites de fábrica se toman como están, para el nivel del mar.</translation>
    </message>
    <message>
        <source>%1: in range, by every figure that a reading is judged by here.</source>
        <extracomment>why.all_in_range</extracomment>
        <translation>%1: en rango según todo aquello con lo que se juzga una lectura aquí.</translation>
    </message>
    <message>
        <source>%1 is within the normal range, which begins at %2.</source>
        <extracomment>why.in_range</extracomment>
        <translation>%1 está dentro del rango normal, que empieza en %2.</translation>
    </message>
    <message>
        <source>%1 is above the lowest limit of %2.</source>
        <extracomment>why.above_lowest</extracomment>
        <translation>%1 está por encima del límite inferior de %2.</translation>
    </message>
    <message>
        <source>%1 is below the normal range, which begins at %2.</source>
        <extracomment>why.below_low</extracomment>
        <translation>%1 está por debajo del rango normal, que empieza en %2.</translation>
    </message>
    <message>
        <source>%1 is below the lowest limit of %2.</source>
        <extracomment>why.below_lowest</extracomment>
        <translation>%1 está por debajo del límite inferior de %2.</translation>
    </message>
    <message>
        <source>%1 is so close to the lowest limit of %2 that gauge and repeats can&apos;t tell them apart.</source>
        <extracomment>why.close_to_lowest</extracomment>
        <translation>%1 está tan cerca del límite inferior de %2 que el manómetro y las repeticiones no los distinguen.</translation>
    </message>
    <message>
        <source>%1 may lie on either side of the lowest limit of %2: the doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>why.unsure_of_lowest</extracomment>
        <translation>%1 puede estar a un lado u otro del límite inferior de %2: la incertidumbre de ±%3 lo sobrepasa. Para reducirla: %4.</translation>
    </message>
    <message>
        <source>%1 is above the normal range, which ends at %2.</source>
        <extracomment>why.above_high</extracomment>
        <translation>%1 está por encima del rango normal, que termina en %2.</translation>
    </message>
    <message>
        <source>No factory range on the card. Makers ask for about %2 to %3 of such an engine; this is %1.</source>
        <extracomment>why.below_typical</extracomment>
        <translation>Sin rango de fábrica en la ficha. Los fabricantes piden de unos %2 a %3 a un motor así; este da %1.</translation>
    </message>
    <message>
        <source>No factory range on the card. Makers ask for about %2 to %3 of such an engine; this is %1, far below that.</source>
        <extracomment>why.far_below_typical</extracomment>
        <translation>Sin rango de fábrica en la ficha. Los fabricantes piden de unos %2 a %3 a un motor así; este da %1, muy por debajo.</translation>
    </message>
    <message>
        <source>No factory range on the card. Makers ask for about %2 to %3 of such an engine; %1 reaches that.</source>
        <extracomment>why.within_typical</extracomment>
        <translation>Sin rango de fábrica en la ficha. Los fabricantes piden de unos %2 a %3 a un motor así; %1 lo alcanza.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %2 to %3, and %1 is within that.</source>
        <extracomment>why.within_expected</extracomment>
        <translation>Sin cifra de fábrica; el modelo espera de %2 a %3, y %1 está dentro.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %2 to %3, and %1 is below that. With the model&apos;s doubt that is no proof of a fault.</source>
        <extracomment>why.below_expected</extracomment>
        <translation>Sin cifra de fábrica; el modelo espera de %2 a %3, y %1 está por debajo. Con la incertidumbre del modelo eso no es prueba de un fallo.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %2 to %3, and %1 is above that: oil or carbon in the chamber, or a figure on the card that is not right?</source>
        <extracomment>why.above_expected</extracomment>
        <translation>Sin cifra de fábrica; el modelo espera de %2 a %3, y %1 está por encima: ¿aceite o carbonilla en la cámara, o una cifra de la ficha que no es correcta?</translation>
    </message>
    <message>
        <source>%1 as read. At full throttle, warm and well cranked, with no hose before the check valve, it would be about %2: this is held against the limit.</source>
        <extracomment>why.put_right</extracomment>
        <translation>%1 según se leyó. Con la mariposa abierta, caliente, bien girado y sin manguera antes de la válvula antirretorno serían unos %2: esto es lo que se compara con el límite.</translation>
    </message>
    <message>
        <source>%1 as read, about %2 without what the hose takes off: this is held against the limit.</source>
        <extracomment>why.put_right_hose</extracomment>
        <translation>%1 según se leyó, unos %2 sin lo que quita la manguera: esto es lo que se compara con el límite.</translation>
    </message>
    <message>
        <source>%1 is so close to the lowest limit of %2 that it can&apos;t be told apart: put right what stood in the way, then test again.</source>
        <extracomment>why.put_right_close</extracomment>
        <translation>%1 está tan cerca del límite inferior de %2 que no se puede distinguir: corregir lo que estorbaba y volver a probar.</translation>
    </message>
    <message>
        <source>The throttle was closed, and how much that took off can&apos;t be worked out: hold it open, then test again.</source>
        <extracomment>why.lowered_throttle</extracomment>
        <translation>La mariposa estaba cerrada, y no se puede calcular cuánto quitó eso: mantenerla abierta y probar de nuevo.</translation>
    </message>
    <message>
        <source>The gauge&apos;s check valve sits behind the hose, and how much that took off can&apos;t be worked out: use a gauge whose check valve sits at the plug hole.</source>
        <extracomment>why.lowered_hose</extracomment>
        <translation>La válvula antirretorno del manómetro está detrás de la manguera, y no se puede calcular cuánto quitó eso: usar un manómetro cuya válvula antirretorno esté en el agujero de bujía.</translation>
    </message>
    <message>
        <source>The throttle was closed: the reading is not held against what is expected of an open one.</source>
        <extracomment>why.throttle_closed</extracomment>
        <translation>La mariposa estaba cerrada: la lectura no se compara con lo que se espera de una abierta.</translation>
    </message>
    <message>
        <source>The decompressor was at work: the reading is not held against any limit.</source>
        <extracomment>why.decompressor</extracomment>
        <translation>El descompresor actuaba: la lectura no se compara con ningún límite.</translation>
    </message>
    <message>
        <source>On a tester set to %4 it would show %1. Up to %2 seals well, up to %3 is wear, more is work.</source>
        <extracomment>why.leak_band</extracomment>
        <translation>En un comprobador ajustado a %4 marcaría %1. Hasta %2 sella bien, hasta %3 es desgaste, por encima hay trabajo.</translation>
    </message>
    <message>
        <source>Set to %1 it held %2: leakage %3. Another set pressure is no repeat and is not counted into the figure above.</source>
        <extracomment>why.leak_other_set</extracomment>
        <translation>Ajustado a %1 mantuvo %2: pérdida %3. Otra presión de ajuste no es una repetición y no cuenta en la cifra de arriba.</translation>
    </message>
    <message>
        <source>Leakage %1 on the maker&apos;s tester; the maker allows %2.</source>
        <extracomment>why.leak_maker</extracomment>
        <translation>Pérdida %1 en el comprobador del fabricante; el fabricante admite %2.</translation>
    </message>
    <message>
        <source>Published bands, each on its own tester: %1. In range by %2, borderline by %3, fault by %4.</source>
        <extracomment>leak.bands</extracomment>
        <translation>Bandas publicadas, cada una con su propio comprobador: %1. En rango según %2, en el límite según %3, fallo según %4.</translation>
    </message>
    <message>
        <source>On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart; %7 is allowed (%8).</source>
        <extracomment>leak.spread_holds</extracomment>
        <translation>En un comprobador de %5 el cilindro %1 mostraría %2, el que más, y el cilindro %3 %4, el que menos: %6 de diferencia; se admite %7 (%8).</translation>
    </message>
    <message>
        <source>On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart; above %7 look again, above %8 it is a fault (%9).</source>
        <extracomment>leak.spread_borderline</extracomment>
        <translation>En un comprobador de %5 el cilindro %1 mostraría %2, el que más, y el cilindro %3 %4, el que menos: %6 de diferencia; por encima de %7 mirar otra vez, por encima de %8 es un fallo (%9).</translation>
    </message>
    <message>
        <source>On a tester of %5 cylinder %1 would show %2, the most, and cylinder %3 %4, the least: %6 apart, more than the %7 allowed (%8).</source>
        <extracomment>leak.spread_fails</extracomment>
        <translation>En un comprobador de %5 el cilindro %1 mostraría %2, el que más, y el cilindro %3 %4, el que menos: %6 de diferencia, más del %7 admitido (%8).</translation>
    </message>
    <message>
        <source>%1 is so close to the maker&apos;s %2 that the gauges can&apos;t tell them apart.</source>
        <extracomment>why.leak_close</extracomment>
        <translation>%1 está tan cerca del %2 del fabricante que los manómetros no pueden distinguirlos.</translation>
    </message>
    <message>
        <source>%1 is so close to the band&apos;s edge of %2 that the gauges can&apos;t tell them apart.</source>
        <extracomment>why.leak_close_to_band</extracomment>
        <translation>%1 está tan cerca del borde de la banda, %2, que los manómetros no pueden distinguirlos.</translation>
    </message>
    <message>
        <source>%1 may lie on either side of the maker&apos;s %2: the gauges&apos; doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>why.leak_unsure</extracomment>
        <translation>%1 puede estar a un lado u otro del %2 del fabricante: la incertidumbre de los manómetros, ±%3, lo sobrepasa. Para reducirla: %4.</translation>
    </message>
    <message>
        <source>%1 may lie on either side of the band&apos;s edge of %2: the gauges&apos; doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>why.leak_unsure_of_band</extracomment>
        <translation>%1 puede estar a un lado u otro del borde de la banda, %2: la incertidumbre de los manómetros, ±%3, lo sobrepasa. Para reducirla: %4.</translation>
    </message>
    <message>
        <source>With the tester&apos;s restrictor unknown it may as well be under %1: no fault before the tester is known.</source>
        <extracomment>why.leak_tester_unknown</extracomment>
        <translation>Con el restrictor del comprobador desconocido puede estar igualmente por debajo de %1: ningún fallo antes de conocer el comprobador.</translation>
    </message>
    <message>
        <source>The lowest cylinder has %1 of the highest; at least %2 is asked (%3).</source>
        <extracomment>spread.ratio_holds</extracomment>
        <translation>El cilindro más bajo tiene %1 del más alto; se pide al menos %2 (%3).</translation>
    </message>
    <message>
        <source>Too far below the highest: %1. The lowest has %2; at least %3 is asked (%4).</source>
        <extracomment>spread.ratio_fails</extracomment>
        <translation>Demasiado por debajo del más alto: %1. El más bajo tiene %2; se pide al menos %3 (%4).</translation>
    </message>
    <message>
        <source>Look again at %1: the lowest has %2 of the highest. A stricter rule asks for at least %3; by itself it calls for another look, never a fault (%4).</source>
        <extracomment>spread.ratio_look_again</extracomment>
        <translation>Mirar otra vez %1: el más bajo tiene %2 del más alto. Una regla más estricta pide al menos %3; por sí sola solo pide mirar otra vez, nunca da un fallo (%4).</translation>
    </message>
    <message>
        <source>Below %2: %1 (%3).</source>
        <extracomment>spread.ratio_under</extracomment>
        <translation>Por debajo de %2: %1 (%3).</translation>
    </message>
    <message>
        <source>No cylinder lies %1 below the average of %2 (%3).</source>
        <extracomment>spread.average_holds</extracomment>
        <translation>Ningún cilindro está %1 por debajo de la media de %2 (%3).</translation>
    </message>
    <message>
        <source>%2 or more below the average of %3: %1 (%4).</source>
        <extracomment>spread.average_fails</extracomment>
        <translation>%2 o más por debajo de la media de %3: %1 (%4).</translation>
    </message>
    <message>
        <source>The cylinders differ by %1; the engine&apos;s own limit is %2.</source>
        <extracomment>spread.difference_holds</extracomment>
        <translation>Los cilindros difieren en %1; el límite propio del motor es %2.</translation>
    </message>
    <message>
        <source>The cylinders read the same; the engine&apos;s own limit for the difference is %2.</source>
        <extracomment>spread.difference_holds/alike</extracomment>
        <translation>Los cilindros dan lo mismo; el límite propio del motor para la diferencia es %2.</translation>
    </message>
    <message>
        <source>Too far below the highest: %1. The difference is %2; the engine&apos;s own limit is %3.</source>
        <extracomment>spread.difference_fails</extracomment>
        <translation>Demasiado por debajo del más alto: %1. La diferencia es %2; el límite propio del motor es %3.</translation>
    </message>
    <message>
        <source>Too far below the highest as read: %1. The difference is %2, so close to the limit of %3 that gauge and repeats can&apos;t tell them apart.</source>
        <extracomment>spread.difference_close</extracomment>
        <translation>Según lo leído, demasiado por debajo del más alto: %1. La diferencia es de %2, tan cerca del límite de %3 que el manómetro y las repeticiones no los distinguen.</translation>
    </message>
    <message>
        <source>Too far below the highest as read: %1. The difference is %2, but it may lie on either side of the limit of %3: the doubt of ±%4 reaches across it. To make it smaller: %5.</source>
        <extracomment>spread.difference_unsure</extracomment>
        <translation>Demasiado por debajo del más alto, según lo leído: %1. La diferencia es %2, pero puede estar a un lado u otro del límite de %3: la incertidumbre de ±%4 lo sobrepasa. Para reducirla: %5.</translation>
    </message>
    <message>
        <source>The cylinders differ by %1 as read; the engine&apos;s own limit is %2. What stood in the way of the readings made the difference smaller too: put it right, then test again.</source>
        <extracomment>spread.difference_lowered</extracomment>
        <translation>Según lo leído, los cilindros se diferencian en %1; el límite propio del motor es %2. Lo que estorbó a las lecturas también redujo la diferencia: corregirlo y volver a medir.</translation>
    </message>
    <message>
        <source>The lowest cylinder has %1 of the highest; the maker asks at least %2.</source>
        <extracomment>spread.own_ratio_holds</extracomment>
        <translation>El cilindro más bajo tiene %1 del más alto; el fabricante pide al menos %2.</translation>
    </message>
    <message>
        <source>Too far below the highest: %1. The lowest has %2; the maker asks at least %3.</source>
        <extracomment>spread.own_ratio_fails</extracomment>
        <translation>Demasiado por debajo del más alto: %1. El más bajo tiene %2; el fabricante pide al menos %3.</translation>
    </message>
    <message>
        <source>The cylinders differ by %1: less than the uncertainty of %2 that gauge and repeats bring. As far as these readings can tell they are alike.</source>
        <extracomment>spread.within_gauge</extracomment>
        <translation>Los cilindros se diferencian en %1: menos que la incertidumbre de %2 que aportan el manómetro y las repeticiones. Hasta donde estas lecturas pueden decirlo, son iguales.</translation>
    </message>
    <message>
        <source>The cylinders read the same.</source>
        <extracomment>spread.within_gauge/alike</extracomment>
        <translation>Los cilindros dan lo mismo.</translation>
    </message>
    <message>
        <source>Start with the dry test: it is quick and shows where to look further.</source>
        <extracomment>next.dry_all</extracomment>
        <translation>Empezar con la prueba en seco: es rápida y muestra dónde seguir mirando.</translation>
    </message>
    <message>
        <source>Start with the dry test: it is quick and shows whether to look further.</source>
        <extracomment>next.dry_one</extracomment>
        <translation>Empezar por la prueba en seco: es rápida y muestra si hay que seguir buscando.</translation>
    </message>
    <message>
        <source>Cylinder %1 has no dry reading yet: the others can&apos;t be compared with it.</source>
        <extracomment>next.dry</extracomment>
        <translation>El cilindro %1 aún no tiene lectura en seco: los demás no se pueden comparar con él.</translation>
    </message>
    <message>
        <source>Cylinder %1 is not in range: a leak-down test shows how much it leaks and where.</source>
        <extracomment>next.leak_down_low</extracomment>
        <translation>El cilindro %1 no está en rango: una prueba de estanqueidad muestra cuánto pierde y por dónde.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1: it does not mind the decompressor.</source>
        <extracomment>next.leak_down_decompressor</extracomment>
        <translation>Prueba de estanqueidad del cilindro %1: a ella no le afecta el descompresor.</translation>
    </message>
    <message>
        <source>Leak-down test of every cylinder: if they seal well, the cause lies elsewhere.</source>
        <extracomment>next.leak_down_all</extracomment>
        <translation>Prueba de estanqueidad de todos los cilindros: si sellan bien, la causa está en otro sitio.</translation>
    </message>
    <message>
        <source>Nothing on the engine card judges the dry readings: a leak-down test tells how well each cylinder seals, or put the factory limits on the card.</source>
        <extracomment>next.leak_down_unjudged</extracomment>
        <translation>Nada en la ficha del motor juzga las lecturas en seco: una prueba de estanqueidad dice lo bien que sella cada cilindro, o poner los límites de fábrica en la ficha.</translation>
    </message>
    <message>
        <source>Listen at cylinder %1&apos;s exits with the air on: where it comes out names the leak.</source>
        <extracomment>next.listen</extracomment>
        <translation>Escuchar en las salidas del cilindro %1 con el aire puesto: el lugar por donde sale indica la fuga.</translation>
    </message>
    <message>
        <source>Listen at cylinder %1&apos;s exits again: what was heard in the state &quot;%2&quot; does not count for a part that was touched since.</source>
        <extracomment>next.listen_again</extracomment>
        <translation>Escuchar de nuevo en las salidas del cilindro %1: lo oído en el estado «%2» no cuenta para una pieza que se tocó después.</translation>
    </message>
    <message>
        <source>Listen at intake and exhaust of cylinder %1: the air in the plug hole of %2 may have leaked past a valve.</source>
        <extracomment>next.listen_valves</extracomment>
        <translation>Escuchar en admisión y escape del cilindro %1: el aire en el agujero de bujía de %2 puede haber pasado por una válvula.</translation>
    </message>
    <message>
        <source>Wet test of cylinder %1, last of all: it tells rings from the rest.</source>
        <extracomment>next.wet</extracomment>
        <translation>Prueba húmeda del cilindro %1, la última de todas: distingue los segmentos de lo demás.</translation>
    </message>
    <message>
        <source>Check the valve clearances of cylinder %1, first of %2: a valve without clearance looks burnt.</source>
        <extracomment>next.clearances</extracomment>
        <translation>Comprobar el juego de válvulas del cilindro %1, primero este: %2. Una válvula sin juego parece quemada.</translation>
    </message>
    <message>
        <source>Look up in the engine&apos;s manual the clearance wanted for %2, and put it on the engine card: what was found at cylinder %1 can&apos;t be judged without it.</source>
        <extracomment>next.clearance_wanted</extracomment>
        <translation>Buscar en el manual del motor el juego pedido (%2) y ponerlo en la ficha del motor: sin él no se puede juzgar lo encontrado en el cilindro %1.</translation>
    </message>
    <message>
        <source>Check the valve clearance of cylinder %1, far less than at the others, adjust it by the engine&apos;s manual and test again.</source>
        <extracomment>next.clearance_siblings</extracomment>
        <translation>Revisar el juego de válvulas del cilindro %1, mucho menor que en los demás, ajustarlo según el manual del motor y probar de nuevo.</translation>
    </message>
    <message>
        <source>Adjust the valve clearance of cylinder %1, then test it again.</source>
        <extracomment>next.adjust</extracomment>
        <translation>Ajustar el juego de válvulas del cilindro %1 y probarlo de nuevo.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1 again: a hydraulic lifter that is pumped up or stuck holds its valve open. Take the air off, let it bleed down for some minutes, turn the engine twice by hand, then test again before the head comes off.</source>
        <extracomment>next.lifter</extracomment>
        <translation>Repetir la prueba de estanqueidad del cilindro %1: un taqué hidráulico bombeado en exceso o agarrotado mantiene abierta su válvula. Quitar el aire, dejar que el taqué se descargue unos minutos, girar el motor dos vueltas a mano y medir otra vez antes de quitar la culata.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1 again after the engine has run: oil on its rings lifted this one.</source>
        <extracomment>next.after_oil</extracomment>
        <translation>Repetir la prueba de estanqueidad del cilindro %1 después de que el motor haya funcionado: el aceite en sus segmentos la mejoró.</translation>
    </message>
    <message>
        <source>The clearance of cylinder %1 was changed: test it again.</source>
        <extracomment>next.retest_adjusted</extracomment>
        <translation>El juego del cilindro %1 se cambió: probarlo de nuevo.</translation>
    </message>
    <message>
        <source>Dry test of cylinder %1 again: its reading is from the state &quot;%2&quot;, and something was done since.</source>
        <extracomment>next.dry_before</extracomment>
        <translation>Otra prueba en seco del cilindro %1: su lectura es del estado «%2», y desde entonces se le hizo algo.</translation>
    </message>
    <message>
        <source>Leak-down test of cylinder %1 again: its reading is from the state &quot;%2&quot;, and something was done since.</source>
        <extracomment>next.leak_down_before</extracomment>
        <translation>Otra prueba de estanqueidad del cilindro %1: su lectura es del estado «%2», y desde entonces se le hizo algo.</translation>
    </message>
    <message>
        <source>Turn the crank one full turn and test cylinder %1 again: it may stand at the wrong TDC.</source>
        <extracomment>next.turn_once</extracomment>
        <translation>Dar una vuelta completa al cigüeñal y probar de nuevo el cilindro %1: puede estar en el PMS equivocado.</translation>
    </message>
    <message>
        <source>Do the %2 of cylinder %1 again: its readings don&apos;t fit together.</source>
        <extracomment>next.again</extracomment>
        <translation>Repetir: %2 del cilindro %1. Sus lecturas no encajan.</translation>
    </message>
    <message>
        <source>Crankcase hold test: seals, base gasket and reed show in no other test.</source>
        <extracomment>next.crankcase</extracomment>
        <translation>Prueba del cárter: los retenes, la junta de base y las láminas no se ven en ninguna otra prueba.</translation>
    </message>
    <message>
        <source>Crankcase hold test of cylinder %1: its chamber is held by itself.</source>
        <extracomment>next.crankcase_of</extracomment>
        <translation>Prueba del cárter del cilindro %1: su cámara se prueba por separado.</translation>
    </message>
    <message>
        <source>Repeat the dry test with the throttle held wide open, as a session of its own: it was shut, which lowers every reading.</source>
        <extracomment>next.repeat_open</extracomment>
        <translation>Repetir la prueba en seco con la mariposa abierta del todo, como sesión aparte: estaba cerrada, y eso baja todas las lecturas.</translation>
    </message>
    <message>
        <source>The throttle was shut here. The dry test was done again with the throttle held open, in a later session: hold the two side by side.</source>
        <extracomment>next.repeated_open</extracomment>
        <translation>La mariposa estaba cerrada aquí. La prueba en seco se repitió con la mariposa abierta en una sesión posterior: comparar las dos.</translation>
    </message>
    <message>
        <source>Repeat the dry test warm and with the throttle held wide open, as a session of its own: cold and shut lower every reading.</source>
        <extracomment>next.repeat_open_warm</extracomment>
        <translation>Repetir la prueba en seco en caliente y con la mariposa abierta del todo, como sesión aparte: frío y cerrada bajan todas las lecturas.</translation>
    </message>
    <message>
        <source>If the engine runs, repeat the dry test warm, as a session of its own: cold lowers every reading.</source>
        <extracomment>next.repeat_warm</extracomment>
        <translation>Si el motor arranca, repetir la prueba en seco en caliente, como sesión aparte: el frío baja todas las lecturas.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaked %2 at an earlier visit, and no air was put on it since: do its leak-down test.</source>
        <extracomment>next.earlier_leak</extracomment>
        <translation>El cilindro %1 perdió %2 en una visita anterior y desde entonces no se le puso aire: hacer su prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>An earlier visit asked for a leak-down test of cylinder %1; it was not done since.</source>
        <extracomment>next.earlier_leak_down</extracomment>
        <translation>Una visita anterior pidió una prueba de estanqueidad del cilindro %1; no se ha hecho desde entonces.</translation>
    </message>
    <message>
        <source>An earlier visit found cylinder %1 leaking and nobody listened where: do it with the air on.</source>
        <extracomment>next.earlier_listen</extracomment>
        <translation>En una visita anterior el cilindro %1 perdía y nadie escuchó por dónde: hacerlo con el aire puesto.</translation>
    </message>
    <message>
        <source>An earlier visit left open whether cylinder %1 stood at the right TDC: test it again.</source>
        <extracomment>next.earlier_turn_once</extracomment>
        <translation>Una visita anterior dejó abierto si el cilindro %1 estaba en el PMS correcto: probarlo de nuevo.</translation>
    </message>
    <message>
        <source>An earlier visit asked for the valve clearances of cylinder %1; they are not recorded since.</source>
        <extracomment>next.earlier_clearances</extracomment>
        <translation>Una visita anterior pidió el juego de válvulas del cilindro %1; no está registrado desde entonces.</translation>
    </message>
    <message>
        <source>An earlier visit found too little valve clearance at cylinder %1; nothing is recorded since.</source>
        <extracomment>next.earlier_adjust</extracomment>
        <translation>Una visita anterior encontró demasiado poco juego de válvulas en el cilindro %1; desde entonces no hay nada registrado.</translation>
    </message>
    <message>
        <source>Somebody asked for this, and it is still to do: %1.</source>
        <extracomment>next.request</extracomment>
        <translation>Alguien pidió esto y todavía está por hacer: %1.</translation>
    </message>
    <message>
        <source>Somebody asked for this at cylinder %1, and it is still to do: %2.</source>
        <extracomment>next.request_of</extracomment>
        <translation>Alguien pidió esto en el cilindro %1 y todavía está por hacer: %2.</translation>
    </message>
    <message>
        <source>Somebody asked for this at an earlier visit, and it is still to do: %1.</source>
        <extracomment>next.earlier_request</extracomment>
        <translation>Alguien pidió esto en una visita anterior y sigue pendiente: %1.</translation>
    </message>
    <message>
        <source>Somebody asked for this at cylinder %1 at an earlier visit, and it is still to do: %2.</source>
        <extracomment>next.earlier_request_of</extracomment>
        <translation>Alguien pidió esto en el cilindro %1 en una visita anterior y sigue pendiente: %2.</translation>
    </message>
    <message>
        <source>Name the leak-down tester and its restrictor: without them nobody can tell a fault from a cylinder that seals well.</source>
        <extracomment>next.name_tester</extracomment>
        <translation>Indicar el comprobador de estanqueidad y su restrictor: sin ellos nadie puede distinguir un fallo de un cilindro que sella bien.</translation>
    </message>
    <message>
        <source>Look up in the engine&apos;s manual what the crankcase must hold and for how long, and put it on the engine card.</source>
        <extracomment>next.crankcase_limit</extracomment>
        <translation>Buscar en el manual del motor qué presión debe aguantar el cárter y cuánto tiempo, y ponerlo en la ficha del motor.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; first: %2.</source>
        <extracomment>next.tester_check</extracomment>
        <translation>Revisar primero «%1»: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; failed its check (%2): put it right or take another one, then read again what was read on it.</source>
        <extracomment>next.tester_failed</extracomment>
        <translation>«%1» no pasó su verificación (%2): arreglarlo o usar otro, y volver a leer lo que se leyó con él.</translation>
    </message>
    <message>
        <source>No test is outstanding: read the findings and decide.</source>
        <extracomment>next.plan</extracomment>
        <translation>No queda ninguna prueba pendiente: leer el diagnóstico y decidir.</translation>
    </message>
    <message>
        <source>No test is outstanding. What to do about it stands in the plan.</source>
        <extracomment>next.planned</extracomment>
        <translation>No queda ninguna prueba pendiente. Lo que se hará está en el plan.</translation>
    </message>
    <message>
        <source>No test is outstanding and nothing is a fault yet. Measure again later: what counts is whether it grows.</source>
        <extracomment>next.watch</extracomment>
        <translation>No queda ninguna prueba pendiente y aún nada es un fallo. Medir de nuevo más tarde: lo que cuenta es si crece.</translation>
    </message>
    <message>
        <source>Nothing outstanding.</source>
        <extracomment>next.nothing</extracomment>
        <translation>Nada pendiente.</translation>
    </message>
    <message>
        <source>Not done: %1. %2</source>
        <extracomment>weak.step</extracomment>
        <translation>No hecho: %1. %2</translation>
    </message>
    <message>
        <source>Steps of Prepare that readings hang on and that were not marked either way: %1.</source>
        <extracomment>weak.steps_open</extracomment>
        <translation>Pasos de Preparar de los que dependen las lecturas y que no se marcaron ni de un modo ni de otro: %1.</translation>
    </message>
    <message>
        <source>The throttle was closed: every cylinder reads low.</source>
        <extracomment>weak.throttle_closed</extracomment>
        <translation>La mariposa estaba cerrada: todos los cilindros dan poco.</translation>
    </message>
    <message>
        <source>The throttle was closed: every cylinder reads low, by %1 to %2 as the model has it.</source>
        <extracomment>weak.throttle_closed_by</extracomment>
        <translation>La mariposa estaba cerrada: todos los cilindros dan poco, de %1 a %2 menos según el modelo.</translation>
    </message>
    <message>
        <source>The battery showed %1: a slow starter makes every cylinder read low, by about %2 as the model has it.</source>
        <extracomment>weak.battery_by</extracomment>
        <translation>La batería marcaba %1: un arranque lento hace que todos los cilindros den poco, alrededor de %2 menos según el modelo.</translation>
    </message>
    <message>
        <source>The engine was cold: it reads about %1 lower than warm, as the model has it.</source>
        <extracomment>weak.cold_by</extracomment>
        <translation>El motor estaba frío: da alrededor de %1 menos que caliente, según el modelo.</translation>
    </message>
    <message>
        <source>The volume before the check valve takes about %1 off every reading. It is put back before a factory limit judges them; its doubt stays.</source>
        <extracomment>weak.hose</extracomment>
        <translation>El volumen delante de la válvula antirretorno quita cerca de %1 a cada lectura. Se vuelve a sumar antes de que un límite de fábrica las juzgue; su incertidumbre queda.</translation>
    </message>
    <message>
        <source>A tyre-valve core opens late and takes about %1 off every reading, as the model has it.</source>
        <extracomment>weak.tyre_core</extracomment>
        <translation>Un núcleo de válvula de neumático abre tarde y quita alrededor de %1 a cada lectura, según el modelo.</translation>
    </message>
    <message>
        <source>The battery showed %1: a slow starter makes every cylinder read low.</source>
        <extracomment>weak.battery</extracomment>
        <translation>La batería marcaba %1: un arranque lento hace que todos los cilindros den poco.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 lower when it was measured again at the end: the battery may have been tiring, and cylinders measured late may read too low.</source>
        <extracomment>weak.drift_lower</extracomment>
        <translation>El cilindro %1 dio %2 menos cuando se midió de nuevo al final: puede que la batería se estuviera agotando, y los cilindros medidos tarde pueden dar demasiado poco.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 higher when it was measured again at the end: the engine may have warmed up, and cylinders measured late may read too high.</source>
        <extracomment>weak.drift_higher</extracomment>
        <translation>El cilindro %1 dio %2 más cuando se midió de nuevo al final: puede que el motor se hubiera calentado, y los cilindros medidos tarde pueden dar demasiado.</translation>
    </message>
    <message>
        <source>Cold or warm is not noted: a cold engine reads about 10 % lower.</source>
        <extracomment>weak.heat_unknown</extracomment>
        <translation>No está anotado si estaba frío o caliente: un motor frío da alrededor de un 10 % menos.</translation>
    </message>
    <message>
        <source>Which gauge was used for the %1 is not noted: its uncertainty is assumed.</source>
        <extracomment>weak.tester_unknown</extracomment>
        <translation>No está anotado qué manómetro se usó (%1): su incertidumbre se supone.</translation>
    </message>
    <message>
        <source>%1: the self-check &quot;%2&quot; was never done.</source>
        <extracomment>weak.self_check_missing</extracomment>
        <translation>%1: la verificación «%2» nunca se hizo.</translation>
    </message>
    <message>
        <source>%1: the self-check &quot;%2&quot; failed. Put the tester right before blaming the engine.</source>
        <extracomment>weak.self_check_failed</extracomment>
        <translation>%1: la verificación «%2» no pasa. Arreglar el comprobador antes de culpar al motor.</translation>
    </message>
    <message>
        <source>The cylinders were read on different gauges: what lies between them may be the gauges&apos; own errors. Read all of them on one.</source>
        <extracomment>weak.gauges_differ</extracomment>
        <translation>Los cilindros se leyeron con manómetros distintos: lo que hay entre ellos puede venir de los propios manómetros. Leerlos todos con uno.</translation>
    </message>
    <message>
        <source>%1: the gauge&apos;s class is not known; %2 of its full scale is assumed.</source>
        <extracomment>weak.class_unknown</extracomment>
        <translation>%1: no se sabe la clase del manómetro; se supone %2 de su fondo de escala.</translation>
    </message>
    <message>
        <source>%1 has one gauge: the regulator may sag under flow without being seen.</source>
        <extracomment>weak.one_gauge</extracomment>
        <translation>%1 tiene un solo manómetro: el regulador puede ceder con el caudal sin que se vea.</translation>
    </message>
    <message>
        <source>%1: the restrictor is not known; %2 is assumed.</source>
        <extracomment>weak.restrictor_unknown</extracomment>
        <translation>%1: no se sabe el restrictor; se supone %2.</translation>
    </message>
    <message>
        <source>Cylinder %1 was read after %2 pulls, when a gauge like this shows about %3 of what it comes to.</source>
        <extracomment>weak.still_rising</extracomment>
        <translation>El cilindro %1 se leyó tras %2 emboladas, cuando un manómetro así muestra cerca del %3 de lo que llega a marcar.</translation>
    </message>
    <message>
        <source>Cylinder %1 was read after %2 pulls; makers read after %3 or more.</source>
        <extracomment>weak.few_pulls</extracomment>
        <translation>El cilindro %1 se leyó tras %2 emboladas; los fabricantes leen tras %3 o más.</translation>
    </message>
    <message>
        <source>At two set pressures it leaks like a hole (exponent %1).</source>
        <extracomment>law.hole</extracomment>
        <translation>Con dos presiones ajustadas pierde como un agujero (exponente %1).</translation>
    </message>
    <message>
        <source>At two set pressures it leaks like a narrow gap (exponent %1).</source>
        <extracomment>law.gap</extracomment>
        <translation>Con dos presiones ajustadas pierde como una rendija estrecha (exponente %1).</translation>
    </message>
    <message>
        <source>The higher set pressure seats the leak: its area gets smaller (exponent %1).</source>
        <extracomment>law.seats</extracomment>
        <translation>La presión ajustada mayor asienta la fuga: su área se hace menor (exponente %1).</translation>
    </message>
    <message>
        <source>The higher set pressure opens the leak further: its area grows (exponent %1).</source>
        <extracomment>law.opens</extracomment>
        <translation>La presión ajustada mayor abre más la fuga: su área crece (exponente %1).</translation>
    </message>
    <message>
        <source>At two set pressures it leaks neither like a hole nor like a narrow gap (exponent %1).</source>
        <extracomment>law.between</extracomment>
        <translation>Con dos presiones ajustadas no pierde ni como un agujero ni como una rendija estrecha (exponente %1).</translation>
    </message>
    <message>
        <source>Two set pressures, but the gauges can&apos;t tell a hole from a narrow gap (exponent %1).</source>
        <extracomment>law.undecided</extracomment>
        <translation>Dos presiones ajustadas, pero los manómetros no distinguen un agujero de una rendija estrecha (exponente %1).</translation>
    </message>
    <message>
        <source>Below zero? Look at the needle at rest.</source>
        <extracomment>pad.negative</extracomment>
        <translation>¿Por debajo de cero? Mirar la aguja en reposo.</translation>
    </message>
    <message>
        <source>Nothing at all? Is the gauge screwed in and its check valve fitted, and was the engine cranked?</source>
        <extracomment>pad.zero</extracomment>
        <translation>¿Nada en absoluto? ¿Está enroscado el manómetro, montada su válvula antirretorno y se hizo girar el motor?</translation>
    </message>
    <message>
        <source>Wet %1, but dry %2: oil can&apos;t lower a reading. Test again, or look for a slip of the finger.</source>
        <extracomment>pad.wet_below_dry</extracomment>
        <translation>Con aceite %1, pero en seco %2: el aceite no puede bajar una lectura. Probar de nuevo, o buscar un error al teclear.</translation>
    </message>
    <message>
        <source>%1 is over the gauge&apos;s scale of %2. Is the decimal point right?</source>
        <extracomment>pad.over_scale</extracomment>
        <translation>%1 pasa de la escala del manómetro, %2. ¿Está bien la coma decimal?</translation>
    </message>
    <message>
        <source>Held %1 is over the set %2. Were the two swapped?</source>
        <extracomment>pad.held_over_set</extracomment>
        <translation>La presión retenida (%1) pasa de la ajustada (%2). ¿Se intercambiaron las dos?</translation>
    </message>
    <message>
        <source>Type the set pressure too: leakage needs both.</source>
        <extracomment>pad.no_set</extracomment>
        <translation>Escribir también la presión ajustada: la pérdida necesita las dos.</translation>
    </message>
    <message>
        <source>Set %1; this tester is usually set to %2. Is that meant?</source>
        <extracomment>pad.set_differs</extracomment>
        <translation>Ajustada %1; este comprobador suele ajustarse a %2. ¿Es a propósito?</translation>
    </message>
    <message>
        <source>First puff %1 is over the final reading %2. Were the two swapped?</source>
        <extracomment>pad.first_over_final</extracomment>
        <translation>La primera embolada %1 pasa de la lectura final %2. ¿Se intercambiaron las dos?</translation>
    </message>
    <message>
        <source>%1 is far above what to expect here (about %2). Is the decimal point right?</source>
        <extracomment>pad.slip_high</extracomment>
        <translation>%1 está muy por encima de lo que se espera aquí (alrededor de %2). ¿Está bien la coma decimal?</translation>
    </message>
    <message>
        <source>%1 is far below what to expect here (about %2). Is the decimal point right?</source>
        <extracomment>pad.slip_low</extracomment>
        <translation>%1 está muy por debajo de lo que se espera aquí (alrededor de %2). ¿Está bien la coma decimal?</translation>
    </message>
    <message>
        <source>Very little held. Is it the right TDC? If air comes at intake and exhaust, turn the crank one full turn.</source>
        <extracomment>pad.very_low_held</extracomment>
        <translation>Muy poca presión retenida. ¿Es el PMS correcto? Si sale aire por admisión y escape, dar una vuelta completa al cigüeñal.</translation>
    </message>
    <message>
        <source>A fall of %1 is within the gauge&apos;s own error.</source>
        <extracomment>pad.within_gauge</extracomment>
        <translation>Una caída de %1 está dentro del error propio del manómetro.</translation>
    </message>
    <message>
        <source>The needle stands at zero.</source>
        <extracomment>check.zero</extracomment>
        <translation>La aguja está en cero.</translation>
    </message>
    <message>
        <source>The needle stands %1 off zero. Kept with this check, it counts in the doubt of every reading.</source>
        <extracomment>check.zero_off</extracomment>
        <translation>La aguja está a %1 del cero. Guardado con esta verificación, cuenta en la incertidumbre de cada lectura.</translation>
    </message>
    <message>
        <source>%1 apart; this gauge&apos;s class allows %2.</source>
        <extracomment>check.reference_within</extracomment>
        <translation>Difieren en %1; la clase de este manómetro admite %2.</translation>
    </message>
    <message>
        <source>%1 apart, more than the %2 that this gauge&apos;s class allows: trust its readings less, or replace it.</source>
        <extracomment>check.reference_off</extracomment>
        <translation>Difieren en %1, más de los %2 que admite la clase de este manómetro: fiarse menos de sus lecturas, o cambiarlo.</translation>
    </message>
    <message>
        <source>It holds: %1 lost.</source>
        <extracomment>check.outlet_holds</extracomment>
        <translation>Aguanta: se pierde %1.</translation>
    </message>
    <message>
        <source>%1 lost with the outlet closed: the tester itself would show %2 leakage on a cylinder that seals well.</source>
        <extracomment>check.outlet_leaks</extracomment>
        <translation>Se pierde %1 con la salida cerrada: el propio comprobador marcaría %2 de pérdida en un cilindro que sella bien.</translation>
    </message>
    <message>
        <source>By this hole the restrictor is one of %1. Type it on the card: readings are converted with it.</source>
        <extracomment>check.restrictor</extracomment>
        <translation>Según este agujero el restrictor es de %1. Escribirlo en la ficha: con él se convierten las lecturas.</translation>
    </message>
    <message>
        <source>By this hole the restrictor is one of %1; the card says %2: they fit.</source>
        <extracomment>check.restrictor_as_card</extracomment>
        <translation>Según este agujero el restrictor es de %1; la ficha dice %2: concuerdan.</translation>
    </message>
    <message>
        <source>By this hole the restrictor is one of %1; the card says %2. Readings are converted with the card&apos;s: put it right there.</source>
        <extracomment>check.restrictor_off</extracomment>
        <translation>Según este agujero el restrictor es de %1; la ficha dice %2. Las lecturas se convierten con el de la ficha: corregirlo allí.</translation>
    </message>
    <message>
        <source>%1 of oil fills %2 of this chamber: that can lock the engine and bend a rod. Put in less, and turn the engine by hand before it is cranked.</source>
        <extracomment>pad.oil_locks</extracomment>
        <translation>%1 de aceite llenan %2 de esta cámara: eso puede bloquear el motor y doblar una biela. Echar menos, y girar el motor a mano antes de dar arranque.</translation>
    </message>
    <message>
        <source>%1 is a lot of oil: more than %2 in a cylinder can lock the engine and bend a rod. Is it meant?</source>
        <extracomment>pad.much_oil</extracomment>
        <translation>%1 es mucho aceite: más de %2 en un cilindro puede bloquear el motor y doblar una biela. ¿Es a propósito?</translation>
    </message>
    <message>
        <source>Set %1 is too much for most crankcases: above %2 seals are pushed out of their seats. Only the few psi that the engine&apos;s manual names.</source>
        <extracomment>pad.crankcase_high</extracomment>
        <translation>Una presión ajustada de %1 es demasiado para casi cualquier cárter: por encima de %2 los retenes se salen de su asiento. Solo las pocas décimas de bar que indica el manual del motor.</translation>
    </message>
    <message>
        <source>No oil into a diesel: it can lock the engine and bend a rod.</source>
        <extracomment>pad.diesel_wet</extracomment>
        <translation>Nada de aceite en un diésel: puede bloquear el motor y doblar una biela.</translation>
    </message>
    <message>
        <source>Factory range here: %1 to %2.</source>
        <extracomment>fact.limit_range</extracomment>
        <translation>Rango de fábrica aquí: %1 a %2.</translation>
    </message>
    <message>
        <source>Factory limit here: %1.</source>
        <extracomment>fact.limit_lowest</extracomment>
        <translation>Límite de fábrica aquí: %1.</translation>
    </message>
    <message>
        <source>First puff %1 of the final reading: as in a cylinder that seals well.</source>
        <extracomment>fact.first_usual</extracomment>
        <translation>Primera embolada %1 de la lectura final: como en un cilindro que sella bien.</translation>
    </message>
    <message>
        <source>First puff only %1 of the final reading: it builds up slowly, as leaking rings do.</source>
        <extracomment>fact.first_slow</extracomment>
        <translation>Primera embolada solo %1 de la lectura final: sube despacio, como hacen los segmentos que pierden.</translation>
    </message>
    <message>
        <source>First puff %1 of the final reading already: it hardly builds up.</source>
        <extracomment>fact.first_stays</extracomment>
        <translation>Primera embolada ya %1 de la lectura final: apenas sube.</translation>
    </message>
    <message>
        <source>The volume of %1 of oil alone explains a rise of %2 to %3.</source>
        <extracomment>fact.oil_volume</extracomment>
        <translation>El volumen de %1 de aceite explica por sí solo una subida de %2 a %3.</translation>
    </message>
    <message>
        <source>After %1 pulls a cylinder that seals well shows about %2 of what this gauge comes to: crank on until the needle stands.</source>
        <extracomment>fact.still_rising</extracomment>
        <translation>Tras %1 emboladas, un cilindro que sella bien muestra cerca del %2 de lo que este manómetro llega a marcar: seguir girando hasta que la aguja se detenga.</translation>
    </message>
    <message>
        <source>Only %1 pulls: makers read after %2 or more. Crank on until the needle stands.</source>
        <extracomment>fact.few_pulls</extracomment>
        <translation>Solo %1 emboladas: los fabricantes leen tras %2 o más. Seguir girando hasta que la aguja se detenga.</translation>
    </message>
    <message>
        <source>The volume before the check valve takes off about %1: without it this would be about %2.</source>
        <extracomment>fact.without_hose</extracomment>
        <translation>El volumen antes de la válvula antirretorno quita alrededor de %1: sin él esto sería alrededor de %2.</translation>
    </message>
    <message>
        <source>No factory figure; the model expects %1 to %2 of a cylinder that seals well.</source>
        <extracomment>model.healthy</extracomment>
        <translation>Sin cifra de fábrica; el modelo espera de %1 a %2 de un cilindro que sella bien.</translation>
    </message>
    <message>
        <source>No expectation: at a compression ratio of %1, above 14, the model reads far over what makers print. Use the maker&apos;s figure.</source>
        <extracomment>model.above_ratio</extracomment>
        <translation>Sin expectativa: con una relación de compresión de %1, superior a 14, el modelo da mucho más de lo que publican los fabricantes. Usar la cifra del fabricante.</translation>
    </message>
    <message>
        <source>The model gives no expectation. %1</source>
        <extracomment>model.refused</extracomment>
        <translation>El modelo no da ninguna expectativa. %1</translation>
    </message>
    <message>
        <source>The decompressor is at work: nothing is expected of the readings.</source>
        <extracomment>model.decompressor</extracomment>
        <translation>El descompresor actúa: no se espera nada de las lecturas.</translation>
    </message>
    <message>
        <source>With a working decompressor such an engine reads about %1 to %2 when nothing leaks. This is no limit.</source>
        <extracomment>model.released</extracomment>
        <translation>Con el descompresor actuando, un motor así marca entre %1 y %2 aproximadamente cuando nada pierde. No es un límite.</translation>
    </message>
    <message>
        <source>The induction was taken off: nothing throttles the air, and the reading stands as with the throttle held open.</source>
        <extracomment>model.induction_off</extracomment>
        <translation>La admisión estaba desmontada: nada estrangula el aire, y la lectura vale como con la mariposa abierta.</translation>
    </message>
    <message>
        <source>No factory figure. To work one out, the model needs from the engine card: %1.</source>
        <extracomment>model.missing_one</extracomment>
        <translation>Sin cifra de fábrica. Para calcular una, el modelo necesita de la ficha del motor: %1.</translation>
    </message>
    <message>
        <source>No factory figure. To work one out, the model needs from the engine card: %1 and %2.</source>
        <extracomment>model.missing_two</extracomment>
        <translation>Sin cifra de fábrica. Para calcular una, el modelo necesita de la ficha del motor: %1 y %2.</translation>
    </message>
    <message>
        <source>No factory figure. To work one out, the model needs from the engine card: %1, %2 and %3.</source>
        <extracomment>model.missing_three</extracomment>
        <translation>Sin cifra de fábrica. Para calcular una, el modelo necesita de la ficha del motor: %1, %2 y %3.</translation>
    </message>
    <message>
        <source>From the readings.</source>
        <extracomment>source.typed</extracomment>
        <translation>De las lecturas.</translation>
    </message>
    <message>
        <source>Published: %1.</source>
        <extracomment>source.published</extracomment>
        <translation>Publicado: %1.</translation>
    </message>
    <message>
        <source>Common practice of the trade, no published source.</source>
        <extracomment>source.common_practice</extracomment>
        <translation>Práctica común del oficio, sin fuente publicada.</translation>
    </message>
    <message>
        <source>A working assumption of this app. %1</source>
        <extracomment>source.assumption</extracomment>
        <translation>Un supuesto de trabajo de esta app. %1</translation>
    </message>
    <message>
        <source>Physics: %1.</source>
        <extracomment>source.physics</extracomment>
        <translation>Física: %1.</translation>
    </message>
    <message>
        <source>Engine card (%1) %2</source>
        <extracomment>source.card</extracomment>
        <translation>Ficha del motor (%1) %2</translation>
    </message>
    <message>
        <source>Mean of %1 readings; all of them count.</source>
        <extracomment>note.mean</extracomment>
        <translation>Media de %1 lecturas; todas cuentan.</translation>
    </message>
    <message>
        <source>Few repeats know their scatter badly: a usual one of %1 counts with it, as %2 further repeats.</source>
        <extracomment>note.repeat_scatter</extracomment>
        <translation>Pocas repeticiones conocen mal su dispersión: cuenta con ella una habitual de %1, como %2 repeticiones más.</translation>
    </message>
    <message>
        <source>One reading: a scatter of %1 is assumed.</source>
        <extracomment>note.one_reading</extracomment>
        <translation>Una sola lectura: se supone una dispersión de %1.</translation>
    </message>
    <message>
        <source>One reading: the leak&apos;s area is assumed to vary by %1.</source>
        <extracomment>note.leak_repeat</extracomment>
        <translation>Una sola lectura: se supone que el área de la fuga varía un %1.</translation>
    </message>
    <message>
        <source>The leak itself is never quite the same twice, and the needle moves with it: by about %1 here, most where about half is lost. That part of the ± is not the gauge&apos;s.</source>
        <extracomment>note.leak_moves</extracomment>
        <translation>La fuga misma nunca es del todo igual dos veces, y la aguja se mueve con ella: aquí unos %1, lo que más donde se pierde cerca de la mitad. Esa parte del ± no es del manómetro.</translation>
    </message>
    <message>
        <source>Readings put right first for what stood in their way, as limits mean them.</source>
        <extracomment>note.put_right</extracomment>
        <translation>Lecturas corregidas primero por lo que las estorbaba, tal como las entienden los límites.</translation>
    </message>
    <message>
        <source>Sizes and angles are taken as exact to half the last digit typed.</source>
        <extracomment>note.digits</extracomment>
        <translation>Las medidas y los ángulos se toman como exactos hasta media unidad de la última cifra escrita.</translation>
    </message>
    <message>
        <source>The gauge&apos;s class is not known: %1 of its full scale is assumed.</source>
        <extracomment>note.class_unknown</extracomment>
        <translation>No se sabe la clase del manómetro: se supone %1 de su fondo de escala.</translation>
    </message>
    <message>
        <source>Which gauge it was is not noted: its error is assumed.</source>
        <extracomment>note.tester_unknown</extracomment>
        <translation>No está anotado qué manómetro fue: su error se supone.</translation>
    </message>
    <message>
        <source>The tester&apos;s restrictor is not known: %1 is assumed.</source>
        <extracomment>note.restrictor_unknown</extracomment>
        <translation>No se sabe el restrictor del comprobador: se supone %1.</translation>
    </message>
    <message>
        <source>The restrictor&apos;s discharge coefficient is taken from the working assumptions unless the tester has its own.</source>
        <extracomment>note.cd_assumed</extracomment>
        <translation>El coeficiente de descarga del restrictor se toma de los supuestos de trabajo, salvo que el comprobador tenga el suyo.</translation>
    </message>
    <message>
        <source>One gauge: the regulator may sag by up to %1 of the set pressure under flow.</source>
        <extracomment>note.droop</extracomment>
        <translation>Un solo manómetro: el regulador puede ceder hasta %1 de la presión ajustada con el caudal.</translation>
    </message>
    <message>
        <source>On a hot engine the leak comes out about 11 % too small.</source>
        <extracomment>note.hot</extracomment>
        <translation>En un motor caliente la fuga sale alrededor de un 11 % demasiado pequeña.</translation>
    </message>
    <message>
        <source>Hole and narrow gap are two example laws, not bounds: pressure can also seat a ring or open a gasket.</source>
        <extracomment>note.law_range</extracomment>
        <translation>Agujero y rendija estrecha son dos leyes de ejemplo, no límites: la presión también puede asentar un segmento o abrir una junta.</translation>
    </message>
    <message>
        <source>The shop&apos;s altitude is not known: not scaled.</source>
        <extracomment>note.altitude_unknown</extracomment>
        <translation>No se sabe la altitud del taller: sin convertir.</translation>
    </message>
    <message>
        <source>Nothing was held: the leak is larger than this tester can tell.</source>
        <extracomment>note.wide_open</extracomment>
        <translation>No se mantuvo nada: la fuga es mayor de lo que este comprobador puede decir.</translation>
    </message>
    <message>
        <source>Nothing was lost that this gauge could show.</source>
        <extracomment>note.none_lost</extracomment>
        <translation>No se perdió nada que este manómetro pudiera mostrar.</translation>
    </message>
    <message>
        <source>The rod&apos;s length is not on the card: %1 strokes are assumed.</source>
        <extracomment>note.rod_guessed</extracomment>
        <translation>La longitud de la biela no está en la ficha: se supone %1 carreras.</translation>
    </message>
    <message>
        <source>The compression ratio is guessed: it may be out by %1.</source>
        <extracomment>note.ratio_guessed</extracomment>
        <translation>La relación de compresión está estimada: puede desviarse %1.</translation>
    </message>
    <message>
        <source>The intake closing is not on the card: %1 after bottom dead centre is assumed, %2 to either side.</source>
        <extracomment>note.closing_assumed</extracomment>
        <translation>El cierre de admisión no está en la ficha: se supone %1 después del punto muerto inferior, %2 a cada lado.</translation>
    </message>
    <message>
        <source>The exhaust port&apos;s closing is not on the card: %1 after bottom dead centre is assumed, %2 to either side.</source>
        <extracomment>note.port_closing_assumed</extracomment>
        <translation>El cierre de la lumbrera de escape no está en la ficha: se supone %1 después del punto muerto inferior, %2 a cada lado.</translation>
    </message>
    <message>
        <source>The closing is given at a lift: on its seat the valve closes %1 to %2 later.</source>
        <extracomment>note.closing_at_lift</extracomment>
        <translation>El cierre está dado a una alzada: en su asiento la válvula cierra de %1 a %2 más tarde.</translation>
    </message>
    <message>
        <source>Whether the closing is meant at the seat or at a lift is not on the card: from a lift it would be %1 to %2 later.</source>
        <extracomment>note.closing_lift_unknown</extracomment>
        <translation>En la ficha no consta si el cierre se refiere al asiento o a una alzada: desde una alzada sería de %1 a %2 más tarde.</translation>
    </message>
    <message>
        <source>Variable valve timing: the closing may lie %1 to either side.</source>
        <extracomment>note.timing_variable</extracomment>
        <translation>Distribución variable: el cierre puede estar %1 a cada lado.</translation>
    </message>
    <message>
        <source>The cranking speed is not noted: it is assumed, and may be out by %1.</source>
        <extracomment>note.speed_assumed</extracomment>
        <translation>La velocidad de arranque no está anotada: se supone, y puede desviarse en %1.</translation>
    </message>
    <message>
        <source>Cold or warm is not noted: taken as cold.</source>
        <extracomment>note.heat_unknown</extracomment>
        <translation>No está anotado si frío o caliente: se toma como frío.</translation>
    </message>
    <message>
        <source>Which gauge it was is not noted: hose and gauge of %1 behind a check valve at the plug hole are assumed.</source>
        <extracomment>note.gauge_assumed</extracomment>
        <translation>No está anotado qué manómetro fue: se suponen manguera y manómetro de %1 detrás de una válvula antirretorno en el agujero de bujía.</translation>
    </message>
    <message>
        <source>The volume of hose and gauge is not on the tester&apos;s card: %1 is assumed.</source>
        <extracomment>note.hose_assumed</extracomment>
        <translation>El volumen de manguera y manómetro no está en la ficha del comprobador: se supone %1.</translation>
    </message>
    <message>
        <source>Where the check valve sits is not on the tester&apos;s card: the plug hole is assumed.</source>
        <extracomment>note.valve_place_assumed</extracomment>
        <translation>En la ficha del comprobador no consta dónde está la válvula antirretorno: se supone el agujero de bujía.</translation>
    </message>
    <message>
        <source>How much oil went in is not noted: %1 is assumed.</source>
        <extracomment>note.oil_assumed</extracomment>
        <translation>No está anotado cuánto aceite se echó: se supone %1.</translation>
    </message>
    <message>
        <source>Friction holds the crank in part; it is left out.</source>
        <extracomment>note.friction</extracomment>
        <translation>El rozamiento sujeta en parte el cigüeñal; no se tiene en cuenta.</translation>
    </message>
    <message>
        <source>The model itself may be out by %1: not yet counted on real engines.</source>
        <extracomment>note.model_doubt</extracomment>
        <translation>El propio modelo puede desviarse %1: aún no contado en motores reales.</translation>
    </message>
    <message>
        <source>The effective area of the tester&apos;s restrictor may be out by %1.</source>
        <extracomment>note.restrictor_doubt</extracomment>
        <translation>El área efectiva del restrictor del comprobador puede desviarse en %1.</translation>
    </message>
    <message>
        <source>%1: %5 at %2. In range up to %3, a fault above %4.</source>
        <extracomment>note.band</extracomment>
        <translation>%1: %5 a %2. En rango hasta %3, fallo por encima de %4.</translation>
    </message>
    <message>
        <source>The starter slows down where the gas pushes back: %1 of the mean speed is reckoned with.</source>
        <extracomment>note.speed_dip</extracomment>
        <translation>El arranque se frena donde el gas empuja en contra: se cuenta con %1 de la velocidad media.</translation>
    </message>
    <message>
        <source>Left out: waves in the ports, oil mist, crevices.</source>
        <extracomment>note.model_leaves_out</extracomment>
        <translation>No se tienen en cuenta: ondas en los conductos, niebla de aceite, rendijas.</translation>
    </message>
    <message>
        <source>leakage</source>
        <extracomment>calc:leakage</extracomment>
        <translation>pérdida</translation>
    </message>
    <message>
        <source>round hole that would leak as much</source>
        <extracomment>calc:leak_hole</extracomment>
        <translation>agujero redondo que perdería lo mismo</translation>
    </message>
    <message>
        <source>leak area</source>
        <extracomment>calc:leak_area</extracomment>
        <translation>área de fuga</translation>
    </message>
    <message>
        <source>free air leaking out</source>
        <extracomment>calc:flow</extracomment>
        <translation>aire libre que se pierde</translation>
    </message>
    <message>
        <source>on the other tester, if it leaks like a hole</source>
        <extracomment>calc:on_other_hole</extracomment>
        <translation>en el otro comprobador, si pierde como un agujero</translation>
    </message>
    <message>
        <source>on the other tester, if it leaks like a narrow gap</source>
        <extracomment>calc:on_other_gap</extracomment>
        <translation>en el otro comprobador, si pierde como una rendija estrecha</translation>
    </message>
    <message>
        <source>exponent of the leak&apos;s law</source>
        <extracomment>calc:law_exponent</extracomment>
        <translation>exponente de la ley de la fuga</translation>
    </message>
    <message>
        <source>leakage at the second set pressure</source>
        <extracomment>calc:second_leakage</extracomment>
        <translation>pérdida a la segunda presión ajustada</translation>
    </message>
    <message>
        <source>leak area at the second set pressure</source>
        <extracomment>calc:second_leak_area</extracomment>
        <translation>área de fuga a la segunda presión ajustada</translation>
    </message>
    <message>
        <source>restrictor diameter</source>
        <extracomment>calc:restrictor</extracomment>
        <translation>diámetro del restrictor</translation>
    </message>
    <message>
        <source>restrictor&apos;s effective area</source>
        <extracomment>calc:restrictor_area</extracomment>
        <translation>área efectiva del restrictor</translation>
    </message>
    <message>
        <source>had nothing lain before the check valve</source>
        <extracomment>calc:without_hose</extracomment>
        <translation>si no hubiera nada antes de la válvula antirretorno</translation>
    </message>
    <message>
        <source>taken off by the volume before the check valve</source>
        <comment>calc:hose_loss</comment>
        <translation>lo que quita el volumen antes de la válvula antirretorno</translation>
    </message>
    <message>
        <source>multiply a reading by</source>
        <extracomment>calc:correction</extracomment>
        <translation>multiplicar una lectura por</translation>
    </message>
    <message>
        <source>rise that the oil&apos;s volume alone explains</source>
        <extracomment>calc:oil_rise</extracomment>
        <translation>subida que explica por sí solo el volumen del aceite</translation>
    </message>
    <message>
        <source>wet reading by volume alone</source>
        <extracomment>calc:wet_reading</extracomment>
        <translation>lectura húmeda solo por el volumen</translation>
    </message>
    <message>
        <source>limit here</source>
        <extracomment>calc:limit_here</extracomment>
        <translation>límite aquí</translation>
    </message>
    <message>
        <source>altitude</source>
        <comment>calc:altitude</comment>
        <translation>altitud</translation>
    </message>
    <message>
        <source>air pressure in the shop</source>
        <extracomment>calc:station_pressure</extracomment>
        <translation>presión del aire en el taller</translation>
    </message>
    <message>
        <source>reading of a cylinder that seals well</source>
        <extracomment>calc:healthy</extracomment>
        <translation>lectura de un cilindro que sella bien</translation>
    </message>
    <message>
        <source>of it on the first puff</source>
        <extracomment>calc:first_share</extracomment>
        <translation>de ella en la primera embolada</translation>
    </message>
    <message>
        <source>the same at the other cranking speed</source>
        <extracomment>calc:slow_reading</extracomment>
        <translation>la misma a la otra velocidad de arranque</translation>
    </message>
    <message>
        <source>taken off by the other cranking speed</source>
        <extracomment>calc:speed_loss</extracomment>
        <translation>lo que quita la otra velocidad de arranque</translation>
    </message>
    <message>
        <source>the same with the throttle like that</source>
        <extracomment>calc:throttle_reading</extracomment>
        <translation>la misma con la mariposa así</translation>
    </message>
    <message>
        <source>taken off by the throttle</source>
        <extracomment>calc:throttle_loss</extracomment>
        <translation>lo que quita la mariposa</translation>
    </message>
    <message>
        <source>torque on the crank</source>
        <comment>calc:torque</comment>
        <translation>par en el cigüeñal</translation>
    </message>
    <message>
        <source>force at the end of the bar</source>
        <extracomment>calc:force</extracomment>
        <translation>fuerza en el extremo de la barra</translation>
    </message>
    <message>
        <source>pressure</source>
        <extracomment>calc:pressure</extracomment>
        <translation>presión</translation>
    </message>
    <message>
        <source>length</source>
        <extracomment>calc:length</extracomment>
        <translation>longitud</translation>
    </message>
    <message>
        <source>volume</source>
        <extracomment>calc:volume</extracomment>
        <translation>volumen</translation>
    </message>
    <message>
        <source>temperature</source>
        <extracomment>calc:temperature</extracomment>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>factory limit</source>
        <extracomment>input:limit</extracomment>
        <translation>límite de fábrica</translation>
    </message>
    <message>
        <source>air pressure at the shop</source>
        <comment>input:station_pressure</comment>
        <translation>presión del aire en el taller</translation>
    </message>
    <message>
        <source>altitude</source>
        <comment>input:altitude</comment>
        <translation>altitud</translation>
    </message>
    <message>
        <source>air pressure at sea level</source>
        <extracomment>input:sea_level</extracomment>
        <translation>presión del aire al nivel del mar</translation>
    </message>
    <message>
        <source>gauge&apos;s full scale</source>
        <extracomment>input:full_scale</extracomment>
        <translation>fondo de escala del manómetro</translation>
    </message>
    <message>
        <source>gauge&apos;s class</source>
        <extracomment>input:gauge_class</extracomment>
        <translation>clase del manómetro</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>input:reading</comment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <comment>input:compression_ratio</comment>
        <translation>relación de compresión</translation>
    </message>
    <message>
        <source>first puff</source>
        <extracomment>input:first</extracomment>
        <translation>primera embolada</translation>
    </message>
    <message>
        <source>final reading</source>
        <extracomment>input:final</extracomment>
        <translation>lectura final</translation>
    </message>
    <message>
        <source>lowest cylinder</source>
        <extracomment>input:lowest</extracomment>
        <translation>cilindro más bajo</translation>
    </message>
    <message>
        <source>highest cylinder</source>
        <extracomment>input:highest</extracomment>
        <translation>cilindro más alto</translation>
    </message>
    <message>
        <source>set pressure</source>
        <extracomment>input:set</extracomment>
        <translation>presión ajustada</translation>
    </message>
    <message>
        <source>held pressure</source>
        <extracomment>input:held</extracomment>
        <translation>presión retenida</translation>
    </message>
    <message>
        <source>correction for what stood in the way</source>
        <extracomment>input:put_right</extracomment>
        <translation>corrección de lo que estorbaba</translation>
    </message>
    <message>
        <source>leakage of cylinder</source>
        <extracomment>input:leakage</extracomment>
        <translation>pérdida del cilindro</translation>
    </message>
    <message>
        <source>restrictor</source>
        <extracomment>input:restrictor</extracomment>
        <translation>restrictor</translation>
    </message>
    <message>
        <source>air pressure</source>
        <extracomment>input:ambient</extracomment>
        <translation>presión del aire</translation>
    </message>
    <message>
        <source>other tester&apos;s set pressure</source>
        <extracomment>input:other_set</extracomment>
        <translation>presión ajustada del otro comprobador</translation>
    </message>
    <message>
        <source>other tester&apos;s restrictor</source>
        <extracomment>input:other_restrictor</extracomment>
        <translation>restrictor del otro comprobador</translation>
    </message>
    <message>
        <source>discharge coefficient</source>
        <extracomment>input:cd</extracomment>
        <translation>coeficiente de descarga</translation>
    </message>
    <message>
        <source>wet reading</source>
        <extracomment>input:wet</extracomment>
        <translation>lectura húmeda</translation>
    </message>
    <message>
        <source>dry reading</source>
        <extracomment>input:dry</extracomment>
        <translation>lectura en seco</translation>
    </message>
    <message>
        <source>what it should reach</source>
        <extracomment>input:should_reach</extracomment>
        <translation>lo que debería alcanzar</translation>
    </message>
    <message>
        <source>bore</source>
        <extracomment>input:bore</extracomment>
        <translation>diámetro del cilindro</translation>
    </message>
    <message>
        <source>stroke</source>
        <extracomment>input:stroke</extracomment>
        <translation>carrera</translation>
    </message>
    <message>
        <source>rod</source>
        <extracomment>input:rod</extracomment>
        <translation>biela</translation>
    </message>
    <message>
        <source>intake closing after bottom dead centre</source>
        <extracomment>input:intake_closing</extracomment>
        <translation>cierre de admisión después del punto muerto inferior</translation>
    </message>
    <message>
        <source>exhaust port closing after bottom dead centre</source>
        <extracomment>input:port_closing</extracomment>
        <translation>cierre de la lumbrera de escape después del punto muerto inferior</translation>
    </message>
    <message>
        <source>cranking speed</source>
        <comment>input:speed</comment>
        <translation>velocidad de arranque</translation>
    </message>
    <message>
        <source>cranking speed with a flat battery</source>
        <extracomment>input:slow_speed</extracomment>
        <translation>velocidad de arranque con la batería descargada</translation>
    </message>
    <message>
        <source>the other cranking speed</source>
        <extracomment>input:other_speed</extracomment>
        <translation>la otra velocidad de arranque</translation>
    </message>
    <message>
        <source>pressure at intake closing, of the air&apos;s</source>
        <extracomment>input:fill</extracomment>
        <translation>presión al cerrar la admisión, respecto a la del aire</translation>
    </message>
    <message>
        <source>reads as it should, at least</source>
        <extracomment>input:healthy_least</extracomment>
        <translation>marca como debe, al menos</translation>
    </message>
    <message>
        <source>reads as it should, at most</source>
        <extracomment>input:healthy_most</extracomment>
        <translation>marca como debe, como mucho</translation>
    </message>
    <message>
        <source>taken off, at least</source>
        <extracomment>input:loss_least</extracomment>
        <translation>quitado, al menos</translation>
    </message>
    <message>
        <source>taken off, at most</source>
        <extracomment>input:loss_most</extracomment>
        <translation>quitado, como mucho</translation>
    </message>
    <message>
        <source>version of the working assumptions</source>
        <extracomment>input:assumptions_version</extracomment>
        <translation>versión de los supuestos de trabajo</translation>
    </message>
    <message>
        <source>cylinder walls</source>
        <extracomment>input:walls</extracomment>
        <translation>paredes del cilindro</translation>
    </message>
    <message>
        <source>walls of a warm engine</source>
        <extracomment>input:warm_walls</extracomment>
        <translation>paredes de un motor caliente</translation>
    </message>
    <message>
        <source>hose and gauge</source>
        <extracomment>input:hose</extracomment>
        <translation>manguera y manómetro</translation>
    </message>
    <message>
        <source>hose before the check valve</source>
        <extracomment>input:hose_before_valve</extracomment>
        <translation>manguera antes de la válvula antirretorno</translation>
    </message>
    <message>
        <source>adapter</source>
        <extracomment>input:adapter</extracomment>
        <translation>adaptador</translation>
    </message>
    <message>
        <source>check valve opens at</source>
        <extracomment>input:valve_opens_at</extracomment>
        <translation>la válvula antirretorno abre a</translation>
    </message>
    <message>
        <source>a low-pressure core opens at</source>
        <extracomment>input:easy_valve</extracomment>
        <translation>un núcleo de baja presión abre a</translation>
    </message>
    <message>
        <source>oil put in</source>
        <extracomment>input:oil</extracomment>
        <translation>aceite echado</translation>
    </message>
    <message>
        <source>least share of it that stays</source>
        <extracomment>input:oil_kept_least</extracomment>
        <translation>parte mínima de él que se queda</translation>
    </message>
    <message>
        <source>largest share of it that stays</source>
        <extracomment>input:oil_kept_most</extracomment>
        <translation>parte máxima de él que se queda</translation>
    </message>
    <message>
        <source>other set pressure</source>
        <extracomment>input:other_set_pressure</extracomment>
        <translation>otra presión ajustada</translation>
    </message>
    <message>
        <source>exponent of a narrow gap here</source>
        <extracomment>input:gap_exponent</extracomment>
        <translation>exponente de una rendija estrecha aquí</translation>
    </message>
    <message>
        <source>held at it</source>
        <extracomment>input:other_held</extracomment>
        <translation>retenida con ella</translation>
    </message>
    <message>
        <source>drilled hole</source>
        <comment>input:hole</comment>
        <translation>agujero taladrado</translation>
    </message>
    <message>
        <source>pressure in the cylinder</source>
        <extracomment>input:in_cylinder</extracomment>
        <translation>presión en el cilindro</translation>
    </message>
    <message>
        <source>angle from top dead centre</source>
        <extracomment>input:off_tdc</extracomment>
        <translation>ángulo desde el punto muerto superior</translation>
    </message>
    <message>
        <source>least filling with the throttle closed</source>
        <extracomment>input:fill_least</extracomment>
        <translation>llenado mínimo con la mariposa cerrada</translation>
    </message>
    <message>
        <source>largest filling with the throttle closed</source>
        <extracomment>input:fill_most</extracomment>
        <translation>llenado máximo con la mariposa cerrada</translation>
    </message>
    <message>
        <source>earliest closing with the decompressor at work</source>
        <extracomment>input:released_least</extracomment>
        <translation>cierre más temprano con el descompresor actuando</translation>
    </message>
    <message>
        <source>latest closing with the decompressor at work</source>
        <extracomment>input:released_most</extracomment>
        <translation>cierre más tardío con el descompresor actuando</translation>
    </message>
    <message>
        <source>taken off by the volume before the check valve</source>
        <comment>input:hose_loss</comment>
        <translation>lo que quita el volumen antes de la válvula antirretorno</translation>
    </message>
    <message>
        <source>torque on the crank</source>
        <comment>input:torque</comment>
        <translation>par en el cigüeñal</translation>
    </message>
    <message>
        <source>length of the bar</source>
        <comment>input:bar</comment>
        <translation>longitud de la barra</translation>
    </message>
    <message>
        <source>repaired</source>
        <extracomment>input:part</extracomment>
        <translation>reparado</translation>
    </message>
    <message>
        <source>reads as it is</source>
        <extracomment>input:reads_now</extracomment>
        <translation>marca tal como está</translation>
    </message>
    <message>
        <source>leaks as it is</source>
        <extracomment>input:leak_now</extracomment>
        <translation>pierde tal como está</translation>
    </message>
    <message>
        <source>of that the part, at least</source>
        <extracomment>input:part_least</extracomment>
        <translation>de ella la pieza, como mínimo</translation>
    </message>
    <message>
        <source>of that the part, at most</source>
        <extracomment>input:part_most</extracomment>
        <translation>de ella la pieza, como máximo</translation>
    </message>
    <message>
        <source>a sound part leaks at least</source>
        <extracomment>input:sound_least</extracomment>
        <translation>una pieza sana deja pasar, como mínimo</translation>
    </message>
    <message>
        <source>a sound part leaks at most</source>
        <extracomment>input:sound_most</extracomment>
        <translation>una pieza sana deja pasar, como máximo</translation>
    </message>
    <message>
        <source>to expect, at least</source>
        <extracomment>input:expected_least</extracomment>
        <translation>cabe esperar, como mínimo</translation>
    </message>
    <message>
        <source>to expect, in the middle</source>
        <extracomment>input:expected_middle</extracomment>
        <translation>cabe esperar, en el centro</translation>
    </message>
    <message>
        <source>to expect, at most</source>
        <extracomment>input:expected_most</extracomment>
        <translation>cabe esperar, como máximo</translation>
    </message>
    <message>
        <source>Its ± comes from</source>
        <extracomment>doubts</extracomment>
        <translation>Su ± viene de</translation>
    </message>
    <message>
        <source>What makes it so wide, each by itself</source>
        <extracomment>parts</extracomment>
        <translation>Lo que lo hace tan ancho, cada cosa por sí sola</translation>
    </message>
    <message>
        <source>share of the oil that stays</source>
        <extracomment>doubt:oil_kept</extracomment>
        <translation>parte del aceite que se queda</translation>
    </message>
    <message>
        <source>how much a closed throttle takes</source>
        <extracomment>doubt:throttle</extracomment>
        <translation>cuánto quita una mariposa cerrada</translation>
    </message>
    <message>
        <source>closing with the decompressor at work</source>
        <extracomment>doubt:released</extracomment>
        <translation>cierre con el descompresor actuando</translation>
    </message>
    <message>
        <source>how much is taken off</source>
        <extracomment>doubt:loss</extracomment>
        <translation>cuánto se descuenta</translation>
    </message>
    <message>
        <source>what else leaks, and the engine itself</source>
        <extracomment>doubt:rest_of_engine</extracomment>
        <translation>qué más pierde, y el motor mismo</translation>
    </message>
    <message>
        <source>how tight the repaired part becomes</source>
        <extracomment>doubt:sound_part</extracomment>
        <translation>lo hermética que queda la pieza reparada</translation>
    </message>
    <message>
        <source>one day to the next</source>
        <extracomment>doubt:day</extracomment>
        <translation>de un día a otro</translation>
    </message>
    <message>
        <source>gauge, and one test to the next</source>
        <extracomment>doubt:gauge_and_test</extracomment>
        <translation>manómetro, y de una prueba a otra</translation>
    </message>
    <message>
        <source>gauge, its class and zero</source>
        <extracomment>doubt:gauge</extracomment>
        <translation>manómetro, su clase y su cero</translation>
    </message>
    <message>
        <source>what can be read off the gauge</source>
        <extracomment>doubt:resolution</extracomment>
        <translation>lo que se puede leer en el manómetro</translation>
    </message>
    <message>
        <source>scatter from one test to the next</source>
        <extracomment>doubt:scatter</extracomment>
        <translation>dispersión de una prueba a otra</translation>
    </message>
    <message>
        <source>the leak, from one reading to the next</source>
        <extracomment>doubt:leak_repeat</extracomment>
        <translation>la fuga, de una lectura a otra</translation>
    </message>
    <message>
        <source>regulator sagging unseen</source>
        <extracomment>doubt:droop</extracomment>
        <translation>caída del regulador que no se ve</translation>
    </message>
    <message>
        <source>restrictor&apos;s area</source>
        <extracomment>doubt:restrictor</extracomment>
        <translation>área del restrictor</translation>
    </message>
    <message>
        <source>air pressure at the shop</source>
        <comment>doubt:air_pressure</comment>
        <translation>presión del aire en el taller</translation>
    </message>
    <message>
        <source>weather</source>
        <extracomment>doubt:weather</extracomment>
        <translation>tiempo atmosférico</translation>
    </message>
    <message>
        <source>closing of intake or port</source>
        <extracomment>doubt:closing</extracomment>
        <translation>cierre de admisión o lumbrera</translation>
    </message>
    <message>
        <source>the model itself</source>
        <extracomment>doubt:model</extracomment>
        <translation>el propio modelo</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <comment>doubt:ratio</comment>
        <translation>relación de compresión</translation>
    </message>
    <message>
        <source>cranking speed</source>
        <comment>doubt:speed</comment>
        <translation>velocidad de arranque</translation>
    </message>
    <message>
        <source>warm or cold</source>
        <extracomment>doubt:warmth</extracomment>
        <translation>caliente o frío</translation>
    </message>
    <message>
        <source>amount of oil</source>
        <extracomment>doubt:oil</extracomment>
        <translation>cantidad de aceite</translation>
    </message>
    <message>
        <source>the reading</source>
        <extracomment>doubt:reading</extracomment>
        <translation>la lectura</translation>
    </message>
    <message>
        <source>angle</source>
        <extracomment>doubt:angle</extracomment>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>bore, stroke and rod</source>
        <extracomment>doubt:engine</extracomment>
        <translation>diámetro, carrera y biela</translation>
    </message>
    <message>
        <source>torque</source>
        <extracomment>doubt:torque</extracomment>
        <translation>par</translation>
    </message>
    <message>
        <source>length of the bar</source>
        <comment>doubt:bar</comment>
        <translation>longitud de la barra</translation>
    </message>
    <message>
        <source>drilled hole</source>
        <comment>doubt:hole</comment>
        <translation>agujero taladrado</translation>
    </message>
    <message>
        <source>Cylinder %1 read less with oil in it (%3) than dry (%2): the wet reading is left out of the odds.</source>
        <extracomment>odds.wet_below_dry</extracomment>
        <translation>El cilindro %1 marcó menos con aceite (%3) que en seco (%2): la lectura húmeda queda fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %3 with oil in it and %2 dry: the wet reading is left out of the odds.</source>
        <extracomment>odds.wet_far_above</extracomment>
        <translation>El cilindro %1 marcó %3 con aceite y %2 en seco: la lectura húmeda queda fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>Cylinder %1 held nothing of %2: the leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.held_nothing</extracomment>
        <translation>El cilindro %1 no mantuvo nada de %2: la estanqueidad y lo que se oyó quedan fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>Cylinder %1 built up nothing and yet held air: its dry and wet readings are left out of the odds.</source>
        <extracomment>odds.built_nothing</extracomment>
        <translation>El cilindro %1 no acumuló nada y, sin embargo, mantuvo aire: sus lecturas en seco y húmeda quedan fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses only %2, yet air was heard strongly at several exits: the leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.loud_but_tight</extracomment>
        <translation>El cilindro %1 pierde solo %2 y, sin embargo, se oyó aire fuerte en varias salidas: la estanqueidad y lo que se oyó quedan fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses %2, yet nothing was heard at any exit: the leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.silent_but_leaks</extracomment>
        <translation>El cilindro %1 pierde %2 y, sin embargo, no se oyó nada en ninguna salida: la estanqueidad y lo que se oyó quedan fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>The %2 of cylinder %1 lies far off everything that its other readings allow. Do that test again.</source>
        <extracomment>odds.does_not_fit</extracomment>
        <translation>Un valor del cilindro %1 (%2) está muy lejos de todo lo que permiten sus otras lecturas. Repetir esa prueba.</translation>
    </message>
    <message>
        <source>Nothing was measured on cylinder %1: nothing but the assumptions would speak.</source>
        <extracomment>odds.nothing_measured</extracomment>
        <translation>En el cilindro %1 no se midió nada: solo hablarían los supuestos.</translation>
    </message>
    <message>
        <source>All that was read of cylinder %1 is from testers that failed their checks: nothing but the assumptions would speak.</source>
        <extracomment>odds.nothing_left</extracomment>
        <translation>Todo lo que se leyó del cilindro %1 viene de comprobadores que no pasaron su verificación: solo hablarían los supuestos.</translation>
    </message>
    <message>
        <source>Cylinder %1: first settle whether it stood at the right TDC. Until then its leak-down and what was heard are left out of the odds.</source>
        <extracomment>odds.tdc_first</extracomment>
        <translation>Cilindro %1: aclarar primero si estaba en el PMS correcto. Hasta entonces su estanqueidad y lo que se oyó quedan fuera de las probabilidades.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: clearance %3, its siblings about %4. Check and adjust it first: no verdict before that.</source>
        <extracomment>odds.clearance_siblings</extracomment>
        <translation>Cilindro %1, %2: juego %3, los demás cerca de %4. Primero revisarlo y ajustarlo: ningún veredicto antes.</translation>
    </message>
    <message>
        <source>Cylinder %1: the clearance of %2 is not known to be right. No strip-down for it before that: a valve without clearance looks burnt.</source>
        <extracomment>odds.clearance_first</extracomment>
        <translation>Cilindro %1: no se sabe si el juego de %2 es correcto. Antes de eso no desmontar por ello: una válvula sin juego parece quemada.</translation>
    </message>
    <message>
        <source>Cylinder %1: all that was read and heard is from before %2 was put right. No odds of what leaks now before it is tested and listened to again.</source>
        <extracomment>odds.retest_adjusted</extracomment>
        <translation>Cilindro %1: todo lo leído y oído es de antes de corregir %2. No hay probabilidades de lo que fuga ahora antes de probarlo y escucharlo de nuevo.</translation>
    </message>
    <message>
        <source>Nobody has listened at cylinder %1 since a part was touched that air was heard from: what was heard before says nothing of it as it is.</source>
        <extracomment>odds.not_listened_since</extracomment>
        <translation>Nadie ha escuchado en el cilindro %1 desde que se tocó una pieza de la que se oía aire: lo oído antes no dice nada de cómo está ahora.</translation>
    </message>
    <message>
        <source>Nobody listened at cylinder %1 while the air was on: without that, numbers alone say little about where it leaks.</source>
        <extracomment>odds.not_listened</extracomment>
        <translation>Nadie escuchó en el cilindro %1 mientras el aire estaba puesto: sin eso, los números solos dicen poco de por dónde pierde.</translation>
    </message>
    <message>
        <source>No air was put on cylinder %1: cranking readings alone say little about where it leaks. Do a leak-down and listen at every exit.</source>
        <extracomment>odds.no_air</extracomment>
        <translation>No se puso aire en el cilindro %1: las lecturas de compresión por sí solas dicen poco de por dónde pierde. Hacer una prueba de estanqueidad y escuchar en cada salida.</translation>
    </message>
    <message>
        <source>Cylinder %1: unsure. The working out did not settle well enough to show odds.</source>
        <extracomment>odds.unsure_numbers</extracomment>
        <translation>Cilindro %1: incierto. El cálculo no se estabilizó lo bastante para mostrar probabilidades.</translation>
    </message>
    <message>
        <source>What was read on &quot;%1&quot; is left out of the odds, since it failed its check (%2). Put it right or take another, and read again.</source>
        <extracomment>odds.tester_failed</extracomment>
        <translation>Lo que se leyó con «%1» queda fuera de las probabilidades, porque no pasó su verificación (%2). Arreglarlo o usar otro, y volver a leer.</translation>
    </message>
    <message>
        <source>Here the odds can only compare cylinders, and there is no other to hold cylinder %1 against: its reading tells them nothing of a leak. A leak-down test tells.</source>
        <extracomment>odds.level_unknown</extracomment>
        <translation>Aquí las probabilidades solo pueden comparar cilindros, y no hay otro al lado del cilindro %1: su lectura no dice nada de una fuga. Una prueba de estanqueidad lo dice.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads like the others, and here the odds can only compare cylinders: that tells them nothing of a leak. A leak-down test tells.</source>
        <extracomment>odds.alike_only</extracomment>
        <translation>El cilindro %1 da lo mismo que los demás, y aquí las probabilidades solo pueden comparar cilindros: eso no dice nada de una fuga. Una prueba de estanqueidad lo dice.</translation>
    </message>
    <message>
        <source>%1 read alike, and here the odds can only compare cylinders: that tells them nothing of a leak. A leak-down test tells.</source>
        <extracomment>odds.alike_only_several</extracomment>
        <translation>%1: dan lo mismo, y aquí las probabilidades solo pueden comparar cilindros: eso no dice nada de una fuga. Una prueba de estanqueidad lo dice.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads low like all the others: something that all of them share is likelier than a leak in each. No odds before a leak-down test.</source>
        <extracomment>odds.low_everywhere</extracomment>
        <translation>El cilindro %1 da poco como todos los demás: algo que todos comparten es más probable que una fuga en cada uno. Sin probabilidades antes de una prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>%1 all read low: something that they share is likelier than a leak in each. No odds before a leak-down test.</source>
        <extracomment>odds.low_everywhere_several</extracomment>
        <translation>%1: todos dan poco; algo que comparten es más probable que una fuga en cada uno. Sin probabilidades antes de una prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>What was heard at cylinder %1 points at %2. How loud it sounds does not tell how much leaks, nor whether that is too much: put the air on again and note what the gauge holds.</source>
        <extracomment>odds.heard_points</extracomment>
        <translation>Lo que se oyó en el cilindro %1 apunta a esto: %2. Lo fuerte que suena no dice cuánto se pierde ni si es demasiado: volver a poner aire y anotar lo que mantiene el manómetro.</translation>
    </message>
    <message>
        <source>What was heard at cylinder %1 points at %2, where no air may come out. How much leaks there was not read: put the air on again and note what the gauge holds.</source>
        <extracomment>odds.heard_fault</extracomment>
        <translation>Lo que se oyó en el cilindro %1 apunta a esto: %2. Por ahí no puede salir aire. Cuánto sale no se leyó: volver a poner aire y anotar lo que mantiene el manómetro.</translation>
    </message>
    <message>
        <source>Cylinder %1 was listened to, but nothing was read there. What is heard does not tell how much leaks: put the air on again and note what the gauge holds.</source>
        <extracomment>odds.heard_only</extracomment>
        <translation>En el cilindro %1 se escuchó, pero no se leyó nada. Lo que se oye no dice cuánto se pierde: volver a poner aire y anotar lo que mantiene el manómetro.</translation>
    </message>
    <message>
        <source>Cylinder %1: earlier readings that tell nothing of its state &quot;%2&quot; are kept apart.</source>
        <extracomment>odds.earlier_state_apart</extracomment>
        <translation>Cilindro %1: las lecturas anteriores que no dicen nada de su estado «%2» se mantienen aparte.</translation>
    </message>
    <message>
        <source>Cylinder %1: of the parts that were not touched before &quot;%2&quot;, earlier readings tell as well. Touched parts count as new ones: what they were tells nothing of what they are.</source>
        <extracomment>odds.earlier_state_shared</extracomment>
        <translation>Cilindro %1: sobre las piezas que no se tocaron antes del estado «%2» también dicen algo las lecturas anteriores. Las piezas tocadas cuentan como nuevas: lo que fueron no dice nada de lo que son.</translation>
    </message>
    <message>
        <source>Cylinder %1: cranking readings from before it ran are left out; it was colder then.</source>
        <extracomment>odds.earlier_state_ran</extracomment>
        <translation>Cilindro %1: las lecturas de compresión de antes de que funcionara no cuentan; entonces estaba más frío.</translation>
    </message>
    <message>
        <source>Cylinder %1: under the app&apos;s assumptions the likeliest answer is: %2. That depends on them; with others it would be: %3.</source>
        <extracomment>odds.depends_on_assumptions</extracomment>
        <translation>Cilindro %1: con los supuestos de la app la respuesta más probable es: %2. Depende de ellos; con otros sería: %3.</translation>
    </message>
    <message>
        <source>If cylinder %1 gets new rings: in a fresh hone they read low until they have run in. Don&apos;t compare before that.</source>
        <extracomment>odds.fresh_hone</extracomment>
        <translation>Si el cilindro %1 recibe segmentos nuevos: recién bruñido dan poco hasta que se hayan rodado. No comparar antes.</translation>
    </message>
    <message>
        <source>Air from cylinder %1 came out at the plug hole of %2, which stands on overlap at the same time. A leaking valve does that through a joined manifold as well as the joint between the two.</source>
        <extracomment>odds.companion</extracomment>
        <translation>El aire del cilindro %1 salió por el agujero de bujía del cilindro %2, que a la vez está en cruce de válvulas. Una válvula que pierde hace eso a través de un colector unido, igual que la junta entre ambos.</translation>
    </message>
    <message>
        <source>Air from cylinder %1 came out at the plug hole of %2, whose valves may be open then. A leaking valve does that through a joined manifold as well; the odds take it for the joint between the two.</source>
        <extracomment>odds.neighbour_open</extracomment>
        <translation>Salió aire del cilindro %1 por el agujero de bujía del %2, cuyas válvulas pueden estar abiertas entonces. Por un colector común también lo hace una válvula que pierde; las probabilidades lo toman por la junta entre los dos.</translation>
    </message>
    <message>
        <source>A decompressor was at work: cranking readings are not used for the odds, only air and what was heard.</source>
        <extracomment>odds.decompressor</extracomment>
        <translation>Actuaba un descompresor: las lecturas de compresión no se usan para las probabilidades, solo el aire y lo que se oyó.</translation>
    </message>
    <message>
        <source>Above a compression ratio of %1 cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_ratio</extracomment>
        <translation>Por encima de una relación de compresión de %1 las lecturas de compresión no se comparan con lo que marca un cilindro sano.</translation>
    </message>
    <message>
        <source>The engine card lacks: %1. Cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_data</extracomment>
        <translation>En la ficha del motor falta: %1. Las lecturas de compresión no se comparan con lo que marca un cilindro sano.</translation>
    </message>
    <message>
        <source>The engine card lacks: %1, %2. Cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_data_two</extracomment>
        <translation>En la ficha del motor faltan: %1, %2. Las lecturas de compresión no se comparan con lo que marca un cilindro sano.</translation>
    </message>
    <message>
        <source>The engine card lacks: %1, %2, %3. Cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_data_three</extracomment>
        <translation>En la ficha del motor faltan: %1, %2, %3. Las lecturas de compresión no se comparan con lo que marca un cilindro sano.</translation>
    </message>
    <message>
        <source>The throttle was closed: cranking readings are not held against what a sound cylinder reads.</source>
        <extracomment>odds.compare_only_throttle</extracomment>
        <translation>La mariposa estaba cerrada: las lecturas de compresión no se comparan con lo que marca un cilindro sano.</translation>
    </message>
    <message>
        <source>No reading to expect after a repair of cylinder %1: what is known allows one as low as today&apos;s. The engine card&apos;s compression ratio and factory limits, and a dry test with the throttle open, would narrow it.</source>
        <extracomment>odds.no_expectation</extracomment>
        <translation>Sin lectura esperada tras una reparación del cilindro %1: lo que se sabe permite una tan baja como la de hoy. La relación de compresión y los límites de fábrica en la ficha del motor, y una prueba en seco con la mariposa abierta, la acotarían.</translation>
    </message>
    <message>
        <source>Cranking readings are not used for the odds. %1</source>
        <extracomment>odds.no_cranking_model</extracomment>
        <translation>Las lecturas de compresión no se usan para las probabilidades. %1</translation>
    </message>
    <message>
        <source>Odds under the app&apos;s working assumptions; not yet counted on real engines.</source>
        <extracomment>odds.working_assumptions</extracomment>
        <translation>Probabilidades según los supuestos de trabajo de la app; aún no contadas en motores reales.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: odds %3.</source>
        <extracomment>odds.main</extracomment>
        <translation>Cilindro %1: pierde sobre todo por %2, probabilidad %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: odds %3. Check its clearance before any verdict on it.</source>
        <extracomment>odds.main_clearance</extracomment>
        <translation>Cilindro %1: pierde sobre todo por %2, probabilidad %3. Revisar su juego antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Cylinder %1: the likeliest so far is %2, odds %3. That rests on pressures and on how often each part is at fault: listening at every exit can turn it round.</source>
        <extracomment>odds.main_unheard</extracomment>
        <translation>Cilindro %1: lo más probable por ahora: %2, probabilidad %3. Eso se basa en presiones y en la frecuencia con que falla cada pieza: escuchar en cada salida puede darle la vuelta.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well: odds %2.</source>
        <extracomment>odds.seals</extracomment>
        <translation>El cilindro %1 sella bien: probabilidad %2.</translation>
    </message>
    <message>
        <source>Cylinder %1: no clear answer yet. The likeliest are %2 (%3) and %4 (%5).</source>
        <extracomment>odds.open</extracomment>
        <translation>Cilindro %1: aún sin respuesta clara. Lo más probable: %2 (%3) y %4 (%5).</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: %3.</source>
        <extracomment>odds.likely_main</extracomment>
        <translation>Cilindro %1: pierde sobre todo por %2 (%3).</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks mostly at %2: %3. Check its clearance before any verdict on it.</source>
        <extracomment>odds.likely_main_clearance</extracomment>
        <translation>Cilindro %1: pierde sobre todo por %2 (%3). Revisar su juego antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well: %2.</source>
        <extracomment>odds.likely_seals</extracomment>
        <translation>Cilindro %1: sella bien (%2).</translation>
    </message>
    <message>
        <source>%1 seal well: %2.</source>
        <extracomment>odds.likely_sound</extracomment>
        <translation>%1: sellan bien (%2).</translation>
    </message>
    <message>
        <source>%1 leak mostly at %2: %3.</source>
        <extracomment>odds.likely_main_several</extracomment>
        <translation>%1: pierden sobre todo por %2 (%3).</translation>
    </message>
    <message>
        <source>%1 may leak at %2, or they may still be sound: the readings do not settle it.</source>
        <extracomment>odds.leak_or_sound_several</extracomment>
        <translation>%1: pueden perder por %2, o pueden estar sanos todavía; las lecturas no lo deciden.</translation>
    </message>
    <message>
        <source>Nobody listened there: that can turn it round.</source>
        <extracomment>odds.turned_by_listening</extracomment>
        <translation>Allí no escuchó nadie: eso puede cambiar la respuesta.</translation>
    </message>
    <message>
        <source>Nobody listened there, and another answer is possible: %1.</source>
        <extracomment>odds.turned_by_listening_or</extracomment>
        <translation>Allí no escuchó nadie, y cabe otra respuesta: %1.</translation>
    </message>
    <message>
        <source>Nobody has listened there since a part was touched: that can turn it round.</source>
        <extracomment>odds.turned_by_listening_again</extracomment>
        <translation>Allí no ha escuchado nadie desde que se tocó una pieza: eso puede cambiar la respuesta.</translation>
    </message>
    <message>
        <source>No leak-down was done there: one can turn this round.</source>
        <extracomment>odds.turned_by_air</extracomment>
        <translation>Allí no se hizo la prueba de estanqueidad: puede cambiar la respuesta.</translation>
    </message>
    <message>
        <source>No leak-down was done there, and another answer is possible: %1.</source>
        <extracomment>odds.turned_by_air_or</extracomment>
        <translation>Allí no se hizo la prueba de estanqueidad, y cabe otra respuesta: %1.</translation>
    </message>
    <message>
        <source>A rule of thumb names another answer: %1.</source>
        <extracomment>odds.turned_by_rule</extracomment>
        <translation>Una regla práctica da otra respuesta: %1.</translation>
    </message>
    <message>
        <source>With other assumptions the answer would be: %1.</source>
        <extracomment>odds.turned_by_assumptions</extracomment>
        <translation>Con otros supuestos la respuesta sería: %1.</translation>
    </message>
    <message>
        <source>cylinder %1, %2</source>
        <extracomment>odds.repair_of</extracomment>
        <translation>cilindro %1, %2</translation>
    </message>
    <message>
        <source>Cylinder %1 may leak at %2, or it may still be sound: the readings do not settle it.</source>
        <extracomment>odds.leaks_or_sound</extracomment>
        <translation>Cilindro %1: puede perder por %2, o puede estar sano todavía; las lecturas no lo deciden.</translation>
    </message>
    <message>
        <source>Cylinder %1: no clear answer yet. The likeliest are %2 and %3.</source>
        <extracomment>odds.likely_open</extracomment>
        <translation>Cilindro %1: aún sin respuesta clara. Lo más probable: %2 y %3.</translation>
    </message>
    <message>
        <source>Cylinder %1: what was measured does not fit together. No odds before that is settled.</source>
        <extracomment>odds.no_verdict</extracomment>
        <translation>Cilindro %1: lo medido no concuerda. No hay probabilidades hasta aclararlo.</translation>
    </message>
    <message>
        <source>Sealing well means here: it would lose less than %1 on a tester set to %2 behind a restrictor of %3. A leak-down that comes out near that edge can lower these odds, good as it is.</source>
        <extracomment>odds.seals_means</extracomment>
        <translation>Sellar bien significa aquí: perdería menos del %1 en un comprobador ajustado a %2 tras un restrictor de %3. Una prueba de estanqueidad que salga cerca de ese borde puede bajar esta probabilidad, por buena que sea.</translation>
    </message>
    <message>
        <source>Cylinder %1: the rules of thumb name %2, the odds %3. A rule looks at one sign alone; the odds weigh every reading with its doubt, how loud each exit was, and how often each part is at fault.</source>
        <extracomment>odds.thumb_differs</extracomment>
        <translation>Cilindro %1: las reglas prácticas nombran %2, las probabilidades %3. Una regla mira un solo indicio; las probabilidades pesan cada lectura con su incertidumbre, con qué intensidad sonó cada salida y con qué frecuencia falla cada pieza.</translation>
    </message>
    <message>
        <source>Cylinder %1: the rules of thumb disagree with each other. All evidence together makes this the likeliest answer: %2.</source>
        <extracomment>odds.thumbs_disagree</extracomment>
        <translation>Cilindro %1: las reglas prácticas no concuerdan entre sí. Todos los indicios juntos hacen de esta la respuesta más probable: %2.</translation>
    </message>
    <message>
        <source>It would tell much about where the leak is.</source>
        <extracomment>odds.tells_much</extracomment>
        <translation>Diría mucho de por dónde pierde.</translation>
    </message>
    <message>
        <source>It would tell something about where the leak is.</source>
        <extracomment>odds.tells_some</extracomment>
        <translation>Diría algo de por dónde pierde.</translation>
    </message>
    <message>
        <source>It would tell a little about where the leak is.</source>
        <extracomment>odds.tells_little</extracomment>
        <translation>Diría poco de por dónde pierde.</translation>
    </message>
    <message>
        <source>A leak-down test of cylinder %1, listening at every exit, would tell %2 about where the leak is.</source>
        <extracomment>odds.leak_down_tells</extracomment>
        <translation>Una prueba de estanqueidad del cilindro %1, escuchando en cada salida, diría %2 de por dónde pierde.</translation>
    </message>
    <message>
        <source>Listening at every exit of cylinder %1 would tell %2 about where the leak is.</source>
        <extracomment>odds.listening_tells</extracomment>
        <translation>Escuchar en cada salida del cilindro %1 diría %2 de por dónde pierde.</translation>
    </message>
    <message>
        <source>A dry test of cylinder %1 would tell %2 about where the leak is.</source>
        <extracomment>odds.dry_tells</extracomment>
        <translation>Una prueba en seco del cilindro %1 diría %2 de por dónde pierde.</translation>
    </message>
    <message>
        <source>Put the air on cylinder %1 once more and note what the gauge holds: it was listened to, and nothing was read.</source>
        <extracomment>odds.read_as_well</extracomment>
        <translation>Volver a poner aire en el cilindro %1 y anotar lo que mantiene el manómetro: se escuchó y no se leyó nada.</translation>
    </message>
    <message>
        <source>A wet test of cylinder %1 would tell %2 about where the leak is.</source>
        <extracomment>odds.wet_tells</extracomment>
        <translation>Una prueba húmeda del cilindro %1 diría %2 de por dónde pierde.</translation>
    </message>
    <message>
        <source>Check the clearance of %1, then test again.</source>
        <extracomment>propose.check_clearance</extracomment>
        <translation>Revisar el juego de %1 y probar de nuevo.</translation>
    </message>
    <message>
        <source>Adjust the clearance of %1, then test again.</source>
        <extracomment>propose.adjust_clearance</extracomment>
        <translation>Ajustar el juego de %1 y probar de nuevo.</translation>
    </message>
    <message>
        <source>The clearance of %1 was changed: test again.</source>
        <extracomment>propose.test_adjusted</extracomment>
        <translation>El juego de %1 se cambió: probar de nuevo.</translation>
    </message>
    <message>
        <source>Put the air on again and listen at every exit: where it comes out names the leak.</source>
        <extracomment>propose.listen</extracomment>
        <translation>Volver a poner el aire y escuchar en cada salida: el lugar por donde sale indica la fuga.</translation>
    </message>
    <message>
        <source>Run it until it is warm, then test again.</source>
        <extracomment>propose.run_it</extracomment>
        <translation>Hacerlo funcionar hasta que esté caliente y probar de nuevo.</translation>
    </message>
    <message>
        <source>Repeat the dry test warm, with the throttle held wide open.</source>
        <extracomment>propose.repeat_open</extracomment>
        <translation>Repetir la prueba en seco en caliente, con la mariposa abierta del todo.</translation>
    </message>
    <message>
        <source>Leave penetrating oil in the bore overnight, run it, then test again.</source>
        <extracomment>propose.soak</extracomment>
        <translation>Dejar aceite penetrante en el cilindro toda la noche, hacerlo funcionar y probar de nuevo.</translation>
    </message>
    <message>
        <source>Stake %1 lightly on its seat, then test again.</source>
        <extracomment>propose.stake</extracomment>
        <translation>Asentar %1 con toques ligeros en su asiento y probar de nuevo.</translation>
    </message>
    <message>
        <source>Check the head bolts by the engine&apos;s manual, then test again.</source>
        <extracomment>propose.head_bolts</extracomment>
        <translation>Revisar los tornillos de culata según el manual del motor y probar de nuevo.</translation>
    </message>
    <message>
        <source>Adjust the decompressor so that it closes, then test again.</source>
        <extracomment>propose.decompressor</extracomment>
        <translation>Ajustar el descompresor para que cierre y probar de nuevo.</translation>
    </message>
    <message>
        <source>Check valve timing, throttle, starter speed and hose, then test again.</source>
        <extracomment>propose.low_but_seals</extracomment>
        <translation>Revisar distribución, mariposa, velocidad del motor de arranque y manguera, y probar de nuevo.</translation>
    </message>
    <message>
        <source>Check valve timing, air filter, starter speed and hose, then test again.</source>
        <extracomment>propose.low_but_seals_diesel</extracomment>
        <translation>Revisar distribución, filtro de aire, velocidad del motor de arranque y manguera, y probar de nuevo.</translation>
    </message>
    <message>
        <source>Head off: grind or renew %1, cut and lap its seat.</source>
        <extracomment>propose.valve</extracomment>
        <translation>Quitar la culata: rectificar o cambiar %1, fresar y esmerilar su asiento.</translation>
    </message>
    <message>
        <source>Cylinder off or piston out: measure the bore, new rings. Hone an iron bore; a plated bore must not be honed: as its manual says.</source>
        <extracomment>propose.rings</extracomment>
        <translation>Cilindro fuera o pistón fuera: medir el cilindro, segmentos nuevos. Bruñir un cilindro de hierro; un cilindro recubierto no se debe bruñir: según su manual.</translation>
    </message>
    <message>
        <source>Cylinder off: measure bore and piston, new rings. Hone an iron bore; a plated bore must not be honed: as its manual says.</source>
        <extracomment>propose.rings_two_stroke</extracomment>
        <translation>Cilindro fuera: medir cilindro y pistón, segmentos nuevos. Bruñir un cilindro de hierro; un cilindro recubierto no se debe bruñir: según su manual.</translation>
    </message>
    <message>
        <source>Head off: look for cracks, measure head and block for flatness, new head gasket.</source>
        <extracomment>propose.gasket</extracomment>
        <translation>Quitar la culata: buscar grietas, medir la planitud de culata y bloque, junta de culata nueva.</translation>
    </message>
    <message>
        <source>Renew what lets the crankcase leak: crank seals, base gasket, reed.</source>
        <extracomment>propose.crankcase</extracomment>
        <translation>Cambiar lo que hace perder al cárter: retenes del cigüeñal, junta de base, láminas.</translation>
    </message>
    <message>
        <source>Crankcase under its test pressure again: soapy water on crank seals, base gasket and intake. Bubbles show where it leaks.</source>
        <extracomment>propose.crankcase_soap</extracomment>
        <translation>Cárter otra vez a su presión de prueba: agua jabonosa en retenes, junta de base y admisión. Las burbujas muestran por dónde pierde.</translation>
    </message>
    <message>
        <source>Name the leak-down tester and its restrictor, then look at the findings again.</source>
        <extracomment>propose.name_tester</extracomment>
        <translation>Indicar el comprobador de estanqueidad y su restrictor, y volver a mirar el diagnóstico.</translation>
    </message>
    <message>
        <source>Leave it and measure again later.</source>
        <extracomment>propose.watch</extracomment>
        <translation>Dejarlo y medir de nuevo más tarde.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: %3 at fault, under the app&apos;s working assumptions.</source>
        <extracomment>because.odds</extracomment>
        <translation>Cilindro %1, %2 como causa: %3, según los supuestos de trabajo de la app.</translation>
    </message>
    <message>
        <source>The joint of %1: %2 at fault, under the app&apos;s working assumptions.</source>
        <extracomment>because.joint</extracomment>
        <translation>La junta entre cilindros (%1) como causa: %2, según los supuestos de trabajo de la app.</translation>
    </message>
    <message>
        <source>The rules of thumb point at %2 of cylinder %1.</source>
        <extracomment>because.rules</extracomment>
        <translation>Las reglas prácticas señalan %2 en el cilindro %1.</translation>
    </message>
    <message>
        <source>The seat burns further and the leak grows.</source>
        <extracomment>left.valve</extracomment>
        <translation>El asiento se sigue quemando y la fuga crece.</translation>
    </message>
    <message>
        <source>Hot gas cuts the leak larger: the seat goes next, and a piece of the valve can break off.</source>
        <extracomment>left.exhaust_valve</extracomment>
        <translation>El gas caliente agranda la fuga: después se daña el asiento, y puede desprenderse un trozo de la válvula.</translation>
    </message>
    <message>
        <source>Power and oil go on getting worse, slowly, and it starts ever harder in the cold.</source>
        <extracomment>left.rings_diesel</extracomment>
        <translation>La potencia y el consumo de aceite siguen empeorando, despacio, y en frío arranca cada vez peor.</translation>
    </message>
    <message>
        <source>Power and oil go on getting worse, slowly; oil fouls the plug.</source>
        <extracomment>left.rings</extracomment>
        <translation>La potencia y el consumo de aceite siguen empeorando, despacio; el aceite ensucia la bujía.</translation>
    </message>
    <message>
        <source>Hot gas cuts into head and block; what is a gasket now becomes a head to be machined.</source>
        <extracomment>left.gasket</extracomment>
        <translation>El gas caliente erosiona culata y bloque; lo que ahora es una junta acaba siendo una culata por mecanizar.</translation>
    </message>
    <message>
        <source>Gas drives out the coolant and the engine overheats; coolant in a cylinder can bend its rod.</source>
        <extracomment>left.coolant</extracomment>
        <translation>El gas expulsa el refrigerante y el motor se sobrecalienta; el refrigerante en un cilindro puede doblar su biela.</translation>
    </message>
    <message>
        <source>It starts badly and its readings tell nothing.</source>
        <extracomment>left.decompressor</extracomment>
        <translation>Arranca mal y sus lecturas no dicen nada.</translation>
    </message>
    <message>
        <source>False air makes it run lean: it can seize.</source>
        <extracomment>left.crankcase</extracomment>
        <translation>El aire parásito empobrece la mezcla: puede griparse.</translation>
    </message>
    <message>
        <source>Normal wear goes on; nothing is lost by waiting as long as it does not grow.</source>
        <extracomment>left.wear</extracomment>
        <translation>El desgaste normal sigue; no se pierde nada por esperar mientras no crezca.</translation>
    </message>
    <message>
        <source>Cylinder %1: not measured.</source>
        <extracomment>cylinder.not_measured</extracomment>
        <translation>Cilindro %1: no medido.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads well now, but leaked when air was last on it. Put air on it again before it is called sound.</source>
        <extracomment>cylinder.earlier_fault</extracomment>
        <translation>El cilindro %1 marca bien ahora, pero perdía cuando se le dio aire por última vez. Volver a darle aire antes de darlo por estanco.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well.</source>
        <extracomment>cylinder.seals_well</extracomment>
        <translation>El cilindro %1 sella bien.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: in range.</source>
        <extracomment>cylinder.reads_in_range</extracomment>
        <translation>El cilindro %1 da %2: en rango.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, like the others. There is no limit to hold it against.</source>
        <extracomment>cylinder.reads_alike</extracomment>
        <translation>El cilindro %1 marca %2, como los demás. No hay límite con el que compararlo.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, like the others, but less than makers ask at least: borderline. There is no limit of this engine to hold it against.</source>
        <extracomment>cylinder.alike_but_low</extracomment>
        <translation>El cilindro %1 marca %2, como los demás, pero menos de lo que los fabricantes piden como mínimo: en el límite. No hay límite de este motor con el que compararlo.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2. There is no factory limit to hold it against.</source>
        <extracomment>cylinder.reads_no_limit</extracomment>
        <translation>El cilindro %1 da %2. No hay límite de fábrica con que compararlo.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, as expected of one that seals well. There is no factory figure.</source>
        <extracomment>cylinder.reads_as_expected</extracomment>
        <translation>El cilindro %1 da %2, como se espera de uno que sella bien. No hay cifra de fábrica.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, less than expected: borderline. There is no factory figure.</source>
        <extracomment>cylinder.reads_below_expected</extracomment>
        <translation>El cilindro %1 da %2, menos de lo esperado: en el límite. No hay cifra de fábrica.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the decompressor at work: no limit holds for that.</source>
        <extracomment>cylinder.reads_decompressor</extracomment>
        <translation>El cilindro %1 marca %2 con el descompresor actuando: para eso no vale ningún límite.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: borderline.</source>
        <extracomment>cylinder.reads_borderline</extracomment>
        <translation>El cilindro %1 da %2: en el límite.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low. A leak-down test shows where it leaks.</source>
        <extracomment>cylinder.reads_low</extracomment>
        <translation>El cilindro %1 da %2: demasiado bajo. Una prueba de estanqueidad muestra por dónde pierde.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: below the factory limit of %3. A leak-down test shows where it leaks.</source>
        <extracomment>cylinder.below_limit</extracomment>
        <translation>El cilindro %1 da %2: por debajo del límite de fábrica de %3. Una prueba de estanqueidad muestra por dónde pierde.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: below the factory limit of %3, and the signs point at %4.</source>
        <extracomment>cylinder.below_limit_points_at</extracomment>
        <translation>El cilindro %1 da %2: por debajo del límite de fábrica de %3, y los indicios señalan %4.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: far below what makers ask of such an engine. A leak-down test shows where it leaks.</source>
        <extracomment>cylinder.far_below_usual</extracomment>
        <translation>El cilindro %1 da %2: muy por debajo de lo que los fabricantes piden a un motor así. Una prueba de estanqueidad muestra por dónde pierde.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the throttle shut: in range all the same.</source>
        <extracomment>cylinder.shut_in_range</extracomment>
        <translation>El cilindro %1 da %2 con la mariposa cerrada: aun así en rango.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the throttle shut: too low even so. Repeat with the throttle wide open to be sure.</source>
        <extracomment>cylinder.shut_low</extracomment>
        <translation>El cilindro %1 da %2 con la mariposa cerrada: demasiado bajo incluso así. Repetir con la mariposa abierta del todo para estar seguro.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2 with the throttle shut, which lowers it: no verdict before it is repeated with the throttle wide open.</source>
        <extracomment>cylinder.shut_no_verdict</extracomment>
        <translation>El cilindro %1 da %2 con la mariposa cerrada, y eso lo baja: ningún veredicto antes de repetirlo con la mariposa abierta del todo.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low, and the signs point at %3.</source>
        <extracomment>cylinder.low_points_at</extracomment>
        <translation>El cilindro %1 da %2: demasiado bajo, y los indicios señalan %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low, but %3 had too little clearance. Adjust first, then test again.</source>
        <extracomment>cylinder.low_adjust_first</extracomment>
        <translation>El cilindro %1 da %2: demasiado bajo, pero %3 tenía muy poco juego. Ajustar primero y probar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: too low, but %3 has far less clearance than its siblings. Check and adjust first, then test again.</source>
        <extracomment>cylinder.low_clearance_first</extracomment>
        <translation>El cilindro %1 da %2: demasiado bajo, pero %3 tiene mucho menos juego que las demás. Primero revisar y ajustar, luego probar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses %2: wear, not yet a fault.</source>
        <extracomment>cylinder.wear</extracomment>
        <translation>El cilindro %1 pierde %2: desgaste, aún no un fallo.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2. Listen where the air comes out.</source>
        <extracomment>cylinder.leaks_unheard</extracomment>
        <translation>El cilindro %1 pierde %2. Escuchar por dónde sale el aire.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2: a fault if the tester is as assumed, perhaps none. Name the tester and its restrictor first.</source>
        <extracomment>cylinder.leaks_tester_first</extracomment>
        <translation>El cilindro %1 pierde %2: un fallo si el comprobador es como se supone, quizá ninguno. Indicar primero el comprobador y su restrictor.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2, most of it at %3 as far as the ear can tell.</source>
        <extracomment>cylinder.leaks_at</extracomment>
        <translation>El cilindro %1 pierde %2, la mayor parte por %3 hasta donde alcanza el oído.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2, most of it at the joint to cylinder %3 as far as the ear can tell.</source>
        <extracomment>cylinder.leaks_at_joint</extracomment>
        <translation>El cilindro %1 pierde %2, la mayor parte por la junta con el cilindro %3 hasta donde alcanza el oído.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2, and air comes out of the plug hole of cylinder %3: through the joint, or past a valve. Listen at intake and exhaust too.</source>
        <extracomment>cylinder.leaks_joint_or_valve</extracomment>
        <translation>El cilindro %1 pierde %2 y sale aire por el agujero de bujía del cilindro %3: por la junta entre ambos o por una válvula. Escuchar también en admisión y escape.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2 and the air points at %3. Check its clearance before any verdict: a valve without clearance looks burnt.</source>
        <extracomment>cylinder.leaks_clearance_first</extracomment>
        <translation>El cilindro %1 pierde %2 y el aire señala %3. Revisar su juego antes de cualquier veredicto: una válvula sin juego parece quemada.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaks %2 at %3, which had too little clearance. Adjust first, then test again.</source>
        <extracomment>cylinder.leaks_adjust_first</extracomment>
        <translation>El cilindro %1 pierde %2 por %3, que tenía muy poco juego. Ajustar primero y probar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 leaked %2 before %3 was put right: without clearance a valve stands open. Test it again and listen again before any verdict.</source>
        <extracomment>cylinder.retest_leak</extracomment>
        <translation>El cilindro %1 perdía %2 antes de corregir %3: sin holgura una válvula queda abierta. Probarlo y escucharlo de nuevo antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 before %3 was put right: without clearance a valve stands open. Test it again before any verdict.</source>
        <extracomment>cylinder.retest_dry</extracomment>
        <translation>El cilindro %1 marcaba %2 antes de corregir %3: sin holgura una válvula queda abierta. Probarlo de nuevo antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Cylinder %1: perhaps the wrong TDC. Turn the crank one full turn and test again before any verdict.</source>
        <extracomment>cylinder.ask_tdc</extracomment>
        <translation>Cilindro %1: quizá el PMS equivocado. Dar una vuelta completa al cigüeñal y probar de nuevo antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Cylinder %1: its readings don&apos;t fit together. Do the %2 again before any verdict.</source>
        <extracomment>cylinder.does_not_fit</extracomment>
        <translation>Cilindro %1: sus lecturas no encajan. Repetir antes de cualquier veredicto: %2.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2: decompressor, not proof of a leak. Do a leak-down test.</source>
        <extracomment>cylinder.ask_decompressor</extracomment>
        <translation>El cilindro %1 da %2: descompresor, no es prueba de una fuga. Hacer una prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>Cylinder %1 seals well (leakage %3) yet reads only %2. Look at valve timing, throttle, starter speed and hose.</source>
        <extracomment>cylinder.seals_but_reads_low</extracomment>
        <translation>El cilindro %1 sella bien (pérdida %3) y, sin embargo, solo da %2. Revisar distribución, mariposa, velocidad del motor de arranque y manguera.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, in range, yet leaks %3. Test again and listen where the air comes out.</source>
        <extracomment>cylinder.leaks_but_reads_well</extracomment>
        <translation>El cilindro %1 da %2, en rango, y, sin embargo, pierde %3. Probar de nuevo y escuchar por dónde sale el aire.</translation>
    </message>
    <message>
        <source>Cylinder %1 and its neighbour %2 are both low: look at the joint between them.</source>
        <extracomment>cylinder.joint_with</extracomment>
        <translation>El cilindro %1 y su vecino %2 están bajos los dos: mirar la junta entre ambos.</translation>
    </message>
    <message>
        <source>Cylinder %1 has a wet test only: nothing to compare it with.</source>
        <extracomment>cylinder.wet_only</extracomment>
        <translation>El cilindro %1 solo tiene una prueba húmeda: nada con que compararla.</translation>
    </message>
    <message>
        <source>Nothing measured yet.</source>
        <extracomment>engine.not_measured</extracomment>
        <translation>Aún no se ha medido nada.</translation>
    </message>
    <message>
        <source>Every cylinder seals well.</source>
        <extracomment>engine.seals_well</extracomment>
        <translation>Todos los cilindros sellan bien.</translation>
    </message>
    <message>
        <source>Every cylinder is in range.</source>
        <extracomment>engine.in_range</extracomment>
        <translation>Todos los cilindros están en rango.</translation>
    </message>
    <message>
        <source>The cylinders read alike. What this engine should read is not on its card.</source>
        <extracomment>engine.alike</extracomment>
        <translation>Los cilindros marcan por igual. Lo que este motor debería marcar no está en su ficha.</translation>
    </message>
    <message>
        <source>The cylinders read alike, but less than makers ask at least. Worn alike, or something lowers them all: speed, throttle, gauge, valve timing. A leak-down tells.</source>
        <extracomment>engine.alike_but_low</extracomment>
        <translation>Los cilindros marcan por igual, pero menos de lo que los fabricantes piden como mínimo. Desgaste parejo, o algo los baja a todos: velocidad, mariposa, manómetro, distribución. Una prueba de estanqueidad lo aclara.</translation>
    </message>
    <message>
        <source>Measured, but there is nothing to judge the readings by. Put the factory limits on the engine card.</source>
        <extracomment>engine.no_limit</extracomment>
        <translation>Medido, pero no hay con qué juzgar las lecturas. Poner los límites de fábrica en la ficha del motor.</translation>
    </message>
    <message>
        <source>With the decompressor at work the readings say little by themselves. A leak-down test tells how each one seals.</source>
        <extracomment>engine.decompressor</extracomment>
        <translation>Con el descompresor actuando las lecturas por sí solas dicen poco. Una prueba de estanqueidad dice cómo sella cada cilindro.</translation>
    </message>
    <message>
        <source>The throttle was shut, which lowers every reading. Repeat the dry test with the throttle wide open, warm, before any verdict.</source>
        <extracomment>engine.throttle_shut</extracomment>
        <translation>La mariposa estaba cerrada, y eso baja todas las lecturas. Repetir la prueba en seco en caliente, con la mariposa abierta del todo, antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Fault at %1.</source>
        <extracomment>engine.fault</extracomment>
        <translation>Fallo: %1.</translation>
    </message>
    <message>
        <source>Borderline: %1. No fault.</source>
        <extracomment>engine.borderline</extracomment>
        <translation>En el límite: %1. Sin fallo.</translation>
    </message>
    <message>
        <source>Borderline: %1. Which tester it was decides whether that is a fault: name it.</source>
        <extracomment>engine.borderline_tester_first</extracomment>
        <translation>En el límite: %1. Si eso es una avería depende de qué comprobador fue: nombrarlo.</translation>
    </message>
    <message>
        <source>%1 of %2 cylinders measured, no fault so far.</source>
        <extracomment>engine.not_all_measured</extracomment>
        <translation>%1 de %2 cilindros medidos, sin fallo hasta ahora.</translation>
    </message>
    <message>
        <source>A question about %1 comes before any verdict.</source>
        <extracomment>engine.questions_first</extracomment>
        <translation>Una pregunta sobre %1 va antes que cualquier veredicto.</translation>
    </message>
    <message>
        <source>Every cylinder seals well yet reads low: look at valve timing, throttle, starter speed and hose.</source>
        <extracomment>engine.low_but_seals</extracomment>
        <translation>Todos los cilindros sellan bien y, sin embargo, dan poco: revisar distribución, mariposa, velocidad del motor de arranque y manguera.</translation>
    </message>
    <message>
        <source>Cylinders %1 and %2 are both low: look at the joint between them.</source>
        <extracomment>engine.joint</extracomment>
        <translation>Los cilindros %1 y %2 están bajos los dos: mirar la junta entre ambos.</translation>
    </message>
    <message>
        <source>Every cylinder reads low. Before blaming them all: throttle held open, starter speed, gauge and hose, valve timing.</source>
        <extracomment>engine.low_everywhere</extracomment>
        <translation>Todos los cilindros dan poco. Antes de culparlos a todos: mariposa abierta, velocidad del motor de arranque, manómetro y manguera, distribución.</translation>
    </message>
    <message>
        <source>Every cylinder reads low. Before blaming them all: air filter, starter speed, gauge and hose, valve timing.</source>
        <extracomment>engine.low_everywhere_diesel</extracomment>
        <translation>Todos los cilindros dan poco. Antes de culparlos a todos: filtro de aire, velocidad del motor de arranque, manómetro y manguera, distribución.</translation>
    </message>
    <message>
        <source>Every cylinder seals well yet reads low: look at valve timing, air filter, starter speed and hose.</source>
        <extracomment>engine.low_but_seals_diesel</extracomment>
        <translation>Todos los cilindros sellan bien y, sin embargo, dan poco: revisar distribución, filtro de aire, velocidad del motor de arranque y manguera.</translation>
    </message>
    <message>
        <source>The crankcase does not hold its pressure.</source>
        <extracomment>engine.crankcase</extracomment>
        <translation>El cárter no mantiene su presión.</translation>
    </message>
    <message>
        <source>The crankcase of %1 does not hold its pressure.</source>
        <extracomment>engine.crankcase_of</extracomment>
        <translation>El cárter de %1 no mantiene su presión.</translation>
    </message>
    <message>
        <source>Oil raised the reading by %1, %2 or more: rings.</source>
        <extracomment>thumb.wet_rings</extracomment>
        <translation>El aceite subió la lectura %1, %2 o más: segmentos.</translation>
    </message>
    <message>
        <source>Oil raised the reading by %1, less than %2: valves, a broken ring or the head gasket.</source>
        <extracomment>thumb.wet_no_rise</extracomment>
        <translation>El aceite subió la lectura %1, menos de %2: válvulas, un segmento roto o la junta de culata.</translation>
    </message>
    <message>
        <source>Oil raised the reading by %1, less than %2: a broken ring or the head gasket.</source>
        <extracomment>thumb.wet_no_rise_two_stroke</extracomment>
        <translation>El aceite subió la lectura %1, menos de %2: un segmento roto o la junta de culata.</translation>
    </message>
    <message>
        <source>Gauge and repeats can&apos;t tell this rise from %1 with certainty.</source>
        <extracomment>thumb.wet_within_gauge</extracomment>
        <translation>El manómetro y las repeticiones no distinguen con seguridad esta subida de %1.</translation>
    </message>
    <message>
        <source>The rise says little: the volume of the oil alone explains up to %1.</source>
        <extracomment>thumb.wet_volume_explains</extracomment>
        <translation>La subida dice poco: el volumen del aceite por sí solo explica hasta %1.</translation>
    </message>
    <message>
        <source>Loudest exit: %1 (%2). That means %3.</source>
        <extracomment>thumb.loudest_exit</extracomment>
        <translation>Salida más fuerte: %1 (%2). Eso significa: %3.</translation>
    </message>
    <message>
        <source>Loudest exit: plug hole of cylinder %1 (%2). That means the joint to cylinder %1.</source>
        <extracomment>thumb.loudest_exit_joint</extracomment>
        <translation>Salida más fuerte: agujero de bujía del cilindro %1 (%2). Eso significa la junta con el cilindro %1.</translation>
    </message>
    <message>
        <source>Loudest exit: %1 (%2). Some air past the rings is normal; this cylinder seals well.</source>
        <extracomment>thumb.ring_air_normal</extracomment>
        <translation>Salida más fuerte: %1 (%2). Algo de aire por los segmentos es normal; este cilindro sella bien.</translation>
    </message>
    <message>
        <source>Loudest exit: %1 (%2). In this engine it names no single path.</source>
        <extracomment>thumb.loudest_exit_no_path</extracomment>
        <translation>Salida más fuerte: %1 (%2). En este motor no señala un camino único.</translation>
    </message>
    <message>
        <source>%1 and %2 are equally loud: no single path stands out.</source>
        <extracomment>thumb.exits_tie</extracomment>
        <translation>%1 y %2 suenan igual de fuerte: ningún camino destaca.</translation>
    </message>
    <message>
        <source>Air is lost, yet nothing was heard at any exit. Try hose, hand and soapy water.</source>
        <extracomment>thumb.nothing_heard</extracomment>
        <translation>Se pierde aire y, sin embargo, no se oyó nada en ninguna salida. Probar con manguera, mano y agua jabonosa.</translation>
    </message>
    <message>
        <source>A gasket sign may also be a crack in head or block.</source>
        <extracomment>thumb.gasket_or_crack</extracomment>
        <translation>Un indicio de junta también puede ser una grieta en culata o bloque.</translation>
    </message>
    <message>
        <source>First puff low (%1 of what it should reach), then it builds up: rings.</source>
        <extracomment>thumb.first_puff_rings</extracomment>
        <translation>Primera embolada baja (%1 de lo que debería alcanzar), después sube: segmentos.</translation>
    </message>
    <message>
        <source>First puff low (%1 of what it should reach) and it does not build up: valves.</source>
        <extracomment>thumb.first_puff_valves</extracomment>
        <translation>Primera embolada baja (%1 de lo que debería alcanzar) y no sube: válvulas.</translation>
    </message>
    <message>
        <source>First puff low (%1 of what it should reach): rings or head gasket.</source>
        <extracomment>thumb.first_puff_low_two_stroke</extracomment>
        <translation>Primera embolada baja (%1 de lo que debería alcanzar): segmentos o junta de culata.</translation>
    </message>
    <message>
        <source>Cylinders %1 and %2 are neighbours and both low: the joint between them.</source>
        <extracomment>thumb.joint</extracomment>
        <translation>Los cilindros %1 y %2 son vecinos y están bajos los dos: la junta entre ambos.</translation>
    </message>
    <message>
        <source>Two rules of thumb disagree: one says %1, the other %2.</source>
        <extracomment>contra.rules_disagree</extracomment>
        <translation>Dos reglas prácticas no concuerdan: una dice %1, la otra %2.</translation>
    </message>
    <message>
        <source>It reads low (%1) yet seals well (leakage %2): look at valve timing, throttle, starter speed and hose.</source>
        <extracomment>contra.low_but_seals</extracomment>
        <translation>Da poco (%1) y, sin embargo, sella bien (pérdida %2): revisar distribución, mariposa, velocidad del motor de arranque y manguera.</translation>
    </message>
    <message>
        <source>It reads %1, in range, yet leaks %2: a leak that only shows at rest, a wrong TDC, or a leaking adapter.</source>
        <extracomment>contra.leaks_but_reads_well</extracomment>
        <translation>Da %1, en rango, y, sin embargo, pierde %2: una fuga que solo se ve en reposo, un PMS equivocado o un adaptador que pierde.</translation>
    </message>
    <message>
        <source>Cylinder %1 held nothing of %2. A hole that large is rarely a leak: is the adapter tight, the hose on, the right TDC found?</source>
        <extracomment>misfit.held_nothing</extracomment>
        <translation>El cilindro %1 no mantuvo nada de %2. Un agujero tan grande rara vez es una fuga: ¿sella el adaptador, está puesta la manguera, se encontró el PMS correcto?</translation>
    </message>
    <message>
        <source>Cylinder %1 built up nothing while cranking (%2), yet it holds air (leakage %3). Look at adapter, hose and valve core, and whether its valves move.</source>
        <extracomment>misfit.built_nothing</extracomment>
        <translation>El cilindro %1 no acumuló nada al girar (%2) y, sin embargo, mantiene aire (fuga %3). Revisar adaptador, manguera y obús de la válvula, y si sus válvulas se mueven.</translation>
    </message>
    <message>
        <source>Cylinder %1 read less with oil in it (%3) than dry (%2). Oil can&apos;t do that: one of the two readings is not right.</source>
        <extracomment>misfit.wet_below_dry</extracomment>
        <translation>El cilindro %1 marcó menos con aceite (%3) que en seco (%2). El aceite no puede hacer eso: una de las dos lecturas no es correcta.</translation>
    </message>
    <message>
        <source>Cylinder %1 read %2 dry and %3 with oil in it. Oil alone can&apos;t do that much: one of the two readings is not right.</source>
        <extracomment>misfit.wet_far_above</extracomment>
        <translation>El cilindro %1 marcó %2 en seco y %3 con aceite. El aceite solo no puede tanto: una de las dos lecturas no es correcta.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses only %2, yet air was heard strongly at several exits. Both can&apos;t be right.</source>
        <extracomment>misfit.loud_but_tight</extracomment>
        <translation>El cilindro %1 pierde solo %2 y, sin embargo, se oyó aire fuerte en varias salidas. Las dos cosas no pueden ser ciertas.</translation>
    </message>
    <message>
        <source>Cylinder %1 loses %2, yet nothing was heard at any exit. So much air must come out somewhere: look at adapter and hose.</source>
        <extracomment>misfit.silent_but_leaks</extracomment>
        <translation>El cilindro %1 pierde %2 y, sin embargo, no se oyó nada en ninguna salida. Tanto aire tiene que salir por algún sitio: revisar adaptador y manguera.</translation>
    </message>
    <message>
        <source>The photo of the %1 reads %3, and %2 was typed: look at the photo and settle it.</source>
        <extracomment>contra.photo_differs</extracomment>
        <translation>La foto (%1) marca %3, y se escribió %2: mirar la foto y aclararlo.</translation>
    </message>
    <message>
        <source>Air at intake and exhaust with very little held: is cylinder %1 at the TDC between exhaust and intake, both valves open? Turn the crank one full turn and test again.</source>
        <extracomment>question.tdc</extracomment>
        <translation>Aire por admisión y escape y muy poca presión retenida: ¿está el cilindro %1 en el PMS entre escape y admisión, con las dos válvulas abiertas? Dar una vuelta completa al cigüeñal y probar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 held only %2 of %3: did it stand at its TDC on compression, and did the crank stay there? Turn the crank one full turn and test again.</source>
        <extracomment>question.tdc_held</extracomment>
        <translation>El cilindro %1 solo mantuvo %2 de %3: ¿estaba en su PMS de compresión, y se quedó ahí el cigüeñal? Dar una vuelta completa al cigüeñal y probar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 held %2 of %3, more than was set: that can&apos;t be, and it is not counted. Test again, and delete the wrong one.</source>
        <extracomment>question.over_set</extracomment>
        <translation>El cilindro %1 mantuvo %2 de %3, más de lo ajustado: no puede ser y no cuenta. Repetir la prueba y borrar la lectura equivocada.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: %3 was read after oil had gone in. It is kept, and not counted with what was read before the oil.</source>
        <extracomment>question.after_oil</extracomment>
        <translation>Cilindro %1, %2: %3 se leyó después de echar aceite. Se guarda, y no se cuenta con lo leído antes del aceite.</translation>
    </message>
    <message>
        <source>Cylinder %1 held %2, and %3 when it was tested again. Both can&apos;t be right: %2 looks like the wrong TDC and is not counted. If %3 was the wrong one, delete it or test again.</source>
        <extracomment>question.very_low_first</extracomment>
        <translation>El cilindro %1 mantuvo %2, y %3 al probarlo de nuevo. No pueden ser ciertas las dos: %2 parece el PMS equivocado y no cuenta. Si la equivocada es %3, borrarla o probar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 held %3, and then only %2. Both can&apos;t be right: %2 looks like the wrong TDC and is not counted until it is settled. Turn the crank one full turn and test again; delete the wrong one.</source>
        <extracomment>question.very_low_last</extracomment>
        <translation>El cilindro %1 mantuvo %3 y después solo %2. No pueden ser ciertas las dos: %2 parece el PMS equivocado y no cuenta hasta aclararlo. Dar una vuelta completa al cigüeñal y probar de nuevo; borrar la equivocada.</translation>
    </message>
    <message>
        <source>Is %3 enough for %2 of cylinder %1? The engine&apos;s manual says. Put the wanted range on the engine card, under the valves: no verdict on a valve before it is known.</source>
        <extracomment>question.clearance_wanted</extracomment>
        <translation>¿Basta %3 para %2 del cilindro %1? Lo dice el manual del motor. Poner el rango nominal en la ficha del motor, en las válvulas: ningún veredicto sobre una válvula antes de saberlo.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, its siblings about %5. Check and adjust it first, the engine&apos;s manual says how much: no verdict on the valve before that.</source>
        <extracomment>question.clearance_siblings</extracomment>
        <translation>Cilindro %1, %2 %3: %4, las demás cerca de %5. Primero revisarla y ajustarla, el manual del motor dice cuánto: ningún veredicto sobre la válvula antes.</translation>
    </message>
    <message>
        <source>At an earlier visit a leak-down test found a fault at %1, and none was done there since: what this visit reads does not take that back.</source>
        <extracomment>question.earlier_fault</extracomment>
        <translation>En una visita anterior una prueba de estanqueidad encontró un fallo en %1, y desde entonces no se hizo otra allí: lo que da esta visita no lo anula.</translation>
    </message>
    <message>
        <source>The clearance of %2 in cylinder %1 is not recorded. No verdict on a valve before it is.</source>
        <extracomment>question.clearance</extracomment>
        <translation>El juego de %2 en el cilindro %1 no está registrado. Ningún veredicto sobre una válvula antes de que lo esté.</translation>
    </message>
    <message>
        <source>The decompressor of cylinder %1 was at work: a low reading is no proof of a leak. Do a leak-down test.</source>
        <extracomment>question.decompressor</extracomment>
        <translation>El descompresor del cilindro %1 actuaba: una lectura baja no es prueba de una fuga. Hacer una prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>Has this engine a decompressor? With one at work, cylinders read %2 to %3, as cylinder %1 does. A leak-down test settles it.</source>
        <extracomment>question.decompressor_unknown</extracomment>
        <translation>¿Tiene este motor un descompresor? Si actúa uno, los cilindros dan de %2 a %3, como el cilindro %1. Una prueba de estanqueidad lo aclara.</translation>
    </message>
    <message>
        <source>Oil went into cylinder %1 before its leak-down test: oiled rings leak less than they will.</source>
        <extracomment>question.oil_before_leak_down</extracomment>
        <translation>Se echó aceite en el cilindro %1 antes de su prueba de estanqueidad: los segmentos con aceite pierden menos de lo que perderán.</translation>
    </message>
    <message>
        <source>Oil was put into a diesel: the reading is not judged. The chamber is small and oil can lock it.</source>
        <extracomment>question.wet_on_diesel</extracomment>
        <translation>Se echó aceite en un diésel: la lectura no se juzga. La cámara es pequeña y el aceite puede bloquear el motor.</translation>
    </message>
    <message>
        <source>Cylinder %1 has a wet test but no dry one: the rise is not known.</source>
        <extracomment>question.wet_without_dry</extracomment>
        <translation>El cilindro %1 tiene una prueba húmeda pero ninguna en seco: no se sabe la subida.</translation>
    </message>
    <message>
        <source>Cylinder %1: the dry test was done in the state &quot;%2&quot;, the wet test in &quot;%3&quot;. More than the oil has changed in between: the rise says nothing of the rings.</source>
        <extracomment>question.wet_other_state</extracomment>
        <translation>Cilindro %1: la prueba en seco se hizo en el estado «%2» y la prueba húmeda en «%3». Entre ambas cambió más que el aceite: el aumento no dice nada de los segmentos.</translation>
    </message>
    <message>
        <source>Cylinder %1 was listened to in the state &quot;%2&quot;. A part that the air may have come from was touched since: what was heard does not count for what leaks now. Listen again.</source>
        <extracomment>question.heard_earlier</extracomment>
        <translation>El cilindro %1 se escuchó en el estado «%2». Desde entonces se tocó una pieza de la que pudo venir el aire: lo oído no cuenta para lo que fuga ahora. Escuchar de nuevo.</translation>
    </message>
    <message>
        <source>Cylinder %1 reads %2, above the normal range: oil or carbon in the chamber, or the wrong gauge or limits?</source>
        <extracomment>question.above_high</extracomment>
        <translation>El cilindro %1 da %2, por encima del rango normal: ¿aceite o carbonilla en la cámara, o manómetro o límites equivocados?</translation>
    </message>
    <message>
        <source>Cylinders %1 and %2 stand at top dead centre together. Air in the plug hole of %2 means the joint only if its valves are shut: turn %2 away from overlap or look at its rockers.</source>
        <extracomment>question.companion</extracomment>
        <translation>Los cilindros %1 y %2 están a la vez en el punto muerto superior. El aire en el agujero de bujía del %2 significa la junta solo si sus válvulas están cerradas: girar el %2 fuera del cruce de válvulas o mirar sus balancines.</translation>
    </message>
    <message>
        <source>While cylinder %1 stands at its TDC, cylinder %2 has its valves open on one side. What leaks past %3 of cylinder %1 can come out of the plug hole of %2 through the manifold: listen at that valve&apos;s exit before calling it the joint.</source>
        <extracomment>question.neighbour_open</extracomment>
        <translation>Mientras el cilindro %1 está en su PMS, el cilindro %2 tiene abiertas las válvulas de un lado. Lo que escapa del cilindro %1 por aquí: %3, puede salir por un colector unido y el agujero de bujía de %2: escuchar en la salida de esa válvula antes de culpar a la junta.</translation>
    </message>
    <message>
        <source>While cylinder %1 stands at its TDC, the valves of cylinder %2 may not be shut: look at its rockers. What leaks past %3 of cylinder %1 can then come out of the plug hole of %2 through the manifold: listen at that valve&apos;s exit before calling it the joint.</source>
        <extracomment>question.neighbour_may_be_open</extracomment>
        <translation>Mientras el cilindro %1 está en su PMS, las válvulas del cilindro %2 quizá no estén cerradas: mirar sus balancines. Lo que escapa del cilindro %1 por aquí: %3, puede entonces salir por un colector unido y el agujero de bujía de %2: escuchar en la salida de esa válvula antes de culpar a la junta.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: no clearance. The valve is held open: adjust first.</source>
        <extracomment>clearance.none</extracomment>
        <translation>Cilindro %1, %2 %3: sin juego. La válvula queda abierta: ajustar primero.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, less than the least of %5. Adjust first.</source>
        <extracomment>clearance.too_small</extracomment>
        <translation>Cilindro %1, %2 %3: %4, menos que el mínimo de %5. Ajustar primero.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4 found, and nothing to hold it against. Put the wanted clearance from the engine&apos;s manual on the engine card, under the valves.</source>
        <extracomment>clearance.no_range</extracomment>
        <translation>Cilindro %1, %2 %3: %4 encontrado, y nada con que compararlo. Poner el juego nominal del manual del motor en la ficha del motor, en las válvulas.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, far less than the %5 of its siblings. Check and adjust it first; the engine&apos;s manual says how much.</source>
        <extracomment>clearance.siblings</extracomment>
        <translation>Cilindro %1, %2 %3: %4, mucho menos que los %5 de las demás. Primero revisarla y ajustarla; el manual del motor dice cuánto.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: %4, more than the most of %5: noise, but the valve seats.</source>
        <extracomment>clearance.too_large</extracomment>
        <translation>Cilindro %1, %2 %3: %4, más que el máximo de %5: ruido, pero la válvula asienta.</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3: was too small and is put right. Readings from before don&apos;t count for this valve.</source>
        <extracomment>clearance.adjusted</extracomment>
        <translation>Cilindro %1, %2 %3: era demasiado pequeño y está corregido. Las lecturas anteriores no cuentan para esta válvula.</translation>
    </message>
    <message>
        <source>The crankcase holds: %1 after %3, at least %2 is asked.</source>
        <extracomment>crankcase.holds</extracomment>
        <translation>El cárter mantiene la presión: %1 después de %3, se pide al menos %2.</translation>
    </message>
    <message>
        <source>The crankcase ended at %1, at least %2 is asked; how long it was held is not noted.</source>
        <extracomment>crankcase.holds_no_time</extracomment>
        <translation>La presión del cárter acabó en %1, se pide al menos %2; no está anotado cuánto tiempo se mantuvo.</translation>
    </message>
    <message>
        <source>The crankcase fell to %1; at least %2 is asked. Crank seals, base gasket, reed or rotary valve.</source>
        <extracomment>crankcase.loses</extracomment>
        <translation>La presión del cárter bajó a %1; se pide al menos %2. Retenes del cigüeñal, junta de base, láminas o válvula rotativa.</translation>
    </message>
    <message>
        <source>The crankcase ended at %1, so close to %2 that the gauge can&apos;t tell them apart.</source>
        <extracomment>crankcase.close</extracomment>
        <translation>La presión del cárter acabó en %1, tan cerca de %2 que el manómetro no puede distinguirlos.</translation>
    </message>
    <message>
        <source>The crankcase ended at %1, which may lie on either side of the %2 asked: the gauge&apos;s doubt of ±%3 reaches across it. To make it smaller: %4.</source>
        <extracomment>crankcase.unsure</extracomment>
        <translation>El cárter acabó en %1, que puede estar a un lado u otro de los %2 exigidos: la incertidumbre del manómetro, ±%3, los sobrepasa. Para reducirla: %4.</translation>
    </message>
    <message>
        <source>The crankcase was held for %1 only; the maker asks for %2.</source>
        <extracomment>crankcase.too_short</extracomment>
        <translation>La presión del cárter se mantuvo solo %1; el fabricante pide %2.</translation>
    </message>
    <message>
        <source>The crankcase went from %1 to %2, nobody noted in how long; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>crankcase.no_limit</extracomment>
        <translation>La presión del cárter pasó de %1 a %2, sin anotar en cuánto tiempo; la ficha no tiene límite para ello. El manual del motor lo tiene.</translation>
    </message>
    <message>
        <source>The crankcase went from %1 to %2 in %3; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>crankcase.no_limit_timed</extracomment>
        <translation>La presión del cárter pasó de %1 a %2 en %3; la ficha no tiene límite para ello. El manual del motor lo tiene.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 holds: %2 after %4, at least %3 is asked.</source>
        <extracomment>chamber.holds</extracomment>
        <translation>El cárter del cilindro %1 mantiene la presión: %2 después de %4, se pide al menos %3.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 ended at %2, at least %3 is asked; how long it was held is not noted.</source>
        <extracomment>chamber.holds_no_time</extracomment>
        <translation>La presión del cárter del cilindro %1 acabó en %2, se pide al menos %3; no está anotado cuánto tiempo se mantuvo.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 fell to %2; at least %3 is asked. Its crank seals, also those towards its neighbours, base gasket, reed or rotary valve.</source>
        <extracomment>chamber.loses</extracomment>
        <translation>La presión del cárter del cilindro %1 bajó a %2; se pide al menos %3. Sus retenes del cigüeñal, también los que dan a los vecinos, junta de base, láminas o válvula rotativa.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 ended at %2, so close to %3 that the gauge can&apos;t tell them apart.</source>
        <extracomment>chamber.close</extracomment>
        <translation>La presión del cárter del cilindro %1 acabó en %2, tan cerca de %3 que el manómetro no puede distinguirlos.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 ended at %2, which may lie on either side of the %3 asked: the gauge&apos;s doubt of ±%4 reaches across it. To make it smaller: %5.</source>
        <extracomment>chamber.unsure</extracomment>
        <translation>El cárter del cilindro %1 acabó en %2, que puede estar a un lado u otro de los %3 exigidos: la incertidumbre del manómetro, ±%4, los sobrepasa. Para reducirla: %5.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 was held for %2 only; the maker asks for %3.</source>
        <extracomment>chamber.too_short</extracomment>
        <translation>La presión del cárter del cilindro %1 se mantuvo solo %2; el fabricante pide %3.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 went from %2 to %3, nobody noted in how long; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>chamber.no_limit</extracomment>
        <translation>La presión del cárter del cilindro %1 pasó de %2 a %3, sin anotar en cuánto tiempo; la ficha no tiene límite para ello. El manual del motor lo tiene.</translation>
    </message>
    <message>
        <source>The crankcase of cylinder %1 went from %2 to %3 in %4; the card has no limit for it. The engine&apos;s manual has one.</source>
        <extracomment>chamber.no_limit_timed</extracomment>
        <translation>La presión del cárter del cilindro %1 pasó de %2 a %3 en %4; la ficha no tiene límite para ello. El manual del motor lo tiene.</translation>
    </message>
    <message>
        <source>Factory limit here</source>
        <extracomment>from:limit</extracomment>
        <translation>Límite de fábrica aquí</translation>
    </message>
    <message>
        <source>The limit on the engine card, scaled by the air pressure at the shop against sea level.</source>
        <extracomment>from:limit</extracomment>
        <translation>El límite de la ficha del motor, convertido según la presión del aire en el taller frente al nivel del mar.</translation>
    </message>
    <message>
        <source>Reading</source>
        <comment>from:mean</comment>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>The mean of the readings that count, with the gauge&apos;s error and their scatter.</source>
        <extracomment>from:mean</extracomment>
        <translation>La media de las lecturas que cuentan, con el error del manómetro y su dispersión.</translation>
    </message>
    <message>
        <source>First puff</source>
        <comment>from:first_share</comment>
        <translation>Primera embolada</translation>
    </message>
    <message>
        <source>First puff divided by the final reading.</source>
        <extracomment>from:first_share</extracomment>
        <translation>Primera embolada dividida entre la lectura final.</translation>
    </message>
    <message>
        <source>What makers ask</source>
        <extracomment>from:typical</extracomment>
        <translation>Lo que piden los fabricantes</translation>
    </message>
    <message>
        <source>Makers&apos; usual range for such an engine, scaled by the air pressure at the shop.</source>
        <extracomment>from:typical</extracomment>
        <translation>El rango usual de los fabricantes para un motor así, convertido según la presión del aire en el taller.</translation>
    </message>
    <message>
        <source>Lowest against highest</source>
        <extracomment>from:lowest_of_highest</extracomment>
        <translation>Más bajo frente a más alto</translation>
    </message>
    <message>
        <source>The lowest cylinder divided by the highest.</source>
        <extracomment>from:lowest_of_highest</extracomment>
        <translation>El cilindro más bajo dividido entre el más alto.</translation>
    </message>
    <message>
        <source>Average</source>
        <extracomment>from:average</extracomment>
        <translation>Media</translation>
    </message>
    <message>
        <source>The average of all cylinders, and how far below it each one lies.</source>
        <extracomment>from:average</extracomment>
        <translation>La media de todos los cilindros, y cuánto está cada uno por debajo de ella.</translation>
    </message>
    <message>
        <source>Difference</source>
        <extracomment>from:difference</extracomment>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>The highest cylinder less the lowest.</source>
        <extracomment>from:difference</extracomment>
        <translation>El cilindro más alto menos el más bajo.</translation>
    </message>
    <message>
        <source>Leakage</source>
        <extracomment>from:leakage</extracomment>
        <translation>Pérdida</translation>
    </message>
    <message>
        <source>What was lost of the set pressure: set less held, divided by set.</source>
        <extracomment>from:leakage</extracomment>
        <translation>Lo que se perdió de la presión ajustada: ajustada menos retenida, dividido entre la ajustada.</translation>
    </message>
    <message>
        <source>The same leak on another tester</source>
        <extracomment>from:converted</extracomment>
        <translation>La misma fuga en otro comprobador</translation>
    </message>
    <message>
        <source>The leak is taken as a hole: what passes the restrictor passes the hole. Its size is found from your tester, then the other tester is put before the same hole.</source>
        <extracomment>from:converted</extracomment>
        <translation>La fuga se toma como un agujero: lo que pasa por el restrictor pasa por el agujero. Su tamaño se saca del comprobador propio, y después se pone el otro comprobador ante el mismo agujero.</translation>
    </message>
    <message>
        <source>The same leak on another tester, as a narrow gap</source>
        <extracomment>from:converted_laminar</extracomment>
        <translation>La misma fuga en otro comprobador, como rendija estrecha</translation>
    </message>
    <message>
        <source>The leak is taken as a long narrow gap instead of a hole, its size found from your tester.</source>
        <extracomment>from:converted_laminar</extracomment>
        <translation>La fuga se toma como una rendija larga y estrecha en lugar de un agujero; su tamaño se saca del comprobador propio.</translation>
    </message>
    <message>
        <source>Leak area</source>
        <extracomment>from:leak_area</extracomment>
        <translation>Área de fuga</translation>
    </message>
    <message>
        <source>The hole that passes as much air as the restrictor does.</source>
        <extracomment>from:leak_area</extracomment>
        <translation>El agujero que deja pasar tanto aire como el restrictor.</translation>
    </message>
    <message>
        <source>Equivalent hole</source>
        <extracomment>from:leak_hole</extracomment>
        <translation>Agujero equivalente</translation>
    </message>
    <message>
        <source>The round hole of the leak&apos;s area.</source>
        <extracomment>from:leak_hole</extracomment>
        <translation>El agujero redondo con el área de la fuga.</translation>
    </message>
    <message>
        <source>Leak flow</source>
        <extracomment>from:flow</extracomment>
        <translation>Caudal de fuga</translation>
    </message>
    <message>
        <source>Air through the leak at the held pressure, as litres of air at 20 °C and 1 bar.</source>
        <extracomment>from:flow</extracomment>
        <translation>Aire que pasa por la fuga a la presión retenida, como litros de aire a 20 °C y 1 bar.</translation>
    </message>
    <message>
        <source>Wet rise</source>
        <extracomment>from:rise</extracomment>
        <translation>Subida húmeda</translation>
    </message>
    <message>
        <source>The wet reading against the dry one.</source>
        <extracomment>from:rise</extracomment>
        <translation>La lectura húmeda frente a la seca.</translation>
    </message>
    <message>
        <source>Hold time</source>
        <comment>from:hold</comment>
        <translation>Tiempo de retención</translation>
    </message>
    <message>
        <source>How long the pressure was held.</source>
        <extracomment>from:hold</extracomment>
        <translation>Cuánto tiempo se mantuvo la presión.</translation>
    </message>
    <message>
        <source>First puff rule</source>
        <extracomment>from:first_puff</extracomment>
        <translation>Regla de la primera embolada</translation>
    </message>
    <message>
        <source>First and last of several strokes against what the cylinder should reach.</source>
        <extracomment>from:first_puff</extracomment>
        <translation>Primera y última de varias carreras frente a lo que el cilindro debería alcanzar.</translation>
    </message>
    <message>
        <source>Loudest exit</source>
        <extracomment>from:loudest_exit</extracomment>
        <translation>Salida más fuerte</translation>
    </message>
    <message>
        <source>Where the air comes out names the part that leaks.</source>
        <extracomment>from:loudest_exit</extracomment>
        <translation>El lugar por donde sale el aire indica la pieza que pierde.</translation>
    </message>
    <message>
        <source>What the model expects</source>
        <extracomment>from:healthy</extracomment>
        <translation>Lo que espera el modelo</translation>
    </message>
    <message>
        <source>Strokes of a cylinder that seals well, worked out from the engine card for this gauge at sea level and scaled by the air pressure at the shop. The range is the doubt of what went in.</source>
        <extracomment>from:healthy</extracomment>
        <translation>Carreras de un cilindro que sella bien, calculadas con la ficha del motor para este manómetro al nivel del mar y convertidas según la presión del aire en el taller. El rango es la incertidumbre de los datos usados.</translation>
    </message>
    <message>
        <source>First puff that the model expects</source>
        <extracomment>from:healthy_first_share</extracomment>
        <translation>Primera embolada que espera el modelo</translation>
    </message>
    <message>
        <source>First stroke against the last, of a cylinder that seals well, on this gauge.</source>
        <extracomment>from:healthy_first_share</extracomment>
        <translation>Primera carrera frente a la última, de un cilindro que sella bien, con este manómetro.</translation>
    </message>
    <message>
        <source>What oil&apos;s volume explains</source>
        <extracomment>from:oil_rise</extracomment>
        <translation>Lo que explica el volumen del aceite</translation>
    </message>
    <message>
        <source>Oil that stays makes the chamber smaller, and the reading higher, with no ring sealed by it.</source>
        <extracomment>from:oil_rise</extracomment>
        <translation>El aceite que se queda hace la cámara más pequeña, y la lectura más alta, sin que ningún segmento selle mejor por ello.</translation>
    </message>
    <message>
        <source>What makers say of such a leak</source>
        <extracomment>from:bands</extracomment>
        <translation>Lo que dicen los fabricantes de una fuga así</translation>
    </message>
    <message>
        <source>The leak is converted to the tester that each band was written for, and judged there.</source>
        <extracomment>from:bands</extracomment>
        <translation>La fuga se convierte al comprobador para el que se escribió cada banda, y se juzga allí.</translation>
    </message>
    <message>
        <source>Difference between cylinders</source>
        <extracomment>from:leak_spread</extracomment>
        <translation>Diferencia entre cilindros</translation>
    </message>
    <message>
        <source>Every cylinder&apos;s leakage on the tester that the rule was written for.</source>
        <extracomment>from:leak_spread</extracomment>
        <translation>La pérdida de cada cilindro en el comprobador para el que se escribió la regla.</translation>
    </message>
    <message>
        <source>Put right for the limit</source>
        <extracomment>from:put_right</extracomment>
        <translation>Corregida para el límite</translation>
    </message>
    <message>
        <source>Limits are meant for a warm engine, cranked well, with the throttle open and the check valve at the plug hole. The model works out what each difference took off, and that is put back.</source>
        <extracomment>from:put_right</extracomment>
        <translation>Los límites valen para un motor caliente, bien girado, con la mariposa abierta y la válvula antirretorno en el agujero de bujía. El modelo calcula cuánto quitó cada diferencia, y eso se vuelve a sumar.</translation>
    </message>
    <message>
        <source>How full the chamber is</source>
        <extracomment>from:oil_fill</extracomment>
        <translation>Lo llena que está la cámara</translation>
    </message>
    <message>
        <source>The oil put in against the chamber at top dead centre.</source>
        <extracomment>from:oil_fill</extracomment>
        <translation>El aceite echado frente a la cámara en el punto muerto superior.</translation>
    </message>
    <message>
        <source>What the hose takes off</source>
        <extracomment>from:hose_loss</extracomment>
        <translation>Lo que quita la manguera</translation>
    </message>
    <message>
        <source>Air before the check valve is compressed along with the chamber on every stroke and never reaches the gauge.</source>
        <extracomment>from:hose_loss</extracomment>
        <translation>El aire antes de la válvula antirretorno se comprime junto con la cámara en cada carrera y nunca llega al manómetro.</translation>
    </message>
    <message>
        <source>Without the hose</source>
        <extracomment>from:without_hose</extracomment>
        <translation>Sin la manguera</translation>
    </message>
    <message>
        <source>The reading, put up by what the model says the volume before the check valve takes off.</source>
        <extracomment>from:without_hose</extracomment>
        <translation>La lectura, aumentada en lo que, según el modelo, quita el volumen antes de la válvula antirretorno.</translation>
    </message>
    <message>
        <source>Law of the leak</source>
        <extracomment>from:leak_law</extracomment>
        <translation>Ley de la fuga</translation>
    </message>
    <message>
        <source>How the leak&apos;s area, taken as a hole, changes with the pressure held: not at all for a hole, growing for a narrow gap.</source>
        <extracomment>from:leak_law</extracomment>
        <translation>Cómo cambia el área de la fuga, tomada como un agujero, con la presión retenida: nada en un agujero, crece en una rendija estrecha.</translation>
    </message>
    <message>
        <source>Restrictor by a drilled hole</source>
        <extracomment>from:restrictor</extracomment>
        <translation>Restrictor con un agujero taladrado</translation>
    </message>
    <message>
        <source>What passes the restrictor passes the hole, whose size is known.</source>
        <comment>from:restrictor</comment>
        <translation>Lo que pasa por el restrictor pasa por el agujero, cuyo tamaño se conoce.</translation>
    </message>
    <message>
        <source>Standard atmosphere</source>
        <extracomment>from:standard_atmosphere</extracomment>
        <translation>Atmósfera estándar</translation>
    </message>
    <message>
        <source>The air pressure that goes with an altitude on an average day.</source>
        <extracomment>from:standard_atmosphere</extracomment>
        <translation>La presión del aire que corresponde a una altitud en un día medio.</translation>
    </message>
    <message>
        <source>Torque on the crank</source>
        <extracomment>from:torque</extracomment>
        <translation>Par en el cigüeñal</translation>
    </message>
    <message>
        <source>The pressure in the cylinder times what its volume grows by as the crank turns.</source>
        <extracomment>from:torque</extracomment>
        <translation>La presión en el cilindro por lo que crece su volumen al girar el cigüeñal.</translation>
    </message>
    <message>
        <source>Throttle closed</source>
        <extracomment>from:throttle_loss</extracomment>
        <translation>Mariposa cerrada</translation>
    </message>
    <message>
        <source>The model&apos;s reading with less air in the cylinder, against that with the throttle open.</source>
        <extracomment>from:throttle_loss</extracomment>
        <translation>La lectura del modelo con menos aire en el cilindro, frente a la de mariposa abierta.</translation>
    </message>
    <message>
        <source>Slow cranking</source>
        <extracomment>from:slow_loss</extracomment>
        <translation>Arranque lento</translation>
    </message>
    <message>
        <source>The model&apos;s reading at the slow speed against that at the usual one.</source>
        <extracomment>from:slow_loss</extracomment>
        <translation>La lectura del modelo a la velocidad lenta frente a la de la velocidad usual.</translation>
    </message>
    <message>
        <source>What the other cranking speed takes off</source>
        <extracomment>from:speed_loss</extracomment>
        <translation>Lo que quita la otra velocidad de arranque</translation>
    </message>
    <message>
        <source>The model&apos;s reading at the other cranking speed against that at this one.</source>
        <extracomment>from:speed_loss</extracomment>
        <translation>La lectura del modelo a la otra velocidad de arranque frente a la de esta.</translation>
    </message>
    <message>
        <source>Reading at the other cranking speed</source>
        <extracomment>from:slow_reading</extracomment>
        <translation>Lectura a la otra velocidad de arranque</translation>
    </message>
    <message>
        <source>What a cylinder that seals well reads, less what the other speed takes off.</source>
        <extracomment>from:slow_reading</extracomment>
        <translation>Lo que marca un cilindro que sella bien, menos lo que quita la otra velocidad.</translation>
    </message>
    <message>
        <source>Reading with that throttle</source>
        <extracomment>from:throttle_reading</extracomment>
        <translation>Lectura con esa mariposa</translation>
    </message>
    <message>
        <source>What a cylinder that seals well reads, less what the throttle takes off.</source>
        <extracomment>from:throttle_reading</extracomment>
        <translation>Lo que marca un cilindro que sella bien, menos lo que quita la mariposa.</translation>
    </message>
    <message>
        <source>Cold engine</source>
        <extracomment>from:cold_loss</extracomment>
        <translation>Motor frío</translation>
    </message>
    <message>
        <source>The model&apos;s reading with cold cylinder walls against that with warm ones.</source>
        <extracomment>from:cold_loss</extracomment>
        <translation>La lectura del modelo con las paredes del cilindro frías frente a la de paredes calientes.</translation>
    </message>
    <message>
        <source>Tyre-valve core</source>
        <extracomment>from:core_loss</extracomment>
        <translation>Núcleo de válvula de neumático</translation>
    </message>
    <message>
        <source>The model&apos;s reading with a core that is hard to open against that with one made for gauges.</source>
        <extracomment>from:core_loss</extracomment>
        <translation>La lectura del modelo con un núcleo duro de abrir frente a la de uno hecho para manómetros.</translation>
    </message>
    <message>
        <source>Difference between the visits</source>
        <extracomment>from:change</extracomment>
        <translation>Diferencia entre las visitas</translation>
    </message>
    <message>
        <source>The later reading less the earlier one in the later visit&apos;s terms; what both are out by together cancels.</source>
        <extracomment>from:change</extracomment>
        <translation>La lectura posterior menos la anterior en los términos de la visita posterior; lo que ambas se desvían por igual se anula.</translation>
    </message>
    <message>
        <source>With the decompressor at work</source>
        <extracomment>from:released</extracomment>
        <translation>Con el descompresor actuando</translation>
    </message>
    <message>
        <source>The model&apos;s reading with the cylinder closing as late as a decompressor leaves it.</source>
        <extracomment>from:released</extracomment>
        <translation>La lectura del modelo con el cilindro cerrando tan tarde como lo deja un descompresor.</translation>
    </message>
    <message>
        <source>After so many pulls</source>
        <extracomment>from:reached</extracomment>
        <translation>Tras tantas emboladas</translation>
    </message>
    <message>
        <source>The model&apos;s reading after so many strokes against that of endlessly many, on this gauge.</source>
        <extracomment>from:reached</extracomment>
        <translation>La lectura del modelo tras tantas carreras frente a la de infinitas, en este manómetro.</translation>
    </message>
    <message>
        <source>How many pulls</source>
        <extracomment>from:pulls</extracomment>
        <translation>Cuántas emboladas</translation>
    </message>
    <message>
        <source>Gauges fill stroke by stroke: makers name how many it takes.</source>
        <extracomment>from:pulls</extracomment>
        <translation>Los manómetros se llenan carrera a carrera: los fabricantes dicen cuántas hacen falta.</translation>
    </message>
    <message>
        <source>Force at the end of the bar</source>
        <extracomment>from:force</extracomment>
        <translation>Fuerza en el extremo de la barra</translation>
    </message>
    <message>
        <source>The torque divided by the length of the bar.</source>
        <extracomment>from:force</extracomment>
        <translation>El par dividido por el largo de la barra.</translation>
    </message>
    <message>
        <source>Correction</source>
        <extracomment>from:correction</extracomment>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>The reading with nothing before the check valve against that with this tester, by the model.</source>
        <extracomment>from:correction</extracomment>
        <translation>La lectura sin nada antes de la válvula antirretorno frente a la de este comprobador, según el modelo.</translation>
    </message>
    <message>
        <source>Wet reading by volume alone</source>
        <extracomment>from:wet_reading</extracomment>
        <translation>Lectura húmeda solo por el volumen</translation>
    </message>
    <message>
        <source>The dry reading, put up by what the oil&apos;s volume explains.</source>
        <extracomment>from:wet_reading</extracomment>
        <translation>La lectura en seco, aumentada en lo que explica el volumen del aceite.</translation>
    </message>
    <message>
        <source>Restrictor&apos;s effective area</source>
        <extracomment>from:restrictor_area</extracomment>
        <translation>Área efectiva del restrictor</translation>
    </message>
    <message>
        <source>What passes the restrictor passes the hole, whose size is known.</source>
        <comment>from:restrictor_area</comment>
        <translation>Lo que pasa por el restrictor pasa por el agujero, cuyo tamaño se conoce.</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <comment>from:odds</comment>
        <translation>Por dónde pierde</translation>
    </message>
    <message>
        <source>Cylinders are drawn at random, leaking here and there as the working assumptions say they do, and each counts as much as readings like these would be likely of it. The shares and odds are those of all that were drawn.</source>
        <extracomment>from:odds</extracomment>
        <translation>Se sortean cilindros que pierden aquí y allá como dicen los supuestos de trabajo, y cada uno cuenta según lo probables que serían en él lecturas como estas. Las partes y las probabilidades son las de todos los sorteados.</translation>
    </message>
    <message>
        <source>Dry test to expect after a repair</source>
        <extracomment>from:after_repair</extracomment>
        <translation>Prueba en seco que cabe esperar tras una reparación</translation>
    </message>
    <message>
        <source>The same cylinders once more, the leak of the repaired part put back to that of a sound one; nine of ten read within the range.</source>
        <extracomment>from:after_repair</extracomment>
        <translation>Los mismos cilindros otra vez, con la fuga de la pieza reparada como la de una sana; nueve de cada diez marcan dentro del intervalo.</translation>
    </message>
    <message>
        <source>Neighbours</source>
        <extracomment>from:joint</extracomment>
        <translation>Vecinos</translation>
    </message>
    <message>
        <source>Two neighbours that are low together, with the others in order.</source>
        <extracomment>from:joint</extracomment>
        <translation>Dos vecinos que están bajos a la vez, con los demás en orden.</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <extracomment>cycle:four-stroke</extracomment>
        <translation>cuatro tiempos</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <extracomment>cycle:two-stroke</extracomment>
        <translation>dos tiempos</translation>
    </message>
    <message>
        <source>petrol</source>
        <extracomment>fuel:petrol</extracomment>
        <translation>gasolina</translation>
    </message>
    <message>
        <source>diesel</source>
        <extracomment>fuel:diesel</extracomment>
        <translation>diésel</translation>
    </message>
    <message>
        <source>single</source>
        <extracomment>arrangement:single</extracomment>
        <translation>un cilindro</translation>
    </message>
    <message>
        <source>in-line</source>
        <extracomment>arrangement:in-line</extracomment>
        <translation>en línea</translation>
    </message>
    <message>
        <source>V</source>
        <extracomment>arrangement:v</extracomment>
        <translation>en V</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>arrangement:flat</extracomment>
        <translation>opuestos</translation>
    </message>
    <message>
        <source>other</source>
        <comment>arrangement:other</comment>
        <translation>otra</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>cooling:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>air</source>
        <extracomment>cooling:air</extracomment>
        <translation>aire</translation>
    </message>
    <message>
        <source>liquid</source>
        <extracomment>cooling:liquid</extracomment>
        <translation>líquido</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>adjuster:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>screw</source>
        <extracomment>adjuster:screw</extracomment>
        <translation>tornillo</translation>
    </message>
    <message>
        <source>shim</source>
        <extracomment>adjuster:shim</extracomment>
        <translation>pastilla</translation>
    </message>
    <message>
        <source>hydraulic</source>
        <extracomment>adjuster:hydraulic</extracomment>
        <translation>hidráulico</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>decompressor:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>decompressor:none</extracomment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>manual</source>
        <comment>decompressor:manual</comment>
        <translation>manual</translation>
    </message>
    <message>
        <source>automatic</source>
        <extracomment>decompressor:automatic</extracomment>
        <translation>automático</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>timing:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>fixed</source>
        <extracomment>timing:fixed</extracomment>
        <translation>fija</translation>
    </message>
    <message>
        <source>variable</source>
        <extracomment>timing:variable</extracomment>
        <translation>variable</translation>
    </message>
    <message>
        <source>source not noted</source>
        <extracomment>origin:unknown</extracomment>
        <translation>fuente no anotada</translation>
    </message>
    <message>
        <source>manual</source>
        <comment>origin:manual</comment>
        <translation>manual</translation>
    </message>
    <message>
        <source>measured</source>
        <extracomment>origin:measured</extracomment>
        <translation>medido</translation>
    </message>
    <message>
        <source>guessed</source>
        <extracomment>origin:guessed</extracomment>
        <translation>estimado</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>timing_at:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>on the seat</source>
        <extracomment>timing_at:seat</extracomment>
        <translation>en el asiento</translation>
    </message>
    <message>
        <source>at 1 mm lift</source>
        <extracomment>timing_at:1 mm lift</extracomment>
        <translation>a 1 mm de alzada</translation>
    </message>
    <message>
        <source>at 0.050 in lift</source>
        <extracomment>timing_at:0.050 in lift</extracomment>
        <translation>a 0,050 in de alzada</translation>
    </message>
    <message>
        <source>session</source>
        <extracomment>tied_to:session</extracomment>
        <translation>sesión</translation>
    </message>
    <message>
        <source>cylinder</source>
        <extracomment>tied_to:cylinder</extracomment>
        <translation>cilindro</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>tied_to:reading</comment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>exit</source>
        <comment>tied_to:exit</comment>
        <translation>salida</translation>
    </message>
    <message>
        <source>clearance</source>
        <extracomment>tied_to:clearance</extracomment>
        <translation>juego de válvulas</translation>
    </message>
    <message>
        <source>plan</source>
        <extracomment>tied_to:plan line</extracomment>
        <translation>plan</translation>
    </message>
    <message>
        <source>finding</source>
        <extracomment>tied_to:finding</extracomment>
        <translation>diagnóstico</translation>
    </message>
    <message>
        <source>note</source>
        <comment>tied_to:note</comment>
        <translation>nota</translation>
    </message>
    <message>
        <source>tester</source>
        <extracomment>tied_to:tester</extracomment>
        <translation>comprobador</translation>
    </message>
    <message>
        <source>photo</source>
        <extracomment>attachment:photo</extracomment>
        <translation>foto</translation>
    </message>
    <message>
        <source>voice note</source>
        <extracomment>attachment:voice note</extracomment>
        <translation>nota de voz</translation>
    </message>
    <message>
        <source>gauge</source>
        <extracomment>photo_of:gauge</extracomment>
        <translation>manómetro</translation>
    </message>
    <message>
        <source>plug</source>
        <extracomment>photo_of:plug</extracomment>
        <translation>bujía</translation>
    </message>
    <message>
        <source>borescope</source>
        <comment>photo_of:borescope</comment>
        <translation>boroscopio</translation>
    </message>
    <message>
        <source>valve</source>
        <extracomment>photo_of:valve</extracomment>
        <translation>válvula</translation>
    </message>
    <message>
        <source>piston crown</source>
        <extracomment>photo_of:piston crown</extracomment>
        <translation>cabeza del pistón</translation>
    </message>
    <message>
        <source>exit</source>
        <comment>photo_of:exit</comment>
        <translation>salida</translation>
    </message>
    <message>
        <source>other</source>
        <comment>photo_of:other</comment>
        <translation>otro</translation>
    </message>
    <message>
        <source>note</source>
        <comment>note:note</comment>
        <translation>nota</translation>
    </message>
    <message>
        <source>other cause</source>
        <extracomment>note:other cause</extracomment>
        <translation>otra causa</translation>
    </message>
    <message>
        <source>please test this</source>
        <extracomment>note:please test this</extracomment>
        <translation>por favor, probar esto</translation>
    </message>
    <message>
        <source>my call</source>
        <extracomment>note:my call</extracomment>
        <translation>mi dictamen</translation>
    </message>
    <message>
        <source>leak hunt</source>
        <extracomment>asked_check:leak hunt</extracomment>
        <translation>búsqueda de fugas</translation>
    </message>
    <message>
        <source>valve clearances</source>
        <extracomment>asked_check:clearances</extracomment>
        <translation>juego de válvulas</translation>
    </message>
    <message>
        <source>staking a valve</source>
        <extracomment>asked_check:staking</extracomment>
        <translation>asentar una válvula con toques</translation>
    </message>
    <message>
        <source>tester check</source>
        <extracomment>asked_check:tester check</extracomment>
        <translation>verificación del comprobador</translation>
    </message>
    <message>
        <source>rings</source>
        <comment>cause:rings</comment>
        <translation>segmentos</translation>
    </message>
    <message>
        <source>intake valve</source>
        <comment>cause:intake</comment>
        <translation>válvula de admisión</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <comment>cause:exhaust</comment>
        <translation>válvula de escape</translation>
    </message>
    <message>
        <source>head gasket</source>
        <comment>cause:head gasket</comment>
        <translation>junta de culata</translation>
    </message>
    <message>
        <source>joint to the next cylinder</source>
        <comment>cause:next cylinder</comment>
        <translation>junta con el cilindro vecino</translation>
    </message>
    <message>
        <source>into the coolant</source>
        <extracomment>cause:coolant</extracomment>
        <translation>al refrigerante</translation>
    </message>
    <message>
        <source>decompressor</source>
        <comment>cause:decompressor</comment>
        <translation>descompresor</translation>
    </message>
    <message>
        <source>crankcase</source>
        <extracomment>cause:crankcase</extracomment>
        <translation>cárter</translation>
    </message>
    <message>
        <source>seals well</source>
        <comment>cause:seals well</comment>
        <translation>sella bien</translation>
    </message>
    <message>
        <source>tester or method</source>
        <extracomment>cause:tester or method</extracomment>
        <translation>comprobador o método</translation>
    </message>
    <message>
        <source>as read</source>
        <extracomment>read_settled:as read</extracomment>
        <translation>lo leído</translation>
    </message>
    <message>
        <source>as typed</source>
        <extracomment>read_settled:as typed</extracomment>
        <translation>lo escrito</translation>
    </message>
    <message>
        <source>left open</source>
        <extracomment>read_settled:left open</extracomment>
        <translation>dejado abierto</translation>
    </message>
    <message>
        <source>photo only</source>
        <extracomment>read_settled:photo only</extracomment>
        <translation>solo foto</translation>
    </message>
    <message>
        <source>No round dial was found. Fill the ring with the gauge and take the photo again.</source>
        <extracomment>read_refusal:no_dial</extracomment>
        <translation>No se encontró una esfera redonda. Llenar el anillo con el manómetro y repetir la foto.</translation>
    </message>
    <message>
        <source>A dial was found, but not its scale. Take the photo closer, sharper and without glare.</source>
        <extracomment>read_refusal:no_scale</extracomment>
        <translation>Se encontró una esfera, pero no su escala. Hacer la foto más cerca, más nítida y sin reflejos.</translation>
    </message>
    <message>
        <source>The scale was found, but not the needle. Take the photo again without glare on it.</source>
        <extracomment>read_refusal:no_needle</extracomment>
        <translation>Se encontró la escala, pero no la aguja. Repetir la foto sin reflejos encima.</translation>
    </message>
    <message>
        <source>There is more than one needle on the dial, and the photo does not tell which of them to read. Type the value.</source>
        <extracomment>read_refusal:two_needles</extracomment>
        <translation>Hay más de una aguja en la esfera y la foto no dice cuál hay que leer. Escribir el valor.</translation>
    </message>
    <message>
        <source>The reading is too doubtful to give. Take the photo square on and without glare, or type the value.</source>
        <extracomment>read_refusal:unsure</extracomment>
        <translation>La lectura es demasiado dudosa para darla. Hacer la foto de frente y sin reflejos, o escribir el valor.</translation>
    </message>
    <message>
        <source>leave it</source>
        <extracomment>plan:leave it</extracomment>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>quick fix</source>
        <extracomment>plan:quick fix</extracomment>
        <translation>arreglo rápido</translation>
    </message>
    <message>
        <source>strip</source>
        <extracomment>plan:strip</extracomment>
        <translation>desmontar</translation>
    </message>
    <message>
        <source>dry test</source>
        <extracomment>test:dry</extracomment>
        <translation>prueba en seco</translation>
    </message>
    <message>
        <source>leak-down</source>
        <extracomment>test:leak-down</extracomment>
        <translation>estanqueidad</translation>
    </message>
    <message>
        <source>wet test</source>
        <extracomment>test:wet</extracomment>
        <translation>prueba húmeda</translation>
    </message>
    <message>
        <source>crankcase hold test</source>
        <extracomment>test:crankcase</extracomment>
        <translation>prueba del cárter</translation>
    </message>
    <message>
        <source>as found</source>
        <extracomment>tag:as found</extracomment>
        <translation>como se encontró</translation>
    </message>
    <message>
        <source>after clearance adjustment</source>
        <extracomment>tag:after clearance adjustment</extracomment>
        <translation>tras ajustar el juego</translation>
    </message>
    <message>
        <source>after staking</source>
        <extracomment>tag:after staking</extracomment>
        <translation>tras asentar con toques</translation>
    </message>
    <message>
        <source>after oil soak</source>
        <extracomment>tag:after oil soak</extracomment>
        <translation>tras remojo en aceite</translation>
    </message>
    <message>
        <source>after running three minutes</source>
        <extracomment>tag:after running three minutes</extracomment>
        <translation>tras tres minutos en marcha</translation>
    </message>
    <message>
        <source>after repair</source>
        <extracomment>tag:after repair</extracomment>
        <translation>tras la reparación</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>oiled:unknown</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>no oil</source>
        <extracomment>oiled:no</extracomment>
        <translation>sin aceite</translation>
    </message>
    <message>
        <source>oiled before</source>
        <extracomment>oiled:before</extracomment>
        <translation>aceitados antes</translation>
    </message>
    <message>
        <source>freshly oiled</source>
        <extracomment>oiled:fresh</extracomment>
        <translation>recién aceitados</translation>
    </message>
    <message>
        <source>typed</source>
        <extracomment>reading_from:typed</extracomment>
        <translation>escrito</translation>
    </message>
    <message>
        <source>read from the photo</source>
        <extracomment>reading_from:photo</extracomment>
        <translation>leído en la foto</translation>
    </message>
    <message>
        <source>intake</source>
        <extracomment>exit:intake</extracomment>
        <translation>admisión</translation>
    </message>
    <message>
        <source>exhaust</source>
        <extracomment>exit:exhaust</extracomment>
        <translation>escape</translation>
    </message>
    <message>
        <source>breather</source>
        <extracomment>exit:breather</extracomment>
        <translation>respiradero</translation>
    </message>
    <message>
        <source>head gasket</source>
        <comment>exit:head gasket</comment>
        <translation>junta de culata</translation>
    </message>
    <message>
        <source>coolant</source>
        <extracomment>exit:coolant</extracomment>
        <translation>refrigerante</translation>
    </message>
    <message>
        <source>next cylinder&apos;s plug hole</source>
        <extracomment>exit:next cylinder&apos;s plug hole</extracomment>
        <translation>agujero de bujía del vecino</translation>
    </message>
    <message>
        <source>crank seals</source>
        <extracomment>exit:crank seals</extracomment>
        <translation>retenes del cigüeñal</translation>
    </message>
    <message>
        <source>base gasket</source>
        <extracomment>exit:base gasket</extracomment>
        <translation>junta de base</translation>
    </message>
    <message>
        <source>reed</source>
        <extracomment>exit:reed</extracomment>
        <translation>láminas</translation>
    </message>
    <message>
        <source>decompressor</source>
        <comment>exit:decompressor</comment>
        <translation>descompresor</translation>
    </message>
    <message>
        <source>other</source>
        <comment>exit:other</comment>
        <translation>otra</translation>
    </message>
    <message>
        <source>nothing</source>
        <extracomment>loudness:nothing</extracomment>
        <translation>nada</translation>
    </message>
    <message>
        <source>faint</source>
        <extracomment>loudness:faint</extracomment>
        <translation>débil</translation>
    </message>
    <message>
        <source>clear</source>
        <extracomment>loudness:clear</extracomment>
        <translation>claro</translation>
    </message>
    <message>
        <source>strong</source>
        <extracomment>loudness:strong</extracomment>
        <translation>fuerte</translation>
    </message>
    <message>
        <source>ear</source>
        <extracomment>listened_by:ear</extracomment>
        <translation>oído</translation>
    </message>
    <message>
        <source>hose</source>
        <extracomment>listened_by:hose</extracomment>
        <translation>manguera</translation>
    </message>
    <message>
        <source>soapy water</source>
        <extracomment>listened_by:soapy water</extracomment>
        <translation>agua jabonosa</translation>
    </message>
    <message>
        <source>bubbles</source>
        <extracomment>listened_by:bubbles</extracomment>
        <translation>burbujas</translation>
    </message>
    <message>
        <source>hand</source>
        <extracomment>listened_by:hand</extracomment>
        <translation>mano</translation>
    </message>
    <message>
        <source>intake valve</source>
        <comment>valve:intake</comment>
        <translation>válvula de admisión</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <comment>valve:exhaust</comment>
        <translation>válvula de escape</translation>
    </message>
    <message>
        <source>power loss</source>
        <extracomment>symptom:power loss</extracomment>
        <translation>falta de potencia</translation>
    </message>
    <message>
        <source>oil use</source>
        <extracomment>symptom:oil use</extracomment>
        <translation>gasta aceite</translation>
    </message>
    <message>
        <source>blue smoke</source>
        <extracomment>symptom:blue smoke</extracomment>
        <translation>humo azul</translation>
    </message>
    <message>
        <source>white smoke</source>
        <extracomment>symptom:white smoke</extracomment>
        <translation>humo blanco</translation>
    </message>
    <message>
        <source>black smoke</source>
        <extracomment>symptom:black smoke</extracomment>
        <translation>humo negro</translation>
    </message>
    <message>
        <source>coolant loss</source>
        <extracomment>symptom:coolant loss</extracomment>
        <translation>pérdida de refrigerante</translation>
    </message>
    <message>
        <source>hard starting</source>
        <extracomment>symptom:hard starting</extracomment>
        <translation>arranque difícil</translation>
    </message>
    <message>
        <source>noise</source>
        <extracomment>symptom:noise</extracomment>
        <translation>ruido</translation>
    </message>
    <message>
        <source>misfire</source>
        <extracomment>symptom:misfire</extracomment>
        <translation>fallos de encendido</translation>
    </message>
    <message>
        <source>stood for long</source>
        <extracomment>symptom:stood for long</extracomment>
        <translation>mucho tiempo parado</translation>
    </message>
    <message>
        <source>plug wells blown out</source>
        <extracomment>prepare:plug wells blown out</extracomment>
        <translation>pozos de bujía soplados</translation>
    </message>
    <message>
        <source>wells of injectors or glow plugs blown out</source>
        <extracomment>prepare:plug wells blown out, diesel</extracomment>
        <translation>alojamientos de inyectores o bujías de precalentamiento soplados</translation>
    </message>
    <message>
        <source>turned by hand</source>
        <extracomment>prepare:turned by hand</extracomment>
        <translation>girado a mano</translation>
    </message>
    <message>
        <source>bores oiled and left</source>
        <extracomment>prepare:bores oiled</extracomment>
        <translation>cilindros aceitados y en reposo</translation>
    </message>
    <message>
        <source>oil level looked at</source>
        <extracomment>prepare:oil level</extracomment>
        <translation>nivel de aceite revisado</translation>
    </message>
    <message>
        <source>stuck valves looked for</source>
        <extracomment>prepare:stuck valves</extracomment>
        <translation>válvulas pegadas revisadas</translation>
    </message>
    <message>
        <source>borescope</source>
        <comment>prepare:borescope</comment>
        <translation>boroscopio</translation>
    </message>
    <message>
        <source>clearances first</source>
        <extracomment>prepare:clearances first</extracomment>
        <translation>juego de válvulas primero</translation>
    </message>
    <message>
        <source>warm or cold noted</source>
        <extracomment>prepare:temperature noted</extracomment>
        <translation>caliente o frío anotado</translation>
    </message>
    <message>
        <source>throttle held open</source>
        <extracomment>prepare:throttle open</extracomment>
        <translation>mariposa abierta</translation>
    </message>
    <message>
        <source>all plugs out</source>
        <extracomment>prepare:all plugs out</extracomment>
        <translation>todas las bujías fuera</translation>
    </message>
    <message>
        <source>all injectors or glow plugs out</source>
        <extracomment>prepare:all plugs out, diesel</extracomment>
        <translation>todos los inyectores o bujías de precalentamiento fuera</translation>
    </message>
    <message>
        <source>ignition leads grounded</source>
        <extracomment>prepare:ignition grounded</extracomment>
        <translation>cables de encendido a masa</translation>
    </message>
    <message>
        <source>fuel or injectors off</source>
        <extracomment>prepare:fuel off</extracomment>
        <translation>combustible o inyectores cortados</translation>
    </message>
    <message>
        <source>battery on charge</source>
        <extracomment>prepare:battery</extracomment>
        <translation>batería en carga</translation>
    </message>
    <message>
        <source>decompressor off</source>
        <extracomment>prepare:decompressor off</extracomment>
        <translation>descompresor desactivado</translation>
    </message>
    <message>
        <source>oil filler or breather open</source>
        <extracomment>prepare:breather open</extracomment>
        <translation>tapón de llenado o respiradero abierto</translation>
    </message>
    <message>
        <source>compressor off while listening</source>
        <extracomment>prepare:compressor off</extracomment>
        <translation>compresor apagado al escuchar</translation>
    </message>
    <message>
        <source>not marked</source>
        <extracomment>step_state:open</extracomment>
        <translation>sin marcar</translation>
    </message>
    <message>
        <source>done</source>
        <extracomment>step_state:done</extracomment>
        <translation>hecho</translation>
    </message>
    <message>
        <source>not done</source>
        <extracomment>step_state:not done</extracomment>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>not needed</source>
        <extracomment>step_state:not needed</extracomment>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>heat:unknown</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>cold</source>
        <extracomment>heat:cold</extracomment>
        <translation>frío</translation>
    </message>
    <message>
        <source>warm</source>
        <extracomment>heat:warm</extracomment>
        <translation>caliente</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>throttle:unknown</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>held open</source>
        <extracomment>throttle:held open</extracomment>
        <translation>abierta</translation>
    </message>
    <message>
        <source>closed</source>
        <extracomment>throttle:closed</extracomment>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>induction:unknown</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>fitted</source>
        <extracomment>induction:fitted</extracomment>
        <translation>montada</translation>
    </message>
    <message>
        <source>taken off</source>
        <extracomment>induction:taken off</extracomment>
        <translation>desmontada</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>cranked_by:unknown</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>starter</source>
        <extracomment>cranked_by:starter</extracomment>
        <translation>motor de arranque</translation>
    </message>
    <message>
        <source>remote switch</source>
        <extracomment>cranked_by:remote switch</extracomment>
        <translation>pulsador a distancia</translation>
    </message>
    <message>
        <source>kick</source>
        <extracomment>cranked_by:kick</extracomment>
        <translation>pedal de arranque</translation>
    </message>
    <message>
        <source>rope</source>
        <extracomment>cranked_by:rope</extracomment>
        <translation>cuerda</translation>
    </message>
    <message>
        <source>drill</source>
        <extracomment>cranked_by:drill</extracomment>
        <translation>taladro</translation>
    </message>
    <message>
        <source>not noted</source>
        <comment>crank_held_by:unknown</comment>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>gear and brake</source>
        <extracomment>crank_held_by:gear and brake</extracomment>
        <translation>marcha y freno</translation>
    </message>
    <message>
        <source>second person</source>
        <extracomment>crank_held_by:second person</extracomment>
        <translation>segunda persona</translation>
    </message>
    <message>
        <source>bar</source>
        <extracomment>crank_held_by:bar</extracomment>
        <translation>barra</translation>
    </message>
    <message>
        <source>lower set pressure</source>
        <extracomment>crank_held_by:lower set pressure</extracomment>
        <translation>menor presión ajustada</translation>
    </message>
    <message>
        <source>not asked</source>
        <extracomment>owner_answer:none</extracomment>
        <translation>sin preguntar</translation>
    </message>
    <message>
        <source>later</source>
        <extracomment>owner_answer:later</extracomment>
        <translation>más tarde</translation>
    </message>
    <message>
        <source>compression gauge</source>
        <extracomment>tester:compression gauge</extracomment>
        <translation>manómetro de compresión</translation>
    </message>
    <message>
        <source>leak-down tester</source>
        <extracomment>tester:leak-down tester</extracomment>
        <translation>comprobador de estanqueidad</translation>
    </message>
    <message>
        <source>crankcase tester</source>
        <extracomment>tester:crankcase tester</extracomment>
        <translation>comprobador del cárter</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>check_valve_at:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>chamber end</source>
        <extracomment>check_valve_at:chamber end</extracomment>
        <translation>lado de la cámara</translation>
    </message>
    <message>
        <source>gauge end</source>
        <extracomment>check_valve_at:gauge end</extracomment>
        <translation>lado del manómetro</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>check_valve_core:unknown</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>low-pressure core</source>
        <extracomment>check_valve_core:low-pressure</extracomment>
        <translation>núcleo de baja presión</translation>
    </message>
    <message>
        <source>tyre-valve core</source>
        <extracomment>check_valve_core:tyre</extracomment>
        <translation>válvula de neumático</translation>
    </message>
    <message>
        <source>screwed</source>
        <extracomment>adapter_seal:screwed</extracomment>
        <translation>roscado</translation>
    </message>
    <message>
        <source>rubber cone</source>
        <extracomment>adapter_seal:rubber cone</extracomment>
        <translation>cono de goma</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>accuracy:unknown</comment>
        <translation>no se sabe</translation>
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
        <translation>con la salida tapada marca 0 %</translation>
    </message>
    <message>
        <source>gauge does not sink after cranking</source>
        <extracomment>tester_check:holds after cranking</extracomment>
        <translation>el manómetro no baja tras dar arranque</translation>
    </message>
    <message>
        <source>needle at zero at rest</source>
        <extracomment>tester_check:zero at rest</extracomment>
        <translation>aguja en cero en reposo</translation>
    </message>
    <message>
        <source>drilled hole</source>
        <comment>tester_check:drilled hole</comment>
        <translation>agujero taladrado</translation>
    </message>
    <message>
        <source>compared with a reference</source>
        <extracomment>tester_check:against a reference</extracomment>
        <translation>comparado con una referencia</translation>
    </message>
    <message>
        <source>passed</source>
        <extracomment>check_result:passed</extracomment>
        <translation>pasa</translation>
    </message>
    <message>
        <source>failed</source>
        <extracomment>check_result:failed</extracomment>
        <translation>no pasa</translation>
    </message>
    <message>
        <source>the rings</source>
        <extracomment>path:rings</extracomment>
        <translation>los segmentos</translation>
    </message>
    <message>
        <source>the intake valve</source>
        <extracomment>path:intake</extracomment>
        <translation>la válvula de admisión</translation>
    </message>
    <message>
        <source>the exhaust valve</source>
        <extracomment>path:exhaust</extracomment>
        <translation>la válvula de escape</translation>
    </message>
    <message>
        <source>the head gasket</source>
        <extracomment>path:gasket</extracomment>
        <translation>la junta de culata</translation>
    </message>
    <message>
        <source>the joint to the next cylinder</source>
        <extracomment>path:next_cylinder</extracomment>
        <translation>la junta con el cilindro vecino</translation>
    </message>
    <message>
        <source>the head gasket, into the coolant</source>
        <extracomment>path:coolant</extracomment>
        <translation>la junta de culata, al refrigerante</translation>
    </message>
    <message>
        <source>the decompressor</source>
        <extracomment>path:decompressor</extracomment>
        <translation>el descompresor</translation>
    </message>
    <message>
        <source>the crank seals</source>
        <extracomment>path:crank_seals</extracomment>
        <translation>los retenes del cigüeñal</translation>
    </message>
    <message>
        <source>the base gasket</source>
        <extracomment>path:base_gasket</extracomment>
        <translation>la junta de base</translation>
    </message>
    <message>
        <source>the reed</source>
        <extracomment>path:reed</extracomment>
        <translation>las láminas</translation>
    </message>
    <message>
        <source>rings</source>
        <comment>leak:rings</comment>
        <translation>segmentos</translation>
    </message>
    <message>
        <source>intake valve</source>
        <comment>leak:intake</comment>
        <translation>válvula de admisión</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <comment>leak:exhaust</comment>
        <translation>válvula de escape</translation>
    </message>
    <message>
        <source>head gasket</source>
        <comment>leak:gasket</comment>
        <translation>junta de culata</translation>
    </message>
    <message>
        <source>joint to the next cylinder</source>
        <comment>leak:next_cylinder</comment>
        <translation>junta con el cilindro vecino</translation>
    </message>
    <message>
        <source>head gasket, into the coolant</source>
        <extracomment>leak:coolant</extracomment>
        <translation>junta de culata, al refrigerante</translation>
    </message>
    <message>
        <source>decompressor</source>
        <comment>leak:decompressor</comment>
        <translation>descompresor</translation>
    </message>
    <message>
        <source>seals well</source>
        <comment>outcome:seals_well</comment>
        <translation>sella bien</translation>
    </message>
    <message>
        <source>test again, several times</source>
        <extracomment>narrow:repeat</extracomment>
        <translation>repetir la prueba, varias veces</translation>
    </message>
    <message>
        <source>note this gauge&apos;s range and class on its card, or use a finer one</source>
        <extracomment>narrow:gauge</extracomment>
        <translation>anotar el alcance y la clase de este manómetro en su ficha, o usar uno más fino</translation>
    </message>
    <message>
        <source>read the dial more finely, or use one with a smaller range</source>
        <extracomment>narrow:resolution</extracomment>
        <translation>leer la escala con más finura, o usar una de menor alcance</translation>
    </message>
    <message>
        <source>note the tester&apos;s restrictor on its card, or check it with a drilled hole</source>
        <extracomment>narrow:restrictor</extracomment>
        <translation>anotar el restrictor del comprobador en su ficha, o comprobarlo con un orificio taladrado</translation>
    </message>
    <message>
        <source>watch the set pressure while the air is on</source>
        <extracomment>narrow:droop</extracomment>
        <translation>vigilar la presión ajustada mientras haya aire</translation>
    </message>
    <message>
        <source>note the shop&apos;s altitude or air pressure</source>
        <extracomment>narrow:air_pressure</extracomment>
        <translation>anotar la altitud o la presión atmosférica del taller</translation>
    </message>
    <message>
        <source>test the warm engine, throttle open, battery charged</source>
        <extracomment>narrow:conditions</extracomment>
        <translation>probar el motor caliente, con la mariposa abierta y la batería cargada</translation>
    </message>
    <message>
        <source>much</source>
        <extracomment>tells:much</extracomment>
        <translation>mucho</translation>
    </message>
    <message>
        <source>something</source>
        <extracomment>tells:some</extracomment>
        <translation>algo</translation>
    </message>
    <message>
        <source>a little</source>
        <extracomment>tells:little</extracomment>
        <translation>un poco</translation>
    </message>
    <message>
        <source>very likely</source>
        <extracomment>likely:very</extracomment>
        <translation>muy probable</translation>
    </message>
    <message>
        <source>likely</source>
        <extracomment>likely:likely</extracomment>
        <translation>probable</translation>
    </message>
    <message>
        <source>more likely than not</source>
        <extracomment>likely:more</extracomment>
        <translation>más probable que no</translation>
    </message>
    <message>
        <source>about as likely as not</source>
        <extracomment>likely:even</extracomment>
        <translation>tan probable como no</translation>
    </message>
    <message>
        <source>rings</source>
        <comment>verdict:rings</comment>
        <translation>segmentos</translation>
    </message>
    <message>
        <source>valves, a broken ring or gasket</source>
        <extracomment>verdict:not_rings</extracomment>
        <translation>válvulas, un segmento roto o la junta</translation>
    </message>
    <message>
        <source>published</source>
        <extracomment>basis:published</extracomment>
        <translation>publicado</translation>
    </message>
    <message>
        <source>common practice</source>
        <extracomment>basis:common practice</extracomment>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>working assumption</source>
        <extracomment>basis:assumption</extracomment>
        <translation>supuesto de trabajo</translation>
    </message>
    <message>
        <source>not measured</source>
        <extracomment>state:not measured</extracomment>
        <translation>no medido</translation>
    </message>
    <message>
        <source>in range</source>
        <extracomment>state:in range</extracomment>
        <translation>en rango</translation>
    </message>
    <message>
        <source>borderline</source>
        <extracomment>state:borderline</extracomment>
        <translation>en el límite</translation>
    </message>
    <message>
        <source>fault</source>
        <extracomment>state:fault</extracomment>
        <translation>fallo</translation>
    </message>
    <message>
        <source>Dry test</source>
        <extracomment>action:dry</extracomment>
        <translation>Prueba en seco</translation>
    </message>
    <message>
        <source>Leak-down</source>
        <extracomment>action:leak-down</extracomment>
        <translation>Estanqueidad</translation>
    </message>
    <message>
        <source>Leak hunt</source>
        <extracomment>action:listen</extracomment>
        <translation>Búsqueda de fugas</translation>
    </message>
    <message>
        <source>Wet test</source>
        <extracomment>action:wet</extracomment>
        <translation>Prueba húmeda</translation>
    </message>
    <message>
        <source>Clearances</source>
        <comment>action:clearances</comment>
        <translation>Juego de válvulas</translation>
    </message>
    <message>
        <source>Clearances</source>
        <comment>action:adjust</comment>
        <translation>Juego de válvulas</translation>
    </message>
    <message>
        <source>Next TDC</source>
        <extracomment>action:turn once</extracomment>
        <translation>Próximo PMS</translation>
    </message>
    <message>
        <source>Crankcase hold test</source>
        <extracomment>action:crankcase</extracomment>
        <translation>Prueba del cárter</translation>
    </message>
    <message>
        <source>Testers</source>
        <extracomment>action:tester check</extracomment>
        <translation>Comprobadores</translation>
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
        <translation>Diagnóstico</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Engine as a whole</source>
        <translation>El motor en conjunto</translation>
    </message>
    <message>
        <source>What makes these readings worth less</source>
        <translation>Lo que resta valor a estas lecturas</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>Indicarlo</translation>
    </message>
    <message>
        <source>Where it leaks could not be worked out</source>
        <translation>Por dónde pierde no se pudo calcular</translation>
    </message>
    <message>
        <source>Worth doing next</source>
        <translation>Lo que conviene ahora</translation>
    </message>
    <message>
        <source>What would settle it</source>
        <translation>Lo que lo aclararía</translation>
    </message>
    <message>
        <source>What the odds rest on</source>
        <translation>En qué descansan las probabilidades</translation>
    </message>
    <message>
        <source>Odds, rules of thumb and arithmetic, not a strip-down. Touch a figure to see where it comes from.</source>
        <translation>Probabilidades, reglas prácticas y cálculo, no un desmontaje. Tocar una cifra para ver de dónde sale.</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
</context>
<context>
    <name>FormLine</name>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>guessed</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>written, not kept yet</source>
        <translation>escrito, aún sin guardar</translation>
    </message>
</context>
<context>
    <name>FormRow</name>
    <message>
        <source>not given</source>
        <translation>sin dar</translation>
    </message>
</context>
<context>
    <name>FormSection</name>
    <message>
        <source>Touch to fold</source>
        <translation>Tocar para plegar</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Aún no hay nada</translation>
    </message>
</context>
<context>
    <name>FormSheet</name>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>guessed</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>Page, or how it was measured</source>
        <translation>Página, o cómo se midió</translation>
    </message>
    <message>
        <source>Keep, then %1</source>
        <translation>Guardar y luego %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Everything is in it but what is no longer on this device:</source>
        <translation>Está todo menos lo que ya no hay en este dispositivo:</translation>
    </message>
    <message>
        <source>These photos came with another file and tell where they were taken. Whoever gets this one can read it:</source>
        <translation>Estas fotos vinieron con otro archivo y dicen dónde se tomaron. Quien reciba este archivo puede leerlo:</translation>
    </message>
    <message>
        <source>Write it anew without the places</source>
        <translation>Escribirlo de nuevo sin los lugares</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Your own call is not made yet. The report holds the findings, in the session file too: once one is written, your call will say that it came after. The table of readings gives nothing away.</source>
        <translation>Aún falta el dictamen propio. El informe contiene el diagnóstico, también el del archivo de sesión: una vez escrito uno, el dictamen dirá que vino después. La tabla de lecturas no desvela nada.</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation>Lo que se incluye</translation>
    </message>
    <message>
        <source>With the owner&apos;s name and contact</source>
        <translation>Con el nombre y el contacto del propietario</translation>
    </message>
    <message>
        <source>Left out of the session file unless you switch it on</source>
        <translation>Queda fuera del archivo de sesión, salvo que se active</translation>
    </message>
    <message>
        <source>Report with formulas and sources</source>
        <translation>Informe con fórmulas y fuentes</translation>
    </message>
    <message>
        <source>For a mentor; the one in the session file has them always</source>
        <translation>Para un mentor; el del archivo de sesión siempre las lleva</translation>
    </message>
    <message>
        <source>Report for the owner (PDF)</source>
        <translation>Informe para el propietario (PDF)</translation>
    </message>
    <message>
        <source>Session file</source>
        <translation>Archivo de sesión</translation>
    </message>
    <message>
        <source>For a mentor: everything in one file that any unzip opens, with checksums against damage</source>
        <translation>Para un mentor: todo en un archivo que abre cualquier unzip, con sumas de comprobación contra daños</translation>
    </message>
    <message>
        <source>Table of readings (CSV)</source>
        <translation>Tabla de lecturas (CSV)</translation>
    </message>
    <message>
        <source>For a spreadsheet: every reading as typed, and in SI units</source>
        <translation>Para una hoja de cálculo: cada lectura como se escribió, y en unidades SI</translation>
    </message>
    <message>
        <source>Backup of everything</source>
        <translation>Copia de seguridad de todo</translation>
    </message>
    <message>
        <source>All engines into one file, or back from one</source>
        <translation>Todos los motores en un archivo, o de vuelta desde uno</translation>
    </message>
    <message>
        <source>Your session files are signed. Who gets one compares this fingerprint with you once: %1</source>
        <translation>Los archivos de sesión propios van firmados. Quien recibe uno compara una vez esta huella con quien lo entrega: %1</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Escribiendo …</translation>
    </message>
</context>
<context>
    <name>HistoryLines</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Cylinder %1, %2</source>
        <translation>Cilindro %1, %2</translation>
    </message>
</context>
<context>
    <name>HistoryPanel</name>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Cilindro</translation>
    </message>
    <message>
        <source>The number at a line&apos;s end is its cylinder; a whisker is the doubt, scatter from one day to the next included. A line breaks where a repair lies between. All readings as the newest visit&apos;s tester would show them.</source>
        <translation>El número al final de una línea es su cilindro; un bigote es la incertidumbre, incluida la dispersión de un día a otro. Una línea se corta donde hay una reparación en medio. Todas las lecturas como las mostraría el comprobador de la visita más reciente.</translation>
    </message>
    <message>
        <source>Hide the figures</source>
        <translation>Ocultar las cifras</translation>
    </message>
    <message>
        <source>Show the figures</source>
        <translation>Mostrar las cifras</translation>
    </message>
</context>
<context>
    <name>HowToCardPage</name>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>This card is not there</source>
        <translation>Esta ficha no está</translation>
    </message>
    <message>
        <source>The list of all cards has what there is.</source>
        <translation>La lista de todas las fichas tiene lo que hay.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>What it tells</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>What goes wrong</source>
        <translation>Lo que sale mal</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde sale esto</translation>
    </message>
    <message>
        <source>All cards</source>
        <translation>Todas las fichas</translation>
    </message>
    <message>
        <source>Next card</source>
        <translation>Ficha siguiente</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Siguiente: %1</translation>
    </message>
</context>
<context>
    <name>HowToPage</name>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>The cards can&apos;t be shown</source>
        <translation>Las fichas no se pueden mostrar</translation>
    </message>
</context>
<context>
    <name>InfoLine</name>
    <message>
        <source>Where does this come from?</source>
        <translation>¿De dónde sale esto?</translation>
    </message>
</context>
<context>
    <name>KeyedFold</name>
    <message>
        <source>All fields and what else there is</source>
        <translation>Todos los campos y lo demás que hay</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Campos</translation>
    </message>
</context>
<context>
    <name>KeyedReadout</name>
    <message>
        <source>Is this right?</source>
        <translation>¿Es correcto esto?</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Qué esperar</translation>
    </message>
</context>
<context>
    <name>KnownKey</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Known since %1</source>
        <translation>Conocida desde %1</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Cambiar el nombre</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
</context>
<context>
    <name>KnownKeysPage</name>
    <message>
        <source>Known keys</source>
        <translation>Claves conocidas</translation>
    </message>
    <message>
        <source>Your own fingerprint</source>
        <translation>La huella propia</translation>
    </message>
    <message>
        <source>There is none yet: your key is made with the first session file that you hand over.</source>
        <translation>Aún no hay ninguna: la clave se crea con el primer archivo de sesión que se entregue.</translation>
    </message>
    <message>
        <source>Read it out to who gets your session files, or send it another way than the file: only then does it tell them that a file is yours.</source>
        <translation>Leérsela a quien recibe los archivos de sesión, o enviarla por otro camino que el archivo: solo así le dice de quién es un archivo.</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copiada</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>%1 is forgotten: what this key signs is from an unknown key again.</source>
        <translation>%1 queda en el olvido: lo que firme esta clave vuelve a ser de una clave desconocida.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Nobody is named yet. When a signed session file comes in you can say whose key it is.</source>
        <translation>Aún no hay nadie con nombre. Cuando llega un archivo de sesión firmado se puede decir de quién es la clave.</translation>
    </message>
    <message>
        <source>A name is what you call the holder of a key. Give one only after you have compared the fingerprint with them.</source>
        <translation>Un nombre es cómo se llama aquí a quien tiene la clave. Darlo solo después de comparar la huella con esa persona.</translation>
    </message>
</context>
<context>
    <name>LayoutCell</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Cylinder %1, %2</source>
        <translation>Cilindro %1, %2</translation>
    </message>
</context>
<context>
    <name>LayoutPicture</name>
    <message>
        <source>Layout</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>Touch one to change it, or drag it onto another one to swap their places.</source>
        <translation>Tocar uno para cambiarlo, o arrastrarlo sobre otro para intercambiar sus lugares.</translation>
    </message>
    <message>
        <source>Now touch the one to swap it with.</source>
        <translation>Tocar ahora el otro para el intercambio.</translation>
    </message>
    <message>
        <source>All stand in one row; it goes on in the next line.</source>
        <translation>Todos están en una fila; sigue en la línea siguiente.</translation>
    </message>
    <message>
        <source>Each row takes %1 lines here.</source>
        <translation>Cada fila ocupa aquí %1 líneas.</translation>
    </message>
    <message>
        <source>Number and name</source>
        <translation>Número y nombre</translation>
    </message>
</context>
<context>
    <name>LeakHuntPage</name>
    <message>
        <source>Cylinder %1, leak hunt</source>
        <translation>Cilindro %1, búsqueda de fugas</translation>
    </message>
    <message>
        <source>Cylinder %1, listened</source>
        <translation>Cilindro %1, escuchado</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Listening by</source>
        <translation>Se escucha con</translation>
    </message>
    <message>
        <source>Listened: nothing anywhere else</source>
        <translation>Escuchado: nada en ningún otro sitio</translation>
    </message>
    <message>
        <source>A question first</source>
        <translation>Antes, una pregunta</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Wipe the glass</source>
        <translation>Limpiar el cristal</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Juego de válvulas</translation>
    </message>
</context>
<context>
    <name>LevelMeter</name>
    <message>
        <source>Loudness %1 %</source>
        <translation>Volumen del sonido %1 %</translation>
    </message>
</context>
<context>
    <name>LicencesPage</name>
    <message>
        <source>Licences</source>
        <translation>Licencias</translation>
    </message>
</context>
<context>
    <name>LinesSheet</name>
    <message>
        <source>From this reading</source>
        <translation>De esta lectura</translation>
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
        <translation>Mi dictamen</translation>
    </message>
    <message>
        <source>Where does it leak, in your own view? More than one can be chosen. Once committed it stands, and the findings are shown beside it.</source>
        <translation>¿Por dónde pierde, según la propia opinión? Se puede elegir más de una causa. Una vez confirmado queda fijo, y el diagnóstico se muestra a su lado.</translation>
    </message>
    <message>
        <source>A report with the findings was written already. Your call will say that it came after.</source>
        <translation>Ya se escribió un informe con el diagnóstico. El dictamen dirá que vino después.</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Show the findings without my call</source>
        <translation>Mostrar el diagnóstico sin mi dictamen</translation>
    </message>
</context>
<context>
    <name>MyCalls</name>
    <message>
        <source>Calls and findings</source>
        <translation>Juicios propios y resultados</translation>
    </message>
    <message>
        <source>Cylinder %1: same</source>
        <translation>Cilindro %1: igual</translation>
    </message>
    <message>
        <source>Cylinder %1: different</source>
        <translation>Cilindro %1: distinto</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Called</source>
        <translation>Juicio propio</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnóstico</translation>
    </message>
</context>
<context>
    <name>NeedlePanel</name>
    <message>
        <source>The pad shows %1, not kept yet. Where the two differ, Keep asks which one holds.</source>
        <translation>En el teclado pone %1, aún sin guardar. Si no coinciden, «Guardar» pregunta cuál vale.</translation>
    </message>
    <message>
        <source>They differ. What holds?</source>
        <translation>No coinciden. ¿Qué vale?</translation>
    </message>
    <message>
        <source>Needle not quite right? Drag the bar: the finger stays off the needle.</source>
        <translation>¿La aguja no queda bien? Arrastrar la barra: el dedo no tapa la aguja.</translation>
    </message>
    <message>
        <source>Needle back half a degree</source>
        <translation>Aguja medio grado atrás</translation>
    </message>
    <message>
        <source>Needle on half a degree</source>
        <translation>Aguja medio grado adelante</translation>
    </message>
</context>
<context>
    <name>NewEngineSheet</name>
    <message>
        <source>Add an engine</source>
        <translation>Añadir un motor</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>As you call it in the shop</source>
        <translation>Como se le llama en el taller</translation>
    </message>
    <message>
        <source>Number of cylinders</source>
        <translation>Número de cilindros</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>Everything else on the card can wait. A rotary engine is not supported.</source>
        <translation>Todo lo demás de la ficha puede esperar. No sirve para motores rotativos.</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Añadirlo</translation>
    </message>
</context>
<context>
    <name>NewTesterSheet</name>
    <message>
        <source>Give it a name: readings say by it which tester they were taken with.</source>
        <translation>Darle un nombre: por él dicen las lecturas con qué comprobador se tomaron.</translation>
    </message>
    <message>
        <source>Type the last figure on the dial: how fine the gauge reads hangs on it.</source>
        <translation>Escribir la última cifra de la esfera: de ella depende lo fino que marca el manómetro.</translation>
    </message>
    <message>
        <source>Add a tester</source>
        <translation>Añadir un comprobador</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>As you call it in the shop</source>
        <translation>Como se le llama en el taller</translation>
    </message>
    <message>
        <source>Last figure on the dial</source>
        <translation>Última cifra de la esfera</translation>
    </message>
    <message>
        <source>Unit on the dial</source>
        <translation>Unidad de la esfera</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>What it is usually set to with the outlet blocked.</source>
        <translation>A lo que se suele ajustar con la salida tapada.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <translation>Diámetro del restrictor</translation>
    </message>
    <message>
        <source>Often 1 mm. Leave it blank if you don&apos;t know it; readings are converted by it.</source>
        <translation>A menudo 1 mm. Dejarlo en blanco si no se sabe; con él se convierten las lecturas.</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Añadirlo</translation>
    </message>
</context>
<context>
    <name>NewsPage</name>
    <message>
        <source>What is new</source>
        <translation>Novedades</translation>
    </message>
    <message>
        <source>Nothing that you have not seen.</source>
        <translation>Nada que no se haya visto.</translation>
    </message>
    <message>
        <source>Two versions: choose</source>
        <translation>Dos versiones: elegir</translation>
    </message>
    <message>
        <source>Changed on both sides; until you choose, both are kept</source>
        <translation>Cambiado en ambos lados; hasta elegir se conservan las dos</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>NewsRow</name>
    <message>
        <source>What is new</source>
        <translation>Novedades</translation>
    </message>
    <message>
        <source>Two versions wait for a choice</source>
        <translation>Dos versiones esperan una elección</translation>
    </message>
</context>
<context>
    <name>NextTdcPage</name>
    <message>
        <source>Next TDC</source>
        <translation>Próximo PMS</translation>
    </message>
    <message>
        <source>From cylinder %1 to cylinder %2, in the running direction</source>
        <translation>Del cilindro %1 al cilindro %2, en el sentido de giro</translation>
    </message>
    <message>
        <source>Open the engine card</source>
        <translation>Abrir la ficha del motor</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Touch to go there next</source>
        <translation>Tocar para ir allí ahora</translation>
    </message>
    <message>
        <source>Come up to TDC from before it. If you passed it, turn on until it comes round again. Back half a turn and up again only where the engine&apos;s manual allows turning back.</source>
        <translation>Llegar al PMS viniendo desde antes, sin pasarlo. Si se pasó, seguir girando hasta que vuelva a llegar. Girar media vuelta atrás y subir de nuevo, únicamente donde el manual del motor permita girar hacia atrás.</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>How hard the air turns the crank</source>
        <translation>Con qué fuerza gira el aire el cigüeñal</translation>
    </message>
    <message>
        <source>Turned: leak-down, cylinder %1</source>
        <translation>Girado: estanqueidad, cilindro %1</translation>
    </message>
</context>
<context>
    <name>NoteSheet</name>
    <message>
        <source>Write your name first: who gets the file back wants to know who says so.</source>
        <translation>Escribir antes el nombre: quien recibe de vuelta el archivo quiere saber quién lo dice.</translation>
    </message>
    <message>
        <source>Choose where it leaks in your view.</source>
        <translation>Elegir por dónde pierde según la propia opinión.</translation>
    </message>
    <message>
        <source>Choose a test, or write what should be tested.</source>
        <translation>Elegir una prueba, o escribir qué se debe probar.</translation>
    </message>
    <message>
        <source>Write a word, or speak it.</source>
        <translation>Escribir una palabra, o decirla.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Other cause</source>
        <translation>Otra causa</translation>
    </message>
    <message>
        <source>Please test this</source>
        <translation>Por favor, probar esto</translation>
    </message>
    <message>
        <source>Where it leaks in your view</source>
        <translation>Por dónde pierde, según la propia opinión</translation>
    </message>
    <message>
        <source>Which test</source>
        <translation>Qué prueba</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>En palabras</translation>
    </message>
    <message>
        <source>Your name, asked once</source>
        <translation>Nombre de quien escribe, se pide una vez</translation>
    </message>
    <message>
        <source>It stands beside what you write. Settings can change it.</source>
        <translation>Figura junto a lo que se escribe. En Ajustes se puede cambiar.</translation>
    </message>
    <message>
        <source>Speak it</source>
        <translation>Decirlo</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>decimal point</source>
        <translation>coma decimal</translation>
    </message>
    <message>
        <source>delete digit</source>
        <translation>borrar cifra</translation>
    </message>
</context>
<context>
    <name>NumberRow</name>
    <message>
        <source>Unit: %1</source>
        <translation>Unidad: %1</translation>
    </message>
</context>
<context>
    <name>Odds</name>
    <message>
        <source>main leak: odds %1</source>
        <translation>fuga principal: probabilidad %1</translation>
    </message>
    <message>
        <source>at fault: odds %1</source>
        <translation>causa: probabilidad %1</translation>
    </message>
    <message>
        <source>dry test to expect after work on %1, in nine cases of ten</source>
        <translation>prueba en seco esperada tras el trabajo (%1), en nueve casos de diez</translation>
    </message>
    <message>
        <source>dry test to expect after work on %1, in nine cases of ten; not comparable before it has run in</source>
        <translation>prueba en seco esperada tras el trabajo (%1), en nueve casos de diez; no comparable antes del rodaje</translation>
    </message>
    <message>
        <source>Seals well: odds %1</source>
        <translation>Sella bien: probabilidad %1</translation>
    </message>
</context>
<context>
    <name>OddsText</name>
    <message>
        <source>under 1 %</source>
        <translation>menos del 1 %</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>under 5 %</source>
        <translation>menos del 5 %</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 a %3)</translation>
    </message>
</context>
<context>
    <name>OnTester</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>on a tester of %1 behind %2</source>
        <translation>en un comprobador de %1 tras %2</translation>
    </message>
</context>
<context>
    <name>OpinionNote</name>
    <message>
        <source>%1 (done)</source>
        <translation>%1 (hecho)</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
</context>
<context>
    <name>OpinionThing</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Nota sobre %1</translation>
    </message>
</context>
<context>
    <name>OwnerAnswer</name>
    <message>
        <source>What the owner says</source>
        <translation>Lo que dice el propietario</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
</context>
<context>
    <name>PadMoreSheet</name>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Take the decimal point away again</source>
        <translation>Quitar otra vez la coma decimal</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Lecturas hasta ahora</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>A second reading is kept beside the first: both count. Redo puts a new reading in place of this one; the old one stays here.</source>
        <translation>Una segunda medida se guarda junto a la primera: las dos cuentan. Rehacer pone una lectura nueva en lugar de esta; la anterior sigue aquí.</translation>
    </message>
    <message>
        <source>Not redo after all</source>
        <translation>No rehacer, al final</translation>
    </message>
    <message>
        <source>What came just before</source>
        <translation>Lo que hubo justo antes</translation>
    </message>
    <message>
        <source>What the dial is marked in</source>
        <translation>Qué marca la esfera</translation>
    </message>
    <message>
        <source>% leakage</source>
        <translation>% de fuga</translation>
    </message>
    <message>
        <source>Wipe the glass</source>
        <translation>Limpiar el cristal</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
</context>
<context>
    <name>PadPage</name>
    <message>
        <source>Stop %1</source>
        <translation>Parar %1</translation>
    </message>
    <message>
        <source>Clock %1</source>
        <translation>Reloj %1</translation>
    </message>
    <message>
        <source>Start clock</source>
        <translation>Poner el reloj</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Next TDC</source>
        <translation>Próximo PMS</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>No wet test on a diesel</source>
        <translation>Sin prueba húmeda en un diésel</translation>
    </message>
    <message>
        <source>Oil does not compress. In a diesel&apos;s small chamber it can lock the engine and bend a rod. Use leak-down instead.</source>
        <translation>El aceite no se comprime. En la cámara pequeña de un diésel puede bloquear el motor y doblar una biela. Usar en su lugar la prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>Back to the session</source>
        <translation>Volver a la sesión</translation>
    </message>
</context>
<context>
    <name>PhotoFinder</name>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Waiting for the camera ...</source>
        <translation>Esperando a la cámara ...</translation>
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
        <translation>Sin imagen</translation>
    </message>
    <message>
        <source>It shows</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Torch</source>
        <translation>Linterna</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>De un archivo</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Retake</source>
        <translation>Repetir</translation>
    </message>
    <message>
        <source>Keeping it ...</source>
        <translation>Guardándola ...</translation>
    </message>
    <message>
        <source>Take photo</source>
        <translation>Hacer foto</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>PhotoPicture</name>
    <message>
        <source>The file of this photo is missing from the library. Settings, Storage says what can be done.</source>
        <translation>Falta en la biblioteca el archivo de esta foto. En Ajustes, Almacenamiento se dice qué se puede hacer.</translation>
    </message>
</context>
<context>
    <name>PhotoReadsSheet</name>
    <message>
        <source>Which one holds?</source>
        <translation>¿Cuál vale?</translation>
    </message>
</context>
<context>
    <name>PhotoRow</name>
    <message>
        <source>%1 · its file is missing</source>
        <translation>%1 · falta su archivo</translation>
    </message>
</context>
<context>
    <name>PictureSheet</name>
    <message>
        <source>The file of this photo is missing here. Ask for the session file again.</source>
        <translation>Falta aquí el archivo de esta foto. Pedir de nuevo el archivo de sesión.</translation>
    </message>
    <message>
        <source>Read from the photo: %1</source>
        <translation>Leído en la foto: %1</translation>
    </message>
</context>
<context>
    <name>PlanCard</name>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
</context>
<context>
    <name>PlanLine</name>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>el motor</translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>cilindro %1</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>With its currency, such as 420 EUR.</source>
        <translation>Con su moneda, como 420 EUR.</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Quick fixes and &quot;run it, then test again&quot; come before taking things apart.</source>
        <translation>Los arreglos rápidos y «hacerlo funcionar y probar de nuevo» van antes que desmontar.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>If it is left</source>
        <translation>Si se deja</translation>
    </message>
    <message>
        <source>Dry test to expect after it</source>
        <translation>Prueba en seco esperada después</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Al menos</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Como máximo</translation>
    </message>
</context>
<context>
    <name>PlanLinePage</name>
    <message>
        <source>Line of the plan</source>
        <translation>Línea del plan</translation>
    </message>
    <message>
        <source>This line is gone</source>
        <translation>Esta línea ya no está</translation>
    </message>
    <message>
        <source>It was deleted. Undo brings it back; otherwise go back to the plan.</source>
        <translation>Se borró. Deshacer la recupera; si no, volver al plan.</translation>
    </message>
    <message>
        <source>Delete this line</source>
        <translation>Borrar esta línea</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
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
        <translation>Aún no hay nada planeado. Tomar lo que se propone, o escribir una línea propia.</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>What the work changed, cylinder by cylinder</source>
        <translation>Qué cambió el trabajo, cilindro por cilindro</translation>
    </message>
    <message>
        <source>Comes to</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Retest</source>
        <translation>Nueva prueba</translation>
    </message>
    <message>
        <source>No day is planned</source>
        <translation>Sin día previsto</translation>
    </message>
    <message>
        <source>Planned for %1</source>
        <translation>Prevista para el %1</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation>Añadir una línea</translation>
    </message>
    <message>
        <source>Test again</source>
        <translation>Probar de nuevo</translation>
    </message>
</context>
<context>
    <name>PreparePage</name>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>No hecho</translation>
    </message>
    <message>
        <source>No need</source>
        <translation>No hace falta</translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Rest is done</source>
        <translation>El resto, hecho</translation>
    </message>
    <message>
        <source>Back to the session</source>
        <translation>Volver a la sesión</translation>
    </message>
</context>
<context>
    <name>ProgressWord</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>ProposalList</name>
    <message>
        <source>Proposed</source>
        <translation>Propuesto</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>From the findings; quick fixes and &quot;run it, then test again&quot; come before taking things apart.</source>
        <translation>Del diagnóstico; los arreglos rápidos y «hacerlo funcionar y probar de nuevo» van antes que desmontar.</translation>
    </message>
    <message>
        <source>Take into the plan</source>
        <translation>Pasar al plan</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>%1 (measured %2)</source>
        <translation>%1 (medido %2)</translation>
    </message>
    <message>
        <source>worse beyond doubt</source>
        <translation>peor sin lugar a dudas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>ReadoutField</name>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
    </message>
</context>
<context>
    <name>RecordButton</name>
    <message>
        <source>Stop and keep</source>
        <translation>Parar y guardar</translation>
    </message>
    <message>
        <source>Record: hold or tap</source>
        <translation>Grabar: mantener o tocar</translation>
    </message>
</context>
<context>
    <name>Reference</name>
    <message>
        <source>Discharge coefficient of a leak-down tester&apos;s restrictor that was not checked with a drilled hole.</source>
        <extracomment>restrictor-cd, text</extracomment>
        <translation>Coeficiente de descarga del restrictor de un comprobador de estanqueidad que no se comprobó con un agujero taladrado.</translation>
    </message>
    <message>
        <source>Scales leak area and flow; cancels when two testers with the same coefficient are compared.</source>
        <extracomment>restrictor-cd, comment</extracomment>
        <translation>Influye en el área y el caudal de fuga; se anula cuando se comparan dos comprobadores con el mismo coeficiente.</translation>
    </message>
    <message>
        <source>From this bore on a cylinder is tested behind the larger restrictor.</source>
        <extracomment>large-bore, text</extracomment>
        <translation>Desde este diámetro un cilindro se prueba tras el restrictor mayor.</translation>
    </message>
    <message>
        <source>Bores of 5.00 in and over.</source>
        <extracomment>large-bore, comment</extracomment>
        <translation>Diámetros de 5,00 in o más.</translation>
    </message>
    <message>
        <source>Restrictor of a tester whose own is not known, for such a bore.</source>
        <extracomment>restrictor-diameter-large, text</extracomment>
        <translation>Restrictor de un comprobador cuyo propio no se conoce, con un diámetro así.</translation>
    </message>
    <message>
        <source>0.060 in for bores of 5.00 in and over, 0.040 in under it.</source>
        <extracomment>restrictor-diameter-large, comment</extracomment>
        <translation>0,060 in con diámetros de 5,00 in o más, 0,040 in por debajo.</translation>
    </message>
    <message>
        <source>Restrictor of a tester whose own is not known.</source>
        <extracomment>restrictor-diameter, text</extracomment>
        <translation>Restrictor de un comprobador cuyo restrictor no se conoce.</translation>
    </message>
    <message>
        <source>0.040 in, for bores under 5 in.</source>
        <extracomment>restrictor-diameter, comment</extracomment>
        <translation>0,040 in, para diámetros de cilindro menores de 5 in.</translation>
    </message>
    <message>
        <source>Error of a gauge whose class is not known, as a share of its full scale.</source>
        <extracomment>gauge-class, text</extracomment>
        <translation>Error de un manómetro cuya clase no se conoce, como fracción de su fondo de escala.</translation>
    </message>
    <message>
        <source>Workshop gauges without a class on the dial are seldom better than EN 837-1 class 2.5.</source>
        <extracomment>gauge-class, comment</extracomment>
        <translation>Los manómetros de taller sin clase en la esfera rara vez son mejores que la clase 2,5 de EN 837-1.</translation>
    </message>
    <message>
        <source>Share of a gauge&apos;s class error, as variance, that is the same in all its readings: an offset.</source>
        <extracomment>gauge-offset, text</extracomment>
        <translation>Parte del error de clase de un manómetro, como varianza, que es igual en todas sus lecturas: un desplazamiento.</translation>
    </message>
    <message>
        <source>A class only limits the whole error. Most of what a dial gauge is out by is a pointer that sits a little off; it cancels in differences.</source>
        <extracomment>gauge-offset, comment</extracomment>
        <translation>Una clase solo limita el error total. La mayor parte de lo que se desvía un manómetro de esfera es una aguja algo descentrada; se anula en las diferencias.</translation>
    </message>
    <message>
        <source>Share of a gauge&apos;s class error, as variance, that grows with the reading; what is left beside it and gauge-offset is local to the spot on the scale.</source>
        <extracomment>gauge-gain, text</extracomment>
        <translation>Parte del error de clase de un manómetro, como varianza, que crece con la lectura; lo que queda aparte de ella y de gauge-offset es local, propio del punto de la escala.</translation>
    </message>
    <message>
        <source>A spring that is a little too soft or stiff; it cancels in ratios. The local rest cancels in nothing.</source>
        <extracomment>gauge-gain, comment</extracomment>
        <translation>Un muelle algo blando o rígido de más; se anula en las relaciones. El resto local no se anula en nada.</translation>
    </message>
    <message>
        <source>What a gauge is out by in proportion is told as a share of its reading, but of no less than this share of its span.</source>
        <extracomment>gain-lowest, text</extracomment>
        <translation>Lo que un manómetro yerra en proporción se indica como fracción de su lectura, pero de no menos que esta fracción de su escala.</translation>
    </message>
    <message>
        <source>Further down the scale it would be a share of nothing.</source>
        <extracomment>gain-lowest, comment</extracomment>
        <translation>Más abajo en la escala sería una parte de nada.</translation>
    </message>
    <message>
        <source>Full scale of a gauge that is not known, as a multiple of its reading.</source>
        <extracomment>unknown-scale, text</extracomment>
        <translation>Fondo de escala de un manómetro que no se conoce, como múltiplo de su lectura.</translation>
    </message>
    <message>
        <source>Gauges are chosen so that the needle stands near the middle.</source>
        <extracomment>unknown-scale, comment</extracomment>
        <translation>Los manómetros se eligen de modo que la aguja quede cerca del centro.</translation>
    </message>
    <message>
        <source>Held pressure under this share of the set pressure is very low: ask for the right TDC first.</source>
        <extracomment>very-low-held, text</extracomment>
        <translation>Una presión mantenida por debajo de esta parte de la ajustada es muy baja: preguntar primero por el PMS correcto.</translation>
    </message>
    <message>
        <source>An open valve passes far more than any restrictor delivers; held falls to nearly nothing.</source>
        <extracomment>very-low-held, comment</extracomment>
        <translation>Una válvula abierta deja pasar mucho más de lo que da cualquier restrictor; la presión retenida cae a casi nada.</translation>
    </message>
    <message>
        <source>A wet reading contradicts the dry one when it lies this many standard deviations outside of what oil can do.</source>
        <extracomment>beyond-chance, text</extracomment>
        <translation>Una lectura húmeda contradice a la seca si queda tantas desviaciones típicas fuera de lo que puede hacer el aceite.</translation>
    </message>
    <message>
        <source>Fewer than one pair in 700 does so by chance alone.</source>
        <extracomment>beyond-chance, comment</extracomment>
        <translation>Menos de un par de cada 700 lo hace solo por azar.</translation>
    </message>
    <message>
        <source>Most that oil alone can make of a reading, as a multiple of the dry one.</source>
        <extracomment>wet-far-above, text</extracomment>
        <translation>Lo máximo que el aceite por sí solo puede hacer de una lectura, como múltiplo de la seca.</translation>
    </message>
    <message>
        <source>It can fill up and seal, but not double a reading unless hardly anything was there.</source>
        <extracomment>wet-far-above, comment</extracomment>
        <translation>Puede llenar y sellar, pero no doblar una lectura, salvo que apenas hubiera nada.</translation>
    </message>
    <message>
        <source>Under this leakage several exits cannot all have been heard strongly.</source>
        <extracomment>loud-but-tight, text</extracomment>
        <translation>Por debajo de esta pérdida no puede haberse oído aire fuerte en varias salidas.</translation>
    </message>
    <message>
        <source>10 % of 80 psi lost is some 30 L/min behind 0.040 in: shared among several exits it is strong at none of them.</source>
        <extracomment>loud-but-tight, comment</extracomment>
        <translation>Perder el 10 % de 80 psi son unos 30 L/min tras 0,040 in: repartidos entre varias salidas no suenan fuertes en ninguna.</translation>
    </message>
    <message>
        <source>So many exits heard strongly are several.</source>
        <extracomment>loud-exits, text</extracomment>
        <translation>Tantas salidas oídas fuertes son varias.</translation>
    </message>
    <message>
        <source>One may be a slip of the listener&apos;s; the odds allow for that.</source>
        <extracomment>loud-exits, comment</extracomment>
        <translation>Una puede ser un descuido de quien escucha; las probabilidades cuentan con ello.</translation>
    </message>
    <message>
        <source>Over this leakage the air cannot have left without being heard, where every large exit was listened at.</source>
        <extracomment>silent-but-leaks, text</extracomment>
        <translation>Por encima de esta pérdida el aire no puede haber salido sin oírse si se escuchó en cada salida grande.</translation>
    </message>
    <message>
        <source>Half of 80 psi lost is some 50 L/min behind 0.040 in: anyone hears that.</source>
        <extracomment>silent-but-leaks, comment</extracomment>
        <translation>Perder la mitad de 80 psi son unos 50 L/min tras 0,040 in: eso lo oye cualquiera.</translation>
    </message>
    <message>
        <source>Under this share of a sound reading a cylinder that holds air while it stands still has built up nothing.</source>
        <extracomment>builds-nothing, text</extracomment>
        <translation>Por debajo de esta parte de una lectura sana, un cilindro que parado mantiene aire no ha acumulado nada.</translation>
    </message>
    <message>
        <source>A leak that large would hold next to nothing: adapter, hose or valve core are likelier.</source>
        <extracomment>builds-nothing, comment</extracomment>
        <translation>Una fuga tan grande no mantendría casi nada: adaptador, manguera u obús de la válvula son más probables.</translation>
    </message>
    <message>
        <source>A dry reading of this share of a sound one and more does not go with a leak-down that held very little.</source>
        <extracomment>leaks-yet-reads, text</extracomment>
        <translation>Una lectura en seco de esta parte de una sana o más no encaja con una prueba de estanqueidad que mantuvo muy poco.</translation>
    </message>
    <message>
        <source>By the cranking model a leak that leaves a quarter of 80 psi behind 0.040 in takes a quarter off the reading of half a litre at 250 rpm, and more off less.</source>
        <extracomment>leaks-yet-reads, comment</extracomment>
        <translation>Según el modelo de compresión, una fuga que deja un cuarto de 80 psi tras 0,040 in quita un cuarto de la lectura de medio litro a 250 rpm, y más con menos cilindrada.</translation>
    </message>
    <message>
        <source>Very low leak-down readings of a cylinder are left out beside one that held at least this share of the set pressure.</source>
        <extracomment>not-low-held, text</extracomment>
        <translation>Las lecturas de estanqueidad muy bajas de un cilindro se dejan fuera junto a una que mantuvo al menos esta fracción de la presión ajustada.</translation>
    </message>
    <message>
        <source>Twice what counts as very low: no leak changes that much from one reading to the next, the place of the piston does.</source>
        <extracomment>not-low-held, comment</extracomment>
        <translation>El doble de lo que cuenta como muy bajo: ninguna fuga cambia tanto de una lectura a la siguiente; el lugar del pistón, sí.</translation>
    </message>
    <message>
        <source>A first puff under this share of what the cylinder should reach (the highest cylinder, or the low end of the factory range) counts as low first.</source>
        <extracomment>first-puff-low, text</extracomment>
        <translation>Una primera embolada por debajo de esta fracción de lo que el cilindro debería alcanzar (el cilindro más alto, o el extremo inferior del rango de fábrica) cuenta como primera baja.</translation>
    </message>
    <message>
        <source>The makers&apos; rule (GM 2006, Harley-Davidson 2012) gives no figure. The first puff of a cylinder that seals well is 50 to 70 % of the final reading on a common gauge.</source>
        <extracomment>first-puff-low, comment</extracomment>
        <translation>La regla de los fabricantes (GM 2006, Harley-Davidson 2012) no da ninguna cifra. La primera embolada de un cilindro que sella bien es del 50 al 70 % de la lectura final en un manómetro corriente.</translation>
    </message>
    <message>
        <source>A low first puff builds up when the final reading is at least this many times as high.</source>
        <extracomment>first-puff-builds, text</extracomment>
        <translation>Una primera embolada baja sube cuando la lectura final es al menos este número de veces mayor.</translation>
    </message>
    <message>
        <source>The makers&apos; rule gives no figure. Every gauge builds up: a cylinder that seals well ends at 1.4 to 2 times its first puff (50 to 70 %, as above). Only more than that is the slow climb of leaking rings; in between the first puff tells nothing.</source>
        <extracomment>first-puff-builds, comment</extracomment>
        <translation>La regla de los fabricantes no da ninguna cifra. Todo manómetro sube: un cilindro que sella bien acaba en 1,4 a 2 veces su primera embolada (50 a 70 %, como arriba). Solo más que eso es la subida lenta de los segmentos que pierden; en medio, la primera embolada no dice nada.</translation>
    </message>
    <message>
        <source>A low first puff does not build up when the final reading is at most this many times as high.</source>
        <extracomment>first-puff-stays, text</extracomment>
        <translation>Una primera embolada baja no sube cuando la lectura final es como máximo este número de veces mayor.</translation>
    </message>
    <message>
        <source>Less than a cylinder that seals well builds up on a common gauge, whose final reading is 1.4 to 2 times its first puff.</source>
        <extracomment>first-puff-stays, comment</extracomment>
        <translation>Menos de lo que sube un cilindro que sella bien en un manómetro corriente, cuya lectura final es 1,4 a 2 veces su primera embolada.</translation>
    </message>
    <message>
        <source>Two cylinders of a four-stroke are companions, one on overlap while the other is tested, when they fire one turn apart within this.</source>
        <extracomment>companions-apart, text</extracomment>
        <translation>Dos cilindros de un cuatro tiempos son compañeros, uno en cruce de válvulas mientras se prueba el otro, si encienden a una vuelta de distancia con este margen.</translation>
    </message>
    <message>
        <source>About as long as both sets of valves may be off their seats.</source>
        <extracomment>companions-apart, comment</extracomment>
        <translation>Más o menos lo que ambos juegos de válvulas pueden estar fuera de sus asientos.</translation>
    </message>
    <message>
        <source>Before this after bottom dead centre no intake valve is taken as shut, where the card does not give its closing.</source>
        <extracomment>intake-closes-earliest, text</extracomment>
        <translation>Antes de este ángulo después del punto muerto inferior ninguna válvula de admisión se da por cerrada si la ficha no indica su cierre.</translation>
    </message>
    <message>
        <source>Valve timings of road engines close it 40 to 75 degrees after, at the seat; ten degrees to either side are left for those that are not usual. Racing cams reach further: put the closing on the card.</source>
        <extracomment>intake-closes-earliest, comment</extracomment>
        <translation>Los diagramas de distribución de motores de calle la cierran de 40 a 75 grados después, en el asiento; se dejan diez grados a cada lado para los que no son habituales. Los árboles de competición van más lejos: anotar el cierre en la ficha.</translation>
    </message>
    <message>
        <source>And after this it is taken as shut for sure.</source>
        <extracomment>intake-closes-latest, text</extracomment>
        <translation>Y después de este se da por cerrada con seguridad.</translation>
    </message>
    <message>
        <source>As above.</source>
        <extracomment>intake-closes-latest, comment; exhaust-opens-latest, comment; decompressor-closing-most, comment; closed-throttle-fill-most, comment; masking-from, comment; held-usual, comment</extracomment>
        <translation>Como arriba.</translation>
    </message>
    <message>
        <source>Up to this before bottom dead centre an exhaust valve is taken as shut for sure.</source>
        <extracomment>exhaust-opens-earliest, text</extracomment>
        <translation>Hasta este ángulo antes del punto muerto inferior una válvula de escape se da por cerrada con seguridad.</translation>
    </message>
    <message>
        <source>Valve timings of road engines open it 40 to 75 degrees before, at the seat; ten degrees to either side are left for those that are not usual.</source>
        <extracomment>exhaust-opens-earliest, comment</extracomment>
        <translation>Los diagramas de distribución de motores de calle la abren de 40 a 75 grados antes, en el asiento; se dejan diez grados a cada lado para los que no son habituales.</translation>
    </message>
    <message>
        <source>And from this on as open for sure.</source>
        <extracomment>exhaust-opens-latest, text</extracomment>
        <translation>Y desde este, por abierta con seguridad.</translation>
    </message>
    <message>
        <source>Two low neighbours count as alike when they read within this share of each other.</source>
        <extracomment>neighbours-close, text</extracomment>
        <translation>Dos vecinos bajos cuentan como iguales cuando sus lecturas no difieren en más de esta parte.</translation>
    </message>
    <message>
        <source>One hole lowers both sides about equally. The rule itself: Dodge Durango manual, both low with 50 to 70 % loss.</source>
        <extracomment>neighbours-close, comment</extracomment>
        <translation>Un solo agujero baja ambos lados más o menos por igual. La regla misma: manual del Dodge Durango, ambos bajos con 50 a 70 % de pérdida.</translation>
    </message>
    <message>
        <source>Usual scatter of repeats on one cylinder beside the gauge&apos;s own errors, as a share of the reading.</source>
        <extracomment>repeat-scatter, text</extracomment>
        <translation>Dispersión usual de las repeticiones en un cilindro aparte de los errores propios del manómetro, como fracción de la lectura.</translation>
    </message>
    <message>
        <source>The same scatter that the odds take for a final reading. One reading alone is taken to scatter so; what repeats of the visit&apos;s cylinders show is pooled with it.</source>
        <extracomment>repeat-scatter, comment</extracomment>
        <translation>La misma dispersión que las probabilidades toman para una lectura final. Se supone que una sola lectura se dispersa así; se junta con lo que muestran las repeticiones de los cilindros de la visita.</translation>
    </message>
    <message>
        <source>Usual scatter of first puffs on one cylinder beside the gauge&apos;s own errors, as a share of the reading.</source>
        <extracomment>first-scatter, text</extracomment>
        <translation>Dispersión habitual de las primeras emboladas en un cilindro, aparte de los errores del manómetro, como fracción de la lectura.</translation>
    </message>
    <message>
        <source>As in odds.json: the first pull seldom starts at the same place of the stroke twice.</source>
        <extracomment>first-scatter, comment</extracomment>
        <translation>Como en odds.json: la primera embolada rara vez empieza dos veces en el mismo punto de la carrera.</translation>
    </message>
    <message>
        <source>How many repeats the usual scatter counts for beside the scatter of the repeats themselves.</source>
        <extracomment>repeat-scatter-weight, text</extracomment>
        <translation>Por cuántas repeticiones cuenta la dispersión usual junto a la dispersión de las propias repeticiones.</translation>
    </message>
    <message>
        <source>Pooling as JCGM 100, H.3.6: without it two repeats a little apart would seem to know less than one.</source>
        <extracomment>repeat-scatter-weight, comment</extracomment>
        <translation>Agrupación como en JCGM 100, H.3.6: sin ella, dos repeticiones algo separadas parecerían saber menos que una.</translation>
    </message>
    <message>
        <source>A reading may still have been rising when a cylinder that seals well would have stood this far below what its gauge comes to after as many pulls.</source>
        <extracomment>still-rising, text</extracomment>
        <translation>Una lectura puede seguir subiendo cuando un cilindro que sella bien estaría tan por debajo de lo que su manómetro llega a marcar tras otras tantas emboladas.</translation>
    </message>
    <message>
        <source>Less than repeats scatter anyway can&apos;t be told from it.</source>
        <extracomment>still-rising, comment</extracomment>
        <translation>Menos de lo que las repeticiones se dispersan de todos modos no se distingue.</translation>
    </message>
    <message>
        <source>Pulls that a final reading is taken after at the least, where the cranking model can&apos;t say how fast the gauge fills.</source>
        <extracomment>least-pulls, text</extracomment>
        <translation>Emboladas tras las que como mínimo se toma una lectura final, cuando el modelo no puede decir lo rápido que se llena el manómetro.</translation>
    </message>
    <message>
        <source>First and last of 5 to 7 strokes are read.</source>
        <extracomment>least-pulls, comment</extracomment>
        <translation>Se leen la primera y la última de 5 a 7 carreras.</translation>
    </message>
    <message>
        <source>A working decompressor acts as if the intake closed no earlier than this after bottom dead centre.</source>
        <extracomment>decompressor-closing-least, text</extracomment>
        <translation>Un descompresor actuando equivale a que la admisión cierre como muy pronto a este ángulo tras el punto muerto inferior.</translation>
    </message>
    <message>
        <source>Chosen so that small engines come to the 57 to 85 psi that a small-engine maker&apos;s manual prints.</source>
        <extracomment>decompressor-closing-least, comment</extracomment>
        <translation>Elegido para que los motores pequeños lleguen a los 57 a 85 psi que imprime el manual de un fabricante de motores pequeños.</translation>
    </message>
    <message>
        <source>And no later than this.</source>
        <extracomment>decompressor-closing-most, text</extracomment>
        <translation>Y no después de este.</translation>
    </message>
    <message>
        <source>How far the weather moves the air pressure from the standard atmosphere&apos;s at an altitude.</source>
        <extracomment>weather-doubt, text</extracomment>
        <translation>Cuánto aparta el tiempo la presión del aire de la de la atmósfera estándar a una altitud.</translation>
    </message>
    <message>
        <source>About 20 hPa to either side on 19 days of 20 in temperate country. A barometer in the shop does better.</source>
        <extracomment>weather-doubt, comment</extracomment>
        <translation>Unos 20 hPa a cada lado 19 de cada 20 días en clima templado. Un barómetro en el taller lo hace mejor.</translation>
    </message>
    <message>
        <source>How far a barometer in the shop may be out.</source>
        <extracomment>barometer-doubt, text</extracomment>
        <translation>Cuánto puede errar un barómetro en el taller.</translation>
    </message>
    <message>
        <source>5 hPa: nobody compares it with another.</source>
        <extracomment>barometer-doubt, comment</extracomment>
        <translation>5 hPa: nadie lo compara con otro.</translation>
    </message>
    <message>
        <source>A barometer in the shop cannot show less than this.</source>
        <extracomment>barometer-least, text</extracomment>
        <translation>Un barómetro en el taller no puede indicar menos que esto.</translation>
    </message>
    <message>
        <source>Higher than any road goes. What lies outside was typed in another unit.</source>
        <extracomment>barometer-least, comment</extracomment>
        <translation>Más alto de lo que sube cualquier carretera. Lo que queda fuera se escribió en otra unidad.</translation>
    </message>
    <message>
        <source>Nor more than this.</source>
        <extracomment>barometer-most, text</extracomment>
        <translation>Ni más que esto.</translation>
    </message>
    <message>
        <source>Deeper than any mine that engines are tested in.</source>
        <extracomment>barometer-most, comment</extracomment>
        <translation>Más hondo que cualquier mina donde se prueben motores.</translation>
    </message>
    <message>
        <source>A 12 V battery under this at rest is called flat.</source>
        <extracomment>battery-low, text</extracomment>
        <translation>Una batería de 12 V por debajo de esto en reposo se llama descargada.</translation>
    </message>
    <message>
        <source>Only said of 12 V systems; readings over 15 V are taken as 24 V.</source>
        <extracomment>battery-low, comment</extracomment>
        <translation>Solo se dice de sistemas de 12 V; las lecturas de más de 15 V se toman como 24 V.</translation>
    </message>
    <message>
        <source>A battery under this at rest is not called flat: it is none of 12 V.</source>
        <extracomment>battery-least, text</extracomment>
        <translation>Una batería por debajo de esto en reposo no se llama descargada: no es de 12 V.</translation>
    </message>
    <message>
        <source>A 6 V battery, or a slip.</source>
        <extracomment>battery-least, comment</extracomment>
        <translation>Una batería de 6 V, o un descuido.</translation>
    </message>
    <message>
        <source>A battery over this at rest is taken as one of 24 V.</source>
        <extracomment>battery-double, text</extracomment>
        <translation>Una batería por encima de esto en reposo se toma por una de 24 V.</translation>
    </message>
    <message>
        <source>A 12 V battery at rest never shows so much.</source>
        <extracomment>battery-double, comment</extracomment>
        <translation>Una batería de 12 V en reposo nunca indica tanto.</translation>
    </message>
    <message>
        <source>A set pressure this far from the tester&apos;s own is asked about.</source>
        <extracomment>set-differs, text</extracomment>
        <translation>Se pregunta por una presión ajustada que se aparte tanto de la propia del comprobador.</translation>
    </message>
    <message>
        <source>Regulators drift by less between two tests; more is another setting, or a slip.</source>
        <extracomment>set-differs, comment</extracomment>
        <translation>Los reguladores derivan menos entre dos pruebas; más es otro ajuste o un descuido.</translation>
    </message>
    <message>
        <source>Leak-down readings count as repeats when their set pressures differ by no more than this.</source>
        <extracomment>set-alike, text</extracomment>
        <translation>Las lecturas de estanqueidad cuentan como repeticiones si sus presiones ajustadas no difieren en más que esto.</translation>
    </message>
    <message>
        <source>A regulator is never set twice to the same needle&apos;s width. The odds take it from here too.</source>
        <extracomment>set-alike, comment</extracomment>
        <translation>Un regulador nunca se ajusta dos veces con una diferencia menor que el ancho de la aguja. Las probabilidades también lo toman de aquí.</translation>
    </message>
    <message>
        <source>Two restrictors count as alike when their diameters differ by no more than this.</source>
        <extracomment>restrictor-alike, text</extracomment>
        <translation>Dos restrictores cuentan como iguales si sus diámetros no difieren en más que esto.</translation>
    </message>
    <message>
        <source>Less than a drill&apos;s own tolerance: 0.040 in and 1 mm are two.</source>
        <extracomment>restrictor-alike, comment</extracomment>
        <translation>Menos que la tolerancia de una broca: 0,040 in y 1 mm son dos cosas.</translation>
    </message>
    <message>
        <source>A valve clearance over this is asked about: perhaps the unit is wrong.</source>
        <extracomment>clearance-very-wide, text</extracomment>
        <translation>Se pregunta por un juego de válvula mayor que este: quizá la unidad no sea la correcta.</translation>
    </message>
    <message>
        <source>Far beyond any rocker&apos;s clearance.</source>
        <extracomment>clearance-very-wide, comment</extracomment>
        <translation>Mucho más que el juego de cualquier balancín.</translation>
    </message>
    <message>
        <source>Without a wanted range, a valve clearance under this share of the median of the engine&apos;s other valves of its side is asked about first.</source>
        <extracomment>clearance-beside-share, text</extracomment>
        <translation>Sin rango nominal, se pregunta primero por un juego de válvula que quede bajo esta fracción de la mediana de las demás válvulas de su lado en el motor.</translation>
    </message>
    <message>
        <source>Valves of one side are set alike: wear or the feeler gauge alone puts none of them out by half. It is only asked about, since the manual alone says what is right.</source>
        <extracomment>clearance-beside-share, comment</extracomment>
        <translation>Las válvulas de un lado se ajustan igual: ni el desgaste ni la galga solos desvían una a la mitad. Solo se pregunta, pues solo el manual dice qué es lo correcto.</translation>
    </message>
    <message>
        <source>Such a clearance is only asked about where it is less than that median by at least this.</source>
        <extracomment>clearance-beside-less, text</extracomment>
        <translation>Por un juego así solo se pregunta si es menor que esa mediana al menos en esto.</translation>
    </message>
    <message>
        <source>Two steps of a common feeler gauge: between small clearances half of the other is soon reached.</source>
        <extracomment>clearance-beside-less, comment</extracomment>
        <translation>Dos pasos de una galga corriente: entre juegos pequeños pronto se llega a la mitad del otro.</translation>
    </message>
    <message>
        <source>And where at least so many other valves of its side were measured.</source>
        <extracomment>clearance-beside-least, text</extracomment>
        <translation>Y si se midieron al menos tantas otras válvulas de su lado.</translation>
    </message>
    <message>
        <source>Of two valves nobody can say which is the odd one.</source>
        <extracomment>clearance-beside-least, comment</extracomment>
        <translation>De dos válvulas nadie puede decir cuál es la que se aparta.</translation>
    </message>
    <message>
        <source>An entry this many times above or below the other cylinders or the limits is asked about: perhaps the decimal point slipped.</source>
        <extracomment>slip-factor, text</extracomment>
        <translation>Se pregunta por una entrada que esté este número de veces por encima o por debajo de los otros cilindros o de los límites: quizá se corrió la coma decimal.</translation>
    </message>
    <message>
        <source>A decimal slip is a factor of 10; a dead cylinder reads low for a reason, so the question is only asked.</source>
        <extracomment>slip-factor, comment</extracomment>
        <translation>Una coma corrida es un factor de 10; un cilindro muerto da poco por alguna razón, así que solo se pregunta.</translation>
    </message>
    <message>
        <source>A low entry looks like a slipped decimal point where ten times as much would lie within this factor of what is usual.</source>
        <extracomment>slip-fits, text</extracomment>
        <translation>Una entrada baja parece una coma corrida si diez veces más quedaría dentro de este factor de lo habitual.</translation>
    </message>
    <message>
        <source>A low reading may be a dead cylinder just as well.</source>
        <extracomment>slip-fits, comment</extracomment>
        <translation>Una lectura baja puede ser igualmente un cilindro muerto.</translation>
    </message>
    <message>
        <source>A reading that can&apos;t be told from a limit is called close to it where they lie no further apart than this share of the pressure, in leak-down of the set pressure; else its doubt is called wide.</source>
        <extracomment>near-limit, text</extracomment>
        <translation>Una lectura que no se distingue de un límite se llama cercana a él cuando no los separa más que esta fracción de la presión, en la prueba de estanqueidad de la presión ajustada; si no, se llama grande a su incertidumbre.</translation>
    </message>
    <message>
        <source>About what a fine gauge and a steady hand tell apart at best.</source>
        <extracomment>near-limit, comment</extracomment>
        <translation>Más o menos lo que distinguen, en el mejor caso, un manómetro fino y una mano firme.</translation>
    </message>
    <message>
        <source>An entry at least this many times above or below what can be expected is asked about where its digits in another unit would lie within that factor of it: perhaps the dial was read in that unit.</source>
        <extracomment>other-unit-apart, text</extracomment>
        <translation>Se pregunta por una entrada que está al menos este número de veces por encima o por debajo de lo esperable cuando sus cifras en otra unidad quedarían dentro de ese factor: quizá se leyó la escala en esa unidad.</translation>
    </message>
    <message>
        <source>Many dials have a scale in bar and one in psi, and who is used to the one types it. Sound cylinders of one engine differ by less.</source>
        <extracomment>other-unit-apart, comment</extracomment>
        <translation>Muchos manómetros tienen una escala en bar y otra en psi, y quien está hecho a una la escribe. Los cilindros sanos de un motor difieren en menos.</translation>
    </message>
    <message>
        <source>What a petrol engine&apos;s cranking reading is held against for that, where neither other readings nor limits are known.</source>
        <extracomment>usual-cranking, text</extracomment>
        <translation>Con qué se compara para ello la compresión de un motor de gasolina cuando no se conocen ni otras lecturas ni límites.</translation>
    </message>
    <message>
        <source>Most read between 7 and 14 bar; only a slip of the unit is told by it.</source>
        <extracomment>usual-cranking, comment</extracomment>
        <translation>La mayoría marca entre 7 y 14 bar; con ello solo se reconoce una unidad confundida.</translation>
    </message>
    <message>
        <source>What a diesel&apos;s cranking reading is held against for that.</source>
        <extracomment>usual-cranking-diesel, text</extracomment>
        <translation>Con qué se compara para ello la compresión de un diésel.</translation>
    </message>
    <message>
        <source>Most read between 20 and 40 bar.</source>
        <extracomment>usual-cranking-diesel, comment</extracomment>
        <translation>La mayoría marca entre 20 y 40 bar.</translation>
    </message>
    <message>
        <source>What a leak-down tester&apos;s set pressure is held against for that, where its card names none.</source>
        <extracomment>usual-set, text</extracomment>
        <translation>Con qué se compara para ello la presión ajustada de un comprobador de estanqueidad cuando su ficha no da ninguna.</translation>
    </message>
    <message>
        <source>80 to 100 psi are common.</source>
        <extracomment>usual-set, comment</extracomment>
        <translation>Son habituales de 80 a 100 psi.</translation>
    </message>
    <message>
        <source>Lower end of the readings with a working decompressor.</source>
        <extracomment>decompressor-low, text</extracomment>
        <translation>Extremo inferior de las lecturas con un descompresor que actúa.</translation>
    </message>
    <message>
        <source>57 to 85 psi with the decompressor working.</source>
        <extracomment>decompressor-low, comment; decompressor-high, comment</extracomment>
        <translation>De 57 a 85 psi con el descompresor actuando.</translation>
    </message>
    <message>
        <source>Upper end of the readings with a working decompressor.</source>
        <extracomment>decompressor-high, text</extracomment>
        <translation>Extremo superior de las lecturas con un descompresor que actúa.</translation>
    </message>
    <message>
        <source>Change of the first cylinder between start and end of a test that is put down to the battery.</source>
        <extracomment>drift, text</extracomment>
        <translation>Cambio del primer cilindro entre el principio y el final de una prueba que se atribuye a la batería.</translation>
    </message>
    <message>
        <source>Under it, repeats of one cylinder scatter anyway.</source>
        <extracomment>drift, comment</extracomment>
        <translation>Por debajo de ello, las repeticiones de un cilindro se dispersan de todos modos.</translation>
    </message>
    <message>
        <source>How far a regulator may sag under flow without being seen, with one gauge only, as a share of the set pressure.</source>
        <extracomment>droop, text</extracomment>
        <translation>Cuánto puede ceder un regulador con el caudal sin que se vea, con un solo manómetro, como fracción de la presión ajustada.</translation>
    </message>
    <message>
        <source>Two-gauge testers show it; one-gauge testers don&apos;t.</source>
        <extracomment>droop, comment</extracomment>
        <translation>Los comprobadores de dos manómetros lo muestran; los de uno, no.</translation>
    </message>
    <message>
        <source>Length of a connecting rod that is not on the engine card, in strokes.</source>
        <extracomment>rod-over-stroke, text</extracomment>
        <translation>Longitud de una biela que no está en la ficha del motor, en carreras.</translation>
    </message>
    <message>
        <source>Most engines lie between 1.5 and 2; it changes a reading by well under 1 %.</source>
        <extracomment>rod-over-stroke, comment</extracomment>
        <translation>La mayoría de los motores están entre 1,5 y 2; cambia una lectura bastante menos del 1 %.</translation>
    </message>
    <message>
        <source>Without a factory figure, a reading under this share of the least that makers in general ask for is a fault.</source>
        <extracomment>far-below-usual, text</extracomment>
        <translation>Sin cifra de fábrica, una lectura por debajo de esta fracción de lo mínimo que piden los fabricantes en general es un fallo.</translation>
    </message>
    <message>
        <source>Makers&apos; figures differ by a fifth or so, not by half. Not said where something lowered the reading by who knows how much.</source>
        <extracomment>far-below-usual, comment</extracomment>
        <translation>Las cifras de los fabricantes difieren en una quinta parte o así, no en la mitad. No se dice donde algo bajó la lectura en quién sabe cuánto.</translation>
    </message>
    <message>
        <source>The same for a diesel.</source>
        <extracomment>far-below-usual-diesel, text</extracomment>
        <translation>Lo mismo para un diésel.</translation>
    </message>
    <message>
        <source>A diesel fires by the heat of its compression alone: it hardly starts with less.</source>
        <extracomment>far-below-usual-diesel, comment</extracomment>
        <translation>Un diésel enciende solo por el calor de su compresión: con menos apenas arranca.</translation>
    </message>
    <message>
        <source>Doubt of a compression ratio that is marked as guessed.</source>
        <extracomment>guessed-ratio-doubt, text</extracomment>
        <translation>Incertidumbre de una relación de compresión marcada como estimada.</translation>
    </message>
    <message>
        <source>Half the way to the next figure that a maker would print.</source>
        <extracomment>guessed-ratio-doubt, comment</extracomment>
        <translation>La mitad del camino hasta la siguiente cifra que publicaría un fabricante.</translation>
    </message>
    <message>
        <source>Intake closing after bottom dead centre, at the seat, where the card does not give it.</source>
        <extracomment>intake-closing, text</extracomment>
        <translation>Cierre de admisión después del punto muerto inferior, en el asiento, cuando la ficha no lo da.</translation>
    </message>
    <message>
        <source>Road engines lie between about 50 and 80 degrees.</source>
        <extracomment>intake-closing, comment</extracomment>
        <translation>Los motores de calle están entre unos 50 y 80 grados.</translation>
    </message>
    <message>
        <source>Exhaust port closing of a two-stroke after bottom dead centre, where the card does not give it.</source>
        <extracomment>port-closing, text</extracomment>
        <translation>Cierre de la lumbrera de escape de un dos tiempos después del punto muerto inferior, cuando la ficha no lo da.</translation>
    </message>
    <message>
        <source>Small two-strokes open their exhaust port 85 to 105 degrees before bottom dead centre and close it as long after.</source>
        <extracomment>port-closing, comment</extracomment>
        <translation>Los dos tiempos pequeños abren su lumbrera de escape de 85 a 105 grados antes del punto muerto inferior y la cierran otro tanto después.</translation>
    </message>
    <message>
        <source>Doubt of an assumed closing, to either side.</source>
        <extracomment>closing-doubt, text</extracomment>
        <translation>Incertidumbre de un cierre supuesto, a cada lado.</translation>
    </message>
    <message>
        <source>Two standard deviations of what road engines have, as every +- on these pages.</source>
        <extracomment>closing-doubt, comment</extracomment>
        <translation>Dos desviaciones típicas de lo que tienen los motores de carretera, como cada ± de estas páginas.</translation>
    </message>
    <message>
        <source>Doubt of a closing that is on the card, to either side.</source>
        <extracomment>closing-known-doubt, text</extracomment>
        <translation>Incertidumbre de un cierre que está en la ficha, a cada lado.</translation>
    </message>
    <message>
        <source>Wear of the drive and clearance; two standard deviations.</source>
        <extracomment>closing-known-doubt, comment</extracomment>
        <translation>Desgaste de la distribución y juego de válvulas; dos desviaciones típicas.</translation>
    </message>
    <message>
        <source>Doubt of the closing with variable valve timing, to either side.</source>
        <extracomment>variable-timing-doubt, text</extracomment>
        <translation>Incertidumbre del cierre con distribución variable, a cada lado.</translation>
    </message>
    <message>
        <source>At cranking speed most stand at a stop, but which one is seldom known.</source>
        <extracomment>variable-timing-doubt, comment</extracomment>
        <translation>A la velocidad de arranque la mayoría están en un tope, pero rara vez se sabe en cuál.</translation>
    </message>
    <message>
        <source>A valve closes on its seat at least this much later than at the lift that its timing is quoted for.</source>
        <extracomment>lift-to-seat-least, text</extracomment>
        <translation>Una válvula cierra en su asiento al menos este tanto más tarde que en la alzada a la que se indica su distribución.</translation>
    </message>
    <message>
        <source>1 mm or 0.050 in of lift.</source>
        <extracomment>lift-to-seat-least, comment; lift-to-seat-most, comment</extracomment>
        <translation>1 mm o 0,050 in de alzada.</translation>
    </message>
    <message>
        <source>And at most this much.</source>
        <extracomment>lift-to-seat-most, text</extracomment>
        <translation>Y como máximo este tanto.</translation>
    </message>
    <message>
        <source>Cranking speed where none is noted.</source>
        <extracomment>cranking-speed, text</extracomment>
        <translation>Velocidad de arranque cuando no hay ninguna anotada.</translation>
    </message>
    <message>
        <source>Starters turn an engine without plugs at 200 to 350 rpm.</source>
        <extracomment>cranking-speed, comment; speed-unknown-doubt, comment</extracomment>
        <translation>Los motores de arranque hacen girar un motor sin bujías a 200 a 350 rpm.</translation>
    </message>
    <message>
        <source>Speed near top dead centre over the mean cranking speed, which is what a counter shows.</source>
        <extracomment>speed-dip, text</extracomment>
        <translation>Velocidad cerca del punto muerto superior respecto a la velocidad media de arranque, que es la que marca un cuentavueltas.</translation>
    </message>
    <message>
        <source>As in odds.json: the starter slows down where the gas pushes back.</source>
        <extracomment>speed-dip, comment</extracomment>
        <translation>Como en odds.json: el arranque se frena donde el gas empuja en contra.</translation>
    </message>
    <message>
        <source>Doubt of that factor, one standard uncertainty as a share of the speed.</source>
        <extracomment>speed-dip-doubt, text</extracomment>
        <translation>Incertidumbre de ese factor, una incertidumbre típica como fracción de la velocidad.</translation>
    </message>
    <message>
        <source>As in odds.json.</source>
        <extracomment>speed-dip-doubt, comment; speed-unknown-doubt, comment; speed-known-doubt, comment; day-scatter, comment</extracomment>
        <translation>Como en odds.json.</translation>
    </message>
    <message>
        <source>Doubt of a cranking speed that was not noted, one standard uncertainty.</source>
        <extracomment>speed-unknown-doubt, text</extracomment>
        <translation>Incertidumbre de una velocidad de arranque no anotada, una incertidumbre típica.</translation>
    </message>
    <message>
        <source>The same of one that was noted.</source>
        <extracomment>speed-known-doubt, text</extracomment>
        <translation>Lo mismo de una anotada.</translation>
    </message>
    <message>
        <source>Cylinder walls of a warm engine whose coolant temperature is not noted.</source>
        <extracomment>warm-wall, text</extracomment>
        <translation>Paredes del cilindro de un motor caliente cuya temperatura de refrigerante no está anotada.</translation>
    </message>
    <message>
        <source>A cold engine then reads about 10 % lower, as the Thermo King manual says.</source>
        <extracomment>warm-wall, comment</extracomment>
        <translation>Un motor frío da entonces alrededor de un 10 % menos, según dice el manual de Thermo King.</translation>
    </message>
    <message>
        <source>Least share of the open air&apos;s pressure that a cylinder is filled to with the throttle closed.</source>
        <extracomment>closed-throttle-fill-least, text</extracomment>
        <translation>Fracción mínima de la presión del aire libre a la que se llena un cilindro con la mariposa cerrada.</translation>
    </message>
    <message>
        <source>At cranking speed much air passes a closed throttle; how much depends on its stop and on the idle passage.</source>
        <extracomment>closed-throttle-fill-least, comment</extracomment>
        <translation>A la velocidad de arranque pasa mucho aire por una mariposa cerrada; cuánto depende de su tope y del paso de ralentí.</translation>
    </message>
    <message>
        <source>And the largest share.</source>
        <extracomment>closed-throttle-fill-most, text</extracomment>
        <translation>Y la fracción máxima.</translation>
    </message>
    <message>
        <source>Cranking speed that a flat battery is taken to give.</source>
        <extracomment>weak-battery-speed, text</extracomment>
        <translation>Velocidad de arranque que se supone con una batería descargada.</translation>
    </message>
    <message>
        <source>About half of a good one.</source>
        <extracomment>weak-battery-speed, comment</extracomment>
        <translation>Alrededor de la mitad que con una buena.</translation>
    </message>
    <message>
        <source>Hose and gauge of a compression gauge whose volume is not on its card.</source>
        <extracomment>hose-volume, text</extracomment>
        <translation>Manguera y reloj de un manómetro de compresión cuyo volumen no está en su ficha.</translation>
    </message>
    <message>
        <source>A hose of 4 mm bore and half a metre holds 6 cm3, gauge and fittings about as much.</source>
        <extracomment>hose-volume, comment</extracomment>
        <translation>Una manguera de 4 mm de diámetro interior y medio metro contiene 6 cm3; manómetro y racores, otro tanto más o menos.</translation>
    </message>
    <message>
        <source>Pressure that opens the check valve of a compression gauge.</source>
        <extracomment>valve-core-low-pressure, text</extracomment>
        <translation>Presión que abre la válvula antirretorno de un manómetro de compresión.</translation>
    </message>
    <message>
        <source>Cores made for gauges.</source>
        <extracomment>valve-core-low-pressure, comment</extracomment>
        <translation>Núcleos hechos para manómetros.</translation>
    </message>
    <message>
        <source>Pressure that opens a tyre-valve core.</source>
        <extracomment>valve-core-tyre, text</extracomment>
        <translation>Presión que abre un núcleo de válvula de neumático.</translation>
    </message>
    <message>
        <source>They open at 100 to 150 kPa and read 11 to 19 psi low.</source>
        <extracomment>valve-core-tyre, comment</extracomment>
        <translation>Abren a 100 a 150 kPa y dan de 11 a 19 psi menos.</translation>
    </message>
    <message>
        <source>Least share of the oil of a wet test that stays in the chamber.</source>
        <extracomment>oil-kept-least, text</extracomment>
        <translation>Fracción mínima del aceite de una prueba húmeda que se queda en la cámara.</translation>
    </message>
    <message>
        <source>Most oil runs past the rings or is blown out.</source>
        <extracomment>oil-kept-least, comment</extracomment>
        <translation>La mayor parte del aceite se escurre por los segmentos o sale soplado.</translation>
    </message>
    <message>
        <source>Largest share of it.</source>
        <extracomment>oil-kept-most, text</extracomment>
        <translation>Fracción máxima de él.</translation>
    </message>
    <message>
        <source>As above; a flat engine keeps more than an upright one.</source>
        <extracomment>oil-kept-most, comment</extracomment>
        <translation>Como arriba; un motor de cilindros opuestos retiene más que uno vertical.</translation>
    </message>
    <message>
        <source>Cylinders with less swept volume than this count as small: a wet test puts less oil in.</source>
        <extracomment>small-cylinder, text</extracomment>
        <translation>Los cilindros con menos cilindrada que esta cuentan como pequeños: en la prueba húmeda se les echa menos aceite.</translation>
    </message>
    <message>
        <source>Between a motorcycle&apos;s and a car&apos;s.</source>
        <extracomment>small-cylinder, comment</extracomment>
        <translation>Entre el de una motocicleta y el de un automóvil.</translation>
    </message>
    <message>
        <source>Oil of a wet test where the amount is not noted.</source>
        <extracomment>oil-put-in, text</extracomment>
        <translation>Aceite de una prueba húmeda cuando la cantidad no está anotada.</translation>
    </message>
    <message>
        <source>15 ml, one tablespoon, for a car cylinder.</source>
        <extracomment>oil-put-in, comment</extracomment>
        <translation>15 ml, una cucharada, para un cilindro de automóvil.</translation>
    </message>
    <message>
        <source>The same for a small cylinder.</source>
        <extracomment>oil-put-in-small, text</extracomment>
        <translation>Lo mismo para un cilindro pequeño.</translation>
    </message>
    <message>
        <source>About 5 ml, one teaspoon: that manual&apos;s figure for a car cylinder, taken here for small ones.</source>
        <extracomment>oil-put-in-small, comment</extracomment>
        <translation>Unos 5 ml, una cucharadita: la cifra de ese manual para un cilindro de automóvil, tomada aquí para los pequeños.</translation>
    </message>
    <message>
        <source>More oil than this in one cylinder is asked about before a wet reading is kept.</source>
        <extracomment>oil-much, text</extracomment>
        <translation>Con más aceite que este en un cilindro se pregunta antes de guardar una lectura en húmedo.</translation>
    </message>
    <message>
        <source>Above what is usually put in; how much locks an engine depends on its chamber.</source>
        <extracomment>oil-much, comment</extracomment>
        <translation>Más de lo que se suele poner; cuánto bloquea un motor depende de su cámara.</translation>
    </message>
    <message>
        <source>Set pressure of a crankcase test above which the pad asks.</source>
        <extracomment>crankcase-set-most, text</extracomment>
        <translation>Presión ajustada de una prueba del cárter por encima de la cual se pregunta.</translation>
    </message>
    <message>
        <source>Manuals ask for a few psi, mostly under 10; leak-down pressure pushes seals out of their seats.</source>
        <extracomment>crankcase-set-most, comment</extracomment>
        <translation>Los manuales piden unas pocas psi, casi siempre menos de 10; la presión de una prueba de estanqueidad saca los retenes de su asiento.</translation>
    </message>
    <message>
        <source>Oil that fills this share of the chamber or more is warned of: it can lock the engine.</source>
        <extracomment>oil-most-of-chamber, text</extracomment>
        <translation>Se avisa del aceite que llena esta fracción de la cámara o más: puede bloquear el motor.</translation>
    </message>
    <message>
        <source>The oil does not lie flat, and the figures on the card are not exact. Above 90 % no sum is done.</source>
        <extracomment>oil-most-of-chamber, comment</extracomment>
        <translation>El aceite no queda plano, y las cifras de la ficha no son exactas. Por encima del 90 % no se hace ningún cálculo.</translation>
    </message>
    <message>
        <source>Where the amount of oil is not noted, no more than this share of the chamber is taken.</source>
        <extracomment>oil-assumed-of-chamber, text</extracomment>
        <translation>Donde la cantidad de aceite no está anotada, se toma como mucho esta fracción de la cámara.</translation>
    </message>
    <message>
        <source>A teaspoon fills most of the chamber of a very small engine.</source>
        <extracomment>oil-assumed-of-chamber, comment</extracomment>
        <translation>Una cucharadita llena la mayor parte de la cámara de un motor muy pequeño.</translation>
    </message>
    <message>
        <source>What the cranking model may be out by for a whole engine, one standard uncertainty as a share of the reading.</source>
        <extracomment>model-doubt, text</extracomment>
        <translation>Lo que puede desviarse el modelo de arranque para un motor entero, una incertidumbre típica como fracción de la lectura.</translation>
    </message>
    <message>
        <source>Not yet counted on real engines.</source>
        <extracomment>model-doubt, comment; level-doubt, comment</extracomment>
        <translation>Aún no contado en motores reales.</translation>
    </message>
    <message>
        <source>How far the first puff&apos;s share of the final reading may lie from what the model expects and still count as usual, as a share of it.</source>
        <extracomment>first-share-doubt, text</extracomment>
        <translation>Cuánto puede apartarse la parte de la primera embolada en la lectura final de lo que espera el modelo y aún contar como usual, como fracción de ella.</translation>
    </message>
    <message>
        <source>The first pull seldom starts at the same place of the stroke twice.</source>
        <extracomment>first-share-doubt, comment</extracomment>
        <translation>La primera embolada rara vez empieza dos veces en el mismo punto de la carrera.</translation>
    </message>
    <message>
        <source>A test that is expected to tell at least so many bits about where most of the leak is would tell much.</source>
        <extracomment>tells-much, text</extracomment>
        <translation>Una prueba de la que se espera que diga al menos tantos bits sobre por dónde va la mayor parte de la fuga diría mucho.</translation>
    </message>
    <message>
        <source>One bit settles an even question between two paths; half of one turns an even question into about nine to one.</source>
        <extracomment>tells-much, comment</extracomment>
        <translation>Un bit aclara una pregunta igualada entre dos caminos; medio bit convierte una pregunta igualada en alrededor de nueve a uno.</translation>
    </message>
    <message>
        <source>The same for a test that would tell something.</source>
        <extracomment>tells-some, text</extracomment>
        <translation>Lo mismo para una prueba que diría algo.</translation>
    </message>
    <message>
        <source>Turns an even question into about three to one.</source>
        <extracomment>tells-some, comment</extracomment>
        <translation>Convierte una pregunta igualada en alrededor de tres a uno.</translation>
    </message>
    <message>
        <source>The same for a test that would tell little; one below this is not proposed.</source>
        <extracomment>tells-little, text</extracomment>
        <translation>Lo mismo para una prueba que diría poco; una por debajo de esto no se propone.</translation>
    </message>
    <message>
        <source>Turns an even question into about five to three.</source>
        <extracomment>tells-little, comment</extracomment>
        <translation>Convierte una pregunta igualada en alrededor de cinco a tres.</translation>
    </message>
    <message>
        <source>What a repair should bring is said, and work on it proposed, where the chance that the part is at fault is at least this.</source>
        <extracomment>repair-from, text</extracomment>
        <translation>Se dice lo que debería traer una reparación, y se propone trabajar en ella, cuando la probabilidad de que la pieza sea la causa del fallo es al menos esta.</translation>
    </message>
    <message>
        <source>Below this a repair is more likely to be for nothing than not, even before its price is looked at.</source>
        <extracomment>repair-from, comment</extracomment>
        <translation>Por debajo de esto es más probable que una reparación sea para nada que lo contrario, incluso antes de mirar su precio.</translation>
    </message>
    <message>
        <source>One outcome is named as the likeliest from this chance on; where none reaches it the two likeliest are named.</source>
        <extracomment>named-from, text</extracomment>
        <translation>Desde esta probabilidad se nombra un solo resultado como el más probable; si ninguno la alcanza, se nombran los dos más probables.</translation>
    </message>
    <message>
        <source>Below one half the others together are likelier.</source>
        <extracomment>named-from, comment</extracomment>
        <translation>Por debajo de la mitad, los otros juntos son más probables.</translation>
    </message>
    <message>
        <source>That nobody listened, or that a valve&apos;s clearance is not known, is said where the chance that it matters is at least this.</source>
        <extracomment>asked-from, text</extracomment>
        <translation>Que nadie escuchó, o que no se conoce el juego de una válvula, se dice donde la probabilidad de que importe es al menos esta.</translation>
    </message>
    <message>
        <source>Below this it would be asked of cylinders that seal well.</source>
        <extracomment>asked-from, comment</extracomment>
        <translation>Por debajo se preguntaría por cilindros que sellan bien.</translation>
    </message>
    <message>
        <source>From this chance on an owner reads that something is very likely.</source>
        <extracomment>likely-very, text</extracomment>
        <translation>Desde esta probabilidad el dueño lee que algo es muy probable.</translation>
    </message>
    <message>
        <source>Nine cases of ten.</source>
        <extracomment>likely-very, comment</extracomment>
        <translation>Nueve casos de diez.</translation>
    </message>
    <message>
        <source>And from this one on that it is likely; under it, that a cylinder leaks there or seals well after all.</source>
        <extracomment>likely, text</extracomment>
        <translation>Y desde esta, que es probable; por debajo, que un cilindro pierde por ahí o al final sella bien.</translation>
    </message>
    <message>
        <source>Three cases of four.</source>
        <extracomment>likely, comment</extracomment>
        <translation>Tres casos de cuatro.</translation>
    </message>
    <message>
        <source>From this one on that it is more likely than not.</source>
        <extracomment>likely-more, text</extracomment>
        <translation>Desde esta, que es más probable que no.</translation>
    </message>
    <message>
        <source>Nearer to one half nothing is likelier than its contrary.</source>
        <extracomment>likely-more, comment</extracomment>
        <translation>Más cerca de la mitad nada es más probable que lo contrario.</translation>
    </message>
    <message>
        <source>A difference between two visits counts as a change when it is more than this many of its own standard uncertainties.</source>
        <extracomment>change-real, text</extracomment>
        <translation>Una diferencia entre dos visitas cuenta como cambio cuando es más de este número de sus propias incertidumbres típicas.</translation>
    </message>
    <message>
        <source>2 is what every +- on these pages stands for: about 95 %.</source>
        <extracomment>change-real, comment</extracomment>
        <translation>2 es lo que significa cada ± en estas páginas: alrededor del 95 %.</translation>
    </message>
    <message>
        <source>And as one beyond doubt from this many.</source>
        <extracomment>change-beyond-doubt, text</extracomment>
        <translation>Y como un cambio sin lugar a dudas desde este número.</translation>
    </message>
    <message>
        <source>One chance in some 370 that readings of an unchanged cylinder lie so far apart.</source>
        <extracomment>change-beyond-doubt, comment</extracomment>
        <translation>Una posibilidad entre unas 370 de que las lecturas de un cilindro sin cambios estén tan separadas.</translation>
    </message>
    <message>
        <source>Scatter of all final readings of one engine from one day to the next where the cranking speed is not noted: speed, battery, weather.</source>
        <extracomment>day-scatter, text</extracomment>
        <translation>Dispersión de todas las lecturas finales de un motor de un día a otro cuando la velocidad de arranque no está anotada: velocidad, batería, tiempo atmosférico.</translation>
    </message>
    <message>
        <source>The same where the cranking speed is noted.</source>
        <extracomment>day-scatter-timed, text</extracomment>
        <translation>Lo mismo cuando la velocidad de arranque está anotada.</translation>
    </message>
    <message>
        <source>What is left: the speed&apos;s own error, weather, temperature of the air.</source>
        <extracomment>day-scatter-timed, comment</extracomment>
        <translation>Lo que queda: el error propio de la velocidad, el tiempo atmosférico, la temperatura del aire.</translation>
    </message>
    <message>
        <source>Scatter of a leak&apos;s area from one leak-down reading to the next, where it was not repeated.</source>
        <extracomment>leak-repeat, text</extracomment>
        <translation>Dispersión del área de una fuga de una lectura de estanqueidad a la siguiente, cuando no se repitió.</translation>
    </message>
    <message>
        <source>As in odds.json: rings find another place, a valve another seat.</source>
        <extracomment>leak-repeat, comment</extracomment>
        <translation>Como en odds.json: los segmentos encuentran otro sitio, una válvula otro asiento.</translation>
    </message>
    <message>
        <source>Doubt of a restrictor&apos;s effective area, as a share of it.</source>
        <extracomment>restrictor-doubt, text</extracomment>
        <translation>Incertidumbre del área efectiva de un restrictor, como fracción de ella.</translation>
    </message>
    <message>
        <source>Discharge coefficient assumed, edges burred, warm air. Cancels where both readings come from one tester. The odds take it from here too.</source>
        <extracomment>restrictor-doubt, comment</extracomment>
        <translation>Coeficiente de descarga supuesto, rebabas en los bordes, aire caliente. Se anula cuando ambas lecturas vienen de un mismo comprobador. Las probabilidades también lo toman de aquí.</translation>
    </message>
    <message>
        <source>The same of a restrictor that is not on the tester&apos;s card.</source>
        <extracomment>restrictor-unknown-doubt, text</extracomment>
        <translation>Lo mismo de un restrictor que no está en la ficha del comprobador.</translation>
    </message>
    <message>
        <source>Between 0.9 and 1.15 mm where 1.016 mm is assumed.</source>
        <extracomment>restrictor-unknown-doubt, comment</extracomment>
        <translation>Entre 0,9 y 1,15 mm donde se supone 1,016 mm.</translation>
    </message>
    <message>
        <source>The same where the bore is large enough for the larger restrictor: the tester may have either.</source>
        <extracomment>restrictor-unknown-doubt-large, text</extracomment>
        <translation>Lo mismo cuando el diámetro basta para el restrictor mayor: el comprobador puede tener cualquiera de los dos.</translation>
    </message>
    <message>
        <source>AC 43.13-1B names 0.040 and 0.060 in: (60/40)² = 2.25 in area, which two of these standard uncertainties just reach.</source>
        <extracomment>restrictor-unknown-doubt-large, comment</extracomment>
        <translation>AC 43.13-1B nombra 0,040 y 0,060 in: (60/40)² = 2,25 en área, lo que alcanzan justo dos de estas incertidumbres típicas.</translation>
    </message>
    <message>
        <source>Doubt of a leakage that was converted to another tester: this share of the way from a hole&apos;s to a narrow gap&apos;s.</source>
        <extracomment>leak-law-doubt, text</extracomment>
        <translation>Incertidumbre de una pérdida convertida a otro comprobador: esta fracción del camino entre la de un agujero y la de una rendija estrecha.</translation>
    </message>
    <message>
        <source>Hole and gap are two examples; most leaks lie between them or near the hole.</source>
        <extracomment>leak-law-doubt, comment</extracomment>
        <translation>Agujero y rendija son dos ejemplos; la mayoría de las fugas están entre ellos o cerca del agujero.</translation>
    </message>
    <message>
        <source>Doubt of a reading that the cranking model converted: this share of the correction.</source>
        <extracomment>correction-doubt, text</extracomment>
        <translation>Incertidumbre de una lectura convertida por el modelo de arranque: esta fracción de la corrección.</translation>
    </message>
    <message>
        <source>The model is asked for ratios only. Not yet counted on real engines.</source>
        <extracomment>correction-doubt, comment</extracomment>
        <translation>Al modelo solo se le piden relaciones. Aún no contado en motores reales.</translation>
    </message>
    <message>
        <source>How far two gauges read apart on one cylinder because of hose and check valve, where the model can&apos;t tell.</source>
        <extracomment>other-gauge-doubt, text</extracomment>
        <translation>Cuánto difieren las lecturas de dos manómetros en un cilindro por la manguera y la válvula antirretorno, donde el modelo no puede decirlo.</translation>
    </message>
    <message>
        <source>A short hose more or less at the chamber end.</source>
        <extracomment>other-gauge-doubt, comment</extracomment>
        <translation>Una manguera corta más o menos en el lado de la cámara.</translation>
    </message>
    <message>
        <source>How far a reading with the induction taken off may lie from one with it fitted and the throttle held open.</source>
        <extracomment>induction-off-doubt, text</extracomment>
        <translation>Cuánto puede apartarse una lectura con la admisión desmontada de una con ella montada y la mariposa abierta.</translation>
    </message>
    <message>
        <source>Ports breathe more freely without pipes; waves are small at cranking speed.</source>
        <extracomment>induction-off-doubt, comment</extracomment>
        <translation>Los conductos respiran mejor sin tubos; las ondas son pequeñas a la velocidad de arranque.</translation>
    </message>
    <message>
        <source>How far a flat battery may pull a reading down where the cranking speed is not noted.</source>
        <extracomment>weak-battery-doubt, text</extracomment>
        <translation>Cuánto puede bajar una lectura una batería descargada cuando la velocidad de arranque no está anotada.</translation>
    </message>
    <message>
        <source>At half the speed the model reads about 10 % lower.</source>
        <extracomment>weak-battery-doubt, comment</extracomment>
        <translation>A la mitad de la velocidad el modelo da alrededor de un 10 % menos.</translation>
    </message>
    <message>
        <source>Wet tests are compared when the oil put in differs by less than this share.</source>
        <extracomment>oil-alike, text</extracomment>
        <translation>Las pruebas húmedas se comparan cuando el aceite echado difiere en menos de esta fracción.</translation>
    </message>
    <message>
        <source>A squirt from a can is not measured better.</source>
        <extracomment>oil-alike, comment</extracomment>
        <translation>Un chorro de aceitera no se mide mejor.</translation>
    </message>
    <message>
        <source>How far warm and cold may move a leakage, as a share of it.</source>
        <extracomment>leak-heat-doubt, text</extracomment>
        <translation>Cuánto pueden mover una pérdida caliente y frío, como fracción de ella.</translation>
    </message>
    <message>
        <source>Gaps close and oil thins as an engine warms; which one wins is not known beforehand.</source>
        <extracomment>leak-heat-doubt, comment</extracomment>
        <translation>Las holguras se cierran y el aceite se aclara al calentarse un motor; cuál de los dos gana no se sabe de antemano.</translation>
    </message>
    <message>
        <source>How far two crankcase tests of one chamber lie apart, as a share of the pressure that is lost.</source>
        <extracomment>hold-repeat, text</extracomment>
        <translation>Cuánto se separan dos pruebas del cárter de una misma cámara, como parte de la presión perdida.</translation>
    </message>
    <message>
        <source>Plugs over the ports and hoses never seal twice alike; no count of it is known.</source>
        <extracomment>hold-repeat, comment</extracomment>
        <translation>Los tapones de las lumbreras y las mangueras nunca cierran igual dos veces; no se conoce ningún recuento.</translation>
    </message>
    <message>
        <source>From this many repairs with a prediction on, it is said how many predictions held.</source>
        <extracomment>repairs-to-count, text</extracomment>
        <translation>Desde este número de reparaciones con previsión se dice cuántas previsiones se cumplieron.</translation>
    </message>
    <message>
        <source>Fewer say nothing: of five that hold, one more or less moves the share by a fifth.</source>
        <extracomment>repairs-to-count, comment</extracomment>
        <translation>Menos no dicen nada: de cinco que se cumplen, una más o menos mueve la parte en un quinto.</translation>
    </message>
    <message>
        <source>Readings of fewer days than this make no trend.</source>
        <extracomment>trend-least-days, text</extracomment>
        <translation>Lecturas de menos días que estos no hacen tendencia.</translation>
    </message>
    <message>
        <source>A change by the year can&apos;t be told from a few days.</source>
        <extracomment>trend-least-days, comment</extracomment>
        <translation>Un cambio por año no se puede deducir de unos pocos días.</translation>
    </message>
    <message>
        <source>Before cranking: fuel mist leaves the plug holes and sparks light it. Ground the ignition leads (coils on the plugs: pull their connectors, or as the manual says), shut off fuel or injectors, no flame, plug holes pointed away from face and phone. Keep clear of moving parts. In gear the vehicle jumps: neutral.</source>
        <extracomment>cranking, text</extracomment>
        <translation>Antes de dar arranque: por los agujeros de bujía sale niebla de combustible, y las chispas la encienden. Poner a masa los cables de encendido (bobinas sobre las bujías: desenchufar sus conectores, o como diga el manual), cortar el combustible o los inyectores, ninguna llama, cara y teléfono fuera de la dirección de los agujeros de bujía. Mantenerse apartado de las piezas en movimiento. Con una marcha puesta el vehículo salta: poner la caja en punto muerto (neutral).</translation>
    </message>
    <message>
        <source>Diesel: never open an injection line, a rail or an injector under pressure: the jet goes through skin. The engine&apos;s manual says how the pressure is let off. Glow plugs: supply off, its ends insulated. Use the adapter made for this injector&apos;s or glow plug&apos;s hole.</source>
        <extracomment>diesel-lines, text</extracomment>
        <translation>Diésel: no abrir nunca una tubería de inyección, un raíl o un inyector con presión: el chorro atraviesa la piel. El manual del motor dice cómo se descarga la presión. Bujías de precalentamiento: desconectar la alimentación y aislar sus extremos. Usar el adaptador hecho para el agujero de este inyector o de esta bujía de precalentamiento.</translation>
    </message>
    <message>
        <source>Before cranking a diesel: cut the fuel off as its manual says, so that nothing is injected or fires, and prove it by cranking before anything is opened. Gauge and hose for 40 bar or more. Face and hands away from open holes. Keep clear of moving parts. In gear the vehicle jumps: neutral.</source>
        <extracomment>diesel-cranking, text</extracomment>
        <translation>Antes de dar arranque a un diésel: cortar el combustible como diga su manual, de modo que no se inyecte ni se encienda nada, y demostrarlo dando arranque antes de abrir nada. Manómetro y manguera para 40 bar o más. Cara y manos lejos de los agujeros abiertos. Mantenerse apartado de las piezas en movimiento. Con una marcha puesta el vehículo salta: poner la caja en punto muerto (neutral).</translation>
    </message>
    <message>
        <source>The adapter&apos;s reach must not touch piston or valve. With it screwed in, turn the engine two turns by hand before using the starter.</source>
        <extracomment>adapter, text</extracomment>
        <translation>El adaptador no debe ser tan largo que toque el pistón o una válvula. Con él enroscado, girar el motor dos vueltas a mano antes de usar el motor de arranque.</translation>
    </message>
    <message>
        <source>Only a little oil. Too much can&apos;t be compressed: it locks the engine and can bend a rod. Turn it over by hand, two turns, before the starter. Eyes away from the plug holes when you crank: it sprays. Never on a diesel.</source>
        <extracomment>oil, text</extracomment>
        <translation>Solo un poco de aceite. Si es demasiado, no se puede comprimir: bloquea el motor y puede doblar una biela. Girarlo a mano, dos vueltas, antes de usar el motor de arranque. Mantener los ojos lejos de los agujeros de bujía al dar arranque: salpica. Nunca en un diésel.</translation>
    </message>
    <message>
        <source>With air in, the engine can turn without warning. Nobody near crank, fan, wheel or propeller, no tool left on the crank. Hold it with gear and brake or a second person, raise the pressure slowly, turn only in running direction. Wear eye protection.</source>
        <extracomment>air, text</extracomment>
        <translation>Con el aire puesto, el motor puede girar sin aviso. Nadie debe estar cerca de cigüeñal, ventilador, rueda o hélice, ni quedar ninguna herramienta puesta en el cigüeñal. Sujetarlo con una marcha puesta y el freno o con una segunda persona, subir la presión despacio, girarlo únicamente en el sentido de giro del motor. Llevar protección ocular.</translation>
    </message>
    <message>
        <source>Crankcase: only the few psi that the engine&apos;s manual gives. Leak-down pressure pushes the shaft seals out of their seats. Raise it slowly, and let it off before anything that closes the case is loosened. Wear eye protection.</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Cárter: solo las pocas décimas de bar que indica el manual del motor. La presión de la prueba de estanqueidad saca los retenes de su asiento. Subir la presión del cárter despacio y descargarla antes de aflojar nada que lo cierre. Llevar protección ocular.</translation>
    </message>
    <message>
        <source>Staking a valve: make sure that the piston is clear. Light, square taps on the stem only. Springs and collets can jump: protect your eyes.</source>
        <extracomment>staking, text</extracomment>
        <translation>Asentar una válvula con toques: asegurarse de que el pistón está lejos de ella. Toques ligeros y rectos, solo en el vástago. Los muelles y las chavetas pueden saltar: protegerse los ojos.</translation>
    </message>
    <message>
        <source>Leave the coolant cap of a hot engine closed: it scalds. Let it cool first.</source>
        <extracomment>coolant-cap, text</extracomment>
        <translation>Dejar cerrado el tapón del refrigerante de un motor caliente: escalda. Dejarlo enfriar antes.</translation>
    </message>
    <message>
        <source>Running an engine indoors: exhaust is poison. Doors open, exhaust led outside.</source>
        <extracomment>indoors, text</extracomment>
        <translation>Motor en marcha en un local cerrado: el gas de escape es veneno. Puertas abiertas, escape conducido al exterior.</translation>
    </message>
    <message>
        <source>Brake cleaner and solvent mist do not belong near heat, flame or sparks.</source>
        <extracomment>solvents, text</extracomment>
        <translation>La niebla de limpiafrenos y de disolvente no debe estar cerca de calor, llamas o chispas.</translation>
    </message>
    <message>
        <source>Aircraft: this app decides nothing about airworthiness. The maker&apos;s instructions and a licensed engineer do.</source>
        <extracomment>aircraft, text</extracomment>
        <translation>Aeronaves: esta app no decide nada sobre la aeronavegabilidad. Deciden las instrucciones del fabricante y un técnico aeronáutico con licencia.</translation>
    </message>
    <message>
        <source>The tests named here mean cranking, fuel mist, oil or compressed air: whoever does them reads the app&apos;s cautions and the engine&apos;s manual first.</source>
        <extracomment>report-test, text</extracomment>
        <translation>Las pruebas nombradas aquí suponen dar arranque, niebla de combustible, aceite o aire comprimido: quien las haga lee antes las precauciones de la app y el manual del motor.</translation>
    </message>
    <message>
        <source>Ask the workshop before you start or run an engine that is at fault: running on can make a small repair a large one.</source>
        <extracomment>report-fault, text</extracomment>
        <translation>Preguntar al taller antes de arrancar o usar un motor con un fallo: seguir usándolo puede convertir una reparación pequeña en una grande.</translation>
    </message>
    <message>
        <source>The engine&apos;s own manual, local rules and licensed practice come before anything said here.</source>
        <extracomment>defers, text</extracomment>
        <translation>El manual propio del motor, las normas locales y la práctica autorizada van por delante de todo lo que se dice aquí.</translation>
    </message>
    <message>
        <source>Chance that the rings of a tested cylinder are at fault, before any evidence.</source>
        <extracomment>rings-fault, text</extracomment>
        <translation>Probabilidad de que los segmentos de un cilindro probado sean la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>Worn or stuck rings: mostly 15 to 65 %.</source>
        <extracomment>rings-fault, comment; rings-leaking, comment</extracomment>
        <translation>Segmentos gastados o pegados: casi siempre de 15 a 65 %.</translation>
    </message>
    <message>
        <source>Effective leak area past the rings when sound (median), for a bore of 75 mm.</source>
        <extracomment>rings-sound, text</extracomment>
        <translation>Área de fuga efectiva por los segmentos en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Rings always pass some air: 1 to 5 % leakage at 80 psi on a sound cylinder.</source>
        <extracomment>rings-sound, comment</extracomment>
        <translation>Los segmentos siempre dejan pasar algo de aire: de 1 a 5 % de pérdida a 80 psi en un cilindro en buen estado.</translation>
    </message>
    <message>
        <source>Its spread: standard deviation of the logarithm.</source>
        <extracomment>rings-sound-spread, text; rings-leaking-spread, text; intake-sound-spread, text; intake-leaking-spread, text; exhaust-sound-spread, text; exhaust-leaking-spread, text; gasket-sound-spread, text; gasket-leaking-spread, text; next_cylinder-sound-spread, text; next_cylinder-leaking-spread, text; coolant-sound-spread, text; coolant-leaking-spread, text; decompressor-sound-spread, text; decompressor-leaking-spread, text</extracomment>
        <translation>Su dispersión: desviación típica del logaritmo.</translation>
    </message>
    <message>
        <source>About a factor of 1.6 either way.</source>
        <extracomment>rings-sound-spread, comment</extracomment>
        <translation>Alrededor de un factor de 1,6 en cada sentido.</translation>
    </message>
    <message>
        <source>Effective leak area past the rings when at fault (median), for a bore of 75 mm.</source>
        <extracomment>rings-leaking, text</extracomment>
        <translation>Área de fuga efectiva por los segmentos cuando fallan (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Faults come in every size.</source>
        <extracomment>rings-leaking-spread, comment; intake-leaking-spread, comment; exhaust-leaking-spread, comment; gasket-leaking-spread, comment; next_cylinder-leaking-spread, comment; coolant-leaking-spread, comment; decompressor-leaking-spread, comment</extracomment>
        <translation>Los fallos son de todos los tamaños.</translation>
    </message>
    <message>
        <source>Chance that the intake valves of a tested cylinder are at fault, before any evidence.</source>
        <extracomment>intake-fault, text</extracomment>
        <translation>Probabilidad de que las válvulas de admisión de un cilindro probado sean la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>A burnt, bent or dirty seat: anything from a hiss to an open hole.</source>
        <extracomment>intake-fault, comment; intake-leaking, comment</extracomment>
        <translation>Un asiento quemado, doblado o sucio: cualquier cosa entre un siseo y un agujero abierto.</translation>
    </message>
    <message>
        <source>Effective leak area past the intake valves when sound (median), for a bore of 75 mm.</source>
        <extracomment>intake-sound, text</extracomment>
        <translation>Área de fuga efectiva por las válvulas de admisión en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>A valve must not leak at all (Continental M84-15); what is left is under what a gauge shows.</source>
        <extracomment>intake-sound, comment</extracomment>
        <translation>Una válvula no debe perder nada (Continental M84-15); lo que queda está por debajo de lo que muestra un manómetro.</translation>
    </message>
    <message>
        <source>About a factor of two and a half either way.</source>
        <extracomment>intake-sound-spread, comment; exhaust-sound-spread, comment; coolant-sound-spread, comment; decompressor-sound-spread, comment</extracomment>
        <translation>Alrededor de un factor de dos y medio en cada sentido.</translation>
    </message>
    <message>
        <source>Effective leak area past the intake valves when at fault (median), for a bore of 75 mm.</source>
        <extracomment>intake-leaking, text</extracomment>
        <translation>Área de fuga efectiva por las válvulas de admisión cuando fallan (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the exhaust valves of a tested cylinder are at fault, before any evidence.</source>
        <extracomment>exhaust-fault, text</extracomment>
        <translation>Probabilidad de que las válvulas de escape de un cilindro probado sean la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>Runs hotter than the intake valve and burns more often.</source>
        <extracomment>exhaust-fault, comment; exhaust-leaking, comment</extracomment>
        <translation>Trabaja más caliente que la válvula de admisión y se quema más a menudo.</translation>
    </message>
    <message>
        <source>Effective leak area past the exhaust valves when sound (median), for a bore of 75 mm.</source>
        <extracomment>exhaust-sound, text</extracomment>
        <translation>Área de fuga efectiva por las válvulas de escape en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>As the intake valve.</source>
        <extracomment>exhaust-sound, comment</extracomment>
        <translation>Como la válvula de admisión.</translation>
    </message>
    <message>
        <source>Effective leak area past the exhaust valves when at fault (median), for a bore of 75 mm.</source>
        <extracomment>exhaust-leaking, text</extracomment>
        <translation>Área de fuga efectiva por las válvulas de escape cuando fallan (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the head gasket to the outside of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>gasket-fault, text</extracomment>
        <translation>Probabilidad de que la junta de culata hacia el exterior de un cilindro probado sea la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>A track burnt through the joint to the outside.</source>
        <extracomment>gasket-fault, comment; gasket-leaking, comment</extracomment>
        <translation>Un surco quemado a través de la junta hacia el exterior.</translation>
    </message>
    <message>
        <source>Effective leak area past the head gasket to the outside when sound (median), for a bore of 75 mm.</source>
        <extracomment>gasket-sound, text</extracomment>
        <translation>Área de fuga efectiva por la junta de culata hacia el exterior en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>A sound joint shows nothing under soapy water, which shows 0.01 L/min.</source>
        <extracomment>gasket-sound, comment</extracomment>
        <translation>Una junta en buen estado no muestra nada bajo agua jabonosa, que muestra 0,01 L/min.</translation>
    </message>
    <message>
        <source>A factor of three either way: what a sound joint passes is seldom measured.</source>
        <extracomment>gasket-sound-spread, comment</extracomment>
        <translation>Un factor de tres en cada sentido: lo que deja pasar una junta en buen estado rara vez se mide.</translation>
    </message>
    <message>
        <source>Effective leak area past the head gasket to the outside when at fault (median), for a bore of 75 mm.</source>
        <extracomment>gasket-leaking, text</extracomment>
        <translation>Área de fuga efectiva por la junta de culata hacia el exterior cuando falla (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the joint to a neighbouring cylinder of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>next_cylinder-fault, text</extracomment>
        <translation>Probabilidad de que la junta con un cilindro vecino de un cilindro probado sea la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>Between two bores the joint is narrowest; one hole serves both cylinders. The chance is for each pair of neighbours.</source>
        <extracomment>next_cylinder-fault, comment; next_cylinder-leaking, comment</extracomment>
        <translation>Entre dos cilindros la junta es más estrecha; un mismo agujero sirve a ambos cilindros. La probabilidad es para cada par de vecinos.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to a neighbouring cylinder when sound (median), for a bore of 75 mm.</source>
        <extracomment>next_cylinder-sound, text</extracomment>
        <translation>Área de fuga efectiva por la junta con un cilindro vecino en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>As the joint to the outside.</source>
        <extracomment>next_cylinder-sound, comment</extracomment>
        <translation>Como la junta hacia el exterior.</translation>
    </message>
    <message>
        <source>A factor of four either way: no test shows so little, so that hardly anything is known of it.</source>
        <extracomment>next_cylinder-sound-spread, comment</extracomment>
        <translation>Un factor de cuatro en cada sentido: ninguna prueba muestra tan poco, de modo que apenas se sabe nada de ello.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to a neighbouring cylinder when at fault (median), for a bore of 75 mm.</source>
        <extracomment>next_cylinder-leaking, text</extracomment>
        <translation>Área de fuga efectiva por la junta con un cilindro vecino cuando falla (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the joint to the coolant of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>coolant-fault, text</extracomment>
        <translation>Probabilidad de que la junta hacia el refrigerante de un cilindro probado sea la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>Bubbles show leaks far smaller than any gauge does.</source>
        <extracomment>coolant-fault, comment; coolant-leaking, comment</extracomment>
        <translation>Las burbujas muestran fugas mucho menores que cualquier manómetro.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to the coolant when sound (median), for a bore of 75 mm.</source>
        <extracomment>coolant-sound, text</extracomment>
        <translation>Área de fuga efectiva por la junta hacia el refrigerante en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>No bubbles at all in the coolant.</source>
        <extracomment>coolant-sound, comment</extracomment>
        <translation>Ninguna burbuja en el refrigerante.</translation>
    </message>
    <message>
        <source>Effective leak area past the joint to the coolant when at fault (median), for a bore of 75 mm.</source>
        <extracomment>coolant-leaking, text</extracomment>
        <translation>Área de fuga efectiva por la junta hacia el refrigerante cuando falla (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Chance that the decompressor of a tested cylinder is at fault, before any evidence.</source>
        <extracomment>decompressor-fault, text</extracomment>
        <translation>Probabilidad de que el descompresor de un cilindro probado sea la causa del fallo, antes de todo indicio.</translation>
    </message>
    <message>
        <source>A decompressor that does not close.</source>
        <extracomment>decompressor-fault, comment; decompressor-leaking, comment</extracomment>
        <translation>Un descompresor que no cierra.</translation>
    </message>
    <message>
        <source>Effective leak area past the decompressor when sound (median), for a bore of 75 mm.</source>
        <extracomment>decompressor-sound, text</extracomment>
        <translation>Área de fuga efectiva por el descompresor en buen estado (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>A valve like any other.</source>
        <extracomment>decompressor-sound, comment</extracomment>
        <translation>Una válvula como cualquier otra.</translation>
    </message>
    <message>
        <source>Effective leak area past the decompressor when at fault (median), for a bore of 75 mm.</source>
        <extracomment>decompressor-leaking, text</extracomment>
        <translation>Área de fuga efectiva por el descompresor cuando falla (mediana), para un diámetro de 75 mm.</translation>
    </message>
    <message>
        <source>Bore that the areas above are for; they grow in proportion to the bore.</source>
        <extracomment>area-bore, text</extracomment>
        <translation>Diámetro para el que valen las áreas anteriores; crecen en proporción al diámetro.</translation>
    </message>
    <message>
        <source>Gaps run along circumferences.</source>
        <extracomment>area-bore, comment</extracomment>
        <translation>Las rendijas corren a lo largo de circunferencias.</translation>
    </message>
    <message>
        <source>A valve with no or too little clearance, not put right, is this much more likely to leak (odds).</source>
        <extracomment>clearance-none-odds, text</extracomment>
        <translation>Una válvula con juego nulo o escaso, sin corregir, tiene este factor más de posibilidades de perder (razón de probabilidades).</translation>
    </message>
    <message>
        <source>A valve without clearance is held open (Army TM 1-1500-204-23-1); how often is not published.</source>
        <extracomment>clearance-none-odds, comment</extracomment>
        <translation>Una válvula sin juego queda abierta (Army TM 1-1500-204-23-1); con qué frecuencia no está publicado.</translation>
    </message>
    <message>
        <source>A valve whose clearance is within its range is this much as likely to leak (odds).</source>
        <extracomment>clearance-good-odds, text</extracomment>
        <translation>Una válvula cuyo juego está dentro de su rango tiene este factor de posibilidades de perder (razón de probabilidades).</translation>
    </message>
    <message>
        <source>Rules out one cause of several.</source>
        <extracomment>clearance-good-odds, comment</extracomment>
        <translation>Descarta una causa entre varias.</translation>
    </message>
    <message>
        <source>Under this leakage at 80 psi behind 0.040 in a cylinder seals well, whatever its largest path.</source>
        <extracomment>seals-well, text</extracomment>
        <translation>Por debajo de esta pérdida a 80 psi tras 0,040 in un cilindro sella bien, sea cual sea su camino mayor.</translation>
    </message>
    <message>
        <source>The lower end of makers&apos; bands (Saturn 2001: 10 % normal).</source>
        <extracomment>seals-well, comment</extracomment>
        <translation>El extremo inferior de las bandas de los fabricantes (Saturn 2001: 10 % normal).</translation>
    </message>
    <message>
        <source>Doubt of a compression ratio on the card, as a share of it (standard deviation).</source>
        <extracomment>ratio-known-doubt, text</extracomment>
        <translation>Incertidumbre de una relación de compresión de la ficha, como fracción de ella (desviación típica).</translation>
    </message>
    <message>
        <source>Carbon, a skimmed head, a thicker gasket.</source>
        <extracomment>ratio-known-doubt, comment</extracomment>
        <translation>Carbonilla, una culata rebajada, una junta más gruesa.</translation>
    </message>
    <message>
        <source>The same where it is marked as guessed.</source>
        <extracomment>ratio-guessed-doubt, text</extracomment>
        <translation>Lo mismo donde está marcada como estimada.</translation>
    </message>
    <message>
        <source>Half a ratio in eight or nine.</source>
        <extracomment>ratio-guessed-doubt, comment</extracomment>
        <translation>Medio punto en ocho o nueve.</translation>
    </message>
    <message>
        <source>Compression ratio of a petrol engine whose card has none.</source>
        <extracomment>ratio-unknown, text</extracomment>
        <translation>Relación de compresión de un motor de gasolina cuya ficha no tiene ninguna.</translation>
    </message>
    <message>
        <source>Readings then compare cylinders only.</source>
        <extracomment>ratio-unknown, comment; bore-unknown, comment; stroke-unknown, comment</extracomment>
        <translation>Las lecturas entonces solo comparan cilindros.</translation>
    </message>
    <message>
        <source>Above this ratio the cranking model gives no level: readings compare cylinders only.</source>
        <extracomment>ratio-highest, text</extracomment>
        <translation>Por encima de esta relación el modelo de arranque no da nivel: las lecturas solo comparan cilindros.</translation>
    </message>
    <message>
        <source>The model reads far over makers&apos; diesel figures (350 to 430 psi).</source>
        <extracomment>ratio-highest, comment</extracomment>
        <translation>El modelo da mucho más que las cifras de los fabricantes para diésel (350 a 430 psi).</translation>
    </message>
    <message>
        <source>Bore of an engine whose card has none.</source>
        <extracomment>bore-unknown, text</extracomment>
        <translation>Diámetro de cilindro de un motor cuya ficha no tiene ninguno.</translation>
    </message>
    <message>
        <source>Stroke of an engine whose card has none.</source>
        <extracomment>stroke-unknown, text</extracomment>
        <translation>Carrera de un motor cuya ficha no tiene ninguna.</translation>
    </message>
    <message>
        <source>Heat transfer to the walls.</source>
        <extracomment>heat, text</extracomment>
        <translation>Transmisión de calor a las paredes.</translation>
    </message>
    <message>
        <source>Chosen so that a tight stroke has an exponent of 1.25 to 1.35.</source>
        <extracomment>heat, comment</extracomment>
        <translation>Elegida de modo que una carrera sin fugas tenga un exponente de 1,25 a 1,35.</translation>
    </message>
    <message>
        <source>Its doubt, as a share (standard deviation of the logarithm).</source>
        <extracomment>heat-doubt, text</extracomment>
        <translation>Su incertidumbre, como fracción (desviación típica del logaritmo).</translation>
    </message>
    <message>
        <source>One number stands for a whole stroke.</source>
        <extracomment>heat-doubt, comment</extracomment>
        <translation>Un número vale por toda una carrera.</translation>
    </message>
    <message>
        <source>Speed near top dead centre over the mean cranking speed.</source>
        <extracomment>speed-dip, text</extracomment>
        <translation>Velocidad cerca del punto muerto superior entre la velocidad media de arranque.</translation>
    </message>
    <message>
        <source>The piston slows as pressure rises.</source>
        <extracomment>speed-dip, comment</extracomment>
        <translation>El pistón se frena al subir la presión.</translation>
    </message>
    <message>
        <source>Doubt of that factor, as a share of the speed.</source>
        <extracomment>speed-dip-doubt, text</extracomment>
        <translation>Incertidumbre de ese factor, como fracción de la velocidad.</translation>
    </message>
    <message>
        <source>Starters differ.</source>
        <extracomment>speed-dip-doubt, comment</extracomment>
        <translation>Los motores de arranque difieren.</translation>
    </message>
    <message>
        <source>Doubt of a cranking speed that was noted.</source>
        <extracomment>speed-known-doubt, text</extracomment>
        <translation>Incertidumbre de una velocidad de arranque anotada.</translation>
    </message>
    <message>
        <source>Read off a phone or a timing light.</source>
        <extracomment>speed-known-doubt, comment</extracomment>
        <translation>Leída en un teléfono o una lámpara estroboscópica.</translation>
    </message>
    <message>
        <source>Doubt of a cranking speed that was not noted.</source>
        <extracomment>speed-unknown-doubt, text</extracomment>
        <translation>Incertidumbre de una velocidad de arranque no anotada.</translation>
    </message>
    <message>
        <source>What the cranking model is out by for a whole engine, as a share of the reading (standard deviation).</source>
        <extracomment>level-doubt, text</extracomment>
        <translation>Lo que se desvía el modelo de arranque para un motor entero, como fracción de la lectura (desviación típica).</translation>
    </message>
    <message>
        <source>And for one cylinder beside the others.</source>
        <extracomment>cylinder-doubt, text</extracomment>
        <translation>Y para un cilindro junto a los demás.</translation>
    </message>
    <message>
        <source>Carbon, uneven chambers, cranking that is not quite steady.</source>
        <extracomment>cylinder-doubt, comment</extracomment>
        <translation>Carbonilla, cámaras desiguales, un arranque no del todo uniforme.</translation>
    </message>
    <message>
        <source>The same for an engine where readings compare cylinders only.</source>
        <extracomment>compare-only-doubt, text</extracomment>
        <translation>Lo mismo para un motor cuyas lecturas solo comparan cilindros.</translation>
    </message>
    <message>
        <source>Wide enough that the level says nothing.</source>
        <extracomment>compare-only-doubt, comment</extracomment>
        <translation>Tan ancho que el nivel no dice nada.</translation>
    </message>
    <message>
        <source>Scatter of one final reading beside the gauge&apos;s own errors, as a share of it.</source>
        <extracomment>reading-scatter, text</extracomment>
        <translation>Dispersión de una lectura final aparte de los errores propios del manómetro, como fracción de ella.</translation>
    </message>
    <message>
        <source>How long it was cranked, battery.</source>
        <extracomment>reading-scatter, comment</extracomment>
        <translation>Cuánto tiempo se dio arranque, batería.</translation>
    </message>
    <message>
        <source>Scatter of one first puff.</source>
        <extracomment>first-scatter, text</extracomment>
        <translation>Dispersión de una primera embolada.</translation>
    </message>
    <message>
        <source>The needle moves; the first stroke does not begin at the same place twice.</source>
        <extracomment>first-scatter, comment</extracomment>
        <translation>La aguja se mueve; la primera carrera no empieza dos veces en el mismo sitio.</translation>
    </message>
    <message>
        <source>What the polynomial that stands in for the cranking model is out by, as a share of the reading (standard deviation).</source>
        <extracomment>surface-error, text</extracomment>
        <translation>Lo que se desvía el polinomio que hace las veces del modelo de arranque, como fracción de la lectura (desviación típica).</translation>
    </message>
    <message>
        <source>Held against the model itself in tests: at most 0.3 % at 1,000 points, and this on average.</source>
        <extracomment>surface-error, comment</extracomment>
        <translation>Comparado con el propio modelo en pruebas: como máximo un 0,3 % en 1000 puntos, y esto de media.</translation>
    </message>
    <message>
        <source>Scatter of a final reading from one day to the next: speed, battery, temperature of the air.</source>
        <extracomment>day-scatter, text</extracomment>
        <translation>Dispersión de una lectura final de un día a otro: velocidad, batería, temperatura del aire.</translation>
    </message>
    <message>
        <source>Same engine, same gauge, same warmth.</source>
        <extracomment>day-scatter, comment</extracomment>
        <translation>El mismo motor, el mismo manómetro, igual de caliente.</translation>
    </message>
    <message>
        <source>How far a sound engine&apos;s readings may lie from the middle of the maker&apos;s range, beside half that range&apos;s width.</source>
        <extracomment>card-range-doubt, text</extracomment>
        <translation>Cuánto pueden apartarse las lecturas de un motor en buen estado del centro del rango del fabricante, aparte de la mitad de la anchura de ese rango.</translation>
    </message>
    <message>
        <source>Another gauge, another starter.</source>
        <extracomment>card-range-doubt, comment</extracomment>
        <translation>Otro manómetro, otro motor de arranque.</translation>
    </message>
    <message>
        <source>How far a sound cylinder&apos;s reading of an earlier visit stands from today&apos;s, sound.</source>
        <extracomment>earlier-visit-doubt, text</extracomment>
        <translation>Cuánto se aparta la lectura de un cilindro en buen estado en una visita anterior de la de hoy, en buen estado.</translation>
    </message>
    <message>
        <source>Day-to-day scatter and wear.</source>
        <extracomment>earlier-visit-doubt, comment</extracomment>
        <translation>Dispersión de un día a otro y desgaste.</translation>
    </message>
    <message>
        <source>Spread of a path&apos;s leak while cranking over its leak standing still: standard deviation of the logarithm.</source>
        <extracomment>static-to-cranking, text</extracomment>
        <translation>Dispersión de la fuga de un camino al dar arranque respecto a su fuga en parado: desviación típica del logaritmo.</translation>
    </message>
    <message>
        <source>Pressure seats rings and valves; a hot stream opens a gasket.</source>
        <extracomment>static-to-cranking, comment</extracomment>
        <translation>La presión asienta segmentos y válvulas; un chorro caliente abre una junta.</translation>
    </message>
    <message>
        <source>Scatter of the leak area from one leak-down reading to the next.</source>
        <extracomment>leak-repeat, text</extracomment>
        <translation>Dispersión del área de fuga de una lectura de estanqueidad a la siguiente.</translation>
    </message>
    <message>
        <source>Rings settle elsewhere each time: let the air off, turn the engine over, test again, and keep the best.</source>
        <extracomment>leak-repeat, comment</extracomment>
        <translation>Los segmentos se asientan cada vez en otro sitio: soltar el aire, dar vueltas al motor, probar otra vez y quedarse con lo mejor.</translation>
    </message>
    <message>
        <source>Share of the oil of a wet test that stays in the chamber: median.</source>
        <extracomment>oil-kept, text</extracomment>
        <translation>Parte del aceite de una prueba húmeda que se queda en la cámara: mediana.</translation>
    </message>
    <message>
        <source>Most oil runs past the rings or is blown out. 90 % lie between 5 and 70 %.</source>
        <extracomment>oil-kept, comment</extracomment>
        <translation>La mayor parte del aceite se escurre por los segmentos o sale soplado. El 90 % está entre 5 y 70 %.</translation>
    </message>
    <message>
        <source>Its spread: standard deviation of the log odds.</source>
        <extracomment>oil-kept-spread, text; oil-seals-spread, text</extracomment>
        <translation>Su dispersión: desviación típica del logaritmo de la razón de probabilidades.</translation>
    </message>
    <message>
        <source>5 to 70 % as a 90 % interval.</source>
        <extracomment>oil-kept-spread, comment</extracomment>
        <translation>De 5 a 70 % como intervalo del 90 %.</translation>
    </message>
    <message>
        <source>Share of the rings&apos; leak that is left with fresh oil on them: median.</source>
        <extracomment>oil-seals, text</extracomment>
        <translation>Parte de la fuga de los segmentos que queda con aceite fresco en ellos: mediana.</translation>
    </message>
    <message>
        <source>A rise of 10 % is the published sign; a third to a half of the leak going away gives it.</source>
        <extracomment>oil-seals, comment</extracomment>
        <translation>Una subida del 10 % es el indicio publicado; la da el que desaparezca de un tercio a la mitad de la fuga.</translation>
    </message>
    <message>
        <source>Broken or stuck rings seal little.</source>
        <extracomment>oil-seals-spread, comment</extracomment>
        <translation>Los segmentos rotos o pegados sellan poco.</translation>
    </message>
    <message>
        <source>Oil from an earlier test seals this much of what fresh oil does (exponent on the share left).</source>
        <extracomment>oil-before, text</extracomment>
        <translation>El aceite de una prueba anterior sella esta fracción de lo que hace el fresco (exponente de la fracción que queda).</translation>
    </message>
    <message>
        <source>It drains and is cranked away.</source>
        <extracomment>oil-before, comment</extracomment>
        <translation>Se escurre y el arranque lo expulsa.</translation>
    </message>
    <message>
        <source>No more oil than this share of the smallest chamber that the doubts allow is reckoned with.</source>
        <extracomment>oil-of-chamber, text</extracomment>
        <translation>No se cuenta con más aceite que esta fracción de la cámara más pequeña que permiten las incertidumbres.</translation>
    </message>
    <message>
        <source>More would lock the engine, so less was put in or most of it ran out.</source>
        <extracomment>oil-of-chamber, comment</extracomment>
        <translation>Más bloquearía el motor, así que se puso menos o la mayor parte se escurrió.</translation>
    </message>
    <message>
        <source>How much better or worse one person hears than another: standard deviation of the logarithm of the flow.</source>
        <extracomment>listener, text</extracomment>
        <translation>Cuánto mejor o peor oye una persona que otra: desviación típica del logaritmo del caudal.</translation>
    </message>
    <message>
        <source>Shop noise and ears.</source>
        <extracomment>listener, comment</extracomment>
        <translation>Ruido del taller y oídos.</translation>
    </message>
    <message>
        <source>Scatter of one note: scale of a logistic distribution of the logarithm of the flow.</source>
        <extracomment>hearing, text</extracomment>
        <translation>Dispersión de una anotación: escala de una distribución logística del logaritmo del caudal.</translation>
    </message>
    <message>
        <source>Where the ear was held.</source>
        <extracomment>hearing, comment</extracomment>
        <translation>Dónde se puso el oído.</translation>
    </message>
    <message>
        <source>Chance that a note of what was heard or felt has nothing to do with the flow.</source>
        <extracomment>slip, text</extracomment>
        <translation>Probabilidad de que una anotación de lo oído o sentido no tenga nada que ver con el caudal.</translation>
    </message>
    <message>
        <source>Wrong cylinder, wrong key.</source>
        <extracomment>slip, comment</extracomment>
        <translation>Cilindro equivocado, tecla equivocada.</translation>
    </message>
    <message>
        <source>The same for what is seen, soap or bubbles.</source>
        <extracomment>slip-seen, text</extracomment>
        <translation>Lo mismo para lo que se ve, jabón o burbujas.</translation>
    </message>
    <message>
        <source>Bubbles are bubbles; what is left is the wrong cylinder.</source>
        <extracomment>slip-seen, comment</extracomment>
        <translation>Las burbujas son burbujas; lo que queda es el cilindro equivocado.</translation>
    </message>
    <message>
        <source>Share of all the air that is heard at every exit.</source>
        <extracomment>cross-talk, text</extracomment>
        <translation>Parte de todo el aire que se oye en cada salida.</translation>
    </message>
    <message>
        <source>Sound goes through metal.</source>
        <extracomment>cross-talk, comment</extracomment>
        <translation>El sonido pasa por el metal.</translation>
    </message>
    <message>
        <source>Share of a valve&apos;s leak that comes out of a companion cylinder&apos;s plug hole through a joined manifold.</source>
        <extracomment>companion-talk, text</extracomment>
        <translation>Parte de la fuga de una válvula que sale por el agujero de bujía de un cilindro compañero a través de un colector unido.</translation>
    </message>
    <message>
        <source>The companion stands on overlap.</source>
        <extracomment>companion-talk, comment</extracomment>
        <translation>El compañero está en cruce de válvulas.</translation>
    </message>
    <message>
        <source>Share of a two-stroke&apos;s ring leak that leaves by the exhaust port, the rest by the carburettor.</source>
        <extracomment>two-stroke-exhaust, text</extracomment>
        <translation>Parte de la fuga de segmentos de un dos tiempos que sale por la lumbrera de escape; el resto, por el carburador.</translation>
    </message>
    <message>
        <source>Which port stands open depends on the piston.</source>
        <extracomment>two-stroke-exhaust, comment</extracomment>
        <translation>Qué lumbrera está abierta depende del pistón.</translation>
    </message>
    <message>
        <source>How much of a louder exit&apos;s lead is lost in a softer one&apos;s loudness (exponent), past the first factor named below.</source>
        <extracomment>masking, text</extracomment>
        <translation>Cuánto de la ventaja de una salida más fuerte se resta de la intensidad de una más débil (exponente), pasado el primer factor nombrado abajo.</translation>
    </message>
    <message>
        <source>The loudest drowns the others.</source>
        <extracomment>masking, comment</extracomment>
        <translation>La más fuerte tapa las demás.</translation>
    </message>
    <message>
        <source>Exits within this factor of the loudest are heard as they are.</source>
        <extracomment>masking-from, text</extracomment>
        <translation>Las salidas dentro de este factor de la más fuerte se oyen como son.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: ear.</source>
        <extracomment>ear-faint, text</extracomment>
        <translation>Caudal que se anota como débil en la mitad de los casos: oído.</translation>
    </message>
    <message>
        <source>Bare ear or a hand-held tube at the opening.</source>
        <extracomment>ear-faint, comment; ear-clear, comment; ear-strong, comment</extracomment>
        <translation>A oído desnudo o con un tubo en la mano junto a la abertura.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: ear.</source>
        <extracomment>ear-clear, text</extracomment>
        <translation>Caudal que se anota como claro en la mitad de los casos: oído.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: ear.</source>
        <extracomment>ear-strong, text</extracomment>
        <translation>Caudal que se anota como fuerte en la mitad de los casos: oído.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: hose.</source>
        <extracomment>hose-faint, text</extracomment>
        <translation>Caudal que se anota como débil en la mitad de los casos: manguera.</translation>
    </message>
    <message>
        <source>A hose to the ear brings it closer.</source>
        <extracomment>hose-faint, comment; hose-clear, comment; hose-strong, comment</extracomment>
        <translation>Una manguera al oído lo acerca.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: hose.</source>
        <extracomment>hose-clear, text</extracomment>
        <translation>Caudal que se anota como claro en la mitad de los casos: manguera.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: hose.</source>
        <extracomment>hose-strong, text</extracomment>
        <translation>Caudal que se anota como fuerte en la mitad de los casos: manguera.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: hand.</source>
        <extracomment>hand-faint, text</extracomment>
        <translation>Caudal que se anota como débil en la mitad de los casos: mano.</translation>
    </message>
    <message>
        <source>A thin glove or a hand over the opening.</source>
        <extracomment>hand-faint, comment; hand-clear, comment; hand-strong, comment</extracomment>
        <translation>Un guante fino o una mano sobre la abertura.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: hand.</source>
        <extracomment>hand-clear, text</extracomment>
        <translation>Caudal que se anota como claro en la mitad de los casos: mano.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: hand.</source>
        <extracomment>hand-strong, text</extracomment>
        <translation>Caudal que se anota como fuerte en la mitad de los casos: mano.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: soapy water.</source>
        <extracomment>soapy-water-faint, text</extracomment>
        <translation>Caudal que se anota como débil en la mitad de los casos: agua jabonosa.</translation>
    </message>
    <message>
        <source>Soap shows about 0.01 L/min.</source>
        <extracomment>soapy-water-faint, comment; soapy-water-clear, comment; soapy-water-strong, comment</extracomment>
        <translation>El jabón muestra alrededor de 0,01 L/min.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: soapy water.</source>
        <extracomment>soapy-water-clear, text</extracomment>
        <translation>Caudal que se anota como claro en la mitad de los casos: agua jabonosa.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: soapy water.</source>
        <extracomment>soapy-water-strong, text</extracomment>
        <translation>Caudal que se anota como fuerte en la mitad de los casos: agua jabonosa.</translation>
    </message>
    <message>
        <source>Flow that is noted as faint in half of the cases: bubbles.</source>
        <extracomment>bubbles-faint, text</extracomment>
        <translation>Caudal que se anota como débil en la mitad de los casos: burbujas.</translation>
    </message>
    <message>
        <source>Bubbles in the coolant.</source>
        <extracomment>bubbles-faint, comment; bubbles-clear, comment; bubbles-strong, comment</extracomment>
        <translation>Burbujas en el refrigerante.</translation>
    </message>
    <message>
        <source>Flow that is noted as clear in half of the cases: bubbles.</source>
        <extracomment>bubbles-clear, text</extracomment>
        <translation>Caudal que se anota como claro en la mitad de los casos: burbujas.</translation>
    </message>
    <message>
        <source>Flow that is noted as strong in half of the cases: bubbles.</source>
        <extracomment>bubbles-strong, text</extracomment>
        <translation>Caudal que se anota como fuerte en la mitad de los casos: burbujas.</translation>
    </message>
    <message>
        <source>Set pressure of the air that was listened to where no leak-down reading goes with it.</source>
        <extracomment>listen-set, text</extracomment>
        <translation>Presión ajustada del aire con el que se escuchó cuando no va con ello ninguna lectura de estanqueidad.</translation>
    </message>
    <message>
        <source>The usual one.</source>
        <extracomment>listen-set, comment</extracomment>
        <translation>La usual.</translation>
    </message>
    <message>
        <source>Dry reading that one not yet taken is expected to be like, where no cylinder has one.</source>
        <extracomment>reading-usual, text</extracomment>
        <translation>Lectura en seco que se espera de una aún no tomada, cuando ningún cilindro tiene una.</translation>
    </message>
    <message>
        <source>Only how exact the gauge is there hangs on it: what another test would tell.</source>
        <extracomment>reading-usual, comment</extracomment>
        <translation>De ello solo depende lo exacto que es ahí el manómetro: lo que diría otra prueba.</translation>
    </message>
    <message>
        <source>Share of the set pressure that a leak-down not yet made is expected to hold.</source>
        <extracomment>held-usual, text</extracomment>
        <translation>Parte de la presión ajustada que se espera que mantenga una prueba de estanqueidad aún no hecha.</translation>
    </message>
    <message>
        <source>Step to which a reading not yet taken will be written down.</source>
        <extracomment>step-usual, text</extracomment>
        <translation>Paso con que se anotará una lectura aún no tomada.</translation>
    </message>
    <message>
        <source>Most people read a dial to about a tenth of a bar.</source>
        <extracomment>step-usual, comment</extracomment>
        <translation>La mayoría lee una esfera a cerca de una décima de bar.</translation>
    </message>
    <message>
        <source>A test is called far off everything that a cylinder&apos;s other readings allow when it lies this many of its own standard deviations away, on average over what they allow.</source>
        <extracomment>does-not-fit, text</extracomment>
        <translation>De una prueba se dice que queda lejos de todo lo que permiten las otras lecturas del cilindro si se aparta tantas de sus propias desviaciones típicas, en promedio sobre lo que permiten.</translation>
    </message>
    <message>
        <source>Fewer than one test in eighty does so by chance alone; it is to be done again, and no verdict given before.</source>
        <extracomment>does-not-fit, comment</extracomment>
        <translation>Menos de una prueba de cada ochenta lo hace solo por azar; hay que repetirla, y antes no se da veredicto.</translation>
    </message>
    <message>
        <source>Rings at fault in 60 % of cylinders, valves half as often as assumed.</source>
        <extracomment>rings-first, text</extracomment>
        <translation>Segmentos como causa del fallo en el 60 % de los cilindros, válvulas la mitad de veces de lo supuesto.</translation>
    </message>
    <message>
        <source>Valves at fault twice as often as assumed, rings in 10 % of cylinders.</source>
        <extracomment>valves-first, text</extracomment>
        <translation>Válvulas como causa del fallo el doble de veces de lo supuesto, segmentos en el 10 % de los cilindros.</translation>
    </message>
    <message>
        <source>Grit in the well of a plug (on a diesel: of an injector or glow plug) falls into the cylinder when that comes out, and scores the bore or holds a valve open.</source>
        <extracomment>reason</extracomment>
        <translation>La arenilla del alojamiento de una bujía (en un diésel: de un inyector o de una bujía de precalentamiento) cae en el cilindro al sacarla y raya el cilindro o mantiene abierta una válvula.</translation>
    </message>
    <message>
        <source>Grit may hold a valve off its seat and look like a leak.</source>
        <extracomment>if_not_done</extracomment>
        <translation>La arenilla puede separar una válvula de su asiento y parecer una fuga.</translation>
    </message>
    <message>
        <source>An engine that stood may have a stuck ring, a stuck valve or liquid in a cylinder: two turns by hand show it before the starter breaks something.</source>
        <extracomment>reason</extracomment>
        <translation>Un motor que estuvo parado puede tener un segmento pegado, una válvula pegada o líquido en un cilindro: dos vueltas a mano lo muestran antes de que el motor de arranque rompa algo.</translation>
    </message>
    <message>
        <source>Only for an engine that stood: dry bores scuff and dry rings leak. A little oil, left overnight, then turned out with the plugs out. The rings are oiled then: the reading is no longer a dry one. Never on a diesel: oil can lock it or fire.</source>
        <extracomment>reason</extracomment>
        <translation>Solo para un motor que estuvo parado: los cilindros secos se rayan y los segmentos secos pierden. Un poco de aceite, dejado actuar toda la noche y expulsado después girando el motor con las bujías fuera. Los segmentos quedan aceitados: la lectura ya no es en seco. Nunca en un diésel: el aceite puede bloquearlo o encenderse.</translation>
    </message>
    <message>
        <source>Dry rings leak more than they will after running.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Los segmentos secos pierden más de lo que perderán después de funcionar.</translation>
    </message>
    <message>
        <source>Oil mixed with fuel or coolant, or a sump too full, says something before any gauge does.</source>
        <extracomment>reason</extracomment>
        <translation>Aceite mezclado con combustible o refrigerante, o un cárter demasiado lleno, dice algo antes que cualquier manómetro.</translation>
    </message>
    <message>
        <source>After standing, a valve can hang in its guide. Watch that each one follows its rocker or cam.</source>
        <extracomment>reason</extracomment>
        <translation>Tras estar parado, una válvula puede quedarse colgada en su guía. Observar que cada una siga a su balancín o leva.</translation>
    </message>
    <message>
        <source>A hanging valve reads as a burnt one.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Una válvula colgada da lo mismo que una quemada.</translation>
    </message>
    <message>
        <source>A look at crown, bore and valves costs two minutes and settles many guesses.</source>
        <extracomment>reason</extracomment>
        <translation>Una mirada a la cabeza del pistón, al cilindro y a las válvulas cuesta dos minutos y aclara muchas suposiciones.</translation>
    </message>
    <message>
        <source>A valve without clearance is held open and looks burnt. Check and write down before testing.</source>
        <extracomment>reason</extracomment>
        <translation>Una válvula sin juego queda abierta y parece quemada. Revisar y anotar antes de probar.</translation>
    </message>
    <message>
        <source>A leaking valve may only lack clearance.</source>
        <extracomment>if_not_done</extracomment>
        <translation>A una válvula que pierde puede que solo le falte juego.</translation>
    </message>
    <message>
        <source>A cold engine reads about 10 % lower than a warm one. Compare cold with cold, warm with warm.</source>
        <extracomment>reason</extracomment>
        <translation>Un motor frío da alrededor de un 10 % menos que uno caliente. Comparar frío con frío, caliente con caliente.</translation>
    </message>
    <message>
        <source>It is not known whether the engine was cold or warm: up to about 10 % between the two.</source>
        <extracomment>if_not_done</extracomment>
        <translation>No se sabe si el motor estaba frío o caliente: hasta alrededor de un 10 % entre lo uno y lo otro.</translation>
    </message>
    <message>
        <source>The cylinder must fill. Hold the throttle wide open; slides of constant-velocity carburettors are lifted by hand, or the induction comes off.</source>
        <extracomment>reason</extracomment>
        <translation>El cilindro se tiene que llenar. Mantener la mariposa abierta del todo; las correderas de los carburadores de velocidad constante se levantan a mano, o se desmonta la admisión.</translation>
    </message>
    <message>
        <source>A throttle that was not held open makes every cylinder read low.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Una mariposa que no se mantuvo abierta hace que todos los cilindros den poco.</translation>
    </message>
    <message>
        <source>The starter turns faster and evenly with all plugs (on a diesel: injectors or glow plugs) out.</source>
        <extracomment>reason</extracomment>
        <translation>El motor de arranque gira más rápido y uniforme con todas las bujías fuera (en un diésel: inyectores o bujías de precalentamiento).</translation>
    </message>
    <message>
        <source>With plugs (on a diesel: injectors or glow plugs) left in, the starter turns slower and unevenly: readings come out lower and scatter.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Con bujías (en un diésel: inyectores o calentadores) puestas, el motor de arranque gira más lento y desigual: las lecturas salen más bajas y se dispersan.</translation>
    </message>
    <message>
        <source>Fuel mist leaves the plug holes and an open lead sparks. Ground the leads or take the supply off. Coils on the plugs: pull their connectors, or as the manual says.</source>
        <extracomment>reason</extracomment>
        <translation>Por los agujeros de bujía sale niebla de combustible y un cable suelto da chispas. Poner los cables a masa o desconectar la alimentación. Bobinas sobre las bujías: desenchufar sus conectores, o como diga el manual.</translation>
    </message>
    <message>
        <source>No fuel mist near sparks, no oil washed off the bores; on a diesel no firing into the gauge.</source>
        <extracomment>reason</extracomment>
        <translation>Nada de niebla de combustible cerca de chispas, que el combustible no lave el aceite de los cilindros; en un diésel, que nada se encienda contra el manómetro.</translation>
    </message>
    <message>
        <source>Fuel may have washed the oil off the bores: rings then read worse than they are.</source>
        <extracomment>if_not_done</extracomment>
        <translation>El combustible puede haber lavado el aceite de los cilindros: los segmentos dan entonces peor de lo que están.</translation>
    </message>
    <message>
        <source>Cranking speed decides the reading. Charger on, volts noted, the first cylinder measured again at the end.</source>
        <extracomment>reason</extracomment>
        <translation>La velocidad de arranque decide la lectura. Conectar el cargador, anotar la tensión, medir de nuevo el primer cilindro al final.</translation>
    </message>
    <message>
        <source>A tiring battery makes later cylinders read lower.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Una batería que se agota hace que los cilindros posteriores den menos.</translation>
    </message>
    <message>
        <source>A decompressor that works lets out most of the pressure on purpose.</source>
        <extracomment>reason</extracomment>
        <translation>Un descompresor que actúa deja salir a propósito la mayor parte de la presión.</translation>
    </message>
    <message>
        <source>A working decompressor reads far too low: the reading is no proof of a leak.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Un descompresor que actúa da lecturas demasiado bajas: la lectura no es prueba de una fuga.</translation>
    </message>
    <message>
        <source>With oil filler or breather open, air past the rings is heard there and not at a seal. Pinch the blow-by hose to the intake.</source>
        <extracomment>reason</extracomment>
        <translation>Con el tapón de llenado de aceite o el respiradero abierto, el aire que pasa por los segmentos se oye allí y no en un retén. Pinzar la manguera de gases del cárter a la admisión.</translation>
    </message>
    <message>
        <source>Air past the rings may have come out at the intake through the blow-by hose.</source>
        <extracomment>if_not_done</extracomment>
        <translation>El aire que pasa por los segmentos puede haber salido por la admisión a través de la manguera de gases del cárter.</translation>
    </message>
    <message>
        <source>A faint hiss is not heard beside a running compressor. Fill it up, switch it off, then listen.</source>
        <extracomment>reason</extracomment>
        <translation>Un siseo débil no se oye junto a un compresor en marcha. Llenarlo, apagarlo y escuchar después.</translation>
    </message>
    <message>
        <source>Faint exits may have been missed beside a running compressor.</source>
        <extracomment>if_not_done</extracomment>
        <translation>Pueden haberse pasado por alto salidas débiles junto a un compresor en marcha.</translation>
    </message>
    <message>
        <source>The job, in its order</source>
        <extracomment>title</extracomment>
        <translation>El trabajo, en su orden</translation>
    </message>
    <message>
        <source>Complaint and engine</source>
        <extracomment>complaint, title</extracomment>
        <translation>Avería y motor</translation>
    </message>
    <message>
        <source>What the owner says, and what the app must know of the engine</source>
        <extracomment>complaint, brief</extracomment>
        <translation>Lo que cuenta el dueño y lo que la aplicación debe saber del motor</translation>
    </message>
    <message>
        <source>The symptoms say where to look, and afterwards whether the repair met them. The engine card decides which tests belong, what a healthy reading would be and how far to turn to the next TDC.</source>
        <extracomment>complaint, why</extracomment>
        <translation>Los síntomas dicen dónde buscar y, después, si la reparación los resolvió. La ficha del motor decide qué pruebas corresponden, cuál sería una lectura sana y cuánto girar hasta el próximo PMS.</translation>
    </message>
    <message>
        <source>Write the complaint in the owner&apos;s words: oil use, smoke and its colour, coolant loss, hard starting, noise.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Anote la avería con las palabras del dueño: consumo de aceite, humo y su color, pérdida de refrigerante, arranque difícil, ruidos.</translation>
    </message>
    <message>
        <source>Note mileage or hours at this visit, and the job number.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Anote los kilómetros o las horas en esta visita y el número de orden.</translation>
    </message>
    <message>
        <source>Fill in the engine card: cylinders and how they are numbered, two- or four-stroke, petrol or diesel, bore, stroke, compression ratio.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Rellene la ficha del motor: cilindros y cómo se numeran, dos o cuatro tiempos, gasolina o diésel, diámetro, carrera, relación de compresión.</translation>
    </message>
    <message>
        <source>Firing order and intervals, adjusters, decompressor, joined manifolds: look them up in the engine&apos;s manual. What is not known stays &quot;unknown&quot;.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Orden e intervalos de encendido, reglajes, descompresor, colectores unidos: búsquelos en el manual del motor. Lo que no se sabe queda como «desconocido».</translation>
    </message>
    <message>
        <source>Type the factory range and lowest limit, and where they come from.</source>
        <extracomment>complaint, how</extracomment>
        <translation>Escriba el margen de fábrica y el límite mínimo, y de dónde proceden.</translation>
    </message>
    <message>
        <source>Blue smoke, oil use</source>
        <extracomment>complaint, sign</extracomment>
        <translation>Humo azul, consumo de aceite</translation>
    </message>
    <message>
        <source>rings, bore, valve guides or their seals</source>
        <extracomment>complaint, means</extracomment>
        <translation>segmentos, cilindro, guías de válvula o sus retenes</translation>
    </message>
    <message>
        <source>White smoke that stays when warm, coolant loss</source>
        <extracomment>complaint, sign</extracomment>
        <translation>Humo blanco que sigue en caliente, pérdida de refrigerante</translation>
    </message>
    <message>
        <source>head gasket, or a crack</source>
        <extracomment>complaint, means</extracomment>
        <translation>junta de culata o una grieta</translation>
    </message>
    <message>
        <source>Cylinders numbered otherwise than in the manual</source>
        <extracomment>complaint, slip</extracomment>
        <translation>Cilindros numerados de otro modo que en el manual</translation>
    </message>
    <message>
        <source>The right reading stands at the wrong cylinder.</source>
        <extracomment>complaint, then</extracomment>
        <translation>La lectura correcta queda en el cilindro equivocado.</translation>
    </message>
    <message>
        <source>A limit of another engine or year</source>
        <extracomment>complaint, slip</extracomment>
        <translation>Límite de otro motor o año</translation>
    </message>
    <message>
        <source>A sound cylinder is called low, or a low one sound.</source>
        <extracomment>complaint, then</extracomment>
        <translation>Un cilindro sano se da por bajo, o uno bajo por sano.</translation>
    </message>
    <message>
        <source>What to ask, and what the symptoms point to</source>
        <extracomment>complaint, for</extracomment>
        <translation>Qué preguntar y hacia qué apuntan los síntomas</translation>
    </message>
    <message>
        <source>Prepare</source>
        <extracomment>prepare, title</extracomment>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>What to see to before any gauge goes in</source>
        <extracomment>prepare, brief</extracomment>
        <translation>De qué ocuparse antes de poner un manómetro</translation>
    </message>
    <message>
        <source>A reading can be held against a limit, the next cylinder or last year only when it was taken under the same conditions. Nothing here is a gate: what is left out is recorded, and it decides what the numbers can be compared with.</source>
        <extracomment>prepare, why</extracomment>
        <translation>Una lectura solo se puede comparar con un límite, con el cilindro siguiente o con el año pasado si se tomó en las mismas condiciones. Nada de esto es una barrera: lo que se omite queda registrado, y decide con qué se pueden comparar los números.</translation>
    </message>
    <message>
        <source>Blow out the wells before a plug (on a diesel: an injector or glow plug) comes out: grit falls into the cylinder.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Soplar los alojamientos antes de sacar una bujía (en un diésel: un inyector o una bujía de precalentamiento): la arenilla cae en el cilindro.</translation>
    </message>
    <message>
        <source>An engine that stood is turned by hand first, two turns with the plugs out. Look at the oil level, at valves that hang in their guides, and into the bores.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Un motor que estuvo parado se gira antes a mano, dos vueltas con las bujías fuera. Mirar el nivel de aceite, las válvulas colgadas en sus guías y el interior de los cilindros.</translation>
    </message>
    <message>
        <source>A petrol engine that stood: oil the bores a little, leave them overnight, turn the oil out with the plugs out. The rings are oiled then, and the reading is no longer a dry one: tag it &quot;after oil soak&quot;. Never on a diesel: oil can lock it or fire.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Un motor de gasolina que estuvo parado: aceitar un poco los cilindros, dejarlo actuar toda la noche, expulsar el aceite girando el motor con las bujías fuera. Los segmentos quedan aceitados y la lectura ya no es en seco: marcarla «tras remojo en aceite». Nunca en un diésel: el aceite puede bloquearlo o encenderse.</translation>
    </message>
    <message>
        <source>Measure the valve clearances and write them down.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Medir los juegos de válvulas y anotarlos.</translation>
    </message>
    <message>
        <source>Note whether the engine is cold or warm. Compare cold with cold, warm with warm.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Anotar si el motor está frío o caliente. Comparar frío con frío, caliente con caliente.</translation>
    </message>
    <message>
        <source>Hold the throttle wide open. Lift the slides of constant-velocity carburettors by hand, or take the induction off.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Mantener la mariposa abierta del todo. Levantar a mano las correderas de los carburadores de velocidad constante, o desmontar la admisión.</translation>
    </message>
    <message>
        <source>Take all plugs out; on a diesel all injectors or glow plugs, as its manual says. Ground the ignition leads; with coils on the plugs pull their connectors, or do as the manual says. Shut off fuel or injectors.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Sacar todas las bujías; en un diésel, todos los inyectores o bujías de precalentamiento, como diga su manual. Poner a masa los cables de encendido; con bobinas sobre las bujías, desenchufar sus conectores o hacer lo que diga el manual. Cortar el combustible o los inyectores.</translation>
    </message>
    <message>
        <source>Put the battery on charge and note its volts. Put the decompressor off.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Poner la batería en carga y anotar su tensión. Desactivar el descompresor.</translation>
    </message>
    <message>
        <source>Before leak-down: open the oil filler or breather, pinch the blow-by hose. Fill the compressor and switch it off before you listen.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Antes de la estanqueidad: abrir el tapón de llenado de aceite o el respiradero, pinzar la manguera de gases del cárter. Llenar el compresor y apagarlo antes de escuchar.</translation>
    </message>
    <message>
        <source>Mark each line on the Prepare page: done, not done, or no need.</source>
        <extracomment>prepare, how</extracomment>
        <translation>Marcar cada línea en la página Preparar: hecho, no hecho o no hace falta.</translation>
    </message>
    <message>
        <source>Throttle not really open</source>
        <extracomment>prepare, slip; dry, slip</extracomment>
        <translation>Mariposa no abierta de verdad</translation>
    </message>
    <message>
        <source>The cylinders can&apos;t fill: all of them read low, and it looks like a worn engine.</source>
        <extracomment>prepare, then</extracomment>
        <translation>Los cilindros no se pueden llenar: todos dan poco, y parece un motor gastado.</translation>
    </message>
    <message>
        <source>Flat battery</source>
        <extracomment>prepare, slip; dry, slip; diesel, slip</extracomment>
        <translation>Batería descargada</translation>
    </message>
    <message>
        <source>Cranking speed decides the reading. A tiring battery makes later cylinders read lower: measure the first one again at the end.</source>
        <extracomment>prepare, then</extracomment>
        <translation>La velocidad de arranque decide la lectura. Una batería que se agota hace que los cilindros posteriores den menos: medir de nuevo el primero al final.</translation>
    </message>
    <message>
        <source>Gauge not zeroed</source>
        <extracomment>prepare, slip; dry, slip; testers, slip</extracomment>
        <translation>Manómetro sin poner a cero</translation>
    </message>
    <message>
        <source>A needle that rests beside zero is out by as much in every reading. Look at it before it is screwed in.</source>
        <extracomment>prepare, then</extracomment>
        <translation>Una aguja que descansa fuera del cero se desvía otro tanto en cada lectura. Mirarla antes de enroscar el manómetro.</translation>
    </message>
    <message>
        <source>Blow-by hose not pinched</source>
        <extracomment>prepare, slip; listening, slip</extracomment>
        <translation>Manguera de gases del cárter sin pinzar</translation>
    </message>
    <message>
        <source>Air past the rings comes out at the intake and looks like an intake valve.</source>
        <extracomment>prepare, then</extracomment>
        <translation>El aire que pasa por los segmentos sale por la admisión y parece una válvula de admisión.</translation>
    </message>
    <message>
        <source>A cold engine reads about 10 % lower</source>
        <extracomment>prepare, for</extracomment>
        <translation>Un motor frío da alrededor de un 10 % menos</translation>
    </message>
    <message>
        <source>The list and its reasons</source>
        <extracomment>prepare, for</extracomment>
        <translation>La lista y sus motivos</translation>
    </message>
    <message>
        <source>Clearances</source>
        <extracomment>clearances, title</extracomment>
        <translation>Juego de válvulas</translation>
    </message>
    <message>
        <source>First of all: a valve without clearance looks burnt</source>
        <extracomment>clearances, brief</extracomment>
        <translation>Lo primero de todo: una válvula sin juego parece quemada</translation>
    </message>
    <message>
        <source>A valve without clearance is held off its seat. It leaks like a burnt one, and adjusting it is a quick fix. So the app gives no verdict that strips an engine for a valve before that valve&apos;s clearance is recorded.</source>
        <extracomment>clearances, why</extracomment>
        <translation>Una válvula sin juego queda separada de su asiento. Pierde como una quemada, y ajustarla es un arreglo rápido. Por eso la app no da ningún veredicto que desmonte un motor por una válvula antes de que esté registrado el juego de esa válvula.</translation>
    </message>
    <message>
        <source>Have the engine as cold or warm as its manual asks for.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Tener el motor tan frío o caliente como pida su manual.</translation>
    </message>
    <message>
        <source>Turn to TDC on compression of the cylinder: both of its valves are shut and their rockers or followers are free.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Girar hasta el PMS de compresión del cilindro: sus dos válvulas están cerradas y sus balancines o taqués están libres.</translation>
    </message>
    <message>
        <source>Find the feeler blade that slides between stem and rocker (or cam and follower) with a light drag. Its thickness is the clearance.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Buscar la galga que se desliza entre vástago y balancín (o leva y taqué) con un roce ligero. Su grosor es el juego.</translation>
    </message>
    <message>
        <source>Type it on the Clearances page, valve by valve. It is held against the limits on the engine card.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Escribirlo en la página Juego de válvulas, válvula por válvula. Se compara con los límites de la ficha del motor.</translation>
    </message>
    <message>
        <source>Out of limits: adjust by screw or shim, as the manual says. Then test again and mark the reading &quot;after clearance adjustment&quot;: that is a new state of the valve.</source>
        <extracomment>clearances, how</extracomment>
        <translation>Fuera de límites: ajustar con tornillo o pastilla, como diga el manual. Después probar de nuevo y marcar la lectura «tras ajustar el juego»: eso es un estado nuevo de la válvula.</translation>
    </message>
    <message>
        <source>Hydraulic adjusters have nothing to measure. Say so on the engine card.</source>
        <extracomment>clearances, how</extracomment>
        <translation>En los taqués hidráulicos no hay nada que medir. Decirlo en la ficha del motor.</translation>
    </message>
    <message>
        <source>No clearance</source>
        <extracomment>clearances, slip</extracomment>
        <translation>Sin juego</translation>
    </message>
    <message>
        <source>Low reading, air at intake or exhaust, and nothing is burnt. Adjust and test again before anything is taken apart.</source>
        <extracomment>clearances, then</extracomment>
        <translation>Lectura baja, aire por admisión o escape, y nada está quemado. Ajustar y probar de nuevo antes de desmontar nada.</translation>
    </message>
    <message>
        <source>Measured at the wrong TDC</source>
        <extracomment>clearances, slip</extracomment>
        <translation>Medido en el PMS equivocado</translation>
    </message>
    <message>
        <source>At overlap the cam holds both valves open: no clearance is felt, though there is some. Turn once round and measure again.</source>
        <extracomment>clearances, then</extracomment>
        <translation>En cruce de válvulas la leva mantiene abiertas las dos válvulas: no se nota juego, aunque lo hay. Dar una vuelta y medir de nuevo.</translation>
    </message>
    <message>
        <source>Measured warm, limits for cold</source>
        <extracomment>clearances, slip</extracomment>
        <translation>Medido en caliente, límites para frío</translation>
    </message>
    <message>
        <source>Clearance changes with heat. Write down which it was.</source>
        <extracomment>clearances, then</extracomment>
        <translation>El juego cambia con el calor. Anotar cómo estaba.</translation>
    </message>
    <message>
        <source>Rocker clearance first: a valve without clearance is held open</source>
        <extracomment>clearances, for</extracomment>
        <translation>Primero el juego de balancines: una válvula sin juego queda abierta</translation>
    </message>
    <message>
        <source>A light drag on the feeler blade</source>
        <extracomment>clearances, for</extracomment>
        <translation>Un roce ligero en la galga</translation>
    </message>
    <message>
        <source>Before cranking</source>
        <extracomment>cranking, title</extracomment>
        <translation>Antes de dar arranque</translation>
    </message>
    <message>
        <source>Fuel, sparks, moving parts, the adapter&apos;s reach</source>
        <extracomment>cranking, brief</extracomment>
        <translation>Combustible, chispas, piezas en movimiento, largo de rosca del adaptador</translation>
    </message>
    <message>
        <source>With the plugs out, cranking blows fuel mist from the plug holes and everything that is coupled to the engine moves. Sparks make fire of the mist. An adapter that reaches too far meets the piston or a valve.</source>
        <extracomment>cranking, why</extracomment>
        <translation>Con las bujías fuera, al dar arranque sale niebla de combustible por los agujeros de bujía y se mueve todo lo que está acoplado al motor. Las chispas prenden la niebla. Un adaptador demasiado largo topa con el pistón o con una válvula.</translation>
    </message>
    <message>
        <source>Put the gearbox in neutral.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Poner la caja de cambios en punto muerto (neutral).</translation>
    </message>
    <message>
        <source>Ground the ignition leads or take the supply off; with coils on the plugs pull their connectors, or do as the manual says. Shut off fuel or injectors.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Poner a masa los cables de encendido o desconectar la alimentación; con bobinas sobre las bujías, desenchufar sus conectores o hacer lo que diga el manual. Cortar el combustible o los inyectores.</translation>
    </message>
    <message>
        <source>A diesel has no sparks but dangers of its own: read the card Diesel first.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Un diésel no tiene chispas, pero sí peligros propios: leer antes la ficha Diésel.</translation>
    </message>
    <message>
        <source>Choose the adapter by the plug&apos;s thread and reach. See that its sealing ring is whole and clean.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Elegir el adaptador por la rosca y el largo de rosca de la bujía. Ver que su anillo de sellado esté entero y limpio.</translation>
    </message>
    <message>
        <source>Screw it in by hand, then turn the engine two turns by hand: nothing may touch.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Enroscarlo a mano y girar después el motor dos vueltas a mano: nada debe tocar.</translation>
    </message>
    <message>
        <source>Look at the gauge: needle at zero at rest.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Mirar el manómetro: aguja en cero en reposo.</translation>
    </message>
    <message>
        <source>Point the plug holes away from face and phone. Hands, sleeves and leads out of belts and fan.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Mantener cara y teléfono fuera de la dirección de los agujeros de bujía. Manos, mangas y cables fuera de correas y ventilador.</translation>
    </message>
    <message>
        <source>Have the throttle held open, and the starter&apos;s switch where you can see the gauge.</source>
        <extracomment>cranking, how</extracomment>
        <translation>Tener la mariposa sujeta del todo abierta y el mando de arranque donde se vea el manómetro.</translation>
    </message>
    <message>
        <source>Leaking adapter ring</source>
        <extracomment>cranking, slip; dry, slip; leak-down, slip; listening, slip; diesel, slip</extracomment>
        <translation>Anillo del adaptador que pierde</translation>
    </message>
    <message>
        <source>The cylinder reads low and seems to leak. Listen and put soapy water at the adapter; after cranking the gauge must not sink.</source>
        <extracomment>cranking, then</extracomment>
        <translation>El cilindro da poco y parece perder. Escuchar y poner agua jabonosa en el adaptador; después de dar arranque el manómetro no debe bajar.</translation>
    </message>
    <message>
        <source>Left in gear</source>
        <extracomment>cranking, slip</extracomment>
        <translation>Marcha puesta</translation>
    </message>
    <message>
        <source>The vehicle jumps with the first turn of the starter.</source>
        <extracomment>cranking, then</extracomment>
        <translation>El vehículo salta con la primera vuelta del motor de arranque.</translation>
    </message>
    <message>
        <source>Adapter too long</source>
        <extracomment>cranking, slip</extracomment>
        <translation>Adaptador demasiado largo</translation>
    </message>
    <message>
        <source>It strikes piston or valve. That is what the turn by hand is for.</source>
        <extracomment>cranking, then</extracomment>
        <translation>Golpea el pistón o una válvula. Para eso es la vuelta a mano.</translation>
    </message>
    <message>
        <source>Order and reasons</source>
        <extracomment>cranking, for</extracomment>
        <translation>Orden y motivos</translation>
    </message>
    <message>
        <source>Dry test</source>
        <extracomment>dry, title</extracomment>
        <translation>Prueba en seco</translation>
    </message>
    <message>
        <source>Cranking pressure, cylinder by cylinder, no oil in</source>
        <extracomment>dry, brief</extracomment>
        <translation>Presión de compresión, cilindro a cilindro, sin aceite</translation>
    </message>
    <message>
        <source>It says in a minute which cylinder differs from the others. It says little about where the air goes: that is for leak-down and the Leak hunt.</source>
        <extracomment>dry, why</extracomment>
        <translation>Dice en un minuto qué cilindro difiere de los demás. Dice poco de adónde va el aire: para eso están la estanqueidad y la Búsqueda de fugas.</translation>
    </message>
    <message>
        <source>Readings are held against the factory limit at your altitude, and against each other. Between cylinders the difference counts more than the height.</source>
        <extracomment>dry, why</extracomment>
        <translation>Las lecturas se comparan con el límite de fábrica a la altitud propia, y entre sí. Entre cilindros cuenta más la diferencia que el valor en sí.</translation>
    </message>
    <message>
        <source>See to Prepare and read the card Before cranking, for a diesel the card Diesel too.</source>
        <extracomment>dry, how</extracomment>
        <translation>Ocuparse de Preparar y leer la ficha Antes de dar arranque; en un diésel, también la ficha Diésel.</translation>
    </message>
    <message>
        <source>Screw the gauge into the first cylinder and let its needle rest at zero.</source>
        <extracomment>dry, how</extracomment>
        <translation>Enroscar el manómetro en el primer cilindro y dejar su aguja en reposo en cero.</translation>
    </message>
    <message>
        <source>Throttle open, crank until the needle stops rising: 5 to 7 strokes. Remember the first puff and the final reading.</source>
        <extracomment>dry, how</extracomment>
        <translation>Mariposa abierta, dar arranque hasta que la aguja deje de subir: 5 a 7 carreras. Recordar la primera embolada y la lectura final.</translation>
    </message>
    <message>
        <source>Wait a moment: the needle must not sink. If it does, check valve or O-ring leaks, not the engine.</source>
        <extracomment>dry, how</extracomment>
        <translation>Esperar un momento: la aguja no debe bajar. Si baja, pierde la válvula antirretorno o la junta tórica, no el motor.</translation>
    </message>
    <message>
        <source>Type the final reading; first puff and pulls if you have them. Keep takes you to the next cylinder.</source>
        <extracomment>dry, how</extracomment>
        <translation>Escribir la lectura final; la primera embolada y las emboladas, si se tienen. Guardar lleva al cilindro siguiente.</translation>
    </message>
    <message>
        <source>Give every cylinder the same number of pulls.</source>
        <extracomment>dry, how</extracomment>
        <translation>Dar a cada cilindro el mismo número de emboladas.</translation>
    </message>
    <message>
        <source>Pull again where you doubt it: a second pull counts as a repeat, both stand.</source>
        <extracomment>dry, how</extracomment>
        <translation>Medir de nuevo donde haya duda: una segunda medida cuenta como repetición, valen las dos.</translation>
    </message>
    <message>
        <source>Measure the first cylinder once more at the end: the difference is the battery&apos;s.</source>
        <extracomment>dry, how</extracomment>
        <translation>Medir una vez más el primer cilindro al final: la diferencia es de la batería.</translation>
    </message>
    <message>
        <source>A photo of the gauge lets the app read the needle and catch a slip of the finger.</source>
        <extracomment>dry, how</extracomment>
        <translation>Con una foto del manómetro la app lee la aguja y descubre un desliz del dedo.</translation>
    </message>
    <message>
        <source>First puff low, then it builds up</source>
        <extracomment>dry, sign</extracomment>
        <translation>Primera embolada baja, después sube</translation>
    </message>
    <message>
        <source>rings</source>
        <extracomment>dry, means; wet, means</extracomment>
        <translation>segmentos</translation>
    </message>
    <message>
        <source>First puff low, and it stays low</source>
        <extracomment>dry, sign</extracomment>
        <translation>Primera embolada baja, y sigue baja</translation>
    </message>
    <message>
        <source>valves</source>
        <extracomment>dry, means</extracomment>
        <translation>válvulas</translation>
    </message>
    <message>
        <source>Two neighbours low alike</source>
        <extracomment>dry, sign</extracomment>
        <translation>Dos vecinos igual de bajos</translation>
    </message>
    <message>
        <source>the joint between them</source>
        <extracomment>dry, means</extracomment>
        <translation>la junta entre ambos</translation>
    </message>
    <message>
        <source>All low, little leakage</source>
        <extracomment>dry, sign</extracomment>
        <translation>Todos bajos, poca pérdida</translation>
    </message>
    <message>
        <source>valve timing, throttle or cranking speed</source>
        <extracomment>dry, means</extracomment>
        <translation>distribución, mariposa o velocidad de arranque</translation>
    </message>
    <message>
        <source>Lowest under 75 % of the highest</source>
        <extracomment>dry, sign</extracomment>
        <translation>El más bajo por debajo del 75 % del más alto</translation>
    </message>
    <message>
        <source>a fault, unless the engine&apos;s manual says otherwise</source>
        <extracomment>dry, means</extracomment>
        <translation>un fallo, salvo que el manual del motor diga otra cosa</translation>
    </message>
    <message>
        <source>Every cylinder reads low.</source>
        <extracomment>dry, then</extracomment>
        <translation>Todos los cilindros dan poco.</translation>
    </message>
    <message>
        <source>Each cylinder reads lower than the one before. The first one, measured again, shows it.</source>
        <extracomment>dry, then</extracomment>
        <translation>Cada cilindro da menos que el anterior. El primero, medido de nuevo, lo muestra.</translation>
    </message>
    <message>
        <source>Decompressor working</source>
        <extracomment>dry, slip</extracomment>
        <translation>Descompresor actuando</translation>
    </message>
    <message>
        <source>57 to 85 psi (3.9 to 5.9 bar) whatever the engine&apos;s state. No proof of a leak: use leak-down.</source>
        <extracomment>dry, then</extracomment>
        <translation>De 57 a 85 psi (3,9 a 5,9 bar) sea cual sea el estado del motor. No es prueba de una fuga: usar la prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>One cylinder low, or all that this adapter was used on.</source>
        <extracomment>dry, then</extracomment>
        <translation>Un cilindro bajo, o todos en los que se usó este adaptador.</translation>
    </message>
    <message>
        <source>All readings are out by the same amount; differences between cylinders stay true.</source>
        <extracomment>dry, then</extracomment>
        <translation>Todas las lecturas se desvían en lo mismo; las diferencias entre cilindros siguen siendo ciertas.</translation>
    </message>
    <message>
        <source>Long hose before the check valve</source>
        <extracomment>dry, slip</extracomment>
        <translation>Manguera larga antes de la válvula antirretorno</translation>
    </message>
    <message>
        <source>The hose adds to the chamber: 8 cm³ of it turn 172 psi into 130 in a 250 cm³ cylinder (this app&apos;s cranking model).</source>
        <extracomment>dry, then</extracomment>
        <translation>La manguera se suma a la cámara: 8 cm³ de ella convierten 172 psi en 130 en un cilindro de 250 cm³ (modelo de arranque de esta app).</translation>
    </message>
    <message>
        <source>First puff and build-up, 5 to 7 strokes</source>
        <extracomment>dry, for</extracomment>
        <translation>Primera embolada y subida, 5 a 7 carreras</translation>
    </message>
    <message>
        <source>Lowest at least 75 % of the highest</source>
        <extracomment>dry, for</extracomment>
        <translation>El más bajo al menos el 75 % del más alto</translation>
    </message>
    <message>
        <source>Two low neighbours</source>
        <extracomment>dry, for</extracomment>
        <translation>Dos vecinos bajos</translation>
    </message>
    <message>
        <source>Readings with a decompressor working</source>
        <extracomment>dry, for</extracomment>
        <translation>Lecturas con un descompresor actuando</translation>
    </message>
    <message>
        <source>Small volume and check valve at the chamber end, or the gauge reads low</source>
        <extracomment>dry, for</extracomment>
        <translation>Poco volumen y válvula antirretorno en el lado de la cámara, o el manómetro da poco</translation>
    </message>
    <message>
        <source>All low with small leakage: valve timing</source>
        <extracomment>dry, for</extracomment>
        <translation>Todos bajos con poca pérdida: distribución</translation>
    </message>
    <message>
        <source>172 psi into 130</source>
        <extracomment>dry, for</extracomment>
        <translation>172 psi en 130</translation>
    </message>
    <message>
        <source>Finding TDC</source>
        <extracomment>tdc, title</extracomment>
        <translation>Encontrar el PMS</translation>
    </message>
    <message>
        <source>Compression, not overlap; and what to do when you passed it</source>
        <extracomment>tdc, brief</extracomment>
        <translation>Compresión, no cruce de válvulas; y qué hacer cuando se pasó</translation>
    </message>
    <message>
        <source>Leak-down wants the piston at the top with both valves shut: TDC on compression. A four-stroke comes to the top twice; the other time its valves overlap, air rushes out at intake and exhaust, and a sound cylinder looks wrecked.</source>
        <extracomment>tdc, why</extracomment>
        <translation>La estanqueidad pide el pistón arriba con las dos válvulas cerradas: PMS de compresión. Un cuatro tiempos llega arriba dos veces; la otra vez sus válvulas están en cruce, el aire sale de golpe por admisión y escape, y un cilindro en buen estado parece destrozado.</translation>
    </message>
    <message>
        <source>Close to TDC the air has next to no lever on the crank. A few degrees away it turns the engine.</source>
        <extracomment>tdc, why</extracomment>
        <translation>Cerca del PMS el aire apenas tiene palanca sobre el cigüeñal. A unos pocos grados hace girar el motor.</translation>
    </message>
    <message>
        <source>All plugs out. Turn by hand, in running direction only.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Todas las bujías fuera. Girar a mano, únicamente en el sentido de giro del motor.</translation>
    </message>
    <message>
        <source>Hold a thumb or a whistle at the plug hole. Air that pushes out on the way up means compression. If nothing pushes, the valves overlap: turn once more, all the way round.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Poner un pulgar o un silbato en el agujero de bujía. Si el aire empuja hacia fuera al subir, es compresión. Si nada empuja, las válvulas están en cruce: girar una vez más, la vuelta entera.</translation>
    </message>
    <message>
        <source>Come up to TDC slowly, from before it. With a little air on (20 psi, 1.4 bar) the flat spot shows the top: there the air turns the crank neither way.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Llegar despacio al PMS, viniendo desde antes, sin pasarlo. Con un poco de aire puesto (20 psi, 1,4 bar) el punto plano muestra el punto muerto: ahí el aire no gira el cigüeñal hacia ningún lado.</translation>
    </message>
    <message>
        <source>Passed it? Air off, then turn on in running direction until it comes round again: two turns of a four-stroke, one of a two-stroke. Go back, at least half a turn, and come up again only where the engine&apos;s manual allows turning back: tensioners of cam chain or belt, reeds or a rubber impeller may suffer.</source>
        <extracomment>tdc, how</extracomment>
        <translation>¿Se pasó? Quitar el aire y seguir girando en el sentido de giro hasta que vuelva a llegar: dos vueltas en un cuatro tiempos, una en un dos tiempos. Volver atrás, al menos media vuelta, y subir de nuevo, únicamente donde el manual del motor permita girar hacia atrás: los tensores de la cadena o correa, las láminas o un rodete de goma pueden dañarse.</translation>
    </message>
    <message>
        <source>With the cover off: at compression both rockers are free. At overlap a small turn moves both valves.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Con la tapa quitada: en compresión los dos balancines están libres. En cruce de válvulas, un giro pequeño mueve las dos válvulas.</translation>
    </message>
    <message>
        <source>For the next cylinder take the degrees from Next TDC. They come from the firing intervals: in V engines and uneven twins the firing order alone does not tell them.</source>
        <extracomment>tdc, how</extracomment>
        <translation>Para el cilindro siguiente, tomar los grados de Próximo PMS. Vienen de los intervalos de encendido: en motores en V y bicilíndricos de encendido irregular el orden de encendido solo no los da.</translation>
    </message>
    <message>
        <source>Air at intake and exhaust, almost nothing held</source>
        <extracomment>tdc, sign</extracomment>
        <translation>Aire por admisión y escape, casi no mantiene presión</translation>
    </message>
    <message>
        <source>most likely the wrong TDC: one full turn, test again</source>
        <extracomment>tdc, means</extracomment>
        <translation>lo más probable, el PMS equivocado: una vuelta completa, probar de nuevo</translation>
    </message>
    <message>
        <source>Wrong TDC</source>
        <extracomment>tdc, slip; leak-down, slip; listening, slip</extracomment>
        <translation>PMS equivocado</translation>
    </message>
    <message>
        <source>Air at intake and exhaust together and a very low reading. Before anything is blamed: one full turn, test again.</source>
        <extracomment>tdc, then</extracomment>
        <translation>Aire por admisión y escape a la vez y una lectura muy baja. Antes de culpar a nada: una vuelta completa, probar de nuevo.</translation>
    </message>
    <message>
        <source>A few degrees off</source>
        <extracomment>tdc, slip</extracomment>
        <translation>Unos pocos grados fuera</translation>
    </message>
    <message>
        <source>The air pushes the crank round, and with it whatever is coupled to it.</source>
        <extracomment>tdc, then</extracomment>
        <translation>El aire empuja el cigüeñal y lo hace girar, y con él todo lo que está acoplado.</translation>
    </message>
    <message>
        <source>Flat spot; if passed, go back at least half a turn (aircraft engines)</source>
        <extracomment>tdc, for</extracomment>
        <translation>Punto plano; si se pasó, volver al menos media vuelta (motores de aviación)</translation>
    </message>
    <message>
        <source>Thumb, whistle, rockers; turning on instead of back, and what turning back may harm</source>
        <extracomment>tdc, for</extracomment>
        <translation>Pulgar, silbato, balancines; seguir girando en vez de volver atrás, y lo que puede dañarse al girar hacia atrás</translation>
    </message>
    <message>
        <source>Leak-down</source>
        <extracomment>leak-down, title</extracomment>
        <translation>Estanqueidad</translation>
    </message>
    <message>
        <source>How much air a cylinder loses at its own TDC</source>
        <extracomment>leak-down, brief</extracomment>
        <translation>Cuánto aire pierde un cilindro en su propio PMS</translation>
    </message>
    <message>
        <source>Air goes into one cylinder through a small restrictor. What the cylinder can&apos;t hold, it leaks: leakage = (set - held) / set. 80 psi set and 60 held is 25 %.</source>
        <extracomment>leak-down, why</extracomment>
        <translation>El aire entra en un cilindro por un restrictor pequeño. Lo que el cilindro no puede mantener, lo pierde: pérdida = (ajustada - retenida) / ajustada. 80 psi ajustados y 60 retenidos es 25 %.</translation>
    </message>
    <message>
        <source>It needs neither starter nor battery, and while the air is on, you can hear where it goes. It comes before any oil goes in: oil stays on the rings for every later reading.</source>
        <extracomment>leak-down, why</extracomment>
        <translation>No necesita ni motor de arranque ni batería, y mientras el aire está puesto se puede oír adónde va. Va antes de echar aceite: el aceite se queda en los segmentos para todas las lecturas posteriores.</translation>
    </message>
    <message>
        <source>Check the tester: outlet blocked, it reads 0 % leakage. Needles at zero at rest.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Verificar el comprobador: con la salida tapada marca 0 % de pérdida. Agujas en cero en reposo.</translation>
    </message>
    <message>
        <source>Oil filler or breather open, blow-by hose pinched, throttle open (a diesel may have none).</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Tapón de llenado de aceite o respiradero abierto, manguera de gases del cárter pinzada, mariposa abierta (un diésel puede no tenerla).</translation>
    </message>
    <message>
        <source>Bring the cylinder to its TDC on compression (card Finding TDC).</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Llevar el cilindro a su PMS de compresión (ficha Encontrar el PMS).</translation>
    </message>
    <message>
        <source>Connect with the pressure low, about 20 psi (1.4 bar), and find the flat spot at that pressure. Whoever turns holds on all the time and stands out of the way of what they hold.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Conectar con la presión baja, unos 20 psi (1,4 bar), y buscar el punto plano a esa presión. Quien gira no suelta en ningún momento y se queda fuera del recorrido de lo que sujeta.</translation>
    </message>
    <message>
        <source>Take every tool off the crank. Hold it: gear and brake, or a second person. Or use a lower set pressure: the app converts it before it judges.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Quitar toda herramienta del cigüeñal. Sujetarlo: con una marcha puesta y el freno, o una segunda persona. O usar una presión ajustada menor: la app la convierte antes de juzgar.</translation>
    </message>
    <message>
        <source>Raise the pressure slowly to the set pressure. Let it settle; one maker waits 60 seconds.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Subir la presión despacio hasta la presión ajustada. Dejar que se estabilice; un fabricante espera 60 segundos.</translation>
    </message>
    <message>
        <source>Never move the crank under the set pressure. To try a little before or after the top, go back to the low pressure first, turn, take the tool off, hold and raise again. Keep the best held value.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>No mover nunca el cigüeñal bajo la presión ajustada. Para probar un poco antes o después del PMS, volver primero a la presión baja, girar, quitar la herramienta, sujetar y subir de nuevo. Quedarse con el mejor valor mantenido.</translation>
    </message>
    <message>
        <source>Look at the set pressure again for each cylinder, then type what is held. Dial marked in % of leakage: say so once under More, then type its figure.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Mirar otra vez la presión ajustada en cada cilindro y luego teclear lo retenido. Si la esfera marca la fuga en %: indicarlo una vez en Más y teclear su cifra.</translation>
    </message>
    <message>
        <source>Leave the air on and listen: &quot;Keep, listen&quot; opens the exits of this cylinder.</source>
        <extracomment>leak-down, how</extracomment>
        <translation>Dejar el aire puesto y escuchar: «Guardar, escuchar» abre las salidas de este cilindro.</translation>
    </message>
    <message>
        <source>Up to about 10 %</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Hasta alrededor del 10 %</translation>
    </message>
    <message>
        <source>seals well</source>
        <extracomment>leak-down, means</extracomment>
        <translation>sella bien</translation>
    </message>
    <message>
        <source>Up to about 20 %</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Hasta alrededor del 20 %</translation>
    </message>
    <message>
        <source>wear</source>
        <extracomment>leak-down, means</extracomment>
        <translation>desgaste</translation>
    </message>
    <message>
        <source>More than that</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Más que eso</translation>
    </message>
    <message>
        <source>work; where, the Leak hunt says</source>
        <extracomment>leak-down, means</extracomment>
        <translation>hay trabajo; por dónde, lo dice la Búsqueda de fugas</translation>
    </message>
    <message>
        <source>One cylinder far from the others</source>
        <extracomment>leak-down, sign</extracomment>
        <translation>Un cilindro lejos de los demás</translation>
    </message>
    <message>
        <source>in a used engine that counts more than the figure</source>
        <extracomment>leak-down, means</extracomment>
        <translation>en un motor usado eso cuenta más que la cifra</translation>
    </message>
    <message>
        <source>Almost nothing held, air at intake and exhaust. One full turn, test again.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Casi no mantiene presión, aire por admisión y escape. Una vuelta completa, probar de nuevo.</translation>
    </message>
    <message>
        <source>Hiss at the plug hole itself. Soapy water shows it.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Siseo en el propio agujero de bujía. El agua jabonosa lo muestra.</translation>
    </message>
    <message>
        <source>Gauge not zeroed, or outlet never blocked</source>
        <extracomment>leak-down, slip</extracomment>
        <translation>Manómetro sin poner a cero, o salida nunca tapada</translation>
    </message>
    <message>
        <source>The tester&apos;s own leak is counted as the engine&apos;s.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>La fuga propia del comprobador se cuenta como del motor.</translation>
    </message>
    <message>
        <source>Set pressure not looked at again</source>
        <extracomment>leak-down, slip</extracomment>
        <translation>Presión ajustada sin mirar de nuevo</translation>
    </message>
    <message>
        <source>A regulator sags under flow. With one gauge that is not seen, and is carried as doubt.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Un regulador cede con el caudal. Con un solo manómetro eso no se ve, y se lleva como incertidumbre.</translation>
    </message>
    <message>
        <source>Percent of two testers compared</source>
        <extracomment>leak-down, slip; testers, slip</extracomment>
        <translation>Porcentajes de dos comprobadores comparados</translation>
    </message>
    <message>
        <source>The same leak shows about 40 % at 35 psi and about 33 % at 80 psi behind the same restrictor. Bands belong to testers fed with 70 to 100 psi.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>La misma fuga marca alrededor del 40 % a 35 psi y alrededor del 33 % a 80 psi tras el mismo restrictor. Las bandas son de comprobadores alimentados con 70 a 100 psi.</translation>
    </message>
    <message>
        <source>Tool left on the crank</source>
        <extracomment>leak-down, slip</extracomment>
        <translation>Herramienta puesta en el cigüeñal</translation>
    </message>
    <message>
        <source>When the engine turns, it strikes.</source>
        <extracomment>leak-down, then</extracomment>
        <translation>Cuando el motor gira, golpea.</translation>
    </message>
    <message>
        <source>80 to 60 psi is 25 %</source>
        <extracomment>leak-down, for</extracomment>
        <translation>De 80 a 60 psi es 25 %</translation>
    </message>
    <message>
        <source>20 psi first, flat spot, rise slowly</source>
        <extracomment>leak-down, for</extracomment>
        <translation>Primero 20 psi, punto plano, subir despacio</translation>
    </message>
    <message>
        <source>Wait 60 s</source>
        <extracomment>leak-down, for</extracomment>
        <translation>Esperar 60 s</translation>
    </message>
    <message>
        <source>The difference between cylinders counts more in a used engine</source>
        <extracomment>leak-down, for</extracomment>
        <translation>La diferencia entre cilindros cuenta más en un motor usado</translation>
    </message>
    <message>
        <source>10 and 20 %</source>
        <extracomment>leak-down, for</extracomment>
        <translation>10 y 20 %</translation>
    </message>
    <message>
        <source>Pressure down before the crank is moved</source>
        <extracomment>leak-down, for</extracomment>
        <translation>Bajar la presión antes de mover el cigüeñal</translation>
    </message>
    <message>
        <source>40 % at 35 psi, 33 % at 80 psi: one leak by the flow law of a nozzle</source>
        <extracomment>leak-down, for</extracomment>
        <translation>40 % a 35 psi, 33 % a 80 psi: una misma fuga según la ley de caudal de una tobera</translation>
    </message>
    <message>
        <source>Leak hunt: listening</source>
        <extracomment>listening, title</extracomment>
        <translation>Búsqueda de fugas: escuchar</translation>
    </message>
    <message>
        <source>Where the air comes out: the strongest evidence there is</source>
        <extracomment>listening, brief</extracomment>
        <translation>Por dónde sale el aire: el indicio más fuerte que hay</translation>
    </message>
    <message>
        <source>A percentage says how much is lost; the exit says through what. Of all evidence it is the strongest, and it is there for the listening while the air is on.</source>
        <extracomment>listening, why</extracomment>
        <translation>Un porcentaje dice cuánto se pierde; la salida dice por dónde. De todos los indicios es el más fuerte, y basta con escuchar mientras el aire está puesto.</translation>
    </message>
    <message>
        <source>&quot;Nothing&quot; is evidence too. &quot;Not listened&quot; is not &quot;nothing&quot;.</source>
        <extracomment>listening, why</extracomment>
        <translation>«Nada» también es un indicio. «No escuchado» no es «nada».</translation>
    </message>
    <message>
        <source>Compressor full and switched off. Quiet in the shop.</source>
        <extracomment>listening, how</extracomment>
        <translation>Compresor lleno y apagado. Silencio en el taller.</translation>
    </message>
    <message>
        <source>Air on, crank held, throttle open (a diesel may have none). Nobody near what can turn.</source>
        <extracomment>listening, how</extracomment>
        <translation>Aire puesto, cigüeñal sujeto, mariposa abierta (un diésel puede no tenerla). Nadie cerca de lo que puede girar.</translation>
    </message>
    <message>
        <source>Go round the exits in the same order every time: intake, exhaust, oil filler or breather, coolant filler of a cold engine, the neighbours&apos; plug holes, the joint of the head.</source>
        <extracomment>listening, how</extracomment>
        <translation>Recorrer las salidas siempre en el mismo orden: admisión, escape, boca de llenado de aceite o respiradero, boca de llenado de refrigerante de un motor frío, agujeros de bujía de los vecinos, junta de la culata.</translation>
    </message>
    <message>
        <source>Hold a hose to your ear and its other end to each exit: it shuts out the rest of the shop.</source>
        <extracomment>listening, how</extracomment>
        <translation>Llevar una manguera al oído y su otro extremo a cada salida: deja fuera el resto del taller.</translation>
    </message>
    <message>
        <source>Lay a thin glove over the oil filler: it swells or it does not. Put soapy water along the joint and round the adapter.</source>
        <extracomment>listening, how</extracomment>
        <translation>Poner un guante fino sobre la boca de llenado de aceite: se hincha o no se hincha. Poner agua jabonosa a lo largo de la junta y alrededor del adaptador.</translation>
    </message>
    <message>
        <source>Note each exit as nothing, faint, clear or strong, and how you listened.</source>
        <extracomment>listening, how</extracomment>
        <translation>Anotar cada salida como nada, débil, claro o fuerte, y cómo se escuchó.</translation>
    </message>
    <message>
        <source>Neighbour&apos;s plug hole: it means the joint only if that cylinder&apos;s own valves are shut. Look which way its rockers stand.</source>
        <extracomment>listening, how</extracomment>
        <translation>Agujero de bujía del vecino: significa la junta solo si las válvulas de ese cilindro están cerradas. Mirar cómo están sus balancines.</translation>
    </message>
    <message>
        <source>Shared manifolds carry sound: compare port with port, close to the valve.</source>
        <extracomment>listening, how</extracomment>
        <translation>Los colectores compartidos llevan el sonido: comparar conducto con conducto, cerca de la válvula.</translation>
    </message>
    <message>
        <source>Put a voice note or a photo to what you will want to hear again.</source>
        <extracomment>listening, how</extracomment>
        <translation>Añadir una nota de voz o una foto a lo que se quiera volver a oír.</translation>
    </message>
    <message>
        <source>Intake</source>
        <extracomment>listening, sign</extracomment>
        <translation>Admisión</translation>
    </message>
    <message>
        <source>intake valve</source>
        <extracomment>listening, means</extracomment>
        <translation>válvula de admisión</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <extracomment>listening, sign</extracomment>
        <translation>Escape</translation>
    </message>
    <message>
        <source>exhaust valve</source>
        <extracomment>listening, means</extracomment>
        <translation>válvula de escape</translation>
    </message>
    <message>
        <source>Oil filler, dipstick, breather</source>
        <extracomment>listening, sign</extracomment>
        <translation>Boca de llenado de aceite, varilla, respiradero</translation>
    </message>
    <message>
        <source>rings, piston, bore; a little is normal there</source>
        <extracomment>listening, means</extracomment>
        <translation>segmentos, pistón, cilindro; un poco es normal ahí</translation>
    </message>
    <message>
        <source>Bubbles in the coolant</source>
        <extracomment>listening, sign</extracomment>
        <translation>Burbujas en el refrigerante</translation>
    </message>
    <message>
        <source>head gasket, or a cracked head or block</source>
        <extracomment>listening, means</extracomment>
        <translation>junta de culata, o culata o bloque agrietado</translation>
    </message>
    <message>
        <source>Neighbour&apos;s plug hole</source>
        <extracomment>listening, sign</extracomment>
        <translation>Agujero de bujía del vecino</translation>
    </message>
    <message>
        <source>the head gasket between the two</source>
        <extracomment>listening, means</extracomment>
        <translation>la junta de culata entre ambos</translation>
    </message>
    <message>
        <source>Soapy water at the joint</source>
        <extracomment>listening, sign</extracomment>
        <translation>Agua jabonosa en la junta</translation>
    </message>
    <message>
        <source>head gasket to the outside</source>
        <extracomment>listening, means</extracomment>
        <translation>junta de culata hacia el exterior</translation>
    </message>
    <message>
        <source>Intake and exhaust, almost nothing held</source>
        <extracomment>listening, sign</extracomment>
        <translation>Admisión y escape, casi no mantiene presión</translation>
    </message>
    <message>
        <source>first of all: wrong TDC?</source>
        <extracomment>listening, means</extracomment>
        <translation>lo primero de todo: ¿PMS equivocado?</translation>
    </message>
    <message>
        <source>Both valves stand open at overlap. One full turn, test again.</source>
        <extracomment>listening, then</extracomment>
        <translation>En cruce las dos válvulas están abiertas. Una vuelta completa, probar de nuevo.</translation>
    </message>
    <message>
        <source>Ring air arrives at the intake.</source>
        <extracomment>listening, then</extracomment>
        <translation>El aire de los segmentos llega a la admisión.</translation>
    </message>
    <message>
        <source>Companion cylinder on overlap</source>
        <extracomment>listening, slip</extracomment>
        <translation>Cilindro compañero en cruce de válvulas</translation>
    </message>
    <message>
        <source>A valve leak comes out of its plug hole through the shared manifold and is taken for the joint. Companions stand at TDC together: 1-4 and 2-3 of an in-line four, 1-6, 2-5 and 3-4 of an in-line six, 1-2 of a 360 degree twin.</source>
        <extracomment>listening, then</extracomment>
        <translation>Una fuga de válvula sale por su agujero de bujía a través del colector compartido y se toma por la junta. Los compañeros están a la vez en el PMS: 1-4 y 2-3 de un cuatro en línea, 1-6, 2-5 y 3-4 de un seis en línea, 1-2 de un bicilíndrico de 360 grados.</translation>
    </message>
    <message>
        <source>Compressor running</source>
        <extracomment>listening, slip</extracomment>
        <translation>Compresor en marcha</translation>
    </message>
    <message>
        <source>Faint exits are missed.</source>
        <extracomment>listening, then</extracomment>
        <translation>Las salidas débiles se pasan por alto.</translation>
    </message>
    <message>
        <source>A hiss that seems to come from everywhere near the plug.</source>
        <extracomment>listening, then</extracomment>
        <translation>Un siseo que parece venir de todas partes cerca de la bujía.</translation>
    </message>
    <message>
        <source>What each exit means</source>
        <extracomment>listening, for</extracomment>
        <translation>Lo que significa cada salida</translation>
    </message>
    <message>
        <source>A gasket sign may be a crack</source>
        <extracomment>listening, for</extracomment>
        <translation>Un indicio de junta puede ser una grieta</translation>
    </message>
    <message>
        <source>Valves, plug and joint may not leak at all, rings may</source>
        <extracomment>listening, for</extracomment>
        <translation>Válvulas, bujía y junta no deben perder nada; los segmentos sí pueden</translation>
    </message>
    <message>
        <source>Hose, glove, companions</source>
        <extracomment>listening, for</extracomment>
        <translation>Manguera, guante, compañeros</translation>
    </message>
    <message>
        <source>Staking a valve</source>
        <extracomment>staking, title</extracomment>
        <translation>Asentar una válvula con toques</translation>
    </message>
    <message>
        <source>Carbon on the seat can leak like a burnt valve</source>
        <extracomment>staking, brief</extracomment>
        <translation>La carbonilla en el asiento puede perder como una válvula quemada</translation>
    </message>
    <message>
        <source>A crumb of carbon under a valve leaks like a burnt one. A light tap on the stem can seat it again. It is a procedure of aircraft manuals, with their cautions, and it comes before any strip-down.</source>
        <extracomment>staking, why</extracomment>
        <translation>Una miga de carbonilla bajo una válvula pierde como una quemada. Un toque ligero en el vástago puede asentarla de nuevo. Es un procedimiento de manuales de aviación, con sus precauciones, y va antes de cualquier desmontaje.</translation>
    </message>
    <message>
        <source>A two-stroke without poppet valves has nothing to stake.</source>
        <extracomment>staking, why</extracomment>
        <translation>Un dos tiempos sin válvulas de asiento no tiene nada que asentar con toques.</translation>
    </message>
    <message>
        <source>Only for a valve whose clearance is recorded and that leaked in leak-down.</source>
        <extracomment>staking, how</extracomment>
        <translation>Solo para una válvula cuyo juego está registrado y que perdió en la prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>Air off and pressure gone. Valve cover off, eyes protected.</source>
        <extracomment>staking, how</extracomment>
        <translation>Aire quitado y presión fuera. Tapa de válvulas fuera, ojos protegidos.</translation>
    </message>
    <message>
        <source>Turn until the piston is clear of the valves: a tap must not drive a valve onto it.</source>
        <extracomment>staking, how</extracomment>
        <translation>Girar hasta que el pistón esté lejos de las válvulas: un toque no debe llevar una válvula contra él.</translation>
    </message>
    <message>
        <source>Tap the stem lightly and squarely: the stem only, never the rocker, never from the side.</source>
        <extracomment>staking, how</extracomment>
        <translation>Dar toques ligeros y rectos al vástago: solo el vástago, nunca el balancín, nunca de lado.</translation>
    </message>
    <message>
        <source>Bring the cylinder back to its TDC on compression and run leak-down again.</source>
        <extracomment>staking, how</extracomment>
        <translation>Llevar de nuevo el cilindro a su PMS de compresión y repetir la prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>Note it in the Leak hunt under &quot;After staking&quot;: the valve is in a new state, and the old reading stays beside it.</source>
        <extracomment>staking, how</extracomment>
        <translation>Anotarlo en la Búsqueda de fugas bajo «Tras asentar con toques»: la válvula está en un estado nuevo, y la lectura anterior queda a su lado.</translation>
    </message>
    <message>
        <source>Holds better afterwards</source>
        <extracomment>staking, sign</extracomment>
        <translation>Mantiene mejor después</translation>
    </message>
    <message>
        <source>carbon; run the engine, then test again</source>
        <extracomment>staking, means</extracomment>
        <translation>carbonilla; hacer funcionar el motor y probar de nuevo</translation>
    </message>
    <message>
        <source>No change</source>
        <extracomment>staking, sign</extracomment>
        <translation>Sin cambio</translation>
    </message>
    <message>
        <source>it was not carbon that a tap clears</source>
        <extracomment>staking, means</extracomment>
        <translation>no era carbonilla que un toque quite</translation>
    </message>
    <message>
        <source>Piston at the top</source>
        <extracomment>staking, slip</extracomment>
        <translation>Pistón arriba</translation>
    </message>
    <message>
        <source>The valve meets the piston.</source>
        <extracomment>staking, then</extracomment>
        <translation>La válvula topa con el pistón.</translation>
    </message>
    <message>
        <source>Struck askew</source>
        <extracomment>staking, slip</extracomment>
        <translation>Golpe torcido</translation>
    </message>
    <message>
        <source>The stem bends, or spring and collets jump.</source>
        <extracomment>staking, then</extracomment>
        <translation>El vástago se dobla, o saltan el muelle y las chavetas.</translation>
    </message>
    <message>
        <source>Tag forgotten</source>
        <extracomment>staking, slip</extracomment>
        <translation>Etiqueta olvidada</translation>
    </message>
    <message>
        <source>Before and after look like two readings of one state.</source>
        <extracomment>staking, then</extracomment>
        <translation>Antes y después parecen dos lecturas de un mismo estado.</translation>
    </message>
    <message>
        <source>Staking, and what follows from the result</source>
        <extracomment>staking, for</extracomment>
        <translation>Asentar con toques, y lo que se deduce del resultado</translation>
    </message>
    <message>
        <source>Wet test</source>
        <extracomment>wet, title</extracomment>
        <translation>Prueba húmeda</translation>
    </message>
    <message>
        <source>Last of all: what a little oil changes, and what it only seems to</source>
        <extracomment>wet, brief</extracomment>
        <translation>La última de todas: lo que cambia un poco de aceite, y lo que solo parece cambiar</translation>
    </message>
    <message>
        <source>Oil seals worn rings for a few strokes and does nothing for a valve. So the rise from dry to wet speaks for rings.</source>
        <extracomment>wet, why</extracomment>
        <translation>El aceite sella unos segmentos gastados durante unas pocas carreras y no hace nada por una válvula. Por eso la subida de seco a húmedo habla de segmentos.</translation>
    </message>
    <message>
        <source>But oil takes room as well. A smaller chamber reads higher with no ring leak at all. The app shows what volume alone explains as a range, and only what lies above it speaks for rings.</source>
        <extracomment>wet, why</extracomment>
        <translation>Pero el aceite también ocupa sitio. Una cámara más pequeña da más sin ninguna fuga de segmentos. La app muestra como rango lo que explica el volumen solo, y únicamente lo que queda por encima habla de segmentos.</translation>
    </message>
    <message>
        <source>Do it last: oil stays on the rings for every later reading. Leak-down comes first.</source>
        <extracomment>wet, how</extracomment>
        <translation>Hacerla la última: el aceite se queda en los segmentos para todas las lecturas posteriores. La estanqueidad va antes.</translation>
    </message>
    <message>
        <source>Have a dry reading of the same cylinder under the same conditions.</source>
        <extracomment>wet, how</extracomment>
        <translation>Tener una lectura en seco del mismo cilindro en las mismas condiciones.</translation>
    </message>
    <message>
        <source>Measure the oil: 15 ml (one tablespoon) for a car cylinder, about 5 ml for a small one. Never more, and never on a diesel.</source>
        <extracomment>wet, how</extracomment>
        <translation>Medir el aceite: 15 ml (una cucharada) para un cilindro de automóvil, unos 5 ml para uno pequeño. Nunca más, y nunca en un diésel.</translation>
    </message>
    <message>
        <source>Let it in through the plug hole so that it runs round the bore.</source>
        <extracomment>wet, how</extracomment>
        <translation>Echarlo por el agujero de bujía de modo que corra alrededor del cilindro.</translation>
    </message>
    <message>
        <source>With the gauge in, turn the engine over by hand, two turns, before the starter: it must not lock. If it does, take the gauge out again and let the oil out.</source>
        <extracomment>wet, how</extracomment>
        <translation>Con el manómetro puesto, girar el motor a mano, dos vueltas, antes de usar el motor de arranque: no debe bloquearse. Si se bloquea, quitar otra vez el manómetro y dejar salir el aceite.</translation>
    </message>
    <message>
        <source>Eyes away from the plug holes. Crank as often as in the dry test.</source>
        <extracomment>wet, how</extracomment>
        <translation>Los ojos lejos de los agujeros de bujía. Dar tantas emboladas como en la prueba en seco.</translation>
    </message>
    <message>
        <source>Type the final reading, how much oil and which.</source>
        <extracomment>wet, how</extracomment>
        <translation>Escribir la lectura final, cuánto aceite y cuál.</translation>
    </message>
    <message>
        <source>Rises by 10 % or more, beyond what volume explains</source>
        <extracomment>wet, sign</extracomment>
        <translation>Sube un 10 % o más, más allá de lo que explica el volumen</translation>
    </message>
    <message>
        <source>Does not rise</source>
        <extracomment>wet, sign</extracomment>
        <translation>No sube</translation>
    </message>
    <message>
        <source>valves, a broken ring or the gasket</source>
        <extracomment>wet, means</extracomment>
        <translation>válvulas, un segmento roto o la junta</translation>
    </message>
    <message>
        <source>Rises within what volume explains</source>
        <extracomment>wet, sign</extracomment>
        <translation>Sube dentro de lo que explica el volumen</translation>
    </message>
    <message>
        <source>says nothing either way</source>
        <extracomment>wet, means</extracomment>
        <translation>no dice nada en ningún sentido</translation>
    </message>
    <message>
        <source>Oil pooled in a flat engine</source>
        <extracomment>wet, slip</extracomment>
        <translation>Aceite encharcado en un motor de cilindros opuestos</translation>
    </message>
    <message>
        <source>In flat or steep cylinders oil lies on one side: it seals half a ring and fills the chamber. The doubt is wider there.</source>
        <extracomment>wet, then</extracomment>
        <translation>En cilindros horizontales o muy inclinados el aceite queda a un lado: sella medio segmento y llena la cámara. Ahí la incertidumbre es mayor.</translation>
    </message>
    <message>
        <source>Too much oil</source>
        <extracomment>wet, slip</extracomment>
        <translation>Demasiado aceite</translation>
    </message>
    <message>
        <source>Volume alone lifts the reading: 5 cm³ that stay turn 172 psi into 214 in a 250 cm³ cylinder without any ring leak (this app&apos;s cranking model). Far too much locks the engine.</source>
        <extracomment>wet, then</extracomment>
        <translation>El volumen solo sube la lectura: 5 cm³ que se quedan convierten 172 psi en 214 en un cilindro de 250 cm³ sin ninguna fuga de segmentos (modelo de arranque de esta app). Muchísimo de más bloquea el motor.</translation>
    </message>
    <message>
        <source>Leak-down afterwards</source>
        <extracomment>wet, slip</extracomment>
        <translation>Estanqueidad después</translation>
    </message>
    <message>
        <source>Oiled rings leak less than they will. Such readings are marked as oiled.</source>
        <extracomment>wet, then</extracomment>
        <translation>Los segmentos aceitados pierden menos de lo que perderán. Esas lecturas se marcan como aceitadas.</translation>
    </message>
    <message>
        <source>Other number of pulls than dry</source>
        <extracomment>wet, slip</extracomment>
        <translation>Otro número de emboladas que en seco</translation>
    </message>
    <message>
        <source>The two readings can&apos;t be compared.</source>
        <extracomment>wet, then</extracomment>
        <translation>Las dos lecturas no se pueden comparar.</translation>
    </message>
    <message>
        <source>10 % or more: rings; none: valves, broken ring, gasket; 15 ml</source>
        <extracomment>wet, for</extracomment>
        <translation>10 % o más: segmentos; nada: válvulas, segmento roto, junta; 15 ml</translation>
    </message>
    <message>
        <source>5 ml: that manual&apos;s older figure for a car cylinder, taken here for small ones</source>
        <extracomment>wet, for</extracomment>
        <translation>5 ml: la cifra antigua de ese manual para un cilindro de automóvil, tomada aquí para los pequeños</translation>
    </message>
    <message>
        <source>Turning by hand after the oil; no oil into a diesel</source>
        <extracomment>wet, for</extracomment>
        <translation>Girar a mano después del aceite; nada de aceite en un diésel</translation>
    </message>
    <message>
        <source>172 psi into 214, and the range that volume explains</source>
        <extracomment>wet, for</extracomment>
        <translation>172 psi en 214, y el rango que explica el volumen</translation>
    </message>
    <message>
        <source>Reading the findings</source>
        <extracomment>findings, title</extracomment>
        <translation>Leer el diagnóstico</translation>
    </message>
    <message>
        <source>One sentence first, then how sure, then the next test</source>
        <extracomment>findings, brief</extracomment>
        <translation>Primero una frase, luego la certeza, luego la prueba siguiente</translation>
    </message>
    <message>
        <source>One number is not a verdict. The Findings put all the evidence of a session together, say how sure each thing is, name what contradicts what, and which one test would settle it.</source>
        <extracomment>findings, why</extracomment>
        <translation>Un número no es un veredicto. El Diagnóstico reúne todos los indicios de una sesión, dice qué certeza tiene cada cosa, nombra lo que se contradice y qué prueba lo aclararía.</translation>
    </message>
    <message>
        <source>Read the one sentence of each cylinder first.</source>
        <extracomment>findings, how</extracomment>
        <translation>Leer primero la frase de cada cilindro.</translation>
    </message>
    <message>
        <source>Then the question, if there is one: wrong TDC, a clearance not recorded, a decompressor. It comes before any verdict.</source>
        <extracomment>findings, how</extracomment>
        <translation>Después la pregunta, si la hay: PMS equivocado, un juego no registrado, un descompresor. Va antes de cualquier veredicto.</translation>
    </message>
    <message>
        <source>Look at the shares of &quot;Where it leaks&quot; with their intervals. They are odds under the app&apos;s working assumptions and not yet counted on real engines. They never go above 95 %.</source>
        <extracomment>findings, how</extracomment>
        <translation>Mirar las partes de «Por dónde pierde» con sus intervalos. Son probabilidades según los supuestos de trabajo de la app y aún no contadas en motores reales. Nunca pasan del 95 %.</translation>
    </message>
    <message>
        <source>Read the rules of thumb beside them, in their own words. Where they disagree with the odds, it says why.</source>
        <extracomment>findings, how</extracomment>
        <translation>Leer las reglas prácticas a su lado, con sus propias palabras. Donde no coinciden con las probabilidades, se dice por qué.</translation>
    </message>
    <message>
        <source>Do the next test it names before you plan anything.</source>
        <extracomment>findings, how</extracomment>
        <translation>Hacer la prueba siguiente que nombra antes de planear nada.</translation>
    </message>
    <message>
        <source>Plan quick fixes, and &quot;run it, then test again&quot;, before a strip-down.</source>
        <extracomment>findings, how</extracomment>
        <translation>Planear arreglos rápidos, y «hacerlo funcionar y probar de nuevo», antes de un desmontaje.</translation>
    </message>
    <message>
        <source>Filled disc: in range</source>
        <extracomment>findings, sign</extracomment>
        <translation>Disco lleno: en rango</translation>
    </message>
    <message>
        <source>leave it</source>
        <extracomment>findings, means</extracomment>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>Half disc: borderline</source>
        <extracomment>findings, sign</extracomment>
        <translation>Medio disco: en el límite</translation>
    </message>
    <message>
        <source>watch it, test again</source>
        <extracomment>findings, means</extracomment>
        <translation>vigilarlo, probar de nuevo</translation>
    </message>
    <message>
        <source>Open triangle: fault</source>
        <extracomment>findings, sign</extracomment>
        <translation>Triángulo abierto: fallo</translation>
    </message>
    <message>
        <source>something to find</source>
        <extracomment>findings, means</extracomment>
        <translation>hay algo que encontrar</translation>
    </message>
    <message>
        <source>Dashed ring: not measured</source>
        <extracomment>findings, sign</extracomment>
        <translation>Anillo de trazos: no medido</translation>
    </message>
    <message>
        <source>no verdict, also not a good one</source>
        <extracomment>findings, means</extracomment>
        <translation>ningún veredicto, tampoco uno bueno</translation>
    </message>
    <message>
        <source>A small difference taken for a change</source>
        <extracomment>findings, slip</extracomment>
        <translation>Una diferencia pequeña tomada por un cambio</translation>
    </message>
    <message>
        <source>0.1 bar on a gauge of 0 to 6 bar, class 1.6, is the gauge&apos;s own error.</source>
        <extracomment>findings, then</extracomment>
        <translation>0,1 bar en un manómetro de 0 a 6 bar, clase 1,6, es el error propio del manómetro.</translation>
    </message>
    <message>
        <source>No clearance recorded</source>
        <extracomment>findings, slip</extracomment>
        <translation>Ningún juego registrado</translation>
    </message>
    <message>
        <source>A valve is called burnt that only lacks clearance.</source>
        <extracomment>findings, then</extracomment>
        <translation>Se llama quemada a una válvula a la que solo le falta juego.</translation>
    </message>
    <message>
        <source>Cold held against warm</source>
        <extracomment>findings, slip</extracomment>
        <translation>Frío comparado con caliente</translation>
    </message>
    <message>
        <source>A cold engine reads about 10 % lower.</source>
        <extracomment>findings, then</extracomment>
        <translation>Un motor frío da alrededor de un 10 % menos.</translation>
    </message>
    <message>
        <source>Air at the breather called a fault</source>
        <extracomment>findings, slip</extracomment>
        <translation>Aire en el respiradero llamado fallo</translation>
    </message>
    <message>
        <source>Rings may pass a little. Valves and joints may not.</source>
        <extracomment>findings, then</extracomment>
        <translation>Los segmentos pueden dejar pasar un poco. Las válvulas y las juntas, no.</translation>
    </message>
    <message>
        <source>Class 1.6 is an error of 1.6 % of the span</source>
        <extracomment>findings, for</extracomment>
        <translation>La clase 1,6 es un error del 1,6 % del alcance</translation>
    </message>
    <message>
        <source>Cold about 10 % lower</source>
        <extracomment>findings, for; after-repair, for</extracomment>
        <translation>Frío alrededor de un 10 % menos</translation>
    </message>
    <message>
        <source>Rings may leak, static seals may not</source>
        <extracomment>findings, for</extracomment>
        <translation>Los segmentos pueden perder, las juntas fijas no</translation>
    </message>
    <message>
        <source>The odds</source>
        <extracomment>findings, for</extracomment>
        <translation>Las probabilidades</translation>
    </message>
    <message>
        <source>Deciding</source>
        <extracomment>decide, title</extracomment>
        <translation>Decidir</translation>
    </message>
    <message>
        <source>Leave it, quick fix or strip: the owner decides on figures</source>
        <extracomment>decide, brief</extracomment>
        <translation>Dejarlo, arreglo rápido o desmontar: el dueño decide con cifras</translation>
    </message>
    <message>
        <source>Three ways lead on from a finding. Each has its price, and leaving it has one too. The findings say what leaks; what is done about it is the owner&apos;s to decide.</source>
        <extracomment>decide, why</extracomment>
        <translation>Tres caminos parten del diagnóstico. Cada uno tiene su precio, también el de dejarlo. El diagnóstico dice qué fuga; qué se hace lo decide el dueño.</translation>
    </message>
    <message>
        <source>Do the next test that the Findings name: a decision without it is a guess.</source>
        <extracomment>decide, how</extracomment>
        <translation>Haga antes la prueba que el diagnóstico señala: decidir sin ella es adivinar.</translation>
    </message>
    <message>
        <source>Begin with what is quick: clearance, staking, &quot;run it, then test again&quot;.</source>
        <extracomment>decide, how</extracomment>
        <translation>Empiece por lo rápido: holgura, golpe a la válvula, «hacerlo funcionar y volver a probar».</translation>
    </message>
    <message>
        <source>Give each way its parts, hours and prices on the Plan page, and what happens if it is left.</source>
        <extracomment>decide, how</extracomment>
        <translation>En la página Plan dé a cada camino sus piezas, horas y precios, y lo que ocurre si se deja así.</translation>
    </message>
    <message>
        <source>Look at the reading that is predicted after each: a repair that changes little is not worth it.</source>
        <extracomment>decide, how</extracomment>
        <translation>Mire la lectura prevista después de cada uno: una reparación que cambia poco no vale la pena.</translation>
    </message>
    <message>
        <source>Note the owner&apos;s yes or no with its date, before anything is taken apart.</source>
        <extracomment>decide, how</extracomment>
        <translation>Anote el sí o el no del dueño con fecha antes de desmontar nada.</translation>
    </message>
    <message>
        <source>In range, like the others</source>
        <extracomment>decide, sign</extracomment>
        <translation>En margen, como los demás</translation>
    </message>
    <message>
        <source>leave it, test again next year</source>
        <extracomment>decide, means</extracomment>
        <translation>dejarlo y volver a probar el año que viene</translation>
    </message>
    <message>
        <source>A valve without clearance</source>
        <extracomment>decide, sign</extracomment>
        <translation>Una válvula sin holgura</translation>
    </message>
    <message>
        <source>quick fix, then test again</source>
        <extracomment>decide, means</extracomment>
        <translation>arreglo rápido y volver a probar</translation>
    </message>
    <message>
        <source>The same exit, clear in two tests</source>
        <extracomment>decide, sign</extracomment>
        <translation>La misma salida, clara en dos pruebas</translation>
    </message>
    <message>
        <source>strip, if the owner wants it</source>
        <extracomment>decide, means</extracomment>
        <translation>desmontar, si el dueño lo quiere</translation>
    </message>
    <message>
        <source>Stripped on one reading</source>
        <extracomment>decide, slip</extracomment>
        <translation>Desmontado por una sola lectura</translation>
    </message>
    <message>
        <source>The fault was a clearance, the wrong TDC or the gauge.</source>
        <extracomment>decide, then</extracomment>
        <translation>La causa era la holgura, el PMS equivocado o el manómetro.</translation>
    </message>
    <message>
        <source>No answer written down</source>
        <extracomment>decide, slip</extracomment>
        <translation>Respuesta sin anotar</translation>
    </message>
    <message>
        <source>Later nobody knows who agreed to what.</source>
        <extracomment>decide, then</extracomment>
        <translation>Más tarde nadie sabe quién aceptó qué.</translation>
    </message>
    <message>
        <source>Quick fixes before a strip-down</source>
        <extracomment>decide, for</extracomment>
        <translation>Arreglos rápidos antes de desmontar</translation>
    </message>
    <message>
        <source>After the repair</source>
        <extracomment>after-repair, title</extracomment>
        <translation>Después de la reparación</translation>
    </message>
    <message>
        <source>Prove that it worked, or say that it can&apos;t be compared</source>
        <extracomment>after-repair, brief</extracomment>
        <translation>Probar que funcionó, o decir que no se puede comparar</translation>
    </message>
    <message>
        <source>A repair is proved by a second reading that can be held against the first. The difference has a doubt of its own: with the same gauge what it is always out by cancels, with another gauge it does not.</source>
        <extracomment>after-repair, why</extracomment>
        <translation>Una reparación se demuestra con una segunda lectura que se pueda comparar con la primera. La diferencia tiene su propia incertidumbre: con el mismo manómetro lo que este siempre se desvía se anula, con otro manómetro no.</translation>
    </message>
    <message>
        <source>Open a new session and tag the readings &quot;after repair&quot;.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Abrir una sesión nueva y etiquetar las lecturas «tras la reparación».</translation>
    </message>
    <message>
        <source>Repeat the conditions of the first visit: same gauge, same heat, throttle, plugs out, battery on charge. Cold against cold.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Repetir las condiciones de la primera visita: mismo manómetro, mismo calor, mariposa, bujías fuera, batería en carga. Frío contra frío.</translation>
    </message>
    <message>
        <source>Run the same tests in the same order.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Hacer las mismas pruebas en el mismo orden.</translation>
    </message>
    <message>
        <source>Note oil used at assembly: it makes the test wet.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Anotar el aceite usado en el montaje: hace húmeda la prueba.</translation>
    </message>
    <message>
        <source>After a hone or new rings, plan a retest after running in. Engines shows it when it is due.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Tras un bruñido o segmentos nuevos, prever una nueva prueba después del rodaje. Motores la muestra cuando toca.</translation>
    </message>
    <message>
        <source>Hold the two visits against each other, and hand the owner the report.</source>
        <extracomment>after-repair, how</extracomment>
        <translation>Comparar las dos visitas entre sí, y entregar el informe al propietario.</translation>
    </message>
    <message>
        <source>Better beyond doubt</source>
        <extracomment>after-repair, sign</extracomment>
        <translation>Mejor sin lugar a dudas</translation>
    </message>
    <message>
        <source>more than the gauges could be out by</source>
        <extracomment>after-repair, means</extracomment>
        <translation>más de lo que podrían desviarse los manómetros</translation>
    </message>
    <message>
        <source>No real change</source>
        <extracomment>after-repair, sign</extracomment>
        <translation>Sin cambio real</translation>
    </message>
    <message>
        <source>the difference lies inside the doubt</source>
        <extracomment>after-repair, means</extracomment>
        <translation>la diferencia queda dentro de la incertidumbre</translation>
    </message>
    <message>
        <source>Assembly oil</source>
        <extracomment>after-repair, slip</extracomment>
        <translation>Aceite de montaje</translation>
    </message>
    <message>
        <source>It makes the test wet and flatters the rings.</source>
        <extracomment>after-repair, then</extracomment>
        <translation>Hace húmeda la prueba y favorece a los segmentos.</translation>
    </message>
    <message>
        <source>Other tester or set pressure</source>
        <extracomment>after-repair, slip</extracomment>
        <translation>Otro comprobador u otra presión ajustada</translation>
    </message>
    <message>
        <source>Percentages can&apos;t be compared as they stand. The app converts, and says so.</source>
        <extracomment>after-repair, then</extracomment>
        <translation>Los porcentajes no se pueden comparar tal como están. La app los convierte, y lo dice.</translation>
    </message>
    <message>
        <source>Warm against cold</source>
        <extracomment>after-repair, slip</extracomment>
        <translation>Caliente contra frío</translation>
    </message>
    <message>
        <source>About 10 % between the two, repair or not.</source>
        <extracomment>after-repair, then</extracomment>
        <translation>Alrededor del 10 % entre los dos, con reparación o sin ella.</translation>
    </message>
    <message>
        <source>A shared offset cancels in a difference</source>
        <extracomment>after-repair, for</extracomment>
        <translation>Un desvío común se anula en una diferencia</translation>
    </message>
    <message>
        <source>Assembly oil, running in</source>
        <extracomment>after-repair, for</extracomment>
        <translation>Aceite de montaje, rodaje</translation>
    </message>
    <message>
        <source>Handing over</source>
        <extracomment>hand-over, title</extracomment>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>One report for the owner, one file for the mentor</source>
        <extracomment>hand-over, brief</extracomment>
        <translation>Un informe para el dueño, un archivo para el mentor</translation>
    </message>
    <message>
        <source>The owner wants to see before and after and what it means. The mentor wants everything: readings, conditions, photos of the gauge, voice notes. And next year&apos;s visit begins with this one.</source>
        <extracomment>hand-over, why</extracomment>
        <translation>El dueño quiere ver el antes y el después y qué significa. El mentor lo quiere todo: lecturas, condiciones, fotos del manómetro, notas de voz. Y la visita del año próximo empieza con esta.</translation>
    </message>
    <message>
        <source>Look through the preview of the report on Hand over: would you understand it as the owner?</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Revise la vista previa del informe en Entregar: ¿lo entendería usted si fuera el dueño?</translation>
    </message>
    <message>
        <source>Share the session file with the mentor: one visit, or several of the same engine.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Comparta con el mentor el archivo de sesión: una visita o varias del mismo motor.</translation>
    </message>
    <message>
        <source>The owner&apos;s contact stays out of the mentor&apos;s file unless you ask for it.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Los datos de contacto del dueño quedan fuera del archivo del mentor, salvo que usted los pida.</translation>
    </message>
    <message>
        <source>When the file comes back, open it: what is new is shown before it is merged, and a test asked for stands among what is to do.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Cuando el archivo vuelva, ábralo: lo nuevo se muestra antes de combinarlo, y una prueba pedida queda entre lo pendiente.</translation>
    </message>
    <message>
        <source>Plan the retest and make a backup.</source>
        <extracomment>hand-over, how</extracomment>
        <translation>Planifique la nueva prueba y haga una copia de seguridad.</translation>
    </message>
    <message>
        <source>Report without conditions</source>
        <extracomment>hand-over, slip</extracomment>
        <translation>Informe sin condiciones</translation>
    </message>
    <message>
        <source>Next year&apos;s readings have nothing to be held against.</source>
        <extracomment>hand-over, then</extracomment>
        <translation>Las lecturas del año próximo no tendrán con qué compararse.</translation>
    </message>
    <message>
        <source>No photo of the gauge</source>
        <extracomment>hand-over, slip</extracomment>
        <translation>Sin foto del manómetro</translation>
    </message>
    <message>
        <source>The mentor has to take every number on trust.</source>
        <extracomment>hand-over, then</extracomment>
        <translation>El mentor tiene que creerse cada cifra.</translation>
    </message>
    <message>
        <source>Backup only on the phone</source>
        <extracomment>hand-over, slip</extracomment>
        <translation>Copia de seguridad solo en el teléfono</translation>
    </message>
    <message>
        <source>It is lost together with the phone.</source>
        <extracomment>hand-over, then</extracomment>
        <translation>Se pierde junto con el teléfono.</translation>
    </message>
    <message>
        <source>What owner and mentor need</source>
        <extracomment>hand-over, for</extracomment>
        <translation>Qué necesitan el dueño y el mentor</translation>
    </message>
    <message>
        <source>Numbers and files</source>
        <extracomment>title</extracomment>
        <translation>Números y archivos</translation>
    </message>
    <message>
        <source>Altitude and testers</source>
        <extracomment>testers, title</extracomment>
        <translation>Altitud y comprobadores</translation>
    </message>
    <message>
        <source>The same engine reads otherwise high up and on another tester</source>
        <extracomment>testers, brief</extracomment>
        <translation>El mismo motor da otra cosa en altura y con otro comprobador</translation>
    </message>
    <message>
        <source>A cylinder begins with the air around it. 120 psi at sea level is about 100 psi at 5 000 feet (1 500 m), with nothing wrong. And a percentage belongs to the tester that showed it: another set pressure or restrictor shows another one for the same leak.</source>
        <extracomment>testers, why</extracomment>
        <translation>Un cilindro empieza con el aire que lo rodea. 120 psi al nivel del mar son unos 100 psi a 5 000 pies (1 500 m), sin que nada esté mal. Y un porcentaje es del comprobador que lo marcó: otra presión ajustada u otro restrictor marca otro para la misma fuga.</translation>
    </message>
    <message>
        <source>The app converts both before it judges, and says that it did.</source>
        <extracomment>testers, why</extracomment>
        <translation>La app convierte ambas cosas antes de juzgar, y dice que lo hizo.</translation>
    </message>
    <message>
        <source>Enter each tester once: range, class, hose, where the check valve sits; for leak-down the set pressure and the restrictor. Home-made testers are normal.</source>
        <extracomment>testers, how</extracomment>
        <translation>Introducir cada comprobador una vez: rango, clase, manguera, dónde está la válvula antirretorno; para la estanqueidad, la presión ajustada y el restrictor. Los comprobadores caseros son normales.</translation>
    </message>
    <message>
        <source>Check before you blame the engine: outlet blocked reads 0 % leakage; needle at zero at rest; after cranking the gauge does not sink.</source>
        <extracomment>testers, how</extracomment>
        <translation>Verificar antes de culpar al motor: con la salida tapada marca 0 % de pérdida; aguja en cero en reposo; después de dar arranque el manómetro no baja.</translation>
    </message>
    <message>
        <source>Check a home-made restrictor with a drilled hole of known size in place of the cylinder.</source>
        <extracomment>testers, how</extracomment>
        <translation>Verificar un restrictor casero con un agujero taladrado de medida conocida en lugar del cilindro.</translation>
    </message>
    <message>
        <source>Enter the shop&apos;s altitude, or what a barometer in the shop shows.</source>
        <extracomment>testers, how</extracomment>
        <translation>Introducir la altitud del taller, o lo que marca un barómetro en el taller.</translation>
    </message>
    <message>
        <source>A table for altitude in the engine&apos;s manual comes before any sum.</source>
        <extracomment>testers, how</extracomment>
        <translation>Una tabla de altitud en el manual del motor va antes que cualquier cálculo.</translation>
    </message>
    <message>
        <source>Compare one tester with a reference now and then, and note the date.</source>
        <extracomment>testers, how</extracomment>
        <translation>Comparar de vez en cuando un comprobador con una referencia, y anotar la fecha.</translation>
    </message>
    <message>
        <source>Restrictor 0.040 in (1.02 mm), 0.250 in long</source>
        <extracomment>testers, sign</extracomment>
        <translation>Restrictor 0,040 in (1,02 mm), 0,250 in de largo</translation>
    </message>
    <message>
        <source>bores under 5 in</source>
        <extracomment>testers, means</extracomment>
        <translation>diámetros de cilindro menores de 5 in</translation>
    </message>
    <message>
        <source>Restrictor 0.060 in (1.52 mm), 0.250 in long</source>
        <extracomment>testers, sign</extracomment>
        <translation>Restrictor 0,060 in (1,52 mm), 0,250 in de largo</translation>
    </message>
    <message>
        <source>bores of 5 in and more</source>
        <extracomment>testers, means</extracomment>
        <translation>diámetros de cilindro de 5 in y más</translation>
    </message>
    <message>
        <source>The weather report&apos;s pressure</source>
        <extracomment>testers, slip</extracomment>
        <translation>La presión del parte meteorológico</translation>
    </message>
    <message>
        <source>It is reduced to sea level. Use the altitude or a barometer in the shop.</source>
        <extracomment>testers, then</extracomment>
        <translation>Está reducida al nivel del mar. Usar la altitud o un barómetro en el taller.</translation>
    </message>
    <message>
        <source>40 % at 35 psi and 33 % at 80 psi can be the same leak.</source>
        <extracomment>testers, then</extracomment>
        <translation>40 % a 35 psi y 33 % a 80 psi pueden ser la misma fuga.</translation>
    </message>
    <message>
        <source>Tyre-valve core in the gauge</source>
        <extracomment>testers, slip</extracomment>
        <translation>Núcleo de válvula de neumático en el manómetro</translation>
    </message>
    <message>
        <source>It opens late and reads 11 to 19 psi low. Say on the tester&apos;s card which core it has.</source>
        <extracomment>testers, then</extracomment>
        <translation>Abre tarde y da de 11 a 19 psi menos. Decir en la ficha del comprobador qué núcleo tiene.</translation>
    </message>
    <message>
        <source>It is out by as much everywhere.</source>
        <extracomment>testers, then</extracomment>
        <translation>Se desvía otro tanto en todas partes.</translation>
    </message>
    <message>
        <source>120 psi at sea level, 100 at 5 000 feet</source>
        <extracomment>testers, for</extracomment>
        <translation>120 psi al nivel del mar, 100 a 5 000 pies</translation>
    </message>
    <message>
        <source>Restrictors</source>
        <extracomment>testers, for</extracomment>
        <translation>Restrictores</translation>
    </message>
    <message>
        <source>Tyre-valve core; one leak on two testers</source>
        <extracomment>testers, for</extracomment>
        <translation>Núcleo de válvula de neumático; una misma fuga en dos comprobadores</translation>
    </message>
    <message>
        <source>What ± means</source>
        <extracomment>uncertainty, title</extracomment>
        <translation>Qué significa ±</translation>
    </message>
    <message>
        <source>How sure a number is, and when two numbers differ</source>
        <extracomment>uncertainty, brief</extracomment>
        <translation>Qué certeza tiene un número, y cuándo difieren dos números</translation>
    </message>
    <message>
        <source>No gauge shows the true value. &quot;7.5 bar ± 0.2&quot; says: as far as is known of the gauge and the reading, the true value lies between 7.3 and 7.7 about 19 times out of 20.</source>
        <extracomment>uncertainty, why</extracomment>
        <translation>Ningún manómetro muestra el valor verdadero. «7,5 bar ± 0,2» dice: hasta donde se conocen el manómetro y la lectura, el valor verdadero está entre 7,3 y 7,7 unas 19 veces de cada 20.</translation>
    </message>
    <message>
        <source>Enter the gauge&apos;s class and range. The class is its error in percent of the whole span: class 1.6 on 0 to 10 bar may be out by 0.16 bar anywhere.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Introducir la clase y el rango del manómetro. La clase es su error en porcentaje de todo el alcance: la clase 1,6 en 0 a 10 bar puede desviarse 0,16 bar en cualquier punto.</translation>
    </message>
    <message>
        <source>Ask of a difference whether it is larger than its own ±. If not, it may be the gauge.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Preguntar a una diferencia si es mayor que su propio ±. Si no lo es, puede ser el manómetro.</translation>
    </message>
    <message>
        <source>Use the same gauge for everything that is to be compared: what it is always out by cancels in a difference.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Usar el mismo manómetro para todo lo que se vaya a comparar: lo que siempre se desvía se anula en una diferencia.</translation>
    </message>
    <message>
        <source>Repeat a reading that matters. Repeats show the scatter of the pulls, not the gauge&apos;s own error.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Repetir una lectura que importa. Las repeticiones muestran la dispersión de las medidas, no el error propio del manómetro.</translation>
    </message>
    <message>
        <source>Touch a number to see where it comes from, what went in, what it rests on and what its ± is made of.</source>
        <extracomment>uncertainty, how</extracomment>
        <translation>Tocar un número para ver de dónde sale, qué entró, en qué se apoya y de qué se compone su ±.</translation>
    </message>
    <message>
        <source>Two values whose ± overlap widely</source>
        <extracomment>uncertainty, sign</extracomment>
        <translation>Dos valores cuyos ± se solapan mucho</translation>
    </message>
    <message>
        <source>no real change</source>
        <extracomment>uncertainty, means</extracomment>
        <translation>sin cambio real</translation>
    </message>
    <message>
        <source>An interval from 10 to 80 %</source>
        <extracomment>uncertainty, sign</extracomment>
        <translation>Un intervalo de 10 a 80 %</translation>
    </message>
    <message>
        <source>not yet known; the next test says which</source>
        <extracomment>uncertainty, means</extracomment>
        <translation>aún no se sabe; la prueba siguiente dice cuál</translation>
    </message>
    <message>
        <source>&quot;depends on assumptions&quot;</source>
        <extracomment>uncertainty, sign</extracomment>
        <translation>«depende de supuestos»</translation>
    </message>
    <message>
        <source>other assumptions would give another main path</source>
        <extracomment>uncertainty, means</extracomment>
        <translation>otros supuestos darían otro camino principal</translation>
    </message>
    <message>
        <source>More digits than the gauge has</source>
        <extracomment>uncertainty, slip</extracomment>
        <translation>Más cifras de las que tiene el manómetro</translation>
    </message>
    <message>
        <source>They are guessed. Type what the scale lets you read.</source>
        <extracomment>uncertainty, then</extracomment>
        <translation>Están adivinadas. Escribir lo que la escala deja leer.</translation>
    </message>
    <message>
        <source>A fall of 0.1 bar taken for wear</source>
        <extracomment>uncertainty, slip</extracomment>
        <translation>Una bajada de 0,1 bar tomada por desgaste</translation>
    </message>
    <message>
        <source>A gauge of 0 to 6 bar, class 1.6, may be out by 0.096 bar alone.</source>
        <extracomment>uncertainty, then</extracomment>
        <translation>Un manómetro de 0 a 6 bar, clase 1,6, puede desviarse 0,096 bar por sí solo.</translation>
    </message>
    <message>
        <source>± taken for a promise</source>
        <extracomment>uncertainty, slip</extracomment>
        <translation>± tomado por una promesa</translation>
    </message>
    <message>
        <source>It covers what is known. A leaking adapter or a closed throttle is not in it.</source>
        <extracomment>uncertainty, then</extracomment>
        <translation>Abarca lo que se conoce. Un adaptador que pierde o una mariposa cerrada no están dentro.</translation>
    </message>
    <message>
        <source>Coverage factor 2, about 95 %</source>
        <extracomment>uncertainty, for</extracomment>
        <translation>Factor de cobertura 2, alrededor del 95 %</translation>
    </message>
    <message>
        <source>Class 1.6 on 0 to 10 bar: 0.16 bar</source>
        <extracomment>uncertainty, for</extracomment>
        <translation>Clase 1,6 en 0 a 10 bar: 0,16 bar</translation>
    </message>
    <message>
        <source>What a signature proves</source>
        <extracomment>signature, title</extracomment>
        <translation>Lo que demuestra una firma</translation>
    </message>
    <message>
        <source>Session files: unaltered, yes; true, no</source>
        <extracomment>signature, brief</extracomment>
        <translation>Archivos de sesión: sin cambios, sí; veraces, no</translation>
    </message>
    <message>
        <source>A session file carries checksums against damage, and what the app hands over is signed. &quot;Unaltered&quot; means: since the holder of that key handed it over, no byte was changed, added or taken out.</source>
        <extracomment>signature, why</extracomment>
        <translation>Un archivo de sesión lleva sumas de comprobación contra daños, y lo que entrega la app va firmado. «Sin cambios» significa: desde que el titular de esa clave lo entregó, no se cambió, añadió ni quitó ningún byte.</translation>
    </message>
    <message>
        <source>Open the file. The app checks every byte before it shows anything.</source>
        <extracomment>signature, how</extracomment>
        <translation>Abrir el archivo. La app comprueba cada byte antes de mostrar nada.</translation>
    </message>
    <message>
        <source>Unknown key? Compare its fingerprint with the sender once, by eye or by telephone, then give the key a name.</source>
        <extracomment>signature, how</extracomment>
        <translation>¿Clave desconocida? Comparar una vez su huella con quien lo envía, a la vista o por teléfono, y dar después un nombre a la clave.</translation>
    </message>
    <message>
        <source>From then on files of that key show the name.</source>
        <extracomment>signature, how</extracomment>
        <translation>Desde entonces los archivos de esa clave muestran el nombre.</translation>
    </message>
    <message>
        <source>A damaged file is not brought in, and your library stays as it was: ask for the file again.</source>
        <extracomment>signature, how</extracomment>
        <translation>Un archivo dañado no se incorpora, y la biblioteca propia queda como estaba: pedir el archivo de nuevo.</translation>
    </message>
    <message>
        <source>Unaltered, named key</source>
        <extracomment>signature, sign</extracomment>
        <translation>Sin cambios, clave con nombre</translation>
    </message>
    <message>
        <source>handed over like this by the holder of that key</source>
        <extracomment>signature, means</extracomment>
        <translation>entregado así por el titular de esa clave</translation>
    </message>
    <message>
        <source>Unaltered, unknown key</source>
        <extracomment>signature, sign</extracomment>
        <translation>Sin cambios, clave desconocida</translation>
    </message>
    <message>
        <source>not changed since; by whom is not known</source>
        <extracomment>signature, means</extracomment>
        <translation>no cambiado desde entonces; por quién, no se sabe</translation>
    </message>
    <message>
        <source>Altered</source>
        <extracomment>signature, sign</extracomment>
        <translation>Alterado</translation>
    </message>
    <message>
        <source>changed after it was signed</source>
        <extracomment>signature, means</extracomment>
        <translation>cambiado después de firmarlo</translation>
    </message>
    <message>
        <source>Not signed</source>
        <extracomment>signature, sign</extracomment>
        <translation>Sin firma</translation>
    </message>
    <message>
        <source>nothing is proved, and nothing is wrong either</source>
        <extracomment>signature, means</extracomment>
        <translation>no se demuestra nada, y tampoco hay nada malo</translation>
    </message>
    <message>
        <source>Unaltered taken for true</source>
        <extracomment>signature, slip</extracomment>
        <translation>«Sin cambios» tomado por verdadero</translation>
    </message>
    <message>
        <source>It does not say that a reading is true or when it was really taken.</source>
        <extracomment>signature, then</extracomment>
        <translation>No dice que una lectura sea cierta ni cuándo se tomó realmente.</translation>
    </message>
    <message>
        <source>No signature taken for a forgery</source>
        <extracomment>signature, slip</extracomment>
        <translation>Falta de firma tomada por falsificación</translation>
    </message>
    <message>
        <source>Anyone can take a signature off, or sign with a key of their own; that shows as an unknown key.</source>
        <extracomment>signature, then</extracomment>
        <translation>Cualquiera puede quitar una firma, o firmar con una clave propia; eso se muestra como clave desconocida.</translation>
    </message>
    <message>
        <source>Key taken for a person</source>
        <extracomment>signature, slip</extracomment>
        <translation>Clave tomada por una persona</translation>
    </message>
    <message>
        <source>Whoever has the unlocked phone can sign.</source>
        <extracomment>signature, then</extracomment>
        <translation>Quien tenga el teléfono desbloqueado puede firmar.</translation>
    </message>
    <message>
        <source>Checksums of every file</source>
        <extracomment>signature, for</extracomment>
        <translation>Sumas de comprobación de cada archivo</translation>
    </message>
    <message>
        <source>Signature: Ed25519 over the list of checksums</source>
        <extracomment>signature, for</extracomment>
        <translation>Firma: Ed25519 sobre la lista de sumas de comprobación</translation>
    </message>
    <message>
        <source>Ways out of a cylinder</source>
        <extracomment>section, title</extracomment>
        <translation>Caminos de salida de un cilindro</translation>
    </message>
    <message>
        <source>A cylinder cut open with the piston near the top and air coming in at the plug hole. Dashed arrows show five ways out: past the intake valve to the intake, past the exhaust valve to the exhaust, down past the piston rings to the crankcase and its breather, through the head gasket to the outside or to the neighbour, and through the head gasket into the coolant.</source>
        <extracomment>section, description</extracomment>
        <translation>Un cilindro cortado, con el pistón cerca de arriba y aire que entra por el agujero de bujía. Unas flechas de trazos muestran cinco caminos de salida: por la válvula de admisión a la admisión, por la válvula de escape al escape, hacia abajo por los segmentos del pistón al cárter y su respiradero, por la junta de culata al exterior o al vecino, y por la junta de culata al refrigerante.</translation>
    </message>
    <message>
        <source>Intake: intake valve</source>
        <extracomment>section, text</extracomment>
        <translation>Admisión: válvula de admisión</translation>
    </message>
    <message>
        <source>Exhaust: exhaust valve</source>
        <extracomment>section, text</extracomment>
        <translation>Escape: válvula de escape</translation>
    </message>
    <message>
        <source>Breather, oil filler: rings, piston, bore</source>
        <extracomment>section, text</extracomment>
        <translation>Respiradero, boca de llenado de aceite: segmentos, pistón, cilindro</translation>
    </message>
    <message>
        <source>Joint of the head, neighbour&apos;s plug hole: head gasket</source>
        <extracomment>section, text</extracomment>
        <translation>Junta de la culata, agujero de bujía del vecino: junta de culata</translation>
    </message>
    <message>
        <source>Bubbles in the coolant: head gasket, or a crack</source>
        <extracomment>section, text</extracomment>
        <translation>Burbujas en el refrigerante: junta de culata, o una grieta</translation>
    </message>
    <message>
        <source>Where to listen</source>
        <extracomment>listening, title</extracomment>
        <translation>Dónde escuchar</translation>
    </message>
    <message>
        <source>An engine from the side with air on one cylinder. Listening points: the mouth of the intake on the left, the end of the exhaust on the right, the oil filler with a thin glove stood over it, the coolant filler of the cold radiator, the neighbour&apos;s plug hole with a hose that leads to an ear, and the joint of the head with bubbles of soapy water.</source>
        <extracomment>listening, description</extracomment>
        <translation>Un motor visto de lado con aire en un cilindro. Puntos de escucha: la boca de la admisión a la izquierda, el final del escape a la derecha, la boca de llenado de aceite con un guante fino puesto encima, la boca de llenado de refrigerante del radiador frío, el agujero de bujía del vecino con una manguera que lleva a un oído, y la junta de la culata con burbujas de agua jabonosa.</translation>
    </message>
    <message>
        <source>Intake, throttle open</source>
        <extracomment>listening, text</extracomment>
        <translation>Admisión, mariposa abierta</translation>
    </message>
    <message>
        <source>End of the exhaust</source>
        <extracomment>listening, text</extracomment>
        <translation>Final del escape</translation>
    </message>
    <message>
        <source>Oil filler or breather, a thin glove over it</source>
        <extracomment>listening, text</extracomment>
        <translation>Boca de llenado de aceite o respiradero, un guante fino encima</translation>
    </message>
    <message>
        <source>Coolant filler, engine cold</source>
        <extracomment>listening, text</extracomment>
        <translation>Boca de llenado de refrigerante, motor frío</translation>
    </message>
    <message>
        <source>Neighbour&apos;s plug hole, a hose to the ear</source>
        <extracomment>listening, text</extracomment>
        <translation>Agujero de bujía del vecino, una manguera al oído</translation>
    </message>
    <message>
        <source>Joint of the head, soapy water</source>
        <extracomment>listening, text</extracomment>
        <translation>Junta de la culata, agua jabonosa</translation>
    </message>
    <message>
        <source>Compression and overlap</source>
        <extracomment>tdc, title</extracomment>
        <translation>Compresión y cruce de válvulas</translation>
    </message>
    <message>
        <source>Two cylinders, both with the piston at the top. On the left, compression: both cams point away, the valves are shut and their tops have clearance. On the right, overlap: both cams press, both valves stand a little open and air gets out at intake and exhaust.</source>
        <extracomment>tdc, description</extracomment>
        <translation>Dos cilindros, los dos con el pistón arriba. A la izquierda, compresión: las dos levas apuntan hacia otro lado, las válvulas están cerradas y sus extremos tienen juego. A la derecha, cruce: las dos levas empujan, las dos válvulas están un poco abiertas y sale aire por admisión y escape.</translation>
    </message>
    <message>
        <source>Compression: both valves shut. This is the TDC for leak-down</source>
        <extracomment>tdc, text</extracomment>
        <translation>Compresión: las dos válvulas cerradas. Este es el PMS para la estanqueidad</translation>
    </message>
    <message>
        <source>Overlap: both valves a little open, air at intake and exhaust. Turn once, all the way round</source>
        <extracomment>tdc, text</extracomment>
        <translation>Cruce: las dos válvulas un poco abiertas, aire por admisión y escape. Girar una vez, la vuelta entera</translation>
    </message>
    <message>
        <source>Clearance between cam and valve: what holds the valve shut is its spring alone</source>
        <extracomment>tdc, text</extracomment>
        <translation>Juego entre leva y válvula: lo que mantiene cerrada la válvula es solo su muelle</translation>
    </message>
    <message>
        <source>Thumb or whistle</source>
        <extracomment>thumb, title</extracomment>
        <translation>Pulgar o silbato</translation>
    </message>
    <message>
        <source>Two cylinders whose piston comes up with both valves shut. On the left a thumb on the plug hole feels the air push past it. On the right a whistle in the plug hole sounds. If nothing pushes, the valves overlap.</source>
        <extracomment>thumb, description</extracomment>
        <translation>Dos cilindros cuyo pistón sube con las dos válvulas cerradas. A la izquierda, un pulgar sobre el agujero de bujía nota cómo el aire lo empuja y sale. A la derecha suena un silbato en el agujero de bujía. Si nada empuja, las válvulas están en cruce.</translation>
    </message>
    <message>
        <source>Thumb on the plug hole: air pushes out on the way up</source>
        <extracomment>thumb, text</extracomment>
        <translation>Pulgar en el agujero de bujía: el aire empuja hacia fuera al subir</translation>
    </message>
    <message>
        <source>A whistle in the plug hole sounds until the piston is at the top</source>
        <extracomment>thumb, text</extracomment>
        <translation>Un silbato en el agujero de bujía suena hasta que el pistón está arriba</translation>
    </message>
    <message>
        <source>Leak-down tester</source>
        <extracomment>rig, title</extracomment>
        <translation>Comprobador de estanqueidad</translation>
    </message>
    <message>
        <source>From left to right: air from the compressor, a regulator with its handle, the gauge that shows the set pressure, a restrictor that leaves only a small hole, the gauge that shows the held pressure, and a hose into the plug hole of a cylinder with its piston at the top.</source>
        <extracomment>rig, description</extracomment>
        <translation>De izquierda a derecha: aire del compresor, un regulador con su mando, el manómetro que marca la presión ajustada, un restrictor que deja solo un agujero pequeño, el manómetro que marca la presión retenida, y una manguera al agujero de bujía de un cilindro con su pistón arriba.</translation>
    </message>
    <message>
        <source>Regulator: up slowly</source>
        <extracomment>rig, text</extracomment>
        <translation>Regulador: subir despacio</translation>
    </message>
    <message>
        <source>Set pressure, before the restrictor</source>
        <extracomment>rig, text</extracomment>
        <translation>Presión ajustada, antes del restrictor</translation>
    </message>
    <message>
        <source>Restrictor: a small hole of known size</source>
        <extracomment>rig, text</extracomment>
        <translation>Restrictor: un agujero pequeño de medida conocida</translation>
    </message>
    <message>
        <source>Held pressure, after the restrictor</source>
        <extracomment>rig, text</extracomment>
        <translation>Presión retenida, después del restrictor</translation>
    </message>
    <message>
        <source>Cylinder at its TDC on compression</source>
        <extracomment>rig, text</extracomment>
        <translation>Cilindro en su PMS de compresión</translation>
    </message>
    <message>
        <source>Holding the crank</source>
        <extracomment>holding, title</extracomment>
        <translation>Sujetar el cigüeñal</translation>
    </message>
    <message>
        <source>Two cranks under air pressure. On the left the crank stands at TDC: the push goes straight through its centre and turns nothing. On the right it stands some degrees after TDC: the push goes past the centre and turns the crank.</source>
        <extracomment>holding, description</extracomment>
        <translation>Dos cigüeñales bajo presión de aire. A la izquierda el cigüeñal está en el PMS: el empuje pasa recto por su centro y no gira nada. A la derecha está unos grados después del PMS: el empuje pasa al lado del centro y hace girar el cigüeñal.</translation>
    </message>
    <message>
        <source>At TDC the air has no lever</source>
        <extracomment>holding, text</extracomment>
        <translation>En el PMS el aire no tiene palanca</translation>
    </message>
    <message>
        <source>A few degrees on it turns the crank: it must be held</source>
        <extracomment>holding, text</extracomment>
        <translation>Unos pocos grados más allá gira el cigüeñal: hay que sujetarlo</translation>
    </message>
    <message>
        <source>Gear and brake or a second person; no tool left on the crank</source>
        <extracomment>holding, text</extracomment>
        <translation>Marcha y freno o una segunda persona; ninguna herramienta puesta en el cigüeñal</translation>
    </message>
    <message>
        <source>Measuring a clearance</source>
        <extracomment>clearance, title</extracomment>
        <translation>Medir un juego de válvulas</translation>
    </message>
    <message>
        <source>A rocker lies over a valve. The cam under its other end points away, so the valve is shut. A feeler blade lies in the gap between the rocker&apos;s adjusting screw and the top of the valve stem.</source>
        <extracomment>clearance, description</extracomment>
        <translation>Un balancín está sobre una válvula. La leva bajo su otro extremo apunta hacia otro lado, así que la válvula está cerrada. Una galga está en la rendija entre el tornillo de reglaje del balancín y el extremo del vástago de la válvula.</translation>
    </message>
    <message>
        <source>Feeler blade in the gap: a light drag</source>
        <extracomment>clearance, text</extracomment>
        <translation>Galga en la rendija: un roce ligero</translation>
    </message>
    <message>
        <source>Adjusting screw of the rocker</source>
        <extracomment>clearance, text</extracomment>
        <translation>Tornillo de reglaje del balancín</translation>
    </message>
    <message>
        <source>Valve stem and spring, valve shut</source>
        <extracomment>clearance, text</extracomment>
        <translation>Vástago y muelle de válvula, válvula cerrada</translation>
    </message>
    <message>
        <source>Cam points away: TDC on compression</source>
        <extracomment>clearance, text</extracomment>
        <translation>La leva apunta hacia otro lado: PMS de compresión</translation>
    </message>
    <message>
        <source>A valve in its head with a crumb of carbon on the seat, so that it does not close. A light tap goes square onto the end of the stem. The piston stands well below the valve.</source>
        <extracomment>staking, description</extracomment>
        <translation>Una válvula en su culata con una miga de carbonilla en el asiento, de modo que no cierra. Un toque ligero va recto al extremo del vástago. El pistón está muy por debajo de la válvula.</translation>
    </message>
    <message>
        <source>Carbon on the seat</source>
        <extracomment>staking, text</extracomment>
        <translation>Carbonilla en el asiento</translation>
    </message>
    <message>
        <source>Light taps, square, on the stem only</source>
        <extracomment>staking, text</extracomment>
        <translation>Toques ligeros, rectos, solo en el vástago</translation>
    </message>
    <message>
        <source>Piston clear of the valve</source>
        <extracomment>staking, text</extracomment>
        <translation>Pistón lejos de la válvula</translation>
    </message>
    <message>
        <source>Oil on the piston</source>
        <extracomment>oil, title</extracomment>
        <translation>Aceite sobre el pistón</translation>
    </message>
    <message>
        <source>On the left an upright cylinder: oil lies on the piston all round, reaches the rings and takes room from the chamber. On the right a flat cylinder: the oil has pooled on the lower side, seals only a part of the rings and fills the chamber from below.</source>
        <extracomment>oil, description</extracomment>
        <translation>A la izquierda, un cilindro vertical: el aceite está sobre el pistón todo alrededor, llega a los segmentos y quita sitio a la cámara. A la derecha, un cilindro horizontal: el aceite se ha encharcado en el lado bajo, sella solo una parte de los segmentos y llena la cámara desde abajo.</translation>
    </message>
    <message>
        <source>Oil at the rings: seals them for a few strokes</source>
        <extracomment>oil, text</extracomment>
        <translation>Aceite en los segmentos: los sella durante unas pocas carreras</translation>
    </message>
    <message>
        <source>Room that the oil takes: reads higher with no ring leak at all</source>
        <extracomment>oil, text</extracomment>
        <translation>Sitio que ocupa el aceite: da más sin ninguna fuga de segmentos</translation>
    </message>
    <message>
        <source>Flat cylinder: oil pools below, seals a part only, wider doubt</source>
        <extracomment>oil, text</extracomment>
        <translation>Cilindro horizontal: el aceite se encharca abajo, sella solo una parte, mayor incertidumbre</translation>
    </message>
    <message>
        <source>Reach of the adapter</source>
        <extracomment>adapter, title</extracomment>
        <translation>Largo de rosca del adaptador</translation>
    </message>
    <message>
        <source>Two adapters screwed into plug holes over a piston at the top. The left one ends level with the chamber&apos;s roof and seals on its ring. The right one is too long: it reaches down to the piston.</source>
        <extracomment>adapter, description</extracomment>
        <translation>Dos adaptadores enroscados en agujeros de bujía sobre un pistón que está arriba. El de la izquierda acaba a ras del techo de la cámara y sella con su anillo. El de la derecha es demasiado largo: llega hasta el pistón.</translation>
    </message>
    <message>
        <source>Sealing ring, whole and clean</source>
        <extracomment>adapter, text</extracomment>
        <translation>Anillo de sellado, entero y limpio</translation>
    </message>
    <message>
        <source>Same thread and reach as the plug</source>
        <extracomment>adapter, text</extracomment>
        <translation>La misma rosca y largo que la bujía</translation>
    </message>
    <message>
        <source>Too long: it strikes the piston. Try two turns by hand</source>
        <extracomment>adapter, text</extracomment>
        <translation>Demasiado largo: golpea el pistón. Girar dos vueltas a mano</translation>
    </message>
    <message>
        <source>Crankcase hold test</source>
        <extracomment>crankcase, title</extracomment>
        <translation>Prueba del cárter</translation>
    </message>
    <message>
        <source>A two-stroke cut open. Plates close the exhaust port and the intake; a small pump with a gauge puts a low pressure into the crankcase. Places that may leak: the seals on both ends of the crankshaft, the base gasket under the cylinder, and the reed at the intake.</source>
        <extracomment>crankcase, description</extracomment>
        <translation>Un dos tiempos cortado. Unas placas cierran la lumbrera de escape y la admisión; una bomba pequeña con manómetro mete una presión baja en el cárter. Sitios que pueden perder: los retenes de ambos extremos del cigüeñal, la junta de base bajo el cilindro, y las láminas en la admisión.</translation>
    </message>
    <message>
        <source>Blanking plates: soapy water here first</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Placas ciegas: agua jabonosa primero aquí</translation>
    </message>
    <message>
        <source>Crank seals, both ends</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Retenes del cigüeñal, ambos extremos</translation>
    </message>
    <message>
        <source>Base gasket</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Junta de base</translation>
    </message>
    <message>
        <source>Intake with its reed or rotary valve, blanked off</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Admisión con sus láminas o válvula rotativa, tapada</translation>
    </message>
    <message>
        <source>Pump and gauge: a low set pressure</source>
        <extracomment>crankcase, text</extracomment>
        <translation>Bomba y manómetro: una presión ajustada baja</translation>
    </message>
    <message>
        <source>Two readings and their doubt</source>
        <extracomment>doubt, title</extracomment>
        <translation>Dos lecturas y su incertidumbre</translation>
    </message>
    <message>
        <source>Two pairs of readings over a scale, each with a whisker for its doubt. The upper pair lies close together and the whiskers overlap: no real change. The lower pair lies far apart and the whiskers do not meet: a real difference.</source>
        <extracomment>doubt, description</extracomment>
        <translation>Dos pares de lecturas sobre una escala, cada una con un bigote por su incertidumbre. El par de arriba está junto y los bigotes se solapan: sin cambio real. El par de abajo está separado y los bigotes no se tocan: una diferencia real.</translation>
    </message>
    <message>
        <source>Whiskers overlap widely: it may be the gauge</source>
        <extracomment>doubt, text</extracomment>
        <translation>Los bigotes se solapan mucho: puede ser el manómetro</translation>
    </message>
    <message>
        <source>Whiskers apart: a real difference</source>
        <extracomment>doubt, text</extracomment>
        <translation>Bigotes separados: una diferencia real</translation>
    </message>
    <message>
        <source>Bore, stroke and chamber</source>
        <extracomment>bore-stroke, title</extracomment>
        <translation>Diámetro, carrera y cámara</translation>
    </message>
    <message>
        <source>A cylinder cut open. The piston stands at the bottom, a dashed line shows where its top comes to at TDC. An arrow across is the bore, an arrow from bottom to top is the stroke. What is left above the dashed line is the chamber.</source>
        <extracomment>bore-stroke, description</extracomment>
        <translation>Un cilindro cortado. El pistón está abajo; una línea discontinua muestra hasta dónde llega su cabeza en el PMS. Una flecha a lo ancho es el diámetro, una flecha de abajo arriba es la carrera. Lo que queda sobre la línea es la cámara.</translation>
    </message>
    <message>
        <source>Bore</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Stroke: from the lowest to the highest place of the piston</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Carrera: de la posición más baja a la más alta del pistón</translation>
    </message>
    <message>
        <source>Chamber at TDC: with bore and stroke it gives the compression ratio</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Cámara en el PMS: con diámetro y carrera da la relación de compresión</translation>
    </message>
    <message>
        <source>Plug hole: its thread and reach choose the adapter</source>
        <extracomment>bore-stroke, text</extracomment>
        <translation>Orificio de la bujía: su rosca y longitud deciden el adaptador</translation>
    </message>
    <message>
        <source>Ready to be cranked</source>
        <extracomment>prepare, title</extracomment>
        <translation>Listo para girar</translation>
    </message>
    <message>
        <source>An engine made ready. The throttle plate lies level in the intake, held open by a wire, and air gets in. The handle of the fuel tap stands across the pipe: fuel is off. The plug is out and its lead is grounded on the head. The battery is on a charger.</source>
        <extracomment>prepare, description</extracomment>
        <translation>Un motor preparado. La mariposa está a lo largo del conducto de admisión, sujeta abierta con un alambre, y entra aire. La palanca del grifo de combustible está cruzada: combustible cerrado. La bujía está fuera y su cable conectado a masa en la culata. La batería está en carga.</translation>
    </message>
    <message>
        <source>Throttle held wide open</source>
        <extracomment>prepare, text</extracomment>
        <translation>Mariposa sujeta, bien abierta</translation>
    </message>
    <message>
        <source>Fuel off</source>
        <extracomment>prepare, text</extracomment>
        <translation>Combustible cerrado</translation>
    </message>
    <message>
        <source>All plugs out</source>
        <extracomment>prepare, text</extracomment>
        <translation>Todas las bujías fuera</translation>
    </message>
    <message>
        <source>Ignition grounded</source>
        <extracomment>prepare, text</extracomment>
        <translation>Encendido a masa</translation>
    </message>
    <message>
        <source>Battery on charge</source>
        <extracomment>prepare, text</extracomment>
        <translation>Batería en carga</translation>
    </message>
    <message>
        <source>Three alike and one low</source>
        <extracomment>four-bars, title</extracomment>
        <translation>Tres iguales y uno bajo</translation>
    </message>
    <message>
        <source>The readings of four cylinders as bars, each with a whisker for its doubt. Two dashed lines mark the band in which readings of sound cylinders scatter. The first three end inside the band. The fourth ends far below it, and its whisker does not reach the band.</source>
        <extracomment>four-bars, description</extracomment>
        <translation>Las lecturas de cuatro cilindros en barras, cada una con un trazo para su incertidumbre. Dos líneas discontinuas marcan la banda en que se dispersan las lecturas de cilindros sanos. Las tres primeras terminan dentro. La cuarta termina muy por debajo y su trazo no llega a la banda.</translation>
    </message>
    <message>
        <source>Three alike: all within the scatter</source>
        <extracomment>four-bars, text</extracomment>
        <translation>Tres iguales: todas dentro de la dispersión</translation>
    </message>
    <message>
        <source>The band of scatter: differences inside it mean nothing</source>
        <extracomment>four-bars, text</extracomment>
        <translation>La banda de dispersión: las diferencias dentro de ella no dicen nada</translation>
    </message>
    <message>
        <source>One low, clear of the band: something to find</source>
        <extracomment>four-bars, text</extracomment>
        <translation>Uno bajo, claramente fuera de la banda: algo hay que buscar</translation>
    </message>
    <message>
        <source>Three ways on</source>
        <extracomment>three-ways, title</extracomment>
        <translation>Tres caminos</translation>
    </message>
    <message>
        <source>Three arrows lead from the finding at the bottom to three boxes. In the left one a clock: leave it and test again later. In the middle a screwdriver on an adjuster: a quick fix. On the right a head lifted off its cylinder: strip.</source>
        <extracomment>three-ways, description</extracomment>
        <translation>Tres flechas van del diagnóstico, abajo, a tres recuadros. A la izquierda un reloj: dejarlo y volver a probar más tarde. En el centro un destornillador en un tornillo de reglaje: arreglo rápido. A la derecha una culata levantada del cilindro: desmontar.</translation>
    </message>
    <message>
        <source>Leave it, and test again at a date</source>
        <extracomment>three-ways, text</extracomment>
        <translation>Dejarlo y volver a probar en una fecha</translation>
    </message>
    <message>
        <source>Quick fix, then test again</source>
        <extracomment>three-ways, text</extracomment>
        <translation>Arreglo rápido y volver a probar</translation>
    </message>
    <message>
        <source>Strip: parts, hours, prices, the owner&apos;s yes</source>
        <extracomment>three-ways, text</extracomment>
        <translation>Desmontar: piezas, horas, precios, el sí del dueño</translation>
    </message>
    <message>
        <source>The finding, with its next test done</source>
        <extracomment>three-ways, text</extracomment>
        <translation>El diagnóstico, con la siguiente prueba ya hecha</translation>
    </message>
    <message>
        <source>Before and after</source>
        <extracomment>before-after, title</extracomment>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Two bars of the same cylinder side by side, each with a whisker for its doubt. The left one, before the repair, ends below the dashed line of the lowest limit. The right one, after the repair, ends above it, and the whiskers do not meet.</source>
        <extracomment>before-after, description</extracomment>
        <translation>Dos barras del mismo cilindro, una junto a otra, cada una con un trazo para su incertidumbre. La izquierda, antes de la reparación, termina bajo la línea discontinua del límite mínimo. La derecha, después, termina por encima, y los trazos no se tocan.</translation>
    </message>
    <message>
        <source>Before: as found</source>
        <extracomment>before-after, text</extracomment>
        <translation>Antes: como se encontró</translation>
    </message>
    <message>
        <source>After: the same gauge, heat and throttle</source>
        <extracomment>before-after, text</extracomment>
        <translation>Después: el mismo manómetro, la misma temperatura y mariposa</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <extracomment>before-after, text</extracomment>
        <translation>Límite mínimo</translation>
    </message>
    <message>
        <source>Whiskers apart: better beyond doubt</source>
        <extracomment>before-after, text</extracomment>
        <translation>Trazos separados: mejor sin duda</translation>
    </message>
    <message>
        <source>Report and session file</source>
        <extracomment>hand-over, title</extracomment>
        <translation>Informe y archivo de sesión</translation>
    </message>
    <message>
        <source>A phone in the middle. To the left goes a file with a gauge photo and a voice note to the mentor, and it comes back with an opinion. To the right goes a sheet with two bars, before and after, to the owner.</source>
        <extracomment>hand-over, description</extracomment>
        <translation>En el centro un teléfono. Hacia la izquierda va al mentor un archivo con foto del manómetro y nota de voz, y vuelve con una opinión. Hacia la derecha va al dueño una hoja con dos barras, antes y después.</translation>
    </message>
    <message>
        <source>Session file: readings, photos, voice notes</source>
        <extracomment>hand-over, text</extracomment>
        <translation>Archivo de sesión: lecturas, fotos, notas de voz</translation>
    </message>
    <message>
        <source>The mentor sends it back with an opinion</source>
        <extracomment>hand-over, text</extracomment>
        <translation>El mentor lo devuelve con su opinión</translation>
    </message>
    <message>
        <source>Report: before and after</source>
        <extracomment>hand-over, text</extracomment>
        <translation>Informe: antes y después</translation>
    </message>
    <message>
        <source>The owner</source>
        <extracomment>hand-over, text</extracomment>
        <translation>El dueño</translation>
    </message>
    <message>
        <source>A decompressor at work</source>
        <extracomment>decompressor, title</extracomment>
        <translation>Un descompresor en acción</translation>
    </message>
    <message>
        <source>A cylinder cut open, the piston coming up. The nose of the exhaust cam points away, but a pin stands out of the cam&apos;s round side and holds the exhaust valve open a little. Air gets out past it to the exhaust.</source>
        <extracomment>decompressor, description</extracomment>
        <translation>Un cilindro cortado con el pistón subiendo. El lóbulo de la leva de escape apunta hacia fuera, pero un pasador sobresale del círculo base y mantiene la válvula de escape un poco abierta. El aire sale junto a ella hacia el escape.</translation>
    </message>
    <message>
        <source>At cranking speed the pin stands out and holds the exhaust valve open a little</source>
        <extracomment>decompressor, text</extracomment>
        <translation>A velocidad de arranque el pasador sobresale y mantiene la válvula de escape un poco abierta</translation>
    </message>
    <message>
        <source>Air gets out: the gauge reads low, and nothing is broken</source>
        <extracomment>decompressor, text</extracomment>
        <translation>Sale aire: el manómetro marca poco y no hay nada roto</translation>
    </message>
    <message>
        <source>When the engine runs, the pin goes in and the valve shuts</source>
        <extracomment>decompressor, text</extracomment>
        <translation>Con el motor en marcha el pasador entra y la válvula cierra</translation>
    </message>
    <message>
        <source>A diesel ready for the gauge</source>
        <extracomment>diesel, title</extracomment>
        <translation>Un diésel listo para el manómetro</translation>
    </message>
    <message>
        <source>A diesel cylinder cut open with its piston at the top and a bowl in it. The injector stays in, its plug is pulled off. An adapter is screwed into the hole of the glow plug and leads to a gauge with a high range. Between piston and head there is hardly any room.</source>
        <extracomment>diesel, description</extracomment>
        <translation>Un cilindro diésel cortado con el pistón arriba y su cámara en la cabeza. El inyector queda puesto, su conector está quitado. Un adaptador va roscado en el orificio de la bujía de precalentamiento y lleva a un manómetro de gran alcance. Entre pistón y culata apenas queda sitio.</translation>
    </message>
    <message>
        <source>Adapter made for the hole of the glow plug, or of the injector</source>
        <extracomment>diesel, text</extracomment>
        <translation>Adaptador hecho para el orificio de la bujía de precalentamiento o del inyector</translation>
    </message>
    <message>
        <source>Injection off: connector pulled, or as the manual says</source>
        <extracomment>diesel, text</extracomment>
        <translation>Inyección cortada: conector quitado o como diga el manual</translation>
    </message>
    <message>
        <source>Gauge for 40 bar or more</source>
        <extracomment>diesel, text</extracomment>
        <translation>Manómetro para 40 bar o más</translation>
    </message>
    <message>
        <source>Hardly any room: no oil in here</source>
        <extracomment>diesel, text</extracomment>
        <translation>Apenas hay sitio: aquí no va aceite</translation>
    </message>
    <message>
        <source>Unaltered and altered</source>
        <extracomment>signature, title</extracomment>
        <translation>Sin alterar y alterado</translation>
    </message>
    <message>
        <source>Two session files, each with a seal made by a key. On the left the file is as it was handed over: the seal is whole. On the right one line was written anew after signing: the seal is broken. The seal says nothing about whether a reading is true.</source>
        <extracomment>signature, description</extracomment>
        <translation>Dos archivos de sesión, cada uno con un sello hecho con una clave. A la izquierda el archivo está tal como se entregó: el sello está entero. A la derecha se reescribió una línea después de firmar: el sello está roto. Si una lectura es cierta, el sello no lo dice.</translation>
    </message>
    <message>
        <source>Signed with a key when it was handed over</source>
        <extracomment>signature, text</extracomment>
        <translation>Firmado con una clave al entregarlo</translation>
    </message>
    <message>
        <source>Unaltered: the seal is whole</source>
        <extracomment>signature, text</extracomment>
        <translation>Sin alterar: el sello está entero</translation>
    </message>
    <message>
        <source>A line changed after signing</source>
        <extracomment>signature, text</extracomment>
        <translation>Línea cambiada después de firmar</translation>
    </message>
    <message>
        <source>Altered: the seal is broken</source>
        <extracomment>signature, text</extracomment>
        <translation>Alterado: el sello está roto</translation>
    </message>
    <message>
        <source>Special engines</source>
        <extracomment>title</extracomment>
        <translation>Motores especiales</translation>
    </message>
    <message>
        <source>Two-stroke: the crankcase</source>
        <extracomment>crankcase, title</extracomment>
        <translation>Dos tiempos: el cárter</translation>
    </message>
    <message>
        <source>Does it hold pressure? Seals, base gasket, reed or rotary valve</source>
        <extracomment>crankcase, brief</extracomment>
        <translation>¿Mantiene la presión? Retenes, junta de base, láminas o válvula rotativa</translation>
    </message>
    <message>
        <source>A two-stroke&apos;s crankcase pumps the charge. Where it leaks, the engine draws air that no carburettor has measured. Its hold test is one of its own: set pressure, minutes, end pressure.</source>
        <extracomment>crankcase, why</extracomment>
        <translation>El cárter de un dos tiempos bombea la carga. Donde pierde, el motor aspira aire que ningún carburador ha medido. Su prueba es propia: presión ajustada, minutos, presión final.</translation>
    </message>
    <message>
        <source>With several cylinders each has a crankcase chamber of its own, sealed from the next one inside the crankcase. Each chamber is held by itself.</source>
        <extracomment>crankcase, why</extracomment>
        <translation>Con varios cilindros cada uno tiene su propia cámara de cárter, sellada de la siguiente por dentro. Cada cámara se prueba por separado.</translation>
    </message>
    <message>
        <source>Above the piston there are rings, head gasket and decompressor only. Ring air leaves by the exhaust port and the carburettor. There are no poppet valves, and nothing is staked.</source>
        <extracomment>crankcase, why</extracomment>
        <translation>Encima del pistón solo hay segmentos, junta de culata y descompresor. El aire de los segmentos sale por la lumbrera de escape y el carburador. No hay válvulas de asiento, y no se asienta nada con toques.</translation>
    </message>
    <message>
        <source>Close intake and exhaust with blanking plates or plugs, and the plug hole.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Cerrar admisión y escape con placas ciegas o tapones, y el agujero de bujía.</translation>
    </message>
    <message>
        <source>With several cylinders: one chamber at a time, chosen on the pad by its cylinder. The others stay open: air that gets past the seal between two chambers is heard there.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Con varios cilindros: una cámara cada vez, elegida en el teclado por su cilindro. Las demás quedan abiertas: allí se oye el aire que pasa el retén entre dos cámaras.</translation>
    </message>
    <message>
        <source>Take set pressure and minutes from the engine&apos;s manual. It is far less than in leak-down.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Tomar la presión ajustada y los minutos del manual del motor. Es mucho menos que en la prueba de estanqueidad.</translation>
    </message>
    <message>
        <source>Bring the pressure up slowly, close the tap, note the time.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Subir la presión despacio, cerrar la llave, anotar la hora.</translation>
    </message>
    <message>
        <source>First soapy water on your own blanking plates, hose and gauge.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Primero agua jabonosa en las propias placas ciegas, manguera y manómetro.</translation>
    </message>
    <message>
        <source>After the minutes read the end pressure. Type set, minutes and end on the pad of the crankcase test.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Pasados los minutos, leer la presión final. Escribir ajustada, minutos y final en el teclado de la prueba del cárter.</translation>
    </message>
    <message>
        <source>If it sank: soapy water on crank seals, base gasket, and reed or rotary valve. Note each exit in the Leak hunt.</source>
        <extracomment>crankcase, how</extracomment>
        <translation>Si bajó: agua jabonosa en los retenes del cigüeñal, la junta de base y las láminas o la válvula rotativa. Anotar cada salida en la Búsqueda de fugas.</translation>
    </message>
    <message>
        <source>Bubbles at a crank seal</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Burbujas en un retén del cigüeñal</translation>
    </message>
    <message>
        <source>crank seal</source>
        <extracomment>crankcase, means</extracomment>
        <translation>retén del cigüeñal</translation>
    </message>
    <message>
        <source>Air at the next cylinder&apos;s ports</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Aire en las lumbreras del cilindro vecino</translation>
    </message>
    <message>
        <source>the seal between the chambers</source>
        <extracomment>crankcase, means</extracomment>
        <translation>el retén entre las cámaras</translation>
    </message>
    <message>
        <source>Bubbles along the cylinder&apos;s foot</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Burbujas a lo largo del pie del cilindro</translation>
    </message>
    <message>
        <source>base gasket</source>
        <extracomment>crankcase, means</extracomment>
        <translation>junta de base</translation>
    </message>
    <message>
        <source>Air at the reed or rotary valve</source>
        <extracomment>crankcase, sign</extracomment>
        <translation>Aire en las láminas o la válvula rotativa</translation>
    </message>
    <message>
        <source>the valve</source>
        <extracomment>crankcase, means</extracomment>
        <translation>la válvula</translation>
    </message>
    <message>
        <source>A blanking plate leaks</source>
        <extracomment>crankcase, slip</extracomment>
        <translation>Una placa ciega pierde</translation>
    </message>
    <message>
        <source>It looks like a crank seal. Soapy water there first.</source>
        <extracomment>crankcase, then</extracomment>
        <translation>Parece un retén del cigüeñal. Primero agua jabonosa ahí.</translation>
    </message>
    <message>
        <source>Leak-down pressure in the crankcase</source>
        <extracomment>crankcase, slip</extracomment>
        <translation>Presión de estanqueidad en el cárter</translation>
    </message>
    <message>
        <source>It pushes seals out of their seats. Use what the engine&apos;s manual gives.</source>
        <extracomment>crankcase, then</extracomment>
        <translation>Expulsa los retenes de sus asientos. Usar lo que da el manual del motor.</translation>
    </message>
    <message>
        <source>The test and its exits</source>
        <extracomment>crankcase, for</extracomment>
        <translation>La prueba y sus salidas</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <extracomment>decompressor, title</extracomment>
        <translation>Descompresor</translation>
    </message>
    <message>
        <source>A low cranking reading is no proof of a leak</source>
        <extracomment>decompressor, brief</extracomment>
        <translation>Una lectura de compresión baja no es prueba de una fuga</translation>
    </message>
    <message>
        <source>A decompressor lets pressure out on purpose so that the engine turns easily. With one working, cranking readings of 57 to 85 psi (3.9 to 5.9 bar) are published for sound engines.</source>
        <extracomment>decompressor, why</extracomment>
        <translation>Un descompresor deja salir presión a propósito para que el motor gire con facilidad. Con uno actuando, para motores en buen estado hay publicadas lecturas de compresión de 57 a 85 psi (3,9 a 5,9 bar).</translation>
    </message>
    <message>
        <source>Say on the engine card whether there is none, a manual or an automatic one.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Decir en la ficha del motor si no hay ninguno, o si es manual o automático.</translation>
    </message>
    <message>
        <source>Manual: put it off for the whole test, and see that it stays off.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Manual: desactivarlo durante toda la prueba, y ver que siga desactivado.</translation>
    </message>
    <message>
        <source>Automatic: it works at cranking speed and can&apos;t be put off. Compare its cylinders with each other only, never with a limit.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Automático: actúa a la velocidad de arranque y no se puede desactivar. Comparar sus cilindros solo entre sí, nunca con un límite.</translation>
    </message>
    <message>
        <source>Use leak-down to find out whether the cylinder seals. Note air at the decompressor as an exit of its own.</source>
        <extracomment>decompressor, how</extracomment>
        <translation>Usar la prueba de estanqueidad para saber si el cilindro sella. Anotar el aire por el descompresor como una salida propia.</translation>
    </message>
    <message>
        <source>Low by cranking, little leakage</source>
        <extracomment>decompressor, sign</extracomment>
        <translation>Compresión baja, poca pérdida</translation>
    </message>
    <message>
        <source>the decompressor did its work</source>
        <extracomment>decompressor, means</extracomment>
        <translation>el descompresor hizo su trabajo</translation>
    </message>
    <message>
        <source>Air at the decompressor in leak-down</source>
        <extracomment>decompressor, sign</extracomment>
        <translation>Aire por el descompresor en la estanqueidad</translation>
    </message>
    <message>
        <source>it does not shut</source>
        <extracomment>decompressor, means</extracomment>
        <translation>no cierra</translation>
    </message>
    <message>
        <source>Decompressor forgotten</source>
        <extracomment>decompressor, slip</extracomment>
        <translation>Descompresor olvidado</translation>
    </message>
    <message>
        <source>Every cylinder reads far too low, and nothing leaks.</source>
        <extracomment>decompressor, then</extracomment>
        <translation>Todos los cilindros dan demasiado poco, y nada pierde.</translation>
    </message>
    <message>
        <source>Held against the factory limit</source>
        <extracomment>decompressor, slip</extracomment>
        <translation>Comparado con el límite de fábrica</translation>
    </message>
    <message>
        <source>The limit was written for an engine without one working, unless the engine&apos;s manual says so.</source>
        <extracomment>decompressor, then</extracomment>
        <translation>El límite se escribió para un motor sin ninguno actuando, salvo que el manual del motor diga otra cosa.</translation>
    </message>
    <message>
        <source>57 to 85 psi</source>
        <extracomment>decompressor, for</extracomment>
        <translation>57 a 85 psi</translation>
    </message>
    <message>
        <source>The rest</source>
        <extracomment>decompressor, for</extracomment>
        <translation>Lo demás</translation>
    </message>
    <message>
        <source>Diesel</source>
        <extracomment>diesel, title</extracomment>
        <translation>Diésel</translation>
    </message>
    <message>
        <source>Higher gauge, other adapters, fuel cut off, no wet test</source>
        <extracomment>diesel, brief</extracomment>
        <translation>Manómetro de mayor rango, otros adaptadores, combustible cortado, sin prueba húmeda</translation>
    </message>
    <message>
        <source>A diesel reads far higher than a petrol engine. It needs a gauge for 40 bar or more and an adapter in place of the injector or the glow plug, and it must not fire into the gauge.</source>
        <extracomment>diesel, why</extracomment>
        <translation>Un diésel da mucho más que un motor de gasolina. Necesita un manómetro para 40 bar o más y un adaptador en lugar del inyector o de la bujía de precalentamiento, y no debe encender contra el manómetro.</translation>
    </message>
    <message>
        <source>Its chamber is so small that oil locks it, and oil can fire: no wet test on a diesel, and no oil into its bores beforehand.</source>
        <extracomment>diesel, why</extracomment>
        <translation>Su cámara es tan pequeña que el aceite bloquea el motor, y el aceite puede encenderse: en un diésel no hay prueba húmeda, ni aceite en los cilindros antes de probar.</translation>
    </message>
    <message>
        <source>Say &quot;diesel&quot; on the engine card: the app then leaves out what does not belong.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Decir «diésel» en la ficha del motor: la app omite entonces lo que no corresponde.</translation>
    </message>
    <message>
        <source>Cut the fuel off as the engine&apos;s manual says. Prove it with everything still closed: crank, and it must not fire.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Cortar el combustible como diga el manual del motor. Comprobarlo con todo aún cerrado: dar arranque, y no debe encender.</translation>
    </message>
    <message>
        <source>Cranking builds up pressure in lines and rail. Let it off as the manual says, and wait as long as it says, before anything is opened.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Dar arranque crea presión en las tuberías y el raíl. Descargarla como diga el manual, y esperar lo que diga, antes de abrir nada.</translation>
    </message>
    <message>
        <source>Take the supply off the glow plugs and insulate its ends.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Desconectar la alimentación de las bujías de precalentamiento y aislar sus extremos.</translation>
    </message>
    <message>
        <source>Take out all injectors or all glow plugs, as the manual says.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Sacar todos los inyectores o todas las bujías de precalentamiento, como diga el manual.</translation>
    </message>
    <message>
        <source>Screw in the adapter made for that hole, turn the engine two turns by hand: nothing may touch.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Enroscar el adaptador hecho para ese agujero, girar el motor dos vueltas a mano: nada debe tocar.</translation>
    </message>
    <message>
        <source>Crank at full battery and note the speed if you can. 350 to 430 psi (24 to 30 bar) at 250 to 290 rpm is published; the engine&apos;s own manual comes first.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Dar arranque con la batería llena y anotar la velocidad si se puede. Hay publicados de 350 a 430 psi (24 a 30 bar) a 250 a 290 rpm; el manual propio del motor va por delante.</translation>
    </message>
    <message>
        <source>For rings or valves use leak-down and the Leak hunt.</source>
        <extracomment>diesel, how</extracomment>
        <translation>Para segmentos o válvulas usar la prueba de estanqueidad y la Búsqueda de fugas.</translation>
    </message>
    <message>
        <source>Petrol gauge on a diesel</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Manómetro para gasolina en un diésel</translation>
    </message>
    <message>
        <source>The needle goes past its end and the gauge is spoilt.</source>
        <extracomment>diesel, then</extracomment>
        <translation>La aguja pasa de su tope y el manómetro se estropea.</translation>
    </message>
    <message>
        <source>Line opened under pressure</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Tubería abierta con presión</translation>
    </message>
    <message>
        <source>The jet goes through skin. However small the wound looks: to a hospital at once.</source>
        <extracomment>diesel, then</extracomment>
        <translation>El chorro atraviesa la piel. Por pequeña que parezca la herida: al hospital de inmediato.</translation>
    </message>
    <message>
        <source>Fuel not cut off</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Combustible sin cortar</translation>
    </message>
    <message>
        <source>The cylinder fires into the gauge, or hot gas and fuel leave the open holes.</source>
        <extracomment>diesel, then</extracomment>
        <translation>El cilindro enciende contra el manómetro, o salen gas caliente y combustible por los agujeros abiertos.</translation>
    </message>
    <message>
        <source>Oil put in</source>
        <extracomment>diesel, slip</extracomment>
        <translation>Aceite echado</translation>
    </message>
    <message>
        <source>It can&apos;t be compressed, locks the engine and bends a rod; or it fires.</source>
        <extracomment>diesel, then</extracomment>
        <translation>No se puede comprimir, bloquea el motor y dobla una biela; o se enciende.</translation>
    </message>
    <message>
        <source>The cylinder reads low. Soapy water shows it.</source>
        <extracomment>diesel, then</extracomment>
        <translation>El cilindro da poco. El agua jabonosa lo muestra.</translation>
    </message>
    <message>
        <source>Cranking speed decides the reading. Battery first.</source>
        <extracomment>diesel, then</extracomment>
        <translation>La velocidad de arranque decide la lectura. Primero la batería.</translation>
    </message>
    <message>
        <source>350 to 430 psi at 250 to 290 rpm</source>
        <extracomment>diesel, for</extracomment>
        <translation>350 a 430 psi a 250 a 290 rpm</translation>
    </message>
    <message>
        <source>Gauge, adapters, fuel, lines under pressure, glow plugs, no oil</source>
        <extracomment>diesel, for</extracomment>
        <translation>Manómetro, adaptadores, combustible, tuberías con presión, bujías de precalentamiento, sin aceite</translation>
    </message>
</context>
<context>
    <name>RepeatSheet</name>
    <message>
        <source>Oil went in since</source>
        <translation>Entretanto entró aceite</translation>
    </message>
    <message>
        <source>What is different?</source>
        <translation>¿Qué es distinto?</translation>
    </message>
    <message>
        <source>Oil stays on the rings and helps them to seal. What is read now can&apos;t be averaged with what was read before it: it is kept beside it, and not counted.</source>
        <translation>El aceite queda en los segmentos y les ayuda a cerrar. Lo que se lee ahora no se puede promediar con lo de antes: se guarda al lado y no se cuenta.</translation>
    </message>
    <message>
        <source>With another throttle, a warmer engine or another gauge the two can&apos;t be averaged: they belong in two sessions.</source>
        <translation>Con la mariposa en otra posición, el motor más caliente u otro manómetro no se pueden promediar las dos: van en dos sesiones.</translation>
    </message>
    <message>
        <source>Oil was used since: keep apart</source>
        <translation>Se usó aceite: guardar aparte</translation>
    </message>
    <message>
        <source>Something else changed: new session</source>
        <translation>Cambió otra cosa: sesión nueva</translation>
    </message>
    <message>
        <source>Nothing changed: keep both</source>
        <translation>Nada cambió: guardar ambas</translation>
    </message>
    <message>
        <source>The first was wrong: replace it</source>
        <translation>La primera estaba mal: reemplazarla</translation>
    </message>
    <message>
        <source>Keep as read after oil</source>
        <translation>Guardar como leída tras aceite</translation>
    </message>
    <message>
        <source>Something changed: new session</source>
        <translation>Algo cambió: sesión nueva</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>In short</source>
        <translation>En resumen</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <translation>Por dónde pierde</translation>
    </message>
    <message>
        <source>Worth doing next</source>
        <translation>Lo que conviene ahora</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Queja</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Factory limits at this shop</source>
        <translation>Límites de fábrica en este taller</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Juego de válvulas</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Notes and second opinions</source>
        <translation>Notas y segundas opiniones</translation>
    </message>
    <message>
        <source>Typed</source>
        <translation>Escrito</translation>
    </message>
    <message>
        <source>needle set by hand</source>
        <translation>aguja puesta a mano</translation>
    </message>
    <message>
        <source>The needle reads</source>
        <translation>La aguja marca</translation>
    </message>
    <message>
        <source>Needle not read</source>
        <translation>Aguja no leída</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>Opinion</source>
        <translation>Opinión</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>En palabras</translation>
    </message>
    <message>
        <source>By</source>
        <translation>De</translation>
    </message>
    <message>
        <source>This photo is not stored here.</source>
        <translation>Esta foto no está guardada aquí.</translation>
    </message>
    <message>
        <source>Where air was heard or felt</source>
        <translation>Dónde se oyó o notó aire</translation>
    </message>
    <message>
        <source>Crankcase hold test</source>
        <translation>Prueba del cárter</translation>
    </message>
    <message>
        <source>What the readings say</source>
        <translation>Lo que dicen las lecturas</translation>
    </message>
    <message>
        <source>To be answered before any verdict</source>
        <translation>Por responder antes de cualquier veredicto</translation>
    </message>
    <message>
        <source>Contradictions</source>
        <translation>Contradicciones</translation>
    </message>
    <message>
        <source>What makes these readings worth less</source>
        <translation>Lo que resta valor a estas lecturas</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>como se midió</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>Not done in Prepare</source>
        <translation>No hecho en Preparar</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Comprobadores</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>How sure the numbers are</source>
        <translation>Qué certeza tienen los números</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>De dónde salen los números</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>Rules published in</source>
        <translation>Reglas publicadas en</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propietario</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Número de orden de trabajo</translation>
    </message>
    <message>
        <source>Run so far</source>
        <translation>Recorrido hasta ahora</translation>
    </message>
    <message>
        <source>Report made</source>
        <translation>Informe hecho</translation>
    </message>
    <message>
        <source>Symptoms</source>
        <translation>Síntomas</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>En palabras del propietario</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Retest planned</source>
        <translation>Nueva prueba prevista</translation>
    </message>
    <message>
        <source>Owner&apos;s answer</source>
        <translation>Respuesta del propietario</translation>
    </message>
    <message>
        <source>Dry test</source>
        <translation>Prueba en seco</translation>
    </message>
    <message>
        <source>Leak-down</source>
        <translation>Estanqueidad</translation>
    </message>
    <message>
        <source>Wet test</source>
        <translation>Prueba húmeda</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Cilindro</translation>
    </message>
    <message>
        <source>First puff</source>
        <translation>Primera embolada</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Too far below the highest</source>
        <translation>Demasiado por debajo del más alto</translation>
    </message>
    <message>
        <source>held</source>
        <translation>retenida</translation>
    </message>
    <message>
        <source>set</source>
        <translation>ajustada</translation>
    </message>
    <message>
        <source>Same leak at</source>
        <translation>Misma fuga a</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Without the hose</source>
        <translation>Sin la manguera</translation>
    </message>
    <message>
        <source>Oil&apos;s volume alone</source>
        <translation>Volumen del aceite solo</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>Left at</source>
        <translation>Dejado en</translation>
    </message>
    <message>
        <source>Wanted, cold</source>
        <translation>Nominal, en frío</translation>
    </message>
    <message>
        <source>Normal range</source>
        <translation>Rango normal</translation>
    </message>
    <message>
        <source>Lowest limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Most difference</source>
        <translation>Diferencia máxima</translation>
    </message>
    <message>
        <source>Lowest of highest, at least</source>
        <translation>Más bajo frente al más alto, al menos</translation>
    </message>
    <message>
        <source>Most leakage</source>
        <translation>Pérdida máxima</translation>
    </message>
    <message>
        <source>How they were set</source>
        <translation>Cómo se fijaron</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Origen</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Tomado de</translation>
    </message>
    <message>
        <source>Points at</source>
        <translation>Apunta a</translation>
    </message>
    <message>
        <source>Held for</source>
        <translation>Mantenido durante</translation>
    </message>
    <message>
        <source>End pressure</source>
        <translation>Presión final</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Presión del aire</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Mariposa</translation>
    </message>
    <message>
        <source>Induction</source>
        <translation>Admisión</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batería</translation>
    </message>
    <message>
        <source>Cranked by</source>
        <translation>Girado con</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <translation>Velocidad de arranque</translation>
    </message>
    <message>
        <source>Crank held by</source>
        <translation>Cigüeñal sujeto con</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>What it does to the readings</source>
        <translation>Lo que hace a las lecturas</translation>
    </message>
    <message>
        <source>Neither done nor crossed out</source>
        <translation>Ni hecho ni tachado</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Comprobador</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Last checks</source>
        <translation>Últimas verificaciones</translation>
    </message>
    <message>
        <source>Division</source>
        <translation>División</translation>
    </message>
    <message>
        <source>Hose and gauge</source>
        <translation>Manguera y manómetro</translation>
    </message>
    <message>
        <source>Check valve at</source>
        <translation>Válvula antirretorno en</translation>
    </message>
    <message>
        <source>Valve core</source>
        <translation>Núcleo de válvula</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>Restrictor</source>
        <translation>Restrictor</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Elección</translation>
    </message>
    <message>
        <source>Work and parts</source>
        <translation>Trabajo y piezas</translation>
    </message>
    <message>
        <source>Price and hours</source>
        <translation>Precio y horas</translation>
    </message>
    <message>
        <source>If left</source>
        <translation>Si se deja</translation>
    </message>
    <message>
        <source>Comes to</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Quick fixes</source>
        <translation>Arreglos rápidos</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Desmontar</translation>
    </message>
    <message>
        <source>Expected after repair</source>
        <translation>Esperado tras la reparación</translation>
    </message>
    <message>
        <source>once run in</source>
        <translation>una vez rodado</translation>
    </message>
    <message>
        <source>Under 1 % each</source>
        <translation>Menos del 1 % cada una</translation>
    </message>
    <message>
        <source>Assumptions, version · sum of all data</source>
        <translation>Supuestos, versión · suma de todos los datos</translation>
    </message>
    <message>
        <source>Odds, seed</source>
        <translation>Probabilidades, semilla</translation>
    </message>
    <message>
        <source>Reading to expect</source>
        <translation>Lectura esperada</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Descripción</translation>
    </message>
    <message>
        <source>Its past</source>
        <translation>Antecedentes</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Cilindros</translation>
    </message>
    <message>
        <source>Bank angle</source>
        <translation>Ángulo de bancadas</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Refrigeración</translation>
    </message>
    <message>
        <source>Firing order</source>
        <translation>Orden de encendido</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Carrera</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Biela</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Relación de compresión</translation>
    </message>
    <message>
        <source>Exhaust port closes</source>
        <translation>La lumbrera de escape cierra</translation>
    </message>
    <message>
        <source>Valves per cylinder</source>
        <translation>Válvulas por cilindro</translation>
    </message>
    <message>
        <source>Intake clearance</source>
        <translation>Juego de admisión</translation>
    </message>
    <message>
        <source>Exhaust clearance</source>
        <translation>Juego de escape</translation>
    </message>
    <message>
        <source>Adjusters</source>
        <translation>Reglaje</translation>
    </message>
    <message>
        <source>Valve timing</source>
        <translation>Distribución</translation>
    </message>
    <message>
        <source>Intake closes after BDC</source>
        <translation>La admisión cierra después del PMI</translation>
    </message>
    <message>
        <source>Exhaust opens before BDC</source>
        <translation>El escape abre antes del PMI</translation>
    </message>
    <message>
        <source>Decompressor</source>
        <translation>Descompresor</translation>
    </message>
    <message>
        <source>Plug thread</source>
        <translation>Rosca de bujía</translation>
    </message>
    <message>
        <source>Plug reach</source>
        <translation>Largo de rosca de bujía</translation>
    </message>
    <message>
        <source>Home-made</source>
        <translation>Casero</translation>
    </message>
    <message>
        <source>Never checked</source>
        <translation>Nunca verificado</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Desconocido</translation>
    </message>
    <message>
        <source>Every step of Prepare was done or not needed.</source>
        <translation>Todos los pasos de Preparar se hicieron o no hacían falta.</translation>
    </message>
    <message>
        <source>Nothing was measured in this session.</source>
        <translation>En esta sesión no se midió nada.</translation>
    </message>
    <message>
        <source>Sealing test</source>
        <translation>Prueba de hermeticidad de los cilindros</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>incertidumbre</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Dry and wet test: the piston line stands at the final reading, all in one scale. Leak-down: it stands at the part of the set pressure that the cylinder held; the figure is what it lost.</source>
        <translation>Prueba en seco y húmeda: la línea del pistón está en la lectura final, todas en una misma escala. Estanqueidad: está en la parte de la presión ajustada que el cilindro mantuvo; la cifra es lo que perdió.</translation>
    </message>
    <message>
        <source>The figure behind ± is half of the 95 % interval: of twenty such readings nineteen lie within it. It counts the gauge&apos;s class and scale, how finely it was read and how repeats scatter.</source>
        <translation>La cifra detrás de ± es la mitad del intervalo del 95 %: de veinte lecturas así, diecinueve quedan dentro. Cuenta la clase y la escala del manómetro, la finura con que se leyó y la dispersión de las repeticiones.</translation>
    </message>
    <message>
        <source>All readings of one gauge share most of its error, so cylinders can be compared more closely than either can be held against a limit.</source>
        <translation>Todas las lecturas de un mismo manómetro comparten la mayor parte de su error, por lo que los cilindros se pueden comparar entre sí con más finura que cualquiera de ellos con un límite.</translation>
    </message>
    <message>
        <source>A verdict follows the figure as read; one that passes the maker&apos;s limit by less than its own uncertainty is called borderline. A reading that a hose, a closed throttle, a cold engine or a weak battery lowered is put right first.</source>
        <translation>El veredicto sigue la cifra tal como se leyó; la que pasa el límite del fabricante por menos que su propia incertidumbre se da por «en el límite». Una lectura que bajó por una manguera, una mariposa cerrada, un motor frío o una batería débil se corrige antes.</translation>
    </message>
    <message>
        <source>Percentages of testers with different set pressures can&apos;t be compared as they stand. &quot;Same leak at&quot; is what another tester would show on the same leak, from an orifice-like leak to a long narrow gap.</source>
        <translation>Los porcentajes de comprobadores con distintas presiones ajustadas no se pueden comparar tal como están. «Misma fuga a» es lo que marcaría otro comprobador con la misma fuga, desde una fuga como un orificio hasta una rendija larga y estrecha.</translation>
    </message>
    <message>
        <source>&quot;Oil&apos;s volume alone&quot; is a range because nobody knows how much of the oil stayed in the chamber. What gauge, scatter and engine add to the doubt is not in it.</source>
        <translation>«Volumen del aceite solo» es un intervalo porque nadie sabe cuánto aceite quedó en la cámara. Lo que el manómetro, la dispersión y el motor añaden de incertidumbre no está incluido.</translation>
    </message>
    <message>
        <source>Odds say how likely it is that a cylinder leaks more than a sound one, and mostly there. A bar shows how what it leaks, much or little, is shared, as far as that is sure; its empty part is open. Beside each share stands the range that holds it in nine cases of ten. A range expected after a repair holds the reading as often. Odds are rounded to 5 % and never shown above 95 %.</source>
        <translation>Las probabilidades dicen cuán probable es que un cilindro pierda más que uno sano, y sobre todo por ahí. Una barra muestra cómo se reparte lo que pierde, sea mucho o poco, hasta donde eso es seguro; su parte vacía queda abierta. Junto a cada parte está el intervalo que la contiene en nueve de cada diez casos. Un intervalo esperado tras una reparación contiene la lectura con la misma frecuencia. Las probabilidades se redondean a 5 % y nunca se muestran por encima de 95 %.</translation>
    </message>
    <message>
        <source>How likely each is rests on the app&apos;s working assumptions; it was not yet counted on real engines.</source>
        <translation>Lo probable de cada cosa se basa en los supuestos de trabajo de la app; aún no se ha contado en motores reales.</translation>
    </message>
    <message>
        <source>For the mechanic:</source>
        <translation>Para el mecánico:</translation>
    </message>
    <message>
        <source>After a repair the reading is expected within its range in nine cases of ten.</source>
        <translation>Tras una reparación se espera la lectura dentro de su intervalo en nueve de cada diez casos.</translation>
    </message>
    <message>
        <source>Rules of thumb stand here in their own words, each with its own verdict. They can disagree.</source>
        <translation>Las reglas prácticas figuran aquí con sus propias palabras, cada una con su propio veredicto. Pueden no coincidir.</translation>
    </message>
    <message>
        <source>Where limits and engine data come from stands beside them. The report with its appendix for a mentor names the source of every rule and formula and shows how each number was made.</source>
        <translation>De dónde vienen los límites y los datos del motor figura junto a ellos. El informe con anexo para un mentor nombra la fuente de cada regla y fórmula y muestra cómo se obtuvo cada número.</translation>
    </message>
    <message>
        <source>A number at a line&apos;s end is its cylinder; a whisker is the 95 % doubt. A dry test&apos;s whisker also holds what readings scatter by from one day to the next, which the ± in the tables leaves out, so it is longer. A line breaks where a repair lies between. Open marks can&apos;t be compared with the rest. All in the newest visit&apos;s terms.</source>
        <translation>Un número al final de una línea es su cilindro; un bigote es la incertidumbre del 95 %. En la prueba en seco incluye también lo que las lecturas varían de un día a otro, que el ± de las tablas no incluye; por eso es más largo. Una línea se corta donde hay una reparación en medio. Las marcas abiertas no se pueden comparar con las demás. Todo en los términos de la visita más reciente.</translation>
    </message>
</context>
<context>
    <name>RetestSheet</name>
    <message>
        <source>Retest</source>
        <translation>Nueva prueba</translation>
    </message>
    <message>
        <source>Cold against cold, with the same gauge; after new rings not before they have run in.</source>
        <translation>Frío contra frío, con el mismo manómetro; tras segmentos nuevos, no antes del rodaje.</translation>
    </message>
    <message>
        <source>In a month</source>
        <translation>En un mes</translation>
    </message>
    <message>
        <source>In three months</source>
        <translation>En tres meses</translation>
    </message>
    <message>
        <source>In a year</source>
        <translation>En un año</translation>
    </message>
    <message>
        <source>No retest</source>
        <translation>Sin nueva prueba</translation>
    </message>
    <message>
        <source>Or on this day</source>
        <translation>O en este día</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>ScrubBar</name>
    <message>
        <source>Place in the voice note, %1 %</source>
        <translation>Punto de la nota de voz, %1 %</translation>
    </message>
</context>
<context>
    <name>SecondOpinionPage</name>
    <message>
        <source>Second opinion</source>
        <translation>Segunda opinión</translation>
    </message>
    <message>
        <source>Look at these first</source>
        <translation>Mirar esto primero</translation>
    </message>
    <message>
        <source>The session itself</source>
        <translation>La sesión misma</translation>
    </message>
    <message>
        <source>To test and record here</source>
        <translation>Para probar y registrar aquí</translation>
    </message>
    <message>
        <source>What was measured can&apos;t be changed on this page. Your remarks go back with the session file.</source>
        <translation>Lo medido no se puede cambiar en esta página. Las observaciones propias vuelven con el archivo de sesión.</translation>
    </message>
    <message>
        <source>Send back</source>
        <translation>Devolver</translation>
    </message>
</context>
<context>
    <name>SessionAdvice</name>
    <message>
        <source>Worth doing next</source>
        <translation>Lo que conviene ahora</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Keep in mind</source>
        <translation>Tener en cuenta</translation>
    </message>
</context>
<context>
    <name>SessionGone</name>
    <message>
        <source>This session is gone</source>
        <translation>Esta sesión ya no está</translation>
    </message>
    <message>
        <source>It was deleted, or Undo took it back. Go back to the list.</source>
        <translation>Se borró, o Deshacer la quitó. Volver a la lista.</translation>
    </message>
</context>
<context>
    <name>SessionName</name>
    <message>
        <source>Session, nothing measured</source>
        <translation>Sesión, nada medido</translation>
    </message>
</context>
<context>
    <name>SessionOpinions</name>
    <message>
        <source>Please test this</source>
        <translation>Por favor, probar esto</translation>
    </message>
    <message>
        <source>Asked for, and done</source>
        <translation>Pedido, y hecho</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Mirarlo</translation>
    </message>
    <message>
        <source>Test it now</source>
        <translation>Probarlo ahora</translation>
    </message>
</context>
<context>
    <name>SessionPage</name>
    <message>
        <source>Photos and voice notes</source>
        <translation>Fotos y notas de voz</translation>
    </message>
    <message>
        <source>Second opinion</source>
        <translation>Segunda opinión</translation>
    </message>
    <message>
        <source>All of it with its photos, to remark on</source>
        <translation>Todo ello con sus fotos, para comentarlo</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>How to, all cards</source>
        <translation>Cómo se hace, todas las fichas</translation>
    </message>
    <message>
        <source>Calculators</source>
        <translation>Calculadoras</translation>
    </message>
    <message>
        <source>Delete this session</source>
        <translation>Borrar esta sesión</translation>
    </message>
    <message>
        <source>Delete this session?</source>
        <translation>¿Borrar esta sesión?</translation>
    </message>
    <message>
        <source>Its readings, photos and notes go with it. Undo brings them back, also later from More in the list of engines, until something else is done.</source>
        <translation>Sus lecturas, fotos y notas se van con ella. «Deshacer» las recupera, también más tarde desde «Más» en la lista de motores, hasta que se haga otra cosa.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
</context>
<context>
    <name>SettingsHands</name>
    <message>
        <source>Left hand</source>
        <translation>Mano izquierda</translation>
    </message>
    <message>
        <source>The amber button comes under the left thumb.</source>
        <translation>El botón ámbar queda bajo el pulgar izquierdo.</translation>
    </message>
    <message>
        <source>Big keys</source>
        <translation>Teclas grandes</translation>
    </message>
    <message>
        <source>The pad&apos;s keys grow for thick gloves.</source>
        <translation>Las teclas del teclado crecen para guantes gruesos.</translation>
    </message>
    <message>
        <source>The pad&apos;s keys grow for thick gloves. This screen has no room for more.</source>
        <translation>Las teclas del teclado crecen para guantes gruesos. En esta pantalla no hay sitio para más.</translation>
    </message>
    <message>
        <source>Tick on a key</source>
        <translation>Vibrar al pulsar</translation>
    </message>
    <message>
        <source>Volume key keeps</source>
        <translation>Guardar con tecla de volumen</translation>
    </message>
    <message>
        <source>Keeps a reading without a look at the screen.</source>
        <translation>Guarda una lectura sin mirar la pantalla.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>como el sistema</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Lengths and clearances</source>
        <translation>Longitudes y juegos</translation>
    </message>
    <message>
        <source>inch and thou</source>
        <translation>pulgada y 1/1000″</translation>
    </message>
    <message>
        <source>What was typed stays in the unit that it was typed in.</source>
        <translation>Lo escrito queda en la unidad en que se escribió.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>workshop, dark</source>
        <translation>taller, oscuro</translation>
    </message>
    <message>
        <source>daylight, light</source>
        <translation>luz de día, claro</translation>
    </message>
    <message>
        <source>Text size, on top of the system&apos;s</source>
        <translation>Tamaño del texto, además del del sistema</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Notes and findings</source>
        <translation>Notas y diagnóstico</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Almacenamiento</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Everything into one file, or back from one</source>
        <translation>Todo en un archivo, o de vuelta desde uno</translation>
    </message>
    <message>
        <source>Known keys</source>
        <translation>Claves conocidas</translation>
    </message>
    <message>
        <source>Whose session files you know by name, and your own fingerprint</source>
        <translation>De quién se conocen los archivos de sesión por su nombre, y la huella propia</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Held against readings when the engine card has no factory limit.</source>
        <translation>Se comparan con las lecturas cuando la ficha del motor no tiene límite de fábrica.</translation>
    </message>
    <message>
        <source>Working assumptions</source>
        <translation>Supuestos de trabajo</translation>
    </message>
    <message>
        <source>Numbers of the app&apos;s own or of common practice.</source>
        <translation>Números propios de la app o de la práctica común.</translation>
    </message>
    <message>
        <source>Licences</source>
        <translation>Licencias</translation>
    </message>
    <message>
        <source>What the app is made of.</source>
        <translation>De qué está hecha la app.</translation>
    </message>
    <message>
        <source>Lapwing %1. Works without a network; nothing leaves this device by itself. The library lies in %2.</source>
        <translation>Lapwing %1. Funciona sin red; nada sale de este dispositivo por sí solo. La biblioteca está en %2.</translation>
    </message>
</context>
<context>
    <name>SettingsPerson</name>
    <message>
        <source>Your name</source>
        <translation>Nombre de quien escribe</translation>
    </message>
    <message>
        <source>It stands beside the notes that you write, in session files too.</source>
        <translation>Figura junto a las notas que se escriben, también en los archivos de sesión.</translation>
    </message>
    <message>
        <source>My call before the findings</source>
        <translation>Mi dictamen antes del diagnóstico</translation>
    </message>
    <message>
        <source>To learn: say where each cylinder leaks before the app does. What was committed stands.</source>
        <translation>Para aprender: decir por dónde pierde cada cilindro antes que la app. Lo confirmado queda fijo.</translation>
    </message>
</context>
<context>
    <name>ShareLegend</name>
    <message>
        <source>Share of the leak, with the range that holds it in nine cases of ten. The empty part of the bar is open:</source>
        <translation>Parte de la fuga, con el rango que la contiene en nueve casos de diez. La parte vacía de la barra queda abierta:</translation>
    </message>
</context>
<context>
    <name>Shell</name>
    <message>
        <source>This page can&apos;t be opened. Close Lapwing and start it again; if that doesn&apos;t help, install it anew. Nothing that was kept is lost.</source>
        <translation>Esta página no se puede abrir. Cerrar Lapwing y abrirlo de nuevo; si no ayuda, instalarlo otra vez. Nada de lo guardado se ha perdido.</translation>
    </message>
</context>
<context>
    <name>SignaturePanel</name>
    <message>
        <source>Fingerprint of the key</source>
        <translation>Huella de la clave</translation>
    </message>
    <message>
        <source>Whose key is it?</source>
        <translation>¿De quién es la clave?</translation>
    </message>
    <message>
        <source>Forget the name</source>
        <translation>Olvidar el nombre</translation>
    </message>
    <message>
        <source>Name this key</source>
        <translation>Dar nombre a esta clave</translation>
    </message>
    <message>
        <source>Unaltered means: since the holder of this key handed it over, no byte was changed. It does not say who that is, that a reading is true, or when it was taken.</source>
        <translation>«Sin cambios» significa: desde que el titular de esta clave lo entregó, no se cambió ningún byte. No dice quién es, ni que una lectura sea cierta, ni cuándo se tomó.</translation>
    </message>
</context>
<context>
    <name>Snack</name>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>SourceList</name>
    <message>
        <source>Touch to fold</source>
        <translation>Tocar para plegar</translation>
    </message>
    <message>
        <source>Touch to read it all</source>
        <translation>Tocar para leerlo todo</translation>
    </message>
</context>
<context>
    <name>StakedPanel</name>
    <message>
        <source>Staked a valve?</source>
        <translation>¿Válvula asentada con toques?</translation>
    </message>
    <message>
        <source>Carbon under a valve can leak like a burnt one. A light tap on its stem can seat it again; then test once more. What you note now counts as a new state of the valve.</source>
        <translation>La carbonilla bajo una válvula puede perder como una quemada. Un toque ligero en su vástago puede asentarla de nuevo; probar entonces otra vez. Lo que se anote ahora cuenta como un estado nuevo de la válvula.</translation>
    </message>
    <message>
        <source>How to</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>After staking</source>
        <translation>Tras asentar con toques</translation>
    </message>
</context>
<context>
    <name>States</name>
    <message>
        <source>in range</source>
        <translation>en rango</translation>
    </message>
    <message>
        <source>borderline</source>
        <translation>en el límite</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>fallo</translation>
    </message>
    <message>
        <source>measured, not judged</source>
        <translation>medido, sin juzgar</translation>
    </message>
    <message>
        <source>measured, your own call first</source>
        <translation>medido, primero el dictamen propio</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, cilindro %2</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Name the tester</source>
        <translation>Nombrar el comprobador</translation>
    </message>
    <message>
        <source>%1, new session</source>
        <translation>%1, sesión nueva</translation>
    </message>
    <message>
        <source>%1, cylinder %2: kept</source>
        <translation>%1, cilindro %2: guardado</translation>
    </message>
    <message>
        <source>%1, cylinder %2: measured again</source>
        <translation>%1, cilindro %2: medido de nuevo</translation>
    </message>
    <message>
        <source>%1, cylinder %2: the photo&apos;s figure stands</source>
        <translation>%1, cilindro %2: vale la cifra de la foto</translation>
    </message>
    <message>
        <source>%1, cylinder %2: the typed figure stands</source>
        <translation>%1, cilindro %2: vale la cifra escrita</translation>
    </message>
    <message>
        <source>%1, cylinder %2: added to</source>
        <translation>%1, cilindro %2: completado</translation>
    </message>
    <message>
        <source>%1, cylinder %2: reading deleted</source>
        <translation>%1, cilindro %2: lectura borrada</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: noted</source>
        <translation>Cilindro %1, %2: anotado</translation>
    </message>
    <message>
        <source>Cylinder %1, %2: back to not listened</source>
        <translation>Cilindro %1, %2: de nuevo no escuchado</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 clearance: kept</source>
        <translation>Cilindro %1, juego (%2): guardado</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 clearance: deleted</source>
        <translation>Cilindro %1, juego (%2): borrado</translation>
    </message>
    <message>
        <source>New session for %1</source>
        <translation>Nueva sesión para %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Prepare: the rest is done</source>
        <translation>Preparar: el resto está hecho</translation>
    </message>
    <message>
        <source>Session deleted</source>
        <translation>Sesión borrada</translation>
    </message>
    <message>
        <source>Owner&apos;s answer noted</source>
        <translation>Respuesta del propietario anotada</translation>
    </message>
    <message>
        <source>Retest noted</source>
        <translation>Nueva prueba anotada</translation>
    </message>
    <message>
        <source>Session changed</source>
        <translation>Sesión cambiada</translation>
    </message>
    <message>
        <source>%1 added</source>
        <translation>%1 añadido</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 cambiado</translation>
    </message>
    <message>
        <source>%1 deleted, with its sessions</source>
        <translation>%1 borrado, con sus sesiones</translation>
    </message>
    <message>
        <source>%1: check noted</source>
        <translation>%1: verificación anotada</translation>
    </message>
    <message>
        <source>%1 deleted</source>
        <translation>Borrado: %1</translation>
    </message>
    <message>
        <source>%1 brought in</source>
        <translation>%1 incorporado</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 guardada</translation>
    </message>
    <message numerus="yes">
        <source>%n photos without their place</source>
        <translation>
            <numerusform>%n foto sin su lugar</numerusform>
            <numerusform>%n fotos sin su lugar</numerusform>
        </translation>
    </message>
    <message>
        <source>One version stands</source>
        <translation>Vale una versión</translation>
    </message>
    <message>
        <source>Your call is committed</source>
        <translation>Dictamen propio confirmado</translation>
    </message>
    <message>
        <source>Taken into the plan: %1</source>
        <translation>Pasado al plan: %1</translation>
    </message>
    <message>
        <source>Line of the plan changed</source>
        <translation>Línea del plan cambiada</translation>
    </message>
    <message>
        <source>Tick changed</source>
        <translation>Marca cambiada</translation>
    </message>
    <message>
        <source>Order of work changed</source>
        <translation>Orden del trabajo cambiado</translation>
    </message>
    <message>
        <source>Deleted</source>
        <translation>Borrado</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Guardado</translation>
    </message>
</context>
<context>
    <name>StorageList</name>
    <message>
        <source>The files of these entries are missing. A backup or a session file that was handed over may still have them: restore it or bring it in.</source>
        <translation>Faltan los archivos de estas entradas. Puede que una copia de seguridad o un archivo de sesión entregado aún los tenga: restaurarla o incorporarlo.</translation>
    </message>
    <message>
        <source>Delete the entry</source>
        <translation>Borrar la entrada</translation>
    </message>
    <message>
        <source>No entry names these files. They stay until you decide.</source>
        <translation>Ninguna entrada nombra estos archivos. Se quedan hasta que se decida.</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Delete the file for good</source>
        <translation>Borrar el archivo para siempre</translation>
    </message>
    <message>
        <source>These voice notes were cut off, and their session was deleted meanwhile. Undo of that deletion and a new start of Lapwing keep them.</source>
        <translation>Estas notas de voz se cortaron, y su sesión se borró mientras tanto. Deshacer ese borrado y arrancar Lapwing de nuevo las conserva.</translation>
    </message>
    <message>
        <source>Delete it for good</source>
        <translation>Borrarla para siempre</translation>
    </message>
</context>
<context>
    <name>SwitchRow</name>
    <message>
        <source>on</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>off</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>TagChips</name>
    <message>
        <source>Shows the engines with this tag</source>
        <translation>Muestra los motores con esta etiqueta</translation>
    </message>
</context>
<context>
    <name>TesterAsk</name>
    <message>
        <source>Which gauge?</source>
        <translation>¿Qué manómetro?</translation>
    </message>
    <message>
        <source>Which tester?</source>
        <translation>¿Qué comprobador?</translation>
    </message>
    <message>
        <source>How far a reading can be trusted hangs on it. Without one the app has to assume a usual one.</source>
        <translation>De él depende cuánto se puede confiar en una lectura. Sin uno, la app tiene que suponer uno corriente.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Add one</source>
        <translation>Añadir uno</translation>
    </message>
</context>
<context>
    <name>TesterCard</name>
    <message>
        <source>Full scale</source>
        <translation>Fondo de escala</translation>
    </message>
    <message>
        <source>The last figure on the dial. The scale starts at zero. Of a dial in % of leakage: the set pressure at which it shows 0 %.</source>
        <translation>La última cifra de la esfera. La escala empieza en cero. En una esfera en % de fuga: la presión ajustada con la que marca 0 %.</translation>
    </message>
    <message>
        <source>Class by</source>
        <translation>Clase según</translation>
    </message>
    <message>
        <source>As printed on the dial. Without one the app assumes a plain workshop gauge.</source>
        <translation>Como está impresa en la esfera. Sin ella la app supone un manómetro de taller corriente.</translation>
    </message>
    <message>
        <source>Accuracy class</source>
        <translation>Clase de exactitud</translation>
    </message>
    <message>
        <source>EN 837-1: 1.6 or 2.5, a percentage of the span. ASME B40.100: a grade from A to D.</source>
        <translation>EN 837-1: 1,6 o 2,5, un porcentaje del alcance. ASME B40.100: un grado de la A a la D.</translation>
    </message>
    <message>
        <source>Smallest division</source>
        <translation>División más pequeña</translation>
    </message>
    <message>
        <source>Needle at rest shows</source>
        <translation>La aguja en reposo marca</translation>
    </message>
    <message>
        <source>Sweep of the scale</source>
        <translation>Recorrido de la escala</translation>
    </message>
    <message>
        <source>From zero to full scale, often 270 degrees. Helps to read photos.</source>
        <translation>De cero al fondo de escala, a menudo 270 grados. Ayuda a leer fotos.</translation>
    </message>
    <message>
        <source>Hose and check valve</source>
        <translation>Manguera y válvula antirretorno</translation>
    </message>
    <message>
        <source>Hose and gauge hold</source>
        <translation>Volumen de manguera y manómetro</translation>
    </message>
    <message>
        <source>Fill them with water and measure it. A large volume after the check valve costs pulls.</source>
        <translation>Llenarlos de agua y medirla. Un volumen grande después de la válvula antirretorno cuesta emboladas.</translation>
    </message>
    <message>
        <source>Check valve sits at the</source>
        <translation>Válvula antirretorno en</translation>
    </message>
    <message>
        <source>At the gauge end the hose adds to the chamber and the reading comes out low.</source>
        <translation>En el lado del manómetro, la manguera se suma a la cámara y la lectura sale baja.</translation>
    </message>
    <message>
        <source>Valve core</source>
        <translation>Núcleo de válvula</translation>
    </message>
    <message>
        <source>A tyre valve core needs pressure to open and takes it off the reading.</source>
        <translation>Un núcleo de válvula de neumático necesita presión para abrir y la quita de la lectura.</translation>
    </message>
    <message>
        <source>Adapter %1: %2</source>
        <translation>Adaptador %1: %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Largo de rosca</translation>
    </message>
    <message>
        <source>It must not touch piston or valve: turn the engine two turns by hand.</source>
        <translation>No debe tocar el pistón ni las válvulas: girar el motor dos vueltas a mano.</translation>
    </message>
    <message>
        <source>Adds a volume of</source>
        <translation>Añade un volumen de</translation>
    </message>
    <message>
        <source>Seals by</source>
        <translation>Sella con</translation>
    </message>
    <message>
        <source>Take this adapter out</source>
        <translation>Quitar este adaptador</translation>
    </message>
    <message>
        <source>More adapters</source>
        <translation>Más adaptadores</translation>
    </message>
    <message>
        <source>Add an adapter</source>
        <translation>Añadir un adaptador</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adaptador</translation>
    </message>
    <message>
        <source>A second gauge before the restrictor</source>
        <translation>Un segundo manómetro antes del restrictor</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>What it is usually set to with the outlet blocked.</source>
        <translation>A lo que se suele ajustar con la salida tapada.</translation>
    </message>
    <message>
        <source>Restrictor diameter</source>
        <translation>Diámetro del restrictor</translation>
    </message>
    <message>
        <source>Often 1 mm. Readings are converted by it; the drilled hole checks it.</source>
        <translation>A menudo 1 mm. Con él se convierten las lecturas; el agujero taladrado lo verifica.</translation>
    </message>
    <message>
        <source>Restrictor length</source>
        <translation>Longitud del restrictor</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <translation>Coeficiente de descarga</translation>
    </message>
    <message>
        <source>Leave it empty if you don&apos;t know: the app assumes one.</source>
        <translation>Dejarlo vacío si no se sabe: la app supone uno.</translation>
    </message>
    <message>
        <source>Gauge before the restrictor</source>
        <translation>Manómetro antes del restrictor</translation>
    </message>
    <message>
        <source>Tester</source>
        <translation>Comprobador</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Home-made</source>
        <translation>Casero</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Gauge after the restrictor</source>
        <translation>Manómetro después del restrictor</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manómetro</translation>
    </message>
    <message>
        <source>Air and restrictor</source>
        <translation>Aire y restrictor</translation>
    </message>
</context>
<context>
    <name>TesterCardPage</name>
    <message>
        <source>Testers</source>
        <translation>Comprobadores</translation>
    </message>
    <message>
        <source>This tester is gone</source>
        <translation>Este comprobador ya no está</translation>
    </message>
    <message>
        <source>It was deleted. Undo brings it back; otherwise go back to the list.</source>
        <translation>Se borró. Con Deshacer vuelve; si no, volver a la lista.</translation>
    </message>
    <message>
        <source>Self-checks</source>
        <translation>Verificaciones</translation>
    </message>
    <message>
        <source>Before you blame the engine.</source>
        <translation>Antes de culpar al motor.</translation>
    </message>
    <message numerus="yes">
        <source>It can&apos;t be deleted: %n sessions and readings were taken with it, and their figures need it. If it is no longer used, say so in its name, so that nobody takes it by mistake.</source>
        <translation>
            <numerusform>No se puede borrar: una sesión o lectura se hizo con él, y sus cifras lo necesitan. Si ya no se usa, decirlo en el nombre, para que nadie lo tome por error.</numerusform>
            <numerusform>No se puede borrar: %n sesiones y lecturas se hicieron con él, y sus cifras lo necesitan. Si ya no se usa, decirlo en el nombre, para que nadie lo tome por error.</numerusform>
        </translation>
    </message>
    <message>
        <source>Change its name</source>
        <translation>Cambiar el nombre</translation>
    </message>
    <message>
        <source>Delete this tester</source>
        <translation>Borrar este comprobador</translation>
    </message>
    <message>
        <source>Delete %1?</source>
        <translation>¿Borrar %1?</translation>
    </message>
    <message>
        <source>Its dial and its checks go with it. No session and no reading was taken with it. Undo brings it back, also later from More, until something else is done.</source>
        <translation>Con él se van su escala y sus comprobaciones. No se hizo ninguna sesión ni lectura con él. Deshacer lo recupera, también más tarde desde Más, hasta que se haga otra cosa.</translation>
    </message>
    <message>
        <source>Check: %1</source>
        <translation>Verificar: %1</translation>
    </message>
</context>
<context>
    <name>TesterCheckSheet</name>
    <message>
        <source>Drilled hole</source>
        <translation>Agujero taladrado</translation>
    </message>
    <message>
        <source>The reference shows</source>
        <translation>La referencia marca</translation>
    </message>
    <message>
        <source>This gauge shows</source>
        <translation>Este manómetro marca</translation>
    </message>
    <message>
        <source>Set pressure</source>
        <translation>Presión ajustada</translation>
    </message>
    <message>
        <source>The gauge shows</source>
        <translation>El manómetro marca</translation>
    </message>
    <message>
        <source>Last time: %1</source>
        <translation>La última vez: %1</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Failed</source>
        <translation>No pasa</translation>
    </message>
    <message>
        <source>Passed</source>
        <translation>Pasa</translation>
    </message>
</context>
<context>
    <name>TesterChecks</name>
    <message>
        <source>Outlet blocked</source>
        <translation>Salida tapada</translation>
    </message>
    <message>
        <source>Holds after cranking</source>
        <translation>Mantiene tras dar arranque</translation>
    </message>
    <message>
        <source>Needle at rest</source>
        <translation>Aguja en reposo</translation>
    </message>
    <message>
        <source>Drilled hole</source>
        <translation>Agujero taladrado</translation>
    </message>
    <message>
        <source>Against a reference</source>
        <translation>Frente a una referencia</translation>
    </message>
    <message>
        <source>Close the outlet and pump to the set pressure: the needle must not sink.</source>
        <translation>Cerrar la salida y bombear hasta la presión ajustada: la aguja no debe bajar.</translation>
    </message>
    <message>
        <source>Close the outlet: it must read 0 % leakage.</source>
        <translation>Cerrar la salida: debe marcar 0 % de pérdida.</translation>
    </message>
    <message>
        <source>After cranking the gauge must not sink. If it does, the check valve or an O-ring leaks and every reading is low.</source>
        <translation>Después de dar arranque el manómetro no debe bajar. Si baja, pierde la válvula antirretorno o una junta tórica, y todas las lecturas son bajas.</translation>
    </message>
    <message>
        <source>With no pressure the needle must stand at zero. Type what it shows.</source>
        <translation>Sin presión la aguja debe estar en cero. Escribir lo que marca.</translation>
    </message>
    <message>
        <source>Put a plate with a drilled hole of known diameter at the outlet, set the usual pressure and type what is held. It shows how much air the restrictor passes.</source>
        <translation>Poner en la salida una placa con un agujero taladrado de diámetro conocido, ajustar la presión usual y escribir lo que se mantiene. Muestra cuánto aire deja pasar el restrictor.</translation>
    </message>
    <message>
        <source>Put a gauge that you trust on the same line and type what both show.</source>
        <translation>Poner en la misma línea un manómetro de confianza y escribir lo que marcan los dos.</translation>
    </message>
    <message>
        <source>Never checked</source>
        <translation>Nunca verificado</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>ajustada %1</translation>
    </message>
    <message>
        <source>showed %1</source>
        <translation>marcó %1</translation>
    </message>
</context>
<context>
    <name>TestersPage</name>
    <message>
        <source>Testers</source>
        <translation>Comprobadores</translation>
    </message>
    <message>
        <source>No tester yet</source>
        <translation>Aún sin comprobadores</translation>
    </message>
    <message>
        <source>A reading is only as good as its gauge. Type the gauge in once: range, class, hose. Home-made ones are normal.</source>
        <translation>Una lectura vale solo lo que su manómetro. Introducir el manómetro una vez: rango, clase, manguera. Los caseros son normales.</translation>
    </message>
    <message>
        <source>Add a tester</source>
        <translation>Añadir un comprobador</translation>
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
        <translation>La biblioteca no se puede abrir</translation>
    </message>
    <message>
        <source>Close Lapwing</source>
        <translation>Cerrar Lapwing</translation>
    </message>
</context>
<context>
    <name>UndoCorner</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>UnitSheet</name>
    <message>
        <source>Which unit?</source>
        <translation>¿Qué unidad?</translation>
    </message>
</context>
<context>
    <name>VersionFields</name>
    <message>
        <source>Here</source>
        <translation>Aquí</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>En el archivo</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nada anotado</translation>
    </message>
</context>
<context>
    <name>Visit</name>
    <message>
        <source>Symptoms</source>
        <translation>Síntomas</translation>
    </message>
    <message>
        <source>Distance or hours run</source>
        <translation>Distancia u horas de marcha</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>As found, after the repair, a year later.</source>
        <translation>Como se encontró, tras la reparación, un año después.</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Número de orden de trabajo</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Queja</translation>
    </message>
    <message>
        <source>In the owner&apos;s words</source>
        <translation>En palabras del propietario</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>Warm or cold</source>
        <translation>Caliente o frío</translation>
    </message>
    <message>
        <source>Cold against cold, warm against warm: only then two visits can be compared.</source>
        <translation>Frío contra frío, caliente contra caliente: solo así se pueden comparar dos visitas.</translation>
    </message>
    <message>
        <source>Coolant temperature</source>
        <translation>Temperatura del refrigerante</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Altitude of the shop</source>
        <translation>Altitud del taller</translation>
    </message>
    <message>
        <source>Barometer at the shop</source>
        <translation>Barómetro en el taller</translation>
    </message>
    <message>
        <source>As it reads here, not brought down to sea level. It wins over the altitude.</source>
        <translation>Como marca aquí, sin reducir al nivel del mar. Vale más que la altitud.</translation>
    </message>
    <message>
        <source>Cranking and holding</source>
        <translation>Arranque y sujeción</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Mariposa</translation>
    </message>
    <message>
        <source>Induction</source>
        <translation>Admisión</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Batería</translation>
    </message>
    <message>
        <source>Cranked by</source>
        <translation>Girado con</translation>
    </message>
    <message>
        <source>Cranking speed</source>
        <translation>Velocidad de arranque</translation>
    </message>
    <message>
        <source>Crank held by</source>
        <translation>Cigüeñal sujeto con</translation>
    </message>
    <message>
        <source>In the leak-down test the air can turn the engine.</source>
        <translation>En la prueba de estanqueidad el aire puede hacer girar el motor.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>No such tester yet. Add it here, and it is used in this session.</source>
        <translation>Todavía no hay ninguno así. El que se añada aquí se usa en esta sesión.</translation>
    </message>
    <message>
        <source>Testers used</source>
        <translation>Comprobadores usados</translation>
    </message>
    <message>
        <source>Compression gauge</source>
        <translation>Manómetro de compresión</translation>
    </message>
    <message>
        <source>Leak-down tester</source>
        <translation>Comprobador de estanqueidad</translation>
    </message>
    <message>
        <source>Crankcase tester</source>
        <translation>Comprobador del cárter</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>VisitPage</name>
    <message>
        <source>Complaint and conditions</source>
        <translation>Queja y condiciones</translation>
    </message>
    <message>
        <source>Add a tester</source>
        <translation>Añadir un comprobador</translation>
    </message>
    <message>
        <source>Testers</source>
        <translation>Comprobadores</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>VoiceNotePage</name>
    <message>
        <source>Voice note</source>
        <translation>Nota de voz</translation>
    </message>
    <message>
        <source>Nothing is recorded</source>
        <translation>No se está grabando nada</translation>
    </message>
    <message>
        <source>Recording. Leaving this page keeps what was said.</source>
        <translation>Grabando. Al salir de esta página se conserva lo dicho.</translation>
    </message>
    <message>
        <source>Keeping it ...</source>
        <translation>Guardándola ...</translation>
    </message>
    <message>
        <source>✓ Kept</source>
        <translation>✓ Guardado</translation>
    </message>
    <message>
        <source>Say what you hear, see and smell.</source>
        <translation>Decir lo que se oye, se ve y se huele.</translation>
    </message>
</context>
<context>
    <name>VoiceRow</name>
    <message>
        <source>%1, %2 of %3</source>
        <translation>%1, %2 de %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 · its file is missing</source>
        <translation>%1 · falta su archivo</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
</context>
<context>
    <name>WhereItLeaks</name>
    <message>
        <source>Where it leaks</source>
        <translation>Por dónde pierde</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Odds under the app&apos;s working assumptions; not yet counted on real engines.</source>
        <translation>Probabilidades según los supuestos de trabajo de la app; aún no contadas en motores reales.</translation>
    </message>
    <message>
        <source>Show the shares</source>
        <translation>Mostrar el reparto</translation>
    </message>
</context>
<context>
    <name>WhichEngineSheet</name>
    <message>
        <source>New session on which engine?</source>
        <translation>¿Nueva sesión en qué motor?</translation>
    </message>
    <message>
        <source>Search name, tags, description</source>
        <translation>Buscar nombre, etiquetas, descripción</translation>
    </message>
    <message>
        <source>Add an engine</source>
        <translation>Añadir un motor</translation>
    </message>
</context>
<context>
    <name>WipeLock</name>
    <message>
        <source>Wipe the glass</source>
        <translation>Limpiar el cristal</translation>
    </message>
    <message numerus="yes">
        <source>Touches count again in %n second(s).</source>
        <translation>
            <numerusform>Los toques vuelven a contar en %n segundo.</numerusform>
            <numerusform>Los toques vuelven a contar en %n segundos.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::AgainModel</name>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, cilindro %2</translation>
    </message>
    <message>
        <source>It goes into the session of %1, which is open for it.</source>
        <translation>Va a la sesión del %1, que está abierta para ello.</translation>
    </message>
    <message>
        <source>Readings under other conditions can&apos;t be averaged with those that you have. They get a session of their own, and Before and after holds the two side by side.</source>
        <translation>Las lecturas en otras condiciones no se pueden promediar con las que ya hay. Tienen su propia sesión, y «Antes y después» pone las dos lado a lado.</translation>
    </message>
    <message>
        <source>In the session before: %1</source>
        <translation>En la sesión anterior: %1</translation>
    </message>
    <message>
        <source>Go on there</source>
        <translation>Seguir allí</translation>
    </message>
    <message>
        <source>Start a new session</source>
        <translation>Empezar una sesión nueva</translation>
    </message>
    <message>
        <source>Throttle open, warm</source>
        <translation>Mariposa abierta, caliente</translation>
    </message>
    <message>
        <source>Throttle open</source>
        <translation>Mariposa abierta</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>Caliente</translation>
    </message>
    <message>
        <source>Tested again</source>
        <translation>Probado otra vez</translation>
    </message>
</context>
<context>
    <name>lapwing::AppContext</name>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Rehecho: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::AssumptionsModel</name>
    <message>
        <source>What counts as sealing well, and clearances</source>
        <translation>Qué cuenta como sellar bien, y juegos de válvulas</translation>
    </message>
    <message>
        <source>Leak hunt</source>
        <translation>Búsqueda de fugas</translation>
    </message>
    <message>
        <source>Wet test</source>
        <translation>Prueba húmeda</translation>
    </message>
    <message>
        <source>Engine data and cranking</source>
        <translation>Datos del motor y arranque</translation>
    </message>
    <message>
        <source>How readings scatter</source>
        <translation>Cómo se dispersan las lecturas</translation>
    </message>
    <message>
        <source>Readings not yet taken</source>
        <translation>Lecturas aún no tomadas</translation>
    </message>
    <message>
        <source>What does not fit together</source>
        <translation>Lo que no encaja</translation>
    </message>
    <message>
        <source>Behind the odds</source>
        <translation>Detrás de las probabilidades</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Otros</translation>
    </message>
    <message>
        <source>Other sets</source>
        <translation>Otros conjuntos</translation>
    </message>
    <message>
        <source>The odds are worked out under these as well: where they name another main leak, it is said that they depend on assumptions</source>
        <translation>Las probabilidades se calculan también con estos: donde nombran otra fuga principal, se dice que dependen de supuestos</translation>
    </message>
    <message>
        <source>Findings and calculators</source>
        <translation>Diagnóstico y calculadoras</translation>
    </message>
    <message>
        <source>Rules, gauges and the cranking model</source>
        <translation>Reglas, manómetros y el modelo de arranque</translation>
    </message>
</context>
<context>
    <name>lapwing::BackupModel</name>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Testers and names of signatures</source>
        <translation>Comprobadores y nombres de firmas</translation>
    </message>
    <message>
        <source>Writing the backup</source>
        <translation>Escribiendo la copia de seguridad</translation>
    </message>
    <message>
        <source>Where the backup goes</source>
        <translation>Adónde va la copia de seguridad</translation>
    </message>
    <message>
        <source>Everything is backed up, %1: %2</source>
        <translation>Todo está copiado, %1: %2</translation>
    </message>
    <message>
        <source>Backed up, %1: %2. Everything is in it but what is no longer on this device:</source>
        <translation>Copiado, %1: %2. Está todo menos lo que ya no hay en este dispositivo:</translation>
    </message>
    <message>
        <source>Open a backup</source>
        <translation>Abrir una copia de seguridad</translation>
    </message>
    <message>
        <source>Checking the backup</source>
        <translation>Comprobando la copia de seguridad</translation>
    </message>
    <message>
        <source>Damaged in part: the rest of it can be restored. %1</source>
        <translation>Dañado en parte: el resto se puede restaurar. %1</translation>
    </message>
    <message>
        <source>Damaged in this backup: not restored. %1</source>
        <translation>Dañado en esta copia de seguridad: no se restaura. %1</translation>
    </message>
    <message numerus="yes">
        <source>The backup holds %n engines.</source>
        <translation>
            <numerusform>La copia de seguridad contiene %n motor.</numerusform>
            <numerusform>La copia de seguridad contiene %n motores.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not here yet: %1. Here already and unchanged: %2.</source>
        <translation>Aún no están aquí: %1. Ya están aquí y sin cambios: %2.</translation>
    </message>
    <message>
        <source>This backup is damaged: %1 of %2 engines in it are whole. Look for another copy of it; what is whole can be restored now.</source>
        <translation>Esta copia de seguridad está dañada: %1 de %2 motores están enteros. Buscar otra copia; lo que está entero se puede restaurar ahora.</translation>
    </message>
    <message>
        <source>What was lost already when it was made:</source>
        <translation>Lo que ya se había perdido cuando se hizo:</translation>
    </message>
    <message>
        <source>These photos tell where they were taken. They are kept as they are:</source>
        <translation>Estas fotos revelan dónde se tomaron. Se conservan tal como están:</translation>
    </message>
    <message>
        <source>Testers of its own: %1.</source>
        <translation>Comprobadores propios: %1.</translation>
    </message>
    <message>
        <source>Bringing it in</source>
        <translation>Incorporando</translation>
    </message>
    <message>
        <source>Stopped after %1 of %2 engines. Those are here whole; restore again to bring in the rest.</source>
        <translation>Parado después de %1 de %2 motores. Esos están aquí enteros; restaurar de nuevo para incorporar los demás.</translation>
    </message>
    <message>
        <source>Here now with all that was in it: %1 of %2 engines in the backup. Nothing that was here was taken away.</source>
        <translation>Aquí ya con todo lo que traía: %1 de %2 motores de la copia. No se quitó nada de lo que había.</translation>
    </message>
    <message>
        <source>Not restored, because damaged in the backup: %1.</source>
        <translation>No restaurado, por estar dañado en la copia de seguridad: %1.</translation>
    </message>
    <message>
        <source>Records with two versions: %1. The engine cards say where to choose.</source>
        <translation>Registros con dos versiones: %1. Las fichas de los motores dicen dónde elegir.</translation>
    </message>
</context>
<context>
    <name>lapwing::BringInModel</name>
    <message>
        <source>Session files</source>
        <translation>Archivos de sesión</translation>
    </message>
    <message>
        <source>Open a session file</source>
        <translation>Abrir un archivo de sesión</translation>
    </message>
    <message>
        <source>Demo: two invented engines</source>
        <translation>Demostración: dos motores inventados</translation>
    </message>
    <message>
        <source>Changed on both sides: both versions are kept, and you choose.</source>
        <translation>Cambiado en ambos lados: se conservan las dos versiones, y se puede elegir.</translation>
    </message>
    <message>
        <source>Changed by the sender after it was here: takes its place.</source>
        <translation>Cambiado por quien lo envía después de estar aquí: ocupa su lugar.</translation>
    </message>
</context>
<context>
    <name>lapwing::CalculatorModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1. %2. From: %3.</source>
        <translation>%1. %2. De: %3.</translation>
    </message>
</context>
<context>
    <name>lapwing::ChangesModel</name>
    <message>
        <source>Readings of two visits are needed to compare. Test again after the work.</source>
        <translation>Para comparar hacen falta lecturas de dos visitas. Probar de nuevo después del trabajo.</translation>
    </message>
    <message>
        <source>after your own call</source>
        <translation>después del propio dictamen</translation>
    </message>
</context>
<context>
    <name>lapwing::ClearancesModel</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
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
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como se encontró</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>como se dejó</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 %3, %4</source>
        <translation>Cilindro %1, %2 %3, %4</translation>
    </message>
    <message>
        <source>%1 (point placed; “%2” for %3)</source>
        <translation>%1 (coma puesta; «%2» para %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>wanted, cold</source>
        <translation>nominal, en frío</translation>
    </message>
    <message>
        <source>Wanted?</source>
        <translation>¿Nominal?</translation>
    </message>
    <message>
        <source>It is not on the engine card. Touch here to type it there.</source>
        <translation>No está en la ficha del motor. Tocar aquí para escribirlo allí.</translation>
    </message>
    <message>
        <source>adjust it, then test again, before any verdict on the valve</source>
        <translation>ajustarlo y probar de nuevo, antes de cualquier veredicto sobre la válvula</translation>
    </message>
    <message>
        <source>it opens late and is noisy, but it seats: adjust it</source>
        <translation>abre tarde y hace ruido, pero asienta: ajustarla</translation>
    </message>
    <message>
        <source>That is a very wide clearance. Is the unit right?</source>
        <translation>Es un juego muy grande. ¿Está bien la unidad?</translation>
    </message>
    <message>
        <source>%1, where %2 to %3 is wanted: is the point right?</source>
        <translation>%1, donde se pide de %2 a %3: ¿está bien la coma?</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Next valve</source>
        <translation>Válvula siguiente</translation>
    </message>
    <message>
        <source>Keep all the same</source>
        <translation>Guardar igual</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Keep, next valve</source>
        <translation>Guardar, siguiente</translation>
    </message>
    <message>
        <source>%1 kept: cylinder %2, %3 %4</source>
        <translation>%1 guardado: cilindro %2, %3 %4</translation>
    </message>
</context>
<context>
    <name>lapwing::ConflictsModel</name>
    <message>
        <source>changed %1</source>
        <translation>cambiado el %1</translation>
    </message>
    <message>
        <source>as first written</source>
        <translation>como se escribió al principio</translation>
    </message>
</context>
<context>
    <name>lapwing::EngineCardForm</name>
    <message numerus="yes">
        <source>%n cylinders</source>
        <translation>
            <numerusform>%n cilindro</numerusform>
            <numerusform>%n cilindros</numerusform>
        </translation>
    </message>
    <message>
        <source>retest planned for %1</source>
        <translation>nueva prueba prevista para el %1</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
</context>
<context>
    <name>lapwing::EngineGlances</name>
    <message>
        <source>%1 in range</source>
        <translation>%1 en rango</translation>
    </message>
    <message>
        <source>%1 borderline</source>
        <translation>%1 en el límite</translation>
    </message>
    <message>
        <source>%1 fault</source>
        <translation>%1 con fallo</translation>
    </message>
    <message>
        <source>%1 without a limit</source>
        <translation>%1 sin límite</translation>
    </message>
    <message>
        <source>%1 not measured</source>
        <translation>%1 sin medir</translation>
    </message>
    <message>
        <source>%1; %2 of them from an earlier visit</source>
        <translation>%1; %2 de ellos de una visita anterior</translation>
    </message>
    <message numerus="yes">
        <source>%n cylinders</source>
        <translation>
            <numerusform>%n cilindro</numerusform>
            <numerusform>%n cilindros</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::EngineListModel</name>
    <message>
        <source>New session of %1: no reading yet</source>
        <translation>Nueva sesión del %1: aún sin lecturas</translation>
    </message>
    <message>
        <source>No session yet</source>
        <translation>Aún sin sesión</translation>
    </message>
    <message>
        <source>Retest planned for %1</source>
        <translation>Nueva prueba prevista para el %1</translation>
    </message>
    <message>
        <source>Retest due, planned for %1</source>
        <translation>Nueva prueba pendiente, prevista para el %1</translation>
    </message>
</context>
<context>
    <name>lapwing::EngineStarter</name>
    <message>
        <source>Number of cylinders</source>
        <translation>Número de cilindros</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como se encontró</translation>
    </message>
    <message>
        <source>After repair</source>
        <translation>Tras la reparación</translation>
    </message>
</context>
<context>
    <name>lapwing::EvidenceBacked</name>
    <message>
        <source>%1, differs from what was typed</source>
        <translation>%1, difiere de lo escrito</translation>
    </message>
</context>
<context>
    <name>lapwing::FindingsModel</name>
    <message>
        <source>Cylinder %1: %2</source>
        <translation>Cilindro %1: %2</translation>
    </message>
    <message>
        <source>Another cause: %1</source>
        <translation>Otra causa: %1</translation>
    </message>
    <message>
        <source>dry test, mean of %1</source>
        <translation>prueba en seco, media de %1</translation>
    </message>
    <message>
        <source>dry test</source>
        <translation>prueba en seco</translation>
    </message>
    <message>
        <source>of it on the first puff</source>
        <translation>de ella en la primera embolada</translation>
    </message>
    <message>
        <source>expected by the model, no factory figure</source>
        <translation>espera el modelo, sin cifra de fábrica</translation>
    </message>
    <message>
        <source>had nothing lain before the check valve</source>
        <translation>si no hubiera nada antes de la válvula antirretorno</translation>
    </message>
    <message>
        <source>leakage: held %1 of %2</source>
        <translation>pérdida: mantuvo %1 de %2</translation>
    </message>
    <message>
        <source>round hole that would leak as much</source>
        <translation>agujero redondo que perdería lo mismo</translation>
    </message>
    <message>
        <source>of free air leaks out</source>
        <translation>de aire libre que se pierde</translation>
    </message>
    <message>
        <source>wet test</source>
        <translation>prueba húmeda</translation>
    </message>
    <message>
        <source>over the dry reading</source>
        <translation>sobre la lectura en seco</translation>
    </message>
    <message>
        <source>of rise is explained by the oil&apos;s volume alone</source>
        <translation>de subida que explica por sí solo el volumen del aceite</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>plug hole of %1</source>
        <translation>agujero de bujía de %1</translation>
    </message>
    <message>
        <source>lower end of the factory range here</source>
        <translation>extremo inferior del rango de fábrica aquí</translation>
    </message>
    <message>
        <source>lower end of the factory range</source>
        <translation>extremo inferior del rango de fábrica</translation>
    </message>
    <message>
        <source>upper end of the factory range here</source>
        <translation>extremo superior del rango de fábrica aquí</translation>
    </message>
    <message>
        <source>upper end of the factory range</source>
        <translation>extremo superior del rango de fábrica</translation>
    </message>
    <message>
        <source>factory limit here</source>
        <translation>límite de fábrica aquí</translation>
    </message>
    <message>
        <source>factory limit</source>
        <translation>límite de fábrica</translation>
    </message>
    <message>
        <source>most allowed between cylinders</source>
        <translation>máximo admitido entre cilindros</translation>
    </message>
    <message>
        <source>Working assumptions version %1.</source>
        <translation>Supuestos de trabajo, versión %1.</translation>
    </message>
</context>
<context>
    <name>lapwing::HandOverModel</name>
    <message>
        <source>Show in folder</source>
        <translation>Mostrar en la carpeta</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Choose at least one visit.</source>
        <translation>Elegir al menos una visita.</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::HistoryModel</name>
    <message>
        <source>Nothing to draw yet: from the second session with the same test on, every cylinder&apos;s readings stand here, all as one tester would show them.</source>
        <translation>Todavía no hay nada que dibujar: desde la segunda sesión con la misma prueba, aquí están las lecturas de cada cilindro, todas como las mostraría un mismo comprobador.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>after a repair</source>
        <translation>tras una reparación</translation>
    </message>
    <message>
        <source>not comparable with the newest</source>
        <translation>no comparable con la más reciente</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>medido %1</translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation>A lo largo de los años</translation>
    </message>
    <message>
        <source>By the meter</source>
        <translation>Por el contador</translation>
    </message>
    <message>
        <source>Note the hours or the mileage at every visit, and the readings can be drawn by them too.</source>
        <translation>Anotando las horas o el kilometraje en cada visita, las lecturas también se pueden dibujar según ellos.</translation>
    </message>
    <message numerus="yes">
        <source>%n visits where the meter was not read are not drawn.</source>
        <translation>
            <numerusform>%n visita sin lectura del contador no está dibujada.</numerusform>
            <numerusform>%n visitas sin lectura del contador no están dibujadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The meter read less than at a visit before: it was changed, or misread.</source>
        <translation>El contador marcaba menos que en una visita anterior: se cambió o se leyó mal.</translation>
    </message>
    <message>
        <source>Each ± here also holds what readings scatter by from one day to the next. Findings and the results in the report leave that out, so the same reading has a smaller ± there.</source>
        <translation>Cada ± incluye aquí también lo que varían las lecturas de un día a otro. Los resultados y el informe no lo incluyen: allí la misma lectura tiene un ± menor.</translation>
    </message>
    <message numerus="yes">
        <source>%1 over %n visits; the list below says the same.</source>
        <translation>
            <numerusform>%1 en %n visita; la lista de abajo dice lo mismo.</numerusform>
            <numerusform>%1 en %n visitas; la lista de abajo dice lo mismo.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lapwing::KeyedModel</name>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::LeakHuntModel</name>
    <message>
        <source>Only counts while its valves are shut</source>
        <translation>Solo cuenta mientras sus válvulas están cerradas</translation>
    </message>
    <message>
        <source>Counts: its valves are shut now</source>
        <translation>Cuenta: sus válvulas están cerradas ahora</translation>
    </message>
    <message>
        <source>Counts: a valve of it may be open, but the manifolds are separate</source>
        <translation>Cuenta: una válvula suya puede estar abierta, pero los colectores son separados</translation>
    </message>
    <message>
        <source>Its intake valve is open now: counts only where the intake is quiet</source>
        <translation>Su válvula de admisión está abierta ahora: cuenta solo si en la admisión no se oye nada</translation>
    </message>
    <message>
        <source>Its exhaust valve is open now: counts only where the exhaust is quiet</source>
        <translation>Su válvula de escape está abierta ahora: cuenta solo si en el escape no se oye nada</translation>
    </message>
    <message>
        <source>It stands on overlap, both valves a little open: counts only where intake and exhaust are quiet</source>
        <translation>Está en cruce de válvulas, con las dos algo abiertas: cuenta solo si en admisión y escape no se oye nada</translation>
    </message>
    <message>
        <source>A valve of it may be open: counts only where intake and exhaust are quiet</source>
        <translation>Una válvula suya puede estar abierta: cuenta solo si en admisión y escape no se oye nada</translation>
    </message>
    <message>
        <source>No leak-down reading of this cylinder yet</source>
        <translation>Aún no hay lectura de estanqueidad de este cilindro</translation>
    </message>
    <message>
        <source>held %1 of %2</source>
        <translation>mantuvo %1 de %2</translation>
    </message>
    <message>
        <source>%1, not counted</source>
        <translation>%1, no cuenta</translation>
    </message>
    <message>
        <source>%1, leakage %2, mean of %3</source>
        <translation>%1, fuga %2, media de %3</translation>
    </message>
    <message>
        <source>%1, leakage %2</source>
        <translation>%1, pérdida %2</translation>
    </message>
    <message>
        <source>Plug hole of cylinder %1</source>
        <translation>Agujero de bujía del cilindro %1</translation>
    </message>
    <message>
        <source>Throttle or flap open if there is one, hose at the intake</source>
        <translation>Mariposa o chapaleta abierta si la hay, manguera en la admisión</translation>
    </message>
    <message>
        <source>Throttle open, hose at the intake</source>
        <translation>Mariposa abierta, manguera en la admisión</translation>
    </message>
    <message>
        <source>Hose at the tail pipe</source>
        <translation>Manguera en el tubo de escape</translation>
    </message>
    <message>
        <source>Oil filler open, thin glove over it: rings always leak a little</source>
        <translation>Tapón de llenado abierto, guante fino encima: los segmentos siempre pierden un poco</translation>
    </message>
    <message>
        <source>Piston over the port: air past the rings comes out here</source>
        <translation>Pistón sobre la lumbrera: por aquí sale el aire que pasa por los segmentos</translation>
    </message>
    <message>
        <source>Carburettor: air past the rings into the crankcase</source>
        <translation>Carburador: aire que pasa por los segmentos al cárter</translation>
    </message>
    <message>
        <source>Soapy water round the joint</source>
        <translation>Agua jabonosa alrededor de la junta</translation>
    </message>
    <message>
        <source>Bubbles in the filler; never open a hot cap</source>
        <translation>Burbujas en la boca de llenado; nunca abrir un tapón caliente</translation>
    </message>
    <message>
        <source>At its outlet</source>
        <translation>En su salida</translation>
    </message>
    <message>
        <source>Crankcase test: soapy water</source>
        <translation>Prueba del cárter: agua jabonosa</translation>
    </message>
    <message>
        <source>Crankcase test: at the carburettor</source>
        <translation>Prueba del cárter: en el carburador</translation>
    </message>
    <message>
        <source>Anywhere else: plug thread, crack, adapter ring</source>
        <translation>En cualquier otro sitio: rosca de bujía, grieta, anillo del adaptador</translation>
    </message>
    <message>
        <source>Next TDC</source>
        <translation>Próximo PMS</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Juego de válvulas</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Done, next %1 (turn %2°)</source>
        <translation>Listo, sigue %1 (girar %2°)</translation>
    </message>
    <message>
        <source>Done, next %1</source>
        <translation>Listo, sigue %1</translation>
    </message>
</context>
<context>
    <name>lapwing::MyCallModel</name>
    <message>
        <source>(Called after a report with the findings was written.)</source>
        <translation>(Dictamen dado después de escribirse un informe con el diagnóstico.)</translation>
    </message>
</context>
<context>
    <name>lapwing::NeedleModel</name>
    <message>
        <source>Say in Conditions which tester is used: the range of its gauge is needed to read the photo.</source>
        <translation>Decir en Condiciones qué comprobador se usa: para leer la foto hace falta el rango de su manómetro.</translation>
    </message>
    <message>
        <source>This scale sweeps about %1 degrees, the tester&apos;s card says %2: correct it there, or see whether it is that tester&apos;s gauge.</source>
        <translation>Esta escala abarca unos %1 grados, la ficha del comprobador dice %2: corregirlo allí, o mirar si es el manómetro de ese comprobador.</translation>
    </message>
    <message>
        <source>Reading the needle ...</source>
        <translation>Leyendo la aguja ...</translation>
    </message>
    <message>
        <source>Reads %1</source>
        <translation>Marca %1</translation>
    </message>
    <message>
        <source>, you typed %1</source>
        <translation>, se escribió %1</translation>
    </message>
    <message>
        <source> (needle set by hand)</source>
        <translation> (aguja puesta a mano)</translation>
    </message>
    <message>
        <source>%1 as read</source>
        <translation>%1 leído</translation>
    </message>
    <message>
        <source>%1 as typed</source>
        <translation>%1 escrito</translation>
    </message>
    <message>
        <source>leave open</source>
        <translation>dejar abierto</translation>
    </message>
    <message>
        <source>photo only</source>
        <translation>solo foto</translation>
    </message>
    <message>
        <source>Keep %1 as a reading: %2</source>
        <translation>Guardar %1 como lectura: %2</translation>
    </message>
    <message>
        <source>Read again with the gauge&apos;s range as it is now: %1</source>
        <translation>Leer de nuevo con el rango actual del manómetro: %1</translation>
    </message>
</context>
<context>
    <name>lapwing::NewsModel</name>
    <message>
        <source>Handed over by %1</source>
        <translation>Entregado por %1</translation>
    </message>
    <message>
        <source>brought in %1</source>
        <translation>incorporado el %1</translation>
    </message>
    <message>
        <source>two versions</source>
        <translation>dos versiones</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
</context>
<context>
    <name>lapwing::NextTdcModel</name>
    <message>
        <source>stands at TDC now</source>
        <translation>está ahora en el PMS</translation>
    </message>
    <message>
        <source>turn about %1°</source>
        <translation>girar unos %1°</translation>
    </message>
    <message>
        <source>turn %1°</source>
        <translation>girar %1°</translation>
    </message>
    <message>
        <source>about %1°</source>
        <translation>unos %1°</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>The firing intervals are not on the engine card: taken as even. Make sure of the TDC at the plug hole.</source>
        <translation>Los intervalos de encendido no están en la ficha del motor: se toman como iguales. Asegurar el PMS en el orificio de la bujía.</translation>
    </message>
    <message>
        <source>With bore, stroke and rod on the engine card the app can say how hard %1 pushes on the crank.</source>
        <translation>Con diámetro, carrera y biela en la ficha del motor la app puede decir con qué fuerza empujan %1 el cigüeñal.</translation>
    </message>
    <message>
        <source>at %1° from TDC: %2 at the end of a 30 cm bar</source>
        <translation>a %1° del PMS: %2 en el extremo de una barra de 30 cm</translation>
    </message>
    <message>
        <source>Where is TDC?</source>
        <translation>¿Dónde está el PMS?</translation>
    </message>
    <message>
        <source>Turn by hand with a thumb or a whistle at the plug hole: in a two-stroke every way up compresses. Stop at the top, where both ports are shut.</source>
        <translation>Girar a mano con un pulgar o un silbato en el agujero de bujía: en un dos tiempos cada subida comprime. Parar arriba del todo, donde las dos lumbreras están cerradas.</translation>
    </message>
    <message>
        <source>Compression or overlap?</source>
        <translation>¿Compresión o cruce de válvulas?</translation>
    </message>
    <message>
        <source>Turn by hand with a thumb or a whistle at the plug hole: air that pushes out on the way up means compression. If nothing pushes, the valves overlap: turn once more, all the way round.</source>
        <translation>Girar a mano con un pulgar o un silbato en el agujero de bujía: si el aire empuja hacia fuera al subir, es compresión. Si nada empuja, las válvulas están en cruce: girar una vez más, la vuelta entera.</translation>
    </message>
</context>
<context>
    <name>lapwing::PadLines</name>
    <message>
        <source>Factory limit: %1.</source>
        <translation>Límite de fábrica: %1.</translation>
    </message>
    <message>
        <source>Factory range: %1 to %2.</source>
        <translation>Rango de fábrica: %1 a %2.</translation>
    </message>
    <message>
        <source>leakage on this tester</source>
        <translation>pérdida en este comprobador</translation>
    </message>
    <message>
        <source>hole would leak as much</source>
        <translation>un agujero así perdería lo mismo</translation>
    </message>
    <message>
        <source>give or take the gauge</source>
        <translation>con el margen del manómetro</translation>
    </message>
    <message>
        <source>over the dry reading</source>
        <translation>sobre la lectura en seco</translation>
    </message>
</context>
<context>
    <name>lapwing::PadModel</name>
    <message>
        <source>Keep oil</source>
        <translation>Guardar aceite</translation>
    </message>
    <message>
        <source>Keep first puff</source>
        <translation>Guardar primera embolada</translation>
    </message>
    <message>
        <source>Keep what is new</source>
        <translation>Guardar lo nuevo</translation>
    </message>
    <message>
        <source>End pressure first</source>
        <translation>Antes, presión final</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Next %1</source>
        <translation>Sigue %1</translation>
    </message>
    <message>
        <source>Keep, oil not noted</source>
        <translation>Guardar, aceite sin anotar</translation>
    </message>
    <message>
        <source>Set first</source>
        <translation>Falta la ajustada</translation>
    </message>
    <message>
        <source>Keep …</source>
        <translation>Guardar …</translation>
    </message>
    <message>
        <source>Keep all the same</source>
        <translation>Guardar igual</translation>
    </message>
    <message>
        <source>Keep instead</source>
        <translation>Guardar en su lugar</translation>
    </message>
    <message>
        <source>Keep, listen</source>
        <translation>Guardar, escuchar</translation>
    </message>
    <message>
        <source>Keep as well</source>
        <translation>Guardar también</translation>
    </message>
    <message>
        <source>Keep as well, next %1</source>
        <translation>Guardar también, sigue %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Keep, next %1</source>
        <translation>Guardar, sigue %1</translation>
    </message>
    <message>
        <source>Set pressure?</source>
        <translation>¿Presión ajustada?</translation>
    </message>
    <message>
        <source>leakage is counted from it: type it first</source>
        <translation>la fuga se cuenta desde ella: escribirla primero</translation>
    </message>
    <message>
        <source>Minutes?</source>
        <translation>¿Minutos?</translation>
    </message>
    <message>
        <source>without them the end pressure says little: type how long it stood</source>
        <translation>sin ellos la presión final dice poco: escribir cuánto estuvo</translation>
    </message>
    <message>
        <source>End pressure?</source>
        <translation>¿Presión final?</translation>
    </message>
    <message>
        <source>type what the gauge shows after the minutes</source>
        <translation>escribir lo que marca el manómetro tras los minutos</translation>
    </message>
    <message>
        <source>How much oil?</source>
        <translation>¿Cuánto aceite?</translation>
    </message>
    <message>
        <source>what the rise means hangs on it: type it, or keep without</source>
        <translation>de ello depende qué significa la subida: escribirlo, o guardar sin él</translation>
    </message>
    <message>
        <source>oil %1</source>
        <translation>aceite %1</translation>
    </message>
    <message>
        <source>first puff %1</source>
        <translation>primera embolada %1</translation>
    </message>
    <message numerus="yes">
        <source>%n pulls</source>
        <translation>
            <numerusform>%n embolada</numerusform>
            <numerusform>%n emboladas</numerusform>
        </translation>
    </message>
    <message>
        <source>Cylinder %1: %2 kept</source>
        <translation>Cilindro %1: %2 guardado</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 guardado</translation>
    </message>
    <message>
        <source>Wet test of cylinder %1, %2</source>
        <translation>Prueba húmeda del cilindro %1, %2</translation>
    </message>
    <message>
        <source>After oil</source>
        <translation>Tras aceite</translation>
    </message>
    <message>
        <source>kept, and not counted with what was read before the oil</source>
        <translation>se guarda, y no se cuenta con lo leído antes del aceite</translation>
    </message>
    <message>
        <source>%1: is its oil still on the rings?</source>
        <translation>%1: ¿sigue su aceite en los segmentos?</translation>
    </message>
    <message>
        <source>read over the oil of another session&apos;s wet test</source>
        <translation>medido con el aceite de la prueba húmeda de otra sesión</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>con %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>%1 after %2: further apart than gauge and scatter explain.</source>
        <translation>%1 tras %2: más lejos de lo que explican el manómetro y la dispersión.</translation>
    </message>
    <message>
        <source>You typed %1, the photo reads %2.</source>
        <translation>Se escribió %1, la foto marca %2.</translation>
    </message>
    <message>
        <source>Keep %1 as the photo reads</source>
        <translation>Guardar %1, como marca la foto</translation>
    </message>
    <message>
        <source>Keep %1 as typed</source>
        <translation>Guardar %1, como se escribió</translation>
    </message>
    <message>
        <source>Keep as typed, leave open which holds</source>
        <translation>Guardar lo escrito y dejar abierto cuál vale</translation>
    </message>
    <message>
        <source>%1, or %2?</source>
        <translation>¿%1 o %2?</translation>
    </message>
    <message>
        <source>You typed %1. %2 would be unusual here, %3 not.</source>
        <translation>Se escribió %1. %2 serían raros aquí, %3 no.</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Son %1</translation>
    </message>
    <message>
        <source>First</source>
        <translation>1.ª</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>Pulls</source>
        <translation>Emboladas</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Aceite</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Ajustada</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Fuga</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenida</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>%1 (point placed; “%2” for %3)</source>
        <translation>%1 (coma puesta; «%2» para %3)</translation>
    </message>
    <message>
        <source>Crankcase</source>
        <translation>Cárter</translation>
    </message>
    <message>
        <source>Crankcase of cylinder %1</source>
        <translation>Cárter del cilindro %1</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>%1, first puff</source>
        <translation>%1, primera embolada</translation>
    </message>
    <message>
        <source>%1, final reading, again</source>
        <translation>%1, lectura final, de nuevo</translation>
    </message>
    <message>
        <source>%1, final reading</source>
        <translation>%1, lectura final</translation>
    </message>
    <message>
        <source>%1, pulls</source>
        <translation>%1, emboladas</translation>
    </message>
    <message>
        <source>%1, oil put in</source>
        <translation>%1, aceite echado</translation>
    </message>
    <message>
        <source>%1, set pressure</source>
        <translation>%1, presión ajustada</translation>
    </message>
    <message>
        <source>%1, how long</source>
        <translation>%1, cuánto tiempo</translation>
    </message>
    <message>
        <source>%1, leakage on the dial, %2 set</source>
        <translation>%1, fuga en la esfera, %2 ajustados</translation>
    </message>
    <message>
        <source>%1, leakage on the dial</source>
        <translation>%1, fuga en la esfera</translation>
    </message>
    <message>
        <source>%1, end pressure</source>
        <translation>%1, presión final</translation>
    </message>
    <message>
        <source>%1 held</source>
        <translation>%1 retenida</translation>
    </message>
    <message>
        <source>%1, end pressure, of %2 set</source>
        <translation>%1, presión final, de %2 ajustada</translation>
    </message>
    <message>
        <source>%1 held, of %2 set</source>
        <translation>%1 retenida, de %2 ajustada</translation>
    </message>
    <message>
        <source>%1, first puff %2</source>
        <translation>%1, primera embolada %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n pulls</source>
        <translation>
            <numerusform>%1, %n embolada</numerusform>
            <numerusform>%1, %n emboladas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, oil %2</source>
        <translation>%1, aceite %2</translation>
    </message>
    <message>
        <source>rings oiled before</source>
        <translation>segmentos aceitados antes</translation>
    </message>
    <message>
        <source>the engine held as one</source>
        <translation>el motor probado como uno solo</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>medido de nuevo</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>no cuenta</translation>
    </message>
    <message>
        <source>its photo reads %1: not settled</source>
        <translation>su foto indica %1: sin decidir</translation>
    </message>
    <message>
        <source>Oil: %1 to %2 ml</source>
        <translation>Aceite: de %1 a %2 ml</translation>
    </message>
    <message>
        <source>up to a teaspoon in a small cylinder; never more than %1 ml</source>
        <translation>como mucho una cucharadita en un cilindro pequeño; nunca más de %1 ml</translation>
    </message>
    <message>
        <source>up to a teaspoon in a cylinder of this size</source>
        <translation>como mucho una cucharadita en un cilindro de este tamaño</translation>
    </message>
    <message>
        <source>one to three teaspoons in a cylinder of this size</source>
        <translation>de una a tres cucharaditas en un cilindro de este tamaño</translation>
    </message>
</context>
<context>
    <name>lapwing::PhotoModel</name>
    <message>
        <source>Choose a photo</source>
        <translation>Elegir una foto</translation>
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
        <translation>Piezas: %1</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Por qué: %1</translation>
    </message>
    <message>
        <source>If it is left: %1</source>
        <translation>Si se deja: %1</translation>
    </message>
    <message>
        <source>Dry test to expect after it: %1 to %2</source>
        <translation>Prueba en seco esperada después: %1 a %2</translation>
    </message>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, cilindro %2</translation>
    </message>
    <message>
        <source>Nothing is written here yet</source>
        <translation>Aquí aún no hay nada escrito</translation>
    </message>
    <message>
        <source>Done %1</source>
        <translation>Hecho el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n price(s) too long to add up</source>
        <translation>
            <numerusform>%n precio demasiado largo para sumarlo</numerusform>
            <numerusform>%n precios demasiado largos para sumarlos</numerusform>
        </translation>
    </message>
    <message>
        <source>Quick fixes</source>
        <translation>Arreglos rápidos</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Desmontar</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Dry test to expect after it, in nine cases of ten: %1 to %2</source>
        <translation>Prueba en seco esperada después, en nueve casos de diez: %1 a %2</translation>
    </message>
    <message>
        <source>Noted %1</source>
        <translation>Anotado el %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a day: type year, month and day, such as %2.</source>
        <translation>«%1» no es un día: escribir año, mes y día, como %2.</translation>
    </message>
    <message>
        <source>%1 is over: type a day that is still to come.</source>
        <translation>%1 ya pasó: escribir un día que aún esté por venir.</translation>
    </message>
</context>
<context>
    <name>lapwing::PrepareModel</name>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hechos</translation>
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
        <translation>Comprobadores</translation>
    </message>
    <message>
        <source>No tester is named: the readings&apos; uncertainty is guessed.</source>
        <translation>No se nombra ningún comprobador: la incertidumbre de las lecturas está estimada.</translation>
    </message>
    <message>
        <source>%1: no self-check noted</source>
        <translation>%1: ninguna verificación anotada</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>Repeated: %1: %2</source>
        <translation>Repetido: %1: %2</translation>
    </message>
    <message>
        <source>No reading was repeated</source>
        <translation>No se repitió ninguna lectura</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>No hecho: %1</translation>
    </message>
    <message>
        <source>Not done: %1 (%2)</source>
        <translation>No hecho: %1 (%2)</translation>
    </message>
    <message>
        <source>Not marked: %1</source>
        <translation>Sin marcar: %1</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnóstico</translation>
    </message>
    <message>
        <source>Engine as a whole</source>
        <translation>El motor en conjunto</translation>
    </message>
    <message>
        <source>measured again later</source>
        <translation>medido de nuevo más tarde</translation>
    </message>
    <message>
        <source>Cylinder %1</source>
        <translation>Cilindro %1</translation>
    </message>
    <message>
        <source>Leak hunt, %1</source>
        <translation>Búsqueda de fugas, %1</translation>
    </message>
    <message>
        <source>Clearance, %1</source>
        <translation>Juego, %1</translation>
    </message>
    <message>
        <source>Contradiction</source>
        <translation>Contradicción</translation>
    </message>
    <message>
        <source>Where it leaks</source>
        <translation>Por dónde pierde</translation>
    </message>
</context>
<context>
    <name>lapwing::SessionModel</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, cylinder %2</source>
        <translation>%1, cilindro %2</translation>
    </message>
    <message>
        <source>end pressure</source>
        <translation>presión final</translation>
    </message>
    <message>
        <source>set pressure</source>
        <translation>presión ajustada</translation>
    </message>
    <message>
        <source>Does the crankcase hold pressure?</source>
        <translation>¿Mantiene el cárter la presión?</translation>
    </message>
    <message>
        <source>%1 of %2 measured</source>
        <translation>%1 de %2 medidos</translation>
    </message>
    <message>
        <source>digits typed and not kept</source>
        <translation>escrito y sin guardar</translation>
    </message>
    <message>
        <source>leakage of cylinder %1</source>
        <translation>fuga del cilindro %1</translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>cilindro %1</translation>
    </message>
    <message>
        <source>factory limit here</source>
        <translation>límite de fábrica aquí</translation>
    </message>
    <message>
        <source>factory limit</source>
        <translation>límite de fábrica</translation>
    </message>
    <message>
        <source>most allowed between cylinders</source>
        <translation>máximo admitido entre cilindros</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>orden %1</translation>
    </message>
    <message>
        <source>throttle closed</source>
        <translation>mariposa cerrada</translation>
    </message>
    <message>
        <source>throttle held open</source>
        <translation>mariposa abierta</translation>
    </message>
    <message>
        <source>What the owner says, conditions, testers used</source>
        <translation>Lo que dice el propietario, condiciones, comprobadores usados</translation>
    </message>
    <message>
        <source>Complaint and conditions</source>
        <translation>Queja y condiciones</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hechos</translation>
    </message>
    <message numerus="yes">
        <source>%n left out</source>
        <translation>
            <numerusform>%n omitido</numerusform>
            <numerusform>%n omitidos</numerusform>
        </translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>A valve without clearance looks burnt</source>
        <translation>Una válvula sin juego parece quemada</translation>
    </message>
    <message>
        <source>Hydraulic adjusters: there is none to measure</source>
        <translation>Taqués hidráulicos: no hay ninguno que medir</translation>
    </message>
    <message>
        <source>%1 of %2 valves</source>
        <translation>%1 de %2 válvulas</translation>
    </message>
    <message>
        <source>%1 in range</source>
        <translation>%1 en rango</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Juego de válvulas</translation>
    </message>
    <message>
        <source>Never on a diesel: oil can lock it</source>
        <translation>Nunca en un diésel: el aceite puede bloquearlo</translation>
    </message>
    <message>
        <source>Last: oil stays on the rings</source>
        <translation>La última: el aceite se queda en los segmentos</translation>
    </message>
    <message>
        <source>Before any oil goes in</source>
        <translation>Antes de echar aceite</translation>
    </message>
    <message>
        <source>Not measured</source>
        <translation>No medido</translation>
    </message>
    <message>
        <source>factory limit %1 here</source>
        <translation>límite de fábrica %1 aquí</translation>
    </message>
    <message>
        <source>factory limit %1</source>
        <translation>límite de fábrica %1</translation>
    </message>
    <message>
        <source>the model expects %1 to %2</source>
        <translation>el modelo espera de %1 a %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Listen where the air comes out, while it is on</source>
        <translation>Escuchar por dónde sale el aire, mientras está puesto</translation>
    </message>
    <message>
        <source>Listened, nothing heard</source>
        <translation>Escuchado, no se oyó nada</translation>
    </message>
    <message>
        <source>Leak hunt</source>
        <translation>Búsqueda de fugas</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnóstico</translation>
    </message>
    <message>
        <source>Your own call first</source>
        <translation>Primero el dictamen propio</translation>
    </message>
    <message>
        <source>Leave it, quick fix or strip, and what it costs</source>
        <translation>Dejarlo, arreglo rápido o desmontar, y lo que cuesta</translation>
    </message>
    <message>
        <source>the owner says %1</source>
        <translation>el propietario dice: %1</translation>
    </message>
    <message>
        <source>Measure what you want to know, then make your own call.</source>
        <translation>Medir lo que haga falta y después dar el dictamen propio.</translation>
    </message>
</context>
<context>
    <name>lapwing::SettingsModel</name>
    <message>
        <source>Lowest cylinder of the highest, at least</source>
        <translation>Cilindro más bajo frente al más alto, al menos</translation>
    </message>
    <message>
        <source>Below the average of all cylinders, at most</source>
        <translation>Por debajo de la media de todos los cilindros, como máximo</translation>
    </message>
    <message>
        <source>none under %1</source>
        <translation>ninguno por debajo de %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Usual cranking pressure (%1), for each unit of compression ratio</source>
        <translation>Presión de compresión usual (%1), por cada unidad de relación de compresión</translation>
    </message>
    <message>
        <source>Usual cranking pressure (%1)</source>
        <translation>Presión de compresión usual (%1)</translation>
    </message>
    <message>
        <source>%1 (%2 for bores of %3 and over)</source>
        <translation>%1 (%2 para diámetros desde %3)</translation>
    </message>
    <message>
        <source>Leakage on a tester of %1 and %2: in range up to, borderline up to</source>
        <translation>Pérdida en un comprobador de %1 y %2: en rango hasta, en el límite hasta</translation>
    </message>
    <message>
        <source>As a tester&apos;s maker says. %1</source>
        <translation>Como dice el fabricante de un comprobador. %1</translation>
    </message>
    <message>
        <source>Aircraft. %1</source>
        <translation>Aeronaves. %1</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Rings are suspected when oil raises the reading by at least</source>
        <translation>Se sospecha de los segmentos cuando el aceite sube la lectura al menos</translation>
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
        <translation>Nota de voz</translation>
    </message>
    <message>
        <source>Unknown file</source>
        <translation>Archivo desconocido</translation>
    </message>
    <message>
        <source>Photos and voice notes</source>
        <translation>Fotos y notas de voz</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Of these, deleted and kept for Undo</source>
        <translation>De ellos, borrados y conservados para Deshacer</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
</context>
<context>
    <name>lapwing::TesterCardForm</name>
    <message>
        <source>%1, home-made</source>
        <translation>%1, casero</translation>
    </message>
</context>
<context>
    <name>lapwing::TesterListModel</name>
    <message>
        <source>0 to %1</source>
        <translation>0 a %1</translation>
    </message>
    <message>
        <source>home-made</source>
        <translation>casero</translation>
    </message>
    <message>
        <source>checked %1</source>
        <translation>verificado el %1</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>nunca verificado</translation>
    </message>
</context>
<context>
    <name>lapwing::TodoModel</name>
    <message>
        <source>cylinder %1</source>
        <translation>cilindro %1</translation>
    </message>
    <message>
        <source>all cylinders</source>
        <translation>todos los cilindros</translation>
    </message>
    <message>
        <source>asked by %1</source>
        <translation>pedido por %1</translation>
    </message>
    <message numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n nota</numerusform>
            <numerusform>%n notas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other causes</source>
        <translation>
            <numerusform>%n otra causa</numerusform>
            <numerusform>%n otras causas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tests asked for</source>
        <translation>
            <numerusform>%n prueba pedida</numerusform>
            <numerusform>%n pruebas pedidas</numerusform>
        </translation>
    </message>
</context>
</TS>
