//! One word, number or mark of a text.

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
    /// The value of a [`Script::Number`], else `None`; number words are not read here.
    pub number: Option<f64>,
}
