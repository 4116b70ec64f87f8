//! Invented roofs, the same at every run: beds of every kind with crops, work on record, looks and moved jobs.

use chrono::{DateTime, Days, FixedOffset, NaiveDate};
use rooftend::answering::{BedFacts, SiteFacts};
use rooftend::garden::{
    Bed, BedId, BedKind, Change, Filed, JobDone, JobKind, Measure, Move, Overlay, Person, PersonId, Planting, Role,
    Seen, SeenKind, Shape, Site, SiteId, Start, Store,
};
use rooftend::knowledge::Knowledge;
use rooftend::weather::{Forecast, Weather};

/// Every roof has so many.
pub const BEDS_A_ROOF: usize = 5;
const SEED: u64 = 20_260_518;

/// The evening on which all is planned.
pub fn now() -> DateTime<FixedOffset> {
    "2026-05-18T18:00:00+05:30".parse().expect("a moment")
}

/// SplitMix64 (Steele, Lea and Flood 2014): small, and the same everywhere.
struct Dice(u64);

impl Dice {
    fn below(&mut self, sides: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (mixed ^ (mixed >> 31)) % sides
    }

    fn one_in(&mut self, sides: u64) -> bool {
        self.below(sides) == 0
    }

    fn of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len() as u64) as usize]
    }

    fn days_ago(&mut self, from: u64, until: u64) -> NaiveDate {
        now().date_naive() - Days::new(from + self.below(until - from))
    }
}

/// Makes one roof after the other.
pub struct Roofs<'a> {
    known: &'a Knowledge,
    forecast: Option<&'a Forecast>,
    grown: Vec<&'a str>,
    sprouted: Vec<&'a str>,
    dice: Dice,
    made: usize,
}

impl<'a> Roofs<'a> {
    pub fn new(known: &'a Knowledge, forecast: &'a Forecast) -> Self {
        Self { forecast: Some(forecast), ..Self::bare(known) }
    }

    fn bare(known: &'a Knowledge) -> Self {
        let ids = |keep: &dyn Fn(&rooftend::knowledge::Crop) -> bool| {
            known.crops.values().filter(|crop| keep(crop)).map(|crop| crop.id.as_str()).collect()
        };
        let (grown, sprouted) = (ids(&|crop| crop.season.is_some()), ids(&|crop| crop.microgreen.is_some()));
        Self { known, forecast: None, grown, sprouted, dice: Dice(SEED), made: 0 }
    }

