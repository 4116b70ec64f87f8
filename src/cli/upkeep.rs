//! What a running bot does beside answering: the nightly backup, the forecast file read again, old slips taken away.

use super::front::{read_forecast, system_clock};
use crate::channel::counts::Counts;
use crate::desk::reception::{Reception, Waiting};
use crate::garden::Store;
use crate::garden::backup::back_up;
use crate::garden::store::note_backup;
use chrono::{DateTime, FixedOffset, NaiveDate, Offset, Timelike, Utc};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};
use std::time::Duration;
use tokio::sync::Notify;

/// Between two looks.
const ROUND: Duration = Duration::from_secs(60);
/// From this hour of the night on the day's backup is made.
const BACKUP_FROM: u32 = 2;
/// So many backups are kept.
const BACKUPS: usize = 7;

/// What upkeep works on.
pub struct Upkeep {
    pub reception: Arc<Reception>,
    pub store: Arc<dyn Store>,
    pub folder: PathBuf,
    pub forecast: Option<PathBuf>,
    pub counts: Arc<Counts>,
    /// Whether people are told what is due.
    pub digest: bool,
    /// The hour of the evening from which tomorrow is told.
    pub evening: u32,
    /// Another command has been at the store.
    pub wake: Arc<Notify>,
    /// Wakes whoever sends, where letters were written.
    pub written: Arc<Notify>,
    /// When old slips were taken away last, in seconds since 1970.
    pub swept: AtomicI64,
}

impl Upkeep {
    /// Looks every minute, and when another command is done, until the task is ended.
    pub async fn run(self) {
        let this = Arc::new(self);
        let mut read = None;
        loop {
            let (work, before) = (this.clone(), read);
            match tokio::task::spawn_blocking(move || work.round(system_clock(), before)).await {
                Ok(now) => read = now,
                Err(_) => tracing::error!("upkeep ended early; it begins anew soon"),
            }
            this.written.notify_one();
            tokio::select! {
                () = tokio::time::sleep(ROUND) => {}
                () = this.wake.notified() => this.reception.records_changed(),
            }
        }
    }

    /// One look; returns when the forecast file that is in use was written.
    fn round(&self, now: DateTime<FixedOffset>, read: Option<std::time::SystemTime>) -> Option<std::time::SystemTime> {
        let at = now.with_timezone(&Utc);
        self.sweep(at);
        if let Err(fault) = self.reception.hand_over_new(now) {
            tracing::error!(%fault, "questions could not be handed over");
        }
        match self.reception.lapse(at) {
            Ok(0) => {}
            Ok(count) => tracing::warn!(count, "reminders could not be brought before the night"),
            Err(fault) => tracing::error!(%fault, "late reminders could not be taken away"),
        }
        let reminded = if self.digest { self.reception.reminders(at, self.evening) } else { Ok(0) };
        match reminded {
            Ok(0) => {}
            Ok(count) => tracing::info!(count, "reminders written"),
            Err(fault) => tracing::error!(%fault, "the reminders could not be written"),
        }
        if let Ok(questions) = Waiting::all(self.store.as_ref()) {
            self.counts.questions.set(questions.len());
        }
        self.back_up(now);
        self.read_forecast(read)
    }

    /// Every hour: the drawers are read through for it.
    fn sweep(&self, at: DateTime<Utc>) {
        const EVERY_S: i64 = 3600;
        let last = self.swept.load(Ordering::Relaxed);
        if (0..EVERY_S).contains(&(at.timestamp() - last)) {
            return;
        }
        self.swept.store(at.timestamp(), Ordering::Relaxed);
        match self.reception.sweep(at) {
            Ok(0) => {}
            Ok(count) => tracing::debug!(count, "old slips taken away"),
            Err(fault) => tracing::error!(%fault, "old slips could not be taken away"),
        }
    }

