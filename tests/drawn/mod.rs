//! A house over the demo garden, and every picture that can be made of it.

use chrono::{DateTime, FixedOffset, NaiveDate};
use rooftend::answering::{Answer, Line, Outcome, Said, Table, YearKind, YearRow, YearSpan, YearTable};
use rooftend::desk::{Desk, House, Looked, Message};
use rooftend::drawing::{Label, Picture, Words, card, deep_link, labels, picture_for};
use rooftend::garden::import::import;
use rooftend::garden::{Garden, KnownIds, Overlay, PersonId, SiteId, read_garden};
use rooftend::knowledge::Files;
use rooftend::script::Language;
use rooftend::weather::Forecast;
use rooftend::wording::Manner;

pub const LANGUAGES: [Language; 3] = [Language::En, Language::Hi, Language::HiLatn];
pub const MAY: &str = "2026-05-18T08:00:00+05:30";
/// No forecast reaches it, and it rains.
pub const JULY: &str = "2026-07-12T08:00:00+05:30";

/// A picture and what to call it.
pub struct Shown {
    pub name: String,
    pub picture: Picture,
}

pub struct Bench {
    pub house: House,
    store: Overlay<'static>,
    forecast: Forecast,
}

impl Bench {
    pub fn open() -> Self {
        let house = House::open(&Files::embedded()).unwrap();
        let (crops, mixes, materials) = (house.known.crop_ids(), house.known.mix_ids(), house.known.material_ids());
        let ids = KnownIds { crops: &crops, mixes: &mixes, materials: &materials };
        let text = include_str!("../../demo-data/garden.toml");
        let garden = read_garden("garden.toml", text, &ids, &Garden::default()).unwrap();
        let store = Overlay::in_memory();
        import(&store, garden).unwrap();
        let forecast = Forecast::read("may.json", include_str!("../../demo-data/forecast-may.json")).unwrap();
        Self { house, store, forecast }
    }

    pub fn now(at: &str) -> DateTime<FixedOffset> {
        at.parse().unwrap()
    }

