//! Nothing is lost and nothing is left: two tabs, data of another version, no room, a
//! module that stops, and deleting everything.

use anyhow::Context;
use noseward_link::{NotebookFile, Opened, hash, notebook_text, open_hash};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::Example;
use serde_json::json;

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const KEPT: &str = "localStorage.getItem('noseward/rocket')";

/// Waits until the rocket that is kept has a name that begins so.
async fn kept_holds(page: &Page, name: &str) -> Result<()> {
    page.keeps_rocket(|record| record.design.name.starts_with(name)).await
}

#[tokio::test]
async fn a_tab_never_overwrites_what_another_has_kept() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "First").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "First").await?;

    page.open_tab("").await?;
    page.type_into("[id='/name']", "Second").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Second").await?;

    // The first tab has heard of it, says so, and leaves it alone.
    page.go_to_tab(0).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('Second')")
        .await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("location.hash.length > 20").await?;
    kept_holds(&page, "Second").await?;
    page.reload().await?;
    assert_eq!(page.value("[id='/name']").await?, "First", "the address holds it");
    assert_eq!(page.value(WIDTH).await?, "70");

    page.click("#keep-this").await?;
    kept_holds(&page, "First").await?;
    page.go_to_tab(1).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('First')")
        .await?;
    page.click("#back-to-mine").await?;
    assert_eq!(page.value("[id='/name']").await?, "First");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// A tab that slept hears nothing; what it finds there before it writes must be enough.
#[tokio::test]
async fn a_tab_that_heard_nothing_looks_before_it_writes() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.keeps_rocket(|record| record.design.sections[1].diameter_mm == Some(70.0))
        .await?;
    // The same tab gets no event for what its own scripts write.
    let other = hash(&Example::Tern.design().into());
    page.run(&format!("localStorage.setItem('noseward/rocket', {other:?});")).await?;
    page.type_into(WIDTH, "72").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('Tern')")
        .await?;
    assert_eq!(page.eval(KEPT).await?, other.as_str());
    Ok(())
}

#[tokio::test]
async fn what_a_newer_version_kept_is_left_alone() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let newer = r#"{"noseward":"rocket","version":99,"design":{"rooms":3}}"#;
    page.run(&format!("localStorage.setItem('noseward/rocket', {newer:?});")).await?;
    page.goto("").await?;
    assert!(page.text("#notice").await?.contains("cannot be read here"));
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("location.hash.length > 20").await?;
    assert_eq!(page.eval(KEPT).await?, newer);
    let folder = page.allow_downloads("newer").await?;
    page.click("#save-kept").await?;
    let saved = page.downloaded(&folder.join("noseward-kept.json")).await?;
    assert_eq!(String::from_utf8(saved).unwrap(), newer);
    Ok(())
}

/// Fills the room that the browser gives the page, to the last letter.
const FILL: &str = "for (let size = 2 ** 24; size >= 1; size /= 2) {
        try { localStorage.setItem('filler' + size, 'x'.repeat(size)); } catch {}
    }";
const MAKE_ROOM: &str = "for (const key of Object.keys(localStorage)) {
        if (key.startsWith('filler')) localStorage.removeItem(key);
    }";
const NOTICE: &str = "document.getElementById('notice').innerText";
/// The bytes of everything that is kept in places for notebooks, as a text: words stand in it
/// as they are.
const NOTEBOOKS: &str = "Object.keys(localStorage).sort().filter(key => \
    key.startsWith('noseward/notebook/')).map(key => atob(localStorage.getItem(key).slice(3)\
    .replaceAll('-', '+').replaceAll('_', '/')))";

/// Writes into the open notebook, which begins a trial.
async fn write_in_the_notebook(page: &Page, text: &str) -> Result<()> {
    page.at("predict").await?;
    page.type_into("[id='nb:draft_because']", text).await?;
    page.press(Key::Tab).await
}

/// The name under which the open notebook is saved.
async fn notebook_file(page: &Page, ending: &str) -> Result<String> {
    let label = page.label().await?.to_lowercase().replace(' ', "-");
    Ok(format!("noseward-notebook-{label}{ending}"))
}

