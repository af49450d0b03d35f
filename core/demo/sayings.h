#pragma once

#include "core/demo/saying.h"

// All that the people of the demonstration ever wrote, in each language. The words are those of
// docs/glossary.md; figures, days, names of people and registrations are the same in all three. French has a
// no-break space before : and ;, written \u00a0.
namespace rig::demo::says {

// Couplings and surfaces, as the usual ones of Set up are called in each language.
inline constexpr Saying kLeftAileron{"Left aileron", "Querruder links", "Aileron gauche"};
inline constexpr Saying kRightAileron{"Right aileron", "Querruder rechts", "Aileron droit"};
inline constexpr Saying kLeftAirbrake{"Left airbrake", "Bremsklappe links", "Aérofrein gauche"};
inline constexpr Saying kRightAirbrake{"Right airbrake", "Bremsklappe rechts", "Aérofrein droit"};
inline constexpr Saying kLeftFlap{"Left flap", "Wölbklappe links", "Volet gauche"};
inline constexpr Saying kRightFlap{"Right flap", "Wölbklappe rechts", "Volet droit"};
inline constexpr Saying kElevator{"Elevator", "Höhenruder", "Profondeur"};
inline constexpr Saying kRudder{"Rudder", "Seitenruder", "Direction"};
inline constexpr Saying kTrim{"Trim", "Trimmung", "Compensateur"};
inline constexpr Saying kLeftWaterDump{"Left water dump", "Wasserablass links", "Vidange d’eau gauche"};
inline constexpr Saying kRightWaterDump{"Right water dump", "Wasserablass rechts", "Vidange d’eau droite"};

// How one gets at a coupling.
inline constexpr Saying kFromAbove{"Wing root, seen from above through the hatch.",
                                   "Flügelwurzel, von oben durchs Handloch zu sehen.",
                                   "Emplanture, vue d’en haut par la trappe."};
inline constexpr Saying kFromAboveOnly{
    "Wing root, seen from above only. Use the mirror for the plunger tip.",
    "Flügelwurzel, nur von oben zu sehen. Für die Riegelnase den Spiegel nehmen.",
    "Emplanture, vue d’en haut seulement. Prendre le miroir pour le bec du verrou."};
inline constexpr Saying kFromTheSide{"Wing root, seen from the side.",
                                     "Flügelwurzel, von der Seite zu sehen.", "Emplanture, vue de côté."};
inline constexpr Saying kLowFromAbove{"Wing root, low, seen from above.",
                                      "Flügelwurzel, unten, von oben zu sehen.",
                                      "Emplanture, en bas, vue d’en haut."};
inline constexpr Saying kAtFinTop{"Top of the fin, from a step.", "Seitenflosse oben, von einem Tritt aus.",
                                  "Haut de dérive, depuis un marchepied."};
inline constexpr Saying kFinTopByItself{
    "Top of the fin; connects by itself as the tailplane goes on. Seen from the side.",
    "Seitenflosse oben; schließt selbsttätig an, wenn das Höhenleitwerk aufgesetzt wird. Von der Seite zu "
    "sehen.",
    "Haut de dérive\u00a0; se raccorde de lui-même à la pose de l’empennage. Vu de côté."};
inline constexpr Saying kFinTopTwoCircuits{
    "Top of the fin; front and rear circuit meet here.",
    "Seitenflosse oben; hier treffen sich vorderer und hinterer Steuerkreis.",
    "Haut de dérive\u00a0; les circuits avant et arrière se rejoignent ici."};
inline constexpr Saying kOneHatchLeft{"One hatch for both airbrakes, left one in front.",
                                      "Ein Handloch für beide Bremsklappen, die linke vorn.",
                                      "Une trappe pour les deux aérofreins, le gauche devant."};
inline constexpr Saying kOneHatchRight{"One hatch for both airbrakes, right one behind.",
                                       "Ein Handloch für beide Bremsklappen, die rechte hinten.",
                                       "Une trappe pour les deux aérofreins, le droit derrière."};

// Where the leaf goes.
inline constexpr Saying kAtSleeve{"Between plunger tab and sleeve, from above.",
                                  "Zwischen Riegellasche und Hülse, von oben.",
                                  "Entre la patte du verrou et le manchon, d’en haut."};
inline constexpr Saying kAtSleeveSide{"Between plunger tab and sleeve, from the side.",
                                      "Zwischen Riegellasche und Hülse, von der Seite.",
                                      "Entre la patte du verrou et le manchon, de côté."};
inline constexpr Saying kAtSocket{"Between socket edge and sleeve, from above.",
                                  "Zwischen Pfannenrand und Hülse, von oben.",
                                  "Entre le bord de la cage et le manchon, d’en haut."};
inline constexpr Saying kAtSocketSide{"Between socket edge and sleeve, from the side.",
                                      "Zwischen Pfannenrand und Hülse, von der Seite.",
                                      "Entre le bord de la cage et le manchon, de côté."};

// People, and what is known of the airframes.
inline constexpr Saying kOwner{"owner, rigging leader", "Halter, Leitung des Aufrüstens",
                               "propriétaire, responsable du montage"};
inline constexpr Saying kMember{"member", "Mitglied", "membre"};
inline constexpr Saying kEngineer{"engineer", "Prüfer", "mécanicien"};
inline constexpr Saying kSafetyOfficer{"safety officer", "Sicherheitsbeauftragter",
                                       "correspondant prévention"};
inline constexpr Saying kAuthority{"Invented. Ask your own authority.",
                                   "Erfunden. Fragen Sie Ihre eigene Behörde.",
                                   "Inventé. Demandez à votre propre autorité."};
inline constexpr Saying kManuals{"Invented maintenance manual, section 4, revision 3.",
                                 "Erfundenes Wartungshandbuch, Abschnitt 4, Revision 3.",
                                 "Manuel d’entretien inventé, section 4, révision 3."};
inline constexpr Saying kManualPage{"page 4-12, revision 3 (invented)", "Seite 4-12, Revision 3 (erfunden)",
                                    "page 4-12, révision 3 (inventée)"};

// Gauges and their checks.
inline constexpr Saying kSetA{"Red case, in QX-17's trailer.", "Rotes Etui, im Anhänger der QX-17.",
                              "Étui rouge, dans la remorque du QX-17."};
inline constexpr Saying kSetB{"Blue case.", "Blaues Etui.", "Étui bleu."};
inline constexpr Saying kSetC{"Fine steps, in the workshop.", "Feine Stufen, in der Werkstatt.",
                              "Pas fins, à l’atelier."};
inline constexpr Saying kPins{"Pins for gaps beyond the leaves.",
                              "Prüfstifte für Spalte, für die kein Blatt reicht.",
                              "Piges pour les écarts plus grands que les lames."};
inline constexpr Saying kTaper{"Taper gauge, for wide part-seated gaps.",
                               "Messkeil, für weite Spalte halb eingerasteter Anschlüsse.",
                               "Jauge conique, pour les grands écarts de raccords à demi engagés."};
inline constexpr Saying kHowChecked{"micrometer, at three places", "Messschraube, an drei Stellen",
                                    "micromètre, en trois endroits"};
inline constexpr Saying kSizesAsMarked{"Every size within 0.003 mm of its mark.",
                                       "Jedes Maß höchstens 0,003 mm neben seiner Aufschrift.",
                                       "Chaque taille à 0,003 mm au plus de son marquage."};
inline constexpr Saying kTipsWorn{
    "Tips worn: leaves 0.02 to 0.03 mm thinner than marked. Put aside.",
    "Spitzen abgenutzt: Blätter 0,02 bis 0,03 mm dünner als aufgeschrieben. Beiseitegelegt.",
    "Bouts usés\u00a0: lames plus minces de 0,02 à 0,03 mm que leur marquage. Mis de côté."};
inline constexpr Saying kSetBPutAside{
    "Set B put aside; what it read since stays in doubt.",
    "Satz B beiseitegelegt; was er seither gemessen hat, bleibt im Zweifel.",
    "Jeu B mis de côté\u00a0; ce qu’il a mesuré depuis reste en doute."};

// Workshop.
inline constexpr Saying kSeasonCleaned{"Season start: balls, sockets and locks cleaned.",
                                       "Saisonbeginn: Kugeln, Pfannen und Riegel gereinigt.",
                                       "Début de saison\u00a0: billes, cages et verrous nettoyés."};
inline constexpr Saying kSeasonGreased{"Thin film of the grade in the manual.",
                                       "Dünner Film des Fetts nach Handbuch.",
                                       "Film mince de la graisse indiquée au manuel."};
inline constexpr Saying kAnnual{"Annual inspection by A. Quill.", "Gemacht von A. Quill.",
                                "Faite par A. Quill."};
inline constexpr Saying kElevatorCleaned{"Hardened grease taken out of the elevator lock.",
                                         "Verhärtetes Fett aus der Verriegelung des Höhenruders entfernt.",
                                         "Graisse durcie retirée du verrouillage de la profondeur."};
inline constexpr Saying kWetWeek{"A wet week, and water had stood in the trailer.",
                                 "Eine nasse Woche, und im Anhänger hatte Wasser gestanden.",
                                 "Une semaine humide, et de l’eau était restée dans la remorque."};
inline constexpr Saying kFlapGapHadGrown{
    "The gap had grown since summer. Ball and plunger replaced; A. Quill's decision.",
    "Der Spalt war seit dem Sommer gewachsen. Kugel und Riegel gewechselt; Entscheidung von A. Quill.",
    "L’écart avait grandi depuis l’été. Bille et verrou remplacés\u00a0; décision d’A. Quill."};
inline constexpr Saying kFlapPlay{
    "Dial gauge, both sides held close to the ball, before the ball was changed.",
    "Messuhr, beide Seiten nahe der Kugel gehalten, bevor die Kugel ersetzt wurde.",
    "Comparateur, les deux côtés tenus près de la bille, avant le remplacement de la bille."};
inline constexpr Saying kBallReplaced{"ball and plunger replaced", "Kugel und Riegel ersetzt",
                                      "bille et verrou remplacés"};
inline constexpr Saying kSleeveHadMoved{"The sleeve had moved on the rod.",
                                        "Die Hülse hatte sich auf der Stange verschoben.",
                                        "Le manchon s’était déplacé sur la tringle."};
inline constexpr Saying kNewFittingFromToday{
    "Sleeve readjusted; a new fitting with its own baseline from today.",
    "Hülse neu eingestellt; ab heute ein neuer Einbau mit eigener Grundreihe.",
    "Manchon réglé à nouveau\u00a0; dès aujourd’hui, nouvelle pose avec sa propre série de référence."};
inline constexpr Saying kReadjustedByQuill{
    "Sleeve had moved on the rod; readjusted by A. Quill.",
    "Hülse hatte sich auf der Stange verschoben; von A. Quill neu eingestellt.",
    "Le manchon s’était déplacé sur la tringle\u00a0; réglé à nouveau par A. Quill."};
inline constexpr Saying kSleeveReadjusted{"sleeve readjusted", "Hülse neu eingestellt",
                                          "manchon réglé à nouveau"};

// Baseline days and measuring together.
inline constexpr Saying kLeafTilted{"Leaf was held at an angle; seen by both at the time.",
                                    "Blatt wurde schräg gehalten; beide haben es dabei gesehen.",
                                    "La lame était tenue inclinée\u00a0; vu par les deux sur le moment."};
inline constexpr Saying kOverlapShown{
    "On trestles: right airbrake shown part-seated at 0.62 to 0.80 mm, where it also reads when locked. Its "
    "gap cannot tell the two apart.",
    "Auf Böcken: Bremsklappe rechts halb eingerastet bei 0,62 bis 0,80 mm vorgeführt, wo sie auch verriegelt "
    "misst. Ihr Spalt kann die beiden nicht unterscheiden.",
    "Sur tréteaux\u00a0: aérofrein droit montré à demi engagé de 0,62 à 0,80 mm, valeurs qu’il donne aussi "
    "verrouillé. Son écart ne peut pas distinguer les deux."};
inline constexpr Saying kHeldTilted{
    "J. Iver and T. Vale measured together: J. Iver had held the leaf tilted.",
    "J. Iver und T. Vale haben gemeinsam gemessen: J. Iver hatte das Blatt schräg gehalten.",
    "J. Iver et T. Vale ont mesuré ensemble\u00a0: J. Iver avait tenu la lame inclinée."};
inline constexpr Saying kIverAboveVale{
    "J. Iver reads 0.04 above T. Vale on five couplings. Both stand; to be measured together.",
    "J. Iver misst an fünf Anschlüssen 0,04 mehr als T. Vale. Beides bleibt stehen; gemeinsam nachzumessen.",
    "J. Iver mesure 0,04 de plus que T. Vale sur cinq raccords. Les deux restent\u00a0; à mesurer ensemble."};

// Riggings that went otherwise.
inline constexpr Saying kCalledAway{
    "Called away at the left flap; begun there again from the look.",
    "An der Wölbklappe links weggerufen; dort von der Sichtkontrolle an neu begonnen.",
    "Dérangé au volet gauche\u00a0; repris là depuis le contrôle visuel."};
inline constexpr Saying kFirstOfIver{
    "J. Iver's first rigging of this airframe, beside M. Oren. Not signed off on it yet.",
    "Erstes Aufrüsten dieses Flugzeugs durch J. Iver, neben M. Oren. Einweisung noch nicht bestätigt.",
    "Premier montage de ce planeur par J. Iver, aux côtés de M. Oren. Instruction pas encore validée."};
inline constexpr Saying kFoundPartSeated{"Found part-seated when looked at again.",
                                         "Beim zweiten Hinsehen halb eingerastet vorgefunden.",
                                         "Trouvé à demi engagé en regardant de nouveau."};
inline constexpr Saying kMirrorMissing{
    "Mirror missing: the left aileron's ball could not be seen. Not rigged further.",
    "Spiegel fehlte: Die Kugel am Querruder links war nicht zu sehen. Nicht weiter aufgerüstet.",
    "Miroir manquant\u00a0: la bille de l’aileron gauche n’était pas visible. Montage non poursuivi."};
inline constexpr Saying kOutlanding{"Outlanding; taken apart at dusk, in a field.",
                                    "Außenlandung; in der Dämmerung auf einem Acker abgerüstet.",
                                    "Atterrissage en campagne\u00a0; démonté au crépuscule, dans un champ."};
inline constexpr Saying kLeftOvernight{"Left overnight; begun anew in the morning.",
                                       "Über Nacht so gelassen; am Morgen neu begonnen.",
                                       "Laissé pour la nuit\u00a0; recommencé au matin."};
inline constexpr Saying kValeSignedInstead{
    "M. Oren had to go before the close; T. Vale put the second name.",
    "M. Oren musste vor dem Abschluss weg; T. Vale hat den zweiten Namen eingetragen.",
    "M. Oren a dû partir avant la clôture\u00a0; T. Vale a mis le deuxième nom."};
inline constexpr Saying kNamedAll{
    "Named all couplings and said the calls of the control check unaided.",
    "Alle Anschlüsse benannt und die Ansagen der Ruderprobe ohne Hilfe gesprochen.",
    "A nommé tous les raccords et dit sans aide les annonces de l’essai des commandes."};
inline constexpr Saying kDrawn{"Drawn by the program, not a photo.", "Vom Programm gezeichnet, kein Foto.",
                               "Dessiné par le programme, pas une photo."};

// Readings outside: the note at the close, what was found, what was done.
inline constexpr Saying kGritNote{
    "Left airbrake outside: stopped, left as it was, A. Quill called. Grit under the sleeve stop. Then "
    "disconnected, cleaned, connected, looked at, pulled, read: 0.80 to 0.85.",
    "Bremsklappe links außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Schmutz unter dem Anschlag "
    "der Hülse. Dann getrennt, gereinigt, angeschlossen, angesehen, gezogen, gemessen: 0,80 bis 0,85.",
    "Aérofrein gauche hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. Saleté sous la "
    "butée du manchon. Ensuite désaccouplé, nettoyé, raccordé, regardé, tiré, mesuré\u00a0: 0,80 à 0,85."};
inline constexpr Saying kGrit{"Grit under the sleeve stop.", "Schmutz unter dem Anschlag der Hülse.",
                              "Saleté sous la butée du manchon."};
inline constexpr Saying kCleanedThen{
    "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and read.",
    "Stehen gelassen, bis die Ursache gefunden war. Dann getrennt, gereinigt, angeschlossen; noch anzusehen, "
    "zu ziehen und zu messen.",
    "Laissé en l’état jusqu’à la cause trouvée. Ensuite désaccouplé, nettoyé, raccordé\u00a0; à regarder, à "
    "tirer et à mesurer."};
inline constexpr Saying kCleanedThenTold{
    "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and read. L. "
    "Marsh told.",
    "Stehen gelassen, bis die Ursache gefunden war. Dann getrennt, gereinigt, angeschlossen; noch anzusehen, "
    "zu ziehen und zu messen. L. Marsh verständigt.",
    "Laissé en l’état jusqu’à la cause trouvée. Ensuite désaccouplé, nettoyé, raccordé\u00a0; à regarder, à "
    "tirer et à mesurer. L. Marsh au courant."};
inline constexpr Saying kWipedThen{
    "Left as it was until found. Then disconnected, wiped, connected; to be looked at, pulled and read. To "
    "be cleaned at the annual.",
    "Stehen gelassen, bis die Ursache gefunden war. Dann getrennt, abgewischt, angeschlossen; noch "
    "anzusehen, zu ziehen und zu messen. Bei der Jahresnachprüfung zu reinigen.",
    "Laissé en l’état jusqu’à la cause trouvée. Ensuite désaccouplé, essuyé, raccordé\u00a0; à regarder, à "
    "tirer et à mesurer. À nettoyer à la visite annuelle."};
inline constexpr Saying kDriedThen{
    "Left as it was until found. Then disconnected, dried, connected; to be looked at, pulled and read. To "
    "be cleaned at the annual.",
    "Stehen gelassen, bis die Ursache gefunden war. Dann getrennt, getrocknet, angeschlossen; noch "
    "anzusehen, zu ziehen und zu messen. Bei der Jahresnachprüfung zu reinigen.",
    "Laissé en l’état jusqu’à la cause trouvée. Ensuite désaccouplé, séché, raccordé\u00a0; à regarder, à "
    "tirer et à mesurer. À nettoyer à la visite annuelle."};
inline constexpr Saying kStoppedAtAirbrake{
    "Stopped at the right airbrake and left it as it is. A. Quill called. No flying with it.",
    "An der Bremsklappe rechts aufgehört und alles stehen gelassen. A. Quill angerufen. Damit wird nicht "
    "geflogen.",
    "Arrêt à l’aérofrein droit, raccord laissé en l’état. Appel à A. Quill. Pas de vol ainsi."};
inline constexpr Saying kSleeveShortNote{
    "Left aileron outside: stopped, left as it was, A. Quill called. Part-seated: the sleeve had not come to "
    "its stop. Then disconnected, cleaned, connected, looked at, pulled, read. L. Marsh told.",
    "Querruder links außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Halb eingerastet: Die Hülse "
    "war nicht bis zum Anschlag gekommen. Dann getrennt, gereinigt, angeschlossen, angesehen, gezogen, "
    "gemessen. L. Marsh verständigt.",
    "Aileron gauche hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. À demi "
    "engagé\u00a0: le manchon n’était pas venu en butée. Ensuite désaccouplé, nettoyé, raccordé, regardé, "
    "tiré, mesuré. L. Marsh au courant."};
inline constexpr Saying kSleeveShort{"Part-seated: the sleeve had not come to its stop.",
                                     "Halb eingerastet: Die Hülse war nicht bis zum Anschlag gekommen.",
                                     "À demi engagé\u00a0: le manchon n’était pas venu en butée."};
inline constexpr Saying kHardGreaseNote{
    "Elevator outside: stopped, left as it was, A. Quill called. The lock moved slowly, its grease was hard. "
    "Then disconnected, wiped, connected, looked at, pulled, read.",
    "Höhenruder außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Der Riegel bewegte sich langsam, "
    "sein Fett war hart. Dann getrennt, abgewischt, angeschlossen, angesehen, gezogen, gemessen.",
    "Profondeur hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. Le verrou bougeait "
    "lentement, sa graisse était dure. Ensuite désaccouplé, essuyé, raccordé, regardé, tiré, mesuré."};
inline constexpr Saying kHardGrease{
    "Lock moves slowly: the grease is hard, and leaves the plunger short.",
    "Riegel bewegt sich langsam: Das Fett ist hart, er rastet nicht ganz ein.",
    "Le verrou bouge lentement\u00a0: la graisse est dure et l’empêche d’aller à fond."};
inline constexpr Saying kControlsShowedNothingNote{
    "Right aileron outside, after a control check that had shown nothing: stopped, left as it was, A. Quill "
    "called. Part-seated. Then disconnected, cleaned, connected, looked at, pulled, read, and all controls "
    "tried again. L. Marsh told.",
    "Querruder rechts außerhalb, nach einer Ruderprobe, die nichts gezeigt hatte: aufgehört, stehen "
    "gelassen, A. Quill angerufen. Halb eingerastet. Dann getrennt, gereinigt, angeschlossen, angesehen, "
    "gezogen, gemessen, und die ganze Ruderprobe noch einmal gemacht. L. Marsh verständigt.",
    "Aileron droit hors bande, après un essai des commandes qui n’avait rien montré\u00a0: arrêt, raccord "
    "laissé en l’état, appel à A. Quill. À demi engagé. Ensuite désaccouplé, nettoyé, raccordé, regardé, "
    "tiré, mesuré, et toutes les commandes essayées de nouveau. L. Marsh au courant."};
inline constexpr Saying kControlsShowedNothing{
    "Part-seated. The control check before it had shown nothing.",
    "Halb eingerastet. Die Ruderprobe davor hatte nichts gezeigt.",
    "À demi engagé. L’essai des commandes fait avant n’avait rien montré."};
inline constexpr Saying kInAHurryNote{
    "Elevator outside: stopped, left as it was, A. Quill called. Part-seated: connected in a hurry before "
    "rain. Then disconnected, cleaned, connected, looked at, pulled, read. L. Marsh told.",
    "Höhenruder außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Halb eingerastet: in Eile vor dem "
    "Regen angeschlossen. Dann getrennt, gereinigt, angeschlossen, angesehen, gezogen, gemessen. L. Marsh "
    "verständigt.",
    "Profondeur hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. À demi engagé\u00a0: "
    "raccordé à la hâte avant la pluie. Ensuite désaccouplé, nettoyé, raccordé, regardé, tiré, mesuré. L. "
    "Marsh au courant."};
inline constexpr Saying kInAHurry{"Part-seated: connected in a hurry before rain.",
                                  "Halb eingerastet: in Eile vor dem Regen angeschlossen.",
                                  "À demi engagé\u00a0: raccordé à la hâte avant la pluie."};
inline constexpr Saying kWaterNote{
    "Elevator outside: stopped, left as it was, A. Quill called. Water in the grease. Then disconnected, "
    "dried, connected, looked at, pulled, read.",
    "Höhenruder außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Wasser im Fett. Dann getrennt, "
    "getrocknet, angeschlossen, angesehen, gezogen, gemessen.",
    "Profondeur hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. Eau dans la graisse. "
    "Ensuite désaccouplé, séché, raccordé, regardé, tiré, mesuré."};
inline constexpr Saying kWater{"Water in the grease.", "Wasser im Fett.", "Eau dans la graisse."};
inline constexpr Saying kPinAtAnAngleNote{
    "Right flap outside: stopped, left as it was, A. Quill called. The pin had been pushed in at an angle. "
    "Then looked at, pulled, read once with the pin square: 0.95 to 1.00.",
    "Wölbklappe rechts außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Der Prüfstift war schräg "
    "eingeschoben worden. Dann angesehen, gezogen, einmal mit geradem Prüfstift gemessen: 0,95 bis 1,00.",
    "Volet droit hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. La pige avait été "
    "enfoncée de travers. Ensuite regardé, tiré, mesuré une fois avec la pige droite\u00a0: 0,95 à 1,00."};
inline constexpr Saying kPinAtAnAngle{
    "The pin had been pushed in at an angle; the joint itself looked at and pulled by both.",
    "Der Prüfstift war schräg eingeschoben worden; die Verbindung selbst von beiden angesehen und gezogen.",
    "La pige avait été enfoncée de travers\u00a0; la liaison elle-même regardée et tirée par les deux."};
inline constexpr Saying kNothingAtTheJoint{
    "Nothing at the joint. To be looked at, pulled and read once, the pin square.",
    "Nichts an der Verbindung. Noch anzusehen, zu ziehen und einmal mit geradem Prüfstift zu messen.",
    "Rien à la liaison. À regarder, à tirer et à mesurer une fois, la pige droite."};
inline constexpr Saying kSandNote{
    "Left water dump outside: stopped, left as it was, A. Quill called. Sleeve not at its stop, sand on the "
    "rod. Then disconnected, cleaned, connected, looked at, pulled, read: 1.40 to 1.45.",
    "Wasserablass links außerhalb: aufgehört, stehen gelassen, A. Quill angerufen. Hülse nicht am Anschlag, "
    "Sand auf der Stange. Dann getrennt, gereinigt, angeschlossen, angesehen, gezogen, gemessen: 1,40 bis "
    "1,45.",
    "Vidange d’eau gauche hors bande\u00a0: arrêt, raccord laissé en l’état, appel à A. Quill. Manchon pas "
    "en butée, sable sur la tringle. Ensuite désaccouplé, nettoyé, raccordé, regardé, tiré, mesuré\u00a0: "
    "1,40 à 1,45."};
inline constexpr Saying kSand{"Sleeve not at its stop: sand on the rod.",
                              "Hülse nicht am Anschlag: Sand auf der Stange.",
                              "Manchon pas en butée\u00a0: sable sur la tringle."};

} // namespace rig::demo::says
