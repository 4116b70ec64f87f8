//! A new bed with its measures, told and not asked about: a box that was made, a bag that was brought, a pot that is new.

use super::{Found, Hit, Measured, Named, Reader, Told};
use crate::garden::{BedKind, JobKind};
use crate::knowledge::{Kind, TimeUnit};
use crate::quantity::UnitOf;
use crate::script::{Language, Text};
use crate::understanding::quantities::Count;
use std::ops::Range;

/// Words before a bed that say that it was not there before.
const NEW: [&str; 20] = [
    "new",
    "another",
    "extra",
    "additional",
    "naya",
    "naye",
    "nayi",
    "nayaa",
    "nye",
    "nya",
    "nyi",
    "नया",
    "नये",
    "नए",
    "नई",
    "नयी",
    "aur",
    "और",
    "more",
    "second",
];

/// Verbs that say that a bed was made.
const MADE: [&str; 41] = [
    "made",
    "built",
    "assembled",
    "installed",
    "constructed",
    "erected",
    "hung",
    "ready",
    "banaya",
    "banayi",
    "banaye",
    "banai",
    "banwaya",
    "banwayi",
    "banwaye",
    "bana",
    "banwa",
    "taiyar",
    "tayar",
    "taiyaar",
    "tayyar",
    "latkaya",
    "latkayi",
    "latkai",
    "latkaye",
    "बनाया",
    "बनाई",
    "बनाए",
    "बनवाया",
    "बनवाई",
    "बना",
    "बनवा",
    "तैयार",
    "लटकाया",
    "लटकाई",
    "लटकाए",
    "joda",
    "jodi",
    "जोडा",
    "जोडी",
    "fabricated",
];

/// The same in two words.
const MADE_OF_TWO: [(&str, &str); 10] = [
    ("set", "up"),
    ("put", "together"),
    ("put", "up"),
    ("fixed", "up"),
    ("knocked", "together"),
    ("nailed", "together"),
    ("screwed", "together"),
    ("made", "up"),
    ("setup", ""),
    ("laid", "out"),
];

/// Verbs that say that a vessel came, where nothing is told to grow in it.
const CAME: [&str; 28] = [
    "bought",
    "got",
    "added",
    "kept",
    "placed",
    "brought",
    "purchased",
    "put",
    "laya",
    "laye",
    "layi",
    "laayi",
    "kharida",
    "khareeda",
    "kharide",
    "khareede",
    "mangwaya",
    "mangwaye",
    "rakha",
    "rakhi",
    "rakhe",
    "aaya",
    "लाया",
    "लाए",
    "खरीदा",
    "रखा",
    "रखी",
    "रखे",
];

/// So many tokens may stand between the word and the bed.
const NEAR: usize = 7;

impl Found {
    /// "5 hours of sun": the hours that are told.
    pub(super) fn sun_hours(&self) -> Option<f64> {
        const LONGEST: f64 = 16.0;
        let hours = self.quantities.durations.iter().find(|duration| duration.unit == TimeUnit::Hour)?;
        (hours.value <= LONGEST).then_some(hours.value)
    }

    /// A new bed with its measures, told and not asked about; of a bag or a pot its litres are enough.
    pub(super) fn is_new_bed(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let measured = self
            .measures()
            .iter()
            .any(|found| found.diameter.is_some() || found.length.is_some() && found.width.is_some());
        let litres = self.quantities.said.iter().any(|said| said.written.unit.measures() == UnitOf::Volume);
        let vessel = self.names.iter().any(|hit| matches!(hit.meaning, Named::BedKind(BedKind::Bag | BedKind::Pot)));
        let allowed = |job| matches!(job, JobKind::Sow | JobKind::Plant | JobKind::Mix | JobKind::TopUp);
        let other = self.did.is_some_and(|job| !allowed(job));
        let filled = litres && vessel && !other;
        let listed = || self.told.iter().any(|hit| hit.meaning == Told::NewBed);
        // "We have kept six pots; kindly advise on the weight".
        let wished = self.told.iter().any(|hit| matches!(hit.meaning, Told::Request | Told::Supposed));
        // "Fifteen bags put there, what weight".
        let weighs = || self.topics(text, reader).iter().any(|hit| hit.meaning == Kind::Load);
        let put = self.is_put_on_the_list(text);
        !(self.asks && !put || wished)
            && (measured || filled)
            && (listed() || self.says_new(text) || put)
            && !self.is_planned(text, reader)
            && !weighs()
    }