#[tokio::test]
async fn when_the_room_runs_out_the_page_says_so_and_tries_again() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    write_in_the_notebook(&page, "first").await?;
    page.wait_until(&format!("{NOTEBOOKS}[0]?.includes('first')")).await?;
    page.at("rocket").await?;
    page.run(FILL).await?;
    page.type_into("[id='/name']", "Too long for the room that is left").await?;
    page.press(Key::Tab).await?;
    page.wait_until(&format!("{NOTICE}.includes('not kept')")).await?;
    page.click("#copy-link-instead").await?;
    // The page goes on, and the address holds the rocket.
    page.type_into(WIDTH, "72").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('72 mm')")
        .await?;
    let address = page.eval("location.hash").await?;
    let Opened::Record(record) = open_hash(address.as_str().unwrap()) else {
        panic!("the address holds no rocket: {address}")
    };
    assert_eq!(record.design.sections[1].diameter_mm, Some(72.0));
    page.at("predict").await?;
    page.type_into("[id='nb:draft_because']", "nor is there any room for this reason")
        .await?;
    page.press(Key::Tab).await?;
    // At the notebook too, with its file.
    page.wait_until("document.querySelector('#save-instead, #nb-save-instead')").await?;
    let folder = page.allow_downloads("no-room").await?;
    page.click("#save-instead, #nb-save-instead").await?;
    let saved =
        page.downloaded(&folder.join(notebook_file(&page, ".json").await?)).await?;
    assert!(String::from_utf8(saved).unwrap().contains("nor is there any room"));
    // Nothing but time has to pass.
    page.run(MAKE_ROOM).await?;
    page.wait_until(&format!("{NOTEBOOKS}[0]?.includes('nor is there any room')"))
        .await?;
    kept_holds(&page, "Too long for the room").await?;
    page.wait_until("!document.querySelector('#save-instead, #nb-save-instead')").await?;
    page.at("rocket").await?;
    page.wait_until("document.getElementById('keeping').innerText.startsWith('Kept')")
        .await?;
    page.goto("").await?;
    assert_eq!(page.value("[id='/name']").await?, "Too long for the room that is left");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn what_is_kept_is_there_where_there_is_no_more_room() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Ours").await?;
    page.run(FILL).await?;
    page.goto("").await?;
    assert_eq!(page.value("[id='/name']").await?, "Ours");
    assert!(page.text("#notice").await?.contains("not kept"));
    // A change that needs no more room than there was is kept.
    page.type_into("[id='/name']", "Tern").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Tern").await?;
    page.wait_until(&format!("!{NOTICE}.includes('not kept')")).await?;
    Ok(())
}

/// Types into the open notebook of a tab as soon as another tab says so, and leaves the field.
const TYPE_TOGETHER: &str = "const channel = new BroadcastChannel('together');
    window.together = () => {
        const field = document.getElementById('nb:draft_because');
        field.value = TEXT;
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        field.dispatchEvent(new Event('change', { bubbles: true }));
    };
    window.channel = channel;
    channel.onmessage = window.together;";

#[tokio::test]
async fn two_tabs_that_write_at_the_same_moment_lose_nothing() -> Result<()> {
    for round in 0..3 {
        let page = Page::open(1366, 600).await?;
        write_in_the_notebook(&page, "before").await?;
        page.wait_until(&format!("{NOTEBOOKS}[0]?.includes('before')")).await?;
        page.open_tab("").await?;
        page.at("predict").await?;
        page.run(&TYPE_TOGETHER.replace("TEXT", "'from the second'")).await?;
        page.go_to_tab(0).await?;
        page.run(&TYPE_TOGETHER.replace("TEXT", "'from the first'")).await?;
        page.run("window.channel.postMessage(''); window.together();").await?;
        for text in ["from the first", "from the second"] {
            let kept = format!("{NOTEBOOKS}.some(kept => kept.includes('{text}'))");
            let waited = page.wait_until(&kept).await;
            waited.with_context(|| format!("round {round}: lost {text}"))?;
        }
        // Nor later, when both have heard of each other and are left.
        page.goto("").await?;
        page.go_to_tab(1).await?;
        page.goto("").await?;
        let kept = page.eval(NOTEBOOKS).await?.to_string();
        for text in ["from the first", "from the second"] {
            assert!(kept.contains(text), "round {round}: lost {text}");
        }
    }
    Ok(())
}

