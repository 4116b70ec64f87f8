//! Lists of words that a rule asks for, read once so that each word of a message is found at once.

use crate::script::{Text, Token};
use rustc_hash::FxHashSet;
use serde::Deserialize;

/// Sounds shorter than this meet by chance.
const SHORTEST_SOUND: usize = 4;

/// Words among which a word of a message may be.
pub trait WordList {
    fn has(&self, word: &Token) -> bool;
}

/// Words that count as they are spelled.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(try_from = "Vec<String>")]
pub struct Spelled(FxHashSet<String>);

/// Words of Hindi in either script: they count as they are spelled and, where the sound is long enough to tell, as they
/// sound.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(try_from = "Vec<String>")]
pub struct Sounded {
    spelled: FxHashSet<String>,
    sounds: FxHashSet<String>,
}

/// Words that stand side by side.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(try_from = "Vec<String>")]
pub struct Phrases(Vec<Vec<String>>);

impl WordList for Spelled {
    fn has(&self, word: &Token) -> bool {
        self.0.contains(&word.normal)
    }
}

impl WordList for Sounded {
    fn has(&self, word: &Token) -> bool {
        self.spelled.contains(&word.normal) || self.sounds.contains(&word.sound)
    }
}

impl Phrases {
    /// Whether one of them stands somewhere among these words.
    #[must_use]
    pub fn stand_in(&self, words: &[Token]) -> bool {
        let stands = |phrase: &Vec<String>| {
            words.windows(phrase.len()).any(|part| part.iter().map(|word| &word.normal).eq(phrase))
        };
        self.0.iter().any(stands)
    }
}

impl TryFrom<Vec<String>> for Spelled {
    type Error = String;

    fn try_from(list: Vec<String>) -> Result<Self, String> {
        Ok(Self(single_words(&list)?.into_iter().map(|word| word.normal).collect()))
    }
}

impl TryFrom<Vec<String>> for Sounded {
    type Error = String;

    fn try_from(list: Vec<String>) -> Result<Self, String> {
        let words = single_words(&list)?;
        let long = words.iter().filter(|word| word.sound.chars().count() >= SHORTEST_SOUND);
        let sounds = long.map(|word| word.sound.clone()).collect();
        Ok(Self { sounds, spelled: words.into_iter().map(|word| word.normal).collect() })
    }
}

impl TryFrom<Vec<String>> for Phrases {
    type Error = String;

    fn try_from(list: Vec<String>) -> Result<Self, String> {
        let phrases = list.iter().map(|phrase| {
            let words: Vec<String> = Text::read(phrase).tokens.into_iter().map(|word| word.normal).collect();
            if words.is_empty() { Err(format!("\"{phrase}\" has no word")) } else { Ok(words) }
        });
        phrases.collect::<Result<_, _>>().map(Self)
    }
}

/// The words of a list, as a message's words are read.
fn single_words(list: &[String]) -> Result<Vec<Token>, String> {
    let mut seen = FxHashSet::default();
    let words = list.iter().map(|written| {
        let Ok([word]) = <[Token; 1]>::try_from(Text::read(written).tokens) else {
            return Err(format!("\"{written}\" is not one word, as each entry of this list must be"));
        };
        if seen.insert(word.normal.clone()) { Ok(word) } else { Err(format!("\"{written}\" stands here twice")) }
    });
    words.collect()
}

#[cfg(test)]
mod tests {
    use super::{Phrases, Sounded, Spelled, WordList};
    use crate::script::Text;

    fn list(words: &[&str]) -> Vec<String> {
        words.iter().map(|word| (*word).to_owned()).collect()
    }

    #[test]
    fn a_word_is_found_however_it_is_written() {
        let whose = Spelled::try_from(list(&["husband's", "दूँ"])).unwrap();
        let has = |word: &str| whose.has(&Text::read(word).tokens[0]);
        assert!(has("Husband’s") && has("husbands") && has("दूं") && !has("husband"));
        let poison = Sounded::try_from(list(&["कीटनाशक", "aate"])).unwrap();
        let has = |word: &str| poison.has(&Text::read(word).tokens[0]);
        assert!(has("keetnashak") && has("aate") && !has("ate"));
    }

    #[test]
    fn phrases_stand_side_by_side() {
        let phrases = Phrases::try_from(list(&["don't want to live"])).unwrap();
        let stand = |text: &str| phrases.stand_in(&Text::read(text).tokens);
        assert!(stand("I dont want to live.") && !stand("I don't want her to live") && !stand("live"));
    }

    #[test]
    fn what_can_never_be_found_is_refused() {
        assert!(Spelled::try_from(list(&["in-laws"])).is_err());
        assert!(Spelled::try_from(list(&["दूँ", "दूं"])).is_err());
        assert!(Phrases::try_from(list(&[" "])).is_err());
    }
}
