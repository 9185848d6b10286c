//! Weighs what a first visit loads, and the single file.

use crate::assemble::{File, SINGLE_FILE, TABLE_ENDING};
use crate::split::FOR_LEADERS;
use anyhow::{Result, ensure};
use brotli::enc::BrotliEncoderParams;
use noseward_words::{Kind, LANGUAGES};

/// The most that a first visit may load, in bytes after brotli: a page for schools
/// has to start soon on a slow line and an old machine. It holds the place Rocket with its
/// drawing and links, and what stands round every place.
const BUDGET: usize = 200 * 1024;

/// The most that any other place may load besides, in bytes after brotli: with the notebook,
/// which the first of them brings.
const PLACE_BUDGET: usize = 80 * 1024;
/// The same for a place that only whoever leads opens: it takes whole files of pupils' parts along
/// for what it shares with them, so that theirs stay small.
const LEADERS_PLACE_BUDGET: usize = 440 * 1024;
/// The part that every place needs.
const NOTEBOOK: &str = "notebook";
/// The parts that are places, or several.
const PLACES: [&str; 11] = [
    "measure", "compare", "trial", "swing", "why", "handin", "lead", "wordmat", "setup",
    "class", "paper",
];

/// The most that a first visit and what loads after the first drawing may weigh together, in
/// bytes after brotli: all that a pupil's computer loads. At 400 kbit a second, a slow line in
/// a school, all of it is here after some ten seconds.
const PUPILS_BUDGET: usize = 500 * 1024;

/// The most that may load beside that on the computer of whoever leads, in bytes after brotli.
const LEADERS_BUDGET: usize = 240 * 1024;

/// The most that the sentences of one language may weigh, in bytes after brotli: they come
/// before the first drawing of whoever reads that language.
const LANGUAGE_BUDGET: usize = 40 * 1024;

/// The most that the single file may weigh, in bytes as they lie on a disk: it goes
/// through mail and over memory sticks. The module is most of it.
const SINGLE_FILE_BUDGET: usize = 1024 * 1024;

/// Prints the size of each file of a first visit and of the single file, and fails when
/// their sum, or that file, is over its budget.
pub(crate) fn check(files: &[File]) -> Result<()> {
    println!("{:<32} {:>9} {:>9}", "first visit", "bytes", "brotli");
    let mut total = 0;
    for file in files.iter().filter(|file| file.first_visit) {
        let size = compressed(&file.bytes)?;
        total += size;
        println!("{:<32} {:>9} {size:>9}", file.name, file.bytes.len());
    }
    println!("{:<32} {:>9} {total:>9}  of {BUDGET}", "together", "");
    within_budget(total)?;
    let mut later = Vec::new();
    for file in files.iter().filter(|file| is_later(file)) {
        let size = compressed(&file.bytes)?;
        total += size;
        println!("later: {:<25} {:>9} {size:>9}", file.name, file.bytes.len());
        later.push((file, size));
    }
    for place in PLACES {
        let is_of = |part: &String| part == place || part == NOTEBOOK;
        let loaded = later.iter().filter(|(file, _)| file.parts.iter().any(is_of));
        let size: usize = loaded.map(|(_, size)| size).sum();
        let for_leaders = FOR_LEADERS.contains(&place);
        let budget = if for_leaders { LEADERS_PLACE_BUDGET } else { PLACE_BUDGET };
        println!("place: {place:<35} {size:>9}  of {budget}");
        ensure!(
            size <= budget,
            "the place {place} loads {size} bytes, {} more than its budget of {budget} in \
             crates/site/src/sizes.rs",
            size - budget
        );
    }
    let for_leaders = later.iter().filter(|(file, _)| file.is_for_leaders);
    let for_leaders: usize = for_leaders.map(|(_, size)| size).sum();
    for (whose, size, budget) in [
        ("all that a pupil loads", total - for_leaders, PUPILS_BUDGET),
        ("beside that for whoever leads", for_leaders, LEADERS_BUDGET),
    ] {
        println!("{whose:<32} {:>9} {size:>9}  of {budget}", "");
        ensure!(
            size <= budget,
            "{whose} has {size} bytes after brotli, {} more than its budget of {budget} in \
             crates/site/src/sizes.rs",
            size - budget
        );
    }
    for file in files.iter().filter(|file| file.name.ends_with(TABLE_ENDING)) {
        let size = compressed(&file.bytes)?;
        let bytes = file.bytes.len();
        // Nobody reads the pseudo-language, and it is half as long again.
        let is_pseudo = LANGUAGES.iter().any(|language| {
            language.kind == Kind::Pseudo && file.name.starts_with(language.key)
        });
        let budget = if is_pseudo { LANGUAGE_BUDGET * 3 / 2 } else { LANGUAGE_BUDGET };
        println!("language: {:<22} {bytes:>9} {size:>9}  of {budget}", file.name);
        ensure!(
            size <= budget,
            "{} has {size} bytes after brotli, {} more than a language's budget of \
             {budget} in crates/site/src/sizes.rs",
            file.name,
            size - budget
        );
    }
    for file in files.iter().filter(|file| file.name == SINGLE_FILE) {
        let size = file.bytes.len();
        println!("{:<32} {size:>9}            of {SINGLE_FILE_BUDGET}", file.name);
        ensure!(
            size <= SINGLE_FILE_BUDGET,
            "{} has {size} bytes, {} more than its budget of {SINGLE_FILE_BUDGET} in \
             crates/site/src/sizes.rs",
            file.name,
            size - SINGLE_FILE_BUDGET
        );
    }
    Ok(())
}

