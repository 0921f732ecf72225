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
# ISO 3864 in French (DANGER, AVERTISSEMENT, ATTENTION, AVIS).
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
did-you-mean = vouliez-vous dire `{ $word }` ?

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

wanted-text = attendu : un texte entre guillemets droits
wanted-glyph = attendu : un caractère que les polices possèdent
wanted-shorter = attendu : { $longest } caractères au plus
wanted-value = attendu : une valeur et son unité entre guillemets droits, par exemple "2.2 kΩ"
wanted-texts = attendu : une liste de textes, par exemple ["…", "…"]
wanted-number = attendu : un nombre
wanted-table = attendu : une table
wanted-tables = attendu : une liste de tables
wanted-list = attendu : une liste
wanted-key = attendu : une clé `{ $key }` ici
wanted-one-of = attendu : l’un de { $words }
wanted-quantity = attendu : { $dimension }, par exemple { $examples }
wanted-decimal-point = attendu : un point décimal, et des espaces entre les milliers
wanted-nothing-more = rien n’est attendu ici
wanted-low-first = attendu : la borne inférieure d’abord
wanted-interval = attendu : deux bornes, par exemple { $examples }
wanted-zero-or-more = attendu : zéro ou plus
wanted-smaller-tolerance = attendu : une tolérance inférieure à la valeur elle-même
wanted-accuracy = attendu : une forme telle que `0.5 % + 2 digits`
wanted-row = attendu : [température, résistance] ou [température, min, nominal, max], en nombres seulement
wanted-pair = attendu : deux valeurs entre guillemets droits, par exemple ["0.6 A", "5 %"]
wanted-low-voltage = attendu : { $greatest } V au plus
wanted-two-points = attendu : deux points ou plus
wanted-a-change = attendu : des points de cylindrées différentes
wanted-control-point = attendu : une intensité de 0 A ou plus et une cylindrée de 0 % à 100 %
wanted-stated-direction = attendu : le sens indiqué par `more_current`
wanted-reached = attendu : une intensité qu’une bobine chaude atteint
wanted-at-most-whole = attendu : 100 % au plus
wanted-exponent = attendu : plus de 0 et { $greatest } au plus
wanted-wire-size = la norme donne { $sizes } mm²
wanted-no-gauge-class = aucune classe n’est attendue pour un numéro de jauge
wanted-conductors = attendu : 2 (aller et retour), ou 1 si la caisse sert de retour
wanted-wire-drop = attendu : une chute inférieure à celle-ci
wanted-position = attendu : ["nom", "101"], ["nom", 2] ou ["nom", "open"]
wanted-toml = attendu : du TOML valide
wanted-utf8 = attendu : du texte en UTF-8
wanted-id = attendu : lettres A à Z, chiffres, `-` et `_`, { $longest } au plus
wanted-id-table = attendu : une table avec un identifiant, par exemple [{ $kind }.UN-ID]
wanted-beta = attendu : { $least } K à { $greatest } K
wanted-coefficients = attendu : a, b et c d’une thermistance, pour des ohms et des kelvins
wanted-coefficients-4 = attendu : a, b, c et d d’une thermistance, pour des kelvins
wanted-silicon = attendu : a de { $least } à { $greatest } (1/K) et b inférieur au centième de a (1/K²)
wanted-no-class = attendu : une classe seulement pour une courbe du modèle "platinum"
wanted-no-b = pas de telle clé pour un capteur dont la résistance croît
wanted-real-temperature = attendu : une température qui existe
wanted-magnitude = d’ordinaire { $least } à { $greatest }
wanted-above-zero = attendu : plus que zéro
wanted-two-rows = attendu : deux lignes ou plus
wanted-min-nominal-max = attendu : min ≤ nominal ≤ max
wanted-same-columns = attendu : autant de colonnes que dans la première ligne
wanted-falling = attendu : moins d’ohms que dans la ligne plus froide
wanted-rising = attendu : plus d’ohms que dans la ligne plus froide
wanted-near = ses voisines conduisent à environ { $ohms } Ω
wanted-inside = attendu : { $low } à { $high }
wanted-one-tolerance = attendu : une seule façon d’indiquer la tolérance
wanted-divider = attendu : { $least } à { $greatest }
wanted-defined = attendu : une table [{ $kind }.…] de cet identifiant dans le jeu
wanted-instrument = attendu : { $wanted }
wanted-same-connector = attendu : les deux voies sur un même connecteur
wanted-pin = attendu : connecteur et voie, par exemple `C2/7`
wanted-listed-pin = attendu : une voie de la liste [connector.{ $connector }.pins]
wanted-fewer-rows = attendu : un pas qui donne { $most } lignes au plus
wanted-of-system = attendu : un élément du système `{ $system }`
wanted-tests = attendu : une liste `test` d’une entrée ou plus
wanted-key-off = attendu : `key off` pour ce réglage du multimètre
wanted-unmated = attendu : `false` : des ohms sur une pièce isolée
wanted-probes = attendu : `pins` avec `plus` et `minus`
wanted-seen-side = attendu : `{ $key }` dans le connecteur { $connector }
wanted-other-pin = attendu : une autre voie que la première
wanted-meter-for = attendu : un réglage qui affiche cette grandeur
wanted-limit-unit = attendu : une unité de { $what }
wanted-no-limit = aucune limite n’est attendue : cette grandeur n’en a pas
wanted-with-curve = attendu : volts ou ohms d’un capteur, ohms d’une bobine, ou volts d’un capteur de pression
wanted-delay = attendu : `after` ou `within`
wanted-row-length = attendu : { $wanted } valeurs, une par colonne
wanted-origin-of = seul un élément { $kind } a ce chiffre
wanted-origin-form = attendu : la forme { $words } pour cela
wanted-origin-quantity = c’est une autre grandeur que celle qui est relevée
wanted-component = attendu : un type devant, l’un de { $words }
wanted-coded-contacts = attendu : `contacts` ou un `ladder` dans son actionneur
wanted-step = attendu : un nombre entier de 1 à { $steps }
wanted-duty = attendu : des parts de 0 % à 100 %
wanted-positive-frequency = attendu : plus de 0 Hz
wanted-month = attendu : une année et un mois, par exemple "2021-01"
wanted-some-vehicle = aucun véhicule n’a été construit alors
wanted-three-tests = attendu : trois essais au plus
wanted-test-of-sheet = attendu : un essai qui figure sur sa feuille
label-its-sheet = sa feuille
label-meter-drives = ce réglage injecte un courant propre
label-meter-shows = le réglage du multimètre
label-quantity = ce qui est relevé
label-component = l’objet de l’essai
label-form = sa forme
wanted-tolerance = attendu : une tolérance, par exemple ± 1 %
wanted-guard-size = attendu : plus de 0 %, jusqu’à 300 %
wanted-no-guard = attendu seulement avec `decision = "guarded"`
wanted-not-empty = attendu : un véhicule et un groupe, ou plus
wanted-columns = attendu : des unités : une température, et une résistance ou trois (min, nominal, max)
wanted-as-many-cells = attendu : une cellule par colonne
wanted-falling-points = attendu : moins d’ohms à chaud, comme toute thermistance CTN
wanted-fitted = attendu : un véhicule équipé de ce système
wanted-every-control = attendu : chaque point de commande de son système dans l’une des trois listes
wanted-forced = attendu : un point de commande ou plus sous `forces`
wanted-order = attendu : un `order`, comme dans les autres modes du système
wanted-forcing-mode = attendu : un mode qui l’impose
wanted-two-values = attendu : deux valeurs ou plus
wanted-value-word = attendu : un mot qui ne puisse passer pour une case qui n’impose rien
wanted-no-separate = aucun `separate` n’est attendu ici
wanted-source = attendu : une source
wanted-unit = attendu : { $unit }
wanted-flag = attendu : true ou false, sans guillemets
wanted-other-name = attendu : un nom que tout disque accepte
wanted-elevation = attendu : une clé `elevation` ici
label-needs-elevation = ses chiffres dépendent de la pression atmosphérique du lieu
label-its-fluid = sa saturation n’est connue que dans ce domaine
label-takes-cabin-air = aspire l’air habitacle
label-other-step = l’autre vitesse est ici
wanted-release-below = attendu : moins que { $threshold }
wanted-release-above = attendu : plus que { $threshold }
wanted-measured = attendu : { $quantity }
wanted-after = attendu : plus tard que { $last }
wanted-trace = attendu : `trace` dans cette condition
label-threshold = le seuil
label-watches = ce qui la surveille
label-never-together = à partir d’ici, plus rien ne passe
label-scenario = le scénario
label-scenario-length = la durée du scénario
wanted-inside-reference = attendu : 0 % à 100 %
wanted-above-low-stop = attendu : une fenêtre qui commence au-dessus de { $low }
wanted-driver-of = attendu : un consommateur de `{ $system }`
wanted-pins = { $count ->
    [one] attendu : une voie
   *[other] attendu : { $count } voies
}
wanted-contacts = attendu : 1 à { $most } noms
wanted-code-length = attendu : { $count ->
    [one] un code de 1 chiffre, ou 0
   *[other] un code de { $count } chiffres, ou un numéro de contact inférieur à { $count }
}, ou "open"
wanted-own-code = attendu : un code qu’aucune autre position n’a
wanted-one-contact = attendu : un seul contact commuté entre voisines
wanted-own-window = attendu : une fenêtre propre
wanted-smaller-resistor = attendu : { $most } au plus pour le plein soleil, 1000 W/m²
wanted-clamp = attendu : de { $low } au plus à { $high } au moins
wanted-line = attendu : un point au-dessus et au-delà du point inférieur
wanted-above = attendu : plus que { $low }
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
load-unreadable = lecture impossible : { $reason }
load-too-large = un fichier de { $size } est trop gros pour une spécification ; au plus { $largest }
load-too-many = plus de { $most } fichiers et dossiers ici
load-too-many-help = nommer avec `--specs` le dossier qui contient les spécifications
load-too-large-help = sortir du dossier ce qui n’est pas une spécification, ou partager le fichier
load-not-utf8 = l’octet { $byte } n’est pas du texte UTF-8
load-not-utf8-help = enregistrer le fichier en UTF-8 dans l’éditeur

