//! What exactly is asked or told within a kind of message.

use serde::{Deserialize, Serialize};

/// A point of a message, mostly about sprays and feeds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Point {
    /// How strong a mixture is to be.
    Strength,
    /// How much liquid a bed takes.
    Liquid,
    /// When it may be picked or eaten.
    Wait,
    /// When the next one is due, or whether now is a good time.
    Time,
    /// Bees or open flowers are near.
    Bees,
    /// In the heat of the day.
    Midday,
    /// More than the usual strength.
    Stronger,
    /// Two products at once.
    Together,
    /// A child, an expectant mother or an animal is near.
    Tender,
    /// Medicine against insects or disease, of no name.
    Drug,
    /// A manufactured pesticide.
    SyntheticSpray,
    /// A manufactured feed.
    SyntheticFeed,
    /// A kitchen tonic that feeds little.
    Tonic,
    /// Far too much was given.
    Accident,
    /// The bottle holds plain oil.
    PlainOil,
    /// The bottle holds a concentrate.
    Concentrate,
    /// What the bottle holds is not known.
    NotKnown,
    /// How much water, or how often.
    HowMuchWater,
    /// How deep a bed, or how large a pot, a crop wants.
    BedDepth,
    /// How deep its seed goes.
    SowingDepth,
    /// How much sun a crop wants.
    SunWanted,
    /// The beds there are.
    OwnBeds,
    /// What grows in a bed.
    Stands,
    /// When something was done last, and by whom.
    LastDone,
    /// By whom.
    Who,
    /// Month by month, the year through.
    WholeYear,
    /// Warnings of the days ahead.
    Warnings,
    /// Rain is spoken of.
    Rain,
    /// It fell.
    RainFell,
    RainHard,
    RainLight,
    NoRain,
    /// How warm the days are.
    SkyReaches,
    /// Day after day.
    DayByDay,
    /// It is asked of one's own bed, of a certain moment or of an amount: no general question.
    Own,
    /// How much a crop gives.
    Yield,
    /// What a word means.
    Meaning,
    /// Which of two things is better.
    Choice,
    /// A vine and what it climbs on.
    Climbs,
    /// Something fell over an edge, or may.
    FallsOver,
    /// How one sees that a crop is ready, or how it should look then.
    Ripe,
    /// A thing of the house that is put on plants as a remedy.
    Household,
    /// What is said of the moon, of lucky days, of talk and touch.
    Lore,
    /// A piece of handiwork or a habit of plants that an article tells, whatever else its words speak of.
    Practice,
    /// Plants, their mix and what lives on them.
    Growing,
    /// A clump is to be taken apart.
    Divides,
    /// Parts are taken off a plant that goes on growing.
    Pruning,
    /// What a bed is lined or painted with.
    Lining,
    /// What grows in a place.
    WhatGrows,
    /// An amount of something is asked for.
    Amount,
    /// How something is made up: of the kitchen, or of a mix.
    Recipe,
    /// All that comes up to a day, or before it.
    UpTo,
    Before,
    /// Work that was perhaps left undone is asked after.
    Missed,
    /// Wind that tears at a net.
    Storm,
    /// What to spray is asked, and not with what strength or when.
    WhichSpray,
    /// In which order the roofs are gone round.
    Round,
    /// Someone is there who helps.
    HelpAtHand,
    /// A crop is got from its bed.
    Gets,
    /// Any plant to eat.
    AnyPlant,
    /// It lives where it is hard to.
    Lives,
    /// What a bed is filled with, part by part.
    OfEach,
    /// Day by day, or with days between.
    Alternates,
    /// What a plant is fed, put as what it eats.
    Eats,
    /// Seedlings are raised.
    Raises,
    /// Something is put in, and whether that will do is asked.
    PutSupposed,
    /// Something is to be eaten raw.
    Raw,
    /// What something weighs.
    Weighs,
    /// It holds all the water it can.
    SoakedThrough,
    /// Something is made ready.
    Prepares,
    /// It is to weigh little.
    LightWeight,
    /// A crop is to be put in.
    SetsIn,
    /// Something has room in a place that is not named.
    FitsThere,
    /// Something is to be thrown away.
    ThrowsOut,
    /// When, of work of one's own, and of which is not said.
    BareAsked,
    /// Water is to be given in one go a day.
    OnceADay,
    /// A row of plants is spoken of.
    InRow,
}

impl Point {
    /// Whether it only tells together with another what is asked, and says nothing alone.
    #[must_use]
    pub const fn is_of_a_frame(self) -> bool {
        matches!(
            self,
            Self::Gets
                | Self::AnyPlant
                | Self::Lives
                | Self::OfEach
                | Self::Alternates
                | Self::Eats
                | Self::Raises
                | Self::PutSupposed
                | Self::Growing
                | Self::Weighs
                | Self::SoakedThrough
                | Self::Prepares
                | Self::LightWeight
                | Self::SetsIn
                | Self::FitsThere
                | Self::ThrowsOut
                | Self::BareAsked
                | Self::OnceADay
                | Self::InRow
        )
    }

    /// Whether it says what is in a bottle.
    #[must_use]
    pub const fn tells_product(self) -> bool {
        matches!(self, Self::PlainOil | Self::Concentrate | Self::NotKnown)
    }
}
