//! Work told without its verb, or far from it: "650 g tomatoes off the bag", "neem cake 50 g, east box, 14 may", "cut the
//! coriander yesterday", "put methi in the tray on Friday".

use super::deeds::{Deeds, counted};
use super::{Named, Told};
use crate::garden::JobKind;
use crate::knowledge::GrownFor;
use crate::quantity::UnitOf;
use crate::script::Language;
use std::ops::Range;

/// Marks and words at which what a verb governs ends.
const ENDS: [&str; 16] =
    [",", ".", "?", "!", ";", "।", "-", ":", "and", "but", "then", "so", "because", "after", "before", "when"];

/// Parts of a plant that are cut off it, and are no harvest.
const PARTS: [&str; 14] = [
    "leaves", "leaf", "branches", "branch", "tips", "tip", "shoots", "shoot", "stem", "stems", "roots", "flowers",
    "suckers", "runners",
];

impl Deeds<'_> {
    /// Work that is told plainly, though no word says it alone.
    pub(super) fn told_plainly(&self) -> Option<JobKind> {
        if self.asks {
            return None;
        }
        self.taken_from()
            .or_else(|| self.cut_down())
            .or_else(|| self.cut_behind())
            .or_else(|| self.lifted())
            .or_else(|| self.put_into())
            .or_else(|| self.moved_into())
            .or_else(|| self.seed_is_in())
            .or_else(|| self.had_theirs())
            .or_else(|| self.replaced())
            .or_else(|| self.eaten())
            .or_else(|| self.telegraphed())
    }

    /// Whether a name ends within so many tokens before a place, in the same clause.
    fn name_before(&self, at: usize, most: usize) -> bool {
        let near = |name: &Range<usize>| {
            name.end <= at
                && at - name.end <= most
                && (name.end..at).all(|place| !ENDS.contains(&self.text.normal(place)))
        };
        let of_beds = |name: &Named| matches!(name, Named::Crop(_) | Named::OwnBed(_) | Named::BedKind(_));
        self.places(of_beds).iter().any(near)
    }

    /// "Chillies had their mustard cake last saturday", "east box got its neem": what a crop or bed was given.
    fn had_theirs(&self) -> Option<JobKind> {
        const GOT: [&str; 3] = ["had", "got", "received"];
        const BEFORE: usize = 2;
        const AFTER: usize = 6;
        const ILLS: [&str; 10] =
            ["damage", "burn", "burns", "burnt", "marks", "spots", "stains", "leak", "logging", "stress"];
        if self.text.language != Language::En || self.is_to_come() {
            return None;
        }
        let claims = self.claims();
        let verbs: Vec<usize> = (0..self.text.tokens.len())
            .filter(|at| GOT.contains(&self.text.normal(*at)) && claims.is_made(&(*at..*at + 1)))
            .filter(|at| self.name_before(*at, BEFORE))
            .collect();
        let denied = |from: usize, to: usize| {
            self.told.iter().any(|hit| hit.meaning == Told::Not && from <= hit.span.start && hit.span.end <= to)
        };
        let given = |verb: usize, thing: &Range<usize>| {
            let one_clause = (verb..thing.start).all(|at| !ENDS.contains(&self.text.normal(at)));
            thing.start > verb
                && thing.start - verb <= AFTER
                && one_clause
                && !denied(verb, thing.start)
                && !ILLS.contains(&self.text.normal(thing.end))
        };
        let kinds = [JobKind::Feed, JobKind::Spray, JobKind::Water];
        let things = self.things().into_iter().filter(|(_, job)| kinds.contains(job));
        things.into_iter().find(|(thing, _)| verbs.iter().any(|verb| given(*verb, thing))).map(|(_, job)| job)
    }

    /// "Replaced the mint": another plant of it stands there now.
    fn replaced(&self) -> Option<JobKind> {
        const VERBS: [&str; 4] = ["replaced", "swapped", "replanted", "renewed"];
        const NEAR: usize = 3;
        if self.text.language != Language::En || self.is_to_come() || self.stuff() {
            return None;
        }
        let claims = self.claims();
        let verb = |at: &usize| {
            VERBS.contains(&self.text.normal(*at))
                && claims.is_made(&(*at..*at + 1))
                && self.is_of_a_whole_crop(*at, NEAR)
        };
        (0..self.text.tokens.len()).find(verb).map(|_| JobKind::Plant)
    }

    /// "Ate the basil today": the household picked it, where a verb of eating stands first or behind who ate.
    fn eaten(&self) -> Option<JobKind> {
        const NEAR: usize = 4;
        const WHO: [&str; 6] = ["i", "we", "family", "kids", "children", "just"];
        if self.text.language != Language::En || self.is_to_come() || self.stuff() {
            return None;
        }
        let claims = self.claims();
        let verb = |at: &usize| {
            let placed = at.checked_sub(1).is_none_or(|before| WHO.contains(&self.text.normal(before)));
            let ate = self.text.normal(*at) == "ate" && placed;
            ate && claims.is_made(&(*at..*at + 1)) && self.is_of_a_whole_crop(*at, NEAR)
        };
        let ails = [Told::Ails, Told::Creature].iter().any(|told| self.says(told));
        (0..self.text.tokens.len()).find(verb).filter(|_| !ails).map(|_| JobKind::Pick)
    }

    /// "2 mugs to the mint and 1 can to the tomato": so much for each, told without a verb.
    pub(super) fn handed_out(&self) -> bool {
        const EACH: [&str; 9] = ["daily", "every", "per", "day", "weekly", "needed", "enough", "roz", "for"];
        if self.asks || self.text.language != Language::En || self.is_to_come() {
            return false;
        }
        let general = (0..self.text.tokens.len()).any(|at| EACH.contains(&self.text.normal(at)));
        let names = self.places(|name| matches!(name, Named::Crop(_) | Named::OwnBed(_) | Named::BedKind(_)));
        let amount = |at: usize| {
            let vessel = self.told.iter().any(|hit| hit.meaning == Told::Vessel && hit.span.end == at);
            vessel || self.quantities.said.iter().any(|said| said.span.end == at)
        };
        let to = |at: usize| {
            let article = usize::from(matches!(self.text.normal(at + 1), "the" | "my" | "each" | "our"));
            let next = at + 1 + article;
            matches!(self.text.normal(at), "to" | "into")
                && amount(at - usize::from(at > 0 && self.text.normal(at - 1) == "each"))
                && names.iter().any(|name| name.start == next)
        };
        !general && (0..self.text.tokens.len()).any(to)
    }

    /// Whether a verb of English governs what stands further on in its clause: "gave the pot a handful of compost". What
    /// is done stands at either end of a note: "done: neem, tomato bag", "cake water for the bag done".
    pub(super) fn governs(&self, verb: &Range<usize>, thing: &Range<usize>) -> bool {
        const FURTHEST: usize = 9;
        let words: Vec<usize> =
            (0..self.text.tokens.len()).filter(|at| self.text.tokens.get(*at).is_some_and(|t| t.is_word())).collect();
        let at_an_end = words.first() == Some(&verb.start) || words.last().is_some_and(|last| verb.contains(last));
        const COMPLETED: [&str; 6] = ["done", "completed", "finished", "applied", "complete", "given"];
        // "Vermicompost two handfuls to every plant, finished".
        let before = verb.start.checked_sub(1).map_or("", |at| self.text.normal(at));
        let last = words.last().is_some_and(|last| verb.contains(last)) && matches!(before, "," | "-" | "." | ":");
        let completes = last && COMPLETED.contains(&self.text.normal(verb.start));
        let note = at_an_end && (completes || matches!(self.text.normal(verb.start), "done" | "hua" | "हुआ"));
        const GIVING: [&str; 13] = [
            "gave",
            "given",
            "put",
            "did",
            "applied",
            "added",
            "poured",
            "used",
            "mixed",
            "spread",
            "sprinkled",
            "scattered",
            "worked",
        ];
        let english = self.text.language == Language::En && GIVING.contains(&self.text.normal(verb.start));
        let ahead = verb.end <= thing.start && thing.start - verb.start <= FURTHEST;
        let one_clause = (verb.end..thing.start).all(|at| !ENDS.contains(&self.text.normal(at)));
        // "Neem spray on chilli and tomato done on 15th evening": names alone stand between.
        let behind = thing.end <= verb.start && verb.start - thing.end <= FURTHEST;
        let said =
            self.text.language == Language::En && !self.asks && COMPLETED.contains(&self.text.normal(verb.start));
        let names_alone = (thing.end..verb.start).all(|at| {
            let named = self.names.iter().any(|hit| hit.span.contains(&at));
            let small = matches!(
                self.text.normal(at),
                "on" | "the"
                    | "and"
                    | "for"
                    | "in"
                    | "to"
                    | "my"
                    | "both"
                    | "all"
                    | "is"
                    | "was"
                    | "over"
                    | "has"
                    | "been"
                    | "&"
            );
            named || small
        });
        note || english && ahead && one_clause || said && behind && names_alone
    }

    fn places(&self, what: impl Fn(&Named) -> bool) -> Vec<Range<usize>> {
        self.names.iter().filter(|hit| what(&hit.meaning)).map(|hit| hit.span.clone()).collect()
    }

    /// "650 g tomatoes off the bag", "thaile se aadha kilo tamatar": a crop's weight, or what was got, from its bed.
    fn taken_from(&self) -> Option<JobKind> {
        const ARTICLES: [&str; 6] = ["the", "my", "our", "that", "one", "this"];
        let crops = self.places(|name| matches!(name, Named::Crop(_)));
        let beds = self.places(|name| matches!(name, Named::OwnBed(_) | Named::BedKind(_)));
        if crops.is_empty() || self.stuff() || self.is_to_come() || !self.quantities.dimensions.is_empty() {
            return None;
        }
        let from = |bed: &Range<usize>| {
            let before = |back: usize| bed.start.checked_sub(back).map_or("", |at| self.text.normal(at));
            let article = usize::from(ARTICLES.contains(&before(1)));
            matches!(before(1 + article), "off" | "from") || matches!(self.text.normal(bed.end), "se" | "से")
        };
        let claims = self.claims();
        let got = self.told.iter().any(|hit| hit.meaning == Told::Got && claims.is_made(&hit.span));
        let taken = beds.iter().any(from) && (self.measures(UnitOf::Mass) || got);
        taken.then_some(JobKind::Pick)
    }

    /// Whether a crop, and no part of it, stands so near behind this word.
    fn is_of_a_whole_crop(&self, at: usize, near: usize) -> bool {
        let crops = self.places(|name| matches!(name, Named::Crop(_)));
        let crop = crops.iter().find(|crop| crop.start > at && crop.start - at <= near);
        crop.is_some_and(|crop| !PARTS.contains(&self.text.normal(crop.end)))
    }

    /// "Cut the coriander yesterday": the crop itself, on a day that has come.
    fn cut_down(&self) -> Option<JobKind> {
        const NEAR: usize = 4;
        if self.text.language != Language::En || !self.come || self.stuff() {
            return None;
        }
        let claims = self.claims();
        let cut = |at: &usize| {
            self.text.normal(*at) == "cut" && claims.is_made(&(*at..*at + 1)) && self.is_of_a_whole_crop(*at, NEAR)
        };
        (0..self.text.tokens.len()).find(cut).map(|_| JobKind::Pick)
    }

    /// "Coriander cut, second time, 3 bunches": a crop and what was done with it, as a note has it.
    fn cut_behind(&self) -> Option<JobKind> {
        let crops = self.places(|name| matches!(name, Named::Crop(_)));
        if self.stuff() || self.is_to_come() {
            return None;
        }
        let claims = self.claims();
        let ends = |at: usize| {
            let day = self.days.iter().any(|day| day.start == at);
            day || self.text.tokens.get(at).is_none_or(|token| !token.is_word() && token.number.is_none())
        };
        let cut = |crop: &Range<usize>| {
            let verb = crop.end..crop.end + 1;
            self.text.normal(crop.end) == "cut" && ends(verb.end) && claims.is_made(&verb)
        };
        crops.iter().any(cut).then_some(JobKind::Pick)
    }

    /// "Lifted all the garlic": what grows below ground is taken out of it whole.
    fn lifted(&self) -> Option<JobKind> {
        const VERBS: [&str; 3] = ["lifted", "forked", "dug"];
        const NEAR: usize = 4;
        let whole = |id: &String| {
            let grown_for = self.known.crops.get(id).map(|crop| crop.grown_for);
            matches!(grown_for, Some(GrownFor::Root | GrownFor::Bulb))
        };
        let below = |at: usize| {
            self.names.iter().any(|hit| {
                let near = hit.span.start > at && hit.span.start - at <= NEAR;
                near && matches!(&hit.meaning, Named::Crop(id) if whole(id))
            })
        };
        if self.text.language != Language::En || self.is_to_come() || self.stuff() {
            return None;
        }
        let vessel = self.names.iter().any(|hit| matches!(hit.meaning, Named::BedKind(_)));
        let claims = self.claims();
        let verb = |at: &usize| {
            VERBS.contains(&self.text.normal(*at))
                && claims.is_made(&(*at..*at + 1))
                && self.is_of_a_whole_crop(*at, NEAR)
                && below(*at)
        };
        (0..self.text.tokens.len()).find(verb).filter(|_| !vessel).map(|_| JobKind::Pull)
    }

    /// "Moved the lemon into a 20 inch drum", "nimbu bade gamle me shift kiya": a plant into another pot.
    fn moved_into(&self) -> Option<JobKind> {
        const FURTHEST: usize = 9;
        const VERBS: [&str; 3] = ["moved", "shifted", "upsized"];
        const DONE: [&str; 14] =
            ["kiya", "kiye", "ki", "kar", "kardiya", "diya", "किया", "किए", "की", "कर", "दिया", "hua", "gaya", "गया"];
        const POTS: [&str; 12] =
            ["gamle", "gamla", "drum", "tub", "bag", "box", "dabbe", "गमले", "ड्रम", "बैग", "डिब्बे", "टब"];
        let named = |name: &Named| matches!(name, Named::Crop(_) | Named::OtherPlant(_));
        let plants = self.places(named);
        let beds = self.places(|name| matches!(name, Named::OwnBed(_) | Named::BedKind(_)));
        if plants.is_empty() || self.is_to_come() || self.says(&Told::Will) {
            return None;
        }
        let claims = self.claims();
        let tokens = 0..self.text.tokens.len();
        if self.text.language == Language::En {
            let into = |at: usize, bed: &Range<usize>| {
                plants.iter().any(|plant| {
                    let to = |place: usize| matches!(self.text.normal(place), "into" | "to" | "in");
                    plant.start > at && plant.end < bed.start && (plant.end..bed.start).any(to)
                })
            };
            let verb = |at: &usize| {
                let near = |bed: &&Range<usize>| bed.start > *at && bed.start - at <= FURTHEST;
                VERBS.contains(&self.text.normal(*at))
                    && claims.is_made(&(*at..*at + 1))
                    && beds.iter().filter(near).any(|bed| into(*at, bed))
            };
            return tokens.into_iter().find(verb).map(|_| JobKind::Plant);
        }
        let shift = |at: &usize| {
            let moved = matches!(self.text.normal(*at), "shift" | "शिफ्ट") && DONE.contains(&self.text.normal(at + 1));
            let to = at.checked_sub(2).is_some_and(|pot| POTS.contains(&self.text.normal(pot)));
            let post = at.checked_sub(1).is_some_and(|me| matches!(self.text.normal(me), "me" | "mein" | "में"));
            moved && to && post && claims.is_made(&(*at..at + 2))
        };
        tokens.into_iter().find(shift).map(|_| JobKind::Plant)
    }

    /// "Carrot seed in, on 11 May": what was sown or set is in, in the words of a note.
    fn seed_is_in(&self) -> Option<JobKind> {
        const SET: [&str; 8] = ["seed", "seeds", "slips", "cloves", "tubers", "seedlings", "saplings", "plants"];
        if self.text.language != Language::En || !self.come || self.is_to_come() || self.says(&Told::Not) {
            return None;
        }
        let crops = self.places(|name| matches!(name, Named::Crop(_)));
        let in_place = |at: usize| {
            let next = self.text.normal(at + 1);
            let ends = at + 1 >= self.text.tokens.len() || ENDS.contains(&next) || next == "on";
            let dated = self.days.iter().any(|day| day.contains(&(at + 1)));
            self.text.normal(at) == "in" && (ends || dated)
        };
        let set = |crop: &Range<usize>| {
            let named = SET.contains(&self.text.normal(crop.end));
            named && in_place(crop.end + 1)
        };
        let crop = crops.iter().find(|crop| set(crop))?;
        let saplings = matches!(self.text.normal(crop.end), "seedlings" | "saplings" | "plants");
        Some(if saplings { JobKind::Plant } else { JobKind::Sow })
    }

    /// "Put methi in the sprouting tray on Friday": a crop into a bed, on a day that has come.
    fn put_into(&self) -> Option<JobKind> {
        const FURTHEST: usize = 7;
        const VERBS: [&str; 6] = ["put", "dropped", "placed", "pushed", "stuck", "started"];
        let measured = self.measures(UnitOf::Mass) || self.measures(UnitOf::Volume);
        if self.text.language != Language::En || !self.come || self.stuff() || measured {
            return None;
        }
        let claims = self.claims();
        let crops = self.places(|name| matches!(name, Named::Crop(_)));
        let beds = self.places(|name| matches!(name, Named::OwnBed(_) | Named::BedKind(_)));
        let into = |at: usize| {
            let bed = beds.iter().find(|bed| bed.start > at && bed.start - at <= FURTHEST);
            bed.is_some_and(|bed| {
                let crop = crops.iter().any(|crop| crop.start > at && crop.end < bed.start);
                let between = (at..bed.start).any(|place| matches!(self.text.normal(place), "in" | "into"));
                crop && between
            })
        };
        let verb = |at: &usize| VERBS.contains(&self.text.normal(*at)) && claims.is_made(&(*at..*at + 1)) && into(*at);
        (0..self.text.tokens.len()).find(verb).map(|_| JobKind::Sow)
    }

    /// "Neem cake 50 g, east box, 14 may": what feeds, how much, where, and a day that has come. A spray's is gone by: one
    /// of today may be planned.
    fn telegraphed(&self) -> Option<JobKind> {
        let planted = !self.places(|name| matches!(name, Named::Crop(_) | Named::OwnBed(_))).is_empty();
        let vessel = self.told.iter().any(|hit| hit.meaning == Told::Vessel && counted(self.text, hit.span.start));
        let amount = self.measures(UnitOf::Mass) || self.measures(UnitOf::Volume) || vessel;
        // "Last neem was on 14 May": what the next is counted from.
        const LAST: [&str; 8] = ["last", "previous", "pichla", "pichli", "pichle", "पिछला", "पिछली", "पिछले"];
        if (0..self.text.tokens.len()).any(|at| LAST.contains(&self.text.normal(at))) {
            return None;
        }
        let given = |job| self.names.iter().any(|hit| self.given_with(&hit.meaning) == Some(job));
        let plain = planted && !self.is_to_come() && self.quantities.dimensions.is_empty();
        let sprayed = || given(JobKind::Spray) || self.says(&Told::Thing(JobKind::Spray));
        match (self.come && amount && given(JobKind::Feed), self.gone && sprayed()) {
            (true, _) if plain => Some(JobKind::Feed),
            (_, true) if plain && !self.says(&Told::Not) => Some(JobKind::Spray),
            _ => None,
        }
    }
}
