//! What a page says on the console, which each engine tells in another way.
//!
//! - Chromium's driver gives every line.
//! - Firefox keeps exceptions and breaches of the policy in a list of its own, read
//!   here with the rights of the browser (the newest 250), and writes what scripts log
//!   into the driver's log.
//! - The driver of `WebKitGTK` tells nothing: listeners are put into the page as soon as
//!   its files are loaded. What went wrong before that is not seen, unless the page
//!   then does not become ready.

use crate::driver::Browser;
use crate::engine::Engine;
use anyhow::{Context, Result, ensure};
use http::Method;
use serde_json::{Value, json};
use std::fs;
use std::sync::Mutex;
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};
use thirtyfour::common::command::FormatRequestData;
use thirtyfour::{RequestData, SessionId};

/// How long a line may take from the page into the driver's log.
const PATIENCE: Duration = Duration::from_secs(30);
const PAUSE: Duration = Duration::from_millis(25);

/// The start of the lines by which we know that everything before them has arrived.
const MARK: &str = "noseward-mark-";

/// Gives kind, source and text of Firefox's own list of errors and warnings.
const FIREFOX_LIST: &str = "
    return Services.console.getMessageArray()
        .filter(message => message instanceof Ci.nsIScriptError)
        .map(error => [error.flags & Ci.nsIScriptError.warningFlag ? 'WARNING' : 'SEVERE',
            error.category, error.sourceName, error.errorMessage]);";

const LISTEN: &str = "
    if (window.harnessConsole) return;
    const told = window.harnessConsole = [];
    const tell = (level, words) => told.push(level + ' ' + words.map(String).join(' '));
    addEventListener('error', event => tell('SEVERE', event instanceof ErrorEvent
        ? [event.message] : [event.target.src ?? event.target.href, 'did not load']), true);
    addEventListener('unhandledrejection', event => tell('SEVERE', [event.reason]));
    document.addEventListener('securitypolicyviolation', event => tell('SEVERE',
        ['Content Security Policy:', event.violatedDirective, event.blockedURI]));
    for (const [name, level] of
            [['error', 'SEVERE'], ['warn', 'WARNING'], ['info', 'INFO'], ['log', 'INFO']]) {
        const own = console[name];
        console[name] = (...words) => { tell(level, words); own.apply(console, words); };
    }";

/// The lines so far, each with its level first.
#[derive(Debug, Default)]
pub(crate) struct Console {
    /// What an engine gives only once.
    kept: Mutex<Vec<String>>,
    marks: AtomicU32,
}

impl Console {
    /// To be called once the files of a page are loaded.
    pub(crate) async fn listen(&self, browser: &Browser) -> Result<()> {
        if browser.engine == Engine::WebKit {
            browser.session.execute(LISTEN, Vec::new()).await?;
        }
        Ok(())
    }

    /// To be called before a page is left.
    pub(crate) async fn collect(&self, browser: &Browser) -> Result<()> {
        let new: Vec<String> = match browser.engine {
            Engine::Chromium => {
                let entries = browser.session.browser_log().await?;
                let line = |entry: thirtyfour::BrowserLogEntry| {
                    format!("{} {}", entry.level, entry.message)
                };
                entries.into_iter().map(line).collect()
            }
            Engine::Firefox => return Ok(()),
            Engine::WebKit => {
                let take = "return (window.harnessConsole ?? []).splice(0);";
                let lines = browser.session.execute(take, Vec::new()).await?;
                serde_json::from_value(lines.json().clone())?
            }
        };
        let mut kept = self.kept.lock().expect("no method panics while it holds them");
        kept.extend(new);
        Ok(())
    }

    /// Every line since the browser started.
    pub(crate) async fn lines(&self, browser: &Browser) -> Result<Vec<String>> {
        if browser.engine == Engine::Firefox {
            let mut lines = self.firefox_logged(browser).await?;
            lines.extend(firefox_listed(browser).await?);
            return Ok(lines);
        }
        self.collect(browser).await?;
        Ok(self.kept.lock().expect("no method panics while it holds them").clone())
    }

