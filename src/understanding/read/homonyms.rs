//! Words that name a plant and are something else beside other words: "til Thursday", "jab main gaon jau", "do rai".

use super::{Hit, Named, Told};
use crate::garden::JobKind;
use crate::knowledge::{GrownFor, Knowledge, Point};
use crate::script::{Language, Text};
use crate::understanding::dates::DayFound;

/// Whose opinion it is, or how many there are.
const WHOSE: [&str; 10] = ["do", "aapki", "apki", "sabki", "unki", "uski", "teri", "tumhari", "inki", "nek"];

/// Who goes, or where to.
const GOES: [&str; 18] = [
    "main", "mai", "gaon", "gaanv", "bahar", "baahar", "ghar", "office", "chala", "chali", "wapas", "mayke", "jab",
    "shaadi", "shadi", "dilli", "chhutti", "bazaar",
];

/// What a time lasts until, besides a day.
const UNTIL: [&str; 12] = ["i", "we", "they", "it", "then", "next", "the", "evening", "morning", "night", "now", "end"];

/// "Dhaniya chhidak diya tray me", "चौलाई 15 को छिड़की थी": seed is strewn, with the word for spraying; what is sprayed is a
/// liquid, on a plant.
pub(super) fn strewn_is_sown(
    text: &Text,
    known: &Knowledge,
    names: &[Hit<Named>],
    days: &[DayFound],
    told: &mut [Hit<Told>],
) {
    const ON: [&str; 12] = ["pe", "par", "me", "mein", "ko", "ke", "पर", "पे", "में", "को", "के", "m"];
    const SEED: [&str; 3] = ["beej", "bij", "बीज"];
    // A fruiting plant is sprayed; greens, roots and shoots are strewn.
    let is_strewn = |id: &str| {
        let grown_for = known.crops.get(id).map(|crop| crop.grown_for);
        matches!(grown_for, Some(GrownFor::Leaf | GrownFor::Herb | GrownFor::Root | GrownFor::Shoot))
    };
    let strewn = |at: usize| {
        let word = text.normal(at);
        ["chhidk", "chhidak", "chidk", "chidak", "छिडक", "छिड़क"].iter().any(|start| word.starts_with(start))
    };
    let stuff = names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Trouble(_)));
    let sprays = told.iter().any(|hit| {
        hit.meaning == Told::Thing(JobKind::Spray) && !strewn(hit.span.start)
            || matches!(hit.meaning, Told::Thing(JobKind::Water) | Told::Point(Point::SyntheticSpray))
    });
    if stuff || sprays || text.language == Language::En {
        return;
    }
    for hit in told.iter_mut().filter(|hit| hit.meaning == Told::Did(JobKind::Spray) && strewn(hit.span.start)) {
        // The crop stands right before its verb, but for the day.
        let bare = |name: &&Hit<Named>| {
            let seed = SEED.contains(&text.normal(name.span.end + 1)) || SEED.contains(&text.normal(name.span.end));
            let strewn = matches!(&name.meaning, Named::Crop(id) if seed || is_strewn(id));
            strewn
                && name.span.end <= hit.span.start
                && (seed || !ON.contains(&text.normal(name.span.end)))
                && (name.span.end..hit.span.start).all(|at| {
                    let dated = days.iter().any(|day| day.span.contains(&at));
                    dated
                        || SEED.contains(&text.normal(at))
                        || matches!(text.normal(at), "ko" | "को" | "ka" | "का" | "ke" | "के")
                })
        };
        if names.iter().any(|name| bare(&name)) {
            hit.meaning = Told::Did(JobKind::Sow);
        }
    }
}

/// Whether the one word of a name is no plant here.
pub(super) fn is_no_plant(text: &Text, days: &[DayFound], hit: &Hit<Named>) -> bool {
    const NEAR: usize = 4;
    let at = hit.span.start;
    if hit.span.len() != 1 || !matches!(hit.meaning, Named::Crop(_) | Named::OtherPlant(_) | Named::Material(_)) {
        return false;
    }
    let before = at.checked_sub(1).map_or("", |before| text.normal(before));
    match text.normal(at) {
        "राय" => true,
        // "The water rose to the rim", "heat rose by two degrees".
        "rose" => {
            let goes = matches!(
                text.normal(at + 1),
                "to" | "by" | "up" | "from" | "above" | "over" | "again" | "so" | "well" | "fast" | "quickly" | "high"
            );
            let what = matches!(before, "it" | "water" | "heat" | "temperature" | "level" | "price" | "prices" | "sun");
            // "Rose pani" may be a daily one.
            let hindi = text.language != Language::En
                && !matches!(
                    text.normal(at + 1),
                    "ke" | "ka" | "ki" | "ko" | "pe" | "par" | "me" | "mein" | "plant" | "cutting" | "wala" | "wale"
                );
            goes || what || hindi
        }
        // To have made.
        "banwana" | "banvana" | "banwane" | "banwani" => true,
        // "Dabba banana hai": to make.
        "banana" | "bananas" => {
            const MAKES: [&str; 14] = [
                "hai", "h", "hain", "sikhao", "sikha", "bata", "batao", "tha", "hoga", "padega", "chahiye", "chahta",
                "chahte", "kaise",
            ];
            const OF: [&str; 9] = ["ke", "ka", "ki", "ko", "me", "mein", "pe", "par", "plant"];
            let next = text.normal(at + 1);
            text.language != Language::En && !OF.contains(&next) || MAKES.contains(&next)
        }
        // "Kheer me chawal": a dish of milk, and no cucumber.
        "kheer" | "खीर" | "asli" | "asali" | "असली" => true,
        "rai" | "raay" => text.language != Language::En && WHOSE.contains(&before),
        "til" => {
            let day = days.iter().any(|day| day.span.start == at + 1 || day.span.contains(&at));
            let grown = matches!(before, "sow" | "plant" | "grow" | "sowing" | "growing" | "planting" | "of");
            text.language == Language::En && !grown && (day || UNTIL.contains(&text.normal(at + 1)))
        }
        "jau" | "jaun" | "jaoon" | "jaau" => {
            const GROWN: [&str; 18] = [
                "kab", "kaise", "kitna", "kitne", "ke", "ka", "ki", "ko", "lagana", "lagau", "lagaun", "bou", "bo",
                "bona", "boya", "boi", "ugana", "ugau",
            ];
            let goes = (at.saturating_sub(NEAR)..at).any(|place| GOES.contains(&text.normal(place)));
            goes && !GROWN.contains(&text.normal(at + 1))
        }
        _ => false,
    }
}
