//! Moist air: every description of a state leads back to it; nothing is ever NaN.

use bayleaf::physics::air::intake::{Intake, LEAST_DIFFERENCE, mix};
use bayleaf::physics::air::vent::{Cooling, Dripping, Inlet, dripping};
use bayleaf::physics::air::{HumidityRatio, MoistAir, dry_bulb, saturation};
use bayleaf::physics::atmosphere::{ELEVATIONS, SEA_LEVEL, Site};
use bayleaf::quantity::{
    Interval, Length, Pressure, Ratio, SpecificEnthalpy, Temperature, TemperatureDifference, Toleranced,
};
use proptest::num::f64::ANY;
use proptest::prelude::*;

use crate::every_run;

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees)
}

/// The pressures of the elevations where people drive.
fn sites() -> impl Strategy<Value = Pressure> {
    (-400.0..5_000.0_f64)
        .prop_map(|metres| Site::at(Length::from_metres(metres)).expect("on the ground").pressure())
}

fn airs() -> impl Strategy<Value = MoistAir> {
    (-40.0..60.0_f64, 0.001..1.0_f64, sites()).prop_map(|(at, humidity, pressure)| {
        MoistAir::of_relative_humidity(celsius(at), Ratio::new(humidity), pressure).expect("such air exists")
    })
}

fn water(air: &MoistAir) -> f64 {
    air.humidity_ratio().kilograms_per_kilogram()
}

fn duty(kilojoules: f64, part: f64) -> Toleranced<SpecificEnthalpy> {
    let joules = |factor: f64| SpecificEnthalpy::from_joules_per_kilogram(1e3 * kilojoules * factor);
    let limits = Interval { low: joules(1.0 - part), high: joules(1.0 + part) };
    Toleranced { nominal: joules(1.0), limits: Some(limits) }
}

