# English. Every fixed word of papers and findings; code names words by id only.
# Gaps are filled with the user's own text or with another word of this table.

## How findings are headed

finding-error = error
finding-warning = warning
finding-help = help
finding-note = note
did-you-mean = did you mean `{ $word }`?

## Dimensions

dimension-temperature = temperature
dimension-temperature-difference = temperature difference
dimension-resistance = resistance
dimension-voltage = voltage
dimension-current = current
dimension-ratio = percentage
dimension-beta = B value
dimension-power = power
dimension-dissipation = dissipation constant
dimension-pressure = pressure
dimension-length = length
dimension-inductance = inductance
dimension-frequency = frequency
dimension-duration = time
dimension-irradiance = irradiance
dimension-specific-enthalpy = specific enthalpy
dimension-wire-size = wire size

## Labels: what was expected, or what stands there

wanted-text = expected text in quotes
wanted-glyph = expected a character that the fonts have
wanted-shorter = expected { $longest } characters or fewer
wanted-value = expected a value with its unit in quotes, such as "2.2 kΩ"
wanted-texts = expected a list of texts, such as ["…", "…"]
wanted-number = expected a number
wanted-table = expected a table
wanted-tables = expected a list of tables
wanted-list = expected a list
wanted-key = expected a key `{ $key }` here
wanted-one-of = expected one of { $words }
wanted-quantity = expected a { $dimension }, such as { $examples }
wanted-decimal-point = expected a decimal point, and spaces between thousands
wanted-nothing-more = expected nothing here
wanted-low-first = expected the lower end first
wanted-interval = expected two ends, such as { $examples }
wanted-zero-or-more = expected zero or more
wanted-smaller-tolerance = expected a tolerance smaller than the value itself
wanted-accuracy = expected a form such as `0.5 % + 2 digits`
wanted-row = expected [temperature, resistance] or [temperature, min, nominal, max], numbers only
wanted-pair = expected two values in quotes, such as ["0.6 A", "5 %"]
wanted-low-voltage = expected { $greatest } V or less
wanted-two-points = expected two points or more
wanted-a-change = expected points of different displacement
wanted-control-point = expected a current of 0 A or more and a displacement of 0 % to 100 %
wanted-stated-direction = expected what is stated as `more_current`
wanted-reached = expected a current that a hot coil reaches
wanted-at-most-whole = expected 100 % or less
wanted-exponent = expected more than 0 and at most { $greatest }
wanted-wire-size = the standard lists { $sizes } mm²
wanted-no-gauge-class = expected no class for a gauge number
wanted-conductors = expected 2 (out and return), or 1 where the body is the return
wanted-wire-drop = expected a drop below this
wanted-position = expected ["name", "101"], ["name", 2] or ["name", "open"]
wanted-toml = expected valid TOML
wanted-utf8 = expected UTF-8 text
wanted-id = expected letters A to Z, digits, `-` and `_`, at most { $longest } of them
wanted-id-table = expected a table with an id, such as [{ $kind }.SOME-ID]
wanted-beta = expected { $least } K to { $greatest } K
wanted-coefficients = expected a, b and c of a thermistor, for ohms and kelvins
wanted-coefficients-4 = expected a, b, c and d of a thermistor, for kelvins
wanted-silicon = expected a from { $least } to { $greatest } (1/K) and b less than a hundredth of it (1/K²)
wanted-no-class = expected a class only on a curve with model "platinum"
wanted-no-b = expected no such key for a sensor whose resistance rises
wanted-real-temperature = expected a temperature that exists
wanted-magnitude = usual is { $least } to { $greatest }
wanted-above-zero = expected more than zero
wanted-two-rows = expected two rows or more
wanted-min-nominal-max = expected min ≤ nominal ≤ max
wanted-same-columns = expected as many columns as in the first row
wanted-falling = expected fewer ohms than in the colder row
wanted-rising = expected more ohms than in the colder row
wanted-near = its neighbours lead to about { $ohms } Ω
wanted-inside = expected { $low } to { $high }
wanted-one-tolerance = expected one way to state the tolerance
wanted-divider = expected { $least } to { $greatest }
wanted-defined = expected a [{ $kind }.…] with this id in the set
wanted-instrument = expected a { $wanted }
wanted-same-connector = expected both pins on one connector
wanted-pin = expected connector and pin, such as `C2/7`
wanted-listed-pin = expected a pin listed in [connector.{ $connector }.pins]
wanted-fewer-rows = expected a step that gives { $most } rows or fewer
wanted-of-system = expected one of system `{ $system }`
wanted-tests = expected a list `test` with one entry or more
wanted-key-off = expected `key off` for this setting of the meter
wanted-unmated = expected `false`: ohms of a part alone
wanted-probes = expected `pins` with `plus` and `minus`
wanted-seen-side = expected `{ $key }` in connector { $connector }
wanted-other-pin = expected another pin than the first
wanted-meter-for = expected a setting that shows this quantity
wanted-limit-unit = expected a unit of { $what }
wanted-no-limit = expected no limits: this quantity has none
wanted-with-curve = expected a sensor's volts or ohms, the ohms of a coil, or the volts of a transducer
wanted-delay = expected one of `after`, `within`
wanted-row-length = expected { $wanted } values, one for each column
wanted-origin-of = only a { $kind } has this figure
wanted-origin-form = expected the form { $words } for it
wanted-origin-quantity = it is another quantity than what is read
wanted-component = expected a kind in front, one of { $words }
wanted-coded-contacts = expected `contacts` or a `ladder` in its actuator
wanted-step = expected a whole number from 1 to { $steps }
wanted-duty = expected parts from 0 % to 100 %
wanted-positive-frequency = expected more than 0 Hz
wanted-month = expected a year and a month, such as "2021-01"
wanted-some-vehicle = no vehicle was built then
wanted-three-tests = expected three tests at most
wanted-test-of-sheet = expected a test that its sheet has
label-its-sheet = its sheet
label-meter-drives = this setting drives a current of its own
label-meter-shows = what the meter is set to
label-quantity = what is read
label-component = what the test is about
label-form = its form
wanted-tolerance = expected a tolerance, such as ± 1 %
wanted-lamination = expected { $least } mm to { $most } mm
wanted-guard-size = expected more than 0 %, up to 300 %
wanted-no-guard = expected only with `decision = "guarded"`
wanted-not-empty = expected one vehicle and one group, or more
wanted-columns = expected units: one temperature, and one resistance or three (min, nominal, max)
wanted-as-many-cells = expected a cell for each column
wanted-falling-points = expected fewer ohms when hotter, as NTC thermistors have
wanted-fitted = expected a vehicle with this system
wanted-every-control = expected every control point of its system in one of the three lists
wanted-forced = expected one control point or more under `forces`
wanted-order = expected an `order`, as the system’s other modes have
wanted-forcing-mode = expected a mode that forces it
wanted-two-values = expected two values or more
wanted-value-word = expected a word that cannot be taken for a cell that forces nothing
wanted-no-separate = expected no `separate` here
wanted-source = expected a source
wanted-unit = expected { $unit }
wanted-flag = expected true or false, without quotes
wanted-other-name = expected a name that every disk can hold
wanted-elevation = expected a key `elevation` here
label-needs-elevation = its figures depend on the air pressure of the site
label-its-fluid = its saturation is known there only
label-takes-cabin-air = takes in cabin air
label-other-step = the other step is here
wanted-release-below = expected less than { $threshold }
wanted-release-above = expected more than { $threshold }
wanted-measured = expected { $quantity }
wanted-after = expected later than { $last }
wanted-trace = expected `trace` in this condition
label-threshold = the threshold
label-watches = what watches it
label-never-together = from here on nothing gets through
label-scenario = the scenario
label-scenario-length = the scenario's length
wanted-inside-reference = expected 0 % to 100 %
wanted-above-low-stop = expected a window that starts above { $low }
wanted-driver-of = expected a load of `{ $system }`
wanted-pins = { $count ->
    [one] expected one pin
   *[other] expected { $count } pins
}
wanted-contacts = expected 1 to { $most } names
wanted-code-length = expected { $count ->
    [one] a code of 1 digit, or 0
   *[other] a code of { $count } digits, or a contact's number below { $count }
}, or "open"
wanted-own-code = expected a code that no other position has
wanted-one-contact = expected one contact to switch between neighbours
wanted-own-window = expected a window of its own
wanted-smaller-resistor = expected at most { $most } for full sun, 1000 W/m²
wanted-clamp = expected at most { $low } to at least { $high }
wanted-line = expected a point above and beyond the lower one
wanted-above = expected more than { $low }
label-first = first given here
label-second = given again here
label-first-use = first used here
label-second-use = used again here
label-first-row = the first row
label-colder-row = the colder row
label-columns = the table has min and max columns
label-other-tolerance = the other one is here
label-its-curve = its curve
label-class = the class is given here
label-its-decision = the decision is given here
label-its-kind = its kind is given here
label-its-system = its system is given here
label-connector = the connector
label-control = the control point
label-values = its values are given here
label-order = this mode has an order
label-first-mode = this mode
label-second-mode = does the same here
label-in-celsius = in °C this would be { $low } to { $high }
label-in-fahrenheit = in °F this would be { $low } to { $high }
label-needs-shop = this paper would carry the shop's name
label-direction = the direction is stated here
label-free-run = the current of the free run
label-wire-system = the wire’s system
label-contact-names = the names of the contacts
label-battery = the battery is given here
label-its-size = its size is given here
label-window = the window
label-low-stop = the low stop
label-low-end = the low end
label-position-before = the position before
label-photocurrent = the photocurrent

## Loading

load-empty-folder = no spec in `{ $path }`
load-empty-folder-help = put `*.toml` files there, or name another folder with `--specs`
load-not-a-folder = `{ $path }` is not a folder
load-unreadable = cannot read this: { $reason }
load-too-large = file of { $size } is too large for a spec; at most { $largest }
load-too-many = more than { $most } files and folders here
load-too-many-help = name the folder that holds the specs with `--specs`
load-too-large-help = move what is not a spec out of the folder, or split the file
load-not-utf8 = byte { $byte } is not UTF-8 text
load-not-utf8-help = save the file as UTF-8 in your editor

## Reading

spec-syntax = not valid TOML: { $reason }
spec-more-syntax = not valid TOML in { $count } more places
spec-unknown-kind = unknown kind of table `{ $word }`
spec-unknown-key = unknown key `{ $word }` in `{ $name }`
rule-card-key = `{ $key }` says nothing on a card with `{ $about }`
wanted-card-about = it belongs to a card with { $words }
spec-missing-one-of = `{ $name }` does not say what it is about
spec-two-keys = `{ $first }` and `{ $second }` cannot stand together: it is about one thing
spec-missing-key = `{ $name }` has no `{ $key }`
spec-loose-key = `{ $word }` stands outside any table
spec-no-id = `{ $word }` in `{ $kind }` has no table of its own
spec-bad-id = `{ $id }` cannot be an id
spec-duplicate = `{ $name }` is given twice
spec-duplicate-help = rename one of the two, or remove it
spec-wrong-type = `{ $key }` is a value of the wrong type: { $found }
spec-empty-text = `{ $key }` is empty
spec-empty-table = `{ $name }` says nothing
spec-empty-list = `{ $key }` is an empty list
spec-quoted-number = `{ $key }` is a number in quotes
wanted-keys = expected one key or more
wanted-entries = expected one entry or more
wanted-bare-number = expected a number without quotes
spec-no-glyph = `{ $key }` holds the character { $code }, which no page can show
spec-long-text = `{ $key }` has { $length } characters
spec-empty-text-help = write it, or leave the key out: what is not given prints NOT GIVEN or is left away, and a key that must be there is asked for
spec-empty-high-voltage-help = name the high-voltage parts in your own words; leave the key out only where the vehicle has none: without it no paper says STOP
spec-unknown-size = `{ $key }`: no size of paper is called `{ $found }`
spec-unknown-word = `{ $key }` cannot be `{ $found }`
spec-bad-row = a row that is not a point of a curve
spec-bad-pair = an entry of `{ $key }` is not a pair
spec-bad-position = a row that is not a position of contacts

## Quantities

misread-not-a-number = `{ $key }` has no number that can be read: `{ $written }`
misread-decimal-comma = `{ $key }` has a comma in a number: `{ $written }`
misread-unit-missing = `{ $key }` has a number without a unit: `{ $written }`
misread-unit-unknown = `{ $key }` has an unknown unit `{ $unit }`
misread-wrong-dimension = `{ $key }` is a { $wanted }, but `{ $unit }` is a unit of { $found }
misread-temperature-for-difference = `{ $key }` is a temperature where a difference is wanted: `{ $written }`
misread-trailing = `{ $key }` has more than a quantity: `{ $rest }`
misread-reversed = `{ $key }` runs from the higher to the lower end: `{ $written }`
misread-not-an-interval = `{ $key }` is not a range: `{ $written }`
misread-negative = `{ $key }` has a tolerance below zero: `{ $written }`
misread-below-zero = `{ $key }` is below zero: `{ $written }`
misread-exponent = `{ $key }` has a number with an exponent: `{ $written }`
wanted-written-out = expected the number written out, in a unit of its size, such as 2.2 kΩ
misread-tolerance-too-large = `{ $key }` has a tolerance as large as the value itself: `{ $written }`
misread-other-unit = `{ $key }` is in another unit: `{ $unit }`
misread-not-an-accuracy = `{ $key }` is not a meter's accuracy: `{ $written }`

## Rules

