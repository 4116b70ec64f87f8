//! What of a message speaks for a garden, where its words may be of another world.

use super::{Found, Named, Reader, Told};
use crate::garden::JobKind;
use crate::knowledge::{Kind, Mark, Point};
use crate::script::Text;
use crate::understanding::phrasebook::Forms;
use crate::understanding::worlds::Company;
use std::ops::Range;

impl Found {
    /// What the company of its words tells: that it is of the kitchen, a phone, the body, a field, no garden's matter; or
    /// what it is of a garden's.
    pub(super) fn told_by_company(&self, text: &Text, forms: &Forms, reader: &Reader<'_>) -> Option<Company> {
        let whole = |named: &Named| {
            matches!(
                named,
                Named::Crop(_) | Named::Material(_) | Named::Mix(_) | Named::OtherPlant(_) | Named::OwnBed(_)
            )
        };
        let names: Vec<Range<usize>> = self
            .names
            .iter()
            .filter(|hit| whole(&hit.meaning) && !self.is_any_medicine(&hit.span))
            .map(|hit| hit.span.clone())
            .collect();
        reader.gazetteer.worlds.tells(forms, &self.marks(text), &names)
    }

    /// No garden's matter, or what else the company of its words tells, whatever they lean to.
    pub(super) fn about_its_company(&self) -> Option<(Kind, f64)> {
        /// Such words leave little else (judgement).
        const SURE: f64 = 0.9;
        /// What stands whatever else is said leaves nothing: no part of the message is read on its own.
        const WHATEVER: f64 = 0.97;
        /// A garden's matter may be more than one.
        const LIKELY: f64 = 0.8;
        let sure = |kind| match kind {
            Kind::None if self.company_stands => WHATEVER,
            Kind::None => SURE,
            _ => LIKELY,
        };
        self.by_company.map(|kind| (kind, sure(kind)))
    }

    /// What its company tells of other worlds is not heard, nor of others in it, unless that stands whatever else is said.
    pub(super) fn forget_other_worlds(&mut self) {
        if !self.company_stands {
            self.by_company = self.by_company.filter(|kind| *kind != Kind::None);
            self.ours = true;
        }
    }

    /// The company of its words says what it is about.
    pub(super) const fn is_told_by_company(&self) -> bool {
        self.by_company.is_some()
    }

    /// "Dawa" is said of neem too, and names no product.
    fn is_any_medicine(&self, span: &Range<usize>) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Point(Point::Drug) && hit.span == *span)
    }

    fn marks(&self, text: &Text) -> Vec<(Mark, Range<usize>)> {
        let mut marks: Vec<(Mark, Range<usize>)> = Vec::new();
        for hit in self.names.iter().filter(|hit| !self.is_any_medicine(&hit.span)) {
            let mark = match &hit.meaning {
                Named::Crop(_) => Mark::Crop,
                Named::OtherPlant(_) => Mark::OtherPlant,
                Named::OwnBed(_) => Mark::OwnBed,
                Named::BedKind(_) => Mark::BedKind,
                Named::Material(_) => Mark::Material,
                Named::Mix(_) => Mark::Mix,
                Named::Trouble(_) => Mark::Trouble,
                _ => continue,
            };
            marks.push((mark, hit.span.clone()));
        }
        for hit in &self.told {
            let mark = match hit.meaning {
                Told::Did(job) | Told::Thing(job) => of_job(job),
                Told::Aspect(_) => Some(Mark::Water),
                _ => None,
            };
            marks.extend(mark.map(|mark| (mark, hit.span.clone())));
        }
        // What the whole message tells has no place of its own.
        let whole = [
            (Mark::OnPlant, self.on_plant),
            (Mark::Told, self.did.is_some() || self.saw().is_some()),
            (Mark::Asks, self.asks || text.original.contains('?')),
        ];
        marks.extend(whole.into_iter().filter(|(_, holds)| *holds).map(|(mark, _)| (mark, 0..0)));
        let chemical = (0..text.tokens.len()).filter(|at| is_chemical(text.normal(*at)));
        marks.extend(chemical.map(|at| (Mark::Chemical, at..at + 1)));
        marks.extend(self.quantities.said.iter().map(|said| (Mark::Size, said.span.clone())));
        marks
    }
}

const fn of_job(job: JobKind) -> Option<Mark> {
    match job {
        JobKind::Water => Some(Mark::Water),
        JobKind::Net => Some(Mark::Net),
        JobKind::Feed => Some(Mark::Feed),
        JobKind::Spray => Some(Mark::Spray),
        JobKind::Pick => Some(Mark::Pick),
        JobKind::Sow | JobKind::Plant | JobKind::Thin | JobKind::Prune | JobKind::Pull | JobKind::Stake => {
            Some(Mark::Grow)
        }
        _ => None,
    }
}

/// Whether a word ends as the makers' names of poisons against insects, fungi and weeds do: there are hundreds of them.
pub(super) fn is_chemical(word: &str) -> bool {
    const SHORTEST: usize = 7;
    const ENDS: [&str; 31] = [
        "phos",
        "fos",
        "phosphide",
        "thrin",
        "thrine",
        "prid",
        "conazole",
        "conazol",
        "strobin",
        "mectin",
        "thion",
        "quat",
        "furan",
        "azim",
        "ozeb",
        "carb",
        "methoxam",
        "nilide",
        "niliprole",
        "uthrin",
        "glyphosate",
        "phenoxam",
        "axyl",
        "oxychloride",
        "फॉस",
        "फोस",
        "थ्रिन",
        "प्रिड",
        "नाजोल",
        "थियान",
        "जेब",
    ];
    // "Bicarb" is baked with.
    word.chars().count() >= SHORTEST && ENDS.iter().any(|end| word.ends_with(end)) && word != "bicarb"
}

#[cfg(test)]
mod tests {
    use super::is_chemical;

    #[test]
    fn makers_names_are_told_by_their_ends() {
        for poison in
            ["chlorpyrifos", "cypermethrin", "acetamiprid", "tebuconazole", "ethion-thion", "कार्बोथियान", "thiodicarb"]
        {
            assert!(is_chemical(poison), "{poison}");
        }
        for plain in ["tomato", "photos", "bicarb", "hydrangea", "protein", "marathon", "thin", "squat"] {
            assert!(!is_chemical(plain), "{plain}");
        }
    }
}
