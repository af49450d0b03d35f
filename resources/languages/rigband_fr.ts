<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AircraftWords</name>
    <message>
        <source>All couplings in their own scatters</source>
        <translation>Tous les raccords, chacun en sa propre dispersion</translation>
    </message>
    <message>
        <source>No coupling has a band with readings to lay beside it yet.</source>
        <translation>Aucun raccord n’a encore une bande avec des mesures à comparer.</translation>
    </message>
    <message>
        <source>No rigging day has enough couplings to tell a shift yet.</source>
        <translation>Aucun jour de montage n’a encore assez de raccords pour révéler un décalage.</translation>
    </message>
    <message>
        <source>each coupling in its own scatters; 0 is the middle of its band; lines are means</source>
        <translation>chaque raccord en sa propre dispersion ; 0 est le milieu de sa bande ; les lignes sont des moyennes</translation>
    </message>
    <message>
        <source>each coupling in its own scatters; 0 is the middle of its band</source>
        <translation>chaque raccord en sa propre dispersion ; 0 est le milieu de sa bande</translation>
    </message>
    <message>
        <source>in own scatters</source>
        <translation>en dispersions du raccord</translation>
    </message>
    <message>
        <source>shared shift of each rigging day, in scatters</source>
        <translation>décalage commun de chaque jour de montage, en dispersions</translation>
    </message>
    <message>
        <source>shared shift</source>
        <translation>décalage commun</translation>
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
        <translation>%1, gauche</translation>
    </message>
    <message>
        <source>%1, right</source>
        <comment>coupling</comment>
        <translation>%1, droite</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>in doubt, because of the gauge</source>
        <translation>en doute, à cause de la jauge</translation>
    </message>
    <message>
        <source>%1, %2: %3 scatters from the middle of its band, %4. One sign only.</source>
        <comment>coupling, day: signed number, verdict</comment>
        <translation>%1, %2 : à %3 dispersions du milieu de sa bande, %4. Ce n’est qu’un indice.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 scatters, the median of %n coupling(s).</source>
        <comment>day, signed number</comment>
        <translation>
            <numerusform>%1 : %2 dispersions, la médiane de %n raccord.</numerusform>
            <numerusform>%1 : %2 dispersions, la médiane de %n raccords.</numerusform>
        </translation>
    </message>
    <message>
        <source>A shared shift.</source>
        <translation>Un décalage commun.</translation>
    </message>
    <message>
        <source>A shared shift, with this in common: %1.</source>
        <comment>gauge or person</comment>
        <translation>Un décalage commun, avec ceci en commun : %1.</translation>
    </message>
    <message numerus="yes">
        <source>Shared shift of %n rigging day(s).</source>
        <translation>
            <numerusform>Décalage commun de %n jour de montage.</numerusform>
            <numerusform>Décalage commun de %n jours de montage.</numerusform>
        </translation>
    </message>
    <message>
        <source>On none did all couplings move together.</source>
        <translation>Aucun jour où tous les raccords aient bougé ensemble.</translation>
    </message>
    <message>
        <source>Left and Right move, plus and minus zoom, Home and End go to the ends, 0 shows everything, Up and Down go from coupling to coupling.</source>
        <translation>Gauche et Droite déplacent, plus et moins zooment, Début et Fin vont aux extrémités, 0 montre tout, Haut et Bas vont de raccord en raccord.</translation>
    </message>
    <message>
        <source>%1 %2 scatters, %3.</source>
        <comment>coupling, signed number, verdict</comment>
        <translation>%1 %2 dispersions, %3.</translation>
    </message>
    <message>
        <source>The last reading of each coupling in its own scatters from the middle of its band.</source>
        <translation>La dernière mesure de chaque raccord, en sa propre dispersion à partir du milieu de sa bande.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Choisi : %1.</translation>
    </message>
    <message>
        <source>Each verdict is one sign only.</source>
        <translation>Chaque verdict n’est qu’un indice.</translation>
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
        <translation>Écrire le rapport (%1)</translation>
    </message>
    <message>
        <source>What the columns mean (%1)</source>
        <translation>Ce que veulent dire les colonnes (%1)</translation>
    </message>
    <message>
        <source>This file knows no airframe yet. Begin in Set up (Ctrl+5).</source>
        <translation>Ce fichier ne connaît encore aucun planeur. Commencer dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>This airframe has no coupling yet. Add them in Set up (Ctrl+5); then every rigging adds to this page.</source>
        <translation>Ce planeur n’a encore aucun raccord. Les ajouter dans Réglages (Ctrl+5) ; chaque montage complète alors cette page.</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Ce qui ressort</translation>
    </message>
    <message>
        <source>Enter or a click: its readings in Trends. %1: the next one.</source>
        <translation>Enter ou un clic : ses mesures dans Évolution. %1 : le suivant.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more in the list below.</source>
        <translation>
            <numerusform>Et %n de plus dans la liste ci-dessous.</numerusform>
            <numerusform>Et %n de plus dans la liste ci-dessous.</numerusform>
        </translation>
    </message>
    <message>
        <source>Enter: its readings in Trends.</source>
        <translation>Enter : ses mesures dans Évolution.</translation>
    </message>
    <message>
        <source>Couplings, what stands out first</source>
        <translation>Raccords, ce qui ressort d’abord</translation>
    </message>
    <message>
        <source>Enter on a row: its readings and what to look at. 1 to 8: sort by that column. 0: what stands out first. Esc or Alt+Left there comes back here.</source>
        <translation>Enter sur une ligne : ses mesures et ce qu’il faut regarder. 1 à 8 : trier selon cette colonne. 0 : ce qui ressort d’abord. Là-bas, Esc ou Alt+Gauche ramène ici.</translation>
    </message>
    <message>
        <source>Coupling,
latest reading</source>
        <translation>Raccord,
dernière mesure</translation>
    </message>
    <message>
        <source>Gap on
its own band</source>
        <translation>Écart sur
sa bande</translation>
    </message>
    <message>
        <source>What moved,
since when</source>
        <translation>Ce qui a bougé,
depuis quand</translation>
    </message>
    <message>
        <source>Farthest
away, mm</source>
        <translation>Au plus
loin, mm</translation>
    </message>
    <message>
        <source>Scatter,
mm</source>
        <translation>Dispersion,
mm</translation>
    </message>
    <message>
        <source>Chance outside
at the annual</source>
        <translation>Probabilité hors
bande à la visite</translation>
    </message>
    <message>
        <source>Open
questions</source>
        <translation>Questions
ouvertes</translation>
    </message>
    <message>
        <source>What stands out,
gravest first</source>
        <translation>Ce qui ressort,
plus grave d’abord</translation>
    </message>
    <message>
        <source>Coupling, latest reading: the last locked reading in this period and how it lies to the coupling’s own band.</source>
        <translation>Raccord, dernière mesure : la dernière mesure verrouillée de cette période et comment elle se situe par rapport à la bande du raccord.</translation>
    </message>
    <message>
        <source>Gap on its own band: green is where 95 % of this coupling’s locked readings fall, ochre is near its edge, grey is outside; the bar across is the latest reading. Every band is drawn equally wide, so that rows compare.</source>
        <translation>Écart sur sa bande : vert, là où tombent 95 % des mesures verrouillées de ce raccord ; ocre, près du bord ; gris, hors bande ; la barre en travers est la dernière mesure. Chaque bande est dessinée de même largeur, pour que les lignes se comparent.</translation>
    </message>
    <message>
        <source>What moved: a step in mm, or a drift in mm per 100 riggings, plus when the gap grows, with its 95 % interval and the rigging it began at. None told: the readings show none, which is not to say that nothing moved.</source>
        <translation>Ce qui a bougé : un saut en mm, ou une dérive en mm par 100 montages, plus quand l’écart grandit, avec son intervalle à 95 % et le montage où cela a commencé. Rien d’indiqué : les mesures n’en montrent pas, ce qui ne veut pas dire que rien n’a bougé.</translation>
    </message>
    <message>
        <source>Farthest away: how far the gap, apart from the scatter between riggings, came from the middle of the band in this period. Single readings may lie farther off.</source>
        <translation>Au plus loin : jusqu’où l’écart, sans compter la dispersion entre les montages, s’est éloigné du milieu de la bande dans cette période. Des mesures isolées peuvent être plus loin.</translation>
    </message>
    <message>
        <source>Scatter: how much the last ten readings differ among themselves, with that of all before them below. Springs, grease, wear and several measurers all show here.</source>
        <translation>Dispersion : à quel point les dix dernières mesures diffèrent entre elles, avec, dessous, celle de toutes les précédentes. Ressorts, graisse, usure et plusieurs personnes qui mesurent se voient tous ici.</translation>
    </message>
    <message>
        <source>Chance outside at the annual: if the gap goes on as the readings say, how likely a reading then lies outside the band. 20 in 100 means 20 of 100 such readings.</source>
        <translation>Probabilité hors bande à la visite : si l’écart continue comme le disent les mesures, la probabilité qu’une mesure soit alors hors de la bande. 20 sur 100 veut dire : 20 mesures sur 100 comme celle-là.</translation>
    </message>
    <message>
        <source>Open questions: what nobody has found out and signed for yet.</source>
        <translation>Questions ouvertes : ce que personne n’a encore éclairci et signé.</translation>
    </message>
    <message>
        <source>What stands out: signs, gravest first. None of them is a diagnosis, and an empty line says no more than that.</source>
        <translation>Ce qui ressort : des indices, le plus grave d’abord. Aucun n’est un diagnostic, et une ligne vide n’en dit pas plus.</translation>
    </message>
    <message>
        <source>Marks: disc with a tick, inside; triangle, near the edge, or inside with something told beside it; diamond, outside; half disc, cannot tell; dashed ring, no band yet; small ring, not read. A band is the coupling’s own past, never a limit.</source>
        <translation>Marques : disque coché, dans la bande ; triangle, près du bord, ou dans la bande avec une indication à côté ; losange, hors bande ; demi-disque, on ne peut pas dire ; anneau en tirets, pas encore de bande ; petit anneau, pas mesuré. Une bande est le passé du raccord lui-même, jamais une limite.</translation>
    </message>
    <message>
        <source>nothing that these readings show</source>
        <translation>rien de visible dans ces mesures</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between signs</comment>
        <translation> ; </translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>questions</comment>
        <translation>
            <numerusform>%n ouverte</numerusform>
            <numerusform>%n ouvertes</numerusform>
        </translation>
    </message>
    <message>
        <source>Is it the coupling, the leaf set or the person?</source>
        <translation>Est-ce le raccord, le jeu de lames ou la personne ?</translation>
    </message>
    <message>
        <source>What all couplings share on each rigging day, in their own scatters</source>
        <translation>Ce que tous les raccords ont en commun chaque jour de montage, chacun en sa propre dispersion</translation>
    </message>
    <message>
        <source>Who measures like whom</source>
        <translation>Qui mesure comme qui</translation>
    </message>
    <message>
        <source>Distance from the mean of all, mm, with its 95 % interval; spread at the right</source>
        <translation>Distance à la moyenne de tous, mm, avec son intervalle à 95 % ; étalement à droite</translation>
    </message>
    <message>
        <source>Outside its band</source>
        <translation>Hors de sa bande</translation>
    </message>
    <message>
        <source>Enter or a click: that reading in Trends. %1: the next one.</source>
        <translation>Enter ou un clic : cette mesure dans Évolution. %1 : la suivante.</translation>
    </message>
    <message>
        <source>Open questions</source>
        <translation>Questions ouvertes</translation>
    </message>
    <message>
        <source>Ctrl+6 shows and closes them.</source>
        <translation>Ctrl+6 les montre et les clôt.</translation>
    </message>
    <message>
        <source>Leaf sets and other gauges</source>
        <translation>Jeux de lames et autres jauges</translation>
    </message>
    <message>
        <source>Fittings and what changed</source>
        <translation>Poses et ce qui a changé</translation>
    </message>
    <message>
        <source>Too few readings</source>
        <translation>Trop peu de mesures</translation>
    </message>
    <message>
        <source>Riggings</source>
        <translation>Montages</translation>
    </message>
    <message>
        <source>No gauge in use.</source>
        <translation>Aucune jauge en service.</translation>
    </message>
    <message>
        <source>open</source>
        <translation>question ouverte</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation>en doute</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a story's title, its state</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>column, figure</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>column, figure, interval</comment>
        <translation>%1 : %2, %3</translation>
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
        <translation>Jour de référence</translation>
    </message>
    <message>
        <source>The owner and one other, on a day without flying, the glider on trestles. Ten readings of each coupling or more make its band.</source>
        <translation>Le propriétaire et une autre personne, un jour sans vol, le planeur sur tréteaux. Dix mesures ou plus de chaque raccord font sa bande.</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Raccords</translation>
    </message>
    <message>
        <source>No airframe is chosen. Enter one under Airframe first.</source>
        <translation>Aucun planeur n’est choisi. En saisir d’abord un sous « Planeur ».</translation>
    </message>
    <message>
        <source>None of the couplings has a gap to measure.</source>
        <translation>Aucun raccord n’a d’écart à mesurer.</translation>
    </message>
    <message>
        <source>No gap to measure: %1.</source>
        <translation>Pas d’écart à mesurer : %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between couplings</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>This airframe has no couplings yet. Enter them first.</source>
        <translation>Ce planeur n’a pas encore de raccords. Les saisir d’abord.</translation>
    </message>
    <message>
        <source>Nobody is entered yet. Enter the people first.</source>
        <translation>Il n’y a encore personne dans ce fichier. Saisir d’abord les personnes.</translation>
    </message>
    <message>
        <source>No leaf set is entered yet. Enter one first.</source>
        <translation>Aucun jeu de lames n’est encore saisi. En saisir d’abord un.</translation>
    </message>
    <message>
        <source>Choose a coupling.</source>
        <translation>Choisir un raccord.</translation>
    </message>
    <message>
        <source>This coupling has no fitting that a reading could belong to. Start one under Couplings.</source>
        <translation>Ce raccord n’a pas de pose à laquelle une mesure pourrait appartenir. En commencer une sous « Raccords ».</translation>
    </message>
    <message numerus="yes">
        <source>%n confirmed reading(s)</source>
        <translation>
            <numerusform>%n mesure confirmée</numerusform>
            <numerusform>%n mesures confirmées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n confirmed reading(s), thin band</source>
        <translation>
            <numerusform>%n mesure confirmée, bande mince</numerusform>
            <numerusform>%n mesures confirmées, bande mince</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n confirmed reading(s), frozen</source>
        <translation>
            <numerusform>%n mesure confirmée, figée</numerusform>
            <numerusform>%n mesures confirmées, figées</numerusform>
        </translation>
    </message>
    <message>
        <source>no fitting yet</source>
        <translation>pas encore de pose</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Mesuré par</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Choisir une personne</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Mesuré avec</translation>
    </message>
    <message>
        <source>Choose a leaf set or gauge</source>
        <translation>Choisir un jeu de lames ou une jauge</translation>
    </message>
    <message>
        <source>%1 (in doubt)</source>
        <comment>leaf set</comment>
        <translation>%1 (en doute)</translation>
    </message>
    <message>
        <source>1  Disconnected, cleaned and connected again?</source>
        <translation>1  Désaccouplé, nettoyé et raccordé à nouveau ?</translation>
    </message>
    <message>
        <source>Before every reading. Without it the band comes out too narrow.</source>
        <translation>Avant chaque mesure. Sinon la bande devient trop étroite.</translation>
    </message>
    <message>
        <source>2  Locked, confirmed otherwise than by the gap?</source>
        <translation>2  Verrouillé, confirmé autrement que par l’écart ?</translation>
    </message>
    <message>
        <source>Ball seen in the socket, tab or witness hole, sleeve at its stop, pull. Never by the gap: that would go in a circle.</source>
        <translation>Bille vue dans la cage, patte ou trou témoin, manchon en butée, essai de traction. Jamais par l’écart : ce serait tourner en rond.</translation>
    </message>
    <message>
        <source>First choose who measures.</source>
        <translation>Choisir d’abord qui mesure.</translation>
    </message>
    <message>
        <source>First choose what is measured with.</source>
        <translation>Choisir d’abord avec quoi on mesure.</translation>
    </message>
    <message>
        <source>That leaf set is in doubt since its last check. A baseline is not read with it: choose another.</source>
        <translation>Ce jeu de lames est en doute depuis son dernier contrôle. Une série de référence ne se mesure pas avec : en choisir un autre.</translation>
    </message>
    <message>
        <source>Another person measures: the cycle starts anew.</source>
        <translation>Une autre personne mesure : le cycle recommence.</translation>
    </message>
    <message>
        <source>Disconnect, clean and connect again; then answer the first question.</source>
        <translation>Désaccoupler, nettoyer et raccorder à nouveau ; puis répondre à la première question.</translation>
    </message>
    <message>
        <source>Confirm that it is locked; then answer the second question.</source>
        <translation>Confirmer qu’il est verrouillé ; puis répondre à la deuxième question.</translation>
    </message>
    <message>
        <source>No reading is taken: read twice without disconnecting, the joint says the same twice and the band comes out too narrow. Disconnect, clean, connect, then answer yes.</source>
        <translation>Aucune mesure n’est prise : mesurée deux fois sans être désaccouplée, la liaison dit deux fois la même chose et la bande devient trop étroite. Désaccoupler, nettoyer, raccorder, puis répondre oui.</translation>
    </message>
    <message>
        <source>No reading is taken: a band made of joints that were not locked would call a bad joint usual. Disconnect, clean and connect again; if it does not lock then, leave it and call whom you call.</source>
        <translation>Aucune mesure n’est prise : une bande faite de liaisons non verrouillées dirait habituelle une mauvaise liaison. Désaccoupler, nettoyer et raccorder à nouveau ; si elle ne se verrouille pas alors, laisser en l’état et appeler la personne à appeler.</translation>
    </message>
    <message>
        <source>Now read: the thickest leaf that enters freely. Leaf clean and square, sleeve at its stop by its own spring, no hand on it, no force.</source>
        <translation>Mesurer maintenant : la lame la plus épaisse qui entre librement. Lame propre et d’équerre, manchon en butée par son propre ressort, aucune main dessus, sans forcer.</translation>
    </message>
    <message>
        <source>Give the figure that was right instead of %1 (%2, %3). The wrong one stays, with a line through it.</source>
        <translation>Donner la bonne valeur au lieu de %1 (%2, %3). La fausse reste, barrée d’un trait.</translation>
    </message>
    <message>
        <source>Leave it as it was  (Esc)</source>
        <translation>Laisser tel quel  (Esc)</translation>
    </message>
    <message>
        <source>%1, saved %2. Next cycle: disconnect, clean and connect again.</source>
        <translation>%1, enregistré %2. Cycle suivant : désaccoupler, nettoyer et raccorder à nouveau.</translation>
    </message>
    <message>
        <source>%1 takes its place, saved %2. The wrong one stays in the list.</source>
        <translation>%1 prend sa place, enregistré %2. La fausse reste dans la liste.</translation>
    </message>
    <message>
        <source>Not saved.</source>
        <translation>Non enregistré.</translation>
    </message>
    <message numerus="yes">
        <source>by %n person(s)</source>
        <translation>
            <numerusform>par %n personne</numerusform>
            <numerusform>par %n personnes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>with %n gauge(s)</source>
        <translation>
            <numerusform>avec %n jauge</numerusform>
            <numerusform>avec %n jauges</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s)</source>
        <translation>
            <numerusform>sur %n jour</numerusform>
            <numerusform>sur %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2, %3, %4.</source>
        <comment>readings by people, with gauges, on days</comment>
        <translation>%1 %2, %3, %4.</translation>
    </message>
    <message>
        <source>Two people, two leaf sets and two days make the band honest.</source>
        <translation>Deux personnes, deux jeux de lames et deux jours rendent la bande honnête.</translation>
    </message>
    <message>
        <source>No band below %1 readings: %2 still missing.</source>
        <translation>Pas de bande sous %1 mesures : il en manque encore %2.</translation>
    </message>
    <message>
        <source>These readings make no band: each of them is open on one side. Read with a gauge that reaches further.</source>
        <translation>Ces mesures ne font pas de bande : chacune est ouverte d’un côté. Mesurer avec une jauge qui va plus loin.</translation>
    </message>
    <message>
        <source>Thin band: only %1 readings. %2 make one that can be frozen.</source>
        <translation>Bande mince : seulement %1 mesures. %2 en font une qui peut être figée.</translation>
    </message>
    <message>
        <source>Band from %1 readings.</source>
        <translation>Bande d’après %1 mesures.</translation>
    </message>
    <message>
        <source>From outer edge to outer edge it is %1 mm wide (%2), from inner edge to inner edge %3 mm (%4).</source>
        <translation>D’un bord extérieur à l’autre, elle est large de %1 mm (%2), d’un bord intérieur à l’autre de %3 mm (%4).</translation>
    </message>
    <message>
        <source>If the next one reads like the others, it becomes %1 mm narrower between the outer edges; otherwise it may become wider.</source>
        <translation>Si la suivante est comme les autres, elle devient plus étroite de %1 mm entre les bords extérieurs ; sinon elle peut s’élargir.</translation>
    </message>
    <message>
        <source>If the next one reads like the others, it becomes narrower by less than %1 mm.</source>
        <translation>Si la suivante est comme les autres, elle devient plus étroite de moins de %1 mm.</translation>
    </message>
    <message>
        <source>If the next one reads like the others, it does not become narrower.</source>
        <translation>Si la suivante est comme les autres, elle ne devient pas plus étroite.</translation>
    </message>
    <message>
        <source>Of 10 000 locked readings about 27 fall beyond the outer edges, on average over couplings. One band from few readings may hold noticeably more or less.</source>
        <translation>Sur 10 000 mesures verrouillées, environ 27 tombent au-delà des bords extérieurs, en moyenne sur les raccords. Une bande tirée de peu de mesures peut contenir nettement plus ou moins.</translation>
    </message>
    <message>
        <source>The band is this coupling's own past, never a limit.</source>
        <translation>La bande est le propre passé de ce raccord, jamais une limite.</translation>
    </message>
    <message>
        <source>Readings so far</source>
        <translation>Mesures jusqu’ici</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>today, %1</source>
        <translation>aujourd’hui, %1</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Avec</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Ce qu’elle est devenue</translation>
    </message>
    <message>
        <source>counts for the band</source>
        <translation>compte pour la bande</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>corrigée : %1</translation>
    </message>
    <message>
        <source>corrects another: %1</source>
        <translation>en corrige une autre : %1</translation>
    </message>
    <message>
        <source>left out by %1: %2</source>
        <translation>écartée par %1 : %2</translation>
    </message>
    <message>
        <source>unlike the others: measure again, or leave it out with a reason</source>
        <translation>différente des autres : mesurer à nouveau, ou l’écarter avec une raison</translation>
    </message>
    <message>
        <source>its gauge is in doubt from %1: does not count</source>
        <translation>sa jauge est en doute à partir du %1 : ne compte pas</translation>
    </message>
    <message>
        <source>came after the freeze, does not count</source>
        <translation>venue après que la bande a été figée, ne compte pas</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1 ; %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Wrong leaf pressed  (%1)</source>
        <translation>Mauvaise lame choisie  (%1)</translation>
    </message>
    <message>
        <source>Leave out of the band  (%1)</source>
        <translation>Écarter de la bande  (%1)</translation>
    </message>
    <message>
        <source>Left out by</source>
        <translation>Écartée par</translation>
    </message>
    <message>
        <source>Choose a reading in the list first.</source>
        <translation>Choisir d’abord une mesure dans la liste.</translation>
    </message>
    <message>
        <source>That reading was corrected or left out before. It stays as it is.</source>
        <translation>Cette mesure a déjà été corrigée ou écartée. Elle reste telle quelle.</translation>
    </message>
    <message>
        <source>This baseline is frozen: its readings are neither corrected nor left out any more.</source>
        <translation>Cette série de référence est figée : ses mesures ne sont plus ni corrigées ni écartées.</translation>
    </message>
    <message>
        <source>Choose who leaves it out first. The name stands beside it.</source>
        <translation>Choisir d’abord qui l’écarte. Le nom reste à côté.</translation>
    </message>
    <message>
        <source>Choose who corrects it first. The correction stands in that person's name.</source>
        <translation>Choisir d’abord qui la corrige. La correction est au nom de cette personne.</translation>
    </message>
    <message>
        <source>Wrong leaf pressed</source>
        <translation>Mauvaise lame choisie</translation>
    </message>
    <message>
        <source>What was wrong with %1, read at %2? Your words stand beside it for good.</source>
        <translation>Qu’est-ce qui était faux dans %1, mesuré à %2 ? Vos mots restent à côté pour toujours.</translation>
    </message>
    <message>
        <source>Leave out of the band</source>
        <translation>Écarter de la bande</translation>
    </message>
    <message>
        <source>Why does %1, read at %2, not belong to the band? Your words stand beside it for good.</source>
        <translation>Pourquoi %1, mesuré à %2, n’appartient-il pas à la bande ? Vos mots restent à côté pour toujours.</translation>
    </message>
    <message>
        <source>Freeze this baseline</source>
        <translation>Figer cette série de référence</translation>
    </message>
    <message>
        <source>A frozen baseline stays as it is, so that slow movement shows against it. It takes two people.</source>
        <translation>Une série de référence figée reste telle quelle, pour qu’un mouvement lent se voie par rapport à elle. Il faut deux personnes.</translation>
    </message>
    <message>
        <source>First name</source>
        <translation>Premier nom</translation>
    </message>
    <message>
        <source>Second name, another person</source>
        <translation>Deuxième nom, une autre personne</translation>
    </message>
    <message>
        <source>Freeze  (%1)</source>
        <translation>Figer  (%1)</translation>
    </message>
    <message>
        <source>Freeze it</source>
        <translation>Figer</translation>
    </message>
    <message>
        <source>%1: freeze the baseline of %2 readings, in the names of %3 and %4? It cannot be thawed: only a refit starts a new one.</source>
        <translation>%1 : figer la série de référence de %2 mesures, aux noms de %3 et %4 ? C’est définitif : seule une nouvelle pose en commence une autre.</translation>
    </message>
    <message numerus="yes">
        <source>It cannot be frozen yet: %n reading(s) of %1.</source>
        <translation>
            <numerusform>Elle ne peut pas encore être figée : %n mesure sur %1.</numerusform>
            <numerusform>Elle ne peut pas encore être figée : %n mesures sur %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>It cannot be frozen yet: a reading in the list is unlike the others. Correct it, or leave it out with a reason and a name.</source>
        <translation>Elle ne peut pas encore être figée : une mesure de la liste est différente des autres. La corriger, ou l’écarter avec une raison et un nom.</translation>
    </message>
    <message>
        <source>It cannot be frozen: the readings scatter more than a band can follow. Look at the joint, the leaves and how each person reads.</source>
        <translation>Elle ne peut pas être figée : les mesures se dispersent plus qu’une bande ne peut suivre. Regarder la liaison, les lames et la façon dont chacun mesure.</translation>
    </message>
    <message>
        <source>Choose two different people. Nobody is filled in.</source>
        <translation>Choisir deux personnes différentes. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Frozen on %1 by %2 and %3.</source>
        <translation>Figée le %1 par %2 et %3.</translation>
    </message>
    <message>
        <source>Later readings do not move this band. A refit, an adjustment or a new part starts a new fitting with a baseline of its own.</source>
        <translation>Les mesures ultérieures ne déplacent pas cette bande. Une repose, un réglage ou une pièce changée commence une nouvelle pose avec sa propre série de référence.</translation>
    </message>
    <message>
        <source>Measured by %1, put right by %2: the reading stays in the name of %1.</source>
        <comment>persons</comment>
        <translation>Mesurée par %1, corrigée par %2 : la mesure reste au nom de %1.</translation>
    </message>
    <message>
        <source>If it was read at another coupling or by another person, leave it out (%1) and read there, or in that name, again.</source>
        <comment>its key</comment>
        <translation>Si la mesure vient d’un autre raccord ou d’une autre personne, l’écarter (%1) et mesurer de nouveau là, ou à ce nom.</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>Where its couplings are, and what locked looks like</source>
        <translation>Où sont ses raccords, et à quoi ils ressemblent verrouillés</translation>
    </message>
    <message>
        <source>%1-card.pdf</source>
        <comment>a file's name: registration</comment>
        <translation>%1-card.pdf</translation>
    </message>
    <message>
        <source>For whoever stands at the glider and knows it less well. It does not say how any joint stands today: that takes the look, the gap, the pull and the second person.</source>
        <translation>Pour qui se tient près du planeur et le connaît moins bien. La carte ne dit pas comment une liaison se présente aujourd’hui : il faut pour cela le contrôle visuel, l’écart, l’essai de traction et la deuxième personne.</translation>
    </message>
    <message>
        <source>From above, nose up. Numbers in the order of rigging. L is the left wing, with the red light, R the right one, with the green. A square connects by itself.</source>
        <translation>Vu de dessus, nez en haut. Numéros dans l’ordre de montage. G est l’aile gauche, au feu rouge, D l’aile droite, au feu vert. Un carré se raccorde de lui-même.</translation>
    </message>
    <message>
        <source>From above, nose up. Numbers in the order of rigging. L is the left wing, with the red light, R the right one, with the green.</source>
        <translation>Vu de dessus, nez en haut. Numéros dans l’ordre de montage. G est l’aile gauche, au feu rouge, D l’aile droite, au feu vert.</translation>
    </message>
    <message>
        <source>When something does not stand as it should</source>
        <translation>Quand quelque chose n’est pas comme il faut</translation>
    </message>
    <message>
        <source>Stop, leave everything as it is, and call the person entitled to decide.</source>
        <translation>S’arrêter, tout laisser en l’état et appeler la personne habilitée à décider.</translation>
    </message>
    <message>
        <source>Stop, leave everything as it is, and call %1.</source>
        <translation>S’arrêter, tout laisser en l’état et appeler %1.</translation>
    </message>
    <message>
        <source>No band and no limit stands on this card. Not an aircraft record, inspection or release. Manuals, directives and persons entitled to decide prevail.</source>
        <translation>Aucune bande et aucune limite ne figure sur cette carte. Ni dossier d’aéronef, ni contrôle, ni remise en service. Les manuels, les consignes et les personnes habilitées à décider priment.</translation>
    </message>
    <message>
        <source>In the order of rigging</source>
        <translation>Dans l’ordre de montage</translation>
    </message>
    <message>
        <source>Seen from %1.</source>
        <translation>Vu depuis %1.</translation>
    </message>
    <message>
        <source>Seen from %1, mirror from %2.</source>
        <translation>Vu depuis %1, miroir depuis %2.</translation>
    </message>
    <message>
        <source>Mirror from %1.</source>
        <translation>Miroir depuis %1.</translation>
    </message>
    <message>
        <source>Held by its sleeve.</source>
        <translation>Tenu par son manchon.</translation>
    </message>
    <message>
        <source>Held by its safety pin.</source>
        <translation>Tenu par son épingle.</translation>
    </message>
    <message>
        <source>Held by its sleeve and its safety pin.</source>
        <translation>Tenu par son manchon et son épingle.</translation>
    </message>
    <message>
        <source>Connects by itself.</source>
        <translation>Se raccorde de lui-même.</translation>
    </message>
    <message>
        <source>Line or rod of the water ballast.</source>
        <translation>Conduite ou tringle du ballast.</translation>
    </message>
    <message>
        <source>Held as its manual says.</source>
        <translation>Tenu comme le dit son manuel.</translation>
    </message>
    <message>
        <source>What locked looks like, and what is not locked</source>
        <translation>À quoi ressemble une liaison verrouillée, et ce qui ne l’est pas</translation>
    </message>
    <message>
        <source>Look first, in this order. What cannot be seen takes a mirror or a light. The pictures are schematic, nothing to scale.</source>
        <translation>Regarder d’abord, dans cet ordre. Ce qui n’est pas visible demande un miroir ou une lampe. Les images sont schématiques, rien n’est à l’échelle.</translation>
    </message>
    <message>
        <source>Locking moves the tab away from the sleeve: %1.</source>
        <translation>Le verrouillage éloigne la patte du manchon : %1.</translation>
    </message>
    <message>
        <source>Locking moves the tab towards the sleeve: %1.</source>
        <translation>Le verrouillage rapproche la patte du manchon : %1.</translation>
    </message>
    <message>
        <source>The sleeve slides over the tab: %1.</source>
        <translation>Le manchon glisse par-dessus la patte : %1.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>state of a joint</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Drawn as it was read, not as its layout was entered: %1. Look at the real one.</source>
        <comment>names of couplings</comment>
        <translation>Dessiné d’après les mesures, pas d’après la disposition saisie : %1. Regarder le vrai raccord.</translation>
    </message>
    <message>
        <source>Engaged all the way.</source>
        <translation>Engagé à fond.</translation>
    </message>
    <message>
        <source>The parts meet all round, flush.</source>
        <translation>Les pièces se touchent tout autour, à fleur.</translation>
    </message>
    <message>
        <source>Line or rod connected, as its manual says.</source>
        <translation>Conduite ou tringle raccordée, comme le dit son manuel.</translation>
    </message>
    <message>
        <source>Connected as its manual says.</source>
        <translation>Raccordé comme le dit son manuel.</translation>
    </message>
    <message>
        <source>Ball in the socket, at the bottom.</source>
        <translation>Bille dans la cage, au fond.</translation>
    </message>
    <message>
        <source>Plunger home: the tab at its place, the witness hole clear.</source>
        <translation>Verrou à fond : la patte à sa place, le trou témoin dégagé.</translation>
    </message>
    <message>
        <source>Sleeve at its stop, no thread showing.</source>
        <translation>Manchon en butée, aucun filetage visible.</translation>
    </message>
    <message>
        <source>Safety pin in and through.</source>
        <translation>Épingle en place et traversante.</translation>
    </message>
    <message>
        <source>Nobody has said how plunger and sleeve stand to each other at: %1. The parts may lie otherwise there.</source>
        <comment>names of couplings</comment>
        <translation>Personne n’a dit comment verrou et manchon sont l’un par rapport à l’autre sur : %1. Les pièces peuvent y être placées autrement.</translation>
    </message>
    <message>
        <source>To keep in mind</source>
        <translation>À garder à l’esprit</translation>
    </message>
    <message>
        <source>One sign alone says little. Look, gap, pull and second person stand beside each other, and none replaces another.</source>
        <translation>Un seul indice dit peu. Contrôle visuel, écart, essai de traction et deuxième personne vont côte à côte, et aucun ne remplace un autre.</translation>
    </message>
    <message>
        <source>An empty socket can look locked, and its gap can read like any other. First the ball.</source>
        <translation>Une cage vide peut paraître verrouillée, et son écart peut se mesurer comme tout autre. D’abord la bille.</translation>
    </message>
    <message>
        <source>A part-seated joint can still move its control, go unnoticed in the control check, and let go later.</source>
        <translation>Une liaison à demi engagée peut encore transmettre sa commande, passer inaperçue à l’essai des commandes et lâcher plus tard.</translation>
    </message>
    <message>
        <source>Pull: hand on the rod, clear of plunger and sleeve, firmly away from the ball, in the release direction and slightly off it. Nothing moves.</source>
        <translation>Essai de traction : main sur la tringle, sans toucher ni verrou ni manchon, tirer fermement pour éloigner de la bille, dans le sens de la libération et un peu de biais. Rien ne bouge.</translation>
    </message>
    <message>
        <source>“Cannot see” is an answer: then the rigging stops until somebody has seen it.</source>
        <translation>« Pas visible » est une réponse : le montage s’arrête alors jusqu’à ce que quelqu’un l’ait vu.</translation>
    </message>
    <message>
        <source>Connecting again without finding out why is not a fix.</source>
        <translation>Raccorder à nouveau sans trouver pourquoi ne répare rien.</translation>
    </message>
    <message>
        <source>Called away in the middle of a joint: begin it again, at the look.</source>
        <translation>Appelé ailleurs au milieu d’une liaison : la recommencer, par le contrôle visuel.</translation>
    </message>
    <message>
        <source>The second person looks and pulls without seeing or hearing the first result, and connected none of these joints.</source>
        <translation>La deuxième personne fait le contrôle visuel et l’essai de traction sans voir ni entendre le premier résultat, et n’a raccordé aucune de ces liaisons.</translation>
    </message>
    <message>
        <source>After a hand on a joint: look at it again, then the control check of its surfaces again.</source>
        <translation>Après une main sur une liaison : la regarder à nouveau, puis refaire l’essai des commandes de ses gouvernes.</translation>
    </message>
</context>
<context>
    <name>CauseWords</name>
    <message>
        <source>The readings cannot tell which of these it is, or whether it is one of them.</source>
        <translation>Les mesures ne peuvent pas dire laquelle de ces causes c’est, ni si c’en est une.</translation>
    </message>
    <message>
        <source>Check the leaf set, read again with another person, and look at each joint.</source>
        <translation>Contrôler le jeu de lames, mesurer de nouveau avec une autre personne, et regarder chaque liaison.</translation>
    </message>
    <message>
        <source>Stiff grease leaves plungers short.</source>
        <translation>Une graisse dure empêche les verrous d’aller à fond.</translation>
    </message>
    <message>
        <source>%1 Seen with such readings: %2. Look at: %3. For: %4.</source>
        <comment>pattern, causes, places, persons</comment>
        <translation>%1 Vu avec de telles mesures : %2. À regarder : %3. Pour : %4.</translation>
    </message>
    <message>
        <source>worn, burred or dirty leaves, another person's hand, stiff grease that leaves plungers short</source>
        <translation>lames usées, à bavure ou sales, la main d’une autre personne, graisse dure qui empêche les verrous d’aller à fond</translation>
    </message>
    <message>
        <source>the leaf set; the same couplings read again by another person; each joint, its plunger and its grease</source>
        <translation>le jeu de lames ; les mêmes raccords mesurés de nouveau par une autre personne ; chaque liaison, son verrou et sa graisse</translation>
    </message>
    <message>
        <source>the owner</source>
        <translation>le propriétaire</translation>
    </message>
    <message>
        <source>The gap grows slowly.</source>
        <translation>L’écart croît lentement.</translation>
    </message>
    <message>
        <source>The gap shrinks slowly.</source>
        <translation>L’écart diminue lentement.</translation>
    </message>
    <message>
        <source>a sleeve stop that settles back, a creeping locknut</source>
        <translation>une butée du manchon qui recule, un contre-écrou qui se dévisse peu à peu</translation>
    </message>
    <message>
        <source>a sleeve edge that spreads, a sleeve creeping forward, dirt under the sleeve stop</source>
        <translation>un bord du manchon qui s’évase, un manchon qui avance, de la saleté sous la butée du manchon</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between causes</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>the ball (is it round?), the plunger nose (is it polished?), the thread</source>
        <translation>la bille (est-elle ronde ?), le bec du verrou (est-il poli ?), le filetage</translation>
    </message>
    <message>
        <source>the sleeve stop, cleaned first; then ball, plunger nose and thread</source>
        <translation>la butée du manchon, d’abord nettoyée ; puis bille, bec du verrou et filetage</translation>
    </message>
    <message>
        <source>the engineer</source>
        <translation>le mécanicien</translation>
    </message>
    <message>
        <source>wear of the ball or the plunger nose, which lets the plunger travel on</source>
        <translation>usure de la bille ou du bec du verrou, qui laisse le verrou aller plus loin</translation>
    </message>
    <message>
        <source>wear of the ball or the plunger nose (which way it moves the gap hangs on the layout)</source>
        <translation>usure de la bille ou du bec du verrou (dans quel sens elle déplace l’écart dépend de la disposition)</translation>
    </message>
    <message>
        <source>The readings scatter more than they did.</source>
        <translation>Les mesures se dispersent plus qu’avant.</translation>
    </message>
    <message>
        <source>a tired plunger or sleeve spring, dry or hardened grease, a socket in which the ball rests at several places, several measurers</source>
        <translation>un ressort de verrou ou de manchon fatigué, graisse sèche ou durcie, une cage où la bille repose à plusieurs endroits, plusieurs personnes qui mesurent</translation>
    </message>
    <message>
        <source>the feel of the springs, the grease, free play, who measured</source>
        <translation>les ressorts au toucher, la graisse, le jeu, qui a mesuré</translation>
    </message>
    <message>
        <source>the owner, then the engineer</source>
        <translation>le propriétaire, puis le mécanicien</translation>
    </message>
    <message>
        <source>The readings scatter less than they did.</source>
        <translation>Les mesures se dispersent moins qu’avant.</translation>
    </message>
    <message>
        <source>readings copied, leaves too coarse, one person who writes what is expected</source>
        <translation>mesures recopiées, lames à pas trop grand, une personne qui écrit ce qui est attendu</translation>
    </message>
    <message>
        <source>the step of the leaves, the times of the readings, a second reading taken blind</source>
        <translation>le pas des lames, les heures des mesures, une deuxième mesure faite à l’aveugle</translation>
    </message>
    <message>
        <source>The readings moved by a step, beside an entry in the events.</source>
        <translation>Les mesures ont fait un saut, à côté d’une entrée dans les événements.</translation>
    </message>
    <message>
        <source>rod length set anew, ball, socket, sleeve or spring changed, cleaned and greased</source>
        <translation>longueur de tringle réglée à nouveau, bille, cage, manchon ou ressort changé, nettoyé et graissé</translation>
    </message>
    <message>
        <source>what was done that day; a new fitting with its own baseline, compared with the old one</source>
        <translation>ce qui a été fait ce jour-là ; une nouvelle pose avec sa propre série de référence, comparée à l’ancienne</translation>
    </message>
    <message>
        <source>The readings moved by a step and stayed there.</source>
        <translation>Les mesures ont fait un saut et y sont restées.</translation>
    </message>
    <message>
        <source>a sleeve that moved, a loose locknut, a bent tab, a cracked sleeve, a part swapped</source>
        <translation>un manchon déplacé, un contre-écrou desserré, une patte tordue, un manchon fissuré, une pièce échangée</translation>
    </message>
    <message>
        <source>thread showing, the paint mark on the locknut, cracks in the sleeve</source>
        <translation>filetage visible, le repère de peinture sur le contre-écrou, fissures dans le manchon</translation>
    </message>
    <message>
        <source>The last reading lay outside the band.</source>
        <translation>La dernière mesure était hors de la bande.</translation>
    </message>
    <message>
        <source>a part-seated ball, a sleeve not at its stop, grit or a plug of grease, a tilted or burred leaf, a figure read or written wrongly</source>
        <translation>une bille à demi engagée, un manchon pas en butée, du sable ou un bouchon de graisse, une lame inclinée ou à bavure, un chiffre mal lu ou mal écrit</translation>
    </message>
    <message>
        <source>what was found and done each time. Stop, leave it as it is, call. Only when the cause is found: disconnect, clean, connect, look, pull, read</source>
        <translation>ce qui a été trouvé et fait chaque fois. S’arrêter, laisser en l’état, appeler. Seulement quand la cause est trouvée : désaccoupler, nettoyer, raccorder, regarder, tirer, mesurer</translation>
    </message>
    <message>
        <source>whoever rigs, then the engineer</source>
        <translation>les personnes qui montent, puis le mécanicien</translation>
    </message>
    <message>
        <source>The same coupling on the other side moves the same way.</source>
        <translation>Le même raccord de l’autre côté bouge dans le même sens.</translation>
    </message>
    <message>
        <source>wear by use, grease that has stiffened</source>
        <translation>usure par l’usage, graisse qui a durci</translation>
    </message>
    <message>
        <source>plunger, grease and wear of both; the count of riggings</source>
        <translation>verrou, graisse et usure des deux ; le nombre de montages</translation>
    </message>
    <message>
        <source>%1 of %2 couplings moved together that day.</source>
        <translation>%1 raccords sur %2 ont bougé ensemble ce jour-là.</translation>
    </message>
    <message>
        <source>At a rigging the joint was found not secured.</source>
        <translation>Lors d’un montage, la liaison a été trouvée non assurée.</translation>
    </message>
    <message>
        <source>At a rigging the joint was found part-seated.</source>
        <translation>Lors d’un montage, la liaison a été trouvée à demi engagée.</translation>
    </message>
    <message>
        <source>a sleeve that was not let go to its stop or stuck before it, a pin left out, haste</source>
        <translation>un manchon qui n’est pas revenu jusqu’à sa butée ou s’est coincé avant, une épingle oubliée, la hâte</translation>
    </message>
    <message>
        <source>a ball that was not pushed home, stiff grease or grit before the plunger, haste</source>
        <translation>une bille pas poussée à fond, de la graisse durcie ou des saletés devant le verrou, la hâte</translation>
    </message>
    <message>
        <source>what was found and done each time; plunger, sleeve or pin, and their springs</source>
        <translation>ce qui a été trouvé et fait chaque fois ; verrou, manchon ou épingle, et leurs ressorts</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period, the last one too.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période, la dernière aussi.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période, la dernière aussi.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period, one of them at the last rigging.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période, au dernier montage.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période, dont une au dernier montage.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; the last reading is near the edge.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période ; la dernière mesure est près du bord.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période ; la dernière mesure est près du bord.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; of the last reading it cannot be told where it lies.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période ; de la dernière mesure on ne peut pas dire où elle se trouve.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période ; de la dernière mesure on ne peut pas dire où elle se trouve.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; for the last reading there is no band yet.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période ; pour la dernière mesure il n’y a pas encore de bande.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période ; pour la dernière mesure il n’y a pas encore de bande.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) lay outside the band in this period; the last reading is inside.</source>
        <translation>
            <numerusform>%n mesure était hors de la bande dans cette période ; la dernière mesure est dans la bande.</numerusform>
            <numerusform>%n mesures étaient hors de la bande dans cette période ; la dernière mesure est dans la bande.</numerusform>
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
            <numerusform>%Ln fait, état final %1</numerusform>
            <numerusform>%Ln faits, état final %1</numerusform>
        </translation>
    </message>
    <message>
        <source>File: %1</source>
        <translation>Fichier : %1</translation>
    </message>
    <message>
        <source>Whole hash at the end (SHA-256): %1</source>
        <translation>Empreinte entière à la fin (SHA-256) : %1</translation>
    </message>
    <message>
        <source>The end stands for every fact as it was saved. Compare it with an earlier print. Whether each fact still reads as it was saved is told beside it. It is no signature: somebody who works out the whole file anew leaves no trace. Keep your prints.</source>
        <translation>L’état final représente chaque fait tel qu’il a été enregistré. Le comparer à une impression antérieure. Il est dit à côté si chaque fait est encore tel qu’il a été enregistré. Ce n’est pas une signature : qui recalcule tout le fichier ne laisse aucune trace. Garder les impressions.</translation>
    </message>
    <message>
        <source>1 fact in this file is not as Rigband saved it.</source>
        <translation>1 fait de ce fichier n’est pas tel que Rigband l’a enregistré.</translation>
    </message>
    <message>
        <source>%1 facts in this file are not as Rigband saved them.</source>
        <translation>%1 faits de ce fichier ne sont pas tels que Rigband les a enregistrés.</translation>
    </message>
    <message>
        <source>Another program has changed the file. Rigband cannot tell what stood there before: compare with the copies beside the file and with your prints, and ask who changed it. Until then trust no band and no verdict that rests on these facts.</source>
        <translation>Un autre programme a modifié le fichier. Rigband ne peut pas dire ce qui y figurait avant : comparer avec les copies à côté du fichier et avec les impressions, et demander qui l’a modifié. D’ici là, ne se fier à aucune bande ni à aucun verdict qui repose sur ces faits.</translation>
    </message>
    <message>
        <source>Every fact in this file reads as it was saved, as far as its chain tells.</source>
        <translation>Chaque fait de ce fichier est tel qu’il a été enregistré, pour autant que sa chaîne le dise.</translation>
    </message>
    <message>
        <source>Nothing is known of changes before the chain began: %1 facts were taken over as they stood, from an older file or from the one that this was handed on from.</source>
        <translation>On ne sait rien des modifications d’avant le début de la chaîne : %1 faits ont été repris tels quels, d’un fichier plus ancien ou de celui d’où celui-ci a été transmis.</translation>
    </message>
    <message>
        <source>The facts have not been held against the chain yet, so nothing is said of changes by other programs.</source>
        <translation>Les faits n’ont pas encore été comparés à la chaîne ; rien n’est donc dit de modifications par d’autres programmes.</translation>
    </message>
    <message>
        <source>saved on %1</source>
        <translation>enregistré le %1</translation>
    </message>
    <message>
        <source>saved on %1 by %2</source>
        <translation>enregistré le %1 par %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what, which value</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Gone from the file: %1.</source>
        <comment>which fact</comment>
        <translation>Disparu du fichier : %1.</translation>
    </message>
    <message>
        <source>Changed since it was saved: %1. The file now says: %2.</source>
        <comment>which fact, what it says</comment>
        <translation>Modifié depuis l’enregistrement : %1. Le fichier dit maintenant : %2.</translation>
    </message>
    <message>
        <source>Put in by another program: %1. It says: %2.</source>
        <comment>which fact, what it says</comment>
        <translation>Introduit par un autre programme : %1. Il y est dit : %2.</translation>
    </message>
    <message>
        <source>A fact saved just before this one is missing, or the order was changed: %1.</source>
        <comment>which fact</comment>
        <translation>Un fait enregistré juste avant celui-ci manque, ou l’ordre a été modifié : %1.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more, which are not listed.</source>
        <translation>
            <numerusform>Et %n de plus, qui n’est pas énuméré.</numerusform>
            <numerusform>Et %n de plus, qui ne sont pas énumérés.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is how this file ends now.</source>
        <translation>%1 est l’état final actuel de ce fichier.</translation>
    </message>
    <message>
        <source>%1 is how this file ended after fact %2, saved on %3.</source>
        <translation>%1 était l’état final de ce fichier après le fait %2, enregistré le %3.</translation>
    </message>
    <message>
        <source>But facts in it have been changed since, see above.</source>
        <translation>Mais des faits y ont été modifiés depuis, voir plus haut.</translation>
    </message>
    <message>
        <source>Every fact saved up to then is there and reads as it was saved.</source>
        <translation>Chaque fait enregistré jusque-là est présent et tel qu’il a été enregistré.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>two sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Type what stands after “end” at the foot of an earlier print, several with commas between: the report says whether this file still has it.</source>
        <translation>Saisir ce qui figure après « état final » au bas d’une impression antérieure, plusieurs séparés par des virgules : le rapport dit si ce fichier l’a encore.</translation>
    </message>
    <message>
        <source>“%1” is not an end. An end has ten signs, such as ABCDE-FG234; 0, 1, 8 and 9 do not occur. Look at the foot of the print again.</source>
        <translation>« %1 » n’est pas un état final. Un état final a dix signes, comme ABCDE-FG234 ; 0, 1, 8 et 9 n’y figurent pas. Regarder de nouveau au bas de l’impression.</translation>
    </message>
    <message>
        <source>These readings want a second look. Each may have a plain reason: readings that were corrected or taken out since, another baseline, a laptop whose clock was wrong.</source>
        <translation>Ces mesures demandent un second regard. Chacune peut avoir une raison simple : des mesures corrigées ou retirées depuis, une autre série de référence, un ordinateur dont l’horloge était fausse.</translation>
    </message>
    <message>
        <source>No reading of the period was shown another verdict at the time than is worked out now, saved under a clock that had been set back, or saved into a closed record.</source>
        <translation>Aucune mesure de la période n’a reçu alors un autre verdict que celui calculé maintenant, ni n’a été enregistrée sous une horloge retardée ou dans une fiche close.</translation>
    </message>
    <message>
        <source>Shown at the time: %1. Worked out now: %2.</source>
        <translation>Affiché alors : %1. Calculé maintenant : %2.</translation>
    </message>
    <message>
        <source>Saved at %1 by the clock, which is earlier than something saved before it: the clock had been set back.</source>
        <translation>Enregistré d’après l’horloge : %1. C’est plus tôt que ce qui avait été enregistré avant : l’horloge avait été retardée.</translation>
    </message>
    <message>
        <source>Saved at %1 into a record that had been closed before.</source>
        <translation>Enregistré : %1, dans une fiche déjà close.</translation>
    </message>
    <message>
        <source>The file as evidence</source>
        <translation>Le fichier comme preuve</translation>
    </message>
    <message>
        <source>Show the facts</source>
        <translation>Montrer les faits</translation>
    </message>
    <message>
        <source>Show what does not stand as it was saved (Ctrl+7)</source>
        <translation>Montrer ce qui n’est pas tel qu’enregistré (Ctrl+7)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <comment>from the list of changed facts</comment>
        <translation>Retour  (Esc)</translation>
    </message>
    <message>
        <source>Back to the page before (Esc)</source>
        <comment>from the list of changed facts</comment>
        <translation>Retour à la page précédente (Esc)</translation>
    </message>
    <message>
        <source>person</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>airframe</source>
        <translation>planeur</translation>
    </message>
    <message>
        <source>leaf set or gauge</source>
        <translation>jeu de lames ou jauge</translation>
    </message>
    <message>
        <source>check of a gauge</source>
        <translation>contrôle d’une jauge</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>raccord</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>pose</translation>
    </message>
    <message>
        <source>event</source>
        <translation>événement</translation>
    </message>
    <message>
        <source>rigging record</source>
        <translation>fiche de montage</translation>
    </message>
    <message>
        <source>who connected</source>
        <translation>qui a raccordé</translation>
    </message>
    <message>
        <source>answer of the look</source>
        <translation>réponse du contrôle visuel</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>struck reading</source>
        <translation>mesure rayée</translation>
    </message>
    <message>
        <source>frozen baseline</source>
        <translation>série de référence figée</translation>
    </message>
    <message>
        <source>interruption</source>
        <translation>interruption</translation>
    </message>
    <message>
        <source>end of a record</source>
        <translation>fin d’une fiche</translation>
    </message>
    <message>
        <source>control surface</source>
        <translation>gouverne</translation>
    </message>
    <message>
        <source>answer of the control check</source>
        <translation>réponse de l’essai des commandes</translation>
    </message>
    <message>
        <source>measured deflection</source>
        <translation>débattement mesuré</translation>
    </message>
    <message>
        <source>tick of a list</source>
        <translation>coche d’une liste</translation>
    </message>
    <message>
        <source>question</source>
        <translation>question</translation>
    </message>
    <message>
        <source>answer to a question</source>
        <translation>réponse à une question</translation>
    </message>
    <message>
        <source>joint play</source>
        <translation>jeu de la rotule</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>withdrawn photo</source>
        <translation>photo retirée</translation>
    </message>
    <message>
        <source>round of practice</source>
        <translation>série d’exercice</translation>
    </message>
    <message>
        <source>answer in practice</source>
        <translation>réponse en exercice</translation>
    </message>
    <message>
        <source>rigging under supervision</source>
        <translation>montage encadré</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>validation de l’instruction</translation>
    </message>
    <message>
        <source>crossed study</source>
        <translation>étude croisée</translation>
    </message>
    <message>
        <source>place in a crossed study</source>
        <translation>place dans une étude croisée</translation>
    </message>
    <message>
        <source>reading in practice</source>
        <translation>mesure en exercice</translation>
    </message>
    <message>
        <source>taking back</source>
        <translation>retrait</translation>
    </message>
    <message>
        <source>decision between two files</source>
        <translation>décision entre deux fichiers</translation>
    </message>
    <message>
        <source>who may see own practice</source>
        <translation>qui peut voir ses propres exercices</translation>
    </message>
    <message>
        <source>fact</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>%1 is not an end of this file. Look whether it was typed rightly. It may belong to another file or copy, or have been printed between two joinings, or facts were changed or taken out. Find the file it was printed from.</source>
        <translation>%1 n’est pas un état final de ce fichier. Vérifier s’il a été bien tapé. Il peut appartenir à un autre fichier ou à une copie, ou avoir été imprimé entre deux intégrations, ou des faits ont été modifiés ou enlevés. Retrouver le fichier d’où vient l’impression.</translation>
    </message>
    <message>
        <source>What another program changed</source>
        <translation>Ce qu’un autre programme a modifié</translation>
    </message>
    <message>
        <source>The copies are listed with Ctrl+9.</source>
        <translation>Les copies sont affichées par Ctrl+9.</translation>
    </message>
    <message>
        <source>Every other fact in this file reads as it was saved, as far as its chain tells.</source>
        <translation>Tout autre fait de ce fichier est tel qu’il a été enregistré, pour autant que sa chaîne le dise.</translation>
    </message>
    <message>
        <source>Name replaced on request: %1, on %2.</source>
        <translation>Nom remplacé sur demande : %1, le %2.</translation>
    </message>
    <message>
        <source>Name replaced on request: %1, on %2 by %3.</source>
        <translation>Nom remplacé sur demande : %1, le %2 par %3.</translation>
    </message>
    <message>
        <source>What was saved of these persons before cannot be held against the chain any more; every other fact is.</source>
        <translation>Ce qui était enregistré de ces personnes auparavant ne peut plus être confronté à la chaîne ; tout autre fait peut l’être.</translation>
    </message>
    <message>
        <source>replaced name</source>
        <translation>nom remplacé</translation>
    </message>
    <message>
        <source>The last fact was saved on %1. Whether others behind it were cut off cannot be told from the file: compare its end with an earlier print or copy.</source>
        <translation>Le dernier fait a été enregistré le %1. Si d’autres ont été coupés derrière lui, le fichier ne peut pas le dire : comparer son état final à une impression ou une copie antérieure.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln byte(s)</source>
        <translation>
            <numerusform>%Ln octet</numerusform>
            <numerusform>%Ln octets</numerusform>
        </translation>
    </message>
    <message>
        <source>Where you know of no older file, somebody may have set this one back to before its chain began. Compare it with the copies beside it, and with the ends on earlier prints.</source>
        <translation>Si vous ne connaissez aucun fichier plus ancien, quelqu’un a peut-être ramené celui-ci à un état d’avant le début de sa chaîne. Comparez-le aux copies placées à côté et aux états finaux des impressions antérieures.</translation>
    </message>
    <message>
        <source>On %1 other letters were given for %2. Those given last hold.</source>
        <translation>Le %1, d’autres lettres ont été données pour %2. Les dernières données valent.</translation>
    </message>
    <message>
        <source>On %1 %3 gave other letters for %2. Those given last hold.</source>
        <translation>Le %1, %3 a donné d’autres lettres pour %2. Les dernières données valent.</translation>
    </message>
    <message>
        <source>Saved at %1 by the clock, which is still to come: a clock was wrong, or another program wrote it.</source>
        <translation>Enregistré le %1 d’après l’horloge, ce qui est encore à venir : une horloge était fausse, ou un autre programme l’a écrit.</translation>
    </message>
    <message>
        <source>Wants a second look: %1. %2</source>
        <comment>which fact, why</comment>
        <translation>À regarder de plus près : %1. %2</translation>
    </message>
</context>
<context>
    <name>ConflictWords</name>
    <message>
        <source>One record was closed twice</source>
        <translation>Une fiche a été close deux fois</translation>
    </message>
    <message>
        <source>One question was answered twice</source>
        <translation>Une question a reçu deux réponses</translation>
    </message>
    <message>
        <source>One thing was changed twice</source>
        <translation>Une chose a été modifiée deux fois</translation>
    </message>
    <message>
        <source>One reading was corrected twice</source>
        <translation>Une mesure a été corrigée deux fois</translation>
    </message>
    <message>
        <source>One day has two rigging records</source>
        <translation>Un jour a deux fiches de montage</translation>
    </message>
    <message>
        <source>One name stands twice</source>
        <translation>Un nom figure deux fois</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between what is said of a conflict</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Until somebody decides, the first of them counts: it was saved first.</source>
        <translation>Jusqu’à ce que quelqu’un décide, le premier compte : il a été enregistré en premier.</translation>
    </message>
    <message>
        <source>Until somebody decides, the first of them holds: it is the newer one.</source>
        <translation>Jusqu’à ce que quelqu’un décide, le premier vaut : c’est le plus récent.</translation>
    </message>
    <message>
        <source>Until somebody decides, both count as readings. The other one is then struck.</source>
        <translation>Jusqu’à ce que quelqu’un décide, les deux comptent comme mesures. L’autre est ensuite rayée.</translation>
    </message>
    <message>
        <source>Both records stay as they are. Somebody says whether they tell of one rigging.</source>
        <translation>Les deux fiches restent telles quelles. Quelqu’un dit si elles parlent d’un seul montage.</translation>
    </message>
    <message>
        <source>Until somebody decides, they are two, and each is listed.</source>
        <translation>Jusqu’à ce que quelqu’un décide, ils sont deux, et chacun est dans la liste.</translation>
    </message>
    <message>
        <source>The first</source>
        <translation>Le premier</translation>
    </message>
    <message>
        <source>The other</source>
        <translation>L’autre</translation>
    </message>
    <message>
        <source>The first holds</source>
        <translation>Le premier vaut</translation>
    </message>
    <message>
        <source>The other holds</source>
        <translation>L’autre vaut</translation>
    </message>
    <message>
        <source>Two riggings</source>
        <translation>Deux montages</translation>
    </message>
    <message>
        <source>Two different things</source>
        <translation>Deux choses différentes</translation>
    </message>
    <message>
        <source>One and the same rigging</source>
        <translation>Un seul et même montage</translation>
    </message>
    <message>
        <source>One and the same</source>
        <translation>Une seule et même chose</translation>
    </message>
    <message>
        <source>Two laptops say different things: 1 is open for a person to decide.</source>
        <translation>Deux ordinateurs disent des choses différentes : 1 contradiction attend qu’une personne décide.</translation>
    </message>
    <message>
        <source>Two laptops say different things: %1 are open for a person to decide.</source>
        <translation>Deux ordinateurs disent des choses différentes : %1 contradictions attendent qu’une personne décide.</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Décider</translation>
    </message>
    <message>
        <source>Show what was decided apart (Ctrl+8)</source>
        <translation>Montrer ce qui a été décidé séparément (Ctrl+8)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <comment>from what was decided apart</comment>
        <translation>Retour  (Esc)</translation>
    </message>
    <message>
        <source>Back to the page before (Esc)</source>
        <comment>from what was decided apart</comment>
        <translation>Retour à la page précédente (Esc)</translation>
    </message>
    <message>
        <source>What two laptops say differently</source>
        <translation>Ce que deux ordinateurs disent différemment</translation>
    </message>
    <message>
        <source>Nothing is open for a person to decide.</source>
        <translation>Rien n’attend qu’une personne décide.</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Ouvertes : %1</translation>
    </message>
    <message>
        <source>Up and Down choose, Tab goes on, Esc goes back.</source>
        <translation>Haut et Bas choisissent, Tab avance, Esc revient.</translation>
    </message>
    <message>
        <source>Who decides</source>
        <translation>Qui décide</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Choisir une personne</translation>
    </message>
    <message>
        <source>Say who decides this.</source>
        <translation>Dire qui décide.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Whom you asked, what you looked at.</source>
        <translation>À qui vous avez demandé, ce que vous avez regardé.</translation>
    </message>
    <message>
        <source>Say why: both stay in the file, and others will ask.</source>
        <translation>Dire pourquoi : les deux restent dans le fichier, et d’autres demanderont.</translation>
    </message>
    <message>
        <source>Kept. Both still stand in the file.</source>
        <translation>Conservé. Les deux figurent toujours dans le fichier.</translation>
    </message>
    <message>
        <source>If they are one and the same, stop using one of them and rename it in Set up.</source>
        <translation>Si c’est une seule et même chose, cesser d’utiliser l’un des deux et le renommer dans Réglages.</translation>
    </message>
    <message>
        <source>Nobody has decided these yet. Ask those who are named, then let a person decide in Rigband (Ctrl+8).</source>
        <translation>Personne n’en a encore décidé. Demander à ceux qui sont nommés, puis laisser une personne décider dans Rigband (Ctrl+8).</translation>
    </message>
    <message>
        <source>Decided</source>
        <translation>Décidé</translation>
    </message>
    <message>
        <source>What was decided between two laptops</source>
        <translation>Ce qui a été décidé entre deux ordinateurs</translation>
    </message>
    <message>
        <source>Both sides still stand in the file.</source>
        <translation>Les deux côtés restent dans le fichier.</translation>
    </message>
    <message>
        <source>%1: said by %2 on %3</source>
        <comment>what was decided, who, day</comment>
        <translation>%1 : dit par %2 le %3</translation>
    </message>
    <message>
        <source>Open for a person to decide: %1. The first: %2. The other: %3.</source>
        <comment>which, both sides</comment>
        <translation>À décider par une personne : %1. L’un : %2. L’autre : %3.</translation>
    </message>
    <message>
        <source>One thing is said twice, differently: it is open for a person to decide.</source>
        <translation>Une chose est dite deux fois, différemment : 1 contradiction attend qu’une personne décide.</translation>
    </message>
    <message>
        <source>Some things are said twice, differently: %1 are open for a person to decide.</source>
        <translation>Certaines choses sont dites deux fois, différemment : %1 contradictions attendent qu’une personne décide.</translation>
    </message>
    <message>
        <source>What is said twice, differently</source>
        <translation>Ce qui est dit deux fois, différemment</translation>
    </message>
    <message>
        <source>A reason is typed and nothing is decided by it yet. It is lost when this file is left now.</source>
        <translation>Un motif est saisi et rien n’est encore décidé avec lui. Il sera perdu si ce fichier est quitté maintenant.</translation>
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
        <translation>Qui a raccordé</translation>
    </message>
    <message>
        <source>Name everybody who connected a joint on each side. An independent second person neither connected nor measured the joint.</source>
        <translation>Nommer pour chaque côté toutes les personnes qui y ont raccordé une liaison. Une deuxième personne indépendante n’a ni raccordé ni mesuré la liaison.</translation>
    </message>
    <message>
        <source>Who connected the left side?</source>
        <translation>Qui a raccordé le côté gauche ?</translation>
    </message>
    <message>
        <source>Who connected the right side?</source>
        <translation>Qui a raccordé le côté droit ?</translation>
    </message>
    <message>
        <source>Who connected the tail and the middle?</source>
        <translation>Qui a raccordé la queue et le milieu ?</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>person and the key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Pas connu</translation>
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
        <translation>Pas encore dit.</translation>
    </message>
    <message>
        <source>Another press adds a name, or takes one of several away again.</source>
        <translation>Un autre appui ajoute un nom, ou en retire un s’il y en a plusieurs.</translation>
    </message>
    <message>
        <source>Next side  (Enter)</source>
        <translation>Côté suivant  (Enter)</translation>
    </message>
    <message>
        <source>Who connected  (Enter)</source>
        <translation>Qui a raccordé  (Enter)</translation>
    </message>
    <message>
        <source>Number keys: a name for the framed side. 0: not known.</source>
        <translation>Touches chiffrées : un nom pour le côté encadré. 0 : pas connu.</translation>
    </message>
    <message>
        <source>named for every side</source>
        <translation>nommé pour chaque côté</translation>
    </message>
    <message>
        <source>named for %1 of %2 sides</source>
        <translation>nommé pour %1 sur %2 côtés</translation>
    </message>
    <message>
        <source>%1: looked or measured here first</source>
        <translation>%1 : a regardé ou mesuré ici en premier</translation>
    </message>
    <message>
        <source>%1: connected this side</source>
        <translation>%1 : a raccordé ce côté</translation>
    </message>
    <message>
        <source>Choose the second person: somebody who neither connected nor measured this joint.</source>
        <translation>Choisir la deuxième personne : quelqu’un qui n’a ni raccordé ni mesuré cette liaison.</translation>
    </message>
    <message>
        <source>Everybody in this file connected this side or measured this joint. Choose one who did not measure it; the paper will say that this was no independent look.</source>
        <translation>Toutes les personnes de ce fichier ont raccordé ce côté ou mesuré cette liaison. Choisir quelqu’un qui ne l’a pas mesurée ; le papier dira que ce n’était pas un contrôle visuel indépendant.</translation>
    </message>
    <message>
        <source>%1 connected this side. This is no independent look, and the paper will say so.</source>
        <translation>%1 a raccordé ce côté. Ce n’est pas un contrôle visuel indépendant, et le papier le dira.</translation>
    </message>
    <message>
        <source>The left side was connected by %1.</source>
        <translation>Le côté gauche a été raccordé par %1.</translation>
    </message>
    <message>
        <source>The right side was connected by %1.</source>
        <translation>Le côté droit a été raccordé par %1.</translation>
    </message>
    <message>
        <source>The tail and the middle were connected by %1.</source>
        <translation>La queue et le milieu ont été raccordés par %1.</translation>
    </message>
    <message>
        <source>Nobody said who connected the left side.</source>
        <translation>Personne n’a dit qui a raccordé le côté gauche.</translation>
    </message>
    <message>
        <source>Nobody said who connected the right side.</source>
        <translation>Personne n’a dit qui a raccordé le côté droit.</translation>
    </message>
    <message>
        <source>Nobody said who connected the tail and the middle.</source>
        <translation>Personne n’a dit qui a raccordé la queue et le milieu.</translation>
    </message>
    <message>
        <source>Nobody said who connected the joints.</source>
        <translation>Personne n’a dit qui a raccordé les liaisons.</translation>
    </message>
    <message>
        <source>It is not known who connected the left side.</source>
        <translation>On ne sait pas qui a raccordé le côté gauche.</translation>
    </message>
    <message>
        <source>It is not known who connected the right side.</source>
        <translation>On ne sait pas qui a raccordé le côté droit.</translation>
    </message>
    <message>
        <source>It is not known who connected the tail and the middle.</source>
        <translation>On ne sait pas qui a raccordé la queue et le milieu.</translation>
    </message>
    <message>
        <source>No independent second name: %1 is named as having connected the left side.</source>
        <translation>Pas de second nom indépendant : d’après ce qui est indiqué, %1 a raccordé le côté gauche.</translation>
    </message>
    <message>
        <source>No independent second name: %1 is named as having connected the right side.</source>
        <translation>Pas de second nom indépendant : d’après ce qui est indiqué, %1 a raccordé le côté droit.</translation>
    </message>
    <message>
        <source>No independent second name: %1 is named as having connected the tail and the middle.</source>
        <translation>Pas de second nom indépendant : d’après ce qui est indiqué, %1 a raccordé la queue et le milieu.</translation>
    </message>
    <message>
        <source>%1, the second name, did no second look at any joint of this record.</source>
        <translation>%1, le second nom, n’a fait de second contrôle visuel à aucune liaison de cette fiche.</translation>
    </message>
    <message>
        <source>Whether %1, the second name, is independent is not known: it was not said for every side who connected.</source>
        <translation>On ne sait pas si %1, le second nom, est indépendant : il n’a pas été dit pour chaque côté qui a raccordé.</translation>
    </message>
    <message>
        <source>No independent look at this joint: %1, the second person, is named as having connected this side.</source>
        <translation>Pas de contrôle visuel indépendant à cette liaison : d’après ce qui est indiqué, %1, la deuxième personne, a raccordé ce côté.</translation>
    </message>
</context>
<context>
    <name>ControlWords</name>
    <message>
        <source>Control check</source>
        <translation>Essai des commandes</translation>
    </message>
    <message>
        <source>%1 of %2 surfaces</source>
        <translation>%1 gouvernes sur %2</translation>
    </message>
    <message>
        <source>no surfaces set up yet</source>
        <translation>aucune gouverne définie</translation>
    </message>
    <message>
        <source>Control check  (Enter)</source>
        <translation>Essai des commandes  (Enter)</translation>
    </message>
    <message>
        <source>Surfaces of the control check</source>
        <translation>Gouvernes de l’essai des commandes</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1 : fait</translation>
    </message>
    <message>
        <source>%1: begun</source>
        <translation>%1 : commencé</translation>
    </message>
    <message>
        <source>%1: waiting</source>
        <translation>%1 : en attente</translation>
    </message>
    <message>
        <source>%1: stop</source>
        <translation>%1 : arrêt</translation>
    </message>
    <message>
        <source>%1: open question</source>
        <translation>%1 : question ouverte</translation>
    </message>
    <message>
        <source>%1: try again</source>
        <translation>%1 : réessayer</translation>
    </message>
    <message>
        <source>to be tried again · %1</source>
        <translation>à réessayer · %1</translation>
    </message>
    <message>
        <source>Somebody was at %1 after this was tried. Try all of it again.</source>
        <translation>Quelqu’un est intervenu sur %1 après cet essai. Tout réessayer.</translation>
    </message>
    <message>
        <source>Nobody has set up yet what the control check goes through. Without surfaces the record cannot be closed as complete.</source>
        <translation>Personne n’a encore défini ce que l’essai des commandes passe en revue. Sans gouvernes, la fiche ne peut pas être close comme complète.</translation>
    </message>
    <message>
        <source>Others are added in Set up (Ctrl+5).</source>
        <translation>D’autres s’ajoutent dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>Add the usual surfaces  (Enter)</source>
        <translation>Ajouter les gouvernes habituelles  (Enter)</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>À la gouverne</translation>
    </message>
    <message>
        <source>In the cockpit</source>
        <translation>Dans l’habitacle</translation>
    </message>
    <message>
        <source>Choose who stands at the surface and who moves the control: two people. Nobody is filled in for you.</source>
        <translation>Choisir qui se tient à la gouverne et qui bouge la commande : deux personnes. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>One person cannot stand at the surface and sit in the cockpit. Choose two.</source>
        <translation>Une même personne ne peut pas se tenir à la gouverne et être assise dans l’habitacle. En choisir deux.</translation>
    </message>
    <message>
        <source>Tell the cockpit what to move</source>
        <translation>Dire à l’habitacle quoi bouger</translation>
    </message>
    <message>
        <source>Called aloud, from the surface</source>
        <translation>Annoncé à voix haute, depuis la gouverne</translation>
    </message>
    <message>
        <source>What was seen, beside what was expected</source>
        <translation>Ce qui a été vu, à côté de l’attendu</translation>
    </message>
    <message>
        <source>Stick to the left.</source>
        <translation>Manche à gauche.</translation>
    </message>
    <message>
        <source>Stick to the right.</source>
        <translation>Manche à droite.</translation>
    </message>
    <message>
        <source>Stick back.</source>
        <translation>Manche en arrière.</translation>
    </message>
    <message>
        <source>Stick forward.</source>
        <translation>Manche en avant.</translation>
    </message>
    <message>
        <source>Left pedal.</source>
        <translation>Palonnier à gauche.</translation>
    </message>
    <message>
        <source>Right pedal.</source>
        <translation>Palonnier à droite.</translation>
    </message>
    <message>
        <source>Flaps to positive.</source>
        <translation>Volets en positif.</translation>
    </message>
    <message>
        <source>Flaps to negative.</source>
        <translation>Volets en négatif.</translation>
    </message>
    <message>
        <source>Airbrake lever back.</source>
        <translation>Manette d’aérofreins en arrière.</translation>
    </message>
    <message>
        <source>Airbrake lever forward.</source>
        <translation>Manette d’aérofreins en avant.</translation>
    </message>
    <message>
        <source>Trim nose-up.</source>
        <translation>Compensateur à cabrer.</translation>
    </message>
    <message>
        <source>Trim nose-down.</source>
        <translation>Compensateur à piquer.</translation>
    </message>
    <message>
        <source>Dump lever to open.</source>
        <translation>Vidange sur ouvert.</translation>
    </message>
    <message>
        <source>Dump lever to shut.</source>
        <translation>Vidange sur fermé.</translation>
    </message>
    <message>
        <source>Move the control one way.</source>
        <translation>Bouger la commande dans un sens.</translation>
    </message>
    <message>
        <source>Move the control the other way.</source>
        <translation>Bouger la commande dans l’autre sens.</translation>
    </message>
    <message>
        <source>%1 What does the surface do?</source>
        <comment>what the cockpit moves</comment>
        <translation>%1 Que fait la gouverne ?</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>question, answer</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Say it aloud, then press it.</source>
        <translation>Le dire à voix haute, puis appuyer.</translation>
    </message>
    <message>
        <source>Up</source>
        <comment>what a surface does</comment>
        <translation>Monte</translation>
    </message>
    <message>
        <source>Down</source>
        <comment>what a surface does</comment>
        <translation>Descend</translation>
    </message>
    <message>
        <source>Pilot's left</source>
        <comment>what a surface does</comment>
        <translation>Gauche du pilote</translation>
    </message>
    <message>
        <source>Pilot's right</source>
        <comment>what a surface does</comment>
        <translation>Droite du pilote</translation>
    </message>
    <message>
        <source>Out</source>
        <comment>what a surface does</comment>
        <translation>Sort</translation>
    </message>
    <message>
        <source>In</source>
        <comment>what a surface does</comment>
        <translation>Rentre</translation>
    </message>
    <message>
        <source>Opens</source>
        <comment>what a surface does</comment>
        <translation>S’ouvre</translation>
    </message>
    <message>
        <source>Shuts</source>
        <comment>what a surface does</comment>
        <translation>Se ferme</translation>
    </message>
    <message>
        <source>Nothing</source>
        <comment>what a surface does</comment>
        <translation>Rien</translation>
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
        <translation>%1 Vu : %2.</translation>
    </message>
    <message>
        <source>%1 Seen: %2. Expected: %3.</source>
        <comment>what the cockpit moved, what the surface did, what it had to do</comment>
        <translation>%1 Vu : %2. Attendu : %3.</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Attendu : %1</translation>
    </message>
    <message>
        <source>Arrow keys: which way it moved. N: nothing. C: cannot see.</source>
        <translation>Flèches : dans quel sens elle a bougé. N : rien. C : pas visible.</translation>
    </message>
    <message>
        <source>Held: resists one way?</source>
        <translation>Tenue : résiste dans un sens ?</translation>
    </message>
    <message>
        <source>Held: resists the other way?</source>
        <translation>Tenue : résiste dans l’autre ?</translation>
    </message>
    <message>
        <source>Is that what it should do?</source>
        <translation>Est-ce ce qu’elle doit faire ?</translation>
    </message>
    <message>
        <source>Full travel, to both stops?</source>
        <translation>Plein débattement, aux deux butées ?</translation>
    </message>
    <message>
        <source>Neutral with the control?</source>
        <translation>Au neutre avec la commande ?</translation>
    </message>
    <message>
        <source>Free play as it should be?</source>
        <translation>Jeu tel qu’il doit être ?</translation>
    </message>
    <message>
        <source>Free, no rubbing?</source>
        <translation>Libre, sans frottement ?</translation>
    </message>
    <message>
        <source>Both lock, with even force?</source>
        <translation>Les deux verrouillent, même effort ?</translation>
    </message>
    <message>
        <source>Every notch, both equal?</source>
        <translation>À chaque cran, les deux pareils ?</translation>
    </message>
    <message>
        <source>Moves, and stays where it is set?</source>
        <translation>Bouge, et reste où on le règle ?</translation>
    </message>
    <message>
        <source>What does the surface do, one way?</source>
        <translation>Que fait la gouverne, dans un sens ?</translation>
    </message>
    <message>
        <source>What does the surface do, the other way?</source>
        <translation>Que fait la gouverne, dans l’autre sens ?</translation>
    </message>
    <message>
        <source>Both open, both shut?</source>
        <translation>Les deux ouverts, puis fermés ?</translation>
    </message>
    <message>
        <source>Palm near the drive; the cockpit pushes.</source>
        <translation>Paume près du guignol ; l’habitacle pousse.</translation>
    </message>
    <message>
        <source>The same, the cockpit pulls.</source>
        <translation>De même, l’habitacle tire.</translation>
    </message>
    <message>
        <source>Compare what it did with what is expected.</source>
        <translation>Comparer ce qu’elle a fait à ce qui est attendu.</translation>
    </message>
    <message>
        <source>Hand off; nothing stops it early.</source>
        <translation>Main retirée ; rien ne l’arrête avant la butée.</translation>
    </message>
    <message>
        <source>Control centred: surface in line.</source>
        <translation>Commande au neutre : gouverne alignée.</translation>
    </message>
    <message>
        <source>Cockpit held: no click, no more than ever.</source>
        <translation>Commande tenue : pas de claquement, pas plus que d’habitude.</translation>
    </message>
    <message>
        <source>No rubbing, no change of friction.</source>
        <translation>Pas de frottement, pas de changement d’effort.</translation>
    </message>
    <message>
        <source>Over centre; both rise together.</source>
        <translation>Point dur passé ; les deux sortent ensemble.</translation>
    </message>
    <message>
        <source>Left and right stand alike in each.</source>
        <translation>Gauche et droite pareilles à chacun.</translation>
    </message>
    <message>
        <source>Through its whole travel.</source>
        <translation>Sur toute sa course.</translation>
    </message>
    <message>
        <source>Together, and tight when shut.</source>
        <translation>Ensemble, et étanches une fois fermés.</translation>
    </message>
    <message>
        <source>Y, N, C answer the framed question. P, U, D go to a figure.</source>
        <translation>Y, N, C répondent à la question encadrée. P, U, D vont à une valeur.</translation>
    </message>
    <message>
        <source>Stopped: read what stands here before anything else. Enter once more goes on; this surface stays stopped, and nothing further is tried on it.</source>
        <translation>Arrêté : lire ce qui figure ici avant toute autre chose. Enter encore une fois continue ; cette gouverne reste arrêtée, et rien de plus n’y est essayé.</translation>
    </message>
    <message>
        <source>Next surface  (Enter)</source>
        <translation>Gouverne suivante  (Enter)</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêt</translation>
    </message>
    <message>
        <source>%1 did not move as expected. Crossed or reversed controls have led to loss of control at lift-off. Nothing this check can find is worse. Stop the whole check here.</source>
        <translation>%1 n’a pas bougé comme attendu. Des commandes croisées ou inversées ont mené à la perte de contrôle au décollage. Rien de ce que cet essai peut trouver n’est pire. Arrêter tout l’essai ici.</translation>
    </message>
    <message>
        <source>%1 did nothing while its control was moved. A surface that is not connected has led to loss of control at lift-off. Nothing this check can find is worse. Stop the whole check here.</source>
        <translation>%1 n’a rien fait pendant que sa commande était bougée. Une gouverne non raccordée a mené à la perte de contrôle au décollage. Rien de ce que cet essai peut trouver n’est pire. Arrêter tout l’essai ici.</translation>
    </message>
    <message>
        <source>%1: “%2” was answered with no. Try nothing further on it.</source>
        <translation>%1 : la réponse à « %2 » a été non. Ne rien y essayer de plus.</translation>
    </message>
    <message>
        <source>Leave it as it is, and call the person entitled to decide. Whom to call is not set up yet (Ctrl+5).</source>
        <translation>Laisser en l’état et appeler la personne habilitée. Qui appeler n’est pas encore défini (Ctrl+5).</translation>
    </message>
    <message>
        <source>Leave it as it is, and call %1.</source>
        <translation>Laisser en l’état et appeler %1.</translation>
    </message>
    <message>
        <source>Leave it as it is, and call %1 (%2).</source>
        <translation>Laisser en l’état et appeler %1 (%2).</translation>
    </message>
    <message>
        <source>“Cannot see” was answered here. It stands, and the record cannot be closed as complete until a named person has said what was found.</source>
        <translation>La réponse ici a été « pas visible ». Elle reste, et la fiche ne peut pas être close comme complète avant que quelqu’un ait dit, sous son nom, ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>Measured, where you measure</source>
        <translation>Mesuré, là où vous mesurez</translation>
    </message>
    <message>
        <source>Free play at the trailing edge</source>
        <translation>Jeu au bord de fuite</translation>
    </message>
    <message>
        <source>To the left</source>
        <translation>Vers la gauche</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Vers le haut</translation>
    </message>
    <message>
        <source>To the right</source>
        <translation>Vers la droite</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Vers le bas</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>what is measured, and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Up and down in</source>
        <translation>Haut et bas en</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>degrés</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Measured: %1.</source>
        <translation>Mesuré : %1.</translation>
    </message>
    <message>
        <source>Measured: %1, which is %2.</source>
        <translation>Mesuré : %1, soit %2.</translation>
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
        <translation>D’après le manuel, %1 : au plus %2.</translation>
    </message>
    <message>
        <source>From the manual, %1: %2, plus or minus %3.</source>
        <translation>D’après le manuel, %1 : %2, plus ou moins %3.</translation>
    </message>
    <message>
        <source>%1 The distance from the hinge is not set up, so the two cannot be compared.</source>
        <translation>%1 La distance à la charnière n’est pas définie ; les deux ne peuvent pas être comparés.</translation>
    </message>
    <message>
        <source>%1 This is %2 more than the manual's most.</source>
        <translation>%1 C’est %2 de plus que le maximum du manuel.</translation>
    </message>
    <message>
        <source>%1 This is %2 more than the manual's range.</source>
        <translation>%1 C’est %2 au-dessus de la plage du manuel.</translation>
    </message>
    <message>
        <source>%1 This is %2 less than the manual's range.</source>
        <translation>%1 C’est %2 au-dessous de la plage du manuel.</translation>
    </message>
    <message>
        <source>%1 This is no more than that.</source>
        <translation>%1 Ce n’est pas plus que cela.</translation>
    </message>
    <message>
        <source>%1 This lies in that range.</source>
        <translation>%1 C’est dans cette plage.</translation>
    </message>
    <message>
        <source>Up is %1 times down. About two to one is common practice, not a limit; the manual's figures decide.</source>
        <translation>Vers le haut, c’est %1 fois le débattement vers le bas. Environ deux pour un est courant, ce n’est pas une limite ; les valeurs du manuel décident.</translation>
    </message>
    <message>
        <source>%1: left %2, right %3.</source>
        <comment>direction, figures</comment>
        <translation>%1 : gauche %2, droite %3.</translation>
    </message>
    <message>
        <source>%1: left %2, right %3, %4 apart.</source>
        <comment>direction, figures</comment>
        <translation>%1 : gauche %2, droite %3, différence %4.</translation>
    </message>
    <message>
        <source>Tag the cockpit. Close the record with this open (last line of the list), or say under Questions (Ctrl+6) what was found, once a person entitled to decide has found it.</source>
        <translation>Étiquette dans l’habitacle. Clore la fiche avec ce point en suspens (dernière ligne de la liste), ou dire sous Questions (Ctrl+6) ce qui a été trouvé, dès qu’une personne habilitée l’a trouvé.</translation>
    </message>
</context>
<context>
    <name>CopyWords</name>
    <message>
        <source>Read what can be read into a new file…</source>
        <translation>Lire ce qui peut l’être dans un nouveau fichier…</translation>
    </message>
    <message>
        <source>Ctrl+R. The file that cannot be opened is only read and stays as it is.</source>
        <translation>Ctrl+R. Le fichier qui ne peut pas être ouvert est seulement lu et reste tel quel.</translation>
    </message>
    <message>
        <source>Nothing was found that had to be left out. What was never readable cannot be counted.</source>
        <translation>Rien n’a été trouvé qu’il ait fallu omettre. Ce qui n’a jamais été lisible ne peut pas être compté.</translation>
    </message>
    <message>
        <source>Copies of this file…</source>
        <translation>Copies de ce fichier…</translation>
    </message>
    <message>
        <source>Open a file first: its copies lie in a folder beside it.</source>
        <translation>Ouvrir d’abord un fichier : ses copies sont dans un dossier à côté.</translation>
    </message>
    <message>
        <source>Copies of this file</source>
        <translation>Copies de ce fichier</translation>
    </message>
    <message>
        <source>There is no copy yet. One is kept when a file is opened for the first time on a day.</source>
        <translation>Il n’y a pas encore de copie. On en conserve une quand un fichier est ouvert pour la première fois de la journée.</translation>
    </message>
    <message>
        <source>Copies in the folder beside it: %1</source>
        <translation>Copies dans le dossier à côté : %1</translation>
    </message>
    <message>
        <source>Up and Down: another copy. Enter: look at it. Esc: back.</source>
        <translation>Haut et Bas : autre copie. Enter : la regarder. Esc : retour.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day and size of a copy</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The copy: %1.</source>
        <translation>La copie : %1.</translation>
    </message>
    <message>
        <source>Nothing had been saved in it yet.</source>
        <translation>Rien n’y avait encore été enregistré.</translation>
    </message>
    <message>
        <source>The file that is open never ended so: it and the copy went their own ways, or facts that the copy holds were changed or taken out of the file since.</source>
        <translation>Le fichier ouvert n’a jamais fini ainsi : lui et la copie ont suivi chacun leur voie, ou des faits que contient la copie ont été modifiés ou retirés du fichier depuis.</translation>
    </message>
    <message>
        <source>The file that is open ended so after fact %1. But facts in it have been changed by another program since: the copy may hold what was saved.</source>
        <translation>Le fichier ouvert a fini ainsi après le fait %1. Mais des faits y ont été modifiés depuis par un autre programme : la copie contient peut-être ce qui a été enregistré.</translation>
    </message>
    <message>
        <source>The file that is open ended so after fact %1: all that stood in the copy is still in the file.</source>
        <translation>Le fichier ouvert a fini ainsi après le fait %1 : tout ce qui figurait dans la copie est encore dans le fichier.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>La regarder</translation>
    </message>
    <message>
        <source>Enter. The copy is shown in place of the file and only read; nothing can be saved in it.</source>
        <translation>Enter. La copie est montrée à la place du fichier et seulement lue ; rien ne peut y être enregistré.</translation>
    </message>
    <message>
        <source>Bring back as a new file…</source>
        <translation>Reprendre comme nouveau fichier…</translation>
    </message>
    <message>
        <source>Ctrl+B. What the copy holds is written under a new name and opened. The file and the copy stay as they are.</source>
        <translation>Ctrl+B. Ce que contient la copie est écrit sous un nouveau nom et ouvert. Le fichier et la copie restent tels quels.</translation>
    </message>
    <message>
        <source>%1 now holds what the copy held, and is opened. The file that the copy was made of stays as it is: what was saved in it since then is only there.</source>
        <translation>%1 contient maintenant ce que contenait la copie, et est ouvert. Le fichier d’où vient la copie reste tel quel : ce qui y a été enregistré depuis ne se trouve que là.</translation>
    </message>
    <message>
        <source>This is a copy of %1, of %2. It is only looked at: nothing can be saved in it.</source>
        <translation>Ceci est une copie de %1, du %2. Elle est seulement regardée : rien ne peut y être enregistré.</translation>
    </message>
    <message>
        <source>Back to the file</source>
        <translation>Retour au fichier</translation>
    </message>
    <message>
        <source>Ctrl+W. The copy stays as it is.</source>
        <translation>Ctrl+W. La copie reste telle quelle.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file name of a copy, what it holds</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>The end is a short sign for all that was saved, in its order. It stands at the foot of every print.</source>
        <translation>L’état final est un signe court pour tout ce qui est enregistré, dans son ordre. Il figure au pied de chaque impression.</translation>
    </message>
</context>
<context>
    <name>CouplingWords</name>
    <message>
        <source>Couplings in rigging order</source>
        <translation>Raccords dans l’ordre de montage</translation>
    </message>
    <message>
        <source>No coupling yet. Start from the usual ones, or add your own.</source>
        <translation>Pas encore de raccord. Partir des habituels, ou ajouter les vôtres.</translation>
    </message>
    <message>
        <source>Add a coupling</source>
        <translation>Ajouter un raccord</translation>
    </message>
    <message>
        <source>Move up  (Alt+Up)</source>
        <translation>Monter  (Alt+Haut)</translation>
    </message>
    <message>
        <source>Move down  (Alt+Down)</source>
        <translation>Descendre  (Alt+Bas)</translation>
    </message>
    <message>
        <source>New fitting</source>
        <translation>Nouvelle pose</translation>
    </message>
    <message>
        <source>Usual couplings</source>
        <translation>Raccords habituels</translation>
    </message>
    <message>
        <source>Take out of use</source>
        <translation>Mettre hors service</translation>
    </message>
    <message>
        <source>Put back in use</source>
        <translation>Remettre en service</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>order, coupling</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1 (out of use)</source>
        <translation>%1 (hors service)</translation>
    </message>
    <message>
        <source>fitting since %1: %2</source>
        <translation>pose depuis le %1 : %2</translation>
    </message>
    <message>
        <source>band drawn</source>
        <translation>bande établie</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>pas encore de bande</translation>
    </message>
    <message>
        <source>layout A</source>
        <translation>disposition A</translation>
    </message>
    <message>
        <source>layout B</source>
        <translation>disposition B</translation>
    </message>
    <message>
        <source>layout C</source>
        <translation>disposition C</translation>
    </message>
    <message>
        <source>layout not known</source>
        <translation>disposition inconnue</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>A new coupling</source>
        <translation>Un nouveau raccord</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Modifier : %1</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>As you say it at the wing: Left aileron, wing root.</source>
        <translation>Comme vous le dites à l’aile : Aileron gauche, emplanture.</translation>
    </message>
    <message>
        <source>&amp;Circuit</source>
        <translation>&amp;Circuit</translation>
    </message>
    <message>
        <source>Aileron, airbrake, flap, elevator, trim …</source>
        <translation>Aileron, aérofrein, volet, profondeur, compensateur …</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>Cô&amp;té</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>Neither</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>&amp;How it is reached</source>
        <translation>&amp;Accès</translation>
    </message>
    <message>
        <source>From above by the hatch, mirror needed, fin top …</source>
        <translation>D’en haut par la trappe, miroir nécessaire, haut de dérive …</translation>
    </message>
    <message>
        <source>&amp;Layout of tab and sleeve</source>
        <translation>&amp;Disposition de la patte et du manchon</translation>
    </message>
    <message>
        <source>A: tab moves away from the sleeve</source>
        <translation>A : la patte s’éloigne du manchon</translation>
    </message>
    <message>
        <source>B: tab moves towards the sleeve</source>
        <translation>B : la patte va vers le manchon</translation>
    </message>
    <message>
        <source>C: sleeve rides over the tab</source>
        <translation>C : le manchon passe sur la patte</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnue</translation>
    </message>
    <message>
        <source>Locking moves the plunger tab away from the sleeve. Part-seated leaves the tab nearer: the gap is smaller, or the sleeve does not come to its stop and the gap is larger. The leaf goes between tab and sleeve.</source>
        <translation>En se verrouillant, la patte du verrou s’éloigne du manchon. À demi engagé, la patte reste plus près : l’écart est plus petit, ou le manchon n’arrive pas en butée et l’écart est plus grand. La lame va entre la patte et le manchon.</translation>
    </message>
    <message>
        <source>Locking moves the plunger tab towards the sleeve. Part-seated leaves the tab short of its place: the gap is larger. The leaf goes between tab and sleeve.</source>
        <translation>En se verrouillant, la patte du verrou va vers le manchon. À demi engagé, la patte reste avant sa place : l’écart est plus grand. La lame va entre la patte et le manchon.</translation>
    </message>
    <message>
        <source>The sleeve slides over the plunger tab. A part-seated tab stops the sleeve early: the gap is larger. The leaf goes between the edge of the socket and the sleeve.</source>
        <translation>Le manchon glisse sur la patte du verrou. Une patte à demi engagée arrête le manchon plus tôt : l’écart est plus grand. La lame va entre le bord de la cage et le manchon.</translation>
    </message>
    <message>
        <source>Leave it so until somebody has looked. Readings are watched on both sides in any case.</source>
        <translation>Laisser ainsi jusqu’à ce que quelqu’un ait regardé. Les mesures sont de toute façon surveillées des deux côtés.</translation>
    </message>
    <message>
        <source>Where the lea&amp;f goes</source>
        <translation>Où va la la&amp;me</translation>
    </message>
    <message>
        <source>Always the same place, from the same side.</source>
        <translation>Toujours le même endroit, du même côté.</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Sorte</translation>
    </message>
    <message>
        <source>Ball joint with sleeve</source>
        <translation>Raccord à rotule avec manchon</translation>
    </message>
    <message>
        <source>Ball joint with safety pin</source>
        <translation>Raccord à rotule avec épingle</translation>
    </message>
    <message>
        <source>Ball joint with sleeve and pin</source>
        <translation>Raccord à rotule avec manchon et épingle</translation>
    </message>
    <message>
        <source>Connects by itself</source>
        <translation>Se raccorde de lui-même</translation>
    </message>
    <message>
        <source>Water ballast</source>
        <translation>Ballast</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>Asked: ball, plunger, sleeve at its stop; gap, pull, secured.</source>
        <translation>Demandé : bille, verrou, manchon en butée ; écart, traction, assuré.</translation>
    </message>
    <message>
        <source>Asked: ball, plunger, safety pin in and through; gap, pull, secured.</source>
        <translation>Demandé : bille, verrou, épingle en place et traversante ; écart, traction, assuré.</translation>
    </message>
    <message>
        <source>Asked: ball, plunger, sleeve at its stop, safety pin in and through; gap, pull, secured.</source>
        <translation>Demandé : bille, verrou, manchon en butée, épingle en place et traversante ; écart, traction, assuré.</translation>
    </message>
    <message>
        <source>As tailplane or wing root go on. Asked: engaged all the way, parts meet all round, flush. No leaf goes in, so there is no gap to measure.</source>
        <translation>À la mise en place de l’empennage ou de l’aile à son emplanture. Demandé : engagé à fond, pièces en contact tout autour, à fleur. Aucune lame n’entre : pas d’écart à mesurer.</translation>
    </message>
    <message>
        <source>Asked: line or rod connected, and what there is below.</source>
        <translation>Demandé : conduite ou tringle raccordée, et ce qu’il y a ci-dessous.</translation>
    </message>
    <message>
        <source>Asked: connected as its manual says, and what there is below.</source>
        <translation>Demandé : raccordé comme le dit son manuel, et ce qu’il y a ci-dessous.</translation>
    </message>
    <message>
        <source>So&amp;mething to pull</source>
        <translation>Quelque chose à ti&amp;rer</translation>
    </message>
    <message>
        <source>Something to sec&amp;ure: bolt, pin or clip</source>
        <translation>Quelque chose à ass&amp;urer : boulon, goupille ou clip</translation>
    </message>
    <message>
        <source>A &amp;gap to measure with a leaf</source>
        <translation>Un écart à mesurer avec une &amp;lame</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>pas d’écart à mesurer</translation>
    </message>
    <message>
        <source>&amp;Place on the plan</source>
        <translation>&amp;Place sur la vue de dessus</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ote</translation>
    </message>
    <message>
        <source>Not given</source>
        <translation>Non indiquée</translation>
    </message>
    <message>
        <source>Left wing root</source>
        <translation>Emplanture gauche</translation>
    </message>
    <message>
        <source>Right wing root</source>
        <translation>Emplanture droite</translation>
    </message>
    <message>
        <source>Left outer wing</source>
        <translation>Aile extérieure gauche</translation>
    </message>
    <message>
        <source>Right outer wing</source>
        <translation>Aile extérieure droite</translation>
    </message>
    <message>
        <source>Fuselage</source>
        <translation>Fuselage</translation>
    </message>
    <message>
        <source>Tail boom</source>
        <translation>Poutre de queue</translation>
    </message>
    <message>
        <source>Fin foot</source>
        <translation>Pied de dérive</translation>
    </message>
    <message>
        <source>Fin top</source>
        <translation>Haut de dérive</translation>
    </message>
    <message>
        <source>Type a name for the coupling.</source>
        <translation>Saisir un nom pour le raccord.</translation>
    </message>
    <message>
        <source>This airframe already has a coupling “%1”. Say left or right, or where it is.</source>
        <translation>Ce planeur a déjà un raccord « %1 ». Préciser gauche ou droite, ou l’endroit.</translation>
    </message>
    <message>
        <source>Take out of use: %1</source>
        <translation>Mettre hors service : %1</translation>
    </message>
    <message>
        <source>It leaves the rigging order and new records. Its readings, fittings and bands stay in the file, and it can be put back at any time.</source>
        <translation>Il quitte l’ordre de montage et les nouvelles fiches. Ses mesures, poses et bandes restent dans le fichier, et il peut être remis en service à tout moment.</translation>
    </message>
    <message>
        <source>Take it out of use</source>
        <translation>Le mettre hors service</translation>
    </message>
    <message>
        <source>New fitting: %1</source>
        <translation>Nouvelle pose : %1</translation>
    </message>
    <message>
        <source>A new fitting ends the old baseline: from that day on this coupling has no band until new baseline readings are taken. Older readings stay with the fitting they were taken on. Use it after a refit, an adjustment or a changed part, and only then.</source>
        <translation>Une nouvelle pose met fin à l’ancienne série de référence : à partir de ce jour, ce raccord n’a pas de bande jusqu’à ce qu’une nouvelle série de référence soit mesurée. Les anciennes mesures restent à la pose où elles ont été faites. À utiliser après une repose, un réglage ou un changement de pièce, et seulement alors.</translation>
    </message>
    <message>
        <source>Fitted &amp;on</source>
        <translation>Posé &amp;le</translation>
    </message>
    <message>
        <source>Why it &amp;begins</source>
        <translation>Raison du &amp;début</translation>
    </message>
    <message>
        <source>First fitting</source>
        <translation>Première pose</translation>
    </message>
    <message>
        <source>Refitted</source>
        <translation>Reposé</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Pièce changée</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>&amp;What was done, and by whom</source>
        <translation>Ce &amp;qui a été fait, et par qui</translation>
    </message>
    <message>
        <source>Ball and plunger replaced; sleeve readjusted …</source>
        <translation>Bille et verrou remplacés ; manchon réglé à nouveau …</translation>
    </message>
    <message>
        <source>Start the new fitting  (Enter)</source>
        <translation>Commencer la nouvelle pose  (Enter)</translation>
    </message>
    <message>
        <source>Say what was done: the reason stands beside every later band.</source>
        <translation>Dire ce qui a été fait : la raison figure à côté de chaque bande à venir.</translation>
    </message>
    <message>
        <source>The fitting before began on %1. Type that day or a later one.</source>
        <translation>La pose d’avant a commencé le %1. Saisir ce jour ou un jour plus tard.</translation>
    </message>
    <message>
        <source>Tick what this airframe has. Each is added with its first fitting from today. What is not on the list you add yourself, and every name can be changed.</source>
        <translation>Cocher ce que ce planeur a. Chacun est ajouté avec sa première pose à partir d’aujourd’hui. Ce qui n’est pas sur la liste est à ajouter vous-même, et chaque nom peut être changé.</translation>
    </message>
    <message>
        <source>Add the ticked ones  (Enter)</source>
        <translation>Ajouter les raccords cochés  (Enter)</translation>
    </message>
    <message>
        <source>Tick at least one coupling.</source>
        <translation>Cocher au moins un raccord.</translation>
    </message>
    <message>
        <source>%1 (already there)</source>
        <translation>%1 (déjà là)</translation>
    </message>
    <message>
        <source>Left aileron, wing root</source>
        <translation>Aileron gauche, emplanture</translation>
    </message>
    <message>
        <source>Right aileron, wing root</source>
        <translation>Aileron droit, emplanture</translation>
    </message>
    <message>
        <source>Left airbrake, wing root</source>
        <translation>Aérofrein gauche, emplanture</translation>
    </message>
    <message>
        <source>Right airbrake, wing root</source>
        <translation>Aérofrein droit, emplanture</translation>
    </message>
    <message>
        <source>Left flap, wing root</source>
        <translation>Volet gauche, emplanture</translation>
    </message>
    <message>
        <source>Right flap, wing root</source>
        <translation>Volet droit, emplanture</translation>
    </message>
    <message>
        <source>Elevator, fin top</source>
        <translation>Profondeur, haut de dérive</translation>
    </message>
    <message>
        <source>Trim, fin top</source>
        <translation>Compensateur, haut de dérive</translation>
    </message>
    <message>
        <source>aileron</source>
        <translation>aileron</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>flap</source>
        <translation>volet</translation>
    </message>
    <message>
        <source>airbrake</source>
        <translation>aérofrein</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>compensateur</translation>
    </message>
    <message>
        <source>water dump</source>
        <translation>vidange d’eau</translation>
    </message>
    <message>
        <source>first fitting</source>
        <translation>première pose</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>reposé</translation>
    </message>
    <message>
        <source>part changed</source>
        <translation>pièce changée</translation>
    </message>
    <message>
        <source>All of these</source>
        <translation>Tous ceux de la liste</translation>
    </message>
</context>
<context>
    <name>DayWords</name>
    <message>
        <source>%1 or %2</source>
        <comment>a day in two forms</comment>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>Like %1.</source>
        <comment>a day</comment>
        <translation>Comme %1.</translation>
    </message>
    <message>
        <source>Like %1. May stay empty.</source>
        <comment>a day</comment>
        <translation>Comme %1. Peut rester vide.</translation>
    </message>
    <message>
        <source>Type the day, like %1.</source>
        <translation>Taper le jour, comme %1.</translation>
    </message>
    <message>
        <source>“%1” is no day that can be read for sure. Type it like %2.</source>
        <translation>« %1 » n’est pas un jour lisible avec certitude. Le taper comme %2.</translation>
    </message>
</context>
<context>
    <name>DemonstrationWords</name>
    <message>
        <source>Part-seated demonstration</source>
        <translation>Démonstration à demi engagé</translation>
    </message>
    <message>
        <source>The joint is left part-seated on purpose, to see on which side of the band its gap then lies and how far off. Which side that is differs from coupling to coupling.</source>
        <translation>La liaison est laissée à demi engagée exprès, pour voir de quel côté de la bande se trouve alors son écart, et à quelle distance. Ce côté diffère d’un raccord à l’autre.</translation>
    </message>
    <message numerus="yes">
        <source>%n part-seated reading(s)</source>
        <translation>
            <numerusform>%n mesure à demi engagée</numerusform>
            <numerusform>%n mesures à demi engagées</numerusform>
        </translation>
    </message>
    <message>
        <source>Before anything is left part-seated</source>
        <translation>Avant de laisser quoi que ce soit à demi engagé</translation>
    </message>
    <message>
        <source>Not on a flying day: this glider does not fly today.</source>
        <translation>Pas un jour de vol : ce planeur ne vole pas aujourd’hui.</translation>
    </message>
    <message>
        <source>Tag the cockpit: the tag hangs on the controls now.</source>
        <translation>Étiquette dans l’habitacle : elle est maintenant accrochée aux commandes.</translation>
    </message>
    <message>
        <source>Full inspection afterwards: every coupling connected anew, looked at and pulled by two people.</source>
        <translation>Contrôle complet ensuite : chaque raccord raccordé à nouveau, avec contrôle visuel et essai de traction par deux personnes.</translation>
    </message>
    <message>
        <source>Support the control surface, so that nothing loads the joint.</source>
        <translation>Soutenir la gouverne, pour que rien ne charge la liaison.</translation>
    </message>
    <message>
        <source>A rigging record was begun today. If this glider may fly today, leave the demonstration for another day.</source>
        <translation>Une fiche de montage a été commencée aujourd’hui. Si ce planeur peut voler aujourd’hui, remettre la démonstration à un autre jour.</translation>
    </message>
    <message>
        <source>First read each caution and tick it.</source>
        <translation>Lire d’abord chaque mise en garde et la cocher.</translation>
    </message>
    <message>
        <source>Owner, who measures</source>
        <translation>Propriétaire, qui mesure</translation>
    </message>
    <message>
        <source>Second person, who stands by</source>
        <translation>Deuxième personne, qui assiste</translation>
    </message>
    <message>
        <source>First choose the owner. Nobody is filled in.</source>
        <translation>Choisir d’abord le propriétaire. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Now choose the second person, somebody else.</source>
        <translation>Choisir maintenant la deuxième personne, quelqu’un d’autre.</translation>
    </message>
    <message>
        <source>Leave the joint part-seated, read the thickest leaf that enters freely, and part it again. No force: a pushed leaf opens the gap.</source>
        <translation>Laisser la liaison à demi engagée, mesurer la lame la plus épaisse qui entre librement, et la désaccoupler à nouveau. Sans forcer : une lame poussée ouvre l’écart.</translation>
    </message>
    <message>
        <source>Second person: %1</source>
        <translation>Deuxième personne : %1</translation>
    </message>
    <message>
        <source>%1 (second person: %2)</source>
        <translation>%1 (deuxième personne : %2)</translation>
    </message>
    <message>
        <source>It takes two people. Enter them first.</source>
        <translation>Il faut deux personnes. Les saisir d’abord.</translation>
    </message>
    <message>
        <source>Part-seated: %1, saved %2.</source>
        <translation>À demi engagé : %1, enregistré %2.</translation>
    </message>
    <message>
        <source>When you are done: disconnect, clean, connect, look, pull, read, and inspect in full, with a second person's own look and pull. Only then does the tag come off.</source>
        <translation>À la fin : désaccoupler, nettoyer, raccorder, regarder, tirer, mesurer et contrôler en entier, avec le contrôle visuel et l’essai de traction propres à une deuxième personne. Alors seulement, l’étiquette s’enlève.</translation>
    </message>
    <message>
        <source>That leaf set is in doubt since its last check. A demonstration is not read with it: choose another.</source>
        <translation>Ce jeu de lames est en doute depuis son dernier contrôle. Une démonstration ne se mesure pas avec : en choisir un autre.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Part-seated was never seen on this coupling. Until it is, both sides of the band count as suspect.</source>
        <translation>L’état à demi engagé n’a jamais été vu sur ce raccord. Jusque-là, les deux côtés de la bande comptent comme suspects.</translation>
    </message>
    <message>
        <source>These readings stand apart: they never count for a band.</source>
        <translation>Ces mesures sont à part : elles ne comptent jamais pour une bande.</translation>
    </message>
    <message>
        <source>part-seated never shown</source>
        <translation>à demi engagé jamais montré</translation>
    </message>
</context>
<context>
    <name>DocumentWords</name>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>the kind of a fact, and its id</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>line %1, %2</source>
        <comment>a line, and the kind of fact in it</comment>
        <translation>ligne %1, %2</translation>
    </message>
    <message>
        <source>line %1, %2 %3</source>
        <comment>a line, the kind of the fact in it, and its id</comment>
        <translation>ligne %1, %2 %3</translation>
    </message>
    <message>
        <source>“%1” is missing</source>
        <translation>« %1 » manque</translation>
    </message>
    <message>
        <source>“%1” is nothing that stands there</source>
        <translation>« %1 » n’a rien à faire là</translation>
    </message>
    <message>
        <source>“%1” is no kind of fact that this Rigband knows</source>
        <translation>« %1 » n’est pas une sorte de fait que ce Rigband connaisse</translation>
    </message>
    <message>
        <source>“%1” stands there twice</source>
        <translation>« %1 » y est deux fois</translation>
    </message>
    <message>
        <source>what stands at “%1” is not of the kind that belongs there</source>
        <translation>ce qui se trouve à « %1 » n’est pas de la sorte qui y va</translation>
    </message>
    <message>
        <source>what stands at “%1” is smaller or larger than it may be</source>
        <translation>ce qui se trouve à « %1 » est plus petit ou plus grand que permis</translation>
    </message>
    <message>
        <source>the word at “%1” is none that this Rigband knows</source>
        <translation>le mot à « %1 » n’est pas connu de ce Rigband</translation>
    </message>
    <message>
        <source>what stands at “%1” is no day</source>
        <translation>ce qui se trouve à « %1 » n’est pas un jour</translation>
    </message>
    <message>
        <source>its parts contradict one another</source>
        <translation>ses parties se contredisent</translation>
    </message>
    <message>
        <source>its parts contradict one another, first of all “%1”</source>
        <translation>ses parties se contredisent, avant tout « %1 »</translation>
    </message>
    <message>
        <source>%1 could not be read to its end. Look whether it is a file that you may read, then try again.</source>
        <translation>%1 n’a pas pu être lu jusqu’au bout. Vérifier que vous pouvez lire ce fichier, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 ends too early, in %2: a part of it is missing. Copy or write it once more.</source>
        <translation>%1 s’arrête trop tôt, à %2 : une partie manque. Le copier ou l’écrire à nouveau.</translation>
    </message>
    <message>
        <source>%1 is no JSON in %2. Look at it there, or write it once more.</source>
        <translation>%1 n’est pas du JSON à %2. Regarder à cet endroit, ou l’écrire à nouveau.</translation>
    </message>
    <message>
        <source>%1 holds a text or a figure in %2 that is longer than anything of a Rigband file. Look at it there.</source>
        <translation>%1 contient à %2 un texte ou un nombre plus long que tout ce qu’un fichier Rigband contient. Regarder à cet endroit.</translation>
    </message>
    <message>
        <source>%1 is no document of a Rigband file: such a one begins with “format”, “version” and “layout”. Choose the one that “rigband-file export --json” wrote.</source>
        <translation>%1 n’est pas un document d’un fichier Rigband : celui-ci commence par « format », « version » et « layout ». Choisir celui que « rigband-file export --json » a écrit.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Rigband than this one. Install the newer program to read it.</source>
        <translation>%1 a été écrit par un Rigband plus récent que celui-ci. Installer le programme plus récent pour le lire.</translation>
    </message>
    <message>
        <source>%1 cannot be taken: %2.</source>
        <translation>%1 ne peut pas être repris : %2.</translation>
    </message>
    <message>
        <source>%1 cannot be taken. In %2: %3.</source>
        <translation>%1 ne peut pas être repris. À %2 : %3.</translation>
    </message>
    <message>
        <source>Look at these facts, and ask who changed them. To go on with everything as it was found, add --as-found.</source>
        <translation>Regarder ces faits et demander qui les a modifiés. Pour continuer avec tout tel que trouvé, ajouter --as-found.</translation>
    </message>
    <message>
        <source>Nothing was made.</source>
        <translation>Rien n’a été créé.</translation>
    </message>
    <message>
        <source>“%1” came with a later layout than the %2 that stands at “layout”</source>
        <translation>« %1 » n’est venu qu’avec une version plus récente que la %2 qui figure à « layout »</translation>
    </message>
    <message>
        <source>another fact with this id stands in the document already</source>
        <translation>un autre fait avec cet identifiant figure déjà dans le document</translation>
    </message>
    <message>
        <source>“%1” names something of the kind “%2” that is nowhere in the document</source>
        <translation>« %1 » désigne un élément du genre « %2 » qui ne figure nulle part dans le document</translation>
    </message>
    <message>
        <source>%1 holds everything that is in %2, in which no fact has been saved yet.</source>
        <translation>%1 contient tout ce qui est dans %2, où aucun fait n’a encore été enregistré.</translation>
    </message>
    <message numerus="yes">
        <source>%1 holds everything that is in %2, %Ln fact(s) with photos and the chain. It tells names and notes as they were typed.</source>
        <translation>
            <numerusform>%1 contient tout ce qui est dans %2, %Ln fait avec les photos et la chaîne. Les noms et les notes y figurent comme ils ont été saisis.</numerusform>
            <numerusform>%1 contient tout ce qui est dans %2, %Ln faits avec les photos et la chaîne. Les noms et les notes y figurent comme ils ont été saisis.</numerusform>
        </translation>
    </message>
    <message>
        <source>Made: %1, in which nothing stands: the document holds no fact.</source>
        <translation>Créé : %1, où rien ne figure : le document ne contient aucun fait.</translation>
    </message>
    <message numerus="yes">
        <source>Made: %1, with %Ln fact(s) of the document under the same ids, and its chain.</source>
        <translation>
            <numerusform>Créé : %1, avec %Ln fait du document sous le même identifiant, et la chaîne du document.</numerusform>
            <numerusform>Créé : %1, avec %Ln faits du document sous les mêmes identifiants, et la chaîne du document.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is larger than 4 GB, so it was not read. Look whether it is the one that “rigband-file export --json” wrote.</source>
        <translation>%1 dépasse 4 Go et n’a donc pas été lu. Voir si c’est bien le document que « rigband-file export --json » a écrit.</translation>
    </message>
    <message>
        <source>“%1” makes it a version of something else, while other facts still name it</source>
        <translation>« %1 » en fait une version d’autre chose, alors que d’autres faits le désignent encore</translation>
    </message>
</context>
<context>
    <name>DoubtWords</name>
    <message>
        <source>leaf set %1</source>
        <translation>jeu de lames %1</translation>
    </message>
    <message>
        <source>pin set %1</source>
        <translation>jeu de piges %1</translation>
    </message>
    <message>
        <source>go/no-go block %1</source>
        <translation>calibre entre/n’entre pas %1</translation>
    </message>
    <message>
        <source>taper gauge %1</source>
        <translation>jauge conique %1</translation>
    </message>
    <message>
        <source>%1 in doubt from %2</source>
        <translation>%1 en doute à partir du %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>note, in doubt</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>It is made without %Ln reading(s) of %1 in doubt; with what is in doubt there would be no band either.</source>
        <translation>
            <numerusform>%Ln mesure en doute (%1) n’y compte pas ; avec ce qui est en doute, il n’y aurait pas de bande non plus.</numerusform>
            <numerusform>%Ln mesures en doute (%1) n’y comptent pas ; avec ce qui est en doute, il n’y aurait pas de bande non plus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With the %Ln reading(s) of %1 in doubt it would be %2.</source>
        <translation>
            <numerusform>Avec %Ln mesure en doute (%1), ce serait %2.</numerusform>
            <numerusform>Avec les %Ln mesures en doute (%1), ce serait %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With the %Ln reading(s) of %1 in doubt there would be one: %2.</source>
        <translation>
            <numerusform>Avec %Ln mesure en doute (%1), il y en aurait une : %2.</numerusform>
            <numerusform>Avec les %Ln mesures en doute (%1), il y en aurait une : %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) of %1 in doubt stay in the frozen list; the band is worked out without them.</source>
        <translation>
            <numerusform>%n mesure en doute (%1) reste dans la liste figée ; la bande est calculée sans elle.</numerusform>
            <numerusform>%n mesures en doute (%1) restent dans la liste figée ; la bande est calculée sans elles.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) of %1 in doubt are not frozen with it.</source>
        <translation>
            <numerusform>%n mesure en doute (%1) n’est pas figée avec.</numerusform>
            <numerusform>%n mesures en doute (%1) ne sont pas figées avec.</numerusform>
        </translation>
    </message>
    <message>
        <source>Proposed: the day after its last good check, %1. What was read since then was read with a set of which nothing is known.</source>
        <translation>Proposé : le lendemain de son dernier bon contrôle, %1. Ce qui a été mesuré depuis l’a été avec un jeu dont on ne sait rien.</translation>
    </message>
    <message>
        <source>Proposed: the day of this check, as the set was found usable on %1.</source>
        <translation>Proposé : le jour de ce contrôle, car le jeu a été trouvé utilisable le %1.</translation>
    </message>
    <message>
        <source>Proposed: the day of its first reading, %1. The file has no good check of it before this one.</source>
        <translation>Proposé : le jour de sa première mesure, %1. Le fichier n’en contient aucun bon contrôle avant celui-ci.</translation>
    </message>
    <message>
        <source>Proposed: the day of this check. No reading was taken with the set.</source>
        <translation>Proposé : le jour de ce contrôle. Aucune mesure n’a été faite avec le jeu.</translation>
    </message>
    <message>
        <source>No reading was taken with it from that day on.</source>
        <translation>Rien n’a été mesuré avec cette jauge à partir de ce jour.</translation>
    </message>
    <message numerus="yes">
        <source>That concerns %n reading(s) on one airframe.</source>
        <translation>
            <numerusform>Cela concerne %n mesure sur un planeur.</numerusform>
            <numerusform>Cela concerne %n mesures sur un planeur.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>That concerns %n reading(s) on %1 airframes.</source>
        <translation>
            <numerusform>Cela concerne %n mesure sur %1 planeurs.</numerusform>
            <numerusform>Cela concerne %n mesures sur %1 planeurs.</numerusform>
        </translation>
    </message>
    <message>
        <source>What saving this does</source>
        <translation>Ce que fait l’enregistrement</translation>
    </message>
    <message>
        <source>That is before its last good check, %1: readings which that check spoke for come in doubt too.</source>
        <translation>C’est avant son dernier bon contrôle, %1 : des mesures dont ce contrôle répondait deviennent aussi douteuses.</translation>
    </message>
    <message>
        <source>Type the day from which the set is in doubt.</source>
        <translation>Saisir le jour à partir duquel le jeu est en doute.</translation>
    </message>
    <message numerus="yes">
        <source>It marks %n reading(s) on one airframe as in doubt</source>
        <translation>
            <numerusform>Cela marque en doute %n mesure sur un planeur</numerusform>
            <numerusform>Cela marque en doute %n mesures sur un planeur</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It marks %n reading(s) on %1 airframes as in doubt</source>
        <translation>
            <numerusform>Cela marque en doute %n mesure sur %1 planeurs</numerusform>
            <numerusform>Cela marque en doute %n mesures sur %1 planeurs</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: they make no band, and show “cannot tell” unless they lie outside.</source>
        <comment>so many are marked</comment>
        <translation>%1 : elles ne forment pas de bande et montrent « on ne peut pas dire » sauf si elles sont hors bande.</translation>
    </message>
    <message>
        <source>No further reading comes in doubt.</source>
        <translation>Aucune autre mesure ne devient douteuse.</translation>
    </message>
    <message>
        <source>%1 (fitting begun %2)</source>
        <comment>coupling, day</comment>
        <translation>%1 (pose commencée le %2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>registration, coupling</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%1: the band %2 becomes %3, from %n reading(s).</source>
        <translation>
            <numerusform>%1 : la bande %2 devient %3, d’après %n mesure.</numerusform>
            <numerusform>%1 : la bande %2 devient %3, d’après %n mesures.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: the band %2 goes. No band: %n reading(s) left, %3 are needed.</source>
        <translation>
            <numerusform>%1 : la bande %2 disparaît. Pas de bande : il reste %n mesure, il en faut %3.</numerusform>
            <numerusform>%1 : la bande %2 disparaît. Pas de bande : il reste %n mesures, il en faut %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no band, before and after: %n reading(s) left.</source>
        <translation>
            <numerusform>%1 : pas de bande, avant comme après : il reste %n mesure.</numerusform>
            <numerusform>%1 : pas de bande, avant comme après : il reste %n mesures.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: one reading taken with another gauge is then judged otherwise.</source>
        <translation>%1 : une mesure faite avec une autre jauge est alors jugée autrement.</translation>
    </message>
    <message>
        <source>%1: %2 readings taken with other gauges are then judged otherwise.</source>
        <translation>%1 : %2 mesures faites avec d’autres jauges sont alors jugées autrement.</translation>
    </message>
    <message>
        <source>No band changes: none of them made a band.</source>
        <translation>Aucune bande ne change : aucune d’elles ne formait de bande.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between questions</comment>
        <translation> ; </translation>
    </message>
    <message>
        <source>It opens a question. %1.</source>
        <translation>Cela ouvre une question. %1.</translation>
    </message>
    <message>
        <source>It opens %1 questions. %2.</source>
        <translation>Cela ouvre %1 questions. %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>registration, what is asked</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>What there is to ask is open already.</source>
        <translation>Ce qu’il y a à demander est déjà ouvert.</translation>
    </message>
    <message numerus="yes">
        <source>Without the %Ln reading(s) of %1 in doubt the band of %2 is %3.</source>
        <translation>
            <numerusform>%2 : sans %Ln mesure en doute (%1), la bande est %3.</numerusform>
            <numerusform>%2 : sans les %Ln mesures en doute (%1), la bande est %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Without the %Ln reading(s) of %1 in doubt there is no band of %2.</source>
        <translation>
            <numerusform>%2 : sans %Ln mesure en doute (%1), il n’y a pas de bande.</numerusform>
            <numerusform>%2 : sans les %Ln mesures en doute (%1), il n’y a pas de bande.</numerusform>
        </translation>
    </message>
    <message>
        <source>With what is in doubt it was %1.</source>
        <translation>Avec ce qui est en doute, c’était %1.</translation>
    </message>
    <message>
        <source>One reading taken with another gauge is judged otherwise now.</source>
        <translation>Une mesure faite avec une autre jauge est maintenant jugée autrement.</translation>
    </message>
    <message>
        <source>%1 readings taken with other gauges are judged otherwise now.</source>
        <translation>%1 mesures faites avec d’autres jauges sont maintenant jugées autrement.</translation>
    </message>
    <message>
        <source>The last of them, %1 on %2: “%3”, with the readings in doubt “%4”.</source>
        <translation>La dernière d’entre elles, %1 le %2 : « %3 », avec les mesures en doute « %4 ».</translation>
    </message>
    <message>
        <source>Closing it brings no reading back into the band: what was read with %1 in that time stays in doubt.</source>
        <translation>La clore ne ramène aucune mesure dans la bande : ce qui a été mesuré dans ce temps-là (%1) reste en doute.</translation>
    </message>
</context>
<context>
    <name>DraftWords</name>
    <message>
        <source>%1, %2: “%3”</source>
        <comment>page, field: what was typed</comment>
        <translation>%1, %2 : « %3 »</translation>
    </message>
    <message>
        <source>Typed and not saved when the program was ended on %1:
%2</source>
        <comment>when; line by line</comment>
        <translation>Tapé et non enregistré quand le programme s’est arrêté le %1 :
%2</translation>
    </message>
    <message>
        <source>Copy the words</source>
        <translation>Copier le texte</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ranger</translation>
    </message>
    <message>
        <source>Copy what was typed, to put it in where it belongs (Ctrl+Y)</source>
        <translation>Copier ce qui a été tapé, pour le mettre à sa place (Ctrl+Y)</translation>
    </message>
    <message>
        <source>What was typed is not kept any longer (Ctrl+D)</source>
        <translation>Ce qui a été tapé n’est plus gardé (Ctrl+D)</translation>
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
        <translation>Rien n’est encore tapé. Taper des millimètres, comme %1.</translation>
    </message>
    <message>
        <source>“%1” is not a length. Type millimetres with a point or a comma, such as %2.</source>
        <translation>« %1 » n’est pas une longueur. Taper des millimètres avec un point ou une virgule, comme %2.</translation>
    </message>
    <message>
        <source>“%1” has more than one point or comma. Type one of them only, such as %2.</source>
        <translation>« %1 » a plus d’un point ou d’une virgule. N’en taper qu’un seul, comme %2.</translation>
    </message>
    <message>
        <source>“%1” is finer than a micrometre. Three figures after the point or comma at most.</source>
        <translation>« %1 » est plus fin qu’un micromètre. Trois chiffres au plus après le point ou la virgule.</translation>
    </message>
    <message>
        <source>“%1” is below zero. A length cannot be.</source>
        <translation>« %1 » est sous zéro. Une longueur ne peut pas l’être.</translation>
    </message>
    <message>
        <source>%1 mm is wider than any gap, %2 mm at most. If you meant %3, type it with a point or a comma.</source>
        <translation>%1 mm est plus large que tout écart, %2 mm au plus. Si vous vouliez dire %3, le taper avec un point ou une virgule.</translation>
    </message>
    <message>
        <source>%1 mm is wider than any gap, %2 mm at most. Type millimetres with a point or a comma.</source>
        <translation>%1 mm est plus large que tout écart, %2 mm au plus. Taper des millimètres avec un point ou une virgule.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set: its neighbours are %2 and %3.</source>
        <translation>%1 mm n’est pas dans ce jeu : les tailles voisines sont %2 et %3.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set: the thinnest it has is %2. If that does not enter, press “%3”.</source>
        <translation>%1 mm n’est pas dans ce jeu : la plus mince est %2. Si elle n’entre pas, appuyer sur « %3 ».</translation>
    </message>
    <message>
        <source>%1 mm is not in this set: the most it can offer is %2.</source>
        <translation>%1 mm n’est pas dans ce jeu : le plus qu’il puisse offrir est %2.</translation>
    </message>
    <message>
        <source>%1 mm is not in this set.</source>
        <translation>%1 mm n’est pas dans ce jeu.</translation>
    </message>
    <message>
        <source>This set has no leaves written down, so nothing can be read with it. Add them in Set up.</source>
        <translation>Ce jeu n’a pas de lames notées, donc rien ne peut être mesuré avec lui. Les ajouter dans Réglages.</translation>
    </message>
    <message>
        <source>%1 mm is the most this set can offer, so nothing says where the gap ends. If it enters, press “%2”.</source>
        <translation>%1 mm est le plus que ce jeu puisse offrir, donc rien ne dit où l’écart finit. Si cela entre, appuyer sur « %2 ».</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 et %2</translation>
    </message>
    <message>
        <source>%1 is still loose</source>
        <translation>%1 est encore libre</translation>
    </message>
    <message>
        <source>%1 does not enter</source>
        <translation>%1 n’entre pas</translation>
    </message>
    <message>
        <source>%1 enters, %2 does not</source>
        <translation>%1 entre, %2 n’entre pas</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what a reading says, why it is wider</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>stacked leaves: widened by %1 mm</source>
        <translation>deux lames ensemble : élargi de %1 mm</translation>
    </message>
    <message>
        <source>%1. Enter takes it.</source>
        <comment>what a reading says</comment>
        <translation>%1. Enter pour retenir.</translation>
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
        <translation>%1 millimètre entre</translation>
    </message>
    <message>
        <source>%1 and %2 millimetres stacked enter</source>
        <translation>%1 et %2 millimètres ensemble entrent</translation>
    </message>
    <message>
        <source>Thin end does not enter</source>
        <translation>Le bout mince n’entre pas</translation>
    </message>
    <message>
        <source>Thick end enters</source>
        <translation>Le bout épais entre</translation>
    </message>
    <message>
        <source>No leaf enters</source>
        <translation>Aucune lame n’entre</translation>
    </message>
    <message>
        <source>No pin enters</source>
        <translation>Aucune pige n’entre</translation>
    </message>
    <message>
        <source>Thickest leaf still loose</source>
        <translation>Plus épaisse encore libre</translation>
    </message>
    <message>
        <source>Thickest pin still loose</source>
        <translation>Pige la plus épaisse encore libre</translation>
    </message>
    <message>
        <source>Thinner leaves</source>
        <translation>Lames plus minces</translation>
    </message>
    <message>
        <source>Thicker leaves</source>
        <translation>Lames plus épaisses</translation>
    </message>
    <message>
        <source>Figure typed, in millimetres</source>
        <translation>Chiffre tapé, en millimètres</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Or type the figure in mm, then Enter.</source>
        <translation>Ou taper le chiffre en mm, puis Enter.</translation>
    </message>
    <message>
        <source>Type the value read in mm, then Enter.</source>
        <translation>Taper la valeur lue en mm, puis Enter.</translation>
    </message>
</context>
<context>
    <name>FileMenuWords</name>
    <message>
        <source>Opened last</source>
        <translation>Derniers ouverts</translation>
    </message>
    <message>
        <source>&amp;%1  %2 in %3</source>
        <comment>number, file, its folder</comment>
        <translation>&amp;%1  %2 dans %3</translation>
    </message>
    <message>
        <source>Save a copy…</source>
        <translation>Enregistrer une copie…</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Afficher le dossier</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>About Rigband…</source>
        <translation>À propos de Rigband…</translation>
    </message>
    <message>
        <source>Open a file first.</source>
        <translation>Ouvrir d’abord un fichier.</translation>
    </message>
    <message>
        <source>%1 now holds all that is saved in %2 at this moment. %2 stays open: what you enter from now on is only there.</source>
        <translation>%1 contient maintenant tout ce qui est enregistré dans %2 à cet instant. %2 reste ouvert : ce que vous saisissez désormais ne se trouve que là.</translation>
    </message>
    <message>
        <source>No program here shows folders. The file lies in %1.</source>
        <translation>Aucun programme ici n’affiche les dossiers. Le fichier est dans %1.</translation>
    </message>
    <message>
        <source>Something is half done</source>
        <translation>Quelque chose est fait à moitié</translation>
    </message>
    <message>
        <source>Leave it all the same</source>
        <translation>Quitter quand même</translation>
    </message>
    <message>
        <source>Rigband %1. Bands and verdicts are worked out by method version %2.</source>
        <translation>Rigband %1. Bandes et verdicts sont calculés par la méthode version %2.</translation>
    </message>
    <message>
        <source>A band is a coupling’s own past, never a limit. A gap inside it is one sign only: the look, the pull, the second person and the control check stand beside it, and none replaces another. Rigband is not an aircraft record, an inspection or a release. Manuals, directives, local rules and persons entitled to decide prevail.</source>
        <translation>Une bande est le propre passé d’un raccord, jamais une limite. Un écart dans la bande n’est qu’un indice : le contrôle visuel, l’essai de traction, la deuxième personne et l’essai des commandes sont à côté, et aucun n’en remplace un autre. Rigband n’est ni un dossier d’aéronef, ni une inspection, ni une remise en service. Les manuels, les consignes, les règles locales et les personnes habilitées à décider priment.</translation>
    </message>
    <message>
        <source>Rigband is free software under the Apache License, version 2.0. It comes without any warranty.</source>
        <translation>Rigband est un logiciel libre sous licence Apache, version 2.0. Il est fourni sans aucune garantie.</translation>
    </message>
    <message>
        <source>It works with Qt %1 (GNU Lesser General Public License, version 3), SQLite (public domain) and Boost (Boost Software License, version 1.0). Its letters are those of Inter (SIL Open Font License, version 1.1).</source>
        <translation>Il fonctionne avec Qt %1 (GNU Lesser General Public License, version 3), SQLite (domaine public) et Boost (Boost Software License, version 1.0). Ses lettres sont celles d’Inter (SIL Open Font License, version 1.1).</translation>
    </message>
    <message>
        <source>Another language</source>
        <translation>Autre langue</translation>
    </message>
    <message>
        <source>Change the language all the same</source>
        <translation>Changer de langue quand même</translation>
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
        <translation>« %1 » n’est rien que l’on puisse faire ici.</translation>
    </message>
    <message>
        <source>%1 is a Rigband file, whole and readable.</source>
        <translation>%1 est un fichier Rigband, entier et lisible.</translation>
    </message>
    <message>
        <source>%1 was written by an older Rigband and is now in the form of this one, which the older one cannot open. A copy of it as it was stands in the folder of copies beside it.</source>
        <translation>%1 a été écrit par un Rigband plus ancien et a maintenant la forme de celui-ci ; l’ancien ne peut pas l’ouvrir. Une copie, tel qu’il était, se trouve à côté dans le dossier des copies.</translation>
    </message>
    <message>
        <source>It may only be read; nothing can be saved in it where it is.</source>
        <translation>Il ne peut être que lu ; là où il est, rien ne peut y être enregistré.</translation>
    </message>
    <message>
        <source>People in it: %1. Leaf sets and gauges: %2.</source>
        <translation>Personnes dedans : %1. Jeux de lames et jauges : %2.</translation>
    </message>
    <message>
        <source>This cannot stand in a file, and was not written by Rigband: %1.</source>
        <translation>Ceci ne peut pas figurer dans un fichier et n’a pas été écrit par Rigband : %1.</translation>
    </message>
    <message>
        <source>Two files that were joined say different things; to be decided by a person: %1.</source>
        <translation>Deux fichiers réunis disent des choses différentes ; une personne doit décider : %1.</translation>
    </message>
    <message>
        <source>It holds no airframe yet.</source>
        <translation>Il ne contient encore aucun planeur.</translation>
    </message>
    <message>
        <source>Airframe %1. Couplings: %2. Riggings: %3. Readings: %4.</source>
        <translation>Planeur %1. Raccords : %2. Montages : %3. Mesures : %4.</translation>
    </message>
    <message>
        <source>One fact names another that is not in the file. This is what salvaging leaves behind; look for a copy from before the damage.</source>
        <translation>Un fait en nomme un autre qui n’est pas dans le fichier. C’est ce qui reste quand on a sauvé un fichier ; chercher une copie d’avant le dommage.</translation>
    </message>
    <message>
        <source>%1 facts name others that are not in the file. This is what salvaging leaves behind; look for a copy from before the damage.</source>
        <translation>%1 faits en nomment d’autres qui ne sont pas dans le fichier. C’est ce qui reste quand on a sauvé un fichier ; chercher une copie d’avant le dommage.</translation>
    </message>
    <message>
        <source>%1 is a Rigband file and was read to its end, but not everything in it is as Rigband saves it.</source>
        <translation>%1 est un fichier Rigband et a été lu jusqu’au bout, mais tout n’y est pas comme Rigband l’enregistre.</translation>
    </message>
    <message>
        <source>It is of an older layout and was left so; it would be brought up to date when it is opened, after a copy was made.</source>
        <translation>Il est d’une forme plus ancienne et a été laissé ainsi ; il serait mis à jour à l’ouverture, après une copie.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that cannot be read: %2. The first one: %3. Salvage the file to go on without them.</source>
        <translation>Lignes de la table « %1 » qui ne peuvent pas être lues : %2. La première : %3. Sauver le fichier pour continuer sans elles.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that name things of two airframes or of two couplings: %2. No Rigband saves such a thing; look for a copy from before.</source>
        <translation>Lignes de la table « %1 » qui nomment des éléments de deux planeurs ou de deux raccords : %2. Aucun Rigband n’enregistre cela ; chercher une copie d’avant.</translation>
    </message>
    <message>
        <source>A row of the table “%1” has the last number that there is, so nothing can be saved after it. Open a copy from before.</source>
        <translation>Une ligne de la table « %1 » porte le dernier numéro possible ; rien ne peut être enregistré après elle. Ouvrir une copie d’avant.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” whose number says that they were saved in the future: %2. A clock was wrong, or another program wrote them.</source>
        <translation>Lignes de la table « %1 » dont le numéro dit qu’elles ont été enregistrées dans le futur : %2. Une horloge était fausse, ou un autre programme les a écrites.</translation>
    </message>
    <message>
        <source>Photos that hold no picture that can be shown: %1.</source>
        <translation>Photos sans image que l’on puisse montrer : %1.</translation>
    </message>
    <message>
        <source>Photos of another size than is said beside them: %1.</source>
        <translation>Photos d’une autre taille que celle indiquée à côté : %1.</translation>
    </message>
    <message>
        <source>Photos that hold more than the picture, such as where and with what they were taken: %1. Rigband keeps nothing of that; take them in again before you hand the file on.</source>
        <translation>Photos qui contiennent plus que l’image, par exemple où et avec quoi elles ont été prises : %1. Rigband n’en conserve rien ; les intégrer de nouveau avant de transmettre le fichier.</translation>
    </message>
    <message>
        <source>The copy “%1” beside it is of a day that is still to come: the clock was wrong when it was made.</source>
        <translation>La copie « %1 » à côté est d’un jour encore à venir : l’horloge était fausse quand elle a été faite.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that stood where the file cannot be read: %2.</source>
        <translation>Lignes de la table « %1 » qui se trouvaient là où le fichier ne peut pas être lu : %2.</translation>
    </message>
    <message>
        <source>How many rows of the table “%1” were lost behind the damage cannot be told.</source>
        <translation>On ne peut pas dire combien de lignes de la table « %1 » sont perdues derrière le dommage.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that are none any more: %2.</source>
        <translation>Lignes de la table « %1 » qui n’en sont plus : %2.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” left out because what they belong to was lost: %2.</source>
        <translation>Lignes de la table « %1 » omises parce que ce dont elles dépendent est perdu : %2.</translation>
    </message>
    <message>
        <source>Written to %1: %2.</source>
        <translation>Écrit dans %1 : %2.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between file names</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Letters stand for persons, numbers for airframes and gauges.</source>
        <translation>Des lettres remplacent les personnes, des numéros les planeurs et les jauges.</translation>
    </message>
    <message>
        <source>Left out: notes, reasons, what was found and done, how a coupling is reached, roles, phone numbers, and how gauges were checked.</source>
        <translation>Omis : notes, raisons, ce qui a été trouvé et fait, comment on atteint un raccord, rôles, numéros de téléphone, et comment les jauges ont été contrôlées.</translation>
    </message>
    <message>
        <source>Names of couplings stand as they were typed: look whether one of them names somebody. Days stay too, and whoever knows who rigged on a day can tell who a letter is.</source>
        <translation>Les noms des raccords restent tels qu’ils ont été saisis : vérifier si l’un d’eux nomme quelqu’un. Les jours restent aussi, et qui sait qui a monté tel jour peut dire qui est une lettre.</translation>
    </message>
    <message>
        <source>The folder %1 is not there and cannot be made. Choose a place where you may write.</source>
        <translation>Le dossier %1 n’existe pas et ne peut pas être créé. Choisir un endroit où vous pouvez écrire.</translation>
    </message>
    <message>
        <source>%1 cannot be written, so no table was kept. Look whether the folder may be written to and the disk has room, then try again.</source>
        <translation>%1 ne peut pas être écrit ; aucun tableau n’a donc été conservé. Vérifier que l’on peut écrire dans le dossier et qu’il reste de la place sur le disque, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 cannot be read, so nothing was imported. Look whether it is there and you may read it.</source>
        <translation>%1 ne peut pas être lu ; rien n’a donc été importé. Vérifier qu’il existe et que vous pouvez le lire.</translation>
    </message>
    <message>
        <source>%1 was not there, and was made.</source>
        <translation>%1 n’existait pas et a été créé.</translation>
    </message>
    <message>
        <source>%1 is not there, and there is nothing to make it from. Name a file that is there, or give a table with --couplings, --people or --gauges too.</source>
        <translation>%1 n’existe pas, et il n’y a rien pour le créer. Nommer un fichier existant, ou donner aussi un tableau avec --couplings, --people ou --gauges.</translation>
    </message>
    <message>
        <source>No file was made: %1 was not there before, and is not there now.</source>
        <translation>Aucun fichier n’a été créé : %1 n’existait pas avant et n’existe pas maintenant.</translation>
    </message>
    <message>
        <source>“%1” is no day. Write it as 2026-06-14.</source>
        <translation>« %1 » n’est pas un jour. L’écrire ainsi : 2026-06-14.</translation>
    </message>
    <message>
        <source>%1 is still to come: nothing is known of it yet. Name today or an earlier day.</source>
        <translation>%1 est encore à venir : on n’en sait encore rien. Indiquer aujourd’hui ou un jour antérieur.</translation>
    </message>
    <message>
        <source>%1 knows no airframe %2. “rigband-file check” names those it knows.</source>
        <translation>%1 ne connaît pas de planeur %2. « rigband-file check » nomme ceux qu’il connaît.</translation>
    </message>
    <message>
        <source>%1 comes after %2: a period ends on the day it begins, or later.</source>
        <translation>%1 vient après %2 : une période finit le jour où elle commence, ou plus tard.</translation>
    </message>
    <message>
        <source>Written: %1. Everything it rests on as tables: %2.</source>
        <translation>Écrit : %1. Tout ce sur quoi cela repose, en tableaux : %2.</translation>
    </message>
    <message>
        <source>No gap of %1 was read at a rigging in that period, and the report says so.</source>
        <translation>Aucun écart n’a été mesuré sur %1 à un montage dans cette période, et le rapport le dit.</translation>
    </message>
    <message>
        <source>There is no such rigging record of %1. Without a day it is the last one that was closed.</source>
        <translation>Cette fiche de montage n’existe pas pour %1. Sans jour, c’est la dernière close.</translation>
    </message>
    <message>
        <source>%1 knows no leaf set or gauge in use with the name %2. It is the name on the case.</source>
        <translation>%1 ne connaît ni jeu de lames ni jauge en service du nom de %2. C’est le nom sur l’étui.</translation>
    </message>
    <message>
        <source>%1 has no couplings yet, so there is nothing to put on a sheet.</source>
        <translation>%1 n’a encore aucun raccord ; il n’y a donc rien à mettre sur une feuille.</translation>
    </message>
    <message>
        <source>%1 has no couplings yet, so there is nothing to put on a card.</source>
        <translation>%1 n’a encore aucun raccord ; il n’y a donc rien à mettre sur une carte.</translation>
    </message>
    <message>
        <source>Facts read and kept in %2: %1. The damaged file was left as it is. Not all may have been readable: look over what the new file holds before going on.</source>
        <translation>Faits lus et conservés dans %2 : %1. Le fichier endommagé a été laissé tel quel. Tout n’était peut-être pas lisible : parcourir ce que contient le nouveau fichier avant de continuer.</translation>
    </message>
    <message>
        <source>%1 now holds the invented hangar. None of its airframes and people exist.</source>
        <translation>%1 contient maintenant le hangar inventé. Aucun de ses planeurs et aucune de ses personnes n’existe.</translation>
    </message>
    <message>
        <source>There is no option “%1”.</source>
        <translation>L’option « %1 » n’existe pas.</translation>
    </message>
    <message>
        <source>An option lacks what belongs behind it, or has something behind it that it does not take.</source>
        <translation>Il manque quelque chose derrière une option, ou il y a derrière elle quelque chose qu’elle ne prend pas.</translation>
    </message>
    <message>
        <source>--%1 stands there twice; once is enough.</source>
        <translation>--%1 est là deux fois ; une suffit.</translation>
    </message>
    <message>
        <source>writes an invented hangar to look around in</source>
        <translation>écrit un hangar inventé, pour se faire une idée</translation>
    </message>
    <message>
        <source>says what is in a file, or what is wrong with it</source>
        <translation>dit ce qu’un fichier contient, ou ce qui ne va pas</translation>
    </message>
    <message>
        <source>writes the file's facts as tables; with --nameless letters and numbers stand for names, words of anybody's own are left out, and counts.csv counts</source>
        <translation>écrit les faits du fichier en tableaux ; avec --nameless, des lettres et des chiffres remplacent les noms, les mots personnels sont omis, et counts.csv compte</translation>
    </message>
    <message>
        <source>the engineer's report since the last annual, up to a day or between two; its tables come beside it, in the folder X-csv, whole also where the appendix of lists, looks and control checks is left out; with --earlier it compares the ends on earlier prints</source>
        <translation>le rapport pour le mécanicien depuis la dernière visite annuelle, jusqu’à un jour ou entre deux ; ses tableaux viennent à côté, dans le dossier X-csv, entiers même si l’annexe des listes, contrôles visuels et essais des commandes est omise ; avec --earlier il compare les états finaux d’impressions antérieures</translation>
    </message>
    <message>
        <source>boxes to tick by hand at a rigging without the program; the gauge is the one that was last used</source>
        <translation>des cases à cocher à la main pour un montage sans le programme ; la jauge est la dernière utilisée</translation>
    </message>
    <message>
        <source>a card to fold once: where the couplings are, what locked looks like, whom to call; A5, both sides</source>
        <translation>une carte à plier une fois : où sont les raccords, à quoi ressemble une liaison verrouillée, qui appeler ; A5, recto verso</translation>
    </message>
    <message>
        <source>the manual, as pages to print</source>
        <translation>le manuel, en pages à imprimer</translation>
    </message>
    <message>
        <source>the facts of two files, such as two laptops hold, in a new one; where another program has changed one of them, it is joined only with --as-found</source>
        <translation>les faits de deux fichiers, tels que deux ordinateurs les ont, dans un nouveau ; si un autre programme a modifié l’un d’eux, il n’est intégré qu’avec --as-found</translation>
    </message>
    <message>
        <source>hands one airframe on, with all that belongs to it and the people and gauges named in it</source>
        <translation>transmet un planeur, avec tout ce qui lui appartient et les personnes et jauges qui y sont nommées</translation>
    </message>
    <message>
        <source>reads what can be read of a damaged file</source>
        <translation>lit ce qui peut être lu d’un fichier endommagé</translation>
    </message>
    <message>
        <source>this page; which Rigband it is</source>
        <translation>cette page ; quel Rigband c’est</translation>
    </message>
    <message>
        <source>Use one of these:</source>
        <translation>Utiliser l’une de ces formes :</translation>
    </message>
    <message>
        <source>Nothing that is there already is ever written over.</source>
        <translation>Rien de ce qui existe déjà n’est jamais écrasé.</translation>
    </message>
    <message>
        <source>Ends with 0 when all was done; with 1 when it could not be; with 2 when the command was not understood, a day in it is still to come, or rows of a table are bad, and nothing was done; with 3 when it was done, and something was found or left out, which is said.</source>
        <translation>Se termine par 0 quand tout est fait ; par 1 quand c’était impossible ; par 2 quand la commande n’a pas été comprise, qu’un jour y est encore à venir ou que des lignes d’un tableau sont mauvaises, et rien n’a été fait ; par 3 quand c’est fait et que quelque chose a été trouvé ou omis, ce qui est dit.</translation>
    </message>
    <message>
        <source>writes everything that is in a file as one document, with photos and the chain</source>
        <translation>écrit tout ce qui est dans un fichier en un seul document, avec les photos et la chaîne</translation>
    </message>
    <message>
        <source>makes a new file of such a document, equal to the one that went out; where another program has changed something, only with --as-found</source>
        <translation>crée un nouveau fichier d’un tel document, égal à celui qui en est sorti ; si un autre programme a modifié quelque chose, seulement avec --as-found</translation>
    </message>
    <message>
        <source>a new file in which letters stand for the name of a person who asked for it; that it was done, and by whom, is told there from then on</source>
        <translation>un nouveau fichier où des lettres tiennent lieu du nom d’une personne qui l’a demandé ; que cela a été fait, et par qui, y est dit dès lors</translation>
    </message>
    <message>
        <source>Facts in this file were changed by another program. The tables tell them as they stand now, and cannot tell which they are: “rigband-file check” does.</source>
        <translation>Des faits de ce fichier ont été modifiés par un autre programme. Les tableaux les donnent tels qu’ils sont maintenant, et ne peuvent dire lesquels : « rigband-file check » le dit.</translation>
    </message>
    <message>
        <source>%1 is not there. Look whether its name, and that of its folder, are written rightly.</source>
        <translation>%1 n’existe pas. Voir si son nom et celui de son dossier sont bien écrits.</translation>
    </message>
    <message>
        <source>%1 is no file but a folder, a pipe or a device, so it was not read. Save what it holds as a file and name that.</source>
        <translation>%1 n’est pas un fichier mais un dossier, un tube ou un périphérique, et n’a donc pas été lu. Enregistrer le contenu dans un fichier et nommer celui-ci.</translation>
    </message>
    <message>
        <source>%1 cannot be made: its folder is not there. Look whether the name of the folder is written rightly, or make it first.</source>
        <translation>%1 ne peut pas être créé : son dossier n’existe pas. Voir si le nom du dossier est bien écrit, ou le créer d’abord.</translation>
    </message>
    <message>
        <source>%1 is no folder but a file, and was left as it is. Name a folder, or one that is to be made.</source>
        <translation>%1 n’est pas un dossier mais un fichier, et a été laissé tel quel. Nommer un dossier, ou un dossier à créer.</translation>
    </message>
    <message>
        <source>Nothing could be read in %1, so no file was made. Open the latest copy from the folder beside it.</source>
        <translation>Rien n’a pu être lu dans %1, aucun fichier n’a donc été créé. Ouvrir la copie la plus récente dans le dossier placé à côté.</translation>
    </message>
    <message>
        <source>%1 is larger than a table may be, 20 MB, so nothing was imported. Part it into several.</source>
        <translation>%1 dépasse la taille permise pour un tableau, 20 Mo. Rien n’a donc été importé. Diviser le tableau en plusieurs.</translation>
    </message>
    <message>
        <source>Said twice in this file, differently; to be decided by a person: %1.</source>
        <translation>Dit deux fois dans ce fichier, différemment ; une personne doit décider : %1.</translation>
    </message>
    <message>
        <source>Rows of the table “%1” that name something of the table “%3” that is not in the file: %2. Salvaging leaves such rows behind, or another program took something out; look for a copy from before.</source>
        <translation>Lignes de la table « %1 » qui nomment un élément de la table « %3 » absent du fichier : %2. C’est ce qui reste quand on a sauvé un fichier, ou un autre programme en a retiré quelque chose ; chercher une copie d’avant.</translation>
    </message>
    <message>
        <source>adds these tables to a file, all of them or none; where the file is not there yet, --couplings, --people or --gauges makes it; READINGS.csv has the columns %1 and, where wanted, %2; a row with 2, 3 and on in %3 is the same as one before it in all of the first eight</source>
        <translation>ajoute ces tableaux à un fichier, tous ou aucun ; si le fichier n’existe pas encore, --couplings, --people ou --gauges le crée ; READINGS.csv a les colonnes %1 et, au besoin, %2 ; une ligne avec 2, 3 et ainsi de suite dans %3 est identique à une précédente dans toutes les huit premières</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>what was found in the file, where that stands</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The report says so on its first page and lists them under “%1”.</source>
        <translation>Le rapport le dit à sa première page et en donne la liste sous « %1 ».</translation>
    </message>
    <message>
        <source>The print says so below its heading. “rigband-file check” lists them.</source>
        <translation>L’impression le dit sous son titre. « rigband-file check » en donne la liste.</translation>
    </message>
    <message>
        <source>The print tells nothing of them. “rigband-file check” lists them.</source>
        <translation>L’impression n’en dit rien. « rigband-file check » en donne la liste.</translation>
    </message>
    <message>
        <source>a rigging record as pages to print: the last one that was closed, or the last that began on a day; where there are several on it they are named, and --time chooses one</source>
        <translation>une fiche de montage en pages à imprimer : la dernière close, ou la dernière commencée un jour donné ; si ce jour en a plusieurs, elles sont indiquées, et --time en choisit une</translation>
    </message>
    <message>
        <source>No rigging record of %1 began at %2 on that day. Those of the day began at %3.</source>
        <translation>Aucune fiche de montage de %1 n’a commencé à %2 ce jour-là. Celles du jour ont commencé à %3.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between times</comment>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>The day has %n rigging record(s), begun at %1. The one begun at %2 was written; add --time hh:mm for another.</source>
        <translation>
            <numerusform>Ce jour a %n fiche de montage, commencée à %1. Celle commencée à %2 a été écrite ; --time hh:mm en choisit une autre.</numerusform>
            <numerusform>Ce jour a %n fiches de montage, commencées à %1. Celle commencée à %2 a été écrite ; --time hh:mm en choisit une autre.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is no time. Write the hour and the minute, as in 08:05.</source>
        <translation>%1 n’est pas une heure. Écrire l’heure et la minute, comme 08:05.</translation>
    </message>
</context>
<context>
    <name>Formats</name>
    <message>
        <source>above %1 mm</source>
        <translation>plus de %1 mm</translation>
    </message>
    <message>
        <source>below %1 mm</source>
        <translation>moins de %1 mm</translation>
    </message>
    <message>
        <source>%1–%2 mm</source>
        <comment>from–to</comment>
        <translation>%1–%2 mm</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>QLocale date format</comment>
        <translation>d MMMM yyyy</translation>
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
        <translation>inconnu</translation>
    </message>
    <message>
        <source>more than 1 in 2</source>
        <translation>plus de 1 sur 2</translation>
    </message>
    <message>
        <source>fewer than 1 in %1</source>
        <translation>moins de 1 sur %1</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 sur %1</translation>
    </message>
</context>
<context>
    <name>GaugeWords</name>
    <message>
        <source>Leaf sets and gauges</source>
        <translation>Jeux de lames et jauges</translation>
    </message>
    <message>
        <source>No leaf set yet. Most people start with the usual one of 20 leaves.</source>
        <translation>Aucun jeu de lames encore. La plupart commencent par le jeu usuel de 20 lames.</translation>
    </message>
    <message>
        <source>Add a set or gauge</source>
        <translation>Ajouter un jeu ou une jauge</translation>
    </message>
    <message>
        <source>Usual 20-leaf set 0.05 to 1.00</source>
        <translation>Jeu usuel de 20 lames, 0,05 à 1,00</translation>
    </message>
    <message>
        <source>Note a check</source>
        <translation>Noter un contrôle</translation>
    </message>
    <message>
        <source>Take out of use</source>
        <translation>Mettre hors service</translation>
    </message>
    <message>
        <source>Put back in use</source>
        <translation>Remettre en service</translation>
    </message>
    <message>
        <source>%1 (out of use)</source>
        <translation>%1 (hors service)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>name, kind</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>last checked %1</source>
        <translation>dernier contrôle le %1</translation>
    </message>
    <message>
        <source>no check noted</source>
        <translation>aucun contrôle noté</translation>
    </message>
    <message>
        <source>in doubt from %1 on: readings show “cannot tell”</source>
        <translation>en doute à partir du %1 : les mesures affichent « on ne peut pas dire »</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>A new set or gauge</source>
        <translation>Nouveau jeu ou nouvelle jauge</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Modifier : %1</translation>
    </message>
    <message>
        <source>&amp;Name on its case</source>
        <translation>&amp;Nom sur l’étui</translation>
    </message>
    <message>
        <source>Short: A, B, pins.</source>
        <translation>Court : A, B, piges.</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Sorte</translation>
    </message>
    <message>
        <source>Feeler leaves</source>
        <translation>Lames d’épaisseur</translation>
    </message>
    <message>
        <source>Pins or wires</source>
        <translation>Piges ou fils</translation>
    </message>
    <message>
        <source>Go/no-go block</source>
        <translation>Calibre entre/n’entre pas</translation>
    </message>
    <message>
        <source>Taper gauge</source>
        <translation>Jauge conique</translation>
    </message>
    <message>
        <source>Si&amp;zes, mm</source>
        <translation>Ta&amp;illes, mm</translation>
    </message>
    <message>
        <source>Like 0.05-1.00 step 0.05, or one by one: 0.05, 0.10, 0.15. With a decimal comma put semicolons between: 0,05; 0,10; 0,15.</source>
        <translation>Comme 0.05-1.00 step 0.05, ou une à une : 0.05, 0.10, 0.15. Avec une virgule décimale, mettre des points-virgules entre elles : 0,05; 0,10; 0,15.</translation>
    </message>
    <message>
        <source>read to %1 mm</source>
        <translation>lisible à %1 mm</translation>
    </message>
    <message>
        <source>one size, %1 mm</source>
        <translation>une taille, %1 mm</translation>
    </message>
    <message>
        <source>%1 sizes from %2 to %3 mm</source>
        <translation>%1 tailles de %2 à %3 mm</translation>
    </message>
    <message>
        <source>Reso&amp;lution, mm</source>
        <translation>&amp;Résolution, mm</translation>
    </message>
    <message>
        <source>The smallest step its scale can be read to, like 0.05.</source>
        <translation>Le plus petit pas lisible sur son échelle, comme 0,05.</translation>
    </message>
    <message>
        <source>&amp;Tolerance per leaf, ± mm</source>
        <translation>&amp;Tolérance par lame, ± mm</translation>
    </message>
    <message>
        <source>As printed with the set. May stay empty when it is not known.</source>
        <translation>Comme imprimé avec le jeu. Peut rester vide quand elle n’est pas connue.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ote</translation>
    </message>
    <message>
        <source>Type the name that stands on the case.</source>
        <translation>Taper le nom qui figure sur l’étui.</translation>
    </message>
    <message>
        <source>There is already a gauge “%1”. Two sets need two names.</source>
        <translation>Il y a déjà une jauge « %1 ». Deux jeux demandent deux noms.</translation>
    </message>
    <message>
        <source>A set without leaves can measure nothing. Type its sizes, like 0.05-1.00 step 0.05.</source>
        <translation>Un jeu sans lames ne peut rien mesurer. Taper ses tailles, comme 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>A figure is missing in “%1”. Type it like 0.05-1.00 step 0.05.</source>
        <translation>Il manque un chiffre dans « %1 ». Taper comme 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>A leaf of 0 mm has no thickness. Leave it out.</source>
        <translation>Une lame de 0 mm n’a pas d’épaisseur. L’enlever.</translation>
    </message>
    <message>
        <source>%1 mm is there twice. Type each size once.</source>
        <translation>%1 mm y figure deux fois. Taper chaque taille une fois.</translation>
    </message>
    <message>
        <source>From “%1” the step is missing. Type it like 0.05-1.00 step 0.05.</source>
        <translation>Il manque le pas dans « %1 ». Taper comme 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>In “%1” the step passes over the last size. Which one is meant?</source>
        <translation>Dans « %1 », le pas dépasse la dernière taille. Laquelle est voulue ?</translation>
    </message>
    <message>
        <source>A step of 0 leads nowhere. Type it like 0.05-1.00 step 0.05.</source>
        <translation>Un pas de 0 ne mène nulle part. Taper comme 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>In “%1” the first size has to be the smaller one.</source>
        <translation>Dans « %1 », la première taille doit être la plus petite.</translation>
    </message>
    <message>
        <source>Does the comma part two leaves or the decimals? Put semicolons between the sizes: 0,05; 0,10; 0,15.</source>
        <translation>La virgule sépare-t-elle deux lames ou les décimales ? Mettre des points-virgules entre les tailles : 0,05; 0,10; 0,15.</translation>
    </message>
    <message>
        <source>That would be more than %1 sizes. Is the step right?</source>
        <translation>Cela ferait plus de %1 tailles. Le pas est-il juste ?</translation>
    </message>
    <message>
        <source>A resolution of 0 can measure nothing.</source>
        <translation>Une résolution de 0 ne peut rien mesurer.</translation>
    </message>
    <message>
        <source>A go/no-go block has two sizes: the one that is to enter and the one that is not, like 0.40, 0.60.</source>
        <translation>Un calibre entre/n’entre pas a deux tailles : celle qui doit entrer et celle qui ne doit pas, comme 0.40, 0.60.</translation>
    </message>
    <message>
        <source>Tried on a &amp;gap of known width, mm</source>
        <translation>Essai sur un éca&amp;rt de largeur connue, mm</translation>
    </message>
    <message>
        <source>A stamped block or a ring, read once each rigging day. Leave it empty if it was not tried on one.</source>
        <translation>Un bloc marqué ou une bague, mesuré une fois chaque jour de montage. Laisser vide si le jeu n’y a pas été essayé.</translation>
    </message>
    <message>
        <source>Thickest that &amp;entered there</source>
        <translation>La plus épaisse qui y est &amp;entrée</translation>
    </message>
    <message>
        <source>Thinnest that did &amp;not</source>
        <translation>La plus mince qui n’est &amp;pas entrée</translation>
    </message>
    <message>
        <source>A gap of 0 cannot be read.</source>
        <translation>Un écart de 0 ne peut pas se mesurer.</translation>
    </message>
    <message>
        <source>The one that did not enter has to be thicker than the one that did.</source>
        <translation>Celle qui n’est pas entrée doit être plus épaisse que celle qui est entrée.</translation>
    </message>
    <message>
        <source>The set reads at least %1 mm high on the known gap, so it is not usable: choose “In doubt”.</source>
        <translation>Le jeu mesure au moins %1 mm trop haut sur l’écart connu, il n’est donc pas utilisable : choisir « En doute ».</translation>
    </message>
    <message>
        <source>The set reads at least %1 mm low on the known gap, so it is not usable: choose “In doubt”.</source>
        <translation>Le jeu mesure au moins %1 mm trop bas sur l’écart connu, il n’est donc pas utilisable : choisir « En doute ».</translation>
    </message>
    <message>
        <source>%1 Known gap %2 mm: read %3, at least %4 mm high.</source>
        <translation>%1 Écart connu %2 mm : mesuré %3, au moins %4 mm trop haut.</translation>
    </message>
    <message>
        <source>%1 Known gap %2 mm: read %3, at least %4 mm low.</source>
        <translation>%1 Écart connu %2 mm : mesuré %3, au moins %4 mm trop bas.</translation>
    </message>
    <message>
        <source>%1 Known gap %2 mm: read %3.</source>
        <translation>%1 Écart connu %2 mm : mesuré %3.</translation>
    </message>
    <message>
        <source>A check of %1</source>
        <translation>Contrôle : %1</translation>
    </message>
    <message>
        <source>Worn leaves read high, burred or dirty ones read low, on every coupling alike. A check stays as it was saved; a later one stands beside it.</source>
        <translation>Des lames usées mesurent trop haut, des lames à bavures ou sales trop bas, sur tous les raccords pareillement. Un contrôle reste tel qu’enregistré ; un contrôle ultérieur figure à côté.</translation>
    </message>
    <message>
        <source>&amp;Day of the check</source>
        <translation>&amp;Jour du contrôle</translation>
    </message>
    <message>
        <source>&amp;How it was checked</source>
        <translation>&amp;Comment il a été fait</translation>
    </message>
    <message>
        <source>Micrometer at three places, reference block …</source>
        <translation>Micromètre en trois endroits, cale étalon …</translation>
    </message>
    <message>
        <source>What was &amp;found</source>
        <translation>Ce qui a été &amp;trouvé</translation>
    </message>
    <message>
        <source>Every leaf as marked; 0.40 worn by 0.02 …</source>
        <translation>Chaque lame comme marquée ; 0,40 usée de 0,02 …</translation>
    </message>
    <message>
        <source>&amp;Usable: readings with it are judged</source>
        <translation>&amp;Utilisable : ses mesures sont jugées</translation>
    </message>
    <message>
        <source>&amp;In doubt: readings with it cannot be judged</source>
        <translation>En &amp;doute : ses mesures ne peuvent pas être jugées</translation>
    </message>
    <message>
        <source>In doubt fro&amp;m</source>
        <translation>En doute à p&amp;artir du</translation>
    </message>
    <message>
        <source>Say how it was checked.</source>
        <translation>Dire comment le contrôle a été fait.</translation>
    </message>
    <message>
        <source>Say what was found, also when it was as expected.</source>
        <translation>Dire ce qui a été trouvé, même si c’était comme attendu.</translation>
    </message>
    <message>
        <source>The doubt cannot begin after the check. Type the day of the check or an earlier one.</source>
        <translation>Le doute ne peut pas commencer après le contrôle. Taper le jour du contrôle ou un jour antérieur.</translation>
    </message>
    <message>
        <source>Checks of %1</source>
        <translation>Contrôles : %1</translation>
    </message>
    <message>
        <source>No check noted yet. Once a month in the season, and after every drop, is common practice.</source>
        <translation>Aucun contrôle noté encore. L’usage : une fois par mois en saison, et après chaque chute.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>day, how, found</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · in doubt from %2</source>
        <translation>%1 · en doute à partir du %2</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Line %1 has a column without a name. Name it, or take it out.</source>
        <translation>La ligne %1 a une colonne sans nom. La nommer, ou la retirer.</translation>
    </message>
    <message>
        <source>Line %1 could not be taken. Look it over.</source>
        <translation>La ligne %1 n’a pas pu être intégrée. La revoir.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>file name, sentence</comment>
        <translation>%1 : %2</translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) have the same to put right.</source>
        <translation>
            <numerusform>%n autre ligne a la même chose à corriger.</numerusform>
            <numerusform>%n autres lignes ont la même chose à corriger.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported. Put right what is named above, then import everything again.</source>
        <translation>Rien n’a été importé. Corriger ce qui est nommé ci-dessus, puis tout importer à nouveau.</translation>
    </message>
    <message>
        <source>Nothing was imported. Put right the %1 things named above, then import everything again.</source>
        <translation>Rien n’a été importé. Corriger les %1 choses nommées ci-dessus, puis tout importer à nouveau.</translation>
    </message>
    <message>
        <source>Airframes: %1.</source>
        <translation>Planeurs : %1.</translation>
    </message>
    <message>
        <source>Couplings: %1.</source>
        <translation>Raccords : %1.</translation>
    </message>
    <message>
        <source>Fittings: %1.</source>
        <translation>Poses : %1.</translation>
    </message>
    <message>
        <source>People: %1.</source>
        <translation>Personnes : %1.</translation>
    </message>
    <message>
        <source>Leaf sets and gauges: %1.</source>
        <translation>Jeux de lames et jauges : %1.</translation>
    </message>
    <message>
        <source>Gauge checks: %1.</source>
        <translation>Contrôles de jauge : %1.</translation>
    </message>
    <message>
        <source>Events: %1.</source>
        <translation>Événements : %1.</translation>
    </message>
    <message>
        <source>Joint plays: %1.</source>
        <translation>Jeux de rotule : %1.</translation>
    </message>
    <message>
        <source>Added.</source>
        <translation>Ajouté.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) not taken in, as the file says the same already.</source>
        <translation>
            <numerusform>%n ligne non intégrée, car le fichier dit déjà la même chose.</numerusform>
            <numerusform>%n lignes non intégrées, car le fichier dit déjà la même chose.</numerusform>
        </translation>
    </message>
    <message>
        <source>One of them lies outside its coupling’s band, and no question was opened for it. Open the file and look at Before the annual.</source>
        <translation>L’une d’elles est hors de la bande de son raccord, et aucune question n’a été ouverte pour elle. Ouvrir le fichier et regarder la page « Avant la visite ».</translation>
    </message>
    <message>
        <source>%1 of them lie outside their coupling’s band, and no question was opened for them. Open the file and look at Before the annual.</source>
        <translation>%1 d’entre elles sont hors de la bande de leur raccord, et aucune question n’a été ouverte pour elles. Ouvrir le fichier et regarder la page « Avant la visite ».</translation>
    </message>
    <message>
        <source>There is nothing in it that the file does not say already.</source>
        <translation>Il n’y a rien là que le fichier ne dise déjà.</translation>
    </message>
    <message>
        <source>One reading was imported.</source>
        <translation>Une mesure a été importée.</translation>
    </message>
    <message>
        <source>One reading was imported, with its rigging.</source>
        <translation>Une mesure a été importée, avec son montage.</translation>
    </message>
    <message>
        <source>%1 readings were imported.</source>
        <translation>%1 mesures ont été importées.</translation>
    </message>
    <message>
        <source>%1 readings were imported, with one rigging.</source>
        <translation>%1 mesures ont été importées, avec un montage.</translation>
    </message>
    <message>
        <source>%1 readings were imported, with %2 riggings.</source>
        <translation>%1 mesures ont été importées, avec %2 montages.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) not taken in, as the reading was corrected or struck.</source>
        <translation>
            <numerusform>%n ligne non intégrée, car la mesure a été corrigée ou rayée.</numerusform>
            <numerusform>%n lignes non intégrées, car la mesure a été corrigée ou rayée.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and later days</source>
        <comment>the first of many days</comment>
        <translation>%1 et jours suivants</translation>
    </message>
    <message>
        <source>On %1 the file has a rigging of that airframe already. Open the file and say whether the two are one and the same (Ctrl+8).</source>
        <translation>Le %1, le fichier a déjà un montage de ce planeur. Ouvrir le fichier et dire s’il s’agit d’un seul et même montage (Ctrl+8).</translation>
    </message>
    <message>
        <source>On %1 the file has riggings of these airframes already, %2 in all. Open the file and say of each whether the two are one and the same (Ctrl+8).</source>
        <translation>Le %1, le fichier a déjà des montages de ces planeurs, %2 en tout. Ouvrir le fichier et dire pour chacun s’il s’agit d’un seul et même montage (Ctrl+8).</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) not taken in, as the joint was found not secured: the answer that says so stands in its rigging, not in the table.</source>
        <translation>
            <numerusform>%n ligne non intégrée, car la liaison a été trouvée non assurée : la réponse qui le dit est dans son montage, pas dans le tableau.</numerusform>
            <numerusform>%n lignes non intégrées, car la liaison a été trouvée non assurée : la réponse qui le dit est dans son montage, pas dans le tableau.</numerusform>
        </translation>
    </message>
    <message>
        <source>The table is empty. Name the columns in its first line and write a line for each thing below.</source>
        <translation>Le tableau est vide. Nommer les colonnes dans la première ligne et écrire en dessous une ligne pour chaque chose.</translation>
    </message>
    <message>
        <source>Line %1 names the columns, but no reading stands below it. Write one line for each reading.</source>
        <translation>La ligne %1 nomme les colonnes, mais aucune mesure ne figure en dessous. Écrire une ligne par mesure.</translation>
    </message>
    <message>
        <source>The table is larger than what is read at once: 20 MB and 200,000 lines. Part it into several.</source>
        <translation>Le tableau dépasse ce qui est lu en une fois : 20 Mo et 200 000 lignes. Le diviser en plusieurs.</translation>
    </message>
    <message>
        <source>Line %1 holds signs that are not UTF-8. Save the table anew as UTF-8 text.</source>
        <translation>La ligne %1 contient des caractères qui ne sont pas en UTF-8. Enregistrer à nouveau le tableau comme texte UTF-8.</translation>
    </message>
    <message>
        <source>Line %1 has both commas and semicolons: “%2”. Part all columns by one of the two.</source>
        <translation>La ligne %1 a des virgules et des points-virgules : « %2 ». Séparer toutes les colonnes par l’un des deux.</translation>
    </message>
    <message>
        <source>Line %1 names no column “%2”, and such a table needs one. Add it.</source>
        <translation>La ligne %1 ne nomme pas de colonne « %2 », et un tel tableau en a besoin. L’ajouter.</translation>
    </message>
    <message>
        <source>Line %1 names a column “%2” that such a table does not have. Rename it or take it out.</source>
        <translation>La ligne %1 nomme une colonne « %2 » qu’un tel tableau n’a pas. La renommer ou la retirer.</translation>
    </message>
    <message>
        <source>Line %1 names the column “%2” twice. Take one of them out.</source>
        <translation>La ligne %1 nomme deux fois la colonne « %2 ». En retirer une.</translation>
    </message>
    <message>
        <source>A quotation mark opens in line %1 and nothing closes it, so nothing after it could be read: “%2”. Close it, or take it out.</source>
        <translation>Un guillemet s’ouvre à la ligne %1 et rien ne le ferme, rien n’a donc pu être lu après lui : « %2 ». Le fermer, ou le retirer.</translation>
    </message>
    <message>
        <source>Line %1 has a quotation mark in the middle of a field: “%2”. Put the whole field in quotation marks and write the one inside twice.</source>
        <translation>La ligne %1 a un guillemet au milieu d’un champ : « %2 ». Mettre tout le champ entre guillemets et doubler celui qui est à l’intérieur.</translation>
    </message>
    <message>
        <source>Line %1 has more or fewer fields than the first line has columns: “%2”. Write one field for each column, empty where nothing is known.</source>
        <translation>La ligne %1 a plus ou moins de champs que la première ligne n’a de colonnes : « %2 ». Écrire un champ par colonne, vide là où rien n’est connu.</translation>
    </message>
    <message>
        <source>Line %1 has a figure with a decimal comma in a table parted by commas: “%2”. Write a point in the figure, or part the whole table by semicolons.</source>
        <translation>La ligne %1 a un nombre à virgule décimale dans un tableau séparé par des virgules : « %2 ». Écrire un point dans le nombre, ou séparer tout le tableau par des points-virgules.</translation>
    </message>
    <message>
        <source>Line %1 names no airframe. Write its registration.</source>
        <translation>La ligne %1 ne nomme aucun planeur. Écrire son immatriculation.</translation>
    </message>
    <message>
        <source>Line %1 names no coupling. Write its name as it stands in Set up.</source>
        <translation>La ligne %1 ne nomme aucun raccord. Écrire son nom tel qu’il figure dans Réglages.</translation>
    </message>
    <message>
        <source>Line %1 does not say who measured. Write the name.</source>
        <translation>La ligne %1 ne dit pas qui a mesuré. Écrire le nom.</translation>
    </message>
    <message>
        <source>Line %1 has no date in the column %3. Write year, month and day, such as 2026-05-02.</source>
        <translation>La ligne %1 n’a pas de date dans la colonne %3. Écrire l’année, le mois et le jour, comme 2026-05-02.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, where a date belongs. Write year, month and day, such as 2026-05-02.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, où il faut une date. Écrire l’année, le mois et le jour, comme 2026-05-02.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, where a time belongs. Write hours and minutes, such as 09:40.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, où il faut une heure. Écrire les heures et les minutes, comme 09:40.</translation>
    </message>
    <message>
        <source>Line %1 does not say which leaf entered or which did not. Write at least one of them.</source>
        <translation>La ligne %1 ne dit ni quelle lame est entrée, ni laquelle n’est pas entrée. Écrire au moins l’une des deux.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, the mark of a figure that could not be worked out. Write the figure that was read, or take the line out.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, la marque d’un nombre qui n’a pas pu être calculé. Écrire le nombre mesuré, ou retirer la ligne.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which is not a length. Write millimetres, figures only, such as 0.60.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, ce qui n’est pas une longueur. Écrire des millimètres, en chiffres seulement, comme 0.60.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, with more than one point or comma. Write one of them only, such as 0.60.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, avec plus d’un point ou d’une virgule. N’en écrire qu’un, comme 0.60.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, finer than a micrometre. Write three figures after the point at most.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, plus fin qu’un micromètre. Écrire trois décimales au plus.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, below zero. Write the length as it was read.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, au-dessous de zéro. Écrire la longueur telle qu’elle a été mesurée.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, wider than any gap, 10 mm at most. Write the figure in millimetres.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, plus large que tout écart, 10 mm au plus. Écrire le nombre en millimètres.</translation>
    </message>
    <message>
        <source>Line %1 says that a leaf entered which is thicker than one that did not: “%2”. Look over both figures.</source>
        <translation>D’après la ligne %1, une lame est entrée qui est plus épaisse qu’une autre qui n’est pas entrée : « %2 ». Revoir les deux nombres.</translation>
    </message>
    <message>
        <source>Line %1 says that the same leaf entered and did not: “%2”. Write the next thicker leaf, the one that did not enter.</source>
        <translation>D’après la ligne %1, la même lame est entrée et n’est pas entrée : « %2 ». Écrire la lame suivante, plus épaisse, celle qui n’est pas entrée.</translation>
    </message>
    <message>
        <source>Line %1 has the state “%2”. Write “locked”, “part-seated” or “baseline”, or leave it empty for “locked”.</source>
        <translation>La ligne %1 a l’état « %2 ». Écrire « locked » (verrouillé), « part-seated » (à demi engagé) ou « baseline » (série de référence) ; un champ vide veut dire « locked ».</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column repeat. Write 2 for the second reading that is the same, 3 for the third, or leave the field empty.</source>
        <translation>La ligne %1 a « %2 » dans la colonne repeat. Écrire 2 pour la deuxième mesure identique, 3 pour la troisième, ou laisser le champ vide.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column set_aside. Write “corrected” or “struck” and the line is not taken in, or leave the field empty.</source>
        <translation>La ligne %1 a « %2 » dans la colonne set_aside. Écrire « corrected » (corrigé) ou « struck » (rayé), et la ligne n’est pas intégrée, ou laisser le champ vide.</translation>
    </message>
    <message>
        <source>Line %1 has the date %2, which is still to come. Look over the date, and the clock of this computer.</source>
        <translation>La ligne %1 a la date %2, qui est encore à venir. Revoir la date, et l’horloge de cet ordinateur.</translation>
    </message>
    <message>
        <source>Line %1 names the airframe “%2”, which is not in the file. Look over the registration, or add the airframe first: in Set up, or with its couplings in a table.</source>
        <translation>La ligne %1 nomme le planeur « %2 », qui n’est pas dans le fichier. Revoir l’immatriculation, ou ajouter d’abord le planeur : dans Réglages, ou avec ses raccords dans un tableau.</translation>
    </message>
    <message>
        <source>Line %1 names the coupling “%2”, which this airframe does not have. Look over the name, or add the coupling first: in Set up, or in a table.</source>
        <translation>La ligne %1 nomme le raccord « %2 », que ce planeur n’a pas. Revoir le nom, ou ajouter d’abord le raccord : dans Réglages, ou dans un tableau.</translation>
    </message>
    <message>
        <source>Line %1 names the coupling “%2”, for which no fitting was begun. Begin one in Set up first.</source>
        <translation>La ligne %1 nomme le raccord « %2 », pour lequel aucune pose n’a été commencée. En commencer d’abord une dans Réglages.</translation>
    </message>
    <message>
        <source>Line %1 names the coupling “%2”, which has no gap to measure. Take the line out, or change what kind of coupling it is in Set up.</source>
        <translation>La ligne %1 nomme le raccord « %2 », qui n’a pas d’écart à mesurer. Retirer la ligne, ou changer dans Réglages de quelle sorte de raccord il s’agit.</translation>
    </message>
    <message>
        <source>Line %1 names “%2” in the column %3, and nobody of that name is in the file. Look over the name, or add the person first: in Set up, or in a table.</source>
        <translation>La ligne %1 nomme « %2 » dans la colonne %3, et personne de ce nom n’est dans le fichier. Revoir le nom, ou ajouter d’abord la personne : dans Réglages, ou dans un tableau.</translation>
    </message>
    <message>
        <source>Line %1 names the leaf set or gauge “%2”, which is not in the file. Look over the name, or add it first: in Set up, or in a table.</source>
        <translation>La ligne %1 nomme le jeu de lames ou la jauge « %2 », qui n’est pas dans le fichier. Revoir le nom, ou l’ajouter d’abord : dans Réglages, ou dans un tableau.</translation>
    </message>
    <message>
        <source>Line %1 is a reading of “%2” that the file holds already. Take the line out; if it was truly read again with the same result, number it in the column repeat.</source>
        <translation>La ligne %1 est une mesure de « %2 » que le fichier a déjà. Retirer la ligne ; si l’on a vraiment mesuré à nouveau avec le même résultat, la numéroter dans la colonne repeat.</translation>
    </message>
    <message>
        <source>Line %1 is a reading of “%2” that stands further up in this table too. Take the line out; if it was truly read again with the same result, number it in the column repeat.</source>
        <translation>La ligne %1 est une mesure de « %2 » qui figure déjà plus haut dans ce tableau. Retirer la ligne ; si l’on a vraiment mesuré à nouveau avec le même résultat, la numéroter dans la colonne repeat.</translation>
    </message>
    <message>
        <source>Line %1 names “%2” both in the column person and in the column second. Write in second who stood by, or leave it empty.</source>
        <translation>La ligne %1 nomme « %2 » à la fois dans la colonne person et dans la colonne second. Écrire dans second qui était à côté, ou laisser le champ vide.</translation>
    </message>
    <message>
        <source>Line %1 has nothing in the column %3, and it is needed there. Write it.</source>
        <translation>La ligne %1 n’a rien dans la colonne %3, où il faut quelque chose. Remplir le champ.</translation>
    </message>
    <message>
        <source>Line %1 has a text in the column %3 that is longer than 100,000 bytes: “%2”. Shorten it.</source>
        <translation>La ligne %1 a dans la colonne %3 un texte de plus de 100 000 octets : « %2 ». Le raccourcir.</translation>
    </message>
    <message>
        <source>Line %1 has a character in the column %3 that nobody sees, such as a mark for the direction of writing: “%2”. Write the text anew.</source>
        <translation>La ligne %1 a dans la colonne %3 un caractère invisible, par exemple une marque de sens d’écriture : « %2 ». Récrire le texte.</translation>
    </message>
    <message>
        <source>Line %1 has a name in the column %3 that is longer than 1,000 bytes. Shorten it.</source>
        <translation>La ligne %1 a dans la colonne %3 un nom de plus de 1 000 octets. Le raccourcir.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3. Write one of these: %4.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3. Écrire l’un de ceux-ci : %4.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which does not go with the kind “%4”. Leave the field empty, or write another kind.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, ce qui ne va pas avec la sorte « %4 ». Laisser le champ vide, ou écrire une autre sorte.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which is no place on the plan. Write plan_x from -1, the left wing tip, to 1, and plan_y from 0, the nose, to 1; or leave both empty.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, ce qui n’est pas un endroit sur la vue de dessus. Écrire plan_x de -1, le bout de l’aile gauche, à 1, et plan_y de 0, le nez, à 1 ; ou laisser les deux vides.</translation>
    </message>
    <message>
        <source>Line %1 has no sizes in the column %3. Write them in millimetres, such as 0.05; 0.10; 0.15 or 0.05-1.00 step 0.05.</source>
        <translation>La ligne %1 n’a pas de tailles dans la colonne %3. Les écrire en millimètres, comme 0.05; 0.10; 0.15 ou 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which is no list of sizes. Write each size once, in millimetres and above zero, such as 0.05; 0.10; 0.15 or 0.05-1.00 step 0.05.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, ce qui n’est pas une liste de tailles. Écrire chaque taille une fois, en millimètres et au-dessus de zéro, comme 0.05; 0.10; 0.15 ou 0.05-1.00 step 0.05.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3. Write the two ends of a go/no-go block, the thin one and the thick one.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3. Écrire les deux bouts d’un calibre entre/n’entre pas, le mince et l’épais.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and a taper gauge has no sizes. Write how fine it reads in the column resolution_mm, or write another kind.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, et une jauge conique n’a pas de tailles. Écrire dans la colonne resolution_mm sa finesse de lecture, ou écrire une autre sorte.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, which belongs to a taper gauge only. Leave the field empty, or write “taper” in the column kind.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, qui ne vaut que pour une jauge conique. Laisser le champ vide, ou écrire « taper » dans la colonne kind.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3. Write a length above zero, in millimetres, or leave the field empty.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3. Écrire une longueur au-dessus de zéro, en millimètres, ou laisser le champ vide.</translation>
    </message>
    <message>
        <source>Line %1 says what was read on a gap of known width and not how wide it is. Write the width in the column %3.</source>
        <translation>La ligne %1 dit ce qui a été mesuré sur un écart de largeur connue, mais pas cette largeur. L’écrire dans la colonne %3.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and no day in the column check_date. Write the day of the check, or leave out what is said of it.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, et aucun jour dans la colonne check_date. Écrire le jour du contrôle, ou ne rien en dire.</translation>
    </message>
    <message>
        <source>Line %1 has the date %2 in the column %3, later than the check that found it. Write the day of the check, or an earlier one.</source>
        <translation>La ligne %1 a la date %2 dans la colonne %3, postérieure au contrôle qui a fait naître le doute. Écrire le jour du contrôle, ou un jour antérieur.</translation>
    </message>
    <message>
        <source>Line %1 does not say in either column, along or across, whether play was felt. Write “felt” or “none” in at least one of them, or take the line out.</source>
        <translation>La ligne %1 ne dit ni dans la colonne along ni dans la colonne across si du jeu a été senti. Écrire « felt » (senti) ou « none » (aucun) dans au moins l’une d’elles, ou retirer la ligne.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and the column %4 does not say that play was felt. Write “felt” there, or leave the figure out.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, et la colonne %4 ne dit pas que du jeu a été senti. Y écrire « felt » (senti), ou omettre le nombre.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and the column %4 does not say “finding”. Write “finding” there, or put what was done into the note.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, et la colonne %4 ne dit pas « finding » (constat). Y écrire « finding », ou mettre dans la note ce qui a été fait.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, where “%4” is known already. A table changes nothing that is known: write the same or leave the field empty, and change it in Set up.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, où « %4 » est déjà connu. Un tableau ne change rien à ce qui est connu : écrire la même chose ou laisser le champ vide, et le changer dans Réglages.</translation>
    </message>
    <message>
        <source>Line %1 has “%2” in the column %3, and the file knows the same without it. A table changes nothing that is known: leave the field empty, and add this in Set up.</source>
        <translation>La ligne %1 a « %2 » dans la colonne %3, et le fichier connaît la même chose sans cette indication. Un tableau ne change rien à ce qui est connu : laisser le champ vide, et ajouter l’indication dans Réglages.</translation>
    </message>
    <message>
        <source>Line %1 does not say when a fitting of “%2” began, and no reading of it comes in that would say. Write the day in the column %3, such as 2026-05-02.</source>
        <translation>La ligne %1 ne dit pas quand une pose de « %2 » a commencé, et aucune mesure de ce raccord ne vient le dire. Écrire le jour dans la colonne %3, comme 2026-05-02.</translation>
    </message>
    <message>
        <source>Line %1 begins a fitting on %2 that stands further up in this table too. Take the line out.</source>
        <translation>La ligne %1 commence le %2 une pose qui figure déjà plus haut dans ce tableau. Retirer la ligne.</translation>
    </message>
    <message>
        <source>Line %1 begins a fitting on %2, before the last one in the file, %4. Look over the day in the column %3.</source>
        <translation>La ligne %1 commence une pose le %2, avant la dernière du fichier, %4. Revoir le jour dans la colonne %3.</translation>
    </message>
    <message>
        <source>Line %1 has a number in the column repeat, and the reading of “%2” that it repeats is neither in the file nor further up in the table. A repeated reading is the same in coupling, day, both figures, person, gauge and state. Where one of them differs, leave repeat empty; else count 2, 3, 4 and leave out none.</source>
        <translation>La ligne %1 porte un numéro dans la colonne repeat, et la mesure de « %2 » qu’elle répète n’est ni dans le fichier ni plus haut dans le tableau. Une mesure répétée a les mêmes raccord, jour, chiffres, personne, jauge et état. Si l’un d’eux diffère, laisser repeat vide ; sinon compter 2, 3, 4 sans en sauter.</translation>
    </message>
</context>
<context>
    <name>JoinWords</name>
    <message>
        <source>%1: %2</source>
        <comment>the name of a file, and what was found in it</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Airframes</source>
        <translation>Planeurs</translation>
    </message>
    <message>
        <source>Leaf sets and gauges</source>
        <translation>Jeux de lames et jauges</translation>
    </message>
    <message>
        <source>Checks of gauges</source>
        <translation>Contrôles des jauges</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Raccords</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Poses</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Événements</translation>
    </message>
    <message>
        <source>Rigging records</source>
        <translation>Fiches de montage</translation>
    </message>
    <message>
        <source>Looks and pulls</source>
        <translation>Contrôles visuels et tractions</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Readings struck or left out</source>
        <translation>Mesures rayées ou écartées</translation>
    </message>
    <message>
        <source>Frozen baselines</source>
        <translation>Séries de référence figées</translation>
    </message>
    <message>
        <source>Closings of records</source>
        <translation>Clôtures de fiches</translation>
    </message>
    <message>
        <source>Control surfaces</source>
        <translation>Gouvernes</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message>
        <source>Answers to questions</source>
        <translation>Réponses aux questions</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Other facts</source>
        <translation>Autres faits</translation>
    </message>
    <message>
        <source>%1: %2 more are not listed.</source>
        <translation>%1 : %2 de plus ne sont pas listés.</translation>
    </message>
    <message>
        <source>Nothing was written. Look at these facts, compare them with the copies beside the file and with prints, and ask who changed them. To go on with the files as they were found, add --as-found.</source>
        <translation>Rien n’a été écrit. Regarder ces faits, les comparer aux copies à côté du fichier et aux impressions, et demander qui les a changés. Pour continuer avec les fichiers tels que trouvés, ajouter --as-found.</translation>
    </message>
    <message>
        <source>Nothing was written: a part has a chain of its own, which would no longer show what was changed. Look at these facts, compare them with the copies beside the file and with prints, or hand the whole file on.</source>
        <translation>Rien n’a été écrit : une partie a sa propre chaîne, qui ne montrerait plus ce qui a été changé. Regarder ces faits, les comparer aux copies à côté du fichier et aux impressions, ou transmettre le fichier entier.</translation>
    </message>
    <message>
        <source>Changed by another program in one of the files, and taken as the other has it: %1. It said: %2.</source>
        <translation>Changé par un autre programme dans un des fichiers, et pris comme l’autre le donne : %1. Il disait : %2.</translation>
    </message>
    <message>
        <source>The files say different things of one fact, and nothing tells which was saved: %1. The first says: %2. The other says: %3.</source>
        <translation>Les fichiers disent des choses différentes d’un même fait, et rien ne dit laquelle a été enregistrée : %1. Le premier dit : %2. L’autre dit : %3.</translation>
    </message>
    <message>
        <source>Nothing was joined. Find out which of these is right, from the copies beside the files and from prints, and join the copy that has it.</source>
        <translation>Rien n’a été réuni. Trouver laquelle de ces choses est juste, d’après les copies à côté des fichiers et les impressions, et réunir la copie qui la donne.</translation>
    </message>
    <message>
        <source>Facts that stand in %1 alone: %2.</source>
        <translation>Faits qui ne sont que dans %1 : %2.</translation>
    </message>
    <message>
        <source>Written to %1: %2 facts, end %3.</source>
        <translation>Écrit dans %1 : %2 faits, état final %3.</translation>
    </message>
    <message>
        <source>Take in another file …</source>
        <translation>Intégrer un autre fichier …</translation>
    </message>
    <message>
        <source>Open your own file first, then take another one in.</source>
        <translation>Ouvrir d’abord votre fichier, puis en intégrer un autre.</translation>
    </message>
    <message>
        <source>Take in another file</source>
        <translation>Intégrer un autre fichier</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>L’intégrer</translation>
    </message>
    <message>
        <source>All that stands in %1 is in this file already. Nothing was taken in.</source>
        <translation>Tout ce qui est dans %1 est déjà dans ce fichier. Rien n’a été intégré.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between kinds of facts</comment>
        <translation> ; </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a kind of facts and how many</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>New in %1: %2.</source>
        <translation>Nouveau dans %1 : %2.</translation>
    </message>
    <message>
        <source>The readings are of %1, on %2.</source>
        <translation>Les mesures sont de %1, le %2.</translation>
    </message>
    <message>
        <source>The readings are of %1, from %2 to %3.</source>
        <translation>Les mesures sont de %1, du %2 au %3.</translation>
    </message>
    <message>
        <source>Another program has changed what was saved. Facts that are in question: %1.</source>
        <translation>Un autre programme a changé ce qui était enregistré. Faits en question : %1.</translation>
    </message>
    <message>
        <source>What a person has to decide afterwards: %1.</source>
        <translation>Ce qu’une personne doit décider ensuite : %1.</translation>
    </message>
    <message>
        <source>A copy of this file as it is now is kept in the folder of copies beside it. The other file is only read.</source>
        <translation>Une copie de ce fichier tel qu’il est maintenant est gardée dans le dossier des copies à côté. L’autre fichier est seulement lu.</translation>
    </message>
    <message>
        <source>Taken in from %1: %2 facts. This file now holds %3 facts and ends with %4.</source>
        <translation>Intégré de %1 : %2 faits. Ce fichier contient maintenant %3 faits et a pour état final %4.</translation>
    </message>
    <message>
        <source>Nothing was taken in. Find out which of these is right, from the copies beside the files and from prints, and take in the copy that has it.</source>
        <translation>Rien n’a été intégré. Trouver laquelle de ces choses est juste, d’après les copies à côté des fichiers et les impressions, et intégrer la copie qui la donne.</translation>
    </message>
    <message>
        <source>Written to %1: %2 with all that belongs to it, %3 facts, end %4.</source>
        <translation>Écrit dans %1 : %2 avec tout ce qui s’y rattache, %3 faits, état final %4.</translation>
    </message>
    <message>
        <source>They were taken over from %1, which held %2 facts and ended with %3 then. Write that down: the new file cannot show that nothing was changed before.</source>
        <translation>Ils ont été repris de %1, qui contenait alors %2 faits et avait pour état final %3. Le noter : le nouveau fichier ne peut pas montrer que rien n’a été changé avant.</translation>
    </message>
</context>
<context>
    <name>JointPlayWords</name>
    <message>
        <source>no play</source>
        <translation>pas de jeu</translation>
    </message>
    <message>
        <source>play</source>
        <translation>jeu</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>non essayé</translation>
    </message>
    <message>
        <source>Joint play on %1: along the rod %2; sideways %3. Tried by %4.</source>
        <translation>Jeu de la rotule le %1 : le long de la tringle %2 ; latéralement %3. Essayé par %4.</translation>
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
        <translation>jeu de la rotule : le long de la tringle %1 ; latéralement %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <comment>coupling, joint play, whose limit counts</comment>
        <translation>%1 : %2 %3</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier time(s): see the tables.</source>
        <translation>
            <numerusform>%n fois antérieure : voir les tableaux.</numerusform>
            <numerusform>%n fois antérieures : voir les tableaux.</numerusform>
        </translation>
    </message>
    <message>
        <source>If there is a limit, it is in the manual. Refer any play to the engineer.</source>
        <translation>S’il y a une limite, elle est dans le manuel. Signaler tout jeu au mécanicien.</translation>
    </message>
    <message>
        <source>Joint play</source>
        <translation>Jeu de la rotule</translation>
    </message>
    <message>
        <source>Joint pla&amp;y</source>
        <translation>Jeu de la rotul&amp;e</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key for joint play</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>Joint play  (%1)</source>
        <translation>Jeu de la rotule  (%1)</translation>
    </message>
    <message>
        <source>Hold both sides close to the joint. Push and pull along the rod, then sideways. Any click or shift that you feel or see is play. This is not the gap, and nothing here judges it: if there is a limit, it is in the manual. Refer any play to the engineer.</source>
        <translation>Tenir les deux côtés près de la liaison. Pousser et tirer le long de la tringle, puis latéralement. Tout claquement ou décalage que vous sentez ou voyez est du jeu. Ce n’est pas l’écart, et rien ici ne le juge : s’il y a une limite, elle est dans le manuel. Signaler tout jeu au mécanicien.</translation>
    </message>
    <message>
        <source>&amp;Along the rod</source>
        <translation>Le &amp;long de la tringle</translation>
    </message>
    <message>
        <source>Side&amp;ways</source>
        <translation>Laté&amp;ralement</translation>
    </message>
    <message>
        <source>mm, if measured</source>
        <translation>mm, si mesuré</translation>
    </message>
    <message>
        <source>Along the rod, &amp;mm</source>
        <translation>Le long de la tringle, &amp;mm</translation>
    </message>
    <message>
        <source>S&amp;ideways, mm</source>
        <translation>L&amp;atéralement, mm</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>&amp;Coupling</source>
        <translation>Racc&amp;ord</translation>
    </message>
    <message>
        <source>Tried &amp;by</source>
        <translation>Essayé &amp;par</translation>
    </message>
    <message>
        <source>Choose who tried it. Nobody is filled in for you.</source>
        <translation>Choisir qui l’a essayé. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Choose the coupling.</source>
        <translation>Choisir le raccord.</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>How it was measured, and what was done.</source>
        <translation>Comment cela a été mesuré, et ce qui a été fait.</translation>
    </message>
    <message>
        <source>Keep it  (Enter)</source>
        <translation>Garder  (Enter)</translation>
    </message>
    <message>
        <source>Close  (Esc)</source>
        <translation>Fermer  (Esc)</translation>
    </message>
    <message>
        <source>Say of at least one way whether there is play.</source>
        <translation>Dire pour au moins une direction s’il y a du jeu.</translation>
    </message>
    <message>
        <source>A figure stands where no play is said. Say “play”, or take the figure out.</source>
        <translation>Une valeur est saisie, mais aucun jeu n’est indiqué. Dire « jeu », ou enlever la valeur.</translation>
    </message>
    <message>
        <source>A measured play is more than 0 mm. Leave the figure out where there was none.</source>
        <translation>Un jeu mesuré dépasse 0 mm. Laisser le chiffre vide là où il n’y en avait pas.</translation>
    </message>
</context>
<context>
    <name>LearnWords</name>
    <message>
        <source>This airframe</source>
        <translation>Ce planeur</translation>
    </message>
    <message>
        <source>Wh&amp;o learns</source>
        <translation>N&amp;om de l’élève</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Choisir une personne</translation>
    </message>
    <message>
        <source>Choose who learns, at the left. What is practised is kept under that name.</source>
        <translation>Choisir à gauche qui apprend. Ce qui est exercé est conservé sous ce nom.</translation>
    </message>
    <message>
        <source>There is no airframe yet. Add one in Set up.</source>
        <translation>Il n’y a pas encore de planeur. En ajouter un dans Réglages.</translation>
    </message>
    <message>
        <source>This airframe has no couplings yet. Add them in Set up.</source>
        <translation>Ce planeur n’a pas encore de raccords. Les ajouter dans Réglages.</translation>
    </message>
    <message>
        <source>Couplings in the order of rigging</source>
        <translation>Raccords dans l’ordre de montage</translation>
    </message>
    <message>
        <source>Practice grants nothing. Who may rig, inspect or fly is decided by the rules that apply and the persons entitled to decide.</source>
        <translation>L’exercice ne donne aucun droit. Qui peut monter, contrôler ou voler, ce sont les règles applicables et les personnes habilitées qui en décident.</translation>
    </message>
    <message>
        <source>Card to print and &amp;fold …</source>
        <translation>Carte à imprimer et &amp;plier …</translation>
    </message>
    <message>
        <source>Up and Down: another coupling.</source>
        <translation>Haut et Bas : un autre raccord.</translation>
    </message>
    <message>
        <source>&amp;Look at it</source>
        <translation>&amp;Regarder</translation>
    </message>
    <message>
        <source>&amp;Practice</source>
        <translation>E&amp;xercice</translation>
    </message>
    <message>
        <source>&amp;Calls and order</source>
        <translation>Annon&amp;ces et ordre</translation>
    </message>
    <message>
        <source>&amp;Riggings and sign-off</source>
        <translation>Montages &amp;faits et validation</translation>
    </message>
    <message>
        <source>&amp;Measuring</source>
        <translation>&amp;Mesure</translation>
    </message>
    <message>
        <source>Crossed st&amp;udy</source>
        <translation>Ét&amp;ude croisée</translation>
    </message>
    <message>
        <source>not practised yet</source>
        <translation>pas encore exercé</translation>
    </message>
    <message numerus="yes">
        <source>part-seated missed: %n</source>
        <translation>
            <numerusform>à demi engagé manqué : %n</numerusform>
            <numerusform>à demi engagé manqué : %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>not secured missed: %n</source>
        <translation>
            <numerusform>non assuré manqué : %n</numerusform>
            <numerusform>non assuré manqué : %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>empty socket missed: %n</source>
        <translation>
            <numerusform>cage vide manquée : %n</numerusform>
            <numerusform>cage vide manquée : %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 sur %2 justes</translation>
    </message>
    <message>
        <source>connects by itself</source>
        <translation>se raccorde de lui-même</translation>
    </message>
    <message>
        <source>no ball joint</source>
        <translation>pas de rotule</translation>
    </message>
    <message>
        <source>%1: seated and part-seated</source>
        <comment>a coupling</comment>
        <translation>%1 : engagé à fond et à demi engagé</translation>
    </message>
    <message>
        <source>Schematic. Only the gap is to scale: the middle of this coupling’s own readings, no limit and no aim.</source>
        <translation>Schématique. Seul l’écart est à l’échelle : le milieu des mesures propres de ce raccord, ni limite ni but.</translation>
    </message>
    <message>
        <source>How locked looks here: a drawing, not today’s joint</source>
        <translation>À quoi ressemble ici une liaison verrouillée : un dessin, pas celle d’aujourd’hui</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Essayer</translation>
    </message>
    <message>
        <source>Drag the ball, or press Left and Right. P: pin. B: the ball away and back.</source>
        <translation>Glisser la bille, ou appuyer sur Gauche et Droite. P : épingle. B : bille ôtée et remise.</translation>
    </message>
    <message>
        <source>Drag the ball, or press Left and Right. S: sleeve. P: pin. B: the ball away and back.</source>
        <translation>Glisser la bille, ou appuyer sur Gauche et Droite. S : manchon. P : épingle. B : bille ôtée et remise.</translation>
    </message>
    <message>
        <source>Drag the ball, or press Left and Right. S: sleeve. B: the ball away and back.</source>
        <translation>Glisser la bille, ou appuyer sur Gauche et Droite. S : manchon. B : bille ôtée et remise.</translation>
    </message>
    <message>
        <source>What can be seen from the access</source>
        <translation>Ce que l’on voit depuis l’accès</translation>
    </message>
    <message>
        <source>A mirror helps from above.</source>
        <translation>Un miroir aide, d’en haut.</translation>
    </message>
    <message>
        <source>A mirror helps from below.</source>
        <translation>Un miroir aide, d’en bas.</translation>
    </message>
    <message>
        <source>A mirror helps from the front.</source>
        <translation>Un miroir aide, de l’avant.</translation>
    </message>
    <message>
        <source>A mirror helps from the rear.</source>
        <translation>Un miroir aide, de l’arrière.</translation>
    </message>
    <message>
        <source>A mirror helps from the left.</source>
        <translation>Un miroir aide, de la gauche.</translation>
    </message>
    <message>
        <source>A mirror helps from the right.</source>
        <translation>Un miroir aide, de la droite.</translation>
    </message>
    <message>
        <source>Seen from above.</source>
        <translation>Vu d’en haut.</translation>
    </message>
    <message>
        <source>Seen from below.</source>
        <translation>Vu d’en bas.</translation>
    </message>
    <message>
        <source>Seen from the front.</source>
        <translation>Vu de l’avant.</translation>
    </message>
    <message>
        <source>Seen from the rear.</source>
        <translation>Vu de l’arrière.</translation>
    </message>
    <message>
        <source>Seen from the left.</source>
        <translation>Vu de la gauche.</translation>
    </message>
    <message>
        <source>Seen from the right.</source>
        <translation>Vu de la droite.</translation>
    </message>
    <message>
        <source>Nobody has said from which side this coupling is seen; it is drawn as seen from above. Set up, Couplings.</source>
        <translation>Personne n’a dit de quel côté ce raccord est vu ; il est dessiné vu d’en haut. Réglages, Raccords.</translation>
    </message>
    <message>
        <source>With a &amp;torch</source>
        <translation>Avec &amp;lampe</translation>
    </message>
    <message>
        <source>With a m&amp;irror</source>
        <translation>Avec m&amp;iroir</translation>
    </message>
    <message>
        <source>Access: %1</source>
        <translation>Accès : %1</translation>
    </message>
    <message>
        <source>The leaf goes in: %1</source>
        <translation>La lame entre : %1</translation>
    </message>
    <message numerus="yes">
        <source>%n locked reading(s) of this fitting</source>
        <translation>
            <numerusform>%n mesure verrouillée de cette pose</numerusform>
            <numerusform>%n mesures verrouillées de cette pose</numerusform>
        </translation>
    </message>
    <message>
        <source>Locked readings of this fitting: %1. Part-seated on purpose: %2.</source>
        <translation>Mesures verrouillées de cette pose : %1. À demi engagé exprès : %2.</translation>
    </message>
    <message>
        <source>Part-seated was never shown on this coupling: how wide its gap is then is not known.</source>
        <translation>À demi engagé n’a jamais été montré sur ce raccord : on ne sait pas quelle est alors la largeur de son écart.</translation>
    </message>
    <message>
        <source>On this coupling the gap cannot tell locked from part-seated: they overlap. Here the gap is no sign at all.</source>
        <translation>Sur ce raccord, l’écart ne distingue pas « verrouillé » de « à demi engagé » : ils se recouvrent. Ici, l’écart n’est pas un indice du tout.</translation>
    </message>
    <message>
        <source>There is no reading of this coupling yet: how wide its gap is when locked is not known.</source>
        <translation>Il n’y a pas encore de mesure de ce raccord : on ne sait pas quelle est la largeur de son écart verrouillé.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verrouillé</translation>
    </message>
    <message>
        <source>Part-seated on purpose</source>
        <translation>À demi engagé exprès</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Vide</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Accès</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what a photo shows, its note</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>No photo of this coupling yet. Set up, Couplings, takes one in.</source>
        <translation>Pas encore de photo de ce raccord. Réglages, Raccords en intègre une.</translation>
    </message>
    <message>
        <source>This one connects by itself when the parts are rigged: there is no ball, no plunger and no gap. Its manual says how to see that it is engaged and locked. Look, let a second person look, then the control check.</source>
        <translation>Celui-ci se raccorde de lui-même au montage des éléments : il n’y a ni bille, ni verrou, ni écart. Son manuel dit comment voir qu’il est engagé et verrouillé. Regarder, faire regarder par une deuxième personne, puis l’essai des commandes.</translation>
    </message>
    <message>
        <source>This is no ball joint. Its manual says how it stands when it is connected. Look and pull, let a second person do the same, then the control check.</source>
        <translation>Ce n’est pas un raccord à rotule. Son manuel dit comment il est quand il est raccordé. Regarder et tirer, faire refaire les deux par une deuxième personne, puis l’essai des commandes.</translation>
    </message>
</context>
<context>
    <name>LessonPictureWords</name>
    <message>
        <source>Part-seated</source>
        <translation>À demi engagé</translation>
    </message>
    <message>
        <source>Not secured</source>
        <translation>Non assuré</translation>
    </message>
    <message>
        <source>Not connected</source>
        <translation>Non raccordé</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verrouillé</translation>
    </message>
    <message>
        <source>Part-seated: can let go in flight</source>
        <translation>À demi engagé : peut lâcher en vol</translation>
    </message>
    <message>
        <source>Home, but not secured</source>
        <translation>Engagé à fond, mais non assuré</translation>
    </message>
    <message>
        <source>Not connected: can look locked</source>
        <translation>Non raccordé : peut sembler verrouillé</translation>
    </message>
    <message>
        <source>Seated and locked</source>
        <translation>Engagé à fond et verrouillé</translation>
    </message>
    <message>
        <source>gap about %1 mm</source>
        <comment>on the way between two readings</comment>
        <translation>écart environ %1 mm</translation>
    </message>
    <message>
        <source>about %1 mm</source>
        <translation>environ %1 mm</translation>
    </message>
    <message>
        <source>gap may still read %1 mm</source>
        <translation>écart peut-être encore %1 mm</translation>
    </message>
    <message>
        <source>may read %1</source>
        <translation>peut-être %1</translation>
    </message>
    <message>
        <source>gap never measured like this</source>
        <translation>écart jamais mesuré ainsi</translation>
    </message>
    <message>
        <source>never measured</source>
        <translation>jamais mesuré</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>gap: no readings yet</source>
        <translation>écart : pas encore de mesures</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>pas de mesures</translation>
    </message>
    <message>
        <source>no valid reading like this</source>
        <translation>pas de mesure valable ainsi</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>pas de mesure</translation>
    </message>
    <message>
        <source>gap %1 mm</source>
        <translation>écart %1 mm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Ball too high: it holds the plunger back. The tab keeps the sleeve from its stop, and thread shows.</source>
        <translation>Bille trop haute : elle retient le verrou. La patte tient le manchon loin de sa butée, et du filetage se voit.</translation>
    </message>
    <message>
        <source>Ball too high: it holds the plunger back. The sleeve comes to its stop all the same.</source>
        <translation>Bille trop haute : elle retient le verrou. Le manchon arrive quand même à sa butée.</translation>
    </message>
    <message>
        <source>Ball too high: it holds the plunger back.</source>
        <translation>Bille trop haute : elle retient le verrou.</translation>
    </message>
    <message>
        <source>Ball and plunger are home, but the sleeve is back and thread shows. It can be pressed open.</source>
        <translation>Bille et verrou sont à fond, mais le manchon est en arrière et du filetage se voit. Une pression peut l’ouvrir.</translation>
    </message>
    <message>
        <source>Ball and plunger are home, but the pin is out. It can be pressed open.</source>
        <translation>Bille et verrou sont à fond, mais l’épingle est sortie. Une pression peut l’ouvrir.</translation>
    </message>
    <message>
        <source>There is no ball in the socket. Plunger and gap can look locked: the gap alone cannot show a ball.</source>
        <translation>Il n’y a pas de bille dans la cage. Verrou et écart peuvent sembler verrouillés : l’écart seul ne peut pas montrer une bille.</translation>
    </message>
    <message>
        <source>Ball at the bottom, nose over its widest line, sleeve at its stop.</source>
        <translation>Bille au fond, bec par-dessus son plus grand diamètre, manchon en butée.</translation>
    </message>
    <message>
        <source>Ball at the bottom, nose over its widest line, sleeve at its stop, pin in.</source>
        <translation>Bille au fond, bec par-dessus son plus grand diamètre, manchon en butée, épingle mise.</translation>
    </message>
    <message>
        <source>Ball at the bottom, nose over its widest line, pin in.</source>
        <translation>Bille au fond, bec par-dessus son plus grand diamètre, épingle mise.</translation>
    </message>
    <message>
        <source>The gap is drawn at about %1 mm, between this coupling’s locked and part-seated readings.</source>
        <translation>L’écart est dessiné à environ %1 mm, entre les mesures verrouillées et à demi engagées de ce raccord.</translation>
    </message>
    <message>
        <source>The gap may still read %1 mm, as if locked.</source>
        <translation>L’écart peut encore donner %1 mm, comme verrouillé.</translation>
    </message>
    <message>
        <source>The part-seated gap of this coupling was never measured: it is unknown, and drawn schematically.</source>
        <translation>L’écart à demi engagé de ce raccord n’a jamais été mesuré : il est inconnu, et dessiné schématiquement.</translation>
    </message>
    <message>
        <source>This coupling has no readings yet: the gap is drawn schematically.</source>
        <translation>Ce raccord n’a pas encore de mesures : l’écart est dessiné schématiquement.</translation>
    </message>
    <message>
        <source>What a leaf says now is no reading.</source>
        <translation>Ce qu’une lame dit maintenant n’est pas une mesure.</translation>
    </message>
    <message>
        <source>Gap %1 mm, the middle of its part-seated readings.</source>
        <translation>Écart %1 mm, le milieu de ses mesures à demi engagées.</translation>
    </message>
    <message>
        <source>Gap %1 mm, the middle of its locked readings.</source>
        <translation>Écart %1 mm, le milieu de ses mesures verrouillées.</translation>
    </message>
    <message>
        <source>In this drawing the leaf goes between the plunger tab and the collar.</source>
        <translation>Dans ce dessin, la lame va entre la patte du verrou et la bague.</translation>
    </message>
    <message>
        <source>In this drawing the leaf goes between the edge of the socket and the sleeve.</source>
        <translation>Dans ce dessin, la lame va entre le bord de la cage et le manchon.</translation>
    </message>
    <message>
        <source>In this drawing the leaf goes between the plunger tab and the sleeve.</source>
        <translation>Dans ce dessin, la lame va entre la patte du verrou et le manchon.</translation>
    </message>
    <message>
        <source>Its part-seated gap was read on the other side than its layout lets expect: it is drawn as it was read. Look at the layout in Set up.</source>
        <translation>Son écart à demi engagé a été mesuré du côté opposé à celui que sa disposition laisse attendre : il est dessiné tel que mesuré. Regarder la disposition dans Réglages.</translation>
    </message>
    <message>
        <source>Nobody has said how plunger and sleeve stand to each other here, so the drawing may differ. Look at the real one with somebody who knows it.</source>
        <translation>Personne n’a dit comment verrou et manchon sont l’un par rapport à l’autre ici, le dessin peut donc différer. Regarder le vrai avec quelqu’un qui le connaît.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>state of a joint</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Witness hole %1.</source>
        <comment>clear, half hidden, hidden</comment>
        <translation>Trou témoin %1.</translation>
    </message>
    <message>
        <source>Schematic: only the gap is to scale, from this coupling’s own readings.</source>
        <translation>Schématique : seul l’écart est à l’échelle, d’après les mesures propres de ce raccord.</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>bille</translation>
    </message>
    <message>
        <source>no ball</source>
        <translation>pas de bille</translation>
    </message>
    <message>
        <source>socket</source>
        <translation>cage</translation>
    </message>
    <message>
        <source>plunger</source>
        <translation>verrou</translation>
    </message>
    <message>
        <source>spring</source>
        <translation>ressort</translation>
    </message>
    <message>
        <source>sleeve</source>
        <translation>manchon</translation>
    </message>
    <message>
        <source>finger</source>
        <comment>springy, inside the sleeve; holds the tab</comment>
        <translation>doigt</translation>
    </message>
    <message>
        <source>collar</source>
        <translation>bague</translation>
    </message>
    <message>
        <source>stop</source>
        <comment>ring on the rod that the sleeve comes to</comment>
        <translation>butée</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>patte</translation>
    </message>
    <message>
        <source>tab short</source>
        <translation>patte en retrait</translation>
    </message>
    <message>
        <source>tab out of place</source>
        <translation>patte pas en place</translation>
    </message>
    <message>
        <source>thread shows</source>
        <translation>filetage visible</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>filetage</translation>
    </message>
    <message>
        <source>clear, pin in it</source>
        <translation>dégagé, épingle dedans</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>dégagé</translation>
    </message>
    <message>
        <source>half hidden</source>
        <translation>à demi caché</translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>caché</translation>
    </message>
    <message>
        <source>witness hole %1</source>
        <comment>clear, half hidden, hidden</comment>
        <translation>trou témoin %1</translation>
    </message>
    <message>
        <source>Drawn by the program, not a photo.</source>
        <translation>Dessiné par le programme, pas une photo.</translation>
    </message>
    <message>
        <source>The joint cut open</source>
        <translation>La liaison en coupe</translation>
    </message>
    <message>
        <source>Arrow keys move the ball, Home takes it out as far as it is caught, End seats it. S moves the sleeve, P the pin, B takes the ball away or puts it back.</source>
        <translation>Les flèches déplacent la bille, Début la sort jusqu’où elle est encore retenue, Fin l’engage à fond. S déplace le manchon, P l’épingle, B enlève la bille ou la remet.</translation>
    </message>
    <message>
        <source>below</source>
        <translation>le dessous</translation>
    </message>
    <message>
        <source>the left</source>
        <translation>la gauche</translation>
    </message>
    <message>
        <source>the right</source>
        <translation>la droite</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>l’avant</translation>
    </message>
    <message>
        <source>the rear</source>
        <translation>l’arrière</translation>
    </message>
    <message>
        <source>above</source>
        <translation>le dessus</translation>
    </message>
    <message>
        <source>in a mirror, from %1</source>
        <translation>au miroir, depuis %1</translation>
    </message>
    <message>
        <source>mirror</source>
        <translation>miroir</translation>
    </message>
    <message>
        <source>through the hatch, from %1</source>
        <translation>par la trappe, depuis %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>plunger nose</source>
        <translation>bec du verrou</translation>
    </message>
    <message>
        <source>witness hole</source>
        <translation>trou témoin</translation>
    </message>
    <message>
        <source>front edge of the sleeve</source>
        <translation>bord avant du manchon</translation>
    </message>
    <message>
        <source>rod before the sleeve</source>
        <translation>tringle devant le manchon</translation>
    </message>
    <message>
        <source>place of the leaf</source>
        <translation>place de la lame</translation>
    </message>
    <message>
        <source>mouth of the socket</source>
        <translation>ouverture de la cage</translation>
    </message>
    <message>
        <source>In view: %1.</source>
        <translation>En vue : %1.</translation>
    </message>
    <message>
        <source>Dark without a torch: %1.</source>
        <translation>Dans le noir sans lampe : %1.</translation>
    </message>
    <message>
        <source>Hidden from here: %1.</source>
        <translation>Caché d’ici : %1.</translation>
    </message>
    <message>
        <source>There is no ball in the socket.</source>
        <translation>Il n’y a pas de bille dans la cage.</translation>
    </message>
    <message>
        <source>The ball lies at the bottom of the socket.</source>
        <translation>La bille est au fond de la cage.</translation>
    </message>
    <message>
        <source>The ball stands high in the socket.</source>
        <translation>La bille est haute dans la cage.</translation>
    </message>
    <message>
        <source>The nose is fully out.</source>
        <translation>Le bec est entièrement sorti.</translation>
    </message>
    <message>
        <source>The nose is held back.</source>
        <translation>Le bec est retenu.</translation>
    </message>
    <message>
        <source>The tab stands at its place.</source>
        <translation>La patte est à sa place.</translation>
    </message>
    <message>
        <source>The tab does not stand at its place.</source>
        <translation>La patte n’est pas à sa place.</translation>
    </message>
    <message>
        <source>The witness hole is %1.</source>
        <comment>clear, half hidden, hidden</comment>
        <translation>Le trou témoin est %1.</translation>
    </message>
    <message>
        <source>The sleeve is at its stop.</source>
        <translation>Le manchon est en butée.</translation>
    </message>
    <message>
        <source>The sleeve is not at its stop.</source>
        <translation>Le manchon n’est pas en butée.</translation>
    </message>
    <message>
        <source>Thread shows.</source>
        <translation>Du filetage se voit.</translation>
    </message>
    <message>
        <source>No thread shows.</source>
        <translation>Aucun filetage ne se voit.</translation>
    </message>
    <message>
        <source>Seen from %1, and in a mirror from %2.</source>
        <translation>Vu depuis %1, et au miroir depuis %2.</translation>
    </message>
    <message>
        <source>Seen from %1.</source>
        <translation>Vu depuis %1.</translation>
    </message>
    <message>
        <source>With a torch.</source>
        <translation>Avec une lampe.</translation>
    </message>
    <message>
        <source>Without a torch.</source>
        <translation>Sans lampe.</translation>
    </message>
    <message>
        <source>Nothing is in sight that tells how it stands.</source>
        <translation>Rien n’est en vue qui dise dans quel état elle est.</translation>
    </message>
    <message numerus="yes">
        <source>%n locked reading(s)</source>
        <translation>
            <numerusform>%n mesure verrouillée</numerusform>
            <numerusform>%n mesures verrouillées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part-seated on purpose</source>
        <comment>readings</comment>
        <translation>
            <numerusform>%n à demi engagée exprès</numerusform>
            <numerusform>%n à demi engagées exprès</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n outside or part-seated at a rigging</source>
        <comment>readings</comment>
        <translation>
            <numerusform>%n hors bande ou à demi engagée à un montage</numerusform>
            <numerusform>%n hors bande ou à demi engagées à un montage</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing was ever seen between</source>
        <translation>rien n’a jamais été vu entre les deux</translation>
    </message>
    <message>
        <source>nothing between</source>
        <translation>rien entre les deux</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between values</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>No locked reading yet.</source>
        <translation>Pas encore de mesure verrouillée.</translation>
    </message>
    <message numerus="yes">
        <source>%n locked reading(s), from %1 to %2.</source>
        <translation>
            <numerusform>%n mesure verrouillée, de %1 à %2.</numerusform>
            <numerusform>%n mesures verrouillées, de %1 à %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Band %1.</source>
        <translation>Bande %1.</translation>
    </message>
    <message>
        <source>Part-seated on purpose: %1.</source>
        <translation>À demi engagé exprès : %1.</translation>
    </message>
    <message>
        <source>Found outside its band or part-seated at a rigging: %1.</source>
        <translation>Trouvé hors de sa bande ou à demi engagé à un montage : %1.</translation>
    </message>
    <message>
        <source>Between %1 and %2 mm nothing was ever seen.</source>
        <translation>Entre %1 et %2 mm, rien n’a jamais été vu.</translation>
    </message>
    <message numerus="yes">
        <source>%n not secured at a rigging</source>
        <comment>readings</comment>
        <translation>
            <numerusform>%n non assurée à un montage</numerusform>
            <numerusform>%n non assurées à un montage</numerusform>
        </translation>
    </message>
    <message>
        <source>Found not secured at a rigging: %1.</source>
        <translation>Trouvé non assuré à un montage : %1.</translation>
    </message>
    <message>
        <source>none noted as part-seated</source>
        <translation>aucune notée à demi engagée</translation>
    </message>
    <message>
        <source>No reading was noted as part-seated.</source>
        <translation>Aucune mesure n’a été notée à demi engagée.</translation>
    </message>
</context>
<context>
    <name>LongWorkWords</name>
    <message>
        <source>This takes a while</source>
        <translation>Cela prend un moment</translation>
    </message>
    <message>
        <source>%1 is being read.</source>
        <translation>Lecture de %1 en cours.</translation>
    </message>
    <message>
        <source>%1 is being compared with the file that is open.</source>
        <translation>Comparaison de %1 avec le fichier ouvert en cours.</translation>
    </message>
    <message>
        <source>What is new in %1 is being taken in.</source>
        <translation>Intégration de ce qui est nouveau dans %1 en cours.</translation>
    </message>
    <message>
        <source>What can be read of %1 is being read.</source>
        <translation>Lecture de ce qui est lisible dans %1 en cours.</translation>
    </message>
    <message>
        <source>%1 is being copied.</source>
        <translation>Copie de %1 en cours.</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <comment>a number of rows</comment>
        <translation>%1 jusqu’ici</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 sur 100</translation>
    </message>
    <message>
        <source>Stop  (Esc)</source>
        <translation>Arrêter  (Esc)</translation>
    </message>
    <message>
        <source>If you stop it, everything stays as it is.</source>
        <translation>Si on l’arrête, tout reste comme c’est.</translation>
    </message>
    <message>
        <source>It is being stopped.</source>
        <translation>Arrêt en cours.</translation>
    </message>
    <message>
        <source>Stopped. Everything is as it was.</source>
        <translation>Arrêté. Tout est comme avant.</translation>
    </message>
    <message>
        <source>%1 is being written.</source>
        <translation>%1 est en cours d’écriture.</translation>
    </message>
</context>
<context>
    <name>ManualWords</name>
    <message>
        <source>Manual</source>
        <translation>Manuel</translation>
    </message>
    <message>
        <source>Chapters of the manual</source>
        <translation>Chapitres du manuel</translation>
    </message>
    <message>
        <source>Up, Down: another chapter. Page Down, Page Up: on and back in the text. Tab: the links in it. Esc: back.</source>
        <translation>Haut, Bas : un autre chapitre. Page suivante, Page précédente : avancer et reculer dans le texte. Tab : les liens du texte. Esc : retour.</translation>
    </message>
    <message>
        <source>Save the manual as PDF …  (Ctrl+P)</source>
        <translation>Enregistrer le manuel en PDF …  (Ctrl+P)</translation>
    </message>
    <message>
        <source>All chapters, to print.</source>
        <translation>Tous les chapitres, à imprimer.</translation>
    </message>
    <message>
        <source>Paper of the manual</source>
        <translation>Papier du manuel</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>A rigging on paper</source>
        <translation>Un montage sur papier</translation>
    </message>
    <message>
        <source>%1-sheet.pdf</source>
        <comment>a file's name: registration</comment>
        <translation>%1-feuille.pdf</translation>
    </message>
    <message>
        <source>A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, leave everything as it is, and call the person entitled to decide.</source>
        <translation>Un « non », ou une gouverne qui ne fait rien ou bouge autrement qu’attendu, est un arrêt : s’arrêter, tout laisser en l’état et appeler la personne habilitée.</translation>
    </message>
    <message>
        <source>A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, leave everything as it is, and call %1.</source>
        <translation>Un « non », ou une gouverne qui ne fait rien ou bouge autrement qu’attendu, est un arrêt : s’arrêter, tout laisser en l’état et appeler %1.</translation>
    </message>
    <message>
        <source>A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, leave everything as it is, and call %1, %2.</source>
        <comment>name, telephone</comment>
        <translation>Un « non », ou une gouverne qui ne fait rien ou bouge autrement qu’attendu, est un arrêt : s’arrêter, tout laisser en l’état et appeler %1, %2.</translation>
    </message>
    <message>
        <source>This sheet judges no reading. Until it is typed in, nobody knows whether a gap lies outside its band, so type it in before the flight. Where you cannot, that sign is missing: call before the flight. Outside is a stop as well: leave the joint as it is and call.</source>
        <translation>Cette feuille ne juge aucune mesure. Tant qu’elle n’est pas saisie, personne ne sait si un écart est hors de sa bande ; la saisir donc avant le vol. Si ce n’est pas possible, cet indice manque : appeler avant le vol. Hors bande est aussi un arrêt : laisser la liaison en l’état et appeler.</translation>
    </message>
    <message>
        <source>It replaces no manual, no inspection and no entry in a log. Type it in with “Enter from paper”, under the day it was filled in and with both names.</source>
        <translation>Elle ne remplace aucun manuel, aucun contrôle et aucune inscription sur un carnet. La saisir avec « Saisir d’après papier », sous le jour où elle a été remplie et avec les deux noms.</translation>
    </message>
    <message>
        <source>%1 Not an aircraft record. Manuals and directives prevail.</source>
        <comment>the sentence of the stop</comment>
        <translation>%1 Ce n’est pas un dossier d’aéronef. Les manuels et les consignes priment.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Begun at</source>
        <translation>Commencé à</translation>
    </message>
    <message>
        <source>Since the last rigging</source>
        <translation>Depuis le dernier montage</translation>
    </message>
    <message>
        <source>Taken apart</source>
        <translation>Démonté</translation>
    </message>
    <message>
        <source>Stood rigged</source>
        <translation>Resté monté</translation>
    </message>
    <message>
        <source>First person, who leads</source>
        <translation>Première personne, qui dirige</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Deuxième personne</translation>
    </message>
    <message>
        <source>Who connected the joints</source>
        <translation>Qui a raccordé</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>Tail and middle</source>
        <translation>Queue et milieu</translation>
    </message>
    <message>
        <source>Leaf set or gauge</source>
        <translation>Jeu de lames ou jauge</translation>
    </message>
    <message>
        <source>Another</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>One joint at a time: look, measure, pull, secure. Tick the thickest leaf that enters freely and whose next one refuses; write the two sizes where there is no box. No leaf goes in before the look is done.</source>
        <translation>Une liaison à la fois : regarder, mesurer, tirer, assurer. Cocher la lame la plus épaisse qui entre librement et dont la suivante n’entre pas ; écrire les deux épaisseurs là où il n’y a pas de case. Aucune lame n’entre avant que le contrôle visuel soit fait.</translation>
    </message>
    <message>
        <source>Your own look and your own pull, by somebody who connected and measured none of these joints. Do not look at the first person’s pages. You may measure too; it is not asked.</source>
        <translation>Votre propre contrôle visuel et votre propre essai de traction, par quelqu’un qui n’a raccordé ni mesuré aucune de ces liaisons. Ne pas regarder les pages de la première personne. Vous pouvez aussi mesurer ; ce n’est pas demandé.</translation>
    </message>
    <message>
        <source>From above, nose up. The numbers are those of the joints on this sheet.</source>
        <translation>Vu de dessus, nez en haut. Les numéros sont ceux des liaisons sur cette feuille.</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>number, coupling</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Thickest leaf that enters</source>
        <translation>Lame la plus épaisse qui entre</translation>
    </message>
    <message>
        <source>Thickest leaf that enters, if you measure</source>
        <translation>Lame la plus épaisse qui entre, si vous mesurez</translation>
    </message>
    <message>
        <source>Thickest pin that enters</source>
        <translation>Pige la plus épaisse qui entre</translation>
    </message>
    <message>
        <source>Thickest pin that enters, if you measure</source>
        <translation>Pige la plus épaisse qui entre, si vous mesurez</translation>
    </message>
    <message>
        <source>Gap in mm</source>
        <translation>Écart en mm</translation>
    </message>
    <message>
        <source>Gap in mm, if you measure</source>
        <translation>Écart en mm, si vous mesurez</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <comment>two leaves stacked</comment>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>Enters</source>
        <translation>Entre</translation>
    </message>
    <message>
        <source>Refuses</source>
        <translation>N’entre pas</translation>
    </message>
    <message>
        <source>Value read</source>
        <translation>Valeur lue</translation>
    </message>
    <message>
        <source>The control check comes last of all: whoever touches a joint afterwards does the check of its surfaces again. Whoever stands at the surface says aloud what it does, and that is written down; only then is it compared with the flight manual. A surface that does nothing, or moves otherwise than expected, is a stop for the whole glider.</source>
        <translation>L’essai des commandes vient tout à la fin : qui touche une liaison ensuite refait l’essai de ses gouvernes. La personne à la gouverne dit à voix haute ce que celle-ci fait, et on l’écrit ; alors seulement on compare avec le manuel de vol. Une gouverne qui ne fait rien, ou bouge autrement qu’attendu, est un arrêt pour tout le planeur.</translation>
    </message>
    <message>
        <source>Who checks</source>
        <translation>Qui essaie</translation>
    </message>
    <message>
        <source>No surfaces are set up. Write under the notes what was moved and what it did.</source>
        <translation>Aucune gouverne n’est définie. Écrire sous les notes ce qui a été bougé et ce que cela a fait.</translation>
    </message>
    <message>
        <source>One way</source>
        <translation>Un sens</translation>
    </message>
    <message>
        <source>The other way</source>
        <translation>L’autre sens</translation>
    </message>
    <message>
        <source>Control moved</source>
        <translation>Commande bougée</translation>
    </message>
    <message>
        <source>Surface does</source>
        <translation>Ce qu’elle fait</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur papier</translation>
    </message>
    <message>
        <source>a sheet, and typing it in</source>
        <translation>une feuille, et sa saisie</translation>
    </message>
    <message>
        <source>For a rigging without the laptop: a sheet with everything that is asked, to be filled in at the glider and typed in afterwards. No band and no earlier reading stands on it, so that nobody writes what is expected.</source>
        <translation>Pour un montage sans l’ordinateur : une feuille avec tout ce qui est demandé, à remplir au planeur et à saisir ensuite. Ni bande ni mesure antérieure n’y figure, pour que personne n’écrive ce qui est attendu.</translation>
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
        <translation>&amp;Jeu de lames ou jauge</translation>
    </message>
    <message>
        <source>None: sizes are written by hand</source>
        <translation>Aucun : épaisseurs écrites à la main</translation>
    </message>
    <message>
        <source>The sheet offers as many leaves of this set at every coupling, around where it reads and never with the expected one in a place that tells.</source>
        <translation>La feuille propose autant de lames de ce jeu à chaque raccord, autour de ce qu’il mesure, et jamais celle attendue à une place qui la trahit.</translation>
    </message>
    <message>
        <source>&amp;Save the sheet as PDF …</source>
        <translation>&amp;Enregistrer la feuille en PDF …</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key for enter from paper</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>Enter from paper …  (%1)</source>
        <translation>Saisir d’après papier …  (%1)</translation>
    </message>
    <message>
        <source>&amp;Enter from paper …</source>
        <translation>&amp;Saisir d’après papier …</translation>
    </message>
    <message>
        <source>Types in a rigging that was written down by hand, under the day on which it was done.</source>
        <translation>Saisit un montage écrit à la main, sous le jour où il a été fait.</translation>
    </message>
    <message>
        <source>Enter from paper</source>
        <translation>Saisir d’après papier</translation>
    </message>
    <message>
        <source>The rigging is kept under the day and the names that stand on the sheet, marked as entered later, and judged as of that day. Type what was written, also where it was “no”.</source>
        <translation>Le montage est conservé sous le jour et les noms qui figurent sur la feuille, marqué comme saisi plus tard, et jugé à la date de ce jour. Saisir ce qui a été écrit, même quand c’était « non ».</translation>
    </message>
    <message>
        <source>&amp;Day on the sheet</source>
        <translation>&amp;Jour sur la feuille</translation>
    </message>
    <message>
        <source>&amp;Begun at</source>
        <translation>&amp;Commencé à</translation>
    </message>
    <message>
        <source>09:30</source>
        <translation>09:30</translation>
    </message>
    <message>
        <source>&amp;First person, who led</source>
        <translation>&amp;Première personne, qui a dirigé</translation>
    </message>
    <message>
        <source>&amp;Second person</source>
        <translation>&amp;Deuxième personne</translation>
    </message>
    <message>
        <source>&amp;Who types it in</source>
        <translation>&amp;Qui saisit</translation>
    </message>
    <message>
        <source>&amp;Taken apart</source>
        <translation>Dé&amp;monté</translation>
    </message>
    <message>
        <source>Stood &amp;rigged, gone through again</source>
        <translation>&amp;Resté monté, repassé en revue</translation>
    </message>
    <message>
        <source>Begin to type  (Enter)</source>
        <translation>Commencer la saisie  (Enter)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Retour  (Esc)</translation>
    </message>
    <message>
        <source>“%1” is no time of day. Write it as 09:30.</source>
        <translation>« %1 » n’est pas une heure. L’écrire ainsi : 09:30.</translation>
    </message>
    <message>
        <source>Write when it began, as 09:30: what was done that day is put in order by it. Where the sheet does not say, ask who rigged, and note at the close that the time is from memory.</source>
        <translation>Écrire quand cela a commencé, ainsi : 09:30. C’est d’après cela que l’on ordonne ce qui a été fait ce jour-là. Si la feuille ne le dit pas, demander à qui a monté, et noter à la clôture que l’heure est de mémoire.</translation>
    </message>
    <message>
        <source>That is still to come. Type the day and the time at which the rigging was done.</source>
        <translation>C’est encore à venir. Saisir le jour et l’heure où le montage a été fait.</translation>
    </message>
    <message>
        <source>Nothing is known of this airframe so early: its first fitting began on %1. Look at the day on the sheet.</source>
        <translation>On ne sait rien de ce planeur à cette date : sa première pose a commencé le %1. Vérifier le jour sur la feuille.</translation>
    </message>
    <message>
        <source>A rigging of that day stands here already, begun %1 and led by %2. If this sheet is the same rigging, it is not typed in a second time.</source>
        <comment>moment, person</comment>
        <translation>Un montage de ce jour figure déjà ici, commencé le %1 et dirigé par %2. Si cette feuille est le même montage, elle n’est pas saisie une deuxième fois.</translation>
    </message>
    <message>
        <source>This sheet is &amp;another rigging of that day</source>
        <translation>Cette feuille est un &amp;autre montage de ce jour</translation>
    </message>
    <message>
        <source>Choose whose name stands as first person.</source>
        <translation>Choisir le nom qui figure comme première personne.</translation>
    </message>
    <message>
        <source>Choose whose name stands as second person.</source>
        <translation>Choisir le nom qui figure comme deuxième personne.</translation>
    </message>
    <message>
        <source>First and second person are two people.</source>
        <translation>La première et la deuxième personne sont deux personnes.</translation>
    </message>
    <message>
        <source>Choose who types it in now.</source>
        <translation>Choisir qui saisit maintenant.</translation>
    </message>
    <message>
        <source>Say whether it had been taken apart since the last one.</source>
        <translation>Dire s’il avait été démonté depuis la dernière fois.</translation>
    </message>
    <message>
        <source>A rigging is being recorded here. Close it first, then enter the one from paper.</source>
        <translation>Un montage est en cours d’enregistrement ici. Le clore d’abord, puis saisir celui d’après papier.</translation>
    </message>
    <message>
        <source>The rigging of %1 is not typed in to its end. What is typed is kept, and the next start goes on with it.</source>
        <translation>Le montage du %1 n’est pas saisi jusqu’au bout. Ce qui est saisi est conservé, et le prochain démarrage continue avec.</translation>
    </message>
    <message>
        <source>Entered from paper: %1</source>
        <translation>Saisi d’après papier : %1</translation>
    </message>
    <message>
        <source>Entered from paper: %1. The second person types their own column.</source>
        <translation>Saisi d’après papier : %1. La deuxième personne saisit sa propre colonne.</translation>
    </message>
    <message>
        <source>Entered from paper: %1. The second person’s column is marked as copied by %2.</source>
        <comment>day, person</comment>
        <translation>Saisi d’après papier : %1. La colonne de la deuxième personne est marquée comme recopiée par %2.</translation>
    </message>
    <message>
        <source>F8</source>
        <comment>key for the second person types</comment>
        <translation>F8</translation>
    </message>
    <message>
        <source>The second person types their own column  (%1)</source>
        <translation>La deuxième personne saisit sa propre colonne  (%1)</translation>
    </message>
    <message>
        <source>Entered later from paper by %1, %2. What was done stands under the day on the paper.</source>
        <comment>person, moment</comment>
        <translation>Saisi plus tard d’après papier par %1, %2. Ce qui a été fait figure sous le jour du papier.</translation>
    </message>
    <message>
        <source>%1, copied from paper by %2</source>
        <comment>answer or person, person</comment>
        <translation>%1, recopié d’après papier par %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message numerus="yes">
        <source>Before the first coupling, at the first rigging of a year or when nothing was rigged or rechecked for %n week(s)</source>
        <translation>
            <numerusform>Avant le premier raccord, au premier montage d’une année ou quand rien n’a été monté ni recontrôlé pendant %n semaine</numerusform>
            <numerusform>Avant le premier raccord, au premier montage d’une année ou quand rien n’a été monté ni recontrôlé pendant %n semaines</numerusform>
        </translation>
    </message>
    <message>
        <source>Notes: interruptions, what was felt, what was read again:</source>
        <translation>Notes : interruptions, ce qui a été senti, ce qui a été remesuré :</translation>
    </message>
    <message>
        <source>The rigging from paper is not begun yet. If this file is left now, what was typed for the head of the sheet is lost. Begin the rigging first to keep it.</source>
        <translation>Le montage d’après papier n’est pas encore commencé. Si ce fichier est quitté maintenant, ce qui a été tapé pour l’en-tête de la feuille est perdu. Commencer d’abord le montage pour le garder.</translation>
    </message>
    <message>
        <source>Type the day that stands on the sheet, like %1.</source>
        <translation>Taper le jour qui figure sur la feuille, comme %1.</translation>
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
        <translation>Période (%1)</translation>
    </message>
    <message>
        <source>Period looked back on</source>
        <translation>Période examinée</translation>
    </message>
    <message>
        <source>Since the annual of %1</source>
        <translation>Depuis la visite du %1</translation>
    </message>
    <message>
        <source>Everything, from %1</source>
        <translation>Tout, depuis le %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>Season of %1</source>
        <comment>year</comment>
        <translation>Saison %1</translation>
    </message>
    <message>
        <source>%1, fitting %2: %3 to %4</source>
        <comment>coupling, number, days</comment>
        <translation>%1, pose %2 : %3 au %4</translation>
    </message>
    <message numerus="yes">
        <source>The last %Ln rigging(s)</source>
        <translation>
            <numerusform>Le dernier montage (%Ln)</numerusform>
            <numerusform>Les %Ln derniers montages</numerusform>
        </translation>
    </message>
    <message>
        <source>From one day to another …</source>
        <translation>D’un jour à un autre …</translation>
    </message>
    <message>
        <source>The last riggings, so many as you type …</source>
        <translation>Les derniers montages, autant que vous en saisissez …</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>Show these days</source>
        <translation>Montrer ces jours</translation>
    </message>
    <message>
        <source>These days lie ahead: nothing was read on them yet. Let them begin today or earlier.</source>
        <translation>Ces jours sont à venir : rien n’y a encore été mesuré. Les faire commencer aujourd’hui ou avant.</translation>
    </message>
    <message>
        <source>The first day is after the last one. Change one of them.</source>
        <translation>Le premier jour est après le dernier. Changer l’un des deux.</translation>
    </message>
    <message>
        <source>How many of the last riggings</source>
        <translation>Nombre de derniers montages</translation>
    </message>
    <message>
        <source>1 to %1</source>
        <translation>1 à %1</translation>
    </message>
    <message>
        <source>Show these riggings</source>
        <translation>Montrer ces montages</translation>
    </message>
    <message>
        <source>A number is missing. Type how many riggings, from 1 to %1.</source>
        <translation>Il manque un nombre. Saisir combien de montages, de 1 à %1.</translation>
    </message>
    <message>
        <source>“%1” is no number of riggings. Type a whole number from 1 to %2.</source>
        <translation>« %1 » n’est pas un nombre de montages. Saisir un nombre entier de 1 à %2.</translation>
    </message>
</context>
<context>
    <name>PhotoWords</name>
    <message>
        <source>Locked</source>
        <translation>Verrouillé</translation>
    </message>
    <message>
        <source>Part-seated, on purpose</source>
        <translation>À demi engagé, exprès</translation>
    </message>
    <message>
        <source>Empty socket, on purpose</source>
        <translation>Cage vide, exprès</translation>
    </message>
    <message>
        <source>Access and hatch</source>
        <translation>Accès et trappe</translation>
    </message>
    <message>
        <source>Not on a flying day. Tag the cockpit. Full inspection afterwards.</source>
        <translation>Pas un jour de vol. Étiquette dans l’habitacle. Contrôle complet ensuite.</translation>
    </message>
    <message>
        <source>This file cannot be opened. Look whether it is still there and may be read, or copy it to this computer first.</source>
        <translation>Ce fichier ne peut pas être ouvert. Vérifier qu’il est encore là et peut être lu, ou le copier d’abord sur cet ordinateur.</translation>
    </message>
    <message>
        <source>This file is larger than 40 MB. Save the picture smaller, then take it in.</source>
        <translation>Ce fichier dépasse 40 Mo. Enregistrer l’image en plus petit, puis l’intégrer.</translation>
    </message>
    <message>
        <source>This is no picture. Choose a JPEG, PNG, BMP or GIF file.</source>
        <translation>Ce n’est pas une image. Choisir un fichier JPEG, PNG, BMP ou GIF.</translation>
    </message>
    <message>
        <source>This kind of picture cannot be read here. Save it as JPEG or PNG, then take it in.</source>
        <translation>Ce genre d’image ne peut pas être lu ici. L’enregistrer en JPEG ou PNG, puis l’intégrer.</translation>
    </message>
    <message>
        <source>This picture is kept as HEIC, as many phones do, and cannot be read here. Send or export it from the phone as JPEG, or set the phone’s camera to its most compatible format.</source>
        <translation>Cette image est en HEIC, comme sur beaucoup de téléphones, et ne peut pas être lue ici. L’envoyer ou l’exporter du téléphone en JPEG, ou régler l’appareil photo du téléphone sur son format le plus compatible.</translation>
    </message>
    <message>
        <source>This picture has more than 50 million pixels. Save it smaller, then take it in.</source>
        <translation>Cette image a plus de 50 millions de pixels. L’enregistrer en plus petit, puis l’intégrer.</translation>
    </message>
    <message>
        <source>This picture is longer than 20,000 pixels. Cut it to the coupling, then take it in.</source>
        <translation>Cette image est plus longue que 20 000 pixels. La recadrer sur le raccord, puis l’intégrer.</translation>
    </message>
    <message>
        <source>This file ends before its picture does: it was not copied whole. Copy it again from the camera or the phone.</source>
        <translation>Ce fichier finit avant son image : il n’a pas été copié en entier. Le copier de nouveau depuis l’appareil ou le téléphone.</translation>
    </message>
    <message>
        <source>This picture is damaged and cannot be read. Open it in another program, save it anew as JPEG, then take it in.</source>
        <translation>Cette image est endommagée et ne peut pas être lue. L’ouvrir dans un autre programme, l’enregistrer de nouveau en JPEG, puis l’intégrer.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Photos of %1</source>
        <translation>Photos : %1</translation>
    </message>
    <message>
        <source>Of each kind the newest is shown beside the look and on Know this airframe. The place and the device that a camera writes into its pictures are left out of the file.</source>
        <translation>De chaque sorte, la plus récente est montrée à côté du contrôle visuel et à la page « Ce planeur ». Le lieu et le modèle qu’un appareil photo inscrit dans ses images ne vont pas dans le fichier.</translation>
    </message>
    <message>
        <source>No photo of this coupling yet.</source>
        <translation>Pas encore de photo de ce raccord.</translation>
    </message>
    <message>
        <source>A further p&amp;icture</source>
        <translation>Autre &amp;image</translation>
    </message>
    <message>
        <source>Choose a picture …</source>
        <translation>Choisir une image …</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.bmp *.gif);;All files (*)</source>
        <translation>Images (*.jpg *.jpeg *.png *.bmp *.gif);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Drop a picture here, or paste one (Ctrl+V).</source>
        <translation>Déposer une image ici, ou la coller (Ctrl+V).</translation>
    </message>
    <message>
        <source>It &amp;shows</source>
        <translation>Elle &amp;montre</translation>
    </message>
    <message>
        <source>Choose what it shows</source>
        <translation>Choisir ce qu’elle montre</translation>
    </message>
    <message>
        <source>Say what the picture shows: one that shows a part-seated joint and is told to be locked teaches the wrong thing.</source>
        <translation>Dire ce que montre l’image : si elle montre une liaison à demi engagée et qu’on la dit verrouillée, elle enseigne le faux.</translation>
    </message>
    <message>
        <source>&amp;Taken on</source>
        <translation>&amp;Prise le</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>What somebody should look at, or nothing.</source>
        <translation>Ce qu’il faut regarder, ou rien.</translation>
    </message>
    <message>
        <source>Keep this photo  (Enter)</source>
        <translation>Conserver cette photo  (Enter)</translation>
    </message>
    <message>
        <source>This picture is not in the file yet. Say what it shows, then keep it.</source>
        <translation>Cette image n’est pas encore dans le fichier. Dire ce qu’elle montre, puis la conserver.</translation>
    </message>
    <message>
        <source>The file holds moving pictures; this is the first of them, and it is not kept yet. Say what it shows, then keep it.</source>
        <translation>Le fichier contient des images animées ; voici la première, et elle n’est pas encore conservée. Dire ce qu’elle montre, puis la conserver.</translation>
    </message>
    <message>
        <source>Choose, drop or paste a picture first.</source>
        <translation>Choisir, déposer ou coller d’abord une image.</translation>
    </message>
    <message>
        <source>Say first who states this: the list “Entered by” at the left.</source>
        <translation>Dire d’abord qui le déclare : la liste « Saisi par » à gauche.</translation>
    </message>
    <message>
        <source>Bring one picture at a time.</source>
        <translation>Apporter une image à la fois.</translation>
    </message>
    <message>
        <source>Withdraw this photo</source>
        <translation>Retirer cette photo</translation>
    </message>
    <message>
        <source>Withdraw: %1, %2</source>
        <translation>Retirer : %1, %2</translation>
    </message>
    <message>
        <source>Why? It is shown nowhere any more; the file keeps it with your reason.</source>
        <translation>Pourquoi ? Elle n’est plus montrée nulle part ; le fichier la conserve avec votre raison.</translation>
    </message>
    <message>
        <source>The photo is withdrawn.</source>
        <translation>La photo est retirée.</translation>
    </message>
    <message>
        <source>Kept at %1: %2.</source>
        <translation>Conservée à %1 : %2.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>what the photo shows, day, person</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>caption of a photo, note</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>coupling, caption of its photo</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Photo: %1. Press to see it large.</source>
        <translation>Photo : %1. Appuyer pour la voir en grand.</translation>
    </message>
    <message>
        <source>Enter: see it large</source>
        <translation>Enter : voir en grand</translation>
    </message>
    <message>
        <source>Photo, large</source>
        <translation>Photo, en grand</translation>
    </message>
    <message>
        <source>Esc closes the picture.</source>
        <translation>Esc ferme l’image.</translation>
    </message>
    <message>
        <source>This photo cannot be shown: its picture is damaged.</source>
        <translation>Cette photo ne peut pas être montrée : son image est endommagée.</translation>
    </message>
    <message>
        <source>V</source>
        <comment>key for the photo, large</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>Locked (%1)</source>
        <translation>Verrouillé (%1)</translation>
    </message>
    <message>
        <source>Both sides (%1)</source>
        <translation>Les deux côtés (%1)</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>this coupling’s thin band %1</source>
        <translation>bande mince de ce raccord %1</translation>
    </message>
    <message>
        <source>this coupling’s band %1</source>
        <translation>bande de ce raccord %1</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>pas encore de bande</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>pas d’écart à mesurer</translation>
    </message>
    <message>
        <source>part-seated was seen here</source>
        <translation>à demi engagé a été vu ici</translation>
    </message>
    <message>
        <source>Band %1.</source>
        <translation>Bande %1.</translation>
    </message>
    <message>
        <source>No band yet.</source>
        <translation>Pas encore de bande.</translation>
    </message>
    <message>
        <source>Reading %1: %2.</source>
        <translation>Mesure %1 : %2.</translation>
    </message>
    <message>
        <source>Reading %1.</source>
        <translation>Mesure %1.</translation>
    </message>
    <message>
        <source>Part-seated was seen at %1.</source>
        <translation>L’état à demi engagé a été vu à %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between values</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>No gap to measure.</source>
        <translation>Pas d’écart à mesurer.</translation>
    </message>
    <message>
        <source>Latest reading %1: %2.</source>
        <translation>Dernière mesure %1 : %2.</translation>
    </message>
    <message>
        <source>Latest reading %1.</source>
        <translation>Dernière mesure %1.</translation>
    </message>
    <message>
        <source>No reading yet.</source>
        <translation>Pas encore de mesure.</translation>
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
        <translation>étalement, mm</translation>
    </message>
    <message>
        <source>stands out</source>
        <translation>ressort</translation>
    </message>
    <message>
        <source>← reads low</source>
        <translation>← mesure bas</translation>
    </message>
    <message>
        <source>reads high →</source>
        <translation>mesure haut →</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n mesure</numerusform>
            <numerusform>%n mesures</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>person or gauge, why there is no figure</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <comment>signed</comment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>interval %1 to %2 mm</source>
        <translation>intervalle %1 à %2 mm</translation>
    </message>
    <message>
        <source>spread %1 mm</source>
        <translation>étalement %1 mm</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>person or gauge, list of figures</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Nothing to compare yet.</source>
        <translation>Rien à comparer encore.</translation>
    </message>
    <message>
        <source>Distance from the mean of all.</source>
        <translation>Distance à la moyenne de tous.</translation>
    </message>
    <message>
        <source>none noted as part-seated</source>
        <translation>aucune notée à demi engagée</translation>
    </message>
    <message>
        <source>No reading was noted as part-seated.</source>
        <translation>Aucune mesure n’a été notée à demi engagée.</translation>
    </message>
</context>
<context>
    <name>PlanFieldWords</name>
    <message>
        <source>&amp;Span in metres</source>
        <translation>Envergure en mètre&amp;s</translation>
    </message>
    <message>
        <source>For the plan view, like 15 or 17.5. May stay empty.</source>
        <translation>Pour la vue de dessus, comme 15 ou 17,5. Peut rester vide.</translation>
    </message>
    <message>
        <source>“%1” is no span that can be read for sure. Type metres from 1 to 60, like 15 or 17.5.</source>
        <translation>« %1 » n’est pas une envergure qui se lise avec certitude. Taper des mètres de 1 à 60, comme 15 ou 17,5.</translation>
    </message>
    <message>
        <source>Tai&amp;l</source>
        <translation>Emp&amp;ennage</translation>
    </message>
    <message>
        <source>Low tailplane</source>
        <translation>Empennage bas</translation>
    </message>
    <message>
        <source>T-tail</source>
        <translation>Empennage en T</translation>
    </message>
    <message>
        <source>V-tail</source>
        <translation>Empennage en V</translation>
    </message>
    <message>
        <source>Not said</source>
        <comment>form of the tail</comment>
        <translation>Non indiqué</translation>
    </message>
    <message>
        <source>Wing pan&amp;els</source>
        <translation>É&amp;léments d’aile</translation>
    </message>
    <message>
        <source>Pieces of wing that are rigged, 1 to 8. May stay empty.</source>
        <translation>Morceaux d’aile que l’on monte, 1 à 8. Peut rester vide.</translation>
    </message>
    <message>
        <source>Type a whole number from 1 to 8, or nothing.</source>
        <translation>Taper un nombre entier de 1 à 8, ou rien.</translation>
    </message>
    <message>
        <source>Seen f&amp;rom</source>
        <translation>&amp;Vu depuis</translation>
    </message>
    <message>
        <source>Mirror h&amp;elps from</source>
        <translation>Miroir util&amp;e depuis</translation>
    </message>
    <message>
        <source>Where a mirror shows what the eye does not reach.</source>
        <translation>D’où un miroir montre ce que l’œil n’atteint pas.</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Le dessus</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Le dessous</translation>
    </message>
    <message>
        <source>The front</source>
        <translation>L’avant</translation>
    </message>
    <message>
        <source>The rear</source>
        <translation>L’arrière</translation>
    </message>
    <message>
        <source>The left</source>
        <translation>La gauche</translation>
    </message>
    <message>
        <source>The right</source>
        <translation>La droite</translation>
    </message>
    <message>
        <source>Not said</source>
        <comment>from where a coupling is seen</comment>
        <translation>Non indiqué</translation>
    </message>
    <message>
        <source>On the plan, &amp;across</source>
        <translation>Vue de dessus, gauc&amp;he-droite</translation>
    </message>
    <message>
        <source>−100 the left wing tip, 0 the middle, 100 the right. Up and Down move it.</source>
        <translation>−100 le bout de l’aile gauche, 0 le milieu, 100 la droite. Haut et Bas le déplacent.</translation>
    </message>
    <message>
        <source>On &amp;the plan, along</source>
        <translation>Vue de dessus, avant-arr&amp;ière</translation>
    </message>
    <message>
        <source>0 the nose, 100 the tail. Up and Down move it.</source>
        <translation>0 le nez, 100 la queue. Haut et Bas le déplacent.</translation>
    </message>
    <message>
        <source>Type a whole number from −100 to 100, or nothing.</source>
        <translation>Taper un nombre entier de −100 à 100, ou rien.</translation>
    </message>
    <message>
        <source>Type a whole number from 0 to 100, or nothing.</source>
        <translation>Taper un nombre entier de 0 à 100, ou rien.</translation>
    </message>
    <message>
        <source>Type both numbers of the place, or neither.</source>
        <translation>Taper les deux nombres de la place, ou aucun.</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>L</source>
        <comment>left wing, on the plan</comment>
        <translation>G</translation>
    </message>
    <message>
        <source>R</source>
        <comment>right wing, on the plan</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>number %1</source>
        <translation>numéro %1</translation>
    </message>
    <message>
        <source>connects by itself</source>
        <translation>se raccorde de lui-même</translation>
    </message>
    <message>
        <source>not in use</source>
        <translation>pas en service</translation>
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
        <translation>Le planeur vu de dessus, nez en haut.</translation>
    </message>
    <message>
        <source>Chosen: %1.</source>
        <translation>Choisi : %1.</translation>
    </message>
    <message>
        <source>Left: %1.</source>
        <translation>À gauche : %1.</translation>
    </message>
    <message>
        <source>Right: %1.</source>
        <translation>À droite : %1.</translation>
    </message>
    <message>
        <source>In the middle: %1.</source>
        <translation>Au milieu : %1.</translation>
    </message>
    <message>
        <source>It has no couplings yet.</source>
        <translation>Il n’a pas encore de raccords.</translation>
    </message>
    <message>
        <source>Where the couplings are</source>
        <translation>Où sont les raccords</translation>
    </message>
    <message>
        <source>Arrow keys go to the next coupling in their direction.</source>
        <translation>Les flèches vont au raccord suivant dans leur direction.</translation>
    </message>
    <message>
        <source>Arrow keys move the chosen coupling, with Shift by larger steps.</source>
        <translation>Les flèches déplacent le raccord choisi, avec Maj par pas plus grands.</translation>
    </message>
</context>
<context>
    <name>PracticeWords</name>
    <message>
        <source>Practice</source>
        <translation>Exercice</translation>
    </message>
    <message>
        <source>You are shown a joint as it can be seen through the access, and say how it stands. Say first, then see. Faults come more often here than in life, and “cannot tell from here” can be the right answer.</source>
        <translation>Une liaison vous est montrée comme on la voit par l’accès, et vous dites comment elle se présente. Dire d’abord, voir ensuite. Les défauts sont plus fréquents ici que dans la vie, et « on ne peut pas dire d’ici » peut être la bonne réponse.</translation>
    </message>
    <message>
        <source>Practise %1  (O)</source>
        <comment>a coupling, and the key</comment>
        <translation>S’exercer : %1  (O)</translation>
    </message>
    <message>
        <source>Practise all couplings  (A)</source>
        <comment>with its key</comment>
        <translation>S’exercer : tous les raccords  (A)</translation>
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
        <translation>Ce planeur n’a pas de raccord à rotule sur lequel s’exercer.</translation>
    </message>
    <message>
        <source>Your last rigging here was long ago: everything is asked again.</source>
        <translation>Votre dernier montage ici est ancien : tout est redemandé.</translation>
    </message>
    <message>
        <source>The round is done: %1 of %2 right.</source>
        <translation>La série est finie : %1 justes sur %2.</translation>
    </message>
    <message>
        <source>So far: %1 of %2 right</source>
        <comment>all rounds of a person</comment>
        <translation>Jusqu’ici : %1 justes sur %2</translation>
    </message>
    <message numerus="yes">
        <source>Part-seated, called locked: %n</source>
        <translation>
            <numerusform>À demi engagé, dit verrouillé : %n</numerusform>
            <numerusform>À demi engagé, dit verrouillé : %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not secured, called locked: %n</source>
        <translation>
            <numerusform>Non assuré, dit verrouillé : %n</numerusform>
            <numerusform>Non assuré, dit verrouillé : %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Empty socket, called locked: %n</source>
        <translation>
            <numerusform>Cage vide, dite verrouillée : %n</numerusform>
            <numerusform>Cage vide, dite verrouillée : %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation>Question %1 sur %2</translation>
    </message>
    <message>
        <source>%1: this is what you see. Is it locked?</source>
        <comment>a coupling</comment>
        <translation>%1 : voici ce que vous voyez. Est-ce verrouillé ?</translation>
    </message>
    <message>
        <source>You have a torch and a mirror.</source>
        <translation>Vous avez une lampe et un miroir.</translation>
    </message>
    <message>
        <source>You have a mirror, and no torch.</source>
        <translation>Vous avez un miroir, et pas de lampe.</translation>
    </message>
    <message>
        <source>You have a torch, and no mirror.</source>
        <translation>Vous avez une lampe, et pas de miroir.</translation>
    </message>
    <message>
        <source>You have no torch and no mirror.</source>
        <translation>Vous n’avez ni lampe ni miroir.</translation>
    </message>
    <message>
        <source>You look from below.</source>
        <translation>Vous regardez depuis le dessous.</translation>
    </message>
    <message>
        <source>You look from the front.</source>
        <translation>Vous regardez depuis l’avant.</translation>
    </message>
    <message>
        <source>You look from the rear.</source>
        <translation>Vous regardez depuis l’arrière.</translation>
    </message>
    <message>
        <source>You look from the left.</source>
        <translation>Vous regardez depuis la gauche.</translation>
    </message>
    <message>
        <source>You look from the right.</source>
        <translation>Vous regardez depuis la droite.</translation>
    </message>
    <message>
        <source>You look from above.</source>
        <translation>Vous regardez depuis le dessus.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verrouillé</translation>
    </message>
    <message>
        <source>Not locked</source>
        <translation>Non verrouillé</translation>
    </message>
    <message>
        <source>Cannot tell from here</source>
        <translation>On ne peut pas dire d’ici</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>an answer and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>How sure are you?</source>
        <translation>Avec quelle certitude ?</translation>
    </message>
    <message>
        <source>Sure  (S)</source>
        <comment>with its key</comment>
        <translation>Certain  (S)</translation>
    </message>
    <message>
        <source>Not sure  (N)</source>
        <comment>with its key</comment>
        <translation>Pas certain  (N)</translation>
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
        <translation>Suite  (Enter)</translation>
    </message>
    <message>
        <source>Number keys: your answer. Then S: sure, N: not sure. Enter: next.</source>
        <translation>Touches chiffrées : votre réponse. Puis S : certain, N : pas certain. Enter : suite.</translation>
    </message>
    <message>
        <source>It was locked.</source>
        <translation>C’était verrouillé.</translation>
    </message>
    <message>
        <source>It was part-seated.</source>
        <translation>C’était à demi engagé.</translation>
    </message>
    <message>
        <source>It was not secured: ball and plunger in place, and nothing held the plunger.</source>
        <translation>Ce n’était pas assuré : bille et verrou en place, et rien ne retenait le verrou.</translation>
    </message>
    <message>
        <source>The socket was empty.</source>
        <translation>La cage était vide.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Juste</translation>
    </message>
    <message>
        <source>Not right</source>
        <translation>Pas juste</translation>
    </message>
    <message>
        <source>Right, and you were not sure: it comes again soon</source>
        <translation>Juste, mais sans certitude : cela revient bientôt</translation>
    </message>
    <message>
        <source>Part-seated, called locked</source>
        <translation>À demi engagé, dit verrouillé</translation>
    </message>
    <message>
        <source>Not secured, called locked</source>
        <translation>Non assuré, dit verrouillé</translation>
    </message>
    <message>
        <source>Empty socket, called locked</source>
        <translation>Cage vide, dite verrouillée</translation>
    </message>
    <message>
        <source>You were sure, so it comes again first.</source>
        <translation>Vous l’aviez dit avec certitude : cela revient donc en premier.</translation>
    </message>
    <message>
        <source>What is in view does not tell it. Bring a torch and a mirror. If it still cannot be seen, stop and call.</source>
        <translation>Ce qui est visible ne le dit pas. Prendre une lampe et un miroir. Si cela reste invisible, s’arrêter et appeler.</translation>
    </message>
    <message>
        <source>What is in view does not tell it. Bring a mirror. If it still cannot be seen, stop and call.</source>
        <translation>Ce qui est visible ne le dit pas. Prendre un miroir. Si cela reste invisible, s’arrêter et appeler.</translation>
    </message>
    <message>
        <source>What is in view does not tell it. Bring a torch. If it still cannot be seen, stop and call.</source>
        <translation>Ce qui est visible ne le dit pas. Prendre une lampe. Si cela reste invisible, s’arrêter et appeler.</translation>
    </message>
    <message>
        <source>What is in view does not tell it, with torch and mirror too: stop and call.</source>
        <translation>Ce qui est visible ne le dit pas, même avec lampe et miroir : s’arrêter et appeler.</translation>
    </message>
    <message>
        <source>Ball in the socket, plunger home, sleeve at its stop. On the real joint the gap is then read and the rod pulled: each is one sign only.</source>
        <translation>Bille dans la cage, verrou à fond, manchon en butée. Sur la vraie liaison, on mesure ensuite l’écart et on tire sur la tringle : chacun n’est qu’un indice.</translation>
    </message>
    <message>
        <source>The ball is not at the bottom, so the plunger stands back and its tab stands differently. It may still move the control, and can let go in flight.</source>
        <translation>La bille n’est pas au fond : le verrou reste en retrait et sa patte se présente autrement. La liaison peut encore transmettre la commande, et peut lâcher en vol.</translation>
    </message>
    <message>
        <source>The ball is home, but nothing stops the plunger from being pressed: look for bare thread, a sleeve that is back, a pin that is out.</source>
        <translation>La bille est au fond, mais rien n’empêche d’enfoncer le verrou : chercher un filetage nu, un manchon en retrait, une épingle sortie.</translation>
    </message>
    <message>
        <source>There is no ball. Plunger, sleeve and gap may all look as if locked, so the look begins with the ball.</source>
        <translation>Il n’y a pas de bille. Verrou, manchon et écart peuvent tous paraître comme verrouillés : le contrôle visuel commence donc par la bille.</translation>
    </message>
    <message>
        <source>Calls and order</source>
        <translation>Annonces et ordre</translation>
    </message>
    <message>
        <source>A short round in words: what each surface does when the control is moved, which coupling comes next, whom to call, and when to stop.</source>
        <translation>Une courte série en mots : ce que fait chaque gouverne quand on bouge la commande, quel raccord vient ensuite, qui appeler et quand s’arrêter.</translation>
    </message>
    <message>
        <source>Begin a round  (B)</source>
        <comment>with its key</comment>
        <translation>Commencer une série  (B)</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key for: begin a round in words</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>There is nothing to ask yet on this airframe.</source>
        <translation>Il n’y a encore rien à demander sur ce planeur.</translation>
    </message>
    <message>
        <source>%2 What does this surface do: %1?</source>
        <comment>a surface, what the cockpit moves</comment>
        <translation>%2 Que fait cette gouverne : %1 ?</translation>
    </message>
    <message>
        <source>Which coupling comes after this one in the order of rigging: %1?</source>
        <translation>Quel raccord vient après celui-ci dans l’ordre de montage : %1 ?</translation>
    </message>
    <message>
        <source>A reading lies outside its band. Whom do you call?</source>
        <translation>Une mesure est hors de sa bande. Qui appelez-vous ?</translation>
    </message>
    <message>
        <source>The plunger is not home. The control moves freely. What do you do?</source>
        <translation>Le verrou n’est pas à fond. La commande bouge librement. Que faites-vous ?</translation>
    </message>
    <message>
        <source>You cannot see the plunger. What do you do?</source>
        <translation>Vous ne voyez pas le verrou. Que faites-vous ?</translation>
    </message>
    <message>
        <source>The gap lies outside this coupling's band. The look was in order. What do you do?</source>
        <translation>L’écart est hors de la bande de ce raccord. Le contrôle visuel n’a rien montré d’anormal. Que faites-vous ?</translation>
    </message>
    <message>
        <source>The joint lets go in the pull. What do you do?</source>
        <translation>La liaison lâche à l’essai de traction. Que faites-vous ?</translation>
    </message>
    <message>
        <source>After the control check somebody had a hand on a joint. What do you do?</source>
        <translation>Après l’essai des commandes, quelqu’un a eu la main sur une liaison. Que faites-vous ?</translation>
    </message>
    <message>
        <source>You were called away in the middle of a joint. What do you do when you come back?</source>
        <translation>On vous a appelé ailleurs au milieu d’une liaison. Que faites-vous en revenant ?</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call</source>
        <translation>S’arrêter, laisser en l’état, appeler</translation>
    </message>
    <message>
        <source>Fetch a mirror or a light</source>
        <translation>Prendre un miroir ou une lampe</translation>
    </message>
    <message>
        <source>Look at that joint again, then try its surfaces again</source>
        <translation>Regarder à nouveau cette liaison, puis refaire l’essai de ses gouvernes</translation>
    </message>
    <message>
        <source>Begin this joint again at the look</source>
        <translation>Recommencer cette liaison par le contrôle visuel</translation>
    </message>
    <message>
        <source>Go on with the next step</source>
        <translation>Passer à l’étape suivante</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Attendu : %1</translation>
    </message>
    <message>
        <source>A part-seated joint can still move the control. Connecting it again without finding out why is not a fix.</source>
        <translation>Une liaison à demi engagée peut encore transmettre la commande. La raccorder à nouveau sans trouver pourquoi ne répare rien.</translation>
    </message>
    <message>
        <source>What nobody has seen counts as not done. If it still cannot be seen, stop and call.</source>
        <translation>Ce que personne n’a vu compte comme non fait. Si cela reste invisible, s’arrêter et appeler.</translation>
    </message>
    <message>
        <source>The band is this coupling's own past. Something differs, and the look alone does not say what.</source>
        <translation>La bande est le propre passé de ce raccord. Quelque chose diffère, et le contrôle visuel seul ne dit pas quoi.</translation>
    </message>
    <message>
        <source>Whatever gap and look say: do not fly, leave it as it is, and call.</source>
        <translation>Quoi que disent l’écart et le contrôle visuel : ne pas voler, laisser en l’état et appeler.</translation>
    </message>
    <message>
        <source>A hand may have moved the joint, and the control check alone would not show it.</source>
        <translation>Une main peut avoir déplacé la liaison, et l’essai des commandes seul ne le montrerait pas.</translation>
    </message>
    <message>
        <source>After an interruption nobody can be sure what was done.</source>
        <translation>Après une interruption, personne ne peut être certain de ce qui a été fait.</translation>
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
        <translation>Le rapport pour le mécanicien</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Larger  (+)</source>
        <translation>Plus grand  (+)</translation>
    </message>
    <message>
        <source>Smaller  (−)</source>
        <translation>Plus petit  (−)</translation>
    </message>
    <message>
        <source>Fit the width  (0)</source>
        <translation>Ajuster la largeur  (0)</translation>
    </message>
    <message>
        <source>Paper (%1)</source>
        <translation>Papier (%1)</translation>
    </message>
    <message>
        <source>Appendix (%1)</source>
        <translation>Annexe (%1)</translation>
    </message>
    <message>
        <source>Earlier ends (%1)</source>
        <translation>États finaux antérieurs (%1)</translation>
    </message>
    <message>
        <source>Readings listed one by one, looks, pulls and control checks. The tables beside the PDF hold them in any case.</source>
        <translation>Mesures une à une, contrôles visuels, essais de traction et essais des commandes. Les tableaux à côté du PDF les contiennent dans tous les cas.</translation>
    </message>
    <message>
        <source>Save as PDF …  (%1)</source>
        <translation>Enregistrer en PDF …  (%1)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Retour  (Esc)</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Page Up and Page Down turn the pages. The tables of all readings and figures are saved beside the PDF.</source>
        <translation>Page précédente et Page suivante tournent les pages. Les tableaux de toutes les mesures et de tous les chiffres sont enregistrés à côté du PDF.</translation>
    </message>
    <message>
        <source>Saved: %1. All readings and figures as tables: %2.</source>
        <translation>Enregistré : %1. Toutes les mesures et tous les chiffres en tableaux : %2.</translation>
    </message>
    <message>
        <source>Tables are there already</source>
        <translation>Des tableaux sont déjà là</translation>
    </message>
    <message>
        <source>%1 is there already. Replace the tables in it by those of this report?</source>
        <translation>%1 est déjà là. Remplacer les tableaux qu’il contient par ceux de ce rapport ?</translation>
    </message>
    <message>
        <source>Replace them</source>
        <translation>Les remplacer</translation>
    </message>
    <message>
        <source>Laying out the report …</source>
        <translation>Mise en page du rapport …</translation>
    </message>
</context>
<context>
    <name>ProblemWords</name>
    <message>
        <source>this file</source>
        <comment>where a file's name stands</comment>
        <translation>ce fichier</translation>
    </message>
    <message>
        <source>%1 is not there any more. It may have been moved or renamed, or its drive taken out: find it, then open it from its new place.</source>
        <translation>%1 n’est plus là. Il a pu être déplacé ou renommé, ou son disque retiré : le retrouver, puis l’ouvrir depuis son nouvel emplacement.</translation>
    </message>
    <message>
        <source>%1 cannot be opened. Look whether it is a file that you may read, then try again.</source>
        <translation>%1 ne peut pas être ouvert. Vérifier que vous avez le droit de lire ce fichier, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is not a Rigband file. Nothing in it was changed; choose a file that ends in .rigband.</source>
        <translation>%1 n’est pas un fichier Rigband. Rien n’y a été modifié ; choisir un fichier qui se termine par .rigband.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Rigband than this one. Nothing in it was changed; install the newer program to open it.</source>
        <translation>%1 a été écrit par un Rigband plus récent que celui-ci. Rien n’y a été modifié ; installer le programme plus récent pour l’ouvrir.</translation>
    </message>
    <message>
        <source>%1 is not laid out as Rigband lays out its files, so it was left as it is: another program changed how it is built, first of all at “%2”. Open the latest copy from the folder beside it, or let Rigband read what can still be read into a new file.</source>
        <translation>%1 n’est pas construit comme Rigband construit ses fichiers, il a donc été laissé tel quel : un autre programme a changé sa structure, d’abord à « %2 ». Ouvrir la dernière copie dans le dossier à côté, ou laisser Rigband lire dans un nouveau fichier ce qui peut encore l’être.</translation>
    </message>
    <message>
        <source>%1 says of itself that it is of another version than it is, so it was left as it is: somebody changed its number. Open the latest copy from the folder beside it.</source>
        <translation>%1 se dit d’une autre version que la sienne, il a donc été laissé tel quel : quelqu’un a changé son numéro. Ouvrir la dernière copie dans le dossier à côté.</translation>
    </message>
    <message>
        <source>%1 is damaged and was left as it is. Open the latest copy from the folder beside it, or let Rigband read what can still be read into a new file.</source>
        <translation>%1 est endommagé et a été laissé tel quel. Ouvrir la dernière copie dans le dossier à côté, ou laisser Rigband lire dans un nouveau fichier ce qui peut encore l’être.</translation>
    </message>
    <message>
        <source>%1 may only be read, so nothing was written. Allow writing to it, or copy it to a place of your own and open the copy.</source>
        <translation>%1 est en lecture seule, rien n’a donc été écrit. Permettre l’écriture, ou le copier dans un endroit à vous et ouvrir la copie.</translation>
    </message>
    <message>
        <source>The folder of %1 may not be written to, so nothing was written: saving needs room there for a second file. Allow writing to the folder, or use a place of your own.</source>
        <translation>On ne peut pas écrire dans le dossier de %1, rien n’a donc été écrit : l’enregistrement y demande la place d’un second fichier. Permettre l’écriture dans le dossier, ou prendre un endroit à vous.</translation>
    </message>
    <message>
        <source>The disk with %1 is full, so nothing was written. All that was saved before is kept. Free some space elsewhere on the disk, then try again.</source>
        <translation>Le disque qui contient %1 est plein, rien n’a donc été écrit. Tout ce qui était enregistré est gardé. Libérer de la place ailleurs sur le disque, puis réessayer.</translation>
    </message>
    <message>
        <source>Another window is writing to %1 just now, so nothing was written here. Wait a moment, then try again.</source>
        <translation>Une autre fenêtre écrit dans %1 en ce moment, rien n’a donc été écrit ici. Attendre un instant, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is large and is still being looked through for damage, so nothing was written yet. Wait a moment, then try again.</source>
        <translation>%1 est volumineux et l’on y cherche encore des dommages, rien n’a donc encore été écrit. Attendre un instant, puis réessayer.</translation>
    </message>
    <message>
        <source>No copy of %1 was kept today: the copies beside it would take more than a quarter of the free space of the disk. What you enter is saved all the same. Free some space, or copy the file to another place yourself.</source>
        <translation>Aucune copie de %1 n’a été gardée aujourd’hui : les copies à côté prendraient plus d’un quart de la place libre du disque. Ce que vous saisissez est quand même enregistré. Libérer de la place, ou copier vous-même le fichier ailleurs.</translation>
    </message>
    <message>
        <source>Among the copies beside %1 stands “%2”, of a day that is still to come: the clock was wrong when it was made. It does not count as a copy of a day; look at it, and take it away when it is not needed.</source>
        <translation>Parmi les copies à côté de %1 se trouve « %2 », d’un jour encore à venir : l’horloge était fausse quand elle a été faite. Elle ne compte pas comme copie d’un jour ; la regarder, et la retirer si elle ne sert pas.</translation>
    </message>
    <message>
        <source>Nothing more can be saved in %1: something in it has the last number that there is, which another program gave it. Open a copy from before, from the folder beside it.</source>
        <translation>Plus rien ne peut être enregistré dans %1 : quelque chose y porte le dernier numéro qui existe, donné par un autre programme. Ouvrir une copie d’avant, dans le dossier à côté.</translation>
    </message>
    <message>
        <source>This does not fit with what %1 already holds, so nothing was written. Look over what was entered, then try again.</source>
        <translation>Cela ne s’accorde pas avec ce que %1 contient déjà, rien n’a donc été écrit. Revoir ce qui a été saisi, puis réessayer.</translation>
    </message>
    <message>
        <source>This is not in %1. Open the page anew to see what the file holds now.</source>
        <translation>Cela n’est pas dans %1. Rouvrir la page pour voir ce que le fichier contient maintenant.</translation>
    </message>
    <message>
        <source>%1 is there already and was left as it is. Choose another name.</source>
        <translation>%1 existe déjà et a été laissé tel quel. Choisir un autre nom.</translation>
    </message>
    <message>
        <source>Something unexpected went wrong with %1. It is not certain whether this was saved: close the file, open it again and look at what it holds before you enter it once more.</source>
        <translation>Un problème inattendu est survenu avec %1. Il n’est pas certain que cela ait été enregistré : fermer le fichier, le rouvrir et regarder ce qu’il contient avant de le saisir encore une fois.</translation>
    </message>
    <message>
        <source>A save into %1 was broken off, and what undoes it stands in %1-journal beside it. Open %1 with Rigband where it may be written to: it is then as it was before that save. Until then move or copy neither of the two without the other.</source>
        <translation>Un enregistrement dans %1 a été interrompu, et ce qui l’annule se trouve dans %1-journal, à côté. Ouvrez %1 avec Rigband là où l’on peut écrire : il est alors comme avant cet enregistrement. D’ici là, ne déplacez ni ne copiez aucun des deux sans l’autre.</translation>
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
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Laisser ainsi</translation>
    </message>
    <message>
        <source>Enter this</source>
        <translation>Saisir ceci</translation>
    </message>
    <message>
        <source>That is no reason. Say in words why; a figure is typed afterwards.</source>
        <translation>Ce n’est pas une raison. Dire pourquoi en mots ; un chiffre se tape ensuite.</translation>
    </message>
    <message>
        <source>Choose a name for the file</source>
        <translation>Choisir un nom pour le fichier</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <translation>Où l’écrire</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Choisir un fichier</translation>
    </message>
    <message>
        <source>%1  (Alt+%2)</source>
        <comment>answer, its key</comment>
        <translation>%1  (Alt+%2)</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>offered answer, what was typed besides</comment>
        <translation>%1 ; %2</translation>
    </message>
    <message>
        <source>Wrong leaf</source>
        <translation>Mauvaise lame</translation>
    </message>
    <message>
        <source>Wrong coupling</source>
        <translation>Mauvais raccord</translation>
    </message>
    <message>
        <source>Misread</source>
        <translation>Mal lu</translation>
    </message>
    <message>
        <source>Leaf bent or tilted</source>
        <translation>Lame tordue ou inclinée</translation>
    </message>
    <message>
        <source>Dirt on the leaf</source>
        <translation>Saleté sur la lame</translation>
    </message>
    <message>
        <source>A reason is typed and not entered. It is lost when Rigband is closed now.</source>
        <translation>Un motif est saisi et pas encore entré. Il sera perdu si Rigband est fermé maintenant.</translation>
    </message>
    <message>
        <source>Wrong person</source>
        <translation>Mauvaise personne</translation>
    </message>
</context>
<context>
    <name>QuestionWords</name>
    <message>
        <source>%1, outside its band</source>
        <translation>%1, hors de sa bande</translation>
    </message>
    <message>
        <source>%1, answered “no”</source>
        <translation>%1, réponse « non »</translation>
    </message>
    <message>
        <source>%1, could not be seen</source>
        <translation>%1, n’a pas pu être vu</translation>
    </message>
    <message>
        <source>%1, two readings disagree</source>
        <translation>%1, deux mesures ne concordent pas</translation>
    </message>
    <message>
        <source>%1, left and right look swapped</source>
        <translation>%1, gauche et droite semblent inversées</translation>
    </message>
    <message>
        <source>%1, wrong or not seen in the control check</source>
        <translation>%1, faux ou pas vu à l’essai des commandes</translation>
    </message>
    <message>
        <source>%1, its band is in doubt</source>
        <translation>%1, sa bande est en doute</translation>
    </message>
    <message>
        <source>%1, shown part-seated on purpose</source>
        <translation>%1, montré à demi engagé exprès</translation>
    </message>
    <message>
        <source>%1, a question in words</source>
        <translation>%1, une question rédigée</translation>
    </message>
    <message>
        <source>Gauge %1, readings in doubt</source>
        <translation>Jauge %1, mesures en doute</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 depuis le %2</translation>
    </message>
    <message numerus="yes">
        <source>%n open question(s) on %1: %2; and %3 more.</source>
        <comment>which, how many others</comment>
        <translation>
            <numerusform>%n question ouverte sur %1 : %2 ; et %3 de plus.</numerusform>
            <numerusform>%n questions ouvertes sur %1 : %2 ; et %3 de plus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open question(s) on %1: %2.</source>
        <comment>which</comment>
        <translation>
            <numerusform>%n question ouverte sur %1 : %2.</numerusform>
            <numerusform>%n questions ouvertes sur %1 : %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>; </source>
        <comment>between questions</comment>
        <translation> ; </translation>
    </message>
    <message numerus="yes">
        <source>%n open question(s) on %1.</source>
        <translation>
            <numerusform>%n question ouverte sur %1.</numerusform>
            <numerusform>%n questions ouvertes sur %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Show the questions</source>
        <translation>Montrer les questions</translation>
    </message>
    <message>
        <source>Show the questions (Ctrl+6)</source>
        <translation>Montrer les questions (Ctrl+6)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Retour  (Esc)</translation>
    </message>
    <message>
        <source>Back to the page before (Esc)</source>
        <translation>Retour à la page précédente (Esc)</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Questions</translation>
    </message>
    <message>
        <source>%1 open, %2 closed</source>
        <translation>Ouvertes : %1, closes : %2</translation>
    </message>
    <message>
        <source>No question was ever asked on this airframe. An outside reading, a “no”, a “cannot see”, two readings that disagree or a gauge in doubt open one.</source>
        <translation>Aucune question n’a jamais été posée sur ce planeur. Une mesure hors bande, un « non », un « pas visible », deux mesures qui ne concordent pas ou une jauge en doute en ouvrent une.</translation>
    </message>
    <message>
        <source>This file knows no airframe yet. Begin in Set up (Ctrl+5).</source>
        <translation>Ce fichier ne connaît encore aucun planeur. Commencer dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>Up, Down: another question. Enter: close it. Esc: back.</source>
        <translation>Haut, Bas : autre question. Enter : la clore. Esc : retour.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>open or closed, about what</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>open since %1</source>
        <translation>ouverte depuis le %1</translation>
    </message>
    <message>
        <source>closed %1 by %2</source>
        <translation>close le %1 par %2</translation>
    </message>
    <message>
        <source>%1: answered “yes”.</source>
        <translation>%1 : réponse « oui ».</translation>
    </message>
    <message>
        <source>%1: answered “no”.</source>
        <translation>%1 : réponse « non ».</translation>
    </message>
    <message>
        <source>%1: answered “felt, not seen”.</source>
        <translation>%1 : réponse « senti, pas vu ».</translation>
    </message>
    <message>
        <source>%1: answered “cannot see”.</source>
        <translation>%1 : réponse « pas visible ».</translation>
    </message>
    <message>
        <source>%1, read by %2, lay outside this coupling's band.</source>
        <translation>%1, mesuré par %2, était hors de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1: “%2”</source>
        <comment>somebody asks since a day: what</comment>
        <translation>%1 : « %2 »</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>what somebody asks</comment>
        <translation>« %1 »</translation>
    </message>
    <message>
        <source>%1, read by %2.</source>
        <translation>%1, mesuré par %2.</translation>
    </message>
    <message>
        <source>%1 and %2 have gone through the whole joint since, %3.</source>
        <comment>two persons, moment</comment>
        <translation>%1 et %2 ont depuis passé en revue toute la liaison, %3.</translation>
    </message>
    <message>
        <source>It was shown part-seated in Set up, and nobody has gone through the whole joint since.</source>
        <translation>Il a été montré à demi engagé dans Réglages, et personne n’a depuis passé en revue toute la liaison.</translation>
    </message>
    <message>
        <source>%1 was part-seated on purpose in Set up. Connect it, then do the whole check in Rigged today (Ctrl+1): look, reading, pull, securing, second person. After that a person entitled to decide closes this.</source>
        <translation>%1 a été à demi engagé exprès dans Réglages. Le raccorder, puis faire tout le contrôle dans Monté aujourd’hui (Ctrl+1) : regarder, mesurer, tirer, assurer, deuxième personne. Après cela, une personne habilitée clôt la question.</translation>
    </message>
    <message>
        <source>The two persons' readings differ by more than measuring explains. Both stand.</source>
        <translation>Les mesures des deux personnes diffèrent plus que la mesure ne l’explique. Les deux restent.</translation>
    </message>
    <message>
        <source>The left reading fits the right coupling's band and not its own, and the other way round.</source>
        <translation>La mesure de gauche correspond à la bande du raccord de droite et non à la sienne, et inversement.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) taken with %1 from %2 on cannot be judged by it.</source>
        <translation>
            <numerusform>%n mesure faite à partir du %2 (%1) ne peut pas être jugée avec cette jauge.</numerusform>
            <numerusform>%n mesures faites à partir du %2 (%1) ne peuvent pas être jugées avec cette jauge.</numerusform>
        </translation>
    </message>
    <message>
        <source>Asked on %1; nobody was named.</source>
        <translation>Posée le %1 ; aucun nom n’a été donné.</translation>
    </message>
    <message>
        <source>Stated by %1 on %2.</source>
        <translation>Déclaré par %1 le %2.</translation>
    </message>
    <message>
        <source>It stands on the paper of %1, typed in on %2; nobody was named.</source>
        <translation>Cela figure sur le papier du %1, saisi le %2 ; aucun nom n’a été donné.</translation>
    </message>
    <message>
        <source>Stated by %1 on the paper of %2, typed in on %3.</source>
        <translation>Déclaré par %1 sur le papier du %2, saisi le %3.</translation>
    </message>
    <message>
        <source>In the rigging record begun %1, which is still open.</source>
        <translation>Dans la fiche de montage commencée le %1, qui est encore ouverte.</translation>
    </message>
    <message>
        <source>In the rigging record begun %1.</source>
        <translation>Dans la fiche de montage commencée le %1.</translation>
    </message>
    <message>
        <source>Closed on %2: decided by %1.</source>
        <translation>Close le %2 : décidé par %1.</translation>
    </message>
    <message>
        <source>Closed on %2: decided by %1, entered by %3.</source>
        <translation>Close le %2 : décidé par %1, saisi par %3.</translation>
    </message>
    <message>
        <source>%1 had found this too: nobody else decided what it was.</source>
        <translation>C’est aussi %1 qui l’avait trouvé : personne d’autre n’a décidé ce que c’était.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>“%1”: what was called was “%2”, which is not what was expected.</source>
        <comment>check, movement</comment>
        <translation>« %1 » : il a été annoncé « %2 », ce qui n’est pas ce qui était attendu.</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, and call a person entitled to decide. Whom to call is not set up yet: name the person in Set up (Ctrl+5).</source>
        <translation>S’arrêter, laisser en l’état et appeler une personne habilitée. Qui appeler n’est pas encore défini : nommer la personne dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call %1.</source>
        <translation>S’arrêter, laisser en l’état, appeler %1.</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call %1 (%2).</source>
        <comment>name, telephone</comment>
        <translation>S’arrêter, laisser en l’état, appeler %1 (%2).</translation>
    </message>
    <message>
        <source>Only when the cause is found: disconnect, clean, connect, look, pull, read.</source>
        <translation>Seulement quand la cause est trouvée : désaccoupler, nettoyer, raccorder, regarder, tirer, mesurer.</translation>
    </message>
    <message>
        <source>Only a person entitled to decide closes a question.</source>
        <translation>Seule une personne habilitée clôt une question.</translation>
    </message>
    <message>
        <source>A later reading inside the band never closes it.</source>
        <translation>Une mesure ultérieure dans la bande ne la clôt jamais.</translation>
    </message>
    <message>
        <source>Once it is closed, %1 starts at the look in the record that is open, for both persons: somebody has been at it.</source>
        <translation>Une fois la question close, %1 reprend au contrôle visuel dans la fiche ouverte, pour les deux personnes : quelqu’un y est intervenu.</translation>
    </message>
    <message>
        <source>After closing it, answer the control check of %1 again: what was answered “no” or could not be seen, and after a “no” all of it. Where it moved otherwise than expected, every joint of its circuit starts at the look again, for both persons.</source>
        <translation>Après l’avoir close, répondre de nouveau à l’essai des commandes (%1) : à ce qui a reçu « non » ou n’a pas pu être vu et, après un « non », à tout. Là où la gouverne a bougé autrement qu’attendu, chaque liaison de son circuit reprend au contrôle visuel, pour les deux personnes.</translation>
    </message>
    <message>
        <source>Closing it does not lift the doubt from the gauge: only a later check that finds it usable does, in Set up (Ctrl+5).</source>
        <translation>La clore ne lève pas le doute sur la jauge : seul le fait un contrôle ultérieur qui la trouve utilisable, dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>The question is closed.</source>
        <translation>La question est close.</translation>
    </message>
    <message>
        <source>The question is closed. %1 starts at the look in Rigged today (Ctrl+1).</source>
        <translation>La question est close. %1 reprend au contrôle visuel dans Monté aujourd’hui (Ctrl+1).</translation>
    </message>
    <message>
        <source>The question is closed. Answer the control check of %1 again in Rigged today (Ctrl+1).</source>
        <translation>La question est close. Répondre de nouveau à l’essai des commandes (%1) dans Monté aujourd’hui (Ctrl+1).</translation>
    </message>
    <message>
        <source>Close this question …  (Enter)</source>
        <translation>Clore cette question …  (Enter)</translation>
    </message>
    <message>
        <source>&amp;Who decided</source>
        <translation>&amp;Qui a décidé</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Choisir une personne</translation>
    </message>
    <message>
        <source>Not in the list? Add the person in Set up (Ctrl+5). What you typed stays.</source>
        <translation>Pas dans la liste ? Ajouter la personne dans Réglages (Ctrl+5). Ce que vous avez saisi reste.</translation>
    </message>
    <message>
        <source>What was &amp;found</source>
        <translation>Ce qui a été &amp;trouvé</translation>
    </message>
    <message>
        <source>Sleeve not at its stop, grit under the plunger …</source>
        <translation>Manchon pas en butée, sable sous le verrou …</translation>
    </message>
    <message>
        <source>What was &amp;done</source>
        <translation>Ce qui a été &amp;fait</translation>
    </message>
    <message>
        <source>Cleaned, connected, looked at, pulled, read; nothing, and why …</source>
        <translation>Nettoyé, raccordé, regardé, tiré, mesuré ; rien, et pourquoi …</translation>
    </message>
    <message>
        <source>&amp;Entered by, when it is somebody else</source>
        <translation>&amp;Saisi par, si c’est quelqu’un d’autre</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>Aucun nom</translation>
    </message>
    <message>
        <source>&amp;Close the question  (Ctrl+Enter)</source>
        <translation>&amp;Clore la question  (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>Not now  (Esc)</source>
        <translation>Pas maintenant  (Esc)</translation>
    </message>
    <message>
        <source>What you typed stays here until this file is shut.</source>
        <translation>Ce que vous avez saisi reste ici jusqu’à la fermeture de ce fichier.</translation>
    </message>
    <message>
        <source>Choose who decided. Nobody is filled in for you.</source>
        <translation>Choisir qui a décidé. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Say what was found, also when nothing was.</source>
        <translation>Dire ce qui a été trouvé, même si ce n’est rien.</translation>
    </message>
    <message>
        <source>Say what was done, also when nothing was, and why.</source>
        <translation>Dire ce qui a été fait, même si ce n’est rien, et pourquoi.</translation>
    </message>
    <message>
        <source>Not closed. What you typed is still here.</source>
        <translation>Pas close. Ce que vous avez saisi est encore ici.</translation>
    </message>
    <message>
        <source>Somebody has closed this question meanwhile, so nothing was kept. What you typed is still here.</source>
        <translation>Quelqu’un a clos cette question entre-temps ; rien n’a donc été conservé. Ce que vous avez saisi est encore ici.</translation>
    </message>
    <message>
        <source>%1, did not move in the control check</source>
        <translation>%1, n’a pas bougé à l’essai des commandes</translation>
    </message>
    <message>
        <source>%1, moved the wrong way in the control check</source>
        <translation>%1, a bougé dans le mauvais sens à l’essai des commandes</translation>
    </message>
    <message>
        <source>%1, answered “no” in the control check</source>
        <translation>%1, réponse « non » à l’essai des commandes</translation>
    </message>
    <message>
        <source>%1, not seen in the control check</source>
        <translation>%1, pas vu à l’essai des commandes</translation>
    </message>
    <message>
        <source>Closed by %1 on the paper of %2, typed in on %3.</source>
        <translation>Close par %1 sur le papier du %2, saisi le %3.</translation>
    </message>
    <message>
        <source>Closed by %1 on the paper of %2, copied on %3 by %4.</source>
        <translation>Close par %1 sur le papier du %2, recopié le %3 par %4.</translation>
    </message>
    <message>
        <source>What was found or done is typed at a question and not saved. It is lost when this file is left now.</source>
        <translation>Ce qui a été constaté ou fait est saisi pour une question sans être enregistré. Cela sera perdu si ce fichier est quitté maintenant.</translation>
    </message>
</context>
<context>
    <name>RecordWords</name>
    <message>
        <source>Rigging record, %1</source>
        <translation>Fiche de montage, %1</translation>
    </message>
    <message>
        <source>%1, serial number %2</source>
        <translation>%1, numéro de série %2</translation>
    </message>
    <message>
        <source>Begun %1, led by %2.</source>
        <comment>moment, person</comment>
        <translation>Commencée le %1, responsable : %2.</translation>
    </message>
    <message>
        <source>Gone through again without having been taken apart: no rigging is counted.</source>
        <translation>Repassé en revue sans avoir été démonté : aucun montage n’est compté.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>moment: how it was closed</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>%1: %2, stated by %3 and %4.</source>
        <comment>moment: how it was closed</comment>
        <translation>%1 : %2, déclaré par %3 et %4.</translation>
    </message>
    <message>
        <source>Not closed yet. What stands here can still be added to.</source>
        <translation>Pas encore close. Ce qui est ici peut encore être complété.</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Note : %1</translation>
    </message>
    <message>
        <source>Temperature at the airframe: %1 °C.</source>
        <translation>Température au planeur : %1 °C.</translation>
    </message>
    <message>
        <source>Note left before: %1 Nobody has noted that it was read.</source>
        <comment>day, persons: “note”</comment>
        <translation>Note laissée auparavant : %1 Personne n’a noté qu’elle a été lue.</translation>
    </message>
    <message>
        <source>Note left before: %1 Read by %2, %3.</source>
        <comment>day, persons: “note”; person, moment</comment>
        <translation>Note laissée auparavant : %1 Lue par %2, %3.</translation>
    </message>
    <message>
        <source>This is none of the official logs: no aircraft or journey log, no technical log or list of defects, no component logbook, no list of directives. It can support an entry there and replaces none. A band is a coupling's own past, never a limit.</source>
        <translation>Ceci n’est aucun des documents officiels : ni livret d’aéronef ou carnet de route, ni compte rendu matériel ou liste de défauts, ni livret d’équipement, ni liste de consignes. Cela peut appuyer une inscription dans ces documents et n’en remplace aucune. Une bande est le propre passé d’un raccord, jamais une limite.</translation>
    </message>
    <message>
        <source>Not done, or open at the close</source>
        <translation>Non fait, ou ouvert à la clôture</translation>
    </message>
    <message>
        <source>Nothing on the list was left open. That is what was stated, and no more than that.</source>
        <translation>Rien de la liste n’est resté ouvert. C’est ce qui a été déclaré, et rien de plus.</translation>
    </message>
    <message>
        <source>•  %1</source>
        <comment>one of a list</comment>
        <translation>•  %1</translation>
    </message>
    <message>
        <source>Couplings at a glance</source>
        <translation>Raccords en un coup d’œil</translation>
    </message>
    <message>
        <source>Each coupling</source>
        <translation>Chaque raccord</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Raccord</translation>
    </message>
    <message>
        <source>Reading that stands</source>
        <translation>Mesure qui compte</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Against its band</source>
        <translation>Par rapport à la bande</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Deuxième personne</translation>
    </message>
    <message>
        <source>First person</source>
        <translation>Première personne</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>pas d’écart à mesurer</translation>
    </message>
    <message>
        <source>%1 has no gap to measure.</source>
        <translation>%1 n’a pas d’écart à mesurer.</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>Nothing was answered or read here.</source>
        <translation>Rien n’a été répondu ni mesuré ici.</translation>
    </message>
    <message>
        <source>Looked at or tried</source>
        <translation>Regardé ou essayé</translation>
    </message>
    <message>
        <source>Ball in the socket</source>
        <translation>Bille dans la cage</translation>
    </message>
    <message>
        <source>Plunger home</source>
        <translation>Verrou à fond</translation>
    </message>
    <message>
        <source>Sleeve at its stop</source>
        <translation>Manchon en butée</translation>
    </message>
    <message>
        <source>Safety pin in and through</source>
        <translation>Épingle en place et traversante</translation>
    </message>
    <message>
        <source>Engaged all the way</source>
        <translation>Engagé à fond</translation>
    </message>
    <message>
        <source>Parts meet all round, flush</source>
        <translation>Pièces en contact tout autour, à fleur</translation>
    </message>
    <message>
        <source>Water line or rod connected</source>
        <translation>Conduite d’eau ou tringle raccordée</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Raccordé</translation>
    </message>
    <message>
        <source>Pull: nothing moves</source>
        <translation>Traction : rien ne bouge</translation>
    </message>
    <message>
        <source>Secured</source>
        <translation>Assuré</translation>
    </message>
    <message>
        <source>Struck by %1, %2: %3. Nothing takes its place</source>
        <comment>person, moment: reason</comment>
        <translation>Rayée par %1, %2 : %3. Rien ne la remplace</translation>
    </message>
    <message>
        <source>Corrected %1: %2</source>
        <comment>moment: reason</comment>
        <translation>Corrigée le %1 : %2</translation>
    </message>
    <message>
        <source>Corrected by %1, %2: %3</source>
        <comment>person, moment: reason</comment>
        <translation>Corrigée par %1, %2 : %3</translation>
    </message>
    <message>
        <source>found part-seated</source>
        <translation>trouvé à demi engagé</translation>
    </message>
    <message>
        <source>takes the place of the corrected one</source>
        <translation>remplace la mesure corrigée</translation>
    </message>
    <message numerus="yes">
        <source>band %1, %n reading(s)</source>
        <translation>
            <numerusform>bande %1, %n mesure</numerusform>
            <numerusform>bande %1, %n mesures</numerusform>
        </translation>
    </message>
    <message>
        <source>there is no band</source>
        <translation>il n’y a pas de bande</translation>
    </message>
    <message>
        <source>shown at the time: %1</source>
        <translation>affiché alors : %1</translation>
    </message>
    <message>
        <source>nothing was shown at the time</source>
        <translation>rien n’a été affiché alors</translation>
    </message>
    <message>
        <source>A gap inside the band is one sign only. Finish the look, the pull and the second person.</source>
        <translation>Un écart dans la bande n’est qu’un indice. Terminer le contrôle visuel et l’essai de traction, puis la deuxième personne.</translation>
    </message>
    <message>
        <source>broken off by the person at work</source>
        <translation>arrêté par la personne au travail</translation>
    </message>
    <message>
        <source>another person took over</source>
        <translation>une autre personne a pris la suite</translation>
    </message>
    <message>
        <source>nothing was entered for a long time</source>
        <translation>rien n’a été saisi pendant longtemps</translation>
    </message>
    <message>
        <source>the program was closed or went down</source>
        <translation>le programme a été fermé ou s’est arrêté</translation>
    </message>
    <message>
        <source>a question was closed here</source>
        <translation>une question a été close ici</translation>
    </message>
    <message>
        <source>First person interrupted at %1: %2. The work began again at the look.</source>
        <translation>Première personne interrompue, %1 : %2. Le travail a repris au contrôle visuel.</translation>
    </message>
    <message>
        <source>Second person interrupted at %1: %2. The work began again at the look.</source>
        <translation>Deuxième personne interrompue, %1 : %2. Le travail a repris au contrôle visuel.</translation>
    </message>
    <message>
        <source>Other questions</source>
        <translation>Autres questions</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Question</translation>
    </message>
    <message>
        <source>A reading lay outside the band</source>
        <translation>Une mesure était hors de la bande</translation>
    </message>
    <message>
        <source>Answered with no</source>
        <translation>Réponse « non »</translation>
    </message>
    <message>
        <source>Answered with cannot see</source>
        <translation>Réponse « pas visible »</translation>
    </message>
    <message>
        <source>The two persons' readings disagree</source>
        <translation>Les mesures des deux personnes ne concordent pas</translation>
    </message>
    <message>
        <source>Left and right may have been swapped</source>
        <translation>Gauche et droite ont peut-être été inversées</translation>
    </message>
    <message>
        <source>In the control check something was wrong or could not be seen</source>
        <translation>À l’essai des commandes, quelque chose n’allait pas ou n’était pas visible</translation>
    </message>
    <message>
        <source>The band stood on readings that are now in doubt</source>
        <translation>La bande reposait sur des mesures désormais en doute</translation>
    </message>
    <message>
        <source>It was shown part-seated on purpose</source>
        <translation>Montré à demi engagé exprès</translation>
    </message>
    <message>
        <source>Somebody asks</source>
        <translation>Quelqu’un demande</translation>
    </message>
    <message>
        <source>Read with a gauge that is now in doubt</source>
        <translation>Mesuré avec une jauge désormais en doute</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Trouvé : %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait : %1</translation>
    </message>
    <message>
        <source>Decided by %1, %2</source>
        <comment>person, moment</comment>
        <translation>Décidé par %1, %2</translation>
    </message>
    <message>
        <source>Control check</source>
        <translation>Essai des commandes</translation>
    </message>
    <message>
        <source>A part-seated joint can go unnoticed in this check.</source>
        <translation>Une liaison à demi engagée peut passer inaperçue à cet essai.</translation>
    </message>
    <message>
        <source>No surfaces were set up, so no control check is recorded.</source>
        <translation>Aucune gouverne n’a été définie, donc aucun essai des commandes n’est noté.</translation>
    </message>
    <message>
        <source>Not checked.</source>
        <translation>Non essayé.</translation>
    </message>
    <message>
        <source>Called aloud: %1</source>
        <translation>Annoncé : %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Attendu : %1</translation>
    </message>
    <message>
        <source>%1 What it did</source>
        <comment>what the cockpit moved</comment>
        <translation>%1 Ce qu’elle a fait</translation>
    </message>
    <message>
        <source>%1 (expected: %2)</source>
        <comment>what a surface did</comment>
        <translation>%1 (attendu : %2)</translation>
    </message>
    <message>
        <source>Tried</source>
        <translation>Essayé</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Réponse</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>À la gouverne</translation>
    </message>
    <message>
        <source>In the cockpit</source>
        <translation>Dans l’habitacle</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Posée</translation>
    </message>
    <message>
        <source>Found and done</source>
        <translation>Trouvé et fait</translation>
    </message>
    <message>
        <source>Held and resisted, one way</source>
        <translation>Tenue : résiste, dans un sens</translation>
    </message>
    <message>
        <source>Held and resisted, the other way</source>
        <translation>Tenue : résiste, dans l’autre sens</translation>
    </message>
    <message>
        <source>Moves as expected</source>
        <translation>Bouge comme attendu</translation>
    </message>
    <message>
        <source>Moves as expected, the control one way</source>
        <translation>Bouge comme attendu, commande dans un sens</translation>
    </message>
    <message>
        <source>Moves as expected, the control the other way</source>
        <translation>Bouge comme attendu, commande dans l’autre sens</translation>
    </message>
    <message>
        <source>Full travel to both stops</source>
        <translation>Course complète jusqu’aux deux butées</translation>
    </message>
    <message>
        <source>Neutral</source>
        <translation>Neutre</translation>
    </message>
    <message>
        <source>Free play as it should be</source>
        <translation>Jeu comme il doit être</translation>
    </message>
    <message>
        <source>Moves freely</source>
        <translation>Bouge librement</translation>
    </message>
    <message>
        <source>Locks with even force, both sides together</source>
        <translation>Verrouille avec une force égale, les deux côtés ensemble</translation>
    </message>
    <message>
        <source>Every notch, both equal</source>
        <translation>Chaque cran, les deux pareils</translation>
    </message>
    <message>
        <source>Moves and holds its setting</source>
        <translation>Bouge et garde son réglage</translation>
    </message>
    <message>
        <source>Both open, both shut</source>
        <translation>Les deux ouverts, les deux fermés</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>From the manual</source>
        <translation>Du manuel</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>pas demandé</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>sans réponse</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>answer: person, time</comment>
        <translation>%1 : %2, %3</translation>
    </message>
    <message>
        <source>%1 (before an interruption)</source>
        <translation>%1 (avant une interruption)</translation>
    </message>
    <message>
        <source>%1 (answered again later)</source>
        <translation>%1 (nouvelle réponse plus tard)</translation>
    </message>
    <message>
        <source>%1 (before somebody was at %2)</source>
        <comment>answer, coupling</comment>
        <translation>%1 (avant une intervention sur %2)</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Mesuré par</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Avec</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>%1, first</source>
        <translation>%1, première personne</translation>
    </message>
    <message>
        <source>%1, second person</source>
        <translation>%1, deuxième personne</translation>
    </message>
    <message>
        <source>Free play</source>
        <translation>Jeu</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Vers le haut</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Vers le bas</translation>
    </message>
    <message>
        <source>%1, read %2 mm from the hinge</source>
        <translation>%1, mesuré à %2 mm de la charnière</translation>
    </message>
    <message>
        <source>%1 ± %2 (%3)</source>
        <comment>figure, tolerance, page of the manual</comment>
        <translation>%1 ± %2 (%3)</translation>
    </message>
    <message>
        <source>at most %1 (%2)</source>
        <comment>figure, page of the manual</comment>
        <translation>au plus %1 (%2)</translation>
    </message>
    <message>
        <source>no figure entered</source>
        <translation>aucune valeur saisie</translation>
    </message>
    <message>
        <source>Counts, and the list for the season's first rigging</source>
        <translation>Comptages, et la liste du premier montage de la saison</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Comptages</translation>
    </message>
    <message>
        <source>Stated by</source>
        <translation>Déclaré par</translation>
    </message>
    <message>
        <source>Season's first: balls and sockets cleaned, springs snap, sleeves free</source>
        <translation>Premier de la saison : billes et cages nettoyées, ressorts qui claquent, manchons libres</translation>
    </message>
    <message>
        <source>Season's first: thin film of the manual's grease</source>
        <translation>Premier de la saison : film mince de la graisse indiquée au manuel</translation>
    </message>
    <message>
        <source>Season's first: leaf sets checked</source>
        <translation>Premier de la saison : jeux de lames contrôlés</translation>
    </message>
    <message>
        <source>Season's first: everybody has looked at the couplings anew</source>
        <translation>Premier de la saison : tous ont regardé les raccords à nouveau</translation>
    </message>
    <message>
        <source>Leaves, mirror, torch, pins and tools counted back out</source>
        <translation>Lames, miroir, lampe, épingles et outils comptés à la sortie</translation>
    </message>
    <message>
        <source>The note left earlier was read</source>
        <translation>La note laissée auparavant a été lue</translation>
    </message>
    <message>
        <source>Hatches closed and taped</source>
        <translation>Trappes fermées et recouvertes de ruban</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non déclaré</translation>
    </message>
    <message>
        <source>Signed by hand</source>
        <translation>Signé à la main</translation>
    </message>
    <message>
        <source>Rigging leader: name, day, signature</source>
        <translation>Responsable du montage : nom, jour, signature</translation>
    </message>
    <message>
        <source>Rigging leader %1: day, signature</source>
        <translation>Responsable du montage %1 : jour, signature</translation>
    </message>
    <message>
        <source>Second person: name, day, signature</source>
        <translation>Deuxième personne : nom, jour, signature</translation>
    </message>
    <message>
        <source>Second person %1: day, signature</source>
        <translation>Deuxième personne %1 : jour, signature</translation>
    </message>
    <message>
        <source>Findings of the person who assesses this, with name, day and signature:</source>
        <translation>Constats de la personne qui évalue ceci, avec nom, jour et signature :</translation>
    </message>
    <message>
        <source>%1-%2-rigging.pdf</source>
        <comment>a file's name: registration, day</comment>
        <translation>%1-%2-rigging.pdf</translation>
    </message>
    <message>
        <source>In the control check it did not move</source>
        <translation>À l’essai des commandes, elle n’a pas bougé</translation>
    </message>
    <message>
        <source>In the control check it moved the wrong way</source>
        <translation>À l’essai des commandes, elle a bougé dans le mauvais sens</translation>
    </message>
    <message>
        <source>In the control check “no” was answered</source>
        <translation>À l’essai des commandes, la réponse a été « non »</translation>
    </message>
    <message>
        <source>In the control check it could not be seen</source>
        <translation>À l’essai des commandes, elle n’a pas pu être vue</translation>
    </message>
    <message>
        <source>found not secured</source>
        <translation>trouvé non assuré</translation>
    </message>
    <message>
        <source>This record by itself: %1</source>
        <translation>Cette fiche à elle seule : %1</translation>
    </message>
    <message>
        <source>Another first person was named while the paper was typed in. What had been answered before does not count; it was asked again from the look.</source>
        <translation>Pendant la saisie du papier, une autre première personne a été nommée. Ce qui avait été répondu avant ne compte pas ; tout a été redemandé à partir du contrôle visuel.</translation>
    </message>
    <message>
        <source>Another second person was named while the paper was typed in. What had been answered before does not count; it was asked again from the look.</source>
        <translation>Pendant la saisie du papier, une autre deuxième personne a été nommée. Ce qui avait été répondu avant ne compte pas ; tout a été redemandé à partir du contrôle visuel.</translation>
    </message>
</context>
<context>
    <name>RenameWords</name>
    <message>
        <source>%1 has no person named “%2”. Look in “Set up” how the name is written there.</source>
        <translation>%1 n’a personne du nom de « %2 ». Regarder dans « Réglages » comment le nom y est écrit.</translation>
    </message>
    <message>
        <source>%1 has several persons named “%2”. Open it and say first whether they are one and the same, or give one of them another name.</source>
        <translation>%1 a plusieurs personnes du nom de « %2 ». Ouvrir le fichier et dire d’abord si c’est une seule et même personne, ou donner un autre nom à l’une d’elles.</translation>
    </message>
    <message>
        <source>Somebody else in %1 is named “%2”. Choose other letters.</source>
        <translation>Quelqu’un d’autre dans %1 s’appelle « %2 ». Choisir d’autres lettres.</translation>
    </message>
    <message>
        <source>Nothing was written: in the new file nobody could tell any more what was replaced on request and what was changed. Look at these facts first.</source>
        <translation>Rien n’a été écrit : dans le nouveau fichier, plus personne ne pourrait dire ce qui a été remplacé sur demande et ce qui a été modifié. Regarder d’abord ces faits.</translation>
    </message>
    <message>
        <source>The name still stands in %1 itself, in its dated copies, in the files of other laptops, in tables and on prints. A part of the name, or a nickname, was not looked for. Delete what is no longer needed.</source>
        <translation>Le nom est encore dans %1 lui-même, dans ses copies datées, dans les fichiers d’autres ordinateurs, dans des tableaux et sur des impressions. Une partie du nom ou un surnom n’ont pas été cherchés. Supprimer ce qui ne sert plus.</translation>
    </message>
    <message>
        <source>“%1” cannot stand for a name: write one or two capital letters, with a number behind them if you like, such as P 1.</source>
        <translation>« %1 » ne peut pas remplacer un nom : écrire une ou deux lettres capitales, suivies d’un nombre si l’on veut, par exemple P 1.</translation>
    </message>
    <message>
        <source>Made: %1. “%2” stands there for the name, and the person’s telephone number is gone. That the name was replaced, when and by whom, is told there from now on; every other fact is held against the chain as before.</source>
        <translation>Créé : %1. « %2 » y tient lieu du nom, et le numéro de téléphone de la personne a disparu. Que le nom a été remplacé, quand et par qui, y est dit désormais ; tout autre fait est comparé à la chaîne comme avant.</translation>
    </message>
    <message>
        <source>%1 whose words still hold the name or the telephone number, as they were typed: %2. Read them; nothing in them was changed.</source>
        <translation>%1 dont les mots contiennent encore le nom ou le numéro de téléphone, tels qu’ils ont été tapés : %2. Les lire ; rien n’y a été modifié.</translation>
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
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Printed %1 · %2</source>
        <comment>day, program and version</comment>
        <translation>Imprimé %1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>printed when and by what, from which file</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Owner's measurements for assessment by a person entitled to decide. Not an aircraft record, inspection, release or statement of airworthiness. Manuals and directives prevail.</source>
        <translation>Mesures du propriétaire, à évaluer par une personne habilitée à décider. Ni dossier d’aéronef, ni contrôle, ni remise en service, ni déclaration que le planeur peut voler. Les manuels et les consignes priment.</translation>
    </message>
    <message>
        <source>Rigband %1</source>
        <translation>Rigband %1</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>Écrit : %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written, so nothing was written. Look whether its folder is there and may be written to and the disk has room, then try again.</source>
        <translation>%1 ne peut pas être écrit, rien n’a donc été écrit. Vérifier que son dossier existe, qu’on peut y écrire et que le disque a de la place, puis réessayer.</translation>
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
        <translation>Pose</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Bande</translation>
    </message>
    <message>
        <source>Locked gap, mm</source>
        <translation>Écart verrouillé, mm</translation>
    </message>
    <message>
        <source>Number of the rigging</source>
        <translation>Numéro du montage</translation>
    </message>
    <message>
        <source>Last gap, mm; hatched: part-seated was seen there</source>
        <translation>Dernier écart, mm ; hachuré : à demi engagé vu là</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>regardé</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initiales</translation>
    </message>
    <message numerus="yes">
        <source>%1, thin: from %n reading(s).</source>
        <translation>
            <numerusform>%1, mince : d’après %n mesure.</numerusform>
            <numerusform>%1, mince : d’après %n mesures.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, from %n reading(s), frozen.</source>
        <translation>
            <numerusform>%1, d’après %n mesure, figée.</numerusform>
            <numerusform>%1, d’après %n mesures, figée.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, from %n reading(s), not frozen.</source>
        <translation>
            <numerusform>%1, d’après %n mesure, non figée.</numerusform>
            <numerusform>%1, d’après %n mesures, non figée.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mm.</source>
        <comment>scatter now and before</comment>
        <translation>%1 mm.</translation>
    </message>
    <message>
        <source>Chance of a reading outside: %1.</source>
        <translation>Probabilité d’une mesure hors bande : %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n rigging(s) since.</source>
        <translation>
            <numerusform>%n montage depuis.</numerusform>
            <numerusform>%n montages depuis.</numerusform>
        </translation>
    </message>
    <message>
        <source>Outer edges %1, middle %2 mm, scatter %3 mm.</source>
        <translation>Bords extérieurs %1, milieu %2 mm, dispersion %3 mm.</translation>
    </message>
    <message>
        <source>Frozen %1 by %2 and %3: later readings do not move it.</source>
        <translation>Figée le %1 par %2 et %3 : les mesures ultérieures ne la déplacent pas.</translation>
    </message>
    <message>
        <source>Not frozen: further confirmed readings still move it.</source>
        <translation>Non figée : d’autres mesures confirmées la déplacent encore.</translation>
    </message>
    <message>
        <source>First band</source>
        <translation>Première bande</translation>
    </message>
    <message>
        <source>%1, middle %2 mm, from %3 readings of the first fitting.</source>
        <translation>%1, milieu %2 mm, d’après %3 mesures de la première pose.</translation>
    </message>
    <message>
        <source>With the readings in doubt left in it would be %1, from %2 readings.</source>
        <translation>Avec les mesures en doute, elle serait %1, d’après %2 mesures.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>None in the period.</source>
        <translation>Aucune dans la période.</translation>
    </message>
    <message>
        <source>%1 outside</source>
        <translation>%1 hors bande</translation>
    </message>
    <message>
        <source>%1 near the edge</source>
        <translation>%1 près du bord</translation>
    </message>
    <message>
        <source>%1 cannot tell</source>
        <translation>%1 « on ne peut pas dire »</translation>
    </message>
    <message>
        <source>%1 inside</source>
        <translation>%1 dans la bande</translation>
    </message>
    <message>
        <source>%1 without a band to judge them</source>
        <translation>%1 sans bande pour les juger</translation>
    </message>
    <message>
        <source>%1 in the period: %2.</source>
        <comment>readings, by verdict</comment>
        <translation>%1 dans la période : %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them with a gauge in doubt on that day.</source>
        <translation>
            <numerusform>%n d’entre elles avec une jauge en doute ce jour-là.</numerusform>
            <numerusform>%n d’entre elles avec une jauge en doute ce jour-là.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not read at %n rigging(s).</source>
        <translation>
            <numerusform>Pas mesuré à %n montage.</numerusform>
            <numerusform>Pas mesuré à %n montages.</numerusform>
        </translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Mouvement</translation>
    </message>
    <message>
        <source>Without a band neither drift nor scatter nor a chance can be told.</source>
        <translation>Sans bande, on ne peut dire ni dérive, ni dispersion, ni probabilité.</translation>
    </message>
    <message>
        <source>The readings show no movement, which is not to say that nothing moved.</source>
        <translation>Les mesures ne montrent aucun mouvement, ce qui ne veut pas dire que rien n’a bougé.</translation>
    </message>
    <message>
        <source>Whether it moved cannot be told: %1.</source>
        <comment>why</comment>
        <translation>On ne peut pas dire s’il y a eu mouvement : %1.</translation>
    </message>
    <message>
        <source>From rigging %1 on its readings gave an early sign of a movement; they do so no more.</source>
        <translation>À partir du montage %1, ses mesures donnaient un indice précoce de mouvement ; elles n’en donnent plus.</translation>
    </message>
    <message>
        <source>Since rigging %1 its readings give an early sign that the gap grows.</source>
        <translation>Depuis le montage %1, ses mesures donnent un indice précoce que l’écart augmente.</translation>
    </message>
    <message>
        <source>Since rigging %1 its readings give an early sign that the gap shrinks.</source>
        <translation>Depuis le montage %1, ses mesures donnent un indice précoce que l’écart diminue.</translation>
    </message>
    <message>
        <source>Its last readings show no early sign of a movement in this period. A slow drift shows late, and no sign is not to say that nothing moved.</source>
        <translation>Ses dernières mesures ne montrent aucun indice précoce de mouvement dans cette période. Une dérive lente se montre tard, et l’absence d’indice ne veut pas dire que rien n’a bougé.</translation>
    </message>
    <message>
        <source>Scatter</source>
        <translation>Dispersion</translation>
    </message>
    <message>
        <source>Too few readings in this period to compare.</source>
        <translation>Trop peu de mesures dans cette période pour comparer.</translation>
    </message>
    <message>
        <source>At the annual</source>
        <translation>À la visite annuelle</translation>
    </message>
    <message numerus="yes">
        <source>It rests on %n more rigging(s), and on the gap going on as the readings say.</source>
        <translation>
            <numerusform>Cela suppose encore %n montage, et que l’écart continue comme le disent les mesures.</numerusform>
            <numerusform>Cela suppose encore %n montages, et que l’écart continue comme le disent les mesures.</numerusform>
        </translation>
    </message>
    <message>
        <source>No chance can be given: %1.</source>
        <comment>why</comment>
        <translation>Aucune probabilité à donner : %1.</translation>
    </message>
    <message>
        <source>Part-seated</source>
        <translation>À demi engagé</translation>
    </message>
    <message>
        <source>Done to it</source>
        <translation>Travaux faits</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>À regarder</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvert</translation>
    </message>
    <message>
        <source>Near the edge, corrected, struck or left out</source>
        <translation>Près du bord, corrigée, rayée ou écartée</translation>
    </message>
    <message>
        <source>The last %1 of %2; the others are in readings.csv.</source>
        <translation>Les %1 dernières sur %2 ; les autres sont dans readings.csv.</translation>
    </message>
    <message>
        <source>Why it is listed</source>
        <translation>Pourquoi elle figure ici</translation>
    </message>
    <message>
        <source>near the edge, below</source>
        <translation>près du bord, en bas</translation>
    </message>
    <message>
        <source>near the edge, above</source>
        <translation>près du bord, en haut</translation>
    </message>
    <message>
        <source>near the edge</source>
        <translation>près du bord</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrigée</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>corrigée : %1</translation>
    </message>
    <message>
        <source>struck: %1</source>
        <translation>rayée : %1</translation>
    </message>
    <message>
        <source>left out of the band</source>
        <translation>écartée de la bande</translation>
    </message>
    <message>
        <source>left out of the band: %1</source>
        <translation>écartée de la bande : %1</translation>
    </message>
    <message>
        <source>%1, with %2</source>
        <comment>person, gauge</comment>
        <translation>%1, avec %2</translation>
    </message>
    <message>
        <source>Is it the coupling, the leaf set or the person?</source>
        <translation>Est-ce le raccord, le jeu de lames ou la personne ?</translation>
    </message>
    <message>
        <source>riggings %1 to %2</source>
        <translation>montages %1 à %2</translation>
    </message>
    <message>
        <source>rigging %1</source>
        <translation>montage %1</translation>
    </message>
    <message>
        <source>between riggings</source>
        <translation>entre deux montages</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), %1</source>
        <translation>
            <numerusform>%n mesure, %1</numerusform>
            <numerusform>%n mesures, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), from %1 to %2</source>
        <translation>
            <numerusform>%n mesure, de %1 à %2</numerusform>
            <numerusform>%n mesures, de %1 à %2</numerusform>
        </translation>
    </message>
    <message>
        <source>outside, below %1</source>
        <comment>outer edges of a band</comment>
        <translation>hors bande, sous %1</translation>
    </message>
    <message>
        <source>outside, above %1</source>
        <comment>outer edges of a band</comment>
        <translation>hors bande, au-dessus de %1</translation>
    </message>
    <message>
        <source>outside %1</source>
        <comment>outer edges of a band</comment>
        <translation>hors bande %1</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Mesuré par %1.</translation>
    </message>
    <message>
        <source>Read by %1 with %2.</source>
        <translation>Mesuré par %1 avec %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>days, what came of it</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Nothing was shown then: it was entered afterwards.</source>
        <translation>Rien n’a été affiché alors : saisie faite après coup.</translation>
    </message>
    <message>
        <source>Shown then: %1.</source>
        <translation>Affiché alors : %1.</translation>
    </message>
    <message>
        <source>Corrected: %1.</source>
        <translation>Corrigée : %1.</translation>
    </message>
    <message>
        <source>Corrected: %1, “%2.”</source>
        <comment>reading, reason</comment>
        <translation>Corrigée : %1, « %2. »</translation>
    </message>
    <message>
        <source>Still open: nobody has said what was found.</source>
        <translation>Encore ouverte : personne n’a dit ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>Nothing was shown at the time of any of them: they were entered afterwards.</source>
        <translation>Rien n’a été affiché pour aucune d’elles sur le moment : elles ont été saisies après coup.</translation>
    </message>
    <message>
        <source>No question was asked of any of them, and nothing is noted of what was found.</source>
        <translation>Aucune question n’a été posée sur aucune d’elles, et rien n’est noté de ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>No question was asked, and nothing is noted of what was found.</source>
        <translation>Aucune question n’a été posée, et rien n’est noté de ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>Read afterwards, on the same rigging: %1.</source>
        <translation>Mesuré ensuite, au même montage : %1.</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <comment>interval, person</comment>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Noté</translation>
    </message>
    <message>
        <source>Noted: “%1.”</source>
        <translation>Noté : « %1. »</translation>
    </message>
    <message>
        <source>%1: “%2.”</source>
        <comment>gauge, what is noted of it</comment>
        <translation>%1 : « %2. »</translation>
    </message>
    <message>
        <source>Engineer’s report on the control couplings</source>
        <translation>Rapport pour le mécanicien sur les raccords des commandes</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>days, how, found</comment>
        <translation>%1, %2 : %3</translation>
    </message>
    <message>
        <source>Fittings that began, and what changed</source>
        <translation>Poses commencées, et ce qui a changé</translation>
    </message>
    <message>
        <source>Began</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Band before</source>
        <translation>Bande avant</translation>
    </message>
    <message>
        <source>Band after</source>
        <translation>Bande après</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>Bands that readings in doubt were part of</source>
        <translation>Bandes où entraient des mesures en doute</translation>
    </message>
    <message>
        <source>Without them, as judged</source>
        <translation>Sans elles, base des verdicts</translation>
    </message>
    <message>
        <source>With them</source>
        <translation>Avec elles</translation>
    </message>
    <message>
        <source>What was done to the airframe</source>
        <translation>Ce qui a été fait au planeur</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Événement</translation>
    </message>
    <message>
        <source>whole airframe</source>
        <translation>planeur entier</translation>
    </message>
    <message>
        <source>Engineer’s report, %1</source>
        <comment>days</comment>
        <translation>Rapport pour le mécanicien, %1</translation>
    </message>
    <message>
        <source>%1-%2-review.pdf</source>
        <comment>registration, last day; a file's name</comment>
        <translation>%1-%2-review.pdf</translation>
    </message>
    <message>
        <source>What the locked gap of each coupling read in this period, against that coupling’s own past. A band is that past, never a limit, and a gap is one sign only. Manuals, local rules and persons licensed to decide go before anything printed here.</source>
        <translation>Ce que l’écart verrouillé de chaque raccord a donné dans cette période, face au propre passé de ce raccord. Une bande est ce passé, jamais une limite, et un écart n’est qu’un seul indice. Les manuels, les règles locales et les personnes habilitées à décider passent avant tout ce qui est imprimé ici.</translation>
    </message>
    <message>
        <source>Not entered: %1.</source>
        <translation>Non saisi : %1.</translation>
    </message>
    <message>
        <source>Airframe</source>
        <translation>Planeur</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Jurisdiction</source>
        <translation>Droit applicable</translation>
    </message>
    <message>
        <source>Manuals</source>
        <translation>Manuels</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Période</translation>
    </message>
    <message>
        <source>Annual</source>
        <translation>Visite annuelle</translation>
    </message>
    <message>
        <source>Riggings</source>
        <translation>Montages</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Mesuré par</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Mesuré avec</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message numerus="yes">
        <source>%1; about %n more rigging(s) until then at the pace of the year before</source>
        <comment>day, how many</comment>
        <translation>
            <numerusform>%1 ; encore environ %n montage d’ici là au rythme de l’année précédente</numerusform>
            <numerusform>%1 ; encore environ %n montages d’ici là au rythme de l’année précédente</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in the period; the last one has number %2</source>
        <translation>%1 dans la période ; le dernier porte le numéro %2</translation>
    </message>
    <message>
        <source>Method version %1; every verdict here is worked out anew by it.</source>
        <translation>Méthode version %1 ; chaque verdict ici est recalculé avec elle.</translation>
    </message>
    <message>
        <source>%1 at riggings, those that stand</source>
        <translation>%1 aux montages, celles qui valent encore</translation>
    </message>
    <message>
        <source>%1 at riggings, those that stand; %2 of them with a gauge in doubt</source>
        <translation>%1 aux montages, celles qui valent encore ; %2 d’entre elles avec une jauge en doute</translation>
    </message>
    <message>
        <source>No gap was read at a rigging in this period. Nothing can be said of any coupling by its gap.</source>
        <translation>Aucun écart n’a été mesuré à un montage dans cette période. On ne peut rien dire d’aucun raccord par son écart.</translation>
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
        <translation>Ce qui ressort d’abord</translation>
    </message>
    <message>
        <source>In the order to look at, with the page where the details stand. Tick what was looked at.</source>
        <translation>Dans l’ordre où regarder, avec la page où sont les détails. Cocher ce qui a été regardé.</translation>
    </message>
    <message>
        <source>Coupling</source>
        <translation>Raccord</translation>
    </message>
    <message>
        <source>Coupling or matter</source>
        <translation>Raccord ou sujet</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>État</translation>
    </message>
    <message>
        <source>What stands out</source>
        <translation>Ce qui ressort</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Page</translation>
    </message>
    <message>
        <source> · </source>
        <comment>between signs</comment>
        <translation> · </translation>
    </message>
    <message numerus="yes">
        <source>nothing in %n reading(s); one sign only</source>
        <translation>
            <numerusform>rien sur %n mesure ; un seul indice</numerusform>
            <numerusform>rien sur %n mesures ; un seul indice</numerusform>
        </translation>
    </message>
    <message>
        <source>no open question</source>
        <translation>aucune question ouverte</translation>
    </message>
    <message numerus="yes">
        <source>moved otherwise than expected, or not at all: %n time(s), last on %1 (%2)</source>
        <translation>
            <numerusform>a bougé autrement que prévu, ou pas du tout : %n fois, en dernier le %1 (%2)</numerusform>
            <numerusform>a bougé autrement que prévu, ou pas du tout : %n fois, en dernier le %1 (%2)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>“cannot see” answered: %n time(s), last on %1 (%2)</source>
        <translation>
            <numerusform>réponse « pas visible » : %n fois, en dernier le %1 (%2)</numerusform>
            <numerusform>réponse « pas visible » : %n fois, en dernier le %1 (%2)</numerusform>
        </translation>
    </message>
    <message>
        <source>Open question</source>
        <translation>Question ouverte</translation>
    </message>
    <message>
        <source>All couplings</source>
        <translation>Tous les raccords</translation>
    </message>
    <message numerus="yes">
        <source>read high, or low, together on %n day(s)</source>
        <translation>
            <numerusform>mesures hautes, ou basses, ensemble sur %n jour</numerusform>
            <numerusform>mesures hautes, ou basses, ensemble sur %n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s) what was read by or with this one lay high, or low, on all couplings together</source>
        <translation>
            <numerusform>sur %n jour, ce qui a été mesuré par cette personne ou avec cette jauge était haut, ou bas, sur tous les raccords ensemble</numerusform>
            <numerusform>sur %n jours, ce qui a été mesuré par cette personne ou avec cette jauge était haut, ou bas, sur tous les raccords ensemble</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Où le trouver</translation>
    </message>
    <message>
        <source>These parts are left out because the period has nothing for them: %1. That says no more than that.</source>
        <translation>Ces parties sont omises car la période n’a rien pour elles : %1. Cela ne dit rien de plus.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between parts of a report</comment>
        <translation> ; </translation>
    </message>
    <message>
        <source>Open questions</source>
        <translation>Questions ouvertes</translation>
    </message>
    <message>
        <source>Nobody has said yet, by %1, what was found here.</source>
        <translation>Au %1, personne n’a encore dit ce qui a été trouvé ici.</translation>
    </message>
    <message>
        <source>Questions asked, and how they were closed</source>
        <translation>Questions posées, et comment elles ont été closes</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Posée</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Question</translation>
    </message>
    <message>
        <source>Found and done</source>
        <translation>Trouvé et fait</translation>
    </message>
    <message>
        <source>Every reading outside its band or found part-seated</source>
        <translation>Chaque mesure hors de sa bande, ou liaison trouvée à demi engagée</translation>
    </message>
    <message>
        <source>Those that follow on one side share a row. What was corrected or struck has a line through it.</source>
        <translation>Celles qui se suivent d’un même côté partagent une ligne. Ce qui a été corrigé ou rayé est barré d’un trait.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>What was shown, and what came of it</source>
        <translation>Ce qui a été affiché, et ce qui s’ensuivit</translation>
    </message>
    <message>
        <source>Each coupling</source>
        <translation>Chaque raccord</translation>
    </message>
    <message>
        <source>Coloured: the coupling’s own band; grey: outside this period. The chance at the annual holds only if the gap goes on as the readings say.</source>
        <translation>En couleur : la bande propre du raccord ; en gris : hors de cette période. La probabilité à la visite annuelle ne vaut que si l’écart continue comme le disent les mesures.</translation>
    </message>
    <message>
        <source>One bar for each rigging: the middle of all couplings’ readings, each against its own band, in that band’s scatters. When all move together on one day, check the leaf set, read again with another person, and look at each joint: stiff grease leaves plungers short.</source>
        <translation>Une barre par montage : le milieu des mesures de tous les raccords, chacune contre sa propre bande, en dispersions de cette bande. Quand tous bougent ensemble un même jour, contrôler le jeu de lames, mesurer à nouveau avec une autre personne et regarder chaque liaison : une graisse dure empêche les verrous d’aller à fond.</translation>
    </message>
    <message>
        <source>Who measures like whom</source>
        <translation>Qui mesure comme qui</translation>
    </message>
    <message>
        <source>Each one’s readings against the mean of all, the couplings and the days allowed for; under ten readings nothing is said. The spread is that of one’s own readings about what the couplings do.</source>
        <translation>Les mesures de chacun contre la moyenne de toutes, raccords et jours pris en compte ; en dessous de dix mesures, rien n’est dit. L’étalement est celui de ses propres mesures autour de ce que font les raccords.</translation>
    </message>
    <message>
        <source>Leaf set or gauge</source>
        <translation>Jeu de lames ou jauge</translation>
    </message>
    <message>
        <source>Looks and pulls</source>
        <translation>Contrôles visuels et tractions</translation>
    </message>
    <message>
        <source>What was stated at the riggings of the period. Each answer stands in looks.csv beside this report. A column or coupling of which nothing was stated is left out.</source>
        <translation>Ce qui a été déclaré aux montages de la période. Chaque réponse est dans looks.csv à côté de ce rapport. Une colonne ou un raccord dont rien n’a été déclaré est omis.</translation>
    </message>
    <message>
        <source>First person complete</source>
        <translation>Première personne : complet</translation>
    </message>
    <message>
        <source>Second person complete</source>
        <translation>Deuxième personne : complet</translation>
    </message>
    <message>
        <source>Felt, not seen</source>
        <translation>Senti, pas vu</translation>
    </message>
    <message>
        <source>“Cannot see”</source>
        <translation>« Pas visible »</translation>
    </message>
    <message>
        <source>“No”</source>
        <translation>« Non »</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>Interrompu</translation>
    </message>
    <message>
        <source>Control checks and deflections</source>
        <translation>Essais des commandes et débattements</translation>
    </message>
    <message>
        <source>A part-seated joint can go unnoticed in a control check. Each answer stands in control_checks.csv, each figure in deflections.csv.</source>
        <translation>Une liaison à demi engagée peut passer inaperçue à l’essai des commandes. Chaque réponse est dans control_checks.csv, chaque valeur dans deflections.csv.</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Gouverne</translation>
    </message>
    <message>
        <source>Check complete</source>
        <translation>Essai complet</translation>
    </message>
    <message>
        <source>Last measured</source>
        <translation>Dernière mesure</translation>
    </message>
    <message>
        <source>up %1</source>
        <translation>haut %1</translation>
    </message>
    <message>
        <source>down %1</source>
        <translation>bas %1</translation>
    </message>
    <message>
        <source>free play %1</source>
        <translation>jeu %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>figures, day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Leaf sets and gauges, their checks and doubts</source>
        <translation>Jeux de lames et jauges, leurs contrôles et doutes</translation>
    </message>
    <message>
        <source>Checks and doubts</source>
        <translation>Contrôles et doutes</translation>
    </message>
    <message>
        <source>Out of use, and so without a section here; what was read on them stands in readings.csv: %1.</source>
        <translation>Hors service, et donc sans section ici ; ce qui y a été mesuré est dans readings.csv : %1.</translation>
    </message>
    <message>
        <source>Riggings, and what is too little to say</source>
        <translation>Montages, et ce qui est trop peu pour en dire quelque chose</translation>
    </message>
    <message>
        <source>How the figures are worked out</source>
        <translation>Comment les chiffres sont calculés</translation>
    </message>
    <message>
        <source>fewer than %1</source>
        <comment>readings to be expected</comment>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>readings to be expected</comment>
        <translation>environ %1</translation>
    </message>
    <message numerus="yes">
        <source>Of %n reading(s) judged in this period, to be expected with nothing changed: near the edge %1, outside %2.</source>
        <translation>
            <numerusform>Sur %n mesure jugée dans cette période, à attendre si rien n’a changé : près du bord %1, hors bande %2.</numerusform>
            <numerusform>Sur %n mesures jugées dans cette période, à attendre si rien n’a changé : près du bord %1, hors bande %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With %n coupling(s) read at each rigging, that is an outside reading in about one rigging of %1.</source>
        <translation>
            <numerusform>Avec %n raccord mesuré à chaque montage, cela fait une mesure hors bande à environ un montage sur %1.</numerusform>
            <numerusform>Avec %n raccords mesurés à chaque montage, cela fait une mesure hors bande à environ un montage sur %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Every reading and every figure of this report stands in tables, in the folder that was saved beside it.</source>
        <translation>Chaque mesure et chaque chiffre de ce rapport est dans des tableaux, dans le dossier enregistré à côté.</translation>
    </message>
    <message>
        <source>Printed without its appendix: readings near the edge, corrected or struck stand in readings.csv, looks and pulls in looks.csv, control checks and deflections in control_checks.csv and deflections.csv, in the folder that was saved beside it.</source>
        <translation>Imprimé sans son annexe : les mesures près du bord, corrigées ou rayées sont dans readings.csv, les contrôles visuels et essais de traction dans looks.csv, les essais des commandes et débattements dans control_checks.csv et deflections.csv, dans le dossier enregistré à côté.</translation>
    </message>
    <message>
        <source>%1 was written, but not all of its tables: %2 cannot be written. Look whether the folder may be written to and the disk has room, then try again.</source>
        <translation>%1 a été écrit, mais pas tous ses tableaux : impossible d’écrire %2. Vérifier qu’on peut écrire dans le dossier et que le disque a de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Findings of the person entitled to decide. Left blank by the program.</source>
        <translation>Constats de la personne habilitée à décider. Laissé en blanc par le programme.</translation>
    </message>
    <message>
        <source>Name, licence or authority, signature</source>
        <translation>Nom, licence ou habilitation, signature</translation>
    </message>
    <message>
        <source>Place and date</source>
        <translation>Lieu et date</translation>
    </message>
    <message>
        <source>Also read on the same rigging, before or after it: %1. The table did not tell when.</source>
        <translation>Mesuré aussi lors du même montage, avant ou après : %1. Le tableau ne disait pas quand.</translation>
    </message>
    <message>
        <source>Outside: %1.</source>
        <comment>how many of them on which days</comment>
        <translation>Hors bande : %1.</translation>
    </message>
    <message>
        <source>Readings are intervals between the leaf that entered and the one that refused; every figure uses them as intervals. The band is predictive: where the next locked reading of this fitting falls, from confirmed baseline readings alone; where it is frozen, two persons have stated it.
Of the following the first that holds is the verdict. No band yet: fewer than five confirmed readings. Outside: the whole reading lies beyond one edge of the outer band (99.73 %). Cannot tell: its gauge was in doubt, or the gap is no witness on this coupling. Near the edge: the whole reading lies beyond one edge of the inner band (95 %), also where it reaches over the outer edge. Cannot tell: it reaches beyond the outer band, unless it holds the middle of the band and is no wider than the median of the confirmed readings. Inside: every other reading, also one that reaches over an edge of the inner band. A coupling stands as “cannot tell”, too, while a part of its joint could not be seen, unless it is outside. Both contents hold on average over couplings; a band from few readings may hold noticeably more or less.
Movement: one model of all readings of the airframe, in which each coupling stays, makes a step or drifts, and persons, gauges and days have offsets of their own; a movement is told when the chance that the coupling stayed is below 1 in 1000, or below 1 in 20 with an early sign (an EWMA of scores beyond its threshold). Scatter: the last ten readings about the path against all before them.</source>
        <translation>Les mesures sont des intervalles entre la lame qui est entrée et celle qui n’est pas entrée ; chaque chiffre les emploie comme intervalles. La bande est prédictive : où tombe la prochaine mesure verrouillée de cette pose, d’après les seules mesures confirmées de la série de référence ; là où elle est figée, deux personnes l’ont déclaré.
Parmi ce qui suit, le premier qui convient est le verdict. Pas encore de bande : moins de cinq mesures confirmées. Hors bande : la mesure entière se trouve au-delà d’un bord de la bande extérieure (99,73 %). On ne peut pas dire : sa jauge était en doute, ou l’écart n’est pas un témoin sur ce raccord. Près du bord : la mesure entière se trouve au-delà d’un bord de la bande intérieure (95 %), même si elle passe par-dessus le bord extérieur. On ne peut pas dire : elle dépasse la bande extérieure, sauf si elle contient le milieu de la bande et n’est pas plus large que la médiane des mesures confirmées. Dans la bande : toute autre mesure, même si elle passe par-dessus un bord de la bande intérieure. Un raccord est aussi à « on ne peut pas dire » tant qu’une partie de son joint n’a pas pu être vue, sauf s’il est hors bande. Les deux proportions valent en moyenne sur les raccords ; une bande tirée de peu de mesures peut contenir nettement plus ou moins.
Mouvement : un modèle de toutes les mesures du planeur, où chaque raccord ne bouge pas, fait un saut ou dérive, et où personnes, jauges et jours ont leurs propres biais ; un mouvement est annoncé quand la probabilité que le raccord n’ait pas bougé est inférieure à 1 sur 1000, ou inférieure à 1 sur 20 avec un indice précoce (une EWMA de scores au-delà de son seuil). Dispersion : les dix dernières mesures autour du tracé contre toutes celles d’avant.</translation>
    </message>
    <message>
        <source>%1; the pace of riggings is not known yet</source>
        <comment>day</comment>
        <translation>%1 ; le rythme des montages n’est pas encore connu</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>Before the annual</source>
        <translation>Avant la visite</translation>
    </message>
    <message>
        <source>Before the annual that was due on %1</source>
        <translation>Avant la visite annuelle dont l’échéance était le %1</translation>
    </message>
    <message>
        <source>Before the annual of %1</source>
        <translation>Avant la visite annuelle du %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>Since the last annual: %1 to %2</source>
        <comment>days</comment>
        <translation>Depuis la dernière visite annuelle : %1 au %2</translation>
    </message>
    <message>
        <source>The whole file: %1 to %2</source>
        <comment>days</comment>
        <translation>Tout le fichier : %1 au %2</translation>
    </message>
    <message>
        <source>Annual to annual: %1 to %2</source>
        <comment>days</comment>
        <translation>D’une visite annuelle à l’autre : %1 au %2</translation>
    </message>
    <message>
        <source>Up to the first annual: %1 to %2</source>
        <comment>days</comment>
        <translation>Jusqu’à la première visite annuelle : %1 au %2</translation>
    </message>
    <message numerus="yes">
        <source>In these days: %Ln rigging(s).</source>
        <translation>
            <numerusform>Dans ces jours : %Ln montage.</numerusform>
            <numerusform>Dans ces jours : %Ln montages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Since the last annual: %Ln rigging(s).</source>
        <translation>
            <numerusform>Depuis la dernière visite annuelle : %Ln montage.</numerusform>
            <numerusform>Depuis la dernière visite annuelle : %Ln montages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From annual to annual: %Ln rigging(s).</source>
        <translation>
            <numerusform>D’une visite annuelle à l’autre : %Ln montage.</numerusform>
            <numerusform>D’une visite annuelle à l’autre : %Ln montages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In the whole file: %Ln rigging(s).</source>
        <translation>
            <numerusform>Dans tout le fichier : %Ln montage.</numerusform>
            <numerusform>Dans tout le fichier : %Ln montages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to the first annual: %Ln rigging(s).</source>
        <translation>
            <numerusform>Jusqu’à la première visite annuelle : %Ln montage.</numerusform>
            <numerusform>Jusqu’à la première visite annuelle : %Ln montages.</numerusform>
        </translation>
    </message>
    <message>
        <source>What the first person found is hidden here: %1. The second person works without seeing it. It is shown when they have kept a reading of their own, or have looked and pulled without one.</source>
        <comment>couplings</comment>
        <translation>Ce que la première personne a trouvé est caché ici : %1. La deuxième personne travaille sans le voir. C’est affiché quand elle a conservé sa propre mesure, ou fait sans mesure le contrôle visuel et l’essai de traction.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between couplings</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>There is no reading.</source>
        <translation>Il n’y a aucune mesure.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s).</source>
        <translation>
            <numerusform>%Ln mesure.</numerusform>
            <numerusform>%Ln mesures.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Read by %n person(s).</source>
        <translation>
            <numerusform>Mesuré par %n personne.</numerusform>
            <numerusform>Mesuré par %n personnes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Read with %n leaf set(s).</source>
        <translation>
            <numerusform>Mesuré avec %n jeu de lames.</numerusform>
            <numerusform>Mesuré avec %n jeux de lames.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Read with %n gauge(s).</source>
        <translation>
            <numerusform>Mesuré avec %n jauge.</numerusform>
            <numerusform>Mesuré avec %n jauges.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not read with in this period.</source>
        <translation>N’a servi à aucune mesure dans cette période.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) in this period.</source>
        <translation>
            <numerusform>%Ln mesure dans cette période.</numerusform>
            <numerusform>%Ln mesures dans cette période.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) in this period, %1 of them in doubt: those do not count for band, drift and scatter.</source>
        <translation>
            <numerusform>%Ln mesure dans cette période, dont %1 en doute : celles-là ne comptent pas pour la bande, la dérive et la dispersion.</numerusform>
            <numerusform>%Ln mesures dans cette période, dont %1 en doute : celles-là ne comptent pas pour la bande, la dérive et la dispersion.</numerusform>
        </translation>
    </message>
    <message>
        <source>No check of it is noted.</source>
        <translation>Aucun contrôle n’est noté.</translation>
    </message>
    <message>
        <source>Not checked in this period; last on %1: %2</source>
        <comment>day, what was found</comment>
        <translation>Pas de contrôle dans cette période ; le dernier le %1 : %2</translation>
    </message>
    <message numerus="yes">
        <source>%n check(s), the last on %1: %2</source>
        <comment>day, what was found</comment>
        <translation>
            <numerusform>%n contrôle, le dernier le %1 : %2</numerusform>
            <numerusform>%n contrôles, le dernier le %1 : %2</numerusform>
        </translation>
    </message>
    <message>
        <source>The check of %1 put it in doubt from %2 on: %3</source>
        <translation>Mis en doute à partir du %2 par le contrôle du %1 : %3</translation>
    </message>
    <message>
        <source>In doubt from %1 on, until a later check finds it usable.</source>
        <translation>En doute à partir du %1, jusqu’à ce qu’un contrôle ultérieur trouve la jauge utilisable.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>%1, %2: new fitting.</source>
        <comment>day, coupling</comment>
        <translation>%1, %2 : nouvelle pose.</translation>
    </message>
    <message>
        <source>%1, %2: new fitting, %3.</source>
        <comment>day, coupling, reason</comment>
        <translation>%1, %2 : nouvelle pose, %3.</translation>
    </message>
    <message>
        <source>Its band: %1.</source>
        <translation>Sa bande : %1.</translation>
    </message>
    <message>
        <source>Band before: %1.</source>
        <translation>Bande avant : %1.</translation>
    </message>
    <message>
        <source>Band after: %1.</source>
        <translation>Bande après : %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day, what was done</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>day, coupling, what was done</comment>
        <translation>%1, %2 : %3</translation>
    </message>
    <message>
        <source>No new fitting, and nothing noted as done.</source>
        <translation>Aucune nouvelle pose, et rien de noté comme fait.</translation>
    </message>
    <message>
        <source>%1 of %2 riggings without a reading</source>
        <translation>%1 sur %2 montages sans mesure</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>coupling, what is missing</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation> ; </translation>
    </message>
    <message>
        <source>Every coupling with a gap has a band and was read at every rigging.</source>
        <translation>Chaque raccord qui a un écart a une bande et a été mesuré à chaque montage.</translation>
    </message>
    <message>
        <source>Every coupling has a band and was read at every rigging.</source>
        <translation>Chaque raccord a une bande et a été mesuré à chaque montage.</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n week(s))</source>
        <comment>day of the rigging after a layoff</comment>
        <translation>
            <numerusform>%1 (%n semaine)</numerusform>
            <numerusform>%1 (%n semaines)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>First rigging of the year: %1, after %n week(s).</source>
        <translation>
            <numerusform>Premier montage de l’année : %1, après %n semaine.</numerusform>
            <numerusform>Premier montage de l’année : %1, après %n semaines.</numerusform>
        </translation>
    </message>
    <message>
        <source>First riggings after a layoff, the longest first: %1.</source>
        <translation>Premiers montages après une pause, la plus longue d’abord : %1.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between riggings</comment>
        <translation> ; </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) written on paper and typed in afterwards: %1.</source>
        <comment>days</comment>
        <translation>
            <numerusform>%n fiche écrite sur papier et saisie après coup : %1.</numerusform>
            <numerusform>%n fiches écrites sur papier et saisies après coup : %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>No rigging in this period.</source>
        <translation>Aucun montage dans cette période.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln rigging(s) in this period; the last has number %1.</source>
        <translation>
            <numerusform>%Ln montage dans cette période ; le dernier porte le numéro %1.</numerusform>
            <numerusform>%Ln montages dans cette période ; le dernier porte le numéro %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) closed with something not done.</source>
        <translation>
            <numerusform>%n fiche close avec quelque chose de non fait.</numerusform>
            <numerusform>%n fiches closes avec quelque chose de non fait.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) not closed.</source>
        <translation>
            <numerusform>%n fiche non close.</numerusform>
            <numerusform>%n fiches non closes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) abandoned and begun anew, not counted.</source>
        <translation>
            <numerusform>%n fiche abandonnée et recommencée, non comptée.</numerusform>
            <numerusform>%n fiches abandonnées et recommencées, non comptées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) gone through again without being taken apart, not counted.</source>
        <translation>
            <numerusform>Repassé %n fois en revue sans démontage, non compté.</numerusform>
            <numerusform>Repassé %n fois en revue sans démontage, non compté.</numerusform>
        </translation>
    </message>
    <message>
        <source>About %1 more until the annual, at the pace of the last year.</source>
        <translation>Montages à venir jusqu’à la visite annuelle : environ %1, au rythme de la dernière année.</translation>
    </message>
    <message numerus="yes">
        <source>That was on every coupling, on %n day(s): %1.</source>
        <translation>
            <numerusform>C’était sur tous les raccords, %n jour : %1.</numerusform>
            <numerusform>C’était sur tous les raccords, %n jours : %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>That was on nearly every coupling, on %n day(s): %1.</source>
        <translation>
            <numerusform>C’était sur presque tous les raccords, %n jour : %1.</numerusform>
            <numerusform>C’était sur presque tous les raccords, %n jours : %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>All read high on one day and low on another, and neither a gauge nor a person explains it.</source>
        <translation>Toutes les mesures étaient plus hautes un jour et plus basses un autre, et ni une jauge ni une personne ne l’explique.</translation>
    </message>
    <message>
        <source>All read %1 mm high, and neither a gauge nor a person explains it.</source>
        <translation>Toutes les mesures étaient plus hautes de %1 mm, et ni une jauge ni une personne ne l’explique.</translation>
    </message>
    <message>
        <source>All read %1 mm low, and neither a gauge nor a person explains it.</source>
        <translation>Toutes les mesures étaient plus basses de %1 mm, et ni une jauge ni une personne ne l’explique.</translation>
    </message>
    <message>
        <source>%1 read high on one day and low on another.</source>
        <comment>gauge or person</comment>
        <translation>%1 : mesures plus hautes un jour, plus basses un autre.</translation>
    </message>
    <message>
        <source>The gauge is in doubt from %1 on: these readings do not count for band, drift and scatter.</source>
        <translation>La jauge est en doute à partir du %1 : ces mesures ne comptent pas pour la bande, la dérive et la dispersion.</translation>
    </message>
    <message>
        <source>Look at each joint all the same.</source>
        <translation>Regarder quand même chaque liaison.</translation>
    </message>
    <message>
        <source>Part of it may be that %1 usually reads a little high or low.</source>
        <translation>Une part peut venir d’une habitude de mesurer un peu plus haut ou plus bas (%1).</translation>
    </message>
    <message>
        <source>No rigging in this period has a reading that can be held against a band.</source>
        <translation>Aucun montage de cette période n’a de mesure que l’on puisse comparer à une bande.</translation>
    </message>
    <message>
        <source>On no rigging day did all couplings read high, or low, together.</source>
        <translation>Aucun jour de montage où tous les raccords aient été ensemble plus hauts, ou plus bas.</translation>
    </message>
    <message>
        <source>too few to tell</source>
        <translation>trop peu de mesures</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>on ne peut pas dire</translation>
    </message>
    <message numerus="yes">
        <source>%1: %Ln reading(s).</source>
        <comment>who or what</comment>
        <translation>
            <numerusform>%1 : %Ln mesure.</numerusform>
            <numerusform>%1 : %Ln mesures.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody read anything here that can be held against a band.</source>
        <translation>Personne n’a mesuré ici quoi que ce soit que l’on puisse comparer à une bande.</translation>
    </message>
    <message>
        <source>One person read everything: there is nobody to compare with.</source>
        <translation>Une seule personne a tout mesuré : il n’y a personne à qui comparer.</translation>
    </message>
    <message>
        <source>Who reads high or low cannot be told.</source>
        <translation>On ne peut pas dire qui mesure plus haut ou plus bas.</translation>
    </message>
    <message>
        <source>Nobody reads clearly higher or lower than the others.</source>
        <translation>Personne ne mesure nettement plus haut ou plus bas que les autres.</translation>
    </message>
    <message>
        <source>Measure together once before the next rigging.</source>
        <translation>Mesurer une fois ensemble avant le prochain montage.</translation>
    </message>
    <message>
        <source>Everything was read with one gauge: there is none to compare with.</source>
        <translation>Tout a été mesuré avec une seule jauge : il n’y en a pas d’autre à comparer.</translation>
    </message>
    <message>
        <source>Which gauge reads high or low cannot be told.</source>
        <translation>On ne peut pas dire quelle jauge mesure plus haut ou plus bas.</translation>
    </message>
    <message>
        <source>No gauge reads clearly higher or lower than the others.</source>
        <translation>Aucune jauge ne mesure nettement plus haut ou plus bas que les autres.</translation>
    </message>
    <message>
        <source>Check the set against a micrometer.</source>
        <translation>Contrôler le jeu de lames au micromètre.</translation>
    </message>
    <message>
        <source>Each person kept to one gauge, so a person cannot be told from a gauge.</source>
        <translation>Chaque personne a gardé une seule jauge : on ne peut pas distinguer la personne de la jauge.</translation>
    </message>
    <message>
        <source>Persons, gauges and days cannot be told apart.</source>
        <translation>On ne peut pas distinguer les personnes, les jauges et les jours.</translation>
    </message>
    <message>
        <source>one question open: %1</source>
        <translation>une question ouverte : %1</translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) open</source>
        <translation>
            <numerusform>%n question ouverte</numerusform>
            <numerusform>%n questions ouvertes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>scatter %1 times what it was before, in the last %n reading(s)</source>
        <translation>
            <numerusform>dispersion %1 fois celle d’avant, sur la dernière mesure (%n)</numerusform>
            <numerusform>dispersion %1 fois celle d’avant, sur les %n dernières mesures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside its band, not wholly so once the usual offset of the person or gauge is taken off</source>
        <translation>
            <numerusform>%n mesure hors de la bande, mais pas entièrement une fois ôté le biais habituel de la personne ou de la jauge</numerusform>
            <numerusform>%n mesures hors de la bande, mais pas entièrement une fois ôté le biais habituel de la personne ou de la jauge</numerusform>
        </translation>
    </message>
    <message>
        <source>last reading near the edge</source>
        <translation>dernière mesure près du bord</translation>
    </message>
    <message>
        <source>the gap cannot tell locked from part-seated</source>
        <translation>l’écart ne distingue pas « verrouillé » de « à demi engagé »</translation>
    </message>
    <message>
        <source>no reading in this period</source>
        <translation>aucune mesure dans cette période</translation>
    </message>
    <message numerus="yes">
        <source>no reading at %n rigging(s)</source>
        <translation>
            <numerusform>%n montage sans mesure</numerusform>
            <numerusform>%n montages sans mesure</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>thin band, from %n reading(s)</source>
        <translation>
            <numerusform>bande mince, de %n mesure</numerusform>
            <numerusform>bande mince, de %n mesures</numerusform>
        </translation>
    </message>
    <message>
        <source>the gap grew from about rigging %1 to about rigging %2, and no more since</source>
        <translation>l’écart a augmenté à peu près du montage %1 au montage %2, et n’augmente plus depuis</translation>
    </message>
    <message>
        <source>the gap shrank from about rigging %1 to about rigging %2, and no more since</source>
        <translation>l’écart a diminué à peu près du montage %1 au montage %2, et ne diminue plus depuis</translation>
    </message>
    <message>
        <source>the gap became %1 mm larger by a step at about rigging %2</source>
        <translation>l’écart est devenu plus grand de %1 mm par un saut vers le montage %2</translation>
    </message>
    <message>
        <source>the gap became %1 mm smaller by a step at about rigging %2</source>
        <translation>l’écart est devenu plus petit de %1 mm par un saut vers le montage %2</translation>
    </message>
    <message>
        <source>the gap has been growing since about rigging %1</source>
        <translation>l’écart augmente depuis le montage %1 environ</translation>
    </message>
    <message>
        <source>the gap has been shrinking since about rigging %1</source>
        <translation>l’écart diminue depuis le montage %1 environ</translation>
    </message>
    <message>
        <source>the gap has been larger since about rigging %1; whether by a step or a drift cannot be told yet</source>
        <translation>l’écart est plus grand depuis le montage %1 environ ; saut ou dérive, on ne peut pas encore le dire</translation>
    </message>
    <message>
        <source>the gap has been smaller since about rigging %1; whether by a step or a drift cannot be told yet</source>
        <translation>l’écart est plus petit depuis le montage %1 environ ; saut ou dérive, on ne peut pas encore le dire</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside its band</source>
        <translation>
            <numerusform>%n mesure hors de la bande</numerusform>
            <numerusform>%n mesures hors de la bande</numerusform>
        </translation>
    </message>
    <message>
        <source>once found part-seated</source>
        <translation>trouvé une fois à demi engagé</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) found part-seated</source>
        <translation>
            <numerusform>trouvé %n fois à demi engagé</numerusform>
            <numerusform>trouvé %n fois à demi engagé</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between signs</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>the other side moves the same way</source>
        <translation>l’autre côté évolue dans le même sens</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>sign, mark of what is told once below</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 scatters %2 times as much as before.</source>
        <translation>%1 : dispersion %2 fois celle d’avant.</translation>
    </message>
    <message>
        <source>%1: %2, open since %3.</source>
        <comment>coupling, what is asked, day</comment>
        <translation>%1 : %2, ouverte depuis le %3.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>coupling, what stands out</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside the band fit this change; each was to be looked at all the same.</source>
        <translation>
            <numerusform>%n mesure hors de la bande s’accorde avec ce changement ; il fallait quand même aller voir.</numerusform>
            <numerusform>%n mesures hors de la bande s’accordent avec ce changement ; il fallait quand même aller voir à chacune.</numerusform>
        </translation>
    </message>
    <message>
        <source>The same circuit on the other side moves the same way, by itself.</source>
        <translation>Le même circuit de l’autre côté évolue dans le même sens, de lui-même.</translation>
    </message>
    <message>
        <source>Nobody has said yet what was found.</source>
        <translation>Personne n’a encore dit ce qui a été trouvé.</translation>
    </message>
    <message numerus="yes">
        <source>%n more open question(s) on it.</source>
        <translation>
            <numerusform>Encore %n question ouverte à son sujet.</numerusform>
            <numerusform>Encore %n questions ouvertes à son sujet.</numerusform>
        </translation>
    </message>
    <message>
        <source>No gap was read in this period.</source>
        <translation>Aucun écart n’a été mesuré dans cette période.</translation>
    </message>
    <message numerus="yes">
        <source>This is said of %n reading(s), all of %1.</source>
        <translation>
            <numerusform>Cela est dit de %n mesure, du %1.</numerusform>
            <numerusform>Cela est dit de %n mesures, toutes du %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This is said of %n reading(s), from %1 to %2.</source>
        <translation>
            <numerusform>Cela est dit de %n mesure, du %1 au %2.</numerusform>
            <numerusform>Cela est dit de %n mesures, du %1 au %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>The readings of this period show no drift that still goes on, no step and no larger scatter; that is not to say that nothing moved.</source>
        <translation>Les mesures de cette période ne montrent ni dérive qui dure encore, ni saut, ni dispersion plus grande ; cela ne veut pas dire que rien n’a bougé.</translation>
    </message>
    <message>
        <source>The readings of this period show no drift, no step and no larger scatter; that is not to say that nothing moved.</source>
        <translation>Les mesures de cette période ne montrent ni dérive, ni saut, ni dispersion plus grande ; cela ne veut pas dire que rien n’a bougé.</translation>
    </message>
    <message>
        <source>No reading lay outside its band in this period.</source>
        <translation>Aucune mesure n’était hors de sa bande dans cette période.</translation>
    </message>
    <message>
        <source>No question is open.</source>
        <translation>Aucune question n’est ouverte.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing stands out on %n coupling(s).</source>
        <translation>
            <numerusform>Rien ne ressort sur %n raccord.</numerusform>
            <numerusform>Rien ne ressort sur %n raccords.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing can be said of %1: no band, or no reading.</source>
        <translation>Raccords dont on ne peut rien dire (pas de bande, ou pas de mesure) : %1.</translation>
    </message>
    <message>
        <source>No gap to measure: %1.</source>
        <translation>Pas d’écart à mesurer : %1.</translation>
    </message>
    <message>
        <source>Each gap is one sign only.</source>
        <translation>Chaque écart n’est qu’un indice.</translation>
    </message>
    <message>
        <source>A band is a coupling’s own past, never a limit. The gap is one sign only: look, pull and control check stand beside it. These are an owner’s measurements, for assessment by a person entitled to decide.</source>
        <translation>Une bande est le propre passé d’un raccord, jamais une limite. L’écart n’est qu’un indice : le contrôle visuel, l’essai de traction et l’essai des commandes sont à côté. Ce sont les mesures d’un propriétaire, à évaluer par une personne habilitée.</translation>
    </message>
    <message>
        <source>a coupling</source>
        <translation>un raccord</translation>
    </message>
    <message>
        <source>somebody not named</source>
        <translation>une personne non nommée</translation>
    </message>
    <message>
        <source>a gauge not known</source>
        <translation>jauge inconnue</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Mesuré par %1.</translation>
    </message>
    <message>
        <source>Read by %1 with %2.</source>
        <translation>Mesuré par %1 avec %2.</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>coupling, day, reading</comment>
        <translation>%1, %2 : %3</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <comment>day, reading</comment>
        <translation>Le %1 : %2.</translation>
    </message>
    <message>
        <source>The farthest on %1: %2.</source>
        <comment>day, reading</comment>
        <translation>La plus éloignée le %1 : %2.</translation>
    </message>
    <message>
        <source>At least %1 mm beyond the outer edge.</source>
        <translation>Au moins %1 mm au-delà du bord extérieur.</translation>
    </message>
    <message>
        <source>Beyond the outer edge: the nearest by at least %1 mm, the farthest by at least %2 mm.</source>
        <translation>Au-delà du bord extérieur : la plus proche d’au moins %1 mm, la plus éloignée d’au moins %2 mm.</translation>
    </message>
    <message>
        <source>Less what this person usually reads high or low, it would not lie wholly outside. That does not show that the joint was locked.</source>
        <translation>Sans ce que cette personne mesure d’habitude en plus ou en moins, la mesure ne serait pas entièrement hors de la bande. Cela ne montre pas que la liaison était verrouillée.</translation>
    </message>
    <message>
        <source>Less what is usually read high or low with this gauge, it would not lie wholly outside. That does not show that the joint was locked.</source>
        <translation>Sans ce que cette jauge mesure d’habitude en plus ou en moins, la mesure ne serait pas entièrement hors de la bande. Cela ne montre pas que la liaison était verrouillée.</translation>
    </message>
    <message>
        <source>Less what this person and this gauge usually add, it would not lie wholly outside. That does not show that the joint was locked.</source>
        <translation>Sans ce que cette personne et cette jauge ajoutent d’habitude, la mesure ne serait pas entièrement hors de la bande. Cela ne montre pas que la liaison était verrouillée.</translation>
    </message>
    <message>
        <source>It fits a change of this gap; why the gap moved, the readings cannot tell.</source>
        <translation>Cela s’accorde avec un changement de cet écart ; pourquoi l’écart a bougé, les mesures ne peuvent pas le dire.</translation>
    </message>
    <message>
        <source>It fits the step told of this coupling; why the gap moved, the readings cannot tell.</source>
        <translation>Cela s’accorde avec le saut signalé pour ce raccord ; pourquoi l’écart a bougé, les mesures ne peuvent pas le dire.</translation>
    </message>
    <message>
        <source>It fits the drift told of this coupling; why the gap moved, the readings cannot tell.</source>
        <translation>Cela s’accorde avec la dérive signalée pour ce raccord ; pourquoi l’écart a bougé, les mesures ne peuvent pas le dire.</translation>
    </message>
    <message>
        <source>It fits the step or drift told of this coupling; why the gap moved, the readings cannot tell.</source>
        <translation>Cela s’accorde avec le saut ou la dérive signalés pour ce raccord ; pourquoi l’écart a bougé, les mesures ne peuvent pas le dire.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n reading(s) outside, %2 to %3</source>
        <comment>coupling, first day, last day</comment>
        <translation>
            <numerusform>%1 : %n mesure hors bande, du %2 au %3</numerusform>
            <numerusform>%1 : %n mesures hors bande, du %2 au %3</numerusform>
        </translation>
    </message>
    <message>
        <source>All of them below its band.</source>
        <translation>Toutes sous sa bande.</translation>
    </message>
    <message>
        <source>All of them above its band.</source>
        <translation>Toutes au-dessus de sa bande.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more, each of them in the report.</source>
        <translation>
            <numerusform>Et encore %n, à lire dans le rapport.</numerusform>
            <numerusform>Et encore %n, toutes à lire dans le rapport.</numerusform>
        </translation>
    </message>
    <message>
        <source>Rigging %1.</source>
        <translation>Montage %1.</translation>
    </message>
    <message>
        <source>Nothing was shown then: it was entered afterwards.</source>
        <translation>Rien n’a été affiché alors : saisie faite après coup.</translation>
    </message>
    <message>
        <source>Shown then: %1.</source>
        <translation>Affiché alors : %1.</translation>
    </message>
    <message>
        <source>Still open: nobody has said what was found.</source>
        <translation>Encore ouverte : personne n’a dit ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>No question was asked, and nothing is noted of what was found.</source>
        <translation>Aucune question n’a été posée, et rien n’est noté de ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>Found part-seated.</source>
        <translation>Trouvé à demi engagé.</translation>
    </message>
    <message>
        <source>Below its band, outer edges %1.</source>
        <translation>Sous sa bande, bords extérieurs %1.</translation>
    </message>
    <message>
        <source>Above its band, outer edges %1.</source>
        <translation>Au-dessus de sa bande, bords extérieurs %1.</translation>
    </message>
    <message>
        <source>Noted on %1: found part-seated.</source>
        <translation>Noté le %1 : trouvé à demi engagé.</translation>
    </message>
    <message>
        <source>Noted on %1: corrected to %2.</source>
        <translation>Noté le %1 : corrigée en %2.</translation>
    </message>
    <message>
        <source>“%1.”</source>
        <comment>the reason, as it was noted</comment>
        <translation>« %1. »</translation>
    </message>
    <message>
        <source>Struck on %1: “%2.”</source>
        <comment>day: reason</comment>
        <translation>Rayée le %1 : « %2. »</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <comment>interval, person</comment>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>Read afterwards, on the same rigging: %1.</source>
        <translation>Mesuré ensuite, au même montage : %1.</translation>
    </message>
    <message>
        <source>No reading of a rigging in this period lay outside its band or was found part-seated. That is one sign only.</source>
        <translation>Aucune mesure d’un montage de cette période n’était hors de sa bande, et aucune n’a été trouvée à demi engagée. Ce n’est qu’un indice.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, who looked again.</source>
        <translation>Close le %1 par %2, après avoir regardé à nouveau.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2. Found: %3. Done: %4.</source>
        <translation>Close le %1 par %2. Trouvé : %3. Fait : %4.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, who had asked it. Found: %3. Done: %4.</source>
        <translation>Close le %1 par %2, qui l’avait posée. Trouvé : %3. Fait : %4.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, whose own reading or answer had opened it. Found: %3. Done: %4.</source>
        <translation>Close le %1 par %2, dont la propre mesure ou réponse l’avait ouverte. Trouvé : %3. Fait : %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>movement, its interval</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>step %1</source>
        <comment>signed mm</comment>
        <translation>saut %1</translation>
    </message>
    <message>
        <source>drift that ended, %1</source>
        <comment>signed mm per 100</comment>
        <translation>dérive terminée, %1</translation>
    </message>
    <message>
        <source>drift %1</source>
        <comment>signed mm per 100</comment>
        <translation>dérive %1</translation>
    </message>
    <message>
        <source>step or drift, larger</source>
        <translation>saut ou dérive, plus grand</translation>
    </message>
    <message>
        <source>step or drift, smaller</source>
        <translation>saut ou dérive, plus petit</translation>
    </message>
    <message>
        <source>since rigging %1</source>
        <translation>depuis le montage %1</translation>
    </message>
    <message>
        <source>%1 to %2, since rigging %3</source>
        <comment>ends of an interval</comment>
        <translation>%1 à %2, depuis le montage %3</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>scatter now, before</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>was %1</source>
        <comment>scatter before</comment>
        <translation>avant %1</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <comment>a chance</comment>
        <translation>moins de 1 sur 100</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <comment>a chance</comment>
        <translation>plus de 99 sur 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <comment>a chance</comment>
        <translation>%1 sur 100</translation>
    </message>
    <message>
        <source>none told</source>
        <translation>aucun signalé</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>pas encore de bande</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>too few readings</source>
        <translation>trop peu de mesures</translation>
    </message>
    <message>
        <source>annual overdue</source>
        <translation>visite dépassée</translation>
    </message>
    <message>
        <source>no annual date</source>
        <translation>pas de date de visite</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>pas d’écart à mesurer</translation>
    </message>
    <message>
        <source>no band yet: no fitting has begun</source>
        <translation>pas encore de bande : aucune pose commencée</translation>
    </message>
    <message>
        <source>no band yet: no confirmed reading</source>
        <translation>pas encore de bande : aucune mesure confirmée</translation>
    </message>
    <message numerus="yes">
        <source>no band yet: %n confirmed reading(s)</source>
        <translation>
            <numerusform>pas encore de bande : %n mesure confirmée</numerusform>
            <numerusform>pas encore de bande : %n mesures confirmées</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mm (95 % interval %2 to %3)</source>
        <comment>size of a step</comment>
        <translation>%1 mm (intervalle à 95 % de %2 à %3)</translation>
    </message>
    <message>
        <source>%1 mm per %2 riggings (95 % interval %3 to %4)</source>
        <comment>rate of a drift</comment>
        <translation>%1 mm pour %2 montages (intervalle à 95 % de %3 à %4)</translation>
    </message>
    <message>
        <source>The readings put its beginning at rigging %1, %2.</source>
        <comment>number, day</comment>
        <translation>Les mesures placent son début au montage %1, %2.</translation>
    </message>
    <message>
        <source>It began at about rigging %1 (%2); 95 in 100 that it was from rigging %3 (%5) to rigging %4 (%6).</source>
        <comment>number, day, the ends as numbers and as days</comment>
        <translation>Début vers le montage %1 (%2) ; avec 95 chances sur 100, entre le montage %3 (%5) et le montage %4 (%6).</translation>
    </message>
    <message>
        <source>As a step it is %1, as a drift %2.</source>
        <translation>Comme saut : %1, comme dérive : %2.</translation>
    </message>
    <message>
        <source>The step is %1.</source>
        <comment>size</comment>
        <translation>Le saut est de %1.</translation>
    </message>
    <message>
        <source>The drift was %1.</source>
        <comment>rate</comment>
        <translation>La dérive était de %1.</translation>
    </message>
    <message>
        <source>The drift is %1.</source>
        <comment>rate</comment>
        <translation>La dérive est de %1.</translation>
    </message>
    <message>
        <source>It has ended at about rigging %1, %2.</source>
        <comment>number, day</comment>
        <translation>Elle s’est arrêtée vers le montage %1, %2.</translation>
    </message>
    <message>
        <source>Apart from the scatter between riggings, the gap came %1 mm above the middle of the band in this period, at the farthest; single readings may lie farther off.</source>
        <translation>Mise à part la dispersion d’un montage à l’autre, l’écart est allé au plus loin à %1 mm au-dessus du milieu de la bande dans cette période ; certaines mesures peuvent être plus loin.</translation>
    </message>
    <message>
        <source>Apart from the scatter between riggings, the gap came %1 mm below the middle of the band in this period, at the farthest; single readings may lie farther off.</source>
        <translation>Mise à part la dispersion d’un montage à l’autre, l’écart est allé au plus loin à %1 mm au-dessous du milieu de la bande dans cette période ; certaines mesures peuvent être plus loin.</translation>
    </message>
    <message>
        <source>Going on like this, the chance that a reading at the annual of %1, at about rigging %2, lies outside the band is %3.</source>
        <translation>Si cela continue ainsi, la probabilité qu’une mesure à la visite annuelle du %1, vers le montage %2, soit hors de la bande est : %3.</translation>
    </message>
    <message numerus="yes">
        <source>The last %n reading(s), taken together, scatter by %1 mm, those of this fitting before them by %2 mm.</source>
        <translation>
            <numerusform>La dernière mesure (%n) se disperse de %1 mm, celles d’avant de cette pose de %2 mm.</numerusform>
            <numerusform>Les %n dernières mesures, prises ensemble, se dispersent de %1 mm, celles d’avant de cette pose de %2 mm.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Since when is not told by this.</source>
        <comment>scatter compared</comment>
        <translation>%1 Depuis quand, cela ne le dit pas.</translation>
    </message>
    <message>
        <source>An early sign: the last readings lie rather high on this coupling’s band; they are too few yet to tell whether the gap moves. Look closely, whatever today’s reading says.</source>
        <translation>Un indice précoce : les dernières mesures sont plutôt hautes par rapport à la bande de ce raccord ; elles sont encore trop peu nombreuses pour dire si l’écart bouge. Regarder de près, quoi que dise la mesure d’aujourd’hui.</translation>
    </message>
    <message>
        <source>An early sign: the last readings lie rather low on this coupling’s band; they are too few yet to tell whether the gap moves. Look closely, whatever today’s reading says.</source>
        <translation>Un indice précoce : les dernières mesures sont plutôt basses par rapport à la bande de ce raccord ; elles sont encore trop peu nombreuses pour dire si l’écart bouge. Regarder de près, quoi que dise la mesure d’aujourd’hui.</translation>
    </message>
    <message>
        <source>Also read on the same rigging, before or after it: %1. The table did not tell when.</source>
        <translation>Mesuré aussi lors du même montage, avant ou après : %1. Le tableau ne disait pas quand.</translation>
    </message>
    <message>
        <source>once found not secured</source>
        <translation>trouvé une fois non assuré</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) found not secured</source>
        <translation>
            <numerusform>trouvé %n fois non assuré</numerusform>
            <numerusform>trouvé %n fois non assuré</numerusform>
        </translation>
    </message>
    <message>
        <source>Found not secured.</source>
        <translation>Trouvé non assuré.</translation>
    </message>
    <message>
        <source>Noted on %1: found not secured.</source>
        <translation>Noté le %1 : trouvé non assuré.</translation>
    </message>
    <message numerus="yes">
        <source>%1 read %2 mm high: the middle of all couplings, on %n day(s).</source>
        <comment>gauge or person, figure</comment>
        <translation>
            <numerusform>%1 : mesures plus hautes de %2 mm, au milieu de tous les raccords, sur %n jour.</numerusform>
            <numerusform>%1 : mesures plus hautes de %2 mm, au milieu de tous les raccords, sur %n jours.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 read %2 mm low: the middle of all couplings, on %n day(s).</source>
        <comment>gauge or person, figure</comment>
        <translation>
            <numerusform>%1 : mesures plus basses de %2 mm, au milieu de tous les raccords, sur %n jour.</numerusform>
            <numerusform>%1 : mesures plus basses de %2 mm, au milieu de tous les raccords, sur %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over all days %1 reads about %2 mm higher than the mean of all here (95 % interval %3 to %4).</source>
        <comment>who or what, figures</comment>
        <translation>Sur tous les jours, %1 : environ %2 mm de plus que la moyenne de tous ici (intervalle à 95 % de %3 à %4).</translation>
    </message>
    <message>
        <source>Over all days %1 reads about %2 mm lower than the mean of all here (95 % interval %3 to %4).</source>
        <comment>who or what, figures</comment>
        <translation>Sur tous les jours, %1 : environ %2 mm de moins que la moyenne de tous ici (intervalle à 95 % de %3 à %4).</translation>
    </message>
    <message>
        <source>no reading noted as part-seated</source>
        <translation>aucune mesure notée à demi engagée</translation>
    </message>
    <message numerus="yes">
        <source>%n of them when all or nearly all couplings read high</source>
        <translation>
            <numerusform>dont %n quand tous les raccords ou presque étaient hauts</numerusform>
            <numerusform>dont %n quand tous les raccords ou presque étaient hauts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them when all or nearly all couplings read low</source>
        <translation>
            <numerusform>dont %n quand tous les raccords ou presque étaient bas</numerusform>
            <numerusform>dont %n quand tous les raccords ou presque étaient bas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them when all or nearly all couplings read high, or low, together</source>
        <translation>
            <numerusform>dont %n quand tous les raccords ou presque étaient hauts, ou bas, ensemble</numerusform>
            <numerusform>dont %n quand tous les raccords ou presque étaient hauts, ou bas, ensemble</numerusform>
        </translation>
    </message>
    <message>
        <source>just beyond it, on %1</source>
        <comment>day</comment>
        <translation>juste au-delà, le %1</translation>
    </message>
    <message>
        <source>the farthest just beyond it, on %1</source>
        <comment>day</comment>
        <translation>la plus éloignée juste au-delà, le %1</translation>
    </message>
    <message>
        <source>%1 mm or more beyond it, on %2</source>
        <comment>figure, day</comment>
        <translation>%1 mm ou plus au-delà, le %2</translation>
    </message>
    <message>
        <source>the farthest %1 mm or more beyond it, on %2</source>
        <comment>figure, day</comment>
        <translation>la plus éloignée %1 mm ou plus au-delà, le %2</translation>
    </message>
    <message>
        <source>outside before this period, on %1, and nobody has said what it was</source>
        <comment>day</comment>
        <translation>hors bande avant cette période, le %1, et personne n’a dit ce que c’était</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) outside before this period, the last on %1, and nobody has said what they were</source>
        <comment>day</comment>
        <translation>
            <numerusform>%n mesure hors bande avant cette période, la dernière le %1, et personne n’a dit ce que c’était</numerusform>
            <numerusform>%n mesures hors bande avant cette période, la dernière le %1, et personne n’a dit ce que c’était</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 On none of these %n coupling(s) was a reading noted as part-seated: what they read then is not known.</source>
        <translation>
            <numerusform>%1 Sur ce raccord (%n), aucune mesure n’a été notée à demi engagée : on ne sait pas ce que l’on mesure alors.</numerusform>
            <numerusform>%1 Sur aucun de ces %n raccords une mesure n’a été notée à demi engagée : on ne sait pas ce que l’on mesure alors.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 No reading was noted as part-seated on %2: what they read then is not known.</source>
        <translation>%1 Aucune mesure n’a été notée à demi engagée sur %2 : on ne sait pas ce que l’on mesure alors.</translation>
    </message>
    <message>
        <source>Whoever knows what it was notes it as a finding.</source>
        <translation>Qui sait ce que c’était le note comme constat.</translation>
    </message>
    <message>
        <source>All or nearly all couplings read high that day.</source>
        <translation>Tous les raccords ou presque étaient hauts ce jour-là.</translation>
    </message>
    <message>
        <source>All or nearly all couplings read low that day.</source>
        <translation>Tous les raccords ou presque étaient bas ce jour-là.</translation>
    </message>
    <message>
        <source>when all or nearly all couplings read high</source>
        <translation>quand tous les raccords ou presque étaient hauts</translation>
    </message>
    <message>
        <source>when all or nearly all couplings read low</source>
        <translation>quand tous les raccords ou presque étaient bas</translation>
    </message>
    <message>
        <source>another program changed facts it rests on, or may have</source>
        <translation>un autre programme a modifié des faits sur lesquels il repose, ou a pu le faire</translation>
    </message>
    <message>
        <source>Trust no band and no verdict of it until these facts were compared with a copy or a print.</source>
        <translation>Ne se fier à aucune bande ni à aucun verdict à son sujet tant que ces faits n’ont pas été comparés avec une copie ou une impression.</translation>
    </message>
    <message>
        <source>How many more until the annual is not known yet: that takes %1 riggings and %2 days.</source>
        <translation>Combien il y en aura encore jusqu’à la visite annuelle n’est pas encore connu : il y faut %1 montages et %2 jours.</translation>
    </message>
    <message>
        <source>Closed on %1 by %2, who looked again: copied from paper by %3.</source>
        <translation>Close le %1 par %2, après avoir regardé à nouveau : recopié d’après papier par %3.</translation>
    </message>
</context>
<context>
    <name>RiggedWords</name>
    <message>
        <source>First rigging of the season</source>
        <translation>Premier montage de la saison</translation>
    </message>
    <message numerus="yes">
        <source>First rigging after a layoff: none in this file for %n week(s), since %1.</source>
        <translation>
            <numerusform>Premier montage après une pause : aucun dans ce fichier pendant %n semaine, depuis le %1.</numerusform>
            <numerusform>Premier montage après une pause : aucun dans ce fichier pendant %n semaines, depuis le %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>After so long hands are out of practice and grease may have set: go through this before the first coupling. Each tick is kept at once, with the leader's name.</source>
        <translation>Après si longtemps, on a perdu la main et la graisse a pu durcir : parcourir ceci avant le premier raccord. Chaque coche est conservée aussitôt, avec le nom du responsable.</translation>
    </message>
    <message>
        <source>The first record of the year. After a winter hands are out of practice and grease may have set: go through this before the first coupling. Each tick is kept at once, with the leader's name.</source>
        <translation>La première fiche de l’année. Après un hiver, on a perdu la main et la graisse a pu durcir : parcourir ceci avant le premier raccord. Chaque coche est conservée aussitôt, avec le nom du responsable.</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) to do</source>
        <translation>
            <numerusform>%n étape à faire</numerusform>
            <numerusform>%n étapes à faire</numerusform>
        </translation>
    </message>
    <message>
        <source>To the couplings  (Enter)</source>
        <translation>Vers les raccords  (Enter)</translation>
    </message>
    <message>
        <source>Balls and sockets cleaned; plungers snap home, sleeves move freely</source>
        <translation>Billes et cages nettoyées ; les verrous claquent à fond, les manchons coulissent librement</translation>
    </message>
    <message>
        <source>Greased as the manual says, a thin film</source>
        <translation>Graissé selon le manuel, un film mince</translation>
    </message>
    <message>
        <source>Leaf sets checked against a micrometer or a block, and looked at for bent or burred leaves</source>
        <translation>Jeux de lames contrôlés au micromètre ou à la cale étalon, et regardés pour trouver les lames tordues ou à bavure</translation>
    </message>
    <message>
        <source>Everybody who rigs has looked at every coupling locked, part-seated and empty again</source>
        <translation>Tous ceux qui montent ont de nouveau regardé chaque raccord verrouillé, à demi engagé et vide</translation>
    </message>
    <message>
        <source>Leaves, mirror, torch, cloth, pins and tools counted back out</source>
        <translation>Lames, miroir, lampe, chiffon, épingles et outils comptés à la sortie</translation>
    </message>
    <message>
        <source>The note left earlier was read</source>
        <translation>La note laissée avant a été lue</translation>
    </message>
    <message>
        <source>Hatches closed and taped, nothing loose inside</source>
        <translation>Trappes fermées et recouvertes de ruban, rien qui traîne à l’intérieur</translation>
    </message>
    <message>
        <source>%1 did %2 as well. Where two are present, let each do one side.</source>
        <translation>%1 a aussi fait %2. Si deux personnes sont là, que chacune fasse un côté.</translation>
    </message>
    <message>
        <source>Both readings agree: at least %1 mm apart, and measuring alone explains %2 mm.</source>
        <translation>Les deux mesures concordent : au moins %1 mm entre elles, et la mesure seule explique %2 mm.</translation>
    </message>
    <message>
        <source>Both readings agree: the same interval.</source>
        <translation>Les deux mesures concordent : le même intervalle.</translation>
    </message>
    <message>
        <source>The two readings lie at least %1 mm apart; measuring alone explains %2 mm. Both stand, neither is averaged, and a question is open.</source>
        <translation>Les deux mesures sont à au moins %1 mm l’une de l’autre ; la mesure seule explique %2 mm. Les deux restent, aucune moyenne n’est faite, et une question est ouverte.</translation>
    </message>
    <message>
        <source>(The figure is common practice, until ten pairs of your own are there.)</source>
        <translation>(Ce chiffre est l’usage courant, jusqu’à ce que vous ayez dix paires de mesures à vous.)</translation>
    </message>
    <message>
        <source>The two readings may or may not differ by more than measuring explains (%1 mm). Both stand.</source>
        <translation>Les deux mesures diffèrent peut-être de plus que la mesure n’explique (%1 mm), peut-être pas. Les deux restent.</translation>
    </message>
    <message>
        <source>%1 of %2 couplings read high together today.</source>
        <translation>%1 raccords sur %2 donnent ensemble des valeurs hautes aujourd’hui.</translation>
    </message>
    <message>
        <source>%1 of %2 couplings read low together today.</source>
        <translation>%1 raccords sur %2 donnent ensemble des valeurs basses aujourd’hui.</translation>
    </message>
    <message>
        <source>This reading fits the band of %1, and the reading there fits this one. Was a side taken for the other, or are the rods crossed? A question is open.</source>
        <translation>Cette mesure correspond à la bande d’un autre raccord, %1, et la mesure de là-bas à la bande d’ici. Un côté a-t-il été pris pour l’autre, ou les tringles sont-elles croisées ? Une question est ouverte.</translation>
    </message>
    <message>
        <source>Close the rigging record</source>
        <translation>Clore la fiche de montage</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Encore ouvert</translation>
    </message>
    <message>
        <source>Stays in the record</source>
        <translation>Reste dans la fiche</translation>
    </message>
    <message>
        <source>Every coupling was looked at, read where there is a gap, pulled where there is something to pull, and looked at by a second person likewise. That is what was stated here and no more than that.</source>
        <translation>Chaque raccord a été regardé, mesuré là où il y a un écart, tiré là où il y a quelque chose à tirer, et regardé de même par une deuxième personne. C’est ce qui a été déclaré ici, et rien de plus.</translation>
    </message>
    <message>
        <source>Every coupling was looked at, read, pulled, and looked at and pulled by a second person. That is what was stated here and no more than that.</source>
        <translation>Chaque raccord a été regardé, mesuré, tiré, puis regardé et tiré par une deuxième personne. C’est ce qui a été déclaré ici, et rien de plus.</translation>
    </message>
    <message>
        <source>%1: the ball was not seen</source>
        <translation>%1 : la bille n’a pas été vue</translation>
    </message>
    <message>
        <source>%1: the plunger was not seen</source>
        <translation>%1 : le verrou n’a pas été vu</translation>
    </message>
    <message>
        <source>%1: the sleeve was not seen</source>
        <translation>%1 : le manchon n’a pas été vu</translation>
    </message>
    <message>
        <source>%1: the safety pin was not seen</source>
        <translation>%1 : l’épingle n’a pas été vue</translation>
    </message>
    <message>
        <source>%1: the joint was not seen</source>
        <translation>%1 : la liaison n’a pas été vue</translation>
    </message>
    <message>
        <source>%1: the lock was not seen</source>
        <translation>%1 : le blocage n’a pas été vu</translation>
    </message>
    <message>
        <source>%1: the look is not finished</source>
        <translation>%1 : le contrôle visuel n’est pas terminé</translation>
    </message>
    <message>
        <source>%1: not measured</source>
        <translation>%1 : pas mesuré</translation>
    </message>
    <message>
        <source>%1: not pulled</source>
        <translation>%1 : pas tiré</translation>
    </message>
    <message>
        <source>%1: not secured</source>
        <translation>%1 : non assuré</translation>
    </message>
    <message>
        <source>%1: no second person's look and pull</source>
        <translation>%1 : ni contrôle visuel ni essai de traction d’une deuxième personne</translation>
    </message>
    <message>
        <source>%1: no second person's look</source>
        <translation>%1 : pas de contrôle visuel d’une deuxième personne</translation>
    </message>
    <message>
        <source>%1: “no” was answered</source>
        <translation>%1 : la réponse a été « non »</translation>
    </message>
    <message>
        <source>%1: a reading outside its band, taken back since as a slip; the stop stays until a named person has said what was found</source>
        <translation>%1 : une mesure hors de sa bande, retirée depuis comme faute de saisie ; l’arrêt reste jusqu’à ce que quelqu’un ait dit, sous son nom, ce qui a été trouvé</translation>
    </message>
    <message>
        <source>%1: a reading outside its band</source>
        <translation>%1 : une mesure hors de sa bande</translation>
    </message>
    <message>
        <source>%1: the two persons' readings disagree</source>
        <translation>%1 : les mesures des deux personnes ne concordent pas</translation>
    </message>
    <message>
        <source>%1: left and right look swapped</source>
        <translation>%1 : gauche et droite semblent inversées</translation>
    </message>
    <message>
        <source>%1: no band yet, the reading could not be judged</source>
        <translation>%1 : pas encore de bande, la mesure n’a pas pu être jugée</translation>
    </message>
    <message>
        <source>%1: the gap could not tell</source>
        <translation>%1 : l’écart n’a pas permis de le dire</translation>
    </message>
    <message>
        <source>%1: the control check is not finished</source>
        <translation>%1 : l’essai des commandes n’est pas terminé</translation>
    </message>
    <message>
        <source>%1: to be tried again, somebody was at %2 after the control check</source>
        <comment>surface, coupling</comment>
        <translation>%1 : à essayer de nouveau, quelqu’un est intervenu sur %2 après l’essai des commandes</translation>
    </message>
    <message>
        <source>Control check: no surfaces are set up yet</source>
        <translation>Essai des commandes : aucune gouverne n’est encore définie</translation>
    </message>
    <message>
        <source>The list for the first rigging of the season is not finished</source>
        <translation>La liste du premier montage de la saison n’est pas terminée</translation>
    </message>
    <message>
        <source>Two different people state this record. Nobody is filled in for you.</source>
        <translation>Deux personnes différentes déclarent cette fiche. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Rigging leader</source>
        <translation>Responsable du montage</translation>
    </message>
    <message>
        <source>Second person</source>
        <translation>Deuxième personne</translation>
    </message>
    <message>
        <source>Both names are the same. The second person has to be somebody else.</source>
        <translation>Les deux noms sont les mêmes. La deuxième personne doit être quelqu’un d’autre.</translation>
    </message>
    <message>
        <source>Choose both names to close the record.</source>
        <translation>Choisir les deux noms pour clore la fiche.</translation>
    </message>
    <message>
        <source>Count leaves, mirror, torch and tools back out and look at the hatches, then tick both.</source>
        <translation>Compter lames, miroir, lampe et outils à la sortie et regarder les trappes, puis cocher les deux.</translation>
    </message>
    <message>
        <source>Close the record, every step done and nothing open</source>
        <translation>Clore la fiche, chaque étape faite et rien d’ouvert</translation>
    </message>
    <message>
        <source>Close with the open items listed</source>
        <translation>Clore avec la liste des points ouverts</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>What the next person ought to know</source>
        <translation>Ce que la personne suivante devrait savoir</translation>
    </message>
    <message>
        <source>These are the owner's measurements and statements, not an aircraft record, inspection or release. Manuals, directives, local rules and persons entitled to decide prevail.</source>
        <translation>Ce sont les mesures et les déclarations du propriétaire, ni un document du planeur, ni un contrôle, ni une remise en service. Les manuels, les consignes, les règles locales et les personnes habilitées priment.</translation>
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
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Felt, not seen</source>
        <translation>Senti, pas vu</translation>
    </message>
    <message>
        <source>Cannot see</source>
        <translation>Pas visible</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <comment>answer and its key</comment>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>question: answer</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Ball in the socket?</source>
        <translation>Bille dans la cage ?</translation>
    </message>
    <message>
        <source>Plunger home?</source>
        <translation>Verrou à fond ?</translation>
    </message>
    <message>
        <source>Sleeve at its stop?</source>
        <translation>Manchon en butée ?</translation>
    </message>
    <message>
        <source>Safety pin in and through?</source>
        <translation>Épingle en place et traversante ?</translation>
    </message>
    <message>
        <source>Engaged all the way?</source>
        <translation>Engagé à fond ?</translation>
    </message>
    <message>
        <source>Parts meet all round, flush?</source>
        <translation>Pièces en contact tout autour, à fleur ?</translation>
    </message>
    <message>
        <source>Water line or rod connected?</source>
        <translation>Conduite d’eau ou tringle raccordée ?</translation>
    </message>
    <message>
        <source>Connected?</source>
        <translation>Raccordé ?</translation>
    </message>
    <message>
        <source>Pull: nothing moves?</source>
        <translation>Traction : rien ne bouge ?</translation>
    </message>
    <message>
        <source>Secured?</source>
        <translation>Assuré ?</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>number, question of the look</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>See the ball itself.</source>
        <translation>Voir la bille elle-même.</translation>
    </message>
    <message>
        <source>Tab in its place, witness hole clear.</source>
        <translation>Patte à sa place, trou témoin dégagé.</translation>
    </message>
    <message>
        <source>No thread showing, hand off.</source>
        <translation>Aucun filetage visible, main retirée.</translation>
    </message>
    <message>
        <source>Through the witness hole, its end seen on the other side.</source>
        <translation>À travers le trou témoin, son bout vu de l’autre côté.</translation>
    </message>
    <message>
        <source>Look or feel where the manual says, on every part that joins.</source>
        <translation>Regarder ou sentir là où le manuel le dit, sur chaque pièce qui s’assemble.</translation>
    </message>
    <message>
        <source>The parts meet all along, as the manual says.</source>
        <translation>Les pièces se touchent sur toute la longueur, comme le dit le manuel.</translation>
    </message>
    <message>
        <source>As its manual says, at both ends.</source>
        <translation>Comme le dit son manuel, aux deux bouts.</translation>
    </message>
    <message>
        <source>As its manual says.</source>
        <translation>Comme le dit son manuel.</translation>
    </message>
    <message>
        <source>A firm pull on the rod, away from the ball; then again a little to one side. Fingers off plunger and sleeve.</source>
        <translation>Une traction ferme sur la tringle, à l’opposé de la bille ; puis encore une fois un peu de côté. Doigts loin du verrou et du manchon.</translation>
    </message>
    <message>
        <source>A firm pull by hand, the way it would part. Fingers off whatever holds it.</source>
        <translation>Une traction ferme à la main, dans le sens où cela se séparerait. Doigts loin de ce qui le retient.</translation>
    </message>
    <message>
        <source>Sleeve at its stop, by itself. Tape over the hatch is no lock.</source>
        <translation>Manchon en butée, de lui-même. Du ruban sur la trappe n’est pas un blocage.</translation>
    </message>
    <message>
        <source>Pin through the witness hole, and closed.</source>
        <translation>Épingle à travers le trou témoin, et fermée.</translation>
    </message>
    <message>
        <source>Sleeve at its stop, pin through the witness hole.</source>
        <translation>Manchon en butée, épingle à travers le trou témoin.</translation>
    </message>
    <message>
        <source>Its bolt or pin is in and secured, as the manual says. Tape is no lock.</source>
        <translation>Son boulon ou sa goupille est en place et assuré, comme le dit le manuel. Du ruban n’est pas un blocage.</translation>
    </message>
    <message>
        <source>Pin, clip or nut secured, as its manual says. Tape is no lock.</source>
        <translation>Goupille, clip ou écrou assuré, comme le dit son manuel. Du ruban n’est pas un blocage.</translation>
    </message>
    <message>
        <source>Rigging record</source>
        <translation>Fiche de montage</translation>
    </message>
    <message>
        <source>%1 of %2 couplings done</source>
        <translation>Raccords faits : %1 sur %2</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done</source>
        <translation>Deuxième personne : %1 sur %2 faits</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>look now</source>
        <translation>à regarder</translation>
    </message>
    <message>
        <source>measure now</source>
        <translation>à mesurer</translation>
    </message>
    <message>
        <source>secure now</source>
        <translation>à assurer</translation>
    </message>
    <message>
        <source>pull now</source>
        <translation>à tirer</translation>
    </message>
    <message>
        <source>begun, not done</source>
        <translation>commencé, pas terminé</translation>
    </message>
    <message>
        <source>interrupted · %1</source>
        <translation>interrompu · %1</translation>
    </message>
    <message>
        <source>%2 · %1</source>
        <comment>%2: how it stands, in sight when the line is cut; %1: what is done</comment>
        <translation>%2 · %1</translation>
    </message>
    <message>
        <source>%1 · look · pull</source>
        <translation>%1 · visuel · traction</translation>
    </message>
    <message>
        <source>no gap to measure · look · pull</source>
        <translation>pas d’écart à mesurer · visuel · traction</translation>
    </message>
    <message>
        <source>no gap to measure · look</source>
        <translation>pas d’écart à mesurer · visuel</translation>
    </message>
    <message>
        <source>%1 · look</source>
        <comment>reading</comment>
        <translation>%1 · visuel</translation>
    </message>
    <message>
        <source>No gap to measure here: no figure judges this joint. There is only what is asked here, and the control check.</source>
        <translation>Pas d’écart à mesurer ici : aucun chiffre ne juge cette liaison. Il n’y a que ce qui est demandé ici, et l’essai des commandes.</translation>
    </message>
    <message>
        <source>%1 · second person</source>
        <translation>%1 · deuxième personne</translation>
    </message>
    <message>
        <source>first person done, result hidden</source>
        <translation>première personne terminée, résultat caché</translation>
    </message>
    <message>
        <source>first person not done yet</source>
        <translation>première personne pas encore terminée</translation>
    </message>
    <message>
        <source>own look and pull done</source>
        <translation>a regardé et tiré de son côté</translation>
    </message>
    <message>
        <source>own look done</source>
        <translation>a regardé de son côté</translation>
    </message>
    <message>
        <source>Second inspection</source>
        <translation>Deuxième contrôle</translation>
    </message>
    <message>
        <source>Close the record</source>
        <translation>Clore la fiche</translation>
    </message>
    <message>
        <source>two names, leaves counted</source>
        <translation>deux noms, lames comptées</translation>
    </message>
    <message>
        <source>Rigged today?</source>
        <translation>Monté aujourd’hui ?</translation>
    </message>
    <message>
        <source>One coupling at a time: look, measure, pull, secure, second person. Every answer and every reading is kept the moment it is given.</source>
        <translation>Un raccord à la fois : regarder, mesurer, tirer, assurer, deuxième personne. Chaque réponse et chaque mesure est conservée dès qu’elle est donnée.</translation>
    </message>
    <message>
        <source>Notes the de-rigging with today's date, so that riggings are counted and not guessed.</source>
        <translation>Note le démontage à la date d’aujourd’hui, pour que les montages soient comptés et non devinés.</translation>
    </message>
    <message>
        <source>Since the last record: was it taken apart? A rigging is counted only when it was.</source>
        <translation>Depuis la dernière fiche : le planeur a-t-il été démonté ? Un montage ne compte que dans ce cas.</translation>
    </message>
    <message>
        <source>Taken apart and rigged &amp;anew</source>
        <translation>&amp;A été démonté puis remonté</translation>
    </message>
    <message>
        <source>&amp;Stood rigged, gone through once more</source>
        <translation>Re&amp;sté monté, repassé en revue</translation>
    </message>
    <message>
        <source>Say first whether it was taken apart since the last record.</source>
        <translation>Dire d’abord s’il a été démonté depuis la dernière fiche.</translation>
    </message>
    <message>
        <source>Choose first who leads this rigging, and say whether it was taken apart since the last record.</source>
        <translation>Choisir d’abord qui dirige ce montage, et dire s’il a été démonté depuis la dernière fiche.</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Choisir une personne</translation>
    </message>
    <message>
        <source>Choose a leaf set or gauge</source>
        <translation>Choisir un jeu de lames ou une jauge</translation>
    </message>
    <message>
        <source>Start the rigging record</source>
        <translation>Commencer la fiche de montage</translation>
    </message>
    <message>
        <source>This file knows no airframe yet. Begin in Set up (Ctrl+5).</source>
        <translation>Ce fichier ne connaît encore aucun planeur. Commencer dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>No couplings are set up for this airframe. Add them in Set up (Ctrl+5).</source>
        <translation>Aucun raccord n’est saisi pour ce planeur. Les ajouter dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>A record needs two people. Add them in Set up (Ctrl+5).</source>
        <translation>Une fiche demande deux personnes. Les ajouter dans Réglages (Ctrl+5).</translation>
    </message>
    <message>
        <source>No leaf set is set up. Add one in Set up (Ctrl+5) before you measure.</source>
        <translation>Aucun jeu de lames n’est saisi. En ajouter un dans Réglages (Ctrl+5) avant de mesurer.</translation>
    </message>
    <message>
        <source>End of the day: it was &amp;taken apart</source>
        <translation>Fin de la journée : il a été démon&amp;té</translation>
    </message>
    <message>
        <source>The record begun on %1 was never closed. Nothing is carried over: a new record starts whole, and the old one stays, marked as abandoned.</source>
        <translation>La fiche commencée le %1 n’a jamais été close. Rien n’est repris : une nouvelle fiche commence entière, et l’ancienne reste, marquée comme abandonnée.</translation>
    </message>
    <message>
        <source>Last record: %1, %2.</source>
        <translation>Dernière fiche : %1, %2.</translation>
    </message>
    <message>
        <source>Last record: %1, %2, stated by %3 and %4.</source>
        <translation>Dernière fiche : %1, %2, déclarée par %3 et %4.</translation>
    </message>
    <message>
        <source>closed with every step done and nothing open</source>
        <translation>close, chaque étape faite et rien d’ouvert</translation>
    </message>
    <message>
        <source>closed with open items</source>
        <translation>close avec des points ouverts</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abandonnée</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Mesuré par</translation>
    </message>
    <message>
        <source>Looked at by</source>
        <translation>Regardé par</translation>
    </message>
    <message>
        <source>First choose who is looking. Nobody is filled in for you.</source>
        <translation>Choisir d’abord qui regarde. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Your own look. The first result is hidden.</source>
        <translation>Votre propre contrôle visuel. Le premier résultat est caché.</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Mesuré avec</translation>
    </message>
    <message>
        <source>Locked gap, mm</source>
        <translation>Écart verrouillé, mm</translation>
    </message>
    <message>
        <source>Thickest leaf that enters freely</source>
        <translation>Lame la plus épaisse qui entre librement</translation>
    </message>
    <message>
        <source>Value read on the taper gauge, mm</source>
        <translation>Valeur lue sur la jauge conique, mm</translation>
    </message>
    <message>
        <source>The look comes first: an empty socket can show a normal gap. Measuring opens once the ball is seen or felt in the socket and nothing is answered with no.</source>
        <translation>Le contrôle visuel vient d’abord : une cage vide peut montrer un écart habituel. La mesure s’ouvre dès que la bille est vue ou sentie dans la cage et que rien n’a reçu la réponse non.</translation>
    </message>
    <message>
        <source>Clean leaf, square to the faces, no force. Press the thickest leaf that enters freely, or type its size.</source>
        <translation>Lame propre, d’équerre avec les faces, sans forcer. Choisir la lame la plus épaisse qui entre librement, ou taper sa taille.</translation>
    </message>
    <message>
        <source>Choose who measures first. Nobody is filled in for you.</source>
        <translation>Choisir d’abord qui mesure. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Choose the second person first. Nobody is filled in for you.</source>
        <translation>Choisir d’abord la deuxième personne. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Choose the leaf set or gauge you hold before you read.</source>
        <translation>Choisir le jeu de lames ou la jauge que vous tenez avant de mesurer.</translation>
    </message>
    <message>
        <source>This coupling is read already. Press %1 to measure again, or %2 when the leaf was wrong.</source>
        <translation>Ce raccord est déjà mesuré. Appuyer sur %1 pour mesurer de nouveau, ou sur %2 si la lame était fausse.</translation>
    </message>
    <message>
        <source>Choose your name first: the history says who took it apart.</source>
        <translation>Choisir d’abord votre nom : l’historique dit qui l’a démonté.</translation>
    </message>
    <message>
        <source>This rigging was begun in another window at %1. It goes on here: both windows write into the same record.</source>
        <translation>Ce montage a été commencé dans une autre fenêtre à %1. Il continue ici : les deux fenêtres écrivent dans la même fiche.</translation>
    </message>
    <message>
        <source>R</source>
        <comment>key for note read</comment>
        <translation>R</translation>
    </message>
    <message>
        <source>Left for you to know</source>
        <translation>Laissé à votre attention</translation>
    </message>
    <message>
        <source>%1: “%2”</source>
        <comment>day: note</comment>
        <translation>%1 : « %2 »</translation>
    </message>
    <message>
        <source>%1, %2: “%3”</source>
        <comment>day, person: note</comment>
        <translation>%1, %2 : « %3 »</translation>
    </message>
    <message>
        <source>%1, %2 and %3: “%4”</source>
        <comment>day, two persons: note</comment>
        <translation>%1, %2 et %3 : « %4 »</translation>
    </message>
    <message numerus="yes">
        <source>%n older note(s) will be shown when these are read.</source>
        <translation>
            <numerusform>%n note plus ancienne sera montrée quand celles-ci seront lues.</numerusform>
            <numerusform>%n notes plus anciennes seront montrées quand celles-ci seront lues.</numerusform>
        </translation>
    </message>
    <message>
        <source>I have read these notes  (%1)</source>
        <translation>J’ai lu ces notes  (%1)</translation>
    </message>
    <message>
        <source>They are shown at every start until somebody notes them as read. They stay in their records.</source>
        <translation>Elles sont montrées à chaque début jusqu’à ce que quelqu’un les marque comme lues. Elles restent dans leurs fiches.</translation>
    </message>
    <message>
        <source>First choose your name as rigging leader, then press this again.</source>
        <translation>Choisir d’abord votre nom comme responsable du montage, puis appuyer de nouveau ici.</translation>
    </message>
    <message>
        <source>Noted as read.</source>
        <translation>Marqué comme lu.</translation>
    </message>
    <message>
        <source>cleaned %1</source>
        <translation>nettoyé le %1</translation>
    </message>
    <message>
        <source>greased %1</source>
        <translation>graissé le %1</translation>
    </message>
    <message>
        <source>a part changed %1</source>
        <translation>une pièce changée le %1</translation>
    </message>
    <message>
        <source>new fitting %1</source>
        <translation>nouvelle pose le %1</translation>
    </message>
    <message>
        <source>%1: %2. This asks for the whole check: look, reading, pull, securing, second person.</source>
        <comment>couplings: what was done on which day</comment>
        <translation>%1 : %2. Cela demande le contrôle entier : regarder, mesurer, tirer, assurer, deuxième personne.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between couplings</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>This joint: %1. It asks for the whole check; a short one is not enough. Joints that had been worked on have come apart flights later, though the control check had shown nothing.</source>
        <comment>what was done on which day</comment>
        <translation>Cette liaison : %1. Elle demande le contrôle entier ; un contrôle court ne suffit pas. Des liaisons sur lesquelles on avait travaillé se sont défaites plusieurs vols plus tard, alors que l’essai des commandes n’avait rien montré.</translation>
    </message>
    <message>
        <source>Its readings have changed: %1. Look closely, whatever today's reading says.</source>
        <comment>the gap has been growing since …</comment>
        <translation>Ses mesures ont changé : %1. Regarder de près, quoi que dise la mesure d’aujourd’hui.</translation>
    </message>
    <message>
        <source>Te&amp;mperature here, °C (may stay empty)</source>
        <translation>Te&amp;mpérature ici, °C (peut rester vide)</translation>
    </message>
    <message>
        <source>Stiff grease can leave a plunger short. The figure is kept in the record and explains no reading away.</source>
        <translation>Une graisse dure peut empêcher un verrou d’aller à fond. Le chiffre est conservé dans la fiche et n’excuse aucune mesure.</translation>
    </message>
    <message>
        <source>“%1” is no temperature from -60 to 60. Type whole degrees, or leave it empty.</source>
        <translation>« %1 » n’est pas une température de -60 à 60. Taper des degrés entiers, ou laisser vide.</translation>
    </message>
    <message>
        <source>Choose who leads this rigging first.</source>
        <translation>Choisir d’abord qui dirige ce montage.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>reading, why it is wider</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: no leaf enters</source>
        <translation>%1 : aucune lame n’entre</translation>
    </message>
    <message>
        <source>%1: the thickest leaf is still loose</source>
        <translation>%1 : la lame la plus épaisse est encore libre</translation>
    </message>
    <message>
        <source>%1 by pin</source>
        <translation>%1 à la pige</translation>
    </message>
    <message>
        <source>%1 by taper gauge</source>
        <translation>%1 à la jauge conique</translation>
    </message>
    <message>
        <source>%1 by go/no-go block</source>
        <translation>%1 au calibre entre/n’entre pas</translation>
    </message>
    <message>
        <source>Set %1, last checked %2.</source>
        <translation>Jeu %1, dernier contrôle le %2.</translation>
    </message>
    <message>
        <source>Set %1 is overdue a check: last checked %2.</source>
        <translation>Jeu %1, contrôle en retard : le dernier le %2.</translation>
    </message>
    <message>
        <source>Set %1, no check recorded.</source>
        <translation>Jeu %1, aucun contrôle noté.</translation>
    </message>
    <message>
        <source>saving …</source>
        <translation>enregistrement …</translation>
    </message>
    <message>
        <source>saved %1</source>
        <translation>enregistré à %1</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>pas enregistré</translation>
    </message>
    <message>
        <source>Measure again  (%1)</source>
        <translation>Mesurer de nouveau  (%1)</translation>
    </message>
    <message>
        <source>Measure again: a further reading stands beside the first, and the graver of the two counts.</source>
        <translation>Mesurer de nouveau : une autre mesure se place à côté de la première, et la plus grave des deux compte.</translation>
    </message>
    <message>
        <source>Measure as found  (%1)</source>
        <translation>Mesurer tel que trouvé  (%1)</translation>
    </message>
    <message>
        <source>Measure as found: touch nothing else. It is kept as found part-seated.</source>
        <translation>Mesurer tel que trouvé : ne toucher à rien d’autre. Conservé comme trouvé à demi engagé.</translation>
    </message>
    <message>
        <source>%1: the ball is not in the socket.</source>
        <translation>%1 : la bille n’est pas dans la cage.</translation>
    </message>
    <message>
        <source>%1: the plunger is not home.</source>
        <translation>%1 : le verrou n’est pas à fond.</translation>
    </message>
    <message>
        <source>%1: the sleeve is not at its stop.</source>
        <translation>%1 : le manchon n’est pas en butée.</translation>
    </message>
    <message>
        <source>%1: the safety pin is not in and through.</source>
        <translation>%1 : l’épingle n’est pas en place et traversante.</translation>
    </message>
    <message>
        <source>%1: it is not engaged all the way.</source>
        <translation>%1 : ce n’est pas engagé à fond.</translation>
    </message>
    <message>
        <source>%1: the parts do not meet all round, or are not flush.</source>
        <translation>%1 : les pièces ne se touchent pas tout autour, ou ne sont pas à fleur.</translation>
    </message>
    <message>
        <source>%1: it is not connected as its manual says.</source>
        <translation>%1 : ce n’est pas raccordé comme le dit son manuel.</translation>
    </message>
    <message>
        <source>%1: something moved at the pull.</source>
        <translation>%1 : quelque chose a bougé à l’essai de traction.</translation>
    </message>
    <message>
        <source>%1: it is not secured.</source>
        <translation>%1 : ce n’est pas assuré.</translation>
    </message>
    <message>
        <source>%1: a reading lies outside its band, and nobody has said yet what it was.</source>
        <translation>%1 : une mesure est hors de sa bande, et personne n’a encore dit ce que c’était.</translation>
    </message>
    <message>
        <source>%1 is stopped. No hand on it until a named person has resolved it.</source>
        <translation>%1 est à l’arrêt. Ne pas y mettre la main avant que quelqu’un l’ait résolu, sous son nom.</translation>
    </message>
    <message>
        <source>Stopped: read what stands below before anything else. Enter once more shows what comes next; this joint stays stopped, and no hand on it.</source>
        <translation>À l’arrêt : lire ce qui est écrit dessous avant toute autre chose. Enter encore une fois montre la suite ; cette liaison reste à l’arrêt, ne pas y mettre la main.</translation>
    </message>
    <message>
        <source>It stops here. Nothing else is asked of this joint.</source>
        <translation>Arrêt ici. Rien d’autre n’est demandé pour cette liaison.</translation>
    </message>
    <message>
        <source>It stops here. Nothing else is asked of this joint. Press %1 to measure it as found.</source>
        <translation>Arrêt ici. Rien d’autre n’est demandé pour cette liaison. Appuyer sur %1 pour la mesurer telle que trouvée.</translation>
    </message>
    <message>
        <source>stop, leave it as it is</source>
        <translation>arrêt, laisser en l’état</translation>
    </message>
    <message>
        <source>stop · %1</source>
        <comment>how it stands</comment>
        <translation>arrêt · %1</translation>
    </message>
    <message>
        <source>Wrong leaf  (%1)</source>
        <translation>Mauvaise lame  (%1)</translation>
    </message>
    <message>
        <source>Wrong leaf pressed</source>
        <translation>Mauvaise lame choisie</translation>
    </message>
    <message>
        <source>Read again: the next reading takes the place of the wrong one.</source>
        <translation>Mesurer de nouveau : la prochaine mesure prend la place de la mauvaise.</translation>
    </message>
    <message>
        <source>Strike  (%1)</source>
        <translation>Rayer  (%1)</translation>
    </message>
    <message>
        <source>Strike this reading</source>
        <translation>Rayer cette mesure</translation>
    </message>
    <message>
        <source>%1, kept at %2, stays in the history, with a line through it, and nothing takes its place. A question that it opened stays open. Say what went wrong with it.</source>
        <translation>%1, conservée à %2, reste dans l’historique, avec un trait dessus, et rien ne prend sa place. Une question qu’elle a ouverte reste ouverte. Dire ce qui n’allait pas.</translation>
    </message>
    <message>
        <source>%1 struck at %2 by %3: %4</source>
        <comment>reading, time, person, reason</comment>
        <translation>%1 rayée à %2 par %3 : %4</translation>
    </message>
    <message>
        <source>Next coupling  (Enter)</source>
        <translation>Raccord suivant  (Enter)</translation>
    </message>
    <message>
        <source>Second inspection  (Enter)</source>
        <translation>Deuxième contrôle  (Enter)</translation>
    </message>
    <message>
        <source>To the close  (Enter)</source>
        <translation>Vers la clôture  (Enter)</translation>
    </message>
    <message>
        <source>Second person  (%1)</source>
        <translation>Deuxième personne  (%1)</translation>
    </message>
    <message>
        <source>First person  (%1)</source>
        <translation>Première personne  (%1)</translation>
    </message>
    <message>
        <source>Esc interrupts: this coupling then starts again from the look.</source>
        <translation>Esc interrompt : ce raccord recommence alors au contrôle visuel.</translation>
    </message>
    <message>
        <source>Esc breaks off the typing: what is typed is kept.</source>
        <translation>Esc arrête la saisie : ce qui est tapé est conservé.</translation>
    </message>
    <message>
        <source>Interrupted at %1. This coupling starts again from the look.</source>
        <translation>Interrompu à %1. Ce raccord recommence au contrôle visuel.</translation>
    </message>
    <message>
        <source>What was read before the interruption, %1, is kept. The coupling still starts again from the look.</source>
        <translation>Ce qui a été mesuré avant l’interruption, %1, est conservé. Le raccord recommence quand même au contrôle visuel.</translation>
    </message>
    <message>
        <source>Another window has written here meanwhile. Look at what stands now; your last key was not taken.</source>
        <translation>Une autre fenêtre a écrit ici entre-temps. Regarder ce qui y est maintenant ; votre dernière touche n’a pas été prise.</translation>
    </message>
    <message>
        <source>Saved: %1 stands in place of the wrong reading. This coupling still starts again from the look.</source>
        <translation>Enregistré : %1 est à la place de la mauvaise mesure. Ce raccord recommence quand même au contrôle visuel.</translation>
    </message>
    <message>
        <source>Last twelve readings</source>
        <translation>Douze dernières mesures</translation>
    </message>
    <message>
        <source>Your own look and pull. The first result is hidden.</source>
        <translation>Vos propres contrôle visuel et essai de traction. Le premier résultat est caché.</translation>
    </message>
    <message>
        <source>A reading of your own is welcome and not required.</source>
        <translation>Une mesure à vous est bienvenue et non exigée.</translation>
    </message>
    <message>
        <source>A reading of your own is welcome and not required. Nothing of the first person's is shown.</source>
        <translation>Une mesure à vous est bienvenue et non exigée. Rien de la première personne n’est montré.</translation>
    </message>
    <message>
        <source>Left out, because it is stopped: %1. Nobody works on there before its question is closed.</source>
        <comment>one or more couplings</comment>
        <translation>Laissé de côté, car à l’arrêt : %1. Personne n’y travaille avant que sa question soit close.</translation>
    </message>
    <message>
        <source>The second inspection is under way. What the first person found at %1 is shown again when the second person is done here or has kept a reading of their own.</source>
        <translation>Le deuxième contrôle est en cours. Ce que la première personne a trouvé à %1 est montré de nouveau quand la deuxième personne a terminé ici ou a conservé sa propre mesure.</translation>
    </message>
    <message>
        <source>The second inspection of %1 is under way and hides what the first person found. Finish it, or break it off with Esc: that is kept as an interruption. Then the first person can go on here.</source>
        <translation>Le deuxième contrôle (%1) est en cours et cache ce que la première personne a trouvé. Le terminer, ou l’arrêter avec Esc : cela est conservé comme interruption. Ensuite la première personne peut continuer ici.</translation>
    </message>
    <message>
        <source>The ball was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>La bille n’a pas été vue. Prendre un miroir ou une lampe, regarder de nouveau et répondre de nouveau.</translation>
    </message>
    <message>
        <source>The plunger was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Le verrou n’a pas été vu. Prendre un miroir ou une lampe, regarder de nouveau et répondre de nouveau.</translation>
    </message>
    <message>
        <source>The sleeve was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Le manchon n’a pas été vu. Prendre un miroir ou une lampe, regarder de nouveau et répondre de nouveau.</translation>
    </message>
    <message>
        <source>The safety pin was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>L’épingle n’a pas été vue. Prendre un miroir ou une lampe, regarder de nouveau et répondre de nouveau.</translation>
    </message>
    <message>
        <source>The joint was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>La liaison n’a pas été vue. Prendre un miroir ou une lampe, regarder de nouveau et répondre de nouveau.</translation>
    </message>
    <message>
        <source>The lock was not seen. Take a mirror or a light, look again, and answer again.</source>
        <translation>Le blocage n’a pas été vu. Prendre un miroir ou une lampe, regarder de nouveau et répondre de nouveau.</translation>
    </message>
    <message>
        <source>%1 Felt.</source>
        <comment>question</comment>
        <translation>%1 Senti.</translation>
    </message>
    <message>
        <source>%1 Yes.</source>
        <comment>question</comment>
        <translation>%1 Oui.</translation>
    </message>
    <message>
        <source>Show the look  (%1)</source>
        <translation>Montrer le contrôle visuel  (%1)</translation>
    </message>
    <message>
        <source>Fold the look  (%1)</source>
        <translation>Replier le contrôle visuel  (%1)</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>pas commencé</translation>
    </message>
    <message>
        <source>Second inspection not begun</source>
        <translation>Deuxième contrôle pas commencé</translation>
    </message>
    <message>
        <source>%1 of %2 couplings done, %3 open</source>
        <translation>Raccords faits : %1 sur %2, en suspens : %3</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done, %3 open</source>
        <translation>Deuxième personne : %1 sur %2 faits, %3 en suspens</translation>
    </message>
    <message>
        <source>%1. %2. Nobody has said what was found.</source>
        <comment>surface; what happened there</comment>
        <translation>%1. %2. Personne n’a dit ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 of %2 couplings done, %3 stopped, %4 open</source>
        <translation>Raccords faits : %1 sur %2, arrêtés : %3, en suspens : %4</translation>
    </message>
    <message>
        <source>%1 of %2 couplings done, %3 stopped</source>
        <translation>Raccords faits : %1 sur %2, arrêtés : %3</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done, %3 stopped, %4 open</source>
        <translation>Deuxième personne : faits %1 sur %2, arrêtés %3, en suspens %4</translation>
    </message>
    <message>
        <source>Second person: %1 of %2 done, %3 stopped</source>
        <translation>Deuxième personne : faits %1 sur %2, arrêtés %3</translation>
    </message>
    <message>
        <source>Measure as found: touch nothing else. It is kept as found not secured.</source>
        <translation>Mesurer tel que trouvé : ne toucher à rien d’autre. Conservé comme trouvé non assuré.</translation>
    </message>
    <message>
        <source>The figure was not taken. What comes first stands below.</source>
        <translation>Le chiffre n’a pas été pris. Ce qui vient d’abord est écrit dessous.</translation>
    </message>
    <message>
        <source>This coupling was half done in another window. What was answered there was not seen here: it starts again from the look, and the break is kept.</source>
        <translation>Ce raccord était à moitié fait dans une autre fenêtre. Ce qui y a été répondu n’a pas été vu ici : il recommence au contrôle visuel, et l’interruption est conservée.</translation>
    </message>
    <message>
        <source>Half done in another window. Whatever is pressed here begins it again, from the look.</source>
        <translation>À moitié fait dans une autre fenêtre. Toute touche pressée ici le fait recommencer au contrôle visuel.</translation>
    </message>
    <message>
        <source>The work on this coupling was interrupted. It starts again here, from the look.</source>
        <translation>Le travail sur ce raccord a été interrompu. Il recommence ici au contrôle visuel.</translation>
    </message>
    <message>
        <source>%1 began this record as its rigging leader. The printed record names both.</source>
        <translation>%1 a commencé cette fiche comme responsable du montage. La fiche imprimée nomme les deux.</translation>
    </message>
    <message>
        <source>%1 · interrupted</source>
        <comment>and done since</comment>
        <translation>%1 · interrompu</translation>
    </message>
    <message>
        <source>%1: several persons looked and pulled as the second, and none of them did all of it</source>
        <translation>%1 : plusieurs personnes ont regardé et tiré comme deuxième personne, et aucune n’a tout fait</translation>
    </message>
    <message>
        <source>%1: several persons looked as the second, and none of them saw all of it</source>
        <translation>%1 : plusieurs personnes ont regardé comme deuxième personne, et aucune n’a tout vu</translation>
    </message>
    <message>
        <source>This coupling was half answered for another person, and that is kept. It is asked again from the look, of %1.</source>
        <translation>Ce raccord était à moitié rempli pour une autre personne, et cela reste conservé. Il est redemandé à partir du contrôle visuel, pour %1.</translation>
    </message>
    <message>
        <source>Half answered for another person. Whatever is pressed here begins it again, from the look, for %1.</source>
        <translation>À moitié rempli pour une autre personne. Toute touche pressée ici le fait recommencer au contrôle visuel, pour %1.</translation>
    </message>
    <message>
        <source>First rigging in this file</source>
        <translation>Premier montage de ce fichier</translation>
    </message>
    <message numerus="yes">
        <source>%n rigging(s) before this file are stated in Set up, and not when they were: whether this is the first of the season is not known here. Where it is, go through this before the first coupling; where it is not, go on without it. Each tick is kept at once, with the leader's name.</source>
        <translation>
            <numerusform>%n montage avant ce fichier est indiqué dans Réglages, mais pas sa date : on ne sait pas ici si celui-ci est le premier de la saison. Si oui, parcourir ceci avant le premier raccord ; sinon, continuer sans. Chaque coche est conservée aussitôt, avec le nom du responsable.</numerusform>
            <numerusform>%n montages avant ce fichier sont indiqués dans Réglages, mais pas leurs dates : on ne sait pas ici si celui-ci est le premier de la saison. Si oui, parcourir ceci avant le premier raccord ; sinon, continuer sans. Chaque coche est conservée aussitôt, avec le nom du responsable.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, read by %2 and kept at %3, stays in the history, with a line through it. Say what went wrong with it; then read again. If it was read at another coupling or by another person, strike it (%4).</source>
        <comment>reading, person, time, key</comment>
        <translation>%1, mesurée par %2 et conservée à %3, reste dans l’historique, avec un trait dessus. Dire ce qui n’allait pas, puis mesurer de nouveau. Si la mesure vient d’un autre raccord ou d’une autre personne, la rayer (%4).</translation>
    </message>
    <message>
        <source>Another window has worked meanwhile at: %1.</source>
        <comment>one or more couplings</comment>
        <translation>Une autre fenêtre a travaillé entre-temps à : %1.</translation>
    </message>
    <message>
        <source>What was typed before this coupling was shown is not taken.</source>
        <translation>Ce qui a été tapé avant que ce raccord soit affiché n’a pas été pris.</translation>
    </message>
</context>
<context>
    <name>SentenceParts</name>
    <message>
        <source>%1 and %2</source>
        <comment>all but the last of a list, the last</comment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>%1: nothing</source>
        <comment>heading of a column in which nothing stands</comment>
        <translation>%1 : rien</translation>
    </message>
    <message>
        <source>%1: %2, struck</source>
        <comment>heading of a column, what stands there</comment>
        <translation>%1 : %2, rayé</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>heading of a column, what stands there</comment>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>SetUpWords</name>
    <message>
        <source>Set up</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Airframe</source>
        <translation>Planeur</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Raccords</translation>
    </message>
    <message>
        <source>Leaf sets and gauges</source>
        <translation>Jeux de lames et jauges</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Événements</translation>
    </message>
    <message>
        <source>Baseline day</source>
        <translation>Jour de référence</translation>
    </message>
    <message>
        <source>Part-seated demonstration</source>
        <translation>Démonstration à demi engagé</translation>
    </message>
    <message>
        <source>Alt+1 to Alt+9: go to a part.</source>
        <translation>Alt+1 à Alt+9 : aller à une partie.</translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation>%1 étapes sur %2 faites</translation>
    </message>
    <message>
        <source>All steps done</source>
        <translation>Toutes les étapes faites</translation>
    </message>
    <message>
        <source>done · %1</source>
        <comment>3 people</comment>
        <translation>fait · %1</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>not yet · %1</source>
        <comment>1 person</comment>
        <translation>pas encore · %1</translation>
    </message>
    <message>
        <source>typed, not saved · %1</source>
        <translation>tapé, non enregistré · %1</translation>
    </message>
    <message>
        <source>1 coupling</source>
        <translation>1 raccord</translation>
    </message>
    <message>
        <source>%1 couplings</source>
        <translation>%1 raccords</translation>
    </message>
    <message>
        <source>1 gauge</source>
        <translation>1 jauge</translation>
    </message>
    <message>
        <source>%1 gauges</source>
        <translation>%1 jauges</translation>
    </message>
    <message>
        <source>1 leaf set</source>
        <translation>1 jeu de lames</translation>
    </message>
    <message>
        <source>%1 leaf sets</source>
        <translation>%1 jeux de lames</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 personne</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 personnes</translation>
    </message>
    <message>
        <source>1 event</source>
        <translation>1 événement</translation>
    </message>
    <message>
        <source>%1 events</source>
        <translation>%1 événements</translation>
    </message>
    <message>
        <source>%1 of %2 with a band</source>
        <translation>%1 sur %2 avec bande</translation>
    </message>
    <message>
        <source>shown on %1 of %2</source>
        <translation>montré : %1 sur %2</translation>
    </message>
    <message>
        <source>Entered by</source>
        <translation>Saisi par</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>Aucun nom donné</translation>
    </message>
    <message>
        <source>The name that is kept with what you save here.</source>
        <translation>Le nom qui reste avec ce que vous enregistrez ici.</translation>
    </message>
    <message>
        <source>The registration stands on every page, so that two gliders are never mixed up, and whoever meets a reading outside its band sees at once whom to call.</source>
        <translation>L’immatriculation figure sur chaque page, pour que deux planeurs ne soient jamais confondus, et qui rencontre une mesure hors de sa bande voit aussitôt qui appeler.</translation>
    </message>
    <message>
        <source>Each coupling is read and judged for itself, against its own past. The list is in rigging order: the order in which you walk round the aircraft.</source>
        <translation>Chaque raccord est mesuré et jugé pour lui-même, d’après son propre passé. La liste suit l’ordre de montage : celui dans lequel vous faites le tour du planeur.</translation>
    </message>
    <message>
        <source>A reading lies between the leaf that enters and the next one that does not. So the program has to know which leaves there are, and when somebody last checked them.</source>
        <translation>Une mesure se trouve entre la lame qui entre et la suivante, qui n’entre pas. Le programme doit donc savoir quelles lames existent, et quand quelqu’un les a contrôlées pour la dernière fois.</translation>
    </message>
    <message>
        <source>Every look, pull and reading is stated by a person, and the second look by another one. Two people is the least.</source>
        <translation>Chaque contrôle visuel, essai de traction et mesure est déclaré par une personne, et le deuxième contrôle visuel par une autre. Deux personnes sont le minimum.</translation>
    </message>
    <message>
        <source>Cleaning, greasing and repairs shift readings. Noted here with their day, they stand beside the readings, and nobody has to guess later.</source>
        <translation>Nettoyage, graissage et réparations décalent les mesures. Notés ici avec leur jour, ils figurent à côté des mesures, et personne ne doit deviner plus tard.</translation>
    </message>
    <message>
        <source>Next: couplings</source>
        <translation>Suite : raccords</translation>
    </message>
    <message>
        <source>Next: leaf set</source>
        <translation>Suite : jeu de lames</translation>
    </message>
    <message>
        <source>Next: people</source>
        <translation>Suite : personnes</translation>
    </message>
    <message>
        <source>Next: baseline day</source>
        <translation>Suite : jour de référence</translation>
    </message>
    <message>
        <source>Save an airframe first. The other parts can be looked at any time.</source>
        <translation>Enregistrer d’abord un planeur. Les autres parties peuvent être regardées à tout moment.</translation>
    </message>
    <message>
        <source>Add at least one coupling first.</source>
        <translation>Ajouter d’abord au moins un raccord.</translation>
    </message>
    <message>
        <source>Add at least one leaf set or gauge first.</source>
        <translation>Ajouter d’abord au moins un jeu de lames ou une jauge.</translation>
    </message>
    <message>
        <source>Add two people first.</source>
        <translation>Ajouter d’abord deux personnes.</translation>
    </message>
    <message>
        <source>Add a second person first.</source>
        <translation>Ajouter d’abord une deuxième personne.</translation>
    </message>
    <message>
        <source>%1  (Enter)</source>
        <comment>Next: couplings</comment>
        <translation>%1  (Enter)</translation>
    </message>
    <message>
        <source>This part belongs to an airframe, and the file knows none yet.</source>
        <translation>Cette partie dépend d’un planeur, et le fichier n’en connaît encore aucun.</translation>
    </message>
    <message>
        <source>Go to the airframe</source>
        <translation>Aller au planeur</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Save  (Enter)</source>
        <translation>Enregistrer  (Enter)</translation>
    </message>
    <message>
        <source>Close without saving  (Esc)</source>
        <translation>Fermer sans enregistrer  (Esc)</translation>
    </message>
    <message>
        <source>Change  (Enter)</source>
        <translation>Modifier  (Enter)</translation>
    </message>
    <message>
        <source>Needed; all else may be filled in later.</source>
        <translation>Nécessaire ; tout le reste peut être rempli plus tard.</translation>
    </message>
    <message>
        <source>Typed, not saved yet.</source>
        <translation>Tapé, pas encore enregistré.</translation>
    </message>
    <message>
        <source>Saved at %1.</source>
        <translation>Enregistré à %1.</translation>
    </message>
    <message>
        <source>Not saved. See the message beside the field.</source>
        <translation>Non enregistré. Voir le message à côté du champ.</translation>
    </message>
    <message numerus="yes">
        <source>This is longer than %n characters. Shorten it.</source>
        <translation>
            <numerusform>C’est plus long que %n caractère. Raccourcir.</numerusform>
            <numerusform>C’est plus long que %n caractères. Raccourcir.</numerusform>
        </translation>
    </message>
    <message>
        <source>A character in it is not seen, such as a mark for the direction of writing. Delete it all and type it anew.</source>
        <translation>Un de ses caractères est invisible, par exemple une marque de sens d’écriture. Tout effacer et retaper.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendrier</translation>
    </message>
    <message>
        <source>Calendar for: %1</source>
        <translation>Calendrier pour : %1</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>This day has not come yet. Type today or an earlier day.</source>
        <translation>Ce jour n’est pas encore venu. Taper aujourd’hui ou un jour antérieur.</translation>
    </message>
    <message>
        <source>A further airframe</source>
        <translation>Un autre planeur</translation>
    </message>
    <message>
        <source>&amp;Registration</source>
        <translation>&amp;Immatriculation</translation>
    </message>
    <message>
        <source>T&amp;ype</source>
        <translation>T&amp;ype</translation>
    </message>
    <message>
        <source>Serial &amp;number</source>
        <translation>&amp;Numéro de série</translation>
    </message>
    <message>
        <source>&amp;Jurisdiction</source>
        <translation>&amp;Droit applicable</translation>
    </message>
    <message>
        <source>Whose rules hold. The law differs and changes: ask your authority.</source>
        <translation>Quelles règles s’appliquent. Le droit varie et change : demander à votre autorité.</translation>
    </message>
    <message>
        <source>&amp;Manuals and directives</source>
        <translation>&amp;Manuels et consignes</translation>
    </message>
    <message>
        <source>With issue and date. They prevail over anything said here.</source>
        <translation>Avec édition et date. Ils passent avant tout ce qui est dit ici.</translation>
    </message>
    <message>
        <source>Next &amp;annual due</source>
        <translation>Prochaine &amp;visite annuelle</translation>
    </message>
    <message>
        <source>&amp;Whom to call</source>
        <translation>&amp;Qui appeler</translation>
    </message>
    <message>
        <source>Shown at once when a reading lies outside its band.</source>
        <translation>Affiché aussitôt quand une mesure est hors de sa bande.</translation>
    </message>
    <message>
        <source>&amp;Phone</source>
        <translation>&amp;Téléphone</translation>
    </message>
    <message>
        <source>Riggings &amp;counted before this file</source>
        <translation>Montages &amp;comptés avant ce fichier</translation>
    </message>
    <message>
        <source>A whole number. 0 when nobody counted.</source>
        <translation>Un nombre entier. 0 si personne n’a compté.</translation>
    </message>
    <message>
        <source>Add a further airframe</source>
        <translation>Ajouter un autre planeur</translation>
    </message>
    <message>
        <source>Back to %1  (Esc)</source>
        <translation>Retour à %1  (Esc)</translation>
    </message>
    <message>
        <source>Type the registration. It stands on every page and every print.</source>
        <translation>Taper l’immatriculation. Elle figure sur chaque page et chaque impression.</translation>
    </message>
    <message>
        <source>%1 is already in this file. Choose it by the registration at the top left (Ctrl+K), or type another.</source>
        <translation>%1 est déjà dans ce fichier. Le choisir par l’immatriculation en haut à gauche (Ctrl+K), ou en taper une autre.</translation>
    </message>
    <message>
        <source>Type a whole number, 0 or more.</source>
        <translation>Taper un nombre entier, 0 ou plus.</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Ajouter une personne</translation>
    </message>
    <message>
        <source>A new person</source>
        <translation>Une nouvelle personne</translation>
    </message>
    <message>
        <source>Change: %1</source>
        <translation>Modifier : %1</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Role</source>
        <translation>&amp;Rôle</translation>
    </message>
    <message>
        <source>Owner, member, engineer: in your own words.</source>
        <translation>Propriétaire, membre, mécanicien : avec vos propres mots.</translation>
    </message>
    <message>
        <source>Type a name.</source>
        <translation>Taper un nom.</translation>
    </message>
    <message>
        <source>%1 is already in this file. Add an initial, so that the two are told apart.</source>
        <translation>%1 est déjà dans ce fichier. Ajouter une initiale, pour distinguer les deux.</translation>
    </message>
    <message>
        <source>Nobody yet. A rigging record needs two people.</source>
        <translation>Aucune personne pour l’instant. Une fiche de montage demande deux personnes.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>role, phone</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Note an event</source>
        <translation>Noter un événement</translation>
    </message>
    <message>
        <source>A new event</source>
        <translation>Un nouvel événement</translation>
    </message>
    <message>
        <source>&amp;What was done</source>
        <translation>&amp;Ce qui a été fait</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>Wh&amp;ere</source>
        <translation>&amp;Où</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>By whom, which grade or part, what was found.</source>
        <translation>Par qui, quelle qualité ou quelle pièce, ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>The whole airframe</source>
        <translation>Le planeur entier</translation>
    </message>
    <message>
        <source>Cleaned</source>
        <translation>Nettoyé</translation>
    </message>
    <message>
        <source>Greased</source>
        <translation>Graissé</translation>
    </message>
    <message>
        <source>Refitted or adjusted</source>
        <translation>Reposé ou réglé</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Pièce changée</translation>
    </message>
    <message>
        <source>Annual</source>
        <translation>Visite annuelle</translation>
    </message>
    <message>
        <source>Taken apart</source>
        <translation>Démonté</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Choose your name first, at “%1”: the history says who took it apart.</source>
        <translation>Choisir d’abord votre nom, à « %1 » : l’historique dit qui l’a démonté.</translation>
    </message>
    <message>
        <source>Say in a few words what there is to note.</source>
        <translation>Dire en quelques mots ce qu’il y a à noter.</translation>
    </message>
    <message>
        <source>A refit, an adjustment or a changed part ends the old baseline. Noting it here does not do that: start a new fitting of the coupling in Couplings (Alt+2) as well.</source>
        <translation>Une repose, un réglage ou une pièce changée met fin à l’ancienne série de référence. Le noter ici ne le fait pas : commencer aussi une nouvelle pose du raccord sous « Raccords » (Alt+2).</translation>
    </message>
    <message>
        <source>No event noted yet.</source>
        <translation>Aucun événement noté pour l’instant.</translation>
    </message>
    <message>
        <source>An event stays as it was saved. A slip is put right by a further note.</source>
        <translation>Un événement reste tel qu’enregistré. Une erreur se rectifie par une autre note.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>day, what was done, where</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>Typed in Set up and not saved: %1. It is lost when this file is left now. To keep it, go back and save it.</source>
        <comment>a part, or some of them</comment>
        <translation>Saisi dans Réglages et pas enregistré : %1. Si ce fichier est quitté maintenant, c’est perdu. Pour le garder, revenir et enregistrer.</translation>
    </message>
</context>
<context>
    <name>SignOffWords</name>
    <message>
        <source>signed off until %1</source>
        <translation>instruction validée jusqu’au %1</translation>
    </message>
    <message>
        <source>signed off until %1 (not met when it was signed: %2)</source>
        <translation>instruction validée jusqu’au %1 (non rempli à la signature : %2)</translation>
    </message>
    <message>
        <source>sign-off expired on %1 (three months without rigging)</source>
        <translation>validation expirée le %1 (trois mois sans montage)</translation>
    </message>
    <message numerus="yes">
        <source>sign-off expired on %1 (%n month(s) without rigging)</source>
        <translation>
            <numerusform>validation expirée le %1 (%n mois sans montage)</numerusform>
            <numerusform>validation expirée le %1 (%n mois sans montage)</numerusform>
        </translation>
    </message>
    <message>
        <source>sign-off expired on %1</source>
        <translation>validation expirée le %1</translation>
    </message>
    <message>
        <source>sign-off withdrawn</source>
        <translation>validation retirée</translation>
    </message>
    <message>
        <source>not signed off on this airframe</source>
        <translation>instruction non validée sur ce planeur</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>person, how they stand</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 of %2 riggings under supervision</source>
        <translation>%1 sur %2 montages encadrés</translation>
    </message>
    <message numerus="yes">
        <source>%n coupling(s) not practised</source>
        <translation>
            <numerusform>%n raccord non exercé</numerusform>
            <numerusform>%n raccords non exercés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n coupling(s) called locked in practice and not locked</source>
        <translation>
            <numerusform>%n raccord dit verrouillé à l’exercice et non verrouillé</numerusform>
            <numerusform>%n raccords dits verrouillés à l’exercice et non verrouillés</numerusform>
        </translation>
    </message>
    <message>
        <source>What the person responsible for this airframe has stated on Know this airframe. It informs; it grants nothing and stops nothing.</source>
        <translation>Ce que la personne responsable de ce planeur a déclaré sur la page « Ce planeur ». Cela informe ; cela ne donne aucun droit et n’arrête rien.</translation>
    </message>
    <message>
        <source>How they stood on this airframe on that day: %1.</source>
        <translation>Situation sur ce planeur ce jour-là : %1.</translation>
    </message>
    <message>
        <source>How they stand on this airframe: %1.</source>
        <translation>Situation sur ce planeur : %1.</translation>
    </message>
</context>
<context>
    <name>SigningWords</name>
    <message>
        <source>%1 on this airframe</source>
        <comment>a person</comment>
        <translation>%1 sur ce planeur</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>how somebody stands on this airframe</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Last rigging here: %1.</source>
        <translation>Dernier montage ici : %1.</translation>
    </message>
    <message>
        <source>No rigging of this person stands in the file.</source>
        <translation>Aucun montage de cette personne n’est dans le fichier.</translation>
    </message>
    <message>
        <source>What is asked for before somebody signs</source>
        <translation>Ce qui est demandé avant que quelqu’un valide</translation>
    </message>
    <message>
        <source>Riggings under somebody who knows this airframe: %1 of %2</source>
        <translation>Montages sous quelqu’un qui connaît ce planeur : %1 sur %2</translation>
    </message>
    <message>
        <source>Last round, every coupling: no joint that was not locked was called locked. This is practice only.</source>
        <translation>Dernière série, chaque raccord : aucune liaison non verrouillée n’a été dite verrouillée. Ce n’est que de l’exercice.</translation>
    </message>
    <message>
        <source>Not practised to the end of a round: %1</source>
        <translation>Pas exercé jusqu’au bout d’une série : %1</translation>
    </message>
    <message>
        <source>Called locked in the last round, and was not: %1</source>
        <translation>Dit verrouillé à la dernière série, et ne l’était pas : %1</translation>
    </message>
    <message>
        <source>Whoever signs decides, and may ask for more: every coupling named unaided, a planted fault found, the calls said, when to stop explained. A sign-off grants nothing.</source>
        <translation>Qui valide décide, et peut demander plus : chaque raccord nommé sans aide, un défaut posé exprès trouvé, les annonces dites, quand s’arrêter expliqué. Une validation ne donne aucun droit.</translation>
    </message>
    <message>
        <source>Riggings under supervision</source>
        <translation>Montages encadrés</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aucun encore.</translation>
    </message>
    <message>
        <source>%1, under %2</source>
        <comment>day, person</comment>
        <translation>%1, sous %2</translation>
    </message>
    <message>
        <source>%1, under %2: %3</source>
        <comment>day, person, note</comment>
        <translation>%1, sous %2 : %3</translation>
    </message>
    <message>
        <source>Add a rigging under supervision</source>
        <translation>Ajouter un montage encadré</translation>
    </message>
    <message>
        <source>Which riggin&amp;g</source>
        <translation>Quel monta&amp;ge</translation>
    </message>
    <message>
        <source>Choose a rigging</source>
        <translation>Choisir un montage</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day of a rigging, names</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Under w&amp;hom</source>
        <translation>Sous &amp;qui</translation>
    </message>
    <message>
        <source>Choose who supervised</source>
        <translation>Choisir qui a encadré</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;te</translation>
    </message>
    <message>
        <source>Not&amp;e</source>
        <translation>Note &amp;libre</translation>
    </message>
    <message>
        <source>&amp;Keep this rigging</source>
        <translation>Garder c&amp;e montage</translation>
    </message>
    <message>
        <source>There is no further rigging in the file that could be named.</source>
        <translation>Il n’y a pas d’autre montage dans le fichier qui puisse être nommé.</translation>
    </message>
    <message>
        <source>Choose which rigging it was.</source>
        <translation>Choisir quel montage c’était.</translation>
    </message>
    <message>
        <source>Choose under whom it was: another person.</source>
        <translation>Choisir sous qui c’était : une autre personne.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Conservé.</translation>
    </message>
    <message>
        <source>Sign for %1</source>
        <comment>a person</comment>
        <translation>Valider pour %1</translation>
    </message>
    <message>
        <source>Signed &amp;by, the person responsible</source>
        <translation>Validé par la personne responsa&amp;ble</translation>
    </message>
    <message>
        <source>Choose who signs</source>
        <translation>Choisir qui valide</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>Months until it e&amp;xpires</source>
        <translation>Moi&amp;s jusqu’à l’expiration</translation>
    </message>
    <message>
        <source>Months without rigg&amp;ing until it expires</source>
        <translation>Mois jusqu’à l’expiration s’il n’&amp;y a pas de montage</translation>
    </message>
    <message>
        <source>12 and 3 months are common practice, not a rule. The months without rigging count from the last rigging here, also one before the signing.</source>
        <translation>12 et 3 mois sont l’usage courant, pas une règle. Les mois sans montage comptent depuis le dernier montage ici, même s’il date d’avant la validation.</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>&amp;Valider</translation>
    </message>
    <message>
        <source>Withdra&amp;w the sign-off</source>
        <translation>Retirer l&amp;a validation</translation>
    </message>
    <message>
        <source>Choose who signs: another person than the learner.</source>
        <translation>Choisir qui valide : une autre personne que l’élève.</translation>
    </message>
    <message>
        <source>Enter the day.</source>
        <translation>Saisir le jour.</translation>
    </message>
    <message>
        <source>This day is still to come.</source>
        <translation>Ce jour est encore à venir.</translation>
    </message>
    <message>
        <source>Say in the note why it is withdrawn.</source>
        <translation>Dire dans la note pourquoi elle est retirée.</translation>
    </message>
    <message>
        <source>Kept: signed on %1.</source>
        <translation>Conservé : validé le %1.</translation>
    </message>
    <message>
        <source>Kept: withdrawn.</source>
        <translation>Conservé : validation retirée.</translation>
    </message>
    <message>
        <source>Everything that was signed</source>
        <translation>Tout ce qui a été validé</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2</source>
        <comment>day, person</comment>
        <translation>%1 : validation retirée par %2</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2: %3</source>
        <comment>day, person, note</comment>
        <translation>%1 : validation retirée par %2 : %3</translation>
    </message>
    <message>
        <source>%1: signed by %2</source>
        <comment>day, person</comment>
        <translation>%1 : validé par %2</translation>
    </message>
    <message>
        <source>%1: signed by %2 (not met when it was signed: %3)</source>
        <comment>day, person, list</comment>
        <translation>%1 : validé par %2 (non rempli à la validation : %3)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who signed when, note</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Not met: %1.</source>
        <comment>a list</comment>
        <translation>Non rempli : %1.</translation>
    </message>
    <message>
        <source>The last rigging here was on %1: a sign-off expires by that before it is given, unless there is a rigging on the day of signing.</source>
        <translation>Le dernier montage ici était le %1 : une validation expire de ce fait avant d’être donnée, sauf s’il y a un montage le jour de la validation.</translation>
    </message>
    <message>
        <source>Sign &amp;just the same</source>
        <translation>Vali&amp;der quand même</translation>
    </message>
    <message>
        <source>Something is not met. Read it, and tick that you sign for it.</source>
        <translation>Quelque chose n’est pas rempli. Le lire, et cocher que vous validez malgré cela.</translation>
    </message>
    <message>
        <source>Not named in the record of this rigging: %1.</source>
        <comment>names</comment>
        <translation>Pas nommé dans la fiche de ce montage : %1.</translation>
    </message>
    <message>
        <source>Super&amp;vised all the same</source>
        <translation>Encadré quand même, &amp;hors fiche</translation>
    </message>
    <message>
        <source>%1 stands nowhere in the record of this rigging. If it was supervised all the same, tick that, and say in the note what they did there.</source>
        <comment>names</comment>
        <translation>Nommé nulle part dans la fiche de ce montage : %1. S’il y a eu encadrement quand même, cocher cela, et dire dans la note ce qui y a été fait.</translation>
    </message>
    <message>
        <source>%1 (not named in its record: %2)</source>
        <comment>a rigging, names</comment>
        <translation>%1 (pas nommé dans sa fiche : %2)</translation>
    </message>
    <message>
        <source>To be taken b&amp;ack</source>
        <translation>Choisisse&amp;z quoi retirer</translation>
    </message>
    <message>
        <source>Choose what was told by mistake</source>
        <translation>Choisir ce qui a été dit par erreur</translation>
    </message>
    <message>
        <source>Taken back b&amp;y</source>
        <translation>Ret&amp;iré par</translation>
    </message>
    <message>
        <source>Choose who takes it back</source>
        <translation>Choisir qui retire</translation>
    </message>
    <message>
        <source>Take this o&amp;ne back …</source>
        <translation>Retirer mai&amp;ntenant …</translation>
    </message>
    <message>
        <source>Choose what is to be taken back.</source>
        <translation>Choisir ce qui est à retirer.</translation>
    </message>
    <message>
        <source>Choose who takes it back.</source>
        <translation>Choisir qui le retire.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Why is this taken back? It stays to be read, and counts for nothing.
%1</source>
        <translation>Pourquoi est-ce retiré ? Cela reste lisible, et ne compte pour rien.
%1</translation>
    </message>
    <message>
        <source>Another rigging</source>
        <translation>Un autre montage</translation>
    </message>
    <message>
        <source>Another person</source>
        <translation>Une autre personne</translation>
    </message>
    <message>
        <source>Told twice</source>
        <translation>Dit deux fois</translation>
    </message>
    <message>
        <source>Kept: taken back. It stays to be read.</source>
        <translation>Conservé : retiré. Cela reste lisible.</translation>
    </message>
    <message>
        <source>%1 taken back by %2: %3</source>
        <comment>what, a person, the reason</comment>
        <translation>%1 retiré par %2 : %3</translation>
    </message>
</context>
<context>
    <name>StandingWords</name>
    <message>
        <source>found part-seated</source>
        <translation>trouvé à demi engagé</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>no gap to measure</source>
        <translation>pas d’écart à mesurer</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>scatter changed</source>
        <translation>dispersion changée</translation>
    </message>
    <message>
        <source>was outside</source>
        <translation>était hors bande</translation>
    </message>
    <message>
        <source>Outside the band, and nobody has resolved it</source>
        <translation>Hors de la bande, et personne ne l’a résolu</translation>
    </message>
    <message>
        <source>Not found out yet: %1</source>
        <comment>what is asked</comment>
        <translation>Pas encore élucidé : %1</translation>
    </message>
    <message>
        <source>Found part-seated</source>
        <translation>Trouvé à demi engagé</translation>
    </message>
    <message>
        <source>Not read in this period</source>
        <translation>Pas mesuré dans cette période</translation>
    </message>
    <message>
        <source>No gap to measure</source>
        <translation>Pas d’écart à mesurer</translation>
    </message>
    <message>
        <source>Inside the band, and it moved</source>
        <translation>Dans la bande, et a bougé</translation>
    </message>
    <message>
        <source>Inside the band, and its scatter changed</source>
        <translation>Dans la bande, et sa dispersion a changé</translation>
    </message>
    <message>
        <source>Inside the band, and outside before in this period</source>
        <translation>Dans la bande, et hors bande auparavant dans cette période</translation>
    </message>
    <message>
        <source>%1; last read: %2</source>
        <comment>what befell it in the period, reading</comment>
        <translation>%1 ; dernière mesure : %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>how it stands, reading</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>This reading by itself: %1. %2</source>
        <comment>verdict, explanation</comment>
        <translation>Cette mesure à elle seule : %1. %2</translation>
    </message>
    <message>
        <source>Cannot tell: the ball was not seen</source>
        <translation>On ne peut pas dire : la bille n’a pas été vue</translation>
    </message>
    <message>
        <source>Cannot tell: the plunger was not seen</source>
        <translation>On ne peut pas dire : le verrou n’a pas été vu</translation>
    </message>
    <message>
        <source>Cannot tell: the sleeve was not seen</source>
        <translation>On ne peut pas dire : le manchon n’a pas été vu</translation>
    </message>
    <message>
        <source>Cannot tell: the safety pin was not seen</source>
        <translation>On ne peut pas dire : l’épingle n’a pas été vue</translation>
    </message>
    <message>
        <source>Cannot tell: the joint was not seen</source>
        <translation>On ne peut pas dire : la liaison n’a pas été vue</translation>
    </message>
    <message>
        <source>Cannot tell: the lock was not seen</source>
        <translation>On ne peut pas dire : le blocage n’a pas été vu</translation>
    </message>
    <message>
        <source>%1, measured as found. It is kept apart and is no locked reading.</source>
        <translation>%1, mesuré tel que trouvé. C’est gardé à part et n’est pas une mesure verrouillée.</translation>
    </message>
    <message>
        <source>a reading outside</source>
        <translation>une mesure hors bande</translation>
    </message>
    <message>
        <source>answered “no”</source>
        <translation>réponse « non »</translation>
    </message>
    <message>
        <source>could not be seen</source>
        <translation>n’a pas pu être vu</translation>
    </message>
    <message>
        <source>two readings disagree</source>
        <translation>deux mesures ne concordent pas</translation>
    </message>
    <message>
        <source>left and right look swapped</source>
        <translation>gauche et droite semblent inversées</translation>
    </message>
    <message>
        <source>its surface wrong or not seen</source>
        <translation>sa gouverne fausse ou pas vue</translation>
    </message>
    <message>
        <source>its band is in doubt</source>
        <translation>sa bande est en doute</translation>
    </message>
    <message>
        <source>shown part-seated on purpose</source>
        <translation>montré à demi engagé exprès</translation>
    </message>
    <message>
        <source>a question in words</source>
        <translation>une question rédigée</translation>
    </message>
    <message>
        <source>readings in doubt</source>
        <translation>mesures en doute</translation>
    </message>
    <message>
        <source>%1; last read: %2</source>
        <comment>what is asked of a surface, reading of the joint</comment>
        <translation>%1 ; dernière mesure : %2</translation>
    </message>
    <message>
        <source>%1, in the same circuit</source>
        <comment>a surface and what it was</comment>
        <translation>%1, dans le même circuit</translation>
    </message>
    <message>
        <source>%1, perhaps in the same circuit</source>
        <comment>a surface and what it was</comment>
        <translation>%1, peut-être dans le même circuit</translation>
    </message>
    <message>
        <source>%1 wrong or not seen</source>
        <comment>a surface elsewhere in the circuit</comment>
        <translation>%1 : faux ou pas vu</translation>
    </message>
    <message>
        <source>its surface moved the wrong way</source>
        <translation>sa gouverne a bougé dans le mauvais sens</translation>
    </message>
    <message>
        <source>%1 moved the wrong way</source>
        <translation>%1 : a bougé dans le mauvais sens</translation>
    </message>
    <message>
        <source>its surface not seen</source>
        <translation>sa gouverne pas vue</translation>
    </message>
    <message>
        <source>%1 not seen</source>
        <comment>a surface</comment>
        <translation>%1 : pas vu</translation>
    </message>
    <message>
        <source>“no” at its surface</source>
        <translation>« non » à sa gouverne</translation>
    </message>
    <message>
        <source>“no” at %1</source>
        <comment>a surface</comment>
        <translation>« non » : %1</translation>
    </message>
    <message>
        <source>found not secured</source>
        <translation>trouvé non assuré</translation>
    </message>
    <message>
        <source>Found not secured</source>
        <translation>Trouvé non assuré</translation>
    </message>
    <message>
        <source>hidden</source>
        <comment>what was found is kept back from the second person</comment>
        <translation>caché</translation>
    </message>
    <message>
        <source>Hidden until the second person is done here</source>
        <translation>Caché jusqu’à ce que la deuxième personne ait fini ici</translation>
    </message>
    <message>
        <source>outside before</source>
        <comment>before the period, and nobody has said what it was</comment>
        <translation>hors bande avant</translation>
    </message>
    <message>
        <source>Inside the band; outside before this period, on %1, and nobody has said what it was</source>
        <comment>day</comment>
        <translation>Dans la bande ; hors bande avant cette période, le %1, et personne n’a dit ce que c’était</translation>
    </message>
    <message>
        <source>outside before this period, on %1; last read: %2</source>
        <comment>day, reading</comment>
        <translation>hors bande avant cette période, le %1 ; dernière mesure : %2</translation>
    </message>
    <message>
        <source>facts in doubt</source>
        <comment>that it rests on: another program changed them</comment>
        <translation>faits en doute</translation>
    </message>
    <message>
        <source>Cannot tell: another program changed facts it rests on, or may have</source>
        <translation>On ne peut pas dire : un autre programme a modifié des faits sur lesquels il repose, ou a pu le faire</translation>
    </message>
    <message>
        <source>%1; another program changed facts it rests on, or may have</source>
        <comment>how it stands</comment>
        <translation>%1 ; un autre programme a modifié des faits sur lesquels il repose, ou a pu le faire</translation>
    </message>
    <message>
        <source>Show these facts with Ctrl+7.</source>
        <translation>Ctrl+7 montre ces faits.</translation>
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
        <translation>Noter un constat (%1)</translation>
    </message>
    <message>
        <source>Ask (%1)</source>
        <translation>Question (%1)</translation>
    </message>
    <message>
        <source>Note a finding</source>
        <translation>Noter un constat</translation>
    </message>
    <message>
        <source>What somebody found at the airframe and did there. It stays in the file with their name; a later finding stands beside it. It closes no question and changes no band.</source>
        <translation>Ce que quelqu’un a trouvé sur le planeur et y a fait. Cela reste dans le fichier avec son nom ; un constat ultérieur se place à côté. Cela ne clôt aucune question et ne change aucune bande.</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Poser une question</translation>
    </message>
    <message>
        <source>It stays open, and every page says that a question is open, until a named person says what was found and done.</source>
        <translation>La question reste ouverte, et chaque page dit qu’une question est ouverte, jusqu’à ce que quelqu’un dise, sous son nom, ce qui a été trouvé et fait.</translation>
    </message>
    <message>
        <source>Wh&amp;ere</source>
        <translation>&amp;Où</translation>
    </message>
    <message>
        <source>The whole airframe</source>
        <translation>Tout le planeur</translation>
    </message>
    <message>
        <source>&amp;Day it was found</source>
        <translation>&amp;Jour du constat</translation>
    </message>
    <message>
        <source>&amp;Who found it</source>
        <translation>&amp;Qui l’a trouvé</translation>
    </message>
    <message>
        <source>&amp;Who asks</source>
        <translation>&amp;Qui demande</translation>
    </message>
    <message>
        <source>Choose a name</source>
        <translation>Choisir un nom</translation>
    </message>
    <message>
        <source>Not in the list? Set up, People, adds a name.</source>
        <translation>Pas dans la liste ? Ajouter un nom dans Réglages, Personnes.</translation>
    </message>
    <message>
        <source>What was &amp;found</source>
        <translation>Ce qui a été &amp;trouvé</translation>
    </message>
    <message>
        <source>What was do&amp;ne</source>
        <translation>Ce qui a été &amp;fait</translation>
    </message>
    <message>
        <source>Where nothing was done, say so.</source>
        <translation>Si rien n’a été fait, le dire.</translation>
    </message>
    <message>
        <source>What is to be &amp;found out</source>
        <translation>Ce qui est à é&amp;claircir</translation>
    </message>
    <message>
        <source>About: %1</source>
        <comment>a reading</comment>
        <translation>Au sujet de : %1</translation>
    </message>
    <message>
        <source>About the reading %1 of %2.</source>
        <comment>interval, day</comment>
        <translation>Au sujet de la mesure %1 du %2.</translation>
    </message>
    <message>
        <source>Keep the finding (Ctrl+Enter)</source>
        <translation>Conserver le constat (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>Open the question (Ctrl+Enter)</source>
        <translation>Ouvrir la question (Ctrl+Enter)</translation>
    </message>
    <message>
        <source>Back (Esc)</source>
        <translation>Retour (Esc)</translation>
    </message>
    <message>
        <source>What is typed stays here while you look around.</source>
        <translation>Ce qui est saisi reste ici pendant que vous regardez ailleurs.</translation>
    </message>
    <message>
        <source>Choose who found it: a finding has a name.</source>
        <translation>Choisir qui l’a trouvé : un constat a un nom.</translation>
    </message>
    <message>
        <source>Choose who asks: a question has a name.</source>
        <translation>Choisir qui demande : une question a un nom.</translation>
    </message>
    <message>
        <source>This day lies ahead. Type today or an earlier day.</source>
        <translation>Ce jour est encore à venir. Saisir aujourd’hui ou un jour antérieur.</translation>
    </message>
    <message>
        <source>Say what was found.</source>
        <translation>Dire ce qui a été trouvé.</translation>
    </message>
    <message>
        <source>Say what was done; where nothing was, write that.</source>
        <translation>Dire ce qui a été fait ; si ce n’est rien, l’écrire.</translation>
    </message>
    <message>
        <source>Say what is to be found out.</source>
        <translation>Dire ce qui est à éclaircir.</translation>
    </message>
    <message>
        <source>Not kept yet. What is lacking stands beside its field.</source>
        <translation>Pas encore conservé. Ce qui manque figure à côté de son champ.</translation>
    </message>
    <message>
        <source>Kept: what %1 found on the airframe on %2.</source>
        <comment>person, day</comment>
        <translation>Conservé : constat sur le planeur le %2 (%1).</translation>
    </message>
    <message>
        <source>Kept: what %1 found on %2, %3.</source>
        <comment>person, coupling, day</comment>
        <translation>Conservé : constat sur %2, %3 (%1).</translation>
    </message>
    <message>
        <source>Open now: what %1 asks about the whole airframe. Ctrl+6 shows it.</source>
        <translation>Ouverte maintenant : une question sur tout le planeur (%1). Ctrl+6 la montre.</translation>
    </message>
    <message>
        <source>Open now: what %1 asks about %2. Ctrl+6 shows it.</source>
        <comment>person, coupling</comment>
        <translation>Ouverte maintenant : une question sur %2 (%1). Ctrl+6 la montre.</translation>
    </message>
    <message>
        <source>A finding or a question is typed and not kept. It is lost when this file is left now.</source>
        <translation>Un constat ou une question est saisi sans être conservé. Cela sera perdu si ce fichier est quitté maintenant.</translation>
    </message>
</context>
<context>
    <name>StopWords</name>
    <message>
        <source>%1: %2 lay outside the band. %3</source>
        <comment>coupling, reading, what became of it</comment>
        <translation>%1 : %2 était hors de la bande. %3</translation>
    </message>
    <message>
        <source>It was struck by %1: “%2”.</source>
        <comment>person, reason</comment>
        <translation>Rayée par %1 : « %2 ».</translation>
    </message>
    <message>
        <source>It was corrected to %1 by %2: “%3”.</source>
        <comment>reading, person, reason</comment>
        <translation>Corrigée en %1 par %2 : « %3 ».</translation>
    </message>
    <message>
        <source>The stop stays until a named person has said what was found and done (Ctrl+6).</source>
        <translation>L’arrêt reste jusqu’à ce que quelqu’un ait dit, sous son nom, ce qui a été trouvé et fait (Ctrl+6).</translation>
    </message>
    <message>
        <source>Open since %1.</source>
        <translation>Ouvert depuis le %1.</translation>
    </message>
    <message>
        <source>Tag the cockpit. Photograph the joint as found.</source>
        <translation>Étiquette dans l’habitacle. Photographier la liaison telle que trouvée.</translation>
    </message>
    <message>
        <source>Found on %1, as the paper says. Say in the questions (Ctrl+6) who resolved it, what was found and what was done.</source>
        <translation>Trouvé le %1, comme dit le papier. Dire dans les questions (Ctrl+6) qui l’a résolu, ce qui a été trouvé et ce qui a été fait.</translation>
    </message>
    <message>
        <source>a person entitled to decide</source>
        <translation>une personne habilitée</translation>
    </message>
    <message>
        <source>If nobody has resolved it, the stop holds today too: leave it as it is, and call %1.</source>
        <translation>Si personne ne l’a résolu, l’arrêt vaut aussi aujourd’hui : laisser en l’état et appeler %1.</translation>
    </message>
    <message>
        <source>If nobody has resolved it, the stop holds today too: leave it as it is, and call %1 (%2).</source>
        <translation>Si personne ne l’a résolu, l’arrêt vaut aussi aujourd’hui : laisser en l’état et appeler %1 (%2).</translation>
    </message>
    <message>
        <source>%1: in the control check “no” was answered at %2, and nobody has said yet what it was.</source>
        <translation>%1 : à l’essai des commandes, la réponse a été « non » (%2), et personne n’a encore dit ce que c’était.</translation>
    </message>
    <message>
        <source>%1: in the control check %2 did not move, and nobody has said yet what it was.</source>
        <translation>%1 : à l’essai des commandes, la gouverne n’a pas bougé (%2), et personne n’a encore dit ce que c’était.</translation>
    </message>
    <message>
        <source>%1: in the control check %2 moved the wrong way, and nobody has said yet what it was.</source>
        <translation>%1 : à l’essai des commandes, la gouverne a bougé dans le mauvais sens (%2), et personne n’a encore dit ce que c’était.</translation>
    </message>
    <message>
        <source>Was the “no” a slip of the key? Close its question (Ctrl+6) with a name and “slip of the key” as what was found. The joint then starts again from the look.</source>
        <translation>Le « non » était-il une erreur de touche ? Clore sa question (Ctrl+6) avec un nom et « erreur de touche » comme ce qui a été trouvé. La liaison recommence alors au contrôle visuel.</translation>
    </message>
    <message>
        <source>The joint %1 is stopped. Do not move the controls for %2 until its question is closed (Ctrl+6).</source>
        <translation>La liaison %1 est à l’arrêt. Ne pas bouger les commandes pour %2 avant que sa question soit close (Ctrl+6).</translation>
    </message>
    <message>
        <source>Other surfaces can be tried.</source>
        <translation>Les autres gouvernes peuvent être essayées.</translation>
    </message>
</context>
<context>
    <name>StoredWords</name>
    <message>
        <source>leaves</source>
        <translation>lames</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>piges</translation>
    </message>
    <message>
        <source>taper gauge</source>
        <translation>jauge conique</translation>
    </message>
    <message>
        <source>go/no-go block</source>
        <translation>calibre entre/n’entre pas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>layout A</source>
        <translation>disposition A</translation>
    </message>
    <message>
        <source>layout B</source>
        <translation>disposition B</translation>
    </message>
    <message>
        <source>layout C</source>
        <translation>disposition C</translation>
    </message>
    <message>
        <source>ball joint with sleeve</source>
        <translation>raccord à rotule avec manchon</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pige</translation>
    </message>
    <message>
        <source>ball joint with sleeve and pin</source>
        <translation>raccord à rotule avec manchon et épingle</translation>
    </message>
    <message>
        <source>connects by itself</source>
        <translation>se raccorde de lui-même</translation>
    </message>
    <message>
        <source>water ballast</source>
        <translation>ballast</translation>
    </message>
    <message>
        <source>another</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>non essayé</translation>
    </message>
    <message>
        <source>felt</source>
        <translation>senti</translation>
    </message>
    <message>
        <source>the first</source>
        <translation>la première</translation>
    </message>
    <message>
        <source>the second</source>
        <translation>la deuxième</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>reposé</translation>
    </message>
    <message>
        <source>part changed</source>
        <translation>pièce changée</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>nettoyé</translation>
    </message>
    <message>
        <source>greased</source>
        <translation>graissé</translation>
    </message>
    <message>
        <source>annual</source>
        <translation>visite annuelle</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation>démonté</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>rigging</source>
        <translation>montage</translation>
    </message>
    <message>
        <source>gone through again without being taken apart</source>
        <translation>repassé en revue sans démontage</translation>
    </message>
    <message>
        <source>ball in the socket</source>
        <translation>bille dans la cage</translation>
    </message>
    <message>
        <source>plunger home</source>
        <translation>verrou à fond</translation>
    </message>
    <message>
        <source>sleeve at its stop</source>
        <translation>manchon en butée</translation>
    </message>
    <message>
        <source>safety pin through</source>
        <translation>épingle passée</translation>
    </message>
    <message>
        <source>engaged all the way</source>
        <translation>engagé à fond</translation>
    </message>
    <message>
        <source>no step at the joint</source>
        <translation>pas de marche à la liaison</translation>
    </message>
    <message>
        <source>line connected</source>
        <translation>conduite raccordée</translation>
    </message>
    <message>
        <source>connected</source>
        <translation>raccordé</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>essai de traction</translation>
    </message>
    <message>
        <source>secured</source>
        <translation>assuré</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>cannot see</source>
        <translation>pas visible</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>lame</translation>
    </message>
    <message>
        <source>several leaves together</source>
        <translation>plusieurs lames ensemble</translation>
    </message>
    <message>
        <source>no leaf enters</source>
        <translation>aucune lame n’entre</translation>
    </message>
    <message>
        <source>the thickest leaf was loose</source>
        <translation>la lame la plus épaisse jouait</translation>
    </message>
    <message>
        <source>from a table</source>
        <translation>d’après un tableau</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>verrouillé</translation>
    </message>
    <message>
        <source>part-seated</source>
        <translation>à demi engagé</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>série de référence</translation>
    </message>
    <message>
        <source>part-seated demonstration</source>
        <translation>démonstration à demi engagé</translation>
    </message>
    <message>
        <source>asked in words</source>
        <translation>posée par écrit</translation>
    </message>
    <message>
        <source>another person took over</source>
        <translation>une autre personne a pris la suite</translation>
    </message>
    <message>
        <source>nothing was entered for long</source>
        <translation>rien n’a été saisi pendant longtemps</translation>
    </message>
    <message>
        <source>the program was closed</source>
        <translation>le programme a été fermé</translation>
    </message>
    <message>
        <source>a question was closed</source>
        <translation>une question a été close</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>complète</translation>
    </message>
    <message>
        <source>closed with open items</source>
        <translation>close avec des points ouverts</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abandonnée</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>pas encore de bande</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>hors de la bande</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>on ne peut pas dire</translation>
    </message>
    <message>
        <source>near the edge</source>
        <translation>près du bord</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dans la bande</translation>
    </message>
    <message>
        <source>too few readings</source>
        <translation>trop peu de mesures</translation>
    </message>
    <message>
        <source>all readings are open at the top</source>
        <translation>toutes les mesures sont ouvertes vers le haut</translation>
    </message>
    <message>
        <source>gauge in doubt</source>
        <translation>jauge en doute</translation>
    </message>
    <message>
        <source>the gap is no witness</source>
        <translation>l’écart n’est pas un témoin</translation>
    </message>
    <message>
        <source>reaches beyond the band</source>
        <translation>dépasse la bande</translation>
    </message>
    <message>
        <source>ball not seen</source>
        <translation>bille pas vue</translation>
    </message>
    <message>
        <source>plunger not seen</source>
        <translation>verrou pas vu</translation>
    </message>
    <message>
        <source>sleeve not seen</source>
        <translation>manchon pas vu</translation>
    </message>
    <message>
        <source>safety pin not seen</source>
        <translation>épingle pas vue</translation>
    </message>
    <message>
        <source>joint not seen</source>
        <translation>liaison pas vue</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>ni l’un ni l’autre</translation>
    </message>
    <message>
        <source>below</source>
        <translation>dessous</translation>
    </message>
    <message>
        <source>above</source>
        <translation>dessus</translation>
    </message>
    <message>
        <source>never shown part-seated</source>
        <translation>jamais montré à demi engagé</translation>
    </message>
    <message>
        <source>shown part-seated too rarely</source>
        <translation>montré trop rarement à demi engagé</translation>
    </message>
    <message>
        <source>a good witness</source>
        <translation>un bon témoin</translation>
    </message>
    <message>
        <source>a weak witness</source>
        <translation>un témoin faible</translation>
    </message>
    <message>
        <source>aileron</source>
        <translation>aileron</translation>
    </message>
    <message>
        <source>elevator</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>rudder</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>flap</source>
        <translation>volet</translation>
    </message>
    <message>
        <source>airbrake</source>
        <translation>aérofrein</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>compensateur</translation>
    </message>
    <message>
        <source>water dump</source>
        <translation>vidange d’eau</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>degrés</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>millimètres</translation>
    </message>
    <message>
        <source>held one way</source>
        <translation>tenue, dans un sens</translation>
    </message>
    <message>
        <source>held the other way</source>
        <translation>tenue, dans l’autre sens</translation>
    </message>
    <message>
        <source>sense</source>
        <translation>sens de débattement</translation>
    </message>
    <message>
        <source>full travel</source>
        <translation>course complète</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>neutre</translation>
    </message>
    <message>
        <source>free play</source>
        <translation>jeu</translation>
    </message>
    <message>
        <source>moves freely</source>
        <translation>bouge librement</translation>
    </message>
    <message>
        <source>every notch</source>
        <translation>chaque cran</translation>
    </message>
    <message>
        <source>holds its setting</source>
        <translation>garde son réglage</translation>
    </message>
    <message>
        <source>called one way</source>
        <translation>annoncé, dans un sens</translation>
    </message>
    <message>
        <source>called the other way</source>
        <translation>annoncé, dans l’autre sens</translation>
    </message>
    <message>
        <source>up</source>
        <translation>vers le haut</translation>
    </message>
    <message>
        <source>down</source>
        <translation>vers le bas</translation>
    </message>
    <message>
        <source>out</source>
        <translation>sorti</translation>
    </message>
    <message>
        <source>in</source>
        <translation>rentré</translation>
    </message>
    <message>
        <source>opens</source>
        <translation>s’ouvre</translation>
    </message>
    <message>
        <source>shuts</source>
        <translation>se ferme</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>cleaned for the season</source>
        <translation>nettoyé pour la saison</translation>
    </message>
    <message>
        <source>greased for the season</source>
        <translation>graissé pour la saison</translation>
    </message>
    <message>
        <source>leaves checked for the season</source>
        <translation>lames contrôlées pour la saison</translation>
    </message>
    <message>
        <source>note read</source>
        <translation>note lue</translation>
    </message>
    <message>
        <source>reading outside its band</source>
        <translation>mesure hors de la bande</translation>
    </message>
    <message>
        <source>answered with no</source>
        <translation>réponse « non »</translation>
    </message>
    <message>
        <source>two readings disagree</source>
        <translation>deux mesures ne concordent pas</translation>
    </message>
    <message>
        <source>left and right look swapped</source>
        <translation>gauche et droite semblent inversées</translation>
    </message>
    <message>
        <source>surface wrong or not seen</source>
        <translation>gouverne fausse ou pas vue</translation>
    </message>
    <message>
        <source>band in doubt</source>
        <translation>bande en doute</translation>
    </message>
    <message>
        <source>shown part-seated on purpose</source>
        <translation>montré à demi engagé exprès</translation>
    </message>
    <message>
        <source>low tailplane</source>
        <translation>empennage bas</translation>
    </message>
    <message>
        <source>T-tail</source>
        <translation>empennage en T</translation>
    </message>
    <message>
        <source>V-tail</source>
        <translation>empennage en V</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>access</source>
        <translation>accès</translation>
    </message>
    <message>
        <source>locked or not</source>
        <translation>verrouillé ou non</translation>
    </message>
    <message>
        <source>calls and order</source>
        <translation>annonces et ordre</translation>
    </message>
    <message>
        <source>not secured</source>
        <translation>non assuré</translation>
    </message>
    <message>
        <source>not connected</source>
        <translation>non raccordé</translation>
    </message>
    <message>
        <source>not locked</source>
        <translation>non verrouillé</translation>
    </message>
    <message>
        <source>call</source>
        <translation>annonce</translation>
    </message>
    <message>
        <source>order of rigging</source>
        <translation>ordre de montage</translation>
    </message>
    <message>
        <source>whom to call</source>
        <translation>qui appeler</translation>
    </message>
    <message>
        <source>when to stop</source>
        <translation>quand s’arrêter</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>validée</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retirée</translation>
    </message>
    <message>
        <source>closings of a record</source>
        <translation>clôtures d’une fiche</translation>
    </message>
    <message>
        <source>answers to a question</source>
        <translation>réponses à une question</translation>
    </message>
    <message>
        <source>versions of one thing</source>
        <translation>versions d’une même chose</translation>
    </message>
    <message>
        <source>corrections of a reading</source>
        <translation>corrections d’une mesure</translation>
    </message>
    <message>
        <source>rigging records</source>
        <translation>fiches de montage</translation>
    </message>
    <message>
        <source>names</source>
        <translation>noms</translation>
    </message>
    <message>
        <source>two things</source>
        <translation>deux choses</translation>
    </message>
    <message>
        <source>one and the same</source>
        <translation>une seule et même chose</translation>
    </message>
    <message>
        <source>first person</source>
        <translation>première personne</translation>
    </message>
    <message>
        <source>second person</source>
        <translation>deuxième personne</translation>
    </message>
    <message>
        <source>with the coupling itself</source>
        <translation>avec le raccord lui-même</translation>
    </message>
    <message>
        <source>ball joint with safety pin</source>
        <translation>raccord à rotule avec épingle</translation>
    </message>
    <message>
        <source>by the person at work</source>
        <translation>par la personne au travail</translation>
    </message>
    <message>
        <source>role</source>
        <translation>rôle</translation>
    </message>
    <message>
        <source>telephone</source>
        <translation>téléphone</translation>
    </message>
    <message>
        <source>registration</source>
        <translation>immatriculation</translation>
    </message>
    <message>
        <source>type</source>
        <translation>type</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>jurisdiction</source>
        <translation>droit applicable</translation>
    </message>
    <message>
        <source>manuals and directives</source>
        <translation>manuels et consignes</translation>
    </message>
    <message>
        <source>annual due</source>
        <translation>échéance de la visite annuelle</translation>
    </message>
    <message>
        <source>telephone of whom to call</source>
        <translation>téléphone de la personne à appeler</translation>
    </message>
    <message>
        <source>riggings before this file</source>
        <translation>montages avant ce fichier</translation>
    </message>
    <message>
        <source>span in centimetres</source>
        <translation>envergure en centimètres</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>empennage</translation>
    </message>
    <message>
        <source>wing panels</source>
        <translation>éléments d’aile</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>sorte</translation>
    </message>
    <message>
        <source>resolution</source>
        <translation>résolution</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>tolérance</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en service</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>how it was checked</source>
        <translation>comment il a été contrôlé</translation>
    </message>
    <message>
        <source>found</source>
        <translation>constaté</translation>
    </message>
    <message>
        <source>readings in doubt from</source>
        <translation>mesures en doute à partir du</translation>
    </message>
    <message>
        <source>known gap</source>
        <translation>écart connu</translation>
    </message>
    <message>
        <source>enters the known gap</source>
        <translation>entre dans l’écart connu</translation>
    </message>
    <message>
        <source>does not enter the known gap</source>
        <translation>n’entre pas dans l’écart connu</translation>
    </message>
    <message>
        <source>airframe</source>
        <translation>planeur</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>circuit de commande</translation>
    </message>
    <message>
        <source>circuit in words</source>
        <translation>circuit en toutes lettres</translation>
    </message>
    <message>
        <source>side</source>
        <translation>côté</translation>
    </message>
    <message>
        <source>place on the plan, across</source>
        <translation>place sur la vue de dessus, en travers</translation>
    </message>
    <message>
        <source>place on the plan, along</source>
        <translation>place sur la vue de dessus, en long</translation>
    </message>
    <message>
        <source>seen from</source>
        <translation>vu depuis</translation>
    </message>
    <message>
        <source>mirror from</source>
        <translation>miroir depuis</translation>
    </message>
    <message>
        <source>place of the leaf</source>
        <translation>place de la lame</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>disposition</translation>
    </message>
    <message>
        <source>a gap to measure</source>
        <translation>écart à mesurer</translation>
    </message>
    <message>
        <source>something to pull</source>
        <translation>de quoi tirer</translation>
    </message>
    <message>
        <source>something to secure</source>
        <translation>de quoi assurer</translation>
    </message>
    <message>
        <source>rigging order</source>
        <translation>ordre de montage</translation>
    </message>
    <message>
        <source>coupling</source>
        <translation>raccord</translation>
    </message>
    <message>
        <source>begins</source>
        <translation>commence</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>came from</source>
        <translation>provient de</translation>
    </message>
    <message>
        <source>rigging leader</source>
        <translation>responsable du montage</translation>
    </message>
    <message>
        <source>begun on</source>
        <translation>commencé le</translation>
    </message>
    <message>
        <source>temperature, °C</source>
        <translation>température, °C</translation>
    </message>
    <message>
        <source>typed in by</source>
        <translation>saisi par</translation>
    </message>
    <message>
        <source>rigging record</source>
        <translation>fiche de montage</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>passage</translation>
    </message>
    <message>
        <source>answered on</source>
        <translation>répondu le</translation>
    </message>
    <message>
        <source>copied by</source>
        <translation>recopié par</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>pose</translation>
    </message>
    <message>
        <source>how it was read</source>
        <translation>façon de mesurer</translation>
    </message>
    <message>
        <source>state</source>
        <translation>état</translation>
    </message>
    <message>
        <source>corrects</source>
        <translation>corrige</translation>
    </message>
    <message>
        <source>version of the method</source>
        <translation>version de la méthode</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>sens</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>témoin</translation>
    </message>
    <message>
        <source>chance to miss it</source>
        <translation>probabilité de ne pas le voir</translation>
    </message>
    <message>
        <source>inner edge below, mm</source>
        <translation>bord intérieur bas, mm</translation>
    </message>
    <message>
        <source>inner edge above, mm</source>
        <translation>bord intérieur haut, mm</translation>
    </message>
    <message>
        <source>outer edge below, mm</source>
        <translation>bord extérieur bas, mm</translation>
    </message>
    <message>
        <source>outer edge above, mm</source>
        <translation>bord extérieur haut, mm</translation>
    </message>
    <message>
        <source>middle, mm</source>
        <translation>milieu, mm</translation>
    </message>
    <message>
        <source>scatter, mm</source>
        <translation>dispersion, mm</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>scatter taken as the largest</source>
        <translation>dispersion prise au maximum</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>how it was closed</source>
        <translation>façon dont elle est close</translation>
    </message>
    <message>
        <source>play along the rod</source>
        <translation>jeu le long de la tringle</translation>
    </message>
    <message>
        <source>play along the rod, measured</source>
        <translation>jeu le long de la tringle, mesuré</translation>
    </message>
    <message>
        <source>play across the rod</source>
        <translation>jeu en travers de la tringle</translation>
    </message>
    <message>
        <source>play across the rod, measured</source>
        <translation>jeu en travers de la tringle, mesuré</translation>
    </message>
    <message>
        <source>order of the control check</source>
        <translation>ordre de l’essai des commandes</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>distance of the ruler</source>
        <translation>distance de la règle</translation>
    </message>
    <message>
        <source>up, from the manual</source>
        <translation>vers le haut, d’après le manuel</translation>
    </message>
    <message>
        <source>up, tolerance</source>
        <translation>vers le haut, tolérance</translation>
    </message>
    <message>
        <source>down, from the manual</source>
        <translation>vers le bas, d’après le manuel</translation>
    </message>
    <message>
        <source>down, tolerance</source>
        <translation>vers le bas, tolérance</translation>
    </message>
    <message>
        <source>most play of the surface</source>
        <translation>plus grand jeu de la gouverne</translation>
    </message>
    <message>
        <source>place in the manual</source>
        <translation>passage du manuel</translation>
    </message>
    <message>
        <source>surface</source>
        <translation>gouverne</translation>
    </message>
    <message>
        <source>in the cockpit</source>
        <translation>dans l’habitacle</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vu</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>question</source>
        <translation>question</translation>
    </message>
    <message>
        <source>question of the look</source>
        <translation>question du contrôle visuel</translation>
    </message>
    <message>
        <source>question of the control check</source>
        <translation>question de l’essai des commandes</translation>
    </message>
    <message>
        <source>in words</source>
        <translation>en toutes lettres</translation>
    </message>
    <message>
        <source>shows</source>
        <translation>montre</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>asks</source>
        <translation>porte sur</translation>
    </message>
    <message>
        <source>round of practice</source>
        <translation>série d’exercice</translation>
    </message>
    <message>
        <source>what was shown</source>
        <translation>ce qui était montré</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>mirror</source>
        <translation>miroir</translation>
    </message>
    <message>
        <source>torch</source>
        <translation>lampe</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source>said</source>
        <translation>dit</translation>
    </message>
    <message>
        <source>felt certain</source>
        <translation>en était certain</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>demandé</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>question posée</translation>
    </message>
    <message>
        <source>learner</source>
        <translation>élève</translation>
    </message>
    <message>
        <source>mentor</source>
        <translation>encadrant</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>validé par</translation>
    </message>
    <message>
        <source>months</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>months without rigging</source>
        <translation>mois sans montage</translation>
    </message>
    <message>
        <source>riggings under supervision then</source>
        <translation>montages encadrés alors</translation>
    </message>
    <message>
        <source>not practised then</source>
        <translation>non exercé alors</translation>
    </message>
    <message>
        <source>missed then</source>
        <translation>manqué alors</translation>
    </message>
    <message>
        <source>repeats</source>
        <translation>répétitions</translation>
    </message>
    <message>
        <source>crossed study</source>
        <translation>étude croisée</translation>
    </message>
    <message>
        <source>place in the study</source>
        <translation>place dans l’étude</translation>
    </message>
    <message>
        <source>may be told to others</source>
        <translation>peut être dit à d’autres</translation>
    </message>
    <message>
        <source>rigging under supervision</source>
        <translation>montage encadré</translation>
    </message>
    <message>
        <source>reading in practice</source>
        <translation>mesure en exercice</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>vaut</translation>
    </message>
    <message>
        <source>version of a person</source>
        <translation>version d’une personne</translation>
    </message>
    <message>
        <source>digest of what it reads since then</source>
        <translation>empreinte de ce qui s’y lit depuis</translation>
    </message>
    <message>
        <source>enters</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>does not enter</source>
        <translation>n’entre pas</translation>
    </message>
    <message>
        <source>measured at</source>
        <translation>mesuré le</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>réponse</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>purpose</source>
        <translation>but</translation>
    </message>
    <message>
        <source>shown at the time</source>
        <translation>affiché alors</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>image</translation>
    </message>
    <message>
        <source>an imported table</source>
        <translation>un tableau importé</translation>
    </message>
    <message>
        <source>locks with even force</source>
        <translation>verrouille avec une force égale</translation>
    </message>
    <message>
        <source>both open, both shut</source>
        <translation>les deux ouverts, les deux fermés</translation>
    </message>
    <message>
        <source>couplings looked at anew for the season</source>
        <translation>raccords regardés à nouveau pour la saison</translation>
    </message>
    <message>
        <source>tools counted back out</source>
        <translation>outils comptés et ressortis</translation>
    </message>
    <message>
        <source>hatches closed and taped</source>
        <translation>trappes fermées et recouvertes de ruban</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>l’avant</translation>
    </message>
    <message>
        <source>the rear</source>
        <translation>l’arrière</translation>
    </message>
    <message>
        <source>none felt</source>
        <translation>aucun senti</translation>
    </message>
    <message>
        <source>facts in doubt</source>
        <translation>faits en doute</translation>
    </message>
</context>
<context>
    <name>StudyWords</name>
    <message>
        <source>Practise to measure</source>
        <translation>S’exercer à mesurer</translation>
    </message>
    <message>
        <source>Read the same locked joint several times, each time taking the leaf out and beginning anew. Earlier readings are not shown. Only on a joint that was looked at and found locked. What is read here makes no band and is held against none; but a figure far from the others is a stop, practice or not. Afterwards look at the joint and pull it again, and try its surfaces again.</source>
        <translation>Mesurer la même liaison verrouillée plusieurs fois, en sortant la lame et en recommençant à chaque fois. Les mesures précédentes ne sont pas montrées. Seulement sur une liaison regardée et trouvée verrouillée. Ce qui est mesuré ici ne fait aucune bande et n’est comparé à aucune ; mais un chiffre loin des autres est un arrêt, exercice ou non. Ensuite regarder la liaison, la tirer de nouveau, et essayer de nouveau ses gouvernes.</translation>
    </message>
    <message>
        <source>Reading: %1</source>
        <comment>a coupling</comment>
        <translation>Mesure : %1</translation>
    </message>
    <message>
        <source>Measured &amp;with</source>
        <translation>Mesuré a&amp;vec</translation>
    </message>
    <message>
        <source>Choose a gauge</source>
        <translation>Choisir une jauge</translation>
    </message>
    <message>
        <source>Choose first what you measure with.</source>
        <translation>Choisir d’abord avec quoi vous mesurez.</translation>
    </message>
    <message>
        <source>This coupling has no gap to read. Choose another one at the left.</source>
        <translation>Ce raccord n’a pas d’écart à mesurer. En choisir un autre à gauche.</translation>
    </message>
    <message numerus="yes">
        <source>Kept. Own practice readings so far: %n</source>
        <translation>
            <numerusform>Conservé. Vos mesures d’exercice jusqu’ici : %n</numerusform>
            <numerusform>Conservé. Vos mesures d’exercice jusqu’ici : %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept: reading %1 of %2, by %3.</source>
        <comment>numbers, a person</comment>
        <translation>Conservé : mesure %1 sur %2, par %3.</translation>
    </message>
    <message>
        <source>Choose a reading of yours</source>
        <translation>Choisir une mesure à vous</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a coupling, a time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>S&amp;how my figures</source>
        <translation>Montrer me&amp;s chiffres</translation>
    </message>
    <message>
        <source>&amp;Hide my figures</source>
        <translation>Cacher me&amp;s chiffres</translation>
    </message>
    <message>
        <source>Private to %1: in no report and no table, unless the box is ticked.</source>
        <comment>a person</comment>
        <translation>Réservé à %1 : dans aucun rapport ni tableau, sauf si la case est cochée.</translation>
    </message>
    <message>
        <source>M&amp;y figures may be told to others</source>
        <translation>Mes chiffres peuven&amp;t être communiqués</translation>
    </message>
    <message>
        <source>No practice reading yet.</source>
        <translation>Pas encore de mesure d’exercice.</translation>
    </message>
    <message numerus="yes">
        <source>Own practice readings: %n</source>
        <translation>
            <numerusform>Vos mesures d’exercice : %n</numerusform>
            <numerusform>Vos mesures d’exercice : %n</numerusform>
        </translation>
    </message>
    <message>
        <source>How alike you read again can be told from the second reading of one joint on.</source>
        <translation>À partir de la deuxième mesure d’une même liaison, on peut dire à quel point vos mesures se répètent.</translation>
    </message>
    <message>
        <source>Your repeated readings of one joint scatter by %1 mm (standard deviation; 95 % interval %2 to %3).</source>
        <translation>Vos mesures répétées d’une liaison se dispersent de %1 mm (écart-type ; intervalle à 95 % de %2 à %3).</translation>
    </message>
    <message>
        <source>The step of the leaves alone scatters more than that: a finer set would tell more.</source>
        <translation>Le pas des lames seul disperse plus que cela : un jeu plus fin en dirait plus.</translation>
    </message>
    <message>
        <source>You read wider than the others by %1 mm (95 % interval %2 to %3).</source>
        <translation>Vous mesurez plus large que les autres de %1 mm (intervalle à 95 % de %2 à %3).</translation>
    </message>
    <message>
        <source>You read narrower than the others by %1 mm (95 % interval %2 to %3).</source>
        <translation>Vous mesurez plus étroit que les autres de %1 mm (intervalle à 95 % de %2 à %3).</translation>
    </message>
    <message>
        <source>No difference from the others is shown; it may be anything from %1 to %2 mm (95 % interval).</source>
        <translation>Aucune différence avec les autres ne se montre ; elle peut aller de %1 à %2 mm (intervalle à 95 %).</translation>
    </message>
    <message>
        <source>How far you read from the others can be told from ten readings on, and where others have read the same joints.</source>
        <translation>De combien vos mesures s’éloignent de celles des autres peut se dire à partir de dix mesures, et là où d’autres ont mesuré les mêmes liaisons.</translation>
    </message>
    <message>
        <source>Crossed study</source>
        <translation>Étude croisée</translation>
    </message>
    <message>
        <source>Several people read several couplings several times, in an order drawn by lot, and nobody sees earlier readings. The joints stay connected throughout. It tells how alike people measure here, and counts for nothing else. It can be left in the middle and gone on with here later. Only on joints that were looked at and found locked; afterwards look at each and pull it again, and try its surfaces again.</source>
        <translation>Plusieurs personnes mesurent plusieurs raccords plusieurs fois, dans un ordre tiré au sort, et personne ne voit les mesures précédentes. Les liaisons restent raccordées tout du long. L’étude dit à quel point on mesure ici de la même façon, et ne compte pour rien d’autre. On peut la laisser au milieu et la reprendre ici plus tard. Seulement sur des liaisons regardées et trouvées verrouillées ; ensuite regarder chacune, la tirer de nouveau, et essayer de nouveau ses gouvernes.</translation>
    </message>
    <message>
        <source>Couplings</source>
        <translation>Raccords</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>R&amp;eadings of each coupling by each person</source>
        <translation>Mesures par raccord et par perso&amp;nne</translation>
    </message>
    <message>
        <source>&amp;Begin the study</source>
        <translation>Dé&amp;buter l’étude</translation>
    </message>
    <message>
        <source>&amp;Begin another study</source>
        <translation>Dé&amp;buter une autre étude</translation>
    </message>
    <message>
        <source>Tick at least two couplings and two people.</source>
        <translation>Cocher au moins deux raccords et deux personnes.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) in all.</source>
        <translation>
            <numerusform>%n mesure en tout.</numerusform>
            <numerusform>%n mesures en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading %1 of %2</source>
        <translation>Mesure %1 sur %2</translation>
    </message>
    <message>
        <source>Next: %1 reads %2</source>
        <comment>a person, a coupling</comment>
        <translation>Ensuite : %1 mesure %2</translation>
    </message>
    <message>
        <source>Begin anew with the thinnest likely leaf. Do not look at what stood there before.</source>
        <translation>Recommencer avec la lame la plus mince probable. Ne pas regarder ce qu’il y avait avant.</translation>
    </message>
    <message>
        <source>Hand over to %1. Nothing is taken before that.</source>
        <comment>a person</comment>
        <translation>Passer la main à %1. Rien n’est pris avant cela.</translation>
    </message>
    <message>
        <source>Alt+I, or a click, by whoever reads next: no figure and no Enter goes past this.</source>
        <translation>Alt+I, ou un clic, par qui mesure ensuite : aucun chiffre ni aucun Enter ne passe outre.</translation>
    </message>
    <message>
        <source>&amp;I am %1 and read now</source>
        <comment>a person</comment>
        <translation>Je su&amp;is %1 et je mesure</translation>
    </message>
    <message>
        <source>&amp;Take the last reading back: %1, %2 …</source>
        <comment>a person, a coupling</comment>
        <translation>Re&amp;tirer la dernière mesure : %1, %2 …</translation>
    </message>
    <message>
        <source>Leave it, &amp;go on later</source>
        <translation>Laisser, reprendre plus tar&amp;d</translation>
    </message>
    <message>
        <source>The study is left at %1 of %2 readings. They are kept, and it is gone on with here at any time, also after the program was closed, as long as no joint of it was opened. Once one was, begin another study.</source>
        <translation>L’étude est laissée à %1 mesures sur %2. Elles sont conservées, et l’étude peut être reprise ici à tout moment, même après la fermeture du programme, tant qu’aucune de ses liaisons n’a été ouverte. Si l’une l’a été, débuter une autre étude.</translation>
    </message>
    <message>
        <source>&amp;Go on with the study</source>
        <translation>Repren&amp;dre l’étude</translation>
    </message>
    <message>
        <source>The study is complete.</source>
        <translation>L’étude est complète.</translation>
    </message>
    <message>
        <source>About 95 of 100 pairs of readings of one joint would differ by no more than about %1 mm when one person reads, and %2 mm when two do.</source>
        <translation>Environ 95 paires de mesures d’une liaison sur 100 différeraient d’au plus environ %1 mm quand une personne mesure, et de %2 mm quand deux mesurent.</translation>
    </message>
    <message numerus="yes">
        <source>%1 With %n people the second figure is rough.</source>
        <translation>
            <numerusform>%1 Avec %n personne, le deuxième chiffre est approximatif.</numerusform>
            <numerusform>%1 Avec %n personnes, le deuxième chiffre est approximatif.</numerusform>
        </translation>
    </message>
    <message>
        <source>A reading has no thicker leaf that refused, so its middle is not known, and the study tells nothing. Begin another one with thicker leaves.</source>
        <translation>Une mesure n’a pas de lame plus épaisse qui n’entrait pas, son milieu n’est donc pas connu, et l’étude ne dit rien. En débuter une autre avec des lames plus épaisses.</translation>
    </message>
    <message>
        <source>These readings do not tell how alike people measure.</source>
        <translation>Ces mesures ne disent pas à quel point on mesure de la même façon.</translation>
    </message>
    <message>
        <source>From these readings</source>
        <translation>D’après ces mesures</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Standard deviation, one person reading again</source>
        <translation>Écart-type, une personne qui remesure</translation>
    </message>
    <message>
        <source>Standard deviation, any person reading</source>
        <translation>Écart-type, n’importe quelle personne</translation>
    </message>
    <message>
        <source>Standard deviation from person to person</source>
        <translation>Écart-type d’une personne à l’autre</translation>
    </message>
    <message>
        <source>Standard deviation, person by coupling</source>
        <translation>Écart-type, personne par raccord</translation>
    </message>
    <message>
        <source>Standard deviation from coupling to coupling</source>
        <translation>Écart-type d’un raccord à l’autre</translation>
    </message>
    <message>
        <source>95 % difference, one person</source>
        <translation>Différence à 95 %, une personne</translation>
    </message>
    <message>
        <source>95 % difference, two people</source>
        <translation>Différence à 95 %, deux personnes</translation>
    </message>
    <message>
        <source>All of it on one rigging: how differently the joint sits each time it is connected is not in these figures.</source>
        <translation>Le tout sur un seul montage : comment la liaison se place différemment à chaque raccordement n’est pas dans ces chiffres.</translation>
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
        <translation>Montrer la dernière fiche  (%1)</translation>
    </message>
    <message>
        <source>Write it as PDF  (%1)</source>
        <translation>Écrire en PDF  (%1)</translation>
    </message>
    <message>
        <source>Back  (%1)</source>
        <translation>Retour  (%1)</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Correct a reading</source>
        <translation>Corriger une mesure</translation>
    </message>
    <message>
        <source>A closed record takes nothing new. A slip of the pen can be put right: the old reading stays, with a line through it, the reason and the name.</source>
        <translation>Une fiche close n’accepte rien de nouveau. Une faute de frappe peut être rectifiée : l’ancienne mesure reste, barrée d’un trait, avec la raison et le nom.</translation>
    </message>
    <message>
        <source>Reading to correct</source>
        <translation>Mesure à corriger</translation>
    </message>
    <message>
        <source>Choose a reading</source>
        <translation>Choisir une mesure</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <comment>coupling: interval, person, time</comment>
        <translation>%1 : %2, %3, %4</translation>
    </message>
    <message>
        <source>What was read, mm</source>
        <translation>Ce qui a été mesuré, mm</translation>
    </message>
    <message>
        <source>0.50 0.55, or the leaf that entered</source>
        <translation>0,50 0,55, ou la lame qui est entrée</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>What went wrong with the first one</source>
        <translation>Ce qui n’allait pas dans la première</translation>
    </message>
    <message>
        <source>Choose a person</source>
        <translation>Choisir une personne</translation>
    </message>
    <message>
        <source>Corrected by</source>
        <translation>Corrigée par</translation>
    </message>
    <message>
        <source>Correct this reading</source>
        <translation>Corriger cette mesure</translation>
    </message>
    <message>
        <source>Choose the reading that is wrong first.</source>
        <translation>Choisir d’abord la mesure fausse.</translation>
    </message>
    <message>
        <source>Say why it is wrong: the reason stands beside it for good.</source>
        <translation>Dire pourquoi elle est fausse : la raison reste à côté pour toujours.</translation>
    </message>
    <message>
        <source>Choose who corrects it. Nobody is filled in for you.</source>
        <translation>Choisir qui la corrige. Aucun nom n’est inscrit d’avance.</translation>
    </message>
    <message>
        <source>Type two figures, the leaf that entered and the one that did not, such as 0.50 0.55.</source>
        <translation>Taper deux chiffres, la lame qui est entrée et celle qui n’est pas entrée, par exemple 0,50 0,55.</translation>
    </message>
    <message>
        <source>The leaf that entered has to be thinner than the one that did not. Type the thinner one first.</source>
        <translation>La lame qui est entrée doit être plus mince que celle qui n’est pas entrée. Taper d’abord la plus mince.</translation>
    </message>
    <message>
        <source>That is wider than any gap here. Type millimetres with a point or a comma.</source>
        <translation>C’est plus large que tout écart ici. Taper des millimètres avec un point ou une virgule.</translation>
    </message>
    <message>
        <source>Corrected to %1. The old reading stays, with a line through it.</source>
        <translation>Corrigée en %1. L’ancienne mesure reste, barrée d’un trait.</translation>
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
        <translation>Rien n’est encore saisi. Saisir un nombre, par exemple %1.</translation>
    </message>
    <message>
        <source>“%1” is not a figure. Type digits with a point or a comma, such as %2.</source>
        <translation>« %1 » n’est pas un nombre. Saisir des chiffres avec un point ou une virgule, par exemple %2.</translation>
    </message>
    <message>
        <source>“%1” has more than one point or comma. Type one of them only, such as %2.</source>
        <translation>« %1 » a plus d’un point ou d’une virgule. N’en saisir qu’un, par exemple %2.</translation>
    </message>
    <message>
        <source>“%1” is finer than anybody can measure here. Three figures after the point at most.</source>
        <translation>« %1 » est plus fin que ce que l’on peut mesurer ici. Trois chiffres au plus après la virgule.</translation>
    </message>
    <message>
        <source>“%1” is below zero. Type how far it moves, without a sign.</source>
        <translation>« %1 » est inférieur à zéro. Saisir de combien elle bouge, sans signe.</translation>
    </message>
    <message>
        <source>%1 degrees is more than half a turn. Was it millimetres?</source>
        <translation>%1 degrés, c’est plus d’un demi-tour. Était-ce des millimètres ?</translation>
    </message>
    <message>
        <source>%1 mm is more than a metre. Type millimetres with a point or a comma.</source>
        <translation>%1 mm, c’est plus d’un mètre. Saisir des millimètres avec un point ou une virgule.</translation>
    </message>
    <message>
        <source>At %1 from the hinge nothing can move that far. Look at the figure and at the distance in Set up.</source>
        <translation>À %1 de la charnière, rien ne peut bouger autant. Revoir le nombre, et la distance dans Réglages.</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>degrés</translation>
    </message>
    <message>
        <source>millimetres in a straight line</source>
        <translation>millimètres en ligne droite</translation>
    </message>
    <message>
        <source>Aileron</source>
        <translation>Aileron</translation>
    </message>
    <message>
        <source>Elevator</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Rudder</source>
        <translation>Direction</translation>
    </message>
    <message>
        <source>Flap</source>
        <translation>Volet</translation>
    </message>
    <message>
        <source>Airbrake</source>
        <translation>Aérofrein</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Compensateur</translation>
    </message>
    <message>
        <source>Water dump</source>
        <translation>Vidange d’eau</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>Stick left: left aileron up, right down.</source>
        <translation>Manche à gauche : aileron gauche levé, droit baissé.</translation>
    </message>
    <message>
        <source>Stick back: trailing edge up.</source>
        <translation>Manche en arrière : bord de fuite vers le haut.</translation>
    </message>
    <message>
        <source>Left pedal: rudder to the left.</source>
        <translation>Palonnier à gauche : direction à gauche.</translation>
    </message>
    <message>
        <source>Flaps positive: both down.</source>
        <translation>Volets en positif : les deux vers le bas.</translation>
    </message>
    <message>
        <source>Airbrake lever back: both out. Lever forward: both in and locked.</source>
        <translation>Manette d’aérofreins en arrière : les deux sortis. Manette en avant : les deux rentrés et verrouillés.</translation>
    </message>
    <message>
        <source>Trim nose-down: it moves as the manual says.</source>
        <translation>Compensateur à piquer : il bouge comme le dit le manuel.</translation>
    </message>
    <message>
        <source>Lever open: both open. Lever shut: both shut.</source>
        <translation>Vidange sur ouvert : les deux ouverts. Vidange sur fermé : les deux fermés.</translation>
    </message>
    <message>
        <source>Say aloud how it moves.</source>
        <translation>Dire à voix haute comment elle bouge.</translation>
    </message>
    <message>
        <source>Surfaces</source>
        <translation>Gouvernes</translation>
    </message>
    <message>
        <source>The control check goes through these one by one: held and resisted, called both ways, full travel, play. Also one that connects by itself belongs here. What the manual says of deflections stands beside what you measure, with its page.</source>
        <translation>L’essai des commandes les parcourt une à une : tenue et résistance, annonces dans les deux sens, course complète, jeu. Celle qui se raccorde d’elle-même a aussi sa place ici. Ce que le manuel dit des débattements figure à côté de ce que vous mesurez, avec la page.</translation>
    </message>
    <message>
        <source>1 surface</source>
        <translation>1 gouverne</translation>
    </message>
    <message>
        <source>%1 surfaces</source>
        <translation>%1 gouvernes</translation>
    </message>
    <message>
        <source>Surfaces in the order of the control check</source>
        <translation>Gouvernes dans l’ordre de l’essai des commandes</translation>
    </message>
    <message>
        <source>No surface yet. Start from the usual ones, or add your own.</source>
        <translation>Pas encore de gouverne. Partir des habituelles, ou ajouter les vôtres.</translation>
    </message>
    <message>
        <source>Add a surface</source>
        <translation>Ajouter une gouverne</translation>
    </message>
    <message>
        <source>Add the usual surfaces</source>
        <translation>Ajouter les gouvernes habituelles</translation>
    </message>
    <message>
        <source>Ailerons, airbrakes, elevator, rudder and trim; flaps where a coupling of a flap is set up. What this airframe does not have is taken out of use again, and every name can be changed.</source>
        <translation>Ailerons, aérofreins, profondeur, direction et compensateur ; volets si un raccord de volet est créé. Ce que ce planeur n’a pas se met ensuite hors service, et chaque nom peut être changé.</translation>
    </message>
    <message>
        <source>All the usual surfaces are there already.</source>
        <translation>Toutes les gouvernes habituelles sont déjà là.</translation>
    </message>
    <message>
        <source>no figures from the manual</source>
        <translation>pas de valeurs du manuel</translation>
    </message>
    <message>
        <source>figures from %1</source>
        <translation>valeurs d’après %1</translation>
    </message>
    <message>
        <source>A new surface</source>
        <translation>Une nouvelle gouverne</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>As you call it aloud: Left aileron.</source>
        <translation>Comme vous l’annoncez à voix haute : Aileron gauche.</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Sorte</translation>
    </message>
    <message>
        <source>It says what is tried in the control check.</source>
        <translation>Elle dit ce qui est essayé à l’essai des commandes.</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>Cô&amp;té</translation>
    </message>
    <message>
        <source>What is expe&amp;cted, in words</source>
        <translation>Ce qui est &amp;attendu, en mots</translation>
    </message>
    <message>
        <source>Empty: “%1” In words of your own it is asked whether it does that.</source>
        <translation>Vide : « %1 » Avec vos propres mots, il est demandé si elle fait cela.</translation>
    </message>
    <message>
        <source>The manual &amp;gives</source>
        <translation>Le manuel &amp;donne</translation>
    </message>
    <message>
        <source>&amp;Hinge to ruler, mm</source>
        <translation>De la &amp;charnière à la règle, mm</translation>
    </message>
    <message>
        <source>From the hinge to the trailing edge, square to the hinge line, where the ruler is held. It turns millimetres into degrees.</source>
        <translation>De la charnière au bord de fuite, d’équerre avec la ligne de charnière, là où la règle est tenue. Cela change les millimètres en degrés.</translation>
    </message>
    <message>
        <source>&amp;Up; on a rudder, left</source>
        <translation>&amp;Haut ; à la direction, gauche</translation>
    </message>
    <message>
        <source>Up or left, plus or minus</source>
        <translation>Haut ou gauche, plus ou moins</translation>
    </message>
    <message>
        <source>&amp;Down; on a rudder, right</source>
        <translation>&amp;Bas ; à la direction, droite</translation>
    </message>
    <message>
        <source>Down or right, plus or minus</source>
        <translation>Bas ou droite, plus ou moins</translation>
    </message>
    <message>
        <source>From the manual, never from memory. May stay empty.</source>
        <translation>Du manuel, jamais de mémoire. Peut rester vide.</translation>
    </message>
    <message>
        <source>Most free &amp;play</source>
        <translation>&amp;Jeu maximal</translation>
    </message>
    <message>
        <source>&amp;Manual, page and revision</source>
        <translation>&amp;Manuel, page et révision</translation>
    </message>
    <message>
        <source>Where the figures stand: page 4-12, revision 3.</source>
        <translation>Où sont les valeurs : page 4-12, révision 3.</translation>
    </message>
    <message>
        <source>Type a name for the surface.</source>
        <translation>Saisir un nom pour la gouverne.</translation>
    </message>
    <message>
        <source>This airframe already has a surface “%1”. Say left or right.</source>
        <translation>Ce planeur a déjà une gouverne « %1 ». Préciser gauche ou droite.</translation>
    </message>
    <message>
        <source>Type the manual's plus or minus too; 0 when it gives none.</source>
        <translation>Saisir aussi le plus ou moins du manuel ; 0 s’il n’en donne pas.</translation>
    </message>
    <message>
        <source>A plus or minus needs the deflection it belongs to.</source>
        <translation>Un plus ou moins a besoin du débattement auquel il appartient.</translation>
    </message>
    <message>
        <source>Say on which page of which revision the figures stand: without it nobody can look them up.</source>
        <translation>Dire à quelle page de quelle révision sont les valeurs : sans cela, personne ne peut les retrouver.</translation>
    </message>
    <message>
        <source>A page and a revision have a number, such as: page 4-12, revision 3.</source>
        <translation>Une page et une révision ont un numéro, par exemple : page 4-12, révision 3.</translation>
    </message>
    <message>
        <source>A distance of 0 turns nothing into degrees. Measure it, or leave the line empty.</source>
        <translation>Une distance de 0 ne change rien en degrés. La mesurer, ou laisser la ligne vide.</translation>
    </message>
    <message>
        <source>It leaves the control check of new records. What was answered and measured stays in the file, and it can be put back at any time.</source>
        <translation>Elle quitte l’essai des commandes des nouvelles fiches. Ce qui a été répondu et mesuré reste dans le fichier, et elle peut être remise en service à tout moment.</translation>
    </message>
    <message>
        <source>Left aileron</source>
        <translation>Aileron gauche</translation>
    </message>
    <message>
        <source>Right aileron</source>
        <translation>Aileron droit</translation>
    </message>
    <message>
        <source>Left flap</source>
        <translation>Volet gauche</translation>
    </message>
    <message>
        <source>Right flap</source>
        <translation>Volet droit</translation>
    </message>
    <message>
        <source>Left airbrake</source>
        <translation>Aérofrein gauche</translation>
    </message>
    <message>
        <source>Right airbrake</source>
        <translation>Aérofrein droit</translation>
    </message>
</context>
<context>
    <name>TrendWords</name>
    <message>
        <source>d MMM yyyy</source>
        <comment>QLocale date format</comment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>QLocale date format</comment>
        <translation>d MMM</translation>
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
        <translation>numéro du montage</translation>
    </message>
    <message>
        <source>events</source>
        <translation>événements</translation>
    </message>
    <message>
        <source>first band</source>
        <translation>première bande</translation>
    </message>
    <message>
        <source>annual, %1</source>
        <comment>date</comment>
        <translation>visite annuelle, %1</translation>
    </message>
    <message>
        <source>annual, %1 →</source>
        <comment>date; lies to the right of the chart</comment>
        <translation>visite annuelle, %1 →</translation>
    </message>
    <message>
        <source>new fitting</source>
        <translation>nouvelle pose</translation>
    </message>
    <message>
        <source>new fitting: %1</source>
        <comment>reason</comment>
        <translation>nouvelle pose : %1</translation>
    </message>
    <message>
        <source>drift from about %1</source>
        <comment>date</comment>
        <translation>dérive depuis %1 environ</translation>
    </message>
    <message>
        <source>drift from about rigging %1</source>
        <translation>dérive depuis le montage %1 environ</translation>
    </message>
    <message>
        <source>step about %1</source>
        <comment>date</comment>
        <translation>saut vers %1</translation>
    </message>
    <message>
        <source>step about rigging %1</source>
        <translation>saut vers le montage %1</translation>
    </message>
    <message>
        <source>step or drift from about %1</source>
        <comment>date</comment>
        <translation>saut ou dérive depuis %1 environ</translation>
    </message>
    <message>
        <source>step or drift from about rigging %1</source>
        <translation>saut ou dérive depuis le montage %1 environ</translation>
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
        <translation>au-dessus de %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <comment>gap without unit</comment>
        <translation>sous %1</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>from–to</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>part-seated, on a scale of its own: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>à demi engagé, sur sa propre échelle : %1 mm</translation>
    </message>
    <message>
        <source>part-seated: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>à demi engagé : %1 mm</translation>
    </message>
    <message>
        <source>No readings yet. The first one starts this coupling's history.</source>
        <translation>Pas encore de mesures. La première commence l’historique de ce raccord.</translation>
    </message>
    <message>
        <source>No gap to measure.</source>
        <translation>Pas d’écart à mesurer.</translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation>Pas encore de mesures.</translation>
    </message>
    <message>
        <source>Rigging %1, %2</source>
        <comment>number, day and time</comment>
        <translation>Montage %1, %2</translation>
    </message>
    <message>
        <source>part-seated</source>
        <translation>à demi engagé</translation>
    </message>
    <message>
        <source>%1: %2, %3.</source>
        <comment>where and when: gap, verdict</comment>
        <translation>%1 : %2, %3.</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Mesuré par %1.</translation>
    </message>
    <message>
        <source>Read by %1 with %2.</source>
        <comment>person, gauge</comment>
        <translation>Mesuré par %1 avec %2.</translation>
    </message>
    <message>
        <source>The band is made of this one among others.</source>
        <translation>La bande est faite de celle-ci parmi d’autres.</translation>
    </message>
    <message>
        <source>Corrected, struck or left out: it does not count.</source>
        <translation>Corrigée, rayée ou écartée : elle ne compte pas.</translation>
    </message>
    <message>
        <source>In doubt, because of the gauge: it does not count.</source>
        <translation>En doute, à cause de la jauge : elle ne compte pas.</translation>
    </message>
    <message>
        <source>Note: %1.</source>
        <translation>Note : %1.</translation>
    </message>
    <message>
        <source>One sign only.</source>
        <translation>Un seul indice.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, verdict</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of the locked ones: %1.</source>
        <translation>Des verrouillées : %1.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>%n part-seated reading(s) stand apart.</source>
        <translation>
            <numerusform>%n mesure à demi engagée est à part.</numerusform>
            <numerusform>%n mesures à demi engagées sont à part.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) corrected, struck or left out.</source>
        <translation>
            <numerusform>%n mesure corrigée, rayée ou écartée.</numerusform>
            <numerusform>%n mesures corrigées, rayées ou écartées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) in doubt, because of the gauge.</source>
        <translation>
            <numerusform>%n mesure en doute, à cause de la jauge.</numerusform>
            <numerusform>%n mesures en doute, à cause de la jauge.</numerusform>
        </translation>
    </message>
    <message>
        <source>Drift from about rigging %1, %2.</source>
        <comment>number, date</comment>
        <translation>Dérive depuis le montage %1 environ, %2.</translation>
    </message>
    <message>
        <source>A step at about rigging %1, %2.</source>
        <comment>number, date</comment>
        <translation>Un saut vers le montage %1, %2.</translation>
    </message>
    <message>
        <source>A step or a drift from about rigging %1, %2.</source>
        <comment>number, date</comment>
        <translation>Un saut ou une dérive depuis le montage %1 environ, %2.</translation>
    </message>
    <message>
        <source>If it goes on so, the line reaches %1 mm by %2, 95 % interval %3.</source>
        <comment>gap, date, from–to with unit</comment>
        <translation>Si cela continue ainsi, la ligne atteint %1 mm d’ici au %2, intervalle à 95 % : %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) from %1 to %2.</source>
        <translation>
            <numerusform>%n mesure de %1 à %2.</numerusform>
            <numerusform>%n mesures de %1 à %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last one is %1, %2.</source>
        <comment>gap, verdict</comment>
        <translation>La dernière est %1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n fitting(s), each with a band of its own.</source>
        <translation>
            <numerusform>%n pose, avec sa propre bande.</numerusform>
            <numerusform>%n poses, chacune avec sa propre bande.</numerusform>
        </translation>
    </message>
    <message>
        <source>The band now is %1.</source>
        <translation>La bande est maintenant %1.</translation>
    </message>
    <message>
        <source>Each verdict is one sign only.</source>
        <translation>Chaque verdict n’est qu’un seul indice.</translation>
    </message>
    <message numerus="yes">
        <source>The last %n reading(s), all in doubt because of the gauge.</source>
        <translation>
            <numerusform>La dernière mesure (%n), en doute à cause de la jauge.</numerusform>
            <numerusform>Les %n dernières mesures, toutes en doute à cause de la jauge.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last %n reading(s); the newest is %1, %2. One sign only.</source>
        <translation>
            <numerusform>La dernière mesure (%n) ; la plus récente est %1, %2. Un seul indice.</numerusform>
            <numerusform>Les %n dernières mesures ; la plus récente est %1, %2. Un seul indice.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) off this small scale, the newest %1.</source>
        <translation>
            <numerusform>%n mesure au-delà de cette petite échelle, la plus récente %1.</numerusform>
            <numerusform>%n mesures au-delà de cette petite échelle, la plus récente %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) off this small scale: %1.</source>
        <translation>
            <numerusform>%n mesure au-delà de cette petite échelle : %1.</numerusform>
            <numerusform>%n mesures au-delà de cette petite échelle : %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>period from %1</source>
        <comment>day</comment>
        <translation>période à partir du %1</translation>
    </message>
    <message>
        <source>period to %1</source>
        <comment>day</comment>
        <translation>période jusqu’au %1</translation>
    </message>
    <message>
        <source>The period looked back on is %1 to %2; what lies outside it is shaded.</source>
        <translation>La période examinée va de %1 à %2 ; ce qui est en dehors est grisé.</translation>
    </message>
    <message>
        <source>Left and Right move, plus and minus zoom, Home and End go to the ends, 0 shows everything, Up and Down go from reading to reading.</source>
        <translation>Gauche et Droite déplacent, plus et moins zooment, Début et Fin vont aux extrémités, 0 montre tout, Haut et Bas vont de mesure en mesure.</translation>
    </message>
    <message>
        <source>found not secured, on a scale of its own: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>trouvé non assuré, sur sa propre échelle : %1 mm</translation>
    </message>
    <message>
        <source>on a scale of its own, part-seated: %1 mm; found not secured: %2 mm</source>
        <comment>two ranges of gaps</comment>
        <translation>sur sa propre échelle, à demi engagé : %1 mm ; trouvé non assuré : %2 mm</translation>
    </message>
    <message>
        <source>not secured: %1 mm</source>
        <comment>range of gaps</comment>
        <translation>non assuré : %1 mm</translation>
    </message>
    <message>
        <source>part-seated: %1; not secured: %2 mm</source>
        <comment>two ranges of gaps</comment>
        <translation>à demi engagé : %1 ; non assuré : %2 mm</translation>
    </message>
    <message>
        <source>found not secured</source>
        <translation>trouvé non assuré</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) found not secured stand apart.</source>
        <translation>
            <numerusform>%n mesure trouvée non assurée est à part.</numerusform>
            <numerusform>%n mesures trouvées non assurées sont à part.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrendsPageWords</name>
    <message>
        <source>This file knows no airframe yet. Set up begins with one.</source>
        <translation>Ce fichier ne connaît pas encore de planeur. Le premier s’ajoute dans Réglages.</translation>
    </message>
    <message>
        <source>This airframe has no couplings yet. Set up lists them in rigging order.</source>
        <translation>Ce planeur n’a pas encore de raccords. Réglages les liste dans l’ordre de montage.</translation>
    </message>
    <message>
        <source>%1 has no readings yet. They come from a baseline day in Set up and from every rigging.</source>
        <translation>%1 n’a pas encore de mesures. Elles viennent d’un jour de référence dans Réglages et de chaque montage.</translation>
    </message>
    <message>
        <source>%1 has no gap to measure. What was looked at and tried stands in each rigging record.</source>
        <translation>%1 n’a pas d’écart à mesurer. Ce qui a été regardé et essayé est dans chaque fiche de montage.</translation>
    </message>
    <message>
        <source>%1: no gap to measure, so there is no band.</source>
        <translation>%1 : pas d’écart à mesurer, donc pas de bande.</translation>
    </message>
    <message>
        <source>Nothing is told of it by a figure. What was looked at stands in each rigging record.</source>
        <translation>Aucun chiffre n’en dit quelque chose. Ce qui a été regardé est dans chaque fiche de montage.</translation>
    </message>
    <message>
        <source>Point at a reading, or go there with Up and Down. Plus, minus, Left, Right: look around. 0: everything.</source>
        <translation>Pointer une mesure, ou y aller avec Haut et Bas. Plus, moins, Gauche, Droite : parcourir. 0 : tout.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 au %2</translation>
    </message>
    <message numerus="yes">
        <source>From %n confirmed reading(s) of %1, frozen.</source>
        <comment>a band</comment>
        <translation>
            <numerusform>De %n mesure confirmée du %1, figée.</numerusform>
            <numerusform>De %n mesures confirmées du %1, figées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n confirmed reading(s) of %1.</source>
        <comment>a band</comment>
        <translation>
            <numerusform>De %n mesure confirmée du %1.</numerusform>
            <numerusform>De %n mesures confirmées du %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Thin band %1.</source>
        <translation>Bande mince %1.</translation>
    </message>
    <message>
        <source>Band %1.</source>
        <translation>Bande %1.</translation>
    </message>
    <message>
        <source>They scatter more than the method can follow.</source>
        <translation>Elles se dispersent plus que la méthode ne peut suivre.</translation>
    </message>
    <message>
        <source>A thin band can mislead either way.</source>
        <translation>Une bande mince peut tromper dans les deux sens.</translation>
    </message>
    <message>
        <source>No band yet: no confirmed reading on this fitting, %1 are needed.</source>
        <translation>Pas encore de bande : aucune mesure confirmée sur cette pose, il en faut %1.</translation>
    </message>
    <message numerus="yes">
        <source>No band yet: %n confirmed reading(s) on this fitting, %1 are needed.</source>
        <translation>
            <numerusform>Pas encore de bande : %n mesure confirmée sur cette pose, il en faut %1.</numerusform>
            <numerusform>Pas encore de bande : %n mesures confirmées sur cette pose, il en faut %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>No band yet: every confirmed reading was beyond the reach of its gauge. Use a gauge that reaches.</source>
        <translation>Pas encore de bande : chaque mesure confirmée dépassait la portée de sa jauge. Prendre une jauge qui va assez loin.</translation>
    </message>
    <message>
        <source>Fitting %1, begun %2.</source>
        <translation>Pose %1, commencée le %2.</translation>
    </message>
    <message>
        <source>Fitting %1, begun %2: %3.</source>
        <translation>Pose %1, commencée le %2 : %3.</translation>
    </message>
    <message>
        <source>No band yet: no fitting has begun. Set up begins one.</source>
        <translation>Pas encore de bande : aucune pose commencée. Réglages en commence une.</translation>
    </message>
    <message>
        <source>Latest: %1</source>
        <translation>Dernière : %1</translation>
    </message>
    <message>
        <source>No readings yet</source>
        <translation>Pas encore de mesures</translation>
    </message>
    <message>
        <source>Nothing can be said of this coupling by its gap.</source>
        <translation>On ne peut rien dire de ce raccord par son écart.</translation>
    </message>
    <message>
        <source>%1 at rigging %2 on %3.</source>
        <comment>reading, number, day</comment>
        <translation>%1 au montage %2, le %3.</translation>
    </message>
    <message>
        <source>%1 on %2, outside a rigging.</source>
        <comment>reading, day</comment>
        <translation>%1 le %2, hors d’un montage.</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Mesuré par %1.</translation>
    </message>
    <message>
        <source>Read by %1 with gauge %2.</source>
        <comment>person, gauge</comment>
        <translation>Mesuré par %1 avec la jauge %2.</translation>
    </message>
    <message numerus="yes">
        <source>The gravest of %n reading(s).</source>
        <translation>
            <numerusform>La plus grave de %n mesure.</numerusform>
            <numerusform>La plus grave de %n mesures.</numerusform>
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
        <translation>Par date (%1)</translation>
    </message>
    <message>
        <source>By rigging (%1)</source>
        <translation>Par montage (%1)</translation>
    </message>
    <message>
        <source>Table (%1)</source>
        <translation>Tableau (%1)</translation>
    </message>
    <message>
        <source>last %1 readings</source>
        <translation>%1 dernières mesures</translation>
    </message>
    <message>
        <source>All together (%1)</source>
        <translation>Tous ensemble (%1)</translation>
    </message>
    <message>
        <source>All couplings of %1</source>
        <translation>Tous les raccords de %1</translation>
    </message>
    <message>
        <source>On this fitting: no reading yet beside those of the band.</source>
        <translation>Sur cette pose : pas encore de mesure en dehors de celles de la bande.</translation>
    </message>
    <message>
        <source>On this fitting, readings kept without a band to judge them: %1.</source>
        <translation>Sur cette pose, mesures conservées sans bande pour les juger : %1.</translation>
    </message>
    <message>
        <source>One more was outside and was corrected, struck or left out later; it happened.</source>
        <translation>Une de plus était hors bande et a été corrigée, rayée ou écartée plus tard ; elle a eu lieu.</translation>
    </message>
    <message>
        <source>%1 more were outside and were corrected, struck or left out later; they happened.</source>
        <translation>%1 de plus étaient hors bande et ont été corrigées, rayées ou écartées plus tard ; elles ont eu lieu.</translation>
    </message>
    <message>
        <source>Found part-seated at a rigging once.</source>
        <translation>Trouvé une fois à demi engagé à un montage.</translation>
    </message>
    <message>
        <source>Found part-seated at a rigging %1 times.</source>
        <translation>Trouvé %1 fois à demi engagé à un montage.</translation>
    </message>
    <message>
        <source>The annual was due on %1.</source>
        <translation>La visite annuelle était à faire le %1.</translation>
    </message>
    <message>
        <source>The annual is due on %1.</source>
        <translation>La visite annuelle est à faire le %1.</translation>
    </message>
    <message>
        <source>A band is this coupling's own past, never a limit. The gap is one sign only: look, pull and control check stand beside it.</source>
        <translation>Une bande est le propre passé de ce raccord, jamais une limite. L’écart n’est qu’un indice : le contrôle visuel, l’essai de traction et l’essai des commandes sont à côté.</translation>
    </message>
    <message>
        <source>Each in its own scatters from the middle of its own band. What moves alone stands apart. When all move together on one day, check the leaf set, read again with another person, and look at each joint: stiff grease leaves plungers short.</source>
        <translation>Chacun en sa propre dispersion, depuis le milieu de sa propre bande. Ce qui bouge seul se détache. Quand tous bougent ensemble un même jour, contrôler le jeu de lames, mesurer à nouveau avec une autre personne et regarder chaque liaison : une graisse dure empêche les verrous d’aller à fond.</translation>
    </message>
    <message>
        <source>No coupling has a reading from a rigging that can be held against a band yet.</source>
        <translation>Aucun raccord n’a encore de mesure d’un montage que l’on puisse comparer à une bande.</translation>
    </message>
    <message>
        <source>Up and Down go from coupling to coupling, Enter shows it alone. Plus, minus, Left, Right: look around. 0: everything.</source>
        <translation>Haut et Bas vont de raccord en raccord, Enter le montre seul. Plus, moins, Gauche, Droite : parcourir. 0 : tout.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between signs</comment>
        <translation> ; </translation>
    </message>
    <message>
        <source>Too few readings against a band to tell how it moves</source>
        <translation>Trop peu de mesures face à une bande pour dire comment il bouge</translation>
    </message>
    <message>
        <source>Looking back. %1</source>
        <translation>Regard en arrière. %1</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Retour à aujourd’hui</translation>
    </message>
    <message>
        <source>Back to today (Esc)</source>
        <translation>Retour à aujourd’hui (Esc)</translation>
    </message>
    <message>
        <source>Back to Before the annual (Esc or Alt+Left)</source>
        <translation>Retour à Avant la visite (Esc ou Alt+Gauche)</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>nettoyé</translation>
    </message>
    <message>
        <source>greased</source>
        <translation>graissé</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>reposé</translation>
    </message>
    <message>
        <source>part changed</source>
        <translation>pièce changée</translation>
    </message>
    <message>
        <source>annual</source>
        <translation>visite annuelle</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation>démonté</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>found: %1; done: %2</source>
        <translation>trouvé : %1 ; fait : %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what was done, note</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Mesures : %1</translation>
    </message>
    <message>
        <source>Ctrl+C copies the chosen rows.</source>
        <translation>Ctrl+C copie les lignes choisies.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Rigging</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>Enters mm</source>
        <translation>Entre mm</translation>
    </message>
    <message>
        <source>Refuses mm</source>
        <translation>N’entre pas mm</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>–</source>
        <comment>a reading outside every rigging</comment>
        <translation>–</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no leaf entered</comment>
        <translation>aucune</translation>
    </message>
    <message>
        <source>none</source>
        <comment>the thickest was still loose</comment>
        <translation>aucune</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>pas jugé</translation>
    </message>
    <message>
        <source>locked, baseline</source>
        <translation>verrouillé, référence</translation>
    </message>
    <message>
        <source>part-seated, baseline</source>
        <translation>à demi engagé, référence</translation>
    </message>
    <message>
        <source>locked, demonstration</source>
        <translation>verrouillé, démonstration</translation>
    </message>
    <message>
        <source>part-seated, demonstration</source>
        <translation>à demi engagé, démonstration</translation>
    </message>
    <message>
        <source>locked, rigging, second person</source>
        <translation>verrouillé, montage, deuxième personne</translation>
    </message>
    <message>
        <source>part-seated, rigging, second person</source>
        <translation>à demi engagé, montage, deuxième personne</translation>
    </message>
    <message>
        <source>locked, rigging</source>
        <translation>verrouillé, montage</translation>
    </message>
    <message>
        <source>part-seated, rigging</source>
        <translation>à demi engagé, montage</translation>
    </message>
    <message>
        <source>corrected: %1</source>
        <translation>corrigée : %1</translation>
    </message>
    <message>
        <source>%1 (corrected: %2)</source>
        <translation>%1 (corrigée : %2)</translation>
    </message>
    <message>
        <source>struck: %1</source>
        <translation>rayée : %1</translation>
    </message>
    <message>
        <source>%1 (struck: %2)</source>
        <translation>%1 (rayée : %2)</translation>
    </message>
    <message>
        <source>left out of the band: %1</source>
        <translation>écartée de la bande : %1</translation>
    </message>
    <message>
        <source>%1 (left out of the band: %2)</source>
        <translation>%1 (écartée de la bande : %2)</translation>
    </message>
    <message>
        <source>Found not secured at a rigging once.</source>
        <translation>Trouvé une fois non assuré à un montage.</translation>
    </message>
    <message>
        <source>Found not secured at a rigging %1 times.</source>
        <translation>Trouvé %1 fois non assuré à un montage.</translation>
    </message>
    <message>
        <source>not secured, rigging, second person</source>
        <translation>non assuré, montage, deuxième personne</translation>
    </message>
    <message>
        <source>not secured, rigging</source>
        <translation>non assuré, montage</translation>
    </message>
    <message>
        <source>On this fitting, of all %1 readings beside those of the band: %2 near the edge, %3 outside, %4 cannot tell.</source>
        <translation>Sur cette pose, de toutes les %1 mesures en dehors de celles de la bande : %2 près du bord, %3 hors bande, %4 où l’on ne peut pas dire.</translation>
    </message>
    <message numerus="yes">
        <source>No drift, step or change of scatter shows in %n rigging(s), one reading each</source>
        <translation>
            <numerusform>Ni dérive, ni saut, ni changement de dispersion ne se voit sur %n montage, une mesure chacun</numerusform>
            <numerusform>Ni dérive, ni saut, ni changement de dispersion ne se voit sur %n montages, une mesure chacun</numerusform>
        </translation>
    </message>
    <message>
        <source>One of those outside was read when all or nearly all couplings went the same way.</source>
        <translation>Une de celles hors bande a été mesurée quand tous les raccords ou presque allaient dans le même sens.</translation>
    </message>
    <message>
        <source>%1 of those outside were read when all or nearly all couplings went the same way.</source>
        <translation>%1 de celles hors bande ont été mesurées quand tous les raccords ou presque allaient dans le même sens.</translation>
    </message>
</context>
<context>
    <name>VerdictWords</name>
    <message>
        <source>No band yet</source>
        <translation>Pas encore de bande</translation>
    </message>
    <message>
        <source>Outside the band</source>
        <translation>Hors de la bande</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>On ne peut pas dire</translation>
    </message>
    <message>
        <source>Near the edge of the band</source>
        <translation>Près du bord de la bande</translation>
    </message>
    <message>
        <source>Inside the band</source>
        <translation>Dans la bande</translation>
    </message>
    <message>
        <source>no band yet</source>
        <translation>pas encore de bande</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>hors bande</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>on ne peut pas dire</translation>
    </message>
    <message>
        <source>near edge</source>
        <translation>près du bord</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dans la bande</translation>
    </message>
    <message>
        <source>This band is thin: it rests on few readings, which scatter too much, and can mislead either way.</source>
        <translation>Cette bande est mince : elle repose sur peu de mesures, qui se dispersent trop, et peut tromper dans les deux sens.</translation>
    </message>
    <message>
        <source>This band is thin: it rests on few readings and can mislead either way.</source>
        <translation>Cette bande est mince : elle repose sur peu de mesures et peut tromper dans les deux sens.</translation>
    </message>
    <message>
        <source>The readings scatter more than a band can follow.</source>
        <translation>Les mesures se dispersent plus qu’une bande ne peut suivre.</translation>
    </message>
    <message>
        <source>Locked readings this far out: %1.</source>
        <translation>Mesures verrouillées aussi loin : %1.</translation>
    </message>
    <message>
        <source>%1 lies below this coupling's band.</source>
        <translation>%1 est sous la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 lies above this coupling's band.</source>
        <translation>%1 est au-dessus de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 lies at the lower edge of this coupling's band.</source>
        <translation>%1 est au bord inférieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 lies at the upper edge of this coupling's band.</source>
        <translation>%1 est au bord supérieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 touches the lower inner edge of this coupling's band from below.</source>
        <translation>%1 touche par le bas le bord intérieur inférieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 touches the upper inner edge of this coupling's band from above.</source>
        <translation>%1 touche par le haut le bord intérieur supérieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 lies between the lower inner and outer edge of this coupling's band.</source>
        <translation>%1 est entre le bord inférieur intérieur et le bord inférieur extérieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 lies between the upper inner and outer edge of this coupling's band.</source>
        <translation>%1 est entre le bord supérieur intérieur et le bord supérieur extérieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 reaches below the lower outer edge of this coupling's band.</source>
        <translation>%1 descend au-dessous du bord extérieur inférieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 reaches above the upper outer edge of this coupling's band.</source>
        <translation>%1 monte au-dessus du bord extérieur supérieur de la bande de ce raccord.</translation>
    </message>
    <message>
        <source>%1 lies where this coupling usually reads.</source>
        <translation>%1 est là où sont d’habitude les mesures de ce raccord.</translation>
    </message>
    <message>
        <source>%1 was read with a gauge in doubt. Read once with another gauge.</source>
        <translation>%1 a été mesuré avec une jauge en doute. Mesurer une fois avec une autre jauge.</translation>
    </message>
    <message>
        <source>%1 says nothing on this coupling: locked and part-seated were both seen at such gaps.</source>
        <translation>%1 ne dit rien sur ce raccord : verrouillé et à demi engagé ont tous deux été vus à de tels écarts.</translation>
    </message>
    <message>
        <source>%1 reaches beyond the band. Read once with a finer gauge. Repeats with this one tell no more.</source>
        <translation>%1 dépasse la bande. Mesurer une fois avec une jauge plus fine. Répéter avec celle-ci n’en dit pas plus.</translation>
    </message>
    <message>
        <source>%1 is kept. The ball was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 est conservé. La bille n’a pas été vue : regarder à nouveau avec un miroir ou une lampe, et répondre à nouveau.</translation>
    </message>
    <message>
        <source>%1 is kept. The plunger was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 est conservé. Le verrou n’a pas été vu : regarder à nouveau avec un miroir ou une lampe, et répondre à nouveau.</translation>
    </message>
    <message>
        <source>%1 is kept. The sleeve was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 est conservé. Le manchon n’a pas été vu : regarder à nouveau avec un miroir ou une lampe, et répondre à nouveau.</translation>
    </message>
    <message>
        <source>%1 is kept. The safety pin was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 est conservé. L’épingle n’a pas été vue : regarder à nouveau avec un miroir ou une lampe, et répondre à nouveau.</translation>
    </message>
    <message>
        <source>%1 is kept. The joint was not seen: look again with a mirror or a light, and answer again.</source>
        <translation>%1 est conservé. La liaison n’a pas été vue : regarder à nouveau avec un miroir ou une lampe, et répondre à nouveau.</translation>
    </message>
    <message>
        <source>%1 cannot be judged.</source>
        <translation>%1 ne peut pas être jugé.</translation>
    </message>
    <message>
        <source>%1 is kept. Every baseline reading was wider than the gauge could reach, so there is no band: use a gauge that reaches.</source>
        <translation>%1 est conservé. Chaque mesure de la série de référence dépassait la portée de la jauge, donc il n’y a pas de bande : prendre une jauge qui va assez loin.</translation>
    </message>
    <message>
        <source>%1 is kept. Not enough confirmed readings: this reading cannot be judged.</source>
        <translation>%1 est conservé. Pas assez de mesures confirmées : cette mesure ne peut pas être jugée.</translation>
    </message>
    <message numerus="yes">
        <source>The band is %1, drawn from %n confirmed readings.</source>
        <translation>
            <numerusform>La bande est %1, établie sur %n mesure confirmée.</numerusform>
            <numerusform>La bande est %1, établie sur %n mesures confirmées.</numerusform>
        </translation>
    </message>
    <message>
        <source>D</source>
        <comment>key: more details</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>More  (%1)</source>
        <translation>Plus  (%1)</translation>
    </message>
    <message>
        <source>Less  (%1)</source>
        <translation>Moins  (%1)</translation>
    </message>
    <message>
        <source>The stop at this joint stands, whatever its gap says. Any gap is one sign only.</source>
        <translation>L’arrêt à cette liaison demeure, quoi que dise son écart. Tout écart n’est qu’un indice.</translation>
    </message>
    <message>
        <source>It was read on %1. Say in the questions (Ctrl+6) who resolved it, what was found and what was done.</source>
        <translation>Mesuré le %1. Dire dans les questions (Ctrl+6) qui l’a résolu, ce qui a été trouvé et ce qui a été fait.</translation>
    </message>
    <message>
        <source>a person entitled to decide</source>
        <translation>une personne habilitée</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name (telephone)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Stop, leave it as it is, call %1.</source>
        <translation>S’arrêter, laisser en l’état, appeler %1.</translation>
    </message>
    <message>
        <source>Connecting it again without finding out why is not a fix.</source>
        <translation>Raccorder à nouveau sans trouver pourquoi ne répare rien.</translation>
    </message>
    <message>
        <source>The gap is one sign only, and enough to stop.</source>
        <translation>L’écart n’est qu’un indice, et il suffit pour s’arrêter.</translation>
    </message>
    <message>
        <source>The look, the pull and the second person have to carry it. This gap tells nothing, and any gap is one sign only.</source>
        <translation>Tout repose sur le contrôle visuel, l’essai de traction et la deuxième personne. Cet écart ne dit rien, et tout écart n’est qu’un indice.</translation>
    </message>
    <message>
        <source>Look and pull with care, and watch where the next readings go. A gap near the edge of the band is one sign only.</source>
        <translation>Regarder et tirer avec soin, et surveiller où vont les prochaines mesures. Un écart près du bord de la bande n’est qu’un indice.</translation>
    </message>
    <message>
        <source>Finish the look, the pull and the second person. A gap inside the band is one sign only.</source>
        <translation>Terminer le contrôle visuel et l’essai de traction, puis la deuxième personne. Un écart dans la bande n’est qu’un indice.</translation>
    </message>
    <message>
        <source>%1 is not judged: another program changed facts that this coupling's band rests on, or may have.</source>
        <translation>%1 n’est pas jugé : un autre programme a modifié des faits sur lesquels repose la bande de ce raccord, ou a pu le faire.</translation>
    </message>
    <message>
        <source>The look and the pull have to carry it. This gap tells nothing, and any gap is one sign only.</source>
        <translation>Tout repose sur le contrôle visuel et l’essai de traction. Cet écart ne dit rien, et tout écart n’est qu’un indice.</translation>
    </message>
    <message>
        <source>Finish the look and the pull. A gap inside the band is one sign only.</source>
        <translation>Terminer le contrôle visuel et l’essai de traction. Un écart dans la bande n’est qu’un indice.</translation>
    </message>
</context>
<context>
    <name>WindowWords</name>
    <message>
        <source>Rigged today</source>
        <translation>Monté aujourd’hui</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Évolution</translation>
    </message>
    <message>
        <source>Before the annual</source>
        <translation>Avant la visite</translation>
    </message>
    <message>
        <source>Know this airframe</source>
        <translation>Ce planeur</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>%1 (Ctrl+%2)</source>
        <translation>%1 (Ctrl+%2)</translation>
    </message>
    <message>
        <source>No airframe yet</source>
        <translation>Pas encore de planeur</translation>
    </message>
    <message>
        <source>Choose the airframe (Ctrl+K)</source>
        <translation>Choisir le planeur (Ctrl+K)</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <comment>registration, type</comment>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1 · record open</source>
        <translation>%1 · fiche ouverte</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n open question(s)</source>
        <translation>
            <numerusform>%1 · %n question ouverte</numerusform>
            <numerusform>%1 · %n questions ouvertes</numerusform>
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
        <translation>copie de démonstration, tous les chiffres inventés</translation>
    </message>
    <message>
        <source>%1 can only be read: the file or its folder does not allow writing. Copy it to a folder of your own to enter readings.</source>
        <translation>%1 ne peut qu’être lu : le fichier ou son dossier ne permet pas l’écriture. Le copier dans un dossier à vous pour saisir des mesures.</translation>
    </message>
    <message>
        <source>No copy of %1 could be kept beside it today. What you enter is saved all the same; copy the file to another place yourself.</source>
        <translation>Aucune copie de %1 n’a pu être gardée à côté aujourd’hui. Ce que vous saisissez est quand même enregistré ; copier vous-même le fichier à un autre endroit.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>New file …</source>
        <translation>Nouveau fichier …</translation>
    </message>
    <message>
        <source>Open a file …</source>
        <translation>Ouvrir un fichier …</translation>
    </message>
    <message>
        <source>Open a demonstration copy</source>
        <translation>Ouvrir une copie de démonstration</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Texte plus grand</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Texte plus petit</translation>
    </message>
    <message>
        <source>Dark colours</source>
        <translation>Couleurs sombres</translation>
    </message>
    <message>
        <source>Keys …</source>
        <translation>Touches …</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Close Rigband</source>
        <translation>Fermer Rigband</translation>
    </message>
    <message>
        <source>Close Rigband all the same</source>
        <translation>Fermer Rigband quand même</translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation>Fermer ce message</translation>
    </message>
    <message>
        <source>Rigband files (*.rigband)</source>
        <translation>Fichiers Rigband (*.rigband)</translation>
    </message>
    <message>
        <source>Rigband remembers each coupling’s locked gap</source>
        <translation>Rigband retient l’écart verrouillé de chaque raccord</translation>
    </message>
    <message>
        <source>Readings by feeler leaf become each coupling’s own band. Every later reading is judged against it: one sign beside the look, the pull, the second person and the control check.</source>
        <translation>Les mesures à la lame deviennent la bande propre de chaque raccord. Chaque mesure suivante est jugée d’après elle : un seul indice à côté du contrôle visuel, de l’essai de traction, de la deuxième personne et de l’essai des commandes.</translation>
    </message>
    <message>
        <source>Begin a new file for my airframe</source>
        <translation>Commencer un nouveau fichier pour mon planeur</translation>
    </message>
    <message>
        <source>Open a file I have</source>
        <translation>Ouvrir un fichier que j’ai</translation>
    </message>
    <message>
        <source>Look at the demonstration first</source>
        <translation>Regarder d’abord la démonstration</translation>
    </message>
    <message>
        <source>A band is a coupling’s own past, never a limit. Manuals, directives, local rules and persons entitled to decide prevail.</source>
        <translation>Une bande est le propre passé d’un raccord, jamais une limite. Les manuels, les consignes, les règles locales et les personnes habilitées priment.</translation>
    </message>
    <message>
        <source>The .rigband file to open.</source>
        <translation>Le fichier .rigband à ouvrir.</translation>
    </message>
    <message>
        <source>Open a fresh copy of the demonstration.</source>
        <translation>Ouvrir une copie neuve de la démonstration.</translation>
    </message>
    <message>
        <source>Dark colours.</source>
        <translation>Couleurs sombres.</translation>
    </message>
    <message>
        <source>Text size in percent, 100 to 200.</source>
        <translation>Taille du texte en pour cent, 100 à 200.</translation>
    </message>
    <message>
        <source>At the start: %1: the last record. %2: I have read the notes. %3: from paper. Enter: start.</source>
        <translation>Au début : %1 : la dernière fiche. %2 : j’ai lu les notes. %3 : d’après papier. Enter : commencer.</translation>
    </message>
    <message>
        <source>Who connected: digits: a name. %1: not known. Enter: next side.</source>
        <translation>Qui a raccordé : chiffres : un nom. %1 : pas connu. Enter : côté suivant.</translation>
    </message>
    <message>
        <source>%1: who looks and measures. %2: the leaf set or gauge. %3: the photo, large.</source>
        <translation>%1 : qui regarde et mesure. %2 : le jeu de lames ou la jauge. %3 : la photo, en grand.</translation>
    </message>
    <message>
        <source>%1: yes. %2: no. %3: cannot see. %4: felt, not seen.</source>
        <translation>%1 : oui. %2 : non. %3 : pas visible. %4 : senti, pas vu.</translation>
    </message>
    <message>
        <source>Digits with point or comma, then Enter: a reading.</source>
        <translation>Chiffres avec point ou virgule, puis Enter : une mesure.</translation>
    </message>
    <message>
        <source>%1: measure again. %2: wrong leaf. %3: strike a reading. %4: joint play. %5: the look. %6: more about the verdict.</source>
        <translation>%1 : mesurer de nouveau. %2 : mauvaise lame. %3 : rayer une mesure. %4 : jeu de la rotule. %5 : le contrôle visuel. %6 : plus sur le verdict.</translation>
    </message>
    <message>
        <source>%1: second person. %2: the second person types their own column. Enter: next, or what has the focus.</source>
        <translation>%1 : deuxième personne. %2 : la deuxième personne tape sa propre colonne. Enter : suite, ou ce qui a le focus.</translation>
    </message>
    <message>
        <source>Control check: %1: who is at the surface. %2: who is in the cockpit. Arrows: which way it moved. %3: it does nothing. %4, %5, %6: a figure.</source>
        <translation>Essai des commandes : %1 : qui est à la gouverne. %2 : qui est dans l’habitacle. Flèches : dans quel sens elle a bougé. %3 : elle ne fait rien. %4, %5, %6 : un chiffre.</translation>
    </message>
    <message>
        <source>Where a reason is asked: Alt+1, Alt+2 …: an offered one.</source>
        <translation>Là où une raison est demandée : Alt+1, Alt+2 … : une de celles proposées.</translation>
    </message>
    <message>
        <source>Page Up, Page Down: another coupling. Esc: interrupt.</source>
        <translation>Page préc., Page suiv. : un autre raccord. Esc : interrompre.</translation>
    </message>
    <message>
        <source>A closed record: %1: as PDF. %2: back.</source>
        <translation>Une fiche close : %1 : en PDF. %2 : retour.</translation>
    </message>
    <message>
        <source>Alt+O: who learns. Alt and the underlined letter: a part. Up, Down: another coupling. On the plan arrows: the nearest one.</source>
        <translation>Alt+O : qui apprend. Alt et la lettre soulignée : une partie. Haut, Bas : un autre raccord. Sur la vue de dessus, les flèches : le plus proche.</translation>
    </message>
    <message>
        <source>The joint cut open: Left, Right, Page Up, Page Down: the ball. Home, End: caught, home.</source>
        <translation>La liaison en coupe : Gauche, Droite, Page préc., Page suiv. : la bille. Début, Fin : retenue, à fond.</translation>
    </message>
    <message>
        <source>S: sleeve. P: pin. B: the ball away and back.</source>
        <translation>S : manchon. P : épingle. B : la bille enlevée et remise.</translation>
    </message>
    <message>
        <source>Practice: %1: this coupling. %2: all. Calls and order: %3: begin.</source>
        <translation>Exercice : %1 : ce raccord. %2 : tous. Annonces et ordre : %3 : commencer.</translation>
    </message>
    <message>
        <source>Digits: an answer. Then %1: sure. %2: not sure. Enter: next.</source>
        <translation>Chiffres : une réponse. Puis %1 : certain. %2 : pas certain. Enter : suite.</translation>
    </message>
    <message>
        <source>Measuring and study: digits with point or comma, then Enter: a reading. Alt+A, Alt+N: take one back.</source>
        <translation>Mesure et étude : chiffres avec point ou virgule, puis Enter : une mesure. Alt+H, Alt+N : en retirer une.</translation>
    </message>
    <message>
        <source>Study: Alt+I: I am the next and read. Alt+T: take the last reading back. Alt+G: leave it, go on.</source>
        <translation>Étude : Alt+I : c’est mon tour et je mesure. Alt+T : retirer la dernière mesure. Alt+D : laisser, reprendre.</translation>
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
        <translation>Évolution
Gauche, Droite : se déplacer. Plus, Moins : plus près, plus large. 0 : tout.
Haut, Bas : une autre mesure. D, R : par date, par montage. T : tableau.
A : tous les raccords ensemble. P : la période. Ctrl+C : copier les lignes choisies.
F : noter un constat. Q : poser une question. Esc : retour à aujourd’hui, ou à Avant la visite.

Avant la visite
Haut, Bas : un autre raccord. Enter : son évolution. 1 à 8 : trier par une colonne. 0 : ce qui ressort d’abord.
S : ce qui ressort. O : ce qui était hors de sa bande. Enter là : le voir dans Évolution.
P : la période. F : noter un constat. Q : poser une question. M : ce que veulent dire les colonnes. R : le rapport.
Dans le rapport : S : enregistrer. A : l’autre papier. Esc : retour.

Questions
Haut, Bas : une autre question. Enter : la clore. Ctrl+Enter : enregistrer. Esc : retour.

Réglages
Alt+1 à Alt+9 : les parties. Alt+Haut, Alt+Bas : déplacer une ligne.
Photos d’un raccord : Ctrl+V : une image copiée.
Jour de référence : Y, N : une réponse. W : mauvaise lame. X : écarter. F : figer.</translation>
    </message>
    <message>
        <source>Remembers the locked gap of each control coupling and judges every reading against that coupling’s own past.

Ends with 0 when its window was closed, with 2 when something on the command line is wrong.</source>
        <translation>Retient l’écart verrouillé de chaque raccord de commande et juge chaque mesure d’après le passé de ce raccord.

Se termine par 0 quand la fenêtre est fermée, par 2 quand quelque chose ne va pas sur la ligne de commande.</translation>
    </message>
    <message>
        <source>There is no option “%1”. rigband --help lists those there are.</source>
        <translation>L’option « %1 » n’existe pas. rigband --help donne la liste de celles qui existent.</translation>
    </message>
    <message>
        <source>An option lacks what belongs behind it, or has something behind it that it does not take. rigband --help tells how each is typed.</source>
        <translation>Il manque quelque chose derrière une option, ou il y a derrière elle quelque chose qu’elle ne prend pas. rigband --help dit comment chacune se tape.</translation>
    </message>
    <message>
        <source>“%1” is no text size. Type a whole number from 100 to 200 behind --text.</source>
        <translation>« %1 » n’est pas une taille de texte. Taper derrière --text un nombre entier de 100 à 200.</translation>
    </message>
    <message>
        <source>Name one file to open, or type --demo; not more than one of these.</source>
        <translation>Nommer un fichier à ouvrir, ou taper --demo ; pas plus d’un des deux.</translation>
    </message>
    <message>
        <source>Rigged</source>
        <comment>short, of: Rigged today</comment>
        <translation>Monté</translation>
    </message>
    <message>
        <source>Annual</source>
        <comment>short, of: Before the annual</comment>
        <translation>Visite</translation>
    </message>
    <message>
        <source>Know</source>
        <comment>short, of: Know this airframe</comment>
        <translation>Planeur</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>Light colours</source>
        <translation>Couleurs claires</translation>
    </message>
    <message>
        <source>Colours for sunlight</source>
        <translation>Couleurs pour le plein soleil</translation>
    </message>
    <message>
        <source>The next colours</source>
        <translation>Les couleurs suivantes</translation>
    </message>
    <message>
        <source>Colours for sunlight, also where --dark is given.</source>
        <translation>Couleurs pour le plein soleil, même si --dark est donné.</translation>
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
        <translation>Partout
Ctrl+1 à Ctrl+5 : les cinq pages. Ctrl+6 : les questions ouvertes.
Ctrl+7 : ce qui a été changé à la main. Ctrl+8 : ce que deux ordinateurs disent différemment. Ctrl+I : intégrer un autre fichier.
Ctrl+Y, Ctrl+D : copier ou ranger ce qui a été tapé et pas enregistré.
Ctrl+9 : les copies de ce fichier. Ctrl+B : en ramener une. Ctrl+W : d’une copie revenir au fichier.
Ctrl+R : lire dans un nouveau fichier ce qui peut l’être d’un fichier abîmé.
Ctrl+K : choisir le planeur.
Ctrl+N, Ctrl+O : nouveau fichier, ouvrir un fichier. Ctrl+Q : quitter.
Ctrl+Maj+S : enregistrer une copie du fichier. Ctrl+Maj+F : montrer son dossier. Ctrl+F1 : à propos de Rigband.
Ctrl++ et Ctrl+- : taille du texte. F9 : couleurs claires, sombres, de plein soleil. F1 : cette liste. Maj+F1 : le manuel.</translation>
    </message>
    <message>
        <source>Another window that has %1 open does not answer, so it is opened here as well. What was typed there and not yet saved stands only there.</source>
        <translation>Une autre fenêtre où %1 est ouvert ne répond pas. Le fichier est donc ouvert ici aussi. Ce qui y a été tapé et pas encore enregistré ne se trouve que là.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <comment>file, the last one</comment>
        <translation>Ouvrir %1</translation>
    </message>
    <message>
        <source>Opened last, in %1</source>
        <translation>Ouvert en dernier, dans %1</translation>
    </message>
</context>
<context>
    <name>WitnessWords</name>
    <message>
        <source>Part-seated was seen once here, above the band.</source>
        <translation>L’état à demi engagé a été vu une fois ici, au-dessus de la bande.</translation>
    </message>
    <message>
        <source>Part-seated was seen once here, below the band.</source>
        <translation>L’état à demi engagé a été vu une fois ici, au-dessous de la bande.</translation>
    </message>
    <message>
        <source>Part-seated was seen once here, and it was not outside the band.</source>
        <translation>L’état à demi engagé a été vu une fois ici, et ce n’était pas hors de la bande.</translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here, and there is no band to hold that against.</source>
        <translation>
            <numerusform>L’état à demi engagé a été vu %n fois ici, et il n’y a pas de bande à laquelle le comparer.</numerusform>
            <numerusform>L’état à demi engagé a été vu %n fois ici, et il n’y a pas de bande à laquelle le comparer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here, each time above the band.</source>
        <translation>
            <numerusform>L’état à demi engagé a été vu %n fois ici, chaque fois au-dessus de la bande.</numerusform>
            <numerusform>L’état à demi engagé a été vu %n fois ici, chaque fois au-dessus de la bande.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here, each time below the band.</source>
        <translation>
            <numerusform>L’état à demi engagé a été vu %n fois ici, chaque fois au-dessous de la bande.</numerusform>
            <numerusform>L’état à demi engagé a été vu %n fois ici, chaque fois au-dessous de la bande.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here: %1 above the band, %2 below it.</source>
        <translation>
            <numerusform>L’état à demi engagé a été vu %n fois ici : %1 au-dessus de la bande, %2 au-dessous.</numerusform>
            <numerusform>L’état à demi engagé a été vu %n fois ici : %1 au-dessus de la bande, %2 au-dessous.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Part-seated was seen %n time(s) here: %1 above the band, %2 below it, %3 not outside it.</source>
        <translation>
            <numerusform>L’état à demi engagé a été vu %n fois ici : %1 au-dessus de la bande, %2 au-dessous, %3 non hors de la bande.</numerusform>
            <numerusform>L’état à demi engagé a été vu %n fois ici : %1 au-dessus de la bande, %2 au-dessous, %3 non hors de la bande.</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too rarely to say whether it always would lie there.</source>
        <translation>C’est trop rare pour dire si ce serait toujours là.</translation>
    </message>
    <message>
        <source>That does not say that it always would lie there.</source>
        <translation>Cela ne dit pas que ce serait toujours là.</translation>
    </message>
    <message>
        <source>That is too rarely to say how far the gap tells the two apart: it takes %1 at least.</source>
        <translation>C’est trop rare pour dire à quel point l’écart distingue les deux : il en faut %1 au moins.</translation>
    </message>
    <message>
        <source>How far the gap tells part-seated from locked here is not known yet: it takes a band and part-seated readings with both ends.</source>
        <translation>À quel point l’écart distingue ici « à demi engagé » de « verrouillé » n’est pas encore connu : il faut une bande et des mesures à demi engagées bornées des deux côtés.</translation>
    </message>
    <message>
        <source>The gap is a good witness here, and still one sign only: look and pull as ever.</source>
        <translation>L’écart est un bon témoin ici, et pourtant un seul indice : contrôle visuel et essai de traction comme toujours.</translation>
    </message>
    <message>
        <source>The gap is a weak witness here. It takes %1 readings on %2 days, all far outside, before more can be said.</source>
        <translation>L’écart est un témoin faible ici. Il faut %1 mesures sur %2 jours, toutes loin hors de la bande, avant de pouvoir en dire plus.</translation>
    </message>
    <message>
        <source>The gap is no witness here: it cannot tell part-seated from locked.</source>
        <translation>L’écart n’est pas un témoin ici : il ne peut pas distinguer « à demi engagé » de « verrouillé ».</translation>
    </message>
    <message>
        <source>So few can mislead: up to %1 in 100 part-seated joints might not lie outside (one-sided 95 % bound).</source>
        <translation>Un si petit nombre peut tromper : jusqu’à %1 liaisons à demi engagées sur 100 pourraient ne pas être hors de la bande (borne unilatérale à 95 %).</translation>
    </message>
    <message>
        <source>No reading was noted as part-seated here.</source>
        <translation>Aucune mesure n’a été notée à demi engagée ici.</translation>
    </message>
</context>
</TS>
