//! How long it takes to tell what a text is, and to open it: in proportion to its length,
//! whatever stands in it.

use noseward_lesson::Record;
use noseward_link::{
    LinkErrorKind, NotebookFile, hash, looks_like_notebook, looks_like_table,
    notebook_hash, open_any, open_file, open_hash, open_notebook_hash,
};
use noseward_stability::Example;

fn main() {
    divan::main();
}

const KILOBYTES: [usize; 3] = [32, 64, 128];

/// A text of so many kilobytes.
fn text(piece: &str, kilobytes: usize) -> String {
    piece.repeat(kilobytes * 1024 / piece.len())
}

/// Many words that begin as a link or a code might.
#[divan::bench(args = KILOBYTES)]
fn a_glance_at_plain_words(bencher: divan::Bencher<'_, '_>, kilobytes: usize) {
    let text = text("no trial ran in the north today ", kilobytes);
    bencher.bench(|| looks_like_notebook(&text) || looks_like_table(&text));
}

#[divan::bench(args = KILOBYTES)]
fn plain_words(bencher: divan::Bencher<'_, '_>, kilobytes: usize) {
    let text = text("no trial ran in the north today ", kilobytes);
    bencher.bench(|| open_any(&text).is_err());
}

#[divan::bench(args = KILOBYTES)]
fn a_link_without_end(bencher: divan::Bencher<'_, '_>, kilobytes: usize) {
    let text = format!("n1.{}", text("AbCd", kilobytes));
    bencher.bench(|| open_any(&text).is_err());
}

#[divan::bench(args = [1500, 3000, 6000])]
fn a_file_with_too_many_weights(bencher: divan::Bencher<'_, '_>, weights: usize) {
    let weight = r#"{"mass_g":1,"position_mm":2},"#.repeat(weights);
    let list = weight.trim_end_matches(',');
    let text = format!(r#"{{"sections":[],"weights":[{list}]}}"#);
    let error = open_file(&text).map_err(|error| error.kind);
    assert!(matches!(error, Err(LinkErrorKind::Crowded { .. })));
    bencher.bench(|| open_file(&text).is_err());
}

#[divan::bench]
fn a_rocket(bencher: divan::Bencher<'_, '_>) {
    let link = hash(&Example::Puffin.design().into());
    bencher.bench(|| open_hash(divan::black_box(&link)));
}

#[divan::bench]
fn a_notebook(bencher: divan::Bencher<'_, '_>) {
    let mut file = NotebookFile::default();
    for example in Example::ALL {
        let record = Record::from(example.design());
        file.notebook.begin(&record).expect("room");
    }
    let link = notebook_hash(&file).expect("short enough");
    bencher.bench(|| open_notebook_hash(divan::black_box(&link)));
}
