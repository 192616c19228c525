//! What is said when the program made a mistake that it can't go on from.

use crate::cli::Failure;
use crate::say;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

/// Where the unsaved state is, known outside the window too.
#[derive(Debug, Clone, Default)]
pub(in crate::gui) struct LastWords(Arc<Mutex<Option<PathBuf>>>);

impl LastWords {
    /// Notes where the unsaved state is; none while nothing is unsaved.
    pub(super) fn note(&self, journal: Option<&Path>) {
        let mut noted = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if noted.as_deref() != journal {
            *noted = journal.map(Path::to_owned);
        }
    }

    /// What is said; `cause` is what the panic said.
    pub(in crate::gui) fn failure(&self, cause: &(dyn std::any::Any + Send)) -> Failure {
        let text = cause.downcast_ref::<String>().map(String::as_str);
        let text = text.or_else(|| cause.downcast_ref::<&str>().copied()).unwrap_or(say!("keep-no-reason"));
        let error = say!("keep-had-to-stop", why = text);
        let journal = self.0.lock().unwrap_or_else(PoisonError::into_inner).clone();
        match journal {
            None => Failure::new(error, say!("keep-start-again")),
            Some(path) => {
                let hint = say!("keep-is-in", file = path.display().to_string());
                Failure::new(error, hint)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_words_name_what_is_unsaved() {
        let words = LastWords::default();
        let cause: Box<dyn std::any::Any + Send> = Box::new("index out of bounds".to_owned());
        let nothing = words.failure(&*cause);
        assert_eq!(nothing.error(), "the program made a mistake and had to stop: index out of bounds");
        assert!(nothing.hint().contains("nothing was unsaved"));
        words.clone().note(Some(Path::new("shop/.vehicle.job.ron.journal")));
        let kept = words.failure(&"a plain text");
        assert!(kept.error().ends_with("a plain text") && kept.hint().contains("shop/.vehicle.job.ron.journal"));
        words.note(None);
        assert!(words.failure(&7).hint().contains("nothing was unsaved"));
    }
}