rule-beta = B value of { $beta } is that of no thermistor
rule-beta-help = check the digits, and that the unit is K
rule-coefficients = these coefficients give { $resistance } at 25 °C
rule-coefficients-not-falling = with these coefficients the resistance does not fall as temperature rises
rule-coefficients-slope = these coefficients give a B value of { $beta } around 25 °C
wanted-slope = a thermistor’s b gives { $least } K to { $greatest } K
rule-coefficients-help = check signs and powers of ten; coefficients for kΩ have to be turned into ones for Ω
rule-coefficients-of-ratio = these coefficients give a sensor of 1 Ω at 25 °C, as those of R divided by R at 25 °C do
rule-coefficients-of-ratio-help = add `resistance = "…"`, the rated resistance that they belong to
rule-silicon = `{ $written }` is no coefficient of a silicon sensor
rule-silicon-help = check signs and powers of ten; coefficients in %/K have to be divided by 100, those in %/K² too
rule-many-ranges = { $count } ranges of one function of a meter
wanted-few-ranges = at most { $most } are kept apart
rule-same-range = two ranges of a meter end at `{ $written }`
wanted-another-range = expected another end than that of the other range
rule-range-digit = the range to `{ $to }` has a digit of `{ $digit }`, finer than a smaller range
wanted-range-digit = expected `{ $digit }` or more, as the smaller range has
rule-bits = no converter has { $written } bits
rule-plausible = no sensor can be read within `{ $written }` of the reference
wanted-plausible-ends = expected two ends from 0 % to 100 %, the second above the first
wanted-bits = expected a whole number from 6 to 24
rule-looks-broken = at { $end }, inside its range, a good sensor leaves { $written } of the reference (from { $limit } on)
wanted-plausible = outside it the unit takes the line for open or shorted
rule-looks-broken-help = check the limits against the control unit's data, or narrow the sensor's range
rule-magnitude = `{ $written }` is of an unusual size
rule-magnitude-impossible = `{ $written }` is of a size that cannot be
rule-magnitude-help = check the unit's prefix against the source
rule-not-positive = `{ $written }` is not above zero
rule-dissipation = `{ $written }` in moving air is less than in still air
rule-dissipation-help = check both against the source, and change them over where they stand the wrong way round
wanted-at-least = expected { $least } or more
label-still-air = still air is given here
rule-absolute-zero = row `{ $row }` lies below absolute zero
rule-few-rows = a curve needs two rows or more; the table has { $count }
rule-limits-order = limits the wrong way round in row `{ $row }`
rule-mixed-columns = row `{ $row }` has other columns than the first row
rule-equal-temperatures = temperature { $temperature } stands in two rows
rule-not-falling = resistance does not fall from row `{ $colder }` to row `{ $hotter }`
rule-not-falling-help = check both rows against the source; this table has fewer ohms when hotter, as NTC thermistors do
rule-not-rising = resistance does not rise from row `{ $colder }` to row `{ $hotter }`
rule-not-rising-help = check both rows against the source; this table has more ohms when hotter, as platinum and silicon do
rule-outlier = row `{ $row }` lies { $percent } % off the curve of its neighbours
rule-outlier-help = check this row against the source for a mistyped digit
rule-outlier-digit = `{ $number }` would fit, with one digit another: check this row against the source
rule-outlier-swapped = `{ $number }` would fit, with two digits in the other order: check this row against the source
rule-outlier-point = `{ $number }` would fit, with the point in another place: check this row against the source
rule-outlier-prefix = `{ $number }` would fit, a thousand times off: check this row's unit against the source
rule-range-beyond-table = `{ $range }` goes beyond the table, which ends at { $low } and { $high }
rule-range-beyond-formula = `{ $range }` goes beyond what this curve is computed for, { $low } to { $high }
rule-range-beyond-class = class { $class } holds from { $low } to { $high }: beyond, the limits are NOT GIVEN
rule-range-beyond-class-help = narrow the range, or give the tolerance as `temperature` if the element’s data sheet has one there
rule-range-beyond-sensor = `{ $range }` goes beyond the sensor's own range, { $low } to { $high }
rule-tolerance-and-columns = the tolerance is given, and the table has columns for it too
rule-tolerance-twice = the tolerance is given in kelvin and in percent
rule-tolerance-and-class = the tolerance is given as a class and in another way
rule-class-of-no-platinum = class `{ $class }` is one of platinum elements, and this curve is not platinum's
rule-class-of-no-platinum-help = write the curve as `{"{"} model = "platinum", resistance = "100 Ω" {"}"}`, or the tolerance as `temperature` or `resistance`
rule-tolerance-no-b = `{ $key }` lets a tolerance grow by a thermistor's B value, and this sensor has none
rule-tolerance-no-b-help = leave it out where the percentage holds at every temperature; else give `temperature`, a platinum element's `class`, or a table with min and max
rule-tolerance-whole = a tolerance of { $written } leaves nothing of the value
rule-tolerance-incomplete = no limits can be computed: the tolerance has no `{ $key }`
rule-tolerance-incomplete-help = write `beta = "0 %"` only if the source says that the same percentage holds at every temperature
rule-divider = resistor of { $resistor } cannot read a sensor of { $sensor } at { $temperature }
rule-no-such = there is no { $kind } `{ $id }`
rule-wrong-instrument = instrument `{ $id }` is not a { $wanted }
rule-pin-twice = pin { $pin } carries a signal and is used twice
rule-pin-twice-systems-help = two systems may have connectors of one name: give each system's connector an id of its own
spec-bad-face-row = this is no row of a face
wanted-face-row = expected a list of pin marks, such as `[1, 2, "", 3]`; `""` is a place without a pin hole
rule-face-no-view = a face is drawn, but not from where it is seen
wanted-view = expected `view` beside it: `mating-face` or `wire-entry`; the two are mirror images
rule-face-empty = the face has no pin
rule-face-rows = the face has { $rows } rows
wanted-face-rows = a card has room for { $most } rows
rule-face-places = a row has { $places } places
wanted-face-places = a card has room for { $most } places in a row
rule-face-mark = the mark `{ $mark }` is too long for its pin
wanted-face-mark = expected at most { $longest } characters
rule-face-lengths = a row of { $places } places under one of { $first }
wanted-face-length = expected as many places as in the first row
rule-face-lengths-help = write `""` for a place without a pin hole
rule-face-twice = pin { $mark } is drawn twice
rule-face-lacks = { $count ->
    [one] pin { $marks } is listed and not drawn
   *[other] pins { $marks } are listed and not drawn
}
wanted-face-pin = expected every listed pin in `rows`
label-face = the face
label-face-row = the first row
rule-airbag-card = connector { $id } is airbag or belt-tensioner wiring: it gets no card
rule-airbag-face = connector { $id } is airbag or belt-tensioner wiring: it is not drawn
wanted-no-airbag = take this away
label-airbag = this says so
rule-airbag-help = nobody probes, ohms or unplugs such wiring without its maker's procedure; if it is none, write `airbag = false`
rule-connector-unused = nothing of the set has a pin on connector { $id }
wanted-used-connector = expected a connector that a sensor, actuator or load has a pin on
rule-view-no-rows = connector { $id } has no face that another view could show
wanted-rows = expected `rows` in its table
rule-two-connectors = one end has pins on two connectors, { $first } and { $second }
rule-pin-form = `{ $pin }` is not a pin
rule-no-such-pin = connector { $connector } has no pin { $pin }
rule-strip-rows = a step of { $step } makes a strip table of { $rows } rows
rule-other-system = { $kind } `{ $id }` is of system `{ $theirs }`, the paper is for `{ $system }`
rule-empty-group = a group of sheet `{ $id }` has no tests
rule-no-such-component = there is no thing `{ $word }` to test
rule-test-no-state = test `{ $id }` does not say its state: a reading without `{ $key }` means nothing
rule-test-powered = test `{ $id }` measures ohms on a powered circuit
rule-test-parallel = test `{ $id }` measures ohms of a part that is mated: other paths lie in parallel
rule-test-no-pins = test `{ $id }` does not say where the probes go: its pins are NOT GIVEN
rule-test-no-pins-help = its component has no pins for this measurement at this place
rule-test-no-view = pin { $pin } is seen on a connector without a `{ $key }`: the mirror image of it is another pin
rule-test-one-pin = both probes are on pin { $pin }
rule-test-meter = test `{ $id }` cannot be read on `{ $meter }`
rule-test-unit = this limit is a { $found }
rule-test-no-curve = test `{ $id }` is about nothing that has a curve to compute
rule-test-no-delay = “{ $event }” comes after another step, but nothing says when
rule-test-two-delays = “{ $event }” has two delays
rule-test-row-length = row `{ $name }` has { $found } values
rule-test-origin = `{ $word }` is no figure of this test
rule-test-no-step = the blower has no step { $step }
rule-test-duty = a part of the time cannot be `{ $written }`
rule-test-frequency = `{ $written }` is no frequency of a switched line
rule-test-month = `{ $written }` is no month
rule-test-no-vehicle = test `{ $id }` is for no vehicle of system `{ $system }`
rule-test-other-system = mode `{ $id }` is of system `{ $theirs }`
rule-test-lacks = the form `{ $form }` lacks what it needs
rule-test-twice = the form `{ $form }` has its limits twice
rule-report-evidence = report `{ $id }` has room for { $most } readings
rule-report-other = sheet `{ $sheet }` has no test `{ $test }`
rule-empty-sheet = sheet `{ $id }` has no vehicles or no tests to print
rule-no-vehicle = sheet `{ $id }` prints nothing: no vehicle has system `{ $system }`
rule-no-limits = `{ $written }` has no tolerance: no volts limits can be computed with it
rule-no-limits-help = write `{ $written } ± …` from its document; ± 0 % only for a value that is exact
rule-mode-twice = mode `{ $id }` names control point `{ $control }` twice
rule-mode-twice-help = a control point is either forced, or free, or don’t care: keep one
rule-mode-other-system = control point `{ $control }` is of system `{ $theirs }`, the mode is of `{ $system }`
rule-mode-silent = mode `{ $id }` does not say what it does with { $controls }
rule-mode-silent-help = write it under `forces` with its value, or into the list `free` or `dont_care`; nothing is taken for granted
rule-mode-value = control point `{ $control }` has no value `{ $value }`
rule-mode-forces-nothing = mode `{ $id }` forces nothing, so it tests nothing
rule-mode-forces-nothing-help = add what it forces according to its source, or leave the mode out
rule-mode-order-twice = two modes have the order { $order }
rule-mode-order-whole = `{ $order }` is no place among modes
wanted-whole = expected a whole number, such as 4
rule-mode-order-missing = mode `{ $id }` has no `order`, but other modes of system `{ $system }` have
rule-mode-same = modes `{ $first }` and `{ $second }` do the same with every control point
rule-mode-same-help = check both against the source; if they really are the same, one row of the table is enough
rule-control-never-forced = no mode of system `{ $system }` forces control point `{ $id }`
rule-control-never-forced-help = add a mode that forces it, or leave the control point out: no mode can show whether it works
rule-control-values = control point `{ $id }` has fewer than two values: nothing can show that it moves
rule-control-value-twice = control point `{ $id }` has the value `{ $value }` twice
rule-control-taken = `{ $value }` cannot be the value of a control point
rule-panel-scales = the scales of panel `{ $id }` are no conversions of each other: the lower ends differ by { $low } K, the upper ends by { $high } K
rule-panel-scales-help = check both against the source. If the panel has two scales of its own, neither may be computed from the other: say so with `separate = {"{"} value = true, source = "…" {"}"}`
rule-panel-not-separate = panel `{ $id }` is called separate, but its scales are conversions of each other: the lower ends differ by { $low } K, the upper ends by { $high } K, no more than rounding
rule-panel-not-separate-help = check both scales against the source, or remove `separate`
rule-panel-separate-source = panel `{ $id }` is called separate, but not where that is known from
rule-panel-separate-source-help = write `separate = {"{"} value = true, source = "…" {"}"}`, or give the panel a `source`
rule-digits-help = check the digits and the unit against the source
rule-no-current-limits = `{ $written }` has no tolerance: no limits of resistance or current can be computed with it
rule-negative = `{ $written }` is below zero
rule-high-voltage = STOP: { $written } is high voltage
rule-high-voltage-help = leave high-voltage parts out of the specs: nothing is computed or printed for them. Only a qualified person works on them: isolate, lock, wait, prove dead
rule-nominal-battery = a nominal battery of { $written } is none that the battery has
rule-control-few = a displacement needs two points or more
rule-control-flat = the displacement is the same at every point
rule-control-point = `{ $point }` is not a point of a compressor
rule-control-same = the current of point `{ $point }` is given twice
rule-control-direction = from point `{ $less }` to `{ $more }` more current does not mean { $direction }
rule-control-direction-help = check the points, then the direction, against the source: both kinds of valve exist
rule-ceiling = { $current } is not always reached: { $battery } drives at most { $most } through a hot coil of { $resistance }
rule-ceiling-help = check the coil's resistance and temperature; where they are right, a current below this is no fault
rule-rated-coil = `{ $written }` is an unusual temperature to rate a coil at
rule-rated-coil-help = `at` is the temperature that `resistance` holds at; how hot the coil gets is `temperature`
rule-copper-range = `{ $written }` goes beyond the temperatures that copper is computed for
rule-duty = a duty of { $written } is more than always on
rule-blower-step = a step of { $written } puts more than the battery across the motor
rule-step-tolerance = a tolerance of { $written } of the battery leaves nothing of a step
rule-drop-whole = a drop of `{ $written }` leaves nothing of the battery
wanted-below = expected less than { $greatest }
rule-blower-order = step `{ $faster }` is not above step `{ $slower }`
label-step-before = the step before
rule-exponent = an exponent of { $written } is that of no blower
rule-gauge-class = { $size } is a gauge number, which has no class
rule-wire-size = { $size } is no size of IEC 60228: no greatest resistance is known
rule-wire-size-help = only the nominal resistance of solid copper is computed, ρ/A with 1/58 Ω mm²/m; a real wire has 3 to 15 % more. Road-vehicle sizes are in ISO 6722 and ISO 19642
rule-conductors = a current cannot pass { $written } conductors one after the other
rule-wire-system = the load `{ $driver }` belongs to the system `{ $system }`
rule-wire-drop = the wire loses { $lost } at { $at }, more than its limit of { $limit }
rule-wire-drop-help = check size, length and current against the source; the limit cannot be met by a good wire
rule-reserved-name = `{ $id }` cannot be a file name on every disk
rule-same-name = `{ $id }` names two documents, or two that differ only in case
rule-lamination = `{ $key }` of { $written } is no size that cards are laminated with
rule-guard-size = a guard band of { $written } of U is of no use
rule-guard-size-help = write `guard = "100 %"` for w = U; for limits without a guard band `decision = "simple"`
rule-guard-alone = a guard band of { $written }, but the decision is not guarded
rule-guard-alone-help = write `decision = "guarded"`, or take the guard band out
rule-no-shop = the set names no shop
rule-no-shop-help = add [shop] with `title` and `paper`
rule-elevation-missing = the shop has no elevation: gauge pressures and figures of air are NOT GIVEN
rule-elevation-help = add `elevation = "… m"` to [shop], its height above sea level
rule-elevation-outside = `{ $written }` is no height that the standard atmosphere covers
rule-elevation-unusual = `{ $written }` is an unusual height for a workshop
rule-elevation-unit-help = check the digits and the unit, `m` or `ft`
rule-beyond-saturation = `{ $range }` goes beyond the saturation equation of { $fluid }
rule-unit-twice = unit `{ $unit }` is given twice
rule-above-critical = `{ $range }` goes above { $critical }, the critical point of { $fluid }: there is no saturation
rule-duty-no-limits = `{ $written }` has no tolerance: no limits of the vent temperature can be computed with it
rule-no-such-air = `{ $written }` is not the temperature of air around a vehicle
rule-no-such-share = `{ $written }` is not a share that can be
rule-cabin-missing = a position takes in cabin air, but there is no `{ $key }`: its figures are NOT GIVEN
rule-cabin-help = add `cabin = "… °C"` and `cabin_humidity = "… %"`
rule-vent-rows = these steps make a table of { $rows } rows
rule-stop-outside = a stop cannot read { $written } of the reference
rule-stop-nominal = { $written } lies outside its own window
rule-stops-reversed = the low stop ({ $low }) reads more than the high one ({ $high })
rule-stops-reversed-help = `low` is the stop with fewer volts, whichever way the door goes: change the two over
rule-stops-overlap = the windows of the stops, { $low } and { $high }, overlap: a reading in both is at no stop
rule-contact-count = { $count ->
    [one] 1 contact
   *[other] { $count } contacts
} on one actuator
rule-contact-pins = { $count ->
    [one] one pin for { $names } contacts
   *[other] { $count } pins for { $names } contacts
}
rule-stall = a motor that takes { $held } when it is held, and { $free } running free
rule-stall-help = a motor that is held takes several times the current of its free run: have the two changed places?
rule-code-length = the code of position `{ $position }` is not for the contacts that are there
rule-code-twice = positions `{ $first }` and `{ $second }` have one code
rule-code-jump = from `{ $from }` to `{ $to }` { $count } contacts switch
rule-code-jump-help = check the codes; if they are right, { $codes } may be seen for a moment on the way
rule-ladder-overlap = no reading tells `{ $first }` ({ $first_window }) from `{ $second }` ({ $second_window })
rule-ladder-overlap-help = check resistors and tolerances against the source; if they are right, the part cannot be judged by volts here
rule-light-saturates = with { $resistor } the reading stands at its end from { $irradiance } on
rule-ratio-outside = an output cannot be { $written } of the reference
rule-clamp-cuts = the output's ends, { $clamp }, cut off a part of the line from { $low } to { $high }
rule-line-reversed = the high end ({ $high }) is not above the low end ({ $low })
rule-line-reversed-help = change `low` and `high` over, or check both against the source
rule-transducer = these values make no transducer: { $reason }
sheet-thermometer = Thermometer
sheet-multimeter = Multimeter
sheet-own-meter = For rows that name it
kind-thermometer = thermometer
kind-multimeter = multimeter
kind-pressure-gauge = pressure gauge
kind-hygrometer = hygrometer
rule-request-release = a condition that is set at { $threshold } and lets go at { $release }, further on the same side
rule-request-release-help = have the two changed places, or should `side` be the other one?
rule-request-no-hysteresis = threshold and release threshold are both { $threshold }: there is no hysteresis
rule-request-no-hysteresis-help = where they meet the request flutters; look up at which value the condition lets go
rule-request-quantity = { $watch } `{ $id }` does not measure { $quantity }
rule-request-quantity-help = name what watches this value, or `reading = "…"` where it is seen as live data only
rule-request-system = `{ $id }` belongs to system `{ $system }`
rule-request-range = { $written } lies outside what its sensor shows
rule-request-range-help = check the unit and the sign against the source, and which sensor watches it
rule-request-never = request `{ $id }` can never be granted: conditions on one value shut each other out
rule-request-never-help = follow the value up and down with the table of conditions: which side is the wrong way round?
rule-trace-order = the times of a trace do not rise at { $written }
rule-requested-time = the request cannot stand from { $written }
rule-no-trace = the scenario does not say what the value of "{ $title }" does
rule-no-trace-help = add `trace = [["0 s", "…"], …]`: one point is enough for a value that stays where it is
kind-sensor = sensor
kind-transducer = transducer

## What a value is

fact-applicability = Fitted to
fact-high-voltage = High voltage
fact-rated-resistance = Rated resistance
fact-rated-temperature = Rated at
fact-beta = B value
fact-coefficient-a = Coefficient a (1/K)
fact-coefficient-b = Coefficient b (1/K)
fact-coefficient-c = Coefficient c (1/K)
fact-coefficient-d = Coefficient d (1/K)
fact-coefficient-b-squared = Coefficient b (1/K²)
fact-coefficients-for = Coefficients are for R divided by
fact-resistance-at-zero = Resistance at 0 °C
fact-table = Table, points
fact-tolerance = Tolerance
fact-tolerance-resistance = Tolerance of R
fact-tolerance-class = Tolerance class (IEC 60751)
fact-tolerance-at = Tolerance of R given at
fact-tolerance-beta = Tolerance of B
fact-circuit = Circuit
fact-pull-up = Pull-up resistor
fact-pull-down = Pull-down resistor
fact-resistor-tolerance = Tolerance of a resistor
fact-reference = Reference
fact-reference-tolerance = Tolerance of reference
fact-series = Series resistor
fact-parallel = Parallel resistor
fact-system-battery = Battery while measuring
fact-switched = Second resistor, switched
fact-reader = Other reader's resistor
fact-reader-reference = Other reader's reference
fact-return-offset = Return above ground
fact-bits = Converter, bits
fact-plausible = Plausible, of the reference
fact-dissipation-still = Dissipation, still air
fact-dissipation-moving = Dissipation, moving air
fact-range = Range
fact-service-limit = Service limit
fact-probe = Probe
fact-test-value = Value of the test
fact-location = Place
fact-own-pins = Pins at its own plug
fact-control-unit-pins = Pins at control unit
fact-component-pins = Pins at sensor
fact-signal-pin = Signal pin
fact-return-pin = Return pin
fact-ground-pin = Ground pin
fact-reference-pin = Reference pin
fact-motor-pin = Pin of the motor
fact-contact-pin = Contact pin
fact-common-pin = Common pin of the contacts
fact-contact-in-pin = Pin of the contact, feed
fact-contact-out-pin = Pin of the contact, load
fact-moves = Moves
fact-track = Track
fact-track-ends = Each end of the track
fact-wiper-contact = Contact of the wiper
fact-wiper-load = Load on the wiper
fact-wiper-load-to = Load on the wiper, to
fact-stop-low = Low stop, V/Vref
fact-stop-high = High stop, V/Vref
fact-stop-nominal = Nominal stop, V/Vref
fact-contact-closed = Closed contact, at most
fact-positions = Positions
fact-ladder-resistor = Resistor of the ladder
fact-ladder-end = Resistor at the end of the ladder
fact-sweep-time = End to end, at most
fact-sweep-step = Largest step, of travel
fact-sweep-dead-band = Dead band, of travel
fact-sweep-hysteresis = Up against down, of travel
fact-free-run-current = Motor current, free run
fact-stall-current = Motor current, held
fact-plain-dc = Motor without electronics
fact-recalibration = Learning the stops again
fact-photocurrent = Photocurrent
fact-photocurrent-at = Photocurrent given at
fact-photocurrent-tolerance = Tolerance of photocurrent
fact-dark-current = Dark current, at most
fact-load-resistor = Load resistor
fact-least-span = Covered against lit, at least
fact-line-low-pressure = Low end, pressure
fact-line-low-ratio = Low end, V/Vref
fact-line-high-pressure = High end, pressure
fact-line-high-ratio = High end, V/Vref
fact-span-accuracy = Accuracy, of the span
fact-clamp = Ends of the output
fact-wire = Wire of the pin
fact-latch = Latch of connector
fact-face = Face of connector
fact-expected = Expected at the pin
fact-sensors-at = Temperature of the sensors
fact-view = View of connector
fact-side = Side of connector
fact-accuracy = accuracy
fact-volts = volts
fact-ohms = ohms
fact-digit = digit
fact-input = Meter input
fact-control-values = Values of the control point
fact-control-observe = How to see the control point
fact-mode-forces = Forced by the mode
fact-mode-time = Time limit of the mode
fact-panel-celsius = Scale in °C
fact-panel-fahrenheit = Scale in °F
fact-panel-low-mark = Lower end means
fact-panel-high-mark = Upper end means
fact-panel-separate = Two separate scales
fact-leads = leads
fact-thermocouple = thermocouple type
fact-soak = soak
fact-decision = Decision rule
fact-guard = Guard band, part of U
fact-elevation = Elevation of the shop
fact-fluid = Refrigerant
fact-superheat = Superheat
fact-subcooling = Subcooling
fact-at-rest = Counts as saturated at rest
fact-low-gauge = Suction gauge
fact-high-gauge = Discharge gauge
fact-thermometer = Thermometer
fact-hygrometer = Hygrometer
fact-accuracy-of-full-scale = accuracy, of full scale
fact-full-scale = full scale
fact-accuracy-of-humidity = accuracy, of relative humidity
fact-duty = Cooling duty, for each kg of dry air
fact-duty-tolerance = Tolerance of the duty
fact-outlet-humidity = Humidity of the air that leaves
fact-ambient = Outside air
fact-humidity = Humidity of the outside air
fact-evaporator = Evaporator held between
fact-cabin = Cabin air
fact-cabin-humidity = Humidity of the cabin air
fact-outside-share = Share of outside air, by mass
fact-battery = Battery
fact-battery-nominal = Battery, nominal
fact-switch-drop = Drop in the switch
fact-diode-drop = Drop of the freewheel diode
fact-frequency = Frequency
fact-inductance = Inductance
fact-duties = Duties
fact-more-current = More current means
fact-displacement = Displacement, points
fact-polarity = Switched on
fact-supply-drop = Supply drop, limit
fact-ground-drop = Ground drop, limit
fact-contact-drop = Contact drop, limit
fact-control-pin = Control pin
fact-feed-pin = Feed pin
fact-coil-temperature = Coil temperature
fact-isolation = Coil to case
fact-motor-current = Motor current
fact-motor-voltage = Motor current given at
fact-motor-exponent = Exponent of the current
fact-blower-control = Control
fact-blower-resistors = Resistors of the steps
fact-blower-steps = Steps, part of battery
fact-step-tolerance = Tolerance of a step, part of battery
fact-bypass-drop = Drop of the bypass relay
fact-blower-wiring = Wiring, out and return
fact-wire-size = Conductor size
fact-wire-class = Conductor class
fact-wire-length = Length
fact-wire-conductors = Conductors in series
fact-wire-current = Current
fact-wire-temperature = Wire temperature
fact-drop-limit = Drop, limit
fact-request-line = Request line
fact-hold = Hold time
fact-reads-absent = Read while absent
fact-reads-waiting = Read while waiting
fact-reads-granted = Read while granted
fact-threshold = Threshold
fact-release = Release threshold
fact-delay = Delay
fact-release-delay = Release delay
fact-is-low-side = low side
fact-is-high-side = high side
fact-is-more-displacement = more displacement
fact-is-less-displacement = less displacement
fact-is-transistor = transistor
fact-is-resistor-pack = resistor pack

