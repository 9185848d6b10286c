//! The page as a test sees it.

use crate::axe::{self, Violation};
use crate::console::Console;
use crate::driver::Browser;
use crate::engine::{Engine, Storage};
use crate::settings;
use anyhow::{Context, Result, bail, ensure};
use noseward_lesson::{Notebook, Record};
use noseward_link::{Opened, open_hash, open_notebook_hash};
use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};
use thirtyfour::common::print::{PrintPage, PrintParameters};
use thirtyfour::error::{WebDriverError, WebDriverErrorInner};
use thirtyfour::extensions::query::ElementQueryable;
use thirtyfour::{By, Key, TypingData, WebElement};

/// How long something may take to appear: far longer than it does, because a busy
/// machine is no fault of the page.
const PATIENCE: Duration = Duration::from_secs(30);
/// How often to look.
const PAUSE: Duration = Duration::from_millis(25);
/// Has clicks come an hour later than they do, as far as the page can tell from them; each
/// time this runs, another hour.
const AN_HOUR_LATER: &str = "
    if (!window.laterMs) {
        window.laterMs = 0;
        addEventListener('click', (event) => {
            const value = event.timeStamp + window.laterMs;
            Object.defineProperty(event, 'timeStamp', { value });
        }, true);
    }
    window.laterMs += 3600e3;";
/// More than the page has controls before the one that a test is after.
const MOST_TABS: u32 = 80;

/// The page in a browser of its own, with a fresh profile.
///
/// Two values at once are two people: they share nothing. Dropping one closes its
/// browser. Every method fails with a sentence rather than panics, so a test ends
/// with `?` where the page did not answer.
#[derive(Debug)]
pub struct Page {
    browser: Browser,
    address: String,
    console: Console,
}

impl Page {
    /// Opens the page in Chromium, in a window of exactly this size, in CSS pixels, and
    /// waits until it is ready.
    ///
    /// # Errors
    ///
    /// When no browser starts, or when the page does not become ready.
    pub async fn open(viewport_width: u32, viewport_height: u32) -> Result<Self> {
        Self::open_in(Engine::Chromium, viewport_width, viewport_height).await
    }

    /// The same in any engine.
    ///
    /// # Errors
    ///
    /// When no browser starts, when its window cannot have the size, or when the page
    /// does not become ready.
    pub async fn open_in(
        engine: Engine,
        viewport_width: u32,
        viewport_height: u32,
    ) -> Result<Self> {
        let size = (viewport_width, viewport_height);
        let page = Self::unopened_in(engine, Storage::Allowed, size).await?;
        page.goto("").await?;
        Ok(page)
    }

    /// Chromium that has not loaded the page yet: for a test that prepares the
    /// browser first. Continue with [`Page::visit`] or [`Page::goto`].
    ///
    /// # Errors
    ///
    /// When no browser starts.
    pub async fn unopened(viewport_width: u32, viewport_height: u32) -> Result<Self> {
        let size = (viewport_width, viewport_height);
        Self::unopened_in(Engine::Chromium, Storage::Allowed, size).await
    }

    /// The same in any engine, and without storage if the engine has a setting for it;
    /// `viewport` is width and height.
    ///
    /// # Errors
    ///
    /// When the engine has no such setting, when no browser starts, or when its window
    /// cannot have the size.
    pub async fn unopened_in(
        engine: Engine,
        storage: Storage,
        viewport: (u32, u32),
    ) -> Result<Self> {
        let address = settings::page_address()?;
        let browser = Browser::start(engine, storage).await?;
        let page = Self { browser, address, console: Console::default() };
        page.set_viewport(viewport.0, viewport.1).await?;
        Ok(page)
    }

    /// Kills the browser as a failing computer would, in Chromium on Linux, and starts it
    /// again with the same profile. No page is open then.
    ///
    /// # Errors
    ///
    /// When there is no such browser, or when it does not start again.
    pub async fn kill_the_browser(&mut self) -> Result<()> {
        self.browser.kill_and_start_again().await?;
        self.console = Console::default();
        Ok(())
    }