    /// "Write down: bed 9 is 90 by 45 cm", "box 4 is 3 x 2 ft, west side": a bed by its number, with its size, and nothing
    /// done, asked or wanted there.
    fn is_put_on_the_list(&self, text: &Text) -> bool {
        let bare = self.did.is_none() && !self.sprays && !self.feeds && !self.names_crop() && self.signs.is_empty();
        // "Bed 9 is" stands in the order of a question as well.
        let word = |hit: &Hit<Told>| matches!(hit.meaning, Told::DidAsk | Told::Ails | Told::Saw(_));
        let first = matches!(text.normal(0), "is" | "are" | "does" | "do" | "can" | "will");
        let asks = text.original.contains('?') || first || self.told.iter().any(word);
        // "Bag 3 is 40 x 30 cm and dry" tells how it is.
        const SO: [&str; 14] = [
            "dry", "wet", "leaking", "leaks", "cracked", "broken", "full", "empty", "what", "which", "how", "kitne",
            "kya", "torn",
        ];
        let so = text.tokens.iter().any(|token| SO.contains(&token.normal.as_str()));
        bare && !asks && !so && self.numbered_at(text).is_some()
    }

    /// Where a bed is named by its number: "box 4".
    fn numbered_at(&self, text: &Text) -> Option<usize> {
        const BEDS: [&str; 14] = [
            "bed",
            "box",
            "pot",
            "bag",
            "basket",
            "tray",
            "planter",
            "gamla",
            "dabba",
            "tokri",
            "bori",
            "गमला",
            "डिब्बा",
            "टोकरी",
        ];
        const MOST: f64 = 99.0;
        // A number that is part of a size or of a day is no name.
        let measured = |at: usize| {
            let sizes = self.quantities.said.iter().any(|said| said.span.contains(&at));
            let sides = self.quantities.dimensions.iter().any(|found| found.span.contains(&at));
            sizes || sides || self.days.iter().any(|day| day.span.contains(&at))
        };
        (0..text.tokens.len()).find(|at| {
            let number = text.tokens.get(at + 1).and_then(|token| token.number);
            let plain = number.is_some_and(|number| number.fract() == 0.0 && (1.0..=MOST).contains(&number));
            plain && BEDS.contains(&text.normal(*at)) && !measured(at + 1)
        })
    }

    /// "Box 4" as it is written, where it is put on the list by that.
    pub(super) fn numbered(&self, text: &Text) -> Option<String> {
        let at = self.numbered_at(text).filter(|_| self.is_put_on_the_list(text))?;
        let (first, last) = (text.tokens.get(at)?, text.tokens.get(at + 1)?);
        text.original.get(first.span.start..last.span.end).map(str::to_owned)
    }

    /// "A new pot of 14 inches": a round thing has one width, and nothing else of a length is said.
    pub(super) fn one_width(&self) -> Option<Measured> {
        let round = |hit: &Hit<Named>| matches!(hit.meaning, Named::BedKind(BedKind::Pot | BedKind::Basket));
        let [said] = self.quantities.said.as_slice() else { return None };
        let length = said.written.unit.measures() == UnitOf::Length;
        let plain = length && !self.sprays && !self.feeds && self.quantities.dimensions.is_empty();
        let width = Measured { length: None, width: None, depth: None, diameter: Some(said.written) };
        (plain && self.names.iter().any(round)).then_some(width)
    }

