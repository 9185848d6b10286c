//! How it looks, place by place: what is in view, what fits, what is printed, what assistive
//! technology finds. The pictures are for people to look at.

use noseward_page_tests::{Page, Result};
use noseward_stability::{Example, Weight, evaluate};
use serde_json::json;

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
    assert_eq!(cut, json!([]), "{name}");
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

/// The drawing stays in view while the place beside it is scrolled.
#[tokio::test]
async fn the_drawing_stays_beside_the_place() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.eval("document.getElementById('weights-title').scrollIntoView()").await?;
    let strip = page
        .eval("document.getElementById('strip').getBoundingClientRect().bottom")
        .await?;
    let bottom = strip.as_f64().unwrap_or(0.0);
    assert!((300.0..=600.0).contains(&bottom), "the strip ends at {bottom}");
    Ok(())
}

/// On a telephone it stays at the top, small.
#[tokio::test]
async fn the_drawing_goes_along_on_a_telephone() -> Result<()> {
    let page = Page::open(360, 740).await?;
    page.eval("document.getElementById('weights-title').scrollIntoView()").await?;
    let seen = "(r => [r.top, r.bottom])(document.getElementById('sheet').getBoundingClientRect())";
    let seen = page.eval(seen).await?;
    let px = |i: usize| seen[i].as_f64().unwrap_or(f64::NAN);
    assert!(px(0) >= 0.0 && px(1) > px(0) + 100.0 && px(1) < 370.0, "{seen}");
    Ok(())
}

/// Every place, and whether the drawing stands beside it.
const PLACES: [(&str, bool); 13] = [
    ("rocket", true),
    ("measure", true),
    ("predict", true),
    ("swing", true),
    ("compare", true),
    ("conclude", false),
    ("hand-in", false),
    ("why", false),
    ("words", false),
    ("set-up", false),
    ("class", false),
    ("paper", false),
    ("lead", false),
];

/// A trial with something in everything, a plan, and a conclusion.
async fn a_whole_trial(page: &Page) -> Result<()> {
    page.at("measure").await?;
    let readings = [("mass", ["138", "141", "139"]), ("pressure", ["204", "199", "230"])];
    for (point, readings) in readings {
        page.type_into(&format!("[id='nb:centre_of_{point}_guess_mm']"), "150").await?;
        for (reading, i) in readings.iter().zip(1..) {
            page.type_into(
                &format!("[id='nb:centre_of_{point}_reading_{i}_mm']"),
                reading,
            )
            .await?;
        }
    }
    page.at("predict").await?;
    page.click("[id='nb-outcome:0']").await?;
    page.type_into("[id='nb:draft_because']", "the nose is long, and clay is in it")
        .await?;
    page.click("#nb-lock").await?;
    page.at("swing").await?;
    page.click("#to-space").await?;
    page.click("#space-checked").await?;
    for outcome in 0..3 {
        page.click(&format!("[id='swung:{outcome}']")).await?;
    }
    page.wait_until("document.getElementById('swings-said').innerText.includes('Three')")
        .await?;
    page.at("compare").await?;
    page.type_into("[id='nb:note']", "It wobbled a little at first.").await?;
    page.type_into("[id='nb:plan']", "bigger fins").await?;
    page.click("#nb-plan-add").await?;
    page.at("conclude").await?;
    page.type_into("[id='nb:claim']", "Clay in the nose turns it into the air.").await
}

async fn resize(page: &Page, (width, height): (u32, u32)) -> Result<()> {
    page.set_viewport(width, height).await?;
    page.wait_until(&format!("innerWidth === {width} && innerHeight === {height}")).await
}

/// Unfolds all that a place has folded away.
async fn unfold(page: &Page) -> Result<()> {
    let open =
        "for (const part of document.querySelectorAll('#place details, #more details'))
        if (!part.matches('.menu')) part.open = true;";
    page.run(open).await?;
    Ok(())
}

