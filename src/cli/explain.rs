//! `lapwright explain CODE`

use super::{Exit, Failure, Output, args};
use crate::finding::Code;
use crate::say;

/// Explains one finding code.
pub(super) fn run(args: &args::Explain, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let code: Code = args.code.parse().map_err(|error: crate::finding::UnknownCode| {
        let all: Vec<_> = Code::ALL.iter().map(|c| c.id()).collect();
        Failure::new(error.to_string(), say!("cli-codes", codes = all.join(", ")))
    })?;
    writeln!(out.data, "{code} ({})\n{}", code.severity(), code.explanation())?;
    Ok(Exit::Fine)
}
