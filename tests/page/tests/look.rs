//! How it looks: what is in view, what fits, what is printed, what assistive technology
//! finds. The pictures are for people to look at.

use noseward_page_tests::{Page, Result};
use noseward_stability::{Example, Weight, evaluate};

/// Nothing reaches beyond the right edge, and no text is cut off in a control.
async fn assert_fits(page: &Page, name: &str) -> Result<()> {
    let wide = page
        .eval(
            "document.documentElement.scrollWidth - document.documentElement.clientWidth",
        )
        .await?;
    assert_eq!(wide, 0, "{name} scrolls sideways");
    let cut = page
        .eval(
            "[...document.querySelectorAll('button, label, h3, h4, p, td, th, #strip')]
                .filter(e => e.offsetParent && !e.closest('.visually-hidden')
                    && !e.classList.contains('visually-hidden')
                    && e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0)
                .map(e => e.outerHTML.slice(0, 120))",
        )
        .await?;
    assert_eq!(cut, serde_json::json!([]), "{name}");
    Ok(())
}

async fn assert_no_violation(page: &Page, name: &str) -> Result<()> {
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{name}: {told:#?}");
    Ok(())
}

#[tokio::test]
async fn the_whole_rocket_and_its_strip_are_in_view_on_a_school_screen() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for (width, height) in
        [(1366, 600), (1242, 600), (1180, 600), (1093, 490), (1024, 600), (1280, 720)]
    {
        page.set_viewport(width, height).await?;
        page.wait_until(&format!("innerWidth === {width} && innerHeight === {height}"))
            .await?;
        let bottom = page
            .eval("document.getElementById('strip').getBoundingClientRect().bottom")
            .await?;
        let bottom = bottom.as_f64().unwrap_or(f64::INFINITY);
        assert!(
            bottom <= f64::from(height),
            "{width}x{height}: the strip ends at {bottom}"
        );
        assert_fits(&page, &format!("{width}x{height}")).await?;
        // Whatever the strip says, it keeps its height, so that the drawing never jumps,
        // and nothing of it is cut off.
        let place = "[id='/weights/0/position_mm']";
        let mut heights = Vec::new();
        for (typed, told) in [("45", "elf-righting"), ("999", "last rocket")] {
            page.type_into(place, typed).await?;
            page.wait_until(&format!(
                "document.getElementById('strip').innerText.includes('{told}')"
            ))
            .await?;
            let strip = page
                .eval(
                    "(s => [s.offsetHeight, s.scrollHeight - s.clientHeight])
                     (document.getElementById('strip'))",
                )
                .await?;
            assert_eq!(strip[1], 0, "{width}: {told} does not fit");
            heights.push(strip[0].clone());
        }
        assert_eq!(heights[0], heights[1], "{width}x{height}");
    }
    Ok(())
}

/// The drawing stays in view while the steps are scrolled and never lies over anything.
#[tokio::test]
async fn the_drawing_stays_beside_the_steps() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.eval("document.getElementById('weights-title').scrollIntoView()").await?;
    let strip = page
        .eval("document.getElementById('strip').getBoundingClientRect().bottom")
        .await?;
    let bottom = strip.as_f64().unwrap_or(0.0);
    assert!((300.0..=600.0).contains(&bottom), "the strip ends at {bottom}");
    page.click("#go-why").await?;
    let apart = page
        .eval(
            "document.querySelector('.readings').getBoundingClientRect().top
             - document.getElementById('strip').getBoundingClientRect().bottom",
        )
        .await?;
    assert!(apart.as_f64().is_some_and(|px| px >= 0.0), "{apart}");
    page.screenshot("why").await?;
    Ok(())
}