/// Whether it comes after the first drawing.
fn is_later(file: &File) -> bool {
    !file.parts.is_empty()
}

fn within_budget(total: usize) -> Result<()> {
    ensure!(
        total <= BUDGET,
        "a first visit loads {total} bytes, {} more than the budget of {BUDGET} in \
         crates/site/src/sizes.rs; see in the table above which file grew",
        total - BUDGET
    );
    Ok(())
}

/// The number of bytes that brotli makes of some bytes at its best.
fn compressed(bytes: &[u8]) -> Result<usize> {
    let mut out = Vec::new();
    let best = BrotliEncoderParams { quality: 11, ..BrotliEncoderParams::default() };
    brotli::BrotliCompress(&mut &*bytes, &mut out, &best)?;
    Ok(out.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_budget_itself_is_allowed_and_one_byte_more_is_not() {
        assert!(within_budget(BUDGET).is_ok());
        let error = within_budget(BUDGET + 1).unwrap_err().to_string();
        assert!(error.contains("1 more than"), "{error}");
    }

    /// Nothing that brotli could shorten, by a xorshift generator (Marsaglia 2003).
    fn noise(size: usize) -> Vec<u8> {
        let mut state: u64 = 1;
        let bytes = std::iter::repeat_with(|| {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            state.to_le_bytes()[0]
        });
        bytes.take(size).collect()
    }

    #[test]
    fn only_files_of_a_first_visit_count() {
        let bytes = noise(BUDGET + 1);
        let beside = || File::beside("noseward.js", bytes.as_slice());
        assert!(check(&[beside()]).is_ok());
        assert!(
            check(&[beside(), File::visited("noseward.js", bytes.as_slice())]).is_err()
        );
    }

    #[test]
    fn all_that_a_pupil_loads_has_a_budget_and_what_leaders_need_one_beside_it() {
        let later = |size, is_for_leaders| File {
            parts: vec!["files".to_owned()],
            is_for_leaders,
            ..File::beside("files-0.wasm", noise(size))
        };
        let nearly = |budget: usize| budget / 100 * 99;
        let (pupils, leaders) = (nearly(PUPILS_BUDGET), nearly(LEADERS_BUDGET));
        assert!(check(&[later(pupils, false), later(leaders, true)]).is_ok());
        let error = check(&[later(PUPILS_BUDGET + 1, false)]).unwrap_err().to_string();
        assert!(error.contains("a pupil loads"), "{error}");
        let error = check(&[later(LEADERS_BUDGET + 1, true)]).unwrap_err().to_string();
        assert!(error.contains("whoever leads"), "{error}");
    }

    #[test]
    fn a_place_has_a_budget_with_all_that_it_loads() {
        let file = |size, parts: &[&str]| {
            let parts = parts.iter().map(|&part| part.to_owned()).collect();
            File { parts, ..File::beside("part-0.wasm", noise(size)) }
        };
        let notebook = || file(PLACE_BUDGET / 2, &["notebook"]);
        assert!(check(&[notebook(), file(PLACE_BUDGET / 3, &["swing", "why"])]).is_ok());
        let error =
            check(&[notebook(), file(PLACE_BUDGET / 2 + 1, &["swing"])]).unwrap_err();
        assert!(error.to_string().contains("the place swing loads"), "{error}");
        // What is no place.
        assert!(check(&[file(PLACE_BUDGET + 1, &["files"])]).is_ok());
    }

    #[test]
    fn a_language_has_a_budget_of_its_own() {
        let table = |size| File::beside("de-0.words", noise(size));
        assert!(check(&[table(LANGUAGE_BUDGET / 2)]).is_ok());
        let error = check(&[table(LANGUAGE_BUDGET + 1)]).unwrap_err().to_string();
        assert!(error.contains("a language's budget"), "{error}");
    }

    #[test]
    fn the_single_file_has_a_budget_of_its_own() {
        let file = |name: &str, size| File::beside(name, vec![0; size]);
        assert!(check(&[file(SINGLE_FILE, SINGLE_FILE_BUDGET)]).is_ok());
        assert!(check(&[file("other.html", SINGLE_FILE_BUDGET + 1)]).is_ok());
        let error = check(&[file(SINGLE_FILE, SINGLE_FILE_BUDGET + 1)]).unwrap_err();
        assert!(error.to_string().contains("1 more than"), "{error}");
    }

    #[test]
    fn repetition_compresses_well() {
        let size = compressed(&[b'a'; 10_000]).unwrap();
        assert!(size > 0 && size < 50, "{size}");
    }
}
