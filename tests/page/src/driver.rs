//! Starts a browser and the program that drives it, and ends both.

use crate::settings;
use anyhow::{Context, Result, bail, ensure};
use serde_json::{Value, json};
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

const FLAGS: [&str; 9] = [
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

/// A browser with a profile of its own.
///
/// Dropping it closes the browser, then its fields in their order end the driver
/// and remove the profile.
#[derive(Debug)]
pub(crate) struct Browser {
    /// The session in which commands are sent.
    pub(crate) session: WebDriver,
    driver: Driver,
    log: PathBuf,
    _profile: Profile,
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
    pub(crate) async fn start() -> Result<Self> {
        for _ in 1..ATTEMPTS {
            match Self::try_start().await {
                Ok(browser) => return Ok(browser),
                Err(error) => eprintln!("trying again to start a browser: {error:#}"),
            }
        }
        Self::try_start().await
    }

    async fn try_start() -> Result<Self> {
        let output = settings::output_folder()?;
        let name = unique_name();
        let profile = Profile::new(output.join("profiles").join(&name))?;
        let log = output.join(format!("driver-{name}.log"));
        let mut driver = Driver::start(&log)?;
        let session = driver
            .connect(&profile.0)
            .await
            .with_context(|| format!("no browser; its driver wrote {}", log.display()))?;
        Ok(Self { session, driver, log, _profile: profile })
    }
}

/// Test programs run after and beside each other: process and counter tell their
/// browsers apart.
fn unique_name() -> String {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    format!("{}-{}", process::id(), COUNT.fetch_add(1, Ordering::Relaxed))
}

/// A folder for a profile; gone when dropped.
#[derive(Debug)]
struct Profile(PathBuf);

impl Profile {
    fn new(path: PathBuf) -> Result<Self> {
        fs::create_dir_all(&path)
            .with_context(|| format!("{} cannot be made", path.display()))?;
        Ok(Self(path))
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
    fn start(log: &Path) -> Result<Self> {
        let port = free_port()?;
        let program = settings::driver_program();
        let file = File::create(log)
            .with_context(|| format!("{} cannot be written", log.display()))?;
        let child = Command::new(&program)
            .arg(format!("--port={port}"))
            .stdin(Stdio::null())
            .stdout(file.try_clone()?)
            .stderr(file)
            .spawn()
            .with_context(|| {
                format!("{program} cannot be started; run: cargo run -- test page")
            })?;
        Ok(Self { child, address: format!("http://127.0.0.1:{port}") })
    }

    async fn connect(&mut self, profile: &Path) -> Result<WebDriver> {
        self.wait_for_port().await?;
        let wishes: Capabilities = serde_json::from_value(capabilities(profile))?;
        Ok(WebDriver::new(&self.address, wishes).await?)
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

fn capabilities(profile: &Path) -> Value {
    let mut flags: Vec<String> = FLAGS.map(str::to_owned).to_vec();
    flags.push(format!("--user-data-dir={}", profile.display()));
    let mut options = json!({ "args": flags });
    if let Some(browser) = settings::browser_program() {
        options["binary"] = browser.into();
    }
    json!({
        "browserName": "chrome",
        "goog:loggingPrefs": { "browser": "ALL" },
        "goog:chromeOptions": options,
    })
}
