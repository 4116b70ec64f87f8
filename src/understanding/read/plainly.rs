//! What a message tells without weighing its words: days away, work done, a new bed, a correction.

use super::{Found, Hit, Reader, Told};
use crate::garden::JobKind;
use crate::knowledge::{Aspect, DayWord, Kind, TimeUnit};
use crate::script::Text;
use crate::understanding::gazetteer::Named;

impl Found {
    /// Days or weeks that something takes, in days.
    pub(super) fn for_days(&self) -> Option<f64> {
        self.quantities.durations.iter().find_map(|duration| match duration.unit {
            TimeUnit::Day => Some(duration.value),
            TimeUnit::Week => Some(duration.value * 7.0),
            _ => None,
        })
    }

    /// What only watering can be about: days away, a flush, a bed left dry; and whether it is time again for a
    /// bed that was watered. Told with a word for done it stays a record.
    pub(super) fn about_water(&self) -> Option<(Kind, f64)> {
        /// A phrase that leaves little else (judgement).
        const SURE: f64 = 0.85;
        let aspects = self.aspects();
        let only_water = [Aspect::Away, Aspect::Without, Aspect::Salt];
        let plainly = self.did.is_none() && only_water.iter().any(|aspect| aspects.contains(aspect));
        let again = self.did == Some(JobKind::Water) && aspects.contains(&Aspect::Now);
        (plainly || again).then_some((Kind::Water, SURE))
    }

    /// "Sorry, …", or "no, …" at its beginning.
    pub(super) fn corrects(&self) -> bool {
        let no = |hit: &&Hit<Told>| hit.meaning == Told::NoneOfThese && hit.span.start == 0;
        self.told.iter().any(|hit| hit.meaning == Told::Correction) || self.told.iter().any(|hit| no(&hit))
    }

    pub(super) fn undoes(&self) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Undo)
    }

    /// A month with a number beside it that makes no day: 31 June.
    pub(super) fn no_such_day(&self, text: &Text, reader: &Reader<'_>) -> bool {
        (0..text.tokens.len()).any(|position| {
            let month = matches!(reader.known.words.days.at(text, position), Some((DayWord::Month(_), _)));
            let dated = self.days.iter().any(|day| day.span.contains(&position));
            let number = |place: Option<usize>| {
                let number = place.and_then(|place| text.tokens.get(place)).and_then(|token| token.number);
                number.is_some_and(|number| (29.0..100.0).contains(&number) && number.fract() == 0.0)
            };
            month && !dated && (number(position.checked_sub(1)) || number(Some(position + 1)))
        })
    }

    /// "5 hours of sun": the hours that are told.
    pub(super) fn sun_hours(&self) -> Option<f64> {
        const LONGEST: f64 = 16.0;
        let hours = self.quantities.durations.iter().find(|duration| duration.unit == TimeUnit::Hour)?;
        (hours.value <= LONGEST).then_some(hours.value)
    }

    /// A new bed with its measures, told and not asked about.
    pub(super) fn is_new_bed(&self) -> bool {
        let measured = self
            .quantities
            .dimensions
            .iter()
            .any(|found| found.diameter.is_some() || found.length.is_some() && found.width.is_some());
        !self.asks && measured && self.told.iter().any(|hit| hit.meaning == Told::NewBed)
    }

    pub(super) fn about_a_new_bed(&self) -> Option<(Kind, f64)> {
        /// Measures beside a word for "new" leave little else (judgement).
        const SURE: f64 = 0.85;
        self.is_new_bed().then_some((Kind::Record, SURE))
    }

    /// A job that is to be done on another day: "move the spray to friday", "spray kal karenge". Who says that a job is
    /// going to be done must name its day; who asks, or says that it is not, moves nothing.
    pub(super) fn put_off(&self, text: &Text) -> Option<JobKind> {
        /// A message of so few tokens is about the move alone: its day is asked back.
        const BARE: usize = 6;
        const MOVABLE: [JobKind; 5] = [JobKind::Spray, JobKind::Feed, JobKind::Net, JobKind::Pick, JobKind::Sow];
        let says = |what: &Told| self.told.iter().any(|hit| hit.meaning == *what);
        // "Can you move …?" and "will spray" hold a word that asks, and ask nothing.
        let steers = |hit: &&Hit<Told>| matches!(hit.meaning, Told::Move | Told::Will);
        let within = |asks: &Hit<Told>| {
            let spans = self.told.iter().filter(steers).map(|hit| &hit.span);
            spans.into_iter().any(|span| span.start <= asks.span.start && asks.span.end <= span.end)
        };
        let (polite, asked): (Vec<&Hit<Told>>, Vec<&Hit<Told>>) =
            self.told.iter().filter(|hit| hit.meaning == Told::Question).partition(|hit| within(hit));
        let asks = !asked.is_empty() || text.original.contains('?') && polite.is_empty();
        let job = MOVABLE.into_iter().find(|job| says(&Told::Thing(*job)))?;
        let day = !self.days.is_empty();
        let moves = says(&Told::Move) && (day || self.for_days().is_some() || text.tokens.len() <= BARE);
        let will = says(&Told::Will) && day;
        let told = (moves || will) && !asks && self.did.is_none() && !says(&Told::Not);
        told.then_some(job)
    }

    fn about_a_move(&self, text: &Text) -> Option<(Kind, f64)> {
        /// A job, a word for moving and a day leave little else (judgement).
        const SURE: f64 = 0.85;
        self.put_off(text).map(|_| (Kind::Record, SURE))
    }

    /// What can be told without weighing words.
    pub(super) fn plainly(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        self.about_a_move(text)
            .or_else(|| self.about_water())
            .or_else(|| self.about_a_new_bed())
            .or_else(|| self.about_work(text, reader))
    }

    /// Work that is told of a bed or crop, and nothing asked: a record, whatever its words lean to. A plant that looks
    /// wrong after it is a trouble; a text of strange words is chatter.
    pub(super) fn about_work(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        /// A plain statement leaves little else (judgement).
        const SURE: f64 = 0.8;
        const STRANGE: f64 = 0.5;
        let named = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::Crop(_)));
        let told = self.did.is_some() && named && !self.asks && !self.on_plant;
        (told && self.strange(text, reader) < STRANGE).then_some((Kind::Record, SURE))
    }
}
