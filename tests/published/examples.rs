//! The printed examples of FAO-56, output by output.

use crate::table::{Row, near, rows};
use rooftend::agronomy::atmosphere::{
    air_pressure, mean_saturation_pressure, psychrometric_constant_kpa_per_k, saturation_pressure,
    saturation_slope_kpa_per_k, vapour_pressure_from_dew_point, vapour_pressure_from_extremes,
    vapour_pressure_from_mean, wind_at_two_metres,
};
use rooftend::agronomy::reference_et::{
    DayWeather, Exposure, Humidity, ReferenceEt, SiteDay, Sunlight, Terms, as_evaporation, hargreaves, penman_monteith,
    reference_et, soil_heat_flux_of_month,
};
use rooftend::agronomy::sun::{SunDay, black_body, clear_sky, net_longwave, net_shortwave, solar_from_sunshine};
use rooftend::quantity::{Fraction, Pressure, Radiation, Temperature, WindSpeed};

/// Examples that need equations which are not here, and why.
const LEFT_OUT: [(&str, &str); 6] = [
    ("Example 7", "a change of angle units, not an equation of this room"),
    ("Example 21", "evaporation pans are not used"),
    ("Example 23", "the wetting interval of the single coefficient is not used"),
    ("Example 26", "the single coefficient of the initial stage is not used"),
    ("Equation 68", "alfalfa-based coefficients are not used"),
    ("Example 40", "sparse stands, but for the two adjustments to climate"),
];
/// Outputs that the table prints, those of the examples left out (Example 40 has two computed ones).
const PRINTED: usize = 166;
const NOT_COMPUTED: usize = 4 + 2 + 3 + 4 + 1 + 3;

/// The table, by example and quantity.
pub struct Book(Vec<Row>);

impl Book {
    #[track_caller]
    fn text(&self, example: &str, quantity: &str) -> &str {
        let named = |row: &&Row| row.text("example") == example && row.text("quantity") == quantity;
        let row = self.0.iter().find(|row| named(row) && row.text("role") == "input");
        row.unwrap_or_else(|| panic!("{example} has no input {quantity}")).text("value")
    }

    #[track_caller]
    pub fn number(&self, example: &str, quantity: &str) -> f64 {
        self.text(example, quantity).parse().unwrap()
    }

    pub fn list(&self, example: &str, quantity: &str) -> Vec<f64> {
        self.text(example, quantity).split(';').map(|value| value.parse().unwrap()).collect()
    }

    #[track_caller]
    fn celsius(&self, example: &str, quantity: &str) -> Temperature {
        Temperature::celsius(self.number(example, quantity))
    }

    #[track_caller]
    pub fn percent(&self, example: &str, quantity: &str) -> Fraction {
        Fraction::percent(self.number(example, quantity))
    }

    #[track_caller]
    fn radiation(&self, example: &str, quantity: &str) -> Radiation {
        Radiation::megajoules_per_square_metre(self.number(example, quantity))
    }

    #[track_caller]
    pub fn wind(&self, example: &str, quantity: &str) -> WindSpeed {
        WindSpeed::metres_per_second(self.number(example, quantity))
    }

    /// The day in "3 September (J = 246)".
    #[track_caller]
    fn day_of_year(&self, example: &str) -> u16 {
        let text = self.text(example, "date");
        text.split("J = ").nth(1).unwrap().trim_end_matches(')').parse().unwrap()
    }

    fn computed(&self, example: &str, quantity: &str) -> Option<f64> {
        match example {
            "Example 2" => self.example_2(quantity),
            "Example 3" | "Example 5" | "Example 6" => self.vapour(example, quantity),
            "Example 9" => Some(self.sun(example).daylight_hours()),
            "Example 10" => self.example_10(quantity),
            "Example 11" => self.example_11(quantity),
            "Example 12" => self.example_12(quantity),
            "Example 14" => self.example_14(quantity),
            "Example 15" => self.example_15(quantity),
            "Example 17" => self.example_17(quantity),
            "Example 20" => self.example_20(quantity),
            "Example 27" | "Box 15" | "Example 40" => self.climate(example, quantity),
            "Example 28" => self.example_28(quantity),
            "Example 31" => self.example_31(quantity),
            "Example 36" => self.example_36(quantity),
            "Example 38" => self.example_38(quantity),
            "Figure 18 (Jan-Jun)" => self.figure_18(quantity),
            _ => None,
        }
    }

    fn sun(&self, example: &str) -> SunDay {
        SunDay::new(self.number(example, "latitude"), self.day_of_year(example))
    }

