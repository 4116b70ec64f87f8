//! What a garden file is refused for, word for word.

use super::*;
use crate::garden::{Speaks, Sun};
use crate::quantity::Quantity;

mod round_trip;

fn ids(words: &[&str]) -> BTreeSet<String> {
    words.iter().map(|&word| word.to_owned()).collect()
}

const CROPS: [&str; 14] = [
    "amaranth",
    "spinach",
    "spinach-beet",
    "coriander",
    "fenugreek",
    "mustard",
    "radish",
    "tomato",
    "chilli",
    "okra",
    "french-bean",
    "cauliflower",
    "mint",
    "lettuce",
];
const MIXES: [&str; 2] = ["house", "tray"];
const MATERIALS: [&str; 6] = ["neem-oil", "vermicompost", "mustard-cake", "neem-cake", "soap", "shade-net"];

fn read(text: &str, already: &Garden) -> Result<Garden, Vec<Problem>> {
    let (crops, mixes, materials) = (ids(&CROPS), ids(&MIXES), ids(&MATERIALS));
    read_garden("garden.toml", text, &KnownIds { crops: &crops, mixes: &mixes, materials: &materials }, already)
}

fn problems(text: &str) -> Vec<String> {
    read(text, &Garden::default()).err().unwrap_or_default().iter().map(ToString::to_string).collect()
}

const SITE: &str = r#"[[sites]]
id = "roof-12"
name = "Roof 12"
latitude = 21.15
longitude = 79.09
elevation_m = 310
timezone = "Asia/Kolkata"
"#;
const BED: &str = r#"[[beds]]
id = "east-box"
site = "roof-12"
kind = "box"
length = "4 ft"
width = "3 ft"
depth = "12 in"
"#;

/// A good file in which one line is put for another has this one problem.
#[track_caller]
fn case(line: &str, instead: &str, expected: &str) {
    let good = format!(
        "{SITE}{BED}[[people]]\nid = \"meera\"\nname = \"Meera\"\nrole = \"client\"\nsites = [\"roof-12\"]\n\
         [[plantings]]\nbed = \"east-box\"\ncrop = \"spinach\"\nsown = \"2026-04-20\"\n\
         [[jobs_done]]\nbed = \"roof-12/east-box\"\njob = \"spray\"\non = \"2026-05-12\"\nwhat = \"neem-oil\"\n\
         [[seen]]\nbed = \"east-box\"\non = \"2026-05-13T18:00\"\nwhat = \"still-wet\"\n\
         [[moves]]\nbed = \"east-box\"\njob = \"feed\"\nto = \"2026-05-22\"\nby = \"meera\"\n\
         at = \"2026-05-18T02:30:00Z\"\nafter = \"2026-05-02\"\n"
    );
    assert_eq!(problems(&good), Vec::<String>::new());
    assert!(good.contains(line), "{line}");
    assert_eq!(problems(&good.replacen(line, instead, 1)), [expected]);
}

/// As `case`, with a line more under another.
#[track_caller]
fn more(line: &str, added: &str, expected: &str) {
    case(line, &format!("{line}\n{added}"), expected);
}

