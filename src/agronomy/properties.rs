//! What must hold for any weather, not only for printed examples.

use crate::agronomy::crop_coefficient::{Climate, Coefficients, StageDays};
use crate::agronomy::reference_et::{DayWeather, Exposure, Humidity, SiteDay, Sunlight, reference_et};
use crate::agronomy::water_balance::{BalanceDay, Season, WaterBalance};
use crate::quantity::{Fraction, Length, Pressure, Radiation, Temperature, WaterDepth, WindSpeed};
use proptest::prelude::{Just, Strategy, prop_assert, proptest};

fn weather(tmax: f64, tmin: f64, ea: f64, wind: f64, solar: f64) -> DayWeather {
    DayWeather {
        tmax: Temperature::celsius(tmax),
        tmin: Temperature::celsius(tmin),
        humidity: Some(Humidity::VapourPressure(Pressure::kilopascals(ea))),
        wind_2m: Some(WindSpeed::metres_per_second(wind)),
        sunlight: Some(Sunlight::Measured(Radiation::megajoules_per_square_metre(solar))),
    }
}

/// One season of a middling soil and a tall crop.
fn season() -> Season {
    Season {
        basal: Coefficients { initial: 0.15, mid: 1.1, end: 0.7 },
        stages: StageDays { initial: 5.0, development: 10.0, mid: 10.0, late: 5.0 },
        height_initial: Length::metres(0.05),
        height_max: Length::metres(0.6),
        root_depth_initial: Length::metres(0.1),
        root_depth_max: Length::metres(0.3),
        depletion_fraction: Fraction::of_one(0.4),
        field_capacity: Fraction::of_one(0.4),
        wilting_point: Fraction::of_one(0.1),
        initial_water: Fraction::of_one(0.3),
        evaporation_layer: Length::metres(0.08),
        readily_evaporable: WaterDepth::millimetres(8.0),
        irrigation_wetted: Fraction::WHOLE,
    }
}

fn balance_day() -> impl Strategy<Value = BalanceDay> {
    (0.0..12.0, 0.0..8.0, 0.05..1.0, rain(), rain(), 0.1..1.0).prop_map(|(et, wind, humidity, rain, water, wetted)| {
        BalanceDay {
            reference_et: WaterDepth::millimetres(et),
            climate: Climate { wind_2m: WindSpeed::metres_per_second(wind), humidity_min: Fraction::of_one(humidity) },
            rain: WaterDepth::millimetres(rain),
            irrigation: WaterDepth::millimetres(water),
            irrigation_wetted: Some(Fraction::of_one(wetted)),
        }
    })
}

fn rain() -> impl Strategy<Value = f64> {
    proptest::prop_oneof![3 => Just(0.0), 1 => 0.0..60.0]
}

proptest! {
    /// With vapour, wind and sun held, a hotter day never asks for less. Only where net radiation is
    /// positive and some wind blows: in a calm under a dark sky eq. 6 itself falls.
    #[test]
    fn a_hotter_day_never_asks_for_less(
        tmin in 5.0..32.0, spread in 1.0..18.0, hotter in 0.1..8.0,
        damp in 0.2..1.0, wind in 0.5..6.0, solar in 8.0..28.0,
        latitude in 0.0..35.0, day in 60_u16..300,
    ) {
        let site = SiteDay::new(latitude, 200.0, day);
        let ea = damp * crate::agronomy::atmosphere::saturation_pressure(Temperature::celsius(tmin)).as_kilopascals();
        let cooler = reference_et(&site, &weather(tmin + spread, tmin, ea, wind, solar), Exposure::OPEN);
        let warmer = reference_et(&site, &weather(tmin + spread + hotter, tmin, ea, wind, solar), Exposure::OPEN);
        prop_assert!(warmer.et >= cooler.et, "{cooler:?} {warmer:?}");
    }

    /// Less light never means more loss.
    #[test]
    fn shade_never_asks_for_more(
        tmin in -5.0..32.0, spread in 0.0..20.0, damp in 0.05..1.0, wind in 0.0..10.0, solar in 0.0..35.0,
        less in 0.0..1.0, more in 0.0..1.0, latitude in -60.0..60.0, day in 1_u16..366,
    ) {
        let (less, more) = if less < more { (less, more) } else { (more, less) };
        let site = SiteDay::new(latitude, 200.0, day);
        let ea = damp * crate::agronomy::atmosphere::saturation_pressure(Temperature::celsius(tmin)).as_kilopascals();
        let weather = weather(tmin + spread, tmin, ea, wind, solar);
        let under = |light| reference_et(&site, &weather, Exposure { light: Fraction::of_one(light), wind: Fraction::WHOLE });
        prop_assert!(under(less).et <= under(more).et);
    }

    /// Whatever is missing, and wherever it is, a number comes out.
    #[test]
    fn there_is_always_a_number(
        tmin in -40.0..40.0, spread in 0.0..30.0, latitude in -90.0..=90.0, elevation in -400.0..5000.0, day in 1_u16..=366,
    ) {
        let site = SiteDay::new(latitude, elevation, day);
        let bare = DayWeather {
            tmax: Temperature::celsius(tmin + spread), tmin: Temperature::celsius(tmin),
            humidity: None, wind_2m: None, sunlight: None,
        };
        prop_assert!(reference_et(&site, &bare, Exposure::OPEN).et.as_millimetres().is_finite());
    }

    /// The water that came in went somewhere, and the store stays between full and empty.
    #[test]
    fn the_balance_closes(days in proptest::collection::vec(balance_day(), 1..40)) {
        let mut balance = WaterBalance::start(season()).unwrap();
        let started = balance.depletion().as_millimetres();
        let (mut came, mut went) = (0.0, 0.0);
        for day in &days {
            let end = balance.advance(day);
            came += (day.rain + day.irrigation).as_millimetres();
            went += (end.actual_et + end.percolation - end.beyond).as_millimetres();
            prop_assert!(end.percolation >= WaterDepth::default() && end.actual_et >= WaterDepth::default());
            // The store holds tens of millimetres: its last binary digit is some 1e-14 mm.
            let loss_to_rounding = end.actual_et + WaterDepth::millimetres(1e-9);
            prop_assert!(end.beyond >= WaterDepth::default() && end.beyond <= loss_to_rounding, "{end:?}");
            prop_assert!(end.depletion >= WaterDepth::default() && end.depletion <= end.total_available);
            prop_assert!(end.actual_et <= end.crop_et);
        }
        let ended = balance.depletion().as_millimetres();
        prop_assert!((ended - (started - came + went)).abs() < 1e-9, "{started} {came} {went} {ended}");
    }
}
