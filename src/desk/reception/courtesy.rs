//! A greeting, thanks, a sign of assent: answered as a person would, in few words; nothing is looked up for it.

use super::turn::Turn;
use crate::script::Language;

impl Turn<'_> {
    /// Whether a message was nothing but a courtesy; it has its answer then.
    pub fn courtesy(&mut self, text: &str) -> bool {
        // A thumb, a leaf, a row of dots.
        let signs_alone = !text.contains('?') && !text.chars().any(char::is_alphanumeric);
        let phrase = if self.wishes("bot-words-hello", text) {
            "bot-greeting"
        } else if signs_alone || self.wishes("bot-words-thanks", text) {
            "bot-thanks"
        } else {
            return false;
        };
        let chosen = self.person.as_ref().and_then(|person| person.speaks).is_some();
        let devanagari = text.chars().any(|letter| ('\u{900}'..='\u{97f}').contains(&letter));
        if devanagari && !chosen {
            self.language = Language::Hi;
        }
        self.say(phrase, &[]);
        true
    }
}