/// What the browser tells the tab whose text another one has overwritten without seeing it,
/// or that has itself overwritten what it had not seen.
#[tokio::test]
async fn a_tab_that_hears_of_a_write_that_did_not_see_its_own_keeps_both() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    write_in_the_notebook(&page, "mine").await?;
    page.at("rocket").await?;
    page.type_into("[id='/name']", "Mine").await?;
    page.press(Key::Tab).await?;
    page.wait_until(&format!("{NOTEBOOKS}[0]?.includes('mine')")).await?;
    kept_holds(&page, "Mine").await?;
    let mine = page.keeps_notebook(|_| true).await?;
    let with = |because: &str| {
        let mut notebook = mine.clone();
        let trial = notebook.in_hand_mut().expect("it was begun");
        because.clone_into(&mut trial.draft.because);
        json!(notebook_text(&NotebookFile { notebook, rocket: None })).to_string()
    };
    let tell = "dispatchEvent(new StorageEvent('storage', {
            key: 'noseward/notebook/' + localStorage.getItem('noseward/notebook'),
            storageArea: localStorage, oldValue: OLD, newValue: NEW,
        }));
        dispatchEvent(new StorageEvent('storage', {
            key: 'noseward/rocket', storageArea: localStorage,
            oldValue: BEFORE, newValue: THEIRS,
        }));";
    let spelt = |example: Example| json!(hash(&example.design().into())).to_string();
    let tell = tell
        .replace("OLD", &with("before"))
        .replace("NEW", &with("theirs"))
        .replace("BEFORE", &spelt(Example::Gannet))
        .replace("THEIRS", &spelt(Example::Tern));
    page.run(&tell).await?;
    page.wait_until(&format!("{NOTICE}.includes('Another tab has written')")).await?;
    page.wait_until(&format!("{NOTEBOOKS}.length === 2")).await?;
    let kept = page.eval(NOTEBOOKS).await?;
    assert!(kept[0].as_str().unwrap().contains("theirs"), "it stays where it was");
    assert!(kept[1].as_str().unwrap().contains("mine"));
    // The rocket of the other tab is kept and offered; ours is on the page.
    assert!(page.text("#notice").await?.contains("Another rocket, Tern"));
    kept_holds(&page, "Tern").await?;
    assert_eq!(page.value("[id='/name']").await?, "Mine");
    Ok(())
}

/// What the database holds of a key, as soon as all that was begun before is done.
fn copied(key: &str) -> String {
    format!(
        "new Promise((resolve) => {{
            indexedDB.open('noseward').onsuccess = (event) => {{
                const database = event.target.result;
                if (!database.objectStoreNames.length) return resolve('');
                const texts = database.transaction('kept').objectStore('kept');
                texts.get({key:?}).onsuccess = (event) => {{
                    database.close();
                    resolve(event.target.result?.text ?? '');
                }};
            }};
        }})"
    )
}

/// Chromium puts local storage on the disk many seconds later.
#[tokio::test]
async fn a_browser_that_is_killed_loses_nothing() -> Result<()> {
    let mut page = Page::open(1366, 600).await?;
    write_in_the_notebook(&page, "old reason").await?;
    page.type_into("[id='nb:draft_because']", "written last").await?;
    page.press(Key::Tab).await?;
    page.at("rocket").await?;
    page.type_into("[id='/name']", "Killed").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Killed").await?;
    page.wait_until(&format!(
        "(await {}) === localStorage.getItem('noseward/rocket')",
        copied("noseward/rocket")
    ))
    .await?;
    page.click("[id='units:inch']").await?;
    page.wait_until(&format!("(await {}).includes('inch')", copied("noseward/view")))
        .await?;
    page.kill_the_browser().await?;
    page.set_viewport(1366, 600).await?;
    page.goto("").await?;
    assert_eq!(page.value("[id='/name']").await?, "Killed");
    let inches = "document.getElementById('units:inch').ariaPressed";
    assert_eq!(page.eval(inches).await?, "true");
    page.at("predict").await?;
    assert_eq!(page.value("[id='nb:draft_because']").await?, "written last");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// The older of the two is never brought back, nor what was deleted.
#[tokio::test]
async fn only_what_is_newer_is_brought_back() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "First").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "First").await?;
    page.wait_until(&format!(
        "(await {}) === localStorage.getItem('noseward/rocket')",
        copied("noseward/rocket")
    ))
    .await?;
    // An earlier version of the page writes without a stamp.
    let other = hash(&Example::Tern.design().into());
    page.run(&format!("localStorage.setItem('noseward/rocket', {other:?});")).await?;
    page.goto("").await?;
    assert_eq!(page.value("[id='/name']").await?, "Tern");
    // Local storage as it was before: what is kept since then comes back, with what was
    // deleted since then gone.
    page.run(
        "localStorage.setItem('noseward/at', 1);
         localStorage.setItem('noseward/notebook/7', 'deleted since');
         await new Promise((resolve) => {
            indexedDB.open('noseward').onsuccess = (event) => {
                const database = event.target.result;
                const transaction = database.transaction('kept', 'readwrite');
                const gone = { text: null, at: 2 };
                transaction.objectStore('kept').put(gone, 'noseward/notebook/7');
                transaction.oncomplete = () => { database.close(); resolve(); };
            };
         });",
    )
    .await?;
    page.goto("").await?;
    assert_eq!(page.value("[id='/name']").await?, "First");
    assert_eq!(
        page.eval("localStorage.getItem('noseward/notebook/7')").await?,
        json!(null)
    );
    Ok(())
}

