//! The link behind a label's code.

use thiserror::Error;

/// A link that no bot could be reached by.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum NoLink {
    #[error("\"{0}\" is no bot's name; 5 to 32 letters, digits and underscores expected")]
    Bot(String),
    #[error("\"{0}\" can't stand in a link; 1 to 64 letters, digits, hyphens and underscores expected")]
    Payload(String),
}

/// The link that opens the bot's chat and hands it a word to start with: `https://t.me/BOT?start=PAYLOAD`.
/// The Bot API's "deep linking": letters, digits, `_` and `-`, up to 64 of them.
///
/// # Errors
/// [`NoLink`] when the bot's name or the payload has another sign or another length.
pub fn deep_link(bot: &str, payload: &str) -> Result<String, NoLink> {
    let plain = |text: &str, more: &[u8]| text.bytes().all(|b| b.is_ascii_alphanumeric() || more.contains(&b));
    if !(5..=32).contains(&bot.len()) || !plain(bot, b"_") {
        return Err(NoLink::Bot(bot.to_owned()));
    }
    if !(1..=64).contains(&payload.len()) || !plain(payload, b"_-") {
        return Err(NoLink::Payload(payload.to_owned()));
    }
    Ok(format!("https://t.me/{bot}?start={payload}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_the_platform_passes_on() {
        assert_eq!(deep_link("rooftend_bot", "bed-aZ09_-").unwrap(), "https://t.me/rooftend_bot?start=bed-aZ09_-");
        for payload in ["", "bed/1", "bed 1", "क", "a+b", &"a".repeat(65)] {
            assert!(deep_link("rooftend_bot", payload).is_err(), "{payload}");
        }
        assert!(deep_link("rooftend_bot", &"a".repeat(64)).is_ok());
        for bot in ["", "bot", "my-bot-name", "https://t.me/x_bot", &"b".repeat(33)] {
            assert!(deep_link(bot, "bed-1").is_err(), "{bot}");
        }
    }
}
