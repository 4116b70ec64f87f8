//! What everybody and every site is called: gathered once, whoever asks. Whether a hit may be told of is asked anew each
//! time, of the rights of whoever asks.

use super::gazetteer::Named;
use super::phrasebook::{By, Forms, Hit, Spelling, compared};
use crate::garden::rights::may_see_site;
use crate::garden::{Person, PersonId, Role, Site, SiteId};
use crate::knowledge::Ordinary;
use crate::script::Language;
use rustc_hash::FxHashMap;
use std::ops::Range;

/// Shorter words of a person's name are said of other things.
const SHORTEST_NAME: usize = 4;

/// The names of all people and sites of a store.
#[derive(Debug, Default)]
pub struct Everyone {
    english: FxHashMap<String, Vec<Name>>,
    hindi: FxHashMap<String, Vec<Name>>,
    holders: Vec<Holder>,
    /// Of how many words the longest name is.
    longest: usize,
}

/// A name as it is spelled, and whose it is: places among the holders.
#[derive(Debug)]
struct Name {
    spelling: Spelling,
    holders: Vec<usize>,
}

/// Who or what is called so.
#[derive(Debug)]
enum Holder {
    Site(SiteId),
    Client(PersonId, Vec<SiteId>),
    /// One of the crew, of whom anyone may speak.
    Crew,
    /// Nobody may be told of it.
    Hidden,
}

/// What a name means to someone, the likeliest first: a site of her own is meant rather than someone who lives there,
/// and both rather than what she may not see.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Rank {
    OwnSite,
    LivesThere,
    Unseen,
}

impl Everyone {
    /// Everybody who lives in a garden and what the gardens are called. Of a person's name each word counts, unless it
    /// is short or an everyday word.
    #[must_use]
    pub fn of(people: &[Person], sites: &[Site], ordinary: &Ordinary) -> Self {
        let mut all = Self::default();
        for site in sites {
            let holder = all.holder(Holder::Site(site.id.clone()));
            all.add(&site.name, holder);
            all.add(site.id.as_str(), holder);
        }
        for person in people {
            let holder = all.holder(match person.role {
                Role::Client => Holder::Client(person.id.clone(), person.sites.clone()),
                Role::Gardener | Role::Owner => Holder::Crew,
            });
            let told = |word: &&str| word.chars().count() >= SHORTEST_NAME && !ordinary.is(&word.to_lowercase());
            person.name.split_whitespace().filter(told).for_each(|word| all.add(word, holder));
        }
        all
    }

    /// Names of which nobody may be told.
    #[must_use]
    pub fn hidden(names: &[String]) -> Self {
        let mut all = Self::default();
        let holder = all.holder(Holder::Hidden);
        names.iter().for_each(|name| all.add(name, holder));
        all
    }

    fn holder(&mut self, holder: Holder) -> usize {
        self.holders.push(holder);
        self.holders.len() - 1
    }

    fn add(&mut self, name: &str, holder: usize) {
        // "roof-12" is written for "roof 12".
        let name = name.replace('-', " ");
        // No stem makes "Lakshmi" of "Lakshmi's".
        let owning = format!("{name}'s");
        for (language, name) in [(Language::En, &owning), (Language::En, &name), (Language::HiLatn, &name)] {
            let map = if language == Language::En { &mut self.english } else { &mut self.hindi };
            // What a person is called may be any word.
            let (words, spelling) = compared(name, language, By::Stem, &Ordinary::default());
            // A word of another script has no form here: a name with one would match any such word.
            if words.is_empty() || words.iter().any(String::is_empty) {
                continue;
            }
            self.longest = self.longest.max(words.len());
            let alike = map.entry(words.join(" ")).or_default();
            match alike.iter_mut().find(|name| name.spelling == spelling) {
                Some(name) if name.holders.contains(&holder) => {}
                Some(name) => name.holders.push(holder),
                None => alike.push(Name { spelling, holders: vec![holder] }),
            }
        }
    }

    /// The names in a text, with what each means to this person.
    pub(super) fn find(&self, forms: &Forms, who: Option<&Person>) -> Vec<(Rank, Hit<Named>)> {
        let mut all = Vec::new();
        self.each(forms, |span, name| {
            let hits = self.meant(name, who).into_iter();
            all.extend(hits.map(|(rank, meaning)| (rank, Hit { span: span.clone(), meaning, exact: true })));
        });
        all
    }

    /// Whether one of the crew is named.
    pub(super) fn names_crew(&self, forms: &Forms) -> bool {
        let mut named = false;
        self.each(forms, |_, name| {
            let mut holders = name.holders.iter().filter_map(|holder| self.holders.get(*holder));
            named |= holders.any(|holder| matches!(holder, Holder::Crew));
        });
        named
    }

    /// Goes through the names that stand in a text.
    fn each(&self, forms: &Forms, mut each: impl FnMut(Range<usize>, &Name)) {
        for start in 0..forms.len() {
            for (map, english) in [(&self.english, true), (&self.hindi, false)] {
                for (end, words) in self.spans(forms, english, start) {
                    let names = map.get(&words).into_iter().flatten();
                    let so = |name: &&Name| name.spelling.is_that(forms, start, forms.fits(english), |_| false);
                    names.filter(so).for_each(|name| each(start..end, name));
                }
            }
        }
    }

