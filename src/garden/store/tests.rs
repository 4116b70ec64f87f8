//! What every store does, held against the embedded one and the one in memory alike.

#![expect(clippy::disallowed_methods, reason = "the tests look at the store's files")]

use super::*;
use crate::garden::{JobKind, Role, Start};
use ::sled;
use std::fs;
use std::path::{Path, PathBuf};

fn person(id: &str, name: &str) -> Person {
    Person { id: PersonId::new(id).unwrap(), name: name.into(), role: Role::Client, sites: vec![], speaks: None }
}

fn job(bed: &str, on: &str) -> JobDone {
    JobDone { bed: BedId::new(bed).unwrap(), job: JobKind::Water, on: on.parse().unwrap(), what: None, amount: None }
}

fn planting(bed: &str, crop: &str, sown: &str) -> Planting {
    let start = Start::Sown(sown.parse().unwrap());
    Planting { bed: BedId::new(bed).unwrap(), crop: crop.into(), microgreen: false, start, plants: None }
}

/// Puts, replaces, removes, and reads by bed.
fn behaves(store: &dyn Store) {
    let bed = BedId::new("roof/box").unwrap();
    let changes = vec![
        Change::put(person("meera", "Meera")),
        Change::put(job("roof/box", "2026-05-02")),
        Change::put(job("roof/box", "2026-05-01T18:00")),
        Change::put(job("roof/box-2", "2026-05-01")),
        Change::put(planting("roof/box", "spinach", "2026-04-01")),
        Change::put(planting("roof/box", "mustard", "2026-03-01")),
    ];
    store.write(changes.clone()).unwrap();
    store.write(changes).unwrap();
    let days = |jobs: Vec<JobDone>| jobs.iter().map(|job| job.on.to_string()).collect::<Vec<_>>();
    assert_eq!(days(store.jobs_of_bed(&bed).unwrap()), ["2026-05-01T18:00", "2026-05-02"]);
    let crops: Vec<_> = store.plantings_of_bed(&bed).unwrap().into_iter().map(|planting| planting.crop).collect();
    assert_eq!(crops, ["mustard", "spinach"]);
    store.write(vec![Change::put(person("meera", "Meera K")), Change::remove(job("roof/box", "2026-05-02"))]).unwrap();
    assert_eq!(store.people().unwrap(), [person("meera", "Meera K")]);
    assert_eq!(days(store.jobs_of_bed(&bed).unwrap()), ["2026-05-01T18:00"]);
    assert_eq!(store.person(&PersonId::new("asha").unwrap()).unwrap(), None);
    store.write(vec![Change::remove(person("asha", ""))]).unwrap();
}

#[test]
fn in_memory() {
    behaves(&Overlay::in_memory());
}

#[test]
fn on_disk_and_after_opening_again() {
    let folder = tempfile::tempdir().unwrap();
    let store = SledStore::open(folder.path()).unwrap();
    behaves(&store);
    let whole = store.whole().unwrap();
    drop(store);
    let store = SledStore::open(folder.path()).unwrap();
    assert_eq!(store.whole().unwrap(), whole);
}

#[test]
fn an_overlay_leaves_what_is_below_alone() {
    let below = Overlay::in_memory();
    below.write(vec![Change::put(person("asha", "Asha")), Change::put(person("ravi", "Ravi"))]).unwrap();
    let over = Overlay::over(&below);
    over.write(vec![Change::remove(person("asha", "")), Change::put(person("bina", "Bina"))]).unwrap();
    assert_eq!(over.people().unwrap(), [person("bina", "Bina"), person("ravi", "Ravi")]);
    assert_eq!(over.person(&PersonId::new("asha").unwrap()).unwrap(), None);
    assert_eq!(below.people().unwrap(), [person("asha", "Asha"), person("ravi", "Ravi")]);
}

#[test]
fn many_callers_are_all_answered() {
    let folder = tempfile::tempdir().unwrap();
    let store = SledStore::open(folder.path()).unwrap();
    std::thread::scope(|scope| {
        for caller in 0..8 {
            let store = &store;
            scope.spawn(move || {
                for number in 0..25 {
                    store.write(vec![Change::put(person(&format!("p-{caller}-{number}"), "P"))]).unwrap();
                }
            });
        }
    });
    assert_eq!(store.people().unwrap().len(), 200);
    drop(store);
    assert_eq!(SledStore::open(folder.path()).unwrap().people().unwrap().len(), 200);
}

/// Spoils a store below its feet, then opens it.
#[track_caller]
fn refused(spoil: impl Fn(&sled::Db), expected: &str) {
    let folder = tempfile::tempdir().unwrap();
    let store = SledStore::open(folder.path()).unwrap();
    store.write(vec![Change::put(person("asha", "Asha")), Change::put(person("ravi", "Ravi"))]).unwrap();
    drop(store);
    let db = let_go(&folder.path().join("garden"));
    spoil(&db);
    db.flush().unwrap();
    drop(db);
    still_refused(folder.path(), expected);
}

/// The database behind a store that was just closed: on a busy machine its lock is held for a moment longer.
fn let_go(files: &Path) -> sled::Db {
    let config = sled::Config::new().path(files).flush_every_ms(None);
    let mut tries = (0..500).map(|_| config.open());
    let open = tries.find_map(|open| {
        let held = matches!(&open, Err(sled::Error::Io(error)) if error.to_string().contains("could not acquire lock"));
        if held {
            std::thread::sleep(std::time::Duration::from_millis(10));
        }
        (!held).then_some(open)
    });
    open.expect("a lock that is let go of").unwrap()
}

