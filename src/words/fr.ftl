# French. Every fixed word of papers and findings; code names words by id only.
# Gaps are filled with the user's own text or with another word of this table.
#
# UNCHECKED: no native tradesman has read this table. It was written from general
# knowledge of the language and of the trade. A line `# unchecked: …` above a word
# marks a particular doubt.
#
# Rules of this table: instructions in the infinitive; keys, file names and commands
# in backticks stay as the user types them; « » for quotation; a narrow no-break space
# (U+202F) before ; : ! ? % and inside « »; decimal comma in prose and formulas,
# decimal point in what is typed into a spec; signal words as in ANSI Z535.6 and
# ISO 3864 in French (DANGER, AVERTISSEMENT, ATTENTION, AVIS). Zero takes the form [one]
# in French: that form shows its number, else nought would print as 1.
#
# Glossary
#   control unit            calculateur
#   reference               (tension de) référence
#   return · ground         retour (capteur) · masse
#   signal · feed           signal · alimentation
#   pull-up, pull-down      résistance de rappel pull-up, pull-down; short: pull-up
#   resistor · resistance   résistance for both
#   thermistor · B value    thermistance CTN · valeur B
#   sensor · transducer     capteur · capteur de pression, transducteur
#   light sensor            capteur d’ensoleillement, de lumière
#   cabin air               air habitacle
#   outside air             air extérieur
#   evaporator outlet       sortie évaporateur
#   vent, outlet · intake   aérateur · entrée d’air
#   recirculation           recyclage
#   blend · distribution    mixage · répartition
#   door · linkage          volet · tringlerie
#   actuator                actionneur (de volet)
#   blower · blower step    pulseur · vitesse
#   driver (electronics)    étage de puissance, commande
#   driver (person)         conducteur
#   relay · fuse            relais · fusible
#   low side · high side    côté masse · côté plus
#   duty (of a pulse)       rapport cyclique; short: RC
#   cooling duty            puissance frigorifique massique (kJ/kg d’air sec)
#   control valve           électrovanne de commande de cylindrée
#   displacement            cylindrée
#   clutch                  embrayage de compresseur
#   coil · winding          bobine · enroulement
#   freewheel diode         diode de roue libre
#   drop                    chute (de tension)
#   harness · wire · wiring faisceau · fil · câblage
#   connector, plug · pin   connecteur · voie
#   mating face             (vue) côté accouplement
#   wire entry              (vue) côté fils
#   latch (of a connector)  verrou
#   mated · unmated         connecté · débranché
#   back-probe              mesurer par l’arrière du connecteur
#   key on · key off        contact mis · contact coupé
#   open circuit · shorted  coupure, circuit ouvert · en court-circuit
#   short to ground, battery  court-circuit à la masse, au plus
#   leak (electric)         fuite
#   contact resistance      résistance de contact
#   wiper · track           curseur · piste
#   stop (of travel)        butée; low, high: basse, haute
#   travel · dead band      course · zone morte
#   ladder                  réseau de résistances
#   play · jam · slip       jeu · blocage · glissement
#   reading · window        relevé · fenêtre
#   nominal · tolerance     nominal · tolérance
#   limit · service limit   limite · limite de service
#   set-point               consigne
#   guard band              bande de garde
#   uncertainty U           incertitude élargie U (k = 2)
#   decision rule           règle de décision
#   pass · fail · undecided CONFORME · NON CONFORME · INDÉCIS
#   believes                croit, lu comme
#   fault · fault finding   défaut · diagnostic
#   told apart              distingué
#   complaint               plainte (du client)
#   bay, shop               atelier
#   soak, soaked            stabilisation (thermique), stabilisé
#   leads (of a meter)      cordons
#   card · wall card        fiche · fiche murale
#   test sheet              feuille d’essais
#   result report           compte rendu
#   checklist               liste de contrôle
#   symptom index           index des symptômes
#   proof sheet             feuille de justification
#   fingerprint             empreinte
#   panel                   façade (de climatisation)
#   mode · control point    mode · point de commande
#   forced · free           imposé · libre
#   don’t care              indifférent
#   request                 demande
#   granted · held back     accordée · retenue
#   permits · inhibits      autorise · interdit
#   sets · lets go          s’établit · se relâche
#   threshold · release     seuil · seuil de retour
#   hold time · delay       temps d’attente · temporisation
#   refrigerant             fluide frigorigène
#   superheat · subcooling  surchauffe · sous-refroidissement
#   suction · discharge     aspiration · refoulement
#   absolute · gauge        absolue · relative
#   gauge (instrument)      manomètre
#   saturation · dew point  saturation · point de rosée
#   clamp (of an output)    bornes de la sortie
#   NOT GIVEN · no source   NON DONNÉ · sans source
#   spec · set · finding    spécification · jeu · constat
#   common practice         usage courant
#   rounded inward          arrondi vers l’intérieur
#   worst case              cas le plus défavorable

## How findings are headed

finding-error = erreur
finding-warning = avertissement
finding-help = aide
finding-note = note
did-you-mean = vouliez-vous dire `{ $word }` ?

## Dimensions

dimension-temperature = température
dimension-temperature-difference = écart de température
dimension-resistance = résistance
dimension-voltage = tension
dimension-current = intensité
dimension-ratio = pourcentage
dimension-beta = valeur B
dimension-power = puissance
dimension-dissipation = constante de dissipation
dimension-pressure = pression
dimension-length = longueur
dimension-inductance = inductance
dimension-frequency = fréquence
dimension-duration = durée
dimension-irradiance = éclairement énergétique
dimension-specific-enthalpy = enthalpie massique
dimension-wire-size = section de fil

## Labels: what was expected, or what stands there

wanted-text = attendu : un texte entre guillemets droits
wanted-glyph = attendu : un caractère que les polices possèdent
wanted-shorter = attendu : { $longest } caractères au plus
wanted-value = attendu : une valeur et son unité entre guillemets droits, par exemple "2.2 kΩ"
wanted-texts = attendu : une liste de textes, par exemple ["…", "…"]
wanted-number = attendu : un nombre
wanted-table = attendu : une table
wanted-tables = attendu : une liste de tables
wanted-list = attendu : une liste
wanted-key = attendu : une clé `{ $key }` ici
wanted-one-of = attendu : l’un de { $words }
wanted-quantity = attendu : { $dimension }, par exemple { $examples }
wanted-decimal-point = attendu : un point décimal, et des espaces entre les milliers
wanted-nothing-more = rien n’est attendu ici
wanted-low-first = attendu : la borne inférieure d’abord
wanted-interval = attendu : deux bornes, par exemple { $examples }
wanted-zero-or-more = attendu : zéro ou plus
wanted-smaller-tolerance = attendu : une tolérance inférieure à la valeur elle-même
wanted-accuracy = attendu : une forme telle que `0.5 % + 2 digits`
wanted-row = attendu : [température, résistance] ou [température, min, nominal, max], en nombres seulement
wanted-pair = attendu : deux valeurs entre guillemets droits, par exemple ["0.6 A", "5 %"]
wanted-low-voltage = attendu : { $greatest } V au plus
wanted-two-points = attendu : deux points ou plus
wanted-a-change = attendu : des points de cylindrées différentes
wanted-control-point = attendu : une intensité de 0 A ou plus et une cylindrée de 0 % à 100 %
wanted-stated-direction = attendu : le sens indiqué par `more_current`
wanted-reached = attendu : une intensité qu’une bobine chaude atteint
wanted-at-most-whole = attendu : 100 % au plus
wanted-exponent = attendu : plus de 0 et { $greatest } au plus
wanted-wire-size = la norme donne { $sizes } mm²
wanted-no-gauge-class = aucune classe n’est attendue pour un numéro de jauge
wanted-conductors = attendu : 2 (aller et retour), ou 1 si la caisse sert de retour
wanted-wire-drop = attendu : une chute inférieure à celle-ci
wanted-position = attendu : ["nom", "101"], ["nom", 2] ou ["nom", "open"]
wanted-toml = attendu : du TOML valide
wanted-utf8 = attendu : du texte en UTF-8
wanted-id = attendu : lettres A à Z, chiffres, `-` et `_`, { $longest } au plus
wanted-id-table = attendu : une table avec un identifiant, par exemple [{ $kind }.UN-ID]
wanted-beta = attendu : { $least } K à { $greatest } K
wanted-coefficients = attendu : a, b et c d’une thermistance, pour des ohms et des kelvins
wanted-coefficients-4 = attendu : a, b, c et d d’une thermistance, pour des kelvins
wanted-silicon = attendu : a de { $least } à { $greatest } (1/K) et b inférieur au centième de a (1/K²)
wanted-no-class = attendu : une classe seulement pour une courbe du modèle "platinum"
wanted-no-b = pas de telle clé pour un capteur dont la résistance croît
wanted-real-temperature = attendu : une température qui existe
wanted-magnitude = d’ordinaire { $least } à { $greatest }
wanted-above-zero = attendu : plus que zéro
wanted-two-rows = attendu : deux lignes ou plus
wanted-min-nominal-max = attendu : min ≤ nominal ≤ max
wanted-same-columns = attendu : autant de colonnes que dans la première ligne
wanted-falling = attendu : moins d’ohms que dans la ligne plus froide
wanted-rising = attendu : plus d’ohms que dans la ligne plus froide
wanted-near = ses voisines conduisent à environ { $ohms } Ω
wanted-inside = attendu : { $low } à { $high }
wanted-one-tolerance = attendu : une seule façon d’indiquer la tolérance
wanted-divider = attendu : { $least } à { $greatest }
wanted-defined = attendu : une table [{ $kind }.…] de cet identifiant dans le jeu
wanted-instrument = attendu : { $wanted }
wanted-same-connector = attendu : les deux voies sur un même connecteur
wanted-pin = attendu : connecteur et voie, par exemple `C2/7`
wanted-listed-pin = attendu : une voie de la liste [connector.{ $connector }.pins]
wanted-fewer-rows = attendu : un pas qui donne { $most } lignes au plus
wanted-of-system = attendu : un élément du système `{ $system }`
wanted-tests = attendu : une liste `test` d’une entrée ou plus
wanted-key-off = attendu : `key off` pour ce réglage du multimètre
wanted-unmated = attendu : `false` : des ohms sur une pièce isolée
wanted-probes = attendu : `pins` avec `plus` et `minus`
wanted-seen-side = attendu : `{ $key }` dans le connecteur { $connector }
wanted-other-pin = attendu : une autre voie que la première
wanted-meter-for = attendu : un réglage qui affiche cette grandeur
wanted-limit-unit = attendu : une unité de { $what }
wanted-no-limit = aucune limite n’est attendue : cette grandeur n’en a pas
wanted-with-curve = attendu : volts ou ohms d’un capteur, ohms d’une bobine, ou volts d’un capteur de pression
wanted-delay = attendu : `after` ou `within`
wanted-row-length = attendu : { $wanted } valeurs, une par colonne
wanted-origin-of = seul un élément { $kind } a ce chiffre
wanted-origin-form = attendu : la forme { $words } pour cela
wanted-origin-quantity = c’est une autre grandeur que celle qui est relevée
wanted-component = attendu : un type devant, l’un de { $words }
wanted-coded-contacts = attendu : `contacts` ou un `ladder` dans son actionneur
wanted-step = attendu : un nombre entier de 1 à { $steps }
wanted-duty = attendu : des parts de 0 % à 100 %
wanted-positive-frequency = attendu : plus de 0 Hz
wanted-month = attendu : une année et un mois, par exemple "2021-01"
wanted-some-vehicle = aucun véhicule n’a été construit alors
wanted-three-tests = attendu : trois essais au plus
wanted-test-of-sheet = attendu : un essai qui figure sur sa feuille
label-its-sheet = sa feuille
label-meter-drives = ce réglage injecte un courant propre
label-meter-shows = le réglage du multimètre
label-quantity = ce qui est relevé
label-component = l’objet de l’essai
label-form = sa forme
wanted-tolerance = attendu : une tolérance, par exemple ± 1 %
wanted-lamination = attendu : { $least } mm à { $most } mm
wanted-guard-size = attendu : plus de 0 %, jusqu’à 300 %
wanted-no-guard = attendu seulement avec `decision = "guarded"`
wanted-not-empty = attendu : un véhicule et un groupe, ou plus
wanted-columns = attendu : des unités : une température, et une résistance ou trois (min, nominal, max)
wanted-as-many-cells = attendu : une cellule par colonne
wanted-falling-points = attendu : moins d’ohms à chaud, comme toute thermistance CTN
wanted-fitted = attendu : un véhicule équipé de ce système
wanted-every-control = attendu : chaque point de commande de son système dans l’une des trois listes
wanted-forced = attendu : un point de commande ou plus sous `forces`
wanted-order = attendu : un `order`, comme dans les autres modes du système
wanted-forcing-mode = attendu : un mode qui l’impose
wanted-two-values = attendu : deux valeurs ou plus
wanted-value-word = attendu : un mot qui ne puisse passer pour une case qui n’impose rien
wanted-no-separate = aucun `separate` n’est attendu ici
wanted-source = attendu : une source
wanted-unit = attendu : { $unit }
wanted-flag = attendu : true ou false, sans guillemets
wanted-other-name = attendu : un nom que tout disque accepte
wanted-elevation = attendu : une clé `elevation` ici
label-needs-elevation = ses chiffres dépendent de la pression atmosphérique du lieu
label-its-fluid = sa saturation n’est connue que dans ce domaine
label-takes-cabin-air = aspire l’air habitacle
label-other-step = l’autre vitesse est ici
wanted-release-below = attendu : moins que { $threshold }
wanted-release-above = attendu : plus que { $threshold }
wanted-measured = attendu : { $quantity }
wanted-after = attendu : plus tard que { $last }
wanted-trace = attendu : `trace` dans cette condition
label-threshold = le seuil
label-watches = ce qui la surveille
label-never-together = à partir d’ici, plus rien ne passe
label-scenario = le scénario
label-scenario-length = la durée du scénario
wanted-inside-reference = attendu : 0 % à 100 %
wanted-above-low-stop = attendu : une fenêtre qui commence au-dessus de { $low }
wanted-driver-of = attendu : un consommateur de `{ $system }`
wanted-pins = { $count ->
    [one] attendu : { $count } voie
   *[other] attendu : { $count } voies
}
wanted-contacts = attendu : 1 à { $most } noms
wanted-code-length = attendu : { $count ->
    [one] un code de { $count } chiffre, ou 0
   *[other] un code de { $count } chiffres, ou un numéro de contact inférieur à { $count }
}, ou "open"
wanted-own-code = attendu : un code qu’aucune autre position n’a
wanted-one-contact = attendu : un seul contact commuté entre voisines
wanted-own-window = attendu : une fenêtre propre
wanted-smaller-resistor = attendu : { $most } au plus pour le plein soleil, 1000 W/m²
wanted-clamp = attendu : de { $low } au plus à { $high } au moins
wanted-line = attendu : un point au-dessus et au-delà du point inférieur
wanted-above = attendu : plus que { $low }
label-first = donné ici pour la première fois
label-second = donné de nouveau ici
label-first-use = utilisé ici pour la première fois
label-second-use = utilisé de nouveau ici
label-first-row = la première ligne
label-colder-row = la ligne plus froide
label-columns = la table a des colonnes min et max
label-other-tolerance = l’autre est ici
label-its-curve = sa courbe
label-class = la classe est donnée ici
label-its-decision = la décision est donnée ici
label-its-kind = son type est donné ici
label-its-system = son système est donné ici
label-connector = le connecteur
label-control = le point de commande
label-values = ses valeurs sont données ici
label-order = ce mode a un rang
label-first-mode = ce mode
label-second-mode = fait la même chose ici
label-in-celsius = en °C, ce serait { $low } à { $high }
label-in-fahrenheit = en °F, ce serait { $low } à { $high }
label-needs-shop = ce document porterait le nom de l’atelier
label-direction = le sens est indiqué ici
label-free-run = l’intensité à vide
label-wire-system = le système du fil
label-contact-names = les noms des contacts
label-battery = la batterie est donnée ici
label-its-size = sa section est donnée ici
label-window = la fenêtre
label-low-stop = la butée basse
label-low-end = l’extrémité basse
label-position-before = la position précédente
label-photocurrent = le photocourant

## Loading

load-empty-folder = aucune spécification dans `{ $path }`
load-empty-folder-help = y placer des fichiers `*.toml`, ou nommer un autre dossier avec `--specs`
load-not-a-folder = `{ $path }` n’est pas un dossier
load-unreadable = lecture impossible : { $reason }
load-too-large = un fichier de { $size } est trop gros pour une spécification ; au plus { $largest }
load-too-many = plus de { $most } fichiers et dossiers ici
load-too-many-help = nommer avec `--specs` le dossier qui contient les spécifications
load-too-large-help = sortir du dossier ce qui n’est pas une spécification, ou partager le fichier
load-not-utf8 = l’octet { $byte } n’est pas du texte UTF-8
load-not-utf8-help = enregistrer le fichier en UTF-8 dans l’éditeur

## Reading

spec-syntax = TOML non valide : { $reason }
spec-more-syntax = TOML non valide à { $count } autres endroits
spec-unknown-kind = type de table inconnu `{ $word }`
spec-unknown-key = clé inconnue `{ $word }` dans `{ $name }`
rule-card-key = `{ $key }` ne dit rien sur une fiche qui porte `{ $about }`
wanted-card-about = elle appartient à une fiche qui porte { $words }
spec-missing-one-of = `{ $name }` ne dit pas de quoi il s’agit
spec-two-keys = `{ $first }` et `{ $second }` ne vont pas ensemble : il s’agit d’une seule chose
spec-missing-key = `{ $name }` n’a pas de `{ $key }`
spec-loose-key = `{ $word }` se trouve hors de toute table
spec-no-id = `{ $word }` dans `{ $kind }` n’a pas de table à soi
spec-bad-id = `{ $id }` ne peut pas être un identifiant
spec-duplicate = `{ $name }` est donné deux fois
spec-duplicate-help = renommer l’un des deux, ou le supprimer
spec-wrong-type = `{ $key }` est une valeur du mauvais type : { $found }
spec-empty-text = `{ $key }` est vide
spec-empty-table = `{ $name }` ne dit rien
spec-empty-list = `{ $key }` est une liste vide
spec-quoted-number = `{ $key }` est un nombre entre guillemets
wanted-keys = attendu : une clé ou plus
wanted-entries = attendu : une entrée ou plus
wanted-bare-number = attendu : un nombre sans guillemets
spec-no-glyph = `{ $key }` contient le caractère { $code }, qu’aucune page ne peut montrer
spec-long-text = `{ $key }` a { $length } caractères
spec-empty-text-help = l’écrire, ou omettre la clé : ce qui manque s’imprime NON DONNÉ ou disparaît, et une clé obligatoire est réclamée
spec-empty-high-voltage-help = nommer les organes haute tension à votre façon ; n’omettre la clé que si le véhicule n’en a pas : sans elle, aucun document ne dit STOP
spec-unknown-word = `{ $key }` ne peut pas être `{ $found }`
spec-bad-row = une ligne qui n’est pas un point d’une courbe
spec-bad-pair = une entrée de `{ $key }` n’est pas une paire
spec-bad-position = une ligne qui n’est pas une position de contacts

## Quantities

misread-not-a-number = `{ $key }` ne contient aucun nombre lisible : `{ $written }`
misread-decimal-comma = `{ $key }` a une virgule dans un nombre : `{ $written }`
misread-unit-missing = `{ $key }` a un nombre sans unité : `{ $written }`
misread-unit-unknown = `{ $key }` a une unité inconnue `{ $unit }`
misread-wrong-dimension = `{ $key }` est du genre « { $wanted } », mais `{ $unit }` est une unité du genre « { $found } »
misread-temperature-for-difference = `{ $key }` est une température là où il faut un écart : `{ $written }`
misread-trailing = `{ $key }` contient plus qu’une grandeur : `{ $rest }`
misread-reversed = `{ $key }` va de la borne haute à la borne basse : `{ $written }`
misread-not-an-interval = `{ $key }` n’est pas un intervalle : `{ $written }`
misread-negative = `{ $key }` a une tolérance inférieure à zéro : `{ $written }`
misread-below-zero = `{ $key }` est inférieur à zéro : `{ $written }`
misread-exponent = `{ $key }` a un nombre avec exposant : `{ $written }`
wanted-written-out = attendu : le nombre en toutes décimales, dans une unité à sa taille, par exemple 2.2 kΩ
misread-tolerance-too-large = `{ $key }` a une tolérance aussi grande que la valeur elle-même : `{ $written }`
misread-other-unit = `{ $key }` est dans une autre unité : `{ $unit }`
misread-not-an-accuracy = `{ $key }` n’est pas une exactitude de multimètre : `{ $written }`

## Rules

