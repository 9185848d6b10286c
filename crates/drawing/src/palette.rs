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
    /// Inside of a bottle, which one sees through.
    Body,
    /// Inside of a fin.
    Fin,
    /// Fine lines of the squared paper.
    FineLine,
    /// Bold lines of the squared paper, and what shines on a bottle.
    BoldLine,
    /// The ruler, and card.
    Ruler,
    /// The fulcrum: centre of mass.
    Fulcrum,
    /// The wind: centre of pressure.
    Wind,
    /// Cautions and odd readings, nothing else.
    Alert,
}

impl Colour {
    /// As CSS: a token of the page, which has other values in the dark and where the
    /// reader's system chooses the colours; elsewhere the value on paper.
    #[must_use]
    pub fn css(self) -> &'static str {
        match self {
            Self::Ink => "var(--ink,#1d2b3a)",
            Self::Soft => "var(--soft,#52606e)",
            Self::Sheet => "var(--sheet,#fffdf8)",
            Self::Body => "var(--body,#ffffff)",
            Self::Fin => "var(--fin,#e9eff3)",
            Self::FineLine => "var(--fine,#e3e9ee)",
            Self::BoldLine => "var(--bold,#cbd6de)",
            Self::Ruler => "var(--ruler,#fff8e2)",
            Self::Fulcrum => "var(--mass,#6d4426)",
            Self::Wind => "var(--wind,#1c5d99)",
            Self::Alert => "var(--alert,#b4480f)",
        }
    }

    /// The value on paper alone, as CSS.
    #[must_use]
    pub fn paper_css(self) -> &'static str {
        let (_, value) = self.css().split_once(',').unwrap_or_default();
        value.trim_end_matches(')')
    }

    /// On paper: red, green and blue, from 0 to 1.
    #[must_use]
    pub(crate) fn on_paper(self) -> [f32; 3] {
        let digits = self.paper_css().trim_start_matches('#');
        let value = u32::from_str_radix(digits, 16).unwrap_or(0);
        [16, 8, 0].map(|shift| (value >> shift & 0xff) as f32 / 255.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Where the page keeps its tokens.
    const STYLES: &str = include_str!("../../../www/styles/base.css");

    /// The tokens between a mark and the end of their block, each with its value.
    fn tokens(mark: &str) -> Vec<(&'static str, &'static str)> {
        let (_, block) = STYLES.split_once(mark).expect("the styles have such a block");
        let (block, _) = block.split_once('}').unwrap();
        let found = block.lines().filter_map(|line| line.trim().strip_prefix("--"));
        found.map(|line| line.trim_end_matches(';').split_once(": ").unwrap()).collect()
    }

    fn light() -> Vec<(&'static str, &'static str)> {
        tokens(":root {")
    }

    fn dark() -> Vec<(&'static str, &'static str)> {
        tokens("(prefers-color-scheme: dark) {\n  :root {")
    }

    /// Relative luminance and contrast: WCAG 2.2, definitions (text from memory; axe-core has
    /// the same numbers).
    fn luminance(hex: &str) -> f64 {
        let channel = |i: usize| {
            let value = u8::from_str_radix(&hex[i..i + 2], 16).unwrap();
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

    fn contrast(a: &str, b: &str) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    /// Words are read and marks told apart on every ground, by day and in the dark.
    #[test]
    fn words_and_marks_stand_out() {
        for scheme in [light(), dark()] {
            let value = |name: &str| {
                let found = scheme.iter().find(|(known, _)| *known == name);
                found.unwrap_or_else(|| panic!("--{name} has no value")).1
            };
            let grounds = ["paper", "sheet", "card", "plain", "caution"];
            for ground in grounds.into_iter().chain(["body", "fin", "ruler"]) {
                for word in ["ink", "soft", "mass", "wind", "alert"] {
                    let found = contrast(value(word), value(ground));
                    assert!(found >= 4.5, "--{word} on --{ground}: {found:.2}");
                }
            }
            assert!(contrast(value("ink"), value("lit")) >= 4.5);
            // The edge of a field, WCAG 2.2, 1.4.11.
            assert!(contrast(value("edge"), value("card")) >= 3.0);
        }
    }

    #[test]
    fn drawing_and_page_have_one_palette() {
        for colour in [
            Colour::Ink,
            Colour::Soft,
            Colour::Sheet,
            Colour::Body,
            Colour::Fin,
            Colour::FineLine,
            Colour::BoldLine,
            Colour::Ruler,
            Colour::Fulcrum,
            Colour::Wind,
            Colour::Alert,
        ] {
            let css = colour.css().strip_prefix("var(--").unwrap();
            let token = css.trim_end_matches(')').split_once(',').unwrap();
            assert!(light().contains(&token), "{token:?}");
        }
        let names = |list: Vec<(&'static str, &str)>| -> Vec<&str> {
            let colours = list.into_iter().filter(|(_, value)| value.starts_with('#'));
            colours.map(|(name, _)| name).collect()
        };
        assert_eq!(names(light()), names(dark()), "each has a value in the dark");
    }
}
