//! Labels for the groups of a set-up, to cut apart: what opens the lesson, for each of them.

use noseward_lesson::{Group, SetUp};
use noseward_words as words;

use super::said::printed;
use crate::names::group_name;
use crate::paper::{Flow, Page, PaperSize};
use crate::qr::qr_scene;

/// How large a symbol is at most, in millimetres.
const SYMBOL_MM: f64 = 38.0;

/// A label for every group: its name, the link as a symbol and as a typed code, which `code`
/// gives, and the code of the rules. As many pages as it takes.
#[must_use]
pub fn labels(
    size: PaperSize,
    set_up: &SetUp,
    address: Option<&str>,
    rules: &str,
    code: &dyn Fn(Group) -> String,
) -> Vec<Page> {
    let groups: Vec<(Group, String)> =
        set_up.labels().map(|group| (group, code(group))).collect();
    let mut flow = Flow::new(size, &words::set_up_sheet());
    flow.cards(2, groups.len(), 0.0, &mut |flow, i| {
        let (group, code) = &groups[i];
        label(flow, &group_name(*group), code, address, rules);
    });
    flow.pages()
}

fn label(flow: &mut Flow, name: &str, code: &str, address: Option<&str>, rules: &str) {
    flow.heading(1, name);
    flow.beside(&[SYMBOL_MM, 40.0], 3.0, &mut |flow, i| match i {
        0 => {
            if let Some(symbol) = qr_scene(address, code) {
                flow.figure(&symbol, (SYMBOL_MM, SYMBOL_MM));
            }
        }
        _ => {
            flow.small(&printed(&words::set_up_label_open(name)));
            flow.small(&words::set_up_label_rules(rules));
        }
    });
    if let Some(address) = address {
        flow.small(address);
    }
    flow.code(code);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::paper::inside::{sheet_is_sound, words_of};
    use crate::qr::read_scene;
    use crate::scene::{Item, Scene};
    use noseward_lesson::{Colour, Labels};
    use noseward_link::{SetUpLink, rules_text, set_up_code};
    use noseward_stability::Example;

    const ADDRESS: &str = "https://rockets.example/noseward/";

    fn pages(size: PaperSize, set_up: &SetUp, address: Option<&str>) -> Vec<Page> {
        let code = |group| {
            set_up_code(&SetUpLink { set_up: set_up.clone(), group: Some(group) })
        };
        labels(size, set_up, address, &rules_text(set_up.rules()), &code)
    }

    fn class(pupils: u8, rocket: Option<Example>) -> SetUp {
        SetUp { pupils, rocket: rocket.map(Example::design), ..SetUp::default() }
    }

    #[test]
    fn labels_are_inside_the_room() {
        let gannet = Some(Example::Gannet);
        for (pupils, rocket, address, most) in [
            (1, None, Some(ADDRESS), 1),
            (24, None, None, 2),
            (24, gannet, Some(ADDRESS), 3),
        ] {
            let set_up = class(pupils, rocket);
            sheet_is_sound(most, &|size| pages(size, &set_up, address));
        }
    }

    fn scenes(pages: &[Page]) -> Vec<&Scene> {
        let groups = pages.iter().flat_map(|page| &page.scene.groups);
        let items = groups.flat_map(|group| &group.items);
        let scenes = items.filter_map(|item| match item {
            Item::Placed { scene, .. } => Some(scene),
            _ => None,
        });
        scenes.collect()
    }

    #[test]
    fn every_group_has_its_symbol_and_its_code() {
        let labels = Labels::Numbers(Colour::Green);
        let set_up = SetUp { labels, ..class(24, Some(Example::Puffin)) };
        let pages = pages(PaperSize::Letter, &set_up, Some(ADDRESS));
        let (said, symbols) = (words_of(&pages), scenes(&pages));
        assert_eq!(symbols.len(), 8);
        for (group, symbol) in set_up.labels().zip(symbols) {
            let link = SetUpLink { set_up: set_up.clone(), group: Some(group) };
            let code = set_up_code(&link);
            let bare: String = code.split_whitespace().collect();
            assert_eq!(read_scene(symbol), format!("{ADDRESS}#{bare}"));
            assert!(said.contains(&code.lines().collect::<Vec<_>>().join(" ")));
            assert!(said.contains(&group_name(group)));
        }
    }
}
