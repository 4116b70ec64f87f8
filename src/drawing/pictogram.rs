//! Small signs that are read before any word: can, bottle, drop, sun.

use super::paint::{Fill, Ink};
use super::picture::Picture;
use super::shape::{At, Look, Outline, Step};

/// Edge of a sign, as a part of its size.
const EDGE: f64 = 0.05;

/// A watering can, filled up to a part of it. `at` is the upper left corner of a square.
pub fn can(picture: &mut Picture, at: At, size: f64, level: f64) {
    let place = |x: f64, y: f64| (at.0 + x * size, at.1 + y * size);
    let edge = EDGE * size;
    // Spout and its rose.
    picture.shape(Outline::lines(&[place(0.66, 0.74), place(0.88, 0.34)]), Look::line(Ink::Soot, 2.0 * edge));
    picture.shape(Outline::lines(&[place(0.80, 0.26), place(0.97, 0.36)]), Look::line(Ink::Soot, 1.6 * edge));
    // The handle from rim to back.
    let bow = vec![Step::To(place(0.50, 0.30)), Step::Curve(place(0.44, 0.02), place(0.02, 0.04), place(0.16, 0.62))];
    picture.shape(Outline::Path(bow), Look::line(Ink::Soot, 1.4 * edge));
    vessel(picture, [place(0.18, 0.30), place(0.66, 0.30), place(0.72, 0.94), place(0.12, 0.94)], edge, level);
}

/// A bottle of a litre, filled up to a part of it.
pub fn bottle(picture: &mut Picture, at: At, size: f64, level: f64) {
    let place = |x: f64, y: f64| (at.0 + x * size, at.1 + y * size);
    let edge = EDGE * size;
    let neck = Outline::area(&[place(0.41, 0.06), place(0.59, 0.06), place(0.59, 0.2), place(0.41, 0.2)]);
    picture.shape(neck, Look::plain(Ink::Soot));
    let shoulders = Outline::area(&[place(0.41, 0.2), place(0.59, 0.2), place(0.72, 0.36), place(0.28, 0.36)]);
    picture.shape(shoulders, Look::plain(Ink::Paper).edged(Ink::Soot, edge));
    vessel(picture, [place(0.28, 0.36), place(0.72, 0.36), place(0.72, 0.95), place(0.28, 0.95)], edge, level);
}

/// Four corners from the upper left, clockwise, with water up to a level.
fn vessel(picture: &mut Picture, corners: [At; 4], edge: f64, level: f64) {
    let [upper_left, upper_right, lower_right, lower_left] = corners;
    picture.shape(Outline::area(&corners), Look::plain(Ink::Paper));
    let between = |low: At, high: At| (low.0 + (high.0 - low.0) * level, low.1 + (high.1 - low.1) * level);
    if level > 0.0 {
        let (left, right) = (between(lower_left, upper_left), between(lower_right, upper_right));
        picture.shape(Outline::area(&[left, right, lower_right, lower_left]), Look::plain(Ink::Tank));
    }
    picture.shape(Outline::area(&corners), Look::line(Ink::Soot, edge));
}

/// A drop, its point up. `middle` is that of its square.
pub fn drop(picture: &mut Picture, middle: At, size: f64) {
    let place = |x: f64, y: f64| (middle.0 + x * size, middle.1 + y * size);
    let steps = vec![
        Step::To(place(0.0, -0.5)),
        Step::Curve(place(0.12, -0.22), place(0.34, -0.02), place(0.34, 0.18)),
        Step::Curve(place(0.34, 0.38), place(0.18, 0.5), place(0.0, 0.5)),
        Step::Curve(place(-0.18, 0.5), place(-0.34, 0.38), place(-0.34, 0.18)),
        Step::Curve(place(-0.34, -0.02), place(-0.12, -0.22), place(0.0, -0.5)),
        Step::Close,
    ];
    picture.shape(Outline::Path(steps), Look::plain(Ink::Tank));
}

/// Where the sun stands over the horizon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sun {
    High,
    /// Coming up: an arrow beside it points up.
    Rising,
    Setting,
}

/// A sun; low ones are cut by the horizon.
pub fn sun(picture: &mut Picture, middle: At, size: f64, stands: Sun) {
    let edge = 0.07 * size;
    let place = |turn: f64, far: f64| {
        let angle = turn * std::f64::consts::TAU;
        (middle.0 + far * size * libm::sin(angle), middle.1 - far * size * libm::cos(angle))
    };
    picture.shape(Outline::Circle { middle, radius: 0.22 * size }, Look::plain(Ink::Paper).edged(Ink::Soot, edge));
    for ray in 0..8 {
        let turn = f64::from(ray) / 8.0;
        picture.shape(Outline::lines(&[place(turn, 0.34), place(turn, 0.46)]), Look::line(Ink::Soot, edge));
    }
    if stands == Sun::High {
        return;
    }
    // What lies below the horizon is covered, and an arrow tells which way it goes.
    let cover = Outline::rectangle((middle.0 - 0.56 * size, middle.1), (1.12 * size, 0.6 * size));
    picture.shape(cover, Look::plain(Ink::Paper));
    let horizon = [(middle.0 - 0.5 * size, middle.1), (middle.0 + 0.5 * size, middle.1)];
    picture.shape(Outline::lines(&horizon), Look::line(Ink::Soot, edge));
    let (tip, tail) = match stands {
        Sun::Rising => (middle.1 + 0.14 * size, middle.1 + 0.44 * size),
        _ => (middle.1 + 0.44 * size, middle.1 + 0.14 * size),
    };
    let barb = if tip < tail { 0.12 * size } else { -0.12 * size };
    picture.shape(Outline::lines(&[(middle.0, tail), (middle.0, tip)]), Look::line(Ink::Soot, edge));
    let head = [(middle.0 - 0.12 * size, tip + barb), (middle.0, tip), (middle.0 + 0.12 * size, tip + barb)];
    picture.shape(Outline::lines(&head), Look::line(Ink::Soot, edge));
}

/// A line with an arrow head at both ends, level or upright.
pub fn measure(picture: &mut Picture, from: At, to: At) {
    const HEAD: f64 = 13.0;
    let far = (to.0 - from.0).abs().max((to.1 - from.1).abs());
    let head = HEAD.min(far / 3.0);
    let look = Look::line(Ink::Soot, 4.0);
    picture.shape(Outline::lines(&[from, to]), look);
    let level = (from.1 - to.1).abs() < 1e-6;
    for (tip, inward) in [(from, 1.0), (to, -1.0)] {
        let wing = |side: f64| {
            let (along, aside) = (inward * head, side * head * 0.6);
            if level { (tip.0 + along, tip.1 + aside) } else { (tip.0 + aside, tip.1 + along) }
        };
        picture.shape(Outline::lines(&[wing(1.0), tip, wing(-1.0)]), look);
    }
}

/// A small piece of a fill, for what explains it.
pub fn sample(picture: &mut Picture, at: At, size: (f64, f64), fill: Fill) {
    picture.shape(Outline::rectangle(at, size), Look::filled(fill).edged(Ink::Soot, 3.0));
}
