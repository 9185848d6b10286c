//! What is known of QR symbols that are read in pictures and before the camera.

use noseward_link::{QrSegments, SymbolFault};
use noseward_words as words;

use crate::app::{Effect, Looking, State};
use crate::places::class::update::read;

/// The `video` that shows what the camera sees.
pub(crate) const CAMERA: &str = "class-camera";

/// What is known of symbols that are read.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Symbols {
    pub(crate) camera: Camera,
    /// How many pictures were chosen last.
    pub(crate) chosen: usize,
    /// What came of those that were looked at.
    pub(crate) pictures: Vec<PictureRead>,
    /// What they say, by the names of their files: it is handed on once all were looked at, so that
    /// it is told, and undone, together.
    found: Vec<(String, Vec<String>)>,
    /// The texts that the camera saw since it was started, each once: whoever holds a symbol
    /// before it does so for seconds.
    pub(crate) seen: Vec<String>,
    /// Notebooks that are spread over several symbols, with the texts of those that were read.
    pub(crate) spread: Vec<(QrSegments, Vec<String>)>,
}

/// A picture that was looked at.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct PictureRead {
    /// The name of its file.
    pub(crate) name: String,
    /// Whether the browser could open it.
    pub(crate) is_picture: bool,
    /// How many symbols in it say something.
    pub(crate) read: usize,
    /// Why others say nothing.
    pub(crate) faults: Vec<SymbolFault>,
}

/// How far the camera is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Camera {
    #[default]
    Off,
    /// The browser asks whether it may run.
    Asked,
    Runs,
    Refused(CameraFault),
}

/// Why there is no camera to be had.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum CameraFault {
    /// This computer has none, or it was taken away.
    NoCamera,
    /// Somebody, or the system, said no.
    NotAllowed,
    /// The page does not come over a secure line.
    InsecurePage,
    /// The page is a file, and the browser lets files have none.
    FilePage,
    /// The page's server, or the page round it, does not let it have one.
    Blocked,
    /// Another program has it.
    InUse,
}

/// What the page knows of itself when it is refused a camera.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct CameraPage {
    pub(crate) is_file: bool,
    pub(crate) is_secure: bool,
    /// Whether the policy of the page bars cameras, where the browser tells.
    pub(crate) is_barred: bool,
}

impl CameraFault {
    /// What an error of the browser's means; `None` for its name where it offers no cameras
    /// at all.
    pub(crate) fn of(name: Option<&str>, page: CameraPage) -> Self {
        match name {
            Some("NotReadableError" | "AbortError") => Self::InUse,
            Some("NotFoundError" | "OverconstrainedError") => Self::NoCamera,
            _ if page.is_file => Self::FilePage,
            _ if !page.is_secure => Self::InsecurePage,
            None | Some("SecurityError") => Self::Blocked,
            _ if page.is_barred => Self::Blocked,
            Some(_) => Self::NotAllowed,
        }
    }
}

/// What is found out where symbols are read.
#[derive(Debug)]
pub(crate) enum SymbolsNews {
    /// So many pictures are among the files that were chosen.
    Took(usize),
    /// The next one was looked at; what its symbols say.
    Looked(PictureRead, Vec<String>),
    CameraRuns,
    CameraRefused(CameraFault),
    /// Nobody sees what the camera sees any more.
    CameraUnseen,
    /// These texts are before the camera, for the first time.
    Saw(Vec<String>),
}

/// What follows from what is found out.
pub(crate) fn learn(state: &mut State, news: SymbolsNews) -> Vec<Effect> {
    let Some(desk) = &mut state.class.desk else { return Vec::new() };
    let symbols = &mut desk.symbols;
    let mut found = Vec::new();
    match news {
        SymbolsNews::Took(count) => {
            if !symbols.is_looking() {
                symbols.chosen = 0;
                symbols.pictures.clear();
            }
            symbols.chosen += count;
        }
        // All was deleted meanwhile.
        SymbolsNews::Looked(..) if !symbols.is_looking() => {}
        SymbolsNews::Looked(picture, texts) => {
            symbols.found.push((picture.name.clone(), texts));
            symbols.pictures.push(picture);
            if !symbols.is_looking() {
                found = std::mem::take(&mut symbols.found);
            }
        }
        SymbolsNews::CameraRuns => symbols.camera = Camera::Runs,
        SymbolsNews::CameraRefused(fault) => {
            return symbols.stopped(Camera::Refused(fault));
        }
        SymbolsNews::CameraUnseen => return symbols.stopped(Camera::Off),
        SymbolsNews::Saw(texts) => {
            symbols.seen.extend(texts.iter().cloned());
            found.push((words::symbols_camera().into(), texts));
        }
    }
    // They come to the class as if they stood in files.
    let whole = |(name, texts)| (name, symbols.whole(texts).join("\n"));
    let texts = found.into_iter().map(whole).filter(|(_, text)| !text.is_empty());
    let texts: Vec<_> = texts.collect();
    if texts.is_empty() { vec![Effect::Redraw] } else { read(state, texts) }
}

impl Symbols {
    /// Whether somebody wants the camera.
    pub(in super::super) fn camera(&mut self, wanted: bool) -> Vec<Effect> {
        if !wanted {
            return self.stopped(Camera::Off);
        }
        if self.wants_camera() {
            return Vec::new();
        }
        self.camera = Camera::Asked;
        self.seen.clear();
        vec![Effect::Redraw, Effect::Look(Looking::StartCamera)]
    }

    /// The camera is given back.
    fn stopped(&mut self, camera: Camera) -> Vec<Effect> {
        self.camera = camera;
        vec![Effect::Redraw, Effect::Look(Looking::StopCamera)]
    }

    /// Those of the texts that say all by themselves, and each notebook of which all symbols are
    /// read by now.
    fn whole(&mut self, texts: Vec<String>) -> Vec<String> {
        let mut whole = Vec::new();
        for text in texts {
            let mut alone = QrSegments::default();
            if alone.add(&text).is_err() {
                whole.push(text);
                continue;
            }
            let known = self.spread.iter_mut().position(|(of, _)| of.add(&text).is_ok());
            let known = known.unwrap_or(self.spread.len());
            if known == self.spread.len() {
                self.spread.push((alone, Vec::new()));
            }
            let (of, all) = &mut self.spread[known];
            if !all.contains(&text) {
                all.push(text);
            }
            if of.missing().is_empty() {
                // Each once, though several of its symbols may be in one picture.
                whole.retain(|other| !all.contains(other));
                whole.extend(all.iter().cloned());
            }
        }
        whole
    }

    /// Whether there are pictures that are still to be looked at.
    pub(crate) fn is_looking(&self) -> bool {
        self.pictures.len() < self.chosen
    }

    /// Whether there has to be a `video` for the camera on the page.
    pub(crate) fn wants_camera(&self) -> bool {
        matches!(self.camera, Camera::Asked | Camera::Runs)
    }
}
