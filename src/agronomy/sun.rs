//! The sun over a place on a day, and the radiation that reaches and leaves the ground (FAO-56,
//! chapter 3).

use crate::agronomy::maths::{acos, cos, sin, sqrt, tan};
use crate::quantity::{Estimate, Fraction, Pressure, Radiation, Temperature};
use std::f64::consts::{PI, TAU};

/// Solar constant, MJ m⁻² min⁻¹ (FAO-56 eq. 21).
const SOLAR_CONSTANT: f64 = 0.0820;
/// Stefan-Boltzmann constant, MJ K⁻⁴ m⁻² d⁻¹ (FAO-56 eq. 39).
const STEFAN_BOLTZMANN: f64 = 4.903e-9;
/// Albedo of the reference grass (FAO-56 eq. 38).
const REFERENCE_ALBEDO: f64 = 0.23;
/// Adjustment coefficient of eq. 50 for places inland, K^-0.5.
const INLAND_ADJUSTMENT: f64 = 0.16;

/// What the sun does over one latitude on one day of the year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunDay {
    inverse_distance: f64,
    sunset_angle: f64,
    /// sin φ sin δ
    sines: f64,
    /// cos φ cos δ
    cosines: f64,
}

impl SunDay {
    /// Latitude in degrees, north positive; day of the year 1 to 366. FAO-56 eq. 22 to 25.
    ///
    /// Where the sun does not set (rise) that day, the sunset hour angle is π (0).
    #[must_use]
    pub fn new(latitude_deg: f64, day_of_year: u16) -> Self {
        let latitude = latitude_deg.to_radians();
        let year_angle = TAU * f64::from(day_of_year) / 365.0;
        let declination = 0.409 * sin(year_angle - 1.39);
        Self {
            inverse_distance: 1.0 + 0.033 * cos(year_angle),
            sunset_angle: acos((-tan(latitude) * tan(declination)).clamp(-1.0, 1.0)),
            sines: sin(latitude) * sin(declination),
            cosines: cos(latitude) * cos(declination),
        }
    }

    /// Sunset hour angle in radians, 0 to π. FAO-56 eq. 25.
    #[must_use]
    pub const fn sunset_angle_rad(&self) -> f64 {
        self.sunset_angle
    }

    /// Hours that the sun's centre is above a flat horizon without refraction. FAO-56 eq. 34.
    #[must_use]
    pub fn daylight_hours(&self) -> f64 {
        24.0 / PI * self.sunset_angle
    }

    /// Extraterrestrial radiation of the day. FAO-56 eq. 21.
    #[must_use]
    pub fn extraterrestrial(&self) -> Radiation {
        self.extraterrestrial_between(-self.sunset_angle, self.sunset_angle)
    }

    /// Extraterrestrial radiation between two solar hour angles in radians (0 at solar noon, negative
    /// before). FAO-56 eq. 28. Angles at night are cut off at sunrise and sunset.
    #[must_use]
    pub fn extraterrestrial_between(&self, from_rad: f64, until_rad: f64) -> Radiation {
        let from = from_rad.clamp(-self.sunset_angle, self.sunset_angle);
        let until = until_rad.clamp(from, self.sunset_angle);
        let geometry = (until - from) * self.sines + self.cosines * (sin(until) - sin(from));
        let minutes = 12.0 * 60.0 / PI;
        Radiation::megajoules_per_square_metre(minutes * SOLAR_CONSTANT * self.inverse_distance * geometry.max(0.0))
    }
}

/// Clear-sky radiation from the extraterrestrial, at an elevation in metres. FAO-56 eq. 37.
#[must_use]
pub fn clear_sky(extraterrestrial: Radiation, elevation_m: f64) -> Radiation {
    extraterrestrial * (0.75 + 2e-5 * elevation_m)
}

/// Solar radiation from hours of bright sunshine, with the coefficients 0.25 and 0.50. FAO-56 eq. 35.
///
/// Recorded sunshine longer than the day counts as a whole day of it.
#[must_use]
pub fn solar_from_sunshine(extraterrestrial: Radiation, sunshine_hours: f64, daylight_hours: f64) -> Radiation {
    let share = if daylight_hours > 0.0 { (sunshine_hours / daylight_hours).clamp(0.0, 1.0) } else { 0.0 };
    extraterrestrial * (0.25 + 0.50 * share)
}

/// Solar radiation from the day's range of temperature, inland. FAO-56 eq. 50 with 0.16 K^-0.5.
#[must_use]
pub fn solar_from_temperature(extraterrestrial: Radiation, tmax: Temperature, tmin: Temperature) -> Radiation {
    extraterrestrial * (INLAND_ADJUSTMENT * sqrt((tmax - tmin).as_kelvins().max(0.0)))
}

/// Net shortwave radiation of the reference grass. FAO-56 eq. 38.
#[must_use]
pub fn net_shortwave(solar: Radiation) -> Radiation {
    solar * (1.0 - REFERENCE_ALBEDO)
}

/// Radiation of a black body over a day, σT⁴ (FAO-56 eq. 39, with 273.16 K).
#[must_use]
pub fn black_body(surface: Temperature) -> Radiation {
    let square = (surface.as_celsius() + 273.16) * (surface.as_celsius() + 273.16);
    Radiation::megajoules_per_square_metre(STEFAN_BOLTZMANN * square * square)
}

