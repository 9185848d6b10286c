//! Makes the single file: the whole page in one document that asks for nothing.
//!
//! It has to work from a disk, where a browser loads no further file: style and scripts
//! stand in the document, the module as text, compressed.

use crate::assemble::replace;
use crate::policy;
use anyhow::{Context, Result, ensure};
use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use std::num::NonZeroU64;
use zopfli::{Format, Options};

/// How many letters a packed text is made of: those of ASCII from `#` to `}`, where `~` stands
/// for `<`, which might end the element.
const LETTERS: u32 = 91;
/// Two letters hold so many bits: 2¹³ is less than 91².
const BITS: u32 = 13;

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
        let bytes = pack(bytes)?;
        let (length, text) = (bytes.len(), letters(&bytes));
        packed += &format!(
            "<script type=\"text/plain\" id=\"packed-{name}\" data-bytes=\"{length}\">\
             {text}</script>\n"
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

/// Four seconds for the module, and 4 % less of it than by quicker ways. Gzip, since nothing
/// denser is in every browser; without what differs between machines, name and time.
fn pack(bytes: &[u8]) -> Result<Vec<u8>> {
    let rounds = NonZeroU64::new(5).context("no number")?;
    let how = Options { iteration_count: rounds, ..Options::default() };
    let mut packed = Vec::new();
    zopfli::compress(how, Format::Gzip, bytes, &mut packed)
        .context("the module cannot be compressed")?;
    Ok(packed)
}

/// Bytes as letters that HTML leaves alone: 16 for 13 bytes, where base 64 takes 17 and a third.
/// There may be some more at the end, which say nothing. www/unpack.js reads them.
fn letters(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() / 13 * 16 + 32);
    let (mut held, mut bits) = (0, 0);
    for &byte in bytes.iter().chain(&[0, 0]) {
        held = held << 8 | u32::from(byte);
        bits += 8;
        if bits >= BITS {
            bits -= BITS;
            let pair = held >> bits;
            held &= (1 << bits) - 1;
            text.extend([letter(pair / LETTERS), letter(pair % LETTERS)]);
        }
    }
    text
}

/// The letter of a value.
fn letter(value: u32) -> char {
    let letter = u8::try_from(value).map_or('~', |value| char::from(b'#' + value));
    if letter == '<' { '~' } else { letter }
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

    /// What www/unpack.js does, letter by letter in a number that has no end.
    fn bytes_of(text: &str) -> Vec<u8> {
        let value = |letter| {
            "#$%&'()*+,-./0123456789:;~=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ\
            [\\]^_`abcdefghijklmnopqrstuvwxyz{|}"
                .find(letter)
                .unwrap()
        };
        let values: Vec<usize> = text.chars().map(value).collect();
        let pairs = values.chunks(2).map(|pair| pair[0] * 91 + pair[1]);
        let bits: String = pairs.map(|pair| format!("{pair:013b}")).collect();
        let whole = bits.as_bytes().chunks_exact(8);
        whole
            .map(|byte| byte.iter().fold(0, |sum, bit| sum << 1 | (bit - b'0')))
            .collect()
    }

    #[test]
    fn bytes_become_letters_and_bytes_again() {
        // 0x1234 and nothing more: 0001001000110, 100 and zeros; 582 = 6 × 91 + 36,
        // 4096 = 45 × 91 + 1.
        assert_eq!(letters(&[0x12, 0x34]), ")GP$");
        let all: Vec<u8> = (0..=255).cycle().take(9000).collect();
        for end in (0..60).chain([8991, 9000]) {
            for byte in [0, 0xff, 0x5a] {
                let bytes = [&all[..end], &[byte]].concat();
                let text = letters(&bytes);
                assert!(text.len() <= (bytes.len() * 16).div_ceil(13) + 4, "{end}");
                assert_eq!(bytes_of(&text)[..=end], bytes, "{end}");
            }
        }
        let every = letters(&all);
        assert!(every.contains('~') && every.bytes().all(|l| l.is_ascii_graphic()));
        assert!(!every.contains(['<', '"', '!']));
    }

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
            let start = format!("id=\"packed-{name}\" data-bytes=\"");
            let packed = between(&page, &start, "</script>");
            let (length, packed) = packed.split_once("\">").unwrap();
            let packed = &bytes_of(packed)[..length.parse().unwrap()];
            let mut unpacked = Vec::new();
            GzDecoder::new(packed).read_to_end(&mut unpacked).unwrap();
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
