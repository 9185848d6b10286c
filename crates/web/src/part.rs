//! The parts of the page that load when somebody needs them.
//!
//! The compiled module is cut where a function of a part is called: with the feature
//! `parts`, the calls below go through imports, and what only they reach comes in files of
//! their own, which share the memory of the first; what several parts reach comes in files
//! that these share. Without the feature, in native tests and in the single file, they are
//! plain calls.
//!
//! The names are those that the cutting program looks for:
//! `__wasm_split_00PART00_import_ID_NAME`, `…_export_ID_NAME`, with an ID of 32
//! hexadecimal digits, and `__wasm_split_load_PART`.

use crate::later::{self, Question};

/// Something that loads on its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Part {
    /// What writes in a notebook, keeps it and gets it out again.
    Notebook,
    /// How sure the figures are.
    Certainty,
    Measure,
    /// What a trial changed, and what the group says of it: Predict, Conclude.
    Trial,
    Swing,
    /// The motion on the string.
    Motion,
    Compare,
    Why,
    HandIn,
    Lead,
    /// Files, codes and tables, in and out, what is printed, and the call for other programs.
    Files,
    WordMat,
    SetUp,
    /// What the groups of a class found, together.
    Class,
    /// Sheets to print.
    Paper,
}

impl Part {
    /// Every part, in the order in which they are fetched ahead, where they are.
    pub(crate) const ALL: [Self; 15] = [
        Self::Notebook,
        Self::Certainty,
        Self::Measure,
        Self::Trial,
        Self::Swing,
        Self::Motion,
        Self::Compare,
        Self::Why,
        Self::HandIn,
        Self::Files,
        Self::Lead,
        Self::WordMat,
        Self::SetUp,
        Self::Class,
        Self::Paper,
    ];

    /// Whether only whoever leads uses it: then it is fetched where somebody opens it, and
    /// ahead only on such a computer. `site/src/split.rs` lists the same.
    pub(crate) fn is_for_leaders(self) -> bool {
        match self {
            Self::Notebook
            | Self::Certainty
            | Self::Measure
            | Self::Trial
            | Self::Swing
            | Self::Motion
            | Self::Compare
            | Self::Why
            | Self::HandIn
            | Self::Files
            // Pupils too look there at what this computer allows, and delete what is kept.
            | Self::Lead
            | Self::WordMat => false,
            Self::SetUp | Self::Class | Self::Paper => true,
        }
    }

    /// What has to be here for it, itself included: what is kept on this computer is opened
    /// before anything else happens to a notebook, and a motion is one of the place Swing.
    pub(crate) fn needed(self) -> [Self; 3] {
        let place = if self == Self::Motion { Self::Swing } else { self };
        [Self::Notebook, place, self]
    }
}

