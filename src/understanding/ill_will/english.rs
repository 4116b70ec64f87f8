//! Harm that is meant, in English: a verb of harm with its object, and who is to do it.

use super::Said;

/// People to whom harm may be meant.
const PEOPLE: &str = "someone somebody anyone person people human him her man men woman guy boy girl child kid kids children baby \
    husband wife mother father brother sister son daughter uncle aunt aunty neighbour neighbours neighbor \
    neighbors boss manager colleague roommate flatmate landlord landlady tenant tenants enemy enemies rival \
    guest guests maid cook watchman guard driver teacher ex girlfriend boyfriend inlaws in-laws in-law law \
    relative relatives";

/// Animals that are no vermin.
const ANIMALS: &str = "dog dogs puppy puppies cat cats kitten kittens cow cows calf goat goats buffalo monkey monkeys langur \
    langurs pigeon pigeons crow crows bird birds sparrow sparrows squirrel squirrels parrot parrots peacock \
    peacocks hen hens rabbit rabbits stray strays pet animal";

/// Verbs of harm to what lives, as one who means it says them.
const HARM: &str =
    "kill killing poison poisoning murder murdering hurt hurting harm drug drugging sicken cripple strangle";

/// Verbs of harm to plants.
const SPOIL: &str = "kill killing ruin ruining destroy destroying spoil spoiling damage wreck sabotage poison poisoning harm \
    wither uproot burn rot vandalise vandalize murder";

/// What someone is made to be.
const ILL: [&str; 15] = [
    "ill",
    "sick",
    "unconscious",
    "faint",
    "vomit",
    "puke",
    "drowsy",
    "die",
    "suffer",
    "collapse",
    "dead",
    "sleepy",
    "blind",
    "unwell",
    "hallucinate",
];

const POISONS: &str = "poison pesticide pesticides insecticide oleander datura dhatura castor lantana nightshade belladonna arsenic \
    cyanide malathion monocrotophos phorate dimethoate chlorpyrifos phosphide weedicide herbicide aconite yew \
    hemlock";

const FOOD: &str = "tea food milk drink drinks curry coffee meal dinner lunch breakfast water juice sweets meat bread roti rice \
    dal soup plate cup glass tiffin";

/// Whose it is.
const THEIRS: &str = "his her their someone's somebody's neighbour's neighbours neighbor's neighbors neighbours' neighbors' \
    neighbour neighbor husband's wife's boss's boss' enemy's landlord's tenant's uncle's aunty's aunt's \
    brother's sister's rival's law's door's door upstairs downstairs guest's colleague's roommate's else's man's";

const PLANTED: &str = "plant plants garden gardens bed beds pot pots tree trees lawn roses rose vegetables veggies crop crops \
    tomatoes tomato chillies flowers creeper vine vines seedlings boxes box hedge tulsi mango curry brinjals \
    okra gourds gourd grass";

/// What is never meant by one who says it so: it is feared, denied or forbidden.
const DENIED: &str = "not n't don't dont doesn't doesnt won't wont never without no avoid afraid worried accidentally safe safely \
    instead";

/// Told as happened.
const HAPPENED: &str = "ate eaten drank drunk swallowed chewed licked mistake accidentally accident vomiting vomited doctor hospital \
    ambulance antidote vet suspect found died fell";

/// Nobody is to know of it.
const SECRETLY: &str = "secretly undetected undetectable unnoticed untraceable traceable detected detectable noticing caught quietly \
    autopsy";

pub(super) fn to_oneself(said: &Said<'_>) -> bool {
    said.any_phrase(&[
        "kill myself",
        "killing myself",
        "end my life",
        "ending my life",
        "end it all",
        "take my own life",
        "taking my own life",
        "poison myself",
        "to hurt myself",
        "to harm myself",
        "i want to die",
        "i wanna die",
        "want to be dead",
        "don't want to live",
        "dont want to live",
        "do not want to live",
        "no reason to live",
        "better off dead",
        "commit suicide",
        "suicidal",
        "for suicide",
        "by suicide",
    ])
}

