//! What a pressed block gives once it is soaked: "one 5 kg brick makes how many litres".

use super::answer::{Answer, Outcome};
use super::care;
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::described_bed;
use crate::needs::mix::swollen;
use crate::quantity::Mass;
use crate::understanding::Reading;

/// The article on soaking it.
const ARTICLE: &str = "soaking-coir";

/// The litres of so much of a stuff that comes pressed, where nothing else is named; of no weight the article on it.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Option<Answer> {
    let [id] = reading.materials.as_slice() else { return None };
    let material = facts.known.materials.get(id)?;
    let swell = material.swell_l_per_kg.as_ref()?;
    // What was spoken of before is not what is soaked.
    let other = described_bed(reading).is_some() || reading.beds_named || !reading.crops.is_empty();
    if other && !reading.follow_up || !reading.mixes.is_empty() {
        return None;
    }
    let said: Vec<Mass> = reading.quantities.iter().filter_map(|said| said.mass()).collect();
    let [mass] = said.as_slice() else {
        let asked = said.is_empty() && reading.quantities.is_empty();
        let near = asked && facts.articles.first().is_some_and(|found| found.what == ARTICLE);
        return near.then(|| facts.known.articles.get(ARTICLE).map(care::told)).flatten();
    };
    // "Two bricks of 650 g".
    let mass = *mass * reading.count.filter(|count| (1.0..=50.0).contains(count)).unwrap_or(1.0);
    let litres = swollen(mass, &swell.is);
    let mut answer = Answer::new(Outcome::Answered);
    answer.figures.push(Figure::quantity("litres_swollen", &litres));
    answer.lines.push(
        Line::new("mix-swollen")
            .with("material", Said::Material(id.clone()))
            .with("mass", Said::Mass(crate::quantity::Estimate::exactly(mass)))
            .with("litres", Said::Volume(litres)),
    );
    answer.cite(&swell.source);
    answer.cautions.extend(
        material.cautions.iter().map(|caution| Line::new("caution-text").with("text", Said::Text(caution.clone()))),
    );
    Some(answer)
}
