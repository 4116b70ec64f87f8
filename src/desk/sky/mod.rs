//! The weather of the store: what each cell's last good forecast says, the days gone by, what people said; and which
//! cells are to be asked for.

mod due;
mod join;
mod recalled;
mod slips;

pub use due::{Due, Filed, Rooms, due, file};
pub use join::{Handed, Skies};
pub use recalled::Recalled;
pub use slips::{PastMonth, SkySlip, StepsSlip};