    pub fn desk(&self, language: Language) -> Desk<'_> {
        Desk::new(&self.house, &self.store, Some(&self.forecast)).speaking(Some(language))
    }

    pub fn look(&self, text: &str, language: Language, at: &str) -> Looked {
        let from = Some(PersonId::new("meera").unwrap());
        self.desk(language).look(&Message { from, text: text.to_owned(), now: Self::now(at) }).unwrap()
    }

    pub fn picture(&self, looked: &Looked) -> Option<Picture> {
        let phrases = self.house.phrases(looked.manner.language);
        picture_for(&looked.answer, &self.house.known, phrases, looked.manner)
    }

    /// Words that belong to no answer.
    pub fn with_words<T>(&self, language: Language, then: impl FnOnce(&Words<'_>) -> T) -> T {
        let answer = Answer::new(Outcome::Answered);
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        then(&Words::new(&answer, &self.house.known, self.house.phrases(language), manner))
    }

    /// Every kind of picture in one language.
    pub fn all(&self, language: Language) -> Vec<Shown> {
        let asked = [
            ("water-may", "how much water for the amaranth box this week", MAY),
            ("water-july", "how much water for the mint basket", JULY),
            ("water-small", "how much water for the chilli pot", MAY),
            ("water-tray", "how much water for the sprouting tray", MAY),
            ("plan-box", "how many spinach plants fit in the east box", MAY),
            ("plan-long", "how many radish fit in a box 3 m x 25 cm x 20 cm", MAY),
            ("plan-deep", "how many okra plants fit in a box 40 cm x 160 cm x 30 cm", MAY),
            ("plan-pot", "how many tomato plants fit in a 14 inch pot", MAY),
            ("plan-pots", "how many coriander plants fit in a 24 inch pot", MAY),
            ("plan-bag", "how many chilli plants fit in a 40 L bag", MAY),
        ];
        let mut shown: Vec<Shown> = asked
            .iter()
            .map(|(name, message, at)| {
                let picture = self.picture(&self.look(message, language, at));
                let picture = picture.unwrap_or_else(|| panic!("{name}: no picture"));
                Shown { name: format!("{name}-{}", language.tag()), picture }
            })
            .collect();
        shown.push(Shown { name: format!("year-{}", language.tag()), picture: self.year(language) });
        for site in ["roof-12", "terrace-3"] {
            for (other, kind) in [(None, "card"), (Some(Language::En), "card-two")] {
                let pages = self.card(site, language, other, MAY);
                shown.extend(pages.into_iter().enumerate().map(|(page, picture)| Shown {
                    name: format!("{kind}-{site}-{page}-{}", language.tag()),
                    picture,
                }));
            }
        }
        let sheet = self.with_words(language, |words| {
            let link = deep_link("rooftend_demo_bot", "bed-7kQ2xZ").unwrap();
            let label =
                |bed: &str| Label { bed: bed.to_owned(), site: "Farid's terrace".to_owned(), link: link.clone() };
            labels(
                &["East box", "पुदीने वाली टोकरी", "The long box by the water tank, on the left of the stairs"]
                    .map(label),
                words,
            )
            .unwrap()
        });
        shown.extend(sheet.into_iter().map(|picture| Shown { name: format!("labels-{}", language.tag()), picture }));
        shown
    }

    pub fn card(&self, site: &str, language: Language, other: Option<Language>, at: &str) -> Vec<Picture> {
        let owner = PersonId::new("asha").unwrap();
        let id = SiteId::new(site).unwrap();
        let looked = self.desk(language).water_of_site(Some(&owner), &id, Self::now(at)).unwrap().unwrap();
        let words = |language| {
            let manner = Manner { language, ..looked.manner };
            Words::new(&looked.answer, &self.house.known, self.house.phrases(language), manner)
        };
        let other = other.map(words);
        card(site, &looked.answer, &words(language), other.as_ref())
    }

    /// A year made up for its looks: no sum stands behind it.
    fn year(&self, language: Language) -> Picture {
        let day = |month, day| NaiveDate::from_ymd_opt(if month < 5 { 2027 } else { 2026 }, month, day).unwrap();
        let span = |from: (u32, u32), until: (u32, u32), kind| YearSpan {
            from: day(from.0, from.1),
            until: day(until.0, until.1),
            kind,
        };
        let crop = |id: &str, spans: Vec<YearSpan>| YearRow { name: Said::Crop(id.to_owned()), spans };
        let said = |phrase| Said::Line(Box::new(Line::new("draw-year-kind").with("kind", Said::Key(phrase))));
        use YearKind::{FeedLess, GoesIn, Net, Picking, Rains};
        let table = YearTable {
            told: Line::new("draw-card-valid").with("from", Said::Day(day(5, 1))).with("until", Said::Day(day(4, 30))),
            first: day(5, 1),
            today: day(5, 18),
            rows: vec![
                crop("amaranth", vec![span((5, 18), (9, 20), GoesIn), span((3, 1), (4, 30), GoesIn)]),
                crop("spinach", vec![span((10, 5), (1, 20), GoesIn), span((11, 15), (3, 5), Picking)]),
                crop("malabar-spinach", vec![span((6, 10), (8, 31), GoesIn), span((8, 1), (11, 30), Picking)]),
                crop("tomato", vec![span((8, 15), (10, 31), GoesIn), span((11, 20), (3, 10), Picking)]),
                YearRow { name: said("net"), spans: vec![span((5, 1), (6, 14), Net), span((4, 2), (4, 30), Net)] },
                YearRow { name: said("feed-less"), spans: vec![span((5, 1), (6, 10), FeedLess)] },
                YearRow { name: said("rains"), spans: vec![span((6, 14), (9, 25), Rains)] },
            ],
            waterings: [14.0, 7.0, 2.33, 2.33, 2.33, 3.5, 3.5, 3.5, 3.5, 7.0, 7.0, 14.0].map(Some).to_vec(),
        };
        let answer = Answer { tables: vec![Table::Year(table)], ..Answer::new(Outcome::Answered) };
        let manner = Manner { language, devanagari_digits: false, why: false, short: false };
        picture_for(&answer, &self.house.known, self.house.phrases(language), manner).unwrap()
    }
}
