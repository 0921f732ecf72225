# Spanish. Every fixed word of papers and findings; code names words by id only.
# Gaps are filled with the user's own text or with another word of this table.
#
# UNCHECKED: no native tradesman has read this table. It was written from
# general knowledge of the language and of the trade, for readers in Spain and in
# Latin America. A line `# unchecked: …` above a word marks a particular doubt.
#
# Rules of this table: instructions in the infinitive; keys, file names and
# commands in backticks stay as the user types them; « » for quotation; decimal
# comma in prose and formulas, decimal point in what is typed into a spec; signal
# words as in ANSI Z535.6 and ISO 3864 in Spanish (PELIGRO, ADVERTENCIA, ATENCIÓN, AVISO).
#
# Glossary
#   control unit            unidad de control; short: unidad
#   reference               (tensión de) referencia
#   return · ground         retorno · masa
#   signal · feed           señal · alimentación
#   pull-up, pull-down      resistencia pull-up, pull-down (so in the trade)
#   resistor · resistance   resistencia for both; “resistor” where both meet
#   thermistor · B value    termistor NTC · valor B
#   sensor · transducer     sensor · transductor (de presión)
#   light sensor            sensor de luz (sensor solar)
#   cabin air               aire del habitáculo
#   outside air             aire exterior
#   evaporator outlet       salida del evaporador
#   vent · intake           difusor, salida de aire · toma de aire
#   door · linkage          trampilla · varillaje
#   actuator                actuador
#   blower · blower step    soplador · velocidad
#   driver (electronics)    etapa de potencia; short: etapa
#   driver (person)         conductor
#   relay · fuse            relé · fusible
#   low side · high side    lado de masa · lado de positivo
#   duty (of a pulse)       ciclo de trabajo; short: ciclo
#   cooling duty            enfriamiento por kg de aire seco
#   coil · winding          bobina · bobinado
#   freewheel diode         diodo de libre circulación
#   drop                    caída (de tensión)
#   harness · wire · wiring mazo · cable · cableado
#   connector, plug · pin   conector · pin
#   mating face             (vista) lado acoplamiento
#   wire entry              (vista) lado cables
#   latch (of a connector)  cierre
#   mated · unmated         conectado · desconectado
#   back-probe              medir por detrás del conector
#   key on · key off        contacto ON · contacto OFF
#   open circuit · shorted  circuito abierto · en cortocircuito, en corto
#   leak (electric)         derivación
#   contact resistance      resistencia de contacto, mal contacto
#   wiper · track           cursor · pista
#   stop (of travel)        tope; low, high: inferior, superior
#   travel · dead band      recorrido · banda muerta
#   ladder                  escalera de resistencias
#   play · jam · slip       holgura · atasco · deslizamiento
#   reading · window        lectura · ventana
#   nominal · tolerance     nominal · tolerancia
#   limit · service limit   límite · límite de servicio
#   set-point               consigna
#   guard band              banda de guarda
#   uncertainty U           incertidumbre expandida U (k = 2)
#   decision rule           regla de decisión
#   pass · fail · undecided CONFORME · NO CONFORME · INDECISO
#   believes                interpreta
#   fault · fault finding   avería · diagnóstico
#   told apart              distinguible
#   complaint               queja
#   bay, shop               taller
#   soak, soaked            estabilización (térmica), estabilizado
#   leads (of a meter)      puntas
#   card · wall card        ficha · ficha mural
#   test sheet              hoja de pruebas
#   result report           informe final
#   checklist               lista de control
#   symptom index           guía de síntomas
#   proof sheet             hoja justificativa
#   fingerprint             huella
#   mode · control point    modo · punto de mando
#   forced · free           forzado · libre
#   don’t care              indiferente
#   request                 solicitud
#   granted · held back     concedida · retenida
#   permits · inhibits      permite · inhibe
#   sets · lets go          se activa · se desactiva
#   threshold · release     umbral · umbral de desactivación
#   hold time · delay       tiempo de espera · retardo
#   refrigerant             refrigerante
#   superheat · subcooling  recalentamiento · subenfriamiento
#   suction · discharge     aspiración · descarga
#   absolute · gauge        absoluta · relativa
#   gauge (instrument)      manómetro
#   saturation · dew point  saturación · punto de rocío
#   clamp (of an output)    límites de la salida
#   NOT GIVEN · no source   SIN DATO · sin fuente
#   spec · set · finding    especificación · conjunto · hallazgo
#   common practice         práctica habitual
#   rounded inward          redondeado hacia dentro
#   worst case              caso más desfavorable

## How findings are headed

finding-error = error
finding-warning = advertencia
finding-help = ayuda
finding-note = nota
did-you-mean = ¿quería decir `{ $word }`?

## Dimensions

dimension-temperature = temperatura
dimension-temperature-difference = diferencia de temperatura
dimension-resistance = resistencia
dimension-voltage = tensión
dimension-current = corriente
dimension-ratio = porcentaje
dimension-beta = valor B
dimension-power = potencia
dimension-dissipation = constante de disipación
dimension-pressure = presión
dimension-length = longitud
dimension-inductance = inductancia
dimension-frequency = frecuencia
dimension-duration = tiempo
dimension-irradiance = irradiancia
dimension-specific-enthalpy = entalpía específica
dimension-wire-size = sección de cable

## Labels: what was expected, or what stands there

wanted-text = se espera un texto entre comillas
wanted-glyph = se espera un carácter que tengan las fuentes
wanted-shorter = se esperan { $longest } caracteres o menos
wanted-value = se espera un valor con su unidad entre comillas, por ejemplo "2.2 kΩ"
wanted-texts = se espera una lista de textos, por ejemplo ["…", "…"]
wanted-number = se espera un número
wanted-table = se espera una tabla
wanted-tables = se espera una lista de tablas
wanted-list = se espera una lista
wanted-key = se espera aquí una clave `{ $key }`
wanted-one-of = se espera uno de { $words }
wanted-quantity = se espera { $dimension }, por ejemplo { $examples }
wanted-decimal-point = se espera un punto decimal, y espacios entre los millares
wanted-nothing-more = aquí no se espera nada
wanted-low-first = se espera primero el extremo inferior
wanted-interval = se esperan dos extremos, por ejemplo { $examples }
wanted-zero-or-more = se espera cero o más
wanted-smaller-tolerance = se espera una tolerancia menor que el propio valor
wanted-accuracy = se espera una forma como `0.5 % + 2 digits`
wanted-row = se espera [temperatura, resistencia] o [temperatura, mín., nominal, máx.], solo números
wanted-pair = se esperan dos valores entre comillas, por ejemplo ["0.6 A", "5 %"]
wanted-low-voltage = se esperan { $greatest } V o menos
wanted-two-points = se esperan dos puntos o más
wanted-a-change = se esperan puntos de distinta cilindrada
wanted-control-point = se espera una corriente de 0 A o más y una cilindrada de 0 % a 100 %
wanted-stated-direction = se espera lo que indica `more_current`
wanted-reached = se espera una corriente que alcance una bobina caliente
wanted-at-most-whole = se espera 100 % o menos
wanted-exponent = se espera más de 0 y como mucho { $greatest }
wanted-wire-size = la norma recoge { $sizes } mm²
wanted-no-gauge-class = no se espera clase para un número de calibre
wanted-conductors = se esperan 2 (ida y vuelta), o 1 donde la carrocería es el retorno
wanted-wire-drop = se espera una caída menor que esta
wanted-position = se espera ["nombre", "101"], ["nombre", 2] o ["nombre", "open"]
wanted-toml = se espera TOML válido
wanted-utf8 = se espera texto UTF-8
wanted-id = se esperan letras de A a Z, cifras, `-` y `_`, como mucho { $longest }
wanted-id-table = se espera una tabla con un id, por ejemplo [{ $kind }.SOME-ID]
wanted-beta = se espera de { $least } K a { $greatest } K
wanted-coefficients = se esperan a, b y c de un termistor, para ohmios y kelvin
wanted-coefficients-4 = se esperan a, b, c y d de un termistor, para kelvin
wanted-silicon = se espera a de { $least } a { $greatest } (1/K) y b menor que su centésima parte (1/K²)
wanted-no-class = la clase solo se espera en una curva con modelo "platinum"
wanted-no-b = no se espera esta clave en un sensor cuya resistencia sube
wanted-real-temperature = se espera una temperatura que exista
wanted-magnitude = lo habitual es de { $least } a { $greatest }
wanted-above-zero = se espera más de cero
wanted-two-rows = se esperan dos filas o más
wanted-min-nominal-max = se espera mín. ≤ nominal ≤ máx.
wanted-same-columns = se esperan tantas columnas como en la primera fila
wanted-falling = se esperan menos ohmios que en la fila más fría
wanted-rising = se esperan más ohmios que en la fila más fría
wanted-near = sus vecinas llevan a unos { $ohms } Ω
wanted-inside = se espera de { $low } a { $high }
wanted-one-tolerance = se espera una sola forma de indicar la tolerancia
wanted-divider = se espera de { $least } a { $greatest }
wanted-defined = se espera en el conjunto un [{ $kind }.…] con este id
wanted-instrument = se espera un { $wanted }
wanted-same-connector = se esperan los dos pines en un mismo conector
wanted-pin = se espera conector y pin, por ejemplo `C2/7`
wanted-listed-pin = se espera un pin de la lista [connector.{ $connector }.pins]
wanted-fewer-rows = se espera un paso que dé { $most } filas o menos
wanted-of-system = se espera uno del sistema `{ $system }`
wanted-tests = se espera una lista `test` con una entrada o más
wanted-key-off = se espera `key off` para este ajuste del medidor
wanted-unmated = se espera `false`: ohmios de una pieza sola
wanted-probes = se espera `pins` con `plus` y `minus`
wanted-seen-side = se espera `{ $key }` en el conector { $connector }
wanted-other-pin = se espera un pin distinto del primero
wanted-meter-for = se espera un ajuste que muestre esta magnitud
wanted-limit-unit = se espera una unidad de { $what }
wanted-no-limit = no se esperan límites: esta magnitud no los tiene
wanted-with-curve = se esperan los voltios u ohmios de un sensor, los ohmios de una bobina o los voltios de un transductor
wanted-delay = se espera uno de `after`, `within`
wanted-row-length = se esperan { $wanted } valores, uno por columna
wanted-origin-of = solo un { $kind } tiene este valor
wanted-origin-form = se espera para ello la forma { $words }
wanted-origin-quantity = es una magnitud distinta de la que se lee
wanted-component = se espera delante el tipo, uno de { $words }
wanted-coded-contacts = se espera `contacts` o una `ladder` en su actuador
wanted-step = se espera un número entero de 1 a { $steps }
wanted-duty = se esperan partes de 0 % a 100 %
wanted-positive-frequency = se espera más de 0 Hz
wanted-month = se espera un año y un mes, por ejemplo "2021-01"
wanted-some-vehicle = entonces no se fabricó ningún vehículo
wanted-three-tests = se esperan tres pruebas como mucho
wanted-test-of-sheet = se espera una prueba que tenga su hoja
label-its-sheet = su hoja
label-meter-drives = este ajuste inyecta una corriente propia
label-meter-shows = a qué está puesto el medidor
label-quantity = lo que se lee
label-component = de qué trata la prueba
label-form = su forma
wanted-tolerance = se espera una tolerancia, por ejemplo ± 1 %
wanted-lamination = se espera de { $least } mm a { $most } mm
wanted-guard-size = se espera más de 0 %, hasta 300 %
wanted-no-guard = solo se espera con `decision = "guarded"`
wanted-not-empty = se espera un vehículo y un grupo, o más
wanted-columns = se esperan unidades: una temperatura, y una resistencia o tres (mín., nominal, máx.)
wanted-as-many-cells = se espera una celda por columna
wanted-falling-points = se esperan menos ohmios en caliente, como en los termistores NTC
wanted-fitted = se espera un vehículo con este sistema
wanted-every-control = se espera cada punto de mando de su sistema en una de las tres listas
wanted-forced = se espera un punto de mando o más en `forces`
wanted-order = se espera un `order`, como en los demás modos del sistema
wanted-forcing-mode = se espera un modo que lo fuerce
wanted-two-values = se esperan dos valores o más
wanted-value-word = se espera una palabra que no se confunda con una celda que no fuerza nada
wanted-no-separate = aquí no se espera `separate`
wanted-source = se espera una fuente
wanted-unit = se espera { $unit }
wanted-flag = se espera true o false, sin comillas
wanted-other-name = se espera un nombre que admita cualquier disco
wanted-elevation = se espera aquí una clave `elevation`
label-needs-elevation = sus valores dependen de la presión del aire del lugar
label-its-fluid = su saturación solo se conoce ahí
label-takes-cabin-air = toma aire del habitáculo
label-other-step = el otro paso está aquí
wanted-release-below = se espera menos de { $threshold }
wanted-release-above = se espera más de { $threshold }
wanted-measured = se espera { $quantity }
wanted-after = se espera después de { $last }
wanted-trace = se espera `trace` en esta condición
label-threshold = el umbral
label-watches = lo que lo vigila
label-never-together = a partir de aquí no pasa nada
label-scenario = el escenario
label-scenario-length = la duración del escenario
wanted-inside-reference = se espera de 0 % a 100 %
wanted-above-low-stop = se espera una ventana que empiece por encima de { $low }
wanted-driver-of = se espera una carga de `{ $system }`
wanted-pins = { $count ->
    [one] se espera un pin
   *[other] se esperan { $count } pines
}
wanted-contacts = se esperan de 1 a { $most } nombres
wanted-code-length = se espera { $count ->
    [one] un código de 1 cifra, o 0
   *[other] un código de { $count } cifras, o un número de contacto menor que { $count }
}, o "open"
wanted-own-code = se espera un código que no tenga ninguna otra posición
wanted-one-contact = se espera que entre vecinas conmute un solo contacto
wanted-own-window = se espera una ventana propia
wanted-smaller-resistor = se espera como mucho { $most } para pleno sol, 1000 W/m²
wanted-clamp = se espera como mucho { $low } hasta al menos { $high }
wanted-line = se espera un punto por encima y más allá del inferior
wanted-above = se espera más de { $low }
label-first = indicado aquí por primera vez
label-second = indicado aquí otra vez
label-first-use = usado aquí por primera vez
label-second-use = usado aquí otra vez
label-first-row = la primera fila
label-colder-row = la fila más fría
label-columns = la tabla tiene columnas de mín. y máx.
label-other-tolerance = la otra está aquí
label-its-curve = su curva
label-class = la clase se indica aquí
label-its-decision = la decisión se indica aquí
label-its-kind = su tipo se indica aquí
label-its-system = su sistema se indica aquí
label-connector = el conector
label-control = el punto de mando
label-values = sus valores se indican aquí
label-order = este modo tiene un orden
label-first-mode = este modo
label-second-mode = hace lo mismo aquí
label-in-celsius = en °C sería de { $low } a { $high }
label-in-fahrenheit = en °F sería de { $low } a { $high }
label-needs-shop = este papel llevaría el nombre del taller
label-direction = el sentido se indica aquí
label-free-run = la corriente de la marcha libre
label-wire-system = el sistema del cable
label-contact-names = los nombres de los contactos
label-battery = la batería se indica aquí
label-its-size = su tamaño se indica aquí
label-window = la ventana
label-low-stop = el tope inferior
label-low-end = el extremo inferior
label-position-before = la posición anterior
label-photocurrent = la fotocorriente

## Loading

load-empty-folder = no hay ninguna especificación en `{ $path }`
load-empty-folder-help = poner ahí archivos `*.toml`, o indicar otra carpeta con `--specs`
load-not-a-folder = `{ $path }` no es una carpeta
load-unreadable = no se puede leer: { $reason }
load-too-large = un archivo de { $size } es demasiado grande para una especificación; como mucho { $largest }
load-too-many = aquí hay más de { $most } archivos y carpetas
load-too-many-help = indicar con `--specs` la carpeta que contiene las especificaciones
load-too-large-help = sacar de la carpeta lo que no sea una especificación, o dividir el archivo
load-not-utf8 = el byte { $byte } no es texto UTF-8
load-not-utf8-help = guardar el archivo como UTF-8 en el editor

## Reading

spec-syntax = TOML no válido: { $reason }
spec-more-syntax = TOML no válido en otros { $count } sitios
spec-unknown-kind = tipo de tabla desconocido `{ $word }`
spec-unknown-key = clave desconocida `{ $word }` en `{ $name }`
rule-card-key = `{ $key }` no dice nada en una ficha con `{ $about }`
wanted-card-about = corresponde a una ficha con { $words }
spec-missing-one-of = `{ $name }` no dice de qué trata
spec-two-keys = `{ $first }` y `{ $second }` no pueden ir juntas: trata de una sola cosa
spec-missing-key = `{ $name }` no tiene `{ $key }`
spec-loose-key = `{ $word }` está fuera de toda tabla
spec-no-id = `{ $word }` en `{ $kind }` no tiene tabla propia
spec-bad-id = `{ $id }` no puede ser un id
spec-duplicate = `{ $name }` está indicado dos veces
spec-duplicate-help = cambiar el nombre de uno de los dos, o quitarlo
spec-wrong-type = `{ $key }` es un valor de tipo equivocado: { $found }
spec-empty-text = `{ $key }` está vacío
spec-empty-table = `{ $name }` no dice nada
spec-empty-list = `{ $key }` es una lista vacía
spec-quoted-number = `{ $key }` es un número entre comillas
wanted-keys = se espera una clave o más
wanted-entries = se espera una entrada o más
wanted-bare-number = se espera un número sin comillas
spec-no-glyph = `{ $key }` contiene el carácter { $code }, que ninguna página puede mostrar
spec-long-text = `{ $key }` tiene { $length } caracteres
spec-empty-text-help = escribirlo, u omitir la clave: lo no indicado se imprime como SIN DATO o se omite, y una clave obligatoria se pide
spec-empty-high-voltage-help = nombrar las piezas de alta tensión con palabras propias; omitir la clave solo si el vehículo no tiene ninguna: sin ella ningún papel dice ALTO
spec-unknown-word = `{ $key }` no puede ser `{ $found }`
spec-bad-row = una fila que no es un punto de una curva
spec-bad-pair = una entrada de `{ $key }` no es una pareja
spec-bad-position = una fila que no es una posición de contactos

## Quantities

misread-not-a-number = `{ $key }` no tiene ningún número legible: `{ $written }`
misread-decimal-comma = `{ $key }` tiene una coma en un número: `{ $written }`
misread-unit-missing = `{ $key }` tiene un número sin unidad: `{ $written }`
misread-unit-unknown = `{ $key }` tiene una unidad desconocida `{ $unit }`
misread-wrong-dimension = `{ $key }` pide { $wanted }, pero `{ $unit }` es una unidad de { $found }
misread-temperature-for-difference = `{ $key }` es una temperatura donde se pide una diferencia: `{ $written }`
misread-trailing = `{ $key }` tiene algo más que una magnitud: `{ $rest }`
misread-reversed = `{ $key }` va del extremo superior al inferior: `{ $written }`
misread-not-an-interval = `{ $key }` no es un intervalo: `{ $written }`
misread-negative = `{ $key }` tiene una tolerancia inferior a cero: `{ $written }`
misread-below-zero = `{ $key }` es inferior a cero: `{ $written }`
misread-exponent = `{ $key }` tiene un número con exponente: `{ $written }`
wanted-written-out = se espera el número completo, en una unidad de su tamaño, por ejemplo 2.2 kΩ
misread-tolerance-too-large = `{ $key }` tiene una tolerancia tan grande como el propio valor: `{ $written }`
misread-other-unit = `{ $key }` está en otra unidad: `{ $unit }`
misread-not-an-accuracy = `{ $key }` no es la exactitud de un medidor: `{ $written }`

## Rules