## Reading

spec-syntax = TOML non valide : { $reason }
spec-more-syntax = TOML non valide à { $count } autres endroits
spec-unknown-kind = type de table inconnu `{ $word }`
spec-unknown-key = clé inconnue `{ $word }` dans `{ $name }`
rule-card-key = `{ $key }` ne dit rien sur une fiche qui porte `{ $about }`
wanted-card-about = elle appartient à une fiche qui porte { $words }
spec-missing-one-of = `{ $name }` ne dit pas de quoi il s’agit
spec-two-keys = `{ $first }` et `{ $second }` ne vont pas ensemble : il s’agit d’une seule chose
spec-missing-key = `{ $name }` n’a pas de `{ $key }`
spec-loose-key = `{ $word }` se trouve hors de toute table
spec-no-id = `{ $word }` dans `{ $kind }` n’a pas de table à soi
spec-bad-id = `{ $id }` ne peut pas être un identifiant
spec-duplicate = `{ $name }` est donné deux fois
spec-duplicate-help = renommer l’un des deux, ou le supprimer
spec-wrong-type = `{ $key }` est une valeur du mauvais type : { $found }
spec-empty-text = `{ $key }` est vide
spec-empty-table = `{ $name }` ne dit rien
spec-empty-list = `{ $key }` est une liste vide
spec-quoted-number = `{ $key }` est un nombre entre guillemets
wanted-keys = attendu : une clé ou plus
wanted-entries = attendu : une entrée ou plus
wanted-bare-number = attendu : un nombre sans guillemets
spec-no-glyph = `{ $key }` contient le caractère { $code }, qu’aucune page ne peut montrer
spec-long-text = `{ $key }` a { $length } caractères
spec-empty-text-help = l’écrire, ou omettre la clé : ce qui manque s’imprime NON DONNÉ ou disparaît, et une clé obligatoire est réclamée
spec-empty-high-voltage-help = nommer les organes haute tension à votre façon ; n’omettre la clé que si le véhicule n’en a pas : sans elle, aucun document ne dit STOP
spec-unknown-word = `{ $key }` ne peut pas être `{ $found }`
spec-bad-row = une ligne qui n’est pas un point d’une courbe
spec-bad-pair = une entrée de `{ $key }` n’est pas une paire
spec-bad-position = une ligne qui n’est pas une position de contacts

