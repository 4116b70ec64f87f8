//! What a name or a steering word stands for.

use crate::garden::{BedId, BedKind, JobKind, SeenKind, SiteId};
use crate::knowledge::{Aspect, Point};
use crate::script::Language;

/// What a name stands for.
#[derive(Debug, Clone, PartialEq)]
pub enum Named {
    OwnBed(BedId),
    Site(SiteId),
    Crop(String),
    Material(String),
    Mix(String),
    Trouble(String),
    /// Seed whose shoots must not be eaten, and which is no crop here.
    Refused(String),
    Place(String),
    /// A plant that has no file here.
    OtherPlant(String),
    /// A person or site that the asker may not see: nothing is told of it.
    SomeoneElse,
    BedKind(BedKind),
}

/// A word that says what was done or seen.
#[derive(Debug, Clone, PartialEq)]
pub enum Told {
    Did(JobKind),
    /// A thing that, with a word for done, says what was done.
    Thing(JobKind),
    Done,
    Saw(SeenKind),
    Aspect(Aspect),
    NetDown,
    Question,
    Why,
    FollowUp,
    All,
    Microgreen,
    /// What comes after a crop.
    Follows,
    Filler,
    Yes,
    /// Someone who is not the asker.
    Others,
    /// What the body wants or the law forbids.
    NotOurs,
    /// What is kept of a person: records, an address.
    Data,
    /// What was told before was wrong.
    Correction,
    /// A bed that is new.
    NewBed,
    /// A name follows.
    Called,
    Pronoun,
    Undo,
    /// A harvest told without a word for picking.
    Got,
    NoneOfThese,
    Point(Point),
    /// A place among what was offered, from 1.
    Nth(usize),
    Both,
    OthersSaid,
    Shorter,
    /// The language that is asked for.
    Speak(Language),
    /// The day after the one spoken of.
    DayAfter,
    /// "Did" where it asks.
    DidAsk,
    /// A job is to be done on another day.
    Move,
    /// A job is going to be done.
    Will,
    Not,
    /// Whether a saying is true is asked.
    Hearsay,
    /// Something ails a plant, and it is not said what.
    Ails,
    /// The same is asked of something else.
    Same,
    /// What is supposed follows, or stands before.
    Condition,
    ConditionEnd,
    /// Not the one spoken of but the one beside it.
    OtherOne,
    /// A thing near the one spoken of, which is not named.
    BesideIt,
    /// Something ails a plant, in words that tell nothing of what one sees.
    Poorly,
    /// All that was offered.
    Every,
    /// In the thing spoken of.
    Inside,
    /// What an amount is wanted in.
    AmountIn,
    /// It is asked that something be written down.
    Note,
    /// What water is carried in.
    Vessel,
    /// What is told is of someone else's garden.
    OthersGarden,
    /// Nothing is meant in earnest.
    Joke,
    /// "If": what follows is only supposed.
    Supposed,
    /// An animal that is no gardener.
    Creature,
    /// A word with the ending of what is done that is no work.
    NoDeed,
    /// Of a crop and a day: it was sown then.
    PutIn,
    /// Given by someone else, at the verb.
    ByOthers,
    /// A time of the year, by the month in its middle.
    Season(u32),
    /// How bad what was told is, and what helps.
    Worry,
    /// The working of the answer before is asked for.
    Working,
    /// Of each turn.
    EachTime,
    /// Something else is asked to do in place of what was told.
    Suffices,
    /// Something is wished to be told: beside work it asks.
    Request,
}
