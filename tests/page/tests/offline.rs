//! Without a network, without scripts, without WebAssembly, in a frame, as one file; and
//! what happens when a newer page takes the place of an older one.

use anyhow::Context;
use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::Request;
use axum::http::{HeaderValue, StatusCode, header};
use axum::middleware::{Next, from_fn};
use axum::response::{Html, Response};
use axum::routing::get;
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::Example;
use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use std::ffi::OsString;
use std::fs;
use std::future;
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use tokio::runtime::Runtime;
use tower_http::services::ServeDir;

const BUILD: &str = "document.querySelector('meta[name=build]').content";
const OFFLINE: &str = "document.documentElement.dataset.offline";
const LINE_HIDDEN: &str = "document.getElementById('new-version').hidden";
/// Every place of the page that pupils open with something to see in it.
const PLACES: [&str; 10] = [
    "rocket", "measure", "predict", "swing", "compare", "conclude", "hand-in", "why",
    "words", "lead",
];
/// Those that only whoever leads opens.
const FOR_LEADERS: [&str; 3] = ["set-up", "class", "paper"];
const FOOTER: &str = "document.querySelector('.footer').innerText";
const NEWER: &str = "A newer page.";
const NEWER_BUILD: &str = "0123456789abcdef";

/// A copy of dist/ on a server of its own that can be stopped.
struct Site {
    folder: PathBuf,
    asked: Arc<Mutex<Vec<String>>>,
    /// What is wrong with files whose names begin so.
    faults: Arc<Mutex<Vec<(&'static str, Fault)>>>,
    files: Router,
    address: String,
    server: Option<Server>,
}

/// What a server or a network does to a file.
#[derive(Clone, Copy, Debug)]
enum Fault {
    /// Another page answers in its place, as where one has to log in first.
    Portal,
    /// Its second half is missing.
    Truncated,
    /// Something stands in it that was not there.
    Altered,
    /// It is not there.
    Missing,
    /// No answer ever comes.
    Silent,
    /// It may only be used by pages of its own origin.
    OwnOriginOnly,
}

impl Fault {
    async fn befall(self, response: Response) -> Response {
        let (mut parts, body) = response.into_parts();
        parts.headers.remove(header::CONTENT_LENGTH);
        let bytes = to_bytes(body, usize::MAX).await.expect("files are not endless");
        let body = match self {
            Self::Portal => {
                parts
                    .headers
                    .insert(header::CONTENT_TYPE, HeaderValue::from_static("text/html"));
                b"<!doctype html><title>Welcome</title><p>Log in first.".to_vec()
            }
            Self::Truncated => bytes[..bytes.len() / 2].to_vec(),
            Self::Altered => [&bytes[..], b"\n/* something more */\n"].concat(),
            Self::Missing => {
                parts.status = StatusCode::NOT_FOUND;
                parts.headers.remove(header::CACHE_CONTROL);
                Vec::new()
            }
            Self::Silent => future::pending().await,
            Self::OwnOriginOnly => {
                parts.headers.remove(header::ACCESS_CONTROL_ALLOW_ORIGIN);
                bytes.to_vec()
            }
        };
        Response::from_parts(parts, Body::from(body))
    }
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
        let faults = Arc::new(Mutex::new(Vec::<(&str, Fault)>::new()));
        let befall = Arc::clone(&faults);
        let files = Router::new()
            .nest_service("/of/a/school", ServeDir::new(&folder))
            .layer(from_fn(add_headers))
            .layer(from_fn(move |request: Request, next: Next| {
                let name = request.uri().path().rsplit('/').next().unwrap_or_default();
                let faults = befall.lock().expect("no request panics");
                let fits = |(start, _): &&(&str, Fault)| name.starts_with(start);
                let fault = faults.iter().find(fits).map(|(_, fault)| *fault);
                async move {
                    let response = next.run(request).await;
                    match fault {
                        Some(fault) => fault.befall(response).await,
                        None => response,
                    }
                }
            }))
            .layer(from_fn(move |request: Request, next: Next| {
                let path = request.uri().path().to_owned();
                log.lock().expect("no request panics").push(path);
                next.run(request)
            }));
        let (address, server) = serve(files.clone(), 0)?;
        let address = format!("{address}/of/a/school/");
        Ok(Self { folder, asked, faults, files, address, server: Some(server) })
    }

