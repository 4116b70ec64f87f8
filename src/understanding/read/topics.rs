//! What a message speaks of in words of its own, and whether that is another matter than the one before.
//!
//! What follows a question is short, leans on it and names at most one new thing. The kind of the question before is what
//! it is taken for, whatever its few words lean to; only a word that speaks of another kind alone leads away from it.

use super::leans::is_mark;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::knowledge::{Kind, MaterialKind};
use crate::script::{Language, Text, index_word};
use crate::understanding::kind::Verdict;
use crate::understanding::phrasebook::Forms;
use std::ops::Range;

/// A message that leans on another has at most so many words.
const LONGEST: usize = 12;

/// A message as near as this to a way of asking says all, unless it is as short as a part of one.
const HAS_A_KIND_OF_ITS_OWN: f64 = 0.75;

impl Found {
    /// The words that speak of one kind alone, in their order; what is only a circumstance ("under the net", "with half day
    /// shade", "in how much water"), denied ("not water") or left ("forget feeding") is none.
    pub(super) fn topics(&self, text: &Text, reader: &Reader<'_>) -> Vec<Hit<Kind>> {
        let mut all = self.topics_said(text, reader);
        all.retain(|hit| !is_circumstance(text, hit) && !self.is_left(text, &hit.span));
        all
    }

    fn topics_said(&self, text: &Text, reader: &Reader<'_>) -> Vec<Hit<Kind>> {
        let mut all = reader.gazetteer.topics(&Forms::of(text));
        // What a thing is called speaks of that thing: "soap water", "the spinach box".
        all.retain(|hit| {
            self.names.iter().all(|name| !(name.span.start <= hit.span.start && hit.span.end <= name.span.end))
        });
        for name in &self.names {
            if let Some(kind) = of_thing(&name.meaning, reader) {
                all.push(Hit { span: name.span.clone(), meaning: kind, exact: true });
            }
        }
        all.extend(self.how_many_of_a_crop(text));
        all.sort_by_key(|hit| hit.span.start);
        all
    }

    /// "How many okra", "kitne baingan".
    fn how_many_of_a_crop(&self, text: &Text) -> Option<Hit<Kind>> {
        let many = |at: usize| match text.normal(at) {
            "many" | "mny" => at.checked_sub(1).is_some_and(|how| matches!(text.normal(how), "how" | "hw")),
            "kitne" | "कितने" => true,
            _ => false,
        };
        let crops = self.names.iter().filter(|hit| matches!(hit.meaning, Named::Crop(_)));
        let counted = |hit: &&Hit<Named>| hit.span.start.checked_sub(1).is_some_and(many);
        crops.into_iter().find(counted).map(|hit| Hit { span: hit.span.clone(), meaning: Kind::Space, exact: true })
    }

    /// "Not water", "forget feeding", "khaad chhodo".
    fn is_left(&self, text: &Text, span: &Range<usize>) -> bool {
        const LEFT: [&str; 4] = ["forget", "leave", "skip", "not"];
        const LEFT_AFTER: [&str; 12] =
            ["chhodo", "chodo", "chhodiye", "chhod", "chod", "nahi", "nahin", "छोड़ो", "छोड़िए", "छोड़", "नहीं", "nhi"];
        let article = |at: usize| if matches!(text.normal(at), "the" | "about") { at.saturating_sub(1) } else { at };
        let before = span.start.checked_sub(1).map(article);
        let after = span.end + usize::from(matches!(text.normal(span.end), "ki" | "ka" | "की" | "का"));
        match text.language {
            Language::En => before.is_some_and(|at| LEFT.contains(&text.normal(at))),
            _ => LEFT_AFTER.contains(&text.normal(after)) && !self.asks_after(text, after),
        }
    }