/// On a telephone the reading stays with the measurements, and covers nothing else.
#[tokio::test]
async fn the_reading_goes_along_as_far_as_the_measurements() -> Result<()> {
    let page = Page::open(360, 740).await?;
    let bottom = "document.getElementById('strip').getBoundingClientRect().bottom";
    page.eval("document.getElementById('weights-title').scrollIntoView()").await?;
    page.wait_until(&format!("({bottom}) > 40")).await?;
    page.at_the_swing().await?;
    page.wait_until(&format!("({bottom}) <= 0")).await?;
    page.at_the_notebook().await?;
    page.wait_until(&format!("({bottom}) <= 0")).await?;
    page.screenshot("telephone-notebook").await?;
    page.eval("document.getElementById('weights-title').scrollIntoView()").await?;
    page.wait_until(&format!("({bottom}) > 40")).await
}

#[tokio::test]
async fn it_fits_every_width_in_every_state() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for (width, height) in [(1366, 600), (1000, 700), (768, 1024), (360, 740), (320, 568)]
    {
        page.set_viewport(width, height).await?;
        for units in ["inch", "metric"] {
            page.click(&format!("[id='units:{units}']")).await?;
            for show in ["all", "few"] {
                page.click(&format!("[id='show:{show}']")).await?;
                let name = format!("{width}x{height}-{units}-{show}");
                assert_fits(&page, &name).await?;
                if width != 1000 && units == "metric" {
                    page.eval("scrollTo(0, 0)").await?;
                    page.screenshot(&format!("look-{name}")).await?;
                }
            }
        }
    }
    Ok(())
}

#[tokio::test]
async fn axe_finds_no_fault_in_any_state() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.click("[id='show:all']").await?;
    assert_no_violation(&page, "all measurements").await?;
    page.type_into("[id='/sections/1/diameter_mm']", "1,234").await?;
    page.type_into("[id='/weights/0/position_mm']", "999").await?;
    page.wait_until("document.querySelector('#faults li')").await?;
    assert_no_violation(&page, "faults").await?;
    page.click(".menu summary").await?;
    assert_no_violation(&page, "the menu of new rockets").await?;
    page.screenshot("menu-new").await?;
    page.click(".menu:nth-of-type(2) summary").await?;
    assert_no_violation(&page, "the menu to open").await?;
    page.screenshot("menu-open").await?;
    page.set_viewport(360, 740).await?;
    assert_no_violation(&page, "narrow").await?;
    page.click(".readings__group details:nth-of-type(2) summary").await?;
    assert_no_violation(&page, "as a table").await?;
    Ok(())
}

#[tokio::test]
async fn the_drawing_is_named_and_described() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let svg = page
        .eval(
            "(() => { const svg = document.querySelector('#sheet svg');
                return [svg.getAttribute('role'), svg.getAttribute('aria-label'),
                    document.getElementById(svg.getAttribute('aria-describedby')).innerText]; })()",
        )
        .await?;
    assert_eq!(svg[0], "img");
    assert_eq!(svg[1], "Puffin, drawn to scale with its two points");
    let words = svg[2].as_str().unwrap_or_default();
    for said in
        ["140 mm", "202 mm", "62 mm apart", "The centre of mass is nearer the nose"]
    {
        assert!(words.contains(said), "{said} is not in {words}");
    }
    Ok(())
}

#[tokio::test]
async fn the_result_is_spoken_once_typing_pauses() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/weights/0/mass_g']", "40").await?;
    let mut design = Example::Puffin.design();
    design.weights[0].mass_g = 40.0;
    let figures = evaluate(&design).figures.expect("it can be drawn");
    let said = format!("Separation {:.0} mm.", figures.least_separation_m * 1000.0);
    page.wait_until(&format!(
        "document.getElementById('said').innerText.startsWith('{said}')"
    ))
    .await?;
    Ok(())
}