#[test]
fn each_fault_has_its_place_and_says_what_was_expected() {
    case(
        "depth = \"12 in\"",
        "depth = \"12 inc\"",
        "garden.toml:14:9: depth: unit \"inc\" is not known; expected: mm, cm, m, in, ft, ml, L, g or kg; did you mean \
         \"in\"?",
    );
    case(
        "depth = \"12 in\"",
        "depth = \"12\"",
        "garden.toml:14:9: depth: \"12\" has no unit; expected: a number and a unit, like \"4 ft\"",
    );
    case(
        "depth = \"12 in\"",
        "depth = 12",
        "garden.toml:14:9: depth is a number; expected: a text in quotes, like \"4 ft\"",
    );
    case(
        "depth = \"12 in\"",
        "depth = \"12 kg\"",
        "garden.toml:14:9: depth: \"12 kg\" is no length; expected: one like \"4 ft\"",
    );
    case(
        "length = \"4 ft\"",
        "length = \"400 ft\"",
        "garden.toml:12:10: length \"400 ft\" is out of bounds; expected: at most 30 m",
    );
    case(
        "length = \"4 ft\"",
        "length = \"0 ft\"",
        "garden.toml:12:10: length: \"0 ft\" is out of bounds; expected: more than 0 and at most 200 m",
    );
    case(
        "length = \"4 ft\"",
        "",
        "garden.toml:8:1: this bed has no length; expected: length = \"4 ft\", or a diameter for a round one",
    );
    case(
        "length = \"4 ft\"",
        "lenght = \"4 ft\"\nlength = \"4 ft\"",
        "garden.toml:12:1: \"lenght\" is no key of a bed; expected: a known key; did you mean \"length\"?",
    );
    more(
        "depth = \"12 in\"",
        "diameter = \"14 in\"",
        "garden.toml:15:12: this bed has more than one shape; expected: length and width, or diameter, or the volume of \
         a bag",
    );
    more(
        "depth = \"12 in\"",
        "volume = \"20 L\"",
        "garden.toml:15:10: a box has no volume of its own; expected: its inside measures",
    );
    more(
        "depth = \"12 in\"",
        "mix = \"hause\"",
        "garden.toml:15:7: mix \"hause\" is not known; expected: a mix of the knowledge base; did you mean \"house\"?",
    );
    more(
        "depth = \"12 in\"",
        "sun_hours = 25",
        "garden.toml:15:13: sun_hours 25 is out of bounds; expected: a number from 0 to 24 hours",
    );
    more(
        "depth = \"12 in\"",
        "sun_hours = nan",
        "garden.toml:15:13: sun_hours NaN is out of bounds; expected: a number from 0 to 24 hours",
    );
    more("depth = \"12 in\"", "mulch = \"yes\"", "garden.toml:15:9: mulch is a text; expected: true or false");
    case(
        "kind = \"box\"",
        "kind = \"boks\"",
        "garden.toml:11:8: kind \"boks\" is not known; expected: one of box, basket, tray, pot, bag; did you mean \"box\"?",
    );
    case(
        "site = \"roof-12\"",
        "site = \"roof-21\"",
        "garden.toml:10:8: site \"roof-21\" is not known; expected: a site of this file or the store; did you mean \
         \"roof-12\"?",
    );
}

#[test]
fn faults_of_sites_and_people() {
    case(
        "latitude = 21.15",
        "latitude = 121.15",
        "garden.toml:4:12: latitude 121.15 is out of bounds; expected: a number from -90 to 90 degrees",
    );
    case(
        "id = \"roof-12\"\n",
        "id = \"Roof 12\"\n",
        "garden.toml:2:6: id: \"Roof 12\" is no id; expected: small letters, digits and single hyphens, like \"roof-12\"",
    );
    case(
        "timezone = \"Asia/Kolkata\"",
        "timezone = \"Nagpur\"",
        "garden.toml:7:12: timezone \"Nagpur\" is not known; expected: a name of the time zone database, like \
         \"Asia/Kolkata\"",
    );
    case(
        "elevation_m = 310\n",
        "",
        "garden.toml:1:1: this site has no elevation_m; expected: elevation_m = metres over the sea, like 310",
    );
    more(
        "elevation_m = 310",
        "walls = [{ bearing_deg = 270, height = \"2.1 m\" }]",
        "garden.toml:7:10: this wall has no distance; expected: distance = \"1.5 m\"",
    );
    case(
        "role = \"client\"",
        "role = \"boss\"",
        "garden.toml:18:8: role \"boss\" is not known; expected: one of client, gardener, owner",
    );
    more(
        "role = \"client\"",
        "speaks = \"hi-latn\"",
        "garden.toml:19:10: speaks \"hi-latn\" is not known; expected: one of en, hi, hi-Latn; did you mean \"hi-Latn\"?",
    );
    case(
        "sites = [\"roof-12\"]",
        "sites = [\"east\"]",
        "garden.toml:19:10: site \"east\" is not known; expected: a site of this file or the store: roof-12",
    );
    case(
        "[[people]]",
        "[[peple]]",
        "garden.toml:15:3: \"peple\" is no part of a garden file; expected: a known part; did you mean \"people\"?",
    );
}

#[test]
fn faults_of_moves() {
    case(
        "job = \"feed\"",
        "job = \"water\"",
        "garden.toml:35:7: job \"water\" is not known; expected: one of spray, feed, net, pick, sow",
    );
    more(
        "job = \"feed\"",
        "what = \"mustard-cake\"",
        "garden.toml:36:8: what \"mustard-cake\" of a moved feed; expected: no \"what\": only a pick or a sow is of one crop",
    );
    case("to = \"2026-05-22\"\n", "", "garden.toml:33:1: this move has no to; expected: to = \"2026-05-22\"");
    case(
        "by = \"meera\"",
        "by = \"mira\"",
        "garden.toml:37:6: person \"mira\" is not known; expected: a person of this file or the store; did you mean \"meera\"?",
    );
    case(
        "at = \"2026-05-18T02:30:00Z\"",
        "at = \"2026-05-18\"",
        "garden.toml:38:6: at \"2026-05-18\" is no moment; expected: a moment with its zone, like \"2026-05-18T02:30:00Z\"",
    );
}

