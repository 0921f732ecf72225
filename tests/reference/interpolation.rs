//! Rows that a thinned table left out, found again between the kept ones (01f).

use bayleaf::quantity::{Resistance, Temperature};

use crate::curves::{Points, ohms, published_table, through};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, rows_of};

/// 01f: between kept rows, the monotone cubic of ln R over 1/T and no other method.
#[test]
fn interpolation_finds_the_dropped_rows_as_the_published_method_does() {
    let rows = rows_of("01f_ntc_interpolation_dropped_points.csv");
    let mut checked = 0;
    for part in ["10K3MCD1_10k", "NCPxxWB473_47k", "B57330V2103_10k"] {
        let dropped: Vec<&Row> = rows.iter().filter(|row| row.text("part") == part).collect();
        let kept = kept_points(part, &dropped);
        let curve = through(&kept);
        let (mut worst, mut worst_straight) = (0.0_f64, 0.0_f64);
        for row in dropped {
            let at = row.celsius("t_degC");
            // The points are the right ones when straight lines between them
            // give the column of straight lines; eight digits are printed.
            row.agrees("linR", straight_line(&kept, at), Relative(5.1e-8));
            // Column pchI is the same cubic from another hand (scipy's PCHIP of
            // ln R over 1/T): it must be met to its last printed digit.
            let computed = ohms(&curve, at);
            row.agrees("pchI", computed, Relative(5.1e-8));
            let off = (computed / row.number("R_published") - 1.0) * 100.0;
            row.agrees("err_pchI_pct", off, Absolute(1.1e-5));
            worst = worst.max(off.abs());
            worst_straight = worst_straight.max(row.number("err_logI_pct").abs());
            checked += 1;
        }
        // Header: deliver logI, straight lines of ln R over 1/T, or better.
        assert!(worst <= worst_straight, "{part}: {worst} % off, straight lines {worst_straight} %");
    }
    assert_eq!((checked, rows.len()), (78, 78), "every row of 01f");
}

/// The rows that 01f kept: every `kept_step` degrees of the published table, from its first row.
fn kept_points(part: &str, dropped: &[&Row]) -> Points {
    let published = published_table(part);
    let step = dropped.first().expect("01f has rows of the part").number("kept_step");
    let (first, last) = (published[0].0.celsius(), published[published.len() - 1].0.celsius());
    let mut kept = Points::new();
    let mut at = first;
    while at <= last {
        let row = published.iter().find(|(t, _)| (t.celsius() - at).abs() < 1e-9);
        let of = match row {
            Some((_, of)) => *of,
            None => from_straight_line(dropped, &kept, at, step),
        };
        kept.push((Temperature::from_celsius(at), of));
        at += step;
    }
    kept
}

/// A kept row that 01a leaves out, from the straight line 01f drew to it.
///
/// The manual prints 10K3MCD1 at every degree, 01a has the even ones. One degree
/// below the missing row, `linR` is one step share of the row before and the
/// rest of the missing one, so the row follows to its printed tenth of an ohm.
fn from_straight_line(dropped: &[&Row], kept: &Points, at: f64, step: f64) -> Resistance {
    let before = kept.last().expect("the first row is in 01a").1.ohms();
    let beside = dropped.iter().find(|row| (row.number("t_degC") - (at - 1.0)).abs() < 1e-9);
    let line = beside.expect("01f has the row one degree below").number("linR");
    let share = 1.0 / step;
    Resistance::from_ohms(((line - share * before) / (1.0 - share) * 10.0).round() / 10.0)
}

/// Linear in R over t: the trap, here only to prove the kept rows.
fn straight_line(points: &Points, at: Temperature) -> f64 {
    let pair = points.windows(2).find(|pair| pair[0].0 <= at && at <= pair[1].0);
    let [(cold, high), (hot, low)] = pair.expect("a dropped row lies between kept ones") else {
        panic!("windows of two have two points")
    };
    let share = (at.celsius() - cold.celsius()) / (hot.celsius() - cold.celsius());
    high.ohms() + share * (low.ohms() - high.ohms())
}