/// Writes the cut for each part, once: its name for the cutting program, and the function on
/// the other side.
macro_rules! parts {
    ($($part:ident $name:ident $load:literal $import:literal $export:literal;)*) => {
        /// Asks a part. It must be [loaded](load).
        pub(crate) fn call(part: Part, question: &mut Question<'_>) {
            match part {
                $(Part::$part => {
                    #[cfg(feature = "parts")]
                    split::$name::call(question);
                    #[cfg(not(feature = "parts"))]
                    later::$name(question);
                })*
            }
        }

        /// Loads a part and tells how that went: at once, where nothing is to be loaded.
        pub(crate) fn load(part: Part, loaded: impl FnOnce(bool) + 'static) {
            #[cfg(feature = "parts")]
            match part {
                $(Part::$part => split::$name::load(Box::new(loaded)),)*
            }
            #[cfg(not(feature = "parts"))]
            {
                let _ = part;
                loaded(true);
            }
        }

        #[cfg(feature = "parts")]
        #[expect(unsafe_code, reason = "calls into another part of the module are imports")]
        mod split {
            use std::ffi::c_void;

            use super::{Question, later};

            type Loaded = Box<dyn FnOnce(bool)>;

            /// # Safety
            ///
            /// `data` comes from a `load`, and is told once.
            unsafe extern "C" fn tell(data: *const c_void, done: bool) {
                // SAFETY: it was made from such a box, and nobody else has it.
                let loaded = unsafe { Box::from_raw(data.cast_mut().cast::<Loaded>()) };
                loaded(done);
            }

            $(pub(super) mod $name {
                use super::{Loaded, Question, c_void, later, tell};

                #[link(wasm_import_module = "./__wasm_split.js")]
                unsafe extern "C" {
                    #[link_name = $load]
                    fn load_part(
                        callback: unsafe extern "C" fn(*const c_void, bool),
                        data: *const c_void,
                    );
                    #[link_name = $import]
                    #[expect(improper_ctypes, reason = "both sides are compiled together")]
                    fn imported(question: *mut Question<'_>);
                }

                /// The other side of the import.
                ///
                /// # Safety
                ///
                /// It must be an exclusive borrow that lives as long as the call.
                #[unsafe(export_name = $export)]
                unsafe extern "C" fn exported(question: *mut Question<'_>) {
                    // SAFETY: only called below, with an exclusive borrow.
                    later::$name(unsafe { &mut *question });
                }

                pub(in super::super) fn call(question: &mut Question<'_>) {
                    // SAFETY: the import is the function above, once the part is loaded;
                    // before that it ends the module, and touches nothing.
                    unsafe { imported(question) };
                }

                pub(in super::super) fn load(loaded: Loaded) {
                    let data = Box::into_raw(Box::new(loaded)).cast::<c_void>();
                    // SAFETY: the script calls `tell` exactly once, with this pointer.
                    unsafe { load_part(tell, data) };
                }
            })*
        }
    };
}

parts! {
    Notebook notebook
        "__wasm_split_load_notebook"
        "__wasm_split_00notebook00_import_00000000000000000000000000000001_call"
        "__wasm_split_00notebook00_export_00000000000000000000000000000001_call";
    Certainty certainty
        "__wasm_split_load_certainty"
        "__wasm_split_00certainty00_import_00000000000000000000000000000002_call"
        "__wasm_split_00certainty00_export_00000000000000000000000000000002_call";
    Measure measure
        "__wasm_split_load_measure"
        "__wasm_split_00measure00_import_00000000000000000000000000000003_call"
        "__wasm_split_00measure00_export_00000000000000000000000000000003_call";
    Trial trial
        "__wasm_split_load_trial"
        "__wasm_split_00trial00_import_00000000000000000000000000000004_call"
        "__wasm_split_00trial00_export_00000000000000000000000000000004_call";
    Swing swing
        "__wasm_split_load_swing"
        "__wasm_split_00swing00_import_00000000000000000000000000000005_call"
        "__wasm_split_00swing00_export_00000000000000000000000000000005_call";
    Motion motion
        "__wasm_split_load_motion"
        "__wasm_split_00motion00_import_00000000000000000000000000000006_call"
        "__wasm_split_00motion00_export_00000000000000000000000000000006_call";
    Compare compare
        "__wasm_split_load_compare"
        "__wasm_split_00compare00_import_00000000000000000000000000000007_call"
        "__wasm_split_00compare00_export_00000000000000000000000000000007_call";
    Why why
        "__wasm_split_load_why"
        "__wasm_split_00why00_import_00000000000000000000000000000008_call"
        "__wasm_split_00why00_export_00000000000000000000000000000008_call";
    HandIn hand_in
        "__wasm_split_load_handin"
        "__wasm_split_00handin00_import_00000000000000000000000000000009_call"
        "__wasm_split_00handin00_export_00000000000000000000000000000009_call";
    Lead lead
        "__wasm_split_load_lead"
        "__wasm_split_00lead00_import_0000000000000000000000000000000a_call"
        "__wasm_split_00lead00_export_0000000000000000000000000000000a_call";
    Files files
        "__wasm_split_load_files"
        "__wasm_split_00files00_import_0000000000000000000000000000000b_call"
        "__wasm_split_00files00_export_0000000000000000000000000000000b_call";
    WordMat word_mat
        "__wasm_split_load_wordmat"
        "__wasm_split_00wordmat00_import_0000000000000000000000000000000c_call"
        "__wasm_split_00wordmat00_export_0000000000000000000000000000000c_call";
    SetUp set_up
        "__wasm_split_load_setup"
        "__wasm_split_00setup00_import_0000000000000000000000000000000d_call"
        "__wasm_split_00setup00_export_0000000000000000000000000000000d_call";
    Class class
        "__wasm_split_load_class"
        "__wasm_split_00class00_import_0000000000000000000000000000000e_call"
        "__wasm_split_00class00_export_0000000000000000000000000000000e_call";
    Paper paper
        "__wasm_split_load_paper"
        "__wasm_split_00paper00_import_0000000000000000000000000000000f_call"
        "__wasm_split_00paper00_export_0000000000000000000000000000000f_call";
}
