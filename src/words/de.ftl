# German. The same ids and gaps as en.ftl, in the same order.
# No native tradesman has checked this table. Single words of which the translator is not sure carry
# a line `# unchecked: …` above them; everything else is unchecked by a speaker, too, but usual in the trade.
#
# Glossary. English | German, as it stands everywhere below
#   control unit | Steuergerät            unit (short for it) | SG
#   sensor | Sensor                       transducer | Drucksensor
#   NTC thermistor | Heißleiter (NTC)     B value | B-Wert
#   rated resistance | Nennwiderstand     nominal | Nennwert, nenn in heads
#   least, greatest | min, max            limit | Grenzwert
#   window | Gutbereich                   tolerance | Toleranz
#   service limit | Servicegrenze         source | Quelle
#   NOT GIVEN | KEINE ANGABE              DRAFT | ENTWURF
#   pull-up resistor | Pull-up-Widerstand pull-down resistor | Pull-down-Widerstand
#   reference | Referenzspannung, Referenz series resistor | Vorwiderstand
#   return | Sensormasse                  ground | Masse
#   signal | Signal                       feed, supply | Versorgung
#   battery | Batterie, Batteriespannung  body as return | Karosserie als Rückleiter
#   pin | Pin                             connector, plug | Stecker
#   mated, unmated | gesteckt, abgezogen  harness | Kabelstrang
#   mating face | Steckseite              wire entry | Leitungsseite
#   face of a connector | Steckbild       latch | Verriegelung
#   back-probe | rückseitig messen        probe | Messspitze
#   meter | Messgerät, Multimeter         leads | Messleitungen
#   thermometer | Thermometer             pressure gauge | Manometer
#   reading | Messwert                    live data | Messwerteblock
#   open circuit | Unterbrechung, offen   shorted to ground, to battery | Kurzschluss nach Masse, nach Plus
#   high resistance, bad contact | Übergangswiderstand      leakage | Nebenschluss
#   voltage drop | Spannungsabfall        drop-out | Aussetzer
#   key on, key off | Zündung ein, aus    engine running | Motor läuft
#   actuator | Stellmotor                 feedback potentiometer | Rückmeldepotentiometer
#   track, wiper | Schleifbahn, Schleifer stop | Anschlag
#   blower | Gebläse                      step | Stufe
#   power transistor | Leistungstransistor relay | Relais
#   driver | Endstufe                     low side, high side | masseseitig, plusseitig
#   coil, winding | Spule, Wicklung       freewheel diode | Freilaufdiode
#   magnetic clutch | Magnetkupplung      control valve | Regelventil
#   duty | Tastverhältnis                 ripple | Welligkeit
#   displacement | Hub (Hubvolumen)       series part | Vorschaltteil
#   recirculation door | Umluftklappe     mix door | Mischklappe
#   mode door | Verteilerklappe           outlets, vents | Ausströmer
#   cabin air | Innenraumluft             outside air, ambient | Außenluft
#   evaporator outlet air | Verdampfer-Auslassluft
#   intake | Ansaugung                    dew point | Taupunkt
#   cooling duty | Kühlung der Luft       saturation | Sättigung
#   refrigerant | Kältemittel             superheat | Überhitzung
#   subcooling | Unterkühlung             suction line | Saugleitung
#   liquid line | Flüssigkeitsleitung     suction, discharge gauge | Manometer ND, HD
#   absolute, gauge pressure | Absolutdruck, Überdruck
#   panel | Bedienteil                    panel mode | Betriebsart
#   control point | Stellpunkt            forced, free, don’t care | erzwungen, frei, beliebig
#   stuck at | hängt auf                  request | Anforderung
#   granted, held back | freigegeben, gesperrt              hold time | Haltezeit
#   threshold, release threshold | Ansprechschwelle, Rückfallschwelle
#   delay | Verzögerung                   condition | Bedingung
#   accuracy | Genauigkeit                uncertainty U, k = 2 | erweiterte Messunsicherheit U, k = 2
#   guard band | Schutzband               decision rule | Entscheidungsregel
#   undecided | unentschieden             OK, not OK | i. O., n. i. O.
#   bay, bay temperature | Halle, Hallentemperatur          soak | Temperaturangleich
#   technical lead | technische Leitung   complaint | Beanstandung
#   card | Karte                          test sheet | Prüfblatt
#   spec, specs | Spezifikation, Spezifikationen
#   checklist | Checkliste                symptom index | Symptomverzeichnis
#   report | Ergebnisbericht              proof sheet | Nachweisblatt
#   worst case | ungünstigster Fall, in Anmerkungen Worst Case     rounded inward | nach innen gerundet
#   common practice, no source | allgemein üblich, ohne Quelle
#   DANGER, WARNING, CAUTION, NOTICE | GEFAHR, WARNUNG, VORSICHT, HINWEIS
#   isolate, lock, wait, prove dead | freischalten, gegen Wiedereinschalten sichern, warten, Spannungsfreiheit feststellen
# What the user types in a spec (keys, kinds, file names, commands, numbers with a point) stays as it is typed.

## How findings are headed

finding-error = Fehler
finding-warning = Warnung
finding-help = Hilfe
finding-note = Hinweis
did-you-mean = gemeint ist vielleicht `{ $word }`?

## Dimensions

dimension-temperature = Temperatur
dimension-temperature-difference = Temperaturdifferenz
dimension-resistance = Widerstand
dimension-voltage = Spannung
dimension-current = Strom
dimension-ratio = Prozentwert
dimension-beta = B-Wert
dimension-power = Leistung
dimension-dissipation = Wärmeableitwert
dimension-pressure = Druck
dimension-length = Länge
dimension-inductance = Induktivität
dimension-frequency = Frequenz
dimension-duration = Zeit
dimension-irradiance = Bestrahlungsstärke
dimension-specific-enthalpy = spezifische Enthalpie
dimension-wire-size = Leitungsquerschnitt

## Labels: what was expected, or what stands there

wanted-text = erwartet: Text in Anführungszeichen
wanted-glyph = erwartet: ein Zeichen, das die Schriften haben
wanted-shorter = erwartet: höchstens { $longest } Zeichen
wanted-value = erwartet: ein Wert mit Einheit in Anführungszeichen, etwa "2.2 kΩ"
wanted-texts = erwartet: eine Liste von Texten, etwa ["…", "…"]
wanted-number = erwartet: eine Zahl
wanted-table = erwartet: eine Tabelle
wanted-tables = erwartet: eine Liste von Tabellen
wanted-list = erwartet: eine Liste
wanted-key = erwartet: hier ein Schlüssel `{ $key }`
wanted-one-of = erwartet: eines von { $words }
wanted-quantity = erwartet: { $dimension }, etwa { $examples }
wanted-decimal-point = erwartet: ein Dezimalpunkt und Leerzeichen zwischen den Tausendern
wanted-nothing-more = erwartet: hier nichts
wanted-low-first = erwartet: das untere Ende zuerst
wanted-interval = erwartet: zwei Enden, etwa { $examples }
wanted-zero-or-more = erwartet: null oder mehr
wanted-smaller-tolerance = erwartet: eine Toleranz, die kleiner ist als der Wert selbst
wanted-accuracy = erwartet: eine Form wie `0.5 % + 2 digits`
wanted-row = erwartet: [Temperatur, Widerstand] oder [Temperatur, min, Nennwert, max], nur Zahlen
wanted-pair = erwartet: zwei Werte in Anführungszeichen, etwa ["0.6 A", "5 %"]
wanted-low-voltage = erwartet: { $greatest } V oder weniger
wanted-two-points = erwartet: zwei Punkte oder mehr
wanted-a-change = erwartet: Punkte mit verschiedenem Hub
wanted-control-point = erwartet: ein Strom von 0 A oder mehr und ein Hub von 0 % bis 100 %
wanted-stated-direction = erwartet: was unter `more_current` steht
wanted-reached = erwartet: ein Strom, den eine heiße Spule erreicht
wanted-at-most-whole = erwartet: 100 % oder weniger
wanted-exponent = erwartet: mehr als 0 und höchstens { $greatest }
wanted-wire-size = die Norm führt { $sizes } mm²
wanted-no-gauge-class = erwartet: keine Klasse bei einer Drahtnummer
wanted-conductors = erwartet: 2 (hin und zurück), oder 1, wo die Karosserie der Rückleiter ist
wanted-wire-drop = erwartet: ein Spannungsabfall darunter
wanted-position = erwartet: ["Name", "101"], ["Name", 2] oder ["Name", "open"]
wanted-toml = erwartet: gültiges TOML
wanted-utf8 = erwartet: Text in UTF-8
wanted-id = erwartet: Buchstaben A bis Z, Ziffern, `-` und `_`, höchstens { $longest } davon
wanted-id-table = erwartet: eine Tabelle mit einer Kennung, etwa [{ $kind }.SOME-ID]
wanted-beta = erwartet: { $least } K bis { $greatest } K
wanted-coefficients = erwartet: a, b und c eines Heißleiters, für Ohm und Kelvin
wanted-coefficients-4 = erwartet: a, b, c und d eines Heißleiters, für Kelvin
wanted-silicon = erwartet: a von { $least } bis { $greatest } (1/K) und b kleiner als ein Hundertstel davon (1/K²)
wanted-no-class = erwartet: eine Klasse nur bei einer Kennlinie mit model "platinum"
wanted-no-b = erwartet: kein solcher Schlüssel bei einem Sensor, dessen Widerstand steigt
wanted-real-temperature = erwartet: eine Temperatur, die es gibt
wanted-magnitude = üblich ist { $least } bis { $greatest }
wanted-above-zero = erwartet: mehr als null
wanted-two-rows = erwartet: zwei Zeilen oder mehr
wanted-min-nominal-max = erwartet: min ≤ Nennwert ≤ max
wanted-same-columns = erwartet: so viele Spalten wie in der ersten Zeile
wanted-falling = erwartet: weniger Ohm als in der kälteren Zeile
wanted-rising = erwartet: mehr Ohm als in der kälteren Zeile
wanted-near = die Nachbarn lassen etwa { $ohms } Ω erwarten
wanted-inside = erwartet: { $low } bis { $high }
wanted-one-tolerance = erwartet: nur eine Art, die Toleranz anzugeben
wanted-divider = erwartet: { $least } bis { $greatest }
wanted-defined = erwartet: ein [{ $kind }.…] mit dieser Kennung im Satz
wanted-instrument = erwartet: ein { $wanted }
wanted-same-connector = erwartet: beide Pins an einem Stecker
wanted-pin = erwartet: Stecker und Pin, etwa `C2/7`
wanted-listed-pin = erwartet: ein Pin, der in [connector.{ $connector }.pins] steht
wanted-fewer-rows = erwartet: ein Schritt, der höchstens { $most } Zeilen ergibt
wanted-of-system = erwartet: eines aus System `{ $system }`
wanted-tests = erwartet: eine Liste `test` mit mindestens einem Eintrag
wanted-key-off = erwartet: `key off` für diese Einstellung des Messgeräts
wanted-unmated = erwartet: `false`: Widerstand eines Bauteils für sich
wanted-probes = erwartet: `pins` mit `plus` und `minus`
wanted-seen-side = erwartet: `{ $key }` in Stecker { $connector }
wanted-other-pin = erwartet: ein anderer Pin als der erste
wanted-meter-for = erwartet: eine Einstellung, die diese Größe anzeigt
wanted-limit-unit = erwartet: eine Einheit für { $what }
wanted-no-limit = erwartet: keine Grenzwerte: diese Größe hat keine
wanted-with-curve = erwartet: Volt oder Ohm eines Sensors, Ohm einer Spule oder Volt eines Drucksensors
wanted-delay = erwartet: eines von `after`, `within`
wanted-row-length = erwartet: { $wanted } Werte, einer je Spalte
wanted-origin-of = nur { $kind } hat diese Größe
wanted-origin-form = erwartet: dafür die Form { $words }
wanted-origin-quantity = das ist eine andere Größe als die gemessene
wanted-component = erwartet: eine Art davor, eines von { $words }
wanted-coded-contacts = erwartet: `contacts` oder ein `ladder` in seinem Stellmotor
wanted-step = erwartet: eine ganze Zahl von 1 bis { $steps }
wanted-duty = erwartet: Anteile von 0 % bis 100 %
wanted-positive-frequency = erwartet: mehr als 0 Hz
wanted-month = erwartet: Jahr und Monat, etwa "2021-01"
wanted-some-vehicle = damals wurde kein Fahrzeug gebaut
wanted-three-tests = erwartet: höchstens drei Prüfungen
wanted-test-of-sheet = erwartet: eine Prüfung, die auf dem Prüfblatt steht
label-its-sheet = sein Prüfblatt
label-meter-drives = in dieser Einstellung speist das Messgerät selbst einen Strom ein
label-meter-shows = worauf das Messgerät gestellt ist
label-quantity = was gemessen wird
label-component = worum es in der Prüfung geht
label-form = seine Form
wanted-tolerance = erwartet: eine Toleranz, etwa ± 1 %
wanted-lamination = erwartet { $least } mm bis { $most } mm
wanted-guard-size = erwartet: mehr als 0 %, höchstens 300 %
wanted-no-guard = erwartet: nur mit `decision = "guarded"`
wanted-not-empty = erwartet: mindestens ein Fahrzeug und eine Gruppe
wanted-columns = erwartet: Einheiten: eine Temperatur und ein Widerstand oder drei (min, Nennwert, max)
wanted-as-many-cells = erwartet: eine Zelle je Spalte
wanted-falling-points = erwartet: weniger Ohm bei mehr Wärme, wie bei Heißleitern (NTC)
wanted-fitted = erwartet: ein Fahrzeug mit diesem System
wanted-every-control = erwartet: jeder Stellpunkt des Systems in einer der drei Listen
wanted-forced = erwartet: mindestens ein Stellpunkt unter `forces`
wanted-order = erwartet: ein `order`, wie bei den anderen Betriebsarten des Systems
wanted-forcing-mode = erwartet: eine Betriebsart, die ihn erzwingt
wanted-two-values = erwartet: zwei Werte oder mehr
wanted-value-word = erwartet: ein Wort, das nicht mit einer Zelle verwechselt werden kann, die nichts erzwingt
wanted-no-separate = erwartet: hier kein `separate`
wanted-source = erwartet: eine Quelle
wanted-unit = erwartet: { $unit }
wanted-flag = erwartet: true oder false, ohne Anführungszeichen
wanted-other-name = erwartet: ein Name, den jeder Datenträger annimmt
wanted-elevation = erwartet: hier ein Schlüssel `elevation`
label-needs-elevation = seine Zahlen hängen vom Luftdruck am Ort ab
label-its-fluid = seine Sättigung ist nur dort bekannt
label-takes-cabin-air = saugt Innenraumluft an
label-other-step = der andere Schritt steht hier
wanted-release-below = erwartet: weniger als { $threshold }
wanted-release-above = erwartet: mehr als { $threshold }
wanted-measured = erwartet: { $quantity }
wanted-after = erwartet: später als { $last }
wanted-trace = erwartet: `trace` in dieser Bedingung
label-threshold = die Ansprechschwelle
label-watches = was sie überwacht
label-never-together = ab hier kommt nichts mehr durch
label-scenario = das Szenario
label-scenario-length = die Dauer des Szenarios
wanted-inside-reference = erwartet: 0 % bis 100 %
wanted-above-low-stop = erwartet: ein Gutbereich, der über { $low } beginnt
wanted-driver-of = erwartet: ein Verbraucher von `{ $system }`
wanted-pins = { $count ->
    [one] erwartet: ein Pin
   *[other] erwartet: { $count } Pins
}
wanted-contacts = erwartet: 1 bis { $most } Namen
wanted-code-length = erwartet: { $count ->
    [one] ein Code mit 1 Stelle, oder 0
   *[other] ein Code mit { $count } Stellen oder die Nummer eines Kontakts unter { $count }
}, oder "open"
wanted-own-code = erwartet: ein Code, den keine andere Stellung hat
wanted-one-contact = erwartet: nur ein Kontakt schaltet zwischen Nachbarn
wanted-own-window = erwartet: ein eigener Gutbereich
wanted-smaller-resistor = erwartet: höchstens { $most } für volle Sonne, 1000 W/m²
wanted-clamp = erwartet: höchstens { $low } bis mindestens { $high }
wanted-line = erwartet: ein Punkt über und jenseits des unteren
wanted-above = erwartet: mehr als { $low }
label-first = zuerst hier angegeben
label-second = hier noch einmal angegeben
label-first-use = zuerst hier benutzt
label-second-use = hier noch einmal benutzt
label-first-row = die erste Zeile
label-colder-row = die kältere Zeile
label-columns = die Tabelle hat Spalten für min und max
label-other-tolerance = die andere steht hier
label-its-curve = seine Kennlinie
label-class = die Klasse steht hier
label-its-decision = die Entscheidungsregel steht hier
label-its-kind = seine Art steht hier
label-its-system = sein System steht hier
label-connector = der Stecker
label-control = der Stellpunkt
label-values = seine Werte stehen hier
label-order = diese Betriebsart hat ein order
label-first-mode = diese Betriebsart
label-second-mode = bewirkt hier dasselbe
label-in-celsius = in °C wäre das { $low } bis { $high }
label-in-fahrenheit = in °F wäre das { $low } bis { $high }
label-needs-shop = dieses Papier trüge den Namen der Werkstatt
label-direction = die Richtung steht hier
label-free-run = der Strom im Leerlauf
label-wire-system = das System der Leitung
label-contact-names = die Namen der Kontakte
label-battery = die Batteriespannung steht hier
label-its-size = sein Querschnitt steht hier
label-window = der Gutbereich
label-low-stop = der untere Anschlag
label-low-end = das untere Ende
label-position-before = die Stellung davor
label-photocurrent = der Fotostrom

## Loading

load-empty-folder = keine Spezifikation in `{ $path }`
load-empty-folder-help = dort `*.toml`-Dateien ablegen oder mit `--specs` einen anderen Ordner nennen
load-not-a-folder = `{ $path }` ist kein Ordner
load-unreadable = das lässt sich nicht lesen: { $reason }
load-too-large = die Datei ist mit { $size } zu groß für eine Spezifikation; höchstens { $largest }
load-too-many = mehr als { $most } Dateien und Ordner hier
load-too-many-help = den Ordner mit den Spezifikationen mit `--specs` nennen
load-too-large-help = was keine Spezifikation ist, aus dem Ordner nehmen, oder die Datei aufteilen
load-not-utf8 = Byte { $byte } ist kein Text in UTF-8
load-not-utf8-help = die Datei im Editor als UTF-8 speichern

## Reading

spec-syntax = kein gültiges TOML: { $reason }
spec-more-syntax = kein gültiges TOML an { $count } weiteren Stellen
spec-unknown-kind = unbekannte Art von Tabelle `{ $word }`
spec-unknown-key = unbekannter Schlüssel `{ $word }` in `{ $name }`
rule-card-key = `{ $key }` sagt nichts auf einer Karte mit `{ $about }`
wanted-card-about = gehört auf eine Karte mit { $words }
spec-missing-one-of = `{ $name }` sagt nicht, worum es geht
spec-two-keys = `{ $first }` und `{ $second }` können nicht zusammen stehen: es geht um eine Sache
spec-missing-key = `{ $name }` hat kein `{ $key }`
spec-loose-key = `{ $word }` steht außerhalb jeder Tabelle
spec-no-id = `{ $word }` in `{ $kind }` hat keine eigene Tabelle
spec-bad-id = `{ $id }` kann keine Kennung sein
spec-duplicate = `{ $name }` ist zweimal angegeben
spec-duplicate-help = eines der beiden umbenennen oder entfernen
spec-wrong-type = `{ $key }` ist ein Wert der falschen Art: { $found }
spec-empty-text = `{ $key }` ist leer
spec-empty-table = `{ $name }` sagt nichts
spec-empty-list = `{ $key }` ist eine leere Liste
spec-quoted-number = `{ $key }` ist eine Zahl in Anführungszeichen
wanted-keys = erwartet: mindestens ein Schlüssel
wanted-entries = erwartet: mindestens ein Eintrag
wanted-bare-number = erwartet: eine Zahl ohne Anführungszeichen
spec-no-glyph = `{ $key }` enthält das Zeichen { $code }, das keine Seite zeigen kann
spec-long-text = `{ $key }` hat { $length } Zeichen
spec-empty-text-help = ausfüllen oder den Schlüssel weglassen: was nicht angegeben ist, druckt als KEINE ANGABE oder entfällt; ein Schlüssel, der da sein muss, wird verlangt
spec-empty-high-voltage-help = die Hochvoltteile in eigenen Worten nennen; den Schlüssel nur weglassen, wo das Fahrzeug keine hat: ohne ihn sagt kein Papier STOPP
spec-unknown-word = `{ $key }` kann nicht `{ $found }` sein
spec-bad-row = eine Zeile, die kein Punkt einer Kennlinie ist
spec-bad-pair = ein Eintrag von `{ $key }` ist kein Paar
spec-bad-position = eine Zeile, die keine Stellung von Kontakten ist

## Quantities

misread-not-a-number = `{ $key }` hat keine lesbare Zahl: `{ $written }`
misread-decimal-comma = `{ $key }` hat ein Komma in einer Zahl: `{ $written }`
misread-unit-missing = `{ $key }` hat eine Zahl ohne Einheit: `{ $written }`
misread-unit-unknown = `{ $key }` hat eine unbekannte Einheit `{ $unit }`
misread-wrong-dimension = `{ $key }` ist eine Angabe für { $wanted }, aber `{ $unit }` ist eine Einheit für { $found }
misread-temperature-for-difference = `{ $key }` ist eine Temperatur, wo eine Differenz verlangt ist: `{ $written }`
misread-trailing = `{ $key }` hat mehr als eine Größe: `{ $rest }`
misread-reversed = `{ $key }` läuft vom oberen zum unteren Ende: `{ $written }`
misread-not-an-interval = `{ $key }` ist kein Bereich: `{ $written }`
misread-negative = `{ $key }` hat eine Toleranz unter null: `{ $written }`
misread-below-zero = `{ $key }` ist unter null: `{ $written }`
misread-exponent = `{ $key }` hat eine Zahl mit Exponent: `{ $written }`
wanted-written-out = erwartet: die ausgeschriebene Zahl in einer passenden Einheit, etwa 2.2 kΩ
misread-tolerance-too-large = `{ $key }` hat eine Toleranz so groß wie der Wert selbst: `{ $written }`
misread-other-unit = `{ $key }` steht in einer anderen Einheit: `{ $unit }`
misread-not-an-accuracy = `{ $key }` ist keine Genauigkeit eines Messgeräts: `{ $written }`

## Rules

