//! Pictures, cards and labels from outside: nothing clipped, no box for a letter, the same structure in each language, codes
//! that another reader reads. `ROOFTEND_DRAW_OUT=DIR cargo test --test pictures` leaves every picture in a folder to look at.
#![allow(clippy::disallowed_methods, reason = "the tests leave pictures to look at")]

mod drawn;

use drawn::{Bench, LANGUAGES, Shown};
use rooftend::answering::Table;
use rooftend::drawing::{Anchor, Fill, Ink, Label, Mark, Outline, Picture, boxes, deep_link, labels, png, svg};
use rooftend::script::Language;

/// The pictures of every kind in every language, drawn once for all tests.
fn all() -> &'static [Shown] {
    static ALL: std::sync::OnceLock<Vec<Shown>> = std::sync::OnceLock::new();
    ALL.get_or_init(|| {
        let bench = Bench::open();
        LANGUAGES.into_iter().flat_map(|language| bench.all(language)).collect()
    })
}

fn of(language: Language) -> Vec<&'static Shown> {
    let tag = format!("-{}", language.tag());
    all().iter().filter(|shown| shown.name.ends_with(&tag)).collect()
}

#[test]
fn nothing_leaves_the_paper_or_runs_into_another_text() {
    for Shown { name, picture } in all() {
        let texts: Vec<_> = picture.texts().map(|placed| (placed, placed.bounds())).collect();
        assert!(!texts.is_empty(), "{name}");
        for (placed, (low, high)) in &texts {
            let inside = low.0 >= 0.0 && low.1 >= 0.0 && high.0 <= picture.width && high.1 <= picture.height;
            assert!(inside, "{name}: \"{}\" at {low:?} to {high:?}", placed.text);
        }
        for (at, (one, (low, high))) in texts.iter().enumerate() {
            for (other, (other_low, other_high)) in &texts[at + 1..] {
                // Letters: a quarter of the room above and below is for rare signs and may touch.
                let (lines, between) = ((one.style.size + other.style.size) * 0.36, (one.at.1 - other.at.1).abs());
                let meet = low.0 < other_high.0 - 1.0 && other_low.0 < high.0 - 1.0 && between < lines;
                assert!(!meet, "{name}: \"{}\" runs into \"{}\"", one.text, other.text);
            }
        }
        for mark in &picture.marks {
            if let Mark::Shape(outline, _) = mark {
                let (low, high) = outline.bounds();
                let inside =
                    low.0 >= -1.0 && low.1 >= -1.0 && high.0 <= picture.width + 1.0 && high.1 <= picture.height + 1.0;
                assert!(inside, "{name}: a shape from {low:?} to {high:?}");
            }
        }
    }
}

#[test]
fn every_letter_is_in_the_fonts_and_large_enough() {
    for Shown { name, picture } in all() {
        let least = if name.contains("card") || name.contains("labels") { 16.0 } else { 25.0 };
        for placed in picture.texts() {
            assert_eq!(boxes(&placed.text, placed.style.bold), 0, "{name}: {}", placed.text);
            assert!(placed.style.size >= least, "{name}: \"{}\" at {}", placed.text, placed.style.size);
        }
    }
}

/// All phrases and names of the knowledge base can be drawn.
#[test]
fn the_words_of_the_house_can_be_drawn() {
    let files = rooftend::knowledge::Files::embedded();
    let mut missing = std::collections::BTreeSet::new();
    for language in ["en", "hi", "hi-Latn"] {
        let text = files.text(&format!("wording/{language}.ftl")).unwrap();
        let letters = text.chars().filter(|letter| !letter.is_control());
        missing.extend(letters.filter(|letter| !rooftend::drawing::has_letters_for(&letter.to_string())));
    }
    let known = &Bench::open().house.known;
    for crop in known.crops.values() {
        for language in LANGUAGES {
            let name = crop.names.first(language);
            missing.extend(name.chars().filter(|letter| !rooftend::drawing::has_letters_for(&letter.to_string())));
        }
    }
    assert!(missing.is_empty(), "{missing:?}");
}

