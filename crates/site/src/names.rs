//! Names of files that carry a digest of their content.
//!
//! Such a file never changes under its name, so a browser may keep it for ever.

use sha2::{Digest, Sha256};

/// Characters of the digest in a name: 64 bits, far from any accident.
const DIGITS: usize = 16;

/// The SHA-256 of some bytes, as lower-case hexadecimal digits.
pub(crate) fn digest(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// `stem-0123456789abcdef.extension`, after the content of the file.
pub(crate) fn hashed(stem: &str, extension: &str, bytes: &[u8]) -> String {
    format!("{stem}-{}.{extension}", &digest(bytes)[..DIGITS])
}

/// Whether a path ends in a name that [`hashed`] makes.
pub(crate) fn is_hashed(path: &str) -> bool {
    let name = path.rsplit('/').next().unwrap_or(path);
    let stem = name.split('.').next().unwrap_or(name);
    stem.rsplit_once('-').is_some_and(|(_, digits)| {
        digits.len() == DIGITS
            && digits.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_name_follows_the_content() {
        // SHA-256 of "abc" from FIPS 180-4, appendix of examples.
        assert_eq!(hashed("icon", "svg", b"abc"), "icon-ba7816bf8f01cfea.svg");
        assert_ne!(hashed("icon", "svg", b"abd"), hashed("icon", "svg", b"abc"));
    }

    #[test]
    fn hashed_names_are_recognised_wherever_they_lie() {
        assert!(is_hashed(&hashed("boot", "js", b"")));
        assert!(is_hashed("/some/folder/icon-ba7816bf8f01cfea.svg"));
    }

    #[test]
    fn other_names_are_not_taken_for_hashed_ones() {
        for name in ["", "/", "index.html", "noseward.d.ts", "long-name.js", "/a-b/c.js"]
        {
            assert!(!is_hashed(name), "{name}");
        }
        assert!(!is_hashed("icon-BA7816BF8F01CFEA.svg"));
        assert!(!is_hashed("icon-ba7816bf8f01cfea0.svg"));
    }
}
