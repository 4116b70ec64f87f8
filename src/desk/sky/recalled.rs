//! The days of cells that answers have read lately: read anew only where the store has changed.

use super::slips::{PastMonth, SkySlip};
use crate::garden::{Slip, Stamp, Store, StoreError};
use crate::weather::SiteDays;
use crate::weather::cell::Spot;
use chrono::NaiveDate;
use std::collections::HashMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// So many cells are kept in memory, at 50 kB each for a year of days; beyond that all are read anew.
const MOST: usize = 256;

/// What was read, with how the store stood then.
struct Kept {
    today: NaiveDate,
    stamps: [Stamp; 2],
    days: Arc<SiteDays>,
}

/// Serves all answers of a program, of whatever stores.
#[derive(Default)]
pub struct Recalled {
    cells: Mutex<HashMap<Spot, Kept>>,
}

impl Recalled {
    /// The days of a spot as they were read before, if they still stand so; else as they are read now.
    pub(super) fn or_read(
        &self,
        store: &dyn Store,
        spot: &Spot,
        today: NaiveDate,
        read: impl FnOnce() -> Result<SiteDays, StoreError>,
    ) -> Result<Arc<SiteDays>, StoreError> {
        let key = spot.to_string();
        // Taken before the days are read: a write in between makes them old at once, not new for ever.
        let stamps = store.stamp(SkySlip::DRAWER, &key).zip(store.stamp(PastMonth::DRAWER, &key));
        let Some(stamps) = stamps.map(|(sky, past)| [sky, past]) else { return read().map(Arc::new) };
        if let Some(kept) = self.cells().get(spot).filter(|kept| kept.today == today && kept.stamps == stamps) {
            return Ok(kept.days.clone());
        }
        let days = Arc::new(read()?);
        let mut cells = self.cells();
        if cells.len() >= MOST && !cells.contains_key(spot) {
            cells.clear();
        }
        cells.insert(*spot, Kept { today, stamps, days: days.clone() });
        Ok(days)
    }

    fn cells(&self) -> MutexGuard<'_, HashMap<Spot, Kept>> {
        // No cell is left half kept by a panic: each is one insert.
        self.cells.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
