<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>aligner</name>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left height</source>
      <translation>Überstand links</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>right height</source>
      <translation>Überstand rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left, bracket to frame</source>
      <translation>links, Gabelbrücke bis Rahmen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>right, bracket to frame</source>
      <translation>rechts, Gabelbrücke bis Rahmen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left preload</source>
      <translation>Vorspannung links</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>right preload</source>
      <translation>Vorspannung rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left oil</source>
      <translation>Öl links</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>right oil</source>
      <translation>Öl rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>static sag</source>
      <translation>Negativfederweg statisch</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>rider sag</source>
      <translation>Negativfederweg mit Fahrer</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>static length longer than extended: one of them is misread</source>
      <translation>statische Länge größer als ausgefedert: eine davon ist falsch abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>rider length longer than extended: one of them is misread</source>
      <translation>Länge mit Fahrer größer als ausgefedert: eine davon ist falsch abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left {size} less than right</source>
      <translation>links {size} weniger als rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left and right alike, {size}</source>
      <translation>links und rechts gleich, {size}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>left {size} more than right</source>
      <translation>links {size} mehr als rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>handlebars</source>
      <translation>Lenker</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>air pressure</source>
      <translation>Luftdruck</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>steering</source>
      <translation>Lenkung</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>heights, difference</source>
      <translation>Überstände, Differenz</translation>
    </message>
    <message>
      <location filename="aligner/assessment/as_found.py" />
      <source>bracket to frame, difference</source>
      <translation>Gabelbrücke bis Rahmen, Differenz</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>left leg</source>
      <translation>linker Holm</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>right leg</source>
      <translation>rechter Holm</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>left side</source>
      <translation>linke Seite</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>right side</source>
      <translation>rechte Seite</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>{pair}, left</source>
      <translation>{pair}, links</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>{pair}, right</source>
      <translation>{pair}, rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>{length}, reading {number} of {wanted}</source>
      <translation>{length}, Messwert {number} von {wanted}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>reading, {length}</source>
      <translation>Messwert, {length}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>gap at the plate</source>
      <translation>Spalt an der Richtplatte</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>height of the plate on the tubes</source>
      <translation>Höhe der Richtplatte an den Rohren</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>lower bar's end ahead</source>
      <translation>unteres Stabende voraus</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>half length of the bars</source>
      <translation>halbe Länge der Richtstäbe</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>height between the bars</source>
      <translation>Höhe zwischen den Richtstäben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>upper width</source>
      <translation>obere Breite</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>lower width</source>
      <translation>untere Breite</translation>
    </message>
    <message>
      <location filename="aligner/assessment/asked_reading.py" />
      <source>height between the widths</source>
      <translation>Höhe zwischen den Breiten</translation>
    </message>
    <message>
      <location filename="aligner/assessment/assess.py" />
      <source>The job is signed off, and the sign-off does not hold: {still_open}.</source>
      <translation>Der Auftrag ist freigegeben, und die Freigabe gilt nicht: {still_open}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/attempts.py" />
      <source>a leg is not at the height it should have</source>
      <translation>ein Holm hat nicht den Überstand, den er haben soll</translation>
    </message>
    <message>
      <location filename="aligner/assessment/attempts.py" />
      <source>the pairs disagree</source>
      <translation>die Messpaare widersprechen sich</translation>
    </message>
    <message>
      <location filename="aligner/assessment/attempts.py" />
      <source>whether each leg is at its height is not settled</source>
      <translation>ob jeder Holm seinen Überstand hat, ist nicht entschieden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/attempts.py" />
      <source>the legs are not parallel</source>
      <translation>die Holme sind nicht parallel</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build.py" />
      <source>not begun</source>
      <translation>nicht begonnen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The steering falls slowly or stops on the way.</source>
      <translation>Die Lenkung fällt langsam oder bleibt unterwegs stehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The steering catches in the middle.</source>
      <translation>Die Lenkung rastet in der Mitte ein.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The head bearing knocks: it has play.</source>
      <translation>Das Lenkkopflager klopft: Es hat Spiel.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The head bearing's drag runs from more to less on the sheet: put the lower one first.</source>
      <translation>Das Reibmoment des Lenkkopflagers läuft im Datenblatt von mehr zu weniger: den kleineren Wert zuerst angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The sheet gives no drag for the head bearing: the pull is kept, not judged.</source>
      <translation>Das Datenblatt nennt kein Reibmoment für das Lenkkopflager: Die Zugkraft wird aufbewahrt, nicht beurteilt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The sheet gives a pull for the head bearing and no radius for it.</source>
      <translation>Das Datenblatt nennt eine Zugkraft für das Lenkkopflager und keinen Radius dazu.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>drag of the head bearing</source>
      <translation>Reibmoment des Lenkkopflagers</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_bearing.py" />
      <source>The radius of the pull is missing.</source>
      <translation>Der Radius der Zugkraft fehlt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_blend.py" />
      <source>the first oil's viscosity</source>
      <translation>Viskosität des ersten Öls</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_blend.py" />
      <source>the second oil's viscosity</source>
      <translation>Viskosität des zweiten Öls</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_blend.py" />
      <source>the wanted viscosity</source>
      <translation>verlangte Viskosität</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_blend.py" />
      <source>the amount</source>
      <translation>Gesamtmenge</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_force.py" />
      <source>the left leg's air gap</source>
      <translation>Luftkammer des linken Holms</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_force.py" />
      <source>the right leg's air gap</source>
      <translation>Luftkammer des rechten Holms</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_force.py" />
      <source>bore of the tube</source>
      <translation>Bohrung des Standrohrs</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_force.py" />
      <source>travel</source>
      <translation>Federweg</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_force.py" />
      <source>outside of the sliding tube</source>
      <translation>Außendurchmesser des Rohrs am Gabeldichtring</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>oil values missing</source>
      <translation>Ölwerte fehlen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>air gaps unsettled</source>
      <translation>Luftkammern unentschieden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>air gaps unlike</source>
      <translation>Luftkammern ungleich</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>bearing to check</source>
      <translation>Lager prüfen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>bearing to set</source>
      <translation>Lager einstellen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>sag to correct</source>
      <translation>Negativfederweg korrigieren</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>legs, bearing set</source>
      <translation>Holme, Lager eingestellt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>read left air gap</source>
      <translation>Luftkammer links messen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>read right air gap</source>
      <translation>Luftkammer rechts messen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>left leg to fill</source>
      <translation>Holm links füllen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>right leg to fill</source>
      <translation>Holm rechts füllen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>left oil is out</source>
      <translation>Öl links außerhalb</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>right oil is out</source>
      <translation>Öl rechts außerhalb</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>add {oil} to left</source>
      <translation>links {oil} zugeben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>add {oil} to right</source>
      <translation>rechts {oil} zugeben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>draw {oil} off left</source>
      <translation>links {oil} absaugen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>draw {oil} off right</source>
      <translation>rechts {oil} absaugen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_line.py" />
      <source>{done} of {total} ticked</source>
      <translation>{done} von {total} abgehakt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_oil.py" />
      <source>air gap or volume of oil</source>
      <translation>Luftkammer oder Ölmenge</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_oil.py" />
      <source>tolerance of the air gap</source>
      <translation>Toleranz der Luftkammer</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_oil.py" />
      <source>tolerance of the volume</source>
      <translation>Toleranz der Ölmenge</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_oil.py" />
      <source>The sheet gives no tolerance for the air gap.</source>
      <translation>Das Datenblatt nennt keine Toleranz für die Luftkammer.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>For the static sag {lengths} is still to be read.</source>
      <translation>Für den statischen Negativfederweg noch zu messen: {lengths}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>For the rider sag {lengths} is still to be read.</source>
      <translation>Für den Negativfederweg mit Fahrer noch zu messen: {lengths}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>Static sag. The length after pushing down is the longer: the two sets were changed over.</source>
      <translation>Negativfederweg statisch. Die Länge nach dem Herunterdrücken ist die größere: Die beiden Messreihen wurden vertauscht.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>Rider sag. The length after pushing down is the longer: the two sets were changed over.</source>
      <translation>Negativfederweg mit Fahrer. Die Länge nach dem Herunterdrücken ist die größere: Die beiden Messreihen wurden vertauscht.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>The sheet gives no band for the static sag, or no travel to take it from.</source>
      <translation>Das Datenblatt nennt keinen Bereich für den statischen Negativfederweg oder keinen Federweg, aus dem er folgt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>The sheet gives no band for the rider sag, or no travel to take it from.</source>
      <translation>Das Datenblatt nennt keinen Bereich für den Negativfederweg mit Fahrer oder keinen Federweg, aus dem er folgt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>The band for the static sag runs from more to less: put the lower one first.</source>
      <translation>Der Bereich für den statischen Negativfederweg läuft von mehr zu weniger: den kleineren Wert zuerst angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>The band for the rider sag runs from more to less: put the lower one first.</source>
      <translation>Der Bereich für den Negativfederweg mit Fahrer läuft von mehr zu weniger: den kleineren Wert zuerst angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>The sheet gives no travel: no share of it.</source>
      <translation>Das Datenblatt nennt keinen Federweg: kein Anteil daran.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>The sag is less with the rider than without: one set is misread.</source>
      <translation>Der Negativfederweg ist mit Fahrer kleiner als ohne: Eine Messreihe ist falsch abgelesen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>spacer while the sag was read</source>
      <translation>Distanzhülse beim Messen des Negativfederwegs</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>the extended length</source>
      <translation>Länge ausgefedert</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>pushed down</source>
      <translation>Länge nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_sag.py" />
      <source>lifted up</source>
      <translation>Länge nach dem Anheben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>left air gap</source>
      <translation>Luftkammer links</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>right air gap</source>
      <translation>Luftkammer rechts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>static sag, share of travel</source>
      <translation>Negativfederweg statisch, Anteil am Federweg</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>rider sag, share of travel</source>
      <translation>Negativfederweg mit Fahrer, Anteil am Federweg</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>oil</source>
      <translation>Öl</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>spacer</source>
      <translation>Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>preload</source>
      <translation>Vorspannung</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>head bearing drag</source>
      <translation>Reibmoment des Lenkkopflagers</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_settings.py" />
      <source>head bearing</source>
      <translation>Lenkkopflager</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spacer_change.py" />
      <source>The spacer of {spacer} mm is too short to be cut by {size} mm: a shorter or a softer spring is needed.</source>
      <translation>Die Distanzhülse von {spacer} mm ist zu kurz, um sie um {size} mm zu kürzen: Eine kürzere oder weichere Feder ist nötig.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spacer_change.py" />
      <source>new spacer</source>
      <translation>neue Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>free length of the spring</source>
      <translation>freie Länge der Feder</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>room for spring and spacer</source>
      <translation>Raum für Feder und Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>all coils touching</source>
      <translation>Länge mit anliegenden Windungen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>the sheet's spacer</source>
      <translation>Distanzhülse des Datenblatts</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>The coils touch {size} mm before the leg is right in: less preload or another spring is needed.</source>
      <translation>Die Windungen liegen {size} mm vor dem vollen Federweg an: Weniger Vorspannung oder eine andere Feder ist nötig.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>Only {size} mm is left at full travel before the coils touch: errors of measuring alone can use that up.</source>
      <translation>Bei vollem Federweg bleiben nur {size} mm, bis die Windungen anliegen: Schon Messfehler können das aufbrauchen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>spacer as it was</source>
      <translation>Distanzhülse wie vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>spacer that went in</source>
      <translation>eingesetzte Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>washers and seats (0 for none)</source>
      <translation>Scheiben und Federsitze (0, wenn keine)</translation>
    </message>
    <message>
      <location filename="aligner/assessment/build_spring.py" />
      <source>wanted preload</source>
      <translation>verlangte Vorspannung</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>From the top bracket's upper face to the tube's top edge, never to the cap. Three readings of each leg.</source>
      <translation>Von der Oberseite der oberen Gabelbrücke bis zur Oberkante des Standrohrs, nie bis zur Verschlussschraube. Drei Messwerte je Holm.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>hold the leg as its clamps come slack: it drops.</source>
      <translation>Holm festhalten, wenn seine Klemmungen locker werden: Er fällt herunter.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>The heights are not settled yet</source>
      <translation>Die Überstände sind noch nicht entschieden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Now measure the left leg's height.</source>
      <translation>Jetzt den Überstand des linken Holms messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Now measure the right leg's height.</source>
      <translation>Jetzt den Überstand des rechten Holms messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Push the left leg up {left}.</source>
      <translation>Linken Holm um {left} hochschieben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Let the left leg down {left}.</source>
      <translation>Linken Holm um {left} ablassen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Push the right leg up {right}.</source>
      <translation>Rechten Holm um {right} hochschieben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Let the right leg down {right}.</source>
      <translation>Rechten Holm um {right} ablassen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Push the left leg up {left} and push the right leg up {right}.</source>
      <translation>Linken Holm um {left} und rechten Holm um {right} hochschieben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Push the left leg up {left} and let the right leg down {right}.</source>
      <translation>Linken Holm um {left} hochschieben und rechten Holm um {right} ablassen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Let the left leg down {left} and push the right leg up {right}.</source>
      <translation>Linken Holm um {left} ablassen und rechten Holm um {right} hochschieben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Let the left leg down {left} and let the right leg down {right}.</source>
      <translation>Linken Holm um {left} und rechten Holm um {right} ablassen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Slacken the left top clamp and the left lower clamp; leave the right leg clamped. Then measure both again.</source>
      <translation>Linke obere und linke untere Klemmung lockern; den rechten Holm geklemmt lassen. Dann beide neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Slacken the right top clamp and the right lower clamp; leave the left leg clamped. Then measure both again.</source>
      <translation>Rechte obere und rechte untere Klemmung lockern; den linken Holm geklemmt lassen. Dann beide neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>One leg at a time: slacken its top clamp and its lower clamp, the other leg stays clamped. Then measure both again.</source>
      <translation>Einen Holm nach dem anderen: seine obere und seine untere Klemmung lockern, der andere Holm bleibt geklemmt. Dann beide neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>Measure how far each tube stands up.</source>
      <translation>Überstand jedes Standrohrs messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>The heights cannot be judged yet.</source>
      <translation>Die Überstände lassen sich noch nicht beurteilen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>The heights are out by less than can be moved.</source>
      <translation>Die Überstände liegen um weniger außerhalb, als sich verschieben lässt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_heights.py" />
      <source>The tolerance on the sheet is smaller than what can be set by hand: check it.</source>
      <translation>Die Toleranz im Datenblatt ist kleiner, als sich von Hand einstellen lässt: prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Lay a flat plate across both tubes and read the gap at the corner that stands off; nought where it touches all round.</source>
      <translation>Eine Richtplatte quer über beide Standrohre legen und den Spalt an der abstehenden Ecke messen; null, wo sie ringsum anliegt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Lay two straight bars across both tubes, one above the other. From the left, see how far the lower bar's end stands ahead of the upper one's; behind is minus.</source>
      <translation>Zwei Richtstäbe übereinander quer über beide Standrohre legen. Von links ablesen, wie weit das Ende des unteren Stabs vor dem des oberen steht; dahinter ist minus.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Measure over the outsides of both tubes at two heights, with the same gauge.</source>
      <translation>Außen über beide Standrohre in zwei Höhen messen, mit demselben Messmittel.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>The widths are within their limit, but they cannot tell a twist: lay a plate or two bars across the tubes as well.</source>
      <translation>Die Breiten liegen in der Toleranz, aber sie können keine Verdrehung zeigen: zusätzlich eine Richtplatte oder zwei Richtstäbe quer über die Standrohre legen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Whether the legs are parallel is not settled yet</source>
      <translation>Ob die Holme parallel sind, ist noch nicht entschieden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Whether the legs are in line is not settled yet</source>
      <translation>Ob die Holme fluchten, ist noch nicht entschieden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>They stand wider apart going down. That is a convergence and no twist: suspect a bent tube or a bent bracket. Roll both tubes and have the brackets checked by a qualified mechanic before this goes back on the road.</source>
      <translation>Sie stehen nach unten weiter auseinander. Das ist eine Konvergenz und keine Verdrehung: Verdacht auf ein verbogenes Standrohr oder eine verbogene Gabelbrücke. Beide Standrohre rollen und die Gabelbrücken von einem qualifizierten Mechaniker prüfen lassen, bevor das Motorrad wieder auf die Straße kommt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>They stand narrower apart going down. That is a convergence and no twist: suspect a bent tube or a bent bracket. Roll both tubes and have the brackets checked by a qualified mechanic before this goes back on the road.</source>
      <translation>Sie stehen nach unten enger zusammen. Das ist eine Konvergenz und keine Verdrehung: Verdacht auf ein verbogenes Standrohr oder eine verbogene Gabelbrücke. Beide Standrohre rollen und die Gabelbrücken von einem qualifizierten Mechaniker prüfen lassen, bevor das Motorrad wieder auf die Straße kommt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Turn the top bracket to the left: its right side {rim} forward.</source>
      <translation>Obere Gabelbrücke nach links drehen: ihre rechte Seite {rim} nach vorn.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Turn the top bracket to the right: its left side {rim} forward.</source>
      <translation>Obere Gabelbrücke nach rechts drehen: ihre linke Seite {rim} nach vorn.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>The legs are parallel; now check for a twist.</source>
      <translation>Die Holme sind parallel; jetzt auf Verdrehung prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>A twist between the brackets, cured at the top one. The stem head bolt, the stem pinch bolt and both top clamps are slack; the lower clamps hold. Then measure everything again.</source>
      <translation>Eine Verdrehung zwischen den Gabelbrücken, zu beheben an der oberen. Lenkschaftschraube, Klemmschraube des Lenkschafts und beide oberen Klemmungen sind locker; die unteren Klemmungen halten. Dann alles neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Whether the legs are in line cannot be told yet.</source>
      <translation>Ob die Holme fluchten, lässt sich noch nicht sagen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>Check that the legs are in line.</source>
      <translation>Prüfen, ob die Holme fluchten.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>The legs are not parallel: no turning cures that.</source>
      <translation>Die Holme sind nicht parallel: Kein Drehen behebt das.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>The legs are not in line.</source>
      <translation>Die Holme fluchten nicht.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_in_line.py" />
      <source>It is a twist between the brackets. Give the leg spacing and the bracket spacing on the sheet, and the turn that cures it follows.</source>
      <translation>Es ist eine Verdrehung zwischen den Gabelbrücken. Holmabstand und Abstand der Gabelbrücken im Datenblatt angeben, dann folgt die Drehung, die sie behebt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>From each frame point to its point on the lower bracket, the same way on both sides.</source>
      <translation>Von jedem Rahmenpunkt bis zu seinem Punkt an der unteren Gabelbrücke, auf beiden Seiten gleich.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>The stem nut lets it turn, the lower clamps hold both legs, the top clamps and the stem head bolt are slack. Then hold it there and measure again.</source>
      <translation>Die Einstellmutter lässt die Drehung zu, die unteren Klemmungen halten beide Holme, die oberen Klemmungen und die Lenkschaftschraube sind locker. Dann dort festhalten und neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Whether the bracket is square is not settled yet</source>
      <translation>Ob die Gabelbrücke winklig steht, ist noch nicht entschieden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Turn the lower bracket {turn} to the left.</source>
      <translation>Untere Gabelbrücke um {turn} nach links drehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Turn the lower bracket {turn} to the right.</source>
      <translation>Untere Gabelbrücke um {turn} nach rechts drehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Turn the lower bracket until the left side is {more} longer.</source>
      <translation>Untere Gabelbrücke drehen, bis die linke Seite {more} länger ist.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Turn the lower bracket until the right side is {more} longer.</source>
      <translation>Untere Gabelbrücke drehen, bis die rechte Seite {more} länger ist.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Measure “{pair}” too, both sides.</source>
      <translation>Auch „{pair}“ messen, beide Seiten.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Until “{pair}” reads {left} left and {right} right.</source>
      <translation>Bis bei „{pair}“ links {left} und rechts {right} gemessen werden.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Until “{pair}” reads {size} on both sides.</source>
      <translation>Bis bei „{pair}“ auf beiden Seiten {size} gemessen werden.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Or take the pair off.</source>
      <translation>Oder das Messpaar entfernen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Choose two points on the frame to square the lower bracket to.</source>
      <translation>Zwei Rahmenpunkte wählen, nach denen die untere Gabelbrücke winklig gestellt wird.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Alike left and right, such as two lugs or two bolt heads: add a pair of distances.</source>
      <translation>Links und rechts gleich, etwa zwei Laschen oder zwei Schraubenköpfe: ein Messpaar hinzufügen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Measure from the frame to the lower bracket, both sides.</source>
      <translation>Vom Rahmen bis zur unteren Gabelbrücke messen, beide Seiten.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>The distances and the points do not fit.</source>
      <translation>Die Abstände und die Punkte passen nicht zusammen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Measure “{pair}” again.</source>
      <translation>„{pair}“ neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>Measure another pair of points.</source>
      <translation>Ein weiteres Messpaar messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/correction_square.py" />
      <source>The squareness cannot be judged yet.</source>
      <translation>Die Winkligkeit lässt sich noch nicht beurteilen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/corrections.py" />
      <source>Nothing left to correct.</source>
      <translation>Nichts mehr zu korrigieren.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/corrections.py" />
      <source>Every reading is within its limit. Go on to the tightening list.</source>
      <translation>Jeder Messwert liegt in der Toleranz. Weiter zur Anziehliste.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>The {fastener} has no side: say whether it is the rider's left or right.</source>
      <translation>„{fastener}“ hat keine Seite: angeben, ob links oder rechts vom Fahrer aus.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>The {fastener} stands in the middle of the machine: leave its side out.</source>
      <translation>„{fastener}“ sitzt in der Mitte des Motorrads: die Seite weglassen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>{error}; until then the torque of the {fastener} is not held against it.</source>
      <translation>{error}; bis dahin wird das Drehmoment von „{fastener}“ nicht damit verglichen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>The value typed first is the one used here.</source>
      <translation>Hier gilt der zuerst eingegebene Wert.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>There is no list until this is put right: {error}.</source>
      <translation>Keine Liste, bis das berichtigt ist: {error}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>The torque of the {fastener} is missing: take it from the maker's manual for this model and year, the table of torques or the fork chapter. It is never guessed here.</source>
      <translation>Das Drehmoment von „{fastener}“ fehlt: dem Werkstatthandbuch des Herstellers für dieses Modell und Baujahr entnehmen, Drehmomenttabelle oder Kapitel Gabel. Hier wird es nie geraten.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>The torque that seats the bearing under the {fastener} is missing: take it from the steering chapter of the maker's manual. It is never guessed here.</source>
      <translation>Das Setzmoment für das Lager unter „{fastener}“ fehlt: dem Kapitel Lenkung im Werkstatthandbuch des Herstellers entnehmen. Hier wird es nie geraten.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>How far the {fastener} is backed off after seating is missing: take it from the steering chapter of the maker's manual.</source>
      <translation>Wie weit „{fastener}“ nach dem Setzen zurückgedreht wird, fehlt: dem Kapitel Lenkung im Werkstatthandbuch des Herstellers entnehmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/fasteners.py" />
      <source>Look at the manual again.</source>
      <translation>Noch einmal im Werkstatthandbuch nachsehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>at most {size}</source>
      <translation>höchstens {size}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>at most {size} bend</source>
      <translation>höchstens {size} Verbiegung</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>at most {size} indicated</source>
      <translation>höchstens {size} angezeigt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>at least {size}</source>
      <translation>mindestens {size}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>at least {size} bend</source>
      <translation>mindestens {size} Verbiegung</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>at least {size} indicated</source>
      <translation>mindestens {size} angezeigt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>bend {size} ({read} indicated)</source>
      <translation>Verbiegung {size} ({read} angezeigt)</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>{size}, limit missing</source>
      <translation>{size}, Grenzwert fehlt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>Name the gauge: without it nobody knows how sure the number is.</source>
      <translation>Messmittel angeben: Ohne diese Angabe weiß niemand, wie sicher der Wert ist.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>Not replaced yet</source>
      <translation>Noch nicht ersetzt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>Watch</source>
      <translation>Beobachten</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>earlier</source>
      <comment>instead of a day</comment>
      <translation>früher</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>replace, still due</source>
      <translation>ersetzen, noch fällig</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>replaced, new part fitted</source>
      <translation>ersetzt, Neuteil eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>The limit is missing: take it from the manual.</source>
      <translation>Grenzwert fehlt: dem Werkstatthandbuch entnehmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>Too near the limit for this gauge to tell: use a finer one, or watch it.</source>
      <translation>Für dieses Messmittel zu nahe am Grenzwert, um zu entscheiden: ein feineres benutzen oder beobachten.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>It measures out and is marked good: say why in the note.</source>
      <translation>Messwert außerhalb, aber als gut markiert: in der Notiz begründen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/findings.py" />
      <source>not looked at</source>
      <translation>nicht geprüft</translation>
    </message>
    <message>
      <location filename="aligner/assessment/freshness.py" />
      <source>The readings are dated {then}, and it is {now}: whether they were taken after the clamps cannot be told. Set the clock, then measure once more.</source>
      <translation>Die Messwerte tragen das Datum {then}, und es ist {now}: Ob sie nach den Klemmungen genommen wurden, ist nicht zu erkennen. Uhr stellen, dann noch einmal messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/freshness.py" />
      <source>the readings are dated later than now: set the clock, then measure again</source>
      <translation>die Messwerte tragen eine spätere Zeit als jetzt: Uhr stellen, dann neu messen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/freshness.py" />
      <source>the readings are from before the clamps were tightened: measure again</source>
      <translation>die Messwerte sind älter als das Anziehen der Klemmungen: neu messen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/freshness.py" />
      <source>the readings are from before “{step}” was opened again: measure again</source>
      <translation>die Messwerte sind älter als das Wiederöffnen von „{step}“: neu messen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the gap</source>
      <translation>Spalt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the height</source>
      <translation>Höhe</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the end difference</source>
      <translation>Differenz der Stabenden</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the half length</source>
      <translation>halbe Länge</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the upper width</source>
      <translation>obere Breite</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the lower width</source>
      <translation>untere Breite</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the difference of the widths</source>
      <translation>Differenz der Breiten</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the sheet's leg spacing</source>
      <translation>Holmabstand im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the sheet's bracket spacing</source>
      <translation>Abstand der Gabelbrücken im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>the sheet's length from the lower bracket to the axle</source>
      <translation>Länge von der unteren Gabelbrücke bis zur Achse im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>The sheet gives no tolerance for the legs' plane.</source>
      <translation>Das Datenblatt nennt keine Toleranz für die Flucht der Holme.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>The tolerance is an angle, and the twist needs the leg spacing and the bracket spacing: give them, or give the tolerance as a length.</source>
      <translation>Die Toleranz ist ein Winkel, und die Verdrehung braucht den Holmabstand und den Abstand der Gabelbrücken: beide angeben oder die Toleranz als Länge angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line.py" />
      <source>Read over a height of {height} only, against {spacing} between the brackets: what is within there may be out over the whole. Read over a greater height.</source>
      <translation>Nur über eine Höhe von {height} gemessen, bei {spacing} zwischen den Gabelbrücken: Was dort in der Toleranz liegt, kann über das Ganze außerhalb sein. Über eine größere Höhe messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>The upper width is not measured.</source>
      <translation>Die obere Breite ist nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>The lower width is not measured.</source>
      <translation>Die untere Breite ist nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>Give the height between the plate's contact lines: without it nothing follows.</source>
      <translation>Die Höhe zwischen den Anlagelinien der Richtplatte angeben: Ohne sie lässt sich nichts bestimmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>Give the height between the bars: without it nothing follows.</source>
      <translation>Die Höhe zwischen den Richtstäben angeben: Ohne sie lässt sich nichts bestimmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>Give the bars' half length: without it nothing follows.</source>
      <translation>Die halbe Länge der Richtstäbe angeben: Ohne sie lässt sich nichts bestimmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>Give the height between the two widths: without it nothing follows.</source>
      <translation>Die Höhe zwischen den beiden Breiten angeben: Ohne sie lässt sich nichts bestimmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>Widths tell whether the tubes converge. They cannot tell a twist.</source>
      <translation>Breiten zeigen, ob die Standrohre zusammenlaufen. Eine Verdrehung können sie nicht zeigen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/in_line_measured.py" />
      <source>Say which corner of the plate stands off the tube.</source>
      <translation>Angeben, welche Ecke der Richtplatte vom Standrohr absteht.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point}, left leg</source>
      <translation>{point}, linker Holm</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point}, right leg</source>
      <translation>{point}, rechter Holm</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point}: to be replaced, and no new part is fitted yet.</source>
      <translation>{point}: zu ersetzen, und noch ist kein Neuteil eingebaut.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point}: no limit on the sheet. Take it from the manual.</source>
      <translation>{point}: kein Grenzwert im Datenblatt. Dem Werkstatthandbuch entnehmen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point}: too near its limit for this gauge to tell.</source>
      <translation>{point}: für dieses Messmittel zu nahe am Grenzwert, um zu entscheiden.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point} measures out and is marked good; its note says why.</source>
      <translation>{point}: Messwert außerhalb, aber als gut markiert; die Notiz sagt, warum.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/inspection.py" />
      <source>{point} measures out and is marked good: say why in its note, or mark it to be replaced.</source>
      <translation>{point}: Messwert außerhalb, aber als gut markiert: in der Notiz begründen oder als zu ersetzen markieren.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>“{step}” was ticked at {seen}, and {specified} is specified; no reason is given. Untick it and do it again, or look at the sheet.</source>
      <translation>„{step}“ wurde mit {seen} abgehakt, vorgeschrieben sind {specified}; kein Grund ist angegeben. Haken entfernen und den Schritt wiederholen oder das Datenblatt ansehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>“{step}” was ticked at {seen}, and {specified} is specified in pass {number}; no reason is given. Untick it and do it again, or look at the sheet.</source>
      <translation>„{step}“ wurde mit {seen} abgehakt, vorgeschrieben sind {specified} in Durchgang {number}; kein Grund ist angegeben. Haken entfernen und den Schritt wiederholen oder das Datenblatt ansehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>January</source>
      <translation>Januar</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>February</source>
      <translation>Februar</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>March</source>
      <translation>März</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>April</source>
      <translation>April</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>May</source>
      <translation>Mai</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>June</source>
      <translation>Juni</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>July</source>
      <translation>Juli</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>August</source>
      <translation>August</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>September</source>
      <translation>September</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>October</source>
      <translation>Oktober</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>November</source>
      <translation>November</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>December</source>
      <translation>Dezember</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>“{step}” is ticked, but its readings are out: slacken what was done on it, correct, measure again and do it anew.</source>
      <translation>„{step}“ ist abgehakt, aber seine Messwerte liegen außerhalb: lockern, was darauf angezogen wurde, korrigieren, neu messen und erneut anziehen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>“{step}” is ticked, but its readings cannot tell: untick it and measure.</source>
      <translation>„{step}“ ist abgehakt, aber seine Messwerte entscheiden nicht: Haken entfernen und messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>“{step}” is ticked, but its readings are missing: untick it and measure.</source>
      <translation>„{step}“ ist abgehakt, aber seine Messwerte fehlen: Haken entfernen und messen.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/log_questions.py" />
      <source>{count} steps were ticked without a reason while a step that stands before was open: the first, “{step}” before “{before}”. Look whether it still holds.</source>
      <extracomment>{count} step was ticked without a reason while a step that stands before was open: the first, “{step}” before “{before}”. Look whether it still holds.</extracomment>
      <translation>
        <numerusform>{count} Schritt wurde ohne Grund abgehakt, während ein davor stehender offen war: „{step}“ vor „{before}“. Nachsehen, ob das noch gilt.</numerusform>
        <numerusform>{count} Schritte wurden ohne Grund abgehakt, während ein davor stehender offen war: als erster „{step}“ vor „{before}“. Nachsehen, ob das noch gilt.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>{day} {month} {year} {time}</source>
      <translation>{day}. {month} {year}, {time}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>The times of the log run backwards, from {latest} to {then}. Whether the readings were taken after the clamps were tightened cannot be told from them: set the clock, then measure once more.</source>
      <translation>Die Zeiten des Protokolls laufen rückwärts, von {latest} auf {then}. Ob die Messwerte nach dem Anziehen der Klemmungen genommen wurden, ist daraus nicht zu erkennen: Uhr stellen, dann noch einmal messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/log_questions.py" />
      <source>“{step}” is ticked, but “{tightened}” was tightened after it: untick it and measure again.</source>
      <translation>„{step}“ ist abgehakt, aber „{tightened}“ wurde danach angezogen: Haken entfernen und neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>leg spacing, centre to centre</source>
      <translation>Holmabstand, Mitte zu Mitte</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>bracket spacing</source>
      <translation>Abstand der Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>lower bracket to axle</source>
      <translation>untere Gabelbrücke bis Achse</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>bracket offset</source>
      <translation>Versatz der Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>tube diameter at the brackets</source>
      <translation>Rohrdurchmesser an den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>rake</source>
      <translation>Nachlaufwinkel</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>axle offset</source>
      <translation>Achsversatz</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>front wheel radius, loaded</source>
      <translation>Radius des Vorderrads, belastet</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>rear wheel radius, loaded</source>
      <translation>Radius des Hinterrads, belastet</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>wheelbase</source>
      <translation>Radstand</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>tolerance of the tubes' height</source>
      <translation>Toleranz des Überstands</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>radius of the head bearing's pull</source>
      <translation>Radius der Zugkraft am Lenkkopflager</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>{fastener}: seating torque</source>
      <translation>{fastener}: Setzmoment</translation>
    </message>
    <message>
      <location filename="aligner/assessment/missing.py" />
      <source>{fastener}: back off</source>
      <translation>{fastener}: Zurückdrehen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>What was measured here may have moved: “{step}” kept it in place, and is open again.</source>
      <translation>Was hier gemessen wurde, kann sich verschoben haben: „{step}“ hielt es an seinem Platz und ist wieder offen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>The readings that it passed on, or those taken since, are out.</source>
      <translation>Die Messwerte, auf denen er bestanden wurde, oder die seither genommenen, liegen außerhalb.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>The readings that it passed on cannot tell any more.</source>
      <translation>Die Messwerte, auf denen er bestanden wurde, entscheiden nicht mehr.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>The readings that it passed on are missing now.</source>
      <translation>Die Messwerte, auf denen er bestanden wurde, fehlen jetzt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>What was measured here may have moved: “{step}” is open again.</source>
      <translation>Was hier gemessen wurde, kann sich verschoben haben: „{step}“ ist wieder offen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>What was looked at here may have changed: “{step}” is open again.</source>
      <translation>Was hier angesehen wurde, kann sich geändert haben: „{step}“ ist wieder offen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>It relies on “{step}”, which is open again.</source>
      <translation>Beruht auf „{step}“, einem wieder offenen Schritt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>It comes after “{step}”, which is open again.</source>
      <translation>Kommt nach „{step}“, einem wieder offenen Schritt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/opened_again.py" />
      <source>It has to be slack while “{step}” is done again.</source>
      <translation>Muss locker sein, während „{step}“ wiederholt wird.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>The left leg is not measured.</source>
      <translation>Der linke Holm ist nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>The right leg is not measured.</source>
      <translation>Der rechte Holm ist nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>the left {size} over it</source>
      <translation>der linke {size} darüber</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>the right {size} over it</source>
      <translation>der rechte {size} darüber</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>the left {size} under it</source>
      <translation>der linke {size} darunter</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>the right {size} under it</source>
      <translation>der rechte {size} darunter</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>The sheet gives {target} for each leg, and as chosen the legs are not brought to it: {off}.</source>
      <translation>Das Datenblatt nennt {target} je Holm, und mit der getroffenen Wahl werden die Holme nicht darauf gebracht: {off}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/protrusion.py" />
      <source>The sheet gives no tolerance for protrusion.</source>
      <translation>Das Datenblatt nennt keine Toleranz für den Überstand.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/readings.py" />
      <source>The {gauge} has no repeatability: one reading is taken as if it were every reading.</source>
      <translation>Zu „{gauge}“ fehlt die Wiederholbarkeit: Ein Messwert gilt, als fielen alle gleich aus.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/readings.py" />
      <source>{reading} stands off from its fellows by {size}. It still counts: read it once more, and strike it out only if it was a slip.</source>
      <translation>{reading} weicht von den übrigen um {size} ab. Der Messwert zählt trotzdem: noch einmal messen und nur streichen, wenn er ein Versehen war.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/readings.py" />
      <source>No gauge is named, so its limit of error is not known: name the one you use.</source>
      <translation>Kein Messmittel ist angegeben, daher ist seine Fehlergrenze nicht bekannt: das benutzte angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/readings.py" />
      <source>“{gauge}” is not on the job's list of gauges: add it there or choose another.</source>
      <translation>„{gauge}“ steht nicht auf der Messmittelliste des Auftrags: dort hinzufügen oder ein anderes wählen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/road_figures.py" />
      <source>the height as found</source>
      <translation>vorgefundener Überstand</translation>
    </message>
    <message>
      <location filename="aligner/assessment/road_figures.py" />
      <source>give a raise between −{most} and +{most}</source>
      <translation>ein Maß zwischen −{most} und +{most} angeben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/road_figures.py" />
      <source>the heights as they stand</source>
      <translation>jetziger Überstand</translation>
    </message>
    <message>
      <location filename="aligner/assessment/road_figures.py" />
      <source>the sheet's target</source>
      <translation>Sollwert des Datenblatts</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/sheet_changes.py" />
      <source>{count} ticked steps are open again, because the sheet was changed: {reasons}.</source>
      <extracomment>{count} ticked step is open again, because the sheet was changed: {reasons}.</extracomment>
      <translation>
        <numerusform>{count} abgehakter Schritt ist wieder offen, weil das Datenblatt geändert wurde: {reasons}.</numerusform>
        <numerusform>{count} abgehakte Schritte sind wieder offen, weil das Datenblatt geändert wurde: {reasons}.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring.py" />
      <source>The sheet gives no tolerance for squareness.</source>
      <translation>Das Datenblatt nennt keine Toleranz für die Winkligkeit.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring.py" />
      <source>The tolerance is an angle, and the angle needs the four dimensions of the points: give them under Points, or the tolerance as a length on the Bike stage.</source>
      <translation>Die Toleranz ist ein Winkel, und der Winkel braucht die vier Maße der Punkte: diese unter „Punkte“ angeben oder die Toleranz unter „Motorrad“ als Länge.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring.py" />
      <source>“{pair}” is not measured yet: measure it, or take the pair off.</source>
      <translation>„{pair}“ ist noch nicht gemessen: messen oder das Messpaar entfernen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring.py" />
      <source>“{pair}” is read, but the tolerance is an angle and its angle needs its four dimensions: give them, or take the pair off.</source>
      <translation>„{pair}“ ist gemessen, aber die Toleranz ist ein Winkel, und der Winkel des Messpaars braucht dessen vier Maße: diese angeben oder das Messpaar entfernen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>The frame's own difference at “{pair}” counts as exact. Give its standard uncertainty: where it is known to within ± a and no better, 0.6 a.</source>
      <translation>Die eigene Differenz des Rahmens an „{pair}“ gilt als genau. Ihre Standardunsicherheit angeben: Ist sie nur auf ± a bekannt, 0,6 a.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>The left side of “{pair}” is missing.</source>
      <translation>Die linke Seite von „{pair}“ fehlt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>The right side of “{pair}” is missing.</source>
      <translation>Die rechte Seite von „{pair}“ fehlt.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the left distance</source>
      <translation>linker Abstand</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the right distance</source>
      <translation>rechter Abstand</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the frame's own difference</source>
      <translation>eigene Differenz des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the bracket's reach</source>
      <translation>Vormaß der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the bracket's half width</source>
      <translation>halbe Breite der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the frame's setback</source>
      <translation>Rückmaß des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>the frame's half width</source>
      <translation>halbe Breite des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>bracket reach and frame setback</source>
      <translation>Vormaß der Gabelbrücke und Rückmaß des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>bracket reach and bracket half width</source>
      <translation>Vormaß und halbe Breite der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>frame setback and frame half width</source>
      <translation>Rückmaß und halbe Breite des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>squaring</source>
      <translation>Winkligkeit</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_pair.py" />
      <source>“{pair}” lacks some of its four dimensions: no angle.</source>
      <translation>Bei „{pair}“ fehlen einige der vier Maße: kein Winkel.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_together.py" />
      <source>The pairs of distances disagree by more than their uncertainty: something is bent, unlike left and right, or misread.</source>
      <translation>Die Messpaare widersprechen sich um mehr als ihre Unsicherheit: Etwas ist verbogen, links und rechts ungleich oder falsch abgelesen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_together.py" />
      <source>“{pair}” stands out.</source>
      <translation>„{pair}“ weicht ab.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_together.py" />
      <source>Of two pairs neither can be called the odd one: measure a third.</source>
      <translation>Bei zwei Messpaaren lässt sich keines das abweichende nennen: ein drittes messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/squaring_together.py" />
      <source>A pair's uncertainty is not known, so the pairs cannot be weighed against each other: name the gauge of each.</source>
      <translation>Die Unsicherheit eines Messpaars ist nicht bekannt, daher lassen sich die Messpaare nicht gegeneinander gewichten: zu jedem das Messmittel angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Bike</source>
      <translation>Motorrad</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Strip</source>
      <translation>Zerlegen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Inspect</source>
      <translation>Prüfen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Build</source>
      <translation>Zusammenbau</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Align</source>
      <translation>Ausrichten</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Tighten</source>
      <translation>Anziehen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>Prove</source>
      <translation>Probefahrt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>{seen} of {total} seen</source>
      <translation>{seen} von {total} geprüft</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>{within} of {total} within</source>
      <translation>{within} von {total} in Toleranz</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>step {number} of {total}</source>
      <translation>Schritt {number} von {total}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>all {total} seen</source>
      <translation>alle {total} geprüft</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>{seen}, {due} due</source>
      <translation>{seen}, {due} fällig</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/stages.py" />
      <source>{count} missing</source>
      <extracomment>{count} missing</extracomment>
      <translation>
        <numerusform>{count} Wert fehlt</numerusform>
        <numerusform>{count} Werte fehlen</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>complete but for oil</source>
      <translation>vollständig bis auf Öl</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>sheet complete</source>
      <translation>vollständig</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>all {total} steps</source>
      <translation>alle {total} Schritte</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>signed {day}</source>
      <translation>freigegeben {day}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>{count} checked</source>
      <translation>{count} geprüft</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/stages.py" />
      <source>{count} steps of the list are open</source>
      <extracomment>{count} step of the list is open</extracomment>
      <translation>
        <numerusform>{count} Schritt der Liste ist offen</numerusform>
        <numerusform>{count} Schritte der Liste sind offen</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>{count} from last time</source>
      <translation>{count} vom letzten Mal</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>no sheet yet</source>
      <translation>noch kein Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>no fasteners</source>
      <translation>keine Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>waits for Align</source>
      <translation>wartet auf Ausrichten</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>waits for Tighten</source>
      <translation>wartet auf Anziehen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>the final check “{check}” is open</source>
      <translation>die Endkontrolle „{check}“ ist offen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>a hold point is ticked that does not stand</source>
      <translation>ein Haltepunkt ist abgehakt, der nicht gilt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>signed, open again</source>
      <translation>freigegeben, wieder offen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/stages.py" />
      <source>there is no tightening list</source>
      <translation>es gibt keine Anziehliste</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/stages.py" />
      <source>{count} final checks are open</source>
      <extracomment>{count} final check is open</extracomment>
      <translation>
        <numerusform>{count} Endkontrolle ist offen</numerusform>
        <numerusform>{count} Endkontrollen sind offen</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/steering.py" />
      <source>axle leans {lean}, right end high</source>
      <translation>Achse um {lean} geneigt, rechtes Ende höher</translation>
    </message>
    <message>
      <location filename="aligner/assessment/steering.py" />
      <source>offset of the axle</source>
      <translation>Achsversatz</translation>
    </message>
    <message>
      <location filename="aligner/assessment/steering.py" />
      <source>front wheel radius</source>
      <translation>Radius des Vorderrads</translation>
    </message>
    <message>
      <location filename="aligner/assessment/steering.py" />
      <source>rear wheel radius</source>
      <translation>Radius des Hinterrads</translation>
    </message>
    <message>
      <location filename="aligner/assessment/steering.py" />
      <source>axle level</source>
      <translation>Achse waagerecht</translation>
    </message>
    <message>
      <location filename="aligner/assessment/steering.py" />
      <source>axle leans {lean}, left end high</source>
      <translation>Achse um {lean} geneigt, linkes Ende höher</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>They can be read only while the clamps still hold: tube top edge above the bracket.</source>
      <translation>Sie lassen sich nur messen, solange die Klemmungen noch halten: Oberkante des Standrohrs über der Gabelbrücke.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/strip.py" />
      <source>{count} parts are off, to go back last off first. Go on to Inspect.</source>
      <extracomment>{count} part is off, to go back last off first. Go on to Inspect.</extracomment>
      <translation>
        <numerusform>{count} Teil ist abgebaut, das zuletzt abgebaute kommt zuerst zurück. Weiter zu „Prüfen“.</numerusform>
        <numerusform>{count} Teile sind abgebaut, das zuletzt abgebaute kommt zuerst zurück. Weiter zu „Prüfen“.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>Give the fasteners on Bike first.</source>
      <translation>Zuerst unter „Motorrad“ die Verschraubungen angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>Where the handlebars cover the tubes, go on to Loosen: the list asks again.</source>
      <translation>Wo der Lenker die Standrohre verdeckt, weiter zu „Lösen“: Die Liste fragt noch einmal.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>{done} of {total} loosened</source>
      <translation>{done} von {total} gelöst</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/strip.py" />
      <source>{count} parts off</source>
      <extracomment>{count} part off</extracomment>
      <translation>
        <numerusform>{count} Teil abgebaut</numerusform>
        <numerusform>{count} Teile abgebaut</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>as found read</source>
      <translation>vorab gemessen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>as found begun</source>
      <translation>Messung begonnen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>Go on to Inspect, part by part while it is off.</source>
      <translation>Weiter zu „Prüfen“, Teil für Teil, solange es abgebaut ist.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>the heights as found are not written down yet</source>
      <translation>die vorgefundenen Überstände sind noch nicht eingetragen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>The sheet lists no fasteners.</source>
      <translation>Das Datenblatt führt keine Verschraubungen auf.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/strip.py" />
      <source>all loosened, {count} parts off</source>
      <extracomment>all loosened, {count} part off</extracomment>
      <translation>
        <numerusform>alles gelöst, {count} Teil abgebaut</numerusform>
        <numerusform>alles gelöst, {count} Teile abgebaut</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>all loosened, all back</source>
      <translation>alles gelöst, alles zurück</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>all loosened</source>
      <translation>alles gelöst</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>There is nothing to loosen yet.</source>
      <translation>Noch gibt es nichts zu lösen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>Read both heights as found.</source>
      <translation>Beide Überstände messen, wie vorgefunden.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/strip.py" />
      <source>Everything is loosened.</source>
      <translation>Alles ist gelöst.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>it is ticked already</source>
      <translation>ist schon abgehakt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>untick it first to do it again</source>
      <translation>zum Wiederholen zuerst den Haken entfernen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>it is not to be checked again</source>
      <translation>ist nicht nachzukontrollieren</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>take one of the list</source>
      <translation>einen Eintrag der Liste nehmen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>there is no such step on the list</source>
      <translation>einen solchen Schritt gibt es auf der Liste nicht</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>it is out of its order</source>
      <translation>ist außer der Reihe</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>do the step in hand, or give a reason</source>
      <translation>den laufenden Schritt ausführen oder einen Grund angeben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>or give a reason to go on all the same</source>
      <translation>oder einen Grund angeben, um trotzdem weiterzugehen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>its torque is missing</source>
      <translation>das Drehmoment fehlt</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>type the one in the maker's manual; none is guessed</source>
      <translation>das aus dem Werkstatthandbuch des Herstellers eingeben; keines wird geraten</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>a torque of {torque}</source>
      <translation>ein Drehmoment von {torque}</translation>
    </message>
    <message>
      <location filename="aligner/assessment/ticks.py" />
      <source>type the value seen on the wrench</source>
      <translation>den am Drehmomentschlüssel abgelesenen Wert eingeben</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>the readings are out: correct, then measure again</source>
      <translation>die Messwerte liegen außerhalb: korrigieren, dann neu messen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>the readings cannot tell yet</source>
      <translation>die Messwerte entscheiden noch nicht</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>the readings are missing</source>
      <translation>die Messwerte fehlen</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>There is no list until the rules agree: {error}.</source>
      <translation>Keine Liste, bis die Regeln zusammenpassen: {error}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>Until then the {joint} is set without.</source>
      <translation>Bis dahin gilt für „{joint}“ der Einstellwert ohne ihn.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>No wrench on the list goes down to the first pass of the {joint}: bring it up evenly by hand, well short of the full torque.</source>
      <translation>Kein Drehmomentschlüssel der Liste reicht bis zum ersten Durchgang von „{joint}“ hinunter: von Hand gleichmäßig anziehen, deutlich unter dem vollen Drehmoment.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>No wrench on the list can do the {joint}.</source>
      <translation>Kein Drehmomentschlüssel der Liste eignet sich für „{joint}“.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>The wrench “{name}” is not chosen: {why}.</source>
      <translation>Der Drehmomentschlüssel „{name}“ wird nicht gewählt: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/tightening.py" />
      <source>The wrench for the {joint} can deliver a torque outside what is specified.</source>
      <translation>Der Drehmomentschlüssel für „{joint}“ kann ein Drehmoment außerhalb der Vorgabe liefern.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}: look for a reading that is wrong.</source>
      <translation>{what}: nach einem falschen Messwert suchen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>Measure again, with a finer gauge if you have one.</source>
      <translation>Neu messen, wenn vorhanden mit einem feineren Messmittel.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>More than {most} readings would be needed. Type over one that was misread or mistyped; if there is none, use a finer gauge.</source>
      <translation>Es wären mehr als {most} Messwerte nötig. Einen falsch abgelesenen oder vertippten Messwert überschreiben; wenn keiner falsch ist, ein feineres Messmittel nehmen.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}: take {count} readings of each leg.</source>
      <extracomment>{what}: take {count} reading of each leg.</extracomment>
      <translation>
        <numerusform>{what}: {count} Messwert je Holm nehmen.</numerusform>
        <numerusform>{what}: {count} Messwerte je Holm nehmen.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}: take {count} readings of each side.</source>
      <extracomment>{what}: take {count} reading of each side.</extracomment>
      <translation>
        <numerusform>{what}: {count} Messwert je Seite nehmen.</numerusform>
        <numerusform>{what}: {count} Messwerte je Seite nehmen.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}: take {count} readings.</source>
      <extracomment>{what}: take {count} reading.</extracomment>
      <translation>
        <numerusform>{what}: {count} Messwert nehmen.</numerusform>
        <numerusform>{what}: {count} Messwerte nehmen.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/unsettled.py" />
      <source>The gauge in use cannot settle it in a reasonable number of readings; with the {gauge}, {count} readings of each leg would.</source>
      <extracomment>The gauge in use cannot settle it in a reasonable number of readings; with the {gauge}, one reading of each leg would.</extracomment>
      <translation>
        <numerusform>Das benutzte Messmittel kann es mit vertretbar vielen Messwerten nicht entscheiden; mit „{gauge}“ genügt {count} Messwert je Holm.</numerusform>
        <numerusform>Das benutzte Messmittel kann es mit vertretbar vielen Messwerten nicht entscheiden; mit „{gauge}“ genügen {count} Messwerte je Holm.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/unsettled.py" />
      <source>The gauge in use cannot settle it in a reasonable number of readings; with the {gauge}, {count} readings of each side would.</source>
      <extracomment>The gauge in use cannot settle it in a reasonable number of readings; with the {gauge}, one reading of each side would.</extracomment>
      <translation>
        <numerusform>Das benutzte Messmittel kann es mit vertretbar vielen Messwerten nicht entscheiden; mit „{gauge}“ genügt {count} Messwert je Seite.</numerusform>
        <numerusform>Das benutzte Messmittel kann es mit vertretbar vielen Messwerten nicht entscheiden; mit „{gauge}“ genügen {count} Messwerte je Seite.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/assessment/unsettled.py" />
      <source>The gauge in use cannot settle it in a reasonable number of readings; with the {gauge}, {count} readings would.</source>
      <extracomment>The gauge in use cannot settle it in a reasonable number of readings; with the {gauge}, one reading would.</extracomment>
      <translation>
        <numerusform>Das benutzte Messmittel kann es mit vertretbar vielen Messwerten nicht entscheiden; mit „{gauge}“ genügt {count} Messwert.</numerusform>
        <numerusform>Das benutzte Messmittel kann es mit vertretbar vielen Messwerten nicht entscheiden; mit „{gauge}“ genügen {count} Messwerte.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>If they come out as they are now, that many would settle it: within the limit. Do not move anything for a difference that is not there.</source>
      <translation>Fallen sie aus wie bisher, entscheiden so viele: in der Toleranz. Nichts verstellen wegen einer Differenz, die nicht da ist.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>If they come out as they are now, that many would settle it: out. Do not move anything for a difference that is not there.</source>
      <translation>Fallen sie aus wie bisher, entscheiden so viele: außerhalb. Nichts verstellen wegen einer Differenz, die nicht da ist.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}: use the {gauge}.</source>
      <translation>{what}: Messmittel „{gauge}“ benutzen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}: name the gauge.</source>
      <translation>{what}: Messmittel angeben.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>Choose it under Gauges: without its limit of error a reading settles nothing.</source>
      <translation>Unter „Messmittel“ wählen: Ohne dessen Fehlergrenze entscheidet ein Messwert nichts.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>{what}, and no gauge on the list can settle it.</source>
      <translation>{what}, und kein Messmittel der Liste kann es entscheiden.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/unsettled.py" />
      <source>The difference is too near the limit for the gauges listed. Add a finer gauge, or bring the legs nearer to equal and measure again.</source>
      <translation>Die Differenz liegt für die aufgeführten Messmittel zu nahe am Grenzwert. Ein feineres Messmittel hinzufügen oder die Holme einander angleichen und neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/wrenches.py" />
      <source>The chosen wrench “{name}” is not on the list any more: choose again.</source>
      <translation>Der gewählte Drehmomentschlüssel „{name}“ steht nicht mehr auf der Liste: neu wählen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/wrenches.py" />
      <source>The chosen adapter “{name}” is not on the list any more: choose again.</source>
      <translation>Der gewählte Aufsatz „{name}“ steht nicht mehr auf der Liste: neu wählen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/wrenches.py" />
      <source>The chosen wrench “{name}” cannot be trusted with a setting: {why}. Put it right, or choose again.</source>
      <translation>Auf einen Einstellwert des gewählten Drehmomentschlüssels „{name}“ ist kein Verlass: {why}. Berichtigen oder neu wählen.</translation>
    </message>
    <message>
      <location filename="aligner/assessment/wrenches.py" />
      <source>{wrench} with {adapter}</source>
      <translation>{wrench} mit {adapter}</translation>
    </message>
    <message>
      <location filename="aligner/data_files.py" />
      <source>the installation lacks {file}: install it again</source>
      <translation>der Installation fehlt {file}: neu installieren</translation>
    </message>
    <message>
      <location filename="aligner/drawing/adapter_sketch.py" />
      <source>L not measured</source>
      <translation>L nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/drawing/force_plot.py" />
      <source>stroke in mm from full extension, force in N</source>
      <translation>Hub in mm ab voller Ausfederung, Kraft in N</translation>
    </message>
    <message>
      <location filename="aligner/drawing/force_plot.py" />
      <source>left</source>
      <translation>links</translation>
    </message>
    <message>
      <location filename="aligner/drawing/force_plot.py" />
      <source>right</source>
      <translation>rechts</translation>
    </message>
    <message>
      <location filename="aligner/drawing/side_bones.py" />
      <source>tube diameter</source>
      <translation>Rohrdurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{thread} class {strength_class}</source>
      <translation>{thread} der Festigkeitsklasse {strength_class}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{doubt}: look at the manual again</source>
      <translation>{doubt}: noch einmal im Werkstatthandbuch nachsehen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>no strength class is given, so the bolt's own limit is not known</source>
      <translation>keine Festigkeitsklasse angegeben, daher ist der Grenzwert der Schraube selbst nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>an aluminium part has no strength class: only the manual's torque counts</source>
      <translation>ein Aluminiumteil hat keine Festigkeitsklasse: nur das Drehmoment des Werkstatthandbuchs zählt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>“{name}” is no strength class known here ({known})</source>
      <translation>„{name}“ ist keine hier bekannte Festigkeitsklasse ({known})</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{size} is no size of hexagon bolt: nuts and caps have no limit</source>
      <translation>{size} ist keine Größe einer Sechskantschraube: Muttern und Verschlussschrauben haben keinen Grenzwert</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{torque} is {times} times what an {bolt} bolt takes</source>
      <translation>{torque} ist das {times}-Fache dessen, was eine Schraube {bolt} aushält</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{torque} is very little for an {bolt} bolt</source>
      <translation>{torque} ist sehr wenig für eine Schraube {bolt}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{doubt}: is it {units}?</source>
      <translation>{doubt}: ist {units} gemeint?</translation>
    </message>
    <message>
      <location filename="aligner/fastening/bolt_limits.py" />
      <source>{a} or {b}</source>
      <translation>{a} oder {b}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/head_bearing.py" />
      <source>head bearing pull</source>
      <translation>Zugkraft am Lenkkopflager</translation>
    </message>
    <message>
      <location filename="aligner/fastening/head_bearing.py" />
      <source>the radius is {radius}</source>
      <translation>der Radius ist {radius}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/head_bearing.py" />
      <source>measure from the steering axis to the scale's hook</source>
      <translation>von der Lenkachse bis zum Haken der Federwaage messen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/head_bearing.py" />
      <source>it runs from {low} to {high} N</source>
      <translation>sie reicht von {low} bis {high} N</translation>
    </message>
    <message>
      <location filename="aligner/fastening/head_bearing.py" />
      <source>give the lower one first, zero or more</source>
      <translation>die kleinere zuerst angeben, null oder mehr</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>Slacken</source>
      <translation>lockern</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>torque</source>
      <translation>Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>aim for {target}, from {low} to {high} N·m</source>
      <translation>Zielwert {target}, von {low} bis {high} N·m</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>give torques above zero, the lowest first and the target between them</source>
      <translation>Drehmomente über null angeben, das kleinste zuerst und den Zielwert dazwischen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>fastener</source>
      <translation>Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>a joint without a name</source>
      <translation>eine Verschraubung ohne Namen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>name each joint</source>
      <translation>jede Verschraubung benennen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>unknown kind “{kind}”</source>
      <translation>unbekannte Art „{kind}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>the kinds are {kinds}</source>
      <translation>die Arten sind {kinds}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>side “{side}”</source>
      <translation>Seite „{side}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>give left or right, or leave it out</source>
      <translation>links oder rechts angeben oder weglassen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>{count} bolts</source>
      <translation>{count} Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>give one bolt or more</source>
      <translation>mindestens eine Schraube angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>pattern “{pattern}”</source>
      <translation>Reihenfolge der Schrauben „{pattern}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>the patterns are {patterns}</source>
      <translation>die Reihenfolgen sind {patterns}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>give shares above 0 that do not fall and end at 1 (the full torque)</source>
      <translation>Anteile über 0 angeben, die nicht fallen und mit 1 (volles Drehmoment) enden</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>back off by {angle}</source>
      <translation>um {angle} zurückdrehen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>give a turn above zero</source>
      <translation>eine Drehung über null angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>check again after {distance}</source>
      <translation>Nachkontrolle nach {distance}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>give a distance above zero</source>
      <translation>eine Strecke über null angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>passes {shares}</source>
      <translation>Durchgänge {shares}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/joints.py" />
      <source>passes none</source>
      <translation>keine Durchgänge</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>not an object</source>
      <translation>kein Objekt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>give 'about' and 'rows'</source>
      <translation>„about“ und „rows“ angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>{file} row {number}</source>
      <translation>{file}, Eintrag {number}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>give each row as fields with values</source>
      <translation>jeden Eintrag als Felder mit Werten angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>without {fields}</source>
      <translation>ohne {fields}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>give every row these fields</source>
      <translation>jedem Eintrag diese Felder geben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>unknown field {fields}</source>
      <translation>unbekanntes Feld {fields}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>the fields are {fields}</source>
      <translation>die Felder sind {fields}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>not readable as JSON: {fault}</source>
      <translation>nicht als JSON lesbar: {fault}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>give a {type}</source>
      <translation>{type} angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>empty</source>
      <translation>leer</translation>
    </message>
    <message>
      <location filename="aligner/fastening/order_tables.py" />
      <source>say it in a sentence</source>
      <translation>in einem Satz angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/places.py" />
      <source>it stands there twice</source>
      <translation>steht zweimal da</translation>
    </message>
    <message>
      <location filename="aligner/fastening/places.py" />
      <source>give each its own name</source>
      <translation>jeweils einen eigenen Namen geben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, piece {number}</source>
      <translation>{joint}, Teil {number}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, pieces {first} and {last}</source>
      <translation>{joint}, Teile {first} und {last}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, pieces {first} to {last}</source>
      <translation>{joint}, Teile {first} bis {last}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, bolt {number}</source>
      <translation>{joint}, Schraube {number}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, nut {number}</source>
      <translation>{joint}, Mutter {number}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, bolts {first} and {last}</source>
      <translation>{joint}, Schrauben {first} und {last}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, nuts {first} and {last}</source>
      <translation>{joint}, Muttern {first} und {last}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, bolts {first} to {last}</source>
      <translation>{joint}, Schrauben {first} bis {last}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{joint}, nuts {first} to {last}</source>
      <translation>{joint}, Muttern {first} bis {last}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>by the turn the manual gives</source>
      <translation>um die Drehung laut Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>full, until it does not move</source>
      <translation>voll, bis sie sich nicht mehr bewegt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>half</source>
      <comment>pass</comment>
      <translation>halb</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>full</source>
      <comment>pass</comment>
      <translation>voll</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>by {angle}</source>
      <translation>um {angle}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>full, until neither moves</source>
      <translation>voll, bis sich keine von beiden mehr bewegt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>full, until none moves</source>
      <translation>voll, bis sich keine mehr bewegt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/planner.py" />
      <source>{step}, once more</source>
      <translation>{step}, noch einmal</translation>
    </message>
    <message>
      <location filename="aligner/fastening/precedence.py" />
      <source>The sheet's {rules} takes the place of the usual {usual} ({reason}).</source>
      <translation>Die Regel des Datenblatts {rules} tritt an die Stelle der üblichen {usual} ({reason}).</translation>
    </message>
    <message>
      <location filename="aligner/fastening/precedence.py" />
      <source>order rules</source>
      <translation>Regeln der Reihenfolge</translation>
    </message>
    <message>
      <location filename="aligner/fastening/precedence.py" />
      <source>they run in a ring: {rules}</source>
      <translation>sie laufen im Kreis: {rules}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/precedence.py" />
      <source>take one of them away</source>
      <translation>eine davon wegnehmen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/precedence.py" />
      <source>no reason given</source>
      <translation>kein Grund angegeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{first}” before “{then}”</source>
      <translation>„{first}“ vor „{then}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{first}” while “{then}” is slack</source>
      <translation>„{first}“, solange „{then}“ locker ist</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{then}” after the hold point “{first}”</source>
      <translation>„{then}“ nach dem Haltepunkt „{first}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{then}” again after “{first}”</source>
      <translation>„{then}“ noch einmal nach „{first}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>Undone in the reverse of the order for tightening, which is {rule}.</source>
      <translation>Gelöst in der Umkehrung der Reihenfolge beim Anziehen; diese ist {rule}.</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{first}”, “{then}”</source>
      <translation>„{first}“, „{then}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>The sheet's own order: {rule}.</source>
      <translation>Eigene Reihenfolge des Datenblatts: {rule}.</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>give {kinds}</source>
      <translation>{kinds} angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>both names are the same</source>
      <translation>beide Namen sind gleich</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>name two joints</source>
      <translation>zwei Verschraubungen nennen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{name}” is not known</source>
      <translation>„{name}“ ist nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>give a joint's name as on the sheet, a joint kind, or an activity</source>
      <translation>den Namen einer Verschraubung wie im Datenblatt, eine Art von Verschraubung oder eine Tätigkeit angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>“{name}” is no hold point</source>
      <translation>„{name}“ ist kein Haltepunkt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/rules.py" />
      <source>the hold points are {names}</source>
      <translation>die Haltepunkte sind {names}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/strip.py" />
      <source>{verb} {joint}; {also}</source>
      <translation>{verb}: {joint}; {also}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/strip.py" />
      <source>{verb} {joint}</source>
      <translation>{verb}: {joint}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>“{text}” is not a metric thread</source>
      <translation>„{text}“ ist kein metrisches Gewinde</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>write it as “M8x1.25” or “M8”</source>
      <translation>als „M8x1,25“ oder „M8“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>{size} is outside {smallest} to {largest}</source>
      <translation>{size} liegt außerhalb von {smallest} bis {largest}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>give the diameter over the bolt's thread in millimetres</source>
      <translation>den Außendurchmesser des Schraubengewindes in Millimetern angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>{size} with a pitch of {pitch}</source>
      <translation>{size} mit einer Steigung von {pitch}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>its pitch lies between {finest} and {coarsest} mm: was the bolt's length taken for the pitch?</source>
      <translation>die Steigung liegt zwischen {finest} und {coarsest} mm: wurde die Länge der Schraube für die Steigung gehalten?</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>{size} has no coarse pitch known here</source>
      <translation>für {size} ist hier keine Regelsteigung bekannt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/thread.py" />
      <source>write the pitch as well, as “{example}”</source>
      <translation>auch die Steigung schreiben, etwa „{example}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/torque.py" />
      <source>{first} and {second} differ by {difference} ({second} is {converted}): one is a copy of the other cut off at its last digit, not rounded</source>
      <translation>{first} und {second} unterscheiden sich um {difference} ({second} sind {converted}): eines ist aus dem anderen umgerechnet und an der letzten Stelle abgeschnitten, nicht gerundet</translation>
    </message>
    <message>
      <location filename="aligner/fastening/torque.py" />
      <source>{first} and {second} differ by {difference} ({second} is {converted}): more than rounding explains, so one of them is misprinted or misread</source>
      <translation>{first} und {second} unterscheiden sich um {difference} ({second} sind {converted}): mehr, als Runden erklärt, also ist eines davon falsch gedruckt oder falsch gelesen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/torque.py" />
      <source>“{text}” is not a number</source>
      <translation>„{text}“ ist keine Zahl</translation>
    </message>
    <message>
      <location filename="aligner/fastening/torque.py" />
      <source>write it as “36”</source>
      <translation>als „36“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/torque.py" />
      <source>“{unit}” is no unit of torque</source>
      <translation>„{unit}“ ist keine Einheit des Drehmoments</translation>
    </message>
    <message>
      <location filename="aligner/fastening/torque.py" />
      <source>it can be {units}</source>
      <translation>möglich sind {units}</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>adapter “{name}”</source>
      <translation>Aufsatz „{name}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>wrench “{name}”</source>
      <translation>Drehmomentschlüssel „{name}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>it changes the torque, and the wrench's grip length is not known</source>
      <translation>er verändert das Drehmoment, und die Länge L des Drehmomentschlüssels (Vierkant bis Griffmitte) ist nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>measure from the middle of the drive to the middle of the grip, or set the adapter at 90°</source>
      <translation>von der Mitte des Vierkants bis zur Griffmitte messen oder den Aufsatz auf 90° stellen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>folded back by {reach} mm on a grip length of {grip} mm it puts the fastener behind the hand</source>
      <translation>um {reach} mm zurückgeklappt liegt bei {grip} mm vom Vierkant bis zur Griffmitte die Verschraubung hinter der Hand</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>turn it round</source>
      <translation>umdrehen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>its scale runs from {low} to {high} N·m</source>
      <translation>seine Skala reicht von {low} bis {high} N·m</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>give the lowest mark above zero, then the highest</source>
      <translation>den kleinsten Skalenwert über null angeben, dann den größten</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>its graduation is not above zero</source>
      <translation>die Teilung ist nicht größer als null</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>read it off the scale</source>
      <translation>an der Skala ablesen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>its marks are further apart than its lowest is from its highest</source>
      <translation>seine Skalenteilung ist größer als der Abstand vom kleinsten zum größten Skalenwert</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>give the distance from one mark to the next</source>
      <translation>den Abstand von einem Teilstrich zum nächsten angeben</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>its deviation is {share} %</source>
      <translation>seine Abweichung ist {share} %</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>give what its certificate says, usually 4 %</source>
      <translation>den Wert seines Kalibrierscheins angeben, meist 4 %</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>its grip length is not above zero</source>
      <translation>die Länge L (Vierkant bis Griffmitte) ist nicht größer als null</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>measure it again</source>
      <translation>noch einmal messen</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>its own lower bound is above its highest mark</source>
      <translation>seine eigene Untergrenze liegt über seinem größten Skalenwert</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench.py" />
      <source>20 % of that is usual</source>
      <translation>üblich sind 20 % davon</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench_choice.py" />
      <source>a setting of {setting} N·m is outside its usable scale, {low} to {high} N·m</source>
      <translation>ein Einstellwert von {setting} N·m liegt außerhalb des nutzbaren Skalenbereichs, {low} bis {high} N·m</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench_choice.py" />
      <source>its {drive} drive does not take the {other_drive} of “{adapter}”</source>
      <translation>sein Vierkant {drive} passt nicht zu {other_drive} von „{adapter}“</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench_choice.py" />
      <source>{target} N·m is not within {low} to {high} N·m</source>
      <translation>{target} N·m liegt nicht zwischen {low} und {high} N·m</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench_choice.py" />
      <source>give low, target and high in rising order, above zero</source>
      <translation>unteren Wert, Zielwert und oberen Wert steigend angeben, über null</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench_choice.py" />
      <source>set to {setting} it delivers {least} to {greatest} N·m where {low} to {high} N·m is specified</source>
      <translation>auf {setting} eingestellt liefert er {least} bis {greatest} N·m, vorgeschrieben sind {low} bis {high} N·m</translation>
    </message>
    <message>
      <location filename="aligner/fastening/wrench_choice.py" />
      <source>its marks are {share} % of the setting apart, too coarse to set well</source>
      <translation>seine Teilstriche liegen {share} % des Einstellwerts auseinander, zu grob zum genauen Einstellen</translation>
    </message>
    <message>
      <location filename="aligner/gauging/combination.py" />
      <source>terms</source>
      <translation>Glieder</translation>
    </message>
    <message>
      <location filename="aligner/gauging/combination.py" />
      <source>there is none</source>
      <translation>keine vorhanden</translation>
    </message>
    <message>
      <location filename="aligner/gauging/combination.py" />
      <source>give at least one length</source>
      <translation>mindestens eine Länge angeben</translation>
    </message>
    <message>
      <location filename="aligner/gauging/combination.py" />
      <source>coefficient</source>
      <translation>Koeffizient</translation>
    </message>
    <message>
      <location filename="aligner/gauging/combination.py" />
      <source>one is not a number</source>
      <translation>einer ist keine Zahl</translation>
    </message>
    <message>
      <location filename="aligner/gauging/combination.py" />
      <source>check the dimensions it is from</source>
      <translation>die zugrunde liegenden Maße prüfen</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>resolution</source>
      <translation>Auflösung</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>limit of error</source>
      <translation>Fehlergrenze</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>repeatability</source>
      <translation>Wiederholbarkeit</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>gauge</source>
      <translation>Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>it has no name</source>
      <translation>Name fehlt</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>give it one, such as “depth gauge”</source>
      <translation>einen angeben, etwa „Tiefenmaß“</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>resolution, limit of error and repeatability are all nought; no gauge is exact</source>
      <translation>Auflösung, Fehlergrenze und Wiederholbarkeit sind alle null; kein Messmittel ist exakt</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>give at least the smallest step it is read to</source>
      <translation>mindestens den kleinsten abgelesenen Schritt angeben</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>it is not a number</source>
      <translation>keine Zahl</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>give a length such as 0.02 mm</source>
      <translation>eine Länge angeben, etwa 0,02 mm</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>{value} mm is negative</source>
      <translation>{value} mm ist negativ</translation>
    </message>
    <message>
      <location filename="aligner/gauging/gauge.py" />
      <source>a gauge's error is given as a plain length, zero or more</source>
      <translation>der Fehler eines Messmittels wird als einfache Länge angegeben, null oder mehr</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>value</source>
      <translation>Wert</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>standard uncertainty</source>
      <translation>Standardunsicherheit</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>limit</source>
      <translation>Grenzwert</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>{value} cannot be</source>
      <translation>{value} ist nicht möglich</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>it is zero or more</source>
      <translation>null oder mehr</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>{value} is not a number</source>
      <translation>{value} ist keine Zahl</translation>
    </message>
    <message>
      <location filename="aligner/gauging/one_sided.py" />
      <source>check what was typed</source>
      <translation>Eingabe prüfen</translation>
    </message>
    <message>
      <location filename="aligner/gauging/readings.py" />
      <source>readings</source>
      <translation>Messwerte</translation>
    </message>
    <message>
      <location filename="aligner/gauging/readings.py" />
      <source>take at least one</source>
      <translation>mindestens einen aufnehmen</translation>
    </message>
    <message>
      <location filename="aligner/gauging/readings.py" />
      <source>reading {number}</source>
      <translation>Messwert {number}</translation>
    </message>
    <message>
      <location filename="aligner/gauging/readings.py" />
      <source>{value} is not a length</source>
      <translation>{value} ist keine Länge</translation>
    </message>
    <message>
      <location filename="aligner/gauging/readings.py" />
      <source>write it as “4.2 mm”</source>
      <translation>als „4,2 mm“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/gauging/uncertainty.py" />
      <source>degrees of freedom</source>
      <translation>Freiheitsgrade</translation>
    </message>
    <message>
      <location filename="aligner/gauging/uncertainty.py" />
      <source>{value} is not more than 0</source>
      <translation>{value} ist nicht größer als 0</translation>
    </message>
    <message>
      <location filename="aligner/gauging/uncertainty.py" />
      <source>give 1 or more</source>
      <translation>1 oder mehr angeben</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>within</source>
      <translation>in der Toleranz</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>out</source>
      <translation>außerhalb</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>unsettled</source>
      <translation>nicht entschieden</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>missing</source>
      <translation>fehlt</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>check the readings</source>
      <translation>Messwerte prüfen</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>tolerance</source>
      <translation>Toleranz</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>{value} cannot be a tolerance</source>
      <translation>{value} kann keine Toleranz sein</translation>
    </message>
    <message>
      <location filename="aligner/gauging/verdict.py" />
      <source>give zero or more, without a sign</source>
      <translation>null oder mehr angeben, ohne Vorzeichen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/agreement.py" />
      <source>its turn has an uncertainty of {angle} degrees, so it has no weight</source>
      <translation>seine Drehung hat eine Unsicherheit von {angle} Grad und damit kein Gewicht</translation>
    </message>
    <message>
      <location filename="aligner/geometry/agreement.py" />
      <source>give its gauge a resolution, a repeatability or a limit of error</source>
      <translation>dem Messmittel eine Auflösung, Wiederholbarkeit oder Fehlergrenze geben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>{value} is not a measurement</source>
      <translation>{value} ist kein Messwert</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>{value} mm is no length</source>
      <translation>{value} mm ist keine Länge</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>give more than 0 mm</source>
      <translation>mehr als 0 mm angeben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>{value} mm puts the left point on the right</source>
      <translation>{value} mm legt den linken Punkt nach rechts</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>give the distance from the middle, 0 mm or more</source>
      <translation>den Abstand von der Mitte angeben, 0 mm oder mehr</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>give a number in degrees</source>
      <translation>eine Zahl in Grad angeben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/bounds.py" />
      <source>give a number in {unit}</source>
      <translation>eine Zahl in {unit} angeben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>the height between the contact lines</source>
      <translation>die Höhe zwischen den Anlagelinien</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>the bars' half length</source>
      <translation>die halbe Länge der Richtstäbe</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>the height between them</source>
      <translation>die Höhe zwischen ihnen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>{value} mm is less than touching</source>
      <translation>{value} mm ist weniger als Anliegen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>give the gap's width, 0 mm or more, and the corner it is at</source>
      <translation>die Weite des Spalts angeben, 0 mm oder mehr, und die Ecke, an der er ist</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>it is missing, and two bars tell nothing without it</source>
      <translation>fehlt; ohne diese Angabe sagen zwei Richtstäbe nichts</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>give the distance between the legs' middle lines in mm</source>
      <translation>den Abstand der Mittellinien beider Holme in mm angeben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>{value} mm is not shorter than {limit}, {size} mm</source>
      <translation>{value} mm ist nicht kürzer als {limit}, {size} mm</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>check both and their units</source>
      <translation>beide und ihre Einheiten prüfen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>a skew of {angle} degrees would need the brackets twisted by more than 90 degrees</source>
      <translation>für eine Schränkung von {angle} Grad müssten die Gabelbrücken um mehr als 90 Grad verdreht sein</translation>
    </message>
    <message>
      <location filename="aligner/geometry/in_line.py" />
      <source>check the readings, leg_spacing ({leg_spacing} mm) and bracket_spacing ({bracket_spacing} mm), and their units</source>
      <translation>die Messwerte, den Holmabstand ({leg_spacing} mm), den Abstand der Gabelbrücken ({bracket_spacing} mm) und ihre Einheiten prüfen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>protrusion left</source>
      <translation>Überstand links</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>protrusion right</source>
      <translation>Überstand rechts</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>protrusion difference</source>
      <translation>Differenz der Überstände</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>leg_spacing</source>
      <translation>Holmabstand</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>axle lean</source>
      <translation>Achsneigung</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>front_radius</source>
      <translation>Radius des Vorderrads</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>give it, or bring one leg to the other (left_to_right, right_to_left or share)</source>
      <translation>angeben oder einen Holm auf den anderen bringen (left_to_right, right_to_left oder share)</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>protrusion target</source>
      <translation>Sollüberstand</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>the sheet gives no target protrusion</source>
      <translation>das Datenblatt nennt keinen Sollüberstand</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>protrusion as found</source>
      <translation>Überstand vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/geometry/protrusion.py" />
      <source>no protrusion was read before stripping</source>
      <translation>vor dem Zerlegen wurde kein Überstand gemessen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>half widths</source>
      <translation>halbe Breiten</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>both are 0 mm, so left and right are one point</source>
      <translation>beide sind 0 mm, links und rechts sind also ein Punkt</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>choose points further from the middle or from the steering axis</source>
      <translation>Punkte weiter von der Mitte oder von der Lenkachse entfernt wählen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>if the other three are right it is at least {size} mm; or a side was misread</source>
      <translation>stimmen die drei anderen, sind es mindestens {size} mm; oder eine Seite wurde falsch abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>if the other three are right it is at most {size} mm; or a side was misread</source>
      <translation>stimmen die drei anderen, sind es höchstens {size} mm; oder eine Seite wurde falsch abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>left and right differ by {difference} mm, and with these dimensions no turn makes more than {most} mm: {value} mm cannot be right</source>
      <translation>links und rechts unterscheiden sich um {difference} mm, und mit diesen Maßen ergibt keine Drehung mehr als {most} mm: {value} mm können nicht stimmen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>bracket_reach and frame_setback put them {size} mm apart fore and aft</source>
      <translation>Vormaß der Gabelbrücke und Rückmaß des Rahmens legen sie in Längsrichtung {size} mm auseinander</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>the half widths put them {size} mm apart sideways</source>
      <translation>die halben Breiten legen sie in Querrichtung {size} mm auseinander</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>seen from above the points would be {plan} mm apart, longer than the {measured} mm measured; {part}</source>
      <translation>von oben gesehen lägen die Punkte {plan} mm auseinander, weiter als die gemessenen {measured} mm; {part}</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>check that dimension and its unit first, then the others</source>
      <translation>zuerst dieses Maß und seine Einheit prüfen, dann die anderen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>{value} mm is as long as the distances themselves</source>
      <translation>{value} mm sind so lang wie die Abstände selbst</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>give left less right of this frame when truly straight</source>
      <translation>links minus rechts dieses Rahmens bei wirklich gerader Stellung angeben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>both are 0 mm</source>
      <translation>beide sind 0 mm</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>a point on the steering axis</source>
      <translation>ein Punkt auf der Lenkachse</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>no turn changes these distances</source>
      <translation>keine Drehung verändert diese Abstände</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>reference points</source>
      <translation>Messpunkte</translation>
    </message>
    <message>
      <location filename="aligner/geometry/reference_pair.py" />
      <source>frame and bracket point lie in line with the axis</source>
      <translation>Rahmenpunkt und Gabelbrückenpunkt liegen in einer Linie mit der Lenkachse</translation>
    </message>
    <message>
      <location filename="aligner/geometry/squaring.py" />
      <source>turn</source>
      <translation>Drehung</translation>
    </message>
    <message>
      <location filename="aligner/geometry/squaring.py" />
      <source>readings of {left} and {right} mm turn the bracket by 90 degrees</source>
      <translation>Messwerte von {left} und {right} mm drehen die Gabelbrücke um 90 Grad</translation>
    </message>
    <message>
      <location filename="aligner/geometry/squaring.py" />
      <source>read both sides again</source>
      <translation>beide Seiten noch einmal messen</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>offset</source>
      <translation>Versatz</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>rise</source>
      <translation>Höhenänderung</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>rear_radius</source>
      <translation>Radius des Hinterrads</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>a steering axis {angle} degrees from the vertical never meets the ground</source>
      <translation>eine Lenkachse {angle} Grad zur Senkrechten trifft den Boden nie</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>give the angle from the vertical, usually 20 to 40 degrees</source>
      <translation>den Winkel zur Senkrechten angeben, meist 20 bis 40 Grad</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>legs moved by {size} mm leave the front wheel no room ahead of the rear one</source>
      <translation>um {size} mm verschobene Holme lassen dem Vorderrad vor dem Hinterrad keinen Platz</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>give the mean of both legs' moves in mm</source>
      <translation>den Mittelwert der Verschiebung beider Holme in mm angeben</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>{angle} degrees from the vertical is no steering axis</source>
      <translation>{angle} Grad zur Senkrechten ist keine Lenkachse</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>give the angle from the vertical (90 less the head angle), usually 20 to 40 degrees</source>
      <translation>den Winkel zur Senkrechten angeben (90 weniger den Lenkkopfwinkel), meist 20 bis 40 Grad</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>at {size} mm the two tyres would overlap</source>
      <translation>bei {size} mm würden sich die beiden Reifen überschneiden</translation>
    </message>
    <message>
      <location filename="aligner/geometry/steering.py" />
      <source>with these radii it is more than {size} mm; check that radii were not given as diameters</source>
      <translation>mit diesen Radien sind es mehr als {size} mm; prüfen, ob statt der Radien Durchmesser angegeben wurden</translation>
    </message>
    <message>
      <location filename="aligner/job/build.py" />
      <source>falls freely to both sides</source>
      <translation>fällt frei nach beiden Seiten</translation>
    </message>
    <message>
      <location filename="aligner/job/build.py" />
      <source>falls slowly or stops on the way</source>
      <translation>fällt langsam oder bleibt unterwegs stehen</translation>
    </message>
    <message>
      <location filename="aligner/job/build.py" />
      <source>catches in the middle</source>
      <translation>rastet in der Mitte ein</translation>
    </message>
    <message>
      <location filename="aligner/job/build.py" />
      <source>knocks: there is play</source>
      <translation>klopft: Spiel vorhanden</translation>
    </message>
    <message>
      <location filename="aligner/job/build_steps.py" />
      <source>up</source>
      <comment>closer coils</comment>
      <translation>oben</translation>
    </message>
    <message>
      <location filename="aligner/job/build_steps.py" />
      <source>down</source>
      <comment>closer coils</comment>
      <translation>unten</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_align.py" />
      <source>pair {number}</source>
      <translation>Messpaar {number}</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_build.py" />
      <source>step</source>
      <translation>Schritt</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_build.py" />
      <source>take one of the build list</source>
      <translation>einen der Zusammenbauliste nehmen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>the heights as found</source>
      <translation>die vorgefundenen Überstände</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>the readings as found</source>
      <translation>die vorgefundenen Messwerte</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>the heights</source>
      <translation>die Überstände</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>readings kept in line</source>
      <translation>aufbewahrte Messwerte zum Fluchten</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>the legs in line</source>
      <translation>das Fluchten der Holme</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>“{name}”</source>
      <translation>„{name}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>attempt {number}</source>
      <translation>Versuch {number}</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>“{gauge}” was used for {uses}</source>
      <translation>„{gauge}“ wurde verwendet für {uses}</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>name another gauge there first, or leave it on the list</source>
      <translation>dort zuerst ein anderes Messmittel angeben oder dieses auf der Liste lassen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>a gauge needs a name</source>
      <translation>ein Messmittel braucht einen Namen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>such as “depth gauge”</source>
      <translation>etwa „Tiefenmaß“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>“{name}” is on the list already</source>
      <translation>„{name}“ steht schon auf der Liste</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_gauges.py" />
      <source>call this one something else</source>
      <translation>dieses anders nennen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_prove.py" />
      <source>name</source>
      <translation>Name</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_prove.py" />
      <source>nobody signs</source>
      <translation>niemand gibt frei</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_prove.py" />
      <source>give the name of who did the work</source>
      <translation>den Namen des Ausführenden angeben</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_prove.py" />
      <source>there is no such final check</source>
      <translation>diese Endkontrolle gibt es nicht</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>left:right</source>
      <comment>words for the sides in the names of fasteners</comment>
      <translation>links:rechts linke:rechte linker:rechter linkes:rechtes linken:rechten linkem:rechtem</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>right {fastener}</source>
      <translation>{fastener} rechts</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>left {fastener}</source>
      <translation>{fastener} links</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>it stands in the middle</source>
      <translation>sitzt in der Mitte</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>give it a side first</source>
      <translation>zuerst eine Seite angeben</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>it is on the sheet already</source>
      <translation>steht schon im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>change that one</source>
      <translation>den vorhandenen Eintrag ändern</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>a fastener without a name</source>
      <translation>eine Verschraubung ohne Namen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>name it as the checklist shall</source>
      <translation>so benennen, wie sie auf der Liste heißen soll</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet.py" />
      <source>“{name}” is on the sheet already</source>
      <translation>„{name}“ steht schon im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the sheet was changed</source>
      <translation>das Datenblatt wurde geändert</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the torque of the {fastener}</source>
      <translation>Drehmoment von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the seating torque of the {fastener}</source>
      <translation>Setzmoment von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the back-off of the {fastener}</source>
      <translation>Rückdrehwinkel von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the number of bolts of the {fastener}</source>
      <translation>Schraubenzahl von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the passes of the {fastener}</source>
      <translation>Durchgänge von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the thread condition of the {fastener}</source>
      <translation>Gewindezustand von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the side of the {fastener}</source>
      <translation>Seite von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>the pattern of the {fastener}</source>
      <translation>Reihenfolge der Schrauben von „{fastener}“</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_sheet_ticks.py" />
      <source>{fastener} taken off</source>
      <translation>„{fastener}“ gestrichen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_strip.py" />
      <source>it is not ticked</source>
      <translation>nicht abgehakt</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_strip.py" />
      <source>untick a step that is done</source>
      <translation>Haken eines erledigten Schritts entfernen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_strip.py" />
      <source>there is no entry {number}</source>
      <translation>Eintrag {number} gibt es nicht</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_strip.py" />
      <source>it is empty</source>
      <translation>leer</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_strip.py" />
      <source>say what came off</source>
      <translation>angeben, was abgebaut wurde</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>wrench</source>
      <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>call the wrench what you call it</source>
      <translation>den Drehmomentschlüssel so nennen, wie er in der Werkstatt heißt</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>another wrench has that name</source>
      <translation>ein anderer Drehmomentschlüssel heißt schon so</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>adapter</source>
      <translation>Aufsatz</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>call the adapter what you call it</source>
      <translation>den Aufsatz so nennen, wie er in der Werkstatt heißt</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>another adapter has that name</source>
      <translation>ein anderer Aufsatz heißt schon so</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>there is no such fastener on the list</source>
      <translation>diese Verschraubung steht nicht auf der Liste</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>there is no such wrench on the list</source>
      <translation>dieser Drehmomentschlüssel steht nicht auf der Liste</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>there is no such adapter on the list</source>
      <translation>dieser Aufsatz steht nicht auf der Liste</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>take one of {names}</source>
      <translation>zur Wahl stehen: {names}</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>add it first</source>
      <translation>zuerst hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>reason</source>
      <translation>Begründung</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>none is given</source>
      <translation>keine angegeben</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>say why the step is unticked</source>
      <translation>angeben, warum der Haken entfernt wird</translation>
    </message>
    <message>
      <location filename="aligner/job/edits_tighten.py" />
      <source>untick one that is</source>
      <translation>Haken bei einer abgehakten entfernen</translation>
    </message>
    <message>
      <location filename="aligner/job/inspect.py" />
      <source>good</source>
      <translation>gut</translation>
    </message>
    <message>
      <location filename="aligner/job/inspect.py" />
      <source>watch</source>
      <translation>beobachten</translation>
    </message>
    <message>
      <location filename="aligner/job/inspect.py" />
      <source>replace</source>
      <translation>ersetzen</translation>
    </message>
    <message>
      <location filename="aligner/job/inspect.py" />
      <source>“{place}” stands there twice</source>
      <translation>„{place}“ steht zweimal da</translation>
    </message>
    <message>
      <location filename="aligner/job/inspect.py" />
      <source>keep one of the two</source>
      <translation>eines von beiden behalten</translation>
    </message>
    <message>
      <location filename="aligner/job/inspection_points.py" />
      <source>not on this program's list of points</source>
      <translation>nicht auf der Liste der Prüfpunkte dieses Programms</translation>
    </message>
    <message>
      <location filename="aligner/job/inspection_points.py" />
      <source>Unnamed point</source>
      <translation>Unbenannter Prüfpunkt</translation>
    </message>
    <message>
      <location filename="aligner/job/inspection_points.py" />
      <source>unnamed point</source>
      <translation>unbenannter Prüfpunkt</translation>
    </message>
    <message>
      <location filename="aligner/job/listed_gauges.py" />
      <source>which gauge?</source>
      <translation>welches Messmittel?</translation>
    </message>
    <message>
      <location filename="aligner/job/log.py" />
      <source>ticked</source>
      <translation>abgehakt</translation>
    </message>
    <message>
      <location filename="aligner/job/log.py" />
      <source>unticked</source>
      <translation>Haken entfernt</translation>
    </message>
    <message>
      <location filename="aligner/job/log.py" />
      <source>opened again</source>
      <translation>wieder geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>its scale runs from {low} to {high}</source>
      <translation>die Skala reicht von {low} bis {high}</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>its deviation is {share}</source>
      <translation>die Abweichung ist {share}</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>its lowest share is {share}</source>
      <translation>der kleinste Anteil ist {share}</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>20 % of the highest mark is usual</source>
      <translation>üblich sind 20 % des größten Skalenwerts</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>no wrench is exact: give what its certificate says, usually 4 %</source>
      <translation>kein Drehmomentschlüssel ist genau: angeben, was im Kalibrierschein steht, meist 4 %</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>its scale runs from {low} to {high}, in two units</source>
      <translation>seine Skala reicht von {low} bis {high}, in zwei Einheiten</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>give both marks of the same scale</source>
      <translation>beide Skalenwerte von derselben Skala angeben</translation>
    </message>
    <message>
      <location filename="aligner/job/wrenches.py" />
      <source>its marks are {graduation} apart, more than from its lowest to its highest</source>
      <translation>seine Skalenteilung ist {graduation}, mehr als vom kleinsten zum größten Skalenwert</translation>
    </message>
    <message>
      <location filename="aligner/language/said.py" />
      <source>{a} and {b}</source>
      <translation>{a} und {b}</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>tube outside diameter</source>
      <translation>Rohraußendurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>volume of spring and spacer</source>
      <translation>Volumen von Feder und Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>stroke</source>
      <translation>Hub</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>air in the leg</source>
      <translation>Luft im Holm</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>area of the tube</source>
      <translation>Rohrquerschnitt</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>air gap</source>
      <translation>Luftkammer</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>{volume} ml leaves no air in the leg</source>
      <translation>{volume} ml lassen keine Luft im Holm</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>less than {volume} ml is needed</source>
      <translation>weniger als {volume} ml ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>{stroke} mm of stroke uses up the air, which is all gone after {most} mm</source>
      <translation>{stroke} mm Hub brauchen die Luft auf, die nach {most} mm ganz verbraucht ist</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>a shorter stroke or a larger air gap is needed</source>
      <translation>ein kürzerer Hub oder eine größere Luftkammer ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>left leg, {field}</source>
      <translation>linker Holm, {field}</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>right leg, {field}</source>
      <translation>rechter Holm, {field}</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>steps</source>
      <translation>Schritte</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>one step or more is needed</source>
      <translation>ein Schritt oder mehr ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>air exponent</source>
      <translation>Polytropenexponent der Luft</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>a value from 1 (slow) to 1.4 (fast) is needed</source>
      <translation>ein Wert von 1 (langsam) bis 1,4 (schnell) ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>{pressure} kPa looks like a gauge reading</source>
      <translation>{pressure} kPa sieht nach einem Manometerwert aus</translation>
    </message>
    <message>
      <location filename="aligner/legs/air_spring.py" />
      <source>the absolute pressure is needed: gauge reading + {pressure} kPa</source>
      <translation>der absolute Druck ist nötig: Manometerwert + {pressure} kPa</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>bore diameter</source>
      <translation>Bohrungsdurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>rod diameter</source>
      <translation>Stangendurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>measured air gap</source>
      <translation>gemessene Luftkammer</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>wanted air gap</source>
      <translation>verlangte Luftkammer</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>oil put in</source>
      <translation>eingefüllte Ölmenge</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>the manual's oil volume</source>
      <translation>Ölmenge des Werkstatthandbuchs</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>{rod} mm does not go into a bore of {bore} mm</source>
      <translation>{rod} mm passen nicht in eine Bohrung von {bore} mm</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>the rod must be thinner than the bore</source>
      <translation>die Stange muss dünner sein als die Bohrung</translation>
    </message>
    <message>
      <location filename="aligner/legs/oil_level.py" />
      <source>height</source>
      <translation>Höhe</translation>
    </message>
    <message>
      <location filename="aligner/legs/refusals.py" />
      <source>{value} is not a measured value</source>
      <translation>{value} ist kein Messwert</translation>
    </message>
    <message>
      <location filename="aligner/legs/refusals.py" />
      <source>a plain number is needed</source>
      <translation>eine einfache Zahl ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/refusals.py" />
      <source>a value greater than 0 {unit} is needed</source>
      <translation>ein Wert größer als 0 {unit} ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/refusals.py" />
      <source>0 {unit} or more is needed</source>
      <translation>0 {unit} oder mehr ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>extended length</source>
      <translation>Länge ausgefedert</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>length after pushing down</source>
      <translation>Länge nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>length after lifting up</source>
      <translation>Länge nach dem Anheben</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>sag</source>
      <translation>Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>compression</source>
      <translation>Zusammendrückung</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>spring force</source>
      <translation>Federkraft</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>measured sag</source>
      <translation>gemessener Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>wanted sag</source>
      <translation>verlangter Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>air force at the measured sag</source>
      <translation>Luftkraft beim gemessenen Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>air force at the wanted sag</source>
      <translation>Luftkraft beim verlangten Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>the loaded length is {excess} mm longer than the extended one</source>
      <translation>die Länge unter Last ist {excess} mm länger als die ausgefederte</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>the extended length is read with the wheel off the ground, and a length that gets shorter as the leg goes in is needed</source>
      <translation>die ausgefederte Länge wird mit dem Rad frei vom Boden gemessen, und nötig ist eine Länge, die beim Einfedern kürzer wird</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>{sag} mm is more than the travel of {travel} mm</source>
      <translation>{sag} mm sind mehr als der Federweg von {travel} mm</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>one is misread</source>
      <translation>eines ist falsch gemessen</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>at {sag} mm the air alone holds {force} N, more than the load of {load} N</source>
      <translation>bei {sag} mm trägt die Luft allein {force} N, mehr als die Last von {load} N</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>less sag or a larger air gap is needed</source>
      <translation>weniger Negativfederweg oder eine größere Luftkammer ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>{sag} mm would leave the spring loose by {gap} mm</source>
      <translation>bei {sag} mm wäre die Feder um {gap} mm lose</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>less sag or a softer spring is needed</source>
      <translation>weniger Negativfederweg oder eine weichere Feder ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>no reading</source>
      <translation>kein Messwert</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>one or more in mm are needed</source>
      <translation>einer oder mehr in mm sind nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>{sag} mm: the leg is against its stop</source>
      <translation>{sag} mm: der Holm liegt am Anschlag an</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>a sag greater than 0 mm is needed, with less preload or more load</source>
      <translation>ein Negativfederweg größer als 0 mm ist nötig, mit weniger Vorspannung oder mehr Last</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>first spring rate</source>
      <translation>erste Federrate</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>second spring rate</source>
      <translation>zweite Federrate</translation>
    </message>
    <message>
      <location filename="aligner/legs/sag.py" />
      <source>compression where the rate changes</source>
      <translation>Zusammendrückung beim Ratenwechsel</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>spacer length</source>
      <translation>Länge der Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>spring free length</source>
      <translation>freie Federlänge</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>spring solid length</source>
      <translation>Blocklänge der Feder</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>room from spring seat to cap</source>
      <translation>Raum vom Federsitz bis zur Verschlussschraube</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>spring, spacer and washers are {gap} mm shorter than the room for them</source>
      <translation>Feder, Distanzhülse und Scheiben sind {gap} mm kürzer als der Raum dafür</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>a longer spacer is needed</source>
      <translation>eine längere Distanzhülse ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>the spring without a spacer already gives {preload} mm</source>
      <translation>die Feder ohne Distanzhülse ergibt schon {preload} mm</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>more preload or a shorter spring is needed</source>
      <translation>mehr Vorspannung oder eine kürzere Feder ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>{solid} mm is not shorter than the free length of {free} mm</source>
      <translation>{solid} mm ist nicht kürzer als die freie Länge von {free} mm</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>the length with all coils touching is needed</source>
      <translation>die Länge mit anliegenden Windungen ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>washers</source>
      <translation>Scheiben</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>a spring of {free} mm cannot be shortened by {preload} mm</source>
      <translation>eine Feder von {free} mm lässt sich nicht um {preload} mm verkürzen</translation>
    </message>
    <message>
      <location filename="aligner/legs/springs.py" />
      <source>one of the lengths is misread</source>
      <translation>eine der Längen ist falsch abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>A W number of a fork oil is not a viscosity and differs from maker to maker: take the viscosity in cSt at 40 °C from the oil's data sheet.</source>
      <translation>Die W-Zahl eines Gabelöls ist keine Viskosität und von Hersteller zu Hersteller verschieden: die Viskosität in cSt bei 40 °C dem Datenblatt des Öls entnehmen.</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>share of the first oil</source>
      <translation>Anteil des ersten Öls</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>first oil</source>
      <translation>erstes Öl</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>second oil</source>
      <translation>zweites Öl</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>wanted viscosity</source>
      <translation>verlangte Viskosität</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>oil wanted in all</source>
      <translation>verlangte Gesamtmenge Öl</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>a value from {thin} to {thick} cSt or a thicker oil is needed</source>
      <translation>ein Wert von {thin} bis {thick} cSt oder ein dickeres Öl ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>a share from 0 to 1 is needed</source>
      <translation>ein Anteil von 0 bis 1 ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>a value from {thin} to {thick} cSt or a thinner oil is needed</source>
      <translation>ein Wert von {thin} bis {thick} cSt oder ein dünneres Öl ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>{wanted} cSt cannot be mixed from oils of {first} and {second} cSt</source>
      <translation>{wanted} cSt lassen sich aus Ölen mit {first} und {second} cSt nicht mischen</translation>
    </message>
    <message>
      <location filename="aligner/legs/viscosity.py" />
      <source>a value from 0.21 to 20,000,000 cSt is needed</source>
      <translation>ein Wert von 0,21 bis 20.000.000 cSt ist nötig</translation>
    </message>
    <message>
      <location filename="aligner/legs/wear.py" />
      <source>indicator reading</source>
      <translation>Messuhranzeige</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>left ________   right ________</source>
      <translation>links ________   rechts ________</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>gap ________   corner ________</source>
      <translation>Spalt ________   Ecke ________</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>The maker's manual and local rules come first.</source>
      <translation>Werkstatthandbuch des Herstellers und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>Bench list: {names}</source>
      <translation>Werkbankliste: {names}</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>Bike not named</source>
      <translation>Motorrad ohne Namen</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>HOLD POINT: {step}</source>
      <translation>HALTEPUNKT: {step}</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>Bench list: unnamed</source>
      <translation>Werkbankliste: ohne Namen</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/report/bench_list.py" />
      <source>Tightening: {count} steps</source>
      <extracomment>Tightening: {count} step</extracomment>
      <translation>
        <numerusform>Anziehen: {count} Schritt</numerusform>
        <numerusform>Anziehen: {count} Schritte</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/report/bench_list.py" />
      <source>Taking apart: {count} steps</source>
      <extracomment>Taking apart: {count} step</extracomment>
      <translation>
        <numerusform>Zerlegen: {count} Schritt</numerusform>
        <numerusform>Zerlegen: {count} Schritte</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>Torque missing: write in the one from the maker's manual.</source>
      <translation>Drehmoment fehlt: aus dem Werkstatthandbuch des Herstellers eintragen.</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>No wrench on the list can do it.</source>
      <translation>Kein Drehmomentschlüssel der Liste ist dafür geeignet.</translation>
    </message>
    <message>
      <location filename="aligner/report/bench_list.py" />
      <source>CAUTION: {caution}</source>
      <translation>ACHTUNG: {caution}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_drawing.py" />
      <source>left {height}</source>
      <translation>links {height}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_drawing.py" />
      <source>right {height}</source>
      <translation>rechts {height}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_drawing.py" />
      <source>Seen from the seat; difference and its ± drawn {factor} times.</source>
      <translation>Vom Sitz aus; Differenz und ihr ± {factor}-fach gezeichnet.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_drawing.py" />
      <source>Seen from the seat.</source>
      <translation>Vom Sitz aus gesehen.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>{fastener}, torque missing</source>
      <translation>{fastener}, Drehmoment fehlt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>After {distance}</source>
      <translation>Nach {distance}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>To replace</source>
      <translation>Zu ersetzen</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>To watch</source>
      <translation>Zu beobachten</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>checked again {at}: {fastener}</source>
      <translation>nachkontrolliert {at}: {fastener}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>Due, and when</source>
      <translation>Was wann fällig ist</translation>
    </message>
    <message>
      <location filename="aligner/report/card_due.py" />
      <source>check again: {fasteners}</source>
      <translation>nachkontrollieren: {fasteners}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_photographs.py" />
      <source>Photographs</source>
      <translation>Fotos</translation>
    </message>
    <message>
      <location filename="aligner/report/card_photographs.py" />
      <source>this photograph is missing</source>
      <translation>dieses Foto fehlt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>The maker's manual and local rules come first; if you are not sure have the work checked by a qualified mechanic.</source>
      <translation>Werkstatthandbuch des Herstellers und örtliche Vorschriften gehen vor; im Zweifel die Arbeit von einem qualifizierten Mechaniker prüfen lassen.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Brakes are pumped up and proved before the first metre. After the road test every fastener marked for it is checked again.</source>
      <translation>Vor dem ersten Meter Bremsdruck durch Pumpen aufbauen und Bremsen auf Wirkung prüfen. Nach der Probefahrt jede dafür markierte Verschraubung nachkontrollieren.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Job card: {names}</source>
      <translation>Auftragskarte: {names}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>not signed off</source>
      <translation>nicht freigegeben</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>{pair}: left {left}, right {right}</source>
      <translation>{pair}: links {left}, rechts {right}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Job card: unnamed</source>
      <translation>Auftragskarte: ohne Namen</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Front end refit</source>
      <translation>Neuaufbau Vorderbau</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>not read</source>
      <translation>kein Wert</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>not recorded</source>
      <translation>nicht vermerkt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>not given</source>
      <translation>keine Angabe</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Heights</source>
      <translation>Überstände</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>as found</source>
      <translation>vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>as left</source>
      <translation>Endzustand</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>left less right</source>
      <translation>links minus rechts</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>target</source>
      <translation>Sollwert</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>allowed</source>
      <translation>zulässig</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>{pair}, left less right</source>
      <translation>{pair}, links minus rechts</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>earlier attempts</source>
      <translation>frühere Versuche</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>As left (± is the expanded uncertainty, 95 %)</source>
      <translation>Endzustand (± ist die erweiterte Unsicherheit, 95 %)</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Distances</source>
      <translation>Abstände</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Correction</source>
      <translation>Korrektur</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>As found, before anything was loosened</source>
      <translation>Vorgefunden, bevor etwas gelöst wurde</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Needs attention</source>
      <translation>Zu beachten</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Final checks and road test</source>
      <translation>Endkontrolle und Probefahrt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>done</source>
      <comment>a final check</comment>
      <translation>erledigt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>NOT DONE</source>
      <translation>NICHT ERLEDIGT</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Road test</source>
      <translation>Probefahrt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Note</source>
      <translation>Notiz</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Sign-off</source>
      <translation>Freigabe</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>none</source>
      <comment>a target height</comment>
      <translation>keiner</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Lower bracket</source>
      <translation>Untere Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>first read</source>
      <translation>Erstmessung</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Caution</source>
      <translation>Achtung</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Good, nothing to note</source>
      <translation>Gut, ohne Anmerkung</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Findings</source>
      <translation>Befunde</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Bearing, {day}</source>
      <translation>Lager, {day}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>Oil and settings</source>
      <translation>Öl und Einstellungen</translation>
    </message>
    <message>
      <location filename="aligner/report/card_rows.py" />
      <source>No final checks are recorded.</source>
      <translation>Keine Endkontrolle vermerkt.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>{step} (out of order or noted: {reasons})</source>
      <translation>{step} (außer der Reihe oder vermerkt: {reasons})</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>done at (UTC{zone})</source>
      <translation>erledigt (UTC{zone})</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>done at</source>
      <translation>erledigt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>step</source>
      <comment>head of a column</comment>
      <translation>Nr.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>specified</source>
      <translation>Soll</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>logged</source>
      <translation>Ist</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>wrench</source>
      <comment>head of a column</comment>
      <translation>Schlüssel</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>{step} (not on the list now)</source>
      <translation>{step} (nicht mehr auf der Liste)</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>open</source>
      <comment>a step not done</comment>
      <translation>offen</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>{done} of {total} passes, {at}</source>
      <translation>{done} von {total} Durchgängen, {at}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>Tightening: {done} of {total} steps done</source>
      <translation>Anziehen: {done} von {total} Schritten erledigt</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>Cautions</source>
      <translation>Achtung</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>Out of order or noted: {reason}</source>
      <translation>Außer der Reihe oder vermerkt: {reason}</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>There is no tightening list.</source>
      <translation>Keine Anziehliste vorhanden.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>Between them: {steps}.</source>
      <translation>Dazwischen: {steps}.</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>Undone and opened again</source>
      <translation>Haken entfernt und wieder geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/report/card_steps.py" />
      <source>Out of order or noted (pass {number}): {reason}</source>
      <translation>Außer der Reihe oder vermerkt (Durchgang {number}): {reason}</translation>
    </message>
    <message>
      <location filename="aligner/report/page.py" />
      <source>the document could not be begun</source>
      <translation>das Dokument ließ sich nicht beginnen</translation>
    </message>
    <message>
      <location filename="aligner/report/page.py" />
      <source>page {number} of {total}</source>
      <translation>Seite {number} von {total}</translation>
    </message>
    <message>
      <location filename="aligner/report/parts_list.py" />
      <source>both legs</source>
      <translation>beide Holme</translation>
    </message>
    <message>
      <location filename="aligner/report/parts_list.py" />
      <source>Parts for {bike}</source>
      <translation>Teile für {bike}</translation>
    </message>
    <message>
      <location filename="aligner/report/parts_list.py" />
      <source>Parts</source>
      <translation>Teile</translation>
    </message>
    <message>
      <location filename="aligner/report/parts_list.py" />
      <source>To replace: nothing</source>
      <translation>Zu ersetzen: nichts</translation>
    </message>
    <message>
      <location filename="aligner/report/parts_list.py" />
      <source>To watch: nothing</source>
      <translation>Zu beobachten: nichts</translation>
    </message>
    <message>
      <location filename="aligner/report/row_forms.py" />
      <source>Signed off by</source>
      <translation>Freigegeben von</translation>
    </message>
    <message>
      <location filename="aligner/report/row_forms.py" />
      <source>Signature, date</source>
      <translation>Unterschrift, Datum</translation>
    </message>
    <message>
      <location filename="aligner/report/steps.py" />
      <source>torque missing: see the maker's manual</source>
      <translation>Drehmoment fehlt: siehe Werkstatthandbuch des Herstellers</translation>
    </message>
    <message>
      <location filename="aligner/report/steps.py" />
      <source>{step}, pass {number} of {passes}</source>
      <translation>{step}, Durchgang {number} von {passes}</translation>
    </message>
    <message>
      <location filename="aligner/report/summary.py" />
      <source>Tightening list: {done} of {total} steps done.</source>
      <translation>Anziehliste: {done} von {total} Schritten erledigt.</translation>
    </message>
    <message>
      <location filename="aligner/report/summary.py" />
      <source>Notices:</source>
      <translation>Hinweise:</translation>
    </message>
    <message>
      <location filename="aligner/report/summary.py" />
      <source>Caution: {caution}</source>
      <translation>Achtung: {caution}</translation>
    </message>
    <message>
      <location filename="aligner/report/summary.py" />
      <source>Tightening list: no steps.</source>
      <translation>Anziehliste: keine Schritte.</translation>
    </message>
    <message>
      <location filename="aligner/report/summary.py" />
      <source>{step} (waits: {reason})</source>
      <translation>{step} (wartet: {reason})</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>when_read,what,side,number,value_mm,as_typed,gauge,put_by_at,point</source>
      <translation>wann_gemessen,was,Seite,Nummer,Wert_mm,wie_eingegeben,Messmittel,abgelegt_am,Prüfpunkt</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>step,what,fastener,bolts,pass,passes,target_nm,low_nm,high_nm,done,logged_nm,as_typed,wrench,at,reason</source>
      <translation>Schritt,was,Verschraubung,Schrauben,Durchgang,Durchgänge,Soll_Nm,min_Nm,max_Nm,erledigt,Ist_Nm,wie_eingegeben,Drehmomentschlüssel,wann,Begründung</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>washers, seats</source>
      <translation>Scheiben, Federsitze</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, extended</source>
      <translation>Negativfederweg, ausgefedert</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, static down</source>
      <translation>Negativfederweg, statisch, nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, static up</source>
      <translation>Negativfederweg, statisch, nach dem Anheben</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, rider down</source>
      <translation>Negativfederweg, mit Fahrer, nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, rider up</source>
      <translation>Negativfederweg, mit Fahrer, nach dem Anheben</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, static</source>
      <translation>Negativfederweg, statisch</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>sag, rider</source>
      <translation>Negativfederweg, mit Fahrer</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>in line, gap</source>
      <translation>Fluchten, Spalt</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>in line, end difference</source>
      <translation>Fluchten, Differenz der Stabenden</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>in line, upper</source>
      <translation>Fluchten, oben</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>in line, lower</source>
      <translation>Fluchten, unten</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>height</source>
      <comment>in a table</comment>
      <translation>Überstand</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>bracket to frame</source>
      <translation>Gabelbrücke bis Rahmen</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>built</source>
      <comment>in a table</comment>
      <translation>Zusammenbau</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>{name} readings</source>
      <translation>{name} Messwerte</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>{name} torques</source>
      <translation>{name} Drehmomente</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>inspected</source>
      <comment>in a table</comment>
      <translation>Prüfung</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>left</source>
      <comment>in a table</comment>
      <translation>links</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>right</source>
      <comment>in a table</comment>
      <translation>rechts</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>yes</source>
      <translation>ja</translation>
    </message>
    <message>
      <location filename="aligner/report/tables.py" />
      <source>no</source>
      <translation>nein</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>not asked for on this job</source>
      <translation>bei diesem Auftrag nicht verlangt</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>turned {size} to the left</source>
      <translation>{size} nach links gedreht</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>turned {size} to the right</source>
      <translation>{size} nach rechts gedreht</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>turned {size}</source>
      <translation>{size} gedreht</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>top bracket turned {size} to the left</source>
      <translation>obere Gabelbrücke {size} nach links gedreht</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>top bracket turned {size} to the right</source>
      <translation>obere Gabelbrücke {size} nach rechts gedreht</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>top bracket turned {size}</source>
      <translation>obere Gabelbrücke {size} gedreht</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>against {height}: {legs}</source>
      <translation>gegenüber {height}: {legs}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>left {verdict}</source>
      <translation>links {verdict}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>right {verdict}</source>
      <translation>rechts {verdict}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>{size}, allowed ± {tolerance}</source>
      <translation>{size}, zulässig ± {tolerance}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>Legs in line</source>
      <translation>Flucht der Holme</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>Steering</source>
      <translation>Lenkung</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>the sheet lacks dimensions for it</source>
      <translation>dem Datenblatt fehlen Maße dafür</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>not measured on both sides</source>
      <translation>nicht auf beiden Seiten gemessen</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>not measured</source>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>{size} (uncertainty not known)</source>
      <translation>{size} (Unsicherheit nicht bekannt)</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>{size}, no tolerance on the sheet</source>
      <translation>{size}, keine Toleranz im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>left stands higher, {size}</source>
      <translation>links steht höher, {size}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>left stands lower, {size}</source>
      <translation>links steht tiefer, {size}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>chance of the pairs disagreeing so: {chance}</source>
      <translation>Wahrscheinlichkeit eines solchen Widerspruchs der Messpaare: {chance}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>skew {angle}</source>
      <translation>Schränkung {angle}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>twist {angle}</source>
      <translation>Verdrehung {angle}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>convergence {angle}</source>
      <translation>Konvergenz {angle}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>rake {angle}</source>
      <translation>Nachlaufwinkel {angle}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>trail {length}</source>
      <translation>Nachlauf {length}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>wheelbase {length}</source>
      <translation>Radstand {length}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>trail changed by {change} against the sheet</source>
      <translation>Nachlauf gegenüber dem Datenblatt um {change} geändert</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>not known</source>
      <translation>nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>the gauge reads {size}</source>
      <translation>Anzeige des Messmittels {size}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>tubes converge {size}</source>
      <translation>Konvergenz der Rohre {size}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>left longer, {size}</source>
      <translation>links länger, {size}</translation>
    </message>
    <message>
      <location filename="aligner/report/verdicts.py" />
      <source>left shorter, {size}</source>
      <translation>links kürzer, {size}</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>left</source>
      <comment>side</comment>
      <translation>links</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>right</source>
      <comment>side</comment>
      <translation>rechts</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>both a nominal and a range</source>
      <translation>Nennwert und Bereich zugleich</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>give the one the manual prints</source>
      <translation>das angeben, was im Werkstatthandbuch steht</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>no complete torque</source>
      <translation>kein vollständiges Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>give nominal, or both low and high</source>
      <translation>nominal angeben oder low und high zusammen</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>a tolerance on a range</source>
      <translation>Toleranz zu einem Bereich</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>give the tolerance with a nominal</source>
      <translation>die Toleranz zu einem Nennwert angeben</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>the range runs from {low} down to {high}</source>
      <translation>der Bereich geht von {low} abwärts bis {high}</translation>
    </message>
    <message>
      <location filename="aligner/sheet/fasteners.py" />
      <source>put the lower one first</source>
      <translation>den kleineren Wert zuerst schreiben</translation>
    </message>
    <message>
      <location filename="aligner/sheet/patterns.py" />
      <source>“{name}” is no choice</source>
      <translation>„{name}“ steht nicht zur Wahl</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>write it as “23 N·m”, “21 to 25 N·m”, “23 N·m ± 10 %” or “23 N·m (17 lbf·ft)”</source>
      <translation>als „23 N·m“, „21 bis 25 N·m“, „23 N·m ± 10 %“ oder „23 N·m (17 lbf·ft)“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>{low} to {high}</source>
      <translation>{low} bis {high}</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>there is no torque</source>
      <translation>kein Drehmoment vorhanden</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>far too long for a torque</source>
      <translation>viel zu lang für ein Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>“{torque}” reaches down to {low}</source>
      <translation>„{torque}“ reicht hinab bis {low}</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>a torque and its lower end are above zero</source>
      <translation>ein Drehmoment und sein unteres Ende liegen über null</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>“{text}” is more than one second torque</source>
      <translation>„{text}“ ist mehr als ein zweites Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>keep two of them, in two units</source>
      <translation>zwei davon behalten, in zwei Einheiten</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>“{text}” has more than one ±</source>
      <translation>„{text}“ hat mehr als ein ±</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>“{text}” has an uneven tolerance</source>
      <translation>„{text}“ hat eine unsymmetrische Toleranz</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>write it as a range: “22 to 25 N·m”</source>
      <translation>als Bereich schreiben: „22 bis 25 N·m“</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>a ± on the range “{range}”</source>
      <translation>ein ± am Bereich „{range}“</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>nothing stands on one side of the ±</source>
      <translation>auf einer Seite des ± steht nichts</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>“{text}” has no unit</source>
      <translation>„{text}“ hat keine Einheit</translation>
    </message>
    <message>
      <location filename="aligner/sheet/printed_torque.py" />
      <source>the brackets in “{text}” do not pair</source>
      <translation>die Klammern in „{text}“ gehen nicht paarweise auf</translation>
    </message>
    <message>
      <location filename="aligner/sheet/quantities.py" />
      <source>this is not a quantity</source>
      <translation>das ist keine Größe</translation>
    </message>
    <message>
      <location filename="aligner/sheet/quantities.py" />
      <source>write it as text, such as “{example}”</source>
      <translation>als Text schreiben, etwa „{example}“</translation>
    </message>
    <message>
      <location filename="aligner/sheet/quantities.py" />
      <source>write it as text, such as “{one}” or “{other}”</source>
      <translation>als Text schreiben, etwa „{one}“ oder „{other}“</translation>
    </message>
    <message>
      <location filename="aligner/sheet/quantities.py" />
      <source>{number} is a bare number</source>
      <translation>{number} ist eine Zahl ohne Einheit</translation>
    </message>
    <message>
      <location filename="aligner/sheet/quantities.py" />
      <source>write it as text with its unit, such as “{example}”</source>
      <translation>als Text mit Einheit schreiben, etwa „{example}“</translation>
    </message>
    <message>
      <location filename="aligner/sheet/sheet.py" />
      <source>“{name}” stands there twice</source>
      <translation>„{name}“ steht zweimal da</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>from the sheet of {bike}</source>
      <translation>aus dem Datenblatt von {bike}</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>from another sheet</source>
      <translation>aus einem anderen Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>oil, springs and travel</source>
      <comment>dropped from a sheet</comment>
      <translation>Öl, Federn und Federweg</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>wear limits</source>
      <comment>dropped from a sheet</comment>
      <translation>Verschleißgrenzen</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>Dropped: {things}.</source>
      <translation>Entfallen: {things}.</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>Nothing was dropped.</source>
      <translation>Nichts entfallen.</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>New: {things}.</source>
      <translation>Neu: {things}.</translation>
    </message>
    <message>
      <location filename="aligner/sheet/variant.py" />
      <source>the rule of {first} and {then}</source>
      <translation>die Regel „{first}“ – „{then}“</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>{where}: {before} is now {after}</source>
      <translation>{where}: {before}, jetzt {after}</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>“{text}”</source>
      <translation>„{text}“</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>{where}: now {value}</source>
      <translation>{where}: jetzt {value}</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>{where}: {value} is gone</source>
      <translation>{where}: {value}, jetzt leer</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>filled in</source>
      <translation>ausgefüllt</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>no. {number}</source>
      <translation>Nr. {number}</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} pairs</source>
      <extracomment>{count} pair</extracomment>
      <translation>
        <numerusform>{count} Messpaar</numerusform>
        <numerusform>{count} Messpaare</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} attempts</source>
      <extracomment>{count} attempt</extracomment>
      <translation>
        <numerusform>{count} Versuch</numerusform>
        <numerusform>{count} Versuche</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} fasteners</source>
      <extracomment>{count} fastener</extracomment>
      <translation>
        <numerusform>{count} Verschraubung</numerusform>
        <numerusform>{count} Verschraubungen</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} rules</source>
      <extracomment>{count} rule</extracomment>
      <translation>
        <numerusform>{count} Regel</numerusform>
        <numerusform>{count} Regeln</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} checks</source>
      <extracomment>{count} check</extracomment>
      <translation>
        <numerusform>{count} Prüfung</numerusform>
        <numerusform>{count} Prüfungen</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} passes</source>
      <extracomment>{count} pass</extracomment>
      <translation>
        <numerusform>{count} Durchgang</numerusform>
        <numerusform>{count} Durchgänge</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} readings</source>
      <extracomment>{count} reading</extracomment>
      <translation>
        <numerusform>{count} Messwert</numerusform>
        <numerusform>{count} Messwerte</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/changes.py" />
      <source>{count} entries</source>
      <extracomment>{count} entry</extracomment>
      <translation>
        <numerusform>{count} Eintrag</numerusform>
        <numerusform>{count} Einträge</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>{where}: {entries} more</source>
      <translation>{where}: {entries} mehr</translation>
    </message>
    <message>
      <location filename="aligner/storage/changes.py" />
      <source>{where}: {entries} fewer</source>
      <translation>{where}: {entries} weniger</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>what stands there is not a job that can be read, so it was left</source>
      <translation>was dort steht, ist kein lesbarer Auftrag, daher unverändert gelassen</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>what stands there is not a sheet that can be read, so it was left</source>
      <translation>was dort steht, ist kein lesbares Datenblatt, daher unverändert gelassen</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>{name} (kept {at})</source>
      <translation>{name} (aufbewahrt {at})</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>the file is not there any more, so it was not saved</source>
      <translation>die Datei ist nicht mehr da, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>the file was changed by another program, so it was not saved</source>
      <translation>die Datei wurde von einem anderen Programm geändert, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>save it there anew, or under another name</source>
      <translation>dort neu speichern oder unter anderem Namen</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>keep both, or choose one</source>
      <translation>beide behalten oder eine wählen</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>it could not be opened again ({field}: {understood}), so it was not saved</source>
      <translation>die Datei ließe sich nicht wieder öffnen ({field}: {understood}), daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>correct that field and save again</source>
      <translation>dieses Feld berichtigen und noch einmal speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/document_file.py" />
      <source>save under another name</source>
      <translation>unter anderem Namen speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>a job is far smaller than 20 MB</source>
      <translation>ein Auftrag ist weit kleiner als 20 MB</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>a sheet is far smaller than 20 MB</source>
      <translation>ein Datenblatt ist weit kleiner als 20 MB</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this job was made by a newer version of the program ({version})</source>
      <translation>dieser Auftrag stammt von einer neueren Version des Programms ({version})</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this sheet was made by a newer version of the program ({version})</source>
      <translation>dieses Datenblatt stammt von einer neueren Version des Programms ({version})</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this is not a job document</source>
      <translation>das ist kein Auftragsdokument</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this is not a sheet document</source>
      <translation>das ist kein Datenblatt-Dokument</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>damaged, or not a job</source>
      <translation>beschädigt oder kein Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>damaged, or not a sheet</source>
      <translation>beschädigt oder kein Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this is a sheet, not a job</source>
      <translation>das ist ein Datenblatt, kein Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this is a job, not a sheet</source>
      <translation>das ist ein Auftrag, kein Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>a job says "document": "job"</source>
      <translation>in einem Auftrag steht "document": "job"</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>a sheet says "document": "sheet"</source>
      <translation>in einem Datenblatt steht "document": "sheet"</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>write "minor": {minor}</source>
      <translation>"minor": {minor} schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this one reads version {version}: update the program to work on it</source>
      <translation>diese hier liest Version {version}: zum Bearbeiten das Programm aktualisieren</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>the file is too large</source>
      <translation>die Datei ist zu groß</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>it should begin with "{sign}"</source>
      <translation>am Anfang soll "{sign}" stehen</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>write "version": {version}</source>
      <translation>"version": {version} schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>this is not a version</source>
      <translation>das ist keine Version</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>the file does not say that it is one of this program's documents</source>
      <translation>die Datei weist sich nicht als Dokument dieses Programms aus</translation>
    </message>
    <message>
      <location filename="aligner/storage/documents.py" />
      <source>it is missing</source>
      <translation>fehlt</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>save it to another drive</source>
      <translation>auf einem anderen Laufwerk speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>free some space and save again, or save it to another drive</source>
      <translation>Platz schaffen und noch einmal speichern oder auf einem anderen Laufwerk speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the drive reported a fault, so it was not saved</source>
      <translation>das Laufwerk meldete einen Fehler, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>save it to another drive, then have this one checked</source>
      <translation>auf einem anderen Laufwerk speichern, dann dieses prüfen lassen</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>writing is not allowed there, so it was not saved</source>
      <translation>dort ist Schreiben nicht erlaubt, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>allow writing to the folder, or save it in another one</source>
      <translation>Schreiben in den Ordner erlauben oder in einem anderen speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the network drive does not answer, so it was not saved</source>
      <translation>das Netzlaufwerk antwortet nicht, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>try again when it is back, or save it on this computer</source>
      <translation>noch einmal versuchen, wenn es wieder da ist, oder auf diesem Rechner speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>too many files are open, so it was not saved</source>
      <translation>zu viele Dateien sind geöffnet, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>close some and save again</source>
      <translation>einige schließen und noch einmal speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the disk is full, so it was not saved</source>
      <translation>das Laufwerk ist voll, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>your share of the disk is used up, so it was not saved</source>
      <translation>der zugeteilte Speicherplatz ist aufgebraucht, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the drive is write-protected, so it was not saved</source>
      <translation>das Laufwerk ist schreibgeschützt, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the file name is too long, so it was not saved</source>
      <translation>der Dateiname ist zu lang, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>give it a shorter name</source>
      <translation>kürzeren Namen geben</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the drive does not take this file name</source>
      <translation>das Laufwerk nimmt diesen Dateinamen nicht an</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>give it a plainer name</source>
      <translation>einfacheren Namen geben</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>a folder has that name, so it was not saved</source>
      <translation>ein Ordner heißt so, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>give it another name</source>
      <translation>anderen Namen geben</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>its links lead round in a circle, so it was not saved</source>
      <translation>die Verknüpfungen führen im Kreis, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the drive does not take a file this large, so it was not saved</source>
      <translation>das Laufwerk nimmt eine so große Datei nicht an, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>another program has the file open, so it was not saved</source>
      <translation>ein anderes Programm hat die Datei geöffnet, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>close it there and save again</source>
      <translation>dort schließen und noch einmal speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>it was not saved ({why})</source>
      <translation>nicht gespeichert ({why})</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>try again, or save it elsewhere</source>
      <translation>noch einmal versuchen oder anderswo speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>it was written, but the drive did not confirm that it is safe there</source>
      <translation>geschrieben, aber das Laufwerk bestätigte nicht, dass die Datei dort sicher ist</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>save again, and keep a copy on another drive</source>
      <translation>noch einmal speichern und eine Kopie auf einem anderen Laufwerk aufbewahren</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>the folder “{folder}” is not there, so it was not saved</source>
      <translation>der Ordner „{folder}“ ist nicht da, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/failure.py" />
      <source>put it back (is its drive plugged in?), or save it in another folder</source>
      <translation>wieder bereitstellen (ist das Laufwerk angeschlossen?) oder in einem anderen Ordner speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>document</source>
      <comment>field</comment>
      <translation>Dokument</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>version</source>
      <comment>field</comment>
      <translation>Version</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>title</source>
      <comment>field</comment>
      <translation>Titel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>sheet</source>
      <comment>field</comment>
      <translation>Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>name</source>
      <comment>field</comment>
      <translation>Name</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>fork</source>
      <comment>field</comment>
      <translation>Gabel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>kind</source>
      <comment>field</comment>
      <translation>Art</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>handlebars</source>
      <comment>field</comment>
      <translation>Lenker</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>leg spacing</source>
      <comment>field</comment>
      <translation>Holmabstand</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bracket spacing</source>
      <comment>field</comment>
      <translation>Abstand der Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>lower bracket to axle</source>
      <comment>field</comment>
      <translation>untere Gabelbrücke bis Vorderachse</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bracket offset</source>
      <comment>field</comment>
      <translation>Versatz der Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>tube diameter</source>
      <comment>field</comment>
      <translation>Rohrdurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>steering</source>
      <comment>field</comment>
      <translation>Lenkgeometrie</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rake</source>
      <comment>field</comment>
      <translation>Nachlaufwinkel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>offset</source>
      <comment>field</comment>
      <translation>Achsversatz</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>front radius</source>
      <comment>field</comment>
      <translation>Radius des Vorderrads</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rear radius</source>
      <comment>field</comment>
      <translation>Radius des Hinterrads</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>wheelbase</source>
      <comment>field</comment>
      <translation>Radstand</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>protrusion</source>
      <comment>field</comment>
      <translation>Überstand</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>target</source>
      <comment>field</comment>
      <translation>Sollwert</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>tolerance</source>
      <comment>field</comment>
      <translation>Toleranz</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>squaring</source>
      <comment>field</comment>
      <translation>Winkligkeit</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>in line</source>
      <comment>field</comment>
      <translation>Fluchten</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>legs</source>
      <comment>field</comment>
      <translation>Holme</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bore</source>
      <comment>field</comment>
      <translation>Innendurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rod</source>
      <comment>field</comment>
      <translation>Stangendurchmesser</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>sliding tube</source>
      <comment>field</comment>
      <translation>Rohr-Ø am Dichtring</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>travel</source>
      <comment>field</comment>
      <translation>Federweg</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>oil</source>
      <comment>field</comment>
      <translation>Öl</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>air gap</source>
      <comment>field</comment>
      <translation>Luftkammer</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>air gap tolerance</source>
      <comment>field</comment>
      <translation>Toleranz der Luftkammer</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>volume</source>
      <comment>field</comment>
      <translation>Ölmenge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>volume tolerance</source>
      <comment>field</comment>
      <translation>Toleranz der Ölmenge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>air pressure</source>
      <comment>field</comment>
      <translation>Luftdruck</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>spring</source>
      <comment>field</comment>
      <translation>Feder</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>closer coils</source>
      <comment>field</comment>
      <translation>engere Windungen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>order</source>
      <comment>field</comment>
      <translation>Einbaufolge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>spacer</source>
      <comment>field</comment>
      <translation>Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>preload</source>
      <comment>field</comment>
      <translation>Vorspannung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rate</source>
      <comment>field</comment>
      <translation>Federrate</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>second rate</source>
      <comment>field</comment>
      <translation>zweite Federrate</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rate changes at</source>
      <comment>field</comment>
      <translation>Federrate ändert sich bei</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>displaced</source>
      <comment>field</comment>
      <translation>verdrängtes Volumen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>has adjuster</source>
      <comment>field</comment>
      <translation>Einsteller vorhanden</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>sag</source>
      <comment>field</comment>
      <translation>Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>static low</source>
      <comment>field</comment>
      <translation>statisch, Untergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>static high</source>
      <comment>field</comment>
      <translation>statisch, Obergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rider low</source>
      <comment>field</comment>
      <translation>mit Fahrer, Untergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rider high</source>
      <comment>field</comment>
      <translation>mit Fahrer, Obergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bearing</source>
      <comment>field</comment>
      <translation>Lenkkopflager</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>pull low</source>
      <comment>field</comment>
      <translation>Zugkraft, Untergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>pull high</source>
      <comment>field</comment>
      <translation>Zugkraft, Obergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>radius</source>
      <comment>field</comment>
      <translation>Radius der Zugkraft</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>torque low</source>
      <comment>field</comment>
      <translation>Drehmoment, Untergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>torque high</source>
      <comment>field</comment>
      <translation>Drehmoment, Obergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>fasteners</source>
      <comment>field</comment>
      <translation>Verschraubungen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>side</source>
      <comment>field</comment>
      <translation>Seite</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bolts</source>
      <comment>field</comment>
      <translation>Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>thread</source>
      <comment>field</comment>
      <translation>Gewinde</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>strength class</source>
      <comment>field</comment>
      <translation>Festigkeitsklasse</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>torque</source>
      <comment>field</comment>
      <translation>Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>nominal</source>
      <comment>field</comment>
      <translation>Nennwert</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>low</source>
      <comment>field</comment>
      <translation>Untergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>high</source>
      <comment>field</comment>
      <translation>Obergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>also printed</source>
      <comment>field</comment>
      <translation>auch angegeben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>source</source>
      <comment>field</comment>
      <translation>Quelle</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>seating</source>
      <comment>field</comment>
      <translation>Setzmoment</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>back off</source>
      <comment>field</comment>
      <translation>Zurückdrehen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>thread condition</source>
      <comment>field</comment>
      <translation>Gewindezustand</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>passes</source>
      <comment>field</comment>
      <translation>Durchgänge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>pattern</source>
      <comment>field</comment>
      <translation>Reihenfolge der Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>again after</source>
      <comment>field</comment>
      <translation>Nachkontrolle nach</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>note</source>
      <comment>field</comment>
      <translation>Notiz</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rules</source>
      <comment>field</comment>
      <translation>Regeln</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>first</source>
      <comment>field</comment>
      <translation>zuerst</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>then</source>
      <comment>field</comment>
      <translation>danach</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>because</source>
      <comment>field</comment>
      <translation>Grund</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>inspection</source>
      <comment>field</comment>
      <translation>Prüfung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>value</source>
      <comment>field</comment>
      <translation>Wert</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>of</source>
      <comment>field</comment>
      <translation>gilt für</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>sources</source>
      <comment>field</comment>
      <translation>Quellen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>gauges</source>
      <comment>field</comment>
      <translation>Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>resolution</source>
      <comment>field</comment>
      <translation>Auflösung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>limit of error</source>
      <comment>field</comment>
      <translation>Fehlergrenze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>repeatability</source>
      <comment>field</comment>
      <translation>Wiederholbarkeit</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>wrenches</source>
      <comment>field</comment>
      <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>graduation</source>
      <comment>field</comment>
      <translation>Skalenteilung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>permissible deviation</source>
      <comment>field</comment>
      <translation>zulässige Abweichung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>lowest share</source>
      <comment>field</comment>
      <translation>kleinster Anteil</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>drive</source>
      <comment>field</comment>
      <translation>Vierkant</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>grip length</source>
      <comment>field</comment>
      <translation>Länge L, Vierkant bis Griff</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>adapters</source>
      <comment>field</comment>
      <translation>Aufsätze</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>effective length</source>
      <comment>field</comment>
      <translation>Länge E, Vierkant bis Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>angle</source>
      <comment>field</comment>
      <translation>Winkel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>concentric</source>
      <comment>field</comment>
      <translation>achsgleich</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>wrench choices</source>
      <comment>field</comment>
      <translation>gewählte Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>wrench</source>
      <comment>field</comment>
      <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>adapter</source>
      <comment>field</comment>
      <translation>Aufsatz</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>as found</source>
      <comment>field</comment>
      <translation>vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>gauge</source>
      <comment>field</comment>
      <translation>Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>left</source>
      <comment>field</comment>
      <translation>links</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>right</source>
      <comment>field</comment>
      <translation>rechts</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>policy</source>
      <comment>field</comment>
      <translation>Vorgehen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bracket</source>
      <comment>field</comment>
      <translation>untere Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>frame asymmetry</source>
      <comment>field</comment>
      <translation>eigene Differenz des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>frame asymmetry uncertainty</source>
      <comment>field</comment>
      <translation>Unsicherheit der eigenen Differenz des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bracket reach</source>
      <comment>field</comment>
      <translation>Vormaß der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>bracket half width</source>
      <comment>field</comment>
      <translation>halbe Breite der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>frame setback</source>
      <comment>field</comment>
      <translation>Rückmaß des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>frame half width</source>
      <comment>field</comment>
      <translation>halbe Breite des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>oil look</source>
      <comment>field</comment>
      <translation>Aussehen des Öls</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>extended</source>
      <comment>field</comment>
      <translation>ausgefedert</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>static</source>
      <comment>field</comment>
      <translation>statisch</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rider</source>
      <comment>field</comment>
      <translation>mit Fahrer</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>strip</source>
      <comment>field</comment>
      <translation>Zerlegen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>log</source>
      <comment>field</comment>
      <translation>Protokoll</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>step</source>
      <comment>field</comment>
      <translation>Schritt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>action</source>
      <comment>field</comment>
      <translation>Vorgang</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>at</source>
      <comment>field</comment>
      <translation>Zeitpunkt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>reason</source>
      <comment>field</comment>
      <translation>Begründung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>removed</source>
      <comment>field</comment>
      <translation>abgebaut</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>off</source>
      <comment>field</comment>
      <translation>abgebaut am</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>reminder</source>
      <comment>field</comment>
      <translation>Erinnerung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>back</source>
      <comment>field</comment>
      <translation>wieder angebaut am</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>inspect</source>
      <comment>field</comment>
      <translation>Prüfen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>found</source>
      <comment>field</comment>
      <translation>Befunde</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>point</source>
      <comment>field</comment>
      <translation>Prüfpunkt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>readings</source>
      <comment>field</comment>
      <translation>Messwerte</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>finding</source>
      <comment>field</comment>
      <translation>Befund</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>photographs</source>
      <comment>field</comment>
      <translation>Fotos</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>is fitted</source>
      <comment>field</comment>
      <translation>eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>carried</source>
      <comment>field</comment>
      <translation>übernommen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>on</source>
      <comment>field</comment>
      <translation>am</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>build</source>
      <comment>field</comment>
      <translation>Zusammenbau</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>gap</source>
      <comment>field</comment>
      <translation>Spalt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>earlier</source>
      <comment>field</comment>
      <translation>frühere Messung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>closed</source>
      <comment>field</comment>
      <translation>abgeschlossen am</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>blend</source>
      <comment>field</comment>
      <translation>Mischung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>first name</source>
      <comment>field</comment>
      <translation>erstes Öl, Name</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>second name</source>
      <comment>field</comment>
      <translation>zweites Öl, Name</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>second</source>
      <comment>field</comment>
      <translation>zweites</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>wanted</source>
      <comment>field</comment>
      <translation>gewünscht</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>amount</source>
      <comment>field</comment>
      <translation>Menge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>free length</source>
      <comment>field</comment>
      <translation>freie Länge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>room</source>
      <comment>field</comment>
      <translation>Raum</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>washers</source>
      <comment>field</comment>
      <translation>Scheiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>wanted preload</source>
      <comment>field</comment>
      <translation>verlangte Vorspannung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>old spacer</source>
      <comment>field</comment>
      <translation>alte Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>solid length</source>
      <comment>field</comment>
      <translation>Blocklänge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>fitted spacer</source>
      <comment>field</comment>
      <translation>eingesetzte Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>static down</source>
      <comment>field</comment>
      <translation>statisch, nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>static up</source>
      <comment>field</comment>
      <translation>statisch, nach dem Anheben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rider down</source>
      <comment>field</comment>
      <translation>mit Fahrer, nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rider up</source>
      <comment>field</comment>
      <translation>mit Fahrer, nach dem Anheben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>pull</source>
      <comment>field</comment>
      <translation>Zugkraft</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>fall away</source>
      <comment>field</comment>
      <translation>Fallen der Lenkung zur Seite</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>adjustments</source>
      <comment>field</comment>
      <translation>Nachstellungen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>what</source>
      <comment>field</comment>
      <translation>Änderung</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>why</source>
      <comment>field</comment>
      <translation>Anlass</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>align</source>
      <comment>field</comment>
      <translation>Ausrichten</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>begun</source>
      <comment>field</comment>
      <translation>begonnen am</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>method</source>
      <comment>field</comment>
      <translation>Verfahren</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>corner</source>
      <comment>field</comment>
      <translation>Ecke</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>face</source>
      <comment>field</comment>
      <translation>Anlageseite</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>height</source>
      <comment>field</comment>
      <translation>Höhe</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>end difference</source>
      <comment>field</comment>
      <translation>Differenz der Stabenden</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>half length</source>
      <comment>field</comment>
      <translation>halbe Länge</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>upper</source>
      <comment>field</comment>
      <translation>oben</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>lower</source>
      <comment>field</comment>
      <translation>unten</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>in line others</source>
      <comment>field</comment>
      <translation>Fluchten, andere Verfahren</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>attempts</source>
      <comment>field</comment>
      <translation>Versuche</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>prove</source>
      <comment>field</comment>
      <translation>Probefahrt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>checks</source>
      <comment>field</comment>
      <translation>Prüfungen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>done</source>
      <comment>field</comment>
      <translation>erledigt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>road test</source>
      <comment>field</comment>
      <translation>Probefahrt</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>rechecks</source>
      <comment>field</comment>
      <translation>Nachkontrollen</translation>
    </message>
    <message>
      <location filename="aligner/storage/field_words.py" />
      <source>sign off</source>
      <comment>field</comment>
      <translation>Freigabe</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>that is not an ordinary file</source>
      <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>the file is write-protected, so it was not saved</source>
      <translation>die Datei ist schreibgeschützt, daher nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>allow writing to it, or save under another name</source>
      <translation>Schreiben erlauben oder unter anderem Namen speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>there is no such file</source>
      <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>check its name</source>
      <translation>Namen prüfen</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>this is a folder</source>
      <translation>das ist ein Ordner</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>name a job document in it</source>
      <translation>ein Auftragsdokument darin angeben</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>reading it is not allowed</source>
      <translation>Lesen ist nicht erlaubt</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>allow reading it, or ask its owner</source>
      <translation>Lesen erlauben oder den Besitzer fragen</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>it cannot be read ({why})</source>
      <translation>nicht lesbar ({why})</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>take another copy of it</source>
      <translation>eine andere Kopie nehmen</translation>
    </message>
    <message>
      <location filename="aligner/storage/files.py" />
      <source>this is not a file name</source>
      <translation>das ist kein Dateiname</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>in hand</source>
      <translation>in Arbeit</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>signed, checks due</source>
      <translation>freigegeben, Nachkontrolle fällig</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>done</source>
      <translation>fertig</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>cannot be read</source>
      <translation>nicht lesbar</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/history.py" />
      <source>check {count} fasteners again after {distances}</source>
      <extracomment>check {count} fastener again after {distances}</extracomment>
      <translation>
        <numerusform>{count} Verschraubung nach {distances} nachkontrollieren</numerusform>
        <numerusform>{count} Verschraubungen nach {distances} nachkontrollieren</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>not a job</source>
      <translation>kein Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>larger than any job</source>
      <translation>größer als jeder Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>not a job as this program writes it</source>
      <translation>kein Auftrag, wie ihn dieses Programm schreibt</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>sign-off</source>
      <translation>Freigabe</translation>
    </message>
    <message>
      <location filename="aligner/storage/history.py" />
      <source>cannot be opened</source>
      <translation>lässt sich nicht öffnen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>this is not JSON text</source>
      <translation>das ist kein JSON-Text</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>put it right there</source>
      <translation>dort berichtigen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>line {line}, column {column}</source>
      <translation>Zeile {line}, Spalte {column}</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a value is missing or misspelt</source>
      <translation>ein Wert fehlt oder ist falsch geschrieben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>give text in double quotes</source>
      <translation>Text in doppelte Anführungszeichen setzen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a field's name in double quotes belongs here</source>
      <translation>hierher gehört der Name eines Feldes in doppelten Anführungszeichen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>quote the name, or take out the comma before it</source>
      <translation>den Namen in Anführungszeichen setzen oder das Komma davor entfernen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a colon is missing</source>
      <translation>ein Doppelpunkt fehlt</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>write "name": "value"</source>
      <translation>"name": "value" schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a comma or a closing bracket is missing</source>
      <translation>ein Komma oder eine schließende Klammer fehlt</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>put it in</source>
      <translation>einsetzen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>something stands after the end of the document</source>
      <translation>nach dem Ende des Dokuments steht noch etwas</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>take it out</source>
      <translation>entfernen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a text has no closing quotation mark</source>
      <translation>einem Text fehlt das schließende Anführungszeichen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a text holds a line break or another control character</source>
      <translation>ein Text enthält einen Zeilenumbruch oder ein anderes Steuerzeichen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>write \n for a line break</source>
      <translation>für einen Zeilenumbruch \n schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a backslash in a text stands alone</source>
      <translation>ein umgekehrter Schrägstrich steht im Text allein</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>write it twice</source>
      <translation>zweimal schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>\u is not followed by four digits</source>
      <translation>auf \u folgen keine vier Ziffern</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>write four, as in \u00b7</source>
      <translation>vier schreiben, wie in \u00b7</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a comma too many</source>
      <translation>ein Komma zu viel</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>the field “{field}” stands there twice</source>
      <translation>das Feld „{field}“ steht zweimal da</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>take one of them out</source>
      <translation>eines davon entfernen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>{word} is not a number</source>
      <translation>{word} ist keine Zahl</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>write the value as text with its unit</source>
      <translation>den Wert als Text mit Einheit schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>a text holds half a character (a lone \ud… mark)</source>
      <translation>ein Text enthält ein halbes Zeichen (ein einzelnes \ud…)</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>type that text again</source>
      <translation>diesen Text neu eingeben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>brackets are nested far too deeply for a document of this kind</source>
      <translation>die Klammern sind für ein solches Dokument viel zu tief verschachtelt</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>the file is empty</source>
      <translation>die Datei ist leer</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>{number} is too large a number</source>
      <translation>die Zahl {number} ist zu groß</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>write it shorter</source>
      <translation>kürzer schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>{number} is too large or too long a number</source>
      <translation>die Zahl {number} ist zu groß oder zu lang</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>the document ends too early, as if it had been cut short</source>
      <translation>das Dokument endet zu früh, wie abgeschnitten</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>take the copy before it (“.previous”) or another one</source>
      <translation>die Kopie davor („.previous“) oder eine andere nehmen</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>the text is not in UTF-8 but in UTF-16 or UTF-32</source>
      <translation>der Text ist nicht in UTF-8, sondern in UTF-16 oder UTF-32</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>line {line} holds bytes that are not UTF-8 text</source>
      <translation>Zeile {line} enthält Bytes, die kein UTF-8-Text sind</translation>
    </message>
    <message>
      <location filename="aligner/storage/json_text.py" />
      <source>save it as UTF-8</source>
      <translation>als UTF-8 speichern</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>take it over</source>
      <translation>übernehmen</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>open it to read, or take it over if nobody works there</source>
      <translation>zum Lesen öffnen oder übernehmen, wenn dort niemand arbeitet</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>another program has taken it over</source>
      <translation>ein anderes Programm hat die Datei übernommen</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>another program</source>
      <comment>for whom a document is open</comment>
      <translation>einem anderen Programm</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>it was left open by {who} since {since}, which does not run any more</source>
      <translation>von {who} offen gelassen (seit {since}), das Programm dort läuft nicht mehr</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>it was left open by {who}, which does not run any more</source>
      <translation>von {who} offen gelassen, das Programm dort läuft nicht mehr</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>it is open for {who} since {since}</source>
      <translation>seit {since} von {who} geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/storage/lock.py" />
      <source>it is open for {who}</source>
      <translation>von {who} geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>this name leads out of the job's folder, so it is not opened</source>
      <translation>dieser Name führt aus dem Ordner des Auftrags hinaus, daher nicht geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>add the photograph anew</source>
      <translation>das Foto neu hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>the file is larger than {size}</source>
      <translation>die Datei ist größer als {size}</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>save it smaller, and choose that</source>
      <translation>kleiner speichern und diese wählen</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>the photograph is damaged or cut short</source>
      <translation>das Foto ist beschädigt oder abgeschnitten</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>the photograph is {width} by {height} dots, too large to show</source>
      <translation>das Foto hat {width} mal {height} Bildpunkte, zu groß zum Anzeigen</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>this is not an ordinary file</source>
      <translation>dies ist keine gewöhnliche Datei</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>choose a photograph</source>
      <translation>ein Foto wählen</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>it cannot be read</source>
      <translation>nicht lesbar</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>choose another photograph</source>
      <translation>ein anderes Foto wählen</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>this is neither a JPEG nor a PNG photograph</source>
      <translation>das ist weder ein JPEG- noch ein PNG-Foto</translation>
    </message>
    <message>
      <location filename="aligner/storage/photographs.py" />
      <source>choose one of these kinds</source>
      <translation>eine dieser Arten wählen</translation>
    </message>
    <message>
      <location filename="aligner/storage/places.py" />
      <source>Job</source>
      <comment>name of a file</comment>
      <translation>Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/storage/places.py" />
      <source>Bike</source>
      <comment>name of a folder</comment>
      <translation>Motorrad</translation>
    </message>
    <message>
      <location filename="aligner/storage/process.py" />
      <source>{user} on {host} (process {process})</source>
      <translation>{user} auf {host} (Prozess {process})</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>write it as “2026-11-25T14:02:00+01:00”</source>
      <translation>als „2026-11-25T14:02:00+01:00“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>write it as “2026-11-25”</source>
      <translation>als „2026-11-25“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>it can be {names}</source>
      <translation>möglich: {names}</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/storage/refusal.py" />
      <source>(and {count} more things are wrong)</source>
      <extracomment>(and {count} more thing is wrong)</extracomment>
      <translation>
        <numerusform>(und {count} weiterer Fehler)</numerusform>
        <numerusform>(und {count} weitere Fehler)</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>a group of fields</source>
      <translation>eine Gruppe von Feldern</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>a list</source>
      <translation>eine Liste</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>this field is not known</source>
      <translation>dieses Feld ist nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>check its spelling, or take it out</source>
      <translation>Schreibweise prüfen oder entfernen</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>this field is missing</source>
      <translation>dieses Feld fehlt</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>it must be given</source>
      <translation>muss angegeben werden</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not known here</source>
      <translation>{given} ist hier nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>the {field} “{given}” is not known here</source>
      <translation>{field}: „{given}“ ist hier nicht bekannt</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>it does not say its {field}</source>
      <translation>das Feld „{field}“ ist nicht angegeben</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>give the field “{field}”</source>
      <translation>Feld „{field}“ angeben</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not text</source>
      <translation>{given} ist kein Text</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>put it in quotation marks</source>
      <translation>in Anführungszeichen setzen</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>this text is empty</source>
      <translation>dieser Text ist leer</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>this text holds half a character</source>
      <translation>dieser Text enthält ein halbes Zeichen</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not a list</source>
      <translation>{given} ist keine Liste</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>put it in square brackets</source>
      <translation>in eckige Klammern setzen</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not a group of fields</source>
      <translation>{given} ist keine Gruppe von Feldern</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>put it in curly brackets</source>
      <translation>in geschweifte Klammern setzen</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is neither true nor false</source>
      <translation>{given} ist weder true noch false</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>write true or false</source>
      <translation>true oder false schreiben</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not a whole number</source>
      <translation>{given} ist keine ganze Zahl</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>write it without quotation marks, such as 2</source>
      <translation>ohne Anführungszeichen schreiben, etwa 2</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is too small</source>
      <translation>{given} ist zu klein</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>it is {limit} or more</source>
      <translation>mindestens {limit}</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is too large</source>
      <translation>{given} ist zu groß</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>it is {limit} or less</source>
      <translation>höchstens {limit}</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not a date and time</source>
      <translation>{given} ist kein Datum mit Uhrzeit</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} is not a date</source>
      <translation>{given} ist kein Datum</translation>
    </message>
    <message>
      <location filename="aligner/storage/refusal.py" />
      <source>{given} cannot be used here ({why})</source>
      <translation>{given} ist hier nicht verwendbar ({why})</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a length</source>
      <translation>eine Länge</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such length is found on a motorcycle</source>
      <translation>so eine Länge kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a torque</source>
      <translation>ein Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such torque is found on a motorcycle</source>
      <translation>so ein Drehmoment kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>an angle</source>
      <translation>ein Winkel</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such angle is found on a motorcycle</source>
      <translation>so ein Winkel kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a percentage</source>
      <translation>ein Prozentwert</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such percentage is found on a motorcycle</source>
      <translation>so ein Prozentwert kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a volume</source>
      <translation>ein Volumen</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such volume is found on a motorcycle</source>
      <translation>so ein Volumen kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a distance on the road</source>
      <translation>eine Fahrstrecke</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such distance on the road is found on a motorcycle</source>
      <translation>so eine Fahrstrecke kommt beim Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a force</source>
      <translation>eine Kraft</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such force is found on a motorcycle</source>
      <translation>so eine Kraft kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a spring rate</source>
      <translation>eine Federrate</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such spring rate is found on a motorcycle</source>
      <translation>so eine Federrate kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a pressure</source>
      <translation>ein Druck</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such pressure is found on a motorcycle</source>
      <translation>so ein Druck kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a viscosity</source>
      <translation>eine Viskosität</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>no such viscosity is found on a motorcycle</source>
      <translation>so eine Viskosität kommt am Motorrad nicht vor</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>write lbf·ft or lbf·in</source>
      <translation>lbf·ft oder lbf·in schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>write kgf·m or kgf·cm</source>
      <translation>kgf·m oder kgf·cm schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>write N·m or N·cm</source>
      <translation>N·m oder N·cm schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>minutes of arc are not read: write degrees with a decimal</source>
      <translation>Bogenminuten werden nicht gelesen: Grad mit Dezimalstellen schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>write US fl oz or imp fl oz</source>
      <translation>US fl oz oder imp fl oz schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>write km or mi</source>
      <translation>km oder mi schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a scale that shows kg reads kgf: write kgf</source>
      <translation>eine Waage, die kg anzeigt, misst kgf: kgf schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>a scale that shows lb reads lbf: write lbf</source>
      <translation>eine Waage, die lb anzeigt, misst lbf: lbf schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/dimension.py" />
      <source>an oil's W grade is a name, not a viscosity: take the cSt from the oil's data sheet</source>
      <translation>die W-Klasse eines Öls ist ein Name, keine Viskosität: die cSt dem Datenblatt des Öls entnehmen</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>write it as “{example}”</source>
      <translation>als „{example}“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{unit}” is not a unit known here</source>
      <translation>„{unit}“ ist hier keine bekannte Einheit</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>far too long for a quantity</source>
      <translation>viel zu lang für eine Größe</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{text}” does not begin with a number</source>
      <translation>„{text}“ beginnt nicht mit einer Zahl</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>{quantity} is negative</source>
      <translation>{quantity} ist negativ</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>{kind} here is zero or more</source>
      <translation>{kind} ist hier null oder größer</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>{quantity} is more than {largest}</source>
      <translation>{quantity} ist mehr als {largest}</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>far too many digits for a quantity</source>
      <translation>viel zu viele Stellen für eine Größe</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{text}” can be read as {decimal} or as {whole}</source>
      <translation>„{text}“ kann als {decimal} oder als {whole} gelesen werden</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>write one of the two</source>
      <translation>eines von beiden schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{unit}” is not clear</source>
      <translation>„{unit}“ ist nicht eindeutig</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{text}” divides by nought</source>
      <translation>„{text}“ teilt durch null</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>write 11/64 in</source>
      <translation>11/64 in schreiben</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{number}” is a number without a unit</source>
      <translation>„{number}“ ist eine Zahl ohne Einheit</translation>
    </message>
    <message>
      <location filename="aligner/units/typed.py" />
      <source>“{text}” is {other} where {kind} belongs</source>
      <translation>„{text}“ ist {other}, hier gehört {kind} hin</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_card.py" />
      <source>Disc: within. Square: out. Ring: unsettled. Cross: no limit. Dash: not measured. Whisker: 95 %. Band: allowed by the sheet as it is now.</source>
      <translation>Scheibe: in der Toleranz. Quadrat: außerhalb. Ring: nicht entschieden. Kreuz: kein Grenzwert. Strich: nicht gemessen. Fehlerbalken: 95 %. Band: zulässig nach dem jetzigen Datenblatt.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_card.py" />
      <source>{title}, every attempt</source>
      <translation>{title}, alle Versuche</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_card.py" />
      <source>Attempts, the oldest first</source>
      <translation>Versuche, der älteste zuerst</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_card.py" />
      <source>Attempts</source>
      <translation>Versuche</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>Difference of heights</source>
      <translation>Differenz der Überstände</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>± {size} allowed</source>
      <translation>± {size} zulässig</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>twisted left</source>
      <translation>links verdreht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>twisted right</source>
      <translation>rechts verdreht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>now</source>
      <translation>jetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>{number}, now</source>
      <translation>{number}, jetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>{name}: not measured</source>
      <translation>{name}: nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>no limit to hold it to</source>
      <translation>kein Grenzwert dafür</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>degrees</source>
      <translation>Grad</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>left high</source>
      <translation>links höher</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>right high</source>
      <translation>rechts höher</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>left longer</source>
      <translation>links länger</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>right longer</source>
      <translation>rechts länger</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>wider below</source>
      <translation>unten weiter</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>narrower below</source>
      <translation>unten enger</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>turned left</source>
      <translation>links gedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/attempts_words.py" />
      <source>turned right</source>
      <translation>rechts gedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>height of the left leg</source>
      <translation>Überstand des linken Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>height of the right leg</source>
      <translation>Überstand des rechten Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>distance on the left</source>
      <translation>Abstand links</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>distance on the right</source>
      <translation>Abstand rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>which leg goes where</source>
      <translation>welcher Holm wohin</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>pair of distances</source>
      <translation>Messpaar der Abstände</translation>
    </message>
    <message>
      <location filename="aligner/window/align/doors.py" />
      <source>how the legs' plane is read</source>
      <translation>Messverfahren für die Flucht der Holme</translation>
    </message>
    <message>
      <location filename="aligner/window/align/fold.py" />
      <source>open</source>
      <comment>a fold</comment>
      <translation>offen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/fold.py" />
      <source>closed</source>
      <comment>a fold</comment>
      <translation>geschlossen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>another gauge</source>
      <translation>anderes Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>Which gauge was used</source>
      <translation>Verwendete Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>Gauges of this job</source>
      <translation>Messmittel dieses Auftrags</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>gauge to add</source>
      <translation>hinzuzufügendes Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>Add to this job</source>
      <translation>Zum Auftrag hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>gauge on the list</source>
      <translation>Messmittel auf die Liste</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>gauge off the list</source>
      <translation>Messmittel von der Liste</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>heights</source>
      <translation>Überstände</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>in line</source>
      <translation>Flucht der Holme</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>gauge for {name}</source>
      <translation>Messmittel: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>gauge {number}</source>
      <translation>Messmittel {number}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_card.py" />
      <source>gauge used</source>
      <translation>verwendetes Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>resolution of the gauge</source>
      <translation>Auflösung des Messmittels</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>The smallest step its scale or display is read to.</source>
      <translation>Kleinster Schritt, auf den Skala oder Anzeige abgelesen wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>limit of error ±</source>
      <translation>Fehlergrenze ±</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>limit of error of the gauge</source>
      <translation>Fehlergrenze des Messmittels</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>The most it may be wrong by, the same every time.</source>
      <translation>Größte mögliche Abweichung, jedes Mal dieselbe.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>repeatability of the gauge</source>
      <translation>Wiederholbarkeit des Messmittels</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>How far readings of one length scatter in your hand: their standard deviation.</source>
      <translation>Streuung der Messwerte einer Länge in der eigenen Hand: ihre Standardabweichung.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>Where these values come from.</source>
      <translation>Woher diese Werte stammen.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>Used for {uses}: name another there to remove it.</source>
      <translation>Verwendet für: {uses}. Zum Entfernen dort ein anderes angeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>source</source>
      <translation>Quelle</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>source of the gauge</source>
      <translation>Quelle zum Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>Remove</source>
      <translation>Entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>Remove {name}</source>
      <translation>{name} entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>name of the gauge</source>
      <translation>Name des Messmittels</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>read to {size}</source>
      <translation>abgelesen auf {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>wrong by ± {size} at most</source>
      <translation>Fehler höchstens ± {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/gauge_fold.py" />
      <source>repeats to {size}</source>
      <translation>Wiederholbarkeit {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>difference and its ± drawn {factor} times</source>
      <translation>Differenz und ± {factor}-fach</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>Height, seen from the seat</source>
      <translation>Überstand, vom Sitz aus gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>bring</source>
      <comment>before which leg goes where</comment>
      <translation>Ziel:</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>bring which leg where</source>
      <translation>Ziel: welcher Holm wohin</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>not read</source>
      <comment>in place of a mean</comment>
      <translation>kein Wert</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>top bracket</source>
      <translation>obere Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/align/height_card.py" />
      <source>lower bracket</source>
      <translation>untere Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/align/in_line_card.py" />
      <source>corner that stands off</source>
      <translation>abstehende Ecke</translation>
    </message>
    <message>
      <location filename="aligner/window/align/in_line_card.py" />
      <source>face the plate lies on</source>
      <translation>Anlageseite der Richtplatte</translation>
    </message>
    <message>
      <location filename="aligner/window/align/in_line_card.py" />
      <source>end difference of the bars</source>
      <translation>Differenz der Stabenden</translation>
    </message>
    <message>
      <location filename="aligner/window/align/in_line_card.py" />
      <source>height in line</source>
      <translation>Höhe zur Flucht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/in_line_card.py" />
      <source>how the legs are checked for lying in line</source>
      <translation>wie die Flucht der Holme geprüft wird</translation>
    </message>
    <message>
      <location filename="aligner/window/align/in_line_card.py" />
      <source>In line, by</source>
      <translation>Flucht, Verfahren:</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>which corner?</source>
      <translation>welche Ecke?</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>upper left</source>
      <translation>oben links</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>upper right</source>
      <translation>oben rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>lower left</source>
      <translation>unten links</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>lower right</source>
      <translation>unten rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>on the front</source>
      <translation>liegt vorn an</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>on the rear</source>
      <translation>liegt hinten an</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>face of the tubes</source>
      <translation>Seite der Rohre</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>gap</source>
      <translation>Spalt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>lower ahead +</source>
      <translation>unten vorn +</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>half length</source>
      <translation>halbe Länge</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>upper</source>
      <translation>oben</translation>
    </message>
    <message>
      <location filename="aligner/window/align/method_boxes.py" />
      <source>lower</source>
      <translation>unten</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>Two points alike on the frame, left and right, and two on the lower bracket. With the first four dimensions the turn is told in degrees; without them, in millimetres.</source>
      <translation>Zwei gleiche Punkte am Rahmen, links und rechts, und zwei an der unteren Gabelbrücke. Mit den ersten vier Maßen steht die Drehung in Grad, ohne sie in Millimetern.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>Remove this pair</source>
      <translation>Dieses Messpaar entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>bracket reach</source>
      <translation>Vormaß der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>From the steering axis forward to the bracket's points, seen from above; behind is minus.</source>
      <translation>Von der Lenkachse nach vorn bis zu den Punkten der Gabelbrücke, von oben gesehen; dahinter: minus.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>bracket half width</source>
      <translation>halbe Breite der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>From the middle out to either of them: half of what lies between the two.</source>
      <translation>Von der Mitte nach außen bis zu einem der beiden: die Hälfte ihres Abstands.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>frame setback</source>
      <translation>Rückmaß des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>From the steering axis back to the frame's points; ahead of it is minus.</source>
      <translation>Von der Lenkachse nach hinten bis zu den Rahmenpunkten; davor: minus.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>frame half width</source>
      <translation>halbe Breite des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>frame's own difference</source>
      <translation>eigene Differenz des Rahmens</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>Left less right when the bracket is truly straight, where it is known.</source>
      <translation>Links minus rechts bei wirklich gerade stehender Gabelbrücke, soweit bekannt.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>known to ±</source>
      <translation>bekannt auf ±</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>Standard uncertainty of that difference.</source>
      <translation>Standardunsicherheit dieser Differenz.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/align/points.py" />
      <source>Remove {name} and its {count} readings</source>
      <extracomment>Remove {name} and its reading</extracomment>
      <translation>
        <numerusform>{name} mit {count} Messwert entfernen</numerusform>
        <numerusform>{name} mit {count} Messwerten entfernen</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/align/points.py" />
      <source>Remove this pair and its {count} readings</source>
      <extracomment>Remove this pair and its reading</extracomment>
      <translation>
        <numerusform>Dieses Messpaar mit {count} Messwert entfernen</numerusform>
        <numerusform>Dieses Messpaar mit {count} Messwerten entfernen</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>name of the pair</source>
      <translation>Name des Messpaars</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>gauge of this pair</source>
      <translation>Messmittel dieses Messpaars</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>gauge, {name}</source>
      <translation>Messmittel, {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>another pair is called “{name}”</source>
      <translation>ein anderes Messpaar heißt „{name}“</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>Points that the bracket is squared to</source>
      <translation>Punkte, nach denen die Gabelbrücke ausgerichtet wird</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>Add a pair of points</source>
      <translation>Messpaar hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>pair of points</source>
      <translation>Messpaar</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>pair of points taken off</source>
      <translation>Messpaar entfernt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>a pair needs a name</source>
      <translation>ein Messpaar braucht einen Namen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>such as “frame lugs”</source>
      <translation>etwa „Rahmenlaschen“</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>call this one otherwise</source>
      <translation>dieses anders nennen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/points.py" />
      <source>gauge of the pair</source>
      <translation>Messmittel des Messpaars</translation>
    </message>
    <message>
      <location filename="aligner/window/align/raise_entry.py" />
      <source>What if both legs were raised by</source>
      <translation>Annahme: beide Holme hochgeschoben um</translation>
    </message>
    <message>
      <location filename="aligner/window/align/raise_entry.py" />
      <source>What if both legs were raised by, typed</source>
      <translation>Annahme: beide Holme hochgeschoben um, eingetippt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/raise_entry.py" />
      <source>Back to 0</source>
      <translation>Auf 0</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>What if both legs were raised? It edits nothing.</source>
      <translation>Was, wenn beide Holme hochgeschoben würden? Der Auftrag bleibt unverändert.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>On the road, seen from the side</source>
      <translation>Fahrwerk, von der Seite gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>Turn round</source>
      <translation>Umdrehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>On the road, seen from the right</source>
      <translation>Fahrwerk, von rechts gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>Turn round: see it from the left</source>
      <translation>Umdrehen: von links ansehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>On the road, seen from the left</source>
      <translation>Fahrwerk, von links gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_card.py" />
      <source>Turn round: see it from the right</source>
      <translation>Umdrehen: von rechts ansehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>trail</source>
      <translation>Nachlauf</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>normal trail</source>
      <translation>Normalnachlauf</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>tyre patch</source>
      <translation>Aufstandspunkt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>sheet</source>
      <translation>Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>as it stands</source>
      <translation>jetziger Stand</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>after the correction</source>
      <translation>nach der Korrektur</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>what if</source>
      <translation>angenommen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{figure}, changed by {change} against the sheet</source>
      <translation>{figure}, gegenüber dem Datenblatt geändert um {change}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>drawn as on the sheet</source>
      <translation>gezeichnet wie im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>Not on the sheet: {lacking}; drawn to usual proportions.</source>
      <translation>Nicht im Datenblatt: {lacking}; in üblichen Verhältnissen gezeichnet.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>The sheet's figures are taken to hold at {height}.</source>
      <translation>Bezugshöhe für die Werte des Datenblatts: {height}.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>rake {size}</source>
      <translation>Nachlaufwinkel {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>rake: missing</source>
      <translation>Nachlaufwinkel: fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>trail {size}</source>
      <translation>Nachlauf {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>trail: missing</source>
      <translation>Nachlauf: fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>normal trail {size}</source>
      <translation>Normalnachlauf {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>normal trail: missing</source>
      <translation>Normalnachlauf: fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>wheelbase {size}</source>
      <translation>Radstand {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>wheelbase: missing</source>
      <translation>Radstand: fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>what if {rise}</source>
      <translation>angenommen {rise}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{what}: missing</source>
      <translation>{what}: fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{figure}, right end high</source>
      <translation>{figure}, rechtes Ende höher</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{figure} to the right</source>
      <translation>{figure} nach rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>drawn {state}</source>
      <translation>gezeichnet: {state}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{drawn}, its change {factor} times; dashed: the sheet</source>
      <translation>{drawn}, Änderung {factor}-fach; gestrichelt: Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>sheet</source>
      <comment>head of a column</comment>
      <translation>Soll</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>as found</source>
      <comment>head of a column</comment>
      <translation>vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>now</source>
      <comment>head of a column</comment>
      <translation>jetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>corrected</source>
      <comment>head of a column</comment>
      <translation>korrigiert</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>what if</source>
      <comment>head of a column</comment>
      <translation>Annahme</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{figure}, left end high</source>
      <translation>{figure}, linkes Ende höher</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>{figure} to the left</source>
      <translation>{figure} nach links</translation>
    </message>
    <message>
      <location filename="aligner/window/align/road_figures_words.py" />
      <source>No change of rake or trail without it.</source>
      <translation>Ohne diese Angaben keine Änderung von Nachlaufwinkel oder Nachlauf.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/square_card.py" />
      <source>Square, seen from above</source>
      <translation>Winkligkeit, von oben gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/square_card.py" />
      <source>{number} of {count}: {name}</source>
      <translation>{number} von {count}: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/square_card.py" />
      <source>{number} of {count}, odd: {name}</source>
      <translation>{number} von {count}, abweichend: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/square_card.py" />
      <source>Square</source>
      <translation>Winklig</translation>
    </message>
    <message>
      <location filename="aligner/window/align/square_card.py" />
      <source>turn and its ± drawn {factor} times</source>
      <translation>Drehung und ± {factor}-fach</translation>
    </message>
    <message>
      <location filename="aligner/window/align/stage.py" />
      <source>Measure again</source>
      <translation>Neu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/stage.py" />
      <source>Measure again   Enter</source>
      <translation>Neu messen   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/align/stage.py" />
      <source>Go on to Tighten   Enter</source>
      <translation>Weiter zum Anziehen   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/align/stage.py" />
      <source>measure again</source>
      <translation>neu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>&amp;Readings</source>
      <translation>&amp;Messwerte</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>&amp;Points</source>
      <translation>&amp;Punkte</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>&amp;Gauges</source>
      <translation>Messm&amp;ittel</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>On the r&amp;oad</source>
      <translation>Fahr&amp;werk</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>A&amp;ttempts</source>
      <translation>&amp;Versuche</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>Show: {view}</source>
      <translation>Anzeigen: {view}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/views.py" />
      <source>open</source>
      <comment>a view</comment>
      <translation>offen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>a plate across both tubes</source>
      <translation>Richtplatte über beide Rohre</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>two bars across the tubes</source>
      <translation>zwei Richtstäbe über die Rohre</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>widths at two heights</source>
      <translation>Breiten in zwei Höhen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>A flat plate touches at three of four places: read the gap at the fourth.</source>
      <translation>Platte liegt an drei von vier Stellen an: Spalt an der vierten messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>The gap between plate and tube, at the corner that stands off.</source>
      <translation>Der Spalt zwischen Platte und Rohr an der abstehenden Ecke.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>The height between the plate's upper and lower edge on the tubes.</source>
      <translation>Die Höhe zwischen Ober- und Unterkante der Platte an den Rohren.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>Seen from the seat: the corner of the plate that does not touch.</source>
      <translation>Vom Sitz aus gesehen: die Ecke der Platte, die nicht anliegt.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>Whether the plate lies on the front or on the rear of the tubes.</source>
      <translation>Ob die Platte vorn oder hinten an den Rohren anliegt.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>Two straight bars across the tubes, seen end on from the left.</source>
      <translation>Zwei Richtstäbe quer über die Rohre, von links auf ihre Enden gesehen.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>How far the lower bar's end is ahead of the upper's; behind: minus.</source>
      <translation>Wie weit das Ende des unteren Stabs vor dem des oberen steht; dahinter: minus.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>From the middle of the bars to the end where that is read.</source>
      <translation>Von der Mitte der Stäbe bis zu dem Ende, an dem das gemessen wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>The height between the two bars.</source>
      <translation>Die Höhe zwischen den beiden Stäben.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>Widths over both tubes tell a bent tube or bracket, never a twist.</source>
      <translation>Breiten zeigen ein verbogenes Rohr oder eine verbogene Gabelbrücke, nie eine Verdrehung.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>Over the outsides of both tubes, just under the lower bracket.</source>
      <translation>Außen über beide Rohre, dicht unter der unteren Gabelbrücke.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>The same lower down on the bare tubes, with the same gauge.</source>
      <translation>Dasselbe weiter unten an den blanken Rohren, mit demselben Messmittel.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>The height between the two widths.</source>
      <translation>Die Höhe zwischen den beiden Breiten.</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>tyre patch {shift} to the right</source>
      <translation>Aufstandspunkt {shift} rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>both legs to the sheet's height</source>
      <translation>beide wie Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>both legs to the mean as found</source>
      <translation>beide auf vorgefundenes Mittel</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/align/words.py" />
      <source>{count} readings kept</source>
      <extracomment>{count} reading kept</extracomment>
      <translation>
        <numerusform>{count} Messwert behalten</numerusform>
        <numerusform>{count} Messwerte behalten</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>tyre patch in the middle</source>
      <translation>Aufstandspunkt in der Mitte</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>tyre patch {shift} to the left</source>
      <translation>Aufstandspunkt {shift} links</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>the left leg to the right one</source>
      <translation>linker Holm wie rechter</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>the right leg to the left one</source>
      <translation>rechter Holm wie linker</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>share: each leg half the way</source>
      <translation>geteilt: jeder den halben Weg</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>the sheet gives no height</source>
      <translation>Datenblatt gibt keinen Überstand an</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>not read before stripping</source>
      <translation>vor dem Zerlegen nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>as found: {heights}</source>
      <translation>vorgefunden: {heights}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>turned {angle} to the right</source>
      <translation>{angle} nach rechts gedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>rake {rake}, trail {trail}</source>
      <translation>Nachlaufwinkel {rake}, Nachlauf {trail}</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>not named</source>
      <translation>ohne Angabe</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>not measured yet</source>
      <translation>noch nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>turned {angle} to the left</source>
      <translation>{angle} nach links gedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/align/words.py" />
      <source>{name} (not on the list)</source>
      <translation>{name} (nicht auf der Liste)</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>No reading is asked for now: nothing was kept.</source>
      <translation>Jetzt ist kein Messwert gefragt: nichts übernommen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Enter: measure again</source>
      <translation>Enter: neu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>reading in hand</source>
      <translation>laufender Messwert</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>reading</source>
      <translation>Messwert</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Kept: {name}, {reading}</source>
      <translation>Übernommen: {name}, {reading}</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Enter: go on to Tighten</source>
      <translation>Enter: weiter zum Anziehen</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Escape, then add a pair of points on the Align page</source>
      <translation>Esc, dann auf der Seite Ausrichten ein Messpaar hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Escape, then give what is missing on the Align page</source>
      <translation>Esc, dann auf der Seite Ausrichten das Fehlende angeben</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Moved and held? Enter: measure again</source>
      <translation>Verstellt und festgehalten? Enter: neu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>Go on reading: {name}.</source>
      <translation>Weiter messen: {name}.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/align.py" />
      <source>As often as the left.</source>
      <translation>So oft wie links.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/drawing.py" />
      <source>From the seat</source>
      <translation>Vom Sitz aus</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/drawing.py" />
      <source>drawing, from the seat</source>
      <translation>Zeichnung, vom Sitz aus</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/drawing.py" />
      <source>drawn {factor} times</source>
      <translation>{factor}-fach gezeichnet</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/drawing.py" />
      <source>From above</source>
      <translation>Von oben</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/drawing.py" />
      <source>drawing, from above</source>
      <translation>Zeichnung, von oben</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Next: {step}, {beside}</source>
      <translation>Danach: {step}, {beside}</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>step {number}</source>
      <translation>Schritt {number}</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Next: {step}</source>
      <translation>Danach: {step}</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>step in hand</source>
      <translation>laufender Schritt</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>There is nothing to tighten.</source>
      <translation>Es gibt nichts anzuziehen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>{number} of {count}</source>
      <translation>{number} von {count}</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Escape, then give the fasteners on the Bike page</source>
      <translation>Esc, dann auf der Seite Motorrad die Verschraubungen angeben</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>{number} of {count} steps done</source>
      <translation>{number} von {count} Schritten erledigt</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>untick a step</source>
      <translation>Haken eines Schritts entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Everything is done up.</source>
      <translation>Alles ist angezogen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Go on to Prove: brakes first.</source>
      <translation>Weiter zur Probefahrt: zuerst die Bremsen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Torque seen: {torque}</source>
      <translation>Drehmoment abgelesen: {torque}</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>heights to read again</source>
      <translation>Überstände neu zu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>No list yet</source>
      <translation>Noch keine Liste</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>no list</source>
      <translation>keine Liste</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Torque seen: “{text}” is not understood</source>
      <translation>Drehmoment abgelesen: „{text}“ ist nicht verständlich</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/step.py" />
      <source>Nothing was ticked. {refusal}.</source>
      <translation>Nichts wurde abgehakt. {refusal}.</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/view.py" />
      <source>Escape leaves</source>
      <translation>Esc verlässt die Ansicht</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/view.py" />
      <source>A gauge types number and Enter    Ctrl+Z takes a reading back    Escape leaves</source>
      <translation>Messmittel gibt Zahl und Enter ein    Strg+Z nimmt einen Messwert zurück    Esc verlässt</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/view.py" />
      <source>Space or Enter: done    a number goes to the torque seen    Escape leaves</source>
      <translation>Leertaste oder Enter: erledigt    Zahl gilt als abgelesenes Drehmoment    Esc verlässt</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/view.py" />
      <source>what to do now</source>
      <translation>was jetzt zu tun ist</translation>
    </message>
    <message>
      <location filename="aligner/window/bench/view.py" />
      <source>Caution: {text}</source>
      <translation>Achtung: {text}</translation>
    </message>
    <message>
      <location filename="aligner/window/beside.py" />
      <source>{file} was not opened.</source>
      <translation>{file} wurde nicht geöffnet.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/boxes.py" />
      <source>The sheet still has {value}.</source>
      <translation>Im Datenblatt steht weiterhin {value}.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>spacing {value}</source>
      <translation>Abstand {value}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>tube ⌀ {value}</source>
      <translation>Rohr ⌀ {value}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>brackets {value}</source>
      <translation>Brücken {value}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>to the axle {value}</source>
      <translation>zur Achse {value}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>leg spacing {legs}, bracket spacing {brackets}, tube diameter {tube}, lower bracket to axle {axle}</source>
      <translation>Holmabstand {legs}, Abstand der Gabelbrücken {brackets}, Rohrdurchmesser {tube}, untere Gabelbrücke bis Achse {axle}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>Seen from the seat</source>
      <translation>Vom Sitz aus gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/drawing.py" />
      <source>slider ends cut short</source>
      <translation>Tauchrohre verkürzt gezeichnet</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_boxes.py" />
      <source>A fastener without a name: name it as the checklist shall.</source>
      <translation>Eine Verschraubung ohne Namen: so benennen, wie sie in der Liste heißen soll.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>dry</source>
      <translation>trocken</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>oiled</source>
      <translation>geölt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>greased</source>
      <translation>gefettet</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>locked</source>
      <translation>mit Schraubensicherung</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>alternating</source>
      <translation>abwechselnd</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>crosswise</source>
      <translation>über Kreuz</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>kind</source>
      <translation>Art</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>side</source>
      <translation>Seite</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>thread, when the torque holds</source>
      <translation>Gewindezustand zum Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>in which turn</source>
      <translation>Reihenfolge der Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>as the checklist calls it</source>
      <translation>wie in der Liste genannt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>bolts</source>
      <translation>Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>strength class</source>
      <translation>Festigkeitsklasse</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>8.8, or aluminium</source>
      <translation>8.8 oder Aluminium</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>passes, shares of the torque</source>
      <translation>Durchgänge, Anteile am Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>the usual ones</source>
      <translation>die üblichen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>again after, on the road</source>
      <translation>erneut nach Fahrstrecke</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>e.g. 100 km</source>
      <translation>z. B. 100 km</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>note</source>
      <translation>Notiz</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>what the manual says beside it</source>
      <translation>was im Werkstatthandbuch dabeisteht</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>seating torque</source>
      <translation>Setzmoment</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>as printed, with its unit</source>
      <translation>wie gedruckt, mit Einheit</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>seating torque, source</source>
      <translation>Setzmoment, Quelle</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>manual page</source>
      <translation>Werkstatthandbuch, Seite</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>back off</source>
      <translation>zurückdrehen um</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>e.g. 45 deg or 1/8 turn</source>
      <translation>z. B. 45 deg oder 1/8 Umdrehung</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>{fastener}, copy to the other side</source>
      <translation>{fastener}, auf die andere Seite kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>{fastener}, remove this fastener</source>
      <translation>{fastener}, diese Verschraubung entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>Copy to the other side</source>
      <translation>Auf die andere Seite kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>Remove this fastener</source>
      <translation>Verschraubung entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_details.py" />
      <source>in the middle</source>
      <translation>in der Mitte</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_reads.py" />
      <source>left and right</source>
      <translation>links und rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_reads.py" />
      <source>“{text}” is not a number of bolts</source>
      <translation>„{text}“ ist keine Anzahl von Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_reads.py" />
      <source>give 1 to 12</source>
      <translation>1 bis 12 angeben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_reads.py" />
      <source>no share of the torque</source>
      <translation>kein Anteil am Drehmoment</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_reads.py" />
      <source>write “50 %, 100 %”</source>
      <translation>„50 %, 100 %“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_row.py" />
      <source>torque as printed</source>
      <translation>Drehmoment wie gedruckt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_row.py" />
      <source>source of the torque</source>
      <translation>Quelle des Drehmoments</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_row.py" />
      <source>thread</source>
      <translation>Gewinde</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_row.py" />
      <source>e.g. M8x1.25</source>
      <translation>z. B. M8x1.25</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_row.py" />
      <source>{fastener}, opened</source>
      <translation>{fastener}, aufgeklappt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fastener_row.py" />
      <source>{fastener}, open it</source>
      <translation>{fastener}, aufklappen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>torque as the manual prints it</source>
      <translation>Drehmoment wie im Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Fasteners</source>
      <translation>Verschraubungen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>missing: no fasteners on the sheet</source>
      <translation>fehlt: keine Verschraubungen im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Kind of the new fastener</source>
      <translation>Art der neuen Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Side of the new fastener</source>
      <translation>Seite der neuen Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Add a fastener</source>
      <translation>Verschraubung hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>add {joint}</source>
      <translation>{joint} hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>remove {fastener}</source>
      <translation>{fastener} entfernen</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Removed: {fastener}, and {count} of the maker's rules with it. Undo brings it back.</source>
      <extracomment>Removed: {fastener}, and {count} of the maker's rules with it. Undo brings it back.</extracomment>
      <translation>
        <numerusform>Entfernt: {fastener}, dazu {count} Regel des Herstellers. Rückgängig bringt alles zurück.</numerusform>
        <numerusform>Entfernt: {fastener}, dazu {count} Regeln des Herstellers. Rückgängig bringt alles zurück.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Removed: {fastener}. Undo brings it back.</source>
      <translation>Entfernt: {fastener}. Rückgängig bringt es zurück.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>One more:</source>
      <translation>Eine weitere:</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>copy to the other side</source>
      <translation>auf die andere Seite kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/fasteners.py" />
      <source>Nothing was copied.</source>
      <translation>Es wurde nichts kopiert.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Sheets and jobs (*.sheet.json *.job.json *.json)</source>
      <translation>Datenblätter und Aufträge (*.sheet.json *.job.json *.json)</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Sheets (*.sheet.json)</source>
      <translation>Datenblätter (*.sheet.json)</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Take over a sheet...</source>
      <translation>Datenblatt übernehmen...</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Save as a sheet file...</source>
      <translation>Als Datenblattdatei speichern...</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Copy to a variant</source>
      <translation>In Variante kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>take over a sheet</source>
      <translation>Datenblatt übernehmen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Taken over from {file}. Undo brings back what was here.</source>
      <translation>Aus {file} übernommen. Rückgängig bringt zurück, was hier stand.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>The sheet is saved in {file}.</source>
      <translation>Das Datenblatt ist in {file} gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Take over a sheet</source>
      <translation>Datenblatt übernehmen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>Save the sheet as</source>
      <translation>Datenblatt speichern unter</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>{file} was not taken over.</source>
      <translation>{file} wurde nicht übernommen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/files.py" />
      <source>The sheet was not saved.</source>
      <translation>Das Datenblatt wurde nicht gespeichert.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/bike/missing.py" />
      <source>{missing} missing, {count} dimensions not given: each leads to its box</source>
      <extracomment>{missing} missing, {count} dimension not given: each leads to its box</extracomment>
      <translation>
        <numerusform>Fehlend: {missing}, {count} Maß nicht angegeben – jeder Eintrag führt zu seinem Feld</numerusform>
        <numerusform>Fehlend: {missing}, {count} Maße nicht angegeben – jeder Eintrag führt zu seinem Feld</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/bike/missing.py" />
      <source>Show all {number}</source>
      <translation>Alle {number} zeigen</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/bike/missing.py" />
      <source>{count} dimensions not given: each leads to its box</source>
      <extracomment>{count} dimension not given: each leads to its box</extracomment>
      <translation>
        <numerusform>{count} Maß nicht angegeben – jeder Eintrag führt zu seinem Feld</numerusform>
        <numerusform>{count} Maße nicht angegeben – jeder Eintrag führt zu seinem Feld</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/bike/missing.py" />
      <source>{missing} missing: each leads to its box</source>
      <translation>Fehlend: {missing} – jeder Eintrag führt zu seinem Feld</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/bike/missing.py" />
      <source>Take {count} torques from the other side</source>
      <extracomment>Take {count} torque from the other side</extracomment>
      <translation>
        <numerusform>{count} Drehmoment der anderen Seite übernehmen</numerusform>
        <numerusform>{count} Drehmomente der anderen Seite übernehmen</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/bike/missing.py" />
      <source>Missing: {value}. Go to its box</source>
      <translation>Fehlt: {value}. Zum Feld gehen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/missing.py" />
      <source>Show fewer</source>
      <translation>Weniger zeigen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>{rule}, first</source>
      <translation>{rule}, zuerst</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>{rule}, kind</source>
      <translation>{rule}, Art</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>{rule}, then</source>
      <translation>{rule}, dann</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>{rule}, because</source>
      <translation>{rule}, weil</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>{rule}, source</source>
      <translation>{rule}, Quelle</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>new rule</source>
      <translation>neue Regel</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>rule {number}</source>
      <translation>Regel {number}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>what comes first</source>
      <translation>was zuerst kommt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>what comes after it</source>
      <translation>was danach kommt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>the reason</source>
      <translation>der Grund</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>Add this rule</source>
      <translation>Regel hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>the rule is not complete</source>
      <translation>die Regel ist nicht vollständig</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>choose what comes first, and then</source>
      <translation>wählen, was zuerst kommt und was dann</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>the rule has no reason</source>
      <translation>die Regel hat keinen Grund</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>say why, as the manual does</source>
      <translation>den Grund angeben wie im Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>The rule on the sheet is as it was.</source>
      <translation>Die Regel im Datenblatt ist unverändert.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rule_row.py" />
      <source>because</source>
      <translation>weil</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>No rules of the maker's own: the usual order holds.</source>
      <translation>Keine eigenen Regeln des Herstellers: Es gilt die übliche Reihenfolge.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>The maker's order</source>
      <translation>Reihenfolge des Herstellers</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>remove a rule</source>
      <translation>Regel entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>Removed the rule: {rule}. Undo brings it back.</source>
      <translation>Regel entfernt: {rule}. Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>One more rule, as the manual gives it:</source>
      <translation>Eine weitere Regel, wie im Werkstatthandbuch:</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>add a rule</source>
      <translation>Regel hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/rules.py" />
      <source>Not added: {why}.</source>
      <translation>Nicht hinzugefügt: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>The maker's manual comes first.</source>
      <translation>Das Werkstatthandbuch des Herstellers hat Vorrang.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>This is the sheet of {bike} now.</source>
      <translation>Das ist jetzt das Datenblatt von {bike}.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>The bike's sheet</source>
      <translation>Datenblatt des Motorrads</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>Go on to Strip   Enter</source>
      <translation>Weiter zum Zerlegen   Enter</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/bike/stage.py" />
      <source>{count} values are missing.</source>
      <extracomment>{count} value is missing.</extracomment>
      <translation>
        <numerusform>{count} Wert fehlt.</numerusform>
        <numerusform>{count} Werte fehlen.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>What is missing comes from the maker's manual, which comes first: a torque is never guessed.</source>
      <translation>Was fehlt, dem Werkstatthandbuch des Herstellers entnehmen, es hat Vorrang: Ein Drehmoment wird nie geraten.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/bike/stage.py" />
      <source>{count} dimensions are not given: what follows from them is not worked out.</source>
      <extracomment>{count} dimension is not given: what follows from them is not worked out.</extracomment>
      <translation>
        <numerusform>{count} Maß ist nicht angegeben: Was daraus folgt, wird nicht berechnet.</numerusform>
        <numerusform>{count} Maße sind nicht angegeben: Was daraus folgt, wird nicht berechnet.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>Every torque and dimension is given.</source>
      <translation>Alle Drehmomente und Maße sind angegeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>The Build stage still needs: {values}.</source>
      <translation>Unter Zusammenbau fehlt noch: {values}.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>Sheet complete.</source>
      <translation>Datenblatt vollständig.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>start a sheet</source>
      <translation>Datenblatt anlegen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>torques of the other side</source>
      <translation>Drehmomente der anderen Seite</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>copy to a variant</source>
      <translation>in Variante kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>Name the bike and choose its pattern.</source>
      <translation>Motorrad benennen und Vorlage wählen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>Choose the pattern of this bike.</source>
      <translation>Vorlage für dieses Motorrad wählen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>bike's name</source>
      <translation>Name des Motorrads</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>job's title</source>
      <translation>Titel des Auftrags</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/stage.py" />
      <source>Or take over a sheet that is there already.</source>
      <translation>Oder ein vorhandenes Datenblatt übernehmen.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>Name the bike first: its sheet and its jobs are kept under this name.</source>
      <translation>Zuerst das Motorrad benennen: Datenblatt und Aufträge werden unter diesem Namen geführt.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>A pattern brings the fasteners and their order. It brings no torque and no dimension: those come from the maker's manual.</source>
      <translation>Eine Vorlage bringt die Verschraubungen und ihre Reihenfolge. Sie bringt kein Drehmoment und kein Maß: Diese kommen aus dem Werkstatthandbuch des Herstellers.</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>A new sheet</source>
      <translation>Neues Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>Name of the bike</source>
      <translation>Name des Motorrads</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>as you call it</source>
      <translation>wie es genannt wird</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>This job</source>
      <translation>Dieser Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>what it is for: front end refit</source>
      <translation>wofür: Vorderbau neu aufbauen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>Start this sheet</source>
      <translation>Datenblatt anlegen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>Take over a sheet from a file or an earlier job...</source>
      <translation>Datenblatt aus Datei oder früherem Auftrag übernehmen...</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/start.py" />
      <source>or</source>
      <comment>between two buttons</comment>
      <translation>oder</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>tubes' height, target</source>
      <translation>Überstand der Standrohre, Sollwert</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>equal heights only</source>
      <translation>nur gleich hoch</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>tubes' height, tolerance ±</source>
      <translation>Überstand der Standrohre, Toleranz ±</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>lower bracket square, tolerance ±</source>
      <translation>untere Gabelbrücke winklig, Toleranz ±</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>not asked for</source>
      <translation>nicht verlangt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>legs in line, tolerance ±</source>
      <translation>Holme fluchtend, Toleranz ±</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>Dimensions</source>
      <translation>Maße</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>Limits for the alignment</source>
      <translation>Grenzwerte für das Ausrichten</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>write it as “0.4 deg” or, on the gauge, “0.5 mm”</source>
      <translation>als „0,4 deg“ oder, am Messmittel, „0,5 mm“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>{value}, source</source>
      <translation>{value}, Quelle</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>The bike and this job</source>
      <translation>Motorrad und dieser Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>name the bike</source>
      <translation>Motorrad benennen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>this job</source>
      <translation>dieser Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>anything else worth knowing of the bike</source>
      <translation>was sonst über das Motorrad wissenswert ist</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>fork</source>
      <translation>Gabel</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>note on the sheet</source>
      <translation>Notiz im Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>where it comes from</source>
      <translation>Herkunft</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>manual page, or measured</source>
      <translation>Seite oder gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>missing: name the bike</source>
      <translation>fehlt: Motorrad benennen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/values.py" />
      <source>missing: say what the manual allows</source>
      <translation>fehlt: angeben, was das Werkstatthandbuch zulässt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>{bike} variant</source>
      <translation>{bike} Variante</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>A variant of this sheet</source>
      <translation>Variante dieses Datenblatts</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>Name of the variant</source>
      <translation>Name der Variante</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>another name</source>
      <translation>anderer Name</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>Use it for this job</source>
      <translation>Für diesen Auftrag nehmen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>Save it as a sheet file...</source>
      <translation>Als Datenblattdatei speichern...</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/variant.py" />
      <source>Leave it</source>
      <translation>Verwerfen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>missing: take it from the maker's manual</source>
      <translation>fehlt: dem Werkstatthandbuch des Herstellers entnehmen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>damper rod</source>
      <translation>Dämpferrohr</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>damper rod, air-assisted</source>
      <translation>Dämpferrohr, luftunterstützt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>damper rod with anti-dive unit</source>
      <translation>Dämpferrohr mit Anti-Dive-Einheit</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>cartridge</source>
      <translation>Kartusche</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>upside-down</source>
      <translation>Upside-down</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>above the top bracket</source>
      <translation>über der oberen Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>between the brackets</source>
      <translation>zwischen den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>below the top bracket</source>
      <translation>unter der oberen Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>before</source>
      <translation>vor:</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>while this is slack:</source>
      <translation>solange dies locker ist:</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>must pass before</source>
      <translation>muss bestanden sein vor:</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>and after it, once more:</source>
      <translation>und danach noch einmal:</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>{first} before {then}</source>
      <translation>zuerst {first}, dann {then}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>{first} while {then} is slack</source>
      <translation>{first}, solange {then} locker ist</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>{then} waits for the reading: {first}</source>
      <translation>{then} wartet auf die Messung: {first}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>after {first}, {then} once more</source>
      <translation>zuerst {first}, danach {then} noch einmal</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>aim for {aim}, right from {low} to {high}</source>
      <translation>Ziel {aim}, richtig von {low} bis {high}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>{fastener}, {number} bolts</source>
      <translation>{fastener}, {number} Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>anti dive unit bolt</source>
      <translation>Schraube der Anti-Dive-Einheit</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>damper rod bolt</source>
      <translation>Dämpferrohrschraube</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>stem pinch</source>
      <translation>Lenkschaft-Klemmschraube</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>handlebar clamp below</source>
      <translation>Lenkerklemmung unter den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>handlebar clamp between</source>
      <translation>Lenkerklemmung zwischen den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>handlebar clamp above</source>
      <translation>Lenkerklemmung über der oberen Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>axle in clamp caps</source>
      <translation>Vorderachse in Achsklemmböcken</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>axle pinch</source>
      <translation>Achsklemmschraube</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>bench work</source>
      <translation>Arbeit an der Werkbank</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>stem</source>
      <translation>Lenkschaft</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>clamps</source>
      <translation>Klemmungen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>caps</source>
      <translation>Verschlussschrauben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>handlebar clamps</source>
      <translation>Lenkerklemmungen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>fittings</source>
      <translation>Anbauteile</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>any axle</source>
      <translation>Vorderachse, jede Bauart</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>brake</source>
      <translation>Bremse</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>axle pinches</source>
      <translation>Achsklemmungen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>stem nut seated</source>
      <translation>Einstellmutter, Lager gesetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>stem nut backed off</source>
      <translation>Einstellmutter zurückgedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>stem nut set</source>
      <translation>Einstellmutter eingestellt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>top bracket on</source>
      <translation>obere Gabelbrücke aufgesetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>handlebars slid on</source>
      <translation>Lenker aufgeschoben</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>legs in</source>
      <translation>Holme eingesetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>protrusion equal</source>
      <translation>Überstand gleich</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>lower bracket square</source>
      <translation>untere Gabelbrücke winklig</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>legs in line</source>
      <translation>Holme fluchtend</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>steering free</source>
      <translation>Lenkung frei</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>preload at lowest</source>
      <translation>Vorspannung auf kleinstem Wert</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>protrusion again</source>
      <translation>Überstand noch einmal</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>preload back</source>
      <translation>Vorspannung wieder eingestellt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>air line joined</source>
      <translation>Luftleitung angeschlossen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>brace on</source>
      <translation>Gabelstabilisator angesetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>anti dive lines joined</source>
      <translation>Anti-Dive-Leitungen angeschlossen</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>wheel in</source>
      <translation>Rad eingesetzt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>brake bled</source>
      <translation>Bremse entlüftet</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>lever firm</source>
      <translation>Druckpunkt fest</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>fork pumped</source>
      <translation>Gabel durchgefedert</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>hoses free</source>
      <translation>Schläuche frei</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>air in</source>
      <translation>Luft eingefüllt</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>{fastener}, {number} nuts</source>
      <translation>{fastener}, {number} Muttern</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>every {joint}</source>
      <translation>alle dieser Art: {joint}</translation>
    </message>
    <message>
      <location filename="aligner/window/bike/words.py" />
      <source>step: {step}</source>
      <translation>Schritt: {step}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>Log an adjustment after a road test</source>
      <translation>Nachstellung nach Probefahrt eintragen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>adjustment {number}: what was changed</source>
      <translation>Nachstellung {number}: was geändert wurde</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>what was changed</source>
      <translation>was geändert wurde</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>adjustment {number}: why</source>
      <translation>Nachstellung {number}: warum</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>why: what the road test showed</source>
      <translation>warum: was die Probefahrt ergab</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>Take out</source>
      <translation>Entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/adjustments.py" />
      <source>Take out adjustment {number}</source>
      <translation>Nachstellung {number} entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>how does the steering fall to each side?</source>
      <translation>Wie fällt die Lenkung zu jeder Seite?</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>Head bearing</source>
      <translation>Lenkkopflager</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>pull</source>
      <translation>Zugkraft</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>radius</source>
      <translation>Radius</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>how the steering falls to each side</source>
      <translation>wie die Lenkung zu jeder Seite fällt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>{step} · {value} (Tighten, step {number})</source>
      <translation>{step} · {value} (Anziehen, Schritt {number})</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>The sheet lists no stem nut: set it as the maker's manual says.</source>
      <translation>Das Datenblatt führt keine Einstellmutter: nach dem Werkstatthandbuch des Herstellers einstellen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>It is ticked: open it again in Tighten, which asks for a reason.</source>
      <translation>Er ist abgehakt: unter „Anziehen“ wieder öffnen; dort wird nach dem Grund gefragt.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>Other steps of Tighten come before it: tick them there, or this one with a reason.</source>
      <translation>Unter „Anziehen“ kommen andere Schritte davor: diese dort abhaken, oder diesen dort mit Grund.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/bearing_card.py" />
      <source>Its torque is missing: tick it in Tighten, where it is typed.</source>
      <translation>Sein Drehmoment fehlt: unter „Anziehen“ abhaken, dort wird es eingetragen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>first oil's name</source>
      <translation>Name des ersten Öls</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>second oil's name</source>
      <translation>Name des zweiten Öls</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>wanted</source>
      <translation>verlangt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>amount in all</source>
      <translation>Gesamtmenge</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>{mixture}. An estimate: additives can move it by some per cent.</source>
      <translation>{mixture}. Geschätzt: Additive können das Ergebnis um einige Prozent verschieben.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>Two oils mixed, all at one temperature (usually 40 °C)</source>
      <translation>Mischung zweier Öle, alles bei einer Temperatur (meist 40 °C)</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>Still needed: {values}.</source>
      <translation>Noch nötig: {values}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/blend_card.py" />
      <source>{volume} of {oil} ({share} %)</source>
      <translation>{volume} {oil} ({share} %)</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>air gap of the left leg</source>
      <translation>Luftkammer des linken Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>air gap of the right leg</source>
      <translation>Luftkammer des rechten Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>oil of the left leg</source>
      <translation>Öl des linken Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>oil of the right leg</source>
      <translation>Öl des rechten Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>blend of oils</source>
      <translation>Ölmischung</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>adjustment of the bearing</source>
      <translation>Nachstellung des Lagers</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>spring and spacer</source>
      <translation>Feder und Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>name of the oil</source>
      <translation>Name des Öls</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>take out an adjustment</source>
      <translation>Nachstellung entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>length for the sag</source>
      <translation>Länge für den Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/window/build/doors.py" />
      <source>value of the sheet</source>
      <translation>Wert des Datenblatts</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>left leg's oil</source>
      <translation>Öl linker Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>right leg's oil</source>
      <translation>Öl rechter Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>What went in</source>
      <translation>Was eingefüllt wurde</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>gauge of the air gaps</source>
      <translation>Messmittel der Luftkammern</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>Read the gaps again</source>
      <translation>Luftkammern neu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>oil that went in</source>
      <translation>eingefülltes Öl</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>name on the bottle</source>
      <translation>Name auf der Flasche</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>read with</source>
      <translation>gemessen mit</translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>the sheet says: {oil}</source>
      <translation>laut Datenblatt: {oil}</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/build/fill_card.py" />
      <source>read {count} times before, kept with the job</source>
      <extracomment>read {count} time before, kept with the job</extracomment>
      <translation>
        <numerusform>vorher {count}-mal gemessen, im Auftrag aufbewahrt</numerusform>
        <numerusform>vorher {count}-mal gemessen, im Auftrag aufbewahrt</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/build/fill_card.py" />
      <source>volume?</source>
      <translation>Menge?</translation>
    </message>
    <message>
      <location filename="aligner/window/build/force_card.py" />
      <source>Air force of both legs, fast stroke</source>
      <translation>Luftkraft beider Holme, schneller Hub</translation>
    </message>
    <message>
      <location filename="aligner/window/build/oil_card.py" />
      <source>left gap</source>
      <translation>Kammer links</translation>
    </message>
    <message>
      <location filename="aligner/window/build/oil_card.py" />
      <source>right gap</source>
      <translation>Kammer rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/build/oil_card.py" />
      <source>suction tube {depth}</source>
      <translation>Absaugrohr {depth}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/oil_card.py" />
      <source>Air gap, spring out, leg compressed</source>
      <translation>Luftkammer, Feder heraus, Holm eingefedert</translation>
    </message>
    <message>
      <location filename="aligner/window/build/oil_card.py" />
      <source>level drawn {factor} times</source>
      <translation>Ölstand {factor}-fach gezeichnet</translation>
    </message>
    <message>
      <location filename="aligner/window/build/oil_card.py" />
      <source>seen from the seat</source>
      <translation>vom Sitz aus gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>left leg: not read</source>
      <translation>linker Holm: nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>right leg: not read</source>
      <translation>rechter Holm: nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>left leg: air gap {size}</source>
      <translation>linker Holm: Luftkammer {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>right leg: air gap {size}</source>
      <translation>rechter Holm: Luftkammer {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>left leg: {poured}; the sheet gives no volume to hold it against</source>
      <translation>linker Holm: {poured}; das Datenblatt nennt keine Ölmenge zum Vergleich</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>right leg: {poured}; the sheet gives no volume to hold it against</source>
      <translation>rechter Holm: {poured}; das Datenblatt nennt keine Ölmenge zum Vergleich</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>left leg: {verdict}, {poured}, {against}</source>
      <translation>linker Holm: {verdict}, {poured}, {against}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>right leg: {verdict}, {poured}, {against}</source>
      <translation>rechter Holm: {verdict}, {poured}, {against}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>left leg: {poured}, {against}; the air gap decides</source>
      <translation>linker Holm: {poured}, {against}; die Luftkammer entscheidet</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>right leg: {poured}, {against}; the air gap decides</source>
      <translation>rechter Holm: {poured}, {against}; die Luftkammer entscheidet</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Static sag: not read.</source>
      <translation>Negativfederweg statisch: nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Rider sag: not read.</source>
      <translation>Negativfederweg mit Fahrer: nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Static sag {size}</source>
      <translation>Negativfederweg statisch {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Rider sag {size}</source>
      <translation>Negativfederweg mit Fahrer {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Static sag {size}, {share} % of the travel</source>
      <translation>Negativfederweg statisch {size}, {share} % des Federwegs</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Rider sag {size}, {share} % of the travel</source>
      <translation>Negativfederweg mit Fahrer {size}, {share} % des Federwegs</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{found}; ± {tolerance} allowed</source>
      <translation>{found}; ± {tolerance} zulässig</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>as the manual says</source>
      <translation>wie im Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: {pull} is a drag of {drag}; {low} to {high} is right.</source>
      <translation>{verdict}: {pull} ergeben ein Reibmoment von {drag}; richtig ist {low} bis {high}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>The scale's own error is not counted.</source>
      <translation>Der Fehler der Federwaage selbst ist nicht eingerechnet.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{change}, one for one along the leg</source>
      <translation>{change}, eins zu eins längs des Holms</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: {size} less than wanted</source>
      <translation>{verdict}: {size} weniger als verlangt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>not settled:
read again</source>
      <translation>nicht entschieden:
erneut messen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{size}
too much oil</source>
      <translation>{size}
zu viel Öl</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>left against right: read both legs</source>
      <translation>links gegen rechts: beide Holme messen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: equal</source>
      <translation>{verdict}: gleich</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Still needed for this: {values}.</source>
      <translation>Dafür noch nötig: {values}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>The sheet's values have their boxes at the foot of this page.</source>
      <translation>Die Werte des Datenblatts haben ihre Felder am Ende dieser Seite.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>At full stroke both legs push alike.</source>
      <translation>Bei vollem Hub drücken beide Holme gleich.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Spring and spacer are not counted: the true forces are higher.</source>
      <translation>Feder und Distanzhülse sind nicht eingerechnet: Die wahren Kräfte sind höher.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Give the radius at which the scale pulls.</source>
      <translation>Radius angeben, an dem die Federwaage zieht.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{pull}: the radius is missing, so there is no drag torque yet.</source>
      <translation>{pull}: Der Radius fehlt, daher noch kein Reibmoment.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{pull} is a drag of {drag}; the sheet gives none to hold it against.</source>
      <translation>{pull} ergeben ein Reibmoment von {drag}; das Datenblatt nennt keines zum Vergleich.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>friction holds {size}</source>
      <translation>Reibung hält {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{size} more preload on each leg</source>
      <translation>{size} mehr Vorspannung je Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{size} less preload on each leg</source>
      <translation>{size} weniger Vorspannung je Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{change}, spring and air counted</source>
      <translation>{change}, Feder und Luft eingerechnet</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: as wanted</source>
      <translation>{verdict}: wie verlangt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: {size} more than wanted</source>
      <translation>{verdict}: {size} mehr als verlangt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>add
{size}</source>
      <translation>{size}
zugeben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>draw off
{size}</source>
      <translation>{size}
absaugen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{size}
too little oil</source>
      <translation>{size}
zu wenig Öl</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: left gap {size} more than right</source>
      <translation>{verdict}: links {size} größer als rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}: left gap {size} less than right</source>
      <translation>{verdict}: links {size} kleiner als rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{size} more than the manual's</source>
      <translation>{size} mehr als im Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{size} less than the manual's</source>
      <translation>{size} weniger als im Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{difference}, which is {level} of level</source>
      <translation>{difference}, das sind {level} Ölstand</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>At full stroke the left leg's air pushes {fast} more in a fast stroke, {slow} in a slow one (of {whole}).</source>
      <translation>Bei vollem Hub drückt die Luft des linken Holms bei schnellem Hub {fast} mehr, bei langsamem {slow} (von {whole}).</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>At full stroke the right leg's air pushes {fast} more in a fast stroke, {slow} in a slow one (of {whole}).</source>
      <translation>Bei vollem Hub drückt die Luft des rechten Holms bei schnellem Hub {fast} mehr, bei langsamem {slow} (von {whole}).</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>Right at {arm}: {low} to {high}.</source>
      <translation>Richtig bei {arm}: {low} bis {high}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>The sheet gives no drag for it: what is read is kept, and the feel decides.</source>
      <translation>Das Datenblatt nennt dafür kein Reibmoment: Der Messwert wird aufbewahrt, und das Gefühl entscheidet.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>{verdict}, {low} to {high} is right</source>
      <translation>{verdict}, richtig ist {low} bis {high}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>add {size}</source>
      <translation>{size} zugeben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/results.py" />
      <source>draw off {size}</source>
      <translation>{size} absaugen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>The same two marks along the leg each time. Extended: front wheel off the ground. Then pushed down and let up slowly, lifted and let down slowly: friction lies between the two.</source>
      <translation>Jedes Mal dieselben zwei Marken längs des Holms. Ausgefedert: Vorderrad frei vom Boden. Dann herunterdrücken und langsam hochkommen lassen, anheben und langsam absinken lassen: Zwischen beiden liegt die Reibung.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>extended</source>
      <translation>ausgefedert</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>alone, pushed down</source>
      <translation>ohne Fahrer, gedrückt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>alone, lifted</source>
      <translation>ohne Fahrer, angehoben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>rider, pushed down</source>
      <translation>mit Fahrer, gedrückt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>rider, lifted</source>
      <translation>mit Fahrer, angehoben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>Sag, once the machine stands on its wheels</source>
      <translation>Negativfederweg, sobald das Motorrad auf den Rädern steht</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sag_card.py" />
      <source>gauge of the sag lengths</source>
      <translation>Messmittel für den Negativfederweg</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>gap, plus or minus</source>
      <translation>Luftkammer ±</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>oil of one leg</source>
      <translation>Ölmenge je Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>oil, plus or minus</source>
      <translation>Ölmenge ±</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>rod in the oil</source>
      <translation>Stange im Öl</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>sliding tube</source>
      <translation>Rohr-Ø am Dichtring</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>spring's volume</source>
      <translation>Federvolumen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>spring rate</source>
      <translation>Federrate</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>second rate</source>
      <translation>zweite Federrate</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>rate changes at</source>
      <translation>Ratenwechsel bei</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>pull's radius</source>
      <translation>Radius der Zugkraft</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>pull, least</source>
      <translation>Zugkraft min.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>pull, most</source>
      <translation>Zugkraft max.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>drag, least</source>
      <translation>Reibmoment min.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>drag, most</source>
      <translation>Reibmoment max.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>static sag, least</source>
      <translation>Negativfederweg statisch min.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>static sag, most</source>
      <translation>Negativfederweg statisch max.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>rider sag, least</source>
      <translation>Negativfederweg m. Fahrer min.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>rider sag, most</source>
      <translation>Negativfederweg m. Fahrer max.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>closer coils: not said</source>
      <translation>engere Windungen: keine Angabe</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>closer coils up</source>
      <translation>engere Windungen oben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>closer coils down</source>
      <translation>engere Windungen unten</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>What is not printed stays empty: it shows as missing and is never guessed.</source>
      <translation>Was nicht gedruckt steht, bleibt leer: Es erscheint als fehlend und wird nie geraten.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>From the maker's manual, for this bike's sheet</source>
      <translation>Aus dem Werkstatthandbuch, für das Datenblatt</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>where these values come from</source>
      <translation>woher diese Werte stammen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>such as manual p. 13-4</source>
      <translation>z. B. Werkstatthandbuch S. 13-4</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>oil the manual names</source>
      <translation>Öl laut Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>order of the parts</source>
      <translation>Reihenfolge der Teile</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>what goes in, bottom up</source>
      <translation>Einbau von unten nach oben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>which way up the closer coils go</source>
      <translation>ob die engeren Windungen oben oder unten liegen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>cap with preload adjuster</source>
      <translation>Verschlussschraube mit Vorspannungseinsteller</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>source of what is typed here</source>
      <translation>Quelle der Eingaben hier</translation>
    </message>
    <message>
      <location filename="aligner/window/build/sheet_card.py" />
      <source>write a share such as “30 %”, or a length such as “40 mm”</source>
      <translation>einen Anteil wie „30 %“ oder eine Länge wie „40 mm“ schreiben</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_card.py" />
      <source>The same in both legs, after the maker's manual. The spacer's ends are square and deburred. More preload holds the machine higher; it does not make the spring stiffer.</source>
      <translation>In beiden Holmen gleich, nach dem Werkstatthandbuch des Herstellers. Die Enden der Distanzhülse sind winklig geschnitten und entgratet. Mehr Vorspannung hält das Motorrad höher; die Feder wird davon nicht härter.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_card.py" />
      <source>The spring pushes the cap: keep face and hand out of its line until several threads hold.</source>
      <translation>Die Feder drückt auf die Verschlussschraube: Gesicht und Hand aus ihrer Flugrichtung heraushalten, bis mehrere Gewindegänge tragen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_card.py" />
      <source>free length</source>
      <translation>freie Länge</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_card.py" />
      <source>room to the cap</source>
      <translation>Raum bis zur Verschlussschraube</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_card.py" />
      <source>Spring and spacer</source>
      <translation>Feder und Distanzhülse</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>Cut both spacers to {length}, for {preload} of preload.</source>
      <translation>Beide Distanzhülsen auf {length} kürzen, für {preload} Vorspannung.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>No spacer: the spring alone has {preload} of preload.</source>
      <translation>Keine Distanzhülse: Die Feder allein hat {preload} Vorspannung.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>Cut both spacers to {length}, for the {preload} of preload on the sheet.</source>
      <translation>Beide Distanzhülsen auf {length} kürzen, für die {preload} Vorspannung des Datenblatts.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>Type the spacer that was in while the sag was read, and the new one is said.</source>
      <translation>Die Distanzhülse eingeben, die beim Messen des Negativfederwegs im Holm war; dann steht hier die neue.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>The spacer of {length} that the sag asked for is in: read the sag again with it.</source>
      <translation>Die Distanzhülse von {length}, die der Negativfederweg verlangt hat, ist eingesetzt: Den Negativfederweg mit ihr neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>By the sag: new spacers of {length}, {was} and {size} more.</source>
      <translation>Nach dem Negativfederweg: neue Distanzhülsen von {length}, das sind {was} und {size} mehr.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>By the sag: new spacers of {length}, {was} less {size}.</source>
      <translation>Nach dem Negativfederweg: neue Distanzhülsen von {length}, das sind {was} weniger {size}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>The spacer as it was gave {size} of preload.</source>
      <translation>Die vorgefundene Distanzhülse ergab {size} Vorspannung.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>The spacer that went in gives {size} of preload.</source>
      <translation>Die eingesetzte Distanzhülse ergibt {size} Vorspannung.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>The sheet's spacer would give {size} of preload.</source>
      <translation>Die Distanzhülse des Datenblatts ergäbe {size} Vorspannung.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>At full travel {size} is left before the coils touch.</source>
      <translation>Bei vollem Federweg bleiben {size}, bis die Windungen anliegen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>The spacer of {size} that went in is not counted.</source>
      <translation>Die eingesetzte Distanzhülse von {size} ist nicht eingerechnet.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/spring_words.py" />
      <source>Still needed for what is left at full travel: {values}.</source>
      <translation>Für den Rest bei vollem Federweg fehlt noch: {values}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/stage.py" />
      <source>Each leg, in this order</source>
      <translation>Jeder Holm, in dieser Reihenfolge</translation>
    </message>
    <message>
      <location filename="aligner/window/build/stage.py" />
      <source>Go on to Align   Enter</source>
      <translation>Weiter zum Ausrichten   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/build/stage.py" />
      <source>air gaps to read again</source>
      <translation>Luftkammern neu zu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/build/stage.py" />
      <source>left</source>
      <comment>head of a column</comment>
      <translation>links</translation>
    </message>
    <message>
      <location filename="aligner/window/build/stage.py" />
      <source>right</source>
      <comment>head of a column</comment>
      <translation>rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/build/stage.py" />
      <source>untick: {step}</source>
      <translation>Haken entfernen: {step}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/steps_card.py" />
      <source>{step}, left leg</source>
      <translation>{step}, linker Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/steps_card.py" />
      <source>{step}, right leg</source>
      <translation>{step}, rechter Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/build/steps_card.py" />
      <source>{step}, ticked {when}</source>
      <translation>{step}, abgehakt {when}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/steps_card.py" />
      <source>ticked {when}</source>
      <translation>abgehakt {when}</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>the machine stands supported, its front wheel off the ground, and cannot roll or tip.</source>
      <translation>Das Motorrad steht abgestützt, das Vorderrad frei vom Boden, und kann weder rollen noch kippen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Spring out, leg fully compressed and upright: from the tube's top edge to the oil.</source>
      <translation>Feder heraus, Holm ganz eingefedert und senkrecht: von der Oberkante des Standrohrs bis zum Öl.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>{step}: left leg.</source>
      <translation>{step}: linker Holm.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>{step}: right leg.</source>
      <translation>{step}: rechter Holm.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>{step}: both legs.</source>
      <translation>{step}: beide Holme.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>{step}.</source>
      <translation>{step}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Read the air gap of the left leg.</source>
      <translation>Luftkammer des linken Holms messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Read the air gap of the right leg.</source>
      <translation>Luftkammer des rechten Holms messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Read the left leg's air gap again.</source>
      <translation>Luftkammer des linken Holms erneut messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Read the right leg's air gap again.</source>
      <translation>Luftkammer des rechten Holms erneut messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Read both air gaps again.</source>
      <translation>Beide Luftkammern erneut messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Pour {volume} into the left leg.</source>
      <translation>{volume} in den linken Holm einfüllen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Pour {volume} into the right leg.</source>
      <translation>{volume} in den rechten Holm einfüllen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Draw off {volume} from the left leg.</source>
      <translation>{volume} aus dem linken Holm absaugen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Draw off {volume} from the right leg.</source>
      <translation>{volume} aus dem rechten Holm absaugen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Draw {volume} off the left leg.</source>
      <translation>{volume} aus dem linken Holm absaugen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Draw {volume} off the right leg.</source>
      <translation>{volume} aus dem rechten Holm absaugen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Add {volume} to the left leg.</source>
      <translation>Dem linken Holm {volume} zugeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Add {volume} to the right leg.</source>
      <translation>Dem rechten Holm {volume} zugeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The left leg holds too little oil by {size} of level.</source>
      <translation>Im linken Holm steht das Öl um {size} zu niedrig.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The right leg holds too little oil by {size} of level.</source>
      <translation>Im rechten Holm steht das Öl um {size} zu niedrig.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The left leg holds too much oil by {size} of level.</source>
      <translation>Im linken Holm steht das Öl um {size} zu hoch.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The right leg holds too much oil by {size} of level.</source>
      <translation>Im rechten Holm steht das Öl um {size} zu hoch.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Next the alignment; the caps are done up in Tighten while the lower clamps hold.</source>
      <translation>Als Nächstes das Ausrichten; die Verschlussschrauben werden unter „Anziehen“ festgezogen, während die unteren Klemmungen halten.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The readings cannot tell, and no gauge on the list would: the gap is at its limit.</source>
      <translation>Die Messwerte entscheiden nicht, und kein Messmittel der Liste würde es: Die Luftkammer liegt am Grenzwert.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Not ticked yet: {steps}.</source>
      <translation>Noch nicht abgehakt: {steps}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Set the stem nut, then check again.</source>
      <translation>Einstellmutter einstellen, dann erneut prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>a cap is under spring pressure: support the machine, front wheel up, before it is opened.</source>
      <translation>Eine Verschlussschraube steht unter Federdruck: Motorrad abstützen, Vorderrad angehoben, bevor sie geöffnet wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The sag can be read once the machine stands on its wheels.</source>
      <translation>Der Negativfederweg lässt sich messen, sobald das Motorrad auf den Rädern steht.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The legs and the head bearing are built.</source>
      <translation>Holme und Lenkkopflager sind zusammengebaut.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The readings cannot tell yet.</source>
      <translation>Die Messwerte entscheiden noch nicht.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The readings cannot tell yet; {count} of each would.</source>
      <translation>Die Messwerte entscheiden noch nicht; je {count} würden entscheiden.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The readings cannot tell; the {gauge} would.</source>
      <translation>Die Messwerte entscheiden nicht; entscheiden würde: {gauge}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>To the manual's volume.</source>
      <translation>Auf die Ölmenge des Werkstatthandbuchs.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The sheet has no bore, so there are no millilitres; the suction tube set to {depth} finds the level without them.</source>
      <translation>Das Datenblatt nennt keine Bohrung, daher keine Milliliter; das auf {depth} eingestellte Absaugrohr findet den Ölstand ohne sie.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>It catches in the middle: marked races feel so. Look at them before it is set.</source>
      <translation>Es rastet in der Mitte ein: So fühlen sich Laufringe mit Eindrücken an. Vor dem Einstellen ansehen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>It has play: the stem nut a little tighter, then check again.</source>
      <translation>Es hat Spiel: Einstellmutter etwas fester, dann erneut prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>It drags: the stem nut a little slacker, then check again.</source>
      <translation>Es geht schwer: Einstellmutter etwas lockerer, dann erneut prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The sag is outside its band, and preload alone will not mend it.</source>
      <translation>Der Negativfederweg liegt außerhalb seines Bereichs, und Vorspannung allein behebt das nicht.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Give each leg {size} more preload.</source>
      <translation>Jedem Holm {size} mehr Vorspannung geben.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Give each leg {size} less preload.</source>
      <translation>Jedem Holm {size} weniger Vorspannung geben.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Each is within by itself; they are unlike by too much.</source>
      <translation>Jede für sich ist in der Toleranz; sie sind zu sehr verschieden.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>How far its scale may be out decides what the readings can tell.</source>
      <translation>Wie weit seine Skala falsch gehen kann, bestimmt, was die Messwerte aussagen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Then it is checked.</source>
      <translation>Danach wird geprüft.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Suction tube set to {depth} below the tube's top edge, drawn until air comes.</source>
      <translation>Absaugrohr auf {depth} unter der Oberkante des Standrohrs eingestellt, absaugen, bis Luft kommt.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Or add a little more, and draw off with the suction tube set to {depth}.</source>
      <translation>Oder etwas mehr zugeben und mit dem auf {depth} eingestellten Absaugrohr absaugen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Read the sag again.</source>
      <translation>Den Negativfederweg neu messen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>the values for the oil</source>
      <translation>die Werte für das Öl</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Missing on the sheet: {values}.</source>
      <translation>Im Datenblatt fehlt: {values}.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Take it from the maker's manual and type it at the foot of this page; it is never guessed here. What is read is kept meanwhile.</source>
      <translation>Dem Werkstatthandbuch des Herstellers entnehmen und unten auf dieser Seite eintragen; hier wird es nie geraten. Messwerte bleiben inzwischen erhalten.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>The sheet gives a volume and no air gap: enter what was poured in.</source>
      <translation>Das Datenblatt nennt eine Ölmenge und keine Luftkammer: eingefüllte Menge eintragen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Bring both air gaps to the same.</source>
      <translation>Beide Luftkammern auf das gleiche Maß bringen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Name the gauge the air gaps were read with.</source>
      <translation>Messmittel angeben, mit dem die Luftkammern gemessen wurden.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Steps of Tighten come before the stem nut.</source>
      <translation>Vor der Einstellmutter kommen Schritte aus „Anziehen“.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>It is step {number} there. Open Tighten, tick what stands before it, and come back.</source>
      <translation>Sie ist dort Schritt {number}. „Anziehen“ öffnen, abhaken, was davor steht, und zurückkommen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Check the head bearing.</source>
      <translation>Lenkkopflager prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Front wheel off the ground, hoses and cables free: pull square to the arm until the steering starts to turn, then let it fall to each side.</source>
      <translation>Vorderrad frei vom Boden, Schläuche und Züge frei: rechtwinklig zum Hebelarm ziehen, bis sich die Lenkung zu drehen beginnt, dann zu jeder Seite fallen lassen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>Set the head bearing again.</source>
      <translation>Lenkkopflager neu einstellen.</translation>
    </message>
    <message>
      <location filename="aligner/window/build/words.py" />
      <source>It turns too easily: the stem nut a little tighter, then check again.</source>
      <translation>Es dreht zu leicht: Einstellmutter etwas fester, dann erneut prüfen.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/autosave.py" />
      <source>No recovery copy can be written; save the job now and then. {why}.</source>
      <translation>Es lässt sich keine Sicherungskopie schreiben; den Auftrag ab und zu speichern. {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/autosave.py" />
      <source>Understood</source>
      <translation>Verstanden</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;New job</source>
      <translation>&amp;Neuer Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;Open...</source>
      <translation>Ö&amp;ffnen...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>Open &amp;recent</source>
      <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;Save</source>
      <translation>&amp;Speichern</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>Save &amp;as...</source>
      <translation>Speichern &amp;unter...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>Save a cop&amp;y...</source>
      <translation>&amp;Kopie speichern...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;Print the job card...</source>
      <translation>Auftragskarte &amp;drucken...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>Print pre&amp;view...</source>
      <translation>Druck&amp;vorschau...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>Job card as P&amp;DF...</source>
      <translation>Auftragskarte als &amp;PDF...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>Print the parts &amp;list...</source>
      <translation>&amp;Teileliste drucken...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;Bench list as PDF...</source>
      <translation>&amp;Werkbankliste als PDF...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;Tables as CSV...</source>
      <translation>Tabe&amp;llen als CSV...</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>&amp;Close</source>
      <translation>S&amp;chließen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/file_menu.py" />
      <source>nothing opened yet</source>
      <translation>noch nichts geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Update the program to work on it.</source>
      <translation>Zum Bearbeiten das Programm aktualisieren.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Save the job as</source>
      <translation>Auftrag speichern unter</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Save a copy as</source>
      <translation>Kopie speichern unter</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>A copy was saved as {file}.</source>
      <translation>Kopie gespeichert als {file}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>There are edits that are not saved.</source>
      <translation>Es gibt nicht gespeicherte Änderungen.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Both are kept. This one is now in {file}.</source>
      <translation>Beide bleiben erhalten. Dieser Auftrag steht jetzt in {file}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>{file} was not opened. It was made by a newer version of the program ({version}), and this one cannot make it out.</source>
      <translation>{file} wurde nicht geöffnet. Die Datei stammt von einer neueren Version des Programms ({version}), und diese kann sie nicht lesen.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>The job was saved as {file}, but without these photographs, which could not be copied: {photographs}.</source>
      <translation>Der Auftrag wurde als {file} gespeichert, aber ohne diese Fotos, die sich nicht kopieren ließen: {photographs}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Save first</source>
      <translation>Erst speichern</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Discard them</source>
      <translation>Verwerfen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Stay</source>
      <translation>Hierbleiben</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>The job was not saved; the edits are still here.</source>
      <translation>Der Auftrag wurde nicht gespeichert; die Änderungen sind noch hier.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Try again</source>
      <translation>Noch einmal versuchen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>Save under another name</source>
      <translation>Unter anderem Namen speichern</translation>
    </message>
    <message>
      <location filename="aligner/window/files/filing.py" />
      <source>The copy was not saved.</source>
      <translation>Die Kopie wurde nicht gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/job_dialogs.py" />
      <source>Open a job</source>
      <translation>Auftrag öffnen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/job_dialogs.py" />
      <source>Jobs</source>
      <comment>kind of file</comment>
      <translation>Aufträge</translation>
    </message>
    <message>
      <location filename="aligner/window/files/job_dialogs.py" />
      <source>{kind} documents</source>
      <translation>{kind}-Dokumente</translation>
    </message>
    <message>
      <location filename="aligner/window/files/newer_document.py" />
      <source>{file} was made by a newer version of the program ({version}) and is open to read only</source>
      <translation>{file} stammt von einer neueren Version des Programms ({version}) und ist nur zum Lesen geöffnet</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/files/newer_document.py" />
      <source>This version leaves out {count} fields that it does not know.</source>
      <extracomment>This version leaves out {count} field that it does not know.</extracomment>
      <translation>
        <numerusform>Diese Version lässt {count} Feld weg, das sie nicht kennt.</numerusform>
        <numerusform>Diese Version lässt {count} Felder weg, die sie nicht kennt.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The job card as a file</source>
      <translation>Auftragskarte als Datei</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The job card was saved as {files} in {folder}.</source>
      <translation>Die Auftragskarte wurde als {files} in {folder} gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The job card was not saved.</source>
      <translation>Die Auftragskarte wurde nicht gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The bench list as a file</source>
      <translation>Werkbankliste als Datei</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The bench list was saved as {files} in {folder}.</source>
      <translation>Die Werkbankliste wurde als {files} in {folder} gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The bench list was not saved.</source>
      <translation>Die Werkbankliste wurde nicht gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The tables as files</source>
      <translation>Tabellen als Dateien</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The tables were saved as {files} in {folder}.</source>
      <translation>Die Tabellen wurden als {files} in {folder} gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The tables were not saved.</source>
      <translation>Die Tabellen wurden nicht gespeichert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The job card, as it will be printed</source>
      <translation>Die Auftragskarte, wie sie gedruckt wird</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>card</source>
      <comment>end of a file's name</comment>
      <translation>Auftragskarte</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>bench list</source>
      <comment>end of a file's name</comment>
      <translation>Werkbankliste</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The job card was not printed: {why}.</source>
      <translation>Die Auftragskarte wurde nicht gedruckt: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>The bench list is not part of this installation.</source>
      <translation>Die Werkbankliste gehört nicht zu dieser Installation.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/printing.py" />
      <source>Printing is not part of this installation; save the job card as PDF instead.</source>
      <translation>Drucken gehört nicht zu dieser Installation; die Auftragskarte stattdessen als PDF speichern.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Edits of {file} that were not saved were found, of {at}.</source>
      <translation>Nicht gespeicherte Änderungen an {file} gefunden, vom {at}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Drop the copy for good? What it holds beyond the file is then lost.</source>
      <translation>Die Kopie endgültig verwerfen? Was sie über die Datei hinaus enthält, ist dann verloren.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>A job that was never saved was found, of {at}.</source>
      <translation>Ein nie gespeicherter Auftrag gefunden, vom {at}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>A damaged copy of unsaved edits was found, of {at}: {file}.</source>
      <translation>Eine beschädigte Kopie nicht gespeicherter Änderungen gefunden, vom {at}: {file}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>The file is as it was.</source>
      <translation>Die Datei ist unverändert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>The file is changed since by another program.</source>
      <translation>Die Datei wurde seitdem von einem anderen Programm geändert.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>The file is not there any more.</source>
      <translation>Die Datei ist nicht mehr da.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>The file is there, but it cannot be read.</source>
      <translation>Die Datei ist da, aber nicht lesbar.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Later</source>
      <translation>Später</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Drop the copy</source>
      <translation>Kopie verwerfen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Another window has taken that copy meanwhile.</source>
      <translation>Ein anderes Fenster hat diese Kopie inzwischen übernommen.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>It cannot be read: {why}.</source>
      <translation>Sie ist nicht lesbar: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>and {count} more</source>
      <translation>und {count} weitere</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>What differs: {changes}.</source>
      <translation>Unterschiede: {changes}.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Open the copy</source>
      <translation>Kopie öffnen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Keep it</source>
      <translation>Behalten</translation>
    </message>
    <message>
      <location filename="aligner/window/files/recovery_offer.py" />
      <source>Drop it for good</source>
      <translation>Endgültig verwerfen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} is open for {who}</source>
      <translation>{file} ist von {who} geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>It is open here to read.</source>
      <translation>Hier ist die Datei nur zum Lesen geöffnet.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>What is changed here stays in this window and is not written to that file.</source>
      <translation>Was hier geändert wird, bleibt in diesem Fenster und wird nicht in diese Datei geschrieben.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} was left open by {who}, which does not run any more</source>
      <translation>{file} wurde von {who} offen gelassen; das Programm dort läuft nicht mehr</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} is open for {who} since {since}</source>
      <translation>{file} ist seit {since} von {who} geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} was changed by another program. Your edits are still here; saving will ask what becomes of both.</source>
      <translation>{file} wurde von einem anderen Programm geändert. Die eigenen Änderungen sind noch hier; beim Speichern wird gefragt, was aus beiden wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} was changed by another program since it was opened here.</source>
      <translation>{file} wurde von einem anderen Programm geändert, seit die Datei hier geöffnet wurde.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} is not there any more (is its drive plugged in?). The job is still whole in this window.</source>
      <translation>{file} ist nicht mehr da (ist das Laufwerk angeschlossen?). Der Auftrag ist in diesem Fenster noch vollständig.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>{file} was left open by {who} since {since}, which does not run any more</source>
      <translation>{file} wurde von {who} offen gelassen (seit {since}); das Programm dort läuft nicht mehr</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Only read</source>
      <translation>Nur lesen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Take it over</source>
      <translation>Übernehmen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Save it there anew</source>
      <translation>Dort neu speichern</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Replace theirs with mine</source>
      <translation>Andere durch diese Fassung ersetzen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Keep both</source>
      <translation>Beide behalten</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>The job was not saved there; the edits are still here.</source>
      <translation>Der Auftrag wurde dort nicht gespeichert; die Änderungen sind noch hier.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Choose another name.</source>
      <translation>Anderen Namen wählen.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Another program has taken the job over.</source>
      <translation>Ein anderes Programm hat den Auftrag übernommen.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>What is typed here stays here.</source>
      <translation>Was hier eingegeben ist, bleibt hier.</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Open it as it is now</source>
      <translation>Jetzigen Stand öffnen</translation>
    </message>
    <message>
      <location filename="aligner/window/files/shared_document.py" />
      <source>Stay with this</source>
      <translation>Bei diesem Stand bleiben</translation>
    </message>
    <message>
      <location filename="aligner/window/history/model.py" />
      <source>Job</source>
      <translation>Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/history/model.py" />
      <source>Last day</source>
      <translation>Letzter Tag</translation>
    </message>
    <message>
      <location filename="aligner/window/history/model.py" />
      <source>State</source>
      <translation>Stand</translation>
    </message>
    <message>
      <location filename="aligner/window/history/model.py" />
      <source>Due</source>
      <translation>Fällig</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>{in_hand} in hand, {due} signed with checks due.</source>
      <translation>{in_hand} in Arbeit, {due} freigegeben mit fälliger Nachkontrolle.</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>Folder of the jobs</source>
      <translation>Ordner der Aufträge</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>search the jobs</source>
      <translation>Aufträge durchsuchen</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>search: bike, job, day or what is due</source>
      <translation>suchen: Motorrad, Auftrag, Tag oder Fälliges</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>Another folder...</source>
      <translation>Anderer Ordner...</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>jobs</source>
      <translation>Aufträge</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>Next job on this bike</source>
      <translation>Nächster Auftrag am selben Motorrad</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>Open   Enter</source>
      <translation>Öffnen   Enter</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/history/page.py" />
      <source>{count} jobs so far.</source>
      <extracomment>{count} jobs so far.</extracomment>
      <translation>
        <numerusform>Bisher {count} Auftrag.</numerusform>
        <numerusform>Bisher {count} Aufträge.</numerusform>
      </translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/history/page.py" />
      <source>{count} jobs.</source>
      <extracomment>{count} job.</extracomment>
      <translation>
        <numerusform>{count} Auftrag.</numerusform>
        <numerusform>{count} Aufträge.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>in {folder}</source>
      <translation>in {folder}</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>The folder is being read.</source>
      <translation>Der Ordner wird gelesen.</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>No jobs in this folder yet.</source>
      <translation>Noch keine Aufträge in diesem Ordner.</translation>
    </message>
    <message>
      <location filename="aligner/window/history/page.py" />
      <source>A job that is saved here stands on this list.</source>
      <translation>Ein hier gespeicherter Auftrag steht auf dieser Liste.</translation>
    </message>
    <message>
      <location filename="aligner/window/history/settings_card.py" />
      <source>nothing was set in its jobs yet</source>
      <translation>in seinen Aufträgen noch nichts eingestellt</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/history/settings_card.py" />
      <source>what was set in {count} jobs</source>
      <extracomment>what was set in {count} job</extracomment>
      <translation>
        <numerusform>eingestellt in {count} Auftrag</numerusform>
        <numerusform>eingestellt in {count} Aufträgen</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/carried.py" />
      <source>history: {values}</source>
      <translation>Verlauf: {values}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/carried.py" />
      <source>From earlier jobs</source>
      <translation>Aus früheren Aufträgen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/choice.py" />
      <source>{finding}, key {number}</source>
      <translation>{finding}, Taste {number}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/doors.py" />
      <source>new part fitted</source>
      <translation>Neuteil eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/doors.py" />
      <source>new part not fitted</source>
      <translation>Neuteil nicht eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/doors.py" />
      <source>photograph taken off</source>
      <translation>Foto entfernt</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/doors.py" />
      <source>finding taken back</source>
      <translation>Befund zurückgenommen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/doors.py" />
      <source>photograph</source>
      <translation>Foto</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>indicated</source>
      <translation>angezeigt</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>of the bend</source>
      <translation>Verbiegung</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>{point}: limit</source>
      <translation>{point}: Grenzwert</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>limit, {unit}</source>
      <translation>Wert, {unit}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>{point}: the limit is printed for</source>
      <translation>{point}: Grenzwert gedruckt als</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>{point}: source of the limit</source>
      <translation>{point}: Quelle des Grenzwerts</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>its source: manual, page</source>
      <translation>Quelle: Werkstatthandbuch, Seite</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>At most</source>
      <translation>Höchstens</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/limit.py" />
      <source>At least</source>
      <translation>Mindestens</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/list.py" />
      <source>what to look at</source>
      <translation>was zu prüfen ist</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/list.py" />
      <source>In the middle</source>
      <translation>In der Mitte</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/list.py" />
      <source>To order</source>
      <translation>Zu bestellen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/list.py" />
      <source>Parts list</source>
      <translation>Teileliste</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/number.py" />
      <source>{point}: gauge</source>
      <translation>{point}: Messmittel</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/number.py" />
      <source>With</source>
      <comment>a gauge</comment>
      <translation>Mit</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/panel.py" />
      <source>Source: {source}</source>
      <translation>Quelle: {source}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/panel.py" />
      <source>It measures out and is marked good; the note says why.</source>
      <translation>Misst außerhalb und ist als gut markiert; die Notiz sagt, warum.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/panel.py" />
      <source>New part fitted</source>
      <translation>Neuteil eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/panel.py" />
      <source>{point}: new part fitted</source>
      <translation>{point}: Neuteil eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/panel.py" />
      <source>{point}: note</source>
      <translation>{point}: Notiz</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/panel.py" />
      <source>what was seen</source>
      <translation>was zu sehen war</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>part</source>
      <translation>Teil</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>count</source>
      <translation>Anzahl</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>where</source>
      <translation>wo</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>why</source>
      <translation>warum</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>Nothing so far</source>
      <translation>Bisher nichts</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>parts list</source>
      <translation>Teileliste</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>Copy the list</source>
      <translation>Liste kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>Copy the parts list to the clipboard</source>
      <translation>Teileliste in die Zwischenablage kopieren</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>Copied: paste it where it is wanted.</source>
      <translation>Kopiert: einfügen, wo sie gebraucht wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/parts.py" />
      <source>Nothing left: every new part is fitted</source>
      <translation>Nichts mehr offen: Jedes Neuteil ist eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Photographs ({endings})</source>
      <translation>Fotos ({endings})</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Enter opens it, Delete takes it off</source>
      <translation>Enter öffnet es, Entf entfernt es</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>missing</source>
      <comment>a photograph</comment>
      <translation>fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Add a photograph</source>
      <translation>Foto hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>or drop it here</source>
      <translation>oder hier ablegen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Save the job</source>
      <translation>Auftrag speichern</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Save the job first: photographs are kept beside its file.</source>
      <translation>Zuerst den Auftrag speichern: Fotos liegen neben seiner Datei.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>These {count} are added then.</source>
      <extracomment>This one is added then.</extracomment>
      <translation>
        <numerusform>Dieses wird dann hinzugefügt.</numerusform>
        <numerusform>Diese {count} werden dann hinzugefügt.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Add photographs</source>
      <translation>Fotos hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>photograph {number}: {name}</source>
      <translation>Foto {number}: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>photograph {number}, file missing: {name}</source>
      <translation>Foto {number}, Datei fehlt: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_strip.py" />
      <source>Not added.</source>
      <translation>Nicht hinzugefügt.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_view.py" />
      <source>{number} of {total}: {name}</source>
      <translation>{number} von {total}: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_view.py" />
      <source>{name} is missing, or cannot be read</source>
      <translation>{name} fehlt oder ist nicht lesbar</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_view.py" />
      <source>photograph {caption}</source>
      <translation>Foto {caption}</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/photograph_view.py" />
      <source>Escape goes back.</source>
      <translation>Esc führt zurück.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/stage.py" />
      <source>Next   Enter</source>
      <translation>Weiter   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/stage.py" />
      <source>Go on to Build   Enter</source>
      <translation>Weiter zum Zusammenbau   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>Look at the {name}.</source>
      <translation>Ansehen: {name}.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>Measure the {name}.</source>
      <translation>Messen: {name}.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>{done} of {total} looked at</source>
      <translation>{done} von {total} geprüft</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>Next: {title}.</source>
      <translation>Als Nächstes: {title}.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>All looked at, nothing left to fit.</source>
      <translation>Alles geprüft, nichts mehr einzubauen.</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>fitted</source>
      <comment>a new part</comment>
      <translation>eingebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>watch last time</source>
      <translation>zuletzt: beobachten</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>good</source>
      <comment>a part</comment>
      <translation>gut</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>watch</source>
      <comment>a part</comment>
      <translation>beobachten</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>replace</source>
      <comment>a part</comment>
      <translation>ersetzen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>{count} to replace</source>
      <translation>{count} zu ersetzen</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>{count} to watch</source>
      <translation>{count} zu beobachten</translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>The parts list, so far.</source>
      <translation>Die Teileliste bisher.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/inspect/words.py" />
      <source>All looked at. {count} parts are still to be fitted.</source>
      <extracomment>All looked at. One part is still to be fitted.</extracomment>
      <translation>
        <numerusform>Alles geprüft. Ein Teil ist noch einzubauen.</numerusform>
        <numerusform>Alles geprüft. {count} Teile sind noch einzubauen.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/inspect/words.py" />
      <source>Tick “new part fitted” on its point once the new one is in.</source>
      <translation>„Neuteil eingebaut“ am Prüfpunkt abhaken, sobald das neue Teil eingebaut ist.</translation>
    </message>
    <message>
      <location filename="aligner/window/kept_words.py" />
      <source>saved in {file}</source>
      <translation>gespeichert in {file}</translation>
    </message>
    <message>
      <location filename="aligner/window/kept_words.py" />
      <source>edits not saved</source>
      <translation>Änderungen nicht gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/window/kept_words.py" />
      <source>open to read</source>
      <translation>nur zum Lesen geöffnet</translation>
    </message>
    <message>
      <location filename="aligner/window/kept_words.py" />
      <source>not saved in a file yet</source>
      <translation>noch in keiner Datei gespeichert</translation>
    </message>
    <message>
      <location filename="aligner/window/kept_words.py" />
      <source>new job</source>
      <translation>neuer Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/kept_words.py" />
      <source>to read</source>
      <translation>nur lesen</translation>
    </message>
    <message>
      <location filename="aligner/window/main_window.py" />
      <source>&amp;File</source>
      <translation>&amp;Datei</translation>
    </message>
    <message>
      <location filename="aligner/window/manual_page.py" />
      <source>page of the manual</source>
      <translation>Seite des Handbuchs</translation>
    </message>
    <message>
      <location filename="aligner/window/manual_page.py" />
      <source>pages of the manual</source>
      <translation>Seiten des Handbuchs</translation>
    </message>
    <message>
      <location filename="aligner/window/manual_page.py" />
      <source>The manual.</source>
      <translation>Das Handbuch.</translation>
    </message>
    <message>
      <location filename="aligner/window/manual_page.py" />
      <source>Escape goes back to the job. The maker's manual comes first.</source>
      <translation>Esc führt zurück zum Auftrag. Das Werkstatthandbuch des Herstellers hat Vorrang.</translation>
    </message>
    <message>
      <location filename="aligner/window/measuring/card.py" />
      <source>Enough   Shift+F1</source>
      <translation>Genug   Umschalt+F1</translation>
    </message>
    <message>
      <location filename="aligner/window/measuring/card.py" />
      <source>How to measure</source>
      <translation>So wird gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/measuring/card.py" />
      <source>Put the keyboard in the box of a reading: this shows how it is taken.</source>
      <translation>In das Feld eines Messwerts gehen: Hier steht dann, wie er gemessen wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;Edit</source>
      <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>Undo</source>
      <comment>menu</comment>
      <translation>Rückgängig</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>Redo</source>
      <comment>menu</comment>
      <translation>Wiederholen</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>Answer the &amp;question</source>
      <translation>&amp;Frage beantworten</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;Stage</source>
      <translation>Ab&amp;schnitt</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;View</source>
      <translation>&amp;Ansicht</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>All &amp;jobs</source>
      <translation>Alle A&amp;ufträge</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;Bench view</source>
      <translation>&amp;Werkbankansicht</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;Preferences</source>
      <translation>&amp;Einstellungen</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;Help</source>
      <translation>&amp;Hilfe</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>&amp;Manual</source>
      <translation>&amp;Handbuch</translation>
    </message>
    <message>
      <location filename="aligner/window/menus.py" />
      <source>How to measure &amp;this</source>
      <translation>&amp;So wird gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/open_job.py" />
      <source>recovered edits</source>
      <translation>wiederhergestellte Änderungen</translation>
    </message>
    <message>
      <location filename="aligner/window/open_job.py" />
      <source>what was typed</source>
      <translation>Eingabe</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Look</source>
      <translation>Darstellung</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Size of text</source>
      <translation>Schriftgröße</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Lengths in</source>
      <translation>Längen in</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Torques in</source>
      <translation>Drehmomente in</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Volumes in</source>
      <translation>Volumen in</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Sound at a tick</source>
      <translation>Ton beim Abhaken</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Language</source>
      <translation>Sprache</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>as the desktop has it</source>
      <translation>wie im Betriebssystem</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>light</source>
      <translation>hell</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>dark</source>
      <translation>dunkel</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>high contrast</source>
      <translation>hoher Kontrast</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>millimetres (mm)</source>
      <translation>Millimeter (mm)</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>inches (in)</source>
      <translation>Zoll (in)</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>newton metres (N·m)</source>
      <translation>Newtonmeter (N·m)</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>pounds-force feet (lbf·ft)</source>
      <translation>Foot-pound (lbf·ft)</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>kilograms-force metres (kgf·m)</source>
      <translation>Kilopondmeter (kgf·m)</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>millilitres (ml)</source>
      <translation>Milliliter (ml)</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>US fluid ounces</source>
      <translation>US-Flüssigunzen</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>imperial fluid ounces</source>
      <translation>britische Flüssigunzen</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Back to the job   Enter</source>
      <translation>Zurück zum Auftrag   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Preferences.</source>
      <translation>Einstellungen.</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Each choice takes effect at once, on this machine.</source>
      <translation>Jede Auswahl wirkt sofort, auf diesem Rechner.</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>a short one</source>
      <comment>sound</comment>
      <translation>ein kurzer</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>none</source>
      <comment>sound</comment>
      <translation>keiner</translation>
    </message>
    <message>
      <location filename="aligner/window/preferences_page.py" />
      <source>Any unit may be typed, whatever is chosen here.</source>
      <translation>Eingegeben werden darf jede Einheit, was auch immer hier gewählt ist.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/check_row.py" />
      <source>Note on: {name}</source>
      <translation>Notiz zu: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/check_row.py" />
      <source>what was noticed</source>
      <translation>was auffiel</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/job_summary.py" />
      <source>{done} of {total} steps ticked</source>
      <translation>{done} von {total} Schritten abgehakt</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/job_summary.py" />
      <source>step {number}, {title}</source>
      <translation>Schritt {number}, {title}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/job_summary.py" />
      <source>tightening</source>
      <translation>Anziehen</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/job_summary.py" />
      <source>out of order</source>
      <translation>außer der Reihe</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>Checked again on the road</source>
      <translation>Nachkontrolle nach Fahrstrecke</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>fasteners checked again on the road</source>
      <translation>Verschraubungen zur Nachkontrolle nach Fahrstrecke</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>to check again: {title}</source>
      <translation>wieder nachzukontrollieren: {title}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>{done} of {total} checked again. Set the wrench and see whether anything moves.</source>
      <translation>{done} von {total} nachkontrolliert. Drehmomentschlüssel einstellen und sehen, ob sich etwas bewegt.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>The sheet asks for no fastener to be checked again. On the Bike stage, open a fastener and give a distance under “again after, on the road”.</source>
      <translation>Das Datenblatt verlangt für keine Verschraubung eine Nachkontrolle. Unter „Motorrad“ eine Verschraubung aufklappen und bei „erneut nach Fahrstrecke“ die Strecke angeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>checked again: {title}</source>
      <translation>nachkontrolliert: {title}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_card.py" />
      <source>Not ticked. {why}.</source>
      <translation>Nicht abgehakt. {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Checked {at}.</source>
      <translation>Kontrolliert {at}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Checked {at}, {torque} seen on {wrench}.</source>
      <translation>Kontrolliert {at}, {torque} abgelesen, {wrench}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Checked {at}, {torque} seen.</source>
      <translation>Kontrolliert {at}, {torque} abgelesen.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Checked {at} on {wrench}.</source>
      <translation>Kontrolliert {at}, {wrench}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>value seen on the wrench</source>
      <translation>am Drehmomentschlüssel abgelesener Wert</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>value seen</source>
      <translation>abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>value seen on {title}</source>
      <translation>abgelesener Wert: {title}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>The torque is missing: take it from the maker's manual.</source>
      <translation>Drehmoment fehlt: dem Werkstatthandbuch des Herstellers entnehmen.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Set {setting} on the {wrench}.</source>
      <translation>{setting} einstellen: {wrench}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Type the value seen.</source>
      <translation>Abgelesenen Wert eingeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Not understood: {why}.</source>
      <translation>Nicht verstanden: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/recheck_row.py" />
      <source>Type it over, or Enter once more to keep it.</source>
      <translation>Neu eingeben, oder noch einmal Enter zum Übernehmen.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>Name for the sign-off</source>
      <translation>Name für die Freigabe</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>name of who did the work</source>
      <translation>Name des Ausführenden</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>Sign off</source>
      <translation>Freigeben</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>Open again</source>
      <translation>Wieder öffnen</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>on {day}</source>
      <translation>am {day}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>It cannot be signed off yet: {why}.</source>
      <translation>Freigabe noch nicht möglich: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>Nobody signs yet: give the name of who did the work.</source>
      <translation>Noch gibt niemand frei: Namen des Ausführenden angeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>Signed off by {name} on {day}</source>
      <translation>Freigegeben von {name} am {day}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/sign_off_card.py" />
      <source>It no longer holds: {why}. Open it again.</source>
      <translation>Freigabe gilt nicht mehr: {why}. Wieder öffnen.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>The job card is printed from the File menu; the next job on this bike begins under All jobs.</source>
      <translation>Die Auftragskarte wird über das Menü „Datei“ gedruckt; der nächste Auftrag am selben Motorrad beginnt unter „Alle Aufträge“.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Signed off by {name} on {day}.</source>
      <translation>Freigegeben von {name} am {day}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>After {distance}: {title}.</source>
      <translation>Nach {distance}: {title}.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/prove/stage.py" />
      <source>{count} fasteners are still to be checked again.</source>
      <extracomment>{count} fastener is still to be checked again.</extracomment>
      <translation>
        <numerusform>{count} Verschraubung ist noch nachzukontrollieren.</numerusform>
        <numerusform>{count} Verschraubungen sind noch nachzukontrollieren.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>{done} of {total} steps</source>
      <translation>{done} von {total} Schritten</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>where, how far, what was felt, what was changed after it</source>
      <translation>wo, wie weit, was zu spüren war, was danach geändert wurde</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Final checks and sign-off</source>
      <translation>Endkontrolle und Freigabe</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Final checks, brakes first</source>
      <translation>Endkontrolle, Bremsen zuerst</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Ready to sign off.</source>
      <translation>Bereit zur Freigabe.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Every check is done and every step of the list is ticked.</source>
      <translation>Jede Kontrolle ist erledigt und jeder Schritt der Liste abgehakt.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Every step of the list ticked: {how_far}</source>
      <translation>Jeder Schritt der Liste abgehakt: {how_far}</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>it has no steps yet</source>
      <translation>sie hat noch keine Schritte</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>open again</source>
      <translation>wieder öffnen</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Finish the tightening list first.</source>
      <translation>Zuerst die Anziehliste abschließen.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Next check: {name}.</source>
      <translation>Nächste Kontrolle: {name}.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Not ready to sign off.</source>
      <translation>Noch nicht bereit zur Freigabe.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>The sign-off does not hold any more.</source>
      <translation>Die Freigabe gilt nicht mehr.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Signed off.</source>
      <translation>Freigegeben.</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/prove/stage.py" />
      <source>{count} parts to replace not fitted yet (see Inspect)</source>
      <extracomment>{count} part to replace not fitted yet (see Inspect)</extracomment>
      <translation>
        <numerusform>{count} zu ersetzendes Teil noch nicht eingebaut (siehe „Prüfen“)</numerusform>
        <numerusform>{count} zu ersetzende Teile noch nicht eingebaut (siehe „Prüfen“)</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>not back on the bike yet: {parts} (see Strip)</source>
      <translation>noch nicht wieder am Motorrad: {parts} (siehe „Zerlegen“)</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/prove/stage.py" />
      <source>{count} final checks are open, the first: {first}</source>
      <extracomment>one final check is open: {first}</extracomment>
      <translation>
        <numerusform>eine Endkontrolle ist offen: {first}</numerusform>
        <numerusform>{count} Endkontrollen sind offen, die erste: {first}</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>the list is open ({how_far})</source>
      <translation>die Liste ist offen ({how_far})</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>final check</source>
      <translation>Endkontrolle</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>final check opened</source>
      <translation>Endkontrolle wieder offen</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>The job</source>
      <translation>Der Auftrag</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>The checks can be begun meanwhile.</source>
      <translation>Die Kontrollen können inzwischen begonnen werden.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>Open it again, and finish it.</source>
      <translation>Wieder öffnen und abschließen.</translation>
    </message>
    <message>
      <location filename="aligner/window/prove/stage.py" />
      <source>and</source>
      <comment>between clauses</comment>
      <translation>und</translation>
    </message>
    <message>
      <location filename="aligner/window/stage_list.py" />
      <source>waits</source>
      <translation>wartet</translation>
    </message>
    <message>
      <location filename="aligner/window/stage_list.py" />
      <source>on the screen, {state}</source>
      <translation>auf dem Bildschirm, {state}</translation>
    </message>
    <message>
      <location filename="aligner/window/stage_list.py" />
      <source>Unnamed bike</source>
      <translation>Motorrad ohne Namen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/bolt_card.py" />
      <source>Where, seen from the seat</source>
      <translation>Wo, vom Sitz aus gesehen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/bolt_card.py" />
      <source>nothing left to do</source>
      <translation>nichts mehr zu tun</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_offer.py" />
      <source>Done   Space</source>
      <translation>Erledigt   Leertaste</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_offer.py" />
      <source>Go on to Prove   Enter</source>
      <translation>Weiter zur Probefahrt   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_offer.py" />
      <source>Untick   Space</source>
      <translation>Haken entfernen   Leertaste</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_offer.py" />
      <source>Passed   Space twice</source>
      <translation>Bestanden   2 × Leertaste</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>Seen</source>
      <comment>before a value</comment>
      <translation>Abgelesen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>on</source>
      <comment>before a wrench</comment>
      <translation>mit</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>wrench used</source>
      <translation>benutzter Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>reason, then Enter</source>
      <translation>Grund, dann Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>Read the heights again</source>
      <translation>Überstände neu messen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>&amp;Wrenches</source>
      <translation>&amp;Schlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>type it here</source>
      <translation>hier eintragen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/door_row.py" />
      <source>Go to Align</source>
      <translation>Zum Ausrichten</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/pass_marks.py" />
      <source>passes, {marks}</source>
      <translation>Durchgänge, {marks}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/seen_value.py" />
      <source>{seen} is far over {wanted}.</source>
      <translation>{seen} liegt weit über {wanted}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/seen_value.py" />
      <source>{seen} is far under {wanted}.</source>
      <translation>{seen} liegt weit unter {wanted}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/seen_value.py" />
      <source>{seen}, which is {converted}, is far over {wanted}.</source>
      <translation>{seen}, das sind {converted}, liegt weit über {wanted}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/seen_value.py" />
      <source>{seen}, which is {converted}, is far under {wanted}.</source>
      <translation>{seen}, das sind {converted}, liegt weit unter {wanted}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/seen_value.py" />
      <source>Is it {torque}?</source>
      <translation>Sind es {torque}?</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_lines.py" />
      <source>{joint}, bolts {numbers}</source>
      <translation>{joint}, Schrauben {numbers}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_lines.py" />
      <source>{done} of {all} passes done</source>
      <translation>{done} von {all} Durchgängen erledigt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_lines.py" />
      <source>{count} done</source>
      <translation>{count} erledigt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_lines.py" />
      <source>{title}: all {count} steps done, folded</source>
      <translation>{title}: alle {count} Schritte erledigt, zugeklappt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_lines.py" />
      <source>{name}s</source>
      <comment>more than one</comment>
      <translation>{name}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_list.py" />
      <source>tightening list</source>
      <translation>Anziehliste</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>thread dry</source>
      <translation>Gewinde trocken</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>thread oiled</source>
      <translation>Gewinde geölt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>thread greased</source>
      <translation>Gewinde gefettet</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>thread locked</source>
      <translation>Gewinde mit Schraubensicherung</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>1 turn back</source>
      <translation>1 Umdrehung zurück</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>½ turn back</source>
      <translation>½ Umdrehung zurück</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>¼ turn back</source>
      <translation>¼ Umdrehung zurück</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>⅛ turn back</source>
      <translation>⅛ Umdrehung zurück</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>to come</source>
      <comment>step</comment>
      <translation>kommt noch</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>{angle} back</source>
      <translation>{angle} zurück</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Bolts {numbers} in turn</source>
      <translation>Schrauben {numbers} nacheinander</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>In hand is step {number}, {title}: Escape goes back to it.</source>
      <translation>In Arbeit ist Schritt {number}, {title}: Esc führt dorthin zurück.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>do this</source>
      <translation>ausführen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>look</source>
      <comment>kind of step</comment>
      <translation>ansehen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>hold point</source>
      <translation>Haltepunkt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>seat</source>
      <comment>kind of step</comment>
      <translation>setzen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>turn</source>
      <comment>kind of step</comment>
      <translation>drehen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>tighten</source>
      <comment>kind of step</comment>
      <translation>anziehen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>loosen</source>
      <comment>kind of step</comment>
      <translation>lösen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>done</source>
      <comment>step</comment>
      <translation>erledigt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>in hand</source>
      <comment>step</comment>
      <translation>in Arbeit</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Torque missing</source>
      <translation>Drehmoment fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>torque missing</source>
      <translation>Drehmoment fehlt</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>pass {number}</source>
      <translation>Durchgang {number}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Step {number}, done.</source>
      <translation>Schritt {number}, erledigt.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Step {number}, not its turn yet.</source>
      <translation>Schritt {number}, noch nicht an der Reihe.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Done {at}, {torque} seen on {wrench}.</source>
      <translation>Erledigt {at}, {torque} abgelesen, {wrench}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Opened again {at} because: {reason}.</source>
      <translation>Wieder geöffnet {at}, Grund: {reason}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Unticked {at} because: {reason}.</source>
      <translation>Haken entfernt {at}, Grund: {reason}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>take it from the maker's manual and give it on the Bike stage, or type it below for this step alone; it is never guessed</source>
      <translation>dem Werkstatthandbuch des Herstellers entnehmen und unter „Motorrad“ angeben oder unten nur für diesen Schritt eintragen; es wird nie geraten</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Done {at}, {torque} seen.</source>
      <translation>Erledigt {at}, {torque} abgelesen.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>{share}% of the torque</source>
      <translation>{share} % des Drehmoments</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Done {at} on {wrench}.</source>
      <translation>Erledigt {at}, {wrench}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Done {at}.</source>
      <translation>Erledigt {at}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Out of order because: {reason}.</source>
      <translation>Außer der Reihe, Grund: {reason}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>printed as {torque}</source>
      <translation>gedruckt als {torque}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/step_words.py" />
      <source>Cannot pass: {reason}.</source>
      <translation>Kann nicht als bestanden gelten: {reason}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>Hold point: press Space once more to pass it, or keep it held. Look first.</source>
      <translation>Haltepunkt: Leertaste noch einmal drücken, damit er als bestanden gilt, oder gedrückt halten. Erst hinsehen.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>Nothing was done: this step takes no reading.</source>
      <translation>Nichts getan: Dieser Schritt nimmt keinen Messwert auf.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>Why is it unticked? Both entries stay in the log. Undo takes a mistaken tick back alone.</source>
      <translation>Warum wird der Haken entfernt? Beide Einträge bleiben im Protokoll. Rückgängig nimmt einen Fehlhaken zurück und öffnet sonst nichts.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>Out of order: say why. The reason is kept with the job.</source>
      <translation>Außer der Reihe: Grund angeben. Er bleibt beim Auftrag.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>Nothing was done: write a reason, or Escape to leave it.</source>
      <translation>Nichts geschehen: Grund eintragen, oder Esc, um es zu lassen.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>It cannot pass: {reason}. To go on all the same, say why.</source>
      <translation>Kann nicht als bestanden gelten: {reason}. Um trotzdem weiterzugehen, den Grund angeben.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>The value seen was not understood: {refusal}.</source>
      <translation>Der abgelesene Wert wurde nicht verstanden: {refusal}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>The torque is missing: type the one from the maker's manual.</source>
      <translation>Das Drehmoment fehlt: das aus dem Werkstatthandbuch des Herstellers eintragen.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tick_door.py" />
      <source>Type it over, or write the reason why it is kept.</source>
      <translation>Neu eintragen, oder den Grund angeben, aus dem er bleibt.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>Set {setting}</source>
      <translation>{setting} einstellen</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>on the {wrench}</source>
      <translation>Drehmomentschlüssel: {wrench}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>Delivers {span}, not inside {limits}.</source>
      <translation>Liefert {span}, nicht innerhalb von {limits}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>No wrench on the list: open Wrenches to have the setting worked out.</source>
      <translation>Kein Drehmomentschlüssel auf der Liste: „Schlüssel“ öffnen, damit der Einstellwert berechnet wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>No wrench at hand can do this.</source>
      <translation>Kein vorhandener Drehmomentschlüssel kann das.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>The {wrench} cannot be set to this.</source>
      <translation>{wrench}: darauf nicht einstellbar.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>Delivers {span}; a part pass has no limits.</source>
      <translation>Liefert {span}; ein Teildurchgang hat keine Grenzwerte.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>Delivers {span}; the manual gives one value and no tolerance.</source>
      <translation>Liefert {span}; das Werkstatthandbuch gibt einen Wert und keine Toleranz an.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>Delivers {span}, inside {limits}.</source>
      <translation>Liefert {span}, innerhalb von {limits}.</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>on the {wrench} with the {adapter}</source>
      <translation>Drehmomentschlüssel: {wrench}, Aufsatz: {adapter}</translation>
    </message>
    <message>
      <location filename="aligner/window/steps/tool_words.py" />
      <source>The {wrench} with the {adapter} cannot be set to this.</source>
      <translation>{wrench} mit {adapter}: darauf nicht einstellbar.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>rings showing, clicks, or a length</source>
      <translation>sichtbare Ringe, Klicks oder ein Maß</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>static sag {size}</source>
      <translation>statischer Negativfederweg {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>rider sag {size}</source>
      <translation>Negativfederweg mit Fahrer {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>look of the left leg's oil</source>
      <translation>Aussehen des Öls, linker Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>look of the right leg's oil</source>
      <translation>Aussehen des Öls, rechter Holm</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>from where to where, or a length</source>
      <translation>von wo bis wo, oder ein Maß</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>preload, left</source>
      <translation>Vorspannung links</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>preload, right</source>
      <translation>Vorspannung rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>as its gauge shows it, with the unit</source>
      <translation>wie am Manometer abgelesen, mit Einheit</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>free, heavy, notched, or loose</source>
      <translation>frei, schwergängig, rastend oder lose</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>wheel off</source>
      <translation>Rad frei</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>on its wheels</source>
      <translation>auf den Rädern</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>rider on</source>
      <translation>mit Fahrer</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Between the same two marks along one leg.</source>
      <translation>Zwischen denselben zwei Marken längs eines Holms.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Heights, while the clamps still hold</source>
      <translation>Überstände, solange die Klemmungen noch halten</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>gauge of the heights as found</source>
      <translation>Messmittel der vorgefundenen Überstände</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>gauge of the heights</source>
      <translation>Messmittel der Überstände</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Lower bracket to the frame, both sides</source>
      <translation>Untere Gabelbrücke zum Rahmen, beide Seiten</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>gauge of the bracket as found</source>
      <translation>Messmittel der vorgefundenen Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>gauge of the bracket</source>
      <translation>Messmittel der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>How it is set, and how it feels</source>
      <translation>Wie es eingestellt ist und sich anfühlt</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>{name} as found</source>
      <translation>{name}, vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Sag, if it is wanted</source>
      <translation>Negativfederweg, falls gewünscht</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Later: oil as it was drained</source>
      <translation>Später: Öl, wie abgelassen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Tube top edge above the top bracket, never the cap.</source>
      <translation>Oberkante des Standrohrs über der oberen Gabelbrücke, nie die Verschlussschraube.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>The same two points on each side, steering straight ahead.</source>
      <translation>Auf jeder Seite dieselben zwei Punkte, Lenkung geradeaus.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>read with</source>
      <comment>a gauge</comment>
      <translation>gemessen mit</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>clear, milky?</source>
      <translation>klar, milchig?</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/as_found.py" />
      <source>Name the gauge: its own error is not counted yet.</source>
      <translation>Messmittel angeben: Sein eigener Fehler ist noch nicht eingerechnet.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/fields.py" />
      <source>none</source>
      <comment>a reading</comment>
      <translation>offen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/loosen.py" />
      <source>loosening list</source>
      <translation>Löseliste</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/loosen.py" />
      <source>Read the heights</source>
      <translation>Überstände messen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/loosen.py" />
      <source>Read both sides</source>
      <translation>Beide Seiten messen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/loosen.py" />
      <source>Go on to Inspect   Enter</source>
      <translation>Weiter zum Prüfen   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>what came off</source>
      <translation>was abgebaut wurde</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>where its fasteners went</source>
      <translation>Verbleib der Schrauben</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>part {number}: {name}</source>
      <translation>Teil {number}: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Off {off}, back {back}.</source>
      <translation>Abgebaut {off}, wieder angebaut {back}.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Off {off}.</source>
      <translation>Abgebaut {off}.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>back {at}</source>
      <translation>wieder angebaut {at}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>back</source>
      <comment>a part</comment>
      <translation>wieder angebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>to go back</source>
      <translation>noch anzubauen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Part {number} came off earlier</source>
      <translation>Teil {number} wurde früher abgebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Alt+Up</source>
      <translation>Alt+Pfeil hoch</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Part {number} came off later</source>
      <translation>Teil {number} wurde später abgebaut</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Alt+Down</source>
      <translation>Alt+Pfeil runter</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Take out part {number}</source>
      <translation>Teil {number} entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>it was a slip</source>
      <translation>war ein Versehen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/part_row.py" />
      <source>Next.</source>
      <translation>Als Nächstes.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>name of a part that is off</source>
      <translation>Name eines abgebauten Teils</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>fasteners of a part that is off</source>
      <translation>Schrauben eines abgebauten Teils</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>note of a part that is off</source>
      <translation>Notiz zu einem abgebauten Teil</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>Nothing yet. What comes off first stands first.</source>
      <translation>Noch nichts. Was zuerst abgebaut wird, steht zuerst.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>It fills by itself, turned round.</source>
      <translation>Füllt sich von selbst, in umgekehrter Reihenfolge.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>Off, in this order</source>
      <translation>Abgebaut, in dieser Reihenfolge</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>To go back, last off first</source>
      <translation>Anzubauen, das Letzte zuerst</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>off: {name}</source>
      <translation>abgebaut: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>A part needs a name: the one it had stays.</source>
      <translation>Ein Teil braucht einen Namen: Der bisherige bleibt.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>take out a part</source>
      <translation>Teil entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>back: {name}</source>
      <translation>wieder angebaut: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/parts.py" />
      <source>off again: {name}</source>
      <translation>wieder abgebaut: {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/pick_card.py" />
      <source>usual things that come off</source>
      <translation>üblicherweise abgebaute Teile</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/pick_card.py" />
      <source>What came off</source>
      <translation>Was abgebaut wurde</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/pick_card.py" />
      <source>name, then Enter</source>
      <translation>Name, dann Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/pick_card.py" />
      <source>usual things, Down to pick</source>
      <translation>Übliches, mit Pfeil runter wählen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/stage.py" />
      <source>Go to Bike   Enter</source>
      <translation>Zum Motorrad   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/stage.py" />
      <source>Go on to Loosen   Enter</source>
      <translation>Weiter zum Lösen   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/step_card.py" />
      <source>All loose</source>
      <translation>Alles gelöst</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/step_card.py" />
      <source>No list</source>
      <translation>Keine Liste</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/views.py" />
      <source>&amp;As found</source>
      <translation>&amp;Vorgefunden</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/views.py" />
      <source>&amp;Loosen</source>
      <translation>&amp;Lösen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/views.py" />
      <source>&amp;Parts off</source>
      <translation>Abgebaute &amp;Teile</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/views.py" />
      <source>Show: {part}</source>
      <translation>Zeigen: {part}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/views.py" />
      <source>open</source>
      <comment>this part is shown</comment>
      <translation>geöffnet</translation>
    </message>
    <message numerus="yes">
      <location filename="aligner/window/strip/words.py" />
      <source>{count} parts are off.</source>
      <extracomment>{count} part is off.</extracomment>
      <translation>
        <numerusform>{count} Teil ist abgebaut.</numerusform>
        <numerusform>{count} Teile sind abgebaut.</numerusform>
      </translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Do this</source>
      <translation>Ausführen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Then: {title}.</source>
      <translation>Danach: {title}.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>The heights as found were not read.</source>
      <translation>Die vorgefundenen Überstände wurden nicht gemessen.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>A clamp is slack, so they can no longer be read. If they stand on paper, write them here.</source>
      <translation>Eine Klemmung ist locker, daher sind sie nicht mehr messbar. Stehen sie auf Papier, hier eintragen.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Goes back next: {name}.</source>
      <translation>Als Nächstes anbauen: {name}.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Write down each part as it comes off.</source>
      <translation>Jedes Teil beim Abbauen aufschreiben.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Fasteners: {where}.</source>
      <translation>Schrauben: {where}.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Read</source>
      <comment>a step of the loosening list</comment>
      <translation>Messen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Look</source>
      <comment>a step of the loosening list</comment>
      <translation>Ansehen</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Not written down yet.</source>
      <translation>Noch nicht aufgeschrieben.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>It is the last step.</source>
      <translation>Dies ist der letzte Schritt.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>The heights are written down.</source>
      <translation>Die Überstände sind aufgeschrieben.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Note what else will let it go back where it was, then go on to Loosen.</source>
      <translation>Notieren, was sonst noch hilft, alles wieder anzubauen, wie es war; dann weiter zu „Lösen“.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Before a clamp of the brackets is slackened: tube top edge above the bracket.</source>
      <translation>Bevor eine Klemmung der Gabelbrücken gelockert wird: Oberkante des Standrohrs über der Gabelbrücke.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Write down how it stands.</source>
      <translation>Aufschreiben, wie es steht.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Before anything is loosened.</source>
      <translation>Bevor etwas gelöst wird.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Type a name or pick one of the usual things; Enter adds it.</source>
      <translation>Namen eingeben oder Übliches wählen; Enter fügt es hinzu.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>Everything that came off is back on.</source>
      <translation>Alles Abgebaute ist wieder angebaut.</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>left {size}</source>
      <translation>links {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/strip/words.py" />
      <source>right {size}</source>
      <translation>rechts {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>Set higher for it; pull at the middle of the grip.</source>
      <translation>Dafür höher einstellen; in der Griffmitte ziehen.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>sketch: L {grip}, E {adapter} at {angle}.</source>
      <translation>Skizze: L {grip}, E {adapter} bei {angle}.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>Concentric on the fastener: it changes nothing in the setting.</source>
      <translation>Konzentrisch auf der Verschraubung: ändert nichts am Einstellwert.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>Square to the wrench: it changes nothing in the setting.</source>
      <translation>Rechtwinklig zum Drehmomentschlüssel: ändert nichts am Einstellwert.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>Measure L, from drive to the middle of the grip, or set the adapter at 90°.</source>
      <translation>L vom Vierkant bis zur Griffmitte messen oder den Aufsatz auf 90° stellen.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>Set lower for it; pull at the middle of the grip.</source>
      <translation>Dafür niedriger einstellen; in der Griffmitte ziehen.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>not measured</source>
      <comment>length</comment>
      <translation>nicht gemessen</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/adapter_view.py" />
      <source>sketch: L {grip}, E {adapter}.</source>
      <translation>Skizze: L {grip}, E {adapter}.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>Checked again after the road test: {fasteners}. The Prove stage keeps that list.</source>
      <translation>Nachkontrolle nach der Probefahrt: {fasteners}. Die Liste dafür steht unter „Probefahrt“.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>Checked again after {distance}: {fasteners}. The Prove stage keeps that list.</source>
      <translation>Nachkontrolle nach {distance}: {fasteners}. Die Liste dafür steht unter „Probefahrt“.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>Go to Bike</source>
      <translation>Zum Motorrad</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>{done} of {all}</source>
      <translation>{done} von {all}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>Every step is ticked.</source>
      <translation>Jeder Schritt ist abgehakt.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>Choose any step in the list to see when and how it was done.</source>
      <translation>Einen Schritt der Liste wählen, um zu sehen, wann und wie er erledigt wurde.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>The list is made from the fasteners on the sheet: each bolt, nut and cap with its torque from the maker's manual. Give them on the Bike stage, or start there from a pattern and fill in the torques.</source>
      <translation>Die Liste entsteht aus den Verschraubungen des Datenblatts: jede Schraube, Mutter und Verschlussschraube mit ihrem Drehmoment aus dem Werkstatthandbuch des Herstellers. Diese unter „Motorrad“ angeben oder dort mit einer Vorlage beginnen und die Drehmomente eintragen.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>With a reason, out of order or not passed: {count}</source>
      <translation>Mit Grund, außer der Reihe oder nicht bestanden: {count}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/rest.py" />
      <source>and {count} more, on the job card</source>
      <translation>und {count} weitere, auf der Auftragskarte</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/step_card.py" />
      <source>step {number}, {title}, {torque}</source>
      <translation>Schritt {number}, {title}, {torque}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/tool_form.py" />
      <source>Keep   Enter</source>
      <translation>Übernehmen   Enter</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/tool_form.py" />
      <source>Leave it   Esc</source>
      <translation>Verwerfen   Esc</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/tool_shelf.py" />
      <source>Change {name}</source>
      <translation>{name} ändern</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/tool_shelf.py" />
      <source>Change</source>
      <translation>Ändern</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>No wrench yet. With one, each step says what to set on its own scale.</source>
      <translation>Noch kein Drehmomentschlüssel. Mit einem sagt jeder Schritt, was auf dessen Skala einzustellen ist.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>None. A plain socket needs no entry: it changes nothing in the setting.</source>
      <translation>Keine. Eine einfache Stecknuss braucht keinen Eintrag: Sie ändert nichts am Einstellwert.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Concentric on the fastener, as a socket is: changes nothing in the setting</source>
      <translation>Konzentrisch auf der Verschraubung wie eine Nuss: Einstellwert bleibt</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Torque wrenches</source>
      <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Add a wrench</source>
      <translation>Drehmomentschlüssel hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Adapters</source>
      <translation>Aufsätze</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Add an adapter</source>
      <translation>Aufsatz hinzufügen</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Wrenches and adapters</source>
      <translation>Drehmomentschlüssel und Aufsätze</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Back to the list   Esc</source>
      <translation>Zurück zur Liste   Esc</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Another wrench</source>
      <translation>Weiterer Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>wrench {name}</source>
      <translation>Drehmomentschlüssel {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>remove {name}</source>
      <translation>{name} entfernen</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>Another adapter</source>
      <translation>Weiterer Aufsatz</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>adapter {name}</source>
      <translation>Aufsatz {name}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_card.py" />
      <source>wrench for the {joint}</source>
      <translation>Drehmomentschlüssel für: {joint}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>set {setting}, not inside what is specified</source>
      <translation>{setting} einstellen, nicht innerhalb der Vorgabe</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>cannot be set to this</source>
      <translation>darauf nicht einstellbar</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>set {setting}</source>
      <translation>{setting} einstellen</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>set {setting}, inside what is specified</source>
      <translation>{setting} einstellen, innerhalb der Vorgabe</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>wrench for this joint</source>
      <translation>Drehmomentschlüssel für diese Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>adapter for this joint</source>
      <translation>Aufsatz für diese Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>For the {joint}</source>
      <translation>Für: {joint}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>Wrench</source>
      <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>Adapter</source>
      <translation>Aufsatz</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>A socket that stands concentric on the nut changes nothing.</source>
      <translation>Eine Stecknuss, die konzentrisch auf der Mutter sitzt, ändert nichts.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>the best of those at hand</source>
      <translation>der beste der vorhandenen</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>{wrench}: not to be chosen, {why}</source>
      <translation>{wrench}: nicht wählbar, {why}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_choice_card.py" />
      <source>plain socket</source>
      <translation>einfache Stecknuss</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Called</source>
      <translation>Name</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>click wrench</source>
      <translation>Klickschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Lowest mark</source>
      <translation>Kleinster Skalenwert</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Highest mark</source>
      <translation>Größter Skalenwert</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Marks apart</source>
      <translation>Skalenteilung</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>0.5 N·m</source>
      <translation>0,5 N·m</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Deviation ±</source>
      <translation>Abweichung ±</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Not used below</source>
      <translation>Nicht benutzt unter</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>20 %, of the top</source>
      <translation>20 % vom Max.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>L, drive to grip</source>
      <translation>L, Vierkant bis Griff</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Drive</source>
      <translation>Vierkant</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>crow's foot</source>
      <translation>Hahnenfußschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>E, drive to fastener</source>
      <translation>E, Vierkant bis Verschraubung</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Angle to the wrench</source>
      <translation>Winkel zum Schlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>0 to 180 deg</source>
      <translation>0 bis 180 deg</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>{wrench}. Not chosen: {why}.</source>
      <translation>{wrench}. Wird nicht gewählt: {why}.</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>marks {graduation} apart</source>
      <translation>Skalenteilung {graduation}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>Angle: from 0, straight out, to 180 deg, folded back</source>
      <translation>Winkel: von 0, gerade hinaus, bis 180 deg, zurückgeklappt</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>used from {share} of the top</source>
      <translation>benutzt ab {share} des größten Werts</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>{size} drive</source>
      <translation>Vierkant {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>concentric: changes nothing in the setting</source>
      <translation>konzentrisch: ändert nichts am Einstellwert</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>{angle} to the wrench</source>
      <translation>{angle} zum Drehmomentschlüssel</translation>
    </message>
    <message>
      <location filename="aligner/window/tighten/wrench_fields.py" />
      <source>{field}: it is needed; as “{example}”</source>
      <translation>{field}: wird gebraucht; etwa „{example}“</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>down</source>
      <comment>which way a leg goes</comment>
      <translation>tiefer</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>turn {angle} to the right</source>
      <translation>{angle} nach rechts drehen</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>equal</source>
      <translation>gleich</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>out: not at {goal}; {difference}</source>
      <translation>außerhalb: nicht auf {goal}; {difference}</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>read to ± {size}</source>
      <translation>abgelesen auf ± {size}</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>up</source>
      <comment>which way a leg goes</comment>
      <translation>höher</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>turn {angle} to the left</source>
      <translation>{angle} nach links drehen</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>{verdict}, pairs disagree: {turn}</source>
      <translation>{verdict}, Messpaare widersprechen sich: {turn}</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>{angle} to the left</source>
      <translation>{angle} nach links</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>{angle} to the right</source>
      <translation>{angle} nach rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>left {size} high</source>
      <translation>links {size} höher</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>left {size} low</source>
      <translation>links {size} tiefer</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>convergence {angle}, wider going down</source>
      <translation>Konvergenz {angle}, nach unten weiter</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>convergence {angle}, narrower going down</source>
      <translation>Konvergenz {angle}, nach unten enger</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>{angle} left</source>
      <translation>{angle} links</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>{angle} right</source>
      <translation>{angle} rechts</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>twist {angle}, top bracket turned to the left</source>
      <translation>Verdrehung {angle}, obere Gabelbrücke nach links gedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/pictures.py" />
      <source>twist {angle}, top bracket turned to the right</source>
      <translation>Verdrehung {angle}, obere Gabelbrücke nach rechts gedreht</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/reading_box.py" />
      <source>{name}, reading {number}</source>
      <translation>{name}, Messwert {number}</translation>
    </message>
    <message>
      <location filename="aligner/window/widgets/said_line.py" />
      <source>Put away</source>
      <translation>Ausblenden</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Drained, clean and dry inside</source>
      <translation>Entleert, innen sauber und trocken</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Old oil that stays behind in the damper goes into the new level unseen, and dirt goes into the valves.</source>
      <translation>Altes Öl, das im Dämpfer zurückbleibt, geht unbemerkt in den neuen Ölstand ein, und Schmutz gelangt in die Ventile.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>common practice, no source</source>
      <translation>allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>O-rings of the air fittings sound or new</source>
      <translation>O-Ringe der Luftanschlüsse in Ordnung oder neu</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>They keep oil and air in even where no pressure is ever put on: an old ring weeps oil past the tube.</source>
      <translation>Sie halten Öl und Luft auch dort zurück, wo nie Druck aufgegeben wird: Ein alter Ring lässt Öl am Standrohr vorbeisickern.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Openings in the tube sealed</source>
      <translation>Öffnungen im Standrohr verschlossen</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The tube has openings where its air fitting sits: off the machine nothing closes them, and the oil runs out.</source>
      <translation>Das Standrohr hat Öffnungen, wo sein Luftanschluss sitzt: Im ausgebauten Zustand verschließt sie nichts, und das Öl läuft aus.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Take the sealing off again before the fittings go on, or the legs never share their air.</source>
      <translation>Den Verschluss wieder abnehmen, bevor die Anschlüsse montiert werden, sonst teilen sich die Holme ihre Luft nie.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Anti-dive unit tight, sealing rings new</source>
      <translation>Anti-Dive-Einheit fest, Dichtringe neu</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The unit's oil passage opens into the slider: a ring pinched here empties the leg slowly.</source>
      <translation>Der Ölkanal der Einheit mündet in das Tauchrohr: Ein hier gequetschter Ring leert den Holm langsam.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Brake fluid and fork oil are kept apart: one spoils the seals of the other.</source>
      <translation>Bremsflüssigkeit und Gabelöl getrennt halten: Das eine verdirbt die Dichtungen des anderen.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cartridge held and its bottom bolt tight</source>
      <translation>Kartusche gehalten und ihre Bodenschraube fest</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Its bolt cannot be reached well with the oil in, and one that spins with the cartridge is not tight.</source>
      <translation>Ihre Schraube ist mit Öl im Holm schlecht zu erreichen, und eine, die sich mit der Kartusche mitdreht, ist nicht fest.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Bush, oil seal, clip and dust seal home</source>
      <translation>Gleitbuchse, Dichtring, Sicherungsring und Staubkappe ganz im Sitz</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The seal stands at the bottom end, under oil all the time: one that is not home leaks at once, over the brake.</source>
      <translation>Der Dichtring sitzt am unteren Ende, ständig unter Öl: Einer, der nicht ganz im Sitz ist, leckt sofort, über die Bremse.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Oil poured in, a little over</source>
      <translation>Öl eingefüllt, etwas zu viel</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>A level is set by drawing the excess off, which stops at the tube's end by itself; adding has to be measured.</source>
      <translation>Der Ölstand wird durch Absaugen des Überschusses eingestellt, das am Ende des Absaugrohrs von selbst aufhört; Zugeben muss abgemessen werden.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Pumped slowly until no bubbles rise</source>
      <translation>Langsam gepumpt, bis keine Blasen aufsteigen</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The damper holds air until it has been stroked full; the level falls as the air comes out.</source>
      <translation>Der Dämpfer enthält Luft, bis er vollgepumpt ist; der Ölstand sinkt, während die Luft austritt.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Pumped until the unit is full too</source>
      <translation>Gepumpt, bis auch die Einheit voll ist</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The anti-dive passage fills later than the damper; air left in it makes the leg dive first and brake later.</source>
      <translation>Der Anti-Dive-Kanal füllt sich später als der Dämpfer; bleibt Luft darin, taucht der Holm erst ein und wird erst später gebremst.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cartridge bled: rod drags evenly</source>
      <translation>Kartusche entlüftet: Stange geht gleichmäßig schwer</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Stroke the rod until it drags the same all the way, up and down: a soft start to a stroke is air in the cartridge.</source>
      <translation>Stange auf und ab bewegen, bis sie auf dem ganzen Weg gleich schwer geht, hinauf und hinunter: Ein weicher Hubbeginn ist Luft in der Kartusche.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Left to settle, then fully compressed</source>
      <translation>Ruhen gelassen, dann ganz eingefedert</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Bubbles stand in stirred oil for some minutes and make the level look high; the air gap is read only after that, spring out.</source>
      <translation>In aufgerührtem Öl stehen einige Minuten lang Blasen und täuschen einen hohen Ölstand vor; die Luftkammer wird erst danach gemessen, Feder heraus.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>In, from the bottom up: {value}</source>
      <translation>Eingesetzt, von unten nach oben: {value}</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Spring and parts in, in the manual's order</source>
      <translation>Feder und Teile eingesetzt, Reihenfolge laut Werkstatthandbuch</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>A washer or seat left out lets the spacer wear into the spring, and changes the preload.</source>
      <translation>Eine vergessene Scheibe oder ein vergessener Federsitz lässt die Distanzhülse sich in die Feder einarbeiten und ändert die Vorspannung.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Closer coils of the spring {value}</source>
      <translation>Engere Windungen der Feder {value}</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Spring the manual's way up (not on the sheet)</source>
      <translation>Einbaulage der Feder laut Werkstatthandbuch (nicht im Datenblatt)</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Which end goes up decides how much spring hangs on the moving part and how much oil it displaces; both legs alike.</source>
      <translation>Welches Ende nach oben kommt, bestimmt, wie viel Feder am bewegten Teil hängt und wie viel Öl sie verdrängt; beide Holme gleich.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Spacer of {value} in, both alike</source>
      <translation>Distanzhülse {value} eingesetzt, beide gleich</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Every millimetre of spacer is a millimetre of preload; its ends are cut square.</source>
      <translation>Jeder Millimeter Distanzhülse ist ein Millimeter Vorspannung; ihre Enden sind winklig geschnitten.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Preload adjuster at its lowest</source>
      <translation>Vorspannungseinsteller auf kleinster Vorspannung</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The cap then meets the least spring, its thread starts without being forced, and both legs begin alike.</source>
      <translation>Die Verschlussschraube trifft dann auf die geringste Federkraft, ihr Gewinde greift ohne Gewalt, und beide Holme beginnen gleich.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap's O-ring and threads clean, oiled, sound</source>
      <translation>O-Ring und Gewinde der Verschlussschraube sauber, geölt, in Ordnung</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The thread is fine and often aluminium: dirt in it feels like the start of a crossed thread, and hides one.</source>
      <translation>Das Gewinde ist fein und oft aus Aluminium: Schmutz darin fühlt sich wie der Anfang eines verkanteten Gewindes an und verdeckt ein solches.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap on the rod, locknut against it</source>
      <translation>Verschlussschraube auf der Stange, Kontermutter dagegen</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The cap hangs on the damper rod: how far it is screwed on sets the rebound adjuster's range.</source>
      <translation>Die Verschlussschraube hängt an der Dämpferstange: Wie weit sie aufgeschraubt ist, bestimmt den Bereich des Zugstufeneinstellers.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap turned in slowly, square to its thread</source>
      <translation>Verschlussschraube langsam eingedreht, gerade zum Gewinde</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Press it down straight and turn it backwards until the thread drops in, then forwards: a fine thread crosses easily.</source>
      <translation>Gerade herunterdrücken und rückwärts drehen, bis das Gewinde einfällt, dann vorwärts: Ein feines Gewinde verkantet leicht.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap felt to turn easily down to its seat</source>
      <translation>Verschlussschraube spürbar leichtgängig bis zum Sitz</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Only a thread that turns by hand is straight. The cap is done up later, in Tighten, while the lower clamp holds the tube.</source>
      <translation>Nur ein Gewinde, das sich von Hand dreht, sitzt gerade. Festgezogen wird die Verschlussschraube später, unter „Anziehen“, während die untere Klemmung das Standrohr hält.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Sealing off the openings, fittings on</source>
      <translation>Verschluss von den Öffnungen ab, Anschlüsse montiert</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The openings are sealed only while the leg is off the machine with oil in it.</source>
      <translation>Die Öffnungen sind nur verschlossen, solange der Holm mit Öl darin ausgebaut ist.</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Races home, greased, all balls or rollers in</source>
      <translation>Laufringe ganz im Sitz, gefettet, alle Kugeln oder Rollen eingelegt</translation>
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>A cup that is not home goes home later on the road, and the bearing is loose.</source>
      <translation>Ein Laufring, der nicht ganz im Sitz ist, setzt sich später auf der Straße, und das Lager ist lose.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Brake lever pumped and held</source>
      <translation>Bremshebel gepumpt und gehalten</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Pump until the lever is firm, then hold it hard: it must not sink. The wheel must stand while it is held, and turn when it is let go.</source>
      <translation>Pumpen, bis der Druckpunkt fest ist, dann den Hebel kräftig halten: Er darf nicht nachgeben. Das Rad muss stehen, solange der Hebel gehalten wird, und sich drehen, wenn er losgelassen wird.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Brakes work before the first metre: the pads may have been pushed back, and the first pull then finds nothing.</source>
      <translation>Bremsen müssen vor dem ersten Meter wirken: Die Beläge können zurückgedrückt sein, und der erste Zug geht dann ins Leere.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Brake pads and fluid looked at</source>
      <translation>Bremsbeläge und Bremsflüssigkeit angesehen</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Pads seated, with lining left and clean; fluid between its marks; no fitting, hose or caliper wet; the caliper's bolts and the hose holders in place. With a drum: its plate caught by its anchor, which keeps it from turning with the wheel, and the cable fast.</source>
      <translation>Beläge sitzen, Reibbelag noch vorhanden und sauber; Flüssigkeit zwischen den Marken; kein Anschluss, Schlauch oder Bremssattel nass; Schrauben des Bremssattels und Schlauchhalter an ihrem Platz. Bei einer Trommelbremse: Die Bremsankerplatte sitzt in ihrer Abstützung, damit sie sich nicht mit dem Rad dreht, und der Seilzug ist fest.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Steering free from lock to lock</source>
      <translation>Lenkung frei von Anschlag zu Anschlag</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>With the front wheel off the ground, from stop to stop: it falls to each side by itself, without a notch and without play.</source>
      <translation>Vorderrad frei vom Boden, von Anschlag zu Anschlag: Die Lenkung fällt nach jeder Seite von selbst, ohne Raststelle und ohne Spiel.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Hoses and cables free at full lock</source>
      <translation>Schläuche und Züge frei am Lenkanschlag</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>At both stops, and with the fork at full reach: nothing is pulled, pinched or rubbed, and the throttle closes by itself.</source>
      <translation>An beiden Anschlägen und bei ganz ausgefederter Gabel: Nichts spannt, klemmt oder scheuert, und das Gas schließt von selbst.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Axle and wheel free</source>
      <translation>Vorderachse und Rad frei</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Spin the wheel: it runs out freely and true, and nothing touches. Rock it across the axle: no play.</source>
      <translation>Rad drehen: Es läuft frei und rund aus, und nichts streift. Quer zur Achse rütteln: kein Spiel.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Fork works smoothly</source>
      <translation>Gabel arbeitet leichtgängig</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>On the ground, front brake held, press the fork down and let it up: no catching, no knock, no oil on the tubes afterwards.</source>
      <translation>Auf dem Boden, Vorderradbremse gehalten, Gabel eindrücken und ausfedern lassen: kein Hakeln, kein Schlagen, danach kein Öl an den Rohren.</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Lamps and instruments work</source>
      <translation>Beleuchtung und Instrumente funktionieren</translation>
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Head lamp and its aim, turn signals, horn, brake lamp by the front lever, instruments and their lamps, at both stops of the steering too.</source>
      <translation>Scheinwerfer und seine Einstellung, Blinker, Hupe, Bremslicht über den vorderen Hebel, Instrumente und ihre Lampen, auch an beiden Lenkanschlägen.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>steel rule</source>
      <translation>Stahlmaßstab</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: legal accuracy class I, 0.1 mm + 0.1 mm for each metre begun + 0.1 mm where it is used from its end (UK S.I. 2016/1153, schedule 1I); resolution and repeatability: common practice, no source</source>
      <translation>Fehlergrenze: gesetzliche Genauigkeitsklasse I, 0,1 mm + 0,1 mm je angefangenen Meter + 0,1 mm bei Messung ab seinem Ende (UK S.I. 2016/1153, schedule 1I); Auflösung und Wiederholbarkeit: allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Stand it on the face it measures from, look square at the edge, and read to the half millimetre.</source>
      <translation>Auf die Fläche stellen, von der gemessen wird, rechtwinklig auf die Kante sehen und auf den halben Millimeter ablesen.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>vernier caliper</source>
      <translation>Messschieber mit Nonius</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: DIN 862 for 0.05 mm steps up to 100 mm, seen second-hand; repeatability: common practice, no source</source>
      <translation>Fehlergrenze: DIN 862 für 0,05-mm-Schritte bis 100 mm, aus zweiter Hand; Wiederholbarkeit: allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Wipe the jaws, close them and see that they read nought. Rock it gently and take the smallest reading across, the largest between.</source>
      <translation>Messflächen abwischen, schließen und sehen, dass sie null anzeigen. Leicht pendeln; außen zählt der kleinste Messwert, innen der größte.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>digital caliper</source>
      <translation>Messschieber digital</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: DIN 862 for 0.01 mm steps up to 500 mm, the larger of its two figures, seen second-hand; repeatability: common practice, no source</source>
      <translation>Fehlergrenze: DIN 862 für 0,01-mm-Schritte bis 500 mm, der größere der beiden Werte, aus zweiter Hand; Wiederholbarkeit: allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Wipe the jaws, close them and set nought. Use the same light pressure every time, and take it off and put it on again between readings.</source>
      <translation>Messflächen abwischen, schließen und auf null setzen. Jedes Mal mit gleichem leichtem Druck messen und zwischen den Messwerten ab- und neu ansetzen.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>depth gauge</source>
      <translation>Tiefenmaß</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: DIN 862 for 0.05 mm steps, with the 0.02 mm it adds for depths, seen second-hand; repeatability: common practice, no source</source>
      <translation>Fehlergrenze: DIN 862 für 0,05-mm-Schritte, mit den 0,02 mm Zuschlag für Tiefen, aus zweiter Hand; Wiederholbarkeit: allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Hold the foot flat on the bracket's upper face, let the rod down onto the tube's edge, and never onto the cap.</source>
      <translation>Brücke des Tiefenmaßes flach auf die Oberseite der Gabelbrücke halten, die Stange auf die Kante des Standrohrs absenken, nie auf die Verschlussschraube.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>feeler gauges</source>
      <translation>Fühlerlehre</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>The gap is between the blade that goes in with a light drag and the next one that does not. Write down the one that goes in, and use as few blades together as will do.</source>
      <translation>Der Spalt liegt zwischen dem Blatt, das leicht streifend hineingeht, und dem nächsten, das nicht hineingeht. Das hineingehende aufschreiben und so wenige Blätter wie möglich zusammen verwenden.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>tape</source>
      <translation>Bandmaß</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: legal accuracy class II, 0.3 mm + 0.2 mm for each metre begun, up to two metres (UK S.I. 2016/1153, schedule 1I); resolution and repeatability: common practice, no source</source>
      <translation>Fehlergrenze: gesetzliche Genauigkeitsklasse II, 0,3 mm + 0,2 mm je angefangenen Meter, bis zwei Meter (UK S.I. 2016/1153, schedule 1I); Auflösung und Wiederholbarkeit: allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Pull it straight, measure from the 100 mm mark and take 100 mm off: the hook moves and wears.</source>
      <translation>Gerade ziehen, ab der 100-mm-Marke messen und 100 mm abziehen: Der Haken ist beweglich und verschleißt.</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>dial indicator</source>
      <translation>Messuhr</translation>
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Stand it square to the face on a firm base, with about one turn of the pointer on before it is set to nought.</source>
      <translation>Auf festem Fuß rechtwinklig zur Fläche ansetzen, mit etwa einer Zeigerumdrehung Vorspannung, dann auf null stellen.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Tube runout</source>
      <translation>Rundlauf Standrohr</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork tube</source>
      <translation>Standrohr</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A bent tube binds in its bushes, and no clamp brings it back into line.</source>
      <translation>Ein verbogenes Standrohr klemmt in seinen Gleitbuchsen, und keine Klemmung richtet es wieder.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Turn the tube once round on V-blocks and read how far the pointer swings, lowest to highest, midway between the blocks and at two more places. The bend is half of what is indicated; an oval tube adds to it, so half is the most the bend can be.</source>
      <translation>Standrohr auf Prismen einmal drehen und den Zeigerausschlag vom kleinsten zum größten Wert ablesen, mittig zwischen den Prismen und an zwei weiteren Stellen. Die Verbiegung ist die Hälfte der Anzeige; ein ovales Rohr erhöht diese, die Hälfte ist also die größtmögliche Verbiegung.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>swing, one a place</source>
      <translation>Ausschlag, je Stelle</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>bend is half the indicated: US Army TM 10-3930-653-14&amp;P, p. 79; the rest common practice, no source</source>
      <translation>Verbiegung ist die Hälfte der Anzeige: US Army TM 10-3930-653-14&amp;P, S. 79; sonst allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Tube surface</source>
      <translation>Oberfläche Standrohr</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A pit or a score that runs under the seal cuts it, and a new seal leaks within days.</source>
      <translation>Eine Narbe oder Riefe, die unter den Gabeldichtring läuft, zerschneidet ihn, und ein neuer ist in wenigen Tagen undicht.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Wipe the tube clean and draw a fingernail along it all the way round where the seal runs. Anything the nail catches on is damage; a mark above the seal's travel only needs watching.</source>
      <translation>Standrohr sauber wischen und im Laufbereich des Dichtrings rundum mit dem Fingernagel entlangfahren. Woran der Nagel hängen bleibt, ist ein Schaden; eine Spur oberhalb des Dichtringwegs ist nur zu beobachten.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Bush play</source>
      <translation>Spiel der Gleitbuchsen</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>bushes</source>
      <translation>Gleitbuchsen</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Worn bushes let the wheel shake under the brake, and the seal is worked from side to side until it leaks.</source>
      <translation>Verschlissene Gleitbuchsen lassen das Rad beim Bremsen zittern, und der Gabeldichtring wird hin und her bewegt, bis er undicht ist.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Hold the slider still and rock the tube fore and aft with a dial indicator on it just above the seal, reading the full swing. Do it at three heights, nearly out, half way and nearly in: the greatest swing counts.</source>
      <translation>Tauchrohr festhalten, Standrohr vor und zurück bewegen und mit der Messuhr dicht über dem Gabeldichtring den vollen Ausschlag ablesen. In drei Stellungen, fast ausgefedert, halb und fast eingefedert: Der größte Ausschlag zählt.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>swing, one a height</source>
      <translation>Ausschlag, je Stellung</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Spring free length</source>
      <translation>Freie Länge der Feder</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork spring</source>
      <translation>Gabelfeder</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A spring that has settled is shorter, so the fork sits low and has less travel left.</source>
      <translation>Eine gesetzte Feder ist kürzer, die Gabel steht also tief und hat weniger Federweg übrig.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Stand the spring upright on a flat bench without pressing it and measure from the bench to its top. Turn it a third round between readings; where it is in two pieces, measure the piece the limit is given for.</source>
      <translation>Feder ohne Druck aufrecht auf eine ebene Werkbank stellen und von der Werkbank bis zur Oberkante messen. Zwischen den Messwerten um ein Drittel drehen; bei zweiteiliger Feder das Teil messen, für das der Grenzwert gilt.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>length, standing free</source>
      <translation>Länge, frei stehend</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Oil seal</source>
      <translation>Gabeldichtring</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>oil seal</source>
      <translation>Gabeldichtring</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A leaking seal loses damping and wets the brake.</source>
      <translation>Ein undichter Gabeldichtring kostet Dämpfung und macht die Bremse nass.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Look for an oily ring on the tube and for oil on the slider below the seal. Feel the lip: it is soft, whole and evenly sprung all round, and the garter spring sits in its groove.</source>
      <translation>Nach einem öligen Ring am Standrohr und nach Öl am Tauchrohr unter dem Dichtring sehen. Lippe befühlen: Sie ist weich, unversehrt und rundum gleichmäßig gespannt, und die Schlauchfeder sitzt in ihrer Nut.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Dust seal</source>
      <translation>Staubkappe</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>dust seal</source>
      <translation>Staubkappe</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cracked dust seal lets grit and water down onto the oil seal.</source>
      <translation>Eine rissige Staubkappe lässt Schmutz und Wasser auf den Gabeldichtring.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lift it clear and bend its lip outwards all the way round. Cracks, hardness or rust on the ring beneath mean a new one.</source>
      <translation>Abheben und die Lippe rundum nach außen biegen. Risse, Verhärtung oder Rost am Ring darunter heißen: neue Staubkappe.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Cap O-ring</source>
      <translation>O-Ring der Verschlussschraube</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>cap O-ring</source>
      <translation>O-Ring der Verschlussschraube</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The cap's O-ring keeps oil and air in, and one that has taken a set no longer does.</source>
      <translation>Der O-Ring der Verschlussschraube hält Öl und Luft zurück; ein bleibend verformter tut es nicht mehr.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Take it off and look at its section. It is round and springs back; flat, nicked or hard means a new one.</source>
      <translation>Abnehmen und den Querschnitt ansehen. Er ist rund und federt zurück; flach, eingekerbt oder hart heißt: neuer O-Ring.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Air-fitting O-rings</source>
      <translation>O-Ringe der Luftanschlüsse</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>air-fitting O-rings</source>
      <translation>O-Ringe der Luftanschlüsse</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The fittings seal oil as well as air, so their O-rings are checked even where no pressure is used.</source>
      <translation>Die Anschlüsse dichten Öl wie Luft, deshalb die O-Ringe auch dort prüfen, wo kein Druck benutzt wird.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Take each fitting off and look at every O-ring and its groove. Flat, nicked or hard means a new one, and a groove with a burr cuts the next.</source>
      <translation>Jeden Anschluss abnehmen und jeden O-Ring und seine Nut ansehen. Flach, eingekerbt oder hart heißt: neuer O-Ring; eine Nut mit Grat zerschneidet den nächsten.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Fork cap threads</source>
      <translation>Gewinde der Verschlussschraube</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork cap</source>
      <translation>Verschlussschraube</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The cap holds the spring down, and its fine thread strips without warning.</source>
      <translation>Die Verschlussschraube hält die Feder nieder, und ihr Feingewinde reißt ohne Vorwarnung aus.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Brush the thread clean and look along it against the light. Torn, flattened or bright-worn crests mean a new cap.</source>
      <translation>Gewinde sauber bürsten und gegen das Licht daran entlangsehen. Ausgerissene, flache oder blank verschlissene Gewindespitzen heißen: neue Verschlussschraube.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Tube threads</source>
      <translation>Gewinde im Standrohr</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A pulled thread in the tube lets go of the cap under spring pressure.</source>
      <translation>Ein ausgerissenes Gewinde im Standrohr lässt die Verschlussschraube unter Federdruck los.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Turn the cap in by hand without its spring: it goes slowly, square and freely to its seat. Binding, rocking or metal in the grease is damage.</source>
      <translation>Verschlussschraube ohne Feder von Hand eindrehen: Sie geht langsam, gerade und frei bis zum Sitz. Klemmen, Kippeln oder Metall im Fett ist ein Schaden.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Spring ends and coils</source>
      <translation>Federenden und Windungen</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A broken or rubbed coil sheds metal into the oil and changes the spring.</source>
      <translation>Eine gebrochene oder angescheuerte Windung bringt Metall ins Öl und verändert die Feder.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Wipe the spring and look at its ends and along its coils. Cracks, broken ends or worn flats mean a new one.</source>
      <translation>Feder abwischen, Enden und Windungen ansehen. Risse, gebrochene Enden oder flach gescheuerte Stellen heißen: neue Feder.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Oil state</source>
      <translation>Zustand des Öls</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork oil</source>
      <translation>Gabelöl</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Oil tells what went on inside: water makes it milky, wear makes it glitter.</source>
      <translation>Öl zeigt, was innen geschah: Wasser macht es milchig, Verschleiß macht es glitzernd.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Pour the old oil into a clean pan and look at it against the light. Milky means water past the dust seal; metal means a bush, a rod or a spring is wearing: find which.</source>
      <translation>Altes Öl in eine saubere Wanne gießen und gegen das Licht ansehen. Milchig heißt Wasser an der Staubkappe vorbei; Metall heißt, dass Gleitbuchse, Stange oder Feder verschleißt: herausfinden, was.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Damper rod and its ring</source>
      <translation>Dämpferrohr und Kolbenring</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>piston ring</source>
      <translation>Kolbenring</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A worn ring lets oil past it, and the leg damps less than the other.</source>
      <translation>Ein verschlissener Kolbenring lässt Öl vorbei, und der Holm dämpft weniger als der andere.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Draw the rod out and look at the ring and at the bore it runs in. The ring is whole, free in its groove and not worn flat; the rod is straight and unscored.</source>
      <translation>Dämpferrohr herausziehen, Kolbenring und seine Laufbohrung ansehen. Der Ring ist unversehrt, frei in der Nut und nicht flach gelaufen; das Dämpferrohr ist gerade und riefenfrei.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Anti-dive unit</source>
      <translation>Anti-Dive-Einheit</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>anti-dive unit</source>
      <translation>Anti-Dive-Einheit</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A unit that sticks locks its leg, so the two legs no longer work alike under the brake.</source>
      <translation>Eine hängende Einheit sperrt ihren Holm, die beiden Holme arbeiten beim Bremsen nicht mehr gleich.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Take the unit off, work its plunger by hand and look for weeping at its seals. It moves freely and comes back by itself, and its passages are clear.</source>
      <translation>Einheit abnehmen, ihren Stößel von Hand bewegen und die Dichtungen auf Nässe ansehen. Er geht frei und kommt von selbst zurück, und die Kanäle sind frei.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Cartridge</source>
      <translation>Kartusche</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cartridge that leaks inside damps one way only, and its leg works against the other.</source>
      <translation>Eine innen undichte Kartusche dämpft nur in einer Richtung, und ihr Holm arbeitet gegen den anderen.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Pump the rod slowly in oil, upright, until no air comes. It drags evenly both ways with no jump, and the rod is straight and unscored.</source>
      <translation>Stange aufrecht in Öl langsam pumpen, bis keine Luft mehr kommt. Sie geht in beiden Richtungen gleichmäßig schwer, ohne Ruck, und ist gerade und riefenfrei.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Upper bearing races</source>
      <translation>Laufringe oben</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Races with dents make the steering catch straight ahead, and the bike weaves.</source>
      <translation>Laufringe mit Eindrücken lassen die Lenkung in Geradeausstellung einrasten, und das Motorrad pendelt.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean both races and draw a ball or a fingernail slowly round the track. Marks you only see are not dents: a dent is felt as a notch, and means new races and balls or rollers together.</source>
      <translation>Beide Laufringe reinigen und mit einer Kugel oder dem Fingernagel langsam die Laufbahn entlangfahren. Nur sichtbare Spuren sind keine Eindrücke: Ein Eindruck ist als Raststelle zu spüren und heißt neue Laufringe samt Kugeln oder Rollen.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lower bearing races</source>
      <translation>Laufringe unten</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The lower race takes the blows from the road and the brake, so it goes first.</source>
      <translation>Der untere Laufring nimmt die Stöße von Fahrbahn und Bremse auf und geht deshalb zuerst.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean both races and draw a ball or a fingernail slowly round the track, most carefully straight ahead. Marks you only see are not dents: a dent is felt as a notch, and means new races and balls or rollers together.</source>
      <translation>Beide Laufringe reinigen und mit einer Kugel oder dem Fingernagel langsam die Laufbahn entlangfahren, am sorgfältigsten in Geradeausstellung. Nur sichtbare Spuren sind keine Eindrücke: Ein Eindruck ist als Raststelle zu spüren und heißt neue Laufringe samt Kugeln oder Rollen.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Balls or rollers and cage</source>
      <translation>Kugeln oder Rollen, Käfig</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>One pitted ball or roller marks the whole race.</source>
      <translation>Eine einzige narbige Kugel oder Rolle beschädigt den ganzen Laufring.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Wash them, count them and roll each under a finger on glass. All are there, bright and of one size; the cage is not cracked, and lets none fall out.</source>
      <translation>Waschen, zählen und jede unter dem Finger auf Glas rollen. Alle sind da, blank und gleich groß; der Käfig ist nicht gerissen und lässt keine herausfallen.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Grease seals</source>
      <translation>Fettdichtringe</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>grease seal</source>
      <translation>Fettdichtring</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A grease seal that is torn lets water into the lower bearing.</source>
      <translation>Ein gerissener Fettdichtring lässt Wasser ins untere Lager.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Look at the lip and the ring all round. It is soft and whole, and the grease under it is clean and not grey with water.</source>
      <translation>Lippe und Ring rundum ansehen. Weich und unversehrt, und das Fett darunter ist sauber und nicht grau von Wasser.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Spring washers</source>
      <translation>Federringe</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>spring washers</source>
      <translation>Federringe</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A spring washer gone flat holds nothing, and its bolt works loose.</source>
      <translation>Ein flach gewordener Federring hält nichts, und seine Schraube löst sich.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lay each on a flat plate. Its ends stand apart in height; one that lies flat, or is cracked, is replaced.</source>
      <translation>Jeden auf eine Richtplatte legen. Die Enden stehen in der Höhe auseinander; einen flach liegenden oder gerissenen ersetzen.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Axle straightness</source>
      <translation>Geradheit der Vorderachse</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>axle</source>
      <translation>Vorderachse</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A bent axle cocks the legs and the wheel, and no alignment puts it right.</source>
      <translation>Eine verbogene Vorderachse stellt Holme und Rad schief, und kein Ausrichten behebt das.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Turn the axle once round on V-blocks and read how far the pointer swings at its middle. The bend is half of what is indicated.</source>
      <translation>Vorderachse auf Prismen einmal drehen und den Zeigerausschlag in ihrer Mitte ablesen. Die Verbiegung ist die Hälfte der Anzeige.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>swing, one a turn</source>
      <translation>Ausschlag, je Umdrehung</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Top bracket</source>
      <translation>Obere Gabelbrücke</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cracked or bent bracket cannot hold the legs in line, however it is done up.</source>
      <translation>Eine gerissene oder verbogene Gabelbrücke kann die Holme nicht fluchtend halten, wie sie auch angezogen wird.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean it and look round each clamp slit and bolt boss for cracks. Lay its face on a flat plate: it does not rock, and the clamp bores are round.</source>
      <translation>Reinigen und um jeden Klemmschlitz und jedes Schraubenauge nach Rissen sehen. Fläche auf eine Richtplatte legen: Sie kippelt nicht, und die Klemmbohrungen sind rund.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lower bracket and stem</source>
      <translation>Untere Gabelbrücke, Lenkschaft</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cracked or bent lower bracket or stem cannot hold the legs in line, however it is done up.</source>
      <translation>Eine gerissene oder verbogene untere Gabelbrücke oder ein solcher Lenkschaft kann die Holme nicht fluchtend halten, wie auch immer angezogen wird.</translation>
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean it and look round each clamp slit, bolt boss and the foot of the stem for cracks. Stand two straight bars in the clamps and look along them: they lie in one plane, square to the stem.</source>
      <translation>Reinigen und um jeden Klemmschlitz, jedes Schraubenauge und den Fuß des Lenkschafts nach Rissen sehen. Zwei gerade Stäbe in die Klemmungen stellen und daran entlangsehen: Sie liegen in einer Ebene, rechtwinklig zum Lenkschaft.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Height of a tube</source>
      <translation>Überstand eines Standrohrs</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Wipe the tube's top edge and the bracket's upper face, and measure from the face up to the edge, never to the cap; below the face is minus. Hold the gauge square, and take it off and put it on again between the three readings.</source>
      <translation>Oberkante des Standrohrs und Oberseite der Gabelbrücke abwischen und von der Oberseite bis zur Kante messen, nie bis zur Verschlussschraube; unter der Oberseite: minus. Messmittel winklig halten und zwischen den drei Messwerten abnehmen und neu ansetzen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the frame to the lower bracket</source>
      <translation>Vom Rahmen zur unteren Gabelbrücke</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure from the point on the frame to its point on the lower bracket, the same two places on both sides. Nothing may turn the steering between the left reading and the right one.</source>
      <translation>Vom Rahmenpunkt zum zugehörigen Punkt der unteren Gabelbrücke messen, auf beiden Seiten an denselben zwei Stellen. Zwischen dem linken und dem rechten Messwert darf nichts die Lenkung drehen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Bracket reach</source>
      <translation>Vormaß der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the steering axis forward to the line through the bracket's two points, seen from above with the bracket straight: a in the drawing. Points behind the axis are minus.</source>
      <translation>Von der Lenkachse nach vorn bis zur Linie durch die beiden Punkte der Gabelbrücke, von oben gesehen, Gabelbrücke gerade: a in der Zeichnung. Punkte hinter der Achse: minus.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Bracket half width</source>
      <translation>Halbe Breite der Gabelbrücke</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the middle out to either of the bracket's points, square across: b in the drawing. Measure the whole width between the two points and take half.</source>
      <translation>Von der Mitte nach außen bis zu einem der beiden Punkte der Gabelbrücke, rechtwinklig quer: b in der Zeichnung. Den ganzen Abstand der beiden Punkte messen und halbieren.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Frame setback</source>
      <translation>Rückmaß des Rahmens</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the steering axis back to the line through the frame's two points, seen from above: c in the drawing. Points ahead of the axis are minus.</source>
      <translation>Von der Lenkachse nach hinten bis zur Linie durch die beiden Rahmenpunkte, von oben gesehen: c in der Zeichnung. Punkte vor der Achse: minus.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Frame half width</source>
      <translation>Halbe Breite des Rahmens</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the middle out to either of the frame's points, square across: d in the drawing. Measure the whole width between the two points and take half.</source>
      <translation>Von der Mitte nach außen bis zu einem der beiden Rahmenpunkte, rechtwinklig quer: d in der Zeichnung. Den ganzen Abstand der beiden Punkte messen und halbieren.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>The frame's own difference</source>
      <translation>Eigene Differenz des Rahmens</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>What left less right reads when the bracket is known to be straight, because the two frame points are not quite alike. Leave it empty where nobody has found it out on this frame.</source>
      <translation>Was links minus rechts ergibt, wenn die Gabelbrücke erwiesen gerade steht, weil die beiden Rahmenpunkte nicht ganz gleich liegen. Leer lassen, wo das an diesem Rahmen niemand ermittelt hat.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Gap under the plate</source>
      <translation>Spalt unter der Richtplatte</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Lay a flat plate across both tubes: it touches at three corners and stands off at the fourth. Slip feeler gauges into that gap and read the leaf that just drags; nought where it touches all round.</source>
      <translation>Richtplatte quer über beide Standrohre legen: Sie liegt an drei Ecken an und steht an der vierten ab. Fühlerlehre in diesen Spalt schieben und das Blatt ablesen, das gerade noch streift; null, wo sie ringsum anliegt.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Height between the two places</source>
      <translation>Höhe zwischen den beiden Stellen</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure along a tube from the upper place to the lower one: the edges of the plate, the two bars, or the two widths. The further apart they are, the better a small twist shows.</source>
      <translation>Längs eines Standrohrs von der oberen zur unteren Stelle messen: Kanten der Richtplatte, die beiden Richtstäbe oder die beiden Breiten. Je weiter sie auseinander liegen, desto besser zeigt sich eine kleine Verdrehung.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Two bars, seen from the left</source>
      <translation>Zwei Richtstäbe, von links gesehen</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Lay two straight bars across both tubes, one above the other, middles in line, and look at their left ends from the left. Measure, square to the tubes, how far the lower bar's end stands ahead of the upper one's; behind is minus.</source>
      <translation>Zwei gerade Richtstäbe quer über beide Standrohre legen, einen über dem anderen, Mitten in einer Flucht, und von links auf ihre linken Enden sehen. Rechtwinklig zu den Standrohren messen, wie weit das Ende des unteren Stabs vor dem des oberen steht; dahinter: minus.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Half length of the bar</source>
      <translation>Halbe Länge des Richtstabs</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the middle between the legs out to the left end of the bar. Both bars lie with their middles in line.</source>
      <translation>Von der Mitte zwischen den Holmen nach außen bis zum linken Ende des Stabs. Beide Stäbe liegen mit ihren Mitten in einer Flucht.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Width over both tubes</source>
      <translation>Breite über beide Standrohre</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure over the outsides of both tubes, square across, with the same gauge above and below. Wipe the tubes, and take the smallest reading across.</source>
      <translation>Außen über beide Standrohre messen, rechtwinklig quer, oben und unten mit demselben Messmittel. Standrohre abwischen und den kleinsten Messwert quer nehmen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Leg right out</source>
      <translation>Holm ganz ausgefedert</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Support the front so that it cannot fall and the wheel hangs free, and measure between two marks that come together as the fork goes in, such as lower bracket and axle. Keep to the same two marks for every reading of the sag.</source>
      <translation>Vorderbau so abstützen, dass er nicht fallen kann und das Rad frei hängt, und zwischen zwei Marken messen, die sich beim Einfedern nähern, etwa untere Gabelbrücke und Vorderachse. Für jeden Messwert des Negativfederwegs dieselben zwei Marken nehmen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>On its wheels</source>
      <translation>Auf den Rädern</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Stand the machine upright on its wheels, let it settle, and measure between the same two marks as with the wheel off the ground. With the rider on, someone else reads while the rider sits still with the feet up.</source>
      <translation>Motorrad aufrecht auf die Räder stellen, sich setzen lassen und zwischen denselben zwei Marken messen wie bei freiem Rad. Mit Fahrer liest ein anderer ab, während der Fahrer mit angehobenen Füßen still sitzt.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>After pushing down</source>
      <translation>Nach dem Herunterdrücken</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Push the front down, let it come up slowly by itself, and measure between the same two marks. Friction holds it a little low: that is why it is read once from each side.</source>
      <translation>Vorderbau herunterdrücken, langsam von selbst hochkommen lassen und zwischen denselben zwei Marken messen. Reibung hält ihn etwas zu tief: Deshalb wird einmal von jeder Seite her gemessen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>After lifting</source>
      <translation>Nach dem Anheben</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Lift the front a little, let it go down slowly by itself, and measure between the same two marks. Friction holds it a little high: that is why it is read once from each side.</source>
      <translation>Vorderbau etwas anheben, langsam von selbst sinken lassen und zwischen denselben zwei Marken messen. Reibung hält ihn etwas zu hoch: Deshalb wird einmal von jeder Seite her gemessen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Oil by volume</source>
      <translation>Öl nach Menge</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Stand the measuring cylinder level and read at the lowest part of the surface, with the eye at its height. Let what clings to the glass run down first.</source>
      <translation>Messzylinder waagerecht stellen und an der tiefsten Stelle der Oberfläche ablesen, das Auge auf gleicher Höhe. Was am Glas haftet, zuerst ablaufen lassen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Air gap</source>
      <translation>Luftkammer</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Spring out, leg upright and pushed right in: measure from the tube's top edge down to the oil. Pump the leg until no bubbles rise, and let it settle before reading.</source>
      <translation>Feder heraus, Holm senkrecht und ganz eingefedert: von der Oberkante des Standrohrs hinab bis zum Öl messen. Holm pumpen, bis keine Blasen aufsteigen, und vor dem Ablesen ruhen lassen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Air pressure</source>
      <translation>Luftdruck</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Read it cold with the wheel off the ground, using a gauge made for low pressure. Each time the gauge goes on, some air is lost: take the first reading.</source>
      <translation>Kalt und mit freiem Rad ablesen, mit einem Manometer für niedrigen Druck. Bei jedem Ansetzen des Manometers geht etwas Luft verloren: den ersten Messwert nehmen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Preload as found</source>
      <translation>Vorspannung, vorgefunden</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure how far the adjuster stands out of the cap, or count the rings that show, each leg by itself. Counting turns from fully out is as good; say which it was.</source>
      <translation>Messen, wie weit der Einsteller aus der Verschlussschraube ragt, oder die sichtbaren Ringe zählen, jeden Holm für sich. Umdrehungen ab ganz herausgedreht zu zählen ist ebenso gut; angeben, was es war.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Viscosity of an oil</source>
      <translation>Viskosität eines Öls</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Take the cSt from the oil's data sheet, and all values at one temperature. The W number on the bottle is a name and says little.</source>
      <translation>Den cSt-Wert dem Datenblatt des Öls entnehmen, alle Werte bei einer Temperatur. Die W-Zahl auf der Flasche ist ein Name und sagt wenig.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Pull to turn the steering</source>
      <translation>Zugkraft zum Drehen der Lenkung</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Front wheel off the ground, hoses and cables free: hook the scale in, pull square to its arm and slowly. Read it as the steering starts to turn, the same to both sides.</source>
      <translation>Vorderrad frei vom Boden, Schläuche und Züge frei: Federwaage einhängen, rechtwinklig zum Hebelarm und langsam ziehen. Ablesen, wenn sich die Lenkung zu drehen beginnt, nach beiden Seiten gleich.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Radius of the pull</source>
      <translation>Radius der Zugkraft</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the steering axis to the place where the scale hooks in, square to the pull. Pull times radius is the drag.</source>
      <translation>Von der Lenkachse bis zu der Stelle, an der die Federwaage eingehängt ist, rechtwinklig zur Zugrichtung. Zugkraft mal Radius ist das Reibmoment.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Free length of a spring</source>
      <translation>Freie Länge einer Feder</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Stand the spring upright on a flat bench without pressing it, and measure from the bench to its top. Turn it a third round between readings.</source>
      <translation>Feder ungedrückt aufrecht auf eine ebene Werkbank stellen und von der Werkbank bis zu ihrer Oberkante messen. Zwischen den Messwerten um eine Drittelumdrehung drehen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Swing on V-blocks</source>
      <translation>Zeigerausschlag auf Prismen</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Set the pointer on the tube or the axle between the V-blocks, turn it once round and read how far the pointer swings, lowest to highest. Type the whole swing: the bend is half of that.</source>
      <translation>Messuhr zwischen den Prismen auf das Standrohr oder die Achse setzen, dieses einmal ganz herumdrehen und den Zeigerausschlag ablesen, vom kleinsten zum größten Wert. Den ganzen Ausschlag eingeben: Die Verbiegung ist die Hälfte davon.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Play in the bushes</source>
      <translation>Spiel in den Gleitbuchsen</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Hold the slider still and rock the tube fore and aft, with the pointer just above the seal; read the whole swing. Do it nearly out, half way and nearly in.</source>
      <translation>Tauchrohr festhalten und Standrohr vor und zurück bewegen, Taster dicht über dem Dichtring; den ganzen Ausschlag ablesen. In drei Stellungen messen: fast ausgefedert, in der Mitte und fast eingefedert.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the maker's manual</source>
      <translation>Aus dem Werkstatthandbuch des Herstellers</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Take it from the maker's manual for this very model and year, with its unit as printed, and write down where it stands. Where you cannot find it, leave it empty and ask: it is never guessed.</source>
      <translation>Dem Werkstatthandbuch des Herstellers für genau dieses Modell und Baujahr entnehmen, mit der gedruckten Einheit, und die Fundstelle aufschreiben. Wo es sich nicht finden lässt, leer lassen und nachfragen: Es wird nie geraten.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Bore of the tube</source>
      <translation>Bohrung des Standrohrs</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure inside the tube's upper end with the inside jaws, below the thread and square across. Rock the gauge gently and take the largest reading.</source>
      <translation>Am oberen Ende innen im Standrohr mit den Innenschenkeln messen, unter dem Gewinde und rechtwinklig quer. Messmittel leicht hin und her bewegen und den größten Messwert nehmen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Rod in the oil</source>
      <translation>Stange im Öl</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure across the damper rod where the oil will stand about it. It takes room away from the oil.</source>
      <translation>Quer über die Dämpferstange messen, wo das Öl um sie stehen wird. Sie nimmt dem Öl Raum weg.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Tube that slides in the seal</source>
      <translation>Rohr, das im Dichtring gleitet</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure across the tube where it runs in the seal, not at the brackets. Measure twice, a quarter turn apart.</source>
      <translation>Quer über das Rohr messen, wo es im Dichtring läuft, nicht an den Gabelbrücken. Zweimal messen, um eine Vierteldrehung versetzt.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Travel</source>
      <translation>Federweg</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Without its spring, pull the leg right out and push it right in, and measure how far it went. The manual's figure is as good.</source>
      <translation>Ohne Feder den Holm ganz auseinanderziehen und ganz zusammenschieben und messen, wie weit er sich bewegt hat. Der Wert des Werkstatthandbuchs ist ebenso gut.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Length of the spacer</source>
      <translation>Länge der Distanzhülse</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure the spacer out of the leg, end to end, along its axis. Cut square, it is the same all round.</source>
      <translation>Ausgebaute Distanzhülse von Ende zu Ende längs ihrer Achse messen. Winklig geschnitten ist sie ringsum gleich lang.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Room for spring and spacer</source>
      <translation>Raum für Feder und Distanzhülse</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Spring out, leg right out: lower a rod to the spring's lower seat, mark it at the tube's top edge, and take off what the cap reaches below that edge when it is home. The preload adjuster stands at its lowest.</source>
      <translation>Feder heraus, Holm ganz ausgefedert: einen Stab bis auf den unteren Federsitz hinablassen, ihn an der Oberkante des Standrohrs anzeichnen und abziehen, was die ganz eingedrehte Verschlussschraube unter diese Kante reicht. Die Vorspannung steht dabei auf ihrem kleinsten Wert.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Washers and seats</source>
      <translation>Scheiben und Federsitze</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Lay all washers and seats that lie between the spring's lower seat and the cap on one another, and measure the pile. Where there is none, type 0.</source>
      <translation>Alle Scheiben und Sitze, die zwischen dem unteren Federsitz und der Verschlussschraube liegen, aufeinanderlegen und den Stapel messen. Wo keine sind, 0 eingeben.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>All coils touching</source>
      <translation>Alle Windungen liegen an</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Take it from the spring's data sheet, or count all coils, the end ones too, and multiply by the wire's thickness. Where the ends are not ground flat, count one and a half more.</source>
      <translation>Dem Datenblatt der Feder entnehmen oder alle Windungen zählen, auch die an den Enden, und mit der Drahtdicke malnehmen. Sind die Enden nicht plan geschliffen, anderthalb Windungen mehr zählen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>solid length by the count of coils: EN 13906-1, from memory</source>
      <translation>Blocklänge aus der Zahl der Windungen: EN 13906-1, aus dem Gedächtnis</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Preload</source>
      <translation>Vorspannung</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>How much shorter the spring is once the cap is down than it is standing free. Free length, less the room that is left for it.</source>
      <translation>Um wie viel die Feder bei eingeschraubter Verschlussschraube kürzer ist als frei stehend. Freie Länge minus Raum, der ihr bleibt.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Volume of a spring</source>
      <translation>Volumen einer Feder</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Half fill a measuring cylinder, read it, let the spring down into it until it is covered, and read it again. The difference is the spring's own volume.</source>
      <translation>Messzylinder halb füllen, ablesen, Feder hineinlassen, bis sie bedeckt ist, und wieder ablesen. Die Differenz ist das Eigenvolumen der Feder.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Rate of a spring</source>
      <translation>Federrate</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Press the spring on a scale, guided so that it cannot jump out, and read force and way, well clear of both ends of its travel. Force divided by way is the rate; with two rates, measure each in its own part.</source>
      <translation>Feder auf einer Waage zusammendrücken, so geführt, dass sie nicht herausspringen kann, und Kraft und Weg ablesen, weit entfernt von beiden Enden ihres Wegs. Kraft geteilt durch Weg ist die Rate; bei zwei Raten jede in ihrem eigenen Bereich messen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Diameter of a tube</source>
      <translation>Durchmesser eines Standrohrs</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure across the tube where the bracket clamps it, square to its axis. Measure twice, a quarter turn apart: a tube that is crushed shows it here.</source>
      <translation>Quer über das Rohr messen, wo die Gabelbrücke es klemmt, rechtwinklig zu seiner Achse. Zweimal messen, um eine Vierteldrehung versetzt: Hier zeigt sich ein gequetschtes Rohr.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Leg spacing</source>
      <translation>Holmabstand</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure over the outsides of both tubes at the bracket and take one tube's diameter off: that is centre to centre. Do it close under the bracket, square across.</source>
      <translation>An der Gabelbrücke außen über beide Standrohre messen und einen Rohrdurchmesser abziehen: Das ist Mitte zu Mitte. Dicht unter der Gabelbrücke messen, rechtwinklig quer.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Bracket spacing</source>
      <translation>Abstand der Gabelbrücken</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Along a tube, from the middle of the top bracket's clamp to the middle of the lower one's. From upper face to upper face is the same where both clamps are equally high.</source>
      <translation>Längs eines Standrohrs von der Mitte der Klemmung der oberen Gabelbrücke bis zur Mitte der unteren. Von Oberseite zu Oberseite ist dasselbe, wo beide Klemmungen gleich hoch sind.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Lower bracket to axle</source>
      <translation>Untere Gabelbrücke bis Achse</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Along the leg, from the middle of the lower bracket's clamp to the middle of the axle. Wheel off the ground, the leg right out.</source>
      <translation>Längs des Holms von der Mitte der Klemmung der unteren Gabelbrücke bis zur Mitte der Vorderachse. Rad frei vom Boden, Holm ganz ausgefedert.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Bracket offset</source>
      <translation>Versatz der Gabelbrücken</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Seen from above, from the steering axis forward to the line through the middles of both tubes, square across. Measure at the bracket itself, out of the machine if it can be.</source>
      <translation>Von oben gesehen von der Lenkachse nach vorn bis zur Linie durch die Mitten beider Standrohre, rechtwinklig dazu. An der Gabelbrücke selbst messen, möglichst im ausgebauten Zustand.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Rake</source>
      <translation>Nachlaufwinkel</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>The angle of the steering axis against the upright, the machine standing level as it rides: from the manual, or by an angle gauge along the steering head. Where it is printed against the ground, about 63°, take that from 90°.</source>
      <translation>Der Winkel der Lenkachse gegen die Senkrechte, das Motorrad eben und in Fahrlage: aus dem Werkstatthandbuch oder mit einem Winkelmesser längs am Lenkkopf. Ist er gegen die Waagerechte angegeben, etwa 63°, diesen Wert von 90° abziehen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Axle offset</source>
      <translation>Achsversatz</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the steering axis forward to the middle of the axle, square to the axis; behind is minus. Where the legs run along the axis it is the bracket offset and what the axle stands ahead of the leg's middle line, added up.</source>
      <translation>Von der Lenkachse nach vorn bis zur Mitte der Vorderachse, rechtwinklig zur Lenkachse; dahinter: minus. Wo die Holme parallel zur Lenkachse stehen, ist es der Versatz der Gabelbrücken plus das Maß, um das die Vorderachse vor der Mittellinie des Holms sitzt.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Radius of a wheel, loaded</source>
      <translation>Radius eines Rads, belastet</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the ground straight up to the middle of the axle, the machine upright on its wheels with the rider on. Tyre pressures as the manual gives them.</source>
      <translation>Vom Boden senkrecht nach oben bis zur Mitte der Achse, das Motorrad mit Fahrer aufrecht auf den Rädern. Reifendruck nach Werkstatthandbuch.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Wheelbase</source>
      <translation>Radstand</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the middle of one axle to the middle of the other along level ground, the steering straight ahead. Measure on both sides and take the mean.</source>
      <translation>Von der Mitte der einen Achse zur Mitte der anderen auf ebenem Boden, Lenkung geradeaus. Auf beiden Seiten messen und den Mittelwert nehmen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Thread</source>
      <translation>Gewinde</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure across the crests for the size, and lay a thread gauge along it for the pitch. Written as M8 x 1.25.</source>
      <translation>Für die Größe über die Gewindespitzen messen, für die Steigung eine Gewindelehre anlegen. Geschrieben als M8x1,25.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Torque seen</source>
      <translation>Drehmoment abgelesen</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Pull slowly and evenly at the middle of the grip, square to the wrench, until it clicks or points at the value. Write what the wrench itself shows, not what the fastener should have.</source>
      <translation>Langsam und gleichmäßig an der Mitte des Griffs ziehen, rechtwinklig zum Drehmomentschlüssel, bis er auslöst oder auf den Wert zeigt. Aufschreiben, was der Drehmomentschlüssel selbst zeigt, nicht was die Verschraubung haben soll.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Scale of the wrench</source>
      <translation>Skala des Drehmomentschlüssels</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>The lowest and the highest mark on its scale, with the unit printed there. Near its lowest mark a wrench is least to be trusted.</source>
      <translation>Der kleinste und der größte Skalenwert, mit der dort gedruckten Einheit. Nahe dem kleinsten Skalenwert ist einem Drehmomentschlüssel am wenigsten zu trauen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Deviation of the wrench</source>
      <translation>Abweichung des Drehmomentschlüssels</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>The share of the reading by which it may be wrong, from its calibration sheet. Without a sheet leave it empty, and 4 % is taken; for a small wrench up to 10 N·m write 6 %.</source>
      <translation>Der Anteil am abgelesenen Wert, um den er falsch sein kann, aus seinem Kalibrierschein. Ohne Kalibrierschein leer lassen, dann gelten 4 %; bei einem kleinen Drehmomentschlüssel bis 10 N·m 6 % eintragen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Lengths of wrench and adapter</source>
      <translation>Längen von Drehmomentschlüssel und Aufsatz</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>L goes from the middle of the square to the middle of the grip, where the hand pulls; E from the square to the middle of the fastener. Measure with the adapter on, as it will be used.</source>
      <translation>L reicht von der Mitte des Vierkants bis zur Mitte des Griffs, wo die Hand zieht; E vom Vierkant bis zur Mitte der Verschraubung. Mit angesetztem Aufsatz messen, so wie er benutzt wird.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Angle of the adapter</source>
      <translation>Winkel des Aufsatzes</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>From the line of the wrench, run on past the square, round to the line of the adapter. Straight out is 0, square to the wrench 90, folded back along it 180.</source>
      <translation>Von der über den Vierkant hinaus verlängerten Linie des Drehmomentschlüssels bis zur Linie des Aufsatzes. Gerade hinaus ist 0, rechtwinklig zum Drehmomentschlüssel 90, an ihm entlang zurückgeklappt 180.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Smallest step</source>
      <translation>Kleinster Schritt</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>The distance between two marks of its scale, or the last digit of its display. Where you read between the marks, the part that you can really tell.</source>
      <translation>Der Abstand zweier Teilstriche der Skala oder die letzte Stelle der Anzeige. Wo zwischen den Teilstrichen abgelesen wird, der Teil, der sich wirklich unterscheiden lässt.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Limit of error</source>
      <translation>Fehlergrenze</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>The most that the gauge itself may be wrong by, from its calibration sheet or its standard. Check it against something known before you trust it.</source>
      <translation>Das Höchste, um das das Messmittel selbst falsch sein kann, aus seinem Kalibrierschein oder seiner Norm. Vor Gebrauch an etwas Bekanntem prüfen.</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>How well it repeats</source>
      <translation>Wiederholbarkeit</translation>
    </message>
    <message>
      <location filename="resources/measuring/guides.json" />
      <source>Measure the same place ten times, lifting the gauge off each time. The standard deviation of the ten is its repeatability in your hand.</source>
      <translation>Dieselbe Stelle zehnmal messen, das Messmittel jedes Mal abheben. Die Standardabweichung der zehn ist seine Wiederholbarkeit in der eigenen Hand.</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>upper face</source>
      <translation>Oberseite</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>top edge</source>
      <translation>Oberkante</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>cap</source>
      <translation>Verschluss</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>frame</source>
      <translation>Rahmen</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>ahead</source>
      <translation>voraus</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>plate</source>
      <translation>Platte</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>ahead +</source>
      <translation>voraus +</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>upper bar</source>
      <translation>Stab oben</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>lower bar</source>
      <translation>Stab unten</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>seen from the left</source>
      <translation>von links gesehen</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>loaded</source>
      <translation>belastet</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>read here</source>
      <translation>hier ablesen</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>pushed right in</source>
      <translation>ganz eingefedert</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>wheel off the ground</source>
      <translation>Rad frei vom Boden</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>cold</source>
      <translation>kalt</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>showing</source>
      <translation>sichtbar</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>swing</source>
      <translation>Ausschlag</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>turn once round</source>
      <translation>einmal herumdrehen</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>rock it</source>
      <translation>hin und her</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>above the seal</source>
      <translation>über dem Dichtring</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>held still</source>
      <translation>festgehalten</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>free</source>
      <translation>frei</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>scale</source>
      <translation>Waage</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>this model, this year</source>
      <translation>dieses Modell, dieses Baujahr</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>10W</source>
      <translation>10W</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>cSt at 40 °C</source>
      <translation>cSt bei 40 °C</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>inside</source>
      <translation>innen</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>across</source>
      <translation>quer</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>rod</source>
      <translation>Stange</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>tube</source>
      <translation>Rohr</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>right out</source>
      <translation>ganz aus</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>right in</source>
      <translation>ganz ein</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>room</source>
      <translation>Raum</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>seat</source>
      <translation>Sitz</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>pile</source>
      <translation>Stapel</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>solid</source>
      <translation>Block</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>fitted</source>
      <translation>eingebaut</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>spring</source>
      <translation>Feder</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>1st reading</source>
      <translation>1. Ablesung</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>2nd reading</source>
      <translation>2. Ablesung</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>mm</source>
      <translation>mm</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>centre to centre</source>
      <translation>Mitte zu Mitte</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>middles</source>
      <translation>Mitten</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>to the axle</source>
      <translation>zur Achse</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>steering axis</source>
      <translation>Lenkachse</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>steering straight</source>
      <translation>Lenkung geradeaus</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>pitch</source>
      <translation>Steigung</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>middle of the grip</source>
      <translation>Griffmitte</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>square</source>
      <translation>Vierkant</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>slowly</source>
      <translation>langsam</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>angle</source>
      <translation>Winkel</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>smallest step</source>
      <translation>kleinster Schritt</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>repeats</source>
      <translation>Streuung</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>lift off, read again</source>
      <translation>abheben, neu ablesen</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>most it is wrong by</source>
      <translation>größter Fehler</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>true</source>
      <translation>wahr</translation>
    </message>
    <message>
      <location filename="resources/measuring/sketches.json" />
      <source>shown</source>
      <translation>angezeigt</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>seated</source>
      <translation>gesetzt</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}: seat the bearing, then swing lock to lock</source>
      <translation>{joint}: Lager setzen, dann von Anschlag zu Anschlag schwenken</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The races and balls are pressed home first, because a bearing that settles later leaves the steering slack.</source>
      <translation>Laufringe und Kugeln werden zuerst ganz in ihren Sitz gedrückt, denn ein Lager, das sich später setzt, hinterlässt Spiel in der Lenkung.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>backed off</source>
      <translation>zurückgedreht</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}: back off {turn}</source>
      <translation>{joint}: {turn} zurückdrehen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The seating load is taken off again, because left on it dents the races and makes the steering heavy.</source>
      <translation>Die Setzlast wird wieder weggenommen, denn bleibt sie, hinterlässt sie Eindrücke in den Laufringen und macht die Lenkung schwergängig.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>set</source>
      <translation>eingestellt</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}: set the bearing</source>
      <translation>{joint}: Lager einstellen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The bearing is set with nothing hung on the stem, because its drag can be felt only while the brackets swing free.</source>
      <translation>Das Lager wird eingestellt, solange nichts am Lenkschaft hängt, denn sein Widerstand ist nur zu spüren, solange die Gabelbrücken frei schwenken.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>No play and no notch: a bearing set too tight wanders as badly as a slack one.</source>
      <translation>Kein Spiel und keine Raststelle: Mit zu stramm eingestelltem Lager pendelt das Motorrad ebenso schlimm wie mit losem.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Top bracket on, its bolts in by hand, its clamps slack</source>
      <translation>Obere Gabelbrücke aufgesetzt, Schrauben von Hand eingedreht, Klemmungen locker</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The tubes go up through both brackets, so the top one is on, and free to find its place, before the legs.</source>
      <translation>Die Standrohre gehen durch beide Gabelbrücken nach oben, daher sitzt die obere vor den Holmen und kann ihre Lage noch frei finden.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars ready to go on with the legs, clamps slack</source>
      <translation>Lenker bereit zum Aufschieben mit den Holmen, Klemmungen locker</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars between or below the brackets can only be threaded on while the tubes go up through them.</source>
      <translation>Lenker zwischen oder unter den Gabelbrücken lassen sich nur auffädeln, während die Standrohre hindurch nach oben gehen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Legs in to their height, lower clamps nipped up</source>
      <translation>Holme auf ihren Überstand eingeschoben, untere Klemmungen leicht angezogen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The lower clamps are nipped up just enough to carry the legs, so that each can still be pushed to its height.</source>
      <translation>Die unteren Klemmungen werden nur so weit angezogen, dass sie die Holme tragen, damit jeder noch auf seinen Überstand geschoben werden kann.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Machine supported so that it cannot tip with the front end out; a nipped clamp can let a leg slip.</source>
      <translation>Motorrad so abgestützt, dass es ohne Vorderbau nicht kippen kann; in einer leicht angezogenen Klemmung kann ein Holm rutschen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure both heights: protrusion equal</source>
      <translation>Beide Überstände messen: müssen gleich sein</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The heights are measured while a leg can still be moved by hand; after the clamps it costs the whole job again.</source>
      <translation>Die Überstände werden gemessen, solange sich ein Holm noch von Hand verschieben lässt; nach den Klemmungen kostet es die ganze Arbeit noch einmal.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure both sides: lower bracket square to the frame</source>
      <translation>Beide Seiten messen: untere Gabelbrücke winklig zum Rahmen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The bracket is squared once the legs stand at their height and before it is clamped, because clamped askew it stays askew.</source>
      <translation>Die Gabelbrücke wird winklig gestellt, wenn die Holme auf ihrem Überstand stehen und bevor sie geklemmt wird, denn schief geklemmt bleibt sie schief.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Check that the legs are in line</source>
      <translation>Prüfen, dass die Holme fluchten</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A twist between the brackets can be turned out only while the stem and the top clamps are slack.</source>
      <translation>Eine Verdrehung zwischen den Gabelbrücken lässt sich nur herausdrehen, solange Lenkschaft und obere Klemmungen locker sind.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Swing lock to lock: steering free, no play</source>
      <translation>Von Anschlag zu Anschlag schwenken: Lenkung frei, kein Spiel</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The stem head presses on the bearing too, so its drag is felt again before the clamps make a correction dear.</source>
      <translation>Auch die Lenkschaftverschraubung drückt auf das Lager, daher wird sein Widerstand noch einmal erfühlt, bevor die Klemmungen eine Korrektur teuer machen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Preload adjusters, where fitted, at their lowest</source>
      <translation>Vorspannungseinsteller, falls vorhanden, auf kleinster Vorspannung</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Wound down to the lowest preload, the spring presses least while the cap's thread is started.</source>
      <translation>Bei kleinster Vorspannung drückt die Feder am wenigsten, während das Gewinde der Verschlussschraube angesetzt wird.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Write the setting down first; it goes back when the caps are tight.</source>
      <translation>Die Einstellung vorher notieren; sie kommt zurück, wenn die Verschlussschrauben fest sind.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure both heights again</source>
      <translation>Beide Überstände noch einmal messen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Tightening can draw a tube up or down in its clamp, and this is the last moment before the tops are covered.</source>
      <translation>Das Anziehen kann ein Standrohr in seiner Klemmung nach oben oder unten ziehen, und dies ist der letzte Moment, bevor die Rohrenden verdeckt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Preload adjusters, where fitted, back to their setting, both alike</source>
      <translation>Vorspannungseinsteller, falls vorhanden, zurück auf ihre Einstellung, beide gleich</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The caps are tight, so the springs may press again, and the adjusters can still be reached.</source>
      <translation>Die Verschlussschrauben sind fest, die Federn dürfen also wieder drücken, und die Einsteller sind noch erreichbar.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Seals out, air line joined to both legs, where one joins them</source>
      <translation>Verschlüsse heraus, Luftleitung an beide Holme angeschlossen, wo eine sie verbindet</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The line is joined when both legs stand at their proved height, because a leg that is still moved pulls at it and cuts its O-rings.</source>
      <translation>Die Leitung wird angeschlossen, wenn beide Holme auf ihrem bestätigten Überstand stehen, denn ein Holm, der noch verschoben wird, zieht daran und zerschneidet ihre O-Ringe.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Every O-ring looked at, even where no pressure is used; no air in yet.</source>
      <translation>Jeden O-Ring ansehen, auch wo kein Druck verwendet wird; noch keine Luft einfüllen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Fork brace in place, its bolts finger-tight</source>
      <translation>Gabelstabilisator angesetzt, Schrauben handfest</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The brace goes on while the wheel is out of the way, and stays slack until the sliders have found their place along the axle.</source>
      <translation>Der Gabelstabilisator wird angebaut, solange das Rad nicht im Weg ist, und bleibt locker, bis die Tauchrohre ihren Platz auf der Vorderachse gefunden haben.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Brake lines joined to the anti-dive units, with new sealing rings</source>
      <translation>Bremsleitungen an die Anti-Dive-Einheiten angeschlossen, mit neuen Dichtringen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The lines are joined when the legs stand where they stay, so that each lies without a twist, and before the brake is filled.</source>
      <translation>Die Leitungen werden angeschlossen, wenn die Holme stehen, wo sie bleiben, damit jede ohne Verdrehung liegt, und bevor die Bremse befüllt wird.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The caps on the lines come off last, one line at a time. The torque of the union is in the brake chapter of the manual; a used ring weeps.</source>
      <translation>Die Kappen der Leitungen kommen zuletzt ab, immer nur eine Leitung auf einmal. Das Anzugsdrehmoment des Anschlusses steht im Bremsenkapitel des Werkstatthandbuchs; ein gebrauchter Ring leckt.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Wheel in, axle hand-tight</source>
      <translation>Rad eingesetzt, Vorderachse handfest</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The wheel goes in with the axle by hand only, because an axle that will not go in by hand shows that something is out of line.</source>
      <translation>Das Rad wird mit der Vorderachse nur von Hand eingesetzt, denn eine Vorderachse, die sich nicht von Hand einschieben lässt, zeigt, dass etwas nicht fluchtet.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Machine supported; speedometer drive, spacers and the wheel's direction of turning looked at before the axle goes through.</source>
      <translation>Motorrad abgestützt; Tachoantrieb, Distanzhülsen und Laufrichtung des Rades angesehen, bevor die Vorderachse durchgeschoben wird.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Fill and bleed the brake, anti-dive units too, until no bubble comes</source>
      <translation>Bremse befüllen und entlüften, auch die Anti-Dive-Einheiten, bis keine Blase mehr kommt</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The lines to the units stood open and hold air, and a lever that squeezes air holds no wheel.</source>
      <translation>Die Leitungen zu den Einheiten standen offen und enthalten Luft, und ein Hebel, der Luft zusammendrückt, hält kein Rad.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Fresh fluid from a sealed can, of the kind the manual names. It takes paint and harms the eyes: rinse with water at once.</source>
      <translation>Frische Bremsflüssigkeit aus versiegeltem Gebinde, von der Sorte, die das Werkstatthandbuch nennt. Sie greift Lack an und schädigt die Augen: sofort mit Wasser spülen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Pump the brake lever until it is firm</source>
      <translation>Bremshebel pumpen, bis der Druckpunkt fest ist</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The pads stand back from the disc after refitting: the first pulls bring them up, and only then can the brake hold the wheel.</source>
      <translation>Die Beläge stehen nach dem Einbau von der Scheibe ab: Erst die ersten Züge legen sie an, und erst dann kann die Bremse das Rad halten.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The first pull finds no brake. Look at the fluid level; a lever that stays soft means air, and nobody rides until it is bled.</source>
      <translation>Der erste Zug geht ins Leere. Flüssigkeitsstand ansehen; ein Druckpunkt, der weich bleibt, bedeutet Luft, und niemand fährt, bis entlüftet ist.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Pump the fork three times, wheel held by the brake</source>
      <translation>Gabel dreimal durchfedern, Rad mit der Bremse gehalten</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Pumping lets the sliders find their own place along the axle before they are pinched on it, so the fork does not bind.</source>
      <translation>Beim Durchfedern finden die Tauchrohre ihren eigenen Platz auf der Vorderachse, bevor sie darauf geklemmt werden, damit sich die Gabel nicht verspannt.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Wheel on the ground, machine upright and held by a second person or against a wall.</source>
      <translation>Rad am Boden, Motorrad aufrecht und von einer zweiten Person oder an einer Wand gehalten.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Lock to lock: hoses and cables run free</source>
      <translation>Von Anschlag zu Anschlag: Schläuche und Züge laufen frei</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Looked at now that every hose and cable has both ends fixed and shows its real run.</source>
      <translation>Wird jetzt angesehen, da jeder Schlauch und Zug an beiden Enden befestigt ist und seinen wirklichen Verlauf zeigt.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A hose that pulls at full lock can turn the steering or tear: no riding until it is put right.</source>
      <translation>Ein Schlauch, der am vollen Lenkanschlag zieht, kann die Lenkung drehen oder reißen: nicht fahren, bis das behoben ist.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Air back in, to the pressure the manual gives, both legs alike</source>
      <translation>Luft wieder einfüllen, auf den Druck laut Werkstatthandbuch, beide Holme gleich</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The air goes in last, when every joint that holds it is tight and the fork has settled on its axle without it.</source>
      <translation>Die Luft kommt zuletzt hinein, wenn jede Verbindung, die sie hält, fest ist und die Gabel sich ohne sie auf ihrer Vorderachse gesetzt hat.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Front wheel clear of the ground. A hand pump only: a leg holds so little that a workshop line bursts its seals at once. Never above the limit in the manual.</source>
      <translation>Vorderrad frei vom Boden. Nur eine Handpumpe: Ein Holm fasst so wenig, dass die Druckluft der Werkstatt seine Dichtungen sofort sprengt. Nie über den Grenzwert im Werkstatthandbuch.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Machine supported upright, its front wheel still on the ground</source>
      <translation>Motorrad aufrecht abgestützt, Vorderrad noch am Boden</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The support comes before the first bolt, because the tight ones take a long bar, and a machine that rocks falls.</source>
      <translation>Die Abstützung kommt vor der ersten Schraube, denn die festen brauchen einen langen Hebel, und ein Motorrad, das wackelt, fällt um.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It must stand when pushed, now and with the front end off: under the engine or the frame, never by the exhaust.</source>
      <translation>Es muss stehen bleiben, wenn man dagegen drückt, jetzt und ohne Vorderbau: unter Motor oder Rahmen abstützen, nie am Auspuff.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Let the air out of both legs at the valve</source>
      <translation>Luft aus beiden Holmen am Ventil ablassen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The air goes before anything of the legs is loosened, because a leg under air throws its cap or its fitting and the oil after it.</source>
      <translation>Die Luft kommt heraus, bevor irgendetwas an den Holmen gelöst wird, denn ein Holm unter Luftdruck schleudert seine Verschlussschraube oder seinen Anschluss heraus und das Öl hinterher.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Read the pressure first, as the manual measures it, and write it down. Open the valve slowly, a rag over it and the face away; the front end sinks a little.</source>
      <translation>Zuerst den Druck ablesen, so wie das Werkstatthandbuch ihn misst, und notieren. Ventil langsam öffnen, einen Lappen darüber und das Gesicht abgewandt; der Vorderbau sinkt etwas ein.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>cracked</source>
      <translation>angelöst</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Crack {joint}, wheel still on the ground</source>
      <translation>{joint} anlösen, Rad noch am Boden</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Crack</source>
      <translation>anlösen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}, wheel still on the ground</source>
      <translation>{joint}, Rad noch am Boden</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is cracked, half a turn and no more, while the wheel stands on the ground, because once that is lifted the axle turns along and the machine rocks on its support.</source>
      <translation>Angelöst wird, eine halbe Umdrehung und nicht mehr, solange das Rad am Boden steht, denn ist es angehoben, dreht die Vorderachse mit und das Motorrad wackelt auf seiner Abstützung.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Front wheel lifted clear of the ground</source>
      <translation>Vorderrad frei vom Boden angehoben</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is lifted now that the axle, which takes a long bar, is cracked, because the wheel has to hang clear to come out.</source>
      <translation>Angehoben wird jetzt, da die Vorderachse, die einen langen Hebel braucht, angelöst ist, denn das Rad muss frei hängen, um herauszukommen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Push the machine again: it must stand now, and with wheel and legs off.</source>
      <translation>Noch einmal gegen das Motorrad drücken: Es muss jetzt stehen bleiben, und auch ohne Rad und Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A slip of wood between the pads of each hung caliper</source>
      <translation>Ein Stück Holz zwischen die Beläge jedes aufgehängten Bremssattels</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>With no disc between the pads, one pull at the lever closes them or pushes a piston out.</source>
      <translation>Ohne Scheibe zwischen den Belägen schließt ein Zug am Hebel sie oder drückt einen Kolben heraus.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Nobody touches the lever until the calipers are back over their discs.</source>
      <translation>Niemand berührt den Hebel, bis die Bremssättel wieder über ihren Scheiben sitzen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Axle out, wheel out; spacers laid down in their order</source>
      <translation>Vorderachse heraus, Rad heraus; Distanzhülsen in ihrer Reihenfolge abgelegt</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The wheel comes out before the legs are slackened, because it ties them together and its weight hangs on them.</source>
      <translation>Das Rad kommt heraus, bevor die Holme gelockert werden, denn es verbindet sie, und sein Gewicht hängt an ihnen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Crack {joint}, a quarter turn</source>
      <translation>{joint} anlösen, eine Viertelumdrehung</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}, a quarter turn</source>
      <translation>{joint}, eine Viertelumdrehung</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is cracked while cap and spring still press on the damper rod, because without them the rod turns with its bolt.</source>
      <translation>Angelöst wird, solange Verschlussschraube und Feder noch auf das Dämpferrohr drücken, denn ohne sie dreht das Dämpferrohr mit seiner Schraube mit.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A quarter turn and no more, a tray under it: the oil is still in, and is drained later on the bench.</source>
      <translation>Eine Viertelumdrehung und nicht mehr, eine Wanne darunter: Das Öl ist noch drin und wird später auf der Werkbank abgelassen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars aside, tied up level</source>
      <translation>Lenker beiseite, waagerecht festgebunden</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>They go aside before the top clamps, because they cover the caps and would be in the way of the gauge.</source>
      <translation>Er kommt vor dem Lockern der oberen Klemmungen beiseite, denn er verdeckt die Verschlussschrauben und wäre dem Messmittel im Weg.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The fluid reservoir stays upright, and no hose or cable carries the bars.</source>
      <translation>Der Ausgleichsbehälter bleibt aufrecht, und kein Schlauch oder Zug trägt den Lenker.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure and write down both heights as found</source>
      <translation>Beide Überstände messen und notieren wie vorgefunden</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measured before a clamp is touched, because it is the only way back to where the legs stood.</source>
      <translation>Gemessen wird, bevor eine Klemmung angefasst wird, denn nur so geht es dorthin zurück, wo die Holme standen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure and write down both sides of the lower bracket as found</source>
      <translation>Beide Seiten der unteren Gabelbrücke messen und notieren wie vorgefunden</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measured while everything still holds, because it shows whether the front end stood square before the work.</source>
      <translation>Gemessen wird, solange noch alles fest ist, denn es zeigt, ob der Vorderbau vor der Arbeit winklig stand.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is cracked while the legs still hold both brackets, because with the legs out the top bracket turns with it and takes cables and wires along.</source>
      <translation>Angelöst wird, solange die Holme noch beide Gabelbrücken halten, denn ohne Holme dreht die obere Gabelbrücke mit und nimmt Züge und Kabel mit.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Preload adjusters, where fitted, noted and wound to their lowest</source>
      <translation>Vorspannungseinsteller, falls vorhanden, notiert und auf kleinste Vorspannung gedreht</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The spring is let off as far as it goes before the cap is cracked, so that it throws less when the thread ends.</source>
      <translation>Die Feder wird so weit wie möglich entspannt, bevor die Verschlussschraube angelöst wird, damit sie am Ende des Gewindes weniger schleudert.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Air line parted, where one joins the legs; every opening sealed</source>
      <translation>Luftleitung getrennt, wo eine die Holme verbindet; jede Öffnung verschlossen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The line ties the legs together, so it is parted before either can drop and tear it.</source>
      <translation>Die Leitung verbindet die Holme, daher wird sie getrennt, bevor einer herunterfallen und sie zerreißen kann.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The air is out first. Unsealed, an opening lets oil out when the leg is laid down, and dirt in.</source>
      <translation>Zuerst muss die Luft heraus sein. Unverschlossen lässt eine Öffnung Öl heraus, wenn der Holm hingelegt wird, und Schmutz hinein.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Brake lines parted at the anti-dive units, every end capped at once</source>
      <translation>Bremsleitungen an den Anti-Dive-Einheiten getrennt, jedes Ende sofort verschlossen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The units come out with their legs and the lines stay on the machine, so they are parted while the legs still stand firm.</source>
      <translation>Die Einheiten kommen mit ihren Holmen heraus und die Leitungen bleiben am Motorrad, daher werden sie getrennt, solange die Holme noch fest stehen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Brake fluid takes paint and harms the eyes: rags round the union, rinse with water at once. An open end takes in dirt and damp; the lever stays untouched.</source>
      <translation>Bremsflüssigkeit greift Lack an und schädigt die Augen: Lappen um den Anschluss, sofort mit Wasser spülen. Ein offenes Ende nimmt Schmutz und Feuchtigkeit auf; der Hebel bleibt unberührt.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars tied up level, so that the tubes can slide out of them</source>
      <translation>Lenker waagerecht festgebunden, damit die Standrohre herausgleiten können</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>These handlebars lose their hold as the tubes are drawn, so they are tied up before the first lower clamp lets its leg go and both hands are wanted.</source>
      <translation>Dieser Lenker verliert seinen Halt, wenn die Standrohre gezogen werden, daher wird er festgebunden, bevor die erste untere Klemmung ihren Holm loslässt und beide Hände gebraucht werden.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Legs stood upright, caps up, marked left and right</source>
      <translation>Holme aufrecht gestellt, Verschlussschrauben oben, links und rechts markiert</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Upright the oil stays in them, with the caps cracked; marked, each goes back as the leg it was.</source>
      <translation>Aufrecht bleibt das Öl darin, bei angelösten Verschlussschrauben; markiert kommt jeder als der Holm zurück, der er war.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Top bracket up and off the stem</source>
      <translation>Obere Gabelbrücke nach oben vom Lenkschaft ab</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The top bracket sits over the stem nut, and comes up once nothing holds it to the stem and no tube stands in it.</source>
      <translation>Die obere Gabelbrücke sitzt über der Einstellmutter und kommt ab, wenn nichts sie am Lenkschaft hält und kein Standrohr darin steckt.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Cables and the wires of the ignition switch run through or under it: none is pulled.</source>
      <translation>Züge und die Kabel des Zündschlosses laufen hindurch oder darunter: An keinem wird gezogen.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Each leg on the bench: cap off, spring out, oil drained</source>
      <translation>Jeder Holm auf der Werkbank: Verschlussschraube ab, Feder heraus, Öl abgelassen</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The legs are emptied before anything below is undone; each by itself, because how much comes out, and what it looks like, tells of that leg.</source>
      <translation>Die Holme werden geleert, bevor unten etwas gelöst wird; jeder für sich, denn wie viel herauskommt und wie es aussieht, sagt etwas über diesen Holm.</translation>
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The spring throws the cap as its thread ends: press it down, face out of line.</source>
      <translation>Die Feder schleudert die Verschlussschraube heraus, wenn ihr Gewinde endet: niederdrücken, Gesicht aus der Flugrichtung halten.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>anti-dive unit bolt</source>
      <translation>Schraube der Anti-Dive-Einheit</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>bolt</source>
      <translation>Schraube</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undo</source>
      <translation>lösen</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Holds the anti-dive unit to the slider.</source>
      <translation>Hält die Anti-Dive-Einheit am Tauchrohr.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench: the unit and its bolts must be tight before the leg goes in and before the brake is filled and bled through it.</source>
      <translation>Auf der Werkbank: Die Einheit und ihre Schrauben müssen fest sein, bevor der Holm eingesetzt wird und bevor die Bremse durch sie befüllt und entlüftet wird.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone with the leg out and drained, because fork oil and what brake fluid is left run out as the unit comes away.</source>
      <translation>Gelöst bei ausgebautem und geleertem Holm, denn Gabelöl und restliche Bremsflüssigkeit laufen heraus, wenn die Einheit abkommt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Brake fluid runs through or beside this unit: new sealing rings, and what the fluid has wetted is rinsed before it goes to the bench.</source>
      <translation>Durch oder neben dieser Einheit läuft Bremsflüssigkeit: neue Dichtringe, und was die Flüssigkeit benetzt hat, wird gespült, bevor es auf die Werkbank kommt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Brake fluid takes paint and harms the eyes: a tray under the unit, and what it wets is rinsed with water at once.</source>
      <translation>Bremsflüssigkeit greift Lack an und schädigt die Augen: eine Wanne unter die Einheit, und was sie benetzt, sofort mit Wasser spülen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>damping unit bolt</source>
      <translation>Schraube der Dämpfereinheit</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Holds a damping unit or cartridge in or on the leg.</source>
      <translation>Hält eine Dämpfereinheit oder Kartusche im oder am Holm.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench: the unit must be tight before the oil goes in, and the leg can be held properly only while it is out.</source>
      <translation>Auf der Werkbank: Die Einheit muss fest sein, bevor das Öl eingefüllt wird, und der Holm lässt sich nur ausgebaut richtig halten.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone with the leg out and drained, so that no oil stands over it.</source>
      <translation>Gelöst bei ausgebautem und geleertem Holm, damit kein Öl darüber steht.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>damper-rod bolt</source>
      <translation>Dämpferrohrschraube</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Comes up through the bottom of the slider into the damper rod.</source>
      <translation>Geht von unten durch den Boden des Tauchrohrs in das Dämpferrohr.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench before the leg goes in, with the wheel out: its head sits under the slider, where the axle and the floor are in the way later.</source>
      <translation>Auf der Werkbank, bevor der Holm eingesetzt wird, bei ausgebautem Rad: Ihr Kopf sitzt unter dem Tauchrohr, wo später Vorderachse und Boden im Weg sind.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, it is taken out with the leg drained: the last of the oil comes out past it.</source>
      <translation>Bereits angelöst, wird sie bei geleertem Holm herausgenommen: Das letzte Öl kommt an ihr vorbei heraus.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The damper rod turns with the bolt unless it is held; a bolt that spins is not tight, whatever the wrench says.</source>
      <translation>Das Dämpferrohr dreht mit der Schraube mit, wenn es nicht gehalten wird; eine Schraube, die durchdreht, ist nicht fest, was auch immer der Drehmomentschlüssel sagt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>air manifold fitting</source>
      <translation>Luftanschluss</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Fitting of an air-assisted fork that sits in a leg and takes the air line or the valve.</source>
      <translation>Anschluss einer Gabel mit Luftunterstützung, der in einem Holm sitzt und Luftleitung oder Ventil aufnimmt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench, where its O-ring can be seen to go home uncut before the brackets hide it.</source>
      <translation>Auf der Werkbank, wo zu sehen ist, dass sein O-Ring unverletzt an seinen Platz kommt, bevor die Gabelbrücken ihn verdecken.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone on the bench, where the O-ring and its groove can be looked at and the tube's opening sealed again.</source>
      <translation>Gelöst auf der Werkbank, wo O-Ring und Nut angesehen und die Öffnung des Standrohrs wieder verschlossen werden können.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>A new O-ring, oiled: a cut one loses the air overnight, and is seen only with the fork apart again.</source>
      <translation>Ein neuer O-Ring, geölt: Ein zerschnittener verliert die Luft über Nacht und ist erst bei wieder zerlegter Gabel zu sehen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Only with the air let out at the valve: a leg under air throws the fitting.</source>
      <translation>Nur, wenn die Luft am Ventil abgelassen ist: Ein Holm unter Luftdruck schleudert den Anschluss heraus.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>spacer fitting</source>
      <translation>Verschraubung der Distanzhülse</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Threaded fitting of a spacer or preload piece in the leg.</source>
      <translation>Gewindestück einer Distanzhülse oder Vorspannhülse im Holm.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench: it sits under the cap and cannot be reached once the leg is closed.</source>
      <translation>Auf der Werkbank: Sie sitzt unter der Verschlussschraube und ist nicht erreichbar, sobald der Holm verschlossen ist.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone on the bench, once the cap is off and the spring no longer presses.</source>
      <translation>Gelöst auf der Werkbank, wenn die Verschlussschraube ab ist und die Feder nicht mehr drückt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>stem nut</source>
      <translation>Einstellmutter</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The slotted nut that sets the head bearing.</source>
      <translation>Die Nutmutter, die das Lenkkopflager einstellt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The head bearing is set first, with nothing hung on the stem, because its drag can be felt only while the brackets swing free.</source>
      <translation>Das Lenkkopflager wird zuerst eingestellt, solange nichts am Lenkschaft hängt, denn sein Widerstand ist nur zu spüren, solange die Gabelbrücken frei schwenken.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem nut comes last: while it holds, the lower bracket cannot drop and the bearing stays together.</source>
      <translation>Die Einstellmutter kommt zuletzt: Solange sie hält, kann die untere Gabelbrücke nicht herunterfallen und das Lager bleibt zusammen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Hold the lower bracket up: it drops, and loose balls run out, as the nut leaves its thread.</source>
      <translation>Untere Gabelbrücke hochhalten: Sie fällt herunter und lose Kugeln laufen heraus, wenn die Mutter ihr Gewinde verlässt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>stem head bolt</source>
      <translation>Lenkschaftschraube</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Bolt or nut at the very top, draws the top bracket down on the stem.</source>
      <translation>Schraube oder Mutter ganz oben, zieht die obere Gabelbrücke auf den Lenkschaft herunter.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem head draws the top bracket down to its seat, so it comes before anything that grips the tubes.</source>
      <translation>Die Lenkschaftverschraubung zieht die obere Gabelbrücke auf ihren Sitz, daher kommt sie vor allem, was die Standrohre klemmt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the stem head comes off once nothing but the stem nut is needed to hold the lower bracket.</source>
      <translation>Bereits angelöst, kommt die Lenkschaftverschraubung ab, wenn nur noch die Einstellmutter gebraucht wird, um die untere Gabelbrücke zu halten.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>stem pinch bolt</source>
      <translation>Lenkschaft-Klemmschraube</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Closes the top bracket round the stem.</source>
      <translation>Schließt die obere Gabelbrücke um den Lenkschaft.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem pinch follows the stem head: pinched earlier, the bracket would hang on the stem instead of sitting down.</source>
      <translation>Die Lenkschaftklemmung folgt auf die Lenkschaftverschraubung: Früher geklemmt, hinge die Gabelbrücke am Lenkschaft, statt aufzusitzen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem pinch is slackened before the stem head is cracked, which then turns against its own thread only.</source>
      <translation>Die Lenkschaftklemmung wird gelockert, bevor die Lenkschaftverschraubung angelöst wird, die sich dann nur noch gegen ihr eigenes Gewinde dreht.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>lower clamp</source>
      <translation>untere Klemmung</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>draw its leg out</source>
      <translation>ihren Holm herausziehen</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Clamp of the lower bracket round a fork tube, one to three bolts.</source>
      <translation>Klemmung der unteren Gabelbrücke um ein Standrohr, eine bis drei Schrauben.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lower clamps go to torque before the caps, because they are what holds the tubes while a cap is turned.</source>
      <translation>Die unteren Klemmungen kommen vor den Verschlussschrauben auf Drehmoment, denn sie halten die Standrohre, während eine Verschlussschraube gedreht wird.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lower clamps are slackened last of the clamps, because they carry the legs.</source>
      <translation>Die unteren Klemmungen werden als letzte Klemmungen gelockert, denn sie tragen die Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The leg drops when this clamp lets go: a hand under it from the last turn on; twist and pull, no hammer.</source>
      <translation>Der Holm fällt herunter, wenn diese Klemmung loslässt: ab der letzten Umdrehung eine Hand darunter; drehen und ziehen, kein Hammer.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Closes the top of a fork tube; the spring presses on it.</source>
      <translation>Verschließt ein Standrohr oben; die Feder drückt darauf.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The cap goes to torque while the tube is held in the bracket, before the tops are covered.</source>
      <translation>Die Verschlussschraube kommt auf Drehmoment, solange das Standrohr in der Gabelbrücke gehalten ist und bevor die Rohrenden verdeckt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The cap is cracked, a quarter turn and no more, while the tube is still held in the machine.</source>
      <translation>Die Verschlussschraube wird angelöst, eine Viertelumdrehung und nicht mehr, solange das Standrohr noch im Motorrad gehalten ist.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The spring presses on the cap: start it by hand with the face out of line, and never drive a crossed thread.</source>
      <translation>Die Feder drückt auf die Verschlussschraube: von Hand ansetzen, Gesicht aus der Flugrichtung halten, und nie ein verkantetes Gewinde weiterdrehen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Spring and, on some forks, air press behind this cap: the air is out first, it is cracked only, and it comes off on the bench with the face out of line.</source>
      <translation>Hinter dieser Verschlussschraube drücken die Feder und bei manchen Gabeln Luft: Zuerst muss die Luft heraus sein, sie wird nur angelöst, und sie kommt erst auf der Werkbank ab, mit dem Gesicht außerhalb ihrer Flugrichtung.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>top clamp</source>
      <translation>obere Klemmung</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Clamp of the top bracket round a fork tube, one or two bolts.</source>
      <translation>Klemmung der oberen Gabelbrücke um ein Standrohr, eine oder zwei Schrauben.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The top clamps come last of all the clamps, so that the tubes settle in the lower ones and nothing pulls the brackets against each other.</source>
      <translation>Die oberen Klemmungen kommen als letzte aller Klemmungen, damit sich die Standrohre in den unteren setzen und nichts die Gabelbrücken gegeneinander zieht.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The top clamps are slackened first of the clamps, so that they squeeze neither the cap's thread nor the tube.</source>
      <translation>Die oberen Klemmungen werden als erste Klemmungen gelockert, damit sie weder das Gewinde der Verschlussschraube noch das Standrohr zusammendrücken.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>handlebar clamp below the brackets</source>
      <translation>Lenkerklemmung unter den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Handlebar clamped to the tube under the lower bracket; it goes on with the leg.</source>
      <translation>Lenker, der unter der unteren Gabelbrücke am Standrohr geklemmt ist; er kommt mit dem Holm an seinen Platz.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>It is already on the tube and waits until the tube's height is proved, because torqued earlier it would hide a tube that has moved.</source>
      <translation>Sie sitzt schon auf dem Standrohr und wartet, bis dessen Überstand bestätigt ist, denn früher angezogen würde sie ein verrutschtes Standrohr verbergen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Slackened before the clamps of the brackets, because the tube has to slide out through it.</source>
      <translation>Vor den Klemmungen der Gabelbrücken gelockert, denn das Standrohr muss hindurch herausgleiten.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>handlebar clamp between the brackets</source>
      <translation>Lenkerklemmung zwischen den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Handlebar clamped to the tube between the brackets; it goes on with the leg.</source>
      <translation>Lenker, der zwischen den Gabelbrücken am Standrohr geklemmt ist; er kommt mit dem Holm an seinen Platz.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>handlebar clamp</source>
      <translation>Lenkerklemmung</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Handlebar clamp on or above the top bracket.</source>
      <translation>Lenkerklemmung auf oder über der oberen Gabelbrücke.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The handlebars wait until the heights have been proved, because they cover the tops of the tubes.</source>
      <translation>Der Lenker wartet, bis die Überstände bestätigt sind, denn er verdeckt die oberen Rohrenden.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The handlebars come aside before the clamps of the brackets, because they cover the caps and the top clamps.</source>
      <translation>Der Lenker kommt vor dem Lockern der Klemmungen der Gabelbrücken beiseite, denn er verdeckt die Verschlussschrauben und die oberen Klemmungen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>instrument bracket</source>
      <translation>Instrumentenhalter</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Carries the instruments, on the top bracket as a rule.</source>
      <translation>Trägt die Instrumente, in der Regel auf der oberen Gabelbrücke.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The instruments follow once the top bracket is finished, because they stand over it.</source>
      <translation>Die Instrumente folgen, wenn die obere Gabelbrücke fertig ist, denn sie stehen darüber.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The instruments come off early, because they stand over the top bracket.</source>
      <translation>Die Instrumente kommen früh ab, denn sie stehen über der oberen Gabelbrücke.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>lamp bracket</source>
      <translation>Lampenhalter</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Carries the headlamp, on the tubes or the brackets.</source>
      <translation>Trägt den Scheinwerfer, an den Standrohren oder den Gabelbrücken.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lamp bracket follows once the tubes are clamped, because it takes its place from them.</source>
      <translation>Der Lampenhalter folgt, wenn die Standrohre geklemmt sind, denn er richtet sich nach ihnen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lamp comes off early, because it stands before the brackets and its wires are easily pulled.</source>
      <translation>Die Lampe kommt früh ab, denn sie sitzt vor den Gabelbrücken, und ihre Kabel geraten leicht unter Zug.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>mudguard</source>
      <translation>Kotflügel</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Bolted to the sliders.</source>
      <translation>An den Tauchrohren verschraubt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The mudguard goes on before the wheel, which would be in its way.</source>
      <translation>Der Kotflügel wird vor dem Rad angebaut, das ihm im Weg wäre.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The mudguard comes off once the wheel is out of its way.</source>
      <translation>Der Kotflügel kommt ab, wenn ihm das Rad nicht mehr im Weg ist.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Plain axle, screwed into one leg.</source>
      <translation>Einfache Vorderachse, in einen Holm geschraubt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The axle draws wheel, spacers and one slider together, and everything that grips it waits for that.</source>
      <translation>Die Vorderachse zieht Rad, Distanzhülsen und ein Tauchrohr zusammen, und alles, was sie klemmt, wartet darauf.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the axle turns out when nothing grips it any more.</source>
      <translation>Bereits angelöst, lässt sich die Vorderachse herausdrehen, wenn nichts sie mehr klemmt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle held in clamp caps</source>
      <translation>Vorderachse in Achsklemmböcken</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Axle lying in split slider ends, closed by caps.</source>
      <translation>Vorderachse in geteilten Tauchrohrenden, von Achsklemmböcken geschlossen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The axle draws wheel and spacers together while the caps are still loose round it.</source>
      <translation>Die Vorderachse zieht Rad und Distanzhülsen zusammen, solange die Achsklemmböcke noch locker um sie sitzen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the axle is undone when its caps are slack.</source>
      <translation>Bereits angelöst, wird die Vorderachse gelöst, wenn ihre Achsklemmböcke locker sind.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle nut</source>
      <translation>Achsmutter</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Nut on the end of the axle.</source>
      <translation>Mutter am Ende der Vorderachse.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The axle nut draws wheel and spacers together before a slider is pinched on the axle.</source>
      <translation>Die Achsmutter zieht Rad und Distanzhülsen zusammen, bevor ein Tauchrohr auf der Vorderachse geklemmt wird.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the axle nut turns off when nothing pinches the axle any more.</source>
      <translation>Bereits angelöst, lässt sich die Achsmutter abdrehen, wenn nichts mehr die Vorderachse klemmt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>brake caliper</source>
      <translation>Bremssattel</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>hang it from a hook</source>
      <translation>an einen Haken hängen</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Bolts the caliper to the slider.</source>
      <translation>Verschraubt den Bremssattel am Tauchrohr.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The caliper goes on over the disc once the wheel is in, and before the fork is pumped with the brake held.</source>
      <translation>Der Bremssattel kommt über die Scheibe, wenn das Rad eingesetzt ist und bevor die Gabel bei gehaltener Bremse durchgefedert wird.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The calipers come off before the axle is drawn, because the wheel cannot pass them.</source>
      <translation>Die Bremssättel kommen ab, bevor die Vorderachse gezogen wird, denn das Rad kommt nicht an ihnen vorbei.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Pump the lever until it is firm before the machine is moved at all: the first pull after refitting finds no brake.</source>
      <translation>Hebel pumpen, bis der Druckpunkt fest ist, bevor das Motorrad überhaupt bewegt wird: Der erste Zug nach dem Einbau geht ins Leere.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The hose never carries the caliper, not even while the bolts of the other are undone: it is damaged where it cannot be seen. Nobody touches the lever while a caliper is off its disc.</source>
      <translation>Der Schlauch trägt nie den Bremssattel, auch nicht, während die Schrauben des anderen gelöst werden: Er wird beschädigt, wo es nicht zu sehen ist. Niemand berührt den Hebel, solange ein Bremssattel nicht auf seiner Scheibe sitzt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle clamp cap</source>
      <translation>Achsklemmbock</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>nut</source>
      <translation>Mutter</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Cap under the slider that closes round the axle.</source>
      <translation>Bock unter dem Tauchrohr, der sich um die Vorderachse schließt.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The caps close once the sliders have found their own place on the axle.</source>
      <translation>Die Achsklemmböcke schließen, wenn die Tauchrohre ihren eigenen Platz auf der Vorderachse gefunden haben.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The caps are slackened before the axle is touched, because they grip it.</source>
      <translation>Die Achsklemmböcke werden gelockert, bevor die Vorderachse angefasst wird, denn sie klemmen diese.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Where the cap is marked for the front, the gap belongs where the manual puts it: an even gap on a cap made for an uneven one breaks the stud.</source>
      <translation>Ist am Achsklemmbock die Vorderseite markiert, gehört der Spalt dorthin, wo ihn das Werkstatthandbuch vorsieht: Ein gleichmäßiger Spalt an einem Achsklemmbock, der für einen ungleichmäßigen gemacht ist, lässt den Stehbolzen brechen.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle pinch bolt</source>
      <translation>Achsklemmschraube</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Closes the slider's end round the axle.</source>
      <translation>Schließt das Ende des Tauchrohrs um die Vorderachse.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The pinch bolt closes once the slider has found its own place on the axle.</source>
      <translation>Die Klemmschraube schließt, wenn das Tauchrohr seinen eigenen Platz auf der Vorderachse gefunden hat.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The pinch bolt is slackened before the axle is touched, because it grips it.</source>
      <translation>Die Klemmschraube wird gelockert, bevor die Vorderachse angefasst wird, denn sie klemmt diese.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>fork brace</source>
      <translation>Gabelstabilisator</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Ties the two sliders together over the wheel.</source>
      <translation>Verbindet die beiden Tauchrohre über dem Rad.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The brace ties the sliders together, so it goes to torque once they have found their own place along the axle and are held there.</source>
      <translation>Der Gabelstabilisator verbindet die Tauchrohre, daher kommt er auf Drehmoment, wenn sie ihren eigenen Platz auf der Vorderachse gefunden haben und dort gehalten sind.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The brace is undone early, because it ties the sliders together, which have to part as the axle is drawn.</source>
      <translation>Der Gabelstabilisator wird früh gelöst, denn er verbindet die Tauchrohre, die auseinandergehen müssen, wenn die Vorderachse gezogen wird.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>hose guide</source>
      <translation>Schlauchführung</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Free</source>
      <translation>freimachen</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Holds a brake hose or a cable to the fork.</source>
      <translation>Hält einen Bremsschlauch oder einen Zug an der Gabel.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The guides come last, because the hoses find their run only when both their ends are fixed.</source>
      <translation>Die Führungen kommen zuletzt, denn die Schläuche finden ihren Verlauf erst, wenn beide Enden befestigt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The guides are freed first, so that the hoses can follow their calipers.</source>
      <translation>Die Führungen werden zuerst freigemacht, damit die Schläuche ihren Bremssätteln folgen können.</translation>
    </message>
    <message>
      <location filename="resources/order/passes.json" />
      <source>Brought up in shares so that the clamp closes evenly round the tube and no bolt does the work of its neighbour.</source>
      <translation>Stufenweise angezogen, damit sich die Klemmung gleichmäßig um das Standrohr schließt und keine Schraube die Arbeit ihrer Nachbarin tut.</translation>
    </message>
    <message>
      <location filename="resources/order/passes.json" />
      <source>To full torque now that all the bolts of this clamp carry their share.</source>
      <translation>Auf volles Drehmoment, da jetzt alle Schrauben dieser Klemmung ihren Anteil tragen.</translation>
    </message>
    <message>
      <location filename="resources/order/passes.json" />
      <source>Once more round, because each bolt slackens its neighbour in the same gap; it is done when none of them moves.</source>
      <translation>Noch einmal reihum, denn jede Schraube lockert ihre Nachbarin im selben Spalt; fertig ist es, wenn sich keine mehr bewegt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamp comes after the cap: tight, it squeezes the tube on to the cap's thread, and the torque is spent in the thread instead of on the seat.</source>
      <translation>Die obere Klemmung kommt nach der Verschlussschraube: Angezogen drückt sie das Standrohr auf deren Gewinde, und das Drehmoment geht ins Gewinde statt auf den Sitz.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The cap is cracked with the top clamp already slack, because a squeezed thread galls; the lower clamp still holds the tube.</source>
      <translation>Die Verschlussschraube wird bei schon lockerer oberer Klemmung angelöst, denn ein gequetschtes Gewinde frisst; die untere Klemmung hält das Standrohr noch.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamp holds the tube so that it cannot turn with the cap, and the top clamp is still slack so that the thread turns freely.</source>
      <translation>Die untere Klemmung hält das Standrohr, damit es nicht mit der Verschlussschraube mitdreht, und die obere Klemmung ist noch locker, damit das Gewinde frei dreht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamp lets go only after the cap has been cracked, because nothing else keeps the tube from turning with it.</source>
      <translation>Die untere Klemmung lässt erst los, wenn die Verschlussschraube angelöst ist, denn nichts anderes hindert das Standrohr am Mitdrehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Only a bearing that has been seated can be backed off.</source>
      <translation>Nur ein Lager, das gesetzt ist, kann entlastet werden.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The setting starts from no load, so the seating load is backed off first.</source>
      <translation>Das Einstellen beginnt ohne Last, daher wird zuerst die Setzlast zurückgedreht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>What is done on the bench must be done before the leg goes in.</source>
      <translation>Was auf der Werkbank getan wird, muss getan sein, bevor der Holm eingesetzt wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top bracket covers the stem nut, which is set first.</source>
      <translation>Die obere Gabelbrücke verdeckt die Einstellmutter, die zuerst eingestellt wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes go up through the top bracket.</source>
      <translation>Die Standrohre gehen durch die obere Gabelbrücke nach oben.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes go up through these handlebars.</source>
      <translation>Die Standrohre gehen durch diesen Lenker nach oben.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There is a height to measure only once the legs are in.</source>
      <translation>Einen Überstand zu messen gibt es erst, wenn die Holme eingesetzt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The axle goes to torque once it has gone in by hand, which shows that the sliders stand true to the wheel.</source>
      <translation>Die Vorderachse kommt auf Drehmoment, wenn sie von Hand hineingegangen ist, was zeigt, dass die Tauchrohre zum Rad ausgerichtet stehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Pumping the fork has let this slider find its own place on the axle; pinched before, it would bind on its tube.</source>
      <translation>Beim Durchfedern der Gabel hat dieses Tauchrohr seinen eigenen Platz auf der Vorderachse gefunden; vorher geklemmt, würde es auf seinem Standrohr klemmen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The sliders settle along an axle that is already tight.</source>
      <translation>Die Tauchrohre setzen sich auf einer Vorderachse, die schon fest ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>What grips the axle comes after it, because an axle cannot draw up inside a closed clamp.</source>
      <translation>Was die Vorderachse klemmt, kommt nach ihr, denn in einer geschlossenen Klemmung kann sich eine Vorderachse nicht auf ihren Sitz ziehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it turns easily now that nothing grips the axle; turned in a closed clamp, an axle tears the bore it lies in.</source>
      <translation>Bereits angelöst, dreht sie leicht, da jetzt nichts die Vorderachse klemmt; in einer geschlossenen Klemmung gedreht, reißt eine Vorderachse die Bohrung auf, in der sie liegt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are measured and hold their height; the caps can only be torqued once the lower clamps grip the tubes.</source>
      <translation>Die Holme sind gemessen und halten ihren Überstand; die Verschlussschrauben können erst auf Drehmoment angezogen werden, wenn die unteren Klemmungen die Standrohre klemmen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is square; clamped now, it stays so.</source>
      <translation>Die Gabelbrücke ist winklig; jetzt geklemmt, bleibt sie so.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There must be a tube in the clamp before it closes.</source>
      <translation>In der Klemmung muss ein Standrohr sein, bevor sie schließt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are in line; the stem head now holds the top bracket where it was turned to.</source>
      <translation>Die Holme fluchten; die Lenkschaftverschraubung hält jetzt die obere Gabelbrücke dort, wohin sie gedreht wurde.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamps follow the stem head, which would otherwise draw the brackets together against tubes that cannot give.</source>
      <translation>Die unteren Klemmungen folgen auf die Lenkschaftverschraubung, die sonst die Gabelbrücken gegen Standrohre zusammenzöge, die nicht nachgeben können.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, the stem head comes off when the legs are out: until then it keeps the top bracket where it is.</source>
      <translation>Bereits angelöst, kommt die Lenkschaftverschraubung ab, wenn die Holme heraus sind: Bis dahin hält sie die obere Gabelbrücke, wo sie ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps follow the stem head, because a gripped tube keeps the top bracket from sitting down on the stem.</source>
      <translation>Die oberen Klemmungen folgen auf die Lenkschaftverschraubung, denn ein geklemmtes Standrohr hindert die obere Gabelbrücke daran, auf dem Lenkschaft aufzusitzen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, the stem head comes off with the top clamps open, so that the bracket can come up off the tubes.</source>
      <translation>Bereits angelöst, kommt die Lenkschaftverschraubung bei offenen oberen Klemmungen ab, damit die Gabelbrücke nach oben von den Standrohren kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem is pinched once the stem head has drawn the top bracket down; pinched first, the bracket hangs on the stem.</source>
      <translation>Der Lenkschaft wird geklemmt, wenn die Lenkschaftverschraubung die obere Gabelbrücke heruntergezogen hat; zuerst geklemmt, hängt die Gabelbrücke am Lenkschaft.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, the stem head comes off with the stem pinch slack, so that the bracket can follow it up.</source>
      <translation>Bereits angelöst, kommt die Lenkschaftverschraubung bei lockerer Lenkschaftklemmung ab, damit die Gabelbrücke ihr nach oben folgen kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamps follow the stem, so that the brackets have found their place on it before they are tied together by the tubes.</source>
      <translation>Die unteren Klemmungen folgen auf den Lenkschaft, damit die Gabelbrücken darauf ihren Platz gefunden haben, bevor die Standrohre sie miteinander verbinden.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps follow the stem pinch, so that the bracket sits square on the stem before it grips the tubes.</source>
      <translation>Die oberen Klemmungen folgen auf die Lenkschaftklemmung, damit die Gabelbrücke gerade auf dem Lenkschaft sitzt, bevor sie die Standrohre klemmt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps come last, so that the tubes stand where the lower clamps hold them and the brackets are not drawn against each other.</source>
      <translation>Die oberen Klemmungen kommen zuletzt, damit die Standrohre dort stehen, wo die unteren Klemmungen sie halten, und die Gabelbrücken nicht gegeneinander gezogen werden.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamp is slackened after the top one, because it carries the leg.</source>
      <translation>Die untere Klemmung wird nach der oberen gelockert, denn sie trägt den Holm.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Tightening the top clamps can move a tube.</source>
      <translation>Das Anziehen der oberen Klemmungen kann ein Standrohr verschieben.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The heights are proved before the last clamps close.</source>
      <translation>Die Überstände werden bestätigt, bevor die letzten Klemmungen schließen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are in line; the pinch keeps the top bracket so.</source>
      <translation>Die Holme fluchten; die Lenkschaftklemmung hält die obere Gabelbrücke so.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are in line; the top clamps keep them so.</source>
      <translation>Die Holme fluchten; die oberen Klemmungen halten sie so.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is square and the legs stand at their height, so the stem head draws the top bracket down where it will stay.</source>
      <translation>Die Gabelbrücke ist winklig und die Holme stehen auf ihrem Überstand, also zieht die Lenkschaftverschraubung die obere Gabelbrücke dort herunter, wo sie bleibt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Moving a leg turns the bracket, so the heights come first.</source>
      <translation>Einen Holm zu verschieben verdreht die Gabelbrücke, daher kommen die Überstände zuerst.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top bracket is lined up with the lower one, so the lower one must stand right first.</source>
      <translation>Die obere Gabelbrücke wird nach der unteren ausgerichtet, daher muss die untere zuerst richtig stehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem head locks what the stem nut has set, so the bearing is set first.</source>
      <translation>Die Lenkschaftverschraubung sichert, was die Einstellmutter eingestellt hat, daher wird das Lager zuerst eingestellt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem nut comes when the top bracket is off it: it is all that holds the lower bracket up and the bearing together.</source>
      <translation>Die Einstellmutter kommt, wenn die obere Gabelbrücke von ihr ab ist: Sie allein hält die untere Gabelbrücke oben und das Lager zusammen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bearing's drag is felt with nothing hung on the stem.</source>
      <translation>Der Widerstand des Lagers wird gefühlt, solange nichts am Lenkschaft hängt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There must be a setting to check.</source>
      <translation>Es muss eine Einstellung zu prüfen geben.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem head presses on the bearing and can change its drag.</source>
      <translation>Die Lenkschaftverschraubung drückt auf das Lager und kann seinen Widerstand ändern.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The pinch is the last that can change the bearing's drag.</source>
      <translation>Die Lenkschaftklemmung ist das Letzte, was den Widerstand des Lagers ändern kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The steering has been felt to be free before the clamps make a correction dear.</source>
      <translation>Die Lenkung wurde als frei befunden, bevor die Klemmungen eine Korrektur teuer machen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The spring presses least on a cap whose adjuster is at its lowest.</source>
      <translation>Die Feder drückt am wenigsten auf eine Verschlussschraube, deren Einsteller auf kleinster Vorspannung steht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The springs press again only once the caps hold them.</source>
      <translation>Die Federn drücken erst wieder, wenn die Verschlussschrauben sie halten.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars follow now that the heights are proved, because they cover or grip the tops of the tubes.</source>
      <translation>Der Lenker folgt jetzt, da die Überstände bestätigt sind, denn er verdeckt oder klemmt die oberen Rohrenden.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars follow the top clamps, which they would cover.</source>
      <translation>Der Lenker folgt auf die oberen Klemmungen, die er verdecken würde.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are first of the clamps to be slackened, once the handlebars neither cover them nor grip the tubes, so that they squeeze neither cap nor tube.</source>
      <translation>Die oberen Klemmungen werden als erste Klemmungen gelockert, wenn der Lenker weder sie verdeckt noch die Standrohre klemmt, damit sie weder Verschlussschraube noch Standrohr zusammendrücken.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are slackened once the instruments no longer stand over them.</source>
      <translation>Die oberen Klemmungen werden gelockert, wenn die Instrumente nicht mehr darüber stehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lamp follows once the tubes are clamped, because its bracket takes its place from them.</source>
      <translation>Die Lampe folgt, wenn die Standrohre geklemmt sind, denn ihr Halter richtet sich nach ihnen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are slackened once the lamp's bracket no longer holds to the tubes.</source>
      <translation>Die oberen Klemmungen werden gelockert, wenn der Lampenhalter nicht mehr an den Standrohren hält.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The sliders have found their own place along the axle; tied together before that, they could not.</source>
      <translation>Die Tauchrohre haben ihren eigenen Platz auf der Vorderachse gefunden; vorher miteinander verbunden, könnten sie es nicht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brace ties the sliders together, so it comes when the legs stand at their proved height.</source>
      <translation>Der Gabelstabilisator verbindet die Tauchrohre, daher kommt er, wenn die Holme auf ihrem bestätigten Überstand stehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are slackened with the brace already off, because it ties the legs together.</source>
      <translation>Die oberen Klemmungen werden bei schon abgebautem Gabelstabilisator gelockert, denn er verbindet die Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs stand at their proved height before anything joins them.</source>
      <translation>Die Holme stehen auf ihrem bestätigten Überstand, bevor irgendetwas sie verbindet.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brace is put in place while the wheel is out.</source>
      <translation>Der Gabelstabilisator wird angesetzt, solange das Rad ausgebaut ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The sliders are held on the axle where they settled, so the brace has nothing to pull them to.</source>
      <translation>Die Tauchrohre sind auf der Vorderachse gehalten, wo sie sich gesetzt haben, also kann der Gabelstabilisator sie nirgendwohin ziehen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The mudguard is reached while the wheel is out.</source>
      <translation>Der Kotflügel ist erreichbar, solange das Rad ausgebaut ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are clamped before they carry a wheel.</source>
      <translation>Die Holme sind geklemmt, bevor sie ein Rad tragen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The caliper goes on over the disc once the axle holds the wheel, and before the fork is pumped, because the brake has to hold the wheel for that.</source>
      <translation>Der Bremssattel kommt über die Scheibe, wenn die Vorderachse das Rad hält und bevor die Gabel durchgefedert wird, denn dazu muss die Bremse das Rad halten.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There is a lever to pump once the calipers are on.</source>
      <translation>Einen Hebel zu pumpen gibt es, wenn die Bremssättel angebaut sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake holds the wheel only once its lever is firm.</source>
      <translation>Die Bremse hält das Rad erst, wenn ihr Druckpunkt fest ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake holds the wheel while the fork is pumped.</source>
      <translation>Die Bremse hält das Rad, während die Gabel durchgefedert wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Anti-dive units and their bolts are tight before the brake is closed and bled through them.</source>
      <translation>Anti-Dive-Einheiten und ihre Schrauben sind fest, bevor die Bremse geschlossen und durch sie entlüftet wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The guide follows the caliper, because a hose finds its run only when its end is fixed.</source>
      <translation>Die Führung folgt auf den Bremssattel, denn ein Schlauch findet seinen Verlauf erst, wenn sein Ende befestigt ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The caliper follows its hose guide, so that the hose can go with it and is not pulled.</source>
      <translation>Der Bremssattel folgt auf seine Schlauchführung, damit der Schlauch mitgehen kann und nicht unter Zug gerät.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The run of a hose shows when both ends are fixed.</source>
      <translation>Der Verlauf eines Schlauchs zeigt sich, wenn beide Enden befestigt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The run of a cable shows when the handlebars are fixed.</source>
      <translation>Der Verlauf eines Zugs zeigt sich, wenn der Lenker befestigt ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wood goes in when the calipers hang.</source>
      <translation>Das Holz kommt hinein, wenn die Bremssättel hängen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it turns off now that the calipers hang from their hooks and no longer hold the disc.</source>
      <translation>Bereits angelöst, lässt sie sich jetzt abdrehen, da die Bremssättel an ihren Haken hängen und die Scheibe nicht mehr halten.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel comes out when the axle is undone.</source>
      <translation>Das Rad kommt heraus, wenn die Vorderachse gelöst ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel comes out when nothing grips the axle.</source>
      <translation>Das Rad kommt heraus, wenn nichts die Vorderachse klemmt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel ties the legs together.</source>
      <translation>Das Rad verbindet die Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brace ties the legs together.</source>
      <translation>Der Gabelstabilisator verbindet die Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The mudguard ties the legs together.</source>
      <translation>Der Kotflügel verbindet die Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars can be moved when their clamps are slack.</source>
      <translation>Der Lenker lässt sich bewegen, wenn seine Klemmungen locker sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars cover the top clamps.</source>
      <translation>Der Lenker verdeckt die oberen Klemmungen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The heights are written down before a clamp is touched, because there is no other way back.</source>
      <translation>Die Überstände werden notiert, bevor eine Klemmung angefasst wird, denn einen anderen Weg zurück gibt es nicht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is measured while everything still holds.</source>
      <translation>Die Gabelbrücke wird gemessen, solange noch alles fest ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The spring is let off before the cap is cracked.</source>
      <translation>Die Feder wird entspannt, bevor die Verschlussschraube angelöst wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs stand on the bench when they are drawn out of their clamps.</source>
      <translation>Die Holme stehen auf der Werkbank, wenn sie aus ihren Klemmungen gezogen sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A cap that is still tight cannot be undone once the leg is out of the machine, for want of something to hold the tube.</source>
      <translation>Eine noch feste Verschlussschraube lässt sich nicht lösen, wenn der Holm aus dem Motorrad heraus ist, weil nichts das Standrohr hält.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes slide in these handlebars when their clamps are slack.</source>
      <translation>Die Standrohre gleiten in diesem Lenker, wenn seine Klemmungen locker sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes are drawn out of handlebars that are tied up.</source>
      <translation>Die Standrohre werden aus einem festgebundenen Lenker gezogen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem head holds the top bracket down.</source>
      <translation>Die Lenkschaftverschraubung hält die obere Gabelbrücke unten.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The pinch holds the top bracket to the stem.</source>
      <translation>Die Lenkschaftklemmung hält die obere Gabelbrücke am Lenkschaft.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes stand through the top bracket until the legs are out.</source>
      <translation>Die Standrohre stecken in der oberen Gabelbrücke, bis die Holme heraus sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem nut is reached once the top bracket is off it.</source>
      <translation>Die Einstellmutter ist erreichbar, wenn die obere Gabelbrücke von ihr ab ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem nut comes when the legs are out, because their weight would hang on the bearing's last thread.</source>
      <translation>Die Einstellmutter kommt, wenn die Holme heraus sind, denn ihr Gewicht hinge am letzten Gewindegang des Lagers.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Nothing grips the axle when it is first turned.</source>
      <translation>Nichts klemmt die Vorderachse, wenn sie zum ersten Mal gedreht wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Cracked on the ground, it is undone once the wheel can come out.</source>
      <translation>Am Boden angelöst, wird sie gelöst, wenn das Rad herauskommen kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>What takes force is done with the wheel on the ground.</source>
      <translation>Was Kraft braucht, geschieht mit dem Rad am Boden.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A long bar is pulled only on a machine that stands firm.</source>
      <translation>An einem langen Hebel wird nur gezogen, wenn das Motorrad fest steht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it is undone once the wheel hangs clear and carries nothing.</source>
      <translation>Bereits angelöst, wird sie gelöst, wenn das Rad frei hängt und nichts trägt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel comes out when nothing stands on it.</source>
      <translation>Das Rad kommt heraus, wenn nichts darauf steht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The air is out, so the legs may be touched; what grips the axle lets go before the axle is turned.</source>
      <translation>Die Luft ist heraus, die Holme dürfen also angefasst werden; was die Vorderachse klemmt, lässt los, bevor die Vorderachse gedreht wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it is undone with the air out.</source>
      <translation>Bereits angelöst, wird sie bei abgelassener Luft gelöst.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Nothing of the legs is touched under air.</source>
      <translation>Unter Luftdruck wird an den Holmen nichts angefasst.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The air is out, so the legs may be touched; the brace ties the sliders together, which have to part as the axle is drawn.</source>
      <translation>Die Luft ist heraus, die Holme dürfen also angefasst werden; der Gabelstabilisator verbindet die Tauchrohre, die auseinandergehen müssen, wenn die Vorderachse gezogen wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Oil under air would be thrown out past the bolt.</source>
      <translation>Öl unter Luftdruck würde an der Schraube vorbei herausgeschleudert.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>An adjuster is turned only when nothing but the spring presses on it.</source>
      <translation>Ein Einsteller wird nur gedreht, wenn nichts als die Feder darauf drückt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The clamps are slackened on legs without air.</source>
      <translation>Die Klemmungen werden an Holmen ohne Luftdruck gelockert.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The cap is cracked only when no air presses behind it.</source>
      <translation>Die Verschlussschraube wird nur angelöst, wenn keine Luft dahinter drückt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A line under air whips as it is parted.</source>
      <translation>Eine Leitung unter Luftdruck schlägt um sich, wenn sie getrennt wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bolt is reached once wheel and axle are out of its way.</source>
      <translation>Die Schraube ist erreichbar, wenn ihr Rad und Vorderachse nicht mehr im Weg sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The more the spring presses, the better it holds the rod.</source>
      <translation>Je mehr die Feder drückt, desto besser hält sie das Dämpferrohr.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The cap is cracked when the damper-rod bolt is, because the spring under it held the rod for that.</source>
      <translation>Die Verschlussschraube wird angelöst, wenn es die Dämpferrohrschraube ist, denn die Feder darunter hielt dafür das Dämpferrohr.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The leg is held while its bolt is cracked.</source>
      <translation>Der Holm ist gehalten, während seine Schraube angelöst wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem pinch is slackened once the readings as found are written down, and before the stem head is cracked, which then turns against its own thread only.</source>
      <translation>Die Lenkschaftklemmung wird gelockert, wenn die vorgefundenen Messwerte notiert sind und bevor die Lenkschaftverschraubung angelöst wird, die sich dann nur noch gegen ihr eigenes Gewinde dreht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem pinch is slackened once the bracket has been measured as found.</source>
      <translation>Die Lenkschaftklemmung wird gelockert, wenn die Gabelbrücke wie vorgefunden gemessen ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The heights are written down before the stem head is touched.</source>
      <translation>Die Überstände werden notiert, bevor die Lenkschaftverschraubung angefasst wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is measured before the stem head is touched.</source>
      <translation>Die Gabelbrücke wird gemessen, bevor die Lenkschaftverschraubung angefasst wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars are out of the way of the bar.</source>
      <translation>Der Lenker ist dem langen Hebel nicht im Weg.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Only its own thread resists once the stem pinch is slack.</source>
      <translation>Nur ihr eigenes Gewinde leistet Widerstand, wenn die Lenkschaftklemmung locker ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The clamps let go when the stem head is cracked, because the legs held both brackets for that.</source>
      <translation>Die Klemmungen lassen los, wenn die Lenkschaftverschraubung angelöst ist, denn dafür hielten die Holme beide Gabelbrücken.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Cracked while the legs held the brackets, it comes off when they are out.</source>
      <translation>Angelöst, solange die Holme die Gabelbrücken hielten, kommt sie ab, wenn diese heraus sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The caps are cracked while everything still stands.</source>
      <translation>Die Verschlussschrauben werden angelöst, solange noch alles steht.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line is parted before a leg can drop.</source>
      <translation>Die Leitung wird getrennt, bevor ein Holm herunterfallen kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line ties the legs together.</source>
      <translation>Die Leitung verbindet die Holme.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake lines are parted before a leg can drop.</source>
      <translation>Die Bremsleitungen werden getrennt, bevor ein Holm herunterfallen kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake lines stay on the machine.</source>
      <translation>Die Bremsleitungen bleiben am Motorrad.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The calipers hang quietly before a line is opened.</source>
      <translation>Die Bremssättel hängen ruhig, bevor eine Leitung geöffnet wird.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars are tied up before a leg can drop out of them.</source>
      <translation>Der Lenker wird festgebunden, bevor ein Holm aus ihm herausfallen kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are drained on the bench.</source>
      <translation>Die Holme werden auf der Werkbank geleert.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Undone with the leg drained, when no oil runs out of the opening and the O-ring's groove can be looked at.</source>
      <translation>Gelöst bei geleertem Holm, wenn kein Öl aus der Öffnung läuft und die Nut des O-Rings angesehen werden kann.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Undone once the cap is off and the spring no longer presses.</source>
      <translation>Gelöst, wenn die Verschlussschraube ab ist und die Feder nicht mehr drückt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line joins legs that are in.</source>
      <translation>Die Leitung verbindet Holme, die eingesetzt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line is joined to legs that stay where they are.</source>
      <translation>Die Leitung wird an Holme angeschlossen, die bleiben, wo sie sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Air is let in behind caps that are tight.</source>
      <translation>Luft wird hinter festen Verschlussschrauben eingefüllt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Air is let in when the line is joined.</source>
      <translation>Luft wird eingefüllt, wenn die Leitung angeschlossen ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The fork settles on its axle without air.</source>
      <translation>Die Gabel setzt sich ohne Luft auf ihrer Vorderachse.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Every joint of the legs is tight before air goes in.</source>
      <translation>Jede Verbindung der Holme ist fest, bevor Luft hineinkommt.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lines join legs that are in.</source>
      <translation>Die Leitungen verbinden Holme, die eingesetzt sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lines are joined to legs that stay where they are.</source>
      <translation>Die Leitungen werden an Holme angeschlossen, die bleiben, wo sie sind.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A brake is filled when it is closed.</source>
      <translation>Eine Bremse wird befüllt, wenn sie geschlossen ist.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake is bled with the calipers over their discs.</source>
      <translation>Die Bremse wird entlüftet, wenn die Bremssättel über ihren Scheiben sitzen.</translation>
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lever grows firm only on a brake without air in it.</source>
      <translation>Der Druckpunkt wird nur bei einer Bremse ohne Luft fest.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>Axle</source>
      <translation>Vorderachse</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>screwed in</source>
      <translation>eingeschraubt</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>The axle screws into one leg.</source>
      <translation>Die Achse wird in einen Holm geschraubt.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>screwed in, pinched</source>
      <translation>eingeschraubt, geklemmt</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>The axle screws into one leg; the other closes round it.</source>
      <translation>Die Achse wird in einen Holm geschraubt; der andere umschließt und klemmt sie.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>On the side away from the axle's thread: look which it is.</source>
      <translation>Auf der Seite gegenüber dem Achsgewinde: nachsehen, welche es ist.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>in clamp caps</source>
      <translation>in Klemmböcken</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>Split slider ends, closed by caps from below.</source>
      <translation>Geteilte Tauchrohrenden, von unten durch Klemmböcke geschlossen.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>{side} axle clamp cap</source>
      <translation>Achsklemmbock {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>A cap that is marked with an arrow goes on that way round; the manual says which nut is done up first.</source>
      <translation>Ein mit Pfeil gekennzeichneter Klemmbock wird so herum angesetzt; welche Mutter zuerst angezogen wird, steht im Werkstatthandbuch.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>nut and pinch</source>
      <translation>Mutter und Klemmung</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>A nut at one end; the other leg closes round the axle.</source>
      <translation>Eine Mutter an einem Ende; der andere Holm umschließt und klemmt die Achse.</translation>
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>On the side away from the nut: look which it is.</source>
      <translation>Auf der Seite gegenüber der Mutter: nachsehen, welche es ist.</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>Front brake</source>
      <translation>Vorderradbremse</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>two calipers</source>
      <translation>zwei Bremssättel</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>{side} brake caliper</source>
      <translation>Bremssattel {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>caliper left</source>
      <translation>Bremssattel links</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>left brake caliper</source>
      <translation>Bremssattel links</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>caliper right</source>
      <translation>Bremssattel rechts</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>right brake caliper</source>
      <translation>Bremssattel rechts</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>none on the legs</source>
      <translation>keine an den Holmen</translation>
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>A drum, or something not bolted to the legs.</source>
      <translation>Eine Trommelbremse oder etwas, das nicht an die Holme geschraubt ist.</translation>
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>fork caps</source>
      <translation>Verschlussschrauben</translation>
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>{side} fork cap</source>
      <translation>Verschlussschraube {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>Started by hand, square to its fine thread, and turned in slowly.</source>
      <translation>Von Hand ansetzen, gerade zum Feingewinde, und langsam eindrehen.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>Fork</source>
      <translation>Gabel</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A plain fork: spring, oil and a damper rod held by a bolt from below.</source>
      <translation>Eine einfache Gabel: Feder, Öl und ein Dämpferrohr, das von unten eine Schraube hält.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} damper-rod bolt</source>
      <translation>Dämpferrohrschraube {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A new sealing washer under its head; the rod held while it is turned.</source>
      <translation>Neuer Dichtring unter dem Kopf; Dämpferrohr gegenhalten, während sie gedreht wird.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>with air fittings</source>
      <translation>mit Luftanschlüssen</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>As the plain fork, with an air valve and a line that joins the legs.</source>
      <translation>Wie die einfache Gabel, mit Luftventil und einer Leitung, die die Holme verbindet.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} air fitting</source>
      <translation>Luftanschluss {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>O-rings looked at even where no pressure is used; the tube's openings sealed while oil is in it off the bike.</source>
      <translation>O-Ringe ansehen, auch wo kein Druck benutzt wird; die Öffnungen des Standrohrs verschließen, solange es ausgebaut ist und Öl enthält.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The openings for the air are closed before the leg is filled and shut, because the oil would run out of them.</source>
      <translation>Die Luftöffnungen werden geschlossen, bevor der Holm befüllt und verschlossen wird, weil das Öl aus ihnen herauslaufen würde.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>with anti-dive units</source>
      <translation>mit Anti-Dive-Einheiten</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>As the plain fork, with a unit on each slider that the front brake works.</source>
      <translation>Wie die einfache Gabel, mit einer Einheit an jedem Tauchrohr, die von der Vorderradbremse betätigt wird.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} anti-dive unit bolts</source>
      <translation>Schrauben der Anti-Dive-Einheit {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>Count the bolts; new sealing rings. Brake fluid and fork oil meet here: rinse what the fluid has wetted before it goes to the bench.</source>
      <translation>Schrauben zählen; neue Dichtringe. Hier treffen Bremsflüssigkeit und Gabelöl aufeinander: was die Flüssigkeit benetzt hat, spülen, bevor es auf die Werkbank kommt.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The anti-dive units are tight on their sliders before the leg is filled and shut, because the fork's oil goes through them.</source>
      <translation>Die Anti-Dive-Einheiten sind an ihren Tauchrohren festgezogen, bevor der Holm befüllt und verschlossen wird, weil das Gabelöl durch sie fließt.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A closed damping unit in each leg; its rod is screwed to the cap.</source>
      <translation>Eine geschlossene Dämpfereinheit in jedem Holm; ihre Stange ist an die Verschlussschraube geschraubt.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} cartridge bolt</source>
      <translation>Kartuschenschraube {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A new sealing washer; the cartridge held while it is turned.</source>
      <translation>Neuer Dichtring; Kartusche gegenhalten, während die Schraube gedreht wird.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The cartridge is held fast below before its rod and the cap close the leg, because it turns with the bolt while it is loose.</source>
      <translation>Die Kartusche ist unten festgezogen, bevor ihre Stange und die Verschlussschraube den Holm schließen, weil sie sich mit der Schraube mitdreht, solange sie lose ist.</translation>
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The thick tubes stand in the brackets, the thin ones carry the axle.</source>
      <translation>Die dicken Rohre sitzen in den Gabelbrücken, die dünnen tragen die Achse.</translation>
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>Handlebars</source>
      <translation>Lenker</translation>
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>{side} handlebar clamp</source>
      <translation>Lenkerklemmung {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>below the brackets</source>
      <translation>unter den Gabelbrücken</translation>
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>Each lower clamp</source>
      <translation>Jede untere Klemmung</translation>
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>one bolt</source>
      <translation>eine Schraube</translation>
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>{side} lower clamp</source>
      <translation>untere Klemmung {side}</translation>
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>two bolts</source>
      <translation>zwei Schrauben</translation>
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>three bolts</source>
      <translation>drei Schrauben</translation>
    </message>
    <message>
      <location filename="resources/patterns/stem.json" />
      <source>Stem, at the top</source>
      <translation>Lenkschaft, oben</translation>
    </message>
    <message>
      <location filename="resources/patterns/stem.json" />
      <source>head bolt and pinch bolt</source>
      <translation>Lenkschaftschraube und Klemmschraube</translation>
    </message>
    <message>
      <location filename="resources/patterns/stem.json" />
      <source>head bolt alone</source>
      <translation>nur Lenkschaftschraube</translation>
    </message>
    <message>
      <location filename="resources/patterns/top_clamps.json" />
      <source>Each top clamp</source>
      <translation>Jede obere Klemmung</translation>
    </message>
    <message>
      <location filename="resources/patterns/top_clamps.json" />
      <source>{side} top clamp</source>
      <translation>obere Klemmung {side}</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Fuel tank</source>
      <translation>Kraftstofftank</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Tap shut and no flame near, because fuel runs from an open pipe; covered or set aside, because a dropped spanner marks it.</source>
      <translation>Hahn zu und keine Flamme in der Nähe, denn aus einer offenen Leitung läuft Kraftstoff; abgedeckt oder beiseitegestellt, denn ein fallender Schlüssel hinterlässt Spuren.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Left front caliper</source>
      <translation>Bremssattel vorn links</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Hung from a hook, not from the hose, because a hose that carries a caliper is damaged inside; wood between the pads, because one pull at the lever pushes the pistons out.</source>
      <translation>An einem Haken aufgehängt, nicht am Schlauch, denn ein Schlauch, der einen Bremssattel trägt, wird innen beschädigt; Holz zwischen den Belägen, denn ein Zug am Hebel drückt die Kolben heraus.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Right front caliper</source>
      <translation>Bremssattel vorn rechts</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Speedometer drive</source>
      <translation>Tachoantrieb</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark how it stands on the slider, because a drive fitted turned round breaks its tongue or its cable.</source>
      <translation>Stellung am Tauchrohr markieren, denn ein verdreht angebauter Antrieb zerbricht seinen Mitnehmer oder seine Welle.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Front wheel</source>
      <translation>Vorderrad</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark its way of turning and lay the spacers down in their order, because they go on either way and only one is right; never left lying on a disc.</source>
      <translation>Laufrichtung markieren und Distanzhülsen in ihrer Reihenfolge ablegen, denn sie passen auf beide Arten, und nur eine ist richtig; nie auf einer Bremsscheibe liegen lassen.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Front mudguard</source>
      <translation>Vorderer Kotflügel</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note which washer and rubber went where, because a guard pulled together without its spacers binds the sliders.</source>
      <translation>Notieren, welche Scheibe und welches Gummi wo saß, denn ein ohne seine Distanzstücke zusammengezogener Kotflügel verklemmt die Tauchrohre.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Fork brace</source>
      <translation>Gabelstabilisator</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark front and top, because a brace that is turned round pulls the legs together.</source>
      <translation>Vorn und oben markieren, denn ein verdrehter Gabelstabilisator zieht die Holme zusammen.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark how they are turned in their clamps before they move; tied up level with the reservoir upright, because air gets into the brake and fluid strips paint.</source>
      <translation>Drehlage in den Klemmungen markieren, bevor er bewegt wird; waagerecht hochgebunden, Ausgleichsbehälter aufrecht, denn sonst gelangt Luft in die Bremse, und Bremsflüssigkeit löst Lack ab.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Brake reservoir</source>
      <translation>Ausgleichsbehälter</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Kept upright and carried by a strap, not by its hose, because air rises into the line and the fluid strips paint.</source>
      <translation>Aufrecht gehalten und von einem Band getragen, nicht vom Schlauch, denn sonst steigt Luft in die Leitung, und die Flüssigkeit löst Lack ab.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Instruments</source>
      <translation>Instrumente</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Laid face up and not hung from their cables, because a cable that is bent sharply breaks inside.</source>
      <translation>Anzeige nach oben abgelegt und nicht an den Kabeln aufgehängt, denn ein scharf geknicktes Kabel bricht innen.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Headlamp and bracket</source>
      <translation>Scheinwerfer mit Halter</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Tied up and not hung from its wires; mark how high the beam stood, because it is set again before the road.</source>
      <translation>Hochgebunden und nicht an den Kabeln aufgehängt; Höhe des Lichtkegels markieren, denn er wird vor der Fahrt wieder eingestellt.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Left indicator</source>
      <translation>Linker Blinker</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark the wires of each side, because left and right are easily changed over.</source>
      <translation>Kabel jeder Seite kennzeichnen, denn links und rechts sind leicht vertauscht.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Right indicator</source>
      <translation>Rechter Blinker</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Ignition switch</source>
      <translation>Zündschloss</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Battery disconnected first, because its wires are live; its plug is parted and not pulled by the wires.</source>
      <translation>Zuerst Batterie abgeklemmt, denn seine Kabel stehen unter Spannung; den Stecker trennen und nicht an den Kabeln ziehen.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Horn</source>
      <translation>Hupe</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Take its plugs and not its wires; note which way it points, because it may foul the lower bracket at full lock.</source>
      <translation>An den Steckern fassen, nicht an den Kabeln; notieren, wohin sie zeigt, denn am Lenkanschlag kann sie an die untere Gabelbrücke stoßen.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Clutch cable</source>
      <translation>Kupplungszug</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph its run before it moves, because a cable on the wrong side of the stem pulls at full lock; note the adjuster's turns.</source>
      <translation>Verlauf notieren oder fotografieren, bevor er bewegt wird, denn ein Zug auf der falschen Seite des Lenkschafts zieht am Lenkanschlag; Umdrehungen des Einstellers notieren.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Throttle cables</source>
      <translation>Gaszüge</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph their run and mark which one opens, because a cable that pulls at full lock opens the throttle.</source>
      <translation>Verlauf notieren oder fotografieren und den öffnenden Zug kennzeichnen, denn ein Zug, der am Lenkanschlag zieht, gibt Gas.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Speedometer cable</source>
      <translation>Tachowelle</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph its run, and keep its ends clean, because grit wears the drive.</source>
      <translation>Verlauf notieren oder fotografieren und die Enden sauber halten, denn Schmutz verschleißt den Antrieb.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Brake hoses, guides</source>
      <translation>Bremsschläuche, Führung</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph their run and every guide, because a hose that is free of its guide reaches the tyre; none is bent sharply or clamped.</source>
      <translation>Verlauf und jede Führung notieren oder fotografieren, denn ein Schlauch außerhalb seiner Führung reicht an den Reifen; keinen scharf knicken oder abklemmen.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Wiring and its ties</source>
      <translation>Kabelbaum und Binder</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note where each tie stood, because a loom without one is trapped between bracket and stop at full lock.</source>
      <translation>Notieren, wo jeder Kabelbinder saß, denn ein Kabelbaum ohne ihn wird am Lenkanschlag zwischen Gabelbrücke und Anschlag eingeklemmt.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Steering damper</source>
      <translation>Lenkungsdämpfer</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note its position and its setting before it moves, because mounted askew it stops the steering short of the lock.</source>
      <translation>Lage und Einstellung notieren, bevor er bewegt wird, denn schief angebaut hält er die Lenkung vor dem Anschlag auf.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Fairing or screen</source>
      <translation>Verkleidung, Windschild</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note the length and place of each bolt, because too long a one reaches a hose or a wire behind it.</source>
      <translation>Länge und Platz jeder Schraube notieren, denn eine zu lange reicht an einen Schlauch oder ein Kabel dahinter.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Left fork gaiter</source>
      <translation>Linker Faltenbalg</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note which way round its breather holes are, because turned forward they take in water.</source>
      <translation>Lage der Entlüftungslöcher notieren, denn nach vorn gedreht nehmen sie Wasser auf.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Right fork gaiter</source>
      <translation>Rechter Faltenbalg</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Air line of the legs</source>
      <translation>Luftleitung der Holme</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Pressure let out at the valve first; openings sealed, because the leg's oil runs out through them, and O-rings kept for their size.</source>
      <translation>Druck zuerst am Ventil abgelassen; Öffnungen verschlossen, denn durch sie läuft das Öl des Holms aus, und O-Ringe wegen ihrer Größe aufgehoben.</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Anti-dive line</source>
      <translation>Anti-Dive-Leitung</translation>
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Capped at both ends at once, because brake fluid draws water and strips paint; the brake is bled again before the road.</source>
      <translation>Sofort an beiden Enden verschlossen, denn Bremsflüssigkeit zieht Wasser an und löst Lack ab; die Bremse wird vor der Fahrt wieder entlüftet.</translation>
    </message>
  </context>
</TS>
