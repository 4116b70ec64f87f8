//! Numbers as a hand can use them, rounded outward.

/// A step to round to, for numbers of this size.
fn step(size: f64) -> f64 {
    match size {
        s if s < 1.0 => 0.05,
        s if s < 3.0 => 0.1,
        s if s < 10.0 => 0.5,
        s if s < 30.0 => 1.0,
        s if s < 150.0 => 5.0,
        s if s < 1_000.0 => 10.0,
        _ => 50.0,
    }
}

/// Low down and high up, each to the step of its own size.
#[must_use]
pub fn outward(low: f64, high: f64) -> (f64, f64) {
    // A hair of floating point is no reason to go a step further out.
    let hair = 1e-9;
    let (fine, coarse) = (step(low.abs()), step(high.abs()));
    (((low / fine) + hair).floor() * fine, ((high / coarse) - hair).ceil() * coarse)
}

/// A dose: both ends rounded down to two figures, so that the upper one is never exceeded.
#[must_use]
pub fn inward(low: f64, high: f64) -> (f64, f64) {
    let down = |value: f64| {
        let step = if value < 10.0 {
            0.5
        } else if value < 100.0 {
            1.0
        } else {
            5.0
        };
        ((value / step) + 1e-9).floor() * step
    };
    (down(low), down(high))
}

/// One number to the step of its size.
#[must_use]
pub fn nearest(value: f64) -> f64 {
    let step = step(value.abs());
    (value / step).round() * step
}

/// A number with no more decimals than it needs.
#[must_use]
pub fn plain(value: f64) -> String {
    let text = format!("{value:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn what_is_shown_contains_what_was_computed(low in 0.0f64..5000.0, width in 0.0f64..3000.0) {
            let (shown_low, shown_high) = outward(low, low + width);
            prop_assert!(shown_low <= low + 1e-6 && shown_high >= low + width - 1e-6);
        }
    }

    #[track_caller]
    fn case(low: f64, high: f64, expected: &str) {
        let (low, high) = outward(low, high);
        assert_eq!(format!("{} to {}", plain(low), plain(high)), expected);
    }

    #[test]
    fn to_a_measure_a_hand_can_pour() {
        case(63.3, 81.2, "60 to 85");
        case(3.7, 6.0, "3.5 to 6");
        case(0.21, 0.34, "0.2 to 0.35");
        case(366.2, 402.0, "360 to 410");
        case(5.0, 5.0, "5 to 5");
    }
}
