//! `lapwright sample --out JOB`

use super::{Exit, Failure, args};
use crate::file::{Disk, RealDisk, SAMPLE, write_text};
use crate::say;

/// Writes the embedded sample, comments and all.
pub(super) fn run(args: &args::Sample) -> Result<Exit, Failure> {
    if !matches!(RealDisk.about(&args.out), Ok(None)) {
        let error = say!("cli-exists", file = args.out.display().to_string());
        return Err(Failure::new(error, say!("cli-exists-do")));
    }
    write_text(&RealDisk, &args.out, SAMPLE)?;
    Ok(Exit::Fine)
}
