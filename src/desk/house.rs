//! What is made once and serves every message.

use crate::knowledge::{Files, Index, IndexFault, Knowledge, Problem};
use crate::script::Language;
use crate::understanding::Gazetteer;
use crate::wording::Phrases;
use thiserror::Error;

/// Knowledge, its index, its names and its phrases.
pub struct House {
    pub known: Knowledge,
    pub index: Index,
    pub gazetteer: Gazetteer,
    en: Phrases,
    hi: Phrases,
    hi_latn: Phrases,
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
        let (known, problems) = Knowledge::read(files);
        if !problems.is_empty() {
            return Err(NoHouse::Problems(problems));
        }
        let (index, gazetteer) = std::thread::scope(|scope| {
            let gazetteer = scope.spawn(|| Gazetteer::of(&known));
            let index = Index::build(&known);
            // A thread that ended early left nothing behind; the work is done here instead.
            (index, gazetteer.join().unwrap_or_else(|_| Gazetteer::of(&known)))
        });
        Ok(Self {
            index: index?,
            gazetteer,
            en: Phrases::of(&known, Language::En),
            hi: Phrases::of(&known, Language::Hi),
            hi_latn: Phrases::of(&known, Language::HiLatn),
            known,
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
