//! The printed examples of FAO-56 about crops and the water they stand on.

use crate::examples::Book;
use rooftend::agronomy::crop_coefficient::{Climate, Coefficients, StageDays, adjusted_to_climate};
use rooftend::agronomy::evaporation_layer::{EvaporationLayer, SurfaceDay};
use rooftend::agronomy::root_zone::{self, Arrival, RootDay, readily_available, total_available};
use rooftend::quantity::{Fraction, Length, WaterDepth};

impl Book {
    pub fn climate(&self, example: &str, quantity: &str) -> Option<f64> {
        let (table, wind, humidity, height) = match (example, quantity) {
            ("Example 27", "Kc mid Taipei") => ("Kc mid Table 12", "u2 Taipei", "RHmin Taipei", "crop height"),
            ("Example 27", "Kc mid Mocha") => ("Kc mid Table 12", "u2 Mocha", "RHmin Mocha", "crop height"),
            ("Box 15", "Kc mid") => ("Kc mid Table 12", "u2", "RHmin", "crop height"),
            ("Box 15", _) => ("Kc end Table 12", "u2", "RHmin", "crop height"),
            ("Example 40", "Kc mid") => ("Kc mid table", "u2", "RHmin", "height"),
            ("Example 40", "Kcb mid") => ("Kcb mid table", "u2", "RHmin", "height"),
            _ => return None,
        };
        let climate = Climate { wind_2m: self.wind(example, wind), humidity_min: self.percent(example, humidity) };
        let height = Length::metres(self.number(example, height));
        Some(adjusted_to_climate(self.number(example, table), &climate, height))
    }

    pub fn example_28(&self, quantity: &str) -> Option<f64> {
        let given = |name| self.number("Example 28", name);
        let stages = StageDays {
            initial: given("L ini"),
            development: given("L dev"),
            mid: given("L mid"),
            late: given("L late"),
        };
        let values = Coefficients { initial: given("Kc ini"), mid: given("Kc mid"), end: given("Kc end") };
        let day = quantity.strip_prefix("Kc day ")?.parse().ok()?;
        Some(values.on_day(&stages, day))
    }

    pub fn example_31(&self, quantity: &str) -> Option<f64> {
        let given = |name| self.number("Example 31", name);
        let millimetres = |name| WaterDepth::millimetres(given(name));
        let layer = EvaporationLayer::holding(millimetres("TEW"), millimetres("REW"));
        let exposed = Fraction::of_one(given("few"));
        let (what, day) = quantity.rsplit_once(' ')?;
        let mut depletion = WaterDepth::default();
        let mut crop_et = WaterDepth::default();
        for _ in 0..day.parse::<usize>().ok()? {
            let ke = layer.coefficient(depletion, given("Kc max"), given("Kcb"), exposed);
            crop_et = millimetres("ETo") * (given("Kcb") + ke);
            let day = SurfaceDay {
                rain: WaterDepth::default(),
                irrigation: WaterDepth::default(),
                wetted: Fraction::WHOLE,
                evaporation: millimetres("ETo") * ke,
                exposed_and_wetted: exposed,
            };
            depletion = layer.after(depletion, &day).depletion;
        }
        match what {
            "De end day" => Some(depletion.as_millimetres()),
            "ETc day" => Some(crop_et.as_millimetres()),
            _ => None,
        }
    }

    pub fn example_36(&self, quantity: &str) -> Option<f64> {
        let (store, rest) = quantity.split_once(' ')?;
        let (crop, soil) = rest.split_once(' ')?;
        let given = |name: String| self.number("Example 36", &name);
        let total = total_available(
            Fraction::of_one(given(format!("theta FC {soil}"))),
            Fraction::of_one(given(format!("theta WP {soil}"))),
            Length::metres(given(format!("Zr {crop}"))),
        );
        match store {
            "TAW" => Some(total.as_millimetres()),
            "RAW" => Some(readily_available(total, Fraction::of_one(given(format!("p {crop}")))).as_millimetres()),
            _ => None,
        }
    }

    /// Ten days of the paper's scheduling: irrigated to full on the first day (40 mm) and on the first
    /// day after that begins with all readily available water gone.
    pub fn example_38(&self, quantity: &str) -> Option<f64> {
        let example = "Example 38";
        let roots = self.list(example, "Zr day 1..10");
        let losses = self.list(example, "ETc day 1..10");
        let store = |root: f64| {
            let total = total_available(
                Fraction::of_one(self.number(example, "theta FC")),
                Fraction::of_one(self.number(example, "theta WP")),
                Length::metres(root),
            );
            (total, readily_available(total, Fraction::of_one(self.number(example, "p"))))
        };
        let mut depletion = store(roots[0]).1;
        let mut first_percolation = 0.0;
        let mut irrigated: Option<(usize, f64)> = None;
        let mut ends = Vec::new();
        for (index, (&root, &loss)) in roots.iter().zip(&losses).enumerate() {
            let (total, readily) = store(root);
            let irrigation = if index == 0 {
                WaterDepth::millimetres(40.0)
            } else if depletion >= readily {
                irrigated = irrigated.or(Some((index + 1, depletion.as_millimetres())));
                depletion
            } else {
                WaterDepth::default()
            };
            let rain = WaterDepth::millimetres(if index == 5 { 6.0 } else { 0.0 });
            let loss = WaterDepth::millimetres(loss);
            let end = root_zone::after(depletion, total, &RootDay { rain, irrigation, loss, arrival: Arrival::Early });
            if index == 0 {
                first_percolation = end.percolation.as_millimetres();
            }
            depletion = end.depletion;
            ends.push(depletion.as_millimetres());
        }
        match quantity {
            "RAW day 1" => Some(store(roots[0]).1.as_millimetres()),
            "RAW day 10" => Some(store(roots[9]).1.as_millimetres()),
            "deep percolation day 1" => Some(first_percolation),
            "irrigation needed on day" => irrigated.map(|(day, _)| day as f64),
            "irrigation depth day 10" => irrigated.map(|(_, depth)| depth),
            _ => ends.get(quantity.strip_prefix("Dr end day ")?.parse::<usize>().ok()? - 1).copied(),
        }
    }
}
