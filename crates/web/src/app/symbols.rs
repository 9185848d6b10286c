//! What is known of symbols that are read, from pictures and through the camera.

use noseward_link::SymbolRead;

use super::{Effect, State};

/// Symbols that are being read.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Symbols {
    pub(crate) camera: Camera,
    /// Pictures that are still to be looked at.
    pub(crate) waiting: usize,
    /// What came of those that were chosen last.
    pub(crate) pictures: Vec<PictureRead>,
    /// Every text that was read in this visit, once, in the order in which they came.
    pub(crate) texts: Vec<String>,
}

/// A picture that was looked at.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct PictureRead {
    /// The name of its file.
    pub(crate) name: String,
    /// Every symbol in it, at least one.
    pub(crate) found: Result<Vec<SymbolRead>, PictureFault>,
}

/// Why there is nothing in a picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PictureFault {
    /// The browser knows no such pictures, or it is spoilt.
    NotPicture,
    /// No symbol is in it.
    NoSymbol,
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

impl Camera {
    /// Whether there has to be a `video` for it on the page.
    pub(crate) fn is_wanted(self) -> bool {
        matches!(self, Self::Asked | Self::Runs)
    }
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
            Some("NotReadableError" | "AbortError" | "TrackStartError") => Self::InUse,
            Some("NotFoundError" | "OverconstrainedError" | "DevicesNotFoundError") => {
                Self::NoCamera
            }
            _ if page.is_file => Self::FilePage,
            _ if !page.is_secure => Self::InsecurePage,
            None | Some("SecurityError") => Self::Blocked,
            _ if page.is_barred => Self::Blocked,
            Some(_) => Self::NotAllowed,
        }
    }
}

/// Something that happens where symbols are read.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum SymbolsMsg {
    /// So many pictures were chosen, or dropped.
    Chose(usize),
    /// One of them was looked at.
    Looked(PictureRead),
    /// Somebody wants the camera.
    StartCamera,
    /// Nobody wants it any more, or the page is hidden.
    StopCamera,
    CameraRuns,
    CameraRefused(CameraFault),
    /// These texts are before the camera.
    Saw(Vec<String>),
}

impl SymbolsMsg {
    /// The message of a control, from its action.
    pub(crate) fn parse(action: &str) -> Option<Self> {
        Some(match action {
            "start-camera" => Self::StartCamera,
            "stop-camera" => Self::StopCamera,
            _ => return None,
        })
    }
}

/// What the browser does to read symbols.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Looking {
    /// Look at the next picture that was chosen.
    AtPicture,
    StartCamera,
    StopCamera,
}

/// What a message does.
pub(crate) fn update(state: &mut State, msg: SymbolsMsg) -> Vec<Effect> {
    let symbols = &mut state.symbols;
    let mut effects = vec![Effect::Redraw];
    let look = Effect::Symbols;
    match msg {
        SymbolsMsg::Chose(count) => {
            if symbols.waiting == 0 {
                symbols.pictures.clear();
                effects.extend((count > 0).then(|| look(Looking::AtPicture)));
            }
            symbols.waiting += count;
        }
        SymbolsMsg::Looked(picture) => {
            symbols.waiting = symbols.waiting.saturating_sub(1);
            effects.extend((symbols.waiting > 0).then(|| look(Looking::AtPicture)));
            let found = picture.found.iter().flatten();
            let texts = found.filter_map(|read| read.clone().ok()).collect();
            symbols.pictures.push(picture);
            symbols.take(texts);
        }
        SymbolsMsg::StartCamera => {
            if !symbols.camera.is_wanted() {
                symbols.camera = Camera::Asked;
                effects.push(look(Looking::StartCamera));
            }
        }
        SymbolsMsg::StopCamera => effects.extend(state.stop_camera()),
        SymbolsMsg::CameraRuns => symbols.camera = Camera::Runs,
        SymbolsMsg::CameraRefused(fault) => symbols.camera = Camera::Refused(fault),
        SymbolsMsg::Saw(texts) => symbols.take(texts),
    }
    effects
}

impl Symbols {
    /// Texts that are not here yet. Whoever holds a symbol before the camera shows it for
    /// seconds.
    fn take(&mut self, texts: Vec<String>) {
        for text in texts {
            if !self.texts.contains(&text) {
                self.texts.push(text);
            }
        }
    }
}

impl State {
    /// Where the camera runs, or the browser still asks, nobody wants it any more.
    pub(super) fn stop_camera(&mut self) -> Option<Effect> {
        let was_wanted = std::mem::take(&mut self.symbols.camera).is_wanted();
        was_wanted.then_some(Effect::Symbols(Looking::StopCamera))
    }
}
