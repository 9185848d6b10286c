//! The error correction of a symbol: Reed and Solomon's code over the bytes (ISO/IEC 18004,
//! annexes A and B).

/// Powers of the generator, and how often to multiply by it to come to a byte.
struct Field {
    powers: [u8; 255],
    logs: [usize; 256],
}

impl Field {
    fn new() -> Self {
        let mut field = Self { powers: [0; 255], logs: [0; 256] };
        let mut power = 1_u8;
        for (i, place) in field.powers.iter_mut().enumerate() {
            *place = power;
            field.logs[usize::from(power)] = i;
            // x^8 + x^4 + x^3 + x^2 + 1 is nought.
            power = (power << 1) ^ if power & 0x80 == 0 { 0 } else { 0x1d };
        }
        field
    }

    fn power(&self, of: usize) -> u8 {
        self.powers[of % 255]
    }

    fn times(&self, a: u8, b: u8) -> u8 {
        if a == 0 || b == 0 {
            return 0;
        }
        self.power(self.logs[usize::from(a)] + self.logs[usize::from(b)])
    }

    /// `a` divided by something that is not nought.
    fn over(&self, a: u8, b: u8) -> u8 {
        self.times(a, self.power(255 - self.logs[usize::from(b)]))
    }

    /// The value of a polynomial, the constant first.
    fn value(&self, polynomial: &[u8], at: u8) -> u8 {
        polynomial.iter().rev().fold(0, |sum, term| self.times(sum, at) ^ term)
    }
}

/// A block with its errors mended; `None` where there are more than its last `check` words, up
/// to thirty, can tell.
pub(super) fn corrected(mut block: Vec<u8>, check: usize) -> Option<Vec<u8>> {
    let field = Field::new();
    let signs = signs(&field, &block, check);
    if signs.iter().all(|sign| *sign == 0) {
        return Some(block);
    }
    let (places, errors) = locator(&field, &signs);
    if errors > check / 2 {
        return None;
    }
    let worths = worths(&field, &signs, &places);
    let mut found = 0;
    for from_end in 0..block.len() {
        let inverse = field.power(255 - from_end % 255);
        if field.value(&places, inverse) != 0 {
            continue;
        }
        // Of a derivative every other term is nought.
        let odd: Vec<u8> = places
            .iter()
            .enumerate()
            .map(|(i, t)| if i % 2 == 1 { *t } else { 0 })
            .collect();
        let slope = field.times(field.value(&odd, inverse), field.power(from_end));
        if slope == 0 {
            return None;
        }
        let worth = field.times(field.value(&worths, inverse), field.power(from_end));
        let place = block.len() - 1 - from_end;
        block[place] ^= field.over(worth, slope);
        found += 1;
    }
    let is_whole = self::signs(&field, &block, check).iter().all(|sign| *sign == 0);
    (found == errors && is_whole).then_some(block)
}

/// The values of the block as a polynomial at the first powers: all nought where it is whole.
fn signs(field: &Field, block: &[u8], check: usize) -> Vec<u8> {
    let value = |at: u8| block.iter().fold(0, |sum, word| field.times(sum, at) ^ word);
    (0..check).map(|i| value(field.power(i))).collect()
}

/// The shortest polynomial whose roots tell where the errors are, and how many there are
/// (Massey 1969).
fn locator(field: &Field, signs: &[u8]) -> (Vec<u8>, usize) {
    let count = signs.len();
    let mut places = vec![0; count + 1];
    places[0] = 1;
    let mut before = places.clone();
    let (mut errors, mut gap, mut last) = (0, 1, 1);
    for n in 0..count {
        let off =
            (0..=errors.min(n)).fold(0, |s, i| s ^ field.times(places[i], signs[n - i]));
        if off == 0 {
            gap += 1;
            continue;
        }
        let by = field.over(off, last);
        let now = places.clone();
        for i in gap..=count {
            places[i] ^= field.times(by, before[i - gap]);
        }
        if 2 * errors <= n {
            (errors, last, gap, before) = (n + 1 - errors, off, 1, now);
        } else {
            gap += 1;
        }
    }
    (places, errors)
}

/// The polynomial that tells how far off each word is (Forney 1965).
fn worths(field: &Field, signs: &[u8], places: &[u8]) -> Vec<u8> {
    let term =
        |n: usize| (0..=n).fold(0, |s, i| s ^ field.times(signs[i], places[n - i]));
    (0..signs.len()).map(term).collect()
}
