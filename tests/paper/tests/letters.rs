//! What is written comes back letter by letter.

use anyhow::Result;
use noseward_drawing::paper::{Flow, PaperSize, has_all_letters};
use noseward_paper_tests::{Document, line};
use noseward_words as texts;

/// Every letter that German, numbers with units and the page's own sentences need.
const LINES: [&str; 6] = [
    "Größe, Maß, Übung, Äste, Öl: „Wie weißt du das?“ – ‚so‘ – weil…",
    "−3,5 mm · 65 × 125 mm · 30° · ±2 % · ½ · ¼ · 3 m² · 5 µm · 7 €",
    "Nase ← Mitte → Heck, ↑ oben, ↓ unten, ↔ hin und her",
    "a ≤ b ≥ c ≈ d − e",
    "“quoted”, ‘so’, it’s – and — on…",
    "ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz 0123456789 !\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~",
];

#[test]
fn german_signs_and_arrows_come_back() -> Result<()> {
    texts::speak(texts::table_of("de"));
    let mut flow = Flow::new(PaperSize::A4, "Größe − → „Maß“");
    for words in LINES {
        flow.heading(2, words);
        flow.paragraph(words);
    }
    let pages = flow.pages();
    assert!(has_all_letters(&pages));
    let document = Document::write("letters", &pages, "de")?;
    let text = line(&document.text(1)?);
    let structure = document.structure()?;
    for words in LINES {
        assert_eq!(text.matches(words).count(), 2, "{words}\n{text}");
        assert!(structure.contains(&format!("\"{words} \"")), "{words}\n{structure}");
    }
    assert!(text.contains(texts::sheets_foot().as_str()), "{text}");
    Ok(())
}

#[test]
fn letters_that_a_pdf_lacks_are_told() {
    let with = |words: &str| {
        let mut flow = Flow::new(PaperSize::A4, "Title");
        flow.paragraph(words);
        has_all_letters(&flow.pages())
    };
    assert!(with("Größe → 5"));
    assert!(!with("صاروخ") && !with("Ğ") && !with("ракета"));
}