    /// Whether a word for new, made or brought belongs to a bed.
    fn says_new(&self, text: &Text) -> bool {
        let bed = |hit: &&Hit<Named>| matches!(hit.meaning, Named::BedKind(_));
        let beds: Vec<Range<usize>> = self.names.iter().filter(bed).map(|hit| hit.span.clone()).collect();
        let grows = self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::Material(_)));
        let near = |at: usize, bed: &Range<usize>| at.abs_diff(bed.start) <= NEAR;
        let before = |at: usize, bed: &Range<usize>| at < bed.start && near(at, bed);
        let two = |at: usize| {
            let pair = (text.normal(at), text.normal(at + 1));
            MADE_OF_TWO.iter().any(|(first, second)| pair.0 == *first && (second.is_empty() || pair.1 == *second))
        };
        (0..text.tokens.len()).any(|at| {
            let word = text.normal(at);
            // "Aur" is "more" after a number alone.
            let counted = |at: usize| {
                let number = at.checked_sub(1).and_then(|before| text.tokens.get(before));
                number.is_some_and(|token| {
                    token.number.is_some() || matches!(token.normal.as_str(), "ek" | "do" | "one" | "two" | "एक" | "दो")
                })
            };
            let new = NEW.contains(&word) && (!matches!(word, "aur" | "और" | "more" | "second") || counted(at));
            // "Rakhe to": if they were put there.
            let supposed = matches!(text.normal(at + 1), "to" | "toh" | "तो");
            let made = (MADE.contains(&word) || two(at)) && !supposed;
            let came = CAME.contains(&word) && !grows && !supposed;
            beds.iter().any(|bed| new && before(at, bed) || (made || came) && self.verb_of(text, at, bed))
        })
    }

    /// How many beds are told: a number before their word, no plants between.
    pub(super) fn beds_told(&self, text: &Text) -> Option<u32> {
        const MOST: f64 = 12.0;
        let beds = self.names.iter().filter(|hit| matches!(hit.meaning, Named::BedKind(_) | Named::OwnBed(_)));
        let spans: Vec<&Range<usize>> = beds.map(|hit| &hit.span).collect();
        let crop = |from: usize, to: usize| {
            self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)) && (from..to).contains(&hit.span.start))
        };
        const OF_OTHERS: [&str; 9] =
            ["plants", "plant", "saplings", "seedlings", "seeds", "paudhe", "पौधे", "in", "with"];
        let other = |from: usize, to: usize| (from..to).any(|at| OF_OTHERS.contains(&text.normal(at)));
        let before = |count: &&Count| {
            spans.iter().any(|bed| {
                let (from, to) = (count.span.end, bed.start);
                from <= to && to - from <= NEAR && !crop(from, to) && !other(from, to)
            })
        };
        let several = |count: &&Count| (2.0..=MOST).contains(&count.value);
        self.quantities.counts.iter().filter(several).find(before).map(|count| count.value as u32)
    }

    /// A verb stands near its bed, in English before it or in the passive after it.
    fn verb_of(&self, text: &Text, at: usize, bed: &Range<usize>) -> bool {
        /// Hindi measures a bed between its name and its verb.
        const FURTHEST: usize = 14;
        let (from, to) = if at < bed.start { (at, bed.start) } else { (bed.end, at) };
        let stop = (from..to).any(|place| matches!(text.normal(place), "." | "।" | ";" | "?"));
        to - from <= FURTHEST && !stop
    }

    /// It is wanted, planned or to be made.
    fn is_planned(&self, text: &Text, reader: &Reader<'_>) -> bool {
        const PLANS: [&str; 18] = [
            "plan",
            "planning",
            "planned",
            "thinking",
            "want",
            "wants",
            "wanted",
            "wish",
            "hoping",
            "considering",
            "soch",
            "socha",
            "chahte",
            "chahta",
            "chahti",
            "सोच",
            "चाहते",
            "चाहता",
        ];
        let dated = |at: usize| self.days.iter().any(|day| day.span.contains(&at));
        let vessel = |at: usize| self.told.iter().any(|hit| hit.meaning == Told::Vessel && hit.span.contains(&at));
        // "Do" is two in Hindi, and asks nobody to give.
        let number = |at: usize| matches!(text.normal(at), "do" | "दो");
        // "Naya dabba rakhna hai".
        let to_do = |at: usize| {
            let infinitive = ["na", "ni", "ne", "ना", "नी", "ने"].iter().any(|end| text.normal(at).ends_with(end));
            let long = text.normal(at).chars().count() >= 4;
            let is = matches!(text.normal(at + 1), "hai" | "h" | "he" | "है");
            text.language != Language::En && infinitive && long && is
        };
        (0..text.tokens.len()).any(|at| {
            to_do(at)
                || PLANS.contains(&text.normal(at))
                || !dated(at) && !vessel(at) && !number(at) && reader.known.words.is_to_come(text, at)
        })
    }

    pub(super) fn about_a_new_bed(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        /// Measures beside a word for "new" leave little else (judgement).
        const SURE: f64 = 0.85;
        self.is_new_bed(text, reader).then_some((Kind::Record, SURE))
    }
}