rule-beta = einen B-Wert von { $beta } hat kein Heißleiter
rule-beta-help = die Ziffern prüfen, und ob die Einheit K ist
rule-coefficients = diese Koeffizienten ergeben { $resistance } bei 25 °C
rule-coefficients-not-falling = mit diesen Koeffizienten fällt der Widerstand nicht mit steigender Temperatur
rule-coefficients-slope = diese Koeffizienten ergeben einen B-Wert von { $beta } um 25 °C
wanted-slope = das b eines Heißleiters ergibt { $least } K bis { $greatest } K
rule-coefficients-help = Vorzeichen und Zehnerpotenzen prüfen; Koeffizienten für kΩ sind in solche für Ω umzurechnen
rule-coefficients-of-ratio = diese Koeffizienten ergeben einen Sensor mit 1 Ω bei 25 °C, wie die von R geteilt durch R bei 25 °C
rule-coefficients-of-ratio-help = `resistance = "…"` ergänzen, den Nennwiderstand, zu dem sie gehören
rule-silicon = `{ $written }` ist kein Koeffizient eines Silizium-Sensors
rule-silicon-help = Vorzeichen und Zehnerpotenzen prüfen; Koeffizienten in %/K sind durch 100 zu teilen, die in %/K² ebenso
rule-many-ranges = { $count } Messbereiche einer Funktion eines Messgeräts
wanted-few-ranges = höchstens { $most } werden unterschieden
rule-same-range = zwei Messbereiche eines Messgeräts enden bei `{ $written }`
wanted-another-range = erwartet: ein anderes Ende als das des anderen Messbereichs
rule-range-digit = der Messbereich bis `{ $to }` hat die Auflösung `{ $digit }`, feiner als ein kleinerer Bereich
wanted-range-digit = erwartet: `{ $digit }` oder mehr, wie der kleinere Bereich
rule-bits = kein Wandler hat { $written } Bit
rule-plausible = innerhalb von `{ $written }` der Referenz lässt sich kein Sensor lesen
wanted-plausible-ends = erwartet: zwei Enden von 0 % bis 100 %, das zweite über dem ersten
wanted-bits = erwartet: eine ganze Zahl von 6 bis 24
rule-looks-broken = bei { $end }, also in seinem Bereich, verlässt ein guter Sensor { $written } der Referenz (ab { $limit })
wanted-plausible = außerhalb hält das Steuergerät die Leitung für unterbrochen oder kurzgeschlossen
rule-looks-broken-help = die Grenzen mit den Daten des Steuergeräts vergleichen oder den Bereich des Sensors einengen
rule-magnitude = `{ $written }` hat eine ungewöhnliche Größe
rule-magnitude-impossible = `{ $written }` hat eine unmögliche Größe
rule-magnitude-help = den Vorsatz der Einheit mit der Quelle vergleichen
rule-not-positive = `{ $written }` ist nicht größer als null
rule-dissipation = `{ $written }` in bewegter Luft ist weniger als in ruhender Luft
rule-dissipation-help = beide mit der Quelle vergleichen und vertauschen, wenn sie verkehrt herum stehen
wanted-at-least = erwartet: { $least } oder mehr
label-still-air = ruhende Luft steht hier
rule-absolute-zero = Zeile `{ $row }` liegt unter dem absoluten Nullpunkt
rule-few-rows = eine Kennlinie braucht mindestens zwei Zeilen; die Tabelle hat { $count }
rule-limits-order = Grenzwerte verkehrt herum in Zeile `{ $row }`
rule-mixed-columns = Zeile `{ $row }` hat andere Spalten als die erste Zeile
rule-equal-temperatures = die Temperatur { $temperature } steht in zwei Zeilen
rule-not-falling = der Widerstand fällt nicht von Zeile `{ $colder }` zu Zeile `{ $hotter }`
rule-not-falling-help = beide Zeilen mit der Quelle vergleichen; in dieser Tabelle fällt der Widerstand mit der Wärme, wie bei Heißleitern (NTC)
rule-not-rising = der Widerstand steigt nicht von Zeile `{ $colder }` zu Zeile `{ $hotter }`
rule-not-rising-help = beide Zeilen mit der Quelle vergleichen; in dieser Tabelle steigt der Widerstand mit der Wärme, wie bei Platin und Silizium
rule-outlier = Zeile `{ $row }` liegt { $percent } % neben der Kennlinie ihrer Nachbarn
rule-outlier-help = diese Zeile in der Quelle auf eine vertippte Ziffer prüfen
rule-outlier-digit = `{ $number }` würde passen, mit einer anderen Ziffer: diese Zeile mit der Quelle vergleichen
rule-outlier-swapped = `{ $number }` würde passen, mit zwei Ziffern vertauscht: diese Zeile mit der Quelle vergleichen
rule-outlier-point = `{ $number }` würde passen, mit dem Dezimalpunkt an anderer Stelle: diese Zeile mit der Quelle vergleichen
rule-outlier-prefix = `{ $number }` würde passen, um den Faktor tausend versetzt: die Einheit dieser Zeile mit der Quelle vergleichen
rule-range-beyond-table = `{ $range }` geht über die Tabelle hinaus, die von { $low } bis { $high } reicht
rule-range-beyond-formula = `{ $range }` geht über das hinaus, wofür diese Kennlinie berechnet wird, { $low } bis { $high }
rule-range-beyond-class = Klasse { $class } gilt von { $low } bis { $high }: außerhalb gibt es zu den Grenzwerten KEINE ANGABE
rule-range-beyond-class-help = den Bereich einengen oder die Toleranz als `temperature` angeben, wenn das Datenblatt des Elements dort eine nennt
rule-range-beyond-sensor = `{ $range }` geht über den eigenen Bereich des Sensors hinaus, { $low } bis { $high }
rule-tolerance-and-columns = die Toleranz ist angegeben, und die Tabelle hat auch Spalten dafür
rule-tolerance-twice = die Toleranz ist in Kelvin und in Prozent angegeben
rule-tolerance-and-class = die Toleranz ist als Klasse und noch anders angegeben
rule-class-of-no-platinum = Klasse `{ $class }` ist eine für Platin-Elemente, und diese Kennlinie ist keine von Platin
rule-class-of-no-platinum-help = die Kennlinie als `{"{"} model = "platinum", resistance = "100 Ω" {"}"}` schreiben oder die Toleranz als `temperature` oder `resistance`
rule-tolerance-no-b = `{ $key }` lässt eine Toleranz mit dem B-Wert eines Heißleiters wachsen, und dieser Sensor hat keinen
rule-tolerance-no-b-help = weglassen, wo der Prozentsatz bei jeder Temperatur gilt; sonst `temperature`, die `class` eines Platin-Elements oder eine Tabelle mit min und max angeben
rule-tolerance-whole = eine Toleranz von { $written } lässt vom Wert nichts übrig
rule-tolerance-incomplete = Grenzwerte lassen sich nicht berechnen: die Toleranz hat kein `{ $key }`
rule-tolerance-incomplete-help = `beta = "0 %"` nur schreiben, wenn laut Quelle derselbe Prozentsatz bei jeder Temperatur gilt
rule-divider = ein Widerstand von { $resistor } kann einen Sensor mit { $sensor } bei { $temperature } nicht lesen
rule-no-such = { $kind } `{ $id }` gibt es nicht
rule-wrong-instrument = Messgerät `{ $id }` ist kein { $wanted }
rule-pin-twice = Pin { $pin } führt ein Signal und wird zweimal benutzt
rule-pin-twice-systems-help = zwei Systeme können Stecker mit gleichem Namen haben: den Steckern jedes Systems eigene Kennungen geben
spec-bad-face-row = das ist keine Reihe eines Steckbilds
wanted-face-row = erwartet: eine Liste von Pinbezeichnungen, etwa `[1, 2, "", 3]`; `""` ist ein Platz ohne Pinloch
rule-face-no-view = ein Steckbild ist gezeichnet, aber nicht, von wo aus gesehen
wanted-view = erwartet: `view` daneben: `mating-face` oder `wire-entry`; die beiden sind Spiegelbilder
rule-face-empty = das Steckbild hat keinen Pin
rule-face-rows = das Steckbild hat { $rows } Reihen
wanted-face-rows = eine Karte hat Platz für { $most } Reihen
rule-face-places = eine Reihe hat { $places } Plätze
wanted-face-places = eine Karte hat Platz für { $most } Plätze in einer Reihe
rule-face-mark = die Bezeichnung `{ $mark }` ist zu lang für ihren Pin
wanted-face-mark = erwartet: höchstens { $longest } Zeichen
rule-face-lengths = eine Reihe mit { $places } Plätzen unter einer mit { $first }
wanted-face-length = erwartet: so viele Plätze wie in der ersten Reihe
rule-face-lengths-help = `""` schreiben, wo ein Platz kein Pinloch hat
rule-face-twice = Pin { $mark } ist zweimal gezeichnet
rule-face-lacks = { $count ->
    [one] Pin { $marks } ist aufgeführt und nicht gezeichnet
   *[other] Pins { $marks } sind aufgeführt und nicht gezeichnet
}
wanted-face-pin = erwartet: jeder aufgeführte Pin in `rows`
label-face = das Steckbild
label-face-row = die erste Reihe
rule-airbag-card = Stecker { $id } gehört zu Airbag oder Gurtstraffer: er bekommt keine Karte
rule-airbag-face = Stecker { $id } gehört zu Airbag oder Gurtstraffer: er wird nicht gezeichnet
wanted-no-airbag = das hier entfernen
label-airbag = das steht hier
rule-airbag-help = an solchen Leitungen misst und trennt niemand ohne das Verfahren des Herstellers; ist es keine, dann `airbag = false` schreiben
rule-connector-unused = nichts im Satz hat einen Pin an Stecker { $id }
wanted-used-connector = erwartet: ein Stecker, an dem ein Sensor, Stellmotor oder Verbraucher einen Pin hat
rule-view-no-rows = Stecker { $id } hat kein Steckbild, das eine andere Ansicht zeigen könnte
wanted-rows = erwartet: `rows` in seiner Tabelle
rule-two-connectors = ein Ende hat Pins an zwei Steckern, { $first } und { $second }
rule-pin-form = `{ $pin }` ist kein Pin
rule-no-such-pin = Stecker { $connector } hat keinen Pin { $pin }
rule-strip-rows = ein Schritt von { $step } ergibt eine Streifentabelle mit { $rows } Zeilen
rule-other-system = { $kind } `{ $id }` gehört zu System `{ $theirs }`, das Papier ist für `{ $system }`
rule-empty-group = eine Gruppe von Prüfblatt `{ $id }` hat keine Prüfungen
rule-no-such-component = ein Bauteil `{ $word }` zum Prüfen gibt es nicht
rule-test-no-state = Prüfung `{ $id }` nennt ihren Zustand nicht: ein Messwert ohne `{ $key }` bedeutet nichts
rule-test-powered = Prüfung `{ $id }` misst Ohm an einem Stromkreis unter Spannung
rule-test-parallel = Prüfung `{ $id }` misst Ohm an einem gesteckten Bauteil: andere Wege liegen parallel
rule-test-no-pins = Prüfung `{ $id }` sagt nicht, wohin die Messspitzen kommen: zu ihren Pins gibt es KEINE ANGABE
rule-test-no-pins-help = ihr Bauteil hat für diese Messung an diesem Ort keine Pins
rule-test-no-view = Pin { $pin } wird an einem Stecker ohne `{ $key }` gesehen: im Spiegelbild ist es ein anderer Pin
rule-test-one-pin = beide Messspitzen liegen auf Pin { $pin }
rule-test-meter = Prüfung `{ $id }` lässt sich auf `{ $meter }` nicht ablesen
rule-test-unit = dieser Grenzwert ist eine Angabe für { $found }
rule-test-no-curve = Prüfung `{ $id }` betrifft nichts, was eine Kennlinie zum Rechnen hat
rule-test-no-delay = „{ $event }“ kommt nach einem anderen Schritt, aber nichts sagt, wann
rule-test-two-delays = „{ $event }“ hat zwei Verzögerungen
rule-test-row-length = Zeile `{ $name }` hat { $found } Werte
rule-test-origin = `{ $word }` ist keine Größe dieser Prüfung
rule-test-no-step = das Gebläse hat keine Stufe { $step }
rule-test-duty = ein Anteil der Zeit kann nicht `{ $written }` sein
rule-test-frequency = `{ $written }` ist keine Frequenz einer geschalteten Leitung
rule-test-month = `{ $written }` ist kein Monat
rule-test-no-vehicle = Prüfung `{ $id }` gilt für kein Fahrzeug mit System `{ $system }`
rule-test-other-system = Betriebsart `{ $id }` gehört zu System `{ $theirs }`
rule-test-lacks = der Form `{ $form }` fehlt, was sie braucht
rule-test-twice = die Form `{ $form }` hat ihre Grenzwerte zweimal
rule-report-evidence = Bericht `{ $id }` hat Platz für { $most } Messwerte
rule-report-other = Prüfblatt `{ $sheet }` hat keine Prüfung `{ $test }`
rule-empty-sheet = Prüfblatt `{ $id }` hat keine Fahrzeuge oder keine Prüfungen zu drucken
rule-no-vehicle = Prüfblatt `{ $id }` druckt nichts: kein Fahrzeug hat System `{ $system }`
rule-no-limits = `{ $written }` hat keine Toleranz: damit lassen sich keine Grenzwerte in Volt berechnen
rule-no-limits-help = `{ $written } ± …` aus der Unterlage schreiben; ± 0 % nur für einen exakten Wert
rule-mode-twice = Betriebsart `{ $id }` nennt Stellpunkt `{ $control }` zweimal
rule-mode-twice-help = ein Stellpunkt ist entweder erzwungen, frei oder beliebig: eines davon behalten
rule-mode-other-system = Stellpunkt `{ $control }` gehört zu System `{ $theirs }`, die Betriebsart zu `{ $system }`
rule-mode-silent = Betriebsart `{ $id }` sagt nicht, was sie mit { $controls } macht
rule-mode-silent-help = unter `forces` mit seinem Wert schreiben oder in die Liste `free` oder `dont_care`; nichts wird stillschweigend angenommen
rule-mode-value = Stellpunkt `{ $control }` hat keinen Wert `{ $value }`
rule-mode-forces-nothing = Betriebsart `{ $id }` erzwingt nichts, prüft also nichts
rule-mode-forces-nothing-help = ergänzen, was sie laut Quelle erzwingt, oder die Betriebsart weglassen
rule-mode-order-twice = zwei Betriebsarten haben das order { $order }
rule-mode-order-whole = `{ $order }` ist kein Platz in der Reihe der Betriebsarten
wanted-whole = erwartet: eine ganze Zahl, etwa 4
rule-mode-order-missing = Betriebsart `{ $id }` hat kein `order`, andere Betriebsarten von System `{ $system }` aber schon
rule-mode-same = Betriebsarten `{ $first }` und `{ $second }` bewirken an jedem Stellpunkt dasselbe
rule-mode-same-help = beide mit der Quelle vergleichen; sind sie wirklich gleich, genügt eine Zeile der Tabelle
rule-control-never-forced = keine Betriebsart von System `{ $system }` erzwingt Stellpunkt `{ $id }`
rule-control-never-forced-help = eine Betriebsart ergänzen, die ihn erzwingt, oder den Stellpunkt weglassen: keine Betriebsart kann zeigen, ob er geht
rule-control-values = Stellpunkt `{ $id }` hat weniger als zwei Werte: nichts kann zeigen, dass er sich bewegt
rule-control-value-twice = Stellpunkt `{ $id }` hat den Wert `{ $value }` zweimal
rule-control-taken = `{ $value }` kann kein Wert eines Stellpunkts sein
rule-panel-scales = die Skalen von Bedienteil `{ $id }` sind keine Umrechnungen voneinander: die unteren Enden weichen um { $low } K ab, die oberen um { $high } K
rule-panel-scales-help = beide mit der Quelle vergleichen. Hat das Bedienteil zwei eigene Skalen, darf keine aus der anderen berechnet werden: dann `separate = {"{"} value = true, source = "…" {"}"}` schreiben
rule-panel-not-separate = Bedienteil `{ $id }` heißt getrennt, aber seine Skalen sind Umrechnungen voneinander: die unteren Enden weichen um { $low } K ab, die oberen um { $high } K, nicht mehr als durch Runden
rule-panel-not-separate-help = beide Skalen mit der Quelle vergleichen oder `separate` entfernen
rule-panel-separate-source = Bedienteil `{ $id }` heißt getrennt, aber nicht, woher das bekannt ist
rule-panel-separate-source-help = `separate = {"{"} value = true, source = "…" {"}"}` schreiben oder dem Bedienteil eine `source` geben
rule-digits-help = Ziffern und Einheit mit der Quelle vergleichen
rule-no-current-limits = `{ $written }` hat keine Toleranz: damit lassen sich keine Grenzwerte für Widerstand oder Strom berechnen
rule-negative = `{ $written }` ist unter null
rule-high-voltage = STOPP: { $written } ist Hochvolt
rule-high-voltage-help = Hochvoltteile nicht in die Spezifikationen aufnehmen: für sie wird nichts berechnet und nichts gedruckt. Nur Fachkundige arbeiten daran: freischalten, gegen Wiedereinschalten sichern, warten, Spannungsfreiheit feststellen
rule-nominal-battery = eine Nennspannung der Batterie von { $written } hat die Batterie nie
rule-control-few = ein Hub braucht mindestens zwei Punkte
rule-control-flat = der Hub ist an jedem Punkt derselbe
rule-control-point = `{ $point }` ist kein Punkt eines Kompressors
rule-control-same = der Strom von Punkt `{ $point }` steht zweimal da
rule-control-direction = von Punkt `{ $less }` zu `{ $more }` bedeutet mehr Strom nicht { $direction }
rule-control-direction-help = erst die Punkte, dann die Richtung mit der Quelle vergleichen: es gibt beide Arten von Regelventilen
rule-ceiling = { $current } wird nicht immer erreicht: { $battery } treibt höchstens { $most } durch eine heiße Spule mit { $resistance }
rule-ceiling-help = Widerstand und Temperatur der Spule prüfen; stimmen sie, ist ein Strom darunter kein Fehler
rule-rated-coil = `{ $written }` ist eine ungewöhnliche Bezugstemperatur für eine Spule
rule-rated-coil-help = `at` ist die Temperatur, bei der `resistance` gilt; wie heiß die Spule wird, steht in `temperature`
rule-copper-range = `{ $written }` geht über die Temperaturen hinaus, für die Kupfer berechnet wird
rule-duty = ein Tastverhältnis von { $written } ist mehr als immer ein
rule-blower-step = eine Stufe von { $written } legt mehr als die Batteriespannung an den Motor
rule-step-tolerance = eine Toleranz von { $written } der Batteriespannung lässt von einer Stufe nichts übrig
rule-drop-whole = ein Spannungsabfall von `{ $written }` lässt von der Batteriespannung nichts übrig
wanted-below = erwartet: weniger als { $greatest }
rule-blower-order = Stufe `{ $faster }` liegt nicht über Stufe `{ $slower }`
label-step-before = die Stufe davor
rule-exponent = einen Exponenten von { $written } hat kein Gebläse
rule-gauge-class = { $size } ist eine Drahtnummer, die keine Klasse hat
rule-wire-size = { $size } ist kein Querschnitt der IEC 60228: der größte Widerstand ist nicht bekannt
rule-wire-size-help = berechnet wird nur der Nennwiderstand von massivem Kupfer, ρ/A mit 1/58 Ω mm²/m; eine wirkliche Leitung hat 3 bis 15 % mehr. Querschnitte für Straßenfahrzeuge stehen in ISO 6722 und ISO 19642
rule-conductors = ein Strom kann nicht durch { $written } Leiter hintereinander gehen
rule-wire-system = der Verbraucher `{ $driver }` gehört zum System `{ $system }`
rule-wire-drop = die Leitung verliert { $lost } bei { $at }, mehr als ihr Grenzwert von { $limit }
rule-wire-drop-help = Querschnitt, Länge und Strom mit der Quelle vergleichen; eine gute Leitung kann den Grenzwert nicht einhalten
rule-reserved-name = `{ $id }` kann nicht auf jedem Datenträger ein Dateiname sein
rule-same-name = `{ $id }` benennt zwei Dokumente, oder zwei, die sich nur in Groß- und Kleinschreibung unterscheiden
rule-lamination = `{ $key }` von { $written } ist kein Maß, mit dem Karten laminiert werden
rule-guard-size = ein Schutzband von { $written } von U taugt nichts
rule-guard-size-help = `guard = "100 %"` für w = U schreiben; für Grenzwerte ohne Schutzband `decision = "simple"`
rule-guard-alone = ein Schutzband von { $written }, aber die Entscheidungsregel hat keines
rule-guard-alone-help = `decision = "guarded"` schreiben oder das Schutzband herausnehmen
rule-no-shop = der Satz nennt keine Werkstatt
rule-no-shop-help = [shop] mit `title` und `paper` ergänzen
rule-elevation-missing = die Werkstatt hat keine Höhe: zu Überdrücken und Luft gibt es KEINE ANGABE
rule-elevation-help = `elevation = "… m"` in [shop] ergänzen, die Höhe über dem Meeresspiegel
rule-elevation-outside = `{ $written }` ist keine Höhe, die die Normatmosphäre umfasst
rule-elevation-unusual = `{ $written }` ist eine ungewöhnliche Höhe für eine Werkstatt
rule-elevation-unit-help = Ziffern und Einheit prüfen, `m` oder `ft`
rule-beyond-saturation = `{ $range }` geht über die Sättigungsgleichung von { $fluid } hinaus
rule-unit-twice = die Einheit `{ $unit }` steht zweimal da
rule-above-critical = `{ $range }` geht über { $critical } hinaus, den kritischen Punkt von { $fluid }: dort gibt es keine Sättigung
rule-duty-no-limits = `{ $written }` hat keine Toleranz: damit lassen sich keine Grenzwerte der Ausströmtemperatur berechnen
rule-no-such-air = `{ $written }` ist keine Lufttemperatur um ein Fahrzeug
rule-no-such-share = `{ $written }` ist kein möglicher Anteil
rule-cabin-missing = eine Stellung saugt Innenraumluft an, aber es gibt kein `{ $key }`: zu ihren Zahlen gibt es KEINE ANGABE
rule-cabin-help = `cabin = "… °C"` und `cabin_humidity = "… %"` ergänzen
rule-vent-rows = diese Schritte ergeben eine Tabelle mit { $rows } Zeilen
rule-stop-outside = ein Anschlag kann nicht bei { $written } der Referenz liegen
rule-stop-nominal = { $written } liegt außerhalb des eigenen Gutbereichs
rule-stops-reversed = der untere Anschlag ({ $low }) liegt höher als der obere ({ $high })
rule-stops-reversed-help = `low` ist der Anschlag mit weniger Volt, wohin die Klappe auch geht: die beiden vertauschen
rule-stops-overlap = die Gutbereiche der Anschläge, { $low } und { $high }, überlappen: ein Messwert in beiden liegt an keinem Anschlag
rule-contact-count = { $count ->
    [one] 1 Kontakt
   *[other] { $count } Kontakte
} an einem Stellmotor
rule-contact-pins = { $count ->
    [one] ein Pin für { $names } Kontakte
   *[other] { $count } Pins für { $names } Kontakte
}
rule-stall = ein Motor, der blockiert { $held } zieht und im Leerlauf { $free }
rule-stall-help = ein blockierter Motor zieht ein Mehrfaches des Leerlaufstroms: sind die beiden vertauscht?
rule-code-length = der Code von Stellung `{ $position }` passt nicht zu den vorhandenen Kontakten
rule-code-twice = die Stellungen `{ $first }` und `{ $second }` haben denselben Code
rule-code-jump = von `{ $from }` nach `{ $to }` schalten { $count } Kontakte
rule-code-jump-help = die Codes prüfen; stimmen sie, kann unterwegs kurz { $codes } zu sehen sein
rule-ladder-overlap = kein Messwert unterscheidet `{ $first }` ({ $first_window }) von `{ $second }` ({ $second_window })
rule-ladder-overlap-help = Widerstände und Toleranzen mit der Quelle vergleichen; stimmen sie, lässt sich das Bauteil hier nicht über Volt beurteilen
rule-light-saturates = mit { $resistor } steht der Messwert ab { $irradiance } am Anschlag
rule-ratio-outside = ein Ausgang kann nicht { $written } der Referenz sein
rule-clamp-cuts = die Enden des Ausgangs, { $clamp }, schneiden ein Stück der Geraden von { $low } bis { $high } ab
rule-line-reversed = das obere Ende ({ $high }) liegt nicht über dem unteren ({ $low })
rule-line-reversed-help = `low` und `high` vertauschen oder beide mit der Quelle vergleichen
rule-transducer = diese Werte ergeben keinen Drucksensor: { $reason }
sheet-thermometer = Thermometer
sheet-multimeter = Multimeter
sheet-own-meter = Für Zeilen, die es nennen
kind-thermometer = Thermometer
kind-multimeter = Multimeter
kind-pressure-gauge = Manometer
kind-hygrometer = Hygrometer
rule-request-release = eine Bedingung, die bei { $threshold } anspricht und bei { $release } abfällt, noch weiter auf derselben Seite
rule-request-release-help = sind die beiden vertauscht, oder sollte `side` anders lauten?
rule-request-no-hysteresis = Ansprech- und Rückfallschwelle sind beide { $threshold }: es gibt keine Hysterese
rule-request-no-hysteresis-help = wo sie zusammenfallen, flattert die Anforderung; nachschlagen, bei welchem Wert die Bedingung abfällt
rule-request-quantity = { $watch } `{ $id }` misst nicht: { $quantity }
rule-request-quantity-help = nennen, was diesen Wert überwacht, oder `reading = "…"`, wo er nur im Messwerteblock zu sehen ist
rule-request-system = `{ $id }` gehört zu System `{ $system }`
rule-request-range = { $written } liegt außerhalb dessen, was der Sensor anzeigt
rule-request-range-help = Einheit und Vorzeichen mit der Quelle vergleichen, und welcher Sensor ihn überwacht
rule-request-never = Anforderung `{ $id }` kann nie freigegeben werden: Bedingungen an denselben Wert schließen einander aus
rule-request-never-help = den Wert anhand der Bedingungstabelle auf und ab verfolgen: welche Seite ist verkehrt?
rule-trace-order = die Zeiten eines Verlaufs steigen bei { $written } nicht
rule-requested-time = die Anforderung kann nicht ab { $written } anstehen
rule-no-trace = das Szenario sagt nicht, was der Wert von „{ $title }“ tut
rule-no-trace-help = `trace = [["0 s", "…"], …]` ergänzen: ein Punkt genügt für einen Wert, der bleibt, wo er ist
kind-sensor = Sensor
kind-transducer = Drucksensor

## What a value is