rule-beta = une valeur B de { $beta } n’est celle d’aucune thermistance
rule-beta-help = vérifier les chiffres, et que l’unité est K
rule-coefficients = ces coefficients donnent { $resistance } à 25 °C
rule-coefficients-not-falling = avec ces coefficients, la résistance ne baisse pas quand la température monte
rule-coefficients-slope = ces coefficients donnent une valeur B de { $beta } vers 25 °C
wanted-slope = le b d’une thermistance donne { $least } K à { $greatest } K
rule-coefficients-help = vérifier les signes et les puissances de dix ; des coefficients pour kΩ sont à convertir pour Ω
rule-coefficients-of-ratio = ces coefficients donnent un capteur de 1 Ω à 25 °C, comme ceux de R divisé par R à 25 °C
rule-coefficients-of-ratio-help = ajouter `resistance = "…"`, la résistance nominale à laquelle ils appartiennent
rule-silicon = `{ $written }` n’est pas un coefficient de capteur au silicium
rule-silicon-help = vérifier les signes et les puissances de dix ; des coefficients en %/K sont à diviser par 100, ceux en %/K² aussi
rule-many-ranges = { $count } calibres pour une fonction d’un multimètre
wanted-few-ranges = { $most } au plus sont distingués
rule-same-range = deux calibres d’un multimètre finissent à `{ $written }`
wanted-another-range = attendu : une autre fin que celle de l’autre calibre
rule-range-digit = le calibre jusqu’à `{ $to }` a une résolution de `{ $digit }`, plus fine qu’un calibre plus petit
wanted-range-digit = attendu : `{ $digit }` ou plus, comme le calibre plus petit
rule-bits = aucun convertisseur n’a { $written } bits
rule-plausible = aucun capteur ne peut être lu dans `{ $written }` de la référence
wanted-plausible-ends = attendu : deux bornes de 0 % à 100 %, la seconde au-dessus de la première
wanted-bits = attendu : un nombre entier de 6 à 24
rule-looks-broken = à { $end }, dans sa plage, un bon capteur sort de { $written } de la référence (à partir de { $limit })
wanted-plausible = hors de là, le calculateur tient la ligne pour coupée ou en court-circuit
rule-looks-broken-help = vérifier les limites avec les données du calculateur, ou réduire la plage du capteur
rule-magnitude = `{ $written }` est d’un ordre de grandeur inhabituel
rule-magnitude-impossible = `{ $written }` est d’un ordre de grandeur impossible
rule-magnitude-help = vérifier le préfixe de l’unité avec la source
rule-not-positive = `{ $written }` n’est pas supérieur à zéro
rule-dissipation = `{ $written }` dans l’air en mouvement est moins que dans l’air calme
rule-dissipation-help = vérifier les deux avec la source, et les échanger s’ils sont inversés
wanted-at-least = attendu : { $least } ou plus
label-still-air = l’air calme est donné ici
rule-absolute-zero = la ligne `{ $row }` est en dessous du zéro absolu
rule-few-rows = une courbe demande deux lignes ou plus ; la table en a { $count }
rule-limits-order = limites inversées à la ligne `{ $row }`
rule-mixed-columns = la ligne `{ $row }` a d’autres colonnes que la première
rule-equal-temperatures = la température { $temperature } figure sur deux lignes
rule-not-falling = la résistance ne baisse pas de la ligne `{ $colder }` à la ligne `{ $hotter }`
rule-not-falling-help = vérifier les deux lignes avec la source ; cette table a moins d’ohms à chaud, comme une thermistance CTN
rule-not-rising = la résistance ne monte pas de la ligne `{ $colder }` à la ligne `{ $hotter }`
rule-not-rising-help = vérifier les deux lignes avec la source ; cette table a plus d’ohms à chaud, comme le platine et le silicium
rule-outlier = la ligne `{ $row }` s’écarte de { $percent } % de la courbe de ses voisines
rule-outlier-help = vérifier cette ligne avec la source : une faute de frappe ?
rule-outlier-digit = `{ $number }` conviendrait, à un chiffre près : vérifier cette ligne avec la source
rule-outlier-swapped = `{ $number }` conviendrait, deux chiffres étant échangés : vérifier cette ligne avec la source
rule-outlier-point = `{ $number }` conviendrait, le point étant déplacé : vérifier cette ligne avec la source
rule-outlier-prefix = `{ $number }` conviendrait, à un facteur mille près : vérifier l’unité de cette ligne avec la source
rule-range-beyond-table = `{ $range }` dépasse la table, qui finit à { $low } et { $high }
rule-range-beyond-formula = `{ $range }` dépasse le domaine de calcul de cette courbe, { $low } à { $high }
rule-range-beyond-class = la classe { $class } vaut de { $low } à { $high } : au-delà, les limites sont NON DONNÉ
rule-range-beyond-class-help = réduire la plage, ou donner la tolérance en `temperature` si la fiche technique de l’élément en a une là
rule-range-beyond-sensor = `{ $range }` dépasse la plage du capteur lui-même, { $low } à { $high }
rule-tolerance-and-columns = la tolérance est donnée, et la table a aussi des colonnes pour elle
rule-tolerance-twice = la tolérance est donnée en kelvins et en pour-cent
rule-tolerance-and-class = la tolérance est donnée par une classe et d’une autre façon
rule-class-of-no-platinum = la classe `{ $class }` est celle d’éléments en platine, et cette courbe n’est pas celle du platine
rule-class-of-no-platinum-help = écrire la courbe `{"{"} model = "platinum", resistance = "100 Ω" {"}"}`, ou la tolérance en `temperature` ou `resistance`
rule-tolerance-no-b = `{ $key }` fait croître une tolérance avec la valeur B d’une thermistance, et ce capteur n’en a pas
rule-tolerance-no-b-help = l’omettre si le pourcentage vaut à toute température ; sinon donner `temperature`, la `class` d’un élément en platine, ou une table avec min et max
rule-tolerance-whole = une tolérance de { $written } ne laisse rien de la valeur
rule-tolerance-incomplete = aucune limite calculable : la tolérance n’a pas de `{ $key }`
rule-tolerance-incomplete-help = n’écrire `beta = "0 %"` que si la source dit que le même pourcentage vaut à toute température
rule-divider = une résistance de { $resistor } ne peut pas lire un capteur de { $sensor } à { $temperature }
rule-no-such = aucun élément { $kind } `{ $id }`
rule-wrong-instrument = l’instrument `{ $id }` n’est pas du type { $wanted }
rule-pin-twice = la voie { $pin } porte un signal et sert deux fois
rule-pin-twice-systems-help = deux systèmes peuvent avoir des connecteurs du même nom : donner à chacun un identifiant propre
spec-bad-face-row = ce n’est pas une rangée d’un dessin de connecteur
wanted-face-row = attendu : une liste de repères de voies, par exemple `[1, 2, "", 3]` ; `""` est une place sans alvéole
rule-face-no-view = un connecteur est dessiné, mais sans dire d’où il est vu
wanted-view = attendu : `view` à côté : `mating-face` ou `wire-entry` ; les deux sont symétriques
rule-face-empty = le dessin n’a aucune voie
rule-face-rows = le dessin a { $rows } rangées
wanted-face-rows = une fiche a la place de { $most } rangées
rule-face-places = une rangée a { $places } places
wanted-face-places = une fiche a la place de { $most } places par rangée
rule-face-mark = le repère `{ $mark }` est trop long pour sa voie
wanted-face-mark = attendu : { $longest } caractères au plus
rule-face-lengths = une rangée de { $places } places sous une de { $first }
wanted-face-length = attendu : autant de places que dans la première rangée
rule-face-lengths-help = écrire `""` pour une place sans alvéole
rule-face-twice = la voie { $mark } est dessinée deux fois
rule-face-lacks = { $count ->
    [one] la voie { $marks } est dans la liste et pas dans le dessin
   *[other] les voies { $marks } sont dans la liste et pas dans le dessin
}
wanted-face-pin = attendu : chaque voie de la liste dans `rows`
label-face = le dessin
label-face-row = la première rangée
rule-airbag-card = le connecteur { $id } est du câblage d’airbag ou de prétensionneur : pas de fiche pour lui
rule-airbag-face = le connecteur { $id } est du câblage d’airbag ou de prétensionneur : il n’est pas dessiné
wanted-no-airbag = à supprimer
label-airbag = c’est dit ici
rule-airbag-help = personne ne sonde, ne mesure en ohms ni ne débranche ce câblage sans la procédure de son constructeur ; si ce n’en est pas, écrire `airbag = false`
rule-connector-unused = rien dans le jeu n’a de voie sur le connecteur { $id }
wanted-used-connector = attendu : un connecteur sur lequel un capteur, un actionneur ou un consommateur a une voie
rule-view-no-rows = le connecteur { $id } n’a pas de dessin qu’une autre vue pourrait montrer
wanted-rows = attendu : `rows` dans sa table
rule-two-connectors = une extrémité a des voies sur deux connecteurs, { $first } et { $second }
rule-pin-form = `{ $pin }` n’est pas une voie
rule-no-such-pin = le connecteur { $connector } n’a pas de voie { $pin }
rule-strip-rows = un pas de { $step } fait un tableau de { $rows } lignes
rule-other-system = l’élément { $kind } `{ $id }` est du système `{ $theirs }`, le document est pour `{ $system }`
rule-empty-group = un groupe de la feuille `{ $id }` n’a aucun essai
rule-no-such-component = aucun élément `{ $word }` à essayer
rule-test-no-state = l’essai `{ $id }` ne dit pas son état : un relevé sans `{ $key }` ne signifie rien
rule-test-powered = l’essai `{ $id }` mesure des ohms sur un circuit alimenté
rule-test-parallel = l’essai `{ $id }` mesure des ohms sur une pièce connectée : d’autres chemins sont en parallèle
rule-test-no-pins = l’essai `{ $id }` ne dit pas où poser les pointes : ses voies sont NON DONNÉ
rule-test-no-pins-help = son élément n’a pas de voies pour cette mesure à cet endroit
rule-test-no-view = la voie { $pin } est vue sur un connecteur sans `{ $key }` : son symétrique est une autre voie
rule-test-one-pin = les deux pointes sont sur la voie { $pin }
rule-test-meter = l’essai `{ $id }` ne peut pas être lu avec `{ $meter }`
rule-test-unit = cette limite est du genre « { $found } »
rule-test-no-curve = l’essai `{ $id }` ne porte sur rien dont une courbe se calcule
rule-test-no-delay = « { $event } » vient après une autre étape, mais rien ne dit quand
rule-test-two-delays = « { $event } » a deux délais
rule-test-row-length = la ligne `{ $name }` a { $found } valeurs
rule-test-origin = `{ $word }` n’est pas un chiffre de cet essai
rule-test-no-step = le pulseur n’a pas de vitesse { $step }
rule-test-duty = une part du temps ne peut pas être `{ $written }`
rule-test-frequency = `{ $written }` n’est pas la fréquence d’une ligne commutée
rule-test-month = `{ $written }` n’est pas un mois
rule-test-no-vehicle = l’essai `{ $id }` n’est pour aucun véhicule du système `{ $system }`
rule-test-other-system = le mode `{ $id }` est du système `{ $theirs }`
rule-test-lacks = il manque à la forme `{ $form }` ce dont elle a besoin
rule-test-twice = la forme `{ $form }` a ses limites deux fois
rule-report-evidence = le compte rendu `{ $id }` a la place de { $most } relevés
rule-report-other = la feuille `{ $sheet }` n’a pas d’essai `{ $test }`
rule-empty-sheet = la feuille `{ $id }` n’a pas de véhicules ou pas d’essais à imprimer
rule-no-vehicle = la feuille `{ $id }` n’imprime rien : aucun véhicule n’a le système `{ $system }`
rule-no-limits = `{ $written }` n’a pas de tolérance : aucune limite en volts ne peut en être calculée
rule-no-limits-help = écrire `{ $written } ± …` d’après son document ; ± 0 % seulement pour une valeur exacte
rule-mode-twice = le mode `{ $id }` nomme deux fois le point de commande `{ $control }`
rule-mode-twice-help = un point de commande est imposé, ou libre, ou indifférent : n’en garder qu’un
rule-mode-other-system = le point de commande `{ $control }` est du système `{ $theirs }`, le mode est de `{ $system }`
rule-mode-silent = le mode `{ $id }` ne dit pas ce qu’il fait de { $controls }
rule-mode-silent-help = l’écrire sous `forces` avec sa valeur, ou dans la liste `free` ou `dont_care` ; rien n’est supposé
rule-mode-value = le point de commande `{ $control }` n’a pas de valeur `{ $value }`
rule-mode-forces-nothing = le mode `{ $id }` n’impose rien, donc n’essaie rien
rule-mode-forces-nothing-help = ajouter ce qu’il impose d’après sa source, ou omettre le mode
rule-mode-order-twice = deux modes ont le rang { $order }
rule-mode-order-whole = `{ $order }` n’est pas un rang parmi les modes
wanted-whole = attendu : un nombre entier, par exemple 4
rule-mode-order-missing = le mode `{ $id }` n’a pas d’`order`, mais d’autres modes du système `{ $system }` en ont
rule-mode-same = les modes `{ $first }` et `{ $second }` font la même chose de chaque point de commande
rule-mode-same-help = vérifier les deux avec la source ; s’ils sont vraiment pareils, une ligne du tableau suffit
rule-control-never-forced = aucun mode du système `{ $system }` n’impose le point de commande `{ $id }`
rule-control-never-forced-help = ajouter un mode qui l’impose, ou omettre le point de commande : aucun mode ne peut montrer s’il fonctionne
rule-control-values = le point de commande `{ $id }` a moins de deux valeurs : rien ne peut montrer qu’il bouge
rule-control-value-twice = le point de commande `{ $id }` a deux fois la valeur `{ $value }`
rule-control-taken = `{ $value }` ne peut pas être la valeur d’un point de commande
rule-panel-scales = les échelles de la façade `{ $id }` ne sont pas la conversion l’une de l’autre : les extrémités basses diffèrent de { $low } K, les hautes de { $high } K
rule-panel-scales-help = vérifier les deux avec la source. Si la façade a deux échelles propres, aucune ne doit être calculée de l’autre : le dire avec `separate = {"{"} value = true, source = "…" {"}"}`
rule-panel-not-separate = la façade `{ $id }` est dite à échelles séparées, mais elles sont la conversion l’une de l’autre : les extrémités basses diffèrent de { $low } K, les hautes de { $high } K, pas plus que l’arrondi
rule-panel-not-separate-help = vérifier les deux échelles avec la source, ou supprimer `separate`
rule-panel-separate-source = la façade `{ $id }` est dite à échelles séparées, mais pas d’où on le sait
rule-panel-separate-source-help = écrire `separate = {"{"} value = true, source = "…" {"}"}`, ou donner une `source` à la façade
rule-digits-help = vérifier les chiffres et l’unité avec la source
rule-no-current-limits = `{ $written }` n’a pas de tolérance : aucune limite de résistance ou d’intensité ne peut en être calculée
rule-negative = `{ $written }` est inférieur à zéro
rule-high-voltage = STOP : { $written }, c’est de la haute tension
rule-high-voltage-help = laisser les organes haute tension hors des spécifications : rien n’est calculé ni imprimé pour eux. Seule une personne habilitée y travaille : séparer, condamner, attendre, vérifier l’absence de tension
rule-nominal-battery = une batterie nominale de { $written } n’est pas de celles que la batterie a
rule-control-few = une cylindrée demande deux points ou plus
rule-control-flat = la cylindrée est la même à tous les points
rule-control-point = `{ $point }` n’est pas un point d’un compresseur
rule-control-same = l’intensité du point `{ $point }` est donnée deux fois
rule-control-direction = du point `{ $less }` à `{ $more }`, plus d’intensité ne signifie pas { $direction }
rule-control-direction-help = vérifier les points, puis le sens, avec la source : les deux sortes de vannes existent
rule-ceiling = { $current } n’est pas toujours atteint : { $battery } fait passer au plus { $most } dans une bobine chaude de { $resistance }
rule-ceiling-help = vérifier la résistance et la température de la bobine ; si elles sont justes, une intensité inférieure n’est pas un défaut
rule-rated-coil = `{ $written }` est une température de référence inhabituelle pour une bobine
rule-rated-coil-help = `at` est la température à laquelle `resistance` vaut ; l’échauffement de la bobine est `temperature`
rule-copper-range = `{ $written }` dépasse les températures du calcul du cuivre
rule-duty = un rapport cyclique de { $written } est plus que toujours fermé
rule-blower-step = une vitesse de { $written } met plus que la batterie aux bornes du moteur
rule-step-tolerance = une tolérance de { $written } de la batterie ne laisse rien d’une vitesse
rule-drop-whole = une chute de `{ $written }` ne laisse rien de la batterie
wanted-below = attendu : moins que { $greatest }
rule-blower-order = la vitesse `{ $faster }` n’est pas au-dessus de la vitesse `{ $slower }`
label-step-before = la vitesse précédente
rule-exponent = un exposant de { $written } n’est celui d’aucun pulseur
rule-gauge-class = { $size } est un numéro de jauge, qui n’a pas de classe
rule-wire-size = { $size } n’est pas une section de la CEI 60228 : aucune résistance maximale n’est connue
rule-wire-size-help = seule la résistance nominale du cuivre massif est calculée, ρ/A avec 1/58 Ω mm²/m ; un fil réel a 3 à 15 % de plus. Les sections pour véhicules routiers sont dans ISO 6722 et ISO 19642
rule-conductors = un courant ne peut pas traverser { $written } conducteurs l’un après l’autre
rule-wire-system = le consommateur `{ $driver }` appartient au système `{ $system }`
rule-wire-drop = le fil perd { $lost } à { $at }, plus que sa limite de { $limit }
rule-wire-drop-help = vérifier section, longueur et intensité avec la source ; un bon fil ne peut pas tenir la limite
rule-reserved-name = `{ $id }` ne peut pas être un nom de fichier sur tout disque
rule-same-name = `{ $id }` nomme deux documents, ou deux qui ne diffèrent que par les majuscules
rule-lamination = `{ $key }` de { $written } n’est pas une cote de plastification de fiches
rule-guard-size = une bande de garde de { $written } de U ne sert à rien
rule-guard-size-help = écrire `guard = "100 %"` pour w = U ; pour des limites sans bande de garde, `decision = "simple"`
rule-guard-alone = une bande de garde de { $written }, mais la décision n’en demande pas
rule-guard-alone-help = écrire `decision = "guarded"`, ou supprimer la bande de garde
rule-no-shop = le jeu ne nomme aucun atelier
rule-no-shop-help = ajouter [shop] avec `title` et `paper`
rule-elevation-missing = l’atelier n’a pas d’altitude : les pressions relatives et les chiffres de l’air sont NON DONNÉ
rule-elevation-help = ajouter `elevation = "… m"` à [shop], son altitude au-dessus de la mer
rule-elevation-outside = `{ $written }` n’est pas une altitude que couvre l’atmosphère type
rule-elevation-unusual = `{ $written }` est une altitude inhabituelle pour un atelier
rule-elevation-unit-help = vérifier les chiffres et l’unité, `m` ou `ft`
rule-beyond-saturation = `{ $range }` dépasse le domaine de l’équation de saturation de { $fluid }
rule-unit-twice = l’unité `{ $unit }` est donnée deux fois
rule-above-critical = `{ $range }` dépasse { $critical }, le point critique de { $fluid } : il n’y a pas de saturation
rule-duty-no-limits = `{ $written }` n’a pas de tolérance : aucune limite de la température aux aérateurs ne peut en être calculée
rule-no-such-air = `{ $written }` n’est pas la température de l’air autour d’un véhicule
rule-no-such-share = `{ $written }` n’est pas une part possible
rule-cabin-missing = une position aspire l’air habitacle, mais il n’y a pas de `{ $key }` : ses chiffres sont NON DONNÉ
rule-cabin-help = ajouter `cabin = "… °C"` et `cabin_humidity = "… %"`
rule-vent-rows = ces pas font un tableau de { $rows } lignes
rule-stop-outside = une butée ne peut pas donner { $written } de la référence
rule-stop-nominal = { $written } est hors de sa propre fenêtre
rule-stops-reversed = la butée basse ({ $low }) donne plus que la haute ({ $high })
rule-stops-reversed-help = `low` est la butée qui a le moins de volts, quel que soit le sens du volet : échanger les deux
rule-stops-overlap = les fenêtres des butées, { $low } et { $high }, se recouvrent : un relevé dans les deux n’est à aucune butée
rule-contact-count = { $count ->
    [one] { $count } contact
   *[other] { $count } contacts
} sur un actionneur
rule-contact-pins = { $count ->
    [one] { $count } voie pour { $names } contacts
   *[other] { $count } voies pour { $names } contacts
}
rule-stall = un moteur qui prend { $held } bloqué, et { $free } à vide
rule-stall-help = un moteur bloqué prend plusieurs fois son intensité à vide : les deux sont-ils échangés ?
rule-code-length = le code de la position `{ $position }` ne convient pas aux contacts présents
rule-code-twice = les positions `{ $first }` et `{ $second }` ont le même code
rule-code-jump = de `{ $from }` à `{ $to }`, { $count } contacts commutent
rule-code-jump-help = vérifier les codes ; s’ils sont justes, { $codes } peuvent apparaître un instant au passage
rule-ladder-overlap = aucun relevé ne distingue `{ $first }` ({ $first_window }) de `{ $second }` ({ $second_window })
rule-ladder-overlap-help = vérifier résistances et tolérances avec la source ; si elles sont justes, la pièce ne se juge pas ici en volts
rule-light-saturates = avec { $resistor }, le relevé reste à son extrémité à partir de { $irradiance }
rule-ratio-outside = une sortie ne peut pas être à { $written } de la référence
rule-clamp-cuts = les bornes de la sortie, { $clamp }, coupent une partie de la droite de { $low } à { $high }
rule-line-reversed = l’extrémité haute ({ $high }) n’est pas au-dessus de la basse ({ $low })
rule-line-reversed-help = échanger `low` et `high`, ou vérifier les deux avec la source
rule-transducer = ces valeurs ne font pas un capteur de pression : { $reason }
sheet-thermometer = Thermomètre
sheet-multimeter = Multimètre
sheet-own-meter = Pour les lignes qui le nomment
kind-thermometer = thermomètre
kind-multimeter = multimètre
kind-pressure-gauge = manomètre
kind-hygrometer = hygromètre
rule-request-release = une condition qui s’établit à { $threshold } et se relâche à { $release }, plus loin du même côté
rule-request-release-help = les deux sont-ils échangés, ou `side` devrait-il être l’autre ?
rule-request-no-hysteresis = seuil et seuil de retour sont tous deux { $threshold } : il n’y a pas d’hystérésis
rule-request-no-hysteresis-help = s’ils se confondent, la demande bat ; chercher à quelle valeur la condition se relâche
rule-request-quantity = { $watch } `{ $id }` ne mesure pas la grandeur « { $quantity } »
rule-request-quantity-help = nommer ce qui surveille cette valeur, ou `reading = "…"` si elle ne se voit qu’en lecture de paramètres
rule-request-system = `{ $id }` appartient au système `{ $system }`
rule-request-range = { $written } est hors de ce que montre son capteur
rule-request-range-help = vérifier l’unité et le signe avec la source, et quel capteur la surveille
rule-request-never = la demande `{ $id }` ne peut jamais être accordée : des conditions sur une même valeur s’excluent
rule-request-never-help = suivre la valeur vers le haut et vers le bas dans le tableau des conditions : quel côté est à l’envers ?
rule-trace-order = les temps d’une courbe ne croissent pas à { $written }
rule-requested-time = la demande ne peut pas exister depuis { $written }
rule-no-trace = le scénario ne dit pas ce que fait la valeur de « { $title } »
rule-no-trace-help = ajouter `trace = [["0 s", "…"], …]` : un point suffit pour une valeur qui reste où elle est
kind-sensor = capteur
kind-transducer = capteur de pression

## What a value is