    /// "Pani nahi du kya" asks about the water.
    fn asks_after(&self, text: &Text, at: usize) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Question && hit.span.start > at)
            && !(at..text.tokens.len()).any(|place| text.normal(place) == ",")
    }

    /// "Not water, spacing", "forget feeding, when does it fruit": the one kind that is said where that of the question
    /// before is left.
    pub(super) fn turns_to(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> Option<Kind> {
        let left = self.topics_said(text, reader).into_iter().filter(|hit| self.is_left(text, &hit.span));
        let leaves = left.into_iter().any(|hit| hit.meaning == before.kind);
        let others = self.topics(text, reader);
        let kind = others.first()?.meaning;
        (leaves && kind != before.kind && others.iter().all(|hit| hit.meaning == kind)).then_some(kind)
    }

    /// Whether the message is of the kind of the question before: short, and no word of it speaks of another kind.
    pub(super) fn keeps_to(&self, text: &Text, reader: &Reader<'_>, before: &Reading, verdict: Verdict) -> bool {
        /// So short a message is part of a question, whatever it is near to.
        const SHORT: usize = 5;
        /// Its other words lean so surely elsewhere, and so little to the kind before (judgement).
        const ELSEWHERE: f64 = 0.8;
        const NOT_THERE: f64 = 0.01;
        /// So much of it leans to chatter (judgement).
        const CHATTER: f64 = 0.55;
        /// So sure of the kind before, it is a question by itself (judgement).
        const SAME: f64 = 0.8;
        /// So surely it asks something of a thing that it names (judgement).
        const SURELY: f64 = 0.9;
        let words = text.tokens.iter().filter(|token| token.is_word()).count();
        let ties = self.begins_with(text, &Told::FollowUp);
        if words > LONGEST
            || self.has_own_matter(before, verdict)
            || self.is_polite(verdict)
            || !can_be_kept(before.kind, self.asks)
        {
            return false;
        }
        if verdict.nearness >= HAS_A_KIND_OF_ITS_OWN
            && verdict.kind != before.kind
            && (words > SHORT || !self.names.is_empty())
        {
            return false;
        }
        let topics = self.topics(text, reader);
        // "Can I spray now at noon" after a spray says its kind itself: another question of the same sort.
        let said = topics.iter().any(|hit| hit.meaning == before.kind) || self.asks && verdict.sureness >= SAME;
        if verdict.kind == before.kind && said && !ties {
            return false;
        }
        if topics.iter().any(|hit| !self.goes_with(text, hit.meaning, before)) {
            return false;
        }
        let of_names = self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::Material(_)));
        if self.asks
            && of_names
            && !ties
            && verdict.kind != before.kind
            && verdict.sureness >= SURELY
            && topics.is_empty()
        {
            return false;
        }
        let leaning = self.leaning_of_the_rest(text, reader);
        let share = |kind: Kind| leaning.iter().find(|(of, _)| *of == kind).map_or(0.0, |(_, share)| *share);
        let elsewhere = leaning.iter().any(|(kind, share)| *kind != before.kind && *share >= ELSEWHERE);
        let chatter = verdict.kind == Kind::None && share(Kind::None) >= CHATTER;
        !(chatter || topics.is_empty() && elsewhere && share(before.kind) < NOT_THERE)
    }

    /// Work, what was seen, signs of trouble, other people's things: a matter of its own.
    fn has_own_matter(&self, before: &Reading, verdict: Verdict) -> bool {
        let other = [
            Told::Others,
            Told::NotOurs,
            Told::Data,
            Told::NewBed,
            Told::Move,
            Told::Will,
            Told::Undo,
            Told::Note,
            Told::OthersGarden,
            Told::Shorter,
            Told::Joke,
        ];
        let speaks = |hit: &Hit<Told>| matches!(hit.meaning, Told::Speak(_)) || other.contains(&hit.meaning);
        let signs = !self.signs.is_empty() && before.kind != Kind::Trouble && verdict.kind == Kind::Trouble;
        self.did.is_some() || self.saw().is_some() || signs || self.told.iter().any(speaks)
    }

    /// "Ok thanks, that helps": nothing is asked or told.
    fn is_polite(&self, verdict: Verdict) -> bool {
        let nothing = self.names.is_empty() && self.quantities.said.is_empty() && self.days.is_empty() && !self.asks;
        let empty = |hit: &Hit<Told>| {
            matches!(hit.meaning, Told::Filler | Told::FollowUp | Told::Pronoun | Told::Yes | Told::Point(_))
        };
        let thanks = self.told.iter().any(|hit| hit.meaning == Told::Filler);
        verdict.kind == Kind::None && nothing && thanks && self.told.iter().all(empty)
    }

    /// Whether a word of this kind may belong to a question of the kind before.
    fn goes_with(&self, text: &Text, kind: Kind, before: &Reading) -> bool {
        const DAYS: [&str; 12] =
            ["day", "days", "din", "week", "weeks", "hafte", "hafta", "दिन", "दिनों", "हफ़्ते", "हफ्ते", "mahine"];
        let of_days = || (0..text.tokens.len()).any(|at| DAYS.contains(&text.normal(at)));
        kind == before.kind
            || match before.kind {
                // What is told of an ailing plant.
                Kind::Trouble => !self.asks && matches!(kind, Kind::Water | Kind::Mix | Kind::Shade | Kind::Feed),
                // "How many days gap".
                Kind::Spray | Kind::Feed | Kind::Water => kind == Kind::Space && of_days(),
                Kind::Mix => kind == Kind::Feed,
                _ => false,
            }
    }

    /// How the words lean that are no name, size, day or empty word.
    fn leaning_of_the_rest(&self, text: &Text, reader: &Reader<'_>) -> Vec<(Kind, f64)> {
        let open = self.open_words(text, reader);
        if open.is_empty() {
            return Vec::new();
        }
        let left: Vec<_> = open.iter().filter_map(|at| text.tokens.get(*at).cloned()).collect();
        let meant = reader.known.meanings.of(&left, text.language, crate::knowledge::Slips::Forgiven);
        let words: Vec<String> = left.iter().filter_map(|token| index_word(token, text.language)).collect();
        reader.index.leaning(&[words, meant].concat())
    }
}

