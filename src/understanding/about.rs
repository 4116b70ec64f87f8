//! How far a message is about a spray or a feed, before its kind is decided.

use crate::garden::JobKind;
use crate::knowledge::Point;
use std::collections::BTreeSet;

/// How far a message is about one thing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum About {
    #[default]
    Not,
    /// It is named.
    Named,
    /// What may come of it, or when it is due again, is asked.
    Asked,
}

/// What of a message tells it.
pub struct Signs {
    pub points: BTreeSet<Point>,
    pub asks: bool,
    pub did: Option<JobKind>,
    /// A word for feeding is in it.
    pub feeding: bool,
}

impl Signs {
    fn has(&self, point: Point) -> bool {
        self.points.contains(&point)
    }

    /// It was done, and when it is due again is asked: no record.
    fn again(&self, job: JobKind) -> bool {
        self.did == Some(job) && self.has(Point::Time)
    }
}

/// By a product, or by the work; `named` where a spray is.
pub fn about_sprays(signs: &Signs, named: bool) -> About {
    let harm = [Point::Wait, Point::Stronger, Point::Together, Point::Tender, Point::Strength];
    let product = named || signs.has(Point::Drug) || signs.has(Point::SyntheticSpray);
    match product && signs.asks {
        true if signs.again(JobKind::Spray) || harm.into_iter().any(|point| signs.has(point)) => About::Asked,
        true => About::Named,
        false => About::Not,
    }
}

/// By a feed that is nothing else (`named`): compost alone says little, it goes into a mix as well.
pub fn about_feeds(signs: &Signs, named: bool) -> About {
    let product = named || signs.has(Point::SyntheticFeed) || signs.has(Point::Tonic);
    let overdone = (product || signs.feeding) && signs.has(Point::Accident);
    match signs.asks {
        true if signs.again(JobKind::Feed) || overdone || signs.has(Point::Tonic) => About::Asked,
        true if product => About::Named,
        _ => About::Not,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(points: &[Point], did: Option<JobKind>, asks: bool, named: bool, expected: (About, About)) {
        let signs = Signs { points: points.iter().copied().collect(), asks, did, feeding: false };
        assert_eq!((about_sprays(&signs, named), about_feeds(&signs, named)), expected, "{points:?}");
    }

    #[test]
    fn what_is_told_of_a_product() {
        case(&[], None, true, false, (About::Not, About::Not));
        case(&[], None, true, true, (About::Named, About::Named));
        // "Can I eat it after the medicine?" is about the spray.
        case(&[Point::Wait, Point::Drug], None, true, false, (About::Asked, About::Not));
        // "Picked it, the medicine was sprayed last week": a record, nothing asked.
        case(&[Point::Wait, Point::Drug], Some(JobKind::Pick), false, false, (About::Not, About::Not));
        // "Fed on 4 May, next when?"
        case(&[Point::Time], Some(JobKind::Feed), true, false, (About::Not, About::Asked));
        // "A whole mug of urea, what now?"
        case(&[Point::Accident, Point::SyntheticFeed], None, true, false, (About::Not, About::Asked));
    }
}
