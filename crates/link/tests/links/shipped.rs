//! Every form of link, of code and of file that was ever shipped.
//!
//! A link and a code here, and the file beside them in `shipped/`, are never changed or
//! taken out: all must open, and hold the same record, for ever. The records stand in files of their
//! own, so that no change of an example can reach them.

use noseward_lesson::SwingOutcome;
use noseward_link::{Opened, code, hash, open_code, open_file, open_hash, to_file};
use noseward_stability::{Material, SectionKind};

/// Links, codes and files of version 1, as the first release wrote them: four ordinary rockets,
/// and one with every kind, every material and every form of mass and outline.
const VERSION_1: [(&str, &str, &str); 5] = [
    (
        "r1.FOREmksEAQEGUHVmZmluAAGAAbAEAYAAwAwV4gSKAgCwIgcmAhgBAwjSABgBAwRmCAAATARYA\
         iYC9AEBAw5tb2RlbGxpbmcgY2xheaAfwgE",
        "R12K J496 JB0G 0G21 JGEY\n\
         NK6C TBE0 00R0 0DG0 G0RV\n\
         0060 1GAY 414A 080B 08G2\n\
         74R1 1G08 3139 0060 10CG\n\
         26C2 0001 608P 024R 1F89\n\
         0810 C76T VV4C NP6R TBE5\n\
         CWG6 6V31 F6G1 ZGG1 T",
        include_str!("shipped/puffin.json"),
    ),
    (
        "r1.Criu3TYEAQAEVGVybgABgACEAwGAAPgKFeIEigIAsCIHJgIYAQMI0gAYAQMDyggAAMIB-gD6A\
         MgAAQM",
        "R11A WAXQ 9P0G 0G01 2MC5\n\
         NS6W 001G 0088 0R1G 00FR\n\
         G2GN W828 M0G0 P0H0 E9GX\n\
         2300 G626 J00C 020R 3S8B\n\
         4000 6207 X01Y G0S0 0029\n\
         0R0",
        include_str!("shipped/tern.json"),
    ),
    (
        "r1.O4ZoxkYEAQEEU2t1YQABgAMgAwGAAOgHFZ4HhAMArD4HhAMYAQMI0gAYAQMELgkAANwFsARMB\
         FgCAQYLc3RpY2t5IHRhcGWIDuQM",
        "R17E 36HH J60G 0G21 2KDY\n\
         DTP2 001G 01J0 0R1G 00EJ\n\
         G1RN KR3R 80R0 NGZ0 F107\n\
         3300 G626 J00C 020R 45RA\n\
         4G00 6W0P R08K 04B0 102V\n\
         1GBE DT6J RVBF 4G78 RBGP\n\
         CP40 XS0C A",
        include_str!("shipped/skua.json"),
    ),
    (
        "r1.FWZDhj0CAQEGR2FubmV0AAGAAFgCAYABAAVgCfAAAQADkgkAACYCLAFeAfoAAQEObW9kZWxsa\
         W5nIGNsYXmsAl4B",
        "R12N K471 HX08 0G21 J7C1\n\
         5Q6W SBM0 00R0 02R0 80RZ\n\
         0080 0NG0 KW00 0400 74GJ\n\
         9000 2C0H C05F 03YG 004F\n\
         0GWV BFCH JPRV 39DS KJ0V\n\
         RVCC 5WTR 0JY0 4Q",
        include_str!("shipped/gannet.json"),
    ),
    (
        "r1.dvaDqPQBDAQDFkV2ZXJ5dGhpbmcsIMK9IMOpIPCfmoAB8sABKQkAWQIBgAEAAbAE8AABAQLHA\
         QkBAQIDIAMBgAEDBMgAigIBBBXiBIoCAL4iBSBOiBMCECcGCgAKAAEFByYCGAEDCNIAGAEDGNIAG\
         AEBCRUsAQGAAAADZggAAEwEAAAoAgz-AQYEAABaAQ4AAAAADAJ9QF8AMAD0AQEHCCBOzwUBCwAAA\
         EAGQAZYAgAAAQgCZADQBQBAH0AfQB9AHwDAhD0AAgAADm1vZGVsbGluZyBjbGF5oB_CARhHZXdpY\
         2h0IGbDvHIgw5ZscHLDvGZ1bmfAhD0gTg",
        "R1EV V87A 7M04 6080 RP80\n\
         NV6A WKSE HM6J VK75 GGC2\n\
         5F90 REMJ 1W4Z KA00 3WP3\n\
         004M GJ02 S080 R008 006Z\n\
         R09W 0004 0G5H R114 0G2P\n\
         0G34 01G3 0010 C2CG 04A2\n\
         080G 85F2 0J50 405Y 482Q\n\
         J0KM 82C1 109R 6180 0M0D\n\
         010M 3JC0 GR04 1GHM G03K\n\
         00G6 66J0 0C02 0892 MP01\n\
         20C0 0000 6SG8 0004 R10M\n\
         000M 0437 Y043 0800 0B83\n\
         0GW0 0000 00R0 KX81 FG0H\n\
         C00Y G0G2 1R84 17CY 1812\n\
         1C00 0020 0S00 CP02 000Q\n\
         0220 2CG0 D018 080F M07E\n\
         T03X 01Y0 60GG YG00 G00N\n\
         076T VV4C NP6R TBEC WG6X\n\
         6V31 F6G1 ZGG1 313P AXV7\n\
         9CDM 7883 6REY 7486 3JSZ\n\
         P70W P3QH K7AV K7R2 23TN\n\
         82EW",
        include_str!("shipped/everything.json"),
    ),
];

