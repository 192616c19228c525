//! What was found, as sentences.

use crate::job::SurveyStage;
use crate::polish::{DefectKind, PaintHistory};
use crate::say;
use crate::sheets::input::SheetInput;
use crate::units::capital;
use crate::vehicle::Surface;

/// What was found on the vehicle before any work: marks by kind, thickness, earlier paint.
pub(super) fn found(input: &SheetInput<'_>) -> Vec<String> {
    let mut list = marks(input);
    if list.is_empty() {
        list.push(say!("sheet-no-marks").to_owned());
    }
    list.extend(thickness(input));
    list.extend(painted_before(input));
    list
}

fn marks(input: &SheetInput<'_>) -> Vec<String> {
    let with = |kind: DefectKind| -> Vec<usize> {
        let has = |panel: &crate::vehicle::Panel| {
            input.job.record(&panel.id).is_some_and(|r| r.defects.iter().any(|d| d.kind == kind))
        };
        (0..input.template.panels.len()).filter(|&i| has(&input.template.panels[i])).collect()
    };
    let named = |kind: &DefectKind| {
        let panels = with(*kind);
        (!panels.is_empty())
            .then(|| say!("sheet-mark-where", mark = capital(kind.name()), panels = input.names(&panels)))
    };
    DefectKind::ALL.iter().filter_map(named).collect()
}

fn thickness(input: &SheetInput<'_>) -> Vec<String> {
    let painted: Vec<usize> =
        (0..input.template.panels.len()).filter(|&i| input.template.panels[i].surface == Surface::Paint).collect();
    let read: Vec<usize> = painted.iter().copied().filter(|&i| input.insight.panels[i].film.is_some()).collect();
    let readings: usize = read.iter().filter_map(|&i| input.insight.panels[i].film.as_ref()).map(|f| f.n).sum();
    if read.is_empty() {
        return vec![say!("sheet-not-read").to_owned()];
    }
    let of_survey = input.job.surveys.iter().find(|s| s.stage == SurveyStage::Before && !s.date.is_empty());
    let (on, all) = (read.len(), painted.len());
    let mut list = vec![if let Some(survey) = of_survey {
        say!("sheet-read-on", count = readings, on = on, all = all, date = survey.date.as_str())
    } else {
        say!("sheet-read", count = readings, on = on, all = all)
    }];
    let blind: Vec<usize> = painted.iter().copied().filter(|&i| input.insight.panels[i].unreadable.is_some()).collect();
    if !blind.is_empty() {
        list.push(say!("sheet-blind", panels = input.names(&blind)));
    }
    list
}

fn painted_before(input: &SheetInput<'_>) -> Option<String> {
    let again = |h| matches!(h, PaintHistory::Refinished | PaintHistory::FreshRefinish { .. });
    let is = |i: &usize| input.job.record(&input.template.panels[*i].id).is_some_and(|r| again(r.history));
    let panels: Vec<usize> = (0..input.template.panels.len()).filter(is).collect();
    (!panels.is_empty()).then(|| say!("sheet-painted-before", panels = input.names(&panels)))
}
