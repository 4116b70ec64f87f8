//! The reception: takes in what channels bring, answers each thing once, writes letters for what goes out.
//!
//! Whatever one arrival changes (records, the conversation, letters, the note that it was answered) is
//! worked out on a sheet over the store and written in one go: it happens wholly, or again from the start.

mod album;
mod alerts;
mod arrival;
mod at_hand;
mod awaits;
mod bed_card;
mod bed_records;
mod button;
mod by_hand;
mod card;
mod command;
mod converse;
mod courtesy;
mod crew;
mod crew_words;
mod draft;
mod invite;
mod label;
mod letter;
mod menu;
mod outbox;
mod own_data;
mod picture;
mod place;
mod reminder;
mod round;
mod round_steps;
mod sight;
mod site_card;
mod sweep;
mod tap;
mod task;
mod traces;
mod turn;
mod undo;
mod visit;
mod visit_note;
mod visits;

pub use arrival::{Arrival, What};
pub use by_hand::{ByHand, answer_by_hand};
use invite::{Invite, Whom};
pub use label::{bed_codes, revoke_code};
pub use letter::{Content, Follow, Label, Letter};
pub use outbox::Outbox;
pub use picture::{Drawing, Png};
pub use reminder::{EVENING, QUIET_FROM, QUIET_UNTIL};
pub use sweep::Waiting;

use super::house::House;
use crate::garden::{Change, Kind, Overlay, Person, Role, Slip, Store, StoreError};
use crate::understanding::Reading;
use crate::weather::Forecast;
use arrival::Update;
use at_hand::AtHand;
use card::Card;
use chrono::{DateTime, FixedOffset, NaiveDate, Utc};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError, RwLock};
use std::time::{Duration, Instant};
use turn::Turn;
use visits::Visits;

/// Deals with one store's arrivals and letters; one thing at a time, so that order is kept.
pub struct Reception {
    house: Arc<House>,
    store: Arc<dyn Store>,
    forecast: RwLock<Option<Arc<Forecast>>>,
    memory: Mutex<Memory>,
    /// Draws answers, where a drawing was handed in.
    drawing: RwLock<Option<Arc<Drawing>>>,
}

/// What is known only while the program runs.
#[derive(Default)]
struct Memory {
    /// What strangers said last: nothing of theirs is stored.
    strangers: BTreeMap<i64, (Reading, DateTime<Utc>)>,
    visits: Visits,
    next_letter: u64,
    at_hand: AtHand,
    /// The chats to which a letter may be on its way.
    on_their_way: BTreeSet<i64>,
    /// Goes up with every change of records or forecast.
    state: u64,
    /// The day and state in which the morning of a chat was looked through.
    looked: BTreeMap<i64, (NaiveDate, u64)>,
    /// Where the bot itself is found, for links.
    username: Option<String>,
}

