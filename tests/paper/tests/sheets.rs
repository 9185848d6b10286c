//! Every sheet, on both papers, in the languages whose letters a PDF has.

use anyhow::{Context, Result, ensure};
use noseward_drawing::paper::{Page, PaperSize, Tag, has_all_letters};
use noseward_drawing::{Group, Item, Point, Scene};
use noseward_paper_tests::{
    Document, MM_PER_INCH, POINTS_PER_INCH, SHEETS, Sheet, line, told, words,
};
use noseward_words as texts;
use serde_json::Value;

const LANGUAGES: [&str; 4] = ["en", "en-plain", "en-US", "de"];
/// What printers leave white.
const MARGIN_MM: f64 = 12.0;

/// Calls back with every sheet in every language, and its name.
fn every_sheet(check: impl Fn(&str, &[Page], PaperSize) -> Result<()>) -> Result<()> {
    for key in LANGUAGES {
        texts::speak(texts::table_of(key));
        for Sheet { name, make } in SHEETS {
            for size in PaperSize::ALL {
                let name = format!("{name}-{size:?}-{key}");
                check(&name, &make(size), size).with_context(|| name.clone())?;
            }
        }
    }
    Ok(())
}

fn document(name: &str, pages: &[Page]) -> Result<Document> {
    Document::write(name, pages, texts::language().tag)
}

#[test]
fn every_sheet_is_sound_and_says_what_it_is() -> Result<()> {
    every_sheet(|name, pages, size| {
        let document = document(&format!("sound-{name}"), pages)?;
        document.check()?;
        let info = document.info()?;
        let told = |key: &str| {
            let line = info.lines().find_map(|line| line.strip_prefix(key));
            line.with_context(|| format!("no {key} in {info}")).map(str::trim)
        };
        assert_eq!(told("Tagged:")?, "yes", "{name}");
        assert_eq!(line(told("Title:")?), line(&pages[0].scene.name), "{name}");
        assert_eq!(told("Pages:")?, pages.len().to_string(), "{name}");
        let numbers: Vec<f64> =
            told("Page size:")?.split(' ').filter_map(|word| word.parse().ok()).collect();
        let (width, height) = size.size_mm();
        for (points, mm) in numbers.iter().zip([width, height]) {
            let found = points / POINTS_PER_INCH * MM_PER_INCH;
            ensure!((found - mm).abs() < 0.01, "{found} mm for {mm}");
        }
        assert_eq!(numbers.len(), 2, "{info}");
        let objects = document.objects()?;
        let mut catalogs = objects.iter().filter(|object| object["/Type"] == "/Catalog");
        let catalog = catalogs.next().context("no catalog")?;
        let language = format!("u:{}", texts::language().tag);
        assert_eq!(catalog["/Lang"], Value::from(language), "{name}");
        assert_eq!(catalog["/MarkInfo"]["/Marked"], true, "{name}");
        let wishes = &catalog["/ViewerPreferences"];
        assert_eq!(wishes["/PrintScaling"], "/None", "{name}");
        assert_eq!(wishes["/DisplayDocTitle"], true, "{name}");
        Ok(())
    })
}

/// Whether anything on it is turned by other than quarters.
fn is_aslant(scene: &Scene) -> bool {
    scene.groups.iter().flat_map(|group| &group.items).any(|item| match item {
        Item::Placed { turned_deg, scene, .. } => {
            turned_deg.rem_euclid(90.0) > 0.0 || is_aslant(scene)
        }
        _ => false,
    })
}

#[test]
fn words_come_back_in_their_order() -> Result<()> {
    every_sheet(|name, pages, _| {
        ensure!(has_all_letters(pages), "letters are missing");
        let document = document(&format!("words-{name}"), pages)?;
        for (page, number) in pages.iter().zip(1..) {
            let wanted: Vec<String> =
                told(page).into_iter().flat_map(|group| group.words).collect();
            let found = words(&document.text(number)?);
            // Of words that run aslant pdftotext makes a word of each letter.
            if is_aslant(&page.scene) {
                assert_eq!(found.concat(), wanted.concat(), "{name}, page {number}");
            } else {
                assert_eq!(found, wanted, "{name}, page {number}");
            }
        }
        Ok(())
    })
}

/// The words of the tree, each behind its kind, as pdfinfo writes it: a line for an element, and
/// behind it one in quotation marks for its words.
fn elements(structure: &str) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = Vec::new();
    for text in structure.lines().map(str::trim) {
        let said = text.strip_prefix('"').and_then(|text| text.strip_suffix('"'));
        match (said, found.last_mut()) {
            (Some(said), Some((_, words))) => *words = line(said),
            _ => found.push((text.trim_end_matches(" (block)").into(), String::new())),
        }
    }
    found
}

