//! The parts a conversation needs, built from what was typed.

use super::arguments::{Arguments, Front};
use super::demo;
use super::refusal::Refusal;
use crate::desk::sky::Handed;
use crate::desk::{Desk, House};
use crate::garden::store::{Overlay, SledStore};
use crate::garden::{PersonId, Store};
use crate::knowledge::{Files, Knowledge};
use crate::weather::Forecast;
use crate::weather::source::{Choice, Setting};
use chrono::{DateTime, FixedOffset, Local};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// House, store, sky and clock of one run.
pub struct Parts {
    /// It serves as long as the program runs: taking it apart at the end would only cost time.
    pub house: &'static House,
    pub store: Box<dyn Store>,
    /// It fixes the weather.
    pub forecast: Option<Forecast>,
    /// The file of the setting, and whether it comes first there.
    sky: Option<(Forecast, bool)>,
    pub now: DateTime<FixedOffset>,
    pub person: Option<PersonId>,
}

impl Parts {
    /// Opens everything a conversation needs.
    pub fn open(front: &Front, arguments: &Arguments) -> Result<Self, Refusal> {
        let files = files(arguments.knowledge.as_deref())?;
        let house = match cache(arguments) {
            Some(folder) => House::open_keeping(&files, &folder),
            None => House::open(&files),
        };
        let house = Box::leak(Box::new(house.map_err(|fault| Refusal::of_house(fault, &files))?));
        let mut forecast = front.forecast.as_deref().map(read_forecast).transpose()?;
        let store: Box<dyn Store> = match front.demo {
            Some(season) => {
                if forecast.is_none() {
                    forecast = Some(demo::forecast(season)?);
                }
                Box::new(demo::store(&house.known)?)
            }
            None => store(arguments)?,
        };
        let now = match (front.now, front.demo, &forecast) {
            (Some(now), _, _) => now,
            (None, Some(_), Some(forecast)) => demo::morning(forecast).unwrap_or_else(system_clock),
            _ => system_clock(),
        };
        let sky = if forecast.is_none() { file_of(&front.sources.weather)? } else { None };
        let person = front.person.as_deref().map(|id| person(id, store.as_ref())).transpose()?;
        Ok(Self { house, store, forecast, sky, now, person })
    }

    /// A desk over the store itself.
    pub fn desk(&self) -> Desk<'_> {
        self.desk_over(self.store.as_ref())
    }

    /// A desk over another store, under the same sky.
    pub fn desk_over<'s>(&'s self, store: &'s dyn Store) -> Desk<'s> {
        let desk = Desk::new(self.house, store, self.forecast.as_ref());
        match &self.sky {
            Some((forecast, true)) => desk.handed(Handed::First(forecast)),
            Some((forecast, false)) => desk.handed(Handed::Later(forecast)),
            None => desk,
        }
    }

    /// A store whose changes are forgotten.
    pub fn forgetful(&self) -> Overlay<'_> {
        Overlay::over(self.store.as_ref())
    }
}

/// The file of a setting, read, and whether it comes first there. Nothing is fetched in the way of an answer.
fn file_of(setting: &Setting) -> Result<Option<(Forecast, bool)>, Refusal> {
    let mut files = setting.choices.iter().enumerate().filter_map(|(place, choice)| match choice {
        Choice::File(path) => Some((path, place == 0)),
        Choice::MetNorway(_) | Choice::OpenMeteo(_) => None,
    });
    files.next().map(|(path, first)| Ok((read_forecast(path)?, first))).transpose()
}

/// A person of the store by id.
pub fn person(id: &str, store: &dyn Store) -> Result<PersonId, Refusal> {
    let known = PersonId::new(id).ok().filter(|id| store.person(id).is_ok_and(|person| person.is_some()));
    if let Some(id) = known {
        return Ok(id);
    }
    let mut ids: Vec<String> = store.people()?.into_iter().map(|person| person.id.to_string()).collect();
    ids.sort();
    let here = if ids.is_empty() { "nobody yet".to_owned() } else { ids.join(", ") };
    Err(Refusal::plain(format!("no person with the id \"{id}\" is in the store; it has {here}")))
}

