//! One value of the knowledge base with its source.

use crate::quantity::Estimate;

/// Where a number comes from: a source and the place in it.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SourceRef {
    /// An id of `sources.toml`.
    pub id: String,
    /// Equation, table, page; empty where the source has none.
    pub place: String,
}

impl SourceRef {
    #[must_use]
    pub fn new(id: &str, place: &str) -> Self {
        Self { id: id.to_owned(), place: place.to_owned() }
    }

    /// Reads `"fao56: table 17"`.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let (id, place) = text.split_once(':').unwrap_or((text, ""));
        Self::new(id.trim(), place.trim())
    }
}

impl std::fmt::Display for SourceRef {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if self.place.is_empty() { f.write_str(&self.id) } else { write!(f, "{}: {}", self.id, self.place) }
    }
}

/// A value or a range, who says so, and whether it was read there.
#[derive(Debug, Clone, PartialEq)]
pub struct Fact<Q> {
    pub is: Estimate<Q>,
    pub source: SourceRef,
    /// Whether the number was seen in its source, rather than remembered.
    pub read: bool,
}

impl<Q: Copy + PartialOrd> Fact<Q> {
    #[must_use]
    pub fn value(&self) -> Q {
        self.is.value()
    }
}
