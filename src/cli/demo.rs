//! The demo: an invented garden and its weather, in a store that is thrown away.

use super::arguments::Season;
use super::refusal::Refusal;
use crate::garden::import::import;
use crate::garden::store::Overlay;
use crate::garden::{Garden, KnownIds, read_garden};
use crate::knowledge::Knowledge;
use crate::weather::Forecast;
use chrono::{DateTime, FixedOffset, NaiveTime, Offset};

const GARDEN: &str = include_str!("../../demo-data/garden.toml");
const MAY: &str = include_str!("../../demo-data/forecast-may.json");
const JANUARY: &str = include_str!("../../demo-data/forecast-january.json");

/// The person the demo speaks as, in `chat`.
pub const PERSON: &str = "meera";

/// Three things to try.
pub const EXAMPLES: [(Season, [&str; 3]); 2] = [
    (
        Season::May,
        [
            "how often should I water the amaranth box this week?",
            "sarson wali tray kab kategi, kal boi thi",
            "what do I need for a 4 x 3 ft box, 1 ft deep?",
        ],
    ),
    (
        Season::January,
        [
            "how often should I water the east box this week?",
            "सरसों की ट्रे कब कटेगी",
            "what do I need for a 4 x 3 ft box, 1 ft deep?",
        ],
    ),
];

/// The examples of a season.
pub fn examples(season: Season) -> [&'static str; 3] {
    EXAMPLES.iter().find(|(of, _)| *of == season).map_or(EXAMPLES[0].1, |(_, examples)| *examples)
}

/// The demo garden in memory.
pub fn store(known: &Knowledge) -> Result<Overlay<'static>, Refusal> {
    let (crops, mixes, materials) = (known.crop_ids(), known.mix_ids(), known.material_ids());
    let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
    let garden = read_garden("demo-data/garden.toml", GARDEN, &ids, &Garden::default()).map_err(Refusal::Garden)?;
    let store = Overlay::in_memory();
    import(&store, garden)?;
    Ok(store)
}

/// The weather of a season.
pub fn forecast(season: Season) -> Result<Forecast, Refusal> {
    let (name, text) = match season {
        Season::May => ("demo-data/forecast-may.json", MAY),
        Season::January => ("demo-data/forecast-january.json", JANUARY),
    };
    Forecast::read(name, text).map_err(|problem| Refusal::Knowledge(vec![(problem, text.to_owned())]))
}

/// Eight o'clock on the first day of a forecast, where it is.
pub fn morning(forecast: &Forecast) -> Option<DateTime<FixedOffset>> {
    let at = forecast.first_day()?.and_time(NaiveTime::from_hms_opt(8, 0, 0)?);
    let there = at.and_local_timezone(forecast.timezone).earliest()?;
    Some(there.with_timezone(&there.offset().fix()))
}
