<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AircraftWords</name>
    <message>
        <source>All couplings in their own scatters</source>
        <translation>Alle Anschlüsse in eigenen Streuungen</translation>
    </message>
    <message>
        <source>No coupling has a band with readings to lay beside it yet.</source>
        <translation>Noch hat kein Anschluss ein Band mit Messungen zum Danebenlegen.</translation>
    </message>
    <message>
        <source>No rigging day has enough couplings to tell a shift yet.</source>
        <translation>Noch hat kein Aufrüsttag genug Anschlüsse, um eine Verschiebung zu erkennen.</translation>
    </message>
    <message>
        <source>each coupling in its own scatters; 0 is the middle of its band; lines are means</source>
        <translation>jeder Anschluss in eigenen Streuungen; 0 ist die Mitte seines Bandes; Linien sind Mittel</translation>
    </message>
    <message>
        <source>each coupling in its own scatters; 0 is the middle of its band</source>
        <translation>jeder Anschluss in eigenen Streuungen; 0 ist die Mitte seines Bandes</translation>
    </message>
    <message>
        <source>in own scatters</source>
        <translation>in eigenen Streuungen</translation>
    </message>
    <message>
        <source>shared shift of each rigging day, in scatters</source>
        <translation>gemeinsame Verschiebung an jedem Aufrüsttag, in Streuungen</translation>
    </message>
    <message>
        <source>shared shift</source>
        <translation>gemeinsame Verschiebung</translation>
    </message>
    <message>
        <source>+%1</source>
        <comment>scatters above the middle</comment>
        <translation>+%1</translation>
    </message>
    <message>
        <source>−%1</source>
        <comment>scatters below the middle</comment>
        <translation>−%1</translation>
    </message>
    <message>
        <source>%1, left</source>
        <comment>coupling</comment>
        <translation>%1, links</translation>
    </message>
    <message>
        <source>%1, right</source>
        <comment>coupling</comment>
        <translation>%1, rechts</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>in doubt, because of the gauge</source>
        <translation>im Zweifel, wegen der Lehre</translation>
    </message>
    <message>
        <source>%1, %2: %3 scatters from the middle of its band, %4. One sign only.</source>
        <comment>coupling, day: signed number, verdict</comment>
        <translation>%1, %2: %3 Streuungen von der Mitte seines Bandes, %4. Nur ein Anzeichen.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 scatters, the median of %n coupling(s).</source>
        <comment>day, signed number</comment>
        <translation>
            <numerusform>%1: %2 Streuungen, der Median von %n Anschluss.</numerusform>
            <numerusform>%1: %2 Streuungen, der Median von %n Anschlüssen.</numerusform>
        </translation>
    </message>
    <message>
        <source>A shared shift.</source>
        <translation>Eine gemeinsame Verschiebung.</translation>
    </message>
    <message>
        <source>A shared shift, with this in common: %1.</source>
        <comment>gauge or person</comment>
        <translation>Eine gemeinsame Verschiebung, dies ist allen gemeinsam: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Shared shift of %n rigging day(s).</source>
        <translation>
            <numerusform>Gemeinsame Verschiebung von %n Aufrüsttag.</numerusform>
            <numerusform>Gemeinsame Verschiebung von %n Aufrüsttagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>On none did all couplings move together.</source>
        <translation>An keinem wanderten alle Anschlüsse gemeinsam.</translation>
    </message>
    <message>
        <source>Left and Right move, plus and minus zoom, Home and End go to the ends, 0 shows everything, Up and Down go from coupling to coupling.</source>
        <translation>Links und Rechts verschieben, Plus und Minus zoomen, Pos1 und Ende gehen an die Enden, 0 zeigt alles, Auf und Ab gehen von Anschluss zu Anschluss.</translation>
    </message>
    <message>
        <source>%1 %2 scatters, %3.</source>
        <comment>coupling, signed number, verdict</comment>
        <translation>%1 %2 Streuungen, %3.</translation>
    </message>
    <message>
        <source>The last reading of each coupling in its own scatters from the middle of its band.</source>
        <translation>Die letzte Messung jedes Anschlusses in eigenen Streuungen von der Mitte seines Bandes.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Gewählt: %1.</translation>
    </message>
    <message>
        <source>Each verdict is one sign only.</source>
        <translation>Jedes Urteil ist nur ein Anzeichen.</translation>
    </message>
</context>
<context>
    <name>AnnualWords</name>
    <message>
        <source>R</source>
        <comment>key for write the report</comment>
        <translation>R</translation>
    </message>
    <message>
        <source>M</source>
        <comment>key for what the columns mean</comment>
        <translation>M</translation>
    </message>
    <message>
        <source>S</source>
        <comment>key for the next of what stands out</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>O</source>
        <comment>key for the next reading outside its band</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>Write the report (%1)</source>
        <translation>Bericht schreiben (%1)</translation>
    </message>
    <message>
        <source>What the columns mean (%1)</source>
        <translation>Was die Spalten bedeuten (%1)</translation>
    </message>
    <message>
        <source>This file knows no airframe yet. Begin in Set up (Ctrl+5).</source>
        <translation>Diese Datei kennt noch kein Flugzeug. Unter Einrichten (Strg+5) beginnen.</translation>
    </message>
    <message>
        <source>This airframe has no coupling yet. Add them in Set up (Ctrl+5); then every rigging adds to this page.</source>
        <translation>Dieses Flugzeug hat noch keinen Anschluss. Unter Einrichten (Strg+5) hinzufügen; dann trägt jedes Aufrüsten zu dieser Seite bei.</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Was auffällt</translation>
    </message>
    <message>
        <source>Enter or a click: its readings in Trends. %1: the next one.</source>
        <translation>Enter oder ein Klick: seine Messungen im Verlauf. %1: das nächste.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more in the list below.</source>
        <translation>
            <numerusform>Und %n weiteres in der Liste unten.</numerusform>
            <numerusform>Und %n weitere in der Liste unten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Enter: its readings in Trends.</source>
        <translation>Enter: seine Messungen im Verlauf.</translation>
    </message>
    <message>
        <source>Couplings, what stands out first</source>
        <translation>Anschlüsse, Auffallendes zuerst</translation>
    </message>
    <message>
        <source>Enter on a row: its readings and what to look at. 1 to 8: sort by that column. 0: what stands out first. Esc or Alt+Left there comes back here.</source>
        <translation>Enter auf einer Zeile: ihre Messungen und was anzusehen ist. 1 bis 8: nach dieser Spalte ordnen. 0: Auffallendes zuerst. Esc oder Alt+Links führt von dort hierher zurück.</translation>
    </message>
    <message>
        <source>Coupling,
latest reading</source>
        <translation>Anschluss,
letzte Messung</translation>
    </message>
    <message>
        <source>Gap on
its own band</source>
        <translation>Spalt zum
eigenen Band</translation>
    </message>
    <message>
        <source>What moved,
since when</source>
        <translation>Was wanderte,
seit wann</translation>
    </message>
    <message>
        <source>Farthest
away, mm</source>
        <translation>Am weitesten
weg, mm</translation>
    </message>
    <message>
        <source>Scatter,
mm</source>
        <translation>Streuung,
mm</translation>
    </message>
    <message>
        <source>Chance outside
at the annual</source>
        <translation>Außerhalb bei der
Jahresnachprüfung?</translation>
    </message>
    <message>
        <source>Open
questions</source>
        <translation>Offene
Fragen</translation>
    </message>
    <message>
        <source>What stands out,
gravest first</source>
        <translation>Was auffällt,
Ernstestes zuerst</translation>
    </message>
    <message>
        <source>Coupling, latest reading: the last locked reading in this period and how it lies to the coupling’s own band.</source>
        <translation>Anschluss, letzte Messung: die letzte verriegelte Messung in diesem Zeitraum und wie sie zum eigenen Band des Anschlusses liegt.</translation>
    </message>
    <message>
        <source>Gap on its own band: green is where 95 % of this coupling’s locked readings fall, ochre is near its edge, grey is outside; the bar across is the latest reading. Every band is drawn equally wide, so that rows compare.</source>
        <translation>Spalt zum eigenen Band: Grün ist, wohin 95 % der verriegelten Messungen dieses Anschlusses fallen, Ocker ist nahe am Rand, Grau ist außerhalb; der Querstrich ist die letzte Messung. Jedes Band ist gleich breit gezeichnet, damit sich die Zeilen vergleichen lassen.</translation>
    </message>
    <message>
        <source>What moved: a step in mm, or a drift in mm per 100 riggings, plus when the gap grows, with its 95 % interval and the rigging it began at. None told: the readings show none, which is not to say that nothing moved.</source>
        <translation>Was wanderte: ein Sprung in mm oder eine Drift in mm je 100 Aufrüstvorgänge, plus, wenn der Spalt wächst, mit 95-%-Intervall und dem Aufrüsten, bei dem es begann. Keine gemeldet: Die Messungen zeigen nichts, was nicht heißt, dass nichts gewandert ist.</translation>
    </message>
    <message>
        <source>Farthest away: how far the gap, apart from the scatter between riggings, came from the middle of the band in this period. Single readings may lie farther off.</source>
        <translation>Am weitesten weg: wie weit der Spalt, abgesehen von der Streuung zwischen den Aufrüstvorgängen, in diesem Zeitraum von der Mitte des Bandes wegkam. Einzelne Messungen können weiter weg liegen.</translation>
    </message>
    <message>
        <source>Scatter: how much the last ten readings differ among themselves, with that of all before them below. Springs, grease, wear and several measurers all show here.</source>
        <translation>Streuung: wie sehr sich die letzten zehn Messungen untereinander unterscheiden, darunter dasselbe für alle davor. Federn, Fett, Verschleiß und mehrere Messende zeigen sich alle hier.</translation>
    </message>
    <message>
        <source>Chance outside at the annual: if the gap goes on as the readings say, how likely a reading then lies outside the band. 20 in 100 means 20 of 100 such readings.</source>
        <translation>Außerhalb bei der Jahresnachprüfung: wie wahrscheinlich eine Messung dann außerhalb des Bandes liegt, wenn der Spalt so weitergeht, wie die Messungen sagen. 20 von 100 heißt 20 von 100 solchen Messungen.</translation>
    </message>
    <message>
        <source>Open questions: what nobody has found out and signed for yet.</source>
        <translation>Offene Fragen: was noch niemand herausgefunden und unterschrieben hat.</translation>
    </message>
    <message>
        <source>What stands out: signs, gravest first. None of them is a diagnosis, and an empty line says no more than that.</source>
        <translation>Was auffällt: Anzeichen, das Ernsteste zuerst. Keines davon ist eine Diagnose, und eine leere Zeile sagt auch nicht mehr.</translation>
    </message>
    <message>
        <source>Marks: disc with a tick, inside; triangle, near the edge, or inside with something told beside it; diamond, outside; half disc, cannot tell; dashed ring, no band yet; small ring, not read. A band is the coupling’s own past, never a limit.</source>
        <translation>Zeichen: Scheibe mit Haken, im Band; Dreieck, nahe am Rand, oder im Band mit einer Angabe daneben; Raute, außerhalb; Halbscheibe, nicht zu sagen; gestrichelter Ring, noch kein Band; kleiner Ring, nicht gemessen. Ein Band ist die eigene Vergangenheit des Anschlusses, nie ein Grenzwert.</translation>
    </message>
    <message>
        <source>nothing that these readings show</source>
        <translation>nichts, was diese Messungen zeigen</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between signs</comment>
        <translation>; </translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>questions</comment>
        <translation>
            <numerusform>%n offen</numerusform>
            <numerusform>%n offen</numerusform>
        </translation>
    </message>
    <message>
        <source>Is it the coupling, the leaf set or the person?</source>
        <translation>Liegt es am Anschluss, am Blattsatz oder an der Person?</translation>
    </message>
    <message>
        <source>What all couplings share on each rigging day, in their own scatters</source>
        <translation>Was alle Anschlüsse an jedem Aufrüsttag gemeinsam haben, in eigenen Streuungen</translation>
    </message>
    <message>
        <source>Who measures like whom</source>
        <translation>Wer misst wie wer</translation>
    </message>
    <message>
        <source>Distance from the mean of all, mm, with its 95 % interval; spread at the right</source>
        <translation>Abstand vom Mittel aller, mm, mit 95-%-Intervall; rechts die Schwankung</translation>
    </message>
    <message>
        <source>Outside its band</source>
        <translation>Außerhalb seines Bandes</translation>
    </message>
    <message>
        <source>Enter or a click: that reading in Trends. %1: the next one.</source>
        <translation>Enter oder ein Klick: diese Messung im Verlauf. %1: die nächste.</translation>
    </message>
    <message>
        <source>Open questions</source>
        <translation>Offene Fragen</translation>
    </message>
    <message>
        <source>Ctrl+6 shows and closes them.</source>
        <translation>Strg+6 zeigt und schließt sie.</translation>
    </message>
    <message>
        <source>Leaf sets and other gauges</source>
        <translation>Blattsätze und andere Lehren</translation>
    </message>
    <message>
        <source>Fittings and what changed</source>
        <translation>Einbauten und was sich geändert hat</translation>
    </message>
    <message>
        <source>Too few readings</source>
        <translation>Zu wenige Messungen</translation>
    </message>
    <message>
        <source>Riggings</source>
        <translation>Aufrüstvorgänge</translation>
    </message>
    <message>
        <source>No gauge in use.</source>
        <translation>Keine Lehre in Gebrauch.</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation>im Zweifel</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a story's title, its state</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>column, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>column, figure, interval</comment>
        <translation>%1: %2, %3</translation>
    </message>
</context>
<context>
    <name>BaselineWords</name>
    <message>
        <source>W</source>
        <comment>key for wrong leaf pressed</comment>
        <translation>W</translation>
    </message>
    <message>
        <source>X</source>
        <comment>key for leave out of the band</comment>
        <translation>X</translation>
    </message>
    <message>
        <source>F</source>
        <comment>key for freeze the baseline</comment>
        <translation>F</translation>
    </message>
    <message>
        <source>Baseline day</source>
        <translation>Tag der Grundreihe</translation>
    </message>
    <message>
        <source>The owner and one other, on a day without flying, the glider on trestles. Ten readings of each coupling or more make its band.</source>
        <translation>Halter und eine weitere Person, an einem Tag ohne Flugbetrieb, das Flugzeug auf Böcken. Zehn oder mehr Messungen je Anschluss ergeben sein Band.</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>No airframe is chosen. Enter one under Airframe first.</source>
        <translation>Kein Flugzeug gewählt. Zuerst unter „Flugzeug“ eines eintragen.</translation>
    </message>
    <message>
        <source>None of the couplings has a gap to measure.</source>
        <translation>Kein Anschluss hat einen Spalt zum Messen.</translation>
    </message>
    <message>
        <source>No gap to measure: %1.</source>
        <translation>Kein Spalt zu messen: %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between couplings</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>This airframe has no couplings yet. Enter them first.</source>
        <translation>Dieses Flugzeug hat noch keine Anschlüsse. Zuerst eintragen.</translation>
    </message>
    <message>
        <source>Nobody is entered yet. Enter the people first.</source>
        <translation>Noch niemand eingetragen. Zuerst die Personen eintragen.</translation>
    </message>
    <message>
        <source>No leaf set is entered yet. Enter one first.</source>
        <translation>Noch kein Blattsatz eingetragen. Zuerst einen eintragen.</translation>
    </message>
    <message>
        <source>Choose a coupling.</source>
        <translation>Einen Anschluss wählen.</translation>
    </message>
    <message>
        <source>This coupling has no fitting that a reading could belong to. Start one under Couplings.</source>
        <translation>Dieser Anschluss hat keinen Einbau, zu dem eine Messung gehören könnte. Unter „Anschlüsse“ einen beginnen.</translation>
    </message>
    <message numerus="yes">
        <source>%n confirmed reading(s)</source>
        <translation>
            <numerusform>%n bestätigte Messung</numerusform>
            <numerusform>%n bestätigte Messungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n confirmed reading(s), thin band</source>
        <translation>
            <numerusform>%n bestätigte Messung, dünnes Band</numerusform>
            <numerusform>%n bestätigte Messungen, dünnes Band</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n confirmed reading(s), frozen</source>
        <translation>
            <numerusform>%n bestätigte Messung, festgeschrieben</numerusform>
            <numerusform>%n bestätigte Messungen, festgeschrieben</numerusform>
        </translation>
    </message>
    <message>
        <source>no fitting yet</source>
        <translation>noch kein Einbau</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Gemessen von</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>Choose a leaf set or gauge</source>
        <translation>Blattsatz oder Lehre wählen</translation>
    </message>
    <message>
        <source>%1 (in doubt)</source>
        <comment>leaf set</comment>
        <translation>%1 (im Zweifel)</translation>
    </message>
    <message>
        <source>1  Disconnected, cleaned and connected again?</source>
        <translation>1  Getrennt, gereinigt und wieder angeschlossen?</translation>
    </message>
    <message>
        <source>Before every reading. Without it the band comes out too narrow.</source>
        <translation>Vor jeder Messung. Sonst wird das Band zu schmal.</translation>
    </message>
    <message>
        <source>2  Locked, confirmed otherwise than by the gap?</source>
        <translation>2  Verriegelt, anders bestätigt als durch den Spalt?</translation>
    </message>
    <message>
        <source>Ball seen in the socket, tab or witness hole, sleeve at its stop, pull. Never by the gap: that would go in a circle.</source>
        <translation>Kugel in der Pfanne gesehen, Lasche oder Kontrollbohrung, Hülse am Anschlag, Zugprobe. Nie durch den Spalt: Das wäre ein Kreisschluss.</translation>
    </message>
    <message>
        <source>First choose who measures.</source>
        <translation>Zuerst wählen, wer misst.</translation>
    </message>
    <message>
        <source>First choose what is measured with.</source>
        <translation>Zuerst wählen, womit gemessen wird.</translation>
    </message>
    <message>
        <source>That leaf set is in doubt since its last check. A baseline is not read with it: choose another.</source>
        <translation>Dieser Blattsatz ist seit seiner letzten Prüfung im Zweifel. Eine Grundreihe wird damit nicht gemessen: einen anderen wählen.</translation>
    </message>
    <message>
        <source>Another person measures: the cycle starts anew.</source>
        <translation>Eine andere Person misst: Der Durchgang beginnt von vorn.</translation>
    </message>
    <message>
        <source>Disconnect, clean and connect again; then answer the first question.</source>
        <translation>Trennen, reinigen und wieder anschließen; dann die erste Frage beantworten.</translation>
    </message>
    <message>
        <source>Confirm that it is locked; then answer the second question.</source>
        <translation>Bestätigen, dass die Verbindung verriegelt ist; dann die zweite Frage beantworten.</translation>
    </message>
    <message>
        <source>No reading is taken: read twice without disconnecting, the joint says the same twice and the band comes out too narrow. Disconnect, clean, connect, then answer yes.</source>
        <translation>Es wird keine Messung genommen: Zweimal gemessen, ohne zu trennen, sagt die Verbindung zweimal dasselbe, und das Band wird zu schmal. Trennen, reinigen, anschließen, dann Ja antworten.</translation>
    </message>
    <message>
        <source>No reading is taken: a band made of joints that were not locked would call a bad joint usual. Disconnect, clean and connect again; if it does not lock then, leave it and call whom you call.</source>
        <translation>Es wird keine Messung genommen: Ein Band aus Verbindungen, die nicht verriegelt waren, würde eine schlechte Verbindung üblich nennen. Trennen, reinigen und wieder anschließen; verriegelt sie auch dann nicht, stehen lassen und die Person anrufen, die dafür vorgesehen ist.</translation>
    </message>
    <message>
        <source>Now read: the thickest leaf that enters freely. Leaf clean and square, sleeve at its stop by its own spring, no hand on it, no force.</source>
        <translation>Jetzt messen: das dickste Blatt, das frei hineingeht. Blatt sauber und gerade, Hülse durch ihre eigene Feder am Anschlag, keine Hand daran, keine Kraft.</translation>
    </message>
    <message>
        <source>Give the figure that was right instead of %1 (%2, %3). The wrong one stays, with a line through it.</source>
        <translation>Den richtigen Wert statt %1 (%2, %3) angeben. Der falsche bleibt, durchgestrichen.</translation>
    </message>
    <message>
        <source>Leave it as it was  (Esc)</source>
        <translation>Lassen, wie es war  (Esc)</translation>
    </message>
    <message>
        <source>%1, saved %2. Next cycle: disconnect, clean and connect again.</source>
        <translation>%1, gespeichert %2. Nächster Durchgang: trennen, reinigen und wieder anschließen.</translation>
    </message>
    <message>
        <source>%1 takes its place, saved %2. The wrong one stays in the list.</source>
        <translation>%1 tritt an ihre Stelle, gespeichert %2. Die falsche bleibt in der Liste.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>Nicht gespeichert.</translation>
    </message>
    <message numerus="yes">
        <source>by %n person(s)</source>
        <translation>
            <numerusform>von %n Person</numerusform>
            <numerusform>von %n Personen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>with %n gauge(s)</source>
        <translation>
            <numerusform>mit %n Lehre</numerusform>
            <numerusform>mit %n Lehren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s)</source>
        <translation>
            <numerusform>an %n Tag</numerusform>
            <numerusform>an %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2, %3, %4.</source>
        <comment>readings by people, with gauges, on days</comment>
        <translation>%1 %2, %3, %4.</translation>
    </message>
    <message>
        <source>Two people, two leaf sets and two days make the band honest.</source>
        <translation>Zwei Personen, zwei Blattsätze und zwei Tage machen das Band ehrlich.</translation>
    </message>
    <message>
        <source>No band below %1 readings: %2 still missing.</source>
        <translation>Kein Band unter %1 Messungen: noch %2 nötig.</translation>
    </message>
    <message>
        <source>These readings make no band: each of them is open on one side. Read with a gauge that reaches further.</source>
        <translation>Diese Messungen ergeben kein Band: Jede ist nach einer Seite offen. Mit einer Lehre messen, die weiter reicht.</translation>
    </message>
    <message>
        <source>Thin band: only %1 readings. %2 make one that can be frozen.</source>
        <translation>Dünnes Band: nur %1 Messungen. %2 ergeben eines, das festgeschrieben werden kann.</translation>
    </message>
    <message>
        <source>Band from %1 readings.</source>
        <translation>Band aus %1 Messungen.</translation>
    </message>
    <message>
        <source>From outer edge to outer edge it is %1 mm wide (%2), from inner edge to inner edge %3 mm (%4).</source>
        <translation>Von äußerem Rand zu äußerem Rand ist es %1 mm breit (%2), von innerem Rand zu innerem Rand %3 mm (%4).</translation>
    </message>
    <message>
        <source>If the next one reads like the others, it becomes %1 mm narrower between the outer edges; otherwise it may become wider.</source>
        <translation>Fällt die nächste aus wie die anderen, wird es zwischen den äußeren Rändern um %1 mm schmaler; sonst kann es breiter werden.</translation>
    </message>
    <message>
        <source>If the next one reads like the others, it becomes narrower by less than %1 mm.</source>
        <translation>Fällt die nächste aus wie die anderen, wird es um weniger als %1 mm schmaler.</translation>
    </message>
    <message>
        <source>If the next one reads like the others, it does not become narrower.</source>
        <translation>Fällt die nächste aus wie die anderen, wird es nicht schmaler.</translation>
    </message>
    <message>
        <source>Of 10 000 locked readings about 27 fall beyond the outer edges, on average over couplings. One band from few readings may hold noticeably more or less.</source>
        <translation>Von 10 000 Messungen in verriegeltem Zustand fallen etwa 27 jenseits der äußeren Ränder, im Mittel über Anschlüsse. Ein einzelnes Band aus wenigen Messungen kann merklich mehr oder weniger enthalten.</translation>
    </message>
    <message>
        <source>The band is this coupling's own past, never a limit.</source>
        <translation>Das Band ist die eigene Vergangenheit dieses Anschlusses, nie ein Grenzwert.</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Messungen bisher</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>today, %1</source>
        <translation>heute, %1</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>counts for the band</source>
        <translation>zählt für das Band</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>corrects another: %1</source>
        <translation>berichtigt eine andere: %1</translation>
    </message>
    <message>
        <source>left out by %1: %2</source>
        <translation>ausgelassen von %1: %2</translation>
    </message>
    <message>
        <source>unlike the others: measure again, or leave it out with a reason</source>
        <translation>anders als die anderen: noch einmal messen oder mit Grund auslassen</translation>
    </message>
    <message>
        <source>its gauge is in doubt from %1: does not count</source>
        <translation>ihre Lehre ist ab %1 im Zweifel: zählt nicht</translation>
    </message>
    <message>
        <source>came after the freeze, does not count</source>
        <translation>kam nach dem Festschreiben, zählt nicht</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Wrong leaf pressed  (%1)</source>
        <translation>Falsches Blatt gewählt  (%1)</translation>
    </message>
    <message>
        <source>Leave out of the band  (%1)</source>
        <translation>Aus dem Band auslassen  (%1)</translation>
    </message>
    <message>
        <source>Left out by</source>
        <translation>Ausgelassen von</translation>
    </message>
    <message>
        <source>Choose a reading in the list first.</source>
        <translation>Zuerst eine Messung in der Liste wählen.</translation>
    </message>
    <message>
        <source>That reading was corrected or left out before. It stays as it is.</source>
        <translation>Diese Messung wurde schon berichtigt oder ausgelassen. Sie bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>This baseline is frozen: its readings are neither corrected nor left out any more.</source>
        <translation>Diese Grundreihe ist festgeschrieben: Ihre Messungen werden nicht mehr berichtigt oder ausgelassen.</translation>
    </message>
    <message>
        <source>Choose who leaves it out first. The name stands beside it.</source>
        <translation>Zuerst wählen, wer sie auslässt. Der Name steht daneben.</translation>
    </message>
    <message>
        <source>Choose who corrects it first. The correction stands in that person's name.</source>
        <translation>Zuerst wählen, wer sie berichtigt. Die Berichtigung steht unter diesem Namen.</translation>
    </message>
    <message>
        <source>Wrong leaf pressed</source>
        <translation>Falsches Blatt gewählt</translation>
    </message>
    <message>
        <source>What was wrong with %1, read at %2? Your words stand beside it for good.</source>
        <translation>Was war falsch an %1, gemessen am %2? Ihre Worte bleiben für immer daneben stehen.</translation>
    </message>
    <message>
        <source>Leave out of the band</source>
        <translation>Aus dem Band auslassen</translation>
    </message>
    <message>
        <source>Why does %1, read at %2, not belong to the band? Your words stand beside it for good.</source>
        <translation>Warum gehört %1, gemessen am %2, nicht zum Band? Ihre Worte bleiben für immer daneben stehen.</translation>
    </message>
    <message>
        <source>Freeze this baseline</source>
        <translation>Diese Grundreihe festschreiben</translation>
    </message>
    <message>
        <source>A frozen baseline stays as it is, so that slow movement shows against it. It takes two people.</source>
        <translation>Eine festgeschriebene Grundreihe bleibt, wie sie ist, damit langsame Bewegung daran zu sehen ist. Dazu braucht es zwei Personen.</translation>
    </message>
    <message>
        <source>First name</source>
        <translation>Erster Name</translation>
    </message>
    <message>
        <source>Second name, another person</source>
        <translation>Zweiter Name, eine andere Person</translation>
    </message>
    <message>
        <source>Freeze  (%1)</source>
        <translation>Festschreiben  (%1)</translation>
    </message>
    <message>
        <source>Freeze it</source>
        <translation>Festschreiben</translation>
    </message>
    <message>
        <source>%1: freeze the baseline of %2 readings, in the names of %3 and %4? It cannot be thawed: only a refit starts a new one.</source>
        <translation>%1: die Grundreihe aus %2 Messungen festschreiben, im Namen von %3 und %4? Das lässt sich nicht wieder lösen: Nur ein neuer Einbau beginnt eine neue.</translation>
    </message>
    <message numerus="yes">
        <source>It cannot be frozen yet: %n reading(s) of %1.</source>
        <translation>
            <numerusform>Noch nicht festzuschreiben: %n Messung von %1.</numerusform>
            <numerusform>Noch nicht festzuschreiben: %n Messungen von %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>It cannot be frozen yet: a reading in the list is unlike the others. Correct it, or leave it out with a reason and a name.</source>
        <translation>Noch nicht festzuschreiben: Eine Messung in der Liste ist anders als die anderen. Diese berichtigen oder mit Grund und Namen auslassen.</translation>
    </message>
    <message>
        <source>It cannot be frozen: the readings scatter more than a band can follow. Look at the joint, the leaves and how each person reads.</source>
        <translation>Nicht festzuschreiben: Die Messungen streuen mehr, als ein Band abbilden kann. Die Verbindung, die Blätter und die Messweise jeder Person ansehen.</translation>
    </message>
    <message>
        <source>Choose two different people. Nobody is filled in.</source>
        <translation>Zwei verschiedene Personen wählen. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Frozen on %1 by %2 and %3.</source>
        <translation>Festgeschrieben am %1 von %2 und %3.</translation>
    </message>
    <message>
        <source>Later readings do not move this band. A refit, an adjustment or a new part starts a new fitting with a baseline of its own.</source>
        <translation>Spätere Messungen verschieben dieses Band nicht. Wird neu eingebaut, eingestellt oder ein Teil getauscht, beginnt ein neuer Einbau mit eigener Grundreihe.</translation>
    </message>
    <message>
        <source>Measured by %1, put right by %2: the reading stays in the name of %1.</source>
        <comment>persons</comment>
        <translation>Gemessen von %1, berichtigt von %2: Die Messung bleibt auf den Namen von %1.</translation>
    </message>
    <message>
        <source>If it was read at another coupling or by another person, leave it out (%1) and read there, or in that name, again.</source>
        <comment>its key</comment>
        <translation>Wurde an einem anderen Anschluss oder von einer anderen Person gemessen, die Messung auslassen (%1) und dort oder auf den anderen Namen neu messen.</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>Where its couplings are, and what locked looks like</source>
        <translation>Wo seine Anschlüsse sind, und wie „verriegelt“ aussieht</translation>
    </message>
    <message>
        <source>%1-card.pdf</source>
        <comment>a file's name: registration</comment>
        <translation>%1-karte.pdf</translation>
    </message>
    <message>
        <source>For whoever stands at the glider and knows it less well. It does not say how any joint stands today: that takes the look, the gap, the pull and the second person.</source>
        <translation>Für alle, die am Flugzeug stehen und es weniger gut kennen. Die Karte sagt nicht, wie eine Verbindung heute steht: Dazu braucht es Sichtkontrolle, Spalt, Zugprobe und die zweite Person.</translation>
    </message>
    <message>
        <source>From above, nose up. Numbers in the order of rigging. L is the left wing, with the red light, R the right one, with the green. A square connects by itself.</source>
        <translation>Von oben, Rumpfnase oben. Nummern in der Reihenfolge beim Aufrüsten. L ist der linke Flügel, mit dem roten Licht, R der rechte, mit dem grünen. Ein Quadrat heißt: schließt selbsttätig an.</translation>
    </message>
    <message>
        <source>From above, nose up. Numbers in the order of rigging. L is the left wing, with the red light, R the right one, with the green.</source>
        <translation>Von oben, Rumpfnase oben. Nummern in der Reihenfolge beim Aufrüsten. L ist der linke Flügel, mit dem roten Licht, R der rechte, mit dem grünen.</translation>
    </message>
    <message>
        <source>When something does not stand as it should</source>
        <translation>Wenn etwas nicht so steht, wie es soll</translation>
    </message>
    <message>
        <source>Stop, leave everything as it is, and call the person entitled to decide.</source>
        <translation>Aufhören, alles stehen lassen, wie es ist, und die dazu berechtigte Person anrufen.</translation>
    </message>
    <message>
        <source>Stop, leave everything as it is, and call %1.</source>
        <translation>Aufhören, alles stehen lassen, wie es ist, und anrufen: %1.</translation>
    </message>
    <message>
        <source>No band and no limit stands on this card. Not an aircraft record, inspection or release. Manuals, directives and persons entitled to decide prevail.</source>
        <translation>Auf dieser Karte steht kein Band und kein Grenzwert. Keine Flugzeugakte, keine Kontrolle, keine Freigabe. Handbücher, Anweisungen und zur Entscheidung berechtigte Personen gehen vor.</translation>
    </message>
    <message>
        <source>In the order of rigging</source>
        <translation>In der Reihenfolge beim Aufrüsten</translation>
    </message>
    <message>
        <source>Seen from %1.</source>
        <translation>Von %1 gesehen.</translation>
    </message>
    <message>
        <source>Seen from %1, mirror from %2.</source>
        <translation>Von %1 gesehen, Spiegel von %2.</translation>
    </message>
    <message>
        <source>Mirror from %1.</source>
        <translation>Spiegel von %1.</translation>
    </message>
    <message>
        <source>Held by its sleeve.</source>
        <translation>Gehalten durch seine Hülse.</translation>
    </message>
    <message>
        <source>Held by its safety pin.</source>
        <translation>Gehalten durch seine Sicherungsnadel.</translation>
    </message>
    <message>
        <source>Held by its sleeve and its safety pin.</source>
        <translation>Gehalten durch seine Hülse und seine Sicherungsnadel.</translation>
    </message>
    <message>
        <source>Connects by itself.</source>
        <translation>Schließt selbsttätig an.</translation>
    </message>
    <message>
        <source>Line or rod of the water ballast.</source>
        <translation>Leitung oder Stange des Wasserballasts.</translation>
    </message>
    <message>
        <source>Held as its manual says.</source>
        <translation>Gehalten, wie sein Handbuch sagt.</translation>
    </message>
    <message>
        <source>What locked looks like, and what is not locked</source>
        <translation>Wie „verriegelt“ aussieht, und was nicht verriegelt ist</translation>
    </message>
    <message>
        <source>Look first, in this order. What cannot be seen takes a mirror or a light. The pictures are schematic, nothing to scale.</source>
        <translation>Zuerst ansehen, in dieser Reihenfolge. Was nicht zu sehen ist, braucht einen Spiegel oder eine Lampe. Die Bilder sind schematisch, nichts maßstäblich.</translation>
    </message>
    <message>
        <source>Locking moves the tab away from the sleeve: %1.</source>
        <translation>Verriegeln bewegt die Lasche von der Hülse weg: %1.</translation>
    </message>
    <message>
        <source>Locking moves the tab towards the sleeve: %1.</source>
        <translation>Verriegeln bewegt die Lasche zur Hülse hin: %1.</translation>
    </message>
    <message>
        <source>The sleeve slides over the tab: %1.</source>
        <translation>Die Hülse gleitet über die Lasche: %1.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>state of a joint</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Drawn as it was read, not as its layout was entered: %1. Look at the real one.</source>
        <comment>names of couplings</comment>
        <translation>Gezeichnet, wie gemessen wurde, nicht wie die Anordnung eingetragen ist: %1. Den echten Anschluss ansehen.</translation>
    </message>
    <message>
        <source>Engaged all the way.</source>
        <translation>Ganz im Eingriff.</translation>
    </message>
    <message>
        <source>The parts meet all round, flush.</source>
        <translation>Die Teile liegen rundum bündig an.</translation>
    </message>
    <message>
        <source>Line or rod connected, as its manual says.</source>
        <translation>Leitung oder Stange angeschlossen, wie sein Handbuch sagt.</translation>
    </message>
    <message>
        <source>Connected as its manual says.</source>
        <translation>Angeschlossen, wie sein Handbuch sagt.</translation>
    </message>
    <message>
        <source>Ball in the socket, at the bottom.</source>
        <translation>Kugel in der Pfanne, am Grund.</translation>
    </message>
    <message>
        <source>Plunger home: the tab at its place, the witness hole clear.</source>
        <translation>Riegel ganz eingerastet: die Lasche an ihrem Platz, die Kontrollbohrung frei.</translation>
    </message>
    <message>
        <source>Sleeve at its stop, no thread showing.</source>
        <translation>Hülse am Anschlag, kein Gewinde zu sehen.</translation>
    </message>
    <message>
        <source>Safety pin in and through.</source>
        <translation>Sicherungsnadel drin und durch.</translation>
    </message>
    <message>
        <source>Nobody has said how plunger and sleeve stand to each other at: %1. The parts may lie otherwise there.</source>
        <comment>names of couplings</comment>
        <translation>Niemand hat gesagt, wie Riegel und Hülse zueinander stehen bei: %1. Die Teile können dort anders liegen.</translation>
    </message>
    <message>
        <source>To keep in mind</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>One sign alone says little. Look, gap, pull and second person stand beside each other, and none replaces another.</source>
        <translation>Ein Anzeichen allein sagt wenig. Sichtkontrolle, Spalt, Zugprobe und zweite Person stehen nebeneinander, und keines ersetzt ein anderes.</translation>
    </message>
    <message>
        <source>An empty socket can look locked, and its gap can read like any other. First the ball.</source>
        <translation>Eine leere Pfanne kann verriegelt aussehen, und an ihrem Spalt kann dasselbe gemessen werden wie an jedem anderen. Zuerst die Kugel.</translation>
    </message>
    <message>
        <source>A part-seated joint can still move its control, go unnoticed in the control check, and let go later.</source>
        <translation>Eine halb eingerastete Verbindung kann ihre Steuerung trotzdem noch bewegen, in der Ruderprobe unbemerkt bleiben und später aufgehen.</translation>
    </message>
    <message>
        <source>Pull: hand on the rod, clear of plunger and sleeve, firmly away from the ball, in the release direction and slightly off it. Nothing moves.</source>
        <translation>Zugprobe: Hand an der Stange, frei von Riegel und Hülse, kräftig von der Kugel weg ziehen, in Löserichtung und leicht schräg dazu. Nichts bewegt sich.</translation>
    </message>
    <message>
        <source>“Cannot see” is an answer: then the rigging stops until somebody has seen it.</source>
        <translation>„Nicht zu sehen“ ist eine Antwort: Dann hält das Aufrüsten an, bis es jemand gesehen hat.</translation>
    </message>
    <message>
        <source>Connecting again without finding out why is not a fix.</source>
        <translation>Wieder anschließen, ohne den Grund zu finden, behebt nichts.</translation>
    </message>
    <message>
        <source>Called away in the middle of a joint: begin it again, at the look.</source>
        <translation>Mitten in einer Verbindung weggerufen: diese neu beginnen, mit der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>The second person looks and pulls without seeing or hearing the first result, and connected none of these joints.</source>
        <translation>Die zweite Person macht Sichtkontrolle und Zugprobe, ohne das erste Ergebnis zu sehen oder zu hören, und hat keine dieser Verbindungen angeschlossen.</translation>
    </message>
    <message>
        <source>After a hand on a joint: look at it again, then the control check of its surfaces again.</source>
        <translation>Hat jemand an eine Verbindung gefasst: sie noch einmal ansehen, dann noch einmal die Ruderprobe ihrer Ruder.</translation>
    </message>
</context>
<context>
    <name>CauseWords</name>
    <message>
        <source>The readings cannot tell which of these it is, or whether it is one of them.</source>
        <translation>Die Messungen können nicht sagen, welches davon es ist, oder ob es eines davon ist.</translation>
    </message>
    <message>
        <source>Check the leaf set, read again with another person, and look at each joint.</source>
        <translation>Den Blattsatz prüfen, mit einer anderen Person noch einmal messen und jede Verbindung ansehen.</translation>
    </message>
    <message>
        <source>Stiff grease leaves plungers short.</source>
        <translation>Durch steifes Fett rasten Riegel nicht ganz ein.</translation>
    </message>
    <message>
        <source>%1 Seen with such readings: %2. Look at: %3. For: %4.</source>
        <comment>pattern, causes, places, persons</comment>
        <translation>%1 Kommt bei solchen Messungen vor: %2. Anzusehen: %3. Für: %4.</translation>
    </message>
    <message>
        <source>worn, burred or dirty leaves, another person's hand, stiff grease that leaves plungers short</source>
        <translation>abgenutzte, gratige oder schmutzige Blätter, die Hand einer anderen Person, steifes Fett, durch das Riegel nicht ganz einrasten</translation>
    </message>
    <message>
        <source>the leaf set; the same couplings read again by another person; each joint, its plunger and its grease</source>
        <translation>der Blattsatz; dieselben Anschlüsse, von einer anderen Person noch einmal gemessen; jede Verbindung, ihr Riegel und ihr Fett</translation>
    </message>
    <message>
        <source>the owner</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>The gap grows slowly.</source>
        <translation>Der Spalt wächst langsam.</translation>
    </message>
    <message>
        <source>The gap shrinks slowly.</source>
        <translation>Der Spalt schrumpft langsam.</translation>
    </message>
    <message>
        <source>a sleeve stop that settles back, a creeping locknut</source>
        <translation>ein Anschlag der Hülse, der zurückweicht, eine wandernde Kontermutter</translation>
    </message>
    <message>
        <source>a sleeve edge that spreads, a sleeve creeping forward, dirt under the sleeve stop</source>
        <translation>ein Hülsenrand, der sich aufweitet, eine nach vorn wandernde Hülse, Schmutz unter dem Anschlag der Hülse</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between causes</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>the ball (is it round?), the plunger nose (is it polished?), the thread</source>
        <translation>die Kugel (ist sie rund?), die Riegelnase (ist sie blank gerieben?), das Gewinde</translation>
    </message>
    <message>
        <source>the sleeve stop, cleaned first; then ball, plunger nose and thread</source>
        <translation>der Anschlag der Hülse, zuerst gereinigt; dann Kugel, Riegelnase und Gewinde</translation>
    </message>
    <message>
        <source>the engineer</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>wear of the ball or the plunger nose, which lets the plunger travel on</source>
        <translation>Verschleiß der Kugel oder der Riegelnase, durch den der Riegel weiter vorläuft</translation>
    </message>
    <message>
        <source>wear of the ball or the plunger nose (which way it moves the gap hangs on the layout)</source>
        <translation>Verschleiß der Kugel oder der Riegelnase (wohin er den Spalt verschiebt, hängt von der Anordnung ab)</translation>
    </message>
    <message>
        <source>The readings scatter more than they did.</source>
        <translation>Die Messungen streuen mehr als früher.</translation>
    </message>
    <message>
        <source>a tired plunger or sleeve spring, dry or hardened grease, a socket in which the ball rests at several places, several measurers</source>
        <translation>eine müde Riegel- oder Hülsenfeder, trockenes oder verhärtetes Fett, eine Pfanne, in der die Kugel an mehreren Stellen liegt, mehrere Messende</translation>
    </message>
    <message>
        <source>the feel of the springs, the grease, free play, who measured</source>
        <translation>wie sich die Federn anfühlen, das Fett, Spiel, wer gemessen hat</translation>
    </message>
    <message>
        <source>the owner, then the engineer</source>
        <translation>Halter, dann Prüfer</translation>
    </message>
    <message>
        <source>The readings scatter less than they did.</source>
        <translation>Die Messungen streuen weniger als früher.</translation>
    </message>
    <message>
        <source>readings copied, leaves too coarse, one person who writes what is expected</source>
        <translation>abgeschriebene Messungen, zu grobe Blätter, eine Person, die aufschreibt, was erwartet wird</translation>
    </message>
    <message>
        <source>the step of the leaves, the times of the readings, a second reading taken blind</source>
        <translation>die Stufung der Blätter, die Uhrzeiten der Messungen, eine zweite, blind genommene Messung</translation>
    </message>
    <message>
        <source>The readings moved by a step, beside an entry in the events.</source>
        <translation>Die Messungen haben einen Sprung gemacht, neben einem Eintrag in den Ereignissen.</translation>
    </message>
    <message>
        <source>rod length set anew, ball, socket, sleeve or spring changed, cleaned and greased</source>
        <translation>Stangenlänge neu eingestellt, Kugel, Pfanne, Hülse oder Feder getauscht, gereinigt und gefettet</translation>
    </message>
    <message>
        <source>what was done that day; a new fitting with its own baseline, compared with the old one</source>
        <translation>was an diesem Tag getan wurde; ein neuer Einbau mit eigener Grundreihe, verglichen mit dem alten</translation>
    </message>
    <message>
        <source>The readings moved by a step and stayed there.</source>
        <translation>Die Messungen haben einen Sprung gemacht und sind dort geblieben.</translation>
    </message>
    <message>
        <source>a sleeve that moved, a loose locknut, a bent tab, a cracked sleeve, a part swapped</source>
        <translation>eine verschobene Hülse, eine lose Kontermutter, eine verbogene Lasche, eine gerissene Hülse, ein getauschtes Teil</translation>
    </message>
    <message>
        <source>thread showing, the paint mark on the locknut, cracks in the sleeve</source>
        <translation>sichtbares Gewinde, die Farbmarke an der Kontermutter, Risse in der Hülse</translation>
    </message>
    <message>
        <source>The last reading lay outside the band.</source>
        <translation>Die letzte Messung lag außerhalb des Bandes.</translation>
    </message>
    <message>
        <source>a part-seated ball, a sleeve not at its stop, grit or a plug of grease, a tilted or burred leaf, a figure read or written wrongly</source>
        <translation>eine halb eingerastete Kugel, eine Hülse nicht am Anschlag, Sand oder ein Fettpfropfen, ein schief gehaltenes oder gratiges Blatt, eine falsch abgelesene oder geschriebene Zahl</translation>
    </message>
    <message>
        <source>what was found and done each time. Stop, leave it as it is, call. Only when the cause is found: disconnect, clean, connect, look, pull, read</source>
        <translation>was jedes Mal gefunden und getan wurde. Aufhören, stehen lassen, wie es ist, anrufen. Erst wenn die Ursache gefunden ist: trennen, reinigen, anschließen, Sichtkontrolle, Zugprobe, messen</translation>
    </message>
    <message>
        <source>whoever rigs, then the engineer</source>
        <translation>wer aufrüstet, dann Prüfer</translation>
    </message>
    <message>
        <source>The same coupling on the other side moves the same way.</source>
        <translation>Derselbe Anschluss auf der anderen Seite verschiebt sich ebenso.</translation>
    </message>
    <message>
        <source>wear by use, grease that has stiffened</source>
        <translation>Verschleiß durch Gebrauch, steif gewordenes Fett</translation>
    </message>
    <message>
        <source>plunger, grease and wear of both; the count of riggings</source>
        <translation>Riegel, Fett und Verschleiß auf beiden Seiten; wie oft aufgerüstet wurde</translation>
    </message>
    <message>
        <source>%1 of %2 couplings moved together that day.</source>
        <translation>%1 von %2 Anschlüssen haben sich an dem Tag gemeinsam verändert.</translation>
    </message>
    <message>
        <source>At a rigging the joint was found not secured.</source>
        <translation>Bei einem Aufrüsten wurde die Verbindung nicht gesichert vorgefunden.</translation>
    </message>
    <message>
        <source>At a rigging the joint was found part-seated.</source>
        <translation>Bei einem Aufrüsten wurde die Verbindung halb eingerastet vorgefunden.</translation>
    </message>
    <message>
        <source>a sleeve that was not let go to its stop or stuck before it, a pin left out, haste</source>
        <translation>eine Hülse, die nicht bis zum Anschlag lief oder davor klemmte, eine vergessene Sicherungsnadel, Eile</translation>
    </message>
    <message>
        <source>a ball that was not pushed home, stiff grease or grit before the plunger, haste</source>
        <translation>eine Kugel, die nicht ganz hineingedrückt wurde, steifes Fett oder Schmutz vor dem Riegel, Eile</translation>
    </message>
    <message>
        <source>what was found and done each time; plunger, sleeve or pin, and their springs</source>
        <translation>was jedes Mal gefunden und getan wurde; Riegel, Hülse oder Nadel und ihre Federn</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period, the last one too.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes, auch die letzte.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes, auch die letzte.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period, one of them at the last rigging.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes, und zwar beim letzten Aufrüsten.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes, eine davon beim letzten Aufrüsten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; the last reading is near the edge.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes; die letzte Messung liegt nahe am Rand.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes; die letzte Messung liegt nahe am Rand.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; of the last reading it cannot be told where it lies.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes; von der letzten Messung ist nicht zu sagen, wo sie liegt.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes; von der letzten Messung ist nicht zu sagen, wo sie liegt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; for the last reading there is no band yet.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes; für die letzte Messung gibt es noch kein Band.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes; für die letzte Messung gibt es noch kein Band.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; the last reading is inside.</source>
        <translation>
            <numerusform>%n Messung lag in diesem Zeitraum außerhalb des Bandes; die letzte Messung liegt im Band.</numerusform>
            <numerusform>%n Messungen lagen in diesem Zeitraum außerhalb des Bandes; die letzte Messung liegt im Band.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ChainWords</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message numerus="yes">
        <source>%Ln fact(s), end %1</source>
        <comment>how many facts a file holds, and their short form</comment>
        <translation>
            <numerusform>%Ln Eintrag, Endstand %1</numerusform>
            <numerusform>%Ln Einträge, Endstand %1</numerusform>
        </translation>
    </message>
    <message>
        <source>File: %1</source>
        <translation>Datei: %1</translation>
    </message>
    <message>
        <source>Whole hash at the end (SHA-256): %1</source>
        <translation>Ganzer Hash am Ende (SHA-256): %1</translation>
    </message>
    <message>
        <source>The end stands for every fact as it was saved. Compare it with an earlier print. Whether each fact still reads as it was saved is told beside it. It is no signature: somebody who works out the whole file anew leaves no trace. Keep your prints.</source>
        <translation>Der Endstand steht für jeden Eintrag, wie er gespeichert wurde. Mit einem früheren Ausdruck vergleichen. Ob jeder Eintrag noch so lautet, wie er gespeichert wurde, ist daneben gesagt. Er ist keine Unterschrift: Wer die ganze Datei neu berechnet, hinterlässt keine Spur. Ausdrucke aufheben.</translation>
    </message>
    <message>
        <source>1 fact in this file is not as Rigband saved it.</source>
        <translation>1 Eintrag in dieser Datei ist nicht so, wie Rigband ihn gespeichert hat.</translation>
    </message>
    <message>
        <source>%1 facts in this file are not as Rigband saved them.</source>
        <translation>%1 Einträge in dieser Datei sind nicht so, wie Rigband sie gespeichert hat.</translation>
    </message>
    <message>
        <source>Another program has changed the file. Rigband cannot tell what stood there before: compare with the copies beside the file and with your prints, and ask who changed it. Until then trust no band and no verdict that rests on these facts.</source>
        <translation>Ein anderes Programm hat die Datei geändert. Rigband kann nicht sagen, was vorher dastand: mit den Kopien neben der Datei und mit den Ausdrucken vergleichen und fragen, wer sie geändert hat. Bis dahin keinem Band und keinem Urteil trauen, das auf diesen Einträgen beruht.</translation>
    </message>
    <message>
        <source>Every fact in this file reads as it was saved, as far as its chain tells.</source>
        <translation>Jeder Eintrag in dieser Datei lautet so, wie er gespeichert wurde, soweit die Kette es sagt.</translation>
    </message>
    <message>
        <source>Nothing is known of changes before the chain began: %1 facts were taken over as they stood, from an older file or from the one that this was handed on from.</source>
        <translation>Von Änderungen vor dem Beginn der Kette ist nichts bekannt: %1 Einträge wurden so übernommen, wie sie dastanden, aus einer älteren Datei oder aus der, aus der diese weitergegeben wurde.</translation>
    </message>
    <message>
        <source>The facts have not been held against the chain yet, so nothing is said of changes by other programs.</source>
        <translation>Die Einträge wurden noch nicht mit der Kette verglichen; über Änderungen durch andere Programme ist also nichts gesagt.</translation>
    </message>
    <message>
        <source>saved on %1</source>
        <translation>gespeichert am %1</translation>
    </message>
    <message>
        <source>saved on %1 by %2</source>
        <translation>gespeichert am %1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what, which value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Gone from the file: %1.</source>
        <comment>which fact</comment>
        <translation>Aus der Datei verschwunden: %1.</translation>
    </message>
    <message>
        <source>Changed since it was saved: %1. The file now says: %2.</source>
        <comment>which fact, what it says</comment>
        <translation>Seit dem Speichern geändert: %1. Die Datei sagt jetzt: %2.</translation>
    </message>
    <message>
        <source>Put in by another program: %1. It says: %2.</source>
        <comment>which fact, what it says</comment>
        <translation>Von einem anderen Programm eingefügt: %1. Inhalt: %2.</translation>
    </message>
    <message>
        <source>A fact saved just before this one is missing, or the order was changed: %1.</source>
        <comment>which fact</comment>
        <translation>Ein kurz vor diesem gespeicherter Eintrag fehlt, oder die Reihenfolge wurde geändert: %1.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more, which are not listed.</source>
        <translation>
            <numerusform>Und %n weiterer, der nicht aufgeführt ist.</numerusform>
            <numerusform>Und %n weitere, die nicht aufgeführt sind.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is how this file ends now.</source>
        <translation>Mit %1 endet diese Datei jetzt.</translation>
    </message>
    <message>
        <source>%1 is how this file ended after fact %2, saved on %3.</source>
        <translation>Mit %1 endete diese Datei nach Eintrag %2, gespeichert am %3.</translation>
    </message>
    <message>
        <source>But facts in it have been changed since, see above.</source>
        <translation>Aber Einträge darin wurden seither geändert, siehe oben.</translation>
    </message>
    <message>
        <source>Every fact saved up to then is there and reads as it was saved.</source>
        <translation>Jeder bis dahin gespeicherte Eintrag ist da und lautet so, wie er gespeichert wurde.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>two sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Type what stands after “end” at the foot of an earlier print, several with commas between: the report says whether this file still has it.</source>
        <translation>Eingeben, was am Fuß eines früheren Ausdrucks hinter „Endstand“ steht, mehrere durch Kommas getrennt: Der Bericht sagt, ob diese Datei ihn noch hat.</translation>
    </message>
    <message>
        <source>“%1” is not an end. An end has ten signs, such as ABCDE-FG234; 0, 1, 8 and 9 do not occur. Look at the foot of the print again.</source>
        <translation>„%1“ ist kein Endstand. Ein Endstand hat zehn Zeichen, etwa ABCDE-FG234; 0, 1, 8 und 9 kommen nicht vor. Am Fuß des Ausdrucks noch einmal nachsehen.</translation>
    </message>
    <message>
        <source>These readings want a second look. Each may have a plain reason: readings that were corrected or taken out since, another baseline, a laptop whose clock was wrong.</source>
        <translation>Diese Messungen verdienen einen zweiten Blick. Jede kann einen einfachen Grund haben: Messungen, die seither berichtigt oder herausgenommen wurden, eine andere Grundreihe, ein Laptop, dessen Uhr falsch ging.</translation>
    </message>
    <message>
        <source>No reading of the period was shown another verdict at the time than is worked out now, saved under a clock that had been set back, or saved into a closed record.</source>
        <translation>Keine Messung des Zeitraums zeigte damals ein anderes Urteil, als jetzt errechnet wird, keine wurde unter einer zurückgestellten Uhr gespeichert und keine in ein abgeschlossenes Protokoll.</translation>
    </message>
    <message>
        <source>Shown at the time: %1. Worked out now: %2.</source>
        <translation>Damals gezeigt: %1. Jetzt errechnet: %2.</translation>
    </message>
    <message>
        <source>Saved at %1 by the clock, which is earlier than something saved before it: the clock had been set back.</source>
        <translation>Laut Uhr gespeichert: %1. Das ist früher als etwas, das davor gespeichert wurde: Die Uhr war zurückgestellt worden.</translation>
    </message>
    <message>
        <source>Saved at %1 into a record that had been closed before.</source>
        <translation>Gespeichert: %1, in ein Protokoll, das schon abgeschlossen war.</translation>
    </message>
    <message>
        <source>The file as evidence</source>
        <translation>Die Datei als Beleg</translation>
    </message>
    <message>
        <source>Show the facts</source>
        <translation>Einträge zeigen</translation>
    </message>
    <message>
        <source>Show what does not stand as it was saved (Ctrl+7)</source>
        <translation>Zeigen, was nicht so dasteht, wie es gespeichert wurde (Strg+7)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <comment>from the list of changed facts</comment>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>Back to the page before (Esc)</source>
        <comment>from the list of changed facts</comment>
        <translation>Zurück zur vorigen Seite (Esc)</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>airframe</source>
        <translation>Flugzeug</translation>
    </message>
    <message>
        <source>leaf set or gauge</source>
        <translation>Blattsatz oder Lehre</translation>
    </message>
    <message>
        <source>check of a gauge</source>
        <translation>Prüfung einer Lehre</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>Einbau</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>rigging record</source>
        <translation>Aufrüstprotokoll</translation>
    </message>
    <message>
        <source>who connected</source>
        <translation>wer angeschlossen hat</translation>
    </message>
    <message>
        <source>answer of the look</source>
        <translation>Antwort der Sichtkontrolle</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>struck reading</source>
        <translation>gestrichene Messung</translation>
    </message>
    <message>
        <source>frozen baseline</source>
        <translation>festgeschriebene Grundreihe</translation>
    </message>
    <message>
        <source>interruption</source>
        <translation>Unterbrechung</translation>
    </message>
    <message>
        <source>end of a record</source>
        <translation>Ende eines Protokolls</translation>
    </message>
    <message>
        <source>control surface</source>
        <translation>Ruder</translation>
    </message>
    <message>
        <source>answer of the control check</source>
        <translation>Antwort der Ruderprobe</translation>
    </message>
    <message>
        <source>measured deflection</source>
        <translation>gemessener Ausschlag</translation>
    </message>
    <message>
        <source>tick of a list</source>
        <translation>Haken in einer Liste</translation>
    </message>
    <message>
        <source>question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>answer to a question</source>
        <translation>Antwort auf eine Frage</translation>
    </message>
    <message>
        <source>joint play</source>
        <translation>Gelenkspiel</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>withdrawn photo</source>
        <translation>zurückgezogenes Foto</translation>
    </message>
    <message>
        <source>round of practice</source>
        <translation>Übungsrunde</translation>
    </message>
    <message>
        <source>answer in practice</source>
        <translation>Antwort in der Übung</translation>
    </message>
    <message>
        <source>rigging under supervision</source>
        <translation>betreutes Aufrüsten</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>Einweisung</translation>
    </message>
    <message>
        <source>crossed study</source>
        <translation>Kreuzversuch</translation>
    </message>
    <message>
        <source>place in a crossed study</source>
        <translation>Platz in einem Kreuzversuch</translation>
    </message>
    <message>
        <source>reading in practice</source>
        <translation>Messung in der Übung</translation>
    </message>
    <message>
        <source>taking back</source>
        <translation>Zurücknahme</translation>
    </message>
    <message>
        <source>decision between two files</source>
        <translation>Entscheidung zwischen zwei Dateien</translation>
    </message>
    <message>
        <source>who may see own practice</source>
        <translation>wer die eigene Übung sehen darf</translation>
    </message>
    <message>
        <source>fact</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>%1 is not an end of this file. Look whether it was typed rightly. It may belong to another file or copy, or have been printed between two joinings, or facts were changed or taken out. Find the file it was printed from.</source>
        <translation>%1 ist kein Endstand dieser Datei. Nachsehen, ob richtig getippt wurde. Er kann zu einer anderen Datei oder Kopie gehören oder gedruckt sein, bevor alle anderen Dateien aufgenommen waren, oder Einträge wurden geändert oder entfernt. Die Datei suchen, aus der gedruckt wurde.</translation>
    </message>
    <message>
        <source>What another program changed</source>
        <translation>Was ein anderes Programm geändert hat</translation>
    </message>
    <message>
        <source>The copies are listed with Ctrl+9.</source>
        <translation>Die Kopien zeigt Strg+9.</translation>
    </message>
    <message>
        <source>Every other fact in this file reads as it was saved, as far as its chain tells.</source>
        <translation>Jeder andere Eintrag in dieser Datei lautet so, wie er gespeichert wurde, soweit die Kette es sagt.</translation>
    </message>
    <message>
        <source>Name replaced on request: %1, on %2.</source>
        <translation>Name auf Wunsch ersetzt: %1, am %2.</translation>
    </message>
    <message>
        <source>Name replaced on request: %1, on %2 by %3.</source>
        <translation>Name auf Wunsch ersetzt: %1, am %2 von %3.</translation>
    </message>
    <message>
        <source>What was saved of these persons before cannot be held against the chain any more; every other fact is.</source>
        <translation>Was vorher von diesen Personen gespeichert wurde, kann nicht mehr mit der Kette verglichen werden; jeder andere Eintrag wird es.</translation>
    </message>
    <message>
        <source>replaced name</source>
        <translation>ersetzter Name</translation>
    </message>
    <message>
        <source>The last fact was saved on %1. Whether others behind it were cut off cannot be told from the file: compare its end with an earlier print or copy.</source>
        <translation>Der letzte Eintrag wurde am %1 gespeichert. Ob dahinter andere abgeschnitten wurden, ist aus der Datei nicht zu sehen: ihren Endstand mit einem früheren Ausdruck oder einer Kopie vergleichen.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln byte(s)</source>
        <translation>
            <numerusform>%Ln Byte</numerusform>
            <numerusform>%Ln Bytes</numerusform>
        </translation>
    </message>
    <message>
        <source>Where you know of no older file, somebody may have set this one back to before its chain began. Compare it with the copies beside it, and with the ends on earlier prints.</source>
        <translation>Wenn Sie von keiner älteren Datei wissen, hat vielleicht jemand diese auf einen Stand vor dem Beginn ihrer Kette zurückgesetzt. Diese Datei mit den Kopien daneben und mit den Endständen auf früheren Ausdrucken vergleichen.</translation>
    </message>
    <message>
        <source>On %1 other letters were given for %2. Those given last hold.</source>
        <translation>Am %1 wurden für %2 andere Buchstaben vergeben. Die zuletzt vergebenen gelten.</translation>
    </message>
    <message>
        <source>On %1 %3 gave other letters for %2. Those given last hold.</source>
        <translation>Am %1 hat %3 für %2 andere Buchstaben vergeben. Die zuletzt vergebenen gelten.</translation>
    </message>
    <message>
        <source>Saved at %1 by the clock, which is still to come: a clock was wrong, or another program wrote it.</source>
        <translation>Nach der Uhr gespeichert %1, und das steht noch bevor: eine Uhr ging falsch, oder ein anderes Programm hat es geschrieben.</translation>
    </message>
    <message>
        <source>Wants a second look: %1. %2</source>
        <comment>which fact, why</comment>
        <translation>Einen zweiten Blick wert: %1. %2</translation>
    </message>
</context>
<context>
    <name>ConflictWords</name>
    <message>
        <source>One record was closed twice</source>
        <translation>Ein Protokoll wurde zweimal abgeschlossen</translation>
    </message>
    <message>
        <source>One question was answered twice</source>
        <translation>Eine Frage wurde zweimal beantwortet</translation>
    </message>
    <message>
        <source>One thing was changed twice</source>
        <translation>Eine Sache wurde zweimal geändert</translation>
    </message>
    <message>
        <source>One reading was corrected twice</source>
        <translation>Eine Messung wurde zweimal berichtigt</translation>
    </message>
    <message>
        <source>One day has two rigging records</source>
        <translation>Ein Tag hat zwei Aufrüstprotokolle</translation>
    </message>
    <message>
        <source>One name stands twice</source>
        <translation>Ein Name steht zweimal da</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between what is said of a conflict</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Until somebody decides, the first of them counts: it was saved first.</source>
        <translation>Bis jemand entscheidet, zählt das erste: Es wurde zuerst gespeichert.</translation>
    </message>
    <message>
        <source>Until somebody decides, the first of them holds: it is the newer one.</source>
        <translation>Bis jemand entscheidet, gilt das erste: Es ist das neuere.</translation>
    </message>
    <message>
        <source>Until somebody decides, both count as readings. The other one is then struck.</source>
        <translation>Bis jemand entscheidet, zählen beide als Messungen. Die andere wird dann gestrichen.</translation>
    </message>
    <message>
        <source>Both records stay as they are. Somebody says whether they tell of one rigging.</source>
        <translation>Beide Protokolle bleiben, wie sie sind. Jemand sagt, ob sie von ein und demselben Aufrüsten handeln.</translation>
    </message>
    <message>
        <source>Until somebody decides, they are two, and each is listed.</source>
        <translation>Bis jemand entscheidet, sind es zwei, und jedes steht in der Liste.</translation>
    </message>
    <message>
        <source>The first</source>
        <translation>Das erste</translation>
    </message>
    <message>
        <source>The other</source>
        <translation>Das andere</translation>
    </message>
    <message>
        <source>The first holds</source>
        <translation>Das erste gilt</translation>
    </message>
    <message>
        <source>The other holds</source>
        <translation>Das andere gilt</translation>
    </message>
    <message>
        <source>Two riggings</source>
        <translation>Zweimal aufgerüstet</translation>
    </message>
    <message>
        <source>Two different things</source>
        <translation>Zwei verschiedene Dinge</translation>
    </message>
    <message>
        <source>One and the same rigging</source>
        <translation>Ein und dasselbe Aufrüsten</translation>
    </message>
    <message>
        <source>One and the same</source>
        <translation>Ein und dasselbe</translation>
    </message>
    <message>
        <source>Two laptops say different things: 1 is open for a person to decide.</source>
        <translation>Zwei Laptops sagen Verschiedenes: 1 Widerspruch ist offen, eine Person muss entscheiden.</translation>
    </message>
    <message>
        <source>Two laptops say different things: %1 are open for a person to decide.</source>
        <translation>Zwei Laptops sagen Verschiedenes: %1 Widersprüche sind offen, eine Person muss entscheiden.</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>Show what was decided apart (Ctrl+8)</source>
        <translation>Zeigen, was getrennt entschieden wurde (Strg+8)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <comment>from what was decided apart</comment>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>Back to the page before (Esc)</source>
        <comment>from what was decided apart</comment>
        <translation>Zurück zur vorigen Seite (Esc)</translation>
    </message>
    <message>
        <source>What two laptops say differently</source>
        <translation>Was zwei Laptops verschieden sagen</translation>
    </message>
    <message>
        <source>Nothing is open for a person to decide.</source>
        <translation>Nichts ist offen, das eine Person entscheiden muss.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Offen: %1</translation>
    </message>
    <message>
        <source>Up and Down choose, Tab goes on, Esc goes back.</source>
        <translation>Auf und Ab wählen, Tab geht weiter, Esc geht zurück.</translation>
    </message>
    <message>
        <source>Who decides</source>
        <translation>Wer entscheidet</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Say who decides this.</source>
        <translation>Angeben, wer dies entscheidet.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Whom you asked, what you looked at.</source>
        <translation>Wen Sie gefragt und was Sie angesehen haben.</translation>
    </message>
    <message>
        <source>Say why: both stay in the file, and others will ask.</source>
        <translation>Angeben, warum: Beide bleiben in der Datei, und andere werden fragen.</translation>
    </message>
    <message>
        <source>Kept. Both still stand in the file.</source>
        <translation>Festgehalten. Beide stehen weiter in der Datei.</translation>
    </message>
    <message>
        <source>If they are one and the same, stop using one of them and rename it in Set up.</source>
        <translation>Wenn sie ein und dasselbe sind, eines davon nicht mehr verwenden und es unter Einrichten umbenennen.</translation>
    </message>
    <message>
        <source>Nobody has decided these yet. Ask those who are named, then let a person decide in Rigband (Ctrl+8).</source>
        <translation>Hierüber hat noch niemand entschieden. Die Genannten fragen, dann eine Person in Rigband entscheiden lassen (Strg+8).</translation>
    </message>
    <message>
        <source>Decided</source>
        <translation>Entschieden</translation>
    </message>
    <message>
        <source>What was decided between two laptops</source>
        <translation>Was zwischen zwei Laptops entschieden wurde</translation>
    </message>
    <message>
        <source>Both sides still stand in the file.</source>
        <translation>Beide Seiten stehen weiter in der Datei.</translation>
    </message>
    <message>
        <source>%1: said by %2 on %3</source>
        <comment>what was decided, who, day</comment>
        <translation>%1: gesagt von %2 am %3</translation>
    </message>
    <message>
        <source>Open for a person to decide: %1. The first: %2. The other: %3.</source>
        <comment>which, both sides</comment>
        <translation>Offen, bis eine Person entscheidet: %1. Das erste: %2. Das andere: %3.</translation>
    </message>
    <message>
        <source>One thing is said twice, differently: it is open for a person to decide.</source>
        <translation>Eines ist zweimal verschieden gesagt: 1 Widerspruch ist offen, eine Person muss entscheiden.</translation>
    </message>
    <message>
        <source>Some things are said twice, differently: %1 are open for a person to decide.</source>
        <translation>Manches ist zweimal verschieden gesagt: %1 Widersprüche sind offen, eine Person muss entscheiden.</translation>
    </message>
    <message>
        <source>What is said twice, differently</source>
        <translation>Was zweimal verschieden gesagt ist</translation>
    </message>
    <message>
        <source>A reason is typed and nothing is decided by it yet. It is lost when this file is left now.</source>
        <translation>Eine Begründung ist eingegeben und noch nichts damit entschieden. Sie geht verloren, wenn diese Datei jetzt verlassen wird.</translation>
    </message>
</context>
<context>
    <name>ConnectedWords</name>
    <message>
        <source>0</source>
        <comment>key for: not known who connected</comment>
        <translation>0</translation>
    </message>
    <message>
        <source>Who connected</source>
        <translation>Wer angeschlossen hat</translation>
    </message>
    <message>
        <source>Name everybody who connected a joint on each side. An independent second person neither connected nor measured the joint.</source>
        <translation>Für jede Seite alle nennen, die dort eine Verbindung angeschlossen haben. Eine unabhängige zweite Person hat die Verbindung weder angeschlossen noch gemessen.</translation>
    </message>
    <message>
        <source>Who connected the left side?</source>
        <translation>Wer hat die linke Seite angeschlossen?</translation>
    </message>
    <message>
        <source>Who connected the right side?</source>
        <translation>Wer hat die rechte Seite angeschlossen?</translation>
    </message>
    <message>
        <source>Who connected the tail and the middle?</source>
        <translation>Wer hat Heck und Mitte angeschlossen?</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>person and the key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>answer and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>question, answer</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Not said yet.</source>
        <translation>Noch nicht gesagt.</translation>
    </message>
    <message>
        <source>Another press adds a name, or takes one of several away again.</source>
        <translation>Ein weiterer Tastendruck fügt einen Namen hinzu oder nimmt einen von mehreren wieder weg.</translation>
    </message>
    <message>
        <source>Next side  (Enter)</source>
        <translation>Nächste Seite  (Enter)</translation>
    </message>
    <message>
        <source>Who connected  (Enter)</source>
        <translation>Wer angeschlossen hat  (Enter)</translation>
    </message>
    <message>
        <source>Number keys: a name for the framed side. 0: not known.</source>
        <translation>Zifferntasten: ein Name für die umrandete Seite. 0: nicht bekannt.</translation>
    </message>
    <message>
        <source>named for every side</source>
        <translation>für jede Seite genannt</translation>
    </message>
    <message>
        <source>named for %1 of %2 sides</source>
        <translation>für %1 von %2 Seiten genannt</translation>
    </message>
    <message>
        <source>%1: looked or measured here first</source>
        <translation>%1: hat hier zuerst angesehen oder gemessen</translation>
    </message>
    <message>
        <source>%1: connected this side</source>
        <translation>%1: hat diese Seite angeschlossen</translation>
    </message>
    <message>
        <source>Choose the second person: somebody who neither connected nor measured this joint.</source>
        <translation>Die zweite Person wählen: jemand, der diese Verbindung weder angeschlossen noch gemessen hat.</translation>
    </message>
    <message>
        <source>Everybody in this file connected this side or measured this joint. Choose one who did not measure it; the paper will say that this was no independent look.</source>
        <translation>Alle in dieser Datei haben diese Seite angeschlossen oder diese Verbindung gemessen. Jemanden wählen, der sie nicht gemessen hat; auf dem Papier steht dann, dass dies keine unabhängige Sichtkontrolle war.</translation>
    </message>
    <message>
        <source>%1 connected this side. This is no independent look, and the paper will say so.</source>
        <translation>%1 hat diese Seite angeschlossen. Dies ist keine unabhängige Sichtkontrolle, und so steht es auf dem Papier.</translation>
    </message>
    <message>
        <source>The left side was connected by %1.</source>
        <translation>Die linke Seite wurde von %1 angeschlossen.</translation>
    </message>
    <message>
        <source>The right side was connected by %1.</source>
        <translation>Die rechte Seite wurde von %1 angeschlossen.</translation>
    </message>
    <message>
        <source>The tail and the middle were connected by %1.</source>
        <translation>Heck und Mitte wurden von %1 angeschlossen.</translation>
    </message>
    <message>
        <source>Nobody said who connected the left side.</source>
        <translation>Niemand hat gesagt, wer die linke Seite angeschlossen hat.</translation>
    </message>
    <message>
        <source>Nobody said who connected the right side.</source>
        <translation>Niemand hat gesagt, wer die rechte Seite angeschlossen hat.</translation>
    </message>
    <message>
        <source>Nobody said who connected the tail and the middle.</source>
        <translation>Niemand hat gesagt, wer Heck und Mitte angeschlossen hat.</translation>
    </message>
    <message>
        <source>Nobody said who connected the joints.</source>
        <translation>Niemand hat gesagt, wer die Verbindungen angeschlossen hat.</translation>
    </message>
    <message>
        <source>It is not known who connected the left side.</source>
        <translation>Es ist nicht bekannt, wer die linke Seite angeschlossen hat.</translation>
    </message>
    <message>
        <source>It is not known who connected the right side.</source>
        <translation>Es ist nicht bekannt, wer die rechte Seite angeschlossen hat.</translation>
    </message>
    <message>
        <source>It is not known who connected the tail and the middle.</source>
        <translation>Es ist nicht bekannt, wer Heck und Mitte angeschlossen hat.</translation>
    </message>
    <message>
        <source>No independent second name: %1 is named as having connected the left side.</source>
        <translation>Kein unabhängiger zweiter Name: Laut Angabe hat %1 die linke Seite angeschlossen.</translation>
    </message>
    <message>
        <source>No independent second name: %1 is named as having connected the right side.</source>
        <translation>Kein unabhängiger zweiter Name: Laut Angabe hat %1 die rechte Seite angeschlossen.</translation>
    </message>
    <message>
        <source>No independent second name: %1 is named as having connected the tail and the middle.</source>
        <translation>Kein unabhängiger zweiter Name: Laut Angabe hat %1 Heck und Mitte angeschlossen.</translation>
    </message>
    <message>
        <source>%1, the second name, did no second look at any joint of this record.</source>
        <translation>%1, der zweite Name, hat in diesem Protokoll an keiner Verbindung eine zweite Sichtkontrolle gemacht.</translation>
    </message>
    <message>
        <source>Whether %1, the second name, is independent is not known: it was not said for every side who connected.</source>
        <translation>Ob %1, der zweite Name, unabhängig ist, ist nicht bekannt: Es wurde nicht für jede Seite gesagt, wer angeschlossen hat.</translation>
    </message>
    <message>
        <source>No independent look at this joint: %1, the second person, is named as having connected this side.</source>
        <translation>Keine unabhängige Sichtkontrolle an dieser Verbindung: Laut Angabe hat %1, die zweite Person, diese Seite angeschlossen.</translation>
    </message>
</context>
<context>
    <name>ControlWords</name>
    <message>
        <source>Control check</source>
        <translation>Ruderprobe</translation>
    </message>
    <message>
        <source>%1 of %2 surfaces</source>
        <translation>%1 von %2 Rudern</translation>
    </message>
    <message>
        <source>no surfaces set up yet</source>
        <translation>noch keine Ruder eingerichtet</translation>
    </message>
    <message>
        <source>Control check  (Enter)</source>
        <translation>Ruderprobe  (Enter)</translation>
    </message>
    <message>
        <source>Surfaces of the control check</source>
        <translation>Ruder in der Ruderprobe</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1: fertig</translation>
    </message>
    <message>
        <source>%1: begun</source>
        <translation>%1: begonnen</translation>
    </message>
    <message>
        <source>%1: waiting</source>
        <translation>%1: wartet</translation>
    </message>
    <message>
        <source>%1: stop</source>
        <translation>%1: Stopp</translation>
    </message>
    <message>
        <source>%1: open question</source>
        <translation>%1: offene Frage</translation>
    </message>
    <message>
        <source>%1: try again</source>
        <translation>%1: neu probieren</translation>
    </message>
    <message>
        <source>to be tried again · %1</source>
        <translation>neu zu probieren · %1</translation>
    </message>
    <message>
        <source>Somebody was at %1 after this was tried. Try all of it again.</source>
        <translation>Nach dieser Probe war jemand an %1. Alles noch einmal probieren.</translation>
    </message>
    <message>
        <source>Nobody has set up yet what the control check goes through. Without surfaces the record cannot be closed as complete.</source>
        <translation>Noch hat niemand eingerichtet, was die Ruderprobe durchgeht. Ohne Ruder lässt sich das Protokoll nicht als vollständig abschließen.</translation>
    </message>
    <message>
        <source>Others are added in Set up (Ctrl+5).</source>
        <translation>Andere kommen unter Einrichten (Strg+5) hinzu.</translation>
    </message>
    <message>
        <source>Add the usual surfaces  (Enter)</source>
        <translation>Die üblichen Ruder hinzufügen  (Enter)</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>Am Ruder</translation>
    </message>
    <message>
        <source>In the cockpit</source>
        <translation>Im Cockpit</translation>
    </message>
    <message>
        <source>Choose who stands at the surface and who moves the control: two people. Nobody is filled in for you.</source>
        <translation>Wählen, wer am Ruder steht und wer die Steuerung bewegt: zwei Personen. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>One person cannot stand at the surface and sit in the cockpit. Choose two.</source>
        <translation>Eine Person kann nicht am Ruder stehen und im Cockpit sitzen. Zwei wählen.</translation>
    </message>
    <message>
        <source>Tell the cockpit what to move</source>
        <translation>Dem Cockpit sagen, was zu bewegen ist</translation>
    </message>
    <message>
        <source>Called aloud, from the surface</source>
        <translation>Laut angesagt, vom Ruder aus</translation>
    </message>
    <message>
        <source>What was seen, beside what was expected</source>
        <translation>Was gesehen wurde, neben dem Erwarteten</translation>
    </message>
    <message>
        <source>Stick to the left.</source>
        <translation>Knüppel nach links.</translation>
    </message>
    <message>
        <source>Stick to the right.</source>
        <translation>Knüppel nach rechts.</translation>
    </message>
    <message>
        <source>Stick back.</source>
        <translation>Knüppel ziehen.</translation>
    </message>
    <message>
        <source>Stick forward.</source>
        <translation>Knüppel drücken.</translation>
    </message>
    <message>
        <source>Left pedal.</source>
        <translation>Pedal links.</translation>
    </message>
    <message>
        <source>Right pedal.</source>
        <translation>Pedal rechts.</translation>
    </message>
    <message>
        <source>Flaps to positive.</source>
        <translation>Wölbklappen positiv.</translation>
    </message>
    <message>
        <source>Flaps to negative.</source>
        <translation>Wölbklappen negativ.</translation>
    </message>
    <message>
        <source>Airbrake lever back.</source>
        <translation>Bremsklappenhebel nach hinten.</translation>
    </message>
    <message>
        <source>Airbrake lever forward.</source>
        <translation>Bremsklappenhebel nach vorn.</translation>
    </message>
    <message>
        <source>Trim nose-up.</source>
        <translation>Trimmung schwanzlastig.</translation>
    </message>
    <message>
        <source>Trim nose-down.</source>
        <translation>Trimmung kopflastig.</translation>
    </message>
    <message>
        <source>Dump lever to open.</source>
        <translation>Ablasshebel auf.</translation>
    </message>
    <message>
        <source>Dump lever to shut.</source>
        <translation>Ablasshebel zu.</translation>
    </message>
    <message>
        <source>Move the control one way.</source>
        <translation>Die Steuerung in eine Richtung bewegen.</translation>
    </message>
    <message>
        <source>Move the control the other way.</source>
        <translation>Die Steuerung in die andere Richtung bewegen.</translation>
    </message>
    <message>
        <source>%1 What does the surface do?</source>
        <comment>what the cockpit moves</comment>
        <translation>%1 Was tut das Ruder?</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>question, answer</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Say it aloud, then press it.</source>
        <translation>Laut sagen, dann drücken.</translation>
    </message>
    <message>
        <source>Up</source>
        <comment>what a surface does</comment>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <comment>what a surface does</comment>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Pilot's left</source>
        <comment>what a surface does</comment>
        <translation>In Flugrichtung links</translation>
    </message>
    <message>
        <source>Pilot's right</source>
        <comment>what a surface does</comment>
        <translation>In Flugrichtung rechts</translation>
    </message>
    <message>
        <source>Out</source>
        <comment>what a surface does</comment>
        <translation>Fährt aus</translation>
    </message>
    <message>
        <source>In</source>
        <comment>what a surface does</comment>
        <translation>Fährt ein</translation>
    </message>
    <message>
        <source>Opens</source>
        <comment>what a surface does</comment>
        <translation>Öffnet</translation>
    </message>
    <message>
        <source>Shuts</source>
        <comment>what a surface does</comment>
        <translation>Schließt</translation>
    </message>
    <message>
        <source>Nothing</source>
        <comment>what a surface does</comment>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>N</source>
        <comment>key for: the surface does nothing</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>answer and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>%1 Seen: %2.</source>
        <comment>what the cockpit moved, what the surface did</comment>
        <translation>%1 Gesehen: %2.</translation>
    </message>
    <message>
        <source>%1 Seen: %2. Expected: %3.</source>
        <comment>what the cockpit moved, what the surface did, what it had to do</comment>
        <translation>%1 Gesehen: %2. Erwartet: %3.</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Erwartet: %1</translation>
    </message>
    <message>
        <source>Arrow keys: which way it moved. N: nothing. C: cannot see.</source>
        <translation>Pfeiltasten: wohin es sich bewegte. N: nichts. C: nicht zu sehen.</translation>
    </message>
    <message>
        <source>Held: resists one way?</source>
        <translation>Gehalten: Widerstand in eine Richtung?</translation>
    </message>
    <message>
        <source>Held: resists the other way?</source>
        <translation>Gehalten: Widerstand in die andere?</translation>
    </message>
    <message>
        <source>Is that what it should do?</source>
        <translation>Soll es das tun?</translation>
    </message>
    <message>
        <source>Full travel, to both stops?</source>
        <translation>Voller Weg, bis zu beiden Anschlägen?</translation>
    </message>
    <message>
        <source>Neutral with the control?</source>
        <translation>Neutral mit der Steuerung?</translation>
    </message>
    <message>
        <source>Free play as it should be?</source>
        <translation>Spiel, wie es sein soll?</translation>
    </message>
    <message>
        <source>Free, no rubbing?</source>
        <translation>Freigängig, kein Schleifen?</translation>
    </message>
    <message>
        <source>Both lock, with even force?</source>
        <translation>Beide verriegeln, gleich schwer?</translation>
    </message>
    <message>
        <source>Every notch, both equal?</source>
        <translation>Jede Raste, beide gleich?</translation>
    </message>
    <message>
        <source>Moves, and stays where it is set?</source>
        <translation>Bewegt sich und bleibt, wo gestellt?</translation>
    </message>
    <message>
        <source>What does the surface do, one way?</source>
        <translation>Was tut das Ruder in eine Richtung?</translation>
    </message>
    <message>
        <source>What does the surface do, the other way?</source>
        <translation>Was tut das Ruder in die andere Richtung?</translation>
    </message>
    <message>
        <source>Both open, both shut?</source>
        <translation>Beide auf, beide zu?</translation>
    </message>
    <message>
        <source>Palm near the drive; the cockpit pushes.</source>
        <translation>Handfläche nahe am Antrieb; das Cockpit drückt.</translation>
    </message>
    <message>
        <source>The same, the cockpit pulls.</source>
        <translation>Dasselbe, das Cockpit zieht.</translation>
    </message>
    <message>
        <source>Compare what it did with what is expected.</source>
        <translation>Vergleichen, was es tat und was erwartet wird.</translation>
    </message>
    <message>
        <source>Hand off; nothing stops it early.</source>
        <translation>Hand weg; nichts hält es vorzeitig auf.</translation>
    </message>
    <message>
        <source>Control centred: surface in line.</source>
        <translation>Steuerung mittig: Ruder fluchtet.</translation>
    </message>
    <message>
        <source>Cockpit held: no click, no more than ever.</source>
        <translation>Cockpit hält fest: kein Klacken, nicht mehr als sonst.</translation>
    </message>
    <message>
        <source>No rubbing, no change of friction.</source>
        <translation>Kein Schleifen, Reibung überall gleich.</translation>
    </message>
    <message>
        <source>Over centre; both rise together.</source>
        <translation>Über den Totpunkt; beide fahren gemeinsam aus.</translation>
    </message>
    <message>
        <source>Left and right stand alike in each.</source>
        <translation>Links und rechts stehen in jeder gleich.</translation>
    </message>
    <message>
        <source>Through its whole travel.</source>
        <translation>Über den ganzen Weg.</translation>
    </message>
    <message>
        <source>Together, and tight when shut.</source>
        <translation>Gemeinsam, und dicht, wenn zu.</translation>
    </message>
    <message>
        <source>Y, N, C answer the framed question. P, U, D go to a figure.</source>
        <translation>Y, N, C beantworten die umrahmte Frage. P, U, D gehen zu einem Wert.</translation>
    </message>
    <message>
        <source>Stopped: read what stands here before anything else. Enter once more goes on; this surface stays stopped, and nothing further is tried on it.</source>
        <translation>Gestoppt: vor allem anderen lesen, was hier steht. Noch einmal Enter geht weiter; dieses Ruder bleibt gestoppt, und nichts weiter wird daran probiert.</translation>
    </message>
    <message>
        <source>Next surface  (Enter)</source>
        <translation>Nächstes Ruder  (Enter)</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>%1 did not move as expected. Crossed or reversed controls have led to loss of control at lift-off. Nothing this check can find is worse. Stop the whole check here.</source>
        <translation>%1 hat sich nicht wie erwartet bewegt. Vertauschte oder verkehrt wirkende Ruder haben beim Abheben zum Verlust der Kontrolle geführt. Nichts, was diese Probe finden kann, ist schlimmer. Die ganze Probe hier abbrechen.</translation>
    </message>
    <message>
        <source>%1 did nothing while its control was moved. A surface that is not connected has led to loss of control at lift-off. Nothing this check can find is worse. Stop the whole check here.</source>
        <translation>%1 hat nichts getan, während die Steuerung bewegt wurde. Ein nicht angeschlossenes Ruder hat beim Abheben zum Verlust der Kontrolle geführt. Nichts, was diese Probe finden kann, ist schlimmer. Die ganze Probe hier abbrechen.</translation>
    </message>
    <message>
        <source>%1: “%2” was answered with no. Try nothing further on it.</source>
        <translation>%1: „%2“ wurde mit nein beantwortet. Daran nichts weiter probieren.</translation>
    </message>
    <message>
        <source>Leave it as it is, and call the person entitled to decide. Whom to call is not set up yet (Ctrl+5).</source>
        <translation>Stehen lassen, wie es ist, und die dazu berechtigte Person anrufen. Wen man anruft, ist noch nicht eingerichtet (Strg+5).</translation>
    </message>
    <message>
        <source>Leave it as it is, and call %1.</source>
        <translation>Stehen lassen, wie es ist, und anrufen: %1.</translation>
    </message>
    <message>
        <source>Leave it as it is, and call %1 (%2).</source>
        <translation>Stehen lassen, wie es ist, und anrufen: %1 (%2).</translation>
    </message>
    <message>
        <source>“Cannot see” was answered here. It stands, and the record cannot be closed as complete until a named person has said what was found.</source>
        <translation>Hier wurde „nicht zu sehen“ geantwortet. Das bleibt stehen, und das Protokoll lässt sich erst als vollständig abschließen, wenn jemand namentlich gesagt hat, was gefunden wurde.</translation>
    </message>
    <message>
        <source>Measured, where you measure</source>
        <translation>Gemessen, wo Sie messen</translation>
    </message>
    <message>
        <source>Free play at the trailing edge</source>
        <translation>Spiel an der Hinterkante</translation>
    </message>
    <message>
        <source>To the left</source>
        <translation>Nach links</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>To the right</source>
        <translation>Nach rechts</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>what is measured, and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Up and down in</source>
        <translation>Oben und unten in</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Measured: %1.</source>
        <translation>Gemessen: %1.</translation>
    </message>
    <message>
        <source>Measured: %1, which is %2.</source>
        <translation>Gemessen: %1, das sind %2.</translation>
    </message>
    <message>
        <source>A</source>
        <comment>key for who is at the surface</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>I</source>
        <comment>key for who is in the cockpit</comment>
        <translation>I</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key for free play</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>U</source>
        <comment>key for the deflection up</comment>
        <translation>U</translation>
    </message>
    <message>
        <source>D</source>
        <comment>key for the deflection down</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>From the manual, %1: at most %2.</source>
        <translation>Aus dem Handbuch, %1: höchstens %2.</translation>
    </message>
    <message>
        <source>From the manual, %1: %2, plus or minus %3.</source>
        <translation>Aus dem Handbuch, %1: %2, plus oder minus %3.</translation>
    </message>
    <message>
        <source>%1 The distance from the hinge is not set up, so the two cannot be compared.</source>
        <translation>%1 Der Abstand vom Scharnier ist nicht eingerichtet; die beiden lassen sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>%1 This is %2 more than the manual's most.</source>
        <translation>%1 Das ist %2 mehr als das Höchstmaß im Handbuch.</translation>
    </message>
    <message>
        <source>%1 This is %2 more than the manual's range.</source>
        <translation>%1 Das ist %2 mehr als der Bereich im Handbuch.</translation>
    </message>
    <message>
        <source>%1 This is %2 less than the manual's range.</source>
        <translation>%1 Das ist %2 weniger als der Bereich im Handbuch.</translation>
    </message>
    <message>
        <source>%1 This is no more than that.</source>
        <translation>%1 Das ist nicht mehr als dieser Wert.</translation>
    </message>
    <message>
        <source>%1 This lies in that range.</source>
        <translation>%1 Das liegt in diesem Bereich.</translation>
    </message>
    <message>
        <source>Up is %1 times down. About two to one is common practice, not a limit; the manual's figures decide.</source>
        <translation>Nach oben ist es %1-mal so viel wie nach unten. Etwa zwei zu eins ist üblich, kein Grenzwert; es gelten die Werte im Handbuch.</translation>
    </message>
    <message>
        <source>%1: left %2, right %3.</source>
        <comment>direction, figures</comment>
        <translation>%1: links %2, rechts %3.</translation>
    </message>
    <message>
        <source>%1: left %2, right %3, %4 apart.</source>
        <comment>direction, figures</comment>
        <translation>%1: links %2, rechts %3, Unterschied %4.</translation>
    </message>
    <message>
        <source>Tag the cockpit. Close the record with this open (last line of the list), or say under Questions (Ctrl+6) what was found, once a person entitled to decide has found it.</source>
        <translation>Warnschild ins Cockpit. Das Protokoll mit diesem offenen Punkt abschließen (letzte Zeile der Liste) oder unter Fragen (Strg+6) sagen, was gefunden wurde, sobald es eine berechtigte Person gefunden hat.</translation>
    </message>
</context>
<context>
    <name>CopyWords</name>
    <message>
        <source>Read what can be read into a new file…</source>
        <translation>Lesbares in eine neue Datei lesen…</translation>
    </message>
    <message>
        <source>Ctrl+R. The file that cannot be opened is only read and stays as it is.</source>
        <translation>Strg+R. Die Datei, die sich nicht öffnen lässt, wird nur gelesen und bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Nothing was found that had to be left out. What was never readable cannot be counted.</source>
        <translation>Es wurde nichts gefunden, was wegbleiben musste. Was nie lesbar war, lässt sich nicht zählen.</translation>
    </message>
    <message>
        <source>Copies of this file…</source>
        <translation>Kopien dieser Datei…</translation>
    </message>
    <message>
        <source>Open a file first: its copies lie in a folder beside it.</source>
        <translation>Erst eine Datei öffnen: Ihre Kopien liegen daneben in einem Ordner.</translation>
    </message>
    <message>
        <source>Copies of this file</source>
        <translation>Kopien dieser Datei</translation>
    </message>
    <message>
        <source>There is no copy yet. One is kept when a file is opened for the first time on a day.</source>
        <translation>Noch gibt es keine Kopie. Eine wird behalten, wenn eine Datei an einem Tag zum ersten Mal geöffnet wird.</translation>
    </message>
    <message>
        <source>Copies in the folder beside it: %1</source>
        <translation>Kopien im Ordner daneben: %1</translation>
    </message>
    <message>
        <source>Up and Down: another copy. Enter: look at it. Esc: back.</source>
        <translation>Auf und Ab: andere Kopie. Enter: ansehen. Esc: zurück.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day and size of a copy</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The copy: %1.</source>
        <translation>Die Kopie: %1.</translation>
    </message>
    <message>
        <source>Nothing had been saved in it yet.</source>
        <translation>Es war noch nichts darin gespeichert.</translation>
    </message>
    <message>
        <source>The file that is open never ended so: it and the copy went their own ways, or facts that the copy holds were changed or taken out of the file since.</source>
        <translation>Die offene Datei hat nie so geendet: Sie und die Kopie gingen eigene Wege, oder Einträge, die die Kopie enthält, wurden seither in der Datei geändert oder herausgenommen.</translation>
    </message>
    <message>
        <source>The file that is open ended so after fact %1. But facts in it have been changed by another program since: the copy may hold what was saved.</source>
        <translation>Die offene Datei endete so nach Eintrag %1. Aber Einträge darin wurden seither von einem anderen Programm geändert: Die Kopie enthält vielleicht, was gespeichert wurde.</translation>
    </message>
    <message>
        <source>The file that is open ended so after fact %1: all that stood in the copy is still in the file.</source>
        <translation>Die offene Datei endete so nach Eintrag %1: Alles, was in der Kopie stand, ist noch in der Datei.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Enter. The copy is shown in place of the file and only read; nothing can be saved in it.</source>
        <translation>Enter. Die Kopie wird an Stelle der Datei gezeigt und nur gelesen; nichts lässt sich in ihr speichern.</translation>
    </message>
    <message>
        <source>Bring back as a new file…</source>
        <translation>Als neue Datei zurückholen…</translation>
    </message>
    <message>
        <source>Ctrl+B. What the copy holds is written under a new name and opened. The file and the copy stay as they are.</source>
        <translation>Strg+B. Was die Kopie enthält, wird unter einem neuen Namen geschrieben und geöffnet. Die Datei und die Kopie bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>%1 now holds what the copy held, and is opened. The file that the copy was made of stays as it is: what was saved in it since then is only there.</source>
        <translation>%1 enthält jetzt, was die Kopie enthielt, und ist geöffnet. Die Datei, von der die Kopie stammt, bleibt, wie sie ist: Was seither in ihr gespeichert wurde, steht nur dort.</translation>
    </message>
    <message>
        <source>This is a copy of %1, of %2. It is only looked at: nothing can be saved in it.</source>
        <translation>Das ist eine Kopie von %1, vom %2. Sie wird nur angesehen: Nichts lässt sich in ihr speichern.</translation>
    </message>
    <message>
        <source>Back to the file</source>
        <translation>Zurück zur Datei</translation>
    </message>
    <message>
        <source>Ctrl+W. The copy stays as it is.</source>
        <translation>Strg+W. Die Kopie bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file name of a copy, what it holds</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The end is a short sign for all that was saved, in its order. It stands at the foot of every print.</source>
        <translation>Der Endstand ist ein kurzes Zeichen für alles Gespeicherte, in seiner Reihenfolge. Er steht am Fuß jedes Ausdrucks.</translation>
    </message>
</context>
<context>
    <name>CouplingWords</name>
    <message>
        <source>Couplings in rigging order</source>
        <translation>Anschlüsse in der Reihenfolge beim Aufrüsten</translation>
    </message>
    <message>
        <source>No coupling yet. Start from the usual ones, or add your own.</source>
        <translation>Noch kein Anschluss. Mit den üblichen beginnen oder eigene hinzufügen.</translation>
    </message>
    <message>
        <source>Add a coupling</source>
        <translation>Anschluss hinzufügen</translation>
    </message>
    <message>
        <source>Move up  (Alt+Up)</source>
        <translation>Nach oben  (Alt+Auf)</translation>
    </message>
    <message>
        <source>Move down  (Alt+Down)</source>
        <translation>Nach unten  (Alt+Ab)</translation>
    </message>
    <message>
        <source>New fitting</source>
        <translation>Neuer Einbau</translation>
    </message>
    <message>
        <source>Usual couplings</source>
        <translation>Übliche Anschlüsse</translation>
    </message>
    <message>
        <source>Take out of use</source>
        <translation>Außer Gebrauch nehmen</translation>
    </message>
    <message>
        <source>Put back in use</source>
        <translation>Wieder in Gebrauch</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>order, coupling</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1 (out of use)</source>
        <translation>%1 (außer Gebrauch)</translation>
    </message>
    <message>
        <source>fitting since %1: %2</source>
        <translation>Einbau seit %1: %2</translation>
    </message>
    <message>
        <source>band drawn</source>
        <translation>Band gebildet</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>noch kein Band</translation>
    </message>
    <message>
        <source>layout A</source>
        <translation>Anordnung A</translation>
    </message>
    <message>
        <source>layout B</source>
        <translation>Anordnung B</translation>
    </message>
    <message>
        <source>layout C</source>
        <translation>Anordnung C</translation>
    </message>
    <message>
        <source>layout not known</source>
        <translation>Anordnung nicht bekannt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>A new coupling</source>
        <translation>Ein neuer Anschluss</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>As you say it at the wing: Left aileron, wing root.</source>
        <translation>Wie Sie es am Flügel sagen: Querruder links, Flügelwurzel.</translation>
    </message>
    <message>
        <source>&amp;Circuit</source>
        <translation>S&amp;teuerkreis</translation>
    </message>
    <message>
        <source>Aileron, airbrake, flap, elevator, trim …</source>
        <translation>Querruder, Bremsklappe, Wölbklappe, Höhenruder, Trimmung …</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>S&amp;eite</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Neither</source>
        <translation>Keine Seite</translation>
    </message>
    <message>
        <source>&amp;How it is reached</source>
        <translation>&amp;Zugang</translation>
    </message>
    <message>
        <source>From above by the hatch, mirror needed, fin top …</source>
        <translation>Von oben durchs Handloch, Spiegel nötig, Seitenflosse oben …</translation>
    </message>
    <message>
        <source>&amp;Layout of tab and sleeve</source>
        <translation>&amp;Anordnung von Lasche und Hülse</translation>
    </message>
    <message>
        <source>A: tab moves away from the sleeve</source>
        <translation>A: Lasche geht von der Hülse weg</translation>
    </message>
    <message>
        <source>B: tab moves towards the sleeve</source>
        <translation>B: Lasche geht zur Hülse hin</translation>
    </message>
    <message>
        <source>C: sleeve rides over the tab</source>
        <translation>C: Hülse läuft über die Lasche</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Locking moves the plunger tab away from the sleeve. Part-seated leaves the tab nearer: the gap is smaller, or the sleeve does not come to its stop and the gap is larger. The leaf goes between tab and sleeve.</source>
        <translation>Beim Verriegeln geht die Riegellasche von der Hülse weg. Halb eingerastet bleibt die Lasche näher: Der Spalt ist kleiner, oder die Hülse kommt nicht an ihren Anschlag und der Spalt ist größer. Das Blatt geht zwischen Lasche und Hülse.</translation>
    </message>
    <message>
        <source>Locking moves the plunger tab towards the sleeve. Part-seated leaves the tab short of its place: the gap is larger. The leaf goes between tab and sleeve.</source>
        <translation>Beim Verriegeln geht die Riegellasche zur Hülse hin. Halb eingerastet bleibt die Lasche vor ihrem Platz stehen: Der Spalt ist größer. Das Blatt geht zwischen Lasche und Hülse.</translation>
    </message>
    <message>
        <source>The sleeve slides over the plunger tab. A part-seated tab stops the sleeve early: the gap is larger. The leaf goes between the edge of the socket and the sleeve.</source>
        <translation>Die Hülse gleitet über die Riegellasche. Eine halb eingerastete Lasche hält die Hülse früher auf: Der Spalt ist größer. Das Blatt geht zwischen den Rand der Pfanne und die Hülse.</translation>
    </message>
    <message>
        <source>Leave it so until somebody has looked. Readings are watched on both sides in any case.</source>
        <translation>So lassen, bis jemand nachgesehen hat. Messungen werden in jedem Fall nach beiden Seiten beobachtet.</translation>
    </message>
    <message>
        <source>Where the lea&amp;f goes</source>
        <translation>Wo das &amp;Blatt hineingeht</translation>
    </message>
    <message>
        <source>Always the same place, from the same side.</source>
        <translation>Immer dieselbe Stelle, von derselben Seite.</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>A&amp;rt</translation>
    </message>
    <message>
        <source>Ball joint with sleeve</source>
        <translation>Kugelanschluss mit Hülse</translation>
    </message>
    <message>
        <source>Ball joint with safety pin</source>
        <translation>Kugelanschluss mit Sicherungsnadel</translation>
    </message>
    <message>
        <source>Ball joint with sleeve and pin</source>
        <translation>Kugelanschluss mit Hülse und Nadel</translation>
    </message>
    <message>
        <source>Connects by itself</source>
        <translation>Schließt selbsttätig an</translation>
    </message>
    <message>
        <source>Water ballast</source>
        <translation>Wasserballast</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderer</translation>
    </message>
    <message>
        <source>Asked: ball, plunger, sleeve at its stop; gap, pull, secured.</source>
        <translation>Gefragt: Kugel, Riegel, Hülse am Anschlag; Spalt, Zugprobe, gesichert.</translation>
    </message>
    <message>
        <source>Asked: ball, plunger, safety pin in and through; gap, pull, secured.</source>
        <translation>Gefragt: Kugel, Riegel, Sicherungsnadel drin und durch; Spalt, Zugprobe, gesichert.</translation>
    </message>
    <message>
        <source>Asked: ball, plunger, sleeve at its stop, safety pin in and through; gap, pull, secured.</source>
        <translation>Gefragt: Kugel, Riegel, Hülse am Anschlag, Sicherungsnadel drin und durch; Spalt, Zugprobe, gesichert.</translation>
    </message>
    <message>
        <source>As tailplane or wing root go on. Asked: engaged all the way, parts meet all round, flush. No leaf goes in, so there is no gap to measure.</source>
        <translation>Schließt an, wenn das Höhenleitwerk aufgesetzt oder der Flügel angesteckt wird. Gefragt: ganz im Eingriff, Teile liegen rundum bündig an. Kein Blatt geht hinein, darum ist kein Spalt zu messen.</translation>
    </message>
    <message>
        <source>Asked: line or rod connected, and what there is below.</source>
        <translation>Gefragt: Leitung oder Stange angeschlossen, und was unten dazukommt.</translation>
    </message>
    <message>
        <source>Asked: connected as its manual says, and what there is below.</source>
        <translation>Gefragt: angeschlossen, wie das Handbuch sagt, und was unten dazukommt.</translation>
    </message>
    <message>
        <source>So&amp;mething to pull</source>
        <translation>Et&amp;was zum Ziehen</translation>
    </message>
    <message>
        <source>Something to sec&amp;ure: bolt, pin or clip</source>
        <translation>Etwas zu s&amp;ichern: Bolzen, Stift oder Klammer</translation>
    </message>
    <message>
        <source>A &amp;gap to measure with a leaf</source>
        <translation>Ein S&amp;palt, mit einem Blatt zu messen</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>kein Spalt zu messen</translation>
    </message>
    <message>
        <source>&amp;Place on the plan</source>
        <translation>Ort in der &amp;Draufsicht</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Not given</source>
        <translation>Ohne Angabe</translation>
    </message>
    <message>
        <source>Left wing root</source>
        <translation>Linke Flügelwurzel</translation>
    </message>
    <message>
        <source>Right wing root</source>
        <translation>Rechte Flügelwurzel</translation>
    </message>
    <message>
        <source>Left outer wing</source>
        <translation>Linker Außenflügel</translation>
    </message>
    <message>
        <source>Right outer wing</source>
        <translation>Rechter Außenflügel</translation>
    </message>
    <message>
        <source>Fuselage</source>
        <translation>Rumpf</translation>
    </message>
    <message>
        <source>Tail boom</source>
        <translation>Leitwerksträger</translation>
    </message>
    <message>
        <source>Fin foot</source>
        <translation>Seitenflosse unten</translation>
    </message>
    <message>
        <source>Fin top</source>
        <translation>Seitenflosse oben</translation>
    </message>
    <message>
        <source>Type a name for the coupling.</source>
        <translation>Einen Namen für den Anschluss eingeben.</translation>
    </message>
    <message>
        <source>This airframe already has a coupling “%1”. Say left or right, or where it is.</source>
        <translation>Dieses Flugzeug hat schon einen Anschluss „%1“. Links oder rechts dazuschreiben, oder wo er ist.</translation>
    </message>
    <message>
        <source>Take out of use: %1</source>
        <translation>Außer Gebrauch nehmen: %1</translation>
    </message>
    <message>
        <source>It leaves the rigging order and new records. Its readings, fittings and bands stay in the file, and it can be put back at any time.</source>
        <translation>Er verschwindet aus der Reihenfolge beim Aufrüsten und aus neuen Protokollen. Seine Messungen, Einbauten und Bänder bleiben in der Datei, und er kann jederzeit wieder in Gebrauch genommen werden.</translation>
    </message>
    <message>
        <source>Take it out of use</source>
        <translation>Außer Gebrauch nehmen</translation>
    </message>
    <message>
        <source>New fitting: %1</source>
        <translation>Neuer Einbau: %1</translation>
    </message>
    <message>
        <source>A new fitting ends the old baseline: from that day on this coupling has no band until new baseline readings are taken. Older readings stay with the fitting they were taken on. Use it after a refit, an adjustment or a changed part, and only then.</source>
        <translation>Ein neuer Einbau beendet die alte Grundreihe: Von diesem Tag an hat dieser Anschluss kein Band, bis eine neue Grundreihe gemessen ist. Ältere Messungen bleiben bei dem Einbau, an dem sie gemacht wurden. Zu verwenden, wenn neu eingebaut, eingestellt oder ein Teil getauscht wurde, und nur dann.</translation>
    </message>
    <message>
        <source>Fitted &amp;on</source>
        <translation>Eingebaut &amp;am</translation>
    </message>
    <message>
        <source>Why it &amp;begins</source>
        <translation>Warum er &amp;beginnt</translation>
    </message>
    <message>
        <source>First fitting</source>
        <translation>Erster Einbau</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Neu eingebaut</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>&amp;What was done, and by whom</source>
        <translation>&amp;Was getan wurde, und von wem</translation>
    </message>
    <message>
        <source>Ball and plunger replaced; sleeve readjusted …</source>
        <translation>Kugel und Riegel ersetzt; Hülse neu eingestellt …</translation>
    </message>
    <message>
        <source>Start the new fitting  (Enter)</source>
        <translation>Den neuen Einbau beginnen  (Enter)</translation>
    </message>
    <message>
        <source>Say what was done: the reason stands beside every later band.</source>
        <translation>Angeben, was getan wurde: Der Grund steht neben jedem späteren Band.</translation>
    </message>
    <message>
        <source>The fitting before began on %1. Type that day or a later one.</source>
        <translation>Der Einbau davor begann am %1. Diesen Tag oder einen späteren eingeben.</translation>
    </message>
    <message>
        <source>Tick what this airframe has. Each is added with its first fitting from today. What is not on the list you add yourself, and every name can be changed.</source>
        <translation>Ankreuzen, was dieses Flugzeug hat. Jeder wird mit seinem ersten Einbau ab heute hinzugefügt. Was nicht auf der Liste steht, selbst hinzufügen; jeder Name kann geändert werden.</translation>
    </message>
    <message>
        <source>Add the ticked ones  (Enter)</source>
        <translation>Die angekreuzten hinzufügen  (Enter)</translation>
    </message>
    <message>
        <source>Tick at least one coupling.</source>
        <translation>Mindestens einen Anschluss ankreuzen.</translation>
    </message>
    <message>
        <source>%1 (already there)</source>
        <translation>%1 (schon da)</translation>
    </message>
    <message>
        <source>Left aileron, wing root</source>
        <translation>Querruder links, Flügelwurzel</translation>
    </message>
    <message>
        <source>Right aileron, wing root</source>
        <translation>Querruder rechts, Flügelwurzel</translation>
    </message>
    <message>
        <source>Left airbrake, wing root</source>
        <translation>Bremsklappe links, Flügelwurzel</translation>
    </message>
    <message>
        <source>Right airbrake, wing root</source>
        <translation>Bremsklappe rechts, Flügelwurzel</translation>
    </message>
    <message>
        <source>Left flap, wing root</source>
        <translation>Wölbklappe links, Flügelwurzel</translation>
    </message>
    <message>
        <source>Right flap, wing root</source>
        <translation>Wölbklappe rechts, Flügelwurzel</translation>
    </message>
    <message>
        <source>Elevator, fin top</source>
        <translation>Höhenruder, Flosse oben</translation>
    </message>
    <message>
        <source>Trim, fin top</source>
        <translation>Trimmung, Flosse oben</translation>
    </message>
    <message>
        <source>aileron</source>
        <translation>Querruder</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>flap</source>
        <translation>Wölbklappe</translation>
    </message>
    <message>
        <source>airbrake</source>
        <translation>Bremsklappe</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>Trimmung</translation>
    </message>
    <message>
        <source>water dump</source>
        <translation>Wasserablass</translation>
    </message>
    <message>
        <source>first fitting</source>
        <translation>erster Einbau</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>neu eingebaut</translation>
    </message>
    <message>
        <source>part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>All of these</source>
        <translation>Alle auf der Liste</translation>
    </message>
</context>
<context>
    <name>DayWords</name>
    <message>
        <source>%1 or %2</source>
        <comment>a day in two forms</comment>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>Like %1.</source>
        <comment>a day</comment>
        <translation>Etwa %1.</translation>
    </message>
    <message>
        <source>Like %1. May stay empty.</source>
        <comment>a day</comment>
        <translation>Etwa %1. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Type the day, like %1.</source>
        <translation>Den Tag eingeben, etwa %1.</translation>
    </message>
    <message>
        <source>“%1” is no day that can be read for sure. Type it like %2.</source>
        <translation>„%1“ ist kein Tag, der sich eindeutig lesen lässt. So eingeben: %2.</translation>
    </message>
</context>
<context>
    <name>DemonstrationWords</name>
    <message>
        <source>Part-seated demonstration</source>
        <translation>Vorführung halb eingerastet</translation>
    </message>
    <message>
        <source>The joint is left part-seated on purpose, to see on which side of the band its gap then lies and how far off. Which side that is differs from coupling to coupling.</source>
        <translation>Die Verbindung wird absichtlich halb eingerastet gelassen, um zu sehen, auf welcher Seite des Bandes ihr Spalt dann liegt und wie weit weg. Welche Seite das ist, ist von Anschluss zu Anschluss verschieden.</translation>
    </message>
    <message numerus="yes">
        <source>%n part-seated reading(s)</source>
        <translation>
            <numerusform>%n Messung halb eingerastet</numerusform>
            <numerusform>%n Messungen halb eingerastet</numerusform>
        </translation>
    </message>
    <message>
        <source>Before anything is left part-seated</source>
        <translation>Bevor etwas halb eingerastet gelassen wird</translation>
    </message>
    <message>
        <source>Not on a flying day: this glider does not fly today.</source>
        <translation>Nicht an einem Flugtag: Dieses Flugzeug fliegt heute nicht.</translation>
    </message>
    <message>
        <source>Tag the cockpit: the tag hangs on the controls now.</source>
        <translation>Warnschild ins Cockpit: Es hängt jetzt an der Steuerung.</translation>
    </message>
    <message>
        <source>Full inspection afterwards: every coupling connected anew, looked at and pulled by two people.</source>
        <translation>Danach vollständige Kontrolle: jeder Anschluss neu angeschlossen, Sichtkontrolle und Zugprobe durch zwei Personen.</translation>
    </message>
    <message>
        <source>Support the control surface, so that nothing loads the joint.</source>
        <translation>Das Ruder abstützen, damit nichts die Verbindung belastet.</translation>
    </message>
    <message>
        <source>A rigging record was begun today. If this glider may fly today, leave the demonstration for another day.</source>
        <translation>Heute wurde ein Aufrüstprotokoll begonnen. Wenn dieses Flugzeug heute fliegen könnte, die Vorführung auf einen anderen Tag verschieben.</translation>
    </message>
    <message>
        <source>First read each caution and tick it.</source>
        <translation>Zuerst jeden Hinweis lesen und abhaken.</translation>
    </message>
    <message>
        <source>Owner, who measures</source>
        <translation>Halter, der misst</translation>
    </message>
    <message>
        <source>Second person, who stands by</source>
        <translation>Zweite Person, die dabeisteht</translation>
    </message>
    <message>
        <source>First choose the owner. Nobody is filled in.</source>
        <translation>Zuerst den Halter wählen. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Now choose the second person, somebody else.</source>
        <translation>Jetzt die zweite Person wählen, jemand anderen.</translation>
    </message>
    <message>
        <source>Leave the joint part-seated, read the thickest leaf that enters freely, and part it again. No force: a pushed leaf opens the gap.</source>
        <translation>Die Verbindung halb eingerastet lassen, das dickste Blatt ermitteln, das frei hineingeht, und wieder trennen. Keine Kraft: Ein gedrücktes Blatt öffnet den Spalt.</translation>
    </message>
    <message>
        <source>Second person: %1</source>
        <translation>Zweite Person: %1</translation>
    </message>
    <message>
        <source>%1 (second person: %2)</source>
        <translation>%1 (zweite Person: %2)</translation>
    </message>
    <message>
        <source>It takes two people. Enter them first.</source>
        <translation>Dazu braucht es zwei Personen. Zuerst eintragen.</translation>
    </message>
    <message>
        <source>Part-seated: %1, saved %2.</source>
        <translation>Halb eingerastet: %1, gespeichert %2.</translation>
    </message>
    <message>
        <source>When you are done: disconnect, clean, connect, look, pull, read, and inspect in full, with a second person's own look and pull. Only then does the tag come off.</source>
        <translation>Wenn Sie fertig sind: trennen, reinigen, anschließen, Sichtkontrolle, Zugprobe, messen und alles kontrollieren, mit eigener Sichtkontrolle und Zugprobe einer zweiten Person. Erst dann kommt das Warnschild ab.</translation>
    </message>
    <message>
        <source>That leaf set is in doubt since its last check. A demonstration is not read with it: choose another.</source>
        <translation>Dieser Blattsatz ist seit seiner letzten Prüfung im Zweifel. Eine Vorführung wird damit nicht gemessen: einen anderen wählen.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Part-seated was never seen on this coupling. Until it is, both sides of the band count as suspect.</source>
        <translation>Halb eingerastet wurde an diesem Anschluss nie gesehen. Bis dahin gelten beide Seiten des Bandes als verdächtig.</translation>
    </message>
    <message>
        <source>These readings stand apart: they never count for a band.</source>
        <translation>Diese Messungen stehen für sich: Sie zählen nie für ein Band.</translation>
    </message>
    <message>
        <source>part-seated never shown</source>
        <translation>halb eingerastet nie gezeigt</translation>
    </message>
</context>
<context>
    <name>DocumentWords</name>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>the kind of a fact, and its id</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>line %1, %2</source>
        <comment>a line, and the kind of fact in it</comment>
        <translation>Zeile %1, %2</translation>
    </message>
    <message>
        <source>line %1, %2 %3</source>
        <comment>a line, the kind of the fact in it, and its id</comment>
        <translation>Zeile %1, %2 %3</translation>
    </message>
    <message>
        <source>“%1” is missing</source>
        <translation>„%1“ fehlt</translation>
    </message>
    <message>
        <source>“%1” is nothing that stands there</source>
        <translation>„%1“ gehört nicht dorthin</translation>
    </message>
    <message>
        <source>“%1” is no kind of fact that this Rigband knows</source>
        <translation>„%1“ ist keine Art von Eintrag, die dieses Rigband kennt</translation>
    </message>
    <message>
        <source>“%1” stands there twice</source>
        <translation>„%1“ steht dort zweimal</translation>
    </message>
    <message>
        <source>what stands at “%1” is not of the kind that belongs there</source>
        <translation>was bei „%1“ steht, ist nicht von der Art, die dorthin gehört</translation>
    </message>
    <message>
        <source>what stands at “%1” is smaller or larger than it may be</source>
        <translation>was bei „%1“ steht, ist kleiner oder größer, als es sein darf</translation>
    </message>
    <message>
        <source>the word at “%1” is none that this Rigband knows</source>
        <translation>das Wort bei „%1“ kennt dieses Rigband nicht</translation>
    </message>
    <message>
        <source>what stands at “%1” is no day</source>
        <translation>was bei „%1“ steht, ist kein Tag</translation>
    </message>
    <message>
        <source>its parts contradict one another</source>
        <translation>seine Teile widersprechen einander</translation>
    </message>
    <message>
        <source>its parts contradict one another, first of all “%1”</source>
        <translation>seine Teile widersprechen einander, als Erstes bei „%1“</translation>
    </message>
    <message>
        <source>%1 could not be read to its end. Look whether it is a file that you may read, then try again.</source>
        <translation>%1 konnte nicht bis zum Ende gelesen werden. Nachsehen, ob Sie die Datei lesen dürfen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 ends too early, in %2: a part of it is missing. Copy or write it once more.</source>
        <translation>%1 endet zu früh, bei %2: ein Teil fehlt. Noch einmal kopieren oder schreiben.</translation>
    </message>
    <message>
        <source>%1 is no JSON in %2. Look at it there, or write it once more.</source>
        <translation>%1 ist bei %2 kein JSON. Dort nachsehen oder es noch einmal schreiben.</translation>
    </message>
    <message>
        <source>%1 holds a text or a figure in %2 that is longer than anything of a Rigband file. Look at it there.</source>
        <translation>%1 enthält bei %2 einen Text oder eine Zahl, länger als alles in einer Rigband-Datei. Dort nachsehen.</translation>
    </message>
    <message>
        <source>%1 is no document of a Rigband file: such a one begins with “format”, “version” and “layout”. Choose the one that “rigband-file export --json” wrote.</source>
        <translation>%1 ist kein Dokument einer Rigband-Datei: ein solches beginnt mit „format“, „version“ und „layout“. Das wählen, das „rigband-file export --json“ geschrieben hat.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Rigband than this one. Install the newer program to read it.</source>
        <translation>%1 wurde von einem neueren Rigband geschrieben als diesem. Zum Lesen das neuere Programm installieren.</translation>
    </message>
    <message>
        <source>%1 cannot be taken: %2.</source>
        <translation>%1 kann nicht übernommen werden: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be taken. In %2: %3.</source>
        <translation>%1 kann nicht übernommen werden. Bei %2: %3.</translation>
    </message>
    <message>
        <source>Look at these facts, and ask who changed them. To go on with everything as it was found, add --as-found.</source>
        <translation>Diese Einträge ansehen und fragen, wer sie geändert hat. Um mit allem weiterzumachen, wie es vorgefunden wurde, --as-found anfügen.</translation>
    </message>
    <message>
        <source>Nothing was made.</source>
        <translation>Es wurde nichts angelegt.</translation>
    </message>
    <message>
        <source>“%1” came with a later layout than the %2 that stands at “layout”</source>
        <translation>„%1“ kam erst mit einer späteren Fassung als der %2, die bei „layout“ steht</translation>
    </message>
    <message>
        <source>another fact with this id stands in the document already</source>
        <translation>ein anderer Eintrag mit dieser Kennung steht schon im Dokument</translation>
    </message>
    <message>
        <source>“%1” names something of the kind “%2” that is nowhere in the document</source>
        <translation>„%1“ nennt etwas der Art „%2“, das nirgends im Dokument steht</translation>
    </message>
    <message>
        <source>%1 holds everything that is in %2, in which no fact has been saved yet.</source>
        <translation>%1 enthält alles, was in %2 steht. Dort wurde noch kein Eintrag gespeichert.</translation>
    </message>
    <message numerus="yes">
        <source>%1 holds everything that is in %2, %Ln fact(s) with photos and the chain. It tells names and notes as they were typed.</source>
        <translation>
            <numerusform>%1 enthält alles, was in %2 steht, %Ln Eintrag mit Fotos und der Kette. Namen und Notizen stehen darin, wie sie eingegeben wurden.</numerusform>
            <numerusform>%1 enthält alles, was in %2 steht, %Ln Einträge mit Fotos und der Kette. Namen und Notizen stehen darin, wie sie eingegeben wurden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Made: %1, in which nothing stands: the document holds no fact.</source>
        <translation>Angelegt: %1, worin nichts steht: Das Dokument enthält keinen Eintrag.</translation>
    </message>
    <message numerus="yes">
        <source>Made: %1, with %Ln fact(s) of the document under the same ids, and its chain.</source>
        <translation>
            <numerusform>Angelegt: %1, mit %Ln Eintrag des Dokuments unter derselben Kennung und mit der Kette des Dokuments.</numerusform>
            <numerusform>Angelegt: %1, mit %Ln Einträgen des Dokuments unter denselben Kennungen und mit der Kette des Dokuments.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is larger than 4 GB, so it was not read. Look whether it is the one that “rigband-file export --json” wrote.</source>
        <translation>%1 ist größer als 4 GB und wurde darum nicht gelesen. Nachsehen, ob es das Dokument ist, das „rigband-file export --json“ geschrieben hat.</translation>
    </message>
    <message>
        <source>“%1” makes it a version of something else, while other facts still name it</source>
        <translation>„%1“ macht es zur Fassung von etwas anderem, während andere Einträge es noch nennen</translation>
    </message>
</context>
<context>
    <name>DoubtWords</name>
    <message>
        <source>leaf set %1</source>
        <translation>Blattsatz %1</translation>
    </message>
    <message>
        <source>pin set %1</source>
        <translation>Prüfstiftsatz %1</translation>
    </message>
    <message>
        <source>go/no-go block %1</source>
        <translation>Grenzlehre %1</translation>
    </message>
    <message>
        <source>taper gauge %1</source>
        <translation>Messkeil %1</translation>
    </message>
    <message>
        <source>%1 in doubt from %2</source>
        <translation>%1 im Zweifel ab dem %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>note, in doubt</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>It is made without %Ln reading(s) of %1 in doubt; with what is in doubt there would be no band either.</source>
        <translation>
            <numerusform>%Ln Messung mit %1, die im Zweifel ist, zählt dabei nicht mit; mit dem, was im Zweifel ist, gäbe es auch kein Band.</numerusform>
            <numerusform>%Ln Messungen mit %1, die im Zweifel sind, zählen dabei nicht mit; mit dem, was im Zweifel ist, gäbe es auch kein Band.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With the %Ln reading(s) of %1 in doubt it would be %2.</source>
        <translation>
            <numerusform>Mit %Ln Messung (%1), die im Zweifel ist, wäre es %2.</numerusform>
            <numerusform>Mit den %Ln Messungen (%1), die im Zweifel sind, wäre es %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With the %Ln reading(s) of %1 in doubt there would be one: %2.</source>
        <translation>
            <numerusform>Mit %Ln Messung (%1), die im Zweifel ist, gäbe es eines: %2.</numerusform>
            <numerusform>Mit den %Ln Messungen (%1), die im Zweifel sind, gäbe es eines: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) of %1 in doubt stay in the frozen list; the band is worked out without them.</source>
        <translation>
            <numerusform>%n Messung mit %1, die im Zweifel ist, bleibt in der festgeschriebenen Liste; das Band wird ohne sie errechnet.</numerusform>
            <numerusform>%n Messungen mit %1, die im Zweifel sind, bleiben in der festgeschriebenen Liste; das Band wird ohne sie errechnet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) of %1 in doubt are not frozen with it.</source>
        <translation>
            <numerusform>%n Messung mit %1, die im Zweifel ist, wird nicht mit festgeschrieben.</numerusform>
            <numerusform>%n Messungen mit %1, die im Zweifel sind, werden nicht mit festgeschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Proposed: the day after its last good check, %1. What was read since then was read with a set of which nothing is known.</source>
        <translation>Vorschlag: der Tag nach der letzten guten Prüfung, %1. Was seither gemessen wurde, wurde mit einem Satz gemessen, von dem nichts bekannt ist.</translation>
    </message>
    <message>
        <source>Proposed: the day of this check, as the set was found usable on %1.</source>
        <translation>Vorschlag: der Tag dieser Prüfung, da der Satz am %1 brauchbar gefunden wurde.</translation>
    </message>
    <message>
        <source>Proposed: the day of its first reading, %1. The file has no good check of it before this one.</source>
        <translation>Vorschlag: der Tag der ersten Messung, %1. Vor dieser hat die Datei keine gute Prüfung des Satzes.</translation>
    </message>
    <message>
        <source>Proposed: the day of this check. No reading was taken with the set.</source>
        <translation>Vorschlag: der Tag dieser Prüfung. Mit dem Satz wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>No reading was taken with it from that day on.</source>
        <translation>Von jenem Tag an wurde nicht damit gemessen.</translation>
    </message>
    <message numerus="yes">
        <source>That concerns %n reading(s) on one airframe.</source>
        <translation>
            <numerusform>Das betrifft %n Messung an einem Flugzeug.</numerusform>
            <numerusform>Das betrifft %n Messungen an einem Flugzeug.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>That concerns %n reading(s) on %1 airframes.</source>
        <translation>
            <numerusform>Das betrifft %n Messung an %1 Flugzeugen.</numerusform>
            <numerusform>Das betrifft %n Messungen an %1 Flugzeugen.</numerusform>
        </translation>
    </message>
    <message>
        <source>What saving this does</source>
        <translation>Was das Speichern bewirkt</translation>
    </message>
    <message>
        <source>That is before its last good check, %1: readings which that check spoke for come in doubt too.</source>
        <translation>Das ist vor der letzten guten Prüfung, %1: Messungen, für die jene Prüfung stand, kommen ebenfalls in Zweifel.</translation>
    </message>
    <message>
        <source>Type the day from which the set is in doubt.</source>
        <translation>Den Tag eingeben, ab dem der Satz im Zweifel ist.</translation>
    </message>
    <message numerus="yes">
        <source>It marks %n reading(s) on one airframe as in doubt</source>
        <translation>
            <numerusform>Es kennzeichnet %n Messung an einem Flugzeug als im Zweifel</numerusform>
            <numerusform>Es kennzeichnet %n Messungen an einem Flugzeug als im Zweifel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It marks %n reading(s) on %1 airframes as in doubt</source>
        <translation>
            <numerusform>Es kennzeichnet %n Messung an %1 Flugzeugen als im Zweifel</numerusform>
            <numerusform>Es kennzeichnet %n Messungen an %1 Flugzeugen als im Zweifel</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: they make no band, and show “cannot tell” unless they lie outside.</source>
        <comment>so many are marked</comment>
        <translation>%1: Sie bilden kein Band und zeigen „nicht zu sagen“, wenn sie nicht außerhalb liegen.</translation>
    </message>
    <message>
        <source>No further reading comes in doubt.</source>
        <translation>Keine weitere Messung kommt in Zweifel.</translation>
    </message>
    <message>
        <source>%1 (fitting begun %2)</source>
        <comment>coupling, day</comment>
        <translation>%1 (Einbau begonnen am %2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>registration, coupling</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%1: the band %2 becomes %3, from %n reading(s).</source>
        <translation>
            <numerusform>%1: Das Band %2 wird zu %3, aus %n Messung.</numerusform>
            <numerusform>%1: Das Band %2 wird zu %3, aus %n Messungen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: the band %2 goes. No band: %n reading(s) left, %3 are needed.</source>
        <translation>
            <numerusform>%1: Das Band %2 fällt weg. Kein Band: %n Messung bleibt, %3 sind nötig.</numerusform>
            <numerusform>%1: Das Band %2 fällt weg. Kein Band: %n Messungen bleiben, %3 sind nötig.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no band, before and after: %n reading(s) left.</source>
        <translation>
            <numerusform>%1: kein Band, vorher und nachher: %n Messung bleibt.</numerusform>
            <numerusform>%1: kein Band, vorher und nachher: %n Messungen bleiben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: one reading taken with another gauge is then judged otherwise.</source>
        <translation>%1: Eine Messung mit einer anderen Lehre wird dann anders beurteilt.</translation>
    </message>
    <message>
        <source>%1: %2 readings taken with other gauges are then judged otherwise.</source>
        <translation>%1: %2 Messungen mit anderen Lehren werden dann anders beurteilt.</translation>
    </message>
    <message>
        <source>No band changes: none of them made a band.</source>
        <translation>Kein Band ändert sich: Keine davon bildete ein Band.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between questions</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>It opens a question. %1.</source>
        <translation>Es eröffnet eine Frage. %1.</translation>
    </message>
    <message>
        <source>It opens %1 questions. %2.</source>
        <translation>Es eröffnet %1 Fragen. %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>registration, what is asked</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What there is to ask is open already.</source>
        <translation>Was zu fragen ist, ist schon offen.</translation>
    </message>
    <message numerus="yes">
        <source>Without the %Ln reading(s) of %1 in doubt the band of %2 is %3.</source>
        <translation>
            <numerusform>Ohne %Ln Messung (%1), die im Zweifel ist, liegt das Band von %2 bei %3.</numerusform>
            <numerusform>Ohne die %Ln Messungen (%1), die im Zweifel sind, liegt das Band von %2 bei %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Without the %Ln reading(s) of %1 in doubt there is no band of %2.</source>
        <translation>
            <numerusform>Ohne %Ln Messung (%1), die im Zweifel ist, gibt es kein Band von %2.</numerusform>
            <numerusform>Ohne die %Ln Messungen (%1), die im Zweifel sind, gibt es kein Band von %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>With what is in doubt it was %1.</source>
        <translation>Mit dem, was im Zweifel ist, war es %1.</translation>
    </message>
    <message>
        <source>One reading taken with another gauge is judged otherwise now.</source>
        <translation>Eine Messung mit einer anderen Lehre wird jetzt anders beurteilt.</translation>
    </message>
    <message>
        <source>%1 readings taken with other gauges are judged otherwise now.</source>
        <translation>%1 Messungen mit anderen Lehren werden jetzt anders beurteilt.</translation>
    </message>
    <message>
        <source>The last of them, %1 on %2: “%3”, with the readings in doubt “%4”.</source>
        <translation>Die letzte davon, %1 am %2: „%3“, mit den Messungen im Zweifel „%4“.</translation>
    </message>
    <message>
        <source>Closing it brings no reading back into the band: what was read with %1 in that time stays in doubt.</source>
        <translation>Das Schließen bringt keine Messung ins Band zurück: Was in jener Zeit mit %1 gemessen wurde, bleibt im Zweifel.</translation>
    </message>
</context>
<context>
    <name>DraftWords</name>
    <message>
        <source>%1, %2: “%3”</source>
        <comment>page, field: what was typed</comment>
        <translation>%1, %2: „%3“</translation>
    </message>
    <message>
        <source>Typed and not saved when the program was ended on %1:
%2</source>
        <comment>when; line by line</comment>
        <translation>Getippt und nicht gespeichert, als das Programm am %1 beendet wurde:
%2</translation>
    </message>
    <message>
        <source>Copy the words</source>
        <translation>Text kopieren</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Copy what was typed, to put it in where it belongs (Ctrl+Y)</source>
        <translation>Das Getippte kopieren, um es dort einzusetzen, wo es hingehört (Strg+Y)</translation>
    </message>
    <message>
        <source>What was typed is not kept any longer (Ctrl+D)</source>
        <translation>Das Getippte wird nicht länger aufbewahrt (Strg+D)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>place, and where in it</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>EntryWords</name>
    <message>
        <source>Nothing is typed yet. Type millimetres, such as %1.</source>
        <translation>Noch nichts eingegeben. Millimeter eingeben, zum Beispiel %1.</translation>
    </message>
    <message>
        <source>“%1” is not a length. Type millimetres with a point or a comma, such as %2.</source>
        <translation>„%1“ ist keine Länge. Millimeter mit Punkt oder Komma eingeben, zum Beispiel %2.</translation>
    </message>
    <message>
        <source>“%1” has more than one point or comma. Type one of them only, such as %2.</source>
        <translation>„%1“ hat mehr als einen Punkt oder mehr als ein Komma. Nur eines davon eingeben, zum Beispiel %2.</translation>
    </message>
    <message>
        <source>“%1” is finer than a micrometre. Three figures after the point or comma at most.</source>
        <translation>„%1“ ist feiner als ein Mikrometer. Höchstens drei Ziffern nach Punkt oder Komma.</translation>
    </message>
    <message>
        <source>“%1” is below zero. A length cannot be.</source>
        <translation>„%1“ liegt unter null. Das kann eine Länge nicht.</translation>
    </message>
    <message>
        <source>%1 mm is wider than any gap, %2 mm at most. If you meant %3, type it with a point or a comma.</source>
        <translation>%1 mm ist weiter als jeder Spalt, höchstens %2 mm. Ist %3 gemeint, mit Punkt oder Komma eingeben.</translation>
    </message>
    <message>
        <source>%1 mm is wider than any gap, %2 mm at most. Type millimetres with a point or a comma.</source>
        <translation>%1 mm ist weiter als jeder Spalt, höchstens %2 mm. Millimeter mit Punkt oder Komma eingeben.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set: its neighbours are %2 and %3.</source>
        <translation>%1 mm gibt es in diesem Satz nicht: die Nachbarn sind %2 und %3.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set: the thinnest it has is %2. If that does not enter, press “%3”.</source>
        <translation>%1 mm gibt es in diesem Satz nicht: das dünnste darin ist %2. Geht das nicht hinein, „%3“ drücken.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set: the most it can offer is %2.</source>
        <translation>%1 mm gibt es in diesem Satz nicht: er reicht bis %2.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set.</source>
        <translation>%1 mm gibt es in diesem Satz nicht.</translation>
    </message>
    <message>
        <source>This set has no leaves written down, so nothing can be read with it. Add them in Set up.</source>
        <translation>Zu diesem Satz sind keine Blätter eingetragen, mit ihm lässt sich also nichts messen. Unter Einrichten hinzufügen.</translation>
    </message>
    <message>
        <source>%1 mm is the most this set can offer, so nothing says where the gap ends. If it enters, press “%2”.</source>
        <translation>Mehr als %1 mm gibt dieser Satz nicht her, nichts sagt also, wo der Spalt endet. Geht es hinein, „%2“ drücken.</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>%1 is still loose</source>
        <translation>%1 ist noch lose</translation>
    </message>
    <message>
        <source>%1 does not enter</source>
        <translation>%1 geht nicht hinein</translation>
    </message>
    <message>
        <source>%1 enters, %2 does not</source>
        <translation>%1 geht hinein, %2 nicht</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what a reading says, why it is wider</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>stacked leaves: widened by %1 mm</source>
        <translation>zwei Blätter zusammen: um %1 mm erweitert</translation>
    </message>
    <message>
        <source>%1. Enter takes it.</source>
        <comment>what a reading says</comment>
        <translation>%1. Enter übernimmt.</translation>
    </message>
    <message>
        <source>%1
+ %2</source>
        <comment>two leaves stacked</comment>
        <translation>%1
+ %2</translation>
    </message>
    <message>
        <source>%1 millimetres enters</source>
        <translation>%1 Millimeter geht hinein</translation>
    </message>
    <message>
        <source>%1 and %2 millimetres stacked enter</source>
        <translation>%1 und %2 Millimeter zusammen gehen hinein</translation>
    </message>
    <message>
        <source>Thin end does not enter</source>
        <translation>Dünnes Ende geht nicht hinein</translation>
    </message>
    <message>
        <source>Thick end enters</source>
        <translation>Dickes Ende geht hinein</translation>
    </message>
    <message>
        <source>No leaf enters</source>
        <translation>Kein Blatt geht hinein</translation>
    </message>
    <message>
        <source>No pin enters</source>
        <translation>Kein Prüfstift geht hinein</translation>
    </message>
    <message>
        <source>Thickest leaf still loose</source>
        <translation>Dickstes Blatt noch lose</translation>
    </message>
    <message>
        <source>Thickest pin still loose</source>
        <translation>Dickster Prüfstift noch lose</translation>
    </message>
    <message>
        <source>Thinner leaves</source>
        <translation>Dünnere Blätter</translation>
    </message>
    <message>
        <source>Thicker leaves</source>
        <translation>Dickere Blätter</translation>
    </message>
    <message>
        <source>Figure typed, in millimetres</source>
        <translation>Eingegebene Zahl, in Millimetern</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Or type the figure in mm, then Enter.</source>
        <translation>Oder die Zahl in mm eingeben, dann Enter.</translation>
    </message>
    <message>
        <source>Type the value read in mm, then Enter.</source>
        <translation>Den abgelesenen Wert in mm eingeben, dann Enter.</translation>
    </message>
</context>
<context>
    <name>FileMenuWords</name>
    <message>
        <source>Opened last</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;%1  %2 in %3</source>
        <comment>number, file, its folder</comment>
        <translation>&amp;%1  %2 in %3</translation>
    </message>
    <message>
        <source>Save a copy…</source>
        <translation>Kopie speichern…</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Ordner zeigen</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>About Rigband…</source>
        <translation>Über Rigband…</translation>
    </message>
    <message>
        <source>Open a file first.</source>
        <translation>Zuerst eine Datei öffnen.</translation>
    </message>
    <message>
        <source>%1 now holds all that is saved in %2 at this moment. %2 stays open: what you enter from now on is only there.</source>
        <translation>%1 enthält jetzt alles, was in diesem Augenblick in %2 gespeichert ist. %2 bleibt offen: was Sie von jetzt an eingeben, steht nur dort.</translation>
    </message>
    <message>
        <source>No program here shows folders. The file lies in %1.</source>
        <translation>Kein Programm hier zeigt Ordner. Die Datei liegt in %1.</translation>
    </message>
    <message>
        <source>Something is half done</source>
        <translation>Etwas ist nur halb fertig</translation>
    </message>
    <message>
        <source>Leave it all the same</source>
        <translation>Trotzdem verlassen</translation>
    </message>
    <message>
        <source>Rigband %1. Bands and verdicts are worked out by method version %2.</source>
        <translation>Rigband %1. Bänder und Urteile werden nach Version %2 des Verfahrens berechnet.</translation>
    </message>
    <message>
        <source>A band is a coupling’s own past, never a limit. A gap inside it is one sign only: the look, the pull, the second person and the control check stand beside it, and none replaces another. Rigband is not an aircraft record, an inspection or a release. Manuals, directives, local rules and persons entitled to decide prevail.</source>
        <translation>Ein Band ist die eigene Vergangenheit eines Anschlusses, nie ein Grenzwert. Ein Spalt im Band ist nur ein Anzeichen: Sichtkontrolle, Zugprobe, zweite Person und Ruderprobe stehen daneben, und keines ersetzt ein anderes. Rigband ist keine Flugzeugakte, keine Kontrolle und keine Freigabe. Handbücher, Anweisungen, örtliche Regeln und zur Entscheidung berechtigte Personen gehen vor.</translation>
    </message>
    <message>
        <source>Rigband is free software under the Apache License, version 2.0. It comes without any warranty.</source>
        <translation>Rigband ist freie Software unter der Apache-Lizenz, Version 2.0. Es kommt ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>It works with Qt %1 (GNU Lesser General Public License, version 3), SQLite (public domain) and Boost (Boost Software License, version 1.0). Its letters are those of Inter (SIL Open Font License, version 1.1).</source>
        <translation>Es arbeitet mit Qt %1 (GNU Lesser General Public License, Version 3), SQLite (gemeinfrei) und Boost (Boost Software License, Version 1.0). Seine Schrift ist Inter (SIL Open Font License, Version 1.1).</translation>
    </message>
    <message>
        <source>Another language</source>
        <translation>Andere Sprache</translation>
    </message>
    <message>
        <source>Change the language all the same</source>
        <translation>Sprache trotzdem wechseln</translation>
    </message>
</context>
<context>
    <name>FileWords</name>
    <message>
        <source>rigband-file %1</source>
        <translation>rigband-file %1</translation>
    </message>
    <message>
        <source>“%1” is nothing that can be done here.</source>
        <translation>„%1“ ist nichts, was sich hier tun lässt.</translation>
    </message>
    <message>
        <source>%1 is a Rigband file, whole and readable.</source>
        <translation>%1 ist eine Rigband-Datei, ganz und lesbar.</translation>
    </message>
    <message>
        <source>%1 was written by an older Rigband and is now in the form of this one, which the older one cannot open. A copy of it as it was stands in the folder of copies beside it.</source>
        <translation>%1 wurde von einem älteren Rigband geschrieben und hat jetzt die Form dieses Rigbands; das ältere kann sie nicht öffnen. Eine Kopie, wie sie war, liegt daneben im Ordner der Kopien.</translation>
    </message>
    <message>
        <source>It may only be read; nothing can be saved in it where it is.</source>
        <translation>Sie darf nur gelesen werden; wo sie liegt, lässt sich nichts in ihr speichern.</translation>
    </message>
    <message>
        <source>People in it: %1. Leaf sets and gauges: %2.</source>
        <translation>Personen darin: %1. Blattsätze und Lehren: %2.</translation>
    </message>
    <message>
        <source>This cannot stand in a file, and was not written by Rigband: %1.</source>
        <translation>Das kann nicht in einer Datei stehen und wurde nicht von Rigband geschrieben: %1.</translation>
    </message>
    <message>
        <source>Two files that were joined say different things; to be decided by a person: %1.</source>
        <translation>Zwei zusammengeführte Dateien sagen Verschiedenes; eine Person muss entscheiden: %1.</translation>
    </message>
    <message>
        <source>It holds no airframe yet.</source>
        <translation>Sie enthält noch kein Flugzeug.</translation>
    </message>
    <message>
        <source>Airframe %1. Couplings: %2. Riggings: %3. Readings: %4.</source>
        <translation>Flugzeug %1. Anschlüsse: %2. Aufrüstvorgänge: %3. Messungen: %4.</translation>
    </message>
    <message>
        <source>One fact names another that is not in the file. This is what salvaging leaves behind; look for a copy from before the damage.</source>
        <translation>Ein Eintrag nennt einen anderen, der nicht in der Datei steht. Das bleibt nach dem Retten zurück; nach einer Kopie aus der Zeit vor dem Schaden suchen.</translation>
    </message>
    <message>
        <source>%1 facts name others that are not in the file. This is what salvaging leaves behind; look for a copy from before the damage.</source>
        <translation>%1 Einträge nennen andere, die nicht in der Datei stehen. Das bleibt nach dem Retten zurück; nach einer Kopie aus der Zeit vor dem Schaden suchen.</translation>
    </message>
    <message>
        <source>%1 is a Rigband file and was read to its end, but not everything in it is as Rigband saves it.</source>
        <translation>%1 ist eine Rigband-Datei und wurde bis zum Ende gelesen, aber nicht alles darin ist so, wie Rigband es speichert.</translation>
    </message>
    <message>
        <source>It is of an older layout and was left so; it would be brought up to date when it is opened, after a copy was made.</source>
        <translation>Sie ist noch in älterer Form und wurde so gelassen; beim Öffnen würde sie auf den neuen Stand gebracht, nachdem eine Kopie gemacht ist.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that cannot be read: %2. The first one: %3. Salvage the file to go on without them.</source>
        <translation>Zeilen der Tabelle „%1“, die nicht zu lesen sind: %2. Die erste: %3. Die Datei retten, um ohne sie weiterzuarbeiten.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that name things of two airframes or of two couplings: %2. No Rigband saves such a thing; look for a copy from before.</source>
        <translation>Zeilen der Tabelle „%1“, die Dinge von zwei Flugzeugen oder von zwei Anschlüssen nennen: %2. So etwas speichert kein Rigband; nach einer Kopie von vorher suchen.</translation>
    </message>
    <message>
        <source>A row of the table “%1” has the last number that there is, so nothing can be saved after it. Open a copy from before.</source>
        <translation>Eine Zeile der Tabelle „%1“ hat die letzte Nummer, die es gibt; danach lässt sich nichts mehr speichern. Eine Kopie von vorher öffnen.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” whose number says that they were saved in the future: %2. A clock was wrong, or another program wrote them.</source>
        <translation>Zeilen der Tabelle „%1“, die ihrer Nummer nach in der Zukunft gespeichert wurden: %2. Eine Uhr ging falsch, oder ein anderes Programm hat sie geschrieben.</translation>
    </message>
    <message>
        <source>Photos that hold no picture that can be shown: %1.</source>
        <translation>Fotos, die kein darstellbares Bild enthalten: %1.</translation>
    </message>
    <message>
        <source>Photos of another size than is said beside them: %1.</source>
        <translation>Fotos von anderer Größe, als daneben angegeben ist: %1.</translation>
    </message>
    <message>
        <source>Photos that hold more than the picture, such as where and with what they were taken: %1. Rigband keeps nothing of that; take them in again before you hand the file on.</source>
        <translation>Fotos, die mehr als das Bild enthalten, etwa wo und womit fotografiert wurde: %1. Rigband bewahrt davon nichts auf; die Fotos vor dem Weitergeben der Datei noch einmal in Rigband aufnehmen.</translation>
    </message>
    <message>
        <source>The copy “%1” beside it is of a day that is still to come: the clock was wrong when it was made.</source>
        <translation>Die Kopie „%1“ daneben ist von einem Tag, der noch kommt: Die Uhr ging falsch, als sie gemacht wurde.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that stood where the file cannot be read: %2.</source>
        <translation>Zeilen der Tabelle „%1“, die dort standen, wo die Datei nicht zu lesen ist: %2.</translation>
    </message>
    <message>
        <source>How many rows of the table “%1” were lost behind the damage cannot be told.</source>
        <translation>Wie viele Zeilen der Tabelle „%1“ hinter dem Schaden verloren sind, ist nicht zu sagen.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that are none any more: %2.</source>
        <translation>Zeilen der Tabelle „%1“, die keine mehr sind: %2.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” left out because what they belong to was lost: %2.</source>
        <translation>Zeilen der Tabelle „%1“, die wegfallen, weil das verloren ist, wozu sie gehören: %2.</translation>
    </message>
    <message>
        <source>Written to %1: %2.</source>
        <translation>Geschrieben nach %1: %2.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between file names</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Letters stand for persons, numbers for airframes and gauges.</source>
        <translation>Buchstaben stehen für Personen, Zahlen für Flugzeuge und Lehren.</translation>
    </message>
    <message>
        <source>Left out: notes, reasons, what was found and done, how a coupling is reached, roles, phone numbers, and how gauges were checked.</source>
        <translation>Weggelassen: Notizen, Gründe, was gefunden und getan wurde, wie ein Anschluss zu erreichen ist, Rollen, Telefonnummern und wie Lehren geprüft wurden.</translation>
    </message>
    <message>
        <source>Names of couplings stand as they were typed: look whether one of them names somebody. Days stay too, and whoever knows who rigged on a day can tell who a letter is.</source>
        <translation>Namen von Anschlüssen stehen so da, wie sie eingegeben wurden: nachsehen, ob einer davon jemanden nennt. Auch Tage bleiben stehen, und wer weiß, wer an einem Tag aufgerüstet hat, kann sagen, wer ein Buchstabe ist.</translation>
    </message>
    <message>
        <source>The folder %1 is not there and cannot be made. Choose a place where you may write.</source>
        <translation>Der Ordner %1 ist nicht da und lässt sich nicht anlegen. Einen Ort wählen, an dem Sie schreiben dürfen.</translation>
    </message>
    <message>
        <source>%1 cannot be written, so no table was kept. Look whether the folder may be written to and the disk has room, then try again.</source>
        <translation>%1 lässt sich nicht schreiben; deshalb wurde keine Tabelle behalten. Nachsehen, ob in den Ordner geschrieben werden darf und auf dem Datenträger Platz ist, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 cannot be read, so nothing was imported. Look whether it is there and you may read it.</source>
        <translation>%1 lässt sich nicht lesen; deshalb wurde nichts importiert. Nachsehen, ob sie da ist und Sie sie lesen dürfen.</translation>
    </message>
    <message>
        <source>%1 was not there, and was made.</source>
        <translation>%1 war nicht da und wurde angelegt.</translation>
    </message>
    <message>
        <source>%1 is not there, and there is nothing to make it from. Name a file that is there, or give a table with --couplings, --people or --gauges too.</source>
        <translation>%1 ist nicht da, und es gibt nichts, woraus sie anzulegen wäre. Eine vorhandene Datei nennen oder auch eine Tabelle mit --couplings, --people oder --gauges angeben.</translation>
    </message>
    <message>
        <source>No file was made: %1 was not there before, and is not there now.</source>
        <translation>Es wurde keine Datei angelegt: %1 war vorher nicht da und ist jetzt nicht da.</translation>
    </message>
    <message>
        <source>“%1” is no day. Write it as 2026-06-14.</source>
        <translation>„%1“ ist kein Tag. So schreiben: 2026-06-14.</translation>
    </message>
    <message>
        <source>%1 is still to come: nothing is known of it yet. Name today or an earlier day.</source>
        <translation>%1 kommt erst noch: Darüber ist noch nichts bekannt. Den heutigen oder einen früheren Tag nennen.</translation>
    </message>
    <message>
        <source>%1 knows no airframe %2. “rigband-file check” names those it knows.</source>
        <translation>%1 kennt kein Flugzeug %2. „rigband-file check“ nennt die bekannten.</translation>
    </message>
    <message>
        <source>%1 comes after %2: a period ends on the day it begins, or later.</source>
        <translation>%1 kommt nach %2: Ein Zeitraum endet an dem Tag, an dem er beginnt, oder später.</translation>
    </message>
    <message>
        <source>Written: %1. Everything it rests on as tables: %2.</source>
        <translation>Geschrieben: %1. Alles, worauf es beruht, als Tabellen: %2.</translation>
    </message>
    <message>
        <source>No gap of %1 was read at a rigging in that period, and the report says so.</source>
        <translation>In diesem Zeitraum wurde beim Aufrüsten kein Spalt von %1 gemessen, und der Bericht sagt das.</translation>
    </message>
    <message>
        <source>There is no such rigging record of %1. Without a day it is the last one that was closed.</source>
        <translation>Ein solches Aufrüstprotokoll von %1 gibt es nicht. Ohne Tag ist es das zuletzt abgeschlossene.</translation>
    </message>
    <message>
        <source>%1 knows no leaf set or gauge in use with the name %2. It is the name on the case.</source>
        <translation>%1 kennt keinen Blattsatz und keine Lehre in Gebrauch mit dem Namen %2. Es ist der Name auf dem Etui.</translation>
    </message>
    <message>
        <source>%1 has no couplings yet, so there is nothing to put on a sheet.</source>
        <translation>%1 hat noch keine Anschlüsse; es gibt also nichts, was auf einen Bogen käme.</translation>
    </message>
    <message>
        <source>%1 has no couplings yet, so there is nothing to put on a card.</source>
        <translation>%1 hat noch keine Anschlüsse; es gibt also nichts, was auf eine Karte käme.</translation>
    </message>
    <message>
        <source>Facts read and kept in %2: %1. The damaged file was left as it is. Not all may have been readable: look over what the new file holds before going on.</source>
        <translation>In %2 gelesene und behaltene Einträge: %1. Die beschädigte Datei blieb, wie sie war. Vielleicht war nicht alles lesbar: vor dem Weiterarbeiten durchsehen, was die neue Datei enthält.</translation>
    </message>
    <message>
        <source>%1 now holds the invented hangar. None of its airframes and people exist.</source>
        <translation>%1 enthält jetzt die erfundene Halle. Keines der Flugzeuge und keine der Personen darin gibt es.</translation>
    </message>
    <message>
        <source>There is no option “%1”.</source>
        <translation>Die Option „%1“ gibt es nicht.</translation>
    </message>
    <message>
        <source>An option lacks what belongs behind it, or has something behind it that it does not take.</source>
        <translation>Hinter einer Option fehlt, was dazugehört, oder es steht etwas dahinter, das sie nicht nimmt.</translation>
    </message>
    <message>
        <source>--%1 stands there twice; once is enough.</source>
        <translation>--%1 steht zweimal da; einmal genügt.</translation>
    </message>
    <message>
        <source>writes an invented hangar to look around in</source>
        <translation>schreibt eine erfundene Halle zum Umsehen</translation>
    </message>
    <message>
        <source>says what is in a file, or what is wrong with it</source>
        <translation>sagt, was in einer Datei steht oder was mit ihr nicht stimmt</translation>
    </message>
    <message>
        <source>writes the file's facts as tables; with --nameless letters and numbers stand for names, words of anybody's own are left out, and counts.csv counts</source>
        <translation>schreibt die Einträge der Datei als Tabellen; mit --nameless stehen Buchstaben und Zahlen für Namen, eigene Worte fallen weg, und counts.csv zählt</translation>
    </message>
    <message>
        <source>the engineer's report since the last annual, up to a day or between two; its tables come beside it, in the folder X-csv, whole also where the appendix of lists, looks and control checks is left out; with --earlier it compares the ends on earlier prints</source>
        <translation>der Bericht für den Prüfer seit der letzten Jahresnachprüfung, bis zu einem Tag oder zwischen zweien; die Tabellen kommen daneben in den Ordner X-csv, ganz auch da, wo der Anhang aus Listen, Sichtkontrollen und Ruderproben weggelassen ist; mit --earlier vergleicht er die Endstände auf früheren Ausdrucken</translation>
    </message>
    <message>
        <source>boxes to tick by hand at a rigging without the program; the gauge is the one that was last used</source>
        <translation>Kästchen zum Ankreuzen von Hand beim Aufrüsten ohne das Programm; die Lehre ist die zuletzt benutzte</translation>
    </message>
    <message>
        <source>a card to fold once: where the couplings are, what locked looks like, whom to call; A5, both sides</source>
        <translation>eine Karte, einmal zu falten: wo die Anschlüsse sind, wie „verriegelt“ aussieht, wen man anruft; A5, beide Seiten</translation>
    </message>
    <message>
        <source>the manual, as pages to print</source>
        <translation>das Handbuch, als Seiten zum Drucken</translation>
    </message>
    <message>
        <source>the facts of two files, such as two laptops hold, in a new one; where another program has changed one of them, it is joined only with --as-found</source>
        <translation>die Einträge zweier Dateien, wie zwei Laptops sie haben, in einer neuen; wo ein anderes Programm eine von ihnen geändert hat, wird sie nur mit --as-found aufgenommen</translation>
    </message>
    <message>
        <source>hands one airframe on, with all that belongs to it and the people and gauges named in it</source>
        <translation>gibt ein Flugzeug weiter, mit allem, was dazugehört, und den Personen und Lehren, die darin genannt sind</translation>
    </message>
    <message>
        <source>reads what can be read of a damaged file</source>
        <translation>liest, was von einer beschädigten Datei zu lesen ist</translation>
    </message>
    <message>
        <source>this page; which Rigband it is</source>
        <translation>diese Seite; welches Rigband es ist</translation>
    </message>
    <message>
        <source>Use one of these:</source>
        <translation>Eines davon verwenden:</translation>
    </message>
    <message>
        <source>Nothing that is there already is ever written over.</source>
        <translation>Was schon da ist, wird nie überschrieben.</translation>
    </message>
    <message>
        <source>Ends with 0 when all was done; with 1 when it could not be; with 2 when the command was not understood, a day in it is still to come, or rows of a table are bad, and nothing was done; with 3 when it was done, and something was found or left out, which is said.</source>
        <translation>Endet mit 0, wenn alles getan ist; mit 1, wenn es nicht ging; mit 2, wenn der Befehl nicht verstanden wurde, ein Tag darin noch kommt oder Zeilen einer Tabelle falsch sind und nichts getan wurde; mit 3, wenn es getan ist und etwas gefunden oder ausgelassen wurde, das gesagt wird.</translation>
    </message>
    <message>
        <source>writes everything that is in a file as one document, with photos and the chain</source>
        <translation>schreibt alles, was in einer Datei ist, als ein Dokument, mit Fotos und der Kette</translation>
    </message>
    <message>
        <source>makes a new file of such a document, equal to the one that went out; where another program has changed something, only with --as-found</source>
        <translation>legt aus einem solchen Dokument eine neue Datei an, gleich der, die hinausging; wo ein anderes Programm etwas geändert hat, nur mit --as-found</translation>
    </message>
    <message>
        <source>a new file in which letters stand for the name of a person who asked for it; that it was done, and by whom, is told there from then on</source>
        <translation>eine neue Datei, in der Buchstaben für den Namen einer Person stehen, die darum gebeten hat; dass es getan wurde und von wem, wird dort von da an gesagt</translation>
    </message>
    <message>
        <source>Facts in this file were changed by another program. The tables tell them as they stand now, and cannot tell which they are: “rigband-file check” does.</source>
        <translation>Einträge in dieser Datei wurden von einem anderen Programm geändert. Die Tabellen geben sie wieder, wie sie jetzt dastehen, und können nicht sagen, welche es sind: das tut „rigband-file check“.</translation>
    </message>
    <message>
        <source>%1 is not there. Look whether its name, and that of its folder, are written rightly.</source>
        <translation>%1 ist nicht da. Nachsehen, ob der Name und der des Ordners richtig geschrieben sind.</translation>
    </message>
    <message>
        <source>%1 is no file but a folder, a pipe or a device, so it was not read. Save what it holds as a file and name that.</source>
        <translation>%1 ist keine Datei, sondern ein Ordner, eine Pipe oder ein Gerät, und wurde darum nicht gelesen. Den Inhalt als Datei speichern und diese nennen.</translation>
    </message>
    <message>
        <source>%1 cannot be made: its folder is not there. Look whether the name of the folder is written rightly, or make it first.</source>
        <translation>%1 kann nicht angelegt werden: Der Ordner dafür ist nicht da. Nachsehen, ob der Name des Ordners richtig geschrieben ist, oder ihn zuerst anlegen.</translation>
    </message>
    <message>
        <source>%1 is no folder but a file, and was left as it is. Name a folder, or one that is to be made.</source>
        <translation>%1 ist kein Ordner, sondern eine Datei, und wurde unverändert gelassen. Einen Ordner nennen, oder einen, der angelegt werden soll.</translation>
    </message>
    <message>
        <source>Nothing could be read in %1, so no file was made. Open the latest copy from the folder beside it.</source>
        <translation>In %1 war nichts zu lesen, darum wurde keine Datei angelegt. Die jüngste Kopie aus dem Ordner daneben öffnen.</translation>
    </message>
    <message>
        <source>%1 is larger than a table may be, 20 MB, so nothing was imported. Part it into several.</source>
        <translation>%1 ist größer, als eine Tabelle sein darf, 20 MB. Darum wurde nichts importiert. Die Tabelle in mehrere teilen.</translation>
    </message>
    <message>
        <source>Said twice in this file, differently; to be decided by a person: %1.</source>
        <translation>In dieser Datei zweimal verschieden gesagt; eine Person muss entscheiden: %1.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that name something of the table “%3” that is not in the file: %2. Salvaging leaves such rows behind, or another program took something out; look for a copy from before.</source>
        <translation>Zeilen der Tabelle „%1“, die etwas aus der Tabelle „%3“ nennen, was nicht in der Datei steht: %2. Das bleibt nach dem Retten zurück, oder ein anderes Programm hat etwas herausgenommen; nach einer Kopie von vorher suchen.</translation>
    </message>
    <message>
        <source>adds these tables to a file, all of them or none; where the file is not there yet, --couplings, --people or --gauges makes it; READINGS.csv has the columns %1 and, where wanted, %2; a row with 2, 3 and on in %3 is the same as one before it in all of the first eight</source>
        <translation>fügt diese Tabellen einer Datei hinzu, alle oder keine; wo die Datei noch nicht da ist, legen --couplings, --people oder --gauges sie an; READINGS.csv hat die Spalten %1 und, wo gewünscht, %2; eine Zeile mit 2, 3 und so weiter in %3 ist in allen der ersten acht gleich wie eine davor</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>what was found in the file, where that stands</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The report says so on its first page and lists them under “%1”.</source>
        <translation>Der Bericht sagt es auf seiner ersten Seite und führt sie unter „%1“ auf.</translation>
    </message>
    <message>
        <source>The print says so below its heading. “rigband-file check” lists them.</source>
        <translation>Der Ausdruck sagt es unter seiner Überschrift. „rigband-file check“ führt sie auf.</translation>
    </message>
    <message>
        <source>The print tells nothing of them. “rigband-file check” lists them.</source>
        <translation>Der Ausdruck sagt nichts davon. „rigband-file check“ führt sie auf.</translation>
    </message>
    <message>
        <source>a rigging record as pages to print: the last one that was closed, or the last that began on a day; where there are several on it they are named, and --time chooses one</source>
        <translation>ein Aufrüstprotokoll als Seiten zum Drucken: das letzte abgeschlossene oder das letzte, das an einem Tag begann; gibt es an ihm mehrere, werden sie genannt, und --time wählt eines</translation>
    </message>
    <message>
        <source>No rigging record of %1 began at %2 on that day. Those of the day began at %3.</source>
        <translation>Kein Aufrüstprotokoll von %1 begann an jenem Tag um %2. Die des Tages begannen um %3.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between times</comment>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>The day has %n rigging record(s), begun at %1. The one begun at %2 was written; add --time hh:mm for another.</source>
        <translation>
            <numerusform>Der Tag hat %n Aufrüstprotokoll, begonnen um %1. Geschrieben wurde das um %2 begonnene; --time hh:mm wählt ein anderes.</numerusform>
            <numerusform>Der Tag hat %n Aufrüstprotokolle, begonnen um %1. Geschrieben wurde das um %2 begonnene; --time hh:mm wählt ein anderes.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is no time. Write the hour and the minute, as in 08:05.</source>
        <translation>%1 ist keine Uhrzeit. Stunde und Minute schreiben, etwa 08:05.</translation>
    </message>
</context>
<context>
    <name>Formats</name>
    <message>
        <source>above %1 mm</source>
        <translation>über %1 mm</translation>
    </message>
    <message>
        <source>below %1 mm</source>
        <translation>unter %1 mm</translation>
    </message>
    <message>
        <source>%1–%2 mm</source>
        <comment>from–to</comment>
        <translation>%1–%2 mm</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>QLocale date format</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>HH:mm</source>
        <comment>QLocale time format</comment>
        <translation>HH:mm</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>more than 1 in 2</source>
        <translation>mehr als 1 von 2</translation>
    </message>
    <message>
        <source>fewer than 1 in %1</source>
        <translation>weniger als 1 von %1</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 von %1</translation>
    </message>
</context>
<context>
    <name>GaugeWords</name>
    <message>
        <source>Leaf sets and gauges</source>
        <translation>Blattsätze und Lehren</translation>
    </message>
    <message>
        <source>No leaf set yet. Most people start with the usual one of 20 leaves.</source>
        <translation>Noch kein Blattsatz. Die meisten beginnen mit dem üblichen aus 20 Blättern.</translation>
    </message>
    <message>
        <source>Add a set or gauge</source>
        <translation>Satz oder Lehre hinzufügen</translation>
    </message>
    <message>
        <source>Usual 20-leaf set 0.05 to 1.00</source>
        <translation>Üblicher Satz, 20 Blätter, 0,05 bis 1,00</translation>
    </message>
    <message>
        <source>Note a check</source>
        <translation>Prüfung notieren</translation>
    </message>
    <message>
        <source>Take out of use</source>
        <translation>Außer Gebrauch nehmen</translation>
    </message>
    <message>
        <source>Put back in use</source>
        <translation>Wieder in Gebrauch</translation>
    </message>
    <message>
        <source>%1 (out of use)</source>
        <translation>%1 (außer Gebrauch)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>name, kind</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>last checked %1</source>
        <translation>zuletzt geprüft am %1</translation>
    </message>
    <message>
        <source>no check noted</source>
        <translation>keine Prüfung notiert</translation>
    </message>
    <message>
        <source>in doubt from %1 on: readings show “cannot tell”</source>
        <translation>im Zweifel ab dem %1: Messungen zeigen „nicht zu sagen“</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>A new set or gauge</source>
        <translation>Neuer Satz oder neue Lehre</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>&amp;Name on its case</source>
        <translation>&amp;Name auf dem Etui</translation>
    </message>
    <message>
        <source>Short: A, B, pins.</source>
        <translation>Kurz: A, B, Stifte.</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>Feeler leaves</source>
        <translation>Fühlerlehre (Blätter)</translation>
    </message>
    <message>
        <source>Pins or wires</source>
        <translation>Prüfstifte oder Drähte</translation>
    </message>
    <message>
        <source>Go/no-go block</source>
        <translation>Grenzlehre</translation>
    </message>
    <message>
        <source>Taper gauge</source>
        <translation>Messkeil</translation>
    </message>
    <message>
        <source>Si&amp;zes, mm</source>
        <translation>&amp;Größen, mm</translation>
    </message>
    <message>
        <source>Like 0.05-1.00 step 0.05, or one by one: 0.05, 0.10, 0.15. With a decimal comma put semicolons between: 0,05; 0,10; 0,15.</source>
        <translation>Wie 0.05-1.00 step 0.05, oder einzeln: 0.05, 0.10, 0.15. Mit Dezimalkomma Strichpunkte dazwischen setzen: 0,05; 0,10; 0,15.</translation>
    </message>
    <message>
        <source>read to %1 mm</source>
        <translation>ablesbar auf %1 mm</translation>
    </message>
    <message>
        <source>one size, %1 mm</source>
        <translation>eine Größe, %1 mm</translation>
    </message>
    <message>
        <source>%1 sizes from %2 to %3 mm</source>
        <translation>%1 Größen von %2 bis %3 mm</translation>
    </message>
    <message>
        <source>Reso&amp;lution, mm</source>
        <translation>Au&amp;flösung, mm</translation>
    </message>
    <message>
        <source>The smallest step its scale can be read to, like 0.05.</source>
        <translation>Der kleinste Schritt, auf den die Skala ablesbar ist, wie 0,05.</translation>
    </message>
    <message>
        <source>&amp;Tolerance per leaf, ± mm</source>
        <translation>&amp;Toleranz je Blatt, ± mm</translation>
    </message>
    <message>
        <source>As printed with the set. May stay empty when it is not known.</source>
        <translation>Wie beim Satz angegeben. Darf leer bleiben, wenn sie nicht bekannt ist.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Type the name that stands on the case.</source>
        <translation>Den Namen eingeben, der auf dem Etui steht.</translation>
    </message>
    <message>
        <source>There is already a gauge “%1”. Two sets need two names.</source>
        <translation>Eine Lehre „%1“ gibt es schon. Zwei Sätze brauchen zwei Namen.</translation>
    </message>
    <message>
        <source>A set without leaves can measure nothing. Type its sizes, like 0.05-1.00 step 0.05.</source>
        <translation>Ein Satz ohne Blätter kann nichts messen. Seine Größen eingeben, wie 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>A figure is missing in “%1”. Type it like 0.05-1.00 step 0.05.</source>
        <translation>In „%1“ fehlt eine Zahl. Eingeben wie 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>A leaf of 0 mm has no thickness. Leave it out.</source>
        <translation>Ein Blatt von 0 mm hat keine Dicke. Weglassen.</translation>
    </message>
    <message>
        <source>%1 mm is there twice. Type each size once.</source>
        <translation>%1 mm steht zweimal da. Jede Größe einmal eingeben.</translation>
    </message>
    <message>
        <source>From “%1” the step is missing. Type it like 0.05-1.00 step 0.05.</source>
        <translation>In „%1“ fehlt der Schritt. Eingeben wie 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>In “%1” the step passes over the last size. Which one is meant?</source>
        <translation>In „%1“ geht der Schritt über die letzte Größe hinaus. Welche ist gemeint?</translation>
    </message>
    <message>
        <source>A step of 0 leads nowhere. Type it like 0.05-1.00 step 0.05.</source>
        <translation>Ein Schritt von 0 führt nirgendwohin. Eingeben wie 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>In “%1” the first size has to be the smaller one.</source>
        <translation>In „%1“ muss die erste Größe die kleinere sein.</translation>
    </message>
    <message>
        <source>Does the comma part two leaves or the decimals? Put semicolons between the sizes: 0,05; 0,10; 0,15.</source>
        <translation>Trennt das Komma zwei Blätter oder die Dezimalen? Strichpunkte zwischen die Größen setzen: 0,05; 0,10; 0,15.</translation>
    </message>
    <message>
        <source>That would be more than %1 sizes. Is the step right?</source>
        <translation>Das wären mehr als %1 Größen. Stimmt der Schritt?</translation>
    </message>
    <message>
        <source>A resolution of 0 can measure nothing.</source>
        <translation>Eine Auflösung von 0 kann nichts messen.</translation>
    </message>
    <message>
        <source>A go/no-go block has two sizes: the one that is to enter and the one that is not, like 0.40, 0.60.</source>
        <translation>Eine Grenzlehre hat zwei Größen: die, die hineingehen soll, und die, die nicht hineingehen soll, wie 0.40, 0.60.</translation>
    </message>
    <message>
        <source>Tried on a &amp;gap of known width, mm</source>
        <translation>An bekanntem &amp;Spalt probiert, mm</translation>
    </message>
    <message>
        <source>A stamped block or a ring, read once each rigging day. Leave it empty if it was not tried on one.</source>
        <translation>Ein gestempelter Block oder ein Ring, an jedem Aufrüsttag einmal gemessen. Leer lassen, wenn nicht daran probiert wurde.</translation>
    </message>
    <message>
        <source>Thickest that &amp;entered there</source>
        <translation>Dickstes, das &amp;hineinging</translation>
    </message>
    <message>
        <source>Thinnest that did &amp;not</source>
        <translation>Dünnstes, das &amp;nicht hineinging</translation>
    </message>
    <message>
        <source>A gap of 0 cannot be read.</source>
        <translation>Ein Spalt von 0 lässt sich nicht messen.</translation>
    </message>
    <message>
        <source>The one that did not enter has to be thicker than the one that did.</source>
        <translation>Was nicht hineinging, muss dicker sein als das, was hineinging.</translation>
    </message>
    <message>
        <source>The set reads at least %1 mm high on the known gap, so it is not usable: choose “In doubt”.</source>
        <translation>Der Satz misst am bekannten Spalt mindestens %1 mm zu hoch und ist so nicht brauchbar: „Im Zweifel“ wählen.</translation>
    </message>
    <message>
        <source>The set reads at least %1 mm low on the known gap, so it is not usable: choose “In doubt”.</source>
        <translation>Der Satz misst am bekannten Spalt mindestens %1 mm zu tief und ist so nicht brauchbar: „Im Zweifel“ wählen.</translation>
    </message>
    <message>
        <source>%1 Known gap %2 mm: read %3, at least %4 mm high.</source>
        <translation>%1 Bekannter Spalt %2 mm: gemessen %3, mindestens %4 mm zu hoch.</translation>
    </message>
    <message>
        <source>%1 Known gap %2 mm: read %3, at least %4 mm low.</source>
        <translation>%1 Bekannter Spalt %2 mm: gemessen %3, mindestens %4 mm zu tief.</translation>
    </message>
    <message>
        <source>%1 Known gap %2 mm: read %3.</source>
        <translation>%1 Bekannter Spalt %2 mm: gemessen %3.</translation>
    </message>
    <message>
        <source>A check of %1</source>
        <translation>Eine Prüfung von %1</translation>
    </message>
    <message>
        <source>Worn leaves read high, burred or dirty ones read low, on every coupling alike. A check stays as it was saved; a later one stands beside it.</source>
        <translation>Abgenutzte Blätter messen zu hoch, gratige oder schmutzige zu tief, an jedem Anschluss gleich. Eine Prüfung bleibt, wie sie gespeichert wurde; eine spätere steht daneben.</translation>
    </message>
    <message>
        <source>&amp;Day of the check</source>
        <translation>&amp;Tag der Prüfung</translation>
    </message>
    <message>
        <source>&amp;How it was checked</source>
        <translation>&amp;Wie geprüft wurde</translation>
    </message>
    <message>
        <source>Micrometer at three places, reference block …</source>
        <translation>Mikrometer an drei Stellen, Endmaß …</translation>
    </message>
    <message>
        <source>What was &amp;found</source>
        <translation>Was &amp;gefunden wurde</translation>
    </message>
    <message>
        <source>Every leaf as marked; 0.40 worn by 0.02 …</source>
        <translation>Jedes Blatt wie gestempelt; 0,40 um 0,02 abgenutzt …</translation>
    </message>
    <message>
        <source>&amp;Usable: readings with it are judged</source>
        <translation>&amp;Brauchbar: Messungen damit werden beurteilt</translation>
    </message>
    <message>
        <source>&amp;In doubt: readings with it cannot be judged</source>
        <translation>&amp;Im Zweifel: Messungen damit sind nicht zu beurteilen</translation>
    </message>
    <message>
        <source>In doubt fro&amp;m</source>
        <translation>Im &amp;Zweifel ab</translation>
    </message>
    <message>
        <source>Say how it was checked.</source>
        <translation>Angeben, wie geprüft wurde.</translation>
    </message>
    <message>
        <source>Say what was found, also when it was as expected.</source>
        <translation>Angeben, was gefunden wurde, auch wenn es wie erwartet war.</translation>
    </message>
    <message>
        <source>The doubt cannot begin after the check. Type the day of the check or an earlier one.</source>
        <translation>Der Zweifel kann nicht nach der Prüfung beginnen. Den Tag der Prüfung oder einen früheren eingeben.</translation>
    </message>
    <message>
        <source>Checks of %1</source>
        <translation>Prüfungen von %1</translation>
    </message>
    <message>
        <source>No check noted yet. Once a month in the season, and after every drop, is common practice.</source>
        <translation>Noch keine Prüfung notiert. Üblich ist einmal im Monat in der Saison und nach jedem Herunterfallen.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>day, how, found</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · in doubt from %2</source>
        <translation>%1 · im Zweifel ab dem %2</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Line %1 has a column without a name. Name it, or take it out.</source>
        <translation>Zeile %1 hat eine Spalte ohne Namen. Die Spalte benennen oder herausnehmen.</translation>
    </message>
    <message>
        <source>Line %1 could not be taken. Look it over.</source>
        <translation>Zeile %1 konnte nicht aufgenommen werden. Die Zeile noch einmal ansehen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file name, sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) have the same to put right.</source>
        <translation>
            <numerusform>In %n weiteren Zeile ist dasselbe zu berichtigen.</numerusform>
            <numerusform>In %n weiteren Zeilen ist dasselbe zu berichtigen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported. Put right what is named above, then import everything again.</source>
        <translation>Nichts wurde importiert. Berichtigen, was oben genannt ist, dann alles noch einmal importieren.</translation>
    </message>
    <message>
        <source>Nothing was imported. Put right the %1 things named above, then import everything again.</source>
        <translation>Nichts wurde importiert. Die %1 oben genannten Dinge berichtigen, dann alles noch einmal importieren.</translation>
    </message>
    <message>
        <source>Airframes: %1.</source>
        <translation>Flugzeuge: %1.</translation>
    </message>
    <message>
        <source>Couplings: %1.</source>
        <translation>Anschlüsse: %1.</translation>
    </message>
    <message>
        <source>Fittings: %1.</source>
        <translation>Einbauten: %1.</translation>
    </message>
    <message>
        <source>People: %1.</source>
        <translation>Personen: %1.</translation>
    </message>
    <message>
        <source>Leaf sets and gauges: %1.</source>
        <translation>Blattsätze und Lehren: %1.</translation>
    </message>
    <message>
        <source>Gauge checks: %1.</source>
        <translation>Prüfungen der Lehren: %1.</translation>
    </message>
    <message>
        <source>Events: %1.</source>
        <translation>Ereignisse: %1.</translation>
    </message>
    <message>
        <source>Joint plays: %1.</source>
        <translation>Gelenkspiele: %1.</translation>
    </message>
    <message>
        <source>Added.</source>
        <translation>Hinzugefügt.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) not taken in, as the file says the same already.</source>
        <translation>
            <numerusform>%n Zeile nicht aufgenommen, da die Datei dasselbe schon sagt.</numerusform>
            <numerusform>%n Zeilen nicht aufgenommen, da die Datei dasselbe schon sagt.</numerusform>
        </translation>
    </message>
    <message>
        <source>One of them lies outside its coupling’s band, and no question was opened for it. Open the file and look at Before the annual.</source>
        <translation>Eine davon liegt außerhalb des Bandes ihres Anschlusses, und dafür wurde keine Frage eröffnet. Die Datei öffnen und die Seite „Vor der Nachprüfung“ ansehen.</translation>
    </message>
    <message>
        <source>%1 of them lie outside their coupling’s band, and no question was opened for them. Open the file and look at Before the annual.</source>
        <translation>%1 davon liegen außerhalb des Bandes ihres Anschlusses, und dafür wurde keine Frage eröffnet. Die Datei öffnen und die Seite „Vor der Nachprüfung“ ansehen.</translation>
    </message>
    <message>
        <source>There is nothing in it that the file does not say already.</source>
        <translation>Es steht nichts darin, was die Datei nicht schon sagt.</translation>
    </message>
    <message>
        <source>One reading was imported.</source>
        <translation>Eine Messung wurde importiert.</translation>
    </message>
    <message>
        <source>One reading was imported, with its rigging.</source>
        <translation>Eine Messung wurde importiert, mit ihrem Aufrüstvorgang.</translation>
    </message>
    <message>
        <source>%1 readings were imported.</source>
        <translation>%1 Messungen wurden importiert.</translation>
    </message>
    <message>
        <source>%1 readings were imported, with one rigging.</source>
        <translation>%1 Messungen wurden importiert, mit einem Aufrüstvorgang.</translation>
    </message>
    <message>
        <source>%1 readings were imported, with %2 riggings.</source>
        <translation>%1 Messungen wurden importiert, mit %2 Aufrüstvorgängen.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) not taken in, as the reading was corrected or struck.</source>
        <translation>
            <numerusform>%n Zeile nicht aufgenommen, da die Messung berichtigt oder gestrichen wurde.</numerusform>
            <numerusform>%n Zeilen nicht aufgenommen, da die Messung berichtigt oder gestrichen wurde.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and later days</source>
        <comment>the first of many days</comment>
        <translation>%1 und an späteren Tagen</translation>
    </message>
    <message>
        <source>On %1 the file has a rigging of that airframe already. Open the file and say whether the two are one and the same (Ctrl+8).</source>
        <translation>Am %1 hat die Datei schon einen Aufrüstvorgang dieses Flugzeugs. Die Datei öffnen und angeben, ob die beiden ein und derselbe sind (Strg+8).</translation>
    </message>
    <message>
        <source>On %1 the file has riggings of these airframes already, %2 in all. Open the file and say of each whether the two are one and the same (Ctrl+8).</source>
        <translation>Am %1 hat die Datei schon Aufrüstvorgänge dieser Flugzeuge, insgesamt %2. Die Datei öffnen und für jeden angeben, ob die beiden ein und derselbe sind (Strg+8).</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) not taken in, as the joint was found not secured: the answer that says so stands in its rigging, not in the table.</source>
        <translation>
            <numerusform>%n Zeile nicht aufgenommen, da die Verbindung nicht gesichert vorgefunden wurde: Die Antwort, die das sagt, steht bei ihrem Aufrüsten, nicht in der Tabelle.</numerusform>
            <numerusform>%n Zeilen nicht aufgenommen, da die Verbindung nicht gesichert vorgefunden wurde: Die Antwort, die das sagt, steht bei ihrem Aufrüsten, nicht in der Tabelle.</numerusform>
        </translation>
    </message>
    <message>
        <source>The table is empty. Name the columns in its first line and write a line for each thing below.</source>
        <translation>Die Tabelle ist leer. In der ersten Zeile die Spalten nennen und darunter für jede Sache eine Zeile schreiben.</translation>
    </message>
    <message>
        <source>Line %1 names the columns, but no reading stands below it. Write one line for each reading.</source>
        <translation>Zeile %1 nennt die Spalten, aber darunter steht keine Messung. Für jede Messung eine Zeile schreiben.</translation>
    </message>
    <message>
        <source>The table is larger than what is read at once: 20 MB and 200,000 lines. Part it into several.</source>
        <translation>Die Tabelle ist größer, als auf einmal gelesen wird: 20 MB und 200 000 Zeilen. Sie in mehrere teilen.</translation>
    </message>
    <message>
        <source>Line %1 holds signs that are not UTF-8. Save the table anew as UTF-8 text.</source>
        <translation>Zeile %1 enthält Zeichen, die nicht UTF-8 sind. Die Tabelle neu als UTF-8-Text speichern.</translation>
    </message>
    <message>
        <source>Line %1 has both commas and semicolons: “%2”. Part all columns by one of the two.</source>
        <translation>Zeile %1 hat sowohl Kommas als auch Semikolons: „%2“. Alle Spalten mit einem von beiden trennen.</translation>
    </message>
    <message>
        <source>Line %1 names no column “%2”, and such a table needs one. Add it.</source>
        <translation>Zeile %1 nennt keine Spalte „%2“, und eine solche Tabelle braucht sie. Die Spalte ergänzen.</translation>
    </message>
    <message>
        <source>Line %1 names a column “%2” that such a table does not have. Rename it or take it out.</source>
        <translation>Zeile %1 nennt eine Spalte „%2“, die es in einer solchen Tabelle nicht gibt. Die Spalte umbenennen oder herausnehmen.</translation>
    </message>
    <message>
        <source>Line %1 names the column “%2” twice. Take one of them out.</source>
        <translation>Zeile %1 nennt die Spalte „%2“ zweimal. Eine davon herausnehmen.</translation>
    </message>
    <message>
        <source>A quotation mark opens in line %1 and nothing closes it, so nothing after it could be read: “%2”. Close it, or take it out.</source>
        <translation>In Zeile %1 steht ein öffnendes Anführungszeichen und kein schließendes, darum konnte danach nichts gelesen werden: „%2“. Das schließende ergänzen oder das öffnende herausnehmen.</translation>
    </message>
    <message>
        <source>Line %1 has a quotation mark in the middle of a field: “%2”. Put the whole field in quotation marks and write the one inside twice.</source>
        <translation>Zeile %1 hat ein Anführungszeichen mitten in einem Feld: „%2“. Das ganze Feld in Anführungszeichen setzen und das innere doppelt schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has more or fewer fields than the first line has columns: “%2”. Write one field for each column, empty where nothing is known.</source>
        <translation>Zeile %1 hat mehr oder weniger Felder, als die erste Zeile Spalten hat: „%2“. Für jede Spalte ein Feld schreiben, leer, wo nichts bekannt ist.</translation>
    </message>
    <message>
        <source>Line %1 has a figure with a decimal comma in a table parted by commas: “%2”. Write a point in the figure, or part the whole table by semicolons.</source>
        <translation>Zeile %1 hat eine Zahl mit Dezimalkomma in einer durch Kommas getrennten Tabelle: „%2“. In der Zahl einen Punkt schreiben oder die ganze Tabelle mit Semikolons trennen.</translation>
    </message>
    <message>
        <source>Line %1 names no airframe. Write its registration.</source>
        <translation>Zeile %1 nennt kein Flugzeug. Das Kennzeichen schreiben.</translation>
    </message>
    <message>
        <source>Line %1 names no coupling. Write its name as it stands in Set up.</source>
        <translation>Zeile %1 nennt keinen Anschluss. Den Namen schreiben, wie er unter Einrichten steht.</translation>
    </message>
    <message>
        <source>Line %1 does not say who measured. Write the name.</source>
        <translation>Zeile %1 sagt nicht, wer gemessen hat. Den Namen schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has no date in the column %3. Write year, month and day, such as 2026-05-02.</source>
        <translation>Zeile %1 hat kein Datum in der Spalte %3. Jahr, Monat und Tag schreiben, wie 2026-05-02.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, where a date belongs. Write year, month and day, such as 2026-05-02.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, in die ein Datum gehört. Jahr, Monat und Tag schreiben, wie 2026-05-02.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, where a time belongs. Write hours and minutes, such as 09:40.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, in die eine Uhrzeit gehört. Stunden und Minuten schreiben, wie 09:40.</translation>
    </message>
    <message>
        <source>Line %1 does not say which leaf entered or which did not. Write at least one of them.</source>
        <translation>Zeile %1 sagt nicht, welches Blatt hineinging und welches nicht. Wenigstens eines davon schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, the mark of a figure that could not be worked out. Write the figure that was read, or take the line out.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, das Zeichen für eine Zahl, die sich nicht berechnen ließ. Die gemessene Zahl schreiben oder die Zeile herausnehmen.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which is not a length. Write millimetres, figures only, such as 0.60.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, was keine Länge ist. Millimeter schreiben, nur Ziffern, wie 0.60.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, with more than one point or comma. Write one of them only, such as 0.60.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, mit mehr als einem Punkt oder Komma. Nur eines davon schreiben, wie 0.60.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, finer than a micrometre. Write three figures after the point at most.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, feiner als ein Mikrometer. Höchstens drei Stellen nach dem Punkt schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, below zero. Write the length as it was read.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, kleiner als null. Die Länge schreiben, wie sie gemessen wurde.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, wider than any gap, 10 mm at most. Write the figure in millimetres.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, breiter als jeder Spalt, höchstens 10 mm. Die Zahl in Millimetern schreiben.</translation>
    </message>
    <message>
        <source>Line %1 says that a leaf entered which is thicker than one that did not: “%2”. Look over both figures.</source>
        <translation>Nach Zeile %1 ging ein Blatt hinein, das dicker ist als eines, das nicht hineinging: „%2“. Beide Zahlen noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Line %1 says that the same leaf entered and did not: “%2”. Write the next thicker leaf, the one that did not enter.</source>
        <translation>Nach Zeile %1 ging dasselbe Blatt hinein und nicht hinein: „%2“. Als Blatt, das nicht hineinging, das nächstdickere schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has the state “%2”. Write “locked”, “part-seated” or “baseline”, or leave it empty for “locked”.</source>
        <translation>Zeile %1 hat den Zustand „%2“. „locked“ (verriegelt), „part-seated“ (halb eingerastet) oder „baseline“ (Grundreihe) schreiben; ein leeres Feld heißt „locked“.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column repeat. Write 2 for the second reading that is the same, 3 for the third, or leave the field empty.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte repeat. Für die zweite gleiche Messung 2 schreiben, für die dritte 3, oder das Feld leer lassen.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column set_aside. Write “corrected” or “struck” and the line is not taken in, or leave the field empty.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte set_aside. „corrected“ (berichtigt) oder „struck“ (gestrichen) schreiben, dann wird die Zeile nicht aufgenommen, oder das Feld leer lassen.</translation>
    </message>
    <message>
        <source>Line %1 has the date %2, which is still to come. Look over the date, and the clock of this computer.</source>
        <translation>Zeile %1 hat das Datum %2, das noch in der Zukunft liegt. Das Datum und die Uhr dieses Computers prüfen.</translation>
    </message>
    <message>
        <source>Line %1 names the airframe “%2”, which is not in the file. Look over the registration, or add the airframe first: in Set up, or with its couplings in a table.</source>
        <translation>Zeile %1 nennt das Flugzeug „%2“, das nicht in der Datei steht. Das Kennzeichen noch einmal ansehen oder das Flugzeug zuerst hinzufügen: unter Einrichten oder mit seinen Anschlüssen in einer Tabelle.</translation>
    </message>
    <message>
        <source>Line %1 names the coupling “%2”, which this airframe does not have. Look over the name, or add the coupling first: in Set up, or in a table.</source>
        <translation>Zeile %1 nennt den Anschluss „%2“, den dieses Flugzeug nicht hat. Den Namen noch einmal ansehen oder den Anschluss zuerst hinzufügen: unter Einrichten oder in einer Tabelle.</translation>
    </message>
    <message>
        <source>Line %1 names the coupling “%2”, for which no fitting was begun. Begin one in Set up first.</source>
        <translation>Zeile %1 nennt den Anschluss „%2“, für den kein Einbau begonnen wurde. Zuerst unter Einrichten einen beginnen.</translation>
    </message>
    <message>
        <source>Line %1 names the coupling “%2”, which has no gap to measure. Take the line out, or change what kind of coupling it is in Set up.</source>
        <translation>Zeile %1 nennt den Anschluss „%2“, der keinen Spalt zum Messen hat. Die Zeile herausnehmen oder unter Einrichten ändern, was für ein Anschluss es ist.</translation>
    </message>
    <message>
        <source>Line %1 names “%2” in the column %3, and nobody of that name is in the file. Look over the name, or add the person first: in Set up, or in a table.</source>
        <translation>Zeile %1 nennt „%2“ in der Spalte %3, und niemand dieses Namens steht in der Datei. Den Namen noch einmal ansehen oder die Person zuerst hinzufügen: unter Einrichten oder in einer Tabelle.</translation>
    </message>
    <message>
        <source>Line %1 names the leaf set or gauge “%2”, which is not in the file. Look over the name, or add it first: in Set up, or in a table.</source>
        <translation>Zeile %1 nennt als Blattsatz oder Lehre „%2“, was nicht in der Datei steht. Den Namen noch einmal ansehen oder zuerst hinzufügen, was fehlt: unter Einrichten oder in einer Tabelle.</translation>
    </message>
    <message>
        <source>Line %1 is a reading of “%2” that the file holds already. Take the line out; if it was truly read again with the same result, number it in the column repeat.</source>
        <translation>Zeile %1 ist eine Messung von „%2“, die schon in der Datei steht. Die Zeile herausnehmen; wenn wirklich noch einmal mit demselben Ergebnis gemessen wurde, sie in der Spalte repeat nummerieren.</translation>
    </message>
    <message>
        <source>Line %1 is a reading of “%2” that stands further up in this table too. Take the line out; if it was truly read again with the same result, number it in the column repeat.</source>
        <translation>Zeile %1 ist eine Messung von „%2“, die weiter oben in dieser Tabelle schon steht. Die Zeile herausnehmen; wenn wirklich noch einmal mit demselben Ergebnis gemessen wurde, sie in der Spalte repeat nummerieren.</translation>
    </message>
    <message>
        <source>Line %1 names “%2” both in the column person and in the column second. Write in second who stood by, or leave it empty.</source>
        <translation>Zeile %1 nennt „%2“ in der Spalte person und auch in der Spalte second. In second schreiben, wer dabeistand, oder das Feld leer lassen.</translation>
    </message>
    <message>
        <source>Line %1 has nothing in the column %3, and it is needed there. Write it.</source>
        <translation>Zeile %1 hat nichts in der Spalte %3, und dort wird etwas gebraucht. Das Feld ausfüllen.</translation>
    </message>
    <message>
        <source>Line %1 has a text in the column %3 that is longer than 100,000 bytes: “%2”. Shorten it.</source>
        <translation>Zeile %1 hat in der Spalte %3 einen Text, der länger als 100 000 Bytes ist: „%2“. Den Text kürzen.</translation>
    </message>
    <message>
        <source>Line %1 has a character in the column %3 that nobody sees, such as a mark for the direction of writing: “%2”. Write the text anew.</source>
        <translation>Zeile %1 hat in der Spalte %3 ein unsichtbares Zeichen, etwa eines für die Schreibrichtung: „%2“. Den Text neu schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has a name in the column %3 that is longer than 1,000 bytes. Shorten it.</source>
        <translation>Zeile %1 hat in der Spalte %3 einen Namen, der länger als 1000 Bytes ist. Den Namen kürzen.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3. Write one of these: %4.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3. Eines von diesen schreiben: %4.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which does not go with the kind “%4”. Leave the field empty, or write another kind.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, was nicht zur Art „%4“ passt. Das Feld leer lassen oder eine andere Art schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which is no place on the plan. Write plan_x from -1, the left wing tip, to 1, and plan_y from 0, the nose, to 1; or leave both empty.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, was kein Ort in der Draufsicht ist. plan_x von -1, der linken Flügelspitze, bis 1 schreiben und plan_y von 0, der Nase, bis 1; oder beide leer lassen.</translation>
    </message>
    <message>
        <source>Line %1 has no sizes in the column %3. Write them in millimetres, such as 0.05; 0.10; 0.15 or 0.05-1.00 step 0.05.</source>
        <translation>Zeile %1 hat keine Größen in der Spalte %3. Sie in Millimetern schreiben, wie 0.05; 0.10; 0.15 oder 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which is no list of sizes. Write each size once, in millimetres and above zero, such as 0.05; 0.10; 0.15 or 0.05-1.00 step 0.05.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, was keine Liste von Größen ist. Jede Größe einmal schreiben, in Millimetern und größer als null, wie 0.05; 0.10; 0.15 oder 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3. Write the two ends of a go/no-go block, the thin one and the thick one.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3. Die beiden Enden einer Grenzlehre schreiben, das dünne und das dicke.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and a taper gauge has no sizes. Write how fine it reads in the column resolution_mm, or write another kind.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, und ein Messkeil hat keine Größen. In der Spalte resolution_mm schreiben, wie fein er misst, oder eine andere Art schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which belongs to a taper gauge only. Leave the field empty, or write “taper” in the column kind.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, die nur für einen Messkeil gilt. Das Feld leer lassen oder in der Spalte kind „taper“ schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3. Write a length above zero, in millimetres, or leave the field empty.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3. Eine Länge größer als null in Millimetern schreiben oder das Feld leer lassen.</translation>
    </message>
    <message>
        <source>Line %1 says what was read on a gap of known width and not how wide it is. Write the width in the column %3.</source>
        <translation>Zeile %1 sagt, was an einem Spalt bekannter Breite gemessen wurde, aber nicht, wie breit er ist. Die Breite in die Spalte %3 schreiben.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and no day in the column check_date. Write the day of the check, or leave out what is said of it.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3 und keinen Tag in der Spalte check_date. Den Tag der Prüfung schreiben oder weglassen, was über sie gesagt ist.</translation>
    </message>
    <message>
        <source>Line %1 has the date %2 in the column %3, later than the check that found it. Write the day of the check, or an earlier one.</source>
        <translation>Zeile %1 hat das Datum %2 in der Spalte %3, später als die Prüfung, die den Zweifel ergab. Den Tag der Prüfung oder einen früheren schreiben.</translation>
    </message>
    <message>
        <source>Line %1 does not say in either column, along or across, whether play was felt. Write “felt” or “none” in at least one of them, or take the line out.</source>
        <translation>Zeile %1 sagt weder in der Spalte along noch in der Spalte across, ob Spiel gefühlt wurde. In wenigstens eine davon „felt“ (gefühlt) oder „none“ (keines) schreiben oder die Zeile herausnehmen.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and the column %4 does not say that play was felt. Write “felt” there, or leave the figure out.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, und die Spalte %4 sagt nicht, dass Spiel gefühlt wurde. Dort „felt“ (gefühlt) schreiben oder die Zahl weglassen.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and the column %4 does not say “finding”. Write “finding” there, or put what was done into the note.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, und in der Spalte %4 steht nicht „finding“ (Befund). Dort „finding“ schreiben oder das Getane in die Notiz setzen.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, where “%4” is known already. A table changes nothing that is known: write the same or leave the field empty, and change it in Set up.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, wo „%4“ schon bekannt ist. Eine Tabelle ändert nichts, was bekannt ist: dasselbe schreiben oder das Feld leer lassen und es unter Einrichten ändern.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and the file knows the same without it. A table changes nothing that is known: leave the field empty, and add this in Set up.</source>
        <translation>Zeile %1 hat „%2“ in der Spalte %3, und der Datei ist dieselbe Sache ohne diese Angabe bekannt. Eine Tabelle ändert nichts, was bekannt ist: das Feld leer lassen und die Angabe unter Einrichten ergänzen.</translation>
    </message>
    <message>
        <source>Line %1 does not say when a fitting of “%2” began, and no reading of it comes in that would say. Write the day in the column %3, such as 2026-05-02.</source>
        <translation>Zeile %1 sagt nicht, wann ein Einbau von „%2“ begann, und es kommt keine Messung davon, aus der es hervorginge. Den Tag in die Spalte %3 schreiben, wie 2026-05-02.</translation>
    </message>
    <message>
        <source>Line %1 begins a fitting on %2 that stands further up in this table too. Take the line out.</source>
        <translation>Zeile %1 beginnt am %2 einen Einbau, der weiter oben in dieser Tabelle schon steht. Die Zeile herausnehmen.</translation>
    </message>
    <message>
        <source>Line %1 begins a fitting on %2, before the last one in the file, %4. Look over the day in the column %3.</source>
        <translation>Zeile %1 beginnt einen Einbau am %2, vor dem letzten in der Datei, %4. Den Tag in der Spalte %3 noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Line %1 has a number in the column repeat, and the reading of “%2” that it repeats is neither in the file nor further up in the table. A repeated reading is the same in coupling, day, both figures, person, gauge and state. Where one of them differs, leave repeat empty; else count 2, 3, 4 and leave out none.</source>
        <translation>Zeile %1 hat eine Nummer in der Spalte repeat, und die Messung von „%2“, die sie wiederholt, steht weder in der Datei noch weiter oben in der Tabelle. Eine wiederholte Messung ist in Anschluss, Tag, beiden Zahlen, Person, Lehre und Zustand gleich. Wo eines davon anders ist, repeat leer lassen; sonst 2, 3, 4 ohne Lücke zählen.</translation>
    </message>
</context>
<context>
    <name>JoinWords</name>
    <message>
        <source>%1: %2</source>
        <comment>the name of a file, and what was found in it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Airframes</source>
        <translation>Flugzeuge</translation>
    </message>
    <message>
        <source>Leaf sets and gauges</source>
        <translation>Blattsätze und Lehren</translation>
    </message>
    <message>
        <source>Checks of gauges</source>
        <translation>Prüfungen der Lehren</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Einbauten</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Rigging records</source>
        <translation>Aufrüstprotokolle</translation>
    </message>
    <message>
        <source>Looks and pulls</source>
        <translation>Sichtkontrollen und Zugproben</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>Readings struck or left out</source>
        <translation>Gestrichene oder ausgelassene Messungen</translation>
    </message>
    <message>
        <source>Frozen baselines</source>
        <translation>Festgeschriebene Grundreihen</translation>
    </message>
    <message>
        <source>Closings of records</source>
        <translation>Abschlüsse von Protokollen</translation>
    </message>
    <message>
        <source>Control surfaces</source>
        <translation>Ruder</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Answers to questions</source>
        <translation>Antworten auf Fragen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Other facts</source>
        <translation>Andere Einträge</translation>
    </message>
    <message>
        <source>%1: %2 more are not listed.</source>
        <translation>%1: %2 weitere sind nicht aufgeführt.</translation>
    </message>
    <message>
        <source>Nothing was written. Look at these facts, compare them with the copies beside the file and with prints, and ask who changed them. To go on with the files as they were found, add --as-found.</source>
        <translation>Nichts wurde geschrieben. Diese Einträge ansehen, mit den Kopien neben der Datei und mit Ausdrucken vergleichen und fragen, wer sie geändert hat. Um mit den Dateien weiterzumachen, wie sie vorgefunden wurden, --as-found anfügen.</translation>
    </message>
    <message>
        <source>Nothing was written: a part has a chain of its own, which would no longer show what was changed. Look at these facts, compare them with the copies beside the file and with prints, or hand the whole file on.</source>
        <translation>Nichts wurde geschrieben: ein Teil hat eine eigene Kette, die nicht mehr zeigen würde, was geändert wurde. Diese Einträge ansehen, mit den Kopien neben der Datei und mit Ausdrucken vergleichen oder die ganze Datei weitergeben.</translation>
    </message>
    <message>
        <source>Changed by another program in one of the files, and taken as the other has it: %1. It said: %2.</source>
        <translation>In einer der Dateien von einem anderen Programm geändert und so genommen, wie die andere es hat: %1. Dort stand: %2.</translation>
    </message>
    <message>
        <source>The files say different things of one fact, and nothing tells which was saved: %1. The first says: %2. The other says: %3.</source>
        <translation>Die Dateien sagen Verschiedenes über einen Eintrag, und nichts sagt, was gespeichert wurde: %1. Die erste sagt: %2. Die andere sagt: %3.</translation>
    </message>
    <message>
        <source>Nothing was joined. Find out which of these is right, from the copies beside the files and from prints, and join the copy that has it.</source>
        <translation>Nichts wurde zusammengeführt. Aus den Kopien neben den Dateien und aus Ausdrucken herausfinden, was davon stimmt, und die Kopie zusammenführen, die es so hat.</translation>
    </message>
    <message>
        <source>Facts that stand in %1 alone: %2.</source>
        <translation>Einträge, die nur in %1 stehen: %2.</translation>
    </message>
    <message>
        <source>Written to %1: %2 facts, end %3.</source>
        <translation>Nach %1 geschrieben: %2 Einträge, Endstand %3.</translation>
    </message>
    <message>
        <source>Take in another file …</source>
        <translation>Eine andere Datei aufnehmen …</translation>
    </message>
    <message>
        <source>Open your own file first, then take another one in.</source>
        <translation>Zuerst die eigene Datei öffnen, dann eine andere aufnehmen.</translation>
    </message>
    <message>
        <source>Take in another file</source>
        <translation>Eine andere Datei aufnehmen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>All that stands in %1 is in this file already. Nothing was taken in.</source>
        <translation>Alles, was in %1 steht, ist schon in dieser Datei. Nichts wurde aufgenommen.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between kinds of facts</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a kind of facts and how many</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>New in %1: %2.</source>
        <translation>Neu in %1: %2.</translation>
    </message>
    <message>
        <source>The readings are of %1, on %2.</source>
        <translation>Gemessen wurde an: %1, am %2.</translation>
    </message>
    <message>
        <source>The readings are of %1, from %2 to %3.</source>
        <translation>Gemessen wurde an: %1, vom %2 bis zum %3.</translation>
    </message>
    <message>
        <source>Another program has changed what was saved. Facts that are in question: %1.</source>
        <translation>Ein anderes Programm hat geändert, was gespeichert war. Einträge, die fraglich sind: %1.</translation>
    </message>
    <message>
        <source>What a person has to decide afterwards: %1.</source>
        <translation>Was eine Person danach zu entscheiden hat: %1.</translation>
    </message>
    <message>
        <source>A copy of this file as it is now is kept in the folder of copies beside it. The other file is only read.</source>
        <translation>Eine Kopie dieser Datei, wie sie jetzt ist, wird im Ordner der Kopien daneben aufbewahrt. Die andere Datei wird nur gelesen.</translation>
    </message>
    <message>
        <source>Taken in from %1: %2 facts. This file now holds %3 facts and ends with %4.</source>
        <translation>Aufgenommen aus %1: %2 Einträge. Diese Datei enthält nun %3 Einträge und hat den Endstand %4.</translation>
    </message>
    <message>
        <source>Nothing was taken in. Find out which of these is right, from the copies beside the files and from prints, and take in the copy that has it.</source>
        <translation>Nichts wurde aufgenommen. Aus den Kopien neben den Dateien und aus Ausdrucken herausfinden, was davon stimmt, und die Kopie aufnehmen, die es so hat.</translation>
    </message>
    <message>
        <source>Written to %1: %2 with all that belongs to it, %3 facts, end %4.</source>
        <translation>Nach %1 geschrieben: %2 mit allem, was dazugehört, %3 Einträge, Endstand %4.</translation>
    </message>
    <message>
        <source>They were taken over from %1, which held %2 facts and ended with %3 then. Write that down: the new file cannot show that nothing was changed before.</source>
        <translation>Sie wurden aus %1 übernommen, die damals %2 Einträge enthielt und den Endstand %3 hatte. Das aufschreiben: die neue Datei kann nicht zeigen, dass vorher nichts geändert wurde.</translation>
    </message>
</context>
<context>
    <name>JointPlayWords</name>
    <message>
        <source>no play</source>
        <translation>kein Spiel</translation>
    </message>
    <message>
        <source>play</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht probiert</translation>
    </message>
    <message>
        <source>Joint play on %1: along the rod %2; sideways %3. Tried by %4.</source>
        <translation>Gelenkspiel am %1: längs der Stange %2; seitlich %3. Probiert von %4.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>joint play, note</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2 mm</source>
        <comment>felt, millimetres</comment>
        <translation>%1, %2 mm</translation>
    </message>
    <message>
        <source>joint play: along the rod %1; sideways %2</source>
        <translation>Gelenkspiel: längs der Stange %1; seitlich %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <comment>coupling, joint play, whose limit counts</comment>
        <translation>%1: %2 %3</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier time(s): see the tables.</source>
        <translation>
            <numerusform>%n früheres Mal: siehe Tabellen.</numerusform>
            <numerusform>%n frühere Male: siehe Tabellen.</numerusform>
        </translation>
    </message>
    <message>
        <source>If there is a limit, it is in the manual. Refer any play to the engineer.</source>
        <translation>Gibt es einen Grenzwert, steht er im Handbuch. Jedes Spiel dem Prüfer melden.</translation>
    </message>
    <message>
        <source>Joint play</source>
        <translation>Gelenkspiel</translation>
    </message>
    <message>
        <source>Joint pla&amp;y</source>
        <translation>Gelenks&amp;piel</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key for joint play</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>Joint play  (%1)</source>
        <translation>Gelenkspiel  (%1)</translation>
    </message>
    <message>
        <source>Hold both sides close to the joint. Push and pull along the rod, then sideways. Any click or shift that you feel or see is play. This is not the gap, and nothing here judges it: if there is a limit, it is in the manual. Refer any play to the engineer.</source>
        <translation>Beide Seiten dicht an der Verbindung halten. Längs der Stange drücken und ziehen, dann seitlich. Jedes Klicken oder Verschieben, das Sie fühlen oder sehen, ist Spiel. Das ist nicht der Spalt, und nichts hier beurteilt es: Gibt es einen Grenzwert, steht er im Handbuch. Jedes Spiel dem Prüfer melden.</translation>
    </message>
    <message>
        <source>&amp;Along the rod</source>
        <translation>&amp;Längs der Stange</translation>
    </message>
    <message>
        <source>Side&amp;ways</source>
        <translation>&amp;Seitlich</translation>
    </message>
    <message>
        <source>mm, if measured</source>
        <translation>mm, wenn gemessen</translation>
    </message>
    <message>
        <source>Along the rod, &amp;mm</source>
        <translation>Längs der Stange, &amp;mm</translation>
    </message>
    <message>
        <source>S&amp;ideways, mm</source>
        <translation>S&amp;eitlich, mm</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Coupling</source>
        <translation>&amp;Anschluss</translation>
    </message>
    <message>
        <source>Tried &amp;by</source>
        <translation>Probiert &amp;von</translation>
    </message>
    <message>
        <source>Choose who tried it. Nobody is filled in for you.</source>
        <translation>Wählen, wer es probiert hat. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Choose the coupling.</source>
        <translation>Den Anschluss wählen.</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>How it was measured, and what was done.</source>
        <translation>Wie gemessen wurde, und was getan wurde.</translation>
    </message>
    <message>
        <source>Keep it  (Enter)</source>
        <translation>Speichern  (Enter)</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Schließen  (Esc)</translation>
    </message>
    <message>
        <source>Say of at least one way whether there is play.</source>
        <translation>Für mindestens eine Richtung sagen, ob Spiel da ist.</translation>
    </message>
    <message>
        <source>A figure stands where no play is said. Say “play”, or take the figure out.</source>
        <translation>Es steht eine Zahl da, wo kein Spiel gesagt ist. „Spiel“ sagen oder die Zahl löschen.</translation>
    </message>
    <message>
        <source>A measured play is more than 0 mm. Leave the figure out where there was none.</source>
        <translation>Ein gemessenes Spiel ist mehr als 0 mm. Die Zahl weglassen, wo keines war.</translation>
    </message>
</context>
<context>
    <name>LearnWords</name>
    <message>
        <source>This airframe</source>
        <translation>Dieses Flugzeug</translation>
    </message>
    <message>
        <source>Wh&amp;o learns</source>
        <translation>&amp;Wer lernt</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Choose who learns, at the left. What is practised is kept under that name.</source>
        <translation>Links wählen, wer lernt. Was geübt wird, wird unter diesem Namen festgehalten.</translation>
    </message>
    <message>
        <source>There is no airframe yet. Add one in Set up.</source>
        <translation>Es gibt noch kein Flugzeug. Unter Einrichten eines hinzufügen.</translation>
    </message>
    <message>
        <source>This airframe has no couplings yet. Add them in Set up.</source>
        <translation>Dieses Flugzeug hat noch keine Anschlüsse. Unter Einrichten hinzufügen.</translation>
    </message>
    <message>
        <source>Couplings in the order of rigging</source>
        <translation>Anschlüsse in der Reihenfolge beim Aufrüsten</translation>
    </message>
    <message>
        <source>Practice grants nothing. Who may rig, inspect or fly is decided by the rules that apply and the persons entitled to decide.</source>
        <translation>Die Übung berechtigt zu nichts. Wer aufrüsten, prüfen oder fliegen darf, entscheiden die geltenden Regeln und wer dazu berechtigt ist.</translation>
    </message>
    <message>
        <source>Card to print and &amp;fold …</source>
        <translation>&amp;Papierkarte zum Falten …</translation>
    </message>
    <message>
        <source>Up and Down: another coupling.</source>
        <translation>Auf und Ab: anderer Anschluss.</translation>
    </message>
    <message>
        <source>&amp;Look at it</source>
        <translation>Bet&amp;rachten</translation>
    </message>
    <message>
        <source>&amp;Practice</source>
        <translation>Üb&amp;ung</translation>
    </message>
    <message>
        <source>&amp;Calls and order</source>
        <translation>Ansagen und Reihenfo&amp;lge</translation>
    </message>
    <message>
        <source>&amp;Riggings and sign-off</source>
        <translation>Au&amp;früsten und Einweisung</translation>
    </message>
    <message>
        <source>&amp;Measuring</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <source>Crossed st&amp;udy</source>
        <translation>Kreuz&amp;versuch</translation>
    </message>
    <message>
        <source>not practised yet</source>
        <translation>noch nicht geübt</translation>
    </message>
    <message numerus="yes">
        <source>part-seated missed: %n</source>
        <translation>
            <numerusform>halb eingerastet übersehen: %n</numerusform>
            <numerusform>halb eingerastet übersehen: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not secured missed: %n</source>
        <translation>
            <numerusform>nicht gesichert übersehen: %n</numerusform>
            <numerusform>nicht gesichert übersehen: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>empty socket missed: %n</source>
        <translation>
            <numerusform>leere Pfanne übersehen: %n</numerusform>
            <numerusform>leere Pfanne übersehen: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 von %2 richtig</translation>
    </message>
    <message>
        <source>connects by itself</source>
        <translation>schließt selbsttätig an</translation>
    </message>
    <message>
        <source>no ball joint</source>
        <translation>kein Kugelanschluss</translation>
    </message>
    <message>
        <source>%1: seated and part-seated</source>
        <comment>a coupling</comment>
        <translation>%1: eingerastet und halb eingerastet</translation>
    </message>
    <message>
        <source>Schematic. Only the gap is to scale: the middle of this coupling’s own readings, no limit and no aim.</source>
        <translation>Schematisch. Nur der Spalt ist maßstäblich: die Mitte der eigenen Messungen dieses Anschlusses, kein Grenzwert und kein Ziel.</translation>
    </message>
    <message>
        <source>How locked looks here: a drawing, not today’s joint</source>
        <translation>So sieht verriegelt hier aus: Zeichnung, nicht die Verbindung von heute</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Probieren</translation>
    </message>
    <message>
        <source>Drag the ball, or press Left and Right. P: pin. B: the ball away and back.</source>
        <translation>Die Kugel ziehen oder Links und Rechts drücken. P: Nadel. B: Kugel weg und zurück.</translation>
    </message>
    <message>
        <source>Drag the ball, or press Left and Right. S: sleeve. P: pin. B: the ball away and back.</source>
        <translation>Die Kugel ziehen oder Links und Rechts drücken. S: Hülse. P: Nadel. B: Kugel weg und zurück.</translation>
    </message>
    <message>
        <source>Drag the ball, or press Left and Right. S: sleeve. B: the ball away and back.</source>
        <translation>Die Kugel ziehen oder Links und Rechts drücken. S: Hülse. B: Kugel weg und zurück.</translation>
    </message>
    <message>
        <source>What can be seen from the access</source>
        <translation>Was vom Zugang aus zu sehen ist</translation>
    </message>
    <message>
        <source>A mirror helps from above.</source>
        <translation>Von oben hilft ein Spiegel.</translation>
    </message>
    <message>
        <source>A mirror helps from below.</source>
        <translation>Von unten hilft ein Spiegel.</translation>
    </message>
    <message>
        <source>A mirror helps from the front.</source>
        <translation>Von vorn hilft ein Spiegel.</translation>
    </message>
    <message>
        <source>A mirror helps from the rear.</source>
        <translation>Von hinten hilft ein Spiegel.</translation>
    </message>
    <message>
        <source>A mirror helps from the left.</source>
        <translation>Von links hilft ein Spiegel.</translation>
    </message>
    <message>
        <source>A mirror helps from the right.</source>
        <translation>Von rechts hilft ein Spiegel.</translation>
    </message>
    <message>
        <source>Seen from above.</source>
        <translation>Von oben gesehen.</translation>
    </message>
    <message>
        <source>Seen from below.</source>
        <translation>Von unten gesehen.</translation>
    </message>
    <message>
        <source>Seen from the front.</source>
        <translation>Von vorn gesehen.</translation>
    </message>
    <message>
        <source>Seen from the rear.</source>
        <translation>Von hinten gesehen.</translation>
    </message>
    <message>
        <source>Seen from the left.</source>
        <translation>Von links gesehen.</translation>
    </message>
    <message>
        <source>Seen from the right.</source>
        <translation>Von rechts gesehen.</translation>
    </message>
    <message>
        <source>Nobody has said from which side this coupling is seen; it is drawn as seen from above. Set up, Couplings.</source>
        <translation>Niemand hat gesagt, von welcher Seite dieser Anschluss zu sehen ist; er ist von oben gezeichnet. Einrichten, Anschlüsse.</translation>
    </message>
    <message>
        <source>With a &amp;torch</source>
        <translation>Mit L&amp;ampe</translation>
    </message>
    <message>
        <source>With a m&amp;irror</source>
        <translation>Mit Spie&amp;gel</translation>
    </message>
    <message>
        <source>Access: %1</source>
        <translation>Zugang: %1</translation>
    </message>
    <message>
        <source>The leaf goes in: %1</source>
        <translation>Das Blatt geht hinein: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n locked reading(s) of this fitting</source>
        <translation>
            <numerusform>%n verriegelte Messung dieses Einbaus</numerusform>
            <numerusform>%n verriegelte Messungen dieses Einbaus</numerusform>
        </translation>
    </message>
    <message>
        <source>Locked readings of this fitting: %1. Part-seated on purpose: %2.</source>
        <translation>Verriegelte Messungen dieses Einbaus: %1. Absichtlich halb eingerastet: %2.</translation>
    </message>
    <message>
        <source>Part-seated was never shown on this coupling: how wide its gap is then is not known.</source>
        <translation>Halb eingerastet wurde an diesem Anschluss nie gezeigt: Wie breit sein Spalt dann ist, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>On this coupling the gap cannot tell locked from part-seated: they overlap. Here the gap is no sign at all.</source>
        <translation>An diesem Anschluss kann der Spalt verriegelt nicht von halb eingerastet unterscheiden: Sie überlappen sich. Hier ist der Spalt überhaupt kein Anzeichen.</translation>
    </message>
    <message>
        <source>There is no reading of this coupling yet: how wide its gap is when locked is not known.</source>
        <translation>Von diesem Anschluss gibt es noch keine Messung: Wie breit sein Spalt verriegelt ist, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verriegelt</translation>
    </message>
    <message>
        <source>Part-seated on purpose</source>
        <translation>Absichtlich halb eingerastet</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what a photo shows, its note</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No photo of this coupling yet. Set up, Couplings, takes one in.</source>
        <translation>Noch kein Foto von diesem Anschluss. Unter Einrichten, Anschlüsse lässt sich eines aufnehmen.</translation>
    </message>
    <message>
        <source>This one connects by itself when the parts are rigged: there is no ball, no plunger and no gap. Its manual says how to see that it is engaged and locked. Look, let a second person look, then the control check.</source>
        <translation>Dieser schließt beim Aufrüsten selbsttätig an: Es gibt keine Kugel, keinen Riegel und keinen Spalt. Sein Handbuch sagt, woran zu sehen ist, dass er im Eingriff und verriegelt ist. Ansehen, eine zweite Person ansehen lassen, dann die Ruderprobe.</translation>
    </message>
    <message>
        <source>This is no ball joint. Its manual says how it stands when it is connected. Look and pull, let a second person do the same, then the control check.</source>
        <translation>Dies ist kein Kugelanschluss. Sein Handbuch sagt, wie er angeschlossen aussieht. Ansehen und ziehen, eine zweite Person dasselbe tun lassen, dann die Ruderprobe.</translation>
    </message>
</context>
<context>
    <name>LessonPictureWords</name>
    <message>
        <source>Part-seated</source>
        <translation>Halb eingerastet</translation>
    </message>
    <message>
        <source>Not secured</source>
        <translation>Nicht gesichert</translation>
    </message>
    <message>
        <source>Not connected</source>
        <translation>Nicht angeschlossen</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verriegelt</translation>
    </message>
    <message>
        <source>Part-seated: can let go in flight</source>
        <translation>Halb eingerastet: kann sich im Flug lösen</translation>
    </message>
    <message>
        <source>Home, but not secured</source>
        <translation>Eingerastet, nicht gesichert</translation>
    </message>
    <message>
        <source>Not connected: can look locked</source>
        <translation>Nicht angeschlossen: kann verriegelt aussehen</translation>
    </message>
    <message>
        <source>Seated and locked</source>
        <translation>Eingerastet und verriegelt</translation>
    </message>
    <message>
        <source>gap about %1 mm</source>
        <comment>on the way between two readings</comment>
        <translation>Spalt etwa %1 mm</translation>
    </message>
    <message>
        <source>about %1 mm</source>
        <translation>etwa %1 mm</translation>
    </message>
    <message>
        <source>gap may still read %1 mm</source>
        <translation>Spalt vielleicht noch %1 mm</translation>
    </message>
    <message>
        <source>may read %1</source>
        <translation>vielleicht %1</translation>
    </message>
    <message>
        <source>gap never measured like this</source>
        <translation>Spalt so nie gemessen</translation>
    </message>
    <message>
        <source>never measured</source>
        <translation>nie gemessen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>gap: no readings yet</source>
        <translation>Spalt: noch keine Messungen</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>keine Messungen</translation>
    </message>
    <message>
        <source>no valid reading like this</source>
        <translation>so keine gültige Messung</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>keine Messung</translation>
    </message>
    <message>
        <source>gap %1 mm</source>
        <translation>Spalt %1 mm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Ball too high: it holds the plunger back. The tab keeps the sleeve from its stop, and thread shows.</source>
        <translation>Kugel zu hoch: sie hält den Riegel zurück. Die Lasche hält die Hülse vom Anschlag ab, und Gewinde ist zu sehen.</translation>
    </message>
    <message>
        <source>Ball too high: it holds the plunger back. The sleeve comes to its stop all the same.</source>
        <translation>Kugel zu hoch: sie hält den Riegel zurück. Die Hülse kommt trotzdem an ihren Anschlag.</translation>
    </message>
    <message>
        <source>Ball too high: it holds the plunger back.</source>
        <translation>Kugel zu hoch: sie hält den Riegel zurück.</translation>
    </message>
    <message>
        <source>Ball and plunger are home, but the sleeve is back and thread shows. It can be pressed open.</source>
        <translation>Kugel und Riegel sind eingerastet, aber die Hülse ist zurück, und Gewinde ist zu sehen. Der Anschluss lässt sich aufdrücken.</translation>
    </message>
    <message>
        <source>Ball and plunger are home, but the pin is out. It can be pressed open.</source>
        <translation>Kugel und Riegel sind eingerastet, aber die Nadel ist draußen. Der Anschluss lässt sich aufdrücken.</translation>
    </message>
    <message>
        <source>There is no ball in the socket. Plunger and gap can look locked: the gap alone cannot show a ball.</source>
        <translation>In der Pfanne ist keine Kugel. Riegel und Spalt können verriegelt aussehen: der Spalt allein kann keine Kugel zeigen.</translation>
    </message>
    <message>
        <source>Ball at the bottom, nose over its widest line, sleeve at its stop.</source>
        <translation>Kugel am Grund, Nase über ihrer breitesten Stelle, Hülse am Anschlag.</translation>
    </message>
    <message>
        <source>Ball at the bottom, nose over its widest line, sleeve at its stop, pin in.</source>
        <translation>Kugel am Grund, Nase über ihrer breitesten Stelle, Hülse am Anschlag, Nadel drin.</translation>
    </message>
    <message>
        <source>Ball at the bottom, nose over its widest line, pin in.</source>
        <translation>Kugel am Grund, Nase über ihrer breitesten Stelle, Nadel drin.</translation>
    </message>
    <message>
        <source>The gap is drawn at about %1 mm, between this coupling’s locked and part-seated readings.</source>
        <translation>Der Spalt ist mit etwa %1 mm gezeichnet, zwischen den verriegelten und den halb eingerasteten Messungen dieses Anschlusses.</translation>
    </message>
    <message>
        <source>The gap may still read %1 mm, as if locked.</source>
        <translation>Am Spalt können noch %1 mm gemessen werden, als wäre verriegelt.</translation>
    </message>
    <message>
        <source>The part-seated gap of this coupling was never measured: it is unknown, and drawn schematically.</source>
        <translation>Halb eingerastet wurde der Spalt dieses Anschlusses nie gemessen: er ist unbekannt und schematisch gezeichnet.</translation>
    </message>
    <message>
        <source>This coupling has no readings yet: the gap is drawn schematically.</source>
        <translation>Dieser Anschluss hat noch keine Messungen: der Spalt ist schematisch gezeichnet.</translation>
    </message>
    <message>
        <source>What a leaf says now is no reading.</source>
        <translation>Was ein Blatt jetzt sagt, ist keine Messung.</translation>
    </message>
    <message>
        <source>Gap %1 mm, the middle of its part-seated readings.</source>
        <translation>Spalt %1 mm, die Mitte seiner halb eingerasteten Messungen.</translation>
    </message>
    <message>
        <source>Gap %1 mm, the middle of its locked readings.</source>
        <translation>Spalt %1 mm, die Mitte seiner verriegelten Messungen.</translation>
    </message>
    <message>
        <source>In this drawing the leaf goes between the plunger tab and the collar.</source>
        <translation>In dieser Zeichnung geht das Blatt zwischen Riegellasche und Bund.</translation>
    </message>
    <message>
        <source>In this drawing the leaf goes between the edge of the socket and the sleeve.</source>
        <translation>In dieser Zeichnung geht das Blatt zwischen Pfannenrand und Hülse.</translation>
    </message>
    <message>
        <source>In this drawing the leaf goes between the plunger tab and the sleeve.</source>
        <translation>In dieser Zeichnung geht das Blatt zwischen Riegellasche und Hülse.</translation>
    </message>
    <message>
        <source>Its part-seated gap was read on the other side than its layout lets expect: it is drawn as it was read. Look at the layout in Set up.</source>
        <translation>Halb eingerastet wurde der Spalt auf der anderen Seite gemessen, als die Anordnung erwarten lässt: er ist gezeichnet wie gemessen. Die Anordnung unter Einrichten ansehen.</translation>
    </message>
    <message>
        <source>Nobody has said how plunger and sleeve stand to each other here, so the drawing may differ. Look at the real one with somebody who knows it.</source>
        <translation>Niemand hat gesagt, wie Riegel und Hülse hier zueinander stehen, die Zeichnung kann also abweichen. Den echten Anschluss mit jemandem ansehen, der ihn kennt.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>state of a joint</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Witness hole %1.</source>
        <comment>clear, half hidden, hidden</comment>
        <translation>Kontrollbohrung %1.</translation>
    </message>
    <message>
        <source>Schematic: only the gap is to scale, from this coupling’s own readings.</source>
        <translation>Schematisch: nur der Spalt ist maßstäblich, aus den eigenen Messungen dieses Anschlusses.</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <source>no ball</source>
        <translation>keine Kugel</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>Pfanne</translation>
    </message>
    <message>
        <source>plunger</source>
        <translation>Riegel</translation>
    </message>
    <message>
        <source>spring</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>sleeve</source>
        <translation>Hülse</translation>
    </message>
    <message>
        <source>finger</source>
        <comment>springy, inside the sleeve; holds the tab</comment>
        <translation>Federzunge</translation>
    </message>
    <message>
        <source>collar</source>
        <translation>Bund</translation>
    </message>
    <message>
        <source>stop</source>
        <comment>ring on the rod that the sleeve comes to</comment>
        <translation>Anschlag</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Lasche</translation>
    </message>
    <message>
        <source>tab short</source>
        <translation>Lasche zurück</translation>
    </message>
    <message>
        <source>tab out of place</source>
        <translation>Lasche nicht am Platz</translation>
    </message>
    <message>
        <source>thread shows</source>
        <translation>Gewinde zu sehen</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>clear, pin in it</source>
        <translation>frei, Nadel darin</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>half hidden</source>
        <translation>halb verdeckt</translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>witness hole %1</source>
        <comment>clear, half hidden, hidden</comment>
        <translation>Kontrollbohrung %1</translation>
    </message>
    <message>
        <source>Drawn by the program, not a photo.</source>
        <translation>Vom Programm gezeichnet, kein Foto.</translation>
    </message>
    <message>
        <source>The joint cut open</source>
        <translation>Die Verbindung im Schnitt</translation>
    </message>
    <message>
        <source>Arrow keys move the ball, Home takes it out as far as it is caught, End seats it. S moves the sleeve, P the pin, B takes the ball away or puts it back.</source>
        <translation>Pfeiltasten bewegen die Kugel, Pos1 nimmt sie heraus, soweit sie noch gefangen ist, Ende setzt sie ganz ein. S bewegt die Hülse, P die Nadel, B nimmt die Kugel weg oder setzt sie wieder ein.</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>the left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>the right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>the rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>in a mirror, from %1</source>
        <translation>im Spiegel, von %1</translation>
    </message>
    <message>
        <source>mirror</source>
        <translation>Spiegel</translation>
    </message>
    <message>
        <source>through the hatch, from %1</source>
        <translation>durchs Handloch, von %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>plunger nose</source>
        <translation>Riegelnase</translation>
    </message>
    <message>
        <source>witness hole</source>
        <translation>Kontrollbohrung</translation>
    </message>
    <message>
        <source>front edge of the sleeve</source>
        <translation>Vorderkante der Hülse</translation>
    </message>
    <message>
        <source>rod before the sleeve</source>
        <translation>Stange vor der Hülse</translation>
    </message>
    <message>
        <source>place of the leaf</source>
        <translation>Platz des Blattes</translation>
    </message>
    <message>
        <source>mouth of the socket</source>
        <translation>Öffnung der Pfanne</translation>
    </message>
    <message>
        <source>In view: %1.</source>
        <translation>Zu sehen: %1.</translation>
    </message>
    <message>
        <source>Dark without a torch: %1.</source>
        <translation>Ohne Lampe dunkel: %1.</translation>
    </message>
    <message>
        <source>Hidden from here: %1.</source>
        <translation>Von hier verdeckt: %1.</translation>
    </message>
    <message>
        <source>There is no ball in the socket.</source>
        <translation>In der Pfanne ist keine Kugel.</translation>
    </message>
    <message>
        <source>The ball lies at the bottom of the socket.</source>
        <translation>Die Kugel liegt am Grund der Pfanne.</translation>
    </message>
    <message>
        <source>The ball stands high in the socket.</source>
        <translation>Die Kugel steht hoch in der Pfanne.</translation>
    </message>
    <message>
        <source>The nose is fully out.</source>
        <translation>Die Nase ist ganz heraus.</translation>
    </message>
    <message>
        <source>The nose is held back.</source>
        <translation>Die Nase wird zurückgehalten.</translation>
    </message>
    <message>
        <source>The tab stands at its place.</source>
        <translation>Die Lasche steht an ihrem Platz.</translation>
    </message>
    <message>
        <source>The tab does not stand at its place.</source>
        <translation>Die Lasche steht nicht an ihrem Platz.</translation>
    </message>
    <message>
        <source>The witness hole is %1.</source>
        <comment>clear, half hidden, hidden</comment>
        <translation>Die Kontrollbohrung ist %1.</translation>
    </message>
    <message>
        <source>The sleeve is at its stop.</source>
        <translation>Die Hülse ist am Anschlag.</translation>
    </message>
    <message>
        <source>The sleeve is not at its stop.</source>
        <translation>Die Hülse ist nicht am Anschlag.</translation>
    </message>
    <message>
        <source>Thread shows.</source>
        <translation>Gewinde ist zu sehen.</translation>
    </message>
    <message>
        <source>No thread shows.</source>
        <translation>Kein Gewinde ist zu sehen.</translation>
    </message>
    <message>
        <source>Seen from %1, and in a mirror from %2.</source>
        <translation>Von %1 gesehen, und im Spiegel von %2.</translation>
    </message>
    <message>
        <source>Seen from %1.</source>
        <translation>Von %1 gesehen.</translation>
    </message>
    <message>
        <source>With a torch.</source>
        <translation>Mit Lampe.</translation>
    </message>
    <message>
        <source>Without a torch.</source>
        <translation>Ohne Lampe.</translation>
    </message>
    <message>
        <source>Nothing is in sight that tells how it stands.</source>
        <translation>Nichts ist zu sehen, was sagt, wie es steht.</translation>
    </message>
    <message numerus="yes">
        <source>%n locked reading(s)</source>
        <translation>
            <numerusform>%n verriegelte Messung</numerusform>
            <numerusform>%n verriegelte Messungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part-seated on purpose</source>
        <comment>readings</comment>
        <translation>
            <numerusform>%n absichtlich halb eingerastet</numerusform>
            <numerusform>%n absichtlich halb eingerastet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n outside or part-seated at a rigging</source>
        <comment>readings</comment>
        <translation>
            <numerusform>%n außerhalb oder halb eingerastet bei einem Aufrüsten</numerusform>
            <numerusform>%n außerhalb oder halb eingerastet beim Aufrüsten</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing was ever seen between</source>
        <translation>dazwischen wurde nie etwas gesehen</translation>
    </message>
    <message>
        <source>nothing between</source>
        <translation>dazwischen nichts</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between values</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>No locked reading yet.</source>
        <translation>Noch keine verriegelte Messung.</translation>
    </message>
    <message numerus="yes">
        <source>%n locked reading(s), from %1 to %2.</source>
        <translation>
            <numerusform>%n verriegelte Messung, von %1 bis %2.</numerusform>
            <numerusform>%n verriegelte Messungen, von %1 bis %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Band %1.</source>
        <translation>Band %1.</translation>
    </message>
    <message>
        <source>Part-seated on purpose: %1.</source>
        <translation>Absichtlich halb eingerastet: %1.</translation>
    </message>
    <message>
        <source>Found outside its band or part-seated at a rigging: %1.</source>
        <translation>Bei einem Aufrüsten außerhalb des Bandes oder halb eingerastet vorgefunden: %1.</translation>
    </message>
    <message>
        <source>Between %1 and %2 mm nothing was ever seen.</source>
        <translation>Zwischen %1 und %2 mm wurde nie etwas gesehen.</translation>
    </message>
    <message numerus="yes">
        <source>%n not secured at a rigging</source>
        <comment>readings</comment>
        <translation>
            <numerusform>%n nicht gesichert bei einem Aufrüsten</numerusform>
            <numerusform>%n nicht gesichert beim Aufrüsten</numerusform>
        </translation>
    </message>
    <message>
        <source>Found not secured at a rigging: %1.</source>
        <translation>Beim Aufrüsten nicht gesichert vorgefunden: %1.</translation>
    </message>
    <message>
        <source>none noted as part-seated</source>
        <translation>keine als halb eingerastet notiert</translation>
    </message>
    <message>
        <source>No reading was noted as part-seated.</source>
        <translation>Keine Messung wurde als halb eingerastet notiert.</translation>
    </message>
</context>
<context>
    <name>LongWorkWords</name>
    <message>
        <source>This takes a while</source>
        <translation>Das dauert etwas</translation>
    </message>
    <message>
        <source>%1 is being read.</source>
        <translation>%1 wird gelesen.</translation>
    </message>
    <message>
        <source>%1 is being compared with the file that is open.</source>
        <translation>%1 wird mit der geöffneten Datei verglichen.</translation>
    </message>
    <message>
        <source>What is new in %1 is being taken in.</source>
        <translation>Was in %1 neu ist, wird aufgenommen.</translation>
    </message>
    <message>
        <source>What can be read of %1 is being read.</source>
        <translation>Was von %1 lesbar ist, wird gelesen.</translation>
    </message>
    <message>
        <source>%1 is being copied.</source>
        <translation>%1 wird kopiert.</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <comment>a number of rows</comment>
        <translation>bisher %1</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>Stop  (Esc)</source>
        <translation>Anhalten  (Esc)</translation>
    </message>
    <message>
        <source>If you stop it, everything stays as it is.</source>
        <translation>Beim Anhalten bleibt alles, wie es ist.</translation>
    </message>
    <message>
        <source>It is being stopped.</source>
        <translation>Es wird angehalten.</translation>
    </message>
    <message>
        <source>Stopped. Everything is as it was.</source>
        <translation>Angehalten. Alles ist, wie es war.</translation>
    </message>
    <message>
        <source>%1 is being written.</source>
        <translation>%1 wird geschrieben.</translation>
    </message>
</context>
<context>
    <name>ManualWords</name>
    <message>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Chapters of the manual</source>
        <translation>Kapitel des Handbuchs</translation>
    </message>
    <message>
        <source>Up, Down: another chapter. Page Down, Page Up: on and back in the text. Tab: the links in it. Esc: back.</source>
        <translation>Auf, Ab: ein anderes Kapitel. Bild ab, Bild auf: im Text weiter und zurück. Tab: die Verweise darin. Esc: zurück.</translation>
    </message>
    <message>
        <source>Save the manual as PDF …  (Ctrl+P)</source>
        <translation>Handbuch als PDF speichern …  (Strg+P)</translation>
    </message>
    <message>
        <source>All chapters, to print.</source>
        <translation>Alle Kapitel, zum Drucken.</translation>
    </message>
    <message>
        <source>Paper of the manual</source>
        <translation>Papier des Handbuchs</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>A rigging on paper</source>
        <translation>Aufrüsten auf Papier</translation>
    </message>
    <message>
        <source>%1-sheet.pdf</source>
        <comment>a file's name: registration</comment>
        <translation>%1-bogen.pdf</translation>
    </message>
    <message>
        <source>A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, leave everything as it is, and call the person entitled to decide.</source>
        <translation>Ein „nein“ oder ein Ruder, das nichts tut oder sich anders als erwartet bewegt, ist ein Stopp: aufhören, alles stehen lassen, wie es ist, und die dazu berechtigte Person anrufen.</translation>
    </message>
    <message>
        <source>A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, leave everything as it is, and call %1.</source>
        <translation>Ein „nein“ oder ein Ruder, das nichts tut oder sich anders als erwartet bewegt, ist ein Stopp: aufhören, alles stehen lassen, wie es ist, und anrufen: %1.</translation>
    </message>
    <message>
        <source>A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, leave everything as it is, and call %1, %2.</source>
        <comment>name, telephone</comment>
        <translation>Ein „nein“ oder ein Ruder, das nichts tut oder sich anders als erwartet bewegt, ist ein Stopp: aufhören, alles stehen lassen, wie es ist, und anrufen: %1, %2.</translation>
    </message>
    <message>
        <source>This sheet judges no reading. Until it is typed in, nobody knows whether a gap lies outside its band, so type it in before the flight. Where you cannot, that sign is missing: call before the flight. Outside is a stop as well: leave the joint as it is and call.</source>
        <translation>Dieser Bogen beurteilt keine Messung. Bis er eingegeben ist, weiß niemand, ob ein Spalt außerhalb seines Bandes liegt; deshalb vor dem Flug eingeben. Wo das nicht geht, fehlt dieses Anzeichen: vor dem Flug anrufen. Außerhalb ist ebenfalls ein Stopp: die Verbindung stehen lassen, wie sie ist, und anrufen.</translation>
    </message>
    <message>
        <source>It replaces no manual, no inspection and no entry in a log. Type it in with “Enter from paper”, under the day it was filled in and with both names.</source>
        <translation>Er ersetzt kein Handbuch, keine Kontrolle und keine Eintragung in ein Bordbuch. Mit „Vom Papier eingeben“ eingeben, unter dem Tag, an dem er ausgefüllt wurde, und mit beiden Namen.</translation>
    </message>
    <message>
        <source>%1 Not an aircraft record. Manuals and directives prevail.</source>
        <comment>the sentence of the stop</comment>
        <translation>%1 Kein Teil der Flugzeugakte. Handbücher und Anweisungen gehen vor.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Begun at</source>
        <translation>Begonnen um</translation>
    </message>
    <message>
        <source>Since the last rigging</source>
        <translation>Seit dem letzten Aufrüsten</translation>
    </message>
    <message>
        <source>Taken apart</source>
        <translation>Abgerüstet</translation>
    </message>
    <message>
        <source>Stood rigged</source>
        <translation>Blieb aufgerüstet</translation>
    </message>
    <message>
        <source>First person, who leads</source>
        <translation>Erste Person, die leitet</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>Who connected the joints</source>
        <translation>Wer angeschlossen hat</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Tail and middle</source>
        <translation>Heck und Mitte</translation>
    </message>
    <message>
        <source>Leaf set or gauge</source>
        <translation>Blattsatz oder Lehre</translation>
    </message>
    <message>
        <source>Another</source>
        <translation>Andere</translation>
    </message>
    <message>
        <source>One joint at a time: look, measure, pull, secure. Tick the thickest leaf that enters freely and whose next one refuses; write the two sizes where there is no box. No leaf goes in before the look is done.</source>
        <translation>Eine Verbindung nach der anderen: ansehen, messen, ziehen, sichern. Das dickste Blatt ankreuzen, das frei hineingeht und dessen nächstes nicht hineingeht; die beiden Maße hinschreiben, wo kein Kästchen ist. Kein Blatt geht hinein, bevor die Sichtkontrolle gemacht ist.</translation>
    </message>
    <message>
        <source>Your own look and your own pull, by somebody who connected and measured none of these joints. Do not look at the first person’s pages. You may measure too; it is not asked.</source>
        <translation>Eigene Sichtkontrolle und eigene Zugprobe, von jemandem, der keine dieser Verbindungen angeschlossen oder gemessen hat. Nicht auf die Seiten der ersten Person sehen. Sie dürfen auch messen; gefragt ist es nicht.</translation>
    </message>
    <message>
        <source>From above, nose up. The numbers are those of the joints on this sheet.</source>
        <translation>Von oben, Rumpfnase oben. Die Nummern sind die der Verbindungen auf diesem Bogen.</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>number, coupling</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Thickest leaf that enters</source>
        <translation>Dickstes Blatt, das hineingeht</translation>
    </message>
    <message>
        <source>Thickest leaf that enters, if you measure</source>
        <translation>Dickstes Blatt, das hineingeht, falls Sie messen</translation>
    </message>
    <message>
        <source>Thickest pin that enters</source>
        <translation>Dickster Prüfstift, der hineingeht</translation>
    </message>
    <message>
        <source>Thickest pin that enters, if you measure</source>
        <translation>Dickster Prüfstift, der hineingeht, falls Sie messen</translation>
    </message>
    <message>
        <source>Gap in mm</source>
        <translation>Spalt in mm</translation>
    </message>
    <message>
        <source>Gap in mm, if you measure</source>
        <translation>Spalt in mm, falls Sie messen</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <comment>two leaves stacked</comment>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>Enters</source>
        <translation>Geht hinein</translation>
    </message>
    <message>
        <source>Refuses</source>
        <translation>Geht nicht hinein</translation>
    </message>
    <message>
        <source>Value read</source>
        <translation>Abgelesener Wert</translation>
    </message>
    <message>
        <source>The control check comes last of all: whoever touches a joint afterwards does the check of its surfaces again. Whoever stands at the surface says aloud what it does, and that is written down; only then is it compared with the flight manual. A surface that does nothing, or moves otherwise than expected, is a stop for the whole glider.</source>
        <translation>Die Ruderprobe kommt zuallerletzt: Wer danach eine Verbindung anfasst, macht die Probe ihrer Ruder noch einmal. Wer am Ruder steht, sagt laut, was es tut, und das wird aufgeschrieben; erst dann wird es mit dem Flughandbuch verglichen. Ein Ruder, das nichts tut oder sich anders als erwartet bewegt, ist ein Stopp für das ganze Flugzeug.</translation>
    </message>
    <message>
        <source>Who checks</source>
        <translation>Wer probiert</translation>
    </message>
    <message>
        <source>No surfaces are set up. Write under the notes what was moved and what it did.</source>
        <translation>Es sind keine Ruder eingerichtet. Unter die Notizen schreiben, was bewegt wurde und was es tat.</translation>
    </message>
    <message>
        <source>One way</source>
        <translation>Eine Richtung</translation>
    </message>
    <message>
        <source>The other way</source>
        <translation>Andere Richtung</translation>
    </message>
    <message>
        <source>Control moved</source>
        <translation>Steuerung bewegt</translation>
    </message>
    <message>
        <source>Surface does</source>
        <translation>Ruder tut</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>a sheet, and typing it in</source>
        <translation>ein Bogen und seine Eingabe</translation>
    </message>
    <message>
        <source>For a rigging without the laptop: a sheet with everything that is asked, to be filled in at the glider and typed in afterwards. No band and no earlier reading stands on it, so that nobody writes what is expected.</source>
        <translation>Für ein Aufrüsten ohne Laptop: ein Bogen mit allem, was gefragt wird, am Flugzeug auszufüllen und danach einzugeben. Weder ein Band noch eine frühere Messung steht darauf, damit niemand schreibt, was erwartet wird.</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>A5</source>
        <translation>A5</translation>
    </message>
    <message>
        <source>&amp;Leaf set or gauge</source>
        <translation>&amp;Blattsatz oder Lehre</translation>
    </message>
    <message>
        <source>None: sizes are written by hand</source>
        <translation>Keine: Maße werden von Hand geschrieben</translation>
    </message>
    <message>
        <source>The sheet offers as many leaves of this set at every coupling, around where it reads and never with the expected one in a place that tells.</source>
        <translation>Der Bogen bietet bei jedem Anschluss gleich viele Blätter dieses Satzes an, rund um das, was dort gemessen wird, und das erwartete nie an einer Stelle, die es verrät.</translation>
    </message>
    <message>
        <source>&amp;Save the sheet as PDF …</source>
        <translation>Bogen als PDF &amp;speichern …</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key for enter from paper</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>Enter from paper …  (%1)</source>
        <translation>Vom Papier eingeben …  (%1)</translation>
    </message>
    <message>
        <source>&amp;Enter from paper …</source>
        <translation>Vom Papier &amp;eingeben …</translation>
    </message>
    <message>
        <source>Types in a rigging that was written down by hand, under the day on which it was done.</source>
        <translation>Gibt ein Aufrüsten ein, das von Hand aufgeschrieben wurde, unter dem Tag, an dem es war.</translation>
    </message>
    <message>
        <source>Enter from paper</source>
        <translation>Vom Papier eingeben</translation>
    </message>
    <message>
        <source>The rigging is kept under the day and the names that stand on the sheet, marked as entered later, and judged as of that day. Type what was written, also where it was “no”.</source>
        <translation>Das Aufrüsten wird unter dem Tag und den Namen festgehalten, die auf dem Bogen stehen, als später eingegeben gekennzeichnet und nach dem Stand jenes Tages beurteilt. Eingeben, was geschrieben wurde, auch wo es „nein“ war.</translation>
    </message>
    <message>
        <source>&amp;Day on the sheet</source>
        <translation>&amp;Tag auf dem Bogen</translation>
    </message>
    <message>
        <source>&amp;Begun at</source>
        <translation>&amp;Begonnen um</translation>
    </message>
    <message>
        <source>09:30</source>
        <translation>09:30</translation>
    </message>
    <message>
        <source>&amp;First person, who led</source>
        <translation>&amp;Erste Person, die geleitet hat</translation>
    </message>
    <message>
        <source>&amp;Second person</source>
        <translation>&amp;Zweite Person</translation>
    </message>
    <message>
        <source>&amp;Who types it in</source>
        <translation>&amp;Wer es eingibt</translation>
    </message>
    <message>
        <source>&amp;Taken apart</source>
        <translation>&amp;Abgerüstet</translation>
    </message>
    <message>
        <source>Stood &amp;rigged, gone through again</source>
        <translation>Blieb aufgerüstet, neu &amp;durchgegangen</translation>
    </message>
    <message>
        <source>Begin to type  (Enter)</source>
        <translation>Eingabe beginnen  (Enter)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>“%1” is no time of day. Write it as 09:30.</source>
        <translation>„%1“ ist keine Uhrzeit. So schreiben: 09:30.</translation>
    </message>
    <message>
        <source>Write when it began, as 09:30: what was done that day is put in order by it. Where the sheet does not say, ask who rigged, and note at the close that the time is from memory.</source>
        <translation>Schreiben, wann es begann, so: 09:30. Danach wird geordnet, was an dem Tag getan wurde. Wo der Bogen es nicht sagt, fragen, wer aufgerüstet hat, und beim Abschluss notieren, dass die Zeit aus der Erinnerung stammt.</translation>
    </message>
    <message>
        <source>That is still to come. Type the day and the time at which the rigging was done.</source>
        <translation>Das kommt erst noch. Den Tag und die Uhrzeit des Aufrüstens eingeben.</translation>
    </message>
    <message>
        <source>Nothing is known of this airframe so early: its first fitting began on %1. Look at the day on the sheet.</source>
        <translation>So früh ist über dieses Flugzeug nichts bekannt: Sein erster Einbau begann am %1. Den Tag auf dem Bogen nachsehen.</translation>
    </message>
    <message>
        <source>A rigging of that day stands here already, begun %1 and led by %2. If this sheet is the same rigging, it is not typed in a second time.</source>
        <comment>moment, person</comment>
        <translation>Ein Aufrüsten dieses Tages steht hier schon, begonnen am %1 und geleitet von %2. Ist dieser Bogen dasselbe Aufrüsten, wird er kein zweites Mal eingegeben.</translation>
    </message>
    <message>
        <source>This sheet is &amp;another rigging of that day</source>
        <translation>Dieser Bogen ist &amp;noch ein Aufrüsten jenes Tages</translation>
    </message>
    <message>
        <source>Choose whose name stands as first person.</source>
        <translation>Wählen, wessen Name als erste Person dasteht.</translation>
    </message>
    <message>
        <source>Choose whose name stands as second person.</source>
        <translation>Wählen, wessen Name als zweite Person dasteht.</translation>
    </message>
    <message>
        <source>First and second person are two people.</source>
        <translation>Erste und zweite Person sind zwei verschiedene Personen.</translation>
    </message>
    <message>
        <source>Choose who types it in now.</source>
        <translation>Wählen, wer es jetzt eingibt.</translation>
    </message>
    <message>
        <source>Say whether it had been taken apart since the last one.</source>
        <translation>Angeben, ob seit dem letzten Mal abgerüstet wurde.</translation>
    </message>
    <message>
        <source>A rigging is being recorded here. Close it first, then enter the one from paper.</source>
        <translation>Hier wird gerade ein Aufrüsten aufgezeichnet. Erst dieses abschließen, dann das vom Papier eingeben.</translation>
    </message>
    <message>
        <source>The rigging of %1 is not typed in to its end. What is typed is kept, and the next start goes on with it.</source>
        <translation>Das Aufrüsten vom %1 ist nicht zu Ende eingegeben. Was eingegeben ist, bleibt erhalten, und der nächste Start macht damit weiter.</translation>
    </message>
    <message>
        <source>Entered from paper: %1</source>
        <translation>Vom Papier eingegeben: %1</translation>
    </message>
    <message>
        <source>Entered from paper: %1. The second person types their own column.</source>
        <translation>Vom Papier eingegeben: %1. Die zweite Person gibt ihre Spalte selbst ein.</translation>
    </message>
    <message>
        <source>Entered from paper: %1. The second person’s column is marked as copied by %2.</source>
        <comment>day, person</comment>
        <translation>Vom Papier eingegeben: %1. Die Spalte der zweiten Person ist als von %2 abgeschrieben gekennzeichnet.</translation>
    </message>
    <message>
        <source>F8</source>
        <comment>key for the second person types</comment>
        <translation>F8</translation>
    </message>
    <message>
        <source>The second person types their own column  (%1)</source>
        <translation>Die zweite Person gibt ihre Spalte selbst ein  (%1)</translation>
    </message>
    <message>
        <source>Entered later from paper by %1, %2. What was done stands under the day on the paper.</source>
        <comment>person, moment</comment>
        <translation>Später vom Papier eingegeben von %1, %2. Was getan wurde, steht unter dem Tag auf dem Papier.</translation>
    </message>
    <message>
        <source>%1, copied from paper by %2</source>
        <comment>answer or person, person</comment>
        <translation>%1, vom Papier abgeschrieben von %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message numerus="yes">
        <source>Before the first coupling, at the first rigging of a year or when nothing was rigged or rechecked for %n week(s)</source>
        <translation>
            <numerusform>Vor dem ersten Anschluss, beim ersten Aufrüsten eines Jahres oder wenn %n Woche lang nichts aufgerüstet oder nachkontrolliert wurde</numerusform>
            <numerusform>Vor dem ersten Anschluss, beim ersten Aufrüsten eines Jahres oder wenn %n Wochen lang nichts aufgerüstet oder nachkontrolliert wurde</numerusform>
        </translation>
    </message>
    <message>
        <source>Notes: interruptions, what was felt, what was read again:</source>
        <translation>Notizen: Unterbrechungen, was gefühlt, was neu gemessen wurde:</translation>
    </message>
    <message>
        <source>The rigging from paper is not begun yet. If this file is left now, what was typed for the head of the sheet is lost. Begin the rigging first to keep it.</source>
        <translation>Das Aufrüsten vom Papier ist noch nicht begonnen. Wird diese Datei jetzt verlassen, geht verloren, was für den Kopf des Bogens eingegeben wurde. Zuerst das Aufrüsten beginnen, um es zu behalten.</translation>
    </message>
    <message>
        <source>Type the day that stands on the sheet, like %1.</source>
        <translation>Den Tag eingeben, der auf dem Bogen steht, etwa %1.</translation>
    </message>
</context>
<context>
    <name>PeriodWords</name>
    <message>
        <source>P</source>
        <comment>key for the period</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>Period (%1)</source>
        <translation>Zeitraum (%1)</translation>
    </message>
    <message>
        <source>Period looked back on</source>
        <translation>Zeitraum des Rückblicks</translation>
    </message>
    <message>
        <source>Since the annual of %1</source>
        <translation>Seit der Nachprüfung vom %1</translation>
    </message>
    <message>
        <source>Everything, from %1</source>
        <translation>Alles, ab %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Season of %1</source>
        <comment>year</comment>
        <translation>Saison %1</translation>
    </message>
    <message>
        <source>%1, fitting %2: %3 to %4</source>
        <comment>coupling, number, days</comment>
        <translation>%1, Einbau %2: %3 bis %4</translation>
    </message>
    <message numerus="yes">
        <source>The last %Ln rigging(s)</source>
        <translation>
            <numerusform>Der letzte Aufrüstvorgang (%Ln)</numerusform>
            <numerusform>Die letzten %Ln Aufrüstvorgänge</numerusform>
        </translation>
    </message>
    <message>
        <source>From one day to another …</source>
        <translation>Von einem Tag bis zu einem anderen …</translation>
    </message>
    <message>
        <source>The last riggings, so many as you type …</source>
        <translation>Die letzten Aufrüstvorgänge, Anzahl eingeben …</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Show these days</source>
        <translation>Diese Tage zeigen</translation>
    </message>
    <message>
        <source>These days lie ahead: nothing was read on them yet. Let them begin today or earlier.</source>
        <translation>Diese Tage kommen erst noch: An ihnen wurde noch nichts gemessen. Heute oder früher beginnen lassen.</translation>
    </message>
    <message>
        <source>The first day is after the last one. Change one of them.</source>
        <translation>Der erste Tag liegt nach dem letzten. Einen davon ändern.</translation>
    </message>
    <message>
        <source>How many of the last riggings</source>
        <translation>Wie viele der letzten Aufrüstvorgänge</translation>
    </message>
    <message>
        <source>1 to %1</source>
        <translation>1 bis %1</translation>
    </message>
    <message>
        <source>Show these riggings</source>
        <translation>Diese Aufrüstvorgänge zeigen</translation>
    </message>
    <message>
        <source>A number is missing. Type how many riggings, from 1 to %1.</source>
        <translation>Eine Zahl fehlt. Eingeben, wie viele Aufrüstvorgänge, von 1 bis %1.</translation>
    </message>
    <message>
        <source>“%1” is no number of riggings. Type a whole number from 1 to %2.</source>
        <translation>„%1“ ist keine Anzahl von Aufrüstvorgängen. Eine ganze Zahl von 1 bis %2 eingeben.</translation>
    </message>
</context>
<context>
    <name>PhotoWords</name>
    <message>
        <source>Locked</source>
        <translation>Verriegelt</translation>
    </message>
    <message>
        <source>Part-seated, on purpose</source>
        <translation>Halb eingerastet, absichtlich</translation>
    </message>
    <message>
        <source>Empty socket, on purpose</source>
        <translation>Leere Pfanne, absichtlich</translation>
    </message>
    <message>
        <source>Access and hatch</source>
        <translation>Zugang und Handloch</translation>
    </message>
    <message>
        <source>Not on a flying day. Tag the cockpit. Full inspection afterwards.</source>
        <translation>Nicht an einem Flugtag. Warnschild ins Cockpit. Danach vollständige Kontrolle.</translation>
    </message>
    <message>
        <source>This file cannot be opened. Look whether it is still there and may be read, or copy it to this computer first.</source>
        <translation>Diese Datei lässt sich nicht öffnen. Nachsehen, ob sie noch da ist und gelesen werden darf, oder sie erst auf diesen Computer kopieren.</translation>
    </message>
    <message>
        <source>This file is larger than 40 MB. Save the picture smaller, then take it in.</source>
        <translation>Diese Datei ist größer als 40 MB. Das Bild kleiner speichern, dann aufnehmen.</translation>
    </message>
    <message>
        <source>This is no picture. Choose a JPEG, PNG, BMP or GIF file.</source>
        <translation>Das ist kein Bild. Eine JPEG-, PNG-, BMP- oder GIF-Datei wählen.</translation>
    </message>
    <message>
        <source>This kind of picture cannot be read here. Save it as JPEG or PNG, then take it in.</source>
        <translation>Diese Art Bild lässt sich hier nicht lesen. Als JPEG oder PNG speichern, dann aufnehmen.</translation>
    </message>
    <message>
        <source>This picture is kept as HEIC, as many phones do, and cannot be read here. Send or export it from the phone as JPEG, or set the phone’s camera to its most compatible format.</source>
        <translation>Dieses Bild ist als HEIC gespeichert, wie bei vielen Telefonen, und lässt sich hier nicht lesen. Vom Telefon als JPEG senden oder exportieren, oder die Kamera des Telefons auf das am weitesten verbreitete Format stellen.</translation>
    </message>
    <message>
        <source>This picture has more than 50 million pixels. Save it smaller, then take it in.</source>
        <translation>Dieses Bild hat mehr als 50 Millionen Pixel. Kleiner speichern, dann aufnehmen.</translation>
    </message>
    <message>
        <source>This picture is longer than 20,000 pixels. Cut it to the coupling, then take it in.</source>
        <translation>Dieses Bild ist länger als 20 000 Pixel. Auf den Anschluss zuschneiden, dann aufnehmen.</translation>
    </message>
    <message>
        <source>This file ends before its picture does: it was not copied whole. Copy it again from the camera or the phone.</source>
        <translation>Diese Datei endet, bevor ihr Bild endet: Sie wurde nicht ganz kopiert. Noch einmal von der Kamera oder dem Telefon kopieren.</translation>
    </message>
    <message>
        <source>This picture is damaged and cannot be read. Open it in another program, save it anew as JPEG, then take it in.</source>
        <translation>Dieses Bild ist beschädigt und lässt sich nicht lesen. In einem anderen Programm öffnen, neu als JPEG speichern, dann aufnehmen.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Photos of %1</source>
        <translation>Fotos von %1</translation>
    </message>
    <message>
        <source>Of each kind the newest is shown beside the look and on Know this airframe. The place and the device that a camera writes into its pictures are left out of the file.</source>
        <translation>Von jeder Art ist das neueste neben der Sichtkontrolle und auf der Seite „Flugzeug kennen“ zu sehen. Ort und Gerät, die eine Kamera in ihre Bilder schreibt, kommen nicht in die Datei.</translation>
    </message>
    <message>
        <source>No photo of this coupling yet.</source>
        <translation>Noch kein Foto dieses Anschlusses.</translation>
    </message>
    <message>
        <source>A further p&amp;icture</source>
        <translation>Weiteres &amp;Bild</translation>
    </message>
    <message>
        <source>Choose a picture …</source>
        <translation>Ein Bild wählen …</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.bmp *.gif);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.bmp *.gif);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Drop a picture here, or paste one (Ctrl+V).</source>
        <translation>Ein Bild hier ablegen oder einfügen (Strg+V).</translation>
    </message>
    <message>
        <source>It &amp;shows</source>
        <translation>Es &amp;zeigt</translation>
    </message>
    <message>
        <source>Choose what it shows</source>
        <translation>Wählen, was es zeigt</translation>
    </message>
    <message>
        <source>Say what the picture shows: one that shows a part-seated joint and is told to be locked teaches the wrong thing.</source>
        <translation>Angeben, was das Bild zeigt: Eines, das eine halb eingerastete Verbindung zeigt und als verriegelt bezeichnet ist, lehrt das Falsche.</translation>
    </message>
    <message>
        <source>&amp;Taken on</source>
        <translation>Foto &amp;vom</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>What somebody should look at, or nothing.</source>
        <translation>Worauf man achten soll, oder nichts.</translation>
    </message>
    <message>
        <source>Keep this photo  (Enter)</source>
        <translation>Dieses Foto speichern  (Enter)</translation>
    </message>
    <message>
        <source>This picture is not in the file yet. Say what it shows, then keep it.</source>
        <translation>Dieses Bild ist noch nicht in der Datei. Angeben, was es zeigt, dann speichern.</translation>
    </message>
    <message>
        <source>The file holds moving pictures; this is the first of them, and it is not kept yet. Say what it shows, then keep it.</source>
        <translation>Die Datei enthält bewegte Bilder; das ist das erste davon, und es ist noch nicht gespeichert. Angeben, was es zeigt, dann speichern.</translation>
    </message>
    <message>
        <source>Choose, drop or paste a picture first.</source>
        <translation>Erst ein Bild wählen, ablegen oder einfügen.</translation>
    </message>
    <message>
        <source>Say first who states this: the list “Entered by” at the left.</source>
        <translation>Erst angeben, wer das sagt: die Liste „Eingetragen von“ links.</translation>
    </message>
    <message>
        <source>Bring one picture at a time.</source>
        <translation>Immer nur ein Bild auf einmal.</translation>
    </message>
    <message>
        <source>Withdraw this photo</source>
        <translation>Dieses Foto zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw: %1, %2</source>
        <translation>Zurückziehen: %1, %2</translation>
    </message>
    <message>
        <source>Why? It is shown nowhere any more; the file keeps it with your reason.</source>
        <translation>Warum? Es wird nirgends mehr gezeigt; die Datei behält es mit Ihrem Grund.</translation>
    </message>
    <message>
        <source>The photo is withdrawn.</source>
        <translation>Das Foto ist zurückgezogen.</translation>
    </message>
    <message>
        <source>Kept at %1: %2.</source>
        <translation>Gespeichert um %1: %2.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>what the photo shows, day, person</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>caption of a photo, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>coupling, caption of its photo</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Photo: %1. Press to see it large.</source>
        <translation>Foto: %1. Drücken, um es groß zu sehen.</translation>
    </message>
    <message>
        <source>Enter: see it large</source>
        <translation>Enter: groß sehen</translation>
    </message>
    <message>
        <source>Photo, large</source>
        <translation>Foto, groß</translation>
    </message>
    <message>
        <source>Esc closes the picture.</source>
        <translation>Esc schließt das Bild.</translation>
    </message>
    <message>
        <source>This photo cannot be shown: its picture is damaged.</source>
        <translation>Dieses Foto lässt sich nicht zeigen: Sein Bild ist beschädigt.</translation>
    </message>
    <message>
        <source>V</source>
        <comment>key for the photo, large</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>Locked (%1)</source>
        <translation>Verriegelt (%1)</translation>
    </message>
    <message>
        <source>Both sides (%1)</source>
        <translation>Beide Seiten (%1)</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>this coupling’s thin band %1</source>
        <translation>dünnes Band dieses Anschlusses %1</translation>
    </message>
    <message>
        <source>this coupling’s band %1</source>
        <translation>Band dieses Anschlusses %1</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>noch kein Band</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>kein Spalt zu messen</translation>
    </message>
    <message>
        <source>part-seated was seen here</source>
        <translation>halb eingerastet wurde hier gesehen</translation>
    </message>
    <message>
        <source>Band %1.</source>
        <translation>Band %1.</translation>
    </message>
    <message>
        <source>No band yet.</source>
        <translation>Noch kein Band.</translation>
    </message>
    <message>
        <source>Reading %1: %2.</source>
        <translation>Messung %1: %2.</translation>
    </message>
    <message>
        <source>Reading %1.</source>
        <translation>Messung %1.</translation>
    </message>
    <message>
        <source>Part-seated was seen at %1.</source>
        <translation>Halb eingerastet wurde gesehen bei %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between values</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>No gap to measure.</source>
        <translation>Kein Spalt zu messen.</translation>
    </message>
    <message>
        <source>Latest reading %1: %2.</source>
        <translation>Letzte Messung %1: %2.</translation>
    </message>
    <message>
        <source>Latest reading %1.</source>
        <translation>Letzte Messung %1.</translation>
    </message>
    <message>
        <source>No reading yet.</source>
        <translation>Noch keine Messung.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>+%1</source>
        <comment>a gap that is larger</comment>
        <translation>+%1</translation>
    </message>
    <message>
        <source>−%1</source>
        <comment>a gap that is smaller</comment>
        <translation>−%1</translation>
    </message>
    <message>
        <source>spread, mm</source>
        <comment>of one person’s repeated readings</comment>
        <translation>Schwankung, mm</translation>
    </message>
    <message>
        <source>stands out</source>
        <translation>fällt auf</translation>
    </message>
    <message>
        <source>← reads low</source>
        <translation>← misst tief</translation>
    </message>
    <message>
        <source>reads high →</source>
        <translation>misst hoch →</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n Messung</numerusform>
            <numerusform>%n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>person or gauge, why there is no figure</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <comment>signed</comment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>interval %1 to %2 mm</source>
        <translation>Intervall %1 bis %2 mm</translation>
    </message>
    <message>
        <source>spread %1 mm</source>
        <translation>Schwankung %1 mm</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>person or gauge, list of figures</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Nothing to compare yet.</source>
        <translation>Noch nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>Distance from the mean of all.</source>
        <translation>Abstand vom Mittel aller.</translation>
    </message>
    <message>
        <source>none noted as part-seated</source>
        <translation>keine als halb eingerastet notiert</translation>
    </message>
    <message>
        <source>No reading was noted as part-seated.</source>
        <translation>Keine Messung wurde als halb eingerastet notiert.</translation>
    </message>
</context>
<context>
    <name>PlanFieldWords</name>
    <message>
        <source>&amp;Span in metres</source>
        <translation>&amp;Spannweite in Metern</translation>
    </message>
    <message>
        <source>For the plan view, like 15 or 17.5. May stay empty.</source>
        <translation>Für die Draufsicht, wie 15 oder 17,5. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>“%1” is no span that can be read for sure. Type metres from 1 to 60, like 15 or 17.5.</source>
        <translation>„%1“ ist keine Spannweite, die sich eindeutig lesen lässt. Meter von 1 bis 60 eingeben, wie 15 oder 17,5.</translation>
    </message>
    <message>
        <source>Tai&amp;l</source>
        <translation>&amp;Leitwerk</translation>
    </message>
    <message>
        <source>Low tailplane</source>
        <translation>Höhenleitwerk unten</translation>
    </message>
    <message>
        <source>T-tail</source>
        <translation>T-Leitwerk</translation>
    </message>
    <message>
        <source>V-tail</source>
        <translation>V-Leitwerk</translation>
    </message>
    <message>
        <source>Not said</source>
        <comment>form of the tail</comment>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>Wing pan&amp;els</source>
        <translation>Flüg&amp;elteile</translation>
    </message>
    <message>
        <source>Pieces of wing that are rigged, 1 to 8. May stay empty.</source>
        <translation>Flügelstücke, die aufgerüstet werden, 1 bis 8. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Type a whole number from 1 to 8, or nothing.</source>
        <translation>Eine ganze Zahl von 1 bis 8 eingeben oder nichts.</translation>
    </message>
    <message>
        <source>Seen f&amp;rom</source>
        <translation>Si&amp;chtbar von</translation>
    </message>
    <message>
        <source>Mirror h&amp;elps from</source>
        <translation>Spie&amp;gel hilft von</translation>
    </message>
    <message>
        <source>Where a mirror shows what the eye does not reach.</source>
        <translation>Von wo ein Spiegel zeigt, was das Auge nicht erreicht.</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>The front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>The rear</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>The left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>The right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Not said</source>
        <comment>from where a coupling is seen</comment>
        <translation>Nicht gesagt</translation>
    </message>
    <message>
        <source>On the plan, &amp;across</source>
        <translation>In der Drau&amp;fsicht, quer</translation>
    </message>
    <message>
        <source>−100 the left wing tip, 0 the middle, 100 the right. Up and Down move it.</source>
        <translation>−100 die linke Flügelspitze, 0 die Mitte, 100 rechts. Auf und Ab verschieben es.</translation>
    </message>
    <message>
        <source>On &amp;the plan, along</source>
        <translation>In der Draufsicht, &amp;längs</translation>
    </message>
    <message>
        <source>0 the nose, 100 the tail. Up and Down move it.</source>
        <translation>0 die Rumpfnase, 100 das Heck. Auf und Ab verschieben es.</translation>
    </message>
    <message>
        <source>Type a whole number from −100 to 100, or nothing.</source>
        <translation>Eine ganze Zahl von −100 bis 100 eingeben oder nichts.</translation>
    </message>
    <message>
        <source>Type a whole number from 0 to 100, or nothing.</source>
        <translation>Eine ganze Zahl von 0 bis 100 eingeben oder nichts.</translation>
    </message>
    <message>
        <source>Type both numbers of the place, or neither.</source>
        <translation>Beide Zahlen des Platzes eingeben oder keine.</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>L</source>
        <comment>left wing, on the plan</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>R</source>
        <comment>right wing, on the plan</comment>
        <translation>R</translation>
    </message>
    <message>
        <source>number %1</source>
        <translation>Nummer %1</translation>
    </message>
    <message>
        <source>connects by itself</source>
        <translation>schließt selbsttätig an</translation>
    </message>
    <message>
        <source>not in use</source>
        <translation>nicht in Gebrauch</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>coupling, what is said of it</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>The airframe from above, nose up.</source>
        <translation>Das Flugzeug von oben, Rumpfnase oben.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Gewählt: %1.</translation>
    </message>
    <message>
        <source>Left: %1.</source>
        <translation>Links: %1.</translation>
    </message>
    <message>
        <source>Right: %1.</source>
        <translation>Rechts: %1.</translation>
    </message>
    <message>
        <source>In the middle: %1.</source>
        <translation>In der Mitte: %1.</translation>
    </message>
    <message>
        <source>It has no couplings yet.</source>
        <translation>Es hat noch keine Anschlüsse.</translation>
    </message>
    <message>
        <source>Where the couplings are</source>
        <translation>Wo die Anschlüsse sind</translation>
    </message>
    <message>
        <source>Arrow keys go to the next coupling in their direction.</source>
        <translation>Pfeiltasten gehen zum nächsten Anschluss in ihrer Richtung.</translation>
    </message>
    <message>
        <source>Arrow keys move the chosen coupling, with Shift by larger steps.</source>
        <translation>Pfeiltasten verschieben den gewählten Anschluss, mit Umschalt in größeren Schritten.</translation>
    </message>
</context>
<context>
    <name>PracticeWords</name>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>You are shown a joint as it can be seen through the access, and say how it stands. Say first, then see. Faults come more often here than in life, and “cannot tell from here” can be the right answer.</source>
        <translation>Sie bekommen eine Verbindung gezeigt, wie sie durch den Zugang zu sehen ist, und sagen, wie sie steht. Erst sagen, dann sehen. Fehler kommen hier öfter vor als im Leben, und „von hier nicht zu sagen“ kann die richtige Antwort sein.</translation>
    </message>
    <message>
        <source>Practise %1  (O)</source>
        <comment>a coupling, and the key</comment>
        <translation>%1 üben  (O)</translation>
    </message>
    <message>
        <source>Practise all couplings  (A)</source>
        <comment>with its key</comment>
        <translation>Alle Anschlüsse üben  (A)</translation>
    </message>
    <message>
        <source>O</source>
        <comment>key for: practise this coupling</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>A</source>
        <comment>key for: practise all couplings</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>This airframe has no ball joint that could be practised.</source>
        <translation>Dieses Flugzeug hat keinen Kugelanschluss, der sich üben lässt.</translation>
    </message>
    <message>
        <source>Your last rigging here was long ago: everything is asked again.</source>
        <translation>Ihr letztes Aufrüsten hier ist lange her: Alles wird noch einmal gefragt.</translation>
    </message>
    <message>
        <source>The round is done: %1 of %2 right.</source>
        <translation>Die Runde ist zu Ende: %1 von %2 richtig.</translation>
    </message>
    <message>
        <source>So far: %1 of %2 right</source>
        <comment>all rounds of a person</comment>
        <translation>Bisher: %1 von %2 richtig</translation>
    </message>
    <message numerus="yes">
        <source>Part-seated, called locked: %n</source>
        <translation>
            <numerusform>Halb eingerastet, verriegelt genannt: %n</numerusform>
            <numerusform>Halb eingerastet, verriegelt genannt: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not secured, called locked: %n</source>
        <translation>
            <numerusform>Nicht gesichert, verriegelt genannt: %n</numerusform>
            <numerusform>Nicht gesichert, verriegelt genannt: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Empty socket, called locked: %n</source>
        <translation>
            <numerusform>Leere Pfanne, verriegelt genannt: %n</numerusform>
            <numerusform>Leere Pfanne, verriegelt genannt: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation>Frage %1 von %2</translation>
    </message>
    <message>
        <source>%1: this is what you see. Is it locked?</source>
        <comment>a coupling</comment>
        <translation>%1: Das sehen Sie. Ist es verriegelt?</translation>
    </message>
    <message>
        <source>You have a torch and a mirror.</source>
        <translation>Sie haben eine Lampe und einen Spiegel.</translation>
    </message>
    <message>
        <source>You have a mirror, and no torch.</source>
        <translation>Sie haben einen Spiegel und keine Lampe.</translation>
    </message>
    <message>
        <source>You have a torch, and no mirror.</source>
        <translation>Sie haben eine Lampe und keinen Spiegel.</translation>
    </message>
    <message>
        <source>You have no torch and no mirror.</source>
        <translation>Sie haben weder Lampe noch Spiegel.</translation>
    </message>
    <message>
        <source>You look from below.</source>
        <translation>Sie blicken von unten.</translation>
    </message>
    <message>
        <source>You look from the front.</source>
        <translation>Sie blicken von vorn.</translation>
    </message>
    <message>
        <source>You look from the rear.</source>
        <translation>Sie blicken von hinten.</translation>
    </message>
    <message>
        <source>You look from the left.</source>
        <translation>Sie blicken von links.</translation>
    </message>
    <message>
        <source>You look from the right.</source>
        <translation>Sie blicken von rechts.</translation>
    </message>
    <message>
        <source>You look from above.</source>
        <translation>Sie blicken von oben.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verriegelt</translation>
    </message>
    <message>
        <source>Not locked</source>
        <translation>Nicht verriegelt</translation>
    </message>
    <message>
        <source>Cannot tell from here</source>
        <translation>Von hier nicht zu sagen</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>an answer and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>How sure are you?</source>
        <translation>Wie gewiss sind Sie sich?</translation>
    </message>
    <message>
        <source>Sure  (S)</source>
        <comment>with its key</comment>
        <translation>Gewiss  (S)</translation>
    </message>
    <message>
        <source>Not sure  (N)</source>
        <comment>with its key</comment>
        <translation>Ungewiss  (N)</translation>
    </message>
    <message>
        <source>S</source>
        <comment>key for: sure</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>N</source>
        <comment>key for: not sure</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>Next  (Enter)</source>
        <translation>Weiter  (Enter)</translation>
    </message>
    <message>
        <source>Number keys: your answer. Then S: sure, N: not sure. Enter: next.</source>
        <translation>Zifferntasten: Ihre Antwort. Dann S: gewiss, N: ungewiss. Enter: weiter.</translation>
    </message>
    <message>
        <source>It was locked.</source>
        <translation>Es war verriegelt.</translation>
    </message>
    <message>
        <source>It was part-seated.</source>
        <translation>Es war halb eingerastet.</translation>
    </message>
    <message>
        <source>It was not secured: ball and plunger in place, and nothing held the plunger.</source>
        <translation>Es war nicht gesichert: Kugel und Riegel an ihrem Platz, und nichts hielt den Riegel.</translation>
    </message>
    <message>
        <source>The socket was empty.</source>
        <translation>Die Pfanne war leer.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <source>Not right</source>
        <translation>Nicht richtig</translation>
    </message>
    <message>
        <source>Right, and you were not sure: it comes again soon</source>
        <translation>Richtig, und Sie waren sich nicht gewiss: Es kommt bald wieder</translation>
    </message>
    <message>
        <source>Part-seated, called locked</source>
        <translation>Halb eingerastet, verriegelt genannt</translation>
    </message>
    <message>
        <source>Not secured, called locked</source>
        <translation>Nicht gesichert, verriegelt genannt</translation>
    </message>
    <message>
        <source>Empty socket, called locked</source>
        <translation>Leere Pfanne, verriegelt genannt</translation>
    </message>
    <message>
        <source>You were sure, so it comes again first.</source>
        <translation>Sie waren sich gewiss, darum kommt es zuerst wieder.</translation>
    </message>
    <message>
        <source>What is in view does not tell it. Bring a torch and a mirror. If it still cannot be seen, stop and call.</source>
        <translation>Was zu sehen ist, sagt es nicht. Lampe und Spiegel holen. Ist es auch dann nicht zu sehen: aufhören und anrufen.</translation>
    </message>
    <message>
        <source>What is in view does not tell it. Bring a mirror. If it still cannot be seen, stop and call.</source>
        <translation>Was zu sehen ist, sagt es nicht. Einen Spiegel holen. Ist es auch dann nicht zu sehen: aufhören und anrufen.</translation>
    </message>
    <message>
        <source>What is in view does not tell it. Bring a torch. If it still cannot be seen, stop and call.</source>
        <translation>Was zu sehen ist, sagt es nicht. Eine Lampe holen. Ist es auch dann nicht zu sehen: aufhören und anrufen.</translation>
    </message>
    <message>
        <source>What is in view does not tell it, with torch and mirror too: stop and call.</source>
        <translation>Was zu sehen ist, sagt es nicht, auch mit Lampe und Spiegel: aufhören und anrufen.</translation>
    </message>
    <message>
        <source>Ball in the socket, plunger home, sleeve at its stop. On the real joint the gap is then read and the rod pulled: each is one sign only.</source>
        <translation>Kugel in der Pfanne, Riegel ganz eingerastet, Hülse am Anschlag. An der echten Verbindung wird danach der Spalt gemessen und an der Stange gezogen: Jedes ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>The ball is not at the bottom, so the plunger stands back and its tab stands differently. It may still move the control, and can let go in flight.</source>
        <translation>Die Kugel ist nicht am Grund, darum steht der Riegel zurück und seine Lasche steht anders. Die Verbindung kann die Steuerung trotzdem noch bewegen und kann im Flug aufgehen.</translation>
    </message>
    <message>
        <source>The ball is home, but nothing stops the plunger from being pressed: look for bare thread, a sleeve that is back, a pin that is out.</source>
        <translation>Die Kugel sitzt am Grund, aber nichts hindert, dass der Riegel gedrückt wird: auf blankes Gewinde, eine zurückstehende Hülse, eine Sicherungsnadel, die nicht steckt, achten.</translation>
    </message>
    <message>
        <source>There is no ball. Plunger, sleeve and gap may all look as if locked, so the look begins with the ball.</source>
        <translation>Da ist keine Kugel. Riegel, Hülse und Spalt können alle wie verriegelt aussehen, darum beginnt die Sichtkontrolle mit der Kugel.</translation>
    </message>
    <message>
        <source>Calls and order</source>
        <translation>Ansagen und Reihenfolge</translation>
    </message>
    <message>
        <source>A short round in words: what each surface does when the control is moved, which coupling comes next, whom to call, and when to stop.</source>
        <translation>Eine kurze Runde in Worten: was jedes Ruder tut, wenn die Steuerung bewegt wird, welcher Anschluss als nächster kommt, wer anzurufen ist und wann aufzuhören ist.</translation>
    </message>
    <message>
        <source>Begin a round  (B)</source>
        <comment>with its key</comment>
        <translation>Runde beginnen  (B)</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key for: begin a round in words</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>There is nothing to ask yet on this airframe.</source>
        <translation>Zu diesem Flugzeug gibt es noch nichts zu fragen.</translation>
    </message>
    <message>
        <source>%2 What does this surface do: %1?</source>
        <comment>a surface, what the cockpit moves</comment>
        <translation>%2 Was tut dieses Ruder: %1?</translation>
    </message>
    <message>
        <source>Which coupling comes after this one in the order of rigging: %1?</source>
        <translation>Welcher Anschluss kommt in der Reihenfolge beim Aufrüsten nach diesem: %1?</translation>
    </message>
    <message>
        <source>A reading lies outside its band. Whom do you call?</source>
        <translation>Eine Messung liegt außerhalb ihres Bandes. Wen rufen Sie an?</translation>
    </message>
    <message>
        <source>The plunger is not home. The control moves freely. What do you do?</source>
        <translation>Der Riegel ist nicht ganz eingerastet. Die Steuerung ist frei beweglich. Was tun Sie?</translation>
    </message>
    <message>
        <source>You cannot see the plunger. What do you do?</source>
        <translation>Sie können den Riegel nicht sehen. Was tun Sie?</translation>
    </message>
    <message>
        <source>The gap lies outside this coupling's band. The look was in order. What do you do?</source>
        <translation>Der Spalt liegt außerhalb des Bandes dieses Anschlusses. Die Sichtkontrolle zeigte nichts Auffälliges. Was tun Sie?</translation>
    </message>
    <message>
        <source>The joint lets go in the pull. What do you do?</source>
        <translation>Die Verbindung geht bei der Zugprobe auf. Was tun Sie?</translation>
    </message>
    <message>
        <source>After the control check somebody had a hand on a joint. What do you do?</source>
        <translation>Nach der Ruderprobe hatte jemand die Hand an einer Verbindung. Was tun Sie?</translation>
    </message>
    <message>
        <source>You were called away in the middle of a joint. What do you do when you come back?</source>
        <translation>Sie wurden mitten in einer Verbindung weggerufen. Was tun Sie, wenn Sie zurückkommen?</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call</source>
        <translation>Aufhören, stehen lassen, anrufen</translation>
    </message>
    <message>
        <source>Fetch a mirror or a light</source>
        <translation>Spiegel oder Lampe holen</translation>
    </message>
    <message>
        <source>Look at that joint again, then try its surfaces again</source>
        <translation>Diese Verbindung noch einmal ansehen, dann die Ruderprobe ihrer Ruder wiederholen</translation>
    </message>
    <message>
        <source>Begin this joint again at the look</source>
        <translation>Diese Verbindung mit der Sichtkontrolle neu beginnen</translation>
    </message>
    <message>
        <source>Go on with the next step</source>
        <translation>Mit dem nächsten Schritt weitermachen</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Erwartet: %1</translation>
    </message>
    <message>
        <source>A part-seated joint can still move the control. Connecting it again without finding out why is not a fix.</source>
        <translation>Eine halb eingerastete Verbindung kann die Steuerung trotzdem noch bewegen. Wieder anschließen, ohne den Grund zu finden, behebt nichts.</translation>
    </message>
    <message>
        <source>What nobody has seen counts as not done. If it still cannot be seen, stop and call.</source>
        <translation>Was niemand gesehen hat, gilt als nicht getan. Ist es auch dann nicht zu sehen: aufhören und anrufen.</translation>
    </message>
    <message>
        <source>The band is this coupling's own past. Something differs, and the look alone does not say what.</source>
        <translation>Das Band ist die eigene Vergangenheit dieses Anschlusses. Etwas ist anders, und die Sichtkontrolle allein sagt nicht, was.</translation>
    </message>
    <message>
        <source>Whatever gap and look say: do not fly, leave it as it is, and call.</source>
        <translation>Was auch immer Spalt und Sichtkontrolle sagen: nicht fliegen, stehen lassen und anrufen.</translation>
    </message>
    <message>
        <source>A hand may have moved the joint, and the control check alone would not show it.</source>
        <translation>Eine Hand kann die Verbindung bewegt haben, und die Ruderprobe allein würde es nicht zeigen.</translation>
    </message>
    <message>
        <source>After an interruption nobody can be sure what was done.</source>
        <translation>Nach einer Unterbrechung kann niemand gewiss sagen, was getan wurde.</translation>
    </message>
</context>
<context>
    <name>PreviewWords</name>
    <message>
        <source>S</source>
        <comment>key for save as PDF</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>A</source>
        <comment>key for the other paper</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>E</source>
        <comment>key for the ends of earlier prints</comment>
        <translation>E</translation>
    </message>
    <message>
        <source>X</source>
        <comment>key for the appendix</comment>
        <translation>X</translation>
    </message>
    <message>
        <source>The engineer’s report</source>
        <translation>Der Bericht für den Prüfer</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Larger  (+)</source>
        <translation>Größer  (+)</translation>
    </message>
    <message>
        <source>Smaller  (−)</source>
        <translation>Kleiner  (−)</translation>
    </message>
    <message>
        <source>Fit the width  (0)</source>
        <translation>Breite einpassen  (0)</translation>
    </message>
    <message>
        <source>Paper (%1)</source>
        <translation>Papier (%1)</translation>
    </message>
    <message>
        <source>Appendix (%1)</source>
        <translation>Anhang (%1)</translation>
    </message>
    <message>
        <source>Earlier ends (%1)</source>
        <translation>Frühere Endstände (%1)</translation>
    </message>
    <message>
        <source>Readings listed one by one, looks, pulls and control checks. The tables beside the PDF hold them in any case.</source>
        <translation>Messungen einzeln aufgeführt, Sichtkontrollen, Zugproben und Ruderproben. Die Tabellen neben dem PDF enthalten sie in jedem Fall.</translation>
    </message>
    <message>
        <source>Save as PDF …  (%1)</source>
        <translation>Als PDF speichern …  (%1)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Page Up and Page Down turn the pages. The tables of all readings and figures are saved beside the PDF.</source>
        <translation>Bild auf und Bild ab blättern. Die Tabellen aller Messungen und Zahlen werden neben dem PDF gespeichert.</translation>
    </message>
    <message>
        <source>Saved: %1. All readings and figures as tables: %2.</source>
        <translation>Gespeichert: %1. Alle Messungen und Zahlen als Tabellen: %2.</translation>
    </message>
    <message>
        <source>Tables are there already</source>
        <translation>Tabellen sind schon da</translation>
    </message>
    <message>
        <source>%1 is there already. Replace the tables in it by those of this report?</source>
        <translation>%1 gibt es schon. Die Tabellen darin durch die dieses Berichts ersetzen?</translation>
    </message>
    <message>
        <source>Replace them</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Laying out the report …</source>
        <translation>Der Bericht wird gesetzt …</translation>
    </message>
</context>
<context>
    <name>ProblemWords</name>
    <message>
        <source>this file</source>
        <comment>where a file's name stands</comment>
        <translation>diese Datei</translation>
    </message>
    <message>
        <source>%1 is not there any more. It may have been moved or renamed, or its drive taken out: find it, then open it from its new place.</source>
        <translation>%1 ist nicht mehr da. Vielleicht wurde die Datei verschoben oder umbenannt oder ihr Laufwerk entfernt: Datei suchen, dann vom neuen Ort öffnen.</translation>
    </message>
    <message>
        <source>%1 cannot be opened. Look whether it is a file that you may read, then try again.</source>
        <translation>%1 lässt sich nicht öffnen. Nachsehen, ob Sie die Datei lesen dürfen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is not a Rigband file. Nothing in it was changed; choose a file that ends in .rigband.</source>
        <translation>%1 ist keine Rigband-Datei. Nichts darin wurde geändert; eine Datei wählen, die auf .rigband endet.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Rigband than this one. Nothing in it was changed; install the newer program to open it.</source>
        <translation>%1 wurde von einem neueren Rigband als diesem geschrieben. Nichts darin wurde geändert; zum Öffnen das neuere Programm installieren.</translation>
    </message>
    <message>
        <source>%1 is not laid out as Rigband lays out its files, so it was left as it is: another program changed how it is built, first of all at “%2”. Open the latest copy from the folder beside it, or let Rigband read what can still be read into a new file.</source>
        <translation>%1 ist nicht so aufgebaut, wie Rigband seine Dateien aufbaut, und wurde darum unverändert gelassen: Ein anderes Programm hat den Aufbau geändert, als Erstes bei „%2“. Die jüngste Kopie aus dem Ordner daneben öffnen oder Rigband in eine neue Datei lesen lassen, was noch zu lesen ist.</translation>
    </message>
    <message>
        <source>%1 says of itself that it is of another version than it is, so it was left as it is: somebody changed its number. Open the latest copy from the folder beside it.</source>
        <translation>%1 gibt sich als andere Version aus, als sie ist, und wurde darum unverändert gelassen: Jemand hat ihre Nummer geändert. Die jüngste Kopie aus dem Ordner daneben öffnen.</translation>
    </message>
    <message>
        <source>%1 is damaged and was left as it is. Open the latest copy from the folder beside it, or let Rigband read what can still be read into a new file.</source>
        <translation>%1 ist beschädigt und wurde unverändert gelassen. Die jüngste Kopie aus dem Ordner daneben öffnen oder Rigband in eine neue Datei lesen lassen, was noch zu lesen ist.</translation>
    </message>
    <message>
        <source>%1 may only be read, so nothing was written. Allow writing to it, or copy it to a place of your own and open the copy.</source>
        <translation>%1 darf nur gelesen werden, darum wurde nichts geschrieben. Das Schreiben erlauben oder die Datei an einen eigenen Ort kopieren und die Kopie öffnen.</translation>
    </message>
    <message>
        <source>The folder of %1 may not be written to, so nothing was written: saving needs room there for a second file. Allow writing to the folder, or use a place of your own.</source>
        <translation>%1: In den Ordner darf nicht geschrieben werden, darum wurde nichts geschrieben. Speichern braucht dort Platz für eine zweite Datei. Das Schreiben in den Ordner erlauben oder einen eigenen Ort verwenden.</translation>
    </message>
    <message>
        <source>The disk with %1 is full, so nothing was written. All that was saved before is kept. Free some space elsewhere on the disk, then try again.</source>
        <translation>%1: Der Datenträger ist voll, darum wurde nichts geschrieben. Alles vorher Gespeicherte ist erhalten. Anderswo auf dem Datenträger Platz schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Another window is writing to %1 just now, so nothing was written here. Wait a moment, then try again.</source>
        <translation>%1: Ein anderes Fenster schreibt gerade in die Datei, darum wurde hier nichts geschrieben. Einen Moment warten, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is large and is still being looked through for damage, so nothing was written yet. Wait a moment, then try again.</source>
        <translation>%1 ist groß und wird noch auf Schäden durchgesehen, darum wurde noch nichts geschrieben. Einen Moment warten, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>No copy of %1 was kept today: the copies beside it would take more than a quarter of the free space of the disk. What you enter is saved all the same. Free some space, or copy the file to another place yourself.</source>
        <translation>%1: Heute wurde keine Kopie behalten. Die Kopien daneben nähmen mehr als ein Viertel des freien Platzes auf dem Datenträger ein. Was Sie eintragen, wird trotzdem gespeichert. Platz schaffen oder die Datei selbst an einen anderen Ort kopieren.</translation>
    </message>
    <message>
        <source>Among the copies beside %1 stands “%2”, of a day that is still to come: the clock was wrong when it was made. It does not count as a copy of a day; look at it, and take it away when it is not needed.</source>
        <translation>%1: Unter den Kopien daneben steht „%2“, von einem Tag, der noch kommt: Die Uhr ging falsch, als sie entstand. Sie zählt nicht als Kopie eines Tages; sie ansehen und wegnehmen, wenn sie nicht gebraucht wird.</translation>
    </message>
    <message>
        <source>Nothing more can be saved in %1: something in it has the last number that there is, which another program gave it. Open a copy from before, from the folder beside it.</source>
        <translation>%1: Hier lässt sich nichts mehr speichern. Etwas darin hat die letzte Nummer, die es gibt; ein anderes Programm hat sie vergeben. Aus dem Ordner daneben eine Kopie von vorher öffnen.</translation>
    </message>
    <message>
        <source>This does not fit with what %1 already holds, so nothing was written. Look over what was entered, then try again.</source>
        <translation>Das passt nicht zu dem, was %1 schon enthält, darum wurde nichts geschrieben. Die Eingaben durchsehen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>This is not in %1. Open the page anew to see what the file holds now.</source>
        <translation>%1 enthält das nicht. Die Seite neu öffnen, um zu sehen, was die Datei jetzt enthält.</translation>
    </message>
    <message>
        <source>%1 is there already and was left as it is. Choose another name.</source>
        <translation>%1 gibt es schon und wurde unverändert gelassen. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>Something unexpected went wrong with %1. It is not certain whether this was saved: close the file, open it again and look at what it holds before you enter it once more.</source>
        <translation>%1: Etwas Unerwartetes ging schief. Es ist ungewiss, ob gespeichert wurde: Datei schließen, wieder öffnen und ansehen, was sie enthält, bevor Sie es noch einmal eintragen.</translation>
    </message>
    <message>
        <source>A save into %1 was broken off, and what undoes it stands in %1-journal beside it. Open %1 with Rigband where it may be written to: it is then as it was before that save. Until then move or copy neither of the two without the other.</source>
        <translation>Ein Speichern in %1 wurde abgebrochen, und was es rückgängig macht, steht in %1-journal daneben. %1 mit Rigband dort öffnen, wo geschrieben werden darf: Dann ist sie wieder so wie vor diesem Speichern. Bis dahin keine der beiden Dateien ohne die andere verschieben oder kopieren.</translation>
    </message>
</context>
<context>
    <name>PromptWords</name>
    <message>
        <source>Rigband</source>
        <translation>Rigband</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Enter this</source>
        <translation>Dies eintragen</translation>
    </message>
    <message>
        <source>That is no reason. Say in words why; a figure is typed afterwards.</source>
        <translation>Das ist kein Grund. In Worten sagen, warum; eine Zahl wird danach eingegeben.</translation>
    </message>
    <message>
        <source>Choose a name for the file</source>
        <translation>Einen Namen für die Datei wählen</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Eine Datei wählen</translation>
    </message>
    <message>
        <source>%1  (Alt+%2)</source>
        <comment>answer, its key</comment>
        <translation>%1  (Alt+%2)</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>offered answer, what was typed besides</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Wrong leaf</source>
        <translation>Falsches Blatt</translation>
    </message>
    <message>
        <source>Wrong coupling</source>
        <translation>Falscher Anschluss</translation>
    </message>
    <message>
        <source>Misread</source>
        <translation>Falsch abgelesen</translation>
    </message>
    <message>
        <source>Leaf bent or tilted</source>
        <translation>Blatt verbogen oder schief</translation>
    </message>
    <message>
        <source>Dirt on the leaf</source>
        <translation>Schmutz am Blatt</translation>
    </message>
    <message>
        <source>A reason is typed and not entered. It is lost when Rigband is closed now.</source>
        <translation>Eine Begründung ist eingegeben und nicht übernommen. Sie geht verloren, wenn Rigband jetzt geschlossen wird.</translation>
    </message>
    <message>
        <source>Wrong person</source>
        <translation>Falsche Person</translation>
    </message>
</context>
<context>
    <name>QuestionWords</name>
    <message>
        <source>%1, outside its band</source>
        <translation>%1, außerhalb seines Bandes</translation>
    </message>
    <message>
        <source>%1, answered “no”</source>
        <translation>%1, mit „nein“ beantwortet</translation>
    </message>
    <message>
        <source>%1, could not be seen</source>
        <translation>%1, war nicht zu sehen</translation>
    </message>
    <message>
        <source>%1, two readings disagree</source>
        <translation>%1, zwei Messungen widersprechen sich</translation>
    </message>
    <message>
        <source>%1, left and right look swapped</source>
        <translation>%1, links und rechts anscheinend vertauscht</translation>
    </message>
    <message>
        <source>%1, wrong or not seen in the control check</source>
        <translation>%1, in der Ruderprobe falsch oder nicht gesehen</translation>
    </message>
    <message>
        <source>%1, its band is in doubt</source>
        <translation>%1, sein Band ist im Zweifel</translation>
    </message>
    <message>
        <source>%1, shown part-seated on purpose</source>
        <translation>%1, absichtlich halb eingerastet vorgeführt</translation>
    </message>
    <message>
        <source>%1, a question in words</source>
        <translation>%1, eine Frage in Worten</translation>
    </message>
    <message>
        <source>Gauge %1, readings in doubt</source>
        <translation>Lehre %1, Messungen im Zweifel</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit dem %2</translation>
    </message>
    <message numerus="yes">
        <source>%n open question(s) on %1: %2; and %3 more.</source>
        <comment>which, how many others</comment>
        <translation>
            <numerusform>%n offene Frage zu %1: %2; und %3 weitere.</numerusform>
            <numerusform>%n offene Fragen zu %1: %2; und %3 weitere.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open question(s) on %1: %2.</source>
        <comment>which</comment>
        <translation>
            <numerusform>%n offene Frage zu %1: %2.</numerusform>
            <numerusform>%n offene Fragen zu %1: %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>; </source>
        <comment>between questions</comment>
        <translation>; </translation>
    </message>
    <message numerus="yes">
        <source>%n open question(s) on %1.</source>
        <translation>
            <numerusform>%n offene Frage zu %1.</numerusform>
            <numerusform>%n offene Fragen zu %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Show the questions</source>
        <translation>Fragen zeigen</translation>
    </message>
    <message>
        <source>Show the questions (Ctrl+6)</source>
        <translation>Fragen zeigen (Strg+6)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>Back to the page before (Esc)</source>
        <translation>Zurück zur vorigen Seite (Esc)</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>%1 open, %2 closed</source>
        <translation>%1 offen, %2 geschlossen</translation>
    </message>
    <message>
        <source>No question was ever asked on this airframe. An outside reading, a “no”, a “cannot see”, two readings that disagree or a gauge in doubt open one.</source>
        <translation>An diesem Flugzeug wurde noch nie eine Frage gestellt. Eine Messung außerhalb, ein „nein“, ein „nicht zu sehen“, zwei widersprüchliche Messungen oder eine Lehre im Zweifel eröffnen eine.</translation>
    </message>
    <message>
        <source>This file knows no airframe yet. Begin in Set up (Ctrl+5).</source>
        <translation>Diese Datei kennt noch kein Flugzeug. Unter Einrichten (Strg+5) beginnen.</translation>
    </message>
    <message>
        <source>Up, Down: another question. Enter: close it. Esc: back.</source>
        <translation>Auf, Ab: andere Frage. Enter: schließen. Esc: zurück.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>open or closed, about what</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>open since %1</source>
        <translation>offen seit dem %1</translation>
    </message>
    <message>
        <source>closed %1 by %2</source>
        <translation>geschlossen am %1 von %2</translation>
    </message>
    <message>
        <source>%1: answered “yes”.</source>
        <translation>%1: „ja“ geantwortet.</translation>
    </message>
    <message>
        <source>%1: answered “no”.</source>
        <translation>%1: „nein“ geantwortet.</translation>
    </message>
    <message>
        <source>%1: answered “felt, not seen”.</source>
        <translation>%1: „gefühlt, nicht gesehen“ geantwortet.</translation>
    </message>
    <message>
        <source>%1: answered “cannot see”.</source>
        <translation>%1: „nicht zu sehen“ geantwortet.</translation>
    </message>
    <message>
        <source>%1, read by %2, lay outside this coupling's band.</source>
        <translation>%1, gemessen von %2, lag außerhalb des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1: “%2”</source>
        <comment>somebody asks since a day: what</comment>
        <translation>%1: „%2“</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>what somebody asks</comment>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>%1, read by %2.</source>
        <translation>%1, gemessen von %2.</translation>
    </message>
    <message>
        <source>%1 and %2 have gone through the whole joint since, %3.</source>
        <comment>two persons, moment</comment>
        <translation>%1 und %2 sind seither die ganze Verbindung durchgegangen, %3.</translation>
    </message>
    <message>
        <source>It was shown part-seated in Set up, and nobody has gone through the whole joint since.</source>
        <translation>Unter Einrichten wurde halb eingerastet vorgeführt, und seither ist niemand die ganze Verbindung durchgegangen.</translation>
    </message>
    <message>
        <source>%1 was part-seated on purpose in Set up. Connect it, then do the whole check in Rigged today (Ctrl+1): look, reading, pull, securing, second person. After that a person entitled to decide closes this.</source>
        <translation>%1 war unter Einrichten absichtlich halb eingerastet. Anschließen, dann unter Heute aufgerüstet (Strg+1) die ganze Kontrolle machen: Sichtkontrolle, Messung, Zugprobe, Sichern, zweite Person. Danach schließt dies, wer dazu berechtigt ist.</translation>
    </message>
    <message>
        <source>The two persons' readings differ by more than measuring explains. Both stand.</source>
        <translation>Die Messungen der beiden Personen unterscheiden sich um mehr, als das Messen erklärt. Beide bleiben stehen.</translation>
    </message>
    <message>
        <source>The left reading fits the right coupling's band and not its own, and the other way round.</source>
        <translation>Die linke Messung passt zum Band des rechten Anschlusses und nicht zum eigenen, und umgekehrt.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) taken with %1 from %2 on cannot be judged by it.</source>
        <translation>
            <numerusform>%n Messung mit %1 ab dem %2 lässt sich damit nicht beurteilen.</numerusform>
            <numerusform>%n Messungen mit %1 ab dem %2 lassen sich damit nicht beurteilen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Asked on %1; nobody was named.</source>
        <translation>Gefragt am %1; niemand wurde genannt.</translation>
    </message>
    <message>
        <source>Stated by %1 on %2.</source>
        <translation>Angegeben von %1 am %2.</translation>
    </message>
    <message>
        <source>It stands on the paper of %1, typed in on %2; nobody was named.</source>
        <translation>Es steht auf dem Papier vom %1, eingegeben am %2; niemand wurde genannt.</translation>
    </message>
    <message>
        <source>Stated by %1 on the paper of %2, typed in on %3.</source>
        <translation>Angegeben von %1 auf dem Papier vom %2, eingegeben am %3.</translation>
    </message>
    <message>
        <source>In the rigging record begun %1, which is still open.</source>
        <translation>Im Aufrüstprotokoll, das am %1 begonnen wurde und noch offen ist.</translation>
    </message>
    <message>
        <source>In the rigging record begun %1.</source>
        <translation>Im Aufrüstprotokoll, das am %1 begonnen wurde.</translation>
    </message>
    <message>
        <source>Closed on %2: decided by %1.</source>
        <translation>Geschlossen am %2: entschieden von %1.</translation>
    </message>
    <message>
        <source>Closed on %2: decided by %1, entered by %3.</source>
        <translation>Geschlossen am %2: entschieden von %1, eingegeben von %3.</translation>
    </message>
    <message>
        <source>%1 had found this too: nobody else decided what it was.</source>
        <translation>%1 hatte es auch selbst vorgefunden: Niemand anders hat entschieden, was es war.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>“%1”: what was called was “%2”, which is not what was expected.</source>
        <comment>check, movement</comment>
        <translation>„%1“: angesagt wurde „%2“, und das wurde nicht erwartet.</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, and call a person entitled to decide. Whom to call is not set up yet: name the person in Set up (Ctrl+5).</source>
        <translation>Aufhören, stehen lassen, wie es ist, und eine dazu berechtigte Person anrufen. Wen man anruft, ist noch nicht eingerichtet: die Person unter Einrichten (Strg+5) nennen.</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call %1.</source>
        <translation>Aufhören, stehen lassen, wie es ist, anrufen: %1.</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call %1 (%2).</source>
        <comment>name, telephone</comment>
        <translation>Aufhören, stehen lassen, wie es ist, anrufen: %1 (%2).</translation>
    </message>
    <message>
        <source>Only when the cause is found: disconnect, clean, connect, look, pull, read.</source>
        <translation>Erst wenn die Ursache gefunden ist: trennen, reinigen, anschließen, Sichtkontrolle, Zugprobe, messen.</translation>
    </message>
    <message>
        <source>Only a person entitled to decide closes a question.</source>
        <translation>Nur wer dazu berechtigt ist, schließt eine Frage.</translation>
    </message>
    <message>
        <source>A later reading inside the band never closes it.</source>
        <translation>Eine spätere Messung im Band schließt sie nie.</translation>
    </message>
    <message>
        <source>Once it is closed, %1 starts at the look in the record that is open, for both persons: somebody has been at it.</source>
        <translation>Ist sie geschlossen, beginnt %1 im offenen Protokoll wieder bei der Sichtkontrolle, für beide Personen: Jemand war daran.</translation>
    </message>
    <message>
        <source>After closing it, answer the control check of %1 again: what was answered “no” or could not be seen, and after a “no” all of it. Where it moved otherwise than expected, every joint of its circuit starts at the look again, for both persons.</source>
        <translation>Nach dem Schließen die Ruderprobe von %1 neu beantworten: was mit „nein“ beantwortet wurde oder nicht zu sehen war, und nach einem „nein“ alles. Wo es sich anders als erwartet bewegte, beginnt jede Verbindung seines Steuerkreises wieder bei der Sichtkontrolle, für beide Personen.</translation>
    </message>
    <message>
        <source>Closing it does not lift the doubt from the gauge: only a later check that finds it usable does, in Set up (Ctrl+5).</source>
        <translation>Das Schließen nimmt den Zweifel nicht von der Lehre: Das tut nur eine spätere Prüfung, die sie brauchbar findet, unter Einrichten (Strg+5).</translation>
    </message>
    <message>
        <source>The question is closed.</source>
        <translation>Die Frage ist geschlossen.</translation>
    </message>
    <message>
        <source>The question is closed. %1 starts at the look in Rigged today (Ctrl+1).</source>
        <translation>Die Frage ist geschlossen. %1 beginnt bei der Sichtkontrolle unter Heute aufgerüstet (Strg+1).</translation>
    </message>
    <message>
        <source>The question is closed. Answer the control check of %1 again in Rigged today (Ctrl+1).</source>
        <translation>Die Frage ist geschlossen. Die Ruderprobe von %1 unter Heute aufgerüstet (Strg+1) neu beantworten.</translation>
    </message>
    <message>
        <source>Close this question …  (Enter)</source>
        <translation>Diese Frage schließen …  (Enter)</translation>
    </message>
    <message>
        <source>&amp;Who decided</source>
        <translation>&amp;Wer entschieden hat</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Not in the list? Add the person in Set up (Ctrl+5). What you typed stays.</source>
        <translation>Nicht in der Liste? Die Person unter Einrichten (Strg+5) hinzufügen. Was Sie eingegeben haben, bleibt.</translation>
    </message>
    <message>
        <source>What was &amp;found</source>
        <translation>Was &amp;gefunden wurde</translation>
    </message>
    <message>
        <source>Sleeve not at its stop, grit under the plunger …</source>
        <translation>Hülse nicht am Anschlag, Sand unter dem Riegel …</translation>
    </message>
    <message>
        <source>What was &amp;done</source>
        <translation>Was ge&amp;tan wurde</translation>
    </message>
    <message>
        <source>Cleaned, connected, looked at, pulled, read; nothing, and why …</source>
        <translation>Gereinigt, angeschlossen, angesehen, Zugprobe, gemessen; nichts, und warum …</translation>
    </message>
    <message>
        <source>&amp;Entered by, when it is somebody else</source>
        <translation>&amp;Eingegeben von, wenn es jemand anders ist</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>Niemand genannt</translation>
    </message>
    <message>
        <source>&amp;Close the question  (Ctrl+Enter)</source>
        <translation>Frage &amp;schließen  (Strg+Enter)</translation>
    </message>
    <message>
        <source>Not now  (Esc)</source>
        <translation>Jetzt nicht  (Esc)</translation>
    </message>
    <message>
        <source>What you typed stays here until this file is shut.</source>
        <translation>Was Sie eingegeben haben, bleibt hier, bis diese Datei geschlossen wird.</translation>
    </message>
    <message>
        <source>Choose who decided. Nobody is filled in for you.</source>
        <translation>Wählen, wer entschieden hat. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Say what was found, also when nothing was.</source>
        <translation>Angeben, was gefunden wurde, auch wenn es nichts war.</translation>
    </message>
    <message>
        <source>Say what was done, also when nothing was, and why.</source>
        <translation>Angeben, was getan wurde, auch wenn es nichts war, und warum.</translation>
    </message>
    <message>
        <source>Not closed. What you typed is still here.</source>
        <translation>Nicht geschlossen. Was Sie eingegeben haben, ist noch hier.</translation>
    </message>
    <message>
        <source>Somebody has closed this question meanwhile, so nothing was kept. What you typed is still here.</source>
        <translation>Inzwischen hat jemand diese Frage geschlossen; deshalb wurde nichts festgehalten. Was Sie eingegeben haben, ist noch hier.</translation>
    </message>
    <message>
        <source>%1, did not move in the control check</source>
        <translation>%1, in der Ruderprobe nicht bewegt</translation>
    </message>
    <message>
        <source>%1, moved the wrong way in the control check</source>
        <translation>%1, in der Ruderprobe falsch herum bewegt</translation>
    </message>
    <message>
        <source>%1, answered “no” in the control check</source>
        <translation>%1, in der Ruderprobe mit „nein“ beantwortet</translation>
    </message>
    <message>
        <source>%1, not seen in the control check</source>
        <translation>%1, in der Ruderprobe nicht gesehen</translation>
    </message>
    <message>
        <source>Closed by %1 on the paper of %2, typed in on %3.</source>
        <translation>Geschlossen von %1 auf dem Papier vom %2, eingegeben am %3.</translation>
    </message>
    <message>
        <source>Closed by %1 on the paper of %2, copied on %3 by %4.</source>
        <translation>Geschlossen von %1 auf dem Papier vom %2, abgeschrieben am %3 von %4.</translation>
    </message>
    <message>
        <source>What was found or done is typed at a question and not saved. It is lost when this file is left now.</source>
        <translation>Zu einer Frage ist ein Befund oder eine Maßnahme eingegeben und nicht gespeichert. Das geht verloren, wenn diese Datei jetzt verlassen wird.</translation>
    </message>
</context>
<context>
    <name>RecordWords</name>
    <message>
        <source>Rigging record, %1</source>
        <translation>Aufrüstprotokoll, %1</translation>
    </message>
    <message>
        <source>%1, serial number %2</source>
        <translation>%1, Werknummer %2</translation>
    </message>
    <message>
        <source>Begun %1, led by %2.</source>
        <comment>moment, person</comment>
        <translation>Begonnen am %1, Leitung: %2.</translation>
    </message>
    <message>
        <source>Gone through again without having been taken apart: no rigging is counted.</source>
        <translation>Noch einmal durchgegangen, ohne dass abgerüstet wurde: Es wird kein Aufrüsten gezählt.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>moment: how it was closed</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2, stated by %3 and %4.</source>
        <comment>moment: how it was closed</comment>
        <translation>%1: %2, erklärt von %3 und %4.</translation>
    </message>
    <message>
        <source>Not closed yet. What stands here can still be added to.</source>
        <translation>Noch nicht abgeschlossen. Was hier steht, kann noch ergänzt werden.</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Temperature at the airframe: %1 °C.</source>
        <translation>Temperatur am Flugzeug: %1 °C.</translation>
    </message>
    <message>
        <source>Note left before: %1 Nobody has noted that it was read.</source>
        <comment>day, persons: “note”</comment>
        <translation>Früher hinterlassene Notiz: %1 Niemand hat vermerkt, dass sie gelesen wurde.</translation>
    </message>
    <message>
        <source>Note left before: %1 Read by %2, %3.</source>
        <comment>day, persons: “note”; person, moment</comment>
        <translation>Früher hinterlassene Notiz: %1 Gelesen von %2, %3.</translation>
    </message>
    <message>
        <source>This is none of the official logs: no aircraft or journey log, no technical log or list of defects, no component logbook, no list of directives. It can support an entry there and replaces none. A band is a coupling's own past, never a limit.</source>
        <translation>Dies ist keine der amtlichen Unterlagen: kein Bordbuch oder Flugbuch, kein technisches Bordbuch und keine Mängelliste, keine Lebenslaufakte von Bauteilen, kein Verzeichnis von Anweisungen. Es kann einen Eintrag dort stützen und ersetzt keinen. Ein Band ist die eigene Vergangenheit eines Anschlusses, nie ein Grenzwert.</translation>
    </message>
    <message>
        <source>Not done, or open at the close</source>
        <translation>Nicht getan oder beim Abschluss offen</translation>
    </message>
    <message>
        <source>Nothing on the list was left open. That is what was stated, and no more than that.</source>
        <translation>Von der Liste blieb nichts offen. So wurde es erklärt, und mehr sagt es nicht.</translation>
    </message>
    <message>
        <source>•  %1</source>
        <comment>one of a list</comment>
        <translation>•  %1</translation>
    </message>
    <message>
        <source>Couplings at a glance</source>
        <translation>Anschlüsse im Überblick</translation>
    </message>
    <message>
        <source>Each coupling</source>
        <translation>Jeder Anschluss</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Reading that stands</source>
        <translation>Geltende Messung</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Against its band</source>
        <translation>Gegenüber dem Band</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>First person</source>
        <translation>Erste Person</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>kein Spalt zu messen</translation>
    </message>
    <message>
        <source>%1 has no gap to measure.</source>
        <translation>%1 hat keinen Spalt zu messen.</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>Nothing was answered or read here.</source>
        <translation>Hier wurde nichts beantwortet oder gemessen.</translation>
    </message>
    <message>
        <source>Looked at or tried</source>
        <translation>Angesehen oder probiert</translation>
    </message>
    <message>
        <source>Ball in the socket</source>
        <translation>Kugel in der Pfanne</translation>
    </message>
    <message>
        <source>Plunger home</source>
        <translation>Riegel ganz eingerastet</translation>
    </message>
    <message>
        <source>Sleeve at its stop</source>
        <translation>Hülse am Anschlag</translation>
    </message>
    <message>
        <source>Safety pin in and through</source>
        <translation>Sicherungsnadel drin und durch</translation>
    </message>
    <message>
        <source>Engaged all the way</source>
        <translation>Ganz im Eingriff</translation>
    </message>
    <message>
        <source>Parts meet all round, flush</source>
        <translation>Teile liegen rundum bündig an</translation>
    </message>
    <message>
        <source>Water line or rod connected</source>
        <translation>Ballastleitung oder Stange angeschlossen</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Angeschlossen</translation>
    </message>
    <message>
        <source>Pull: nothing moves</source>
        <translation>Zugprobe: nichts bewegt sich</translation>
    </message>
    <message>
        <source>Secured</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>Struck by %1, %2: %3. Nothing takes its place</source>
        <comment>person, moment: reason</comment>
        <translation>Gestrichen von %1, %2: %3. Nichts tritt an ihre Stelle</translation>
    </message>
    <message>
        <source>Corrected %1: %2</source>
        <comment>moment: reason</comment>
        <translation>Berichtigt am %1: %2</translation>
    </message>
    <message>
        <source>Corrected by %1, %2: %3</source>
        <comment>person, moment: reason</comment>
        <translation>Berichtigt von %1, %2: %3</translation>
    </message>
    <message>
        <source>found part-seated</source>
        <translation>halb eingerastet vorgefunden</translation>
    </message>
    <message>
        <source>takes the place of the corrected one</source>
        <translation>tritt an die Stelle der berichtigten</translation>
    </message>
    <message numerus="yes">
        <source>band %1, %n reading(s)</source>
        <translation>
            <numerusform>Band %1, %n Messung</numerusform>
            <numerusform>Band %1, %n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>there is no band</source>
        <translation>es gibt kein Band</translation>
    </message>
    <message>
        <source>shown at the time: %1</source>
        <translation>damals angezeigt: %1</translation>
    </message>
    <message>
        <source>nothing was shown at the time</source>
        <translation>damals wurde nichts angezeigt</translation>
    </message>
    <message>
        <source>A gap inside the band is one sign only. Finish the look, the pull and the second person.</source>
        <translation>Ein Spalt im Band ist nur ein Anzeichen. Sichtkontrolle und Zugprobe zu Ende führen, dann die zweite Person.</translation>
    </message>
    <message>
        <source>broken off by the person at work</source>
        <translation>von der arbeitenden Person abgebrochen</translation>
    </message>
    <message>
        <source>another person took over</source>
        <translation>eine andere Person hat übernommen</translation>
    </message>
    <message>
        <source>nothing was entered for a long time</source>
        <translation>lange Zeit wurde nichts eingegeben</translation>
    </message>
    <message>
        <source>the program was closed or went down</source>
        <translation>das Programm wurde geschlossen oder stürzte ab</translation>
    </message>
    <message>
        <source>a question was closed here</source>
        <translation>eine Frage wurde hier geschlossen</translation>
    </message>
    <message>
        <source>First person interrupted at %1: %2. The work began again at the look.</source>
        <translation>Erste Person unterbrochen, %1: %2. Die Arbeit begann wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>Second person interrupted at %1: %2. The work began again at the look.</source>
        <translation>Zweite Person unterbrochen, %1: %2. Die Arbeit begann wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>Other questions</source>
        <translation>Weitere Fragen</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>A reading lay outside the band</source>
        <translation>Eine Messung lag außerhalb des Bandes</translation>
    </message>
    <message>
        <source>Answered with no</source>
        <translation>Mit „nein“ beantwortet</translation>
    </message>
    <message>
        <source>Answered with cannot see</source>
        <translation>Mit „nicht zu sehen“ beantwortet</translation>
    </message>
    <message>
        <source>The two persons' readings disagree</source>
        <translation>Die Messungen der zwei Personen widersprechen sich</translation>
    </message>
    <message>
        <source>Left and right may have been swapped</source>
        <translation>Links und rechts sind vielleicht vertauscht</translation>
    </message>
    <message>
        <source>In the control check something was wrong or could not be seen</source>
        <translation>Bei der Ruderprobe war etwas falsch oder nicht zu sehen</translation>
    </message>
    <message>
        <source>The band stood on readings that are now in doubt</source>
        <translation>Das Band beruhte auf Messungen, die jetzt im Zweifel sind</translation>
    </message>
    <message>
        <source>It was shown part-seated on purpose</source>
        <translation>Es wurde absichtlich halb eingerastet gezeigt</translation>
    </message>
    <message>
        <source>Somebody asks</source>
        <translation>Jemand fragt</translation>
    </message>
    <message>
        <source>Read with a gauge that is now in doubt</source>
        <translation>Gemessen mit einer Lehre, die jetzt im Zweifel ist</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Gefunden: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Getan: %1</translation>
    </message>
    <message>
        <source>Decided by %1, %2</source>
        <comment>person, moment</comment>
        <translation>Entschieden von %1, %2</translation>
    </message>
    <message>
        <source>Control check</source>
        <translation>Ruderprobe</translation>
    </message>
    <message>
        <source>A part-seated joint can go unnoticed in this check.</source>
        <translation>Eine halb eingerastete Verbindung kann bei dieser Probe unbemerkt bleiben.</translation>
    </message>
    <message>
        <source>No surfaces were set up, so no control check is recorded.</source>
        <translation>Es wurden keine Ruder eingerichtet, darum ist keine Ruderprobe festgehalten.</translation>
    </message>
    <message>
        <source>Not checked.</source>
        <translation>Nicht geprüft.</translation>
    </message>
    <message>
        <source>Called aloud: %1</source>
        <translation>Laut angesagt: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Erwartet: %1</translation>
    </message>
    <message>
        <source>%1 What it did</source>
        <comment>what the cockpit moved</comment>
        <translation>%1 Was geschah</translation>
    </message>
    <message>
        <source>%1 (expected: %2)</source>
        <comment>what a surface did</comment>
        <translation>%1 (erwartet: %2)</translation>
    </message>
    <message>
        <source>Tried</source>
        <translation>Probiert</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>Am Ruder</translation>
    </message>
    <message>
        <source>In the cockpit</source>
        <translation>Im Cockpit</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Gestellt</translation>
    </message>
    <message>
        <source>Found and done</source>
        <translation>Gefunden und getan</translation>
    </message>
    <message>
        <source>Held and resisted, one way</source>
        <translation>Gehalten: Widerstand, eine Richtung</translation>
    </message>
    <message>
        <source>Held and resisted, the other way</source>
        <translation>Gehalten: Widerstand, andere Richtung</translation>
    </message>
    <message>
        <source>Moves as expected</source>
        <translation>Bewegt sich wie erwartet</translation>
    </message>
    <message>
        <source>Moves as expected, the control one way</source>
        <translation>Bewegt sich wie erwartet, Steuerung in einer Richtung</translation>
    </message>
    <message>
        <source>Moves as expected, the control the other way</source>
        <translation>Bewegt sich wie erwartet, Steuerung in der anderen Richtung</translation>
    </message>
    <message>
        <source>Full travel to both stops</source>
        <translation>Voller Weg bis zu beiden Anschlägen</translation>
    </message>
    <message>
        <source>Neutral</source>
        <translation>Neutral</translation>
    </message>
    <message>
        <source>Free play as it should be</source>
        <translation>Spiel, wie es sein soll</translation>
    </message>
    <message>
        <source>Moves freely</source>
        <translation>Bewegt sich frei</translation>
    </message>
    <message>
        <source>Locks with even force, both sides together</source>
        <translation>Verriegelt mit gleicher Kraft, beide Seiten zugleich</translation>
    </message>
    <message>
        <source>Every notch, both equal</source>
        <translation>Jede Raste, beide gleich</translation>
    </message>
    <message>
        <source>Moves and holds its setting</source>
        <translation>Bewegt sich und hält die Stellung</translation>
    </message>
    <message>
        <source>Both open, both shut</source>
        <translation>Beide offen, beide zu</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>From the manual</source>
        <translation>Aus dem Handbuch</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>nicht beantwortet</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>answer: person, time</comment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1 (before an interruption)</source>
        <translation>%1 (vor einer Unterbrechung)</translation>
    </message>
    <message>
        <source>%1 (answered again later)</source>
        <translation>%1 (später neu beantwortet)</translation>
    </message>
    <message>
        <source>%1 (before somebody was at %2)</source>
        <comment>answer, coupling</comment>
        <translation>%1 (bevor jemand an %2 war)</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Gemessen von</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>%1, first</source>
        <translation>%1, erste Person</translation>
    </message>
    <message>
        <source>%1, second person</source>
        <translation>%1, zweite Person</translation>
    </message>
    <message>
        <source>Free play</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>%1, read %2 mm from the hinge</source>
        <translation>%1, gemessen %2 mm vom Scharnier</translation>
    </message>
    <message>
        <source>%1 ± %2 (%3)</source>
        <comment>figure, tolerance, page of the manual</comment>
        <translation>%1 ± %2 (%3)</translation>
    </message>
    <message>
        <source>at most %1 (%2)</source>
        <comment>figure, page of the manual</comment>
        <translation>höchstens %1 (%2)</translation>
    </message>
    <message>
        <source>no figure entered</source>
        <translation>kein Wert eingegeben</translation>
    </message>
    <message>
        <source>Counts, and the list for the season's first rigging</source>
        <translation>Zählungen, und die Liste zum ersten Aufrüsten der Saison</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählungen</translation>
    </message>
    <message>
        <source>Stated by</source>
        <translation>Erklärt von</translation>
    </message>
    <message>
        <source>Season's first: balls and sockets cleaned, springs snap, sleeves free</source>
        <translation>Erstes der Saison: Kugeln und Pfannen gereinigt, Federn schnappen, Hülsen leichtgängig</translation>
    </message>
    <message>
        <source>Season's first: thin film of the manual's grease</source>
        <translation>Erstes der Saison: dünner Film des Fetts nach Handbuch</translation>
    </message>
    <message>
        <source>Season's first: leaf sets checked</source>
        <translation>Erstes der Saison: Blattsätze geprüft</translation>
    </message>
    <message>
        <source>Season's first: everybody has looked at the couplings anew</source>
        <translation>Erstes der Saison: alle haben sich die Anschlüsse neu angesehen</translation>
    </message>
    <message>
        <source>Leaves, mirror, torch, pins and tools counted back out</source>
        <translation>Blätter, Spiegel, Lampe, Stifte und Werkzeug gezählt und wieder heraus</translation>
    </message>
    <message>
        <source>The note left earlier was read</source>
        <translation>Die früher hinterlassene Notiz wurde gelesen</translation>
    </message>
    <message>
        <source>Hatches closed and taped</source>
        <translation>Handlöcher geschlossen und abgeklebt</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht erklärt</translation>
    </message>
    <message>
        <source>Signed by hand</source>
        <translation>Von Hand unterschrieben</translation>
    </message>
    <message>
        <source>Rigging leader: name, day, signature</source>
        <translation>Leitung des Aufrüstens: Name, Tag, Unterschrift</translation>
    </message>
    <message>
        <source>Rigging leader %1: day, signature</source>
        <translation>Leitung des Aufrüstens %1: Tag, Unterschrift</translation>
    </message>
    <message>
        <source>Second person: name, day, signature</source>
        <translation>Zweite Person: Name, Tag, Unterschrift</translation>
    </message>
    <message>
        <source>Second person %1: day, signature</source>
        <translation>Zweite Person %1: Tag, Unterschrift</translation>
    </message>
    <message>
        <source>Findings of the person who assesses this, with name, day and signature:</source>
        <translation>Befunde der Person, die dies beurteilt, mit Name, Tag und Unterschrift:</translation>
    </message>
    <message>
        <source>%1-%2-rigging.pdf</source>
        <comment>a file's name: registration, day</comment>
        <translation>%1-%2-protokoll.pdf</translation>
    </message>
    <message>
        <source>In the control check it did not move</source>
        <translation>In der Ruderprobe hat es sich nicht bewegt</translation>
    </message>
    <message>
        <source>In the control check it moved the wrong way</source>
        <translation>In der Ruderprobe hat es sich falsch herum bewegt</translation>
    </message>
    <message>
        <source>In the control check “no” was answered</source>
        <translation>In der Ruderprobe wurde „nein“ geantwortet</translation>
    </message>
    <message>
        <source>In the control check it could not be seen</source>
        <translation>In der Ruderprobe war es nicht zu sehen</translation>
    </message>
    <message>
        <source>found not secured</source>
        <translation>nicht gesichert vorgefunden</translation>
    </message>
    <message>
        <source>This record by itself: %1</source>
        <translation>Dieses Protokoll für sich allein: %1</translation>
    </message>
    <message>
        <source>Another first person was named while the paper was typed in. What had been answered before does not count; it was asked again from the look.</source>
        <translation>Beim Eingeben des Papiers wurde eine andere erste Person genannt. Was vorher beantwortet war, zählt nicht; es wurde von der Sichtkontrolle an neu gefragt.</translation>
    </message>
    <message>
        <source>Another second person was named while the paper was typed in. What had been answered before does not count; it was asked again from the look.</source>
        <translation>Beim Eingeben des Papiers wurde eine andere zweite Person genannt. Was vorher beantwortet war, zählt nicht; es wurde von der Sichtkontrolle an neu gefragt.</translation>
    </message>
</context>
<context>
    <name>RenameWords</name>
    <message>
        <source>%1 has no person named “%2”. Look in “Set up” how the name is written there.</source>
        <translation>%1 hat keine Person mit dem Namen „%2“. In „Einrichten“ nachsehen, wie der Name dort geschrieben ist.</translation>
    </message>
    <message>
        <source>%1 has several persons named “%2”. Open it and say first whether they are one and the same, or give one of them another name.</source>
        <translation>%1 hat mehrere Personen mit dem Namen „%2“. Die Datei öffnen und zuerst sagen, ob sie ein und dieselbe sind, oder einer von ihnen einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>Somebody else in %1 is named “%2”. Choose other letters.</source>
        <translation>In %1 heißt schon jemand anderes „%2“. Andere Buchstaben wählen.</translation>
    </message>
    <message>
        <source>Nothing was written: in the new file nobody could tell any more what was replaced on request and what was changed. Look at these facts first.</source>
        <translation>Es wurde nichts geschrieben: in der neuen Datei könnte niemand mehr sagen, was auf Wunsch ersetzt und was geändert wurde. Zuerst diese Einträge ansehen.</translation>
    </message>
    <message>
        <source>The name still stands in %1 itself, in its dated copies, in the files of other laptops, in tables and on prints. A part of the name, or a nickname, was not looked for. Delete what is no longer needed.</source>
        <translation>Der Name steht noch in %1 selbst, in ihren datierten Kopien, in den Dateien anderer Laptops, in Tabellen und auf Ausdrucken. Nach einem Teil des Namens oder einem Spitznamen wurde nicht gesucht. Löschen, was nicht mehr gebraucht wird.</translation>
    </message>
    <message>
        <source>“%1” cannot stand for a name: write one or two capital letters, with a number behind them if you like, such as P 1.</source>
        <translation>„%1“ kann nicht für einen Namen stehen: einen oder zwei Großbuchstaben schreiben, wenn gewünscht mit einer Zahl dahinter, etwa P 1.</translation>
    </message>
    <message>
        <source>Made: %1. “%2” stands there for the name, and the person’s telephone number is gone. That the name was replaced, when and by whom, is told there from now on; every other fact is held against the chain as before.</source>
        <translation>Angelegt: %1. „%2“ steht dort für den Namen, und die Telefonnummer der Person ist fort. Dass der Name ersetzt wurde, wann und von wem, wird dort von nun an gesagt; jeder andere Eintrag wird wie bisher mit der Kette verglichen.</translation>
    </message>
    <message>
        <source>%1 whose words still hold the name or the telephone number, as they were typed: %2. Read them; nothing in them was changed.</source>
        <translation>%1 mit Worten, in denen der Name oder die Telefonnummer noch steht, wie getippt: %2. Diese lesen; geändert wurde daran nichts.</translation>
    </message>
</context>
<context>
    <name>ReportWords</name>
    <message>
        <source>%1 · %2</source>
        <comment>registration, type</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Printed %1 · %2</source>
        <comment>day, program and version</comment>
        <translation>Gedruckt %1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>printed when and by what, from which file</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Owner's measurements for assessment by a person entitled to decide. Not an aircraft record, inspection, release or statement of airworthiness. Manuals and directives prevail.</source>
        <translation>Messungen des Halters, zu beurteilen von einer zur Entscheidung berechtigten Person. Keine Flugzeugakte, keine Kontrolle, keine Freigabe und keine Aussage, dass das Flugzeug fliegen darf. Handbücher und Anweisungen gehen vor.</translation>
    </message>
    <message>
        <source>Rigband %1</source>
        <translation>Rigband %1</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>Geschrieben: %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written, so nothing was written. Look whether its folder is there and may be written to and the disk has room, then try again.</source>
        <translation>%1 lässt sich nicht schreiben, darum wurde nichts geschrieben. Nachsehen, ob der Ordner da ist, ob in ihn geschrieben werden darf und ob auf dem Datenträger Platz ist, dann noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>ReviewReportWords</name>
    <message>
        <source> · </source>
        <comment>between parts</comment>
        <translation> · </translation>
    </message>
    <message>
        <source>Fitting</source>
        <translation>Einbau</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Locked gap, mm</source>
        <translation>Spalt verriegelt, mm</translation>
    </message>
    <message>
        <source>Number of the rigging</source>
        <translation>Nummer des Aufrüstens</translation>
    </message>
    <message>
        <source>Last gap, mm; hatched: part-seated was seen there</source>
        <translation>Letzter Spalt, mm; schraffiert: dort halb eingerastet gesehen</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message numerus="yes">
        <source>%1, thin: from %n reading(s).</source>
        <translation>
            <numerusform>%1, dünn: aus %n Messung.</numerusform>
            <numerusform>%1, dünn: aus %n Messungen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, from %n reading(s), frozen.</source>
        <translation>
            <numerusform>%1, aus %n Messung, festgeschrieben.</numerusform>
            <numerusform>%1, aus %n Messungen, festgeschrieben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, from %n reading(s), not frozen.</source>
        <translation>
            <numerusform>%1, aus %n Messung, nicht festgeschrieben.</numerusform>
            <numerusform>%1, aus %n Messungen, nicht festgeschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mm.</source>
        <comment>scatter now and before</comment>
        <translation>%1 mm.</translation>
    </message>
    <message>
        <source>Chance of a reading outside: %1.</source>
        <translation>Wahrscheinlichkeit einer Messung außerhalb: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n rigging(s) since.</source>
        <translation>
            <numerusform>Seither %n-mal aufgerüstet.</numerusform>
            <numerusform>Seither %n-mal aufgerüstet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Outer edges %1, middle %2 mm, scatter %3 mm.</source>
        <translation>Äußere Ränder %1, Mitte %2 mm, Streuung %3 mm.</translation>
    </message>
    <message>
        <source>Frozen %1 by %2 and %3: later readings do not move it.</source>
        <translation>Festgeschrieben am %1 von %2 und %3: Spätere Messungen verschieben es nicht.</translation>
    </message>
    <message>
        <source>Not frozen: further confirmed readings still move it.</source>
        <translation>Nicht festgeschrieben: Weitere bestätigte Messungen verschieben es noch.</translation>
    </message>
    <message>
        <source>First band</source>
        <translation>Erstes Band</translation>
    </message>
    <message>
        <source>%1, middle %2 mm, from %3 readings of the first fitting.</source>
        <translation>%1, Mitte %2 mm, aus %3 Messungen des ersten Einbaus.</translation>
    </message>
    <message>
        <source>With the readings in doubt left in it would be %1, from %2 readings.</source>
        <translation>Mit den Messungen im Zweifel wäre es %1, aus %2 Messungen.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>None in the period.</source>
        <translation>Keine im Zeitraum.</translation>
    </message>
    <message>
        <source>%1 outside</source>
        <translation>%1 außerhalb</translation>
    </message>
    <message>
        <source>%1 near the edge</source>
        <translation>%1 nahe am Rand</translation>
    </message>
    <message>
        <source>%1 cannot tell</source>
        <translation>%1 nicht zu sagen</translation>
    </message>
    <message>
        <source>%1 inside</source>
        <translation>%1 im Band</translation>
    </message>
    <message>
        <source>%1 without a band to judge them</source>
        <translation>%1 ohne Band, das sie beurteilt</translation>
    </message>
    <message>
        <source>%1 in the period: %2.</source>
        <comment>readings, by verdict</comment>
        <translation>%1 im Zeitraum: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them with a gauge in doubt on that day.</source>
        <translation>
            <numerusform>%n davon mit einer Lehre, die an dem Tag im Zweifel war.</numerusform>
            <numerusform>%n davon mit einer Lehre, die an dem Tag im Zweifel war.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not read at %n rigging(s).</source>
        <translation>
            <numerusform>Beim Aufrüsten %n-mal nicht gemessen.</numerusform>
            <numerusform>Beim Aufrüsten %n-mal nicht gemessen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Without a band neither drift nor scatter nor a chance can be told.</source>
        <translation>Ohne Band ist weder Drift noch Streuung noch eine Wahrscheinlichkeit zu sagen.</translation>
    </message>
    <message>
        <source>The readings show no movement, which is not to say that nothing moved.</source>
        <translation>Die Messungen zeigen keine Bewegung; das heißt nicht, dass sich nichts bewegt hat.</translation>
    </message>
    <message>
        <source>Whether it moved cannot be told: %1.</source>
        <comment>why</comment>
        <translation>Ob sich etwas bewegt hat, ist nicht zu sagen: %1.</translation>
    </message>
    <message>
        <source>From rigging %1 on its readings gave an early sign of a movement; they do so no more.</source>
        <translation>Ab Aufrüsten %1 gaben seine Messungen ein frühes Anzeichen einer Bewegung; jetzt nicht mehr.</translation>
    </message>
    <message>
        <source>Since rigging %1 its readings give an early sign that the gap grows.</source>
        <translation>Seit Aufrüsten %1 geben seine Messungen ein frühes Anzeichen, dass der Spalt größer wird.</translation>
    </message>
    <message>
        <source>Since rigging %1 its readings give an early sign that the gap shrinks.</source>
        <translation>Seit Aufrüsten %1 geben seine Messungen ein frühes Anzeichen, dass der Spalt kleiner wird.</translation>
    </message>
    <message>
        <source>Its last readings show no early sign of a movement in this period. A slow drift shows late, and no sign is not to say that nothing moved.</source>
        <translation>Seine letzten Messungen zeigen in diesem Zeitraum kein frühes Anzeichen einer Bewegung. Eine langsame Drift zeigt sich spät, und kein Anzeichen heißt nicht, dass sich nichts bewegt hat.</translation>
    </message>
    <message>
        <source>Scatter</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Too few readings in this period to compare.</source>
        <translation>Zu wenige Messungen in diesem Zeitraum für einen Vergleich.</translation>
    </message>
    <message>
        <source>At the annual</source>
        <translation>Zur Jahresnachprüfung</translation>
    </message>
    <message numerus="yes">
        <source>It rests on %n more rigging(s), and on the gap going on as the readings say.</source>
        <translation>
            <numerusform>Das setzt voraus, dass noch %n-mal aufgerüstet wird und der Spalt weiter so verläuft, wie die Messungen sagen.</numerusform>
            <numerusform>Das setzt voraus, dass noch %n-mal aufgerüstet wird und der Spalt weiter so verläuft, wie die Messungen sagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>No chance can be given: %1.</source>
        <comment>why</comment>
        <translation>Keine Wahrscheinlichkeit zu nennen: %1.</translation>
    </message>
    <message>
        <source>Part-seated</source>
        <translation>Halb eingerastet</translation>
    </message>
    <message>
        <source>Done to it</source>
        <translation>Daran getan</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>Anzusehen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Near the edge, corrected, struck or left out</source>
        <translation>Nahe am Rand, berichtigt, gestrichen oder ausgelassen</translation>
    </message>
    <message>
        <source>The last %1 of %2; the others are in readings.csv.</source>
        <translation>Die letzten %1 von %2; die anderen stehen in readings.csv.</translation>
    </message>
    <message>
        <source>Why it is listed</source>
        <translation>Warum es hier steht</translation>
    </message>
    <message>
        <source>near the edge, below</source>
        <translation>nahe am Rand, unten</translation>
    </message>
    <message>
        <source>near the edge, above</source>
        <translation>nahe am Rand, oben</translation>
    </message>
    <message>
        <source>near the edge</source>
        <translation>nahe am Rand</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>struck: %1</source>
        <translation>gestrichen: %1</translation>
    </message>
    <message>
        <source>left out of the band</source>
        <translation>aus dem Band ausgelassen</translation>
    </message>
    <message>
        <source>left out of the band: %1</source>
        <translation>aus dem Band ausgelassen: %1</translation>
    </message>
    <message>
        <source>%1, with %2</source>
        <comment>person, gauge</comment>
        <translation>%1, mit %2</translation>
    </message>
    <message>
        <source>Is it the coupling, the leaf set or the person?</source>
        <translation>Liegt es am Anschluss, am Blattsatz oder an der Person?</translation>
    </message>
    <message>
        <source>riggings %1 to %2</source>
        <translation>Aufrüsten %1 bis %2</translation>
    </message>
    <message>
        <source>rigging %1</source>
        <translation>Aufrüsten %1</translation>
    </message>
    <message>
        <source>between riggings</source>
        <translation>zwischen zwei Aufrüstvorgängen</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), %1</source>
        <translation>
            <numerusform>%n Messung, %1</numerusform>
            <numerusform>%n Messungen, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), from %1 to %2</source>
        <translation>
            <numerusform>%n Messung, von %1 bis %2</numerusform>
            <numerusform>%n Messungen, von %1 bis %2</numerusform>
        </translation>
    </message>
    <message>
        <source>outside, below %1</source>
        <comment>outer edges of a band</comment>
        <translation>außerhalb, unter %1</translation>
    </message>
    <message>
        <source>outside, above %1</source>
        <comment>outer edges of a band</comment>
        <translation>außerhalb, über %1</translation>
    </message>
    <message>
        <source>outside %1</source>
        <comment>outer edges of a band</comment>
        <translation>außerhalb %1</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Gemessen von %1.</translation>
    </message>
    <message>
        <source>Read by %1 with %2.</source>
        <translation>Gemessen von %1 mit %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>days, what came of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing was shown then: it was entered afterwards.</source>
        <translation>Damals wurde nichts angezeigt: Es wurde nachträglich eingegeben.</translation>
    </message>
    <message>
        <source>Shown then: %1.</source>
        <translation>Damals angezeigt: %1.</translation>
    </message>
    <message>
        <source>Corrected: %1.</source>
        <translation>Berichtigt: %1.</translation>
    </message>
    <message>
        <source>Corrected: %1, “%2.”</source>
        <comment>reading, reason</comment>
        <translation>Berichtigt: %1, „%2.“</translation>
    </message>
    <message>
        <source>Still open: nobody has said what was found.</source>
        <translation>Noch offen: Niemand hat gesagt, was gefunden wurde.</translation>
    </message>
    <message>
        <source>Nothing was shown at the time of any of them: they were entered afterwards.</source>
        <translation>Bei keiner wurde damals etwas angezeigt: Sie wurden nachträglich eingegeben.</translation>
    </message>
    <message>
        <source>No question was asked of any of them, and nothing is noted of what was found.</source>
        <translation>Zu keiner wurde eine Frage gestellt, und es ist nicht notiert, was gefunden wurde.</translation>
    </message>
    <message>
        <source>No question was asked, and nothing is noted of what was found.</source>
        <translation>Es wurde keine Frage gestellt, und es ist nicht notiert, was gefunden wurde.</translation>
    </message>
    <message>
        <source>Read afterwards, on the same rigging: %1.</source>
        <translation>Danach gemessen, beim selben Aufrüsten: %1.</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <comment>interval, person</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Notiert</translation>
    </message>
    <message>
        <source>Noted: “%1.”</source>
        <translation>Notiert: „%1.“</translation>
    </message>
    <message>
        <source>%1: “%2.”</source>
        <comment>gauge, what is noted of it</comment>
        <translation>%1: „%2.“</translation>
    </message>
    <message>
        <source>Engineer’s report on the control couplings</source>
        <translation>Bericht für den Prüfer über die Ruderanschlüsse</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>days, how, found</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Fittings that began, and what changed</source>
        <translation>Einbauten, die begannen, und was sich änderte</translation>
    </message>
    <message>
        <source>Began</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Band before</source>
        <translation>Band vorher</translation>
    </message>
    <message>
        <source>Band after</source>
        <translation>Band nachher</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keines</translation>
    </message>
    <message>
        <source>Bands that readings in doubt were part of</source>
        <translation>Bänder, zu denen Messungen im Zweifel gehörten</translation>
    </message>
    <message>
        <source>Without them, as judged</source>
        <translation>Ohne sie, wie beurteilt</translation>
    </message>
    <message>
        <source>With them</source>
        <translation>Mit ihnen</translation>
    </message>
    <message>
        <source>What was done to the airframe</source>
        <translation>Was am Flugzeug getan wurde</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>whole airframe</source>
        <translation>ganzes Flugzeug</translation>
    </message>
    <message>
        <source>Engineer’s report, %1</source>
        <comment>days</comment>
        <translation>Bericht für den Prüfer, %1</translation>
    </message>
    <message>
        <source>%1-%2-review.pdf</source>
        <comment>registration, last day; a file's name</comment>
        <translation>%1-%2-bericht.pdf</translation>
    </message>
    <message>
        <source>What the locked gap of each coupling read in this period, against that coupling’s own past. A band is that past, never a limit, and a gap is one sign only. Manuals, local rules and persons licensed to decide go before anything printed here.</source>
        <translation>Was am Spalt jedes verriegelten Anschlusses in diesem Zeitraum gemessen wurde, gegen die eigene Vergangenheit dieses Anschlusses. Ein Band ist diese Vergangenheit, nie ein Grenzwert, und ein Spalt ist nur ein Anzeichen. Handbücher, örtliche Regeln und zur Entscheidung berechtigte Personen gehen allem vor, was hier gedruckt ist.</translation>
    </message>
    <message>
        <source>Not entered: %1.</source>
        <translation>Nicht eingetragen: %1.</translation>
    </message>
    <message>
        <source>Airframe</source>
        <translation>Flugzeug</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Werknummer</translation>
    </message>
    <message>
        <source>Jurisdiction</source>
        <translation>Geltendes Recht</translation>
    </message>
    <message>
        <source>Manuals</source>
        <translation>Handbücher</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>Annual</source>
        <translation>Jahresnachprüfung</translation>
    </message>
    <message>
        <source>Riggings</source>
        <translation>Aufrüstvorgänge</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Gemessen von</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>%1; about %n more rigging(s) until then at the pace of the year before</source>
        <comment>day, how many</comment>
        <translation>
            <numerusform>%1; bis dahin im Takt des Jahres davor noch etwa %n-mal aufrüsten</numerusform>
            <numerusform>%1; bis dahin im Takt des Jahres davor noch etwa %n-mal aufrüsten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in the period; the last one has number %2</source>
        <translation>%1 im Zeitraum; der letzte hat die Nummer %2</translation>
    </message>
    <message>
        <source>Method version %1; every verdict here is worked out anew by it.</source>
        <translation>Verfahren Version %1; jedes Urteil hier ist damit neu berechnet.</translation>
    </message>
    <message>
        <source>%1 at riggings, those that stand</source>
        <translation>%1 beim Aufrüsten, soweit sie gelten</translation>
    </message>
    <message>
        <source>%1 at riggings, those that stand; %2 of them with a gauge in doubt</source>
        <translation>%1 beim Aufrüsten, soweit sie gelten; %2 davon mit einer Lehre im Zweifel</translation>
    </message>
    <message>
        <source>No gap was read at a rigging in this period. Nothing can be said of any coupling by its gap.</source>
        <translation>In diesem Zeitraum wurde bei keinem Aufrüsten ein Spalt gemessen. Über keinen Anschluss lässt sich anhand seines Spalts etwas sagen.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name, how many readings</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>What stands out first</source>
        <translation>Was zuerst auffällt</translation>
    </message>
    <message>
        <source>In the order to look at, with the page where the details stand. Tick what was looked at.</source>
        <translation>In der Reihenfolge zum Ansehen, mit der Seite, auf der die Einzelheiten stehen. Abhaken, was angesehen wurde.</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Coupling or matter</source>
        <translation>Anschluss oder Sache</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Was auffällt</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source> · </source>
        <comment>between signs</comment>
        <translation> · </translation>
    </message>
    <message numerus="yes">
        <source>nothing in %n reading(s); one sign only</source>
        <translation>
            <numerusform>nichts in %n Messung; nur ein Anzeichen</numerusform>
            <numerusform>nichts in %n Messungen; nur ein Anzeichen</numerusform>
        </translation>
    </message>
    <message>
        <source>no open question</source>
        <translation>keine offene Frage</translation>
    </message>
    <message numerus="yes">
        <source>moved otherwise than expected, or not at all: %n time(s), last on %1 (%2)</source>
        <translation>
            <numerusform>anders als erwartet oder gar nicht bewegt: %n-mal, zuletzt am %1 (%2)</numerusform>
            <numerusform>anders als erwartet oder gar nicht bewegt: %n-mal, zuletzt am %1 (%2)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>“cannot see” answered: %n time(s), last on %1 (%2)</source>
        <translation>
            <numerusform>„nicht zu sehen“ geantwortet: %n-mal, zuletzt am %1 (%2)</numerusform>
            <numerusform>„nicht zu sehen“ geantwortet: %n-mal, zuletzt am %1 (%2)</numerusform>
        </translation>
    </message>
    <message>
        <source>Open question</source>
        <translation>Offene Frage</translation>
    </message>
    <message>
        <source>All couplings</source>
        <translation>Alle Anschlüsse</translation>
    </message>
    <message numerus="yes">
        <source>read high, or low, together on %n day(s)</source>
        <translation>
            <numerusform>an %n Tag zugleich hoch oder zugleich tief gemessen</numerusform>
            <numerusform>an %n Tagen zugleich hoch oder zugleich tief gemessen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s) what was read by or with this one lay high, or low, on all couplings together</source>
        <translation>
            <numerusform>an %n Tag lag an allen Anschlüssen zugleich hoch oder tief, was von dieser Person oder mit dieser Lehre gemessen wurde</numerusform>
            <numerusform>an %n Tagen lag an allen Anschlüssen zugleich hoch oder tief, was von dieser Person oder mit dieser Lehre gemessen wurde</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo es steht</translation>
    </message>
    <message>
        <source>These parts are left out because the period has nothing for them: %1. That says no more than that.</source>
        <translation>Diese Teile fehlen, weil der Zeitraum dazu nichts enthält: %1. Mehr sagt das nicht.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between parts of a report</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>Open questions</source>
        <translation>Offene Fragen</translation>
    </message>
    <message>
        <source>Nobody has said yet, by %1, what was found here.</source>
        <translation>Bis %1 hat noch niemand gesagt, was hier gefunden wurde.</translation>
    </message>
    <message>
        <source>Questions asked, and how they were closed</source>
        <translation>Gestellte Fragen, und wie sie geschlossen wurden</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Gestellt</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Found and done</source>
        <translation>Gefunden und getan</translation>
    </message>
    <message>
        <source>Every reading outside its band or found part-seated</source>
        <translation>Jede Messung außerhalb ihres Bandes oder an halb eingerasteter Verbindung</translation>
    </message>
    <message>
        <source>Those that follow on one side share a row. What was corrected or struck has a line through it.</source>
        <translation>Aufeinanderfolgende auf derselben Seite stehen in einer Zeile. Was berichtigt oder gestrichen wurde, ist durchgestrichen.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>What was shown, and what came of it</source>
        <translation>Was angezeigt wurde, und was daraus wurde</translation>
    </message>
    <message>
        <source>Each coupling</source>
        <translation>Jeder Anschluss</translation>
    </message>
    <message>
        <source>Coloured: the coupling’s own band; grey: outside this period. The chance at the annual holds only if the gap goes on as the readings say.</source>
        <translation>Farbig: das eigene Band des Anschlusses; grau: außerhalb dieses Zeitraums. Die Wahrscheinlichkeit zur Jahresnachprüfung gilt nur, wenn der Spalt weiter so verläuft, wie die Messungen sagen.</translation>
    </message>
    <message>
        <source>One bar for each rigging: the middle of all couplings’ readings, each against its own band, in that band’s scatters. When all move together on one day, check the leaf set, read again with another person, and look at each joint: stiff grease leaves plungers short.</source>
        <translation>Ein Balken je Aufrüsten: die Mitte der Messungen aller Anschlüsse, jede gegen ihr eigenes Band, in Streuungen dieses Bandes. Bewegen sich an einem Tag alle zusammen: den Blattsatz prüfen, mit einer anderen Person noch einmal messen und jede Verbindung ansehen. Steifes Fett lässt Riegel nicht ganz einrasten.</translation>
    </message>
    <message>
        <source>Who measures like whom</source>
        <translation>Wer misst wie wer</translation>
    </message>
    <message>
        <source>Each one’s readings against the mean of all, the couplings and the days allowed for; under ten readings nothing is said. The spread is that of one’s own readings about what the couplings do.</source>
        <translation>Die Messungen jeder Person und jeder Lehre gegen das Mittel aller, Anschlüsse und Tage berücksichtigt; unter zehn Messungen wird nichts gesagt. Die Schwankung ist die der eigenen Messungen um das, was die Anschlüsse tun.</translation>
    </message>
    <message>
        <source>Leaf set or gauge</source>
        <translation>Blattsatz oder Lehre</translation>
    </message>
    <message>
        <source>Looks and pulls</source>
        <translation>Sichtkontrollen und Zugproben</translation>
    </message>
    <message>
        <source>What was stated at the riggings of the period. Each answer stands in looks.csv beside this report. A column or coupling of which nothing was stated is left out.</source>
        <translation>Was beim Aufrüsten im Zeitraum angegeben wurde. Jede Antwort steht in looks.csv neben diesem Bericht. Eine Spalte oder ein Anschluss ohne Angabe fehlt.</translation>
    </message>
    <message>
        <source>First person complete</source>
        <translation>Erste Person vollständig</translation>
    </message>
    <message>
        <source>Second person complete</source>
        <translation>Zweite Person vollständig</translation>
    </message>
    <message>
        <source>Felt, not seen</source>
        <translation>Gefühlt, nicht gesehen</translation>
    </message>
    <message>
        <source>“Cannot see”</source>
        <translation>„Nicht zu sehen“</translation>
    </message>
    <message>
        <source>“No”</source>
        <translation>„Nein“</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>Unterbrochen</translation>
    </message>
    <message>
        <source>Control checks and deflections</source>
        <translation>Ruderproben und Ausschläge</translation>
    </message>
    <message>
        <source>A part-seated joint can go unnoticed in a control check. Each answer stands in control_checks.csv, each figure in deflections.csv.</source>
        <translation>Eine halb eingerastete Verbindung kann in der Ruderprobe unbemerkt bleiben. Jede Antwort steht in control_checks.csv, jeder Wert in deflections.csv.</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Ruder</translation>
    </message>
    <message>
        <source>Check complete</source>
        <translation>Probe vollständig</translation>
    </message>
    <message>
        <source>Last measured</source>
        <translation>Zuletzt gemessen</translation>
    </message>
    <message>
        <source>up %1</source>
        <translation>nach oben %1</translation>
    </message>
    <message>
        <source>down %1</source>
        <translation>nach unten %1</translation>
    </message>
    <message>
        <source>free play %1</source>
        <translation>Spiel %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>figures, day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Leaf sets and gauges, their checks and doubts</source>
        <translation>Blattsätze und Lehren, ihre Prüfungen und Zweifel</translation>
    </message>
    <message>
        <source>Checks and doubts</source>
        <translation>Prüfungen und Zweifel</translation>
    </message>
    <message>
        <source>Out of use, and so without a section here; what was read on them stands in readings.csv: %1.</source>
        <translation>Außer Gebrauch und daher hier ohne Abschnitt; was daran gemessen wurde, steht in readings.csv: %1.</translation>
    </message>
    <message>
        <source>Riggings, and what is too little to say</source>
        <translation>Aufrüstvorgänge, und wo zu wenig vorliegt, um etwas zu sagen</translation>
    </message>
    <message>
        <source>How the figures are worked out</source>
        <translation>Wie die Zahlen berechnet sind</translation>
    </message>
    <message>
        <source>fewer than %1</source>
        <comment>readings to be expected</comment>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>readings to be expected</comment>
        <translation>etwa %1</translation>
    </message>
    <message numerus="yes">
        <source>Of %n reading(s) judged in this period, to be expected with nothing changed: near the edge %1, outside %2.</source>
        <translation>
            <numerusform>Von %n in diesem Zeitraum beurteilten Messung zu erwarten, wenn sich nichts geändert hat: nahe am Rand %1, außerhalb %2.</numerusform>
            <numerusform>Von %n in diesem Zeitraum beurteilten Messungen zu erwarten, wenn sich nichts geändert hat: nahe am Rand %1, außerhalb %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With %n coupling(s) read at each rigging, that is an outside reading in about one rigging of %1.</source>
        <translation>
            <numerusform>Bei %n Anschluss, der bei jedem Aufrüsten gemessen wird, ist das eine Messung außerhalb bei etwa jedem %1. Aufrüsten.</numerusform>
            <numerusform>Bei %n Anschlüssen, die bei jedem Aufrüsten gemessen werden, ist das eine Messung außerhalb bei etwa jedem %1. Aufrüsten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Every reading and every figure of this report stands in tables, in the folder that was saved beside it.</source>
        <translation>Jede Messung und jede Zahl dieses Berichts steht in Tabellen, in dem Ordner, der daneben gespeichert wurde.</translation>
    </message>
    <message>
        <source>Printed without its appendix: readings near the edge, corrected or struck stand in readings.csv, looks and pulls in looks.csv, control checks and deflections in control_checks.csv and deflections.csv, in the folder that was saved beside it.</source>
        <translation>Ohne Anhang gedruckt: Messungen nahe am Rand, berichtigte oder gestrichene stehen in readings.csv, Sichtkontrollen und Zugproben in looks.csv, Ruderproben und Ausschläge in control_checks.csv und deflections.csv, in dem Ordner, der daneben gespeichert wurde.</translation>
    </message>
    <message>
        <source>%1 was written, but not all of its tables: %2 cannot be written. Look whether the folder may be written to and the disk has room, then try again.</source>
        <translation>%1 wurde geschrieben, aber nicht alle Tabellen dazu: %2 lässt sich nicht schreiben. Nachsehen, ob in den Ordner geschrieben werden darf und auf dem Datenträger Platz ist, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Findings of the person entitled to decide. Left blank by the program.</source>
        <translation>Befunde der zur Entscheidung berechtigten Person. Vom Programm frei gelassen.</translation>
    </message>
    <message>
        <source>Name, licence or authority, signature</source>
        <translation>Name, Lizenz oder Befugnis, Unterschrift</translation>
    </message>
    <message>
        <source>Place and date</source>
        <translation>Ort und Datum</translation>
    </message>
    <message>
        <source>Also read on the same rigging, before or after it: %1. The table did not tell when.</source>
        <translation>Beim selben Aufrüsten auch gemessen, vorher oder nachher: %1. Die Tabelle sagte nicht, wann.</translation>
    </message>
    <message>
        <source>Outside: %1.</source>
        <comment>how many of them on which days</comment>
        <translation>Außerhalb: %1.</translation>
    </message>
    <message>
        <source>Readings are intervals between the leaf that entered and the one that refused; every figure uses them as intervals. The band is predictive: where the next locked reading of this fitting falls, from confirmed baseline readings alone; where it is frozen, two persons have stated it.
Of the following the first that holds is the verdict. No band yet: fewer than five confirmed readings. Outside: the whole reading lies beyond one edge of the outer band (99.73 %). Cannot tell: its gauge was in doubt, or the gap is no witness on this coupling. Near the edge: the whole reading lies beyond one edge of the inner band (95 %), also where it reaches over the outer edge. Cannot tell: it reaches beyond the outer band, unless it holds the middle of the band and is no wider than the median of the confirmed readings. Inside: every other reading, also one that reaches over an edge of the inner band. A coupling stands as “cannot tell”, too, while a part of its joint could not be seen, unless it is outside. Both contents hold on average over couplings; a band from few readings may hold noticeably more or less.
Movement: one model of all readings of the airframe, in which each coupling stays, makes a step or drifts, and persons, gauges and days have offsets of their own; a movement is told when the chance that the coupling stayed is below 1 in 1000, or below 1 in 20 with an early sign (an EWMA of scores beyond its threshold). Scatter: the last ten readings about the path against all before them.</source>
        <translation>Messungen sind Intervalle zwischen dem Blatt, das hineinging, und dem, das nicht hineinging; jede Zahl verwendet sie als Intervalle. Das Band sagt voraus, wohin die nächste Messung dieses Einbaus in verriegeltem Zustand fällt, allein aus bestätigten Messungen der Grundreihe; wo es festgeschrieben ist, haben es zwei Personen erklärt.
Von den folgenden ist das erste, das zutrifft, das Urteil. Noch kein Band: weniger als fünf bestätigte Messungen. Außerhalb: Die ganze Messung liegt jenseits eines Randes des äußeren Bandes (99,73 %). Nicht zu sagen: Ihre Lehre war im Zweifel, oder der Spalt ist an diesem Anschluss kein Zeuge. Nahe am Rand: Die ganze Messung liegt jenseits eines Randes des inneren Bandes (95 %), auch wo sie über den äußeren Rand reicht. Nicht zu sagen: Sie reicht über das äußere Band hinaus, außer wenn sie die Mitte des Bandes enthält und nicht breiter ist als der Median der bestätigten Messungen. Im Band: jede andere Messung, auch eine, die über einen Rand des inneren Bandes reicht. Ein Anschluss steht auch dann als „nicht zu sagen“, wenn ein Teil seiner Verbindung nicht zu sehen war, außer er ist außerhalb. Beide Anteile gelten im Mittel über Anschlüsse; ein Band aus wenigen Messungen kann merklich mehr oder weniger enthalten.
Bewegung: ein Modell aller Messungen des Flugzeugs, in dem jeder Anschluss bleibt, einen Sprung macht oder driftet und Personen, Lehren und Tage ihren eigenen Versatz haben; eine Bewegung wird gemeldet, wenn die Wahrscheinlichkeit, dass der Anschluss blieb, unter 1 von 1000 liegt, oder unter 1 von 20 mit einem frühen Anzeichen (ein EWMA von Kennwerten jenseits seiner Schwelle). Streuung: die letzten zehn Messungen um den Verlauf gegen alle davor.</translation>
    </message>
    <message>
        <source>%1; the pace of riggings is not known yet</source>
        <comment>day</comment>
        <translation>%1; wie oft aufgerüstet wird, ist noch nicht bekannt</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>Before the annual</source>
        <translation>Vor der Nachprüfung</translation>
    </message>
    <message>
        <source>Before the annual that was due on %1</source>
        <translation>Vor der Jahresnachprüfung, die am %1 fällig war</translation>
    </message>
    <message>
        <source>Before the annual of %1</source>
        <translation>Vor der Jahresnachprüfung am %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Since the last annual: %1 to %2</source>
        <comment>days</comment>
        <translation>Seit der letzten Jahresnachprüfung: %1 bis %2</translation>
    </message>
    <message>
        <source>The whole file: %1 to %2</source>
        <comment>days</comment>
        <translation>Die ganze Datei: %1 bis %2</translation>
    </message>
    <message>
        <source>Annual to annual: %1 to %2</source>
        <comment>days</comment>
        <translation>Zwischen zwei Jahresnachprüfungen: %1 bis %2</translation>
    </message>
    <message>
        <source>Up to the first annual: %1 to %2</source>
        <comment>days</comment>
        <translation>Bis zur ersten Jahresnachprüfung: %1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>In these days: %Ln rigging(s).</source>
        <translation>
            <numerusform>In diesen Tagen: %Ln-mal aufgerüstet.</numerusform>
            <numerusform>In diesen Tagen: %Ln-mal aufgerüstet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Since the last annual: %Ln rigging(s).</source>
        <translation>
            <numerusform>Seit der letzten Jahresnachprüfung: %Ln-mal aufgerüstet.</numerusform>
            <numerusform>Seit der letzten Jahresnachprüfung: %Ln-mal aufgerüstet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From annual to annual: %Ln rigging(s).</source>
        <translation>
            <numerusform>Zwischen zwei Jahresnachprüfungen: %Ln-mal aufgerüstet.</numerusform>
            <numerusform>Zwischen zwei Jahresnachprüfungen: %Ln-mal aufgerüstet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In the whole file: %Ln rigging(s).</source>
        <translation>
            <numerusform>In der ganzen Datei: %Ln-mal aufgerüstet.</numerusform>
            <numerusform>In der ganzen Datei: %Ln-mal aufgerüstet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to the first annual: %Ln rigging(s).</source>
        <translation>
            <numerusform>Bis zur ersten Jahresnachprüfung: %Ln-mal aufgerüstet.</numerusform>
            <numerusform>Bis zur ersten Jahresnachprüfung: %Ln-mal aufgerüstet.</numerusform>
        </translation>
    </message>
    <message>
        <source>What the first person found is hidden here: %1. The second person works without seeing it. It is shown when they have kept a reading of their own, or have looked and pulled without one.</source>
        <comment>couplings</comment>
        <translation>Was die erste Person gefunden hat, ist hier verdeckt: %1. Die zweite Person arbeitet, ohne es zu sehen. Es wird gezeigt, wenn sie eine eigene Messung festgehalten hat oder ohne Messung Sichtkontrolle und Zugprobe gemacht hat.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between couplings</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>There is no reading.</source>
        <translation>Es gibt keine Messung.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s).</source>
        <translation>
            <numerusform>%Ln Messung.</numerusform>
            <numerusform>%Ln Messungen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Read by %n person(s).</source>
        <translation>
            <numerusform>Gemessen von %n Person.</numerusform>
            <numerusform>Gemessen von %n Personen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Read with %n leaf set(s).</source>
        <translation>
            <numerusform>Gemessen mit %n Blattsatz.</numerusform>
            <numerusform>Gemessen mit %n Blattsätzen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Read with %n gauge(s).</source>
        <translation>
            <numerusform>Gemessen mit %n Lehre.</numerusform>
            <numerusform>Gemessen mit %n Lehren.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not read with in this period.</source>
        <translation>In diesem Zeitraum nicht damit gemessen.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) in this period.</source>
        <translation>
            <numerusform>%Ln Messung in diesem Zeitraum.</numerusform>
            <numerusform>%Ln Messungen in diesem Zeitraum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) in this period, %1 of them in doubt: those do not count for band, drift and scatter.</source>
        <translation>
            <numerusform>%Ln Messung in diesem Zeitraum, davon %1 im Zweifel: Solche zählen nicht für Band, Drift und Streuung.</numerusform>
            <numerusform>%Ln Messungen in diesem Zeitraum, davon %1 im Zweifel: Solche zählen nicht für Band, Drift und Streuung.</numerusform>
        </translation>
    </message>
    <message>
        <source>No check of it is noted.</source>
        <translation>Es ist keine Prüfung vermerkt.</translation>
    </message>
    <message>
        <source>Not checked in this period; last on %1: %2</source>
        <comment>day, what was found</comment>
        <translation>In diesem Zeitraum nicht geprüft; zuletzt am %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n check(s), the last on %1: %2</source>
        <comment>day, what was found</comment>
        <translation>
            <numerusform>%n Prüfung, die letzte am %1: %2</numerusform>
            <numerusform>%n Prüfungen, die letzte am %1: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>The check of %1 put it in doubt from %2 on: %3</source>
        <translation>Durch die Prüfung vom %1 ab dem %2 im Zweifel: %3</translation>
    </message>
    <message>
        <source>In doubt from %1 on, until a later check finds it usable.</source>
        <translation>Ab dem %1 im Zweifel, bis eine spätere Prüfung zeigt, dass die Lehre brauchbar ist.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keines</translation>
    </message>
    <message>
        <source>%1, %2: new fitting.</source>
        <comment>day, coupling</comment>
        <translation>%1, %2: neuer Einbau.</translation>
    </message>
    <message>
        <source>%1, %2: new fitting, %3.</source>
        <comment>day, coupling, reason</comment>
        <translation>%1, %2: neuer Einbau, %3.</translation>
    </message>
    <message>
        <source>Its band: %1.</source>
        <translation>Sein Band: %1.</translation>
    </message>
    <message>
        <source>Band before: %1.</source>
        <translation>Band vorher: %1.</translation>
    </message>
    <message>
        <source>Band after: %1.</source>
        <translation>Band nachher: %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day, what was done</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>day, coupling, what was done</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>No new fitting, and nothing noted as done.</source>
        <translation>Kein neuer Einbau, und nichts als getan vermerkt.</translation>
    </message>
    <message>
        <source>%1 of %2 riggings without a reading</source>
        <translation>%1 von %2 Mal ohne Messung aufgerüstet</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>coupling, what is missing</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Every coupling with a gap has a band and was read at every rigging.</source>
        <translation>Jeder Anschluss mit einem Spalt hat ein Band und wurde bei jedem Aufrüsten gemessen.</translation>
    </message>
    <message>
        <source>Every coupling has a band and was read at every rigging.</source>
        <translation>Jeder Anschluss hat ein Band und wurde bei jedem Aufrüsten gemessen.</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n week(s))</source>
        <comment>day of the rigging after a layoff</comment>
        <translation>
            <numerusform>%1 (%n Woche)</numerusform>
            <numerusform>%1 (%n Wochen)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>First rigging of the year: %1, after %n week(s).</source>
        <translation>
            <numerusform>Erstes Aufrüsten des Jahres: %1, nach %n Woche.</numerusform>
            <numerusform>Erstes Aufrüsten des Jahres: %1, nach %n Wochen.</numerusform>
        </translation>
    </message>
    <message>
        <source>First riggings after a layoff, the longest first: %1.</source>
        <translation>Erstes Aufrüsten nach einer Pause, die längste zuerst: %1.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between riggings</comment>
        <translation>; </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) written on paper and typed in afterwards: %1.</source>
        <comment>days</comment>
        <translation>
            <numerusform>%n Protokoll auf Papier geschrieben und später eingegeben: %1.</numerusform>
            <numerusform>%n Protokolle auf Papier geschrieben und später eingegeben: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>No rigging in this period.</source>
        <translation>In diesem Zeitraum nicht aufgerüstet.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln rigging(s) in this period; the last has number %1.</source>
        <translation>
            <numerusform>In diesem Zeitraum %Ln-mal aufgerüstet; das letzte hat die Nummer %1.</numerusform>
            <numerusform>In diesem Zeitraum %Ln-mal aufgerüstet; das letzte hat die Nummer %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) closed with something not done.</source>
        <translation>
            <numerusform>%n Protokoll abgeschlossen, in dem etwas nicht getan war.</numerusform>
            <numerusform>%n Protokolle abgeschlossen, in denen etwas nicht getan war.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) not closed.</source>
        <translation>
            <numerusform>%n Protokoll nicht abgeschlossen.</numerusform>
            <numerusform>%n Protokolle nicht abgeschlossen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) abandoned and begun anew, not counted.</source>
        <translation>
            <numerusform>%n Protokoll aufgegeben und neu begonnen, nicht gezählt.</numerusform>
            <numerusform>%n Protokolle aufgegeben und neu begonnen, nicht gezählt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) gone through again without being taken apart, not counted.</source>
        <translation>
            <numerusform>%n-mal ohne Abrüsten noch einmal durchgegangen, nicht gezählt.</numerusform>
            <numerusform>%n-mal ohne Abrüsten noch einmal durchgegangen, nicht gezählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>About %1 more until the annual, at the pace of the last year.</source>
        <translation>Noch etwa %1-mal aufrüsten bis zur Jahresnachprüfung, im Takt des letzten Jahres.</translation>
    </message>
    <message numerus="yes">
        <source>That was on every coupling, on %n day(s): %1.</source>
        <translation>
            <numerusform>Das war an jedem Anschluss so, an %n Tag: %1.</numerusform>
            <numerusform>Das war an jedem Anschluss so, an %n Tagen: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>That was on nearly every coupling, on %n day(s): %1.</source>
        <translation>
            <numerusform>Das war an fast jedem Anschluss so, an %n Tag: %1.</numerusform>
            <numerusform>Das war an fast jedem Anschluss so, an %n Tagen: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>All read high on one day and low on another, and neither a gauge nor a person explains it.</source>
        <translation>An einem Tag lagen alle Messungen höher, an einem anderen tiefer, und weder eine Lehre noch eine Person erklärt es.</translation>
    </message>
    <message>
        <source>All read %1 mm high, and neither a gauge nor a person explains it.</source>
        <translation>Alle Messungen lagen um %1 mm höher, und weder eine Lehre noch eine Person erklärt es.</translation>
    </message>
    <message>
        <source>All read %1 mm low, and neither a gauge nor a person explains it.</source>
        <translation>Alle Messungen lagen um %1 mm tiefer, und weder eine Lehre noch eine Person erklärt es.</translation>
    </message>
    <message>
        <source>%1 read high on one day and low on another.</source>
        <comment>gauge or person</comment>
        <translation>%1 maß an einem Tag höher, an einem anderen tiefer.</translation>
    </message>
    <message>
        <source>The gauge is in doubt from %1 on: these readings do not count for band, drift and scatter.</source>
        <translation>Die Lehre ist ab dem %1 im Zweifel: Diese Messungen zählen nicht für Band, Drift und Streuung.</translation>
    </message>
    <message>
        <source>Look at each joint all the same.</source>
        <translation>Trotzdem jede Verbindung ansehen.</translation>
    </message>
    <message>
        <source>Part of it may be that %1 usually reads a little high or low.</source>
        <translation>Ein Teil davon kann daran liegen, dass %1 üblicherweise etwas höher oder tiefer misst.</translation>
    </message>
    <message>
        <source>No rigging in this period has a reading that can be held against a band.</source>
        <translation>Kein Aufrüsten in diesem Zeitraum hat eine Messung, die sich mit einem Band vergleichen lässt.</translation>
    </message>
    <message>
        <source>On no rigging day did all couplings read high, or low, together.</source>
        <translation>An keinem Tag lagen beim Aufrüsten alle Anschlüsse gemeinsam höher oder tiefer.</translation>
    </message>
    <message>
        <source>too few to tell</source>
        <translation>zu wenige Messungen</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message numerus="yes">
        <source>%1: %Ln reading(s).</source>
        <comment>who or what</comment>
        <translation>
            <numerusform>%1: %Ln Messung.</numerusform>
            <numerusform>%1: %Ln Messungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody read anything here that can be held against a band.</source>
        <translation>Niemand hat hier etwas gemessen, das sich mit einem Band vergleichen lässt.</translation>
    </message>
    <message>
        <source>One person read everything: there is nobody to compare with.</source>
        <translation>Eine Person hat alles gemessen: Es gibt niemanden zum Vergleich.</translation>
    </message>
    <message>
        <source>Who reads high or low cannot be told.</source>
        <translation>Wer höher oder tiefer misst, ist nicht zu sagen.</translation>
    </message>
    <message>
        <source>Nobody reads clearly higher or lower than the others.</source>
        <translation>Niemand misst deutlich höher oder tiefer als die anderen.</translation>
    </message>
    <message>
        <source>Measure together once before the next rigging.</source>
        <translation>Vor dem nächsten Aufrüsten einmal gemeinsam messen.</translation>
    </message>
    <message>
        <source>Everything was read with one gauge: there is none to compare with.</source>
        <translation>Alles wurde mit einer Lehre gemessen: Es gibt keine zum Vergleich.</translation>
    </message>
    <message>
        <source>Which gauge reads high or low cannot be told.</source>
        <translation>Welche Lehre höher oder tiefer misst, ist nicht zu sagen.</translation>
    </message>
    <message>
        <source>No gauge reads clearly higher or lower than the others.</source>
        <translation>Keine Lehre misst deutlich höher oder tiefer als die anderen.</translation>
    </message>
    <message>
        <source>Check the set against a micrometer.</source>
        <translation>Den Satz mit einer Mikrometerschraube prüfen.</translation>
    </message>
    <message>
        <source>Each person kept to one gauge, so a person cannot be told from a gauge.</source>
        <translation>Jede Person blieb bei einer Lehre, darum lässt sich die Person nicht von der Lehre unterscheiden.</translation>
    </message>
    <message>
        <source>Persons, gauges and days cannot be told apart.</source>
        <translation>Personen, Lehren und Tage lassen sich nicht unterscheiden.</translation>
    </message>
    <message>
        <source>one question open: %1</source>
        <translation>eine Frage offen: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) open</source>
        <translation>
            <numerusform>%n Frage offen</numerusform>
            <numerusform>%n Fragen offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>scatter %1 times what it was before, in the last %n reading(s)</source>
        <translation>
            <numerusform>Streuung %1-mal so groß wie vorher, in der letzten %n Messung</numerusform>
            <numerusform>Streuung %1-mal so groß wie vorher, in den letzten %n Messungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside its band, not wholly so once the usual offset of the person or gauge is taken off</source>
        <translation>
            <numerusform>%n Messung außerhalb des Bandes, nach Abzug des üblichen Versatzes der Person oder der Lehre nicht mehr ganz</numerusform>
            <numerusform>%n Messungen außerhalb des Bandes, nach Abzug des üblichen Versatzes der Person oder der Lehre nicht mehr ganz</numerusform>
        </translation>
    </message>
    <message>
        <source>last reading near the edge</source>
        <translation>letzte Messung nahe am Rand</translation>
    </message>
    <message>
        <source>the gap cannot tell locked from part-seated</source>
        <translation>der Spalt unterscheidet verriegelt nicht von halb eingerastet</translation>
    </message>
    <message>
        <source>no reading in this period</source>
        <translation>keine Messung in diesem Zeitraum</translation>
    </message>
    <message numerus="yes">
        <source>no reading at %n rigging(s)</source>
        <translation>
            <numerusform>%n-mal ohne Messung aufgerüstet</numerusform>
            <numerusform>%n-mal ohne Messung aufgerüstet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>thin band, from %n reading(s)</source>
        <translation>
            <numerusform>dünnes Band, aus %n Messung</numerusform>
            <numerusform>dünnes Band, aus %n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>the gap grew from about rigging %1 to about rigging %2, and no more since</source>
        <translation>der Spalt wurde etwa von Aufrüsten %1 bis Aufrüsten %2 größer und seither nicht mehr</translation>
    </message>
    <message>
        <source>the gap shrank from about rigging %1 to about rigging %2, and no more since</source>
        <translation>der Spalt wurde etwa von Aufrüsten %1 bis Aufrüsten %2 kleiner und seither nicht mehr</translation>
    </message>
    <message>
        <source>the gap became %1 mm larger by a step at about rigging %2</source>
        <translation>der Spalt wurde etwa bei Aufrüsten %2 durch einen Sprung um %1 mm größer</translation>
    </message>
    <message>
        <source>the gap became %1 mm smaller by a step at about rigging %2</source>
        <translation>der Spalt wurde etwa bei Aufrüsten %2 durch einen Sprung um %1 mm kleiner</translation>
    </message>
    <message>
        <source>the gap has been growing since about rigging %1</source>
        <translation>der Spalt wird etwa seit Aufrüsten %1 größer</translation>
    </message>
    <message>
        <source>the gap has been shrinking since about rigging %1</source>
        <translation>der Spalt wird etwa seit Aufrüsten %1 kleiner</translation>
    </message>
    <message>
        <source>the gap has been larger since about rigging %1; whether by a step or a drift cannot be told yet</source>
        <translation>der Spalt ist etwa seit Aufrüsten %1 größer; ob durch Sprung oder Drift, ist noch nicht zu sagen</translation>
    </message>
    <message>
        <source>the gap has been smaller since about rigging %1; whether by a step or a drift cannot be told yet</source>
        <translation>der Spalt ist etwa seit Aufrüsten %1 kleiner; ob durch Sprung oder Drift, ist noch nicht zu sagen</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside its band</source>
        <translation>
            <numerusform>%n Messung außerhalb des Bandes</numerusform>
            <numerusform>%n Messungen außerhalb des Bandes</numerusform>
        </translation>
    </message>
    <message>
        <source>once found part-seated</source>
        <translation>einmal halb eingerastet vorgefunden</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) found part-seated</source>
        <translation>
            <numerusform>%n-mal halb eingerastet vorgefunden</numerusform>
            <numerusform>%n-mal halb eingerastet vorgefunden</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between signs</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>the other side moves the same way</source>
        <translation>die andere Seite verändert sich ebenso</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>sign, mark of what is told once below</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 scatters %2 times as much as before.</source>
        <translation>%1 streut %2-mal so stark wie vorher.</translation>
    </message>
    <message>
        <source>%1: %2, open since %3.</source>
        <comment>coupling, what is asked, day</comment>
        <translation>%1: %2, offen seit dem %3.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>coupling, what stands out</comment>
        <translation>%1: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside the band fit this change; each was to be looked at all the same.</source>
        <translation>
            <numerusform>%n Messung außerhalb des Bandes passt zu dieser Veränderung; ihr war trotzdem nachzugehen.</numerusform>
            <numerusform>%n Messungen außerhalb des Bandes passen zu dieser Veränderung; jeder war trotzdem nachzugehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The same circuit on the other side moves the same way, by itself.</source>
        <translation>Derselbe Steuerkreis auf der anderen Seite verändert sich für sich allein ebenso.</translation>
    </message>
    <message>
        <source>Nobody has said yet what was found.</source>
        <translation>Niemand hat bisher gesagt, was gefunden wurde.</translation>
    </message>
    <message numerus="yes">
        <source>%n more open question(s) on it.</source>
        <translation>
            <numerusform>Noch %n offene Frage dazu.</numerusform>
            <numerusform>Noch %n offene Fragen dazu.</numerusform>
        </translation>
    </message>
    <message>
        <source>No gap was read in this period.</source>
        <translation>In diesem Zeitraum wurde kein Spalt gemessen.</translation>
    </message>
    <message numerus="yes">
        <source>This is said of %n reading(s), all of %1.</source>
        <translation>
            <numerusform>Das ist von %n Messung gesagt, vom %1.</numerusform>
            <numerusform>Das ist von %n Messungen gesagt, alle vom %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This is said of %n reading(s), from %1 to %2.</source>
        <translation>
            <numerusform>Das ist von %n Messung gesagt, vom %1 bis zum %2.</numerusform>
            <numerusform>Das ist von %n Messungen gesagt, vom %1 bis zum %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>The readings of this period show no drift that still goes on, no step and no larger scatter; that is not to say that nothing moved.</source>
        <translation>Die Messungen dieses Zeitraums zeigen keine Drift, die noch andauert, keinen Sprung und keine größere Streuung; das heißt nicht, dass sich nichts verändert hat.</translation>
    </message>
    <message>
        <source>The readings of this period show no drift, no step and no larger scatter; that is not to say that nothing moved.</source>
        <translation>Die Messungen dieses Zeitraums zeigen keine Drift, keinen Sprung und keine größere Streuung; das heißt nicht, dass sich nichts verändert hat.</translation>
    </message>
    <message>
        <source>No reading lay outside its band in this period.</source>
        <translation>Keine Messung lag in diesem Zeitraum außerhalb ihres Bandes.</translation>
    </message>
    <message>
        <source>No question is open.</source>
        <translation>Keine Frage ist offen.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing stands out on %n coupling(s).</source>
        <translation>
            <numerusform>An %n Anschluss fällt nichts auf.</numerusform>
            <numerusform>An %n Anschlüssen fällt nichts auf.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing can be said of %1: no band, or no reading.</source>
        <translation>Zu %1 lässt sich nichts sagen: kein Band oder keine Messung.</translation>
    </message>
    <message>
        <source>No gap to measure: %1.</source>
        <translation>Kein Spalt zu messen: %1.</translation>
    </message>
    <message>
        <source>Each gap is one sign only.</source>
        <translation>Jeder Spalt ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>A band is a coupling’s own past, never a limit. The gap is one sign only: look, pull and control check stand beside it. These are an owner’s measurements, for assessment by a person entitled to decide.</source>
        <translation>Ein Band ist die eigene Vergangenheit eines Anschlusses, nie ein Grenzwert. Der Spalt ist nur ein Anzeichen: Sichtkontrolle, Zugprobe und Ruderprobe stehen daneben. Dies sind Messungen eines Halters, zur Beurteilung durch eine dazu berechtigte Person.</translation>
    </message>
    <message>
        <source>a coupling</source>
        <translation>ein Anschluss</translation>
    </message>
    <message>
        <source>somebody not named</source>
        <translation>jemand ohne Namen</translation>
    </message>
    <message>
        <source>a gauge not known</source>
        <translation>Lehre ohne Namen</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Gemessen von %1.</translation>
    </message>
    <message>
        <source>Read by %1 with %2.</source>
        <translation>Gemessen von %1 mit %2.</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>coupling, day, reading</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <comment>day, reading</comment>
        <translation>Am %1: %2.</translation>
    </message>
    <message>
        <source>The farthest on %1: %2.</source>
        <comment>day, reading</comment>
        <translation>Am weitesten außen, am %1: %2.</translation>
    </message>
    <message>
        <source>At least %1 mm beyond the outer edge.</source>
        <translation>Mindestens %1 mm jenseits des äußeren Randes.</translation>
    </message>
    <message>
        <source>Beyond the outer edge: the nearest by at least %1 mm, the farthest by at least %2 mm.</source>
        <translation>Jenseits des äußeren Randes: die nächste um mindestens %1 mm, die am weitesten außen um mindestens %2 mm.</translation>
    </message>
    <message>
        <source>Less what this person usually reads high or low, it would not lie wholly outside. That does not show that the joint was locked.</source>
        <translation>Nach Abzug dessen, was diese Person üblicherweise höher oder tiefer misst, läge das nicht ganz außerhalb. Das zeigt nicht, dass die Verbindung verriegelt war.</translation>
    </message>
    <message>
        <source>Less what is usually read high or low with this gauge, it would not lie wholly outside. That does not show that the joint was locked.</source>
        <translation>Nach Abzug dessen, was mit dieser Lehre üblicherweise höher oder tiefer gemessen wird, läge das nicht ganz außerhalb. Das zeigt nicht, dass die Verbindung verriegelt war.</translation>
    </message>
    <message>
        <source>Less what this person and this gauge usually add, it would not lie wholly outside. That does not show that the joint was locked.</source>
        <translation>Nach Abzug dessen, was diese Person und diese Lehre üblicherweise hinzufügen, läge das nicht ganz außerhalb. Das zeigt nicht, dass die Verbindung verriegelt war.</translation>
    </message>
    <message>
        <source>It fits a change of this gap; why the gap moved, the readings cannot tell.</source>
        <translation>Das passt zu einer Veränderung dieses Spalts; warum sich der Spalt verändert hat, können die Messungen nicht sagen.</translation>
    </message>
    <message>
        <source>It fits the step told of this coupling; why the gap moved, the readings cannot tell.</source>
        <translation>Das passt zum Sprung, der von diesem Anschluss gemeldet ist; warum sich der Spalt verändert hat, können die Messungen nicht sagen.</translation>
    </message>
    <message>
        <source>It fits the drift told of this coupling; why the gap moved, the readings cannot tell.</source>
        <translation>Das passt zur Drift, die von diesem Anschluss gemeldet ist; warum sich der Spalt verändert hat, können die Messungen nicht sagen.</translation>
    </message>
    <message>
        <source>It fits the step or drift told of this coupling; why the gap moved, the readings cannot tell.</source>
        <translation>Das passt zum Sprung oder zur Drift, die von diesem Anschluss gemeldet sind; warum sich der Spalt verändert hat, können die Messungen nicht sagen.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n reading(s) outside, %2 to %3</source>
        <comment>coupling, first day, last day</comment>
        <translation>
            <numerusform>%1: %n Messung außerhalb, %2 bis %3</numerusform>
            <numerusform>%1: %n Messungen außerhalb, %2 bis %3</numerusform>
        </translation>
    </message>
    <message>
        <source>All of them below its band.</source>
        <translation>Alle unter seinem Band.</translation>
    </message>
    <message>
        <source>All of them above its band.</source>
        <translation>Alle über seinem Band.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more, each of them in the report.</source>
        <translation>
            <numerusform>Und noch %n, im Bericht zu finden.</numerusform>
            <numerusform>Und noch %n, alle im Bericht zu finden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Rigging %1.</source>
        <translation>Aufrüsten %1.</translation>
    </message>
    <message>
        <source>Nothing was shown then: it was entered afterwards.</source>
        <translation>Damals wurde nichts angezeigt: Es wurde nachträglich eingegeben.</translation>
    </message>
    <message>
        <source>Shown then: %1.</source>
        <translation>Damals angezeigt: %1.</translation>
    </message>
    <message>
        <source>Still open: nobody has said what was found.</source>
        <translation>Noch offen: Niemand hat gesagt, was gefunden wurde.</translation>
    </message>
    <message>
        <source>No question was asked, and nothing is noted of what was found.</source>
        <translation>Es wurde keine Frage gestellt, und von einem Befund ist nichts vermerkt.</translation>
    </message>
    <message>
        <source>Found part-seated.</source>
        <translation>Halb eingerastet vorgefunden.</translation>
    </message>
    <message>
        <source>Below its band, outer edges %1.</source>
        <translation>Unter seinem Band, äußere Ränder %1.</translation>
    </message>
    <message>
        <source>Above its band, outer edges %1.</source>
        <translation>Über seinem Band, äußere Ränder %1.</translation>
    </message>
    <message>
        <source>Noted on %1: found part-seated.</source>
        <translation>Vermerkt am %1: halb eingerastet vorgefunden.</translation>
    </message>
    <message>
        <source>Noted on %1: corrected to %2.</source>
        <translation>Vermerkt am %1: berichtigt auf %2.</translation>
    </message>
    <message>
        <source>“%1.”</source>
        <comment>the reason, as it was noted</comment>
        <translation>„%1.“</translation>
    </message>
    <message>
        <source>Struck on %1: “%2.”</source>
        <comment>day: reason</comment>
        <translation>Gestrichen am %1: „%2.“</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <comment>interval, person</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Read afterwards, on the same rigging: %1.</source>
        <translation>Danach gemessen, beim selben Aufrüsten: %1.</translation>
    </message>
    <message>
        <source>No reading of a rigging in this period lay outside its band or was found part-seated. That is one sign only.</source>
        <translation>Beim Aufrüsten lag in diesem Zeitraum keine Messung außerhalb ihres Bandes, und keine wurde halb eingerastet vorgefunden. Das ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, who looked again.</source>
        <translation>Geschlossen am %1 von %2 nach erneutem Hinsehen.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2. Found: %3. Done: %4.</source>
        <translation>Geschlossen am %1 von %2. Gefunden: %3. Getan: %4.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, who had asked it. Found: %3. Done: %4.</source>
        <translation>Geschlossen am %1 von %2; die Frage war von derselben Person. Gefunden: %3. Getan: %4.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, whose own reading or answer had opened it. Found: %3. Done: %4.</source>
        <translation>Geschlossen am %1 von %2; eine Messung oder Antwort derselben Person hatte sie eröffnet. Gefunden: %3. Getan: %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>movement, its interval</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>step %1</source>
        <comment>signed mm</comment>
        <translation>Sprung %1</translation>
    </message>
    <message>
        <source>drift that ended, %1</source>
        <comment>signed mm per 100</comment>
        <translation>beendete Drift, %1</translation>
    </message>
    <message>
        <source>drift %1</source>
        <comment>signed mm per 100</comment>
        <translation>Drift %1</translation>
    </message>
    <message>
        <source>step or drift, larger</source>
        <translation>Sprung oder Drift, größer</translation>
    </message>
    <message>
        <source>step or drift, smaller</source>
        <translation>Sprung oder Drift, kleiner</translation>
    </message>
    <message>
        <source>since rigging %1</source>
        <translation>seit Aufrüsten %1</translation>
    </message>
    <message>
        <source>%1 to %2, since rigging %3</source>
        <comment>ends of an interval</comment>
        <translation>%1 bis %2, seit Aufrüsten %3</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>scatter now, before</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>was %1</source>
        <comment>scatter before</comment>
        <translation>vorher %1</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <comment>a chance</comment>
        <translation>unter 1 von 100</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <comment>a chance</comment>
        <translation>über 99 von 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <comment>a chance</comment>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>none told</source>
        <translation>keine gemeldet</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>noch kein Band</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>too few readings</source>
        <translation>zu wenige Messungen</translation>
    </message>
    <message>
        <source>annual overdue</source>
        <translation>Jahresnachprüfung überfällig</translation>
    </message>
    <message>
        <source>no annual date</source>
        <translation>Nachprüfung ohne Termin</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>kein Spalt zu messen</translation>
    </message>
    <message>
        <source>no band yet: no fitting has begun</source>
        <translation>noch kein Band: kein Einbau begonnen</translation>
    </message>
    <message>
        <source>no band yet: no confirmed reading</source>
        <translation>noch kein Band: keine bestätigte Messung</translation>
    </message>
    <message numerus="yes">
        <source>no band yet: %n confirmed reading(s)</source>
        <translation>
            <numerusform>noch kein Band: %n bestätigte Messung</numerusform>
            <numerusform>noch kein Band: %n bestätigte Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mm (95 % interval %2 to %3)</source>
        <comment>size of a step</comment>
        <translation>%1 mm (95-%-Intervall %2 bis %3)</translation>
    </message>
    <message>
        <source>%1 mm per %2 riggings (95 % interval %3 to %4)</source>
        <comment>rate of a drift</comment>
        <translation>%1 mm je %2 Aufrüstvorgänge (95-%-Intervall %3 bis %4)</translation>
    </message>
    <message>
        <source>The readings put its beginning at rigging %1, %2.</source>
        <comment>number, day</comment>
        <translation>Nach den Messungen liegt der Beginn bei Aufrüsten %1, %2.</translation>
    </message>
    <message>
        <source>It began at about rigging %1 (%2); 95 in 100 that it was from rigging %3 (%5) to rigging %4 (%6).</source>
        <comment>number, day, the ends as numbers and as days</comment>
        <translation>Beginn etwa bei Aufrüsten %1 (%2); mit einer Wahrscheinlichkeit von 95 von 100 zwischen Aufrüsten %3 (%5) und Aufrüsten %4 (%6).</translation>
    </message>
    <message>
        <source>As a step it is %1, as a drift %2.</source>
        <translation>Als Sprung sind es %1, als Drift %2.</translation>
    </message>
    <message>
        <source>The step is %1.</source>
        <comment>size</comment>
        <translation>Der Sprung beträgt %1.</translation>
    </message>
    <message>
        <source>The drift was %1.</source>
        <comment>rate</comment>
        <translation>Die Drift betrug %1.</translation>
    </message>
    <message>
        <source>The drift is %1.</source>
        <comment>rate</comment>
        <translation>Die Drift beträgt %1.</translation>
    </message>
    <message>
        <source>It has ended at about rigging %1, %2.</source>
        <comment>number, day</comment>
        <translation>Sie endete etwa bei Aufrüsten %1, %2.</translation>
    </message>
    <message>
        <source>Apart from the scatter between riggings, the gap came %1 mm above the middle of the band in this period, at the farthest; single readings may lie farther off.</source>
        <translation>Abgesehen von der Streuung von Aufrüsten zu Aufrüsten lag der Spalt in diesem Zeitraum am weitesten %1 mm über der Mitte des Bandes; einzelne Messungen können weiter weg liegen.</translation>
    </message>
    <message>
        <source>Apart from the scatter between riggings, the gap came %1 mm below the middle of the band in this period, at the farthest; single readings may lie farther off.</source>
        <translation>Abgesehen von der Streuung von Aufrüsten zu Aufrüsten lag der Spalt in diesem Zeitraum am weitesten %1 mm unter der Mitte des Bandes; einzelne Messungen können weiter weg liegen.</translation>
    </message>
    <message>
        <source>Going on like this, the chance that a reading at the annual of %1, at about rigging %2, lies outside the band is %3.</source>
        <translation>Geht es so weiter, liegt eine Messung zur Jahresnachprüfung am %1, etwa bei Aufrüsten %2, mit folgender Wahrscheinlichkeit außerhalb des Bandes: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The last %n reading(s), taken together, scatter by %1 mm, those of this fitting before them by %2 mm.</source>
        <translation>
            <numerusform>Die letzte %n Messung streut um %1 mm, die früheren dieses Einbaus um %2 mm.</numerusform>
            <numerusform>Die letzten %n Messungen zusammen streuen um %1 mm, die früheren dieses Einbaus um %2 mm.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Since when is not told by this.</source>
        <comment>scatter compared</comment>
        <translation>%1 Seit wann, ist damit nicht gesagt.</translation>
    </message>
    <message>
        <source>An early sign: the last readings lie rather high on this coupling’s band; they are too few yet to tell whether the gap moves. Look closely, whatever today’s reading says.</source>
        <translation>Ein frühes Anzeichen: Die letzten Messungen liegen für das Band dieses Anschlusses eher hoch; es sind noch zu wenige, um zu sagen, ob sich der Spalt verändert. Genau hinsehen, was auch immer die heutige Messung sagt.</translation>
    </message>
    <message>
        <source>An early sign: the last readings lie rather low on this coupling’s band; they are too few yet to tell whether the gap moves. Look closely, whatever today’s reading says.</source>
        <translation>Ein frühes Anzeichen: Die letzten Messungen liegen für das Band dieses Anschlusses eher tief; es sind noch zu wenige, um zu sagen, ob sich der Spalt verändert. Genau hinsehen, was auch immer die heutige Messung sagt.</translation>
    </message>
    <message>
        <source>Also read on the same rigging, before or after it: %1. The table did not tell when.</source>
        <translation>Beim selben Aufrüsten auch gemessen, vorher oder nachher: %1. Die Tabelle sagte nicht, wann.</translation>
    </message>
    <message>
        <source>once found not secured</source>
        <translation>einmal nicht gesichert vorgefunden</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) found not secured</source>
        <translation>
            <numerusform>%n-mal nicht gesichert vorgefunden</numerusform>
            <numerusform>%n-mal nicht gesichert vorgefunden</numerusform>
        </translation>
    </message>
    <message>
        <source>Found not secured.</source>
        <translation>Nicht gesichert vorgefunden.</translation>
    </message>
    <message>
        <source>Noted on %1: found not secured.</source>
        <translation>Vermerkt am %1: nicht gesichert vorgefunden.</translation>
    </message>
    <message numerus="yes">
        <source>%1 read %2 mm high: the middle of all couplings, on %n day(s).</source>
        <comment>gauge or person, figure</comment>
        <translation>
            <numerusform>%1 maß um %2 mm höher: die Mitte aller Anschlüsse, an %n Tag.</numerusform>
            <numerusform>%1 maß um %2 mm höher: die Mitte aller Anschlüsse, an %n Tagen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 read %2 mm low: the middle of all couplings, on %n day(s).</source>
        <comment>gauge or person, figure</comment>
        <translation>
            <numerusform>%1 maß um %2 mm tiefer: die Mitte aller Anschlüsse, an %n Tag.</numerusform>
            <numerusform>%1 maß um %2 mm tiefer: die Mitte aller Anschlüsse, an %n Tagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over all days %1 reads about %2 mm higher than the mean of all here (95 % interval %3 to %4).</source>
        <comment>who or what, figures</comment>
        <translation>Über alle Tage misst %1 etwa %2 mm höher als das Mittel aller hier (95-%-Intervall %3 bis %4).</translation>
    </message>
    <message>
        <source>Over all days %1 reads about %2 mm lower than the mean of all here (95 % interval %3 to %4).</source>
        <comment>who or what, figures</comment>
        <translation>Über alle Tage misst %1 etwa %2 mm tiefer als das Mittel aller hier (95-%-Intervall %3 bis %4).</translation>
    </message>
    <message>
        <source>no reading noted as part-seated</source>
        <translation>keine Messung als halb eingerastet notiert</translation>
    </message>
    <message numerus="yes">
        <source>%n of them when all or nearly all couplings read high</source>
        <translation>
            <numerusform>%n davon, als alle oder fast alle Anschlüsse hoch gemessen wurden</numerusform>
            <numerusform>%n davon, als alle oder fast alle Anschlüsse hoch gemessen wurden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them when all or nearly all couplings read low</source>
        <translation>
            <numerusform>%n davon, als alle oder fast alle Anschlüsse tief gemessen wurden</numerusform>
            <numerusform>%n davon, als alle oder fast alle Anschlüsse tief gemessen wurden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them when all or nearly all couplings read high, or low, together</source>
        <translation>
            <numerusform>%n davon, als alle oder fast alle Anschlüsse zusammen hoch oder tief gemessen wurden</numerusform>
            <numerusform>%n davon, als alle oder fast alle Anschlüsse zusammen hoch oder tief gemessen wurden</numerusform>
        </translation>
    </message>
    <message>
        <source>just beyond it, on %1</source>
        <comment>day</comment>
        <translation>knapp jenseits davon, am %1</translation>
    </message>
    <message>
        <source>the farthest just beyond it, on %1</source>
        <comment>day</comment>
        <translation>die fernste knapp jenseits davon, am %1</translation>
    </message>
    <message>
        <source>%1 mm or more beyond it, on %2</source>
        <comment>figure, day</comment>
        <translation>%1 mm oder mehr jenseits davon, am %2</translation>
    </message>
    <message>
        <source>the farthest %1 mm or more beyond it, on %2</source>
        <comment>figure, day</comment>
        <translation>die fernste %1 mm oder mehr jenseits davon, am %2</translation>
    </message>
    <message>
        <source>outside before this period, on %1, and nobody has said what it was</source>
        <comment>day</comment>
        <translation>vor diesem Zeitraum außerhalb, am %1, und niemand hat gesagt, was es war</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside before this period, the last on %1, and nobody has said what they were</source>
        <comment>day</comment>
        <translation>
            <numerusform>vor diesem Zeitraum %n Messung außerhalb, die letzte am %1, und niemand hat gesagt, was es war</numerusform>
            <numerusform>vor diesem Zeitraum %n Messungen außerhalb, die letzte am %1, und niemand hat gesagt, was es war</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 On none of these %n coupling(s) was a reading noted as part-seated: what they read then is not known.</source>
        <translation>
            <numerusform>%1 An diesem %n Anschluss wurde keine Messung als halb eingerastet notiert: Was dann gemessen wird, ist nicht bekannt.</numerusform>
            <numerusform>%1 An keinem dieser %n Anschlüsse wurde eine Messung als halb eingerastet notiert: Was dann gemessen wird, ist nicht bekannt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 No reading was noted as part-seated on %2: what they read then is not known.</source>
        <translation>%1 An %2 wurde keine Messung als halb eingerastet notiert: Was dann gemessen wird, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Whoever knows what it was notes it as a finding.</source>
        <translation>Wer weiß, was es war, notiert es als Befund.</translation>
    </message>
    <message>
        <source>All or nearly all couplings read high that day.</source>
        <translation>Alle oder fast alle Anschlüsse wurden an diesem Tag hoch gemessen.</translation>
    </message>
    <message>
        <source>All or nearly all couplings read low that day.</source>
        <translation>Alle oder fast alle Anschlüsse wurden an diesem Tag tief gemessen.</translation>
    </message>
    <message>
        <source>when all or nearly all couplings read high</source>
        <translation>als alle oder fast alle Anschlüsse hoch gemessen wurden</translation>
    </message>
    <message>
        <source>when all or nearly all couplings read low</source>
        <translation>als alle oder fast alle Anschlüsse tief gemessen wurden</translation>
    </message>
    <message>
        <source>another program changed facts it rests on, or may have</source>
        <translation>ein anderes Programm hat Einträge geändert, auf denen er beruht, oder kann es getan haben</translation>
    </message>
    <message>
        <source>Trust no band and no verdict of it until these facts were compared with a copy or a print.</source>
        <translation>Keinem Band und keinem Urteil von ihm trauen, bis diese Einträge mit einer Kopie oder einem Ausdruck verglichen sind.</translation>
    </message>
    <message>
        <source>How many more until the annual is not known yet: that takes %1 riggings and %2 days.</source>
        <translation>Wie viele es bis zur Jahresnachprüfung noch werden, ist noch nicht bekannt: Dazu braucht es %1 Aufrüstungen und %2 Tage.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, who looked again: copied from paper by %3.</source>
        <translation>Geschlossen am %1 von %2 nach erneutem Hinsehen: vom Papier abgeschrieben von %3.</translation>
    </message>
</context>
<context>
    <name>RiggedWords</name>
    <message>
        <source>First rigging of the season</source>
        <translation>Erstes Aufrüsten der Saison</translation>
    </message>
    <message numerus="yes">
        <source>First rigging after a layoff: none in this file for %n week(s), since %1.</source>
        <translation>
            <numerusform>Erstes Aufrüsten nach einer Pause: in dieser Datei %n Woche lang keines, seit dem %1.</numerusform>
            <numerusform>Erstes Aufrüsten nach einer Pause: in dieser Datei %n Wochen lang keines, seit dem %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>After so long hands are out of practice and grease may have set: go through this before the first coupling. Each tick is kept at once, with the leader's name.</source>
        <translation>Nach so langer Zeit fehlt die Übung, und Fett kann steif geworden sein: vor dem ersten Anschluss dies durchgehen. Jeder Haken wird sofort festgehalten, mit dem Namen der Leitung.</translation>
    </message>
    <message>
        <source>The first record of the year. After a winter hands are out of practice and grease may have set: go through this before the first coupling. Each tick is kept at once, with the leader's name.</source>
        <translation>Das erste Protokoll des Jahres. Nach einem Winter fehlt die Übung, und Fett kann steif geworden sein: vor dem ersten Anschluss dies durchgehen. Jeder Haken wird sofort festgehalten, mit dem Namen der Leitung.</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) to do</source>
        <translation>
            <numerusform>%n Schritt zu tun</numerusform>
            <numerusform>%n Schritte zu tun</numerusform>
        </translation>
    </message>
    <message>
        <source>To the couplings  (Enter)</source>
        <translation>Zu den Anschlüssen  (Enter)</translation>
    </message>
    <message>
        <source>Balls and sockets cleaned; plungers snap home, sleeves move freely</source>
        <translation>Kugeln und Pfannen gereinigt; Riegel schnappen ganz ein, Hülsen laufen frei</translation>
    </message>
    <message>
        <source>Greased as the manual says, a thin film</source>
        <translation>Gefettet, wie das Handbuch sagt, ein dünner Film</translation>
    </message>
    <message>
        <source>Leaf sets checked against a micrometer or a block, and looked at for bent or burred leaves</source>
        <translation>Blattsätze mit Mikrometer oder Endmaß geprüft und auf verbogene oder gratige Blätter angesehen</translation>
    </message>
    <message>
        <source>Everybody who rigs has looked at every coupling locked, part-seated and empty again</source>
        <translation>Alle, die aufrüsten, haben sich jeden Anschluss noch einmal angesehen: verriegelt, halb eingerastet und leer</translation>
    </message>
    <message>
        <source>Leaves, mirror, torch, cloth, pins and tools counted back out</source>
        <translation>Blätter, Spiegel, Lampe, Lappen, Stifte und Werkzeug gezählt und wieder heraus</translation>
    </message>
    <message>
        <source>The note left earlier was read</source>
        <translation>Die früher hinterlassene Notiz wurde gelesen</translation>
    </message>
    <message>
        <source>Hatches closed and taped, nothing loose inside</source>
        <translation>Handlöcher geschlossen und abgeklebt, innen nichts Loses</translation>
    </message>
    <message>
        <source>%1 did %2 as well. Where two are present, let each do one side.</source>
        <translation>%1 hat auch %2 gemacht. Sind zwei da, soll jede Person eine Seite machen.</translation>
    </message>
    <message>
        <source>Both readings agree: at least %1 mm apart, and measuring alone explains %2 mm.</source>
        <translation>Beide Messungen stimmen überein: mindestens %1 mm auseinander, und das Messen allein erklärt %2 mm.</translation>
    </message>
    <message>
        <source>Both readings agree: the same interval.</source>
        <translation>Beide Messungen stimmen überein: dasselbe Intervall.</translation>
    </message>
    <message>
        <source>The two readings lie at least %1 mm apart; measuring alone explains %2 mm. Both stand, neither is averaged, and a question is open.</source>
        <translation>Die zwei Messungen liegen mindestens %1 mm auseinander; das Messen allein erklärt %2 mm. Beide bleiben stehen, keine wird gemittelt, und eine Frage ist offen.</translation>
    </message>
    <message>
        <source>(The figure is common practice, until ten pairs of your own are there.)</source>
        <translation>(Die Zahl ist üblich, bis zehn eigene Paare vorliegen.)</translation>
    </message>
    <message>
        <source>The two readings may or may not differ by more than measuring explains (%1 mm). Both stand.</source>
        <translation>Die zwei Messungen unterscheiden sich vielleicht um mehr, als das Messen erklärt (%1 mm), vielleicht auch nicht. Beide bleiben stehen.</translation>
    </message>
    <message>
        <source>%1 of %2 couplings read high together today.</source>
        <translation>%1 von %2 Anschlüssen liegen heute gemeinsam hoch.</translation>
    </message>
    <message>
        <source>%1 of %2 couplings read low together today.</source>
        <translation>%1 von %2 Anschlüssen liegen heute gemeinsam tief.</translation>
    </message>
    <message>
        <source>This reading fits the band of %1, and the reading there fits this one. Was a side taken for the other, or are the rods crossed? A question is open.</source>
        <translation>Diese Messung passt in das Band von %1, und die Messung dort in dieses. Wurde eine Seite für die andere gehalten, oder sind die Stangen gekreuzt? Eine Frage ist offen.</translation>
    </message>
    <message>
        <source>Close the rigging record</source>
        <translation>Aufrüstprotokoll abschließen</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Noch offen</translation>
    </message>
    <message>
        <source>Stays in the record</source>
        <translation>Bleibt im Protokoll</translation>
    </message>
    <message>
        <source>Every coupling was looked at, read where there is a gap, pulled where there is something to pull, and looked at by a second person likewise. That is what was stated here and no more than that.</source>
        <translation>Bei jedem Anschluss: Sichtkontrolle, Messung, wo es einen Spalt gibt, Zugprobe, wo es etwas zu ziehen gibt, und ebenso durch eine zweite Person. Das wurde hier erklärt, und nicht mehr als das.</translation>
    </message>
    <message>
        <source>Every coupling was looked at, read, pulled, and looked at and pulled by a second person. That is what was stated here and no more than that.</source>
        <translation>Bei jedem Anschluss: Sichtkontrolle, Messung, Zugprobe, und Sichtkontrolle und Zugprobe einer zweiten Person. Das wurde hier erklärt, und nicht mehr als das.</translation>
    </message>
    <message>
        <source>%1: the ball was not seen</source>
        <translation>%1: die Kugel wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: the plunger was not seen</source>
        <translation>%1: der Riegel wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: the sleeve was not seen</source>
        <translation>%1: die Hülse wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: the safety pin was not seen</source>
        <translation>%1: die Sicherungsnadel wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: the joint was not seen</source>
        <translation>%1: die Verbindung wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: the lock was not seen</source>
        <translation>%1: die Sicherung wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: the look is not finished</source>
        <translation>%1: die Sichtkontrolle ist nicht fertig</translation>
    </message>
    <message>
        <source>%1: not measured</source>
        <translation>%1: nicht gemessen</translation>
    </message>
    <message>
        <source>%1: not pulled</source>
        <translation>%1: keine Zugprobe</translation>
    </message>
    <message>
        <source>%1: not secured</source>
        <translation>%1: nicht gesichert</translation>
    </message>
    <message>
        <source>%1: no second person's look and pull</source>
        <translation>%1: keine Sichtkontrolle und Zugprobe einer zweiten Person</translation>
    </message>
    <message>
        <source>%1: no second person's look</source>
        <translation>%1: keine Sichtkontrolle einer zweiten Person</translation>
    </message>
    <message>
        <source>%1: “no” was answered</source>
        <translation>%1: „nein“ wurde geantwortet</translation>
    </message>
    <message>
        <source>%1: a reading outside its band, taken back since as a slip; the stop stays until a named person has said what was found</source>
        <translation>%1: eine Messung außerhalb des Bandes, seither als Versehen zurückgenommen; der Stopp bleibt, bis jemand namentlich gesagt hat, was gefunden wurde</translation>
    </message>
    <message>
        <source>%1: a reading outside its band</source>
        <translation>%1: eine Messung außerhalb des Bandes</translation>
    </message>
    <message>
        <source>%1: the two persons' readings disagree</source>
        <translation>%1: die Messungen der zwei Personen widersprechen sich</translation>
    </message>
    <message>
        <source>%1: left and right look swapped</source>
        <translation>%1: links und rechts anscheinend vertauscht</translation>
    </message>
    <message>
        <source>%1: no band yet, the reading could not be judged</source>
        <translation>%1: noch kein Band, die Messung konnte nicht beurteilt werden</translation>
    </message>
    <message>
        <source>%1: the gap could not tell</source>
        <translation>%1: am Spalt war es nicht zu sagen</translation>
    </message>
    <message>
        <source>%1: the control check is not finished</source>
        <translation>%1: die Ruderprobe ist nicht fertig</translation>
    </message>
    <message>
        <source>%1: to be tried again, somebody was at %2 after the control check</source>
        <comment>surface, coupling</comment>
        <translation>%1: noch einmal zu probieren, nach der Ruderprobe war jemand an %2</translation>
    </message>
    <message>
        <source>Control check: no surfaces are set up yet</source>
        <translation>Ruderprobe: noch keine Ruder eingerichtet</translation>
    </message>
    <message>
        <source>The list for the first rigging of the season is not finished</source>
        <translation>Die Liste für das erste Aufrüsten der Saison ist nicht fertig</translation>
    </message>
    <message>
        <source>Two different people state this record. Nobody is filled in for you.</source>
        <translation>Zwei verschiedene Personen erklären, was in diesem Protokoll steht. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Rigging leader</source>
        <translation>Leitung des Aufrüstens</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>Both names are the same. The second person has to be somebody else.</source>
        <translation>Beide Namen sind gleich. Die zweite Person muss jemand anderes sein.</translation>
    </message>
    <message>
        <source>Choose both names to close the record.</source>
        <translation>Beide Namen wählen, um das Protokoll abzuschließen.</translation>
    </message>
    <message>
        <source>Count leaves, mirror, torch and tools back out and look at the hatches, then tick both.</source>
        <translation>Blätter, Spiegel, Lampe und Werkzeug zählen, bis alles wieder heraus ist, und die Handlöcher ansehen, dann beides abhaken.</translation>
    </message>
    <message>
        <source>Close the record, every step done and nothing open</source>
        <translation>Protokoll abschließen, jeder Schritt getan und nichts offen</translation>
    </message>
    <message>
        <source>Close with the open items listed</source>
        <translation>Mit den genannten offenen Punkten abschließen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What the next person ought to know</source>
        <translation>Was die nächste Person wissen sollte</translation>
    </message>
    <message>
        <source>These are the owner's measurements and statements, not an aircraft record, inspection or release. Manuals, directives, local rules and persons entitled to decide prevail.</source>
        <translation>Dies sind Messungen und Erklärungen des Halters, keine Flugzeugakte, keine Kontrolle und keine Freigabe. Handbücher, Anweisungen, örtliche Regeln und zur Entscheidung berechtigte Personen gehen vor.</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key for measured by</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>G</source>
        <comment>key for the gauge</comment>
        <translation>G</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>what is chosen or pressed, and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Y</source>
        <comment>key for the answer yes</comment>
        <translation>Y</translation>
    </message>
    <message>
        <source>N</source>
        <comment>key for the answer no</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>C</source>
        <comment>key for the answer cannot see</comment>
        <translation>C</translation>
    </message>
    <message>
        <source>F</source>
        <comment>key for the answer felt, not seen</comment>
        <translation>F</translation>
    </message>
    <message>
        <source>M</source>
        <comment>key for measure again</comment>
        <translation>M</translation>
    </message>
    <message>
        <source>S</source>
        <comment>key for second person</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key for wrong leaf pressed</comment>
        <translation>W</translation>
    </message>
    <message>
        <source>L</source>
        <comment>key for show the look</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>X</source>
        <comment>key for strike this reading</comment>
        <translation>X</translation>
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
        <source>Felt, not seen</source>
        <translation>Gefühlt, nicht gesehen</translation>
    </message>
    <message>
        <source>Cannot see</source>
        <translation>Nicht zu sehen</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>answer and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>question: answer</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Ball in the socket?</source>
        <translation>Kugel in der Pfanne?</translation>
    </message>
    <message>
        <source>Plunger home?</source>
        <translation>Riegel ganz eingerastet?</translation>
    </message>
    <message>
        <source>Sleeve at its stop?</source>
        <translation>Hülse am Anschlag?</translation>
    </message>
    <message>
        <source>Safety pin in and through?</source>
        <translation>Sicherungsnadel drin und durch?</translation>
    </message>
    <message>
        <source>Engaged all the way?</source>
        <translation>Ganz im Eingriff?</translation>
    </message>
    <message>
        <source>Parts meet all round, flush?</source>
        <translation>Teile liegen rundum bündig an?</translation>
    </message>
    <message>
        <source>Water line or rod connected?</source>
        <translation>Ballastleitung oder Stange angeschlossen?</translation>
    </message>
    <message>
        <source>Connected?</source>
        <translation>Angeschlossen?</translation>
    </message>
    <message>
        <source>Pull: nothing moves?</source>
        <translation>Zugprobe: nichts bewegt sich?</translation>
    </message>
    <message>
        <source>Secured?</source>
        <translation>Gesichert?</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>number, question of the look</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>See the ball itself.</source>
        <translation>Die Kugel selbst sehen.</translation>
    </message>
    <message>
        <source>Tab in its place, witness hole clear.</source>
        <translation>Lasche an ihrem Platz, Kontrollbohrung frei.</translation>
    </message>
    <message>
        <source>No thread showing, hand off.</source>
        <translation>Kein Gewinde zu sehen, Hand weg.</translation>
    </message>
    <message>
        <source>Through the witness hole, its end seen on the other side.</source>
        <translation>Durch die Kontrollbohrung, ihr Ende auf der anderen Seite gesehen.</translation>
    </message>
    <message>
        <source>Look or feel where the manual says, on every part that joins.</source>
        <translation>Ansehen oder fühlen, wo das Handbuch es sagt, an jedem Teil, das sich verbindet.</translation>
    </message>
    <message>
        <source>The parts meet all along, as the manual says.</source>
        <translation>Die Teile liegen überall an, wie das Handbuch sagt.</translation>
    </message>
    <message>
        <source>As its manual says, at both ends.</source>
        <translation>Wie sein Handbuch sagt, an beiden Enden.</translation>
    </message>
    <message>
        <source>As its manual says.</source>
        <translation>Wie sein Handbuch sagt.</translation>
    </message>
    <message>
        <source>A firm pull on the rod, away from the ball; then again a little to one side. Fingers off plunger and sleeve.</source>
        <translation>Fester Zug an der Stange, von der Kugel weg; dann noch einmal etwas zur Seite. Finger weg von Riegel und Hülse.</translation>
    </message>
    <message>
        <source>A firm pull by hand, the way it would part. Fingers off whatever holds it.</source>
        <translation>Fester Zug von Hand, in der Richtung, in der es sich trennen würde. Finger weg von allem, was es hält.</translation>
    </message>
    <message>
        <source>Sleeve at its stop, by itself. Tape over the hatch is no lock.</source>
        <translation>Hülse am Anschlag, von selbst. Klebeband über dem Handloch ist keine Sicherung.</translation>
    </message>
    <message>
        <source>Pin through the witness hole, and closed.</source>
        <translation>Nadel durch die Kontrollbohrung, und geschlossen.</translation>
    </message>
    <message>
        <source>Sleeve at its stop, pin through the witness hole.</source>
        <translation>Hülse am Anschlag, Nadel durch die Kontrollbohrung.</translation>
    </message>
    <message>
        <source>Its bolt or pin is in and secured, as the manual says. Tape is no lock.</source>
        <translation>Bolzen oder Stift ist drin und gesichert, wie das Handbuch sagt. Klebeband ist keine Sicherung.</translation>
    </message>
    <message>
        <source>Pin, clip or nut secured, as its manual says. Tape is no lock.</source>
        <translation>Stift, Klammer oder Mutter gesichert, wie sein Handbuch sagt. Klebeband ist keine Sicherung.</translation>
    </message>
    <message>
        <source>Rigging record</source>
        <translation>Aufrüstprotokoll</translation>
    </message>
    <message>
        <source>%1 of %2 couplings done</source>
        <translation>%1 von %2 Anschlüssen erledigt</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done</source>
        <translation>Zweite Person: %1 von %2 erledigt</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>look now</source>
        <translation>jetzt ansehen</translation>
    </message>
    <message>
        <source>measure now</source>
        <translation>jetzt messen</translation>
    </message>
    <message>
        <source>secure now</source>
        <translation>jetzt sichern</translation>
    </message>
    <message>
        <source>pull now</source>
        <translation>jetzt Zugprobe</translation>
    </message>
    <message>
        <source>begun, not done</source>
        <translation>begonnen, nicht fertig</translation>
    </message>
    <message>
        <source>interrupted · %1</source>
        <translation>unterbrochen · %1</translation>
    </message>
    <message>
        <source>%2 · %1</source>
        <comment>%2: how it stands, in sight when the line is cut; %1: what is done</comment>
        <translation>%2 · %1</translation>
    </message>
    <message>
        <source>%1 · look · pull</source>
        <translation>%1 · Sicht · Zug</translation>
    </message>
    <message>
        <source>no gap to measure · look · pull</source>
        <translation>kein Spalt zu messen · Sicht · Zug</translation>
    </message>
    <message>
        <source>no gap to measure · look</source>
        <translation>kein Spalt zu messen · Sicht</translation>
    </message>
    <message>
        <source>%1 · look</source>
        <comment>reading</comment>
        <translation>%1 · Sicht</translation>
    </message>
    <message>
        <source>No gap to measure here: no figure judges this joint. There is only what is asked here, and the control check.</source>
        <translation>Hier ist kein Spalt zu messen: keine Zahl beurteilt diese Verbindung. Es gibt nur, was hier gefragt wird, und die Ruderprobe.</translation>
    </message>
    <message>
        <source>%1 · second person</source>
        <translation>%1 · zweite Person</translation>
    </message>
    <message>
        <source>first person done, result hidden</source>
        <translation>erste Person fertig, Ergebnis verdeckt</translation>
    </message>
    <message>
        <source>first person not done yet</source>
        <translation>erste Person noch nicht fertig</translation>
    </message>
    <message>
        <source>own look and pull done</source>
        <translation>selbst angesehen und gezogen</translation>
    </message>
    <message>
        <source>own look done</source>
        <translation>selbst angesehen</translation>
    </message>
    <message>
        <source>Second inspection</source>
        <translation>Zweite Kontrolle</translation>
    </message>
    <message>
        <source>Close the record</source>
        <translation>Protokoll abschließen</translation>
    </message>
    <message>
        <source>two names, leaves counted</source>
        <translation>zwei Namen, Blätter gezählt</translation>
    </message>
    <message>
        <source>Rigged today?</source>
        <translation>Heute aufgerüstet?</translation>
    </message>
    <message>
        <source>One coupling at a time: look, measure, pull, secure, second person. Every answer and every reading is kept the moment it is given.</source>
        <translation>Ein Anschluss nach dem anderen: Sichtkontrolle, messen, Zugprobe, sichern, zweite Person. Jede Antwort und jede Messung wird im selben Augenblick festgehalten.</translation>
    </message>
    <message>
        <source>Notes the de-rigging with today's date, so that riggings are counted and not guessed.</source>
        <translation>Hält das Abrüsten mit dem heutigen Datum fest, damit jedes Aufrüsten gezählt und nicht geschätzt wird.</translation>
    </message>
    <message>
        <source>Since the last record: was it taken apart? A rigging is counted only when it was.</source>
        <translation>Seit dem letzten Protokoll: wurde abgerüstet? Nur dann zählt es als Aufrüsten.</translation>
    </message>
    <message>
        <source>Taken apart and rigged &amp;anew</source>
        <translation>&amp;Abgerüstet und neu aufgerüstet</translation>
    </message>
    <message>
        <source>&amp;Stood rigged, gone through once more</source>
        <translation>&amp;Blieb aufgerüstet, noch einmal durchgegangen</translation>
    </message>
    <message>
        <source>Say first whether it was taken apart since the last record.</source>
        <translation>Zuerst sagen, ob seit dem letzten Protokoll abgerüstet wurde.</translation>
    </message>
    <message>
        <source>Choose first who leads this rigging, and say whether it was taken apart since the last record.</source>
        <translation>Zuerst wählen, wer dieses Aufrüsten leitet, und sagen, ob seit dem letzten Protokoll abgerüstet wurde.</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Choose a leaf set or gauge</source>
        <translation>Blattsatz oder Lehre wählen</translation>
    </message>
    <message>
        <source>Start the rigging record</source>
        <translation>Aufrüstprotokoll beginnen</translation>
    </message>
    <message>
        <source>This file knows no airframe yet. Begin in Set up (Ctrl+5).</source>
        <translation>Diese Datei kennt noch kein Flugzeug. Unter Einrichten (Strg+5) beginnen.</translation>
    </message>
    <message>
        <source>No couplings are set up for this airframe. Add them in Set up (Ctrl+5).</source>
        <translation>Für dieses Flugzeug sind keine Anschlüsse eingerichtet. Unter Einrichten (Strg+5) hinzufügen.</translation>
    </message>
    <message>
        <source>A record needs two people. Add them in Set up (Ctrl+5).</source>
        <translation>Ein Protokoll braucht zwei Personen. Unter Einrichten (Strg+5) hinzufügen.</translation>
    </message>
    <message>
        <source>No leaf set is set up. Add one in Set up (Ctrl+5) before you measure.</source>
        <translation>Kein Blattsatz ist eingerichtet. Vor dem Messen unter Einrichten (Strg+5) einen hinzufügen.</translation>
    </message>
    <message>
        <source>End of the day: it was &amp;taken apart</source>
        <translation>Ende des Tages: es wurde abgerüs&amp;tet</translation>
    </message>
    <message>
        <source>The record begun on %1 was never closed. Nothing is carried over: a new record starts whole, and the old one stays, marked as abandoned.</source>
        <translation>Das am %1 begonnene Protokoll wurde nie abgeschlossen. Nichts wird übernommen: ein neues Protokoll beginnt ganz von vorn, und das alte bleibt, als aufgegeben bezeichnet.</translation>
    </message>
    <message>
        <source>Last record: %1, %2.</source>
        <translation>Letztes Protokoll: %1, %2.</translation>
    </message>
    <message>
        <source>Last record: %1, %2, stated by %3 and %4.</source>
        <translation>Letztes Protokoll: %1, %2, erklärt von %3 und %4.</translation>
    </message>
    <message>
        <source>closed with every step done and nothing open</source>
        <translation>abgeschlossen, jeder Schritt getan und nichts offen</translation>
    </message>
    <message>
        <source>closed with open items</source>
        <translation>mit offenen Punkten abgeschlossen</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Gemessen von</translation>
    </message>
    <message>
        <source>Looked at by</source>
        <translation>Angesehen von</translation>
    </message>
    <message>
        <source>First choose who is looking. Nobody is filled in for you.</source>
        <translation>Zuerst wählen, wer ansieht. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Your own look. The first result is hidden.</source>
        <translation>Ihre eigene Sichtkontrolle. Das erste Ergebnis ist verdeckt.</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>Locked gap, mm</source>
        <translation>Spalt verriegelt, mm</translation>
    </message>
    <message>
        <source>Thickest leaf that enters freely</source>
        <translation>Dickstes Blatt, das frei hineingeht</translation>
    </message>
    <message>
        <source>Value read on the taper gauge, mm</source>
        <translation>Am Messkeil abgelesener Wert, mm</translation>
    </message>
    <message>
        <source>The look comes first: an empty socket can show a normal gap. Measuring opens once the ball is seen or felt in the socket and nothing is answered with no.</source>
        <translation>Die Sichtkontrolle kommt zuerst: eine leere Pfanne kann einen üblichen Spalt zeigen. Gemessen werden kann, sobald die Kugel in der Pfanne gesehen oder gefühlt und nichts mit nein beantwortet ist.</translation>
    </message>
    <message>
        <source>Clean leaf, square to the faces, no force. Press the thickest leaf that enters freely, or type its size.</source>
        <translation>Sauberes Blatt, rechtwinklig zu den Flächen, ohne Kraft. Das dickste Blatt wählen, das frei hineingeht, oder sein Maß eingeben.</translation>
    </message>
    <message>
        <source>Choose who measures first. Nobody is filled in for you.</source>
        <translation>Zuerst wählen, wer misst. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Choose the second person first. Nobody is filled in for you.</source>
        <translation>Zuerst die zweite Person wählen. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Choose the leaf set or gauge you hold before you read.</source>
        <translation>Vor dem Messen den Blattsatz oder die Lehre wählen, die Sie in der Hand haben.</translation>
    </message>
    <message>
        <source>This coupling is read already. Press %1 to measure again, or %2 when the leaf was wrong.</source>
        <translation>Dieser Anschluss ist schon gemessen. %1 drücken, um noch einmal zu messen, oder %2, wenn das Blatt falsch war.</translation>
    </message>
    <message>
        <source>Choose your name first: the history says who took it apart.</source>
        <translation>Zuerst Ihren Namen wählen: Es wird festgehalten, wer abgerüstet hat.</translation>
    </message>
    <message>
        <source>This rigging was begun in another window at %1. It goes on here: both windows write into the same record.</source>
        <translation>Dieses Aufrüsten wurde um %1 in einem anderen Fenster begonnen. Es geht hier weiter: beide Fenster schreiben in dasselbe Protokoll.</translation>
    </message>
    <message>
        <source>R</source>
        <comment>key for note read</comment>
        <translation>R</translation>
    </message>
    <message>
        <source>Left for you to know</source>
        <translation>Für Sie hinterlassen</translation>
    </message>
    <message>
        <source>%1: “%2”</source>
        <comment>day: note</comment>
        <translation>%1: „%2“</translation>
    </message>
    <message>
        <source>%1, %2: “%3”</source>
        <comment>day, person: note</comment>
        <translation>%1, %2: „%3“</translation>
    </message>
    <message>
        <source>%1, %2 and %3: “%4”</source>
        <comment>day, two persons: note</comment>
        <translation>%1, %2 und %3: „%4“</translation>
    </message>
    <message numerus="yes">
        <source>%n older note(s) will be shown when these are read.</source>
        <translation>
            <numerusform>%n ältere Notiz wird gezeigt, wenn diese gelesen sind.</numerusform>
            <numerusform>%n ältere Notizen werden gezeigt, wenn diese gelesen sind.</numerusform>
        </translation>
    </message>
    <message>
        <source>I have read these notes  (%1)</source>
        <translation>Ich habe diese Notizen gelesen  (%1)</translation>
    </message>
    <message>
        <source>They are shown at every start until somebody notes them as read. They stay in their records.</source>
        <translation>Sie werden bei jedem Beginn gezeigt, bis jemand sie als gelesen vermerkt. Sie bleiben in ihren Protokollen.</translation>
    </message>
    <message>
        <source>First choose your name as rigging leader, then press this again.</source>
        <translation>Zuerst Ihren Namen als Leitung des Aufrüstens wählen, dann dies noch einmal drücken.</translation>
    </message>
    <message>
        <source>Noted as read.</source>
        <translation>Als gelesen vermerkt.</translation>
    </message>
    <message>
        <source>cleaned %1</source>
        <translation>am %1 gereinigt</translation>
    </message>
    <message>
        <source>greased %1</source>
        <translation>am %1 gefettet</translation>
    </message>
    <message>
        <source>a part changed %1</source>
        <translation>am %1 ein Teil getauscht</translation>
    </message>
    <message>
        <source>new fitting %1</source>
        <translation>neuer Einbau am %1</translation>
    </message>
    <message>
        <source>%1: %2. This asks for the whole check: look, reading, pull, securing, second person.</source>
        <comment>couplings: what was done on which day</comment>
        <translation>%1: %2. Das verlangt die ganze Kontrolle: Sichtkontrolle, Messung, Zugprobe, Sichern, zweite Person.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between couplings</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>This joint: %1. It asks for the whole check; a short one is not enough. Joints that had been worked on have come apart flights later, though the control check had shown nothing.</source>
        <comment>what was done on which day</comment>
        <translation>Diese Verbindung: %1. Sie verlangt die ganze Kontrolle; eine kurze genügt nicht. Verbindungen, an denen gearbeitet worden war, haben sich Flüge später gelöst, obwohl die Ruderprobe nichts gezeigt hatte.</translation>
    </message>
    <message>
        <source>Its readings have changed: %1. Look closely, whatever today's reading says.</source>
        <comment>the gap has been growing since …</comment>
        <translation>Seine Messungen haben sich geändert: %1. Genau hinsehen, was auch die heutige Messung sagt.</translation>
    </message>
    <message>
        <source>Te&amp;mperature here, °C (may stay empty)</source>
        <translation>Te&amp;mperatur hier, °C (darf leer bleiben)</translation>
    </message>
    <message>
        <source>Stiff grease can leave a plunger short. The figure is kept in the record and explains no reading away.</source>
        <translation>Durch steifes Fett kann ein Riegel nicht ganz einrasten. Die Zahl bleibt im Protokoll und redet keine Messung weg.</translation>
    </message>
    <message>
        <source>“%1” is no temperature from -60 to 60. Type whole degrees, or leave it empty.</source>
        <translation>„%1“ ist keine Temperatur von -60 bis 60. Ganze Grade eingeben oder leer lassen.</translation>
    </message>
    <message>
        <source>Choose who leads this rigging first.</source>
        <translation>Zuerst wählen, wer dieses Aufrüsten leitet.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>reading, why it is wider</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: no leaf enters</source>
        <translation>%1: kein Blatt geht hinein</translation>
    </message>
    <message>
        <source>%1: the thickest leaf is still loose</source>
        <translation>%1: das dickste Blatt ist noch lose</translation>
    </message>
    <message>
        <source>%1 by pin</source>
        <translation>%1 mit Prüfstift</translation>
    </message>
    <message>
        <source>%1 by taper gauge</source>
        <translation>%1 mit Messkeil</translation>
    </message>
    <message>
        <source>%1 by go/no-go block</source>
        <translation>%1 mit Grenzlehre</translation>
    </message>
    <message>
        <source>Set %1, last checked %2.</source>
        <translation>Satz %1, zuletzt geprüft am %2.</translation>
    </message>
    <message>
        <source>Set %1 is overdue a check: last checked %2.</source>
        <translation>Satz %1, Prüfung überfällig: zuletzt geprüft am %2.</translation>
    </message>
    <message>
        <source>Set %1, no check recorded.</source>
        <translation>Satz %1, keine Prüfung verzeichnet.</translation>
    </message>
    <message>
        <source>saving …</source>
        <translation>speichert …</translation>
    </message>
    <message>
        <source>saved %1</source>
        <translation>gespeichert um %1</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>nicht gespeichert</translation>
    </message>
    <message>
        <source>Measure again  (%1)</source>
        <translation>Noch einmal messen  (%1)</translation>
    </message>
    <message>
        <source>Measure again: a further reading stands beside the first, and the graver of the two counts.</source>
        <translation>Noch einmal messen: eine weitere Messung steht neben der ersten, und die ernstere von beiden zählt.</translation>
    </message>
    <message>
        <source>Measure as found  (%1)</source>
        <translation>Wie vorgefunden messen  (%1)</translation>
    </message>
    <message>
        <source>Measure as found: touch nothing else. It is kept as found part-seated.</source>
        <translation>Wie vorgefunden messen: sonst nichts anfassen. Es wird als „halb eingerastet vorgefunden“ festgehalten.</translation>
    </message>
    <message>
        <source>%1: the ball is not in the socket.</source>
        <translation>%1: die Kugel ist nicht in der Pfanne.</translation>
    </message>
    <message>
        <source>%1: the plunger is not home.</source>
        <translation>%1: der Riegel ist nicht ganz eingerastet.</translation>
    </message>
    <message>
        <source>%1: the sleeve is not at its stop.</source>
        <translation>%1: die Hülse ist nicht am Anschlag.</translation>
    </message>
    <message>
        <source>%1: the safety pin is not in and through.</source>
        <translation>%1: die Sicherungsnadel ist nicht drin und durch.</translation>
    </message>
    <message>
        <source>%1: it is not engaged all the way.</source>
        <translation>%1: nicht ganz im Eingriff.</translation>
    </message>
    <message>
        <source>%1: the parts do not meet all round, or are not flush.</source>
        <translation>%1: die Teile liegen nicht rundum an oder sind nicht bündig.</translation>
    </message>
    <message>
        <source>%1: it is not connected as its manual says.</source>
        <translation>%1: nicht so angeschlossen, wie das Handbuch sagt.</translation>
    </message>
    <message>
        <source>%1: something moved at the pull.</source>
        <translation>%1: bei der Zugprobe hat sich etwas bewegt.</translation>
    </message>
    <message>
        <source>%1: it is not secured.</source>
        <translation>%1: nicht gesichert.</translation>
    </message>
    <message>
        <source>%1: a reading lies outside its band, and nobody has said yet what it was.</source>
        <translation>%1: eine Messung liegt außerhalb des Bandes, und noch niemand hat gesagt, was es war.</translation>
    </message>
    <message>
        <source>%1 is stopped. No hand on it until a named person has resolved it.</source>
        <translation>Stopp bei %1. Keine Hand daran, bis jemand es namentlich geklärt hat.</translation>
    </message>
    <message>
        <source>Stopped: read what stands below before anything else. Enter once more shows what comes next; this joint stays stopped, and no hand on it.</source>
        <translation>Gestoppt: vor allem anderen lesen, was unten steht. Noch einmal Enter zeigt, was als Nächstes kommt; diese Verbindung bleibt gestoppt, und keine Hand daran.</translation>
    </message>
    <message>
        <source>It stops here. Nothing else is asked of this joint.</source>
        <translation>Hier ist Stopp. Sonst wird zu dieser Verbindung nichts gefragt.</translation>
    </message>
    <message>
        <source>It stops here. Nothing else is asked of this joint. Press %1 to measure it as found.</source>
        <translation>Hier ist Stopp. Sonst wird zu dieser Verbindung nichts gefragt. %1 drücken, um sie wie vorgefunden zu messen.</translation>
    </message>
    <message>
        <source>stop, leave it as it is</source>
        <translation>Stopp, stehen lassen</translation>
    </message>
    <message>
        <source>stop · %1</source>
        <comment>how it stands</comment>
        <translation>Stopp · %1</translation>
    </message>
    <message>
        <source>Wrong leaf  (%1)</source>
        <translation>Falsches Blatt  (%1)</translation>
    </message>
    <message>
        <source>Wrong leaf pressed</source>
        <translation>Falsches Blatt gewählt</translation>
    </message>
    <message>
        <source>Read again: the next reading takes the place of the wrong one.</source>
        <translation>Noch einmal messen: die nächste Messung tritt an die Stelle der falschen.</translation>
    </message>
    <message>
        <source>Strike  (%1)</source>
        <translation>Streichen  (%1)</translation>
    </message>
    <message>
        <source>Strike this reading</source>
        <translation>Diese Messung streichen</translation>
    </message>
    <message>
        <source>%1, kept at %2, stays in the history, with a line through it, and nothing takes its place. A question that it opened stays open. Say what went wrong with it.</source>
        <translation>%1, festgehalten um %2, bleibt durchgestrichen stehen, und nichts tritt an ihre Stelle. Eine Frage, die dadurch aufkam, bleibt offen. Angeben, was damit falsch war.</translation>
    </message>
    <message>
        <source>%1 struck at %2 by %3: %4</source>
        <comment>reading, time, person, reason</comment>
        <translation>%1 gestrichen um %2 von %3: %4</translation>
    </message>
    <message>
        <source>Next coupling  (Enter)</source>
        <translation>Nächster Anschluss  (Enter)</translation>
    </message>
    <message>
        <source>Second inspection  (Enter)</source>
        <translation>Zweite Kontrolle  (Enter)</translation>
    </message>
    <message>
        <source>To the close  (Enter)</source>
        <translation>Zum Abschluss  (Enter)</translation>
    </message>
    <message>
        <source>Second person  (%1)</source>
        <translation>Zweite Person  (%1)</translation>
    </message>
    <message>
        <source>First person  (%1)</source>
        <translation>Erste Person  (%1)</translation>
    </message>
    <message>
        <source>Esc interrupts: this coupling then starts again from the look.</source>
        <translation>Esc unterbricht: dieser Anschluss beginnt dann wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>Esc breaks off the typing: what is typed is kept.</source>
        <translation>Esc bricht die Eingabe ab: was eingegeben ist, bleibt.</translation>
    </message>
    <message>
        <source>Interrupted at %1. This coupling starts again from the look.</source>
        <translation>Unterbrochen um %1. Dieser Anschluss beginnt wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>What was read before the interruption, %1, is kept. The coupling still starts again from the look.</source>
        <translation>Was vor der Unterbrechung gemessen wurde, %1, bleibt. Der Anschluss beginnt trotzdem wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>Another window has written here meanwhile. Look at what stands now; your last key was not taken.</source>
        <translation>Inzwischen hat ein anderes Fenster hier geschrieben. Ansehen, was jetzt dasteht; Ihre letzte Taste wurde nicht angenommen.</translation>
    </message>
    <message>
        <source>Saved: %1 stands in place of the wrong reading. This coupling still starts again from the look.</source>
        <translation>Gespeichert: %1 steht an der Stelle der falschen Messung. Dieser Anschluss beginnt trotzdem wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>Last twelve readings</source>
        <translation>Letzte zwölf Messungen</translation>
    </message>
    <message>
        <source>Your own look and pull. The first result is hidden.</source>
        <translation>Ihre eigene Sichtkontrolle und Zugprobe. Das erste Ergebnis ist verdeckt.</translation>
    </message>
    <message>
        <source>A reading of your own is welcome and not required.</source>
        <translation>Eine eigene Messung ist willkommen und nicht verlangt.</translation>
    </message>
    <message>
        <source>A reading of your own is welcome and not required. Nothing of the first person's is shown.</source>
        <translation>Eine eigene Messung ist willkommen und nicht verlangt. Von der ersten Person wird nichts gezeigt.</translation>
    </message>
    <message>
        <source>Left out, because it is stopped: %1. Nobody works on there before its question is closed.</source>
        <comment>one or more couplings</comment>
        <translation>Ausgelassen, weil dort Stopp ist: %1. Dort arbeitet niemand weiter, bevor die Frage dazu geschlossen ist.</translation>
    </message>
    <message>
        <source>The second inspection is under way. What the first person found at %1 is shown again when the second person is done here or has kept a reading of their own.</source>
        <translation>Die zweite Kontrolle läuft. Was die erste Person an %1 gefunden hat, wird wieder gezeigt, wenn die zweite Person hier fertig ist oder eine eigene Messung festgehalten hat.</translation>
    </message>
    <message>
        <source>The second inspection of %1 is under way and hides what the first person found. Finish it, or break it off with Esc: that is kept as an interruption. Then the first person can go on here.</source>
        <translation>Die zweite Kontrolle von %1 läuft und verdeckt, was die erste Person gefunden hat. Fertig machen oder mit Esc abbrechen: das wird als Unterbrechung festgehalten. Dann kann die erste Person hier weitermachen.</translation>
    </message>
    <message>
        <source>The ball was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Die Kugel wurde nicht gesehen. Spiegel oder Lampe nehmen, noch einmal ansehen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>The plunger was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Der Riegel wurde nicht gesehen. Spiegel oder Lampe nehmen, noch einmal ansehen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>The sleeve was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Die Hülse wurde nicht gesehen. Spiegel oder Lampe nehmen, noch einmal ansehen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>The safety pin was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Die Sicherungsnadel wurde nicht gesehen. Spiegel oder Lampe nehmen, noch einmal ansehen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>The joint was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Die Verbindung wurde nicht gesehen. Spiegel oder Lampe nehmen, noch einmal ansehen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>The lock was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Die Sicherung wurde nicht gesehen. Spiegel oder Lampe nehmen, noch einmal ansehen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>%1 Felt.</source>
        <comment>question</comment>
        <translation>%1 Gefühlt.</translation>
    </message>
    <message>
        <source>%1 Yes.</source>
        <comment>question</comment>
        <translation>%1 Ja.</translation>
    </message>
    <message>
        <source>Show the look  (%1)</source>
        <translation>Sichtkontrolle zeigen  (%1)</translation>
    </message>
    <message>
        <source>Fold the look  (%1)</source>
        <translation>Sichtkontrolle zuklappen  (%1)</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>Second inspection not begun</source>
        <translation>Zweite Kontrolle nicht begonnen</translation>
    </message>
    <message>
        <source>%1 of %2 couplings done, %3 open</source>
        <translation>%1 von %2 Anschlüssen erledigt, %3 offen</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done, %3 open</source>
        <translation>Zweite Person: %1 von %2 erledigt, %3 offen</translation>
    </message>
    <message>
        <source>%1. %2. Nobody has said what was found.</source>
        <comment>surface; what happened there</comment>
        <translation>%1. %2. Niemand hat gesagt, was gefunden wurde.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 of %2 couplings done, %3 stopped, %4 open</source>
        <translation>%1 von %2 Anschlüssen erledigt, %3 gestoppt, %4 offen</translation>
    </message>
    <message>
        <source>%1 of %2 couplings done, %3 stopped</source>
        <translation>%1 von %2 Anschlüssen erledigt, %3 gestoppt</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done, %3 stopped, %4 open</source>
        <translation>Zweite Person: %1 von %2 erledigt, %3 gestoppt, %4 offen</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done, %3 stopped</source>
        <translation>Zweite Person: %1 von %2 erledigt, %3 gestoppt</translation>
    </message>
    <message>
        <source>Measure as found: touch nothing else. It is kept as found not secured.</source>
        <translation>Wie vorgefunden messen: sonst nichts anfassen. Es wird als „nicht gesichert vorgefunden“ festgehalten.</translation>
    </message>
    <message>
        <source>The figure was not taken. What comes first stands below.</source>
        <translation>Die Zahl wurde nicht angenommen. Was zuerst kommt, steht darunter.</translation>
    </message>
    <message>
        <source>This coupling was half done in another window. What was answered there was not seen here: it starts again from the look, and the break is kept.</source>
        <translation>Dieser Anschluss war in einem anderen Fenster halb erledigt. Was dort beantwortet wurde, hat hier niemand gesehen: Er beginnt wieder bei der Sichtkontrolle, und die Unterbrechung wird festgehalten.</translation>
    </message>
    <message>
        <source>Half done in another window. Whatever is pressed here begins it again, from the look.</source>
        <translation>In einem anderen Fenster halb erledigt. Was hier gedrückt wird, beginnt ihn von vorn, bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>The work on this coupling was interrupted. It starts again here, from the look.</source>
        <translation>Die Arbeit an diesem Anschluss wurde unterbrochen. Er beginnt hier wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>%1 began this record as its rigging leader. The printed record names both.</source>
        <translation>%1 hat dieses Protokoll als Leitung des Aufrüstens begonnen. Das gedruckte Protokoll nennt beide.</translation>
    </message>
    <message>
        <source>%1 · interrupted</source>
        <comment>and done since</comment>
        <translation>%1 · unterbrochen</translation>
    </message>
    <message>
        <source>%1: several persons looked and pulled as the second, and none of them did all of it</source>
        <translation>%1: als zweite Person haben mehrere angesehen und gezogen, und niemand von ihnen alles</translation>
    </message>
    <message>
        <source>%1: several persons looked as the second, and none of them saw all of it</source>
        <translation>%1: als zweite Person haben mehrere angesehen, und niemand von ihnen alles</translation>
    </message>
    <message>
        <source>This coupling was half answered for another person, and that is kept. It is asked again from the look, of %1.</source>
        <translation>Dieser Anschluss war für eine andere Person halb beantwortet, und das bleibt festgehalten. Er wird von der Sichtkontrolle an neu gefragt, für %1.</translation>
    </message>
    <message>
        <source>Half answered for another person. Whatever is pressed here begins it again, from the look, for %1.</source>
        <translation>Für eine andere Person halb beantwortet. Was hier gedrückt wird, beginnt ihn von vorn, bei der Sichtkontrolle, für %1.</translation>
    </message>
    <message>
        <source>First rigging in this file</source>
        <translation>Erstes Aufrüsten in dieser Datei</translation>
    </message>
    <message numerus="yes">
        <source>%n rigging(s) before this file are stated in Set up, and not when they were: whether this is the first of the season is not known here. Where it is, go through this before the first coupling; where it is not, go on without it. Each tick is kept at once, with the leader's name.</source>
        <translation>
            <numerusform>Unter Einrichten ist %n Aufrüsten vor dieser Datei angegeben, aber nicht, wann es war: Ob dieses das erste der Saison ist, ist hier nicht bekannt. Wenn ja, vor dem ersten Anschluss dies durchgehen; wenn nicht, ohne dies weitergehen. Jeder Haken wird sofort festgehalten, mit dem Namen der Leitung.</numerusform>
            <numerusform>Unter Einrichten sind %n Aufrüstvorgänge vor dieser Datei angegeben, aber nicht, wann sie waren: Ob dieses Aufrüsten das erste der Saison ist, ist hier nicht bekannt. Wenn ja, vor dem ersten Anschluss dies durchgehen; wenn nicht, ohne dies weitergehen. Jeder Haken wird sofort festgehalten, mit dem Namen der Leitung.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, read by %2 and kept at %3, stays in the history, with a line through it. Say what went wrong with it; then read again. If it was read at another coupling or by another person, strike it (%4).</source>
        <comment>reading, person, time, key</comment>
        <translation>%1, gemessen von %2, festgehalten um %3, bleibt durchgestrichen stehen. Angeben, was damit falsch war; dann neu messen. Wurde an einem anderen Anschluss oder von einer anderen Person gemessen: streichen (%4).</translation>
    </message>
    <message>
        <source>Another window has worked meanwhile at: %1.</source>
        <comment>one or more couplings</comment>
        <translation>Inzwischen hat ein anderes Fenster gearbeitet an: %1.</translation>
    </message>
    <message>
        <source>What was typed before this coupling was shown is not taken.</source>
        <translation>Was getippt wurde, bevor dieser Anschluss zu sehen war, wurde nicht angenommen.</translation>
    </message>
</context>
<context>
    <name>SentenceParts</name>
    <message>
        <source>%1 and %2</source>
        <comment>all but the last of a list, the last</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1: nothing</source>
        <comment>heading of a column in which nothing stands</comment>
        <translation>%1: nichts</translation>
    </message>
    <message>
        <source>%1: %2, struck</source>
        <comment>heading of a column, what stands there</comment>
        <translation>%1: %2, gestrichen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>heading of a column, what stands there</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>SetUpWords</name>
    <message>
        <source>Set up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>Airframe</source>
        <translation>Flugzeug</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Leaf sets and gauges</source>
        <translation>Blattsätze und Lehren</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Baseline day</source>
        <translation>Tag der Grundreihe</translation>
    </message>
    <message>
        <source>Part-seated demonstration</source>
        <translation>Vorführung halb eingerastet</translation>
    </message>
    <message>
        <source>Alt+1 to Alt+9: go to a part.</source>
        <translation>Alt+1 bis Alt+9: zu einem Teil gehen.</translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation>%1 von %2 Schritten getan</translation>
    </message>
    <message>
        <source>All steps done</source>
        <translation>Alle Schritte getan</translation>
    </message>
    <message>
        <source>done · %1</source>
        <comment>3 people</comment>
        <translation>getan · %1</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>not yet · %1</source>
        <comment>1 person</comment>
        <translation>noch nicht · %1</translation>
    </message>
    <message>
        <source>typed, not saved · %1</source>
        <translation>eingegeben, nicht gespeichert · %1</translation>
    </message>
    <message>
        <source>1 coupling</source>
        <translation>1 Anschluss</translation>
    </message>
    <message>
        <source>%1 couplings</source>
        <translation>%1 Anschlüsse</translation>
    </message>
    <message>
        <source>1 gauge</source>
        <translation>1 Lehre</translation>
    </message>
    <message>
        <source>%1 gauges</source>
        <translation>%1 Lehren</translation>
    </message>
    <message>
        <source>1 leaf set</source>
        <translation>1 Blattsatz</translation>
    </message>
    <message>
        <source>%1 leaf sets</source>
        <translation>%1 Blattsätze</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <source>1 event</source>
        <translation>1 Ereignis</translation>
    </message>
    <message>
        <source>%1 events</source>
        <translation>%1 Ereignisse</translation>
    </message>
    <message>
        <source>%1 of %2 with a band</source>
        <translation>%1 von %2 mit Band</translation>
    </message>
    <message>
        <source>shown on %1 of %2</source>
        <translation>an %1 von %2 gezeigt</translation>
    </message>
    <message>
        <source>Entered by</source>
        <translation>Eingetragen von</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>Niemand genannt</translation>
    </message>
    <message>
        <source>The name that is kept with what you save here.</source>
        <translation>Der Name, der bei dem bleibt, was Sie hier speichern.</translation>
    </message>
    <message>
        <source>The registration stands on every page, so that two gliders are never mixed up, and whoever meets a reading outside its band sees at once whom to call.</source>
        <translation>Das Kennzeichen steht auf jeder Seite, damit zwei Flugzeuge nie verwechselt werden, und wer auf eine Messung außerhalb ihres Bandes stößt, sieht sofort, wer anzurufen ist.</translation>
    </message>
    <message>
        <source>Each coupling is read and judged for itself, against its own past. The list is in rigging order: the order in which you walk round the aircraft.</source>
        <translation>Jeder Anschluss wird für sich gemessen und beurteilt, an seiner eigenen Vergangenheit. Die Liste folgt der Reihenfolge beim Aufrüsten: wie Sie um das Flugzeug gehen.</translation>
    </message>
    <message>
        <source>A reading lies between the leaf that enters and the next one that does not. So the program has to know which leaves there are, and when somebody last checked them.</source>
        <translation>Eine Messung liegt zwischen dem Blatt, das hineingeht, und dem nächsten, das nicht hineingeht. Darum muss das Programm wissen, welche Blätter es gibt und wann sie zuletzt jemand geprüft hat.</translation>
    </message>
    <message>
        <source>Every look, pull and reading is stated by a person, and the second look by another one. Two people is the least.</source>
        <translation>Jede Sichtkontrolle, Zugprobe und Messung wird von einer Person angegeben, die zweite Sichtkontrolle von einer anderen. Zwei Personen sind das Mindeste.</translation>
    </message>
    <message>
        <source>Cleaning, greasing and repairs shift readings. Noted here with their day, they stand beside the readings, and nobody has to guess later.</source>
        <translation>Reinigen, Fetten und Reparaturen verschieben Messungen. Hier mit ihrem Tag notiert, stehen sie neben den Messungen, und niemand muss später raten.</translation>
    </message>
    <message>
        <source>Next: couplings</source>
        <translation>Weiter: Anschlüsse</translation>
    </message>
    <message>
        <source>Next: leaf set</source>
        <translation>Weiter: Blattsatz</translation>
    </message>
    <message>
        <source>Next: people</source>
        <translation>Weiter: Personen</translation>
    </message>
    <message>
        <source>Next: baseline day</source>
        <translation>Weiter: Tag der Grundreihe</translation>
    </message>
    <message>
        <source>Save an airframe first. The other parts can be looked at any time.</source>
        <translation>Zuerst ein Flugzeug speichern. Die anderen Teile lassen sich jederzeit ansehen.</translation>
    </message>
    <message>
        <source>Add at least one coupling first.</source>
        <translation>Zuerst mindestens einen Anschluss hinzufügen.</translation>
    </message>
    <message>
        <source>Add at least one leaf set or gauge first.</source>
        <translation>Zuerst mindestens einen Blattsatz oder eine Lehre hinzufügen.</translation>
    </message>
    <message>
        <source>Add two people first.</source>
        <translation>Zuerst zwei Personen hinzufügen.</translation>
    </message>
    <message>
        <source>Add a second person first.</source>
        <translation>Zuerst eine zweite Person hinzufügen.</translation>
    </message>
    <message>
        <source>%1  (Enter)</source>
        <comment>Next: couplings</comment>
        <translation>%1  (Enter)</translation>
    </message>
    <message>
        <source>This part belongs to an airframe, and the file knows none yet.</source>
        <translation>Dieser Teil gehört zu einem Flugzeug, und die Datei kennt noch keines.</translation>
    </message>
    <message>
        <source>Go to the airframe</source>
        <translation>Zum Flugzeug</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save  (Enter)</source>
        <translation>Speichern  (Enter)</translation>
    </message>
    <message>
        <source>Close without saving  (Esc)</source>
        <translation>Schließen, ohne zu speichern  (Esc)</translation>
    </message>
    <message>
        <source>Change  (Enter)</source>
        <translation>Ändern  (Enter)</translation>
    </message>
    <message>
        <source>Needed; all else may be filled in later.</source>
        <translation>Nötig; alles andere kann später ausgefüllt werden.</translation>
    </message>
    <message>
        <source>Typed, not saved yet.</source>
        <translation>Eingegeben, noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Saved at %1.</source>
        <translation>Gespeichert um %1.</translation>
    </message>
    <message>
        <source>Not saved. See the message beside the field.</source>
        <translation>Nicht gespeichert. Siehe die Meldung neben dem Feld.</translation>
    </message>
    <message numerus="yes">
        <source>This is longer than %n characters. Shorten it.</source>
        <translation>
            <numerusform>Das ist länger als %n Zeichen. Kürzen.</numerusform>
            <numerusform>Das ist länger als %n Zeichen. Kürzen.</numerusform>
        </translation>
    </message>
    <message>
        <source>A character in it is not seen, such as a mark for the direction of writing. Delete it all and type it anew.</source>
        <translation>Ein Zeichen darin ist unsichtbar, etwa eines für die Schreibrichtung. Alles löschen und neu eingeben.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Calendar for: %1</source>
        <translation>Kalender für: %1</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>This day has not come yet. Type today or an earlier day.</source>
        <translation>Dieser Tag kommt erst noch. Den heutigen oder einen früheren Tag eingeben.</translation>
    </message>
    <message>
        <source>A further airframe</source>
        <translation>Ein weiteres Flugzeug</translation>
    </message>
    <message>
        <source>&amp;Registration</source>
        <translation>&amp;Kennzeichen</translation>
    </message>
    <message>
        <source>T&amp;ype</source>
        <translation>&amp;Muster</translation>
    </message>
    <message>
        <source>Serial &amp;number</source>
        <translation>Werk&amp;nummer</translation>
    </message>
    <message>
        <source>&amp;Jurisdiction</source>
        <translation>Geltendes &amp;Recht</translation>
    </message>
    <message>
        <source>Whose rules hold. The law differs and changes: ask your authority.</source>
        <translation>Wessen Vorschriften gelten. Das Recht ist verschieden und ändert sich: Ihre Behörde fragen.</translation>
    </message>
    <message>
        <source>&amp;Manuals and directives</source>
        <translation>&amp;Handbücher und Anweisungen</translation>
    </message>
    <message>
        <source>With issue and date. They prevail over anything said here.</source>
        <translation>Mit Ausgabe und Datum. Sie gehen allem vor, was hier gesagt wird.</translation>
    </message>
    <message>
        <source>Next &amp;annual due</source>
        <translation>Nächste &amp;Jahresnachprüfung</translation>
    </message>
    <message>
        <source>&amp;Whom to call</source>
        <translation>&amp;Wen anrufen</translation>
    </message>
    <message>
        <source>Shown at once when a reading lies outside its band.</source>
        <translation>Sofort gezeigt, wenn eine Messung außerhalb ihres Bandes liegt.</translation>
    </message>
    <message>
        <source>&amp;Phone</source>
        <translation>&amp;Telefon</translation>
    </message>
    <message>
        <source>Riggings &amp;counted before this file</source>
        <translation>Vor dieser &amp;Datei aufgerüstet (Anzahl)</translation>
    </message>
    <message>
        <source>A whole number. 0 when nobody counted.</source>
        <translation>Eine ganze Zahl. 0, wenn niemand gezählt hat.</translation>
    </message>
    <message>
        <source>Add a further airframe</source>
        <translation>Weiteres Flugzeug hinzufügen</translation>
    </message>
    <message>
        <source>Back to %1  (Esc)</source>
        <translation>Zurück zu %1  (Esc)</translation>
    </message>
    <message>
        <source>Type the registration. It stands on every page and every print.</source>
        <translation>Das Kennzeichen eingeben. Es steht auf jeder Seite und jedem Ausdruck.</translation>
    </message>
    <message>
        <source>%1 is already in this file. Choose it by the registration at the top left (Ctrl+K), or type another.</source>
        <translation>%1 ist schon in dieser Datei. Es über das Kennzeichen oben links (Strg+K) wählen oder ein anderes eingeben.</translation>
    </message>
    <message>
        <source>Type a whole number, 0 or more.</source>
        <translation>Eine ganze Zahl eingeben, 0 oder mehr.</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>A new person</source>
        <translation>Eine neue Person</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Role</source>
        <translation>&amp;Rolle</translation>
    </message>
    <message>
        <source>Owner, member, engineer: in your own words.</source>
        <translation>Halter, Mitglied, Prüfer: in Ihren eigenen Worten.</translation>
    </message>
    <message>
        <source>Type a name.</source>
        <translation>Einen Namen eingeben.</translation>
    </message>
    <message>
        <source>%1 is already in this file. Add an initial, so that the two are told apart.</source>
        <translation>%1 ist schon in dieser Datei. Einen Anfangsbuchstaben ergänzen, damit die beiden zu unterscheiden sind.</translation>
    </message>
    <message>
        <source>Nobody yet. A rigging record needs two people.</source>
        <translation>Noch niemand. Ein Aufrüstprotokoll braucht zwei Personen.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>role, phone</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Note an event</source>
        <translation>Ereignis notieren</translation>
    </message>
    <message>
        <source>A new event</source>
        <translation>Ein neues Ereignis</translation>
    </message>
    <message>
        <source>&amp;What was done</source>
        <translation>&amp;Was getan wurde</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Wh&amp;ere</source>
        <translation>W&amp;o</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>By whom, which grade or part, what was found.</source>
        <translation>Von wem, welche Sorte oder welches Teil, was gefunden wurde.</translation>
    </message>
    <message>
        <source>The whole airframe</source>
        <translation>Das ganze Flugzeug</translation>
    </message>
    <message>
        <source>Cleaned</source>
        <translation>Gereinigt</translation>
    </message>
    <message>
        <source>Greased</source>
        <translation>Gefettet</translation>
    </message>
    <message>
        <source>Refitted or adjusted</source>
        <translation>Neu eingebaut oder eingestellt</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>Annual</source>
        <translation>Jahresnachprüfung</translation>
    </message>
    <message>
        <source>Taken apart</source>
        <translation>Abgerüstet</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Choose your name first, at “%1”: the history says who took it apart.</source>
        <translation>Zuerst bei „%1“ Ihren Namen wählen: Es wird festgehalten, wer abgerüstet hat.</translation>
    </message>
    <message>
        <source>Say in a few words what there is to note.</source>
        <translation>In wenigen Worten sagen, was zu notieren ist.</translation>
    </message>
    <message>
        <source>A refit, an adjustment or a changed part ends the old baseline. Noting it here does not do that: start a new fitting of the coupling in Couplings (Alt+2) as well.</source>
        <translation>Neu einbauen, einstellen oder ein Teil tauschen beendet die alte Grundreihe. Die Notiz hier genügt dafür nicht: Auch unter „Anschlüsse“ (Alt+2) einen neuen Einbau des Anschlusses beginnen.</translation>
    </message>
    <message>
        <source>No event noted yet.</source>
        <translation>Noch kein Ereignis notiert.</translation>
    </message>
    <message>
        <source>An event stays as it was saved. A slip is put right by a further note.</source>
        <translation>Ein Ereignis bleibt, wie es gespeichert wurde. Ein Versehen wird durch eine weitere Notiz richtiggestellt.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>day, what was done, where</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>Typed in Set up and not saved: %1. It is lost when this file is left now. To keep it, go back and save it.</source>
        <comment>a part, or some of them</comment>
        <translation>In Einrichten getippt und nicht gespeichert: %1. Wird diese Datei jetzt verlassen, geht es verloren. Um es zu behalten, zurückgehen und speichern.</translation>
    </message>
</context>
<context>
    <name>SignOffWords</name>
    <message>
        <source>signed off until %1</source>
        <translation>Einweisung bestätigt bis %1</translation>
    </message>
    <message>
        <source>signed off until %1 (not met when it was signed: %2)</source>
        <translation>Einweisung bestätigt bis %1 (bei der Bestätigung nicht erfüllt: %2)</translation>
    </message>
    <message>
        <source>sign-off expired on %1 (three months without rigging)</source>
        <translation>Bestätigung abgelaufen am %1 (drei Monate ohne Aufrüsten)</translation>
    </message>
    <message numerus="yes">
        <source>sign-off expired on %1 (%n month(s) without rigging)</source>
        <translation>
            <numerusform>Bestätigung abgelaufen am %1 (%n Monat ohne Aufrüsten)</numerusform>
            <numerusform>Bestätigung abgelaufen am %1 (%n Monate ohne Aufrüsten)</numerusform>
        </translation>
    </message>
    <message>
        <source>sign-off expired on %1</source>
        <translation>Bestätigung abgelaufen am %1</translation>
    </message>
    <message>
        <source>sign-off withdrawn</source>
        <translation>Bestätigung zurückgezogen</translation>
    </message>
    <message>
        <source>not signed off on this airframe</source>
        <translation>Einweisung auf diesem Flugzeug nicht bestätigt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>person, how they stand</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 of %2 riggings under supervision</source>
        <translation>%1 von %2 Mal betreut aufgerüstet</translation>
    </message>
    <message numerus="yes">
        <source>%n coupling(s) not practised</source>
        <translation>
            <numerusform>%n Anschluss nicht geübt</numerusform>
            <numerusform>%n Anschlüsse nicht geübt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n coupling(s) called locked in practice and not locked</source>
        <translation>
            <numerusform>%n Anschluss in der Übung verriegelt genannt und nicht verriegelt</numerusform>
            <numerusform>%n Anschlüsse in der Übung verriegelt genannt und nicht verriegelt</numerusform>
        </translation>
    </message>
    <message>
        <source>What the person responsible for this airframe has stated on Know this airframe. It informs; it grants nothing and stops nothing.</source>
        <translation>Was die für dieses Flugzeug verantwortliche Person auf der Seite „Flugzeug kennen“ erklärt hat. Es informiert; es berechtigt zu nichts und hält nichts auf.</translation>
    </message>
    <message>
        <source>How they stood on this airframe on that day: %1.</source>
        <translation>Der Stand auf diesem Flugzeug an jenem Tag: %1.</translation>
    </message>
    <message>
        <source>How they stand on this airframe: %1.</source>
        <translation>Der Stand auf diesem Flugzeug: %1.</translation>
    </message>
</context>
<context>
    <name>SigningWords</name>
    <message>
        <source>%1 on this airframe</source>
        <comment>a person</comment>
        <translation>%1 an diesem Flugzeug</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>how somebody stands on this airframe</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Last rigging here: %1.</source>
        <translation>Letztes Aufrüsten hier: %1.</translation>
    </message>
    <message>
        <source>No rigging of this person stands in the file.</source>
        <translation>Kein Aufrüsten dieser Person steht in der Datei.</translation>
    </message>
    <message>
        <source>What is asked for before somebody signs</source>
        <translation>Was verlangt ist, bevor jemand bestätigt</translation>
    </message>
    <message>
        <source>Riggings under somebody who knows this airframe: %1 of %2</source>
        <translation>Aufgerüstet unter jemandem, der dieses Flugzeug kennt: %1 von %2</translation>
    </message>
    <message>
        <source>Last round, every coupling: no joint that was not locked was called locked. This is practice only.</source>
        <translation>Letzte Runde, jeder Anschluss: keine Verbindung, die nicht verriegelt war, wurde verriegelt genannt. Das ist nur Übung.</translation>
    </message>
    <message>
        <source>Not practised to the end of a round: %1</source>
        <translation>Nicht bis zum Ende einer Runde geübt: %1</translation>
    </message>
    <message>
        <source>Called locked in the last round, and was not: %1</source>
        <translation>In der letzten Runde verriegelt genannt, und war es nicht: %1</translation>
    </message>
    <message>
        <source>Whoever signs decides, and may ask for more: every coupling named unaided, a planted fault found, the calls said, when to stop explained. A sign-off grants nothing.</source>
        <translation>Wer bestätigt, entscheidet und kann mehr verlangen: jeden Anschluss ohne Hilfe benannt, einen absichtlich gesetzten Fehler gefunden, die Ansagen gemacht, erklärt, wann aufzuhören ist. Eine Bestätigung berechtigt zu nichts.</translation>
    </message>
    <message>
        <source>Riggings under supervision</source>
        <translation>Betreutes Aufrüsten</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Noch keines.</translation>
    </message>
    <message>
        <source>%1, under %2</source>
        <comment>day, person</comment>
        <translation>%1, unter %2</translation>
    </message>
    <message>
        <source>%1, under %2: %3</source>
        <comment>day, person, note</comment>
        <translation>%1, unter %2: %3</translation>
    </message>
    <message>
        <source>Add a rigging under supervision</source>
        <translation>Betreutes Aufrüsten hinzufügen</translation>
    </message>
    <message>
        <source>Which riggin&amp;g</source>
        <translation>Auf&amp;gerüstet am</translation>
    </message>
    <message>
        <source>Choose a rigging</source>
        <translation>Aufrüsten wählen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day of a rigging, names</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Under w&amp;hom</source>
        <translation>Wer &amp;hat betreut</translation>
    </message>
    <message>
        <source>Choose who supervised</source>
        <translation>Wählen, wer betreut hat</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>Not&amp;iz</translation>
    </message>
    <message>
        <source>Not&amp;e</source>
        <translation>Notizte&amp;xt</translation>
    </message>
    <message>
        <source>&amp;Keep this rigging</source>
        <translation>Aufrüsten vermer&amp;ken</translation>
    </message>
    <message>
        <source>There is no further rigging in the file that could be named.</source>
        <translation>In der Datei steht kein weiteres Aufrüsten, das zu nennen wäre.</translation>
    </message>
    <message>
        <source>Choose which rigging it was.</source>
        <translation>Wählen, welches Aufrüsten es war.</translation>
    </message>
    <message>
        <source>Choose under whom it was: another person.</source>
        <translation>Wählen, wer betreut hat: eine andere Person.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Festgehalten.</translation>
    </message>
    <message>
        <source>Sign for %1</source>
        <comment>a person</comment>
        <translation>Bestätigen für %1</translation>
    </message>
    <message>
        <source>Signed &amp;by, the person responsible</source>
        <translation>Bestätigt von, ver&amp;antwortlich</translation>
    </message>
    <message>
        <source>Choose who signs</source>
        <translation>Wählen, wer bestätigt</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Months until it e&amp;xpires</source>
        <translation>Monate bis &amp;zum Ablauf</translation>
    </message>
    <message>
        <source>Months without rigg&amp;ing until it expires</source>
        <translation>M&amp;onate ohne Aufrüsten bis zum Ablauf</translation>
    </message>
    <message>
        <source>12 and 3 months are common practice, not a rule. The months without rigging count from the last rigging here, also one before the signing.</source>
        <translation>12 und 3 Monate sind üblich, keine Regel. Die Monate ohne Aufrüsten zählen ab dem letzten Aufrüsten hier, auch einem vor der Bestätigung.</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>Be&amp;stätigen</translation>
    </message>
    <message>
        <source>Withdra&amp;w the sign-off</source>
        <translation>&amp;Bestätigung zurückziehen</translation>
    </message>
    <message>
        <source>Choose who signs: another person than the learner.</source>
        <translation>Wählen, wer bestätigt: eine andere Person als der Lernende.</translation>
    </message>
    <message>
        <source>Enter the day.</source>
        <translation>Den Tag eingeben.</translation>
    </message>
    <message>
        <source>This day is still to come.</source>
        <translation>Dieser Tag kommt erst noch.</translation>
    </message>
    <message>
        <source>Say in the note why it is withdrawn.</source>
        <translation>In der Notiz sagen, warum sie zurückgezogen wird.</translation>
    </message>
    <message>
        <source>Kept: signed on %1.</source>
        <translation>Festgehalten: bestätigt am %1.</translation>
    </message>
    <message>
        <source>Kept: withdrawn.</source>
        <translation>Festgehalten: zurückgezogen.</translation>
    </message>
    <message>
        <source>Everything that was signed</source>
        <translation>Alles, was bestätigt wurde</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2</source>
        <comment>day, person</comment>
        <translation>%1: zurückgezogen von %2</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2: %3</source>
        <comment>day, person, note</comment>
        <translation>%1: zurückgezogen von %2: %3</translation>
    </message>
    <message>
        <source>%1: signed by %2</source>
        <comment>day, person</comment>
        <translation>%1: bestätigt von %2</translation>
    </message>
    <message>
        <source>%1: signed by %2 (not met when it was signed: %3)</source>
        <comment>day, person, list</comment>
        <translation>%1: bestätigt von %2 (bei der Bestätigung nicht erfüllt: %3)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who signed when, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Not met: %1.</source>
        <comment>a list</comment>
        <translation>Nicht erfüllt: %1.</translation>
    </message>
    <message>
        <source>The last rigging here was on %1: a sign-off expires by that before it is given, unless there is a rigging on the day of signing.</source>
        <translation>Das letzte Aufrüsten hier war am %1: eine Bestätigung läuft dadurch ab, bevor sie gegeben ist, außer es gibt ein Aufrüsten am Tag der Bestätigung.</translation>
    </message>
    <message>
        <source>Sign &amp;just the same</source>
        <translation>&amp;Jetzt trotzdem bestätigen</translation>
    </message>
    <message>
        <source>Something is not met. Read it, and tick that you sign for it.</source>
        <translation>Etwas ist nicht erfüllt. Es lesen und anhaken, dass Sie trotzdem bestätigen.</translation>
    </message>
    <message>
        <source>Not named in the record of this rigging: %1.</source>
        <comment>names</comment>
        <translation>Nicht genannt im Protokoll dieses Aufrüstens: %1.</translation>
    </message>
    <message>
        <source>Super&amp;vised all the same</source>
        <translation>Trotzd&amp;em betreut</translation>
    </message>
    <message>
        <source>%1 stands nowhere in the record of this rigging. If it was supervised all the same, tick that, and say in the note what they did there.</source>
        <comment>names</comment>
        <translation>Nirgends genannt im Protokoll dieses Aufrüstens: %1. War es trotzdem betreut, dies anhaken und in der Notiz sagen, was dort getan wurde.</translation>
    </message>
    <message>
        <source>%1 (not named in its record: %2)</source>
        <comment>a rigging, names</comment>
        <translation>%1 (nicht genannt im Protokoll: %2)</translation>
    </message>
    <message>
        <source>To be taken b&amp;ack</source>
        <translation>Zurü&amp;ckzunehmen</translation>
    </message>
    <message>
        <source>Choose what was told by mistake</source>
        <translation>Wählen, was irrtümlich gesagt wurde</translation>
    </message>
    <message>
        <source>Taken back b&amp;y</source>
        <translation>Zurück&amp;nehmende Person</translation>
    </message>
    <message>
        <source>Choose who takes it back</source>
        <translation>Wählen, wer zurücknimmt</translation>
    </message>
    <message>
        <source>Take this o&amp;ne back …</source>
        <translation>&amp;Diese Angabe zurücknehmen …</translation>
    </message>
    <message>
        <source>Choose what is to be taken back.</source>
        <translation>Wählen, was zurückgenommen werden soll.</translation>
    </message>
    <message>
        <source>Choose who takes it back.</source>
        <translation>Wählen, wer es zurücknimmt.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Why is this taken back? It stays to be read, and counts for nothing.
%1</source>
        <translation>Warum wird dies zurückgenommen? Es bleibt lesbar und zählt für nichts.
%1</translation>
    </message>
    <message>
        <source>Another rigging</source>
        <translation>Anderes Aufrüsten</translation>
    </message>
    <message>
        <source>Another person</source>
        <translation>Andere Person</translation>
    </message>
    <message>
        <source>Told twice</source>
        <translation>Zweimal gesagt</translation>
    </message>
    <message>
        <source>Kept: taken back. It stays to be read.</source>
        <translation>Festgehalten: zurückgenommen. Es bleibt lesbar.</translation>
    </message>
    <message>
        <source>%1 taken back by %2: %3</source>
        <comment>what, a person, the reason</comment>
        <translation>%1 zurückgenommen von %2: %3</translation>
    </message>
</context>
<context>
    <name>StandingWords</name>
    <message>
        <source>found part-seated</source>
        <translation>halb eingerastet vorgefunden</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>kein Spalt zu messen</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>verschoben</translation>
    </message>
    <message>
        <source>scatter changed</source>
        <translation>Streuung geändert</translation>
    </message>
    <message>
        <source>was outside</source>
        <translation>war außerhalb</translation>
    </message>
    <message>
        <source>Outside the band, and nobody has resolved it</source>
        <translation>Außerhalb des Bandes, und niemand hat es geklärt</translation>
    </message>
    <message>
        <source>Not found out yet: %1</source>
        <comment>what is asked</comment>
        <translation>Noch nicht herausgefunden: %1</translation>
    </message>
    <message>
        <source>Found part-seated</source>
        <translation>Halb eingerastet vorgefunden</translation>
    </message>
    <message>
        <source>Not read in this period</source>
        <translation>In diesem Zeitraum nicht gemessen</translation>
    </message>
    <message>
        <source>No gap to measure</source>
        <translation>Kein Spalt zu messen</translation>
    </message>
    <message>
        <source>Inside the band, and it moved</source>
        <translation>Im Band, und verschoben</translation>
    </message>
    <message>
        <source>Inside the band, and its scatter changed</source>
        <translation>Im Band, und die Streuung hat sich geändert</translation>
    </message>
    <message>
        <source>Inside the band, and outside before in this period</source>
        <translation>Im Band, und vorher in diesem Zeitraum außerhalb</translation>
    </message>
    <message>
        <source>%1; last read: %2</source>
        <comment>what befell it in the period, reading</comment>
        <translation>%1; zuletzt gemessen: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>how it stands, reading</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This reading by itself: %1. %2</source>
        <comment>verdict, explanation</comment>
        <translation>Diese Messung für sich: %1. %2</translation>
    </message>
    <message>
        <source>Cannot tell: the ball was not seen</source>
        <translation>Nicht zu sagen: die Kugel wurde nicht gesehen</translation>
    </message>
    <message>
        <source>Cannot tell: the plunger was not seen</source>
        <translation>Nicht zu sagen: der Riegel wurde nicht gesehen</translation>
    </message>
    <message>
        <source>Cannot tell: the sleeve was not seen</source>
        <translation>Nicht zu sagen: die Hülse wurde nicht gesehen</translation>
    </message>
    <message>
        <source>Cannot tell: the safety pin was not seen</source>
        <translation>Nicht zu sagen: die Sicherungsnadel wurde nicht gesehen</translation>
    </message>
    <message>
        <source>Cannot tell: the joint was not seen</source>
        <translation>Nicht zu sagen: die Verbindung wurde nicht gesehen</translation>
    </message>
    <message>
        <source>Cannot tell: the lock was not seen</source>
        <translation>Nicht zu sagen: die Sicherung wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1, measured as found. It is kept apart and is no locked reading.</source>
        <translation>%1, wie vorgefunden gemessen. Das wird getrennt gehalten und ist keine verriegelte Messung.</translation>
    </message>
    <message>
        <source>a reading outside</source>
        <translation>eine Messung außerhalb</translation>
    </message>
    <message>
        <source>answered “no”</source>
        <translation>„nein“ geantwortet</translation>
    </message>
    <message>
        <source>could not be seen</source>
        <translation>war nicht zu sehen</translation>
    </message>
    <message>
        <source>two readings disagree</source>
        <translation>zwei Messungen widersprechen sich</translation>
    </message>
    <message>
        <source>left and right look swapped</source>
        <translation>links und rechts anscheinend vertauscht</translation>
    </message>
    <message>
        <source>its surface wrong or not seen</source>
        <translation>sein Ruder falsch oder nicht gesehen</translation>
    </message>
    <message>
        <source>its band is in doubt</source>
        <translation>sein Band ist im Zweifel</translation>
    </message>
    <message>
        <source>shown part-seated on purpose</source>
        <translation>absichtlich halb eingerastet gezeigt</translation>
    </message>
    <message>
        <source>a question in words</source>
        <translation>eine Frage in Worten</translation>
    </message>
    <message>
        <source>readings in doubt</source>
        <translation>Messungen im Zweifel</translation>
    </message>
    <message>
        <source>%1; last read: %2</source>
        <comment>what is asked of a surface, reading of the joint</comment>
        <translation>%1; zuletzt gemessen: %2</translation>
    </message>
    <message>
        <source>%1, in the same circuit</source>
        <comment>a surface and what it was</comment>
        <translation>%1, im selben Steuerkreis</translation>
    </message>
    <message>
        <source>%1, perhaps in the same circuit</source>
        <comment>a surface and what it was</comment>
        <translation>%1, vielleicht im selben Steuerkreis</translation>
    </message>
    <message>
        <source>%1 wrong or not seen</source>
        <comment>a surface elsewhere in the circuit</comment>
        <translation>%1 falsch oder nicht gesehen</translation>
    </message>
    <message>
        <source>its surface moved the wrong way</source>
        <translation>sein Ruder falsch herum bewegt</translation>
    </message>
    <message>
        <source>%1 moved the wrong way</source>
        <translation>%1 falsch herum bewegt</translation>
    </message>
    <message>
        <source>its surface not seen</source>
        <translation>sein Ruder nicht gesehen</translation>
    </message>
    <message>
        <source>%1 not seen</source>
        <comment>a surface</comment>
        <translation>%1 nicht gesehen</translation>
    </message>
    <message>
        <source>“no” at its surface</source>
        <translation>„nein“ an seinem Ruder</translation>
    </message>
    <message>
        <source>“no” at %1</source>
        <comment>a surface</comment>
        <translation>„nein“ an %1</translation>
    </message>
    <message>
        <source>found not secured</source>
        <translation>nicht gesichert vorgefunden</translation>
    </message>
    <message>
        <source>Found not secured</source>
        <translation>Nicht gesichert vorgefunden</translation>
    </message>
    <message>
        <source>hidden</source>
        <comment>what was found is kept back from the second person</comment>
        <translation>verdeckt</translation>
    </message>
    <message>
        <source>Hidden until the second person is done here</source>
        <translation>Verdeckt, bis die zweite Person hier fertig ist</translation>
    </message>
    <message>
        <source>outside before</source>
        <comment>before the period, and nobody has said what it was</comment>
        <translation>vorher außerhalb</translation>
    </message>
    <message>
        <source>Inside the band; outside before this period, on %1, and nobody has said what it was</source>
        <comment>day</comment>
        <translation>Im Band; vor diesem Zeitraum außerhalb, am %1, und niemand hat gesagt, was es war</translation>
    </message>
    <message>
        <source>outside before this period, on %1; last read: %2</source>
        <comment>day, reading</comment>
        <translation>vor diesem Zeitraum außerhalb, am %1; zuletzt gemessen: %2</translation>
    </message>
    <message>
        <source>facts in doubt</source>
        <comment>that it rests on: another program changed them</comment>
        <translation>Einträge im Zweifel</translation>
    </message>
    <message>
        <source>Cannot tell: another program changed facts it rests on, or may have</source>
        <translation>Nicht zu sagen: Ein anderes Programm hat Einträge geändert, auf denen er beruht, oder kann es getan haben</translation>
    </message>
    <message>
        <source>%1; another program changed facts it rests on, or may have</source>
        <comment>how it stands</comment>
        <translation>%1; ein anderes Programm hat Einträge geändert, auf denen er beruht, oder kann es getan haben</translation>
    </message>
    <message>
        <source>Show these facts with Ctrl+7.</source>
        <translation>Diese Einträge zeigt Strg+7.</translation>
    </message>
</context>
<context>
    <name>StatementWords</name>
    <message>
        <source>F</source>
        <comment>key for note a finding</comment>
        <translation>F</translation>
    </message>
    <message>
        <source>Q</source>
        <comment>key for ask a question</comment>
        <translation>Q</translation>
    </message>
    <message>
        <source>Note a finding (%1)</source>
        <translation>Befund notieren (%1)</translation>
    </message>
    <message>
        <source>Ask (%1)</source>
        <translation>Frage stellen (%1)</translation>
    </message>
    <message>
        <source>Note a finding</source>
        <translation>Befund notieren</translation>
    </message>
    <message>
        <source>What somebody found at the airframe and did there. It stays in the file with their name; a later finding stands beside it. It closes no question and changes no band.</source>
        <translation>Was jemand am Flugzeug gefunden und dort getan hat. Es bleibt mit Namen in der Datei; ein späterer Befund steht daneben. Er schließt keine Frage und ändert kein Band.</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Frage stellen</translation>
    </message>
    <message>
        <source>It stays open, and every page says that a question is open, until a named person says what was found and done.</source>
        <translation>Die Frage bleibt offen, und jede Seite sagt, dass eine Frage offen ist, bis jemand namentlich sagt, was gefunden und getan wurde.</translation>
    </message>
    <message>
        <source>Wh&amp;ere</source>
        <translation>W&amp;o</translation>
    </message>
    <message>
        <source>The whole airframe</source>
        <translation>Das ganze Flugzeug</translation>
    </message>
    <message>
        <source>&amp;Day it was found</source>
        <translation>&amp;Tag des Befunds</translation>
    </message>
    <message>
        <source>&amp;Who found it</source>
        <translation>&amp;Wer es gefunden hat</translation>
    </message>
    <message>
        <source>&amp;Who asks</source>
        <translation>&amp;Wer fragt</translation>
    </message>
    <message>
        <source>Choose a name</source>
        <translation>Einen Namen wählen</translation>
    </message>
    <message>
        <source>Not in the list? Set up, People, adds a name.</source>
        <translation>Nicht in der Liste? Unter Einrichten, Personen einen Namen hinzufügen.</translation>
    </message>
    <message>
        <source>What was &amp;found</source>
        <translation>Was &amp;gefunden wurde</translation>
    </message>
    <message>
        <source>What was do&amp;ne</source>
        <translation>Was get&amp;an wurde</translation>
    </message>
    <message>
        <source>Where nothing was done, say so.</source>
        <translation>Wo nichts getan wurde, das sagen.</translation>
    </message>
    <message>
        <source>What is to be &amp;found out</source>
        <translation>Was &amp;herauszufinden ist</translation>
    </message>
    <message>
        <source>About: %1</source>
        <comment>a reading</comment>
        <translation>Zu: %1</translation>
    </message>
    <message>
        <source>About the reading %1 of %2.</source>
        <comment>interval, day</comment>
        <translation>Zur Messung %1 vom %2.</translation>
    </message>
    <message>
        <source>Keep the finding (Ctrl+Enter)</source>
        <translation>Befund festhalten (Strg+Enter)</translation>
    </message>
    <message>
        <source>Open the question (Ctrl+Enter)</source>
        <translation>Frage eröffnen (Strg+Enter)</translation>
    </message>
    <message>
        <source>Back (Esc)</source>
        <translation>Zurück (Esc)</translation>
    </message>
    <message>
        <source>What is typed stays here while you look around.</source>
        <translation>Was eingegeben ist, bleibt hier, während Sie sich umsehen.</translation>
    </message>
    <message>
        <source>Choose who found it: a finding has a name.</source>
        <translation>Wählen, wer es gefunden hat: Ein Befund hat einen Namen.</translation>
    </message>
    <message>
        <source>Choose who asks: a question has a name.</source>
        <translation>Wählen, wer fragt: Eine Frage hat einen Namen.</translation>
    </message>
    <message>
        <source>This day lies ahead. Type today or an earlier day.</source>
        <translation>Dieser Tag kommt erst noch. Den heutigen oder einen früheren Tag eingeben.</translation>
    </message>
    <message>
        <source>Say what was found.</source>
        <translation>Angeben, was gefunden wurde.</translation>
    </message>
    <message>
        <source>Say what was done; where nothing was, write that.</source>
        <translation>Angeben, was getan wurde; wo nichts, das schreiben.</translation>
    </message>
    <message>
        <source>Say what is to be found out.</source>
        <translation>Angeben, was herauszufinden ist.</translation>
    </message>
    <message>
        <source>Not kept yet. What is lacking stands beside its field.</source>
        <translation>Noch nicht festgehalten. Was fehlt, steht neben seinem Feld.</translation>
    </message>
    <message>
        <source>Kept: what %1 found on the airframe on %2.</source>
        <comment>person, day</comment>
        <translation>Festgehalten: was %1 am %2 am Flugzeug gefunden hat.</translation>
    </message>
    <message>
        <source>Kept: what %1 found on %2, %3.</source>
        <comment>person, coupling, day</comment>
        <translation>Festgehalten: was %1 an %2 gefunden hat, %3.</translation>
    </message>
    <message>
        <source>Open now: what %1 asks about the whole airframe. Ctrl+6 shows it.</source>
        <translation>Jetzt offen: was %1 zum ganzen Flugzeug fragt. Strg+6 zeigt es.</translation>
    </message>
    <message>
        <source>Open now: what %1 asks about %2. Ctrl+6 shows it.</source>
        <comment>person, coupling</comment>
        <translation>Jetzt offen: was %1 zu %2 fragt. Strg+6 zeigt es.</translation>
    </message>
    <message>
        <source>A finding or a question is typed and not kept. It is lost when this file is left now.</source>
        <translation>Ein Befund oder eine Frage ist eingegeben und nicht gespeichert. Das geht verloren, wenn diese Datei jetzt verlassen wird.</translation>
    </message>
</context>
<context>
    <name>StopWords</name>
    <message>
        <source>%1: %2 lay outside the band. %3</source>
        <comment>coupling, reading, what became of it</comment>
        <translation>%1: %2 lag außerhalb des Bandes. %3</translation>
    </message>
    <message>
        <source>It was struck by %1: “%2”.</source>
        <comment>person, reason</comment>
        <translation>Gestrichen von %1: „%2“.</translation>
    </message>
    <message>
        <source>It was corrected to %1 by %2: “%3”.</source>
        <comment>reading, person, reason</comment>
        <translation>Auf %1 berichtigt von %2: „%3“.</translation>
    </message>
    <message>
        <source>The stop stays until a named person has said what was found and done (Ctrl+6).</source>
        <translation>Der Stopp bleibt, bis jemand namentlich gesagt hat, was gefunden und getan wurde (Strg+6).</translation>
    </message>
    <message>
        <source>Open since %1.</source>
        <translation>Offen seit dem %1.</translation>
    </message>
    <message>
        <source>Tag the cockpit. Photograph the joint as found.</source>
        <translation>Warnschild ins Cockpit. Verbindung fotografieren, wie vorgefunden.</translation>
    </message>
    <message>
        <source>Found on %1, as the paper says. Say in the questions (Ctrl+6) who resolved it, what was found and what was done.</source>
        <translation>Gefunden am %1, wie das Papier sagt. In den Fragen (Strg+6) sagen, wer es geklärt hat, was gefunden und was getan wurde.</translation>
    </message>
    <message>
        <source>a person entitled to decide</source>
        <translation>eine dazu berechtigte Person</translation>
    </message>
    <message>
        <source>If nobody has resolved it, the stop holds today too: leave it as it is, and call %1.</source>
        <translation>Hat es niemand geklärt, gilt der Stopp auch heute: stehen lassen, wie es ist, und anrufen: %1.</translation>
    </message>
    <message>
        <source>If nobody has resolved it, the stop holds today too: leave it as it is, and call %1 (%2).</source>
        <translation>Hat es niemand geklärt, gilt der Stopp auch heute: stehen lassen, wie es ist, und anrufen: %1 (%2).</translation>
    </message>
    <message>
        <source>%1: in the control check “no” was answered at %2, and nobody has said yet what it was.</source>
        <translation>%1: in der Ruderprobe wurde „nein“ geantwortet (%2), und noch niemand hat gesagt, was es war.</translation>
    </message>
    <message>
        <source>%1: in the control check %2 did not move, and nobody has said yet what it was.</source>
        <translation>%1: in der Ruderprobe hat sich das Ruder nicht bewegt (%2), und noch niemand hat gesagt, was es war.</translation>
    </message>
    <message>
        <source>%1: in the control check %2 moved the wrong way, and nobody has said yet what it was.</source>
        <translation>%1: in der Ruderprobe hat sich das Ruder falsch herum bewegt (%2), und noch niemand hat gesagt, was es war.</translation>
    </message>
    <message>
        <source>Was the “no” a slip of the key? Close its question (Ctrl+6) with a name and “slip of the key” as what was found. The joint then starts again from the look.</source>
        <translation>War das „Nein“ ein Versehen? Seine Frage schließen (Strg+6), mit einem Namen und „falsche Taste“ als dem, was gefunden wurde. Die Verbindung beginnt dann wieder bei der Sichtkontrolle.</translation>
    </message>
    <message>
        <source>The joint %1 is stopped. Do not move the controls for %2 until its question is closed (Ctrl+6).</source>
        <translation>Stopp an der Verbindung %1. Die Steuerung für %2 nicht bewegen, bis die Frage dazu geschlossen ist (Strg+6).</translation>
    </message>
    <message>
        <source>Other surfaces can be tried.</source>
        <translation>Andere Ruder können probiert werden.</translation>
    </message>
</context>
<context>
    <name>StoredWords</name>
    <message>
        <source>leaves</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>Prüfstifte</translation>
    </message>
    <message>
        <source>taper gauge</source>
        <translation>Messkeil</translation>
    </message>
    <message>
        <source>go/no-go block</source>
        <translation>Grenzlehre</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>layout A</source>
        <translation>Anordnung A</translation>
    </message>
    <message>
        <source>layout B</source>
        <translation>Anordnung B</translation>
    </message>
    <message>
        <source>layout C</source>
        <translation>Anordnung C</translation>
    </message>
    <message>
        <source>ball joint with sleeve</source>
        <translation>Kugelanschluss mit Hülse</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Prüfstift</translation>
    </message>
    <message>
        <source>ball joint with sleeve and pin</source>
        <translation>Kugelanschluss mit Hülse und Nadel</translation>
    </message>
    <message>
        <source>connects by itself</source>
        <translation>schließt selbsttätig an</translation>
    </message>
    <message>
        <source>water ballast</source>
        <translation>Wasserballast</translation>
    </message>
    <message>
        <source>another</source>
        <translation>andere</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht probiert</translation>
    </message>
    <message>
        <source>felt</source>
        <translation>gefühlt</translation>
    </message>
    <message>
        <source>the first</source>
        <translation>die erste</translation>
    </message>
    <message>
        <source>the second</source>
        <translation>die zweite</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>neu eingebaut</translation>
    </message>
    <message>
        <source>part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>gereinigt</translation>
    </message>
    <message>
        <source>greased</source>
        <translation>gefettet</translation>
    </message>
    <message>
        <source>annual</source>
        <translation>Jahresnachprüfung</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation>abgerüstet</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>rigging</source>
        <translation>Aufrüsten</translation>
    </message>
    <message>
        <source>gone through again without being taken apart</source>
        <translation>noch einmal durchgegangen, ohne abzurüsten</translation>
    </message>
    <message>
        <source>ball in the socket</source>
        <translation>Kugel in der Pfanne</translation>
    </message>
    <message>
        <source>plunger home</source>
        <translation>Riegel ganz eingerastet</translation>
    </message>
    <message>
        <source>sleeve at its stop</source>
        <translation>Hülse am Anschlag</translation>
    </message>
    <message>
        <source>safety pin through</source>
        <translation>Sicherungsnadel durchgesteckt</translation>
    </message>
    <message>
        <source>engaged all the way</source>
        <translation>ganz im Eingriff</translation>
    </message>
    <message>
        <source>no step at the joint</source>
        <translation>keine Stufe an der Verbindung</translation>
    </message>
    <message>
        <source>line connected</source>
        <translation>Leitung angeschlossen</translation>
    </message>
    <message>
        <source>connected</source>
        <translation>angeschlossen</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zugprobe</translation>
    </message>
    <message>
        <source>secured</source>
        <translation>gesichert</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>cannot see</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>several leaves together</source>
        <translation>mehrere Blätter zusammen</translation>
    </message>
    <message>
        <source>no leaf enters</source>
        <translation>kein Blatt geht hinein</translation>
    </message>
    <message>
        <source>the thickest leaf was loose</source>
        <translation>das dickste Blatt war lose</translation>
    </message>
    <message>
        <source>from a table</source>
        <translation>aus einer Tabelle</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>verriegelt</translation>
    </message>
    <message>
        <source>part-seated</source>
        <translation>halb eingerastet</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Grundreihe</translation>
    </message>
    <message>
        <source>part-seated demonstration</source>
        <translation>Vorführung halb eingerastet</translation>
    </message>
    <message>
        <source>asked in words</source>
        <translation>in Worten gestellt</translation>
    </message>
    <message>
        <source>another person took over</source>
        <translation>eine andere Person hat übernommen</translation>
    </message>
    <message>
        <source>nothing was entered for long</source>
        <translation>lange wurde nichts eingegeben</translation>
    </message>
    <message>
        <source>the program was closed</source>
        <translation>das Programm wurde geschlossen</translation>
    </message>
    <message>
        <source>a question was closed</source>
        <translation>eine Frage wurde geschlossen</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>closed with open items</source>
        <translation>mit offenen Punkten abgeschlossen</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>noch kein Band</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>near the edge</source>
        <translation>nahe am Rand</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>im Band</translation>
    </message>
    <message>
        <source>too few readings</source>
        <translation>zu wenige Messungen</translation>
    </message>
    <message>
        <source>all readings are open at the top</source>
        <translation>alle Messungen sind nach oben offen</translation>
    </message>
    <message>
        <source>gauge in doubt</source>
        <translation>Lehre im Zweifel</translation>
    </message>
    <message>
        <source>the gap is no witness</source>
        <translation>der Spalt ist kein Zeuge</translation>
    </message>
    <message>
        <source>reaches beyond the band</source>
        <translation>reicht über das Band hinaus</translation>
    </message>
    <message>
        <source>ball not seen</source>
        <translation>Kugel nicht gesehen</translation>
    </message>
    <message>
        <source>plunger not seen</source>
        <translation>Riegel nicht gesehen</translation>
    </message>
    <message>
        <source>sleeve not seen</source>
        <translation>Hülse nicht gesehen</translation>
    </message>
    <message>
        <source>safety pin not seen</source>
        <translation>Sicherungsnadel nicht gesehen</translation>
    </message>
    <message>
        <source>joint not seen</source>
        <translation>Verbindung nicht gesehen</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>weder noch</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>never shown part-seated</source>
        <translation>nie halb eingerastet gezeigt</translation>
    </message>
    <message>
        <source>shown part-seated too rarely</source>
        <translation>zu selten halb eingerastet gezeigt</translation>
    </message>
    <message>
        <source>a good witness</source>
        <translation>ein guter Zeuge</translation>
    </message>
    <message>
        <source>a weak witness</source>
        <translation>ein schwacher Zeuge</translation>
    </message>
    <message>
        <source>aileron</source>
        <translation>Querruder</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>flap</source>
        <translation>Wölbklappe</translation>
    </message>
    <message>
        <source>airbrake</source>
        <translation>Bremsklappe</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>Trimmung</translation>
    </message>
    <message>
        <source>water dump</source>
        <translation>Wasserablass</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>held one way</source>
        <translation>gehalten, in eine Richtung</translation>
    </message>
    <message>
        <source>held the other way</source>
        <translation>gehalten, in die andere Richtung</translation>
    </message>
    <message>
        <source>sense</source>
        <translation>Richtung des Ausschlags</translation>
    </message>
    <message>
        <source>full travel</source>
        <translation>voller Weg</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>neutral</translation>
    </message>
    <message>
        <source>free play</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>moves freely</source>
        <translation>bewegt sich frei</translation>
    </message>
    <message>
        <source>every notch</source>
        <translation>jede Raste</translation>
    </message>
    <message>
        <source>holds its setting</source>
        <translation>hält die Einstellung</translation>
    </message>
    <message>
        <source>called one way</source>
        <translation>angesagt, in eine Richtung</translation>
    </message>
    <message>
        <source>called the other way</source>
        <translation>angesagt, in die andere Richtung</translation>
    </message>
    <message>
        <source>up</source>
        <translation>nach oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>nach unten</translation>
    </message>
    <message>
        <source>out</source>
        <translation>ausgefahren</translation>
    </message>
    <message>
        <source>in</source>
        <translation>eingefahren</translation>
    </message>
    <message>
        <source>opens</source>
        <translation>öffnet</translation>
    </message>
    <message>
        <source>shuts</source>
        <translation>schließt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>cleaned for the season</source>
        <translation>für die Saison gereinigt</translation>
    </message>
    <message>
        <source>greased for the season</source>
        <translation>für die Saison gefettet</translation>
    </message>
    <message>
        <source>leaves checked for the season</source>
        <translation>Blätter für die Saison geprüft</translation>
    </message>
    <message>
        <source>note read</source>
        <translation>Notiz gelesen</translation>
    </message>
    <message>
        <source>reading outside its band</source>
        <translation>Messung außerhalb des Bandes</translation>
    </message>
    <message>
        <source>answered with no</source>
        <translation>mit „nein“ beantwortet</translation>
    </message>
    <message>
        <source>two readings disagree</source>
        <translation>zwei Messungen widersprechen sich</translation>
    </message>
    <message>
        <source>left and right look swapped</source>
        <translation>links und rechts anscheinend vertauscht</translation>
    </message>
    <message>
        <source>surface wrong or not seen</source>
        <translation>Ruder falsch oder nicht gesehen</translation>
    </message>
    <message>
        <source>band in doubt</source>
        <translation>Band im Zweifel</translation>
    </message>
    <message>
        <source>shown part-seated on purpose</source>
        <translation>absichtlich halb eingerastet gezeigt</translation>
    </message>
    <message>
        <source>low tailplane</source>
        <translation>Höhenleitwerk unten</translation>
    </message>
    <message>
        <source>T-tail</source>
        <translation>T-Leitwerk</translation>
    </message>
    <message>
        <source>V-tail</source>
        <translation>V-Leitwerk</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>access</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>locked or not</source>
        <translation>verriegelt oder nicht</translation>
    </message>
    <message>
        <source>calls and order</source>
        <translation>Ansagen und Reihenfolge</translation>
    </message>
    <message>
        <source>not secured</source>
        <translation>nicht gesichert</translation>
    </message>
    <message>
        <source>not connected</source>
        <translation>nicht angeschlossen</translation>
    </message>
    <message>
        <source>not locked</source>
        <translation>nicht verriegelt</translation>
    </message>
    <message>
        <source>call</source>
        <translation>Ansage</translation>
    </message>
    <message>
        <source>order of rigging</source>
        <translation>Reihenfolge beim Aufrüsten</translation>
    </message>
    <message>
        <source>whom to call</source>
        <translation>wen anrufen</translation>
    </message>
    <message>
        <source>when to stop</source>
        <translation>wann aufhören</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>closings of a record</source>
        <translation>Abschlüsse eines Protokolls</translation>
    </message>
    <message>
        <source>answers to a question</source>
        <translation>Antworten auf eine Frage</translation>
    </message>
    <message>
        <source>versions of one thing</source>
        <translation>Fassungen einer Sache</translation>
    </message>
    <message>
        <source>corrections of a reading</source>
        <translation>Berichtigungen einer Messung</translation>
    </message>
    <message>
        <source>rigging records</source>
        <translation>Aufrüstprotokolle</translation>
    </message>
    <message>
        <source>names</source>
        <translation>Namen</translation>
    </message>
    <message>
        <source>two things</source>
        <translation>zwei Sachen</translation>
    </message>
    <message>
        <source>one and the same</source>
        <translation>ein und dieselbe Sache</translation>
    </message>
    <message>
        <source>first person</source>
        <translation>erste Person</translation>
    </message>
    <message>
        <source>second person</source>
        <translation>zweite Person</translation>
    </message>
    <message>
        <source>with the coupling itself</source>
        <translation>mit dem Anschluss selbst</translation>
    </message>
    <message>
        <source>ball joint with safety pin</source>
        <translation>Kugelanschluss mit Sicherungsnadel</translation>
    </message>
    <message>
        <source>by the person at work</source>
        <translation>von der Person bei der Arbeit</translation>
    </message>
    <message>
        <source>role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>telephone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>type</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Werknummer</translation>
    </message>
    <message>
        <source>jurisdiction</source>
        <translation>geltendes Recht</translation>
    </message>
    <message>
        <source>manuals and directives</source>
        <translation>Handbücher und Anweisungen</translation>
    </message>
    <message>
        <source>annual due</source>
        <translation>Jahresnachprüfung fällig</translation>
    </message>
    <message>
        <source>telephone of whom to call</source>
        <translation>Telefon der Person, die man anruft</translation>
    </message>
    <message>
        <source>riggings before this file</source>
        <translation>Aufrüstvorgänge vor dieser Datei</translation>
    </message>
    <message>
        <source>span in centimetres</source>
        <translation>Spannweite in Zentimetern</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>Leitwerk</translation>
    </message>
    <message>
        <source>wing panels</source>
        <translation>Flügelteile</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Lehre</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>how it was checked</source>
        <translation>wie geprüft wurde</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>readings in doubt from</source>
        <translation>Messungen im Zweifel ab</translation>
    </message>
    <message>
        <source>known gap</source>
        <translation>bekannter Spalt</translation>
    </message>
    <message>
        <source>enters the known gap</source>
        <translation>geht in den bekannten Spalt hinein</translation>
    </message>
    <message>
        <source>does not enter the known gap</source>
        <translation>geht in den bekannten Spalt nicht hinein</translation>
    </message>
    <message>
        <source>airframe</source>
        <translation>Flugzeug</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Steuerkreis</translation>
    </message>
    <message>
        <source>circuit in words</source>
        <translation>Steuerkreis in Worten</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>place on the plan, across</source>
        <translation>Ort in der Draufsicht, quer</translation>
    </message>
    <message>
        <source>place on the plan, along</source>
        <translation>Ort in der Draufsicht, längs</translation>
    </message>
    <message>
        <source>seen from</source>
        <translation>gesehen von</translation>
    </message>
    <message>
        <source>mirror from</source>
        <translation>Spiegel von</translation>
    </message>
    <message>
        <source>place of the leaf</source>
        <translation>Platz des Blattes</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>Anordnung</translation>
    </message>
    <message>
        <source>a gap to measure</source>
        <translation>Spalt zu messen</translation>
    </message>
    <message>
        <source>something to pull</source>
        <translation>etwas für die Zugprobe</translation>
    </message>
    <message>
        <source>something to secure</source>
        <translation>etwas zu sichern</translation>
    </message>
    <message>
        <source>rigging order</source>
        <translation>Reihenfolge beim Aufrüsten</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>begins</source>
        <translation>beginnt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>getan</translation>
    </message>
    <message>
        <source>came from</source>
        <translation>stammt aus</translation>
    </message>
    <message>
        <source>rigging leader</source>
        <translation>Leitung des Aufrüstens</translation>
    </message>
    <message>
        <source>begun on</source>
        <translation>begonnen am</translation>
    </message>
    <message>
        <source>temperature, °C</source>
        <translation>Temperatur, °C</translation>
    </message>
    <message>
        <source>typed in by</source>
        <translation>eingegeben von</translation>
    </message>
    <message>
        <source>rigging record</source>
        <translation>Aufrüstprotokoll</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>answered on</source>
        <translation>beantwortet am</translation>
    </message>
    <message>
        <source>copied by</source>
        <translation>abgeschrieben von</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>Einbau</translation>
    </message>
    <message>
        <source>how it was read</source>
        <translation>wie gemessen wurde</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>corrects</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>version of the method</source>
        <translation>Fassung des Verfahrens</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>chance to miss it</source>
        <translation>Wahrscheinlichkeit, es zu übersehen</translation>
    </message>
    <message>
        <source>inner edge below, mm</source>
        <translation>innerer Rand unten, mm</translation>
    </message>
    <message>
        <source>inner edge above, mm</source>
        <translation>innerer Rand oben, mm</translation>
    </message>
    <message>
        <source>outer edge below, mm</source>
        <translation>äußerer Rand unten, mm</translation>
    </message>
    <message>
        <source>outer edge above, mm</source>
        <translation>äußerer Rand oben, mm</translation>
    </message>
    <message>
        <source>middle, mm</source>
        <translation>Mitte, mm</translation>
    </message>
    <message>
        <source>scatter, mm</source>
        <translation>Streuung, mm</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>scatter taken as the largest</source>
        <translation>Streuung als größte angenommen</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>how it was closed</source>
        <translation>wie es abgeschlossen wurde</translation>
    </message>
    <message>
        <source>play along the rod</source>
        <translation>Spiel längs der Stange</translation>
    </message>
    <message>
        <source>play along the rod, measured</source>
        <translation>Spiel längs der Stange, gemessen</translation>
    </message>
    <message>
        <source>play across the rod</source>
        <translation>Spiel quer zur Stange</translation>
    </message>
    <message>
        <source>play across the rod, measured</source>
        <translation>Spiel quer zur Stange, gemessen</translation>
    </message>
    <message>
        <source>order of the control check</source>
        <translation>Reihenfolge der Ruderprobe</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>distance of the ruler</source>
        <translation>Abstand des Lineals</translation>
    </message>
    <message>
        <source>up, from the manual</source>
        <translation>nach oben, aus dem Handbuch</translation>
    </message>
    <message>
        <source>up, tolerance</source>
        <translation>nach oben, Toleranz</translation>
    </message>
    <message>
        <source>down, from the manual</source>
        <translation>nach unten, aus dem Handbuch</translation>
    </message>
    <message>
        <source>down, tolerance</source>
        <translation>nach unten, Toleranz</translation>
    </message>
    <message>
        <source>most play of the surface</source>
        <translation>größtes Ruderspiel</translation>
    </message>
    <message>
        <source>place in the manual</source>
        <translation>Stelle im Handbuch</translation>
    </message>
    <message>
        <source>surface</source>
        <translation>Ruder</translation>
    </message>
    <message>
        <source>in the cockpit</source>
        <translation>im Cockpit</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>question of the look</source>
        <translation>Frage der Sichtkontrolle</translation>
    </message>
    <message>
        <source>question of the control check</source>
        <translation>Frage der Ruderprobe</translation>
    </message>
    <message>
        <source>in words</source>
        <translation>in Worten</translation>
    </message>
    <message>
        <source>shows</source>
        <translation>zeigt</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>asks</source>
        <translation>fragt nach</translation>
    </message>
    <message>
        <source>round of practice</source>
        <translation>Übungsrunde</translation>
    </message>
    <message>
        <source>what was shown</source>
        <translation>was gezeigt wurde</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>mirror</source>
        <translation>Spiegel</translation>
    </message>
    <message>
        <source>torch</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>said</source>
        <translation>gesagt</translation>
    </message>
    <message>
        <source>felt certain</source>
        <translation>war sich gewiss</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>gefragt nach</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>gefragt</translation>
    </message>
    <message>
        <source>learner</source>
        <translation>Lernender</translation>
    </message>
    <message>
        <source>mentor</source>
        <translation>Betreuer</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>bestätigt von</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>months without rigging</source>
        <translation>Monate ohne Aufrüsten</translation>
    </message>
    <message>
        <source>riggings under supervision then</source>
        <translation>betreute Aufrüstvorgänge damals</translation>
    </message>
    <message>
        <source>not practised then</source>
        <translation>damals nicht geübt</translation>
    </message>
    <message>
        <source>missed then</source>
        <translation>damals verfehlt</translation>
    </message>
    <message>
        <source>repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>crossed study</source>
        <translation>Kreuzversuch</translation>
    </message>
    <message>
        <source>place in the study</source>
        <translation>Platz im Kreuzversuch</translation>
    </message>
    <message>
        <source>may be told to others</source>
        <translation>darf anderen gesagt werden</translation>
    </message>
    <message>
        <source>rigging under supervision</source>
        <translation>betreutes Aufrüsten</translation>
    </message>
    <message>
        <source>reading in practice</source>
        <translation>Messung in der Übung</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>version of a person</source>
        <translation>Fassung einer Person</translation>
    </message>
    <message>
        <source>digest of what it reads since then</source>
        <translation>Prüfsumme des Wortlauts seither</translation>
    </message>
    <message>
        <source>enters</source>
        <translation>geht hinein</translation>
    </message>
    <message>
        <source>does not enter</source>
        <translation>geht nicht hinein</translation>
    </message>
    <message>
        <source>measured at</source>
        <translation>gemessen am</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>shown at the time</source>
        <translation>damals gezeigt</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>an imported table</source>
        <translation>eine importierte Tabelle</translation>
    </message>
    <message>
        <source>locks with even force</source>
        <translation>verriegelt mit gleicher Kraft</translation>
    </message>
    <message>
        <source>both open, both shut</source>
        <translation>beide offen, beide zu</translation>
    </message>
    <message>
        <source>couplings looked at anew for the season</source>
        <translation>Anschlüsse für die Saison neu angesehen</translation>
    </message>
    <message>
        <source>tools counted back out</source>
        <translation>Werkzeug gezählt und wieder heraus</translation>
    </message>
    <message>
        <source>hatches closed and taped</source>
        <translation>Handlöcher geschlossen und abgeklebt</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>the rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>none felt</source>
        <translation>keines gefühlt</translation>
    </message>
    <message>
        <source>facts in doubt</source>
        <translation>Einträge im Zweifel</translation>
    </message>
</context>
<context>
    <name>StudyWords</name>
    <message>
        <source>Practise to measure</source>
        <translation>Messen üben</translation>
    </message>
    <message>
        <source>Read the same locked joint several times, each time taking the leaf out and beginning anew. Earlier readings are not shown. Only on a joint that was looked at and found locked. What is read here makes no band and is held against none; but a figure far from the others is a stop, practice or not. Afterwards look at the joint and pull it again, and try its surfaces again.</source>
        <translation>Dieselbe verriegelte Verbindung mehrmals messen, jedes Mal das Blatt herausnehmen und neu beginnen. Frühere Messungen werden nicht gezeigt. Nur an einer Verbindung, die angesehen und verriegelt gefunden wurde. Was hier gemessen wird, bildet kein Band und wird mit keinem verglichen; aber eine Zahl weit weg von den anderen ist ein Stopp, Übung oder nicht. Danach die Verbindung ansehen, die Zugprobe wiederholen und ihre Ruder noch einmal probieren.</translation>
    </message>
    <message>
        <source>Reading: %1</source>
        <comment>a coupling</comment>
        <translation>Messung: %1</translation>
    </message>
    <message>
        <source>Measured &amp;with</source>
        <translation>W&amp;omit gemessen</translation>
    </message>
    <message>
        <source>Choose a gauge</source>
        <translation>Lehre wählen</translation>
    </message>
    <message>
        <source>Choose first what you measure with.</source>
        <translation>Zuerst wählen, womit Sie messen.</translation>
    </message>
    <message>
        <source>This coupling has no gap to read. Choose another one at the left.</source>
        <translation>Dieser Anschluss hat keinen Spalt zu messen. Links einen anderen wählen.</translation>
    </message>
    <message numerus="yes">
        <source>Kept. Own practice readings so far: %n</source>
        <translation>
            <numerusform>Festgehalten. Eigene Übungsmessungen bisher: %n</numerusform>
            <numerusform>Festgehalten. Eigene Übungsmessungen bisher: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept: reading %1 of %2, by %3.</source>
        <comment>numbers, a person</comment>
        <translation>Festgehalten: Messung %1 von %2, von %3.</translation>
    </message>
    <message>
        <source>Choose a reading of yours</source>
        <translation>Eine Ihrer Messungen wählen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a coupling, a time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>S&amp;how my figures</source>
        <translation>Meine Za&amp;hlen zeigen</translation>
    </message>
    <message>
        <source>&amp;Hide my figures</source>
        <translation>Meine Za&amp;hlen verbergen</translation>
    </message>
    <message>
        <source>Private to %1: in no report and no table, unless the box is ticked.</source>
        <comment>a person</comment>
        <translation>Nur für %1: in keinem Bericht und keiner Tabelle, außer das Kästchen ist angehakt.</translation>
    </message>
    <message>
        <source>M&amp;y figures may be told to others</source>
        <translation>Andere dürfen meine Zahlen &amp;sehen</translation>
    </message>
    <message>
        <source>No practice reading yet.</source>
        <translation>Noch keine Übungsmessung.</translation>
    </message>
    <message numerus="yes">
        <source>Own practice readings: %n</source>
        <translation>
            <numerusform>Eigene Übungsmessungen: %n</numerusform>
            <numerusform>Eigene Übungsmessungen: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>How alike you read again can be told from the second reading of one joint on.</source>
        <translation>Wie gleichmäßig Sie messen, lässt sich ab der zweiten Messung derselben Verbindung sagen.</translation>
    </message>
    <message>
        <source>Your repeated readings of one joint scatter by %1 mm (standard deviation; 95 % interval %2 to %3).</source>
        <translation>Ihre wiederholten Messungen einer Verbindung streuen um %1 mm (Standardabweichung; 95-%-Intervall %2 bis %3).</translation>
    </message>
    <message>
        <source>The step of the leaves alone scatters more than that: a finer set would tell more.</source>
        <translation>Schon die Stufung der Blätter streut mehr als das: ein feinerer Satz würde mehr sagen.</translation>
    </message>
    <message>
        <source>You read wider than the others by %1 mm (95 % interval %2 to %3).</source>
        <translation>Sie messen um %1 mm höher als die anderen (95-%-Intervall %2 bis %3).</translation>
    </message>
    <message>
        <source>You read narrower than the others by %1 mm (95 % interval %2 to %3).</source>
        <translation>Sie messen um %1 mm tiefer als die anderen (95-%-Intervall %2 bis %3).</translation>
    </message>
    <message>
        <source>No difference from the others is shown; it may be anything from %1 to %2 mm (95 % interval).</source>
        <translation>Ein Unterschied zu den anderen zeigt sich nicht; er kann alles von %1 bis %2 mm sein (95-%-Intervall).</translation>
    </message>
    <message>
        <source>How far you read from the others can be told from ten readings on, and where others have read the same joints.</source>
        <translation>Wie weit Ihre Messungen von denen der anderen abliegen, lässt sich ab zehn Messungen sagen, und dort, wo andere dieselben Verbindungen gemessen haben.</translation>
    </message>
    <message>
        <source>Crossed study</source>
        <translation>Kreuzversuch</translation>
    </message>
    <message>
        <source>Several people read several couplings several times, in an order drawn by lot, and nobody sees earlier readings. The joints stay connected throughout. It tells how alike people measure here, and counts for nothing else. It can be left in the middle and gone on with here later. Only on joints that were looked at and found locked; afterwards look at each and pull it again, and try its surfaces again.</source>
        <translation>Mehrere Personen messen mehrere Anschlüsse mehrmals, in ausgeloster Reihenfolge, und niemand sieht frühere Messungen. Die Verbindungen bleiben die ganze Zeit angeschlossen. Der Versuch sagt, wie einheitlich hier gemessen wird, und zählt für nichts anderes. Er kann mittendrin liegen bleiben und hier später fortgesetzt werden. Nur an Verbindungen, die angesehen und verriegelt gefunden wurden; danach jede ansehen, die Zugprobe wiederholen und ihre Ruder noch einmal probieren.</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>R&amp;eadings of each coupling by each person</source>
        <translation>Messungen &amp;je Anschluss und Person</translation>
    </message>
    <message>
        <source>&amp;Begin the study</source>
        <translation>&amp;Kreuzversuch beginnen</translation>
    </message>
    <message>
        <source>&amp;Begin another study</source>
        <translation>Neuen &amp;Kreuzversuch beginnen</translation>
    </message>
    <message>
        <source>Tick at least two couplings and two people.</source>
        <translation>Mindestens zwei Anschlüsse und zwei Personen anhaken.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) in all.</source>
        <translation>
            <numerusform>%n Messung insgesamt.</numerusform>
            <numerusform>%n Messungen insgesamt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading %1 of %2</source>
        <translation>Messung %1 von %2</translation>
    </message>
    <message>
        <source>Next: %1 reads %2</source>
        <comment>a person, a coupling</comment>
        <translation>Als Nächstes: %1 misst %2</translation>
    </message>
    <message>
        <source>Begin anew with the thinnest likely leaf. Do not look at what stood there before.</source>
        <translation>Mit dem dünnsten wahrscheinlichen Blatt neu beginnen. Nicht ansehen, was vorher dastand.</translation>
    </message>
    <message>
        <source>Hand over to %1. Nothing is taken before that.</source>
        <comment>a person</comment>
        <translation>An %1 übergeben. Vorher wird nichts angenommen.</translation>
    </message>
    <message>
        <source>Alt+I, or a click, by whoever reads next: no figure and no Enter goes past this.</source>
        <translation>Alt+I oder ein Klick, von der Person, die als Nächstes misst: keine Zahl und kein Enter kommt daran vorbei.</translation>
    </message>
    <message>
        <source>&amp;I am %1 and read now</source>
        <comment>a person</comment>
        <translation>Ich b&amp;in %1 und messe jetzt</translation>
    </message>
    <message>
        <source>&amp;Take the last reading back: %1, %2 …</source>
        <comment>a person, a coupling</comment>
        <translation>Le&amp;tzte Messung zurücknehmen: %1, %2 …</translation>
    </message>
    <message>
        <source>Leave it, &amp;go on later</source>
        <translation>Lie&amp;gen lassen, später fortsetzen</translation>
    </message>
    <message>
        <source>The study is left at %1 of %2 readings. They are kept, and it is gone on with here at any time, also after the program was closed, as long as no joint of it was opened. Once one was, begin another study.</source>
        <translation>Der Versuch liegt bei %1 von %2 Messungen. Sie bleiben erhalten, und er wird hier jederzeit fortgesetzt, auch nachdem das Programm geschlossen war, solange keine Verbindung darin geöffnet wurde. Ist eine geöffnet worden, einen neuen Versuch beginnen.</translation>
    </message>
    <message>
        <source>&amp;Go on with the study</source>
        <translation>An&amp;gefangenen Versuch fortsetzen</translation>
    </message>
    <message>
        <source>The study is complete.</source>
        <translation>Der Versuch ist vollständig.</translation>
    </message>
    <message>
        <source>About 95 of 100 pairs of readings of one joint would differ by no more than about %1 mm when one person reads, and %2 mm when two do.</source>
        <translation>Etwa 95 von 100 Paaren von Messungen einer Verbindung würden sich um nicht mehr als etwa %1 mm unterscheiden, wenn eine Person misst, und um %2 mm, wenn zwei messen.</translation>
    </message>
    <message numerus="yes">
        <source>%1 With %n people the second figure is rough.</source>
        <translation>
            <numerusform>%1 Bei %n Person ist die zweite Zahl grob.</numerusform>
            <numerusform>%1 Bei %n Personen ist die zweite Zahl grob.</numerusform>
        </translation>
    </message>
    <message>
        <source>A reading has no thicker leaf that refused, so its middle is not known, and the study tells nothing. Begin another one with thicker leaves.</source>
        <translation>Bei einer Messung gibt es kein dickeres Blatt, das nicht hineinging, ihre Mitte ist also nicht bekannt, und der Versuch sagt nichts. Einen neuen mit dickeren Blättern beginnen.</translation>
    </message>
    <message>
        <source>These readings do not tell how alike people measure.</source>
        <translation>Diese Messungen sagen nicht, wie einheitlich gemessen wird.</translation>
    </message>
    <message>
        <source>From these readings</source>
        <translation>Aus diesen Messungen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Standard deviation, one person reading again</source>
        <translation>Standardabweichung, eine Person misst wiederholt</translation>
    </message>
    <message>
        <source>Standard deviation, any person reading</source>
        <translation>Standardabweichung, irgendeine Person misst</translation>
    </message>
    <message>
        <source>Standard deviation from person to person</source>
        <translation>Standardabweichung von Person zu Person</translation>
    </message>
    <message>
        <source>Standard deviation, person by coupling</source>
        <translation>Standardabweichung, Person je Anschluss</translation>
    </message>
    <message>
        <source>Standard deviation from coupling to coupling</source>
        <translation>Standardabweichung von Anschluss zu Anschluss</translation>
    </message>
    <message>
        <source>95 % difference, one person</source>
        <translation>95-%-Unterschied, eine Person</translation>
    </message>
    <message>
        <source>95 % difference, two people</source>
        <translation>95-%-Unterschied, zwei Personen</translation>
    </message>
    <message>
        <source>All of it on one rigging: how differently the joint sits each time it is connected is not in these figures.</source>
        <translation>Alles bei einem Aufrüsten: wie verschieden die Verbindung jedes Mal sitzt, wenn sie angeschlossen wird, steckt in diesen Zahlen nicht.</translation>
    </message>
</context>
<context>
    <name>SummaryWords</name>
    <message>
        <source>P</source>
        <comment>key for write as PDF</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key for back</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>L</source>
        <comment>key for the last record</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>Show the last record  (%1)</source>
        <translation>Letztes Protokoll zeigen  (%1)</translation>
    </message>
    <message>
        <source>Write it as PDF  (%1)</source>
        <translation>Als PDF schreiben  (%1)</translation>
    </message>
    <message>
        <source>Back  (%1)</source>
        <translation>Zurück  (%1)</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Correct a reading</source>
        <translation>Messung berichtigen</translation>
    </message>
    <message>
        <source>A closed record takes nothing new. A slip of the pen can be put right: the old reading stays, with a line through it, the reason and the name.</source>
        <translation>Ein abgeschlossenes Protokoll nimmt nichts Neues auf. Ein Schreibfehler lässt sich richtigstellen: Die alte Messung bleibt, durchgestrichen, mit Grund und Namen.</translation>
    </message>
    <message>
        <source>Reading to correct</source>
        <translation>Zu berichtigende Messung</translation>
    </message>
    <message>
        <source>Choose a reading</source>
        <translation>Messung wählen</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <comment>coupling: interval, person, time</comment>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>What was read, mm</source>
        <translation>Was gemessen wurde, mm</translation>
    </message>
    <message>
        <source>0.50 0.55, or the leaf that entered</source>
        <translation>0,50 0,55, oder das Blatt, das hineinging</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>What went wrong with the first one</source>
        <translation>Was an der ersten falsch war</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Corrected by</source>
        <translation>Berichtigt von</translation>
    </message>
    <message>
        <source>Correct this reading</source>
        <translation>Diese Messung berichtigen</translation>
    </message>
    <message>
        <source>Choose the reading that is wrong first.</source>
        <translation>Zuerst die falsche Messung wählen.</translation>
    </message>
    <message>
        <source>Say why it is wrong: the reason stands beside it for good.</source>
        <translation>Angeben, warum sie falsch ist: Der Grund steht für immer daneben.</translation>
    </message>
    <message>
        <source>Choose who corrects it. Nobody is filled in for you.</source>
        <translation>Wählen, wer sie berichtigt. Kein Name ist vorgegeben.</translation>
    </message>
    <message>
        <source>Type two figures, the leaf that entered and the one that did not, such as 0.50 0.55.</source>
        <translation>Zwei Zahlen eingeben, das Blatt, das hineinging, und das, das nicht hineinging, etwa 0,50 0,55.</translation>
    </message>
    <message>
        <source>The leaf that entered has to be thinner than the one that did not. Type the thinner one first.</source>
        <translation>Das Blatt, das hineinging, muss dünner sein als das, das nicht hineinging. Das dünnere zuerst eingeben.</translation>
    </message>
    <message>
        <source>That is wider than any gap here. Type millimetres with a point or a comma.</source>
        <translation>Das ist weiter als jeder Spalt hier. Millimeter mit Punkt oder Komma eingeben.</translation>
    </message>
    <message>
        <source>Corrected to %1. The old reading stays, with a line through it.</source>
        <translation>Berichtigt auf %1. Die alte Messung bleibt, durchgestrichen.</translation>
    </message>
</context>
<context>
    <name>SurfaceWords</name>
    <message>
        <source>%1°</source>
        <comment>an angle</comment>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <comment>a length</comment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Nothing is typed yet. Type a figure, such as %1.</source>
        <translation>Noch nichts eingegeben. Eine Zahl eingeben, etwa %1.</translation>
    </message>
    <message>
        <source>“%1” is not a figure. Type digits with a point or a comma, such as %2.</source>
        <translation>„%1“ ist keine Zahl. Ziffern mit Punkt oder Komma eingeben, etwa %2.</translation>
    </message>
    <message>
        <source>“%1” has more than one point or comma. Type one of them only, such as %2.</source>
        <translation>„%1“ hat mehr als einen Punkt oder mehr als ein Komma. Nur eines davon eingeben, etwa %2.</translation>
    </message>
    <message>
        <source>“%1” is finer than anybody can measure here. Three figures after the point at most.</source>
        <translation>„%1“ ist feiner, als hier jemand messen kann. Höchstens drei Stellen nach dem Komma.</translation>
    </message>
    <message>
        <source>“%1” is below zero. Type how far it moves, without a sign.</source>
        <translation>„%1“ ist kleiner als null. Eingeben, wie weit es sich bewegt, ohne Vorzeichen.</translation>
    </message>
    <message>
        <source>%1 degrees is more than half a turn. Was it millimetres?</source>
        <translation>%1 Grad ist mehr als eine halbe Drehung. Waren es Millimeter?</translation>
    </message>
    <message>
        <source>%1 mm is more than a metre. Type millimetres with a point or a comma.</source>
        <translation>%1 mm ist mehr als ein Meter. Millimeter mit Punkt oder Komma eingeben.</translation>
    </message>
    <message>
        <source>At %1 from the hinge nothing can move that far. Look at the figure and at the distance in Set up.</source>
        <translation>%1 vom Scharnier entfernt kann sich nichts so weit bewegen. Die Zahl und den Abstand unter Einrichten ansehen.</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>millimetres in a straight line</source>
        <translation>Millimeter in gerader Linie</translation>
    </message>
    <message>
        <source>Aileron</source>
        <translation>Querruder</translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation>Höhenruder</translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation>Seitenruder</translation>
    </message>
    <message>
        <source>Flap</source>
        <translation>Wölbklappe</translation>
    </message>
    <message>
        <source>Airbrake</source>
        <translation>Bremsklappe</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Trimmung</translation>
    </message>
    <message>
        <source>Water dump</source>
        <translation>Wasserablass</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>Stick left: left aileron up, right down.</source>
        <translation>Knüppel links: linkes Querruder nach oben, rechtes nach unten.</translation>
    </message>
    <message>
        <source>Stick back: trailing edge up.</source>
        <translation>Knüppel ziehen: Hinterkante nach oben.</translation>
    </message>
    <message>
        <source>Left pedal: rudder to the left.</source>
        <translation>Linkes Pedal: Seitenruder nach links.</translation>
    </message>
    <message>
        <source>Flaps positive: both down.</source>
        <translation>Wölbklappen positiv: beide nach unten.</translation>
    </message>
    <message>
        <source>Airbrake lever back: both out. Lever forward: both in and locked.</source>
        <translation>Bremsklappenhebel nach hinten: beide ausgefahren. Hebel nach vorn: beide eingefahren und verriegelt.</translation>
    </message>
    <message>
        <source>Trim nose-down: it moves as the manual says.</source>
        <translation>Trimmung kopflastig: Sie bewegt sich, wie das Handbuch sagt.</translation>
    </message>
    <message>
        <source>Lever open: both open. Lever shut: both shut.</source>
        <translation>Hebel auf: beide offen. Hebel zu: beide zu.</translation>
    </message>
    <message>
        <source>Say aloud how it moves.</source>
        <translation>Laut sagen, wie es sich bewegt.</translation>
    </message>
    <message>
        <source>Surfaces</source>
        <translation>Ruder</translation>
    </message>
    <message>
        <source>The control check goes through these one by one: held and resisted, called both ways, full travel, play. Also one that connects by itself belongs here. What the manual says of deflections stands beside what you measure, with its page.</source>
        <translation>Die Ruderprobe geht diese der Reihe nach durch: gehalten mit Widerstand, Ansage in beiden Richtungen, voller Weg, Spiel. Auch was selbsttätig anschließt, gehört hierher. Was das Handbuch zu Ausschlägen sagt, steht mit seiner Seite neben dem, was Sie messen.</translation>
    </message>
    <message>
        <source>1 surface</source>
        <translation>1 Ruder</translation>
    </message>
    <message>
        <source>%1 surfaces</source>
        <translation>%1 Ruder</translation>
    </message>
    <message>
        <source>Surfaces in the order of the control check</source>
        <translation>Ruder in der Reihenfolge der Ruderprobe</translation>
    </message>
    <message>
        <source>No surface yet. Start from the usual ones, or add your own.</source>
        <translation>Noch kein Ruder. Mit den üblichen beginnen oder eigene hinzufügen.</translation>
    </message>
    <message>
        <source>Add a surface</source>
        <translation>Ruder hinzufügen</translation>
    </message>
    <message>
        <source>Add the usual surfaces</source>
        <translation>Übliche Ruder hinzufügen</translation>
    </message>
    <message>
        <source>Ailerons, airbrakes, elevator, rudder and trim; flaps where a coupling of a flap is set up. What this airframe does not have is taken out of use again, and every name can be changed.</source>
        <translation>Querruder, Bremsklappen, Höhenruder, Seitenruder und Trimmung; Wölbklappen, wo ein Anschluss einer Wölbklappe eingerichtet ist. Was dieses Flugzeug nicht hat, wird wieder außer Gebrauch genommen, und jeder Name kann geändert werden.</translation>
    </message>
    <message>
        <source>All the usual surfaces are there already.</source>
        <translation>Alle üblichen Ruder sind schon da.</translation>
    </message>
    <message>
        <source>no figures from the manual</source>
        <translation>keine Werte aus dem Handbuch</translation>
    </message>
    <message>
        <source>figures from %1</source>
        <translation>Werte aus %1</translation>
    </message>
    <message>
        <source>A new surface</source>
        <translation>Ein neues Ruder</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>As you call it aloud: Left aileron.</source>
        <translation>Wie Sie es laut ansagen: Querruder links.</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>A&amp;rt</translation>
    </message>
    <message>
        <source>It says what is tried in the control check.</source>
        <translation>Sie bestimmt, was bei der Ruderprobe probiert wird.</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>What is expe&amp;cted, in words</source>
        <translation>Was &amp;erwartet wird, in Worten</translation>
    </message>
    <message>
        <source>Empty: “%1” In words of your own it is asked whether it does that.</source>
        <translation>Leer: „%1“ Bei eigenen Worten wird gefragt, ob es das tut.</translation>
    </message>
    <message>
        <source>The manual &amp;gives</source>
        <translation>Das Handbuch &amp;gibt an</translation>
    </message>
    <message>
        <source>&amp;Hinge to ruler, mm</source>
        <translation>Scharnier bis &amp;Lineal, mm</translation>
    </message>
    <message>
        <source>From the hinge to the trailing edge, square to the hinge line, where the ruler is held. It turns millimetres into degrees.</source>
        <translation>Vom Scharnier bis zur Hinterkante, rechtwinklig zur Scharnierlinie, wo das Lineal gehalten wird. Damit werden Millimeter in Grad umgerechnet.</translation>
    </message>
    <message>
        <source>&amp;Up; on a rudder, left</source>
        <translation>&amp;Oben; am Seitenruder links</translation>
    </message>
    <message>
        <source>Up or left, plus or minus</source>
        <translation>Oben oder links, plus oder minus</translation>
    </message>
    <message>
        <source>&amp;Down; on a rudder, right</source>
        <translation>&amp;Unten; am Seitenruder rechts</translation>
    </message>
    <message>
        <source>Down or right, plus or minus</source>
        <translation>Unten oder rechts, plus oder minus</translation>
    </message>
    <message>
        <source>From the manual, never from memory. May stay empty.</source>
        <translation>Aus dem Handbuch, nie aus dem Gedächtnis. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Most free &amp;play</source>
        <translation>Größtes S&amp;piel</translation>
    </message>
    <message>
        <source>&amp;Manual, page and revision</source>
        <translation>&amp;Handbuch, Seite und Revision</translation>
    </message>
    <message>
        <source>Where the figures stand: page 4-12, revision 3.</source>
        <translation>Wo die Werte stehen: Seite 4-12, Revision 3.</translation>
    </message>
    <message>
        <source>Type a name for the surface.</source>
        <translation>Einen Namen für das Ruder eingeben.</translation>
    </message>
    <message>
        <source>This airframe already has a surface “%1”. Say left or right.</source>
        <translation>Dieses Flugzeug hat schon ein Ruder „%1“. Links oder rechts dazuschreiben.</translation>
    </message>
    <message>
        <source>Type the manual's plus or minus too; 0 when it gives none.</source>
        <translation>Auch das Plus oder Minus des Handbuchs eingeben; 0, wenn es keines angibt.</translation>
    </message>
    <message>
        <source>A plus or minus needs the deflection it belongs to.</source>
        <translation>Ein Plus oder Minus braucht den Ausschlag, zu dem es gehört.</translation>
    </message>
    <message>
        <source>Say on which page of which revision the figures stand: without it nobody can look them up.</source>
        <translation>Angeben, auf welcher Seite welcher Revision die Werte stehen: Sonst kann niemand sie nachschlagen.</translation>
    </message>
    <message>
        <source>A page and a revision have a number, such as: page 4-12, revision 3.</source>
        <translation>Seite und Revision haben eine Nummer, etwa: Seite 4-12, Revision 3.</translation>
    </message>
    <message>
        <source>A distance of 0 turns nothing into degrees. Measure it, or leave the line empty.</source>
        <translation>Ein Abstand von 0 rechnet nichts in Grad um. Ihn messen oder die Zeile leer lassen.</translation>
    </message>
    <message>
        <source>It leaves the control check of new records. What was answered and measured stays in the file, and it can be put back at any time.</source>
        <translation>Es verschwindet aus der Ruderprobe neuer Protokolle. Was beantwortet und gemessen wurde, bleibt in der Datei, und es kann jederzeit wieder in Gebrauch genommen werden.</translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation>Querruder links</translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation>Querruder rechts</translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation>Wölbklappe links</translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation>Wölbklappe rechts</translation>
    </message>
    <message>
        <source>Left airbrake</source>
        <translation>Bremsklappe links</translation>
    </message>
    <message>
        <source>Right airbrake</source>
        <translation>Bremsklappe rechts</translation>
    </message>
</context>
<context>
    <name>TrendWords</name>
    <message>
        <source>d MMM yyyy</source>
        <comment>QLocale date format</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>QLocale date format</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>MMM yyyy</source>
        <comment>QLocale date format</comment>
        <translation>MMM yyyy</translation>
    </message>
    <message>
        <source>MMM</source>
        <comment>QLocale date format</comment>
        <translation>MMM</translation>
    </message>
    <message>
        <source>yyyy</source>
        <comment>QLocale date format</comment>
        <translation>yyyy</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>rigging number</source>
        <translation>Nummer des Aufrüstens</translation>
    </message>
    <message>
        <source>events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>first band</source>
        <translation>erstes Band</translation>
    </message>
    <message>
        <source>annual, %1</source>
        <comment>date</comment>
        <translation>Jahresnachprüfung, %1</translation>
    </message>
    <message>
        <source>annual, %1 →</source>
        <comment>date; lies to the right of the chart</comment>
        <translation>Jahresnachprüfung, %1 →</translation>
    </message>
    <message>
        <source>new fitting</source>
        <translation>neuer Einbau</translation>
    </message>
    <message>
        <source>new fitting: %1</source>
        <comment>reason</comment>
        <translation>neuer Einbau: %1</translation>
    </message>
    <message>
        <source>drift from about %1</source>
        <comment>date</comment>
        <translation>Drift ab etwa %1</translation>
    </message>
    <message>
        <source>drift from about rigging %1</source>
        <translation>Drift ab etwa Aufrüsten %1</translation>
    </message>
    <message>
        <source>step about %1</source>
        <comment>date</comment>
        <translation>Sprung etwa %1</translation>
    </message>
    <message>
        <source>step about rigging %1</source>
        <translation>Sprung etwa bei Aufrüsten %1</translation>
    </message>
    <message>
        <source>step or drift from about %1</source>
        <comment>date</comment>
        <translation>Sprung oder Drift ab etwa %1</translation>
    </message>
    <message>
        <source>step or drift from about rigging %1</source>
        <translation>Sprung oder Drift ab etwa Aufrüsten %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>date, what was done</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a finding, who found it</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>above %1</source>
        <comment>gap without unit</comment>
        <translation>über %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <comment>gap without unit</comment>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>from–to</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>part-seated, on a scale of its own: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>halb eingerastet, auf eigener Skala: %1 mm</translation>
    </message>
    <message>
        <source>part-seated: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>halb eingerastet: %1 mm</translation>
    </message>
    <message>
        <source>No readings yet. The first one starts this coupling's history.</source>
        <translation>Noch keine Messungen. Mit der ersten beginnt die Geschichte dieses Anschlusses.</translation>
    </message>
    <message>
        <source>No gap to measure.</source>
        <translation>Kein Spalt zu messen.</translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation>Noch keine Messungen.</translation>
    </message>
    <message>
        <source>Rigging %1, %2</source>
        <comment>number, day and time</comment>
        <translation>Aufrüsten %1, %2</translation>
    </message>
    <message>
        <source>part-seated</source>
        <translation>halb eingerastet</translation>
    </message>
    <message>
        <source>%1: %2, %3.</source>
        <comment>where and when: gap, verdict</comment>
        <translation>%1: %2, %3.</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Gemessen von %1.</translation>
    </message>
    <message>
        <source>Read by %1 with %2.</source>
        <comment>person, gauge</comment>
        <translation>Gemessen von %1 mit %2.</translation>
    </message>
    <message>
        <source>The band is made of this one among others.</source>
        <translation>Das Band besteht aus dieser und anderen.</translation>
    </message>
    <message>
        <source>Corrected, struck or left out: it does not count.</source>
        <translation>Berichtigt, gestrichen oder ausgelassen: zählt nicht.</translation>
    </message>
    <message>
        <source>In doubt, because of the gauge: it does not count.</source>
        <translation>Im Zweifel, wegen der Lehre: zählt nicht.</translation>
    </message>
    <message>
        <source>Note: %1.</source>
        <translation>Notiz: %1.</translation>
    </message>
    <message>
        <source>One sign only.</source>
        <translation>Nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, verdict</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of the locked ones: %1.</source>
        <translation>Von den verriegelten: %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>%n part-seated reading(s) stand apart.</source>
        <translation>
            <numerusform>%n Messung halb eingerastet steht für sich.</numerusform>
            <numerusform>%n Messungen halb eingerastet stehen für sich.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) corrected, struck or left out.</source>
        <translation>
            <numerusform>%n Messung berichtigt, gestrichen oder ausgelassen.</numerusform>
            <numerusform>%n Messungen berichtigt, gestrichen oder ausgelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) in doubt, because of the gauge.</source>
        <translation>
            <numerusform>%n Messung im Zweifel, wegen der Lehre.</numerusform>
            <numerusform>%n Messungen im Zweifel, wegen der Lehre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Drift from about rigging %1, %2.</source>
        <comment>number, date</comment>
        <translation>Drift ab etwa Aufrüsten %1, %2.</translation>
    </message>
    <message>
        <source>A step at about rigging %1, %2.</source>
        <comment>number, date</comment>
        <translation>Ein Sprung etwa bei Aufrüsten %1, %2.</translation>
    </message>
    <message>
        <source>A step or a drift from about rigging %1, %2.</source>
        <comment>number, date</comment>
        <translation>Ein Sprung oder eine Drift ab etwa Aufrüsten %1, %2.</translation>
    </message>
    <message>
        <source>If it goes on so, the line reaches %1 mm by %2, 95 % interval %3.</source>
        <comment>gap, date, from–to with unit</comment>
        <translation>Geht es so weiter, erreicht die Linie bis zum %2 den Wert %1 mm, 95-%-Intervall %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) from %1 to %2.</source>
        <translation>
            <numerusform>%n Messung von %1 bis %2.</numerusform>
            <numerusform>%n Messungen von %1 bis %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last one is %1, %2.</source>
        <comment>gap, verdict</comment>
        <translation>Die letzte ist %1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n fitting(s), each with a band of its own.</source>
        <translation>
            <numerusform>%n Einbau, jeder mit eigenem Band.</numerusform>
            <numerusform>%n Einbauten, jeder mit eigenem Band.</numerusform>
        </translation>
    </message>
    <message>
        <source>The band now is %1.</source>
        <translation>Das Band ist jetzt %1.</translation>
    </message>
    <message>
        <source>Each verdict is one sign only.</source>
        <translation>Jedes Urteil ist nur ein Anzeichen.</translation>
    </message>
    <message numerus="yes">
        <source>The last %n reading(s), all in doubt because of the gauge.</source>
        <translation>
            <numerusform>Die letzte %n Messung, wegen der Lehre im Zweifel.</numerusform>
            <numerusform>Die letzten %n Messungen, alle wegen der Lehre im Zweifel.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last %n reading(s); the newest is %1, %2. One sign only.</source>
        <translation>
            <numerusform>Die letzte %n Messung; die neueste ist %1, %2. Nur ein Anzeichen.</numerusform>
            <numerusform>Die letzten %n Messungen; die neueste ist %1, %2. Nur ein Anzeichen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) off this small scale, the newest %1.</source>
        <translation>
            <numerusform>%n Messung außerhalb dieser kleinen Skala, die neueste %1.</numerusform>
            <numerusform>%n Messungen außerhalb dieser kleinen Skala, die neueste %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) off this small scale: %1.</source>
        <translation>
            <numerusform>%n Messung außerhalb dieser kleinen Skala: %1.</numerusform>
            <numerusform>%n Messungen außerhalb dieser kleinen Skala: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>period from %1</source>
        <comment>day</comment>
        <translation>Zeitraum ab %1</translation>
    </message>
    <message>
        <source>period to %1</source>
        <comment>day</comment>
        <translation>Zeitraum bis %1</translation>
    </message>
    <message>
        <source>The period looked back on is %1 to %2; what lies outside it is shaded.</source>
        <translation>Der betrachtete Zeitraum ist %1 bis %2; was außerhalb liegt, ist schattiert.</translation>
    </message>
    <message>
        <source>Left and Right move, plus and minus zoom, Home and End go to the ends, 0 shows everything, Up and Down go from reading to reading.</source>
        <translation>Links und Rechts verschieben, Plus und Minus zoomen, Pos1 und Ende gehen an die Enden, 0 zeigt alles, Auf und Ab gehen von Messung zu Messung.</translation>
    </message>
    <message>
        <source>found not secured, on a scale of its own: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>nicht gesichert vorgefunden, auf eigener Skala: %1 mm</translation>
    </message>
    <message>
        <source>on a scale of its own, part-seated: %1 mm; found not secured: %2 mm</source>
        <comment>two ranges of gaps</comment>
        <translation>auf eigener Skala, halb eingerastet: %1 mm; nicht gesichert vorgefunden: %2 mm</translation>
    </message>
    <message>
        <source>not secured: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>nicht gesichert: %1 mm</translation>
    </message>
    <message>
        <source>part-seated: %1; not secured: %2 mm</source>
        <comment>two ranges of gaps</comment>
        <translation>halb eingerastet: %1; nicht gesichert: %2 mm</translation>
    </message>
    <message>
        <source>found not secured</source>
        <translation>nicht gesichert vorgefunden</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) found not secured stand apart.</source>
        <translation>
            <numerusform>%n Messung nicht gesichert steht für sich.</numerusform>
            <numerusform>%n Messungen nicht gesichert stehen für sich.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrendsPageWords</name>
    <message>
        <source>This file knows no airframe yet. Set up begins with one.</source>
        <translation>Diese Datei kennt noch kein Flugzeug. Unter Einrichten wird das erste angelegt.</translation>
    </message>
    <message>
        <source>This airframe has no couplings yet. Set up lists them in rigging order.</source>
        <translation>Dieses Flugzeug hat noch keine Anschlüsse. Unter Einrichten stehen sie in der Reihenfolge beim Aufrüsten.</translation>
    </message>
    <message>
        <source>%1 has no readings yet. They come from a baseline day in Set up and from every rigging.</source>
        <translation>%1 hat noch keine Messungen. Sie kommen von einem Tag der Grundreihe unter Einrichten und von jedem Aufrüsten.</translation>
    </message>
    <message>
        <source>%1 has no gap to measure. What was looked at and tried stands in each rigging record.</source>
        <translation>%1 hat keinen Spalt zu messen. Was angesehen und probiert wurde, steht in jedem Aufrüstprotokoll.</translation>
    </message>
    <message>
        <source>%1: no gap to measure, so there is no band.</source>
        <translation>%1: kein Spalt zu messen, darum gibt es kein Band.</translation>
    </message>
    <message>
        <source>Nothing is told of it by a figure. What was looked at stands in each rigging record.</source>
        <translation>Keine Zahl sagt hier etwas. Was angesehen wurde, steht in jedem Aufrüstprotokoll.</translation>
    </message>
    <message>
        <source>Point at a reading, or go there with Up and Down. Plus, minus, Left, Right: look around. 0: everything.</source>
        <translation>Auf eine Messung zeigen oder mit Auf und Ab hingehen. Plus, Minus, Links, Rechts: umsehen. 0: alles.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>From %n confirmed reading(s) of %1, frozen.</source>
        <comment>a band</comment>
        <translation>
            <numerusform>Aus %n bestätigter Messung vom %1, festgeschrieben.</numerusform>
            <numerusform>Aus %n bestätigten Messungen vom %1, festgeschrieben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n confirmed reading(s) of %1.</source>
        <comment>a band</comment>
        <translation>
            <numerusform>Aus %n bestätigter Messung vom %1.</numerusform>
            <numerusform>Aus %n bestätigten Messungen vom %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Thin band %1.</source>
        <translation>Dünnes Band %1.</translation>
    </message>
    <message>
        <source>Band %1.</source>
        <translation>Band %1.</translation>
    </message>
    <message>
        <source>They scatter more than the method can follow.</source>
        <translation>Sie streuen mehr, als das Verfahren abbilden kann.</translation>
    </message>
    <message>
        <source>A thin band can mislead either way.</source>
        <translation>Ein dünnes Band kann nach beiden Seiten täuschen.</translation>
    </message>
    <message>
        <source>No band yet: no confirmed reading on this fitting, %1 are needed.</source>
        <translation>Noch kein Band: keine bestätigte Messung an diesem Einbau, %1 sind nötig.</translation>
    </message>
    <message numerus="yes">
        <source>No band yet: %n confirmed reading(s) on this fitting, %1 are needed.</source>
        <translation>
            <numerusform>Noch kein Band: %n bestätigte Messung an diesem Einbau, %1 sind nötig.</numerusform>
            <numerusform>Noch kein Band: %n bestätigte Messungen an diesem Einbau, %1 sind nötig.</numerusform>
        </translation>
    </message>
    <message>
        <source>No band yet: every confirmed reading was beyond the reach of its gauge. Use a gauge that reaches.</source>
        <translation>Noch kein Band: Jede bestätigte Messung lag jenseits dessen, was ihre Lehre erreicht. Eine Lehre nehmen, die weit genug reicht.</translation>
    </message>
    <message>
        <source>Fitting %1, begun %2.</source>
        <translation>Einbau %1, begonnen am %2.</translation>
    </message>
    <message>
        <source>Fitting %1, begun %2: %3.</source>
        <translation>Einbau %1, begonnen am %2: %3.</translation>
    </message>
    <message>
        <source>No band yet: no fitting has begun. Set up begins one.</source>
        <translation>Noch kein Band: kein Einbau begonnen. Unter Einrichten wird einer begonnen.</translation>
    </message>
    <message>
        <source>Latest: %1</source>
        <translation>Zuletzt: %1</translation>
    </message>
    <message>
        <source>No readings yet</source>
        <translation>Noch keine Messungen</translation>
    </message>
    <message>
        <source>Nothing can be said of this coupling by its gap.</source>
        <translation>Über diesen Anschluss lässt sich anhand seines Spalts nichts sagen.</translation>
    </message>
    <message>
        <source>%1 at rigging %2 on %3.</source>
        <comment>reading, number, day</comment>
        <translation>%1 bei Aufrüsten %2 am %3.</translation>
    </message>
    <message>
        <source>%1 on %2, outside a rigging.</source>
        <comment>reading, day</comment>
        <translation>%1 am %2, nicht beim Aufrüsten.</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Gemessen von %1.</translation>
    </message>
    <message>
        <source>Read by %1 with gauge %2.</source>
        <comment>person, gauge</comment>
        <translation>Gemessen von %1 mit Lehre %2.</translation>
    </message>
    <message numerus="yes">
        <source>The gravest of %n reading(s).</source>
        <translation>
            <numerusform>Die ernsteste von %n Messung.</numerusform>
            <numerusform>Die ernsteste von %n Messungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>D</source>
        <comment>key for by date</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>R</source>
        <comment>key for by rigging</comment>
        <translation>R</translation>
    </message>
    <message>
        <source>T</source>
        <comment>key for the table of readings</comment>
        <translation>T</translation>
    </message>
    <message>
        <source>A</source>
        <comment>key for all couplings together</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>By date (%1)</source>
        <translation>Nach Datum (%1)</translation>
    </message>
    <message>
        <source>By rigging (%1)</source>
        <translation>Nach Aufrüsten (%1)</translation>
    </message>
    <message>
        <source>Table (%1)</source>
        <translation>Tabelle (%1)</translation>
    </message>
    <message>
        <source>last %1 readings</source>
        <translation>letzte %1 Messungen</translation>
    </message>
    <message>
        <source>All together (%1)</source>
        <translation>Alle zusammen (%1)</translation>
    </message>
    <message>
        <source>All couplings of %1</source>
        <translation>Alle Anschlüsse von %1</translation>
    </message>
    <message>
        <source>On this fitting: no reading yet beside those of the band.</source>
        <translation>An diesem Einbau: noch keine Messung außer denen des Bandes.</translation>
    </message>
    <message>
        <source>On this fitting, readings kept without a band to judge them: %1.</source>
        <translation>An diesem Einbau, festgehaltene Messungen ohne ein Band, das sie beurteilt: %1.</translation>
    </message>
    <message>
        <source>One more was outside and was corrected, struck or left out later; it happened.</source>
        <translation>Eine weitere war außerhalb und wurde später berichtigt, gestrichen oder ausgelassen; geschehen ist sie.</translation>
    </message>
    <message>
        <source>%1 more were outside and were corrected, struck or left out later; they happened.</source>
        <translation>%1 weitere waren außerhalb und wurden später berichtigt, gestrichen oder ausgelassen; geschehen sind sie.</translation>
    </message>
    <message>
        <source>Found part-seated at a rigging once.</source>
        <translation>Einmal beim Aufrüsten halb eingerastet vorgefunden.</translation>
    </message>
    <message>
        <source>Found part-seated at a rigging %1 times.</source>
        <translation>%1-mal beim Aufrüsten halb eingerastet vorgefunden.</translation>
    </message>
    <message>
        <source>The annual was due on %1.</source>
        <translation>Die Jahresnachprüfung war am %1 fällig.</translation>
    </message>
    <message>
        <source>The annual is due on %1.</source>
        <translation>Die Jahresnachprüfung ist am %1 fällig.</translation>
    </message>
    <message>
        <source>A band is this coupling's own past, never a limit. The gap is one sign only: look, pull and control check stand beside it.</source>
        <translation>Ein Band ist die eigene Vergangenheit dieses Anschlusses, nie ein Grenzwert. Der Spalt ist nur ein Anzeichen: Sichtkontrolle, Zugprobe und Ruderprobe stehen daneben.</translation>
    </message>
    <message>
        <source>Each in its own scatters from the middle of its own band. What moves alone stands apart. When all move together on one day, check the leaf set, read again with another person, and look at each joint: stiff grease leaves plungers short.</source>
        <translation>Jeder in seiner eigenen Streuung, von der Mitte seines eigenen Bandes aus. Was sich allein verändert, steht abseits. Wenn sich alle an einem Tag gemeinsam verändern: den Blattsatz prüfen, mit einer anderen Person noch einmal messen und jede Verbindung ansehen. Bei steifem Fett rasten Riegel nicht ganz ein.</translation>
    </message>
    <message>
        <source>No coupling has a reading from a rigging that can be held against a band yet.</source>
        <translation>Noch kein Anschluss hat vom Aufrüsten eine Messung, die sich mit einem Band vergleichen lässt.</translation>
    </message>
    <message>
        <source>Up and Down go from coupling to coupling, Enter shows it alone. Plus, minus, Left, Right: look around. 0: everything.</source>
        <translation>Auf und Ab gehen von Anschluss zu Anschluss, Enter zeigt ihn allein. Plus, Minus, Links, Rechts: umsehen. 0: alles.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between signs</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>Too few readings against a band to tell how it moves</source>
        <translation>Zu wenige Messungen mit Band, um zu sagen, wie er sich verändert</translation>
    </message>
    <message>
        <source>Looking back. %1</source>
        <translation>Rückblick. %1</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Zurück zu heute</translation>
    </message>
    <message>
        <source>Back to today (Esc)</source>
        <translation>Zurück zu heute (Esc)</translation>
    </message>
    <message>
        <source>Back to Before the annual (Esc or Alt+Left)</source>
        <translation>Zurück zu „Vor der Nachprüfung“ (Esc oder Alt+Links)</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>gereinigt</translation>
    </message>
    <message>
        <source>greased</source>
        <translation>gefettet</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>neu eingebaut</translation>
    </message>
    <message>
        <source>part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>annual</source>
        <translation>Nachprüfung</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation>abgerüstet</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>found: %1; done: %2</source>
        <translation>gefunden: %1; getan: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what was done, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Messungen von %1</translation>
    </message>
    <message>
        <source>Ctrl+C copies the chosen rows.</source>
        <translation>Strg+C kopiert die gewählten Zeilen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Rigging</source>
        <translation>Aufrüsten</translation>
    </message>
    <message>
        <source>Enters mm</source>
        <translation>Hinein mm</translation>
    </message>
    <message>
        <source>Refuses mm</source>
        <translation>Nicht hinein mm</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Lehre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>–</source>
        <comment>a reading outside every rigging</comment>
        <translation>–</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no leaf entered</comment>
        <translation>keines</translation>
    </message>
    <message>
        <source>none</source>
        <comment>the thickest was still loose</comment>
        <translation>keines</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>locked, baseline</source>
        <translation>verriegelt, Grundreihe</translation>
    </message>
    <message>
        <source>part-seated, baseline</source>
        <translation>halb eingerastet, Grundreihe</translation>
    </message>
    <message>
        <source>locked, demonstration</source>
        <translation>verriegelt, Vorführung</translation>
    </message>
    <message>
        <source>part-seated, demonstration</source>
        <translation>halb eingerastet, Vorführung</translation>
    </message>
    <message>
        <source>locked, rigging, second person</source>
        <translation>verriegelt, Aufrüsten, zweite Person</translation>
    </message>
    <message>
        <source>part-seated, rigging, second person</source>
        <translation>halb eingerastet, Aufrüsten, zweite Person</translation>
    </message>
    <message>
        <source>locked, rigging</source>
        <translation>verriegelt, Aufrüsten</translation>
    </message>
    <message>
        <source>part-seated, rigging</source>
        <translation>halb eingerastet, Aufrüsten</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>%1 (corrected: %2)</source>
        <translation>%1 (berichtigt: %2)</translation>
    </message>
    <message>
        <source>struck: %1</source>
        <translation>gestrichen: %1</translation>
    </message>
    <message>
        <source>%1 (struck: %2)</source>
        <translation>%1 (gestrichen: %2)</translation>
    </message>
    <message>
        <source>left out of the band: %1</source>
        <translation>aus dem Band ausgelassen: %1</translation>
    </message>
    <message>
        <source>%1 (left out of the band: %2)</source>
        <translation>%1 (aus dem Band ausgelassen: %2)</translation>
    </message>
    <message>
        <source>Found not secured at a rigging once.</source>
        <translation>Einmal beim Aufrüsten nicht gesichert vorgefunden.</translation>
    </message>
    <message>
        <source>Found not secured at a rigging %1 times.</source>
        <translation>%1-mal beim Aufrüsten nicht gesichert vorgefunden.</translation>
    </message>
    <message>
        <source>not secured, rigging, second person</source>
        <translation>nicht gesichert, Aufrüsten, zweite Person</translation>
    </message>
    <message>
        <source>not secured, rigging</source>
        <translation>nicht gesichert, Aufrüsten</translation>
    </message>
    <message>
        <source>On this fitting, of all %1 readings beside those of the band: %2 near the edge, %3 outside, %4 cannot tell.</source>
        <translation>An diesem Einbau, von allen %1 Messungen außer denen des Bandes: %2 nahe am Rand, %3 außerhalb, %4 nicht zu sagen.</translation>
    </message>
    <message numerus="yes">
        <source>No drift, step or change of scatter shows in %n rigging(s), one reading each</source>
        <translation>
            <numerusform>Keine Drift, kein Sprung und keine Änderung der Streuung zeigt sich bei %n Aufrüsten, je eine Messung</numerusform>
            <numerusform>Keine Drift, kein Sprung und keine Änderung der Streuung zeigt sich bei %n Aufrüsten, je eine Messung</numerusform>
        </translation>
    </message>
    <message>
        <source>One of those outside was read when all or nearly all couplings went the same way.</source>
        <translation>Eine von denen außerhalb wurde gemessen, als alle oder fast alle Anschlüsse in dieselbe Richtung gingen.</translation>
    </message>
    <message>
        <source>%1 of those outside were read when all or nearly all couplings went the same way.</source>
        <translation>%1 von denen außerhalb wurden gemessen, als alle oder fast alle Anschlüsse in dieselbe Richtung gingen.</translation>
    </message>
</context>
<context>
    <name>VerdictWords</name>
    <message>
        <source>No band yet</source>
        <translation>Noch kein Band</translation>
    </message>
    <message>
        <source>Outside the band</source>
        <translation>Außerhalb des Bandes</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>Nicht zu sagen</translation>
    </message>
    <message>
        <source>Near the edge of the band</source>
        <translation>Nahe am Rand des Bandes</translation>
    </message>
    <message>
        <source>Inside the band</source>
        <translation>Im Band</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>noch kein Band</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>near edge</source>
        <translation>nahe am Rand</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>im Band</translation>
    </message>
    <message>
        <source>This band is thin: it rests on few readings, which scatter too much, and can mislead either way.</source>
        <translation>Dieses Band ist dünn: Es beruht auf wenigen Messungen, die zu stark streuen, und kann nach beiden Seiten täuschen.</translation>
    </message>
    <message>
        <source>This band is thin: it rests on few readings and can mislead either way.</source>
        <translation>Dieses Band ist dünn: Es beruht auf wenigen Messungen und kann nach beiden Seiten täuschen.</translation>
    </message>
    <message>
        <source>The readings scatter more than a band can follow.</source>
        <translation>Die Messungen streuen mehr, als ein Band abbilden kann.</translation>
    </message>
    <message>
        <source>Locked readings this far out: %1.</source>
        <translation>Verriegelte Messungen so weit außen: %1.</translation>
    </message>
    <message>
        <source>%1 lies below this coupling's band.</source>
        <translation>%1 liegt unter dem Band dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 lies above this coupling's band.</source>
        <translation>%1 liegt über dem Band dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 lies at the lower edge of this coupling's band.</source>
        <translation>%1 liegt am unteren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 lies at the upper edge of this coupling's band.</source>
        <translation>%1 liegt am oberen Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 touches the lower inner edge of this coupling's band from below.</source>
        <translation>%1 berührt von unten den unteren inneren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 touches the upper inner edge of this coupling's band from above.</source>
        <translation>%1 berührt von oben den oberen inneren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 lies between the lower inner and outer edge of this coupling's band.</source>
        <translation>%1 liegt zwischen dem unteren inneren und äußeren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 lies between the upper inner and outer edge of this coupling's band.</source>
        <translation>%1 liegt zwischen dem oberen inneren und äußeren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 reaches below the lower outer edge of this coupling's band.</source>
        <translation>%1 reicht unter den unteren äußeren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 reaches above the upper outer edge of this coupling's band.</source>
        <translation>%1 reicht über den oberen äußeren Rand des Bandes dieses Anschlusses.</translation>
    </message>
    <message>
        <source>%1 lies where this coupling usually reads.</source>
        <translation>%1 liegt da, wo die Messungen dieses Anschlusses üblicherweise liegen.</translation>
    </message>
    <message>
        <source>%1 was read with a gauge in doubt. Read once with another gauge.</source>
        <translation>%1 wurde mit einer Lehre im Zweifel gemessen. Einmal mit einer anderen Lehre messen.</translation>
    </message>
    <message>
        <source>%1 says nothing on this coupling: locked and part-seated were both seen at such gaps.</source>
        <translation>%1 sagt an diesem Anschluss nichts: Verriegelt und halb eingerastet wurden beide bei solchen Spalten gesehen.</translation>
    </message>
    <message>
        <source>%1 reaches beyond the band. Read once with a finer gauge. Repeats with this one tell no more.</source>
        <translation>%1 reicht über das Band hinaus. Einmal mit einer feineren Lehre messen. Wiederholungen mit dieser sagen nicht mehr.</translation>
    </message>
    <message>
        <source>%1 is kept. The ball was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 ist festgehalten. Die Kugel wurde nicht gesehen: mit Spiegel oder Lampe noch einmal hinsehen und neu antworten.</translation>
    </message>
    <message>
        <source>%1 is kept. The plunger was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 ist festgehalten. Der Riegel wurde nicht gesehen: mit Spiegel oder Lampe noch einmal hinsehen und neu antworten.</translation>
    </message>
    <message>
        <source>%1 is kept. The sleeve was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 ist festgehalten. Die Hülse wurde nicht gesehen: mit Spiegel oder Lampe noch einmal hinsehen und neu antworten.</translation>
    </message>
    <message>
        <source>%1 is kept. The safety pin was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 ist festgehalten. Die Sicherungsnadel wurde nicht gesehen: mit Spiegel oder Lampe noch einmal hinsehen und neu antworten.</translation>
    </message>
    <message>
        <source>%1 is kept. The joint was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 ist festgehalten. Die Verbindung wurde nicht gesehen: mit Spiegel oder Lampe noch einmal hinsehen und neu antworten.</translation>
    </message>
    <message>
        <source>%1 cannot be judged.</source>
        <translation>%1 kann nicht beurteilt werden.</translation>
    </message>
    <message>
        <source>%1 is kept. Every baseline reading was wider than the gauge could reach, so there is no band: use a gauge that reaches.</source>
        <translation>%1 ist festgehalten. Jede Messung der Grundreihe war weiter, als die Lehre reicht, darum gibt es kein Band: eine Lehre nehmen, die weit genug reicht.</translation>
    </message>
    <message>
        <source>%1 is kept. Not enough confirmed readings: this reading cannot be judged.</source>
        <translation>%1 ist festgehalten. Zu wenige bestätigte Messungen: Diese Messung kann nicht beurteilt werden.</translation>
    </message>
    <message numerus="yes">
        <source>The band is %1, drawn from %n confirmed readings.</source>
        <translation>
            <numerusform>Das Band ist %1, gebildet aus %n bestätigter Messung.</numerusform>
            <numerusform>Das Band ist %1, gebildet aus %n bestätigten Messungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>D</source>
        <comment>key: more details</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>More  (%1)</source>
        <translation>Mehr  (%1)</translation>
    </message>
    <message>
        <source>Less  (%1)</source>
        <translation>Weniger  (%1)</translation>
    </message>
    <message>
        <source>The stop at this joint stands, whatever its gap says. Any gap is one sign only.</source>
        <translation>Der Stopp an dieser Verbindung gilt weiter, was auch immer ihr Spalt sagt. Jeder Spalt ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>It was read on %1. Say in the questions (Ctrl+6) who resolved it, what was found and what was done.</source>
        <translation>Gemessen am %1. In den Fragen (Strg+6) sagen, wer es geklärt hat, was gefunden und was getan wurde.</translation>
    </message>
    <message>
        <source>a person entitled to decide</source>
        <translation>eine dazu berechtigte Person</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name (telephone)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call %1.</source>
        <translation>Aufhören, stehen lassen, wie es ist, anrufen: %1.</translation>
    </message>
    <message>
        <source>Connecting it again without finding out why is not a fix.</source>
        <translation>Wieder anschließen, ohne den Grund zu finden, behebt nichts.</translation>
    </message>
    <message>
        <source>The gap is one sign only, and enough to stop.</source>
        <translation>Der Spalt ist nur ein Anzeichen, und das genügt zum Aufhören.</translation>
    </message>
    <message>
        <source>The look, the pull and the second person have to carry it. This gap tells nothing, and any gap is one sign only.</source>
        <translation>Auf Sichtkontrolle, Zugprobe und zweite Person kommt es an. Dieser Spalt sagt nichts, und jeder Spalt ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>Look and pull with care, and watch where the next readings go. A gap near the edge of the band is one sign only.</source>
        <translation>Sichtkontrolle und Zugprobe sorgfältig machen und beobachten, wohin die nächsten Messungen gehen. Ein Spalt nahe am Rand des Bandes ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>Finish the look, the pull and the second person. A gap inside the band is one sign only.</source>
        <translation>Sichtkontrolle und Zugprobe zu Ende führen, dann die zweite Person. Ein Spalt im Band ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>%1 is not judged: another program changed facts that this coupling's band rests on, or may have.</source>
        <translation>%1 wird nicht beurteilt: Ein anderes Programm hat Einträge geändert, auf denen das Band dieses Anschlusses beruht, oder kann es getan haben.</translation>
    </message>
    <message>
        <source>The look and the pull have to carry it. This gap tells nothing, and any gap is one sign only.</source>
        <translation>Auf Sichtkontrolle und Zugprobe kommt es an. Dieser Spalt sagt nichts, und jeder Spalt ist nur ein Anzeichen.</translation>
    </message>
    <message>
        <source>Finish the look and the pull. A gap inside the band is one sign only.</source>
        <translation>Sichtkontrolle und Zugprobe zu Ende führen. Ein Spalt im Band ist nur ein Anzeichen.</translation>
    </message>
</context>
<context>
    <name>WindowWords</name>
    <message>
        <source>Rigged today</source>
        <translation>Heute aufgerüstet</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Before the annual</source>
        <translation>Vor der Nachprüfung</translation>
    </message>
    <message>
        <source>Know this airframe</source>
        <translation>Flugzeug kennen</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>%1 (Ctrl+%2)</source>
        <translation>%1 (Strg+%2)</translation>
    </message>
    <message>
        <source>No airframe yet</source>
        <translation>Noch kein Flugzeug</translation>
    </message>
    <message>
        <source>Choose the airframe (Ctrl+K)</source>
        <translation>Flugzeug wählen (Strg+K)</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <comment>registration, type</comment>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1 · record open</source>
        <translation>%1 · Protokoll offen</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n open question(s)</source>
        <translation>
            <numerusform>%1 · %n offene Frage</numerusform>
            <numerusform>%1 · %n offene Fragen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 – Rigband</source>
        <translation>%1 – Rigband</translation>
    </message>
    <message>
        <source>%1 – %2 – Rigband</source>
        <translation>%1 – %2 – Rigband</translation>
    </message>
    <message>
        <source>demonstration copy, every figure invented</source>
        <translation>Vorführkopie, alle Zahlen erfunden</translation>
    </message>
    <message>
        <source>%1 can only be read: the file or its folder does not allow writing. Copy it to a folder of your own to enter readings.</source>
        <translation>%1 kann nur gelesen werden: die Datei oder ihr Ordner lässt kein Schreiben zu. In einen eigenen Ordner kopieren, um Messungen einzugeben.</translation>
    </message>
    <message>
        <source>No copy of %1 could be kept beside it today. What you enter is saved all the same; copy the file to another place yourself.</source>
        <translation>Von %1 konnte heute daneben keine Kopie angelegt werden. Was Sie eingeben, wird trotzdem gespeichert; die Datei selbst an einen anderen Ort kopieren.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>New file …</source>
        <translation>Neue Datei …</translation>
    </message>
    <message>
        <source>Open a file …</source>
        <translation>Datei öffnen …</translation>
    </message>
    <message>
        <source>Open a demonstration copy</source>
        <translation>Eine Vorführkopie öffnen</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Dark colours</source>
        <translation>Dunkle Farben</translation>
    </message>
    <message>
        <source>Keys …</source>
        <translation>Tasten …</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Close Rigband</source>
        <translation>Rigband schließen</translation>
    </message>
    <message>
        <source>Close Rigband all the same</source>
        <translation>Rigband trotzdem schließen</translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation>Diese Meldung schließen</translation>
    </message>
    <message>
        <source>Rigband files (*.rigband)</source>
        <translation>Rigband-Dateien (*.rigband)</translation>
    </message>
    <message>
        <source>Rigband remembers each coupling’s locked gap</source>
        <translation>Rigband merkt sich den verriegelten Spalt jedes Anschlusses</translation>
    </message>
    <message>
        <source>Readings by feeler leaf become each coupling’s own band. Every later reading is judged against it: one sign beside the look, the pull, the second person and the control check.</source>
        <translation>Messungen mit der Fühlerlehre werden zum eigenen Band jedes Anschlusses. Jede spätere Messung wird daran beurteilt: ein Anzeichen neben Sichtkontrolle, Zugprobe, zweiter Person und Ruderprobe.</translation>
    </message>
    <message>
        <source>Begin a new file for my airframe</source>
        <translation>Eine neue Datei für mein Flugzeug beginnen</translation>
    </message>
    <message>
        <source>Open a file I have</source>
        <translation>Eine vorhandene Datei öffnen</translation>
    </message>
    <message>
        <source>Look at the demonstration first</source>
        <translation>Zuerst die Vorführung ansehen</translation>
    </message>
    <message>
        <source>A band is a coupling’s own past, never a limit. Manuals, directives, local rules and persons entitled to decide prevail.</source>
        <translation>Ein Band ist die eigene Vergangenheit eines Anschlusses, nie ein Grenzwert. Handbücher, Anweisungen, örtliche Regeln und zur Entscheidung berechtigte Personen gehen vor.</translation>
    </message>
    <message>
        <source>The .rigband file to open.</source>
        <translation>Die .rigband-Datei, die geöffnet wird.</translation>
    </message>
    <message>
        <source>Open a fresh copy of the demonstration.</source>
        <translation>Eine frische Kopie der Vorführung öffnen.</translation>
    </message>
    <message>
        <source>Dark colours.</source>
        <translation>Dunkle Farben.</translation>
    </message>
    <message>
        <source>Text size in percent, 100 to 200.</source>
        <translation>Schriftgröße in Prozent, 100 bis 200.</translation>
    </message>
    <message>
        <source>At the start: %1: the last record. %2: I have read the notes. %3: from paper. Enter: start.</source>
        <translation>Am Beginn: %1: das letzte Protokoll. %2: ich habe die Notizen gelesen. %3: vom Papier. Enter: beginnen.</translation>
    </message>
    <message>
        <source>Who connected: digits: a name. %1: not known. Enter: next side.</source>
        <translation>Wer angeschlossen hat: Ziffern: ein Name. %1: nicht bekannt. Enter: nächste Seite.</translation>
    </message>
    <message>
        <source>%1: who looks and measures. %2: the leaf set or gauge. %3: the photo, large.</source>
        <translation>%1: wer ansieht und misst. %2: der Blattsatz oder die Lehre. %3: das Foto, groß.</translation>
    </message>
    <message>
        <source>%1: yes. %2: no. %3: cannot see. %4: felt, not seen.</source>
        <translation>%1: ja. %2: nein. %3: nicht zu sehen. %4: gefühlt, nicht gesehen.</translation>
    </message>
    <message>
        <source>Digits with point or comma, then Enter: a reading.</source>
        <translation>Ziffern mit Punkt oder Komma, dann Enter: eine Messung.</translation>
    </message>
    <message>
        <source>%1: measure again. %2: wrong leaf. %3: strike a reading. %4: joint play. %5: the look. %6: more about the verdict.</source>
        <translation>%1: noch einmal messen. %2: falsches Blatt. %3: eine Messung streichen. %4: Gelenkspiel. %5: die Sichtkontrolle. %6: mehr zum Urteil.</translation>
    </message>
    <message>
        <source>%1: second person. %2: the second person types their own column. Enter: next, or what has the focus.</source>
        <translation>%1: zweite Person. %2: die zweite Person gibt ihre eigene Spalte ein. Enter: weiter, oder was den Fokus hat.</translation>
    </message>
    <message>
        <source>Control check: %1: who is at the surface. %2: who is in the cockpit. Arrows: which way it moved. %3: it does nothing. %4, %5, %6: a figure.</source>
        <translation>Ruderprobe: %1: wer am Ruder steht. %2: wer im Cockpit sitzt. Pfeile: wohin es sich bewegt hat. %3: es tut nichts. %4, %5, %6: eine Zahl.</translation>
    </message>
    <message>
        <source>Where a reason is asked: Alt+1, Alt+2 …: an offered one.</source>
        <translation>Wo ein Grund gefragt ist: Alt+1, Alt+2 …: ein angebotener.</translation>
    </message>
    <message>
        <source>Page Up, Page Down: another coupling. Esc: interrupt.</source>
        <translation>Bild auf, Bild ab: ein anderer Anschluss. Esc: unterbrechen.</translation>
    </message>
    <message>
        <source>A closed record: %1: as PDF. %2: back.</source>
        <translation>Ein abgeschlossenes Protokoll: %1: als PDF. %2: zurück.</translation>
    </message>
    <message>
        <source>Alt+O: who learns. Alt and the underlined letter: a part. Up, Down: another coupling. On the plan arrows: the nearest one.</source>
        <translation>Alt+W: wer lernt. Alt und der unterstrichene Buchstabe: ein Teil. Auf, Ab: ein anderer Anschluss. In der Draufsicht Pfeile: der nächstgelegene.</translation>
    </message>
    <message>
        <source>The joint cut open: Left, Right, Page Up, Page Down: the ball. Home, End: caught, home.</source>
        <translation>Die Verbindung im Schnitt: Links, Rechts, Bild auf, Bild ab: die Kugel. Pos1, Ende: gefangen, ganz eingerastet.</translation>
    </message>
    <message>
        <source>S: sleeve. P: pin. B: the ball away and back.</source>
        <translation>S: Hülse. P: Nadel. B: die Kugel weg und zurück.</translation>
    </message>
    <message>
        <source>Practice: %1: this coupling. %2: all. Calls and order: %3: begin.</source>
        <translation>Übung: %1: dieser Anschluss. %2: alle. Ansagen und Reihenfolge: %3: beginnen.</translation>
    </message>
    <message>
        <source>Digits: an answer. Then %1: sure. %2: not sure. Enter: next.</source>
        <translation>Ziffern: eine Antwort. Dann %1: gewiss. %2: ungewiss. Enter: weiter.</translation>
    </message>
    <message>
        <source>Measuring and study: digits with point or comma, then Enter: a reading. Alt+A, Alt+N: take one back.</source>
        <translation>Messen und Versuch: Ziffern mit Punkt oder Komma, dann Enter: eine Messung. Alt+C, Alt+D: eine zurücknehmen.</translation>
    </message>
    <message>
        <source>Study: Alt+I: I am the next and read. Alt+T: take the last reading back. Alt+G: leave it, go on.</source>
        <translation>Versuch: Alt+I: ich bin an der Reihe und messe. Alt+T: die letzte Messung zurücknehmen. Alt+G: liegen lassen, fortsetzen.</translation>
    </message>
    <message>
        <source>Trends
Left, Right: move along. Plus, Minus: closer, wider. 0: everything.
Up, Down: another reading. D, R: by date, by rigging. T: table.
A: all couplings together. P: the period. Ctrl+C: copy the chosen rows.
F: note a finding. Q: ask. Esc: back to today, or to Before the annual.

Before the annual
Up, Down: another coupling. Enter: its trend. 1 to 8: sort by a column. 0: what stands out first.
S: what stands out. O: what lay outside its band. Enter there: it in Trends.
P: the period. F: note a finding. Q: ask. M: what the columns mean. R: the report.
In the report: S: save. A: the other paper. Esc: back.

Questions
Up, Down: another question. Enter: close it. Ctrl+Enter: save. Esc: back.

Set up
Alt+1 to Alt+9: the parts. Alt+Up, Alt+Down: move a row.
Photos of a coupling: Ctrl+V: a picture that was copied.
Baseline day: Y, N: an answer. W: wrong leaf. X: leave out. F: freeze.</source>
        <translation>Verlauf
Links, Rechts: verschieben. Plus, Minus: näher, weiter. 0: alles.
Auf, Ab: eine andere Messung. D, R: nach Datum, nach Aufrüsten. T: Tabelle.
A: alle Anschlüsse zusammen. P: der Zeitraum. Strg+C: die gewählten Zeilen kopieren.
F: einen Befund notieren. Q: Frage stellen. Esc: zurück zu heute oder zu „Vor der Nachprüfung“.

Vor der Nachprüfung
Auf, Ab: ein anderer Anschluss. Enter: sein Verlauf. 1 bis 8: nach einer Spalte ordnen. 0: Auffallendes zuerst.
S: was auffällt. O: was außerhalb des Bandes lag. Dort Enter: im Verlauf zeigen.
P: der Zeitraum. F: einen Befund notieren. Q: Frage stellen. M: was die Spalten bedeuten. R: der Bericht.
Im Bericht: S: speichern. A: das andere Papier. Esc: zurück.

Fragen
Auf, Ab: eine andere Frage. Enter: sie schließen. Strg+Enter: speichern. Esc: zurück.

Einrichten
Alt+1 bis Alt+9: die Teile. Alt+Auf, Alt+Ab: eine Zeile verschieben.
Fotos eines Anschlusses: Strg+V: ein kopiertes Bild.
Tag der Grundreihe: Y, N: eine Antwort. W: falsches Blatt. X: auslassen. F: festschreiben.</translation>
    </message>
    <message>
        <source>Remembers the locked gap of each control coupling and judges every reading against that coupling’s own past.

Ends with 0 when its window was closed, with 2 when something on the command line is wrong.</source>
        <translation>Merkt sich den verriegelten Spalt jedes Ruderanschlusses und beurteilt jede Messung an dessen eigener Vergangenheit.

Endet mit 0, wenn das Fenster geschlossen wurde, mit 2, wenn in der Befehlszeile etwas nicht stimmt.</translation>
    </message>
    <message>
        <source>There is no option “%1”. rigband --help lists those there are.</source>
        <translation>Die Option „%1“ gibt es nicht. rigband --help nennt die vorhandenen.</translation>
    </message>
    <message>
        <source>An option lacks what belongs behind it, or has something behind it that it does not take. rigband --help tells how each is typed.</source>
        <translation>Hinter einer Option fehlt, was dazugehört, oder es steht etwas dahinter, das sie nicht nimmt. rigband --help sagt, wie jede getippt wird.</translation>
    </message>
    <message>
        <source>“%1” is no text size. Type a whole number from 100 to 200 behind --text.</source>
        <translation>„%1“ ist keine Schriftgröße. Hinter --text eine ganze Zahl von 100 bis 200 tippen.</translation>
    </message>
    <message>
        <source>Name one file to open, or type --demo; not more than one of these.</source>
        <translation>Eine Datei zum Öffnen nennen oder --demo tippen; nicht mehr als eines davon.</translation>
    </message>
    <message>
        <source>Rigged</source>
        <comment>short, of: Rigged today</comment>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Annual</source>
        <comment>short, of: Before the annual</comment>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Know</source>
        <comment>short, of: Know this airframe</comment>
        <translation>Kennen</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Light colours</source>
        <translation>Helle Farben</translation>
    </message>
    <message>
        <source>Colours for sunlight</source>
        <translation>Farben für Sonnenlicht</translation>
    </message>
    <message>
        <source>The next colours</source>
        <translation>Die nächsten Farben</translation>
    </message>
    <message>
        <source>Colours for sunlight, also where --dark is given.</source>
        <translation>Farben für Sonnenlicht, auch wo --dark angegeben ist.</translation>
    </message>
    <message>
        <source>Everywhere
Ctrl+1 to Ctrl+5: the five pages. Ctrl+6: the open questions.
Ctrl+7: what was changed by hand. Ctrl+8: what two laptops say differently. Ctrl+I: take in another file.
Ctrl+Y, Ctrl+D: copy or put away what was typed and not saved.
Ctrl+9: the copies of this file. Ctrl+B: bring one back. Ctrl+W: from a copy back to the file.
Ctrl+R: read what can be read of a damaged file into a new one.
Ctrl+K: choose the airframe.
Ctrl+N, Ctrl+O: new file, open a file. Ctrl+Q: quit.
Ctrl+Shift+S: save a copy of the file. Ctrl+Shift+F: show its folder. Ctrl+F1: about Rigband.
Ctrl++ and Ctrl+-: text size. F9: light, dark, sunlight colours. F1: this list. Shift+F1: the manual.</source>
        <translation>Überall
Strg+1 bis Strg+5: die fünf Seiten. Strg+6: die offenen Fragen.
Strg+7: was von Hand geändert wurde. Strg+8: was zwei Laptops verschieden sagen. Strg+I: eine andere Datei aufnehmen.
Strg+Y, Strg+D: Getipptes und nicht Gespeichertes kopieren oder weglegen.
Strg+9: die Kopien dieser Datei. Strg+B: eine zurückholen. Strg+W: von einer Kopie zurück zur Datei.
Strg+R: aus einer beschädigten Datei in eine neue lesen, was lesbar ist.
Strg+K: das Flugzeug wählen.
Strg+N, Strg+O: neue Datei, eine Datei öffnen. Strg+Q: beenden.
Strg+Umschalt+S: eine Kopie der Datei speichern. Strg+Umschalt+F: ihren Ordner zeigen. Strg+F1: über Rigband.
Strg++ und Strg+-: Schriftgröße. F9: helle, dunkle, Sonnenlicht-Farben. F1: diese Liste. Umschalt+F1: das Handbuch.</translation>
    </message>
    <message>
        <source>Another window that has %1 open does not answer, so it is opened here as well. What was typed there and not yet saved stands only there.</source>
        <translation>Ein anderes Fenster, in dem %1 offen ist, antwortet nicht. Darum ist die Datei auch hier geöffnet. Was dort getippt und noch nicht gespeichert wurde, steht nur dort.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <comment>file, the last one</comment>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>Opened last, in %1</source>
        <translation>Zuletzt geöffnet, in %1</translation>
    </message>
</context>
<context>
    <name>WitnessWords</name>
    <message>
        <source>Part-seated was seen once here, above the band.</source>
        <translation>Halb eingerastet wurde hier einmal gesehen, über dem Band.</translation>
    </message>
    <message>
        <source>Part-seated was seen once here, below the band.</source>
        <translation>Halb eingerastet wurde hier einmal gesehen, unter dem Band.</translation>
    </message>
    <message>
        <source>Part-seated was seen once here, and it was not outside the band.</source>
        <translation>Halb eingerastet wurde hier einmal gesehen, und es lag nicht außerhalb des Bandes.</translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here, and there is no band to hold that against.</source>
        <translation>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen, und es gibt kein Band, mit dem es sich vergleichen lässt.</numerusform>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen, und es gibt kein Band, mit dem es sich vergleichen lässt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here, each time above the band.</source>
        <translation>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen, jedes Mal über dem Band.</numerusform>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen, jedes Mal über dem Band.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here, each time below the band.</source>
        <translation>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen, jedes Mal unter dem Band.</numerusform>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen, jedes Mal unter dem Band.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here: %1 above the band, %2 below it.</source>
        <translation>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen: %1 über dem Band, %2 darunter.</numerusform>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen: %1 über dem Band, %2 darunter.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here: %1 above the band, %2 below it, %3 not outside it.</source>
        <translation>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen: %1 über dem Band, %2 darunter, %3 nicht außerhalb.</numerusform>
            <numerusform>Halb eingerastet wurde hier %n Mal gesehen: %1 über dem Band, %2 darunter, %3 nicht außerhalb.</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too rarely to say whether it always would lie there.</source>
        <translation>Das ist zu selten, um zu sagen, ob es immer dort läge.</translation>
    </message>
    <message>
        <source>That does not say that it always would lie there.</source>
        <translation>Das sagt nicht, dass es immer dort läge.</translation>
    </message>
    <message>
        <source>That is too rarely to say how far the gap tells the two apart: it takes %1 at least.</source>
        <translation>Das ist zu selten, um zu sagen, wie weit der Spalt die beiden unterscheidet: mindestens %1 sind nötig.</translation>
    </message>
    <message>
        <source>How far the gap tells part-seated from locked here is not known yet: it takes a band and part-seated readings with both ends.</source>
        <translation>Wie weit der Spalt hier halb eingerastet von verriegelt unterscheidet, ist noch nicht bekannt: dazu braucht es ein Band und halb eingerastete Messungen mit beiden Enden.</translation>
    </message>
    <message>
        <source>The gap is a good witness here, and still one sign only: look and pull as ever.</source>
        <translation>Der Spalt ist hier ein guter Zeuge und trotzdem nur ein Anzeichen: Sichtkontrolle und Zugprobe wie immer.</translation>
    </message>
    <message>
        <source>The gap is a weak witness here. It takes %1 readings on %2 days, all far outside, before more can be said.</source>
        <translation>Der Spalt ist hier ein schwacher Zeuge. Es braucht %1 Messungen an %2 Tagen, alle weit außerhalb, bevor mehr gesagt werden kann.</translation>
    </message>
    <message>
        <source>The gap is no witness here: it cannot tell part-seated from locked.</source>
        <translation>Der Spalt ist hier kein Zeuge: er kann halb eingerastet nicht von verriegelt unterscheiden.</translation>
    </message>
    <message>
        <source>So few can mislead: up to %1 in 100 part-seated joints might not lie outside (one-sided 95 % bound).</source>
        <translation>So wenige können täuschen: bis zu %1 von 100 halb eingerasteten Verbindungen könnten nicht außerhalb liegen (einseitige 95-%-Schranke).</translation>
    </message>
    <message>
        <source>No reading was noted as part-seated here.</source>
        <translation>Keine Messung wurde hier als halb eingerastet notiert.</translation>
    </message>
</context>
</TS>
