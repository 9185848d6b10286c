//! WebKitGTK: the engine of Safari, on Linux. Its small browser has no mode without a
//! screen, so it gets a screen in memory.

use super::Told;
use crate::programs::Programs;
use anyhow::Result;

const PROGRAMS: Programs<'static> = Programs {
    names: &[&["WebKitWebDriver"], &["Xvfb"]],
    packages: &["webkit2gtk-driver", "xvfb"],
    remedy: "the page tests need the programs `WebKitWebDriver` (of WebKitGTK, with its \
             MiniBrowser) and `Xvfb` on the search path; install both",
};

/// Whether there is a WebKitGTK for this system.
pub(super) fn is_for_this_system() -> bool {
    cfg!(target_os = "linux")
}

/// Finds the driver and the screen; installs them on Debian.
pub(super) fn prepare() -> Result<Vec<Told>> {
    let names = ["NOSEWARD_WEBKITDRIVER", "NOSEWARD_XVFB"];
    Ok(names.into_iter().zip(PROGRAMS.prepare()?).collect())
}
