//! Gardens that a test writes itself, asked from outside: what is on record has to move the sums.
#![allow(clippy::disallowed_methods, reason = "the tests write the files that commands read")]

use serde_json::Value;
use std::fs;
use std::process::Command;

/// The program, with what it derives from the knowledge base kept for all tests.
fn program() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rooftend"));
    command.env("ROOFTEND_CACHE", concat!(env!("CARGO_TARGET_TMPDIR"), "/cache"));
    command
}

/// A garden in a folder of its own.
struct Garden {
    folder: tempfile::TempDir,
    forecast: Option<String>,
}

const ROOF: &str = r#"
[[sites]]
id = "roof"
name = "Roof"
latitude = 20.59
longitude = 78.96
elevation_m = 247
timezone = "Asia/Kolkata"

[[people]]
id = "asha"
name = "Asha"
role = "owner"
speaks = "en"
"#;

const BOX: &str = r#"
[[beds]]
id = "east-box"
site = "roof"
kind = "box"
length = "4 ft"
width = "3 ft"
depth = "12 in"
"#;

const AMARANTH: &str = r#"
[[plantings]]
bed = "roof/east-box"
crop = "amaranth"
sown = "2026-03-20"
"#;

impl Garden {
    fn of(parts: &[&str]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("garden.toml");
        fs::write(&file, parts.concat()).unwrap();
        let garden = Self { folder, forecast: None };
        garden.run(&["import", file.to_str().unwrap()]);
        garden
    }

    /// With equal days from a date on.
    fn under(mut self, first: &str, rain_mm: &[f64]) -> Self {
        let first: chrono::NaiveDate = first.parse().unwrap();
        let days: Vec<String> = first
            .iter_days()
            .zip(rain_mm)
            .map(|(date, rain)| {
                format!(
                    r#"{{"date":"{date}","tmax_c":34,"tmin_c":24,"rh_mean_percent":60,"wind_2m_m_s":1.5,"solar_mj_m2":20,"rain_mm":{rain}}}"#
                )
            })
            .collect();
        let text = format!(
            r#"{{"latitude":20.59,"longitude":78.96,"elevation_m":247,"timezone":"Asia/Kolkata","days":[{}]}}"#,
            days.join(",")
        );
        let file = self.folder.path().join("forecast.json");
        fs::write(&file, text).unwrap();
        self.forecast = Some(file.display().to_string());
        self
    }

    fn run(&self, arguments: &[&str]) -> String {
        let mut command = program();
        let output = command.arg("--data").arg(self.folder.path().join("data")).args(arguments).output().unwrap();
        assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).unwrap()
    }

    fn ask(&self, now: &str, message: &str) -> Value {
        let mut arguments = vec!["ask", "--json", "--as", "asha", "--now", now];
        if let Some(forecast) = &self.forecast {
            arguments.extend(["--forecast", forecast]);
        }
        arguments.push(message);
        serde_json::from_str(&self.run(&arguments)).unwrap()
    }

    fn exported(&self) -> String {
        let file = self.folder.path().join("out.toml").display().to_string();
        self.run(&["export", &file]);
        fs::read_to_string(file).unwrap()
    }
}

fn figure<'a>(reply: &'a Value, name: &str) -> Option<&'a Value> {
    reply["figures"].as_array().unwrap().iter().find(|figure| figure["name"] == name).map(|figure| &figure["value"])
}

#[track_caller]
fn number(reply: &Value, name: &str) -> f64 {
    figure(reply, name).and_then(Value::as_f64).unwrap_or_else(|| panic!("no {name}: {reply:#}"))
}

fn text(reply: &Value) -> &str {
    reply["text"].as_str().unwrap()
}

/// A roof of which no weather is known: its bed is in no sum, and the reply says so.
const FAR: &str = r#"
[[sites]]
id = "far"
name = "Far"
latitude = -60.0
longitude = 10.0
elevation_m = 10
timezone = "Asia/Kolkata"

[[beds]]
id = "lost-pot"
site = "far"
kind = "pot"
diameter = "14 in"
depth = "12 in"
"#;

