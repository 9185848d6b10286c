//! Every form of link and of file that was ever shipped.
//!
//! A link here, and the file beside it in `shipped/`, is never changed or taken out: both
//! must open, and hold the same design, for ever. The designs stand in files of their
//! own, so that no change of an example can reach them.

use noseward_link::{Opened, hash, open_file, open_hash, to_file};
use noseward_stability::{Material, SectionKind};

/// Links and files of version 1, as the first release wrote them: four ordinary rockets,
/// and one with every kind, every material and every form of mass and outline.
const VERSION_1: [(&str, &str); 5] = [
    (
        "r1.FOREmksEAQEGUHVmZmluAAGAAbAEAYAAwAwV4gSKAgCwIgcmAhgBAwjSABgBAwRmCAAATARYA\
         iYC9AEBAw5tb2RlbGxpbmcgY2xheaAfwgE",
        include_str!("shipped/puffin.json"),
    ),
    (
        "r1.Criu3TYEAQAEVGVybgABgACEAwGAAPgKFeIEigIAsCIHJgIYAQMI0gAYAQMDyggAAMIB-gD6A\
         MgAAQM",
        include_str!("shipped/tern.json"),
    ),
    (
        "r1.O4ZoxkYEAQEEU2t1YQABgAMgAwGAAOgHFZ4HhAMArD4HhAMYAQMI0gAYAQMELgkAANwFsARMB\
         FgCAQYLc3RpY2t5IHRhcGWIDuQM",
        include_str!("shipped/skua.json"),
    ),
    (
        "r1.FWZDhj0CAQEGR2FubmV0AAGAAFgCAYABAAVgCfAAAQADkgkAACYCLAFeAfoAAQEObW9kZWxsa\
         W5nIGNsYXmsAl4B",
        include_str!("shipped/gannet.json"),
    ),
    (
        "r1.dvaDqPQBDAQDFkV2ZXJ5dGhpbmcsIMK9IMOpIPCfmoAB8sABKQkAWQIBgAEAAbAE8AABAQLHA\
         QkBAQIDIAMBgAEDBMgAigIBBBXiBIoCAL4iBSBOiBMCECcGCgAKAAEFByYCGAEDCNIAGAEDGNIAG\
         AEBCRUsAQGAAAADZggAAEwEAAAoAgz-AQYEAABaAQ4AAAAADAJ9QF8AMAD0AQEHCCBOzwUBCwAAA\
         EAGQAZYAgAAAQgCZADQBQBAH0AfQB9AHwDAhD0AAgAADm1vZGVsbGluZyBjbGF5oB_CARhHZXdpY\
         2h0IGbDvHIgw5ZscHLDvGZ1bmfAhD0gTg",
        include_str!("shipped/everything.json"),
    ),
];

#[test]
fn version_1_opens() {
    for (link, file) in VERSION_1 {
        let design = open_file(file).unwrap();
        assert_eq!(open_hash(link), Opened::Design(design), "{link}");
    }
}

/// Holds while version 1 is the newest of both.
#[test]
fn version_1_is_still_written() {
    for (link, file) in VERSION_1 {
        let design = open_file(file).unwrap();
        assert_eq!(hash(&design), link);
        assert_eq!(to_file(&design), file);
    }
}

#[test]
fn everything_is_in_the_last_file() {
    let (_, file) = VERSION_1[4];
    let names = |value: serde_json::Value| value.as_str().unwrap().to_owned();
    let kinds = SectionKind::ALL.map(|kind| serde_json::to_value(kind).unwrap());
    let materials = Material::ALL.map(|sheet| serde_json::to_value(sheet).unwrap());
    for name in kinds.into_iter().chain(materials).map(names) {
        assert!(file.contains(&format!("\"{name}\"")), "{name}");
    }
}