pub(super) fn to_others(said: &Said<'_>) -> bool {
    let happened = said.any_of(HAPPENED);
    let places = || 0..said.words.len();
    places().any(|at| said.of(at, HARM) && is_meant(said, at) && hits_someone(said, at + 1))
        || places().any(|at| said.of(at, SPOIL) && is_meant(said, at) && hits_theirs(said, at + 1))
        || !happened
            && (places().any(|at| makes_ill(said, at))
                || poisons_food(said)
                || hidden_harm(said)
                || theirs_so_that_nothing_lives(said)
                || silenced(said)
                || done_away_with(said))
}

/// The asker is who does it: "how to", "can I", an order at a beginning; not "will it", "enough to", "afraid to".
fn is_meant(said: &Said<'_>, at: usize) -> bool {
    const NO_WISH: [&str; 19] = [
        "enough",
        "likely",
        "able",
        "known",
        "seems",
        "seem",
        "tends",
        "tend",
        "said",
        "supposed",
        "meant",
        "used",
        "strong",
        "toxic",
        "poisonous",
        "dangerous",
        "starts",
        "started",
        "going",
    ];
    const OTHERS: [&str; 8] = ["it", "this", "that", "they", "these", "he", "she", "which"];
    if said.back(at, 6).any(|place| said.of(place, DENIED)) {
        return false;
    }
    let before = |by: usize| at.checked_sub(by).map_or("", |place| said.word(place));
    if before(1) == "to" {
        let going = before(2) == "going" && said.back(at, 5).any(|place| said.is(place, &["i", "we", "im", "i'm"]));
        return going || !NO_WISH.contains(&before(2));
    }
    let gerund = said.word(at).ends_with("ing");
    if gerund {
        let joined = ["for", "of", "by", "about", "on", "am", "i'm", "im", "in"].contains(&before(1));
        return at == 0 || joined && !said.back(at, 3).any(|place| said.is(place, &OTHERS));
    }
    let noun = ["a", "the", "of", "any", "some", "what", "which", "rat", "this", "his", "her"].contains(&before(1));
    let asker = said.back(at, 3).any(|place| said.is(place, &["i", "we", "i'll", "lets", "let's", "me"]))
        && !said.back(at, 2).any(|place| said.is(place, &OTHERS));
    let order =
        at == 0 || said.ends(at - 1) || matches!(before(1), "please" | "pls" | "plz" | "," | "then" | "secretly");
    // "Which plant would kill a man": nobody asks so for a pet's sake.
    let what_would = matches!(before(1), "would" | "can" | "will" | "could" | "that")
        && said.back(at, 5).any(|place| said.is(place, &["which", "what"]))
        && said.on(at + 1, 3).any(|place| said.is(place, &["man", "person", "someone", "human", "somebody", "him"]));
    !noun && (asker || order) || what_would
}

/// Someone or an animal is the object; what stands on them is not: "kill my dog's ticks".
fn hits_someone(said: &Said<'_>, from: usize) -> bool {
    const ON_THEM: [&str; 22] = [
        "tick",
        "ticks",
        "flea",
        "fleas",
        "lice",
        "mites",
        "worms",
        "smell",
        "odour",
        "odor",
        "urine",
        "pee",
        "poop",
        "droppings",
        "fish",
        "grass",
        "tail",
        "nest",
        "nests",
        "netting",
        "net",
        "flies",
    ];
    const FURTHEST: usize = 6;
    const LINKS: [&str; 34] = [
        "the",
        "a",
        "an",
        "my",
        "our",
        "this",
        "that",
        "these",
        "those",
        "his",
        "her",
        "their",
        "all",
        "off",
        "some",
        "of",
        "one",
        "stray",
        "street",
        "barking",
        "damn",
        "stupid",
        "annoying",
        "bloody",
        "old",
        "neighbours",
        "neighbour's",
        "neighbors",
        "neighbor's",
        "neighbour",
        "neighbor",
        "'s",
        "s",
        "mother-in-law's",
    ];
    for at in said.on(from, FURTHEST) {
        let whole = said.of(at, ANIMALS) || said.of(at, PEOPLE);
        let next = at + 1;
        let owner = said.is(next, &["'s", "s", "’s"]);
        let on_them = said.is(next, &ON_THEM) || owner && said.is(next + 1, &ON_THEM);
        let links = said.is(at, &LINKS);
        // "Her" and "neighbours" go with what follows them.
        let followed = links
            && said
                .on(next, 3)
                .any(|place| said.of(place, ANIMALS) || said.of(place, PLANTED) || said.is(place, &ON_THEM));
        let plain = whole && !owner && !on_them && !said.of(next, PLANTED) && !followed;
        let bare = links && followed_by_nothing(said, next);
        if plain && (!links || bare) {
            return true;
        }
        if on_them || !(links || whole && owner || matches!(said.word(at), "'" | "-" | "in" | "law")) {
            return false;
        }
    }
    false
}

