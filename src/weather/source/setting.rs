//! The setting that says where forecasts come from.

use std::path::PathBuf;
use std::str::FromStr;
use thiserror::Error;

/// The open forecast service of MET Norway.
const MET_NORWAY: &str = "https://api.met.no";
/// The open forecast service of Open-Meteo.
const OPEN_METEO: &str = "https://api.open-meteo.com";

/// Sources in the order in which they are asked; none: nothing is fetched.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Setting {
    pub choices: Vec<Choice>,
}

/// One source of a setting.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Choice {
    File(PathBuf),
    /// With the address of its server.
    MetNorway(String),
    /// With the address of its server.
    OpenMeteo(String),
}

/// A setting that names no such thing.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum NoSetting {
    #[error(
        "\"{0}\" is no source of weather; met-norway, open-meteo, file:PATH or none expected, several parted by commas"
    )]
    Unknown(String),
    #[error("\"{0}\" stands twice; each source once expected")]
    Twice(String),
    #[error("\"none\" stands beside other sources; it alone, or others without it expected")]
    NoneAndOthers,
    #[error("\"{0}\" is no address; one like http://127.0.0.1:8080 expected")]
    Address(String),
    #[error("\"file:\" names no file; file:PATH expected")]
    NoFile,
}

impl FromStr for Setting {
    type Err = NoSetting;

    fn from_str(text: &str) -> Result<Self, NoSetting> {
        let words: Vec<&str> = text.split(',').map(str::trim).collect();
        if words == [""] || words == ["none"] {
            return Ok(Self::default());
        }
        let mut choices: Vec<Choice> = Vec::new();
        for word in words {
            if word == "none" {
                return Err(NoSetting::NoneAndOthers);
            }
            let choice = word.parse::<Choice>()?;
            let same = |other: &Choice| std::mem::discriminant(other) == std::mem::discriminant(&choice);
            if choices.iter().any(same) {
                return Err(NoSetting::Twice(word.to_owned()));
            }
            choices.push(choice);
        }
        Ok(Self { choices })
    }
}

impl FromStr for Choice {
    type Err = NoSetting;

    fn from_str(text: &str) -> Result<Self, NoSetting> {
        if let Some(path) = text.strip_prefix("file:") {
            return if path.is_empty() { Err(NoSetting::NoFile) } else { Ok(Self::File(path.into())) };
        }
        let (name, address) = text.split_once('=').map_or((text, None), |(name, address)| (name, Some(address)));
        let base = |usual: &str| address.map_or_else(|| Ok(usual.to_owned()), checked_address);
        match name {
            "met-norway" => Ok(Self::MetNorway(base(MET_NORWAY)?)),
            "open-meteo" => Ok(Self::OpenMeteo(base(OPEN_METEO)?)),
            _ => Err(NoSetting::Unknown(text.to_owned())),
        }
    }
}

/// The start of an address, without a slash at its end.
fn checked_address(text: &str) -> Result<String, NoSetting> {
    let refusal = || NoSetting::Address(text.to_owned());
    let address = reqwest::Url::parse(text).map_err(|_| refusal())?;
    let plain = matches!(address.scheme(), "http" | "https") && address.has_host();
    if !plain || address.query().is_some() || address.fragment().is_some() {
        return Err(refusal());
    }
    Ok(text.trim_end_matches('/').to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(text: &str, expected: &str) {
        let got = text.parse::<Setting>();
        let got = got.map_or_else(|refusal| refusal.to_string(), |setting| format!("{:?}", setting.choices));
        assert_eq!(got, expected, "{text}");
    }

    #[test]
    fn what_may_be_set() {
        case("none", "[]");
        case("", "[]");
        case("met-norway", "[MetNorway(\"https://api.met.no\")]");
        case(
            "met-norway=http://127.0.0.1:8080/, open-meteo, file:days.json",
            "[MetNorway(\"http://127.0.0.1:8080\"), OpenMeteo(\"https://api.open-meteo.com\"), File(\"days.json\")]",
        );
        let unknown =
            "is no source of weather; met-norway, open-meteo, file:PATH or none expected, several parted by commas";
        case("metno", &format!("\"metno\" {unknown}"));
        case("met-norway,,none", &format!("\"\" {unknown}"));
        case("met-norway,met-norway=http://a", "\"met-norway=http://a\" stands twice; each source once expected");
        case("met-norway,none", "\"none\" stands beside other sources; it alone, or others without it expected");
        case("met-norway=here", "\"here\" is no address; one like http://127.0.0.1:8080 expected");
        case("file:", "\"file:\" names no file; file:PATH expected");
    }
}