    /// The next roof as an answer sees it.
    pub fn facts(&mut self) -> SiteFacts<'a> {
        let (site, beds) = self.roof();
        let position = (site.latitude_deg, site.longitude_deg, site.elevation_m);
        let weather = Weather::at(position, self.forecast, self.known);
        SiteFacts { site, now: now(), beds, weather }
    }

    fn roof(&mut self) -> (Site, Vec<BedFacts>) {
        let id = SiteId::new(&format!("roof-{:07}", self.made)).expect("an id");
        self.made += 1;
        let site = Site {
            name: format!("Roof {}", self.made),
            // Within a city of 30 km.
            latitude_deg: 21.0 + self.dice.below(300) as f64 / 1_000.0,
            longitude_deg: 78.95 + self.dice.below(300) as f64 / 1_000.0,
            elevation_m: 310.0,
            timezone: chrono_tz::Asia::Kolkata,
            surface: None,
            engineer_limit_kn_m2: None,
            water_ec_ds_m: self.dice.one_in(2).then_some(0.9),
            hose_l_min: None,
            can: None,
            walls: Vec::new(),
            id,
        };
        let beds = (0..BEDS_A_ROOF).map(|place| self.bed(BedId::at(&site.id, &format!("bed-{place}")).expect("an id")));
        let beds = beds.collect();
        (site, beds)
    }

    fn bed(&mut self, id: BedId) -> BedFacts {
        let dice = &mut self.dice;
        let length = |text| Measure::read(text).expect("a length");
        let kind = dice.of(&[BedKind::Box, BedKind::Box, BedKind::Basket, BedKind::Pot, BedKind::Bag, BedKind::Tray]);
        let shape = match kind {
            BedKind::Box => Shape::Box {
                length: length(dice.of(&["3 ft", "4 ft", "6 ft"])),
                width: length(dice.of(&["2 ft", "3 ft"])),
                depth: length(dice.of(&["9 in", "12 in"])),
            },
            BedKind::Tray => Shape::Box { length: length("2 ft"), width: length("18 in"), depth: length("3 in") },
            BedKind::Basket => Shape::Round { diameter: length("14 in"), depth: length("7 in") },
            BedKind::Pot => Shape::Round { diameter: length("12 in"), depth: length("12 in") },
            BedKind::Bag => Shape::Bag { volume: Measure::read("20 L").expect("a volume"), depth: None },
        };
        let mut bed = Bed::bare(id.clone(), kind, shape);
        let tray = kind == BedKind::Tray;
        bed.mix = tray.then(|| "tray".to_owned());
        bed.mix_added = Some(dice.days_ago(30, 150));
        bed.net_percent = dice.one_in(5).then_some(50.0);
        bed.sun_hours = Some(4.0 + dice.below(5) as f64);
        let crops = if tray { &self.sprouted } else { &self.grown };
        let count = if kind == BedKind::Box { 1 + dice.below(2) } else { 1 };
        let start = |dice: &mut Dice| Start::Sown(if tray { dice.days_ago(1, 12) } else { dice.days_ago(5, 80) });
        let plantings: Vec<Planting> = (0..count)
            .map(|_| Planting {
                bed: id.clone(),
                crop: dice.of(crops).to_owned(),
                microgreen: tray,
                start: start(dice),
                plants: None,
            })
            .collect();
        let mut jobs: Vec<JobDone> = Vec::new();
        let mut did = |job: JobKind, on: NaiveDate, what: Option<&str>| {
            let on = on.to_string().parse().expect("a day");
            jobs.push(JobDone { bed: id.clone(), job, on, what: what.map(str::to_owned), amount: None });
        };
        for ago in [2, 9, 16].into_iter().filter(|_| !tray) {
            did(JobKind::Spray, dice.days_ago(ago, ago + 7), Some("neem-oil"));
        }
        did(JobKind::Feed, dice.days_ago(3, 20), None);
        for ago in 1..5 {
            did(JobKind::Water, dice.days_ago(ago, ago + 1), None);
        }
        if dice.one_in(2) {
            did(JobKind::Pick, dice.days_ago(1, 9), plantings.first().map(|planting| planting.crop.as_str()));
        }
        jobs.sort_by_key(|job| job.on.date());
        let looks = [SeenKind::StillWet, SeenKind::DryEarly, SeenKind::RanThrough];
        let seen: Vec<Seen> = (0..dice.below(3))
            .map(|_| Seen {
                bed: id.clone(),
                on: format!("{}T13:00", dice.days_ago(1, 20)).parse().expect("an hour"),
                what: dice.of(&looks),
            })
            .collect();
        let moved = dice.one_in(12).then(|| Move {
            bed: id.clone(),
            job: JobKind::Feed,
            what: None,
            to: now().date_naive() + Days::new(dice.below(6)),
            by: None,
            at: now().to_utc(),
            after: jobs.iter().rfind(|job| job.job == JobKind::Feed).map(|job| job.on.date()),
        });
        BedFacts { bed, net_unrated: false, plantings, jobs, moves: moved.into_iter().collect(), seen }
    }
}

/// A store with so many beds, each roof with a client and her chat; and one owner of all, who has a chat too.
pub fn store_of(known: &Knowledge, beds: usize) -> Overlay<'static> {
    let store = Overlay::in_memory();
    let mut roofs = Roofs::bare(known);
    let person = |id: &str, role, sites| Person {
        id: PersonId::new(id).expect("an id"),
        name: "Somebody Invented".to_owned(),
        role,
        sites,
        speaks: None,
    };
    let card = |chat: usize, person: &str| {
        let value = serde_json::json!({
            "chat": chat, "person": person, "language": "en", "since": "2026-05-01T00:00:00Z",
        });
        Change::put(Filed { drawer: "chats".to_owned(), key: chat.to_string(), value })
    };
    let mut changes = vec![Change::put(person("owner", Role::Owner, Vec::new())), card(1, "owner")];
    for number in 0..beds.div_ceil(BEDS_A_ROOF) {
        let (site, beds) = roofs.roof();
        let client = format!("client-{number}");
        changes.push(Change::put(person(&client, Role::Client, vec![site.id.clone()])));
        changes.push(card(number + 2, &client));
        changes.push(Change::put(site));
        for bed in beds {
            changes.push(Change::put(bed.bed));
            changes.extend(bed.plantings.into_iter().map(Change::put));
            changes.extend(bed.jobs.into_iter().map(Change::put));
            changes.extend(bed.seen.into_iter().map(Change::put));
            changes.extend(bed.moves.into_iter().map(Change::put));
        }
    }
    store.write(changes).expect("in memory");
    store
}
