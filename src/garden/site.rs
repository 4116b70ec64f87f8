//! Sites: one client's roof, terrace or balcony.

use super::id::SiteId;
use super::measure::Measure;
use crate::quantity::{Length, Volume};
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};

/// A place with beds, and what was said of its roof and its water.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Site {
    pub id: SiteId,
    pub name: String,
    /// North is positive.
    pub latitude_deg: f64,
    /// East is positive.
    pub longitude_deg: f64,
    pub elevation_m: f64,
    #[serde(with = "zone")]
    pub timezone: Tz,
    /// What the beds stand on ("concrete").
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<String>,
    /// The load that a licensed engineer allowed for this roof, in kN/m². Never a guess.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub engineer_limit_kn_m2: Option<f64>,
    /// Electrical conductivity of the watering water, in dS/m.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub water_ec_ds_m: Option<f64>,
    /// What the hose gives, in litres a minute.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose_l_min: Option<f64>,
    /// The watering can.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub can: Option<Measure<Volume>>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub walls: Vec<Wall>,
}

/// A wall that shades the beds.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Wall {
    /// Where it stands as seen from the beds, clockwise from north, in degrees.
    pub bearing_deg: f64,
    /// Its height over the top of the mix.
    pub height: Measure<Length>,
    pub distance: Measure<Length>,
}

/// A time zone by its name in the IANA database.
mod zone {
    use chrono_tz::Tz;
    use serde::{Deserialize, Deserializer, Serializer};

    pub fn serialize<S: Serializer>(zone: &Tz, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(zone.name())
    }

    pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Tz, D::Error> {
        String::deserialize(deserializer)?.parse().map_err(serde::de::Error::custom)
    }
}