    async fn firefox_logged(&self, browser: &Browser) -> Result<Vec<String>> {
        let count = self.marks.fetch_add(1, Ordering::Relaxed);
        let mark = format!("{MARK}{count};");
        let say = format!("console.log('{mark}')");
        browser.session.execute(say, Vec::new()).await?;
        let start = Instant::now();
        loop {
            let bytes = fs::read(&browser.log)
                .with_context(|| format!("{} cannot be read", browser.log.display()))?;
            let text = String::from_utf8_lossy(&bytes);
            if text.contains(&mark) {
                return Ok(text.lines().filter_map(firefox_line).collect());
            }
            ensure!(
                start.elapsed() < PATIENCE,
                "firefox does not write its console into {}",
                browser.log.display()
            );
            tokio::time::sleep(PAUSE).await;
        }
    }
}

/// A line of the driver's log, if a page has said it. The parts of Firefox itself begin
/// with their bare names; a text from a page stands in quotation marks.
fn firefox_line(line: &str) -> Option<String> {
    let (kind, words) = line.strip_prefix("console.")?.split_once(": ")?;
    let name = words.split(':').next().unwrap_or_default();
    if name.len() < words.len() && name.chars().all(char::is_alphanumeric) {
        return None;
    }
    let level = match kind {
        "error" | "assert" => "SEVERE",
        "warn" => "WARNING",
        _ => "INFO",
    };
    (!words.contains(MARK)).then(|| format!("{level} {words}"))
}

async fn firefox_listed(browser: &Browser) -> Result<Vec<String>> {
    let handle = browser.session.handle();
    handle.cmd(Rights::Browser).await.context("firefox does not lend its rights")?;
    let list = browser.session.execute(FIREFOX_LIST, Vec::new()).await;
    handle.cmd(Rights::Page).await?;
    let list = list.context("firefox does not tell its errors")?;
    let list = list.json().as_array().context("firefox gave no list of errors")?;
    Ok(list.iter().filter_map(firefox_error).collect())
}

/// An entry of the list, if it is about a page and not about Firefox itself.
fn firefox_error(entry: &Value) -> Option<String> {
    let text = |index: usize| entry[index].as_str().unwrap_or_default();
    let (level, category, source, message) = (text(0), text(1), text(2), text(3));
    let of_page = source.starts_with("http")
        || category == "content javascript"
        || category.starts_with("CSP");
    of_page.then(|| format!("{level} {source}: {message}"))
}

/// With whose rights Firefox runs the scripts of its driver.
#[derive(Clone, Copy, Debug)]
enum Rights {
    Browser,
    Page,
}

impl FormatRequestData for Rights {
    fn format_request(&self, session: &SessionId) -> RequestData {
        let context = match self {
            Self::Browser => "chrome",
            Self::Page => "content",
        };
        RequestData::new(Method::POST, format!("/session/{session}/moz/context"))
            .add_body(json!({ "context": context }))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_a_page_says_is_taken_from_the_log() {
        let told = |line| firefox_line(line);
        assert_eq!(told("console.error: \"a\"").as_deref(), Some("SEVERE \"a\""));
        assert_eq!(told("console.warn: \"a: b\"").as_deref(), Some("WARNING \"a: b\""));
        assert_eq!(told("console.log: \"noseward-mark-3;\""), None);
        assert_eq!(told("console.error: RSLoader: "), None);
        assert_eq!(told("1795 Marionette INFO Listening"), None);
    }

    #[test]
    fn errors_of_firefox_itself_are_left_out() {
        let told = |category: &str, source: &str| {
            firefox_error(&json!(["SEVERE", category, source, "words"]))
        };
        assert_eq!(told("chrome javascript", "chrome://browser/a.js"), None);
        assert!(told("content javascript", "").is_some());
        assert!(told("CSP_CSPInlineScriptViolation2", "resource:///a").is_some());
        let page = told("any", "http://127.0.0.1/a.js");
        assert_eq!(page.as_deref(), Some("SEVERE http://127.0.0.1/a.js: words"));
    }
}
