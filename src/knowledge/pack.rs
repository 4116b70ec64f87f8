//! What is derived, laid out as bytes and taken up again. Every length is checked: bytes that are not what they should
//! be give nothing.

use rustc_hash::{FxHashMap, FxHasher};
use std::hash::{Hash, Hasher};
use std::ops::Range;

/// Bytes to be kept.
#[derive(Debug, Default)]
pub struct Packed(Vec<u8>);

impl Packed {
    pub fn number(&mut self, number: u64) {
        self.0.extend(number.to_le_bytes());
    }

    pub fn bytes(&mut self, bytes: &[u8]) {
        self.number(bytes.len() as u64);
        self.0.extend(bytes);
    }

    pub fn numbers(&mut self, numbers: &[u32]) {
        self.number(numbers.len() as u64 * 4);
        self.0.extend(numbers.iter().flat_map(|number| number.to_le_bytes()));
    }

    pub fn weights(&mut self, weights: &[f32]) {
        self.number(weights.len() as u64 * 4);
        self.0.extend(weights.iter().flat_map(|weight| weight.to_le_bytes()));
    }

    pub fn into_bytes(self) -> Vec<u8> {
        self.0
    }
}

/// Bytes that were kept, read from the front.
#[derive(Debug)]
pub struct Unpacking<'a>(pub &'a [u8]);

impl<'a> Unpacking<'a> {
    fn cut(&mut self, length: usize) -> Option<&'a [u8]> {
        let (front, rest) = self.0.split_at_checked(length)?;
        self.0 = rest;
        Some(front)
    }

    pub fn number(&mut self) -> Option<u64> {
        Some(u64::from_le_bytes(self.cut(8)?.try_into().ok()?))
    }

    pub fn bytes(&mut self) -> Option<&'a [u8]> {
        let length = usize::try_from(self.number()?).ok()?;
        self.cut(length)
    }

    fn fours<T>(&mut self, make: fn([u8; 4]) -> T) -> Option<Vec<T>> {
        let (fours, rest) = self.bytes()?.as_chunks::<4>();
        rest.is_empty().then(|| fours.iter().map(|four| make(*four)).collect())
    }

    pub fn numbers(&mut self) -> Option<Vec<u32>> {
        self.fours(u32::from_le_bytes)
    }

    pub fn weights(&mut self) -> Option<Vec<f32>> {
        self.fours(f32::from_le_bytes)
    }

    /// Nothing is left over.
    pub fn is_done(&self) -> bool {
        self.0.is_empty()
    }
}

/// Different texts in the order of the alphabet, one behind the other: a text is known by its place.
#[derive(Debug, Clone, Default)]
pub struct Ranked {
    all: String,
    ends: Vec<u32>,
    /// Places by the hash of their text: most words that are looked for are one step away, and not seventeen.
    by_hash: FxHashMap<u64, u32>,
}

impl Ranked {
    /// Of texts that stand in order and differ.
    pub fn of<'t>(sorted: impl IntoIterator<Item = &'t str>) -> Self {
        let mut ranked = Self::default();
        for text in sorted {
            ranked.all.push_str(text);
            ranked.ends.push(u32::try_from(ranked.all.len()).unwrap_or(u32::MAX));
        }
        ranked.hashed()
    }

    fn hashed(mut self) -> Self {
        let places = 0..u32::try_from(self.len()).unwrap_or(u32::MAX);
        self.by_hash = places.map(|place| (hash(self.at(place as usize)), place)).collect();
        self
    }

    pub fn len(&self) -> usize {
        self.ends.len()
    }

    pub fn at(&self, place: usize) -> &str {
        let end = |place: usize| self.ends.get(place).map_or(0, |end| *end as usize);
        let start = place.checked_sub(1).map_or(0, end);
        self.all.get(start..end(place)).unwrap_or_default()
    }

    /// The first place whose text is no longer `before`.
    fn first_not(&self, before: impl Fn(&str) -> bool) -> usize {
        let (mut from, mut to) = (0, self.len());
        while from < to {
            let middle = usize::midpoint(from, to);
            if before(self.at(middle)) { from = middle + 1 } else { to = middle }
        }
        from
    }

    /// The place of a text.
    pub fn place(&self, text: &str) -> Option<usize> {
        let hashed = *self.by_hash.get(&hash(text))? as usize;
        if self.at(hashed) == text {
            return Some(hashed);
        }
        // Two texts of one hash: the order of the alphabet tells.
        let place = self.first_not(|other| other < text);
        (place < self.len() && self.at(place) == text).then_some(place)
    }

    /// The places of all texts that begin so.
    pub fn starting_with(&self, start: &str) -> Range<usize> {
        self.first_not(|other| other < start)..self.first_not(|other| other < start || other.starts_with(start))
    }

    pub fn pack(&self, packed: &mut Packed) {
        packed.bytes(self.all.as_bytes());
        packed.numbers(&self.ends);
    }

    pub fn unpack(from: &mut Unpacking<'_>) -> Option<Self> {
        let all = std::str::from_utf8(from.bytes()?).ok()?.to_owned();
        Some(Self { all, ends: from.numbers()?, by_hash: FxHashMap::default() }.hashed())
    }
}

fn hash(text: &str) -> u64 {
    let mut hasher = FxHasher::default();
    text.hash(&mut hasher);
    hasher.finish()
}

#[cfg(test)]
mod tests {
    use super::{Packed, Ranked, Unpacking};

    #[test]
    fn what_is_packed_comes_back() {
        let mut packed = Packed::default();
        let ranked = Ranked::of(["", "a", "ab", "पानी"]);
        ranked.pack(&mut packed);
        packed.weights(&[0.1, -0.0]);
        packed.number(7);
        let bytes = packed.into_bytes();
        let mut from = Unpacking(&bytes);
        let back = Ranked::unpack(&mut from).unwrap();
        for (place, text) in ["", "a", "ab", "पानी"].into_iter().enumerate() {
            assert_eq!((back.at(place), back.place(text)), (text, Some(place)));
        }
        assert_eq!((back.place("b"), back.starting_with("a"), back.starting_with("b")), (None, 1..3, 3..3));
        assert_eq!(from.weights(), Some(vec![0.1, -0.0]));
        assert!(!from.is_done());
        assert_eq!(from.number(), Some(7));
        assert!(from.is_done());
    }

    #[test]
    fn what_was_cut_short_gives_nothing() {
        let mut packed = Packed::default();
        packed.numbers(&[1, 2, 3]);
        let bytes = packed.into_bytes();
        for end in 0..bytes.len() {
            assert_eq!(Unpacking(&bytes[..end]).numbers(), None);
        }
        assert_eq!(Unpacking(&u64::MAX.to_le_bytes()).bytes(), None);
        assert_eq!(Unpacking(&[3, 0, 0, 0, 0, 0, 0, 0, 1, 2, 3]).numbers(), None);
    }
}