proptest! {
    #![proptest_config(every_run())]

    #[test]
    fn every_description_leads_back(air in airs()) {
        let (at, pressure) = (air.dry_bulb(), air.pressure());
        let same = |other: MoistAir| (water(&other) / water(&air) - 1.0).abs() < 1e-9;
        let humidity = air.relative_humidity().expect("it exists");
        prop_assert!(same(MoistAir::of_relative_humidity(at, humidity, pressure).expect("it exists")));
        let dew = air.dew_point().expect("there is water");
        prop_assert!(dew.celsius() <= at.celsius() + 1e-9);
        prop_assert!(same(MoistAir::of_dew_point(at, dew, pressure).expect("it exists")));
        let wet = air.wet_bulb().expect("it exists");
        // Over ice (below 0 °C) the wet bulb may lie a little under a dew point near it.
        prop_assert!(wet <= at && wet.celsius() >= dew.celsius() - 1e-6);
        let back = MoistAir::of_wet_bulb(at, wet, pressure).expect("it exists");
        prop_assert!((water(&back) - water(&air)).abs() < 1e-12 + 1e-9 * water(&air));
        let warm = dry_bulb(air.enthalpy(), air.humidity_ratio()).expect("it exists");
        prop_assert!((warm.celsius() - at.celsius()).abs() < 1e-9);
    }

    #[test]
    fn saturation_rises_and_comes_back(at in -100.0..200.0_f64, step in 1e-6..1.0_f64) {
        let pressure = |degrees: f64| saturation::pressure(celsius(degrees)).map(Pressure::pascals);
        let here = pressure(at).expect("inside the range");
        if let Ok(above) = pressure(at + step) {
            prop_assert!(above > here, "{at} + {step}");
        }
        let back = saturation::temperature(Pressure::from_pascals(here)).expect("it was computed");
        prop_assert!((back.celsius() - at).abs() < 1e-9, "{back}");
    }

    #[test]
    fn ice_and_water_meet_at_the_triple_point(step in 1e-12..1e-5_f64) {
        let pressure = |degrees: f64| saturation::pressure(celsius(degrees)).expect("inside").pascals();
        let (ice, water) = (pressure(0.01 - step), pressure(0.01 + step));
        prop_assert!(ice < water && water - ice < 1e-4 * water, "{ice} {water}");
        // A pressure between the two formulas still has its dew point.
        let between = saturation::temperature(Pressure::from_pascals(0.5 * (ice + water))).expect("inside");
        prop_assert!((between.celsius() - 0.01).abs() <= 2.0 * step + 1e-9);
    }

    #[test]
    fn air_thins_with_height(low in -5_000.0..11_000.0_f64, step in 0.1..500.0_f64) {
        let site = |metres: f64| Site::at(Length::from_metres(metres));
        let here = site(low).expect("inside the range");
        match site(low + step) {
            Ok(above) => prop_assert!(above.pressure() < here.pressure()),
            Err(_) => prop_assert!(low + step > ELEVATIONS.high.metres()),
        }
        let gauge = here.gauge(SEA_LEVEL);
        let back = here.absolute(gauge).expect("above vacuum").pascals();
        prop_assert!((back - SEA_LEVEL.pascals()).abs() < 1e-9 * SEA_LEVEL.pascals());
    }

    #[test]
    fn a_mixture_lies_between(
        outside in airs(), cabin_at in -40.0..60.0_f64, cabin_humidity in 0.001..1.0_f64, share in 0.0..=1.0_f64,
    ) {
        let cabin =
            MoistAir::of_relative_humidity(celsius(cabin_at), Ratio::new(cabin_humidity), outside.pressure());
        let cabin = cabin.expect("such air exists");
        let mixed = mix(&outside, &cabin, Ratio::new(share)).expect("both exist");
        let (a, b) = (water(&outside), water(&cabin));
        let inside = |value: f64, a: f64, b: f64| a.min(b) - 1e-9 <= value && value <= a.max(b) + 1e-9;
        prop_assert!(inside(mixed.water.kilograms_per_kilogram(), a, b));
        prop_assert!(inside(mixed.dry_bulb.celsius(), outside.dry_bulb().celsius(), cabin_at));
        // Either air alone is no fog.
        prop_assert!(!mix(&outside, &cabin, Ratio::new(1.0)).expect("it exists").fog());
        prop_assert!(!mix(&outside, &cabin, Ratio::new(0.0)).expect("it exists").fog());
    }

    #[test]
    fn the_vent_window_holds_every_true_outlet(
        at in 10.0..45.0_f64, humidity in 0.05..0.9_f64, pressure in sites(), kilojoules in 5.0..35.0_f64,
        shares in [-1.0..=1.0_f64, -1.0..=1.0_f64, -1.0..=1.0_f64], outlet in 0.9..=1.0_f64,
    ) {
        let cooling = Cooling { duty: duty(kilojoules, 0.1), outlet_humidity: Ratio::new(outlet) };
        let inlet = Inlet {
            dry_bulb: celsius(at),
            humidity: Ratio::new(humidity),
            thermometer: TemperatureDifference::from_kelvins(0.5),
            hygrometer: Ratio::new(0.03),
        };
        // A duty that no cabin air can give is refused; that is not this test.
        let corners = inlet.corners(pressure).expect("such air exists");
        let Ok(window) = cooling.window(&corners) else { return Ok(()) };
        let window = window.expect("the duty has a tolerance");
        prop_assert!(window.low <= window.nominal && window.nominal <= window.high);
        prop_assert!(window.high.celsius() <= at + 0.5);
        let [dt, dh, dq] = shares;
        let truth = MoistAir::of_relative_humidity(
            celsius(at + 0.5 * dt), Ratio::new((humidity + 0.03 * dh).clamp(0.0, 1.0)), pressure,
        ).expect("such air exists");
        let real = Cooling { duty: duty(kilojoules * (1.0 + 0.1 * dq), 0.0), ..cooling };
        let leaving = real.outlet(&truth).expect("between two corners that exist").air.dry_bulb().celsius();
        let (low, high) = (window.low.celsius(), window.high.celsius());
        prop_assert!(low - 1e-9 <= leaving && leaving <= high + 1e-9, "{low} {leaving} {high}");
    }

    #[test]
    fn more_duty_is_colder_and_damper_air_is_warmer(
        at in 15.0..45.0_f64, humidity in 0.05..0.85_f64, kilojoules in 5.0..25.0_f64,
    ) {
        let air = |part: f64| MoistAir::of_relative_humidity(celsius(at), Ratio::new(part), SEA_LEVEL);
        let leaving = |part: f64, kilojoules: f64| {
            let cooling = Cooling { duty: duty(kilojoules, 0.0), outlet_humidity: Ratio::new(0.95) };
            cooling.outlet(&air(part)?)
        };
        let outlet = leaving(humidity, kilojoules).expect("such air exists");
        prop_assert!(outlet.air.dry_bulb().celsius() < at);
        prop_assert!(leaving(humidity, kilojoules + 1.0).expect("exists").air.dry_bulb() < outlet.air.dry_bulb());
        prop_assert!(leaving(humidity + 0.05, kilojoules).expect("exists").air.dry_bulb() > outlet.air.dry_bulb());
        // Energy is kept, and water only settles.
        let before = air(humidity).expect("exists");
        let taken = before.enthalpy().joules_per_kilogram() - outlet.air.enthalpy().joules_per_kilogram();
        prop_assert!((taken - 1e3 * kilojoules).abs() < 1e-3);
        let settled = outlet.condensed.kilograms_per_kilogram();
        prop_assert!(settled >= 0.0 && (water(&before) - water(&outlet.air) - settled).abs() < 1e-12);
    }

    #[test]
    fn an_evaporator_drips_below_the_dew_point(
        at in 15.0..45.0_f64, humidity in 0.05..0.95_f64, evaporator in -5.0..20.0_f64,
    ) {
        let inlet = Inlet {
            dry_bulb: celsius(at),
            humidity: Ratio::new(humidity),
            thermometer: TemperatureDifference::from_kelvins(0.0),
            hygrometer: Ratio::new(0.0),
        };
        let air = inlet.corners(SEA_LEVEL).expect("such air exists");
        let dew = air.nominal.dew_point().expect("there is water").celsius();
        let fins = Interval { low: celsius(evaporator), high: celsius(evaporator) };
        let expected = if dew > evaporator { Dripping::Yes } else { Dripping::No };
        prop_assert_eq!(dripping(&air, fins).expect("it exists"), expected);
    }

    #[test]
    fn a_share_is_wider_where_airs_are_nearer(
        share in 0.0..=1.0_f64, span in 5.5..40.0_f64, sign in prop::bool::ANY,
    ) {
        let intake = |span: f64| {
            let span = if sign { span } else { -span };
            let readings = Intake {
                mixed: celsius(20.0 + share * span),
                outside: celsius(20.0 + span),
                recirculated: celsius(20.0),
                thermometer: TemperatureDifference::from_kelvins(0.5),
            };
            readings.fresh_air(LEAST_DIFFERENCE).expect("far enough apart")
        };
        let (near, far) = (intake(span), intake(span + 1.0));
        prop_assert!((near.share.part() - share).abs() < 1e-9);
        prop_assert!(far.expanded < near.expanded && near.explains(Ratio::new(share)));
    }

    #[test]
    fn no_number_breaks_it(a in ANY, b in ANY, c in ANY, d in ANY) {
        let finite = |value: f64| value.is_finite();
        if let Ok(site) = Site::at(Length::from_metres(a)) {
            prop_assert!(finite(site.pressure().pascals()));
        }
        let states = [
            MoistAir::of_relative_humidity(celsius(a), Ratio::new(b), Pressure::from_pascals(c)),
            MoistAir::of_relative_humidity(celsius(a % 200.0), Ratio::new(b), SEA_LEVEL),
            MoistAir::of_dew_point(celsius(a % 90.0), celsius(b % 90.0), SEA_LEVEL),
            MoistAir::of_wet_bulb(celsius(a % 90.0), celsius(b % 90.0), SEA_LEVEL),
            MoistAir::of_humidity_ratio(
                celsius(a % 90.0), HumidityRatio::from_kilograms_per_kilogram(b), SEA_LEVEL,
            ),
        ];
        for air in states.into_iter().flatten() {
            prop_assert!(finite(water(&air)) && finite(air.enthalpy().joules_per_kilogram()));
            prop_assert!(finite(air.specific_volume().cubic_metres_per_kilogram()));
            for at in [air.dew_point(), air.wet_bulb()].into_iter().flatten() {
                prop_assert!(finite(at.celsius()));
            }
            let cooling = Cooling { duty: duty(c, 0.1), outlet_humidity: Ratio::new(d) };
            if let Ok(outlet) = cooling.outlet(&air) {
                prop_assert!(finite(outlet.air.dry_bulb().celsius()));
            }
        }
        let intake = Intake {
            mixed: celsius(a),
            outside: celsius(b),
            recirculated: celsius(c),
            thermometer: TemperatureDifference::from_kelvins(d),
        };
        if let Ok(fresh) = intake.fresh_air(LEAST_DIFFERENCE) {
            prop_assert!(finite(fresh.share.part()) && finite(fresh.expanded.part()), "{fresh:?}");
        }
    }
}
