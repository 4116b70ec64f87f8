//! Whatever a garden holds, its export and its records read back the same.

use super::*;
use crate::garden::{
    Bed, BedId, JobDone, JobKind, Measure, Move, Person, PersonId, Planting, RainExposure, Role, Seen, SeenKind, Shape,
    Sides, Site, Start, Wall, When,
};
use crate::quantity::{Length, Unit, Volume, Written};
use chrono::{DateTime, Days, NaiveDate};
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

fn day() -> impl Strategy<Value = NaiveDate> {
    (0..2000_u64).prop_map(|days| NaiveDate::from_ymd_opt(2024, 1, 1).unwrap() + Days::new(days))
}

fn when() -> impl Strategy<Value = When> {
    (day(), option::of((0..24_u32, 0..60_u32))).prop_map(|(day, time)| match time {
        Some((hour, minute)) => When::Moment(day.and_hms_opt(hour, minute, 0).unwrap()),
        None => When::Day(day),
    })
}

fn length() -> impl Strategy<Value = Measure<Length>> {
    let units = select(vec![Unit::Inch, Unit::Centimetre, Unit::Foot]);
    (1..600_u32, units).prop_filter_map("too long", |(tenths, unit)| {
        Measure::of(Written { value: f64::from(tenths) / 10.0, unit })
            .ok()
            .filter(|length| length.quantity() <= Length::metres(3.0))
    })
}

fn volume() -> impl Strategy<Value = Measure<Volume>> {
    (1..999_u32).prop_map(|tenths| Measure::of(Written { value: f64::from(tenths) / 10.0, unit: Unit::Litre }).unwrap())
}

/// Any text that a person may type, quotes, backslashes and line ends as well, that is not blank.
fn text() -> impl Strategy<Value = String> {
    "\\PC{0,12}[a-zअ-ह\"\\\\\n\t#']{1,4}".prop_filter("blank", |text| !text.trim().is_empty())
}

fn site() -> impl Strategy<Value = Site> {
    let wall = (0.0..=360.0, length(), length());
    let wall = wall.prop_map(|(bearing_deg, height, distance)| Wall { bearing_deg, height, distance });
    (
        text(),
        -90.0..=90.0,
        -180.0..=180.0,
        option::of(text()),
        option::of(0.1..=50.0),
        option::of(volume()),
        prop::collection::vec(wall, 0..3),
    )
        .prop_map(|(name, latitude_deg, longitude_deg, surface, limit, can, walls)| Site {
            id: SiteId::new("roof").unwrap(),
            name,
            latitude_deg,
            longitude_deg,
            elevation_m: 310.0,
            timezone: chrono_tz::Asia::Kolkata,
            surface,
            engineer_limit_kn_m2: limit,
            water_ec_ds_m: limit.map(|limit| limit / 3.0),
            hose_l_min: limit,
            can,
            walls,
        })
}

fn shape() -> impl Strategy<Value = (BedKind, Shape)> {
    prop_oneof![
        (length(), length(), length())
            .prop_map(|(length, width, depth)| (BedKind::Tray, Shape::Box { length, width, depth })),
        (length(), length()).prop_map(|(diameter, depth)| (BedKind::Pot, Shape::Round { diameter, depth })),
        (volume(), option::of(length())).prop_map(|(volume, depth)| (BedKind::Bag, Shape::Bag { volume, depth })),
    ]
}

fn bed() -> impl Strategy<Value = Bed> {
    (
        shape(),
        prop::collection::vec(text(), 0..3),
        option::of(select(MIXES.to_vec())),
        option::of(day()),
        option::of(select(Sides::ALL.to_vec())),
        option::of(0.0..=24.0),
        option::of(select(RainExposure::ALL.to_vec())),
        option::of(0.0..=95.0),
        option::of(any::<bool>()),
    )
        .prop_map(|((kind, shape), names, mix, mix_added, sides, sun_hours, rain, net_percent, mulch)| Bed {
            id: BedId::new("roof/box").unwrap(),
            names,
            kind,
            shape,
            mix: mix.map(Into::into),
            mix_added,
            sides,
            sun_hours,
            rain,
            net_percent,
            mulch,
        })
}

