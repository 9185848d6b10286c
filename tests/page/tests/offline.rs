//! Without a network, without scripts, without WebAssembly, in a frame, as one file; and
//! what happens when a newer page takes the place of an older one.

use axum::Router;
use axum::extract::Request;
use axum::http::{HeaderValue, header};
use axum::middleware::{Next, from_fn};
use axum::response::Html;
use axum::routing::get;
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::Example;
use serde_json::{Value, json};
use std::fs;
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use tokio::runtime::Runtime;
use tower_http::services::ServeDir;

const BUILD: &str = "document.querySelector('meta[name=build]').content";
const OFFLINE: &str = "document.documentElement.dataset.offline";
const LINE_HIDDEN: &str = "document.getElementById('new-version').hidden";
const FOOTER: &str = "document.querySelector('.footer').innerText";
const NEWER: &str = "A newer page.";
const NEWER_BUILD: &str = "0123456789abcdef";

/// A copy of dist/ on a server of its own that can be stopped.
struct Site {
    folder: PathBuf,
    asked: Arc<Mutex<Vec<String>>>,
    address: String,
    server: Option<Server>,
}

impl Site {
    fn start(name: &str) -> Result<Self> {
        let folder = workspace().join("target/page-tests/sites").join(name);
        if folder.exists() {
            fs::remove_dir_all(&folder)?;
        }
        fs::create_dir_all(&folder)?;
        for entry in fs::read_dir(dist())? {
            let entry = entry?;
            fs::copy(entry.path(), folder.join(entry.file_name()))?;
        }
        let asked = Arc::new(Mutex::new(Vec::new()));
        let log = Arc::clone(&asked);
        let files = Router::new()
            .nest_service("/of/a/school", ServeDir::new(&folder))
            .layer(from_fn(add_headers))
            .layer(from_fn(move |request: Request, next: Next| {
                let path = request.uri().path().to_owned();
                log.lock().expect("no request panics").push(path);
                next.run(request)
            }));
        let (address, server) = serve(files)?;
        let address = format!("{address}/of/a/school/");
        Ok(Self { folder, asked, address, server: Some(server) })
    }

    fn stop(&mut self) {
        self.server = None;
    }

    /// Gives the page another build, and changes nothing else.
    fn publish(&self, old: &str, new: &str) -> Result<()> {
        for name in ["index.html", "sw.js"] {
            let path = self.folder.join(name);
            let text = fs::read_to_string(&path)?;
            fs::write(path, text.replace(old, new))?;
        }
        Ok(())
    }

    /// Puts the page of another build in the place of this one, but for some files.
    fn publish_newer(&self, except: &[&str]) -> Result<()> {
        for name in ["index.html", "sw.js"] {
            if except.contains(&name) {
                continue;
            }
            let text = fs::read_to_string(self.folder.join(name))?;
            fs::write(self.folder.join(name), with_newer_build(&text)?)?;
        }
        Ok(())
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        // What is left lies in target/.
        let _ = fs::remove_dir_all(&self.folder);
    }
}

/// A server; ended, with everything that is connected to it, when dropped.
struct Server(Option<Runtime>);

impl Drop for Server {
    fn drop(&mut self) {
        if let Some(runtime) = self.0.take() {
            runtime.shutdown_background();
        }
    }
}

/// A file with a lasting name, as if it came with another build.
fn with_newer_build(text: &str) -> Result<String> {
    let old = build_in_dist()?;
    assert!(text.contains(&old), "a file does not say that it is of {old}: {text}");
    let footer = "<footer class=\"footer\">";
    Ok(text
        .replace(&old, NEWER_BUILD)
        .replace(footer, &format!("{footer}<p>{NEWER}</p>")))
}

fn workspace() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn dist() -> PathBuf {
    workspace().join("dist")
}

fn build_in_dist() -> Result<String> {
    let index = fs::read_to_string(dist().join("index.html"))?;
    let (_, rest) =
        index.split_once("<meta name=\"build\" content=\"").expect("index.html says it");
    Ok(rest.split('"').next().unwrap_or(rest).to_owned())
}