fact-applicability = Eingebaut in
fact-high-voltage = Hochvolt
fact-rated-resistance = Nennwiderstand
fact-rated-temperature = Nennwert bei
fact-beta = B-Wert
fact-coefficient-a = Koeffizient a (1/K)
fact-coefficient-b = Koeffizient b (1/K)
fact-coefficient-c = Koeffizient c (1/K)
fact-coefficient-d = Koeffizient d (1/K)
fact-coefficient-b-squared = Koeffizient b (1/K²)
fact-coefficients-for = Koeffizienten für R geteilt durch
fact-resistance-at-zero = Widerstand bei 0 °C
fact-table = Tabelle, Punkte
fact-tolerance = Toleranz
fact-tolerance-resistance = Toleranz von R
fact-tolerance-class = Toleranzklasse (IEC 60751)
fact-tolerance-at = Toleranz von R gilt bei
fact-tolerance-beta = Toleranz von B
fact-circuit = Schaltung
fact-pull-up = Pull-up-Widerstand
fact-pull-down = Pull-down-Widerstand
fact-resistor-tolerance = Toleranz eines Widerstands
fact-reference = Referenzspannung
fact-reference-tolerance = Toleranz der Referenz
fact-series = Vorwiderstand
fact-parallel = Parallelwiderstand
fact-system-battery = Batterie beim Messen
fact-switched = Zweiter Widerstand, geschaltet
fact-reader = Widerstand des Mitlesers
fact-reader-reference = Referenz des Mitlesers
fact-return-offset = Sensormasse über Masse
fact-bits = Wandler, Bit
fact-plausible = Plausibel, von der Referenz
# unchecked: Ableitwert of IEC 60539-1 (δ), in German catalogues Wärmeleitwert or Dissipationskonstante
fact-dissipation-still = Ableitwert, ruhend
fact-dissipation-moving = Ableitwert, bewegt
fact-range = Bereich
# unchecked: Servicegrenze; some write Verschleißgrenze
fact-service-limit = Servicegrenze
fact-probe = Fühler
fact-test-value = Wert der Prüfung
fact-location = Einbauort
fact-own-pins = Pins am eigenen Stecker
fact-control-unit-pins = Pins am Steuergerät
fact-component-pins = Pins am Sensor
fact-signal-pin = Signal-Pin
fact-return-pin = Sensormasse-Pin
fact-ground-pin = Masse-Pin
fact-reference-pin = Referenz-Pin
fact-motor-pin = Pin des Motors
fact-contact-pin = Kontakt-Pin
fact-common-pin = Gemeinsamer Pin der Kontakte
fact-contact-in-pin = Pin des Kontakts, Eingang
fact-contact-out-pin = Pin des Kontakts, Last
fact-moves = Bewegt
fact-track = Bahn
fact-track-ends = Jedes Ende der Bahn
fact-wiper-contact = Kontakt des Schleifers
fact-wiper-load = Last am Schleifer
fact-wiper-load-to = Last am Schleifer, gegen
fact-stop-low = Anschlag unten, V/Vref
fact-stop-high = Anschlag oben, V/Vref
fact-stop-nominal = Anschlag nenn, V/Vref
fact-contact-closed = Kontakt zu, höchstens
fact-positions = Stellungen
fact-ladder-resistor = Widerstand der Kette
fact-ladder-end = Widerstand am Ende der Kette
fact-sweep-time = Ende zu Ende, max
fact-sweep-step = Größter Sprung, Weg
fact-sweep-dead-band = Totband, Weg
fact-sweep-hysteresis = Hin gegen zurück, Weg
fact-free-run-current = Motorstrom, Leerlauf
fact-stall-current = Motorstrom, blockiert
fact-plain-dc = Motor ohne Elektronik
fact-recalibration = Anschläge neu anlernen
fact-photocurrent = Fotostrom
fact-photocurrent-at = Fotostrom gilt bei
fact-photocurrent-tolerance = Toleranz des Fotostroms
fact-dark-current = Dunkelstrom, max
fact-load-resistor = Lastwiderstand
fact-least-span = Abgedeckt zu hell, mindestens
fact-line-low-pressure = Unteres Ende, Druck
fact-line-low-ratio = Unteres Ende, V/Vref
fact-line-high-pressure = Oberes Ende, Druck
fact-line-high-ratio = Oberes Ende, V/Vref
fact-span-accuracy = Genauigkeit, Spanne
fact-clamp = Enden des Ausgangs
fact-wire = Leitung des Pins
fact-latch = Verriegelung des Steckers
fact-face = Steckbild
fact-expected = Sollwert am Pin
fact-sensors-at = Temperatur der Sensoren
fact-view = Ansicht des Steckers
fact-side = Seite des Steckers
fact-accuracy = Genauigkeit
fact-volts = Volt
fact-ohms = Ohm
fact-digit = Auflösung
fact-input = Messgeräteeingang
fact-control-values = Werte des Stellpunkts
fact-control-observe = Woran man den Stellpunkt sieht
fact-mode-forces = Von der Betriebsart erzwungen
fact-mode-time = Zeitgrenze der Betriebsart
fact-panel-celsius = Skala in °C
fact-panel-fahrenheit = Skala in °F
fact-panel-low-mark = Unteres Ende bedeutet
fact-panel-high-mark = Oberes Ende bedeutet
fact-panel-separate = Zwei getrennte Skalen
fact-leads = Messleitungen
fact-thermocouple = Thermoelement Typ
# unchecked: Temperaturangleich for soak, the time until sensor and air have one temperature
fact-soak = Temperaturangleich
fact-decision = Entscheidungsregel
fact-guard = Schutzband, Anteil von U
fact-elevation = Höhe der Werkstatt
fact-fluid = Kältemittel
fact-superheat = Überhitzung
fact-subcooling = Unterkühlung
fact-at-rest = Gilt in Ruhe als gesättigt
fact-low-gauge = Manometer ND
fact-high-gauge = Manometer HD
fact-thermometer = Thermometer
fact-hygrometer = Hygrometer
fact-accuracy-of-full-scale = Genauigkeit, vom Endwert
fact-full-scale = Skalenendwert
fact-accuracy-of-humidity = Genauigkeit, relative Feuchte
fact-duty = Kühlung je kg trockene Luft
fact-duty-tolerance = Toleranz der Kühlung
fact-outlet-humidity = Feuchte der austretenden Luft
fact-ambient = Außenluft
fact-humidity = Feuchte der Außenluft
fact-evaporator = Verdampfer gehalten auf
fact-cabin = Innenraumluft
fact-cabin-humidity = Feuchte der Innenraumluft
fact-outside-share = Außenluftanteil, nach Masse
fact-battery = Batterie
fact-battery-nominal = Batterie, Nennwert
fact-switch-drop = Abfall im Schalter
fact-diode-drop = Abfall der Freilaufdiode
fact-frequency = Frequenz
fact-inductance = Induktivität
fact-duties = Tastverhältnisse
fact-more-current = Mehr Strom bedeutet
# unchecked: Hub for the displacement of a variable compressor (Hubvolumen), in short
fact-displacement = Hub, Punkte
fact-polarity = Geschaltet wird
fact-supply-drop = Abfall Versorgung, Grenze
fact-ground-drop = Abfall Masse, Grenze
fact-contact-drop = Abfall Kontakt, Grenze
fact-control-pin = Steuer-Pin
fact-feed-pin = Versorgungs-Pin
fact-coil-temperature = Spulentemperatur
fact-isolation = Spule zu Gehäuse
fact-motor-current = Motorstrom
fact-motor-voltage = Motorstrom gilt bei
fact-motor-exponent = Exponent des Stroms
fact-blower-control = Ansteuerung
fact-blower-resistors = Widerstände der Stufen
fact-blower-steps = Stufen, Teil der Batterie
fact-step-tolerance = Toleranz einer Stufe, Teil der Batterie
fact-bypass-drop = Abfall des Umgehungsrelais
fact-blower-wiring = Leitungen, hin und zurück
fact-wire-size = Leitungsquerschnitt
fact-wire-class = Leiterklasse
fact-wire-length = Länge
fact-wire-conductors = Leiter in Reihe
fact-wire-current = Strom
fact-wire-temperature = Leitungstemperatur
fact-drop-limit = Abfall, Grenze
fact-request-line = Anforderungsleitung
fact-hold = Haltezeit
fact-reads-absent = Messwert ohne Anforderung
fact-reads-waiting = Messwert beim Warten
fact-reads-granted = Messwert bei Freigabe
fact-threshold = Ansprechschwelle
fact-release = Rückfallschwelle
fact-delay = Verzögerung
fact-release-delay = Rückfallverzögerung
fact-is-low-side = masseseitig
fact-is-high-side = plusseitig
fact-is-more-displacement = mehr Hub
fact-is-less-displacement = weniger Hub
fact-is-transistor = Transistor
fact-is-resistor-pack = Widerstände

## What every document says

doc-sensor-card = Sensorkarte
# unchecked: Aushang for a card that hangs on the wall of the bay
doc-wall-card = Aushang
doc-actuator-card = Stellmotorkarte
# unchecked: Endstufenkarte for blowers, valves and clutches with what drives them
doc-driver-card = Endstufenkarte
doc-test-sheet = Prüfblatt
doc-revision-none = ENTWURF
doc-applicability = { $system }: { $vehicles }
doc-no-source = ohne Quelle
doc-not-given = KEINE ANGABE
doc-quantity-to = bis
doc-quantity-digits = Digits
doc-units = Ω, V DC, °C; °F = 1,8 × °C + 32
doc-units-metric = Ω, V DC, °C
doc-units-us = Ω, V DC, °F
doc-printed = gedruckt { $date }
doc-issued = ausgegeben { $date } von { $by }
doc-changed = Geändert seit { $revision }, markiert ▶▌: { $cells ->
    [one] ein Wert
   *[other] { $cells } Werte
}.
doc-changed-short = ▶▌ geändert seit { $revision }: { $cells }
doc-changed-none = Neu ausgegeben seit { $revision }, kein Wert geändert.
doc-changed-unknown = Neu ausgegeben seit { $revision }; was sich änderte, ist nicht bekannt: vor Gebrauch vergleichen.
doc-changed-title = Geändert seit { $revision }

## Einzugsliste

# unchecked: the trade’s word for a list of copies to take back
doc-pull-list = Einzugsliste
pulled-title = Abhängen und vernichten
pulled-total = { $copies ->
    [one] ein Exemplar
   *[other] { $copies } Exemplare
} an { $places ->
    [one] einem Ort
   *[other] { $places } Orten
}
pulled-intro = Jedes Exemplar abhängen, die neue Revision an seine Stelle hängen und das alte vernichten: durch den Code schneiden. Sofort abhaken. Was nicht gefunden wird, bleibt ohne Haken.
pulled-place = Ort
pulled-holder = Inhaber
pulled-paper = Papier
pulled-revision = Revision
pulled-because = Wegen
pulled-taken-down = abgehängt
pulled-destroyed = vernichtet
pulled-not-recorded = nicht verzeichnet
pulled-withdrawn = { $revision }, zurückgezogen
pulled-more = und { $values ->
    [one] ein weiterer Wert
   *[other] { $values } weitere Werte
}

## Sensor card