/// Nothing that has a name follows: "kill her slowly", "poison my neighbour".
fn followed_by_nothing(said: &Said<'_>, at: usize) -> bool {
    const AFTER: [&str; 16] = [
        "slowly", "quietly", "without", "with", "using", "and", "so", "in", "at", "by", "fast", "please", "for", "off",
        "now", "secretly",
    ];
    at >= said.words.len() || said.ends(at) || said.is(at, &AFTER) || said.is(at, &[","])
}

/// The plants of someone else are the object.
fn hits_theirs(said: &Said<'_>, from: usize) -> bool {
    const LINKS: [&str; 9] = ["the", "my", "our", "all", "off", "of", "that", "next", "up"];
    let first = said.on(from, 4).find(|at| !said.is(*at, &LINKS) && !said.is(*at, &["'s", "s"]));
    let theirs = first.is_some_and(|at| said.of(at, THEIRS));
    theirs && first.is_some_and(|at| said.on(at + 1, 4).any(|place| said.of(place, PLANTED)))
}

/// "Make him sick", "get my boss ill", "knock a man out", "put the dog to sleep".
fn makes_ill(said: &Said<'_>, at: usize) -> bool {
    const MAKES: [&str; 5] = ["make", "makes", "making", "get", "knock"];
    if !said.is(at, &MAKES) && !(said.is(at, &["put"])) {
        return false;
    }
    let someone: Option<usize> = said
        .on(at + 1, 5)
        .find(|place| said.of(*place, PEOPLE) || said.of(*place, ANIMALS) || said.is(*place, &["them"]));
    let Some(who) = someone else { return false };
    let after = |words: &[&str]| said.on(who + 1, 5).any(|place| said.is(place, words));
    let ill = match said.word(at) {
        "knock" => after(&["out", "unconscious"]),
        "put" => after(&["sleep"]) && !after(&["mode"]),
        _ => after(&ILL) || said.on(who + 1, 4).any(|place| said.word(place) == "sleep"),
    };
    // "Will it make my dog sick" fears it; "to make them ill" means it.
    let before = at.checked_sub(1).map_or("", |place| said.word(place));
    let ours = said.on(at + 1, 2).any(|place| said.is(place, &["my", "our", "me", "us"]));
    let asker = before == "to" || said.back(at, 3).any(|place| said.is(place, &["i", "we"])) || at == 0;
    let denied = said.back(at, 6).any(|place| said.of(place, DENIED));
    let would = matches!(before, "would" | "will" | "can" | "could" | "that")
        && said.back(at, 8).any(|place| said.is(place, &["which", "what"]));
    let enough = before == "to" && at >= 2 && said.is(at - 2, &["enough", "likely", "going", "known"]);
    let foe = said.of(who, "teacher boss manager neighbour neighbor landlord ex roommate rival enemy colleague tenant");
    let better = said.on(who + 1, 6).any(|place| said.is(place, &["better", "well", "free", "of"]));
    ill && !denied && !enough && !better && (asker || would && (!ours || foe || said.any_of(SECRETLY)))
}