    /// The words from this token on, as many as a name may have, and where they end; hyphens between them are left out.
    fn spans(&self, forms: &Forms, english: bool, start: usize) -> Vec<(usize, String)> {
        let (stems, mut said, mut spans) = (forms.stems(english), String::new(), Vec::new());
        for end in start..forms.len() {
            let stem = stems.get(end).map_or("", String::as_str);
            if stem.is_empty() && end > start && forms.written(end) == "-" {
                continue;
            }
            if stem.is_empty() || spans.len() == self.longest {
                break;
            }
            if !said.is_empty() {
                said.push(' ');
            }
            said.push_str(stem);
            spans.push((end + 1, said.clone()));
        }
        spans
    }

    /// What a name means to this person: the likeliest of all who are called so. Her own name means nobody else.
    fn meant(&self, name: &Name, who: Option<&Person>) -> Option<(Rank, Named)> {
        let holders = name.holders.iter().filter_map(|holder| self.holders.get(*holder));
        let meant =
            holders.filter_map(|holder| match holder {
                Holder::Crew => None,
                Holder::Client(id, _) if who.is_some_and(|who| who.id == *id) => None,
                Holder::Site(site) if may_see_site(who, site) => Some((Rank::OwnSite, Named::Site(site.clone()))),
                Holder::Client(_, sites) => {
                    let seen = sites.iter().find(|site| may_see_site(who, site));
                    Some(seen.map_or((Rank::Unseen, Named::SomeoneElse), |site| {
                        (Rank::LivesThere, Named::Site(site.clone()))
                    }))
                }
                Holder::Site(_) | Holder::Hidden => Some((Rank::Unseen, Named::SomeoneElse)),
            });
        meant.min_by_key(|(rank, _)| *rank)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::script::Text;
    use crate::understanding::phrasebook::without_overlaps;

    fn site(id: &str, name: &str) -> Site {
        let json = serde_json::json!({
            "id": id, "name": name, "latitude_deg": 21.1, "longitude_deg": 79.1, "elevation_m": 310.0,
            "timezone": "Asia/Kolkata"
        });
        serde_json::from_value(json).unwrap()
    }

    fn person(id: &str, name: &str, role: Role, sites: &[&str]) -> Person {
        let sites = sites.iter().map(|site| SiteId::new(site).unwrap()).collect();
        Person { id: PersonId::new(id).unwrap(), name: name.into(), role, sites, speaks: None }
    }

    /// What a text names for this person: places, and "?" for what is not told of.
    fn found(text: &str, who: Option<&Person>) -> Vec<String> {
        let people = [
            person("meera", "Meera K", Role::Client, &["roof-12"]),
            person("farid", "Farid", Role::Client, &["terrace-3"]),
            person("sunita", "Sunita", Role::Gardener, &["roof-12"]),
        ];
        let sites = [site("roof-12", "Roof 12"), site("terrace-3", "Farid's terrace")];
        let everyone = Everyone::of(&people, &sites, &Ordinary::default());
        let mut all = everyone.find(&Forms::of(&Text::read(text)), who);
        all.sort_by_key(|(rank, _)| *rank);
        let hits = without_overlaps(all.into_iter().map(|(_, hit)| hit).collect());
        hits.into_iter()
            .map(|hit| match hit.meaning {
                Named::Site(site) => site.to_string(),
                _ => "?".to_owned(),
            })
            .collect()
    }

    #[test]
    fn what_a_name_means_hangs_on_who_asks() {
        let text = "the box on roof 12 and farid's terrace";
        let owner = person("asha", "Asha", Role::Owner, &[]);
        let (meera, sunita) = (
            person("meera", "Meera K", Role::Client, &["roof-12"]),
            person("sunita", "Sunita", Role::Gardener, &["roof-12"]),
        );
        assert_eq!(found(text, Some(&owner)), ["roof-12", "terrace-3"]);
        assert_eq!(found(text, Some(&meera)), ["roof-12", "?"]);
        assert_eq!(found(text, Some(&sunita)), ["roof-12", "?"]);
        assert_eq!(found(text, None), ["?", "?"]);
    }

    #[test]
    fn people_are_called_by_their_names() {
        let sunita = person("sunita", "Sunita", Role::Gardener, &["roof-12"]);
        let meera = person("meera", "Meera K", Role::Client, &["roof-12"]);
        assert_eq!(found("water for meera", Some(&sunita)), ["roof-12"]);
        assert_eq!(found("water for meera", Some(&meera)), [""; 0], "her own name means nobody else");
        assert_eq!(found("फरीद की भिंडी", Some(&meera)), ["?"]);
        assert_eq!(found("what does sunita say", Some(&meera)), [""; 0], "the crew is spoken of freely");
    }

    #[test]
    fn the_crew_is_known_by_name_in_both_scripts() {
        let people = [
            person("ravi", "Ravi", Role::Gardener, &["roof-12"]),
            person("meera", "Meera", Role::Client, &["roof-12"]),
        ];
        let everyone = Everyone::of(&people, &[], &Ordinary::default());
        let named = |text: &str| everyone.names_crew(&Forms::of(&Text::read(text)));
        assert!(["get me Ravi on the phone", "ravi ko bhejo", "रवि को भेज दीजिए"].into_iter().all(named));
        assert!(!["meera ko bhejo", "what to sow in the rabi season", "रविवार को पानी दिया"].into_iter().any(named));
    }

    #[test]
    fn a_hyphen_parts_words_as_a_space_does() {
        assert_eq!(found("roof-12 ka box", None), ["?"]);
        assert_eq!(found("roof 121", None), [""; 0]);
    }
}
