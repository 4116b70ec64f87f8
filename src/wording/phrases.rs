//! The phrases of the three languages.

use crate::knowledge::Knowledge;
use crate::script::Language;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::LanguageIdentifier;

/// The phrases of one language, ready to be filled.
pub struct Phrases {
    bundle: FluentBundle<FluentResource>,
}

impl Phrases {
    /// Reads the phrases of a language. A line that is no phrase is passed over; `check` names it.
    #[must_use]
    pub fn of(known: &Knowledge, language: Language) -> Self {
        let tag: LanguageIdentifier = match language {
            Language::En => "en",
            Language::Hi | Language::HiLatn => "hi",
        }
        .parse()
        .unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // Marks that isolate each value confuse a phone's terminal more than they help.
        bundle.set_use_isolating(false);
        let text = known.phrases.of(language).clone();
        let resource = FluentResource::try_new(text).unwrap_or_else(|(resource, _)| resource);
        bundle.add_resource_overriding(resource);
        Self { bundle }
    }

    /// A phrase with its values filled in; its own name where the language lacks it.
    #[must_use]
    pub fn say(&self, phrase: &str, values: &FluentArgs<'_>) -> String {
        let Some(pattern) = self.bundle.get_message(phrase).and_then(|message| message.value()) else {
            return phrase.to_owned();
        };
        let mut faults = Vec::new();
        self.bundle.format_pattern(pattern, Some(values), &mut faults).into_owned()
    }

    /// Whether this language has a phrase.
    #[must_use]
    pub fn has(&self, phrase: &str) -> bool {
        self.bundle.has_message(phrase)
    }
}