/// Steps, buttons and notices stay off the paper; drawing, words and table are on it.
#[tokio::test]
async fn what_is_printed() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.print("print").await?;
    page.eval("dispatchEvent(new Event('beforeprint'))").await?;
    page.cdp("Emulation.setEmulatedMedia", serde_json::json!({ "media": "print" }))
        .await?;
    let shown = "['.steps', '.tools', '#sheet svg', '#strip', '#in-words', '#as-table table',
        '.governing'].map(css => document.querySelector(css).getClientRects().length > 0)";
    assert_eq!(
        page.eval(shown).await?,
        serde_json::json!([false, false, true, true, true, true, true])
    );
    Ok(())
}

/// The worst case for the drawing: twelve weights in a row, four sets of fins.
#[tokio::test]
async fn a_crowded_rocket_can_be_read() -> Result<()> {
    let mut design = Example::Puffin.design();
    design.weights = (1..=12)
        .map(|i| Weight {
            label: format!("steel nut {i}"),
            mass_g: 3.0,
            position_mm: 40.0 + 6.0 * f64::from(i),
        })
        .collect();
    let mut set = design.fins[0].clone();
    for start_mm in [30.0, 120.0, 180.0] {
        set.start_mm = start_mm;
        set.count = 3;
        design.fins.push(set.clone());
    }
    let page = Page::unopened(1366, 600).await?;
    page.goto(&noseward_link::hash(&design.into())).await?;
    page.screenshot("crowded").await?;
    assert_fits(&page, "crowded").await?;
    let overlaps = page
        .eval(
            "(() => { const boxes = [...document.querySelectorAll('#sheet text')]
                .map(t => [t.textContent, t.getBoundingClientRect()]);
              const found = [];
              for (const [i, [a, p]] of boxes.entries())
                for (const [b, q] of boxes.slice(i + 1))
                  if (p.left < q.right - 1 && q.left < p.right - 1
                      && p.top < q.bottom - 3 && q.top < p.bottom - 3) found.push([a, b]);
              return found; })()",
        )
        .await?;
    assert_eq!(overlaps, serde_json::json!([]));
    Ok(())
}

/// The drawing, the strip and the swing bench in the dark, and where the reader's system
/// chooses the colours: what is drawn follows, and what is printed does not.
#[tokio::test]
async fn in_the_dark_and_in_colours_of_the_system() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at_the_swing().await?;
    page.run("scrollTo(0, 0);").await?;
    let ink = "getComputedStyle(document.querySelector('#sheet text')).fill";
    let by_day = page.eval(ink).await?;
    for (feature, value) in
        [("prefers-color-scheme", "dark"), ("forced-colors", "active")]
    {
        page.prefer(feature, value).await?;
        page.wait_until(&format!("matchMedia('({feature}: {value})').matches")).await?;
        page.screenshot(&format!("look-{value}")).await?;
        if value == "dark" {
            assert_ne!(page.eval(ink).await?, by_day);
            assert_no_violation(&page, value).await?;
        }
        page.at_the_swing().await?;
        page.screenshot(&format!("look-{value}-swing")).await?;
        page.at_the_notebook().await?;
        page.screenshot(&format!("look-{value}-notebook")).await?;
        page.run("document.getElementById('air').scrollIntoView();").await?;
        page.screenshot(&format!("look-{value}-air")).await?;
        page.run("scrollTo(0, 0);").await?;
    }
    // Words are the system's own, and no square of the paper glares.
    let of = |css: &str, what: &str| {
        format!("getComputedStyle(document.querySelector('{css}')).{what}")
    };
    let canvas = page
        .eval("(e => (document.body.append(e), e.style.color = 'Canvas', getComputedStyle(e).color))(document.createElement('i'))")
        .await?;
    assert_eq!(page.eval(&of("#sheet [data-group=paper] path", "stroke")).await?, canvas);
    assert_ne!(page.eval(&of("#sheet text", "fill")).await?, canvas);
    let ground = page.eval(&of("#copy-link", "backgroundColor")).await?;
    assert_ne!(page.eval(&of("#copy-link", "color")).await?, ground);
    Ok(())
}