    /// What runs and shows this page.
    #[must_use]
    pub fn engine(&self) -> Engine {
        self.browser.engine
    }

    /// The address of the page, with a `/` at its end.
    #[must_use]
    pub fn address(&self) -> &str {
        &self.address
    }

    /// Loads the page afresh with this text after the `#` (none for an empty one),
    /// and waits until it is ready.
    ///
    /// To change the hash of the page that is open, as a link on it does, evaluate
    /// `location.hash = '…'`.
    ///
    /// # Errors
    ///
    /// When the page does not become ready.
    pub async fn goto(&self, hash: &str) -> Result<()> {
        self.visit(hash).await?;
        self.ready().await
    }

    /// Loads the page afresh like [`Page::goto`], but does not wait for more than
    /// its files.
    ///
    /// # Errors
    ///
    /// When the browser cannot load it.
    pub async fn visit(&self, hash: &str) -> Result<()> {
        self.console.collect(&self.browser).await?;
        // An address that differs in its hash alone would not be loaded again.
        self.session().goto("about:blank").await?;
        let hash = hash.trim_start_matches('#');
        let mark = if hash.is_empty() { "" } else { "#" };
        self.visit_address(&format!("{}{mark}{hash}", self.address)).await
    }

    /// Loads any address afresh, such as that of a file on this disk.
    ///
    /// # Errors
    ///
    /// When the browser cannot load it.
    pub async fn visit_address(&self, address: &str) -> Result<()> {
        self.console.collect(&self.browser).await?;
        self.session()
            .goto(address)
            .await
            .with_context(|| format!("{address} cannot be loaded"))?;
        self.console.listen(&self.browser).await
    }

    /// Loads another file of the page's folder, such as the types.
    ///
    /// # Errors
    ///
    /// When the browser cannot load it.
    pub async fn visit_file(&self, name: &str) -> Result<()> {
        self.console.collect(&self.browser).await?;
        Ok(self.session().goto(format!("{}{name}", self.address)).await?)
    }

    /// Loads the page again, as the browser's button does, and waits until it is
    /// ready.
    ///
    /// # Errors
    ///
    /// When the page does not become ready.
    pub async fn reload(&self) -> Result<()> {
        self.console.collect(&self.browser).await?;
        self.session().refresh().await?;
        self.console.listen(&self.browser).await?;
        self.ready().await
    }

    /// Waits until the page says that its first drawing is on the screen.
    ///
    /// # Errors
    ///
    /// When it does not; with what the page shows and what its console says.
    pub async fn ready(&self) -> Result<()> {
        let waited =
            self.wait_until("document.documentElement.dataset.state === 'ready'").await;
        let Err(error) = waited else { return Ok(()) };
        let state = self.eval("document.documentElement.dataset.state ?? 'none'").await?;
        let shown = self.eval("document.body.innerText.slice(0, 300)").await?;
        let console = self.console().await?;
        Err(error.context(format!(
            "the page is not ready: its state is {state}, it shows {shown}, its console \
             says {console:#?}"
        )))
    }

    /// Waits until a JavaScript expression is true; it may `await`.
    ///
    /// # Errors
    ///
    /// When it does not become true.
    pub async fn wait_until(&self, condition: &str) -> Result<()> {
        let start = Instant::now();
        loop {
            let last = self.eval(&format!("Boolean({condition})")).await;
            if matches!(last, Ok(Value::Bool(true))) {
                return Ok(());
            }
            if start.elapsed() > PATIENCE {
                let last = last.map(|_| "false".to_owned());
                let last = last.unwrap_or_else(|error| format!("{error:#}"));
                bail!("after {} s still: {condition} is {last}", PATIENCE.as_secs());
            }
            tokio::time::sleep(PAUSE).await;
        }
    }