    fn example_2(&self, quantity: &str) -> Option<f64> {
        let air = air_pressure(self.number("Example 2", "elevation"));
        match quantity {
            "atmospheric pressure" => Some(air.as_kilopascals()),
            "psychrometric constant" => Some(psychrometric_constant_kpa_per_k(air)),
            _ => None,
        }
    }

    fn vapour(&self, example: &str, quantity: &str) -> Option<f64> {
        let (tmax, tmin) = (self.celsius(example, "Tmax"), self.celsius(example, "Tmin"));
        let (at_tmax, at_tmin) = (saturation_pressure(tmax), saturation_pressure(tmin));
        let mean = mean_saturation_pressure(at_tmax, at_tmin);
        let highest = || self.percent(example, "RHmax");
        let lowest = || self.percent(example, "RHmin");
        let pressure = match quantity {
            "e0(Tmax)" => at_tmax,
            "e0(Tmin)" => at_tmin,
            "es" => mean,
            "e0(Tmean 19.75)" => saturation_pressure(tmax.middle(tmin)),
            "ea (Eq. 17, RHmax and RHmin)" => vapour_pressure_from_extremes(at_tmax, at_tmin, highest(), lowest()),
            "ea (Eq. 19, RHmean)" => {
                let mean_humidity = (highest() + lowest()) / 2.0;
                vapour_pressure_from_mean(at_tmax, at_tmin, mean_humidity)
            }
            "es - ea" => mean - vapour_pressure_from_extremes(at_tmax, at_tmin, highest(), lowest()),
            _ => return None,
        };
        Some(pressure.as_kilopascals())
    }

    fn example_10(&self, quantity: &str) -> Option<f64> {
        let sun = self.sun("Example 10");
        let sunshine = self.number("Example 10", "monthly sunshine") / self.number("Example 10", "days in month");
        let outside = sun.extraterrestrial();
        let solar = solar_from_sunshine(outside, sunshine, sun.daylight_hours());
        match quantity {
            "Ra" => Some(outside.as_megajoules_per_square_metre()),
            "N" => Some(sun.daylight_hours()),
            "n" => Some(sunshine),
            "Rs" => Some(solar.as_megajoules_per_square_metre()),
            "Rs as evaporation" => Some(as_evaporation(solar).as_millimetres()),
            _ => None,
        }
    }

    fn example_11(&self, quantity: &str) -> Option<f64> {
        let example = "Example 11";
        let (tmax, tmin) = (self.celsius(example, "Tmax"), self.celsius(example, "Tmin"));
        let vapour = Pressure::kilopascals(self.number(example, "ea"));
        // At the coast: the example takes 0.75 Ra, that is eq. 37 at sea level.
        let open = clear_sky(self.radiation(example, "Ra"), 0.0);
        let clearness = self.radiation(example, "Rs") / open;
        let loss = net_longwave(tmax, tmin, vapour, Fraction::of_one(clearness));
        let emission = (black_body(tmax) + black_body(tmin)) / 2.0;
        let vapour_term = net_longwave(tmax, tmin, vapour, Fraction::WHOLE) / emission;
        match quantity {
            "Rso" => Some(open.as_megajoules_per_square_metre()),
            "sigma Tmax^4" => Some(black_body(tmax).as_megajoules_per_square_metre()),
            "sigma Tmin^4" => Some(black_body(tmin).as_megajoules_per_square_metre()),
            "0.34-0.14 sqrt(ea)" => Some(vapour_term),
            "Rs/Rso" => Some(clearness),
            "1.35 Rs/Rso - 0.35" => Some(loss / emission / vapour_term),
            "Rnl" => Some(loss.as_megajoules_per_square_metre()),
            "Rnl as evaporation" => Some(as_evaporation(loss).as_millimetres()),
            _ => None,
        }
    }

    fn example_12(&self, quantity: &str) -> Option<f64> {
        let shortwave = net_shortwave(self.radiation("Example 12", "Rs"));
        let net = shortwave - self.radiation("Example 12", "Rnl");
        match quantity {
            "Rns" => Some(shortwave.as_megajoules_per_square_metre()),
            "Rn" => Some(net.as_megajoules_per_square_metre()),
            "Rn as evaporation" => Some(as_evaporation(net).as_millimetres()),
            _ => None,
        }
    }

    fn example_14(&self, quantity: &str) -> Option<f64> {
        let measured = self.wind("Example 14", "wind speed uz");
        let low = wind_at_two_metres(measured, self.number("Example 14", "height z"))?;
        match quantity {
            "conversion factor" => Some(low / measured),
            "u2" => Some(low.as_metres_per_second()),
            _ => None,
        }
    }