rule-beta = un valor B de { $beta } no es el de ningún termistor
rule-beta-help = comprobar las cifras, y que la unidad sea K
rule-coefficients = estos coeficientes dan { $resistance } a 25 °C
rule-coefficients-not-falling = con estos coeficientes la resistencia no baja al subir la temperatura
rule-coefficients-slope = estos coeficientes dan un valor B de { $beta } en torno a 25 °C
wanted-slope = la b de un termistor da de { $least } K a { $greatest } K
rule-coefficients-help = comprobar signos y potencias de diez; los coeficientes para kΩ deben convertirse en coeficientes para Ω
rule-coefficients-of-ratio = estos coeficientes dan un sensor de 1 Ω a 25 °C, como los de R dividida por R a 25 °C
rule-coefficients-of-ratio-help = añadir `resistance = "…"`, la resistencia nominal a la que corresponden
rule-silicon = `{ $written }` no es un coeficiente de sensor de silicio
rule-silicon-help = comprobar signos y potencias de diez; los coeficientes en %/K se dividen por 100, los de %/K² también
rule-many-ranges = { $count } escalas de una función de un medidor
wanted-few-ranges = se distinguen como mucho { $most }
rule-same-range = dos escalas de un medidor acaban en `{ $written }`
wanted-another-range = se espera un final distinto del de la otra escala
rule-range-digit = la escala hasta `{ $to }` tiene un dígito de `{ $digit }`, más fino que una escala menor
wanted-range-digit = se espera `{ $digit }` o más, como tiene la escala menor
rule-bits = ningún convertidor tiene { $written } bits
rule-plausible = ningún sensor puede leerse dentro de `{ $written }` de la referencia
wanted-plausible-ends = se esperan dos extremos de 0 % a 100 %, el segundo mayor que el primero
wanted-bits = se espera un número entero de 6 a 24
rule-looks-broken = a { $end }, dentro de su margen, un sensor bueno se sale de { $written } de la referencia (a partir de { $limit })
wanted-plausible = fuera de ahí la unidad toma la línea por abierta o en corto
rule-looks-broken-help = comparar los límites con los datos de la unidad de control, o estrechar el margen del sensor
rule-magnitude = `{ $written }` es de un tamaño poco habitual
rule-magnitude-impossible = `{ $written }` es de un tamaño imposible
rule-magnitude-help = comparar el prefijo de la unidad con la fuente
rule-not-positive = `{ $written }` no es mayor que cero
rule-dissipation = `{ $written }` en aire en movimiento es menos que en aire en calma
rule-dissipation-help = comparar ambas con la fuente, e intercambiarlas si están cambiadas
wanted-at-least = se espera { $least } o más
label-still-air = el aire en calma se indica aquí
rule-absolute-zero = la fila `{ $row }` está por debajo del cero absoluto
rule-few-rows = una curva necesita dos filas o más; la tabla tiene { $count }
rule-limits-order = límites en orden equivocado en la fila `{ $row }`
rule-mixed-columns = la fila `{ $row }` tiene columnas distintas de la primera
rule-equal-temperatures = la temperatura { $temperature } está en dos filas
rule-not-falling = la resistencia no baja de la fila `{ $colder }` a la fila `{ $hotter }`
rule-not-falling-help = comparar ambas filas con la fuente; esta tabla tiene menos ohmios en caliente, como los termistores NTC
rule-not-rising = la resistencia no sube de la fila `{ $colder }` a la fila `{ $hotter }`
rule-not-rising-help = comparar ambas filas con la fuente; esta tabla tiene más ohmios en caliente, como el platino y el silicio
rule-outlier = la fila `{ $row }` se aparta un { $percent } % de la curva de sus vecinas
rule-outlier-help = comparar esta fila con la fuente por si hay una cifra mal tecleada
rule-outlier-digit = `{ $number }` encajaría, con una cifra distinta: comparar esta fila con la fuente
rule-outlier-swapped = `{ $number }` encajaría, con dos cifras en el otro orden: comparar esta fila con la fuente
rule-outlier-point = `{ $number }` encajaría, con el punto en otro sitio: comparar esta fila con la fuente
rule-outlier-prefix = `{ $number }` encajaría, mil veces distinto: comparar la unidad de esta fila con la fuente
rule-range-beyond-table = `{ $range }` va más allá de la tabla, que acaba en { $low } y { $high }
rule-range-beyond-formula = `{ $range }` va más allá de lo que se calcula con esta curva, de { $low } a { $high }
rule-range-beyond-class = la clase { $class } vale de { $low } a { $high }: más allá, los límites quedan SIN DATO
rule-range-beyond-class-help = estrechar el margen, o indicar la tolerancia como `temperature` si la hoja de datos del elemento la da ahí
rule-range-beyond-sensor = `{ $range }` va más allá del margen del sensor, de { $low } a { $high }
rule-tolerance-and-columns = la tolerancia está indicada, y la tabla también tiene columnas para ella
rule-tolerance-twice = la tolerancia está indicada en kelvin y en porcentaje
rule-tolerance-and-class = la tolerancia está indicada como clase y de otra forma
rule-class-of-no-platinum = la clase `{ $class }` es de elementos de platino, y esta curva no es de platino
rule-class-of-no-platinum-help = escribir la curva como `{"{"} model = "platinum", resistance = "100 Ω" {"}"}`, o la tolerancia como `temperature` o `resistance`
rule-tolerance-no-b = `{ $key }` hace crecer una tolerancia con el valor B de un termistor, y este sensor no lo tiene
rule-tolerance-no-b-help = omitirla si el porcentaje vale a cualquier temperatura; si no, indicar `temperature`, la `class` de un elemento de platino, o una tabla con mín. y máx.
rule-tolerance-whole = una tolerancia de { $written } no deja nada del valor
rule-tolerance-incomplete = no se pueden calcular límites: la tolerancia no tiene `{ $key }`
rule-tolerance-incomplete-help = escribir `beta = "0 %"` solo si la fuente dice que el mismo porcentaje vale a cualquier temperatura
rule-divider = una resistencia de { $resistor } no permite leer un sensor de { $sensor } a { $temperature }
rule-no-such = no existe { $kind } `{ $id }`
rule-wrong-instrument = el instrumento `{ $id }` no es un { $wanted }
rule-pin-twice = el pin { $pin } lleva una señal y se usa dos veces
rule-pin-twice-systems-help = dos sistemas pueden tener conectores con el mismo nombre: dar un id propio al conector de cada sistema
spec-bad-face-row = esto no es una fila de una cara
wanted-face-row = se espera una lista de marcas de pin, por ejemplo `[1, 2, "", 3]`; `""` es un sitio sin alojamiento
rule-face-no-view = se dibuja una cara, pero no se dice desde dónde se ve
wanted-view = se espera `view` a su lado: `mating-face` o `wire-entry`; las dos son imágenes especulares
rule-face-empty = la cara no tiene pines
rule-face-rows = la cara tiene { $rows } filas
wanted-face-rows = en una ficha caben { $most } filas
rule-face-places = una fila tiene { $places } sitios
wanted-face-places = en una fila de la ficha caben { $most } sitios
rule-face-mark = la marca `{ $mark }` es demasiado larga para su pin
wanted-face-mark = se esperan como mucho { $longest } caracteres
rule-face-lengths = una fila de { $places } sitios debajo de una de { $first }
wanted-face-length = se esperan tantos sitios como en la primera fila
rule-face-lengths-help = escribir `""` para un sitio sin alojamiento
rule-face-twice = el pin { $mark } está dibujado dos veces
rule-face-lacks = { $count ->
    [one] el pin { $marks } está en la lista y no se dibuja
   *[other] los pines { $marks } están en la lista y no se dibujan
}
wanted-face-pin = se espera cada pin de la lista en `rows`
label-face = la cara
label-face-row = la primera fila
rule-airbag-card = el conector { $id } es cableado de airbag o pretensor: no lleva ficha
rule-airbag-face = el conector { $id } es cableado de airbag o pretensor: no se dibuja
wanted-no-airbag = quitar esto
label-airbag = esto lo dice
rule-airbag-help = nadie mide, comprueba con óhmetro ni desconecta ese cableado sin el procedimiento de su fabricante; si no lo es, escribir `airbag = false`
rule-connector-unused = nada del conjunto tiene un pin en el conector { $id }
wanted-used-connector = se espera un conector en el que tenga un pin un sensor, un actuador o una carga
rule-view-no-rows = el conector { $id } no tiene cara que otra vista pueda mostrar
wanted-rows = se espera `rows` en su tabla
rule-two-connectors = un extremo tiene pines en dos conectores, { $first } y { $second }
rule-pin-form = `{ $pin }` no es un pin
rule-no-such-pin = el conector { $connector } no tiene pin { $pin }
rule-strip-rows = un paso de { $step } da una tabla de { $rows } filas
rule-other-system = { $kind } `{ $id }` es del sistema `{ $theirs }`, el papel es para `{ $system }`
rule-empty-group = un grupo de la hoja `{ $id }` no tiene pruebas
rule-no-such-component = no existe `{ $word }` para probar
rule-test-no-state = la prueba `{ $id }` no dice su estado: una lectura sin `{ $key }` no significa nada
rule-test-powered = la prueba `{ $id }` mide ohmios en un circuito con tensión
rule-test-parallel = la prueba `{ $id }` mide ohmios de una pieza conectada: hay otros caminos en paralelo
rule-test-no-pins = la prueba `{ $id }` no dice dónde van las puntas: sus pines están SIN DATO
rule-test-no-pins-help = su componente no tiene pines para esta medida en este lugar
rule-test-no-view = el pin { $pin } se ve en un conector sin `{ $key }`: su imagen especular es otro pin
rule-test-one-pin = las dos puntas están en el pin { $pin }
rule-test-meter = la prueba `{ $id }` no puede leerse con `{ $meter }`
rule-test-unit = este límite es { $found }
rule-test-no-curve = la prueba `{ $id }` no trata de nada que tenga una curva que calcular
rule-test-no-delay = «{ $event }» viene después de otro paso, pero nada dice cuándo
rule-test-two-delays = «{ $event }» tiene dos retardos
rule-test-row-length = la fila `{ $name }` tiene { $found } valores
rule-test-origin = `{ $word }` no es un valor de esta prueba
rule-test-no-step = el soplador no tiene velocidad { $step }
rule-test-duty = una parte del tiempo no puede ser `{ $written }`
rule-test-frequency = `{ $written }` no es frecuencia de una línea conmutada
rule-test-month = `{ $written }` no es un mes
rule-test-no-vehicle = la prueba `{ $id }` no es para ningún vehículo del sistema `{ $system }`
rule-test-other-system = el modo `{ $id }` es del sistema `{ $theirs }`
rule-test-lacks = a la forma `{ $form }` le falta lo que necesita
rule-test-twice = la forma `{ $form }` tiene sus límites dos veces
rule-report-evidence = en el informe `{ $id }` caben { $most } lecturas
rule-report-other = la hoja `{ $sheet }` no tiene prueba `{ $test }`
rule-empty-sheet = la hoja `{ $id }` no tiene vehículos o pruebas que imprimir
rule-no-vehicle = la hoja `{ $id }` no imprime nada: ningún vehículo tiene el sistema `{ $system }`
rule-no-limits = `{ $written }` no tiene tolerancia: con ello no se pueden calcular límites de tensión
rule-no-limits-help = escribir `{ $written } ± …` según su documento; ± 0 % solo para un valor exacto
rule-mode-twice = el modo `{ $id }` nombra dos veces el punto de mando `{ $control }`
rule-mode-twice-help = un punto de mando es forzado, o libre, o indiferente: dejar uno
rule-mode-other-system = el punto de mando `{ $control }` es del sistema `{ $theirs }`, el modo es de `{ $system }`
rule-mode-silent = el modo `{ $id }` no dice qué hace con { $controls }
rule-mode-silent-help = escribirlo en `forces` con su valor, o en la lista `free` o `dont_care`; nada se da por supuesto
rule-mode-value = el punto de mando `{ $control }` no tiene el valor `{ $value }`
rule-mode-forces-nothing = el modo `{ $id }` no fuerza nada, así que no prueba nada
rule-mode-forces-nothing-help = añadir lo que fuerza según su fuente, o quitar el modo
rule-mode-order-twice = dos modos tienen el orden { $order }
rule-mode-order-whole = `{ $order }` no es un lugar entre los modos
wanted-whole = se espera un número entero, por ejemplo 4
rule-mode-order-missing = el modo `{ $id }` no tiene `order`, pero otros modos del sistema `{ $system }` sí
rule-mode-same = los modos `{ $first }` y `{ $second }` hacen lo mismo con todos los puntos de mando
rule-mode-same-help = comparar ambos con la fuente; si de verdad son iguales, basta una fila de la tabla
rule-control-never-forced = ningún modo del sistema `{ $system }` fuerza el punto de mando `{ $id }`
rule-control-never-forced-help = añadir un modo que lo fuerce, o quitar el punto de mando: ningún modo puede mostrar si funciona
rule-control-values = el punto de mando `{ $id }` tiene menos de dos valores: nada puede mostrar que se mueve
rule-control-value-twice = el punto de mando `{ $id }` tiene dos veces el valor `{ $value }`
rule-control-taken = `{ $value }` no puede ser valor de un punto de mando
rule-panel-scales = las escalas del panel `{ $id }` no son conversión una de otra: los extremos inferiores difieren en { $low } K, los superiores en { $high } K
rule-panel-scales-help = comparar ambas con la fuente. Si el panel tiene dos escalas propias, ninguna puede calcularse de la otra: indicarlo con `separate = {"{"} value = true, source = "…" {"}"}`
rule-panel-not-separate = el panel `{ $id }` figura con escalas separadas, pero son conversión una de otra: los extremos inferiores difieren en { $low } K, los superiores en { $high } K, no más que el redondeo
rule-panel-not-separate-help = comparar ambas escalas con la fuente, o quitar `separate`
rule-panel-separate-source = el panel `{ $id }` figura con escalas separadas, pero no se dice de dónde se sabe
rule-panel-separate-source-help = escribir `separate = {"{"} value = true, source = "…" {"}"}`, o dar al panel una `source`
rule-digits-help = comparar las cifras y la unidad con la fuente
rule-no-current-limits = `{ $written }` no tiene tolerancia: con ello no se pueden calcular límites de resistencia ni de corriente
rule-negative = `{ $written }` es inferior a cero
rule-high-voltage = ALTO: { $written } es alta tensión
rule-high-voltage-help = dejar las piezas de alta tensión fuera de las especificaciones: para ellas no se calcula ni se imprime nada. Solo trabaja en ellas personal cualificado: desconectar, bloquear, esperar, verificar la ausencia de tensión
rule-nominal-battery = una batería nominal de { $written } es un valor que la batería no tiene
rule-control-few = una cilindrada necesita dos puntos o más
rule-control-flat = la cilindrada es la misma en todos los puntos
rule-control-point = `{ $point }` no es un punto de un compresor
rule-control-same = la corriente del punto `{ $point }` está indicada dos veces
rule-control-direction = del punto `{ $less }` a `{ $more }`, más corriente no significa { $direction }
rule-control-direction-help = comparar los puntos, y luego el sentido, con la fuente: existen electroválvulas de los dos tipos
rule-ceiling = { $current } no siempre se alcanza: { $battery } hace pasar como mucho { $most } por una bobina caliente de { $resistance }
rule-ceiling-help = comprobar la resistencia y la temperatura de la bobina; si son correctas, una corriente menor que esta no es avería
rule-rated-coil = `{ $written }` es una temperatura poco habitual para especificar una bobina
rule-rated-coil-help = `at` es la temperatura a la que vale `resistance`; lo que se calienta la bobina es `temperature`
rule-copper-range = `{ $written }` va más allá de las temperaturas para las que se calcula el cobre
rule-duty = un ciclo de trabajo de { $written } es más que siempre conectado
rule-blower-step = una velocidad de { $written } pone en el motor más que la batería
rule-step-tolerance = una tolerancia de { $written } de la batería no deja nada de una velocidad
rule-drop-whole = una caída de `{ $written }` no deja nada de la batería
wanted-below = se espera menos de { $greatest }
rule-blower-order = la velocidad `{ $faster }` no está por encima de la velocidad `{ $slower }`
label-step-before = la velocidad anterior
rule-exponent = un exponente de { $written } no es el de ningún soplador
rule-gauge-class = { $size } es un número de calibre, que no tiene clase
rule-wire-size = { $size } no es una sección de IEC 60228: no se conoce la resistencia máxima
rule-wire-size-help = solo se calcula la resistencia nominal de cobre macizo, ρ/A con 1/58 Ω mm²/m; un cable real tiene de 3 a 15 % más. Las secciones de vehículos de carretera están en ISO 6722 e ISO 19642
rule-conductors = una corriente no puede pasar por { $written } conductores uno tras otro
rule-wire-system = la carga `{ $driver }` pertenece al sistema `{ $system }`
rule-wire-drop = el cable pierde { $lost } a { $at }, más que su límite de { $limit }
rule-wire-drop-help = comparar sección, longitud y corriente con la fuente; un cable bueno no puede cumplir el límite
rule-reserved-name = `{ $id }` no puede ser nombre de archivo en cualquier disco
rule-same-name = `{ $id }` nombra dos documentos, o dos que solo difieren en mayúsculas
rule-lamination = `{ $key }` de { $written } no es una medida con la que se plastifiquen tarjetas
rule-guard-size = una banda de guarda de { $written } de U no sirve
rule-guard-size-help = escribir `guard = "100 %"` para w = U; para límites sin banda de guarda `decision = "simple"`
rule-guard-alone = hay una banda de guarda de { $written }, pero la decisión no la usa
rule-guard-alone-help = escribir `decision = "guarded"`, o quitar la banda de guarda
rule-no-shop = el conjunto no nombra ningún taller
rule-no-shop-help = añadir [shop] con `title` y `paper`
rule-elevation-missing = el taller no tiene altitud: las presiones relativas y los valores del aire quedan SIN DATO
rule-elevation-help = añadir `elevation = "… m"` a [shop], su altitud sobre el nivel del mar
rule-elevation-outside = `{ $written }` no es una altitud que cubra la atmósfera normalizada
rule-elevation-unusual = `{ $written }` es una altitud poco habitual para un taller
rule-elevation-unit-help = comprobar las cifras y la unidad, `m` o `ft`
rule-beyond-saturation = `{ $range }` va más allá de la ecuación de saturación de { $fluid }
rule-unit-twice = la unidad `{ $unit }` está indicada dos veces
rule-above-critical = `{ $range }` supera { $critical }, el punto crítico de { $fluid }: ahí no hay saturación
rule-duty-no-limits = `{ $written }` no tiene tolerancia: con ello no se pueden calcular límites de la temperatura de los difusores
rule-no-such-air = `{ $written }` no es la temperatura del aire alrededor de un vehículo
rule-no-such-share = `{ $written }` no es una proporción posible
rule-cabin-missing = una posición toma aire del habitáculo, pero no hay `{ $key }`: sus valores quedan SIN DATO
rule-cabin-help = añadir `cabin = "… °C"` y `cabin_humidity = "… %"`
rule-vent-rows = estos pasos dan una tabla de { $rows } filas
rule-stop-outside = un tope no puede leer { $written } de la referencia
rule-stop-nominal = { $written } queda fuera de su propia ventana
rule-stops-reversed = el tope inferior ({ $low }) lee más que el superior ({ $high })
rule-stops-reversed-help = `low` es el tope con menos voltios, vaya como vaya la trampilla: intercambiarlos
rule-stops-overlap = las ventanas de los topes, { $low } y { $high }, se solapan: una lectura en ambas no es de ningún tope
rule-contact-count = { $count ->
    [one] 1 contacto
   *[other] { $count } contactos
} en un actuador
rule-contact-pins = { $count ->
    [one] un pin para { $names } contactos
   *[other] { $count } pines para { $names } contactos
}
rule-stall = un motor que consume { $held } bloqueado y { $free } en marcha libre
rule-stall-help = un motor bloqueado consume varias veces la corriente de su marcha libre: ¿están los dos cambiados?
rule-code-length = el código de la posición `{ $position }` no es para los contactos que hay
rule-code-twice = las posiciones `{ $first }` y `{ $second }` tienen el mismo código
rule-code-jump = de `{ $from }` a `{ $to }` conmutan { $count } contactos
rule-code-jump-help = comprobar los códigos; si son correctos, por el camino puede verse un momento { $codes }
rule-ladder-overlap = ninguna lectura distingue `{ $first }` ({ $first_window }) de `{ $second }` ({ $second_window })
rule-ladder-overlap-help = comparar resistencias y tolerancias con la fuente; si son correctas, aquí la pieza no puede juzgarse por voltios
rule-light-saturates = con { $resistor } la lectura está en su extremo a partir de { $irradiance }
rule-ratio-outside = una salida no puede ser { $written } de la referencia
rule-clamp-cuts = los límites de la salida, { $clamp }, cortan una parte de la recta de { $low } a { $high }
rule-line-reversed = el extremo superior ({ $high }) no está por encima del inferior ({ $low })
rule-line-reversed-help = intercambiar `low` y `high`, o comparar ambos con la fuente
rule-transducer = con estos valores no hay transductor: { $reason }
sheet-thermometer = Termómetro
sheet-multimeter = Multímetro
sheet-own-meter = Para filas que lo nombran
kind-thermometer = termómetro
kind-multimeter = multímetro
kind-pressure-gauge = manómetro
kind-hygrometer = higrómetro
rule-request-release = una condición que se activa a { $threshold } y se desactiva a { $release }, más allá del mismo lado
rule-request-release-help = ¿están los dos cambiados, o debería `side` ser el otro?
rule-request-no-hysteresis = el umbral y el umbral de desactivación son ambos { $threshold }: no hay histéresis
rule-request-no-hysteresis-help = donde coinciden la solicitud oscila; buscar a qué valor se desactiva la condición
rule-request-quantity = { $watch } `{ $id }` no mide { $quantity }
rule-request-quantity-help = indicar lo que vigila este valor, o `reading = "…"` si solo se ve como valor de diagnóstico
rule-request-system = `{ $id }` pertenece al sistema `{ $system }`
rule-request-range = { $written } queda fuera de lo que muestra su sensor
rule-request-range-help = comparar la unidad y el signo con la fuente, y qué sensor lo vigila
rule-request-never = la solicitud `{ $id }` nunca puede concederse: hay condiciones sobre un mismo valor que se excluyen
rule-request-never-help = seguir el valor hacia arriba y hacia abajo con la tabla de condiciones: ¿qué lado está al revés?
rule-trace-order = los tiempos de un trazado no crecen en { $written }
rule-requested-time = la solicitud no puede estar a partir de { $written }
rule-no-trace = el escenario no dice qué hace el valor de «{ $title }»
rule-no-trace-help = añadir `trace = [["0 s", "…"], …]`: basta un punto para un valor que se queda donde está
kind-sensor = sensor
kind-transducer = transductor

## What a value is

