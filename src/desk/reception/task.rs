//! The buttons of a reminder: done, move, why, for each of its jobs, and what follows when one is pressed.

use super::button::{Button, Does, token};
use super::letter::{Follow, Label};
use super::reminder::Reminded;
use super::turn::Turn;
use super::undo::Told;
use crate::answering::reminder::Item;
use crate::answering::{Answer, Line, Outcome, Said};
use crate::desk::talk::{Desk, Message};
use crate::garden::rights::may_record;
use crate::garden::{BedId, Change, JobKind, Move, Record, Slip, Store, StoreError};
use crate::knowledge::Kind;
use crate::planning::moves::last_done;
use crate::planning::reminders::{JobName, ToldLast};
use crate::understanding::Reading;
use crate::wording::{Manner, Phrases, Reply, filled, reply};
use chrono::{DateTime, Days, NaiveDate, Offset, Utc};
use serde::{Deserialize, Serialize};

/// A job of a reminder, with its beds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Task {
    pub job: JobKind,
    /// A crop, a material; of a net `up` or `down`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
    pub beds: Vec<TaskBed>,
    /// The day it was announced for.
    pub day: NaiveDate,
    /// It can be noted as done and moved; a change of watering is only explained.
    pub work: bool,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TaskBed {
    pub bed: BedId,
    /// When it was done last as the reminder was written: done since, it is not noted again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last: Option<NaiveDate>,
}

impl Task {
    /// The task of an item.
    #[must_use]
    pub fn of(item: &Item) -> Option<Self> {
        match item {
            Item::Jobs { jobs, .. } => {
                let first = jobs.first()?;
                let beds = jobs.iter().map(|due| TaskBed { bed: due.bed.clone(), last: due.last }).collect();
                let (job, what, day) = (first.job, first.what.clone(), first.date);
                Some(Self { job, what, beds, day, work: true })
            }
            Item::Water(changes) => {
                let beds = changes.iter().map(|change| TaskBed { bed: change.bed.clone(), last: None }).collect();
                let day = changes.first()?.week.from;
                Some(Self { job: JobKind::Water, what: None, beds, day, work: false })
            }
        }
    }

    fn bed_ids(&self) -> Vec<BedId> {
        self.beds.iter().map(|bed| bed.bed.clone()).collect()
    }

    /// The reading of a message about it.
    fn reading(&self, kind: Kind, beds: Vec<BedId>, language: crate::script::Language) -> Reading {
        let crop = self.what.clone().filter(|_| matches!(self.job, JobKind::Pick | JobKind::Sow));
        Reading {
            kind,
            sureness: 1.0,
            language,
            beds,
            beds_named: true,
            crops: crop.into_iter().collect(),
            microgreen: self.job == JobKind::Sow,
            ..Reading::default()
        }
    }
}

/// The slip behind a reminder's buttons, and the buttons: those of one job beside each other.
pub fn buttons(
    tasks: Vec<Task>,
    chat: i64,
    phrases: &Phrases,
    now: DateTime<Utc>,
) -> Result<(Button, Vec<Label>), StoreError> {
    let token = token()?;
    let mut labels = Vec::new();
    for (place, task) in tasks.iter().enumerate() {
        let number = if tasks.len() > 1 { (place + 1).to_string() } else { "none".to_owned() };
        let verbs =
            [("done", "reminder-button-done"), ("move", "reminder-button-move"), ("why", "reminder-button-why")];
        let offered = verbs.into_iter().filter(|(verb, _)| task.work || *verb == "why");
        for (at, (verb, phrase)) in offered.enumerate() {
            let text = filled(phrases, phrase, &[("number", &number)]);
            labels.push(Label { text, token: format!("{token}-{verb}{place}"), beside: at > 0 });
        }
    }
    // In a private chat the account has the chat's number.
    Ok((Button { token, chat, owner: chat, made: now, does: Does::Tasks(tasks) }, labels))
}

