//! Whether a person or a pet is hurt, told in a person's own words.
//!
//! Words are put into classes (a child, a pet, fell, a height); what happened is told where its classes stand close
//! together. Plants fall, faint and drink as people do: a message about them tells of no one.

use crate::knowledge::{Emergency, Knowledge};
use crate::script::{Language, Text, Token, index_word};
use rustc_hash::FxHashMap;

/// What may be told of someone, by classes of words.
#[derive(Debug, Clone, Default)]
pub struct EmergencyBook {
    hindi: FxHashMap<String, Classes>,
    /// As spelled, for words whose sound is too short to tell.
    spelled: FxHashMap<String, Classes>,
    told: Vec<Told>,
    roles: Roles,
}

/// Some of the classes, a bit each: every word of a message is asked for them many times over.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
struct Classes(u128);

impl Classes {
    /// Of the class with this number; the knowledge base is refused where it has more than there are bits.
    fn of(number: usize) -> Self {
        Self(u32::try_from(number).ok().and_then(|number| 1_u128.checked_shl(number)).unwrap_or_default())
    }

    const fn with(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    const fn without(self, other: Self) -> Self {
        Self(self.0 & !other.0)
    }

    const fn meets(self, other: Self) -> bool {
        self.0 & other.0 != 0
    }

    const fn is_empty(self) -> bool {
        self.0 == 0
    }
}

/// Classes with a part of their own in a sentence.
#[derive(Debug, Clone, Default)]
struct Roles {
    someone: Classes,
    eye: Classes,
    thing: Classes,
    says: Classes,
    of: Classes,
    only_if: Classes,
    /// Words that stand for a person in an English text only.
    english: Classes,
    /// Said of plants too, in any language: "baby palak".
    baby: Classes,
    /// "Three year old": a child, or a plant.
    old: Classes,
    limb: Classes,
    /// Before and after a limb with which something was done.
    by: Classes,
    se: Classes,
    /// After a limb that something is as long as.
    measured: Classes,
    to_eat: Classes,
    /// "Koi" and the "nahi" after it.
    anyone: Classes,
    not: Classes,
    ate: Classes,
    /// "Stopped eating", "khana band": nothing was eaten.
    stops: Classes,
    /// Right before eating: "what the kids love eating".
    enjoys: Classes,
    /// What harms, or shows that it did.
    harms: Classes,
}

#[derive(Debug, Clone)]
struct Told {
    what: Emergency,
    slots: Vec<Classes>,
    apart: usize,
    most: usize,
    without: Classes,
}

/// A word of a message with its classes.
#[derive(Debug, Clone, Default)]
struct Word {
    classes: Classes,
    empty: bool,
    /// It names a crop.
    crop: bool,
    number: bool,
}

impl Word {
    const fn is(&self, any: Classes) -> bool {
        self.classes.meets(any)
    }
}

/// Sounds shorter than this meet by chance.
const SHORTEST_SOUND: usize = 4;

impl EmergencyBook {
    /// Gathers the words of the knowledge base.
    #[must_use]
    pub fn of(known: &Knowledge) -> Self {
        let mut book = Self::default();
        let harm = &known.harm;
        for (class, list) in harm.words.iter().enumerate() {
            for (language, words) in list.words.each() {
                words.iter().for_each(|word| book.learn(word, language, class));
            }
        }
        let classes = |names: &str| {
            let at = |name: &str| harm.words.iter().position(|words| words.class == name);
            names.split('|').filter_map(at).map(Classes::of).fold(Classes::default(), Classes::with)
        };
        book.roles = Roles {
            someone: classes("child|person|pet|self|i"),
            eye: classes("eye"),
            thing: classes("thing"),
            says: classes("says"),
            of: classes("of"),
            only_if: classes("if"),
            english: classes("i"),
            baby: classes("baby"),
            old: classes("old"),
            limb: classes("limb|body"),
            by: classes("by"),
            se: classes("se"),
            measured: classes("measured"),
            to_eat: classes("to-eat"),
            anyone: classes("anyone"),
            not: classes("not"),
            ate: classes("ate|eats"),
            stops: classes("stops"),
            enjoys: classes("enjoys"),
            harms: classes("poison|true-poison|medicine|vomit|throwing|sick|shaking|soil|bits|swallowed"),
        };
        book.told = harm
            .told
            .iter()
            .map(|told| Told {
                what: told.what,
                slots: told.all.iter().map(|slot| classes(slot)).collect(),
                apart: told.apart,
                most: told.most.unwrap_or(usize::MAX),
                without: told.without.iter().map(|class| classes(class)).fold(Classes::default(), Classes::with),
            })
            .collect();
        book
    }