/// The browser's own lists, not the page's word, say that nothing is left.
#[tokio::test]
async fn everything_is_deleted_when_asked_and_not_before() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.press(Key::Tab).await?;
    page.click("[id='units:inch']").await?;
    kept_holds(&page, "Ours").await?;
    page.wait_until("document.documentElement.dataset.offline === 'ready'").await?;
    page.wait_until("(await indexedDB.databases()).length === 1").await?;
    // A second tab must not bring it back.
    page.open_tab("").await?;
    page.go_to_tab(0).await?;
    page.run("localStorage.setItem('another-page', 'stays');").await?;

    page.at("lead").await?;
    page.click("#ask-to-delete").await?;
    assert_eq!(page.focused_id().await?, "delete-now");
    page.click("#keep-all").await?;
    kept_holds(&page, "Ours").await?;
    page.click("#ask-to-delete").await?;
    page.click_again("#delete-now").await?;
    page.wait_until("document.getElementById('passing').innerText.includes('is left')")
        .await?;
    let left = "JSON.stringify([Object.keys(localStorage), await caches.keys(), \
                (await navigator.serviceWorker.getRegistrations()).length, \
                Object.keys(sessionStorage), document.cookie, \
                await indexedDB.databases()])";
    assert_eq!(page.eval(left).await?, r#"[["another-page"],[],0,[],"",[]]"#);
    assert_eq!(page.eval("location.hash").await?, "");
    page.run("document.getElementById('to-rocket').click();").await?;
    page.is_at("rocket").await?;
    assert_eq!(page.value("[id='/name']").await?, "Puffin");

    page.go_to_tab(1).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('deleted')")
        .await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("location.hash.length > 20").await?;
    assert_eq!(page.eval(KEPT).await?, serde_json::Value::Null);
    page.click("#keep-this").await?;
    kept_holds(&page, "Ours").await?;
    Ok(())
}

/// Makes the running module read outside its memory: what a fault in it would do.
const STOP: &str = "return import(document.querySelector('link[rel=modulepreload]').href)
    .then(module => module.default())
    .then(exports => new Promise(done => {
        addEventListener('error', () => setTimeout(done, 50), { once: true });
        setTimeout(() => exports.__wbindgen_free(0x7ffffff0, 16, 4), 0);
    }));";

#[tokio::test]
async fn a_module_that_stops_leaves_the_rocket_behind() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.type_into(WIDTH, "71.5").await?;
    assert_eq!(page.eval("document.getElementById('crash').hidden").await?, true);
    page.run(STOP).await?;
    page.wait_until("!document.getElementById('crash').hidden").await?;
    page.screenshot("stopped").await?;
    let mut expected = Example::Puffin.design();
    expected.name = "Ours".into();
    expected.sections[1].diameter_mm = Some(71.5);
    let expected = format!("{}#{}", page.address(), hash(&expected.into()));
    assert_eq!(page.value("#crash-text").await?, expected);
    // The link in the message leads back to the rocket as it was, in a page that works.
    page.click("#crash-link").await?;
    page.wait_until("document.getElementById('crash').hidden").await?;
    page.ready().await?;
    assert_eq!(page.value("[id='/name']").await?, "Ours");
    assert_eq!(page.value(WIDTH).await?, "71.5");
    page.type_into(WIDTH, "72").await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('72 mm')")
        .await
}

