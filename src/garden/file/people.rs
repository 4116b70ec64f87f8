//! `[[people]]`.

use super::{Reader, Table};
use crate::garden::id::PersonId;
use crate::garden::person::{Person, Role, Speaks};
use std::ops::Range;
use toml::de::DeTable;

const KEYS: [&str; 5] = ["id", "name", "role", "sites", "speaks"];

impl Reader<'_> {
    pub(super) fn person(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let notes = &mut self.notes;
        let table = Table::new("person", table, span, &KEYS, notes);
        for (key, expected) in [("id", "\"meera\""), ("name", "\"Meera\""), ("role", "\"client\"")] {
            if !table.has(key) {
                table.missing(key, expected, notes);
            }
        }
        let id = table.parsed::<PersonId>("id", "meera", notes);
        let name = table.text("name", "Meera", notes);
        let role =
            table.word("role", &Role::ALL.iter().map(|role| role.word()).collect::<Vec<_>>(), Role::with_word, notes);
        let tags: Vec<_> = Speaks::ALL.iter().map(|speaks| speaks.word()).collect();
        let speaks = table.word("speaks", &tags, Speaks::with_word, notes);
        let named = table.texts("sites", "[\"roof-12\"]", notes);
        let sites = named.into_iter().filter_map(|site| self.known_site(site)).collect();
        let Some(id) = id else {
            self.in_doubt = true;
            return None;
        };
        self.people.insert(id.value.clone());
        let person = Person { id: id.value, name: name?.value.to_owned(), role: role?, sites, speaks };
        let what = format!("person \"{}\"", person.id);
        self.add(person, &what, id.span, "another id");
        Some(())
    }
}
