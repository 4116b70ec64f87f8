//! The embedded letters: how wide a text is, and which signs can be written.

use super::png::NoPicture;
use resvg::usvg::{self, FontResolver, fontdb};
use std::sync::{Arc, LazyLock};

const LATIN: [&[u8]; 2] = [include_bytes!("fonts/NotoSans-Regular.ttf"), include_bytes!("fonts/NotoSans-Bold.ttf")];
const DEVANAGARI: [&[u8]; 2] =
    [include_bytes!("fonts/NotoSansDevanagari-Regular.ttf"), include_bytes!("fonts/NotoSansDevanagari-Bold.ttf")];

/// Read once: four small files in memory, nothing of the machine's own.
static LETTERS: LazyLock<Arc<fontdb::Database>> = LazyLock::new(|| {
    let mut letters = fontdb::Database::new();
    for file in LATIN.into_iter().chain(DEVANAGARI) {
        letters.load_font_source(fontdb::Source::Binary(Arc::new(file)));
    }
    Arc::new(letters)
});

/// A part of a text that one file has all signs of.
#[derive(Debug, Clone, PartialEq)]
pub struct Run<'a> {
    pub family: &'static str,
    pub text: &'a str,
    /// From where the text begins, in the units of its size.
    pub at: f64,
}

/// A text parted where its letters change, each part at its place. They are drawn apart: set as one line, a part from
/// another file loses the joins of its syllables.
pub fn set(text: &str, size: f64, bold: bool) -> (Vec<Run<'_>>, f64) {
    /// A space of all four files, ems.
    const SPACE: f64 = 0.26;
    let mut at = 0.0;
    let mut runs = Vec::new();
    for (family, part) in parts(text) {
        let letters = part.trim_end_matches(' ');
        runs.push(Run { family, text: letters, at });
        let spaces = part.len() - letters.len();
        at += width_of_part(family, letters, bold) * size + spaces as f64 * SPACE * size;
    }
    (runs, at)
}

fn parts(text: &str) -> Vec<(&'static str, &str)> {
    let text = text.trim();
    let mut parts: Vec<(&'static str, &str)> = Vec::new();
    let mut start = 0;
    let mut own: Option<bool> = None;
    for (at, letter) in text.char_indices() {
        // Spaces and joiners go with what stands before them.
        let either = matches!(letter, ' ' | '\u{a0}' | '\u{200c}' | '\u{200d}');
        let devanagari = is_devanagari(letter);
        if !either && own.is_some_and(|own| own != devanagari) {
            parts.push((family(own), &text[start..at]));
            start = at;
        }
        if !either {
            own = Some(devanagari);
        }
    }
    if start < text.len() {
        parts.push((family(own), &text[start..]));
    }
    parts
}

const fn family(devanagari: Option<bool>) -> &'static str {
    if matches!(devanagari, Some(true)) { "Noto Sans Devanagari" } else { "Noto Sans" }
}

/// How a drawing is read: with the embedded letters alone.
pub fn options() -> usvg::Options<'static> {
    usvg::Options {
        fontdb: Arc::clone(&LETTERS),
        font_resolver: FontResolver {
            select_font: FontResolver::default_font_selector(),
            select_fallback: Box::new(|_, _, _| None),
        },
        ..usvg::Options::default()
    }
}

const fn is_devanagari(letter: char) -> bool {
    matches!(letter, '\u{900}'..='\u{97f}' | '\u{a8e0}'..='\u{a8ff}' | '\u{25cc}')
}

/// Whether every sign of a text is among the embedded letters.
#[must_use]
pub fn has_letters_for(text: &str) -> bool {
    text.chars().all(known)
}

/// The signs of the embedded files (`fonts/README.md`).
const fn known(letter: char) -> bool {
    is_devanagari(letter)
        || matches!(letter, ' '..='~' | '\u{a0}'..='\u{17f}' | '\u{2009}'..='\u{200d}' | '\u{2010}'..='\u{2015}')
        || matches!(letter, 'Α'..='Ρ' | 'Σ'..='Ω' | 'α'..='ω')
        || matches!(letter, '‘'..='‚' | '“'..='„' | '†'..='•' | '…' | '′' | '″' | '₹')
}

