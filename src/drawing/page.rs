//! The round as a page to print: large letters, a box to tick for each job.

use super::calendar::work;
use super::svg::escaped;
use super::words::Words;
use crate::answering::{DueJob, DueTable, Line, Said};
use crate::garden::BedId;
use chrono::NaiveDate;
use std::fmt::Write;

/// A whole page in itself: no script, no file beside it. Letters are those of the reader's machine, with families that
/// have Devanagari named first; a browser joins them right.
const STYLE: &str = "\
@page { size: A4; margin: 14mm 12mm; }
* { box-sizing: border-box; }
body { font-family: 'Noto Sans', 'Noto Sans Devanagari', 'Nirmala UI', 'Kohinoor Devanagari', 'Mangal', sans-serif;
  font-size: 15pt; line-height: 1.4; color: #14171c; background: #fff; margin: 0 auto; max-width: 186mm; padding: 4mm; }
h1 { font-size: 25pt; margin: 0 0 1mm; }
h2 { font-size: 19pt; margin: 7mm 0 1mm; padding-bottom: 1mm; border-bottom: 0.8mm solid #14171c; break-after: avoid; }
h3 { font-size: 16pt; margin: 6mm 0 0; break-after: avoid; }
p { margin: 0 0 2mm; }
ul { list-style: none; margin: 0; padding: 0; }
li { display: flex; gap: 4mm; padding: 2.2mm 0; border-bottom: 0.25mm solid #4a525c; break-inside: avoid; align-items: flex-start; }
.tick { flex: none; width: 7.5mm; height: 7.5mm; border: 0.7mm solid #14171c; border-radius: 1mm; }
.bed { flex: none; width: 54mm; font-weight: 700; overflow-wrap: anywhere; }
.job { flex: 1; overflow-wrap: anywhere; }
.since { display: block; font-size: 12.5pt; color: #932f0c; font-weight: 700; }
.note { flex: none; width: 40mm; border-bottom: 0.25mm dotted #4a525c; align-self: flex-end; height: 7mm; }
@media print { body { padding: 0; max-width: none; } }
@media screen and (max-width: 600px) { .note { display: none; } .bed { width: 34vw; } }
";

/// The page of a round, in the order to go.
#[must_use]
pub fn page(table: &DueTable, words: &Words<'_>) -> String {
    let title = escaped(&words.say("draw-round-title"));
    let mut page = format!(
        "<!doctype html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>{title}</title>\n\
         <style>\n{STYLE}</style>\n</head>\n<body>\n<h1>{title}</h1>\n<p>{}</p>\n",
        words.language().tag(),
        escaped(&dates(table, words)),
    );
    if table.jobs.is_empty() {
        let _ = writeln!(page, "<p>{}</p>", escaped(&words.say("draw-round-none")));
    }
    let mut days: Vec<NaiveDate> = table.jobs.iter().map(|job| job.date).collect();
    days.dedup();
    let several = table.first != table.last;
    for day in days {
        if several {
            let _ = writeln!(page, "<h2>{}</h2>", escaped(&words.headed(&Said::Day(day))));
        }
        let jobs: Vec<&DueJob> = table.jobs.iter().filter(|job| job.date == day).collect();
        sites(&mut page, &jobs, words, if several { "h3" } else { "h2" });
    }
    let _ = writeln!(page, "<p style=\"margin-top:6mm\">{}</p>", escaped(&words.say("draw-card-edge")));
    page.push_str("</body>\n</html>\n");
    page
}

fn dates(table: &DueTable, words: &Words<'_>) -> String {
    if table.first == table.last {
        return words.headed(&Said::Day(table.first));
    }
    let line = Line::new("draw-from-until").with("from", Said::Day(table.first)).with("until", Said::Day(table.last));
    words.sentence(&line)
}

/// Site by site, bed by bed, as they come in the round.
fn sites(page: &mut String, jobs: &[&DueJob], words: &Words<'_>, heading: &str) {
    let mut open: Option<&str> = None;
    let mut bed: Option<&BedId> = None;
    for job in jobs {
        if open != Some(job.site.as_str()) {
            if open.is_some() {
                page.push_str("</ul>\n");
            }
            let _ = writeln!(page, "<{heading}>{}</{heading}>\n<ul>", escaped(&job.site_name));
            (open, bed) = (Some(job.site.as_str()), None);
        }
        // A bed is named once, before the first of its jobs.
        let name = if bed == Some(&job.bed) { String::new() } else { bed_name(job, words) };
        bed = Some(&job.bed);
        let since = job.since.map(|since| {
            let since = words.line(&Line::new("draw-due-since").with("day", Said::Day(since)));
            format!("<span class=\"since\">{}</span>", escaped(&since))
        });
        let _ = writeln!(
            page,
            "<li><span class=\"tick\"></span><span class=\"bed\">{}</span><span class=\"job\">{}{}</span>\
             <span class=\"note\"></span></li>",
            escaped(&name),
            escaped(&work(job, words)),
            since.unwrap_or_default(),
        );
    }
    if open.is_some() {
        page.push_str("</ul>\n");
    }
}

/// The bed's name alone: its site stands above it.
fn bed_name(job: &DueJob, words: &Words<'_>) -> String {
    let name = words.headed(&Said::Bed(job.bed.clone()));
    let site = format!(" ({})", job.site_name);
    name.strip_suffix(&site).map_or(name.clone(), str::to_owned)
}
