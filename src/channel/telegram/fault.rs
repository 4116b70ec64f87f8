//! What a failed call means, without the address (and so the token) or anyone's words that its error may hold.

use std::time::Duration;
use teloxide::{ApiError, RequestError};

/// What to do after a failed call.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// The platform says how long to wait.
    TooFast(Duration),
    /// It may work later: no connection, no answer, the server's own trouble.
    Later(&'static str),
    /// The chat does not want us.
    ShutOut,
    /// The group has another number now.
    Moved(i64),
    /// It will never be taken.
    Refused(&'static str),
    Token,
    /// Another program asks for the same updates.
    Rival,
    /// Updates go to a web address instead.
    Webhook,
}

impl Fault {
    pub fn of(error: &RequestError) -> Self {
        match error {
            RequestError::RetryAfter(seconds) => Self::TooFast(Duration::from_secs(u64::from(seconds.seconds()))),
            RequestError::MigrateToChatId(chat) => Self::Moved(chat.0),
            RequestError::Network(fault) => Self::of_network(fault),
            RequestError::InvalidJson { .. } => Self::Later("the answer could not be read"),
            RequestError::Io(_) => Self::Refused("a file could not be read"),
            RequestError::Api(error) => Self::of_api(error),
        }
    }

    pub fn of_network(fault: &reqwest::Error) -> Self {
        if fault.is_timeout() {
            Self::Later("no answer in time")
        } else if fault.is_connect() {
            Self::Later("no connection")
        } else {
            Self::Later("the connection broke")
        }
    }

    fn of_api(error: &ApiError) -> Self {
        match error {
            ApiError::InvalidToken => Self::Token,
            ApiError::TerminatedByOtherGetUpdates => Self::Rival,
            ApiError::CantGetUpdates => Self::Webhook,
            ApiError::BotBlocked
            | ApiError::BotKicked
            | ApiError::BotKickedFromSupergroup
            | ApiError::BotKickedFromChannel
            | ApiError::UserDeactivated
            | ApiError::CantInitiateConversation
            | ApiError::CantTalkWithBots => Self::ShutOut,
            ApiError::Unknown(text) => Self::of_text(text),
            _ => Self::Refused("bad request"),
        }
    }

    /// The first word of a description stands for its number.
    pub fn of_text(text: &str) -> Self {
        if text.starts_with("Forbidden") {
            Self::ShutOut
        } else if text.starts_with("Bad Request") {
            Self::Refused("bad request")
        } else if text.starts_with("Conflict") {
            if text.to_lowercase().contains("webhook") { Self::Webhook } else { Self::Rival }
        } else {
            Self::Later("the server has trouble")
        }
    }

    /// For a log.
    pub const fn word(self) -> &'static str {
        match self {
            Self::TooFast(_) => "too fast",
            Self::Later(what) | Self::Refused(what) => what,
            Self::ShutOut => "the chat shut us out",
            Self::Moved(_) => "the group has moved",
            Self::Token => "the token is not accepted",
            Self::Rival => "another program asks for the same updates",
            Self::Webhook => "updates go to a web address",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::sync::Arc;
    use teloxide::types::{ChatId, Seconds};

    #[track_caller]
    fn case(error: RequestError, expected: Fault) {
        assert_eq!(Fault::of(&error), expected);
        assert!(!Fault::of(&error).word().contains("42:secret"));
    }

    #[test]
    fn each_fault_has_its_meaning() {
        let api = |error| RequestError::Api(error);
        let unknown = |text: &str| RequestError::Api(ApiError::Unknown(text.into()));
        case(RequestError::RetryAfter(Seconds::from_seconds(7)), Fault::TooFast(Duration::from_secs(7)));
        case(RequestError::MigrateToChatId(ChatId(-5)), Fault::Moved(-5));
        case(api(ApiError::BotBlocked), Fault::ShutOut);
        case(api(ApiError::InvalidToken), Fault::Token);
        case(api(ApiError::TerminatedByOtherGetUpdates), Fault::Rival);
        case(api(ApiError::ChatNotFound), Fault::Refused("bad request"));
        case(unknown("Forbidden: bot can't initiate conversation with a user"), Fault::ShutOut);
        case(unknown("Bad Request: something new"), Fault::Refused("bad request"));
        case(unknown("Conflict: can't use getUpdates method while webhook is active; 42:secret"), Fault::Webhook);
        case(unknown("Internal Server Error"), Fault::Later("the server has trouble"));
        let source = Arc::new(serde_json::from_str::<u8>("x").unwrap_err());
        let raw = "<html>42:secret".into();
        case(RequestError::InvalidJson { source, raw }, Fault::Later("the answer could not be read"));
    }
}
