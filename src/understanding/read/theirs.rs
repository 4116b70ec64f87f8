//! What is of someone else, in a place that the asker may not see or by a name, and the crew where one of it is wanted.

use super::{Found, Hit, Named, Reader, Told};
use crate::garden::Role;
use crate::knowledge::{Kind, Point};
use crate::script::{Text, index_word, sound_key};
use crate::understanding::asker::Asker;
use crate::understanding::reading::Reading;
use std::ops::Range;

/// A site called by its name leaves little else (judgement).
const SURE: f64 = 0.95;

/// What makes a name the owner of what follows it.
const OWNS: [&str; 12] = ["ka", "ke", "ki", "wala", "wale", "wali", "का", "के", "की", "वाला", "वाले", "वाली"];

/// What is said after a name out of respect.
const HONOURS: [&str; 24] = [
    "ji",
    "bhai",
    "bhaiya",
    "didi",
    "aunty",
    "auntie",
    "uncle",
    "sahab",
    "saab",
    "madam",
    "bhabhi",
    "chacha",
    "kaka",
    "जी",
    "भाई",
    "भैया",
    "दीदी",
    "आंटी",
    "अंकल",
    "साहब",
    "मैडम",
    "भाभी",
    "चाचा",
    "काका",
];

/// Those whose bed is one's own.
const FAMILY: [&str; 43] = [
    "mum",
    "mom",
    "mummy",
    "mommy",
    "mama",
    "papa",
    "dad",
    "daddy",
    "nani",
    "dadi",
    "nana",
    "dada",
    "grandma",
    "grandpa",
    "granny",
    "ammi",
    "abbu",
    "aai",
    "baba",
    "maa",
    "bhai",
    "bhaiya",
    "didi",
    "pati",
    "saas",
    "sasur",
    "mata",
    "pita",
    "मम्मी",
    "पापा",
    "मां",
    "नानी",
    "दादी",
    "नाना",
    "दादा",
    "सास",
    "ससुर",
    "माता",
    "पिता",
    "भाई",
    "भैया",
    "दीदी",
    "पति",
];

/// Said before the name of someone of the house.
const OF_THE_HOUSE: [&str; 36] = [
    "son",
    "daughter",
    "wife",
    "husband",
    "grandson",
    "granddaughter",
    "kid",
    "kids",
    "child",
    "boy",
    "girl",
    "brother",
    "sister",
    "mother",
    "father",
    "niece",
    "nephew",
    "beta",
    "bete",
    "beti",
    "bachche",
    "pati",
    "patni",
    "pote",
    "poti",
    "bahu",
    "बेटा",
    "बेटे",
    "बेटी",
    "बच्चे",
    "पति",
    "पत्नी",
    "पोते",
    "पोती",
    "बहू",
    "little",
];

impl Found {
    /// The reading of a message about a place that the asker may not see, whatever was said before: nothing of her own
    /// is meant by it.
    pub(super) fn in_another_place(&self, text: &Text, reader: &Reader<'_>, asker: &Asker) -> Option<Reading> {
        let theirs = self.is_in_another_place(text, reader) || self.is_of_a_stranger(text, reader, asker);
        theirs.then(|| Reading {
            beds: Vec::new(),
            beds_named: false,
            all_beds: false,
            sites: Vec::new(),
            did: None,
            saw: None,
            put_off: None,
            stays: None,
            jobs: Vec::new(),
            senseless: false,
            ..self.reading(text, reader, Kind::None, SURE)
        })
    }

    /// A site of someone else is called by its name, of several words: one alone may be any word. Or a bed is told to be
    /// someone's: "Meera's box".
    fn is_in_another_place(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let says = |what: &Told| self.told.iter().any(|hit| hit.meaning == *what);
        // What others say is asked about, and a new bed there is refused as such.
        if says(&Told::OthersSaid) || self.is_new_bed(text, reader) {
            return false;
        }
        let theirs = self.names.iter().filter(|hit| hit.meaning == Named::SomeoneElse);
        let mut spans = theirs.map(|hit| &hit.span);
        spans.any(|span| span.len() > 1 && !self.is_measured(span) || self.owns_a_bed(text, span))
    }

