//! Makes the single file: the whole page in one document that asks for nothing.
//!
//! It has to work from a disk, where a browser loads no further file: style and scripts
//! stand in the document, the module as text, compressed.

use crate::assemble::replace;
use crate::policy;
use anyhow::{Context, Result, ensure};
use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use flate2::{Compression, GzBuilder};
use std::io::Write;

/// What goes into the single file beside the page's markup.
#[derive(Debug)]
pub(crate) struct Parts<'a> {
    /// The styles.
    pub(crate) styles: &'a str,
    /// The script of the bindings.
    pub(crate) glue: &'a str,
    /// unpack.js
    pub(crate) unpack: &'a str,
    /// boot.js with keep.js behind it
    pub(crate) boot: &'a str,
    /// rescue.js
    pub(crate) rescue: &'a str,
    /// The drawing of the page's icon.
    pub(crate) icon: &'a [u8],
    /// The module.
    pub(crate) module: &'a [u8],
    /// The sentences of the languages that it has beside English, by their keys.
    pub(crate) tables: &'a [(&'a str, &'a [u8])],
    /// The licences of what is compiled in.
    pub(crate) licences: &'a str,
}

/// The marks of the document that this file puts something in the place of.
#[derive(Debug)]
pub(crate) struct Marks<'a> {
    /// The content security policy.
    pub(crate) policy: &'a str,
    /// The link of the styles.
    pub(crate) styles: &'a str,
    /// The element that loads boot.js.
    pub(crate) boot: &'a str,
    /// The element that loads rescue.js.
    pub(crate) rescue: &'a str,
    /// The licences.
    pub(crate) licences: &'a str,
}

/// The single file, made of a document that has `marks` in it.
pub(crate) fn single_file(
    document: &str,
    marks: &Marks<'_>,
    parts: &Parts<'_>,
) -> Result<String> {
    let place = "www/index.html";
    let boot = replace(
        parts.boot,
        "import('./noseward.js')",
        "unpacked()",
        "www/boot.js, for the single file,",
    )?;
    // One module, since an inline one cannot be imported; the braces keep our names apart
    // from those of the bindings.
    let module = format!("{}\n{{\n{}\n{boot}}}\n", parts.glue, parts.unpack);
    for (text, what) in [(module.as_str(), "a script"), (parts.rescue, "www/rescue.js")] {
        ensure!(
            !ends_element(text, "script") && !text.contains("<!--"),
            "{what} of the single file contains `</script` or `<!--`, which would end it \
             too soon; write it in two pieces"
        );
    }
    ensure!(
        !ends_element(parts.styles, "style"),
        "a sheet under www/styles/ contains `</style`, which would end it too soon in the \
         single file"
    );

    let element = policy::single_file_element(&[&module, parts.rescue], parts.styles);
    let document = replace(document, marks.policy, &element, place)?;
    let icon =
        format!("data:image/svg+xml;base64,{}", BASE64_STANDARD.encode(parts.icon));
    let document = replace(&document, "\"icon.svg\"", &format!("\"{icon}\""), place)?;
    let style = format!("<style>{}</style>", parts.styles);
    let document = replace(&document, marks.styles, &style, place)?;
    let boot = format!("<script type=\"module\">{module}</script>");
    let document = replace(&document, marks.boot, &boot, place)?;
    let rescue = format!("<script>{}</script>", parts.rescue);
    let document = replace(&document, marks.rescue, &rescue, place)?;
    let licences = parts.licences.replace('&', "&amp;").replace('<', "&lt;");
    let document = replace(&document, marks.licences, &licences, place)?;
    let mut packed = String::new();
    for (name, bytes) in [("module", parts.module)].iter().chain(parts.tables) {
        let text = BASE64_STANDARD.encode(pack(bytes)?);
        packed += &format!(
            "<script type=\"text/plain\" id=\"packed-{name}\">{text}</script>\n"
        );
    }
    let document = replace(&document, "</body>", &format!("{packed}</body>"), place)?;
    ensure!(
        !refers_elsewhere(&document),
        "the single file would load another file: something in www/index.html has a `src` \
         or a `<link` that does not stand between <!--hosted--> and <!--/hosted-->"
    );
    Ok(document)
}

/// Without what differs between machines: no name, no time, one implementation.
fn pack(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut encoder = GzBuilder::new().mtime(0).write(Vec::new(), Compression::best());
    encoder.write_all(bytes)?;
    encoder.finish().context("the module cannot be compressed")
}