## What every document says

doc-sensor-card = Sensor card
doc-wall-card = Wall card
doc-strip-card = Strip card
doc-actuator-card = Actuator card
doc-driver-card = Driver card
doc-test-sheet = Test sheet
doc-revision-none = DRAFT
doc-applicability = { $system }: { $vehicles }
doc-no-source = no source
doc-not-given = NOT GIVEN
doc-quantity-to = to
doc-quantity-digits = digits
doc-units = Ω, V DC, °C; °F = 1.8 × °C + 32
doc-units-metric = Ω, V DC, °C
doc-units-us = Ω, V DC, °F
doc-printed = printed { $date }
doc-issued = issued { $date } by { $by }
doc-changed = Changed since { $revision }, marked ▶▌: { $cells ->
    [one] one value
   *[other] { $cells } values
}.
doc-changed-short = ▶▌ changed since { $revision }: { $cells }
doc-changed-none = Reissued since { $revision }, no value changed.
doc-changed-unknown = Reissued since { $revision }; what changed is not known: compare before use.
doc-changed-title = Changed since { $revision }

## Pull list

doc-pull-list = Pull list
pulled-title = Take down and destroy
pulled-total = { $copies ->
    [one] one copy
   *[other] { $copies } copies
} at { $places ->
    [one] one place
   *[other] { $places } places
}
pulled-intro = Take down each copy, put the new revision in its place, and destroy the old one: cut it through its code. Tick at once. What is not found stays without a tick.
pulled-place = Place
pulled-holder = Holder
pulled-paper = Paper
pulled-revision = Revision
pulled-because = Because of
pulled-taken-down = taken down
pulled-destroyed = destroyed
pulled-not-recorded = not recorded
pulled-withdrawn = { $revision }, withdrawn
pulled-more = and { $values ->
    [one] one more value
   *[other] { $values } more values
}

## Sensor card

card-direction-pull-up = hotter → fewer Ω → fewer V
card-direction-pull-down = hotter → fewer Ω → more V
card-direction-ohms = hotter → fewer Ω
card-direction-rising-pull-up = hotter → more Ω → more V
card-direction-rising-pull-down = hotter → more Ω → fewer V
card-direction-rising-ohms = hotter → more Ω
card-connector = { $id } · { $title }
card-pin-signal = signal
card-pin-return = return
card-pin-ground = ground
card-pin-reference = reference
card-pin-motor-plus = motor +
card-pin-motor-minus = motor −
card-pin-contact = contact
card-pin-common = common
card-pin-control = control
card-pin-feed = feed
card-pin-contact-in = contact in
card-pin-contact-out = contact out
card-view-mating-face = mating-face view
card-view-wire-entry = wire-entry view
card-view-not-given = view NOT GIVEN
card-side-harness = harness side
card-side-component = component side
card-side-not-given = side NOT GIVEN
card-min = min
card-nominal = nominal
card-max = max
card-nominal-value = nominal { $value }
card-ground = ground NOT GIVEN
card-rests-on = Values, sources, circuit and faults: card { $card }.
card-note-window = Worst-case limits, rounded inward.
card-note-switched = The second resistor off.
card-note-ohms = Ω: key off, at the sensor’s own pins.
card-note-volts = V: key on, all mated, { $pins }
card-note-ohm-window = Worst-case limits in Ω, rounded inward.
card-note-beyond = –: beyond the table.
card-note-beyond-class = –: beyond the class’s range.
card-note-no-tolerance = Limits NOT GIVEN: no tolerance.
card-note-no-circuit = Volts NOT GIVEN: no circuit.
card-note-no-volt-limits = Limits in V NOT GIVEN: no tolerance of circuit or meter.
card-note-meter = ({ $input } meter).
card-note-no-meter = (no meter load).
card-plot-resistance = Resistance
card-plot-voltage = Voltage
card-alt-switched = The unit can switch { $value } beside that resistor.
card-alt-reader = Another unit reads the same line through { $value }.
card-alt-offset = The return lies { $value } above the unit’s ground.
card-faults = What faults read
card-fault = fault
card-fault-believed = → { $unit }
card-note-faults-where = Ω: control unit unplugged, key off. V: all mated, key on. → { $unit }: what the control unit then believes; – outside what it takes for a sensor.
card-note-faults-brackets = In brackets: with this fault a part may still read inside a good one’s window.
card-note-faults-unknown = Limits NOT GIVEN: what can be told from a good sensor is not known.
card-note-faults-more = Every fault at any temperature: bayleaf faults { $id }.
card-fault-open = open sensor
card-fault-open-wire = open wire
card-fault-short = sensor shorted
card-fault-to-ground = signal to ground
card-fault-to-reference = signal to reference
card-fault-to-battery = signal to battery
card-fault-series = { $size } in the wires
card-fault-leak = { $size } leak across
card-fault-leak-to-battery = { $size } battery leak
card-fault-lifted-return = return { $size } up
card-fault-resistance = sensor’s Ω { $size }
card-fault-slope = sensor’s slope { $size }
card-fault-resistor = unit’s Ω { $size }
card-fault-mated = Ω, unit still mated
card-fault-part = part of { $part }
card-signature = How wrong the control unit is, by temperature
card-signature-note = Measure cold and hot: a fault shows by where its error grows.
card-signature-ends = Behind each name: error at { $cold } … { $hot }.
card-signature-wires = Faults in the wires
card-signature-parts = Faults in parts
card-alt-signature = { $title }, error from { $cold } to { $hot }: { $lines }
card-alt-plot = { $title } against temperature: from { $first } at { $cold } to { $last } at { $hot }.
card-alt-pull-up = Circuit: the control unit feeds the reference of { $reference } through { $resistor } to signal pin { $signal }; the sensor lies between signal and return pin { $other }.
card-alt-pull-down = Circuit: the sensor lies between reference pin { $other }, { $reference }, and signal pin { $signal }; { $resistor } leads from the signal to ground inside the control unit.
card-example = Worked example at { $temperature }
card-example-scales = { $fahrenheit } °F = ({ $fahrenheit } − 32)/1.8 °C = { $celsius } °C = { $kelvins } K
card-example-beta = R = { $rated } Ω × exp[{ $beta } K × (1/{ $kelvins } K − 1/{ $rated-kelvins } K)] = { $ohms } Ω
card-example-steinhart-hart = 1/T = a + b ln R + c (ln R)³ with T = { $kelvins } K: R = { $ohms } Ω
card-example-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ with L = ln(R/{ $base } Ω) and T = { $kelvins } K: R = { $ohms } Ω
card-example-platinum = R = { $rated } Ω × (1 + 3.9083·10⁻³ t − 5.775·10⁻⁷ t²) with t = { $temperature }: R = { $ohms } Ω
card-example-platinum-cold = R = { $rated } Ω × (1 + 3.9083·10⁻³ t − 5.775·10⁻⁷ t² − 4.183·10⁻¹² (t − 100) t³) with t = { $temperature }: R = { $ohms } Ω
card-example-silicon = R = { $rated } Ω × (1 + a x + b x²) with x = { $temperature } − { $rated-temperature } = { $above } K: R = { $ohms } Ω
card-example-table = { $temperature } °C = { $fahrenheit } °F, on the smooth curve through the rows, ln R against 1/T: R = { $ohms } Ω
card-example-pull-up = V = { $reference } × { $ohms } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-pull-down = V = { $reference } × { $resistor } Ω / ({ $ohms } Ω + { $resistor } Ω) = { $volts } V.
card-example-node = V = ({ $currents }) / ({ $conductances }) = { $volts } V.
card-example-network = With the other resistors { $ohms } Ω;
card-example-meter = With a { $input } meter { $volts } V.
card-example-window = A good part in a good circuit reads { $window } { $unit }.
card-example-fault = A bad contact of { $extra } in the line makes { $volts } V: it looks like { $believed }.
card-hot = hot
card-cold = cold
card-warmer = warmer
card-colder = colder
card-reads-high = too high
card-reads-low = too low
card-reads-near-zero = near 0 V
card-reads-overload = overload
card-reads-zero-ohms = near 0 Ω
card-means-open = open circuit, or unplugged: looks very { $looks }
card-means-short = signal shorted to return or ground: looks very { $looks }
card-means-low-pull-down = series resistance, bad contact, leak to ground; or { $or }
card-means-high-pull-down = leak to reference or supply, wrong part; or { $or }
card-means-short-pull-down = sensor or signal shorted to the reference: looks very { $looks }
card-means-open-pull-down = open, unplugged, no reference, or signal grounded: looks very { $looks }
card-means-short-before-series = signal wire shorted to return or ground
card-means-sensor-short = sensor shorted: looks very { $looks }
card-means-high = series resistance, bad contact, leak to supply, wrong part; or { $or }
card-means-low = leak to return or ground, moisture, wrong part; or { $or }
card-means-ohms-high = resistance in series, bad contact; or truly { $or }
card-means-ohms-low = leakage, moisture, wrong part; or truly { $or }
card-measure-temperature = Hold a thermometer beside the sensor until neither moves any more: that is the row.
card-measure-volts = Volts: everything mated, key on, back-probe { $pins }. Ohms: key off, sensor unplugged, at its own pins.
card-measure-ohms = Ohms: key off, sensor unplugged, at its own pins.
card-measure-window = Between two rows the limits lie between theirs: at { $at } { $window }. Inside: sensor, wires and unit are good here.
card-next-unplug = Out of the window: key off, unplug the sensor, key on. At the harness plug measure { $pins }.
card-next-unplug-between = Out of the window: key off, unplug the sensor, key on. At the harness plug measure between its pins, { $pins }.
card-next-good = Reads { $open }: no break, no short. Key off: ohms at the sensor’s own pins, then at the control unit’s plug, unit unplugged. A few Ω more are the wires, many a bad contact.
card-next-good-between = Reads { $reference }: reference, signal wire and pull-down are whole. Key off: signal pin to ground about { $resistor }, else shorted or open; then the sensor in ohms at its own pins.
card-next-bad = Reads anything else: measure the reference, then both wires end to end with the control unit unplugged.
card-its-two-pins = its two pins
card-next-series = Note: the signal wire includes { $series }; end to end it reads that.
card-next-ohms = Key off, unplug the control unit: measure ohms at the harness side, then at the sensor. The difference is the wires.
doc-connector-card = Connector card
doc-system-card = System card
doc-light-card = Light sensor card
doc-transducer-card = Transducer card
card-direction-light-pull-up = lighter → fewer V
card-direction-light-load = lighter → more V
card-direction-light = circuit NOT GIVEN
card-direction-absolute-up = more pressure → more V; pressures are absolute
card-direction-gauge-up = more pressure → more V; pressures are gauge
card-direction-absolute-down = more pressure → fewer V; pressures are absolute
card-direction-gauge-down = more pressure → fewer V; pressures are gauge
card-direction-absolute = line NOT GIVEN; pressures are absolute
card-direction-gauge = line NOT GIVEN; pressures are gauge
card-part-window = window
card-part-readings = What a good part reads
card-part-wrong = What faults read
card-part-wrong-note = Believed: by the control unit. V: nominal, signal to return at the control unit, mated, key on. –: not known, or no fault there.
card-part-fault = Fault
card-part-unknown = What these read the specs do not say: { $faults }.
card-part-believes = believed { $unit }
card-part-told = seen in V
card-light-dark = dark
card-light-covered = covered with dark cloth
card-light-sun = full sun
card-light-span = dark to lit
card-light-span-of = see the note below
card-alt-light-pull-up = Circuit: the control unit feeds the reference of { $reference } through { $resistor } to the signal pin; the photodiode lies between signal and return.
card-alt-light-load = Circuit: the photodiode lies between the reference of { $reference } and the signal pin; { $resistor } leads from the signal to ground inside the control unit.
card-alt-transducer = Circuit: the control unit feeds the transducer with the reference of { $reference }; the transducer gives a part of it back on the signal pin.
card-next-light-span = Cover it with dark cloth, then light it with sun or a filament lamp: the volts move by { $span } or more.
card-next-light = Cover it with dark cloth, then light it with sun or a filament lamp: the volts must move.
card-next-light-pull-up = They do not move: key off, unplug the sensor, key on. The reference at the harness plug: sensor or plug is bad. No volts: the signal wire is shorted or open.
card-next-light-load = They do not move: measure the reference at the sensor’s plug first. Reference there and no volts in the light: sensor, plug or signal wire; volts in the dark: the signal is shorted to the reference.
card-next-wires = Then the wires end to end, key off, both plugs off: a few ohms; no way to ground or to each other.
card-next-transducer-reference = Reference to return at the transducer’s plug first: without it nothing else is worth measuring.
card-next-transducer-rest = Key on, engine off, at rest long enough to be at one temperature: compare with the saturation pressure on the refrigerant and air card. That needs no gauge.
card-next-transducer-wires = Out of the window, reference good: the wires end to end, key off, both plugs off. Wires good: the transducer, which licensed people change.
card-system-title = { $system }: inputs, control unit, outputs
card-system-no-pins = Pins at the control unit NOT GIVEN
card-system-pin = { $pin } { $role }
card-system-plug = plug { $plug }
card-system-note-lines = Arrows: where the reading or the power goes; two heads: an output that reports back. Shared pins stand at everything that hangs on them.
card-system-note-cards = Each box names the card that tests it; “no card” is a gap in the set.
card-look-view = view
card-look-side = side
card-look-latch = latch
card-look-keys = keys
card-view-mating-face-long = MATING-FACE view: you look into the face that mates
card-view-wire-entry-long = WIRE-ENTRY view: you look at the side where the wires go in
card-side-harness-long = HARNESS side: the half on the wires
card-side-component-long = COMPONENT side: the half on the part
card-latch-of-view = { $latch } (said of the { $view })
card-mirror = In the { $other } left and right change places.
card-mirrored = MIRROR IMAGE of the spec’s { $other }: left and right have changed places.
card-edge-top = top
card-edge-bottom = bottom
card-edge-left = left
card-edge-right = right
card-at-edge = at the { $edge }
card-at-corner = at the { $edge }, { $end } end
card-alt-face = Face of connector { $id }, { $view }. { $rows }
card-alt-face-row = Row { $row } from the left: { $marks }.
card-state-off = key off
card-state-on = key on
card-state-unmated = unmated
card-state-running = running
card-minus-probe = − probe here
card-in-the-dark = { $volts } V dark
card-at-most = ≤ { $volts } V
card-tested-by = card { $card }
card-tested-only-by = see card { $card }
card-tested-by-none = no card
card-shares = { $title } ({ $card })
card-shared = Shared by { $count }: { $things }
card-note-to-ground = Volts: DC, to the return or ground of the same unit. Running: engine on, load switched on.
card-note-sensors-at = Sensors: worst-case windows with every sensor at { $at }.
card-note-sensors-not-given = Sensors: their temperature is NOT GIVEN, so are their windows.
card-note-sensors-beyond = A sensor that is not used at that temperature has no window.
card-note-unmated-unit = Unmated: key off, control unit unplugged; ohms to the sensor’s return.
card-note-unmated-plug = Unmated: sensor unplugged, then key on; volts at the harness.
card-note-unmated-part = Unmated: key off, unplugged; ohms at the sensor’s own pins.
card-note-meter-on = Volts include a { $input } meter.
card-note-meter-none = Volts are without a meter’s load.
card-note-computed = What is computed has its sources on the card named.
card-see-card = see its card
card-note-states-blank = –: not known.
card-act-more-volts = more volts → more % → { $high }
card-act-volts-from = more volts → from { $first } to { $last }
card-act-order = in the order of travel: { $first } → { $last }
card-act-end-to-end = end to end
card-act-free = motor, running free
card-act-held = motor, held
card-act-closed = closed contact
card-act-of-reference = { $parts } % of the reference
card-act-travel = Feedback over the travel
card-act-positions = Readings by position
card-act-codes = Contacts by position
card-act-volts = V: key on, all mated, { $pins }, no meter load. Limits: worst case, rounded inward.
card-act-bent = Between the stops the control unit’s load bends the line: no straight interpolation.
card-act-ladder = Contacts: 1 closed, the first from the left is nearest to the pin.
card-act-contacts = ● closed, ○ open. A contact is closed or open, nothing between.
card-act-illegal = ✗ no position
card-act-illegal-count = Besides these, { $count } codes are no position’s.
card-act-position = position
card-act-what = what
card-act-good = good
card-act-else = if not
card-act-at-most = ≤ { $value }
card-act-motion = How the { $moves } moves { $mark }
card-act-motion-unknown = How it moves
card-act-time = End to end
card-act-time-else = slower: stiff, weak feed. Never: jam, slip
card-act-current = Motor, running free
card-act-current-else = none: wire, motor or driver. More: stiff door
card-act-stall = Motor, held
card-act-stall-else = at a stop, for a moment. In mid-travel: a jam
card-act-fed = Motor fed by hand
card-act-fed-yes = fused leads, unmated
card-act-fed-no = NEVER
card-act-fed-unknown = NEVER: NOT GIVEN
card-act-fed-else = moves both ways, or the motor is bad
card-act-fed-never = battery voltage destroys electronics in it
card-act-step = Largest step
card-act-step-else = larger: worn track or drop-out
card-act-dead-band = Dead band
card-act-dead-band-else = larger: play in the gear, slip
card-act-hysteresis = Up against down
card-act-hysteresis-else = larger: play in gear or linkage
card-act-track = Track, end to end
card-act-track-else = unmated. OL: track broken. Else: wrong part
card-act-contact = Closed contact
card-act-contact-else = unmated. More: dirty, bent or worn
card-act-learning = Judge a reading only once it has come to rest.
card-act-next-both = Out of every window: reference ({ $reference }) and return ({ $return }) at the control unit first; both are shared with other parts.
card-act-next-one = One stop out of its window: an obstruction (short of it), or a shaft or stop that slipped (beyond it). Look at door and linkage by hand.
card-act-next-sweep = Both stops good: record least and greatest volts over a slow sweep both ways. A drop-out is a worn track.
card-act-next-ladder = The reference at every position: signal wire open, or no contact closes. 0 V at every position: signal shorted to ground.
card-act-next-between = Between two windows: run it to both ends. Between them everywhere: a dirty contact (see the table), or another resistor in the line.
card-act-next-dirty = Ohms at its own plug, unmated: each position reads the resistors up to its contact, and no more than the closed contact on top.
card-act-next-code = A code that is no position’s: key off, unmated, ohms of each contact to the common at both ends. Closed at most { $closed }, open OL.
card-act-next-common = All contacts open at every position: the common ({ $common }), or its way to ground.
card-act-next-silent = Stands still: volts at the motor’s own plug while the panel moves it, both ways.
card-act-next-volts = Volts there, no movement: the door by hand, then the motor. No volts: the wires end to end, then the driver.
card-act-believes = unit %
card-act-fault = fault
card-act-by = seen by
card-act-wrong = If something is wrong
card-act-wrong-note = Worst case; unit %: position believed. Seen by: V, or Ω between its wires, unmated.
card-act-wrong-note-windows = Worst case. Seen by: V, or Ω between its wires, unmated.
card-instrument = With { $meter } [{ $mark }].
card-no-instrument = Seen by the windows alone: no instrument is named.
card-act-unseen-faults = By nothing: { $faults }.
card-act-stuck-note = What each position is taken for: – is no position. Positions not named read as they should.
card-act-unseen = none is misread
card-act-contact-name = contact
card-act-never-closes = never closes
card-act-never-opens = never opens
card-act-dirty-ohms = from Ω on
card-act-dirty-into = reads as
card-act-dirty-note = Resistance in a closed contact that makes the position read as the next one. Contact 0 is nearest to the pin.
card-act-as-above = as in the table
card-act-input = input
card-act-driver = driver
card-act-alt-potentiometer = Circuit: reference, signal and return lead from the control unit to a potentiometer in the actuator, two more wires to its motor: { $pins }.
card-act-alt-contacts = Circuit: a wire from each contact to an input of the control unit, the contacts lead to a common wire, two more wires to the motor: { $pins }.
card-act-alt-ladder = Circuit: a signal wire with a pull-up in the control unit leads to resistors and contacts in the actuator, a return wire back, two more wires to the motor: { $pins }.
card-act-alt-motor = Circuit: two wires lead from the control unit to the motor: { $pins }.
card-drv-low-side = low side: the control unit switches the ground of the load
card-drv-high-side = high side: the control unit switches the feed of the load
card-drv-no-side = which side is switched: NOT GIVEN
card-drv-always-on = always on { $current }
card-drv-step = step { $step }
card-drv-relay = highest, by relay
card-drv-of-battery = { $volts } of { $battery }
card-drv-duties = Current against duty
card-drv-coil = Coil over its own temperature
card-drv-steps = Steps: volts across the motor, not to ground
card-drv-parts = % of the battery
card-drv-motor = V motor at
card-drv-ground = V ground
card-drv-at-nominal-low = A, W (heat of the series part) and V ground (switched terminal to ground) at { $battery }; to ground the other terminal reads the battery at every step.
card-drv-at-nominal-high = A, W (heat of the series part) and V ground (switched terminal to ground) at { $battery }.
card-drv-at-nominal = A and W (heat of the series part) at { $battery }.
card-drv-supply = Supply
card-drv-supply-from = battery + to { $pin }
card-drv-supply-of-switch = battery + to the feed of the switch
card-drv-return-of-switch = ground of the switch to battery −
card-drv-switch-row = Switch, closed
card-drv-switch-low-from = { $pin } to the ground of the switch
card-drv-switch-high-from = feed of the switch to { $pin }
card-drv-return = Ground
card-drv-return-from = { $pin } to battery −
card-drv-contact = Contact
card-drv-contact-from = { $in } to { $out }, relay pulled in
card-drv-its-plug = its plug
card-drv-wire = Wire alone
card-drv-wire-loses = { $nominal } V; ≤ { $greatest } V
card-drv-wire-loses-nominal = { $nominal } V
card-drv-wire-of = { $title }: { $size }, { $length }, { $current }
card-drv-drop = drop
card-drv-between = between
card-drv-most = at most
card-drv-drops = Where volts get lost
card-drv-drops-note = Mated, fully on, the load’s current flowing; without it there is no drop.
card-drv-wire-note = Wire alone: at its hottest.
card-drv-no-waveform = No sketch: battery, side, drops or frequency NOT GIVEN.
card-drv-at-pin = Control pin to battery −
card-drv-current = Current of the coil
card-drv-shape = { $hertz } Hz: { $period } from edge to edge. Drawn: { $percent } % duty, { $time } on, battery { $battery }, coil as rated.
card-drv-levels = On { $on }, off { $off } while the current flows.
card-drv-flows-on = Inductance NOT GIVEN: drawn as if the current never stopped.
card-drv-alt-volts = Volts at the control pin over two periods of { $hertz } Hz: { $on } for { $percent } % of each, then { $off }.
card-drv-alt-amperes = Current over the same two periods: it rises to { $most } while on, and falls to { $least } while off.
card-drv-battery = battery
card-drv-only-high = only highest
card-drv-only-high-means = series part or its control open
card-drv-no-high = no highest
card-drv-no-high-means = bypass relay, its contact or its coil
card-drv-dead = no step
card-drv-dead-means = feed, fuse, ground, then the motor
card-drv-runs-on = key off, runs
card-drv-runs-on-means = series part shorted, or relay welded: it empties the battery
card-drv-all-low = all low
card-drv-all-low-means = a drop in feed or ground; a stiff motor
card-drv-low-off = off { $battery }
card-drv-low-off-means = feed, coil and wire are whole
card-drv-low-dead = off 0 V
card-drv-low-dead-means = feed missing, coil or a wire open, or control wire shorted to ground
card-drv-low-on = on near 0 V
card-drv-low-on-means = switch good; current missing: coil open
card-drv-low-never = on { $battery }
card-drv-low-never-means = no command, switch, or its wire open
card-drv-high-off = off 0 V
card-drv-high-off-means = as it should be
card-drv-high-stuck = off { $battery }
card-drv-high-stuck-means = switch shorted, or wire shorted to the battery
card-drv-high-on = on { $battery }
card-drv-high-on-means = switch and wire good; current missing: coil or ground open
card-drv-high-never = on 0 V
card-drv-high-never-means = no command, its wire open, or shorted to ground: unplug the load and repeat
card-drv-meter = V meter
card-drv-meter-note = V meter: an averaging voltmeter across the coil; duty × battery only for a clean square wave.
card-drv-paused = At { $duties } the current stops between pulses.
card-drv-coil-at = coil at
card-drv-ohms-open = Ω: OL
card-drv-ohms-open-means = winding or a wire open
card-drv-ohms-few = Ω: too few
card-drv-ohms-few-means = turns bridged, another part, or colder than thought
card-drv-ohms-many = Ω: too many
card-drv-ohms-many-means = a bad contact, or hotter than thought
card-drv-unknown = NOT GIVEN
card-drv-unknown-means = without the side no reading to ground says anything: measure across the load
card-drv-next-across = Battery now, then volts across the motor at every step: their ratio tells, whatever the battery.
card-drv-next-drops = A step too low: the drops of the table under current, one after the other.
card-drv-load = load
card-drv-next-coil-drops = Volts low across the coil while it is on: the drops of the table one after the other, with its current flowing.
card-drv-next-fuse = No step at all: both sides of its fuse, then the feed at its plug, with it turned on.
card-drv-next-ohms = Key off, unplugged, 0 V proven: ohms of the coil, leads taken off, against the row of its own temperature.
card-drv-next-isolation = Each pin of the coil to its case: { $least } or more.
card-drv-next-current = Clamp or ammeter against the duty of the command, at { $battery } or in proportion. No current at all: the readings above.
card-drv-across = V across
card-drv-wrong-note = Coil at { $at }. Ω: unmated, through the wires; V: across it, mated, fully on.
card-drv-transistor = transistor
card-drv-pack = resistors
card-drv-switch = switch
card-drv-alt-low = Circuit: battery positive feeds { $load }; its control pin { $control } leads to a switch to ground. Drops are measured from battery positive to its feed, across the closed switch, and from the ground of the switch to battery negative.
card-drv-alt-high = Circuit: a switch from battery positive feeds the control pin { $control } of { $load }; its other pin leads to ground. Drops are measured from battery positive to the feed of the switch, across the closed switch, and from its ground pin to battery negative.
card-drv-alt-no-side = Circuit: { $load } between battery positive and ground; on which side its switch is was not given.
card-points = Table as given, in { $unit }

