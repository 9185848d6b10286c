//! Several drawings as one.

use crate::scene::{Group, Item, Point, Scene};

/// Drawings of the same unit as one: below each other in their order, so far apart, at the left.
/// `None` where there are none.
#[must_use]
pub fn below(name: &str, scenes: Vec<Scene>, apart: f64) -> Option<Scene> {
    let unit = scenes.first()?.unit;
    let width = scenes.iter().fold(0.0, |width: f64, scene| width.max(scene.width));
    let mut height = 0.0;
    let mut items = Vec::new();
    for scene in scenes {
        let y = if items.is_empty() { 0.0 } else { height + apart };
        height = y + scene.height;
        let at = Point { x: 0.0, y };
        items.push(Item::Placed { at, scale: 1.0, turned_deg: 0.0, scene });
    }
    let groups = vec![Group { key: "below", items }];
    Some(Scene { width, height, unit, name: name.to_owned(), groups })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::Unit;

    #[test]
    fn they_stand_below_each_other_and_keep_apart() {
        let scene =
            |width, height| Scene { width, height, unit: Unit::Mm, ..Scene::default() };
        let all = below("all", vec![scene(30.0, 10.0), scene(40.0, 20.0)], 5.0).unwrap();
        assert_eq!((all.width, all.height, all.unit), (40.0, 35.0, Unit::Mm));
        let tops: Vec<f64> = all.groups[0]
            .items
            .iter()
            .map(|item| match item {
                Item::Placed { at, .. } => at.y,
                _ => panic!("each is placed"),
            })
            .collect();
        assert_eq!(tops, [0.0, 15.0]);
        assert_eq!(below("none", Vec::new(), 5.0), None);
    }
}