fact-applicability = Équipe
fact-high-voltage = Haute tension
fact-rated-resistance = Résistance nominale
fact-rated-temperature = Nominale à
fact-beta = Valeur B
fact-coefficient-a = Coefficient a (1/K)
fact-coefficient-b = Coefficient b (1/K)
fact-coefficient-c = Coefficient c (1/K)
fact-coefficient-d = Coefficient d (1/K)
fact-coefficient-b-squared = Coefficient b (1/K²)
fact-coefficients-for = Coefficients pour R divisé par
fact-resistance-at-zero = Résistance à 0 °C
fact-table = Table, points
fact-tolerance = Tolérance
fact-tolerance-resistance = Tolérance de R
fact-tolerance-class = Classe de tolérance (CEI 60751)
fact-tolerance-at = Tolérance de R donnée à
fact-tolerance-beta = Tolérance de B
fact-circuit = Circuit
fact-pull-up = Résistance pull-up
fact-pull-down = Résistance pull-down
fact-resistor-tolerance = Tolérance de résistance
fact-reference = Référence
fact-reference-tolerance = Tolérance de référence
fact-series = Résistance série
fact-parallel = Résistance parallèle
fact-system-battery = Batterie pendant la mesure
fact-switched = 2ᵉ résistance, commutée
fact-reader = R de l’autre calculateur
fact-reader-reference = Réf. de l’autre calculateur
fact-return-offset = Retour au-dessus de la masse
fact-bits = Convertisseur, bits
fact-plausible = Plausible, de la référence
fact-dissipation-still = Dissipation, air calme
fact-dissipation-moving = Dissipation, air en mouvement
fact-range = Plage
fact-service-limit = Limite de service
fact-probe = Sonde
fact-test-value = Valeur de l’essai
fact-location = Endroit
fact-own-pins = Voies à son connecteur
fact-control-unit-pins = Voies au calculateur
fact-component-pins = Voies au capteur
fact-signal-pin = Voie du signal
fact-return-pin = Voie du retour
fact-ground-pin = Voie de masse
fact-reference-pin = Voie de référence
fact-motor-pin = Voie du moteur
fact-contact-pin = Voie du contact
fact-common-pin = Voie commune des contacts
fact-contact-in-pin = Voie du contact, alimentation
fact-contact-out-pin = Voie du contact, charge
fact-moves = Déplace
fact-track = Piste
fact-track-ends = Chaque bout de piste
fact-wiper-contact = Contact du curseur
fact-wiper-load = Charge sur le curseur
fact-wiper-load-to = Charge sur le curseur, vers
fact-stop-low = Butée basse, V/Vref
fact-stop-high = Butée haute, V/Vref
fact-stop-nominal = Butée nominale, V/Vref
fact-contact-closed = Contact fermé, au plus
fact-positions = Positions
fact-ladder-resistor = Résistance du réseau
fact-ladder-end = Résistance en bout de réseau
fact-sweep-time = D’un bout à l’autre, max
fact-sweep-step = Plus grand saut
fact-sweep-dead-band = Zone morte, de la course
fact-sweep-hysteresis = Aller-retour, de la course
fact-free-run-current = Intensité moteur, à vide
fact-stall-current = Intensité moteur, bloqué
fact-plain-dc = Moteur sans électronique
fact-recalibration = Réapprentissage des butées
fact-photocurrent = Photocourant
fact-photocurrent-at = Photocourant donné à
fact-photocurrent-tolerance = Tolérance du photocourant
fact-dark-current = Courant d’obscurité, max
fact-load-resistor = Résistance de charge
fact-least-span = Couvert à éclairé, min
fact-line-low-pressure = Point bas, pression
fact-line-low-ratio = Point bas, V/Vref
fact-line-high-pressure = Point haut, pression
fact-line-high-ratio = Point haut, V/Vref
fact-span-accuracy = Exactitude, étendue
fact-clamp = Bornes de la sortie
fact-wire = Fil de la voie
fact-latch = Verrou du connecteur
fact-face = Dessin du connecteur
fact-expected = Attendu à la voie
fact-sensors-at = Température des capteurs
fact-view = Vue du connecteur
fact-side = Côté du connecteur
fact-accuracy = exactitude
fact-volts = volts
fact-ohms = ohms
fact-digit = digit
fact-input = Entrée du multimètre
fact-control-values = Valeurs du point de commande
fact-control-observe = Comment voir le point de commande
fact-mode-forces = Imposé par le mode
fact-mode-time = Délai du mode
fact-panel-celsius = Échelle en °C
fact-panel-fahrenheit = Échelle en °F
fact-panel-low-mark = L’extrémité basse signifie
fact-panel-high-mark = L’extrémité haute signifie
fact-panel-separate = Deux échelles séparées
fact-leads = cordons
fact-thermocouple = type de thermocouple
fact-soak = stabilisation
fact-decision = Règle de décision
fact-guard = Bande de garde, part de U
fact-elevation = Altitude de l’atelier
fact-fluid = Fluide frigorigène
fact-superheat = Surchauffe
fact-subcooling = Sous-refroidissement
fact-at-rest = Tenu pour saturé à l’arrêt
fact-low-gauge = Manomètre d’aspiration
fact-high-gauge = Manomètre de refoulement
fact-thermometer = Thermomètre
fact-hygrometer = Hygromètre
fact-accuracy-of-full-scale = exactitude, de la pleine échelle
fact-full-scale = pleine échelle
fact-accuracy-of-humidity = exactitude, d’humidité relative
# unchecked: « puissance frigorifique massique » for heat taken from each kg of dry air
fact-duty = Puissance frigorifique, par kg d’air sec
fact-duty-tolerance = Tolérance de la puissance
fact-outlet-humidity = Humidité de l’air sortant
fact-ambient = Air extérieur
fact-humidity = Humidité de l’air extérieur
fact-evaporator = Évaporateur maintenu entre
fact-cabin = Air habitacle
fact-cabin-humidity = Humidité de l’air habitacle
fact-outside-share = Part d’air extérieur, en masse
fact-battery = Batterie
fact-battery-nominal = Batterie, nominale
fact-switch-drop = Chute dans le commutateur
fact-diode-drop = Chute de diode
fact-frequency = Fréquence
fact-inductance = Inductance
fact-duties = Rapports cycliques
fact-more-current = Plus d’intensité signifie
fact-displacement = Cylindrée, points
fact-polarity = Commuté
fact-supply-drop = Chute côté plus, limite
fact-ground-drop = Chute côté masse, limite
fact-contact-drop = Chute du contact, limite
fact-control-pin = Voie de commande
fact-feed-pin = Voie d’alimentation
fact-coil-temperature = Température de la bobine
fact-isolation = Bobine à boîtier
fact-motor-current = Intensité du moteur
fact-motor-voltage = Intensité donnée à
fact-motor-exponent = Exposant de l’intensité
fact-blower-control = Commande
fact-blower-resistors = Résistances des vitesses
fact-blower-steps = Vitesses, part de batterie
fact-step-tolerance = Tolérance de vitesse, part de batterie
fact-bypass-drop = Chute du relais de shunt
fact-blower-wiring = Câblage, aller et retour
fact-wire-size = Section du conducteur
fact-wire-class = Classe du conducteur
fact-wire-length = Longueur
fact-wire-conductors = Conducteurs en série
fact-wire-current = Intensité
fact-wire-temperature = Température du fil
fact-drop-limit = Chute, limite
fact-request-line = Ligne de demande
fact-hold = Temps d’attente
fact-reads-absent = Lu en son absence
fact-reads-waiting = Lu en attente
fact-reads-granted = Lu une fois accordée
fact-threshold = Seuil
fact-release = Seuil de retour
fact-delay = Temporisation
fact-release-delay = Temporisation, retour
fact-is-low-side = côté masse
fact-is-high-side = côté plus
fact-is-more-displacement = plus de cylindrée
fact-is-less-displacement = moins de cylindrée
fact-is-transistor = transistor
fact-is-resistor-pack = résistances

## What every document says

doc-sensor-card = Fiche capteur
doc-wall-card = Fiche murale
doc-actuator-card = Fiche actionneur
# unchecked: « fiche commande » for the card of a power driver and its load
doc-driver-card = Fiche commande
doc-test-sheet = Feuille d’essais
doc-revision-none = PROJET
doc-applicability = { $system } : { $vehicles }
doc-no-source = sans source
doc-not-given = NON DONNÉ
doc-quantity-to = à
doc-quantity-digits = digits
doc-units = Ω, V CC, °C ; °F = 1,8 × °C + 32
doc-units-metric = Ω, V CC, °C
doc-units-us = Ω, V CC, °F
doc-printed = imprimé le { $date }
doc-issued = émis le { $date } par { $by }
doc-changed = Modifié depuis { $revision }, repéré ▶▌ : { $cells ->
    [one] { $cells } valeur
   *[other] { $cells } valeurs
}.
doc-changed-short = ▶▌ modifié depuis { $revision } : { $cells }
doc-changed-none = Réémis depuis { $revision }, aucune valeur modifiée.
doc-changed-unknown = Réémis depuis { $revision } ; ce qui a changé n’est pas connu : comparer avant usage.
doc-changed-title = Modifié depuis { $revision }

## Liste de retrait

# unchecked: the trade’s word for a list of copies to take back
doc-pull-list = Liste de retrait
pulled-title = À retirer et à détruire
pulled-total = { $copies ->
    [one] { $copies } exemplaire
   *[other] { $copies } exemplaires
}, { $places ->
    [one] { $places } endroit
   *[other] { $places } endroits
}
pulled-intro = Retirer chaque exemplaire, mettre la nouvelle révision à sa place et détruire l’ancien : le couper à travers son code. Cocher aussitôt. Ce qui n’est pas trouvé reste sans coche.
pulled-place = Endroit
pulled-holder = Détenteur
pulled-paper = Papier
pulled-revision = Révision
pulled-because = À cause de
pulled-taken-down = retiré
pulled-destroyed = détruit
pulled-not-recorded = non enregistré
pulled-withdrawn = { $revision }, abrogé
pulled-more = et { $values ->
    [one] { $values } autre valeur
   *[other] { $values } autres valeurs
}

## Sensor card

