//! One word, number or mark of a text, and how a text is cut into them.

use super::letters::{
    apostrophe, digit, fraction, is_devanagari_digit, is_joiner, letter_script, normal_sign, normal_word,
};
use super::sound::key_of;
use std::ops::Range;

/// What a token is written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Script {
    Latin,
    Devanagari,
    /// Digits of any script; [`Token::number`] holds the value.
    Number,
    /// A mark, a sign, a picture, or letters of another script.
    Other,
}

/// A stretch of the text that is read as one.
#[derive(Debug, Clone, PartialEq)]
pub struct Token {
    /// As written.
    pub text: String,
    /// In normal form: lower case, nukta folded, joiners dropped, digits of ASCII.
    pub normal: String,
    /// Where it stands in the original text, in bytes.
    pub span: Range<usize>,
    pub script: Script,
    /// What a word sounds like, as [`super::sound_key`] has it; empty for what is no word. Kept, since every list of
    /// words asks for it.
    pub sound: String,
    /// The value of a [`Script::Number`], else `None`; number words are read by [`super::numbers`].
    pub number: Option<f64>,
}

impl Token {
    /// Whether it is a word of Latin or Devanagari letters.
    #[must_use]
    pub const fn is_word(&self) -> bool {
        matches!(self.script, Script::Latin | Script::Devanagari)
    }

    /// Whether `next` follows with nothing between them.
    #[must_use]
    pub const fn touches(&self, next: &Self) -> bool {
        self.span.end == next.span.start
    }
}

/// A text while it is being cut: its characters and where each begins.
struct Cutter<'a> {
    text: &'a str,
    chars: Vec<(usize, char)>,
}

/// Cuts a text into tokens; space, control characters and lone joiners are left out.
pub(super) fn cut(text: &str) -> Vec<Token> {
    let cutter = Cutter { text, chars: text.char_indices().collect() };
    let mut tokens: Vec<Token> = Vec::new();
    let mut at = 0;
    while let Some(c) = cutter.char(at) {
        let end = if digit(c).is_some() {
            cutter.number(at, &mut tokens)
        } else if let Some(value) = fraction(c) {
            cutter.push(at..at + 1, value.to_string(), Script::Number, Some(value), &mut tokens);
            at + 1
        } else if let Some(script) = letter_script(c) {
            let end = cutter.word_end(at, script);
            let normal = normal_word(cutter.slice(at..end), script);
            if !normal.is_empty() {
                cutter.push(at..end, normal, script, None, &mut tokens);
            }
            end
        } else if c.is_whitespace() || c.is_control() || is_joiner(c) {
            at + 1
        } else {
            cutter.sign(at, c, &mut tokens)
        };
        at = end.max(at + 1);
    }
    tokens
}

