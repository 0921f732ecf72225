# German. The same ids and gaps as en.ftl, in the same order.
# No native tradesman has checked this table. Single words of which the translator is not sure carry
# a line `# unchecked: …` above them; everything else is unchecked by a speaker, too, but usual in the trade.
#
# Glossary. English | German, as it stands everywhere below
#   control unit | Steuergerät            unit (short for it) | Steuergerät, SG in heads of columns
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
#   open circuit | Unterbrechung          shorted to ground, to battery | Kurzschluss nach Masse, nach Plus
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
#   checklist | Checkliste                symptom index | Beanstandungsverzeichnis
#   report | Ergebnisbericht              proof sheet | Nachweisblatt
#   worst case | ungünstigster Fall       rounded inward | nach innen gerundet
#   common practice, no source | allgemein üblich, ohne Quelle
#   DANGER, WARNING, CAUTION, NOTICE | GEFAHR, WARNUNG, VORSICHT, HINWEIS
#   isolate, lock, wait, prove dead | freischalten, gegen Wiedereinschalten sichern, warten, Spannungsfreiheit feststellen
# What the user types in a spec (keys, kinds, file names, commands, numbers with a point) stays as it is typed.

## How findings are headed

finding-error = Fehler
finding-warning = Warnung
finding-help = Hilfe
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