    /// Waits until all that is fetched ahead is here, for what the browser does by itself.
    ///
    /// # Errors
    ///
    /// When it does not come.
    pub async fn all_is_here(&self) -> Result<()> {
        self.wait_until("document.documentElement.dataset.parts").await
    }

    /// Goes to a place of the page by its link, and waits until all of it is there.
    ///
    /// # Errors
    ///
    /// When there is no such place, or when it does not come.
    pub async fn at(&self, place: &str) -> Result<()> {
        let link = format!("#to-{place}");
        if ["words", "set-up", "class", "paper", "lead"].contains(&place) {
            self.more(&link).await?;
        } else {
            self.click(&link).await?;
        }
        self.is_at(place).await
    }

    /// Waits until a place is shown with all that is in it.
    ///
    /// # Errors
    ///
    /// When it does not come.
    pub async fn is_at(&self, place: &str) -> Result<()> {
        self.wait_until(&format!(
            "document.documentElement.dataset.place === '{place}' \
             && document.getElementById('place-regions').children.length > 0 \
             && !document.getElementById('waits')"
        ))
        .await
    }

    /// What the page says of the rocket in words, as soon as it does: that loads later than
    /// the rest.
    ///
    /// # Errors
    ///
    /// When it says nothing.
    pub async fn in_words(&self) -> Result<String> {
        self.wait_until("document.getElementById('in-words').innerText").await?;
        self.text("#in-words").await
    }

    /// The label of the group whose notebook is open: "Blue 4".
    ///
    /// # Errors
    ///
    /// When the page does not say.
    pub async fn label(&self) -> Result<String> {
        let label = "document.querySelector('#group-menu strong').textContent";
        Ok(self.eval(label).await?.as_str().unwrap_or_default().to_owned())
    }

    /// Opens the menu of what is rarely needed, and clicks something in it.
    ///
    /// # Errors
    ///
    /// When it is not there.
    pub async fn more(&self, css: &str) -> Result<()> {
        self.click("#more-menu > summary").await?;
        self.click(css).await
    }

    /// Opens a text where links, codes and files are opened.
    ///
    /// # Errors
    ///
    /// When the place for it does not come.
    pub async fn open_text(&self, text: &str) -> Result<()> {
        if self.eval("document.documentElement.dataset.place").await? != "rocket" {
            self.at("rocket").await?;
        }
        self.run("document.getElementById('begin-open').open = true;").await?;
        self.element("#open-text").await?;
        let text = json!(text);
        self.run(&format!("document.getElementById('open-text').value = {text};"))
            .await?;
        self.click("#open-pasted").await
    }

    /// Waits until the rocket that is kept in this browser fits.
    ///
    /// # Errors
    ///
    /// When it does not come to that.
    pub async fn keeps_rocket(&self, fits: impl Fn(&Record) -> bool) -> Result<()> {
        let start = Instant::now();
        loop {
            let text = self.eval("localStorage.getItem('noseward/rocket')").await?;
            let opened = open_hash(text.as_str().unwrap_or_default());
            if matches!(&opened, Opened::Record(record) if fits(record)) {
                return Ok(());
            }
            if start.elapsed() > PATIENCE {
                bail!("after {} s kept is still {opened:?}", PATIENCE.as_secs());
            }
            tokio::time::sleep(PAUSE).await;
        }
    }

    /// The open notebook as it is kept in this browser, once it fits.
    ///
    /// # Errors
    ///
    /// When it does not come to that.
    pub async fn keeps_notebook(
        &self,
        fits: impl Fn(&Notebook) -> bool,
    ) -> Result<Notebook> {
        let kept = "localStorage.getItem('noseward/notebook/' + \
                    localStorage.getItem('noseward/notebook'))";
        let start = Instant::now();
        loop {
            let text = self.eval(kept).await?;
            let opened = open_notebook_hash(text.as_str().unwrap_or_default());
            match opened {
                Some(Ok(file)) if fits(&file.notebook) => return Ok(file.notebook),
                opened if start.elapsed() > PATIENCE => {
                    bail!("after {} s kept is still {opened:?}", PATIENCE.as_secs())
                }
                _ => tokio::time::sleep(PAUSE).await,
            }
        }
    }