impl Cutter<'_> {
    fn char(&self, at: usize) -> Option<char> {
        self.chars.get(at).map(|(_, c)| *c)
    }

    fn byte(&self, at: usize) -> usize {
        self.chars.get(at).map_or(self.text.len(), |(byte, _)| *byte)
    }

    fn bytes(&self, range: Range<usize>) -> Range<usize> {
        self.byte(range.start)..self.byte(range.end)
    }

    fn slice(&self, range: Range<usize>) -> &str {
        self.text.get(self.bytes(range)).unwrap_or_default()
    }

    fn push(&self, range: Range<usize>, normal: String, script: Script, number: Option<f64>, tokens: &mut Vec<Token>) {
        let text = self.slice(range.clone()).to_owned();
        let is_word = matches!(script, Script::Latin | Script::Devanagari);
        let sound = if is_word { key_of(&normal, script) } else { String::new() };
        tokens.push(Token { text, normal, span: self.bytes(range), script, sound, number });
    }

    /// A word ends where its letters end; an apostrophe between two letters belongs to it.
    fn word_end(&self, start: usize, script: Script) -> usize {
        let mut end = start;
        while let Some(c) = self.char(end) {
            let inside = letter_script(c) == Some(script)
                || is_joiner(c)
                || (apostrophe(c).is_some()
                    && script == Script::Latin
                    && end > start
                    && self.char(end + 1).and_then(letter_script) == Some(script));
            if !inside {
                break;
            }
            end += 1;
        }
        end
    }

    fn digits_end(&self, start: usize) -> usize {
        let mut end = start;
        while self.char(end).and_then(digit).is_some() {
            end += 1;
        }
        end
    }

    /// A number with its decimals, thousands and a fraction sign; `4.5.26` stays three numbers.
    fn number(&self, start: usize, tokens: &mut Vec<Token>) -> usize {
        let mut end = self.digits_end(start);
        while self.char(end) == Some(',') {
            let group = self.digits_end(end + 1);
            let last = self.char(group) != Some(',');
            if !(group - end == 4 || group - end == 3 && !last) || end - start > 12 {
                break;
            }
            end = group;
        }
        if self.char(end) == Some('.') {
            let decimals = self.digits_end(end + 1);
            let dotted_on = self.char(decimals) == Some('.') && self.char(decimals + 1).and_then(digit).is_some();
            let dotted_before =
                start > 1 && self.char(start - 1) == Some('.') && self.char(start - 2).and_then(digit).is_some();
            if decimals > end + 1 && !dotted_on && !dotted_before {
                end = decimals;
            }
        }
        let mut normal = String::new();
        for c in self.slice(start..end).chars() {
            match digit(c) {
                Some(value) => normal.push(char::from(b'0' + value)),
                None if c == '.' => normal.push(c),
                None => {}
            }
        }
        let mut value = normal.parse::<f64>().ok().filter(|value| value.is_finite());
        if let (Some(whole), Some(part)) = (value, self.char(end).and_then(fraction)) {
            value = Some(whole + part);
            normal = (whole + part).to_string();
            end += 1;
        }
        self.push(start..end, normal, if value.is_some() { Script::Number } else { Script::Other }, value, tokens);
        end
    }

    /// A mark or a letter of another script; two primes are one inch sign, `302's` keeps its `'s`.
    fn sign(&self, at: usize, c: char, tokens: &mut Vec<Token>) -> usize {
        if apostrophe(c).is_some() {
            if self.char(at + 1).and_then(apostrophe).is_some() {
                self.push(at..at + 2, "\"".into(), Script::Other, None, tokens);
                return at + 2;
            }
            let after_number = at > 0 && self.char(at - 1).and_then(digit).is_some();
            let lone_s = self.char(at + 1) == Some('s') && self.char(at + 2).and_then(letter_script).is_none();
            if after_number && lone_s {
                self.push(at..at + 2, "s".into(), Script::Latin, None, tokens);
                return at + 2;
            }
        }
        let mut end = at + 1;
        if c.is_alphanumeric() {
            while self
                .char(end)
                .is_some_and(|next| next.is_alphanumeric() && letter_script(next).is_none() && digit(next).is_none())
            {
                end += 1;
            }
            self.push(at..end, normal_word(self.slice(at..end), Script::Other), Script::Other, None, tokens);
        } else {
            self.push(at..end, normal_sign(c), Script::Other, None, tokens);
        }
        end
    }
}

/// Whether any digit of the text is Devanagari.
pub(super) fn has_devanagari_digits(text: &str) -> bool {
    text.chars().any(is_devanagari_digit)
}

#[cfg(test)]
mod tests {
    use super::cut;

    #[track_caller]
    fn case(text: &str, expected: &str) {
        let got: Vec<String> = cut(text).into_iter().map(|token| token.normal).collect();
        assert_eq!(got.join(" "), expected, "{text}");
    }

    #[test]
    fn numbers_part_from_units() {
        case("12in pot", "12 in pot");
        case("2x4", "2 x 4");
        case("2×4", "2 x 4");
        case("20L bag, 400gm", "20 l bag , 400 gm");
        case("6” deep 5’", "6 \" deep 5 '");
        case("5''", "5 \"");
        case("1½ ft", "1.5 ft");
        case("२५० ग्राम", "250 ग्राम");
        case("1,200 g; 1,00,000", "1200 g ; 100000");
        case("1,20", "1 , 20");
        case("2.5L 4.5.26", "2.5 l 4 . 5 . 26");
        case("1 m²", "1 m 2");
        case("43°C 43℃", "43 ° c 43 °c");
        case("302's", "302 s");
    }

    #[test]
    fn words_stay_whole() {
        case("don't Stop", "dont stop");
        case("पत्तियाँ मुड़ीं।", "पत्तियां मुडीं .");
        case("क्यारी", "क्यारी");
        case("boxमें", "box में");
        case("🌱🌱 hi", "🌱 🌱 hi");
    }

    #[test]
    fn spans_lie_in_the_original() {
        let text = "टब १२\" 🌱 don’t";
        for token in cut(text) {
            assert_eq!(text.get(token.span.clone()), Some(token.text.as_str()));
        }
    }
}