    fn learn(&mut self, word: &str, language: Language, class: usize) {
        let add = |known: &mut Classes| *known = known.with(Classes::of(class));
        for token in Text::read_as(word, language).tokens {
            let Some(form) = index_word(&token, language) else { continue };
            // English words count as they are spelled: who "drank" did, who may "drink" did not.
            if language != Language::En && form.chars().count() >= SHORTEST_SOUND {
                add(self.hindi.entry(form).or_default());
            }
            add(self.spelled.entry(token.normal).or_default());
        }
    }

    fn classes(&self, token: &Token) -> Classes {
        if let Some(classes) = self.spelled.get(&token.normal) {
            return *classes;
        }
        let as_hindi = index_word(token, Language::HiLatn).and_then(|form| self.hindi.get(&form));
        as_hindi.copied().unwrap_or_default()
    }

    /// What happened to someone. `crops` are the tokens that name one, `empty` says which words tell nothing.
    #[must_use]
    pub fn find(&self, text: &Text, crops: &[usize], empty: impl Fn(&Token) -> bool) -> Option<Emergency> {
        let english = text.language == Language::En;
        let mut words: Vec<Word> = text
            .tokens
            .iter()
            .enumerate()
            .map(|(position, token)| {
                let crop = crops.contains(&position);
                let mut classes = self.classes(token);
                if !english {
                    classes = classes.without(self.roles.english);
                }
                if is_compared_with(text, position) {
                    classes = classes.without(self.roles.limb);
                }
                if crop {
                    // The finger of a lady's finger is none.
                    classes = classes.without(self.roles.limb).with(self.roles.thing);
                }
                let empty = classes.is_empty() && empty(token);
                Word { classes, empty, crop, number: token.number.is_some() }
            })
            .collect();
        self.forget_no_one(&mut words, english);
        self.forget_no_limb(&mut words);
        self.forget_no_meal(&mut words);
        let all: Vec<Word> = words.into_iter().filter(|word| !word.empty).collect();
        let telling = all.iter().filter(|word| !word.is(self.roles.of)).count();
        let said = all.iter().fold(Classes::default(), |said, word| said.with(word.classes));
        let free = |told: &&Told| telling <= told.most && !said.meets(told.without);
        let whole = |told: &&Told| told.slots.iter().all(|slot| said.meets(*slot));
        self.told.iter().filter(free).filter(whole).find(|told| near(told, &all)).map(|told| told.what)
    }

    /// A baby spinach, a brother's pot, what a gardener said, the eye of a potato, a dog that might, a plant three years
    /// old: no one is hurt. In Hindi what someone did something to stands after them: "beta mitti kha gaya".
    fn forget_no_one(&self, words: &mut [Word], english: bool) {
        /// So many words before someone may make it a mere thought.
        const BEFORE: usize = 3;
        let roles = &self.roles;
        for place in 0..words.len() {
            let Some(word) = words.get(place) else { continue };
            let after = |skip: usize| words.get(place + 1 + skip);
            let of = after(0).is_some_and(|next| next.is(roles.of));
            let next = after(usize::from(of));
            let thought = (place.saturating_sub(BEFORE)..place)
                .any(|at| words.get(at).is_some_and(|word| word.is(roles.only_if)));
            let someone = word.is(roles.someone);
            let said_of_plants = english || of || word.is(roles.baby);
            let of_thing = said_of_plants && next.is_some_and(|next| next.is(roles.thing));
            let says = !of && next.is_some_and(|next| next.is(roles.says));
            let none = word.is(roles.anyone) && (after(0).into_iter().chain(after(1))).any(|word| word.is(roles.not));
            let no_one = someone && (thought || of_thing || says || none);
            let no_age = word.is(roles.old) && after(0).is_some_and(|next| next.is(roles.thing));
            let back = |by: usize| place.checked_sub(by).and_then(|at| words.get(at));
            // Soil goes into an eye, and belongs to none.
            let no_eye = word.is(roles.eye)
                && match back(1) {
                    Some(before) if before.is(roles.of) => back(2).is_some_and(|word| word.is(roles.thing)),
                    before => before.is_some_and(|word| word.crop),
                };
            // "Sabzi ke gamle": a pot of greens is not cooked.
            let no_meal = of && word.is(roles.to_eat) && next.is_some_and(|next| next.is(roles.thing));
            if let Some(word) = words.get_mut(place).filter(|_| no_one || no_age || no_eye || no_meal) {
                word.classes = Classes::default();
            }
        }
    }

