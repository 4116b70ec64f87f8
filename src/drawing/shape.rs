//! Shapes and how they look.

use super::paint::{Fill, Ink};

/// A place in a picture: right and down from its upper left corner.
pub type At = (f64, f64);

/// Filling and edge of a shape.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Look {
    pub fill: Option<Fill>,
    /// Ink and width.
    pub edge: Option<(Ink, f64)>,
    /// Strokes and gaps of the edge.
    pub dashes: Option<(f64, f64)>,
}

impl Look {
    /// Filled with one ink.
    #[must_use]
    pub const fn plain(ink: Ink) -> Self {
        Self::filled(Fill::Plain(ink))
    }

    #[must_use]
    pub const fn filled(fill: Fill) -> Self {
        Self { fill: Some(fill), edge: None, dashes: None }
    }

    /// A line and nothing within it.
    #[must_use]
    pub const fn line(ink: Ink, width: f64) -> Self {
        Self { fill: None, edge: Some((ink, width)), dashes: None }
    }

    #[must_use]
    pub const fn edged(mut self, ink: Ink, width: f64) -> Self {
        self.edge = Some((ink, width));
        self
    }

    #[must_use]
    pub const fn dashed(mut self, stroke: f64, gap: f64) -> Self {
        self.dashes = Some((stroke, gap));
        self
    }
}

/// The outline of a shape.
#[derive(Debug, Clone, PartialEq)]
pub enum Outline {
    Rectangle { at: At, size: (f64, f64), corner: f64 },
    Circle { middle: At, radius: f64 },
    Path(Vec<Step>),
}

/// A step of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Step {
    To(At),
    Line(At),
    /// Two handles and the end.
    Curve(At, At, At),
    Close,
}

impl Outline {
    #[must_use]
    pub const fn rectangle(at: At, size: (f64, f64)) -> Self {
        Self::Rectangle { at, size, corner: 0.0 }
    }

    /// Straight lines through some places.
    #[must_use]
    pub fn lines(places: &[At]) -> Self {
        let mut steps: Vec<Step> = places.iter().map(|place| Step::Line(*place)).collect();
        if let (Some(first), Some(place)) = (steps.first_mut(), places.first()) {
            *first = Step::To(*place);
        }
        Self::Path(steps)
    }

    /// The same, closed.
    #[must_use]
    pub fn area(places: &[At]) -> Self {
        match Self::lines(places) {
            Self::Path(mut steps) => {
                steps.push(Step::Close);
                Self::Path(steps)
            }
            other => other,
        }
    }

    /// The upper left and lower right corner around it, the handles of curves counted.
    #[must_use]
    pub fn bounds(&self) -> (At, At) {
        match self {
            Self::Rectangle { at, size, .. } => (*at, (at.0 + size.0, at.1 + size.1)),
            Self::Circle { middle: (x, y), radius } => ((x - radius, y - radius), (x + radius, y + radius)),
            Self::Path(steps) => {
                let places = steps.iter().flat_map(|step| match step {
                    Step::To(at) | Step::Line(at) => vec![*at],
                    Step::Curve(one, other, end) => vec![*one, *other, *end],
                    Step::Close => Vec::new(),
                });
                let start = ((f64::INFINITY, f64::INFINITY), (f64::NEG_INFINITY, f64::NEG_INFINITY));
                places.fold(start, |(low, high), (x, y)| ((low.0.min(x), low.1.min(y)), (high.0.max(x), high.1.max(y))))
            }
        }
    }
}
