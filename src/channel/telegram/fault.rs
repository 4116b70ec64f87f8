//! What a failed call means, without the address (and so the token) or anyone's words that its error may hold.

use std::time::Duration;

/// An edit that would change nothing.
pub const SAYS_SO_ALREADY: &str = "the message says so already";
/// An edit of a message that is gone or too old.
pub const STANDS_NO_MORE: &str = "the message can be changed no more";

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
    pub fn of_network(fault: &reqwest::Error) -> Self {
        if fault.is_timeout() {
            Self::Later("no answer in time")
        } else if fault.is_connect() {
            Self::Later("no connection")
        } else {
            Self::Later("the connection broke")
        }
    }

    /// The first word of a description stands for its number.
    pub fn of_text(text: &str) -> Self {
        if text.starts_with("Forbidden") {
            Self::ShutOut
        } else if text.starts_with("Bad Request") {
            Self::Refused(refusal(text))
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

/// What a "Bad Request" was about; the platform tells edits apart by their words alone.
fn refusal(text: &str) -> &'static str {
    const GONE: [&str; 4] =
        ["message to edit not found", "message can't be edited", "MESSAGE_ID_INVALID", "message identifier is not"];
    if text.contains("message is not modified") {
        SAYS_SO_ALREADY
    } else if GONE.iter().any(|words| text.contains(words)) {
        STANDS_NO_MORE
    } else {
        "bad request"
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(text: &str, expected: Fault) {
        assert_eq!(Fault::of_text(text), expected);
        assert!(!Fault::of_text(text).word().contains("42:secret"));
    }

    #[test]
    fn each_description_has_its_meaning() {
        case("Forbidden: bot can't initiate conversation with a user", Fault::ShutOut);
        case("Forbidden: user is deactivated", Fault::ShutOut);
        case("Bad Request: something new; 42:secret", Fault::Refused("bad request"));
        case("Bad Request: message can't be edited", Fault::Refused(STANDS_NO_MORE));
        case("Bad Request: MESSAGE_ID_INVALID", Fault::Refused(STANDS_NO_MORE));
        case("Conflict: can't use getUpdates method while webhook is active; 42:secret", Fault::Webhook);
        case("Conflict: terminated by other getUpdates request", Fault::Rival);
        case("Internal Server Error", Fault::Later("the server has trouble"));
    }
}
