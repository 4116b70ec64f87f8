//! A season of the dual crop coefficient, computed by another library.

use crate::table::{Row, near, rows};
use rooftend::agronomy::crop_coefficient::{Climate, Coefficients, StageDays};
use rooftend::agronomy::reference_et::{DayWeather, Exposure, Humidity, SiteDay, Sunlight, reference_et};
use rooftend::agronomy::water_balance::{BalanceDay, Season, WaterBalance};
use rooftend::quantity::{Fraction, Length, Radiation, Temperature, WaterDepth, WindSpeed};

fn description() -> serde_json::Value {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/published/waterbalance_pyfao56.json");
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

fn season() -> Season {
    let description = description();
    let parameter = |name: &str| description["parameters"][name].as_f64().unwrap();
    Season {
        basal: Coefficients { initial: parameter("Kcbini"), mid: parameter("Kcbmid"), end: parameter("Kcbend") },
        stages: StageDays {
            initial: parameter("Lini"),
            development: parameter("Ldev"),
            mid: parameter("Lmid"),
            late: parameter("Lend"),
        },
        height_initial: Length::metres(parameter("hini")),
        height_max: Length::metres(parameter("hmax")),
        root_depth_initial: Length::metres(parameter("Zrini")),
        root_depth_max: Length::metres(parameter("Zrmax")),
        depletion_fraction: Fraction::of_one(parameter("pbase")),
        field_capacity: Fraction::of_one(parameter("thetaFC")),
        wilting_point: Fraction::of_one(parameter("thetaWP")),
        initial_water: Fraction::of_one(parameter("theta0")),
        evaporation_layer: Length::metres(parameter("Ze")),
        readily_evaporable: WaterDepth::millimetres(parameter("REW")),
        irrigation_wetted: Fraction::WHOLE,
    }
}

fn own_reference_et(row: &Row) -> WaterDepth {
    let description = description();
    let site = |name: &str| description["site"][name].as_f64().unwrap();
    let weather = DayWeather {
        tmax: Temperature::celsius(row.number("tmax_c")),
        tmin: Temperature::celsius(row.number("tmin_c")),
        humidity: Some(Humidity::MaxMin {
            max: Fraction::percent(row.number("rhmax_pct")),
            min: Fraction::percent(row.number("rhmin_pct")),
        }),
        wind_2m: Some(WindSpeed::metres_per_second(row.number("u2_ms"))),
        sunlight: Some(Sunlight::Measured(Radiation::megajoules_per_square_metre(row.number("srad_mj")))),
    };
    let site_day = SiteDay::new(site("lat_deg"), site("elev_m"), row.day_of_year("doy"));
    reference_et(&site_day, &weather, Exposure::OPEN).et
}

/// Tolerances as the table's own description suggests; Dr sums up what ET0 is off by.
#[test]
fn follows_a_season_day_by_day() {
    let rows = rows("waterbalance_pyfao56.csv");
    assert_eq!(rows.len(), 150);
    let mut balance = WaterBalance::start(season()).unwrap();
    for row in &rows {
        let reference_et = own_reference_et(row);
        let end = balance.advance(&BalanceDay {
            reference_et,
            climate: Climate {
                wind_2m: WindSpeed::metres_per_second(row.number("u2_ms")),
                humidity_min: Fraction::percent(row.number("rhmin_pct")),
            },
            rain: WaterDepth::millimetres(row.number("rain_mm")),
            irrigation: WaterDepth::millimetres(row.number("irrig_mm")),
            irrigation_wetted: row.text("irrig_fw").parse().ok().map(Fraction::of_one),
        });
        let case = |got: f64, column: &str, tolerance: f64| {
            near(got, row.number(column), tolerance, &format!("day {} {column}", row.text("day")));
        };
        case(reference_et.as_millimetres(), "et0_mm", 0.005);
        case(end.basal, "kcb", 0.001);
        case(end.evaporation_coefficient, "ke", 0.001);
        case(end.stress.as_of_one(), "ks", 0.001);
        case(end.crop_et.as_millimetres(), "etc_mm", 0.01);
        case(end.actual_et.as_millimetres(), "eta_mm", 0.01);
        case(end.surface_depletion.as_millimetres(), "de_mm", 0.05);
        case(end.surface_percolation.as_millimetres(), "dpe_mm", 0.05);
        case(end.percolation.as_millimetres(), "dp_mm", 0.05);
        case(end.total_available.as_millimetres(), "taw_mm", 0.001);
        case(end.depletion.as_millimetres(), "dr_mm", 0.05);
    }
}