    /// Lyon in July: temperatures only (examples 15 and 20).
    fn lyon(&self, example: &str, wind: Option<f64>) -> ReferenceEt {
        let site = SiteDay::new(
            self.number(example, "latitude"),
            self.number(example, "elevation"),
            self.day_of_year(example),
        );
        let weather = DayWeather {
            tmax: self.celsius(example, "Tmax"),
            tmin: self.celsius(example, "Tmin"),
            humidity: None,
            wind_2m: wind.map(WindSpeed::metres_per_second),
            sunlight: None,
        };
        reference_et(&site, &weather, Exposure::OPEN)
    }

    fn example_15(&self, quantity: &str) -> Option<f64> {
        let got = self.lyon("Example 15", None);
        match quantity {
            "Ra" => Some(got.extraterrestrial.as_megajoules_per_square_metre()),
            "Rs" => Some(got.solar.as_megajoules_per_square_metre()),
            "Rs as evaporation" => Some(as_evaporation(got.solar).as_millimetres()),
            _ => None,
        }
    }

    fn example_17(&self, quantity: &str) -> Option<f64> {
        let example = "Example 17";
        let (tmax, tmin) = (self.celsius(example, "Tmax"), self.celsius(example, "Tmin"));
        let (at_tmax, at_tmin) = (saturation_pressure(tmax), saturation_pressure(tmin));
        let vapour = Pressure::kilopascals(self.number(example, "ea"));
        let sunshine = self.number(example, "sunshine n");
        let elevation = self.number(example, "elevation");
        let site = SiteDay::new(self.number(example, "latitude"), elevation, self.day_of_year(example));
        let weather = DayWeather {
            tmax,
            tmin,
            humidity: Some(Humidity::VapourPressure(vapour)),
            wind_2m: Some(self.wind(example, "u2")),
            sunlight: Some(Sunlight::Sunshine { hours: sunshine }),
        };
        let got = reference_et(&site, &weather, Exposure::OPEN);
        let flux = soil_heat_flux_of_month(self.celsius(example, "Tmean April"), self.celsius(example, "Tmean March"));
        let slope = saturation_slope_kpa_per_k(tmax.middle(tmin));
        let gamma = psychrometric_constant_kpa_per_k(air_pressure(elevation));
        let wind_term = 1.0 + 0.34 * self.number(example, "u2");
        let whole = penman_monteith(&Terms {
            mean: tmax.middle(tmin),
            net: got.net,
            soil_heat_flux: flux,
            wind_2m: got.wind_2m,
            deficit: mean_saturation_pressure(at_tmax, at_tmin) - vapour,
            psychrometric_kpa_per_k: gamma,
        });
        let shortwave = net_shortwave(got.solar);
        match quantity {
            "slope delta" => Some(slope),
            "psychrometric constant" => Some(gamma),
            "1 + 0.34 u2" => Some(wind_term),
            "delta/(delta+gamma(1+0.34u2))" => Some(slope / (slope + gamma * wind_term)),
            "gamma/(delta+gamma(1+0.34u2))" => Some(gamma / (slope + gamma * wind_term)),
            "900/(T+273) u2" => {
                Some(900.0 / (tmax.middle(tmin).as_celsius() + 273.0) * got.wind_2m.as_metres_per_second())
            }
            "e0(Tmax)" => Some(at_tmax.as_kilopascals()),
            "e0(Tmin)" => Some(at_tmin.as_kilopascals()),
            "es" => Some(mean_saturation_pressure(at_tmax, at_tmin).as_kilopascals()),
            "es - ea" => Some((mean_saturation_pressure(at_tmax, at_tmin) - vapour).as_kilopascals()),
            "Ra" => Some(got.extraterrestrial.as_megajoules_per_square_metre()),
            "N" => Some(got.daylight_h),
            "n/N" => Some(sunshine / got.daylight_h),
            "Rs" => Some(got.solar.as_megajoules_per_square_metre()),
            "Rso" => Some(got.clear_sky.as_megajoules_per_square_metre()),
            "Rs/Rso" => Some(got.solar / got.clear_sky),
            "Rns" => Some(shortwave.as_megajoules_per_square_metre()),
            "Rnl" => Some((shortwave - got.net).as_megajoules_per_square_metre()),
            "Rn" => Some(got.net.as_megajoules_per_square_metre()),
            "G" => Some(flux.as_megajoules_per_square_metre()),
            "ETo" => Some(whole.as_millimetres()),
            _ => None,
        }
    }