/// Serves on a free port, from a runtime of its own.
fn serve(router: Router) -> Result<(String, Server)> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
    listener.set_nonblocking(true)?;
    let address = format!("http://{}", listener.local_addr()?);
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .worker_threads(1)
        .enable_all()
        .build()?;
    runtime.spawn(async move {
        let listener = tokio::net::TcpListener::from_std(listener)?;
        axum::serve(listener, router).await
    });
    Ok((address, Server(Some(runtime))))
}

/// As the README asks of a host.
async fn add_headers(request: Request, next: Next) -> axum::response::Response {
    let hashed = request.uri().path().rsplit('/').next().is_some_and(|name| {
        name.split('.').next().is_some_and(|stem| {
            stem.rsplit_once('-').is_some_and(|(_, digits)| digits.len() == 16)
        })
    });
    let caching = if hashed { "max-age=31536000, immutable" } else { "no-cache" };
    let is_text = request.uri().path().ends_with(".ts");
    let mut response = next.run(request).await;
    let headers = response.headers_mut();
    if is_text {
        headers.insert(header::CONTENT_TYPE, HeaderValue::from_static("text/plain"));
    }
    headers.insert(header::CACHE_CONTROL, HeaderValue::from_static(caching));
    headers.insert(header::ACCESS_CONTROL_ALLOW_ORIGIN, HeaderValue::from_static("*"));
    response
}

async fn go(page: &Page, address: &str) -> Result<()> {
    page.cdp("Page.navigate", json!({ "url": "about:blank" })).await?;
    page.wait_until("location.href === 'about:blank'").await?;
    page.cdp("Page.navigate", json!({ "url": address })).await?;
    page.wait_until("location.href !== 'about:blank'").await?;
    Ok(())
}

/// A browser that has been here once and may be cut off now.
async fn after_one_visit(site: &Site) -> Result<Page> {
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    page.ready().await?;
    page.wait_until(&format!("{OFFLINE} === 'ready'")).await?;
    Ok(page)
}

#[tokio::test]
async fn after_one_visit_the_page_and_links_to_it_open_without_a_network() -> Result<()> {
    let mut site = Site::start("cut-off")?;
    let page = after_one_visit(&site).await?;
    assert!(page.eval("navigator.serviceWorker.controller").await?.is_null());
    assert_eq!(page.console().await?, Vec::<String>::new());
    site.stop();

    let unreachable = page.eval("fetch('noseward.d.ts').then(() => false, () => true)");
    assert_eq!(unreachable.await?, true, "the server is gone");
    let words = page.text("#in-words").await?;
    page.reload().await?;
    assert_eq!(page.text("#in-words").await?, words);
    page.wait_until(&format!("{OFFLINE} === 'ready'")).await?;
    assert_eq!(page.eval(LINE_HIDDEN).await?, true);

    let hash = noseward_link::hash(&Example::Gannet.design().into());
    for start in [
        format!("{}#{hash}", site.address),
        format!("{}index.html?lang=en#{hash}", site.address),
    ] {
        go(&page, &start).await?;
        page.ready().await?;
        assert_eq!(page.eval("location.href").await?, start.as_str());
        let width = page.value("[id='/sections/1/diameter_mm']").await?;
        let wanted = Example::Gannet.design().sections[1].diameter_mm;
        assert_eq!(width, wanted.expect("it has a width").to_string());
    }
    Ok(())
}

#[tokio::test]
async fn keeping_the_page_asks_for_no_file_twice_but_the_index() -> Result<()> {
    let site = Site::start("once")?;
    let _page = after_one_visit(&site).await?;
    let mut asked = site.asked.lock().expect("no request panics").clone();
    asked.sort();
    for file in [".css", ".js", ".wasm", "sw.js"] {
        assert!(asked.iter().any(|path| path.ends_with(file)), "{file} in {asked:#?}");
    }
    let twice: Vec<&String> =
        asked.windows(2).filter(|pair| pair[0] == pair[1]).map(|pair| &pair[0]).collect();
    assert_eq!(twice, ["/of/a/school/"], "{asked:#?}");
    Ok(())
}

#[tokio::test]
async fn the_event_tells_when_the_page_is_kept() -> Result<()> {
    let site = Site::start("told")?;
    let page = Page::unopened(1280, 800).await?;
    let listen = "document.addEventListener('noseward-offline', event => {
        (window.told ??= []).push(event.detail);
    });";
    page.run_before_each_load(listen).await?;
    go(&page, &site.address).await?;
    page.wait_until("window.told?.length").await?;
    assert_eq!(page.eval("told").await?, json!(["ready"]));
    Ok(())
}

