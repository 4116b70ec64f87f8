//! What must hold of a bed's water whatever the weather.

use chrono::NaiveDate;
use proptest::prelude::{ProptestConfig, Strategy, prop_assert, prop_assert_eq, proptest};
use rooftend::agronomy::atmosphere::saturation_pressure;
use rooftend::garden::{Bed, BedId, BedKind, Measure, RainExposure, Shape, Sides};
use rooftend::knowledge::{Files, Knowledge};
use rooftend::needs::dry_down::{DryDown, dry_down};
use rooftend::needs::looks::lost_since;
use rooftend::needs::loss_factor::LossFactor;
use rooftend::needs::surroundings::{Standing, Surroundings};
use rooftend::needs::water::{WaterWeek, water_week, week_at_best};
use rooftend::quantity::{Temperature, Volume, WaterDepth};
use rooftend::weather::{Forecast, Weather};
use std::sync::LazyLock;

static KNOWN: LazyLock<Knowledge> = LazyLock::new(|| Knowledge::read(&Files::embedded()).0);

/// A week of equal days.
#[derive(Debug, Clone, Copy)]
struct Sky {
    tmax_c: f64,
    tmin_c: f64,
    vapour_kpa: f64,
    wind_m_s: f64,
    solar_mj_m2: f64,
    rain_mm: f64,
    month: u32,
    latitude_deg: f64,
}

fn pressure(celsius: f64) -> f64 {
    saturation_pressure(Temperature::celsius(celsius)).as_kilopascals()
}

fn forecast(sky: &Sky) -> (Forecast, NaiveDate) {
    let first = NaiveDate::from_ymd_opt(2026, sky.month, 10).unwrap();
    // The mean humidity that gives this vapour pressure at these temperatures (FAO-56 eq. 19).
    let humidity = 100.0 * sky.vapour_kpa / f64::midpoint(pressure(sky.tmax_c), pressure(sky.tmin_c));
    let days: Vec<String> = first
        .iter_days()
        .take(60)
        .map(|date| {
            format!(
                r#"{{"date":"{date}","tmax_c":{},"tmin_c":{},"rh_mean_percent":{humidity},"wind_2m_m_s":{},"solar_mj_m2":{},"rain_mm":{}}}"#,
                sky.tmax_c, sky.tmin_c, sky.wind_m_s, sky.solar_mj_m2, sky.rain_mm
            )
        })
        .collect();
    let text = format!(
        r#"{{"latitude":{},"longitude":79.0,"elevation_m":200,"timezone":"UTC","days":[{}]}}"#,
        sky.latitude_deg,
        days.join(",")
    );
    (Forecast::read("days.json", &text).unwrap(), first)
}

fn a_box(length_cm: f64, width_cm: f64, depth_cm: f64) -> Bed {
    let measure = |centimetres: f64| Measure::read(&format!("{centimetres} cm")).unwrap();
    let shape = Shape::Box { length: measure(length_cm), width: measure(width_cm), depth: measure(depth_cm) };
    Bed::bare(BedId::new("roof/bed").unwrap(), BedKind::Box, shape)
}

fn with<R>(bed: &Bed, crop: &str, sun_hours: f64, sky: &Sky, sum: impl Fn(&Surroundings<'_>) -> Option<R>) -> R {
    let (forecast, today) = forecast(sky);
    let weather = Weather::at((sky.latitude_deg, 79.0, 200.0), Some(&forecast), &KNOWN);
    let standing = Standing { crop: &KNOWN.crops[crop], microgreen: false, start: None, plants: None };
    let mix = &KNOWN.mixes[bed.mix_counted()];
    sum(&Surroundings { bed, mix, standing: vec![standing], weather, sun_hours, today }).expect("a sum")
}

fn week(bed: &Bed, crop: &str, sun_hours: f64, sky: &Sky) -> WaterWeek {
    with(bed, crop, sun_hours, sky, water_week)
}

fn left(bed: &Bed, crop: &str, sun_hours: f64, sky: &Sky) -> DryDown {
    with(bed, crop, sun_hours, sky, |around| dry_down(around, (around.today, 7.0), &LossFactor::UNSEEN))
}

/// Days until the roots go short; an open end is beyond any.
fn likeliest(down: &DryDown) -> f64 {
    down.until_dry.known().map_or(f64::MAX, |days| days.value())
}

fn loss_mm(week: &WaterWeek) -> f64 {
    week.days.iter().map(|(_, loss)| loss.loss.as_millimetres()).sum()
}

fn crop() -> impl Strategy<Value = &'static str> {
    proptest::sample::select(vec!["amaranth", "tomato", "mint", "spinach", "okra", "chilli"])
}