    /// The value of a JavaScript expression; it may `await`.
    ///
    /// # Errors
    ///
    /// When the expression throws.
    pub async fn eval(&self, js: &str) -> Result<Value> {
        self.run(&format!("return (async () => ({js}))();")).await
    }

    /// Runs the body of a JavaScript function and gives what it returns.
    ///
    /// # Errors
    ///
    /// When the script throws.
    pub async fn run(&self, js: &str) -> Result<Value> {
        let returned = self.session().execute(js, Vec::new()).await;
        let returned = returned.with_context(|| {
            format!("a script failed: {}", js.chars().take(300).collect::<String>())
        })?;
        Ok(returned.json().clone())
    }

    /// The first element that fits a selector, as soon as there is one.
    ///
    /// # Errors
    ///
    /// When none appears.
    pub async fn element(&self, css: &str) -> Result<WebElement> {
        let query = self.session().query(By::Css(css)).wait(PATIENCE, PAUSE);
        query.first().await.with_context(|| format!("nothing on the page fits {css}"))
    }

    /// The text of an element as a reader sees it.
    ///
    /// # Errors
    ///
    /// When there is no such element.
    pub async fn text(&self, css: &str) -> Result<String> {
        let start = Instant::now();
        loop {
            match self.element(css).await?.text().await {
                // Redrawn between the two commands: the new one says what is there.
                Err(error) if is_gone(&error) && start.elapsed() < PATIENCE => {
                    tokio::time::sleep(PAUSE).await;
                }
                text => {
                    return text.with_context(|| format!("{css} tells no text"));
                }
            }
        }
    }

    /// What a field holds; for a check box or radio button, what it would send.
    ///
    /// # Errors
    ///
    /// When there is no such element, or when it is no field.
    pub async fn value(&self, css: &str) -> Result<String> {
        let value = self.element(css).await?.prop("value").await?;
        value.with_context(|| format!("{css} is no field"))
    }

    /// Clicks an element where a mouse would.
    ///
    /// # Errors
    ///
    /// When there is no such element, or when another one covers it.
    pub async fn click(&self, css: &str) -> Result<()> {
        let start = Instant::now();
        loop {
            let element = self.element(css).await?;
            // Out from under the bars at the edges, as a person scrolls; a driver is content
            // with what lies under them.
            let seen =
                "document.querySelector(SELECTOR)?.scrollIntoView({ block: 'nearest' })";
            self.run(&seen.replace("SELECTOR", &json!(css).to_string())).await?;
            match element.click().await {
                // Redrawn between the two commands: nothing was clicked.
                Err(error) if is_gone(&error) && start.elapsed() < PATIENCE => {
                    tokio::time::sleep(PAUSE).await;
                }
                clicked => {
                    return clicked.with_context(|| format!("{css} cannot be clicked"));
                }
            }
        }
    }

    /// Clicks once more, or on what the last click brought, late enough to be no double
    /// click.
    ///
    /// # Errors
    ///
    /// As [`click`](Self::click).
    pub async fn click_again(&self, css: &str) -> Result<()> {
        self.run(AN_HOUR_LATER).await?;
        self.click(css).await
    }