fact-applicability = Montado en
fact-high-voltage = Alta tensión
fact-rated-resistance = Resistencia nominal
fact-rated-temperature = Nominal a
fact-beta = Valor B
fact-coefficient-a = Coeficiente a (1/K)
fact-coefficient-b = Coeficiente b (1/K)
fact-coefficient-c = Coeficiente c (1/K)
fact-coefficient-d = Coeficiente d (1/K)
fact-coefficient-b-squared = Coeficiente b (1/K²)
fact-coefficients-for = Coeficientes para R dividida por
fact-resistance-at-zero = Resistencia a 0 °C
fact-table = Tabla, puntos
fact-tolerance = Tolerancia
fact-tolerance-resistance = Tolerancia de R
fact-tolerance-class = Clase de tolerancia (IEC 60751)
fact-tolerance-at = Tolerancia de R indicada a
fact-tolerance-beta = Tolerancia de B
fact-circuit = Circuito
fact-pull-up = Resistencia pull-up
fact-pull-down = Resistencia pull-down
fact-resistor-tolerance = Tolerancia de un resistor
fact-reference = Referencia
fact-reference-tolerance = Tolerancia de la referencia
fact-series = Resistencia en serie
fact-parallel = Resistencia en paralelo
fact-system-battery = Batería al medir
fact-switched = Segunda resistencia, conmutada
fact-reader = Resistencia de la otra unidad
fact-reader-reference = Referencia de la otra unidad
fact-return-offset = Retorno sobre masa
fact-bits = Convertidor, bits
fact-plausible = Plausible, de la ref.
fact-dissipation-still = Disip., aire en calma
fact-dissipation-moving = Disip., aire en movim.
fact-range = Margen
fact-service-limit = Límite de servicio
fact-probe = Sonda
fact-test-value = Valor de la prueba
fact-location = Lugar
fact-own-pins = Pines en su conector
fact-control-unit-pins = Pines en la unidad de control
fact-component-pins = Pines en el sensor
fact-signal-pin = Pin de señal
fact-return-pin = Pin de retorno
fact-ground-pin = Pin de masa
fact-reference-pin = Pin de referencia
fact-motor-pin = Pin del motor
fact-contact-pin = Pin del contacto
fact-common-pin = Pin común de los contactos
fact-contact-in-pin = Pin del contacto, alim.
fact-contact-out-pin = Pin del contacto, carga
fact-moves = Mueve
fact-track = Pista
fact-track-ends = Cada extremo de la pista
fact-wiper-contact = Contacto del cursor
fact-wiper-load = Carga en el cursor
fact-wiper-load-to = Carga en el cursor, hacia
fact-stop-low = Tope inferior, V/Vref
fact-stop-high = Tope superior, V/Vref
fact-stop-nominal = Tope nominal, V/Vref
fact-contact-closed = Contacto cerrado, máx.
fact-positions = Posiciones
fact-ladder-resistor = Resistencia de la escalera
fact-ladder-end = Resistencia final de la escalera
fact-sweep-time = De tope a tope, máx.
fact-sweep-step = Mayor salto, del recorrido
fact-sweep-dead-band = Banda muerta, del recorrido
fact-sweep-hysteresis = Subida/bajada, del recorrido
fact-free-run-current = Corriente motor, libre
fact-stall-current = Corriente motor, bloqueado
fact-plain-dc = Motor sin electrónica
fact-recalibration = Reaprendizaje de los topes
fact-photocurrent = Fotocorriente
fact-photocurrent-at = Fotocorriente indicada a
fact-photocurrent-tolerance = Tolerancia de la fotocorriente
fact-dark-current = Corr. de oscuridad, máx.
fact-load-resistor = Resistencia de carga
fact-least-span = Tapado a luz, mín.
fact-line-low-pressure = Punto inf., presión
fact-line-low-ratio = Punto inf., V/Vref
fact-line-high-pressure = Punto sup., presión
fact-line-high-ratio = Punto sup., V/Vref
fact-span-accuracy = Exactitud, del intervalo
fact-clamp = Límites de la salida
fact-wire = Cable del pin
fact-latch = Cierre del conector
fact-face = Cara del conector
fact-expected = Esperado en el pin
fact-sensors-at = Temperatura de los sensores
fact-view = Vista del conector
fact-side = Lado del conector
fact-accuracy = exactitud
fact-volts = voltios
fact-ohms = ohmios
fact-digit = dígito
fact-input = Entrada medidor
fact-control-values = Valores del punto de mando
fact-control-observe = Cómo ver el punto de mando
fact-mode-forces = Forzado por el modo
fact-mode-time = Tiempo límite del modo
fact-panel-celsius = Escala en °C
fact-panel-fahrenheit = Escala en °F
fact-panel-low-mark = El extremo inferior es
fact-panel-high-mark = El extremo superior es
fact-panel-separate = Dos escalas separadas
fact-leads = puntas
fact-thermocouple = tipo de termopar
fact-soak = estabilización
fact-decision = Regla de decisión
fact-guard = Banda de guarda, parte de U
fact-elevation = Altitud del taller
fact-fluid = Refrigerante
fact-superheat = Recalentamiento
fact-subcooling = Subenfriamiento
fact-at-rest = Vale como saturado en reposo
fact-low-gauge = Manómetro de aspiración
fact-high-gauge = Manómetro de descarga
fact-thermometer = Termómetro
fact-hygrometer = Higrómetro
fact-accuracy-of-full-scale = exactitud, del fondo de escala
fact-full-scale = fondo de escala
fact-accuracy-of-humidity = exactitud, de la humedad relativa
# unchecked: “enfriamiento” for the heat taken from each kilogram of dry air
fact-duty = Enfriamiento, por kg de aire seco
fact-duty-tolerance = Tolerancia del enfriamiento
fact-outlet-humidity = Humedad del aire que sale
fact-ambient = Aire exterior
fact-humidity = Humedad del aire exterior
fact-evaporator = Evaporador mantenido entre
fact-cabin = Aire del habitáculo
fact-cabin-humidity = Humedad del aire del habitáculo
fact-outside-share = Parte de aire exterior, en masa
fact-battery = Batería
fact-battery-nominal = Batería, nominal
fact-switch-drop = Caída en el interruptor
# unchecked: “diodo de libre circulación”; also “diodo volante”, “diodo de rueda libre”
fact-diode-drop = Caída del diodo de libre circ.
fact-frequency = Frecuencia
fact-inductance = Inductancia
fact-duties = Ciclos
fact-more-current = Más corriente significa
fact-displacement = Cilindrada, puntos
fact-polarity = Conectado
fact-supply-drop = Caída alim., límite
fact-ground-drop = Caída en masa, límite
fact-contact-drop = Caída en contacto, límite
fact-control-pin = Pin de mando
fact-feed-pin = Pin de alim.
fact-coil-temperature = Temperatura de la bobina
fact-isolation = Bobina a carcasa
fact-motor-current = Corriente del motor
fact-motor-voltage = Corriente indicada a
fact-motor-exponent = Exponente de la corriente
fact-blower-control = Mando
fact-blower-resistors = Resistencias de velocidades
fact-blower-steps = Velocidades, parte bat.
fact-step-tolerance = Tol. velocidad, parte bat.
# unchecked: “relé de velocidad máxima” for the relay that bridges the series part
fact-bypass-drop = Caída del relé de puenteo
fact-blower-wiring = Cableado, ida y vuelta
fact-wire-size = Sección del conductor
fact-wire-class = Clase del conductor
fact-wire-length = Longitud
fact-wire-conductors = Conductores en serie
fact-wire-current = Corriente
fact-wire-temperature = Temperatura del cable
fact-drop-limit = Caída, límite
fact-request-line = Línea de solicitud
fact-hold = Tiempo de espera
fact-reads-absent = Lectura si ausente
fact-reads-waiting = Lectura en espera
fact-reads-granted = Lectura si concedida
fact-threshold = Umbral
fact-release = Umbral de desactivación
fact-delay = Retardo
fact-release-delay = Retardo desactiv.
fact-is-low-side = lado de masa
fact-is-high-side = lado de positivo
fact-is-more-displacement = más cilindrada
fact-is-less-displacement = menos cilindrada
fact-is-transistor = transistor
fact-is-resistor-pack = resistencias

## What every document says

doc-sensor-card = Ficha de sensor
doc-wall-card = Ficha mural
doc-actuator-card = Ficha de actuador
# unchecked: “etapa de potencia” for the output stage together with its load
doc-driver-card = Ficha de etapa
doc-test-sheet = Hoja de pruebas
doc-revision-none = BORRADOR
doc-applicability = { $system }: { $vehicles }
doc-no-source = sin fuente
doc-not-given = SIN DATO
doc-quantity-to = a
doc-quantity-digits = dígitos
doc-units = Ω, V CC, °C; °F = 1,8 × °C + 32
doc-units-metric = Ω, V CC, °C
doc-units-us = Ω, V CC, °F
doc-printed = impreso { $date }
doc-issued = emitido { $date } por { $by }
doc-changed = Cambiado desde { $revision }, marcado ▶▌: { $cells ->
    [one] un valor
   *[other] { $cells } valores
}.
doc-changed-short = ▶▌ cambiado desde { $revision }: { $cells }
doc-changed-none = Reemitido desde { $revision }, ningún valor cambiado.
doc-changed-unknown = Reemitido desde { $revision }; no se sabe qué cambió: comparar antes de usar.
doc-changed-title = Cambiado desde { $revision }

## Lista de retirada

# unchecked: the trade’s word for a list of copies to take back
doc-pull-list = Lista de retirada
pulled-title = Retirar y destruir
pulled-total = { $copies ->
    [one] un ejemplar
   *[other] { $copies } ejemplares
} en { $places ->
    [one] un lugar
   *[other] { $places } lugares
}
pulled-intro = Retirar cada ejemplar, poner la nueva revisión en su lugar y destruir el anterior: cortarlo por el código. Marcar enseguida. Lo que no se encuentra queda sin marca.
pulled-place = Lugar
pulled-holder = Poseedor
pulled-paper = Papel
pulled-revision = Revisión
pulled-because = A causa de
pulled-taken-down = retirado
pulled-destroyed = destruido
pulled-not-recorded = no registrado
pulled-withdrawn = { $revision }, anulado
pulled-more = y { $values ->
    [one] otro valor
   *[other] { $values } valores más
}

## Sensor card

