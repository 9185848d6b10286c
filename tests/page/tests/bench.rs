//! Measurements of the page, printed and not judged: `cargo run -- bench`.
//!
//! A throttled processor stands for the machines that schools have.

use noseward_link::hash;
use noseward_page_tests::{Key, Page, Result, TypingData};
use noseward_stability::Example;

const THROTTLE: f64 = 6.0;
const STARTS: usize = 10;
const KEYSTROKES: usize = 100;

/// Milliseconds from an event's own time stamp to the first task after the frame that
/// shows its effect.
const RECORD_KEYSTROKES: &str = "
    window.keystrokes = [];
    document.addEventListener('input', event => {
        const begun = event.timeStamp;
        requestAnimationFrame(() => {
            const painted = new MessageChannel();
            painted.port1.onmessage = () =>
                window.keystrokes.push(performance.now() - begun);
            painted.port2.postMessage('');
        });
    }, true);";

#[tokio::test]
#[ignore = "a measurement"]
async fn bench_first_drawing() -> Result<()> {
    let page = Page::unopened(1280, 800).await?;
    page.throttle(THROTTLE).await?;
    let mut times = Vec::new();
    for _ in 0..STARTS {
        page.cdp("Network.clearBrowserCache", serde_json::json!({})).await?;
        page.visit("").await?;
        // The moment in which the page says that it is ready, not the one in which
        // we learn of it.
        let time = page
            .run(
                "const root = document.documentElement;
                 const now = () => performance.now();
                 if (root.dataset.state === 'ready')
                     return performance.getEntriesByName('ready')[0]?.startTime ?? now();
                 return new Promise(resolve => new MutationObserver(
                     () => root.dataset.state === 'ready' && resolve(now())
                 ).observe(root, { attributes: true }));",
            )
            .await?;
        times.extend(time.as_f64());
    }
    println!("{}", report("load to first drawing", times));
    Ok(())
}

/// A page that only shows the number that is typed.
const BARE: &str = "
    const [number, shown] = ['input', 'p'].map(name => document.createElement(name));
    number.id = 'number';
    document.body.replaceChildren(number, shown);
    number.addEventListener('input', () => { shown.textContent = number.value; });";

/// The largest example, beside a bare page in the same run: a key here, a key there, so that
/// whatever else the machine does falls on both.
#[tokio::test]
#[ignore = "a measurement"]
async fn bench_keystroke_to_paint() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    let link = hash(&Example::Razorbill.design().into());
    page.goto(&format!("#{link}")).await?;
    let bare = Page::unopened(1280, 800).await?;
    bare.run(BARE).await?;
    for (page, field) in [(&page, "[id='/sections/1/diameter_mm']"), (&bare, "#number")] {
        page.throttle(THROTTLE).await?;
        page.run(RECORD_KEYSTROKES).await?;
        page.click(field).await?;
        page.press(Key::End).await?;
    }
    for count in 1..=KEYSTROKES {
        for page in [&page, &bare] {
            let typed: TypingData =
                if count % 2 == 1 { "1".into() } else { Key::Backspace.into() };
            page.press(typed).await?;
            page.wait_until(&format!("keystrokes.length >= {count}")).await?;
        }
    }
    let mut times = Vec::new();
    for page in [&page, &bare] {
        let found: Vec<f64> = serde_json::from_value(page.eval("keystrokes").await?)?;
        times.push(found);
    }
    for percent in [50, 95] {
        let [ours, theirs] = [at(percent, &mut times[0]), at(percent, &mut times[1])];
        println!(
            "keystroke to paint, {percent} %: {ours:.1} ms, a bare page {theirs:.1} ms, \
             {:.1} times",
            ours / theirs
        );
    }
    println!("{}", report("keystroke to paint", times.swap_remove(0)));
    Ok(())
}

#[tokio::test]
#[ignore = "a measurement"]
async fn bench_opening_a_place() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    page.at("measure").await?;
    page.throttle(THROTTLE).await?;
    let mut times = Vec::new();
    for place in ["rocket", "measure", "predict", "swing", "compare", "why"].repeat(5) {
        let time = page
            .run(&format!(
                "return new Promise(resolve => {{
                    const begun = performance.now();
                    document.getElementById('to-{place}').click();
                    requestAnimationFrame(() => {{
                        const painted = new MessageChannel();
                        painted.port1.onmessage = () => resolve(performance.now() - begun);
                        painted.port2.postMessage('');
                    }});
                }});"
            ))
            .await?;
        times.extend(time.as_f64());
    }
    println!("{}", report("opening a place", times));
    Ok(())
}

/// Memory when the page has opened, and after what a quick group does in an hour: eight trials
/// with their readings, a hundred keys in the form, all places, and as many drawings.
#[tokio::test]
#[ignore = "a measurement"]
async fn bench_memory() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    page.at("measure").await?;
    println!("{}", memory("after opening", &page).await?);
    for trial in 1..=8 {
        page.at("rocket").await?;
        for _ in 0..12 {
            let span = format!("{}", 40 + 3 * trial);
            page.type_into("[id='/fins/0/planform/four_sided/span_mm']", &span).await?;
        }
        page.at("measure").await?;
        for (point, mm) in [("centre_of_mass", 130), ("centre_of_pressure", 170)] {
            for reading in 1..=3 {
                let field = format!("[id='nb:{point}_reading_{reading}_mm']");
                page.type_into(&field, &format!("{}", mm + reading + trial)).await?;
            }
        }
        page.at("predict").await?;
        page.click("[id='nb-outcome:0']").await?;
        page.type_into("[id='nb:draft_because']", "larger fins").await?;
        page.click("#nb-lock").await?;
        for place in ["swing", "compare", "why", "conclude", "hand-in"] {
            page.at(place).await?;
        }
    }
    page.at("rocket").await?;
    println!("{}", memory("after eight trials", &page).await?);
    Ok(())
}

/// What the page holds, once what it does not need is gone.
async fn memory(when: &str, page: &Page) -> Result<String> {
    page.cdp("HeapProfiler.collectGarbage", serde_json::json!({})).await?;
    let used = page.cdp("Runtime.getHeapUsage", serde_json::json!({})).await?;
    let part = |name: &str| used[name].as_f64().unwrap_or_default() / 1e6;
    let (scripts, document) = (part("usedSize"), part("embedderHeapUsedSize"));
    // The heap does not count the module's own.
    let module = "(await import('./noseward.js')).initSync().memory.buffer.byteLength";
    let module = page.eval(module).await?.as_f64().unwrap_or_default() / 1e6;
    Ok(format!(
        "memory {when}: {:.1} MB, of which scripts {scripts:.1}, the document {document:.1}, \
         the module {module:.1}",
        scripts + document + module
    ))
}

fn at(percent: usize, times: &mut [f64]) -> f64 {
    times.sort_by(f64::total_cmp);
    times[(times.len() - 1) * percent / 100]
}

fn report(what: &str, mut times: Vec<f64>) -> String {
    let [median, most, slowest] = [50, 98, 100].map(|percent| at(percent, &mut times));
    format!(
        "{what}, {THROTTLE} x throttle, {} times: median {median:.1} ms, 98 % {most:.1} ms, \
         slowest {slowest:.1} ms",
        times.len(),
    )
}