/// Two tabs with the page, opened from a third that is no page and sees both.
struct Tabs {
    third: Page,
}

const ONE: &str = "one";
const TWO: &str = "two";

impl Tabs {
    async fn open(site: &Site) -> Result<Self> {
        let third = Page::unopened(1280, 800).await?;
        go(&third, &format!("{}noseward.d.ts", site.address)).await?;
        let tabs = Self { third };
        for tab in [ONE, TWO] {
            tabs.third.run(&format!("window.{tab} = open('{}')", site.address)).await?;
            tabs.ready(tab).await?;
            tabs.wait_until(tab, &format!("{OFFLINE} === 'ready'")).await?;
        }
        Ok(tabs)
    }

    async fn eval(&self, tab: &str, js: &str) -> Result<Value> {
        let js = js.replace("document.", &format!("{tab}.document."));
        self.third.eval(&js).await
    }

    async fn wait_until(&self, tab: &str, js: &str) -> Result<()> {
        let js = js.replace("document.", &format!("{tab}.document."));
        self.third.wait_until(&js).await
    }

    async fn ready(&self, tab: &str) -> Result<()> {
        self.wait_until(tab, "document.documentElement?.dataset.state === 'ready'").await
    }

    /// Does something that loads the page again, and waits until it has.
    async fn reload_by(&self, tab: &str, js: &str) -> Result<()> {
        self.third.run(&format!("{tab}.before = true; {tab}.{js};")).await?;
        self.third.wait_until(&format!("{tab}.before === undefined")).await?;
        self.ready(tab).await
    }

    async fn is_newer(&self, tab: &str) -> Result<bool> {
        let build = self.eval(tab, BUILD).await?;
        let newer = self.eval(tab, FOOTER).await?.to_string().contains(NEWER);
        assert_eq!(newer, build == NEWER_BUILD, "{tab} mixes two builds");
        Ok(newer)
    }
}

const PRESS: &str = "document.getElementById('load-new').click()";

#[tokio::test]
async fn a_newer_page_waits_until_somebody_wants_it() -> Result<()> {
    let site = Site::start("newer")?;
    let tabs = Tabs::open(&site).await?;
    site.publish_newer(&[])?;

    // The browser looks for a newer worker when a page is loaded.
    tabs.reload_by(ONE, "location.reload()").await?;
    for tab in [ONE, TWO] {
        tabs.wait_until(tab, &format!("!{LINE_HIDDEN}")).await?;
    }
    // It waits, however often the page is loaded, and the line says so each time.
    for _ in 0..2 {
        assert!(!tabs.is_newer(ONE).await?, "nothing changes by itself");
        tabs.reload_by(ONE, "location.reload()").await?;
        tabs.wait_until(ONE, &format!("!{LINE_HIDDEN}")).await?;
    }
    tabs.third.run("two.mark = 'as it was'").await?;
    tabs.reload_by(ONE, PRESS).await?;
    assert!(tabs.is_newer(ONE).await?);
    tabs.wait_until(ONE, &format!("{OFFLINE} === 'ready'")).await?;
    assert_eq!(tabs.eval(ONE, LINE_HIDDEN).await?, true);

    // The other tab goes on as it was, and finds the files of its build.
    assert_eq!(tabs.third.eval("two.mark").await?, "as it was");
    assert!(!tabs.is_newer(TWO).await?);
    let loaded = "two.fetch(two.document.querySelector('link[rel=stylesheet]').href)
        .then(response => response.ok)";
    assert_eq!(tabs.third.eval(loaded).await?, true);
    assert_eq!(tabs.eval(TWO, LINE_HIDDEN).await?, false);
    tabs.reload_by(TWO, PRESS).await?;
    assert!(tabs.is_newer(TWO).await?);
    Ok(())
}

