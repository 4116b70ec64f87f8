//! Reference evapotranspiration: what well-watered short grass would lose on a day (FAO-56, chapter 4).

use crate::agronomy::atmosphere::{
    air_pressure, mean_saturation_pressure, psychrometric_constant_kpa_per_k, saturation_pressure,
    saturation_slope_kpa_per_k, vapour_pressure_from_dew_point, vapour_pressure_from_extremes,
    vapour_pressure_from_highest, vapour_pressure_from_mean,
};
use crate::agronomy::maths::sqrt;
use crate::agronomy::sun::{
    SunDay, clear_sky, net_longwave, net_shortwave, solar_from_sunshine, solar_from_temperature,
};
use crate::quantity::{Fraction, Pressure, Radiation, Temperature, WaterDepth, WindSpeed};

/// The wind where none is known (FAO-56 chapter 3, missing wind data: 2 m/s).
pub const DEFAULT_WIND: WindSpeed = WindSpeed::metres_per_second(2.0);
/// Rs/Rso where the sun does not rise and the ratio has no meaning: between the humid (0.4 to 0.6) and
/// the dry (0.7 to 0.8) values that FAO-56 gives for nights beside eq. 53; from memory.
const SUNLESS_CLEARNESS: f64 = 0.6;

/// What is known of a day's weather.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayWeather {
    pub tmax: Temperature,
    pub tmin: Temperature,
    pub humidity: Option<Humidity>,
    /// Wind 2 m above the ground.
    pub wind_2m: Option<WindSpeed>,
    pub sunlight: Option<Sunlight>,
}

/// How the vapour in the air was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Humidity {
    VapourPressure(Pressure),
    /// The day's highest and lowest relative humidity.
    MaxMin {
        max: Fraction,
        min: Fraction,
    },
    /// The day's highest relative humidity alone.
    Max(Fraction),
    /// The day's mean relative humidity.
    Mean(Fraction),
    DewPoint(Temperature),
}

/// How the sunlight was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sunlight {
    /// Solar radiation on the level, under the open sky.
    Measured(Radiation),
    /// Hours of bright sunshine.
    Sunshine { hours: f64 },
}

/// How much of the open sky's light and of the open field's wind reaches the plants.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Exposure {
    /// Cuts the shortwave radiation only: cloudiness stays that of the open sky.
    pub light: Fraction,
    pub wind: Fraction,
}

impl Exposure {
    /// An open field.
    pub const OPEN: Self = Self { light: Fraction::WHOLE, wind: Fraction::WHOLE };
}

/// A value that was not measured, and the published procedure that stood in for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Procedure {
    /// Solar radiation from sunshine hours, eq. 35.
    SolarFromSunshine,
    /// Solar radiation from the temperature range, eq. 50.
    SolarFromTemperature,
    /// Vapour pressure from the lowest temperature, eq. 48.
    DewPointIsTmin,
    /// Vapour pressure from the highest relative humidity alone, eq. 18.
    HumidityFromHighest,
    /// Vapour pressure from the mean relative humidity, eq. 19.
    HumidityFromMean,
    /// Wind of 2 m/s.
    DefaultWind,
    /// No sun rises: cloudiness assumed.
    SunlessClearness,
}

impl Procedure {
    pub const ALL: [Self; 7] = [
        Self::SolarFromSunshine,
        Self::SolarFromTemperature,
        Self::DewPointIsTmin,
        Self::HumidityFromHighest,
        Self::HumidityFromMean,
        Self::DefaultWind,
        Self::SunlessClearness,
    ];

    /// The place in FAO-56.
    #[must_use]
    pub const fn place(self) -> &'static str {
        match self {
            Self::SolarFromSunshine => "eq. 35",
            Self::SolarFromTemperature => "eq. 50",
            Self::DewPointIsTmin => "eq. 48",
            Self::HumidityFromHighest => "eq. 18",
            Self::HumidityFromMean => "eq. 19",
            Self::DefaultWind => "chapter 3, missing wind data",
            Self::SunlessClearness => "chapter 4, eq. 53",
        }
    }
}

/// The procedures that one sum used; a small set, so that a sum takes no memory of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Procedures(u8);