    /// "Has stopped eating", "off its food", "khana chhod diya": nothing was eaten, and nobody swallowed a thing.
    fn forget_no_meal(&self, words: &mut [Word]) {
        const NEAR: usize = 2;
        let roles = &self.roles;
        let places = |of: Classes, words: &[Word]| -> Vec<usize> {
            (0..words.len()).filter(|at| words.get(*at).is_some_and(|word| word.is(of))).collect()
        };
        let harmed = words.iter().any(|word| word.is(roles.harms));
        let (stops, enjoys) = (places(roles.stops, words), places(roles.enjoys, words));
        for (at, word) in words.iter_mut().enumerate() {
            let stopped = stops.iter().any(|stop| at != *stop && at.abs_diff(*stop) <= NEAR);
            // "What the kids love eating", where nothing that harms is named.
            let enjoyed = !harmed && at.checked_sub(1).is_some_and(|before| enjoys.contains(&before));
            if word.is(roles.ate) && (stopped || enjoyed) {
                word.classes = Classes::default();
            }
        }
    }

    /// What is cut by hand, a depth of three feet, a pod as long as a finger: no limb. The words beside it tell nothing
    /// else.
    fn forget_no_limb(&self, words: &mut [Word]) {
        let roles = &self.roles;
        for place in 0..words.len() {
            let before = place.checked_sub(1).and_then(|at| words.get(at));
            let by = before.is_some_and(|word| word.is(roles.by) || word.number);
            let se = words.get(place + 1).is_some_and(|word| word.is(roles.se) || word.is(roles.measured));
            let limb = words.get(place).is_some_and(|word| word.is(roles.limb));
            if let Some(word) = words.get_mut(place).filter(|_| limb && (by || se)) {
                word.classes = Classes::default();
            }
        }
        let little = |word: &Word| word.is(roles.by) || word.is(roles.se) || word.is(roles.not);
        for word in words.iter_mut().filter(|word| little(word)) {
            word.empty = true;
        }
    }
}

/// "As tall as my hand", "bigger than my palm": a measure.
fn is_compared_with(text: &Text, limb: usize) -> bool {
    let word = |back: usize| limb.checked_sub(back).map_or("", |at| text.normal(at));
    let whose = usize::from(matches!(word(1), "my" | "a" | "the" | "your" | "one"));
    match word(1 + whose) {
        "as" => word(3 + whose) == "as",
        "than" => word(2 + whose).ends_with("er"),
        _ => false,
    }
}

/// Whether all slots are filled within a few words of one another, each by a word of its own.
fn near(told: &Told, words: &[Word]) -> bool {
    let width = told.slots.len() + told.apart;
    (0..words.len()).any(|start| {
        let window = words.get(start..words.len().min(start + width)).unwrap_or_default();
        let mut taken: Vec<usize> = Vec::new();
        told.slots.iter().all(|slot| {
            let free = window.iter().enumerate().position(|(at, word)| !taken.contains(&at) && word.is(*slot));
            taken.extend(free);
            free.is_some()
        })
    })
}
