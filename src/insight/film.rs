//! Which readings of a panel count, and what they say.
//!
//! Decisions rest on readings taken before polishing with a gauge that passed its checks. Readings before a failed check stay in
//! the job and on screen but don't count; where they read thinner than the others they still lower the bound.

use crate::job::{Job, PanelRecord, Spot, SurveyStage, Suspects};
use crate::measure::{self, FilmSummary};
use crate::say;
use crate::units::Micrometres;

/// The readings of one panel in one survey.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SurveyFilm {
    /// Which survey, from 0.
    pub survey: u32,
    /// What decisions rest on; none without a reading that counts.
    pub film: Option<FilmSummary>,
    /// The readings that don't count, where there are no others: to be shown, not to be used.
    pub not_counting: Option<FilmSummary>,
    /// The thinnest edge that was read.
    pub edge: Option<FilmSummary>,
    /// How many readings don't count because the gauge failed a check.
    pub suspects: usize,
}

impl SurveyFilm {
    /// What the readings show, whether or not they count.
    pub fn shown(&self) -> Option<&FilmSummary> {
        self.film.as_ref().or(self.not_counting.as_ref())
    }

    /// Why nothing is decided although the panel was read, as the end of a sentence.
    pub fn refusal(&self) -> Option<&'static str> {
        (self.film.is_none() && self.suspects > 0).then(|| say!("insight-suspect"))
    }

    /// The same readings, none of which can count.
    #[must_use]
    pub(super) fn impossible(self) -> Self {
        Self { not_counting: self.film.or(self.not_counting), film: None, edge: None, ..self }
    }
}

/// The readings of a panel taken at one stage: those of its latest survey with a reading that counts, or of its latest at all.
pub(super) fn film_at(job: &Job, record: &PanelRecord, stage: SurveyStage, suspects: &Suspects) -> Option<SurveyFilm> {
    let numbers = (0..job.surveys.len()).rev().filter(|i| job.surveys[*i].stage == stage).map(|i| i as u32);
    let mut read = numbers.filter(|number| record.is_read_in(*number)).peekable();
    let latest = *read.peek()?;
    let counts = |survey: &u32| open_spots(record).any(|s| s.readings_in(*survey).any(|r| !suspects.has(r)));
    Some(of_survey(job, record, read.find(counts).unwrap_or(latest), suspects))
}

/// The readings of a panel in one survey.
fn of_survey(job: &Job, record: &PanelRecord, survey: u32, suspects: &Suspects) -> SurveyFilm {
    let readings = |spot: &Spot, suspect_too: bool| -> Vec<Micrometres> {
        let counting = spot.readings_in(survey).filter(|r| suspect_too || !suspects.has(r));
        if spot.edge { Vec::new() } else { counting.map(|r| r.thickness_um).collect() }
    };
    let summary = |suspect_too: bool| {
        let spots: Vec<_> = record.spots.iter().map(|s| readings(s, suspect_too)).collect();
        let slices: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
        measure::summarise(&slices, &job.gauge, job.assurance)
    };
    let doubtful = record.spots.iter().flat_map(|s| s.readings_in(survey)).filter(|r| suspects.has(r)).count();
    let mut film = summary(false);
    let all = if doubtful > 0 { summary(true) } else { None };
    if let (Some(film), Some(all)) = (&mut film, &all) {
        film.lower = film.lower.min(all.lower);
    }
    let not_counting = if film.is_none() { all } else { None };
    // A thin edge is minded even where the reading is in doubt: it can only make the work more careful.
    let edges = record.spots.iter().filter(|s| s.edge).filter_map(|spot| place(job, spot, survey));
    SurveyFilm { survey, film, not_counting, edge: edges.min_by_key(|edge| edge.lower), suspects: doubtful }
}

/// One place in figures, from its readings in one survey.
pub fn place(job: &Job, spot: &Spot, survey: u32) -> Option<FilmSummary> {
    let readings: Vec<Micrometres> = spot.readings_in(survey).map(|r| r.thickness_um).collect();
    measure::summarise_place(&readings, &job.gauge, job.assurance.confidence)
}

fn open_spots(record: &PanelRecord) -> impl Iterator<Item = &Spot> {
    record.spots.iter().filter(|s| !s.edge)
}