card-direction-pull-up = plus chaud → moins d’Ω → moins de V
card-direction-pull-down = plus chaud → moins d’Ω → plus de V
card-direction-ohms = plus chaud → moins d’Ω
card-direction-rising-pull-up = plus chaud → plus d’Ω → plus de V
card-direction-rising-pull-down = plus chaud → plus d’Ω → moins de V
card-direction-rising-ohms = plus chaud → plus d’Ω
card-connector = { $id } · { $title }
card-pin-signal = signal
card-pin-return = retour
card-pin-ground = masse
card-pin-reference = référence
card-pin-motor-plus = moteur +
card-pin-motor-minus = moteur −
card-pin-contact = contact
card-pin-common = commun
card-pin-control = cde
card-pin-feed = alim.
card-pin-contact-in = contact entrée
card-pin-contact-out = contact sortie
card-view-mating-face = vue accouplement
card-view-wire-entry = vue côté fils
card-view-not-given = vue NON DONNÉ
card-side-harness = côté faisceau
card-side-component = côté organe
card-side-not-given = côté NON DONNÉ
card-min = min
card-nominal = nominal
card-max = max
card-nominal-value = nominal { $value }
card-ground = masse NON DONNÉ
card-note-window = Limites au pire cas, arrondies vers l’intérieur.
card-note-switched = Deuxième résistance hors circuit.
card-note-ohms = Ω : contact coupé, aux voies du capteur.
card-note-volts = V : contact mis, tout connecté, { $pins }
card-note-ohm-window = Limites au pire cas en Ω, arrondies vers l’intérieur.
card-note-beyond = – : hors de la table.
card-note-beyond-class = – : hors du domaine de la classe.
card-note-no-tolerance = Limites NON DONNÉ : pas de tolérance.
card-note-no-circuit = Volts NON DONNÉ : pas de circuit.
card-note-no-volt-limits = Limites en V NON DONNÉ : pas de tolérance du circuit ou du multimètre.
card-note-meter = (multimètre { $input }).
card-note-no-meter = (sans multimètre).
card-plot-resistance = Résistance
card-plot-voltage = Tension
card-alt-switched = Le calculateur peut commuter { $value } à côté de cette résistance.
card-alt-reader = Un autre calculateur lit la même ligne à travers { $value }.
card-alt-offset = Le retour est { $value } au-dessus de la masse du calculateur.
card-faults = Ce que donnent les défauts
card-fault = défaut
card-fault-believed = → { $unit }
card-note-faults-where = Ω : calculateur débranché, contact coupé. V : tout connecté, contact mis. → { $unit } : ce que le calculateur croit alors ; – hors de ce qu’il tient pour un capteur.
card-note-faults-brackets = Entre parenthèses : avec ce défaut, une pièce peut rester dans la fenêtre d’une bonne.
card-note-faults-unknown = Limites NON DONNÉ : on ne sait pas ce qui se distingue d’un bon capteur.
card-note-faults-more = Tout défaut à toute température : bayleaf faults { $id }.
card-fault-open = capteur coupé
card-fault-open-wire = fil coupé
card-fault-short = capteur en c-c
card-fault-to-ground = signal à la masse
card-fault-to-reference = signal à la réf.
card-fault-to-battery = signal au plus
card-fault-series = { $size } en série
card-fault-leak = fuite { $size }
card-fault-leak-to-battery = fuite + { $size }
card-fault-lifted-return = retour +{ $size }
card-fault-resistance = Ω capteur { $size }
card-fault-slope = pente { $size }
card-fault-resistor = Ω calcul. { $size }
card-fault-mated = Ω, calcul. connecté
card-fault-part = pièce { $part }
card-signature = Erreur du calculateur selon la température
card-signature-note = Mesurer à froid et à chaud : un défaut se voit où son erreur croît.
card-signature-ends = Après chaque nom : erreur à { $cold } … { $hot }.
card-signature-wires = Défauts dans les fils
card-signature-parts = Défauts dans les pièces
card-alt-signature = { $title }, erreur de { $cold } à { $hot } : { $lines }
card-alt-plot = { $title } selon la température : de { $first } à { $cold } jusqu’à { $last } à { $hot }.
card-alt-pull-up = Circuit : le calculateur applique la référence de { $reference } à travers { $resistor } à la voie de signal { $signal } ; le capteur est entre le signal et la voie de retour { $other }.
card-alt-pull-down = Circuit : le capteur est entre la voie de référence { $other }, { $reference }, et la voie de signal { $signal } ; { $resistor } relie le signal à la masse dans le calculateur.
card-example = Exemple calculé à { $temperature }
card-example-scales = { $fahrenheit } °F = ({ $fahrenheit } − 32)/1,8 °C = { $celsius } °C = { $kelvins } K
card-example-beta = R = { $rated } Ω × exp[{ $beta } K × (1/{ $kelvins } K − 1/{ $rated-kelvins } K)] = { $ohms } Ω
card-example-steinhart-hart = 1/T = a + b ln R + c (ln R)³ avec T = { $kelvins } K : R = { $ohms } Ω
card-example-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ avec L = ln(R/{ $base } Ω) et T = { $kelvins } K : R = { $ohms } Ω
card-example-platinum = R = { $rated } Ω × (1 + 3,9083·10⁻³ t − 5,775·10⁻⁷ t²) avec t = { $temperature } : R = { $ohms } Ω
card-example-platinum-cold = R = { $rated } Ω × (1 + 3,9083·10⁻³ t − 5,775·10⁻⁷ t² − 4,183·10⁻¹² (t − 100) t³) avec t = { $temperature } : R = { $ohms } Ω
card-example-silicon = R = { $rated } Ω × (1 + a x + b x²) avec x = { $temperature } − { $rated-temperature } = { $above } K : R = { $ohms } Ω
card-example-table = { $temperature } °C = { $fahrenheit } °F, sur la courbe lisse par les lignes, ln R en fonction de 1/T : R = { $ohms } Ω
card-example-pull-up = V = { $reference } × { $ohms } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-pull-down = V = { $reference } × { $resistor } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-node = V = ({ $currents }) / ({ $conductances }) = { $volts } V.
card-example-network = Avec les autres résistances { $ohms } Ω ;
card-example-meter = Avec un multimètre de { $input } : { $volts } V.
card-example-window = Une bonne pièce dans un bon circuit donne { $window } { $unit }.
card-example-fault = Une résistance de contact de { $extra } dans la ligne donne { $volts } V : on croit lire { $believed }.
card-hot = chaud
card-cold = froid
card-warmer = plus chaud
card-colder = plus froid
card-reads-high = trop haut
card-reads-low = trop bas
card-reads-near-zero = près de 0 V
card-reads-overload = dépassement
card-reads-zero-ohms = près de 0 Ω
card-means-open = coupure, débranché : semble très { $looks }
card-means-short = signal au retour ou à la masse : semble très { $looks }
card-means-low-pull-down = résistance en série, mauvais contact, fuite à la masse ; ou { $or }
card-means-high-pull-down = fuite à la référence ou au plus, mauvaise pièce ; ou { $or }
card-means-short-pull-down = capteur ou signal en court-circuit à la référence : semble très { $looks }
card-means-open-pull-down = coupure, débranché, pas de référence, ou signal à la masse : semble très { $looks }
card-means-short-before-series = fil de signal en court-circuit au retour ou à la masse
card-means-sensor-short = capteur en court-circuit : semble très { $looks }
card-means-high = résistance série, mauvais contact, fuite au plus, autre pièce ; ou { $or }
card-means-low = fuite retour ou masse, humidité, autre pièce ; ou { $or }
card-means-ohms-high = résistance en série, mauvais contact ; ou vraiment { $or }
card-means-ohms-low = fuite, humidité, mauvaise pièce ; ou vraiment { $or }
card-measure-temperature = Tenir un thermomètre près du capteur jusqu’à ce que rien ne bouge plus : c’est la ligne.
card-measure-volts = Volts : tout connecté, contact mis, par l’arrière { $pins }. Ohms : contact coupé, débranché, au capteur.
card-measure-ohms = Ohms : contact coupé, capteur débranché, à ses propres voies.
card-measure-window = Entre deux lignes, limites entre les leurs : à { $at } { $window }. Dedans : capteur, fils et calculateur bons.
card-next-unplug = Hors fenêtre : contact coupé, débrancher le capteur, contact mis. Côté faisceau, mesurer { $pins }.
card-next-unplug-between = Hors fenêtre : contact coupé, débrancher le capteur, contact mis. Côté faisceau, mesurer entre ses voies, { $pins }.
card-next-good = Donne { $open } : ni coupure ni court-circuit. Contact coupé : ohms aux voies du capteur, puis au connecteur du calculateur débranché. Quelques Ω de plus : les fils ; beaucoup : un mauvais contact.
card-next-good-between = Donne { $reference } : référence, fil de signal et pull-down sont entiers. Contact coupé : signal à masse environ { $resistor }, sinon court-circuit ou coupure ; puis le capteur en ohms à ses voies.
card-next-bad = Donne autre chose : mesurer la référence, puis les deux fils de bout en bout, calculateur débranché.
card-its-two-pins = ses deux voies
card-next-series = Note : le fil de signal contient { $series } ; de bout en bout, il donne cela.
card-next-ohms = Contact coupé, débrancher le calculateur : mesurer les ohms côté faisceau, puis au capteur. La différence, ce sont les fils.
doc-connector-card = Fiche connecteur
doc-system-card = Fiche système
doc-light-card = Fiche lumière
doc-transducer-card = Fiche pression
card-direction-light-pull-up = plus clair → moins de V
card-direction-light-load = plus clair → plus de V
card-direction-light = circuit NON DONNÉ
card-direction-absolute-up = plus de pression → plus de V ; pressions absolues
card-direction-gauge-up = plus de pression → plus de V ; pressions relatives
card-direction-absolute-down = plus de pression → moins de V ; pressions absolues
card-direction-gauge-down = plus de pression → moins de V ; pressions relatives
card-direction-absolute = droite NON DONNÉ ; pressions absolues
card-direction-gauge = droite NON DONNÉ ; pressions relatives
card-part-window = fenêtre
card-part-readings = Ce que donne une bonne pièce
card-part-wrong = Ce que donnent les défauts
card-part-wrong-note = Cru : par le calculateur. V : nominal, signal à retour au calculateur, connecté, contact mis. – : inconnu, ou pas de défaut là.
card-part-fault = Défaut
card-part-unknown = Ce que ceux-ci donnent, les spécifications ne le disent pas : { $faults }.
card-part-believes = cru { $unit }
card-part-told = vu en V
card-light-dark = noir
card-light-covered = couvert d’un tissu noir
card-light-sun = plein soleil
card-light-span = noir à éclairé
card-light-span-of = voir la note ci-dessous
card-alt-light-pull-up = Circuit : le calculateur applique la référence de { $reference } à travers { $resistor } à la voie de signal ; la photodiode est entre signal et retour.
card-alt-light-load = Circuit : la photodiode est entre la référence de { $reference } et la voie de signal ; { $resistor } relie le signal à la masse dans le calculateur.
card-alt-transducer = Circuit : le calculateur alimente le capteur de pression par la référence de { $reference } ; le capteur en rend une part sur la voie de signal.
card-next-light-span = Le couvrir d’un tissu noir, puis l’éclairer au soleil ou à la lampe à incandescence : les volts bougent de { $span } ou plus.
card-next-light = Le couvrir d’un tissu noir, puis l’éclairer au soleil ou à la lampe à incandescence : les volts doivent bouger.
card-next-light-pull-up = Ils ne bougent pas : contact coupé, débrancher le capteur, contact mis. La référence au connecteur du faisceau : capteur ou connecteur mauvais. Pas de volts : fil de signal en court-circuit ou coupé.
card-next-light-load = Ils ne bougent pas : mesurer d’abord la référence au connecteur du capteur. Référence là et pas de volts à la lumière : capteur, connecteur ou fil de signal ; des volts dans le noir : signal en court-circuit à la référence.
card-next-wires = Puis les fils de bout en bout, contact coupé, les deux connecteurs débranchés : quelques ohms ; rien vers la masse ni entre eux.
card-next-transducer-reference = D’abord la référence au retour, à son connecteur : sans elle, rien d’autre ne vaut une mesure.
card-next-transducer-rest = Contact mis, moteur arrêté, au repos à température uniforme : comparer à la pression de saturation de la fiche fluide et air. Aucun manomètre requis.
card-next-transducer-wires = Hors fenêtre, référence bonne : fils de bout en bout, contact coupé, les deux connecteurs débranchés. Fils bons : le capteur, changé par du personnel attesté.
card-system-title = { $system } : entrées, calculateur, sorties
card-system-no-pins = Voies au calculateur NON DONNÉ
card-system-pin = { $pin } { $role }
card-system-plug = connecteur { $plug }
card-system-note-lines = Flèches : où va le relevé ou la puissance ; deux pointes : une sortie qui rend compte. Une voie partagée figure à tout ce qui en dépend.
card-system-note-cards = Chaque case nomme la fiche qui l’essaie ; « pas de fiche » est une lacune du jeu.
card-look-view = vue
card-look-side = côté
card-look-latch = verrou
card-look-keys = ergots
card-view-mating-face-long = Vue ACCOUPLEMENT : on voit la face qui s’accouple
card-view-wire-entry-long = Vue CÔTÉ FILS : entrée des fils
card-side-harness-long = Côté FAISCEAU : la moitié sur les fils
card-side-component-long = Côté ORGANE : la moitié sur la pièce
card-latch-of-view = { $latch } (selon la { $view })
card-mirror = Dans la { $other }, gauche et droite s’échangent.
card-mirrored = SYMÉTRIQUE de la { $other } de la spécification : gauche et droite échangées.
card-edge-top = en haut
card-edge-bottom = en bas
card-edge-left = à gauche
card-edge-right = à droite
card-at-edge = { $edge }
card-at-corner = { $edge }, vers l’extrémité { $end }
card-alt-face = Dessin du connecteur { $id }, { $view }. { $rows }
card-alt-face-row = Rangée { $row } depuis la gauche : { $marks }.
card-state-off = coupé
card-state-on = contact mis
card-state-unmated = débranché
card-state-running = mot. tournant
card-minus-probe = pointe − ici
card-in-the-dark = { $volts } V noir
card-at-most = ≤ { $volts } V
card-tested-by = fiche { $card }
card-tested-only-by = voir fiche { $card }
card-tested-by-none = pas de fiche
card-shares = { $title } ({ $card })
card-shared = Partagé par { $count } : { $things }
card-note-to-ground = Volts : CC, au retour ou à la masse du même calculateur. Moteur tournant : charge enclenchée.
card-note-sensors-at = Capteurs : fenêtres au pire cas, tous à { $at }.
card-note-sensors-not-given = Capteurs : leur température est NON DONNÉ, leurs fenêtres aussi.
card-note-sensors-beyond = Un capteur qui ne sert pas à cette température n’a pas de fenêtre.
card-note-unmated-unit = Débranché : contact coupé, calculateur débranché ; ohms au retour du capteur.
card-note-unmated-plug = Débranché : capteur débranché, puis contact mis ; volts au faisceau.
card-note-unmated-part = Débranché : contact coupé, débranché ; ohms aux voies du capteur.
card-note-meter-on = Volts avec un multimètre de { $input }.
card-note-meter-none = Volts sans multimètre.
card-note-computed = Calculs : sources sur la fiche nommée.
card-see-card = voir sa fiche
card-note-states-blank = – : inconnu.
card-act-more-volts = plus de volts → plus de % → { $high }
card-act-volts-from = plus de volts → de { $first } à { $last }
card-act-order = dans l’ordre de la course : { $first } → { $last }
card-act-end-to-end = d’un bout à l’autre
card-act-free = moteur, à vide
card-act-held = moteur, bloqué
card-act-closed = contact fermé
card-act-of-reference = { $parts } % de la référence
card-act-travel = Recopie sur la course
card-act-positions = Relevés par position
card-act-codes = Contacts par position
card-act-volts = V : contact mis, tout connecté, { $pins }, sans multimètre. Limites : pire cas, arrondies vers l’intérieur.
card-act-bent = Entre les butées, la charge du calculateur courbe la droite : pas d’interpolation linéaire.
card-act-ladder = Contacts : 1 fermé, le premier à gauche est le plus proche de la voie.
card-act-contacts = ● fermé, ○ ouvert. Un contact est fermé ou ouvert, rien entre les deux.
card-act-illegal = ✗ aucune position
card-act-illegal-count = À part ceux-ci, { $count } codes ne sont à aucune position.
card-act-position = position
card-act-what = quoi
card-act-good = bon
card-act-else = sinon
card-act-at-most = ≤ { $value }
card-act-motion = Mouvement : { $moves } { $mark }
card-act-motion-unknown = Mouvement
card-act-time = D’un bout à l’autre
card-act-time-else = lent : dur, alim. Jamais : bloqué, glisse
card-act-current = Moteur, à vide
card-act-current-else = nulle : fil, moteur, étage. Plus : volet dur
card-act-stall = Moteur, bloqué
card-act-stall-else = en butée, un instant. En course : blocage
card-act-fed = Moteur alimenté
card-act-fed-yes = fusible, débranché
card-act-fed-no = JAMAIS
card-act-fed-unknown = JAMAIS : NON DONNÉ
card-act-fed-else = va dans les deux sens, sinon moteur HS
card-act-fed-never = la tension batterie y détruit l’électronique
card-act-step = Plus grand saut
card-act-step-else = plus grand : piste usée, coupure brève
card-act-dead-band = Zone morte
card-act-dead-band-else = plus grande : jeu, glissement
card-act-hysteresis = Aller contre retour
card-act-hysteresis-else = plus grand : jeu d’engrenage, tringlerie
card-act-track = Piste, bout à bout
card-act-track-else = débranché. OL : coupée. Sinon : autre pièce
card-act-contact = Contact fermé
card-act-contact-else = débranché. Plus : sale, tordu ou usé
card-act-learning = Ne juger un relevé qu’au repos.
card-act-next-both = Hors de toute fenêtre : d’abord référence ({ $reference }) et retour ({ $return }) au calculateur ; les deux sont partagés avec d’autres pièces.
card-act-next-one = Une butée hors de sa fenêtre : un obstacle (en deçà), ou un axe ou une butée qui a glissé (au-delà). Examiner volet et tringlerie à la main.
card-act-next-sweep = Butées bonnes : enregistrer volts min et max pendant un balayage lent dans les deux sens. Une coupure brève : piste usée.
card-act-next-ladder = La référence à toute position : fil de signal coupé, ou aucun contact ne ferme. 0 V à toute position : signal en court-circuit à la masse.
card-act-next-between = Entre deux fenêtres : aller aux deux bouts. Partout entre elles : un contact sale (voir le tableau), ou une résistance de trop dans la ligne.
card-act-next-dirty = Ohms à son connecteur, débranché : chaque position donne les résistances jusqu’à son contact, et pas plus que le contact fermé en sus.
card-act-next-code = Un code qui n’est à aucune position : contact coupé, débranché, ohms de chaque contact au commun, aux deux bouts. Fermé { $closed } au plus, ouvert OL.
card-act-next-common = Tous contacts ouverts à toute position : le commun ({ $common }), ou son chemin vers la masse.
card-act-next-silent = Immobile : volts au connecteur du moteur pendant que la façade le déplace, dans les deux sens.
card-act-next-volts = Des volts là, pas de mouvement : le volet à la main, puis le moteur. Pas de volts : les fils de bout en bout, puis l’étage.
card-act-believes = cru %
card-act-fault = défaut
card-act-by = vu par
card-act-wrong = En cas de défaut
card-act-wrong-note = Pire cas ; cru % : position que croit le calculateur. Vu par : V, ou Ω entre ses fils, débranché.
card-act-wrong-note-windows = Pire cas. Vu par : V, ou Ω entre ses fils, débranché.
card-instrument = Avec { $meter } [{ $mark }].
card-no-instrument = Vu par les fenêtres seules : aucun instrument n’est nommé.
card-act-unseen-faults = Par rien : { $faults }.
card-act-stuck-note = Ce pour quoi chaque position est prise : – n’est pas une position. Les positions non nommées se lisent comme il faut.
card-act-unseen = aucune n’est mal lue
card-act-contact-name = contact
card-act-never-closes = ne ferme jamais
card-act-never-opens = n’ouvre jamais
card-act-dirty-ohms = dès Ω
card-act-dirty-into = lu comme
card-act-dirty-note = Résistance d’un contact fermé qui fait lire la position comme la suivante. Le contact 0 est le plus proche de la voie.
card-act-as-above = comme au tableau
card-act-input = entrée
card-act-driver = étage
card-act-alt-potentiometer = Circuit : référence, signal et retour vont du calculateur à un potentiomètre dans l’actionneur, deux autres fils à son moteur : { $pins }.
card-act-alt-contacts = Circuit : un fil va de chaque contact à une entrée du calculateur, les contacts vont à un fil commun, deux autres fils au moteur : { $pins }.
card-act-alt-ladder = Circuit : un fil de signal à pull-up dans le calculateur va à des résistances et contacts dans l’actionneur, un fil de retour revient, deux autres fils au moteur : { $pins }.
card-act-alt-motor = Circuit : deux fils vont du calculateur au moteur : { $pins }.
card-drv-low-side = côté masse : le calculateur commute la masse de la charge
card-drv-high-side = côté plus : le calculateur commute l’alimentation de la charge
card-drv-no-side = côté commuté : NON DONNÉ
card-drv-always-on = permanent { $current }
card-drv-step = vitesse { $step }
card-drv-relay = maximale, par relais
card-drv-of-battery = { $volts } sur { $battery }
card-drv-duties = Intensité selon le rapport cyclique
card-drv-coil = Bobine selon sa propre température
card-drv-steps = Vitesses : volts aux bornes du moteur, pas à la masse
card-drv-parts = % de la batterie
card-drv-motor = V moteur à
card-drv-ground = V masse
card-drv-at-nominal-low = A, W (chaleur de l’élément série) et V masse (borne commutée à la masse) à { $battery } ; l’autre borne est à la tension batterie à toute vitesse.
card-drv-at-nominal-high = A, W (chaleur de l’élément série) et V masse (borne commutée à la masse) à { $battery }.
card-drv-at-nominal = A et W (chaleur de l’élément série) à { $battery }.
card-drv-supply = Côté plus
card-drv-supply-from = batterie + à { $pin }
card-drv-supply-of-switch = batterie + à l’entrée du commutateur
card-drv-return-of-switch = masse du commutateur à batterie −
card-drv-switch-row = Commut. fermé
card-drv-switch-low-from = { $pin } à la masse du commutateur
card-drv-switch-high-from = entrée du commutateur à { $pin }
card-drv-return = Masse
card-drv-return-from = { $pin } à batterie −
card-drv-contact = Contact
card-drv-contact-from = { $in } à { $out }, relais collé
card-drv-its-plug = son connecteur
card-drv-wire = Fil seul
card-drv-wire-loses = { $nominal } V ; ≤ { $greatest } V
card-drv-wire-loses-nominal = { $nominal } V
card-drv-wire-of = { $title } : { $size }, { $length }, { $current }
card-drv-drop = chute
card-drv-between = entre
card-drv-most = au plus
card-drv-drops = Où se perdent les volts
card-drv-drops-note = Connecté, à fond, courant de la charge établi ; sans lui, pas de chute.
card-drv-wire-note = Fil seul : au plus chaud.
card-drv-no-waveform = Pas de croquis : batterie, côté, chutes ou fréquence NON DONNÉ.
card-drv-at-pin = Voie de commande à batterie −
card-drv-current = Courant de la bobine
card-drv-shape = { $hertz } Hz : { $period } de front à front. Dessiné : RC { $percent } %, { $time } fermé, batterie { $battery }, bobine nominale.
card-drv-levels = Fermé { $on }, ouvert { $off } tant que le courant passe.
card-drv-flows-on = Inductance NON DONNÉ : dessiné comme si le courant ne cessait jamais.
card-drv-alt-volts = Volts à la voie de commande sur deux périodes de { $hertz } Hz : { $on } pendant { $percent } % de chacune, puis { $off }.
card-drv-alt-amperes = Intensité sur les mêmes périodes : elle monte à { $most } à l’état fermé, et tombe à { $least } à l’état ouvert.
card-drv-battery = batterie
card-drv-only-high = que la max.
card-drv-only-high-means = élément série ou sa commande coupé
card-drv-no-high = pas de max.
card-drv-no-high-means = relais de shunt, son contact ou sa bobine
card-drv-dead = aucune vit.
card-drv-dead-means = alimentation, fusible, masse, puis le moteur
card-drv-runs-on = coupé, tourne
card-drv-runs-on-means = élément série en court-circuit, ou relais soudé : vide la batterie
card-drv-all-low = toutes basses
card-drv-all-low-means = une chute côté plus ou masse ; un moteur dur
card-drv-low-off = ouvert { $battery }
card-drv-low-off-means = alimentation, bobine et fil sont entiers
card-drv-low-dead = ouvert 0 V
card-drv-low-dead-means = pas d’alimentation, bobine ou fil coupé, ou commande à la masse
card-drv-low-on = fermé ≈ 0 V
card-drv-low-on-means = commande bonne ; sans courant : bobine coupée
card-drv-low-never = fermé { $battery }
card-drv-low-never-means = pas de commande, commutateur ou son fil coupé
card-drv-high-off = ouvert 0 V
card-drv-high-off-means = comme il faut
card-drv-high-stuck = ouvert { $battery }
card-drv-high-stuck-means = commutateur ou fil en court-circuit au plus
card-drv-high-on = fermé { $battery }
card-drv-high-on-means = fil bon ; sans courant : bobine ou masse coupée
card-drv-high-never = fermé 0 V
card-drv-high-never-means = pas de commande, fil coupé ou à la masse : débrancher, répéter
card-drv-meter = V mètre
card-drv-meter-note = V mètre : voltmètre à valeur moyenne aux bornes de la bobine ; RC × batterie seulement pour un créneau net.
card-drv-paused = À { $duties }, le courant cesse entre les impulsions.
card-drv-coil-at = bobine à
card-drv-ohms-open = Ω : OL
card-drv-ohms-open-means = enroulement ou fil coupé
card-drv-ohms-few = Ω : trop peu
card-drv-ohms-few-means = spires en court-circuit, autre pièce, ou plus froid que cru
card-drv-ohms-many = Ω : trop
card-drv-ohms-many-means = un mauvais contact, ou plus chaud que cru
card-drv-unknown = NON DONNÉ
card-drv-unknown-means = sans le côté, aucun relevé à la masse ne dit rien : mesurer aux bornes de la charge
card-drv-next-across = Tension batterie, puis volts aux bornes du moteur à chaque vitesse : c’est leur rapport qui parle, quelle que soit la batterie.
card-drv-next-drops = Une vitesse trop basse : les chutes du tableau sous courant, l’une après l’autre.
card-drv-load = charge
card-drv-next-coil-drops = Peu de volts à la bobine commandée : les chutes du tableau l’une après l’autre, courant établi.
card-drv-next-fuse = Aucune vitesse : les deux côtés de son fusible, puis l’alimentation à son connecteur, en marche.
card-drv-next-ohms = Contact coupé, débranché, 0 V constaté : ohms de la bobine, cordons déduits, selon sa température.
card-drv-next-isolation = Chaque voie au boîtier : { $least } ou plus.
card-drv-next-current = Pince ou ampèremètre selon le RC, à { $battery } ou en proportion. Aucun courant : relevés ci-dessus.
card-drv-across = V bornes
card-drv-wrong-note = Bobine à { $at }. Ω : débranché, à travers les fils ; V : à ses bornes, connecté, à fond.
card-drv-transistor = transistor
card-drv-pack = résistances
card-drv-switch = commut.
card-drv-alt-low = Circuit : le plus batterie alimente { $load } ; sa voie de commande { $control } va à un commutateur vers la masse. Les chutes se mesurent du plus batterie à son alimentation, aux bornes du commutateur fermé, et de la masse du commutateur au moins batterie.
card-drv-alt-high = Circuit : un commutateur depuis le plus batterie alimente la voie de commande { $control } de { $load } ; son autre voie va à la masse. Les chutes se mesurent du plus batterie à l’entrée du commutateur, aux bornes du commutateur fermé, et de sa voie de masse au moins batterie.
card-drv-alt-no-side = Circuit : { $load } entre le plus batterie et la masse ; de quel côté est le commutateur n’a pas été donné.
card-points = Table telle que donnée, en { $unit }

## Mode card, request card, refrigerant and air card

doc-mode-card = Fiche modes
doc-request-card = Fiche demande
doc-air-card = Fiche fluide et air
card-modes-title = { $panel } : modes de la façade
card-modes-how-choose = Choisir un mode, attendre le temps dit, regarder chaque point de commande encadré : cocher ce qui est comme imprimé, barrer d’une croix ce qui ne l’est pas.
card-modes-how-fault = Une croix : ce point est bloqué, ou la commande ne l’atteint pas ; la valeur qu’il montre dans tous les modes est celle où il est bloqué.
card-forced = imposé
card-forced-means = le mode le fixe : un essai
card-free-means = le calculateur décide : pas d’essai
card-dont-care-means = sans importance : pas d’essai
card-mode-within = en { $time } s
card-time-not-given = temps NON DONNÉ
card-run-proven = Ces { $count } modes sur { $all }, dans cet ordre, imposent toute valeur qu’un mode impose ; aucun jeu plus petit ne le fait.
card-run-not-proven = Ces { $count } modes sur { $all }, dans cet ordre, imposent toute valeur qu’un mode impose ; tout jeu en demande { $least } ou plus.
card-stuck-at = { $control } bloqué à { $values }
card-reveals-again = ce que des étapes ont déjà montré, à une autre valeur
card-box-vehicle = Véhicule
card-box-date = Date
card-box-name = Nom
paper-run = Parcours le plus court qui révèle tout
paper-mode = Mode de façade
paper-mode-choose = Choisir
paper-step = Étape
paper-reveals = Une croix ici montre pour la première fois
paper-seen = Comment chacun se voit :
card-stage = État de la demande
card-stage-reads = Ce qui se lit
card-stage-absent = Pas demandée
card-stage-waiting = Demandée, pas encore accordée : retenue, ou le temps d’attente court
card-stage-granted = Accordée
card-condition-number = Nº
card-condition = Condition
card-condition-effect = Effet
card-condition-watch = Surveillée par, lue à
card-condition-set = S’établit
card-condition-release = Se relâche
card-condition-at = à
card-condition-volts = V
card-condition-after = après
card-condition-source = Source
card-permits = autorise
card-inhibits = interdit
card-request-how = Examinées dans cet ordre. Une condition s’établit quand sa valeur y est depuis le temps dit sous « après » ; elle reste alors jusqu’à la valeur où elle se relâche. Celle qui autorise doit être établie, celle qui interdit ne doit pas l’être.
card-request-volts = Les volts sont ceux que donne à la voie une bonne pièce dans un bon circuit : un relevé de ce côté de la fenêtre explique pourquoi la demande est retenue.
card-request-wait = Laisser passer toute temporisation avant de juger : une demande retenue par une temporisation n’est pas un défaut.
card-request-states = États dans ce scénario
card-timeline-axis = temps, s
card-line-bar = condition établie ; demande accordée
card-line-frame = condition en attente de se relâcher ; demande retenue
card-line-dots = temporisation ou attente en cours
card-line-thin = condition relâchée ; pas de demande
card-alt-timeline = Chronogramme de la demande : { $states }
paper-conditions = Conditions
paper-timeline = Chronogramme
card-air-title = { $system } : fluide frigorigène et air
card-saturation = Saturation
card-saturation-how = Lignes d’aspiration et de liquide : entre ces températures, surchauffe et sous-refroidissement sont ceux donnés, à la pression de la ligne.
card-from = de
card-to = à
card-suction-line = Aspiration { $unit }
card-liquid-line = Liquide { $unit }
card-absolute = abs.
card-gauge = rel.
card-critical = Point critique de { $fluid } : { $critical } ; au-dessus il n’y a pas de saturation, et la pression ne dit aucune température.
card-box-charge = Charge, d’après l’étiquette sous le capot
card-box-oil = Huile, même étiquette
card-box-oil-charge = Charge d’huile, même étiquette
card-vent-how = Cases : de la plus basse à la plus haute bonne température en { $unit } aux aérateurs ; * la régulation de l’évaporateur fixe la plus basse. « Régulation » : la régulation tient l’évaporateur, les aérateurs la suivent.
card-vent-position = Entrée d’air : { $position }
card-vent-held = régulation
card-any-weather = tout temps
card-outside-humidity = Air extérieur, humidité relative
card-outside-air = Extérieur
card-box-ambient = Air extérieur
card-box-humidity = Humidité
card-box-outlet = Aérateurs
card-box-suction = Mano aspiration
card-box-discharge = Mano refoulement
rule-card-nothing = le système `{ $system }` n’a rien à imprimer sur une fiche de cette sorte
rule-card-no-modes-help = écrire ses tables `[mode.…]`, chacune avec chaque `[control.…]`
rule-card-no-air-help = écrire son `[refrigerant.…]` ou son `[vent.…]`
label-card-system = de ce système

## Test sheet