    /// Types into a field in place of what it holds, key by key.
    ///
    /// # Errors
    ///
    /// When there is no such field, or when it takes no keys.
    pub async fn type_into(&self, css: &str, text: &str) -> Result<()> {
        let field = self.element(css).await?;
        let typed = async {
            if self.engine() == Engine::WebKit {
                // Its driver sends no shortcuts for editing.
                let select = format!("document.querySelector({}).select()", json!(css));
                self.session().execute(select, Vec::new()).await?;
            } else {
                field.send_keys(Key::Control + "a").await?;
            }
            match text {
                "" => field.send_keys(Key::Delete).await,
                text => field.send_keys(text).await,
            }
        };
        typed.await.with_context(|| format!("{css} takes no keys"))
    }

    /// Presses keys where the focus is: a text, a [`Key`], or `Key::Control + "a"`.
    ///
    /// # Errors
    ///
    /// When the focused element takes no keys.
    pub async fn press(&self, keys: impl Into<TypingData>) -> Result<()> {
        let keys = keys.into().to_string();
        let start = Instant::now();
        loop {
            let focused = self.session().active_element().await?;
            match focused.send_keys(keys.as_str()).await {
                Ok(()) => return Ok(()),
                // Redrawn between the two commands: no key was sent.
                Err(error) if is_gone(&error) && start.elapsed() < PATIENCE => {
                    tokio::time::sleep(PAUSE).await;
                }
                Err(error) => {
                    let focused = self.focused_id().await.unwrap_or_default();
                    let words =
                        format!("the focus is on \"{focused}\", which takes no keys");
                    return Err(error).context(words);
                }
            }
        }
    }

    /// Presses keys once more on the same button, late enough to be no double click.
    ///
    /// # Errors
    ///
    /// When the focused element takes no keys.
    pub async fn press_again(&self, keys: impl Into<TypingData>) -> Result<()> {
        self.run(AN_HOUR_LATER).await?;
        self.press(keys).await
    }

    /// In the place Swing, says by keyboard that whoever leads has checked the space.
    ///
    /// # Errors
    ///
    /// When the way there is not as it was.
    pub async fn check_space(&self) -> Result<()> {
        self.tab_to("to-space").await?;
        self.press(Key::Enter).await?;
        self.wait_until("document.activeElement.id === 'swing-card'").await?;
        self.tab_to("space-checked").await?;
        self.press(Key::Enter).await?;
        self.wait_until("!document.getElementById('swing-why-not')").await
    }

    /// Chooses a language in the list without taking the focus, as a table does that comes
    /// while somebody types on.
    ///
    /// # Errors
    ///
    /// When there is no list.
    pub async fn choose_language(&self, key: &str) -> Result<()> {
        let choose = "
            const list = document.getElementById('language');
            list.value = KEY;
            list.dispatchEvent(new Event('change', { bubbles: true }));";
        let key = json!(key).to_string();
        self.run(&choose.replace("KEY", &key)).await?;
        Ok(())
    }

    /// Presses Tab until the element with this id has the focus.
    ///
    /// # Errors
    ///
    /// When it is not reached.
    pub async fn tab_to(&self, id: &str) -> Result<()> {
        self.press_until(TypingData::from(Key::Tab), id).await
    }

    /// The same backwards, with Shift.
    ///
    /// # Errors
    ///
    /// When it is not reached.
    pub async fn tab_back_to(&self, id: &str) -> Result<()> {
        self.press_until(Key::Shift + Key::Tab, id).await
    }

    async fn press_until(&self, keys: TypingData, id: &str) -> Result<()> {
        let keys = keys.to_string();
        for _ in 0..MOST_TABS {
            if self.focused_id().await? == id {
                return Ok(());
            }
            self.press(keys.as_str()).await?;
        }
        let focused = self.focused_id().await?;
        bail!(
            "after {MOST_TABS} keys the focus is on \"{focused}\" and still not on {id}"
        )
    }

    /// Has every page run a script before its own, in Chromium: to bar something, or to
    /// watch.
    ///
    /// # Errors
    ///
    /// When the browser refuses.
    pub async fn run_before_each_load(&self, js: &str) -> Result<()> {
        let source = json!({ "source": js });
        self.cdp("Page.addScriptToEvaluateOnNewDocument", source).await?;
        Ok(())
    }

