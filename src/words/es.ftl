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
#   mating face             (vista) lado de acoplamiento
#   wire entry              (vista) lado de cables
#   latch                   pestaña
#   mated · unmated         conectado · desconectado
#   back-probe              medir por detrás del conector
#   key on · key off        contacto dado · contacto quitado
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
#   result report           informe de resultados
#   checklist               lista de comprobación
#   symptom index           índice de síntomas
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