    fn stop(&mut self) {
        self.server = None;
    }

    /// At the same address as before.
    fn start_again(&mut self) -> Result<()> {
        let (_, rest) = self.address.rsplit_once(':').expect("it names a port");
        let port = rest.split('/').next().unwrap_or(rest).parse()?;
        self.server = Some(serve(self.files.clone(), port)?.1);
        Ok(())
    }

    /// Lets something befall the files whose names begin so.
    fn spoil(&self, files: &[&'static str], fault: Fault) {
        let mut faults = self.faults.lock().expect("no request panics");
        faults.extend(files.iter().map(|start| (*start, fault)));
    }

    /// From now on every file is as it should be.
    fn mend(&self) {
        self.faults.lock().expect("no request panics").clear();
    }

    /// The file whose name begins and ends so.
    fn file(&self, start: &str, end: &str) -> Result<String> {
        let names: Vec<String> = fs::read_dir(&self.folder)?
            .map(|entry| Ok(entry?.file_name().to_string_lossy().into_owned()))
            .collect::<Result<_>>()?;
        let fits = |name: &&String| name.starts_with(start) && name.ends_with(end);
        Ok(names.iter().find(fits).expect("dist/ holds it").clone())
    }

    /// Gives the page another build, and changes nothing else.
    fn publish(&self, old: &str, new: &str) -> Result<()> {
        let index = fs::read_to_string(self.folder.join("index.html"))?;
        let worker = fs::read_to_string(self.folder.join("sw.js"))?;
        let newer = index.replace(old, new);
        let worker = worker.replace(old, new).replace(&digest(&index), &digest(&newer));
        fs::write(self.folder.join("index.html"), newer)?;
        fs::write(self.folder.join("sw.js"), worker)?;
        Ok(())
    }

    /// Puts the page of another build in the place of this one, but for some files.
    fn publish_newer(&self, except: &[&str]) -> Result<()> {
        for name in ["index.html", "sw.js"] {
            if except.contains(&name) {
                continue;
            }
            let text = fs::read_to_string(self.folder.join(name))?;
            let index = fs::read_to_string(dist().join("index.html"))?;
            let newer = digest(&with_newer_build(&index)?);
            let text = with_newer_build(&text)?.replace(&digest(&index), &newer);
            fs::write(self.folder.join(name), text)?;
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

/// As the service worker spells it.
fn digest(text: &str) -> String {
    Sha256::digest(text).iter().map(|byte| format!("{byte:02x}")).collect()
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

/// Serves on a port, 0 for a free one, from a runtime of its own.
fn serve(router: Router, port: u16) -> Result<(String, Server)> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
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
async fn add_headers(request: Request, next: Next) -> Response {
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
    let words = page.in_words().await?;
    page.reload().await?;
    assert_eq!(page.in_words().await?, words);
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

/// By the path, and by an address of its own.
#[tokio::test]
async fn after_one_visit_every_place_opens_without_a_network() -> Result<()> {
    let mut site = Site::start("places-cut-off")?;
    let page = after_one_visit(&site).await?;
    site.stop();
    page.reload().await?;
    every_place_opens(&page).await?;
    for place in PLACES {
        go(&page, &format!("{}?at={place}", site.address)).await?;
        page.ready().await?;
        page.is_at(place).await?;
        page.wait_until("document.getElementById('in-words').innerText.includes('mm')")
            .await?;
    }
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// Goes through all places: something stands in each.
async fn every_place_opens(page: &Page) -> Result<()> {
    for place in PLACES {
        page.at(place).await?;
        page.wait_until(
            "document.getElementById('place-regions').innerText.length > 100",
        )
        .await?;
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
        let reloaded =
            self.third.wait_until(&format!("{tab}.before === undefined")).await;
        reloaded.with_context(|| format!("{tab} does not load again by {js}"))?;
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

/// What stands in the worker's copies under the names of this folder, each with whether it
/// is the file on the server.
const KEPT_FILES: &str = "caches.keys().then(async names => {
    const found = {};
    for (const name of names) {
        const cache = await caches.open(name);
        for (const { url } of await cache.keys()) {
            if (url.endsWith('/used')) continue;
            const [kept, there] = await Promise.all([
                cache.match(url).then(response => response.text()),
                fetch(url, { cache: 'reload' }).then(response => response.text()),
            ]);
            found[url.split('/').pop()] = kept === there;
        }
    }
    return found;
})";

/// Asserts that the worker has kept all files of the page, and each as the server has it.
async fn assert_kept_well(page: &Page) -> Result<()> {
    page.wait_until(&format!("{OFFLINE} === 'ready'")).await?;
    let kept = page.eval(KEPT_FILES).await?;
    let kept = kept.as_object().expect("names with answers");
    assert!(kept.len() >= 8 && kept.values().all(|well| *well == true), "{kept:#?}");
    Ok(())
}

/// The server answers with something else on the first visit, then is well.
async fn mends(name: &str, file: &'static str, fault: Fault) -> Result<()> {
    let mut site = Site::start(name)?;
    site.spoil(&[file], fault);
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    page.ready().await?;
    page.wait_until(&format!("{OFFLINE} === 'no'")).await?;
    let kept = page.eval(KEPT_BUILDS).await?;
    let kept = kept.as_array().expect("a list").iter();
    assert_eq!(kept.filter(|build| **build != "none").count(), 0, "{name}");

    // The browser's own cache still holds what was spoilt.
    site.mend();
    page.reload().await?;
    assert_kept_well(&page).await?;
    site.stop();
    page.reload().await?;
    page.at("measure").await
}

#[tokio::test]
async fn a_page_to_log_in_is_not_kept_in_place_of_a_module() -> Result<()> {
    mends("portal", "notebook-", Fault::Portal).await
}

#[tokio::test]
async fn half_a_module_is_not_kept() -> Result<()> {
    mends("truncated", "notebook-", Fault::Truncated).await
}

#[tokio::test]
async fn a_script_with_something_more_in_it_is_not_kept() -> Result<()> {
    mends("altered", "boot-", Fault::Altered).await
}

#[tokio::test]
async fn an_index_with_something_more_in_it_is_not_kept() -> Result<()> {
    // Of the same build, but not the same.
    let site = Site::start("altered-index")?;
    let index = fs::read_to_string(site.folder.join("index.html"))?;
    fs::write(site.folder.join("index.html"), format!("{index}<p>something more</p>"))?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &site.address).await?;
    page.ready().await?;
    page.wait_until(&format!("{OFFLINE} === 'no'")).await?;
    fs::write(site.folder.join("index.html"), index)?;
    page.reload().await?;
    assert_kept_well(&page).await
}

/// Puts something else in the place of a kept file.
async fn spoil_kept(page: &Page, address: &str) -> Result<()> {
    let put = format!(
        "caches.keys().then(names => Promise.all(names.map(async name => {{
            const cache = await caches.open(name);
            if (!await cache.match('{address}')) throw new Error('not kept');
            const type = {{ headers: {{ 'Content-Type': 'text/html' }} }};
            await cache.put('{address}', new Response('<p>Log in first.', type));
        }})))"
    );
    page.eval(&put).await?;
    Ok(())
}

#[tokio::test]
async fn a_build_with_a_spoilt_file_is_never_used_and_mends_itself() -> Result<()> {
    let mut site = Site::start("spoilt")?;
    let page = after_one_visit(&site).await?;
    let mut addresses = vec![site.address.clone()];
    for (start, end) in [
        ("boot-", ".js"),
        ("noseward-", ".js"),
        ("noseward-", ".wasm"),
        ("notebook-", ""),
    ] {
        addresses.push(format!("{}{}", site.address, site.file(start, end)?));
    }
    for address in &addresses {
        spoil_kept(&page, address).await?;
        page.reload().await?;
        page.at("measure").await?;
        assert_kept_well(&page).await?;
    }

    // Without a network it says so in plain words, and mends itself once there is one.
    page.run("localStorage.setItem('noseward/probe-of-test', 'stays')").await?;
    for address in &addresses {
        spoil_kept(&page, address).await?;
        site.stop();
        page.run("location.reload()").await?;
        page.wait_until("document.body?.innerText.includes('needs the network once')")
            .await?;
        site.start_again()?;
        page.reload().await?;
        assert_kept_well(&page).await?;
    }
    page.screenshot("mended").await?;
    let kept = page.eval("localStorage.getItem('noseward/probe-of-test')").await?;
    assert_eq!(kept, "stays");
    Ok(())
}

/// What the browser itself still holds of the page.
const LEFT: &str = "JSON.stringify([
    Object.keys(localStorage).filter(key => key.startsWith('noseward/')),
    await caches.keys(),
    (await navigator.serviceWorker.getRegistrations()).length,
    Object.keys(sessionStorage)])";

