//! What this computer and its browser allow, as far as the page can tell.

/// What is known about this computer.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Computer {
    /// Whether the page stands inside another page, as in a learning platform.
    pub(crate) framed: bool,
    /// Whether the page starts without a network. `None` as long as that is open.
    pub(crate) offline: Option<bool>,
    /// Width and height of the window in pixels.
    pub(crate) window_px: (u32, u32),
    trials: [CapabilityProbe; Capability::ALL.len()],
}

/// Something that a browser may bar, and that only a trial can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Capability {
    /// Putting text on the clipboard.
    Copy,
    /// Saving a file.
    Save,
    /// Choosing a file to open.
    Pick,
    /// Printing.
    Print,
}

/// How a trial went.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum CapabilityProbe {
    /// Not tried.
    #[default]
    Open,
    /// Tried: the person has to say what happened.
    Asking,
    /// It works here.
    Works,
    /// It is barred here.
    Barred,
}

impl Capability {
    /// Every way, in the order in which the page lists them.
    pub(crate) const ALL: [Self; 4] = [Self::Copy, Self::Save, Self::Pick, Self::Print];

    /// Its name in the markup.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Copy => "copying",
            Self::Save => "saving",
            Self::Pick => "opening",
            Self::Print => "printing",
        }
    }

    /// The way with a name in the markup.
    pub(crate) fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|way| way.name() == name)
    }
}

impl Computer {
    pub(crate) fn trial(&self, way: Capability) -> CapabilityProbe {
        self.trials[way as usize]
    }

    pub(crate) fn tried(&mut self, way: Capability, trial: CapabilityProbe) {
        self.trials[way as usize] = trial;
    }
}
