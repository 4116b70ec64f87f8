//! Messages nobody wrote: phrasings of the knowledge base with names, sizes and days put in, spelled badly, mixed in
//! script, cut and joined.

use rooftend::knowledge::Knowledge;

/// What is put into the phrasings.
pub struct Fillings<'k> {
    known: &'k Knowledge,
    crops: Vec<&'k str>,
    materials: Vec<&'k str>,
    troubles: Vec<&'k str>,
}

impl<'k> Fillings<'k> {
    pub fn of(known: &'k Knowledge) -> Self {
        let crops = known.crops.values().flat_map(|crop| crop.names.all()).collect();
        let materials = known.materials.values().flat_map(|material| material.names.all()).collect();
        let troubles = known.troubles.values().flat_map(|trouble| trouble.names.all()).collect();
        Self { known, crops, materials, troubles }
    }
}

/// Numbers that look like chance and are the same each time (xorshift64*).
pub struct Dice(u64);

impl Dice {
    pub fn of(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1)
    }

    fn below(&mut self, end: usize) -> usize {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        (self.0.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 33) as usize % end.max(1)
    }

    fn one_in(&mut self, chances: usize) -> bool {
        self.below(chances) == 0
    }

    fn pick<'t, T: AsRef<str>>(&mut self, from: &'t [T]) -> &'t str {
        from[self.below(from.len())].as_ref()
    }
}

const SIZES: [&str; 12] = [
    "4x3 ft",
    "20 L",
    "12 inch",
    "3 फुट x 2 फुट",
    "half a bucket",
    "डेढ़ फुट",
    "2.5 kg",
    "5 ml/L",
    "50 %",
    "10x20x3 in",
    "sadhe teen foot",
    "0 ft",
];
const DAYS: [&str; 12] = [
    "today",
    "kal",
    "कल",
    "on 31 June",
    "3 weeks ago",
    "parso",
    "12 May",
    "29/2",
    "next friday",
    "पिछले सोमवार",
    "10 tareekh",
    "on 9999-12-31",
];
const OTHERS: [&str; 10] = ["?", " 🌱", " and ", " aur ", ", ", " pls", "!!", "\n", " \u{200d} ", " और "];

/// One message of this number: a phrasing filled in, perhaps with another, and spoiled.
pub fn message(dice: &mut Dice, fillings: &Fillings<'_>) -> String {
    let known = fillings.known;
    let mut text = String::new();
    loop {
        let way = &known.ways_of_asking[dice.below(known.ways_of_asking.len())].phrase;
        for (place, piece) in way.split(['{', '}']).enumerate() {
            text.push_str(match (place % 2, piece) {
                (0, said) => said,
                (_, "crop") => dice.pick(&fillings.crops),
                (_, "material") => dice.pick(&fillings.materials),
                (_, "trouble") => dice.pick(&fillings.troubles),
                (_, "size") => dice.pick(&SIZES),
                (_, "day") => dice.pick(&DAYS),
                (_, "bed") => dice.pick(&["east box", "mint ki tokri", "गमला", "tray", "all beds", "north bag"]),
                (_, "place") => dice.pick(&["nagpur", "दिल्ली", "the roof", "Roof 12"]),
                _ => "mix",
            });
        }
        if !dice.one_in(4) {
            break;
        }
        text.push_str(dice.pick(&OTHERS));
    }
    let mut letters: Vec<char> = text.chars().collect();
    for _ in 0..dice.below(4) {
        let at = dice.below(letters.len());
        match dice.below(6) {
            0 => drop(letters.get(at).is_some().then(|| letters.remove(at))),
            1 => letters.insert(at, dice.pick(&["a", "्", "े", "0", " ", "'", "ß", "🌧"]).chars().next().unwrap()),
            2 if at > 0 => letters.swap(at - 1, at),
            3 => letters.truncate(at.max(3)),
            4 => letters.iter_mut().for_each(|letter| *letter = letter.to_ascii_uppercase()),
            _ => letters.extend(dice.pick(&OTHERS).chars()),
        }
    }
    letters.into_iter().collect()
}
