//! The inks and patterns of every picture.
//!
//! Each ink stands against the paper and both washes with a contrast of at least 4.5 to 1 (WCAG 2, 1.4.3), also as an
//! eye without the green cones sees it; what differs in kind differs in pattern or word too, never in colour alone.

/// A colour of the house.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ink {
    /// Letters and outlines.
    Soot,
    /// Second to be read: scales, notes.
    Slate,
    /// Water.
    Tank,
    /// Plants.
    Leaf,
    /// Heat, nets, warnings.
    Brick,
    /// The paper.
    Paper,
    /// A wash behind letters: water, sky.
    Haze,
    /// A wash behind letters: plants, mix.
    Husk,
}

impl Ink {
    /// Red, green, blue, 0 to 255.
    #[must_use]
    pub const fn rgb(self) -> [u8; 3] {
        match self {
            Self::Soot => [0x14, 0x17, 0x1c],
            Self::Slate => [0x4a, 0x52, 0x5c],
            Self::Tank => [0x0a, 0x45, 0x86],
            Self::Leaf => [0x1c, 0x56, 0x2c],
            Self::Brick => [0x93, 0x2f, 0x0c],
            Self::Paper => [0xff, 0xff, 0xff],
            Self::Haze => [0xe2, 0xed, 0xf8],
            Self::Husk => [0xf4, 0xf0, 0xdc],
        }
    }

    /// As SVG and CSS write it.
    #[must_use]
    pub fn code(self) -> String {
        let [red, green, blue] = self.rgb();
        format!("#{red:02x}{green:02x}{blue:02x}")
    }
}

/// How an area is filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fill {
    Plain(Ink),
    /// Stripes that rise to the right, on paper.
    Stripes(Ink),
    /// Stripes that fall to the right, on paper.
    Falling(Ink),
    /// Dots on paper.
    Dots(Ink),
    /// Lines both ways, on paper: a net.
    Mesh(Ink),
}

impl Fill {
    /// Its ink.
    #[must_use]
    pub const fn ink(self) -> Ink {
        match self {
            Self::Plain(ink) | Self::Stripes(ink) | Self::Falling(ink) | Self::Dots(ink) | Self::Mesh(ink) => ink,
        }
    }

    /// The name of its pattern, none for a plain ink.
    pub fn pattern(self) -> Option<String> {
        let kind = match self {
            Self::Plain(_) => return None,
            Self::Stripes(_) => "stripes",
            Self::Falling(_) => "falling",
            Self::Dots(_) => "dots",
            Self::Mesh(_) => "mesh",
        };
        Some(format!("{kind}-{}", &self.ink().code()[1..]))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const INKS: [Ink; 5] = [Ink::Soot, Ink::Slate, Ink::Tank, Ink::Leaf, Ink::Brick];
    const GROUNDS: [Ink; 3] = [Ink::Paper, Ink::Haze, Ink::Husk];

    /// sRGB to linear light (IEC 61966-2-1).
    fn linear(channel: u8) -> f64 {
        let value = f64::from(channel) / 255.0;
        if value <= 0.040_45 { value / 12.92 } else { ((value + 0.055) / 1.055).powf(2.4) }
    }

    /// As an eye without green cones sees it: Machado, Oliveira and Fernandes 2009, table 1, deuteranomaly of severity
    /// 1.0, applied to linear light.
    fn without_green_cones([red, green, blue]: [f64; 3]) -> [f64; 3] {
        const ROWS: [[f64; 3]; 3] =
            [[0.367_322, 0.860_646, -0.227_968], [0.280_085, 0.672_501, 0.047_413], [-0.011_820, 0.042_940, 0.968_881]];
        ROWS.map(|row| (row[0] * red + row[1] * green + row[2] * blue).clamp(0.0, 1.0))
    }

    /// Relative luminance and contrast of WCAG 2.
    fn contrast(one: [f64; 3], other: [f64; 3]) -> f64 {
        let light = |[red, green, blue]: [f64; 3]| 0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05;
        let (one, other) = (light(one), light(other));
        one.max(other) / one.min(other)
    }

    #[test]
    fn every_ink_stands_out_from_every_ground() {
        for ink in INKS {
            for ground in GROUNDS {
                let (a, b) = (ink.rgb().map(linear), ground.rgb().map(linear));
                assert!(contrast(a, b) >= 4.5, "{ink:?} on {ground:?}: {}", contrast(a, b));
                let (a, b) = (without_green_cones(a), without_green_cones(b));
                assert!(contrast(a, b) >= 4.5, "{ink:?} on {ground:?} without green cones: {}", contrast(a, b));
            }
        }
    }

    /// The published extremes: black on white is 21 to 1, and grey #777 on white just misses 4.5 (WCAG 2 notes).
    #[test]
    fn the_yardstick_is_the_published_one() {
        let grey = [0x77, 0x77, 0x77].map(linear);
        let white = [255, 255, 255].map(linear);
        assert!((contrast([0.0; 3], white) - 21.0).abs() < 0.01);
        assert!((4.4..4.5).contains(&contrast(grey, white)), "{}", contrast(grey, white));
    }
}