## Mode card, request card, refrigerant and air card

doc-mode-card = Mode card
doc-request-card = Request card
doc-air-card = Refrigerant and air card
card-modes-title = { $panel }: panel modes
card-modes-how-choose = Choose a mode, wait as long as it says, look at every framed control point: tick what is as printed, cross what is not.
card-modes-how-fault = A cross: that point is stuck, or the command does not reach it; the value it shows in every mode is where it is stuck.
card-forced = forced
card-forced-means = the mode sets it: a test
card-free-means = the control unit decides: no test
card-dont-care-means = makes no difference: no test
card-mode-within = within { $time } s
card-time-not-given = time NOT GIVEN
card-run-proven = These { $count } of { $all } modes, in this order, force every value that any mode forces; no smaller set does.
card-run-not-proven = These { $count } of { $all } modes, in this order, force every value that any mode forces; every set needs { $least } or more.
card-stuck-at = { $control } stuck at { $values }
card-reveals-again = what earlier steps showed, at another value
card-box-vehicle = Vehicle
card-box-date = Date
card-box-name = Name
paper-run = Shortest run that exposes everything
paper-mode = Panel mode
paper-mode-choose = Choose
paper-step = Step
paper-reveals = A cross here shows for the first time
paper-seen = How each is seen:
card-stage = State of the request
card-stage-reads = What you read
card-stage-absent = Not requested
card-stage-waiting = Requested, not yet granted: held back, or the hold time runs
card-stage-granted = Granted
card-condition-number = No.
card-condition = Condition
card-condition-effect = Effect
card-condition-watch = Watched by, read at
card-condition-set = Sets
card-condition-release = Lets go
card-condition-at = at
card-condition-volts = V
card-condition-after = after
card-condition-source = Source
card-permits = permits
card-inhibits = inhibits
card-request-how = Looked at in this order. A condition sets once its value is there for as long as stands under “after”; from then on it stays until the value is where it lets go. One that permits has to be set, one that inhibits must not be.
card-request-volts = Volts are what a good part in a good circuit reads at the pin there: a reading on that side of the window explains why the request is held back.
card-request-wait = Wait out every delay before judging: a request that is held back by a delay is no fault.
card-request-states = States in this scenario
card-timeline-axis = time, s
card-line-bar = condition set; request granted
card-line-frame = condition waits to let go; request held back
card-line-dots = delay or hold time runs
card-line-thin = condition clear; no request
card-alt-timeline = Timeline of the request: { $states }
paper-conditions = Conditions
paper-timeline = Timeline
card-air-title = { $system }: refrigerant and air
card-saturation = Saturation
card-saturation-how = Suction and liquid line: between these temperatures superheat and subcooling are as given, at the pressure of the row.
card-from = from
card-to = to
card-suction-line = Suction line { $unit }
card-liquid-line = Liquid line { $unit }
card-absolute = abs.
card-gauge = gauge
card-critical = Critical point of { $fluid }: { $critical }; above it there is no saturation, and pressure tells no temperature.
card-box-charge = Charge, from the vehicle's under-bonnet label
card-box-oil = Oil, from the same label
card-box-oil-charge = Oil charge, from the same label
card-vent-how = Cells: from the least to the greatest good temperature in { $unit } at the outlets; * the evaporator's control sets the least. “Control”: the control holds the evaporator, the outlets follow it.
card-vent-position = Intake: { $position }
card-vent-held = control
card-any-weather = any weather
card-outside-humidity = Outside air, relative humidity
card-outside-air = Outside
card-box-ambient = Outside air
card-box-humidity = Humidity
card-box-outlet = Outlets
card-box-suction = Suction gauge
card-box-discharge = Discharge gauge
rule-card-nothing = system `{ $system }` has nothing to print on a card of this kind
rule-card-no-modes-help = write its `[mode.…]` tables, each with every `[control.…]`
rule-card-no-air-help = write its `[refrigerant.…]` or its `[vent.…]`
label-card-system = of this system

## Test sheet