#[tokio::test]
async fn the_line_about_a_newer_page_looks_as_it_should() -> Result<()> {
    let site = Site::start("line")?;
    let page = after_one_visit(&site).await?;
    site.publish_newer(&[])?;
    page.reload().await?;
    page.wait_until(&format!("!{LINE_HIDDEN}")).await?;
    page.screenshot("new-version").await?;
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{told:#?}");
    page.click("#load-new").await?;
    page.wait_until(&format!("{BUILD} === '{NEWER_BUILD}'")).await?;
    page.ready().await?;
    assert_eq!(page.console().await?, Vec::<String>::new());
    Ok(())
}

/// What the worker has kept: the number of indices of each build.
const KEPT_BUILDS: &str = "caches.keys().then(async names => {
    const found = [];
    for (const name of names) {
        const index = await (await caches.open(name)).match(location.href.split('#')[0]);
        const text = await index?.text() ?? '';
        found.push(text.match(/name=\"build\" content=\"(\\w+)/)?.[1] ?? 'none');
    }
    return found;
})";

#[tokio::test]
async fn the_worker_of_one_build_refuses_the_index_of_another() -> Result<()> {
    let site = Site::start("mixed")?;
    let index = fs::read(site.folder.join("index.html"))?;
    site.publish_newer(&["index.html"])?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    page.ready().await?;
    page.wait_until(&format!("{OFFLINE} === 'no'")).await?;
    let active =
        "navigator.serviceWorker.getRegistration().then(r => Boolean(r?.active))";
    assert_eq!(page.eval(active).await?, false);
    let kept = page.eval(KEPT_BUILDS).await?;
    let kept = kept.as_array().expect("a list").iter();
    assert_eq!(kept.filter(|build| **build != "none").count(), 0);

    // With the index of its own build it is content.
    fs::write(
        site.folder.join("index.html"),
        with_newer_build(&String::from_utf8(index)?)?,
    )?;
    page.reload().await?;
    page.wait_until(&format!("{OFFLINE} === 'ready'")).await?;
    assert_eq!(page.eval(KEPT_BUILDS).await?, json!([NEWER_BUILD]));
    Ok(())
}

#[tokio::test]
async fn the_files_of_the_build_before_are_kept_and_older_ones_go() -> Result<()> {
    let site = Site::start("tidy")?;
    let page = after_one_visit(&site).await?;
    let mut builds = vec![build_in_dist()?];
    for digit in ["1", "2", "3"] {
        let build = digit.repeat(16);
        site.publish(builds.last().expect("one"), &build)?;
        builds.push(build.clone());
        page.reload().await?;
        page.wait_until(&format!("!{LINE_HIDDEN}")).await?;
        page.click("#load-new").await?;
        page.wait_until(&format!("{BUILD} === '{build}' && {OFFLINE} === 'ready'"))
            .await?;
        let last_two = &builds[builds.len() - 2..];
        assert_eq!(page.eval(KEPT_BUILDS).await?, json!(last_two));
    }
    Ok(())
}

#[tokio::test]
async fn two_copies_on_one_host_leave_each_other_alone() -> Result<()> {
    let (site, other) = (Site::start("one-copy")?, Site::start("other-copy")?);
    let files = |site: &Site| ServeDir::new(&site.folder);
    let both = Router::new()
        .nest_service("/one", files(&site))
        .nest_service("/other", files(&other))
        .layer(from_fn(add_headers));
    let (address, server) = serve(both)?;
    let page = Page::unopened(1280, 800).await?;
    for folder in ["one", "other", "one"] {
        go(&page, &format!("{address}/{folder}/")).await?;
        page.ready().await?;
        page.wait_until(&format!("{OFFLINE} === 'ready'")).await?;
    }
    // Two builds later, when a host with one copy would have no use for the first.
    let (first, second) = (build_in_dist()?, "1".repeat(16));
    for (old, new) in [(first.as_str(), second.as_str()), (&second, NEWER_BUILD)] {
        other.publish(old, new)?;
        go(&page, &format!("{address}/other/")).await?;
        page.wait_until(&format!("!{LINE_HIDDEN}")).await?;
        page.click("#load-new").await?;
        page.wait_until(&format!("{BUILD} === '{new}' && {OFFLINE} === 'ready'")).await?;
    }
    drop(server);
    for folder in ["one", "other"] {
        go(&page, &format!("{address}/{folder}/")).await?;
        page.ready().await?;
        assert_eq!(page.eval(BUILD).await? == NEWER_BUILD, folder == "other");
    }
    Ok(())
}

#[tokio::test]
async fn the_single_file_works_from_a_disk_and_asks_for_nothing() -> Result<()> {
    let file = dist().join("noseward.html").canonicalize()?;
    let file = format!("file://{}", file.to_str().expect("the path is a text"));
    let page = Page::unopened(1280, 800).await?;
    let hash = noseward_link::hash(&Example::Gannet.design().into());
    go(&page, &format!("{file}#{hash}")).await?;
    page.ready().await?;
    page.screenshot("single-file").await?;
    page.type_into("[id='/sections/1/diameter_mm']", "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('70 mm wide')",
    )
    .await?;
    let mut requests = page.requests().await?;
    requests.retain(|request| !request.starts_with("data:"));
    assert_eq!(requests, [format!("{file}#{hash}")]);
    assert!(page.text(".footer").await?.contains("single file"));
    assert_eq!(
        page.eval("document.querySelectorAll('a[href$=\"noseward.html\"]').length")
            .await?,
        0
    );
    assert_eq!(page.console().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn the_single_file_says_what_an_older_browser_lacks() -> Result<()> {
    let file = dist().join("noseward.html").canonicalize()?;
    let page = Page::unopened(1280, 800).await?;
    without(&page, "DecompressionStream").await?;
    go(&page, &format!("file://{}", file.display())).await?;
    let message = message(&page).await?;
    assert!(message.contains("DecompressionStream"), "{message}");
    Ok(())
}

/// The browser loses a part before the page comes.
async fn without(page: &Page, part: &str) -> Result<()> {
    page.run_before_each_load(&format!("delete window.{part}")).await
}

async fn message(page: &Page) -> Result<String> {
    page.wait_until("document.documentElement.dataset.state === 'failed'").await?;
    page.text("#failed").await
}

#[tokio::test]
async fn without_webassembly_the_page_says_what_to_do() -> Result<()> {
    let page = Page::unopened(1280, 800).await?;
    without(&page, "WebAssembly").await?;
    let hash = noseward_link::hash(&Example::Gannet.design().into());
    page.visit(&hash).await?;
    let message = message(&page).await?;
    page.screenshot("no-webassembly").await?;
    for words in ["WebAssembly is missing", "another browser", "paper", "as one file"] {
        assert!(message.contains(words), "{words} is not in {message}");
    }
    assert_eq!(page.eval("location.hash").await?, format!("#{hash}"));
    assert_eq!(
        page.eval(
            "getComputedStyle(document.querySelector('.footer')).display !== 'none'"
        )
        .await?,
        true
    );
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{told:#?}");
    Ok(())
}

#[tokio::test]
async fn a_module_that_does_not_arrive_is_told() -> Result<()> {
    let site = Site::start("no-module")?;
    for entry in fs::read_dir(&site.folder)? {
        let path = entry?.path();
        if path.extension().is_some_and(|extension| extension == "wasm") {
            fs::remove_file(path)?;
        }
    }
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    let message = message(&page).await?;
    assert!(message.contains("Load the page again"), "{message}");
    page.run("window.before = true").await?;
    page.click("#failed-again").await?;
    page.wait_until("window.before === undefined").await?;
    Ok(())
}

#[tokio::test]
async fn a_script_that_never_comes_is_told_by_the_styles_alone() -> Result<()> {
    let site = Site::start("late")?;
    let path = site.folder.join("index.html");
    let index = fs::read_to_string(&path)?;
    let (before, boot) = index.split_once("<script type=\"module\"").expect("it boots");
    let (_, after) = boot.split_once("</script>").expect("the element ends");
    fs::write(path, format!("{before}{after}"))?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    page.element(".late").await?;
    let visibility = "getComputedStyle(document.querySelector('.late')).visibility";
    let late = "document.querySelector('.late').getAnimations()[0]";
    assert_eq!(page.eval(&format!("{late}.effect.getTiming().delay")).await?, 12_000);
    page.run(&format!("{late}.pause(); {late}.currentTime = 11_999;")).await?;
    assert_eq!(page.eval(visibility).await?, "hidden");
    page.run(&format!("{late}.finish()")).await?;
    assert_eq!(page.eval(visibility).await?, "visible");
    page.screenshot("late").await?;
    Ok(())
}

#[tokio::test]
async fn a_browser_that_knows_no_modules_is_told() -> Result<()> {
    let site = Site::start("old")?;
    let path = site.folder.join("index.html");
    let index = fs::read_to_string(&path)?;
    // As such a browser takes it.
    assert!(index.contains("<script type=\"module\"") && index.contains("nomodule"));
    let index = index.replace("type=\"module\"", "type=\"unknown\"");
    fs::write(path, index.replace("nomodule", ""))?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    let message = message(&page).await?;
    assert!(message.contains("too old"), "{message}");
    assert!(!page.text("#sheet").await?.contains("squared paper"));
    assert_eq!(page.console().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn without_scripts_the_page_can_be_read() -> Result<()> {
    let page = Page::unopened(1280, 800).await?;
    page.cdp("Emulation.setScriptExecutionDisabled", json!({ "value": true })).await?;
    page.visit("").await?;
    page.screenshot("no-scripts").await?;
    assert!(page.text("#sheet").await?.contains("scripts"));
    assert!(page.text(".footer").await?.contains("Version"));
    let lesson = page.text(".paper").await?;
    for part in ["This page does not", "hangs level", "Swing test", "Results"] {
        assert!(lesson.contains(part), "{part} is not in {lesson}");
    }
    // No script of the page has run: it would have said that it is ready.
    let state = page.eval("document.documentElement.dataset.state").await?;
    assert_eq!(state, "loading");
    page.print("no-scripts").await?;
    Ok(())
}

#[tokio::test]
async fn the_page_works_in_a_frame_that_belongs_to_nobody() -> Result<()> {
    let site = Site::start("framed")?;
    let frame = format!(
        "<!doctype html><title>A course</title><link rel=\"icon\" href=\"data:\"><iframe sandbox=\"allow-scripts\" \
         width=\"1200\" height=\"700\" src=\"{}\"></iframe>",
        site.address
    );
    let course = Router::new().route("/", get(move || async { Html(frame) }));
    let (address, _server) = serve(course)?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &address).await?;
    page.element("iframe").await?.enter_frame().await?;
    page.ready().await?;
    page.wait_until(&format!("{OFFLINE} === 'no'")).await?;
    assert_eq!(page.eval("origin").await?, "null");
    assert!(page.text("#in-words").await?.contains("mm"));
    page.screenshot("framed").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// Calls a module whose one function is the instruction `unreachable`.
const CRASH: &str = "
    const bytes = [0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0,
        7, 5, 1, 1, 102, 0, 0, 10, 5, 1, 3, 0, 0, 11];
    const module = new WebAssembly.Module(new Uint8Array(bytes));
    new WebAssembly.Instance(module).exports.f();";

#[tokio::test]
async fn a_crash_shows_the_way_out_once() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    // A drawing that is still to come writes the link anew, but not this.
    page.run(
        "Object.defineProperty(document.getElementById('crash-link'), 'hash',
            { value: '#r1.rescued' })",
    )
    .await?;
    page.run("setTimeout(() => { throw new Error('no crash of the module') })").await?;
    page.eval("new Promise(resolve => setTimeout(resolve))").await?;
    assert_eq!(page.eval("document.getElementById('crash').hidden").await?, true);
    page.run(&format!("setTimeout(async () => {{ {CRASH} }})")).await?;
    page.wait_until("document.documentElement.dataset.state === 'crashed'").await?;
    assert_eq!(page.focused_id().await?, "crash");
    assert_eq!(page.eval("location.hash").await?, "#r1.rescued");
    page.screenshot("crash").await?;
    page.run("document.getElementById('steps').focus()").await?;
    page.run(&format!("setTimeout(() => {{ {CRASH} }})")).await?;
    page.eval("new Promise(resolve => setTimeout(resolve))").await?;
    assert_eq!(page.focused_id().await?, "steps", "told once");
    Ok(())
}

#[tokio::test]
async fn a_crash_outside_a_promise_shows_the_way_out_too() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    page.run(&format!("setTimeout(() => {{ {CRASH} }})")).await?;
    page.wait_until("document.documentElement.dataset.state === 'crashed'").await?;
    assert_eq!(page.eval("document.getElementById('crash').hidden").await?, false);
    Ok(())
}