#[tokio::test]
async fn everything_can_be_deleted_while_the_later_part_is_dead() -> Result<()> {
    let site = Site::start("delete-later")?;
    let page = after_one_visit(&site).await?;
    let later = site.file("notebook-", "")?;
    spoil_kept(&page, &format!("{}{later}", site.address)).await?;
    site.spoil(&["notebook-"], Fault::Portal);
    page.cdp("Network.clearBrowserCache", json!({})).await?;
    page.reload().await?;
    page.more("#to-lead").await?;
    page.wait_until("document.getElementById('waits')?.innerText.includes('not be')")
        .await?;
    assert_ne!(page.eval(LEFT).await?, "[[],[],0,[]]");
    page.click("#ask-to-delete").await?;
    page.click_again("#delete-now").await?;
    page.wait_until("document.getElementById('passing').innerText.includes('is left')")
        .await?;
    assert_eq!(page.eval(LEFT).await?, "[[],[],0,[]]");
    Ok(())
}

#[tokio::test]
async fn everything_can_be_deleted_while_the_page_is_dead() -> Result<()> {
    let site = Site::start("delete-page")?;
    let page = after_one_visit(&site).await?;
    let module = site.file("noseward-", ".wasm")?;
    spoil_kept(&page, &format!("{}{module}", site.address)).await?;
    site.spoil(&["noseward-"], Fault::Portal);
    page.cdp("Network.clearBrowserCache", json!({})).await?;
    page.run("location.reload()").await?;
    message(&page).await?;
    assert_ne!(page.eval(LEFT).await?, "[[],[],0,[]]");
    page.click("#failed-delete > summary").await?;
    page.click("#failed-delete-now").await?;
    page.wait_until("document.getElementById('failed-deleted').innerText").await?;
    page.screenshot("failed-deleted").await?;
    assert!(page.text("#failed-deleted").await?.contains("Everything"));
    assert_eq!(page.eval(LEFT).await?, "[[],[],0,[]]");
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
    let (address, server) = serve(both, 0)?;
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
    every_place_opens(&page).await?;
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
    site.spoil(&["boot-", "rescue-"], Fault::Missing);
    let page = Page::unopened(1366, 600).await?;
    go(&page, &site.address).await?;
    page.element("#failed").await?;
    let visibility = "getComputedStyle(document.getElementById('failed')).visibility";
    let late = "document.getElementById('failed').getAnimations()[0]";
    let delay = page.eval(&format!("{late}.effect.getTiming().delay")).await?;
    let delay = delay.as_f64().expect("a number");
    assert!(delay > 3000.0 && delay <= 5000.0, "{delay}");
    page.run(&format!("{late}.pause(); {late}.currentTime = {};", delay - 1.0)).await?;
    assert_eq!(page.eval(visibility).await?, "hidden");
    page.run(&format!("{late}.finish()")).await?;
    assert_eq!(page.eval(visibility).await?, "visible");
    page.screenshot("late").await?;
    let words = page.text("#failed").await?;
    for part in ["taking long", "Load the page again", "as one file", "paper"] {
        assert!(words.contains(part), "{part} is not in {words}");
    }
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{told:#?}");
    // The way out needs no script either.
    site.mend();
    page.click("#failed-again").await?;
    page.ready().await
}

/// A link to the page with a rocket, and that rocket's width.
fn with_rocket(site: &Site) -> String {
    let hash = noseward_link::hash(&Example::Gannet.design().into());
    format!("{}#{hash}", site.address)
}

/// The boot script does not run: it is told, and trying again works and keeps the rocket.
async fn tells_and_tries_again(name: &str, fault: Fault) -> Result<()> {
    let site = Site::start(name)?;
    site.spoil(&["boot-"], fault);
    let page = Page::unopened(360, 740).await?;
    let link = with_rocket(&site);
    go(&page, &link).await?;
    let words = message(&page).await?;
    page.screenshot(name).await?;
    for part in ["could not start", "Load the page again", "did not arrive"] {
        assert!(words.contains(part), "{part} is not in {words}");
    }
    assert!(!words.contains("another one, which may block it"), "in no frame: {words}");
    starts_once_mended(&page, &site, &link).await
}

/// "Load the page again" works, and leads back to the rocket.
async fn starts_once_mended(page: &Page, site: &Site, link: &str) -> Result<()> {
    site.mend();
    page.click("#failed-again").await?;
    page.ready().await?;
    assert_eq!(page.eval("location.href").await?, link);
    Ok(())
}

#[tokio::test]
async fn a_boot_script_that_is_missing_is_told_at_once() -> Result<()> {
    tells_and_tries_again("no-boot", Fault::Missing).await
}

#[tokio::test]
async fn a_page_to_log_in_in_place_of_the_boot_script_is_told_at_once() -> Result<()> {
    // The browser's own cache holds it: loading the page again alone would not help.
    tells_and_tries_again("portal-boot", Fault::Portal).await
}

#[tokio::test]
async fn a_module_that_arrived_spoilt_is_asked_for_anew() -> Result<()> {
    let site = Site::start("spoilt-module")?;
    site.spoil(&["noseward-"], Fault::Truncated);
    let page = Page::unopened(1280, 800).await?;
    let link = with_rocket(&site);
    go(&page, &link).await?;
    message(&page).await?;
    starts_once_mended(&page, &site, &link).await
}

#[tokio::test]
async fn a_blocked_boot_script_is_told_at_once() -> Result<()> {
    let site = Site::start("blocked-boot")?;
    let page = Page::unopened(1280, 800).await?;
    page.cdp("Network.enable", json!({})).await?;
    page.cdp("Network.setBlockedURLs", json!({ "urls": ["*/boot-*"] })).await?;
    go(&page, &site.address).await?;
    let words = message(&page).await?;
    assert!(words.contains("was blocked"), "{words}");
    page.cdp("Network.setBlockedURLs", json!({ "urls": [] })).await?;
    page.click("#failed-again").await?;
    page.ready().await
}

#[tokio::test]
async fn a_later_part_that_stays_silent_is_told_and_tried_again() -> Result<()> {
    silent_and_tried_again("silent-later", "notebook-").await
}

#[tokio::test]
async fn a_style_sheet_that_stays_silent_is_told_and_tried_again() -> Result<()> {
    silent_and_tried_again("silent-styles", "places-").await
}

/// A file that comes later and of which nothing comes is given up and told; trying again
/// works.
async fn silent_and_tried_again(name: &str, file: &'static str) -> Result<()> {
    let site = Site::start(name)?;
    site.spoil(&[file], Fault::Silent);
    let page = Page::unopened(1366, 600).await?;
    go(&page, &site.address).await?;
    page.ready().await?;
    page.click("#to-measure").await?;
    page.wait_until("document.querySelector('#waits button')").await?;
    page.screenshot(name).await?;
    // What needs nothing of it goes on.
    page.click("#to-rocket").await?;
    page.type_into("[id='/sections/1/diameter_mm']", "70").await?;
    page.press(Key::Tab).await?;
    page.click("#to-measure").await?;
    page.wait_until("document.querySelector('#waits button')").await?;
    site.mend();
    page.click("#waits button").await?;
    page.is_at("measure").await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('70 mm wide')",
    )
    .await
}

