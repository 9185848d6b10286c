//! Measurements of the page, printed and not judged: `cargo run -- bench`.
//!
//! A throttled processor stands for the machines that schools have.

use noseward_page_tests::{Key, Page, Result, TypingData};

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

#[tokio::test]
#[ignore = "a measurement"]
async fn bench_keystroke_to_paint() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    page.throttle(THROTTLE).await?;
    page.run(RECORD_KEYSTROKES).await?;
    page.click("input[inputmode=decimal], input[type=number]").await?;
    for count in 1..=KEYSTROKES {
        let typed: TypingData =
            if count % 2 == 1 { "1".into() } else { Key::Backspace.into() };
        page.press(typed).await?;
        page.wait_until(&format!("keystrokes.length >= {count}")).await?;
    }
    let times = serde_json::from_value(page.eval("keystrokes").await?)?;
    println!("{}", report("keystroke to paint", times));
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

#[tokio::test]
#[ignore = "a measurement"]
async fn bench_memory() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    page.cdp("HeapProfiler.collectGarbage", serde_json::json!({})).await?;
    let used = page.cdp("Runtime.getHeapUsage", serde_json::json!({})).await?;
    let part = |name: &str| used[name].as_f64().unwrap_or_default() / 1e6;
    println!(
        "memory after the first drawing: {:.1} MB of scripts, {:.1} MB of buffers",
        part("usedSize"),
        part("backingStorageSize")
    );
    Ok(())
}

fn report(what: &str, mut times: Vec<f64>) -> String {
    times.sort_by(f64::total_cmp);
    let at = |percent: usize| times[(times.len() - 1) * percent / 100];
    format!(
        "{what}, {THROTTLE} x throttle, {} times: median {:.1} ms, 98 % {:.1} ms, \
         slowest {:.1} ms",
        times.len(),
        at(50),
        at(98),
        at(100)
    )
}
