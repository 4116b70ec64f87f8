//! The order in which sites are gone round.

use crate::knowledge::kilometres;

/// A site's id with its latitude and longitude, degrees.
pub type Stop<'a> = (&'a str, f64, f64);

/// The stops from where the round starts, each time the nearest that is left (nearest neighbour: simple to follow by
/// eye, not always the shortest way). Without a start it begins with the first as given.
#[must_use]
pub fn order<'a>(stops: &[Stop<'a>], start: Option<(f64, f64)>) -> Vec<Stop<'a>> {
    let mut left: Vec<Stop<'a>> = stops.to_vec();
    let mut here = match start.or_else(|| left.first().map(|(_, latitude, longitude)| (*latitude, *longitude))) {
        Some(here) => here,
        None => return left,
    };
    let mut ordered = Vec::with_capacity(left.len());
    while !left.is_empty() {
        let distances = left.iter().enumerate();
        let nearest = distances
            .min_by(|a, b| {
                let far = |stop: &Stop<'_>| kilometres(here, (stop.1, stop.2));
                far(a.1).total_cmp(&far(b.1))
            })
            .map_or(0, |(place, _)| place);
        let next = left.remove(nearest);
        here = (next.1, next.2);
        ordered.push(next);
    }
    ordered
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_site_comes_first() {
        let stops = [("far", 21.30, 79.10), ("near", 21.11, 79.10), ("middle", 21.20, 79.10)];
        let names = |start| order(&stops, start).iter().map(|stop| stop.0).collect::<Vec<_>>();
        assert_eq!(names(Some((21.10, 79.10))), ["near", "middle", "far"]);
        assert_eq!(names(None), ["far", "middle", "near"]);
        assert!(order(&[], None).is_empty());
    }
}