card-direction-pull-up = wärmer → weniger Ω → weniger V
card-direction-pull-down = wärmer → weniger Ω → mehr V
card-direction-ohms = wärmer → weniger Ω
card-direction-rising-pull-up = wärmer → mehr Ω → mehr V
card-direction-rising-pull-down = wärmer → mehr Ω → weniger V
card-direction-rising-ohms = wärmer → mehr Ω
card-connector = { $id } · { $title }
card-pin-signal = Signal
card-pin-return = Sensormasse
card-pin-ground = Masse
card-pin-reference = Referenz
card-pin-motor-plus = Motor +
card-pin-motor-minus = Motor −
card-pin-contact = Kontakt
card-pin-common = gemeinsam
card-pin-control = Steuerung
card-pin-feed = Versorgung
card-pin-contact-in = Kontakt ein
card-pin-contact-out = Kontakt aus
card-view-mating-face = Steckseite
card-view-wire-entry = Leitungsseite
card-view-not-given = Ansicht: KEINE ANGABE
card-side-harness = Kabelstrang
card-side-component = Bauteil
card-side-not-given = Seite: KEINE ANGABE
card-min = min
card-nominal = nenn
card-max = max
card-nominal-value = Nennwert { $value }
card-ground = Masse: KEINE ANGABE
card-note-window = Worst Case, nach innen gerundet.
card-note-switched = Zweiter Widerstand aus.
card-note-ohms = Ω: Zündung aus, an den Pins des Sensors.
card-note-volts = V: Zündung ein, gesteckt, { $pins }
card-note-ohm-window = Worst Case in Ω, nach innen gerundet.
card-note-beyond = –: nicht in der Tabelle.
card-note-beyond-class = –: außerhalb der Klasse.
card-note-no-tolerance = Grenzwerte: KEINE ANGABE (ohne Toleranz).
card-note-no-circuit = Volt: KEINE ANGABE (ohne Schaltung).
card-note-no-volt-limits = Grenzwerte in V: KEINE ANGABE (Toleranz von Schaltung oder Messgerät).
card-note-meter = (Messgerät { $input }).
card-note-no-meter = (ohne Messgerät).
card-plot-resistance = Widerstand
card-plot-voltage = Spannung
card-alt-switched = Das Steuergerät kann { $value } zu diesem Widerstand schalten.
card-alt-reader = Ein weiteres Steuergerät liest dieselbe Leitung über { $value }.
card-alt-offset = Die Sensormasse liegt { $value } über der Masse des Steuergeräts.
card-faults = Was Fehler anzeigen
card-fault = Fehler
card-fault-believed = → { $unit }
card-note-faults-where = Ω: SG abgezogen, Zündung aus. V: gesteckt, Zündung ein. → { $unit }: was das SG (Steuergerät) dann glaubt; – außerhalb dessen, was es für einen Sensor hält.
card-note-faults-brackets = In Klammern: mit diesem Fehler kann ein Teil noch im Gutbereich liegen.
card-note-faults-unknown = Grenzwerte: KEINE ANGABE; was sich von gut unterscheidet, ist nicht bekannt.
card-note-faults-more = Jeder Fehler bei jeder Temperatur: bayleaf faults { $id }.
card-fault-open = Sensor offen
card-fault-open-wire = Leitung offen
card-fault-short = Sensor kurz
card-fault-to-ground = Signal nach Masse
card-fault-to-reference = Signal nach Referenz
card-fault-to-battery = Signal nach Plus
card-fault-series = { $size } in der Leitung
card-fault-leak = { $size } Nebenschluss
card-fault-leak-to-battery = { $size } nach Plus
card-fault-lifted-return = Sensormasse +{ $size }
card-fault-resistance = Sensor-Ω { $size }
card-fault-slope = Steigung { $size }
card-fault-resistor = SG-Ω { $size }
card-fault-mated = Ω, SG noch gesteckt
card-fault-part = Teil von { $part }
card-signature = Wie falsch das Steuergerät liegt, je Temperatur
card-signature-note = Kalt und heiß messen: wo die Abweichung wächst, verrät den Fehler.
card-signature-ends = Hinter jedem Namen: Fehler bei { $cold } … { $hot }.
card-signature-wires = Fehler in den Leitungen
card-signature-parts = Fehler in Bauteilen
card-alt-signature = { $title }, Abweichung von { $cold } bis { $hot }: { $lines }
card-alt-plot = { $title } über der Temperatur: von { $first } bei { $cold } bis { $last } bei { $hot }.
card-alt-pull-up = Schaltung: das Steuergerät speist die Referenz von { $reference } über { $resistor } in Signal-Pin { $signal }; der Sensor liegt zwischen Signal und Sensormasse-Pin { $other }.
card-alt-pull-down = Schaltung: der Sensor liegt zwischen Referenz-Pin { $other }, { $reference }, und Signal-Pin { $signal }; { $resistor } führt im Steuergerät vom Signal nach Masse.
card-example = Rechenbeispiel bei { $temperature }
card-example-scales = { $fahrenheit } °F = ({ $fahrenheit } − 32)/1,8 °C = { $celsius } °C = { $kelvins } K
card-example-beta = R = { $rated } Ω × exp[{ $beta } K × (1/{ $kelvins } K − 1/{ $rated-kelvins } K)] = { $ohms } Ω
card-example-steinhart-hart = 1/T = a + b ln R + c (ln R)³ mit T = { $kelvins } K: R = { $ohms } Ω
card-example-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ mit L = ln(R/{ $base } Ω) und T = { $kelvins } K: R = { $ohms } Ω
card-example-platinum = R = { $rated } Ω × (1 + 3,9083·10⁻³ t − 5,775·10⁻⁷ t²) mit t = { $temperature }: R = { $ohms } Ω
card-example-platinum-cold = R = { $rated } Ω × (1 + 3,9083·10⁻³ t − 5,775·10⁻⁷ t² − 4,183·10⁻¹² (t − 100) t³) mit t = { $temperature }: R = { $ohms } Ω
card-example-silicon = R = { $rated } Ω × (1 + a x + b x²) mit x = { $temperature } − { $rated-temperature } = { $above } K: R = { $ohms } Ω
card-example-table = { $temperature } °C = { $fahrenheit } °F, auf der glatten Kennlinie durch die Zeilen, ln R über 1/T: R = { $ohms } Ω
card-example-pull-up = V = { $reference } × { $ohms } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-pull-down = V = { $reference } × { $resistor } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-node = V = ({ $currents }) / ({ $conductances }) = { $volts } V.
card-example-network = Mit den anderen Widerständen { $ohms } Ω;
card-example-meter = Mit Messgerät { $input } { $volts } V.
card-example-window = Ein gutes Teil in guter Schaltung zeigt { $window } { $unit }.
card-example-fault = { $extra } Übergangswiderstand in der Leitung ergeben { $volts } V: das sieht aus wie { $believed }.
card-hot = heiß
card-cold = kalt
card-warmer = wärmer
card-colder = kälter
card-reads-high = zu hoch
card-reads-low = zu niedrig
card-reads-near-zero = nahe 0 V
card-reads-overload = Überlauf
card-reads-zero-ohms = nahe 0 Ω
card-means-open = offen oder abgezogen: wirkt sehr { $looks }
card-means-short = Signal nach Masse kurz: wirkt sehr { $looks }
card-means-low-pull-down = Übergangswiderstand, Nebenschluss nach Masse; oder { $or }
card-means-high-pull-down = Nebenschluss nach Referenz/Plus, falsches Teil; oder { $or }
card-means-short-pull-down = Sensor oder Signal nach Referenz kurz: wirkt sehr { $looks }
card-means-open-pull-down = offen, abgezogen, keine Referenz, Signal an Masse: wirkt sehr { $looks }
card-means-short-before-series = Signal nach Masse kurzgeschlossen
card-means-sensor-short = Sensor kurz: wirkt sehr { $looks }
card-means-high = Übergangswiderstand, Nebenschluss nach Plus, falsches Teil; oder { $or }
card-means-low = Nebenschluss nach Masse, Feuchte, falsches Teil; oder { $or }
card-means-ohms-high = Übergangswiderstand in Reihe; oder echt { $or }
card-means-ohms-low = Nebenschluss, Feuchte, falsches Teil; oder echt { $or }
card-measure-temperature = Thermometer neben den Sensor halten, bis sich beide nicht mehr bewegen: das ist die Zeile.
card-measure-volts = Volt: gesteckt, Zündung ein, rückseitig messen, { $pins }. Ohm: Zündung aus, Sensor abgezogen, an seinen Pins.
card-measure-ohms = Ohm: Zündung aus, Sensor abgezogen, an seinen Pins.
card-measure-window = Zwischen zwei Zeilen liegen die Grenzwerte dazwischen: bei { $at } { $window }. Innerhalb: Sensor, Leitungen und SG sind hier gut.
card-next-unplug = Außerhalb: Zündung aus, Sensor abziehen, Zündung ein. Am Kabelstrang messen, { $pins }.
card-next-unplug-between = Außerhalb: Zündung aus, Sensor abziehen, Zündung ein. Am Kabelstrang zwischen den Pins messen, { $pins }.
card-next-good = Zeigt { $open }: nichts offen, kein Kurzschluss. Zündung aus: Ohm an den Pins des Sensors, dann am abgezogenen Stecker des SG. Einige Ω mehr sind die Leitungen, viele ein schlechter Kontakt.
card-next-good-between = Zeigt { $reference }: Referenz, Signal und Pull-down sind heil. Zündung aus: Signal-Pin nach Masse etwa { $resistor }, sonst Kurzschluss oder offen; dann Ohm des Sensors an seinen Pins.
card-next-bad = Zeigt anderes: die Referenz messen, dann beide Leitungen Ende zu Ende, SG abgezogen.
card-its-two-pins = seine zwei Pins
card-next-series = Hinweis: in der Signalleitung liegt { $series }; Ende zu Ende zeigt sie das.
card-next-ohms = Zündung aus, SG abziehen: Ohm am Kabelstrang messen, dann am Sensor. Der Unterschied sind die Leitungen.
doc-connector-card = Steckerkarte
doc-system-card = Systemkarte
doc-light-card = Lichtsensorkarte
doc-transducer-card = Drucksensorkarte
card-direction-light-pull-up = heller → weniger V
card-direction-light-load = heller → mehr V
card-direction-light = Schaltung: KEINE ANGABE
card-direction-absolute-up = mehr Druck → mehr V; Absolutdruck
card-direction-gauge-up = mehr Druck → mehr V; Überdruck
card-direction-absolute-down = mehr Druck → weniger V; Absolutdruck
card-direction-gauge-down = mehr Druck → weniger V; Überdruck
card-direction-absolute = Kennlinie: KEINE ANGABE; Absolutdruck
card-direction-gauge = Kennlinie: KEINE ANGABE; Überdruck
card-part-window = Gutbereich
card-part-readings = Was ein gutes Teil zeigt
card-part-wrong = Was Fehler anzeigen
card-part-wrong-note = Geglaubt: vom SG. V: Nennwert, Signal gegen Sensormasse am SG, gesteckt, Zündung ein. –: nicht bekannt, oder dort kein Fehler.
card-part-fault = Fehler
card-part-unknown = Was diese zeigen, sagen die Spezifikationen nicht: { $faults }.
card-part-believes = glaubt { $unit }
card-part-told = sichtbar in V
card-light-dark = dunkel
card-light-covered = mit dunklem Tuch abgedeckt
card-light-sun = volle Sonne
card-light-span = dunkel bis hell
card-light-span-of = siehe Anmerkung unten
card-alt-light-pull-up = Schaltung: das Steuergerät speist die Referenz von { $reference } über { $resistor } in den Signal-Pin; die Fotodiode liegt zwischen Signal und Sensormasse.
card-alt-light-load = Schaltung: die Fotodiode liegt zwischen der Referenz von { $reference } und dem Signal-Pin; { $resistor } führt im Steuergerät vom Signal nach Masse.
card-alt-transducer = Schaltung: das Steuergerät speist den Drucksensor mit der Referenz von { $reference }; der Drucksensor gibt einen Teil davon auf dem Signal-Pin zurück.
card-next-light-span = Mit dunklem Tuch abdecken, dann mit Sonne oder Glühlampe beleuchten: Änderung { $span } oder mehr.
card-next-light = Mit dunklem Tuch abdecken, dann mit Sonne oder Glühlampe beleuchten: die Spannung muss sich ändern.
card-next-light-pull-up = Keine Änderung: Zündung aus, Sensor abziehen, Zündung ein. Referenz am Stecker des Kabelstrangs: Sensor oder Stecker schlecht. 0 V: Signalleitung kurz oder offen.
card-next-light-load = Keine Änderung: zuerst die Referenz am Stecker des Sensors messen. Referenz da, bei Licht 0 V: Sensor, Stecker oder Signalleitung; Spannung im Dunkeln: Kurzschluss Signal nach Referenz.
card-next-wires = Dann die Leitungen Ende zu Ende, Zündung aus, beide Stecker ab: wenige Ohm; kein Schluss nach Masse oder untereinander.
card-next-transducer-reference = Zuerst Referenz gegen Sensormasse am Stecker des Drucksensors: ohne sie lohnt keine andere Messung.
card-next-transducer-rest = Zündung ein, Motor aus, in Ruhe, bis alles eine Temperatur hat: mit dem Sättigungsdruck der Kältemittel- und Luftkarte vergleichen. Das braucht kein Manometer.
card-next-transducer-wires = Außerhalb, Referenz gut: Leitungen Ende zu Ende, Zündung aus, beide Stecker ab. Leitungen gut: der Drucksensor; ihn tauschen nur Sachkundige.
card-system-title = { $system }: Eingänge, Steuergerät, Ausgänge
card-system-no-pins = Pins am Steuergerät: KEINE ANGABE
card-system-pin = { $pin } { $role }
card-system-plug = Stecker { $plug }
card-system-note-lines = Pfeile: wohin Messwert oder Leistung geht; zwei Spitzen: ein Ausgang mit Rückmeldung. Gemeinsame Pins stehen bei allem, was daran hängt.
card-system-note-cards = Jeder Kasten nennt die Karte, die ihn prüft; „keine Karte“: eine Lücke im Satz.
card-look-view = Ansicht
card-look-side = Seite
card-look-latch = Riegel
card-look-keys = Nasen
card-view-mating-face-long = STECKSEITE: Blick in die Seite, die gesteckt wird
card-view-wire-entry-long = LEITUNGSSEITE: Blick dorthin, wo die Leitungen hineingehen
card-side-harness-long = KABELSTRANG: an den Leitungen
card-side-component-long = BAUTEIL: am Bauteil selbst
card-latch-of-view = { $latch } (in der Ansicht { $view })
card-mirror = In der Ansicht { $other } sind links und rechts vertauscht.
card-mirrored = SPIEGELBILD der Ansicht { $other } der Spezifikation: links und rechts sind vertauscht.
card-edge-top = oben
card-edge-bottom = unten
card-edge-left = links
card-edge-right = rechts
card-at-edge = { $edge }
card-at-corner = { $edge }, Ende { $end }
card-alt-face = Steckbild von Stecker { $id }, { $view }. { $rows }
card-alt-face-row = Reihe { $row } von links: { $marks }.
card-state-off = Zündung aus
card-state-on = Zündung ein
card-state-unmated = abgezogen
card-state-running = Motor läuft
card-minus-probe = − hier anlegen
card-in-the-dark = { $volts } V dunkel
card-at-most = ≤ { $volts } V
card-tested-by = Karte { $card }
card-tested-only-by = s. Karte { $card }
card-tested-by-none = keine Karte
card-shares = { $title } ({ $card })
card-shared = { $count } Teile daran: { $things }
card-note-to-ground = V: DC, gegen Sensormasse oder Masse desselben SG. Motor läuft: Verbraucher ein.
card-note-sensors-at = Sensoren: Gutbereich im Worst Case, jeder Sensor bei { $at }.
card-note-sensors-not-given = Sensoren: Temperatur, also auch Gutbereich: KEINE ANGABE.
card-note-sensors-beyond = Ein Sensor, der bei dieser Temperatur nicht arbeitet, hat keinen.
card-note-unmated-unit = Abgezogen: Zündung aus, SG abgezogen; Ohm gegen Sensormasse.
card-note-unmated-plug = Abgezogen: Sensor abgezogen, dann Zündung ein; Volt am Kabelstrang.
card-note-unmated-part = Abgezogen: Zündung aus, abgezogen; Ohm an den Pins des Sensors.
card-note-meter-on = Volt mit Messgerät { $input }.
card-note-meter-none = Volt ohne Last des Messgeräts.
card-note-computed = Quellen berechneter Werte: auf der genannten Karte.
card-see-card = siehe Karte
card-note-states-blank = –: nicht bekannt.
card-act-more-volts = mehr Volt → mehr % → { $high }
card-act-volts-from = mehr Volt → von { $first } nach { $last }
card-act-order = in Fahrtrichtung: { $first } → { $last }
card-act-end-to-end = Ende zu Ende
card-act-free = Motor, Leerlauf
card-act-held = Motor, blockiert
card-act-closed = Kontakt zu
card-act-of-reference = { $parts } % der Referenz
card-act-travel = Rückmeldung über dem Weg
card-act-positions = Messwerte je Stellung
card-act-codes = Kontakte je Stellung
card-act-volts = V: Zündung ein, gesteckt, { $pins }, ohne Messgerät. Worst Case, nach innen gerundet.
card-act-bent = Die Last des SG krümmt die Kennlinie zwischen den Anschlägen: nicht linear interpolieren.
card-act-ladder = Kontakte: 1 geschlossen, der erste von links liegt dem Pin am nächsten.
card-act-contacts = ● zu, ○ offen. Ein Kontakt ist zu oder offen, nichts dazwischen.
card-act-illegal = ✗ keine Stellung
card-act-illegal-count = Außerdem gehören { $count } Codes zu keiner Stellung.
card-act-position = Stellung
card-act-what = was
card-act-good = gut
card-act-else = sonst
card-act-at-most = ≤ { $value }
card-act-motion = Wie sich bewegt: { $moves } { $mark }
card-act-motion-unknown = Wie er sich bewegt
card-act-time = Ende zu Ende
card-act-time-else = langsam: schwergängig, Versorgung. Nie: klemmt
card-act-current = Motor, Leerlauf
card-act-current-else = keiner: Leitung, Motor, Endstufe. Mehr: Klappe klemmt
card-act-stall = Motor, blockiert
card-act-stall-else = am Anschlag, kurz. Mitten im Weg: klemmt
card-act-fed = Motor fremd gespeist
card-act-fed-yes = abgesichert, abgezogen
card-act-fed-no = NIE
card-act-fed-unknown = NIE: KEINE ANGABE
card-act-fed-else = läuft hin und her, sonst Motor schlecht
card-act-fed-never = Batteriespannung zerstört die Elektronik darin
card-act-step = Größter Sprung
card-act-step-else = größer: Bahn verschlissen, Aussetzer
card-act-dead-band = Totband
card-act-dead-band-else = größer: Spiel im Getriebe, Schlupf
card-act-hysteresis = Hin gegen zurück
card-act-hysteresis-else = größer: Spiel in Getriebe, Gestänge
card-act-track = Schleifbahn, ganz
card-act-track-else = abgezogen. OL: Bahn offen. Sonst: falsches Teil
card-act-contact = Kontakt zu
card-act-contact-else = abgezogen. Mehr: schmutzig, verschlissen
card-act-learning = Messwert erst beurteilen, wenn er ruhig steht.
card-act-next-both = Beides außerhalb: zuerst Referenz ({ $reference }) und Sensormasse ({ $return }) am Steuergerät; an beiden hängen andere Teile mit.
card-act-next-one = Ein Anschlag außerhalb: ein Hindernis (davor), oder Welle oder Anschlag verrutscht (dahinter). Klappe und Gestänge von Hand prüfen.
card-act-next-sweep = Beide Anschläge gut: min und max der Spannung bei langsamer Fahrt hin und zurück aufzeichnen. Ein Aussetzer ist eine verschlissene Bahn.
card-act-next-ladder = In jeder Stellung die Referenz: Signal offen, oder kein Kontakt schließt. In jeder Stellung 0 V: Kurzschluss Signal nach Masse.
card-act-next-between = Zwischen zwei Gutbereichen: an beide Enden fahren. Überall dazwischen: schmutziger Kontakt (siehe Tabelle) oder weiterer Widerstand in der Leitung.
card-act-next-dirty = Ohm am eigenen Stecker, abgezogen: jede Stellung zeigt die Widerstände bis zu ihrem Kontakt, dazu höchstens den geschlossenen Kontakt.
card-act-next-code = Ein Code, den keine Stellung hat: Zündung aus, abgezogen, Ohm jedes Kontakts gegen den gemeinsamen Pin, an beiden Enden. Zu höchstens { $closed }, offen OL.
card-act-next-common = In jeder Stellung alle Kontakte offen: der gemeinsame Pin ({ $common }) oder sein Weg zur Masse.
card-act-next-silent = Steht still: Volt am Stecker des Motors, während das Bedienteil ihn hin und her fährt.
card-act-next-volts = Volt da, keine Bewegung: die Klappe von Hand, dann der Motor. Keine Volt: Leitungen Ende zu Ende, dann die Endstufe.
card-act-believes = SG %
card-act-fault = Fehler
card-act-by = sichtbar
card-act-wrong = Wenn etwas nicht stimmt
card-act-wrong-note = Worst Case; SG %: geglaubte Stellung. Sichtbar in: V, oder Ω zwischen Leitungen, abgezogen.
card-act-wrong-note-windows = Worst Case. Sichtbar in: V, oder Ω zwischen Leitungen, abgezogen.
card-instrument = Mit { $meter } [{ $mark }].
card-no-instrument = Sichtbar am Gutbereich allein: kein Messgerät genannt.
card-act-unseen-faults = Nicht sichtbar: { $faults }.
card-act-stuck-note = Wofür jede Stellung gehalten wird: – ist keine. Nicht genannte werden richtig gelesen.
card-act-unseen = alle richtig
card-act-contact-name = Kontakt
card-act-never-closes = schließt nie
card-act-never-opens = öffnet nie
card-act-dirty-ohms = ab Ω
card-act-dirty-into = gelesen als
card-act-dirty-note = Widerstand in einem geschlossenen Kontakt, ab dem die Stellung als die nächste gilt. Kontakt 0 liegt dem Pin am nächsten.
card-act-as-above = wie in der Tabelle
card-act-input = Eingang
card-act-driver = Endstufe
card-act-alt-potentiometer = Schaltung: Referenz, Signal und Sensormasse führen vom Steuergerät zu einem Potentiometer im Stellmotor, zwei weitere Leitungen zu seinem Motor: { $pins }.
card-act-alt-contacts = Schaltung: von jedem Kontakt eine Leitung zu einem Eingang des Steuergeräts, die Kontakte führen auf eine gemeinsame Leitung, zwei weitere Leitungen zum Motor: { $pins }.
card-act-alt-ladder = Schaltung: eine Signalleitung mit Pull-up im Steuergerät führt zu Widerständen und Kontakten im Stellmotor, eine Sensormasse zurück, zwei weitere Leitungen zum Motor: { $pins }.
card-act-alt-motor = Schaltung: zwei Leitungen führen vom Steuergerät zum Motor: { $pins }.
card-drv-low-side = masseseitig: das Steuergerät schaltet die Masse des Verbrauchers
card-drv-high-side = plusseitig: das Steuergerät schaltet das Plus des Verbrauchers
card-drv-no-side = geschaltete Seite: KEINE ANGABE
card-drv-always-on = dauernd ein { $current }
card-drv-step = Stufe { $step }
card-drv-relay = höchste, über Relais
card-drv-of-battery = { $volts } von { $battery }
card-drv-duties = Strom je Tastverhältnis
card-drv-coil = Spule je Temperatur
card-drv-steps = Stufen: Volt am Motor, nicht gegen Masse
card-drv-parts = % der Batterie
card-drv-motor = V Motor bei
card-drv-ground = V Masse
card-drv-at-nominal-low = A, W (Wärme des Vorschaltteils) und V Masse (geschaltete Klemme gegen Masse) bei { $battery }; die andere Klemme zeigt gegen Masse immer die Batterie.
card-drv-at-nominal-high = A, W (Wärme des Vorschaltteils) und V Masse (geschaltete Klemme gegen Masse) bei { $battery }.
card-drv-at-nominal = A und W (Wärme des Vorschaltteils) bei { $battery }.
card-drv-supply = Versorgung
card-drv-supply-from = Batterie + bis { $pin }
card-drv-supply-of-switch = Batterie + bis Plus des Schalters
card-drv-return-of-switch = Masse des Schalters bis Batterie −
card-drv-switch-row = Schalter zu
card-drv-switch-low-from = { $pin } bis Masse des Schalters
card-drv-switch-high-from = Plus des Schalters bis { $pin }
card-drv-return = Masse
card-drv-return-from = { $pin } bis Batterie −
card-drv-contact = Kontakt
card-drv-contact-from = { $in } bis { $out }, Relais angezogen
card-drv-its-plug = sein Stecker
card-drv-wire = Leitung allein
card-drv-wire-loses = { $nominal } V; ≤ { $greatest } V
card-drv-wire-loses-nominal = { $nominal } V
card-drv-wire-of = { $title }: { $size }, { $length }, { $current }
card-drv-drop = Abfall
card-drv-between = zwischen
card-drv-most = höchstens
card-drv-drops = Wo Spannung abfällt
card-drv-drops-note = Gesteckt, ganz ein, Laststrom fließt; ohne ihn kein Abfall.
card-drv-wire-note = Leitung allein: am heißesten.
card-drv-no-waveform = Keine Skizze: Batterie, Seite, Abfälle, Frequenz: KEINE ANGABE.
card-drv-at-pin = Steuer-Pin gegen Batterie −
card-drv-current = Strom der Spule
card-drv-shape = { $hertz } Hz: { $period } von Flanke zu Flanke. Gezeichnet: { $percent } %, { $time } ein, Batterie { $battery }, Spule nominell.
card-drv-levels = Ein { $on }, aus { $off }, solange der Strom fließt.
card-drv-flows-on = Induktivität: KEINE ANGABE; gezeichnet, als höre der Strom nie auf.
card-drv-alt-volts = Volt am Steuer-Pin über zwei Perioden von { $hertz } Hz: { $on } für { $percent } % jeder Periode, dann { $off }.
card-drv-alt-amperes = Strom über dieselben zwei Perioden: er steigt ein auf { $most } und fällt aus auf { $least }.
card-drv-battery = Batterie
card-drv-only-high = nur höchste
card-drv-only-high-means = Vorschaltteil oder Ansteuerung offen
card-drv-no-high = höchste fehlt
card-drv-no-high-means = Umgehungsrelais, Kontakt oder Spule
card-drv-dead = keine Stufe
card-drv-dead-means = Versorgung, Sicherung, Masse, Motor
card-drv-runs-on = aus, läuft
card-drv-runs-on-means = Vorschaltteil kurz oder Relais verschweißt: leert die Batterie
card-drv-all-low = alle tief
card-drv-all-low-means = Abfall in Plus oder Masse; Motor schwergängig
card-drv-low-off = aus { $battery }
card-drv-low-off-means = Plus, Spule und Leitung sind heil
card-drv-low-dead = aus 0 V
card-drv-low-dead-means = Plus fehlt, Spule oder Leitung offen, oder Kurzschluss Steuerleitung nach Masse
card-drv-low-on = ein nahe 0 V
card-drv-low-on-means = Schalter gut; fehlt Strom: Spule offen
card-drv-low-never = ein { $battery }
card-drv-low-never-means = Befehl fehlt, Schalter, Leitung offen
card-drv-high-off = aus 0 V
card-drv-high-off-means = so soll es sein
card-drv-high-stuck = aus { $battery }
card-drv-high-stuck-means = Schalter kurz, Leitung an Plus
card-drv-high-on = ein { $battery }
card-drv-high-on-means = Schalter, Leitung gut; Strom fehlt: Spule, Masse
card-drv-high-never = ein 0 V
card-drv-high-never-means = kein Befehl, Leitung offen oder an Masse: Last abziehen, neu messen
card-drv-meter = V Messgerät
card-drv-meter-note = V Messgerät: mittelndes Voltmeter über der Spule; Tastverhältnis × Batterie nur bei sauberem Rechteck.
card-drv-paused = Bei { $duties } setzt der Strom zwischen Pulsen aus.
card-drv-coil-at = Spule bei
card-drv-ohms-open = Ω: OL
card-drv-ohms-open-means = Wicklung oder Leitung offen
card-drv-ohms-few = Ω: zu wenig
card-drv-ohms-few-means = Windungsschluss, anderes Teil oder kälter als gedacht
card-drv-ohms-many = Ω: zu viel
card-drv-ohms-many-means = schlechter Kontakt oder heißer als gedacht
card-drv-unknown = KEINE ANGABE
card-drv-unknown-means = ohne die Seite sagt kein Messwert gegen Masse etwas: über dem Verbraucher messen
card-drv-next-across = Batterie jetzt, dann Volt am Motor in jeder Stufe: ihr Verhältnis zählt, bei jeder Batteriespannung.
card-drv-next-drops = Eine Stufe zu tief: die Abfälle der Tabelle unter Strom, nacheinander.
card-drv-load = Last
card-drv-next-coil-drops = Zu wenig Volt über der eingeschalteten Spule: die Abfälle der Tabelle nacheinander, bei fließendem Strom.
card-drv-next-fuse = Gar keine Stufe: beide Seiten der Sicherung, dann die Versorgung am Stecker, eingeschaltet.
card-drv-next-ohms = Zündung aus, abgezogen, 0 V festgestellt: Ohm der Spule minus Messleitungen, Zeile ihrer Temperatur.
card-drv-next-isolation = Jeder Pin der Spule gegen Gehäuse: { $least } oder mehr.
card-drv-next-current = Stromzange oder Amperemeter gegen das befohlene Tastverhältnis, bei { $battery } oder anteilig. Kein Strom: die Messwerte oben.
card-drv-across = V Last
card-drv-wrong-note = Spule bei { $at }. Ω: abgezogen, durch die Leitungen; V: über ihr, gesteckt, ganz ein.
card-drv-transistor = Transistor
card-drv-pack = Widerstände
card-drv-switch = Schalter
card-drv-alt-low = Schaltung: Batterie plus speist { $load }; der Steuer-Pin { $control } führt auf einen Schalter nach Masse. Spannungsabfälle werden gemessen von Batterie plus zur Versorgung, über dem geschlossenen Schalter und von der Masse des Schalters zu Batterie minus.
card-drv-alt-high = Schaltung: ein Schalter von Batterie plus speist den Steuer-Pin { $control } von { $load }; der andere Pin führt nach Masse. Spannungsabfälle werden gemessen von Batterie plus zur Versorgung des Schalters, über dem geschlossenen Schalter und vom Masse-Pin zu Batterie minus.
card-drv-alt-no-side = Schaltung: { $load } zwischen Batterie plus und Masse; auf welcher Seite der Schalter sitzt, ist nicht angegeben.
card-points = Tabelle wie angegeben, in { $unit }

## Mode card, request card, refrigerant and air card

doc-mode-card = Betriebsartkarte
doc-request-card = Anforderungskarte
doc-air-card = Kältemittel- und Luftkarte
card-modes-title = { $panel }: Betriebsarten
card-modes-how-choose = Eine Betriebsart wählen, die genannte Zeit warten, jeden eingerahmten Stellpunkt ansehen: wie gedruckt abhaken, sonst ankreuzen.
card-modes-how-fault = Ein Kreuz: der Stellpunkt hängt, oder der Befehl erreicht ihn nicht; der Wert, den er in jeder Betriebsart zeigt, ist der, auf dem er hängt.
card-forced = erzwungen
card-forced-means = gestellt: prüfen
card-free-means = SG entscheidet: nicht prüfen
card-dont-care-means = ohne Wirkung: nicht prüfen
card-mode-within = in { $time } s
card-time-not-given = Zeit: KEINE ANGABE
card-run-proven = Diese { $count } von { $all } Betriebsarten, in dieser Folge, erzwingen jeden Wert, den eine erzwingt; kein kleinerer Satz tut das.
card-run-not-proven = Diese { $count } von { $all } Betriebsarten, in dieser Folge, erzwingen jeden Wert, den eine erzwingt; jeder Satz braucht { $least } oder mehr.
card-stuck-at = { $control } hängt auf { $values }
card-reveals-again = was frühere Schritte zeigten, mit anderem Wert
card-box-vehicle = Fahrzeug
card-box-date = Datum
card-box-name = Name
paper-run = Kürzester Durchgang, der alles aufdeckt
paper-mode = Betriebsart
paper-mode-choose = Wählen
paper-step = Nr.
paper-reveals = Ein Kreuz hier zeigt zum ersten Mal
paper-seen = Woran man sie sieht:
card-stage = Stand der Anforderung
card-stage-reads = Was man misst
card-stage-absent = Nicht angefordert
card-stage-waiting = Angefordert, noch nicht frei: gesperrt, oder die Haltezeit läuft
card-stage-granted = Freigegeben
card-condition-number = Nr.
card-condition = Bedingung
card-condition-effect = Wirkung
card-condition-watch = Überwacht von, gemessen an
card-condition-set = Spricht an
card-condition-release = Fällt ab
card-condition-at = bei
card-condition-volts = V
card-condition-after = nach
card-condition-source = Quelle
card-permits = gibt frei
card-inhibits = sperrt
card-request-how = In dieser Reihenfolge geprüft. Eine Bedingung spricht an, wenn ihr Wert so lange da ist, wie unter „nach“ steht; von da an bleibt sie, bis der Wert dort ist, wo sie abfällt. Eine, die freigibt, muss angesprochen haben; eine, die sperrt, darf nicht.
card-request-volts = Volt sind, was ein gutes Teil in guter Schaltung dort am Pin zeigt: ein Messwert auf dieser Seite des Gutbereichs erklärt, warum die Anforderung gesperrt ist.
card-request-wait = Vor dem Urteil jede Verzögerung abwarten: eine nur verzögerte Anforderung ist kein Fehler.
card-request-states = Zustände in diesem Szenario
card-timeline-axis = Zeit, s
card-line-bar = Bedingung an; Anforderung frei
card-line-frame = Bedingung fällt noch ab; Anforderung gesperrt
card-line-dots = Verzögerung oder Haltezeit läuft
card-line-thin = Bedingung ab; keine Anforderung
card-alt-timeline = Zeitverlauf der Anforderung: { $states }
paper-conditions = Bedingungen
paper-timeline = Zeitverlauf
card-air-title = { $system }: Kältemittel und Luft
card-saturation = Sättigung
card-saturation-how = Saug- und Flüssigkeitsleitung: zwischen diesen Temperaturen sind Überhitzung und Unterkühlung wie angegeben, beim Druck der Zeile.
card-from = von
card-to = bis
card-suction-line = Saugleitung { $unit }
card-liquid-line = Flüssigk.ltg. { $unit }
card-absolute = abs.
card-gauge = Überdr.
card-critical = Kritischer Punkt von { $fluid }: { $critical }; darüber keine Sättigung, der Druck sagt keine Temperatur.
card-box-charge = Füllmenge, vom Schild im Motorraum
card-box-oil = Öl, vom selben Schild
card-box-oil-charge = Ölmenge, vom selben Schild
card-vent-how = Zellen: von der kleinsten zur größten guten Temperatur in { $unit } an den Ausströmern; * die kleinste bestimmt die Verdampferregelung. „Regelung“: die Regelung hält den Verdampfer, die Ausströmer folgen ihm.
card-vent-position = Ansaugung: { $position }
card-vent-held = Regelung
card-any-weather = jedes Wetter
card-outside-humidity = Außenluft, relative Feuchte
card-outside-air = Außen
card-box-ambient = Außenluft
card-box-humidity = Feuchte
card-box-outlet = Ausströmer
card-box-suction = Manometer ND
card-box-discharge = Manometer HD
rule-card-nothing = System `{ $system }` hat für eine Karte dieser Art nichts zu drucken
rule-card-no-modes-help = seine Tabellen `[mode.…]` schreiben, jede mit jedem `[control.…]`
rule-card-no-air-help = sein `[refrigerant.…]` oder sein `[vent.…]` schreiben
label-card-system = aus diesem System

## Test sheet

