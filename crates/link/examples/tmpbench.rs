use noseward_lesson::*;
use noseward_link::*;
use std::time::Instant;
fn main() {
    let mut class = Class::default();
    let t = Instant::now();
    let mut n = 0;
    let mut files: Vec<_> = std::fs::read_dir("/tmp/d400")
        .unwrap()
        .map(|f| std::fs::read_to_string(f.unwrap().path()).unwrap())
        .collect();
    files.sort();
    println!("read {:?}", t.elapsed());
    let t = Instant::now();
    for f in &files {
        for found in Gathering::new("x", f) {
            n += 1;
            if let Ok(HandedIn::Row(r)) = found.what {
                if let ClassRow::Result(e) = *r {
                    let _ = class.add(&e.class, e.result, false);
                }
            }
        }
    }
    println!("gather {n} {:?}", t.elapsed());
    let t = Instant::now();
    let text = class_to_table(&class, Format::PointComma, true, &|_| String::new());
    println!("write {} {:?}", text.len(), t.elapsed());
    let t = Instant::now();
    let seen: Vec<Seen> = class
        .counting()
        .filter_map(|e| {
            Some((e.result.measured_separation_mm()?, e.result.nose_first()?).into())
        })
        .collect();
    println!("seen {:?}", t.elapsed());
    let t = Instant::now();
    let tp = turning_point(&seen);
    println!("tp {:?} {:?}", t.elapsed(), tp.is_ok());
    let t = Instant::now();
    let nt = next_trial(&seen, Reach { least: -100., most: 200. });
    println!("next {:?} {:?}", t.elapsed(), nt.is_some());
    let t = Instant::now();
    let c: usize = class.counting().map(|e| odd(&e.result).len()).sum();
    println!("odd {c} {:?}", t.elapsed());
    let t = Instant::now();
    let c = class.clone();
    println!("clone {:?} {}", t.elapsed(), c.entries().len());
}
