//! The words an index keeps of a text.
//!
//! English words lose their commonest endings. Hindi words become sound keys, so that both ways of
//! writing meet, and lose the vowel endings of number and case (after Ramanathan and Rao, "A
//! lightweight stemmer for Hindi", 2003: longest ending first; here on sounds, from memory).

use super::language::Language;
use super::text::Text;
use super::token::{Script, Token};

/// The words of a text as an index keeps them, by the language of the text.
#[must_use]
pub fn index_words(text: &str) -> Vec<String> {
    words_of(&Text::read(text))
}

/// The words of a text that is known to be in this language; Devanagari words are Hindi in any.
#[must_use]
pub fn index_words_as(text: &str, language: Language) -> Vec<String> {
    words_of(&Text::read_as(text, language))
}

fn words_of(text: &Text) -> Vec<String> {
    text.tokens.iter().filter_map(|token| index_word(token, text.language)).collect()
}

/// The word an index keeps of one token, in a text of this language; none for a bare mark.
#[must_use]
pub fn index_word(token: &Token, language: Language) -> Option<String> {
    match token.script {
        Script::Number => Some(token.normal.clone()),
        Script::Devanagari => Some(hindi_stem(&token.sound)),
        Script::Latin if language == Language::En => Some(english_stem(&token.normal)),
        Script::Latin => Some(hindi_stem(&token.sound)),
        Script::Other => token.normal.chars().any(char::is_alphanumeric).then(|| token.normal.clone()),
    }
}

/// Endings of number and case as sounds, the longest first.
const HINDI_ENDINGS: [(&str, &str); 7] =
    [("iyo", "i"), ("io", "i"), ("iya", "i"), ("ia", "i"), ("o", ""), ("e", ""), ("a", "")];

/// The stem of a Hindi word, from its sound key.
fn hindi_stem(key: &str) -> String {
    for (ending, plain) in HINDI_ENDINGS {
        if let Some(stem) = key.strip_suffix(ending)
            && stem.chars().count() >= 2
        {
            return format!("{stem}{plain}");
        }
    }
    key.to_owned()
}

/// Plurals that no rule gives.
const IRREGULAR: [(&str, &str); 6] = [
    ("leaves", "leaf"),
    ("halves", "half"),
    ("loaves", "loaf"),
    ("knives", "knife"),
    ("mice", "mouse"),
    ("sown", "sow"),
];

/// The light stem of an English word: plural, `-ing`, `-ed`, and a silent `e`.
fn english_stem(word: &str) -> String {
    if let Some((_, stem)) = IRREGULAR.iter().find(|(plural, _)| *plural == word) {
        return (*stem).to_owned();
    }
    if word.len() < 4 || !word.is_ascii() {
        return word.to_owned();
    }
    let singular = singular(word);
    let root = ["ing", "ed"]
        .iter()
        .find_map(|ending| singular.strip_suffix(ending).filter(|root| is_root(root)))
        .map_or_else(|| singular.clone(), |root| undoubled(root).to_owned());
    match root.strip_suffix('e') {
        Some(silent) if silent.len() > 2 && !silent.ends_with('e') => silent.to_owned(),
        _ => root,
    }
}

fn singular(word: &str) -> String {
    if let Some(stem) = word.strip_suffix("ies").filter(|stem| stem.len() > 2) {
        return format!("{stem}y");
    }
    if let Some(stem) = word.strip_suffix("es")
        && ["s", "x", "z", "ch", "sh", "o"].iter().any(|end| stem.ends_with(end))
    {
        return stem.to_owned();
    }
    match word.strip_suffix('s') {
        Some(stem) if !["s", "u", "i"].iter().any(|end| stem.ends_with(end)) => stem.to_owned(),
        _ => word.to_owned(),
    }
}

/// A root has three letters, a vowel among them, and does not make `seed` or `feed` of `se-ed`.
fn is_root(root: &str) -> bool {
    root.len() >= 3 && root.contains(['a', 'e', 'i', 'o', 'u', 'y']) && !root.ends_with('e')
}

/// `cutt` → `cut`, but `fill`, `press` stay.
fn undoubled(root: &str) -> &str {
    let mut ends = root.chars().rev();
    match (ends.next(), ends.next()) {
        (Some(last), Some(before)) if last == before && !matches!(last, 'l' | 's' | 'z') => {
            root.get(..root.len() - 1).unwrap_or(root)
        }
        _ => root,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn english(words: &str, expected: &str) {
        assert_eq!(index_words_as(words, Language::En).join(" "), expected, "{words}");
    }

    #[track_caller]
    fn twins(latin: &str, devanagari: &str) {
        assert_eq!(index_words_as(latin, Language::HiLatn), index_words(devanagari), "{latin} / {devanagari}");
    }

    #[test]
    fn english_endings() {
        english("tomato tomatoes potatoes boxes trays", "tomato tomato potato box tray");
        english("berry berries leaf leaves", "berry berry leaf leaf");
        english("water watering watered waters", "water water water water");
        english("prune pruning pruned prunes", "prun prun prun prun");
        english("cut cutting spring string", "cut cut spring string");
        english("seed feed weeds bed red", "seed feed weed bed red");
        english("moss status this", "moss status this");
        english("it's 12\"!", "its 12");
    }

    #[test]
    fn both_ways_of_writing_hindi() {
        twins("palak ke patte peele", "पालक के पत्ते पीले");
        twins("paudhon mein khaad", "पौधों में खाद");
        twins("gamlo me pani", "गमलों में पानी");
        twins("mitti kitni lagegi", "मिट्टी कितनी लगेगी");
        twins("tamatar ki pattiyan", "टमाटर की पत्तियाँ");
        twins("12 inch ke gamle", "१२ इंच के गमले");
        twins("neem ka tel", "नीम का तेल");
        twins("kheere par keede", "खीरे पर कीड़े");
    }

    #[test]
    fn number_and_case_make_no_difference() {
        twins("gamla", "गमलों");
        twins("patti", "पत्तियों");
        twins("kyari", "क्यारियाँ");
    }
}
