//! `calendar`, `card`, `labels`: what is printed or taken into a calendar.

use super::arguments::{Arguments, CalendarFile, Card, Labels, Speaks};
use super::ask::print;
use super::draw::write_picture;
use super::front::{Parts, write_file};
use super::refusal::Refusal;
use super::round::asker;
use crate::answering::{Answer, Table};
use crate::desk::Looked;
use crate::desk::reception::bed_codes;
use crate::drawing::{self, Label, Picture, Words, deep_link};
use crate::garden::{PersonId, SiteId};
use crate::script::Language;
use crate::wording::Manner;
use chrono::Days;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// The coming jobs of a person's sites, for the calendar of a phone.
pub fn calendar(calendar: &CalendarFile, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let parts = Parts::open(&calendar.front, arguments)?;
    let from = asker(&parts)?;
    let language = language(&parts, from.as_ref(), calendar.speaks)?;
    let today = parts.now.date_naive();
    let until = today.checked_add_days(Days::new(u64::from(calendar.days))).unwrap_or(today);
    let looked = parts.desk().speaking(Some(language)).due_until(from.as_ref(), until, parts.now)?;
    let words = words(&parts, &looked.answer, looked.manner);
    let due = looked.answer.tables.iter().find_map(|table| match table {
        Table::Due(due) => Some(due),
        _ => None,
    });
    let Some(due) = due else {
        return Err(Refusal::plain("this person has no beds, so nothing of them falls due"));
    };
    write_file(&calendar.out, drawing::calendar(due, &words, parts.now).as_bytes())?;
    written(&calendar.out)
}

/// This week's cans for each bed of a site.
pub fn card(card: &Card, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let parts = Parts::open(&card.front, arguments)?;
    let from = asker(&parts)?;
    let site = site(&parts, &card.site)?;
    let first = match card.speaks.first() {
        Some(speaks) => Language::from(*speaks),
        None => language(&parts, from.as_ref(), None)?,
    };
    let looked = parts.desk().speaking(Some(first)).water_of_site(from.as_ref(), &site, parts.now)?;
    let Looked { answer, manner } = looked.ok_or_else(|| not_seen(&site))?;
    let other = card.speaks.get(1).map(|speaks| Manner { language: Language::from(*speaks), ..manner });
    let other = other.map(|manner| words(&parts, &answer, manner));
    let name = parts.store.site(&site)?.map_or_else(|| site.to_string(), |site| site.name);
    let pages = drawing::card(&name, &answer, &words(&parts, &answer, manner), other.as_ref());
    if pages.is_empty() {
        return Err(Refusal::plain(format!(
            "no bed of {site} has its size, mix and weather known, so there is no card"
        )));
    }
    write_pages(&pages, &card.out)
}

/// A sheet of labels, a bed each.
pub fn labels(labels: &Labels, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let parts = Parts::open(&labels.front, arguments)?;
    let from = asker(&parts)?;
    let site = site(&parts, &labels.site)?;
    let language = language(&parts, from.as_ref(), labels.speaks)?;
    let looked = parts.desk().speaking(Some(language)).water_of_site(from.as_ref(), &site, parts.now)?;
    let Looked { answer, manner } = looked.ok_or_else(|| not_seen(&site))?;
    let words = words(&parts, &answer, manner);
    let name = parts.store.site(&site)?.map_or_else(|| site.to_string(), |site| site.name);
    let bot = bot(&labels.link);
    let mut all = Vec::new();
    for (bed, payload) in bed_codes(parts.store.as_ref(), &site, parts.now.to_utc())? {
        let link = deep_link(bot, &payload).map_err(|fault| Refusal::plain(format!("{}: {fault}", bed.id)))?;
        all.push(Label { bed: words.bed(&bed.id), site: name.clone(), link });
    }
    let sheets = drawing::labels(&all, &words).map_err(Refusal::plain)?;
    if sheets.is_empty() {
        return Err(Refusal::plain(format!("{site} has no bed")));
    }
    write_pages(&sheets, &labels.out)
}

/// A bot's name, alone or as the end of its link.
fn bot(link: &str) -> &str {
    let name = link.trim().trim_end_matches('/');
    name.rsplit('/').next().unwrap_or(name).trim_start_matches('@')
}

fn words<'a>(parts: &'a Parts, answer: &'a Answer, manner: Manner) -> Words<'a> {
    Words::new(answer, &parts.house.known, parts.house.phrases(manner.language), manner)
}

/// The language that was asked for, else the person's own, else English.
fn language(parts: &Parts, person: Option<&PersonId>, asked: Option<Speaks>) -> Result<Language, Refusal> {
    if let Some(asked) = asked {
        return Ok(Language::from(asked));
    }
    let person = person.map(|id| parts.store.person(id)).transpose()?.flatten();
    Ok(match person.and_then(|person| person.speaks) {
        Some(crate::garden::Speaks::Hindi) => Language::Hi,
        Some(crate::garden::Speaks::RomanisedHindi) => Language::HiLatn,
        Some(crate::garden::Speaks::English) | None => Language::En,
    })
}

fn site(parts: &Parts, id: &str) -> Result<SiteId, Refusal> {
    let known = SiteId::new(id).ok().filter(|id| parts.store.site(id).is_ok_and(|site| site.is_some()));
    if let Some(site) = known {
        return Ok(site);
    }
    let ids: Vec<String> = parts.store.sites()?.into_iter().map(|site| site.id.to_string()).collect();
    let here = if ids.is_empty() { "none yet".to_owned() } else { ids.join(", ") };
    Err(Refusal::plain(format!("no site with the id \"{id}\" is in the store; it has {here}")))
}

fn not_seen(site: &SiteId) -> Refusal {
    Refusal::plain(format!("this person may not see {site}"))
}

/// One page into the file that was named, more into files with a number before the ending.
fn write_pages(pages: &[Picture], file: &Path) -> Result<ExitCode, Refusal> {
    for (place, page) in pages.iter().enumerate() {
        let file = numbered(file, place);
        write_picture(page, &file)?;
        written(&file)?;
    }
    Ok(ExitCode::SUCCESS)
}

fn numbered(file: &Path, place: usize) -> PathBuf {
    if place == 0 {
        return file.to_owned();
    }
    let part = |part: Option<&std::ffi::OsStr>| part.unwrap_or_default().to_string_lossy().into_owned();
    file.with_file_name(format!("{}-{}.{}", part(file.file_stem()), place + 1, part(file.extension())))
}

fn written(file: &Path) -> Result<ExitCode, Refusal> {
    print(&format!("written: {}", file.display()))?;
    Ok(ExitCode::SUCCESS)
}