impl Procedures {
    fn add(&mut self, procedure: Procedure) {
        self.0 |= 1 << procedure as u8;
    }

    #[must_use]
    pub const fn contains(self, procedure: Procedure) -> bool {
        self.0 & (1 << procedure as u8) != 0
    }

    /// In the order of [`Procedure::ALL`].
    pub fn iter(self) -> impl Iterator<Item = Procedure> {
        Procedure::ALL.into_iter().filter(move |&procedure| self.contains(procedure))
    }
}

/// What belongs to a site and a day of the year, worked out once for any number of weathers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SiteDay {
    sun: SunDay,
    extraterrestrial: Radiation,
    clear_sky: Radiation,
    daylight_h: f64,
    psychrometric: f64,
}

impl SiteDay {
    /// Latitude in degrees, north positive; elevation in metres; day of the year 1 to 366.
    #[must_use]
    pub fn new(latitude_deg: f64, elevation_m: f64, day_of_year: u16) -> Self {
        let sun = SunDay::new(latitude_deg, day_of_year);
        let extraterrestrial = sun.extraterrestrial();
        Self {
            sun,
            extraterrestrial,
            clear_sky: clear_sky(extraterrestrial, elevation_m),
            daylight_h: sun.daylight_hours(),
            psychrometric: psychrometric_constant_kpa_per_k(air_pressure(elevation_m)),
        }
    }

    #[must_use]
    pub const fn sun(&self) -> &SunDay {
        &self.sun
    }
    /// Ra, FAO-56 eq. 21.
    #[must_use]
    pub const fn extraterrestrial(&self) -> Radiation {
        self.extraterrestrial
    }
    /// Rso, FAO-56 eq. 37.
    #[must_use]
    pub const fn clear_sky(&self) -> Radiation {
        self.clear_sky
    }
    /// N, FAO-56 eq. 34.
    #[must_use]
    pub const fn daylight_h(&self) -> f64 {
        self.daylight_h
    }
}

/// A day's reference evapotranspiration and what it was made from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReferenceEt {
    /// Not held at zero: on a cold humid day it can be a little below.
    pub et: WaterDepth,
    pub extraterrestrial: Radiation,
    /// Under the open sky, measured or estimated.
    pub solar: Radiation,
    pub clear_sky: Radiation,
    /// After the shade.
    pub net: Radiation,
    pub daylight_h: f64,
    pub vapour_pressure: Pressure,
    /// ea over e°(Tmax), 1 at most: what eq. 62, 65, 70 and 72 ask for.
    pub humidity_min: Fraction,
    /// After the shelter.
    pub wind_2m: WindSpeed,
    pub procedures: Procedures,
}

/// Reference evapotranspiration of one day by FAO-56 eq. 6, with eq. 9, 11 to 13, 17 to 19, 38 to 40,
/// soil heat flux 0, and the procedures of chapter 3 for what is missing.
///
/// Rs/Rso is held at 1 from above only, as in the paper. The result is not held at zero.
#[must_use]
pub fn reference_et(site: &SiteDay, weather: &DayWeather, exposure: Exposure) -> ReferenceEt {
    let mut procedures = Procedures::default();
    let at_tmax = saturation_pressure(weather.tmax);
    let at_tmin = saturation_pressure(weather.tmin);
    let vapour_pressure = vapour(weather, at_tmax, at_tmin, &mut procedures);
    let solar = solar(site, weather, &mut procedures);
    let open_wind = weather.wind_2m.unwrap_or_else(|| {
        procedures.add(Procedure::DefaultWind);
        DEFAULT_WIND
    });
    let wind_2m = open_wind * exposure.wind.as_of_one();
    let clearness = if site.clear_sky > Radiation::default() {
        (solar / site.clear_sky).min(1.0)
    } else {
        procedures.add(Procedure::SunlessClearness);
        SUNLESS_CLEARNESS
    };
    let longwave = net_longwave(weather.tmax, weather.tmin, vapour_pressure, Fraction::of_one(clearness));
    let net = net_shortwave(solar * exposure.light.as_of_one()) - longwave;
    let et = penman_monteith(&Terms {
        mean: weather.tmax.middle(weather.tmin),
        net,
        soil_heat_flux: Radiation::default(),
        wind_2m,
        deficit: mean_saturation_pressure(at_tmax, at_tmin) - vapour_pressure,
        psychrometric_kpa_per_k: site.psychrometric,
    });
    ReferenceEt {
        et,
        extraterrestrial: site.extraterrestrial,
        solar,
        clear_sky: site.clear_sky,
        net,
        daylight_h: site.daylight_h,
        vapour_pressure,
        humidity_min: Fraction::of_one((vapour_pressure / at_tmax).min(1.0)),
        wind_2m,
        procedures,
    }
}

