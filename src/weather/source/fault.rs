//! What can go wrong with asking for a forecast.

use super::Service;
use chrono::TimeDelta;
use thiserror::Error;

/// A forecast that did not come, or one that cannot be taken.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum Fault {
    /// 429: asked too often; `wait` as the service has it.
    #[error("{service} asks to be left alone for a while (429)")]
    Busy { service: Service, wait: Option<TimeDelta> },
    /// 403 and its like: asking again soon is of no use.
    #[error("{service} refused with status {status}")]
    Refused { service: Service, status: u16 },
    /// A 5xx.
    #[error("{service} is out of order: status {status}")]
    OutOfOrder { service: Service, status: u16 },
    #[error("{service} cannot be reached: {what}")]
    Unreachable { service: Service, what: &'static str },
    /// A document that is none, or that weather contradicts.
    #[error("{service}: {place}: {what}")]
    Document { service: Service, place: String, what: String },
}

impl Fault {
    /// Whether it is the service that has to be left alone, not this cell only.
    #[must_use]
    pub const fn is_of_the_service(&self) -> bool {
        !matches!(self, Self::Document { .. })
    }

    /// Who failed.
    #[must_use]
    pub const fn service(&self) -> Service {
        match self {
            Self::Busy { service, .. }
            | Self::Refused { service, .. }
            | Self::OutOfOrder { service, .. }
            | Self::Unreachable { service, .. }
            | Self::Document { service, .. } => *service,
        }
    }
}