sheet-title = { $title } · { $vehicle }
sheet-vehicle = Fahrzeug
sheet-system = System
sheet-registration = Kennzeichen
sheet-chassis = Fahrgestellnr.
sheet-built = Baujahr
sheet-box-technician = Geprüft von
sheet-box-date = Datum, Zeit
sheet-box-odometer = km-Stand
sheet-box-bay = Hallentemperatur
sheet-box-humidity = Feuchte
sheet-box-soak = Temperiert seit
sheet-box-battery-rest = Batterie, in Ruhe
sheet-box-battery-running = Batterie, Motor läuft
sheet-box-reference = Referenz, gemessen
sheet-box-leads = Messleitungen kurz
sheet-box-complaint = Beanstandung
sheet-sign-name = Name
sheet-sign-signature = Unterschrift
sheet-sign-date = Datum, Zeit
sheet-sign-checked = Gegengeprüft
sheet-expect = Soll
sheet-expect-at = Soll bei { $temperature }
sheet-no-bay = Keine Hallentemperatur: den Gutbereich aus der Streifentabelle der Karte lesen, die in jeder Zeile steht.
sheet-legend = Fett: i. O., ein Teil in seinen Daten. Service: außerhalb von fett, aber zu wenig für eine Beanstandung.
sheet-legend-guarded = ±: so nah am Grenzwert mit diesen Messgeräten unentschieden (U, k = 2); „nie i. O.“: hier unbrauchbar, bessere nehmen.
sheet-legend-guarded-part = ±: so nah am Grenzwert mit diesen Messgeräten unentschieden ({ $part } von U, k = 2); „nie i. O.“: hier unbrauchbar, bessere nehmen.
sheet-legend-simple = ±: Unsicherheit mit diesen Messgeräten (U, k = 2); hier entscheiden die Grenzwerte allein.
sheet-legend-no-rule = ±: Unsicherheit mit diesen Messgeräten (U, k = 2); Regel so nah am Grenzwert: KEINE ANGABE.
sheet-left-out = Nicht in ±, weil KEINE ANGABE: { $what }.
sheet-bay = Gilt, solange Sensor und Messspitze diese Temperatur haben; sonst die Streifentabelle der Karte lesen.
sheet-all-mated = alle Stecker gesteckt
sheet-sensor-unmated = Sensor abgezogen
sheet-unit-unmated = Steuergerät abgezogen, Sensor gesteckt
sheet-see-card = Karte { $card }
sheet-no-card = ohne Karte im Satz
sheet-outside = entfällt: außerhalb { $low } bis { $high }
sheet-service = Service { $window } { $unit }
sheet-harness-half = Kabelstrang, Pins nach Bezeichnung
sheet-component-half = Bauteil, Pins nach Bezeichnung
sheet-record-only = nur notieren; Nennwert { $value }
sheet-unplugged = abgezogen { $window }
sheet-doubt-all = ± { $doubt } { $unit }: nie i. O.
sheet-doubt-only = ± { $doubt } { $unit } unsicher
sheet-doubt = ± { $doubt } { $unit } unentschieden
sheet-instrument-value = { $what } { $value }
sheet-no-bay-coil = siehe Endstufenkarte: der Gutbereich wandert mit der Spulentemperatur
sheet-of-battery = Batterie, jetzt
sheet-of-reference = Referenz, jetzt
sheet-ratio = A ÷ B × 100, B: { $whole }
sheet-reading-here = hier
sheet-field-a = A: { $what }
sheet-field-b = B: { $what }
sheet-difference = A − B, ohne Vorzeichen
sheet-difference-signed = A − B, mit Vorzeichen
sheet-sweep-start = Anfang
sheet-sweep-end = Ende
sheet-sweep-step = größter Sprung
sheet-sweep-rises = steigt durchgehend, kein Aussetzer
sheet-sweep-falls = fällt durchgehend, kein Aussetzer
sheet-all-steps = alle von { $first } bis { $last }
sheet-sequence = der Reihe nach
sheet-after = { $least } bis { $most } s nach { $mark }
sheet-within = in { $most } s nach { $mark }
sheet-closed = zu
sheet-open = offen
sheet-closed-at-most = zu: höchstens { $most }
sheet-closed-not-given = zu: größter Widerstand: KEINE ANGABE
sheet-reached-within = jede in { $most } s
sheet-wave = und die vier darunter
sheet-wave-period = Periode
sheet-wave-duty = auf hohem Pegel
sheet-wave-high = hoher Pegel
sheet-wave-low = tiefer Pegel
sheet-wave-alt = Zwei Perioden einer geschalteten Leitung, { $part } % jeder Periode auf hohem Pegel
sheet-key-off = Zündung aus
sheet-key-on = Zündung ein, Motor aus
sheet-engine-running = Motor läuft
sheet-mode = Betriebsart „{ $what }“
sheet-set-point = Solltemperatur { $what }
sheet-blower = Gebläse { $what }
sheet-meter-on = Messgerät auf { $what }
sheet-unit-apart = Steuergerät abgezogen
sheet-component-unmated = am Bauteil abgezogen
sheet-both-ends-unmated = beide Enden abgezogen
sheet-state = Zustand: { $what }
sheet-before = Vorher: { $what }
sheet-soaked = temperiert { $time }
sheet-wait = { $time } warten
sheet-differs = Ausnahme, { $when }: { $expect }
sheet-means = { $reads }: { $means }
sheet-only-from = entfällt: nur bei Bau ab { $month }
sheet-only-to = entfällt: nur bei Bau bis { $month }
sheet-box-key = Zündung, Motor
sheet-box-mode = Betriebsart, Gebläse
sheet-corrections = Berichtigen mit einem einfachen Strich und Namenskürzel daneben; nichts überschreiben.
sheet-surface-paper = Dokumentenecht ausfüllen.
sheet-surface-wet-erase = Laminiert: mit wasserlöslichem Stift ausfüllen; vor dem Abwischen kopieren oder fotografieren.
sheet-surface-permanent = Laminiert: mit Permanentstift ausfüllen; das Blatt bleibt beim Auftrag.
doc-report = Ergebnisbericht
report-box-job = Auftragsnr.
report-box-sheet-pages = Prüfblatt, ausgefüllte Seiten
report-complaint = Beanstandung, wie der Fahrer sie schildert
report-cause = Gefundene Ursache
report-action = Ausgeführte Arbeiten, verbaute Teile
report-open = Offene Punkte, und wer sie verfolgt
report-now = Bei { $temperature }, aus Prüfblatt { $sheet }, Code { $code }
report-now-none = Aus Prüfblatt { $sheet }, Code { $code }; Gutbereiche nach Hallentemperatur stehen auf seinen Karten
report-sign-technician = Geprüft von, Unterschrift
report-sign-checked = Gegengeprüft, Unterschrift
report-sign-received = Fahrzeug übernommen, Unterschrift
report-sign-date = Datum, Zeit
sheet-else-open = Zeigt den Wert für abgezogen: Sensor nicht gesteckt, Leitung offen.
sheet-else-other-end = Zeigt das andere Ende (0 V; die Referenz, wo abgezogen nahe 0 V ist): Kurzschluss von Sensor oder Signal.
sheet-else-ohms = Ohm: Überlauf ist offen, nahe 0 Ω kurzgeschlossen.
sheet-else-all = Alle Zeilen gleich falsch: gemeinsame Sensormasse, Masse oder Referenz; diese zuerst messen.
sheet-else-simple = Im gedruckten ± am Grenzwert: der Grenzwert entscheidet, aber ein anderes Messgerät kann drüben liegen. Unter Bemerkungen schreiben.
sheet-else-no-rule = Im gedruckten ± am Grenzwert: den Messwert notieren; wie hier entschieden wird: KEINE ANGABE.
sheet-else-undecided-any = Unentschieden: im gedruckten ± am Grenzwert. Mit besserem Messgerät wiederholen.
sheet-else-undecided = Unentschieden: im gedruckten ± am Grenzwert. Mit dem Sensor in Eiswasser wiederholen, oder mit besserem Thermometer oder Messgerät.

## Cautions

caution-danger = STOPP · GEFAHR
caution-stop = Hochvolt: { $parts }. Nur Fachkundige: freischalten, gegen Einschalten sichern, warten, Spannungsfreiheit feststellen. Nichts auf diesem Papier gilt dafür.
caution-warning = WARNUNG
caution-caution = VORSICHT
caution-notice = HINWEIS
caution-law = Örtliches Recht, Berechtigung und die Sicherheitshinweise des Fahrzeugs gehen vor. Der Kältemittelkreis bleibt geschlossen.
caution-law-open = Örtliches Recht, Berechtigung und die Sicherheitshinweise des Fahrzeugs gehen vor.
caution-law-card = Recht, Befugnis, Fahrzeughinweise gehen vor. Kältekreis bleibt zu.
caution-law-card-open = Recht, Befugnis, Fahrzeughinweise gehen vor.
caution-dash = An Leitungen von Airbag und Gurtstraffer keine Messspitze, keine Ohmmessung, kein Abziehen; orange Leitungen sind tabu.
caution-dash-card = Airbag, orange Kabel: Hände weg.
caution-moving = Abstand zu Riemen und zu Lüftern, die von selbst anlaufen.
caution-moving-card = Lüfter starten selbst.
caution-battery = Batteriegas brennt: Schutzbrille auf, keine Funken.
caution-battery-card = Batteriegas brennt: keine Funken.
caution-refrigerant-card = Den Kältemittelkreis öffnen nur Sachkundige.
caution-running = Fahrzeug mit Keilen und Bremse sichern, Abgas absaugen.
caution-running-card = Keile, Abgasabsaugung.
caution-hot = Abgas, Kühlmittel, Druckleitung und Gebläsetransistor verbrennen die Haut.
caution-hot-card = Heiße Teile.
caution-probing = Keine Prüflampe an Referenz, Sensor, Airbag, Bus; nicht einstechen.
caution-probing-card = Nie Prüflampe, nie einstechen.
caution-unplugging = Stecken, abziehen: Zündung aus.
caution-unplugging-card = Abziehen: Zündung aus.
caution-ohms = Keine Ohm unter Spannung.
caution-ohms-card = Keine Ohm unter Spannung.
caution-around = An Leitungen von Airbag und Gurtstraffer keine Messspitze, keine Ohmmessung, kein Abziehen. Orange Hochvoltleitungen sind tabu. Abstand zu Riemen, heißen Teilen und zu Lüftern, die von selbst anlaufen. Fahrzeug mit Keilen sichern, Abgas absaugen.
caution-refrigerant = Kältemittel steht unter Druck, erfriert Haut und Augen, verdrängt Luft; manches brennt, R-744 arbeitet bei sehr hohem Druck. Nur Sachkundige mit Absauggerät schließen Manometer an und öffnen einen Kreis.
caution-transducer = Der Drucksensor bleibt eingeschraubt: dahinter steht Kältemittel unter Druck. Nur an seinem Stecker messen.

## The run

run-demo = Kein --specs und kein Ordner specs/ hier: benutzt wird der eingebaute Beispielsatz; alle seine Werte sind erfunden.
run-errors = { $errors ->
    [one] 1 Fehler
   *[other] { $errors } Fehler
}, { $warnings ->
    [one] 1 Warnung
   *[other] { $warnings } Warnungen
}: nichts wurde geschrieben
run-warnings = { $warnings ->
    [one] 1 Warnung
   *[other] { $warnings } Warnungen
}
run-no-model = der Satz nennt keine Werkstatt: [shop] mit `title` und `paper` ergänzen
run-specs-changed = Spezifikationen oder Vorlagen wurden während des Druckens geändert; noch einmal drucken
run-watch-demo = es gibt nichts zu beobachten: der Vorführsatz ist im Programm eingebaut; `bayleaf new specs` beginnt einen eigenen Satz
run-cannot-watch = `{ $path }` kann nicht beobachtet werden: { $reason }
run-watch-waits = warte, bis er wieder da ist
run-watch-kept = Bilder bleiben, wie sie waren; beobachte weiter
run-watch-drawn = { $drawn } gezeichnet, { $same } wie zuvor, { $seconds } s; beobachte weiter
run-cannot-read = `{ $path }` lässt sich nicht lesen: { $reason }
run-template-exists = `{ $path }` gibt es schon und ist anders; --overwrite ersetzt es
run-templates-written = { $count } Vorlagen in `{ $path }`; damit drucken: bayleaf print --templates { $path }
run-begun = Ein Satz beginnt in `{ $path }`. Die Beispiele mit eigenen Werten überschreiben, dann: bayleaf check --specs { $path }
run-not-empty = `{ $path }` ist nicht leer; ein neuer Satz braucht einen eigenen Ordner
run-library = { $said }
run-built-in = eingebaut: { $path }
run-template-unread = eine Vorlage, die gebraucht wird, lässt sich nicht lesen
run-template-stops = hier geht der Satz nicht weiter
run-template-warns = hier warnt der Satz, und eine Warnung wird nicht hingenommen
run-template-leads = von hier aus erreicht
run-template-keeps = { $count ->
    [one] { $ids } wird deswegen nicht gedruckt
   *[other] { $count } Dokumente werden deswegen nicht gedruckt: { $ids }
}
run-template-elsewhere = mit den eingebauten Vorlagen allein wird es gedruckt: { $files } durchsehen
run-part-missing = die Vorlage kennzeichnet nichts als `{ $part }`
run-part-unknown = die Vorlage kennzeichnet `{ $part }`, wofür kein Leseabstand festgelegt ist
run-illegible = Seite { $page }: `{ $text }` ist mit { $size } pt zu klein: die Großbuchstaben sind { $height } mm hoch; aus { $distance } mm lesbar erst mit { $needed } pt (15 Bogenminuten)
run-illegible-part = Seite { $page }, { $part }: `{ $text }` ist mit { $size } pt zu klein: die Großbuchstaben sind { $height } mm hoch; aus { $distance } mm lesbar erst mit { $needed } pt (15 Bogenminuten)
run-no-templates = `{ $path }` enthält keine Vorlage (*.typ)
run-template-without-data = die Vorlage `{ $name }` erhält keine eigenen Daten
run-no-such-template = keine Vorlage heißt `{ $name }`; mit Daten gibt es: { $known }
run-no-such-template-near = keine Vorlage heißt `{ $name }`; gemeint ist vielleicht `{ $near }`?
run-strange-template = `{ $path }` ersetzt keine eingebaute Vorlage; benutzt wird sie nur, wo eine andere sie einbindet
run-cannot-write = in `{ $path }` lässt sich nicht schreiben: { $reason }
run-no-worker = ein Arbeitsprozess lässt sich nicht starten: { $reason }
run-worker-lost = ein Arbeitsprozess endete zu früh; { $missing ->
    [one] 1 Dokument wurde
   *[other] { $missing } Dokumente wurden
} nicht gedruckt
run-cannot-print = `{ $id }` wurde nicht gedruckt: { $reason }
run-cannot-print-many = { $count } Dokumente wurden nicht gedruckt ({ $ids }): { $reason }
run-no-output = die Ausgabe lässt sich nicht schreiben: { $reason }
run-more-sides = `{ $id }` hat { $pages } Seiten statt { $expected }: die Rückseite ist zu voll; seine Schritte unter `next` oder seine Quellen kürzen
run-more-failures = … und { $count } weitere
run-no-such-document = ein Dokument, Prüfblatt oder Fahrzeug `{ $id }` gibt es nicht
run-no-such-document-near = ein Dokument, Prüfblatt oder Fahrzeug `{ $id }` gibt es nicht; gemeint ist vielleicht `{ $near }`?
run-nothing-to-print = der Satz hat keine Karte und kein Prüfblatt mit Fahrzeug
run-no-such-table = nichts mit einer Tabelle heißt `{ $id }`
run-no-such-table-near = nichts mit einer Tabelle heißt `{ $id }`; gemeint ist vielleicht `{ $near }`?
run-table-reversed = die Tabelle läuft von { $from } nach { $to }, was kälter ist
run-junction-outside = eine Vergleichsstelle bei { $at } liegt außerhalb von Thermometer `{ $id }`, { $low } bis { $high }
run-table-outside = { $at } liegt außerhalb des Bereichs von `{ $id }`, { $low } bis { $high }
run-table-step = ein Schritt von { $step } ergibt keine Tabelle
run-table-no-step = die Tabelle von `{ $id }` hat keine Temperaturschritte: `--step` weglassen
run-table-no-temperatures = die Tabelle von `{ $id }` hängt nicht von der Temperatur ab: `--from` und `--to` weglassen
run-table-not-over-temperature = die Zahlen von `{ $id }` laufen nicht über die Temperatur: --from, --to und --step weglassen
run-table-no-bay = die Zahlen von `{ $id }` hängen nicht von der Hallentemperatur ab: --at weglassen
run-table-no-meter = Volt ohne die Last eines Messgeräts.
run-table-meter = Volt mit Messgerät { $input }.
run-bay-outside = { $at } liegt außerhalb des Bereichs von Sensor `{ $id }`, { $low } bis { $high }: seine Zeilen drucken ohne Gutbereich
run-progress = { $done } von { $all } Dokumenten
run-printed = { $documents ->
    [one] 1 Dokument
   *[other] { $documents } Dokumente
}{ $pages ->
    [0] { "" }
    [one] { ", " }1 Seite
   *[other] { ", " }{ $pages } Seiten
}, { $seconds } s, in { $out }; { $no-source ->
    [one] 1 Wert ohne Quelle
   *[other] { $no-source } Werte ohne Quelle
}, { $not-given ->
    [one] 1 Wert KEINE ANGABE
   *[other] { $not-given } Werte KEINE ANGABE
}
run-sheets = { $sheets ->
    [one] 1 Bogen zum Schneiden
   *[other] { $sheets } Bogen zum Schneiden
}: { $files ->
    [one] { $first }
   *[other] { $first } bis { $last }
}. Beidseitig drucken, über die { $edge } Kante wenden, auf 100 %; dann ein Lineal an den Balken von 100 mm halten.
run-long-edge = lange
run-short-edge = kurze
run-no-bar = `{ $id }`: kein weißer Rand für den Balken von 100 mm auf Seite { $pages }; das Maß an einer anderen Seite prüfen
run-no-bar-on-sheet = `{ $id }`: kein Platz für den Balken von 100 mm auf { $sides ->
    [one] 1 Seite
   *[other] { $sides } Seiten
}; das Maß an einem anderen Bogen prüfen
run-stale-sheets = `{ $path }` stammt aus einem früheren Lauf; seine Karten können veraltet sein
run-sheet-too-small = { $width } × { $height } mm passen nicht auf einen Bogen von { $across } × { $along } mm, von dem an jeder Kante 5 mm nicht bedruckt werden
run-in-border = Seite { $page }: etwas Gezeichnetes kommt der Kante auf { $distance } mm nahe; das Laminieren braucht { $quiet } mm
run-in-border-text = Seite { $page }: `{ $text }` kommt der Kante auf { $distance } mm nahe; das Laminieren braucht { $quiet } mm
run-under-hole = Seite { $page }: das Loch { $place } ({ $diameter } mm, seine Mitte { $inset } mm von der Kante, { $around } mm um es herum frei) geht durch etwas Gezeichnetes; dort ist das Papier { $free } mm tief weiß
run-under-hole-text = Seite { $page }: das Loch { $place } ({ $diameter } mm, seine Mitte { $inset } mm von der Kante, { $around } mm um es herum frei) geht durch `{ $text }`; dort ist das Papier { $free } mm tief weiß
place-top = oben
place-bottom = unten
place-left = links
place-right = rechts
place-top-left = oben links
place-top-right = oben rechts
place-bottom-left = unten links
place-bottom-right = unten rechts
run-list-no-source = Werte ohne Quelle:
run-list-not-given = Werte mit KEINE ANGABE:
run-checked = keine Fehler: { $documents ->
    [one] 1 Dokument
   *[other] { $documents } Dokumente
} aus { $sensors ->
    [one] 1 Sensor
   *[other] { $sensors } Sensoren
} für { $vehicles ->
    [one] 1 Fahrzeug
   *[other] { $vehicles } Fahrzeuge
}; { $no-source ->
    [one] 1 Wert ohne Quelle
   *[other] { $no-source } Werte ohne Quelle
}, { $not-given ->
    [one] 1 Wert KEINE ANGABE
   *[other] { $not-given } Werte KEINE ANGABE
}

## Labels of the templates

paper-applies = gilt für
paper-place = Ort
paper-draft = ENTWURF
paper-code = Code
paper-page = Seite
paper-of = von
paper-check-bar = nachmessen: 100 mm; wenn nicht, auf 100 % drucken
paper-printed-sheet = Bogen
paper-printed-sheets = Karten auf Bogen
paper-front = Vorderseite
paper-back = Rückseite
paper-cut-to = schneiden auf
paper-pouch = Tasche innen mindestens
paper-uncontrolled = Kopie: nicht gelenkt
paper-changed-more = weitere
paper-sources = Quellen
paper-sources-at-end = Quellen am Ende


paper-offset = Sensormasse +
paper-other-unit = Mitleser
paper-switched = geschaltet
paper-measuring = So wird gemessen
paper-circuit = Schaltung
paper-latch = Riegel
paper-inputs = Eingänge
paper-readings-not-given = Was ein gutes Teil zeigt: KEINE ANGABE
paper-pressure-volts = p → V
paper-outputs = Ausgänge
paper-face-not-given = Steckbild: KEINE ANGABE (keine Reihen)
paper-pin = Pin
paper-wire = Leitung
paper-function = Funktion
paper-tested = Geprüft mit
paper-control-unit = Steuergerät
paper-input = Eingang
paper-plot-key = dick: nenn · dünn: Grenze
paper-readings = Wenn das Messgerät zeigt
paper-next = Nächste Schritte
paper-given = Angaben
paper-given-what = was
paper-given-value = Wert
paper-source = Quelle


paper-at = Gutbereiche unten gelten für eine Hallentemperatur von
paper-unit-pin = SG
paper-behaves = Wenn es sich so verhält
paper-recalibration = Anschläge neu anlernen
paper-actuator = Stellmotor
paper-serial = Seriennr.
paper-cal-due = Kalibrierung fällig
paper-number = Nr.
paper-measure = Messung
paper-where = Wo
paper-reading = Messwert
paper-ok = i. O.
paper-not-ok = n. i. O.
paper-undecided = unentsch.
paper-initials = Kürzel
paper-meanings = Wenn etwas davon n. i. O. ist
paper-wave-period = Periode
paper-wave-on = hoher Pegel
paper-evidence = Nachweis, und dasselbe nach der Arbeit
paper-evidence-what = Messung
paper-evidence-window = Gutbereich
paper-evidence-before = Vorher
paper-evidence-after = Nachher
paper-windows = Gutbereiche des Prüfblatts
paper-papers = Benutzte Papiere: abhaken, wo der Code am Aushang dieser ist; sonst unter offene Punkte schreiben
paper-else = Was ein falscher Messwert bedeutet
paper-remarks = Bemerkungen

## Tables of figures, on a screen

table-own-rule = eigene Regel der Werkstatt
table-min = min
table-nominal = nenn
table-max = max
table-figure-block = Block
table-figure-place = steht bei
table-figure-printed = gedruckt
table-figure-unit = Einheit
table-figure-value = ungerundet
table-figure-rounding = gerundet
table-figure-note = Jede Zahl, die für dieses Papier berechnet ist, wie gedruckt und ungerundet. Was die Spezifikationen angeben, steht darauf wie dort: siehe die Eingaben.
table-plot-logarithmic = { $curve }, logarithmisch
table-plot-none = `{ $id }` hat keine Kurve zum Zeichnen: die Tabelle hat keine Nennwerte in Ohm oder Volt, die steigen oder fallen
table-input = { $label }: { $value }  ({ $key }; { $source })
table-input-of-instrument = { $id }, { $label }: { $value }  ({ $key }; { $source })
table-switched = V, zweiter Widerstand ein
# unchecked: Digits for the counts of an analogue-to-digital converter
table-count = Digits
table-count-step = { $unit } je Digit
table-still = { $unit } durch Eigenstrom, ruhende Luft
table-moving = { $unit } durch Eigenstrom, bewegte Luft
table-looks-broken-below = Unter { $at } kann das Steuergerät einen guten Sensor für { $looks } halten: ungünstigster Fall über alle Toleranzen (Nennwert: unter { $nominal }).
table-looks-broken-above = Über { $at } kann das Steuergerät einen guten Sensor für { $looks } halten: ungünstigster Fall über alle Toleranzen (Nennwert: über { $nominal }).
table-looks-broken-below-nominal = Unter { $at } hält das Steuergerät einen Sensor mit Nennwert für { $looks }; ungünstigster Fall: KEINE ANGABE oder außerhalb der Kennlinie.
table-looks-broken-above-nominal = Über { $at } hält das Steuergerät einen Sensor mit Nennwert für { $looks }; ungünstigster Fall: KEINE ANGABE oder außerhalb der Kennlinie.
table-open = unterbrochen
table-shorted = kurzgeschlossen
table-beyond-range = Das liegt außerhalb des Bereichs des Sensors.
table-formula-counts = Digits: V/Vref × (2ᵇ − 1), gerundet (allgemein üblich, ohne Quelle); K je Digit aus der Steigung von V/Vref.
table-note-counts-unloaded = Digits gelten ohne Messgerät am Pin.
table-formula-self-heating = Eigenstrom: das ΔT, für das V²/R des erwärmten Sensors gleich δ ΔT ist, δ der Ableitwert (seine Definition, IEC 60539-1, Nummer aus dem Gedächtnis).
table-formula-beta = R = R₀ exp[B (1/T − 1/T₀)], T in Kelvin: Heißleiterformel mit zwei Parametern (allgemein üblich; geprüft an durchgerechneten Beispielen von Bauteilherstellern).
table-formula-steinhart-hart = 1/T = a + b ln R + c (ln R)³, T in Kelvin, R in Ohm (Steinhart und Hart, Deep-Sea Research 15, 1968; Titel aus dem Gedächtnis).
table-formula-points = Zwischen den Punkten: monotone kubische Hermite-Stücke von ln R über 1/T, durch jeden Punkt (Fritsch und Carlson, SIAM J. Numer. Anal. 17, 1980, 238; Titel aus dem Gedächtnis); Steigung in einem Punkt: gewichtetes harmonisches Mittel der Steigungen beiderseits (Fritsch und Butland, SIAM J. Sci. Stat. Comput. 5, 1984, 300), an einem Ende nach der Dreipunktformel der zwei nächsten Stücke, begrenzt auf die Richtung und das Dreifache der Steigung des eigenen Stücks (geprüft an ausgelassenen Zeilen veröffentlichter Tabellen).
table-formula-tolerance-rated = Grenzwerte von R: R (1 ± δR) (R/R₀)^(± δB), die exakten Ecken der Toleranzen von R und B.
table-formula-tolerance-plain = Grenzwerte von R: R (1 ± δR) bei jeder Temperatur.
table-formula-tolerance-temperature = Grenzwerte von R: die Kennlinie bei T + δT und bei T − δT.
table-formula-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ mit L = ln(R/R₀), T in Kelvin; R₀ ist 1 Ω, wo kein Widerstand angegeben ist (geprüft an veröffentlichten Koeffizienten).
table-formula-platinum = R = R₀ (1 + A t + B t²), unter 0 °C zusätzlich + C (t − 100) t³, t in °C; A = 3,9083·10⁻³, B = −5,775·10⁻⁷, C = −4,183·10⁻¹² (IEC 60751).
table-formula-silicon = R = R₀ [1 + a (T − T₀) + b (T − T₀)²] (quadratische Gleichung der Hersteller von Silizium-Sensoren).
table-formula-tolerance-class = Grenzwerte von R: die Kennlinie bei t + δt und bei t − δt, δt der Klasse: AA 0,1 + 0,0017 |t|, A 0,15 + 0,002 |t|, B 0,3 + 0,005 |t|, C 0,6 + 0,01 |t|, in K (IEC 60751).
table-formula-tolerance-columns = Grenzwerte von R: die Spalten min und max aus der Tabelle der Quelle, jede für sich interpoliert.
table-formula-pull-up = V = Vref R / (R + Rp), R der Sensor mit allem in Reihe und parallel dazu, Rp der Pull-up (Kirchhoffsche Gesetze).
table-formula-pull-down = V = Vref Rp / (R + Rp), R der Sensor mit allem in Reihe und parallel dazu, Rp der Pull-down (Kirchhoffsche Gesetze).
table-formula-window = Grenzwerte von V: kleinster und größter Wert über alle Kombinationen der Enden aller Toleranzen; Grenzwerte sind nach innen gerundet.
table-formula-slope = %/K = 100 (dR/dT)/R, aus der Ableitung der Kennlinie.
table-formula-plausible = Plausibel: V/Vref ohne Messgerät zwischen den zwei Anteilen der Referenz in den Eingangswerten; gelöst nach der Temperatur, bei der seine Grenzwerte sie verlassen.
table-formula-loaded = Mit dem Messgerät liegt sein Eingangswiderstand Rm zwischen Pin und Sensormasse: in der Formel für V steht R ∥ Rm für R einer Pull-up-Schaltung, Rp ∥ Rm für Rp einer Pull-down-Schaltung.