#[test]
fn a_bed_that_cannot_be_summed_is_named() {
    let garden = Garden::of(&[ROOF, BOX, AMARANTH, FAR]);
    for message in ["how much water do all my beds need", "we are going away for 5 days, what about the plants"] {
        let reply = garden.ask("2026-05-18T08:00:00+05:30", message);
        assert!(text(&reply).contains("Not counted in this") && text(&reply).contains("lost pot"), "{reply:#}");
        assert!(figure(&reply, "litres_per_day_site").is_none(), "a total with a bed missing: {reply:#}");
    }
}

#[test]
fn a_net_on_record_moves_the_water() {
    let job = |on: &str, what: &str, amount: &str| {
        format!("\n[[jobs_done]]\nbed = \"roof/east-box\"\njob = \"net\"\non = \"{on}\"\nwhat = \"{what}\"\n{amount}")
    };
    let litres = |jobs: &[String], bed: &str| {
        let jobs = jobs.concat();
        let reply = Garden::of(&[ROOF, bed, &jobs, AMARANTH])
            .ask("2026-05-18T08:00:00+05:30", "how much water does the east box need this week");
        (number(&reply, "litres_this_week"), text(&reply).contains("I took the net to cut 35 %"))
    };
    let (bare, _) = litres(&[], BOX);
    let (up, told) = litres(&[job("2026-04-01", "up", "")], BOX);
    assert!(up < bare * 0.9 && told, "{up} under a net, {bare} without");
    let (half, told) = litres(&[job("2026-04-01", "up", "amount = \"50 percent\"")], BOX);
    assert!(half < up && !told, "{half} under half the light, {up}");
    let rated = format!("{BOX}net_percent = 50\n");
    assert_eq!(litres(&[job("2026-04-01", "up", "")], &rated).0, half);
    assert_eq!(litres(&[job("2026-04-01", "up", ""), job("2026-05-02T18:00", "down", "")], &rated).0, bare);
    assert_eq!(litres(&[job("2026-05-02T09:00", "down", ""), job("2026-05-02T18:00", "up", "")], &rated).0, half);
    // What has not come yet moves nothing.
    assert_eq!(litres(&[job("2026-05-20", "down", "")], &rated).0, half);
}

#[test]
fn a_new_mix_on_record_counts_as_the_day_it_was_added() {
    let old = format!("{BOX}mix_added = \"2025-06-01\"\n");
    let job = "\n[[jobs_done]]\nbed = \"roof/east-box\"\njob = \"mix\"\non = \"2026-05-10\"\nwhat = \"house\"\n";
    let next = |parts: &[&str]| {
        let reply = Garden::of(parts).ask("2026-05-18T08:00:00+05:30", "when do I feed the east box next");
        figure(&reply, "next_feed").cloned().unwrap_or_else(|| panic!("no day: {reply:#}"))
    };
    assert_eq!(next(&[ROOF, &old, AMARANTH]), "2026-05-18");
    // 60 days on.
    assert_eq!(next(&[ROOF, &old, job, AMARANTH]), "2026-07-09");
}

/// The same kilograms leave the same nitrogen missing, whichever planting of the crop they came from; two
/// plantings of one crop take no kilogram twice.
#[test]
fn a_picking_counts_once_and_for_good() {
    let bed = format!("{BOX}mix_added = \"2026-01-01\"\n");
    let planting =
        |sown: &str| format!("\n[[plantings]]\nbed = \"roof/east-box\"\ncrop = \"amaranth\"\nsown = \"{sown}\"\n");
    let job = |job: &str, on: &str, more: &str| {
        format!("\n[[jobs_done]]\nbed = \"roof/east-box\"\njob = \"{job}\"\non = \"{on}\"\nwhat = \"amaranth\"\n{more}")
    };
    let taken = |parts: &[String]| {
        let reply = Garden::of(&[ROOF, &bed, &parts.concat()])
            .ask("2026-05-18T08:00:00+05:30", "when do I feed the east box next");
        figure(&reply, "nitrogen_short_g").and_then(Value::as_f64).unwrap_or_else(|| panic!("no sum: {reply:#}"))
    };
    let kilos = "amount = \"40 kg\"\n";
    let standing = planting("2026-05-10");
    let before = [planting("2026-01-05"), job("clear", "2026-05-01", ""), standing.clone()];
    let (none, early) = (taken(&before), {
        let mut with = before.to_vec();
        with.push(job("pick", "2026-03-10", kilos));
        taken(&with)
    });
    assert!(early > none + 50.0, "{early} after 40 kg of an earlier planting, {none} without");
    let one = [planting("2026-01-05"), job("pick", "2026-05-12", kilos)];
    let two = [planting("2026-01-05"), planting("2026-05-01"), job("pick", "2026-05-12", kilos)];
    let (one, two) = (taken(&one), taken(&two));
    assert!(two < one * 1.5, "{two} with a second planting, {one} without: the picking counts once");
}