#[test]
fn what_is_read_out_has_headings_tables_and_names_for_figures() -> Result<()> {
    every_sheet(|name, pages, _| {
        let document = document(&format!("tree-{name}"), pages)?;
        let kind = |tag: &Tag| match tag {
            Tag::Heading(level) => Some(format!("H{}", level.min(&3))),
            Tag::Paragraph => Some("P".into()),
            Tag::Cell { is_head, .. } => Some(if *is_head { "TH" } else { "TD" }.into()),
            Tag::Figure(_) => Some("Figure".into()),
            Tag::Artifact => None,
        };
        let groups: Vec<_> = pages.iter().flat_map(told).collect();
        let wanted: Vec<(String, String)> = groups
            .iter()
            .filter_map(|group| Some((kind(group.tag)?, group.words.join(" "))))
            .collect();
        assert_eq!(wanted[0], ("H1".into(), line(&pages[0].scene.name)), "{name}");
        let structure = document.structure()?;
        let mut found = elements(&structure);
        found.retain(|(kind, _)| !["Document", "Table", "TR"].contains(&kind.as_str()));
        assert_eq!(found, wanted, "{name}: {structure}");
        let alts = |tag: &Tag| match tag {
            Tag::Figure(alt) => Some(format!("u:{alt}")),
            _ => None,
        };
        let mut wanted: Vec<_> =
            groups.iter().filter_map(|group| alts(group.tag)).collect();
        assert!(wanted.iter().all(|alt| alt.len() > 4), "{name}: {wanted:?}");
        let objects = document.objects()?;
        let figures = objects.iter().filter(|object| object["/S"] == "/Figure");
        let mut found: Vec<_> =
            figures.map(|figure| figure["/Alt"].as_str().unwrap_or_default()).collect();
        found.sort_unstable();
        wanted.sort_unstable();
        assert_eq!(found, wanted, "{name}");
        Ok(())
    })
}

/// A page that lies on a larger one, so that what is drawn beyond its edges shows.
fn on_a_larger_one(page: &Page, free_mm: f64) -> Page {
    let scene = page.scene.clone();
    let at = Point { x: free_mm, y: free_mm };
    let (width, height) = (scene.width + 2.0 * free_mm, scene.height + 2.0 * free_mm);
    let inner = Item::Placed { at, scale: 1.0, turned_deg: 0.0, scene };
    let groups = vec![Group { key: "page", items: vec![inner] }];
    let scene = Scene { width, height, groups, ..page.scene.clone() };
    Page { scene, tags: vec![Tag::Artifact] }
}

#[test]
fn nothing_is_drawn_where_printers_leave_white() -> Result<()> {
    const FREE_MM: f64 = 60.0;
    /// Of a frame that stands on the edge of the room.
    const HALF_A_LINE_MM: f64 = 0.1;
    every_sheet(|name, pages, size| {
        let larger: Vec<Page> =
            pages.iter().map(|page| on_a_larger_one(page, FREE_MM)).collect();
        let document = document(&format!("edge-{name}"), &larger)?;
        let (width, height) = size.size_mm();
        for number in 1..=pages.len() {
            let picture = document.picture(number, 127)?;
            let ink = picture.ink().context("an empty page")?;
            let edge = FREE_MM + MARGIN_MM - HALF_A_LINE_MM - picture.mm;
            let most = |mm: f64| mm + 2.0 * FREE_MM - edge;
            ensure!(
                ink.left.min(ink.top) >= edge
                    && ink.right <= most(width)
                    && ink.bottom <= most(height),
                "page {number}: {ink:?}, of which {FREE_MM} mm are added on each side"
            );
        }
        Ok(())
    })
}

#[test]
fn both_papers_have_the_same_pages() -> Result<()> {
    for key in LANGUAGES {
        texts::speak(texts::table_of(key));
        for Sheet { name, make } in SHEETS {
            let [a4, letter] = PaperSize::ALL.map(|size| {
                let name = format!("same-{name}-{size:?}-{key}");
                let pages = make(size);
                let document = document(&name, &pages)?;
                (1..=pages.len())
                    .map(|page| document.text(page))
                    .collect::<Result<Vec<_>>>()
            });
            assert_eq!(a4?, letter?, "{name} in {key}");
        }
    }
    Ok(())
}
