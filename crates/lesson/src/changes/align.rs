//! Which part of one list is which of another.

/// One step of an alignment: places in the two lists, one of them at least.
pub(super) type Step = (Option<usize>, Option<usize>);

/// The cheapest way to pair two lists in order. `cost` is for a pair of places, `gap` for
/// a part that only one list has. Between equals a pair is preferred.
pub(super) fn align(
    lens: (usize, usize),
    gap: u32,
    cost: impl Fn(usize, usize) -> u32,
) -> Vec<Step> {
    let (rows, columns) = lens;
    // The cost of what lies behind each pair of places.
    let mut rest = vec![vec![0; columns + 1]; rows + 1];
    for i in (0..=rows).rev() {
        for j in (0..=columns).rev() {
            let ways = [
                (i < rows && j < columns).then(|| rest[i + 1][j + 1] + cost(i, j)),
                (i < rows).then(|| rest[i + 1][j] + gap),
                (j < columns).then(|| rest[i][j + 1] + gap),
            ];
            rest[i][j] = ways.into_iter().flatten().min().unwrap_or(0);
        }
    }
    let (mut i, mut j, mut steps) = (0, 0, Vec::new());
    while i < rows || j < columns {
        let here = rest[i][j];
        let pairs = i < rows && j < columns && here == rest[i + 1][j + 1] + cost(i, j);
        let first = pairs || (i < rows && here == rest[i + 1][j] + gap);
        let second = pairs || !first;
        steps.push((first.then_some(i), second.then_some(j)));
        i += usize::from(first);
        j += usize::from(second);
    }
    steps
}

/// Where in the second list the part of a step is, or belongs.
pub(super) fn place_in_after(steps: &[Step], step: usize) -> usize {
    steps[..step].iter().filter(|step| step.1.is_some()).count()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn letters(a: &str, b: &str) -> String {
        let (a, b) = (a.as_bytes(), b.as_bytes());
        let cost = |i: usize, j: usize| {
            u32::from(!a[i].eq_ignore_ascii_case(&b[j])) * 9 + u32::from(a[i] != b[j])
        };
        let side = |list: &[u8], place: Option<usize>| {
            place.map_or('-', |i| char::from(list[i]))
        };
        let steps = align((a.len(), b.len()), 2, cost).into_iter();
        steps.flat_map(|(i, j)| [side(a, i), side(b, j)]).collect()
    }

    #[test]
    fn one_part_more_or_less_is_one_step() {
        assert_eq!(letters("tsn", "otsn"), "-ottssnn");
        assert_eq!(letters("otsn", "tsn"), "o-ttssnn");
        assert_eq!(letters("ab", "aXb"), "aa-Xbb");
        assert_eq!(letters("ab", "Ab"), "aAbb");
        assert_eq!(letters("", "ab"), "-a-b");
        assert_eq!(letters("", ""), "");
    }

    #[test]
    fn unlike_parts_are_no_pair() {
        assert_eq!(letters("a", "x"), "a--x");
    }
}