sheet-title = { $title } · { $vehicle }
sheet-vehicle = Vehicle
sheet-system = System
sheet-registration = Registration
sheet-chassis = Chassis no.
sheet-built = Built
sheet-box-technician = Technician
sheet-box-date = Date, time
sheet-box-odometer = Odometer
sheet-box-bay = Bay temperature
sheet-box-humidity = Humidity
sheet-box-soak = Soaked for
sheet-box-battery-rest = Battery, at rest
sheet-box-battery-running = Battery, running
sheet-box-reference = Reference, measured
sheet-box-leads = Leads shorted
sheet-box-complaint = Complaint
sheet-sign-name = Name
sheet-sign-signature = Signature
sheet-sign-date = Date, time
sheet-sign-checked = Checked by
sheet-expect = Expect
sheet-expect-at = Expect at { $temperature }
sheet-no-bay = No bay temperature given: read the window from the strip table of the card named in each row.
sheet-legend = Bold: OK, a part within its data. Service: outside bold, but too little to explain a complaint.
sheet-legend-guarded = ±: so near to a limit undecided with these instruments (U, k = 2); “never OK”: they cannot tell, use better ones.
sheet-legend-guarded-part = ±: so near to a limit undecided with these instruments ({ $part } of U, k = 2); “never OK”: they cannot tell, use better ones.
sheet-legend-simple = ±: uncertainty with these instruments (U, k = 2); this shop decides by the limits alone.
sheet-legend-no-rule = ±: uncertainty with these instruments (U, k = 2); how to decide so near to a limit is NOT GIVEN.
sheet-left-out = Not in ±, because NOT GIVEN: { $what }.
sheet-bay = Valid while sensor and probe are at this temperature; else read the window from the card’s strip table.
sheet-all-mated = all connectors mated
sheet-sensor-unmated = sensor unmated
sheet-unit-unmated = control unit unmated, sensor mated
sheet-see-card = card { $card }
sheet-no-card = no card in this set
sheet-outside = not applicable: outside { $low } to { $high }
sheet-service = service { $window } { $unit }
sheet-harness-half = harness side, pins by their marks
sheet-component-half = component side, pins by their marks
sheet-record-only = record only; nominal { $value }
sheet-unplugged = unplugged { $window }
sheet-doubt-all = ± { $doubt } { $unit }: never OK
sheet-doubt-only = ± { $doubt } { $unit } uncertain
sheet-doubt = ± { $doubt } { $unit } undecided
sheet-instrument-value = { $what } { $value }
sheet-no-bay-coil = see its driver card: the window moves with the coil’s temperature
sheet-of-battery = battery, now
sheet-of-reference = reference, now
sheet-ratio = A ÷ B × 100, B: { $whole }
sheet-reading-here = here
sheet-field-a = A: { $what }
sheet-field-b = B: { $what }
sheet-difference = A − B, its sign left out
sheet-difference-signed = A − B, with its sign
sheet-sweep-start = start
sheet-sweep-end = end
sheet-sweep-step = largest step
sheet-sweep-rises = rises all the way, no drop-out
sheet-sweep-falls = falls all the way, no drop-out
sheet-all-steps = all of { $first } to { $last }
sheet-sequence = in this order
sheet-after = { $least } to { $most } s after { $mark }
sheet-within = within { $most } s of { $mark }
sheet-closed = closed
sheet-open = open
sheet-closed-at-most = closed: at most { $most }
sheet-closed-not-given = closed: greatest ohms NOT GIVEN
sheet-reached-within = each within { $most } s
sheet-wave = and the four below
sheet-wave-period = period
sheet-wave-duty = at the high level
sheet-wave-high = high level
sheet-wave-low = low level
sheet-wave-alt = Two periods of a switched line, at its high level for { $part } % of each
sheet-key-off = key off
sheet-key-on = key on, engine off
sheet-engine-running = engine running
sheet-mode = panel “{ $what }”
sheet-set-point = set-point { $what }
sheet-blower = blower { $what }
sheet-meter-on = meter on { $what }
sheet-unit-apart = control unit unmated
sheet-component-unmated = unmated at the component
sheet-both-ends-unmated = both ends unmated
sheet-state = State: { $what }
sheet-before = Before: { $what }
sheet-soaked = soaked { $time }
sheet-wait = wait { $time }
sheet-differs = Exception, { $when }: { $expect }
sheet-means = { $reads }: { $means }
sheet-only-from = not applicable: only if built { $month } or later
sheet-only-to = not applicable: only if built up to { $month }
sheet-box-key = Key, engine
sheet-box-mode = Panel mode, blower
sheet-corrections = Correct with a single line through and your initials beside it; write over nothing.
sheet-surface-paper = Write in ink.
sheet-surface-wet-erase = Laminated: write with a wet-erase marker; copy or photograph it before it is wiped.
sheet-surface-permanent = Laminated: write with a permanent marker; the sheet is kept with the job.
doc-report = Result report
report-box-job = Job no.
report-box-sheet-pages = Test sheet, pages filled in
report-complaint = Complaint, as the driver tells it
report-cause = Cause found
report-action = What was done, parts fitted
report-open = Open points, and who follows them up
report-now = At { $temperature }, from test sheet { $sheet }, code { $code }
report-now-none = From test sheet { $sheet }, code { $code }; windows by the bay’s temperature are on its cards
report-sign-technician = Technician, signature
report-sign-checked = Checked by, signature
report-sign-received = Vehicle received by, signature
report-sign-date = Date, time
sheet-else-open = Reads its unplugged value: sensor not mated, or an open wire.
sheet-else-other-end = Reads the other end (0 V; the reference where unplugged is near 0 V): sensor or signal shorted.
sheet-else-ohms = Ohms: over range is open, near 0 Ω is shorted.
sheet-else-all = All rows wrong the same way: shared return, ground or reference; measure these first.
sheet-else-simple = Within the printed ± of a limit: the limit decides, but another meter may read the other side of it. Say so in the remarks.
sheet-else-no-rule = Within the printed ± of a limit: write the reading down; how this shop decides there is NOT GIVEN.
sheet-else-undecided-any = Undecided: within the printed ± of a limit. Repeat with a better meter.
sheet-else-undecided = Undecided: within the printed ± of a limit. Repeat with the sensor in ice water, or with a better thermometer or meter.

## Cautions

caution-danger = STOP · DANGER
caution-stop = High voltage: { $parts }. Only qualified people work on it: isolate, lock, wait, prove dead. Nothing on this paper applies to it.
caution-warning = WARNING
caution-caution = CAUTION
caution-notice = NOTICE
caution-law = Local law, licence and the vehicle's own safety instructions come first. The refrigerant circuit stays closed.
caution-law-open = Local law, licence and the vehicle's own safety instructions come first.
caution-law-card = Local law, licence, vehicle instructions come first. Refrigerant circuit stays shut.
caution-law-card-open = Local law, licence, vehicle instructions come first.
caution-dash = Airbag and belt-tensioner wiring is not probed, not ohmed, not unplugged; orange cables are out of bounds.
caution-dash-card = Airbags, orange cables: hands off.
caution-moving = Keep clear of belts, and of fans that start by themselves.
caution-moving-card = Fans start by themselves.
caution-battery = Battery gas burns: goggles on, no sparks.
caution-battery-card = Battery gas burns: no sparks.
caution-refrigerant-card = Only licensed people open the refrigerant circuit.
caution-running = Vehicle chocked, parking brake on, exhaust extracted.
caution-running-card = Chock wheels, vent exhaust.
caution-hot = Exhaust, coolant, discharge line and blower transistor burn the skin.
caution-hot-card = Hot parts burn.
caution-probing = No test lamp on reference, sensor, airbag, bus wires; no piercing.
caution-probing-card = No test lamp or piercing.
caution-unplugging = Key off to mate or unmate.
caution-unplugging-card = Key off to unplug.
caution-ohms = No ohms on a powered circuit.
caution-ohms-card = No ohms under power.
caution-around = Airbag and belt-tensioner wiring is not probed, not ohmed, not unplugged. Orange high-voltage cables are out of bounds. Keep clear of belts, hot parts, and fans that start by themselves. Vehicle chocked, exhaust extracted.
caution-refrigerant = Refrigerant is under pressure, freezes skin and eyes, displaces air; some of it burns, R-744 runs at very high pressure. Only licensed people with recovery equipment connect gauges and open a circuit.
caution-transducer = The transducer stays screwed in: it holds back refrigerant under pressure. Measure at its plug only.

## The run

run-demo = No --specs and no folder specs/ here: using the demo set built into the program; all its values are invented.
run-errors = { $errors ->
    [one] 1 error
   *[other] { $errors } errors
}, { $warnings ->
    [one] 1 warning
   *[other] { $warnings } warnings
}: nothing was written
run-warnings = { $warnings ->
    [one] 1 warning
   *[other] { $warnings } warnings
}
run-no-model = the set names no shop: add [shop] with `title` and `paper`
run-specs-changed = the specs or templates were changed while they were being printed; print again
run-watch-demo = there is nothing to watch: the demo set is built into the program; `bayleaf new specs` begins a set of your own
run-cannot-watch = cannot watch `{ $path }`: { $reason }
run-watch-waits = waiting for it to come back
run-watch-kept = pictures stay as they were; watching
run-watch-drawn = { $drawn } drawn, { $same } as before, { $seconds } s; watching
run-cannot-read = cannot read `{ $path }`: { $reason }
run-template-exists = `{ $path }` exists and differs; --overwrite replaces it
run-templates-written = { $count } templates in `{ $path }`; to print with them: bayleaf print --templates { $path }
run-begun = A set begins in `{ $path }`. Write your own values over the examples, then: bayleaf check --specs { $path }
run-not-empty = `{ $path }` is not empty; a new set needs a folder of its own
run-library = { $said }
run-built-in = built in: { $path }
run-template-unread = a template that is needed cannot be read
run-template-stops = typesetting stops here
run-template-warns = typesetting warns here, and a warning is refused
run-template-leads = reached from here
run-template-keeps = { $count ->
    [one] { $ids } is not printed because of it
   *[other] { $count } documents are not printed because of it: { $ids }
}
run-template-elsewhere = with the built-in templates alone it is printed: look through { $files }
run-past-edge = page { $page }: `{ $text }` leaves the page
run-text-on-text = page { $page }: `{ $text }` lies on `{ $other }`
run-too-many-sides = it takes { $pages } pages and may have { $sides } at most
run-part-missing = the template marks nothing as `{ $part }`
run-part-unknown = the template marks `{ $part }`, for which no reading distance is stated
run-illegible = page { $page }: `{ $text }` at { $size } pt is too small: its capitals are { $height } mm high; to be read from { $distance } mm it needs { $needed } pt (15 minutes of arc)
run-illegible-part = page { $page }, { $part }: `{ $text }` at { $size } pt is too small: its capitals are { $height } mm high; to be read from { $distance } mm it needs { $needed } pt (15 minutes of arc)
run-no-templates = `{ $path }` holds no template (*.typ)
run-template-without-data = template `{ $name }` receives no data of its own
run-no-such-template = no template is called `{ $name }`; those with data: { $known }
run-no-such-template-near = no template is called `{ $name }`; did you mean `{ $near }`?
run-strange-template = `{ $path }` takes the place of no built-in template; it is used only where another one imports it
run-cannot-write = cannot write to `{ $path }`: { $reason }
run-no-worker = cannot start a worker process: { $reason }
run-worker-lost = a worker process ended early; { $missing ->
    [one] 1 document was
   *[other] { $missing } documents were
} not printed
run-cannot-print = `{ $id }` was not printed: { $reason }
run-cannot-print-many = { $count } documents were not printed ({ $ids }): { $reason }
run-no-output = cannot write the output: { $reason }
run-more-sides = `{ $id }` has { $pages } pages, not { $expected }: its back is too full; shorten its `next` steps or its sources
run-more-failures = … and { $count } more
run-no-such-document = there is no document, sheet or vehicle `{ $id }`
run-no-such-document-near = there is no document, sheet or vehicle `{ $id }`; did you mean `{ $near }`?
run-nothing-to-print = the set has no card, and no sheet with a vehicle
run-no-such-table = nothing with a table is called `{ $id }`
run-no-such-table-near = nothing with a table is called `{ $id }`; did you mean `{ $near }`?
run-table-reversed = the table runs from { $from } to { $to }, which is colder
run-junction-outside = a cold junction at { $at } lies outside thermometer `{ $id }`, { $low } to { $high }
run-table-outside = { $at } lies outside the range of `{ $id }`, { $low } to { $high }
run-table-step = a step of { $step } gives no table
run-table-no-step = the table of `{ $id }` has no steps of temperature: leave `--step` out
run-table-no-temperatures = the table of `{ $id }` does not depend on temperature: leave `--from` and `--to` out
run-table-not-over-temperature = the figures of `{ $id }` do not run over temperature: leave out --from, --to and --step
run-table-no-bay = the figures of `{ $id }` do not depend on the temperature of the bay: leave out --at
run-table-no-meter = Volts without the load of a meter.
run-table-meter = Volts with a { $input } meter.
run-bay-outside = { $at } lies outside the range of sensor `{ $id }`, { $low } to { $high }: its rows print without a window
run-progress = { $done } of { $all } documents
run-printed = { $documents ->
    [one] 1 document
   *[other] { $documents } documents
}{ $pages ->
    [0] { "" }
    [one] { ", " }1 page
   *[other] { ", " }{ $pages } pages
}, { $seconds } s, in { $out }; { $no-source ->
    [one] 1 value without a source
   *[other] { $no-source } values without a source
}, { $not-given ->
    [one] 1 value NOT GIVEN
   *[other] { $not-given } values NOT GIVEN
}
run-sheets = { $sheets ->
    [one] 1 sheet to be cut
   *[other] { $sheets } sheets to be cut
}: { $files ->
    [one] { $first }
   *[other] { $first } to { $last }
}. Print on both sides, flip on the { $edge } edge, at 100 %; then hold a ruler to the bar of 100 mm.
run-long-edge = long
run-short-edge = short
run-no-bar = `{ $id }`: no white border for the bar of 100 mm on page { $pages }; check the size of another page
run-no-bar-on-sheet = `{ $id }`: no room for the bar of 100 mm on { $sides ->
    [one] 1 side
   *[other] { $sides } sides
}; check the size of another sheet
run-stale-sheets = `{ $path }` is from an earlier run; its cards may be out of date
run-sheet-too-small = { $width } × { $height } mm does not fit a sheet of { $across } × { $along } mm, of which 5 mm at each edge are not printed
run-in-border = page { $page }: a drawn part comes as near as { $distance } mm to the edge; lamination needs { $quiet } mm
run-in-border-text = page { $page }: `{ $text }` comes as near as { $distance } mm to the edge; lamination needs { $quiet } mm
run-under-hole = page { $page }: the hole at the { $place } ({ $diameter } mm, its centre { $inset } mm from the edge, { $around } mm around it kept clear) goes through a drawn part; the paper is white { $free } mm deep there
run-under-hole-text = page { $page }: the hole at the { $place } ({ $diameter } mm, its centre { $inset } mm from the edge, { $around } mm around it kept clear) goes through `{ $text }`; the paper is white { $free } mm deep there
place-top = top
place-bottom = bottom
place-left = left
place-right = right
place-top-left = top left
place-top-right = top right
place-bottom-left = bottom left
place-bottom-right = bottom right
run-list-no-source = Values without a source:
run-list-not-given = Values NOT GIVEN:
run-checked = no errors: { $documents ->
    [one] 1 document
   *[other] { $documents } documents
} from { $sensors ->
    [one] 1 sensor
   *[other] { $sensors } sensors
} for { $vehicles ->
    [one] 1 vehicle
   *[other] { $vehicles } vehicles
}; { $no-source ->
    [one] 1 value without a source
   *[other] { $no-source } values without a source
}, { $not-given ->
    [one] 1 value NOT GIVEN
   *[other] { $not-given } values NOT GIVEN
}

## Labels of the templates

paper-applies = applies to
paper-place = place
paper-draft = DRAFT
paper-code = Code
paper-page = page
paper-of = of
paper-check-bar = measure: 100 mm; if not, print at 100 %
paper-printed-sheet = sheet
paper-printed-sheets = Cards on sheets
paper-front = front
paper-back = back
paper-cut-to = cut to
paper-pouch = pouch inside at least
paper-uncontrolled = uncontrolled when copied
paper-changed-more = more
paper-sources = Sources
paper-sources-at-end = sources at the end


paper-offset = return up
paper-other-unit = other unit
paper-switched = switched
paper-measuring = How to measure
paper-circuit = Circuit
paper-latch = latch
paper-inputs = Inputs
paper-readings-not-given = What a good part reads is NOT GIVEN
paper-pressure-volts = p → V
paper-outputs = Outputs
paper-face-not-given = Face NOT GIVEN: no rows
paper-pin = Pin
paper-wire = Wire
paper-function = Function
paper-tested = Tested by
paper-control-unit = control unit
paper-input = input
paper-plot-key = thick: nominal · thin: limits
paper-readings = If the meter reads
paper-next = Next steps
paper-given = Given data
paper-given-what = what
paper-given-value = value
paper-source = source


paper-at = Windows below are for a bay temperature of
paper-unit-pin = unit
paper-behaves = If it behaves like this
paper-recalibration = Learning the stops again
paper-actuator = actuator
paper-serial = Serial no.
paper-cal-due = Calibration due
paper-number = No.
paper-measure = Measure
paper-where = Where
paper-reading = Reading
paper-ok = OK
paper-not-ok = not OK
paper-undecided = undecided
paper-initials = Initials
paper-meanings = If one of these is not OK
paper-wave-period = period
paper-wave-on = high level
paper-evidence = Evidence, and the same again after the work
paper-evidence-what = Reading
paper-evidence-window = Window
paper-evidence-before = Before
paper-evidence-after = After
paper-windows = Windows of the test sheet
paper-papers = Papers used: tick where the code on the wall is this one; where not, write it under open points
paper-else = What a wrong reading means
paper-remarks = Remarks

## Tables of figures, on a screen

table-own-rule = the shop’s own rule
table-min = min
table-nominal = nominal
table-max = max
table-figure-block = block
table-figure-place = stands at
table-figure-printed = printed
table-figure-unit = unit
table-figure-value = unrounded
table-figure-rounding = rounded
table-figure-note = Every number that is computed for this paper, as printed and unrounded. What the specs give is printed as they have it: see the inputs.
table-plot-logarithmic = { $curve }, logarithmic
table-plot-none = `{ $id }` has no curve to draw: its table has no nominal ohms or volts that rise or fall along it
table-input = { $label }: { $value }  ({ $key }; { $source })
table-input-of-instrument = { $id }, { $label }: { $value }  ({ $key }; { $source })
table-switched = V, second resistor on
table-count = counts
table-count-step = { $unit } per count
table-still = { $unit } by own current, still air
table-moving = { $unit } by own current, moving air
table-looks-broken-below = Below { $at } the control unit may take a good sensor for { $looks }: worst case over all tolerances (nominal: below { $nominal }).
table-looks-broken-above = Above { $at } the control unit may take a good sensor for { $looks }: worst case over all tolerances (nominal: above { $nominal }).
table-looks-broken-below-nominal = Below { $at } the control unit takes a nominal sensor for { $looks }; worst case NOT GIVEN or outside the curve.
table-looks-broken-above-nominal = Above { $at } the control unit takes a nominal sensor for { $looks }; worst case NOT GIVEN or outside the curve.
table-open = open
table-shorted = shorted
table-beyond-range = That lies beyond the range of the sensor.
table-formula-counts = Counts: V/Vref × (2ᵇ − 1), rounded (common practice, no source); K per count from the slope of V/Vref.
table-note-counts-unloaded = Counts are those without a meter on the pin.
table-formula-self-heating = Own current: the ΔT for which V²/R of the warmed sensor is δ ΔT, with δ the dissipation constant (its definition, IEC 60539-1, number from memory).
table-formula-beta = R = R₀ exp[B (1/T − 1/T₀)], T in kelvin: two-parameter thermistor formula (common practice; checked against component makers’ worked figures).
table-formula-steinhart-hart = 1/T = a + b ln R + c (ln R)³, T in kelvin, R in ohms (Steinhart and Hart, Deep-Sea Research 15, 1968; title from memory).
table-formula-points = Between points: monotone cubic Hermite pieces of ln R over 1/T, through every point (Fritsch and Carlson, SIAM J. Numer. Anal. 17, 1980, 238; titles from memory); slope at a point: weighted harmonic mean of the slopes on either side (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984, 300), at an end by the three-point formula of the two nearest pieces, held to the direction and to three times the slope of its own piece (checked against dropped rows of published tables).
table-formula-tolerance-rated = Limits of R: R (1 ± δR) (R/R₀)^(± δB), the exact corners of the tolerances of R and B.
table-formula-tolerance-plain = Limits of R: R (1 ± δR) at every temperature.
table-formula-tolerance-temperature = Limits of R: the curve at T + δT and at T − δT.
table-formula-steinhart-hart-4 = 1/T = a + b L + c L² + d L³ with L = ln(R/R₀), T in kelvin; R₀ is 1 Ω where no resistance is given (checked against published coefficients).
table-formula-platinum = R = R₀ (1 + A t + B t²), below 0 °C + C (t − 100) t³ besides, t in °C; A = 3.9083·10⁻³, B = −5.775·10⁻⁷, C = −4.183·10⁻¹² (IEC 60751).
table-formula-silicon = R = R₀ [1 + a (T − T₀) + b (T − T₀)²] (makers’ quadratic for silicon sensors).
table-formula-tolerance-class = Limits of R: the curve at t + δt and at t − δt, with δt of the class: AA 0.1 + 0.0017 |t|, A 0.15 + 0.002 |t|, B 0.3 + 0.005 |t|, C 0.6 + 0.01 |t|, in K (IEC 60751).
table-formula-tolerance-columns = Limits of R: the least and greatest columns of the source’s own table, each interpolated by itself.
table-formula-pull-up = V = Vref R / (R + Rp), with R the sensor and what is in series and parallel with it, Rp the pull-up (Kirchhoff’s laws).
table-formula-pull-down = V = Vref Rp / (R + Rp), with R the sensor and what is in series and parallel with it, Rp the pull-down (Kirchhoff’s laws).
table-formula-window = Limits of V: least and greatest over every combination of the ends of all tolerances; limits are rounded inward.
table-formula-slope = %/K = 100 (dR/dT)/R, from the derivative of the curve.
table-formula-plausible = Plausible: V/Vref without a meter between the two parts of the reference in the inputs; solved for the temperature at which its limits leave them.
table-formula-loaded = With the meter its input resistance Rm lies across the pin and the return: in the formula of V, R ∥ Rm stands for R of a pull-up circuit, Rp ∥ Rm for Rp of a pull-down one.

