//! Starts a browser and the program that drives it, and ends both.

use crate::display::Display;
use crate::engine::{Engine, FIREFOX_WINDOW, Storage, WEBKIT_WINDOW};
use crate::settings;
use anyhow::{Context, Result, bail, ensure};
use std::fs::{self, File};
use std::io::{self, Read, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{self, Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::thread;
use std::time::{Duration, Instant};
use thirtyfour::{Capabilities, SessionId, WebDriver};

/// How long a driver may take to start, on a busy machine.
const START: Duration = Duration::from_secs(60);
/// How long a browser may take to close.
const CLOSE: Duration = Duration::from_secs(20);
/// How often to ask whether it has.
const PAUSE: Duration = Duration::from_millis(50);
/// A port that was free may be gone when the driver opens it.
const ATTEMPTS: u32 = 3;

/// A browser with a profile of its own.
///
/// Dropping it closes the browser, then its fields in their order end the driver,
/// switch off the screen and remove the profile.
#[derive(Debug)]
pub(crate) struct Browser {
    /// The session in which commands are sent.
    pub(crate) session: WebDriver,
    /// What runs and shows the page.
    pub(crate) engine: Engine,
    driver: Driver,
    /// What the driver and the browser have written.
    pub(crate) log: PathBuf,
    _display: Option<Display>,
    profile: Profile,
}

impl Drop for Browser {
    fn drop(&mut self) {
        // The session would close itself from a blocked runtime, which waits for two
        // minutes: it is told to keep quiet, and closed by a request of our own.
        let closed = self.driver.close(self.session.handle().session_id());
        let leaked = self.session.clone().leak();
        if closed.is_err() || leaked.is_err() {
            eprintln!("a browser did not close: {closed:?} {leaked:?}");
        } else if !thread::panicking() {
            // Only a failure makes the log worth reading.
            let _ = fs::remove_file(&self.log);
        }
    }
}

impl Browser {
    /// Starts a browser that knows nothing of earlier ones.
    pub(crate) async fn start(engine: Engine, storage: Storage) -> Result<Self> {
        for _ in 1..ATTEMPTS {
            match Self::try_start(engine, storage).await {
                Ok(browser) => return Ok(browser),
                Err(error) => eprintln!("trying again to start a browser: {error:#}"),
            }
        }
        Self::try_start(engine, storage).await
    }

    async fn try_start(engine: Engine, storage: Storage) -> Result<Self> {
        let output = settings::output_folder()?;
        let name = format!("{engine}-{}", unique_name());
        let profile = Profile::new(output.join("profiles").join(&name), engine)?;
        let wishes = engine.capabilities(&profile.0, storage)?;
        let display = match engine {
            Engine::WebKit => Some(Display::start()?),
            Engine::Chromium | Engine::Firefox => None,
        };
        let log = output.join(format!("driver-{name}.log"));
        let environment = environment(&profile.0, display.as_ref());
        let mut driver = Driver::start(engine, &log, environment)?;
        let session = driver
            .connect(serde_json::from_value(wishes)?)
            .await
            .with_context(|| format!("no browser; its driver wrote {}", log.display()))?;
        Ok(Self { session, engine, driver, log, _display: display, profile })
    }

    /// Ends Chromium as a failing computer would, without a word to it, and starts it again
    /// with the same profile.
    pub(crate) async fn kill_and_start_again(&mut self) -> Result<()> {
        ensure!(self.engine == Engine::Chromium, "only chromium can be killed");
        let browser = self.driver.browser(&self.profile.0)?;
        let killed = Command::new("kill").args(["-KILL", &browser.to_string()]).status();
        ensure!(killed?.success(), "the browser {browser} cannot be killed");
        let wishes = self.engine.capabilities(&self.profile.0, Storage::Allowed)?;
        let mut driver = Driver::start(self.engine, &self.log, Vec::new())?;
        let session = driver.connect(serde_json::from_value(wishes)?).await?;
        std::mem::replace(&mut self.session, session).leak()?;
        self.driver = driver;
        Ok(())
    }
}

/// Test programs run after and beside each other: process and counter tell their
/// browsers apart.
fn unique_name() -> String {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    format!("{}-{}", process::id(), COUNT.fetch_add(1, Ordering::Relaxed))
}

/// What a browser on a screen in memory needs to know, beside what we know.
fn environment(profile: &Path, display: Option<&Display>) -> Vec<(&'static str, String)> {
    let Some(display) = display else { return Vec::new() };
    let folder = profile.display().to_string();
    vec![
        ("DISPLAY", display.name.clone()),
        ("GDK_BACKEND", "x11".to_owned()),
        ("LIBGL_ALWAYS_SOFTWARE", "1".to_owned()),
        // It would be written when the profile is already on its way out.
        ("MESA_SHADER_CACHE_DISABLE", "true".to_owned()),
        // Its sandbox needs rights that a container does not give.
        ("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1".to_owned()),
        // Nothing is read from or written to the folders of whoever runs the tests.
        ("XDG_CONFIG_HOME", folder.clone()),
        ("XDG_CACHE_HOME", folder.clone()),
        ("XDG_DATA_HOME", folder),
    ]
}

/// A folder for a profile; gone when dropped.
#[derive(Debug)]
struct Profile(PathBuf);

impl Profile {
    fn new(path: PathBuf, engine: Engine) -> Result<Self> {
        fs::create_dir_all(&path)
            .with_context(|| format!("{} cannot be made", path.display()))?;
        let profile = Self(path);
        match engine {
            Engine::Chromium => {}
            Engine::Firefox => {
                profile.write("chrome", "userChrome.css", FIREFOX_WINDOW)?;
            }
            Engine::WebKit => profile.write("gtk-3.0", "gtk.css", WEBKIT_WINDOW)?,
        }
        Ok(profile)
    }

    fn write(&self, folder: &str, name: &str, content: &str) -> Result<()> {
        let folder = self.0.join(folder);
        let written = fs::create_dir_all(&folder)
            .and_then(|()| fs::write(folder.join(name), content));
        written.with_context(|| format!("{} cannot be written to", folder.display()))
    }
}

impl Drop for Profile {
    fn drop(&mut self) {
        // A helper of the browser may write a last time; what is left lies in target/.
        let _ = fs::remove_dir_all(&self.0);
    }
}

/// A running driver; ended when dropped.
#[derive(Debug)]
struct Driver {
    child: Child,
    address: String,
}

impl Drop for Driver {
    fn drop(&mut self) {
        // Either fails only if the driver has ended by itself.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Driver {
    fn start(
        engine: Engine,
        log: &Path,
        environment: Vec<(&'static str, String)>,
    ) -> Result<Self> {
        let port = free_port()?;
        let program = engine.driver();
        let file = File::create(log)
            .with_context(|| format!("{} cannot be written", log.display()))?;
        let child = Command::new(&program)
            .arg(format!("--port={port}"))
            .args(engine.driver_arguments())
            .envs(environment)
            .stdin(Stdio::null())
            .stdout(file.try_clone()?)
            .stderr(file)
            .spawn()
            .with_context(|| {
                format!("{program} cannot be started; run: cargo run -- test page")
            })?;
        Ok(Self { child, address: format!("http://127.0.0.1:{port}") })
    }

    async fn connect(&mut self, wishes: Capabilities) -> Result<WebDriver> {
        self.wait_for_port().await?;
        Ok(WebDriver::new(&self.address, wishes).await?)
    }

    /// The browser's first process, which the driver has started with this profile.
    fn browser(&self, profile: &Path) -> Result<u32> {
        let mut children = String::new();
        for thread in fs::read_dir(format!("/proc/{}/task", self.child.id()))? {
            children += &fs::read_to_string(thread?.path().join("children"))?;
        }
        let profile = format!("--user-data-dir={}", profile.display());
        let is_browser = |child: &u32| {
            let line = fs::read(format!("/proc/{child}/cmdline")).unwrap_or_default();
            let line = String::from_utf8_lossy(&line);
            line.contains(&profile) && !line.contains("--type=")
        };
        let mut children = children.split_whitespace().filter_map(|id| id.parse().ok());
        children.find(is_browser).context("the driver has started no browser")
    }

    /// Closes a session, and with it the browser. Blocks: to drop is not async.
    fn close(&self, session: &SessionId) -> io::Result<()> {
        let mut stream = TcpStream::connect(self.place())?;
        stream.set_read_timeout(Some(CLOSE))?;
        write!(
            stream,
            "DELETE /session/{session} HTTP/1.1\r\nHost: {}\r\nConnection: close\r\n\
             Content-Length: 0\r\n\r\n",
            self.place()
        )?;
        // The answer comes when the browser is gone.
        stream.read_exact(&mut [0])
    }

    fn place(&self) -> &str {
        self.address.trim_start_matches("http://")
    }

    async fn wait_for_port(&mut self) -> Result<()> {
        let start = Instant::now();
        let place = self.place().to_owned();
        while tokio::net::TcpStream::connect(&place).await.is_err() {
            if let Some(status) = self.child.try_wait()? {
                bail!("the driver ended with {status}");
            }
            ensure!(start.elapsed() < START, "the driver does not open {place}");
            tokio::time::sleep(PAUSE).await;
        }
        Ok(())
    }
}

fn free_port() -> Result<u16> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))
        .context("no free port on 127.0.0.1")?;
    Ok(listener.local_addr()?.port())
}