#[test]
fn files_are_well_formed_and_look_the_same_in_both_kinds() {
    use resvg::{tiny_skia, usvg};
    let out = std::env::var_os("ROOFTEND_DRAW_OUT").map(std::path::PathBuf::from);
    for Shown { name, picture } in all() {
        let file = svg(picture).unwrap();
        let document = usvg::roxmltree::Document::parse(&file).unwrap_or_else(|fault| panic!("{name}: {fault}"));
        let root = document.root_element();
        assert!(root.attribute("viewBox").is_some(), "{name}");
        let title = root.children().find(|node| node.has_tag_name("title")).and_then(|node| node.text());
        assert!(title.is_some_and(|title| !title.trim().is_empty()), "{name}");
        assert!(!document.descendants().any(|node| node.has_tag_name("text")), "{name}: letters are outlines");
        if let Some(out) = &out {
            std::fs::write(out.join(format!("{name}.svg")), &file).unwrap();
            std::fs::write(out.join(format!("{name}.png")), png(picture).unwrap()).unwrap();
        }
        // Dots are slow without optimisation: one language has them looked at.
        if !name.ends_with("-hi") {
            continue;
        }
        let decoded = tiny_skia::Pixmap::decode_png(&png(picture).unwrap()).unwrap();
        assert!(decoded.width() >= 1080 && decoded.height() >= 500, "{name}");
        // Without any font the file draws what the PNG shows: looked at where letters are many and joined.
        if !["water-may-hi", "plan-pot-hi", "card-two-roof-12-0-hi", "labels-hi"].contains(&name.as_str()) {
            continue;
        }
        let tree = usvg::Tree::from_str(&file, &usvg::Options::default()).unwrap();
        let mut again = tiny_skia::Pixmap::new(decoded.width(), decoded.height()).unwrap();
        let scale = decoded.width() as f32 / tree.size().width();
        resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut again.as_mut());
        let pairs = decoded.pixels().iter().zip(again.pixels());
        let differ = pairs.filter(|(one, other)| one.red().abs_diff(other.red()) > 100).count();
        let part = differ as f64 / decoded.pixels().len() as f64;
        assert!(part < 0.002, "{name}: {part} of the dots differ");
    }
}

/// The same marks in each language: as many bars, cans, circles and lines; only words and line breaks differ.
#[test]
fn languages_differ_in_words_alone() {
    let shapes = |picture: &Picture| {
        let kinds = picture.marks.iter().filter_map(|mark| match mark {
            Mark::Shape(Outline::Circle { .. }, look) => Some(("circle", look.fill)),
            Mark::Shape(Outline::Path(steps), look) if steps.len() < 20 => Some(("path", look.fill)),
            Mark::Shape(Outline::Rectangle { .. }, look) => Some(("rectangle", look.fill)),
            _ => None,
        });
        let mut kinds: Vec<_> = kinds.collect();
        kinds.sort();
        kinds
    };
    // Where a second language stands beside the first, its notes take more or less of the page from the beds.
    let one_language = |language| {
        let mut shown = of(language);
        shown.retain(|shown| !shown.name.starts_with("card-two"));
        shown
    };
    let [english, hindi, romanised] = LANGUAGES.map(one_language);
    assert!(english.len() >= 12 && english.len() == hindi.len() && hindi.len() == romanised.len());
    for ((one, two), three) in english.iter().zip(&hindi).zip(&romanised) {
        assert!(shapes(&one.picture) == shapes(&two.picture), "{}", two.name);
        assert!(shapes(&one.picture) == shapes(&three.picture), "{}", three.name);
    }
}

#[test]
fn the_weeks_bars_are_the_weeks_litres() {
    let bench = Bench::open();
    let looked = bench.look("how much water for the amaranth box this week", Language::En, drawn::MAY);
    let Some(Table::Water(week)) = looked.answer.tables.first() else { panic!("no week") };
    let sum: f64 = week.days.iter().map(|day| day.litres.value().as_litres()).sum();
    let figure = looked.answer.figures.iter().find(|figure| figure.name == "litres_this_week").unwrap();
    let rooftend::answering::FigureValue::Number { is, .. } = &figure.is else { panic!("no number") };
    assert!((sum - is.value()).abs() < 1e-6, "{sum} and {}", is.value());
    let picture = bench.picture(&looked).unwrap();
    let bars: Vec<f64> = picture
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Shape(Outline::Rectangle { size, .. }, look) if look.fill == Some(Fill::Plain(Ink::Tank)) => {
                Some(size.1)
            }
            _ => None,
        })
        .collect();
    assert_eq!(bars.len(), 7);
    for (bar, day) in bars.iter().zip(&week.days) {
        let litres = day.litres.value().as_litres();
        assert!((bar / bars[0] - litres / week.days[0].litres.value().as_litres()).abs() < 1e-6, "{litres}");
    }
    // Twice a day: fourteen cans, each with its water.
    assert!(week.days.iter().all(|day| day.turns.len() == 2));
}

