//! A place with its monthly normals.

use super::fact::SourceRef;
use super::files::Files;
use super::names::Names;
use super::raw::Reader;
use crate::quantity::{Fraction, Quantity, Temperature, WaterDepth, WindSpeed};
use serde::Deserialize;
use toml::Spanned;

/// A city or grid point of the knowledge base.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    pub id: String,
    pub names: Names,
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
    pub timezone: chrono_tz::Tz,
    /// The years the normals are of.
    pub period: String,
    pub source: SourceRef,
    pub read: bool,
    /// January first.
    pub months: [Month; 12],
}

/// The normals of one month.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Month {
    pub tmax: Temperature,
    pub tmin: Temperature,
    /// Over the whole month.
    pub rain: Option<WaterDepth>,
    pub humidity_mean: Option<Fraction>,
    pub wind_2m: Option<WindSpeed>,
    pub sunshine_h: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Places {
    places: Vec<Spanned<RawPlace>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RawPlace {
    id: String,
    names: Names,
    latitude: f64,
    longitude: f64,
    elevation_m: f64,
    timezone: String,
    #[serde(rename = "country")]
    _country: String,
    position_from: String,
    period: String,
    from: String,
    read: bool,
    #[serde(rename = "note")]
    _note: Option<String>,
    tmax_c: [f64; 12],
    tmin_c: [f64; 12],
    rain_mm: Option<[f64; 12]>,
    rh_mean_percent: Option<[f64; 12]>,
    wind_2m_m_s: Option<[f64; 12]>,
    sunshine_h: Option<[f64; 12]>,
}

impl Place {
    /// Great-circle distance in km.
    #[must_use]
    pub fn kilometres_from(&self, latitude_deg: f64, longitude_deg: f64) -> f64 {
        kilometres((latitude_deg, longitude_deg), (self.latitude_deg, self.longitude_deg))
    }
}

/// Great-circle distance in km between two positions of latitude and longitude in degrees (haversine, mean earth
/// radius 6 371 km).
#[must_use]
pub fn kilometres(from: (f64, f64), to: (f64, f64)) -> f64 {
    const MEAN_EARTH_RADIUS_KM: f64 = 6_371.0;
    let (here, there) = (from.0.to_radians(), to.0.to_radians());
    let (rise, turn) = ((there - here) / 2.0, (to.1 - from.1).to_radians() / 2.0);
    let chord =
        libm::sin(rise) * libm::sin(rise) + libm::cos(here) * libm::cos(there) * libm::sin(turn) * libm::sin(turn);
    2.0 * MEAN_EARTH_RADIUS_KM * libm::asin(libm::sqrt(chord.clamp(0.0, 1.0)))
}

pub fn read(files: &Files, reader: &mut Reader<'_>) -> Vec<Place> {
    const FILE: &str = "places.toml";
    let text = files.text(FILE).unwrap_or_default();
    reader.open(FILE, text);
    match toml::from_str::<Places>(text) {
        Ok(list) => list.places.into_iter().filter_map(|raw| place(reader, raw)).collect(),
        Err(refusal) => {
            reader.problem(refusal.span().unwrap_or(0..0), refusal.message().trim().to_owned());
            Vec::new()
        }
    }
}

fn place(reader: &mut Reader<'_>, raw: Spanned<RawPlace>) -> Option<Place> {
    let span = raw.span();
    let raw = raw.into_inner();
    let source = reader.source(span.clone(), &raw.from)?;
    reader.source(span.clone(), &raw.position_from)?;
    let timezone = match raw.timezone.parse() {
        Ok(timezone) => timezone,
        Err(_) => {
            reader.problem(
                span,
                format!("time zone \"{}\" is not known; one like \"Asia/Kolkata\" expected", raw.timezone),
            );
            return None;
        }
    };
    if !((-90.0..=90.0).contains(&raw.latitude) && (-180.0..=180.0).contains(&raw.longitude)) {
        reader.problem(span, "latitude -90 to 90 and longitude -180 to 180 expected");
        return None;
    }
    let months = months(&raw).map_err(|refusal| reader.problem(span, format!("{}: {refusal}", raw.id))).ok()?;
    Some(Place {
        id: raw.id,
        names: raw.names,
        latitude_deg: raw.latitude,
        longitude_deg: raw.longitude,
        elevation_m: raw.elevation_m,
        timezone,
        period: raw.period,
        source,
        read: raw.read,
        months,
    })
}

fn months(raw: &RawPlace) -> Result<[Month; 12], String> {
    let mut all = Vec::with_capacity(12);
    for (index, (tmax, tmin)) in raw.tmax_c.iter().zip(raw.tmin_c).enumerate() {
        let named = |refusal: crate::quantity::OutOfBounds| format!("month {}: {refusal}", index + 1);
        if tmin > *tmax {
            return Err(format!("month {}: minimum {tmin} above maximum {tmax}", index + 1));
        }
        let of = |list: Option<[f64; 12]>| list.and_then(|list| list.get(index).copied());
        all.push(Month {
            tmax: Temperature::checked(*tmax).map_err(named)?,
            tmin: Temperature::checked(tmin).map_err(named)?,
            rain: of(raw.rain_mm).map(WaterDepth::checked).transpose().map_err(named)?,
            humidity_mean: of(raw.rh_mean_percent)
                .map(|rh| Fraction::checked(rh / 100.0))
                .transpose()
                .map_err(named)?,
            wind_2m: of(raw.wind_2m_m_s).map(WindSpeed::checked).transpose().map_err(named)?,
            sunshine_h: of(raw.sunshine_h).filter(|hours| (0.0..=24.0).contains(hours)),
        });
    }
    all.try_into().map_err(|_| "twelve months expected".to_owned())
}
