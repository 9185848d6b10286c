//! The few colours, chosen to meet WCAG 2.2 AA on paper and to survive a grey printer.

/// A colour of the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Colour {
    /// Lines and words.
    Ink,
    /// Lesser words.
    Soft,
    /// The sheet under the rocket.
    Sheet,
    /// Inside of the body.
    Body,
    /// Inside of a fin.
    Fin,
    /// Fine lines of the squared paper.
    FineLine,
    /// Bold lines of the squared paper.
    BoldLine,
    /// The ruler.
    Ruler,
    /// The fulcrum: centre of mass.
    Fulcrum,
    /// The wind: centre of pressure.
    Wind,
    /// Cautions and odd readings, nothing else.
    Alert,
}

impl Colour {
    /// As a CSS colour.
    #[must_use]
    pub fn hex(self) -> &'static str {
        match self {
            Self::Ink => "#1d2b3a",
            Self::Soft => "#52606e",
            Self::Sheet => "#fffdf8",
            Self::Body => "#ffffff",
            Self::Fin => "#e9eff3",
            Self::FineLine => "#e3e9ee",
            Self::BoldLine => "#cbd6de",
            Self::Ruler => "#fff8e2",
            Self::Fulcrum => "#6d4426",
            Self::Wind => "#1c5d99",
            Self::Alert => "#b4480f",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance and contrast: WCAG 2.2, definitions (text from memory; axe-core has
    /// the same numbers).
    fn luminance(colour: Colour) -> f64 {
        let channel = |i: usize| {
            let value = u8::from_str_radix(&colour.hex()[i..i + 2], 16).unwrap();
            let c = f64::from(value) / 255.0;
            if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf_for_test() }
        };
        0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
    }

    trait PowForTest {
        fn powf_for_test(self) -> f64;
    }

    impl PowForTest for f64 {
        #[expect(clippy::disallowed_methods, reason = "a test's colour arithmetic")]
        fn powf_for_test(self) -> f64 {
            self.powf(2.4)
        }
    }

    fn contrast(a: Colour, b: Colour) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn words_and_marks_stand_out() {
        for ground in [Colour::Sheet, Colour::Body, Colour::Fin, Colour::Ruler] {
            for word in
                [Colour::Ink, Colour::Soft, Colour::Fulcrum, Colour::Wind, Colour::Alert]
            {
                assert!(contrast(word, ground) >= 4.5, "{word:?} on {ground:?}");
            }
        }
    }
}