/// Links, codes and files of version 2: three of the rockets above, swung, with each
/// outcome, and with values of the setup at their bounds.
const VERSION_2: [(&str, &str, &str); 3] = [
    (
        "r2.Pnv22VIEAQEGUHVmZmluAAGAAbAEAYAAwAwV4gSKAgCwIgcmAhgBAwjSABgBAwRmCAAATARYA\
         iYC9AEBAw5tb2RlbGxpbmcgY2xheaAfwgF-URWSBEBR",
        "R27S XZDP AJ0G 0G21 JGEB\n\
         NK6C TBE0 00R0 0DG0 G0RV\n\
         0060 1GAY 414A 080B 08G2\n\
         74R1 1G08 3139 0060 10CG\n\
         26C2 0001 608P 024R 1F89\n\
         0810 C76T VV4C NP6R TBE5\n\
         CWG6 6V31 F6G1 ZGG1 FS82\n\
         HB4G 4818 G9",
        include_str!("shipped/puffin-swung.json"),
    ),
    (
        "r2.c8hLgD0EAQAEVGVybgABgACEAwGAAPgKFeIEigIAsCIHJgIYAQMI0gAYAQMDyggAAMIB-gD6A\
         MgAAQO1AUkcegIy",
        "R2EF 44Q0 1X0G 0G01 2MCN\n\
         NS6W 001G 0088 0R1G 00FR\n\
         G2GN W828 M0G0 P0H0 E9GX\n\
         2300 G626 J00C 020R 3S8B\n\
         4000 6207 X01Y G0S0 0029\n\
         0XN0 54HR YG26 8Z",
        include_str!("shipped/tern-swung.json"),
    ),
    (
        "r2.p1bygf0BDAQDFkV2ZXJ5dGhpbmcsIMK9IMOpIPCfmoAB8sABKQkAWQIBgAEAAbAE8AABAQLHA\
         QkBAQIDIAMBgAEDBMgAigIBBBXiBIoCAL4iBSBOiBMCECcGCgAKAAEFByYCGAEDCNIAGAEDGNIAG\
         AEBCRUsAQGAAAADZggAAEwEAAAoAgz-AQYEAABaAQ4AAAAADAJ9QF8AMAD0AQEHCCBOzwUBCwAAA\
         EAGQAZYAgAAAQgCZADQBQBAH0AfQB9AHwDAhD0AAgAADm1vZGVsbGluZyBjbGF5oB_CARhHZXdpY\
         2h0IGbDvHIgw5ZscHLDvGZ1bmfAhD0gTpQCCwc9BjRUBA",
        "R2MX BF50 FX04 6080 RP8K\n\
         NV6A WKSE HM6J VK75 GGC2\n\
         5F90 REMJ 1W4Z KA00 3WP3\n\
         004M GJ02 S080 R008 006Z\n\
         R09W 0004 0G5H R114 0G2P\n\
         0G34 01G3 0010 C2CG 04A2\n\
         080G 85F2 0J50 405Y 482Q\n\
         J0KM 82C1 109R 6180 0M0D\n\
         010M 3JC0 GR04 1GHM G03K\n\
         00G6 66J0 0C02 0892 MP01\n\
         20C0 0000 6SG8 0004 R10M\n\
         000M 0437 Y043 0800 0B83\n\
         0GW0 0000 00R0 KX81 FG0H\n\
         C00Y G0G2 1R84 17CY 1812\n\
         1C00 0020 0S00 CP02 000Q\n\
         0220 2CG0 D018 080F M07E\n\
         T03X 01Y0 60GG YG00 G00N\n\
         076T VV4C NP6R TBEC WG6X\n\
         6V31 F6G1 ZGG1 313P AXV7\n\
         9CDM 7883 6REY 7486 3JSZ\n\
         P70W P3QH K7AV K7R2 23TN\n\
         82EJ G10P 1SX0 RT58 10Q",
        include_str!("shipped/everything-swung.json"),
    ),
];

#[test]
fn every_version_opens() {
    for (link, code, file) in VERSION_1.into_iter().chain(VERSION_2) {
        let record = open_file(file).unwrap();
        assert_eq!(open_hash(link), Opened::Record(record.clone()), "{link}");
        assert_eq!(open_code(code), Ok(record), "{code}");
    }
}

/// Version 1 where nobody has swung, version 2 where somebody has. Holds while there is
/// no version that takes the place of one of them.
#[test]
fn each_version_is_still_written() {
    for (link, typed, file) in VERSION_1.into_iter().chain(VERSION_2) {
        let record = open_file(file).unwrap();
        assert_eq!(record.has_swings(), link.starts_with("r2."));
        assert_eq!(hash(&record), link);
        assert_eq!(code(&record), typed);
        assert_eq!(to_file(&record), file);
    }
}

#[test]
fn everything_is_in_some_file() {
    let (_, _, file) = VERSION_1[4];
    let names = |value: serde_json::Value| value.as_str().unwrap().to_owned();
    let kinds = SectionKind::ALL.map(|kind| serde_json::to_value(kind).unwrap());
    let materials = Material::ALL.map(|sheet| serde_json::to_value(sheet).unwrap());
    for name in kinds.into_iter().chain(materials).map(names) {
        assert!(file.contains(&format!("\"{name}\"")), "{name}");
    }
    let outcomes =
        SwingOutcome::ALL.map(|outcome| serde_json::to_value(outcome).unwrap());
    for name in outcomes.map(names) {
        let name = format!("\"{name}\"");
        assert!(VERSION_2.iter().any(|(.., file)| file.contains(&name)), "{name}");
    }
}
