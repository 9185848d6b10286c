//! Puts the sentences into what is written before the page runs: index.html and the service
//! worker's page.
//!
//! An element says which sentence stands in it by `data-words="key"`, or which names it by
//! `data-words-label="key"`. It gets the English one, and the number of it by which the page
//! finds it in another language (`web/src/dom/language.rs`). Where a sentence is never put
//! into another language, `{{key}}` is enough.

use anyhow::{Context, Result, bail};
use lol_html::html_content::{ContentType, Element};
use lol_html::{RewriteStrSettings, element, rewrite_str};
use noseward_words::{Kind, LANGUAGES, Mark, Marked, by_key, speak, table_of};

/// Where the page that does not start says so in every other language.
const ELSEWHERE: &str = "<!--elsewhere-->";
/// Where the service worker wants its page.
const DAMAGED: &str = "{{damaged}}";

/// index.html with English in it.
pub(crate) fn fill(index: &str) -> Result<String> {
    let index = filled_marks(index)?;
    let lines =
        in_each_language(|| sentence("index-failed-elsewhere").map(|s| markup(&s)))?;
    let lines: String = lines
        .iter()
        .skip(1)
        .map(|(attributes, line)| {
            format!("<p class=\"failed__late\" {attributes}>{line}</p>\n")
        })
        .collect();
    let index = index.replace(ELSEWHERE, &lines);
    let words = element!("[data-words]", |element| {
        let (id, words) = take(element, "data-words")?;
        element.set_inner_content(&markup(&words), ContentType::Html);
        Ok(element.set_attribute("data-w", &id.to_string())?)
    });
    let labels = element!("[data-words-label]", |element| {
        let (id, words) = take(element, "data-words-label")?;
        element.set_attribute("aria-label", &words.text())?;
        Ok(element.set_attribute("data-l", &id.to_string())?)
    });
    let settings = RewriteStrSettings::new()
        .append_element_content_handler(words)
        .append_element_content_handler(labels);
    rewrite_str(&index, settings)
        .context("www/index.html cannot be filled with sentences")
}

/// The service worker with its page, which stands in for one that is damaged: in every
/// language, since it cannot know which is read.
pub(crate) fn fill_worker(worker: &str) -> Result<String> {
    let parts = in_each_language(|| {
        let [title, part, load] = ["damaged", "damaged-part", "damaged-load"]
            .map(|key| sentence(&format!("index-{key}")).map(|words| markup(&words)));
        Ok(format!("<h1>{}</h1>\n<p>{}</p>\n<p>{}</p>", title?, part?, load?))
    })?;
    let parts: Vec<String> = parts
        .into_iter()
        .map(|(attributes, words)| format!("<section {attributes}>\n{words}\n</section>"))
        .collect();
    let page = parts.join("\n");
    if !worker.contains(DAMAGED) || page.contains(['`', '$', '\\']) {
        bail!("www/sw.js does not contain {DAMAGED}, or its page could not stand there");
    }
    Ok(worker.replace(DAMAGED, &page))
}

/// A sentence without arguments, in the language in use.
pub(crate) fn sentence(key: &str) -> Result<Marked> {
    let (_, words) = by_key(key).with_context(|| {
        format!(
            "there is no sentence {key} without arguments in crates/words/languages/en"
        )
    })?;
    Ok(words)
}

/// What `say` says in English and in every whole language, with the attributes of an element
/// in that language.
fn in_each_language<T>(say: impl Fn() -> Result<T>) -> Result<Vec<(String, T)>> {
    let whole = LANGUAGES.iter().filter(|l| matches!(l.kind, Kind::BuiltIn | Kind::Full));
    let said = whole.map(|language| {
        speak(table_of(language.key));
        let attributes = format!("lang=\"{}\" dir=\"{}\"", language.tag, language.dir);
        Ok((attributes, say()?))
    });
    let said = said.collect();
    speak(None);
    said
}

/// The sentence that an attribute names, with its number; the attribute goes.
fn take(
    element: &mut Element<'_, '_>,
    attribute: &str,
) -> Result<(u16, Marked), Box<dyn std::error::Error + Send + Sync>> {
    let key = element.get_attribute(attribute).unwrap_or_default();
    element.remove_attribute(attribute);
    by_key(&key)
        .ok_or_else(|| format!("there is no sentence {key} without arguments").into())
}

