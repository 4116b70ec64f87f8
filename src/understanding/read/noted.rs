//! What is told in the way of a note, without a word for the work.

use super::{Found, Reader, Text, Told};
use crate::garden::JobKind;

impl Found {
    /// Nothing done, seen, moved or new was made out, and nothing is asked or denied.
    pub(super) fn tells_no_work(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let told = self.did.is_some() || self.saw().is_some() || self.put_off(text).is_some();
        let other = told || self.stays(text).is_some() || self.is_new_bed(text, reader) || self.unwatered;
        let denied = self.says_not() || self.told.iter().any(|hit| matches!(hit.meaning, Told::NewBed | Told::Undo));
        !other && !denied && !self.asks && self.signs.is_empty()
    }

    /// Its days are of the past, and the work is what its things are for: "net back on since yesterday", "3 kg of bitter
    /// gourd, Monday".
    pub(super) fn take_as_noted(&mut self, noted: Self) {
        // Water that is spoken of was as often poured away, seed and seedlings came up by themselves.
        let plain = |job: &JobKind| matches!(job, JobKind::Spray | JobKind::Feed | JobKind::Net | JobKind::Pick);
        (self.did, self.days) = (noted.did.filter(plain), noted.days);
    }
}