card-direction-pull-up = más calor → menos Ω → menos V
card-direction-pull-down = más calor → menos Ω → más V
card-direction-ohms = más calor → menos Ω
card-direction-rising-pull-up = más calor → más Ω → más V
card-direction-rising-pull-down = más calor → más Ω → menos V
card-direction-rising-ohms = más calor → más Ω
card-connector = { $id } · { $title }
card-pin-signal = señal
card-pin-return = retorno
card-pin-ground = masa
card-pin-reference = referencia
card-pin-motor-plus = motor +
card-pin-motor-minus = motor −
card-pin-contact = contacto
card-pin-common = común
card-pin-control = mando
card-pin-feed = alim.
card-pin-contact-in = cont. ent.
card-pin-contact-out = cont. sal.
card-view-mating-face = lado acoplamiento
card-view-wire-entry = lado cables
card-view-not-given = vista SIN DATO
card-side-harness = lado mazo
card-side-component = lado componente
card-side-not-given = lado SIN DATO
card-min = mín.
card-nominal = nominal
card-max = máx.
card-nominal-value = nominal { $value }
card-ground = masa SIN DATO
card-note-window = Caso más desfavorable, hacia dentro.
card-note-switched = La segunda resistencia, desconectada.
card-note-ohms = Ω: contacto OFF, en el propio sensor.
card-note-volts = V: contacto ON, conectado, { $pins }
card-note-ohm-window = Límites en Ω, caso más desfavorable, hacia dentro.
card-note-beyond = –: fuera de la tabla.
card-note-beyond-class = –: fuera del margen de la clase.
card-note-no-tolerance = Límites SIN DATO: sin tolerancia.
card-note-no-circuit = Voltios SIN DATO: sin circuito.
card-note-no-volt-limits = Límites en V SIN DATO: sin tolerancia de circuito o medidor.
card-note-meter = (medidor { $input }).
card-note-no-meter = (sin medidor).
card-plot-resistance = Resistencia
card-plot-voltage = Tensión
card-alt-switched = La unidad puede conmutar { $value } junto a esa resistencia.
card-alt-reader = Otra unidad lee la misma línea a través de { $value }.
card-alt-offset = El retorno está { $value } por encima de la masa de la unidad.
card-faults = Lecturas con avería
card-fault = avería
card-fault-believed = → { $unit }
card-note-faults-where = Ω: unidad desconectada, contacto OFF. V: todo conectado, contacto ON. → { $unit }: lo que interpreta la unidad; – fuera de lo que toma por sensor.
card-note-faults-brackets = Entre paréntesis: aún puede leer dentro de la ventana de una pieza buena.
card-note-faults-unknown = Límites SIN DATO: no se sabe qué se distingue de un sensor bueno.
card-note-faults-more = Toda avería a toda temperatura: bayleaf faults { $id }.
card-fault-open = sensor abierto
card-fault-open-wire = cable abierto
card-fault-short = sensor en corto
card-fault-to-ground = señal a masa
card-fault-to-reference = señal a referencia
card-fault-to-battery = señal a batería
card-fault-series = { $size } en los cables
card-fault-leak = derivación { $size }
card-fault-leak-to-battery = deriv. bat. { $size }
card-fault-lifted-return = retorno + { $size }
card-fault-resistance = Ω del sensor { $size }
card-fault-slope = pendiente { $size }
card-fault-resistor = Ω de unidad { $size }
card-fault-mated = Ω, unidad conectada
card-fault-part = pieza { $part }
card-signature = Cuánto se equivoca la unidad de control, por temperatura
card-signature-note = Medir en frío y en caliente: la avería se ve por dónde crece su error.
card-signature-ends = Tras cada nombre: { $cold } … { $hot }.
card-signature-wires = Averías en los cables
card-signature-parts = Averías en piezas
card-alt-signature = { $title }, error de { $cold } a { $hot }: { $lines }
card-alt-plot = { $title } según la temperatura: de { $first } a { $cold } hasta { $last } a { $hot }.
card-alt-pull-up = Circuito: la unidad de control aplica la referencia de { $reference } a través de { $resistor } al pin de señal { $signal }; el sensor está entre la señal y el pin de retorno { $other }.
card-alt-pull-down = Circuito: el sensor está entre el pin de referencia { $other }, { $reference }, y el pin de señal { $signal }; { $resistor } va de la señal a masa dentro de la unidad de control.
card-example = Ejemplo de cálculo a { $temperature }
card-example-scales = { $fahrenheit } °F = ({ $fahrenheit } − 32)/1,8 °C = { $celsius } °C = { $kelvins } K
card-example-beta = R = { $rated } Ω × exp[{ $beta } K × (1/{ $kelvins } K − 1/{ $rated-kelvins } K)] = { $ohms } Ω
card-example-steinhart-hart = 1/T = a + b ln R + c (ln R)³ con T = { $kelvins } K: R = { $ohms } Ω
card-example-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ con L = ln(R/{ $base } Ω) y T = { $kelvins } K: R = { $ohms } Ω
card-example-platinum = R = { $rated } Ω × (1 + 3,9083·10⁻³ t − 5,775·10⁻⁷ t²) con t = { $temperature }: R = { $ohms } Ω
card-example-platinum-cold = R = { $rated } Ω × (1 + 3,9083·10⁻³ t − 5,775·10⁻⁷ t² − 4,183·10⁻¹² (t − 100) t³) con t = { $temperature }: R = { $ohms } Ω
card-example-silicon = R = { $rated } Ω × (1 + a x + b x²) con x = { $temperature } − { $rated-temperature } = { $above } K: R = { $ohms } Ω
card-example-table = { $temperature } °C = { $fahrenheit } °F, en la curva suave por las filas, ln R según 1/T: R = { $ohms } Ω
card-example-pull-up = V = { $reference } × { $ohms } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-pull-down = V = { $reference } × { $resistor } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-node = V = ({ $currents }) / ({ $conductances }) = { $volts } V.
card-example-network = Con las demás resistencias { $ohms } Ω;
card-example-meter = Con un medidor de { $input }, { $volts } V.
card-example-window = Una pieza buena en un circuito bueno lee { $window } { $unit }.
card-example-fault = Un mal contacto de { $extra } en la línea da { $volts } V: parece { $believed }.
card-hot = caliente
card-cold = frío
card-warmer = más caliente
card-colder = más frío
card-reads-high = muy alto
card-reads-low = muy bajo
card-reads-near-zero = cerca de 0 V
# unchecked: what Spanish meters show or call out of range: OL, “sobrecarga”, “fuera de escala”
card-reads-overload = fuera de escala
card-reads-zero-ohms = cerca de 0 Ω
card-means-open = abierto o suelto: muy { $looks }
card-means-short = señal a retorno o masa: muy { $looks }
card-means-low-pull-down = serie, mal contacto, derivación a masa; o { $or }
card-means-high-pull-down = derivación a referencia o positivo, otra pieza; o { $or }
card-means-short-pull-down = sensor o señal a referencia: muy { $looks }
card-means-open-pull-down = abierto, desconectado, sin referencia, o señal a masa: muy { $looks }
card-means-short-before-series = cable de señal a retorno o masa
card-means-sensor-short = sensor en corto: muy { $looks }
card-means-high = serie, mal contacto, deriv. a positivo, otra pieza; o { $or }
card-means-low = deriv. a retorno o masa, humedad, otra pieza; o { $or }
card-means-ohms-high = serie, mal contacto; o de verdad { $or }
card-means-ohms-low = derivación, humedad, otra pieza; o de verdad { $or }
card-measure-temperature = Poner un termómetro junto al sensor hasta que ninguno se mueva más: esa es la fila.
card-measure-volts = V: conectado, contacto ON, por detrás { $pins }. Ω: contacto OFF, desconectado, en sus pines.
card-measure-ohms = Ohmios: contacto OFF, sensor desconectado, en sus propios pines.
card-measure-window = Entre dos filas, límites intermedios: a { $at } { $window }. Dentro: sensor, cables y unidad bien.
card-next-unplug = Fuera de la ventana: contacto OFF, desconectar el sensor, contacto ON. En el mazo: { $pins }.
card-next-unplug-between = Fuera de la ventana: contacto OFF, desconectar el sensor, contacto ON. En el mazo medir entre sus pines, { $pins }.
card-next-good = Lee { $open }: ni corte ni corto. Contacto OFF: ohmios en los pines del sensor, luego en el conector de la unidad, ella desconectada. Pocos Ω más son los cables, muchos un mal contacto.
card-next-good-between = Lee { $reference }: referencia, cable de señal y pull-down enteros. Contacto OFF: de señal a masa unos { $resistor }, si no, en corto o abierto; luego el sensor en ohmios en sus pines.
card-next-bad = Otra cosa: medir la referencia, luego ambos cables de punta a punta, unidad desconectada.
card-its-two-pins = sus dos pines
card-next-series = Nota: el cable de señal incluye { $series }; de extremo a extremo lee eso.
card-next-ohms = Contacto OFF, desconectar la unidad de control: medir ohmios en el lado mazo, luego en el sensor. La diferencia son los cables.
doc-connector-card = Ficha de conector
doc-system-card = Ficha de sistema
doc-light-card = Ficha sensor luz
doc-transducer-card = Ficha transductor
card-direction-light-pull-up = más luz → menos V
card-direction-light-load = más luz → más V
card-direction-light = circuito SIN DATO
card-direction-absolute-up = más presión → más V; presiones absolutas
card-direction-gauge-up = más presión → más V; presiones relativas
card-direction-absolute-down = más presión → menos V; presiones absolutas
card-direction-gauge-down = más presión → menos V; presiones relativas
card-direction-absolute = recta SIN DATO; presiones absolutas
card-direction-gauge = recta SIN DATO; presiones relativas
card-part-window = ventana
card-part-readings = Lo que lee una pieza buena
card-part-wrong = Lecturas con avería
card-part-wrong-note = UC: lo que interpreta la unidad de control. V: nominal, de señal a retorno en la unidad, conectado, contacto ON. –: no se sabe, o ahí no hay avería.
card-part-fault = Avería
card-part-unknown = Las especificaciones no dicen qué leen: { $faults }.
card-part-believes = UC { $unit }
card-part-told = visible en V
card-light-dark = oscuridad
card-light-covered = tapado con paño oscuro
card-light-sun = pleno sol
card-light-span = oscuridad a luz
card-light-span-of = ver la nota de abajo
card-alt-light-pull-up = Circuito: la unidad de control aplica la referencia de { $reference } a través de { $resistor } al pin de señal; el fotodiodo está entre señal y retorno.
card-alt-light-load = Circuito: el fotodiodo está entre la referencia de { $reference } y el pin de señal; { $resistor } va de la señal a masa dentro de la unidad de control.
card-alt-transducer = Circuito: la unidad de control alimenta el transductor con la referencia de { $reference }; el transductor devuelve una parte de ella por el pin de señal.
card-next-light-span = Taparlo con un paño oscuro, luego iluminarlo con sol o una lámpara de filamento: los voltios se mueven { $span } o más.
card-next-light = Taparlo con un paño oscuro, luego iluminarlo con sol o una lámpara de filamento: los voltios deben moverse.
card-next-light-pull-up = No se mueven: contacto OFF, desconectar el sensor, contacto ON. Está la referencia en el conector del mazo: sensor o conector mal. Sin voltios: cable de señal en corto o abierto.
card-next-light-load = No se mueven: medir primero la referencia en el conector del sensor. Hay referencia y no hay voltios con luz: sensor, conector o cable de señal; voltios a oscuras: señal en corto con la referencia.
card-next-wires = Después los cables de extremo a extremo, contacto OFF, ambos conectores desconectados: pocos ohmios; sin paso a masa ni entre ellos.
card-next-transducer-reference = Primero, de referencia a retorno en el conector del transductor: sin ella no vale la pena medir nada más.
card-next-transducer-rest = Contacto ON, motor parado, en reposo hasta una sola temperatura: comparar con la presión de saturación de la ficha de refrigerante y aire. No hace falta manómetro.
card-next-transducer-wires = Fuera de la ventana, referencia buena: los cables de extremo a extremo, contacto OFF, ambos conectores desconectados. Cables buenos: el transductor, que cambia personal habilitado.
card-system-title = { $system }: entradas, unidad de control, salidas
card-system-no-pins = Pines en la unidad SIN DATO
card-system-pin = { $pin } { $role }
card-system-plug = conector { $plug }
card-system-note-lines = Flechas: hacia dónde va la lectura o la potencia; dos puntas: una salida que informa de vuelta. Los pines compartidos figuran en todo lo que cuelga de ellos.
card-system-note-cards = Cada recuadro nombra la ficha que lo prueba; «sin ficha» es un hueco del conjunto.
card-look-view = vista
card-look-side = lado
card-look-latch = cierre
card-look-keys = guías
card-view-mating-face-long = LADO ACOPLAMIENTO: se mira la cara que acopla
card-view-wire-entry-long = LADO CABLES: se mira por donde entran los cables
card-side-harness-long = MAZO: la mitad que va en los cables
card-side-component-long = COMPONENTE: la mitad que va en la pieza
card-latch-of-view = { $latch } (dicho del { $view })
card-mirror = En el { $other } izquierda y derecha cambian.
card-mirrored = IMAGEN ESPECULAR del { $other } de la especificación: izquierda y derecha están cambiadas.
card-edge-top = arriba
card-edge-bottom = abajo
card-edge-left = izquierda
card-edge-right = derecha
card-at-edge = { $edge }
card-at-corner = { $edge }, extremo: { $end }
card-alt-face = Cara del conector { $id }, { $view }. { $rows }
card-alt-face-row = Fila { $row } desde la izquierda: { $marks }.
# unchecked: “contacto ON / OFF”, chosen because it is read everywhere; Spain says “contacto dado / quitado”
card-state-off = contacto OFF
card-state-on = contacto ON
card-state-unmated = desconectado
card-state-running = en marcha
card-minus-probe = punta − aquí
card-in-the-dark = { $volts } V osc.
card-at-most = ≤ { $volts } V
card-tested-by = ficha { $card }
card-tested-only-by = ver ficha { $card }
card-tested-by-none = sin ficha
card-shares = { $title } ({ $card })
card-shared = Compartido por { $count }: { $things }
card-note-to-ground = Voltios: CC, a retorno o masa de la misma unidad. En marcha: motor y carga en marcha.
card-note-sensors-at = Sensores: ventanas más desfavorables, todos a { $at }.
card-note-sensors-not-given = Sensores: su temperatura está SIN DATO, y sus ventanas también.
card-note-sensors-beyond = Un sensor que no se usa a esa temperatura no tiene ventana.
card-note-unmated-unit = Desconectado: contacto OFF, unidad desconectada; ohmios a retorno del sensor.
card-note-unmated-plug = Desconectado: sensor desconectado, luego contacto ON; voltios en el mazo.
card-note-unmated-part = Desconectado: contacto OFF, desconectado; ohmios en los pines del sensor.
card-note-meter-on = Voltios con medidor { $input }.
card-note-meter-none = Voltios sin medidor.
card-note-computed = Lo calculado: fuentes en la ficha nombrada.
card-see-card = ver su ficha
card-note-states-blank = –: no se sabe.
card-act-more-volts = más voltios → más % → { $high }
card-act-volts-from = más voltios → de { $first } a { $last }
card-act-order = en el orden del recorrido: { $first } → { $last }
card-act-end-to-end = de tope a tope
card-act-free = motor, en marcha libre
card-act-held = motor, bloqueado
card-act-closed = contacto cerrado
card-act-of-reference = { $parts } % de la referencia
card-act-travel = Señal de posición en el recorrido
card-act-positions = Lecturas por posición
card-act-codes = Contactos por posición
card-act-volts = V: contacto ON, conectado, { $pins }, sin medidor. Límites: caso más desfavorable, hacia dentro.
card-act-bent = Entre topes la carga de la unidad curva la recta: no interpolar.
card-act-ladder = Contactos: 1 cerrado, el primero por la izquierda es el más cercano al pin.
card-act-contacts = ● cerrado, ○ abierto. Un contacto está cerrado o abierto, nada intermedio.
card-act-illegal = ✗ ninguna posición
card-act-illegal-count = Además de estos, { $count } códigos no son de ninguna posición.
card-act-position = posición
card-act-what = qué
card-act-good = bueno
card-act-else = si no
card-act-at-most = ≤ { $value }
card-act-motion = Cómo se mueve: { $moves } { $mark }
card-act-motion-unknown = Cómo se mueve
card-act-time = De tope a tope
card-act-time-else = lento: duro, poca alim. Nunca: atasco, desliza
card-act-current = Motor, marcha libre
card-act-current-else = nada: cable, motor, etapa. Más: dureza
card-act-stall = Motor, bloqueado
card-act-stall-else = en un tope, un momento. A mitad: atasco
card-act-fed = Motor a mano
card-act-fed-yes = fusible, desconectado
card-act-fed-no = NUNCA
card-act-fed-unknown = NUNCA: SIN DATO
card-act-fed-else = se mueve en ambos sentidos, o motor malo
card-act-fed-never = la tensión de batería destruye su electrónica
card-act-step = Mayor salto
card-act-step-else = mayor: pista gastada o con cortes
card-act-dead-band = Banda muerta
card-act-dead-band-else = mayor: holgura de engranaje, desliza
card-act-hysteresis = Subida frente a bajada
card-act-hysteresis-else = mayor: holgura de engranaje o varillaje
card-act-track = Pista entera
card-act-track-else = desconectado. OL: pista rota. Otro: otra pieza
card-act-contact = Contacto cerrado
card-act-contact-else = desconectado. Más: sucio, doblado o gastado
card-act-learning = Juzgar la lectura ya en reposo.
card-act-next-both = Fuera de todas las ventanas: primero la referencia ({ $reference }) y el retorno ({ $return }) en la unidad de control; ambos se comparten con otras piezas.
card-act-next-one = Un tope fuera de su ventana: un obstáculo (antes de él), o un eje o tope que se ha deslizado (más allá). Mirar a mano trampilla y varillaje.
card-act-next-sweep = Ambos topes buenos: registrar mín. y máx. de voltios en un barrido lento en ambos sentidos. Un corte es una pista gastada.
card-act-next-ladder = La referencia en todas las posiciones: cable de señal abierto, o no cierra ningún contacto. 0 V en todas: señal en corto a masa.
card-act-next-between = Entre dos ventanas: llevarlo a los dos extremos. Entre ellas en todas partes: un contacto sucio (ver la tabla), u otra resistencia en la línea.
card-act-next-dirty = Ohmios en su propio conector, desconectado: cada posición lee las resistencias hasta su contacto, y encima no más que el contacto cerrado.
card-act-next-code = Un código de ninguna posición: contacto OFF, desconectado, ohmios de cada contacto al común en ambos extremos. Cerrado, como mucho { $closed }; abierto, OL.
card-act-next-common = Todos los contactos abiertos en todas las posiciones: el común ({ $common }), o su camino a masa.
card-act-next-silent = No se mueve: voltios en el conector del motor mientras el panel lo mueve, en ambos sentidos.
card-act-next-volts = Hay voltios, no se mueve: la trampilla a mano, luego el motor. Sin voltios: los cables de extremo a extremo, luego la etapa.
card-act-believes = UC %
card-act-fault = avería
card-act-by = se ve
card-act-wrong = Si algo va mal
card-act-wrong-note = Caso más desfavorable. UC %: posición interpretada. Se ve: V, o Ω entre cables, desconectado.
card-act-wrong-note-windows = Caso más desfavorable. Se ve: V, o Ω entre cables, desconectado.
card-instrument = Con { $meter } [{ $mark }].
card-no-instrument = Se ve solo por las ventanas: no se nombra ningún instrumento.
card-act-unseen-faults = Por nada: { $faults }.
card-act-stuck-note = Por cuál se toma cada posición: – no es posición. Las no nombradas leen como deben.
card-act-unseen = ninguna se lee mal
card-act-contact-name = contacto
card-act-never-closes = nunca cierra
card-act-never-opens = nunca abre
card-act-dirty-ohms = desde Ω
card-act-dirty-into = se lee como
card-act-dirty-note = Resistencia en un contacto cerrado con la que la posición se lee como la siguiente. El contacto 0 es el más cercano al pin.
card-act-as-above = como en la tabla
card-act-input = entrada
card-act-driver = etapa
card-act-alt-potentiometer = Circuito: referencia, señal y retorno van de la unidad de control a un potenciómetro del actuador, otros dos cables a su motor: { $pins }.
card-act-alt-contacts = Circuito: un cable de cada contacto a una entrada de la unidad de control, los contactos van a un cable común, otros dos cables al motor: { $pins }.
card-act-alt-ladder = Circuito: un cable de señal con una pull-up en la unidad de control va a resistencias y contactos del actuador, un cable de retorno vuelve, otros dos cables al motor: { $pins }.
card-act-alt-motor = Circuito: dos cables van de la unidad de control al motor: { $pins }.
card-drv-low-side = lado de masa: la unidad de control conmuta la masa de la carga
card-drv-high-side = lado de positivo: la unidad de control conmuta la alimentación de la carga
card-drv-no-side = lado que se conmuta: SIN DATO
card-drv-always-on = continuo { $current }
card-drv-step = velocidad { $step }
card-drv-relay = máxima, por relé
card-drv-of-battery = { $volts } de { $battery }
card-drv-duties = Corriente según el ciclo
card-drv-coil = Bobina según su temperatura
card-drv-steps = Velocidades: voltios en el motor, no a masa
card-drv-parts = % de batería
card-drv-motor = V motor a
card-drv-ground = V a masa
card-drv-at-nominal-low = A, W (calor de la parte en serie) y V a masa (borne conmutado a masa) a { $battery }; el otro borne lee a masa la batería en todas las velocidades.
card-drv-at-nominal-high = A, W (calor de la parte en serie) y V a masa (borne conmutado a masa) a { $battery }.
card-drv-at-nominal = A y W (calor de la parte en serie) a { $battery }.
card-drv-supply = Alimentación
card-drv-supply-from = batería + a { $pin }
card-drv-supply-of-switch = batería + a alim. del interruptor
card-drv-return-of-switch = masa del interruptor a batería −
card-drv-switch-row = Interruptor
card-drv-switch-low-from = { $pin } a masa del interruptor
card-drv-switch-high-from = alim. del interruptor a { $pin }
card-drv-return = Masa
card-drv-return-from = { $pin } a batería −
card-drv-contact = Contacto
card-drv-contact-from = { $in } a { $out }, relé excitado
card-drv-its-plug = su conector
card-drv-wire = Solo cable
card-drv-wire-loses = { $nominal } V; ≤ { $greatest } V
card-drv-wire-loses-nominal = { $nominal } V
card-drv-wire-of = { $title }: { $size }, { $length }, { $current }
card-drv-drop = caída
card-drv-between = entre
card-drv-most = máximo
card-drv-drops = Dónde se pierden voltios
card-drv-drops-note = Conectado, a plena carga, con la corriente de la carga; sin ella no hay caída.
card-drv-wire-note = Solo cable: lo más caliente.
card-drv-no-waveform = Sin dibujo: batería, lado, caídas o frecuencia SIN DATO.
card-drv-at-pin = Pin de mando a batería −
card-drv-current = Corriente de la bobina
card-drv-shape = { $hertz } Hz: { $period } de flanco a flanco. Dibujado: ciclo { $percent } %, { $time } ON, batería { $battery }, bobina nominal.
card-drv-levels = ON { $on }, OFF { $off } mientras pasa corriente.
card-drv-flows-on = Inductancia SIN DATO: dibujado como si la corriente no cesara nunca.
card-drv-alt-volts = Voltios en el pin de mando en dos periodos de { $hertz } Hz: { $on } durante el { $percent } % de cada uno, luego { $off }.
card-drv-alt-amperes = Corriente en los mismos dos periodos: sube hasta { $most } conectado y baja hasta { $least } desconectado.
card-drv-battery = batería
card-drv-only-high = solo la máxima
card-drv-only-high-means = parte en serie o su mando abierto
card-drv-no-high = máxima no
card-drv-no-high-means = relé de puenteo, su contacto o su bobina
card-drv-dead = ninguna
card-drv-dead-means = alimentación, fusible, masa, luego el motor
card-drv-runs-on = OFF, gira
card-drv-runs-on-means = parte en serie en corto o relé pegado: descarga la batería
card-drv-all-low = todas bajas
card-drv-all-low-means = caída en alimentación o masa; motor duro
card-drv-low-off = OFF { $battery }
card-drv-low-off-means = alim., bobina y cable enteros
card-drv-low-dead = OFF 0 V
card-drv-low-dead-means = falta alim., bobina o cable abierto, o mando a masa
card-drv-low-on = ON cerca de 0 V
card-drv-low-on-means = interruptor bien; sin corriente: bobina abierta
card-drv-low-never = ON { $battery }
card-drv-low-never-means = sin orden, interruptor o cable abierto
card-drv-high-off = OFF 0 V
card-drv-high-off-means = como debe ser
card-drv-high-stuck = OFF { $battery }
card-drv-high-stuck-means = interruptor en corto, o cable a batería
card-drv-high-on = ON { $battery }
card-drv-high-on-means = interruptor y cable bien; sin corriente: bobina o masa abierta
card-drv-high-never = ON 0 V
card-drv-high-never-means = sin orden, cable abierto o a masa: desconectar la carga y repetir
card-drv-meter = V medidor
card-drv-meter-note = V medidor: voltímetro de valor medio en la bobina; ciclo × batería solo con onda cuadrada limpia.
card-drv-paused = A { $duties } la corriente cesa entre pulsos.
card-drv-coil-at = bobina a
card-drv-ohms-open = Ω: OL
card-drv-ohms-open-means = bobinado o cable abierto
card-drv-ohms-few = Ω: pocos
card-drv-ohms-few-means = espiras en corto, otra pieza, o más fría
card-drv-ohms-many = Ω: muchos
card-drv-ohms-many-means = mal contacto, o más caliente
card-drv-unknown = SIN DATO
card-drv-unknown-means = sin el lado ninguna lectura a masa dice nada: medir en la carga
card-drv-next-across = Ahora la batería, luego voltios en el motor a cada velocidad: cuenta su relación, sea cual sea la batería.
card-drv-next-drops = Una velocidad baja: las caídas de la tabla con corriente, una tras otra.
card-drv-load = carga
card-drv-next-coil-drops = Pocos voltios en la bobina conectada: las caídas de la tabla una tras otra, con su corriente pasando.
card-drv-next-fuse = Ninguna velocidad: ambos lados de su fusible, luego la alimentación en su conector, conectado.
card-drv-next-ohms = Contacto OFF, desconectado, 0 V comprobado: ohmios de la bobina, restadas las puntas, con la fila de su temperatura.
card-drv-next-isolation = Cada pin de la bobina a su carcasa: { $least } o más.
card-drv-next-current = Pinza o amperímetro según el ciclo de la orden, a { $battery } o en proporción. Sin corriente: las lecturas de arriba.
card-drv-across = V en carga
card-drv-wrong-note = Bobina a { $at }. Ω: desconectado, a través de los cables; V: en ella, conectado, a plena carga.
card-drv-transistor = transistor
card-drv-pack = resistencias
card-drv-switch = interruptor
card-drv-alt-low = Circuito: el positivo de batería alimenta { $load }; su pin de mando { $control } va a un interruptor a masa. Las caídas se miden del positivo de batería a su alimentación, en el interruptor cerrado, y de la masa del interruptor al negativo de batería.
card-drv-alt-high = Circuito: un interruptor desde el positivo de batería alimenta el pin de mando { $control } de { $load }; su otro pin va a masa. Las caídas se miden del positivo de batería a la alimentación del interruptor, en el interruptor cerrado, y de su pin de masa al negativo de batería.
card-drv-alt-no-side = Circuito: { $load } entre positivo de batería y masa; no está indicado en qué lado está su interruptor.
card-points = Tabla según la fuente, en { $unit }

## Mode card, request card, refrigerant and air card

doc-mode-card = Ficha de modos
doc-request-card = Ficha de solicitud
doc-air-card = Refrigerante y aire
card-modes-title = { $panel }: modos del panel
card-modes-how-choose = Elegir un modo, esperar lo que indica, mirar cada punto de mando enmarcado: marcar ✓ si es como está impreso, ✗ si no.
card-modes-how-fault = Una ✗: ese punto está bloqueado, o la orden no le llega; el valor que muestra en todos los modos es donde está bloqueado.
card-forced = forzado
card-forced-means = lo fija el modo: prueba
card-free-means = decide la unidad: no prueba
card-dont-care-means = indiferente: no prueba
card-mode-within = en { $time } s
card-time-not-given = tiempo SIN DATO
card-run-proven = Estos { $count } de { $all } modos, en este orden, fuerzan todos los valores que algún modo fuerza; ningún conjunto menor lo hace.
card-run-not-proven = Estos { $count } de { $all } modos, en este orden, fuerzan todos los valores que algún modo fuerza; todo conjunto necesita { $least } o más.
card-stuck-at = { $control } bloqueado en { $values }
card-reveals-again = lo ya visto en pasos anteriores, con otro valor
card-box-vehicle = Vehículo
card-box-date = Fecha
card-box-name = Nombre
paper-run = Serie más corta que lo descubre todo
paper-mode = Modo del panel
paper-mode-choose = Elegir
paper-step = Paso
paper-reveals = Una ✗ aquí muestra por primera vez
paper-seen = Cómo se ve cada uno:
card-stage = Estado de la solicitud
card-stage-reads = Lo que se lee
card-stage-absent = No solicitado
card-stage-waiting = Solicitado, aún no concedido: retenido, o corre el tiempo de espera
card-stage-granted = Concedido
card-condition-number = N.º
card-condition = Condición
card-condition-effect = Efecto
card-condition-watch = Vigilada por, leída en
card-condition-set = Se activa
card-condition-release = Se desactiva
card-condition-at = a
card-condition-volts = V
card-condition-after = tras
card-condition-source = Fuente
card-permits = permite
card-inhibits = inhibe
card-request-how = Se miran en este orden. Una condición se activa cuando su valor está ahí el tiempo que figura en «tras»; desde entonces sigue activa hasta que el valor llega a donde se desactiva. Una que permite debe estar activa, una que inhibe no debe estarlo.
card-request-volts = Los voltios son lo que lee ahí en el pin una pieza buena en un circuito bueno: una lectura a ese lado de la ventana explica por qué se retiene la solicitud.
card-request-wait = Esperar todos los retardos antes de juzgar: una solicitud retenida por un retardo no es una avería.
card-request-states = Estados en este escenario
card-timeline-axis = tiempo, s
card-line-bar = condición activa; solicitud concedida
card-line-frame = condición espera desactivarse; solicitud retenida
card-line-dots = corre un retardo o el tiempo de espera
card-line-thin = condición inactiva; sin solicitud
card-alt-timeline = Cronograma de la solicitud: { $states }
paper-conditions = Condiciones
paper-timeline = Cronograma
card-air-title = { $system }: refrigerante y aire
card-saturation = Saturación
card-saturation-how = Línea de aspiración y de líquido: entre estas temperaturas recalentamiento y subenfriamiento son los indicados, a la presión de la fila.
card-from = de
card-to = a
card-suction-line = Aspiración { $unit }
card-liquid-line = Línea líquido { $unit }
card-absolute = abs.
card-gauge = rel.
card-critical = Punto crítico de { $fluid }: { $critical }; por encima no hay saturación, y la presión no indica temperatura.
card-box-charge = Carga, según la etiqueta bajo el capó
card-box-oil = Aceite, según la misma etiqueta
card-box-oil-charge = Carga de aceite, según la misma etiqueta
card-vent-how = Celdas: de la menor a la mayor temperatura buena en { $unit } en las salidas; * la menor la fija la regulación del evaporador. «Regul.»: la regulación mantiene el evaporador, las salidas la siguen.
card-vent-position = Toma: { $position }
card-vent-held = regul.
card-any-weather = todo tiempo
card-outside-humidity = Aire exterior, humedad relativa
card-outside-air = Exterior
card-box-ambient = Aire exterior
card-box-humidity = Humedad
card-box-outlet = Salidas
card-box-suction = Man. de aspiración
card-box-discharge = Man. de descarga
rule-card-nothing = el sistema `{ $system }` no tiene nada que imprimir en una ficha de este tipo
rule-card-no-modes-help = escribir sus tablas `[mode.…]`, cada una con cada `[control.…]`
rule-card-no-air-help = escribir su `[refrigerant.…]` o su `[vent.…]`
label-card-system = de este sistema

## Test sheet