    /// The `id` of the element with the focus, empty when it has none.
    ///
    /// # Errors
    ///
    /// When the browser does not answer.
    pub async fn focused_id(&self) -> Result<String> {
        let id = self.eval("document.activeElement?.id ?? ''").await?;
        Ok(id.as_str().unwrap_or_default().to_owned())
    }

    /// Makes the window show exactly this many CSS pixels.
    ///
    /// # Errors
    ///
    /// When the browser refuses, or when its window cannot have the size.
    pub async fn set_viewport(&self, width: u32, height: u32) -> Result<()> {
        if self.engine() != Engine::Chromium {
            return self.set_window(width, height).await;
        }
        let size = json!({
            "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false
        });
        self.cdp("Emulation.setDeviceMetricsOverride", size).await?;
        Ok(())
    }

    /// Asks for a window with room for its frame, until the page has the size.
    async fn set_window(&self, width: u32, height: u32) -> Result<()> {
        let sizes = "[innerWidth, innerHeight, outerWidth, outerHeight]";
        let start = Instant::now();
        loop {
            let sizes = self.eval(sizes).await?;
            let [inner_width, inner_height, outer_width, outer_height]: [u32; 4] =
                serde_json::from_value(sizes)?;
            if (inner_width, inner_height) == (width, height) {
                return Ok(());
            }
            ensure!(
                start.elapsed() < PATIENCE,
                "{} cannot show {width} x {height} pixels; it shows {inner_width} x \
                 {inner_height}",
                self.engine()
            );
            let outer_width = width + outer_width.saturating_sub(inner_width);
            let outer_height = height + outer_height.saturating_sub(inner_height);
            self.session().set_window_rect(0, 0, outer_width, outer_height).await?;
            tokio::time::sleep(PAUSE).await;
        }
    }

    /// Slows the page's processor down by a factor; 1 is its own speed.
    ///
    /// # Errors
    ///
    /// When the browser refuses, or is not Chromium.
    pub async fn throttle(&self, rate: f64) -> Result<()> {
        self.cdp("Emulation.setCPUThrottlingRate", json!({ "rate": rate })).await?;
        Ok(())
    }

    /// Pretends a setting of the reader's system, such as `prefers-color-scheme` and
    /// `dark`. Replaces what was pretended before.
    ///
    /// # Errors
    ///
    /// When the browser refuses, or is not Chromium.
    pub async fn prefer(&self, feature: &str, value: &str) -> Result<()> {
        let features = json!({ "features": [{ "name": feature, "value": value }] });
        self.cdp("Emulation.setEmulatedMedia", features).await?;
        Ok(())
    }

    /// Lets the page save files, and gives the folder in which they appear.
    ///
    /// # Errors
    ///
    /// When the browser refuses, or is not Chromium.
    pub async fn allow_downloads(&self, name: &str) -> Result<PathBuf> {
        let folder = settings::output_folder()?.join("downloads").join(name);
        if folder.exists() {
            fs::remove_dir_all(&folder)?;
        }
        fs::create_dir_all(&folder)?;
        let wish = json!({ "behavior": "allow", "downloadPath": folder });
        self.cdp("Browser.setDownloadBehavior", wish).await?;
        Ok(folder)
    }

    /// The content of a saved file, as soon as it is there.
    ///
    /// # Errors
    ///
    /// When it does not appear.
    pub async fn downloaded(&self, path: &Path) -> Result<Vec<u8>> {
        let start = Instant::now();
        // The browser may give a file its name a moment before its content.
        while fs::metadata(path).map_or(0, |file| file.len()) == 0 {
            ensure!(start.elapsed() < PATIENCE, "{} is not saved", path.display());
            tokio::time::sleep(PAUSE).await;
        }
        Ok(fs::read(path)?)
    }