#[test]
fn a_plan_has_its_plants_at_the_told_gap() {
    let bench = Bench::open();
    let looked = bench.look("how many spinach plants fit in the east box", Language::En, drawn::MAY);
    let Some(Table::Plan(plan)) = looked.answer.tables.first() else { panic!("no plan") };
    let picture = bench.picture(&looked).unwrap();
    let stems: Vec<(f64, f64)> = picture
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Shape(Outline::Circle { middle, .. }, look) if look.fill == Some(Fill::Plain(Ink::Leaf)) => {
                Some(*middle)
            }
            _ => None,
        })
        .collect();
    // Two more explain the gap.
    assert_eq!(stems.len(), plan.plants.len() + 2);
    let figure = looked.answer.figures.iter().find(|figure| figure.name == "plants").unwrap();
    let rooftend::answering::FigureValue::Number { is, .. } = &figure.is else { panic!("no number") };
    assert_eq!(plan.plants.len() as f64, is.value());
    let bed = picture.marks.iter().find_map(|mark| match mark {
        Mark::Shape(Outline::Rectangle { size, .. }, look) if look.fill == Some(Fill::Plain(Ink::Husk)) => Some(*size),
        _ => None,
    });
    let (wide, high) = bed.unwrap();
    assert!((wide / high - 4.0 / 3.0).abs() < 1e-6, "to scale");
    let gap = stems[1].0 - stems[0].0;
    assert!((gap / wide - plan.gap.as_metres() / 1.2192).abs() < 1e-6, "{gap} of {wide}");
}

#[test]
fn what_can_t_be_drawn_has_no_picture() {
    let bench = Bench::open();
    for message in ["when is the mustard tray ready", "what is eating the leaves", "how far apart do I plant chillies"]
    {
        assert!(bench.picture(&bench.look(message, Language::En, drawn::MAY)).is_none(), "{message}");
    }
}

/// Codes read back from the dots of the printed sheet by a reader that had no part in making them.
#[test]
fn a_labels_code_says_its_link() {
    use resvg::tiny_skia::Pixmap;
    let bench = Bench::open();
    let longest = "a".repeat(64);
    let payloads = ["bed-7kQ2xZ", "bed-_-9", longest.as_str(), "bed-a", "bed-b", "bed-c", "bed-d", "bed-e", "bed-f"];
    let all: Vec<Label> = payloads
        .iter()
        .map(|payload| Label {
            bed: "पूरब वाला डिब्बा".to_owned(),
            site: "Roof 12".to_owned(),
            link: deep_link("rooftend_demo_bot", payload).unwrap(),
        })
        .collect();
    let sheets = bench.with_words(Language::Hi, |words| labels(&all, words).unwrap());
    assert_eq!(sheets.len(), 2, "eight on a sheet");
    let mut read = Vec::new();
    for sheet in &sheets {
        let dots = Pixmap::decode_png(&png(sheet).unwrap()).unwrap();
        let (wide, high) = (dots.width() as usize / 2, dots.height() as usize / 4);
        // One label at a time, as a phone is held before it.
        for (across, down) in (0..8).map(|place| (place % 2, place / 2)) {
            let grey = |x: usize, y: usize| dots.pixels()[(y + down * high) * 2 * wide + x + across * wide].red();
            let mut image = rqrr::PreparedImage::prepare_from_greyscale(wide, high, grey);
            let grids = image.detect_grids();
            read.extend(grids.iter().map(|grid| grid.decode().unwrap().1));
        }
    }
    read.sort();
    let mut expected: Vec<String> = all.into_iter().map(|label| label.link).collect();
    expected.sort();
    assert_eq!(read, expected);
}

/// No word of a label crosses the line where it is cut: cells of half the sheet's width and a quarter of its height.
#[test]
fn labels_keep_within_their_cuts() {
    for Shown { name, picture } in all().iter().filter(|shown| shown.name.starts_with("labels")) {
        let (wide, high) = ((picture.width - 96.0) / 2.0, (picture.height - 96.0) / 4.0);
        let cell = |(x, y): (f64, f64)| (((x - 48.0) / wide).floor(), ((y - 48.0) / high).floor());
        for placed in picture.texts() {
            let (low, high) = placed.bounds();
            assert_eq!(cell(low), cell(high), "{name}: {}", placed.text);
        }
    }
}

#[test]
fn headings_keep_their_side() {
    for Shown { name, picture } in of(Language::En) {
        let first = picture.texts().next().unwrap();
        assert_eq!(first.style.anchor, Anchor::Start, "{name}");
    }
}