fn job() -> impl Strategy<Value = JobDone> {
    let kinds =
        vec![(JobKind::Spray, "neem-oil"), (JobKind::Pick, "okra"), (JobKind::Net, "up"), (JobKind::Mix, "house")];
    let amount = (1..5000_u32, select(vec![Unit::Gram, Unit::Millilitre, Unit::Percent, Unit::GramPerLitre]));
    (select(kinds), any::<bool>(), when(), option::of(amount)).prop_map(|((job, what), said, on, amount)| JobDone {
        bed: BedId::new("roof/box").unwrap(),
        job,
        on,
        what: said.then(|| what.to_owned()),
        amount: amount.map(|(hundredths, unit)| Written { value: f64::from(hundredths) / 100.0, unit }),
    })
}

/// A move of a picking carries its crop; of its other fields each may be missing.
fn moved() -> impl Strategy<Value = Move> {
    let jobs = select(vec![(JobKind::Spray, None), (JobKind::Net, None), (JobKind::Pick, Some("okra"))]);
    (jobs, day(), any::<bool>(), 0..2_000_000_000_000_u64, option::of(day())).prop_map(
        |((job, what), to, by, at, after)| Move {
            bed: BedId::new("roof/box").unwrap(),
            job,
            what: what.map(Into::into),
            to,
            by: by.then(|| PersonId::new("meera").unwrap()),
            at: DateTime::from_timestamp_millis(i64::try_from(at).unwrap()).unwrap(),
            after,
        },
    )
}

fn garden() -> impl Strategy<Value = Garden> {
    let speaks = option::of(select(Speaks::ALL.to_vec()));
    let planting = (select(CROPS.to_vec()), any::<bool>(), any::<bool>(), day(), option::of(1..100_000_u32));
    let seen = (when(), select(SeenKind::ALL.to_vec()));
    (site(), bed(), text(), speaks, planting, job(), seen, option::of(moved())).prop_map(
        |(site, bed, name, speaks, (crop, microgreen, sown, day, plants), job, (on, what), moved)| Garden {
            people: vec![Person {
                id: PersonId::new("meera").unwrap(),
                name,
                role: Role::Client,
                sites: vec![site.id.clone()],
                speaks,
            }],
            plantings: vec![Planting {
                bed: bed.id.clone(),
                crop: crop.into(),
                microgreen: microgreen && bed.kind == BedKind::Tray,
                start: if sown { Start::Sown(day) } else { Start::Planted(day) },
                plants,
            }],
            seen: vec![Seen { bed: bed.id.clone(), on, what }],
            sites: vec![site],
            beds: vec![bed],
            jobs: vec![job],
            moves: moved.into_iter().collect(),
            ..Garden::default()
        },
    )
}

proptest! {
    #[test]
    fn an_export_reads_back_the_same(garden in garden()) {
        let text = write_garden(&garden);
        prop_assert_eq!(read(&text, &Garden::default()).map_err(|problems| format!("{problems:?}\n{text}")), Ok(garden));
    }

    /// Whatever a file holds, it is read or refused, without a panic.
    #[test]
    fn no_text_breaks_the_reader(text in "(\\[\\[(sites|beds|seen|people)\\]\\]\n|[a-z]{1,6} = |\"\\PC{0,5}\"|[0-9.]{1,4}|\\PC|\n){0,40}") {
        if let Err(problems) = read(&text, &Garden::default()) {
            prop_assert!(!problems.is_empty());
        }
    }

    /// Records of the store read back the same, whatever their numbers and texts.
    #[test]
    fn records_read_back_from_json(garden in garden()) {
        for record in garden.into_records() {
            let json = record.to_json().unwrap();
            prop_assert_eq!(Record::from_json(record.kind(), &json).unwrap(), record);
        }
    }
}