/// Opening is refused, and changes nothing.
#[track_caller]
fn still_refused(folder: &Path, expected: &str) {
    let before = files(folder);
    for _ in 0..2 {
        let refusal = SledStore::open(folder).err().expect("a refusal").to_string();
        assert_eq!(refusal, expected.replace("FOLDER", &folder.display().to_string()));
        assert!(files(folder) == before, "the files are as they were");
    }
}

/// The files of a folder and of those in it, with what they hold.
fn files(folder: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap().map(Result::unwrap) {
        if entry.file_type().unwrap().is_dir() {
            found.extend(files(&entry.path()));
        } else {
            found.push((entry.path(), fs::read(entry.path()).unwrap()));
        }
    }
    found.sort();
    found
}

#[test]
fn spoilt_files_are_refused_and_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let store = SledStore::open(folder.path()).unwrap();
    for number in 0..300 {
        store.write(vec![Change::put(person(&format!("p-{number}"), &"name ".repeat(20)))]).unwrap();
    }
    drop(store);
    let database = folder.path().join("garden/db");
    let good = fs::read(&database).unwrap();
    let end = good.iter().rposition(|byte| *byte != 0).unwrap();
    let expected = "FOLDER is damaged: the store's files: they hold what cannot be read back; nothing was changed; no \
                    backup of it was noted here; look for a backup file or an export";
    let whole = SledStore::open(folder.path()).unwrap().whole().unwrap();
    let good = fs::read(&database).unwrap();
    let mut refusals = 0;
    for part in 1..16 {
        let mut flipped = good.clone();
        flipped[end * part / 16] ^= 0x55;
        for spoilt in [flipped, good[..end * part / 16].to_vec()] {
            fs::write(&database, &spoilt).unwrap();
            match SledStore::open(folder.path()) {
                // What was overwritten since may be spoilt without harm; what counts must be all there.
                Ok(store) => assert!(store.whole().unwrap() == whole, "part {part}: it lost something unnoticed"),
                Err(_) => {
                    still_refused(folder.path(), expected);
                    assert!(fs::read(&database).unwrap() == spoilt, "part {part}: left alone");
                    refusals += 1;
                }
            }
        }
    }
    assert!(refusals >= 15, "{refusals} of 30 were noticed");
    fs::write(&database, &good).unwrap();
    assert_eq!(SledStore::open(folder.path()).unwrap().people().unwrap().len(), 300);
}

#[test]
fn a_newer_or_damaged_store_is_refused() {
    refused(
        |db| drop(db.insert("version", "7").unwrap()),
        "FOLDER was written by a newer rooftend (its store is of version 7, this one knows 1); nothing was changed; \
         use the newer rooftend",
    );
    let damaged = |what: &str| {
        format!(
            "FOLDER is damaged: {what}; nothing was changed; no backup of it was noted here; look for a backup file \
             or an export"
        )
    };
    let people = |db: &sled::Db| db.open_tree("people").unwrap();
    refused(
        |db| drop(people(db).insert("ravi", "{\"id\":\"ravi\"").unwrap()),
        &damaged("people, key \"ravi\": EOF while parsing an object at line 1 column 12"),
    );
    refused(
        |db| {
            let asha = people(db).get("asha").unwrap().unwrap();
            people(db).insert("ravi", asha).unwrap();
        },
        &damaged("people, key \"ravi\": it holds the record of \"asha\""),
    );
    refused(|db| drop(people(db).remove("ravi").unwrap()), &damaged("seal: 2 records were written, 1 are there"));
    refused(
        |db| {
            let asha = people(db).get("asha").unwrap().unwrap();
            let altered = String::from_utf8(asha.to_vec()).unwrap().replace("Asha", "Isha");
            people(db).insert("asha", altered.as_bytes()).unwrap();
        },
        &damaged("seal: a record is not as it was written"),
    );
    refused(
        |db| drop(db.remove("version").unwrap()),
        &damaged("version: it is missing, though there has been a store here"),
    );
}

#[test]
fn a_later_field_is_passed_over() {
    let folder = tempfile::tempdir().unwrap();
    drop(SledStore::open(folder.path()).unwrap());
    let json = br#"{"id":"asha","name":"Asha","role":"client","shoe_size":42}"#;
    let Record::Person(read) = Record::from_json(Kind::Person, json).unwrap() else { panic!("a person") };
    assert_eq!(read, person("asha", "Asha"));
}

#[test]
fn a_damaged_store_says_where_its_backup_is() {
    let folder = tempfile::tempdir().unwrap();
    drop(SledStore::open(folder.path()).unwrap());
    note_backup(folder.path(), Path::new("/safe/garden.backup")).unwrap();
    fs::remove_dir_all(folder.path().join("garden")).unwrap();
    let refusal = SledStore::open(folder.path()).err().expect("a refusal").to_string();
    let expected = format!(
        "{} is damaged: version: it is missing, though there has been a store here; nothing was changed; its last \
         backup is /safe/garden.backup; restore that into an empty folder",
        folder.path().display()
    );
    assert_eq!(refusal, expected);
}

#[test]
fn a_held_store_names_its_holder() {
    let folder = tempfile::tempdir().unwrap();
    let _held = SledStore::open(folder.path()).unwrap();
    let refusal = SledStore::open(folder.path()).err();
    let by = Some(std::process::id());
    assert_eq!(refusal, Some(StoreError::Held { folder: folder.path().into(), by }));
    let text = StoreError::Held { folder: "data".into(), by: Some(4711) }.to_string();
    assert_eq!(text, "data is in use by process 4711; stop that first, or give another folder");
}

#[test]
fn a_folder_that_cannot_be_one() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("a-file");
    fs::write(&file, "").unwrap();
    let refusal = SledStore::open(&file.join("data")).err().expect("a refusal").to_string();
    let path = file.join("data");
    assert_eq!(refusal, format!("{} cannot be written: not a directory; give a folder that can", path.display()));
}
