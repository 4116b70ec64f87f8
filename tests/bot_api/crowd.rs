//! A house of many clients, for what is measured: each with a roof of her own, two beds on it and a few months of work.

use std::fmt::Write;

/// Clients are told apart by so many letters.
const LETTERS: u32 = 4;

/// The name of a client: a word of its own for each number below 456 976.
pub fn name(number: usize) -> String {
    let letter = |place: u32| char::from(b'a' + (number / 26_usize.pow(place) % 26) as u8);
    format!("Guest{}", (0..LETTERS).map(letter).collect::<String>())
}

/// Her id.
pub fn id(number: usize) -> String {
    name(number).to_lowercase()
}

/// So many clients as a garden file, with the watering of so many days before 17 May 2026 on each bed.
pub fn garden(clients: usize, days: u64) -> String {
    let mut text = String::new();
    for number in 0..clients {
        client(&mut text, number, days);
    }
    text
}

fn client(text: &mut String, number: usize, days: u64) {
    let (id, name, roof) = (id(number), name(number), 1000 + number);
    // Some four hundred cells of the weather, as a town has.
    let (north, east) = (21.0 + (number % 20) as f64 * 0.05, 78.9 + (number / 20 % 20) as f64 * 0.05);
    let written = write!(
        text,
        r#"
[[sites]]
id = "roof-{roof}"
name = "Roof {roof}"
latitude = {north}
longitude = {east}
elevation_m = 310
timezone = "Asia/Kolkata"
surface = "concrete"
can = "10 L"

[[people]]
id = "{id}"
name = "{name}"
role = "client"
sites = ["roof-{roof}"]

[[beds]]
id = "east-box"
site = "roof-{roof}"
names = ["east box", "purab wala box", "पूरब वाला डिब्बा"]
kind = "box"
length = "4 ft"
width = "3 ft"
depth = "12 in"
mix = "house"
mix_added = "2026-01-02"
sun_hours = 6

[[beds]]
id = "tomato-bag"
site = "roof-{roof}"
names = ["tomato bag", "tamatar wala bag", "टमाटर वाला थैला"]
kind = "bag"
volume = "40 L"
depth = "14 in"
mix = "house"
sides = "cloth"
sun_hours = 7

[[plantings]]
bed = "roof-{roof}/east-box"
crop = "amaranth"
sown = "2026-04-20"

[[plantings]]
bed = "roof-{roof}/tomato-bag"
crop = "tomato"
planted = "2026-02-10"

[[jobs_done]]
bed = "roof-{roof}/east-box"
job = "spray"
on = "2026-05-11"
what = "neem-oil"
"#
    );
    written.expect("a text can be written to");
    let last = chrono::NaiveDate::from_ymd_opt(2026, 5, 16).expect("a day");
    for bed in ["east-box", "tomato-bag"] {
        for day in (0..days).filter_map(|back| last.checked_sub_days(chrono::Days::new(back))) {
            let job = format!("\n[[jobs_done]]\nbed = \"roof-{roof}/{bed}\"\njob = \"water\"\non = \"{day}T07:00\"\n");
            text.push_str(&job);
        }
    }
}