impl Reception {
    /// Opens the reception of a store.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn open(house: Arc<House>, store: Arc<dyn Store>) -> Result<Self, StoreError> {
        let older = Invite::marked_anew(store.as_ref())?;
        if !older.is_empty() {
            store.write(older)?;
        }
        let at_hand = AtHand::of(store.as_ref())?;
        let next_letter = at_hand.last_letter.map_or(1, |last| last + 1);
        let memory = Mutex::new(Memory { next_letter, at_hand, ..Memory::default() });
        Ok(Self { house, store, forecast: RwLock::new(None), memory, drawing: RwLock::new(None) })
    }

    /// The weather that answers rest on from now on.
    pub fn set_forecast(&self, forecast: Option<Forecast>) {
        *self.forecast.write().unwrap_or_else(PoisonError::into_inner) = forecast.map(Arc::new);
        self.records_changed();
    }

    /// Records or the forecast are not what they were: what was planned on them is planned anew.
    pub fn records_changed(&self) {
        self.memory().state += 1;
    }

    /// How answers are drawn from now on.
    pub fn set_drawing(&self, drawing: Arc<Drawing>) {
        *self.drawing.write().unwrap_or_else(PoisonError::into_inner) = Some(drawing);
    }

    /// The name under which the bot is found.
    pub fn set_username(&self, username: String) {
        self.memory().username = Some(username);
    }

    /// The name under which the bot is found, once it is known.
    #[must_use]
    pub fn username(&self) -> Option<String> {
        self.memory().username.clone()
    }

    fn memory(&self) -> MutexGuard<'_, Memory> {
        // A panic leaves at worst a stranger's last words behind.
        self.memory.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Writes to the store, and notes what waits since then.
    fn write(&self, memory: &mut Memory, changes: Vec<Change>) -> Result<(), StoreError> {
        self.store.write(changes.clone())?;
        memory.at_hand.follow(&changes);
        Ok(())
    }

    /// Files what is new of these, to disk, before anyone is told that it was received; returns how many.
    ///
    /// # Errors
    /// When the store cannot be written: nothing was taken in then.
    pub fn take_in(&self, arrivals: Vec<Arrival>, now: DateTime<Utc>) -> Result<usize, StoreError> {
        let mut memory = self.memory();
        let mut changes = Vec::new();
        for mut arrival in arrivals {
            // A press carries no time of its own.
            if arrival.at == DateTime::UNIX_EPOCH {
                arrival.at = now;
            }
            let update = Update::new(arrival, now);
            if self.store.filed(Update::DRAWER, &update.key())?.is_none() {
                changes.push(update.put()?);
            }
        }
        let new = changes.len();
        if new > 0 {
            self.write(&mut memory, changes)?;
        }
        Ok(new)
    }

    /// The arrivals that wait longest, the oldest first.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub fn next_few(&self) -> Result<Vec<Arrival>, StoreError> {
        const FEW: usize = 16;
        let mut memory = self.memory();
        let mut few = Vec::new();
        for number in memory.at_hand.first(FEW) {
            let update = Update::find(self.store.as_ref(), &Update::key_of(number))?;
            match update.and_then(|update| update.waiting) {
                Some(arrival) => few.push(arrival),
                None => memory.at_hand.passed_over(number),
            }
        }
        Ok(few)
    }

    /// Answers an arrival: all that follows from it is written together.
    ///
    /// # Errors
    /// When the store cannot be read or written: the arrival waits still.
    pub fn answer(&self, arrival: &Arrival, now: DateTime<FixedOffset>) -> Result<(), StoreError> {
        self.turns(|memory, store| self.turn(memory, store, arrival, now, |turn| turn.run()))
    }

    /// Sets an arrival aside that could not be worked on: its sender is told, nothing else is done.
    ///
    /// # Errors
    /// When the store cannot be written.
    pub fn set_aside(&self, arrival: &Arrival, now: DateTime<FixedOffset>) -> Result<(), StoreError> {
        self.turns(|memory, store| {
            self.turn(memory, store, arrival, now, |turn| {
                if arrival.addressed {
                    turn.say("bot-trouble", &[]);
                }
                Ok(())
            })
        })
    }

    /// Answers the oldest of these, as many as a moment holds, and writes all that follows from them together: a flush
    /// serves them all, and they happen wholly or not at all. Returns how many were answered.
    ///
    /// # Errors
    /// When the store cannot be read or written: all of them wait still.
    pub fn answer_all(&self, arrivals: &[Arrival], now: DateTime<FixedOffset>) -> Result<usize, StoreError> {
        /// Nobody waits longer than this for those behind.
        const ENOUGH: Duration = Duration::from_millis(30);
        let begun = Instant::now();
        self.turns(|memory, store| {
            let mut answered = 0;
            for arrival in arrivals {
                self.turn(memory, store, arrival, now, |turn| turn.run())?;
                answered += 1;
                if begun.elapsed() > ENOUGH {
                    break;
                }
            }
            Ok(answered)
        })
    }

    /// One or several turns on a sheet over the store, then written in one go.
    fn turns<T>(&self, work: impl FnOnce(&mut Memory, &Overlay<'_>) -> Result<T, StoreError>) -> Result<T, StoreError> {
        let mut memory = self.memory();
        let next_letter = memory.next_letter;
        let all = Overlay::over(self.store.as_ref());
        let written = work(&mut memory, &all).and_then(|done| {
            let changes = all.changes();
            let of_garden = |kind: Kind| !matches!(kind, Kind::Conversation | Kind::Filed | Kind::Question);
            let plans_change = changes.iter().any(|change| of_garden(change.record().kind()));
            self.write(&mut memory, changes)?;
            memory.state += u64::from(plans_change);
            Ok(done)
        });
        if written.is_err() {
            memory.next_letter = next_letter;
        }
        written
    }

    fn turn(
        &self,
        memory: &mut Memory,
        store: &Overlay<'_>,
        arrival: &Arrival,
        now: DateTime<FixedOffset>,
        work: impl FnOnce(&mut Turn<'_>) -> Result<(), StoreError>,
    ) -> Result<(), StoreError> {
        let forecast = self.forecast.read().unwrap_or_else(PoisonError::into_inner).clone();
        let sheet = Overlay::over(store);
        let mut turn = Turn::begin(&self.house, store, &sheet, forecast.as_deref(), memory, arrival, now)?;
        turn.drawing = self.drawing.read().unwrap_or_else(PoisonError::into_inner).clone();
        work(&mut turn)?;
        turn.note_visits()?;
        let letters = std::mem::take(&mut turn.letters);
        let mut changes = letters.iter().map(Slip::put).collect::<Result<Vec<_>, _>>()?;
        changes.push(Update::answered(arrival.number, now.with_timezone(&Utc)).put()?);
        sheet.write(changes)?;
        store.write(sheet.changes())
    }

    /// Tells the crew of questions that came another way than through a chat; returns how many.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn hand_over_new(&self, now: DateTime<FixedOffset>) -> Result<usize, StoreError> {
        let mut memory = self.memory();
        let store = self.store.as_ref();
        let mut told = 0;
        for waiting in sweep::waiting(store)? {
            if store.filed(crew::Asked::DRAWER, waiting.question.id.as_str())?.is_some() {
                continue;
            }
            let card = match &waiting.asker {
                Some(asker) => Card::of_person(store, &asker.id)?,
                None => None,
            };
            let arrival = Arrival::of_nobody(card.map_or(0, |card| card.chat), now.with_timezone(&Utc));
            let sheet = Overlay::over(store);
            let mut turn = Turn::begin(&self.house, store, &sheet, None, &mut memory, &arrival, now)?;
            turn.person = waiting.asker.clone();
            turn.hand_over(&waiting.question, None)?;
            let letters = std::mem::take(&mut turn.letters);
            sheet.write(letters.iter().map(Slip::put).collect::<Result<_, _>>()?)?;
            self.write(&mut memory, sheet.changes())?;
            told += 1;
        }
        Ok(told)
    }

    /// One-time codes for owners where none has a chat yet: an installation that nobody has claimed. Codes are kept
    /// nowhere, so that each start makes them anew and those of the start before are good no more. `anew` makes them
    /// all the same, for an owner who has lost the chat.
    ///
    /// # Errors
    /// When the store cannot be read or written.
    pub fn claims(&self, now: DateTime<Utc>, anew: bool) -> Result<Vec<Claim>, StoreError> {
        let _one_at_a_time = self.memory();
        let store = self.store.as_ref();
        let owners: Vec<Person> = store.people()?.into_iter().filter(|person| person.role == Role::Owner).collect();
        for owner in &owners {
            if !anew && Card::of_person(store, &owner.id)?.is_some() {
                return Ok(Vec::new());
            }
        }
        let mut changes = Vec::new();
        for invite in Invite::all(store)?.into_iter().filter(|invite| invite.claim) {
            changes.push(invite.taken_away()?);
        }
        let nobody = Whom { person: None, name: String::new(), role: Role::Owner, sites: Vec::new() };
        let whom: Vec<Whom> = match owners.as_slice() {
            [] => vec![nobody],
            owners => owners
                .iter()
                .map(|owner| Whom { person: Some(owner.id.clone()), name: owner.name.clone(), ..nobody.clone() })
                .collect(),
        };
        let mut claims = Vec::new();
        for whom in whom {
            let name = whom.name.clone();
            let (invite, code) = Invite::new(whom, now, true)?;
            changes.push(invite.put()?);
            claims.push(Claim { code, name });
        }
        self.store.write(changes)?;
        Ok(claims)
    }
}

/// A code by which an owner claims the installation.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Claim {
    pub code: String,
    /// Empty where no owner is known.
    pub name: String,
}

#[cfg(test)]
mod crew_tests;
#[cfg(test)]
mod tests;
#[cfg(test)]
mod told_tests;