#[tokio::test]
async fn a_browser_that_is_too_old_is_told() -> Result<()> {
    let site = Site::start("old")?;
    // Such a browser finds a word in the script that it does not know, and knows no modules.
    let boot = site.folder.join(site.file("boot-", ".js")?);
    fs::write(&boot, format!("a word unknown;{}", fs::read_to_string(&boot)?))?;
    let page = Page::unopened(1280, 800).await?;
    page.run_before_each_load("delete HTMLScriptElement.prototype.noModule").await?;
    go(&page, &site.address).await?;
    let message = message(&page).await?;
    assert!(message.contains("too old"), "{message}");
    assert!(!page.text("#sheet").await?.contains("squared paper"));
    Ok(())
}

#[tokio::test]
async fn without_scripts_the_page_can_be_read() -> Result<()> {
    let page = Page::unopened(1280, 800).await?;
    page.cdp("Emulation.setScriptExecutionDisabled", json!({ "value": true })).await?;
    page.visit("").await?;
    page.screenshot("no-scripts").await?;
    assert!(page.text("#sheet").await?.contains("scripts"));
    assert!(page.text(".footer").await?.contains("Version, date"));
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
    let (address, _server) = serve(course, 0)?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &address).await?;
    page.element("iframe").await?.enter_frame().await?;
    page.ready().await?;
    page.wait_until(&format!("{OFFLINE} === 'no'")).await?;
    assert_eq!(page.eval("origin").await?, "null");
    assert!(page.in_words().await?.contains("mm"));
    page.screenshot("framed").await?;
    every_place_opens(&page).await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_frame_that_may_load_no_module_says_so_with_a_way_out() -> Result<()> {
    let site = Site::start("framed-barred")?;
    site.spoil(&[""], Fault::OwnOriginOnly);
    let link = with_rocket(&site);
    let frame = format!(
        "<!doctype html><title>A course</title><link rel=\"icon\" href=\"data:\">\
         <iframe sandbox=\"allow-scripts\" width=\"1200\" height=\"600\" \
         src=\"{link}\"></iframe>"
    );
    let course = Router::new().route("/", get(move || async { Html(frame) }));
    let (address, _server) = serve(course, 0)?;
    let page = Page::unopened(1280, 800).await?;
    go(&page, &address).await?;
    page.element("iframe").await?.enter_frame().await?;
    let words = message(&page).await?;
    page.screenshot("framed-barred").await?;
    assert!(words.contains("Open it in a tab of its own"), "{words}");
    assert_eq!(page.value("#failed-address").await?, link);
    assert_eq!(page.eval("document.getElementById('failed-tab').href").await?, link);
    go(&page, &link).await?;
    page.ready().await
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
    page.run("document.getElementById('crash-text').focus()").await?;
    page.run(&format!("setTimeout(() => {{ {CRASH} }})")).await?;
    page.eval("new Promise(resolve => setTimeout(resolve))").await?;
    assert_eq!(page.focused_id().await?, "crash-text", "told once");
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

const LANG: &str = "document.documentElement.lang";

#[tokio::test]
async fn a_language_that_does_not_come_is_told_and_can_be_chosen_again() -> Result<()> {
    let site = Site::start("language")?;
    let page = Page::unopened(1280, 800).await?;
    for (name, fault) in [
        ("missing", Fault::Missing),
        ("portal", Fault::Portal),
        ("half", Fault::Truncated),
    ] {
        site.spoil(&["de-"], fault);
        go(&page, &format!("{}?lang=en", site.address)).await?;
        page.ready().await?;
        page.choose_language("de").await?;
        let notice = "document.getElementById('notice').innerText";
        page.wait_until(&format!("{notice}.includes('Deutsch could not be loaded')"))
            .await?;
        assert_eq!(page.eval(LANG).await?, "en-GB", "{name}");
        let chosen = page.eval("document.getElementById('language').value").await?;
        assert_eq!(chosen, "en", "{name}: the list says what is spoken");
        site.mend();
        page.choose_language("de").await?;
        page.wait_until(&format!("{LANG} === 'de'")).await?;
        // The page is kept by its worker from now on: the next fault needs a new one.
        page.run(
            "return Promise.all([
                caches.keys().then((names) => Promise.all(names.map((name) => caches.delete(name)))),
                navigator.serviceWorker.getRegistrations()
                    .then((all) => Promise.all(all.map((one) => one.unregister()))),
            ]).then(() => localStorage.clear())",
        )
        .await?;
        page.cdp("Network.clearBrowserCache", json!({})).await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_language_that_was_used_once_works_without_a_network() -> Result<()> {
    let mut site = Site::start("language-cut-off")?;
    let page = after_one_visit(&site).await?;
    page.choose_language("ar").await?;
    page.wait_until(&format!("{LANG} === 'ar'")).await?;
    let kept = "caches.keys()
        .then((names) => Promise.all(names.map((name) => caches.open(name))))
        .then((open) => Promise.all(open.map((cache) => cache.keys())))
        .then((keys) => keys.flat().some((key) => key.url.includes('/ar-')))";
    page.wait_until(&format!("await {kept}")).await?;
    let words = page.in_words().await?;
    site.stop();
    page.reload().await?;
    assert_eq!(page.eval(LANG).await?, "ar");
    assert_eq!(page.in_words().await?, words);
    // One that was never used is told, and the page stays as it is.
    page.choose_language("de").await?;
    page.wait_until("document.getElementById('notice').innerText.includes('Deutsch')")
        .await?;
    assert_eq!(page.eval(LANG).await?, "ar");
    Ok(())
}

/// How many files that only leaders need the worker keeps, of the newest build.
const KEPT_FOR_LEADERS: &str = "caches.keys()
    .then((names) => caches.open(names.pop()))
    .then((cache) => cache.keys())
    .then((keys) => keys.filter((key) => key.url.includes('/leaders-')).length)";

#[tokio::test]
async fn what_only_leaders_need_is_loaded_and_kept_where_it_is_used() -> Result<()> {
    let mut site = Site::start("leaders")?;
    let names = fs::read_dir(&site.folder)?.map(|entry| Ok(entry?.file_name()));
    let names = names.collect::<Result<Vec<_>>>()?;
    let is_theirs = |name: &&OsString| name.to_string_lossy().starts_with("leaders-");
    let theirs = names.iter().filter(is_theirs).count();
    assert!(theirs > 0, "{names:?}");
    let page = after_one_visit(&site).await?;
    let asked = site.asked.lock().expect("no request panics").clone();
    assert!(!asked.iter().any(|path| path.contains("/leaders-")), "{asked:#?}");
    assert_eq!(page.eval(KEPT_FOR_LEADERS).await?, 0);

    // Asked for once, though the worker had no part in that.
    page.at(FOR_LEADERS[0]).await?;
    page.wait_until(&format!("await {KEPT_FOR_LEADERS} === {theirs}")).await?;
    let asked = site.asked.lock().expect("no request panics").clone();
    let asked = asked.iter().filter(|path| path.contains("/leaders-")).count();
    assert_eq!(asked, theirs, "from the browser's cache");

    // A newer build keeps its own, without that place.
    let build = "1".repeat(16);
    site.publish(&build_in_dist()?, &build)?;
    go(&page, &site.address).await?;
    page.ready().await?;
    page.wait_until(&format!("!{LINE_HIDDEN}")).await?;
    page.click("#load-new").await?;
    page.wait_until(&format!("{BUILD} === '{build}' && {OFFLINE} === 'ready'")).await?;
    assert_eq!(page.eval(KEPT_FOR_LEADERS).await?, theirs);
    site.stop();
    for place in FOR_LEADERS {
        go(&page, &format!("{}?at={place}", site.address)).await?;
        page.ready().await?;
        page.is_at(place).await?;
        page.wait_until(
            "document.getElementById('place-regions').innerText.length > 100",
        )
        .await?;
    }
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// Where the worker is at work already, and no page says so.
#[tokio::test]
async fn what_only_leaders_need_comes_through_the_worker_and_not_without_a_network()
-> Result<()> {
    let mut site = Site::start("leaders-later")?;
    let page = after_one_visit(&site).await?;
    page.reload().await?;
    site.stop();
    page.more(&format!("#to-{}", FOR_LEADERS[0])).await?;
    page.wait_until("document.querySelector('#waits button')").await?;
    site.start_again()?;
    page.click("#waits button").await?;
    page.wait_until("document.getElementById('place-regions').innerText.length > 100")
        .await?;
    page.wait_until(&format!("await {KEPT_FOR_LEADERS} > 0")).await?;
    Ok(())
}