    fn example_20(&self, quantity: &str) -> Option<f64> {
        let example = "Example 20";
        let (tmax, tmin) = (self.celsius(example, "Tmax"), self.celsius(example, "Tmin"));
        let (at_tmax, at_tmin) = (saturation_pressure(tmax), saturation_pressure(tmin));
        let mean = mean_saturation_pressure(at_tmax, at_tmin);
        let vapour = vapour_pressure_from_dew_point(tmin);
        let got = self.lyon(example, None);
        let shortwave = net_shortwave(got.solar);
        match quantity {
            "Tmean" => Some(tmax.middle(tmin).as_celsius()),
            "slope delta" => Some(saturation_slope_kpa_per_k(tmax.middle(tmin))),
            "psychrometric constant" => {
                Some(psychrometric_constant_kpa_per_k(air_pressure(self.number(example, "elevation"))))
            }
            "ea" => Some(got.vapour_pressure.as_kilopascals()),
            "e0(Tmax)" => Some(at_tmax.as_kilopascals()),
            "es" => Some(mean.as_kilopascals()),
            "es - ea" => Some((mean - vapour).as_kilopascals()),
            "RHmax" => Some(100.0 * (got.vapour_pressure / at_tmin)),
            "RHmin" => Some(got.humidity_min.as_percent()),
            "Ra" => Some(got.extraterrestrial.as_megajoules_per_square_metre()),
            "Rs" => Some(got.solar.as_megajoules_per_square_metre()),
            "Rso" => Some(got.clear_sky.as_megajoules_per_square_metre()),
            "Rs/Rso" => Some(got.solar / got.clear_sky),
            "Rns" => Some(shortwave.as_megajoules_per_square_metre()),
            "Rnl" => Some((shortwave - got.net).as_megajoules_per_square_metre()),
            "Rn" => Some(got.net.as_megajoules_per_square_metre()),
            "ETo at u2 = 2" => Some(got.et.as_millimetres()),
            "ETo at u2 = 1" => Some(self.lyon(example, Some(1.0)).et.as_millimetres()),
            "ETo at u2 = 3" => Some(self.lyon(example, Some(3.0)).et.as_millimetres()),
            "ETo Hargreaves (Eq. 52)" => Some(hargreaves(got.extraterrestrial, tmax, tmin).as_millimetres()),
            _ => None,
        }
    }

    fn figure_18(&self, quantity: &str) -> Option<f64> {
        let example = "Figure 18 (Jan-Jun)";
        let (what, month) = quantity.split_once(' ')?;
        // The paper's monthly examples take the 15th of the month.
        let fifteenths =
            [("January", 15), ("February", 46), ("March", 74), ("April", 105), ("May", 135), ("June", 166)];
        let &(_, day_of_year) = fifteenths.iter().find(|(name, _)| *name == month)?;
        let site = SiteDay::new(self.number(example, "latitude"), self.number(example, "elevation"), day_of_year);
        let seconds_a_day = 86.4;
        let weather = DayWeather {
            tmax: self.celsius(example, &format!("Tmax {month}")),
            tmin: self.celsius(example, &format!("Tmin {month}")),
            humidity: Some(Humidity::Mean(self.percent(example, &format!("RHmean {month}")))),
            wind_2m: Some(self.wind(example, &format!("wind run 2 m {month}")) / seconds_a_day),
            sunlight: Some(Sunlight::Sunshine { hours: self.number(example, &format!("sunshine {month}")) }),
        };
        let got = reference_et(&site, &weather, Exposure::OPEN);
        match what {
            "Rs" => Some(got.solar.as_megajoules_per_square_metre()),
            "ETo" => Some(got.et.as_millimetres()),
            _ => None,
        }
    }
}

#[test]
fn every_printed_output() {
    let book = Book(rows("fao56_examples.csv"));
    let outputs: Vec<&Row> = book.0.iter().filter(|row| row.text("role") == "output").collect();
    assert_eq!(outputs.len(), PRINTED);
    let mut not_computed = Vec::new();
    for row in &outputs {
        let (example, quantity) = (row.text("example"), row.text("quantity"));
        match book.computed(example, quantity) {
            Some(got) => {
                let what = format!("{example}, {quantity}");
                near(got, row.number("value"), row.number("tolerance"), &what);
            }
            None => not_computed.push((example, quantity)),
        }
    }
    assert_eq!(not_computed.len(), NOT_COMPUTED, "{not_computed:?}");
    let unexplained: Vec<_> =
        not_computed.iter().filter(|(example, _)| !LEFT_OUT.iter().any(|(left, _)| left == example)).collect();
    assert!(unexplained.is_empty(), "{unexplained:?}");
}
