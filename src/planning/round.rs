//! The order in which sites are gone round.

use crate::knowledge::kilometres;

/// A site's id with its latitude and longitude, degrees.
pub type Stop<'a> = (&'a str, f64, f64);

/// A change that saves less than this is none, km: what is equal stays as it is.
const WORTH_KM: f64 = 1e-6;

/// Nobody goes round more stops in a day: more stay in the order they are given in, since the work of ordering them
/// grows with their square.
const MOST: usize = 300;

/// The stops from where the round starts: each time the nearest that is left, then stretches turned round as long as
/// that shortens the way (2-opt: Croes 1958), as the crow flies. Without a start it begins with the first as given.
#[must_use]
pub fn order<'a>(stops: &[Stop<'a>], start: Option<(f64, f64)>) -> Vec<Stop<'a>> {
    if stops.len() > MOST {
        return stops.to_vec();
    }
    match start {
        Some(start) => turned(nearest_first(stops, start), start),
        None => match stops.split_first() {
            Some((first, rest)) => {
                let here = (first.1, first.2);
                let mut all = vec![*first];
                all.extend(turned(nearest_first(rest, here), here));
                all
            }
            None => Vec::new(),
        },
    }
}

/// The way from a start over the stops in this order, km along great circles.
#[must_use]
pub fn way_km(stops: &[Stop<'_>], start: Option<(f64, f64)>) -> f64 {
    let mut here = start;
    let mut all = 0.0;
    for stop in stops {
        let there = (stop.1, stop.2);
        all += here.map_or(0.0, |here| kilometres(here, there));
        here = Some(there);
    }
    all
}

/// Nearest neighbour.
fn nearest_first<'a>(stops: &[Stop<'a>], start: (f64, f64)) -> Vec<Stop<'a>> {
    let mut left: Vec<Stop<'a>> = stops.to_vec();
    let mut here = start;
    let mut ordered = Vec::with_capacity(left.len());
    while !left.is_empty() {
        let far = |stop: &Stop<'_>| kilometres(here, (stop.1, stop.2));
        let nearest = left.iter().enumerate().min_by(|a, b| far(a.1).total_cmp(&far(b.1)));
        let next = left.remove(nearest.map_or(0, |(place, _)| place));
        here = (next.1, next.2);
        ordered.push(next);
    }
    ordered
}

/// Turns the first stretch that makes the way shorter, and looks again, until none does. The round does not come back
/// to its start, so that its end may be turned as well.
fn turned<'a>(mut stops: Vec<Stop<'a>>, start: (f64, f64)) -> Vec<Stop<'a>> {
    while let Some((from, until)) = shorter(&stops, start) {
        if let Some(stretch) = stops.get_mut(from..=until) {
            stretch.reverse();
        }
    }
    stops
}

/// A stretch that is worth turning.
fn shorter(stops: &[Stop<'_>], start: (f64, f64)) -> Option<(usize, usize)> {
    let place = |at: usize| stops.get(at).map(|stop| (stop.1, stop.2));
    let far = |from: Option<(f64, f64)>, to: Option<(f64, f64)>| from.zip(to).map_or(0.0, |(a, b)| kilometres(a, b));
    for from in 0..stops.len() {
        let before = if from == 0 { Some(start) } else { place(from - 1) };
        for until in from + 1..stops.len() {
            let (head, tail, after) = (place(from), place(until), place(until + 1));
            let now = far(before, head) + far(tail, after);
            if far(before, tail) + far(head, after) < now - WORTH_KM {
                return Some((from, until));
            }
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_nearest_site_comes_first() {
        let stops = [("far", 21.30, 79.10), ("near", 21.11, 79.10), ("middle", 21.20, 79.10)];
        let names = |start| order(&stops, start).iter().map(|stop| stop.0).collect::<Vec<_>>();
        assert_eq!(names(Some((21.10, 79.10))), ["near", "middle", "far"]);
        assert_eq!(names(None), ["far", "middle", "near"]);
        assert!(order(&[], None).is_empty());
    }

    /// Stops on a line at 0, 1, -2, 5 and -11: the nearest each time goes to and fro, 0 1 -2 5 -11, 27 in all. Turned
    /// round: 0 1 5 -2 -11, or the other way first, at 21.
    #[test]
    fn to_and_fro_is_turned() {
        let stops = [("a", 0.0, 1.0), ("b", 0.0, -2.0), ("c", 0.0, 5.0), ("d", 0.0, -11.0)];
        let start = (0.0, 0.0);
        let plain = way_km(&nearest_first(&stops, start), Some(start));
        let turned = way_km(&order(&stops, Some(start)), Some(start));
        let degree = way_km(&[("x", 0.0, 1.0)], Some(start));
        assert!((plain / degree - 27.0).abs() < 0.01 && (turned / degree - 21.0).abs() < 0.01, "{plain} {turned}");
    }

    /// One degree of a great circle is a 360th of the circumference: 111.19 km at the mean radius of 6371.0 km (IUGG).
    #[test]
    fn a_degree_is_as_long_as_it_is() {
        let km = way_km(&[("x", 22.0, 79.0)], Some((21.0, 79.0)));
        assert!((km - 111.19).abs() < 0.3, "{km}");
    }

    proptest! {
        #[test]
        fn every_stop_once_and_never_longer_than_the_nearest_first(
            places in proptest::collection::vec((20.9f64..21.3, 78.9f64..79.3), 0..9)
        ) {
            let stops: Vec<Stop<'_>> = places.iter().map(|(a, b)| ("x", *a, *b)).collect();
            let start = (21.1, 79.1);
            let got = order(&stops, Some(start));
            let sorted = |all: &[Stop<'_>]| {
                let mut all: Vec<(u64, u64)> = all.iter().map(|stop| (stop.1.to_bits(), stop.2.to_bits())).collect();
                all.sort_unstable();
                all
            };
            prop_assert_eq!(sorted(&got), sorted(&stops));
            let plain = way_km(&nearest_first(&stops, start), Some(start));
            prop_assert!(way_km(&got, Some(start)) <= plain + 1e-6);
        }
    }
}
