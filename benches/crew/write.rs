//! Writes invented crew problems as files.
//!
//! usage: cargo bench --no-default-features --bench crew_write -- FOLDER SEED

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a tool for contributors; a missing argument may end it")]
#![allow(clippy::allow_attributes, reason = "the table of sizes is used elsewhere")]
#![allow(dead_code, reason = "as above")]

mod invent;

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).filter(|a| a != "--bench").collect();
    let [folder, seed] = arguments.as_slice() else {
        println!("usage: crew_write FOLDER SEED");
        return;
    };
    std::fs::create_dir_all(folder).unwrap();
    for kind in invent::kinds() {
        let spec = invent::invent(&kind, seed.parse().unwrap());
        let path = std::path::Path::new(folder).join(format!("{}.json", kind.name));
        std::fs::write(path, serde_json::to_string(&spec).unwrap() + "\n").unwrap();
    }
}