table-yes = yes
table-no = no
table-modes-title = Panel modes of { $system }: what each forces
table-stuck-title = Stuck control points of { $system }, and the modes that expose them
table-mode = mode
table-name = name
table-time = within, s
table-forced = forced
table-in-smallest = in smallest set
table-free = free
table-dont-care = don’t care
table-control = control point
table-stuck-at = stuck at
table-forced-by = forced by
table-exposed-by = exposed by
table-first-exposing = first in smallest set
table-modes-smallest = Smallest set of modes that visits every forced value: { $modes } ({ $count } of { $all }; proven, no smaller set does).
table-modes-small = A small set of modes that visits every forced value: { $modes } ({ $count } of { $all }). More than { $most } modes: not proven to be the smallest; at least { $least } are needed.
table-modes-nothing = No mode forces anything: there is nothing to visit.
table-modes-alone = Only { $mode } forces: { $values }.
table-modes-never-forced = No mode forces: { $values }.
table-modes-hidden = No mode exposes a control point stuck at: { $values }.
table-modes-none-hidden = Every control point stuck at any of its values is exposed by a mode.
table-formula-smallest-set = Smallest set: the fewest modes of which one or more force each forced value of each control point; all sets are searched for up to { $most } modes, and of several the first by the order of the modes is taken (own search).
table-formula-stuck-at = A control point stuck at a value is exposed by each mode that forces another value of it; free and don’t care expose nothing (common practice, no source).
table-panel-end = end
table-panel-low = lower
table-panel-high = upper
table-panel-mark = means
table-panel-celsius = °C as given
table-panel-celsius-in-f = that in °F
table-panel-fahrenheit = °F as given
table-panel-fahrenheit-in-c = that in °C
table-panel-difference = °C less °F, K
table-panel-agrees = agrees
table-panel-conversions = The two scales are conversions of each other, within the rounding of their digits.
table-panel-separate = The two scales are no conversions of each other: neither may be computed from the other.
table-panel-spans = Span: { $celsius } °C on the one scale; { $fahrenheit } °F = { $kelvins } K on the other.
table-panel-one-scale = One scale only: the other one is not computed from it.
table-formula-scales = t/°C = (t/°F − 32) / 1.8; a difference of 1 K is 1.8 °F (definitions of the scales).
table-formula-scales-agree = The two readings of an end agree where their difference is no more than half a step of the last digit shown, in °C or °F, whichever step is larger.
table-head-ice = from ice
table-head-bay = from bay
table-junction-ice = Cold junction at 0 °C; with --at also for a cold junction at bay temperature.
table-junction-at = “From bay”: cold junction at { $at }, as on a voltmeter in the bay; “from ice”: at 0 °C.
table-formula-thermocouple = E(t) = Σ cᵢ tⁱ, t in °C; for type K above 0 °C also a₀ exp[a₁ (t − a₂)²] (ITS-90 reference functions: coefficients of NIST Monograph 175, SRD 60, the table of type { $type }; identical in IEC 60584-1). In this program: src/physics/thermocouple.rs.
table-formula-junction = With the cold junction at t₀: E(t) − E(t₀). EMFs add, temperatures do not.
table-site = Gauge readings at this site: air pressure { $pressure } of the standard atmosphere, ± { $weather } with the weather (common practice, no source).
table-note-gauges-by-scale = Superheat by the suction gauge, subcooling by the discharge gauge; at rest by the suction gauge where the reading is on its scale, else by the discharge gauge.
table-note-gauge-scale = { $gauge }: on its scale up to { $full }.
table-note-gauge-missing = { $gauge } NOT GIVEN: – where only it could tell.
table-no-site = Gauge readings NOT GIVEN: the shop’s elevation is not known, and sea level is not assumed.
table-air-site = At the air pressure of this site, { $pressure } (standard atmosphere).
table-no-air-site = Figures NOT GIVEN: the shop’s elevation is not known, and sea level is not assumed.
table-absolute = { $unit } abs
table-gauge = { $unit } gauge
table-mark = mark
table-vacuum = vacuum
table-suction-min = suction min { $unit }
table-suction-max = suction max { $unit }
table-superheat-u = superheat ± { $unit }
table-liquid-min = liquid min { $unit }
table-liquid-max = liquid max { $unit }
table-subcooling-u = subcooling ± { $unit }
table-at-rest-min = at rest min { $unit }
table-at-rest-max = at rest max { $unit }
table-source-r134a = ancillary of CoolProp 8.0.0 to J. Phys. Chem. Ref. Data 23 (1994) 657, −30 °C to 80 °C
table-source-r1234yf = ancillary of CoolProp 8.0.0 with its third exponent read as 2, to Int. J. Thermophys. (2022), −34 °C to 80 °C
table-source-r744 = ancillary of CoolProp 8.0.0 to J. Phys. Chem. Ref. Data 25 (1996) 1509, −30 °C to the critical point
table-formula-saturation = Saturation of { $fluid }: p = pc exp[(Tc/T) Σ nᵢ θ^tᵢ], θ = 1 − T/Tc ({ $source }); good to ± { $limit } of the absolute pressure.
table-formula-saturation-terms = { $fluid }: Tc = { $temperature } K, pc = { $pressure } kPa; nᵢ (tᵢ): { $terms }.
table-formula-gauge = Gauge = absolute − air pressure; air pressure = 101.325 kPa × (1 − 2.25577 × 10⁻⁵ Z)^5.2559, Z in metres (ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3). Below zero the gauge shows a vacuum: that is no fault of it.
table-formula-suction = Suction line: saturation temperature + superheat; limits are rounded inward, and the ± beside them is not yet taken off.
table-formula-liquid = Liquid line: saturation temperature − subcooling; limits are rounded inward, and the ± beside them is not yet taken off.
table-formula-at-rest = At rest, soaked: readings that prove saturation, the band around it less U on either side (JCGM 106:2012, guard w = U). –: no reading could, or none at saturation itself. Well below, or above: refer to licensed people; above suggests gas that does not condense (common practice, no source). It says nothing of how much liquid there is.
table-formula-superheat-u = ± K of superheat and subcooling, rounded up: k = 2, from gauge, weather and equation divided by dp/dT, and the thermometer, each as limit/√3 (JCGM 100:2008, 5.1.2). –: beyond the scale of the gauge, or gauge, thermometer or elevation not given.
table-note-above-critical = Above { $critical }, the critical temperature of { $fluid }, there is no saturation: the check at rest is void there, and in a bay near it.
table-intake = intake
table-outside = outside { $unit }
table-humidity = RH %
table-inlet = inlet { $unit }
table-dew-point = dew point { $unit }
table-water = W { $unit }
table-outlet = outlet { $unit }
table-settled = settled { $unit }
table-dripping = dripping
table-drips = yes
table-stays-dry = no
table-undecided = undecided
table-fog = fog
table-held = evaporator control
table-held-least = min: evaporator control
table-formula-moist-air = W = 0.621945 pw/(p − pw), h = 1.006 t + W (2501 + 1.86 t) in kJ per kg of dry air; saturation over water, below 0.01 °C over ice, by Hyland and Wexler (ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5, 6, 20, 22, 30).
table-formula-mixed-air = Inlet: outside and cabin air by mass of dry air, W = x Wout + (1 − x) Wcabin, h likewise.
table-formula-outlet = Outlet: h less the duty. Dry where that leaves less than { $humidity } relative humidity; otherwise water settles and the air leaves at { $humidity } (the assumption of the spec).
table-formula-settled = The heat that the settled water takes along is left out: in these rows up to { $percent } % of the duty, W c t/q with W settled, c = 4.186 kJ/(kg K) of water, t the outlet in °C, q the duty. With it the air would leave colder.
table-formula-outlet-window = Limits of the outlet: corners of thermometer, hygrometer and duty, rounded inward. NOT GIVEN (–) without all three. Marked “min: evaporator control”: the corner lies below what the evaporator is held at, and that stands as the least. Marked “evaporator control”: so does the nominal outlet; it is not reached and no figure is given.
table-request-title = { $request }, states over its scenario
table-request-no-scenario = The spec has no scenario.
table-request-incomplete = A threshold, a delay or the hold time is NOT GIVEN: the states of the scenario are not computed.
table-from = from s
table-to = to s
table-state = State
table-held-back-by = Held back by
table-request-absent = not requested
table-request-inhibited = requested, held back
table-request-delayed = requested, hold time runs
table-request-permitted = granted
table-formula-condition = Condition: set once its value has been at its threshold or past it for the delay, clear once it has been at its release threshold or past it for the release delay, between both as it was; a touch without length counts as none. At 0 s as if the value had been there for ever, clear where it is between both (common practice, no source).
table-formula-request = Request: held back while a condition that permits is clear or one that inhibits is set; granted once it has stood, and nothing held it back, for the hold time without a break (common practice, no source).
table-formula-dripping = Dripping: yes where the dew point of the inlet is above every temperature that the evaporator is held at, no where it is below every one; undecided between, or within the limits of the instruments, also where the nominal duty would settle some water.
table-duty = duty %
table-ripple = ripple
table-conduction = current
table-continuous = flows on
table-discontinuous = stops
table-meter-across = V averaging
table-displacement = displacement %
table-step = step
table-bypass = relay
table-across-motor = V motor
table-at-battery = { $what } at { $battery }
table-heat = W series
table-to-ground = V switched to ground
table-of-limit = % of limit
table-note-coil = Ω: key off, unmated, lead resistance taken off. A: always on, no drop in the switch.
table-note-battery = Battery { $low } to { $high }.
table-note-nominal-battery = Nominal: battery { $nominal }.
table-note-isolation = Coil to case: { $least } or more.
table-note-solenoid-nominal = Nominal: battery { $battery }, coil at { $at }.
table-note-solenoid-limits = Limits: battery { $low } to { $high }, coil { $cold } to { $hot }.
table-note-ceiling = With { $battery } no duty makes more than (Vb − Vs)/R, with the least Vs of { $drop }: { $most } with a good hot coil of { $least }, { $fewest } with one of { $greatest }.
table-note-less-displacement = More current means less displacement.
table-note-more-displacement = More current means more displacement.
table-note-no-timing = Inductance or frequency NOT GIVEN: no ripple; the mean holds where the current never stops between pulses, and is higher where it does.
table-note-averaging = V averaging: across the coil, with the nominal coil; duty × battery only for a clean square wave.
table-note-hottest = With { $battery } and nominal wires the transistor is hottest at { $percent } % of the battery, { $volts } V across the motor: no more than { $watts } W. Burn hazard.
table-note-hottest-step = With { $battery } the resistors are hottest at step { $step }: { $watts } W, everything nominal. Burn hazard.
table-note-no-wiring = Wiring NOT GIVEN: volts and heat without the share of the wires, which only lessens them.
table-note-low-side = Measure across the motor. To ground, the terminal on the feed side reads the battery at every step, also with the motor stopped; the terminal on the switched side reads the battery less the volts across the motor.
table-note-high-side = Measure across the motor. With its ground lost, both terminals read the same to ground, and the motor stands still.
table-note-wire-listed = Max: the greatest that the cable standard allows. Nominal: solid copper.
table-note-wire-gauge = Nominal: solid copper of this gauge; a stranded wire has a few percent more. Max NOT GIVEN: the cable standard knows no gauge numbers.
table-note-wire-theory = Theoretical: solid copper of the nominal size; a real wire has 3 to 15 % more. Max NOT GIVEN: size or class is not the cable standard’s.
table-note-wire-drop = A drop is only there while the current flows.
table-note-wire-metre = One metre at 20 °C: { $nominal } nominal.
table-note-wire-metre-greatest = One metre at 20 °C: { $nominal } nominal, { $greatest } at most.
table-note-wire-limit = % of limit: V max as a part of the limit of { $limit }.
table-note-wire-limit-nominal = % of limit: V nominal as a part of the limit of { $limit }, as V max is not known.
table-formula-copper = R = R₁ (1 + α (t − 20 °C)) / (1 + α (t₁ − 20 °C)), α = 0.00393 /K at 20 °C (IEC 60028). Limits: the ends of the tolerance of R₁.
table-formula-ceiling = I (column A) = Vb/R: least from the lowest battery and the greatest R, greatest from the highest battery and the least R (Ohm’s law).
table-formula-switched = L dI/dt = v − R I, solved over a settled period: v = Vb − Vs while on, −Vf while off, none once the current is gone; column A is the mean of I, never below 0 A; ripple from the exponentials of L/R (checked against a simulation in time).
table-formula-continuous = I (column A) = (D (Vb − Vs) − (1 − D) Vf)/R, the mean while the current never stops, not below 0 A; D duty, Vs drop in the switch, Vf drop of the diode.
table-formula-mean-window = Limits of the mean current: least and greatest over every combination of the ends of battery, drops and R; inductance and frequency as given.
table-formula-averaging = V averaging = R × mean current: an inductance takes no mean voltage.
table-formula-displacement = Displacement: straight lines between the points of the spec; beyond them only that it is no more (≤) or no less (≥) than at the last of them.
table-formula-step = V motor = step × battery, measured across the motor. Limits of Vm/Vb: the tolerance of the step, at any battery.
table-formula-resistors = V motor from Vb − Vm = R I(Vm), with R the resistor of the step and the wires (Kirchhoff’s voltage law). Limits of Vm/Vb: least and greatest over both ends of the battery and of the resistor; motor and wires nominal.
table-formula-motor = I (column A) = I₀ (Vm/V₀)ⁿ with I₀ at V₀ (a model; n about 1.7 for a blower wheel is common practice, no source).
table-formula-heat = W series = (Vb − Vm − Rw I) I, with Rw the wires; greatest where (n + 1) Vm + 2 n Rw I = n Vb (derivative zero).
table-formula-heat-resistors = W series = (Vb − Vm − Rw I) I, with Rw the wires: the heat of the resistor of the step.
table-formula-bypass = Relay: Vb less the relay’s drop and the wires’.
table-formula-wire-nominal = Ω nominal = n l ρ/S (1 + α (t − 20 °C)), ρ = 1/58 Ω mm²/m, α = 0.00393 /K (IEC 60028); n conductors of length l and section S.
table-formula-wire-gauge = S = π d²/4, d = 0.127 mm × 92^((36 − gauge)/39) (ASTM B258; formula from memory, checked against a printed table).
table-formula-wire-greatest = Ω max = the same with the greatest resistance at 20 °C of IEC 60228 (plain copper, as cable makers quote it; class 5 and 6 from 10 mm² up from memory).
table-formula-wire-drop = V = I × Ω, with I the current of the inputs (Ohm’s law).

## Faults and judgements, on a screen

