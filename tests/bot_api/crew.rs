//! The crew of the demo garden in their chats: who comes in how.

use super::{BotApi, Serving, rooftend};
use std::path::Path;

pub const ASHA: i64 = 101;
pub const MEERA: i64 = 88_102_455;
pub const RAVI: i64 = 103;

fn with_demo_garden(data: &Path) {
    let done = rooftend(data, &["import", "demo-data/garden.toml"]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
}

/// The code in a line or a message: what stands behind `/start`.
pub fn code(text: &str) -> String {
    text.split("/start ").last().unwrap().split_whitespace().next().unwrap().to_owned()
}

/// Starts with the demo garden, claimed by Asha.
pub fn claimed(data: &Path, api: &BotApi) -> Serving {
    claimed_with(data, api, &[])
}

/// The same with other settings.
pub fn claimed_with(data: &Path, api: &BotApi, more: &[(&str, &str)]) -> Serving {
    with_demo_garden(data);
    let serving = Serving::start(data, api, more);
    assert!(serving.line("Not claimed").contains("by Asha"));
    let claim = code(&serving.line("/start"));
    api.says(ASHA, &format!("/start {claim}"));
    api.expect(ASHA, "linked as Asha (owner)");
    serving
}

/// Asha invites someone the store knows, who comes in.
pub fn invited(api: &BotApi, id: &str, name: &str, account: i64) {
    api.says(ASHA, &format!("/invite {id}"));
    let invite = api.expect(ASHA, &format!("Code for {name}"));
    assert!(invite.text.contains("https://t.me/roof_test_bot?start="), "{}", invite.text);
    api.expect(ASHA, "is known already");
    api.says(account, &format!("/start {}", code(&invite.text)));
    api.expect(account, &format!("linked as {name}"));
    api.expect(ASHA, &format!("{name} ("));
}

pub fn stdout(data: &Path, arguments: &[&str]) -> String {
    let output = rooftend(data, arguments);
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}
