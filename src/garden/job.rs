//! Jobs done in a bed.

use super::id::BedId;
use super::when::When;
use super::word::words;
use crate::quantity::Written;
use serde::{Deserialize, Serialize};

words!(
    /// A piece of care.
    JobKind {
        Water = "water",
        Spray = "spray",
        Feed = "feed",
        Flush = "flush",
        Sow = "sow",
        Plant = "plant",
        Thin = "thin",
        Weed = "weed",
        Prune = "prune",
        Stake = "stake",
        Pick = "pick",
        Pull = "pull",
        Net = "net",
        Mix = "mix",
        TopUp = "top-up",
        /// Ends a planting: the crop named, else all of the bed.
        Clear = "clear",
        /// A cover laid over the mix.
        Mulch = "mulch",
        Mend = "mend",
        Check = "check",
    }
);

/// One piece of care that was done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct JobDone {
    pub bed: BedId,
    pub job: JobKind,
    pub on: When,
    /// A material, a crop or a mix; of a net `up` or `down`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none", with = "super::measure::amount")]
    pub amount: Option<Written>,
}