sheet-title = { $title } · { $vehicle }
sheet-vehicle = Véhicule
sheet-system = Système
sheet-registration = Immatriculation
sheet-chassis = Nº de châssis
sheet-built = Construit
sheet-box-technician = Technicien
sheet-box-date = Date, heure
sheet-box-odometer = Compteur
sheet-box-bay = Temp. atelier
sheet-box-humidity = Humidité
sheet-box-soak = Stabilisé depuis
sheet-box-battery-rest = Batterie, au repos
sheet-box-battery-running = Batterie, mot. tournant
sheet-box-reference = Référence, mesurée
sheet-box-leads = Cordons en c-c
sheet-box-complaint = Plainte
sheet-sign-name = Nom
sheet-sign-signature = Signature
sheet-sign-date = Date, heure
sheet-sign-checked = Vérifié par
sheet-expect = Attendu
sheet-expect-at = Attendu à { $temperature }
sheet-no-bay = Pas de température d’atelier donnée : lire la fenêtre dans le tableau de la fiche nommée à chaque ligne.
sheet-legend = Gras : OK, une pièce dans ses données. Service : hors du gras, mais trop peu pour expliquer une plainte.
sheet-legend-guarded = ± : si près d’une limite, indécis avec ces instruments (U, k = 2) ; « jamais OK » : ils ne suffisent pas, en prendre de meilleurs.
sheet-legend-guarded-part = ± : si près d’une limite, indécis avec ces instruments ({ $part } de U, k = 2) ; « jamais OK » : ils ne suffisent pas, en prendre de meilleurs.
sheet-legend-simple = ± : incertitude avec ces instruments (U, k = 2) ; cet atelier décide d’après les seules limites.
sheet-legend-no-rule = ± : incertitude avec ces instruments (U, k = 2) ; comment décider si près d’une limite est NON DONNÉ.
sheet-left-out = Pas dans ±, car NON DONNÉ : { $what }.
sheet-bay = Valable tant que capteur et sonde sont à cette température ; sinon lire la fenêtre au tableau de la fiche.
sheet-all-mated = tout connecté
sheet-sensor-unmated = capteur débranché
sheet-unit-unmated = calculateur débranché, capteur connecté
sheet-see-card = fiche { $card }
sheet-no-card = pas de fiche dans ce jeu
sheet-outside = sans objet : hors de { $low } à { $high }
sheet-service = service { $window } { $unit }
sheet-harness-half = côté faisceau, voies par repère
sheet-component-half = côté organe, voies par repère
sheet-record-only = noter seulement ; nominal { $value }
sheet-unplugged = débranché { $window }
sheet-doubt-all = ± { $doubt } { $unit } : jamais OK
sheet-doubt-only = ± { $doubt } { $unit } incertain
sheet-doubt = ± { $doubt } { $unit } indécis
sheet-instrument-value = { $what } { $value }
sheet-no-bay-coil = voir sa fiche commande : la fenêtre suit la température de la bobine
sheet-of-battery = batterie, maintenant
sheet-of-reference = référence, maintenant
sheet-ratio = A ÷ B × 100, B : { $whole }
sheet-reading-here = ici
sheet-field-a = A : { $what }
sheet-field-b = B : { $what }
sheet-difference = A − B, sans son signe
sheet-difference-signed = A − B, avec son signe
sheet-sweep-start = début
sheet-sweep-end = fin
sheet-sweep-step = plus grand saut
sheet-sweep-rises = monte tout du long, sans coupure
sheet-sweep-falls = descend tout du long, sans coupure
sheet-all-steps = toutes de { $first } à { $last }
sheet-sequence = dans cet ordre
sheet-after = { $least } à { $most } s après { $mark }
sheet-within = à { $most } s de { $mark } au plus
sheet-closed = fermé
sheet-open = ouvert
sheet-closed-at-most = fermé : au plus { $most }
sheet-closed-not-given = fermé : ohms max NON DONNÉ
sheet-reached-within = chacune en { $most } s
sheet-wave = et les quatre ci-dessous
sheet-wave-period = période
sheet-wave-duty = au niveau haut
sheet-wave-high = niveau haut
sheet-wave-low = niveau bas
sheet-wave-alt = Deux périodes d’une ligne commutée, au niveau haut pendant { $part } % de chacune
sheet-key-off = contact coupé
sheet-key-on = contact mis, moteur arrêté
sheet-engine-running = moteur tournant
sheet-mode = façade « { $what } »
sheet-set-point = consigne { $what }
sheet-blower = pulseur { $what }
sheet-meter-on = multimètre sur { $what }
sheet-unit-apart = calculateur débranché
sheet-component-unmated = débranché à l’organe
sheet-both-ends-unmated = débranché aux deux bouts
sheet-state = État : { $what }
sheet-before = Avant : { $what }
sheet-soaked = stabilisé { $time }
sheet-wait = attendre { $time }
sheet-differs = Exception, { $when } : { $expect }
sheet-means = { $reads } : { $means }
sheet-only-from = sans objet : seulement si construit en { $month } ou après
sheet-only-to = sans objet : seulement si construit jusqu’en { $month }
sheet-box-key = Contact, moteur
sheet-box-mode = Mode de façade, pulseur
sheet-corrections = Corriger d’un seul trait et parapher à côté ; ne rien surcharger.
sheet-surface-paper = Écrire à l’encre.
sheet-surface-wet-erase = Plastifié : écrire au feutre effaçable à l’eau ; copier ou photographier avant d’effacer.
sheet-surface-permanent = Plastifié : écrire au feutre permanent ; la feuille reste avec le dossier.
doc-report = Compte rendu
report-box-job = Nº de dossier
report-box-sheet-pages = Feuille d’essais, pages remplies
report-complaint = Plainte, comme le conducteur la dit
report-cause = Cause trouvée
report-action = Travaux faits, pièces montées
report-open = Points ouverts, et qui les suit
report-now = À { $temperature }, d’après la feuille d’essais { $sheet }, code { $code }
report-now-none = D’après la feuille d’essais { $sheet }, code { $code } ; les fenêtres par température d’atelier sont sur ses fiches
report-sign-technician = Technicien, signature
report-sign-checked = Vérifié par, signature
report-sign-received = Véhicule reçu par, signature
report-sign-date = Date, heure
sheet-else-open = Donne sa valeur « débranché » : capteur non connecté, ou fil coupé.
sheet-else-other-end = Donne l’autre bout (0 V ; la référence si « débranché » est près de 0 V) : capteur ou signal en court-circuit.
sheet-else-ohms = Ohms : dépassement, c’est une coupure ; près de 0 Ω, un court-circuit.
sheet-else-all = Toutes les lignes fausses du même côté : retour, masse ou référence communs ; les mesurer d’abord.
sheet-else-simple = À moins du ± imprimé d’une limite : la limite décide, mais un autre multimètre peut lire de l’autre côté. Le dire aux remarques.
sheet-else-no-rule = À moins du ± imprimé d’une limite : noter le relevé ; comment cet atelier décide alors est NON DONNÉ.
sheet-else-undecided-any = Indécis : à moins du ± imprimé d’une limite. Répéter avec un meilleur multimètre.
sheet-else-undecided = Indécis : à moins du ± imprimé d’une limite. Répéter avec le capteur dans l’eau glacée, ou avec un meilleur thermomètre ou multimètre.

## Cautions

caution-danger = STOP · DANGER
caution-stop = Haute tension : { $parts }. Personnel habilité seul : séparer, condamner, attendre, vérifier l’absence de tension. Rien sur ce document ne s’y applique.
caution-warning = AVERTISSEMENT
caution-caution = ATTENTION
caution-notice = AVIS
caution-law = La loi locale, les attestations et les consignes de sécurité du véhicule priment. Le circuit frigorifique reste fermé.
caution-law-open = La loi locale, les attestations et les consignes de sécurité du véhicule priment.
caution-law-card = Loi, attestations, notice du véhicule priment. Fluide : circuit fermé.
caution-law-card-open = Loi, attestations, notice du véhicule priment.
caution-dash = Airbags, prétensionneurs : ne pas sonder, ne pas mesurer en ohms, ne pas débrancher leur câblage ; ne pas toucher aux câbles orange.
caution-dash-card = Airbags, câbles orange : interdits.
caution-moving = Rester à l’écart des courroies, et des ventilateurs qui démarrent seuls.
caution-moving-card = Ventilateurs : départ auto.
caution-battery = Le gaz de batterie brûle : lunettes, pas d’étincelles.
caution-battery-card = Gaz de batterie : pas d’étincelles.
caution-refrigerant-card = Circuit frigorifique ouvert par personnel attesté seul.
caution-running = Véhicule calé, frein de stationnement serré, gaz d’échappement extraits.
caution-running-card = Caler, extraire les gaz.
caution-hot = Échappement, liquide de refroidissement, conduite de refoulement et transistor du pulseur brûlent la peau.
caution-hot-card = Pièces brûlantes.
caution-probing = Pas de lampe témoin sur référence, capteur, airbag, bus ; ne rien percer.
caution-probing-card = Ni lampe témoin ni perçage.
caution-unplugging = Contact coupé pour brancher ou débrancher.
caution-unplugging-card = Débrancher contact coupé.
caution-ohms = Pas d’ohms sur un circuit alimenté.
caution-ohms-card = Ohms hors tension.
caution-around = Câblage d’airbag et de prétensionneur : ne pas sonder, ne pas mesurer en ohms, ne pas débrancher. Ne pas toucher aux câbles orange haute tension. Rester à l’écart des courroies, des pièces chaudes et des ventilateurs qui démarrent seuls. Véhicule calé, gaz d’échappement extraits.
caution-refrigerant = Le fluide frigorigène est sous pression, gèle peau et yeux, chasse l’air ; certains brûlent, le R-744 est à très haute pression. Seul un personnel attesté, avec station de récupération, branche des manomètres et ouvre un circuit.
caution-transducer = Le capteur de pression reste vissé : il retient du fluide sous pression. Ne mesurer qu’à son connecteur.

## The run

run-demo = Ni --specs ni dossier specs/ ici : le jeu de démonstration intégré au programme est utilisé ; toutes ses valeurs sont inventées.
run-errors = { $errors ->
    [one] { $errors } erreur
   *[other] { $errors } erreurs
}, { $warnings ->
    [one] { $warnings } avertissement
   *[other] { $warnings } avertissements
} : rien n’a été écrit
run-warnings = { $warnings ->
    [one] { $warnings } avertissement
   *[other] { $warnings } avertissements
}
run-no-model = le jeu ne nomme aucun atelier : ajouter [shop] avec `title` et `paper`
run-specs-changed = les spécifications ou les modèles de page ont changé pendant l’impression ; imprimer de nouveau
run-watch-demo = il n’y a rien à surveiller : le jeu de démonstration est dans le programme ; `bayleaf new specs` en commence un à vous
run-cannot-watch = impossible de surveiller `{ $path }` : { $reason }
run-watch-waits = en attente de son retour
run-watch-kept = les images restent comme elles étaient ; surveillance en cours
run-watch-drawn = { $drawn } dessinées, { $same } inchangées, { $seconds } s ; surveillance en cours
run-cannot-read = lecture impossible de `{ $path }` : { $reason }
run-template-exists = `{ $path }` existe et diffère ; --overwrite le remplace
run-templates-written = { $count } modèles de page dans `{ $path }` ; pour imprimer avec eux : bayleaf print --templates { $path }
run-begun = Un jeu commence dans `{ $path }`. Remplacer les exemples par ses propres valeurs, puis : bayleaf check --specs { $path }
run-not-empty = `{ $path }` n’est pas vide ; un nouveau jeu demande un dossier à lui
run-library = { $said }
run-built-in = intégré : { $path }
run-template-unread = un modèle de page nécessaire est illisible
run-template-stops = la composition s’arrête ici
run-template-warns = la composition avertit ici, et un avertissement est refusé
run-template-leads = atteint à partir d’ici
run-template-keeps = { $count ->
    [one] { $ids } n’est pas imprimé à cause de cela
   *[other] { $count } documents ne sont pas imprimés à cause de cela : { $ids }
}
run-template-elsewhere = avec les seuls modèles de page intégrés, l’impression se fait : revoir { $files }
run-part-missing = le modèle de page ne marque rien comme `{ $part }`
run-part-unknown = le modèle de page marque `{ $part }`, pour lequel aucune distance de lecture n’est dite
run-illegible = page { $page } : `{ $text }` en { $size } pt est trop petit : ses capitales ont { $height } mm de haut ; pour être lu à { $distance } mm il faut { $needed } pt (15 minutes d’arc)
run-illegible-part = page { $page }, { $part } : `{ $text }` en { $size } pt est trop petit : ses capitales ont { $height } mm de haut ; pour être lu à { $distance } mm il faut { $needed } pt (15 minutes d’arc)
run-no-templates = `{ $path }` ne contient aucun modèle de page (*.typ)
run-template-without-data = le modèle de page `{ $name }` ne reçoit pas de données à lui
run-no-such-template = aucun modèle de page ne s’appelle `{ $name }` ; ceux qui reçoivent des données : { $known }
run-no-such-template-near = aucun modèle de page ne s’appelle `{ $name }` ; vouliez-vous dire `{ $near }` ?
run-strange-template = `{ $path }` ne remplace aucun modèle intégré ; il ne sert que si un autre l’importe
run-cannot-write = écriture impossible dans `{ $path }` : { $reason }
run-no-worker = impossible de lancer un processus auxiliaire : { $reason }
run-worker-lost = un processus auxiliaire s’est arrêté trop tôt ; { $missing ->
    [one] { $missing } document n’a pas été imprimé
   *[other] { $missing } documents n’ont pas été imprimés
}
run-cannot-print = `{ $id }` n’a pas été imprimé : { $reason }
run-cannot-print-many = { $count } documents n’ont pas été imprimés ({ $ids }) : { $reason }
run-no-output = écriture de la sortie impossible : { $reason }
run-more-sides = `{ $id }` a { $pages } pages, pas { $expected } : son verso est trop plein ; raccourcir ses étapes `next` ou ses sources
run-more-failures = … et { $count } de plus
run-no-such-document = aucun document, feuille ou véhicule `{ $id }`
run-no-such-document-near = aucun document, feuille ou véhicule `{ $id }` ; vouliez-vous dire `{ $near }` ?
run-nothing-to-print = le jeu n’a ni fiche, ni feuille avec un véhicule
run-no-such-table = rien qui ait un tableau ne s’appelle `{ $id }`
run-no-such-table-near = rien qui ait un tableau ne s’appelle `{ $id }` ; vouliez-vous dire `{ $near }` ?
run-table-reversed = le tableau va de { $from } à { $to }, plus froid
run-junction-outside = une soudure froide à { $at } est hors du thermomètre `{ $id }`, { $low } à { $high }
run-table-outside = { $at } est hors de la plage de `{ $id }`, { $low } à { $high }
run-table-step = un pas de { $step } ne donne pas de tableau
run-table-no-step = le tableau de `{ $id }` n’a pas de pas de température : omettre `--step`
run-table-no-temperatures = le tableau de `{ $id }` ne dépend pas de la température : omettre `--from` et `--to`
run-table-not-over-temperature = les chiffres de `{ $id }` ne vont pas selon la température : omettre --from, --to et --step
run-table-no-bay = les chiffres de `{ $id }` ne dépendent pas de la température d’atelier : omettre --at
run-table-no-meter = Volts sans la charge d’un multimètre.
run-table-meter = Volts avec un multimètre de { $input }.
run-bay-outside = { $at } est hors de la plage du capteur `{ $id }`, { $low } à { $high } : ses lignes s’impriment sans fenêtre
run-progress = { $done } documents sur { $all }
run-printed = { $documents ->
    [one] { $documents } document
   *[other] { $documents } documents
}{ $pages ->
    [0] { "" }
    [one] { ", " }{ $pages } page
   *[other] { ", " }{ $pages } pages
}, { $seconds } s, dans { $out } ; { $no-source ->
    [one] { $no-source } valeur sans source
   *[other] { $no-source } valeurs sans source
}, { $not-given ->
    [one] { $not-given } valeur NON DONNÉ
   *[other] { $not-given } valeurs NON DONNÉ
}
run-sheets = { $sheets ->
    [one] { $sheets } feuille à couper
   *[other] { $sheets } feuilles à couper
} : { $files ->
    [one] { $first }
   *[other] { $first } à { $last }
}. Imprimer recto verso, retourner sur le bord { $edge }, à 100 % ; puis poser une règle sur la barre de 100 mm.
run-long-edge = long
run-short-edge = court
run-no-bar = `{ $id }` : pas de marge blanche pour la barre de 100 mm à la page { $pages } ; vérifier la taille sur une autre page
run-no-bar-on-sheet = `{ $id }` : pas de place pour la barre de 100 mm sur { $sides ->
    [one] { $sides } face
   *[other] { $sides } faces
} ; vérifier la taille sur une autre feuille
run-stale-sheets = `{ $path }` vient d’une impression antérieure ; ses fiches peuvent être périmées
run-sheet-too-small = { $width } × { $height } mm ne tient pas sur une feuille de { $across } × { $along } mm, dont 5 mm à chaque bord ne s’impriment pas
run-in-border = page { $page } : une partie dessinée vient à { $distance } mm du bord ; la plastification demande { $quiet } mm
run-in-border-text = page { $page } : `{ $text }` vient à { $distance } mm du bord ; la plastification demande { $quiet } mm
run-under-hole = page { $page } : le trou { $place } ({ $diameter } mm, centre à { $inset } mm du bord, { $around } mm libres autour) traverse une partie dessinée ; le papier y est blanc sur { $free } mm
run-under-hole-text = page { $page } : le trou { $place } ({ $diameter } mm, centre à { $inset } mm du bord, { $around } mm libres autour) traverse `{ $text }` ; le papier y est blanc sur { $free } mm
place-top = en haut
place-bottom = en bas
place-left = à gauche
place-right = à droite
place-top-left = en haut à gauche
place-top-right = en haut à droite
place-bottom-left = en bas à gauche
place-bottom-right = en bas à droite
run-list-no-source = Valeurs sans source :
run-list-not-given = Valeurs NON DONNÉ :
run-checked = aucune erreur : { $documents ->
    [one] { $documents } document
   *[other] { $documents } documents
} à partir de { $sensors ->
    [one] { $sensors } capteur
   *[other] { $sensors } capteurs
} pour { $vehicles ->
    [one] { $vehicles } véhicule
   *[other] { $vehicles } véhicules
} ; { $no-source ->
    [one] { $no-source } valeur sans source
   *[other] { $no-source } valeurs sans source
}, { $not-given ->
    [one] { $not-given } valeur NON DONNÉ
   *[other] { $not-given } valeurs NON DONNÉ
}

## Labels of the templates

paper-applies = concerne
paper-place = endroit
paper-draft = PROJET
paper-code = Code
paper-page = page
paper-of = sur
paper-check-bar = mesurer : 100 mm ; sinon, imprimer à 100 %
paper-printed-sheet = feuille
paper-printed-sheets = Fiches sur feuilles
paper-front = recto
paper-back = verso
paper-cut-to = couper à
paper-pouch = pochette, intérieur au moins
paper-uncontrolled = copie non maîtrisée
paper-changed-more = de plus
paper-sources = Sources
paper-sources-at-end = sources à la fin


paper-offset = retour +
paper-other-unit = autre calcul.
paper-switched = commutée
paper-measuring = Comment mesurer
paper-circuit = Circuit
paper-latch = verrou
paper-inputs = Entrées
paper-readings-not-given = Ce que donne une bonne pièce est NON DONNÉ
paper-pressure-volts = p → V
paper-outputs = Sorties
paper-face-not-given = Dessin NON DONNÉ : pas de rangées
paper-pin = Voie
paper-wire = Fil
paper-function = Fonction
paper-tested = Essayé par
paper-control-unit = calculateur
paper-input = entrée
paper-plot-key = épais : nominal · fin : limites
paper-readings = Si le multimètre lit
paper-next = Suite
paper-given = Données
paper-given-what = quoi
paper-given-value = valeur
paper-source = source


paper-at = Fenêtres ci-dessous pour une température d’atelier de
paper-unit-pin = calc.
paper-behaves = S’il se comporte ainsi
paper-recalibration = Réapprentissage des butées
paper-actuator = actionneur
paper-serial = Nº de série
paper-cal-due = Étalonnage dû
paper-number = Nº
paper-measure = Mesurer
paper-where = Où
paper-reading = Relevé
paper-ok = OK
paper-not-ok = pas OK
paper-undecided = indécis
paper-initials = Visa
paper-meanings = Si l’un d’eux n’est pas OK
paper-wave-period = période
paper-wave-on = niveau haut
paper-evidence = Preuves, et les mêmes après les travaux
paper-evidence-what = Relevé
paper-evidence-window = Fenêtre
paper-evidence-before = Avant
paper-evidence-after = Après
paper-windows = Fenêtres de la feuille d’essais
paper-papers = Documents utilisés : cocher si le code affiché est celui-ci ; sinon, le noter aux points ouverts
paper-else = Ce que dit un mauvais relevé
paper-remarks = Remarques

## Tables of figures, on a screen

table-own-rule = règle propre à l’atelier
table-min = min
table-nominal = nominal
table-max = max
table-figure-block = bloc
table-figure-place = se trouve à
table-figure-printed = imprimé
table-figure-unit = unité
table-figure-value = non arrondi
table-figure-rounding = arrondi
table-figure-note = Chaque nombre calculé pour ce papier, tel qu’imprimé et non arrondi. Ce que donnent les spécifications y figure tel quel : voir les entrées.
table-plot-logarithmic = { $curve }, logarithmique
table-plot-none = `{ $id }` n’a pas de courbe à tracer : son tableau n’a pas d’ohms ou de volts nominaux qui montent ou descendent
table-input = { $label } : { $value }  ({ $key } ; { $source })
table-input-of-instrument = { $id }, { $label } : { $value }  ({ $key } ; { $source })
table-switched = V, 2ᵉ résistance en circuit
table-count = points
table-count-step = { $unit } par point
table-still = { $unit } par courant propre, air calme
table-moving = { $unit } par courant propre, air en mouvement
table-looks-broken-below = En dessous de { $at }, le calculateur peut tenir un bon capteur pour { $looks } : pire cas sur toutes les tolérances (nominal : en dessous de { $nominal }).
table-looks-broken-above = Au-dessus de { $at }, le calculateur peut tenir un bon capteur pour { $looks } : pire cas sur toutes les tolérances (nominal : au-dessus de { $nominal }).
table-looks-broken-below-nominal = En dessous de { $at }, le calculateur tient un capteur nominal pour { $looks } ; pire cas NON DONNÉ ou hors de la courbe.
table-looks-broken-above-nominal = Au-dessus de { $at }, le calculateur tient un capteur nominal pour { $looks } ; pire cas NON DONNÉ ou hors de la courbe.
table-open = coupé
table-shorted = en court-circuit
table-beyond-range = C’est hors de la plage du capteur.
table-formula-counts = Points : V/Vref × (2ᵇ − 1), arrondi (usage courant, sans source) ; K par point d’après la pente de V/Vref.
table-note-counts-unloaded = Les points sont ceux sans multimètre sur la voie.
table-formula-self-heating = Courant propre : le ΔT pour lequel V²/R du capteur échauffé vaut δ ΔT, avec δ la constante de dissipation (sa définition, CEI 60539-1, numéro de mémoire).
table-formula-beta = R = R₀ exp[B (1/T − 1/T₀)], T en kelvins : formule de thermistance à deux paramètres (usage courant ; vérifiée sur des exemples chiffrés de fabricants de composants).
table-formula-steinhart-hart = 1/T = a + b ln R + c (ln R)³, T en kelvins, R en ohms (Steinhart et Hart, Deep-Sea Research 15, 1968 ; titre de mémoire).
table-formula-points = Entre les points : morceaux cubiques d’Hermite monotones de ln R sur 1/T, par chaque point (Fritsch et Carlson, SIAM J. Numer. Anal. 17, 1980, 238 ; titres de mémoire) ; pente en un point : moyenne harmonique pondérée des pentes de part et d’autre (Fritsch et Butland, SIAM J. Sci. Stat. Comput. 5, 1984, 300), à une extrémité par la formule à trois points des deux morceaux les plus proches, limitée au sens et au triple de la pente de son morceau (vérifiée par des lignes retirées de tables publiées).
table-formula-tolerance-rated = Limites de R : R (1 ± δR) (R/R₀)^(± δB), les coins exacts des tolérances de R et de B.
table-formula-tolerance-plain = Limites de R : R (1 ± δR) à toute température.
table-formula-tolerance-temperature = Limites de R : la courbe à T + δT et à T − δT.
table-formula-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ avec L = ln(R/R₀), T en kelvins ; R₀ vaut 1 Ω si aucune résistance n’est donnée (vérifiée sur des coefficients publiés).
table-formula-platinum = R = R₀ (1 + A t + B t²), en dessous de 0 °C + C (t − 100) t³ en plus, t en °C ; A = 3,9083·10⁻³, B = −5,775·10⁻⁷, C = −4,183·10⁻¹² (CEI 60751).
table-formula-silicon = R = R₀ [1 + a (T − T₀) + b (T − T₀)²] (formule du second degré des fabricants de capteurs au silicium).
table-formula-tolerance-class = Limites de R : la courbe à t + δt et à t − δt, avec δt de la classe : AA 0,1 + 0,0017 |t|, A 0,15 + 0,002 |t|, B 0,3 + 0,005 |t|, C 0,6 + 0,01 |t|, en K (CEI 60751).
table-formula-tolerance-columns = Limites de R : les colonnes min et max de la table de la source, chacune interpolée pour elle-même.
table-formula-pull-up = V = Vref R / (R + Rp), R étant le capteur avec ce qui lui est en série et en parallèle, Rp la pull-up (lois de Kirchhoff).
table-formula-pull-down = V = Vref Rp / (R + Rp), R étant le capteur avec ce qui lui est en série et en parallèle, Rp la pull-down (lois de Kirchhoff).
table-formula-window = Limites de V : min et max sur toute combinaison des extrémités de toutes les tolérances ; arrondies vers l’intérieur.
table-formula-slope = %/K = 100 (dR/dT)/R, d’après la dérivée de la courbe.
table-formula-plausible = Plausible : V/Vref sans multimètre entre les deux parts de la référence données aux entrées ; résolu pour la température où ses limites en sortent.
table-formula-loaded = Avec le multimètre, sa résistance d’entrée Rm est entre la voie et le retour : dans la formule de V, R ∥ Rm remplace R d’un circuit à pull-up, Rp ∥ Rm remplace Rp d’un circuit à pull-down.