#[test]
fn faults_of_what_happened() {
    case(
        "crop = \"spinach\"",
        "crop = \"spinnach\"",
        "garden.toml:22:8: crop \"spinnach\" is not known; expected: a crop of the knowledge base; did you mean \
         \"spinach\"?",
    );
    case(
        "sown = \"2026-04-20\"",
        "sown = \"20-04-2026\"",
        "garden.toml:23:8: sown \"20-04-2026\" is no day; expected: a day of the calendar, like \"2026-05-13\"",
    );
    case(
        "sown = \"2026-04-20\"",
        "",
        "garden.toml:20:1: this planting has no sown; expected: sown = \"2026-05-13\", or planted for saplings",
    );
    more(
        "sown = \"2026-04-20\"",
        "as = \"microgreen\"",
        "garden.toml:24:6: microgreens in a box; expected: a bed of kind \"tray\", or no \"as\"",
    );
    more(
        "sown = \"2026-04-20\"",
        "plants = 2.5",
        "garden.toml:24:10: plants is no whole number; expected: how many plants, like 24",
    );
    case(
        "on = \"2026-05-12\"",
        "on = \"2026-02-30\"",
        "garden.toml:27:6: on: \"2026-02-30\" is no day; expected: one like \"2026-05-13\", or with a clock time \
         \"2026-05-13T18:00\"",
    );
    case(
        "what = \"neem-oil\"",
        "what = \"neem-oyl\"",
        "garden.toml:28:8: material \"neem-oyl\" is not known; expected: a material of the knowledge base; did you mean \
         \"neem-oil\"?",
    );
    case(
        "job = \"spray\"\non = \"2026-05-12\"\nwhat = \"neem-oil\"",
        "job = \"net\"\non = \"2026-05-12\"\nwhat = \"off\"",
        "garden.toml:28:8: what \"off\" is not known of a net; expected: \"up\" or \"down\"",
    );
    more(
        "what = \"neem-oil\"",
        "amount = \"0 ml\"",
        "garden.toml:29:10: amount \"0 ml\" is nothing; expected: more than 0, or no amount",
    );
    case(
        "bed = \"roof-12/east-box\"",
        "bed = \"roof-12/west-box\"",
        "garden.toml:25:7: bed \"roof-12/west-box\" is not known; expected: a bed of this file or the store; did you mean \
         \"roof-12/east-box\"?",
    );
    case(
        "what = \"still-wet\"",
        "what = \"wet\"",
        "garden.toml:32:8: what \"wet\" is not known; expected: one of still-wet, dry-early, ran-through",
    );
    case(
        "role = \"client\"",
        "role = client",
        "garden.toml:18:8: this is not TOML: string values must be quoted, expected literal string; expected: a key and \
         its value, like name = \"Roof 12\"",
    );
}

#[test]
fn nothing_stands_twice() {
    let job = "[[jobs_done]]\nbed = \"east-box\"\njob = \"water\"\non = \"2026-05-12\"\n";
    let person = "[[people]]\nid = \"asha\"\nname = \"Asha\"\nrole = \"owner\"\n";
    let text = format!("{SITE}{SITE}{BED}{BED}{job}{job}{person}{person}");
    assert_eq!(
        problems(&text),
        [
            "garden.toml:9:6: site \"roof-12\" stands twice; expected: another id",
            "garden.toml:23:6: bed \"roof-12/east-box\" stands twice; expected: another id, or another site",
            "garden.toml:33:1: this job stands twice; expected: one record, or two told apart by a clock time, like \
             \"2026-05-13T18:00\"",
            "garden.toml:42:6: person \"asha\" stands twice; expected: another id",
        ]
    );
}

#[test]
fn a_bare_bed_id_must_mean_one_bed() {
    let site = SITE.replace("roof-12", "roof-3");
    let bed = BED.replace("roof-12", "roof-3");
    let seen = "[[seen]]\nbed = \"east-box\"\non = \"2026-05-13\"\nwhat = \"still-wet\"\n";
    let found = problems(&format!("{SITE}{site}{BED}{bed}{seen}"));
    let expected =
        "garden.toml:30:7: bed \"east-box\" could be 2 beds; expected: \"roof-12/east-box\" or \"roof-3/east-box\"";
    assert_eq!(found, [expected]);
    // What the store holds may be named as well.
    let already = read(&format!("{SITE}{BED}"), &Garden::default()).unwrap();
    assert_eq!(read(seen, &already).unwrap().seen.len(), 1);
}

