//! "All watered except the mint", "sabko pani de diya, tokri chhod ke": every bed but those that are named.

use super::{Found, Hit, Named, Reading, Text, Told};
use crate::garden::BedId;
use crate::script::Language;
use crate::understanding::asker::{Asker, OwnBed};
use std::ops::Range;

/// Words before what is left out.
const EXCEPT: [&[&str]; 15] = [
    &["except"],
    &["xcept"],
    &["excepting"],
    &["excluding"],
    &["barring"],
    &["minus"],
    &["apart", "from"],
    &["other", "than"],
    &["all", "but"],
    &["everything", "but"],
    &["but", "not"],
    &["leaving", "out"],
    &["leaving"],
    &["but", "for"],
    &["aside", "from"],
];

/// Words after what is left out.
const LEFT_OUT: [&[&str]; 30] = [
    &["chhod", "ke"],
    &["chhod", "kar"],
    &["chod", "ke"],
    &["chod", "kar"],
    &["chhodke"],
    &["chhodkar"],
    &["chodke"],
    &["chodkar"],
    &["chhod", "k"],
    &["ke", "alawa"],
    &["ke", "alava"],
    &["k", "alawa"],
    &["ke", "siva"],
    &["ke", "siwa"],
    &["ke", "sivay"],
    &["ke", "siway"],
    &["ke", "sivaye"],
    &["chhod", "di"],
    &["chhod", "diya"],
    &["chod", "di"],
    &["chod", "diya"],
    &["छोडकर"],
    &["छोड", "कर"],
    &["छोड", "के"],
    &["छोडके"],
    &["के", "अलावा"],
    &["के", "सिवा"],
    &["के", "सिवाय"],
    &["छोड", "दी"],
    &["छोड", "दिया"],
];

/// What is left out of all beds.
pub(super) struct Excepted {
    /// Empty where it is none of the asker's: which beds are meant is to be asked.
    beds: Vec<BedId>,
}

impl Found {
    /// Takes the names of what is left out away, and puts all beds in their place.
    pub(super) fn take_exception(&mut self, text: &Text, asker: &Asker) -> Option<Excepted> {
        let all = self.told.iter().any(|hit| matches!(hit.meaning, Told::All | Told::Every));
        let (out, after) = left_out(text)?;
        // "Leaving the mint" may be anything, and so may "but not" and "chhod di", where nobody spoke of all.
        let plain = matches!(text.normal(out.start), "except" | "xcept" | "excepting" | "excluding" | "barring");
        let of_beds = |hit: &Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::Crop(_) | Named::BedKind(_));
        let within = |hit: &&Hit<Named>| {
            of_beds(hit) && if after { named_after(text, &out, &hit.span) } else { named_before(text, &out, &hit.span) }
        };
        let named: Vec<Hit<Named>> = self.names.iter().filter(within).cloned().collect();
        let others = self.names.iter().any(|hit| of_beds(hit) && !named.contains(hit) && !is_kind(hit));
        if others || !(all || plain || says_all(text)) {
            return None;
        }
        let meant = |bed: &&OwnBed| {
            named.iter().any(|hit| match &hit.meaning {
                Named::OwnBed(id) => *id == bed.id,
                Named::Crop(crop) => bed.has(crop),
                Named::BedKind(kind) => *kind == bed.kind,
                _ => false,
            })
        };
        // "The mint basket" is that basket, whatever other mint and baskets there are.
        let own: Vec<BedId> = named
            .iter()
            .filter_map(|hit| if let Named::OwnBed(id) = &hit.meaning { Some(id.clone()) } else { None })
            .collect();
        let beds =
            if own.is_empty() { asker.beds.iter().filter(meant).map(|bed| bed.id.clone()).collect() } else { own };
        self.names.retain(|hit| !named.contains(hit));
        self.told.push(Hit { span: out, meaning: Told::All, exact: true });
        Some(Excepted { beds })
    }
}

impl Excepted {
    /// All beds of the kind spoken of but these; none, where it is not known which are left out.
    pub(super) fn from(self, mut reading: Reading, asker: &Asker) -> Reading {
        let kept = |bed: &BedId| !self.beds.contains(bed);
        let kind = |id: &BedId| asker.beds.iter().find(|bed| bed.id == *id).map(|bed| bed.kind);
        let of_kind = |bed: &BedId| reading.bed_kind.is_none() || kind(bed) == reading.bed_kind;
        let several = reading.beds.iter().filter(|bed| of_kind(bed)).count() > 1;
        let beds: Vec<BedId> =
            reading.beds.iter().filter(|bed| kept(bed) && (!several || of_kind(bed))).cloned().collect();
        reading.all_beds = false;
        reading.beds_named = !self.beds.is_empty() && !beds.is_empty();
        reading.beds = if self.beds.is_empty() { Vec::new() } else { beds };
        reading
    }
}

const fn is_kind(hit: &Hit<Named>) -> bool {
    matches!(hit.meaning, Named::BedKind(_))
}

/// Where the words stand that leave something out, and whether it follows them.
fn left_out(text: &Text) -> Option<(Range<usize>, bool)> {
    let at = |place: usize, words: &[&str]| (place..).zip(words).all(|(at, word)| text.normal(at) == *word);
    (0..text.tokens.len()).find_map(|place| {
        let found =
            |lists: &[&[&str]]| lists.iter().find(|words| at(place, words)).map(|words| place..place + words.len());
        found(&EXCEPT).map(|span| (span, true)).or_else(|| found(&LEFT_OUT).map(|span| (span, false)))
    })
}

/// "Everything", "all of it", "sab", beside no word for a bed.
fn says_all(text: &Text) -> bool {
    const ALL: [&str; 16] = [
        "all",
        "everything",
        "everyone",
        "rest",
        "every",
        "sab",
        "sabko",
        "sabhi",
        "saare",
        "sare",
        "sari",
        "saari",
        "सब",
        "सबको",
        "सभी",
        "सारे",
    ];
    text.tokens.iter().any(|token| ALL.contains(&token.normal.as_str()))
}

/// Marks and words at which the list of what is left out ends.
fn ends(text: &Text, at: usize) -> bool {
    matches!(text.normal(at), "." | "?" | "!" | ";" | "।")
        || matches!(text.normal(at), "because" | "since" | "so" | "which")
}

/// Between the words and the name stand at most articles and other names.
fn named_after(text: &Text, out: &Range<usize>, name: &Range<usize>) -> bool {
    const FURTHEST: usize = 8;
    out.end <= name.start && name.start - out.end <= FURTHEST && !(out.end..name.start).any(|at| ends(text, at))
}

/// "Sirf tokri ko chhod ke": in the same clause, before.
fn named_before(text: &Text, out: &Range<usize>, name: &Range<usize>) -> bool {
    const FURTHEST: usize = 5;
    let comma = |at: usize| ends(text, at) || text.normal(at) == ",";
    let near = name.end <= out.start && out.start - name.end <= FURTHEST && !(name.end..out.start).any(comma);
    near && text.language != Language::En
}
