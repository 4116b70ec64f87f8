//! The functions that a platform's own library may round differently. They come from one portable
//! library, so that a sum gives the same digits on every machine.

/// eˣ.
#[must_use]
#[inline]
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Error function.
#[must_use]
#[inline]
pub fn erf(x: f64) -> f64 {
    libm::erf(x)
}

/// Natural logarithm.
#[must_use]
#[inline]
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// Square root.
#[must_use]
#[inline]
pub fn sqrt(x: f64) -> f64 {
    libm::sqrt(x)
}

/// Cube root.
#[must_use]
#[inline]
pub fn cbrt(x: f64) -> f64 {
    libm::cbrt(x)
}

/// x to the power y.
#[must_use]
#[inline]
pub fn powf(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// Sine of an angle in radians.
#[must_use]
#[inline]
pub fn sin(radians: f64) -> f64 {
    libm::sin(radians)
}

/// Cosine of an angle in radians.
#[must_use]
#[inline]
pub fn cos(radians: f64) -> f64 {
    libm::cos(radians)
}

/// Tangent of an angle in radians.
#[must_use]
#[inline]
pub fn tan(radians: f64) -> f64 {
    libm::tan(radians)
}

/// The angle in radians, 0 to π, with this cosine.
#[must_use]
#[inline]
pub fn acos(x: f64) -> f64 {
    libm::acos(x)
}

/// The angle in radians, −π/2 to π/2, with this sine.
#[must_use]
#[inline]
pub fn asin(x: f64) -> f64 {
    libm::asin(x)
}

/// The angle in radians, −π to π, of the point (x, y).
#[must_use]
#[inline]
pub fn atan2(y: f64, x: f64) -> f64 {
    libm::atan2(y, x)
}
