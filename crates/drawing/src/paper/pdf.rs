//! Pages as PDF (ISO 32000-1): vectors, words that can be selected, tags for those who have them
//! read out. Same pages, same bytes.

mod content;
mod structure;

use pdf_writer::{Finish, Name, Pdf, Rect, Ref, TextStr};

use super::letters::has_all;
use super::page::Page;
use crate::scene::{Item, Scene};
use structure::Structure;

/// Points of PDF in a millimetre.
const POINTS_PER_MM: f64 = 72.0 / 25.4;
/// Under these names a page finds its fonts, and what lets an area be seen through.
const PLAIN: Name<'static> = Name(b"F1");
const BOLD: Name<'static> = Name(b"F2");
const SIGNS: Name<'static> = Name(b"F3");
const CLEAR: Name<'static> = Name(b"G1");

/// What is said of a whole document.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DocumentInfo<'a> {
    /// Its title.
    pub title: &'a str,
    /// Its language as BCP 47 has it.
    pub language: &'a str,
}

/// Pages as a PDF of their size. Readers are told not to scale it when it is printed.
///
/// The letters are those of the fonts that every reader has; [`has_all_letters`] says whether that
/// is enough. What they lack is left out.
#[must_use]
pub fn pdf(pages: &[Page], document: &DocumentInfo<'_>) -> Vec<u8> {
    let mut pdf = Pdf::new();
    let mut last = Ref::new(1);
    let mut next = || {
        let id = last;
        last = Ref::new(id.get() + 1);
        id
    };
    let (catalog, tree, info) = (next(), next(), next());
    let (plain, bold, signs, clear) = (next(), next(), next(), next());
    let places: Vec<(Ref, Ref)> = pages.iter().map(|_| (next(), next())).collect();
    let mut structure = Structure::new(&mut next);
    for ((page, &(id, content)), i) in pages.iter().zip(&places).zip(0..) {
        let Scene { width, height, .. } = page.scene;
        let points = |mm: f64| single(mm * POINTS_PER_MM);
        let mut written = pdf.page(id);
        written.parent(tree).contents(content).struct_parents(i);
        written.media_box(Rect::new(0.0, 0.0, points(width), points(height)));
        let mut resources = written.resources();
        resources.fonts().pair(PLAIN, plain).pair(BOLD, bold).pair(SIGNS, signs);
        resources.ext_g_states().pair(CLEAR, clear);
        resources.finish();
        written.finish();
        pdf.stream(content, &content::of(page));
        structure.add(page, id, &mut next);
    }
    pdf.pages(tree)
        .kids(places.iter().map(|(id, _)| *id))
        .count(pages.iter().fold(0, |count, _| count + 1));
    for (id, name) in [(plain, "Helvetica"), (bold, "Helvetica-Bold")] {
        let mut font = pdf.type1_font(id);
        font.base_font(Name(name.as_bytes()));
        font.encoding_predefined(Name(b"WinAnsiEncoding"));
    }
    pdf.type1_font(signs).base_font(Name(b"Symbol"));
    pdf.ext_graphics(clear).non_stroking_alpha(content::CLEAR_ALPHA);
    pdf.document_info(info).title(TextStr(document.title)).producer(TextStr("Noseward"));
    structure.write(&mut pdf);
    let mut written = pdf.catalog(catalog);
    written.pages(tree).lang(TextStr(document.language));
    written.mark_info().marked(true);
    written.pair(Name(b"StructTreeRoot"), structure.root);
    let mut wishes = written.viewer_preferences();
    wishes.display_doc_title(true);
    wishes.pair(Name(b"PrintScaling"), Name(b"None"));
    wishes.finish();
    written.finish();
    pdf.finish()
}

/// Numbers in a PDF have six digits that count: a millionth of a page.
#[expect(clippy::cast_possible_truncation, reason = "as precise as a PDF is")]
fn single(number: f64) -> f32 {
    number as f32
}

/// Whether the fonts of a PDF have every letter of these pages.
#[must_use]
pub fn has_all_letters(pages: &[Page]) -> bool {
    pages.iter().all(|page| scene_has_all(&page.scene))
}

fn scene_has_all(scene: &Scene) -> bool {
    scene.groups.iter().flat_map(|group| &group.items).all(item_has_all)
}

fn item_has_all(item: &Item) -> bool {
    match item {
        Item::Text { words, .. } => has_all(words),
        Item::Placed { scene, .. } => scene_has_all(scene),
        Item::Part { items, .. } => items.iter().all(item_has_all),
        Item::Path { .. } | Item::Dot { .. } | Item::Grip { .. } => true,
    }
}
