//! A clock in a file, which the program reads.

use std::path::{Path, PathBuf};

pub struct Clock(PathBuf);

impl Clock {
    pub fn at(folder: &Path, moment: &str) -> Self {
        let clock = Self(folder.join("clock"));
        clock.jump(moment);
        clock
    }

    /// `2026-05-18T18:30`, in Nagpur.
    pub fn jump(&self, moment: &str) {
        // In one step: the program may read it at any moment.
        let new = self.0.with_extension("new");
        std::fs::write(&new, format!("{moment}:00+05:30")).unwrap();
        std::fs::rename(new, &self.0).unwrap();
    }

    /// With the reminders on.
    pub fn settings(&self) -> [(&'static str, String); 2] {
        [("ROOFTEND_CLOCK", self.0.display().to_string()), ("ROOFTEND_DIGEST", "on".to_owned())]
    }

    pub fn borrowed<'a>(settings: &'a [(&'static str, String); 2]) -> [(&'static str, &'a str); 2] {
        [(settings[0].0, &settings[0].1), (settings[1].0, &settings[1].1)]
    }
}
