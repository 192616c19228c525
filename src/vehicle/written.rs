//! Where in the text of a template something is written that a finding speaks of.

/// Line and column, both from 1, of the panel, point or stance that a place of a finding names first, or of the field that it
/// is. None where that is not written in the text, such as a place that is coordinates only.
pub fn written_at(text: &str, place: &str) -> Option<(usize, usize)> {
    let mut parts = place.split('"');
    let (before, name) = (parts.next().unwrap_or_default(), parts.next());
    let Some(name) = name else {
        // A field, as `length_mm`.
        let field =
            Some(place).filter(|p| p.chars().all(|c| c.is_ascii_alphanumeric() || c == '_') && !p.is_empty())?;
        return find(text, field, |_, after| after.starts_with(':'));
    };
    let is_panel = before.starts_with("panel") || before.starts_with("opening");
    // Both sides are written once.
    let half = name.strip_suffix("-left").or_else(|| name.strip_suffix("-right"));
    [Some(name), half].into_iter().flatten().find_map(|name| {
        find(
            text,
            &format!("\"{name}\""),
            |before, after| {
                if is_panel { before.ends_with("id:") } else { after.starts_with(':') }
            },
        )
    })
}

/// The first place where `wanted` stands between what fits before and after it; comments are no place.
fn find(text: &str, wanted: &str, fits: impl Fn(&str, &str) -> bool) -> Option<(usize, usize)> {
    text.lines().enumerate().find_map(|(line, written)| {
        let code = written.split("//").next().unwrap_or_default();
        let mut starts = code.match_indices(wanted).map(|(at, _)| at);
        let at = starts.find(|at| fits(code[..*at].trim_end(), code[at + wanted.len()..].trim_start()))?;
        Some((line + 1, code[..at].chars().count() + 1))
    })
}