sheet-title = { $title } · { $vehicle }
sheet-vehicle = Vehículo
sheet-system = Sistema
sheet-registration = Matrícula
sheet-chassis = N.º de bastidor
sheet-built = Fabricado
sheet-box-technician = Técnico
sheet-box-date = Fecha, hora
sheet-box-odometer = Kilometraje
sheet-box-bay = Temp. del taller
sheet-box-humidity = Humedad
sheet-box-soak = Estabilizado
sheet-box-battery-rest = Batería, en reposo
sheet-box-battery-running = Batería, en marcha
sheet-box-reference = Referencia, medida
sheet-box-leads = Puntas en corto
sheet-box-complaint = Queja
sheet-sign-name = Nombre
sheet-sign-signature = Firma
sheet-sign-date = Fecha, hora
sheet-sign-checked = Revisado por
sheet-expect = Esperado
sheet-expect-at = Esperado a { $temperature }
sheet-no-bay = Sin temperatura del taller: leer la ventana en la tabla de la ficha que nombra cada fila.
sheet-legend = Negrita: OK, una pieza dentro de sus datos. Servicio: fuera de la negrita, pero muy poco para explicar una queja.
sheet-legend-guarded = ±: tan cerca de un límite, indeciso con estos instrumentos (U, k = 2); «nunca OK»: no pueden distinguirlo, usar mejores.
sheet-legend-guarded-part = ±: tan cerca de un límite, indeciso con estos instrumentos ({ $part } de U, k = 2); «nunca OK»: no pueden distinguirlo, usar mejores.
sheet-legend-simple = ±: incertidumbre con estos instrumentos (U, k = 2); este taller decide solo por los límites.
sheet-legend-no-rule = ±: incertidumbre con estos instrumentos (U, k = 2); cómo decidir tan cerca de un límite está SIN DATO.
sheet-left-out = No incluido en ±, por estar SIN DATO: { $what }.
sheet-bay = Válido mientras sensor y sonda estén a esa temperatura; si no, ver la tabla de la ficha.
sheet-all-mated = todos los conectores conectados
sheet-sensor-unmated = sensor desconectado
sheet-unit-unmated = unidad de control desconectada, sensor conectado
sheet-see-card = ficha { $card }
sheet-no-card = sin ficha en este conjunto
sheet-outside = no aplicable: fuera de { $low } a { $high }
sheet-service = servicio { $window } { $unit }
sheet-harness-half = lado mazo, pines por sus marcas
sheet-component-half = lado componente, pines por sus marcas
sheet-record-only = solo anotar; nominal { $value }
sheet-unplugged = desconectado { $window }
sheet-doubt-all = ± { $doubt } { $unit }: nunca OK
sheet-doubt-only = ± { $doubt } { $unit } incierto
sheet-doubt = ± { $doubt } { $unit } indeciso
sheet-instrument-value = { $what } { $value }
sheet-no-bay-coil = ver su ficha de etapa: la ventana cambia con la temperatura de la bobina
sheet-of-battery = batería, ahora
sheet-of-reference = referencia, ahora
sheet-ratio = A ÷ B × 100, B: { $whole }
sheet-reading-here = aquí
sheet-field-a = A: { $what }
sheet-field-b = B: { $what }
sheet-difference = A − B, sin signo
sheet-difference-signed = A − B, con signo
sheet-sweep-start = inicio
sheet-sweep-end = fin
sheet-sweep-step = mayor salto
sheet-sweep-rises = sube todo el recorrido, sin cortes
sheet-sweep-falls = baja todo el recorrido, sin cortes
sheet-all-steps = todas, de { $first } a { $last }
sheet-sequence = en este orden
sheet-after = de { $least } a { $most } s tras { $mark }
sheet-within = en { $most } s desde { $mark }
sheet-closed = cerrado
sheet-open = abierto
sheet-closed-at-most = cerrado: como mucho { $most }
sheet-closed-not-given = cerrado: máximo de ohmios SIN DATO
sheet-reached-within = cada una en { $most } s
sheet-wave = y las cuatro de abajo
sheet-wave-period = periodo
sheet-wave-duty = en nivel alto
sheet-wave-high = nivel alto
sheet-wave-low = nivel bajo
sheet-wave-alt = Dos periodos de una línea conmutada, en su nivel alto durante el { $part } % de cada uno
sheet-key-off = contacto OFF
sheet-key-on = contacto ON, motor parado
sheet-engine-running = motor en marcha
sheet-mode = panel «{ $what }»
sheet-set-point = consigna { $what }
sheet-blower = soplador { $what }
sheet-meter-on = medidor en { $what }
sheet-unit-apart = unidad de control desconectada
sheet-component-unmated = desconectado en el componente
sheet-both-ends-unmated = ambos extremos desconectados
sheet-state = Estado: { $what }
sheet-before = Antes: { $what }
sheet-soaked = estabilizado { $time }
sheet-wait = esperar { $time }
sheet-differs = Excepción, { $when }: { $expect }
sheet-means = { $reads }: { $means }
sheet-only-from = no aplicable: solo si fabricado en { $month } o después
sheet-only-to = no aplicable: solo si fabricado hasta { $month }
sheet-box-key = Contacto, motor
sheet-box-mode = Modo del panel, soplador
sheet-corrections = Corregir con un solo trazo y las iniciales al lado; no escribir encima de nada.
sheet-surface-paper = Escribir con tinta.
sheet-surface-wet-erase = Plastificado: escribir con rotulador borrable en húmedo; copiarlo o fotografiarlo antes de borrarlo.
sheet-surface-permanent = Plastificado: escribir con rotulador permanente; la hoja se guarda con el trabajo.
doc-report = Informe final
# unchecked: “orden de trabajo” is Spain's usual term, “orden de servicio” elsewhere
report-box-job = Orden n.º
report-box-sheet-pages = Hoja de pruebas, páginas rellenadas
report-complaint = Queja, tal como la cuenta el conductor
report-cause = Causa encontrada
report-action = Qué se hizo, piezas montadas
report-open = Puntos pendientes, y quién los sigue
report-now = A { $temperature }, de la hoja de pruebas { $sheet }, código { $code }
report-now-none = De la hoja de pruebas { $sheet }, código { $code }; las ventanas según la temperatura del taller están en sus fichas
report-sign-technician = Técnico, firma
report-sign-checked = Revisado por, firma
report-sign-received = Vehículo recibido por, firma
report-sign-date = Fecha, hora
sheet-else-open = Lee su valor sin conectar: sensor no conectado, o un cable abierto.
sheet-else-other-end = Lee el otro extremo (0 V; la referencia donde desconectado está cerca de 0 V): sensor o señal en corto.
sheet-else-ohms = Ohmios: fuera de escala es abierto, cerca de 0 Ω es en corto.
sheet-else-all = Todas las filas mal en el mismo sentido: retorno, masa o referencia comunes; medirlos primero.
sheet-else-simple = Dentro del ± impreso de un límite: decide el límite, pero otro medidor puede leer al otro lado. Indicarlo en observaciones.
sheet-else-no-rule = Dentro del ± impreso de un límite: anotar la lectura; cómo decide ahí este taller está SIN DATO.
sheet-else-undecided-any = Indeciso: dentro del ± impreso de un límite. Repetir con un medidor mejor.
sheet-else-undecided = Indeciso: dentro del ± impreso de un límite. Repetir con el sensor en agua con hielo, o con un termómetro o medidor mejor.

## Cautions

# unchecked: “ALTO” (“STOP” in Spain, “PARE” in some countries)
caution-danger = ALTO · PELIGRO
caution-stop = Alta tensión: { $parts }. Solo personal cualificado: desconectar, bloquear, esperar, verificar ausencia de tensión. Este papel no vale ahí.
caution-warning = ADVERTENCIA
caution-caution = ATENCIÓN
caution-notice = AVISO
caution-law = La ley local, la habilitación y las instrucciones de seguridad del vehículo van primero. El circuito de refrigerante queda cerrado.
caution-law-open = La ley local, la habilitación y las instrucciones de seguridad del vehículo van primero.
caution-law-card = Primero ley local, habilitación, manual del vehículo. Circuito frigorífico cerrado.
caution-law-card-open = Primero ley local, habilitación, manual del vehículo.
caution-dash = El cableado de airbag y pretensores no se mide, ni con óhmetro, ni se desconecta; los cables naranja no se tocan.
caution-dash-card = Airbags, cables naranja: no tocar.
caution-moving = Apartarse de correas, y de ventiladores que arrancan solos.
caution-moving-card = Ventiladores: arrancan solos.
caution-battery = El gas de batería arde: gafas puestas, sin chispas.
caution-battery-card = El gas de batería arde: sin chispas.
caution-refrigerant-card = El circuito frigorífico solo lo abre personal habilitado.
caution-running = Vehículo calzado, freno de estacionamiento puesto, escape extraído.
caution-running-card = Calzar, extraer el escape.
caution-hot = Escape, refrigerante de motor, línea de descarga y transistor del soplador queman la piel.
caution-hot-card = Piezas calientes queman.
caution-probing = Sin lámpara de prueba en referencia, sensor, airbag ni bus; no perforar cables.
caution-probing-card = Sin lámpara de prueba ni pinchar.
caution-unplugging = Contacto OFF para conectar o desconectar.
caution-unplugging-card = Desconectar en OFF.
caution-ohms = Nada de ohmios en un circuito con tensión.
caution-ohms-card = Sin ohmios con tensión.
caution-around = El cableado de airbag y pretensores no se mide, ni con óhmetro, ni se desconecta. Los cables naranja de alta tensión no se tocan. Apartarse de correas, piezas calientes y ventiladores que arrancan solos. Vehículo calzado, escape extraído.
caution-refrigerant = El refrigerante está a presión, congela piel y ojos, desplaza el aire; alguno arde, el R-744 trabaja a presión muy alta. Solo personal habilitado con equipo de recuperación conecta manómetros y abre un circuito.
caution-transducer = El transductor queda roscado: retiene refrigerante a presión. Medir solo en su conector.

## The run

run-demo = Sin --specs y sin carpeta specs/ aquí: se usa el conjunto de demostración incluido en el programa; todos sus valores son inventados.
run-errors = { $errors ->
    [one] 1 error
   *[other] { $errors } errores
}, { $warnings ->
    [one] 1 advertencia
   *[other] { $warnings } advertencias
}: no se ha escrito nada
run-warnings = { $warnings ->
    [one] 1 advertencia
   *[other] { $warnings } advertencias
}
run-no-model = el conjunto no nombra ningún taller: añadir [shop] con `title` y `paper`
run-specs-changed = las especificaciones o plantillas cambiaron mientras se imprimían; imprimir otra vez
run-watch-demo = no hay nada que vigilar: el conjunto de demostración está dentro del programa; `bayleaf new specs` empieza uno propio
run-cannot-watch = no se puede vigilar `{ $path }`: { $reason }
run-watch-waits = a la espera de que vuelva
run-watch-kept = las imágenes quedan como estaban; vigilando
run-watch-drawn = { $drawn } dibujadas, { $same } como antes, { $seconds } s; vigilando
run-cannot-read = no se puede leer `{ $path }`: { $reason }
run-template-exists = `{ $path }` existe y es distinto; --overwrite lo sustituye
run-templates-written = { $count } plantillas en `{ $path }`; para imprimir con ellas: bayleaf print --templates { $path }
run-begun = Un conjunto empieza en `{ $path }`. Escribir los valores propios sobre los ejemplos, luego: bayleaf check --specs { $path }
run-not-empty = `{ $path }` no está vacía; un conjunto nuevo necesita una carpeta propia
run-library = { $said }
run-built-in = incorporada: { $path }
run-template-unread = una plantilla necesaria no se puede leer
run-template-stops = la composición se detiene aquí
run-template-warns = la composición avisa aquí, y un aviso se rechaza
run-template-leads = alcanzado desde aquí
run-template-keeps = { $count ->
    [one] { $ids } no se imprime por ello
   *[other] { $count } documentos no se imprimen por ello: { $ids }
}
run-template-elsewhere = solo con las plantillas incorporadas se imprime: revisar { $files }
run-part-missing = la plantilla no marca nada como `{ $part }`
run-part-unknown = la plantilla marca `{ $part }`, para lo que no hay distancia de lectura
run-illegible = página { $page }: `{ $text }` a { $size } pt es demasiado pequeño: sus mayúsculas miden { $height } mm de alto; para leerlo a { $distance } mm necesita { $needed } pt (15 minutos de arco)
run-illegible-part = página { $page }, { $part }: `{ $text }` a { $size } pt es demasiado pequeño: sus mayúsculas miden { $height } mm de alto; para leerlo a { $distance } mm necesita { $needed } pt (15 minutos de arco)
run-no-templates = `{ $path }` no contiene ninguna plantilla (*.typ)
run-template-without-data = la plantilla `{ $name }` no recibe datos propios
run-no-such-template = ninguna plantilla se llama `{ $name }`; las que reciben datos: { $known }
run-no-such-template-near = ninguna plantilla se llama `{ $name }`; ¿quería decir `{ $near }`?
run-strange-template = `{ $path }` no sustituye a ninguna plantilla incluida; solo se usa donde otra la importa
run-cannot-write = no se puede escribir en `{ $path }`: { $reason }
run-no-worker = no se puede iniciar un proceso auxiliar: { $reason }
run-worker-lost = un proceso auxiliar acabó antes de tiempo; { $missing ->
    [one] 1 documento
   *[other] { $missing } documentos
} sin imprimir
run-cannot-print = `{ $id }` no se imprimió: { $reason }
run-cannot-print-many = { $count } documentos no se imprimieron ({ $ids }): { $reason }
run-no-output = no se puede escribir la salida: { $reason }
run-more-sides = `{ $id }` tiene { $pages } páginas, no { $expected }: su dorso está demasiado lleno; acortar sus pasos `next` o sus fuentes
run-more-failures = … y { $count } más
run-no-such-document = no existe ningún documento, hoja o vehículo `{ $id }`
run-no-such-document-near = no existe ningún documento, hoja o vehículo `{ $id }`; ¿quería decir `{ $near }`?
run-nothing-to-print = el conjunto no tiene ninguna ficha, ni hoja con vehículo
run-no-such-table = nada que tenga tabla se llama `{ $id }`
run-no-such-table-near = nada que tenga tabla se llama `{ $id }`; ¿quería decir `{ $near }`?
run-table-reversed = la tabla va de { $from } a { $to }, que es más frío
run-junction-outside = una unión fría a { $at } queda fuera del termómetro `{ $id }`, de { $low } a { $high }
run-table-outside = { $at } queda fuera del margen de `{ $id }`, de { $low } a { $high }
run-table-step = un paso de { $step } no da ninguna tabla
run-table-no-step = la tabla de `{ $id }` no tiene pasos de temperatura: omitir `--step`
run-table-no-temperatures = la tabla de `{ $id }` no depende de la temperatura: omitir `--from` y `--to`
run-table-not-over-temperature = los valores de `{ $id }` no van según la temperatura: omitir --from, --to y --step
run-table-no-bay = los valores de `{ $id }` no dependen de la temperatura del taller: omitir --at
run-table-no-meter = Voltios sin medidor.
run-table-meter = Voltios con medidor { $input }.
run-bay-outside = { $at } queda fuera del margen del sensor `{ $id }`, de { $low } a { $high }: sus filas se imprimen sin ventana
run-progress = { $done } de { $all } documentos
run-printed = { $documents ->
    [one] 1 documento
   *[other] { $documents } documentos
}{ $pages ->
    [0] { "" }
    [one] { ", " }1 página
   *[other] { ", " }{ $pages } páginas
}, { $seconds } s, en { $out }; { $no-source ->
    [one] 1 valor sin fuente
   *[other] { $no-source } valores sin fuente
}, { $not-given ->
    [one] 1 valor SIN DATO
   *[other] { $not-given } valores SIN DATO
}
run-sheets = { $sheets ->
    [one] 1 pliego para cortar
   *[other] { $sheets } pliegos para cortar
}: { $files ->
    [one] { $first }
   *[other] { $first } a { $last }
}. Imprimir por las dos caras, girar por el borde { $edge }, al 100 %; después, medir con una regla la barra de 100 mm.
run-long-edge = largo
run-short-edge = corto
run-no-bar = `{ $id }`: no hay borde blanco para la barra de 100 mm en la página { $pages }; comprobar la medida en otra página
run-no-bar-on-sheet = `{ $id }`: no hay sitio para la barra de 100 mm en { $sides ->
    [one] 1 cara
   *[other] { $sides } caras
}; comprobar la medida en otro pliego
run-stale-sheets = `{ $path }` es de una ejecución anterior; sus tarjetas pueden estar anticuadas
run-sheet-too-small = { $width } × { $height } mm no caben en un pliego de { $across } × { $along } mm, del que no se imprimen 5 mm en cada borde
run-in-border = página { $page }: algo dibujado llega a { $distance } mm del borde; la plastificación necesita { $quiet } mm
run-in-border-text = página { $page }: `{ $text }` llega a { $distance } mm del borde; la plastificación necesita { $quiet } mm
run-under-hole = página { $page }: el agujero { $place } ({ $diameter } mm, con el centro a { $inset } mm del borde y { $around } mm libres alrededor) atraviesa algo dibujado; allí el papel es blanco en { $free } mm de fondo
run-under-hole-text = página { $page }: el agujero { $place } ({ $diameter } mm, con el centro a { $inset } mm del borde y { $around } mm libres alrededor) atraviesa `{ $text }`; allí el papel es blanco en { $free } mm de fondo
place-top = arriba
place-bottom = abajo
place-left = a la izquierda
place-right = a la derecha
place-top-left = arriba a la izquierda
place-top-right = arriba a la derecha
place-bottom-left = abajo a la izquierda
place-bottom-right = abajo a la derecha
run-list-no-source = Valores sin fuente:
run-list-not-given = Valores SIN DATO:
run-checked = sin errores: { $documents ->
    [one] 1 documento
   *[other] { $documents } documentos
} de { $sensors ->
    [one] 1 sensor
   *[other] { $sensors } sensores
} para { $vehicles ->
    [one] 1 vehículo
   *[other] { $vehicles } vehículos
}; { $no-source ->
    [one] 1 valor sin fuente
   *[other] { $no-source } valores sin fuente
}, { $not-given ->
    [one] 1 valor SIN DATO
   *[other] { $not-given } valores SIN DATO
}

## Labels of the templates

paper-applies = válido para
paper-place = lugar
paper-draft = BORRADOR
paper-code = Código
paper-page = página
paper-of = de
paper-check-bar = medir: 100 mm; si no, imprimir al 100 %
paper-printed-sheet = pliego
paper-printed-sheets = Tarjetas en pliegos
paper-front = anverso
paper-back = reverso
paper-cut-to = cortar a
paper-pouch = funda, interior mínimo
paper-uncontrolled = copia no controlada
paper-changed-more = más
paper-sources = Fuentes
paper-sources-at-end = fuentes al final


paper-offset = retorno +
paper-other-unit = otra unidad
paper-switched = conmutada
paper-measuring = Cómo medir
paper-circuit = Circuito
paper-latch = cierre
paper-inputs = Entradas
paper-readings-not-given = Lo que lee una pieza buena está SIN DATO
paper-pressure-volts = p → V
paper-outputs = Salidas
paper-face-not-given = Cara SIN DATO: sin filas
paper-pin = Pin
paper-wire = Cable
paper-function = Función
paper-tested = Prueba en
paper-control-unit = unidad de control
paper-input = entrada
paper-plot-key = grueso: nominal · fino: límites
paper-readings = Si el medidor lee
paper-next = Pasos siguientes
paper-given = Datos de partida
paper-given-what = qué
paper-given-value = valor
paper-source = fuente


paper-at = Las ventanas de abajo son para una temperatura del taller de
paper-unit-pin = unidad
paper-behaves = Si se comporta así
paper-recalibration = Reaprendizaje de los topes
paper-actuator = actuador
paper-serial = N.º de serie
paper-cal-due = Calibrar antes de
paper-number = N.º
paper-measure = Medir
paper-where = Dónde
paper-reading = Lectura
paper-ok = OK
paper-not-ok = no OK
paper-undecided = indeciso
paper-initials = Iniciales
paper-meanings = Si una de estas no es OK
paper-wave-period = periodo
paper-wave-on = nivel alto
paper-evidence = Evidencia, y lo mismo otra vez tras el trabajo
paper-evidence-what = Lectura
paper-evidence-window = Ventana
paper-evidence-before = Antes
paper-evidence-after = Después
paper-windows = Ventanas de la hoja de pruebas
paper-papers = Papeles usados: marcar donde el código de la pared es este; si no, anotarlo en puntos pendientes
paper-else = Qué significa una lectura mala
paper-remarks = Observaciones

## Tables of figures, on a screen

