//! Every form of link, of code and of file that was ever shipped, of rockets and of
//! notebooks.
//!
//! A link and a code here, and the file beside them in `shipped/`, are never changed or
//! taken out: all must open, and hold the same record, for ever. The records stand in files of their
//! own, so that no change of an example can reach them.

use noseward_lesson::{End, SwingOutcome};
use noseward_link::{
    Opened, Parts, code, hash, notebook_hash, notebook_parts, open_code, open_file,
    open_hash, open_notebook_file, open_notebook_hash, open_result_code, open_trial_hash,
    result_code, result_of, to_file, to_notebook_file, trial_hash,
};
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
        include_str!("shipped/razorbill.json"),
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

/// The notebook of version 1, as the first release that knew notebooks wrote it: its link
/// and its parts, the link of its first trial, and the results of the first and the last.
const NOTEBOOK: &str = include_str!("shipped/notebook.json");
const NOTEBOOK_LINK: &str = "n1.y7lR18gEBAQCAQMBBAMBAiNBIGhlYXZpZXIgbm9zZSBrZWVwcyBpdCBub3NlIGZpcnN0LhJUc\
     mlhbHMgMSwgMiBhbmQgNC4hVGhlIGNlbnRyZSBvZiBtYXNzIG1vdmVzIGZvcndhcmQuJVRocmVlI\
     HN3aW5ncyBlYWNoOyB0aGUgaGFsbCB3YXMgY2FsbS4LbG9uZ2VyIGJvZHkRZmlucyBmdXJ0aGVyI\
     GJhY2sBAABGBAEBBFNrdWEAAYADIAMBgADoBxWeB4QDAKw-B4QDGAEDCNIAGAEDBC4JAADcBbAET\
     ARYAgEGC3N0aWNreSB0YXBlqC3kDH5RFZIBAAEAAAHYBdyEADRXaW5keSDigJxvdXRzaWRl4oCdL\
     CBzbyB3ZSB3ZW50IGluLgrCvSB0dXJuIGEgc2Vjb25kAAACvzUdECgP0AcGCR8JbAeuBr0GAhdUa\
     GUgc3RyaW5nIGhhZCBzbGlwcGVkLgIAE1RoZSBmaW5zIGFyZSBzbWFsbC4DBA5JdCBkaWQuClR3a\
     WNlLgFCAgKIDn5RFZIEQyMCAQEAAXlGJ0wMaGVhdmllciBub3NlAAAAAQABAB9UaGUgd2VpZ2h0I\
     HB1bGxzIHRoZSBub3NlIGRvd24uAUICAtgdflEVkgNRAQQBAQAAAAABAAVTdGlsbAAAAUICAqgtf\
     lEVkgEAAgMBAgABuIDz0QAAAAABAAAAAAAAADMCAQEGR2FubmV0AAGAAFgCAYABAAVgCfAAAQADk\
     gkAACYCLAFeAfoAAQEEY2xheawCXgE";
