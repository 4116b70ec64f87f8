//! Feeds by hand, and what must hold of any of them.

use super::*;
use crate::knowledge::{Fact, SourceRef};
use crate::quantity::Fraction;
use proptest::prelude::*;

fn fact<Q: Copy + PartialOrd>(low: Q, value: Q, high: Q) -> Fact<Q> {
    Fact { is: Estimate::between(low, value, high).unwrap(), source: SourceRef::new("memory", ""), read: false }
}

fn feed(nitrogen: [f64; 3], released: [f64; 3]) -> FeedUse {
    let percent =
        |[low, value, high]: [f64; 3]| fact(Fraction::percent(low), Fraction::percent(value), Fraction::percent(high));
    FeedUse {
        nitrogen: percent(nitrogen),
        released: percent(released),
        grams_per_m2: Some(fact(100.0, 200.0, 300.0)),
        grams_per_litre: None,
        millilitres_per_litre: None,
    }
}

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

#[track_caller]
fn case(last: &str, today: &str, expected: [&str; 3]) {
    let every = Estimate::between(7.0, 9.0, 10.0).unwrap();
    let got = next_feed(date(last), &every, date(today));
    assert_eq!([got.low(), got.value(), got.high()], expected.map(date));
}

/// Each 7 to 10 days: common practice, no source.
#[test]
fn a_feed_follows_the_last_and_is_never_in_the_past() {
    case("2026-05-10", "2026-05-11", ["2026-05-17", "2026-05-19", "2026-05-20"]);
    case("2026-05-10", "2026-05-18", ["2026-05-18", "2026-05-19", "2026-05-20"]);
    case("2026-04-01", "2026-05-18", ["2026-05-18", "2026-05-18", "2026-05-18"]);
}

#[test]
fn strewn_by_the_area_and_halved_in_heat() {
    let feed = feed([1.0, 1.5, 2.0], [20.0, 30.0, 40.0]);
    let grams = |hot| grams_per_bed(&feed, Area::square_metres(0.5), hot).unwrap().value().as_grams();
    assert!((grams(false) - 100.0).abs() < 1e-9 && (grams(true) - 50.0).abs() < 1e-9);
    assert!(halved_by_heat(Temperature::celsius(43.0)) && !halved_by_heat(Temperature::celsius(36.0)));
}

/// By hand: 1 kg with 2 % N, half of it let go in 90 days, of which plants catch 0.6: 6 g; 2 kg picked at 4 g/kg take 8 g.
#[test]
fn a_balance_by_hand() {
    let feed = feed([2.0, 2.0, 2.0], [50.0, 50.0, 50.0]);
    let kilograms = |kg| Estimate::exactly(Mass::kilograms(kg));
    // 60 days ago, and 30 days ahead, make 90.
    let given = [Given { feed: &feed, mass: kilograms(1.0), on: date("2026-03-19") }];
    let taken = [Taken { fresh: kilograms(2.0), nitrogen_g_per_kg: Estimate::exactly(4.0) }];
    let balance = nitrogen_balance(&given, &taken, date("2026-05-18"));
    assert!((balance.released_g.value() - 6.0).abs() < 1e-9, "{balance:?}");
    assert!((balance.short_g.value() - 2.0).abs() < 1e-9, "{balance:?}");
    // 180 days let go three quarters.
    let older = [Given { on: date("2025-12-19"), ..given[0].clone() }];
    assert!((nitrogen_balance(&older, &taken, date("2026-05-18")).released_g.value() - 9.0).abs() < 1e-9);
}

proptest! {
    #[test]
    fn more_picked_is_never_less_short(kilograms in 0.0..5.0f64, more in 0.0..5.0f64, mass in 0.0..20.0f64) {
        let feed = feed([0.8, 1.2, 2.0], [10.0, 25.0, 40.0]);
        let given = [Given { feed: &feed, mass: Estimate::exactly(Mass::kilograms(mass)), on: date("2026-01-01") }];
        let short = |kg| {
            let fresh = Estimate::exactly(Mass::kilograms(kg));
            let taken = [Taken { fresh, nitrogen_g_per_kg: Estimate::between(2.0, 3.0, 5.0).unwrap() }];
            nitrogen_balance(&given, &taken, date("2026-05-18")).short_g
        };
        let (less, more) = (short(kilograms), short(kilograms + more));
        prop_assert!(more.value() >= less.value() && more.high() >= less.high());
        prop_assert!(less.low() >= 0.0 && less.low() <= less.value() && less.value() <= less.high());
    }

    #[test]
    fn what_grew_is_at_least_what_was_picked(whole in 0.1..5.0f64, age in 0.0..200.0f64, picked in 0.0..5.0f64) {
        let whole = Estimate::exactly(Mass::kilograms(whole));
        prop_assert!(grown(&whole, age, 90.0, Mass::kilograms(picked)).value() >= Mass::kilograms(picked));
    }
}