table-own-rule = la regla propia del taller
table-min = mín.
table-nominal = nominal
table-max = máx.
table-figure-block = bloque
table-figure-place = está en
table-figure-printed = impreso
table-figure-unit = unidad
table-figure-value = sin redondear
table-figure-rounding = redondeo
table-figure-note = Cada número calculado para este papel, como está impreso y sin redondear. Lo que dan las especificaciones figura como en ellas: véanse las entradas.
table-plot-logarithmic = { $curve }, logarítmica
table-plot-none = `{ $id }` no tiene curva que dibujar: su tabla no tiene ohmios ni voltios nominales que suban o bajen
table-input = { $label }: { $value }  ({ $key }; { $source })
table-input-of-instrument = { $id }, { $label }: { $value }  ({ $key }; { $source })
table-switched = V, segunda resistencia conectada
table-count = cuentas
table-count-step = { $unit } por cuenta
table-still = { $unit } por corriente propia, aire en calma
table-moving = { $unit } por corriente propia, aire en movimiento
table-looks-broken-below = Por debajo de { $at } la unidad de control puede tomar un sensor bueno por { $looks }: caso más desfavorable de todas las tolerancias (nominal: por debajo de { $nominal }).
table-looks-broken-above = Por encima de { $at } la unidad de control puede tomar un sensor bueno por { $looks }: caso más desfavorable de todas las tolerancias (nominal: por encima de { $nominal }).
table-looks-broken-below-nominal = Por debajo de { $at } la unidad de control toma un sensor nominal por { $looks }; caso más desfavorable SIN DATO o fuera de la curva.
table-looks-broken-above-nominal = Por encima de { $at } la unidad de control toma un sensor nominal por { $looks }; caso más desfavorable SIN DATO o fuera de la curva.
table-open = abierto
table-shorted = en corto
table-beyond-range = Eso queda fuera del margen del sensor.
table-formula-counts = Cuentas: V/Vref × (2ᵇ − 1), redondeado (práctica habitual, sin fuente); K por cuenta según la pendiente de V/Vref.
table-note-counts-unloaded = Las cuentas son sin medidor en el pin.
table-formula-self-heating = Corriente propia: el ΔT con el que V²/R del sensor calentado es δ ΔT, δ la constante de disipación (definición, IEC 60539-1, n.º de memoria).
table-formula-beta = R = R₀ exp[B (1/T − 1/T₀)], T en kelvin: termistor de dos parámetros (práctica habitual; contrastada con ejemplos de fabricantes).
table-formula-steinhart-hart = 1/T = a + b ln R + c (ln R)³, T en kelvin, R en ohmios (Steinhart y Hart, Deep-Sea Research 15, 1968; título de memoria).
table-formula-points = Entre puntos: tramos cúbicos monótonos de Hermite de ln R sobre 1/T, que pasan por cada punto (Fritsch y Carlson, SIAM J. Numer. Anal. 17, 1980, 238; títulos de memoria); pendiente en un punto: media armónica ponderada de las pendientes de ambos lados (Fritsch y Butland, SIAM J. Sci. Stat. Comput. 5, 1984, 300), en un extremo por la fórmula de tres puntos de los dos tramos más cercanos, sujeta al sentido y al triple de la pendiente de su propio tramo (contrastado con filas omitidas de tablas publicadas).
table-formula-tolerance-rated = Límites de R: R (1 ± δR) (R/R₀)^(± δB), las esquinas exactas de las tolerancias de R y B.
table-formula-tolerance-plain = Límites de R: R (1 ± δR) a cualquier temperatura.
table-formula-tolerance-temperature = Límites de R: la curva en T + δT y en T − δT.
table-formula-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ con L = ln(R/R₀), T en kelvin; R₀ es 1 Ω si no se indica resistencia (contrastada con coeficientes publicados).
table-formula-platinum = R = R₀ (1 + A t + B t²), por debajo de 0 °C además + C (t − 100) t³, t en °C; A = 3,9083·10⁻³, B = −5,775·10⁻⁷, C = −4,183·10⁻¹² (IEC 60751).
table-formula-silicon = R = R₀ [1 + a (T − T₀) + b (T − T₀)²] (ecuación cuadrática de los fabricantes para sensores de silicio).
table-formula-tolerance-class = Límites de R: la curva en t + δt y en t − δt, con δt de la clase: AA 0,1 + 0,0017 |t|, A 0,15 + 0,002 |t|, B 0,3 + 0,005 |t|, C 0,6 + 0,01 |t|, en K (IEC 60751).
table-formula-tolerance-columns = Límites de R: las columnas menor y mayor de la tabla de la propia fuente, cada una interpolada por sí misma.
table-formula-pull-up = V = Vref R / (R + Rp), con R el sensor y lo que tiene en serie y en paralelo, Rp la pull-up (leyes de Kirchhoff).
table-formula-pull-down = V = Vref Rp / (R + Rp), con R el sensor y lo que tiene en serie y en paralelo, Rp la pull-down (leyes de Kirchhoff).
table-formula-window = Límites de V: mínimo y máximo sobre todas las combinaciones de los extremos de todas las tolerancias; los límites se redondean hacia dentro.
table-formula-slope = %/K = 100 (dR/dT)/R, de la derivada de la curva.
table-formula-plausible = Plausible: V/Vref sin medidor entre las dos partes de la referencia de los datos; resuelto para la temperatura en que sus límites salen.
table-formula-loaded = Con el medidor, su resistencia de entrada Rm está entre el pin y el retorno: en la fórmula de V, R ∥ Rm ocupa el lugar de R en un circuito pull-up, Rp ∥ Rm el de Rp en uno pull-down.

table-yes = sí
table-no = no
table-modes-title = Modos del panel de { $system }: qué fuerza cada uno
table-stuck-title = Puntos de mando bloqueados de { $system }, y los modos que los descubren
table-mode = modo
table-name = nombre
table-time = en, s
table-forced = forzado
table-in-smallest = en conjunto mínimo
table-free = libre
table-dont-care = indiferente
table-control = punto de mando
table-stuck-at = bloqueado en
table-forced-by = forzado por
table-exposed-by = descubierto por
table-first-exposing = primero del conjunto mínimo
table-modes-smallest = Conjunto mínimo de modos que visita cada valor forzado: { $modes } ({ $count } de { $all }; demostrado, ningún conjunto menor lo hace).
table-modes-small = Un conjunto pequeño de modos que visita cada valor forzado: { $modes } ({ $count } de { $all }). Más de { $most } modos: no se demuestra que sea el mínimo; hacen falta al menos { $least }.
table-modes-nothing = Ningún modo fuerza nada: no hay nada que visitar.
table-modes-alone = Solo { $mode } fuerza: { $values }.
table-modes-never-forced = Ningún modo fuerza: { $values }.
table-modes-hidden = Ningún modo descubre un punto de mando bloqueado en: { $values }.
table-modes-none-hidden = Cada punto de mando bloqueado en cualquiera de sus valores lo descubre algún modo.
table-formula-smallest-set = Conjunto mínimo: los menos modos de los que uno o más fuerzan cada valor forzado de cada punto de mando; se exploran todos los conjuntos hasta { $most } modos, y de varios se toma el primero por el orden de los modos (búsqueda propia).
table-formula-stuck-at = Un punto de mando bloqueado en un valor lo descubre cada modo que fuerza otro valor suyo; libre e indiferente no descubren nada (práctica habitual, sin fuente).
table-panel-end = extremo
table-panel-low = inferior
table-panel-high = superior
table-panel-mark = significa
table-panel-celsius = °C indicado
table-panel-celsius-in-f = eso en °F
table-panel-fahrenheit = °F indicado
table-panel-fahrenheit-in-c = eso en °C
table-panel-difference = °C menos °F, K
table-panel-agrees = coincide
table-panel-conversions = Las dos escalas son conversión una de otra, dentro del redondeo de sus cifras.
table-panel-separate = Las dos escalas no son conversión una de otra: ninguna puede calcularse de la otra.
table-panel-spans = Intervalo: { $celsius } °C en una escala; { $fahrenheit } °F = { $kelvins } K en la otra.
table-panel-one-scale = Una sola escala: la otra no se calcula de ella.
table-formula-scales = t/°C = (t/°F − 32) / 1,8; una diferencia de 1 K son 1,8 °F (definición de las escalas).
table-formula-scales-agree = Las dos lecturas de un extremo coinciden si su diferencia no es más que medio paso de la última cifra mostrada, en °C o °F, el paso que sea mayor.
table-head-ice = desde hielo
table-head-bay = desde taller
table-junction-ice = Unión fría a 0 °C; con --at también para una unión fría a temperatura del taller.
table-junction-at = «Desde taller»: unión fría a { $at }, como con un voltímetro en el taller; «desde hielo»: a 0 °C.
table-formula-thermocouple = E(t) = Σ cᵢ tⁱ, t en °C; para el tipo K por encima de 0 °C además a₀ exp[a₁ (t − a₂)²] (funciones de referencia de la ITS-90: coeficientes de NIST Monograph 175, SRD 60, la tabla del tipo { $type }; idénticos en IEC 60584-1). En este programa: src/physics/thermocouple.rs.
table-formula-junction = Con la unión fría a t₀: E(t) − E(t₀). Las f.e.m. se suman, las temperaturas no.
table-site = Lecturas de manómetro en este lugar: presión del aire { $pressure } de la atmósfera normalizada, ± { $weather } con el tiempo (práctica habitual, sin fuente).
table-note-gauges-by-scale = Recalentamiento por el manómetro de aspiración, subenfriamiento por el de descarga; en reposo por el de aspiración si la lectura está en su escala, si no por el de descarga.
table-note-gauge-scale = { $gauge }: en su escala hasta { $full }.
table-note-gauge-missing = { $gauge } SIN DATO: – donde solo él podría decirlo.
table-no-site = Lecturas de manómetro SIN DATO: no se conoce la altitud del taller, y no se supone el nivel del mar.
table-air-site = A la presión del aire de este lugar, { $pressure } (atmósfera normalizada).
table-no-air-site = Valores SIN DATO: no se conoce la altitud del taller, y no se supone el nivel del mar.
table-absolute = { $unit } abs
table-gauge = { $unit } rel.
table-mark = marca
table-vacuum = vacío
table-suction-min = aspiración mín. { $unit }
table-suction-max = aspiración máx. { $unit }
table-superheat-u = recalentamiento ± { $unit }
table-liquid-min = líquido mín. { $unit }
table-liquid-max = líquido máx. { $unit }
table-subcooling-u = subenfriamiento ± { $unit }
table-at-rest-min = en reposo mín. { $unit }
table-at-rest-max = en reposo máx. { $unit }
table-source-r134a = ecuación auxiliar de CoolProp 8.0.0 según J. Phys. Chem. Ref. Data 23 (1994) 657, de −30 °C a 80 °C
table-source-r1234yf = ecuación auxiliar de CoolProp 8.0.0 con su tercer exponente leído como 2, según Int. J. Thermophys. (2022), de −34 °C a 80 °C
table-source-r744 = ecuación auxiliar de CoolProp 8.0.0 según J. Phys. Chem. Ref. Data 25 (1996) 1509, de −30 °C al punto crítico
table-formula-saturation = Saturación de { $fluid }: p = pc exp[(Tc/T) Σ nᵢ θ^tᵢ], θ = 1 − T/Tc ({ $source }); exacta a ± { $limit } de la presión absoluta.
table-formula-saturation-terms = { $fluid }: Tc = { $temperature } K, pc = { $pressure } kPa; nᵢ (tᵢ): { $terms }.
table-formula-gauge = Relativa = absoluta − presión del aire; presión del aire = 101,325 kPa × (1 − 2,25577 × 10⁻⁵ Z)^5,2559, Z en metros (ASHRAE Handbook Fundamentals 2017, capítulo 1, ecuación 3). Por debajo de cero el manómetro muestra vacío: no es un defecto suyo.
table-formula-suction = Línea de aspiración: temperatura de saturación + recalentamiento; los límites se redondean hacia dentro, y el ± a su lado aún no está descontado.
table-formula-liquid = Línea de líquido: temperatura de saturación − subenfriamiento; los límites se redondean hacia dentro, y el ± a su lado aún no está descontado.
table-formula-at-rest = En reposo, estabilizado: lecturas que prueban la saturación, la banda en torno a ella menos U a cada lado (JCGM 106:2012, banda de guarda w = U). –: ninguna lectura podría, o ninguna en la propia saturación. Muy por debajo, o por encima: remitir a personal habilitado; por encima sugiere gas no condensable (práctica habitual, sin fuente). No dice nada de cuánto líquido hay.
table-formula-superheat-u = ± K de recalentamiento y subenfriamiento, redondeado hacia arriba: k = 2, de manómetro, tiempo y ecuación divididos por dp/dT, y el termómetro, cada uno como límite/√3 (JCGM 100:2008, 5.1.2). –: fuera de la escala del manómetro, o manómetro, termómetro o altitud sin indicar.
table-note-above-critical = Por encima de { $critical }, la temperatura crítica de { $fluid }, no hay saturación: la comprobación en reposo no vale ahí, ni en un taller cercano a ella.
table-intake = toma
table-outside = exterior { $unit }
table-humidity = HR %
table-inlet = entrada { $unit }
table-dew-point = punto de rocío { $unit }
table-water = W { $unit }
table-outlet = salida { $unit }
table-settled = condensado { $unit }
table-dripping = goteo
table-drips = sí
table-stays-dry = no
table-undecided = indeciso
table-fog = niebla
table-held = regulación del evaporador
table-held-least = mín.: regulación del evaporador
table-formula-moist-air = W = 0,621945 pw/(p − pw), h = 1,006 t + W (2501 + 1,86 t) en kJ por kg de aire seco; saturación sobre agua, por debajo de 0,01 °C sobre hielo, según Hyland y Wexler (ASHRAE Handbook Fundamentals 2017, capítulo 1, ecuaciones 5, 6, 20, 22, 30).
table-formula-mixed-air = Entrada: aire exterior y del habitáculo por masa de aire seco, W = x Wext + (1 − x) Whab, h igual.
table-formula-outlet = Salida: h menos el enfriamiento. Seco si así queda menos de { $humidity } de humedad relativa; si no, el agua condensa y el aire sale con { $humidity } (la hipótesis de la especificación).
table-formula-settled = El calor que se lleva el agua condensada se desprecia: en estas filas hasta el { $percent } % del enfriamiento, W c t/q con W condensado, c = 4,186 kJ/(kg K) del agua, t la salida en °C, q el enfriamiento. Con él el aire saldría más frío.
table-formula-outlet-window = Límites de la salida: esquinas de termómetro, higrómetro y enfriamiento, redondeados hacia dentro. SIN DATO (–) si falta alguno de los tres. Marcado «mín.: regulación del evaporador»: la esquina queda por debajo de donde se mantiene el evaporador, y ese es el mínimo. Marcado «regulación del evaporador»: también la salida nominal; no se alcanza y no se da valor.
table-request-title = { $request }, estados en su escenario
table-request-no-scenario = La especificación no tiene escenario.
table-request-incomplete = Un umbral, un retardo o el tiempo de espera está SIN DATO: no se calculan los estados del escenario.
table-from = desde s
table-to = hasta s
table-state = Estado
table-held-back-by = Retenida por
table-request-absent = no solicitada
table-request-inhibited = solicitada, retenida
table-request-delayed = solicitada, corre el tiempo de espera
table-request-permitted = concedida
table-formula-condition = Condición: activa cuando su valor lleva en su umbral o más allá el tiempo del retardo, inactiva cuando lleva en su umbral de desactivación o más allá el retardo de desactivación, entre ambos como estaba; un toque sin duración no cuenta. A 0 s como si el valor hubiera estado siempre ahí, inactiva si está entre ambos (práctica habitual, sin fuente).
table-formula-request = Solicitud: retenida mientras una condición que permite está inactiva o una que inhibe está activa; concedida cuando ha estado presente, sin nada que la retenga, el tiempo de espera sin interrupción (práctica habitual, sin fuente).
table-formula-dripping = Goteo: sí si el punto de rocío de la entrada está por encima de toda temperatura a la que se mantiene el evaporador, no si está por debajo de todas; indeciso entre ambas, o dentro de los límites de los instrumentos, también si el enfriamiento nominal condensaría algo de agua.
table-duty = ciclo %
table-ripple = rizado
table-conduction = corriente
table-continuous = continua
table-discontinuous = cesa
table-meter-across = V medio
table-displacement = cilindrada %
table-step = velocidad
table-bypass = relé
table-across-motor = V motor
table-at-battery = { $what } a { $battery }
table-heat = W serie
table-to-ground = V conmutado a masa
table-of-limit = % del límite
table-note-coil = Ω: contacto OFF, desconectado, puntas restadas. A: siempre conectado, sin caída en el interruptor.
table-note-battery = Batería de { $low } a { $high }.
table-note-nominal-battery = Nominal: batería { $nominal }.
table-note-isolation = Bobina a carcasa: { $least } o más.
table-note-solenoid-nominal = Nominal: batería { $battery }, bobina a { $at }.
table-note-solenoid-limits = Límites: batería de { $low } a { $high }, bobina de { $cold } a { $hot }.
table-note-ceiling = Con { $battery } ningún ciclo da más que (Vb − Vs)/R, con el menor Vs de { $drop }: { $most } con una bobina buena caliente de { $least }, { $fewest } con una de { $greatest }.
table-note-less-displacement = Más corriente significa menos cilindrada.
table-note-more-displacement = Más corriente significa más cilindrada.
table-note-no-timing = Inductancia o frecuencia SIN DATO: sin rizado; la media vale si la corriente no cesa nunca entre pulsos, y es mayor si cesa.
table-note-averaging = V medio: en la bobina, con la bobina nominal; ciclo × batería solo con onda cuadrada limpia.
table-note-hottest = Con { $battery } y cables nominales el transistor se calienta más al { $percent } % de la batería, { $volts } V en el motor: no más de { $watts } W. Peligro de quemadura.
table-note-hottest-step = Con { $battery } las resistencias se calientan más en la velocidad { $step }: { $watts } W, todo nominal. Peligro de quemadura.
table-note-no-wiring = Cableado SIN DATO: voltios y calor sin la parte de los cables, que solo los reduce.
table-note-low-side = Medir en el motor. A masa, el borne del lado de alimentación lee la batería en todas las velocidades, también con el motor parado; el borne del lado conmutado lee la batería menos los voltios del motor.
table-note-high-side = Medir en el motor. Si pierde su masa, ambos bornes leen lo mismo a masa, y el motor no gira.
table-note-wire-listed = Máx.: lo mayor que admite la norma de cables. Nominal: cobre macizo.
table-note-wire-gauge = Nominal: cobre macizo de este calibre; un cable de hilos tiene unos pocos por ciento más. Máx. SIN DATO: la norma de cables no conoce números de calibre.
table-note-wire-theory = Teórico: cobre macizo de la sección nominal; un cable real tiene de 3 a 15 % más. Máx. SIN DATO: sección o clase no son de la norma de cables.
table-note-wire-drop = Solo hay caída mientras pasa la corriente.
table-note-wire-metre = Un metro a 20 °C: { $nominal } nominal.
table-note-wire-metre-greatest = Un metro a 20 °C: { $nominal } nominal, como mucho { $greatest }.
table-note-wire-limit = % del límite: V máx. como parte del límite de { $limit }.
table-note-wire-limit-nominal = % del límite: V nominal como parte del límite de { $limit }, pues no se conoce V máx.
table-formula-copper = R = R₁ (1 + α (t − 20 °C)) / (1 + α (t₁ − 20 °C)), α = 0,00393 /K a 20 °C (IEC 60028). Límites: los extremos de la tolerancia de R₁.
table-formula-ceiling = I (columna A) = Vb/R: mínimo con la menor batería y la mayor R, máximo con la mayor batería y la menor R (ley de Ohm).
table-formula-switched = L dI/dt = v − R I, resuelta en un periodo estable: v = Vb − Vs conectado, −Vf desconectado, ninguna cuando ya no hay corriente; la columna A es la media de I, nunca menor que 0 A; rizado por las exponenciales de L/R (contrastada con una simulación en el tiempo).
table-formula-continuous = I (columna A) = (D (Vb − Vs) − (1 − D) Vf)/R, la media mientras la corriente no cesa nunca, no menor que 0 A; D ciclo, Vs caída en el interruptor, Vf caída del diodo.
table-formula-mean-window = Límites de la corriente media: mínimo y máximo sobre todas las combinaciones de los extremos de batería, caídas y R; inductancia y frecuencia según los datos.
table-formula-averaging = V medio = R × corriente media: una inductancia no toma tensión media.
table-formula-displacement = Cilindrada: rectas entre los puntos de la especificación; más allá solo que no es mayor (≤) o no es menor (≥) que en el último.
table-formula-step = V motor = velocidad × batería, medida en el motor. Límites de Vm/Vb: la tolerancia de la velocidad, con cualquier batería.
table-formula-resistors = V motor de Vb − Vm = R I(Vm), con R la resistencia de la velocidad y los cables (ley de tensiones de Kirchhoff). Límites de Vm/Vb: mínimo y máximo sobre ambos extremos de la batería y de la resistencia; motor y cables nominales.
table-formula-motor = I (columna A) = I₀ (Vm/V₀)ⁿ con I₀ a V₀ (un modelo; n cercano a 1,7 para una turbina de soplador es práctica habitual, sin fuente).
table-formula-heat = W serie = (Vb − Vm − Rw I) I, con Rw los cables; máximo donde (n + 1) Vm + 2 n Rw I = n Vb (derivada cero).
table-formula-heat-resistors = W serie = (Vb − Vm − Rw I) I, con Rw los cables: el calor de la resistencia de la velocidad.
table-formula-bypass = Relé: Vb menos la caída del relé y la de los cables.
table-formula-wire-nominal = Ω nominal = n l ρ/S (1 + α (t − 20 °C)), ρ = 1/58 Ω mm²/m, α = 0,00393 /K (IEC 60028); n conductores de longitud l y sección S.
table-formula-wire-gauge = S = π d²/4, d = 0,127 mm × 92^((36 − calibre)/39) (ASTM B258; fórmula de memoria, contrastada con una tabla impresa).
table-formula-wire-greatest = Ω máx. = lo mismo con la mayor resistencia a 20 °C de IEC 60228 (cobre desnudo, como lo citan los fabricantes de cable; clases 5 y 6 desde 10 mm² de memoria).
table-formula-wire-drop = V = I × Ω, con I la corriente de los datos (ley de Ohm).

## Faults and judgements, on a screen