const NOTEBOOK_PARTS: [&str; 4] = [
    "N101 043E EB4M 0E72 SEWQ\n\
     N3NY 80G2 080G 10C0 G80S\n\
     R108 HM28 38CN GQCT B5EW\n\
     8G6W VVKC MG6P SB5E 1SJS\n\
     0TBM 41Q6 YWV5 41K6 JWKB\n\
     KEGQ 14N3 JD5G PRWS 0643\n\
     P20C H0C5 Q688 1M5R GN87\n\
     T354 1HPA VKME 9JJ0 VV6Q\n\
     41PP 2WVK 41PP YXK5 ECG6\n\
     6CVV JEXG Q4S1 E4NA 6GWS\n\
     K5CM G76X V9DS KQ68 35CD\n\
     5HPG ES0E HM6A 838C 5P6M\n\
     R83Q C5SJ 0RV1 DHPJ W2VV\n\
     CDXQ 6E3",
    "N102 043E EB4M B009 CNSY\n\
     20RK FCHW H2SK 9DSS J0SG\n\
     KNE9 T6GS BJ41 H62R VB0E\n\
     4000 HG40 40G8 MVBE NGG8\n\
     00C0 0CG0 60C0 03M0 E5CG\n\
     Y0Y2 0605 C7R3 R80R R049\n\
     1GHM G030 0G61 1E14 001D\n\
     Q05P 024R 12R0 80GC 2VK8\n\
     EHMP 6TVS 41T6 2W35 N0PS\n\
     Y833 YA4A S408 0040 000W\n\
     ER0Q E880 1MAX MPWS 3S49\n\
     3H81 73FE NT76 TB4C QH8R\n\
     179C 41SP Y83Q CMG7 ESBW\n\
     EEGG 6JP",
    "N103 043E EB4M VNP9 DRQN\n\
     0NGN X41T 7AWK E41G J0W0\n\
     V5CD QPWS 0000 1BYD 8X2P\n\
     0M0Z M070 R4HY 2BC0 YQ03\n\
     DF86 08BN 8T35 41SQ 8WKM\n\
     9DSK J0T3 1CGG 76V3 9E1X\n\
     R6AS 1E08 016N 38CM G6C4\n\
     TBEE CG62 WK54 1SPT RBCD\n\
     DGQ0 610E 95T2 0S39 CGQ0\n\
     0MN3 QD5H PABG 1881 0527\n\
     0EFS 8HB4 G48C HG40 8109\n\
     00QJ HH79 G66G SB1E SMPG\n\
     AWH0 DSQQ 6S80 0000 2002\n\
     100F N8N",
    "N104 043E EB4J F8X5 D1JS\n\
     J0XV 5D5K PGX1 0E1T PRVY\n\
     3K41 T6GS 90DS QQ6S 90CP\n\
     HQQE VHE0 5104 0PR3 NZ5F\n\
     25CJ 0D8G 2101 0400 0005\n\
     0040 0AMV MD5P 6R00 005K\n\
     1040 N85N Z525 CJ04 004T\n\
     0R10 8003 E40Y F8G0 000H\n\
     000G 0000 0000 001K 080Q\n\
     G21J 7C5Q 6WSB M000 R00W\n\
     2R08 0R00 800N G0KW 0002\n\
     4007 4G90 002C 0HC0 5F0F\n\
     3YG0 040G 8RVC C5WT R0JW\n\
     Y04R",
];
const TRIAL_LINK: &str = "t1.fCFU2eYBBAQBAAAB2AXchAA0V2luZHkg4oCcb3V0c2lkZeKAnSwgc28gd2Ugd2VudCBpbi4Kw\
     r0gdHVybiBhIHNlY29uZAAAAr81HRAoD9AHBgkfCWwHrga9BgIXVGhlIHN0cmluZyBoYWQgc2xpc\
     HBlZC4CABNUaGUgZmlucyBhcmUgc21hbGwuAwQOSXQgZGlkLgpUd2ljZS4BAABGBAEBBFNrdWEAA\
     YADIAMBgADoBxWeB4QDAKw-B4QDGAEDCNIAGAEDBC4JAADcBbAETARYAgEGC3N0aWNreSB0YXBli\
     A7kDH5RFZIEQyM";
const RESULTS: [(u16, Option<u8>, &str); 2] = [
    (
        1,
        None,
        "T10G 2020 0003 ZN45 0FGN\n\
         G1VP 0V41 8M0M 4R93 40F9\n\
         P20G 001M 68ZZ 08V0 9",
    ),
    (
        4,
        Some(2),
        "T10G 2080 0100 10C5 0FGF\n\
         G1R6 16K1 8M0M 0C00 6004\n\
         3001 G00F 1ZZZ CPCG Y",
    ),
];

#[test]
fn a_notebook_opens_and_is_still_written() {
    let file = open_notebook_file(NOTEBOOK).unwrap();
    assert_eq!(to_notebook_file(&file), NOTEBOOK);
    assert_eq!(open_notebook_hash(NOTEBOOK_LINK), Some(Ok(file.clone())));
    assert_eq!(notebook_hash(&file).as_deref(), Some(NOTEBOOK_LINK));
    let mut parts = Parts::default();
    parts.add(&NOTEBOOK_PARTS.join("\n")).unwrap();
    assert_eq!(parts.notebook(), Some(Ok(file.clone())));
    assert_eq!(notebook_parts(&file).unwrap(), NOTEBOOK_PARTS);

    let shared = open_trial_hash(TRIAL_LINK).unwrap().unwrap();
    assert_eq!(Some(&shared.trial), file.notebook.trial(1));
    assert_eq!(shared.group.to_string(), "Blue 4");
    assert_eq!(trial_hash(&file.notebook, 1).as_deref(), Some(TRIAL_LINK));
}

/// What the model says of a rocket may change with the model; a code that was written
/// stays what it is.
#[test]
fn a_result_opens_and_is_still_written() {
    let file = open_notebook_file(NOTEBOOK).unwrap();
    for (id, changes, text) in RESULTS {
        let result = open_result_code(text).unwrap();
        assert_eq!(result_code(&result), text);
        let mut now = result_of(&file.notebook, id, changes).unwrap();
        now.model = result.model;
        assert_eq!(now, result);
    }
}

/// The example of the tests, before it became a file: nobody has touched a locked line.
#[test]
fn the_notebook_holds_something_of_everything() {
    let file = open_notebook_file(NOTEBOOK).unwrap();
    assert_eq!(file, crate::notebooks::everything());
    let notebook = &file.notebook;
    assert!(notebook.trials().iter().all(|trial| !trial.is_altered()));
    assert_eq!((notebook.trials().len(), notebook.deleted().len()), (3, 1));
    assert!(notebook.plans().len() > 1 && file.rocket.is_some());
    let first = &notebook.trials()[0];
    assert!(!first.predictions().later().is_empty());
    assert!(first.measured.mass.left_out.is_some());
    assert_eq!(first.measured.pressure.from, End::Tail);
}