table-yes = ja
table-no = nein
table-modes-title = Betriebsarten von { $system }: was jede erzwingt
table-stuck-title = Hängende Stellpunkte von { $system }, und die Betriebsarten, die sie aufdecken
table-mode = Betriebsart
table-name = Name
table-time = in höchstens, s
table-forced = erzwungen
table-in-smallest = im kleinsten Satz
table-free = frei
table-dont-care = beliebig
# unchecked: Stellpunkt for what a mode sets (a door, a blower, a valve)
table-control = Stellpunkt
table-stuck-at = hängt auf
table-forced-by = erzwungen von
table-exposed-by = aufgedeckt von
table-first-exposing = erste im kleinsten Satz
table-modes-smallest = Kleinster Satz von Betriebsarten, der jeden erzwungenen Wert anfährt: { $modes } ({ $count } von { $all }; bewiesen, kein kleinerer tut das).
table-modes-small = Ein kleiner Satz von Betriebsarten, der jeden erzwungenen Wert anfährt: { $modes } ({ $count } von { $all }). Mehr als { $most } Betriebsarten: nicht als kleinster bewiesen; mindestens { $least } sind nötig.
table-modes-nothing = Keine Betriebsart erzwingt etwas: es gibt nichts anzufahren.
table-modes-alone = Nur { $mode } erzwingt: { $values }.
table-modes-never-forced = Keine Betriebsart erzwingt: { $values }.
table-modes-hidden = Keine Betriebsart deckt einen Stellpunkt auf, der hängt auf: { $values }.
table-modes-none-hidden = Jeder Stellpunkt, der auf einem seiner Werte hängt, wird von einer Betriebsart aufgedeckt.
table-formula-smallest-set = Kleinster Satz: die wenigsten Betriebsarten, von denen mindestens eine jeden erzwungenen Wert jedes Stellpunkts erzwingt; bis { $most } Betriebsarten werden alle Sätze durchsucht, und unter mehreren gilt der erste nach der Reihenfolge der Betriebsarten (eigene Suche).
table-formula-stuck-at = Einen Stellpunkt, der auf einem Wert hängt, deckt jede Betriebsart auf, die einen anderen Wert von ihm erzwingt; frei und beliebig decken nichts auf (allgemein üblich, ohne Quelle).
table-panel-end = Ende
table-panel-low = unteres
table-panel-high = oberes
table-panel-mark = bedeutet
table-panel-celsius = °C wie angegeben
table-panel-celsius-in-f = das in °F
table-panel-fahrenheit = °F wie angegeben
table-panel-fahrenheit-in-c = das in °C
table-panel-difference = °C minus °F, K
table-panel-agrees = stimmt überein
table-panel-conversions = Die zwei Skalen sind Umrechnungen voneinander, im Rahmen der Rundung ihrer Stellen.
table-panel-separate = Die zwei Skalen sind keine Umrechnungen voneinander: keine darf aus der anderen berechnet werden.
table-panel-spans = Spanne: { $celsius } °C auf der einen Skala; { $fahrenheit } °F = { $kelvins } K auf der anderen.
table-panel-one-scale = Nur eine Skala: die andere wird nicht aus ihr berechnet.
table-formula-scales = t/°C = (t/°F − 32) / 1,8; eine Differenz von 1 K ist 1,8 °F (Definitionen der Skalen).
table-formula-scales-agree = Die zwei Angaben eines Endes stimmen überein, wo sie um höchstens einen halben Schritt der letzten gezeigten Stelle abweichen, in °C oder °F, je nachdem, welcher Schritt größer ist.
table-head-ice = ab Eis
table-head-bay = ab Halle
table-junction-ice = Vergleichsstelle bei 0 °C; mit --at auch für eine Vergleichsstelle bei Hallentemperatur.
table-junction-at = „Ab Halle“: Vergleichsstelle bei { $at }, wie an einem Voltmeter in der Halle; „ab Eis“: bei 0 °C.
table-formula-thermocouple = E(t) = Σ cᵢ tⁱ, t in °C; für Typ K über 0 °C auch a₀ exp[a₁ (t − a₂)²] (Referenzfunktionen der ITS-90: Koeffizienten der NIST Monograph 175, SRD 60, Tabelle für Typ { $type }; gleich in IEC 60584-1). In diesem Programm: src/physics/thermocouple.rs.
table-formula-junction = Mit der Vergleichsstelle bei t₀: E(t) − E(t₀). Thermospannungen addieren sich, Temperaturen nicht.
table-site = Manometeranzeige an diesem Ort: Luftdruck { $pressure } der Normatmosphäre, ± { $weather } mit dem Wetter (allgemein üblich, ohne Quelle).
table-note-gauges-by-scale = Überhitzung mit dem Manometer ND, Unterkühlung mit dem Manometer HD; im Stillstand mit dem Manometer ND, wo der Wert auf seiner Skala liegt, sonst mit dem Manometer HD.
table-note-gauge-scale = { $gauge }: auf seiner Skala bis { $full }.
table-note-gauge-missing = { $gauge }: KEINE ANGABE; – wo nur dieses es sagen könnte.
table-no-site = Manometeranzeige: KEINE ANGABE; die Höhe der Werkstatt ist nicht bekannt, und Meereshöhe wird nicht angenommen.
table-air-site = Beim Luftdruck dieses Orts, { $pressure } (Normatmosphäre).
table-no-air-site = Zahlen: KEINE ANGABE; die Höhe der Werkstatt ist nicht bekannt, und Meereshöhe wird nicht angenommen.
table-absolute = { $unit } abs.
table-gauge = { $unit } Überdruck
table-mark = Zeichen
table-vacuum = Unterdruck
table-suction-min = Saugl. min { $unit }
table-suction-max = Saugl. max { $unit }
table-superheat-u = Überhitzung ± { $unit }
table-liquid-min = Flüss. min { $unit }
table-liquid-max = Flüss. max { $unit }
table-subcooling-u = Unterkühlung ± { $unit }
table-at-rest-min = Stillstand min { $unit }
table-at-rest-max = Stillstand max { $unit }
table-source-r134a = Hilfsgleichung von CoolProp 8.0.0 zu J. Phys. Chem. Ref. Data 23 (1994) 657, −30 °C bis 80 °C
table-source-r1234yf = Hilfsgleichung von CoolProp 8.0.0, dritter Exponent als 2 gelesen, zu Int. J. Thermophys. (2022), −34 °C bis 80 °C
table-source-r744 = Hilfsgleichung von CoolProp 8.0.0 zu J. Phys. Chem. Ref. Data 25 (1996) 1509, −30 °C bis zum kritischen Punkt
table-formula-saturation = Sättigung von { $fluid }: p = pc exp[(Tc/T) Σ nᵢ θ^tᵢ], θ = 1 − T/Tc ({ $source }); gut auf ± { $limit } des Absolutdrucks.
table-formula-saturation-terms = { $fluid }: Tc = { $temperature } K, pc = { $pressure } kPa; nᵢ (tᵢ): { $terms }.
table-formula-gauge = Überdruck = Absolutdruck − Luftdruck; Luftdruck = 101,325 kPa × (1 − 2,25577 × 10⁻⁵ Z)^5,2559, Z in Metern (ASHRAE Handbook Fundamentals 2017, Kapitel 1, Gleichung 3). Unter null zeigt das Manometer Unterdruck: das ist kein Fehler von ihm.
table-formula-suction = Saugleitung: Sättigungstemperatur + Überhitzung; Grenzwerte sind nach innen gerundet, das ± daneben ist noch nicht abgezogen.
table-formula-liquid = Flüssigkeitsleitung: Sättigungstemperatur − Unterkühlung; Grenzwerte sind nach innen gerundet, das ± daneben ist noch nicht abgezogen.
table-formula-at-rest = Im Stillstand, temperiert: Messwerte, die Sättigung beweisen, das Band darum abzüglich U auf jeder Seite (JCGM 106:2012, Schutzband w = U). –: kein Messwert könnte es, oder keiner bei Sättigung selbst. Weit darunter oder darüber: an Sachkundige verweisen; darüber deutet auf Gas hin, das nicht kondensiert (allgemein üblich, ohne Quelle). Über die Menge an Flüssigkeit sagt es nichts.
table-formula-superheat-u = ± K von Überhitzung und Unterkühlung, aufgerundet: k = 2, aus Manometer, Wetter und Gleichung geteilt durch dp/dT, und dem Thermometer, jedes als Grenze/√3 (JCGM 100:2008, 5.1.2). –: außerhalb der Skala des Manometers, oder Manometer, Thermometer oder Höhe nicht angegeben.
table-note-above-critical = Über { $critical }, der kritischen Temperatur von { $fluid }, gibt es keine Sättigung: die Prüfung im Stillstand gilt dort nicht, und nicht in einer Halle nahe daran.
table-intake = Ansaugung
table-outside = außen { $unit }
table-humidity = r. F. %
table-inlet = Eintritt { $unit }
table-dew-point = Taupunkt { $unit }
table-water = W { $unit }
table-outlet = Austritt { $unit }
table-settled = abgesch. { $unit }
table-dripping = Kondensat
table-drips = ja
table-stays-dry = nein
table-undecided = unentschieden
table-fog = Nebel
table-held = Verdampferregelung
table-held-least = min: Verdampferregelung
table-formula-moist-air = W = 0,621945 pw/(p − pw), h = 1,006 t + W (2501 + 1,86 t) in kJ je kg trockene Luft; Sättigung über Wasser, unter 0,01 °C über Eis, nach Hyland und Wexler (ASHRAE Handbook Fundamentals 2017, Kapitel 1, Gleichungen 5, 6, 20, 22, 30).
table-formula-mixed-air = Eintritt: Außen- und Innenraumluft nach Masse trockener Luft, W = x Waußen + (1 − x) Winnen, h ebenso.
table-formula-outlet = Austritt: h abzüglich der Kühlung. Trocken, wo danach weniger als { $humidity } relative Feuchte bleibt; sonst scheidet sich Wasser ab, und die Luft tritt mit { $humidity } aus (Annahme der Spezifikation).
table-formula-settled = Die Wärme, die das abgeschiedene Wasser mitnimmt, ist nicht eingerechnet: in diesen Zeilen bis { $percent } % der Kühlung, W c t/q mit W abgeschieden, c = 4,186 kJ/(kg K) von Wasser, t Austritt in °C, q Kühlung. Mit ihr träte die Luft kälter aus.
table-formula-outlet-window = Grenzwerte des Austritts: Ecken von Thermometer, Hygrometer und Kühlung, nach innen gerundet. KEINE ANGABE (–) ohne alle drei. „min: Verdampferregelung“: die Ecke liegt unter dem, worauf der Verdampfer gehalten wird, und das steht als kleinster Wert. „Verdampferregelung“: auch der Nennwert des Austritts; er wird nicht erreicht, und es steht keine Zahl.
table-request-title = { $request }, Zustände über seinem Szenario
table-request-no-scenario = Die Spezifikation hat kein Szenario.
table-request-incomplete = Eine Schwelle, eine Verzögerung oder die Haltezeit: KEINE ANGABE; die Zustände des Szenarios werden nicht berechnet.
table-from = von s
table-to = bis s
table-state = Zustand
table-held-back-by = Gesperrt durch
table-request-absent = nicht angefordert
table-request-inhibited = angefordert, gesperrt
table-request-delayed = angefordert, Haltezeit läuft
table-request-permitted = freigegeben
table-formula-condition = Bedingung: spricht an, wenn ihr Wert für die Verzögerung an oder jenseits der Ansprechschwelle war, fällt ab, wenn er für die Rückfallverzögerung an oder jenseits der Rückfallschwelle war, dazwischen wie zuvor; eine Berührung ohne Dauer zählt nicht. Bei 0 s so, als wäre der Wert schon immer da gewesen, dazwischen abgefallen (allgemein üblich, ohne Quelle).
table-formula-request = Anforderung: gesperrt, solange eine freigebende Bedingung abgefallen ist oder eine sperrende angesprochen hat; freigegeben, wenn sie für die Haltezeit ohne Unterbrechung ansteht und nichts sie sperrt (allgemein üblich, ohne Quelle).
table-formula-dripping = Kondensat: ja, wo der Taupunkt am Eintritt über jeder Temperatur liegt, auf der der Verdampfer gehalten wird, nein, wo er unter jeder liegt; unentschieden dazwischen oder innerhalb der Grenzen der Messgeräte, auch wo die Nennkühlung etwas Wasser abscheiden würde.
table-duty = Tastverh. %
table-ripple = Welligkeit
table-conduction = Strom
table-continuous = fließt weiter
table-discontinuous = setzt aus
table-meter-across = V mittelnd
table-displacement = Hub %
table-step = Stufe
table-bypass = Relais
table-across-motor = V Motor
table-at-battery = { $what } bei { $battery }
table-heat = W Vorschaltteil
table-to-ground = V geschaltet gegen Masse
table-of-limit = % der Grenze
table-note-coil = Ω: Zündung aus, abgezogen, Widerstand der Messleitungen abgezogen. A: dauernd ein, kein Spannungsabfall im Schalter.
table-note-battery = Batterie { $low } bis { $high }.
table-note-nominal-battery = Nennwert: Batterie { $nominal }.
table-note-isolation = Spule gegen Gehäuse: { $least } oder mehr.
table-note-solenoid-nominal = Nennwert: Batterie { $battery }, Spule bei { $at }.
table-note-solenoid-limits = Grenzwerte: Batterie { $low } bis { $high }, Spule { $cold } bis { $hot }.
table-note-ceiling = Mit { $battery } ergibt kein Tastverhältnis mehr als (Vb − Vs)/R, mit dem kleinsten Vs von { $drop }: { $most } mit einer guten heißen Spule von { $least }, { $fewest } mit einer von { $greatest }.
table-note-less-displacement = Mehr Strom bedeutet weniger Hub.
table-note-more-displacement = Mehr Strom bedeutet mehr Hub.
table-note-no-timing = Induktivität oder Frequenz: KEINE ANGABE; keine Welligkeit; der Mittelwert gilt, wo der Strom zwischen den Pulsen nie aussetzt, und ist höher, wo er aussetzt.
table-note-averaging = V mittelnd: über der Spule mit Nennwert; Tastverhältnis × Batterie nur bei sauberem Rechteck.
table-note-hottest = Mit { $battery } und Leitungen mit Nennwert ist der Transistor am heißesten bei { $percent } % der Batterie, { $volts } V am Motor: höchstens { $watts } W. Verbrennungsgefahr.
table-note-hottest-step = Mit { $battery } sind die Widerstände am heißesten in Stufe { $step }: { $watts } W, alles mit Nennwert. Verbrennungsgefahr.
table-note-no-wiring = Leitungen: KEINE ANGABE; Volt und Wärme ohne den Anteil der Leitungen, der sie nur kleiner macht.
table-note-low-side = Über dem Motor messen. Gegen Masse zeigt die Klemme auf der Versorgungsseite in jeder Stufe die Batteriespannung, auch bei stehendem Motor; die Klemme auf der geschalteten Seite zeigt sie abzüglich der Spannung am Motor.
table-note-high-side = Über dem Motor messen. Fehlt seine Masse, zeigen beide Klemmen gegen Masse dasselbe, und der Motor steht.
table-note-wire-listed = Max: der größte Wert, den die Leitungsnorm zulässt. Nennwert: massives Kupfer.
table-note-wire-gauge = Nennwert: massives Kupfer dieser Drahtnummer; eine Litze hat einige Prozent mehr. Max: KEINE ANGABE; die Leitungsnorm kennt keine Drahtnummern.
table-note-wire-theory = Theoretisch: massives Kupfer vom Nennquerschnitt; eine wirkliche Leitung hat 3 bis 15 % mehr. Max: KEINE ANGABE; Querschnitt oder Klasse ist nicht der Leitungsnorm.
table-note-wire-drop = Einen Spannungsabfall gibt es nur, solange der Strom fließt.
table-note-wire-metre = Ein Meter bei 20 °C: Nennwert { $nominal }.
table-note-wire-metre-greatest = Ein Meter bei 20 °C: Nennwert { $nominal }, höchstens { $greatest }.
table-note-wire-limit = % der Grenze: V max als Anteil der Grenze von { $limit }.
table-note-wire-limit-nominal = % der Grenze: V Nennwert als Anteil der Grenze von { $limit }, da V max nicht bekannt ist.
table-formula-copper = R = R₁ (1 + α (t − 20 °C)) / (1 + α (t₁ − 20 °C)), α = 0,00393 /K bei 20 °C (IEC 60028). Grenzwerte: die Enden der Toleranz von R₁.
table-formula-ceiling = I (Spalte A) = Vb/R: kleinster Wert aus der niedrigsten Batteriespannung und dem größten R, größter aus der höchsten Batteriespannung und dem kleinsten R (Ohmsches Gesetz).
table-formula-switched = L dI/dt = v − R I, gelöst über eine eingeschwungene Periode: v = Vb − Vs bei ein, −Vf bei aus, nichts mehr, sobald der Strom weg ist; Spalte A ist der Mittelwert von I, nie unter 0 A; Welligkeit aus den Exponentialfunktionen von L/R (geprüft an einer Zeitsimulation).
table-formula-continuous = I (Spalte A) = (D (Vb − Vs) − (1 − D) Vf)/R, der Mittelwert, solange der Strom nie aussetzt, nicht unter 0 A; D Tastverhältnis, Vs Abfall im Schalter, Vf Abfall der Diode.
table-formula-mean-window = Grenzwerte des mittleren Stroms: kleinster und größter Wert über alle Kombinationen der Enden von Batterie, Abfällen und R; Induktivität und Frequenz wie angegeben.
table-formula-averaging = V mittelnd = R × mittlerer Strom: an einer Induktivität fällt im Mittel keine Spannung ab.
table-formula-displacement = Hub: Geraden zwischen den Punkten der Spezifikation; darüber hinaus nur, dass er nicht mehr (≤) oder nicht weniger (≥) ist als am letzten.
table-formula-step = V Motor = Stufe × Batterie, über dem Motor gemessen. Grenzwerte von Vm/Vb: die Toleranz der Stufe, bei jeder Batteriespannung.
table-formula-resistors = V Motor aus Vb − Vm = R I(Vm), R der Widerstand der Stufe und der Leitungen (Kirchhoffsche Maschenregel). Grenzwerte von Vm/Vb: kleinster und größter Wert über beide Enden von Batterie und Widerstand; Motor und Leitungen mit Nennwert.
table-formula-motor = I (Spalte A) = I₀ (Vm/V₀)ⁿ mit I₀ bei V₀ (ein Modell; n etwa 1,7 für ein Gebläserad ist allgemein üblich, ohne Quelle).
table-formula-heat = W Vorschaltteil = (Vb − Vm − Rw I) I, Rw die Leitungen; am größten, wo (n + 1) Vm + 2 n Rw I = n Vb (Ableitung null).
table-formula-heat-resistors = W Vorschaltteil = (Vb − Vm − Rw I) I, Rw die Leitungen: die Wärme des Widerstands der Stufe.
table-formula-bypass = Relais: Vb abzüglich des Abfalls von Relais und Leitungen.
table-formula-wire-nominal = Ω Nennwert = n l ρ/S (1 + α (t − 20 °C)), ρ = 1/58 Ω mm²/m, α = 0,00393 /K (IEC 60028); n Leiter mit Länge l und Querschnitt S.
table-formula-wire-gauge = S = π d²/4, d = 0,127 mm × 92^((36 − Drahtnummer)/39) (ASTM B258; Formel aus dem Gedächtnis, geprüft an einer gedruckten Tabelle).
table-formula-wire-greatest = Ω max = dasselbe mit dem größten Widerstand bei 20 °C nach IEC 60228 (blankes Kupfer, wie Leitungshersteller ihn angeben; Klasse 5 und 6 ab 10 mm² aus dem Gedächtnis).
table-formula-wire-drop = V = I × Ω, I der Strom aus den Eingangswerten (Ohmsches Gesetz).

## Faults and judgements, on a screen

