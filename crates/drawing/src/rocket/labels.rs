//! Words in a column, moved apart where they would overlap.

/// A label that wants to stand beside something.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Wanted {
    /// Where its middle would stand best, in pixels.
    pub(super) middle: f64,
    /// How high it is, in pixels.
    pub(super) height: f64,
}

/// Where the middle of each label goes so that none overlaps, they keep the order of
/// their wishes, and all stay between `top` and `bottom` if they fit at all.
///
/// Labels that touch form a block, which stands where the mean of its wishes is.
pub(super) fn place(wanted: &[Wanted], top: f64, bottom: f64) -> Vec<f64> {
    struct Block {
        members: Vec<usize>,
        /// Sum of where each member would put the top of the block.
        top_wishes: f64,
        height: f64,
    }
    impl Block {
        fn top(&self, least: f64, most: f64) -> f64 {
            #[expect(clippy::cast_precision_loss, reason = "a handful of labels")]
            let mean = self.top_wishes / self.members.len() as f64;
            mean.min(most - self.height).max(least)
        }
    }

    let mut order: Vec<usize> = Vec::new();
    for (i, label) in wanted.iter().enumerate() {
        let place = order.partition_point(|&j| wanted[j].middle <= label.middle);
        order.insert(place, i);
    }
    let mut blocks: Vec<Block> = Vec::new();
    for i in order {
        let Wanted { middle, height } = wanted[i];
        let mut block =
            Block { members: vec![i], top_wishes: middle - height / 2.0, height };
        while let Some(above) = blocks.last() {
            let above_end = above.top(top, bottom) + above.height;
            if above_end <= block.top(top, bottom) {
                break;
            }
            let mut above = blocks.pop().expect("just seen");
            #[expect(clippy::cast_precision_loss, reason = "a handful of labels")]
            let shift = above.height * block.members.len() as f64;
            above.top_wishes += block.top_wishes - shift;
            above.height += block.height;
            above.members.extend(block.members);
            block = above;
        }
        blocks.push(block);
    }
    let mut middles = vec![0.0; wanted.len()];
    for block in &blocks {
        let mut at = block.top(top, bottom);
        for &i in &block.members {
            middles[i] = at + wanted[i].height / 2.0;
            at += wanted[i].height;
        }
    }
    middles
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(middle: f64) -> Wanted {
        Wanted { middle, height: 16.0 }
    }

    #[test]
    fn labels_with_room_stay_where_they_want() {
        assert_eq!(place(&[at(100.0), at(50.0)], 0.0, 200.0), [100.0, 50.0]);
    }

    #[test]
    fn labels_in_one_place_share_it() {
        assert_eq!(
            place(&[at(100.0), at(100.0), at(100.0)], 0.0, 200.0),
            [84.0, 100.0, 116.0]
        );
    }

    #[test]
    fn labels_stay_within_the_column() {
        assert_eq!(place(&[at(2.0), at(3.0)], 0.0, 200.0), [8.0, 24.0]);
        assert_eq!(place(&[at(199.0)], 0.0, 200.0), [192.0]);
    }

    #[test]
    fn no_overlap_whatever_is_wished() {
        let wishes: Vec<Wanted> =
            (0..14).map(|i| at(f64::from(i * i % 7) * 20.0)).collect();
        let mut placed = place(&wishes, 0.0, 400.0);
        placed.sort_by(f64::total_cmp);
        assert!(placed.windows(2).all(|w| w[1] - w[0] >= 16.0 - 1e-9));
        assert!(placed[0] >= 8.0 && placed[13] <= 392.0);
    }
}
