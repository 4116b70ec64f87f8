//! Salts: when to flush a bed, with how much.

use super::answer::Answer;
use super::line::{Line, Said};
use super::water::TOLD_ONE_BY_ONE;
use super::water_bed::BedWater;
use crate::knowledge::SourceRef;
use crate::needs::salt::{Flush, FlushDay, Salts};
use crate::quantity::Estimate;

/// A flush nearer than this is told unasked, days.
const SOON_DAYS: i64 = 3;

/// Tells of each bed when and with how much; or what stands in the way of any answer.
pub fn answered(answer: &mut Answer, beds: &[BedWater<'_>]) -> Option<Answer> {
    if beds.iter().all(|bed| bed.water_ds_m.is_none()) {
        return Some(Answer::ask(Line::new("ask-water-salt"), Vec::new()));
    }
    if beds.iter().all(|bed| matches!(bed.salts, None | Some(Salts::CropUnknown))) {
        return Some(Answer::hand_over(Line::new("water-flush-unknown")));
    }
    for bed in beds.iter().take(TOLD_ONE_BY_ONE) {
        let called = bed.subject.called();
        match &bed.salts {
            Some(Salts::Flush(flush)) => {
                cite(answer, flush);
                answer.lines.push(told(bed, flush));
                answer.lines.extend(reason(bed, flush));
                answer.cautions.push(Line::new("caution-flush"));
            }
            Some(Salts::NotSoon) => answer.lines.push(Line::new("water-flush-not-soon").with("bed", called)),
            Some(Salts::WaterTooSalt { crop, threshold_ds_m }) => {
                answer.lines.push(
                    Line::new("water-flush-too-salt")
                        .with("crop", Said::Crop(crop.clone()))
                        .with("limit", Said::Number(*threshold_ds_m, 1))
                        .with("ec", Said::Number(bed.water_ds_m.unwrap_or_default(), 1)),
                );
            }
            Some(Salts::CropUnknown) | None => {
                answer.lines.push(Line::new("water-flush-crop-unknown").with("bed", called));
            }
        }
    }
    None
}

/// A flush that is near is told with any answer on water where beds are being flushed.
pub fn soon(bed: &BedWater<'_>) -> Option<Line> {
    match &bed.salts {
        Some(Salts::Flush(flush)) if bed.flushed => {
            let ahead = (flush.on.likeliest() - bed.today.date).num_days();
            (ahead <= SOON_DAYS).then(|| told(bed, flush))
        }
        _ => None,
    }
}

/// How the flush was worked out, for `why`.
pub fn working(bed: &BedWater<'_>) -> Option<Line> {
    let Some(Salts::Flush(flush)) = &bed.salts else { return None };
    let line = Line::new("working-salt")
        .with("ec", Said::Number(bed.water_ds_m?, 1))
        .with("part", Said::Percent(flush.leaching_fraction.as_percent()))
        .with("crop", Said::Crop(flush.crop.clone()))
        .with("limit", Said::Number(flush.threshold_ds_m, 1))
        .with("source", Said::Source(flush.threshold_source.clone()));
    Some(line)
}

/// What a flush rests on.
pub fn cite(answer: &mut Answer, flush: &Flush) {
    answer.cite(&SourceRef::new("fao29", "eq. 9"));
    answer.cite(&SourceRef::new("hoffman-1980", ""));
    answer.cite(&flush.threshold_source);
}

fn told(bed: &BedWater<'_>, flush: &Flush) -> Line {
    let (when, day) = match flush.on {
        on if on.likeliest() <= bed.today.date => ("now", Said::Day(on.likeliest())),
        FlushDay::Between(days) => ("ahead", Said::Days(days)),
        FlushDay::OrLater(day) => ("later", Said::Day(day)),
    };
    Line::new("water-flush")
        .with("when", Said::Key(when))
        .with("bed", bed.subject.called())
        .with("day", day)
        .with("usual", Said::About(Estimate::exactly(flush.litres.value())))
        .with("litres", Said::Volume(flush.litres))
}

fn reason(bed: &BedWater<'_>, flush: &Flush) -> Vec<Line> {
    let mut lines = vec![
        Line::new("water-flush-reason")
            .with("ec", Said::Number(bed.water_ds_m.unwrap_or_default(), 1))
            .with("crop", Said::Crop(flush.crop.clone()))
            .with("limit", Said::Number(flush.threshold_ds_m, 1)),
    ];
    if flush.since.is_none() {
        lines.push(Line::new("water-flush-since-unknown"));
    }
    lines
}