fault-open = Sensor oder sein Stecker offen
fault-open-wire = Leitung offen
fault-short-to-return = Sensor kurzgeschlossen
fault-short-to-ground = Kurzschluss Signal nach Masse
fault-short-to-reference = Kurzschluss Signal nach Referenz
fault-short-to-battery = Kurzschluss Signal nach Plus
fault-series = Übergangswiderstand in Leitungen
fault-leak = Nebenschluss zwischen den Sensorleitungen
fault-leak-to-battery = Nebenschluss Plus nach Signal
fault-lifted-return = Sensormasse über Masse
fault-shifted-resistance = Sensorwiderstand falsch, gleiche % bei jeder Temperatur
fault-shifted-slope = Sensorsteigung (B-Wert) falsch
fault-other-part = anderes Teil: { $title }, { $id }
fault-wrong-resistor = Widerstand im SG falsch
fault-unit-still-mated = Ohm gemessen, während noch alles steckt: abziehen und wiederholen
fault-wiper-open = Schleifer/Signal offen
fault-track-open = Bahn offen
fault-track-open-to-return = Bahn offen zu Sensormasse
fault-track-open-to-reference = Bahn offen zu Referenz
fault-reference-lost = Referenz offen
fault-return-lost = Sensormasse offen
fault-signal-to-return = Kurzschluss Signal–Sensormasse
fault-contact-resistance = Schleiferkontakt schlecht
fault-slipped = Schleifer verrutscht, Bahn
fault-winding-open = Wicklung offen
fault-coil-shorted = Spule kurz
fault-shorted-turns = Windungsschluss
fault-other-coil = andere Spule
fault-other-temperature = Spule bei anderer Temperatur
fault-signal-open = Signal offen
fault-offset = Ausgang um Druck versetzt
fault-absolute-part = Absolut- statt Überdruckteil
fault-gauge-part = Überdruck- statt Absolutteil
fault-light-open = Sensor oder Leitung offen
fault-light-shorted = Sensor kurz
fault-light-covered = Sensor abgedeckt
faults-fault = Fehler
faults-size = Größe
faults-believed = SG glaubt { $unit }
faults-separable = erkennbar
faults-separable-by = an
faults-alike = wie Nummer
faults-yes = ja
faults-no = nein
faults-open-line = OL
faults-at-unit = Bei { $at }, am Stecker des Steuergeräts: Volt gesteckt, Zündung ein; Ohm mit abgezogenem Steuergerät, Zündung aus, nachdem 0 V festgestellt sind.
faults-at-sensor = Bei { $at }, am Stecker des Sensors: Volt gesteckt, Zündung ein; Ohm des Sensors allein, abgezogen, Zündung aus, nachdem 0 V festgestellt sind.
faults-at-feedback = Am Stecker des Steuergeräts. V: Signal gegen Sensormasse, gesteckt, Zündung ein. Ohm zwischen den Leitungen, Steuergerät abgezogen, Zündung aus, nachdem 0 V festgestellt sind: sig Signal, sm Sensormasse, ref Referenz.
faults-at-coil = Bei { $at }, der Temperatur der Wicklung selbst. Ω: durch die Leitungen zur Spule, Endstufe abgezogen, Zündung aus, nachdem 0 V festgestellt sind. V: über der Spule an ihrem Stecker, gesteckt, ganz ein. Was die Messleitungen beitragen, steckt in ±.
faults-at-transducer = V: Signal gegen Sensormasse am Stecker des Steuergeräts, gesteckt, Zündung ein; ohne Last des Messgeräts. Keine Ohm: ein Drucksensor ist elektronisch, seine Ohm sagen nichts (allgemein üblich, ohne Quelle).
faults-at-light = V: Signal gegen Sensormasse am Stecker des Steuergeräts, gesteckt, Zündung ein. Keine Ohm: die einer Diode hängen vom Ohmmeter ab (allgemein üblich, ohne Quelle).
faults-no-matter = Seine eigene Temperatur wirkt auf diese Messwerte nicht: in den Spezifikationen steht nichts davon.
faults-no-instrument = Ohne Messgerät unterscheiden allein die Gutbereiche über die Toleranzen die Fehler: eines mit `--instrument` nennen.
faults-no-nominal-stops = Die Anschläge sind als Gutbereiche angegeben, ohne Nennwerte: was von der Stellung abhängt, hat keinen Nennwert (–) und keine Stellung, die das Steuergerät glaubt.
faults-contacts-too = Seine Kontakte sind hier nicht enthalten: ihre Fehler stehen unter `bayleaf table { $id }`.
faults-no-nominal-battery = Keine Volt und Ampere: `nominal` der Batterie: KEINE ANGABE.
faults-no-coil-tolerance = Toleranz der Spule: KEINE ANGABE; die meisten Fehler sind nicht von gut zu unterscheiden.
faults-signal-open = Signal unterbrochen: nichts in den Spezifikationen sagt, wo der Pin dann steht (–).
faults-beyond-line = Ein Messwert jenseits der Geraden ist nicht bekannt, da keine Begrenzung angegeben ist (–).
faults-wiper-contact = (sig–sm + sig–ref − ref–sm)/2 ist der Kontakt des Schleifers, bei jeder Toleranz der Bahn und jeder Stellung.
faults-no-elevation = Ein Teil der anderen Druckart fehlt hier: `elevation` der Werkstatt: KEINE ANGABE.
faults-good = Gut: { $reading }.
faults-good-at = Gut bei { $position }, { $test }: { $reading }.
faults-unplugged = Sensor abgezogen, an der Kabelstrangseite seines Steckers, Zündung ein: { $reading }. Alles andere ist Leitung oder Steuergerät.
faults-substitute = { $resistor } anstelle des Sensors: { $reading }; das Steuergerät glaubt dann { $simulates }. Wenn ja, sind Leitungen und Steuergerät gut. Den Widerstand vorher messen.
faults-reading = { $nominal }, Grenzwerte { $range }
faults-reading-doubt = { $nominal }, Grenzwerte { $range }, ± { $doubt } (k = 2)
faults-ohms = Ω
faults-ohms-to-return = Ω sig–sm
faults-ohms-to-reference = Ω sig–ref
faults-ohms-end-to-end = Ω ref–sm
faults-volts = V
faults-volts-min = V min
faults-volts-max = V max
faults-amperes = A
faults-position = bei %
faults-pressure = bei { $unit }
faults-believed-position = SG glaubt %
faults-believed-pressure = SG glaubt { $unit }
faults-believed-light = SG glaubt W/m²
faults-no-ohms = Keine Ohm: sie lassen sich hier nicht berechnen.
faults-no-volts = Keine Volt: Widerstand oder Referenz der Schaltung: KEINE ANGABE.
faults-no-battery = Fehler nach Plus fehlen hier: `battery` von System `{ $system }`: KEINE ANGABE.
faults-formula-reading = Messwerte: die Formeln oben mit einer falschen Sache. Im Sensor: unterbrochen, kurzgeschlossen, Widerstand oder Steigung falsch, anderes Teil. In den Leitungen zwischen Steuergerät und Sensor: Unterbrechung, Kurzschlüsse, Nebenschluss, Übergangswiderstand. Ohm am Steuergerät sind Sensor, Vorwiderstand und Leitungen; das Messgerät an der Leitung liegt bei Volt parallel (Kirchhoffsche Gesetze; geprüft an einem Schaltungssimulator).
faults-formula-believed = SG glaubt: die Temperatur hinter seinem eigenen Messwert, als wäre nichts falsch; leer, wo keine Temperatur der Kennlinie ihn ergibt.
faults-formula-separable = Erkennbar: die Bereiche von gut und fehlerhaft über alle Toleranzen, jeder um die Messunsicherheit erweitert, berühren sich nicht (JCGM 100, k = 2).
faults-formula-position = SG glaubt: (V/Vref − r₀)/(r₁ − r₀) zwischen den Nennwerten der Anschläge, ohne Messgerät; unter 0 oder über 100 liegt es jenseits eines Anschlags (allgemein üblich, ohne Quelle).
faults-formula-coil = A = Vb/R mit dem Nennwert der Batterie; V über der Spule = Vb R/(R + Reihe); ein Windungsschluss nimmt denselben Anteil der Ohm mit (Ohmsches Gesetz).
faults-formula-pressure = SG glaubt: der Druck auf derselben Geraden, wie weit draußen auch immer; ein Steuergerät, das seine Grenzen kennt, hält ihn stattdessen für einen Fehler (allgemein üblich, ohne Quelle).
faults-formula-sizes = Größen: die in einer Werkstatt vorkommen (allgemein üblich, ohne Quelle).
judge-instruments = Messgeräte: { $meter }; { $thermometer }
judge-instruments-of = die von { $id }
judge-none = keine
run-no-sensor = kein Sensor heißt `{ $id }`
run-no-sensor-near = kein Sensor heißt `{ $id }`; gemeint ist vielleicht `{ $near }`?
run-no-faults = nichts mit einem Fehlerverzeichnis heißt `{ $id }`
run-no-faults-near = nichts mit einem Fehlerverzeichnis heißt `{ $id }`; gemeint ist vielleicht `{ $near }`?
run-faults-no-temperature = was `{ $id }` anzeigt, hängt von seiner Temperatur ab: sie angeben, etwa `--at "31 °C"`
run-faults-place = `--place` gilt für Sensoren: `{ $id }` hat nur einen Ort
run-faults-position = `--position` gilt für Stellmotoren mit Rückmeldepotentiometer, und `{ $id }` ist keiner
run-faults-pressure = `--pressure` gilt für Drucksensoren, und `{ $id }` ist keiner
run-faults-pressure-outside = { $at } liegt jenseits der Geraden von `{ $id }`, { $low } bis { $high }, und keine Begrenzung ist angegeben
run-faults-not-given = die Fehler von `{ $id }` lassen sich nicht berechnen: { $what }: KEINE ANGABE
run-faults-contacts = `{ $id }` hat Kontakte und kein Rückmeldepotentiometer: ihre Fehler stehen unter `bayleaf table { $id }`
run-faults-no-coil = `{ $id }` ist ein Gebläse: es hat keine Spule, deren Fehler aufzuführen wären
run-no-instrument = kein Multimeter oder Thermometer heißt `{ $id }`
run-no-instrument-near = kein Multimeter oder Thermometer heißt `{ $id }`; gemeint ist vielleicht `{ $near }`?
judge-circuit = Schaltung (Widerstand oder Referenz)
judge-tolerance = Toleranz
judge-circuit-tolerance = Toleranz eines Widerstands, der Referenz oder des Messgeräteeingangs
judge-good = guter Sensor
judge-reading = Zeigt { $value }, { $test }, Sensor bei { $at }.
judge-volts-at-unit = Volt am Stecker des Steuergeräts, gesteckt, Zündung ein
judge-volts-at-sensor = Volt am Stecker des Sensors, gesteckt, Zündung ein
judge-volts-unplugged = Volt am Stecker des Sensors, Kabelstrangseite (Zündung aus, Sensor abziehen, Zündung ein)
judge-ohms-at-sensor = Ohm am Sensor, abgezogen (Zündung aus; vorher 0 V feststellen)
judge-ohms-at-unit = Ohm am Stecker des Steuergeräts, Kabelstrangseite, Sensor gesteckt (Zündung aus, Steuergerät abziehen; vorher 0 V feststellen)
judge-pass = BESTANDEN: innerhalb seiner Grenzwerte.
judge-fail = NICHT BESTANDEN: außerhalb seiner Grenzwerte.
judge-undecided = UNENTSCHIEDEN: für diese Messgeräte zu nah an einem Grenzwert.
judge-window = Grenzwerte eines guten Sensors in guter Schaltung: { $low } bis { $high } { $unit }.
judge-guarded = Ein Messwert dort ist auf ± { $doubt } { $unit } sicher (k = 2): { $low } bis { $high } { $unit } besteht.{ $risk }
judge-simple = Ein Messwert dort ist auf ± { $doubt } { $unit } sicher (k = 2); die Werkstatt entscheidet an den Grenzwerten selbst.{ $risk }
judge-no-reading-passes = Ein Messwert dort ist auf ± { $doubt } { $unit } sicher (k = 2): mit diesen Messgeräten kann hier kein Messwert bestehen.
judge-no-doubt = Wie sicher ein Messwert ist: KEINE ANGABE; die Genauigkeit des Messgeräts fehlt.
judge-not-compared = Nicht verglichen, weil ihre Toleranz fehlt (KEINE ANGABE): { $parts }.
judge-risk = { " " }Risiko, dass das Urteil falsch ist: { $risk }.
judge-left-out = Nicht in ±, weil KEINE ANGABE: { $what }.
judge-source-thermometer = Thermometer
judge-source-soak = Temperaturangleich
judge-source-leads = Messleitungen
judge-source-meter = Messgerät
judge-service = Servicegrenze ± { $limit }: { $low } bis { $high } { $unit }; { $verdict }.
judge-service-pass = innerhalb: der Sensor erklärt keine Beanstandung
judge-service-fail = außerhalb: das erklärt eine Beanstandung
judge-service-undecided = unentschieden
judge-believed = Das Steuergerät glaubt { $at }.
judge-believes-nothing = Es gibt keine Temperatur, die das Steuergerät daraus glauben könnte.
judge-causes = Einzelfehler, die den Messwert erklären:
judge-no-cause = Kein Einzelfehler der Liste erklärt den Messwert: noch einmal hinsehen oder zwei zugleich vermuten.
judge-any-size = jeder Größe
judge-up-to = bis { $high }
judge-from = { $low } oder mehr
judge-between = { $low } bis { $high }
judge-or-none = , oder gar keiner
judge-expected = { "  " }{ $range }: { $who }
judge-next = Als Nächstes: { $test }, bei { $at }; das unterscheidet { $pairs } von { $of } Paaren von Verdächtigen.
judge-next-reads = Dort zeigen die Verdächtigen:
judge-next-pass = Als Nächstes: nichts zu reparieren. Ein Wackelkontakt besteht hier: kleinsten und größten Wert aufzeichnen, während Leitungen bewegt, erwärmt und befeuchtet werden.
judge-next-one-suspect = Als Nächstes: nur ein Verdächtiger: ihn mit einer zweiten Prüfung bestätigen (bekannter Widerstand anstelle des Sensors, oder Eiswasser), bevor etwas getauscht wird.
judge-next-none-separates = Als Nächstes: keine einzelne Messung unterscheidet diese Verdächtigen; Teil für Teil: den Sensor durch einen Widerstand gleicher Ohm ersetzen, dann die Leitungen von Ende zu Ende messen.
judge-next-nothing-explains = Als Nächstes: die Messung wiederholen; Messgerät, Messbereich, Ort und Temperatur des Sensors prüfen.
judge-steps = Die eigenen Schritte der technischen Leitung:
judge-remedy-soak = Entschieden ({ $verdict }) wäre es, wenn sich Sensor und Thermometer auf { $limit } angleichen.
judge-remedy-thermometer = Entschieden ({ $verdict }) wäre es mit einem Thermometer, das auf { $limit } genau ist.
judge-remedy-temperature = Entschieden ({ $verdict }) wäre es mit einer Wiederholung bei { $at }.
judge-remedy-at-sensor = Entschieden wäre es mit Ohm am Sensor, abgezogen: dort { $verdict }, wenn der Sensor selbst so ist, wie er von hier aussieht.
judge-remedy-at-unit = Entschieden wäre es mit Volt am Steuergerät, gesteckt: dort { $verdict }, wenn zwischen den beiden alles stimmt.
judge-remedy-meter = Entschieden ({ $verdict }) wäre es mit einem Messgerät, das { $part } % vom Fehler dieses hat.
judge-no-remedy = Kein einzelnes besseres Messgerät, keine Temperatur und kein Ort entscheidet es: zwei zugleich ändern, oder es als Grenzfall nehmen.
judge-would-pass = bestanden
judge-would-fail = nicht bestanden
judge-pair-series = Zwei Fehler, Sensor und Leitungen: Sensor um { $shift } falsch ({ $shift-low } bis { $shift-high } %), in der Leitung { $sizes }: { $reason }.
judge-pair-leak = Zwei Fehler, Sensor und Nebenschluss: Sensor um { $shift } falsch ({ $shift-low } bis { $shift-high } %), parallel { $sizes }: { $reason }.
judge-pair-impossible = weniger als nichts
judge-reasonable = glaubhaft
judge-not-reasonable = nicht glaubhaft
judge-pairs-none = Keines der Paare ist glaubhaft.
judge-pairs-one = Das andere Paar scheidet aus: eine dritte Temperatur ist nicht nötig.
judge-third = Ein dritter Messwert bei { $at } sagt, welches: { $series } mit Übergangswiderstand, { $leak } mit Nebenschluss.
judge-third-none = Keine dritte Temperatur im Bereich des Sensors unterscheidet die beiden mit diesen Messgeräten.
judge-formula-doubt = ±: Thermometer, Temperaturangleich, Messgerät und Messleitungen als Rechteckgrenzen a/√3, zusammengefasst nach JCGM 100:2008, 5.1.2, k = 2; entschieden nach JCGM 106:2012 (Abschnitte aus dem Gedächtnis).
judge-formula-risk = Risiko: der Teil einer Normalverteilung um den Messwert, mit der Standardunsicherheit U/2, der auf der anderen Seite der Grenzwerte liegt (JCGM 106:2012, Abschnitt aus dem Gedächtnis).
judge-formula-next = Als Nächstes: die erste Messung in der Reihenfolge des Aufwands (allgemein üblich, ohne Quelle), die halb so viele Paare unterscheidet wie die beste; jeder Verdächtige in der Mitte seiner Größen, oder am schlimmsten, wo auch gar keiner genügte; Bereiche über alle Toleranzen, nach außen gerundet.
judge-formula-pair = Zwei Fehler: x R(T₁) + s = R₁ und x R(T₂) + s = R₂, oder 1/(x R) + 1/L = 1/R₁ und so weiter; glaubhaft ist ein Sensor, der um höchstens 30 % falsch ist (allgemein üblich, ohne Quelle). Die Liste der Einzelfehler stammt allein vom ersten Messwert.
judge-formula-cause = Größen: ein Fehler erklärt einen Messwert, wo ihn irgendein gutes Teil in irgendeiner guten Schaltung mit diesem Fehler ergäbe, innerhalb von ±.
run-judge-no-rule = die Werkstatt hat keine Entscheidungsregel; `decision = "guarded"` oder `decision = "simple"` in `[shop]` schreiben
run-judge-ohms-unplugged = Ohm misst man am Sensor oder am Steuergerät; an einem abgezogenen Kabelstrang bleibt nichts zu messen
run-judge-not-given = ein Messwert von `{ $id }` lässt sich nicht beurteilen: { $what }: KEINE ANGABE
run-judge-no-number = dieser Messwert lässt sich nicht beurteilen: ein Messgerät zeigt keine solche Zahl
run-judge-second-unit = beide Messwerte müssen Volt sein oder beide Ohm
run-judge-second-outside = kein Sensor ergibt einen dieser Messwerte: zwei Messwerte zusammen sagen nichts
run-judge-second-too-near = die zwei Messwerte unterscheiden sich nicht um mehr als ihre Unsicherheit: den zweiten weiter weg von der ersten Temperatur nehmen
## Fits

fit-empty = die Datei hat keine Zeile, die die Einheiten nennt
fit-head = `{ $head }` nennt keine Spalten von Punkten
fit-columns-help = mit einer Zeile beginnen wie `°C,kΩ`, `temperature °F;resistance Ω` oder `°C,Ω,Ω,Ω` (min, Nennwert, max); Einheiten sind °C, °F oder K, und Ω oder kΩ
fit-cells = { $found ->
    [one] eine Zeile mit 1 Zelle
   *[other] eine Zeile mit { $found } Zellen
}, wo die erste Zeile { $wanted } hat
fit-cells-help = Zahlen mit Dezimalpunkt schreiben und ohne Trennzeichen zwischen den Tausendern
fit-rises = der Widerstand steigt von { $cold } °C bis { $hot } °C
fit-rises-help = die Punkte als Kennlinie mit model = "table" behalten; Platin und Silizium haben eigene Modelle
fit-few-points = Keine Anpassung: mindestens { $needed } Punkte sind nötig.
fit-not-physical = Keine Anpassung: eine Temperatur oder ein Widerstand gehört zu keinem Sensor.
fit-not-falling = Keine Anpassung: der Widerstand fällt nicht von Zeile zu Zeile.
fit-no-thermistor = Keine Anpassung: die besten Koeffizienten sind über diesen Temperaturen die keines Heißleiters.
fit-points = { $points ->
    [one] 1 Punkt.
   *[other] { $points } Punkte.
}
fit-minimised = Kleinste Quadrate der Residuen von 1/T in ln R, alle Punkte mit gleichem Gewicht. Residuen sind Formel minus Tabelle.
fit-no-suspect = Keine Zeile sieht vertippt aus.
fit-suspect-line = Vertippt? { $what }: { $near }; { $help }. Die Anpassungen enthalten diese Zeile.
fit-suspect-head = sieht vertippt aus
fit-suspect = ja
fit-residuals = Residuen, Formel minus Tabelle
fit-misses = verfehlt die Punkte um { $rms-k } K oder { $rms-percent } % (quadratisches Mittel), höchstens um { $largest-k } K oder { $largest-percent } %
fit-exact = So viele Koeffizienten wie Punkte: es bleibt kein Residuum, was nichts darüber sagt, wie gut die Formel zum Teil passt.
fit-spec-note = angepasst an { $points } Punkte; ihre Quelle nennen
table-position = Stellung
table-travel = Weg %
table-contacts = Kontakte
table-formula-travel = V/Vref bei einem Prozentsatz des Wegs zwischen den Anschlägen, gleichmäßig: r₀ + Weg × (r₁ − r₀); zurück: Weg = (V/Vref − r₀)/(r₁ − r₀) (allgemein üblich, ohne Quelle). Grenzwerte: beide Anschläge am selben Ende ihrer Gutbereiche.
table-formula-travel-loaded = V/Vref = (u + s/Rref)/(1 + s/Rref + s/Rgnd), s = RKontakt + S u (1 − u): S ist die ganze Bahn mit beiden Enden, u ihr Teil vom unteren Ende bis zum Schleifer, RKontakt der Kontakt des Schleifers, Rref oder Rgnd die Last vom Schleifer nach Referenz oder Masse, unendlich, wo keine ist (Kirchhoffsche Gesetze; geprüft an einem Schaltungssimulator). V/Vref der Anschläge wird in u zurückgerechnet, und u läuft dazwischen gleichmäßig mit dem Weg. Grenzwerte: jede Ecke von Anschlägen, Bahn, Last und Kontakt.
table-formula-volts = V = Vref × V/Vref; Grenzwerte mit der Toleranz der Referenz, nach innen gerundet.
table-formula-contacts = 1: Kontakt geschlossen, in der Reihenfolge { $names }.
table-formula-contacts-stuck = „Schließt nie“ und „öffnet nie“: der Code jeder Stellung mit dieser einen Stelle auf 0 oder 1 gehalten, und die Stellung, die den entstehenden Code hat; – wo keine ihn hat.
table-formula-ladder = V/Vref = R/(R + Rp), R vom Pin nach Masse, wie die geschlossenen Kontakte es lassen, Rp der Pull-up (Kirchhoffsche Gesetze; geprüft an einem Schaltungssimulator). Grenzwerte: jeder Widerstand an einem Ende, der Pull-up am anderen, geschlossene Kontakte von 0 Ω bis zu ihrem größten Wert.
table-formula-ladder-series = Kontakte, in der Spalte von links nach rechts, zählen ab 0: Kontakt 0 führt vom Pin nach Masse, Kontakt k hinter den ersten k Widerständen der Kette; R ist die Kette bis zum geschlossenen Kontakt, der dem Pin am nächsten liegt, und ohne geschlossenen die ganze Kette mit ihrem Ende, oder offen.
table-formula-ladder-parallel = Kontakte, in der Spalte von links nach rechts, zählen ab 0: jeder führt über seinen eigenen Widerstand vom Pin nach Masse; 1/R ist die Summe über die geschlossenen.
table-formula-dirty = Verschmutzter Kontakt: der Widerstand k (m − g)/(o − m) in Reihe mit ihm, der den Nennwert von g, wie er ist, nach m verschiebt, dem kleinsten Wert des nächsthöheren Gutbereichs; o ist der Messwert mit offenem Kontakt, k der Widerstand von allem in Reihe mit ihm (Kirchhoffsche Gesetze, alles andere mit Nennwert).
table-formula-light-pull-up = V = Vref − I R, nicht unter 0 V: mehr Licht, weniger Volt (Kirchhoffsche Maschenregel); I = Fotostrom × Bestrahlungsstärke/Nenn-Bestrahlungsstärke (lineare Fotodiode, allgemein üblich, ohne Quelle). Grenzwerte: jede Ecke, mit dem Dunkelstrom von keinem bis zu seinem größten.
table-formula-light-load = V = I R, nicht über Vref: mehr Licht, mehr Volt (Ohmsches Gesetz); I = Fotostrom × Bestrahlungsstärke/Nenn-Bestrahlungsstärke (lineare Fotodiode, allgemein üblich, ohne Quelle). Grenzwerte: jede Ecke, mit dem Dunkelstrom von keinem bis zu seinem größten.
table-formula-transducer = V/Vref auf der Geraden durch die zwei Punkte (Rechnung). Grenzwerte: ± Genauigkeit × Spanne von V/Vref; die Toleranz der Referenz steckt nur in den Volt. 1 psi = 6,894757 kPa, 1 bar = 100 kPa (Definitionen der Einheiten).
table-note-moves = Bewegt: { $what }.
table-note-no-position = Er meldet keine Stellung: es gibt keinen Messwert davon zu berechnen.
table-note-ends = 0 %: { $low }. 100 %: { $high }.
table-note-no-nominal = Die Anschläge sind als Gutbereiche angegeben, ohne Nennwerte.
table-note-end-to-end = Ende zu Ende, abgezogen: { $low } Ω bis { $high } Ω, nach innen gerundet.
table-note-illegal = Keine Stellung hat diese Codes: { $codes }.
table-note-stuck-open = { $contact } schließt nie (– ist keine Stellung): { $misread }.
table-note-stuck-closed = { $contact } öffnet nie (– ist keine Stellung): { $misread }.
table-note-jump = Von { $from } nach { $to } schalten { $count } Kontakte; kurz kann { $codes } zu sehen sein.
table-note-gap = Kleinste Lücke zwischen benachbarten Gutbereichen: { $gap } % der Referenz, zwischen { $lower } und { $upper }.
table-note-overlap = Kein Messwert unterscheidet { $lower } von { $upper }.
table-note-dirty = Ein verschmutzter Kontakt in „{ $position }“: ab { $ohms } Ω in Kontakt { $contact } gelesen als „{ $into }“.
table-note-saturation = Vollausschlag ab { $nominal } W/m², frühestens ab { $earliest } W/m²: mehr Licht ändert nichts.
table-note-saturation-nominal = Vollausschlag ab { $nominal } W/m²: mehr Licht ändert nichts.
table-note-least-span = Von abgedeckt bis beleuchtet mindestens { $span }, bei dem Licht, das die Quelle dieses Werts nennt; die Tabelle sagt nicht, welches.
table-note-shop-light = Keine Reaktion unter LED- oder Leuchtstofflampen ist normal (allgemein üblich, ohne Quelle).
table-note-absolute = Drücke sind Absolutdrücke.
table-note-gauge = Drücke sind Überdrücke: über der Luft ringsum.
run-judge-beyond = ein Messwert von `{ $id }` lässt sich bei dieser Temperatur nicht beurteilen: seine Toleranz reicht über das Ende seiner Tabelle hinaus
run-judge-no-instrument = eine Entscheidung mit Schutzband muss wissen, wie sicher die Messwerte sind, und dazu gibt es KEINE ANGABE: { $what }; Messgeräte mit --instrument nennen
run-judge-high-voltage = STOPP: mehr als 60 V DC ist Hochvolt; das gehört nicht hierher und nur in die Hände von Fachkundigen
run-judge-too-many-ohms = kein Werkstattmessgerät zeigt so viele Ohm; OL schreiben für eine unterbrochene Leitung
run-instrument-twice = `{ $id }` ist ein zweites Messgerät seiner Art; ein Multimeter und ein Thermometer nennen
run-judge-no-sensor = `{ $id }` ist kein Temperatursensor, und nur deren Messwerte werden bisher beurteilt; `bayleaf faults { $id }` führt auf, was seine Fehler anzeigen