    /// "Sharma ji ke dabbe", "Priya's box": a bed that is asked after as someone's whom nobody here knows. Of the family it
    /// is one's own; the crew may have its reasons.
    fn is_of_a_stranger(&self, text: &Text, reader: &Reader<'_>, asker: &Asker) -> bool {
        let client = asker.who.as_ref().is_none_or(|person| person.role == Role::Client);
        let said = self.told.iter().any(|hit| hit.meaning == Told::OthersSaid);
        if !client || said || self.did.is_some() && !self.asks || self.is_new_bed(text, reader) {
            return false;
        }
        let own_name = |word: &str| {
            let who = asker.who.as_ref().map_or("", |person| person.name.as_str());
            let plain = word.split(['\'', '’']).next().unwrap_or_default();
            who.split_whitespace().any(|name| sound_key(name) == sound_key(plain))
        };
        let named = |at: usize| self.names.iter().any(|hit| hit.span.contains(&at));
        let stranger = |at: usize| {
            let Some(token) = text.tokens.get(at) else { return false };
            let honoured = HONOURS.contains(&text.normal(at + 1));
            let capital = token.text.chars().next().is_some_and(char::is_uppercase) && ends_owning(&token.text);
            let said = index_word(token, text.language);
            let known = || said.as_ref().is_none_or(|word| reader.index.knows(word));
            let plain = !token.is_word() || FAMILY.contains(&token.normal.trim_end_matches('s'));
            let everyday = reader.known.ordinary.is(&token.normal);
            // "My son Rohan's box" is of the house.
            let of_the_house = (at.saturating_sub(3)..at).any(|place| OF_THE_HOUSE.contains(&text.normal(place)));
            if of_the_house && !text.normal(at + 1).is_empty() && !honoured {
                return false;
            }
            !plain && !named(at) && !own_name(&token.text) && !everyday && (honoured || capital && !known())
        };
        (0..text.tokens.len()).any(|at| stranger(at) && self.owns_a_bed(text, &(at..at + 1)))
    }

    /// "My roof 12 ft by 10": a number that is part of a size is no part of a name.
    fn is_measured(&self, span: &Range<usize>) -> bool {
        let sizes = self.quantities.said.iter().map(|said| &said.span);
        let sides = self.quantities.dimensions.iter().map(|found| &found.span);
        let bare = self.quantities.bare.iter().map(|found| &found.span);
        sizes.chain(sides).chain(bare).any(|size| size.start < span.end && span.start < size.end)
    }

    /// A bed follows a name, perhaps with the crop in it, as that person's.
    fn owns_a_bed(&self, text: &Text, name: &Range<usize>) -> bool {
        let written = text.tokens.get(name.end.saturating_sub(1)).map_or("", |token| token.text.as_str());
        let honoured = HONOURS.contains(&text.normal(name.end));
        let end = name.end + usize::from(honoured);
        let from = match text.normal(end) {
            _ if ends_owning(written) => end,
            word if OWNS.contains(&word) => end + 1,
            _ => return false,
        };
        let is_bed = |hit: &Hit<Named>| matches!(hit.meaning, Named::OwnBed(_) | Named::BedKind(_));
        let begins = |at: usize| self.names.iter().any(|hit| is_bed(hit) && hit.span.start == at);
        let crop = self.names.iter().find(|hit| matches!(hit.meaning, Named::Crop(_)) && hit.span.start == from);
        let after = crop.map_or(from, |crop| crop.span.end);
        // A word may stand between that tells which: "Meera's east box", "Meera ka bhindi wala box".
        begins(from) || begins(after) || begins(after + 1) || honoured && crop.is_some() && self.asks
    }

