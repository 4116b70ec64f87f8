//! What people saw of a bed, against what the balance foretold for that hour.

use rooftend::garden::{Bed, BedId, BedKind, JobDone, JobKind, Measure, Seen, SeenKind, Shape, When};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::day_course::share_by;
use rooftend::needs::looks::factor;
use rooftend::needs::loss_factor::LossFactor;
use rooftend::needs::surroundings::{Standing, Surroundings};
use rooftend::needs::water::{water_week, water_week_of};
use rooftend::quantity::{Unit, Written};
use rooftend::weather::Weather;

/// A box of greens in the dry heat of May, which loses some 9 mm a day and looks dry after 5.
fn with<R>(sum: impl Fn(&Surroundings<'_>) -> R) -> R {
    let known = Knowledge::read(&Files::embedded()).0;
    let length = |text| Measure::read(text).unwrap();
    let shape = Shape::Box { length: length("4 ft"), width: length("3 ft"), depth: length("12 in") };
    let bed = Bed::bare(BedId::new("roof/box").unwrap(), BedKind::Box, shape);
    let standing = Standing { crop: &known.crops["amaranth"], microgreen: false, start: None, plants: None };
    sum(&Surroundings {
        bed: &bed,
        mix: &known.mixes["house"],
        standing: vec![standing],
        weather: Weather::of_place(&known.places[0]),
        sun_hours: 6.0,
        today: "2026-05-18".parse().unwrap(),
    })
}

fn watered(on: &str, litres: Option<f64>) -> JobDone {
    let amount = litres.map(|value| Written { value, unit: Unit::Litre });
    let on: When = on.parse().unwrap();
    JobDone { bed: BedId::new("roof/box").unwrap(), job: JobKind::Water, on, what: None, amount }
}

fn seen(on: &str, what: SeenKind) -> Seen {
    Seen { bed: BedId::new("roof/box").unwrap(), on: on.parse().unwrap(), what }
}

#[track_caller]
fn case(jobs: &[JobDone], on: &str, what: SeenKind, expected: std::ops::RangeInclusive<f64>) {
    let got = with(|bed| factor(bed, jobs, &[seen(on, what)])).is.value();
    assert!(expected.contains(&got), "{what:?} {on}: {got}");
}

#[test]
fn a_look_moves_the_bed_as_far_as_it_tells() {
    let morning = [watered("2026-05-16T07:00", None)];
    // Dry while half of the limit should have been left, against dry long after it should have been.
    case(&morning, "2026-05-16T12:00", SeenKind::DryEarly, 1.1..=1.6);
    case(&morning, "2026-05-17T18:00", SeenKind::DryEarly, 1.0..=1.05);
    // Still wet a day and a half on, against wet after an hour.
    case(&morning, "2026-05-17T18:00", SeenKind::StillWet, 0.6..=0.9);
    case(&morning, "2026-05-16T09:00", SeenKind::StillWet, 0.97..=1.0);
    // Nobody wrote down when it was watered: a weak sign.
    case(&[], "2026-05-17", SeenKind::DryEarly, 1.02..=1.2);
    // Far more than was missing ran through: no wonder. Half of what was missing did: it dries slower.
    let poured = |litres| [watered("2026-05-16T07:00", None), watered("2026-05-17T07:00", Some(litres))];
    case(&poured(40.0), "2026-05-17T07:10", SeenKind::RanThrough, 0.97..=1.0);
    case(&poured(5.0), "2026-05-17T07:10", SeenKind::RanThrough, 0.6..=0.9);
}

#[test]
fn a_look_taken_back_leaves_no_trace_and_the_factor_scales_the_week() {
    let jobs = [watered("2026-05-16T07:00", None)];
    with(|bed| {
        let looks = [seen("2026-05-16T11:30", SeenKind::DryEarly), seen("2026-05-16T12:30", SeenKind::DryEarly)];
        let told = factor(bed, &jobs, &looks);
        assert_eq!(factor(bed, &jobs, &[]), LossFactor::UNSEEN);
        let (before, after) = (water_week(bed).unwrap(), water_week_of(bed, &told).unwrap());
        // Some rain falls in a usual week, so litres rise a little more than the loss.
        let rise = after.loss_per_day.value() / before.loss_per_day.value();
        assert!((rise - told.is.value()).abs() < 1e-9 && after.litres.value() >= before.litres.value() * rise);
    });
}

#[test]
fn a_days_loss_follows_the_sun() {
    let shares: Vec<f64> = [0.0, 6.0, 9.0, 12.0, 18.0, 23.0].into_iter().map(share_by).collect();
    // (1 − cos x)/2 at 0, a quarter and half of the way, and the whole: plain geometry.
    let expected = [0.0, 0.0, (1.0 - 0.5_f64.sqrt()) / 2.0, 0.5, 1.0, 1.0];
    assert!(shares.iter().zip(expected).all(|(got, expected)| (got - expected).abs() < 1e-12), "{shares:?}");
}