fault-open = open circuit in the sensor or its plug
fault-open-wire = open wire
fault-short-to-return = sensor shorted
fault-short-to-ground = signal shorted to ground
fault-short-to-reference = signal shorted to the reference
fault-short-to-battery = signal shorted to battery voltage
fault-series = high resistance in the wires
fault-leak = leakage across the sensor's two wires
fault-leak-to-battery = leakage from battery voltage to signal
fault-lifted-return = return above ground
fault-shifted-resistance = sensor's resistance off, the same % at every temperature
fault-shifted-slope = sensor's slope (B value) off
fault-other-part = other part: { $title }, { $id }
fault-wrong-resistor = control unit's resistor off
fault-unit-still-mated = ohms taken with everything still plugged in: unplug and repeat
fault-wiper-open = wiper, or signal wire, open
fault-track-open = track broken
fault-track-open-to-return = track broken between wiper and return
fault-track-open-to-reference = track broken between wiper and reference
fault-reference-lost = reference wire open
fault-return-lost = return wire open
fault-signal-to-return = signal shorted to the return
fault-contact-resistance = wiper makes poor contact
fault-slipped = wiper slipped, of the track
fault-winding-open = winding open
fault-coil-shorted = coil shorted
fault-shorted-turns = turns bridged
fault-other-coil = other coil
fault-other-temperature = coil at another temperature
fault-signal-open = signal wire open
fault-offset = output off by a pressure
fault-absolute-part = absolute part in place of a gauge one
fault-gauge-part = gauge part in place of an absolute one
fault-light-open = sensor, or a wire to it, open
fault-light-shorted = sensor shorted
fault-light-covered = sensor covered
faults-fault = fault
faults-size = size
faults-believed = unit believes { $unit }
faults-separable = told from good
faults-separable-by = by
faults-alike = reads like number
faults-yes = yes
faults-no = no
faults-open-line = OL
faults-at-unit = At { $at }, at the control unit's connector: volts mated, key on; ohms with the unit unmated, key off, after proving 0 V.
faults-at-sensor = At { $at }, at the sensor's plug: volts mated, key on; ohms of the sensor alone, unmated, key off, after proving 0 V.
faults-at-feedback = At the control unit's connector. V: signal to return, mated, key on. Ohms between the wires, unit unmated, key off, after proving 0 V: sig signal, ret return, ref reference.
faults-at-coil = At { $at }, the winding's own temperature. Ω: through the wires to the coil, driver unmated, key off, after proving 0 V. V: across the coil at its own plug, mated, fully on. What the meter's leads add is in ±.
faults-at-transducer = V: signal to return at the control unit's connector, mated, key on; no load of a meter. No ohms: a transducer is electronic, its ohms say nothing (common practice, no source).
faults-at-light = V: signal to return at the control unit's connector, mated, key on. No ohms: those of a diode depend on the ohmmeter (common practice, no source).
faults-no-matter = Its own temperature has no part in these readings: nothing of it stands in the specs.
faults-no-instrument = Without an instrument the windows over the tolerances alone tell faults apart: name one with `--instrument`.
faults-no-nominal-stops = The stops are given as windows, without nominal values: what depends on the position has no nominal reading (–), and no position that the unit believes.
faults-contacts-too = Its contacts are not in here: their faults stand below `bayleaf table { $id }`.
faults-no-nominal-battery = No volts and amperes: `nominal` of the battery is NOT GIVEN.
faults-no-coil-tolerance = The tolerance of the coil is NOT GIVEN: most faults cannot be told from good.
faults-signal-open = Signal open: nothing in the specs says where the pin stands then (–).
faults-beyond-line = A reading beyond the line is not known, since no clamp is given (–).
faults-wiper-contact = (sig–ret + sig–ref − ref–ret)/2 is the wiper's contact, whatever the track's tolerance and the position.
faults-no-elevation = A part of the other sense is left out: `elevation` of the shop is NOT GIVEN.
faults-good = Good: { $reading }.
faults-good-at = Good at { $position }, { $test }: { $reading }.
faults-unplugged = Sensor unplugged, at the harness side of its plug, key on: { $reading }. Anything else is wire or control unit.
faults-substitute = { $resistor } in place of the sensor: { $reading }; the unit then believes { $simulates }. If so, wires and unit are good. Measure the resistor first.
faults-reading = { $nominal }, limits { $range }
faults-reading-doubt = { $nominal }, limits { $range }, ± { $doubt } (k = 2)
faults-ohms = Ω
faults-ohms-to-return = Ω sig–ret
faults-ohms-to-reference = Ω sig–ref
faults-ohms-end-to-end = Ω ref–ret
faults-volts = V
faults-volts-min = V least
faults-volts-max = V most
faults-amperes = A
faults-position = at %
faults-pressure = at { $unit }
faults-believed-position = unit believes %
faults-believed-pressure = unit believes { $unit }
faults-believed-light = unit believes W/m²
faults-no-ohms = No ohms: they cannot be computed here.
faults-no-volts = No volts: resistor or reference of the circuit is NOT GIVEN.
faults-no-battery = Faults to battery voltage are left out: `battery` of system `{ $system }` is NOT GIVEN.
faults-formula-reading = Readings: the formulas above with one thing wrong. In the sensor: open, shorted, its resistance or slope off, another part. In the wires between unit and sensor: open wire, shorts, leakage, high resistance. Ohms at the unit are sensor, series resistor and wires; the meter on the line lies across it in volts (Kirchhoff's laws; checked against a circuit simulator).
faults-formula-believed = Unit believes: the temperature behind its own reading, as if nothing were wrong; empty where no temperature of the curve gives it.
faults-formula-separable = Told from good: the windows of good and faulty over all tolerances, each widened by the reading's uncertainty, do not meet (JCGM 100, k = 2).
faults-formula-position = Unit believes: (V/Vref − r₀)/(r₁ − r₀) between the nominal stops, without the meter; below 0 or above 100 it is beyond a stop (common practice, no source).
faults-formula-coil = A = Vb/R with the nominal battery; V across the coil = Vb R/(R + series); bridged turns take the same part of the ohms with them (Ohm’s law).
faults-formula-pressure = Unit believes: the pressure on the same straight line, however far out; a control unit that knows its limits takes it for a fault instead (common practice, no source).
faults-formula-sizes = Sizes: those that a workshop meets (common practice, no source).
judge-instruments = Instruments: { $meter }; { $thermometer }
judge-instruments-of = those of { $id }
judge-none = none
run-no-sensor = no sensor is called `{ $id }`
run-no-sensor-near = no sensor is called `{ $id }`; did you mean `{ $near }`?
run-no-faults = nothing with a fault dictionary is called `{ $id }`
run-no-faults-near = nothing with a fault dictionary is called `{ $id }`; did you mean `{ $near }`?
run-faults-no-temperature = what `{ $id }` reads depends on its temperature: give it, such as `--at "31 °C"`
run-faults-place = `--place` is for sensors: `{ $id }` has one place
run-faults-position = `--position` is for actuators with a feedback potentiometer, and `{ $id }` is none
run-faults-pressure = `--pressure` is for pressure transducers, and `{ $id }` is none
run-faults-pressure-outside = { $at } lies beyond the line of `{ $id }`, { $low } to { $high }, and no clamp is given
run-faults-not-given = the faults of `{ $id }` cannot be computed: its { $what } is NOT GIVEN
run-faults-contacts = `{ $id }` has contacts and no feedback potentiometer: their faults stand below `bayleaf table { $id }`
run-faults-no-coil = `{ $id }` is a blower: it has no coil whose faults could be listed
run-no-instrument = no multimeter or thermometer is called `{ $id }`
run-no-instrument-near = no multimeter or thermometer is called `{ $id }`; did you mean `{ $near }`?
judge-circuit = circuit (resistor or reference)
judge-tolerance = tolerance
judge-circuit-tolerance = tolerance of a resistor, of the reference or of the meter's input
judge-good = good sensor
judge-reading = Reads { $value }, { $test }, sensor at { $at }.
judge-volts-at-unit = volts at the control unit's connector, mated, key on
judge-volts-at-sensor = volts at the sensor's plug, mated, key on
judge-volts-unplugged = volts at the sensor's plug, harness side (key off, unplug the sensor, key on)
judge-ohms-at-sensor = ohms at the sensor, unmated (key off; first prove 0 V)
judge-ohms-at-unit = ohms at the control unit's connector, harness side, sensor mated (key off, unplug the unit; first prove 0 V)
judge-pass = PASS: within its limits.
judge-fail = FAIL: outside its limits.
judge-undecided = UNDECIDED: too near a limit for these instruments.
judge-window = Limits of a good sensor in a good circuit: { $low } to { $high } { $unit }.
judge-guarded = A reading there can be trusted to ± { $doubt } { $unit } (k = 2): { $low } to { $high } { $unit } passes.{ $risk }
judge-simple = A reading there can be trusted to ± { $doubt } { $unit } (k = 2); the shop decides at the limits themselves.{ $risk }
judge-no-reading-passes = A reading there can be trusted to ± { $doubt } { $unit } (k = 2): with these instruments no reading can pass here.
judge-no-doubt = How far a reading can be trusted is NOT GIVEN: the meter's accuracy is missing.
judge-not-compared = Not compared, because their tolerance is NOT GIVEN: { $parts }.
judge-risk = { " " }Risk that the verdict is wrong: { $risk }.
judge-left-out = Not in ±, because NOT GIVEN: { $what }.
judge-source-thermometer = thermometer
judge-source-soak = soak
judge-source-leads = leads
judge-source-meter = meter
judge-service = Service limit ± { $limit }: { $low } to { $high } { $unit }; { $verdict }.
judge-service-pass = inside: the sensor does not explain a complaint
judge-service-fail = outside: this explains a complaint
judge-service-undecided = undecided
judge-believed = The control unit believes { $at }.
judge-believes-nothing = There is no temperature that the control unit could believe from this.
judge-causes = Single faults that explain the reading:
judge-no-cause = No single fault of the list explains the reading: look again, or suspect two at once.
judge-any-size = of any size
judge-up-to = up to { $high }
judge-from = { $low } or more
judge-between = { $low } to { $high }
judge-or-none = , or none at all
judge-expected = { "  " }{ $range }: { $who }
judge-next = Next: { $test }, at { $at }; it tells { $pairs } of { $of } pairs of suspects apart.
judge-next-reads = There the suspects read:
judge-next-pass = Next: nothing to mend. An intermittent fault passes here: record least and greatest while wires are moved, warmed and wetted.
judge-next-one-suspect = Next: one suspect only: confirm it by a second test (a known resistor in place of the sensor, or ice water) before anything is replaced.
judge-next-none-separates = Next: no single measurement tells these suspects apart; part by part: substitute the sensor by a resistor of the same ohms, then measure the wires end to end.
judge-next-nothing-explains = Next: repeat the reading; check meter, range, place and the temperature of the sensor.
judge-steps = The lead's own steps:
judge-remedy-soak = It would be decided ({ $verdict }) by letting sensor and thermometer settle to { $limit } of each other.
judge-remedy-thermometer = It would be decided ({ $verdict }) by a thermometer good to { $limit }.
judge-remedy-temperature = It would be decided ({ $verdict }) by repeating it at { $at }.
judge-remedy-at-sensor = It would be decided by measuring ohms at the sensor, unmated: { $verdict } there, if the sensor itself is as it looks from here.
judge-remedy-at-unit = It would be decided by measuring volts at the control unit, mated: { $verdict } there, if all is well between the two.
judge-remedy-meter = It would be decided ({ $verdict }) by a meter with { $part } % of this one's error.
judge-no-remedy = No single better instrument, temperature or place decides it: change two at once, or take it for a borderline part.
judge-would-pass = pass
judge-would-fail = fail
judge-pair-series = Two faults, sensor and wires: sensor off by { $shift } ({ $shift-low } to { $shift-high } %), in line { $sizes }: { $reason }.
judge-pair-leak = Two faults, sensor and leakage: sensor off by { $shift } ({ $shift-low } to { $shift-high } %), across it { $sizes }: { $reason }.
judge-pair-impossible = less than nothing
judge-reasonable = inside reason
judge-not-reasonable = not inside reason
judge-pairs-none = Neither pair is inside reason.
judge-pairs-one = The other pair is ruled out: no third temperature is needed.
judge-third = A third reading at { $at } tells which: { $series } with resistance in line, { $leak } with leakage.
judge-third-none = No third temperature within the sensor's range tells the two apart with these instruments.
judge-formula-doubt = ±: thermometer, soak, meter and leads as rectangular limits a/√3, combined by JCGM 100:2008, 5.1.2, k = 2; decided by JCGM 106:2012 (clauses from memory).
judge-formula-risk = Risk: the part of a normal distribution around the reading, with the standard uncertainty U/2, that lies on the other side of the limits (JCGM 106:2012, clause from memory).
judge-formula-next = Next: the first measurement in the order of effort (common practice, no source) that tells half as many pairs apart as the best; each suspect at the middle of its sizes, or at the worst where none at all would do; ranges over all tolerances, rounded outward.
judge-formula-pair = Two faults: x R(T₁) + s = R₁ and x R(T₂) + s = R₂, or 1/(x R) + 1/L = 1/R₁ and so on; inside reason is a sensor off by no more than 30 % (common practice, no source). The list of single faults is from the first reading alone.
judge-formula-cause = Sizes: a fault explains a reading where some good part in some good circuit with this fault would give it, within ±.
run-judge-no-rule = the shop has no rule to decide by; write `decision = "guarded"` or `decision = "simple"` into `[shop]`
run-judge-ohms-unplugged = ohms are read at the sensor or at the control unit; nothing is left to read at an unplugged harness
run-judge-not-given = a reading of `{ $id }` cannot be judged: its { $what } is NOT GIVEN
run-judge-no-number = this reading cannot be judged: it is no number that a meter shows
run-judge-second-unit = both readings must be volts, or both ohms
run-judge-second-outside = no sensor gives one of these readings: two readings say nothing together
run-judge-second-too-near = the two readings do not differ by more than their doubt: take the second one further from the first temperature
## Fits

fit-empty = the file has no line that names the units
fit-head = no columns of points are named by `{ $head }`
fit-columns-help = begin with a line such as `°C,kΩ`, `temperature °F;resistance Ω` or `°C,Ω,Ω,Ω` (min, nominal, max); units are °C, °F or K, and Ω or kΩ
fit-cells = { $found ->
    [one] a row of 1 cell
   *[other] a row of { $found } cells
} where the first line has { $wanted }
fit-cells-help = write numbers with a decimal point, and no separators between thousands
fit-rises = resistance rises from { $cold } °C to { $hot } °C
fit-rises-help = keep the points as a curve with model = "table"; platinum and silicon have models of their own
fit-few-points = No fit: { $needed } points are needed, at least.
fit-not-physical = No fit: a temperature or a resistance is that of no sensor.
fit-not-falling = No fit: the resistance does not fall from row to row.
fit-no-thermistor = No fit: the best coefficients are those of no thermistor over these temperatures.
fit-points = { $points ->
    [one] 1 point.
   *[other] { $points } points.
}
fit-minimised = Least squares of the residuals of 1/T in ln R, all points weighing the same. Residuals are formula minus table.
fit-no-suspect = No row looks mistyped.
fit-suspect-line = Mistyped? { $what }: { $near }; { $help }. The fits include this row.
fit-suspect-head = looks mistyped
fit-suspect = yes
fit-residuals = Residuals, formula minus table
fit-misses = misses the points by { $rms-k } K or { $rms-percent } % (root mean square), at most by { $largest-k } K or { $largest-percent } %
fit-exact = As many coefficients as points: no residual is left, which says nothing of how well the formula suits the part.
fit-spec-note = fitted to { $points } points; name their source
table-position = position
table-travel = travel %
table-contacts = contacts
table-formula-travel = V/Vref at a percent of travel between the stops, evenly: r₀ + travel × (r₁ − r₀); back: travel = (V/Vref − r₀)/(r₁ − r₀) (common practice, no source). Limits: both stops at one end of their windows.
table-formula-travel-loaded = V/Vref = (u + s/Rref)/(1 + s/Rref + s/Rgnd), s = Rcontact + S u (1 − u): S is the whole track with both ends, u the part of it from its low end to the wiper, Rcontact the contact of the wiper, Rref or Rgnd the load from the wiper to reference or ground, infinite where there is none (Kirchhoff’s laws; checked against a circuit simulator). The V/Vref of the stops are turned back to u, and u runs evenly with the travel between them. Limits: every corner of stops, track, load and contact.
table-formula-volts = V = Vref × V/Vref; limits with the reference’s tolerance, rounded inward.
table-formula-contacts = 1: contact closed, in the order { $names }.
table-formula-contacts-stuck = “Never closes” and “never opens”: the code of each position with that one digit held at 0, or 1, and the position that has the code which then results; – where none has.
table-formula-ladder = V/Vref = R/(R + Rp), R from pin to ground as the closed contacts leave it, Rp the pull-up (Kirchhoff’s laws; checked against a circuit simulator). Limits: every resistor at one end, the pull-up at the other, closed contacts from 0 Ω to their greatest.
table-formula-ladder-series = Contacts, from left to right in the column, count from 0: contact 0 leads from the pin to ground, contact k from behind the first k resistors of the chain; R is the chain up to the closed contact nearest to the pin, and with none closed the whole chain and its end, or open.
table-formula-ladder-parallel = Contacts, from left to right in the column, count from 0: each leads through its own resistor from pin to ground; 1/R is the sum over the closed ones.
table-formula-dirty = Dirty contact: the resistance k (m − g)/(o − m) in series with it that moves the nominal reading from g, as it is, to m, the least of the next higher window; o is the reading with the contact open, k the resistance of all that is in series with it (Kirchhoff’s laws, all else nominal).
table-formula-light-pull-up = V = Vref − I R, not below 0 V: more light, fewer volts (Kirchhoff’s voltage law); I = photocurrent × irradiance/rated irradiance (linear photodiode, common practice, no source). Limits: every corner, with the dark current from none to its greatest.
table-formula-light-load = V = I R, not above Vref: more light, more volts (Ohm’s law); I = photocurrent × irradiance/rated irradiance (linear photodiode, common practice, no source). Limits: every corner, with the dark current from none to its greatest.
table-formula-transducer = V/Vref on the straight line through the two points (arithmetic). Limits: ± accuracy × span of V/Vref; the reference’s tolerance is only in the volts. 1 psi = 6.894757 kPa, 1 bar = 100 kPa (definitions of the units).
table-note-moves = Moves: { $what }.
table-note-no-position = It reports no position: there is no reading of it to compute.
table-note-ends = 0 %: { $low }. 100 %: { $high }.
table-note-no-nominal = The stops are given as windows, without nominal values.
table-note-end-to-end = End to end, unmated: { $low } Ω to { $high } Ω, rounded inward.
table-note-illegal = No position has these codes: { $codes }.
table-note-stuck-open = { $contact } never closes (– is no position): { $misread }.
table-note-stuck-closed = { $contact } never opens (– is no position): { $misread }.
table-note-jump = From { $from } to { $to } { $count } contacts switch; for a moment { $codes } may be seen.
table-note-gap = Smallest gap between neighbouring windows: { $gap } % of the reference, between { $lower } and { $upper }.
table-note-overlap = No reading tells { $lower } from { $upper }.
table-note-dirty = A dirty contact at “{ $position }”: from { $ohms } Ω in contact { $contact } on it reads as “{ $into }”.
table-note-saturation = Full scale from { $nominal } W/m², at the earliest from { $earliest } W/m²: more light changes nothing.
table-note-saturation-nominal = Full scale from { $nominal } W/m²: more light changes nothing.
table-note-least-span = From covered to lit at least { $span }, under the light that the source of this value names; the table does not say which.
table-note-shop-light = No response under light-emitting diodes or fluorescent tubes is normal (common practice, no source).
table-note-absolute = Pressures are absolute.
table-note-gauge = Pressures are gauge: above the air around.
run-judge-beyond = a reading of `{ $id }` cannot be judged at this temperature: its tolerance reaches beyond the end of its table
run-judge-no-instrument = a guarded decision needs to know how far the readings can be trusted, and this is NOT GIVEN: { $what }; name instruments with --instrument
run-judge-high-voltage = STOP: more than 60 V DC is high voltage; it is out of scope here and for qualified persons only
run-judge-too-many-ohms = no workshop meter shows so many ohms; write OL for an open line
run-instrument-twice = `{ $id }` is a second instrument of its kind; name one multimeter and one thermometer
run-judge-no-sensor = `{ $id }` is no temperature sensor, and only their readings are judged so far; `bayleaf faults { $id }` lists what its faults read

## Checklists: what is wrong with them

rule-check-airbag = step `{ $step }` is at airbag wiring
rule-check-airbag-help = leave it out: airbag and belt-tensioner wiring is not probed, not ohmed, not unplugged
wanted-no-airbag-step = expected no work at airbag wiring
rule-check-costly-first = step `{ $step }` ({ $cost }) stands before `{ $next }` ({ $cheaper })
rule-check-costly-first-help = ask the cheaper one first, or say `because = "…"` why not
wanted-cheap-first = expected the cheaper step first
label-cheaper = the next step costs less
rule-check-start = there is no step `{ $name }` to begin with
rule-check-dangling = exit to `{ $name }` leads nowhere
rule-check-ending-unnamed = ending `{ $ending }` does not say which part or harness
rule-check-ending-unnamed-help = add `what = "…"`
wanted-what = expected `what` beside it
rule-check-exits = step `{ $step }` has { $count ->
        [0] no exit
        [one] one exit
       *[other] { $count } exits
    }
rule-check-exits-help = give two of `yes`, `no`, `undecided`, or all three, each the name of a step or an ending
wanted-exits = expected two or three exits
rule-check-no-vehicle = checklist `{ $id }` is for no vehicle: none that it names has system `{ $system }`
rule-check-loop = the answers lead in a circle: { $way }
rule-check-loop-help = lead this exit to a step that comes later, or to an ending
wanted-onward = expected a way onward
label-loop-begins = the circle begins here
rule-check-expects-nothing = step `{ $step }` does not say what answers yes
rule-check-expects-twice = step `{ $step }` says twice what answers yes
wanted-expect = expected either `expect` or `test`
rule-check-no-number = step `{ $step }` reads { $unit } and expects no number: `{ $expect }`
wanted-limit = expected a window or a limit, such as `11.5 V or more`
label-unit = a reading is wanted here
rule-check-same-name = `{ $name }` is a step and an ending
wanted-other-name-here = expected another name
label-step-of-name = the step of this name
rule-check-questions = step `{ $step }` asks more than one question
rule-check-no-question = step `{ $step }` asks no question
wanted-question = expected one question with a question mark at its end
rule-check-opens = step `{ $step }` of an electrical paper opens the refrigerant circuit: `{ $said }`
rule-check-opens-help = end at `refer to licensed refrigerant work`, or make it a paper of `work = "refrigerant"`
wanted-closed = expected a circuit that stays closed
label-work = an electrical paper
rule-check-nowhere = step `{ $step }` does not say where
rule-check-nowhere-help = add `pins = ["C2/7", "C2/14"]`, or `where = "…"`
wanted-where = expected a place
rule-check-no-view = step `{ $step }` probes connector `{ $connector }`, which does not say how it is seen
wanted-seen = expected a connector with `view` and `side`
rule-check-replacing = step `{ $step }` replaces a part to test it: `{ $said }`
rule-check-replacing-help = measure what tells the part from its wires; replacing belongs into an ending
wanted-measurement = expected a measurement
rule-check-same-exit = every answer to step `{ $step }` leads to `{ $to }`
rule-check-same-exit-help = leave the step out, or lead one answer elsewhere
wanted-other-place = expected another place
label-first-exit = as here
rule-check-unreachable = no answer leads to step `{ $name }`
wanted-reached-step = expected an exit or `start` that leads here
rule-check-unreached-ending = no answer leads to ending `{ $name }`
wanted-reached-ending = expected an exit that leads here
label-start = it begins here
rule-check-deep = checklist `{ $id }` is { $found } boxes deep
rule-check-wide = checklist `{ $id }` is { $found } boxes wide
rule-check-split-help = split it into two, the first ending at the second
wanted-map-fits = expected at most { $most } on the page of its map

check-cost-look = look
check-cost-measure = measure
check-cost-unplug = unplug
check-cost-dismantle = dismantle
## Importing a table

import-how = From { $file }: { $rows ->
    [one] one row
   *[other] { $rows } rows
}, cells apart by { $separator }, { $decimal }.
import-semicolon = semicolons
import-tab = tabs
import-bar = bars
import-comma = commas
import-decimal-point = decimal point
import-decimal-comma = decimal comma
import-title = Above the heads: { $title }
import-column = Column { $number } "{ $head }": { $used }, { $unit }
import-temperature = temperature
import-low = least resistance
import-nominal = nominal resistance
import-high = greatest resistance
import-left-out = left out
import-empty = empty
import-skipped = { $lines ->
    [one] One line holds no point and was left out.
   *[other] { $lines } lines hold no point and were left out.
}
import-no-cells = the file has no columns
import-cells-help = cells are apart by semicolons, tabs, bars or commas, a row to a line
import-no-rows = no line holds two numbers
import-rows-help = a row is a temperature and its resistance; a quote that is never closed hides all lines behind it
import-no-temperature = no column is known as a temperature
import-temperature-help = name its unit in the head, such as `t (°C)`, or give it with --temperature
import-no-resistance = the columns are not one resistance, nor minimum, nominal and maximum
import-resistance-help = heads such as `R (kΩ)`, or `min kΩ`, `nom kΩ`, `max kΩ`; give a unit that the file lacks with --resistance, take other columns of ohms out
import-two-units = resistances in { $one } and in { $two }
import-unit-of-curve = a curve's resistances are in Ω or kΩ, these are in { $unit }
import-units-help = bring all of them to one unit, Ω or kΩ, and one temperature scale
import-either = `{ $cell }` may be thousands or decimals
import-either-help = say which with --decimal comma or --decimal point
import-mixed = `{ $cell }` has a decimal comma, other numbers a decimal point
import-mixed-help = bring all of them to one, or say which one with --decimal
import-no-point = this line has no temperature with its resistance
import-no-number = `{ $cell }` is no number that can be read
import-number-help = thousands are apart by the other mark, by spaces or by apostrophes, in threes
import-other-unit = `{ $cell }` is not in { $unit } as its column is
label-left-out = left out
label-decimal-comma = a decimal comma
label-decimal-point = a decimal point
wanted-cells = expected cells of numbers
wanted-temperature-column = expected a column in °C, °F or K
wanted-resistance-columns = expected one column in Ω or kΩ, or three
wanted-one-unit = expected the same unit in every row
wanted-curve-unit = expected Ω or kΩ
wanted-decimal-told = either can be meant
wanted-plain-number = expected a number

## Checklists and symptom indexes on paper

doc-checklist = Checklist
doc-symptoms = Symptom index
fact-expect = expected
fact-step-time = time
fact-pins = pins
fact-first-tests = first tests
check-title = { $title } · { $system }
check-only = only { $vehicles }
check-intro = { $steps ->
        [one] One step
       *[other] { $steps } steps
    }, { $longest } on the longest way. Begin at step 1 and keep a finger on it. Do what it says, write the reading down, tick one answer, go where it points. A letter in black is an ending: the work is done or handed over there. Two answers fit, or the reading moves: that is undecided; where undecided has no box, ask before going on.
check-box-vehicle = Vehicle
check-box-reached = Ending reached
check-card = card { $card }
# A mated plug is probed from its wires, but drawn from its face.
check-mirrored = { $view }; mirrored at the wires
check-cost = { $cost } · { $time } [{ $mark }]
check-do = do
check-where = where
check-pins = pins
check-state = state
check-expect = expect
check-at = { $window } at { $temperature }
check-figures = figures
check-yes = yes
check-no = no
check-undecided = undecided
check-undecided-short = ?
check-go = go to { $mark }
check-go-end = end { $mark }
check-start = start here
check-from = from { $steps }
check-ending-part = part
check-ending-harness = harness
check-ending-unit = control unit
check-ending-refer = refer to licensed refrigerant work
check-ending-refer-short = refer, licensed
check-ending-no-fault = no fault found
check-map = Map
check-map-key = White boxes are steps, black letters are endings. ? is undecided. The thick line is the way that takes longest.
check-longest = Longest way: { $way }, { $time }
check-index-title = Symptoms · { $system }
check-index-intro = Find the complaint as the driver puts it. Where a checklist is named, take it; its first steps are listed here as far as the answers are good. Where none is named, test in this order, the cheapest first.
check-no-checklist = no checklist
check-at-most = at most { $time }

paper-symptom = complaint
paper-endings = Endings
paper-tick = reached
paper-stop = STOP
paper-because = why now
paper-complaint = Complaint
paper-checklist = Checklist
paper-first-tests = First tests, in this order
paper-cards = Cards

# Proof sheets

doc-proof = Proof sheet
proof-title = Proof: { $title }
proof-of = Of card { $card } “{ $title }”, whose content has the fingerprint { $fingerprint }. A card with another fingerprint is not proved by this sheet.
proof-counted = { $computed } numbers of the card are computed; each stands below with the value it was rounded from ({ $digits } significant digits). { $given } are exact, or stand on the card as the specs or its fixed words have them. Limits are rounded inward: up at a lower limit, down at an upper one.
proof-nothing = No number of this card is computed.
proof-own = own rule
proof-nearest = nearest
proof-up = up
proof-down = down
proof-part-key-figures = Figures in large type
proof-part-table = Main table
proof-part-readings = What a reading means
proof-part-faults = Faults
proof-part-example = Worked example
proof-part-drawings = Drawings
proof-part-given = Given data
proof-part-next = What to do next
proof-part-drops = Drops
proof-part-pins = Pins
proof-part-fluids = Refrigerant
proof-part-vents = Air at the outlets
proof-part-measuring = How to measure
proof-part-signature = Faults over temperature
proof-part-motion = Motion
proof-part-positions = Positions
proof-part-conditions = Conditions
proof-part-timeline = States over time
proof-part-notes = Notes
proof-part-coil = Coil
proof-part-modes = Modes
proof-part-run = Shortest run
proof-part-tests = Tests
proof-part-instruments = Instruments
proof-part-questions = Questions
paper-formulas = Formulas, with their sources
paper-proof-inputs = Values of the specs that the figures rest on
paper-key = key in the specs
paper-printed = printed
paper-unrounded = unrounded
paper-rounded = rounded
paper-exact = Numbers that are exact as printed
paper-as-given = Numbers that stand as they were given
paper-signed = Checked against the sources, technical lead
paper-signed-name = name
paper-signed-date = date
paper-signed-signature = signature

# Index of all documents

doc-index = Index of documents
index-title = All documents: { $shop }
index-applies = every system and vehicle of the set
index-intro = A paper in the bay is in force only if its code is the one that stands here. Revision and fingerprint are those typed on each page.
index-id = id
index-kind = kind
index-name = title
index-system = system
index-page-count = pages
index-issue = revision, fingerprint
index-not-given = NOT GIVEN
index-no-source = no source
index-uncounted = –
index-total = { $documents ->
    [one] 1 document
   *[other] { $documents } documents
}
index-pages = { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}
index-pages-uncounted = pages are counted when all is printed
index-lacking = { $not-given } values NOT GIVEN and { $no-source } without a source in the whole set, each counted once however many papers show it

rule-size-not-offered = { $kind }: not laid out for `{ $size }`
run-size-not-offered = { $kind }: not laid out for `{ $size }`; laid out for: { $sizes }
run-fits = { $reason }; what fits: { $fits }
run-fits-nothing = { $reason }; no other size and no wider step fits
run-fits-step = a step of { $step }
run-fits-two-sides = two sides

## What an issued PDF carries inside

enclosed-figures = Figures of { $id } as printed, and what decided them
enclosed-specs = Specs that this paper was made from
enclosed-huge = larger than { $most } MiB: no issued paper is
enclosed-unread = cannot be read: { $reason }
enclosed-no-pdf = not a PDF file
enclosed-damaged = damaged: what it carries inside cannot be read
enclosed-foreign = a PDF of another program: it carries no figures of an issue
enclosed-draft = a draft: only an issued paper carries its specs and figures
enclosed-newer = its record has form { $format }, this version knows { $known }: use a newer version
enclosed-findings = today’s rules find errors in its specs, the first: { $first }
enclosed-no-document = its specs make no { $id }
enclosed-paper = { $id } r{ $revision } of { $date } by { $by }, made with { $tool }
enclosed-same = { $tool } computes the same figures from its specs
enclosed-differ = { $tool } computes other figures from its specs: { $figures ->
    [one] one text
   *[other] { $figures } texts
}
enclosed-figure = { $place }: printed { $printed }, today { $today }
enclosed-digits = by { $digits } in the last digit
enclosed-wording = { $texts ->
    [one] one text
   *[other] { $texts } texts
} without figures read otherwise: words, not values
enclosed-refused = { $path }: { $why }
# The register.
register-newer = this register has format { $format }: a newer bayleaf wrote it
register-newer-help = use that version, or a newer one; nothing of the file was read, and nothing was changed
wanted-register-format = expected a format up to { $known }
register-no-number = `{ $key }` is { $written }
register-no-date = `{ $key }` is no date
register-no-id = `{ $id }` is no document's id
wanted-document-id = expected the id of a card, or two ids with a full stop between, such as CUR-SENSORS.AMB-11
register-no-pull-list = `{ $number }` is no number of a pull list
wanted-pull-list = expected a day and a number, such as 2026-11-28/1
wanted-date = expected a day, such as 2026-11-28
register-conflict = a merge left this register unsettled
register-conflict-help = keep the entries of both sides and delete the lines with the marks; what then stands there twice is found
wanted-register-entries = expected entries, and no marks of a merge
register-date-back = { $id } was issued before the revision before it
label-register-before = the revision before it
register-withdrawn-twice = { $id } is withdrawn twice
register-issued-twice = { $id } has two revisions { $revision }
register-twice-help = two people wrote it: find out which of the two papers is in use, delete the other's entry, and issue anew if both hang somewhere
register-gap = { $id } has a revision { $number }, and not the one before
register-gap-help = an entry was deleted or its number changed: take it back from version control
wanted-revision = expected revision { $number }
register-not-issued = { $id } has no revision { $revision }
wanted-revision-to = expected 1 to { $newest }
wanted-issued-id = expected the id of a document that was issued
register-date-before = this is before what it follows
wanted-not-before = expected { $date } or later

## The register's commands

status-new = new
status-changed = changed
status-gone = no longer in the set, to be withdrawn
status-layout = layout only: says the same and looks otherwise
status-withdrawn = withdrawn
status-same = as issued
status-count = { $state }: { $count }
status-lost = its last issue is not in the folder of issued papers: which figures changed cannot be said
status-moved = { $place }: { $old } → { $new }
status-held = held: { $holder } (r{ $revision })
status-vehicles = { $count ->
    [one] One vehicle has
   *[other] { $count } vehicles have
} sheets with old figures:
issue-nothing = Nothing is due: every paper is as issued.
issue-none = nothing was issued
issue-gone = { $id } is not in the set any more: withdraw it
issue-same-name = { $id } and { $other }, which was issued before, would be one file on some disks: give it another id
issue-done = { $count ->
    [one] One paper
   *[other] { $count } papers
} issued, written down in { $path }
issue-dry = { $count ->
    [one] One paper
   *[other] { $count } papers
} would be issued; nothing was written
withdraw-none = nothing was withdrawn
withdraw-again = { $id } is withdrawn since { $date }
withdraw-dry = { $copies ->
    [one] One copy
   *[other] { $copies } copies
} would be taken down; nothing was written
issue-line = take down { $id } r{ $revision }: { $place }
register-no-document = nothing was issued under the id { $id }
register-no-document-near = nothing was issued under the id { $id }; did you mean { $near }?
holders-added = now held: { $copy }
holders-again = it stands in the register already: { $copy }
holders-moved = moved: { $copy }, now { $to }
holders-back = taken down: { $copy }
holders-nothing-back = no such copy is held by anybody
holders-several = { $holder } holds several copies of { $id }: say which with --place
holders-none = { $holder } holds no copy of { $id }
holders-none-near = { $holder } holds no copy of { $id }; did you mean { $near }?
holders-withdrawn = { $id } is withdrawn: no copy of it should hang anywhere
holders-old = out of date, r{ $revision } is valid
holders-of-withdrawn = withdrawn
holders-since = { $copy }, since { $date }
holders-nobody = No copy is held by anybody.
verdict-current = { $id } r{ $revision } of { $date } by { $by } is the valid one
verdict-superseded = { $id } r{ $revision } of { $date } by { $by } is superseded by r{ $newest } since { $since }, by { $who }: { $why }
verdict-withdrawn = { $id } r{ $revision } of { $date } by { $by } is withdrawn since { $since }, by { $who }: { $why }
verdict-other = this is not { $id } r{ $revision } of { $date }, which has the code { $code }: misread, or not from this register
verdict-draft = this is a draft, which nobody issued
verdict-draft-same = this is a draft, which nobody issued; it says the same as { $id } r{ $revision } of { $date }
verdict-unknown = { $code } is unknown: no paper with this code was issued from this register
run-register-demo = the built-in demo set cannot be issued: begin a set of your own with `bayleaf new specs`
run-register-locked = the register is in use by { $who } (process { $process }) since { $since }, for { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
}: wait until that is done, and run this again
run-register-locked-unknown = somebody else uses the register: wait until that is done, and run this again
run-clock-back = this machine's clock says { $today }, and the register has an entry of { $latest }: set the clock, or give the date with --date
run-before-its-time = { $date } is before { $latest }, the last entry of { $id } in the register: give a later --date
run-link-outside = { $path } is a link that leads outside the folder of output, to { $to }: replace it by a folder, or name that one with --out
run-stray = { $path } was left by an act that did not come to its end: it was never valid, and the next act removes it
run-lost = { $count ->
    [one] One issued paper is
   *[other] { $count } issued papers are
} missing from { $path } ({ $names }): put back what a copy still has; of a paper that is lost nobody can say what changed since
issue-pull = { $copies ->
    [one] One copy
   *[other] { $copies } copies
} to take down: { $path }