    fn back_up(&self, now: DateTime<FixedOffset>) {
        let folder = self.folder.join("backups");
        // Night is where the roofs are, not where the machine stands.
        let sites = self.store.sites().unwrap_or_default();
        let here = sites.first().map_or(now, |site| {
            let here = now.with_timezone(&site.timezone);
            here.with_timezone(&here.offset().fix())
        });
        let file = folder.join(name_of(here.date_naive()));
        if here.hour() < BACKUP_FROM || file.exists() {
            return;
        }
        let made = std::fs::create_dir_all(&folder).map_err(|fault| fault.to_string()).and_then(|()| {
            back_up(self.store.as_ref(), &file, now.with_timezone(&Utc)).map_err(|fault| fault.to_string())
        });
        match made {
            Ok(records) => {
                self.counts.backups.add(1);
                tracing::info!(records, "backed up");
                // The note only helps whoever looks for the backup later.
                let _ = note_backup(&self.folder, &file);
                remove_old(&folder);
            }
            Err(fault) => tracing::error!(fault, "no backup could be made"),
        }
    }

    fn read_forecast(&self, read: Option<std::time::SystemTime>) -> Option<std::time::SystemTime> {
        let file = self.forecast.as_deref()?;
        let written = std::fs::metadata(file).and_then(|about| about.modified()).ok();
        if written.is_none() || written == read {
            return read;
        }
        match read_forecast(file) {
            Ok(forecast) => self.reception.set_forecast(Some(forecast)),
            Err(_) => tracing::warn!("the forecast file cannot be read; the one before stays in use"),
        }
        written
    }
}

fn name_of(day: NaiveDate) -> String {
    format!("rooftend-{day}.backup")
}

/// Only what this program named is taken away, the oldest first.
#[expect(clippy::disallowed_methods, reason = "the command line keeps its folder of backups")]
fn remove_old(folder: &Path) {
    let Ok(entries) = std::fs::read_dir(folder) else { return };
    let mut ours: Vec<PathBuf> = entries
        .filter_map(Result::ok)
        .map(|entry| entry.path())
        .filter(|path| {
            let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            let day = name.strip_prefix("rooftend-").and_then(|rest| rest.strip_suffix(".backup"));
            day.is_some_and(|day| day.parse::<NaiveDate>().is_ok())
        })
        .collect();
    ours.sort();
    let old = ours.len().saturating_sub(BACKUPS);
    for path in ours.into_iter().take(old) {
        if std::fs::remove_file(&path).is_err() {
            tracing::warn!("an old backup could not be taken away");
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_backup_a_night() {
        let data = tempfile::tempdir().unwrap();
        let house = crate::desk::House::open(&crate::knowledge::Files::embedded()).unwrap();
        let store: Arc<dyn Store> = Arc::new(crate::garden::Overlay::in_memory());
        let upkeep = Upkeep {
            reception: Arc::new(Reception::open(Arc::new(house), store.clone()).unwrap()),
            store,
            folder: data.path().to_owned(),
            forecast: Some(PathBuf::from("demo-data/forecast-may.json")),
            counts: Arc::default(),
            digest: true,
            evening: crate::desk::reception::EVENING,
            wake: Arc::default(),
            written: Arc::default(),
            swept: AtomicI64::default(),
        };
        let round = |at: &str| upkeep.round(at.parse().unwrap(), None);
        assert!(round("2026-05-18T01:59:00+05:30").is_some(), "the forecast was read");
        let there = |day: &str| data.path().join(format!("backups/rooftend-2026-05-{day}.backup")).exists();
        assert!(!there("18"));
        round("2026-05-18T02:00:00+05:30");
        round("2026-05-18T23:00:00+05:30");
        round("2026-05-19T04:00:00+05:30");
        assert!(there("18") && there("19"));
        let made = upkeep.counts.text(0);
        assert!(made.contains("rooftend_backups_total 2\n"), "once a day: {made}");
        crate::garden::backup::read_backup(&data.path().join("backups/rooftend-2026-05-19.backup")).unwrap();
    }

    #[test]
    fn the_last_seven_stay() {
        let folder = tempfile::tempdir().unwrap();
        for day in 1..=10 {
            std::fs::File::create(folder.path().join(format!("rooftend-2026-05-{day:02}.backup"))).unwrap();
        }
        std::fs::File::create(folder.path().join("mine.backup")).unwrap();
        remove_old(folder.path());
        assert!(folder.path().join("mine.backup").exists());
        assert!(!folder.path().join("rooftend-2026-05-03.backup").exists());
        assert!((4..=10).all(|day| folder.path().join(format!("rooftend-2026-05-{day:02}.backup")).exists()));
    }
}