/// The terms of eq. 6.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Terms {
    pub mean: Temperature,
    pub net: Radiation,
    pub soil_heat_flux: Radiation,
    pub wind_2m: WindSpeed,
    /// es − ea
    pub deficit: Pressure,
    pub psychrometric_kpa_per_k: f64,
}

/// FAO-56 eq. 6 itself.
#[must_use]
#[inline]
pub fn penman_monteith(terms: &Terms) -> WaterDepth {
    let slope = saturation_slope_kpa_per_k(terms.mean);
    let gamma = terms.psychrometric_kpa_per_k;
    let energy = (terms.net - terms.soil_heat_flux).as_megajoules_per_square_metre();
    let wind = terms.wind_2m.as_metres_per_second();
    let drying = gamma * 900.0 / (terms.mean.as_celsius() + 273.0) * wind * terms.deficit.as_kilopascals();
    WaterDepth::millimetres((0.408 * slope * energy + drying) / (slope + gamma * (1.0 + 0.34 * wind)))
}

/// Soil heat flux of a month from its own mean temperature and the month's before. FAO-56 eq. 44.
#[must_use]
pub fn soil_heat_flux_of_month(mean: Temperature, mean_before: Temperature) -> Radiation {
    Radiation::megajoules_per_square_metre(0.14 * (mean - mean_before).as_kelvins())
}

/// A radiation as the depth of water it could evaporate. FAO-56 eq. 20.
#[must_use]
pub fn as_evaporation(radiation: Radiation) -> WaterDepth {
    WaterDepth::millimetres(0.408 * radiation.as_megajoules_per_square_metre())
}

/// Reference evapotranspiration from temperatures alone. FAO-56 eq. 52, with Ra as evaporation (0.408).
#[must_use]
pub fn hargreaves(extraterrestrial: Radiation, tmax: Temperature, tmin: Temperature) -> WaterDepth {
    let range = (tmax - tmin).as_kelvins().max(0.0);
    as_evaporation(extraterrestrial) * (0.0023 * (tmax.middle(tmin).as_celsius() + 17.8) * sqrt(range))
}

fn vapour(weather: &DayWeather, at_tmax: Pressure, at_tmin: Pressure, procedures: &mut Procedures) -> Pressure {
    match weather.humidity {
        Some(Humidity::VapourPressure(pressure)) => pressure,
        Some(Humidity::MaxMin { max, min }) => vapour_pressure_from_extremes(at_tmax, at_tmin, max, min),
        Some(Humidity::Max(max)) => {
            procedures.add(Procedure::HumidityFromHighest);
            vapour_pressure_from_highest(at_tmin, max)
        }
        Some(Humidity::Mean(mean)) => {
            procedures.add(Procedure::HumidityFromMean);
            vapour_pressure_from_mean(at_tmax, at_tmin, mean)
        }
        Some(Humidity::DewPoint(dew_point)) => vapour_pressure_from_dew_point(dew_point),
        None => {
            procedures.add(Procedure::DewPointIsTmin);
            at_tmin
        }
    }
}

fn solar(site: &SiteDay, weather: &DayWeather, procedures: &mut Procedures) -> Radiation {
    match weather.sunlight {
        Some(Sunlight::Measured(solar)) => solar,
        Some(Sunlight::Sunshine { hours }) => {
            procedures.add(Procedure::SolarFromSunshine);
            solar_from_sunshine(site.extraterrestrial, hours, site.daylight_h)
        }
        None => {
            procedures.add(Procedure::SolarFromTemperature);
            solar_from_temperature(site.extraterrestrial, weather.tmax, weather.tmin)
        }
    }
}
