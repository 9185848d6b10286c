//! What the page may load and do: its content security policy.

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
    format!(
        "<meta http-equiv=\"Content-Security-Policy\" \
         content=\"{CONTENT_SECURITY_POLICY}\">"
    )
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
}
