//! The engines, and what their drivers are told.

use crate::settings;
use anyhow::{Result, bail};
use serde_json::{Value, json};
use std::fmt;
use std::path::Path;

/// The part of a browser that runs and shows a page. Nearly every browser in use has
/// one of these three.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Of Chrome, Edge and many others; here in Chromium.
    Chromium,
    /// Of Firefox.
    Firefox,
    /// Of Safari and every browser on an iPad; here in `WebKitGTK`'s small browser.
    WebKit,
}

impl fmt::Display for Engine {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Chromium => "chromium",
            Self::Firefox => "firefox",
            Self::WebKit => "webkit",
        })
    }
}

/// Whether a page may keep something in the browser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Storage {
    /// As people have it.
    Allowed,
    /// To ask for the storage throws, as where all cookies are blocked.
    Blocked,
    /// There is no storage to ask for: Firefox alone has a setting for it.
    Missing,
}

const CHROMIUM_FLAGS: [&str; 9] = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    // The shared memory of a container may be too small for a browser.
    "--disable-dev-shm-usage",
];

/// The window of Firefox is never narrower than 450 pixels, unless a style sheet of the
/// profile says otherwise.
pub(crate) const FIREFOX_WINDOW: &str =
    ":root, #navigator-toolbox, #navigator-toolbox * { min-width: 0 !important; }";

/// The same for the small browser of `WebKitGTK`, whose tools want 447 pixels.
pub(crate) const WEBKIT_WINDOW: &str = "
    window, toolbar, headerbar, box, button, toolbutton, entry, image, label
        { min-width: 0; padding: 0; margin: 0; border-width: 0; }
    toolbar image, button image { -gtk-icon-source: none; }
    entry { font-size: 1px; }";

/// What every browser wishes for, whatever the machine does: the page follows that.
const LANGUAGE: &str = "en-GB";

impl Engine {
    /// The program that drives the browser.
    pub(crate) fn driver(self) -> String {
        match self {
            Self::Chromium => settings::program("NOSEWARD_CHROMEDRIVER", "chromedriver"),
            Self::Firefox => settings::program("NOSEWARD_GECKODRIVER", "geckodriver"),
            Self::WebKit => settings::program("NOSEWARD_WEBKITDRIVER", "WebKitWebDriver"),
        }
    }

    /// What that program is called with, beside the port.
    pub(crate) fn driver_arguments(self) -> &'static [&'static str] {
        match self {
            // Its second port must be a free one too, and the log of errors is only
            // reached with the rights of the browser itself.
            Self::Firefox => &["--websocket-port=0", "--allow-system-access"],
            Self::Chromium | Self::WebKit => &[],
        }
    }

    /// What the driver is asked for: a browser with this profile.
    pub(crate) fn capabilities(self, profile: &Path, storage: Storage) -> Result<Value> {
        match self {
            Self::Chromium => chromium(profile, storage),
            Self::Firefox => Ok(firefox(profile, storage)),
            Self::WebKit if storage == Storage::Allowed => {
                Ok(json!({ "browserName": "MiniBrowser" }))
            }
            Self::WebKit => bail!("the driver of webkit cannot take storage away"),
        }
    }
}

fn chromium(profile: &Path, storage: Storage) -> Result<Value> {
    let mut flags: Vec<String> = CHROMIUM_FLAGS.map(str::to_owned).to_vec();
    flags.push(format!("--user-data-dir={}", profile.display()));
    flags.push(format!("--accept-lang={LANGUAGE}"));
    let mut options = json!({ "args": flags });
    if let Some(browser) = settings::chromium() {
        options["binary"] = browser.into();
    }
    match storage {
        Storage::Allowed => {}
        Storage::Blocked => {
            // 2 stands for "block"; storage counts as cookies.
            options["prefs"] =
                json!({ "profile.default_content_setting_values.cookies": 2 });
        }
        Storage::Missing => bail!("chromium has no setting for missing storage"),
    }
    Ok(json!({
        "browserName": "chrome",
        "goog:loggingPrefs": { "browser": "ALL" },
        "goog:chromeOptions": options,
    }))
}

fn firefox(profile: &Path, storage: Storage) -> Value {
    let mut preferences = json!({
        // What pages write on the console goes into the driver's log, and nothing else.
        "devtools.console.stdout.content": true,
        "devtools.console.stdout.chrome": false,
        "toolkit.legacyUserProfileCustomizations.stylesheets": true,
        "intl.accept_languages": LANGUAGE,
    });
    match storage {
        Storage::Allowed => {}
        // 2 stands for "none".
        Storage::Blocked => preferences["network.cookie.cookieBehavior"] = 2.into(),
        Storage::Missing => preferences["dom.storage.enabled"] = false.into(),
    }
    let mut options = json!({
        "args": ["-headless", "-profile", profile],
        "prefs": preferences,
    });
    if let Some(browser) = settings::firefox() {
        options["binary"] = browser.into();
    }
    json!({ "browserName": "firefox", "moz:firefoxOptions": options })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn storage_is_only_taken_away_where_it_can_be() {
        let wish = |engine: Engine, storage| engine.capabilities(Path::new("p"), storage);
        for engine in [Engine::Chromium, Engine::Firefox, Engine::WebKit] {
            assert!(wish(engine, Storage::Allowed).is_ok(), "{engine}");
        }
        assert!(wish(Engine::Chromium, Storage::Missing).is_err());
        assert!(wish(Engine::WebKit, Storage::Blocked).is_err());
    }
}