/// The morning of one day is the evening before elsewhere: each bed has its own site's day.
#[test]
fn each_bed_has_the_day_and_the_clock_of_its_site() {
    let phoenix = r#"
[[sites]]
id = "yard"
name = "Yard"
latitude = 33.43
longitude = -112.0
elevation_m = 337
timezone = "America/Phoenix"

[[beds]]
id = "desert-box"
site = "yard"
kind = "box"
length = "4 ft"
width = "3 ft"
depth = "12 in"

[[plantings]]
bed = "yard/desert-box"
crop = "spinach"
sown = "2026-05-01"
"#;
    let garden = Garden::of(&[ROOF, BOX, AMARANTH, phoenix]);
    // 08:00 on the 18th in Nagpur is 19:30 on the 17th in Phoenix.
    let now = "2026-05-18T08:00:00+05:30";
    garden.ask(now, "gave water to the east box");
    garden.ask(now, "gave water to the desert box");
    garden.ask(now, "gave water to the desert box today");
    let kept = garden.exported();
    assert!(kept.contains("2026-05-18T08:00"), "{kept}");
    assert!(kept.contains("2026-05-17T19:30"), "{kept}");
    let reply = garden.ask(now, "when do I spray the desert box next");
    assert!(reply["working"].to_string().contains("due Sun 17 May"), "{reply:#}");
    assert!(kept.contains("on = \"2026-05-17\""), "today is the day where the bed stands: {kept}");
    // The hours too: before sunrise or after sunset by the clock of Phoenix, not twelve and a half hours on.
    let from = figure(&reply, "spray_from").and_then(Value::as_str).unwrap();
    assert!(("04:00".."06:00").contains(&from) || ("18:00".."20:00").contains(&from), "{from}");
}

/// Whoever names a place gets its clock, whatever her own.
#[test]
fn hours_at_a_named_place_stand_on_its_clock() {
    let garden = Garden::of(&[ROOF]);
    let now = "2026-05-18T08:00:00+05:30";
    let arguments = ["ask", "--json", "--now", now, "what time to spray neem oil on tomato in phoenix"];
    let reply: Value = serde_json::from_str(&garden.run(&arguments)).unwrap();
    let from = figure(&reply, "spray_from").and_then(Value::as_str).unwrap_or_else(|| panic!("no hour: {reply:#}"));
    assert!(("04:00".."06:00").contains(&from) || ("18:00".."20:00").contains(&from), "{from}");
}

#[test]
fn two_waterings_of_a_day_are_two_and_one_told_twice_is_one() {
    let waterings = |told: &[(&str, &str)]| {
        let garden = Garden::of(&[ROOF, BOX, AMARANTH]);
        for (now, message) in told {
            let reply = garden.ask(now, message);
            assert_eq!(reply["outcome"], "recorded", "{message}: {reply:#}");
        }
        let kept = garden.exported();
        let mut times: Vec<String> = kept
            .split("[[jobs_done]]")
            .filter(|job| job.contains("job = \"water\""))
            .filter_map(|job| {
                job.lines().find_map(|line| line.strip_prefix("on = ")).map(|on| on.trim_matches('"').to_owned())
            })
            .collect();
        times.sort();
        times
    };
    let evening = "2026-05-18T20:00:00+05:30";
    assert_eq!(
        waterings(&[(evening, "watered the east box this morning"), (evening, "watered the east box this evening")]),
        ["2026-05-18T07:00", "2026-05-18T18:00"]
    );
    assert_eq!(
        waterings(&[(evening, "I gave the east box water yesterday morning and evening")]),
        ["2026-05-17T07:00", "2026-05-17T18:00"]
    );
    assert_eq!(
        waterings(&[(evening, "aaj subah east box mein paani diya"), (evening, "आज सुबह east box में पानी दिया")]),
        ["2026-05-18T07:00"]
    );
    // Said at breakfast, the evening is that of the day before.
    assert_eq!(waterings(&[("2026-05-18T08:00:00+05:30", "shaam ko east box mein paani diya")]), ["2026-05-17T18:00"]);
    let told = ["2026-05-18T08:00:00+05:30", "2026-05-18T08:20:00+05:30", "2026-05-18T18:00:00+05:30"];
    assert_eq!(
        waterings(&told.map(|now| (now, "gave 5 litres of water to the east box"))),
        ["2026-05-18T08:00", "2026-05-18T18:00"]
    );
    // Another amount is another watering.
    assert_eq!(
        waterings(&[
            (told[0], "gave 5 litres of water to the east box"),
            (told[1], "gave 2 litres of water to the east box")
        ]),
        ["2026-05-18T08:00", "2026-05-18T08:20"]
    );
}