/// Kinds that a message of few words may go on with. What was told is not asked again, and who wants a person says when.
const fn can_be_kept(kind: Kind, asks: bool) -> bool {
    match kind {
        Kind::None | Kind::Record => false,
        Kind::Person => !asks,
        _ => true,
    }
}

/// What is asked of a thing that is named: a net, something to spray, a feed.
fn of_thing(named: &Named, reader: &Reader<'_>) -> Option<Kind> {
    match named {
        Named::Material(id) => match reader.known.materials.get(id)?.kind {
            MaterialKind::Net => Some(Kind::Shade),
            MaterialKind::Spray => Some(Kind::Spray),
            MaterialKind::Feed | MaterialKind::Meal => Some(Kind::Feed),
            _ => None,
        },
        Named::Trouble(_) => Some(Kind::Trouble),
        _ => None,
    }
}

/// "Under the net", "with half day shade", "in how much water", "jaali ke neeche", "kitne pani me".
fn is_circumstance(text: &Text, hit: &Hit<Kind>) -> bool {
    /// So many words may stand between.
    const APART: usize = 3;
    const WITH: [&str; 8] = ["with", "without", "under", "below", "beneath", "inside", "through", "once"];
    const INTO: [&str; 3] = ["in", "into", "per"];
    const PLACED: [&str; 6] = ["neeche", "niche", "saath", "sath", "नीचे", "साथ"];
    let start = hit.span.start;
    let water = hit.meaning == Kind::Water;
    let near = |list: &[&str]| {
        (1..=APART)
            .filter_map(|back| start.checked_sub(back))
            .take_while(|at| !is_mark(text, *at))
            .any(|at| list.contains(&text.normal(at)))
    };
    let after = text.normal(hit.span.end);
    let placed = matches!(after, "ke" | "k" | "के") && PLACED.contains(&text.normal(hit.span.end + 1));
    let into = water && (near(&INTO) || matches!(after, "me" | "mein" | "में"));
    match text.language {
        Language::En => near(&WITH) || into,
        _ => placed || into,
    }
}