/// The way on and the path are in view, and the drawing with its strip where the place has
/// one.
async fn assert_in_view(page: &Page, has_drawing: bool, name: &str) -> Result<()> {
    // The smallest screen has room for the strip and the heading below it.
    let is_smallest = page.eval("innerWidth < 360").await? == true;
    let drawing: &[&str] = if is_smallest { &["strip"] } else { &["strip", "sheet"] };
    for id in ["next", "to-swing"].iter().chain(drawing) {
        let place = page
            .eval(&format!(
                "(e => (r => [e.checkVisibility(), r.height > 0 && r.top >= 0
                    && r.bottom <= innerHeight])(e.getBoundingClientRect()))
                 (document.getElementById('{id}'))"
            ))
            .await?;
        let wanted = has_drawing || !drawing.contains(id);
        assert_eq!(place, json!([wanted, wanted]), "{name}: {id}");
    }
    Ok(())
}

/// Each place at the sizes of school laptops, a projector and telephones, before anything is
/// done and after a trial: nothing is cut, what one goes by is in view, and there is a picture
/// to look at.
#[tokio::test]
async fn every_place_fits_every_screen() -> Result<()> {
    let sizes = [
        (1366, 600),
        (1920, 1080),
        (1242, 600),
        (1093, 490),
        (1024, 600),
        (768, 1024),
        (360, 740),
        (320, 568),
    ];
    let page = Page::open(1366, 600).await?;
    for when in ["fresh", "trial"] {
        if when == "trial" {
            resize(&page, (1366, 600)).await?;
            a_whole_trial(&page).await?;
        }
        for size in sizes {
            resize(&page, size).await?;
            for (place, has_drawing) in PLACES {
                page.at(place).await?;
                let name = format!("{place}-{when}-{}x{}", size.0, size.1);
                if [1366, 1920, 360].contains(&size.0) {
                    page.screenshot(&format!("place-{name}")).await?;
                }
                assert_fits(&page, &name).await?;
                assert_in_view(&page, has_drawing, &name).await?;
                if size.0 == 1366 {
                    let shown = page
                        .eval(
                            "[...document.body.querySelectorAll('*')]
                                .filter(e => e.checkVisibility()).length",
                        )
                        .await?;
                    assert!(shown.as_u64().is_some_and(|n| n <= 450), "{name}: {shown}");
                }
                unfold(&page).await?;
                assert_fits(&page, &format!("{name}, unfolded")).await?;
            }
        }
    }
    Ok(())
}

/// Half as large again, for a projector, and so it stays.
#[tokio::test]
async fn every_place_fits_a_projector() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    a_whole_trial(&page).await?;
    let title = "document.getElementById('place-title').getBoundingClientRect().height";
    let before = page.eval(title).await?.as_f64().unwrap_or(f64::INFINITY);
    page.more("#big").await?;
    page.wait_until("document.documentElement.dataset.big === 'true'").await?;
    let after = page.eval(title).await?.as_f64().unwrap_or(0.0);
    assert!(after > 1.4 * before, "{before} became {after}");
    for size in [(1366, 600), (1280, 720), (1920, 1080)] {
        resize(&page, size).await?;
        for (place, has_drawing) in PLACES {
            page.at(place).await?;
            let name = format!("big-{place}-{}x{}", size.0, size.1);
            page.screenshot(&name).await?;
            assert_fits(&page, &name).await?;
            assert_in_view(&page, has_drawing, &name).await?;
            unfold(&page).await?;
            assert_fits(&page, &format!("{name}, unfolded")).await?;
        }
    }
    page.reload().await?;
    page.wait_until("document.documentElement.dataset.big === 'true'").await
}

