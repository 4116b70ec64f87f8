//! Reference evapotranspiration of made-up days, computed by other libraries.

use crate::table::{Row, near, rows};
use rooftend::agronomy::reference_et::{
    DayWeather, Exposure, Humidity, Procedure, ReferenceEt, SiteDay, Sunlight, hargreaves, reference_et,
};
use rooftend::quantity::{Pressure, Radiation, Temperature, WindSpeed};

fn site(row: &Row) -> SiteDay {
    SiteDay::new(row.number("lat_deg"), row.number("elev_m"), row.day_of_year("doy"))
}

fn temperatures_only(row: &Row) -> DayWeather {
    DayWeather {
        tmax: Temperature::celsius(row.number("tmax_c")),
        tmin: Temperature::celsius(row.number("tmin_c")),
        humidity: None,
        wind_2m: None,
        sunlight: None,
    }
}

fn measured(row: &Row) -> ReferenceEt {
    let weather = DayWeather {
        humidity: Some(Humidity::VapourPressure(Pressure::kilopascals(row.number("ea_kpa")))),
        wind_2m: Some(WindSpeed::metres_per_second(row.number("u2_ms"))),
        sunlight: Some(Sunlight::Measured(Radiation::megajoules_per_square_metre(row.number("rs_mj")))),
        ..temperatures_only(row)
    };
    reference_et(&site(row), &weather, Exposure::OPEN)
}

/// Everything measured: the column that follows the paper in every case, to the digits it asks for.
#[test]
fn four_hundred_measured_days() {
    let rows = rows("et0_refet.csv");
    assert_eq!(rows.len(), 400);
    for row in &rows {
        let id = row.text("id");
        let got = measured(row);
        near(got.et.as_millimetres(), row.number("et0_fao56_paper_mm"), 0.0005, id);
        near(got.net.as_megajoules_per_square_metre(), row.number("rn_fao56_paper_mj"), 0.0005, id);
        near(got.extraterrestrial.as_megajoules_per_square_metre(), row.number("ra_mj"), 0.0005, id);
        near(got.clear_sky.as_megajoules_per_square_metre(), row.number("rso_mj"), 0.0005, id);
        near(got.daylight_h, row.number("daylight_h"), 0.0005, id);
        assert_eq!(got.procedures.iter().count(), 0, "{id}");
    }
}

/// The other libraries, where they follow the same rule for Rs/Rso.
#[test]
fn other_libraries_agree() {
    let mut compared = 0;
    for row in rows("et0_refet.csv").iter().filter(|row| row.text("case") != "rs_below_0.3_rso") {
        let got = measured(row).et.as_millimetres();
        near(got, row.number("et0_refet_mm"), row.number("tol_et0_mm"), row.text("id"));
        near(got, row.number("et0_pyet_mm"), row.number("tol_et0_mm"), row.text("id"));
        compared += 1;
    }
    assert!(compared >= 300, "{compared}");
}

#[test]
fn a_hundred_days_of_temperatures_only() {
    let rows = rows("et0_missing.csv");
    assert_eq!(rows.len(), 100);
    for row in &rows {
        let id = row.text("id");
        let weather = temperatures_only(row);
        let got = reference_et(&site(row), &weather, Exposure::OPEN);
        near(got.et.as_millimetres(), row.number("et0_pm_missing_mm"), row.number("tol_pm_mm"), id);
        near(got.net.as_megajoules_per_square_metre(), row.number("rn_mj"), 0.002, id);
        near(got.solar.as_megajoules_per_square_metre(), row.number("rs_hargreaves_mj"), 0.002, id);
        near(got.vapour_pressure.as_kilopascals(), row.number("ea_kpa"), 1e-5, id);
        let simple = hargreaves(got.extraterrestrial, weather.tmax, weather.tmin);
        near(simple.as_millimetres(), row.number("et0_hs_eq52_mm"), row.number("tol_hs_mm"), id);
        let stood_in: Vec<Procedure> = got.procedures.iter().collect();
        let expected = [Procedure::SolarFromTemperature, Procedure::DewPointIsTmin, Procedure::DefaultWind];
        assert_eq!(stood_in, expected, "{id}");
    }
}