/// "Oleander in his food", "datura seeds in a curry for someone".
fn poisons_food(said: &Said<'_>) -> bool {
    const APART: usize = 9;
    const MIXES: [&str; 18] = [
        "put", "mix", "mixed", "add", "slip", "sneak", "give", "feed", "serve", "lace", "spike", "crush", "grind",
        "offer", "need", "much", "many", "dose",
    ];
    (0..said.words.len()).any(|at| {
        let food = said.on(at + 1, APART).find(|place| said.of(*place, FOOD));
        let whose = food.is_some_and(|food| {
            (food.saturating_sub(4)..food).any(|place| said.of(place, THEIRS) || said.of(place, PEOPLE))
        });
        let others = ["someone", "somebody", "who", "they", "he", "she"];
        let by_another = said.back(at, 4).any(|place| said.is(place, &["put", "mixed", "added", "gave", "slipped"]))
            && said.back(at, 6).any(|place| said.is(place, &others));
        let asks = said.any_of(SECRETLY) || said.any(&MIXES);
        said.of(at, POISONS) && whose && asks && !by_another
    })
}

/// A word of harm, someone, and that nobody is to know.
fn hidden_harm(said: &Said<'_>) -> bool {
    let harm = said.any_of(HARM) || said.any(&ILL) || said.any_of(POISONS);
    let someone = said.any_of(PEOPLE) || said.any_of(ANIMALS);
    let feared = said.any_of(DENIED)
        && !said.phrase("without him")
        && !said.phrase("without her")
        && !said.phrase("without anyone")
        && !said.phrase("without being")
        && !said.phrase("without getting")
        && !said.phrase("without them");
    harm && someone && said.any_of(SECRETLY) && !feared
}

/// "On my neighbour's plants at night so they die", "salt in the neighbour's beds so nothing grows".
fn theirs_so_that_nothing_lives(said: &Said<'_>) -> bool {
    const DIES: [&str; 12] =
        ["die", "dies", "wilt", "wither", "rot", "nothing", "dead", "dry", "grows", "dries", "shrivel", "never"];
    let theirs = (0..said.words.len()).find(|at| {
        said.of(*at, THEIRS) && said.on(at + 1, 3).any(|place| said.of(place, PLANTED)) && said.word(*at) != "her"
    });
    let Some(at) = theirs else { return false };
    let so = said.on(at, 14).find(|place| said.is(*place, &["so"]));
    so.is_some_and(|so| {
        let mine = said.on(so, 6).any(|place| said.is(place, &["my", "mine", "our", "ours"]));
        !mine && said.on(so, 6).any(|place| said.is(place, &DIES))
    })
}

/// "Get rid of my husband", "finish off my ex", "poisoned bait for dogs".
fn done_away_with(said: &Said<'_>) -> bool {
    const AWAY: [&str; 6] = ["get rid of", "getting rid of", "finish off", "do away with", "bump off", "finishing off"];
    const FOES: &str = "husband wife ex boss roommate flatmate landlord tenant rival enemy inlaws law teacher";
    let away =
        said.any_phrase(&AWAY) && said.any_of(FOES) && !said.any(&["pests", "weeds", "ants", "aphids", "plants"]);
    let bait = said.any(&["bait", "baits"])
        && said.any(&["poison", "poisoned", "poisonous", "lethal"])
        && said.any_of(ANIMALS)
        && !said.any_of(DENIED);
    away || bait
}

/// "Feed that dog so it never barks again".
fn silenced(said: &Said<'_>) -> bool {
    let given = (0..said.words.len()).find(|at| said.is(*at, &["feed", "give", "serve", "offer"]));
    let Some(at) = given else { return false };
    let animal = said.on(at + 1, 6).any(|place| said.of(place, ANIMALS) || said.of(place, PEOPLE));
    let so = said.on(at + 1, 14).find(|place| said.is(*place, &["so"]));
    let ended =
        |so: usize| said.on(so, 7).any(|place| said.is(place, &["never", "dies", "die", "forever", "breathing"]));
    animal && so.is_some_and(ended)
}
