//! Messages that go on with what was said: another time of the year, a worry, the net or the next time of it.

use super::follows::Follows;
use super::topics::is_one_of;
use super::{Found, Hit, Named, Reader, Reading, Told};
use crate::garden::JobKind;
use crate::knowledge::{DayWord, Kind, MaterialKind, Slips};
use crate::quantity::UnitOf;
use crate::script::{Language, Text};
use crate::understanding::follow_up::Says;

/// Such a message has at most so many words.
const LONGEST: usize = 10;

impl Found {
    fn tells(&self, what: &Told) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what)
    }

    /// The month in the middle of a time of the year that is named.
    pub(super) fn season(&self) -> Option<u32> {
        self.told.iter().find_map(|hit| if let Told::Season(month) = hit.meaning { Some(month) } else { None })
    }

    /// "In winter", "july me": the month of the time that a question is about, where the words say that it is about then.
    pub(super) fn season_asked(&self, text: &Text, reader: &Reader<'_>) -> Option<u32> {
        let steps = &reader.known.talk.steps;
        let article = |at: usize| if at > 0 && text.normal(at - 1) == "the" { at - 1 } else { at };
        let after =
            |at: usize| article(at).checked_sub(1).is_some_and(|before| is_one_of(&steps.before_month, text, before));
        if self.did.is_some() || !self.days.is_empty() {
            return None;
        }
        let season = self.told.iter().find_map(|hit| match hit.meaning {
            // The Hindi words for a season hold the word for "in".
            Told::Season(month) if after(hit.span.start) || text.language != Language::En => Some(month),
            _ => None,
        });
        season.or_else(|| {
            (0..text.tokens.len()).find_map(|at| match reader.known.words.days.at(text, at) {
                Some((DayWord::Month(month), length))
                    if after(at) || is_one_of(&steps.after_month, text, at + length) =>
                {
                    Some(month)
                }
                _ => None,
            })
        })
    }

    /// The month or the middle month of the season in a message that names no other time.
    pub(super) fn only_month(&self, text: &Text, reader: &Reader<'_>) -> Option<u32> {
        let months = self.months(text, reader);
        if self.only_another_time(text, reader) { self.season().or(months.first().copied()) } else { None }
    }

    /// "Please show how you reached that figure": the working of the last answer, of nothing else that is named.
    pub(super) fn asks_working(&self) -> bool {
        self.tells(&Told::Working) && self.names.is_empty() && self.quantities.said.is_empty() && self.did.is_none()
    }

    /// "How come so much", "why so many days": of what was answered, of nothing else that is named.
    pub(super) fn asks_why_of_it(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let more = &reader.known.talk.steps.more;
        let why = |hit: &Hit<Told>| hit.meaning == Told::Why && !is_one_of(more, text, hit.span.start);
        let nothing = self.names.is_empty() && self.quantities.said.is_empty() && self.days.is_empty();
        self.told.iter().any(why) && !self.tells(&Told::Condition) && nothing && self.signs.is_empty()
    }

    /// What a message leaves to the one before, where it goes on with it in a way of its own; and its kind, where that is
    /// another one.
    pub(super) fn goes_on(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> Option<Follows> {
        let keeps = Follows { kind: None, says: Says::NoKind };
        let turns = |kind: Kind| Follows { kind: Some(kind), says: Says::NoSubject };
        let words = text.tokens.iter().filter(|token| token.is_word()).count();
        if words > LONGEST || self.did.is_some() || matches!(before.kind, Kind::None | Kind::Person) {
            return None;
        }
        if let Some(kind) = self.turns_to(text, reader, before) {
            return Some(turns(kind));
        }
        let another_time = before.kind != Kind::Record && self.only_another_time(text, reader);
        let worries = before.kind == Kind::Trouble && self.worries(before);
        if another_time || worries || self.tells_vessel(before) || self.asks_of_each_turn(before) {
            return Some(keeps);
        }
        if self.asks_for_the_net(text, reader, before) {
            return Some(turns(Kind::Shade));
        }
        self.next_of_the_work(text, reader, before).map(turns)
    }

    /// "How much each time" of a watering, feed or spray.
    fn asks_of_each_turn(&self, before: &Reading) -> bool {
        let turn = match before.kind {
            Kind::Water => JobKind::Water,
            Kind::Feed => JobKind::Feed,
            Kind::Spray => JobKind::Spray,
            _ => return false,
        };
        let same = self.jobs().into_iter().all(|job| job == turn);
        same && self.tells(&Told::EachTime) && self.names_only(|name| matches!(name, Named::Material(_)))
    }

    fn names_only(&self, what: impl Fn(&Named) -> bool) -> bool {
        self.names.iter().all(|hit| what(&hit.meaning))
    }

    /// "And in winter?", "even in july?": another time of the year and nothing else.
    fn only_another_time(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let month = |at: usize| matches!(reader.known.words.days.at(text, at), Some((DayWord::Month(_), _)));
        let season =
            |at: usize| self.told.iter().any(|hit| matches!(hit.meaning, Told::Season(_)) && hit.span.contains(&at));
        let time = |at: usize| month(at) || season(at);
        let word =
            |at: &usize| text.tokens.get(*at).is_some_and(|token| token.normal.chars().any(char::is_alphanumeric));
        let steers = |at: usize| {
            self.is_empty_word(at)
                || self.told.iter().any(|hit| matches!(hit.meaning, Told::Same | Told::All) && hit.span.contains(&at))
                || is_one_of(&reader.known.talk.steps.beside_time, text, at)
        };
        let all = || (0..text.tokens.len()).filter(word);
        self.names.is_empty() && self.days.is_empty() && all().any(time) && all().all(|at| time(at) || steers(at))
    }

    /// "The mug holds 700 ml" after water was asked for in mugs.
    fn tells_vessel(&self, before: &Reading) -> bool {
        let wanted = before.vessels.as_ref().is_some_and(|vessels| vessels.wanted && vessels.holds.is_none());
        let [said] = self.quantities.said.as_slice() else { return false };
        let volume = said.written.unit.measures() == UnitOf::Volume;
        before.kind == Kind::Water && wanted && volume && self.names.is_empty() && !self.asks
    }

    /// "Is that normal", "will it die": asked of the trouble just told, about no other plant.
    fn worries(&self, before: &Reading) -> bool {
        let same = |name: &Named| match name {
            Named::Crop(crop) => before.crops.contains(crop),
            _ => false,
        };
        self.tells(&Told::Worry) && self.signs.is_empty() && self.names_only(same)
    }

    /// "Will it want a net too": asked of what was spoken of. "And under the net?" is a condition.
    fn asks_for_the_net(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> bool {
        let steps = &reader.known.talk.steps;
        let of_net = |name: &Named| match name {
            Named::Material(id) => {
                reader.known.materials.get(id).is_some_and(|material| material.kind == MaterialKind::Net)
            }
            _ => false,
        };
        let under = |at: usize| {
            (1..=2).any(|back| at.checked_sub(back).is_some_and(|place| is_one_of(&steps.with, text, place)))
                || is_one_of(&steps.of, text, at + 1)
        };
        let net = self.told.iter().filter(|hit| hit.meaning == Told::Thing(JobKind::Net));
        let wanted = net.into_iter().any(|hit| !under(hit.span.start));
        let of_plant = matches!(
            before.kind,
            Kind::Sow | Kind::Harvest | Kind::Water | Kind::Feed | Kind::Seed | Kind::Space | Kind::Care
        );
        let supposed = self.tells(&Told::Condition) || self.tells(&Told::NetDown);
        wanted && of_plant && self.asks && !supposed && self.names_only(of_net) && !before.crops.is_empty()
    }

    /// "Next pick when" after a picking told: the next time of that work.
    fn next_of_the_work(&self, text: &Text, reader: &Reader<'_>, before: &Reading) -> Option<Kind> {
        let (job, kind) = match before.did? {
            JobKind::Water => (JobKind::Water, Kind::Water),
            JobKind::Spray => (JobKind::Spray, Kind::Spray),
            JobKind::Feed => (JobKind::Feed, Kind::Feed),
            JobKind::Pick => (JobKind::Pick, Kind::Harvest),
            _ => return None,
        };
        if before.kind != Kind::Record || !self.names_only(|_| false) || !self.quantities.said.is_empty() {
            return None;
        }
        let meant = reader.known.meanings.of(&text.tokens, text.language, Slips::Refused);
        let means = |what: &str| meant.iter().any(|word| word.strip_prefix('=') == Some(what));
        let other = self.jobs().into_iter().any(|named| named != job);
        let when = means("next") && means("when") || asks_how_long_to_wait(text, reader);
        (when && !other).then_some(kind)
    }
}

/// "How many days do I wait", "kitne din ruku", in few words.
pub(super) fn asks_how_long_to_wait(text: &Text, reader: &Reader<'_>) -> bool {
    const WAITS: [&str; 13] =
        ["wait", "gap", "ruku", "rukun", "rukna", "rukein", "ruke", "intezar", "intezaar", "रुकूँ", "रुकूं", "रुकना", "रुकें"];
    let words = text.tokens.iter().filter(|token| token.is_word()).count();
    let waits = text.tokens.iter().any(|token| WAITS.contains(&token.normal.as_str()));
    let days = (0..text.tokens.len()).any(|at| reader.known.words.spans.at(text, at).is_some());
    waits && days && words <= LONGEST
}
