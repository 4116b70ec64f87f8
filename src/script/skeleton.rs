//! What is left of a word where its vowels are dropped, as people drop them on a phone.

/// Letters that are dropped first.
const VOWELS: [char; 5] = ['a', 'e', 'i', 'o', 'u'];

/// The first letter of a word and its consonants after it, doubled ones once: `tomato` and `tmto` are `tmt`. Of a word
/// of other letters than Latin ones, nothing.
#[must_use]
pub fn skeleton(word: &str) -> Option<String> {
    let mut bones = String::new();
    for (place, letter) in word.chars().enumerate() {
        if !letter.is_ascii_lowercase() {
            return None;
        }
        if place == 0 || !VOWELS.contains(&letter) && !bones.ends_with(letter) {
            bones.push(letter);
        }
    }
    Some(bones)
}

/// How many consonants a word has.
#[must_use]
pub fn consonants(word: &str) -> usize {
    word.chars().filter(|letter| letter.is_ascii_lowercase() && !VOWELS.contains(letter)).count()
}

/// Whether a word is the other one with letters left out.
#[must_use]
pub fn is_left_of(short: &str, whole: &str) -> bool {
    let mut letters = whole.chars();
    short.len() < whole.len() && short.chars().all(|wanted| letters.any(|letter| letter == wanted))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn vowels_are_dropped_but_the_first() {
        let bones = |word| skeleton(word).unwrap_or_default();
        assert_eq!([bones("tomato"), bones("tomto"), bones("tmto")], ["tmt", "tmt", "tmt"]);
        assert_eq!([bones("evening"), bones("evng"), bones("still"), bones("stil")], ["evng", "evng", "stl", "stl"]);
        assert_eq!([skeleton("पालक"), skeleton("2buy")], [None, None]);
        assert_eq!([consonants("okra"), consonants("ready")], [2, 3]);
    }

    #[test]
    fn letters_are_left_out_and_never_added() {
        assert!(is_left_of("cucmbr", "cucumber") && is_left_of("redy", "ready"));
        assert!(!is_left_of("ready", "ready") && !is_left_of("corn", "crane") && !is_left_of("mirchi", "mirch"));
    }
}