#[tokio::test]
async fn a_module_that_stops_leaves_the_notebook_behind() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    write_in_the_notebook(&page, "it was kept").await?;
    page.wait_until(&format!("{NOTEBOOKS}[0]?.includes('it was kept')")).await?;
    let (label, file) = (page.label().await?, notebook_file(&page, ".txt").await?);
    // From local storage, and, where nothing could be kept since, from the page.
    for (name, typed) in [("kept", None), ("not-kept", Some("it was not kept"))] {
        if let Some(typed) = typed {
            page.run(FILL).await?;
            page.type_into("[id='nb:draft_because']", &typed.repeat(3)).await?;
            page.press(Key::Tab).await?;
            page.wait_until("document.querySelector('#save-instead, #nb-save-instead')")
                .await?;
        }
        page.run(STOP).await?;
        page.wait_until("!document.getElementById('crash').hidden").await?;
        page.screenshot(&format!("stopped-{name}")).await?;
        assert!(page.text("#crash").await?.contains(&label));
        let folder = page.allow_downloads(&format!("stopped-{name}")).await?;
        page.click("#crash > p a[download]").await?;
        let saved = page.downloaded(&folder.join(&file)).await?;
        let saved = String::from_utf8(saved).unwrap();
        let file = noseward_link::open_notebook_hash(&saved).expect("a notebook");
        let notebook = file.expect("it can be opened").notebook;
        let because = &notebook.trials()[0].draft.because;
        assert!(because.contains(typed.unwrap_or("it was kept")), "{notebook:?}");
        // Nobody writes into a page that keeps nothing any more.
        let field = page.element("[id='nb:draft_because']").await?;
        assert!(field.send_keys("lost").await.is_err(), "the field takes keys");
        let open = "[...document.querySelectorAll('input, button, select, textarea')]\
            .filter(control => !control.closest('#crash') && !control.disabled && \
            !control.closest('[inert]')).map(control => control.id)";
        assert_eq!(page.eval(open).await?, json!([]));
        page.goto("").await?;
        page.at("predict").await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_fresh_start_is_a_way_out_of_a_rocket_that_breaks_the_page() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Ours").await?;
    page.visit_file("?afresh").await?;
    page.ready().await?;
    assert_eq!(page.value("[id='/name']").await?, "Puffin");
    assert!(page.text("#notice").await?.contains("Ours"), "still kept");
    page.wait_until("location.search === ''").await?;
    page.click("#back-to-mine").await?;
    assert_eq!(page.value("[id='/name']").await?, "Ours");
    Ok(())
}

#[tokio::test]
async fn this_computer_is_checked_with_everything_barred() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    let barred = "Object.defineProperty(window, 'localStorage', {
            get() { throw new DOMException('barred', 'SecurityError'); } });
        Object.defineProperty(navigator, 'serviceWorker', { value: undefined });
        Object.defineProperty(navigator, 'clipboard', { value: {
            writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError'))
        } });
        window.print = () => {};
        HTMLAnchorElement.prototype.click = () => {};
        HTMLInputElement.prototype.click = () => {};";
    page.run_before_each_load(barred).await?;
    page.goto("").await?;
    page.at("lead").await?;
    page.click("#computer > summary").await?;
    page.click("[id='try:copying']").await?;
    page.wait_until("!document.getElementById('try:copying')").await?;
    for way in ["saving", "opening", "printing"] {
        page.click(&format!("[id='try:{way}']")).await?;
        page.click(&format!("[id='barred:{way}']")).await?;
        page.wait_until(&format!("!document.getElementById('barred:{way}')")).await?;
    }
    page.screenshot("computer-barred").await?;
    let check = page.text("#check").await?;
    assert_eq!(check.matches("Barred").count(), 6, "{check}");
    // The way that still works needs nothing but eyes and a pencil.
    page.at("hand-in").await?;
    page.wait_until("document.querySelectorAll('#share li').length > 0").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