#[test]
fn all_problems_are_told_at_once_in_the_order_of_the_lines() {
    let text = format!("{SITE}{BED}mix = \"hause\"\nrain = \"wet\"\nfoo = 1\n").replace("310", "\"high\"");
    let lines: Vec<usize> = read(&text, &Garden::default()).unwrap_err().iter().map(|problem| problem.line).collect();
    assert_eq!(lines, [6, 15, 16, 17]);
}

#[test]
fn a_problem_points_at_its_text() {
    let text = "# मीरा\n[[sites]]\nname = \"मीरा\" \nfoo = 1";
    let problems = read(text, &Garden::default()).unwrap_err();
    let unknown = problems.iter().find(|problem| problem.found == "foo").unwrap();
    assert_eq!((unknown.line, unknown.column, unknown.file()), (4, 1, "garden.toml"));
    assert_eq!(&text[unknown.span.clone()], "foo");
}

const DEMO: &str = include_str!("../../../demo-data/garden.toml");

#[test]
fn the_demo_garden_is_sound_and_comes_back_from_an_export() {
    assert_eq!(problems(DEMO), Vec::<String>::new());
    let demo = read(DEMO, &Garden::default()).unwrap();
    assert_eq!((demo.sites.len(), demo.people.len(), demo.beds.len()), (6, 9, 16));
    assert_eq!(read(&write_garden(&demo), &Garden::default()).unwrap(), demo);
}

#[test]
fn what_stood_in_the_demo_garden_in_either_season() {
    let demo = read(DEMO, &Garden::default()).unwrap();
    let standing = |bed: &str, on: &str| {
        let standing = crate::garden::standing(&demo.plantings, &demo.jobs, on.parse().unwrap());
        let of_bed = standing.into_iter().filter(|planting| planting.bed.to_string() == bed);
        of_bed.map(|planting| (planting.crop.as_str(), planting.start.date().to_string())).collect::<Vec<_>>()
    };
    assert_eq!(standing("roof-12/east-box", "2026-01-12"), [("spinach-beet", "2025-11-20".to_owned())]);
    assert_eq!(standing("roof-12/east-box", "2026-05-18"), [("amaranth", "2026-04-02".to_owned())]);
    assert_eq!(standing("roof-12/sprout-tray", "2026-01-12"), [("mustard", "2026-01-11".to_owned())]);
    assert_eq!(standing("roof-12/sprout-tray", "2026-05-18"), [("mustard", "2026-05-17".to_owned())]);
    assert_eq!(standing("roof-21/new-box", "2026-03-10"), []);
}

#[test]
fn what_counts_where_nothing_was_said() {
    use crate::garden::Assumed::{Mix, Mulch, Net, Rain, Sides, SunHours};
    let demo = read(DEMO, &Garden::default()).unwrap();
    let bed = |id: &str| demo.beds.iter().find(|bed| bed.id.to_string() == id).unwrap();
    let site = |id: &str| demo.sites.iter().find(|site| site.id.as_str() == id).unwrap();
    let bare = bed("roof-21/new-box");
    assert_eq!(bare.assumed(site("roof-21")), [Mix, Sides, SunHours, Rain, Net, Mulch]);
    assert_eq!((bare.mix_counted(), bare.sun_counted(site("roof-21"))), ("house", Sun::Assumed(6.0)));
    let walled = bed("terrace-9/wall-box");
    assert_eq!(walled.sun_counted(site("terrace-9")), Sun::FromWalls);
    assert_eq!(walled.assumed(site("terrace-9")), [Sides, Net, Mulch]);
    assert!(demo.people.iter().any(|person| person.speaks == Some(Speaks::RomanisedHindi)));
}

/// 4 ft x 3 ft x 12 in is 12 cubic feet, 339.8 L (1 ft = 0.3048 m); 14 in across and 7 in deep is
/// pi x 49 x 7 = 1077.6 cubic inches, 17.66 L (1 in = 2.54 cm).
#[test]
fn inside_measures() {
    let demo = read(DEMO, &Garden::default()).unwrap();
    let litres = |id: &str| {
        let bed = demo.beds.iter().find(|bed| bed.id.to_string() == id).unwrap();
        (bed.shape.volume().base() * 10.0).round() / 10.0
    };
    assert!((litres("roof-12/east-box") - 339.8).abs() < 0.01);
    assert!((litres("roof-12/mint-basket") - 17.7).abs() < 0.01);
    assert!((litres("roof-21/herb-bag") - 20.0).abs() < 0.01);
}