    /// "Get me Ravi on the phone", "आशा जी से बात करनी है": one of the crew is wanted, and nothing of a garden is asked.
    pub(super) fn about_one_of_the_crew(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.85;
        const WANTED: [&str; 42] = [
            "call",
            "phone",
            "ring",
            "send",
            "get",
            "ask",
            "tell",
            "talk",
            "speak",
            "connect",
            "message",
            "need",
            "want",
            "please",
            "pls",
            "contact",
            "number",
            "reach",
            "inform",
            "fon",
            "bhej",
            "bhejo",
            "bhejiye",
            "bhejna",
            "bula",
            "bulao",
            "bulaiye",
            "bulana",
            "baat",
            "bolo",
            "bol",
            "batao",
            "bata",
            "भेज",
            "भेजो",
            "भेजिए",
            "बुला",
            "बुलाओ",
            "बुलाइए",
            "बात",
            "फोन",
            "कॉल",
        ];
        let wanted = text.tokens.iter().any(|token| WANTED.contains(&token.normal.as_str()));
        let garden = !self.names.is_empty() || !self.signs.is_empty() || !self.quantities.said.is_empty();
        let work = self.did.is_some() || !self.jobs().is_empty() || self.saw().is_some();
        (self.crew && wanted && !garden && !work && !self.of_others()).then_some((Kind::Person, SURE))
    }

    /// What another person has or did, who is none that the asker may know of: none of it is told.
    pub(super) fn about_someone_else(&self) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.9;
        let says = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        let named = self.names.iter().any(|hit| hit.meaning == Named::SomeoneElse);
        let of_work = says(Told::Data) || self.points().any(|point| matches!(point, Point::LastDone | Point::Stands));
        (named && of_work && self.asks && !says(Told::OthersSaid)).then_some((Kind::None, SURE))
    }
}

fn ends_owning(written: &str) -> bool {
    ["'s", "’s"].iter().any(|ending| written.ends_with(ending))
}

/// "What is planned for her beds", "uski chhat pe kya baaki hai": of someone who is none of the household.
fn bed_of_someone(text: &Text) -> bool {
    const WHOSE: [&str; 9] = ["her", "his", "uske", "uski", "unki", "unke", "उसके", "उसकी", "उनके"];
    const BEDS: [&str; 24] = [
        "bed",
        "beds",
        "terrace",
        "roof",
        "balcony",
        "garden",
        "boxes",
        "trays",
        "pots",
        "chhat",
        "chat",
        "bagicha",
        "dabbe",
        "gamle",
        "छत",
        "बगीचे",
        "डिब्बे",
        "गमले",
        "बालकनी",
        "बेड",
        "क्यारी",
        "balkani",
        "terace",
        "plants",
    ];
    const HOUSEHOLD: [&str; 32] = [
        "wife",
        "husband",
        "mother",
        "mom",
        "mum",
        "mummy",
        "father",
        "dad",
        "papa",
        "son",
        "daughter",
        "grandmother",
        "grandfather",
        "granny",
        "nani",
        "dadi",
        "sister",
        "brother",
        "maid",
        "kid",
        "kids",
        "cook",
        "beti",
        "beta",
        "pati",
        "patni",
        "biwi",
        "माँ",
        "पत्नी",
        "पति",
        "बेटी",
        "दादी",
    ];
    let says = |list: &[&str]| (0..text.tokens.len()).any(|at| list.contains(&text.normal(at)));
    let of_bed = |at: usize| WHOSE.contains(&text.normal(at)) && BEDS.contains(&text.normal(at + 1));
    !says(&HOUSEHOLD) && (0..text.tokens.len()).any(of_bed)
}

/// "What is planned for her beds": none of a client's own.
pub(super) fn asks_of_someones_work(text: &Text, kind: Kind, asker: &Asker) -> Option<(Kind, f64)> {
    const SURE: f64 = 0.9;
    let client = asker.who.as_ref().is_none_or(|person| person.role == Role::Client);
    (client && kind == Kind::Due && asker.before.is_none() && bed_of_someone(text)).then_some((Kind::None, SURE))
}