fault-open = circuito abierto en el sensor o su conector
fault-open-wire = cable abierto
fault-short-to-return = sensor en corto
fault-short-to-ground = señal en corto a masa
fault-short-to-reference = señal en corto a referencia
fault-short-to-battery = señal en corto a batería
fault-series = resistencia alta en los cables
fault-leak = derivación entre los dos cables del sensor
fault-leak-to-battery = derivación de batería a señal
fault-lifted-return = retorno por encima de masa
fault-shifted-resistance = resistencia del sensor desviada, el mismo % a cualquier temperatura
fault-shifted-slope = pendiente del sensor (valor B) desviada
fault-other-part = otra pieza: { $title }, { $id }
fault-wrong-resistor = resistencia de la unidad de control desviada
fault-unit-still-mated = ohmios tomados con todo aún conectado: desconectar y repetir
fault-wiper-open = cursor o cable de señal abierto
fault-track-open = pista rota
fault-track-open-to-return = pista rota, cursor–retorno
fault-track-open-to-reference = pista rota, cursor–referencia
fault-reference-lost = referencia abierta
fault-return-lost = retorno abierto
fault-signal-to-return = señal en corto a retorno
fault-contact-resistance = mal contacto del cursor
fault-slipped = cursor deslizado, de la pista
fault-winding-open = bobinado abierto
fault-coil-shorted = bobina en corto
fault-shorted-turns = espiras en corto
fault-other-coil = otra bobina
fault-other-temperature = bobina a otra temperatura
fault-signal-open = señal abierta
fault-offset = salida desviada
fault-absolute-part = pieza absoluta en lugar de relativa
fault-gauge-part = pieza relativa en lugar de absoluta
fault-light-open = sensor, o un cable suyo, abierto
fault-light-shorted = sensor en corto
fault-light-covered = sensor tapado
faults-fault = avería
faults-size = tamaño
faults-believed = unidad interpreta { $unit }
faults-separable = distinguible de bueno
faults-separable-by = por
faults-alike = lee como número
faults-yes = sí
faults-no = no
faults-open-line = OL
faults-at-unit = A { $at }, en el conector de la unidad de control: voltios conectado, contacto ON; ohmios con la unidad desconectada, contacto OFF, tras comprobar 0 V.
faults-at-sensor = A { $at }, en el conector del sensor: voltios conectado, contacto ON; ohmios del sensor solo, desconectado, contacto OFF, tras comprobar 0 V.
faults-at-feedback = En el conector de la unidad de control. V: de señal a retorno, conectado, contacto ON. Ohmios entre los cables, unidad desconectada, contacto OFF, tras comprobar 0 V: señ señal, ret retorno, ref referencia.
faults-at-coil = A { $at }, la temperatura propia del bobinado. Ω: a través de los cables a la bobina, etapa desconectada, contacto OFF, tras comprobar 0 V. V: en la bobina en su propio conector, conectado, a plena carga. Lo que añaden las puntas del medidor está en ±.
faults-at-transducer = V: de señal a retorno en el conector de la unidad de control, conectado, contacto ON; sin carga de medidor. Sin ohmios: un transductor es electrónico, sus ohmios no dicen nada (práctica habitual, sin fuente).
faults-at-light = V: de señal a retorno en el conector de la unidad de control, conectado, contacto ON. Sin ohmios: los de un diodo dependen del óhmetro (práctica habitual, sin fuente).
faults-no-matter = Su propia temperatura no interviene en estas lecturas: nada de ella está en las especificaciones.
faults-no-instrument = Sin instrumento solo las ventanas de las tolerancias distinguen averías: indicar uno con `--instrument`.
faults-no-nominal-stops = Los topes están indicados como ventanas, sin valores nominales: lo que depende de la posición no tiene lectura nominal (–), ni posición que interprete la unidad.
faults-contacts-too = Sus contactos no están aquí: sus averías figuran debajo de `bayleaf table { $id }`.
faults-no-nominal-battery = Sin voltios ni amperios: `nominal` de la batería está SIN DATO.
faults-no-coil-tolerance = La tolerancia de la bobina está SIN DATO: la mayoría de las averías no se distingue de una buena.
faults-signal-open = Señal abierta: nada en las especificaciones dice dónde queda entonces el pin (–).
faults-beyond-line = Una lectura más allá de la recta no se conoce, pues no se indican límites de la salida (–).
faults-wiper-contact = (señ–ret + señ–ref − ref–ret)/2 es el contacto del cursor, sean cuales sean la tolerancia de la pista y la posición.
faults-no-elevation = Se omite una pieza del otro tipo de presión: `elevation` del taller está SIN DATO.
faults-good = Bueno: { $reading }.
faults-good-at = Bueno a { $position }, { $test }: { $reading }.
faults-unplugged = Sensor desconectado, en el lado mazo de su conector, contacto ON: { $reading }. Cualquier otra cosa es cable o unidad de control.
faults-substitute = { $resistor } en lugar del sensor: { $reading }; la unidad interpreta entonces { $simulates }. Si es así, cables y unidad están bien. Medir antes la resistencia.
faults-reading = { $nominal }, límites { $range }
faults-reading-doubt = { $nominal }, límites { $range }, ± { $doubt } (k = 2)
faults-ohms = Ω
faults-ohms-to-return = Ω señ–ret
faults-ohms-to-reference = Ω señ–ref
faults-ohms-end-to-end = Ω ref–ret
faults-volts = V
faults-volts-min = V mín.
faults-volts-max = V máx.
faults-amperes = A
faults-position = a %
faults-pressure = a { $unit }
faults-believed-position = unidad interpreta %
faults-believed-pressure = unidad interpreta { $unit }
faults-believed-light = unidad interpreta W/m²
faults-no-ohms = Sin ohmios: aquí no se pueden calcular.
faults-no-volts = Sin voltios: resistencia o referencia del circuito SIN DATO.
faults-no-battery = Se omiten las averías a tensión de batería: `battery` del sistema `{ $system }` está SIN DATO.
faults-formula-reading = Lecturas: las fórmulas de arriba con una sola cosa mal. En el sensor: abierto, en corto, resistencia o pendiente desviada, otra pieza. En los cables entre unidad y sensor: abierto, corto, derivación, resistencia alta. Ohmios en la unidad: sensor, serie y cables; el medidor de la línea está en paralelo en los voltios (leyes de Kirchhoff; contrastado con un simulador de circuitos).
faults-formula-believed = Unidad interpreta: la temperatura que corresponde a su propia lectura, como si nada fuera mal; vacío si ninguna temperatura de la curva la da.
faults-formula-separable = Distinguible de bueno: las ventanas de bueno y averiado, con todas las tolerancias y la incertidumbre de la lectura, no se tocan (JCGM 100, k = 2).
faults-formula-position = Unidad interpreta: (V/Vref − r₀)/(r₁ − r₀) entre los topes nominales, sin el medidor; por debajo de 0 o por encima de 100 está más allá de un tope (práctica habitual, sin fuente).
faults-formula-coil = A = Vb/R con la batería nominal; V en la bobina = Vb R/(R + serie); las espiras en corto restan la misma parte de los ohmios (ley de Ohm).
faults-formula-pressure = Unidad interpreta: la presión de la misma recta, por lejos que quede; una unidad de control que conoce sus límites lo toma en cambio por una avería (práctica habitual, sin fuente).
faults-formula-sizes = Tamaños: los que encuentra un taller (práctica habitual, sin fuente).
judge-instruments = Instrumentos: { $meter }; { $thermometer }
judge-instruments-of = los de { $id }
judge-none = ninguno
run-no-sensor = ningún sensor se llama `{ $id }`
run-no-sensor-near = ningún sensor se llama `{ $id }`; ¿quería decir `{ $near }`?
run-no-faults = nada que tenga lista de averías se llama `{ $id }`
run-no-faults-near = nada que tenga lista de averías se llama `{ $id }`; ¿quería decir `{ $near }`?
run-faults-no-temperature = lo que lee `{ $id }` depende de su temperatura: indicarla, por ejemplo `--at "31 °C"`
run-faults-place = `--place` es para sensores: `{ $id }` tiene un solo lugar
run-faults-position = `--position` es para actuadores con potenciómetro de posición, y `{ $id }` no lo es
run-faults-pressure = `--pressure` es para transductores de presión, y `{ $id }` no lo es
run-faults-pressure-outside = { $at } queda más allá de la recta de `{ $id }`, de { $low } a { $high }, y no se indican límites de la salida
run-faults-not-given = no se pueden calcular las averías de `{ $id }`: está SIN DATO: { $what }
run-faults-contacts = `{ $id }` tiene contactos y no potenciómetro de posición: sus averías figuran debajo de `bayleaf table { $id }`
run-faults-no-coil = `{ $id }` es un soplador: no tiene bobina cuyas averías listar
run-no-instrument = ningún multímetro ni termómetro se llama `{ $id }`
run-no-instrument-near = ningún multímetro ni termómetro se llama `{ $id }`; ¿quería decir `{ $near }`?
judge-circuit = circuito (resistencia o referencia)
judge-tolerance = tolerancia
judge-circuit-tolerance = tolerancia de un resistor, de la referencia o de la entrada del medidor
judge-good = sensor bueno
judge-reading = Lee { $value }, { $test }, sensor a { $at }.
judge-volts-at-unit = voltios en el conector de la unidad de control, conectado, contacto ON
judge-volts-at-sensor = voltios en el conector del sensor, conectado, contacto ON
judge-volts-unplugged = voltios en el conector del sensor, lado mazo (contacto OFF, desconectar el sensor, contacto ON)
judge-ohms-at-sensor = ohmios en el sensor, desconectado (contacto OFF; antes comprobar 0 V)
judge-ohms-at-unit = ohmios en el conector de la unidad de control, lado mazo, sensor conectado (contacto OFF, desconectar la unidad; antes comprobar 0 V)
judge-pass = CONFORME: dentro de sus límites.
judge-fail = NO CONFORME: fuera de sus límites.
judge-undecided = INDECISO: demasiado cerca de un límite para estos instrumentos.
judge-window = Límites de un sensor bueno en un circuito bueno: de { $low } a { $high } { $unit }.
judge-guarded = Una lectura ahí es fiable a ± { $doubt } { $unit } (k = 2): de { $low } a { $high } { $unit } es conforme.{ $risk }
judge-simple = Una lectura ahí es fiable a ± { $doubt } { $unit } (k = 2); el taller decide en los propios límites.{ $risk }
judge-no-reading-passes = Una lectura ahí es fiable a ± { $doubt } { $unit } (k = 2): con estos instrumentos ninguna lectura puede ser conforme aquí.
judge-no-doubt = Hasta dónde es fiable una lectura está SIN DATO: falta la exactitud del medidor.
judge-not-compared = Sin comparar, por estar SIN DATO su tolerancia: { $parts }.
judge-risk = { " " }Riesgo de que el veredicto sea erróneo: { $risk }.
judge-left-out = No incluido en ±, por estar SIN DATO: { $what }.
judge-source-thermometer = termómetro
judge-source-soak = estabilización
judge-source-leads = puntas
judge-source-meter = medidor
judge-service = Límite de servicio ± { $limit }: de { $low } a { $high } { $unit }; { $verdict }.
judge-service-pass = dentro: el sensor no explica una queja
judge-service-fail = fuera: esto explica una queja
judge-service-undecided = indeciso
judge-believed = La unidad de control interpreta { $at }.
judge-believes-nothing = No hay temperatura que la unidad de control pueda interpretar de esto.
judge-causes = Averías únicas que explican la lectura:
judge-no-cause = Ninguna avería única de la lista explica la lectura: mirar otra vez, o sospechar de dos a la vez.
judge-any-size = de cualquier tamaño
judge-up-to = hasta { $high }
judge-from = { $low } o más
judge-between = de { $low } a { $high }
judge-or-none = , o ninguna
judge-expected = { "  " }{ $range }: { $who }
judge-next = Siguiente: { $test }, a { $at }; distingue { $pairs } de { $of } parejas de sospechosos.
judge-next-reads = Ahí los sospechosos leen:
judge-next-pass = Siguiente: nada que reparar. Una avería intermitente pasa aquí por conforme: registrar mínimo y máximo mientras se mueven, calientan y mojan los cables.
judge-next-one-suspect = Siguiente: un solo sospechoso: confirmarlo con una segunda prueba (una resistencia conocida en lugar del sensor, o agua con hielo) antes de sustituir nada.
judge-next-none-separates = Siguiente: ninguna medida sola distingue a estos sospechosos; pieza por pieza: sustituir el sensor por una resistencia de los mismos ohmios, luego medir los cables de extremo a extremo.
judge-next-nothing-explains = Siguiente: repetir la lectura; comprobar medidor, escala, lugar y la temperatura del sensor.
judge-steps = Los pasos propios del responsable técnico:
judge-remedy-soak = Se decidiría ({ $verdict }) dejando que sensor y termómetro se estabilicen a { $limit } uno del otro.
judge-remedy-thermometer = Se decidiría ({ $verdict }) con un termómetro exacto a { $limit }.
judge-remedy-temperature = Se decidiría ({ $verdict }) repitiéndola a { $at }.
judge-remedy-at-sensor = Se decidiría midiendo ohmios en el sensor, desconectado: ahí { $verdict }, si el propio sensor es como parece desde aquí.
judge-remedy-at-unit = Se decidiría midiendo voltios en la unidad de control, conectado: ahí { $verdict }, si todo está bien entre los dos.
judge-remedy-meter = Se decidiría ({ $verdict }) con un medidor con el { $part } % del error de este.
judge-no-remedy = Ningún instrumento, temperatura o lugar mejor lo decide por sí solo: cambiar dos a la vez, o tomarla por una pieza en el límite.
judge-would-pass = conforme
judge-would-fail = no conforme
judge-pair-series = Dos averías, sensor y cables: sensor desviado { $shift } (de { $shift-low } a { $shift-high } %), en la línea { $sizes }: { $reason }.
judge-pair-leak = Dos averías, sensor y derivación: sensor desviado { $shift } (de { $shift-low } a { $shift-high } %), en paralelo { $sizes }: { $reason }.
judge-pair-impossible = menos que nada
judge-reasonable = razonable
judge-not-reasonable = no razonable
judge-pairs-none = Ninguna de las parejas es razonable.
judge-pairs-one = La otra pareja queda descartada: no hace falta una tercera temperatura.
judge-third = Una tercera lectura a { $at } dice cuál: { $series } con resistencia en la línea, { $leak } con derivación.
judge-third-none = Ninguna tercera temperatura dentro del margen del sensor distingue las dos con estos instrumentos.
judge-formula-doubt = ±: termómetro, estabilización, medidor y puntas como límites rectangulares a/√3, combinados según JCGM 100:2008, 5.1.2, k = 2; decidido según JCGM 106:2012 (apartados de memoria).
judge-formula-risk = Riesgo: la parte de una distribución normal en torno a la lectura, con la incertidumbre típica U/2, que queda al otro lado de los límites (JCGM 106:2012, apartado de memoria).
judge-formula-next = Siguiente: la primera medida por orden de esfuerzo (práctica habitual, sin fuente) que distingue la mitad de parejas que la mejor; cada sospechoso en el centro de sus tamaños, o en el peor si bastaría ninguno; intervalos sobre todas las tolerancias, redondeados hacia fuera.
judge-formula-pair = Dos averías: x R(T₁) + s = R₁ y x R(T₂) + s = R₂, o 1/(x R) + 1/L = 1/R₁ y así; razonable es un sensor desviado no más de 30 % (práctica habitual, sin fuente). La lista de averías únicas es solo de la primera lectura.
judge-formula-cause = Tamaños: una avería explica una lectura si alguna pieza buena en algún circuito bueno con esta avería la daría, dentro de ±.
run-judge-no-rule = el taller no tiene regla para decidir; escribir `decision = "guarded"` o `decision = "simple"` en `[shop]`
run-judge-ohms-unplugged = los ohmios se leen en el sensor o en la unidad de control; en un mazo desconectado no queda nada que leer
run-judge-not-given = no se puede juzgar una lectura de `{ $id }`: está SIN DATO: { $what }
run-judge-no-number = esta lectura no se puede juzgar: no es un número que muestre un medidor
run-judge-second-unit = ambas lecturas deben ser voltios, o ambas ohmios
run-judge-second-outside = ningún sensor da una de estas lecturas: juntas no dicen nada
run-judge-second-too-near = las dos lecturas no difieren más que su incertidumbre: tomar la segunda más lejos de la primera temperatura
## Fits

fit-empty = el archivo no tiene línea que nombre las unidades
fit-head = `{ $head }` no nombra columnas de puntos
fit-columns-help = empezar con una línea como `°C,kΩ`, `temperature °F;resistance Ω` o `°C,Ω,Ω,Ω` (mín., nominal, máx.); las unidades son °C, °F o K, y Ω o kΩ
fit-cells = { $found ->
    [one] una fila de 1 celda
   *[other] una fila de { $found } celdas
} donde la primera línea tiene { $wanted }
fit-cells-help = escribir los números con punto decimal, y sin separadores entre millares
fit-rises = la resistencia sube de { $cold } °C a { $hot } °C
fit-rises-help = guardar los puntos como curva con model = "table"; platino y silicio tienen modelos propios
fit-few-points = Sin ajuste: hacen falta al menos { $needed } puntos.
fit-not-physical = Sin ajuste: una temperatura o una resistencia no es de ningún sensor.
fit-not-falling = Sin ajuste: la resistencia no baja de fila en fila.
fit-no-thermistor = Sin ajuste: los mejores coeficientes no son de ningún termistor en estas temperaturas.
fit-points = { $points ->
    [one] 1 punto.
   *[other] { $points } puntos.
}
fit-minimised = Mínimos cuadrados de los residuos de 1/T en ln R, todos los puntos con igual peso. Los residuos son fórmula menos tabla.
fit-no-suspect = Ninguna fila parece mal tecleada.
fit-suspect-line = ¿Mal tecleada? { $what }: { $near }; { $help }. Los ajustes incluyen esta fila.
fit-suspect-head = parece mal tecleada
fit-suspect = sí
fit-residuals = Residuos, fórmula menos tabla
fit-misses = se aparta de los puntos { $rms-k } K o { $rms-percent } % (media cuadrática), como mucho { $largest-k } K o { $largest-percent } %
fit-exact = Tantos coeficientes como puntos: no queda residuo, lo que no dice nada de lo bien que la fórmula conviene a la pieza.
fit-spec-note = ajustado a { $points } puntos; indicar su fuente
table-position = posición
table-travel = recorrido %
table-contacts = contactos
table-formula-travel = V/Vref a un porcentaje del recorrido entre los topes, uniforme: r₀ + recorrido × (r₁ − r₀); a la inversa: recorrido = (V/Vref − r₀)/(r₁ − r₀) (práctica habitual, sin fuente). Límites: ambos topes en un extremo de sus ventanas.
table-formula-travel-loaded = V/Vref = (u + s/Rref)/(1 + s/Rref + s/Rgnd), s = Rcontact + S u (1 − u): S es toda la pista con ambos extremos, u la parte desde su extremo inferior al cursor, Rcontact el contacto del cursor, Rref o Rgnd la carga del cursor a referencia o masa, infinita si no la hay (leyes de Kirchhoff; contrastada con un simulador de circuitos). Las V/Vref de los topes se convierten de vuelta en u, y u avanza uniforme con el recorrido entre ellos. Límites: cada esquina de topes, pista, carga y contacto.
table-formula-volts = V = Vref × V/Vref; límites con la tolerancia de la referencia, redondeados hacia dentro.
table-formula-contacts = 1: contacto cerrado, en el orden { $names }.
table-formula-contacts-stuck = «Nunca cierra» y «nunca abre»: el código de cada posición con esa sola cifra fija en 0, o 1, y la posición que tiene el código resultante; – si ninguna lo tiene.
table-formula-ladder = V/Vref = R/(R + Rp), R de pin a masa según la dejan los contactos cerrados, Rp la pull-up (leyes de Kirchhoff; contrastada con un simulador de circuitos). Límites: todas las resistencias en un extremo, la pull-up en el otro, contactos cerrados de 0 Ω a su máximo.
table-formula-ladder-series = Los contactos, de izquierda a derecha en la columna, se cuentan desde 0: el contacto 0 va del pin a masa, el contacto k desde detrás de las primeras k resistencias de la cadena; R es la cadena hasta el contacto cerrado más cercano al pin, y sin ninguno cerrado toda la cadena y su final, o abierto.
table-formula-ladder-parallel = Los contactos, de izquierda a derecha en la columna, se cuentan desde 0: cada uno va por su propia resistencia de pin a masa; 1/R es la suma de los cerrados.
table-formula-dirty = Contacto sucio: la resistencia k (m − g)/(o − m) en serie con él que mueve la lectura nominal de g, como está, a m, el mínimo de la ventana superior siguiente; o es la lectura con el contacto abierto, k la resistencia de todo lo que está en serie con él (leyes de Kirchhoff, todo lo demás nominal).
table-formula-light-pull-up = V = Vref − I R, no menor que 0 V: más luz, menos voltios (ley de tensiones de Kirchhoff); I = fotocorriente × irradiancia/irradiancia nominal (fotodiodo lineal, práctica habitual, sin fuente). Límites: cada esquina, con la corriente de oscuridad de nada a su máximo.
table-formula-light-load = V = I R, no mayor que Vref: más luz, más voltios (ley de Ohm); I = fotocorriente × irradiancia/irradiancia nominal (fotodiodo lineal, práctica habitual, sin fuente). Límites: cada esquina, con la corriente de oscuridad de nada a su máximo.
table-formula-transducer = V/Vref en la recta por los dos puntos (aritmética). Límites: ± exactitud × intervalo de V/Vref; la tolerancia de la referencia solo está en los voltios. 1 psi = 6,894757 kPa, 1 bar = 100 kPa (definición de las unidades).
table-note-moves = Mueve: { $what }.
table-note-no-position = No informa de posición: no hay lectura suya que calcular.
table-note-ends = 0 %: { $low }. 100 %: { $high }.
table-note-no-nominal = Los topes están indicados como ventanas, sin valores nominales.
table-note-end-to-end = De extremo a extremo, desconectado: de { $low } Ω a { $high } Ω, redondeado hacia dentro.
table-note-illegal = Ninguna posición tiene estos códigos: { $codes }.
table-note-stuck-open = { $contact } nunca cierra (– no es posición): { $misread }.
table-note-stuck-closed = { $contact } nunca abre (– no es posición): { $misread }.
table-note-jump = De { $from } a { $to } conmutan { $count } contactos; puede verse un momento { $codes }.
table-note-gap = Menor hueco entre ventanas vecinas: { $gap } % de la referencia, entre { $lower } y { $upper }.
table-note-overlap = Ninguna lectura distingue { $lower } de { $upper }.
table-note-dirty = Un contacto sucio en «{ $position }»: desde { $ohms } Ω en el contacto { $contact } se lee como «{ $into }».
table-note-saturation = Fin de escala desde { $nominal } W/m², como pronto desde { $earliest } W/m²: más luz no cambia nada.
table-note-saturation-nominal = Fin de escala desde { $nominal } W/m²: más luz no cambia nada.
table-note-least-span = De tapado a iluminado al menos { $span }, con la luz que nombra la fuente del valor; la tabla no dice cuál.
table-note-shop-light = Es normal que no responda a LED o fluorescentes (práctica habitual, sin fuente).
table-note-absolute = Presiones absolutas.
table-note-gauge = Presiones relativas: por encima del aire ambiente.
run-judge-beyond = no se puede juzgar una lectura de `{ $id }` a esta temperatura: su tolerancia va más allá del final de su tabla
run-judge-no-instrument = una decisión con banda de guarda necesita saber hasta dónde son fiables las lecturas, y está SIN DATO: { $what }; indicar instrumentos con --instrument
run-judge-high-voltage = ALTO: más de 60 V CC es alta tensión; aquí queda fuera y es solo para personal cualificado
run-judge-too-many-ohms = ningún medidor de taller muestra tantos ohmios; escribir OL para una línea abierta
run-instrument-twice = `{ $id }` es un segundo instrumento de su tipo; indicar un multímetro y un termómetro
run-judge-no-sensor = `{ $id }` no es un sensor de temperatura, y por ahora solo se juzgan sus lecturas; `bayleaf faults { $id }` lista lo que leen sus averías