table-yes = oui
table-no = non
table-modes-title = Modes de façade de { $system } : ce que chacun impose
table-stuck-title = Points de commande bloqués de { $system }, et les modes qui les révèlent
table-mode = mode
table-name = nom
table-time = en, s
table-forced = imposé
table-in-smallest = dans le plus petit jeu
table-free = libre
table-dont-care = indifférent
table-control = point de commande
table-stuck-at = bloqué à
table-forced-by = imposé par
table-exposed-by = révélé par
table-first-exposing = premier du plus petit jeu
table-modes-smallest = Plus petit jeu de modes qui passe par toute valeur imposée : { $modes } ({ $count } sur { $all } ; prouvé, aucun jeu plus petit ne le fait).
table-modes-small = Un petit jeu de modes qui passe par toute valeur imposée : { $modes } ({ $count } sur { $all }). Plus de { $most } modes : pas prouvé que c’est le plus petit ; il en faut au moins { $least }.
table-modes-nothing = Aucun mode n’impose rien : il n’y a rien à parcourir.
table-modes-alone = Seul { $mode } impose : { $values }.
table-modes-never-forced = Aucun mode n’impose : { $values }.
table-modes-hidden = Aucun mode ne révèle un point de commande bloqué à : { $values }.
table-modes-none-hidden = Tout point de commande bloqué à l’une de ses valeurs est révélé par un mode.
table-formula-smallest-set = Plus petit jeu : le moins de modes dont l’un au moins impose chaque valeur imposée de chaque point de commande ; tous les jeux sont examinés jusqu’à { $most } modes, et de plusieurs on prend le premier par le rang des modes (recherche propre).
table-formula-stuck-at = Un point de commande bloqué à une valeur est révélé par chaque mode qui en impose une autre ; libre et indifférent ne révèlent rien (usage courant, sans source).
table-panel-end = extrémité
table-panel-low = basse
table-panel-high = haute
table-panel-mark = signifie
table-panel-celsius = °C donnés
table-panel-celsius-in-f = soit en °F
table-panel-fahrenheit = °F donnés
table-panel-fahrenheit-in-c = soit en °C
table-panel-difference = °C moins °F, K
table-panel-agrees = concorde
table-panel-conversions = Les deux échelles sont la conversion l’une de l’autre, à l’arrondi de leurs chiffres près.
table-panel-separate = Les deux échelles ne sont pas la conversion l’une de l’autre : aucune ne doit être calculée de l’autre.
table-panel-spans = Étendue : { $celsius } °C sur l’une ; { $fahrenheit } °F = { $kelvins } K sur l’autre.
table-panel-one-scale = Une seule échelle : l’autre n’en est pas calculée.
table-formula-scales = t/°C = (t/°F − 32) / 1,8 ; un écart de 1 K vaut 1,8 °F (définitions des échelles).
table-formula-scales-agree = Les deux lectures d’une extrémité concordent si leur écart n’excède pas un demi-pas du dernier chiffre affiché, en °C ou °F, le plus grand des deux.
table-head-ice = dès glace
table-head-bay = dès atelier
table-junction-ice = Soudure froide à 0 °C ; avec --at, aussi pour une soudure froide à la température d’atelier.
table-junction-at = « Dès atelier » : soudure froide à { $at }, comme sur un voltmètre à l’atelier ; « dès glace » : à 0 °C.
table-formula-thermocouple = E(t) = Σ cᵢ tⁱ, t en °C ; pour le type K au-dessus de 0 °C aussi a₀ exp[a₁ (t − a₂)²] (fonctions de référence EIT-90 : coefficients de NIST Monograph 175, SRD 60, table du type { $type } ; identiques dans la CEI 60584-1). Dans ce programme : src/physics/thermocouple.rs.
table-formula-junction = Avec la soudure froide à t₀ : E(t) − E(t₀). Les f.é.m. s’ajoutent, pas les températures.
table-site = Lectures des manomètres en ce lieu : pression atmosphérique { $pressure } de l’atmosphère type, ± { $weather } selon le temps (usage courant, sans source).
table-note-gauges-by-scale = Surchauffe par le manomètre d’aspiration, sous-refroidissement par celui de refoulement ; à l’arrêt par celui d’aspiration si la lecture est sur son échelle, sinon par celui de refoulement.
table-note-gauge-scale = { $gauge } : sur son échelle jusqu’à { $full }.
table-note-gauge-missing = { $gauge } NON DONNÉ : – là où lui seul pourrait le dire.
table-no-site = Lectures des manomètres NON DONNÉ : l’altitude de l’atelier n’est pas connue, et le niveau de la mer n’est pas supposé.
table-air-site = À la pression atmosphérique de ce lieu, { $pressure } (atmosphère type).
table-no-air-site = Chiffres NON DONNÉ : l’altitude de l’atelier n’est pas connue, et le niveau de la mer n’est pas supposé.
table-absolute = { $unit } abs
table-gauge = { $unit } relatif
table-mark = repère
table-vacuum = vide
table-suction-min = aspiration min { $unit }
table-suction-max = aspiration max { $unit }
table-superheat-u = surchauffe ± { $unit }
table-liquid-min = liquide min { $unit }
table-liquid-max = liquide max { $unit }
table-subcooling-u = sous-refroid. ± { $unit }
table-at-rest-min = à l’arrêt min { $unit }
table-at-rest-max = à l’arrêt max { $unit }
table-source-r134a = équation auxiliaire de CoolProp 8.0.0 d’après J. Phys. Chem. Ref. Data 23 (1994) 657, −30 °C à 80 °C
table-source-r1234yf = équation auxiliaire de CoolProp 8.0.0, troisième exposant lu 2, d’après Int. J. Thermophys. (2022), −34 °C à 80 °C
table-source-r744 = équation auxiliaire de CoolProp 8.0.0 d’après J. Phys. Chem. Ref. Data 25 (1996) 1509, −30 °C au point critique
table-formula-saturation = Saturation de { $fluid } : p = pc exp[(Tc/T) Σ nᵢ θ^tᵢ], θ = 1 − T/Tc ({ $source }) ; à ± { $limit } près de la pression absolue.
table-formula-saturation-terms = { $fluid } : Tc = { $temperature } K, pc = { $pressure } kPa ; nᵢ (tᵢ) : { $terms }.
table-formula-gauge = Relative = absolue − pression atmosphérique ; pression atmosphérique = 101,325 kPa × (1 − 2,25577 × 10⁻⁵ Z)^5,2559, Z en mètres (ASHRAE Handbook Fundamentals 2017, chapitre 1, équation 3). Sous zéro, le manomètre montre un vide : ce n’est pas un défaut.
table-formula-suction = Ligne d’aspiration : température de saturation + surchauffe ; limites arrondies vers l’intérieur, et le ± à côté n’est pas encore déduit.
table-formula-liquid = Ligne de liquide : température de saturation − sous-refroidissement ; limites arrondies vers l’intérieur, et le ± à côté n’est pas encore déduit.
table-formula-at-rest = À l’arrêt, stabilisé : les lectures qui prouvent la saturation, la bande autour d’elle moins U de chaque côté (JCGM 106:2012, garde w = U). – : aucune lecture ne le pourrait, ou aucune à la saturation même. Bien en dessous, ou au-dessus : confier à un personnel attesté ; au-dessus suggère des gaz incondensables (usage courant, sans source). Cela ne dit rien de la quantité de liquide.
table-formula-superheat-u = ± K de surchauffe et de sous-refroidissement, arrondi vers le haut : k = 2, de manomètre, temps et équation divisés par dp/dT, et du thermomètre, chacun limite/√3 (JCGM 100:2008, 5.1.2). – : hors de l’échelle du manomètre, ou manomètre, thermomètre ou altitude non donnés.
table-note-above-critical = Au-dessus de { $critical }, température critique de { $fluid }, il n’y a pas de saturation : le contrôle à l’arrêt n’y vaut rien, ni dans un atelier qui en est proche.
table-intake = entrée d’air
table-outside = extérieur { $unit }
table-humidity = HR %
table-inlet = entrée { $unit }
table-dew-point = rosée { $unit }
table-water = W { $unit }
table-outlet = sortie { $unit }
table-settled = condensé { $unit }
table-dripping = gouttes
table-drips = oui
table-stays-dry = non
table-undecided = indécis
table-fog = brouillard
table-held = régulation évaporateur
table-held-least = min : régulation évaporateur
table-formula-moist-air = W = 0,621945 pw/(p − pw), h = 1,006 t + W (2501 + 1,86 t) en kJ par kg d’air sec ; saturation sur l’eau, sous 0,01 °C sur la glace, d’après Hyland et Wexler (ASHRAE Handbook Fundamentals 2017, chapitre 1, équations 5, 6, 20, 22, 30).
table-formula-mixed-air = Entrée : air extérieur et air habitacle en masse d’air sec, W = x Wext + (1 − x) Whab, h de même.
table-formula-outlet = Sortie : h moins la puissance massique. Sec si cela laisse moins de { $humidity } d’humidité relative ; sinon de l’eau se condense et l’air sort à { $humidity } (l’hypothèse de la spécification).
table-formula-settled = La chaleur qu’emporte l’eau condensée est négligée : dans ces lignes jusqu’à { $percent } % de la puissance, W c t/q avec W l’eau condensée, c = 4,186 kJ/(kg K) pour l’eau, t la sortie en °C, q la puissance massique. Avec elle, l’air sortirait plus froid.
table-formula-outlet-window = Limites de la sortie : coins du thermomètre, de l’hygromètre et de la puissance, arrondies vers l’intérieur. NON DONNÉ (–) sans les trois. Marqué « min : régulation évaporateur » : le coin est sous ce à quoi l’évaporateur est tenu, et c’est cela le minimum. Marqué « régulation évaporateur » : la sortie nominale aussi ; elle n’est pas atteinte et aucun chiffre n’est donné.
table-request-title = { $request }, états sur son scénario
table-request-no-scenario = La spécification n’a pas de scénario.
table-request-incomplete = Un seuil, une temporisation ou le temps d’attente est NON DONNÉ : les états du scénario ne sont pas calculés.
table-from = de s
table-to = à s
table-state = État
table-held-back-by = Retenue par
table-request-absent = pas demandée
table-request-inhibited = demandée, retenue
table-request-delayed = demandée, attente en cours
table-request-permitted = accordée
table-formula-condition = Condition : établie quand sa valeur a été à son seuil ou au-delà pendant la temporisation, relâchée quand elle a été à son seuil de retour ou au-delà pendant la temporisation de retour, entre les deux comme avant ; un contact sans durée ne compte pas. À 0 s comme si la valeur y était depuis toujours, relâchée si elle est entre les deux (usage courant, sans source).
table-formula-request = Demande : retenue tant qu’une condition qui autorise est relâchée ou qu’une qui interdit est établie ; accordée quand elle a existé, sans que rien la retienne, pendant le temps d’attente sans interruption (usage courant, sans source).
table-formula-dripping = Gouttes : oui si le point de rosée de l’entrée est au-dessus de toute température à laquelle l’évaporateur est tenu, non s’il est au-dessous de toutes ; indécis entre les deux, ou dans les limites des instruments, et aussi là où la puissance nominale condenserait un peu d’eau.
table-duty = RC %
table-ripple = ondulation
table-conduction = courant
table-continuous = continu
table-discontinuous = cesse
table-meter-across = V moyen
table-displacement = cylindrée %
table-step = vitesse
table-bypass = relais
table-across-motor = V moteur
table-at-battery = { $what } à { $battery }
table-heat = W série
table-to-ground = V borne commutée à masse
table-of-limit = % de la limite
table-note-coil = Ω : contact coupé, débranché, résistance des cordons déduite. A : toujours fermé, sans chute dans le commutateur.
table-note-battery = Batterie { $low } à { $high }.
table-note-nominal-battery = Nominal : batterie { $nominal }.
table-note-isolation = Bobine à boîtier : { $least } ou plus.
table-note-solenoid-nominal = Nominal : batterie { $battery }, bobine à { $at }.
table-note-solenoid-limits = Limites : batterie { $low } à { $high }, bobine { $cold } à { $hot }.
table-note-ceiling = Avec { $battery }, aucun RC ne donne plus que (Vb − Vs)/R, avec le plus petit Vs de { $drop } : { $most } avec une bonne bobine chaude de { $least }, { $fewest } avec une de { $greatest }.
table-note-less-displacement = Plus d’intensité signifie moins de cylindrée.
table-note-more-displacement = Plus d’intensité signifie plus de cylindrée.
table-note-no-timing = Inductance ou fréquence NON DONNÉ : pas d’ondulation ; la moyenne vaut si le courant ne cesse jamais entre les impulsions, et elle est plus élevée s’il cesse.
table-note-averaging = V moyen : aux bornes de la bobine nominale ; RC × batterie seulement pour un créneau net.
table-note-hottest = Avec { $battery } et des fils nominaux, le transistor est au plus chaud à { $percent } % de la batterie, { $volts } V aux bornes du moteur : pas plus de { $watts } W. Danger de brûlure.
table-note-hottest-step = Avec { $battery }, les résistances sont au plus chaud à la vitesse { $step } : { $watts } W, tout nominal. Danger de brûlure.
table-note-no-wiring = Câblage NON DONNÉ : volts et chaleur sans la part des fils, qui ne fait que les réduire.
table-note-low-side = Mesurer aux bornes du moteur. Par rapport à la masse, la borne côté alimentation est à la tension batterie à toute vitesse, même moteur arrêté ; la borne côté commuté est à la batterie moins les volts du moteur.
table-note-high-side = Mesurer aux bornes du moteur. Masse perdue, les deux bornes sont à la même tension par rapport à la masse, et le moteur ne tourne pas.
table-note-wire-listed = Max : le plus que la norme des câbles admet. Nominal : cuivre massif.
table-note-wire-gauge = Nominal : cuivre massif de cette jauge ; un fil souple a quelques pour-cent de plus. Max NON DONNÉ : la norme des câbles ne connaît pas de numéros de jauge.
table-note-wire-theory = Théorique : cuivre massif de la section nominale ; un fil réel a 3 à 15 % de plus. Max NON DONNÉ : section ou classe hors de la norme des câbles.
table-note-wire-drop = Il n’y a de chute que si le courant passe.
table-note-wire-metre = Un mètre à 20 °C : { $nominal } nominal.
table-note-wire-metre-greatest = Un mètre à 20 °C : { $nominal } nominal, { $greatest } au plus.
table-note-wire-limit = % de la limite : V max en part de la limite de { $limit }.
table-note-wire-limit-nominal = % de la limite : V nominal en part de la limite de { $limit }, car V max n’est pas connu.
table-formula-copper = R = R₁ (1 + α (t − 20 °C)) / (1 + α (t₁ − 20 °C)), α = 0,00393 /K à 20 °C (CEI 60028). Limites : les extrémités de la tolérance de R₁.
table-formula-ceiling = I (colonne A) = Vb/R : min avec la batterie la plus basse et le plus grand R, max avec la batterie la plus haute et le plus petit R (loi d’Ohm).
table-formula-switched = L dI/dt = v − R I, résolu sur une période établie : v = Vb − Vs fermé, −Vf ouvert, rien quand le courant a cessé ; la colonne A est la moyenne de I, jamais sous 0 A ; ondulation par les exponentielles de L/R (vérifiée par une simulation temporelle).
table-formula-continuous = I (colonne A) = (D (Vb − Vs) − (1 − D) Vf)/R, la moyenne tant que le courant ne cesse jamais, pas sous 0 A ; D rapport cyclique, Vs chute du commutateur, Vf chute de la diode.
table-formula-mean-window = Limites de l’intensité moyenne : min et max sur toute combinaison des extrémités de la batterie, des chutes et de R ; inductance et fréquence telles que données.
table-formula-averaging = V moyen = R × intensité moyenne : une inductance ne prend aucune tension moyenne.
table-formula-displacement = Cylindrée : segments de droite entre les points de la spécification ; au-delà, seulement qu’elle n’est pas plus (≤) ou pas moins (≥) qu’au dernier d’entre eux.
table-formula-step = V moteur = part de la vitesse × batterie, mesuré aux bornes du moteur. Limites de Vm/Vb : la tolérance de la vitesse, quelle que soit la batterie.
table-formula-resistors = V moteur d’après Vb − Vm = R I(Vm), R étant la résistance de la vitesse et les fils (loi des mailles de Kirchhoff). Limites de Vm/Vb : min et max sur les deux extrémités de la batterie et de la résistance ; moteur et fils nominaux.
table-formula-motor = I (colonne A) = I₀ (Vm/V₀)ⁿ avec I₀ à V₀ (un modèle ; n d’environ 1,7 pour une turbine de pulseur est d’usage courant, sans source).
table-formula-heat = W série = (Vb − Vm − Rw I) I, avec Rw les fils ; maximal où (n + 1) Vm + 2 n Rw I = n Vb (dérivée nulle).
table-formula-heat-resistors = W série = (Vb − Vm − Rw I) I, avec Rw les fils : la chaleur de la résistance de la vitesse.
table-formula-bypass = Relais : Vb moins la chute du relais et celle des fils.
table-formula-wire-nominal = Ω nominal = n l ρ/S (1 + α (t − 20 °C)), ρ = 1/58 Ω mm²/m, α = 0,00393 /K (CEI 60028) ; n conducteurs de longueur l et de section S.
table-formula-wire-gauge = S = π d²/4, d = 0,127 mm × 92^((36 − jauge)/39) (ASTM B258 ; formule de mémoire, vérifiée sur une table imprimée).
table-formula-wire-greatest = Ω max = de même avec la résistance maximale à 20 °C de la CEI 60228 (cuivre nu, telle que la citent les fabricants de câbles ; classes 5 et 6 dès 10 mm² de mémoire).
table-formula-wire-drop = V = I × Ω, avec I l’intensité des entrées (loi d’Ohm).

## Faults and judgements, on a screen

