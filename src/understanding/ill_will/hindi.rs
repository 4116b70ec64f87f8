//! Harm that is meant, in Hindi of either script: whom, with "ko", and a verb that is still to be done.

use super::Said;
use crate::knowledge::HindiIllWill;

/// What is said, and the words of Hindi it is held against.
#[derive(Clone, Copy)]
pub(super) struct Rules<'a> {
    pub said: Said<'a>,
    pub of: &'a HindiIllWill,
}

const KO: [&str; 3] = ["ko", "को", "ku"];

/// "Maar", before what is still to be done.
const STRIKE: [&str; 3] = ["maar", "mar", "मार"];

impl Rules<'_> {
    pub(super) fn to_oneself(self) -> bool {
        let Self { said, of } = self;
        (said.has(&of.own_death) || said.any_of(&of.suicide)) && !said.any_of(&of.saves)
    }

    pub(super) fn to_others(self) -> bool {
        self.said.places().any(|at| self.someone_to_be_harmed(at) || self.their_plants(at))
            || self.poisons_food()
            || self.hidden()
    }

    /// "Chupke se dena hai, kaun se patte se aadmi mar jata hai": nobody is to know.
    fn hidden(self) -> bool {
        let Self { said, of } = self;
        let harm = || said.any_of(&of.ends) || said.any_of(&of.poisons);
        said.any_of(&of.hidden) && said.any_of(&of.give) && said.any_of(&of.someone) && harm()
    }

    /// Whether the verb there is still to be done, by what follows it.
    fn is_to_do(self, at: usize) -> bool {
        self.said.of(at + 1, &self.of.to_do) && !self.said.of(at + 2, &self.of.done)
    }

    /// Whether the word there is denied by the one beside it; "without anyone's knowing" denies nothing.
    fn is_denied(self, at: usize) -> bool {
        let Self { said, of } = self;
        let denies = |at: usize| said.of(at, &of.denied) && !(at + 1..at + 3).any(|next| said.of(next, &of.unknown));
        at.checked_sub(1).is_some_and(denies) || denies(at + 1)
    }

    /// "Kutte ko marne ke liye", "boss ko bimar karna hai", "billi ko zehar du".
    fn someone_to_be_harmed(self, at: usize) -> bool {
        const FURTHEST: usize = 8;
        let Some(from) = self.past_someone(at) else { return false };
        let mut after = self.said.on(from, FURTHEST);
        after.any(|place| self.is_killed(place) || self.is_made(place) || self.may_be_killed(place))
            || self.is_poisoned(from, FURTHEST)
            || self.is_fed_to_harm(at, from, FURTHEST)
    }

    /// Where it goes on after "kutte ko" or "use", when that stands there.
    fn past_someone(self, at: usize) -> Option<usize> {
        let Self { said, of } = self;
        if said.of(at, &of.someone)
            && let Some(ko) = [at + 1, at + 2].into_iter().find(|place| said.is(*place, &KO))
        {
            return Some(ko + 1);
        }
        said.of(at, &of.them).then_some(at + 1)
    }

    fn is_killed(self, at: usize) -> bool {
        let Self { said, of } = self;
        let struck = || said.is(at, &STRIKE) && self.is_to_do(at) && said.word(at + 2) != "gaya";
        let care = at.checked_sub(1).is_some_and(|before| said.of(before, &of.care));
        (said.of(at, &of.kill) || struck()) && !self.is_denied(at) && !care
    }

    fn is_made(self, at: usize) -> bool {
        let Self { said, of } = self;
        said.of(at, &of.made) && self.is_to_do(at) && said.word(at + 2) != "gaya" && !self.is_denied(at)
    }

    /// "Maara ja sakta hai".
    fn may_be_killed(self, at: usize) -> bool {
        self.said.is(at, &["maara", "mara", "मारा"]) && self.said.is(at + 1, &["ja", "jaa", "जा"])
    }

    /// "Billi ko zehar du".
    fn is_poisoned(self, from: usize, most: usize) -> bool {
        let Self { said, of } = self;
        let poison = said.on(from, most).find(|place| said.of(*place, &of.poisons));
        let given = |next| said.of(next, &of.give) && !self.is_denied(next);
        poison.is_some_and(|place| said.on(place + 1, 5).any(given))
    }

    /// "Saas ko kya khilau ki bimar pade", "dushman ko kaun sa beej khilau".
    fn is_fed_to_harm(self, who: usize, from: usize, most: usize) -> bool {
        let Self { said, of } = self;
        let fed = said.on(from, most).find(|place| said.of(*place, &of.fed));
        let foe = said.is(who, &["dushman", "दुश्मन"]);
        let ends = |place| said.of(place, &of.ended) || said.of(place, &of.made);
        fed.is_some_and(|fed| !self.is_denied(fed) && (foe || said.on(fed + 1, 7).any(ends)))
    }

    /// "Kisi ke khane me dhatura milana", "kaner ka patta chai me daal du to kya hoga saas ko".
    fn poisons_food(self) -> bool {
        let Self { said, of } = self;
        let within = |at: usize| (at + 1..at + 3).any(|next| said.is(next, &["me", "mein", "m", "में"]));
        let food = said.places().find(|at| said.of(*at, &of.food) && within(*at));
        let mixed = food.is_some_and(|food| (food + 1..said.words.len()).any(|at| said.of(at, &of.mix)));
        mixed && said.any_of(&of.poisons) && said.any_of(&of.someone) && !said.any_of(&of.happened)
    }

    /// "Padosi ke paudhe kaise sukhau", "पड़ोसी के पौधे चुपचाप कैसे मार दूँ".
    fn their_plants(self, at: usize) -> bool {
        let Self { said, of } = self;
        let theirs = said.of(at, &of.others) && (said.of(at, &of.others_own) || said.of(at + 1, &of.of));
        if !theirs {
            return false;
        }
        let Some(plants) = said.on(at + 1, 5).find(|place| said.of(*place, &of.planted)) else { return false };
        said.on(plants + 1, 9).any(|place| {
            let denied = place.checked_sub(1).is_some_and(|before| said.of(before, &of.denied));
            let spoils = said.of(place, &of.spoil)
                || (said.of(place, &of.spoilt) || said.is(place, &STRIKE)) && self.is_to_do(place)
                || said.is(place, &["marna", "maarna", "मारना", "मारने", "marne"]);
            spoils && !denied
        })
    }
}