impl Turn<'_> {
    /// A button of a reminder was pressed.
    pub fn task_pressed(&mut self, tasks: &[Task], verb: &str) -> Result<(), StoreError> {
        let word = verb.trim_end_matches(|letter: char| letter.is_ascii_digit());
        let place: Option<usize> = verb.get(word.len()..).and_then(|place| place.parse().ok());
        let Some(task) = place.and_then(|place| tasks.get(place)) else {
            self.say("bot-button-old", &[]);
            return Ok(());
        };
        match word {
            "done" if task.work => self.task_done(task),
            "move" if task.work => self.ask_day(task),
            "why" => self.task_why(task),
            _ => {
                self.say("bot-button-old", &[]);
                Ok(())
            }
        }
    }

    /// The beds in which the job was not done since the reminder, and where this person may record it.
    fn open_beds(&self, task: &Task) -> Result<Vec<BedId>, StoreError> {
        let mut open = Vec::new();
        for one in &task.beds {
            let last = last_done(&self.sheet.jobs_of_bed(&one.bed)?, task.job, task.what.as_deref());
            if last <= one.last && may_record(self.person.as_ref(), &one.bed) {
                open.push(one.bed.clone());
            }
        }
        Ok(open)
    }

    fn task_done(&mut self, task: &Task) -> Result<(), StoreError> {
        let open = self.open_beds(task)?;
        if open.is_empty() {
            self.say("reminder-done-already", &[]);
            return Ok(());
        }
        // The day it is pressed on: a day too late makes a wait longer, never shorter.
        let today = self.day_at(&open)?;
        let what = task.what.clone();
        let reading = Reading {
            did: Some(task.job),
            days: vec![(today, today)],
            materials: what
                .clone()
                .filter(|_| matches!(task.job, JobKind::Spray | JobKind::Feed))
                .into_iter()
                .collect(),
            net_down: task.job == JobKind::Net && what.as_deref() == Some("down"),
            ..task.reading(Kind::Record, open, self.language)
        };
        self.file_reading(&reading)
    }

    /// Asks for another day: the next three that it is not on already.
    fn ask_day(&mut self, task: &Task) -> Result<(), StoreError> {
        let open = self.open_beds(task)?;
        if open.is_empty() {
            self.say("reminder-done-already", &[]);
            return Ok(());
        }
        let today = self.day_at(&open)?;
        let ahead = |days: u64| today.checked_add_days(Days::new(days)).map(|day| (days, day));
        let days: Vec<(u64, NaiveDate)> =
            (1..=4).filter_map(ahead).filter(|(_, day)| *day != task.day).take(3).collect();
        let choices = days.iter().map(|(count, day)| {
            let line = if *count == 1 { Line::new("reminder-move-tomorrow") } else { Line::new("reminder-move-days") };
            line.with("count", Said::Count(*count as i64)).with("day", Said::Day(*day))
        });
        let answer = Answer::ask(Line::new("reminder-move-ask"), choices.collect());
        let asked = self.put_in_words(&answer);
        let does = Does::Days { task: task.clone(), days: days.into_iter().map(|(_, day)| day).collect() };
        let slip = self.button("", does)?;
        let mut labels: Vec<Label> = Vec::new();
        let leave = self.phrase("reminder-button-leave", &[]);
        for (place, text) in asked.choices.iter().chain([&leave]).enumerate() {
            let verb = if *text == leave { "leave".to_owned() } else { format!("day{place}") };
            labels.push(Label { text: text.clone(), token: format!("{}-{verb}", slip.token), beside: false });
        }
        self.text_out(&asked.text, labels, None);
        Ok(())
    }

    /// Another day was chosen for a task.
    pub fn day_pressed(&mut self, task: &Task, days: &[NaiveDate], verb: &str) -> Result<(), StoreError> {
        let place: Option<usize> = verb.strip_prefix("day").and_then(|place| place.parse().ok());
        let Some(to) = place.and_then(|place| days.get(place)) else {
            self.say("bot-left-alone", &[]);
            return Ok(());
        };
        let open = self.open_beds(task)?;
        if open.is_empty() {
            self.say("reminder-done-already", &[]);
            return Ok(());
        }
        let reading = Reading {
            put_off: Some(task.job),
            days: vec![(*to, *to)],
            ..task.reading(Kind::Record, open, self.language)
        };
        self.file_reading(&reading)
    }

    /// The working of the need behind a task, as it stands now.
    fn task_why(&mut self, task: &Task) -> Result<(), StoreError> {
        let kind = match task.job {
            JobKind::Spray => Kind::Spray,
            JobKind::Feed => Kind::Feed,
            JobKind::Net => Kind::Shade,
            JobKind::Water => Kind::Water,
            _ => Kind::Harvest,
        };
        let reading = Reading { why: true, ..task.reading(kind, task.bed_ids(), self.language) };
        let reply = self.answered(&reading)?;
        self.text_out(&reply.text, Vec::new(), None);
        Ok(())
    }

    /// Files what a reading tells, and says so with a button that takes it back.
    fn file_reading(&mut self, reading: &Reading) -> Result<(), StoreError> {
        let known: Vec<Change> = self.sheet.changes();
        let reply = self.answered(reading)?;
        let new: Vec<Change> = self.sheet.changes().into_iter().filter(|change| !known.contains(change)).collect();
        let told = Told::of(self.arrival, self.now.with_timezone(&Utc), self.store, &new)?;
        let mut buttons = Vec::new();
        if let Some(told) = told.filter(|_| reply.outcome == Outcome::Recorded) {
            let undo = self.phrase("reminder-button-undo", &[]);
            buttons.push(self.button(&undo, Does::TakeBack(Box::new(told)))?);
        }
        self.note_moves(&new)?;
        let state = match &self.person {
            Some(person) => self.sheet.conversation(&person.id)?.map(|conversation| conversation.state),
            None => None,
        };
        self.text_out(&reply.text, buttons, state.map(Follow::Said));
        Ok(())
    }

    fn answered(&self, reading: &Reading) -> Result<Reply, StoreError> {
        let desk = Desk::new(self.house, self.sheet, self.forecast).speaking(Some(self.language));
        let from = self.person.as_ref().map(|person| person.id.clone());
        desk.answer_reading(&Message { from, text: String::new(), now: self.now }, reading)
    }

    fn put_in_words(&self, answer: &Answer) -> Reply {
        let manner = Manner { language: self.language, devanagari_digits: false, why: false, short: false };
        reply(answer, &self.house.known, self.house.phrases(self.language), manner)
    }

    /// Today where these beds stand.
    fn day_at(&self, beds: &[BedId]) -> Result<NaiveDate, StoreError> {
        let site = match beds.first() {
            Some(bed) => self.sheet.site(bed.site())?,
            None => None,
        };
        let here = site.map(|site| {
            let there = self.now.with_timezone(&site.timezone);
            there.with_timezone(&there.offset().fix())
        });
        Ok(here.unwrap_or(self.now).date_naive())
    }

    /// Whoever moves a job need not be told that it was moved.
    pub fn note_moves(&mut self, new: &[Change]) -> Result<(), StoreError> {
        let at = self.now.with_timezone(&Utc);
        for change in new {
            let Change::Put(Record::Move(Move { bed, job, what, to, .. })) = change else { continue };
            let told = ToldLast { day: *to, announced: false, rhythm: None };
            // A net is named by its way: both are noted, and the one that is not due is never looked at.
            let ways: Vec<Option<String>> = match job {
                JobKind::Net => ["up", "down"].map(|way| Some(way.to_owned())).into(),
                _ => vec![what.clone()],
            };
            for what in ways {
                let name = JobName { bed: bed.clone(), job: *job, what };
                self.sheet.write(vec![Reminded { chat: self.arrival.chat, name, told, at }.put()?])?;
            }
        }
        Ok(())
    }

    /// What a button recorded is taken back.
    pub fn task_taken_back(&mut self, told: &Told) -> Result<(), StoreError> {
        self.sheet.write(told.changes_back()?)?;
        self.say("reminder-taken-back", &[]);
        Ok(())
    }
}