fault-open = coupure dans le capteur ou son connecteur
fault-open-wire = fil coupé
fault-short-to-return = capteur en court-circuit
fault-short-to-ground = signal à la masse
fault-short-to-reference = signal à la référence
fault-short-to-battery = signal au plus batterie
fault-series = résistance dans les fils
fault-leak = fuite entre les deux fils du capteur
fault-leak-to-battery = fuite du plus batterie vers le signal
fault-lifted-return = retour au-dessus de la masse
fault-shifted-resistance = résistance du capteur décalée, du même % à toute température
fault-shifted-slope = pente du capteur (valeur B) décalée
fault-other-part = autre pièce : { $title }, { $id }
fault-wrong-resistor = résistance du calculateur décalée
fault-unit-still-mated = ohms relevés sans rien débrancher : débrancher et répéter
fault-wiper-open = curseur ou signal coupé
fault-track-open = piste coupée
fault-track-open-to-return = piste coupée côté retour
fault-track-open-to-reference = piste coupée côté référence
fault-reference-lost = référence coupée
fault-return-lost = retour coupé
fault-signal-to-return = signal au retour
fault-contact-resistance = mauvais contact du curseur
fault-slipped = curseur décalé, de la piste
fault-winding-open = enroulement coupé
fault-coil-shorted = bobine en court-circuit
fault-shorted-turns = spires en court-circuit
fault-other-coil = autre bobine
fault-other-temperature = bobine à une autre température
fault-signal-open = fil de signal coupé
fault-offset = sortie décalée
fault-absolute-part = capteur absolu, pas relatif
fault-gauge-part = capteur relatif, pas absolu
fault-light-open = capteur, ou l’un de ses fils, coupé
fault-light-shorted = capteur en court-circuit
fault-light-covered = capteur couvert
faults-fault = défaut
faults-size = taille
faults-believed = calculateur croit { $unit }
faults-separable = distingué du bon
faults-separable-by = par
faults-alike = se lit comme le nº
faults-yes = oui
faults-no = non
faults-open-line = OL
faults-at-unit = À { $at }, au connecteur du calculateur : volts connecté, contact mis ; ohms calculateur débranché, contact coupé, après avoir constaté 0 V.
faults-at-sensor = À { $at }, au connecteur du capteur : volts connecté, contact mis ; ohms du capteur seul, débranché, contact coupé, après avoir constaté 0 V.
faults-at-feedback = Au connecteur du calculateur. V : signal à retour, connecté, contact mis. Ohms entre les fils, calculateur débranché, contact coupé, après avoir constaté 0 V : sig signal, ret retour, réf référence.
faults-at-coil = À { $at }, température propre de l’enroulement. Ω : par les fils vers la bobine, étage débranché, contact coupé, après avoir constaté 0 V. V : aux bornes de la bobine à son connecteur, connecté, à fond. Ce que les cordons ajoutent est dans ±.
faults-at-transducer = V : signal à retour au connecteur du calculateur, connecté, contact mis ; sans charge de multimètre. Pas d’ohms : un tel capteur est électronique, ses ohms ne disent rien (usage courant, sans source).
faults-at-light = V : signal à retour au connecteur du calculateur, connecté, contact mis. Pas d’ohms : ceux d’une diode dépendent de l’ohmmètre (usage courant, sans source).
faults-no-matter = Sa propre température n’a pas de part à ces relevés : les spécifications n’en disent rien.
faults-no-instrument = Sans instrument, seules les fenêtres des tolérances distinguent les défauts : en nommer un avec `--instrument`.
faults-no-nominal-stops = Les butées sont données en fenêtres, sans valeurs nominales : ce qui dépend de la position n’a pas de relevé nominal (–), ni de position que croit le calculateur.
faults-contacts-too = Ses contacts ne sont pas ici : leurs défauts figurent sous `bayleaf table { $id }`.
faults-no-nominal-battery = Ni volts ni ampères : `nominal` de la batterie est NON DONNÉ.
faults-no-coil-tolerance = La tolérance de la bobine est NON DONNÉ : la plupart des défauts ne se distinguent pas du bon.
faults-signal-open = Signal coupé : rien dans les spécifications ne dit où est alors la voie (–).
faults-beyond-line = Un relevé au-delà de la droite n’est pas connu, faute de bornes données (–).
faults-wiper-contact = (sig–ret + sig–réf − réf–ret)/2 est le contact du curseur, quelles que soient la tolérance de la piste et la position.
faults-no-elevation = Un capteur de l’autre sorte est omis : `elevation` de l’atelier est NON DONNÉ.
faults-good = Bon : { $reading }.
faults-good-at = Bon à { $position }, { $test } : { $reading }.
faults-unplugged = Capteur débranché, côté faisceau de son connecteur, contact mis : { $reading }. Toute autre valeur : fil ou calculateur.
faults-substitute = { $resistor } à la place du capteur : { $reading } ; le calculateur croit alors { $simulates }. Si oui, fils et calculateur sont bons. Mesurer d’abord la résistance.
faults-reading = { $nominal }, limites { $range }
faults-reading-doubt = { $nominal }, limites { $range }, ± { $doubt } (k = 2)
faults-ohms = Ω
faults-ohms-to-return = Ω sig–ret
faults-ohms-to-reference = Ω sig–réf
faults-ohms-end-to-end = Ω réf–ret
faults-volts = V
faults-volts-min = V min
faults-volts-max = V max
faults-amperes = A
faults-position = à %
faults-pressure = à { $unit }
faults-believed-position = calculateur croit %
faults-believed-pressure = calculateur croit { $unit }
faults-believed-light = calculateur croit W/m²
faults-no-ohms = Pas d’ohms : ils ne se calculent pas ici.
faults-no-volts = Pas de volts : résistance ou référence du circuit NON DONNÉ.
faults-no-battery = Les défauts vers le plus batterie sont omis : `battery` du système `{ $system }` est NON DONNÉ.
faults-formula-reading = Relevés : les formules ci-dessus avec une chose fausse. Dans le capteur : coupé, en court-circuit, résistance ou pente décalée, autre pièce. Dans les fils entre calculateur et capteur : fil coupé, courts-circuits, fuite, résistance trop grande. Les ohms au calculateur sont capteur, résistance série et fils ; en volts, le multimètre sur la ligne est en parallèle (lois de Kirchhoff ; vérifiées par un simulateur de circuits).
faults-formula-believed = Calculateur croit : la température derrière son propre relevé, comme si rien n’était faux ; vide si aucune température de la courbe ne le donne.
faults-formula-separable = Distingué du bon : les fenêtres du bon et du défectueux sur toutes les tolérances, chacune élargie de l’incertitude du relevé, ne se touchent pas (JCGM 100, k = 2).
faults-formula-position = Calculateur croit : (V/Vref − r₀)/(r₁ − r₀) entre les butées nominales, sans le multimètre ; sous 0 ou au-dessus de 100, c’est au-delà d’une butée (usage courant, sans source).
faults-formula-coil = A = Vb/R avec la batterie nominale ; V aux bornes de la bobine = Vb R/(R + série) ; des spires en court-circuit emportent la même part des ohms (loi d’Ohm).
faults-formula-pressure = Calculateur croit : la pression sur la même droite, si loin que ce soit ; un calculateur qui connaît ses limites y voit plutôt un défaut (usage courant, sans source).
faults-formula-sizes = Tailles : celles que rencontre un atelier (usage courant, sans source).
judge-instruments = Instruments : { $meter } ; { $thermometer }
judge-instruments-of = ceux de { $id }
judge-none = aucun
run-no-sensor = aucun capteur ne s’appelle `{ $id }`
run-no-sensor-near = aucun capteur ne s’appelle `{ $id }` ; vouliez-vous dire `{ $near }` ?
run-no-faults = rien qui ait une liste de défauts ne s’appelle `{ $id }`
run-no-faults-near = rien qui ait une liste de défauts ne s’appelle `{ $id }` ; vouliez-vous dire `{ $near }` ?
run-faults-no-temperature = ce que donne `{ $id }` dépend de sa température : la donner, par exemple `--at "31 °C"`
run-faults-place = `--place` est pour les capteurs : `{ $id }` n’a qu’un endroit
run-faults-position = `--position` est pour les actionneurs à potentiomètre de recopie, et `{ $id }` n’en est pas un
run-faults-pressure = `--pressure` est pour les capteurs de pression, et `{ $id }` n’en est pas un
run-faults-pressure-outside = { $at } est au-delà de la droite de `{ $id }`, { $low } à { $high }, et aucunes bornes ne sont données
run-faults-not-given = les défauts de `{ $id }` ne peuvent être calculés : NON DONNÉ : { $what }
run-faults-contacts = `{ $id }` a des contacts et pas de potentiomètre de recopie : leurs défauts figurent sous `bayleaf table { $id }`
run-faults-no-coil = `{ $id }` est un pulseur : il n’a pas de bobine dont les défauts se laisseraient lister
run-no-instrument = aucun multimètre ou thermomètre ne s’appelle `{ $id }`
run-no-instrument-near = aucun multimètre ou thermomètre ne s’appelle `{ $id }` ; vouliez-vous dire `{ $near }` ?
judge-circuit = circuit (résistance ou référence)
judge-tolerance = tolérance
judge-circuit-tolerance = tolérance d’une résistance, de la référence ou de l’entrée du multimètre
judge-good = bon capteur
judge-reading = Donne { $value }, { $test }, capteur à { $at }.
judge-volts-at-unit = volts au connecteur du calculateur, connecté, contact mis
judge-volts-at-sensor = volts au connecteur du capteur, connecté, contact mis
judge-volts-unplugged = volts au connecteur du capteur, côté faisceau (contact coupé, débrancher le capteur, contact mis)
judge-ohms-at-sensor = ohms au capteur, débranché (contact coupé ; d’abord constater 0 V)
judge-ohms-at-unit = ohms au connecteur du calculateur, côté faisceau, capteur connecté (contact coupé, débrancher le calculateur ; d’abord constater 0 V)
judge-pass = CONFORME : dans ses limites.
judge-fail = NON CONFORME : hors de ses limites.
judge-undecided = INDÉCIS : trop près d’une limite pour ces instruments.
judge-window = Limites d’un bon capteur dans un bon circuit : { $low } à { $high } { $unit }.
judge-guarded = Un relevé y est sûr à ± { $doubt } { $unit } (k = 2) : { $low } à { $high } { $unit } est conforme.{ $risk }
judge-simple = Un relevé y est sûr à ± { $doubt } { $unit } (k = 2) ; l’atelier décide aux limites mêmes.{ $risk }
judge-no-reading-passes = Un relevé y est sûr à ± { $doubt } { $unit } (k = 2) : avec ces instruments, aucun relevé ne peut être conforme ici.
judge-no-doubt = À quel point un relevé est sûr est NON DONNÉ : il manque l’exactitude du multimètre.
judge-not-compared = Non comparés, car leur tolérance est NON DONNÉ : { $parts }.
judge-risk = { " " }Risque que le verdict soit faux : { $risk }.
judge-left-out = Pas dans ±, car NON DONNÉ : { $what }.
judge-source-thermometer = thermomètre
judge-source-soak = stabilisation
judge-source-leads = cordons
judge-source-meter = multimètre
judge-service = Limite de service ± { $limit } : { $low } à { $high } { $unit } ; { $verdict }.
judge-service-pass = dedans : le capteur n’explique pas une plainte
judge-service-fail = dehors : ceci explique une plainte
judge-service-undecided = indécis
judge-believed = Le calculateur croit { $at }.
judge-believes-nothing = Il n’y a pas de température que le calculateur puisse en croire.
judge-causes = Défauts simples qui expliquent le relevé :
judge-no-cause = Aucun défaut simple de la liste n’explique le relevé : regarder de nouveau, ou en soupçonner deux à la fois.
judge-any-size = de toute taille
judge-up-to = jusqu’à { $high }
judge-from = { $low } ou plus
judge-between = { $low } à { $high }
judge-or-none = , ou pas du tout
judge-expected = { "  " }{ $range } : { $who }
judge-next = Ensuite : { $test }, à { $at } ; cela distingue { $pairs } paires de suspects sur { $of }.
judge-next-reads = Là, les suspects donnent :
judge-next-pass = Ensuite : rien à réparer. Un défaut intermittent est conforme ici : enregistrer min et max en remuant, chauffant et mouillant les fils.
judge-next-one-suspect = Ensuite : un seul suspect : le confirmer par un second essai (une résistance connue à la place du capteur, ou l’eau glacée) avant de rien remplacer.
judge-next-none-separates = Ensuite : aucune mesure seule ne distingue ces suspects ; pièce par pièce : remplacer le capteur par une résistance de mêmes ohms, puis mesurer les fils de bout en bout.
judge-next-nothing-explains = Ensuite : répéter le relevé ; vérifier multimètre, calibre, endroit et température du capteur.
judge-steps = Les étapes propres au responsable :
judge-remedy-soak = Ce serait décidé ({ $verdict }) en laissant capteur et thermomètre se stabiliser à { $limit } l’un de l’autre.
judge-remedy-thermometer = Ce serait décidé ({ $verdict }) par un thermomètre exact à { $limit }.
judge-remedy-temperature = Ce serait décidé ({ $verdict }) en répétant à { $at }.
judge-remedy-at-sensor = Ce serait décidé en mesurant les ohms au capteur, débranché : { $verdict } là, si le capteur est tel qu’il paraît d’ici.
judge-remedy-at-unit = Ce serait décidé en mesurant les volts au calculateur, connecté : { $verdict } là, si tout est bon entre les deux.
judge-remedy-meter = Ce serait décidé ({ $verdict }) par un multimètre ayant { $part } % de l’erreur de celui-ci.
judge-no-remedy = Aucun meilleur instrument, température ou endroit pris seul ne décide : en changer deux à la fois, ou la tenir pour une pièce limite.
judge-would-pass = conforme
judge-would-fail = non conforme
judge-pair-series = Deux défauts, capteur et fils : capteur décalé de { $shift } ({ $shift-low } à { $shift-high } %), dans la ligne { $sizes } : { $reason }.
judge-pair-leak = Deux défauts, capteur et fuite : capteur décalé de { $shift } ({ $shift-low } à { $shift-high } %), en parallèle { $sizes } : { $reason }.
judge-pair-impossible = moins que rien
judge-reasonable = vraisemblable
judge-not-reasonable = pas vraisemblable
judge-pairs-none = Aucune des deux paires n’est vraisemblable.
judge-pairs-one = L’autre paire est exclue : aucune troisième température n’est nécessaire.
judge-third = Un troisième relevé à { $at } dit laquelle : { $series } avec résistance dans la ligne, { $leak } avec fuite.
judge-third-none = Aucune troisième température dans la plage du capteur ne distingue les deux avec ces instruments.
judge-formula-doubt = ± : thermomètre, stabilisation, multimètre et cordons en limites rectangulaires a/√3, combinées d’après JCGM 100:2008, 5.1.2, k = 2 ; décidé d’après JCGM 106:2012 (articles de mémoire).
judge-formula-risk = Risque : la part d’une loi normale autour du relevé, d’incertitude-type U/2, qui se trouve de l’autre côté des limites (JCGM 106:2012, article de mémoire).
judge-formula-next = Ensuite : la première mesure dans l’ordre de l’effort (usage courant, sans source) qui distingue moitié autant de paires que la meilleure ; chaque suspect au milieu de ses tailles, ou au pire là où rien du tout suffirait ; plages sur toutes les tolérances, arrondies vers l’extérieur.
judge-formula-pair = Deux défauts : x R(T₁) + s = R₁ et x R(T₂) + s = R₂, ou 1/(x R) + 1/L = 1/R₁ et ainsi de suite ; vraisemblable est un capteur décalé de 30 % au plus (usage courant, sans source). La liste des défauts simples vient du premier relevé seul.
judge-formula-cause = Tailles : un défaut explique un relevé si une bonne pièce dans un bon circuit avec ce défaut le donnerait, à ± près.
run-judge-no-rule = l’atelier n’a pas de règle de décision ; écrire `decision = "guarded"` ou `decision = "simple"` dans `[shop]`
run-judge-ohms-unplugged = les ohms se lisent au capteur ou au calculateur ; à un faisceau débranché, il ne reste rien à lire
run-judge-not-given = un relevé de `{ $id }` ne peut être jugé : NON DONNÉ : { $what }
run-judge-no-number = ce relevé ne peut être jugé : ce n’est pas un nombre qu’affiche un multimètre
run-judge-second-unit = les deux relevés doivent être en volts, ou tous deux en ohms
run-judge-second-outside = aucun capteur ne donne l’un de ces relevés : ensemble, les deux ne disent rien
run-judge-second-too-near = les deux relevés ne diffèrent pas plus que leur incertitude : prendre le second plus loin de la première température
## Fits

fit-empty = le fichier n’a pas de ligne qui nomme les unités
fit-head = `{ $head }` ne nomme pas de colonnes de points
fit-columns-help = commencer par une ligne telle que `°C,kΩ`, `temperature °F;resistance Ω` ou `°C,Ω,Ω,Ω` (min, nominal, max) ; les unités sont °C, °F ou K, et Ω ou kΩ
fit-cells = { $found ->
    [one] une ligne de { $found } cellule
   *[other] une ligne de { $found } cellules
} là où la première en a { $wanted }
fit-cells-help = écrire les nombres avec un point décimal, et sans séparateur de milliers
fit-rises = la résistance monte de { $cold } °C à { $hot } °C
fit-rises-help = garder les points en courbe avec model = "table" ; platine et silicium ont leurs propres modèles
fit-few-points = Pas d’ajustement : il faut au moins { $needed } points.
fit-not-physical = Pas d’ajustement : une température ou une résistance n’est celle d’aucun capteur.
fit-not-falling = Pas d’ajustement : la résistance ne baisse pas de ligne en ligne.
fit-no-thermistor = Pas d’ajustement : les meilleurs coefficients ne sont ceux d’aucune thermistance sur ces températures.
fit-points = { $points ->
    [one] { $points } point.
   *[other] { $points } points.
}
fit-minimised = Moindres carrés des résidus de 1/T en ln R, tous les points pesant autant. Résidus : formule moins table.
fit-no-suspect = Aucune ligne ne semble mal tapée.
fit-suspect-line = Mal tapé ? { $what } : { $near } ; { $help }. Les ajustements comptent cette ligne.
fit-suspect-head = semble mal tapé
fit-suspect = oui
fit-residuals = Résidus, formule moins table
fit-misses = manque les points de { $rms-k } K ou { $rms-percent } % (moyenne quadratique), au plus de { $largest-k } K ou { $largest-percent } %
fit-exact = Autant de coefficients que de points : il ne reste aucun résidu, ce qui ne dit rien de la convenance de la formule.
fit-spec-note = ajusté sur { $points } points ; nommer leur source
table-position = position
table-travel = course %
table-contacts = contacts
table-formula-travel = V/Vref à un pour-cent de la course entre les butées, uniformément : r₀ + course × (r₁ − r₀) ; retour : course = (V/Vref − r₀)/(r₁ − r₀) (usage courant, sans source). Limites : les deux butées à une extrémité de leurs fenêtres.
table-formula-travel-loaded = V/Vref = (u + s/Rref)/(1 + s/Rref + s/Rgnd), s = Rcontact + S u (1 − u) : S est toute la piste avec ses deux extrémités, u sa part de l’extrémité basse au curseur, Rcontact le contact du curseur, Rref ou Rgnd la charge du curseur vers la référence ou la masse, infinie s’il n’y en a pas (lois de Kirchhoff ; vérifiées par un simulateur de circuits). Les V/Vref des butées sont ramenés à u, et u va uniformément avec la course entre elles. Limites : chaque coin des butées, de la piste, de la charge et du contact.
table-formula-volts = V = Vref × V/Vref ; limites avec la tolérance de la référence, arrondies vers l’intérieur.
table-formula-contacts = 1 : contact fermé, dans l’ordre { $names }.
table-formula-contacts-stuck = « Ne ferme jamais » et « n’ouvre jamais » : le code de chaque position, ce seul chiffre tenu à 0, ou à 1, et la position qui a le code obtenu ; – si aucune ne l’a.
table-formula-ladder = V/Vref = R/(R + Rp), R de la voie à la masse comme les contacts fermés le laissent, Rp la pull-up (lois de Kirchhoff ; vérifiées par un simulateur de circuits). Limites : chaque résistance à une extrémité, la pull-up à l’autre, contacts fermés de 0 Ω à leur maximum.
table-formula-ladder-series = Les contacts, de gauche à droite dans la colonne, se comptent depuis 0 : le contact 0 va de la voie à la masse, le contact k d’après les k premières résistances de la chaîne ; R est la chaîne jusqu’au contact fermé le plus proche de la voie, et sans contact fermé toute la chaîne et son bout, ou coupé.
table-formula-ladder-parallel = Les contacts, de gauche à droite dans la colonne, se comptent depuis 0 : chacun va par sa propre résistance de la voie à la masse ; 1/R est la somme sur les contacts fermés.
table-formula-dirty = Contact sale : la résistance k (m − g)/(o − m) en série avec lui qui porte le relevé nominal de g, tel qu’il est, à m, le minimum de la fenêtre suivante plus haute ; o est le relevé contact ouvert, k la résistance de tout ce qui est en série avec lui (lois de Kirchhoff, le reste nominal).
table-formula-light-pull-up = V = Vref − I R, pas sous 0 V : plus de lumière, moins de volts (loi des mailles de Kirchhoff) ; I = photocourant × éclairement/éclairement nominal (photodiode linéaire, usage courant, sans source). Limites : chaque coin, le courant d’obscurité de zéro à son maximum.
table-formula-light-load = V = I R, pas au-dessus de Vref : plus de lumière, plus de volts (loi d’Ohm) ; I = photocourant × éclairement/éclairement nominal (photodiode linéaire, usage courant, sans source). Limites : chaque coin, le courant d’obscurité de zéro à son maximum.
table-formula-transducer = V/Vref sur la droite par les deux points (arithmétique). Limites : ± exactitude × étendue de V/Vref ; la tolérance de la référence n’est que dans les volts. 1 psi = 6,894757 kPa, 1 bar = 100 kPa (définitions des unités).
table-note-moves = Déplace : { $what }.
table-note-no-position = Il ne rend compte d’aucune position : aucun relevé à calculer.
table-note-ends = 0 % : { $low }. 100 % : { $high }.
table-note-no-nominal = Les butées sont données en fenêtres, sans valeurs nominales.
table-note-end-to-end = D’un bout à l’autre, débranché : { $low } Ω à { $high } Ω, arrondi vers l’intérieur.
table-note-illegal = Aucune position n’a ces codes : { $codes }.
table-note-stuck-open = { $contact } ne ferme jamais (– n’est pas une position) : { $misread }.
table-note-stuck-closed = { $contact } n’ouvre jamais (– n’est pas une position) : { $misread }.
table-note-jump = De { $from } à { $to }, { $count } contacts commutent ; { $codes } peuvent apparaître un instant.
table-note-gap = Plus petit écart entre fenêtres voisines : { $gap } % de la référence, entre { $lower } et { $upper }.
table-note-overlap = Aucun relevé ne distingue { $lower } de { $upper }.
table-note-dirty = Un contact sale à « { $position } » : à partir de { $ohms } Ω dans le contact { $contact }, cela se lit comme « { $into } ».
table-note-saturation = Pleine échelle à partir de { $nominal } W/m², au plus tôt de { $earliest } W/m² : plus de lumière n’y change rien.
table-note-saturation-nominal = Pleine échelle à partir de { $nominal } W/m² : plus de lumière n’y change rien.
table-note-least-span = De couvert à éclairé au moins { $span }, sous la lumière que nomme la source de cette valeur ; le tableau ne dit pas laquelle.
table-note-shop-light = Aucune réponse sous des diodes électroluminescentes ou des tubes fluorescents, c’est normal (usage courant, sans source).
table-note-absolute = Pressions absolues.
table-note-gauge = Pressions relatives : au-dessus de l’air ambiant.
run-judge-beyond = un relevé de `{ $id }` ne peut être jugé à cette température : sa tolérance dépasse la fin de sa table
run-judge-no-instrument = une décision avec bande de garde demande de savoir à quel point les relevés sont sûrs, et c’est NON DONNÉ : { $what } ; nommer des instruments avec --instrument
run-judge-high-voltage = STOP : plus de 60 V CC, c’est de la haute tension ; hors du domaine de ce programme et réservé au personnel habilité
run-judge-too-many-ohms = aucun multimètre d’atelier n’affiche autant d’ohms ; écrire OL pour une ligne coupée
run-instrument-twice = `{ $id }` est un second instrument de sa sorte ; nommer un multimètre et un thermomètre
run-judge-no-sensor = `{ $id }` n’est pas un capteur de température, et seuls leurs relevés sont jugés pour l’instant ; `bayleaf faults { $id }` liste ce que donnent ses défauts