## Checklists: what is wrong with them

rule-check-airbag = Schritt `{ $step }` liegt an Airbag-Leitungen
rule-check-airbag-help = weglassen: an Leitungen von Airbag und Gurtstraffer keine Messspitze, keine Ohmmessung, kein Abziehen
wanted-no-airbag-step = erwartet: keine Arbeit an Airbag-Leitungen
rule-check-costly-first = Schritt `{ $step }` ({ $cost }) steht vor `{ $next }` ({ $cheaper })
rule-check-costly-first-help = den billigeren zuerst fragen, oder mit `because = "…"` sagen, warum nicht
wanted-cheap-first = erwartet: der billigere Schritt zuerst
label-cheaper = der nächste Schritt kostet weniger
rule-check-start = einen Schritt `{ $name }` zum Beginnen gibt es nicht
rule-check-dangling = der Ausgang nach `{ $name }` führt nirgendwohin
rule-check-ending-unnamed = Ende `{ $ending }` nennt kein Teil und keinen Kabelstrang
rule-check-ending-unnamed-help = `what = "…"` ergänzen
wanted-what = erwartet: `what` daneben
rule-check-exits = Schritt `{ $step }` hat { $count ->
        [0] keinen Ausgang
        [one] einen Ausgang
       *[other] { $count } Ausgänge
    }
rule-check-exits-help = zwei von `yes`, `no`, `undecided` angeben oder alle drei, jeder der Name eines Schritts oder eines Endes
wanted-exits = erwartet: zwei oder drei Ausgänge
rule-check-no-vehicle = Checkliste `{ $id }` gilt für kein Fahrzeug: keines, das sie nennt, hat System `{ $system }`
rule-check-loop = die Antworten führen im Kreis: { $way }
rule-check-loop-help = diesen Ausgang zu einem späteren Schritt führen oder zu einem Ende
wanted-onward = erwartet: ein Weg weiter
label-loop-begins = hier beginnt der Kreis
rule-check-expects-nothing = Schritt `{ $step }` sagt nicht, worauf ja die Antwort ist
rule-check-expects-twice = Schritt `{ $step }` sagt zweimal, worauf ja die Antwort ist
wanted-expect = erwartet: entweder `expect` oder `test`
rule-check-no-number = Schritt `{ $step }` misst { $unit } und erwartet keine Zahl: `{ $expect }`
wanted-limit = erwartet: ein Bereich oder ein Grenzwert, etwa `11.5 V or more`
label-unit = hier ist ein Messwert verlangt
rule-check-same-name = `{ $name }` ist ein Schritt und ein Ende
wanted-other-name-here = erwartet: ein anderer Name
label-step-of-name = der Schritt dieses Namens
rule-check-questions = Schritt `{ $step }` stellt mehr als eine Frage
rule-check-no-question = Schritt `{ $step }` stellt keine Frage
wanted-question = erwartet: eine Frage mit einem Fragezeichen am Ende
rule-check-opens = Schritt `{ $step }` eines elektrischen Papiers öffnet den Kältemittelkreis: `{ $said }`
rule-check-opens-help = bei `refer to licensed refrigerant work` enden, oder ein Papier mit `work = "refrigerant"` daraus machen
wanted-closed = erwartet: ein Kreis, der geschlossen bleibt
label-work = ein elektrisches Papier
rule-check-nowhere = Schritt `{ $step }` sagt nicht, wo
rule-check-nowhere-help = `pins = ["C2/7", "C2/14"]` ergänzen oder `where = "…"`
wanted-where = erwartet: ein Ort
rule-check-no-view = Schritt `{ $step }` misst an Stecker `{ $connector }`, der nicht sagt, wie er gesehen wird
wanted-seen = erwartet: ein Stecker mit `view` und `side`
rule-check-replacing = Schritt `{ $step }` tauscht ein Teil, um es zu prüfen: `{ $said }`
rule-check-replacing-help = messen, was das Teil von seinen Leitungen unterscheidet; tauschen gehört in ein Ende
wanted-measurement = erwartet: eine Messung
rule-check-same-exit = jede Antwort auf Schritt `{ $step }` führt nach `{ $to }`
rule-check-same-exit-help = den Schritt weglassen oder eine Antwort anderswohin führen
wanted-other-place = erwartet: ein anderer Ort
label-first-exit = wie hier
rule-check-unreachable = keine Antwort führt zu Schritt `{ $name }`
wanted-reached-step = erwartet: ein Ausgang oder `start`, der hierher führt
rule-check-unreached-ending = keine Antwort führt zu Ende `{ $name }`
wanted-reached-ending = erwartet: ein Ausgang, der hierher führt
label-start = hier beginnt es
rule-check-deep = Checkliste `{ $id }` ist { $found } Kästen tief
rule-check-wide = Checkliste `{ $id }` ist { $found } Kästen breit
rule-check-split-help = in zwei aufteilen, die erste endet bei der zweiten
wanted-map-fits = erwartet: höchstens { $most } auf der Seite ihrer Übersicht

check-cost-look = ansehen
check-cost-measure = messen
check-cost-unplug = abziehen
check-cost-dismantle = zerlegen
## Importing a table

import-how = Aus { $file }: { $rows ->
    [one] eine Zeile
   *[other] { $rows } Zeilen
}, Zellen getrennt durch { $separator }, { $decimal }.
import-semicolon = Semikolons
import-tab = Tabulatoren
import-bar = senkrechte Striche
import-comma = Kommas
import-decimal-point = Dezimalpunkt
import-decimal-comma = Dezimalkomma
import-title = Über den Spaltenköpfen: { $title }
import-column = Spalte { $number } „{ $head }“: { $used }, { $unit }
import-temperature = Temperatur
import-low = kleinster Widerstand
import-nominal = Nennwiderstand
import-high = größter Widerstand
import-left-out = ausgelassen
import-empty = leer
import-skipped = { $lines ->
    [one] Eine Zeile enthält keinen Punkt und wurde ausgelassen.
   *[other] { $lines } Zeilen enthalten keinen Punkt und wurden ausgelassen.
}
import-no-cells = die Datei hat keine Spalten
import-cells-help = Zellen trennen Semikolons, Tabulatoren, senkrechte Striche oder Kommas, eine Tabellenzeile je Zeile
import-no-rows = keine Zeile enthält zwei Zahlen
import-rows-help = eine Tabellenzeile ist eine Temperatur und ihr Widerstand; ein nie geschlossenes Anführungszeichen verdeckt alle Zeilen dahinter
import-no-temperature = keine Spalte ist als Temperatur zu erkennen
import-temperature-help = ihre Einheit im Spaltenkopf nennen, etwa `t (°C)`, oder mit --temperature angeben
import-no-resistance = die Spalten sind weder ein Widerstand noch Minimum, Nennwert und Maximum
import-resistance-help = Spaltenköpfe wie `R (kΩ)` oder `min kΩ`, `nom kΩ`, `max kΩ`; eine Einheit, die der Datei fehlt, mit --resistance angeben, andere Ohmspalten herausnehmen
import-two-units = Widerstände in { $one } und in { $two }
import-unit-of-curve = die Widerstände einer Kennlinie stehen in Ω oder kΩ, diese in { $unit }
import-units-help = alle auf eine Einheit bringen, Ω oder kΩ, und auf eine Temperaturskala
import-either = `{ $cell }` kann Tausender oder Dezimalstellen meinen
import-either-help = mit --decimal comma oder --decimal point sagen, welches
import-mixed = `{ $cell }` hat ein Dezimalkomma, andere Zahlen einen Dezimalpunkt
import-mixed-help = alle auf eines bringen oder mit --decimal sagen, welches gilt
import-no-point = diese Zeile hat keine Temperatur mit ihrem Widerstand
import-no-number = `{ $cell }` ist keine lesbare Zahl
import-number-help = Tausender trennt das andere Zeichen, ein Leerzeichen oder ein Apostroph, in Dreiergruppen
import-other-unit = `{ $cell }` steht nicht in { $unit } wie ihre Spalte
label-left-out = ausgelassen
label-decimal-comma = ein Dezimalkomma
label-decimal-point = ein Dezimalpunkt
wanted-cells = erwartet: Zellen mit Zahlen
wanted-temperature-column = erwartet: eine Spalte in °C, °F oder K
wanted-resistance-columns = erwartet: eine Spalte in Ω oder kΩ, oder drei
wanted-one-unit = erwartet: dieselbe Einheit in jeder Zeile
wanted-curve-unit = erwartet: Ω oder kΩ
wanted-decimal-told = beides kann gemeint sein
wanted-plain-number = erwartet: eine Zahl

## Checklists and symptom indexes on paper

doc-checklist = Checkliste
doc-symptoms = Symptomliste
fact-expect = Soll
fact-step-time = Zeit
fact-pins = Pins
fact-first-tests = erste Prüfungen
check-title = { $title } · { $system }
check-only = nur { $vehicles }
check-intro = { $steps ->
        [one] Ein Schritt
       *[other] { $steps } Schritte
    }, { $longest } auf dem längsten Weg. Bei Schritt 1 beginnen, Finger darauf. Tun, was er sagt, den Messwert aufschreiben, eine Antwort ankreuzen, dorthin gehen, wohin sie zeigt. Ein Buchstabe auf Schwarz ist ein Ende: die Arbeit ist getan oder wird übergeben. Zwei Antworten passen oder der Messwert schwankt: unentschieden; fehlt dafür das Feld, vorher fragen.
check-box-vehicle = Fahrzeug
check-box-reached = Erreichtes Ende
check-card = Karte { $card }
# A mated plug is probed from its wires, but drawn from its face.
check-mirrored = { $view }; an den Leitungen gespiegelt
check-cost = { $cost } · { $time } [{ $mark }]
check-do = tun
check-where = wo
check-pins = Pins
check-state = Zustand
check-expect = Soll
check-at = { $window } bei { $temperature }
check-figures = Zahlen
check-yes = ja
check-no = nein
check-undecided = unentsch.
check-undecided-short = ?
check-go = zu { $mark }
check-go-end = Ende { $mark }
check-start = hier beginnen
check-from = aus { $steps }
check-ending-part = Teil
check-ending-harness = Kabelstrang
check-ending-unit = Steuergerät
check-ending-refer = an Sachkundige für Kältemittel verweisen
check-ending-refer-short = an Sachkundige
check-ending-no-fault = kein Fehler gefunden
check-map = Übersicht
check-map-key = Weiße Kästen sind Schritte, schwarze Buchstaben Enden. ? ist unentschieden. Die dicke Linie ist der Weg, der am längsten dauert.
check-longest = Längster Weg: { $way }, { $time }
check-index-title = Symptome · { $system }
check-index-intro = Das Symptom suchen, wie der Fahrer es nennt. Wo eine Checkliste steht, diese nehmen; ihre ersten Schritte stehen hier, so weit die Antworten gut sind. Wo keine steht, in dieser Reihenfolge prüfen, das Billigste zuerst.
check-no-checklist = keine Checkliste
check-at-most = höchstens { $time }

paper-symptom = Symptom
paper-endings = Enden
paper-tick = erreicht
paper-stop = STOPP
paper-because = warum jetzt
paper-complaint = Symptom
paper-checklist = Checkliste
paper-first-tests = Erste Prüfungen, in dieser Reihenfolge
paper-cards = Karten

# Proof sheets

# unchecked: Nachweisblatt for the sheet that shows each figure before it was rounded
doc-proof = Nachweisblatt
proof-title = Nachweis: { $title }
proof-of = Zu Karte { $card } „{ $title }“, deren Inhalt den Fingerabdruck { $fingerprint } hat. Für eine Karte mit anderem Fingerabdruck ist dieses Blatt kein Nachweis.
proof-counted = { $computed } Zahlen der Karte sind berechnet; jede steht unten mit dem Wert, aus dem sie gerundet wurde ({ $digits } gültige Stellen). { $given } sind exakt oder stehen auf der Karte, wie die Spezifikationen oder ihre festen Worte sie haben. Grenzwerte sind nach innen gerundet: auf beim unteren, ab beim oberen.
proof-nothing = Keine Zahl dieser Karte ist berechnet.
proof-own = eigene Regel
proof-nearest = nächste
proof-up = auf
proof-down = ab
proof-part-key-figures = Große Zahlen
proof-part-table = Haupttabelle
proof-part-readings = Was ein Messwert bedeutet
proof-part-faults = Fehler
proof-part-example = Rechenbeispiel
proof-part-drawings = Zeichnungen
proof-part-given = Angaben
proof-part-next = Nächste Schritte
proof-part-drops = Abfälle
proof-part-pins = Pins
proof-part-fluids = Kältemittel
proof-part-vents = Luft an den Ausströmern
proof-part-measuring = So wird gemessen
proof-part-signature = Fehler über der Temperatur
proof-part-motion = Bewegung
proof-part-positions = Stellungen
proof-part-conditions = Bedingungen
proof-part-timeline = Zustände über der Zeit
proof-part-notes = Anmerkungen
proof-part-coil = Spule
proof-part-modes = Betriebsarten
proof-part-run = Kürzester Durchgang
proof-part-tests = Prüfungen
proof-part-instruments = Messgeräte
proof-part-questions = Fragen
paper-formulas = Formeln, mit ihren Quellen
paper-proof-inputs = Werte der Spezifikationen, auf denen die Zahlen beruhen
paper-key = Schlüssel in den Spezifikationen
paper-printed = gedruckt
paper-unrounded = ungerundet
paper-rounded = gerundet
paper-exact = Zahlen, die exakt sind wie gedruckt
paper-as-given = Zahlen, die stehen wie angegeben
paper-signed = Mit den Quellen verglichen, technische Leitung
paper-signed-name = Name
paper-signed-date = Datum
paper-signed-signature = Unterschrift

# Index of all documents

doc-index = Dokumentenverzeichnis
index-title = Alle Dokumente: { $shop }
index-applies = jedes System und Fahrzeug des Satzes
index-intro = Ein Papier in der Halle gilt nur, wenn sein Code der ist, der hier steht. Revision und Fingerabdruck sind die auf jeder Seite.
index-id = Kennung
index-kind = Art
index-name = Titel
index-system = System
index-page-count = Seiten
index-issue = Revision, Fingerabdruck
index-not-given = KEINE ANGABE
index-no-source = ohne Quelle
index-uncounted = –
index-total = { $documents ->
    [one] 1 Dokument
   *[other] { $documents } Dokumente
}
index-pages = { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
}
index-pages-uncounted = Seiten werden gezählt, wenn alles gedruckt ist
index-lacking = { $not-given } Werte KEINE ANGABE und { $no-source } ohne Quelle im ganzen Satz, jeder einmal gezählt, auf wie vielen Papieren er auch steht

spec-unknown-size = `{ $key }`: kein Papierformat heißt `{ $found }`
doc-strip-card = Streifenkarte
card-rests-on = Werte, Quellen, Schaltung und Fehler: Karte { $card }.
run-past-edge = Seite { $page }: `{ $text }` ragt über die Seite hinaus
run-text-on-text = Seite { $page }: `{ $text }` liegt auf `{ $other }`
run-too-many-sides = es braucht { $pages } Seiten und darf höchstens { $sides } haben
rule-size-not-offered = { $kind }: für `{ $size }` nicht gesetzt
run-size-not-offered = { $kind }: für `{ $size }` nicht gesetzt; gesetzt für: { $sizes }
run-fits = { $reason }; es passt: { $fits }
run-fits-nothing = { $reason }; kein anderes Format und kein größerer Schritt passt
run-fits-step = Schritt { $step }
run-fits-two-sides = zwei Seiten

## Was ein ausgegebenes PDF in sich trägt

enclosed-figures = Werte von { $id } wie gedruckt, und was über sie entschied
enclosed-specs = Spezifikationen, aus denen dieses Papier entstand
enclosed-huge = größer als { $most } MiB: das ist kein ausgegebenes Papier
enclosed-unread = nicht lesbar: { $reason }
enclosed-no-pdf = keine PDF-Datei
enclosed-damaged = beschädigt: was darin steckt, ist nicht lesbar
enclosed-foreign = PDF eines anderen Programms: es trägt keine Werte einer Ausgabe
enclosed-draft = ein Entwurf: nur ein ausgegebenes Papier trägt seine Spezifikationen und Werte
enclosed-newer = sein Verzeichnis hat die Form { $format }, diese Version kennt { $known }: neuere Version verwenden
enclosed-findings = die Regeln von heute finden Fehler in seinen Spezifikationen, der erste: { $first }
enclosed-no-document = aus seinen Spezifikationen entsteht kein { $id }
enclosed-paper = { $id } r{ $revision } vom { $date } von { $by }, hergestellt mit { $tool }
enclosed-same = { $tool } berechnet aus seinen Spezifikationen dieselben Werte
enclosed-differ = { $tool } berechnet aus seinen Spezifikationen andere Werte: { $figures ->
    [one] ein Text
   *[other] { $figures } Texte
}
enclosed-figure = { $place }: gedruckt { $printed }, heute { $today }
enclosed-digits = um { $digits } in der letzten Stelle
enclosed-wording = { $texts ->
    [one] ein Text
   *[other] { $texts } Texte
} ohne Werte lauten anders: Wörter, keine Werte
enclosed-refused = { $path }: { $why }

# Das Register.
register-newer = dieses Register hat das Format { $format }: ein neueres bayleaf hat es geschrieben
register-newer-help = jene Version oder eine neuere benutzen; von der Datei wurde nichts gelesen und nichts geändert
wanted-register-format = erwartet: ein Format bis { $known }
register-no-number = `{ $key }` ist { $written }
register-no-date = `{ $key }` ist kein Datum
register-no-id = `{ $id }` ist keine Kennung eines Dokuments
wanted-document-id = erwartet: die Kennung einer Karte, oder zwei Kennungen mit einem Punkt dazwischen, etwa CUR-SENSORS.AMB-11
register-no-pull-list = `{ $number }` ist keine Nummer einer Einzugsliste
wanted-pull-list = erwartet: ein Tag und eine Nummer, etwa 2026-11-28/1
wanted-date = erwartet: ein Tag wie 2026-11-28
register-conflict = eine Zusammenführung hat dieses Register ungeklärt hinterlassen
register-conflict-help = die Einträge beider Seiten behalten und die Zeilen mit den Zeichen löschen; was dann doppelt dasteht, wird gefunden
wanted-register-entries = erwartet: Einträge ohne Zeichen einer Zusammenführung
register-date-back = { $id } wurde vor der vorigen Ausgabe ausgegeben
label-register-before = die vorige Ausgabe
register-withdrawn-twice = { $id } ist zweimal zurückgezogen
register-issued-twice = { $id } hat zwei Ausgaben { $revision }
register-twice-help = zwei Leute haben es geschrieben: klären, welches der beiden Blätter gilt, den Eintrag des anderen löschen und neu ausgeben, falls beide irgendwo hängen
register-gap = { $id } hat eine Ausgabe { $number }, aber nicht die davor
register-gap-help = ein Eintrag wurde gelöscht oder seine Nummer geändert: aus der Versionsverwaltung zurückholen
wanted-revision = erwartet: Ausgabe { $number }
register-not-issued = { $id } hat keine Ausgabe { $revision }
wanted-revision-to = erwartet: 1 bis { $newest }
wanted-issued-id = erwartet: die Kennung eines ausgegebenen Dokuments
register-date-before = das liegt vor dem, worauf es folgt
wanted-not-before = erwartet: { $date } oder später

## Die Befehle des Registers

status-new = neu
status-changed = geändert
status-gone = nicht mehr im Satz, zurückzuziehen
status-layout = nur Gestaltung: sagt dasselbe und sieht anders aus
status-withdrawn = zurückgezogen
status-same = wie ausgegeben
status-count = { $state }: { $count }
status-lost = die letzte Ausgabe liegt nicht im Ordner der ausgegebenen Blätter: welche Werte sich geändert haben, ist nicht zu sagen
status-moved = { $place }: { $old } → { $new }
status-held = ausgehängt: { $holder } (r{ $revision })
status-vehicles = { $count ->
    [one] Ein Fahrzeug hat
   *[other] { $count } Fahrzeuge haben
} Prüfblätter mit alten Werten:
issue-nothing = Nichts fällig: alle Blätter sind wie ausgegeben.
issue-none = nichts wurde ausgegeben
issue-gone = { $id } ist nicht mehr im Satz: zurückziehen
issue-same-name = { $id } und das früher ausgegebene { $other } wären auf manchen Datenträgern eine Datei: eine andere Kennung wählen
issue-done = { $count ->
    [one] Ein Blatt
   *[other] { $count } Blätter
} ausgegeben, eingetragen in { $path }
issue-dry = { $count ->
    [one] Ein Blatt würde
   *[other] { $count } Blätter würden
} ausgegeben; nichts wurde geschrieben
withdraw-none = nichts wurde zurückgezogen
withdraw-again = { $id } ist seit { $date } zurückgezogen
issue-line = abhängen: { $id } r{ $revision }: { $place }
register-no-document = unter der Kennung { $id } wurde nichts ausgegeben
register-no-document-near = unter der Kennung { $id } wurde nichts ausgegeben; gemeint ist { $near }?
holders-added = jetzt ausgehängt: { $copy }
holders-again = das steht schon im Register: { $copy }
holders-moved = verlegt: { $copy }, jetzt { $to }
holders-back = abgenommen: { $copy }
holders-nothing-back = ein solches Exemplar hat niemand
holders-several = { $holder } hat mehrere Exemplare von { $id }: mit --place sagen, welche
holders-none = { $holder } hat kein Exemplar von { $id }
holders-none-near = { $holder } hat kein Exemplar von { $id }; gemeint ist { $near }?
holders-withdrawn = { $id } ist zurückgezogen: kein Exemplar davon sollte irgendwo hängen
holders-old = veraltet, gültig ist r{ $revision }
holders-of-withdrawn = zurückgezogen
holders-since = { $copy }, seit { $date }
holders-nobody = Niemand hat ein Exemplar.
verdict-current = { $id } r{ $revision } vom { $date } von { $by } ist gültig
verdict-superseded = { $id } r{ $revision } vom { $date } von { $by } ist seit { $since } durch r{ $newest } ersetzt, von { $who }: { $why }
verdict-withdrawn = { $id } r{ $revision } vom { $date } von { $by } ist seit { $since } zurückgezogen, von { $who }: { $why }
verdict-other = das ist nicht { $id } r{ $revision } vom { $date }, das den Code { $code } hat: verlesen, oder nicht aus diesem Register
verdict-draft = das ist ein Entwurf, den niemand ausgegeben hat
verdict-draft-same = das ist ein Entwurf, den niemand ausgegeben hat; er sagt dasselbe wie { $id } r{ $revision } vom { $date }
verdict-unknown = { $code } ist unbekannt: aus diesem Register wurde kein Blatt mit diesem Code ausgegeben
run-register-demo = der eingebaute Beispielsatz kann nicht ausgegeben werden: mit `bayleaf new specs` einen eigenen beginnen
run-register-locked = das Register benutzt { $who } (Prozess { $process }) seit { $since }, seit { $minutes ->
    [one] einer Minute
   *[other] { $minutes } Minuten
}: warten, bis das fertig ist, und noch einmal starten
run-register-locked-unknown = jemand anders benutzt das Register: warten, bis das fertig ist, und noch einmal starten
run-clock-back = die Uhr dieses Rechners sagt { $today }, im Register steht ein Eintrag vom { $latest }: die Uhr stellen oder das Datum mit --date angeben
run-before-its-time = { $date } liegt vor { $latest }, dem letzten Eintrag von { $id } im Register: mit --date ein späteres angeben
run-link-outside = { $path } ist eine Verknüpfung aus dem Ausgabeordner hinaus, nach { $to }: durch einen Ordner ersetzen oder jenen mit --out nennen
run-stray = { $path } ist von einem Vorgang übrig, der nicht zu Ende kam: es war nie gültig, der nächste Vorgang entfernt es
run-lost = { $count ->
    [one] Ein ausgegebenes Papier fehlt
   *[other] { $count } ausgegebene Papiere fehlen
} in { $path } ({ $names }): aus einer Sicherung zurückholen; von einem verlorenen Papier kann niemand sagen, was sich seither geändert hat
issue-pull = { $copies ->
    [one] Ein Exemplar ist
   *[other] { $copies } Exemplare sind
} abzuhängen: { $path }
withdraw-dry = { $copies ->
    [one] Ein Exemplar wäre
   *[other] { $copies } Exemplare wären
} abzuhängen; nichts wurde geschrieben