/// Whether some text ends the element that it stands in, however that is written.
fn ends_element(text: &str, element: &str) -> bool {
    text.to_ascii_lowercase().contains(&format!("</{element}"))
}

fn refers_elsewhere(document: &str) -> bool {
    let links = document.split("<link ").skip(1);
    let attributes = links.map(|rest| rest.split('>').next().unwrap_or(rest));
    let mut outward = attributes.filter(|link| !link.contains("href=\"data:"));
    outward.next().is_some()
        || ["<script src=", "<script type=\"module\" src=", "<img "]
            .iter()
            .any(|element| document.contains(element))
}

#[cfg(test)]
mod tests {
    use super::*;
    use flate2::read::GzDecoder;
    use std::io::Read;

    const MARKS: Marks<'_> = Marks {
        policy: "<!--csp-->",
        styles: "<link styles>",
        boot: "<script type=\"module\" src=\"boot.js\"></script>",
        rescue: "<script src=\"rescue.js\" async></script>",
        licences: "<!--licences-->",
    };
    const DOCUMENT: &str = "<head>\n<!--csp-->\n<link rel=\"icon\" href=\"icon.svg\">\n\
        <link styles>\n\
        <script type=\"module\" src=\"boot.js\"></script>\n\
        <script src=\"rescue.js\" async></script></head>\n<body>\n<!--licences--></body>";

    fn parts() -> Parts<'static> {
        Parts {
            styles: "a{}\n",
            glue: "export function start(){}",
            unpack: "function unpacked(){}",
            // A `$` has a meaning in the replacement texts of some languages.
            boot: "'$& $1'; import('./noseward.js');\n",
            rescue: "rescue();",
            icon: b"<svg/>",
            module: b"\0asm",
            tables: &[("de", b"german")],
            licences: "MIT",
        }
    }

    fn between<'a>(text: &'a str, start: &str, end: &str) -> &'a str {
        text.split_once(start).unwrap().1.split_once(end).unwrap().0
    }

    #[test]
    fn everything_stands_in_the_document_under_its_hash() {
        let page = single_file(DOCUMENT, &MARKS, &parts()).unwrap();
        let module = between(&page, "<script type=\"module\">", "</script>");
        let rescue = between(&page, "<script>", "</script>");
        let style = between(&page, "<style>", "</style>");
        assert_eq!((rescue, style), ("rescue();", "a{}\n"));
        assert!(module.contains("'$& $1'; unpacked();"), "{module}");
        let element = policy::single_file_element(&[module, rescue], style);
        assert!(page.contains(&element), "{page}");
    }

    #[test]
    fn module_and_sentences_come_out_as_they_went_in() {
        let page = single_file(DOCUMENT, &MARKS, &parts()).unwrap();
        for (name, bytes) in [("module", b"\0asm".as_slice()), ("de", b"german")] {
            let packed = between(&page, &format!("id=\"packed-{name}\">"), "</script>");
            let packed = BASE64_STANDARD.decode(packed).unwrap();
            let mut unpacked = Vec::new();
            GzDecoder::new(packed.as_slice()).read_to_end(&mut unpacked).unwrap();
            assert_eq!(unpacked, bytes);
        }
    }

    #[test]
    fn what_would_end_a_script_or_style_too_soon_is_refused() {
        let refused = |parts: &Parts<'_>| single_file(DOCUMENT, &MARKS, parts).is_err();
        assert!(!refused(&parts()));
        assert!(refused(&Parts { glue: "'</script>'", ..parts() }));
        assert!(refused(&Parts { glue: "'<!--'", ..parts() }));
        assert!(refused(&Parts { rescue: "'</SCRIPT '", ..parts() }));
        assert!(refused(&Parts { styles: "/*</style>*/", ..parts() }));
    }

    #[test]
    fn a_reference_to_another_file_is_refused() {
        for element in ["<link rel=\"x\" href=\"y\">", "<script src=\"z.js\"></script>"] {
            let document = DOCUMENT.replace("<body>", &format!("<body>{element}"));
            assert!(single_file(&document, &MARKS, &parts()).is_err(), "{element}");
        }
    }

    #[test]
    fn a_boot_script_that_loads_the_module_otherwise_is_named() {
        let error = single_file(DOCUMENT, &MARKS, &Parts { boot: "", ..parts() });
        let error = error.unwrap_err().to_string();
        assert!(error.contains("www/boot.js"), "{error}");
    }
}
