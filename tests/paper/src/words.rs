//! The words of a page as they were meant to stand there.

use noseward_drawing::paper::{Page, Tag};
use noseward_drawing::{Item, Scene};

/// What somebody who has a page read out is told, group by group.
#[derive(Debug)]
pub struct Told<'a> {
    /// What the group is.
    pub tag: &'a Tag,
    /// Its words.
    pub words: Vec<String>,
}

/// The groups of a page in their order.
#[must_use]
pub fn told(page: &Page) -> Vec<Told<'_>> {
    let groups = page.scene.groups.iter().zip(&page.tags);
    groups
        .map(|(group, tag)| {
            let mut lines = Vec::new();
            collect(&group.items, &mut lines);
            Told { tag, words: words(&lines.join(" ")) }
        })
        .collect()
}

fn collect(items: &[Item], lines: &mut Vec<String>) {
    for item in items {
        match item {
            Item::Text { words, .. } => lines.push(words.clone()),
            Item::Placed { scene: Scene { groups, .. }, .. } => {
                groups.iter().for_each(|group| collect(&group.items, lines));
            }
            Item::Part { items, .. } => collect(items, lines),
            Item::Path { .. } | Item::Dot { .. } | Item::Grip { .. } => {}
        }
    }
}

/// The words of a text: without marks of direction and places to break a line, and with blanks
/// and hyphens of one kind.
#[must_use]
pub fn words(text: &str) -> Vec<String> {
    let letter = |letter| match letter {
        '\u{ad}' | '\u{200e}' | '\u{200f}' | '\u{2066}'..='\u{2069}' => None,
        '\u{a0}' | '\u{2009}' | '\u{202f}' | '\u{c}' => Some(' '),
        '\u{2010}' | '\u{2011}' => Some('-'),
        letter => Some(letter),
    };
    let text: String = text.chars().filter_map(letter).collect();
    text.split_whitespace().map(str::to_owned).collect()
}

/// The same in one line.
#[must_use]
pub fn line(text: &str) -> String {
    words(text).join(" ")
}
