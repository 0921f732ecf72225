//! Mode, request and air cards at the ends of what a lead may write: hardly anything, and a lot.

use std::fmt::Write;

use bayleaf::diag::Sources;

const LONG: &str = "Left-hand patient compartment auxiliary outlet door of the rear unit";

/// Six cards: of each kind one with hardly anything given, one with a lot of everything.
pub(crate) fn extreme() -> Sources {
    let mut spec = format!(
        r#"
[shop]
title = "{LONG} workshop"
paper = "letter"
elevation = "340 m"

[system.bare]
title = "Bare"

[system.gull]
title = "Gull with rear auxiliary unit"
applicability = {{ value = "{LONG}", source = "{LONG}" }}

[control.one]
title = "Blower"
system = "bare"
values = ["off", "on"]

[mode.one]
title = "Off"
system = "bare"
forces = {{ one = "off" }}

[panel.bare]
celsius = "16 °C to 30 °C"
title = "Panel"
system = "bare"

[card.BARE-MODES]
panel = "bare"

[refrigerant.bare]
title = "Bare"
system = "bare"
fluid = "R-134a"
range = "0 °C to 5 °C"

[card.BARE-AIR]
air = "bare"

[request.bare]
title = "Request"
system = "bare"

[[request.bare.condition]]
title = "Warm"
effect = "permits"
reading = "air"
quantity = "temperature"
side = "above"

[card.BARE-REQUEST]
request = "bare"

[panel.gull]
celsius = "16 °C to 30 °C"
title = "{LONG}"
system = "gull"

[card.LONG-MODES]
panel = "gull"

[card.LONG-REQUEST]
request = "gull"

[card.LONG-AIR]
air = "gull"

[refrigerant.long]
title = "{LONG}"
system = "gull"
fluid = "R-744"
superheat = "4 K to 9 K"
subcooling = "3 K to 10 K"
step = "1 K"

[vent.long]
title = "{LONG}"
system = "gull"
duty = "26 kJ/kg ± 12 %"
outlet_humidity = "95 %"
ambient = "10 °C to 45 °C"
ambient_step = "1 K"
humidity = "20 % to 80 %"
humidity_step = "10 %"
position = [{{ name = "{LONG}", outside = "100 %" }}]

[request.gull]
title = "{LONG}"
system = "gull"
hold = "2 s"
reads = {{ absent = "{LONG}", waiting = "{LONG}", granted = "{LONG}" }}
scenario = {{ title = "{LONG}", length = "5000 s", requested = ["1 s to 4000 s", "4001 s to 4999 s"] }}
"#
    );
    let line = "a text takes any line";
    for number in 0..14 {
        writeln!(
            spec,
            "[[request.gull.condition]]\ntitle = \"{LONG} {number}\"\neffect = \"inhibits\"\n\
             reading = \"{LONG} {number}, live data\"\nquantity = \"temperature\"\nside = \"below\"\n\
             threshold = \"-38.25 °C\"\nrelease = \"-36.75 °C\"\ndelay = \"12.5 s\"\nrelease_delay = \"12.5 s\"\n\
             trace = [[\"0 s\", \"20 °C\"], [\"{} s\", \"-40 °C\"], [\"4500 s\", \"20 °C\"]]",
            100 * (number + 1)
        )
        .expect(line);
        writeln!(
            spec,
            "[control.long-{number}]\ntitle = \"{LONG} {number}\"\nsystem = \"gull\"\n\
             values = [\"fresh\", \"partly recirculating through the rear unit\"]\nobserve = \"{LONG}\""
        )
        .expect(line);
    }
    for number in 0..18 {
        let free: Vec<String> =
            (0..14).filter(|control| *control != number % 14).map(|c| format!("\"long-{c}\"")).collect();
        writeln!(
            spec,
            "[mode.long-{number}]\ntitle = \"{LONG} {number}\"\nsystem = \"gull\"\ntime = \"12.5 s\"\n\
             forces = {{ long-{} = \"{}\" }}\nfree = [{}]",
            number % 14,
            if number < 14 { "fresh" } else { "partly recirculating through the rear unit" },
            free.join(", ")
        )
        .expect(line);
    }
    let mut sources = Sources::default();
    sources.add("modes.toml".to_owned(), spec);
    sources
}
