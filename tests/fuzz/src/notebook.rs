//! What must hold for every notebook and result that was opened from anywhere.

use noseward_lesson::{MOST_TRIALS, Notebook, Trial, TrialResult};
use noseward_link::{
    NotebookFile, QrSegments, SetUpLink, in_code, notebook_hash, notebook_parts,
    open_notebook_file, open_notebook_hash, open_result_code, open_set_up, result_code,
    set_up_code, set_up_hash, to_notebook_file,
};

use crate::{EXACT, assert_same, check_error, is_unwanted, largest};

/// What the bytes of a fuzzer stand for.
#[derive(Debug)]
pub enum NotebookInput<'a> {
    /// A text, as a person or a program might send it.
    Text(String),
    /// The payload of a notebook, for a link.
    Notebook(&'a [u8]),
    /// The payload of a notebook, for parts.
    Parts(&'a [u8]),
    /// The payload of a result.
    Result(&'a [u8]),
    /// The payload of a set-up.
    SetUp(&'a [u8]),
}

/// Bytes that begin with 0 to 3 are a payload, for a link to a notebook, for parts, for a
/// result, and for a link to a set-up; all others are a text.
#[must_use]
pub fn notebook_input(bytes: &[u8]) -> NotebookInput<'_> {
    match bytes {
        [0, bytes @ ..] => NotebookInput::Notebook(bytes),
        [1, bytes @ ..] => NotebookInput::Parts(bytes),
        [2, bytes @ ..] => NotebookInput::Result(bytes),
        [3, bytes @ ..] => NotebookInput::SetUp(bytes),
        _ => NotebookInput::Text(String::from_utf8_lossy(bytes).into_owned()),
    }
}

/// Holds a notebook against what is promised of it.
///
/// # Panics
///
/// If a promise is broken.
pub fn check_notebook(file: &NotebookFile) {
    let notebook = &file.notebook;
    assert_same(&file.clone().rounded(), file);
    assert!(notebook.trials().len() + notebook.deleted().len() <= MOST_TRIALS);
    for trial in notebook.trials() {
        check_words(trial);
        if let Some(result) = TrialResult::of(notebook, trial.id()) {
            check_result(&in_code(&result));
        }
    }
    // Bytes are only given where they hold everything.
    if let Some(link) = notebook_hash(file) {
        assert_eq!(open_notebook_hash(&link), Some(Ok(file.clone())));
    }
    if let Some(parts) = notebook_parts(file) {
        let mut collection = QrSegments::default();
        for part in parts.iter().rev() {
            collection.add(part).expect("a part that was just made");
        }
        assert_eq!(collection.notebook(), Some(Ok(file.clone())));
    }
    let trials = notebook.trials().iter();
    let deleted = notebook.deleted().iter().map(|deleted| &deleted.trial);
    let records = trials.chain(deleted).map(Trial::record).chain(file.rocket.clone());
    let all_exact = records.map(|record| largest(&record)).all(|most| most <= EXACT)
        && lengths(notebook).all(|mm| mm.abs() <= EXACT);
    if all_exact {
        let text = to_notebook_file(file);
        assert_eq!(open_notebook_file(&text).as_ref(), Ok(file));
    }
}

/// Every length that was read off a ruler.
fn lengths(notebook: &Notebook) -> impl Iterator<Item = f64> {
    let trials = notebook.trials().iter();
    let deleted = notebook.deleted().iter().map(|deleted| &deleted.trial);
    let measured = trials.chain(deleted).map(|trial| &trial.measured);
    measured.flat_map(|measured| {
        let points = [&measured.mass, &measured.pressure];
        let read = points
            .into_iter()
            .flat_map(|read| read.mm.into_iter().chain([read.guess_mm]));
        read.chain([measured.rocket_length_mm, measured.cutout_length_mm]).flatten()
    })
}

/// Holds parts against what is promised of them.
///
/// # Panics
///
/// If a promise is broken.
pub fn check_parts(parts: &QrSegments) {
    let progress = parts.progress();
    assert!(progress.have > 0);
    assert_eq!(parts.missing().len(), usize::from(progress.of - progress.have));
    match parts.notebook() {
        None => assert!(!parts.missing().is_empty()),
        Some(Ok(file)) => check_notebook(&file),
        Some(Err(error)) => check_error(&error),
    }
}

/// Holds a result against what is promised of it.
///
/// # Panics
///
/// If a promise is broken.
pub fn check_result(result: &TrialResult) {
    let text = result_code(result);
    assert_eq!(text.len(), 74);
    assert_eq!(open_result_code(&text).as_ref(), Ok(result));
}

/// Holds a set-up against what is promised of it: it comes back as a link and as a code.
///
/// # Panics
///
/// If a promise is broken.
pub fn check_set_up(link: &SetUpLink) {
    assert_eq!(link.set_up.clone().rounded(), link.set_up);
    assert!(link.set_up.labels().count() <= 40);
    let code = set_up_code(link);
    assert_eq!(open_set_up(&code).as_ref(), Ok(link));
    if let Some(hash) = set_up_hash(link) {
        assert!(hash.len() < 540);
        assert_eq!(open_set_up(&hash).as_ref(), Ok(link));
    }
}

/// A seal stands where something is locked or was swung, and no text has what none may have.
fn check_words(trial: &Trial) {
    let has_something = trial.is_locked() || !trial.swings().outcomes().is_empty();
    assert_eq!(trial.seal().is_some(), has_something);
    let versions = trial.predictions().versions().iter();
    let texts = versions.map(|version| version.because.as_str());
    for text in texts.chain([&*trial.plan, &*trial.note, &*trial.draft.because]) {
        assert!(!text.contains(|c| c != '\n' && is_unwanted(c)), "{text:?}");
        assert!(text.chars().count() <= 500);
    }
}
