//! A garden written as a garden file, for an export.

use crate::garden::bed::{Bed, Shape};
use crate::garden::job::JobDone;
use crate::garden::moved::Move;
use crate::garden::person::Person;
use crate::garden::planting::{Planting, Start};
use crate::garden::seen::Seen;
use crate::garden::site::Site;
use crate::garden::store::Garden;
use chrono::SecondsFormat;
use std::fmt::Display;

/// The garden file that holds this garden. Questions and conversations are no part of one.
#[must_use]
pub fn write_garden(garden: &Garden) -> String {
    let mut file = File(String::new());
    garden.sites.iter().for_each(|one| file.site(one));
    garden.people.iter().for_each(|one| file.person(one));
    garden.beds.iter().for_each(|one| file.bed(one));
    garden.plantings.iter().for_each(|one| file.planting(one));
    garden.jobs.iter().for_each(|one| file.job(one));
    garden.seen.iter().for_each(|one| file.seen(one));
    garden.moves.iter().for_each(|one| file.moved(one));
    file.0
}

struct File(String);

impl File {
    fn table(&mut self, name: &str) {
        if !self.0.is_empty() {
            self.0.push('\n');
        }
        self.0.push_str(&format!("[[{name}]]\n"));
    }

    /// A key with a value that is TOML as it stands.
    fn bare(&mut self, key: &str, value: impl Display) {
        self.0.push_str(&format!("{key} = {value}\n"));
    }

    fn text(&mut self, key: &str, value: impl Display) {
        self.bare(key, quoted(&value.to_string()));
    }

    fn maybe_bare(&mut self, key: &str, value: Option<impl Display>) {
        if let Some(value) = value {
            self.bare(key, value);
        }
    }

    fn maybe_text(&mut self, key: &str, value: Option<impl Display>) {
        if let Some(value) = value {
            self.text(key, value);
        }
    }

    fn site(&mut self, site: &Site) {
        self.table("sites");
        self.text("id", &site.id);
        self.text("name", &site.name);
        self.bare("latitude", site.latitude_deg);
        self.bare("longitude", site.longitude_deg);
        self.bare("elevation_m", site.elevation_m);
        self.text("timezone", site.timezone.name());
        self.maybe_text("surface", site.surface.as_ref());
        self.maybe_bare("engineer_limit_kn_m2", site.engineer_limit_kn_m2);
        self.maybe_bare("water_ec_ds_m", site.water_ec_ds_m);
        self.maybe_bare("hose_l_min", site.hose_l_min);
        self.maybe_text("can", site.can);
        if !site.walls.is_empty() {
            let walls = site.walls.iter().map(|wall| {
                let (height, distance) = (quoted(&wall.height.to_string()), quoted(&wall.distance.to_string()));
                format!("{{ bearing_deg = {}, height = {height}, distance = {distance} }}", wall.bearing_deg)
            });
            self.bare("walls", list(walls));
        }
    }

    fn person(&mut self, person: &Person) {
        self.table("people");
        self.text("id", &person.id);
        self.text("name", &person.name);
        self.text("role", person.role);
        if !person.sites.is_empty() {
            self.bare("sites", list(person.sites.iter().map(|site| quoted(site.as_str()))));
        }
        self.maybe_text("speaks", person.speaks);
    }

    fn bed(&mut self, bed: &Bed) {
        self.table("beds");
        self.text("id", bed.id.bed());
        self.text("site", bed.id.site());
        if !bed.names.is_empty() {
            self.bare("names", list(bed.names.iter().map(|name| quoted(name))));
        }
        self.text("kind", bed.kind);
        match bed.shape {
            Shape::Box { length, width, depth } => {
                self.text("length", length);
                self.text("width", width);
                self.text("depth", depth);
            }
            Shape::Round { diameter, depth } => {
                self.text("diameter", diameter);
                self.text("depth", depth);
            }
            Shape::Bag { volume, depth } => {
                self.text("volume", volume);
                self.maybe_text("depth", depth);
            }
        }
        self.maybe_text("mix", bed.mix.as_ref());
        self.maybe_text("mix_added", bed.mix_added);
        self.maybe_text("sides", bed.sides);
        self.maybe_bare("sun_hours", bed.sun_hours);
        self.maybe_text("rain", bed.rain);
        self.maybe_bare("net_percent", bed.net_percent);
        self.maybe_bare("mulch", bed.mulch);
    }

    fn planting(&mut self, planting: &Planting) {
        self.table("plantings");
        self.text("bed", &planting.bed);
        self.text("crop", &planting.crop);
        if planting.microgreen {
            self.text("as", "microgreen");
        }
        match planting.start {
            Start::Sown(date) => self.text("sown", date),
            Start::Planted(date) => self.text("planted", date),
        }
        self.maybe_bare("plants", planting.plants);
    }

    fn job(&mut self, job: &JobDone) {
        self.table("jobs_done");
        self.text("bed", &job.bed);
        self.text("job", job.job);
        self.text("on", job.on);
        self.maybe_text("what", job.what.as_ref());
        self.maybe_text("amount", job.amount);
    }

    fn seen(&mut self, seen: &Seen) {
        self.table("seen");
        self.text("bed", &seen.bed);
        self.text("on", seen.on);
        self.text("what", seen.what);
    }

    fn moved(&mut self, moved: &Move) {
        self.table("moves");
        self.text("bed", &moved.bed);
        self.text("job", moved.job);
        self.maybe_text("what", moved.what.as_ref());
        self.text("to", moved.to);
        self.maybe_text("by", moved.by.as_ref());
        self.text("at", moved.at.to_rfc3339_opts(SecondsFormat::AutoSi, true));
        self.maybe_text("after", moved.after);
    }
}

/// A text as TOML writes it.
fn quoted(text: &str) -> String {
    toml::Value::String(text.to_owned()).to_string()
}

fn list(items: impl Iterator<Item = String>) -> String {
    format!("[{}]", items.collect::<Vec<_>>().join(", "))
}
