//! Harm that is meant, in English: a verb of harm with its object, and who is to do it.

use super::Said;
use crate::knowledge::EnglishIllWill;

/// What is said, and the words of English it is held against.
#[derive(Clone, Copy)]
pub(super) struct Rules<'a> {
    pub said: Said<'a>,
    pub of: &'a EnglishIllWill,
}

impl Rules<'_> {
    pub(super) fn to_oneself(self) -> bool {
        self.said.has(&self.of.own_death)
    }

    pub(super) fn to_others(self) -> bool {
        let Self { said, of } = self;
        said.places().any(|at| said.of(at, &of.harm) && self.is_meant(at) && self.hits_someone(at + 1))
            || said.places().any(|at| said.of(at, &of.spoil) && self.is_meant(at) && self.hits_theirs(at + 1))
            || !said.any_of(&of.happened)
                && (said.places().any(|at| self.makes_ill(at))
                    || self.poisons_food()
                    || self.hidden_harm()
                    || self.theirs_so_that_nothing_lives()
                    || self.silenced()
                    || self.done_away_with())
    }

    /// The asker is who does it: "how to", "can I", an order at a beginning; not "will it", "enough to", "afraid to".
    fn is_meant(self, at: usize) -> bool {
        const NOUN: [&str; 11] = ["a", "the", "of", "any", "some", "what", "which", "rat", "this", "his", "her"];
        const JOINED: [&str; 8] = ["for", "of", "by", "about", "on", "am", "im", "in"];
        let Self { said, of } = self;
        if said.back_of(at, 6, &of.denied) {
            return false;
        }
        if said.before(at, 1) == "to" {
            let going = said.before(at, 2) == "going" && said.back_is(at, 5, &["i", "we", "im"]);
            return going || at < 2 || !said.of(at - 2, &of.no_wish);
        }
        if said.word(at).ends_with("ing") {
            return at == 0 || JOINED.contains(&said.before(at, 1)) && !said.back_of(at, 3, &of.it);
        }
        let noun = NOUN.contains(&said.before(at, 1));
        let asker = said.back_of(at, 3, &of.asker) && !said.back_of(at, 2, &of.it);
        !noun && (asker || self.is_ordered(at)) || self.would_do_it(at)
    }

    /// "Please poison", "then kill", or at the beginning of a sentence.
    fn is_ordered(self, at: usize) -> bool {
        const BEFORE: [&str; 6] = ["please", "pls", "plz", ",", "then", "secretly"];
        at == 0 || self.said.ends(at - 1) || self.said.is(at - 1, &BEFORE)
    }

    /// "Which plant would kill a man", "which spray will kill my neighbour's cat": who fears it says so.
    fn would_do_it(self, at: usize) -> bool {
        let said = self.said;
        let person = said.on_is(at + 1, 3, &["man", "person", "someone", "human", "somebody", "him"]);
        let of = self.of;
        let worries = said.any_of(&of.denied) || said.any_is(&["if", "worry", "by", "accident"]);
        let theirs = !worries
            && said.is(at, &["kill", "murder"])
            && said.on(at + 1, 4).any(|place| {
                (said.of(place, &of.theirs) || said.is(place, &["neighbours", "neighbors"]))
                    && said.on_of(place + 1, 3, &of.animals)
            });
        ["would", "can", "will", "could", "that"].contains(&said.before(at, 1))
            && said.back_is(at, 5, &["which", "what"])
            && (person || theirs)
    }

    /// Someone or an animal is the object; what stands on them is not: "kill my dog's ticks".
    fn hits_someone(self, from: usize) -> bool {
        const FURTHEST: usize = 6;
        let Self { said, of } = self;
        for at in said.on(from, FURTHEST) {
            let whole = said.of(at, &of.animals) || said.of(at, &of.people);
            let next = at + 1;
            let owner = said.word(next) == "s";
            let on_them = said.of(next, &of.on_them) || owner && said.of(next + 1, &of.on_them);
            let links = said.of(at, &of.links);
            // "Her" and "neighbours" go with what follows them.
            let named =
                |place| said.of(place, &of.animals) || said.of(place, &of.planted) || said.of(place, &of.on_them);
            let followed = links && said.on(next, 3).any(named);
            let plain = whole && !owner && !on_them && !said.of(next, &of.planted) && !followed;
            if plain && (!links || self.followed_by_nothing(next)) {
                return true;
            }
            if on_them || !(links || whole && owner || said.is(at, &["'", "-", "in", "law"])) {
                return false;
            }
        }
        false
    }

    /// Nothing that has a name follows: "kill her slowly", "poison my neighbour".
    fn followed_by_nothing(self, at: usize) -> bool {
        let said = self.said;
        at >= said.words.len() || said.ends(at) || said.of(at, &self.of.trails) || said.word(at) == ","
    }

    /// The plants of someone else are the object.
    fn hits_theirs(self, from: usize) -> bool {
        let Self { said, of } = self;
        let first = said.on(from, 4).find(|at| !said.of(*at, &of.before_theirs) && said.word(*at) != "s");
        first.is_some_and(|at| said.of(at, &of.theirs) && said.on_of(at + 1, 4, &of.planted))
    }

    /// "Make him sick", "get my boss ill", "knock a man out", "put the dog to sleep".
    fn makes_ill(self, at: usize) -> bool {
        let Self { said, of } = self;
        if !said.is(at, &["make", "makes", "making", "get", "knock", "put"]) {
            return false;
        }
        let someone =
            |place: &usize| said.of(*place, &of.people) || said.of(*place, &of.animals) || said.word(*place) == "them";
        let Some(who) = said.on(at + 1, 5).find(someone) else { return false };
        let after = |words: &[&str]| said.on_is(who + 1, 5, words);
        let ill = match said.word(at) {
            "knock" => after(&["out", "unconscious"]),
            "put" => after(&["sleep"]) && !after(&["mode"]),
            _ => said.on_of(who + 1, 5, &of.ill) || said.on_is(who + 1, 4, &["sleep"]),
        };
        let better = said.on_is(who + 1, 6, &["better", "well", "free", "of"]);
        ill && !better && !said.back_of(at, 6, &of.denied) && self.is_to_be_made_ill(at, who)
    }

    /// "Will it make my dog sick" fears it; "to make them ill" means it.
    fn is_to_be_made_ill(self, at: usize, who: usize) -> bool {
        let Self { said, of } = self;
        let before = said.before(at, 1);
        if before == "to" && ["enough", "likely", "going", "known"].contains(&said.before(at, 2)) {
            return false;
        }
        let asker = before == "to" || said.back_is(at, 3, &["i", "we"]) || at == 0;
        let would =
            ["would", "will", "can", "could", "that"].contains(&before) && said.back_is(at, 8, &["which", "what"]);
        let ours = said.on_is(at + 1, 2, &["my", "our", "me", "us"]);
        asker || would && (!ours || said.of(who, &of.rivals) || said.any_of(&of.secretly))
    }

    /// "Oleander in his food", "datura seeds in a curry for someone".
    fn poisons_food(self) -> bool {
        const APART: usize = 9;
        let Self { said, of } = self;
        let whose = |at| said.of(at, &of.theirs) || said.of(at, &of.people);
        let in_their_food = |at: usize| {
            let food = said.on(at + 1, APART).find(|place| said.of(*place, &of.food));
            food.is_some_and(|food| (food.saturating_sub(4)..food).any(whose))
        };
        let by_another = |at| {
            said.back_is(at, 4, &["put", "mixed", "added", "gave", "slipped"])
                && said.back_is(at, 6, &["someone", "somebody", "who", "they", "he", "she"])
        };
        (said.any_of(&of.secretly) || said.any_of(&of.mixes))
            && said.places().any(|at| said.of(at, &of.poisons) && in_their_food(at) && !by_another(at))
    }

    /// A word of harm, someone, and that nobody is to know.
    fn hidden_harm(self) -> bool {
        let Self { said, of } = self;
        let harm = said.any_of(&of.harm) || said.any_of(&of.ill) || said.any_of(&of.poisons);
        let someone = said.any_of(&of.people) || said.any_of(&of.animals);
        let feared = said.any_of(&of.denied) && !said.has(&of.without);
        harm && someone && said.any_of(&of.secretly) && !feared
    }

    /// "On my neighbour's plants at night so they die", "salt in the neighbour's beds so nothing grows".
    fn theirs_so_that_nothing_lives(self) -> bool {
        let Self { said, of } = self;
        let theirs =
            |at: &usize| said.of(*at, &of.theirs) && said.on_of(at + 1, 3, &of.planted) && said.word(*at) != "her";
        let so = said.places().find(theirs).and_then(|at| said.on(at, 14).find(|place| said.word(*place) == "so"));
        so.is_some_and(|so| said.on_of(so, 6, &of.dies) && !said.on_is(so, 6, &["my", "mine", "our", "ours"]))
    }

    /// "Get rid of my husband", "finish off my ex", "poisoned bait for dogs".
    fn done_away_with(self) -> bool {
        let Self { said, of } = self;
        let away = said.has(&of.away)
            && said.any_of(&of.foes)
            && !said.any_is(&["pests", "weeds", "ants", "aphids", "plants"]);
        // "Finish off next door's cat": the animal is the object.
        let off = |at: usize| said.is(at, &["finish", "finishing", "bump"]) && said.word(at + 1) == "off";
        let ended = !said.any_of(&of.denied) && said.places().any(|at| off(at) && self.is_the_object(at + 2));
        let bait = said.any_is(&["bait", "baits"])
            && said.any_is(&["poison", "poisoned", "poisonous", "lethal"])
            && said.any_of(&of.animals)
            && !said.any_of(&of.denied);
        away || ended || bait
    }

    /// "Feed that dog so it never barks again".
    fn silenced(self) -> bool {
        const ENDED: [&str; 5] = ["never", "dies", "die", "forever", "breathing"];
        let Self { said, of } = self;
        let given = said.places().find(|at| said.is(*at, &["feed", "give", "serve", "offer"]));
        self.sprayed_so_that_it_dies()
            || given.is_some_and(|at| {
                let someone = said.on_of(at + 1, 6, &of.animals) || said.on_of(at + 1, 6, &of.people);
                let so = said.on(at + 1, 14).find(|place| said.word(*place) == "so");
                someone && so.is_some_and(|so| said.on_is(so, 7, &ENDED))
            })
    }

    /// "What can I spray so next door's dog dies".
    fn sprayed_so_that_it_dies(self) -> bool {
        let Self { said, of } = self;
        let used =
            said.places().find(|at| said.is(*at, &["spray", "use", "put", "pour", "sprinkle", "throw", "plant"]));
        used.and_then(|at| said.on(at + 1, 8).find(|place| said.word(*place) == "so")).is_some_and(|so| {
            let creature = said.on(so + 1, 6).find(|at| said.of(*at, &of.animals) || said.of(*at, &of.people));
            let ours = creature.is_some_and(|at| said.back_is(at, 2, &["my", "our"]));
            let dies = creature.is_some_and(|at| said.on_is(at + 1, 4, &["dies", "die"]));
            dies && !ours && !said.any_of(&of.denied)
        })
    }

    /// An animal stands at this place, behind whose it is at most: "next door's cat", "the cats".
    fn is_the_object(self, from: usize) -> bool {
        const BEFORE: [&str; 9] = ["the", "that", "a", "this", "next", "door", "s", "'", "'s"];
        let Self { said, of } = self;
        let at = said.on(from, 5).find(|at| !(said.is(*at, &BEFORE) || said.of(*at, &of.theirs)));
        at.is_some_and(|at| said.of(at, &of.animals))
    }
}
