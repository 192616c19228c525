//! `lapwright sample --out JOB`

use super::{Exit, Failure, args};
use crate::file::{Disk, RealDisk, SAMPLE, write_text};

/// Writes the embedded sample, comments and all.
pub(super) fn run(args: &args::Sample) -> Result<Exit, Failure> {
    if !matches!(RealDisk.about(&args.out), Ok(None)) {
        let error = format!("\"{}\" exists already", args.out.display());
        return Err(Failure::new(error, "choose another name, so that nothing is overwritten"));
    }
    write_text(&RealDisk, &args.out, SAMPLE)?;
    Ok(Exit::Fine)
}