    /// Sends a command of Chromium's debugging protocol.
    ///
    /// # Errors
    ///
    /// When the browser refuses, or is not Chromium.
    pub async fn cdp(&self, method: &str, parameters: Value) -> Result<Value> {
        ensure!(
            self.engine() == Engine::Chromium,
            "{method} is a command of chromium, and this is {}",
            self.engine()
        );
        let answer = self.session().cdp().send_raw(method, parameters).await;
        answer.with_context(|| format!("{method} failed"))
    }

    /// Saves what the window shows as target/page-tests/`name`.png.
    ///
    /// # Errors
    ///
    /// When the picture cannot be taken or written.
    pub async fn screenshot(&self, name: &str) -> Result<PathBuf> {
        self.save(name, "png", &self.session().screenshot_as_png().await?)
    }

    /// Prints the page on A4, saves it as target/page-tests/`name`.pdf, and gives the
    /// path.
    ///
    /// # Errors
    ///
    /// When the page cannot be printed or the file not written.
    pub async fn print(&self, name: &str) -> Result<PathBuf> {
        self.print_on(name, (21.0, 29.7)).await
    }

    /// The same on other paper; `size_cm` is its width and height.
    ///
    /// # Errors
    ///
    /// When the page cannot be printed or the file not written.
    pub async fn print_on(&self, name: &str, size_cm: (f64, f64)) -> Result<PathBuf> {
        let (width, height) = size_cm;
        let paper = PrintParameters {
            page: PrintPage { width, height },
            ..PrintParameters::default()
        };
        self.save(name, "pdf", &self.session().print_page(paper).await?)
    }

    /// The errors on the console since the browser started: exceptions, breaches of the
    /// content security policy, and in Chromium files that did not load. In `WebKit` what
    /// happened before the files of the page were loaded is missing.
    ///
    /// # Errors
    ///
    /// When the browser does not answer.
    pub async fn errors(&self) -> Result<Vec<String>> {
        let lines = self.console().await?;
        Ok(lines.into_iter().filter(|line| line.starts_with("SEVERE")).collect())
    }

    /// The lines on the console since the browser started, each with its level first.
    ///
    /// # Errors
    ///
    /// When the browser does not answer.
    pub async fn console(&self) -> Result<Vec<String>> {
        self.console.lines(&self.browser).await
    }

    /// The addresses of everything the page has loaded, itself included.
    ///
    /// # Errors
    ///
    /// When the browser does not answer.
    pub async fn requests(&self) -> Result<Vec<String>> {
        let entries = self
            .eval(
                "['navigation', 'resource'].flatMap(kind => \
                 performance.getEntriesByType(kind)).map(entry => entry.name)",
            )
            .await?;
        Ok(serde_json::from_value(entries)?)
    }

    /// The rules of accessibility that the page breaks as it is now.
    ///
    /// # Errors
    ///
    /// When axe-core is missing or fails.
    pub async fn axe(&self) -> Result<Vec<Violation>> {
        if self.eval("typeof axe").await? == "undefined" {
            // Scripts of the driver are not bound by the page's policy.
            self.run(&settings::axe_script()?).await?;
        }
        Violation::all(&self.run(axe::RUN).await?)
    }

    pub(crate) fn session(&self) -> &thirtyfour::WebDriver {
        &self.browser.session
    }

    fn save(&self, name: &str, extension: &str, bytes: &[u8]) -> Result<PathBuf> {
        let path = settings::output_folder()?.join(format!("{name}.{extension}"));
        fs::write(&path, bytes)
            .with_context(|| format!("{} cannot be written", path.display()))?;
        Ok(path)
    }
}

fn is_gone(error: &WebDriverError) -> bool {
    matches!(
        error.as_inner(),
        WebDriverErrorInner::StaleElementReference(_)
            | WebDriverErrorInner::ElementNotInteractable(_)
    )
}