/// Growing weather: some wind, some sun. In a calm under a dark sky eq. 6 itself falls as it warms.
fn sky() -> impl Strategy<Value = Sky> {
    let air = (8.0..32.0, 2.0..16.0, 0.3..1.0, 0.5..6.0);
    (air, (9.0..28.0), 3_u32..10, 0.0..32.0).prop_map(
        |((tmin_c, spread, damp, wind_m_s), solar_mj_m2, month, latitude_deg)| {
            let vapour_kpa = damp * pressure(tmin_c);
            Sky {
                tmax_c: tmin_c + spread,
                tmin_c,
                vapour_kpa,
                wind_m_s,
                solar_mj_m2,
                rain_mm: 0.0,
                month,
                latitude_deg,
            }
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    /// Stage (established), vapour, wind and sun held, and the top kept moist.
    #[test]
    fn more_heat_never_means_less_water(sky in sky(), crop in crop(), hotter in 0.1..8.0, sun in 2.0..12.0) {
        let bed = a_box(120.0, 90.0, 30.0);
        let cool = week(&bed, crop, sun, &sky);
        let hot = week(&bed, crop, sun, &Sky { tmax_c: sky.tmax_c + hotter, ..sky });
        prop_assert!(loss_mm(&hot) >= loss_mm(&cool) - 1e-9, "{} {}", loss_mm(&cool), loss_mm(&hot));
        prop_assert!(hot.litres.value() >= cool.litres.value() * (1.0 - 1e-9));
    }

    /// What reminders ask of a week is what an answer tells of it.
    #[test]
    fn a_week_without_its_ranges_is_the_same_week(sky in sky(), crop in crop(), sun in 0.0..12.0, rain_mm in 0.0..30.0) {
        let (bed, sky) = (a_box(120.0, 90.0, 30.0), Sky { rain_mm, ..sky });
        let whole = week(&bed, crop, sun, &sky);
        let best = with(&bed, crop, sun, &sky, |around| week_at_best(around, &LossFactor::UNSEEN));
        prop_assert_eq!((best.rhythm, best.litres), (whole.rhythm, whole.litres.value()));
        prop_assert_eq!(best.from, whole.days[0].0.date);
    }

    #[test]
    fn a_deeper_bed_never_shortens_the_root_limit(
        sky in sky(), crop in crop(), depth in 5.0..60.0, deeper in 0.0..40.0,
    ) {
        let shallow = week(&a_box(100.0, 60.0, depth), crop, 6.0, &sky);
        let deep = week(&a_box(100.0, 60.0, depth + deeper), crop, 6.0, &sky);
        prop_assert!(deep.root_limit >= shallow.root_limit);
    }

    #[test]
    fn a_net_never_raises_the_need(sky in sky(), crop in crop(), sun in 0.0..13.0, net in 1.0..80.0) {
        let mut bed = a_box(120.0, 90.0, 30.0);
        let open = week(&bed, crop, sun, &sky);
        bed.net_percent = Some(net);
        let netted = week(&bed, crop, sun, &sky);
        prop_assert!(netted.litres.value() <= open.litres.value() && netted.rhythm <= open.rhythm);
    }

    /// Without rain the litres are the loss over the top; with rain what is still missing of each day.
    #[test]
    fn litres_are_the_loss_less_the_rain(sky in sky(), crop in crop(), rain in 0.0..12.0) {
        let bed = a_box(120.0, 90.0, 30.0);
        let top_m2 = 1.2 * 0.9;
        let rain_mm = if rain < 4.0 { 0.0 } else { rain };
        let week = week(&bed, crop, 6.0, &Sky { rain_mm, ..sky });
        let missing_mm: f64 = week.days.iter().map(|(_, loss)| (loss.loss.as_millimetres() - rain_mm).max(0.0)).sum();
        let expected = if week.rhythm > 0.0 { missing_mm * top_m2 } else { 0.0 };
        prop_assert!((week.litres.value().as_litres() - expected).abs() < 1e-6, "{:?} {expected}", week.litres);
    }

    /// Closed sides lose nothing at best values, so only the top counts.
    #[test]
    fn twice_the_area_is_twice_the_litres(sky in sky(), crop in crop(), times in 1.0..6.0_f64) {
        let mut small = a_box(100.0, 50.0, 30.0);
        small.sides = Some(Sides::Solid);
        let mut large = a_box(100.0 * times, 50.0, 30.0);
        large.sides = Some(Sides::Solid);
        let (small, large) = (week(&small, crop, 6.0, &sky), week(&large, crop, 6.0, &sky));
        let ratio: f64 = large.litres.value().as_litres() / small.litres.value().as_litres();
        prop_assert!(small.litres.value() == Volume::default() || (ratio - times).abs() < 1e-6, "{ratio} {times}");
    }

    #[test]
    fn mulch_never_raises_the_need(sky in sky(), crop in crop()) {
        let mut bed = a_box(120.0, 90.0, 30.0);
        let (bare, bare_left) = (week(&bed, crop, 6.0, &sky), left(&bed, crop, 6.0, &sky));
        bed.mulch = Some(true);
        let (mulched, mulched_left) = (week(&bed, crop, 6.0, &sky), left(&bed, crop, 6.0, &sky));
        prop_assert!(mulched.litres.value() <= bare.litres.value());
        prop_assert!(likeliest(&mulched_left) >= likeliest(&bare_left) - 1e-9);
    }

    /// The more of the rain falls in, the less is brought.
    #[test]
    fn rain_that_falls_in_is_not_brought(sky in sky(), crop in crop(), rain_mm in 0.5..30.0) {
        let mut bed = a_box(120.0, 90.0, 30.0);
        let sky = Sky { rain_mm, ..sky };
        let mut under = |rain| {
            bed.rain = Some(rain);
            week(&bed, crop, 6.0, &sky)
        };
        let (open, part, none) = (under(RainExposure::Open), under(RainExposure::Part), under(RainExposure::None));
        prop_assert!(open.litres.value() <= part.litres.value() && part.litres.value() <= none.litres.value());
        prop_assert!(none.rain == WaterDepth::default() && part.rain < open.rain);
    }

    /// A bed left lasts at least until it wants water, or nearly; and the deeper it is the longer.
    #[test]
    fn a_deeper_bed_lasts_longer(sky in sky(), crop in crop(), depth in 8.0..40.0, deeper in 1.0..30.0) {
        let shallow = left(&a_box(100.0, 60.0, depth), crop, 6.0, &sky);
        let deep = left(&a_box(100.0, 60.0, depth + deeper), crop, 6.0, &sky);
        prop_assert!(likeliest(&deep) >= likeliest(&shallow) * 0.999, "{shallow:?} {deep:?}");
        prop_assert!(shallow.until_dry.sure() <= shallow.until_dry.about());
    }
}

/// Rain on the day of watering counts for what of the day is left, as it does where a look is set against the sum.
#[test]
fn rain_after_a_watering_puts_the_next_one_off() {
    let bed = a_box(120.0, 90.0, 30.0);
    let rain = |first_mm: f64| {
        let days: Vec<String> = (1..=7)
            .map(|day| {
                let rain_mm = if day == 1 { first_mm } else { 0.0 };
                format!(
                    r#"{{"date":"2026-05-0{day}","tmax_c":36,"tmin_c":24,"rh_mean_percent":50,"wind_2m_m_s":2,"solar_mj_m2":22,"rain_mm":{rain_mm}}}"#
                )
            })
            .collect();
        let text = format!(
            r#"{{"latitude":20.6,"longitude":79.0,"elevation_m":200,"timezone":"Asia/Kolkata","days":[{}]}}"#,
            days.join(",")
        );
        let forecast = Forecast::read("days.json", &text).unwrap();
        let weather = Weather::at((20.6, 79.0, 200.0), Some(&forecast), &KNOWN);
        let standing = Standing { crop: &KNOWN.crops["amaranth"], microgreen: false, start: None, plants: None };
        let today = "2026-05-01".parse().unwrap();
        let mix = &KNOWN.mixes[bed.mix_counted()];
        let around = Surroundings { bed: &bed, mix, standing: vec![standing], weather, sun_hours: 6.0, today };
        let down = dry_down(&around, (today, 7.0), &LossFactor::UNSEEN).expect("a sum");
        let next = "2026-05-02".parse().unwrap();
        let lost = lost_since(&around, (today, 7.0), (next, 6.0), &LossFactor::UNSEEN).expect("a sum");
        (down.until_due.about(), lost.as_millimetres())
    };
    let (dry, wet) = (rain(0.0), rain(30.0));
    assert!(dry.1 > 3.0 && wet.1 == 0.0, "{dry:?} {wet:?}");
    // Nothing of the first day is short by its end, in either sum.
    assert!(wet.0 >= dry.0 + 0.5 && wet.0 > 1.0, "{dry:?} {wet:?}");
}

/// A week's forecast at a place without usual days says nothing of the days after it.
#[test]
fn what_lies_beyond_the_known_days_is_left_open() {
    let days: Vec<String> = (1..=7)
        .map(|day| {
            format!(
                r#"{{"date":"2026-05-0{day}","tmax_c":12,"tmin_c":8,"rh_mean_percent":85,"wind_2m_m_s":1,"solar_mj_m2":6,"rain_mm":0}}"#
            )
        })
        .collect();
    let text = format!(
        r#"{{"latitude":-60.0,"longitude":10.0,"elevation_m":10,"timezone":"Asia/Kolkata","days":[{}]}}"#,
        days.join(",")
    );
    let forecast = Forecast::read("days.json", &text).unwrap();
    let weather = Weather::at((-60.0, 10.0, 10.0), Some(&forecast), &KNOWN);
    let bed = a_box(120.0, 90.0, 40.0);
    let today = "2026-05-01".parse().unwrap();
    let mix = &KNOWN.mixes[bed.mix_counted()];
    let around = Surroundings { bed: &bed, mix, standing: Vec::new(), weather, sun_hours: 2.0, today };
    let down = dry_down(&around, (today, 7.0), &LossFactor::UNSEEN).expect("a sum");
    assert_eq!(down.until_dry.known(), None, "{down:?}");
    assert!(down.until_dry.sure() <= 7.0, "{down:?}");
}
