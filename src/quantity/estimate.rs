//! A figure with its range.

use thiserror::Error;

/// A result with the range it claims: nine times in ten the truth lies within `low` to `high`.
///
/// Its fields are private so that the order `low ≤ value ≤ high` holds by construction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate<Q> {
    low: Q,
    value: Q,
    high: Q,
}

/// Three values that are not in order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[error("a range needs low ≤ value ≤ high")]
pub struct NotOrdered;

impl<Q: Copy + PartialOrd> Estimate<Q> {
    /// A figure without doubt.
    #[must_use]
    pub const fn exactly(value: Q) -> Self {
        Self { low: value, value, high: value }
    }

    /// A figure between two ends.
    ///
    /// # Errors
    /// [`NotOrdered`] unless `low ≤ value ≤ high`.
    pub fn between(low: Q, value: Q, high: Q) -> Result<Self, NotOrdered> {
        if low <= value && value <= high { Ok(Self { low, value, high }) } else { Err(NotOrdered) }
    }

    /// A figure and the other results that its doubtful inputs could give: the range spans them all.
    #[must_use]
    pub fn spanning(value: Q, others: impl IntoIterator<Item = Q>) -> Self {
        let mut range = Self::exactly(value);
        for other in others {
            if other < range.low {
                range.low = other;
            }
            if other > range.high {
                range.high = other;
            }
        }
        range
    }

    #[must_use]
    pub const fn low(&self) -> Q {
        self.low
    }
    #[must_use]
    pub const fn value(&self) -> Q {
        self.value
    }
    #[must_use]
    pub const fn high(&self) -> Q {
        self.high
    }

    /// The same range seen through a function that never falls.
    #[must_use]
    pub fn map<R: Copy + PartialOrd>(&self, rising: impl Fn(Q) -> R) -> Estimate<R> {
        let ends = [rising(self.low), rising(self.high)];
        Estimate::spanning(rising(self.value), ends)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn refuses_disorder() {
        assert_eq!(Estimate::between(2.0, 1.0, 3.0), Err(NotOrdered));
        assert_eq!(Estimate::between(1.0, f64::NAN, 3.0), Err(NotOrdered));
    }

    #[test]
    fn spans_what_it_is_given() {
        let range = Estimate::spanning(5.0, [7.0, 4.0, 6.0]);
        assert_eq!((range.low(), range.value(), range.high()), (4.0, 5.0, 7.0));
    }
}
