//! The sums against what others printed or computed. Tables and their origin: `tests/published/SOURCES.md`.

#![allow(clippy::disallowed_methods, reason = "the tables are files")]

#[path = "published/crop_examples.rs"]
mod crop_examples;
#[path = "published/daylight.rs"]
mod daylight;
#[path = "published/emergence.rs"]
mod emergence;
#[path = "published/examples.rs"]
mod examples;
#[path = "published/media_and_seed.rs"]
mod media_and_seed;
#[path = "published/season.rs"]
mod season;
#[path = "published/stages.rs"]
mod stages;
#[path = "published/sun_sky.rs"]
mod sun_sky;
#[path = "published/table.rs"]
mod table;
#[path = "published/weather_days.rs"]
mod weather_days;