## Checklists: what is wrong with them

rule-check-airbag = el paso `{ $step }` está en cableado de airbag
rule-check-airbag-help = quitarlo: el cableado de airbag y pretensores no se mide, ni con óhmetro, ni se desconecta
wanted-no-airbag-step = no se espera ningún trabajo en cableado de airbag
rule-check-costly-first = el paso `{ $step }` ({ $cost }) va antes que `{ $next }` ({ $cheaper })
rule-check-costly-first-help = preguntar primero el más barato, o decir con `because = "…"` por qué no
wanted-cheap-first = se espera primero el paso más barato
label-cheaper = el paso siguiente cuesta menos
rule-check-start = no hay paso `{ $name }` por el que empezar
rule-check-dangling = la salida a `{ $name }` no lleva a ninguna parte
rule-check-ending-unnamed = el final `{ $ending }` no dice qué pieza o mazo
rule-check-ending-unnamed-help = añadir `what = "…"`
wanted-what = se espera `what` a su lado
rule-check-exits = el paso `{ $step }` { $count ->
        [0] no tiene ninguna salida
        [one] tiene una salida
       *[other] tiene { $count } salidas
    }
rule-check-exits-help = dar dos de `yes`, `no`, `undecided`, o los tres, cada uno con el nombre de un paso o un final
wanted-exits = se esperan dos o tres salidas
rule-check-no-vehicle = la lista de control `{ $id }` no es para ningún vehículo: ninguno de los que nombra tiene el sistema `{ $system }`
rule-check-loop = las respuestas llevan en círculo: { $way }
rule-check-loop-help = llevar esta salida a un paso posterior, o a un final
wanted-onward = se espera un camino hacia delante
label-loop-begins = el círculo empieza aquí
rule-check-expects-nothing = el paso `{ $step }` no dice qué responde sí
rule-check-expects-twice = el paso `{ $step }` dice dos veces qué responde sí
wanted-expect = se espera `expect` o bien `test`
rule-check-no-number = el paso `{ $step }` lee { $unit } y no espera ningún número: `{ $expect }`
wanted-limit = se espera una ventana o un límite, por ejemplo `11.5 V or more`
label-unit = aquí se pide una lectura
rule-check-same-name = `{ $name }` es un paso y un final
wanted-other-name-here = se espera otro nombre
label-step-of-name = el paso de este nombre
rule-check-questions = el paso `{ $step }` hace más de una pregunta
rule-check-no-question = el paso `{ $step }` no hace ninguna pregunta
wanted-question = se espera una pregunta con signo de interrogación al final
rule-check-opens = el paso `{ $step }` de un papel eléctrico abre el circuito de refrigerante: `{ $said }`
rule-check-opens-help = acabar en `refer to licensed refrigerant work`, o hacerlo papel de `work = "refrigerant"`
wanted-closed = se espera un circuito que quede cerrado
label-work = un papel eléctrico
rule-check-nowhere = el paso `{ $step }` no dice dónde
rule-check-nowhere-help = añadir `pins = ["C2/7", "C2/14"]`, o `where = "…"`
wanted-where = se espera un lugar
rule-check-no-view = el paso `{ $step }` mide en el conector `{ $connector }`, que no dice cómo se ve
wanted-seen = se espera un conector con `view` y `side`
rule-check-replacing = el paso `{ $step }` sustituye una pieza para probarla: `{ $said }`
rule-check-replacing-help = medir lo que distingue la pieza de sus cables; sustituir corresponde a un final
wanted-measurement = se espera una medida
rule-check-same-exit = toda respuesta al paso `{ $step }` lleva a `{ $to }`
rule-check-same-exit-help = quitar el paso, o llevar una respuesta a otra parte
wanted-other-place = se espera otro lugar
label-first-exit = como aquí
rule-check-unreachable = ninguna respuesta lleva al paso `{ $name }`
wanted-reached-step = se espera una salida o `start` que lleve aquí
rule-check-unreached-ending = ninguna respuesta lleva al final `{ $name }`
wanted-reached-ending = se espera una salida que lleve aquí
label-start = empieza aquí
rule-check-deep = la lista de control `{ $id }` tiene { $found } casillas de fondo
rule-check-wide = la lista de control `{ $id }` tiene { $found } casillas de ancho
rule-check-split-help = dividirla en dos, la primera con final en la segunda
wanted-map-fits = se esperan como mucho { $most } en la página de su mapa

check-cost-look = mirar
check-cost-measure = medir
check-cost-unplug = desconectar
check-cost-dismantle = desmontar
## Importing a table

import-how = De { $file }: { $rows ->
    [one] una fila
   *[other] { $rows } filas
}, celdas separadas por { $separator }, { $decimal }.
import-semicolon = punto y coma
import-tab = tabuladores
import-bar = barras
import-comma = comas
import-decimal-point = punto decimal
import-decimal-comma = coma decimal
import-title = Sobre los encabezados: { $title }
import-column = Columna { $number } "{ $head }": { $used }, { $unit }
import-temperature = temperatura
import-low = resistencia mínima
import-nominal = resistencia nominal
import-high = resistencia máxima
import-left-out = omitida
import-empty = vacía
import-skipped = { $lines ->
    [one] Una línea no contiene ningún punto y se omitió.
   *[other] { $lines } líneas no contienen ningún punto y se omitieron.
}
import-no-cells = el archivo no tiene columnas
import-cells-help = las celdas se separan con punto y coma, tabuladores, barras o comas, una fila por línea
import-no-rows = ninguna línea contiene dos números
import-rows-help = una fila es una temperatura y su resistencia; unas comillas sin cerrar ocultan todas las líneas siguientes
import-no-temperature = ninguna columna se reconoce como temperatura
import-temperature-help = poner su unidad en el encabezado, por ejemplo `t (°C)`, o darla con --temperature
import-no-resistance = las columnas no son una resistencia, ni mínima, nominal y máxima
import-resistance-help = encabezados como `R (kΩ)`, o `min kΩ`, `nom kΩ`, `max kΩ`; dar con --resistance una unidad que falte en el archivo, quitar otras columnas de ohmios
import-two-units = resistencias en { $one } y en { $two }
import-unit-of-curve = las resistencias de una curva están en Ω o kΩ, estas están en { $unit }
import-units-help = ponerlas todas en una sola unidad, Ω o kΩ, y una sola escala de temperatura
import-either = `{ $cell }` puede ser millares o decimales
import-either-help = decir cuál con --decimal comma o --decimal point
import-mixed = `{ $cell }` tiene coma decimal, otros números punto decimal
import-mixed-help = ponerlos todos de una forma, o decir cuál con --decimal
import-no-point = esta línea no tiene temperatura con su resistencia
import-no-number = `{ $cell }` no es un número legible
import-number-help = los millares se separan con el otro signo, con espacios o con apóstrofos, de tres en tres
import-other-unit = `{ $cell }` no está en { $unit } como su columna
label-left-out = omitido
label-decimal-comma = una coma decimal
label-decimal-point = un punto decimal
wanted-cells = se esperan celdas de números
wanted-temperature-column = se espera una columna en °C, °F o K
wanted-resistance-columns = se espera una columna en Ω o kΩ, o tres
wanted-one-unit = se espera la misma unidad en cada fila
wanted-curve-unit = se espera Ω o kΩ
wanted-decimal-told = puede ser cualquiera de los dos
wanted-plain-number = se espera un número

## Checklists and symptom indexes on paper

doc-checklist = Lista de control
doc-symptoms = Guía de síntomas
fact-expect = esperado
fact-step-time = tiempo
fact-pins = pines
fact-first-tests = primeras pruebas
check-title = { $title } · { $system }
check-only = solo { $vehicles }
check-intro = { $steps ->
        [one] Un paso
       *[other] { $steps } pasos
    }, { $longest } por el camino más largo. Empezar en el paso 1 y seguirlo con el dedo. Hacer lo que dice, anotar la lectura, marcar una respuesta, ir a donde señala. Una letra en negro es un final: el trabajo está hecho o se entrega ahí. Valen dos respuestas, o la lectura se mueve: eso es indeciso; si no hay casilla para indeciso, preguntar antes de seguir.
check-box-vehicle = Vehículo
check-box-reached = Final alcanzado
check-card = ficha { $card }
# A mated plug is probed from its wires, but drawn from its face.
check-mirrored = { $view }; reflejado en cables
check-cost = { $cost } · { $time } [{ $mark }]
check-do = hacer
check-where = dónde
check-pins = pines
check-state = estado
check-expect = espera
check-at = { $window } a { $temperature }
check-figures = valores
check-yes = sí
check-no = no
check-undecided = indeciso
check-undecided-short = ?
check-go = ir a { $mark }
check-go-end = final { $mark }
check-start = empezar aquí
check-from = desde { $steps }
check-ending-part = pieza
check-ending-harness = mazo
check-ending-unit = unidad de control
# unchecked: “frigorista” is Spain's; elsewhere “técnico en refrigeración”
check-ending-refer = remitir a personal frigorista habilitado
check-ending-refer-short = remitir
check-ending-no-fault = sin avería
check-map = Mapa
check-map-key = Las casillas blancas son pasos, las letras negras son finales. ? es indeciso. La línea gruesa es el camino que más tarda.
check-longest = Camino más largo: { $way }, { $time }
check-index-title = Síntomas · { $system }
check-index-intro = Buscar la queja como la expresa el conductor. Si hay una lista de control, tomarla; aquí figuran sus primeros pasos mientras las respuestas sean buenas. Si no la hay, probar en este orden, primero lo más barato.
check-no-checklist = sin lista
check-at-most = máx. { $time }

paper-symptom = queja
paper-endings = Finales
paper-tick = final
paper-stop = ALTO
paper-because = motivo
paper-complaint = Queja
paper-checklist = Lista
paper-first-tests = Primeras pruebas, en este orden
paper-cards = Fichas

# Proof sheets

# unchecked: “hoja justificativa” for the sheet that shows where each printed figure comes from
doc-proof = Hoja justificativa
proof-title = Justificación: { $title }
proof-of = De la ficha { $card } «{ $title }», de contenido con huella { $fingerprint }. No justifica una ficha con otra huella.
proof-counted = { $computed } números de la ficha son calculados; abajo figura cada uno con el valor sin redondear ({ $digits } cifras). { $given } son exactos, o están como en las especificaciones o en textos fijos. Límites hacia dentro: el inferior hacia arriba, el superior hacia abajo.
proof-nothing = Ningún número de esta ficha es calculado.
proof-own = propia
proof-nearest = próximo
proof-up = arriba
proof-down = abajo
proof-part-key-figures = Valores en letra grande
proof-part-table = Tabla principal
proof-part-readings = Qué significa una lectura
proof-part-faults = Averías
proof-part-example = Ejemplo de cálculo
proof-part-drawings = Dibujos
proof-part-given = Datos de partida
proof-part-next = Qué hacer después
proof-part-drops = Caídas
proof-part-pins = Pines
proof-part-fluids = Refrigerante
proof-part-vents = Aire en las salidas
proof-part-measuring = Cómo medir
proof-part-signature = Averías según temperatura
proof-part-motion = Movimiento
proof-part-positions = Posiciones
proof-part-conditions = Condiciones
proof-part-timeline = Estados en el tiempo
proof-part-notes = Notas
proof-part-coil = Bobina
proof-part-modes = Modos
proof-part-run = Serie más corta
proof-part-tests = Pruebas
proof-part-instruments = Instrumentos
proof-part-questions = Preguntas
paper-formulas = Fórmulas, con sus fuentes
paper-proof-inputs = Valores de las especificaciones en que se apoyan las cifras
paper-key = clave de la especificación
paper-printed = impreso
paper-unrounded = sin redondear
paper-rounded = hacia
paper-exact = Números exactos tal como se imprimen
paper-as-given = Números que figuran como se indicaron
paper-signed = Comprobado con las fuentes, responsable técnico
paper-signed-name = nombre
paper-signed-date = fecha
paper-signed-signature = firma

# Index of all documents

doc-index = Índice de documentos
index-title = Todos los documentos: { $shop }
index-applies = todos los sistemas y vehículos del conjunto
index-intro = Un papel del taller solo está vigente si su código es el que figura aquí. Revisión y huella son las impresas en cada página.
index-id = id
index-kind = tipo
index-name = título
index-system = sistema
index-page-count = páginas
index-issue = revisión, huella
index-not-given = SIN DATO
index-no-source = sin fuente
index-uncounted = –
index-total = { $documents ->
    [one] 1 documento
   *[other] { $documents } documentos
}
index-pages = { $pages ->
    [one] 1 página
   *[other] { $pages } páginas
}
index-pages-uncounted = las páginas se cuentan al imprimir todo
index-lacking = { $not-given } valores SIN DATO y { $no-source } sin fuente en todo el conjunto, cada uno contado una vez por muchos papeles que lo muestren

spec-unknown-size = `{ $key }`: ningún formato de papel se llama `{ $found }`
doc-strip-card = Ficha de tabla
card-rests-on = Valores, fuentes, circuito y fallos: ficha { $card }.
run-past-edge = página { $page }: `{ $text }` se sale de la página
run-text-on-text = página { $page }: `{ $text }` tapa `{ $other }`
run-too-many-sides = necesita { $pages } páginas y puede tener { $sides } como máximo
rule-size-not-offered = { $kind }: no existe en `{ $size }`
run-size-not-offered = { $kind }: no existe en `{ $size }`; formatos posibles: { $sizes }
run-fits = { $reason }; cabría: { $fits }
run-fits-nothing = { $reason }; ningún otro formato ni paso mayor cabe
run-fits-step = paso de { $step }
run-fits-two-sides = dos caras

## Lo que lleva dentro un PDF emitido

enclosed-figures = Valores de { $id } como están impresos, y qué los decidió
enclosed-specs = Especificaciones de las que salió este papel
enclosed-huge = mayor de { $most } MiB: ningún papel emitido lo es
enclosed-unread = no se puede leer: { $reason }
enclosed-no-pdf = no es un archivo PDF
enclosed-damaged = dañado: lo que lleva dentro no se puede leer
enclosed-foreign = PDF de otro programa: no lleva valores de una emisión
enclosed-draft = un borrador: solo un papel emitido lleva sus especificaciones y valores
enclosed-newer = su registro tiene la forma { $format }, esta versión conoce { $known }: usar una versión más nueva
enclosed-findings = las reglas de hoy encuentran errores en sus especificaciones, el primero: { $first }
enclosed-no-document = de sus especificaciones no sale ningún { $id }
enclosed-paper = { $id } r{ $revision } del { $date } por { $by }, hecho con { $tool }
enclosed-same = { $tool } calcula los mismos valores a partir de sus especificaciones
enclosed-differ = { $tool } calcula otros valores a partir de sus especificaciones: { $figures ->
    [one] un texto
   *[other] { $figures } textos
}
enclosed-figure = { $place }: impreso { $printed }, hoy { $today }
enclosed-digits = en { $digits } de la última cifra
enclosed-wording = { $texts ->
    [one] un texto sin valores dice
   *[other] { $texts } textos sin valores dicen
} otra cosa: palabras, no valores
enclosed-refused = { $path }: { $why }

# El registro.
register-newer = este registro tiene el formato { $format }: lo escribió un bayleaf más nuevo
register-newer-help = usar esa versión o una más nueva; no se ha leído ni cambiado nada del archivo
wanted-register-format = se esperaba un formato hasta { $known }
register-no-number = `{ $key }` es { $written }
register-no-date = `{ $key }` no es una fecha
register-no-id = `{ $id }` no es el identificador de ningún documento
wanted-document-id = se esperaba el identificador de una ficha, o dos identificadores con un punto entre ellos, como CUR-SENSORS.AMB-11
register-no-pull-list = `{ $number }` no es el número de ninguna lista de retirada
wanted-pull-list = se esperaba un día y un número, como 2026-11-28/1
wanted-date = se esperaba un día, como 2026-11-28
register-conflict = una fusión dejó este registro sin resolver
register-conflict-help = conservar las entradas de ambos lados y borrar las líneas con marcas; lo que quede dos veces se señala
wanted-register-entries = se esperaban entradas, sin marcas de una fusión
register-date-back = { $id } se emitió antes que la revisión anterior
label-register-before = la revisión anterior
register-withdrawn-twice = { $id } está retirado dos veces
register-issued-twice = { $id } tiene dos revisiones { $revision }
register-twice-help = lo escribieron dos personas: averiguar cuál de los dos papeles se usa, borrar la entrada del otro y emitir de nuevo si ambos cuelgan en algún sitio
register-gap = { $id } tiene una revisión { $number }, pero no la anterior
register-gap-help = se borró una entrada o se cambió su número: recuperarla del control de versiones
wanted-revision = se esperaba la revisión { $number }
register-not-issued = { $id } no tiene revisión { $revision }
wanted-revision-to = se esperaba de 1 a { $newest }
wanted-issued-id = se esperaba el identificador de un documento emitido
register-date-before = esto es anterior a aquello a lo que sigue
wanted-not-before = se esperaba { $date } o más tarde

## Las órdenes del registro

status-new = nuevo
status-changed = cambiado
status-gone = ya no está en el conjunto, por retirar
status-layout = solo presentación: dice lo mismo y se ve de otro modo
status-withdrawn = retirado
status-same = como se emitió
status-count = { $state }: { $count }
status-lost = su última emisión no está en la carpeta de papeles emitidos: no se puede decir qué valores cambiaron
status-moved = { $place }: { $old } → { $new }
status-held = lo tiene: { $holder } (r{ $revision })
status-vehicles = { $count ->
    [one] Un vehículo tiene
   *[other] { $count } vehículos tienen
} hojas con valores antiguos:
issue-nothing = Nada pendiente: todos los papeles están como se emitieron.
issue-none = no se emitió nada
issue-gone = { $id } ya no está en el conjunto: retirarlo
issue-same-name = { $id } y { $other }, emitido antes, serían un mismo archivo en algunos discos: elija otro identificador
issue-done = { $count ->
    [one] Un papel emitido
   *[other] { $count } papeles emitidos
}, anotado en { $path }
issue-dry = { $count ->
    [one] Se emitiría un papel
   *[other] Se emitirían { $count } papeles
}; no se escribió nada
withdraw-none = no se retiró nada
withdraw-again = { $id } está retirado desde el { $date }
issue-line = descolgar { $id } r{ $revision }: { $place }
register-no-document = no se emitió nada con el identificador { $id }
register-no-document-near = no se emitió nada con el identificador { $id }; ¿quería decir { $near }?
holders-added = ahora lo tiene: { $copy }
holders-again = ya está en el registro: { $copy }
holders-moved = trasladado: { $copy }, ahora { $to }
holders-back = descolgado: { $copy }
holders-nothing-back = nadie tiene tal copia
holders-several = { $holder } tiene varias copias de { $id }: indicar cuál con --place
holders-none = { $holder } no tiene ninguna copia de { $id }
holders-none-near = { $holder } no tiene ninguna copia de { $id }; ¿quería decir { $near }?
holders-withdrawn = { $id } está retirado: ninguna copia debería colgar en ningún sitio
holders-old = caducado, vale r{ $revision }
holders-of-withdrawn = retirado
holders-since = { $copy }, desde el { $date }
holders-nobody = Nadie tiene copias.
verdict-current = { $id } r{ $revision } del { $date } por { $by } es el válido
verdict-superseded = { $id } r{ $revision } del { $date } por { $by } está sustituido por r{ $newest } desde el { $since }, por { $who }: { $why }
verdict-withdrawn = { $id } r{ $revision } del { $date } por { $by } está retirado desde el { $since }, por { $who }: { $why }
verdict-other = no es { $id } r{ $revision } del { $date }, que tiene el código { $code }: mal leído, o no es de este registro
verdict-draft = es un borrador, que nadie emitió
verdict-draft-same = es un borrador, que nadie emitió; dice lo mismo que { $id } r{ $revision } del { $date }
verdict-unknown = { $code } es desconocido: de este registro no se emitió ningún papel con ese código
run-register-demo = el conjunto de demostración incluido no se puede emitir: empezar uno propio con `bayleaf new specs`
run-register-locked = el registro lo usa { $who } (proceso { $process }) desde { $since }, hace { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
}: esperar a que termine y repetir
run-register-locked-unknown = otra persona usa el registro: esperar a que termine y repetir
run-clock-back = el reloj de esta máquina dice { $today }, y el registro tiene una entrada del { $latest }: ajustar el reloj o dar la fecha con --date
run-before-its-time = { $date } es anterior a { $latest }, la última entrada de { $id } en el registro: dar una fecha posterior con --date
run-link-outside = { $path } es un enlace que lleva fuera de la carpeta de salida, a { $to }: sustituirlo por una carpeta, o nombrar esa con --out
run-stray = { $path } quedó de una operación que no llegó a su fin: nunca fue válido, la próxima operación lo quita
run-lost = { $count ->
    [one] Falta un papel emitido
   *[other] Faltan { $count } papeles emitidos
} en { $path } ({ $names }): reponer lo que tenga una copia; de un papel perdido nadie puede decir qué cambió desde entonces
issue-pull = { $copies ->
    [one] Una copia
   *[other] { $copies } copias
} por descolgar: { $path }
withdraw-dry = { $copies ->
    [one] Se descolgaría una copia
   *[other] Se descolgarían { $copies } copias
}; no se escribió nada