/// Net outgoing longwave radiation. FAO-56 eq. 39. `clearness` is Rs/Rso, 1 at most.
#[must_use]
pub fn net_longwave(tmax: Temperature, tmin: Temperature, vapour: Pressure, clearness: Fraction) -> Radiation {
    let emission = (black_body(tmax) + black_body(tmin)) / 2.0;
    emission * (0.34 - 0.14 * sqrt(vapour.as_kilopascals().max(0.0))) * (1.35 * clearness.as_of_one() - 0.35)
}

/// The share of a day's beam energy that falls in one unbroken spell of direct sun of so many hours.
///
/// It isn't known when in the day the spell comes: centred on solar noon it holds most (`high`), at one
/// end of the day least (`low`); `value` is the middle of the two. Weighed with FAO-56 eq. 28, that is
/// without the longer way through the air of a low sun. A spell as long as the day is exactly the whole.
#[must_use]
pub fn beam_share(sun_hours: f64, latitude_deg: f64, day_of_year: u16) -> Estimate<Fraction> {
    let sun = SunDay::new(latitude_deg, day_of_year);
    let half_spell = sun_hours.max(0.0) * PI / 24.0;
    if half_spell >= sun.sunset_angle {
        return Estimate::exactly(Fraction::WHOLE);
    }
    let whole_day = sun.extraterrestrial();
    let at_noon = sun.extraterrestrial_between(-half_spell, half_spell) / whole_day;
    let at_one_end = sun.extraterrestrial_between(sun.sunset_angle - 2.0 * half_spell, sun.sunset_angle) / whole_day;
    Estimate::spanning(f64::midpoint(at_noon, at_one_end), [at_noon, at_one_end]).map(Fraction::of_one)
}

/// The diffuse part of a day's global radiation, from the clearness index `KT` (global over
/// extraterrestrial) and the sunset hour angle in radians.
///
/// Erbs, Klein and Duffie 1982, Solar Energy 28: 293-302, daily correlation: one curve for short days
/// (sunset angle up to 81.4°), one for the rest. Coefficients as restated in Duffie and Beckman, Solar
/// Engineering of Thermal Processes, eq. 2.11.1, seen in a public restatement, not in the paper.
#[must_use]
pub fn diffuse_fraction(clearness_index: Fraction, sunset_angle_rad: f64) -> Fraction {
    let k = clearness_index.as_of_one().clamp(0.0, 1.0);
    let diffuse = if sunset_angle_rad.to_degrees() <= 81.4 {
        if k < 0.715 { 1.0 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) } else { 0.143 }
    } else if k < 0.722 {
        1.0 + k * (0.2832 + k * (-2.5557 + k * 0.8448))
    } else {
        0.175
    };
    Fraction::of_one(diffuse.clamp(0.0, 1.0))
}

/// The part of the open sky's radiation that reaches a bed with so many hours of direct sun on a clear
/// day: all of the diffuse part and the bed's share of the beam.
///
/// What stands around a bed also hides a part of the sky; that loss of diffuse light is not counted.
#[must_use]
pub fn light_at_bed(
    sun_hours: f64,
    latitude_deg: f64,
    day_of_year: u16,
    open_sky_solar: Radiation,
) -> Estimate<Fraction> {
    let sun = SunDay::new(latitude_deg, day_of_year);
    let outside = sun.extraterrestrial();
    let index = if outside > Radiation::default() { open_sky_solar / outside } else { 0.0 };
    let diffuse = diffuse_fraction(Fraction::of_one(index), sun.sunset_angle).as_of_one();
    beam_share(sun_hours, latitude_deg, day_of_year)
        .map(|share| Fraction::of_one((diffuse + (1.0 - diffuse) * share.as_of_one()).min(1.0)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(sun_hours: f64, low: f64, high: f64) {
        // At the equator at an equinox (declination 0) the beam share is an integral of the cosine:
        // sin(h) for a spell centred on noon, (1 − cos 2h)/2 at one end of the day.
        let share = beam_share(sun_hours, 0.0, 81);
        assert!((share.low().as_of_one() - low).abs() < 1e-9, "{share:?}");
        assert!((share.high().as_of_one() - high).abs() < 1e-9, "{share:?}");
    }

    #[test]
    fn share_of_the_beam() {
        case(0.0, 0.0, 0.0);
        case(4.0, (1.0 - 0.5) / 2.0, 0.5);
        case(6.0, 0.5, (PI / 4.0).sin());
        case(8.0, 0.75, 3.0_f64.sqrt() / 2.0);
        case(12.0, 1.0, 1.0);
        case(15.0, 1.0, 1.0);
    }

    #[test]
    fn polar_day_and_night_have_no_holes() {
        assert_eq!(beam_share(3.0, 85.0, 355), Estimate::exactly(Fraction::WHOLE));
        assert_eq!(SunDay::new(85.0, 355).extraterrestrial(), Radiation::default());
        assert!((SunDay::new(85.0, 172).daylight_hours() - 24.0).abs() < 1e-12);
    }

    #[test]
    fn a_dark_day_is_all_diffuse() {
        let light = light_at_bed(2.0, 21.0, 200, Radiation::default());
        assert_eq!(light, Estimate::exactly(Fraction::WHOLE));
        // Erbs, Klein and Duffie's curve runs into its constant end without a step to speak of.
        assert!((diffuse_fraction(Fraction::of_one(0.7149), 1.2).as_of_one() - 0.143).abs() < 0.002);
        assert!((diffuse_fraction(Fraction::of_one(0.7219), 1.6).as_of_one() - 0.175).abs() < 0.02);
    }
}
