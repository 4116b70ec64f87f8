//! Values put into words.

use super::phrases::Phrases;
use super::rounding::{inward, nearest, outward, plain};
use crate::answering::{Answer, Line, Said};
use crate::knowledge::{Knowledge, Names};
use crate::quantity::{Estimate, Unit, Written};
use crate::script::Language;
use chrono::{Datelike, NaiveDate};
use fluent_bundle::{FluentArgs, FluentValue};

/// Puts lines into one language.
pub struct Speaker<'a> {
    pub phrases: &'a Phrases,
    pub known: &'a Knowledge,
    pub language: Language,
    pub answer: &'a Answer,
}

impl Speaker<'_> {
    /// A whole line.
    #[must_use]
    pub fn line(&self, line: &Line) -> String {
        let mut values = FluentArgs::new();
        for (name, said) in &line.values {
            values.set(*name, self.value(said));
        }
        self.phrases.say(line.phrase, &values)
    }

    fn value(&self, said: &Said) -> FluentValue<'static> {
        match said {
            Said::Count(count) => FluentValue::from(*count),
            Said::Key(key) => FluentValue::from(*key),
            said => FluentValue::from(self.said(said)),
        }
    }

    /// A value alone.
    #[must_use]
    pub fn said(&self, said: &Said) -> String {
        match said {
            Said::Volume(litres) => self.volume(litres.low().as_litres(), litres.high().as_litres()),
            Said::About(litres) => {
                let litres = litres.value().as_litres();
                // What rounds to a litre is one.
                if litres < 1.0 && nearest(litres * 1000.0) < 1000.0 {
                    self.unit("unit-ml", nearest(litres * 1000.0))
                } else {
                    self.unit("unit-L", nearest(litres))
                }
            }
            Said::Mass(mass) => self.mass(mass.low().as_kilograms(), mass.high().as_kilograms()),
            Said::Depth(depth) => self.span("unit-mm", depth.low().as_millimetres(), depth.high().as_millimetres()),
            Said::Area(area) => {
                let metric = self.unit("unit-m2", (area.as_square_metres() * 100.0).ceil() / 100.0);
                let feet = self.unit("unit-ft2", (area.as_square_metres() / 0.092_903_04 * 10.0).ceil() / 10.0);
                format!("{metric} ({feet})")
            }
            Said::Length(length) if length.as_metres() < 0.5 => self.unit("unit-cm", nearest(length.as_centimetres())),
            Said::Length(length) => {
                let metric = self.unit("unit-m", (length.as_metres() * 10.0).ceil() / 10.0);
                let feet = self.unit("unit-ft", (length.as_feet() * 2.0 - 1e-9).ceil() / 2.0);
                format!("{metric} ({feet})")
            }
            Said::Temperature(temperature) => self.unit("unit-celsius", temperature.as_celsius().round()),
            Said::Percent(percent) => self.unit("unit-percent", percent.round()),
            Said::Number(value, decimals) => format!("{value:.decimals$}"),
            Said::Span(is, decimals) => {
                let places = 10_f64.powi(i32::try_from(*decimals).unwrap_or(0));
                let (low, high) =
                    ((is.low() * places + 1e-9).floor() / places, (is.high() * places - 1e-9).ceil() / places);
                self.join(&format!("{low:.decimals$}"), &format!("{high:.decimals$}"))
            }
            Said::Count(count) => count.to_string(),
            Said::Day(day) => self.day(*day),
            Said::Days(days) => self.days(days),
            Said::SeasonDay(day) => self.season_day(*day, "season-day"),
            Said::SeasonDayOfYear(day) => self.season_day(*day, "season-day-year"),
            Said::Hours(hours) => plain(*hours),
            Said::Crop(id) => self.name(self.known.crops.get(id).map(|crop| &crop.names), id),
            Said::Material(id) => self.name(self.known.materials.get(id).map(|material| &material.names), id),
            Said::Mix(id) => self.name(self.known.mixes.get(id).map(|mix| &mix.names), id),
            Said::Place(id) => {
                let place = self.known.places.iter().find(|place| place.id == *id);
                self.name(place.map(|place| &place.names), id)
            }
            Said::Bed(id) => self.bed(&id.to_string()),
            Said::Size(sizes) => self.size(sizes),
            Said::Text(text) => text.of(self.language).clone(),
            Said::Key(key) => (*key).to_owned(),
            Said::Source(source) => source.to_string(),
            Said::Quoted(words) => words.clone(),
            Said::Line(line) => self.line(line),
            Said::List(all) => self.list(all),
            Said::Load(load) => self.span(
                "unit-kn-m2",
                load.low().as_kilonewtons_per_square_metre(),
                load.high().as_kilonewtons_per_square_metre(),
            ),
            Said::Dose(volume) => {
                let (low, high) = inward(volume.low().as_millilitres(), volume.high().as_millilitres());
                self.with_unit("unit-ml", &self.join(&plain(low), &plain(high)))
            }
            Said::UpTo(mass) => self.unit("unit-kg", outward(0.0, mass.as_kilograms()).1),
            Said::Clock(time) => time.format("%H:%M").to_string(),
        }
    }

    fn name(&self, names: Option<&Names>, id: &str) -> String {
        names.map_or_else(|| id.to_owned(), |names| names.first(self.language).to_owned())
    }

    /// What people call a bed, in the script of the reply where there is such a name.
    fn bed(&self, id: &str) -> String {
        let names = self.answer.called.get(id).map(Vec::as_slice).unwrap_or_default();
        let devanagari = |name: &&String| name.chars().any(|c| ('\u{900}'..='\u{97f}').contains(&c));
        let chosen = match self.language {
            Language::Hi => names.iter().find(devanagari).or_else(|| names.first()),
            _ => names.iter().find(|name| !devanagari(name)),
        };
        chosen.cloned().unwrap_or_else(|| id.to_owned())
    }

    fn unit(&self, unit: &str, number: f64) -> String {
        self.with_unit(unit, &plain(number))
    }

    fn with_unit(&self, unit: &str, number: &str) -> String {
        let mut values = FluentArgs::new();
        values.set("n", number.to_owned());
        self.phrases.say(unit, &values)
    }

    fn join(&self, low: &str, high: &str) -> String {
        if low == high {
            return low.to_owned();
        }
        let mut values = FluentArgs::new();
        values.set("low", low.to_owned());
        values.set("high", high.to_owned());
        self.phrases.say("span", &values)
    }

    fn span(&self, unit: &str, low: f64, high: f64) -> String {
        if (high - low).abs() < 1e-9 {
            return self.unit(unit, nearest(high));
        }
        let (low, high) = outward(low, high);
        self.with_unit(unit, &self.join(&plain(low), &plain(high)))
    }

    fn volume(&self, low: f64, high: f64) -> String {
        if high < 1.0 { self.span("unit-ml", low * 1000.0, high * 1000.0) } else { self.span("unit-L", low, high) }
    }

    fn mass(&self, low: f64, high: f64) -> String {
        if high < 1.0 { self.span("unit-g", low * 1000.0, high * 1000.0) } else { self.span("unit-kg", low, high) }
    }

    fn size(&self, sizes: &[Written]) -> String {
        let one = |written: &Written| self.with_unit(unit_phrase(written.unit), &plain(written.value));
        match sizes {
            // `4 × 3 ft` reads better than `4 ft × 3 ft`; a different unit keeps its own.
            [length, width, rest @ ..] if length.unit == width.unit && rest.iter().all(|r| r.unit == length.unit) => {
                let numbers: Vec<String> = sizes.iter().map(|written| plain(written.value)).collect();
                self.with_unit(unit_phrase(length.unit), &numbers.join(" × "))
            }
            [length, width, depth] if length.unit == width.unit => {
                let top = format!("{} × {}", plain(length.value), plain(width.value));
                format!("{} × {}", self.with_unit(unit_phrase(length.unit), &top), one(depth))
            }
            sizes => sizes.iter().map(one).collect::<Vec<_>>().join(" × "),
        }
    }

    fn list(&self, all: &[Said]) -> String {
        let mut texts: Vec<String> = all.iter().map(|said| self.said(said)).collect();
        let Some(last) = texts.pop() else { return String::new() };
        if texts.is_empty() {
            return last;
        }
        let mut values = FluentArgs::new();
        values.set("all", texts.join(", "));
        values.set("last", last);
        self.phrases.say("and-last", &values)
    }

    fn day(&self, day: NaiveDate) -> String {
        let plain = FluentArgs::new();
        let mut values = FluentArgs::new();
        let weekday = format!("weekday-{}", day.weekday().num_days_from_monday());
        values.set("weekday", self.phrases.say(&weekday, &plain));
        values.set("date", day.day());
        values.set("month", self.phrases.say(&format!("month-{}", day.month()), &plain));
        self.phrases.say("day", &values)
    }

    fn season_day(&self, day: NaiveDate, phrase: &str) -> String {
        let mut values = FluentArgs::new();
        values.set("date", day.day());
        values.set("month", self.phrases.say(&format!("month-{}", day.month()), &FluentArgs::new()));
        values.set("year", day.year().to_string());
        self.phrases.say(phrase, &values)
    }

    fn days(&self, days: &Estimate<NaiveDate>) -> String {
        let (low, value, high) = (days.low(), days.value(), days.high());
        if low == high {
            return self.day(value);
        }
        let mut values = FluentArgs::new();
        values.set("day", self.day(value));
        if (value - low).num_days() <= 1 && (high - value).num_days() <= 1 {
            return self.phrases.say("day-either-way", &values);
        }
        values.set("low", self.day(low));
        values.set("high", self.day(high));
        self.phrases.say("day-span", &values)
    }
}

fn unit_phrase(unit: Unit) -> &'static str {
    match unit {
        Unit::Litre => "unit-L",
        Unit::Millilitre => "unit-ml",
        Unit::Kilogram => "unit-kg",
        Unit::Gram => "unit-g",
        Unit::Millimetre => "unit-mm",
        Unit::Metre => "unit-m",
        Unit::SquareMetre => "unit-m2",
        Unit::Foot => "unit-ft",
        Unit::Inch => "unit-in",
        Unit::Centimetre => "unit-cm",
        Unit::SquareFoot => "unit-ft2",
        Unit::Percent => "unit-percent",
        Unit::MillilitrePerLitre => "unit-ml-per-l",
        Unit::GramPerLitre => "unit-g-per-l",
        Unit::KilonewtonPerSquareMetre => "unit-kn-m2",
    }
}
