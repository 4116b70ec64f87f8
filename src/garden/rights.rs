//! Who may see and do what, in one place. A stranger, someone whom the store does not know, has no
//! [`Person`] and so no right to anything stored.

use super::id::{BedId, PersonId, SiteId};
use super::person::{Person, Role};

/// May this person see a site with its beds and what was done there? An owner sees every site, a
/// gardener those given, a client those that are theirs.
#[must_use]
pub fn may_see_site(person: Option<&Person>, site: &SiteId) -> bool {
    person.is_some_and(|person| match person.role {
        Role::Owner => true,
        Role::Gardener | Role::Client => person.sites.contains(site),
    })
}

/// May this person record work, looks, plantings or a new bed there? Whoever sees a site may tell
/// what they did in it.
#[must_use]
pub fn may_record(person: Option<&Person>, bed: &BedId) -> bool {
    may_see_site(person, bed.site())
}

/// May this person read the questions that wait, and answer them? The crew may, a client may not.
#[must_use]
pub fn may_see_questions(person: Option<&Person>) -> bool {
    person.is_some_and(|person| matches!(person.role, Role::Owner | Role::Gardener))
}

/// May this person see what another said and asked? Everyone their own, the owner all.
#[must_use]
pub fn may_see_person(person: Option<&Person>, other: &PersonId) -> bool {
    person.is_some_and(|person| person.role == Role::Owner || person.id == *other)
}

/// May this person add people and sites, or take them away? Only the owner.
#[must_use]
pub fn may_manage(person: Option<&Person>) -> bool {
    person.is_some_and(|person| person.role == Role::Owner)
}

/// May this person say where a site lies? The owner, and the gardeners who look after it.
#[must_use]
pub fn may_place_site(person: Option<&Person>, site: &SiteId) -> bool {
    may_see_questions(person) && may_see_site(person, site)
}

/// May this person answer what was asked by someone with these sites? The owner any question, a gardener
/// those of the sites she looks after; a stranger's (no sites) is the owner's.
#[must_use]
pub fn may_answer(person: Option<&Person>, sites_of_asker: &[SiteId]) -> bool {
    may_manage(person) || may_see_questions(person) && sites_of_asker.iter().any(|site| may_see_site(person, site))
}

/// May this person go round the sites they see? The crew may.
#[must_use]
pub fn may_go_round(person: Option<&Person>) -> bool {
    may_see_questions(person)
}

/// May this person add a site? The crew may: a gardener's new site is given to her.
#[must_use]
pub fn may_add_site(person: Option<&Person>) -> bool {
    may_see_questions(person)
}

/// May this person work for the crew at a site: write to those who live there, make and take back the codes on its
/// beds? The owner, and the gardeners who look after it.
#[must_use]
pub fn may_work_at(person: Option<&Person>, site: &SiteId) -> bool {
    may_go_round(person) && may_see_site(person, site)
}

/// May this person see which visits were made and missed? Only the owner.
#[must_use]
pub fn may_see_visits(person: Option<&Person>) -> bool {
    may_manage(person)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What one with this role, given the site "given", may do: see it, see another, record in it,
    /// record in another, see the queue, see another person, manage; place it, place another; answer one
    /// of its people, one of another's, a stranger.
    #[track_caller]
    fn case(role: Option<Role>, expected: [bool; 7], later: [bool; 5]) {
        let site = |id: &str| SiteId::new(id).unwrap();
        let bed = |id: &str| BedId::new(id).unwrap();
        let person = role.map(|role| Person {
            id: PersonId::new("someone").unwrap(),
            name: "Someone".into(),
            role,
            sites: vec![site("given")],
            speaks: None,
        });
        let person = person.as_ref();
        let got = [
            may_see_site(person, &site("given")),
            may_see_site(person, &site("other")),
            may_record(person, &bed("given/box")),
            may_record(person, &bed("other/box")),
            may_see_questions(person),
            may_see_person(person, &PersonId::new("another").unwrap()),
            may_manage(person),
        ];
        assert_eq!(got, expected, "{role:?}");
        let got = [
            may_place_site(person, &site("given")),
            may_place_site(person, &site("other")),
            may_answer(person, &[site("given")]),
            may_answer(person, &[site("other")]),
            may_answer(person, &[]),
        ];
        assert_eq!(got, later, "{role:?}");
    }

    #[test]
    fn each_role() {
        case(None, [false, false, false, false, false, false, false], [false; 5]);
        case(Some(Role::Client), [true, false, true, false, false, false, false], [false; 5]);
        case(Some(Role::Gardener), [true, false, true, false, true, false, false], [true, false, true, false, false]);
        case(Some(Role::Owner), [true, true, true, true, true, true, true], [true; 5]);
    }

    /// Go round, add a site, see the visits; work at the given site, at another.
    #[test]
    fn the_work_of_the_crew() {
        let site = |id: &str| SiteId::new(id).unwrap();
        let got = |role| {
            let person = Person {
                id: PersonId::new("someone").unwrap(),
                name: "Someone".into(),
                role,
                sites: vec![site("given")],
                speaks: None,
            };
            let person = Some(&person);
            let at = |id: &str| may_work_at(person, &site(id));
            [may_go_round(person), may_add_site(person), may_see_visits(person), at("given"), at("other")]
        };
        assert_eq!(got(Role::Client), [false; 5]);
        assert_eq!(got(Role::Gardener), [true, true, false, true, false]);
        assert_eq!(got(Role::Owner), [true; 5]);
        assert!(!may_go_round(None) && !may_add_site(None) && !may_see_visits(None));
        assert!(!may_work_at(None, &site("given")));
    }

    #[test]
    fn everyone_sees_their_own_words() {
        let id = PersonId::new("meera").unwrap();
        let meera = Person { id: id.clone(), name: "Meera".into(), role: Role::Client, sites: vec![], speaks: None };
        assert!(may_see_person(Some(&meera), &id));
        assert!(!may_see_person(None, &id));
    }
}
