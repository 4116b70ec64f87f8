//! What a press on a bed's card records: jobs, looks, pickings with their weight.

use super::bed_card::{Noted, OpenCard};
use super::tap::{Act, Tap};
use super::turn::Turn;
use crate::garden::{
    BedId, Change, JobDone, JobKind, Planting, Record, Seen, SeenKind, Slip, Start, Store, StoreError, When, standing,
};
use crate::quantity::{Unit, UnitOf, Written};
use crate::script::Text;
use crate::understanding::quantities;
use chrono::{NaiveDateTime, TimeDelta, Timelike};

/// Weights on buttons, grams.
const WEIGHTS_G: [f64; 5] = [100.0, 250.0, 500.0, 1000.0, 2000.0];
/// The most that is picked from a bed at once, grams: what is more was typed wrong.
const MOST_G: f64 = 100_000.0;
/// A whole number without its unit is grams from here on; below it may be kilograms.
const SURELY_GRAMS: f64 = 20.0;
/// Watered within this, it is not watered again.
const JUST_NOW: TimeDelta = TimeDelta::hours(1);

impl Turn<'_> {
    /// The time on the clock of a bed's site.
    fn local(&self, bed: &BedId) -> Result<NaiveDateTime, StoreError> {
        let now = self.moment();
        let zone = self.sheet.site(bed.site())?.map(|site| site.timezone);
        let local = zone.map_or_else(
            || now.with_timezone(self.now.offset()).naive_local(),
            |zone| now.with_timezone(&zone).naive_local(),
        );
        Ok(local.with_nanosecond(0).unwrap_or(local))
    }

    pub fn watered_lately(&self, bed: &BedId) -> Result<bool, StoreError> {
        let now = self.local(bed)?;
        let lately = |job: &JobDone| match job.on {
            When::Moment(moment) => moment <= now && now - moment < JUST_NOW,
            When::Day(_) => false,
        };
        Ok(self.sheet.jobs_of_bed(bed)?.iter().any(|job| job.job == JobKind::Water && lately(job)))
    }

    /// One job; of a new sowing the planting as well.
    fn records_of(&self, bed: &BedId, job: JobKind, what: Option<String>) -> Result<Vec<Record>, StoreError> {
        let now = self.local(bed)?;
        let by_the_hour = matches!(job, JobKind::Water | JobKind::Net);
        let on = if by_the_hour { When::Moment(now) } else { When::Day(now.date()) };
        let mut records = Vec::new();
        if let (JobKind::Sow, Some(crop)) = (job, &what) {
            let start = Start::Sown(now.date());
            records
                .push(Planting { bed: bed.clone(), crop: crop.clone(), microgreen: true, start, plants: None }.into());
        }
        records.push(JobDone { bed: bed.clone(), job, on, what, amount: None }.into());
        Ok(records)
    }

    /// Puts what is new of these, and remembers it with the card.
    fn note(&mut self, bed: &BedId, records: Vec<Record>) -> Result<(), StoreError> {
        let failed = |fault: serde_json::Error| StoreError::Failed(fault.to_string());
        let mut noted = Vec::new();
        for record in records {
            if self.sheet.record(record.kind(), &record.key())?.is_some() {
                continue;
            }
            let value = serde_json::from_slice(&record.to_json().map_err(failed)?).map_err(failed)?;
            noted.push(Noted { kind: record.kind(), value });
            self.sheet.write(vec![Change::Put(record)])?;
        }
        let card = self.open_card()?.filter(|card| card.bed.as_ref() == Some(bed));
        let chat = self.arrival.chat;
        let empty = OpenCard { chat, tokens: Vec::new(), message: None, bed: Some(bed.clone()), noted: Vec::new() };
        let mut card = card.unwrap_or(empty);
        if !noted.is_empty() {
            card.noted.push(noted);
        }
        self.sheet.write(vec![card.put()?])
    }

    pub fn record_job(&mut self, bed: &BedId, job: JobKind, what: Option<String>) -> Result<(), StoreError> {
        let records = self.records_of(bed, job, what)?;
        self.note(bed, records)
    }

    /// All that is due, and water where it is wanted; what was picked without its weight.
    pub fn record_all(&mut self, bed: &BedId) -> Result<(), StoreError> {
        let Some(today) = self.bed_today(bed)? else { return Ok(()) };
        let mut records = Vec::new();
        if today.thirsty && !self.watered_lately(bed)? {
            records.extend(self.records_of(bed, JobKind::Water, None)?);
        }
        for due in today.due {
            records.extend(self.records_of(bed, due.job, due.what)?);
        }
        self.note(bed, records)
    }

    pub fn record_look(&mut self, bed: &BedId, what: SeenKind) -> Result<(), StoreError> {
        let on = When::Moment(self.local(bed)?);
        self.note(bed, vec![Seen { bed: bed.clone(), on, what }.into()])
    }

    pub fn record_pick(&mut self, bed: &BedId, crop: Option<String>, grams: Option<f64>) -> Result<(), StoreError> {
        let amount = grams.filter(|grams| *grams > 0.0 && *grams <= MOST_G).map(weight);
        let now = self.local(bed)?;
        let picked = |on: When| -> Record {
            JobDone { bed: bed.clone(), job: JobKind::Pick, on, what: crop.clone(), amount }.into()
        };
        let mut pick = picked(When::Day(now.date()));
        // A second basket of the same weight is no repetition: its clock time tells it from the first.
        if amount.is_some() && self.sheet.record(pick.kind(), &pick.key())?.is_some() {
            pick = picked(When::Moment(now));
        }
        self.note(bed, vec![pick])
    }

    /// Which crop was picked, where several stand there.
    pub fn ask_crop(&mut self, bed: &BedId) -> Result<(), StoreError> {
        let plantings = self.sheet.plantings_of_bed(bed)?;
        let jobs = self.sheet.jobs_of_bed(bed)?;
        let mut crops: Vec<String> = Vec::new();
        for planting in standing(&plantings, &jobs, self.local(bed)?.date()) {
            if !crops.contains(&planting.crop) {
                crops.push(planting.crop.clone());
            }
        }
        if crops.len() < 2 {
            return self.ask_weight(bed, crops.pop());
        }
        let mut buttons: Vec<(String, Tap, bool)> = Vec::new();
        for crop in crops {
            let tap = Tap::Bed { bed: bed.clone(), act: Act::Weigh { crop: Some(crop.clone()) } };
            buttons.push((self.crop_name(&crop), tap, buttons.len() % 2 == 1));
        }
        buttons.push((self.phrase("card-button-back", &[]), self.card_of(bed), false));
        let question = self.phrase("card-which-crop", &[]);
        self.put_card(Some(bed), &question, buttons)
    }

    /// How much of it: common weights, any other typed.
    pub fn ask_weight(&mut self, bed: &BedId, crop: Option<String>) -> Result<(), StoreError> {
        let of = |act: Act| Tap::Bed { bed: bed.clone(), act };
        let mut buttons: Vec<(String, Tap, bool)> = Vec::new();
        for (place, grams) in WEIGHTS_G.into_iter().enumerate() {
            let tap = of(Act::Picked { crop: crop.clone(), grams: Some(grams) });
            buttons.push((self.amount(weight(grams)), tap, place % 3 != 0));
        }
        buttons.push((self.phrase("card-button-type", &[]), of(Act::TypeWeight { crop: crop.clone() }), false));
        buttons.push((
            self.phrase("card-button-unweighed", &[]),
            of(Act::Picked { crop: crop.clone(), grams: None }),
            true,
        ));
        buttons.push((self.phrase("card-button-back", &[]), self.card_of(bed), false));
        let name = crop.map_or_else(|| "-".to_owned(), |crop| self.crop_name(&crop));
        let question = self.phrase("card-how-much", &[("crop", &name)]);
        self.put_card(Some(bed), &question, buttons)
    }

    /// Words in answer to how much was picked; anything else is a message of its own.
    pub fn weight_typed(&mut self, bed: &BedId, crop: Option<String>, text: &str) -> Result<bool, StoreError> {
        let read = quantities::read(&Text::read(text), &self.house.known.words);
        let mass = read.said.iter().find(|said| said.written.unit.measures() == UnitOf::Mass);
        let grams = mass.and_then(|said| said.written.mass()).map(|mass| mass.as_kilograms() * 1000.0);
        let bare = text.trim().replace(',', ".").parse::<f64>().ok().or_else(|| read.counts.first().map(|n| n.value));
        let bare = bare.filter(|number| number.is_finite() && *number > 0.0 && text.split_whitespace().count() == 1);
        self.await_nothing()?;
        let grams = match (grams, bare) {
            (Some(grams), _) => grams,
            (None, Some(number)) if number >= SURELY_GRAMS && number.fract() == 0.0 => number,
            (None, Some(number)) => return self.ask_unit(bed, crop, number).map(|()| true),
            (None, None) => return Ok(false),
        };
        if !self.is_theirs(bed)? {
            self.say("crew-not-yours", &[]);
            return Ok(true);
        }
        if !(1.0..=MOST_G).contains(&grams) {
            self.say("card-odd-weight", &[]);
            return Ok(true);
        }
        self.record_pick(bed, crop, Some(grams))?;
        self.show_again(bed)?;
        Ok(true)
    }

    /// A small number without its unit.
    fn ask_unit(&mut self, bed: &BedId, crop: Option<String>, number: f64) -> Result<(), StoreError> {
        let mut buttons = Vec::new();
        for (unit, grams) in [(Unit::Kilogram, number * 1000.0), (Unit::Gram, number)] {
            let tap = Tap::Bed { bed: bed.clone(), act: Act::Picked { crop: crop.clone(), grams: Some(grams) } };
            buttons.push((self.amount(Written { value: number, unit }), tap, !buttons.is_empty()));
        }
        buttons.push((self.phrase("card-button-back", &[]), self.card_of(bed), false));
        let name = crop.map_or_else(|| "-".to_owned(), |crop| self.crop_name(&crop));
        let question = self.phrase("card-how-much", &[("crop", &name)]);
        self.put_card(Some(bed), &question, buttons)
    }
}

/// A weight as people say it.
fn weight(grams: f64) -> Written {
    if grams >= 1000.0 {
        Written { value: grams / 1000.0, unit: Unit::Kilogram }
    } else {
        Written { value: grams, unit: Unit::Gram }
    }
}
