//! What is made once and serves every message.

use super::names::Names;
use super::sky::Recalled;
use crate::knowledge::{Files, Index, IndexFault, Knowledge, Problem};
use crate::script::Language;
use crate::understanding::Gazetteer;
use crate::wording::Phrases;
use std::path::Path;
use thiserror::Error;

/// Knowledge, its index, its names and its phrases.
pub struct House {
    pub known: Knowledge,
    pub index: Index,
    pub gazetteer: Gazetteer,
    en: Phrases,
    hi: Phrases,
    hi_latn: Phrases,
    /// The weather that answers have read lately.
    pub(super) skies: Recalled,
    /// What everybody and every site is called.
    pub(super) names: Names,
}

/// The house cannot be opened.
#[derive(Debug, Error)]
pub enum NoHouse {
    #[error("the knowledge base has {} problem(s)", .0.len())]
    Problems(Vec<Problem>),
    #[error(transparent)]
    Index(#[from] IndexFault),
}

impl House {
    /// Reads, checks and indexes a knowledge base.
    ///
    /// # Errors
    /// [`NoHouse`] with every problem of the files: nothing is half loaded.
    pub fn open(files: &Files) -> Result<Self, NoHouse> {
        Self::open_with(files, Index::build)
    }

    /// The same, with what was derived before taken from a folder, or kept there for the next time.
    ///
    /// # Errors
    /// [`NoHouse`] as for [`House::open`]; a folder that cannot be read or written is none.
    pub fn open_keeping(files: &Files, folder: &Path) -> Result<Self, NoHouse> {
        Self::open_with(files, |known| Index::kept(known, folder))
    }

    fn open_with(files: &Files, index: impl FnOnce(&Knowledge) -> Result<Index, IndexFault>) -> Result<Self, NoHouse> {
        let (known, problems) = Knowledge::read(files);
        if !problems.is_empty() {
            return Err(NoHouse::Problems(problems));
        }
        let (index, phrases, gazetteer) = std::thread::scope(|scope| {
            let gazetteer = scope.spawn(|| Gazetteer::of(&known));
            let index = index(&known);
            let phrases = [Language::En, Language::Hi, Language::HiLatn].map(|language| Phrases::of(&known, language));
            // A thread that ended early left nothing behind; the work is done here instead.
            (index, phrases, gazetteer.join().unwrap_or_else(|_| Gazetteer::of(&known)))
        });
        let [en, hi, hi_latn] = phrases;
        Ok(Self {
            index: index?,
            gazetteer,
            en,
            hi,
            hi_latn,
            known,
            skies: Recalled::default(),
            names: Names::default(),
        })
    }

    /// The phrases of a language.
    #[must_use]
    pub fn phrases(&self, language: Language) -> &Phrases {
        match language {
            Language::En => &self.en,
            Language::Hi => &self.hi,
            Language::HiLatn => &self.hi_latn,
        }
    }
}