## Quantities

misread-not-a-number = `{ $key }` ne contient aucun nombre lisible : `{ $written }`
misread-decimal-comma = `{ $key }` a une virgule dans un nombre : `{ $written }`
misread-unit-missing = `{ $key }` a un nombre sans unité : `{ $written }`
misread-unit-unknown = `{ $key }` a une unité inconnue `{ $unit }`
misread-wrong-dimension = `{ $key }` est du genre « { $wanted } », mais `{ $unit }` est une unité du genre « { $found } »
misread-temperature-for-difference = `{ $key }` est une température là où il faut un écart : `{ $written }`
misread-trailing = `{ $key }` contient plus qu’une grandeur : `{ $rest }`
misread-reversed = `{ $key }` va de la borne haute à la borne basse : `{ $written }`
misread-not-an-interval = `{ $key }` n’est pas un intervalle : `{ $written }`
misread-negative = `{ $key }` a une tolérance inférieure à zéro : `{ $written }`
misread-below-zero = `{ $key }` est inférieur à zéro : `{ $written }`
misread-exponent = `{ $key }` a un nombre avec exposant : `{ $written }`
wanted-written-out = attendu : le nombre en toutes décimales, dans une unité à sa taille, par exemple 2.2 kΩ
misread-tolerance-too-large = `{ $key }` a une tolérance aussi grande que la valeur elle-même : `{ $written }`
misread-other-unit = `{ $key }` est dans une autre unité : `{ $unit }`
misread-not-an-accuracy = `{ $key }` n’est pas une exactitude de multimètre : `{ $written }`

