//! Words that differ by a slip of the finger.

/// How many slips (a letter changed, dropped, added, or two swapped) lie between two words, if few
/// enough for their length: none under 4 letters, one under 8, two above. The shorter word decides.
#[must_use]
pub fn near(a: &str, b: &str) -> Option<usize> {
    let letters = a.chars().count().min(b.chars().count());
    let allowed = match letters {
        0..4 => 0,
        4..8 => 1,
        _ => 2,
    };
    if a.chars().count().abs_diff(b.chars().count()) > allowed || letters_apart(a, b) > allowed {
        return None;
    }
    let slips = strsim::damerau_levenshtein(a, b);
    (slips <= allowed).then_some(slips)
}

/// At least so many slips lie between two words: letters that one has and the other has not. Letters are put into a few
/// baskets, which is quick and never too many.
fn letters_apart(a: &str, b: &str) -> usize {
    const BASKETS: u32 = 32;
    let mut more = [0_i32; BASKETS as usize];
    let mut count = |word: &str, by: i32| {
        for letter in word.chars() {
            if let Some(basket) = more.get_mut((u32::from(letter) % BASKETS) as usize) {
                *basket += by;
            }
        }
    };
    count(a, 1);
    count(b, -1);
    let of = |sign: i32| more.iter().map(|more| more * sign).filter(|more| *more > 0).sum::<i32>();
    of(1).max(of(-1)).unsigned_abs() as usize
}

#[cfg(test)]
mod tests {
    use super::near;

    #[track_caller]
    fn case(a: &str, b: &str, expected: Option<usize>) {
        assert_eq!(near(a, b), expected, "{a} {b}");
        assert_eq!(near(b, a), expected, "{b} {a}");
    }

    #[test]
    fn slips_by_length() {
        case("okra", "okra", Some(0));
        case("peas", "pear", Some(1));
        case("pea", "pes", None);
        case("spinach", "spniach", Some(1));
        case("spinach", "spinich", Some(1));
        case("coriander", "coreander", Some(1));
        case("coriander", "corriandar", Some(2));
        case("tomato", "potato", None);
        case("पालक", "पलक", None);
    }
}