/// The knowledge files to use.
pub fn files(folder: Option<&Path>) -> Result<Files, Refusal> {
    folder.map_or_else(|| Ok(Files::embedded()), |folder| Files::folder(folder).map_err(Refusal::plain))
}

/// Knowledge without its index, for commands that only need the facts.
pub fn knowledge(arguments: &Arguments) -> Result<Knowledge, Refusal> {
    let files = files(arguments.knowledge.as_deref())?;
    let (known, problems) = Knowledge::read(&files);
    if problems.is_empty() {
        return Ok(known);
    }
    Err(Refusal::of_house(crate::desk::NoHouse::Problems(problems), &files))
}

/// The folder of the store.
pub fn folder(arguments: &Arguments) -> Result<PathBuf, Refusal> {
    if let Some(folder) = &arguments.data {
        return Ok(folder.clone());
    }
    directories::ProjectDirs::from("", "", "rooftend")
        .map(|folders| folders.data_dir().to_owned())
        .ok_or_else(|| Refusal::plain("no data folder is known on this machine; give one with --data DIR"))
}

/// The store of the folder: through the process that holds it where there is one, else opened here.
pub fn store(arguments: &Arguments) -> Result<Box<dyn Store>, Refusal> {
    let folder = folder(arguments)?;
    #[cfg(unix)]
    if let Some(held) = crate::garden::store::remote::RemoteStore::reach(&folder) {
        return Ok(Box::new(held));
    }
    Ok(Box::new(SledStore::open(&folder)?))
}

/// The folder for what is derived; where none is known, nothing is kept.
pub fn cache(arguments: &Arguments) -> Option<PathBuf> {
    let usual = || directories::ProjectDirs::from("", "", "rooftend").map(|folders| folders.cache_dir().to_owned());
    arguments.cache.clone().or_else(usual)
}

/// The one place where the clock is read.
#[expect(clippy::disallowed_methods, reason = "the clock is read here and handed in")]
pub fn system_clock() -> DateTime<FixedOffset> {
    let now = Local::now().fixed_offset();
    TRIAL_CLOCK.get().and_then(|file| trial_clock(file, now)).unwrap_or(now)
}

/// The file of a clock for trials.
static TRIAL_CLOCK: OnceLock<PathBuf> = OnceLock::new();

/// Lets the clock go by a file from now on: the moment that stands in it when it is written, and on from there. Written
/// anew, the clock jumps.
pub fn go_by_trial_clock(file: PathBuf) {
    // Set once, at the start.
    let _ = TRIAL_CLOCK.set(file);
}

#[expect(clippy::disallowed_methods, reason = "the clock is read here and handed in")]
fn trial_clock(file: &Path, now: DateTime<FixedOffset>) -> Option<DateTime<FixedOffset>> {
    let written: DateTime<Local> = std::fs::metadata(file).ok()?.modified().ok()?.into();
    let moment: DateTime<FixedOffset> = std::fs::read_to_string(file).ok()?.trim().parse().ok()?;
    Some(moment + (now - written.fixed_offset()))
}

/// A text file.
#[expect(clippy::disallowed_methods, reason = "the command line reads the files it is given")]
pub fn read_text(path: &Path) -> Result<String, Refusal> {
    std::fs::read_to_string(path).map_err(|fault| Refusal::file("read", path, &fault))
}

pub fn read_forecast(path: &Path) -> Result<Forecast, Refusal> {
    let text = read_text(path)?;
    Forecast::read(&path.display().to_string(), &text).map_err(|problem| Refusal::Knowledge(vec![(problem, text)]))
}

/// Written beside and then moved into place, so that a file that was there is never half overwritten.
#[expect(clippy::disallowed_methods, reason = "the command line writes the files it is asked for")]
pub fn write_file(file: &Path, bytes: &[u8]) -> Result<(), Refusal> {
    let beside = file.with_extension("partly");
    std::fs::write(&beside, bytes).map_err(|fault| Refusal::file("write", &beside, &fault))?;
    std::fs::rename(&beside, file).map_err(|fault| Refusal::file("write", file, &fault))
}