#[test]
fn saplings_are_counted_as_they_stand() {
    let garden = Garden::of(&[ROOF, BOX]);
    let reply = garden.ask("2026-10-01T08:00:00+05:30", "can I plant tomato saplings in the east box now");
    let room = garden.ask("2026-10-01T08:00:00+05:30", "how many tomato plants fit in the east box");
    let (plants, raised) = (number(&room, "plants"), number(&reply, "saplings"));
    assert!((raised - (plants * 1.25).ceil()).abs() < 1e-9, "{raised} raised for {plants} that fit");
}

/// The spray that keeps from picking longest decides, on whichever of the beds and with whatever it was done.
#[test]
fn the_longest_wait_decides() {
    let west = BOX.replace("east-box", "west-box");
    let planted = AMARANTH.replace("east-box", "west-box");
    let job = |bed: &str, on: &str, what: &str| {
        format!("\n[[jobs_done]]\nbed = \"roof/{bed}\"\njob = \"spray\"\non = \"{on}\"\nwhat = \"{what}\"\n")
    };
    let from = |jobs: &[String]| {
        let garden = Garden::of(&[ROOF, BOX, &west, &jobs.concat(), AMARANTH, &planted]);
        let reply = garden.ask("2026-05-18T08:00:00+05:30", "when can I pick the amaranth after the spray");
        assert_eq!(reply["reading"]["beds"].as_array().unwrap().len(), 2, "{reply:#}");
        text(&reply).to_owned()
    };
    let early = job("east-box", "2026-05-10", "neem-oil");
    // A week after the later of two, though it was on the second bed.
    assert!(from(&[early.clone(), job("west-box", "2026-05-16", "neem-oil")]).contains("Sat 23 May"));
    // Soap asks for less than the oil that was sprayed a day before it.
    let said = from(&[early, job("west-box", "2026-05-15", "neem-oil"), job("west-box", "2026-05-16", "soap")]);
    assert!(said.contains("Fri 22 May"), "{said}");
}

#[test]
fn rain_and_pickings_move_the_spray() {
    let spray = "\n[[jobs_done]]\nbed = \"roof/east-box\"\njob = \"spray\"\non = \"2026-05-17\"\nwhat = \"neem-oil\"\n";
    let next = |rain: &[f64], planting: &str| {
        let garden = Garden::of(&[ROOF, BOX, spray, planting]).under("2026-05-18", rain);
        let reply = garden.ask("2026-05-18T08:00:00+05:30", "when do I spray the east box next");
        (figure(&reply, "next_spray").unwrap().as_str().unwrap().to_owned(), text(&reply).to_owned())
    };
    let dry = [0.0; 10];
    let mut wet = dry;
    wet[1] = 25.0;
    let (day, _) = next(&dry, AMARANTH);
    assert_eq!(day, "2026-05-24");
    let (day, said) = next(&wet, AMARANTH);
    assert!(day == "2026-05-20" && said.contains("The rain of Tue 19 May washes the last one off"), "{day}: {said}");
    // Amaranth is first cut some three weeks after it is sown in such heat: within a week of the next spray.
    let sown = AMARANTH.replace("2026-03-20", "2026-05-04");
    let garden = Garden::of(&[ROOF, BOX, spray, &sown]).under("2026-05-18", &dry);
    let ready = garden.ask("2026-05-18T08:00:00+05:30", "when is the amaranth in the east box ready");
    let ready = figure(&ready, "first_harvest").unwrap().as_str().unwrap().to_owned();
    let (day, said) = next(&dry, &sown);
    assert!(("2026-05-24".."2026-05-31").contains(&ready.as_str()), "{ready}");
    assert!(day > ready && said.contains("pick that first"), "{ready} {day}: {said}");
}