/// `{{key}}` in the page, where that is a sentence.
fn filled_marks(index: &str) -> Result<String> {
    let mut pieces = index.split("{{index-");
    let mut filled = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let (key, rest) =
            piece.split_once("}}").context("a {{ in www/index.html has no }}")?;
        filled += &markup(&sentence(&format!("index-{key}"))?);
        filled += rest;
    }
    Ok(filled)
}

fn markup(words: &Marked) -> String {
    let run = |(mark, run): (Option<Mark>, &str)| {
        let run = run.replace('&', "&amp;").replace('<', "&lt;").replace('"', "&quot;");
        if mark.is_some() { format!("<strong>{run}</strong>") } else { run }
    };
    words.runs().map(run).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn elements_get_their_sentences_and_their_numbers() {
        let (id, _) = by_key("index-purpose").unwrap();
        let (label, _) = by_key("index-path").unwrap();
        assert_eq!(
            fill(
                "<title>{{index-title}}</title><p class=\"a\" data-words=\"index-purpose\"></p>\
                 <nav data-words-label=\"index-path\"></nav>{{build}}"
            )
            .unwrap(),
            format!(
                "<title>Noseward: find a bottle rocket’s two points</title>\
                 <p class=\"a\" data-w=\"{id}\">Will your bottle rocket fly nose-first?</p>\
                 <nav aria-label=\"The lesson\" data-l=\"{label}\"></nav>{{{{build}}}}"
            )
        );
        let strong = fill("<li data-words=\"index-privacy-licence\"></li>").unwrap();
        assert!(strong.contains("\"><strong>Licence:</strong> MIT. Who"), "{strong}");
    }

    #[test]
    fn a_sentence_that_is_not_there_is_named() {
        for page in ["<p data-words=\"index-nothing\"></p>", "<p>{{index-nothing}}</p>"] {
            let error = format!("{:#}", fill(page).unwrap_err());
            assert!(error.contains("index-nothing"), "{error}");
        }
        assert!(fill("{{index-title").is_err());
    }

    #[test]
    fn what_is_said_before_the_page_runs_is_said_in_every_language() {
        let page = fill(ELSEWHERE).unwrap();
        assert!(
            page.starts_with("<p class=\"failed__late\" lang=\"de\" dir=\"ltr\">"),
            "{page}"
        );
        assert!(
            page.contains("<p class=\"failed__late\" lang=\"ar\" dir=\"rtl\">"),
            "{page}"
        );
        let worker = fill_worker("`{{damaged}}`").unwrap();
        for start in
            ["en-GB\" dir=\"ltr\">\n<h1>This page needs", "de\" dir=\"ltr\">\n<h1>Diese"]
        {
            assert!(worker.contains(start), "{worker}");
        }
        assert!(fill_worker("").is_err());
        // The next sentence is English again.
        assert_eq!(sentence("index-path").unwrap().text(), "The lesson");
    }

    #[test]
    fn no_sentence_stands_in_the_page_itself() {
        use std::cell::RefCell;
        const PAGE: &str = include_str!("../../../www/index.html");
        let told = RefCell::new(Vec::new());
        let is_sentence = |text: &str| {
            text.split_whitespace()
                .filter(|word| word.chars().all(|c| c.is_alphabetic() || c == '.'))
                .count()
                > 1
        };
        let tell = |text: &str| {
            let text = text.trim();
            // `{{key}}` is a sentence of the tables.
            if is_sentence(text) && !text.starts_with("{{") {
                told.borrow_mut().push(text.to_owned());
            }
        };
        let text = lol_html::text!("*", |text| {
            tell(text.as_str());
            Ok(())
        });
        let attributes = element!("*", |element| {
            for name in ["title", "alt", "aria-label", "placeholder", "content", "value"]
            {
                let value = element.get_attribute(name).unwrap_or_default();
                // Of the window: `width=…`.
                tell(if value.contains('=') { "" } else { &value });
            }
            Ok(())
        });
        let settings = RewriteStrSettings::new()
            .append_element_content_handler(text)
            .append_element_content_handler(attributes);
        rewrite_str(PAGE, settings).unwrap();
        assert_eq!(told.into_inner(), Vec::<String>::new());
    }
}
