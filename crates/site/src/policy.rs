//! What the page may load and do: its content security policy.

use base64::Engine;
use base64::prelude::BASE64_STANDARD as STANDARD;
use sha2::{Digest, Sha256};

/// The policy, sent as a header by our server and written into the page for every
/// other one.
///
/// Nothing from elsewhere, no scripts or styles in the markup, no forms sent; the
/// module may be compiled.
pub(crate) const CONTENT_SECURITY_POLICY: &str = "default-src 'self'; \
    script-src 'self' 'wasm-unsafe-eval'; object-src 'none'; base-uri 'none'; \
    form-action 'none'";

/// The policy as an element of the page's head.
pub(crate) fn meta_element() -> String {
    element(CONTENT_SECURITY_POLICY)
}

/// The policy of the single file, as an element of its head: nothing is loaded at all,
/// and only exactly these scripts and this style, which stand in it, count.
pub(crate) fn single_file_element(scripts: &[&str], style: &str) -> String {
    let scripts: Vec<String> = scripts.iter().map(|script| source(script)).collect();
    element(&format!(
        "default-src 'none'; script-src {} 'wasm-unsafe-eval'; style-src {}; \
         img-src data:; base-uri 'none'; form-action 'none'",
        scripts.join(" "),
        source(style)
    ))
}

/// How a policy names the text between the tags of an element.
fn source(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text)))
}

fn element(policy: &str) -> String {
    format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_policy_is_one_line_with_single_spaces() {
        assert!(!CONTENT_SECURITY_POLICY.contains('\n'));
        assert!(!CONTENT_SECURITY_POLICY.contains("  "));
    }

    #[test]
    fn the_policy_allows_no_inline_code_and_nothing_from_elsewhere() {
        assert!(CONTENT_SECURITY_POLICY.starts_with("default-src 'self'; "));
        for word in ["unsafe-inline", "'unsafe-eval'", "http", "data:", "blob:", "*"] {
            assert!(!CONTENT_SECURITY_POLICY.contains(word), "{word}");
        }
    }

    #[test]
    fn the_element_carries_the_policy_in_one_attribute() {
        let element = meta_element();
        assert!(!CONTENT_SECURITY_POLICY.contains('"'));
        assert_eq!(element.matches('"').count(), 4);
        assert!(element.contains(CONTENT_SECURITY_POLICY));
    }

    #[test]
    fn the_single_file_loads_nothing_and_names_each_text_by_its_hash() {
        let element = single_file_element(&["abc", ""], "abc");
        // SHA-256 of "abc" from FIPS 180-4, appendix of examples, and of nothing.
        let abc = "'sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0='";
        let empty = "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='";
        assert!(element.contains("content=\"default-src 'none'; "), "{element}");
        let scripts = format!("script-src {abc} {empty} 'wasm-unsafe-eval';");
        assert!(element.contains(&scripts), "{element}");
        assert!(element.contains(&format!("style-src {abc};")), "{element}");
        for word in ["'self'", "unsafe-inline", "'unsafe-eval'", "http:", "blob:"] {
            assert!(!element.contains(word), "{word}");
        }
    }
}
