//! Saturation rises, comes back, and is refused where there is none.

use bayleaf::physics::refrigerant::reading::{Limits, Rest};
use bayleaf::physics::refrigerant::{Refrigerant, RefrigerantError};
use bayleaf::quantity::{Pressure, Temperature, TemperatureDifference};
use proptest::num::f64::ANY;
use proptest::prelude::*;

use crate::every_run;

fn fluids() -> impl Strategy<Value = Refrigerant> {
    prop::sample::select(Refrigerant::ALL.to_vec())
}

/// A share of the range, from its low end to its high one.
fn inside(fluid: Refrigerant, share: f64) -> Temperature {
    let range = fluid.range();
    let (low, high) = (range.low.celsius(), range.high.celsius());
    Temperature::from_celsius((low + share * (high - low)).clamp(low, high))
}

fn limits(gauge: f64, air: f64, kelvins: f64) -> Limits {
    Limits {
        gauge: Pressure::from_pascals(gauge),
        air: Pressure::from_pascals(air),
        thermometer: TemperatureDifference::from_kelvins(kelvins),
    }
}

proptest! {
    #![proptest_config(every_run())]

    #[test]
    fn pressure_rises_and_comes_back(fluid in fluids(), share in 0.0..=1.0_f64) {
        let at = inside(fluid, share);
        let pressure = fluid.saturation_pressure(at).expect("inside the range");
        prop_assert!(pressure.pascals() > 0.0 && pressure <= fluid.critical_pressure());
        let back = fluid.saturation_temperature(pressure).expect("it was computed");
        // Next to the critical point of R-744 one pascal is still 6 µK.
        prop_assert!((back.celsius() - at.celsius()).abs() < 1e-7, "{at} {back}");
        let slope = fluid.saturation_slope(at).expect("inside the range");
        prop_assert!(slope.is_finite() && slope > 0.0);
        if let Ok(above) = fluid.saturation_pressure(Temperature::from_celsius(at.celsius() + 0.01)) {
            let rise = (above.pascals() - pressure.pascals()) / 0.01;
            prop_assert!((rise / slope - 1.0).abs() < 0.02, "{fluid:?} at {at}: {rise} {slope}");
        }
    }

    #[test]
    fn there_is_no_saturation_outside(fluid in fluids(), beyond in 1e-3..1e3_f64) {
        let range = fluid.range();
        let cold = Temperature::from_celsius(range.low.celsius() - beyond);
        prop_assert_eq!(fluid.saturation_pressure(cold), Err(RefrigerantError::BelowRange));
        let hot = Temperature::from_celsius(range.high.celsius() + beyond);
        let critical = hot > fluid.critical_temperature();
        let refused = if critical { RefrigerantError::AboveCritical } else { RefrigerantError::AboveRange };
        prop_assert_eq!(fluid.saturation_pressure(hot), Err(refused));
        let dense = Pressure::from_pascals(fluid.critical_pressure().pascals() * (1.0 + beyond));
        prop_assert_eq!(fluid.saturation_temperature(dense), Err(RefrigerantError::AboveCritical));
    }

    #[test]
    fn superheat_and_subcooling_are_one_distance(
        fluid in fluids(), share in 0.01..0.99_f64, off in -20.0..20.0_f64, gauge in 0.0..1e5_f64,
    ) {
        let saturation = inside(fluid, share);
        let pressure = fluid.saturation_pressure(saturation).expect("inside the range");
        let line = Temperature::from_celsius(saturation.celsius() + off);
        let coarse = limits(gauge, 2e3, 1.0);
        let superheat = fluid.superheat(pressure, line, &coarse).expect("inside the range");
        let subcooling = fluid.subcooling(pressure, line, &coarse).expect("inside the range");
        prop_assert!((superheat.difference.kelvins() - off).abs() < 1e-6);
        prop_assert!((subcooling.difference.kelvins() + off).abs() < 1e-6);
        prop_assert!(superheat.expanded == subcooling.expanded);
        // A better gauge is never less certain.
        let fine = fluid.superheat(pressure, line, &limits(0.5 * gauge, 2e3, 1.0)).expect("inside");
        prop_assert!(fine.expanded <= superheat.expanded);
    }

    #[test]
    fn a_guard_only_takes_verdicts_away(
        fluid in fluids(), share in 0.2..0.8_f64, part in 0.5..1.5_f64, gauge in 0.0..1e5_f64,
    ) {
        let soaked = inside(fluid, share);
        let pressure = fluid.saturation_pressure(soaked).expect("inside the range").pascals() * part;
        let allowed = TemperatureDifference::from_kelvins(3.0);
        let verdict = |gauge: f64| {
            let limits = limits(gauge, 2e3, 0.5);
            fluid.at_rest(Pressure::from_pascals(pressure), soaked, allowed, &limits).map(|rest| rest.verdict)
        };
        let (fine, coarse) = (verdict(0.0).expect("inside"), verdict(gauge).expect("inside"));
        prop_assert!(coarse == fine || coarse == Rest::Undecided, "{fine:?} {coarse:?}");
    }

    #[test]
    fn no_number_breaks_it(fluid in fluids(), a in ANY, b in ANY, c in ANY, d in ANY) {
        if let Ok(pressure) = fluid.saturation_pressure(Temperature::from_celsius(a)) {
            prop_assert!(pressure.pascals().is_finite());
        }
        let pressures = [Pressure::from_pascals(a), Pressure::from_pascals(a.abs() % 8e6)];
        let finite = |value: f64| value.is_finite();
        for pressure in pressures {
            if let Ok(at) = fluid.saturation_temperature(pressure) {
                prop_assert!(finite(at.celsius()));
            }
            let line = Temperature::from_celsius(b % 200.0);
            let some = limits(c.abs() % 1e6, d.abs() % 1e4, b.abs() % 10.0);
            if let Ok(superheat) = fluid.superheat(pressure, line, &some) {
                prop_assert!(finite(superheat.difference.kelvins()) && finite(superheat.expanded.kelvins()));
            }
            let allowed = TemperatureDifference::from_kelvins(d);
            if let Ok(rest) = fluid.at_rest(pressure, line, allowed, &limits(c, d, b)) {
                prop_assert!(finite(rest.difference.pascals()) && finite(rest.expected.high.pascals()));
            }
        }
    }
}