/// A text with nothing in it that would be drawn as an empty box: people call their beds what they like.
#[must_use]
pub fn legible(text: &str) -> String {
    let kept: String = text.chars().map(|letter| if letter.is_whitespace() { ' ' } else { letter }).collect();
    let kept: String = kept.chars().filter(|letter| known(*letter)).collect();
    kept.split(' ').filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// How wide a text is drawn at a size, in the units of the size. Measured by the same code that draws it.
#[must_use]
pub fn width(text: &str, size: f64, bold: bool) -> f64 {
    set(text, size, bold).1
}

/// Of one part, ems. A part that cannot be measured has no width: then it cannot be drawn either.
fn width_of_part(family: &str, text: &str, bold: bool) -> f64 {
    laid_out(family, text, bold, |text| f64::from(text.bounding_box().right()) / AT).ok().flatten().unwrap_or(0.0)
}

/// Measured large, so that rounding does not matter.
const AT: f64 = 100.0;

/// A part set at a hundred units, looked at by the code that draws it.
fn laid_out<T>(family: &str, text: &str, bold: bool, look: impl Fn(&usvg::Text) -> T) -> Result<Option<T>, NoPicture> {
    let weight = if bold { 700 } else { 400 };
    let drawing = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"><text font-family=\"{family}\" \
         font-size=\"{AT}\" font-weight=\"{weight}\">{}</text></svg>",
        super::svg::escaped(text),
    );
    let tree = usvg::Tree::from_str(&drawing, &options())?;
    Ok(find_text(tree.root()).map(look))
}

fn find_text(group: &usvg::Group) -> Option<&usvg::Text> {
    group.children().iter().find_map(|node| match node {
        usvg::Node::Text(text) => Some(text.as_ref()),
        usvg::Node::Group(group) => find_text(group),
        _ => None,
    })
}

/// Signs of a text that are drawn as the empty box of a font that lacks them.
#[must_use]
pub fn boxes(text: &str, bold: bool) -> usize {
    let empty = |text: &usvg::Text| {
        let glyphs = text.layouted().iter().flat_map(|span| &span.positioned_glyphs);
        glyphs.filter(|glyph| glyph.id.0 == 0).count()
    };
    parts(text).into_iter().filter_map(|(family, part)| laid_out(family, part, bold, empty).ok().flatten()).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Advance widths of the font's own table, read with another tool: n and h are 618 of 1000 units an em, a space 260.
    #[test]
    fn a_text_is_as_wide_as_its_letters() {
        assert!((width("nh nh", 1.0, false) - 2.732).abs() < 0.01, "{}", width("nh nh", 1.0, false));
        assert!(width("nnhh", 10.0, true) > width("nnhh", 10.0, false));
    }

    /// The list of known signs is what the files hold: each is drawn, and not as a box.
    #[test]
    fn every_known_sign_is_in_the_files() {
        let all = (' '..='\u{a8ff}').filter(|letter| known(*letter) && !letter.is_whitespace());
        for letter in all {
            for bold in [false, true] {
                assert_eq!(boxes(&letter.to_string(), bold), 0, "U+{:04X}", u32::from(letter));
            }
        }
        assert_eq!(boxes("\u{1f33f}", false), 1);
    }

    /// A syllable of three letters and a sign is one joined shape, far narrower than its parts.
    #[test]
    fn devanagari_is_joined() {
        let parts: f64 = ["क", "ष", "त", "र"].iter().map(|part| width(part, 10.0, false)).sum();
        assert!(width("क्षत्र", 10.0, false) < 0.85 * parts);
        assert!(width("सोमवार 18", 10.0, false) > width("सोमवार", 10.0, false));
    }

    #[test]
    fn a_text_is_parted_where_its_letters_change() {
        let (latin, devanagari) = ("Noto Sans", "Noto Sans Devanagari");
        assert_eq!(parts("east box"), [(latin, "east box")]);
        let expected = [
            (latin, "("),
            (devanagari, "दिन "),
            (latin, "1.7 "),
            (devanagari, "लीटर"),
            (latin, ")"),
            (devanagari, "।"),
        ];
        assert_eq!(parts("(दिन 1.7 लीटर)।"), expected);
        assert!(parts("").is_empty() && parts(" ").is_empty());
        assert_eq!(boxes("(हफ़्ते में कुल 3.3 से 11 लीटर)।", false), 0);
        // The same word is as wide and as far from its neighbour whatever stands before it.
        let places = |text| set(text, 10.0, false).0.iter().map(|run| run.at).collect::<Vec<_>>();
        let one = width("1", 10.0, false);
        assert!((places("1 दिन")[1] - one - 2.6).abs() < 1e-6);
        assert!((width("1 दिन", 10.0, false) - one - 2.6 - width("दिन", 10.0, false)).abs() < 1e-6);
    }

    #[test]
    fn what_cannot_be_written_is_left_out() {
        assert_eq!(legible("mint \u{1f33f} basket\n2"), "mint basket 2");
        assert_eq!(legible("पुदीना"), "पुदीना");
        assert!(has_letters_for("25 °C, ½ × 3") && !has_letters_for("\u{1f33f}"));
    }
}