/// Another roof of the same people, whose box goes by the same name.
const BACK_ROOF: &str = r#"
[[sites]]
id = "back"
name = "Back terrace"
latitude = 20.60
longitude = 78.97
elevation_m = 247
timezone = "Asia/Kolkata"

[[beds]]
id = "box-two"
site = "back"
names = ["East box"]
kind = "box"
length = "3 ft"
width = "2 ft"
depth = "10 in"
"#;

#[test]
fn of_two_beds_of_one_name_it_is_asked_which() {
    let named = BOX.replace("kind =", "names = [\"east box\", \"long box\"]\nkind =");
    let garden = Garden::of(&[ROOF, &named, AMARANTH, BACK_ROOF]);
    let now = "2026-05-18T08:00:00+05:30";
    for message in
        ["how much water for the east box", "watered the east box with 6 litres", "east box mein kitna paani"]
    {
        let reply = garden.ask(now, message);
        assert_eq!(reply["outcome"], "asked_back", "{message}: {reply:#}");
        assert_eq!(reply["choices"].as_array().map(Vec::len), Some(2), "{message}: {reply:#}");
    }
    assert!(!garden.exported().contains("jobs_done"), "nothing is noted before it is told which");
    // A name that only one of them has, and the roof, tell them apart.
    for message in ["watered the long box", "watered the east box on the roof"] {
        let reply = garden.ask(now, message);
        assert_eq!(reply["outcome"], "recorded", "{message}: {reply:#}");
        assert_eq!(reply["reading"]["beds"], serde_json::json!(["roof/east-box"]), "{message}: {reply:#}");
    }
    let reply = garden.ask(now, "watered the east box on the back terrace");
    assert_eq!(reply["reading"]["beds"], serde_json::json!(["back/box-two"]), "{reply:#}");
}

/// What was not understood goes to the crew in its own words, where a person is asked for instead of a choice.
#[test]
fn the_crew_reads_what_was_not_understood() {
    let bag = "[[beds]]\nid = \"tomato-bag\"\nsite = \"roof\"\nkind = \"bag\"\nvolume = \"20 L\"\n\n\
        [[plantings]]\nbed = \"roof/tomato-bag\"\ncrop = \"tomato\"\nplanted = \"2026-03-20\"\n";
    let garden = Garden::of(&[ROOF, bag]);
    let asked = garden.ask("2026-05-18T08:00:00+05:30", "tomato bag?");
    assert_eq!(asked["outcome"], "asked_back", "{asked:#}");
    let handed = garden.ask("2026-05-18T08:01:00+05:30", "Let me talk to someone");
    assert_eq!(handed["outcome"], "handed_over", "{handed:#}");
    let waiting = garden.run(&["questions"]);
    assert!(waiting.contains("tomato bag?"), "{waiting}");
}

/// What fell due on days gone by is told until it is noted.
#[test]
fn what_was_missed_is_told_until_it_is_noted() {
    let sprayed = "[[jobs_done]]\nbed = \"roof/east-box\"\njob = \"spray\"\nwhat = \"neem-oil\"\non = \"2026-05-04\"\n";
    let garden = Garden::of(&[ROOF, BOX, AMARANTH, sprayed]);
    let now = "2026-05-18T08:00:00+05:30";
    let missed = garden.ask(now, "did I miss any spray");
    let jobs = |reply: &Value| figure(reply, "jobs").and_then(Value::as_array).map_or(0, Vec::len);
    assert_eq!((missed["outcome"].as_str(), jobs(&missed)), (Some("answered"), 1), "{missed:#}");
    garden.ask("2026-05-18T08:01:00+05:30", "sprayed neem on the east box on 14 may");
    let open = garden.ask("2026-05-18T08:02:00+05:30", "did I miss any spray");
    assert_eq!(jobs(&open), 0, "{open:#}");
}