## Checklists: what is wrong with them

rule-check-airbag = l’étape `{ $step }` touche à un câblage d’airbag
rule-check-airbag-help = l’omettre : un câblage d’airbag ou de prétensionneur ne se sonde pas, ne se mesure pas en ohms, ne se débranche pas
wanted-no-airbag-step = aucun travail sur un câblage d’airbag n’est attendu
rule-check-costly-first = l’étape `{ $step }` ({ $cost }) vient avant `{ $next }` ({ $cheaper })
rule-check-costly-first-help = poser d’abord la moins coûteuse, ou dire `because = "…"` pourquoi non
wanted-cheap-first = attendu : l’étape la moins coûteuse d’abord
label-cheaper = l’étape suivante coûte moins
rule-check-start = il n’y a pas d’étape `{ $name }` par où commencer
rule-check-dangling = la sortie vers `{ $name }` ne mène nulle part
rule-check-ending-unnamed = la fin `{ $ending }` ne dit pas quelle pièce ou quel faisceau
rule-check-ending-unnamed-help = ajouter `what = "…"`
wanted-what = attendu : `what` à côté
rule-check-exits = l’étape `{ $step }` a { $count ->
        [0] aucune sortie
        [one] une sortie
       *[other] { $count } sorties
    }
rule-check-exits-help = donner deux de `yes`, `no`, `undecided`, ou les trois, chacune avec le nom d’une étape ou d’une fin
wanted-exits = attendu : deux ou trois sorties
rule-check-no-vehicle = la liste de contrôle `{ $id }` n’est pour aucun véhicule : aucun de ceux qu’elle nomme n’a le système `{ $system }`
rule-check-loop = les réponses tournent en rond : { $way }
rule-check-loop-help = mener cette sortie à une étape qui vient plus tard, ou à une fin
wanted-onward = attendu : un chemin vers l’avant
label-loop-begins = la boucle commence ici
rule-check-expects-nothing = l’étape `{ $step }` ne dit pas ce qui répond oui
rule-check-expects-twice = l’étape `{ $step }` dit deux fois ce qui répond oui
wanted-expect = attendu : soit `expect`, soit `test`
rule-check-no-number = l’étape `{ $step }` relève des { $unit } et n’attend pas de nombre : `{ $expect }`
wanted-limit = attendu : une fenêtre ou une limite, par exemple `11.5 V or more`
label-unit = un relevé est demandé ici
rule-check-same-name = `{ $name }` est une étape et une fin
wanted-other-name-here = attendu : un autre nom
label-step-of-name = l’étape de ce nom
rule-check-questions = l’étape `{ $step }` pose plus d’une question
rule-check-no-question = l’étape `{ $step }` ne pose aucune question
wanted-question = attendu : une seule question, avec un point d’interrogation à la fin
rule-check-opens = l’étape `{ $step }` d’un document électrique ouvre le circuit frigorifique : `{ $said }`
rule-check-opens-help = finir à `refer to licensed refrigerant work`, ou en faire un document de `work = "refrigerant"`
wanted-closed = attendu : un circuit qui reste fermé
label-work = un document électrique
rule-check-nowhere = l’étape `{ $step }` ne dit pas où
rule-check-nowhere-help = ajouter `pins = ["C2/7", "C2/14"]`, ou `where = "…"`
wanted-where = attendu : un endroit
rule-check-no-view = l’étape `{ $step }` sonde le connecteur `{ $connector }`, qui ne dit pas comment il est vu
wanted-seen = attendu : un connecteur avec `view` et `side`
rule-check-replacing = l’étape `{ $step }` remplace une pièce pour l’essayer : `{ $said }`
rule-check-replacing-help = mesurer ce qui distingue la pièce de ses fils ; le remplacement appartient à une fin
wanted-measurement = attendu : une mesure
rule-check-same-exit = toute réponse à l’étape `{ $step }` mène à `{ $to }`
rule-check-same-exit-help = omettre l’étape, ou mener une réponse ailleurs
wanted-other-place = attendu : un autre endroit
label-first-exit = comme ici
rule-check-unreachable = aucune réponse ne mène à l’étape `{ $name }`
wanted-reached-step = attendu : une sortie ou un `start` qui mène ici
rule-check-unreached-ending = aucune réponse ne mène à la fin `{ $name }`
wanted-reached-ending = attendu : une sortie qui mène ici
label-start = cela commence ici
rule-check-deep = la liste de contrôle `{ $id }` a { $found } cases de profondeur
rule-check-wide = la liste de contrôle `{ $id }` a { $found } cases de largeur
rule-check-split-help = la partager en deux, la première finissant à la seconde
wanted-map-fits = attendu : { $most } au plus sur la page de son plan

check-cost-look = regarder
check-cost-measure = mesurer
check-cost-unplug = débrancher
check-cost-dismantle = démonter
## Importing a table

import-how = De { $file } : { $rows ->
    [one] { $rows } ligne
   *[other] { $rows } lignes
}, cellules séparées par { $separator }, { $decimal }.
import-semicolon = points-virgules
import-tab = tabulations
import-bar = barres verticales
import-comma = virgules
import-decimal-point = point décimal
import-decimal-comma = virgule décimale
import-title = Au-dessus des en-têtes : { $title }
import-column = Colonne { $number } « { $head } » : { $used }, { $unit }
import-temperature = température
import-low = résistance min
import-nominal = résistance nominale
import-high = résistance max
import-left-out = omise
import-empty = vide
import-skipped = { $lines ->
    [one] { $lines } ligne ne contient pas de point et a été omise.
   *[other] { $lines } lignes ne contiennent pas de point et ont été omises.
}
import-no-cells = le fichier n’a pas de colonnes
import-cells-help = les cellules sont séparées par points-virgules, tabulations, barres verticales ou virgules, un point par ligne
import-no-rows = aucune ligne ne contient deux nombres
import-rows-help = une ligne est une température et sa résistance ; un guillemet jamais fermé cache toutes les lignes après lui
import-no-temperature = aucune colonne n’est reconnue comme température
import-temperature-help = nommer son unité dans l’en-tête, par exemple `t (°C)`, ou la donner avec --temperature
import-no-resistance = les colonnes ne sont ni une résistance, ni minimum, nominal et maximum
import-resistance-help = des en-têtes tels que `R (kΩ)`, ou `min kΩ`, `nom kΩ`, `max kΩ` ; donner avec --resistance une unité absente du fichier, retirer les autres colonnes d’ohms
import-two-units = résistances en { $one } et en { $two }
import-unit-of-curve = les résistances d’une courbe sont en Ω ou kΩ, celles-ci sont en { $unit }
import-units-help = les ramener toutes à une unité, Ω ou kΩ, et à une échelle de température
import-either = `{ $cell }` peut être des milliers ou des décimales
import-either-help = dire lequel avec --decimal comma ou --decimal point
import-mixed = `{ $cell }` a une virgule décimale, d’autres nombres un point décimal
import-mixed-help = les ramener tous à l’un, ou dire lequel avec --decimal
import-no-point = cette ligne n’a pas de température avec sa résistance
import-no-number = `{ $cell }` n’est pas un nombre lisible
import-number-help = les milliers se séparent par l’autre signe, par des espaces ou des apostrophes, par groupes de trois
import-other-unit = `{ $cell }` n’est pas en { $unit } comme sa colonne
label-left-out = omis
label-decimal-comma = une virgule décimale
label-decimal-point = un point décimal
wanted-cells = attendu : des cellules de nombres
wanted-temperature-column = attendu : une colonne en °C, °F ou K
wanted-resistance-columns = attendu : une colonne en Ω ou kΩ, ou trois
wanted-one-unit = attendu : la même unité dans chaque ligne
wanted-curve-unit = attendu : Ω ou kΩ
wanted-decimal-told = les deux sont possibles
wanted-plain-number = attendu : un nombre

## Checklists and symptom indexes on paper

doc-checklist = Liste de contrôle
doc-symptoms = Index symptômes
fact-expect = attendu
fact-step-time = temps
fact-pins = voies
fact-first-tests = premiers essais
check-title = { $title } · { $system }
check-only = seulement { $vehicles }
check-intro = { $steps ->
        [one] { $steps } étape
       *[other] { $steps } étapes
    }, { $longest } par le chemin le plus long. Commencer à l’étape 1 et y garder un doigt. Faire ce qu’elle dit, noter le relevé, cocher une réponse, aller où elle mène. Une lettre sur fond noir est une fin : le travail est fait ou transmis là. Deux réponses conviennent, ou le relevé bouge : c’est indécis ; si indécis n’a pas de case, demander avant de continuer.
check-box-vehicle = Véhicule
check-box-reached = Fin atteinte
check-card = fiche { $card }
# A mated plug is probed from its wires, but drawn from its face.
check-mirrored = { $view } ; symétrique vu des fils
check-cost = { $cost } · { $time } [{ $mark }]
check-do = faire
check-where = où
check-pins = voies
check-state = état
check-expect = attendu
check-at = { $window } à { $temperature }
check-figures = chiffres
check-yes = oui
check-no = non
check-undecided = indécis
check-undecided-short = ?
check-go = vers { $mark }
check-go-end = fin { $mark }
check-start = commencer ici
check-from = de { $steps }
check-ending-part = pièce
check-ending-harness = faisceau
check-ending-unit = calculateur
check-ending-refer = confier à un frigoriste attesté
check-ending-refer-short = confier, attesté
check-ending-no-fault = aucun défaut trouvé
check-map = Plan
check-map-key = Cases blanches : étapes ; lettres noires : fins. ? : indécis. Le trait épais est le chemin qui prend le plus de temps.
check-longest = Chemin le plus long : { $way }, { $time }
check-index-title = Symptômes · { $system }
check-index-intro = Chercher la plainte comme le conducteur la dit. Si une liste de contrôle est nommée, la prendre ; ses premières étapes sont listées ici tant que les réponses sont bonnes. Si aucune n’est nommée, essayer dans cet ordre, le moins coûteux d’abord.
check-no-checklist = pas de liste de contrôle
check-at-most = { $time } au plus

paper-symptom = plainte
paper-endings = Fins
paper-tick = atteinte
paper-stop = STOP
paper-because = pourquoi ici
paper-complaint = Plainte
paper-checklist = Liste de contrôle
paper-first-tests = Premiers essais, dans cet ordre
paper-cards = Fiches

# Proof sheets

doc-proof = Feuille de justification
proof-title = Justification : { $title }
proof-of = De la fiche { $card } « { $title } », dont le contenu a l’empreinte { $fingerprint }. Une fiche d’une autre empreinte n’est pas justifiée par cette feuille.
proof-counted = { $computed } nombres de la fiche sont calculés ; chacun figure ci-dessous avec la valeur dont il est arrondi ({ $digits } chiffres significatifs). { $given } sont exacts, ou figurent sur la fiche tels que les donnent les spécifications ou ses mots fixes. Les limites sont arrondies vers l’intérieur : vers le haut à une limite inférieure, vers le bas à une supérieure.
proof-nothing = Aucun nombre de cette fiche n’est calculé.
proof-own = règle propre
proof-nearest = proche
proof-up = haut
proof-down = bas
proof-part-key-figures = Chiffres en grand
proof-part-table = Tableau principal
proof-part-readings = Ce que signifie un relevé
proof-part-faults = Défauts
proof-part-example = Exemple calculé
proof-part-drawings = Dessins
proof-part-given = Données
proof-part-next = Que faire ensuite
proof-part-drops = Chutes
proof-part-pins = Voies
proof-part-fluids = Fluide frigorigène
proof-part-vents = Air aux aérateurs
proof-part-measuring = Comment mesurer
proof-part-signature = Défauts selon la température
proof-part-motion = Mouvement
proof-part-positions = Positions
proof-part-conditions = Conditions
proof-part-timeline = États dans le temps
proof-part-notes = Notes
proof-part-coil = Bobine
proof-part-modes = Modes
proof-part-run = Parcours le plus court
proof-part-tests = Essais
proof-part-instruments = Instruments
proof-part-questions = Questions
paper-formulas = Formules, avec leurs sources
paper-proof-inputs = Valeurs des spécifications dont dépendent les chiffres
paper-key = clé dans les spécifications
paper-printed = imprimé
paper-unrounded = non arrondi
paper-rounded = arrondi
paper-exact = Nombres exacts tels qu’imprimés
paper-as-given = Nombres tels qu’ils ont été donnés
paper-signed = Vérifié avec les sources, responsable technique
paper-signed-name = nom
paper-signed-date = date
paper-signed-signature = signature

# Index of all documents

doc-index = Index des documents
index-title = Documents : { $shop }
index-applies = tout système et véhicule du jeu
index-intro = Un document à l’atelier n’est en vigueur que si son code est celui qui figure ici. Révision et empreinte sont celles de chaque page.
index-id = id
index-kind = sorte
index-name = titre
index-system = système
index-page-count = pages
index-issue = révision, empreinte
index-not-given = NON DONNÉ
index-no-source = sans source
index-uncounted = –
index-total = { $documents ->
    [one] { $documents } document
   *[other] { $documents } documents
}
index-pages = { $pages ->
    [one] { $pages } page
   *[other] { $pages } pages
}
index-pages-uncounted = les pages se comptent quand tout est imprimé
index-lacking = { $not-given } valeurs NON DONNÉ et { $no-source } sans source dans tout le jeu, chacune comptée une seule fois

spec-unknown-size = `{ $key }` : aucun format de papier ne s’appelle `{ $found }`
doc-strip-card = Carte-tableau
card-rests-on = Valeurs, sources, circuit et défauts : carte { $card }.
run-past-edge = page { $page } : `{ $text }` sort de la page
run-text-on-text = page { $page } : `{ $text }` recouvre `{ $other }`
run-too-many-sides = il faut { $pages } pages et { $sides } au plus sont permises
rule-size-not-offered = { $kind } : n’existe pas en `{ $size }`
run-size-not-offered = { $kind } : n’existe pas en `{ $size }` ; formats possibles : { $sizes }
run-fits = { $reason } ; conviendrait : { $fits }
run-fits-nothing = { $reason } ; aucun autre format ni pas plus grand ne convient
run-fits-step = pas de { $step }
run-fits-two-sides = deux faces

## Ce qu’un PDF émis porte en lui

enclosed-figures = Valeurs de { $id } telles qu’imprimées, et ce qui en a décidé
enclosed-specs = Spécifications dont ce papier est issu
enclosed-huge = plus de { $most } Mio : aucun papier émis n’est si grand
enclosed-unread = illisible : { $reason }
enclosed-no-pdf = pas un fichier PDF
enclosed-damaged = endommagé : son contenu joint est illisible
enclosed-foreign = PDF d’un autre programme : il ne porte pas les valeurs d’une émission
enclosed-draft = un projet : seul un papier émis porte ses spécifications et ses valeurs
enclosed-newer = son relevé a la forme { $format }, cette version connaît { $known } : utiliser une version plus récente
enclosed-findings = les règles d’aujourd’hui trouvent des erreurs dans ses spécifications, la première : { $first }
enclosed-no-document = ses spécifications ne donnent pas de { $id }
enclosed-paper = { $id } r{ $revision } du { $date } par { $by }, fait avec { $tool }
enclosed-same = { $tool } calcule les mêmes valeurs à partir de ses spécifications
enclosed-differ = { $tool } calcule d’autres valeurs à partir de ses spécifications : { $figures ->
    [one] { $figures } texte
   *[other] { $figures } textes
}
enclosed-figure = { $place } : imprimé { $printed }, aujourd’hui { $today }
enclosed-digits = de { $digits } au dernier chiffre
enclosed-wording = { $texts ->
    [one] { $texts } texte sans valeurs se lit autrement
   *[other] { $texts } textes sans valeurs se lisent autrement
} : des mots, pas des valeurs
enclosed-refused = { $path } : { $why }

# Le registre.
register-newer = ce registre a le format { $format } : un bayleaf plus récent l’a écrit
register-newer-help = utiliser cette version ou une plus récente ; rien du fichier n’a été lu ni changé
wanted-register-format = attendu : un format jusqu’à { $known }
register-no-number = `{ $key }` vaut { $written }
register-no-date = `{ $key }` n’est pas une date
register-no-id = `{ $id }` n’est l’identifiant d’aucun document
wanted-document-id = attendu : l’identifiant d’une fiche, ou deux identifiants séparés par un point, comme CUR-SENSORS.AMB-11
register-no-pull-list = `{ $number }` n’est le numéro d’aucune liste de retrait
wanted-pull-list = attendu : un jour et un numéro, comme 2026-11-28/1
wanted-date = attendu : un jour, comme 2026-11-28
register-conflict = une fusion a laissé ce registre en suspens
register-conflict-help = garder les entrées des deux côtés et effacer les lignes de marques ; ce qui figure alors deux fois est signalé
wanted-register-entries = attendu : des entrées, sans marques de fusion
register-date-back = { $id } a été émis avant la révision précédente
label-register-before = la révision précédente
register-withdrawn-twice = { $id } est retiré deux fois
register-issued-twice = { $id } a deux révisions { $revision }
register-twice-help = deux personnes l’ont écrit : déterminer lequel des deux papiers sert, effacer l’entrée de l’autre, et émettre à nouveau si les deux sont affichés
register-gap = { $id } a une révision { $number }, mais pas celle d’avant
register-gap-help = une entrée a été effacée ou son numéro changé : la reprendre dans la gestion de versions
wanted-revision = attendu : révision { $number }
register-not-issued = { $id } n’a pas de révision { $revision }
wanted-revision-to = attendu : 1 à { $newest }
wanted-issued-id = attendu : l’identifiant d’un document émis
register-date-before = c’est avant ce qui précède
wanted-not-before = attendu : { $date } ou plus tard

## Les commandes du registre

status-new = nouveau
status-changed = modifié
status-gone = plus dans le jeu, à retirer
status-layout = présentation seule : dit la même chose, d’un autre aspect
status-withdrawn = retiré
status-same = comme émis
status-count = { $state } : { $count }
status-lost = la dernière émission n’est pas dans le dossier des papiers émis : impossible de dire quelles valeurs ont changé
status-moved = { $place } : { $old } → { $new }
status-held = détenu : { $holder } (r{ $revision })
status-vehicles = { $count ->
    [one] Un véhicule a
   *[other] { $count } véhicules ont
} des fiches aux anciennes valeurs :
issue-nothing = Rien à émettre : tous les papiers sont comme émis.
issue-none = rien n’a été émis
issue-gone = { $id } n’est plus dans le jeu : le retirer
issue-same-name = { $id } et { $other }, émis auparavant, seraient un seul fichier sur certains disques : choisir un autre identifiant
issue-done = { $count ->
    [one] Un papier émis
   *[other] { $count } papiers émis
}, inscrit dans { $path }
issue-dry = { $count ->
    [one] Un papier serait émis
   *[other] { $count } papiers seraient émis
} ; rien n’a été écrit
withdraw-none = rien n’a été retiré
withdraw-again = { $id } est retiré depuis le { $date }
issue-line = décrocher { $id } r{ $revision } : { $place }
register-no-document = rien n’a été émis sous l’identifiant { $id }
register-no-document-near = rien n’a été émis sous l’identifiant { $id } ; vouliez-vous dire { $near } ?
holders-added = désormais détenu : { $copy }
holders-again = déjà dans le registre : { $copy }
holders-moved = déplacé : { $copy }, maintenant { $to }
holders-back = décroché : { $copy }
holders-nothing-back = personne ne détient une telle copie
holders-several = { $holder } détient plusieurs copies de { $id } : préciser avec --place
holders-none = { $holder } ne détient aucune copie de { $id }
holders-none-near = { $holder } ne détient aucune copie de { $id } ; vouliez-vous dire { $near } ?
holders-withdrawn = { $id } est retiré : aucune copie ne devrait être affichée
holders-old = périmé, r{ $revision } est valable
holders-of-withdrawn = retiré
holders-since = { $copy }, depuis le { $date }
holders-nobody = Personne ne détient de copie.
verdict-current = { $id } r{ $revision } du { $date } par { $by } est valable
verdict-superseded = { $id } r{ $revision } du { $date } par { $by } est remplacé par r{ $newest } depuis le { $since }, par { $who } : { $why }
verdict-withdrawn = { $id } r{ $revision } du { $date } par { $by } est retiré depuis le { $since }, par { $who } : { $why }
verdict-other = ce n’est pas { $id } r{ $revision } du { $date }, dont le code est { $code } : mal lu, ou pas de ce registre
verdict-draft = c’est un projet, que personne n’a émis
verdict-draft-same = c’est un projet, que personne n’a émis ; il dit la même chose que { $id } r{ $revision } du { $date }
verdict-unknown = { $code } est inconnu : aucun papier avec ce code n’a été émis de ce registre
run-register-demo = le jeu de démonstration intégré ne peut pas être émis : commencer le vôtre avec `bayleaf new specs`
run-register-locked = le registre est utilisé par { $who } (processus { $process }) depuis { $since }, depuis { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
} : attendre la fin, puis relancer
run-register-locked-unknown = quelqu’un d’autre utilise le registre : attendre la fin, puis relancer
run-clock-back = l’horloge de cette machine dit { $today }, et le registre a une entrée du { $latest } : régler l’horloge, ou donner la date avec --date
run-before-its-time = { $date } précède { $latest }, la dernière entrée de { $id } dans le registre : donner une date plus tardive avec --date
run-link-outside = { $path } est un lien qui mène hors du dossier de sortie, vers { $to } : le remplacer par un dossier, ou nommer celui-là avec --out
run-stray = { $path } reste d’une opération qui n’est pas allée au bout : il n’a jamais été valable, la prochaine opération l’enlève
run-lost = { $count ->
    [one] Un papier émis manque
   *[other] { $count } papiers émis manquent
} dans { $path } ({ $names }) : remettre ce qu’une sauvegarde a encore ; d’un papier perdu, personne ne peut dire ce qui a changé depuis
issue-pull = { $copies ->
    [one] Une copie
   *[other] { $copies } copies
} à décrocher : { $path }
withdraw-dry = { $copies ->
    [one] Une copie serait
   *[other] { $copies } copies seraient
} à décrocher ; rien n’a été écrit