#[tokio::test]
async fn axe_finds_no_fault_in_any_place() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for (place, _) in PLACES {
        page.at(place).await?;
        assert_no_violation(&page, place).await?;
    }
    a_whole_trial(&page).await?;
    for size in [(1366, 600), (360, 740)] {
        resize(&page, size).await?;
        for (place, _) in PLACES {
            page.at(place).await?;
            let name = format!("{place} after a trial, {size:?}");
            assert_no_violation(&page, &name).await?;
            unfold(&page).await?;
            assert_no_violation(&page, &format!("{name}, unfolded")).await?;
        }
    }
    Ok(())
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
    let menus =
        ["begin-bottle", "begin-example", "begin-open", "more-menu", "group-menu"];
    for menu in menus {
        page.click(&format!("#{menu} > summary")).await?;
        assert_no_violation(&page, menu).await?;
        page.screenshot(menu).await?;
    }
    page.set_viewport(360, 740).await?;
    assert_no_violation(&page, "narrow").await?;
    Ok(())
}

#[tokio::test]
async fn the_drawing_is_named_and_described() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.wait_until("document.getElementById('in-words').innerText").await?;
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
    page.all_is_here().await?;
    page.print("print").await?;
    page.eval("dispatchEvent(new Event('beforeprint'))").await?;
    page.cdp("Emulation.setEmulatedMedia", json!({ "media": "print" })).await?;
    let shown = "['.place', '.tools', '#next', '#sheet svg', '#strip',
        '#sheet-of-paper table', '#sheet-of-paper .handout svg']
        .map(css => document.querySelector(css).getClientRects().length > 0)";
    assert_eq!(
        page.eval(shown).await?,
        json!([false, false, false, true, true, true, true])
    );
    let words = page.eval("document.getElementById('sheet-of-paper').innerText").await?;
    let words = words.as_str().unwrap_or_default();
    assert!(words.contains("65 mm wide") && words.contains("not permission"), "{words}");
    page.eval("dispatchEvent(new Event('afterprint'))").await?;
    page.wait_until("!document.getElementById('sheet-of-paper').innerHTML").await
}

/// In every other place the browser's own button prints what stands there.
#[tokio::test]
async fn what_is_printed_of_a_place() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    a_whole_trial(&page).await?;
    for (place, has_drawing) in PLACES.into_iter().filter(|(place, _)| *place != "rocket")
    {
        page.at(place).await?;
        page.print(&format!("print-{place}")).await?;
        page.eval("dispatchEvent(new Event('beforeprint'))").await?;
        page.cdp("Emulation.setEmulatedMedia", json!({ "media": "print" })).await?;
        let shown = "['#place-title', '#tools', '#next', '#sheet svg', '#undo']
            .map(css => document.querySelector(css).checkVisibility())";
        let wanted = json!([true, false, false, has_drawing, false]);
        assert_eq!(page.eval(shown).await?, wanted, "{place}");
        page.eval("dispatchEvent(new Event('afterprint'))").await?;
        page.cdp("Emulation.setEmulatedMedia", json!({ "media": "" })).await?;
    }
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
    assert_eq!(overlaps, json!([]));
    Ok(())
}

/// Every place in the dark, and where the reader's system chooses the colours: what is drawn
/// follows.
#[tokio::test]
async fn in_the_dark_and_in_colours_of_the_system() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let ink = "getComputedStyle(document.querySelector('#sheet text')).fill";
    let by_day = page.eval(ink).await?;
    a_whole_trial(&page).await?;
    for (feature, value) in
        [("prefers-color-scheme", "dark"), ("forced-colors", "active")]
    {
        page.prefer(feature, value).await?;
        page.wait_until(&format!("matchMedia('({feature}: {value})').matches")).await?;
        for (place, _) in PLACES {
            page.at(place).await?;
            unfold(&page).await?;
            page.screenshot(&format!("look-{value}-{place}")).await?;
            if value == "dark" {
                assert_no_violation(&page, &format!("{place}, {value}")).await?;
            }
        }
        page.at("rocket").await?;
        if value == "dark" {
            assert_ne!(page.eval(ink).await?, by_day);
        }
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
    for button in ["#next", "#undo"] {
        let ground = page.eval(&of(button, "backgroundColor")).await?;
        assert_ne!(page.eval(&of(button, "color")).await?, ground, "{button}");
    }
    Ok(())
}
