//! `[[sites]]`.

use super::{Reader, Table, table_of};
use crate::garden::id::SiteId;
use crate::garden::site::{Site, Wall};
use crate::quantity::{Length, Volume};
use chrono_tz::Tz;
use std::ops::Range;
use toml::de::DeTable;

const KEYS: [&str; 12] = [
    "id",
    "name",
    "latitude",
    "longitude",
    "elevation_m",
    "timezone",
    "surface",
    "engineer_limit_kn_m2",
    "water_ec_ds_m",
    "hose_l_min",
    "can",
    "walls",
];

impl Reader<'_> {
    pub(super) fn site(&mut self, table: &DeTable<'_>, span: Range<usize>) -> Option<()> {
        let notes = &mut self.notes;
        let table = Table::new("site", table, span, &KEYS, notes);
        for (key, expected) in [
            ("id", "\"roof-12\""),
            ("name", "\"Roof 12\""),
            ("latitude", "degrees north, like 21.15"),
            ("longitude", "degrees east, like 79.09"),
            ("elevation_m", "metres over the sea, like 310"),
            ("timezone", "\"Asia/Kolkata\""),
        ] {
            if !table.has(key) {
                table.missing(key, expected, notes);
            }
        }
        let id = table.parsed::<SiteId>("id", "roof-12", notes);
        match &id {
            Some(id) => drop(self.sites.insert(id.value.clone())),
            None => self.in_doubt = true,
        }
        let name = table.text("name", "Roof 12", notes);
        let latitude_deg = table.number("latitude", &(-90.0..=90.0), "degrees", notes);
        let longitude_deg = table.number("longitude", &(-180.0..=180.0), "degrees", notes);
        let elevation_m = table.number("elevation_m", &(-450.0..=6000.0), "metres", notes);
        let timezone = self.timezone(&table);
        let notes = &mut self.notes;
        let surface = table.text("surface", "concrete", notes).map(|surface| surface.value.to_owned());
        let engineer_limit_kn_m2 = table.number("engineer_limit_kn_m2", &(0.1..=50.0), "kN/m2", notes);
        let water_ec_ds_m = table.number("water_ec_ds_m", &(0.0..=20.0), "dS/m", notes);
        let hose_l_min = table.number("hose_l_min", &(0.1..=500.0), "litres a minute", notes);
        let can = table.measure("can", Volume::litres(100.0), notes);
        let walls = self.walls(&table);
        let id = id?;
        let site = Site {
            id: id.value,
            name: name?.value.to_owned(),
            latitude_deg: latitude_deg?,
            longitude_deg: longitude_deg?,
            elevation_m: elevation_m?,
            timezone: timezone?,
            surface,
            engineer_limit_kn_m2,
            water_ec_ds_m,
            hose_l_min,
            can,
            walls,
        };
        let what = format!("site \"{}\"", site.id);
        self.add(site, &what, id.span, "another id");
        Some(())
    }

    fn timezone(&mut self, table: &Table<'_>) -> Option<Tz> {
        let found = table.text("timezone", "Asia/Kolkata", &mut self.notes)?;
        let zone = found.value.parse().ok();
        if zone.is_none() {
            let message = format!("timezone \"{}\" is not known", found.value);
            self.notes.note(found.span, message, "a name of the time zone database, like \"Asia/Kolkata\"");
        }
        zone
    }

    fn walls(&mut self, table: &Table<'_>) -> Vec<Wall> {
        let notes = &mut self.notes;
        let example = "[{ bearing_deg = 270, height = \"2.1 m\", distance = \"1.5 m\" }]";
        let mut walls = Vec::new();
        for item in table.list("walls", example, notes) {
            let Some(wall) = table_of(item, "wall", notes) else { continue };
            let wall = Table::new("wall", wall, item.span(), &["bearing_deg", "height", "distance"], notes);
            for (key, expected) in [("bearing_deg", "270"), ("height", "\"2.1 m\""), ("distance", "\"1.5 m\"")] {
                if !wall.has(key) {
                    wall.missing(key, expected, notes);
                }
            }
            let bearing_deg = wall.number("bearing_deg", &(0.0..=360.0), "degrees", notes);
            let height = wall.measure("height", Length::metres(150.0), notes);
            let distance = wall.measure("distance", Length::metres(150.0), notes);
            if let (Some(bearing_deg), Some(height), Some(distance)) = (bearing_deg, height, distance) {
                walls.push(Wall { bearing_deg, height, distance });
            }
        }
        walls
    }
}
