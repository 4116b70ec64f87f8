//! What the menu of a chat offers, by role and in the person's language.

use super::Reception;
use crate::desk::house::House;
use crate::garden::Role;
use crate::script::Language;
use crate::wording::filled;

/// Those who go round.
const CREW: &[Role] = &[Role::Owner, Role::Gardener];

/// Every command: its word, its phrase, and who has it.
const COMMANDS: [(&str, &str, &[Role]); 15] = [
    ("help", "bot-menu-help", &[]),
    ("round", "menu-round", CREW),
    ("note", "menu-note", CREW),
    ("newsite", "menu-newsite", CREW),
    ("codes", "menu-codes", CREW),
    ("newcode", "menu-newcode", CREW),
    ("visits", "menu-visits", &[Role::Owner]),
    ("questions", "bot-menu-questions", &[Role::Owner, Role::Gardener]),
    ("invite", "bot-menu-invite", &[Role::Owner]),
    ("people", "bot-menu-people", &[Role::Owner]),
    ("remove", "bot-menu-remove", &[Role::Owner]),
    ("language", "bot-menu-language", &[Role::Owner, Role::Gardener, Role::Client]),
    ("me", "bot-menu-me", &[Role::Owner, Role::Gardener, Role::Client]),
    ("export", "bot-menu-export", &[Role::Owner, Role::Gardener, Role::Client]),
    ("forget", "bot-menu-forget", &[Role::Owner, Role::Gardener, Role::Client]),
];

/// The menu of a role; a stranger's has what everyone may do.
#[must_use]
pub fn menu(house: &House, role: Option<Role>, language: Language) -> Vec<(String, String)> {
    let offered = COMMANDS.iter().filter(|(_, _, of)| of.is_empty() || role.is_some_and(|role| of.contains(&role)));
    offered.map(|(command, phrase, _)| ((*command).to_owned(), filled(house.phrases(language), phrase, &[]))).collect()
}

/// A menu for people whose app speaks this language; None for all others.
pub type MenuFor = (Option<&'static str>, Vec<(String, String)>);

impl Reception {
    /// What the menu offers to whoever has no menu of their own, by the language of their app.
    #[must_use]
    pub fn menus_of_strangers(&self) -> [MenuFor; 2] {
        [(None, menu(&self.house, None, Language::En)), (Some("hi"), menu(&self.house, None, Language::Hi))]
    }
}
